// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/reading_rules.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::plan::rules {

namespace detail {

[[nodiscard]] inline std::string number_said(double x) { return text::of(x, text::significant(6)); }

/// The keys that say what the instrument is; `key` is the reading.
inline void need(const std::string& path, std::string_view reading, std::string_view key, bool known,
                 std::string_view why, book& all) {
  if (!known) {
    all.refuse(path + "." + std::string{key}, "is missing: " + std::string{why}, path + "." + std::string{reading});
  }
}

inline void hold_hydrometer(const std::string& path, const salinity_reading& r, book& all) {
  if (r.scale.of_refractometer()) {
    all.refuse(path + ".scale",
               r.scale.write() +
                   " is the scale of a refractometer; a hydrometer has two temperatures, such as "
                   "\"60F/60F\"",
               path + ".hydrometer");
  } else {
    need(path, "hydrometer", "scale", r.scale.given(),
         "the two temperatures printed on the hydrometer, \"60F/60F\" or \"25C/25C\"", all);
  }
  if (r.division) {
    all.at_most(path + ".division", *r.division, {0.05, path + ".hydrometer"},
                "is no division of a hydrometer, whose divisions are at most");
  }
}

inline void hold_refractometer(const std::string& path, const salinity_reading& r, book& all) {
  const double shown = *r.refractometer;
  if (water::looks_like_a_gravity(practical_salinity{shown})) {
    all.refuse(path + ".refractometer",
               number_said(shown) + " is a specific gravity; give the parts per thousand beside it on the scale");
  }
  if (r.scale.of_hydrometer()) {
    all.refuse(path + ".scale",
               r.scale.write() +
                   " is the scale of a hydrometer; a refractometer is made for "
                   "\"seawater\" or \"sodium chloride\"",
               path + ".refractometer");
  } else {
    need(path, "refractometer", "scale", r.scale.given(), "\"seawater\" or \"sodium chloride\", as its manual says",
         all);
  }
  need(path, "refractometer", "compensation", r.compensation.known(), "\"automatic\" (marked ATC) or \"none\"", all);
  if (r.division && *r.division < 0.01) {
    all.refuse(path + ".division",
               number_said(*r.division) + " is no division of a refractometer, which shows parts per thousand",
               path + ".refractometer");
  }
}

/// Keys that say nothing about the kind of reading that is given.
inline void refuse_idle(const std::string& path, const salinity_reading& r, book& all) {
  const bool hydrometer = r.hydrometer.given();
  const bool refractometer = r.refractometer.given();
  const bool meter = r.compensated_conductivity.given();
  const std::string_view reading = hydrometer               ? "hydrometer"
                                   : refractometer          ? "refractometer"
                                   : r.conductivity.given() ? "conductivity"
                                   : meter                  ? "compensated_conductivity"
                                                            : "practical_salinity";
  const auto idle = [&](std::string_view key, bool given, bool used) {
    if (given && !used) {
      all.refuse(path + "." + std::string{key},
                 "says nothing of a reading by " + std::string{reading} + "; leave it out",
                 path + "." + std::string{reading});
    }
  };
  idle("temperature", r.temperature.given(), reading != "practical_salinity");
  idle("scale", r.scale.given(), hydrometer || refractometer);
  idle("body", r.body.given(), hydrometer);
  idle("compensation", r.compensation.given(), refractometer);
  idle("division", r.division.given(), hydrometer || refractometer);
  idle("coefficient", r.coefficient.given(), meter);
}

}  // namespace detail

TANKWRIGHT_INLINE void hold_salinity(const std::string& path, const value<practical_salinity>& s, book& all) {
  if (!s.given() || !water::looks_like_a_gravity(practical_salinity{s.si()})) return;
  all.refuse(path, detail::number_said(s.si()) +
                       " looks like a specific gravity; a practical salinity is about 35 in the sea. Give a reading of "
                       "a hydrometer with its temperature and scale, or the salinity that it means");
}

TANKWRIGHT_INLINE void hold_reading(const std::string& path, const salinity_reading& r, book& all) {
  const int readings = r.known.given() + r.hydrometer.given() + r.refractometer.given() + r.conductivity.given() +
                       r.compensated_conductivity.given();
  if (readings != 1) return;  // the description has said so
  hold_salinity(path + ".practical_salinity", r.known, all);
  detail::refuse_idle(path, r, all);
  const auto at_temperature = [&](std::string_view reading, std::string_view what) {
    detail::need(path, reading, "temperature", r.temperature.known(), what, all);
  };
  if (r.hydrometer) {
    at_temperature("hydrometer", "of the water that the hydrometer floated in");
    detail::hold_hydrometer(path, r, all);
  }
  if (r.refractometer) {
    at_temperature("refractometer", "of the prism of the refractometer");
    detail::hold_refractometer(path, r, all);
  }
  if (r.conductivity) at_temperature("conductivity", "of the water that the probe was in");
  if (r.compensated_conductivity) at_temperature("compensated_conductivity", "of the water that the meter was in");
  if (r.coefficient) {
    const double percent = in_percent_per_kelvin(*r.coefficient);
    if (percent > 0.0 && percent < 0.1) {
      all.refuse(path + ".coefficient", detail::number_said(percent) +
                                            " %/K is next to none; meters are set to about 2 %/K. Did you mean " +
                                            detail::number_said(percent * 100.0) + " %/K?");
    }
  }
}

}  // namespace tankwright::plan::rules
