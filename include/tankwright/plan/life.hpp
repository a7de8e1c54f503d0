// SPDX-License-Identifier: BSL-1.0
/// @file
/// The animals of a plan and what keeps them alive. The key [life].
#pragma once

#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/life/drip_vessel.hpp>
#include <tankwright/life/levels.hpp>
#include <tankwright/life/space.hpp>
#include <tankwright/plan/description.hpp>
#include <tankwright/plan/reading.hpp>
#include <vector>

namespace tankwright::plan {

/// How the nitrogen of a food is counted.
enum class food_kind {
  dry,  ///< pellets and flakes for bony fish: by the rule
  wet,  ///< frozen or live food, and everything for sharks and rays: all of it
};

/// A food, by what is given in the mean of the days.
struct food {
  std::string name{};
  value<mass_flow> amount{};
  value<proportion> protein{};
  word<food_kind> kind{};
  value<duration> every = by_default(days(1.0));
  std::string note{};
};

/// Rock from a tank that stayed clear, and what it has kept up with there.
struct moved_rock {
  value<mass> moved{};
  value<mass> whole{};  ///< key "of"
  value<mass_flow> nitrogen{};
  std::vector<plan::food> food{};
  std::string note{};
};

/// A surface that carries bacteria, or will: by its area, as media, as a bed of sand, or as rock by its weight.
struct filter_surface {
  std::string name{};
  value<tankwright::area> area{};
  value<tankwright::volume> volume{};
  value<tankwright::specific_surface> specific_surface{};
  value<tankwright::area> bed{};
  value<length> breathing_depth{};
  value<length> grain{};
  value<tankwright::porosity> porosity = by_default(tankwright::porosity{0.4});
  value<mass> rock{};
  value<length> piece{};
  value<mass_density> density = by_default(kilograms_per_cubic_metre(1500.0));
  value<double> roughness = by_default(2.0);
  value<proportion> seeded = by_default(fraction(0.0));
  std::string note{};
};

/// Once, or several times at equal intervals.
struct repeated {
  value<duration> first = by_default(days(0.0));
  value<double> times = by_default(1.0);
  value<duration> every = by_default(days(7.0));
};

struct stocking_step {
  value<duration> on{};
  value<proportion> share{};
  std::string note{};
};

struct bottled_culture {
  value<mass_flow> oxidises{};
  repeated when{};
  std::string note{};
};

struct dosed_ammonia {
  value<mass_concentration> rise{};
  repeated when{};
  std::string note{};
};

struct changed_water {
  value<proportion> part{};
  repeated when{};
  std::string note{};
};

/// The weeks of the start-up.
struct start_up_weeks {
  value<duration> horizon = by_default(days(60.0));
  value<duration> rock_on = by_default(days(0.0));
  value<proportion> survives = by_default(percent(50.0));
  std::vector<stocking_step> animals{};
  std::vector<bottled_culture> culture{};
  std::vector<dosed_ammonia> ammonia_dose{};
  std::vector<changed_water> water_change{};
  std::string note{};
};

enum class alkalinity_unit { degrees_kh, milliequivalents_per_litre, milligrams_caco3_per_litre };

struct alkalinity_watch {
  word<alkalinity_unit> unit{};
  value<double> now{};
  value<double> lowest{};
  value<duration> measured_every = by_default(days(7.0));
  std::string note{};
};

/// Animals of one kind.
struct animal_kind {
  std::string name{};
  value<mass> each{};
  value<double> count{};
  value<double> oxygen_use{};  ///< milligrams of oxygen per kilogram and hour
  value<mass> measured_at_mass{};
  value<temperature> measured_at{};
  value<double> mass_exponent = by_default(0.8);
  value<double> q10 = by_default(2.5);
  value<double> activity = by_default(1.0);
  value<length> adult{};
  value<velocity> speed{};
  value<double> run_multiple = by_default(tankwright::life::informal_length_multiple);
  value<double> width_multiple = by_default(tankwright::life::informal_width_multiple);
  value<mass> adult_mass{};
  std::string note{};
};

/// Animals in a bag, with their water and their gas.
struct transport_bag {
  std::string label{};
  value<mass> animals{};
  value<volume> water{};
  value<volume> gas{};
  value<proportion> oxygen = by_default(percent(100.0));
  value<double> oxygen_use{};  ///< milligrams of oxygen per kilogram and hour
  value<duration> closed_for{};
  value<double> ph = by_default(8.1);
  value<double> alkalinity = by_default(2.4);  ///< milliequivalents per litre
  value<tankwright::practical_salinity> practical_salinity = by_default(tankwright::practical_salinity{35.0});
  value<temperature> filled_at{};
  value<temperature> surroundings{};
  value<duration> time_constant{};
  value<temperature> lowest{};
  value<temperature> highest{};
  std::string note{};
};

/// The cup of the skimmer.
struct skimmer_cup {
  value<volume> room{};
  value<flow_rate> fills{};
  value<duration> unattended{};
  flag overflows_to_floor{};
  std::string note{};
};

/// What corals, algae and shells take from the water while nobody is there.
struct hardness_drift {
  value<duration> unattended = by_default(days(30.0));
  value<double> alkalinity_now{};
  value<double> alkalinity_lowest{};
  value<double> alkalinity_a_day{};
  value<mass_concentration> calcium_now{};
  value<mass_concentration> calcium_lowest{};
  value<proportion> water_change{};
  value<duration> every{};
  std::string note{};
};

/// How food or animals are added, step by step.
struct stocking_timetable {
  value<proportion> start{};
  value<proportion> step = by_default(percent(25.0));
  value<duration> rest = by_default(days(7.0));
  value<duration> ready_by{};
  std::string note{};
};

/// Air stones on a battery.
struct battery_air {
  value<rate> kla{};
  value<proportion> alpha = by_default(percent(70.0));
  value<duration> runs{};
  std::string note{};
};

struct power_cut_watch {
  value<duration> help_within{};
  value<mass_concentration> lowest_oxygen = by_default(tankwright::life::oxygen_alarm);
  value<proportion> start = by_default(percent(85.0));
  std::optional<plan::battery_air> battery_air{};
  std::string note{};
};

struct treatment {
  std::string name{};
  value<flow_rate> flow{};
  value<proportion> removes{};
  std::string note{};
};

struct circulation {
  value<duration> clear_within{};
  std::vector<plan::treatment> treatment{};
  std::string note{};
};

/// New animals in their water.
struct arrivals {
  ammonia_reading ammonia{};
  ph_with_scale ph{};
  value<tankwright::practical_salinity> practical_salinity{};
  value<tankwright::temperature> temperature{};
  value<volume> vessel{};
  value<double> salinity_per_hour{};
  value<temperature_difference> temperature_per_hour =
      by_default(tankwright::life::temperature_change_in_an_hour.level);
  word<tankwright::life::drip_vessel> drip_into = word_by_default(tankwright::life::drip_vessel::overflowing);
  value<proportion> step = by_default(percent(25.0));
  std::string note{};
};

/// A tank in which newcomers wait, and which lives by its water changes.
struct quarantine_tank {
  value<tankwright::volume> volume{};
  value<duration> lasts{};
  value<proportion> part{};
  value<duration> every{};
  ph_with_scale ph{};
  std::vector<plan::food> food{};
  std::vector<filter_surface> surface{};
  std::string note{};
};

struct swim_room {
  value<length> run{};
  value<length> width{};
  std::string note{};
};

/// [life]
struct life_section {
  ph_with_scale ph{};
  value<mass_concentration> ammonia_below = by_default(tankwright::life::total_ammonia_limit.level.as_nitrogen());
  value<mass_concentration> free_ammonia_below = by_default(micrograms_per_litre(35.0));  ///< for a mean of four days
  flag forecast = flag::by_default(true);
  std::vector<plan::food> food{};
  std::optional<plan::moved_rock> moved_rock{};
  std::vector<filter_surface> surface{};
  std::optional<start_up_weeks> start_up{};
  std::optional<alkalinity_watch> alkalinity{};
  std::vector<animal_kind> animals{};
  std::optional<power_cut_watch> power_cut{};
  std::optional<plan::circulation> circulation{};
  std::optional<plan::arrivals> arrivals{};
  std::optional<swim_room> room{};
  std::optional<quarantine_tank> quarantine{};
  std::vector<transport_bag> bag{};
  std::optional<skimmer_cup> skimmer{};
  std::optional<hardness_drift> drift{};
  std::optional<stocking_timetable> timetable{};
  std::string note{};
};

void describe(visitor& key, food& s);
void describe(visitor& key, moved_rock& s);
void describe(visitor& key, filter_surface& s);
void describe(visitor& key, stocking_step& s);
void describe(visitor& key, bottled_culture& s);
void describe(visitor& key, dosed_ammonia& s);
void describe(visitor& key, changed_water& s);
void describe(visitor& key, start_up_weeks& s);
void describe(visitor& key, alkalinity_watch& s);
void describe(visitor& key, animal_kind& s);
void describe(visitor& key, battery_air& s);
void describe(visitor& key, power_cut_watch& s);
void describe(visitor& key, treatment& s);
void describe(visitor& key, circulation& s);
void describe(visitor& key, arrivals& s);
void describe(visitor& key, quarantine_tank& s);
void describe(visitor& key, swim_room& s);
void describe(visitor& key, transport_bag& s);
void describe(visitor& key, skimmer_cup& s);
void describe(visitor& key, hardness_drift& s);
void describe(visitor& key, stocking_timetable& s);
void describe(visitor& key, life_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/life.ipp>
#endif
