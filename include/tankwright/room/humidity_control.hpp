// SPDX-License-Identifier: BSL-1.0
/// @file
/// What holds the room at 55 %? The dehumidifier to buy, or the ventilation to provide.
#pragma once

#include <tankwright/room/humidity.hpp>

namespace tankwright::room {

/// What to buy to hold a humidity.
struct dehumidifier_size {
  estimate<mass_flow> load;  ///< to remove at the wanted humidity; negative where the room is drier by itself
  /// The capacity at the rating point that removes as much, running without a pause, by the middle of the curve.
  estimate<mass_flow> rated;
  estimate<double> share_of_label;  ///< [1] what is left of a label's capacity in this air; low end: no machine is sure
  mass_flow suggested;              ///< a quarter more than the central capacity, or the high one where that is more
  estimate<power> latent_heat_to_room;  ///< heat of the condensed water; the electricity comes on top
  bool needed;
  tankwright::caution caution;
};

/// A machine that keeps less than this of its label's capacity is the wrong machine.
inline constexpr double least_share_of_label = 0.05;

/// What to let in to hold a humidity.
struct ventilation_size {
  estimate<rate> air_changes;
  estimate<flow_rate> outdoor_air;  ///< measured at the room's temperature
  estimate<mass_flow> dry_air;
  tankwright::caution caution;
};

namespace detail {

/// What the air would gain at the wanted humidity, at each end of the band.
[[nodiscard]] inline conductances<double> gains_at(const checked_room& room, double vapour) noexcept {
  return {room.at(band_end::low).gain(vapour), room.at(band_end::central).gain(vapour),
          room.at(band_end::high).gain(vapour)};
}

}  // namespace detail

/// The dehumidifier that holds a humidity in a tank room.
///
///   load = n V (W_o - W) rho_da + E(W) + G,   rated capacity = load f(rating point) / f(t, phi)
///
/// @param r      the room, as for humidity_balance; a dehumidifier already in it is left out
/// @param target humidity to hold, 0 to 1
/// @param rated_at air for which the label's capacity holds
/// @param policy `extrapolate` to go past the published ranges
/// @return       load and rated capacity [kg/s; a kilogram is a litre], heat to the room [W]
/// @throws       invalid_input, out_of_range (names the element, the argument, its value and the limits; also where the
///               air is too dry or too cold for a machine)
/// @accuracy     the band of the evaporation; machines of one label differ by 15 %, and below 21 degC by far more
/// @source       mass balance; Shah 2014; EnergyPlus 9.5 example curves
[[nodiscard]] inline dehumidifier_size dehumidifier_for(const tank_room& r, relative_humidity target,
                                                        const rating_point& rated_at = rated_80F_60,
                                                        range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::dehumidifier_for";
  const detail::checked_room room = detail::checked(here, r, policy);
  detail::check_humidity(here, target);
  const double celsius = room.model.surface.air - 273.15;
  const dehumidifier unit{.label = "wanted", .capacity = kilograms_per_second(1.0), .rated_at = rated_at};
  const double per_label = detail::checked_capacity(here, unit);
  const auto share = [&](detail::band_end end) {
    return per_label * detail::capacity_share(celsius, target.value(), end);
  };
  if (!(share(detail::band_end::central) > least_share_of_label)) {
    core::fail<out_of_range>(here, "relative humidity to hold", target.value(), "",
                             "leaves a machine hardly anything to remove at " +
                                 core::number_with_unit(celsius, "degC") + ": it is too dry or too cold for one");
  }
  const double label = 1.0 / share(detail::band_end::central);
  const auto gain = detail::gains_at(room, target.value() * room.model.saturation);
  const double heat = water::kernel::latent_heat_of_water(celsius);
  const std::string_view why = room.areas.agitated ? agitated_band : still_band;
  const auto positive_part = [](double x) { return std::max(x, 0.0); };
  const auto scaled = [&](double by) {
    return detail::band_of<mass_flow>(positive_part(gain.low) * by, positive_part(gain.central) * by,
                                      positive_part(gain.high) * by, why);
  };
  const estimate<mass_flow> rated = scaled(label);
  return {.load = detail::band_of<mass_flow>(gain.low, gain.central, gain.high, why),
          .rated = rated,
          .share_of_label = {share(detail::band_end::low), share(detail::band_end::central),
                             share(detail::band_end::high), detail::machine_band_at(celsius)},
          .suggested = std::max(1.25 * rated.central, rated.high),
          .latent_heat_to_room = detail::band_of<power>(
              positive_part(gain.low) * heat, positive_part(gain.central) * heat, positive_part(gain.high) * heat, why),
          .needed = gain.high > 0.0,
          .caution = moisture_caution};
}

/// The ventilation with outdoor air that holds a humidity in a tank room.
///
///   n = (E(W) + G) / (V (W - W_o) rho_da)
///
/// @param r      the room, as for humidity_balance; its own air changes and dehumidifier are left out
/// @param target humidity to hold, more than 0 to 1
/// @param policy `extrapolate` to go past the published ranges
/// @return       air changes [1/s], outdoor air [m^3/s], dry air [kg/s]
/// @throws       invalid_input (also where the outdoor air is as wet as the room shall be), out_of_range
/// @accuracy     the band of the evaporation
/// @source       mass balance; Shah 2014
[[nodiscard]] inline ventilation_size ventilation_for(const tank_room& r, relative_humidity target,
                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::ventilation_for";
  detail::checked_room room = detail::checked(here, r, policy);
  detail::check_humidity(here, target);
  room.model.changes = 1.0;  // what one change a second would carry out
  const double vapour = target.value() * room.model.saturation;
  const double carried = room.model.ventilation(vapour);
  room.model.changes = 0.0;
  const auto gain = detail::gains_at(room, vapour);
  const auto needed = [&](double g) { return std::max(g, 0.0) / carried; };
  // Also where the difference of two next to nothings would have to carry everything.
  if (!(carried > 0.0 && std::max(needed(gain.low), needed(gain.high)) <= core::vast)) {
    core::fail<invalid_input>(
        here, "outdoor humidity ratio", 1e3 * room.model.outdoor, "g/kg",
        "is no drier than the room shall be, " +
            core::number_with_unit(1e3 * detail::humidity_ratio(vapour, room.model.total()), "g/kg") +
            ": ventilation cannot dry it; a dehumidifier can");
  }
  const std::string_view why = room.areas.agitated ? agitated_band : still_band;
  const double volume = room.model.volume;
  const double dry =
      volume * (room.model.total() - vapour) / (detail::dry_air_gas_constant<double> * room.model.surface.air);
  const double low = needed(gain.low);
  const double central = needed(gain.central);
  const double high = needed(gain.high);
  return {.air_changes = detail::band_of<rate>(low, central, high, why),
          .outdoor_air = detail::band_of<flow_rate>(low * volume, central * volume, high * volume, why),
          .dry_air = detail::band_of<mass_flow>(low * dry, central * dry, high * dry, why),
          .caution = moisture_caution};
}

}  // namespace tankwright::room
