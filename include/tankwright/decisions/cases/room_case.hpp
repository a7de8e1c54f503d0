// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the room start from: its surfaces, its seasons, the balance of moisture in each, and the
/// heat of the tank.
#pragma once

#include <optional>
#include <string>
#include <tankwright/decisions/finding.hpp>
#include <tankwright/decisions/once.hpp>
#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/inputs/room_inputs.hpp>
#include <tankwright/room/evaporation.hpp>
#include <vector>

namespace tankwright::decisions {

/// The two seasons that a room is described in.
enum class season { winter, summer };

/// The words of a season: "winter".
///
/// @param s a season
/// @return  its words
[[nodiscard]] constexpr const char* words(season s) noexcept { return s == season::winter ? "winter" : "summer"; }

/// A season with its balance of moisture, as planned and with every cover off.
struct solved_season {
  decisions::season when;
  bool machine_counts;  ///< the curve of dehumidifiers covers this temperature
  plan::season_inputs given;
  room::tank_room as_planned;
  room::tank_room uncovered;
  room::room_humidity humidity;
  room::room_humidity humidity_uncovered;

  [[nodiscard]] estimate<relative_humidity> settles_at() const noexcept {
    return {humidity.low.air.humidity, humidity.central.air.humidity, humidity.high.air.humidity, humidity.reason};
  }
};

/// Which of the appliances are on.
enum class powered { all, always, none, on_average };

/// The section [room] with what the sections before it give. A season that a formula refuses goes wrong for the
/// decisions that ask for it.
class room_case {
 public:
  room_case(plan::room_inputs inputs, const system_state& state);

  plan::room_inputs in;
  room::tank_water water;
  absolute_pressure air;
  std::optional<estimate<volume>> all_water{};
  std::optional<estimate<volume>> solids{};
  std::vector<room::wet_surface> surfaces{};

  /// Whether the plan describes it, and there is water to evaporate.
  [[nodiscard]] bool gives(season s) const noexcept {
    return !surfaces.empty() && (s == season::winter ? in.winter : in.summer).has_value();
  }
  [[nodiscard]] bool gives_any() const noexcept { return gives(season::winter) || gives(season::summer); }
  /// A season that is given; throws what its formulas refuse.
  [[nodiscard]] const solved_season& solved(season s) const;

  /// Hand each season that is given to `use`. One that a formula refuses leaves the finding without an answer, and says
  /// why; the other is answered.
  template <class Use>
  void for_each_season(finding& f, Use use) const {
    for (const season s : {season::winter, season::summer}) {
      if (gives(s)) try_season(f, s, use);
    }
  }

 private:
  template <class Use>
  void try_season(finding& f, season s, Use use) const {
    try {
      use(solved(s));
    } catch (const error& mistake) {
      leave_out(f, s, mistake);
    }
  }
  static void leave_out(finding& f, season s, const error& mistake);

  once<solved_season> winter_{};
  once<solved_season> summer_{};
};

/// The case of a section.
///
/// @param s     a section that `validate` accepts
/// @param state what the sections before it give
/// @return      room, surfaces and water; nothing is solved yet
/// @throws      invalid_input, out_of_range (from `plan::inputs_of`)
/// @accuracy    exact
/// @source      this library
[[nodiscard]] room_case case_of(const plan::room_section& s, const system_state& state);

/// The room in any air outdoors: a month of a year, say.
///
/// @param c     the room
/// @param when  what the season is called
/// @param given indoors and outdoors
/// @return      the balance of moisture, as planned and with every cover off
/// @throws      invalid_input, out_of_range, no_convergence (from `room::humidity_balance`)
/// @accuracy    as `room/humidity.hpp`
/// @source      as `room/humidity.hpp`
[[nodiscard]] solved_season season_of(const room_case& c, season when, const plan::season_inputs& given);

/// The tank in the settled air of a season, as its heat sees it.
///
/// @param c     the room
/// @param s     a season of it
/// @param which of the appliances are on
/// @return      water, air, surfaces, walls and sources
/// @throws      nothing but std::bad_alloc
/// @accuracy    exact
/// @source      this library
[[nodiscard]] room::tank_heat heat_of(const room_case& c, const solved_season& s, powered which);

/// The settled air of summer on the hottest day of the room: as much vapour in it, and warmer.
///
/// @param s summer
/// @return  its air; that of the season where no hottest day is given
/// @throws  out_of_range (a temperature that the vapour pressure is not known for)
/// @accuracy as the season's balance; what evaporates more on that day is left out, which is the dry side
/// @source  Hyland and Wexler 1983
[[nodiscard]] room::air hottest_air(const solved_season& s);

/// Heat that the tank takes up for each kelvin: the water, sand and rock in it, and its walls as far as they are given
/// by material and thickness.
///
/// @param c the room, with all its water known
/// @return  heat capacity, with the band of the volumes
/// @throws  invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy 1 % of the water; the solids as `room/heat_store.hpp`
/// @source  Feistel 2008; ISO 10456
[[nodiscard]] estimate<heat_capacity> heat_store_of(const room_case& c);

/// Settled air outside the range where evaporation was measured is said in a note, not refused.
///
/// @param a  the settled air
/// @return   `extrapolate` where its humidity was not measured
/// @accuracy exact
/// @source   this library
[[nodiscard]] range_policy policy_for(const room::air& a) noexcept;

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/room_case.ipp>
#endif
