// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the life start from: the load of the food, the water, and the weeks of the start-up.
#pragma once

#include <optional>
#include <string_view>
#include <tankwright/decisions/cases/filter_balance.hpp>
#include <tankwright/decisions/system_state.hpp>
#include <tankwright/life/start_up.hpp>
#include <tankwright/plan/inputs/life_inputs.hpp>

namespace tankwright::decisions {

struct life_case {
  plan::life_inputs in;
  system_state state;
  estimate<life::nitrogen_load> load;     ///< of the food, in the mean of the days
  std::optional<estimate<volume>> net{};  ///< all the water

  /// Whether there is a filter to judge, or food to judge it by.
  [[nodiscard]] bool has_filter() const noexcept {
    return !in.filter.food.empty() || in.filter.rock || !in.filter.surfaces.empty();
  }
};

/// What the decisions start from.
///
/// @param s     a section that `validate` accepts
/// @param state volumes, surfaces, flow and water as the sections give them
/// @return      the inputs, the load, all the water
/// @throws      invalid_input (from `plan::inputs_of`)
/// @accuracy    exact
/// @source      Timmons and Ebeling 2007 for the load (from memory)
[[nodiscard]] life_case case_of(const plan::life_section& s, const system_state& state);

/// The balance of its filter at the level to stay below.
///
/// @param c    a case whose `net` is known
/// @param when today, or when mature
/// @return     the balance
/// @throws     invalid_input, out_of_range (from the functions of `life/`)
/// @accuracy   as `life::nitrification_rate`
/// @source     as `balance_of` a filter
[[nodiscard]] filter_balance balance_of(const life_case& c, filter_at when);

/// What the weeks start from: how fast the bacteria are, how many of those brought in live, and what the food makes.
struct forecast_case {
  double speed;
  double alive;
  end_of_load food;
};

/// The start-up in three cases; the middle one is central.
struct forecast_runs {
  life::start_up_result central;  ///< at the speed of the sea, everything alive
  life::start_up_result fast;     ///< at that of fresh water, with the least food
  life::start_up_result harmed;   ///< at the speed of the sea, with what survived a bad move, and the most food
};

/// The start-up of a plan in one of its cases. The constants of the bacteria are those of fresh water, slowed to the
/// sea as their films are (Nijhof and Bovendeur 1990); their half-saturation is lowered until they rest at the level
/// that the older tank kept: at that of sludge they would rest above it, whatever the filter.
///
/// @param c  a case with net volume and food
/// @param as one of the cases
/// @return   what `life::simulate_start_up` takes
/// @throws   invalid_input, out_of_range (from the functions of `life/`)
/// @accuracy the constants vary by half
/// @source   Metcalf & Eddy 2014; Nijhof and Bovendeur 1990
[[nodiscard]] life::start_up start_up_of(const life_case& c, const forecast_case& as);

/// All three simulated: some milliseconds.
///
/// @param c a case with net volume and food
/// @return  the runs
/// @throws  invalid_input, out_of_range, no_convergence (from `life::simulate_start_up`)
/// @accuracy the constants vary by half
/// @source  as `start_up_of`
[[nodiscard]] forecast_runs simulate(const life_case& c);

inline constexpr std::string_view needs_net_volume =
    "give the volume of water, or the display so that it can be computed";
inline constexpr std::string_view needs_food = "give what is fed in a day, and the protein in it";
inline constexpr std::string_view challenge_test =
    "challenge test, without animals: dose ammonia to 1 to 2 mg/L as nitrogen; ready means that ammonia and nitrite "
    "are both zero a day later, every time";

/// What comes together in a day: easier to read than a flow of so little.
///
/// @param flow mass per time
/// @return     mass of a day
/// @throws     nothing
[[nodiscard]] inline mass in_a_day(mass_flow flow) { return flow * days(1.0); }

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/life_case.ipp>
#endif
