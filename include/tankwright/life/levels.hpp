// SPDX-License-Identifier: BSL-1.0
/// @file
/// Which levels are a reason to act? Starting values for the water of animals, each with its source; most are from
/// memory and say so. Species, age and acclimation override them.
#pragma once

#include <string_view>

#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/nitrogen.hpp>
#include <tankwright/water/ammonia.hpp>

namespace tankwright::life {

inline constexpr citation morris_2011{"Morris A.L., Hamlin H.J., Francis-Floyd R., Sheppard B.J., Guillette L.J.", 2011,
                                      "Nitrate-induced goiter in captive whitespotted bamboo sharks",
                                      "Journal of Aquatic Animal Health 23:92-99, abstract"};
inline constexpr citation camargo_2005{
    "Camargo J.A., Alonso A., Salamanca A.", 2005,
    "Nitrate toxicity to aquatic animals: a review with new data for freshwater invertebrates",
    "Chemosphere 58:1255-1267, abstract: 20 mg/L of NO3-N for marine animals", standing::from_memory};
inline constexpr citation crow_1998{
    "Crow G.L., Atkinson M.J., Ron B., Atkinson S., Skillman A.D.K., Wong G.T.F.", 1998,
    "Relationship of water chemistry to serum thyroid hormones in captive sharks with goiters",
    "Aquatic Geochemistry 4:469-480, abstract"};
inline constexpr citation usepa_1989{"US Environmental Protection Agency", 1989,
                                     "Ambient Water Quality Criteria for Ammonia (Saltwater)", "EPA 440/5-88-004",
                                     standing::from_memory};
inline constexpr citation aquatic_veterinary_medicine_2022{"Urdes L., Walster C., Tepper J. (eds.)", 2022,
                                                           "Fundamentals of Aquatic Veterinary Medicine",
                                                           "Wiley, ISBN 9781119612728"};
inline constexpr citation husbandry_practice{"Husbandry practice", 0, "Limits in common use for display aquaria",
                                             "passed on in the trade", standing::from_memory};

/// A level, what it is about, and where it comes from.
template <class Q>
struct starting_value {
  Q level;
  std::string_view about;
  citation source;
};

inline constexpr caution levels_caution{
    "Limits are starting values for healthy adult animals of common species; species, age and acclimation override "
    "them. Ask an aquatic veterinarian."};

// ---- ammonia --------------------------------------------------------------------------------------------------------

inline constexpr starting_value<water::total_ammonia> total_ammonia_limit{
    water::total_ammonia::from_nitrogen(milligrams_per_litre(0.1)), "a display stays below", husbandry_practice};
inline constexpr starting_value<water::free_ammonia> free_ammonia_harm{
    water::free_ammonia::from_ammonia(milligrams_per_litre(0.05)), "harm begins about here",
    aquatic_veterinary_medicine_2022};
inline constexpr starting_value<water::free_ammonia> free_ammonia_four_days{
    water::free_ammonia::from_ammonia(milligrams_per_litre(0.035)), "criterion for a mean of four days in salt water",
    usepa_1989};
inline constexpr starting_value<water::free_ammonia> free_ammonia_one_hour{
    water::free_ammonia::from_ammonia(milligrams_per_litre(0.233)), "criterion for a mean of one hour in salt water",
    usepa_1989};

// ---- nitrite and nitrate --------------------------------------------------------------------------------------------

inline constexpr starting_value<nitrite_level> nitrite_limit{
    nitrite_level::from_nitrogen(milligrams_per_litre(0.1)),
    "above it the filter is not keeping up; the chloride of seawater protects fish from more", husbandry_practice};
inline constexpr starting_value<nitrate_level> nitrate_limit_fish{
    nitrate_level::from_nitrogen(milligrams_per_litre(50.0)), "bony fish stay below", husbandry_practice};
inline constexpr starting_value<nitrate_level> nitrate_limit_sensitive{
    nitrate_level::from_nitrogen(milligrams_per_litre(20.0)),
    "marine animals in general stay below; young invertebrates may need less", camargo_2005};
inline constexpr starting_value<nitrate_level> nitrate_limit_sharks{
    nitrate_level::from_nitrogen(milligrams_per_litre(15.0)), "sharks and rays stay below, as a precaution",
    husbandry_practice};
inline constexpr starting_value<nitrate_level> nitrate_goitre{nitrate_level::from_nitrogen(milligrams_per_litre(70.0)),
                                                              "gave bamboo sharks a diffuse goitre within 29 days",
                                                              morris_2011};
inline constexpr starting_value<amount_concentration> iodide_least_for_sharks{
    millimoles_per_litre(0.15e-3), "iodide that sharks need at least against goitre", crow_1998};

// ---- oxygen and change ----------------------------------------------------------------------------------------------

/// Oxygen in a power cut: 4 mg/L alarm, 3 mg/L emergency (from memory). Sensitive animals need more.
inline constexpr mass_concentration oxygen_alarm = milligrams_per_litre(4.0);
inline constexpr mass_concentration oxygen_emergency = milligrams_per_litre(3.0);

inline constexpr starting_value<mass_concentration> oxygen_limit{milligrams_per_litre(6.0), "a display stays above",
                                                                 husbandry_practice};
inline constexpr starting_value<temperature_difference> temperature_change_in_an_hour{
    celsius_steps(1.0), "largest change in an hour", husbandry_practice};
inline constexpr starting_value<temperature_difference> temperature_change_in_a_day{
    celsius_steps(2.0), "largest change in a day", husbandry_practice};

}  // namespace tankwright::life
