// SPDX-License-Identifier: BSL-1.0
// What was asked for is refused in the caller's words, by the function that was called.
#include <vector>

#include <tankwright/water.hpp>

#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::water;

namespace {
constexpr practical_salinity sea{35.0};
constexpr practical_salinity odd{43.0};
constexpr practical_salinity gravity{1.025};
const temperature warm = celsius(25.0), icy = celsius(-2.5), hot = celsius(90.0);
const volume tank = litres(500.0);
}  // namespace

TEST_CASE("water: every function refuses in its own name") {
  const auto rise = [](volume v, practical_salinity from, practical_salinity target, temperature t,
                       proportion yield = fraction(0.9)) {
    return raise_salinity({.volume = v, .from = from, .target = target, .temperature = t, .mix_yield = yield});
  };
  const auto lower = [](volume v, practical_salinity from, practical_salinity target, temperature t) {
    return lower_salinity({.volume = v, .from = from, .target = target, .temperature = t});
  };
  const auto replace = [](volume v, practical_salinity from, practical_salinity target, practical_salinity in,
                          temperature t) {
    return replace_to_reach({.volume = v, .from = from, .target = target, .replacement = in, .temperature = t});
  };
  const auto dose = [](double from, double target) {
    return alkalinity_to_add({.volume = litres(500.0),
                              .from = alkalinity::from_milliequivalents_per_litre(from),
                              .target = alkalinity::from_milliequivalents_per_litre(target)});
  };
  const std::string raise = "water::raise_salinity", lowering = "water::lower_salinity",
                    replacing = "water::replace_to_reach";
  check_refusals({
      TW_REFUSED(raise, "volume", rise(litres(0.0), sea, sea, warm)),
      TW_REFUSED(raise, "present salinity", rise(tank, odd, sea, warm)),
      TW_REFUSED(raise, "present salinity", rise(tank, gravity, sea, warm)),
      TW_REFUSED(raise, "target", rise(tank, sea, odd, warm)),
      TW_REFUSED(raise, "target", rise(tank, practical_salinity{0.0}, gravity, warm)),
      TW_REFUSED(raise, "temperature", rise(tank, sea, sea, hot)),
      // Freezing counts for the fresher of both waters: 10 freezes at -0.5 degC, 35 at -1.9 (Millero 1978).
      TW_REFUSED(raise, "temperature", rise(tank, practical_salinity{10.0}, sea, celsius(-1.0))),
      TW_REFUSED(lowering, "volume", lower(litres(0.0), sea, sea, warm)),
      TW_REFUSED(lowering, "present salinity", lower(tank, odd, sea, warm)),
      TW_REFUSED(lowering, "present salinity", lower(tank, gravity, practical_salinity{0.5}, warm)),
      TW_REFUSED(lowering, "target", lower(tank, sea, gravity, warm)),
      TW_REFUSED(lowering, "target", lower(tank, sea, practical_salinity{0.0}, warm)),
      TW_REFUSED(lowering, "temperature", lower(tank, sea, sea, hot)),
      TW_REFUSED(lowering, "temperature", lower(tank, sea, practical_salinity{10.0}, celsius(-1.0))),
      TW_REFUSED(replacing, "volume", replace(litres(0.0), sea, sea, sea, warm)),
      TW_REFUSED(replacing, "present salinity", replace(tank, odd, sea, sea, warm)),
      TW_REFUSED(replacing, "present salinity", replace(tank, gravity, sea, odd, warm)),
      TW_REFUSED(replacing, "target", replace(tank, sea, gravity, practical_salinity{0.0}, warm)),
      TW_REFUSED(replacing, "salinity of the replacement", replace(tank, sea, sea, odd, warm)),
      TW_REFUSED(replacing, "temperature", replace(tank, sea, sea, sea, hot)),
      TW_REFUSED(replacing, "temperature",
                 replace(tank, sea, practical_salinity{10.0}, practical_salinity{0.0}, celsius(-1.0))),
      TW_REFUSED("water::alkalinity_to_add", "alkalinity", dose(-1.0, 2.0)),
      TW_REFUSED("water::alkalinity_to_add", "alkalinity", dose(-2.0, -1.0)),
      TW_REFUSED("water::alkalinity_to_add", "alkalinity", dose(2.0, 1e16)),
  });
}

TEST_CASE("water: mixing refuses in its own name") {
  const auto mixed = [](practical_salinity s, temperature t, volume v = litres(10.0)) {
    return blend(std::vector<portion>{{.volume = v, .salinity = s, .temperature = t}});
  };
  const auto weighed = [](mass m, practical_salinity s) {
    return blend(std::vector<weighed_portion>{{.label = "can", .mass = m, .salinity = s}});
  };
  const auto brine = [](double salt, double water, double t) {
    return brine_density({.salt = kilograms(salt), .water = kilograms(water)}, celsius(t));
  };
  const auto salted = [](practical_salinity target, temperature t, proportion yield = fraction(0.9)) {
    return salt_for_finished_volume({.volume = litres(500.0), .target = target, .temperature = t, .mix_yield = yield});
  };
  const auto trial = [](mass mix, practical_salinity reached) {
    return measured_yield({.mix = mix, .fresh_water = kilograms(10.0), .reached = reached});
  };
  check_refusals({
      TW_REFUSED("water::blend", "temperature", mixed(sea, hot)),
      TW_REFUSED("water::blend", "practical salinity", mixed(odd, warm)),
      TW_REFUSED("water::blend", "water in all the portions", mixed(sea, warm, litres(0.0))),
      TW_REFUSED("water::blend", "can: practical salinity", weighed(kilograms(1.0), odd)),
      TW_REFUSED("water::blend", "water in all the portions", weighed(kilograms(0.0), sea)),
      TW_REFUSED("water::brine_density", "salt", brine(-1.0, 10.0, 20.0)),
      TW_REFUSED("water::brine_density", "water", brine(0.1, 0.0, 20.0)),
      TW_REFUSED("water::salt_for_standard", "temperature", salt_for_standard(sea, celsius(31.0))),
      TW_REFUSED("water::salt_for_standard", "temperature", salt_for_standard(sea, celsius(9.0))),
      TW_REFUSED("water::salt_for_finished_volume", "target", salted(gravity, warm)),
      TW_REFUSED("water::salt_for_finished_volume", "target", salted(odd, warm)),
      TW_REFUSED("water::salt_for_finished_volume", "temperature", salted(sea, icy)),
      TW_REFUSED("water::salt_for_finished_volume", "mix yield", salted(sea, warm, fraction(0.03))),
      TW_REFUSED("water::measured_yield", "mix", trial(kilograms(0.0), sea)),
      TW_REFUSED("water::measured_yield", "salinity reached", trial(kilograms(1.0), gravity)),
      TW_REFUSED("water::measured_yield", "salinity reached", trial(kilograms(0.1), sea)),
  });
}

TEST_CASE("water: properties refuse in their own name") {
  const std::vector<practical_salinity> three(3, sea);
  const std::vector<temperature> warm_two(2, warm), warm_three(3, warm), icy_three(3, icy);
  const std::vector<electrical_conductivity> c_three(3, millisiemens_per_centimetre(50.0));
  std::vector<mass_density> rho_two(2), rho_three(3);
  std::vector<practical_salinity> s_two(2, sea), s_three(3, sea);
  std::vector<electrical_conductivity> c_two(2), c_out(3);
  std::vector<specific_gravity> sg_two(2, specific_gravity{1.0, scale_25_25}), sg_three(3, sg_two[0]);
  const gravity_scale cold_scale{celsius(-2.5), celsius(4.0)};
  const temperature_coefficient two_percent = percent_per_kelvin(2.0);
  const auto referred = [&](double c, double t, temperature_coefficient a) {
    return linearly_compensated(millisiemens_per_centimetre(c), celsius(t), a);
  };
  const auto drifting = [](temperature t) {
    return evaporation_from_readings(
        {.volume = litres(500.0), .first = sea, .second = practical_salinity{36.0}, .temperature = t});
  };
  check_refusals({
      TW_REFUSED("water::density", "temperature", density(sea, icy)),
      TW_REFUSED("water::density", "temperature", density(absolute_from_practical(sea), icy)),
      TW_REFUSED("water::density_eos80", "temperature", density_eos80(sea, celsius(-1.95))),
      TW_REFUSED("water::salinity_from_density", "temperature",
                 salinity_from_density(kilograms_per_cubic_metre(1025.0), hot)),
      TW_REFUSED("water::salinity_from_density", "density",
                 salinity_from_density(kilograms_per_cubic_metre(990.0), warm)),
      TW_REFUSED("water::salinity_from_density", "temperature",
                 salinity_from_density(kilograms_per_cubic_metre(1010.0), icy)),
      TW_REFUSED("water::mass_concentration_from_salinity", "temperature", mass_concentration_from_salinity(sea, hot)),
      TW_REFUSED("water::mass_concentration_from_salinity", "temperature", mass_concentration_from_salinity(sea, icy)),
      TW_REFUSED("water::salinity_from_mass_concentration", "temperature",
                 salinity_from_mass_concentration(grams_per_litre(35.0), hot)),
      TW_REFUSED("water::oxygen_saturation_concentration", "practical salinity",
                 oxygen_saturation_concentration(odd, warm)),
      TW_REFUSED("water::oxygen_saturation_concentration", "temperature",
                 oxygen_saturation_concentration(sea, celsius(41.0))),
      TW_REFUSED("water::surface_tension_of", "practical salinity", surface_tension_of(odd, warm)),
      TW_REFUSED("water::thermal_conductivity_of", "practical salinity", thermal_conductivity_of(odd, warm)),
      TW_REFUSED("water::water_activity", "practical salinity", water_activity(odd, warm)),
      TW_REFUSED("water::vapour_pressure", "practical salinity", vapour_pressure(odd, warm)),
      TW_REFUSED("water::vapour_pressure", "temperature", vapour_pressure(sea, hot)),
      TW_REFUSED("water::viscosity", "temperature", viscosity(absolute_from_practical(sea), celsius(-1.0))),
      TW_REFUSED("water::salinity_from_refractive_index", "temperature",
                 salinity_from_refractive_index({.index = refractive_index{1.339}, .temperature = celsius(31.0)})),
      TW_REFUSED("water::salinity_from_refractive_index", "wavelength",
                 salinity_from_refractive_index(
                     {.index = refractive_index{1.339}, .temperature = warm, .wavelength = nanometres(499.0)})),
      TW_REFUSED("water::salinity_from_conductivity", "temperature",
                 salinity_from_conductivity(millisiemens_per_centimetre(25.0), celsius(-1.99))),
      TW_REFUSED(
          "water::salinity_from_conductivity", "pressure",
          salinity_from_conductivity(millisiemens_per_centimetre(50.0), warm, gauge_pressure{decibars(10001.0)})),
      TW_REFUSED("water::linearly_compensated", "conductivity", referred(-1.0, 25.0, two_percent)),
      TW_REFUSED("water::linearly_compensated", "temperature", referred(50.0, 36.0, two_percent)),
      TW_REFUSED("water::linearly_compensated", "temperature coefficient",
                 referred(50.0, 20.0, percent_per_kelvin(0.05))),
      TW_REFUSED("water::evaporation_from_readings", "temperature", drifting(hot)),
      TW_REFUSED("water::hydrometer_reading", "practical salinity",
                 hydrometer_reading(odd, warm, {.scale = scale_25_25})),
      TW_REFUSED("water::salinity_from_hydrometer", "reading",
                 salinity_from_hydrometer({.reading = 1.05, .water = warm, .instrument = {.scale = scale_25_25}})),
      TW_REFUSED("water::left_after_flow", "volume",
                 left_after_flow({.volume = litres(0.0), .flow = litres_per_hour(1.0), .time = hours(1.0)})),
      TW_REFUSED("water::time_to_leave", "volume",
                 time_to_leave({.volume = litres(0.0), .flow = litres_per_hour(1.0), .left = fraction(0.5)})),
      TW_REFUSED("water::changes_to_leave", "part changed",
                 changes_to_leave({.part = fraction(0.0), .left = fraction(0.5)})),
      TW_REFUSED("water::changes_to_leave", "part to be left",
                 changes_to_leave({.part = fraction(0.5), .left = fraction(0.0)})),
  });
  // What is of another size is refused before anything is written.
  for (const auto& call : std::vector<std::function<void()>>{
           [&] { density(three, warm_two, rho_three); }, [&] { density(three, warm_three, rho_two); },
           [&] { salinity_from_conductivity(c_three, warm_two, s_three); },
           [&] { salinity_from_conductivity(c_three, warm_three, s_two); },
           [&] { conductivity_from_salinity(three, warm_two, c_out); },
           [&] { conductivity_from_salinity(three, warm_three, c_two); },
           [&] { specific_gravity_from_salinity(three, scale_25_25, sg_two); }}) {
    bool refused = false;
    try {
      call();
    } catch (const invalid_input& e) {
      refused = true;
      CHECK_MESSAGE(e.details().argument == "size of a span", e.what());
      CHECK_MESSAGE(e.details().value == 2.0, e.what());  // the other one; the first has three
    }
    CHECK(refused);
  }
  CHECK_THROWS_AS(density(three, icy_three, rho_three), out_of_range);
  CHECK_THROWS_AS(specific_gravity_from_salinity(three, cold_scale, sg_three), out_of_range);
}
