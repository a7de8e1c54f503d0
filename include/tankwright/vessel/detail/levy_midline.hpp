// SPDX-License-Identifier: BSL-1.0
/// @file
/// The largest deflection and moments on the middle line of a plate, by the modes of `levy_modes.hpp`; units and signs
/// as there.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include <tankwright/vessel/detail/levy_heights.hpp>
#include <tankwright/vessel/detail/levy_modes.hpp>

namespace tankwright::vessel::detail {

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
    there.each_wave(modes_, there.alive(count_, T(42)), [&](std::size_t i, T k, std::size_t j, const jet<T>& g) {
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
void climb(const midline<T>& line, summit<T>* first, std::size_t size, T close) noexcept {
  std::array<T, 4> y{};
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
      s.found = (inside && std::fabs(step) <= close) || s.high - s.low <= T(1e-7L);
      s.value = inside && s.found ? f.value + step * f.slope / T(2) : f.value;
      if (inside || !s.found) s.y = inside ? next : (s.low + s.high) / T(2);
      all = all && s.found;
    }
    if (all) return;
  }
}

template <class T>
struct midline_peaks {
  plate_peak<T> deflection, across, up;
};

/// The largest deflection and moments on the middle line: a grid with few modes, then every cell in which the slope
/// changes its sign near the top of the range with all of them.
template <class T>
[[nodiscard]] midline_peaks<T> peaks_on_midline(plate_modes<T>& modes) noexcept {
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
  const plate_peak<T> none{T(0), width / T(2), T(0)};
  midline_peaks<T> peaks{none, none, none};
  for (std::size_t i = 0; i < count; ++i) {
    const summit<T>& s = summits[i];
    plate_peak<T>& best = s.of == &midline_point<T>::deflection ? peaks.deflection
                          : s.of == &midline_point<T>::across   ? peaks.across
                                                                : peaks.up;
    if (std::fabs(s.value) > std::fabs(best.value)) best = {s.value, width / T(2), s.y};
  }
  return peaks;
}

}  // namespace tankwright::vessel::detail
