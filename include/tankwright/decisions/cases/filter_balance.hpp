// SPDX-License-Identifier: BSL-1.0
/// @file
/// The filter of a plan against its food: what it takes at a level, what the meals ask for, and where the ammonia
/// settles, each at the ends and in the middle of what is known of food, films and moved rock.
#pragma once

#include <optional>
#include <tankwright/core/estimate.hpp>
#include <tankwright/life/meals.hpp>
#include <tankwright/life/nitrogen.hpp>
#include <tankwright/plan/inputs/life_inputs.hpp>
#include <vector>

namespace tankwright::decisions {

/// An end of the rule that food is judged by, or its middle: `&estimate<life::nitrogen_load>::low`.
using end_of_load = const life::nitrogen_load estimate<life::nitrogen_load>::*;

/// The food of a plan at one end of its rule, and what moved rock carried at the same.
struct food_end {
  std::vector<life::regular_meal> meals;
  mass_flow rock{};
};

/// The food of a plan at an end of the rule.
///
/// @param filter food and rock
/// @param end    of the estimate of a load
/// @return       each meal with its mean load, and the load of the rock that moves
/// @throws       invalid_input (from `plan::load_of`)
/// @accuracy     as `life::nitrogen_from_feed`
/// @source       Timmons and Ebeling 2007 (from memory)
[[nodiscard]] food_end food_at(const plan::filter_inputs& filter, end_of_load end);

inline constexpr std::string_view film_and_food =
    "the food, mature films from a third to one and a half, and how the rock stands its move";

/// When the filter is looked at.
enum class filter_at {
  today,   ///< surfaces as far as they are seeded, rock as it survived the move
  mature,  ///< every surface carries its film, the rock has grown what it lost
};

/// What is known of the water and the day.
struct filter_question {
  filter_at when;
  volume net;
  tankwright::temperature temperature;
  estimate<water::total_ammonia> level;  ///< at which it is judged
};

/// A level that may not exist: what rises without end has none.
struct settled_levels {
  std::optional<water::total_ammonia> low{}, central{}, high{};
};

/// Nitrogen by the day. The food of the older tank and of this one is judged by one rule, so both stand at the same end
/// of their bands together.
struct filter_balance {
  estimate<mass_flow> takes;    ///< at the level
  estimate<mass_flow> by_rock;  ///< of that
  estimate<mass_flow> needed;   ///< so that the meals stay below the level
  estimate<mass_flow> spare;    ///< the one less the other
  settled_levels settles;       ///< the highest level that the meals come back to
};

/// Balance a filter.
///
///   takes(L) = M r(L),  M = q sum(A seeded) + s m P_rock/r(L0);  needed(L) by `life::capacity_for_meals`;
///   q = 0.29, 1, 1.45 of the central film; s = 1 and, at the worst today, what survives the move
///
/// The rock counts as the film that carries its load at the level L0 to stay below.
///
/// @param filter   food, rock and surfaces
/// @param question when, net volume, temperature 10 to 30 degC, level
/// @return         the balance; every band is ordered, and where it spares something it settles below the level
/// @throws         invalid_input, out_of_range (from the functions of `life/`)
/// @accuracy       as `life::nitrification_rate`
/// @source         Nijhof and Bovendeur 1990; Zhu and Chen 2002; Malone and Pfeiffer 2006; Timmons and Ebeling 2007
[[nodiscard]] filter_balance balance_of(const plan::filter_inputs& filter, const filter_question& question);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/filter_balance.ipp>
#endif
