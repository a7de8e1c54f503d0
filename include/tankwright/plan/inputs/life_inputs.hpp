// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [life]: the food and the ammonia it becomes, the filter, the weeks of the
/// start-up, the animals and their power cut, arrivals.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <tankwright/life/acclimation.hpp>
#include <tankwright/life/meals.hpp>
#include <tankwright/life/oxygen_use.hpp>
#include <tankwright/life/start_up_plan.hpp>
#include <tankwright/plan/life.hpp>
#include <tankwright/water/alkalinity.hpp>
#include <tankwright/water/ammonia.hpp>
#include <vector>

namespace tankwright::plan {

/// A food, by its nitrogen.
struct meal {
  std::string label;
  tankwright::life::feeding fed;  ///< in the mean of the days
  food_kind kind;
  duration every;
};

/// The nitrogen that food becomes, as ammonia, in the mean of the days.
///
///   dry: 0.092 F PC within 25 %;   wet: 0.16 F PC, of which the low end of the rule comes at once
///
/// @param meals food >= 0 and its protein, 0 to 1, each with its kind
/// @return      nitrogen per time with its band; zero for no food
/// @throws      invalid_input
/// @accuracy    as life::nitrogen_from_feed
/// @source      Timmons and Ebeling 2007 (from memory)
[[nodiscard]] estimate<tankwright::life::nitrogen_load> load_of(std::span<const meal> meals);

/// Rock that moves, by the load that all of it kept up with at or below the level to stay below.
struct seasoned_rock {
  estimate<tankwright::life::nitrogen_load> proven;
  proportion share;
};

/// A surface by its wet area.
struct wet_surface {
  std::string label;
  area wet;
  proportion seeded;  ///< share of the mature film that is there today
};

struct filter_inputs {
  std::vector<meal> food{};
  std::optional<seasoned_rock> rock{};
  std::vector<wet_surface> surfaces{};
  proportion survives;  ///< of the rock's bacteria, at the worst; one assumption for today's filter and the forecast
  water::total_ammonia stay_below;
  water::free_ammonia free_below;
};

struct stocking {
  duration on;
  proportion share;
};

struct culture {
  tankwright::life::schedule when;
  tankwright::life::nitrogen_load oxidises;
};

/// What is planned for the weeks.
struct forecast_inputs {
  bool wanted;
  duration horizon;
  duration rock_on;
  std::vector<stocking> animals{};  ///< none: all of them on the first day
  std::vector<culture> cultures{};
  std::vector<tankwright::life::ammonia_dose> doses{};
  std::vector<tankwright::life::water_change> water_changes{};
};

struct alkalinity_inputs {
  water::alkalinity now;
  water::alkalinity lowest;
  duration measured_every;
};

/// Animals of one kind. The label of `breathing` is set where it is used: it borrows.
struct animal_inputs {
  std::string label;
  tankwright::life::animals breathing;
  std::optional<length> adult{};
  velocity speed{};
  double run_multiple;
  double width_multiple;
};

struct battery_inputs {
  rate bubbles;
  proportion alpha;
  std::optional<duration> runs{};
};

/// The power cut, as the animals see it.
struct oxygen_inputs {
  std::optional<duration> help_within{};
  mass_concentration lowest;
  proportion start;
  std::optional<battery_inputs> battery{};
};

struct treatment_inputs {
  std::string label;
  flow_rate flow;
  proportion passes;
};

struct circulation_inputs {
  std::vector<treatment_inputs> treatments{};
  std::optional<duration> clear_within{};
};

struct arrival_inputs {
  water::ammonia_sample bag;
  volume vessel;
  double salinity_per_hour;
  temperature_difference temperature_per_hour;
  tankwright::life::drip_vessel drip_into;
  proportion step;
};

/// The quarantine tank: its food and its surfaces as a filter of its own.
struct quarantine_inputs {
  volume net;
  duration lasts;
  proportion part;
  duration every;
  std::optional<water::ph_reading> ph{};  ///< its own, or that of the tank
  filter_inputs filter;
};

struct swim_run {
  length run;
  length width;
};

/// Everything about the animals and what keeps them alive.
struct life_inputs {
  std::optional<water::ph_reading> ph{};
  filter_inputs filter;
  forecast_inputs weeks;
  std::optional<alkalinity_inputs> alkalinity{};
  std::vector<animal_inputs> animals{};
  oxygen_inputs power_cut;
  bool has_power_cut = false;
  std::optional<circulation_inputs> circulation{};
  std::optional<arrival_inputs> arrivals{};
  std::optional<swim_run> room{};
  std::optional<quarantine_inputs> quarantine{};
};

/// The section as the engines take it.
///
/// @param s a section that `validate` accepts
/// @return  food, filter, weeks, animals and arrivals
/// @throws  invalid_input (names what is missing or not possible)
/// @accuracy exact
/// @source  this library
[[nodiscard]] life_inputs inputs_of(const life_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/life_inputs.ipp>
#endif
