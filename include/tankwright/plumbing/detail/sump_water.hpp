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
    return numbers_of(c.horizontal_area).below(z) - c.gear.value() * z;
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
    return numbers_of(c.horizontal_area).at(z) - c.gear.value();
  }

  /// Whether the walls of a chamber are vertical, and its least area.
  [[nodiscard]] bool upright(std::size_t i) const noexcept {
    return numbers_of(plan_->chambers[i].horizontal_area).vertical();
  }
  [[nodiscard]] double least_area(std::size_t i) const noexcept {
    const chamber& c = plan_->chambers[i];
    return numbers_of(c.horizontal_area).smallest() - c.gear.value();
  }

  /// The one level that a volume reaches in a range of chambers.
  [[nodiscard]] double level(std::string_view here, std::size_t first, std::size_t last, double water) const {
    double sum = 0.0;
    bool vertical = true;
    for (std::size_t i = first; i <= last; ++i) {
      vertical = vertical && upright(i);
      sum += free_area(i, 0.0);
    }
    if (vertical) return water / sum;
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

/// What passes a baffle from the higher level to the lower, over its crest and under it.
///
/// Over the crest by Rehbock, drowned by Villemonte; under it by the orifice formula. Both laws rise infinitely steep
/// from equal levels; within a few hundredths of a millimetre of them they are drawn straighter.
class baffle_passage {
 public:
  /// Flow and its derivatives by the higher and the lower level.
  struct passing {
    double flow, by_up, by_down;
  };

  baffle_passage() = default;
  baffle_passage(const baffle& b, band_side side) noexcept
      : width_{b.width->value()}, crest_{b.crest->value()}, thickness_{b.thickness.value()}, side_{side} {
    // A gap of the least side lets least through: its coefficient is the lower.
    const double cd = side == band_side::central ? 0.61 : side == band_side::least ? 0.55 : 0.80;
    under_ = cd * b.gap.value() * width_ * sqrt_2g<double>;
  }

  [[nodiscard]] double width() const noexcept { return width_; }
  [[nodiscard]] double crest() const noexcept { return crest_; }
  /// Cd w s sqrt(2g); zero where there is no gap.
  [[nodiscard]] double under() const noexcept { return under_; }

  [[nodiscard]] passing operator()(double up, double down) const noexcept {
    passing p{0.0, 0.0, 0.0};
    const double fall = up > down ? up - down : 0.0;
    if (under_ > 0.0) {
      if (fall >= least_fall) {
        const double root = std::sqrt(fall);
        p.flow = under_ * root;
        p.by_up = 0.5 * under_ / root;
      } else {
        const double part = fall / least_fall, scale = under_ * std::sqrt(least_fall);
        p.flow = scale * part * (1.5 - 0.5 * part);
        p.by_up = scale * (1.5 - part) / least_fall;
      }
      p.by_down = -p.by_up;
    }
    const double h = up - crest_;
    if (h > 0.0) add_over(p, h, down - crest_);
    return p;
  }

 private:
  static constexpr double least_fall = 2e-5;  // m

  void add_over(passing& p, double h, double h_down) const noexcept {
    constexpr rehbock_constants<double> c{};
    const factor_at_head thick = thickness_factor(h, thickness_, side_), spread = spread_factor(h, side_);
    const double free = rehbock(h, width_, crest_) * thick.value * spread.value;
    const double he = effective_head(h, c.addition), he_slope = h >= 0.005 ? 1.0 : 1.0 + c.addition / 0.005;
    const double slope = free * (1.5 * he_slope / he + c.slope / (c.at_zero * crest_ + c.slope * h) +
                                 thick.slope / thick.value + spread.slope / spread.value);
    if (h_down <= 0.0) {
      p.flow += free;
      p.by_up += slope;
      return;
    }
    constexpr double n = 0.385, low = 0.01;  // Villemonte's exponent; below `low` its curve is drawn straighter
    const double ratio = h_down / h, root = std::sqrt(ratio), x = 1.0 - ratio * root;
    double share, share_slope;  // and by x
    if (x >= low) {
      share = std::pow(x, n);
      share_slope = n * share / x;
    } else {
      constexpr double at_low = 0.16982436524617442;  // low^n
      const double part = std::fmax(0.0, x) / low;
      share = at_low * part * ((2.0 - n) - (1.0 - n) * part);
      share_slope = at_low * ((2.0 - n) - 2.0 * (1.0 - n) * part) / low;
    }
    const double by_ratio = -1.5 * root * share_slope * free;
    p.flow += free * share;
    p.by_up += slope * share - by_ratio * ratio / h;
    p.by_down += by_ratio / h;
  }

  double width_{}, crest_{}, thickness_{}, under_{};
  band_side side_ = band_side::central;
};

/// Level before a baffle that passes q > 0, when the next chamber stands at `next`.
[[nodiscard]] inline double level_before(const baffle_passage& passage, double q, double next) noexcept {
  const double root = q / passage.under(), under = next + root * root;  // without a gap as high as one likes
  if (under <= passage.crest()) return under;
  const bool drowned = next > passage.crest();
  const double low = drowned ? next : passage.crest();
  double a = 0.0, b = std::numeric_limits<double>::infinity(), h = drowned ? 1e-3 : plain_head(passage.width(), q);
  for (int i = 0; i < 100; ++i) {  // Newton's method, kept between a and b
    const auto p = passage(low + h, next);
    (p.flow < q ? a : b) = h;
    const double to = h - (p.flow - q) / p.by_up;
    if (std::fabs(to - h) <= 1e-14 * (low + h)) return low + to;
    h = to > a && to < b ? to : 0.5 * (a + b);
  }
  return low + h;
}

/// Levels in motion: from the last chamber upwards, written to `levels`. `shift` is added to the running level.
/// Chambers before the one that the drains lead to carry nothing: they stand at their crest, or at the level of the
/// next.
/// @return whether a head is outside the published range
inline bool run(const sump& plan, std::size_t drains_into, double q, band_side side, double shift,
                std::span<double> levels) {
  bool extrapolated = false;
  std::size_t i = plan.chambers.size() - 1;
  levels[i] = plan.running_level->value() + shift;
  while (i > 0) {
    --i;
    const baffle& b = plan.baffles[i];
    const double next = levels[i + 1];
    if (i < drains_into || q == 0.0) {
      levels[i] = b.gap.value() > 0.0 || next > b.crest->value() ? next : b.crest->value();
      continue;
    }
    levels[i] = level_before(baffle_passage{b, side}, q, next);
    if (levels[i] > b.crest->value()) {
      const full_width_edge edge{.width = b.width, .crest_height = b.crest, .thickness = b.thickness};
      extrapolated = extrapolated || outside_published(edge, levels[i] - b.crest->value());
    }
  }
  return extrapolated;
}

}  // namespace tankwright::plumbing::detail
