// SPDX-License-Identifier: BSL-1.0
// Ends: the last number that a rule takes and the first that it refuses, what is filled in when nothing is said, and where
// a band ends. Each number is the one that the docstring or the source says, one step to each side.
#include <cmath>
#include <string>
#include <vector>

#include <tankwright/water.hpp>

#include "support/reference.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::water;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
double up(double x) { return std::nextafter(x, infinite); }
double down(double x) { return std::nextafter(x, -infinite); }

const temperature warm = celsius(25.0);
const evidence by_definition{"tankwright::water::free_ammonia_fraction", kind::published,
                             "Clegg and Whitfield 1995: K* to 5 %; a probe on NBS buffers within 0.03"};
const evidence weighed{"tankwright::water::density_by_weighing", kind::identity, "balance of a body in air, by hand"};

}  // namespace

TEST_CASE("ends: a number that is rather a specific gravity") {
  for (const double s : {0.99, 1.0, 1.0245, 1.10}) CHECK(looks_like_a_gravity(practical_salinity{s}));
  for (const double s : {0.0, 0.5, down(0.99), up(1.10), 1.2, 35.0, -1.0}) {
    CHECK_FALSE(looks_like_a_gravity(practical_salinity{s}));
  }
  const auto lowered = [](range_policy policy) {
    return lower_salinity({.volume = litres(10.0),
                           .from = practical_salinity{10.0},
                           .target = practical_salinity{1.025},
                           .temperature = warm},
                          policy);
  };
  CHECK_THROWS_AS((void)lowered(range_policy::published), invalid_input);
  CHECK_NOTHROW((void)lowered(extrapolate));
  CHECK(message_of([&] { return lowered(range_policy::published); }).find("looks like a specific gravity") !=
        std::string::npos);
}

TEST_CASE("ends: rounding past the end of the scale") {
  CHECK(detail::within_rounding(42.0) == 42.0);
  CHECK(detail::within_rounding(42.0 + 0.99e-8) == 42.0);
  CHECK(detail::within_rounding(42.0 + 1e-8) == 42.0);
  CHECK(detail::within_rounding(42.0 + 1.0005e-8) == 42.0 + 1.0005e-8);
  CHECK(detail::within_rounding(41.5) == 41.5);
  // A part in 10^12 beyond the density of fresh water, and of water of salinity 42, is rounding.
  const double fresh = density(practical_salinity{0.0}, warm).value(),
               full = density(practical_salinity{42.0}, warm).value();
  const auto salinity = [](double rho) { return salinity_from_density(kilograms_per_cubic_metre(rho), warm).value(); };
  CHECK(salinity(fresh) == 0.0);
  CHECK(salinity(fresh * (1.0 - 0.6e-12)) == 0.0);
  CHECK_THROWS_AS((void)salinity(fresh * (1.0 - 1.6e-12)), out_of_range);
  CHECK(compare(salinity(full), 42.0, relative(1e-9)).good);
  CHECK(compare(salinity(full * (1.0 + 0.6e-12)), 42.0, relative(1e-9)).good);
  CHECK_THROWS_AS((void)salinity(full * (1.0 + 1.6e-12)), out_of_range);
  CHECK_THROWS_AS((void)salinity(full * 1.0005), out_of_range);
}

TEST_CASE("ends: the band of free ammonia") {
  // log10(1.05) = 0.0212: K* is good to 5 %.
  const double k = std::log10(1.05);
  for (const double s : {0.0, 20.0, 35.0}) {
    const practical_salinity sp{s};
    const double pka = ammonium_pka_free(sp, warm).value();
    const auto part = [&](double ph) { return 1.0 / (1.0 + std::pow(10.0, pka - ph)); };
    const auto free = free_ammonia_fraction(ph_free{8.1}, sp, warm);
    TW_CHECK(by_definition, free.low, fraction(part(8.1 - k)), relative(5e-5));
    TW_CHECK(by_definition, free.central, fraction(part(8.1)), relative(1e-12));
    TW_CHECK(by_definition, free.high, fraction(part(8.1 + k)), relative(5e-5));
    const auto probe = free_ammonia_fraction(ph_nbs{8.1}, sp, warm);
    TW_CHECK(by_definition, probe.low, fraction(part(8.1 - k - 0.03)), relative(5e-5));
    TW_CHECK(by_definition, probe.high, fraction(part(8.1 + k + 0.03)), relative(5e-5));
  }
}

TEST_CASE("ends: cautions and reasons come with the results") {
  const practical_salinity sea{35.0}, less{34.0};
  CHECK_FALSE(
      lower_salinity({.volume = litres(10.0), .from = sea, .target = less, .temperature = warm}).caution.text.empty());
  CHECK_FALSE(replace_to_reach({.volume = litres(10.0),
                                .from = sea,
                                .target = less,
                                .replacement = practical_salinity{0.0},
                                .temperature = warm})
                  .caution.text.empty());
  CHECK_FALSE(
      salt_for_new_water_unmeasured({.volume = litres(10.0), .target = sea, .temperature = warm}).caution.text.empty());
  const hydrometer floating{.scale = scale_25_25};
  CHECK_FALSE(salinity_from_hydrometer({.reading = 1.025, .water = warm, .instrument = floating}).reason.empty());
}

TEST_CASE("ends: what is filled in when nothing is said") {
  CHECK(hydrometer{.scale = scale_25_25}.division == 0.001);  // "0.001 when not said"
  CHECK(hydrometer{.scale = scale_25_25}.body.name == "glass");
  CHECK(trial_batch{.mix = kilograms(1.0), .fresh_water = kilograms(20.0), .reached = practical_salinity{35.0}}
            .reading_error.value() == 1.0);
  const weighed_volume flask{.volume = litres(1.0), .shown = kilograms(1.0)};
  CHECK(flask.volume_error.value() == 0.001);
  CHECK(compare(in_grams(flask.scale_error), 1.0, relative(1e-12)).good);
  const drifting_system top_off_unsaid{.volume = litres(100.0),
                                       .salinity = practical_salinity{35.0},
                                       .temperature = warm,
                                       .evaporation = litres_per_day(1.0),
                                       .top_off = litres_per_day(1.0)};
  CHECK(top_off_unsaid.top_off_salinity.value() == 0.0);
  const compensated_reading unsaid{
      .shown = millisiemens_per_centimetre(50.0), .water = warm, .coefficient = percent_per_kelvin(2.0)};
  CHECK(in_celsius(unsaid.reference) == 25.0);
}

TEST_CASE("ends: a hydrometer a little below fresh water") {
  const hydrometer floating{.scale = scale_25_25};
  const double fresh = hydrometer_reading(practical_salinity{0.0}, warm, floating);
  const auto seen = [&](double reading) {
    return salinity_from_hydrometer({.reading = reading, .water = warm, .instrument = floating});
  };
  CHECK(seen(fresh - 0.00049).central.value() == 0.0);  // half a division of 0.001
  CHECK(seen(fresh - 0.00049).high.value() > 0.0);
  CHECK_THROWS_AS((void)seen(fresh - 0.00051), out_of_range);
  CHECK_THROWS_AS((void)seen(fresh - 0.0009), out_of_range);
  CHECK(seen(fresh + 0.0001).central.value() > 0.05);
  try {
    (void)seen(1.05);
    CHECK(false);
  } catch (const error& e) {
    CHECK(e.details().value == 1.05);
    CHECK(e.details().argument == "reading");
    CHECK(e.details().function == "tankwright::water::salinity_from_hydrometer");
  }
}

TEST_CASE("ends: what a conductivity past the scale means is said in four digits where two would say nothing") {
  const auto past = [](double s) {
    const auto c = conductivity_from_salinity(practical_salinity{s}, warm, extrapolate);
    return message_of([&] { return salinity_from_conductivity(c, warm); });
  };
  CHECK(past(42.00305).find("practical salinity 42.0031,") != std::string::npos);
  CHECK(past(42.0301).find("practical salinity 42.03,") != std::string::npos);
  CHECK(past(43.256).find("practical salinity 43.26,") != std::string::npos);
}

TEST_CASE("ends: a meter that compensates") {
  const auto raw = [](double reference, double percent) {
    return raw_conductivity({.shown = millisiemens_per_centimetre(50.0),
                             .water = celsius(20.0),
                             .coefficient = percent_per_kelvin(percent),
                             .reference = celsius(reference)});
  };
  CHECK_NOTHROW((void)raw(0.0, 2.0));
  CHECK_NOTHROW((void)raw(0.0005, 2.0));
  CHECK_NOTHROW((void)raw(25.0, 2.0));
  CHECK_THROWS_AS((void)raw(-0.0005, 2.0), invalid_input);
  CHECK_THROWS_AS((void)raw(25.01, 2.0), invalid_input);
  CHECK_NOTHROW((void)raw(25.0, 0.0));
  CHECK_NOTHROW((void)raw(25.0, 0.1000001));
  CHECK_THROWS_AS((void)raw(25.0, 0.0999), invalid_input);
  CHECK_THROWS_AS((void)raw(25.0, 0.0005), invalid_input);
  CHECK_THROWS_AS((void)raw(25.0, -0.0005), invalid_input);
}

TEST_CASE("ends: drift between nothing and dry") {
  const auto gone = [](double first, double second) {
    return evaporation_from_readings({.volume = litres(100.0),
                                      .first = practical_salinity{first},
                                      .second = practical_salinity{second},
                                      .temperature = warm});
  };
  CHECK(gone(35.0, 35.0).mass.value() == 0.0);
  CHECK(gone(0.0005, 0.0005).mass.value() == 0.0);
  CHECK_THROWS_AS((void)gone(0.0, 0.0), invalid_input);
  CHECK_THROWS_AS((void)gone(35.0, 34.9995), invalid_input);
  // A litre that loses a litre of fresh water a day: its mass over that of the loss says when it is dry.
  const drifting_system drying{.volume = litres(1.0),
                               .salinity = practical_salinity{35.0},
                               .temperature = warm,
                               .evaporation = litres_per_day(1.0),
                               .top_off = litres_per_day(0.0)};
  const double dry = (density(practical_salinity{35.0}, warm) / density(practical_salinity{0.0}, warm)).value();
  check_refusals({TW_REFUSED("water::drift", "time", drift(drying, days(dry * 1.0005))),
                  TW_REFUSED("water::drift", "practical salinity reached", drift(drying, days(dry * 0.9995)))});
  // dS/dt = S m_e / M: the first moments are a straight line.
  const auto time = [&](double part) {
    return time_to_salinity(drying, practical_salinity{35.0 * (1.0 + part)}).value();
  };
  CHECK(compare(time(5e-9), 5e-9 * dry * 86400.0, relative(1e-6)).good);
  CHECK(time(0.0) == 0.0);
  check_refusals({TW_REFUSED("water::time_to_salinity", "practical salinity to be reached", time(-5e-9))});
}

TEST_CASE("ends: a refractometer at nothing and at the end of the scale") {
  const refractometer glass{.scale = refractometer_scale::seawater, .compensation = temperature_compensation::none};
  const auto read_back = [&](double s) {
    const double shown = refractometer_reading(practical_salinity{s}, celsius(20.0), glass, extrapolate);
    return salinity_from_refractometer({.reading = shown, .prism = celsius(20.0), .instrument = glass});
  };
  CHECK(compare(read_back(0.0005).central.value(), 0.0005, relative(1e-6)).good);
  CHECK(read_back(0.0005).low.value() == 0.0);
  CHECK(read_back(0.0).low.value() == 0.0);
  CHECK(compare(read_back(41.99).central.value(), 41.99, relative(1e-9)).good);
  check_refusals({TW_REFUSED("water::salinity_from_refractometer", "reading", read_back(42.02))});
}

TEST_CASE("ends: the yield of a mix") {
  const auto poor = [](double yield) {
    return salt_for_new_water(
        {.volume = litres(1.0), .target = practical_salinity{35.0}, .temperature = warm, .mix_yield = fraction(yield)});
  };
  // 35.16504 g of salt in a kilogram: a mix with less salt in it never gets there.
  CHECK_NOTHROW((void)poor(0.03518));
  CHECK_THROWS_AS((void)poor(0.03516), invalid_input);
  CHECK_THROWS_AS((void)poor(detail::u_ps<double> * 35.0 * 1e-3), invalid_input);
  const auto trial = [](double part_of_salt, double error = 1.0) {
    // 1 kg of mix in 10 kg of water.
    return measured_yield({.mix = kilograms(1.0),
                           .fresh_water = kilograms(10.0),
                           .reached = practical_salinity{part_of_salt / 11.0 * 1e3 * 35.0 / 35.16504},
                           .reading_error = practical_salinity{error}},
                          extrapolate);
  };
  CHECK(compare(trial(0.0005).central.value(), 0.0005, relative(1e-9)).good);
  CHECK(trial(0.0005).low.value() == 0.0);
  CHECK(trial(1.0 + 0.5e-9).central.value() == 1.0);
  CHECK_THROWS_AS((void)trial(1.0 + 2e-9), invalid_input);
  CHECK_THROWS_AS((void)trial(1.0005), invalid_input);
  CHECK_THROWS_AS((void)trial(0.0), invalid_input);
  CHECK(compare(trial(0.5, 0.1).low.value(), 0.5 - 0.1 * 35.16504 / 35.0 * 11e-3, relative(1e-9)).good);
  CHECK(compare(trial(0.5, 0.1).high.value(), 0.5 + 0.1 * 35.16504 / 35.0 * 11e-3, relative(1e-9)).good);
}

TEST_CASE("ends: many below freezing, wherever the fresh one stands") {
  const gravity_scale cold{celsius(-1.0), celsius(4.0)};
  for (std::size_t fresh = 0; fresh < 4; ++fresh) {
    std::vector<practical_salinity> s(3, practical_salinity{35.0});
    if (fresh < 3) s[fresh] = practical_salinity{5.0};
    std::vector<specific_gravity> sg(3, specific_gravity{1.0, cold});
    if (fresh < 3) {
      CHECK_THROWS_AS(specific_gravity_from_salinity(s, cold, sg), out_of_range);
    } else {
      CHECK_NOTHROW(specific_gravity_from_salinity(s, cold, sg));
    }
    std::vector<temperature> t(3, celsius(-1.0));
    std::vector<mass_density> rho(3);
    if (fresh < 3) {
      CHECK_THROWS_AS(density(s, t, rho), out_of_range);
    } else {
      CHECK_NOTHROW(density(s, t, rho));
    }
  }
  // Fresh water a hair below 0 degC is ice: for one, and for many.
  const gravity_scale hair{celsius(-0.0005), celsius(4.0)};
  std::vector<specific_gravity> one(1, specific_gravity{1.0, hair});
  CHECK_THROWS_AS(
      specific_gravity_from_salinity(std::vector<practical_salinity>(1, practical_salinity{0.0}), hair, one),
      out_of_range);
  CHECK_THROWS_AS((void)density(practical_salinity{0.0}, celsius(-0.0005)), out_of_range);
}

TEST_CASE("ends: a scale that is further out than what lies on it") {
  const auto light = density_by_weighing({.volume = litres(1.0), .shown = grams(0.5)});
  TW_CHECK(weighed, light.low, kilograms_per_cubic_metre(1.20), relative(1e-12));  // nothing but air
  TW_CHECK(weighed, light.high, kilograms_per_cubic_metre(0.0015 / 0.000999 * (1.0 - 1.2 / 8000.0) + 1.2),
           relative(1e-12));
}

TEST_CASE("ends: portions of a millilitre blend like portions of a litre") {
  const evidence mixes{"tankwright::water::blend", kind::identity, "two equal masses have the mean salinity"};
  const std::vector<weighed_portion> drops{{.mass = grams(1.0), .salinity = practical_salinity{10.0}},
                                           {.mass = grams(1.0), .salinity = practical_salinity{30.0}}};
  TW_CHECK(mixes, blend(drops), practical_salinity{20.0}, relative(1e-14));
  const std::vector<portion> millilitres_of{
      {.volume = millilitres(1.0), .salinity = practical_salinity{35.0}, .temperature = celsius(20.0)}};
  const auto one = blend(millilitres_of);
  TW_CHECK(mixes, one.salinity, practical_salinity{35.0}, relative(1e-14));
  TW_CHECK(mixes, one.volume, millilitres(1.0), relative(1e-12));
  CHECK_THROWS_AS((void)blend(std::vector<weighed_portion>{{.mass = grams(0.0), .salinity = practical_salinity{10.0}}}),
                  invalid_input);
}

TEST_CASE("ends: falls of alkalinity, and levels that never settle") {
  CHECK_NOTHROW((void)calcium_with_alkalinity(1e6));
  CHECK_NOTHROW((void)calcium_with_alkalinity(-1e6));
  CHECK_THROWS_AS((void)calcium_with_alkalinity(1.0005e6), invalid_input);
  CHECK_THROWS_AS((void)calcium_with_alkalinity(-1.0005e6), invalid_input);
  const evidence falls{"tankwright::water::lowest_level", kind::identity, "step by step"};
  // 1 a day for two days, a thousandth changed each day: before the second change 1 + 0.999 is missing, before the third
  // day's end 0.999 of that.
  TW_CHECK(falls,
           lowest_level(
               {.start = 10.0, .falls_a_day = 1.0, .time = days(2.0), .changed = fraction(0.001), .every = days(1.0)}),
           10.0 - 1.999, relative(1e-12));
  TW_CHECK(falls,
           lowest_level(
               {.start = 10.0, .falls_a_day = 1.0, .time = days(1.5), .changed = fraction(0.5), .every = days(1.0)}),
           10.0 - 1.0, relative(1e-12));
  TW_CHECK(falls,
           lowest_level(
               {.start = 10.0, .falls_a_day = 1.0, .time = days(1.5), .changed = fraction(0.0), .every = days(1.0)}),
           10.0 - 1.5, relative(1e-12));
  const temperature boiling = celsius(90.0);  // 70 kPa of vapour
  check_refusals({
      TW_REFUSED("water::settled_concentration", "flow cleared by treatment",
                 settled_concentration({.volume = litres(100.0), .start = milligrams_per_litre(1.0)})),
      TW_REFUSED("water::settled_saw_tooth", "part changed",
                 settled_saw_tooth({.volume = litres(100.0), .every = days(7.0), .part = fraction(0.0)})),
      TW_REFUSED("water::oxygen_saturation_concentration", "air pressure",
                 oxygen_saturation_concentration(practical_salinity{0.0}, boiling, absolute_pressure{kilopascals(60.0)},
                                                 extrapolate)),
  });
}

TEST_CASE("ends: cold fresh water and hot brine share their heat") {
  const evidence heat{"tankwright::water::blend", kind::identity,
                      "what one gives the other takes: cp over temperature by Simpson"};
  const practical_salinity fresh{0.0}, salt{40.0};
  const std::vector<portion> waters{{.volume = litres(1.0), .salinity = fresh, .temperature = celsius(2.0)},
                                    {.volume = litres(1.0), .salinity = salt, .temperature = celsius(62.0)}};
  const double t = in_celsius(blend(waters).temperature);
  const auto gained = [](practical_salinity s, double from, double to) {
    double sum = 0.0;
    const int steps = 20;
    const double h = (to - from) / steps;
    for (int i = 0; i <= steps; ++i) {
      const double weight = i == 0 || i == steps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
      sum += weight * specific_heat(s, celsius(from + h * i)).value();
    }
    return sum * h / 3.0;
  };
  const double cold_mass = density(fresh, celsius(2.0)).value(), hot_mass = density(salt, celsius(62.0)).value();
  const double left_over = cold_mass * gained(fresh, 2.0, t) + hot_mass * gained(salt, 62.0, t);
  TW_CHECK(heat, celsius_steps(left_over / (4000.0 * (cold_mass + hot_mass))), celsius_steps(0.0),
           within(celsius_steps(0.02)));
}

TEST_CASE("ends: what is there after fresh water came in") {
  const evidence mass_balance{"tankwright::water::lower_salinity", kind::identity, "masses add up"};
  const practical_salinity from{36.0}, to{30.0};
  const auto in = lower_salinity({.volume = litres(100.0), .from = from, .target = to, .temperature = warm});
  const double before = density(from, warm).value() * 0.1;
  TW_CHECK(mass_balance, in.fresh_water_mass, kilograms(before * (36.0 / 30.0 - 1.0)), relative(1e-12));
  TW_CHECK(mass_balance, in.finished, cubic_metres(before * 36.0 / 30.0 / density(to, warm).value()), relative(1e-12));
}

TEST_CASE("ends: exchange at the ends of its ranges") {
  const auto leave = [](double flow, double left) {
    return time_to_leave({.volume = litres(100.0), .flow = litres_per_hour(flow), .left = fraction(left)});
  };
  CHECK_NOTHROW((void)leave(1.0002e-8, 0.5));
  CHECK_NOTHROW((void)leave(0.9998e12, 0.5));
  CHECK_NOTHROW((void)leave(1.0, 1.0));
  check_refusals({
      TW_REFUSED("water::time_to_leave", "flow", leave(0.9e-8, 0.5)),
      TW_REFUSED("water::time_to_leave", "flow", leave(1.0005e12, 0.5)),
      TW_REFUSED("water::time_to_leave", "part to be left", leave(1.0, 0.0)),
      TW_REFUSED("water::time_to_leave", "part to be left", leave(1.0, 1.0005)),
      TW_REFUSED("water::left_after_changes", "part changed", left_after_changes({.part = fraction(0.0), .times = 2})),
      TW_REFUSED("water::settled_saw_tooth", "part changed",
                 settled_saw_tooth({.volume = litres(100.0), .every = days(7.0), .part = fraction(1.5)})),
      TW_REFUSED("water::conductivity_from_salinity", "temperature",
                 conductivity_from_salinity(practical_salinity{35.0}, celsius(-1.99))),
      TW_REFUSED("water::raw_conductivity", "conductivity",
                 raw_conductivity(conductivity_at_25{millisiemens_per_centimetre(-1.0)}, warm)),
      TW_REFUSED(
          "water::raw_conductivity", "conductivity",
          raw_conductivity(
              {.shown = millisiemens_per_centimetre(-1.0), .water = warm, .coefficient = percent_per_kelvin(2.0)})),
  });
}

TEST_CASE("ends: the freezing point to a hundred-millionth of a degree") {
  const practical_salinity sea{35.0};
  const double freezing = in_celsius(freezing_point(sea));
  CHECK_NOTHROW((void)density(sea, celsius(freezing)));
  CHECK_THROWS_AS((void)density(sea, celsius(freezing - 1e-8)), out_of_range);
  // 35.16504 g/kg is practical salinity 35.
  const auto absolute = absolute_salinity::from_grams_per_kilogram(35.16504);
  CHECK_NOTHROW((void)density(absolute, celsius(freezing + 1e-4)));
  CHECK_THROWS_AS((void)density(absolute, celsius(freezing - 1e-4)), out_of_range);
  std::vector<mass_density> rho(1);
  CHECK_THROWS_AS(density(std::vector<practical_salinity>(1, sea), std::vector<temperature>(1, celsius(90.0)), rho),
                  out_of_range);
  CHECK_NOTHROW((void)blend(std::vector<weighed_portion>{{.mass = grams(0.5), .salinity = sea}}));
}

TEST_CASE("ends: optics of a refractometer are those of sodium light") {
  const evidence optics{"tankwright::water::refractometer_reading", kind::identity,
                        "indices at 589.26 nm over 1.755e-4"};
  const auto index = [](double s, double t) {
    return refractive_index_millard_seaver(
               {.salinity = practical_salinity{s}, .temperature = celsius(t), .wavelength = nanometres(589.26)})
        .value();
  };
  const refractometer salt{.scale = refractometer_scale::sodium_chloride,
                           .compensation = temperature_compensation::none};
  TW_CHECK(optics, refractometer_reading(practical_salinity{35.0}, celsius(25.0), salt),
           (index(35.0, 25.0) - index(0.0, 20.0)) / 1.755e-4, relative(1e-9));
  CHECK_THROWS_AS((void)salinity_from_refractive_index({.index = refractive_index{index(0.0, 20.0) - 1e-7},
                                                        .temperature = celsius(20.0),
                                                        .wavelength = nanometres(589.26)}),
                  out_of_range);
  refractometer fine{.scale = refractometer_scale::seawater, .compensation = temperature_compensation::none};
  fine.division = 0.4;
  const auto seen = [&](double reading, double t = 20.0) {
    return salinity_from_refractometer({.reading = reading, .prism = celsius(t), .instrument = fine});
  };
  TW_CHECK(optics, seen(30.0).high, seen(30.2).central, relative(1e-9));
  TW_CHECK(optics, seen(30.0).low, seen(29.8).central, relative(1e-9));
  const double per_reading = seen(1.0).central.value(), half = seen(30.0).high.value() - seen(30.0).central.value();
  CHECK(compare(seen((half + 0.0005) / per_reading).low.value(), 0.0005, relative(1e-5)).good);
  CHECK(seen((half - 0.0005) / per_reading).low.value() == 0.0);
  CHECK(seen(0.0, 19.9).central.value() == 0.0);  // a little below fresh water, within half a division
  CHECK_THROWS_AS((void)seen(0.0, 15.0), out_of_range);
  const drifting_system drying{.volume = litres(1.0),
                               .salinity = practical_salinity{35.0},
                               .temperature = warm,
                               .evaporation = litres_per_day(1.0),
                               .top_off = litres_per_day(0.0)};
  check_refusals({TW_REFUSED("water::time_to_salinity", "practical salinity to be reached",
                             time_to_salinity(drying, practical_salinity{43.0}))});
}

TEST_CASE("ends: half a division below fresh water, to a thousandth") {
  refractometer fine{.scale = refractometer_scale::seawater, .compensation = temperature_compensation::none};
  fine.division = 0.4;
  const auto seen = [&](double reading, double t) {
    return salinity_from_refractometer({.reading = reading, .prism = celsius(t), .instrument = fine}).central.value();
  };
  // Where the prism is colder the same reading means fresher water: the temperature at which 0.2 means 0.0005.
  double cold = 19.0, mild = 20.0;
  for (int i = 0; i < 60; ++i) {
    const double t = 0.5 * (cold + mild);
    (seen(0.2, t) > 0.0005 ? mild : cold) = t;
  }
  const double slope = (seen(0.2, mild + 0.01) - seen(0.2, mild)) / 0.01;
  CHECK(seen(0.0, mild) == 0.0);
  CHECK_THROWS_AS((void)seen(0.0, mild - 0.001 / slope), out_of_range);
  const double hair = 20.0 - 0.0005 / slope;  // 0 means -0.0005
  CHECK(seen(0.0, hair) == 0.0);
  fine.division = 1e-6;
  CHECK_THROWS_AS((void)seen(0.0, hair), out_of_range);
}

TEST_CASE("ends: what is said of a level that never settles") {
  try {
    (void)settled_concentration({.volume = litres(100.0), .start = milligrams_per_litre(1.0)});
    CHECK(false);
  } catch (const error& e) {
    CHECK(e.details().value == 0.0);
  }
  // It rises towards 1.2 and starts from 1: it is never at 0.5 again.
  CHECK_FALSE(std::isfinite(kernel::well_mixed<double>{1.2, 1.0}.time_between(1.0, 0.5)));
  CHECK_FALSE(std::isfinite(kernel::well_mixed<double>{0.5, 1.0}.time_between(1.0, 1.5)));
  // Half of the way to where it settles: ln 2 over k.
  CHECK(compare(kernel::well_mixed<double>{1.2, 1.0}.time_between(1.0, 1.1), std::log(2.0), relative(1e-12)).good);
  CHECK(compare(kernel::well_mixed<double>{0.5, 1.0}.time_between(1.0, 0.75), std::log(2.0), relative(1e-12)).good);
}
