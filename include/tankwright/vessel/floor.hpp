// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does it weigh on the floor? The load under the footprint and under the legs, held against a code's live load.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <tankwright/core/citation.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

/// A live load that a building code asks floors to be designed for.
struct floor_live_load {
  std::string_view name;
  pressure value;
  standing read_as;
  std::string_view source;
};

inline constexpr floor_live_load living_rooms{"rooms other than sleeping rooms, dwellings", psf(40.0),
                                              standing::published, "International Residential Code, Table R301.5"};
inline constexpr floor_live_load sleeping_rooms{"sleeping rooms, dwellings", psf(30.0), standing::published,
                                                "International Residential Code, Table R301.5"};

/// Something heavy on a floor.
struct floor_question {
  required<mass> total;           ///< water, rock, sand, tank, stand, sump
  required<area> footprint;       ///< outline of the stand
  std::optional<area> bearing{};  ///< what touches the floor, all legs or feet together; none: the whole footprint
  floor_live_load code = living_rooms;
  std::string label = "tank";
};

struct floor_result {
  force weight;
  pressure spread;      ///< over the footprint
  pressure under_feet;  ///< over what touches the floor
  floor_live_load code;
  double times_code;  ///< [1] spread load over the code's live load
  tankwright::caution caution;
};

/// Load of a tank on the floor.
///
///   p = m g / A
///
/// @param question total mass [kg] >= 0; footprint [m^2] > 0; bearing area [m^2], from a millionth of the footprint up
///                 to all of it; the code's live load [Pa], from 1
/// @return         pressure over footprint and feet [Pa], and how many times the code's live load
/// @throws         invalid_input (names the label)
/// @accuracy       exact for the inputs. It says nothing about joists, spans and bearing
/// @source         statics; IRC Table R301.5
[[nodiscard]] inline floor_result load_on_floor(const floor_question& question) {
  constexpr std::string_view here = "tankwright::vessel::load_on_floor";
  const double m = question.total->value(), a = question.footprint->value();
  const double feet = question.bearing ? question.bearing->value() : a;
  core::check_element(here, question.label, {"total mass", "kg", detail::possible_mass_from_zero}, m);
  core::check_element(here, question.label, {"footprint", "m2", detail::possible_area}, a);
  core::check_element(here, question.label, {"bearing area", "m2", {1e-6 * a, a}}, feet);
  core::check_element(here, question.label, {"code live load", "Pa", {1.0, 1e9}}, question.code.value.value());
  const double weight = m * standard_gravity.value();
  return {force::from_value(weight),
          pressure::from_value(weight / a),
          pressure::from_value(weight / feet),
          question.code,
          weight / a / question.code.value.value(),
          floor_caution};
}

}  // namespace tankwright::vessel
