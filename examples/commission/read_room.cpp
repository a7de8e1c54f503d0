// SPDX-License-Identifier: BSL-1.0
#include "plan_file.hpp"

namespace plan_file {

using namespace tankwright;
namespace twc = tankwright::commissioning;

namespace {

/// A number that the room's functions will get, held against their limits where it stands.
template <class Q>
Q held(section& in, std::string_view key, Q value, const limits& limit) {
  in.hold(key, limit, core::si_number(value));
  return value;
}

temperature need_temperature(section& in, std::string_view key, const limits& limit) {
  const auto t = in.need<temperature>(key);
  in.hold(key, limit, in_celsius(t));
  return t;
}

constexpr limits indoor_limits{"temperature indoors", "degC", above_absolute_zero_celsius, celsius_range(6.0, 35.0),
                               "where evaporation was measured"};
constexpr limits outdoor_limits{"temperature outdoors", "degC", above_absolute_zero_celsius, celsius_range(-60.0, 60.0),
                                "weather"};
constexpr limits size_limits{"size", "m", positive};
constexpr limits power_limits{"power", "W", not_negative};
constexpr limits duration_limits{"time", "s", positive};

/// The volume of the room, or its three sides.
volume room_volume_from(section& in) {
  if (const auto v = in.maybe<volume>("volume")) return held(in, "volume", *v, room::room_volume_limits);
  if (!in.has("length")) in.fail_here("needs volume, or length, width and height");
  const auto side = [&](std::string_view key) { return held(in, key, in.need<length>(key), size_limits); };
  const length across = side("length");
  const length deep = side("width");
  return across * deep * side("height");
}

twc::room_season season_from(section in) {
  twc::room_season season{.indoors = need_temperature(in, "indoors", indoor_limits),
                          .outdoors = need_temperature(in, "outdoors", outdoor_limits),
                          .outdoor_humidity = in.need<relative_humidity>("outdoor_humidity")};
  if (const auto changes = in.maybe<rate>("air_changes")) {
    season.air_changes = held(in, "air_changes", *changes, room::air_change_limits);
  }
  if (in.has("coldest_night")) season.coldest_night = need_temperature(in, "coldest_night", outdoor_limits);
  if (season.coldest_night > season.outdoors.get()) {
    in.fail_key("coldest_night", "is warmer than outdoors, the mean of the season");
  }
  in.finish();
  return season;
}

room::agitation movement_from(section& in) {
  switch (in.word("movement", {"still", "gentle", "lively", "splashing"}).value_or(1)) {
    case 0:
      return room::still_surface;
    case 2:
      return room::lively;
    case 3:
      return room::splashing;
    default:
      return room::gently_moving;
  }
}

room::cover_material cover_from(section& in) {
  switch (in.word("cover", {"lid", "foam", "bubble sheet", "floating discs"}).value_or(0)) {
    case 1:
      return room::foam_cover;
    case 2:
      return room::bubble_cover;
    case 3:
      return room::floating_discs;
    default:
      return room::rigid_lid;
  }
}

twc::open_surface open_surface_from(section& in) {
  twc::open_surface surface{.moved = movement_from(in), .cover = cover_from(in)};
  if (const auto a = in.maybe<area>("area")) surface.area = held(in, "area", *a, room::area_limits);
  if (const auto v = in.maybe<velocity>("air_speed")) {
    surface.air_speed = held(in, "air_speed", *v, room::room_air_speed_limits);
  }
  surface.covered = in.value_or<proportion>("covered", surface.covered);
  in.finish();
  return surface;
}

room::wet_surface wet_surface_from(section in) {
  const auto label = in.text("label").value_or("surface");
  (void)in.need<area>("area");
  const twc::open_surface s = open_surface_from(in);
  return {.label = label,
          .area = *s.area,
          .moved = s.moved,
          .air_speed = s.air_speed,
          .covered = s.covered,
          .cover = s.cover};
}

room::controlled_dehumidifier dehumidifier_from(section in) {
  // A litre of condensate is a kilogram.
  const flow_rate label = held(in, "capacity", in.need<flow_rate>("capacity"), limits{"capacity", "m3/s", positive});
  room::controlled_dehumidifier machine{.machine = {.capacity = kilograms_per_day(in_litres_per_day(label))},
                                        .set_point = in.need<relative_humidity>("set_point")};
  in.hold("set_point", room::dehumidifier_humidity_limits, machine.set_point->fraction());
  switch (in.word("rated_at", {"80 F, 60 %", "73 F, 60 %", "65 F, 60 %", "30 C, 80 %"}).value_or(0)) {
    case 1:
      machine.machine.rated_at = room::rated_73F_60;
      break;
    case 2:
      machine.machine.rated_at = room::rated_65F_60;
      break;
    case 3:
      machine.machine.rated_at = room::rated_30C_80;
      break;
    default:
      break;
  }
  if (const auto p = in.maybe<power>("power")) {
    machine.machine.electrical = held(in, "power", *p, room::dehumidifier_power_limits);
  }
  in.finish();
  return machine;
}

std::optional<twc::cold_surface> cold_surface_from(std::optional<section> in) {
  if (!in) return std::nullopt;
  const auto u =
      held(*in, "transmittance", in->need<thermal_transmittance>("transmittance"), room::transmittance_limits);
  in->finish();
  return twc::cold_surface{.transmittance = u};
}

twc::appliance appliance_from(section in) {
  twc::appliance made{.label = in.text("label").value_or("appliance"),
                      .electricity = held(in, "power", in.need<power>("power"), power_limits)};
  made.into_water = in.value_or<proportion>("into_water", made.into_water);
  made.on = in.value_or<proportion>("on", made.on);
  in.finish();
  return made;
}

/// A wall of the tank: its transmittance, or one sheet of a material.
room::tank_wall tank_wall_from(section in) {
  const auto label = in.text("label").value_or("wall");
  const area size = held(in, "area", in.need<area>("area"), room::area_limits);
  std::optional<thermal_transmittance> u = in.maybe<thermal_transmittance>("transmittance");
  if (u) {
    in.hold("transmittance", room::tank_transmittance_limits, u->value());
  } else {
    const auto which = in.word("material", {"glass", "acrylic", "plywood", "glass fibre", "polystyrene"});
    if (!which) in.fail_here("needs transmittance, or material and thickness");
    constexpr thermal_conductivity conducts[] = {room::glass_conductivity, room::acrylic_conductivity,
                                                 room::plywood_conductivity, room::glass_fibre_conductivity,
                                                 room::polystyrene_conductivity};
    const length thick = held(in, "thickness", in.need<length>("thickness"), room::thickness_limits);
    u = room::transmittance({.label = label, .layers = {{.thickness = thick, .conductivity = conducts[*which]}}});
  }
  room::tank_wall wall{.label = label, .area = size, .transmittance = *u};
  if (in.has("outside")) wall.outside = need_temperature(in, "outside", outdoor_limits);
  in.finish();
  return wall;
}

twc::outage_plan outage_from(section in) {
  twc::outage_plan outage{.lasts = held(in, "lasts", in.need<duration>("lasts"), duration_limits),
                          .lowest = need_temperature(in, "lowest", room::limit_temperature_limits)};
  if (in.has("room_settles_at") || in.has("room_time_constant")) {
    outage.room = room::drifting_room{
        .settles_at = need_temperature(in, "room_settles_at", indoor_limits),
        .time_constant = held(in, "room_time_constant", in.need<duration>("room_time_constant"), duration_limits)};
  }
  in.finish();
  return outage;
}

twc::heating_plan heating_from(section in) {
  twc::heating_plan heating;
  if (const auto p = in.maybe<power>("heater")) heating.heater = held(in, "heater", *p, room::heater_limits);
  heating.margin = held(in, "margin", in.value_or<double>("margin", heating.margin), room::margin_limits);
  if (in.has("filled_at")) heating.filled_at = need_temperature(in, "filled_at", room::water_temperature_limits);
  for (section& wall : in.sections("wall")) heating.walls.push_back(tank_wall_from(wall));
  if (const auto outage = in.sub("outage")) heating.outage = outage_from(*outage);
  in.finish();
  return heating;
}

twc::chamber_levels chamber_from(section in) {
  twc::chamber_levels chamber{.surface = held(in, "surface", in.need<area>("surface"), room::chamber_area_limits),
                              .running = in.need<length>("running_level"),
                              .lowest = in.need<length>("lowest_level")};
  if (chamber.lowest.get() > chamber.running.get()) in.fail_key("lowest_level", "is above running_level");
  in.finish();
  return chamber;
}

twc::top_off_plan top_off_from(section in) {
  twc::top_off_plan plan{.reservoir = held(in, "reservoir", in.need<volume>("reservoir"), room::reservoir_limits)};
  plan.unattended = held(in, "unattended", in.value_or<duration>("unattended", plan.unattended), duration_limits);
  plan.lowest = in.value_or<practical_salinity>("lowest_salinity", plan.lowest);
  in.hold("lowest_salinity", {"lowest salinity", "", positive, {0.0, 42.0}, "PSS-78"}, plan.lowest.value());
  plan.highest = in.value_or<practical_salinity>("highest_salinity", plan.highest);
  in.hold("highest_salinity", {"highest salinity", "", positive, {0.0, 42.0}, "PSS-78"}, plan.highest.value());
  if (plan.highest <= plan.lowest) in.fail_key("highest_salinity", "is not above lowest_salinity");
  if (const auto v = in.maybe<volume>("free_volume"))
    plan.free_volume = held(in, "free_volume", *v, room::free_volume_limits);
  if (in.has("fresh_water"))
    plan.fresh_water = need_temperature(in, "fresh_water", room::fresh_water_temperature_limits);
  if (const auto chamber = in.sub("chamber")) plan.chamber = chamber_from(*chamber);
  in.finish();
  return plan;
}

/// What the plan overrules of the sections before it.
void read_water_of(section& in, twc::room_plan& room) {
  if (in.has("water_temperature")) {
    room.water = need_temperature(in, "water_temperature", room::water_temperature_limits);
  }
  if (const auto s = in.maybe<practical_salinity>("salinity")) {
    room.salinity = held(in, "salinity", *s, water::practical_salinity_limits);
  }
  if (const auto v = in.maybe<volume>("water_volume")) {
    in.hold("water_volume", room::system_volume_limits, v->value());
    const double band = in.value_or<proportion>("water_volume_uncertainty", fraction(0.0)).value();
    if (!(band < 1.0)) in.fail_key("water_volume_uncertainty", "leaves no water");
    room.water_volume = estimate<volume>{*v * (1.0 - band), *v, *v * (1.0 + band), "the volume as given"};
  }
}

/// A trial with the room's own numbers: where the system is described elsewhere, some system stands in for it.
twc::system_state stand_in() {
  twc::system_state state;
  const volume some = litres(2000.0);
  state.display_surface = square_metres(2.0);
  state.display_water = estimate<volume>{some, some, some, {}};
  return state;
}

}  // namespace

twc::room_plan read_room(section& in) {
  twc::room_plan room{.volume = room_volume_from(in)};
  room.air_changes =
      held(in, "air_changes", in.value_or<rate>("air_changes", room.air_changes), room::air_change_limits);
  room.target = in.value_or<relative_humidity>("highest_humidity", room.target);
  in.hold("highest_humidity", {"highest humidity", "", {0.2, 1.0}}, room.target.fraction());
  if (const auto winter = in.sub("winter")) room.winter = season_from(*winter);
  if (const auto summer = in.sub("summer")) room.summer = season_from(*summer);
  if (auto display = in.sub("display")) room.display = open_surface_from(*display);
  if (auto sump = in.sub("sump")) room.sump = open_surface_from(*sump);
  for (section& surface : in.sections("surface")) room.more_surfaces.push_back(wet_surface_from(surface));
  for (section& source : in.sections("moisture")) {
    room.sources.push_back({.label = source.text("label").value_or("source"),
                            .rate = held(source, "rate", source.need<mass_flow>("rate"), room::source_rate_limits)});
    source.finish();
  }
  if (const auto machine = in.sub("dehumidifier")) room.dehumidifier = dehumidifier_from(*machine);
  room.window = cold_surface_from(in.sub("window"));
  room.wall = cold_surface_from(in.sub("wall"));
  for (section& appliance : in.sections("appliance")) room.appliances.push_back(appliance_from(appliance));
  if (const auto heating = in.sub("heating")) room.heating = heating_from(*heating);
  if (const auto top_off = in.sub("top_off")) room.top_off = top_off_from(*top_off);
  if (const auto price = in.maybe<double>("price_per_kwh")) {
    room.price = room::electricity_price{held(in, "price_per_kwh", *price, room::price_limits)};
  }
  room.heating_performance =
      held(in, "heating_performance", in.value_or<double>("heating_performance", 1.0), room::performance_limits);
  read_water_of(in, room);
  in.finish();
  in.attempt([&] { return twc::assess_room(room, stand_in()); });
  return room;
}

}  // namespace plan_file
