// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is planned for the weeks of a start-up, and when? Moved rock and bottled cultures, animals and feeding, ammonia
/// doses, water changes: the input of the simulation in `start_up.hpp`.
#pragma once

#include <string>
#include <vector>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/nitrifiers.hpp>
#include <tankwright/life/nitrogen.hpp>

namespace tankwright::life {

/// When something happens: once, or `times` times at equal intervals.
struct schedule {
  required<duration> at;  ///< from the start of the simulation
  duration every = {};
  int times = 1;  ///< [1]
};

/// Bacteria brought in: moved rock (`bacteria_on`), or a bottled culture.
struct seeding {
  schedule when;
  required<bacteria> added;
};

/// Ammonia added to feed or to challenge the bacteria: the rise it makes in the whole tank.
struct ammonia_dose {
  schedule when;
  required<water::total_ammonia> rise;
};

/// Water replaced by new water without nitrogen. The bacteria sit on surfaces and stay.
struct water_change {
  schedule when;
  required<proportion> part;
};

/// From this time on, the animals give off this much.
struct load_step {
  required<duration> from;
  required<nitrogen_load> load;
};

/// A start-up to simulate.
struct start_up {
  std::string label = "start-up";
  required<volume> net;  ///< net volume of water in the whole system
  required<tankwright::temperature> temperature;
  required<mass_concentration> oxygen;  ///< in the water at the filter
  water::total_ammonia ammonia = water::total_ammonia::from_nitrogen({});
  nitrite_level nitrite = nitrite_level::from_nitrogen({});
  nitrate_level nitrate = nitrate_level::from_nitrogen({});
  std::vector<seeding> seedings = {};
  std::vector<load_step> loads = {};
  std::vector<ammonia_dose> doses = {};
  std::vector<water_change> water_changes = {};
  duration horizon = days(60.0);
  duration every = days(0.25);  ///< interval of the samples
  water::total_ammonia ammonia_limit = water::total_ammonia::from_nitrogen(milligrams_per_litre(0.1));
  nitrite_level nitrite_limit = nitrite_level::from_nitrogen(milligrams_per_litre(0.1));
  nitrifier ammonia_oxidisers = ammonia_oxidisers_2014;
  nitrifier nitrite_oxidisers = nitrite_oxidisers_2014;
};

}  // namespace tankwright::life
