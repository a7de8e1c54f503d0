// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/reading_inputs.hpp>
#include <tankwright/water/conductivity.hpp>

namespace tankwright::plan {

namespace detail {

[[nodiscard]] inline water::hydrometer hydrometer_of(const water::gravity_scale& scale,
                                                     const word<hydrometer_body>& body) {
  water::hydrometer made{.scale = scale};
  if (*body == hydrometer_body::plastic) made.body = water::hydrometer_plastic;
  return made;
}

[[nodiscard]] inline estimate<practical_salinity> probe_band(practical_salinity s) {
  const double low = s.value() > probe_uncertainty ? s.value() - probe_uncertainty : 0.0;
  return {practical_salinity{low}, s, practical_salinity{s.value() + probe_uncertainty},
          "a calibrated probe, 0.3 of salinity (common practice)"};
}

}  // namespace detail

TANKWRIGHT_INLINE water::hydrometer inputs_of(const hydrometer& h) {
  water::hydrometer made = detail::hydrometer_of(*h.scale, h.body);
  made.division = *h.division;
  return made;
}

TANKWRIGHT_INLINE water::refractometer inputs_of(const refractometer& r) {
  return {.scale = *r.scale, .compensation = *r.compensation, .division = *r.division};
}

TANKWRIGHT_INLINE salinity_input inputs_of(const salinity_reading& r) {
  if (r.hydrometer) {
    water::hydrometer_observation seen{.reading = *r.hydrometer,
                                       .water = *r.temperature,
                                       .instrument = detail::hydrometer_of(*r.scale.of_hydrometer(), r.body)};
    seen.instrument.division = r.division.value_or(seen.instrument.division);
    return seen;
  }
  if (r.refractometer) {
    const auto salt = r.scale.of_refractometer();
    if (!salt) detail::not_given("the scale of a refractometer");
    water::refractometer_observation seen{.reading = *r.refractometer,
                                          .prism = *r.temperature,
                                          .instrument = {.scale = *salt, .compensation = *r.compensation}};
    seen.instrument.division = r.division.value_or(seen.instrument.division);
    return seen;
  }
  if (r.conductivity) return probe_observation{.shown = *r.conductivity, .water = *r.temperature};
  if (r.compensated_conductivity) {
    return water::compensated_reading{
        .shown = *r.compensated_conductivity, .water = *r.temperature, .coefficient = *r.coefficient};
  }
  return *r.known;
}

TANKWRIGHT_INLINE estimate<practical_salinity> salinity_of(const salinity_input& reading) {
  struct reader {
    estimate<practical_salinity> operator()(practical_salinity s) const {
      core::check("tankwright::plan::salinity_of", water::practical_salinity_limits, s.value());
      return {s, s, s, "given"};
    }
    estimate<practical_salinity> operator()(const water::hydrometer_observation& seen) const {
      return water::salinity_from_hydrometer(seen);
    }
    estimate<practical_salinity> operator()(const water::refractometer_observation& seen) const {
      return water::salinity_from_refractometer(seen);
    }
    estimate<practical_salinity> operator()(const probe_observation& seen) const {
      return detail::probe_band(water::salinity_from_conductivity(seen.shown, seen.water));
    }
    estimate<practical_salinity> operator()(const water::compensated_reading& seen) const {
      return detail::probe_band(water::salinity_from_conductivity(seen));
    }
  };
  return std::visit(reader{}, reading);
}

TANKWRIGHT_INLINE std::optional<water::total_ammonia> total_ammonia_of(const ammonia_reading& r) {
  if (r.as_nitrogen) return water::total_ammonia::from_nitrogen(*r.as_nitrogen);
  if (r.as_ammonia) return water::total_ammonia::from_ammonia(*r.as_ammonia);
  if (r.as_ammonium) return water::total_ammonia::from_ammonium(*r.as_ammonium);
  return std::nullopt;
}

TANKWRIGHT_INLINE std::optional<water::ph_reading> ph_of(const ph_with_scale& r) {
  if (!r.ph) return std::nullopt;
  switch (*r.scale) {
    case water::ph_reading::scale::total:
      return water::ph_total{*r.ph};
    case water::ph_reading::scale::free:
      return water::ph_free{*r.ph};
    case water::ph_reading::scale::nbs:
      break;
  }
  return water::ph_nbs{*r.ph};
}

}  // namespace tankwright::plan
