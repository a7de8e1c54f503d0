// SPDX-License-Identifier: BSL-1.0
/// @file
/// Bending of a thin rectangular plate whose two upright edges are simply supported: Levy's single series (Timoshenko &
/// Woinowsky-Krieger 1959, ch. 5), on raw numbers.
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

#include <tankwright/core/detail/root.hpp>

namespace tankwright::vessel::detail {
using namespace tankwright::detail;

enum class edge_kind { supported, clamped, free };

/// q(y) = constant + slope y, or water up to a level below the top: max(level - y, 0).
template <class T>
struct plate_load {
  T constant = T(0);
  T slope = T(0);
  bool partly_filled = false;
  T level = T(0);

  [[nodiscard]] T at(T y) const noexcept {
    return partly_filled ? (y < level ? level - y : T(0)) : constant + slope * y;
  }
  [[nodiscard]] T derivative(T y) const noexcept { return partly_filled ? (y < level ? T(-1) : T(0)) : slope; }
  /// e^-k|level - y|; 1 where there is no water line, so that it may be raised to powers.
  [[nodiscard]] T from_level(T k, T y) const noexcept {
    return partly_filled ? std::exp(-k * std::fabs(level - y)) : T(1);
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

/// One mode: Y = (c0 + c1 u) e^-u + (c2 + c3 v) e^-v + particular, u = k y, v = k (1 - y). Decaying exponentials from
/// either edge, so that nothing overflows.
template <class T>
struct mode {
  T k;
  T size;  ///< 4/(m pi), times the weight of the mode in the sum
  T c[4];
};

/// What the water line of a partly filled panel adds to the strip solution q/k^4: e^-s (3 + s)/(4 k^5) with
/// s = k |level - y|, which together with the kink of q is smooth to the third derivative.
/// @param from_level e^-s
template <class T>
[[nodiscard]] jet<T> water_line(const plate_load<T>& load, T k, T y, T from_level) noexcept {
  const T s = k * std::fabs(load.level - y), e = from_level / (T(4) * k * k * k * k * k);
  const T sign = y < load.level ? T(1) : T(-1);  // below the level s falls with y
  return {e * (T(3) + s), sign * e * (T(2) + s), e * (T(1) + s), sign * e * s};
}

/// A particular solution of a mode: the strip q/k^4, and the water line where there is one.
template <class T>
[[nodiscard]] jet<T> particular(const plate_load<T>& load, T k, T y, T from_level) noexcept {
  const T k4 = k * k * k * k;
  jet<T> f{};
  if (load.partly_filled) f = water_line(load, k, y, from_level);
  f[0] += load.at(y) / k4;
  f[1] += load.derivative(y) / (k4 * k);
  return f;
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

/// What an edge makes of the particular solution and of the waves that come from the far edge:
/// own = alone - e^-kH * from_far * far.
template <class T>
struct edge_response {
  T alone[2];
  T from_far[2][2];
};

/// @param p the particular solution at the edge, derivatives along k times the distance from it
template <class T>
[[nodiscard]] edge_response<T> respond(edge_kind kind, T nu, T kh, const jet<T>& p) noexcept {
  const auto own_0 = conditions<T>(kind, nu, {T(1), T(-1), T(1), T(-1)});
  const auto own_1 = conditions<T>(kind, nu, {T(0), T(1), T(-2), T(3)});
  const T det = own_0[0] * own_1[1] - own_1[0] * own_0[1];
  const auto solve = [&](const std::array<T, 2>& right) {
    return std::array<T, 2>{(right[0] * own_1[1] - own_1[0] * right[1]) / det,
                            (own_0[0] * right[1] - right[0] * own_0[1]) / det};
  };
  const auto rest = solve(conditions(kind, nu, p));
  const auto far_0 = solve(conditions<T>(kind, nu, {T(1), T(1), T(1), T(1)}));
  const auto far_1 = solve(conditions<T>(kind, nu, {kh, kh - T(1), kh - T(2), kh - T(3)}));
  return {{-rest[0], -rest[1]}, {{far_0[0], far_1[0]}, {far_0[1], far_1[1]}}};
}

/// The jet of a particular solution seen from the top edge, where the distance runs the other way.
template <class T>
[[nodiscard]] jet<T> reversed(const jet<T>& f) noexcept {
  return {f[0], -f[1], f[2], -f[3]};
}

template <class T>
[[nodiscard]] mode<T> solve_mode(const plate<T>& p, int m, T weight = T(1)) noexcept {
  const T pi = std::numbers::pi_v<T>;
  const T k = T(m) * pi / p.width;
  const auto at_edge = [&](T y) { return particular(p.load, k, y, p.load.from_level(k, y)); };
  const auto bottom = respond(p.bottom, p.poisson, k, at_edge(T(0)));
  const auto top = respond(p.top, p.poisson, k, reversed(at_edge(T(1))));
  const T e = std::exp(-k);
  // (I - e^2 B T) c = b - e B t, with B and T what each edge makes of the other's waves.
  const auto& B = bottom.from_far;
  const auto& U = top.from_far;
  T a[2][2], right[2];
  for (int i = 0; i < 2; ++i) {
    for (int j = 0; j < 2; ++j) a[i][j] = T(i == j) - e * e * (B[i][0] * U[0][j] + B[i][1] * U[1][j]);
    right[i] = bottom.alone[i] - e * (B[i][0] * top.alone[0] + B[i][1] * top.alone[1]);
  }
  const T det = a[0][0] * a[1][1] - a[0][1] * a[1][0];
  const T c0 = (right[0] * a[1][1] - a[0][1] * right[1]) / det;
  const T c1 = (a[0][0] * right[1] - right[0] * a[1][0]) / det;
  const T size = weight * T(4) / (T(m) * pi);
  return {k,
          size,
          {size * c0, size * c1, size * (top.alone[0] - e * (U[0][0] * c0 + U[0][1] * c1)),
           size * (top.alone[1] - e * (U[1][0] * c0 + U[1][1] * c1))}};
}

/// The waves of a mode at y, without the particular solution; `from_bottom` = e^-ky, `from_top` = e^-k(1-y).
template <class T>
[[nodiscard]] jet<T> waves(const mode<T>& f, T y, T from_bottom, T from_top) noexcept {
  const T u = f.k * y, v = f.k - u;
  const T a0 = f.c[0] * from_bottom, a1 = f.c[1] * from_bottom, b0 = f.c[2] * from_top, b1 = f.c[3] * from_top;
  return {a0 + a1 * u + b0 + b1 * v, a1 * (T(1) - u) - a0 + b0 + b1 * (v - T(1)),
          a0 + a1 * (u - T(2)) + b0 + b1 * (v - T(2)), a1 * (T(3) - u) - a0 + b0 + b1 * (v - T(3))};
}

/// Weights that sum an alternating series: of its first `accelerated` terms after those taken as they are. The error
/// of n terms is about 5.8^-n (Cohen, Rodriguez Villegas & Zagier 2000, Exp. Math. 9:3, algorithm 1).
inline constexpr int accelerated = 16;
template <class T>
inline constexpr std::array<T, accelerated> alternating_weights = [] {
  T power = T(1), root = T(5.828427124746190097603377448419396157L);  // 3 + sqrt 8
  for (int i = 0; i < accelerated; ++i) power *= root;
  const T d = (power + T(1) / power) / T(2);
  T b = T(-1), c = -d;
  std::array<T, accelerated> weights{};
  for (int i = 0; i < accelerated; ++i) {
    c = b - c;
    weights[static_cast<std::size_t>(i)] = c / d;
    b *= T(i + accelerated) * T(i - accelerated) / ((T(i) + T(0.5L)) * T(i + 1));
  }
  return weights;
}();

/// e^-ky, e^-k(1-y) and e^-k|level - y| of the modes 1, 3, 5 ... in turn: powers of those of the first.
template <class T>
struct decay {
  T from_bottom, from_top, from_level;

  decay(const plate_load<T>& load, T k1, T y) noexcept
      : from_bottom{std::exp(-k1 * y)},
        from_top{std::exp(-k1 * (T(1) - y))},
        from_level{load.from_level(k1, y)},
        step_{from_bottom * from_bottom, from_top * from_top, from_level * from_level} {}
  void next() noexcept {
    from_bottom *= step_[0];
    from_top *= step_[1];
    from_level *= step_[2];
  }

 private:
  T step_[3];
};

/// Values on the middle line x = W/2, with their slopes along y.
template <class T>
struct midline_point {
  T deflection, across, up;  ///< w, M_x (bends along the width), M_y (bends along the height)
  T deflection_slope, across_slope, up_slope;
};

/// The widest panel, in heights, that the series has room for.
inline constexpr int widest = 20;

/// The modes that give the middle line: there sin(kx) = +1, -1, +1 ...
template <class T>
class midline {
 public:
  explicit midline(const plate<T>& p) noexcept : plate_{p} {
    // Wide panels have long waves whose terms fall only after m is about W/H: those are taken as they are.
    const int plain = static_cast<int>(std::ceil(p.width));
    T sign = T(1);
    for (int i = 0; i < plain + accelerated; ++i) {
      T weight = sign;
      if (i >= plain) weight = (plain % 2 == 0 ? T(1) : T(-1)) * alternating_weights<T>[std::size_t(i - plain)];
      modes_[count_++] = solve_mode(p, 2 * i + 1, weight);
      sign = -sign;
    }
  }

  [[nodiscard]] midline_point<T> at(T y) const noexcept {
    const T nu = plate_.poisson;
    decay<T> e(plate_.load, modes_[0].k, y);
    midline_point<T> sum{};
    for (std::size_t i = 0; i < count_; ++i, e.next()) {
      const mode<T>& f = modes_[i];
      jet<T> g = waves(f, y, e.from_bottom, e.from_top);
      const jet<T> rest = particular(plate_.load, f.k, y, e.from_level);
      for (std::size_t j = 0; j < 4; ++j) g[j] += f.size * rest[j];
      const T k2 = f.k * f.k;
      sum.deflection += g[0];
      sum.deflection_slope += f.k * g[1];
      sum.across += k2 * (g[0] - nu * g[2]);
      sum.across_slope += k2 * f.k * (g[1] - nu * g[3]);
      sum.up += k2 * (nu * g[0] - g[2]);
      sum.up_slope += k2 * f.k * (nu * g[1] - g[3]);
    }
    return sum;
  }

 private:
  plate<T> plate_;
  std::size_t count_ = 0;
  std::array<mode<T>, widest + accelerated> modes_;
};

template <class T>
struct plate_peak {
  T value;  ///< with its sign
  T x;
  T y;
};

template <class T>
struct plate_peaks {
  plate_peak<T> deflection, across, up;  ///< on the middle line
  plate_peak<T> twist;                   ///< at a corner
  plate_peak<T> principal;               ///< the largest principal moment anywhere
};

/// The twisting moment at the lower or upper end of a side edge, -(1 - nu) sum k^2 Y'.
///
/// The terms fall as 1/m^3, but with the two edges taken alone they are A/m^3 + B/m^4 exactly, and those sums are
/// known: 7 zeta(3)/8 and pi^4/96 over odd m. What the edges do to each other falls as e^-kH.
template <class T>
[[nodiscard]] T corner_twist(const plate<T>& p, bool at_top) noexcept {
  const T pi = std::numbers::pi_v<T>;
  const edge_kind kind = at_top ? p.top : p.bottom;
  if (kind == edge_kind::clamped) return T(0);
  const auto alone = [&](const jet<T>& rest) {  // slope along the distance from the edge, of the edge by itself
    const auto r = respond(kind, p.poisson, T(1), rest);
    return r.alone[1] - r.alone[0] + rest[1];
  };
  const T direction = at_top ? T(-1) : T(1), y = at_top ? T(1) : T(0);
  const T q = p.load.at(y), q_slope = direction * p.load.derivative(y);
  constexpr T odd_cubes = T(7) / T(8) * T(1.202056903159594285399738161511449990764986L);
  const T odd_fourths = pi * pi * pi * pi / T(96);
  const T of_constant = alone({T(1), T(0), T(0), T(0)}) * q, of_slope = alone({T(0), T(1), T(0), T(0)}) * q_slope;
  T sum =
      T(4) * p.width * p.width / (pi * pi * pi) * (of_constant * odd_cubes + of_slope * (p.width / pi) * odd_fourths);
  for (int m = 1; m < 400; m += 2) {
    const mode<T> f = solve_mode(p, m);
    const T e = std::exp(-f.k), k2 = f.k * f.k;
    jet<T> rest = particular(p.load, f.k, y, p.load.from_level(f.k, y));
    if (at_top) rest = reversed(rest);
    const T* own = at_top ? f.c + 2 : f.c;
    const T* far = at_top ? f.c : f.c + 2;
    const T slope = own[1] - own[0] + e * (far[0] + far[1] * (f.k - T(1))) + f.size * rest[1];
    const T term = k2 * slope - f.size * (of_constant + of_slope / f.k) / k2;
    sum += term;
    if (std::fabs(term) <= T(1e-16L) * std::fabs(sum)) break;
  }
  return -(T(1) - p.poisson) * direction * sum;
}

/// Moments anywhere, for the search off the middle line. The particular solution is summed in closed form (a strip
/// across the width), so that only the waves of the edges are left, which die out within the panel.
template <class T>
class field {
 public:
  static constexpr int most = 48;

  /// What the modes give at one height, ready for any x.
  struct row {
    T curve, twist_slope;  ///< q and dq/dy of the strip
    int count;
    std::array<T, most> across, up, twist;
  };

  explicit field(const plate<T>& p) noexcept : plate_{p} {
    for (int i = 0; i < most; ++i) modes_[std::size_t(i)] = solve_mode(p, 2 * i + 1);
  }

  [[nodiscard]] row at_height(T y, int count) const noexcept {
    const T nu = plate_.poisson;
    row r;
    r.curve = plate_.load.at(y);
    r.twist_slope = plate_.load.derivative(y);
    r.count = count;
    decay<T> e(plate_.load, modes_[0].k, y);
    for (std::size_t i = 0; i < std::size_t(count); ++i, e.next()) {
      const mode<T>& f = modes_[i];
      jet<T> g = waves(f, y, e.from_bottom, e.from_top);
      if (plate_.load.partly_filled) {
        const jet<T> line = water_line(plate_.load, f.k, y, e.from_level);
        for (std::size_t j = 0; j < 3; ++j) g[j] += f.size * line[j];
      }
      const T k2 = f.k * f.k;
      r.across[i] = k2 * (g[0] - nu * g[2]);
      r.up[i] = k2 * (nu * g[0] - g[2]);
      r.twist[i] = k2 * g[1];
    }
    return r;
  }

  /// Largest principal moment at x, with its sign.
  [[nodiscard]] T principal(const row& r, T x) const noexcept {
    const T nu = plate_.poisson, width = plate_.width;
    // w_p = q (x^4 - 2 W x^3 + W^3 x)/24
    T across = r.curve * x * (width - x) / T(2), up = nu * across;
    T twist = r.twist_slope * (width * width * width - x * x * (T(6) * width - T(4) * x)) / T(24);
    T sine = std::sin(modes_[0].k * x), cosine = std::cos(modes_[0].k * x);
    const T sine_step = T(2) * sine * cosine, cosine_step = T(1) - T(2) * sine * sine;
    for (std::size_t i = 0; i < std::size_t(r.count); ++i) {
      across += r.across[i] * sine;
      up += r.up[i] * sine;
      twist += r.twist[i] * cosine;
      const T next = sine * cosine_step + cosine * sine_step;
      cosine = cosine * cosine_step - sine * sine_step;
      sine = next;
    }
    twist *= T(1) - nu;
    const T mean = (across + up) / T(2), half = (across - up) / T(2), radius = std::sqrt(half * half + twist * twist);
    return mean >= T(0) ? mean + radius : mean - radius;
  }

 private:
  plate<T> plate_;
  std::array<mode<T>, most> modes_;
};

/// The largest |principal moment| off the middle line: a coarse grid, then parabolas through nine points, from the best
/// point near the side and from the best one near the middle, because there may be a peak in either.
template <class T>
[[nodiscard]] plate_peak<T> largest_principal(const plate<T>& p) noexcept {
  const field<T> moments(p);
  const T half = p.width / T(2);
  const auto look = [&](plate_peak<T>& best, const typename field<T>::row& row, T x, T y) {
    const T value = moments.principal(row, x);
    if (std::fabs(value) > std::fabs(best.value)) best = {value, x, y};
    return std::fabs(value);
  };
  // The peak stands within about one height (of panel or water) of a side.
  const T high = p.load.partly_filled ? std::fmin(T(2) * p.load.level, T(1)) : T(1), reach = std::fmin(half, high);
  constexpr int cells = 7;
  plate_peak<T> starts[2]{};
  for (int j = 0; j <= cells; ++j) {
    const T y = high * T(j) / T(cells);
    const auto row = moments.at_height(y, 8);
    for (int i = 0; i <= cells; ++i) (void)look(starts[2 * i > cells], row, reach * T(i) / T(cells), y);
  }
  plate_peak<T> highest{};
  for (plate_peak<T>& best : starts) {
    T hx = reach / T(2 * cells), hy = high / T(2 * cells);
    for (const int count : {16, 24}) {
      best.value = T(0);  // fewer modes are not enough for the value
      const T x0 = std::fmin(std::fmax(best.x, hx), half - hx), y0 = std::fmin(std::fmax(best.y, hy), T(1) - hy);
      T f[3][3];
      for (int j = 0; j < 3; ++j) {
        const T y = y0 + hy * T(j - 1);
        const auto row = moments.at_height(y, count);
        for (int i = 0; i < 3; ++i) f[i][j] = look(best, row, x0 + hx * T(i - 1), y);
      }
      const T gx = (f[2][1] - f[0][1]) / T(2), gy = (f[1][2] - f[1][0]) / T(2);
      const T xx = f[2][1] - T(2) * f[1][1] + f[0][1], yy = f[1][2] - T(2) * f[1][1] + f[1][0];
      const T xy = (f[2][2] - f[2][0] - f[0][2] + f[0][0]) / T(4);
      const T det = xx * yy - xy * xy;
      if (xx < T(0) && det > T(0)) {
        const auto inside = [](T v, T most) { return std::fmin(std::fmax(v, T(0)), most); };
        const T x = inside(x0 - hx * (gx * yy - gy * xy) / det, half);
        const T y = inside(y0 - hy * (gy * xx - gx * xy) / det, T(1));
        (void)look(best, moments.at_height(y, count), x, y);
      }
      hx /= T(3), hy /= T(3);
    }
    best.value = moments.principal(moments.at_height(best.y, field<T>::most), best.x);
    if (std::fabs(best.value) > std::fabs(highest.value)) highest = best;
  }
  return highest;
}

/// The largest |f| on the middle line, f one of the three values with its slope. Every cell of the grid in which the
/// slope changes sign near the top of the range is searched for the place where it is zero.
template <class T, class Value, class Slope>
[[nodiscard]] plate_peak<T> peak_on(const midline<T>& line, const T* grid, const midline_point<T>* at, std::size_t size,
                                    T x, Value value, Slope slope) {
  plate_peak<T> best{T(0), x, T(0)};
  const auto consider = [&](T v, T y) {
    if (std::fabs(v) > std::fabs(best.value)) best = {v, x, y};
  };
  for (std::size_t i = 0; i < size; ++i) consider(value(at[i]), grid[i]);
  const T floor = T(0.8L) * std::fabs(best.value);
  for (std::size_t i = 0; i + 1 < size; ++i) {
    const T a = slope(at[i]), b = slope(at[i + 1]);
    if ((a < T(0)) == (b < T(0))) continue;
    if (std::fmax(std::fabs(value(at[i])), std::fabs(value(at[i + 1]))) < floor) continue;
    const T y =
        bracketed_root<T>("tankwright::vessel::water_on", "height of the peak", [&](T t) { return slope(line.at(t)); },
                          grid[i], grid[i + 1], {.absolute = T(1e-7L), .relative = T(0)});
    consider(value(line.at(y)), y);
  }
  return best;
}

/// All peaks of a plate.
template <class T>
[[nodiscard]] plate_peaks<T> solve_plate(const plate<T>& p) {
  const midline<T> line(p);
  constexpr std::size_t even = 13, layer = 6;
  T grid[even + 2 * layer];
  std::size_t size = 0;
  for (std::size_t i = 0; i < even; ++i) grid[size++] = T(i) / T(even - 1);
  if (p.width < T(0.6L)) {  // tall panels: what happens at an edge happens within one width of it
    for (const T part : {T(0.15L), T(0.3L), T(0.5L), T(0.7L), T(0.9L), T(1.2L)}) {
      grid[size++] = part * p.width;
      grid[size++] = T(1) - part * p.width;
    }
    for (std::size_t i = 1; i < size; ++i) {
      for (std::size_t j = i; j > 0 && grid[j] < grid[j - 1]; --j) std::swap(grid[j], grid[j - 1]);
    }
  }
  midline_point<T> at[even + 2 * layer];
  for (std::size_t i = 0; i < size; ++i) at[i] = line.at(grid[i]);
  using values = midline_point<T>;
  const T middle = p.width / T(2);
  plate_peaks<T> peaks{peak_on(
                           line, grid, at, size, middle, [](const values& f) { return f.deflection; },
                           [](const values& f) { return f.deflection_slope; }),
                       peak_on(
                           line, grid, at, size, middle, [](const values& f) { return f.across; },
                           [](const values& f) { return f.across_slope; }),
                       peak_on(
                           line, grid, at, size, middle, [](const values& f) { return f.up; },
                           [](const values& f) { return f.up_slope; }),
                       {corner_twist(p, false), T(0), T(0)},
                       {}};
  const T upper = corner_twist(p, true);
  if (std::fabs(upper) > std::fabs(peaks.twist.value)) peaks.twist = {upper, T(0), T(1)};
  // On the middle line there is no twist, and at a corner nothing else: both are principal moments.
  peaks.principal = peaks.across;
  for (const auto* other : {&peaks.up, &peaks.twist}) {
    if (std::fabs(other->value) > std::fabs(peaks.principal.value)) peaks.principal = *other;
  }
  // Where the panel is wide for its water and the top is free or far, the sides carry the load by twisting, and the
  // worst place is in between.
  const bool shallow = p.load.partly_filled && p.load.level < T(0.05L);  // too few modes for so thin a layer
  if (!shallow && std::fabs(peaks.twist.value) > T(0.5L) * std::fabs(peaks.principal.value)) {
    const plate_peak<T> off = largest_principal(p);
    if (std::fabs(off.value) > std::fabs(peaks.principal.value)) peaks.principal = off;
  }
  return peaks;
}

}  // namespace tankwright::vessel::detail
