// SPDX-License-Identifier: BSL-1.0
/// @file
/// What can a straight edge show? While the tank fills, the bulge of a panel is held against the calculated one: where
/// that is less than the gauge shows, there is nothing to compare.
#pragma once

#include <optional>
#include <string_view>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

/// Something to measure a bulge with.
struct bulge_gauge {
  std::string_view name;
  length resolution;  ///< what one can tell from nothing
  standing read_as;
  std::string_view source;
};

inline constexpr bulge_gauge straight_edge_with_feelers{
    "straight edge and feeler gauges", millimetres(0.1), standing::common_practice,
    "the thinnest leaves are 0.05 mm; the edge itself is as straight as 0.1 mm over a metre or two"};
inline constexpr bulge_gauge straight_edge_by_eye{"straight edge and ruler", millimetres(0.5),
                                                  standing::common_practice, "half a division of a ruler"};
inline constexpr bulge_gauge dial_indicator{"dial indicator on a stand of its own", millimetres(0.02),
                                            standing::common_practice, "two divisions; the floor moves as much"};

/// A bulge that is expected, and how it is looked at.
struct bulge_question {
  required<length> expected;  ///< of the panel at this stage, from `water_on`
  bulge_gauge gauge = straight_edge_with_feelers;
};

struct bulge_reading {
  std::optional<length> expected;  ///< nothing where the gauge shows none
  length stop_at;                  ///< go on only while the panel bulges less than this
  tankwright::caution caution;
};

/// What a gauge should show of a bulge, and from where on to stop filling.
///
///   shown where it is the gauge's resolution or more;  stop at twice the expected bulge, and at least one resolution
///   above it
///
/// @param question expected bulge [m] >= 0; a gauge with its resolution [m] > 0
/// @return         the bulge to see, if any; the bulge [m] at which to stop, let water out and look at the supports
/// @throws         invalid_input
/// @accuracy       twice the calculated bulge means that the edges are not held as assumed (our judgement, no source)
/// @source         common practice
[[nodiscard]] inline bulge_reading bulge_to_see(const bulge_question& question) {
  constexpr std::string_view here = "tankwright::vessel::bulge_to_see";
  const length expected = question.expected, step = question.gauge.resolution;
  core::check(here, detail::length_from_zero("expected bulge"), expected.value());
  core::check(here, {"resolution of the gauge", "m", {1e-7, 1.0}}, step.value());
  const length more = expected > step ? expected : step;
  return {expected >= step ? std::optional{expected} : std::nullopt, expected + more, panel_caution};
}

}  // namespace tankwright::vessel
