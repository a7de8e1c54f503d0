// SPDX-License-Identifier: BSL-1.0
// The salting day: numbers that were meant otherwise, instruments in fresh water, and there and back at the end of the
// scale.
#include <array>
#include <string>
#include <tankwright/water.hpp>

#include "support/check.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {

bool holds(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("a specific gravity is refused where a salinity is meant") {
  const auto batch = [](double target, range_policy policy = range_policy::published) {
    return tww::salt_for_finished_volume({.volume = litres(5000.0),
                                          .target = practical_salinity{target},
                                          .temperature = celsius(24.0),
                                          .mix_yield = fraction(0.9)},
                                         policy);
  };
  for (const double gravity : {0.99, 1.0, 1.025, 1.026, 1.10}) {
    const std::string said = message_of([&] { return batch(gravity); });
    CHECK_MESSAGE(holds(said, "looks like a specific gravity"), said);
    CHECK(holds(said, "salt_for_finished_volume"));
  }
  CHECK_NOTHROW((void)batch(0.98));
  CHECK_NOTHROW((void)batch(1.11));
  CHECK_NOTHROW((void)batch(1.025, extrapolate));  // whoever wants water that fresh says so
  const evidence rule{"tankwright::water::looks_like_a_gravity", kind::identity, "the two ends"};
  TW_HOLDS(rule, tww::looks_like_a_gravity(practical_salinity{0.99}));
  TW_HOLDS(rule, tww::looks_like_a_gravity(practical_salinity{1.10}));
  TW_HOLDS(rule, !tww::looks_like_a_gravity(practical_salinity{35.0}));
  const auto raise = [](double from, double target) {
    return tww::raise_salinity({.volume = litres(100.0),
                                .from = practical_salinity{from},
                                .target = practical_salinity{target},
                                .temperature = celsius(24.0),
                                .mix_yield = fraction(0.9)});
  };
  CHECK(holds(message_of([&] { return raise(1.022, 35.0); }), "present salinity"));
  CHECK(holds(message_of([&] { return raise(0.5, 1.026); }), "looks like a specific gravity"));
  CHECK_NOTHROW((void)raise(33.0, 35.0));
}

TEST_CASE("a coefficient of a part per kelvin taken for percent is refused") {
  const auto seen = [](double percent) {
    return tww::compensated_reading{
        .shown = millisiemens_per_centimetre(53.0), .water = celsius(22.0), .coefficient = percent_per_kelvin(percent)};
  };
  CHECK(holds(message_of([&] { return tww::salinity_from_conductivity(seen(0.02)); }), "next to none"));
  CHECK_THROWS_AS(
      (void)tww::linearly_compensated(millisiemens_per_centimetre(53.0), celsius(22.0), percent_per_kelvin(0.02)),
      invalid_input);
  CHECK_NOTHROW((void)tww::salinity_from_conductivity(seen(0.0)));
  CHECK_NOTHROW((void)tww::salinity_from_conductivity(seen(2.0)));
}

TEST_CASE("a hydrometer and a refractometer in fresh water may stand half a division too low") {
  const tww::hydrometer instrument{.scale = tww::scale_25_25};
  const auto read = [&](double reading) {
    return tww::salinity_from_hydrometer({.reading = reading, .water = celsius(25.0), .instrument = instrument});
  };
  const auto low = read(0.9996);  // pure water shows 1.0000 there
  const evidence fresh{"tankwright::water::salinity_from_hydrometer", kind::identity, "pure water shows one at 25/25"};
  TW_CHECK(fresh, low.central.value(), 0.0, within(1e-9));
  CHECK(low.low.value() == 0.0);
  CHECK(low.high.value() > 0.0);
  CHECK(low.high < read(1.0).high);
  CHECK_THROWS_AS((void)read(0.9994), out_of_range);  // past half a division
  const tww::refractometer optics{.scale = tww::refractometer_scale::seawater,
                                  .compensation = tww::temperature_compensation::none};
  const auto shown = [&](double reading, double t) {
    return tww::salinity_from_refractometer({.reading = reading, .prism = celsius(t), .instrument = optics});
  };
  // Pure water at 19 degC bends more than at 20: it shows a little above zero, and zero is a little too low.
  const double own = tww::refractometer_reading(practical_salinity{0.0}, celsius(19.0), optics);
  CHECK(own > 0.0);
  const auto zero = shown(0.0, 19.0);
  const evidence fresh_too{"tankwright::water::salinity_from_refractometer", kind::identity, "within half a division"};
  TW_CHECK(fresh_too, zero.central.value(), 0.0, tolerance{});
  CHECK(zero.high.value() > 0.0);
  CHECK_THROWS_AS((void)shown(0.0, 10.0), out_of_range);  // there pure water shows more than half a division
}

TEST_CASE("weighing a known volume: air bears a part of the water") {
  const tww::weighed_volume flask{.volume = litres(1.0), .shown = grams(1023.3)};
  const evidence force{"tankwright::water::density_by_weighing", kind::identity, "m (1 - a/w) = V (rho - a)"};
  const double rho = tww::density_by_weighing(flask).central.value();
  TW_CHECK(force, rho, 1023.3 * (1.0 - 1.2 / 8000.0) + 1.2, relative(1e-13));
  TW_CHECK(force, (rho - 1.2) * 1e-3, 1.0233 * (1.0 - 1.2 / 8000.0), relative(1e-13));
  tww::weighed_volume vacuum = flask;
  vacuum.air = kilograms_per_cubic_metre(0.0);
  TW_CHECK(force, tww::density_by_weighing(vacuum).central.value(), 1023.3, relative(1e-13));
  // At 25 degC that is 1.4 of salinity, twice the band of a hydrometer.
  const double apart = tww::salinity_from_density(kilograms_per_cubic_metre(rho), celsius(25.0)).value() -
                       tww::salinity_from_density(kilograms_per_cubic_metre(1023.3), celsius(25.0)).value();
  CHECK(apart > 1.3);
  CHECK(apart < 1.5);
  CHECK_THROWS_AS((void)tww::density_by_weighing({.volume = litres(1.0), .shown = grams(0.0)}), invalid_input);
  CHECK_THROWS_AS((void)tww::density_by_weighing({.volume = litres(0.0), .shown = grams(1.0)}), invalid_input);
}

TEST_CASE("salinity 42 survives there and back, at every temperature") {
  const practical_salinity end{42.0};
  const tww::refractometer optics{.scale = tww::refractometer_scale::seawater,
                                  .compensation = tww::temperature_compensation::none};
  const tww::hydrometer glass{.scale = tww::scale_60f_60f};
  for (double t = 0.0; t <= 30.0; t += 0.37) {
    const temperature at = celsius(t);
    CHECK(tww::salinity_from_conductivity(tww::conductivity_from_salinity(end, at), at) <= end);
    CHECK(tww::salinity_from_mass_concentration(tww::mass_concentration_from_salinity(end, at), at) <= end);
    CHECK(tww::salinity_from_density(tww::density(end, at), at) <= end);
    CHECK(tww::practical_from_absolute(tww::absolute_from_practical(end)) <= end);
    const double bent = tww::refractometer_reading(end, at, optics);
    if (bent >= 0.0) {
      CHECK(tww::salinity_from_refractometer({.reading = bent, .prism = at, .instrument = optics}).central <= end);
    }
    const double shown = tww::hydrometer_reading(end, at, glass);
    CHECK(tww::salinity_from_hydrometer({.reading = shown, .water = at, .instrument = glass}).central <= end);
    const std::array<electrical_conductivity, 1> many{tww::conductivity_from_salinity(end, at)};
    const std::array<temperature, 1> all_at{at};
    std::array<practical_salinity, 1> back;
    tww::salinity_from_conductivity(many, all_at, back);
    CHECK(back[0] <= end);
  }
  const auto past = [&] {
    return tww::salinity_from_conductivity(
        tww::conductivity_from_salinity(practical_salinity{42.001}, celsius(20.0), extrapolate), celsius(20.0));
  };
  CHECK(holds(message_of(past), "means practical salinity 42.001"));
}

TEST_CASE("what extrapolates says so all the way, and not beyond what water can be") {
  const tww::compensated_reading warm{
      .shown = millisiemens_per_centimetre(53.0), .water = celsius(38.0), .coefficient = percent_per_kelvin(2.0)};
  CHECK_THROWS_AS((void)tww::salinity_from_conductivity(warm), out_of_range);
  CHECK_NOTHROW((void)tww::salinity_from_conductivity(warm, extrapolate));
  CHECK_NOTHROW((void)tww::raw_conductivity(warm, extrapolate));
  const practical_salinity sea{35.0};
  CHECK_THROWS_AS((void)tww::density(sea, celsius(200.0), extrapolate), invalid_input);
  for (double t = -40.0; t <= 110.0; t += 5.0) {
    for (const double s : {0.0, 42.0, 120.0, 400.0}) {
      CHECK(tww::density(practical_salinity{s}, celsius(t), extrapolate).value() > 200.0);
    }
  }
}

TEST_CASE("errors name the function that was called") {
  const practical_salinity brine{50.0};
  const temperature t = celsius(20.0);
  CHECK(holds(message_of([&] { return tww::surface_tension_of(brine, t); }), "tankwright::water::surface_tension_of:"));
  CHECK(holds(message_of([&] { return tww::thermal_conductivity_of(brine, t); }),
              "tankwright::water::thermal_conductivity_of:"));
  CHECK(holds(message_of([&] { return tww::vapour_pressure(brine, t); }), "tankwright::water::vapour_pressure:"));
  CHECK(holds(message_of([&] { return tww::oxygen_saturation_concentration(brine, t); }),
              "tankwright::water::oxygen_saturation_concentration:"));
  const std::string ice = message_of([&] { return tww::density(practical_salinity{0.0}, celsius(-3.0)); });
  CHECK_MESSAGE(holds(ice, "freezing point, 0 degC"), ice);
  CHECK(core::number_text(-0.0) == "0");
}
