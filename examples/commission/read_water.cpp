// SPDX-License-Identifier: BSL-1.0
#include "plan_file.hpp"

namespace plan_file {

using namespace tankwright;
using commissioning::salinity_reading;
using commissioning::water_plan;

namespace {

/// "60F/60F": the sample's temperature and that of the water it is compared with.
water::gravity_scale gravity_scale_from(section& in, std::string_view key) {
  const auto text = in.text(key);
  if (!text) in.fail_here("needs " + std::string{key} + ", the two temperatures printed on it: \"60F/60F\", \"25C/25C\"");
  const auto slash = text->find('/');
  if (slash == std::string::npos) in.fail_key(key, "must be two temperatures, such as \"60F/60F\" or \"25C/25C\"");
  try {
    return {text::parse<temperature>(text->substr(0, slash)), text::parse<temperature>(text->substr(slash + 1))};
  } catch (const error& mistake) {
    in.fail_key(key, reason_of(mistake));
  }
}

water::hydrometer hydrometer_from(section& in) {
  water::hydrometer made{.scale = gravity_scale_from(in, "scale")};
  if (in.word("body", {"glass", "plastic"}).value_or(0) == 1) made.body = water::hydrometer_plastic;
  made.division = in.value_or<double>("division", made.division);
  return made;
}

water::refractometer refractometer_from(section& in) {
  const auto scale = in.word("scale", {"seawater", "sodium chloride"});
  if (!scale) in.fail_here("needs scale = \"seawater\" or \"sodium chloride\", as printed in its manual");
  const auto compensation = in.word("compensation", {"automatic", "none"});
  if (!compensation) in.fail_here("needs compensation = \"automatic\" or \"none\" (automatic is marked ATC)");
  water::refractometer made{
      .scale = *scale == 0 ? water::refractometer_scale::seawater : water::refractometer_scale::sodium_chloride,
      .compensation =
          *compensation == 0 ? water::temperature_compensation::automatic : water::temperature_compensation::none};
  made.division = in.value_or<double>("division", made.division);
  return made;
}

/// One of: practical_salinity, hydrometer, refractometer, conductivity, compensated_conductivity.
salinity_reading reading_from(section in) {
  const int given = in.has("practical_salinity") + in.has("hydrometer") + in.has("refractometer") +
                    in.has("conductivity") + in.has("compensated_conductivity");
  if (given != 1) {
    in.fail_here(std::string{"needs one of practical_salinity, hydrometer, refractometer, conductivity, "
                             "compensated_conductivity"} +
                 (given > 1 ? ", not several" : ""));
  }
  salinity_reading reading = practical_salinity{0.0};
  if (const auto s = in.maybe<practical_salinity>("practical_salinity")) {
    reading = *s;
  } else if (const auto shown = in.maybe<double>("hydrometer")) {
    reading = water::hydrometer_observation{
        .reading = *shown, .water = in.need<temperature>("temperature"), .instrument = hydrometer_from(in)};
  } else if (const auto parts = in.maybe<double>("refractometer")) {
    reading = water::refractometer_observation{
        .reading = *parts, .prism = in.need<temperature>("temperature"), .instrument = refractometer_from(in)};
  } else if (const auto c = in.maybe<electrical_conductivity>("conductivity")) {
    reading = commissioning::probe_observation{.shown = *c, .water = in.need<temperature>("temperature")};
  } else if (const auto c25 = in.maybe<electrical_conductivity>("compensated_conductivity")) {
    reading = water::compensated_reading{.shown = *c25, .water = in.need<temperature>("temperature"),
                                         .coefficient = in.need<temperature_coefficient>("coefficient")};
  }
  in.finish();
  in.attempt([&] { return commissioning::salinity_of(reading); });
  return reading;
}

estimate<proportion> yield_from(section in) {
  water::trial_batch trial{.mix = in.need<mass>("mix"), .fresh_water = in.need<mass>("fresh_water"),
                           .reached = in.need<practical_salinity>("reached")};
  if (const auto error = in.maybe<practical_salinity>("reading_error")) trial.reading_error = *error;
  if (in.has("reading_error")) {
    in.hold("reading_error", {"error of the reading", "", {0.0, trial.reached->value(), edge::closed, edge::open}},
            trial.reading_error.value());
  }
  in.finish();
  return in.attempt([&] { return water::measured_yield(trial); });
}

}  // namespace

std::optional<water::total_ammonia> read_ammonia(section& in) {
  if (in.has("ammonia_nitrogen") + in.has("ammonia") + in.has("ammonium") > 1) {
    in.fail_key(in.has("ammonia_nitrogen") ? "ammonia_nitrogen" : "ammonia",
                "is given two ways; give one of ammonia_nitrogen, ammonia and ammonium, as the kit counts it");
  }
  if (const auto c = in.maybe<mass_concentration>("ammonia_nitrogen")) return water::total_ammonia::from_nitrogen(*c);
  if (const auto c = in.maybe<mass_concentration>("ammonia")) return water::total_ammonia::from_ammonia(*c);
  if (const auto c = in.maybe<mass_concentration>("ammonium")) return water::total_ammonia::from_ammonium(*c);
  return std::nullopt;
}

std::optional<water::ph_reading> read_ph(section& in) {
  const auto ph = in.maybe<double>("ph");
  if (!ph) return std::nullopt;
  const auto scale = in.word("ph_scale", {"nbs", "total", "free"});
  if (!scale) in.fail_key("ph", "needs its scale: ph_scale = \"nbs\" for a probe on ordinary buffers, or \"total\", \"free\"");
  if (*scale == 0) return water::ph_nbs{*ph};
  if (*scale == 1) return water::ph_total{*ph};
  return water::ph_free{*ph};
}

water_plan read_water(section& in) {
  water_plan water{.temperature = in.need<temperature>("temperature")};
  in.hold("temperature", water::gibbs_temperature_limits, in_celsius(water.temperature));
  if (const auto v = in.maybe<volume>("new_water")) {
    in.hold("new_water", water::water_volume_limits, in_litres(*v));
    const double band = in.value_or<proportion>("new_water_uncertainty", fraction(0.0)).value();
    water.new_water = estimate<volume>{*v * (1.0 - band), *v, *v * (1.0 + band), "the volume as measured"};
  }
  if (const auto y = in.maybe<proportion>("mix_yield")) {
    in.hold("mix_yield", water::mix_yield_limits, y->value());
    water.mix_yield = estimate<proportion>{*y, *y, *y, "given"};
  }
  if (auto trial = in.sub("trial_batch")) {
    if (water.mix_yield) in.fail_key("mix_yield", "is measured by [water.trial_batch]; give one of them, not both");
    water.mix_yield = yield_from(*trial);
  }
  if (auto older = in.sub("older_tank")) water.older_tank = reading_from(*older);
  water.target = in.maybe<practical_salinity>("target");
  if (water.target) in.hold("target", water::practical_salinity_limits, water.target->value());
  if (water.target && water.older_tank) {
    in.fail_key("target", "is for water that matches no other tank; give it or [water.older_tank], not both");
  }
  if (auto now = in.sub("now")) water.now = reading_from(*now);
  if (const auto within = in.maybe<practical_salinity>("match_within")) water.match_within = *within;
  in.hold("match_within", {"difference in salinity", "", {0.0, 42.0}}, water.match_within.value());
  if (auto instrument = in.sub("hydrometer")) {
    water.hydrometer = hydrometer_from(*instrument);
    instrument->finish();
  }
  if (auto instrument = in.sub("refractometer")) {
    water.refractometer = refractometer_from(*instrument);
    instrument->finish();
  }
  water.probe = in.flag("probe", false);
  water.ammonia = read_ammonia(in);
  water.ph = read_ph(in);
  if (water.ammonia && !water.ph) in.fail_here("gives ammonia but no ph; free ammonia needs both");
  if (const auto p = in.maybe<absolute_pressure>("air_pressure")) water.air = *p;
  in.finish();
  in.attempt([&] { return commissioning::assess_water(water); },
             {{"temperature", "temperature"},
              {"temperature of the prism", "temperature"},
              {"air pressure", "air_pressure"}});
  return water;
}

}  // namespace plan_file
