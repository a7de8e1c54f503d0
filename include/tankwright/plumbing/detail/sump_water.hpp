// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where water stands in a row of chambers: at rest by spilling and merging, in motion by the heads over the baffles.
#pragma once

#include <limits>
#include <span>
#include <string_view>
#include <vector>

#include <tankwright/numerics/root.hpp>
#include <tankwright/plumbing/overflow.hpp>
#include <tankwright/plumbing/sump_plan.hpp>

namespace tankwright::plumbing::detail {

/// Volumes and levels of the chambers of a sump, on raw numbers. It refers to the plan and does not copy it.
class sump_shape {
 public:
  explicit sump_shape(const sump& plan) : plan_{&plan} {}

  [[nodiscard]] std::size_t size() const noexcept { return plan_->chambers.size(); }

  /// Volume below z: of a chamber, of a range of chambers, of all.
  [[nodiscard]] double below(std::size_t i, double z) const noexcept {
    const chamber& c = plan_->chambers[i];
    return numbers_of(c.plan).below(z) - c.gear.value() * z;
  }
  [[nodiscard]] double below(std::size_t first, std::size_t last, double z) const noexcept {
    double sum = 0.0;
    for (std::size_t i = first; i <= last; ++i) sum += below(i, z);
    return sum;
  }
  [[nodiscard]] double below_all(double z) const noexcept { return below(0, size() - 1, z); }

  /// Free area of a chamber at z.
  [[nodiscard]] double free_area(std::size_t i, double z) const noexcept {
    const chamber& c = plan_->chambers[i];
    return numbers_of(c.plan).at(z) - c.gear.value();
  }

  /// The one level that a volume reaches in a range of chambers.
  [[nodiscard]] double level(std::string_view here, std::size_t first, std::size_t last, double water) const {
    double sum = 0.0;
    bool upright = true;
    for (std::size_t i = first; i <= last; ++i) {
      upright = upright && numbers_of(plan_->chambers[i].plan).vertical();
      sum += free_area(i, 0.0);
    }
    if (upright) return water / sum;
    if (water <= 0.0) return water / sum;
    double high = 2.0 * plan_->rim->value();
    while (below(first, last, high) < water) high *= 2.0;
    return numerics::bracketed_root(
        here, "level", [&](double z) { return below(first, last, z) - water; }, 0.0, high);
  }

  /// Height at which water passes the baffle after chamber i; minus infinity where it has a gap at the floor.
  [[nodiscard]] double crest(std::size_t i) const noexcept {
    const baffle& b = plan_->baffles[i];
    return b.gap.value() > 0.0 ? -std::numeric_limits<double>::infinity() : b.crest->value();
  }
  /// The first chamber of those joined to chamber i by gaps at the floor.
  [[nodiscard]] std::size_t first_joined(std::size_t i) const noexcept {
    while (i > 0 && plan_->baffles[i - 1].gap.value() > 0.0) --i;
    return i;
  }

 private:
  const sump* plan_;
};

/// Let the water in the chambers come to rest. `water` are volumes and are changed; `levels` are written.
///
/// Pools are chambers with one level. A pool that stands above its lower barrier spills over it into its neighbour, as
/// much as the neighbour takes until it stands at the barrier too; what is left over then makes one pool of both. Equal
/// barriers spill downstream. All areas are `scale` times those of the shape.
///
/// @return the highest level
inline double settle(std::string_view here, const sump_shape& shape, double scale, std::span<double> water,
                     std::span<double> levels) {
  constexpr double wall = std::numeric_limits<double>::infinity();
  const std::size_t n = shape.size();
  // pool k holds the chambers first[k] .. first[k + 1] - 1; its water is in water[k]
  std::vector<std::size_t> first;
  first.reserve(n + 1);
  for (std::size_t i = 0; i < n; ++i) {
    if (i > 0 && shape.crest(i - 1) == -wall) {
      water[first.size() - 1] += water[i];
    } else {
      water[first.size()] = water[i];
      first.push_back(i);
    }
  }
  first.push_back(n);
  const auto pools = [&] { return first.size() - 1; };
  const auto barrier_before = [&](std::size_t k) { return k == 0 ? wall : shape.crest(first[k] - 1); };
  const auto capacity = [&](std::size_t k, double z) { return scale * shape.below(first[k], first[k + 1] - 1, z); };

  for (std::size_t k = 0; k < pools();) {
    const double left = barrier_before(k), right = k + 1 == pools() ? wall : barrier_before(k + 1);
    const double lower = left < right ? left : right;
    const double excess = lower == wall ? 0.0 : water[k] - capacity(k, lower);
    if (!(excess > 0.0)) {
      ++k;
      continue;
    }
    const bool downstream = right <= left;
    const std::size_t to = downstream ? k + 1 : k - 1;
    const double beyond = downstream ? (to + 1 == pools() ? wall : barrier_before(to + 1)) : barrier_before(to);
    const double room = beyond < lower ? excess : capacity(to, lower) - water[to];
    if (excess <= room) {
      water[to] += excess;
      water[k] = capacity(k, lower);  // and not `-= excess`, whose rounding could spill again
      if (downstream)
        ++k;
      else
        --k;
      continue;
    }
    const std::size_t upper = downstream ? to : k;  // merged into the pool before it
    water[upper - 1] += water[upper];
    for (std::size_t j = upper; j + 1 < pools(); ++j) water[j] = water[j + 1];
    first.erase(first.begin() + static_cast<std::ptrdiff_t>(upper));
    k = upper - 1;
  }

  double highest = 0.0;
  for (std::size_t k = 0; k < pools(); ++k) {
    const double z = shape.level(here, first[k], first[k + 1] - 1, water[k] / scale);
    for (std::size_t i = first[k]; i < first[k + 1]; ++i) levels[i] = z;
    highest = z > highest ? z : highest;
  }
  return highest;
}

/// Head over a baffle that passes q, when the next chamber stands `downstream` above its crest.
[[nodiscard]] inline double head_over_baffle(std::string_view here, const full_width_edge& edge, double q,
                                             band_side side, double downstream) {
  const double free = edge_head(here, edge, q, side, guess_head(edge, q));
  if (downstream <= 0.0 || q == 0.0) return downstream > free ? downstream : free;
  const auto excess = [&](double h) { return edge_flow(edge, h, side) * villemonte(downstream / h, 1.5) - q; };
  const double floor = free > downstream ? free : downstream;
  return head_where(here, excess, q, floor + 0.3 * downstream, floor);
}

/// Levels in motion: from the last chamber upwards, written to `levels`. `shift` is added to the running level.
/// @return whether a head is outside the published range
inline bool run(std::string_view here, const sump& plan, double q, band_side side, double shift,
                std::span<double> levels) {
  // A gap of the least side lets least through: its coefficient is the lower.
  const double cd = side == band_side::central ? 0.61 : side == band_side::least ? 0.55 : 0.80;
  bool extrapolated = false;
  std::size_t i = plan.chambers.size() - 1;
  levels[i] = plan.running_level->value() + shift;
  while (i > 0) {
    --i;
    const baffle& b = plan.baffles[i];
    const double next = levels[i + 1];
    if (b.gap.value() > 0.0) {
      const double v = q / (cd * b.gap.value() * b.width->value());
      levels[i] = next + v * v / (2.0 * standard_gravity.value());
    } else {
      const full_width_edge edge{.width = b.width, .crest_height = b.crest, .thickness = b.thickness};
      const double head = head_over_baffle(here, edge, q, side, next - b.crest->value());
      levels[i] = b.crest->value() + head;
      extrapolated = extrapolated || outside_published(edge, head);
    }
  }
  return extrapolated;
}

}  // namespace tankwright::plumbing::detail
