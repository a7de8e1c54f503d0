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
    there.each_wave(modes_, there.alive(count_, T(21)), [&](std::size_t i, T k, std::size_t j, const jet<T>& g) {
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
  std::array<T, widest + accelerated> weight_;
};

/// One of the three functions on the middle line.
template <class T>
using line_of = along_height<T> midline_point<T>::*;

template <class T>
struct midline_peaks {
  plate_peak<T> deflection, across, up;
};

/// Between two heights a function stops rising.
template <class T>
struct summit {
  line_of<T> of;
  plate_peak<T>* peak;  ///< the largest of this function so far
  T low, high;
  T y;        ///< where to look next
  T value{};  ///< there, by the parabola that led to it
};

/// Newton's method on the slope, for four summits side by side, kept within their brackets.
template <class T>
void climb(const midline<T>& line, summit<T>* four) noexcept {
  for (bool again = true; again;) {
    const auto at = line.at(std::array<T, 4>{four[0].y, four[1].y, four[2].y, four[3].y});
    again = false;
    for (std::size_t j = 0; j < at.size(); ++j) {
      summit<T>& s = four[j];
      const along_height<T> f = at[j].*s.of;
      (f.slope > T(0) ? s.low : s.high) = s.y;
      T next = s.y - f.slope / f.curve;
      if (!(next >= s.low && next <= s.high)) next = (s.low + s.high) / T(2);
      const T more = f.slope * (next - s.y) / T(2);
      again = again || more > T(1e-8L) * std::fabs(s.peak->value);
      s.value = f.value + more;
      s.y = next;
    }
  }
  for (std::size_t j = 0; j < 4; ++j) four[j].peak->look({four[j].value, four[j].peak->x, four[j].y});
}

/// The largest deflection and moments on the middle line: at the heights of a grid, and wherever between two of them a
/// function stops rising. What the load bends the other way is largest at a clamped edge.
template <class T>
[[nodiscard]] midline_peaks<T> peaks_on_midline(plate_modes<T>& modes) noexcept {
  const plate<T>& p = modes.of();
  constexpr std::size_t coarse = 12, closer = 8;
  std::array<T, coarse + closer> y;
  std::size_t size = 0;
  T from{};
  // What happens at the bottom happens within one width of it, and what shallow water does near its level. At the top
  // the load is no larger.
  const T nearby = T(3) * (p.load.partly_filled ? std::fmin(p.width, p.load.level) : p.width);
  if (nearby < T(1)) {
    for (; size < closer; from += nearby / T(closer)) y[size++] = from;
  }
  for (std::size_t i = 0; i < coarse; ++i) {
    const T part = T(i) / T(coarse - 1);
    y[size++] = from + (T(1) - from) * part * (T(5) - part) / T(4);
  }
  const midline<T> line(modes);
  std::array<midline_point<T>, coarse + closer> at;
  for (std::size_t i = 0; i < size; i += 4) {
    const auto four = line.at(std::array<T, 4>{y[i], y[i + 1], y[i + 2], y[i + 3]});
    std::copy(four.begin(), four.end(), at.begin() + std::ptrdiff_t(i));
  }
  midline_peaks<T> peaks{};
  std::array<summit<T>, 3 * (coarse + closer)> summits;
  std::size_t count = 0;
  const auto look = [&](line_of<T> of, plate_peak<T>& peak) {
    for (std::size_t i = 0; i < size; ++i) peak.look({(at[i].*of).value, p.width / T(2), y[i]});
    for (std::size_t i = 0; i + 1 < size; ++i) {
      const along_height<T>&a = at[i].*of, &b = at[i + 1].*of;
      if (a.slope > T(0) && b.slope < T(0)) {
        const T low = y[i], high = y[i + 1];
        summits[count++] = {of, &peak, low, high, low + (high - low) * a.slope / (a.slope - b.slope)};
      }
    }
  };
  look(&midline_point<T>::deflection, peaks.deflection);
  look(&midline_point<T>::across, peaks.across);
  look(&midline_point<T>::up, peaks.up);
  for (std::size_t i = count; i % 4 != 0; ++i) summits[i] = summits[i - 1];
  for (std::size_t i = 0; i < count; i += 4) climb(line, &summits[i]);
  return peaks;
}

}  // namespace tankwright::vessel::detail
