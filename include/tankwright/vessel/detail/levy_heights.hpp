// SPDX-License-Identifier: BSL-1.0
/// @file
/// The waves of a plate's modes (`levy_modes.hpp`) at several heights side by side.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include <tankwright/vessel/detail/levy_modes.hpp>

namespace tankwright::vessel::detail {

template <class T>
struct plate_peak {
  T value;  ///< with its sign
  T x;
  T y;

  /// Keep the larger of two.
  void look(const plate_peak& other) noexcept {
    if (std::fabs(other.value) > std::fabs(value)) *this = other;
  }
};

/// How many of `count` modes have waves larger than e^-2 folds at a distance `phase`/k of the first mode: that of mode
/// i falls 2 i + 1 times as fast.
template <class T>
[[nodiscard]] std::size_t modes_alive(std::size_t count, T phase, T folds) noexcept {
  return std::size_t(std::min(folds / phase + T(1), T(count)));
}

/// N heights looked at side by side: the loops over them become vector instructions.
template <class T, std::size_t N>
class heights {
 public:
  heights(const plate_modes<T>& modes, const std::array<T, N>& y) noexcept {
    const plate_load<T>& load = modes.of().load;
    nearest_ = y[0];
    for (std::size_t j = 0; j < N; ++j) {
      y_[j] = y[j];
      here_[j] = load.at(y[j]);
      from_line_[j] = here_[j].from_line;
      side_[j] = here_[j].side;
      nearest_ = std::min({nearest_, y[j], T(1) - y[j], from_line_[j]});
    }
    const T across = modes.first_across(), level = modes.first_from_level();
    for (std::size_t j = 0; j < N; ++j) {
      from_bottom_[j] = std::exp(-modes.k1() * y_[j]);
      from_top_[j] = across / from_bottom_[j];
      from_level_[j] = std::min(level / from_bottom_[j], from_bottom_[j] / level);  // e^-|s|; 0 without a water line
    }
    k1_ = modes.k1();
  }

  [[nodiscard]] const load_here<T>& load(std::size_t j) const noexcept { return here_[j]; }

  /// How many of `count` modes have waves that can be seen at any of the heights.
  [[nodiscard]] std::size_t alive(std::size_t count, T folds) const noexcept {
    return modes_alive(count, k1_ * nearest_, folds);
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
#pragma GCC unroll 1  // a loop taken apart would not become vector instructions
      for (std::size_t j = 0; j < N; ++j) {
        const jet<T> edges = waves(f, y_[j], bottom[j], top[j]);
        const jet<T> line = water_line(f.k * from_line_[j], side_[j], f.line * level[j]);
        use(i, f.k, j, jet<T>{edges[0] + line[0], edges[1] + line[1], edges[2] + line[2], edges[3] + line[3]});
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

}  // namespace tankwright::vessel::detail
