// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much of the ammonia is poisonous? Test kits show total ammonia; the part that is free (NH3, un-ionised) does the
/// harm, and pH, temperature and salinity decide how large it is. The pH carries its scale in its type.
#pragma once

#include <cmath>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/ammonium_pka.hpp>
#include <tankwright/water/ph.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

namespace detail {

// Molar masses [g/mol].
inline constexpr double molar_mass_nitrogen = 14.0067;
inline constexpr double molar_mass_ammonia = 17.03052;
inline constexpr double molar_mass_ammonium = 18.03846;

/// A concentration of ammonia, held as the nitrogen in it.
template <class Self>
class nitrogen_concentration {
 public:
  [[nodiscard]] static constexpr Self from_nitrogen(mass_concentration c) noexcept { return Self{c}; }
  [[nodiscard]] static constexpr Self from_ammonia(mass_concentration c) noexcept {
    return Self{c * (molar_mass_nitrogen / molar_mass_ammonia)};
  }
  [[nodiscard]] constexpr mass_concentration as_nitrogen() const noexcept { return nitrogen_; }
  [[nodiscard]] constexpr mass_concentration as_ammonia() const noexcept {
    return nitrogen_ * (molar_mass_ammonia / molar_mass_nitrogen);
  }
  friend constexpr auto operator<=>(const Self& a, const Self& b) noexcept {
    return a.as_nitrogen().value() <=> b.as_nitrogen().value();
  }
  friend constexpr bool operator==(const Self& a, const Self& b) noexcept {
    return a.as_nitrogen().value() == b.as_nitrogen().value();
  }

 protected:
  constexpr explicit nitrogen_concentration(mass_concentration c) noexcept : nitrogen_{c} {}

 private:
  mass_concentration nitrogen_;
};

}  // namespace detail

/// Total ammonia, NH3 and NH4+ together. Kits differ in what they count: nitrogen (TAN, "NH3-N"), NH3, or NH4+. The
/// name of the maker says which.
class total_ammonia : public detail::nitrogen_concentration<total_ammonia> {
 public:
  [[nodiscard]] static constexpr total_ammonia from_ammonium(mass_concentration c) noexcept {
    return total_ammonia{c * (detail::molar_mass_nitrogen / detail::molar_mass_ammonium)};
  }
  [[nodiscard]] constexpr mass_concentration as_ammonium() const noexcept {
    return as_nitrogen() * (detail::molar_mass_ammonium / detail::molar_mass_nitrogen);
  }

 private:
  using nitrogen_concentration::nitrogen_concentration;
  friend class detail::nitrogen_concentration<total_ammonia>;
};

/// Free (un-ionised) ammonia, NH3: the part that passes gills.
class free_ammonia : public detail::nitrogen_concentration<free_ammonia> {
  using nitrogen_concentration::nitrogen_concentration;
  friend class detail::nitrogen_concentration<free_ammonia>;
};

inline constexpr limits total_ammonia_limits{"total ammonia as nitrogen", "mg/L", not_negative};

/// What the dissociation constant is good for: 5 %, as a step of pK.
inline constexpr double ammonia_pk_uncertainty = 0.0212;
/// How far a probe on NBS buffers may read from the free scale in seawater.
inline constexpr double ph_nbs_from_free = 0.03;

inline constexpr caution ammonia_caution{
    "Free ammonia harms animals from a few hundredths of a milligram per litre, the young and the sensitive from less. "
    "Kits and pH probes are rarely better than 20 %, and 0.3 pH doubles the free part: act on the high end of the "
    "band. Where animals show distress, change water first and calculate later; ask an aquatic veterinarian."};

namespace detail {

template <class T>
[[nodiscard]] inline T free_fraction(T pka, T ph) noexcept {
  using std::pow;
  return T(1) / (T(1) + pow(T(10), pka - ph));
}

}  // namespace detail

/// The free part of the ammonia in seawater, with its band.
///
///   f = 1 / (1 + 10^(pK* - pH)),   both on one scale; a probe on NBS buffers is taken to read the free scale
///
/// @param ph     `ph_nbs`, `ph_total` or `ph_free`, 0 to 14
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90], -2 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       free part of the total; the band is the 5 % of K*, and 0.03 of pH more for NBS buffers
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     5 % on the total and free scales, 12 % with a probe on NBS buffers; the probe's own error comes on top
/// @source       Clegg and Whitfield 1995
[[nodiscard]] inline estimate<proportion> free_ammonia_fraction(ph_reading ph, practical_salinity s, temperature t,
                                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::free_ammonia_fraction";
  core::check(here, ph_limits, ph.value(), policy);
  core::check(here, ammonia_salinity_limits, s.value(), policy);
  core::check(here, ammonia_temperature_limits, in_celsius(t), policy);
  const bool total = ph.on() == ph_reading::scale::total;
  const bool nbs = ph.on() == ph_reading::scale::nbs;
  const double pka = total ? detail::ammonium_pka_total(s.value(), in_kelvins(t))
                           : detail::ammonium_pka_free(s.value(), in_kelvins(t));
  const double band = ammonia_pk_uncertainty + (nbs ? ph_nbs_from_free : 0.0);
  const auto at = [&](double step) { return fraction(detail::free_fraction(pka, ph.value() + step)); };
  return {at(-band), at(0.0), at(band),
          nbs ? "the dissociation constant is good to 5 %, a probe on NBS buffers reads within 0.03 of the free scale"
              : "the dissociation constant is good to 5 %"};
}

/// The free part of the ammonia in fresh water.
///
///   f = 1 / (1 + 10^(pKa - pH)),   pKa = 0.09018 + 2729.92 / T
///
/// @param ph     pH as an ordinary probe reads it, 0 to 14
/// @param t      temperature [ITS-90], 0 to 50 degC
/// @param policy `extrapolate` to go past this range
/// @return       free part of the total
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1 %; the probe's own error comes on top
/// @source       Emerson et al. 1975
[[nodiscard]] inline proportion free_ammonia_fraction_fresh(ph_nbs ph, temperature t,
                                                            range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::free_ammonia_fraction_fresh";
  core::check(here, ph_limits, ph.value(), policy);
  core::check(here, ammonia_fresh_temperature_limits, in_celsius(t), policy);
  return fraction(detail::free_fraction(detail::ammonium_pka_fresh(in_kelvins(t)), ph.value()));
}

/// A water sample as measured.
struct ammonia_sample {
  required<total_ammonia> total;
  ph_reading ph;
  required<practical_salinity> salinity;
  required<tankwright::temperature> temperature;
};

/// The free ammonia of a sample.
struct free_ammonia_result {
  estimate<free_ammonia> concentration;
  estimate<proportion> fraction;
  tankwright::caution caution = ammonia_caution;
};

/// Free ammonia of a sample of seawater: what the test kit's number means for the animals.
///
///   c(NH3) = f(pH, S, t) c(total)
///
/// @param sample total ammonia >= 0; pH on its scale, 0 to 14; practical salinity, 0 to 40; temperature, -2 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       free ammonia with its band, the free part with its band, and a caution
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     as `free_ammonia_fraction`; the errors of the kit and of the probe come on top
/// @source       Clegg and Whitfield 1995
[[nodiscard]] inline free_ammonia_result free_ammonia_in(const ammonia_sample& sample,
                                                         range_policy policy = range_policy::published) {
  const mass_concentration total = sample.total->as_nitrogen();
  core::check("tankwright::water::free_ammonia_in", total_ammonia_limits, in_milligrams_per_litre(total), policy);
  const auto part = free_ammonia_fraction(sample.ph, sample.salinity, sample.temperature, policy);
  return {map_rising(part, [&](proportion f) { return free_ammonia::from_nitrogen(f.value() * total); }), part};
}

}  // namespace tankwright::water
