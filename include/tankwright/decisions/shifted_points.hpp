// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where the samples of a plan stand: Sobol points with the direction numbers of Joe and Kuo 2008, by Boost.Random's
/// table. Its engine gives the same points, and drags streams into the program to refuse what is too large for it.
#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <boost/random/sobol.hpp>
#include <cstddef>
#include <cstdint>
#include <span>
#include <tankwright/numerics/counter_random.hpp>
#include <vector>

namespace tankwright::decisions::detail {

/// How many coordinates are Sobol's. Those beyond, which only plans with very many doubtful numbers have, are drawn
/// each by itself (mixed points; Spanier 1995, from memory): less even, as random numbers are, and unbiased.
inline constexpr std::size_t sobol_coordinates = 1024;

/// The direction numbers of one coordinate, from the top bit down (Bratley and Fox 1988, section 2).
[[nodiscard]] inline std::array<std::uint64_t, 64> sobol_directions(std::size_t coordinate) {
  using table = boost::random::default_sobol_table;
  std::array<std::uint64_t, 64> m{};
  if (coordinate == 0) {
    m.fill(1);
  } else {
    const std::uint64_t polynomial = table::polynomial(coordinate - 1);
    std::size_t degree = 0;
    while (polynomial >> (degree + 1) != 0) ++degree;
    for (std::size_t k = 0; k < degree; ++k) m[k] = table::minit(coordinate - 1, k);
    for (std::size_t j = degree; j < m.size(); ++j) {
      m[j] = m[j - degree];
      for (std::size_t k = 0; k < degree; ++k) {
        if ((polynomial >> k & 1u) != 0) m[j] ^= m[j - degree + k] << (degree - k);
      }
    }
  }
  for (std::size_t j = 0; j < m.size(); ++j) m[j] <<= m.size() - 1 - j;
  return m;
}

/// Sobol points, each coordinate shifted by a number of its own round the unit interval. Always the same.
class shifted_points {
 public:
  shifted_points(std::size_t dimensions, std::size_t count) : dimensions_{dimensions}, all_(dimensions * count) {
    const numerics::counter_random shift{20261128}, alone{20261129};
    const std::size_t even = std::min(dimensions, sobol_coordinates);
    for (std::size_t d = 0; d < even; ++d) {
      const auto directions = sobol_directions(d);
      std::uint64_t point = 0;
      for (std::size_t i = 0; i < count; ++i) {
        point ^= directions[static_cast<std::size_t>(std::countr_one(i))];  // in the order of Gray's code
        const double moved = static_cast<double>(point) * 0x1p-64 + shift.uniform(d);
        all_[i * dimensions + d] = moved < 1.0 ? moved : moved - 1.0;
      }
    }
    for (std::size_t d = even; d < dimensions; ++d) {
      for (std::size_t i = 0; i < count; ++i) all_[i * dimensions + d] = alone.uniform(d * count + i);
    }
  }
  [[nodiscard]] std::span<const double> operator[](std::size_t i) const noexcept {
    return {all_.data() + i * dimensions_, dimensions_};
  }
  [[nodiscard]] std::size_t dimensions() const noexcept { return dimensions_; }
  [[nodiscard]] std::size_t size() const noexcept { return dimensions_ ? all_.size() / dimensions_ : 0; }

 private:
  std::size_t dimensions_;
  std::vector<double> all_;
};

}  // namespace tankwright::decisions::detail
