// SPDX-License-Identifier: BSL-1.0
/// @file
/// How high does the water stand in each chamber of the sump: running, at rest, and with more water in it?
///
/// Chambers stand in a row, in the order the water flows; between two of them a baffle, which the water passes over its
/// crest or, where it has a gap at the floor, under it. The last chamber feeds the return pump. It alone falls by
/// evaporation.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include <tankwright/core/estimate.hpp>
#include <tankwright/plumbing/detail/sump_water.hpp>
#include <tankwright/plumbing/sump_plan.hpp>

namespace tankwright::plumbing {

/// The level in one chamber, above the floor of the sump.
struct chamber_level {
  std::string label;
  estimate<length> level;
};

/// Volume of water in a sump at given levels.
///
///   V = sum over the chambers of the integral of (plan - gear) dz
///
/// @param plan   the sump
/// @param levels one level [m] >= 0 a chamber, above the floor
/// @return       volume [m^3]
/// @throws       invalid_input (names the chamber by its label)
/// @accuracy     exact
/// @source       geometry
[[nodiscard]] inline volume water_in_sump(const sump& plan, const std::vector<length>& levels) {
  constexpr std::string_view here = "tankwright::plumbing::water_in_sump";
  detail::check_sump(here, plan);
  const detail::sump_shape shape{plan};
  detail::check_levels(here, plan, levels);
  double sum = 0.0;
  for (std::size_t i = 0; i < levels.size(); ++i) sum += shape.below(i, levels[i].value());
  return volume::from_value(sum);
}

/// Volume that a sump holds up to its rim.
///
///   V = sum over the chambers of the integral of (plan - gear) dz from the floor to the rim
///
/// @param plan the sump
/// @return     volume [m^3]
/// @throws     invalid_input (names the element by its label)
/// @accuracy   exact
/// @source     geometry
[[nodiscard]] inline volume sump_capacity(const sump& plan) {
  detail::check_sump("tankwright::plumbing::sump_capacity", plan);
  const detail::sump_shape shape{plan};
  return volume::from_value(shape.below_all(plan.rim->value()));
}

/// Water in motion over and under the baffles.
struct running_sump {
  std::vector<chamber_level> chambers;
  volume water;             ///< in the whole sump, at the central levels
  estimate<length> margin;  ///< from the highest level up to the rim; negative: a chamber runs over while the pump runs
  bool extrapolated;        ///< some head is outside the published range of the weir formula
};

/// Levels in the chambers while the pump runs.
///
///   before a baffle: over its crest h(Q) by Rehbock, drowned (Villemonte) where the next chamber stands above the
///   crest; under its gap Q = Cd w gap sqrt(2g dh), Cd = 0.61; a baffle with a gap passes both ways at once
///
/// Chambers before the one that the drains lead to carry nothing: they stand at their crest, or with the next chamber
/// where that is higher or joined by a gap.
///
/// @param plan        the sump; its running level is that of the last chamber
/// @param flow        Q [m^3/s] >= 0 that passes through
/// @param drains_into [1] chamber that the drains end in, counted from 0
/// @return            level in each chamber [m above the floor] with its band; the last is as given
/// @throws            invalid_input (names the element by its label)
/// @accuracy          the band of the weir formula; under a baffle Cd 0.55 to 0.80
/// @source            Rehbock 1929; Villemonte 1947; orifice formula
[[nodiscard]] inline running_sump running_levels(const sump& plan, flow_rate flow, std::size_t drains_into = 0) {
  constexpr std::string_view here = "tankwright::plumbing::running_levels";
  constexpr std::string_view why = "weir formula and the form of the baffles";
  core::check(here, overflow_flow_limits, flow.value());
  detail::check_sump(here, plan);
  const detail::sump_shape shape{plan};
  const std::size_t n = shape.size();
  detail::check_chamber_number(here, "drains_into", drains_into, n);
  std::vector<double> low(n), central(n), high(n);
  const bool extrapolated = detail::run(plan, drains_into, flow.value(), detail::band_side::central, 0.0, central);
  detail::run(plan, drains_into, flow.value(), detail::band_side::most, 0.0, low);
  detail::run(plan, drains_into, flow.value(), detail::band_side::least, 0.0, high);
  running_sump result{{}, volume::from_value(0.0), {}, extrapolated};
  const auto margin = [&](const std::vector<double>& levels) {
    return plan.rim.get() - length::from_value(*std::max_element(levels.begin(), levels.end()));
  };
  result.margin = {margin(high), margin(central), margin(low), why};
  for (std::size_t i = 0; i < n; ++i) {
    result.chambers.push_back(
        {detail::chamber_name(plan, i),
         {length::from_value(low[i]), length::from_value(central[i]), length::from_value(high[i]), why}});
    result.water += volume::from_value(shape.below(i, central[i]));
  }
  return result;
}

/// Water poured into a sump at rest.
struct sump_pour {
  plumbing::sump sump;
  std::vector<length> levels;  ///< before, one a chamber
  required<volume> added;
  std::size_t into = 0;  ///< [1] which chamber, counted from 0
};

/// A sump at rest.
struct sump_at_rest {
  std::vector<length> levels;  ///< one a chamber; above the rim they say how high the walls would have to be
  length margin;               ///< from the highest level up to the rim; negative when it runs over
  volume over_the_rim;         ///< what stands above the rim; zero when the sump holds it
};

/// Levels after water was poured into a chamber and has come to rest.
///
///   A chamber fills to its lower baffle, then spills into its neighbour; where both stand at the crest between them
///   they go on as one, with both areas. Above the rim the walls are continued, so that a margin can be negative.
///
/// @param pour sump; levels [m] >= 0 before, at most the rim, which first settle themselves; volume [m^3] >= 0; a
/// chamber
/// @return     levels [m above the floor], margin to the rim [m], volume above the rim [m^3]
/// @throws     invalid_input (names the chamber by its label)
/// @accuracy   volume conserved to 1e-14
/// @source     geometry
[[nodiscard]] inline sump_at_rest pour_into_sump(const sump_pour& pour) {
  constexpr std::string_view here = "tankwright::plumbing::pour_into_sump";
  static constexpr limits added_limits{"added", "m3", not_negative};
  detail::check_sump(here, pour.sump);
  const detail::sump_shape shape{pour.sump};
  detail::check_levels(here, pour.sump, pour.levels);
  core::check(here, added_limits, pour.added->value());
  detail::check_chamber_number(here, "into", pour.into, shape.size());
  std::vector<double> water(shape.size()), levels(shape.size());
  for (std::size_t i = 0; i < water.size(); ++i) {
    detail::check_below_rim(here, pour.sump, i, pour.levels[i].value());
    water[i] = shape.below(i, pour.levels[i].value());
  }
  water[pour.into] += pour.added->value();
  const double highest = detail::settle(here, shape, 1.0, {water.data(), water.size()}, {levels.data(), levels.size()});
  const double rim = pour.sump.rim->value();
  sump_at_rest result{{}, length::from_value(rim - highest), {}};
  double over = 0.0;
  for (std::size_t i = 0; i < levels.size(); ++i) {
    result.levels.push_back(length::from_value(levels[i]));
    if (levels[i] > rim) over += shape.below(i, levels[i]) - shape.below(i, rim);
  }
  result.over_the_rim = volume::from_value(over);
  return result;
}

/// Water lost from a running sump and not made up.
struct sump_evaporation {
  plumbing::sump sump;
  required<volume> evaporated;
};

/// Level in the last chamber after evaporation: it alone falls, while the others stay at their crests.
///
///   V(level) = V(running level) - evaporated,   of the last chamber and those joined to it by a gap at the floor
///
/// @param loss sump; evaporated volume [m^3] >= 0
/// @return     level [m above the floor]
/// @throws     invalid_input when the chamber does not hold that much
/// @accuracy   exact
/// @source     geometry
[[nodiscard]] inline length level_after_evaporation(const sump_evaporation& loss) {
  constexpr std::string_view here = "tankwright::plumbing::level_after_evaporation";
  static constexpr limits evaporated_limits{"evaporated", "m3", not_negative};
  detail::check_sump(here, loss.sump);
  const detail::sump_shape shape{loss.sump};
  core::check(here, evaporated_limits, loss.evaporated->value());
  const std::size_t first = shape.first_joined(shape.size() - 1), last = shape.size() - 1;
  const double before = shape.below(first, last, loss.sump.running_level->value());
  const double left = before - loss.evaporated->value();
  if (!(left >= 0.0)) {
    core::fail<invalid_input>(
        here, detail::chamber_name(loss.sump, last) + ": evaporated", in_litres(loss.evaporated), "L",
        "is more than the chamber holds, " + core::number_with_unit(in_litres(volume::from_value(before)), "L"));
  }
  return length::from_value(shape.level(here, first, last, left));
}

}  // namespace tankwright::plumbing
