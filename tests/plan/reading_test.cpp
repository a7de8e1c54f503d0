// SPDX-License-Identifier: BSL-1.0
// What instruments read: the keys, the values behind them, and what the engines are given.
#include <tankwright/plan/inputs/reading_inputs.hpp>

#include <tankwright/plan/keys.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/text/quantity.hpp>

#include "plan/mistakes.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence to_inputs{"tankwright::plan::inputs_of", kind::wiring, "the keys as they were given"};
const evidence of_reading{"tankwright::plan::salinity_of", kind::identity, "definition of the reading"};
const evidence of_ammonia{"tankwright::plan::total_ammonia_of", kind::identity,
                          "IUPAC atomic weights: N 14.0067, H 1.00794"};
const evidence of_ph{"tankwright::plan::ph_of", kind::wiring, "the key as it was given"};

plan::build with(key_texts keys) {
  plan::build build;
  plan::set(build, "water.temperature", "24 °C");
  give(build, keys);
  return build;
}

}  // namespace

TEST_CASE("reading: the scale of a hydrometer is two temperatures, there and back") {
  plan::gravity_scale_text scale;
  CHECK_FALSE(scale.given());
  CHECK_THROWS_AS((void)scale.get(), invalid_input);
  scale.read("60F/60F");
  CHECK(scale.write() == "60F/60F");
  TW_CHECK(to_inputs, in_celsius(scale.get().sample), (60.0 - 32.0) / 1.8, within(1e-12));
  plan::gravity_scale_text other;
  other.read("15 °C/4 °C");
  CHECK_FALSE(other == scale);
  const plan::gravity_scale_text made{water::scale_15_4};
  CHECK(made == other);
  plan::gravity_scale_text again;
  again.read(made.write());
  CHECK(again == made);
  for (const char* wrong : {"", "60F", "60F/", "/60F", "60F/60L", "60/60", "200C/4C", "-5C/4C", "60F/60F/60F"}) {
    INFO(wrong);
    CHECK_THROWS_AS(other.read(wrong), text_error);
  }
  CHECK(made == other);  // a text that cannot be read leaves it as it was
  scale.clear();
  CHECK_FALSE(scale.given());
  CHECK(scale.write().empty());
}

TEST_CASE("reading: the scale of an instrument is that of a hydrometer or of a refractometer") {
  plan::instrument_scale scale;
  scale.read("sodium chloride");
  CHECK(scale.of_refractometer() == water::refractometer_scale::sodium_chloride);
  CHECK_FALSE(scale.of_hydrometer());
  CHECK(scale.write() == "sodium chloride");
  scale.read("25C/25C");
  CHECK_FALSE(scale.of_refractometer());
  CHECK(scale.of_hydrometer());
  CHECK_THROWS_AS(scale.read("brine"), text_error);
  CHECK(scale.write() == "25C/25C");
}

TEST_CASE("reading: each of the five ways reaches the engines as it was given") {
  const auto input_of = [](key_texts keys) { return plan::inputs_of(*with(keys).water->now); };
  TW_CHECK(to_inputs, std::get<practical_salinity>(input_of({{"water.now.practical_salinity", "34.5"}})).value(), 34.5,
           relative(1e-15));
  const auto hydrometer = std::get<water::hydrometer_observation>(input_of({{"water.now.hydrometer", "1.0245"},
                                                                            {"water.now.temperature", "26 °C"},
                                                                            {"water.now.scale", "60F/60F"},
                                                                            {"water.now.body", "plastic"},
                                                                            {"water.now.division", "0.0005"}}));
  TW_CHECK(to_inputs, hydrometer.reading.get(), 1.0245, relative(1e-15));
  TW_CHECK(to_inputs, in_celsius(hydrometer.water), 26.0, within(1e-12));
  CHECK(hydrometer.instrument.body.name == water::hydrometer_plastic.name);
  CHECK(hydrometer.instrument.division == 0.0005);
  const auto refractometer = std::get<water::refractometer_observation>(input_of({{"water.now.refractometer", "35"},
                                                                                  {"water.now.temperature", "20 °C"},
                                                                                  {"water.now.scale", "seawater"},
                                                                                  {"water.now.compensation", "none"}}));
  CHECK(refractometer.instrument.scale.get() == water::refractometer_scale::seawater);
  CHECK(refractometer.instrument.compensation.get() == water::temperature_compensation::none);
  CHECK(refractometer.instrument.division == 1.0);
  const auto probe = std::get<plan::probe_observation>(
      input_of({{"water.now.conductivity", "53 mS/cm"}, {"water.now.temperature", "25 °C"}}));
  TW_CHECK(to_inputs, in_millisiemens_per_centimetre(probe.shown), 53.0, relative(1e-14));
  const auto meter = std::get<water::compensated_reading>(input_of({{"water.now.compensated_conductivity", "53 mS/cm"},
                                                                    {"water.now.temperature", "20 °C"},
                                                                    {"water.now.coefficient", "2 %/K"}}));
  TW_CHECK(to_inputs, in_percent_per_kelvin(meter.coefficient), 2.0, relative(1e-14));
}

TEST_CASE("reading: a salinity is known, or read through its instrument with its band") {
  const auto known = plan::salinity_of(practical_salinity{35.0});
  TW_CHECK(of_reading, known.low.value(), 35.0, relative(1e-15));
  TW_CHECK(of_reading, known.high.value(), 35.0, relative(1e-15));
  // PSS-78 by definition: 42.914 mS/cm at 15 degC (IPTS-68) is practical salinity 35.
  const auto probe = plan::salinity_of(
      plan::probe_observation{.shown = millisiemens_per_centimetre(42.914), .water = celsius(15.0 / 1.00024)});
  TW_CHECK(
      (evidence{"tankwright::plan::salinity_of", kind::published, "PSS-78, UNESCO 1981: C(35,15,0) = 42.914 mS/cm"}),
      probe.central.value(), 35.0, within(1e-4));
  TW_CHECK(of_reading, probe.high.value() - probe.central.value(), plan::probe_uncertainty, within(1e-12));
  CHECK_THROWS_AS((void)plan::salinity_of(practical_salinity{50.0}), out_of_range);
  CHECK_THROWS_AS((void)plan::salinity_of(practical_salinity{-1.0}), invalid_input);
}

TEST_CASE("reading: ammonia by the way the kit counts it, pH by its scale") {
  const auto nitrogen_of = [](key_texts keys) {
    return in_milligrams_per_litre(plan::total_ammonia_of(with(keys).water->ammonia)->as_nitrogen());
  };
  TW_CHECK(of_ammonia, nitrogen_of({{"water.ammonia_nitrogen", "0.05 mg/L"}}), 0.05, relative(1e-12));
  TW_CHECK(of_ammonia, nitrogen_of({{"water.ammonia", "0.05 mg/L"}}), 0.05 * 14.0067 / (14.0067 + 3 * 1.00794),
           relative(1e-5));
  TW_CHECK(of_ammonia, nitrogen_of({{"water.ammonium", "0.05 mg/L"}}), 0.05 * 14.0067 / (14.0067 + 4 * 1.00794),
           relative(2e-5));
  CHECK_FALSE(plan::total_ammonia_of({}));
  CHECK_FALSE(plan::ph_of({}));
  const std::pair<const char*, water::ph_reading::scale> scales[] = {{"nbs", water::ph_reading::scale::nbs},
                                                                     {"total", water::ph_reading::scale::total},
                                                                     {"free", water::ph_reading::scale::free}};
  for (const auto& [word, scale] : scales) {
    const auto ph = plan::ph_of(with({{"water.ph", "8.1"}, {"water.ph_scale", word}}).water->ph);
    REQUIRE(ph);
    TW_CHECK(of_ph, ph->value(), 8.1, relative(1e-15));
    CHECK(ph->on() == scale);
  }
  plan::ph_with_scale without;
  without.ph = 8.1;
  CHECK_THROWS_AS((void)plan::ph_of(without), invalid_input);
}
