// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where a plate of `levy_modes.hpp` bends most: the largest deflection and moments on its middle line, the twisting
/// moment at its corners, and the largest principal moment anywhere. Units and signs as there.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <utility>

#include <tankwright/vessel/detail/levy_modes.hpp>

namespace tankwright::vessel::detail {

/// N heights looked at side by side: the loops over them become vector instructions.
template <class T, std::size_t N>
class heights {
 public:
  heights(const plate_modes<T>& modes, const std::array<T, N>& y) noexcept {
    const plate_load<T>& load = modes.of().load;
    nearest_ = T(1);
    for (std::size_t j = 0; j < N; ++j) {
      y_[j] = y[j];
      here_[j] = load.at(y[j]);
      from_line_[j] = here_[j].from_line;
      side_[j] = here_[j].side;
      nearest_ = std::min(nearest_, std::min(y[j], T(1) - y[j]));
      if (load.partly_filled) nearest_ = std::min(nearest_, from_line_[j]);
    }
    const T across = modes.first_across(), level = modes.first_from_level();
    for (std::size_t j = 0; j < N; ++j) {
      from_bottom_[j] = std::exp(-modes.k1() * y_[j]);
      from_top_[j] = across / from_bottom_[j];
      from_level_[j] =
          load.partly_filled ? (side_[j] > T(0) ? level / from_bottom_[j] : from_bottom_[j] / level) : T(0);
    }
    k1_ = modes.k1();
  }

  [[nodiscard]] const load_here<T>& load(std::size_t j) const noexcept { return here_[j]; }

  /// How many of `count` modes have waves larger than 1e-18 at any of the heights.
  [[nodiscard]] std::size_t alive(std::size_t count) const noexcept {
    const T last = T(42) / (k1_ * nearest_);
    return last < T(2 * count) ? std::size_t(last / T(2)) + 1 : count;
  }

  /// What edges and water line send to each height: use(i, k, j, jet) for the first `count` modes.
  template <class Use>
  void each_wave(const plate_modes<T>& modes, std::size_t count, Use use) const noexcept {
    T bottom[N], top[N], level[N], step[3][N];
    for (std::size_t j = 0; j < N; ++j) {
      bottom[j] = from_bottom_[j], top[j] = from_top_[j], level[j] = from_level_[j];
      step[0][j] = bottom[j] * bottom[j], step[1][j] = top[j] * top[j], step[2][j] = level[j] * level[j];
    }
    for (std::size_t i = 0; i < count; ++i) {
      const mode<T> f = modes[i];
      for (std::size_t j = 0; j < N; ++j) {
        jet<T> g = waves(f, y_[j], bottom[j], top[j]);
        const jet<T> line = water_line(f.k * from_line_[j], side_[j], level[j]);
        for (std::size_t n = 0; n < 4; ++n) g[n] += f.line * line[n];
        use(i, f.k, j, g);
        bottom[j] *= step[0][j];
        top[j] *= step[1][j];
        level[j] *= step[2][j];
      }
    }
  }

 private:
  T y_[N], from_line_[N], side_[N], from_bottom_[N], from_top_[N], from_level_[N];
  load_here<T> here_[N];
  T nearest_, k1_;
};

/// Weights that sum an alternating series: of its first n terms after those taken as they are. The error is about
/// 5.8^-n (Cohen, Rodriguez Villegas & Zagier 2000, Exp. Math. 9:3, algorithm 1).
template <class T, int n>
inline constexpr std::array<T, std::size_t(n)> alternating_weights = [] {
  T power = T(1), root = T(5.828427124746190097603377448419396157L);  // 3 + sqrt 8
  for (int i = 0; i < n; ++i) power *= root;
  const T d = (power + T(1) / power) / T(2);
  T b = T(-1), c = -d;
  std::array<T, std::size_t(n)> weights{};
  for (int i = 0; i < n; ++i) {
    c = b - c;
    weights[std::size_t(i)] = c / d;
    b *= T(i + n) * T(i - n) / ((T(i) + T(0.5L)) * T(i + 1));
  }
  return weights;
}();

/// A function of height with its first two derivatives.
template <class T>
struct along_height {
  T value;
  T slope;
  T curve;
};

/// Values on the middle line x = W/2.
template <class T>
struct midline_point {
  along_height<T> deflection, across, up;  ///< w, M_x (bends along the width), M_y (bends along the height)
};

/// The widest panel, in heights, that the series has room for.
inline constexpr std::size_t widest = 20;

/// The middle line: there sin(kx) = +1, -1, +1 ... The first terms are taken as they are, then come `accelerated`
/// weighted ones: wide panels have long waves whose terms fall only after m is about W/H. The strip q/k^4 is summed
/// once for all heights, by the same weights, so that what strip and waves share cancels in every mode.
template <class T, int accelerated = 16>
class midline {
 public:
  explicit midline(plate_modes<T>& modes) noexcept : modes_{modes} {
    const auto plain = std::size_t(std::ceil(modes.of().width));
    T sign = T(1);
    for (; count_ < plain; ++count_, sign = -sign) weight_[count_] = sign;
    for (const T weight : alternating_weights<T, accelerated>) weight_[count_++] = sign * weight;
    modes.solve(count_);
    for (std::size_t i = 0; i < count_; ++i) {
      const mode<T> f = modes[i];
      const T k2 = f.k * f.k, part = weight_[i] * f.size / k2;
      strip_x_ += part;
      strip_ += part / k2;
    }
  }

  template <std::size_t N>
  [[nodiscard]] std::array<midline_point<T>, N> at(const std::array<T, N>& y) const noexcept {
    const heights<T, N> there(modes_, y);
    T w[5][N]{}, x[3][N]{};  // derivatives of w and of -d^2w/dx^2 along y
    there.each_wave(modes_, there.alive(count_), [&](std::size_t i, T k, std::size_t j, const jet<T>& g) {
      const T s0 = weight_[i], s1 = k * s0, s2 = k * s1, s3 = k * s2, s4 = k * s3;
      w[0][j] += s0 * g[0];
      w[1][j] += s1 * g[1];
      w[2][j] += s2 * g[2];
      w[3][j] += s3 * g[3];
      w[4][j] += s4 * (T(2) * g[2] - g[0]);  // no load on a wave: Y'''' = 2 Y'' - Y
      x[0][j] += s2 * g[0];
      x[1][j] += s3 * g[1];
      x[2][j] += s4 * g[2];
    });
    const T nu = modes_.of().poisson;
    std::array<midline_point<T>, N> points;
    for (std::size_t j = 0; j < N; ++j) {
      w[0][j] += strip_ * there.load(j).q;
      w[1][j] += strip_ * there.load(j).slope;
      x[0][j] += strip_x_ * there.load(j).q;
      x[1][j] += strip_x_ * there.load(j).slope;
      points[j] = {{w[0][j], w[1][j], w[2][j]},
                   {x[0][j] - nu * w[2][j], x[1][j] - nu * w[3][j], x[2][j] - nu * w[4][j]},
                   {nu * x[0][j] - w[2][j], nu * x[1][j] - w[3][j], nu * x[2][j] - w[4][j]}};
    }
    return points;
  }
  [[nodiscard]] midline_point<T> at(T y) const noexcept { return at(std::array<T, 1>{y})[0]; }

 private:
  const plate_modes<T>& modes_;
  std::size_t count_ = 0;
  T strip_ = T(0), strip_x_ = T(0);  ///< w and -d^2w/dx^2 of the strip, for q = 1
  T weight_[widest + accelerated];
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
/// known: 7 zeta(3)/8 and pi^4/96 over odd m. What the edges do to each other falls as e^-kH, and what the water line
/// does as e^-k times its distance.
/// @param known a moment of the plate; the sum ends at 1e-12 of the larger, or when it must stay below `rival`
template <class T>
[[nodiscard]] T corner_twist(plate_modes<T>& modes, bool at_top, T known, T rival) noexcept {
  const plate<T>& p = modes.of();
  const T pi = std::numbers::pi_v<T>, pi3 = pi * pi * pi;
  if ((at_top ? p.top : p.bottom) == edge_kind::clamped) return T(0);
  const plate_edge<T>& edge = modes.edge(at_top);
  const auto alone = [&](const jet<T>& rest) {  // slope along the distance from the edge, of the edge by itself
    const auto own = edge.answer(rest);
    return own[1] - own[0] + rest[1];
  };
  const T direction = at_top ? T(-1) : T(1);
  const load_here<T> load = p.load.at(at_top ? T(1) : T(0));
  const T slope_inward = direction * load.slope;
  const T of_constant = alone({T(1), T(0), T(0), T(0)}) * load.q,
          of_slope = alone({T(0), T(1), T(0), T(0)}) * slope_inward;
  constexpr T odd_cubes = T(7) / T(8) * T(1.202056903159594285399738161511449990764986L);
  const T odd_fourths = pi3 * pi / T(96);
  T sum = T(4) * p.width * p.width / pi3 * (of_constant * odd_cubes + of_slope * (p.width / pi) * odd_fourths);
  const T nearest = p.load.partly_filled ? std::fmin(load.from_line, T(1)) : T(1);
  const T ratio = std::exp(T(-2) * modes.k1() * nearest), tail = ratio / (T(1) - ratio), twist = T(1) - p.poisson;
  T before = HUGE_VAL;
  for (std::size_t i = 0; i < plate_modes<T>::most; ++i) {
    modes.solve(i + 1);
    const mode<T> f = modes[i];
    const T* own = at_top ? f.c + 2 : f.c;
    const T* far = at_top ? f.c : f.c + 2;
    const T k2 = f.k * f.k, s = f.k * load.from_line;
    const T slope = own[1] - own[0] + modes.across_height(i) * (far[0] + far[1] * (f.k - T(1))) +
                    f.line * (T(4) * slope_inward + direction * load.side * modes.from_level(i, at_top) * (T(2) + s));
    const T term = k2 * slope - f.size * (of_constant + of_slope / f.k) / k2;
    sum += term;
    // Of two terms, because one may be small where it changes its sign.
    const T left = std::fmax(std::fabs(term), before * ratio) * tail;
    if (left <= T(1e-12L) * std::fmax(std::fabs(sum), known / twist)) break;
    if (twist * (std::fabs(sum) + T(2) * left) < rival) break;
    before = std::fabs(term);
  }
  return -twist * direction * sum;
}

/// Moments anywhere, for the search off the middle line. The particular solution is summed in closed form (a strip
/// across the width), so that only the waves of the edges are left, which die out within the panel.
template <class T>
class field {
 public:
  static constexpr std::size_t most = 48;

  /// What the modes give at N heights, ready for any x.
  template <std::size_t N>
  struct rows {
    T curve[N], twist_slope[N];  ///< q and dq/dy of the strip
    std::size_t count;
    T across[most][N], up[most][N], twist[most][N];
  };

  explicit field(plate_modes<T>& modes) noexcept : modes_{modes} {}

  template <std::size_t N>
  [[nodiscard]] rows<N> at_heights(const std::array<T, N>& y, std::size_t count) const noexcept {
    const heights<T, N> there(modes_, y);
    const T nu = modes_.of().poisson;
    rows<N> r;
    r.count = there.alive(count);
    modes_.solve(r.count);
    for (std::size_t j = 0; j < N; ++j) r.curve[j] = there.load(j).q, r.twist_slope[j] = there.load(j).slope;
    there.each_wave(modes_, r.count, [&](std::size_t i, T k, std::size_t j, const jet<T>& g) {
      const T k2 = k * k;
      r.across[i][j] = k2 * (g[0] - nu * g[2]);
      r.up[i][j] = k2 * (nu * g[0] - g[2]);
      r.twist[i][j] = k2 * g[1];
    });
    return r;
  }

  /// Largest principal moments at x, with their signs.
  template <std::size_t N>
  [[nodiscard]] std::array<T, N> principal(const rows<N>& r, T x) const noexcept {
    const T nu = modes_.of().poisson, width = modes_.of().width;
    T across[N], up[N], twist[N];
    for (std::size_t j = 0; j < N; ++j) {  // w_p = q (x^4 - 2 W x^3 + W^3 x)/24
      across[j] = r.curve[j] * x * (width - x) / T(2);
      up[j] = nu * across[j];
      twist[j] = r.twist_slope[j] * (width * width * width - x * x * (T(6) * width - T(4) * x)) / T(24);
    }
    T sine = std::sin(modes_.k1() * x), cosine = std::cos(modes_.k1() * x);
    const T sine_step = T(2) * sine * cosine, cosine_step = T(1) - T(2) * sine * sine;
    for (std::size_t i = 0; i < r.count; ++i) {
      for (std::size_t j = 0; j < N; ++j) {
        across[j] += r.across[i][j] * sine;
        up[j] += r.up[i][j] * sine;
        twist[j] += r.twist[i][j] * cosine;
      }
      const T next = sine * cosine_step + cosine * sine_step;
      cosine = cosine * cosine_step - sine * sine_step;
      sine = next;
    }
    std::array<T, N> largest;
    for (std::size_t j = 0; j < N; ++j) {
      const T mean = (across[j] + up[j]) / T(2), half = (across[j] - up[j]) / T(2), turn = (T(1) - nu) * twist[j];
      const T radius = std::sqrt(half * half + turn * turn);
      largest[j] = mean >= T(0) ? mean + radius : mean - radius;
    }
    return largest;
  }

 private:
  plate_modes<T>& modes_;
};

/// The largest |principal moment| off the middle line, where it may be above `known`: a coarse grid, then parabolas
/// through nine points, from the best point near the side and from the best one near the middle, because there may be a
/// peak in either.
template <class T>
[[nodiscard]] plate_peak<T> largest_principal(plate_modes<T>& modes, T known) noexcept {
  const plate<T>& p = modes.of();
  const field<T> moments(modes);
  const T half = p.width / T(2);
  const auto look = [&](plate_peak<T>& best, T value, T x, T y) {
    if (std::fabs(value) > std::fabs(best.value)) best = {value, x, y};
  };
  // The peak stands within about one height (of panel or water) of a side.
  const T high = p.load.partly_filled ? std::fmin(T(2) * p.load.level, T(1)) : T(1), reach = std::fmin(half, high);
  constexpr std::size_t cells = 7, side = cells + 1;
  plate_peak<T> starts[2]{};
  std::array<T, side> ys;
  for (std::size_t j = 0; j < side; ++j) ys[j] = high * T(j) / T(cells);
  const auto coarse = moments.at_heights(ys, 8);
  for (std::size_t i = 0; i < side; ++i) {
    const T x = reach * T(i) / T(cells);
    const auto values = moments.principal(coarse, x);
    for (std::size_t j = 0; j < side; ++j) look(starts[2 * i > cells], values[j], x, ys[j]);
  }
  if (std::fabs(starts[1].value) > std::fabs(starts[0].value)) std::swap(starts[0], starts[1]);
  plate_peak<T> highest{};
  for (plate_peak<T>& best : starts) {
    // What lies between the points of the coarse grid is at most a tenth above them.
    if (std::fabs(best.value) < T(0.85L) * std::fmax(known, std::fabs(highest.value))) continue;
    T hx = reach / T(2 * cells), hy = high / T(2 * cells);
    for (const std::size_t count : {16, 24}) {
      best.value = T(0);  // fewer modes are not enough for the value
      const T x0 = std::fmin(std::fmax(best.x, hx), half - hx), y0 = std::fmin(std::fmax(best.y, hy), T(1) - hy);
      const std::array<T, 4> y{y0 - hy, y0, y0 + hy, y0};  // the fourth fills the vector
      const auto rows = moments.at_heights(y, count);
      T f[3][3];
      for (std::size_t i = 0; i < 3; ++i) {
        const T x = x0 + hx * (T(i) - T(1));
        const auto values = moments.principal(rows, x);
        for (std::size_t j = 0; j < 3; ++j) {
          f[i][j] = std::fabs(values[j]);
          look(best, values[j], x, y[j]);
        }
      }
      const T gx = (f[2][1] - f[0][1]) / T(2), gy = (f[1][2] - f[1][0]) / T(2);
      const T xx = f[2][1] - T(2) * f[1][1] + f[0][1], yy = f[1][2] - T(2) * f[1][1] + f[1][0];
      const T xy = (f[2][2] - f[2][0] - f[0][2] + f[0][0]) / T(4);
      const T det = xx * yy - xy * xy;
      if (xx < T(0) && det > T(0)) {
        const auto inside = [](T v, T end) { return std::fmin(std::fmax(v, T(0)), end); };
        const T x = inside(x0 - hx * (gx * yy - gy * xy) / det, half);
        const T top = inside(y0 - hy * (gy * xx - gx * xy) / det, T(1));
        look(best, moments.principal(moments.at_heights(std::array<T, 1>{top}, count), x)[0], x, top);
      }
      hx /= T(3), hy /= T(3);
    }
    best.value = moments.principal(moments.at_heights(std::array<T, 1>{best.y}, field<T>::most), best.x)[0];
    if (std::fabs(best.value) > std::fabs(highest.value)) highest = best;
  }
  return highest;
}

/// One of the three functions on the middle line.
template <class T>
using line_of = along_height<T> midline_point<T>::*;

/// A place on the middle line where a function may be largest: where its slope is zero between two heights, or an end.
template <class T>
struct summit {
  line_of<T> of;
  T low, high;
  bool rises;  ///< at `low`
  T y;
  T value = T(0);
  bool found = false;
};

/// The summit between two heights whose slopes differ in sign, from the cubic through the slopes and their derivatives.
template <class T>
[[nodiscard]] summit<T> summit_between(line_of<T> of, T low, const along_height<T>& a, T high,
                                       const along_height<T>& b) noexcept {
  const T h = high - low, da = h * a.curve, db = h * b.curve;
  const T square = T(3) * (b.slope - a.slope) - T(2) * da - db, cube = T(2) * (a.slope - b.slope) + da + db;
  const T secant = a.slope / (a.slope - b.slope);
  T t = secant;
  for (int i = 0; i < 2; ++i) {
    t -= (a.slope + t * (da + t * (square + t * cube))) / (da + t * (T(2) * square + t * T(3) * cube));
    if (!(t >= T(0) && t <= T(1))) t = secant;
  }
  const T value = a.value + h * t * (a.slope + t * (da / T(2) + t * (square / T(3) + t * cube / T(4))));
  // A little more than the cell: with few modes the zero may seem to be on the other side of its end.
  return {of, std::fmax(low - h / T(16), T(0)), std::fmin(high + h / T(16), T(1)), a.slope >= T(0), low + h * t, value};
}

/// Newton's method on the slope, for four summits side by side, kept within its bracket.
template <class T>
void climb(const midline<T>& line, summit<T>* first, std::size_t size, T near) noexcept {
  std::array<T, 4> y;
  for (int round = 0; round < 60; ++round) {
    for (std::size_t j = 0; j < 4; ++j) y[j] = first[std::min(j, size - 1)].y;
    const auto at = line.at(y);
    bool all = true;
    for (std::size_t j = 0; j < size; ++j) {
      summit<T>& s = first[j];
      if (s.found) continue;
      const along_height<T> f = at[j].*s.of;
      ((f.slope >= T(0)) == s.rises ? s.low : s.high) = s.y;
      const T step = -f.slope / f.curve, next = s.y + step;
      const bool inside = next > s.low && next < s.high;
      s.found = (inside && std::fabs(step) <= near) || s.high - s.low <= T(1e-7L);
      s.value = inside && s.found ? f.value + step * f.slope / T(2) : f.value;
      if (inside || !s.found) s.y = inside ? next : (s.low + s.high) / T(2);
      all = all && s.found;
    }
    if (all) return;
  }
}

/// The largest deflection and moments on the middle line: a grid with few modes, then every cell in which the slope
/// changes its sign near the top of the range with all of them.
template <class T>
void peaks_on_midline(plate_modes<T>& modes, plate_peaks<T>& peaks) noexcept {
  const T width = modes.of().width;
  constexpr std::size_t even = 12, room = even + 12 + 8;
  std::array<T, room> y;
  std::size_t size = 0;
  for (std::size_t i = 0; i < even; ++i) y[size++] = T(i) / T(even - 1);
  if (width < T(0.6L)) {  // tall panels: what happens at an edge happens within one width of it
    for (const T part : {T(0.15L), T(0.3L), T(0.5L), T(0.7L), T(0.9L), T(1.2L)}) {
      y[size++] = part * width;
      y[size++] = T(1) - part * width;
    }
  }
  const plate_load<T>& load = modes.of().load;
  if (load.partly_filled && load.level < T(0.25L)) {  // and what shallow water does, near its level
    for (const T part : {T(0.25L), T(0.5L), T(0.75L), T(1), T(1.4L), T(2), T(2.8L), T(4)})
      y[size++] = part * load.level;
  }
  if (size > even) std::sort(y.begin(), y.begin() + std::ptrdiff_t(size));
  const midline<T, 8> rough(modes);
  std::array<midline_point<T>, room> at;
  for (std::size_t i = 0; i < size; i += 4) {
    const auto four = rough.at(std::array<T, 4>{y[i], y[i + 1], y[i + 2], y[i + 3]});
    std::copy(four.begin(), four.end(), at.begin() + std::ptrdiff_t(i));
  }

  summit<T> summits[3 * (room + 1)];
  std::size_t count = 0;
  for (const line_of<T> of : {&midline_point<T>::deflection, &midline_point<T>::across, &midline_point<T>::up}) {
    const std::size_t from = count;
    for (const std::size_t i : {std::size_t(0), size - 1})
      summits[count++] = {of, y[i], y[i], true, y[i], (at[i].*of).value};
    for (std::size_t i = 0; i + 1 < size; ++i) {
      const along_height<T>&a = at[i].*of, &b = at[i + 1].*of;
      if ((a.slope < T(0)) != (b.slope < T(0))) summits[count++] = summit_between(of, y[i], a, y[i + 1], b);
    }
    // Those that are clearly lower need no more digits.
    T most = T(0);
    for (std::size_t i = from; i < count; ++i) most = std::fmax(most, std::fabs(summits[i].value));
    const auto low = [&](const summit<T>& s) { return std::fabs(s.value) < T(0.9L) * most; };
    count = std::size_t(std::remove_if(summits + from, summits + count, low) - summits);
  }
  const midline<T> line(modes);
  const T least = std::fmin(width, load.partly_filled ? load.level : T(1));
  for (std::size_t i = 0; i < count; i += 4) {
    climb(line, summits + i, std::min(count - i, std::size_t(4)), T(1e-5L) * std::fmin(least, T(1)));
  }
  peaks.deflection = peaks.across = peaks.up = {T(0), width / T(2), T(0)};
  for (std::size_t i = 0; i < count; ++i) {
    const summit<T>& s = summits[i];
    plate_peak<T>& best = s.of == &midline_point<T>::deflection ? peaks.deflection
                          : s.of == &midline_point<T>::across   ? peaks.across
                                                                : peaks.up;
    if (std::fabs(s.value) > std::fabs(best.value)) best = {s.value, width / T(2), s.y};
  }
}

/// All peaks of a plate.
template <class T>
[[nodiscard]] plate_peaks<T> solve_plate(const plate<T>& p) noexcept {
  plate_modes<T> modes(p);
  plate_peaks<T> peaks{};
  peaks_on_midline(modes, peaks);
  // On the middle line there is no twist, and at a corner nothing else: both are principal moments.
  peaks.principal = std::fabs(peaks.up.value) > std::fabs(peaks.across.value) ? peaks.up : peaks.across;
  const T known = std::fabs(peaks.principal.value);
  peaks.twist = {corner_twist(modes, false, known, T(0)), T(0), T(0)};
  const T upper = corner_twist(modes, true, known, std::fabs(peaks.twist.value));
  if (std::fabs(upper) > std::fabs(peaks.twist.value)) peaks.twist = {upper, T(0), T(1)};
  if (std::fabs(peaks.twist.value) > known) peaks.principal = peaks.twist;
  // Where the panel is wide for its water and the top is free or far, the sides carry the load by twisting, and the
  // worst place is in between.
  const bool shallow = p.load.partly_filled && p.load.level < T(0.05L);  // too few modes for so thin a layer
  if (!shallow && std::fabs(peaks.twist.value) > T(0.5L) * std::fabs(peaks.principal.value)) {
    const plate_peak<T> off = largest_principal(modes, std::fabs(peaks.principal.value));
    if (std::fabs(off.value) > std::fabs(peaks.principal.value)) peaks.principal = off;
  }
  return peaks;
}

}  // namespace tankwright::vessel::detail
