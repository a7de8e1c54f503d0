// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is a sump? Its chambers, its baffles, its rim, and the level the pump chamber runs at.
#pragma once

#include <string>
#include <vector>

#include <tankwright/core/labelled.hpp>
#include <tankwright/plumbing/area_profile.hpp>

namespace tankwright::plumbing {

namespace detail {}

/// One chamber of a sump.
struct chamber {
  std::string label;               ///< "skimmer"; errors and results name it
  area_profile horizontal_area;    ///< between the walls: an area, or slices
  area gear = square_metres(0.0);  ///< horizontal area of what stands in it, at every height
};

/// The wall between a chamber and the next.
struct baffle {
  required<length> crest;          ///< above the floor; water passes over it
  required<length> width;          ///< of the crest, across the flow
  length gap = metres(0.0);        ///< clearance at the floor, where water passes under it; zero is sealed
  length thickness = metres(0.0);  ///< in the direction of the flow; zero is a sharp edge
};

/// A sump of one or more chambers, in the order the water flows.
struct sump {
  required<length> rim;            ///< lowest point of the rim, above the floor
  required<length> running_level;  ///< in the last chamber, while the pump runs: where the top-off keeps it
  std::vector<chamber> chambers;
  std::vector<baffle> baffles{};  ///< between them: one less than there are chambers
};

inline constexpr limits rim_limits{"rim", "m", {0.0, 20.0, edge::open}};
inline constexpr limits running_level_limits{"running level", "m", {0.0, 20.0}};
inline constexpr limits gear_limits{"gear", "m2", {0.0, 1e4}};
inline constexpr limits free_area_limits{"free horizontal area", "m2", {1e-6, 1e4}};
inline constexpr limits crest_limits{"crest", "m", {1e-3, 20.0}};
inline constexpr limits baffle_width_limits{"width", "m", {1e-3, 100.0}};
inline constexpr limits gap_limits{"gap", "m", {0.0, 20.0}};
inline constexpr limits baffle_thickness_limits{"thickness", "m", {0.0, 10.0}};
inline constexpr limits sump_level_limits{"level", "m", {0.0, 20.0}};

namespace detail {

[[nodiscard]] inline std::string chamber_name(const sump& plan, std::size_t i) {
  const std::string& label = plan.chambers[i].label;
  return label.empty() ? "chamber " + core::number_text(static_cast<double>(i + 1)) : label;
}

[[nodiscard]] inline std::string baffle_name(const sump& plan, std::size_t i) {
  return "baffle between " + chamber_name(plan, i) + " and " + chamber_name(plan, i + 1);
}

[[noreturn, gnu::cold]] inline void refuse_height(std::string_view here, std::string_view name, std::string_view what,
                                                  double value, std::string_view reason, double bound) {
  core::fail<invalid_input>(here, std::string{name} + ": " + std::string{what}, value, "m",
                            std::string{reason} + ", " + core::number_with_unit(bound, "m"));
}

inline void check_below_rim(std::string_view here, const sump& plan, std::size_t i, double level) {
  if (level > plan.rim->value()) [[unlikely]] {
    refuse_height(here, chamber_name(plan, i), "level", level, "stands above the rim", plan.rim->value());
  }
}

/// Refuse a sump that cannot be built or cannot run; each message names the chamber or baffle.
inline void check_sump(std::string_view here, const sump& plan) {
  const double rim = plan.rim->value(), running = plan.running_level->value();
  const std::size_t n = plan.chambers.size();
  core::check_element(here, "sump", rim_limits, rim);
  if (n == 0) core::refuse_element(here, "sump", "has no chambers");
  if (plan.baffles.size() + 1 != n) {
    core::fail<invalid_input>(
        here, "sump: number of baffles", static_cast<double>(plan.baffles.size()), "",
        "does not go with " + core::number_text(static_cast<double>(n)) + " chambers; expected one less");
  }
  for (std::size_t i = 0; i < n; ++i) {
    const chamber& c = plan.chambers[i];
    const profile_numbers& walls = numbers_of(c.horizontal_area);
    const bool good = gear_limits.possible.contains(c.gear.value()) &&
                      free_area_limits.possible.contains(walls.smallest() - c.gear.value()) && walls.sound();
    if (good) [[likely]]
      continue;
    const std::string name = chamber_name(plan, i);
    walls.check(here, name);
    core::check_element(here, name, gear_limits, c.gear.value());
    core::check_element(here, name, free_area_limits, walls.smallest() - c.gear.value());
  }
  for (std::size_t i = 0; i + 1 < n; ++i) {
    const baffle& b = plan.baffles[i];
    const double crest = b.crest->value(), gap = b.gap.value();
    const bool good = crest_limits.possible.contains(crest) && crest <= rim && gap >= 0.0 && gap < crest &&
                      baffle_width_limits.possible.contains(b.width->value()) &&
                      baffle_thickness_limits.possible.contains(b.thickness.value());
    if (good) [[likely]]
      continue;
    const std::string name = baffle_name(plan, i);
    core::check_element(here, name, crest_limits, crest);
    core::check_element(here, name, baffle_width_limits, b.width->value());
    core::check_element(here, name, gap_limits, gap);
    core::check_element(here, name, baffle_thickness_limits, b.thickness.value());
    if (crest > rim) refuse_height(here, name, "crest", crest, "stands higher than the rim of the sump", rim);
    refuse_height(here, name, "gap", gap, "is not below the crest", crest);
  }
  if (!running_level_limits.possible.contains(running)) {
    core::check_element(here, chamber_name(plan, n - 1), running_level_limits, running);
  }
  if (running > rim) {
    refuse_height(here, chamber_name(plan, n - 1), "running level", running, "stands above the rim of the sump", rim);
  }
  // The baffle that the last chamber, with those joined to it at the floor, lies behind.
  std::size_t behind = n - 1;
  while (behind > 0 && plan.baffles[behind - 1].gap.value() > 0.0) --behind;
  if (behind > 0 && running > plan.baffles[behind - 1].crest->value()) {
    refuse_height(here, chamber_name(plan, n - 1), "running level", running,
                  "stands above the crest of the " + baffle_name(plan, behind - 1),
                  plan.baffles[behind - 1].crest->value());
  }
}

inline void check_chamber_number(std::string_view here, std::string_view what, std::size_t number,
                                 std::size_t chambers) {
  if (number >= chambers) {
    core::fail<invalid_input>(here, what, static_cast<double>(number), "", "is not a chamber; they count from 0");
  }
}

inline void check_levels(std::string_view here, const sump& plan, const std::vector<length>& levels) {
  if (levels.size() != plan.chambers.size()) {
    core::fail<invalid_input>(
        here, "number of levels", static_cast<double>(levels.size()), "",
        "differs from the number of chambers, " + core::number_text(static_cast<double>(plan.chambers.size())));
  }
  for (std::size_t i = 0; i < levels.size(); ++i) {
    if (!sump_level_limits.possible.contains(levels[i].value())) {
      core::check_element(here, chamber_name(plan, i), sump_level_limits, levels[i].value());
    }
  }
}

}  // namespace detail
}  // namespace tankwright::plumbing
