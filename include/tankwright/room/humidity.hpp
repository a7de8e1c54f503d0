// SPDX-License-Identifier: BSL-1.0
/// @file
/// What humidity does the room settle at? Evaporation, other sources, ventilation with outdoor air and a dehumidifier
/// in balance: evaporation falls as the room gets wetter, and no room is ever more than saturated.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <tankwright/room/detail/moisture.hpp>

namespace tankwright::room {

/// The room and the air that comes in. Outdoor pressure is the room's pressure.
struct ventilated_room {
  required<tankwright::volume> volume;
  required<rate> air_changes;  ///< of outdoor air: per_hour(0.5)
  required<tankwright::temperature> temperature;
  room::air outdoor;
};

/// Moisture from anything but the tank: a person at rest gives about 50 g/h.
struct moisture_source {
  std::string label = "source";
  required<mass_flow> rate;
};

/// A dehumidifier with its hygrostat.
struct controlled_dehumidifier {
  dehumidifier machine;
  required<relative_humidity> set_point;
};

/// Everything that decides the humidity of a tank room.
struct tank_room {
  ventilated_room room;
  tank_water water;
  std::vector<wet_surface> surfaces;
  std::vector<moisture_source> sources = {};
  std::optional<controlled_dehumidifier> dehumidifier = {};
};

/// The room in balance. Everything that comes in goes somewhere:
/// evaporation + sources = ventilation + dehumidified + condensing.
struct moisture_balance {
  room::air air;
  mass_flow evaporation;  ///< negative where the water is so cold that it takes vapour up
  mass_flow sources;
  mass_flow ventilation;  ///< carried out, less what comes in with the outdoor air
  mass_flow dehumidified;
  mass_flow condensing;  ///< what saturated air cannot hold: it runs down walls and windows
  proportion duty;       ///< of the dehumidifier
  bool saturated;
};

/// Low and high are the driest and the wettest room within the bands of the evaporation and of the machine.
struct room_humidity {
  moisture_balance low;
  moisture_balance central;
  moisture_balance high;
  std::string_view reason;
  bool within_data;     ///< all three humidities lie where the evaporation was measured, 28 to 95 %
  bool set_point_kept;  ///< by the dehumidifier, at the high end too; false without one
  tankwright::caution caution;
};

inline constexpr caution moisture_caution{
    "Lasting humidity above 60 %, and condensation long before that on cold surfaces, feed mould and rot: a matter of "
    "health and of the building. The air behind cabinets and on outside walls is worse than this figure for the whole "
    "room. Have a building professional look before relying on it."};

inline constexpr limits room_volume_limits{"room volume", "m3", {0.1, 1e9}};
inline constexpr limits air_change_limits{"air changes", "1/s", {0.0, 1.0}};
inline constexpr limits source_rate_limits{"rate", "kg/s", possible_mass_flow};

namespace detail {

inline constexpr std::string_view machine_and_evaporation_band =
    "the band of the evaporation, and machines of one label differ: by 15 % from 21 to 32 degC, in colder rooms by far "
    "more";

/// A checked room; `area` picks one end of the band later.
struct checked_room {
  moisture_model model;
  wet_areas areas;
  [[nodiscard]] moisture_model at(band_end end) const noexcept {
    moisture_model m = model;
    m.end = end;
    m.wet_area = end == band_end::low ? areas.low : end == band_end::high ? areas.high : areas.central;
    return m;
  }
};

[[nodiscard]] inline checked_room checked(std::string_view function, const tank_room& r, range_policy policy) {
  const raw_air outdoor = checked(function, r.room.outdoor, policy);
  core::check(function, room_volume_limits, r.room.volume.get().value());
  core::check(function, air_change_limits, r.room.air_changes.get().value());
  const air inside{.temperature = r.room.temperature,
                   .humidity = relative_humidity::from_percent(50.0),
                   .pressure = r.room.outdoor.pressure};
  checked_room out;
  moisture_model& m = out.model;
  m.surface = checked(function, open_water{r.water, inside}, policy);
  check_law(function, about(evaporation_law::shah), m.surface, 0.5, policy);
  m.saturation = 2.0 * m.surface.in_air;
  check_vapour(function, m.saturation, m.total());
  m.volume = r.room.volume.get().value();
  m.changes = r.room.air_changes.get().value();
  m.outdoor = outdoor.ratio;
  for (const moisture_source& s : r.sources) {
    core::check_element(function, s.label, source_rate_limits, s.rate.get().value());
    m.source += s.rate.get().value();
  }
  out.areas = checked_areas(function, r.surfaces, policy);
  if (r.dehumidifier) {
    const controlled_dehumidifier& d = *r.dehumidifier;
    m.capacity = checked_capacity(function, d.machine);
    check_humidity(function, d.set_point);
    m.set_point = d.set_point.get().value() * m.saturation;
  }
  return out;
}

[[nodiscard]] inline air air_at(const moisture_model& m, double vapour) noexcept {
  return {.temperature = kelvins(m.surface.air),
          .humidity = relative_humidity::from_fraction(std::min(1.0, vapour / m.saturation)),
          .pressure = absolute_pressure{pressure::from_value(m.total())}};
}

[[nodiscard]] inline moisture_balance balance_at(const moisture_model& m, const settled_air& s) noexcept {
  const double most = m.removal(s.vapour);
  return {.air = air_at(m, s.vapour),
          .evaporation = mass_flow::from_value(m.evaporation(s.vapour)),
          .sources = mass_flow::from_value(m.source),
          .ventilation = mass_flow::from_value(m.ventilation(s.vapour)),
          .dehumidified = mass_flow::from_value(s.machine),
          .condensing = mass_flow::from_value(s.condensing),
          .duty = fraction(s.machine > 0.0 ? std::min(1.0, s.machine / most) : 0.0),
          .saturated = s.vapour >= m.saturation};
}

/// The checked room, which has something to settle with.
[[nodiscard]] inline checked_room room_that_settles(std::string_view function, const tank_room& r,
                                                    range_policy policy) {
  checked_room room = checked(function, r, policy);
  if (room.model.changes == 0.0 && room.areas.central == 0.0) {
    core::fail<invalid_input>(function, air_change_limits.argument, 0.0, "1/s",
                              "leaves the air as it is, or until its sources saturate it: there is no open water "
                              "either to settle with");
  }
  return room;
}

/// Where the air settles at the central evaporation, for who does not ask for the band.
[[nodiscard]] inline relative_humidity central_humidity(const tank_room& r) {
  constexpr std::string_view here = "tankwright::room::humidity_balance";
  const moisture_model m = room_that_settles(here, r, range_policy::published).at(band_end::central);
  return balance_at(m, settle(here, m)).air.humidity;
}

}  // namespace detail

/// The humidity at which a tank room settles, with the band of the evaporation.
///
///   n V (W - W_o) rho_da = E(W) + G - D(W),   E by Shah and its band, D by the hygrostat up to the machine's capacity
///   where that leaves more than saturated air can hold, the air is saturated and the rest condenses
///
/// @param r      room: volume [m^3] > 0, air changes [1/s] >= 0, 6 to 35 degC, outdoor air; water 7 to 94 degC,
///               practical salinity 0 to 42; surfaces as for evaporation; sources [kg/s] >= 0; dehumidifier as for
///               dehumidifier_output, set point 0 to 1
/// @param policy `extrapolate` to go past the published ranges
/// @return       air and all flows [kg/s]: the middle; low with little evaporation and the best machine of its label;
///               high with much evaporation and the poorest
/// @throws       invalid_input, out_of_range (names the element, the argument, its value and the limits),
///               no_convergence
/// @accuracy     the balance closes to 1e-9; the band is that of the evaporation and of the machine. Outdoor air
///               and air changes are usually known worse
/// @source       mass balance; Shah 2014; EnergyPlus 9.5 example curves for the machine
[[nodiscard]] inline room_humidity humidity_balance(const tank_room& r, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::humidity_balance";
  const detail::checked_room room = detail::room_that_settles(here, r, policy);
  bool within = true;
  bool kept = r.dehumidifier.has_value();
  const auto at = [&](detail::band_end end) {
    const detail::moisture_model m = room.at(end);
    const detail::settled_air s = detail::settle(here, m);
    const double humidity = s.vapour / m.saturation;
    kept = kept && s.vapour <= m.set_point;
    within = within && about(evaporation_law::shah).humidity.contains(humidity);
    return detail::balance_at(m, s);
  };
  room_humidity result{.low = at(detail::band_end::low),
                       .central = at(detail::band_end::central),
                       .high = at(detail::band_end::high),
                       .reason = room.model.capacity > 0.0 ? detail::machine_and_evaporation_band
                                 : room.areas.agitated     ? agitated_band
                                                           : still_band,
                       .within_data = within,
                       .set_point_kept = kept,
                       .caution = moisture_caution};
  // Water that is colder than the dew point dries the room, the more the better it exchanges vapour.
  if (result.high.air.humidity.get() < result.low.air.humidity.get()) std::swap(result.low, result.high);
  if (result.central.air.humidity.get() < result.low.air.humidity.get()) result.low = result.central;
  if (result.central.air.humidity.get() > result.high.air.humidity.get()) result.high = result.central;
  return result;
}

}  // namespace tankwright::room
