// SPDX-License-Identifier: BSL-1.0
/// @file
/// The laws that are known only within a band, as data: what moves an answer besides the numbers of a plan. A law has
/// one draw for all formulas that use it.
#pragma once

#include <span>
#include <string_view>

namespace tankwright::decisions {

/// How the truth lies about the middle of a law's band.
enum class spread {
  even,            ///< anywhere between the ends, each side of the middle as likely
  standard_error,  ///< normal, the ends one standard error away
};

/// A law that is known only within a band. Zero is its middle: what `assess` answers.
struct law {
  std::string_view id;           ///< fixed: "evaporation"
  std::string_view says;         ///< one plain sentence: how well it is known
  std::string_view narrow_by{};  ///< what to measure in its place; empty where nothing can be
  spread by = spread::even;
};

/// What an engine says of a band that a law makes.
struct band_of_law {
  std::string_view reason;
  std::string_view law;  ///< its id
};

inline constexpr law every_law[] = {
    {"evaporation",
     "how fast water evaporates: laws for still indoor water lie within a third, moving water half up or down",
     "mark the level and read it a day later with the top-off shut: that is the evaporation"},
    {"fitting_losses", "loss coefficients of fittings: bends and tees good to 30 %, valves to 50 %",
     "hold a bucket under each return and time it: that is the flow"},
    {"weir", "how high water stands over an edge or a baffle for its flow",
     "measure how high the water stands over the edge while the pump runs"},
    {"drain_inlet", "what a drain carries: its inlet, its fittings and its siphon",
     "run the pump with one drain shut and see how high the display rises"},
    {"drain_gulp", "the limit of a drain that vents itself is soft, about 20 %", "listen to it"},
    {"priming", "how a pipe carries water while air is still in it",
     "watch the first start and write down how far the water rises"},
    {"vortex", "how deep an inlet must lie so that no vortex draws air; rules for large intakes differ",
     "watch the water over the inlet at the lowest level"},
    {"jet", "how a jet slows down: experiments on free round jets; a tank is not free", "hold a thread into the jet"},
    {"sand_moves", "which jet moves sand: thickness of the layer that the bottom slows down", "watch the sand"},
    {"silicone", "what silicone carries for good: builders differ from 14 to 210 kPa"},
    {"creep", "how acrylic bends over years"},
    {"drop_size", "how large a drop is: 20 a millilitre, less from a tip, more from a broad edge",
     "catch drops in a measure and count them"},
    {"leak_slope", "one standard error of the slope of a level over time", "read the level for longer",
     spread::standard_error},
    {"leak_limits", "one-sided limits of a leak at the chosen confidence", "read the level for longer"},
    {"cover_test", "one standard error of two leak tests, open and covered", "read the level for longer",
     spread::standard_error},
    {"sand_porosity", "porosity and grain density of sand", "fill a measure with sand, and then with water"},
    {"rock_porosity", "moisture, closed pores and density of rock", "weigh the rock under water"},
    {"displacement", "what lies in the water keeps out: all items as if they erred the same way",
     "read the water meter while filling"},
    {"mix_yield", "a mix that was not measured holds 85 to 100 % of salt", "make a trial batch of the mix"},
    {"instrument", "an instrument is read to half a division of its scale", "read a second instrument beside it"},
    {"unknown_scale", "an instrument whose scale may be any of several", "check it in a weighed solution"},
    {"ammonia_dissociation", "how much ammonia is free: the constant is good to 5 %, a pH on NBS buffers to 0.03"},
    {"feed_nitrogen", "ammonia that comes of food: digestion differs by about 25 %",
     "measure the ammonia before and after a day without filter"},
    {"film_uptake", "what mature films clear: a third to one and a half times, and how rock stands a move",
     "dose ammonia and measure how fast it goes"},
    {"nitrifier_growth", "growth, decay and yield of nitrifiers: as fast as in fresh water, or slow",
     "measure ammonia and nitrite every other day"},
    {"film_doubling", "films in the sea double in 2 to 14 days", "measure how fast ammonia goes, week by week"},
    {"cell_growth", "alkalinity and oxygen that nitrification takes, with and without the growth of cells"},
    {"oxygen_at_surface", "oxygen that animals use, within 30 %, and that a still surface brings: none to a lake's",
     "measure the oxygen for an hour with the pumps off, somebody beside it"},
    {"excretion", "ammonia that animals give off in a bag, fasted to fed"},
    {"burrow", "room that burrowing animals keep: range over individuals"},
    {"dehumidifier", "machines of one label differ: by 15 % near 25 degC, in colder rooms by far more",
     "weigh what the dehumidifier collects in a day"},
    {"heat_store", "heat that rock and gravel hold"},
    {"devices", "what devices draw, their bands added", "read a meter at the socket for a week"},
    {"leakage_current",
     "what a device leaks to earth: 0.25 to 0.75 mA by its standard, 3.5 mA with a motor that is built in",
     "have an electrician measure the leakage of the circuit"},
    {"battery", "age and cold of a battery, and how fast it is drawn", "run the battery down once and time it"},
    {"mixing_order", "whether purified water can be stored while a batch dissolves"},
    {"given", "numbers of the plan that an engine takes with their doubt; sharp where samples move them"},
};

inline constexpr band_of_law every_band_of_law[] = {
    {"moving water: half up or down, because the factor for agitation is a habit of pool design; otherwise as for "
     "still water",
     "evaporation"},
    {"published correlations for quiet indoor water lie within a third of Shah's, whose own mean deviation is 18 %; "
     "the low end is at most VDI 2089, the high end at least Smith et al. 1994 in moving air, and covers may leak "
     "twice as much",
     "evaporation"},
    {"evaporation, and how freely air passes a gap", "evaporation"},
    {"the band of the evaporation, and how well the volume is known", "evaporation"},
    {"the band of the evaporation, and machines of one label differ: by 15 % from 21 to 32 degC, in colder rooms by "
     "far more",
     "evaporation"},
    {"loss coefficients of the fittings", "fitting_losses"},
    {"the loss coefficients of the fittings", "fitting_losses"},
    {"losses of the fittings and net volume", "fitting_losses"},
    {"loss coefficients at the ends of their bands", "fitting_losses"},
    {"sum over the fittings, their bands added", "fitting_losses"},
    {"depends on the edges and on what lies upstream", "fitting_losses"},
    {"depends on how it is put together", "fitting_losses"},
    {"measured edges and published values spread by some 15 %", "fitting_losses"},
    {"published tee formulas spread this far", "fitting_losses"},
    {"weir formula, form of the edge, and the band of the flow", "weir"},
    {"weir formula, surface tension and the form of the edge", "weir"},
    {"weir formula and the form of the baffles", "weir"},
    {"areas, levels, flow and weir heads, all at one end of their bands together", "weir"},
    {"areas and levels, all at one end of their bands together", "vortex"},
    {"siphon formula, inlets and the losses of the fittings", "drain_inlet"},
    {"the limit of a drain that vents itself is soft, about 20 %", "drain_gulp"},
    {"how a pipe carries water with air in its middle", "priming"},
    {"the flow, and how a pipe carries water with air in its middle", "priming"},
    {"the flow, the weir formula, and what the drains take before they run full", "priming"},
    {"different rules for large intakes", "vortex"},
    {"experiments on free round jets; a tank is not free", "jet"},
    {"thickness of the layer that the bottom slows down", "sand_moves"},
    {"facades allow 14 kPa for what stays, tank builders up to 210 kPa; from memory", "silicone"},
    {"apparent creep modulus after about ten years", "creep"},
    {"20 drops a millilitre, less from a tip, more from a broad edge; from memory", "drop_size"},
    {"one standard error of the slope", "leak_slope"},
    {"one-sided limits at the chosen confidence", "leak_limits"},
    {"one standard error", "cover_test"},
    {"porosity and grain density of the sand", "sand_porosity"},
    {"rock not weighed under water: moisture, closed pores and density", "rock_porosity"},
    {"porosity of the rock", "rock_porosity"},
    {"porosity and density of the rock", "rock_porosity"},
    {"the items, as if all erred the same way", "displacement"},
    {"the yield of this mix was not measured; dry mixes hold 85 to 100 % salt (common practice)", "mix_yield"},
    {"volume, salinity to be matched and yield, each at its worst", "mix_yield"},
    {"both readings, the volume and the yield, each at its worst", "mix_yield"},
    {"half a division of its scale", "instrument"},
    {"half a division on each of the three readings", "instrument"},
    {"half a division of the scale either way; a wet stem, bubbles and a misplaced scale are not in it", "instrument"},
    {"half a division of the scale, the salt it assumes, and a temperature compensation made for another liquid; an "
     "instrument that was not set to a known seawater can be further out",
     "instrument"},
    {"the band of the reading", "instrument"},
    {"the bands of both readings", "instrument"},
    {"both readings and the volume, each at its worst", "instrument"},
    {"its scale may be any of five", "unknown_scale"},
    {"the dissociation constant is good to 5 %, a probe on NBS buffers reads within 0.03 of the free scale",
     "ammonia_dissociation"},
    {"the dissociation constant is good to 5 %", "ammonia_dissociation"},
    {"digestion differs by about 25 %; of wet food all nitrogen is counted", "feed_nitrogen"},
    {"feed, species and digestion differ by about 25 %", "feed_nitrogen"},
    {"the food, mature films from a third to one and a half, and how the rock stands its move", "film_uptake"},
    {"mature films of different filters vary from a third to one and a half", "film_uptake"},
    {"food, films, dissociation constant and pH probe", "film_uptake"},
    {"bacteria as fast as in fresh water with the least food, or slow, a part of those brought in dead and the most "
     "food",
     "nitrifier_growth"},
    {"films in the sea double in 2 to 14 days; from memory", "film_doubling"},
    {"with and without the growth of cells", "cell_growth"},
    {"animals use 30 % more or less than scaled; the surface brings nothing under lids, what a lake's does at best",
     "oxygen_at_surface"},
    {"fasted to fed; from memory", "excretion"},
    {"range over individuals of two species, neonates", "burrow"},
    {"the volume of the solids, and their mineral", "heat_store"},
    {"the bands of the devices, which add up", "devices"},
    {"0.25 mA (double insulated) to 0.75 mA (earthed) are allowed and most leak less; a chiller that is built in "
     "may leak 3.5 mA: give it by itself; from memory",
     "leakage_current"},
    {"age and cold of the battery, and how fast it is drawn; common practice, no source", "battery"},
    {"whether purified water can be stored while a batch dissolves", "mixing_order"},
    {"the reading of the trial batch, within its error", "given"},
    {"volume of the flask and error of the scale, both at their worst", "given"},
    {"the volume as measured", "given"},
    {"the volume as given", "given"},
    {"evaporation as given", "given"},
    {"horizontal areas of the sump", "given"},
    {"the area over which the surge was seen", "given"},
};

/// All laws that are known only within a band.
///
/// @return   the laws, in a fixed order
/// @accuracy exact
/// @source   this library; how well a law is known stands with its formula
[[nodiscard]] constexpr std::span<const law> all_laws() noexcept { return every_law; }

/// The law with an id.
///
/// @param id as in `law::id`
/// @return   the law; none: null
/// @accuracy exact
/// @source   this library
[[nodiscard]] constexpr const law* law_with(std::string_view id) noexcept {
  for (const law& one : every_law) {
    if (one.id == id) return &one;
  }
  return nullptr;
}

/// The law that makes a band.
///
/// @param reason of the band, as an engine gives it
/// @return       the law; null for a reason that no law is known for, and for none
/// @accuracy     exact
/// @source       this library
[[nodiscard]] constexpr const law* law_of(std::string_view reason) noexcept {
  for (const band_of_law& one : every_band_of_law) {
    if (one.reason == reason) return law_with(one.law);
  }
  return nullptr;
}

}  // namespace tankwright::decisions
