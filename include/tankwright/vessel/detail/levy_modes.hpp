// SPDX-License-Identifier: BSL-1.0
/// @file
/// Bending of a thin rectangular plate whose two upright edges are simply supported: the modes of Levy's single series
/// (Timoshenko & Woinowsky-Krieger 1959, ch. 5), on raw numbers.
///
/// Everything is in units of the height H, the flexural rigidity D and a pressure q: deflections come out in q H^4/D,
/// moments per width in q H^2. x runs from 0 to W along the bottom, y from 0 at the bottom to 1 at the top.
///
///   D del^4 w = q(y),   w = sum over odd m of Y_m(y) sin(k x),   k = m pi/W
///   Y'''' - 2 k^2 Y'' + k^4 Y = 4/(m pi) q(y)
///
/// Derivatives below are taken with respect to u = k y, so that every mode is of one size. A positive moment stretches
/// the dry face.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace tankwright::vessel::detail {

enum class edge_kind { supported, clamped, free };

/// The load at one height.
template <class T>
struct load_here {
  T q;
  T slope;      ///< dq/dy
  T from_line;  ///< distance to the water line; one height where there is none
  T side;       ///< +1 below the water line, -1 above it
};

/// q(y) = constant + slope y, or water up to a level below the top: max(level - y, 0).
template <class T>
struct plate_load {
  T constant{};
  T slope{};
  bool partly_filled = false;
  T level{};

  [[nodiscard]] load_here<T> at(T y) const noexcept {
    if (!partly_filled) return {constant + slope * y, slope, T(1), T(1)};
    if (y < level) return {level - y, T(-1), level - y, T(1)};
    return {T(0), T(0), y - level, T(-1)};
  }
  /// e^-k|level - y|; 0 where there is no water line, as if it were far away.
  [[nodiscard]] T from_level(T k, T y) const noexcept {
    return partly_filled ? std::exp(-k * std::fabs(level - y)) : T(0);
  }
};

template <class T>
struct plate {
  T width;  ///< over the height
  T poisson;
  edge_kind bottom;
  edge_kind top;
  plate_load<T> load;
};

/// A function of u and its first three derivatives.
template <class T>
using jet = std::array<T, 4>;

/// The jet of a function seen from the top edge, where the distance runs the other way.
template <class T>
[[nodiscard]] inline jet<T> reversed(const jet<T>& f) noexcept {
  return {f[0], -f[1], f[2], -f[3]};
}

/// What the water line of a partly filled panel adds to the strip solution q/k^4: e^-s (3 + s)/(4 k^5) with
/// s = k |level - y|, which together with the kink of q is smooth to the third derivative. Here without the 4 k^5.
/// @param from_level e^-s
template <class T>
[[nodiscard]] inline jet<T> water_line(T s, T side, T from_level) noexcept {
  const T e = from_level, along = side * e;  // below the level s falls with y
  return {e * (T(3) + s), along * (T(2) + s), e * (T(1) + s), along * s};
}

/// A particular solution of a mode: the strip q/k^4, and the water line where there is one.
template <class T>
[[nodiscard]] inline jet<T> particular(const load_here<T>& load, T k, T from_level) noexcept {
  const T line = T(1) / (T(4) * k * k * k * k * k);
  const jet<T> f = water_line(k * load.from_line, load.side, from_level);
  return {line * (f[0] + T(4) * k * load.q), line * (f[1] + T(4) * load.slope), line * f[2], line * f[3]};
}

/// The two conditions at an edge, as linear forms on a jet.
template <class T>
[[nodiscard]] std::array<T, 2> conditions(edge_kind kind, T nu, const jet<T>& f) noexcept {
  switch (kind) {
    case edge_kind::supported:
      return {f[0], f[2]};
    case edge_kind::clamped:
      return {f[0], f[1]};
    case edge_kind::free:  // no moment, no shear (Kirchhoff)
      return {f[2] - nu * f[0], f[3] - (T(2) - nu) * f[1]};
  }
  return {};
}

/// An edge with the two waves of its own, (c0 + c1 d) e^-d, d being k times the distance from it: how it answers what
/// reaches it, so that both together meet its conditions. The same for every mode.
template <class T>
class plate_edge {
 public:
  plate_edge(edge_kind kind, T nu) noexcept {
    const auto own_0 = conditions<T>(kind, nu, {T(1), T(-1), T(1), T(-1)});
    const auto own_1 = conditions<T>(kind, nu, {T(0), T(1), T(-2), T(3)});
    const T det = own_0[0] * own_1[1] - own_1[0] * own_0[1];
    for (std::size_t n = 0; n < 4; ++n) {
      jet<T> unit{};
      unit[n] = T(1);
      const auto right = conditions(kind, nu, unit);
      to_[0][n] = (own_1[0] * right[1] - right[0] * own_1[1]) / det;
      to_[1][n] = (right[0] * own_0[1] - own_0[0] * right[1]) / det;
    }
    to_even_ = answer({T(1), T(1), T(1), T(1)});
    to_rising_ = answer({T(0), T(1), T(2), T(3)});
  }

  /// c0 and c1 that answer f, derivatives along d.
  [[nodiscard]] std::array<T, 2> answer(const jet<T>& f) const noexcept {
    return {to_[0][0] * f[0] + to_[0][1] * f[1] + to_[0][2] * f[2] + to_[0][3] * f[3],
            to_[1][0] * f[0] + to_[1][1] * f[1] + to_[1][2] * f[2] + to_[1][3] * f[3]};
  }

  /// As a matrix: c0 and c1 that answer the two waves of the far edge, for each c0 and c1 of theirs. Without e^-k.
  [[nodiscard]] std::array<std::array<T, 2>, 2> answer_to_far(T k) const noexcept {
    return {{{to_even_[0], k * to_even_[0] - to_rising_[0]}, {to_even_[1], k * to_even_[1] - to_rising_[1]}}};
  }

 private:
  jet<T> to_[2];
  std::array<T, 2> to_even_, to_rising_;
};

/// One mode: Y = (c0 + c1 u) e^-u + (c2 + c3 v) e^-v + particular, u = k y, v = k (1 - y). Decaying exponentials from
/// either edge, so that nothing overflows.
template <class T>
struct mode {
  T k;
  T size;  ///< 4/(m pi), times the weight of the mode in the sum; the rest is as many times larger
  T line;  ///< of the water line: size/(4 k^5)
  T c[4];
};

/// @param e         e^-k
/// @param at_bottom the particular solution there
/// @param at_top    the same, reversed
template <class T>
[[nodiscard]] inline mode<T> solve_mode(const plate_edge<T>& bottom, const plate_edge<T>& top, T k, T e,
                                        const jet<T>& at_bottom, const jet<T>& at_top, T size) noexcept {
  const auto b = bottom.answer(at_bottom), t = top.answer(at_top);
  const auto B = bottom.answer_to_far(k), U = top.answer_to_far(k);
  // c_bottom = b + e B c_top,  c_top = t + e U c_bottom:  (I - e^2 B U) c_bottom = b + e B t
  T a[2][2], right[2];
  for (std::size_t i = 0; i < 2; ++i) {
    for (std::size_t j = 0; j < 2; ++j) a[i][j] = T(i == j) - e * e * (B[i][0] * U[0][j] + B[i][1] * U[1][j]);
    right[i] = b[i] + e * (B[i][0] * t[0] + B[i][1] * t[1]);
  }
  const T per_det = size / (a[0][0] * a[1][1] - a[0][1] * a[1][0]);
  const T c0 = (right[0] * a[1][1] - a[0][1] * right[1]) * per_det;
  const T c1 = (a[0][0] * right[1] - right[0] * a[1][0]) * per_det;
  return {k,
          size,
          size / (T(4) * k * k * k * k * k),
          {c0, c1, size * t[0] + e * (U[0][0] * c0 + U[0][1] * c1), size * t[1] + e * (U[1][0] * c0 + U[1][1] * c1)}};
}

template <class T>
[[nodiscard]] mode<T> solve_mode(const plate<T>& p, int m, T weight) noexcept {
  const T k = T(m) * std::numbers::pi_v<T> / p.width;
  const auto at_edge = [&](T y) { return particular(p.load.at(y), k, p.load.from_level(k, y)); };
  return solve_mode(plate_edge<T>(p.bottom, p.poisson), plate_edge<T>(p.top, p.poisson), k, std::exp(-k), at_edge(T(0)),
                    reversed(at_edge(T(1))), weight * T(4) / (p.width * k));
}

/// The waves of a mode at y, without the particular solution; `from_bottom` = e^-ky, `from_top` = e^-k(1-y).
template <class T>
[[nodiscard]] inline jet<T> waves(const mode<T>& f, T y, T from_bottom, T from_top) noexcept {
  const T u = f.k * y, v = f.k - u;
  const T a1 = f.c[1] * from_bottom, a0 = f.c[0] * from_bottom + a1 * u;
  const T b1 = f.c[3] * from_top, b0 = f.c[2] * from_top + b1 * v;
  const T even = a0 + b0, odd = b0 - a0;
  return {even, odd + (a1 - b1), even - T(2) * (a1 + b1), odd + T(3) * (a1 - b1)};
}

/// The modes 1, 3, 5 ... of a plate, solved when first asked for. Kept column by column, because a batch of them is
/// solved side by side by vector instructions.
template <class T>
class plate_modes {
 public:
  static constexpr std::size_t most = 200;

  explicit plate_modes(const plate<T>& p) noexcept
      : plate_{p}, bottom_{p.bottom, p.poisson}, top_{p.top, p.poisson}, k1_{std::numbers::pi_v<T> / p.width} {
    first_[0] = std::exp(-k1_);
    first_[1] = p.load.from_level(k1_, T(0));
    first_[2] = p.load.from_level(k1_, T(1));
    for (std::size_t n = 0; n < 3; ++n) next_[n] = first_[n];
  }

  [[nodiscard]] const plate<T>& of() const noexcept { return plate_; }
  [[nodiscard]] const plate_edge<T>& edge(bool at_top) const noexcept { return at_top ? top_ : bottom_; }
  [[nodiscard]] T k1() const noexcept { return k1_; }
  /// e^-k and e^-k level of the first mode.
  [[nodiscard]] T first_across() const noexcept { return first_[0]; }
  [[nodiscard]] T first_from_level() const noexcept { return first_[1]; }

  /// Have at least the first `count` modes.
  void solve(std::size_t count) noexcept {
    while (solved_ < count) solve_batch();
  }

  /// Mode 2 i + 1; it must have been solved.
  [[nodiscard]] mode<T> operator[](std::size_t i) const noexcept {
    return {k_[i], size_[i], line_[i], {c_[0][i], c_[1][i], c_[2][i], c_[3][i]}};
  }
  [[nodiscard]] T across_height(std::size_t i) const noexcept { return decay_[0][i]; }  ///< e^-k
  [[nodiscard]] T from_level(std::size_t i, bool at_top) const noexcept { return decay_[at_top ? 2 : 1][i]; }

 private:
  static constexpr std::size_t batch = 8;
  static_assert(most % batch == 0);

  void solve_batch() noexcept {
    const std::size_t from = solved_;
    for (std::size_t i = from; i < from + batch; ++i) {  // powers of those of the first mode
      for (std::size_t n = 0; n < 3; ++n) {
        decay_[n][i] = next_[n];
        next_[n] *= first_[n] * first_[n];
      }
    }
    const load_here<T> below = plate_.load.at(T(0)), above = plate_.load.at(T(1));
    const plate_edge<T> bottom = bottom_, top = top_;
    for (std::size_t j = 0; j < batch; ++j) {
      const std::size_t i = from + j;
      const T k = k1_ * T(static_cast<int>(2 * i + 1));
      const mode<T> f = solve_mode(bottom, top, k, decay_[0][i], particular(below, k, decay_[1][i]),
                                   reversed(particular(above, k, decay_[2][i])), T(4) / (plate_.width * k));
      k_[i] = k;
      size_[i] = f.size;
      line_[i] = f.line;
      for (std::size_t n = 0; n < 4; ++n) c_[n][i] = f.c[n];
    }
    solved_ = from + batch;
  }

  plate<T> plate_;
  plate_edge<T> bottom_, top_;
  T k1_;
  T first_[3], next_[3];
  std::size_t solved_ = 0;
  T k_[most], size_[most], line_[most], c_[4][most], decay_[3][most];
};

}  // namespace tankwright::vessel::detail
