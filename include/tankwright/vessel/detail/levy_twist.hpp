// SPDX-License-Identifier: BSL-1.0
/// @file
/// Off the middle line of a plate: the twisting moment at its corners, and the largest principal moment in between, by
/// the modes of `levy_modes.hpp`; units and signs as there.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

#include <tankwright/vessel/detail/levy_heights.hpp>
#include <tankwright/vessel/detail/levy_modes.hpp>

namespace tankwright::vessel::detail {

/// The twisting moment at the lower or upper end of a side edge, -(1 - nu) sum k^2 Y'.
///
/// The terms fall as 1/m^3, but with the two edges taken alone they are A/m^3 + B/m^4 exactly, and those sums are
/// known: 7 zeta(3)/8 and pi^4/96 over odd m. What the edges do to each other falls as e^-kH, and what the water line
/// does as e^-k times its distance.
template <class T>
[[nodiscard]] T corner_twist(plate_modes<T>& modes, bool at_top) noexcept {
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
  const std::size_t count = modes_alive(plate_modes<T>::most, modes.k1() * load.from_line, T(14));
  modes.solve(count);
  for (std::size_t i = 0; i < count; ++i) {
    const mode<T> f = modes[i];
    const T* own = at_top ? f.c + 2 : f.c;
    const T* other = at_top ? f.c : f.c + 2;
    const T k2 = f.k * f.k, s = f.k * load.from_line;
    const T slope = own[1] - own[0] + modes.across_height(i) * (other[0] + other[1] * (f.k - T(1))) +
                    f.line * (T(4) * slope_inward + direction * load.side * modes.from_level(i, at_top) * (T(2) + s));
    sum += k2 * slope - f.size * (of_constant + of_slope / f.k) / k2;
  }
  return (p.poisson - T(1)) * direction * sum;
}

/// Moments anywhere, for the search off the middle line. The particular solution is summed in closed form (a strip
/// across the width), so that only the waves of the edges are left, which die out within the panel.
template <class T>
class field {
 public:
  static constexpr std::size_t most = plate_modes<T>::most;

  /// What the modes give at N heights, ready for any x: `count` of them, without waves below 1e-10.
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
    r.count = there.alive(count, T(12));
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

  /// Largest principal moments at M places along the width, `step` apart, with their signs.
  template <std::size_t M, std::size_t N>
  [[nodiscard]] std::array<std::array<T, N>, M> principal(const rows<N>& r, T from, T step) const noexcept {
    const T nu = modes_.of().poisson, width = modes_.of().width;
    T across[M][N], up[M][N], twist[M][N], sine[M], cosine[M];
    sine[0] = std::sin(modes_.k1() * from), cosine[0] = std::cos(modes_.k1() * from);
    if constexpr (M > 1) turn<M>(sine, cosine, std::sin(modes_.k1() * step), std::cos(modes_.k1() * step));
    for (std::size_t m = 0; m < M; ++m) {
      const T x = from + step * T(m);
      for (std::size_t j = 0; j < N; ++j) {  // w_p = q (x^4 - 2 W x^3 + W^3 x)/24
        across[m][j] = r.curve[j] * x * (width - x) / T(2);
        up[m][j] = nu * across[m][j];
        twist[m][j] = r.twist_slope[j] * (width * width * width - x * x * (T(6) * width - T(4) * x)) / T(24);
      }
    }
    T sine_step[M], cosine_step[M];
    for (std::size_t m = 0; m < M; ++m) {
      sine_step[m] = T(2) * sine[m] * cosine[m], cosine_step[m] = T(1) - T(2) * sine[m] * sine[m];
    }
    for (std::size_t i = 0; i < r.count; ++i) {
      for (std::size_t m = 0; m < M; ++m) {
#pragma GCC unroll 1
        for (std::size_t j = 0; j < N; ++j) {
          across[m][j] += r.across[i][j] * sine[m];
          up[m][j] += r.up[i][j] * sine[m];
          twist[m][j] += r.twist[i][j] * cosine[m];
        }
      }
      for (std::size_t m = 0; m < M; ++m) {
        const T next = sine[m] * cosine_step[m] + cosine[m] * sine_step[m];
        cosine[m] = cosine[m] * cosine_step[m] - sine[m] * sine_step[m];
        sine[m] = next;
      }
    }
    std::array<std::array<T, N>, M> largest;
    for (std::size_t m = 0; m < M; ++m) {
      for (std::size_t j = 0; j < N; ++j) {
        const T mean = (across[m][j] + up[m][j]) / T(2), half = (across[m][j] - up[m][j]) / T(2);
        const T turning = (T(1) - nu) * twist[m][j];
        largest[m][j] = mean + std::copysign(std::sqrt(half * half + turning * turning), mean);
      }
    }
    return largest;
  }
  [[nodiscard]] T principal(T x, T y, std::size_t count) const noexcept {
    return principal<1>(at_heights(std::array<T, 1>{y}, count), x, T(0))[0][0];
  }

 private:
  /// sin and cos of places a step apart, from those of the first and of the step.
  template <std::size_t M>
  static void turn(T (&sine)[M], T (&cosine)[M], T sine_step, T cosine_step) noexcept {
    for (std::size_t m = 1; m < M; ++m) {
      sine[m] = sine[m - 1] * cosine_step + cosine[m - 1] * sine_step;
      cosine[m] = cosine[m - 1] * cosine_step - sine[m - 1] * sine_step;
    }
  }

  plate_modes<T>& modes_;
};

/// The largest |principal moment| off the middle line, or `known` where that is larger: a coarse grid, then parabolas
/// through nine points, from the best point near the side and from the best one near the middle, because there may be a
/// peak in either.
template <class T>
[[nodiscard]] plate_peak<T> largest_principal(plate_modes<T>& modes, const plate_peak<T>& known) noexcept {
  const plate<T>& p = modes.of();
  const field<T> moments(modes);
  const T half = p.width / T(2);
  // The peak stands within about one height (of panel or water) of a side.
  const T high = p.load.partly_filled ? std::fmin(T(2) * p.load.level, T(1)) : T(1), reach = half < high ? half : high;
  // As many modes as tell the water's depth from none, and more for water that is shallow beside the width.
  const T shallow = std::fmax(T(0.06L) * p.width / high, T(1));
  const auto modes_for = [&](std::size_t deep) {
    return std::min(std::size_t(std::ceil(T(deep) * shallow)), field<T>::most);
  };
  constexpr std::size_t cells = 7, side = cells + 1;
  plate_peak<T> starts[2]{};
  std::array<T, side> ys;
  for (std::size_t j = 0; j < side; ++j) ys[j] = high * T(j) / T(cells);
  const auto coarse = moments.template principal<side>(moments.at_heights(ys, modes_for(8)), T(0), reach / T(cells));
  for (std::size_t i = 0; i < side; ++i) {
    const T x = reach * T(i) / T(cells);
    for (std::size_t j = 0; j < side; ++j) starts[2 * i > cells].look({coarse[i][j], x, ys[j]});
  }
  plate_peak<T> highest = known;
  for (plate_peak<T>& best : starts) {
    // What lies between the points was never found to be more than 15 % above the coarse grid.
    if (std::fabs(best.value) < T(0.85L) * std::fabs(highest.value)) continue;
    T hx = reach / T(2 * cells), hy = high / T(2 * cells);
    for (const std::size_t count : {modes_for(16), modes_for(48)}) {
      best.value = T(0);  // fewer modes are not enough for the value
      const T x0 = std::fmin(std::fmax(best.x, hx), half - hx), y0 = std::fmin(std::fmax(best.y, hy), T(1) - hy);
      const std::array<T, 3> x{x0 - hx, x0, x0 + hx};
      const std::array<T, 4> y{y0 - hy, y0, y0 + hy, y0};  // the fourth fills the vector
      const auto values = moments.template principal<3>(moments.at_heights(y, count), x[0], hx);
      T f[3][4];
      for (std::size_t i = 0; i < x.size(); ++i) {
        for (std::size_t j = 0; j < y.size(); ++j) {
          f[i][j] = std::fabs(values[i][j]);
          best.look({values[i][j], x[i], y[j]});
        }
      }
      const T gx = (f[2][1] - f[0][1]) / T(2), gy = (f[1][2] - f[1][0]) / T(2);
      const T xx = f[2][1] - T(2) * f[1][1] + f[0][1], yy = f[1][2] - T(2) * f[1][1] + f[1][0];
      const T xy = (f[2][2] - f[2][0] - f[0][2] + f[0][0]) / T(4);
      const T det = xx * yy - xy * xy;
      // Where the parabola has no top this is just another place.
      const auto inside = [](T v, T end) { return std::fmin(std::fmax(v, T(0)), end); };
      const T top_x = inside(x0 - hx * (gx * yy - gy * xy) / det, half);
      const T top_y = inside(y0 - hy * (gy * xx - gx * xy) / det, T(1));
      best.look({moments.principal(top_x, top_y, count), top_x, top_y});
      hx /= T(3), hy /= T(3);
    }
    highest.look(best);
  }
  return highest;
}

}  // namespace tankwright::vessel::detail
