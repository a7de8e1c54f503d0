// SPDX-License-Identifier: BSL-1.0
// The salting day: what is asked, against the formulas by hand and against sources outside the library.
#include <tankwright/decisions/salting/ammonia.hpp>
#include <tankwright/decisions/salting/mix.hpp>
#include <tankwright/decisions/salting/oxygen.hpp>
#include <tankwright/decisions/salting/readings.hpp>
#include <tankwright/decisions/salting/target.hpp>

#include <tankwright/water/oxygen.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace td = tankwright::decisions;

namespace {

const evidence of_target{"tankwright::decisions::answer_salt_target", kind::wiring, "the same calls by hand"};
const evidence of_mix{"tankwright::decisions::answer_salt_mix", kind::wiring, "the same calls by hand"};
const evidence salt_balance{"tankwright::decisions::answer_salt_mix", kind::identity,
                            "conservation of salt: S_A rho V / yield, S_A = 35.16504/35 S (Millero et al. 2008)"};
const evidence of_readings{"tankwright::decisions::answer_instrument_readings", kind::wiring, "the same calls by hand"};
const evidence of_oxygen{"tankwright::decisions::answer_saturation_oxygen", kind::wiring, "the same calls by hand"};
const evidence of_ammonia{"tankwright::decisions::answer_ammonia_free_part", kind::wiring, "the same calls by hand"};
const evidence of_basis{"tankwright::decisions::basis_of", kind::wiring, "the keys as they were given"};
const evidence of_volume{"tankwright::decisions::water_to_make", kind::wiring, "the keys as they were given"};
const evidence of_display{"tankwright::decisions::add_display_from", kind::identity,
                          "what is made less what the sump holds"};

/// New water that is to match an older tank.
plan::build to_match() {
  plan::build build;
  give(build, {{"water.temperature", "24 °C"},
               {"water.new_water", "2150 L +/- 2 %"},
               {"water.mix_yield", "87 %"},
               {"water.older_tank.hydrometer", "1.0245"},
               {"water.older_tank.temperature", "26 °C"},
               {"water.older_tank.scale", "60F/60F"},
               {"water.older_tank.division", "0.0005"},
               {"water.hydrometer.scale", "60F/60F"}});
  return build;
}

estimate<practical_salinity> older() {
  return water::salinity_from_hydrometer(
      {.reading = 1.0245, .water = celsius(26.0), .instrument = {.scale = water::scale_60f_60f, .division = 0.0005}});
}

}  // namespace

TEST_CASE("salt.target: the older tank's salinity with its band, or what is chosen, or natural seawater") {
  const auto f = answered(td::salt_target, to_match());
  TW_CHECK(of_target, band(f, "salinity").central, older().central.value(), relative(1e-14));
  TW_CHECK(of_target, band(f, "salinity").low, older().low.value(), relative(1e-14));
  TW_CHECK(of_target, band(f, "density").central, water::density(older().central, celsius(24.0)).value(),
           relative(1e-14));
  CHECK(f.verdict == td::verdict::for_information);
  plan::build bare;
  plan::set(bare, "water.temperature", "24 °C");
  const auto natural = answered(td::salt_target, bare);
  CHECK(band(natural, "salinity").central == 35.0);
  CHECK_FALSE(natural.note.empty());
  CHECK_FALSE(natural.measure_next.empty());
  CHECK(band(answered(td::salt_target, changed(bare, {{"water.target", "33"}})), "salinity").central == 33.0);
}

TEST_CASE("salt.mix: each at its worst, and the balance of salt") {
  const auto f = answered(td::salt_mix, to_match());
  const auto mix = [&](double litre, practical_salinity s, double yield) {
    return in_kilograms(
        water::salt_for_finished_volume(
            {.volume = litres(litre), .target = s, .temperature = celsius(24.0), .mix_yield = percent(yield)})
            .mix);
  };
  TW_CHECK(of_mix, band(f, "mix").central, mix(2150.0, older().central, 87.0), relative(1e-13));
  TW_CHECK(of_mix, band(f, "mix").low, mix(0.98 * 2150.0, older().low, 87.0), relative(1e-13));
  TW_CHECK(of_mix, band(f, "mix").high, mix(1.02 * 2150.0, older().high, 87.0), relative(1e-13));
  const double salt = 35.16504e-3 / 35.0 * older().central.value();
  TW_CHECK(salt_balance, band(f, "mix").central,
           salt * water::density(older().central, celsius(24.0)).value() * 2.150 / 0.87, relative(1e-12));
  TW_CHECK(of_volume, band(f, "makes").high, 1.02 * 2.150, relative(1e-14));
  // A yield that nobody measured has the band of dry mixes; a trial batch tells it.
  plan::build unknown = to_match();
  plan::clear(unknown, "water.mix_yield");
  const auto wide = answered(td::salt_mix, unknown);
  CHECK_FALSE(wide.measure_next.empty());
  CHECK(band(wide, "yield").high == 1.0);
  give(unknown, {{"water.trial_batch.mix", "420 g"},
                 {"water.trial_batch.fresh_water", "10 kg"},
                 {"water.trial_batch.reached", "34.8"}});
  TW_CHECK((evidence{"tankwright::decisions::answer_salt_mix", kind::identity, "y = S_A (M_w + m) / m"}),
           band(answered(td::salt_mix, unknown), "yield").central, 34.8 * 35.16504e-3 / 35.0 * (10.0 + 0.42) / 0.42,
           relative(1e-12));
}

TEST_CASE("salt.mix: without a volume it says so, with a vessel it takes its water") {
  plan::build bare;
  plan::set(bare, "water.temperature", "24 °C");
  const auto f = answered(td::salt_mix, bare);
  CHECK(f.verdict == td::verdict::not_enough_known);
  CHECK(f.numbers.empty());
}

TEST_CASE("salt.readings: what each instrument shows, and a probe where there is none") {
  const auto f =
      answered(td::instrument_readings, changed(to_match(), {{"water.refractometer.scale", "sodium chloride"},
                                                             {"water.refractometer.compensation", "none"},
                                                             {"water.probe", "true"}}));
  const practical_salinity s = older().central;
  TW_CHECK(of_readings, band(f, "hydrometer").central,
           water::hydrometer_reading(s, celsius(24.0), {.scale = water::scale_60f_60f}), relative(1e-14));
  TW_CHECK(of_readings, band(f, "refractometer").central,
           water::refractometer_reading(s, celsius(24.0),
                                        {.scale = water::refractometer_scale::sodium_chloride,
                                         .compensation = water::temperature_compensation::none}),
           relative(1e-14));
  TW_CHECK(of_readings, band(f, "conductivity").central, water::conductivity_from_salinity(s, celsius(24.0)).value(),
           relative(1e-14));
  plan::build without = to_match();
  plan::clear(without, "water.hydrometer");
  CHECK(answered(td::instrument_readings, without).find("conductivity"));
  CHECK_FALSE(answered(td::instrument_readings, to_match()).find("conductivity"));
}

TEST_CASE("salting: against what is printed elsewhere") {
  // UNESCO 44: 1023.34306 kg/m3 at S 35 and 25 degC, 997.04796 in pure water; together 1.026373 on the scale 25C/25C.
  const plan::build at_25 = changed(to_match(), {{"water.older_tank.hydrometer", "1.026373"},
                                                 {"water.older_tank.temperature", "25 °C"},
                                                 {"water.older_tank.scale", "25C/25C"}});
  TW_CHECK((evidence{"tankwright::decisions::answer_salt_target", kind::published, "EOS-80, UNESCO 44 (1983)"}),
           band(answered(td::salt_target, at_25), "salinity").central, 35.0, within(0.02));
  // Seawater of S 35 at 15 degC of IPTS-68, 14.9964 of today's scale: 42.914 mS/cm.
  const plan::build standard =
      changed({}, {{"water.target", "35"}, {"water.temperature", "14.9964 °C"}, {"water.probe", "true"}});
  TW_CHECK((evidence{"tankwright::decisions::answer_instrument_readings", kind::published, "Culkin and Smith 1980"}),
           band(answered(td::instrument_readings, standard), "conductivity").central, 4.2914, within(1e-4));
  // The check value of Garcia and Gordon 1992: 274.610 umol/kg at S 35 and 10 degC; 1026.952 kg/m3 (UNESCO 44).
  const plan::build cold = changed({}, {{"water.target", "35"}, {"water.temperature", "10 °C"}});
  TW_CHECK((evidence{"tankwright::decisions::answer_saturation_oxygen", kind::published, "Garcia and Gordon 1992"}),
           band(answered(td::saturation_oxygen, cold), "saturation").central, 274.610e-6 * 31.9988e-3 * 1026.952,
           relative(5e-4));
  // Law of mass action: a pH one higher makes the ratio of free to bound ammonia ten times as large.
  const auto ratio = [](const char* ph) {
    const auto f = answered(
        td::ammonia_free_part,
        changed(to_match(), {{"water.ammonia_nitrogen", "0.05 mg/L"}, {"water.ph", ph}, {"water.ph_scale", "total"}}));
    const double part = band(f, "part").central;
    return part / (1.0 - part);
  };
  TW_CHECK((evidence{"tankwright::decisions::answer_ammonia_free_part", kind::identity, "law of mass action"}),
           ratio("8.5") / ratio("7.5"), 10.0, relative(1e-9));
}

TEST_CASE("water.oxygen and water.ammonia: in water of the target") {
  const auto oxygen = answered(td::saturation_oxygen, changed(to_match(), {{"water.air_pressure", "1008 hPa"}}));
  TW_CHECK(of_oxygen, band(oxygen, "saturation").central,
           water::oxygen_saturation_concentration(older().central, celsius(24.0), absolute_pressure(pascals(100800.0)))
               .value(),
           relative(1e-14));
  CHECK(asked(td::ammonia_free_part, to_match()).empty());
  const auto f = answered(
      td::ammonia_free_part,
      changed(to_match(), {{"water.ammonia_nitrogen", "0.05 mg/L"}, {"water.ph", "8.1"}, {"water.ph_scale", "nbs"}}));
  const auto by_hand = water::free_ammonia_in({.total = water::total_ammonia::from_nitrogen(milligrams_per_litre(0.05)),
                                               .ph = water::ph_nbs{8.1},
                                               .salinity = older().central,
                                               .temperature = celsius(24.0)});
  TW_CHECK(of_ammonia, band(f, "part").high, by_hand.fraction.high.value(), relative(1e-13));
  TW_CHECK(of_ammonia, band(f, "free").central, by_hand.concentration.central.as_ammonia().value(), relative(1e-13));
}

TEST_CASE("salting: one value outside a formula's range silences what needs it, and no more") {
  // A refractometer with compensation is not good at 45 degC: the target cannot be told, the rest of the plan can.
  plan::build build = to_match();
  plan::clear(build, "water.older_tank");
  give(build, {{"water.older_tank.refractometer", "35"},
               {"water.older_tank.temperature", "45 °C"},
               {"water.older_tank.scale", "seawater"},
               {"water.older_tank.compensation", "automatic"}});
  const auto f = answered(td::salt_target, build);
  CHECK(f.verdict == td::verdict::not_enough_known);
  CHECK(f.note.find("temperature of the prism") != std::string::npos);
  const td::situation s{build};
  TW_CHECK(of_basis, s.basis().salinity.value(), 35.0, relative(1e-15));
  TW_CHECK(of_basis, in_celsius(s.basis().temperature), 24.0, within(1e-12));
  TW_CHECK(of_display, s.state().display_water->central.value(), 2.150, relative(1e-14));
}
