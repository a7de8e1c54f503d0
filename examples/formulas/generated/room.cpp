// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#include "room.hpp"

namespace tankwright_formulas {

namespace {
constexpr std::string_view words_of_room_evaporation_law[] = {"shah", "ashrae_quiet", "ashrae_in_use", "carrier", "smith_1993", "smith_1994", "smith_1998", "vdi_2089_still", "vdi_2089_covered", "vdi_2089_private", "vdi_1994", "humidity_ratio_25_19", "rafferty", "pauken", "box", "biasin_krumme", "iso_12596", "analogy"};
}  // namespace
::tankwright::room::evaporation_law io<::tankwright::room::evaporation_law>::read(const given& in) { return static_cast<::tankwright::room::evaporation_law>(in.word(words_of_room_evaporation_law)); }
void io<::tankwright::room::evaporation_law>::write(answer& out, const ::tankwright::room::evaporation_law& v) { out.text(words_of_room_evaporation_law[static_cast<std::size_t>(v)]); }

::tankwright::room::agitation io<::tankwright::room::agitation>::read(const given& in) {
  if (std::optional<::tankwright::room::agitation> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("still_surface")) return ::tankwright::room::still_surface;
  if (in.is_named("gently_moving")) return ::tankwright::room::gently_moving;
  if (in.is_named("lively")) return ::tankwright::room::lively;
  if (in.is_named("splashing")) return ::tankwright::room::splashing;
  return ::tankwright::room::agitation(io<double>::read(in));
}

::tankwright::room::electricity_price io<::tankwright::room::electricity_price>::read(const given& in) {
  if (std::optional<::tankwright::room::electricity_price> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::room::electricity_price(io<double>::read(in));
}

::tankwright::room::humidity_ratio io<::tankwright::room::humidity_ratio>::read(const given& in) {
  if (std::optional<::tankwright::room::humidity_ratio> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"grams_per_kilogram", "kilograms_per_kilogram"};
  const std::size_t way = in.way(ways, -1, -1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::room::humidity_ratio::from_grams_per_kilogram(io<double>::read(one));
    default: return ::tankwright::room::humidity_ratio::from_kilograms_per_kilogram(io<double>::read(one));
  }
}
void io<::tankwright::room::humidity_ratio>::write(answer& out, const ::tankwright::room::humidity_ratio& v) {
  out.quantity("humidity_ratio", "", tw::core::si_number(v.value()));
}

::tankwright::room::volumetric_heat io<::tankwright::room::volumetric_heat>::read(const given& in) {
  if (std::optional<::tankwright::room::volumetric_heat> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("heat_of_glass")) return ::tankwright::room::heat_of_glass;
  if (in.is_named("heat_of_acrylic")) return ::tankwright::room::heat_of_acrylic;
  if (in.is_named("heat_of_plywood")) return ::tankwright::room::heat_of_plywood;
  if (in.is_named("heat_of_glass_fibre")) return ::tankwright::room::heat_of_glass_fibre;
  if (in.is_named("heat_of_polystyrene")) return ::tankwright::room::heat_of_polystyrene;
  return ::tankwright::room::volumetric_heat(io<double>::read(in));
}

::tankwright::room::air io<::tankwright::room::air>::read(const given& in) {
  if (std::optional<::tankwright::room::air> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::air io<::tankwright::room::air>::fields(const given& in) {
  static constexpr std::string_view known[] = {"temperature", "humidity", "pressure"};
  in.only(known);
  ::tankwright::room::air v{.temperature = must<::tankwright::temperature>(in, "temperature"), .humidity = must<::tankwright::relative_humidity>(in, "humidity")};
  if (in.has("pressure")) v.pressure = must<::tankwright::absolute_pressure>(in, "pressure");
  return v;
}
void io<::tankwright::room::air>::write(answer& out, const ::tankwright::room::air& v) {
  out.begin();
  out.key("temperature");
  io<::tankwright::temperature>::write(out, v.temperature);
  out.key("humidity");
  io<::tankwright::relative_humidity>::write(out, v.humidity);
  out.key("pressure");
  io<::tankwright::absolute_pressure>::write(out, v.pressure);
  out.end();
}
void io<::tankwright::room::air>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::air v{.temperature = io<::tankwright::temperature>::take(zero), .humidity = io<::tankwright::relative_humidity>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::absolute_pressure>::put(v.pressure, at);
}

::tankwright::room::air_of_dew_point io<::tankwright::room::air_of_dew_point>::read(const given& in) {
  if (std::optional<::tankwright::room::air_of_dew_point> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::air_of_dew_point io<::tankwright::room::air_of_dew_point>::fields(const given& in) {
  static constexpr std::string_view known[] = {"temperature", "dew_point", "pressure"};
  in.only(known);
  ::tankwright::room::air_of_dew_point v{.temperature = must<::tankwright::temperature>(in, "temperature"), .dew_point = must<::tankwright::temperature>(in, "dew_point")};
  if (in.has("pressure")) v.pressure = must<::tankwright::absolute_pressure>(in, "pressure");
  return v;
}
void io<::tankwright::room::air_of_dew_point>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::air_of_dew_point v{.temperature = io<::tankwright::temperature>::take(zero), .dew_point = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::absolute_pressure>::put(v.pressure, at);
}

::tankwright::room::air_of_humidity_ratio io<::tankwright::room::air_of_humidity_ratio>::read(const given& in) {
  if (std::optional<::tankwright::room::air_of_humidity_ratio> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::air_of_humidity_ratio io<::tankwright::room::air_of_humidity_ratio>::fields(const given& in) {
  static constexpr std::string_view known[] = {"temperature", "ratio", "pressure"};
  in.only(known);
  ::tankwright::room::air_of_humidity_ratio v{.temperature = must<::tankwright::temperature>(in, "temperature"), .ratio = must<::tankwright::room::humidity_ratio>(in, "ratio")};
  if (in.has("pressure")) v.pressure = must<::tankwright::absolute_pressure>(in, "pressure");
  return v;
}

::tankwright::room::air_of_wet_bulb io<::tankwright::room::air_of_wet_bulb>::read(const given& in) {
  if (std::optional<::tankwright::room::air_of_wet_bulb> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::air_of_wet_bulb io<::tankwright::room::air_of_wet_bulb>::fields(const given& in) {
  static constexpr std::string_view known[] = {"temperature", "wet_bulb", "pressure"};
  in.only(known);
  ::tankwright::room::air_of_wet_bulb v{.temperature = must<::tankwright::temperature>(in, "temperature"), .wet_bulb = must<::tankwright::temperature>(in, "wet_bulb")};
  if (in.has("pressure")) v.pressure = must<::tankwright::absolute_pressure>(in, "pressure");
  return v;
}
void io<::tankwright::room::air_of_wet_bulb>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::air_of_wet_bulb v{.temperature = io<::tankwright::temperature>::take(zero), .wet_bulb = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::absolute_pressure>::put(v.pressure, at);
}

::tankwright::room::building_element io<::tankwright::room::building_element>::read(const given& in) {
  if (std::optional<::tankwright::room::building_element> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::building_element io<::tankwright::room::building_element>::fields(const given& in) {
  static constexpr std::string_view known[] = {"transmittance", "inside", "outside", "surface_resistance"};
  in.only(known);
  ::tankwright::room::building_element v{.transmittance = must<::tankwright::thermal_transmittance>(in, "transmittance"), .inside = must<::tankwright::temperature>(in, "inside"), .outside = must<::tankwright::temperature>(in, "outside")};
  if (in.has("surface_resistance")) v.surface_resistance = must<::tankwright::thermal_resistance>(in, "surface_resistance");
  return v;
}
void io<::tankwright::room::building_element>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::building_element v{.transmittance = io<::tankwright::thermal_transmittance>::take(zero), .inside = io<::tankwright::temperature>::take(zero), .outside = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::thermal_resistance>::put(v.surface_resistance, at);
}

::tankwright::room::rating_point io<::tankwright::room::rating_point>::read(const given& in) {
  if (std::optional<::tankwright::room::rating_point> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("rated_80F_60")) return ::tankwright::room::rated_80F_60;
  if (in.is_named("rated_73F_60")) return ::tankwright::room::rated_73F_60;
  if (in.is_named("rated_65F_60")) return ::tankwright::room::rated_65F_60;
  if (in.is_named("rated_30C_80")) return ::tankwright::room::rated_30C_80;
  static constexpr std::string_view known[] = {"rated_80F_60", "rated_73F_60", "rated_65F_60", "rated_30C_80"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::room::rating_point io<::tankwright::room::rating_point>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "temperature", "humidity", "share"};
  in.only(known);
  ::tankwright::room::rating_point v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .temperature = must<::tankwright::temperature>(in, "temperature"), .humidity = must<::tankwright::relative_humidity>(in, "humidity")};
  if (in.has("share")) v.share = must<double>(in, "share");
  return v;
}

::tankwright::room::dehumidifier io<::tankwright::room::dehumidifier>::read(const given& in) {
  if (std::optional<::tankwright::room::dehumidifier> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::dehumidifier io<::tankwright::room::dehumidifier>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "capacity", "rated_at", "electrical"};
  in.only(known);
  ::tankwright::room::dehumidifier v{.capacity = must<::tankwright::mass_flow>(in, "capacity")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("rated_at")) v.rated_at = must<::tankwright::room::rating_point>(in, "rated_at");
  if (in.has("electrical")) v.electrical = must<::tankwright::power>(in, "electrical");
  return v;
}

::tankwright::room::controlled_dehumidifier io<::tankwright::room::controlled_dehumidifier>::read(const given& in) {
  if (std::optional<::tankwright::room::controlled_dehumidifier> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::controlled_dehumidifier io<::tankwright::room::controlled_dehumidifier>::fields(const given& in) {
  static constexpr std::string_view known[] = {"machine", "set_point"};
  in.only(known);
  const ::tankwright::room::controlled_dehumidifier v{.machine = must<::tankwright::room::dehumidifier>(in, "machine"), .set_point = must<::tankwright::relative_humidity>(in, "set_point")};
  return v;
}

::tankwright::room::cover_material io<::tankwright::room::cover_material>::read(const given& in) {
  if (std::optional<::tankwright::room::cover_material> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("rigid_lid")) return ::tankwright::room::rigid_lid;
  if (in.is_named("foam_cover")) return ::tankwright::room::foam_cover;
  if (in.is_named("bubble_cover")) return ::tankwright::room::bubble_cover;
  if (in.is_named("track_cover")) return ::tankwright::room::track_cover;
  if (in.is_named("floating_discs")) return ::tankwright::room::floating_discs;
  if (in.is_named("liquid_monolayer")) return ::tankwright::room::liquid_monolayer;
  static constexpr std::string_view known[] = {"rigid_lid", "foam_cover", "bubble_cover", "track_cover", "floating_discs", "liquid_monolayer"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::room::cover_material io<::tankwright::room::cover_material>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "effectiveness"};
  in.only(known);
  const ::tankwright::room::cover_material v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .effectiveness = must<::tankwright::proportion>(in, "effectiveness")};
  return v;
}

void io<::tankwright::room::dehumidifier_duty>::write(answer& out, const ::tankwright::room::dehumidifier_duty& v) {
  out.begin();
  out.key("removal");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.removal);
  out.key("electrical");
  io<::tankwright::power>::write(out, v.electrical);
  out.key("heat_to_room");
  io<::tankwright::estimate<::tankwright::power>>::write(out, v.heat_to_room);
  out.end();
}

void io<::tankwright::room::dehumidifier_size>::write(answer& out, const ::tankwright::room::dehumidifier_size& v) {
  out.begin();
  out.key("load");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.load);
  out.key("rated");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.rated);
  out.key("share_of_label");
  io<::tankwright::estimate<double>>::write(out, v.share_of_label);
  out.key("suggested");
  io<::tankwright::mass_flow>::write(out, v.suggested);
  out.key("latent_heat_to_room");
  io<::tankwright::estimate<::tankwright::power>>::write(out, v.latent_heat_to_room);
  out.key("needed");
  io<bool>::write(out, v.needed);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::room::running_cost_result>::write(answer& out, const ::tankwright::room::running_cost_result& v) {
  out.begin();
  out.key("per_day");
  io<::tankwright::estimate<::tankwright::energy>>::write(out, v.per_day);
  out.key("per_year");
  io<::tankwright::estimate<::tankwright::energy>>::write(out, v.per_year);
  out.key("cost_per_day");
  io<::tankwright::estimate<double>>::write(out, v.cost_per_day);
  out.key("cost_per_year");
  io<::tankwright::estimate<double>>::write(out, v.cost_per_year);
  out.end();
}

void io<::tankwright::room::device_cost>::write(answer& out, const ::tankwright::room::device_cost& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("cost");
  io<::tankwright::room::running_cost_result>::write(out, v.cost);
  out.end();
}

::tankwright::room::drifting_room io<::tankwright::room::drifting_room>::read(const given& in) {
  if (std::optional<::tankwright::room::drifting_room> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::drifting_room io<::tankwright::room::drifting_room>::fields(const given& in) {
  static constexpr std::string_view known[] = {"settles_at", "time_constant"};
  in.only(known);
  const ::tankwright::room::drifting_room v{.settles_at = must<::tankwright::temperature>(in, "settles_at"), .time_constant = must<::tankwright::duration>(in, "time_constant")};
  return v;
}
void io<::tankwright::room::drifting_room>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::room::tank_water io<::tankwright::room::tank_water>::read(const given& in) {
  if (std::optional<::tankwright::room::tank_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::tank_water io<::tankwright::room::tank_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"temperature", "salinity"};
  in.only(known);
  const ::tankwright::room::tank_water v{.temperature = must<::tankwright::temperature>(in, "temperature"), .salinity = must<::tankwright::practical_salinity>(in, "salinity")};
  return v;
}
void io<::tankwright::room::tank_water>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::room::wet_surface io<::tankwright::room::wet_surface>::read(const given& in) {
  if (std::optional<::tankwright::room::wet_surface> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::wet_surface io<::tankwright::room::wet_surface>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "area", "agitation", "air_speed", "covered", "cover"};
  in.only(known);
  ::tankwright::room::wet_surface v{.area = must<::tankwright::area>(in, "area")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("agitation")) v.agitation = must<::tankwright::room::agitation>(in, "agitation");
  if (in.has("air_speed")) v.air_speed = must<::tankwright::velocity>(in, "air_speed");
  if (in.has("covered")) v.covered = must<::tankwright::proportion>(in, "covered");
  if (in.has("cover")) v.cover = must<::tankwright::room::cover_material>(in, "cover");
  return v;
}

::tankwright::room::evaporating_water io<::tankwright::room::evaporating_water>::read(const given& in) {
  if (std::optional<::tankwright::room::evaporating_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::evaporating_water io<::tankwright::room::evaporating_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"water", "air", "surfaces"};
  in.only(known);
  const ::tankwright::room::evaporating_water v{.water = must<::tankwright::room::tank_water>(in, "water"), .air = must<::tankwright::room::air>(in, "air"), .surfaces = may_or<std::vector<::tankwright::room::wet_surface>>(in, "surfaces", [] { return std::vector<::tankwright::room::wet_surface>{}; })};
  return v;
}

void io<::tankwright::room::surface_evaporation>::write(answer& out, const ::tankwright::room::surface_evaporation& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("rate");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.rate);
  out.key("per_area");
  io<::tankwright::estimate<::tankwright::mass_flux>>::write(out, v.per_area);
  out.end();
}

void io<::tankwright::room::evaporation_estimate>::write(answer& out, const ::tankwright::room::evaporation_estimate& v) {
  out.begin();
  out.key("rate");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.rate);
  out.key("surfaces");
  io<std::vector<::tankwright::room::surface_evaporation>>::write(out, v.surfaces);
  out.key("condenses");
  io<bool>::write(out, v.condenses);
  out.end();
}

void io<::tankwright::room::evaporation_law_data>::write(answer& out, const ::tankwright::room::evaporation_law_data& v) {
  out.begin();
  out.key("law");
  io<::tankwright::room::evaporation_law>::write(out, v.law);
  out.key("name");
  io<std::string_view>::write(out, v.name);
  out.key("formula");
  io<std::string_view>::write(out, v.formula);
  out.key("source");
  io<::tankwright::citation>::write(out, v.source);
  out.key("water_celsius");
  io<::tankwright::interval>::write(out, v.water_celsius);
  out.key("air_celsius");
  io<::tankwright::interval>::write(out, v.air_celsius);
  out.key("humidity");
  io<::tankwright::interval>::write(out, v.humidity);
  out.key("speed");
  io<::tankwright::interval>::write(out, v.speed);
  out.end();
}

void io<::tankwright::room::heat_budget>::write(answer& out, const ::tankwright::room::heat_budget& v) {
  out.begin();
  out.key("evaporation");
  io<::tankwright::estimate<::tankwright::power>>::write(out, v.evaporation);
  out.key("convection");
  io<::tankwright::estimate<::tankwright::power>>::write(out, v.convection);
  out.key("make_up");
  io<::tankwright::estimate<::tankwright::power>>::write(out, v.make_up);
  out.key("radiation");
  io<::tankwright::power>::write(out, v.radiation);
  out.key("covers");
  io<::tankwright::power>::write(out, v.covers);
  out.key("walls");
  io<::tankwright::power>::write(out, v.walls);
  out.key("gains");
  io<::tankwright::power>::write(out, v.gains);
  out.key("net");
  io<::tankwright::estimate<::tankwright::power>>::write(out, v.net);
  out.end();
}

void io<::tankwright::room::heat_equipment>::write(answer& out, const ::tankwright::room::heat_equipment& v) {
  out.begin();
  out.key("needed");
  io<::tankwright::estimate<::tankwright::power>>::write(out, v.needed);
  out.key("suggested");
  io<::tankwright::power>::write(out, v.suggested);
  out.key("is_needed");
  io<bool>::write(out, v.is_needed);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::room::heat_source io<::tankwright::room::heat_source>::read(const given& in) {
  if (std::optional<::tankwright::room::heat_source> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::heat_source io<::tankwright::room::heat_source>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "heat"};
  in.only(known);
  ::tankwright::room::heat_source v{.heat = must<::tankwright::power>(in, "heat")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::room::ventilated_room io<::tankwright::room::ventilated_room>::read(const given& in) {
  if (std::optional<::tankwright::room::ventilated_room> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::ventilated_room io<::tankwright::room::ventilated_room>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "air_changes", "temperature", "outdoor"};
  in.only(known);
  const ::tankwright::room::ventilated_room v{.volume = must<::tankwright::volume>(in, "volume"), .air_changes = must<::tankwright::rate>(in, "air_changes"), .temperature = must<::tankwright::temperature>(in, "temperature"), .outdoor = must<::tankwright::room::air>(in, "outdoor")};
  return v;
}
void io<::tankwright::room::ventilated_room>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::room::air>::defaults(at);
}

::tankwright::room::moisture_source io<::tankwright::room::moisture_source>::read(const given& in) {
  if (std::optional<::tankwright::room::moisture_source> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::moisture_source io<::tankwright::room::moisture_source>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "rate"};
  in.only(known);
  ::tankwright::room::moisture_source v{.rate = must<::tankwright::mass_flow>(in, "rate")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::room::tank_room io<::tankwright::room::tank_room>::read(const given& in) {
  if (std::optional<::tankwright::room::tank_room> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::tank_room io<::tankwright::room::tank_room>::fields(const given& in) {
  static constexpr std::string_view known[] = {"room", "water", "surfaces", "sources", "dehumidifier"};
  in.only(known);
  ::tankwright::room::tank_room v{.room = must<::tankwright::room::ventilated_room>(in, "room"), .water = must<::tankwright::room::tank_water>(in, "water"), .surfaces = may_or<std::vector<::tankwright::room::wet_surface>>(in, "surfaces", [] { return std::vector<::tankwright::room::wet_surface>{}; })};
  if (in.has("sources")) v.sources = must<std::vector<::tankwright::room::moisture_source>>(in, "sources");
  if (in.has("dehumidifier")) v.dehumidifier = must<std::optional<::tankwright::room::controlled_dehumidifier>>(in, "dehumidifier");
  return v;
}

::tankwright::room::humidity_course_request io<::tankwright::room::humidity_course_request>::read(const given& in) {
  if (std::optional<::tankwright::room::humidity_course_request> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::humidity_course_request io<::tankwright::room::humidity_course_request>::fields(const given& in) {
  static constexpr std::string_view known[] = {"room", "start", "time", "step"};
  in.only(known);
  ::tankwright::room::humidity_course_request v{.room = must<::tankwright::room::tank_room>(in, "room"), .start = must<::tankwright::relative_humidity>(in, "start"), .time = must<::tankwright::duration>(in, "time")};
  if (in.has("step")) v.step = must<::tankwright::duration>(in, "step");
  return v;
}

void io<::tankwright::room::humidity_point>::write(answer& out, const ::tankwright::room::humidity_point& v) {
  out.begin();
  out.key("time");
  io<::tankwright::duration>::write(out, v.time);
  out.key("air");
  io<::tankwright::room::air>::write(out, v.air);
  out.key("vapour");
  io<::tankwright::mass>::write(out, v.vapour);
  out.key("evaporated");
  io<::tankwright::mass>::write(out, v.evaporated);
  out.key("from_sources");
  io<::tankwright::mass>::write(out, v.from_sources);
  out.key("ventilated");
  io<::tankwright::mass>::write(out, v.ventilated);
  out.key("dehumidified");
  io<::tankwright::mass>::write(out, v.dehumidified);
  out.key("condensed");
  io<::tankwright::mass>::write(out, v.condensed);
  out.end();
}

::tankwright::room::humidity_start io<::tankwright::room::humidity_start>::read(const given& in) {
  if (std::optional<::tankwright::room::humidity_start> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::humidity_start io<::tankwright::room::humidity_start>::fields(const given& in) {
  static constexpr std::string_view known[] = {"ratio", "dry_air", "time"};
  in.only(known);
  const ::tankwright::room::humidity_start v{.ratio = must<::tankwright::room::humidity_ratio>(in, "ratio"), .dry_air = must<::tankwright::mass>(in, "dry_air"), .time = must<::tankwright::duration>(in, "time")};
  return v;
}

::tankwright::room::lamp_over_water io<::tankwright::room::lamp_over_water>::read(const given& in) {
  if (std::optional<::tankwright::room::lamp_over_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::lamp_over_water io<::tankwright::room::lamp_over_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"height", "depth", "through_a_metre", "index"};
  in.only(known);
  ::tankwright::room::lamp_over_water v{.height = must<::tankwright::length>(in, "height"), .depth = must<::tankwright::length>(in, "depth")};
  if (in.has("through_a_metre")) v.through_a_metre = must<::tankwright::proportion>(in, "through_a_metre");
  if (in.has("index")) v.index = must<::tankwright::water::refractive_index>(in, "index");
  return v;
}
void io<::tankwright::room::lamp_over_water>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::lamp_over_water v{.height = io<::tankwright::length>::take(zero), .depth = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::proportion>::put(v.through_a_metre, at);
  io<::tankwright::water::refractive_index>::put(v.index, at);
}

::tankwright::room::wall_layer io<::tankwright::room::wall_layer>::read(const given& in) {
  if (std::optional<::tankwright::room::wall_layer> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::wall_layer io<::tankwright::room::wall_layer>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "thickness", "conductivity"};
  in.only(known);
  ::tankwright::room::wall_layer v{.thickness = must<::tankwright::length>(in, "thickness"), .conductivity = must<::tankwright::thermal_conductivity>(in, "conductivity")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::room::layered_wall io<::tankwright::room::layered_wall>::read(const given& in) {
  if (std::optional<::tankwright::room::layered_wall> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::layered_wall io<::tankwright::room::layered_wall>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "layers", "inside", "outside"};
  in.only(known);
  ::tankwright::room::layered_wall v{.layers = may_or<std::vector<::tankwright::room::wall_layer>>(in, "layers", [] { return std::vector<::tankwright::room::wall_layer>{}; })};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("inside")) v.inside = must<::tankwright::thermal_transmittance>(in, "inside");
  if (in.has("outside")) v.outside = must<::tankwright::thermal_transmittance>(in, "outside");
  return v;
}

::tankwright::room::linear_warm_up io<::tankwright::room::linear_warm_up>::read(const given& in) {
  if (std::optional<::tankwright::room::linear_warm_up> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::linear_warm_up io<::tankwright::room::linear_warm_up>::fields(const given& in) {
  static constexpr std::string_view known[] = {"heat_capacity", "from", "to", "heater", "loss", "stands_at"};
  in.only(known);
  ::tankwright::room::linear_warm_up v{.heat_capacity = must<::tankwright::heat_capacity>(in, "heat_capacity"), .from = must<::tankwright::temperature>(in, "from"), .to = must<::tankwright::temperature>(in, "to"), .heater = must<::tankwright::power>(in, "heater")};
  if (in.has("loss")) v.loss = must<::tankwright::heat_loss_coefficient>(in, "loss");
  if (in.has("stands_at")) v.stands_at = must<::tankwright::temperature>(in, "stands_at");
  return v;
}
void io<::tankwright::room::linear_warm_up>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::linear_warm_up v{.heat_capacity = io<::tankwright::heat_capacity>::take(zero), .from = io<::tankwright::temperature>::take(zero), .to = io<::tankwright::temperature>::take(zero), .heater = io<::tankwright::power>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::heat_loss_coefficient>::put(v.loss, at);
  io<::tankwright::temperature>::put(v.stands_at, at);
}

void io<::tankwright::room::moisture_balance>::write(answer& out, const ::tankwright::room::moisture_balance& v) {
  out.begin();
  out.key("air");
  io<::tankwright::room::air>::write(out, v.air);
  out.key("evaporation");
  io<::tankwright::mass_flow>::write(out, v.evaporation);
  out.key("sources");
  io<::tankwright::mass_flow>::write(out, v.sources);
  out.key("ventilation");
  io<::tankwright::mass_flow>::write(out, v.ventilation);
  out.key("dehumidified");
  io<::tankwright::mass_flow>::write(out, v.dehumidified);
  out.key("condensing");
  io<::tankwright::mass_flow>::write(out, v.condensing);
  out.key("duty");
  io<::tankwright::proportion>::write(out, v.duty);
  out.key("saturated");
  io<bool>::write(out, v.saturated);
  out.end();
}

::tankwright::room::open_water io<::tankwright::room::open_water>::read(const given& in) {
  if (std::optional<::tankwright::room::open_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::open_water io<::tankwright::room::open_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"water", "air", "air_speed"};
  in.only(known);
  ::tankwright::room::open_water v{.water = must<::tankwright::room::tank_water>(in, "water"), .air = must<::tankwright::room::air>(in, "air")};
  if (in.has("air_speed")) v.air_speed = must<::tankwright::velocity>(in, "air_speed");
  return v;
}
void io<::tankwright::room::open_water>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::open_water v{.water = io<::tankwright::room::tank_water>::take(zero), .air = io<::tankwright::room::air>::take(zero)};
  io<::tankwright::room::tank_water>::defaults(at);
  io<::tankwright::room::air>::defaults(at);
  io<::tankwright::velocity>::put(v.air_speed, at);
}

::tankwright::room::plugged_in io<::tankwright::room::plugged_in>::read(const given& in) {
  if (std::optional<::tankwright::room::plugged_in> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::plugged_in io<::tankwright::room::plugged_in>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "draws", "power_factor"};
  in.only(known);
  ::tankwright::room::plugged_in v{.draws = must<::tankwright::power>(in, "draws")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("power_factor")) v.power_factor = must<double>(in, "power_factor");
  return v;
}

void io<::tankwright::room::reservoir_limit>::write(answer& out, const ::tankwright::room::reservoir_limit& v) {
  out.begin();
  out.key("largest");
  io<::tankwright::volume>::write(out, v.largest);
  out.key("governed_by");
  io<std::string_view>::write(out, v.governed_by);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::room::reservoir_request io<::tankwright::room::reservoir_request>::read(const given& in) {
  if (std::optional<::tankwright::room::reservoir_request> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::reservoir_request io<::tankwright::room::reservoir_request>::fields(const given& in) {
  static constexpr std::string_view known[] = {"water", "volume", "lowest", "free_volume", "fresh_water"};
  in.only(known);
  ::tankwright::room::reservoir_request v{.water = must<::tankwright::room::tank_water>(in, "water"), .volume = must<::tankwright::volume>(in, "volume"), .lowest = must<::tankwright::practical_salinity>(in, "lowest"), .free_volume = must<::tankwright::volume>(in, "free_volume")};
  if (in.has("fresh_water")) v.fresh_water = must<::tankwright::temperature>(in, "fresh_water");
  return v;
}
void io<::tankwright::room::reservoir_request>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::reservoir_request v{.water = io<::tankwright::room::tank_water>::take(zero), .volume = io<::tankwright::volume>::take(zero), .lowest = io<::tankwright::practical_salinity>::take(zero), .free_volume = io<::tankwright::volume>::take(zero)};
  io<::tankwright::room::tank_water>::defaults(at);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::temperature>::put(v.fresh_water, at);
}

::tankwright::room::return_chamber io<::tankwright::room::return_chamber>::read(const given& in) {
  if (std::optional<::tankwright::room::return_chamber> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::return_chamber io<::tankwright::room::return_chamber>::fields(const given& in) {
  static constexpr std::string_view known[] = {"surface", "top_off", "running_level", "lowest_level"};
  in.only(known);
  const ::tankwright::room::return_chamber v{.surface = must<::tankwright::area>(in, "surface"), .top_off = must<::tankwright::estimate<::tankwright::flow_rate>>(in, "top_off"), .running_level = must<::tankwright::length>(in, "running_level"), .lowest_level = must<::tankwright::length>(in, "lowest_level")};
  return v;
}
void io<::tankwright::room::return_chamber>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 3);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::room::return_chamber_result>::write(answer& out, const ::tankwright::room::return_chamber_result& v) {
  out.begin();
  out.key("fall");
  io<::tankwright::estimate<::tankwright::velocity>>::write(out, v.fall);
  out.key("until_lowest");
  io<::tankwright::estimate<::tankwright::duration>>::write(out, v.until_lowest);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::room::room_humidity>::write(answer& out, const ::tankwright::room::room_humidity& v) {
  out.begin();
  out.key("low");
  io<::tankwright::room::moisture_balance>::write(out, v.low);
  out.key("central");
  io<::tankwright::room::moisture_balance>::write(out, v.central);
  out.key("high");
  io<::tankwright::room::moisture_balance>::write(out, v.high);
  out.key("reason");
  io<std::string_view>::write(out, v.reason);
  out.key("within_data");
  io<bool>::write(out, v.within_data);
  out.key("set_point_kept");
  io<bool>::write(out, v.set_point_kept);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::room::running_costs_result>::write(answer& out, const ::tankwright::room::running_costs_result& v) {
  out.begin();
  out.key("devices");
  io<std::vector<::tankwright::room::device_cost>>::write(out, v.devices);
  out.key("all");
  io<::tankwright::room::running_cost_result>::write(out, v.all);
  out.end();
}

::tankwright::room::running_device io<::tankwright::room::running_device>::read(const given& in) {
  if (std::optional<::tankwright::room::running_device> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::running_device io<::tankwright::room::running_device>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "draws", "on"};
  in.only(known);
  ::tankwright::room::running_device v{.draws = must<::tankwright::estimate<::tankwright::power>>(in, "draws")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("on")) v.on = must<::tankwright::proportion>(in, "on");
  return v;
}

::tankwright::room::running_load io<::tankwright::room::running_load>::read(const given& in) {
  if (std::optional<::tankwright::room::running_load> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::running_load io<::tankwright::room::running_load>::fields(const given& in) {
  static constexpr std::string_view known[] = {"heat", "price", "performance", "on"};
  in.only(known);
  ::tankwright::room::running_load v{.heat = must<::tankwright::estimate<::tankwright::power>>(in, "heat"), .price = must<::tankwright::room::electricity_price>(in, "price")};
  if (in.has("performance")) v.performance = must<double>(in, "performance");
  if (in.has("on")) v.on = must<::tankwright::proportion>(in, "on");
  return v;
}
void io<::tankwright::room::running_load>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::running_load v{.heat = io<::tankwright::estimate<::tankwright::power>>::take(zero), .price = io<::tankwright::room::electricity_price>::take(zero)};
  not_given(at, 3);
  not_given(at, 1);
  io<double>::put(v.performance, at);
  io<::tankwright::proportion>::put(v.on, at);
}

::tankwright::room::stored_energy io<::tankwright::room::stored_energy>::read(const given& in) {
  if (std::optional<::tankwright::room::stored_energy> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::stored_energy io<::tankwright::room::stored_energy>::fields(const given& in) {
  static constexpr std::string_view known[] = {"capacity", "usable", "inverter"};
  in.only(known);
  ::tankwright::room::stored_energy v{.capacity = must<::tankwright::energy>(in, "capacity")};
  if (in.has("usable")) v.usable = must<::tankwright::proportion>(in, "usable");
  if (in.has("inverter")) v.inverter = must<::tankwright::proportion>(in, "inverter");
  return v;
}
void io<::tankwright::room::stored_energy>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::room::stored_energy v{.capacity = io<::tankwright::energy>::take(zero)};
  not_given(at, 1);
  io<::tankwright::proportion>::put(v.usable, at);
  io<::tankwright::proportion>::put(v.inverter, at);
}

::tankwright::room::tank_wall io<::tankwright::room::tank_wall>::read(const given& in) {
  if (std::optional<::tankwright::room::tank_wall> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::tank_wall io<::tankwright::room::tank_wall>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "area", "transmittance", "outside"};
  in.only(known);
  ::tankwright::room::tank_wall v{.area = must<::tankwright::area>(in, "area"), .transmittance = must<::tankwright::thermal_transmittance>(in, "transmittance")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("outside")) v.outside = must<std::optional<::tankwright::temperature>>(in, "outside");
  return v;
}

::tankwright::room::tank_heat io<::tankwright::room::tank_heat>::read(const given& in) {
  if (std::optional<::tankwright::room::tank_heat> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::tank_heat io<::tankwright::room::tank_heat>::fields(const given& in) {
  static constexpr std::string_view known[] = {"water", "air", "surfaces", "walls", "sources", "surroundings", "make_up"};
  in.only(known);
  ::tankwright::room::tank_heat v{.water = must<::tankwright::room::tank_water>(in, "water"), .air = must<::tankwright::room::air>(in, "air"), .surfaces = may_or<std::vector<::tankwright::room::wet_surface>>(in, "surfaces", [] { return std::vector<::tankwright::room::wet_surface>{}; })};
  if (in.has("walls")) v.walls = must<std::vector<::tankwright::room::tank_wall>>(in, "walls");
  if (in.has("sources")) v.sources = must<std::vector<::tankwright::room::heat_source>>(in, "sources");
  if (in.has("surroundings")) v.surroundings = must<std::optional<::tankwright::temperature>>(in, "surroundings");
  if (in.has("make_up")) v.make_up = must<std::optional<::tankwright::temperature>>(in, "make_up");
  return v;
}

::tankwright::room::stuck_heater io<::tankwright::room::stuck_heater>::read(const given& in) {
  if (std::optional<::tankwright::room::stuck_heater> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::stuck_heater io<::tankwright::room::stuck_heater>::fields(const given& in) {
  static constexpr std::string_view known[] = {"tank", "heat_capacity", "heater", "highest", "within"};
  in.only(known);
  ::tankwright::room::stuck_heater v{.tank = must<::tankwright::room::tank_heat>(in, "tank"), .heat_capacity = must<::tankwright::heat_capacity>(in, "heat_capacity"), .heater = must<::tankwright::power>(in, "heater"), .highest = must<::tankwright::temperature>(in, "highest")};
  if (in.has("within")) v.within = must<::tankwright::duration>(in, "within");
  return v;
}

void io<::tankwright::room::temperature_crossing>::write(answer& out, const ::tankwright::room::temperature_crossing& v) {
  out.begin();
  out.key("soonest");
  io<std::optional<::tankwright::duration>>::write(out, v.soonest);
  out.key("expected");
  io<std::optional<::tankwright::duration>>::write(out, v.expected);
  out.key("latest");
  io<std::optional<::tankwright::duration>>::write(out, v.latest);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::room::stuck_heater_result>::write(answer& out, const ::tankwright::room::stuck_heater_result& v) {
  out.begin();
  out.key("reaches_highest");
  io<::tankwright::room::temperature_crossing>::write(out, v.reaches_highest);
  out.key("settles_at");
  io<std::optional<::tankwright::estimate<::tankwright::temperature>>>::write(out, v.settles_at);
  out.key("in_an_hour");
  io<::tankwright::estimate<::tankwright::temperature_difference>>::write(out, v.in_an_hour);
  out.key("in_a_day");
  io<::tankwright::estimate<::tankwright::temperature_difference>>::write(out, v.in_a_day);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::room::stuck_valve_result>::write(answer& out, const ::tankwright::room::stuck_valve_result& v) {
  out.begin();
  out.key("salinity");
  io<::tankwright::practical_salinity>::write(out, v.salinity);
  out.key("overflow");
  io<::tankwright::volume>::write(out, v.overflow);
  out.key("too_fresh");
  io<bool>::write(out, v.too_fresh);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::room::surface_verdict>::write(answer& out, const ::tankwright::room::surface_verdict& v) {
  out.begin();
  out.key("surface");
  io<::tankwright::temperature>::write(out, v.surface);
  out.key("dew_point");
  io<::tankwright::temperature>::write(out, v.dew_point);
  out.key("margin");
  io<::tankwright::temperature_difference>::write(out, v.margin);
  out.key("humidity");
  io<::tankwright::relative_humidity>::write(out, v.humidity);
  out.key("drips");
  io<bool>::write(out, v.drips);
  out.key("mould");
  io<bool>::write(out, v.mould);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::room::temperature_change>::write(answer& out, const ::tankwright::room::temperature_change& v) {
  out.begin();
  out.key("largest");
  io<::tankwright::estimate<::tankwright::temperature_difference>>::write(out, v.largest);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::room::temperature_point>::write(answer& out, const ::tankwright::room::temperature_point& v) {
  out.begin();
  out.key("time");
  io<::tankwright::duration>::write(out, v.time);
  out.key("water");
  io<::tankwright::estimate<::tankwright::temperature>>::write(out, v.water);
  out.end();
}

void io<::tankwright::room::temperature_course>::write(answer& out, const ::tankwright::room::temperature_course& v) {
  out.begin();
  out.key("points");
  io<std::vector<::tankwright::room::temperature_point>>::write(out, v.points);
  out.key("settles_at");
  io<std::optional<::tankwright::estimate<::tankwright::temperature>>>::write(out, v.settles_at);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::room::uncontrolled_tank io<::tankwright::room::uncontrolled_tank>::read(const given& in) {
  if (std::optional<::tankwright::room::uncontrolled_tank> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::uncontrolled_tank io<::tankwright::room::uncontrolled_tank>::fields(const given& in) {
  static constexpr std::string_view known[] = {"tank", "heat_capacity", "room"};
  in.only(known);
  ::tankwright::room::uncontrolled_tank v{.tank = must<::tankwright::room::tank_heat>(in, "tank"), .heat_capacity = must<::tankwright::heat_capacity>(in, "heat_capacity")};
  if (in.has("room")) v.room = must<std::optional<::tankwright::room::drifting_room>>(in, "room");
  return v;
}

void io<::tankwright::room::ventilation_size>::write(answer& out, const ::tankwright::room::ventilation_size& v) {
  out.begin();
  out.key("air_changes");
  io<::tankwright::estimate<::tankwright::rate>>::write(out, v.air_changes);
  out.key("outdoor_air");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.outdoor_air);
  out.key("dry_air");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.dry_air);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::room::warm_sheet io<::tankwright::room::warm_sheet>::read(const given& in) {
  if (std::optional<::tankwright::room::warm_sheet> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::warm_sheet io<::tankwright::room::warm_sheet>::fields(const given& in) {
  static constexpr std::string_view known[] = {"area", "thickness", "heat"};
  in.only(known);
  const ::tankwright::room::warm_sheet v{.area = must<::tankwright::area>(in, "area"), .thickness = must<::tankwright::length>(in, "thickness"), .heat = must<::tankwright::room::volumetric_heat>(in, "heat")};
  return v;
}
void io<::tankwright::room::warm_sheet>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::room::warm_up_request io<::tankwright::room::warm_up_request>::read(const given& in) {
  if (std::optional<::tankwright::room::warm_up_request> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::warm_up_request io<::tankwright::room::warm_up_request>::fields(const given& in) {
  static constexpr std::string_view known[] = {"tank", "heat_capacity", "target", "heater"};
  in.only(known);
  const ::tankwright::room::warm_up_request v{.tank = must<::tankwright::room::tank_heat>(in, "tank"), .heat_capacity = must<::tankwright::heat_capacity>(in, "heat_capacity"), .target = must<::tankwright::temperature>(in, "target"), .heater = must<::tankwright::power>(in, "heater")};
  return v;
}

void io<::tankwright::room::warm_up_result>::write(answer& out, const ::tankwright::room::warm_up_result& v) {
  out.begin();
  out.key("time");
  io<::tankwright::estimate<::tankwright::duration>>::write(out, v.time);
  out.key("heater_energy");
  io<::tankwright::estimate<::tankwright::energy>>::write(out, v.heater_energy);
  out.key("stuck_on");
  io<std::optional<::tankwright::temperature>>::write(out, v.stuck_on);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::room::well_mixed_room io<::tankwright::room::well_mixed_room>::read(const given& in) {
  if (std::optional<::tankwright::room::well_mixed_room> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::room::well_mixed_room io<::tankwright::room::well_mixed_room>::fields(const given& in) {
  static constexpr std::string_view known[] = {"dry_air", "outdoor", "source", "transfer", "surface"};
  in.only(known);
  ::tankwright::room::well_mixed_room v{.dry_air = must<::tankwright::mass_flow>(in, "dry_air"), .outdoor = must<::tankwright::room::humidity_ratio>(in, "outdoor")};
  if (in.has("source")) v.source = must<::tankwright::mass_flow>(in, "source");
  if (in.has("transfer")) v.transfer = must<::tankwright::mass_flow>(in, "transfer");
  if (in.has("surface")) v.surface = must<::tankwright::room::humidity_ratio>(in, "surface");
  return v;
}

namespace {

// room.temperature_factor
constexpr std::string_view fields_0[] = {"transmittance", "inside", "outside", "surface_resistance"};
constexpr std::string_view required_0[] = {"transmittance", "inside", "outside"};
auto call_0([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  return ::tankwright::room::temperature_factor(io<::tankwright::room::building_element>::fields(in));
}
void numbers_0(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::building_element>::take(in);
  io<::tankwright::proportion>::put(::tankwright::room::temperature_factor(a0), out);
}
void defaults_0(double* at) {
  io<::tankwright::room::building_element>::defaults(at);
}

// room.surface_temperature
constexpr std::string_view fields_1[] = {"transmittance", "inside", "outside", "surface_resistance"};
constexpr std::string_view required_1[] = {"transmittance", "inside", "outside"};
auto call_1([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::temperature> {
  return ::tankwright::room::surface_temperature(io<::tankwright::room::building_element>::fields(in));
}
void numbers_1(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::building_element>::take(in);
  io<::tankwright::temperature>::put(::tankwright::room::surface_temperature(a0), out);
}
void defaults_1(double* at) {
  io<::tankwright::room::building_element>::defaults(at);
}

// room.judge_surface
constexpr std::string_view fields_2[] = {"building_element", "air"};
constexpr std::string_view required_2[] = {"building_element", "air"};
auto call_2([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::surface_verdict> {
  in.only(fields_2);
  const auto a0 = must<::tankwright::room::building_element>(in, "building_element");
  const auto a1 = must<::tankwright::room::air>(in, "air");
  const auto policy = in.policy();
  return ::tankwright::room::judge_surface(a0, a1, policy);
}
void numbers_2(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::building_element>::take(in);
  const auto a1 = io<::tankwright::room::air>::take(in);
  io<::tankwright::room::surface_verdict>::put(::tankwright::room::judge_surface(a0, a1, policy), out);
}
void defaults_2(double* at) {
  io<::tankwright::room::building_element>::defaults(at);
  io<::tankwright::room::air>::defaults(at);
}

// room.highest_humidity
constexpr std::string_view fields_3[] = {"building_element", "surface"};
constexpr std::string_view required_3[] = {"building_element"};
auto call_3([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::relative_humidity> {
  in.only(fields_3);
  const auto a0 = must<::tankwright::room::building_element>(in, "building_element");
  const auto a1 = may_or<::tankwright::relative_humidity>(in, "surface", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::relative_humidity(dripping_humidity);
  });
  const auto policy = in.policy();
  return ::tankwright::room::highest_humidity(a0, a1, policy);
}
void numbers_3(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::building_element>::take(in);
  const auto a1 = io<::tankwright::relative_humidity>::take(in);
  io<::tankwright::relative_humidity>::put(::tankwright::room::highest_humidity(a0, a1, policy), out);
}
void defaults_3(double* at) {
  io<::tankwright::room::building_element>::defaults(at);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::relative_humidity(dripping_humidity);
  }();
  io<::tankwright::relative_humidity>::put(a1, at);
}

// room.lowest_surface_temperature
constexpr std::string_view fields_4[] = {"air", "surface"};
constexpr std::string_view required_4[] = {"air"};
auto call_4([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::temperature> {
  in.only(fields_4);
  const auto a0 = must<::tankwright::room::air>(in, "air");
  const auto a1 = may_or<::tankwright::relative_humidity>(in, "surface", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::relative_humidity(mould_humidity);
  });
  const auto policy = in.policy();
  return ::tankwright::room::lowest_surface_temperature(a0, a1, policy);
}
void numbers_4(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  const auto a1 = io<::tankwright::relative_humidity>::take(in);
  io<::tankwright::temperature>::put(::tankwright::room::lowest_surface_temperature(a0, a1, policy), out);
}
void defaults_4(double* at) {
  io<::tankwright::room::air>::defaults(at);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::relative_humidity(mould_humidity);
  }();
  io<::tankwright::relative_humidity>::put(a1, at);
}

// room.lowest_temperature_factor
constexpr std::string_view fields_5[] = {"air", "outside", "surface"};
constexpr std::string_view required_5[] = {"air", "outside"};
auto call_5([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  in.only(fields_5);
  const auto a0 = must<::tankwright::room::air>(in, "air");
  const auto a1 = must<::tankwright::temperature>(in, "outside");
  const auto a2 = may_or<::tankwright::relative_humidity>(in, "surface", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::relative_humidity(mould_humidity);
  });
  const auto policy = in.policy();
  return ::tankwright::room::lowest_temperature_factor(a0, a1, a2, policy);
}
void numbers_5(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::relative_humidity>::take(in);
  io<::tankwright::proportion>::put(::tankwright::room::lowest_temperature_factor(a0, a1, a2, policy), out);
}
void defaults_5(double* at) {
  io<::tankwright::room::air>::defaults(at);
  not_given(at, 1);
  const auto a2 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::relative_humidity(mould_humidity);
  }();
  io<::tankwright::relative_humidity>::put(a2, at);
}

// room.dehumidifier_output
constexpr std::string_view fields_6[] = {"machine", "temperature", "humidity"};
constexpr std::string_view required_6[] = {"machine", "temperature", "humidity"};
auto call_6([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::dehumidifier_duty> {
  in.only(fields_6);
  const auto a0 = must<::tankwright::room::dehumidifier>(in, "machine");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto a2 = must<::tankwright::relative_humidity>(in, "humidity");
  const auto policy = in.policy();
  return ::tankwright::room::dehumidifier_output(a0, a1, a2, policy);
}

// room.evaporation
constexpr std::string_view fields_7[] = {"water", "air", "surfaces"};
constexpr std::string_view required_7[] = {"water", "air"};
auto call_7([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::evaporation_estimate> {
  const auto policy = in.policy();
  return ::tankwright::room::evaporation(io<::tankwright::room::evaporating_water>::fields(in), policy);
}

// room.about
constexpr std::string_view fields_8[] = {"law"};
constexpr std::string_view required_8[] = {"law"};
auto call_8([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::evaporation_law_data> {
  in.only(fields_8);
  const auto a0 = must<::tankwright::room::evaporation_law>(in, "law");
  return ::tankwright::room::about(a0);
}

// room.vapour_diffusivity
constexpr std::string_view fields_9[] = {"temperature", "total"};
constexpr std::string_view required_9[] = {"temperature", "total"};
auto call_9([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::kinematic_viscosity> {
  in.only(fields_9);
  const auto a0 = must<::tankwright::temperature>(in, "temperature");
  const auto a1 = must<::tankwright::absolute_pressure>(in, "total");
  const auto policy = in.policy();
  return ::tankwright::room::vapour_diffusivity(a0, a1, policy);
}
void numbers_9(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::temperature>::take(in);
  const auto a1 = io<::tankwright::absolute_pressure>::take(in);
  io<::tankwright::kinematic_viscosity>::put(::tankwright::room::vapour_diffusivity(a0, a1, policy), out);
}
void defaults_9(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// room.evaporation_rate
constexpr std::string_view fields_10[] = {"law", "open_water"};
constexpr std::string_view required_10[] = {"law", "open_water"};
auto call_10([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_flux> {
  in.only(fields_10);
  const auto a0 = must<::tankwright::room::evaporation_law>(in, "law");
  const auto a1 = must<::tankwright::room::open_water>(in, "open_water");
  const auto policy = in.policy();
  return ::tankwright::room::evaporation_rate(a0, a1, policy);
}
void numbers_10(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::evaporation_law>::take(in);
  const auto a1 = io<::tankwright::room::open_water>::take(in);
  io<::tankwright::mass_flux>::put(::tankwright::room::evaporation_rate(a0, a1, policy), out);
}
void defaults_10(double* at) {
  not_given(at, 1);
  io<::tankwright::room::open_water>::defaults(at);
}

// room.heat_balance
constexpr std::string_view fields_11[] = {"water", "air", "surfaces", "walls", "sources", "surroundings", "make_up"};
constexpr std::string_view required_11[] = {"water", "air"};
auto call_11([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::heat_budget> {
  const auto policy = in.policy();
  return ::tankwright::room::heat_balance(io<::tankwright::room::tank_heat>::fields(in), policy);
}

// room.heater_for
constexpr std::string_view fields_12[] = {"tank_heat", "margin"};
constexpr std::string_view required_12[] = {"tank_heat"};
auto call_12([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::heat_equipment> {
  in.only(fields_12);
  const auto a0 = must<::tankwright::room::tank_heat>(in, "tank_heat");
  const auto a1 = may_or<double>(in, "margin", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return double(1.25);
  });
  const auto policy = in.policy();
  return ::tankwright::room::heater_for(a0, a1, policy);
}

// room.chiller_for
constexpr std::string_view fields_13[] = {"tank_heat", "hottest_day", "duty"};
constexpr std::string_view required_13[] = {"tank_heat", "hottest_day"};
auto call_13([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::heat_equipment> {
  in.only(fields_13);
  const auto a0 = must<::tankwright::room::tank_heat>(in, "tank_heat");
  const auto a1 = must<::tankwright::room::air>(in, "hottest_day");
  const auto a2 = may_or<::tankwright::proportion>(in, "duty", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::proportion(fraction(0.65));
  });
  const auto policy = in.policy();
  return ::tankwright::room::chiller_for(a0, a1, a2, policy);
}

// room.heat_capacity_of
constexpr std::string_view fields_14[] = {"tank_water", "volume"};
constexpr std::string_view required_14[] = {"tank_water", "volume"};
auto call_14([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::heat_capacity> {
  in.only(fields_14);
  const auto a0 = must<::tankwright::room::tank_water>(in, "tank_water");
  const auto a1 = must<::tankwright::volume>(in, "volume");
  const auto policy = in.policy();
  return ::tankwright::room::heat_capacity_of(a0, a1, policy);
}
void numbers_14(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::tank_water>::take(in);
  const auto a1 = io<::tankwright::volume>::take(in);
  io<::tankwright::heat_capacity>::put(::tankwright::room::heat_capacity_of(a0, a1, policy), out);
}
void defaults_14(double* at) {
  io<::tankwright::room::tank_water>::defaults(at);
  not_given(at, 1);
}

// room.heat_capacity_of_solids
constexpr std::string_view fields_15[] = {"displaced"};
constexpr std::string_view required_15[] = {"displaced"};
auto call_15([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::heat_capacity>> {
  in.only(fields_15);
  const auto a0 = must<::tankwright::estimate<::tankwright::volume>>(in, "displaced");
  return ::tankwright::room::heat_capacity_of_solids(a0);
}
void numbers_15(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::estimate<::tankwright::volume>>::take(in);
  io<::tankwright::estimate<::tankwright::heat_capacity>>::put(::tankwright::room::heat_capacity_of_solids(a0), out);
}
void defaults_15(double* at) {
  not_given(at, 3);
}

// room.heat_capacity_of_sheet
constexpr std::string_view fields_16[] = {"area", "thickness", "heat"};
constexpr std::string_view required_16[] = {"area", "thickness", "heat"};
auto call_16([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::heat_capacity> {
  return ::tankwright::room::heat_capacity_of_sheet(io<::tankwright::room::warm_sheet>::fields(in));
}
void numbers_16(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::warm_sheet>::take(in);
  io<::tankwright::heat_capacity>::put(::tankwright::room::heat_capacity_of_sheet(a0), out);
}
void defaults_16(double* at) {
  io<::tankwright::room::warm_sheet>::defaults(at);
}

// room.heater_stuck_on
constexpr std::string_view fields_17[] = {"tank", "heat_capacity", "heater", "highest", "within"};
constexpr std::string_view required_17[] = {"tank", "heat_capacity", "heater", "highest"};
auto call_17([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::stuck_heater_result> {
  const auto policy = in.policy();
  return ::tankwright::room::heater_stuck_on(io<::tankwright::room::stuck_heater>::fields(in), policy);
}

// room.humidity_balance
constexpr std::string_view fields_18[] = {"room", "water", "surfaces", "sources", "dehumidifier"};
constexpr std::string_view required_18[] = {"room", "water"};
auto call_18([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::room_humidity> {
  const auto policy = in.policy();
  return ::tankwright::room::humidity_balance(io<::tankwright::room::tank_room>::fields(in), policy);
}

// room.dehumidifier_for
constexpr std::string_view fields_19[] = {"tank_room", "target", "rated_at"};
constexpr std::string_view required_19[] = {"tank_room", "target"};
auto call_19([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::dehumidifier_size> {
  in.only(fields_19);
  const auto a0 = must<::tankwright::room::tank_room>(in, "tank_room");
  const auto a1 = must<::tankwright::relative_humidity>(in, "target");
  const auto a2 = may_or<::tankwright::room::rating_point>(in, "rated_at", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::room::rating_point(rated_80F_60);
  });
  const auto policy = in.policy();
  return ::tankwright::room::dehumidifier_for(a0, a1, a2, policy);
}

// room.ventilation_for
constexpr std::string_view fields_20[] = {"tank_room", "target"};
constexpr std::string_view required_20[] = {"tank_room", "target"};
auto call_20([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::ventilation_size> {
  in.only(fields_20);
  const auto a0 = must<::tankwright::room::tank_room>(in, "tank_room");
  const auto a1 = must<::tankwright::relative_humidity>(in, "target");
  const auto policy = in.policy();
  return ::tankwright::room::ventilation_for(a0, a1, policy);
}

// room.humidity_course
constexpr std::string_view fields_21[] = {"room", "start", "time", "step"};
constexpr std::string_view required_21[] = {"room", "start", "time"};
auto call_21([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::room::humidity_point>> {
  const auto policy = in.policy();
  return ::tankwright::room::humidity_course(io<::tankwright::room::humidity_course_request>::fields(in), policy);
}

// room.light_at_depth
constexpr std::string_view fields_22[] = {"height", "depth", "through_a_metre", "index"};
constexpr std::string_view required_22[] = {"height", "depth"};
auto call_22([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  return ::tankwright::room::light_at_depth(io<::tankwright::room::lamp_over_water>::fields(in));
}
void numbers_22(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::lamp_over_water>::take(in);
  io<::tankwright::proportion>::put(::tankwright::room::light_at_depth(a0), out);
}
void defaults_22(double* at) {
  io<::tankwright::room::lamp_over_water>::defaults(at);
}

// room.lit_width
constexpr std::string_view fields_23[] = {"height", "beam"};
constexpr std::string_view required_23[] = {"height", "beam"};
auto call_23([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_23);
  const auto a0 = must<::tankwright::length>(in, "height");
  const auto a1 = must<::tankwright::angle>(in, "beam");
  return ::tankwright::room::lit_width(a0, a1);
}
void numbers_23(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::length>::take(in);
  const auto a1 = io<::tankwright::angle>::take(in);
  io<::tankwright::length>::put(::tankwright::room::lit_width(a0, a1), out);
}
void defaults_23(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// room.pressure_at_altitude
constexpr std::string_view fields_24[] = {"altitude"};
constexpr std::string_view required_24[] = {"altitude"};
auto call_24([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::absolute_pressure> {
  in.only(fields_24);
  const auto a0 = must<::tankwright::length>(in, "altitude");
  const auto policy = in.policy();
  return ::tankwright::room::pressure_at_altitude(a0, policy);
}
void numbers_24(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::length>::take(in);
  io<::tankwright::absolute_pressure>::put(::tankwright::room::pressure_at_altitude(a0, policy), out);
}
void defaults_24(double* at) {
  not_given(at, 1);
}

// room.vapour_pressure
constexpr std::string_view fields_25[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_25[] = {"temperature", "humidity"};
auto call_25([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  const auto policy = in.policy();
  return ::tankwright::room::vapour_pressure(io<::tankwright::room::air>::fields(in), policy);
}
void numbers_25(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  io<::tankwright::pressure>::put(::tankwright::room::vapour_pressure(a0, policy), out);
}
void defaults_25(double* at) {
  io<::tankwright::room::air>::defaults(at);
}

// room.humidity_ratio_of
constexpr std::string_view fields_26[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_26[] = {"temperature", "humidity"};
auto call_26([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::humidity_ratio> {
  const auto policy = in.policy();
  return ::tankwright::room::humidity_ratio_of(io<::tankwright::room::air>::fields(in), policy);
}

// room.humidity_ratio_from_vapour_pressure
constexpr std::string_view fields_27[] = {"vapour", "total"};
constexpr std::string_view required_27[] = {"vapour", "total"};
auto call_27([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::humidity_ratio> {
  in.only(fields_27);
  const auto a0 = must<::tankwright::pressure>(in, "vapour");
  const auto a1 = must<::tankwright::absolute_pressure>(in, "total");
  const auto policy = in.policy();
  return ::tankwright::room::humidity_ratio_from_vapour_pressure(a0, a1, policy);
}

// room.absolute_humidity
constexpr std::string_view fields_28[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_28[] = {"temperature", "humidity"};
auto call_28([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  const auto policy = in.policy();
  return ::tankwright::room::absolute_humidity(io<::tankwright::room::air>::fields(in), policy);
}
void numbers_28(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::room::absolute_humidity(a0, policy), out);
}
void defaults_28(double* at) {
  io<::tankwright::room::air>::defaults(at);
}

// room.dew_point
constexpr std::string_view fields_29[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_29[] = {"temperature", "humidity"};
auto call_29([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::temperature> {
  const auto policy = in.policy();
  return ::tankwright::room::dew_point(io<::tankwright::room::air>::fields(in), policy);
}
void numbers_29(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  io<::tankwright::temperature>::put(::tankwright::room::dew_point(a0, policy), out);
}
void defaults_29(double* at) {
  io<::tankwright::room::air>::defaults(at);
}

// room.enthalpy
constexpr std::string_view fields_30[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_30[] = {"temperature", "humidity"};
auto call_30([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_energy> {
  const auto policy = in.policy();
  return ::tankwright::room::enthalpy(io<::tankwright::room::air>::fields(in), policy);
}
void numbers_30(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  io<::tankwright::specific_energy>::put(::tankwright::room::enthalpy(a0, policy), out);
}
void defaults_30(double* at) {
  io<::tankwright::room::air>::defaults(at);
}

// room.specific_volume_of
constexpr std::string_view fields_31[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_31[] = {"temperature", "humidity"};
auto call_31([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_volume> {
  const auto policy = in.policy();
  return ::tankwright::room::specific_volume_of(io<::tankwright::room::air>::fields(in), policy);
}
void numbers_31(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  io<::tankwright::specific_volume>::put(::tankwright::room::specific_volume_of(a0, policy), out);
}
void defaults_31(double* at) {
  io<::tankwright::room::air>::defaults(at);
}

// room.moist_air_density
constexpr std::string_view fields_32[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_32[] = {"temperature", "humidity"};
auto call_32([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  const auto policy = in.policy();
  return ::tankwright::room::moist_air_density(io<::tankwright::room::air>::fields(in), policy);
}
void numbers_32(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::room::moist_air_density(a0, policy), out);
}
void defaults_32(double* at) {
  io<::tankwright::room::air>::defaults(at);
}

// room.dry_air_density
constexpr std::string_view fields_33[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_33[] = {"temperature", "humidity"};
auto call_33([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  const auto policy = in.policy();
  return ::tankwright::room::dry_air_density(io<::tankwright::room::air>::fields(in), policy);
}
void numbers_33(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::room::dry_air_density(a0, policy), out);
}
void defaults_33(double* at) {
  io<::tankwright::room::air>::defaults(at);
}

// room.air_from_with_air_of_humidity_ratio
constexpr std::string_view fields_34[] = {"temperature", "ratio", "pressure"};
constexpr std::string_view required_34[] = {"temperature", "ratio"};
auto call_34([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::air> {
  const auto policy = in.policy();
  return ::tankwright::room::air_from(io<::tankwright::room::air_of_humidity_ratio>::fields(in), policy);
}

// room.air_from_with_air_of_dew_point
constexpr std::string_view fields_35[] = {"temperature", "dew_point", "pressure"};
constexpr std::string_view required_35[] = {"temperature", "dew_point"};
auto call_35([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::air> {
  const auto policy = in.policy();
  return ::tankwright::room::air_from(io<::tankwright::room::air_of_dew_point>::fields(in), policy);
}
void numbers_35(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air_of_dew_point>::take(in);
  io<::tankwright::room::air>::put(::tankwright::room::air_from(a0, policy), out);
}
void defaults_35(double* at) {
  io<::tankwright::room::air_of_dew_point>::defaults(at);
}

// room.running_cost
constexpr std::string_view fields_36[] = {"heat", "price", "performance", "on"};
constexpr std::string_view required_36[] = {"heat", "price"};
auto call_36([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::running_cost_result> {
  const auto policy = in.policy();
  return ::tankwright::room::running_cost(io<::tankwright::room::running_load>::fields(in), policy);
}
void numbers_36(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::running_load>::take(in);
  io<::tankwright::room::running_cost_result>::put(::tankwright::room::running_cost(a0, policy), out);
}
void defaults_36(double* at) {
  io<::tankwright::room::running_load>::defaults(at);
}

// room.running_costs
constexpr std::string_view fields_37[] = {"devices", "price"};
constexpr std::string_view required_37[] = {"devices", "price"};
auto call_37([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::running_costs_result> {
  in.only(fields_37);
  const auto a0 = must<std::span<const ::tankwright::room::running_device>>(in, "devices");
  const auto a1 = must<::tankwright::room::electricity_price>(in, "price");
  return ::tankwright::room::running_costs(a0, a1);
}

// room.saturation_pressure
constexpr std::string_view fields_38[] = {"temperature"};
constexpr std::string_view required_38[] = {"temperature"};
auto call_38([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  in.only(fields_38);
  const auto a0 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::room::saturation_pressure(a0, policy);
}
void numbers_38(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::temperature>::take(in);
  io<::tankwright::pressure>::put(::tankwright::room::saturation_pressure(a0, policy), out);
}
void defaults_38(double* at) {
  not_given(at, 1);
}

// room.saturation_temperature
constexpr std::string_view fields_39[] = {"vapour"};
constexpr std::string_view required_39[] = {"vapour"};
auto call_39([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::temperature> {
  in.only(fields_39);
  const auto a0 = must<::tankwright::pressure>(in, "vapour");
  const auto policy = in.policy();
  return ::tankwright::room::saturation_temperature(a0, policy);
}
void numbers_39(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::pressure>::take(in);
  io<::tankwright::temperature>::put(::tankwright::room::saturation_temperature(a0, policy), out);
}
void defaults_39(double* at) {
  not_given(at, 1);
}

// room.current_of
constexpr std::string_view fields_40[] = {"all", "supply"};
constexpr std::string_view required_40[] = {"all", "supply"};
auto call_40([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::electric_current> {
  in.only(fields_40);
  const auto a0 = must<std::span<const ::tankwright::room::plugged_in>>(in, "all");
  const auto a1 = must<::tankwright::voltage>(in, "supply");
  return ::tankwright::room::current_of(a0, a1);
}

// room.leakage_of
constexpr std::string_view fields_41[] = {"all"};
constexpr std::string_view required_41[] = {"all"};
auto call_41([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::electric_current>> {
  in.only(fields_41);
  const auto a0 = must<std::span<const ::tankwright::estimate<::tankwright::electric_current>>>(in, "all");
  return ::tankwright::room::leakage_of(a0);
}

// room.battery_feeds
constexpr std::string_view fields_42[] = {"from", "load"};
constexpr std::string_view required_42[] = {"from", "load"};
auto call_42([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::duration>> {
  in.only(fields_42);
  const auto a0 = must<::tankwright::room::stored_energy>(in, "from");
  const auto a1 = must<::tankwright::power>(in, "load");
  return ::tankwright::room::battery_feeds(a0, a1);
}
void numbers_42(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::stored_energy>::take(in);
  const auto a1 = io<::tankwright::power>::take(in);
  io<::tankwright::estimate<::tankwright::duration>>::put(::tankwright::room::battery_feeds(a0, a1), out);
}
void defaults_42(double* at) {
  io<::tankwright::room::stored_energy>::defaults(at);
  not_given(at, 1);
}

// room.temperature_course_of
constexpr std::string_view fields_43[] = {"uncontrolled_tank", "time", "step"};
constexpr std::string_view required_43[] = {"uncontrolled_tank", "time"};
auto call_43([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::temperature_course> {
  in.only(fields_43);
  const auto a0 = must<::tankwright::room::uncontrolled_tank>(in, "uncontrolled_tank");
  const auto a1 = must<::tankwright::duration>(in, "time");
  const auto a2 = may_or<::tankwright::duration>(in, "step", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::duration(minutes(30.0));
  });
  const auto policy = in.policy();
  return ::tankwright::room::temperature_course_of(a0, a1, a2, policy);
}

// room.largest_change
constexpr std::string_view fields_44[] = {"uncontrolled_tank", "within", "window"};
constexpr std::string_view required_44[] = {"uncontrolled_tank", "within"};
auto call_44([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::temperature_change> {
  in.only(fields_44);
  const auto a0 = must<::tankwright::room::uncontrolled_tank>(in, "uncontrolled_tank");
  const auto a1 = must<::tankwright::duration>(in, "within");
  const auto a2 = may_or<::tankwright::duration>(in, "window", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::duration(hours(1.0));
  });
  const auto policy = in.policy();
  return ::tankwright::room::largest_change(a0, a1, a2, policy);
}

// room.time_to_temperature_with_heat_capacity
constexpr std::string_view fields_45[] = {"uncontrolled_tank", "heat_capacity", "limit", "within"};
constexpr std::string_view required_45[] = {"uncontrolled_tank", "heat_capacity", "limit"};
auto call_45([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::temperature_crossing> {
  in.only(fields_45);
  const auto a0 = must<::tankwright::room::uncontrolled_tank>(in, "uncontrolled_tank");
  const auto a1 = must<::tankwright::estimate<::tankwright::heat_capacity>>(in, "heat_capacity");
  const auto a2 = must<::tankwright::temperature>(in, "limit");
  const auto a3 = may_or<::tankwright::duration>(in, "within", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::duration(days(7.0));
  });
  const auto policy = in.policy();
  return ::tankwright::room::time_to_temperature(a0, a1, a2, a3, policy);
}

// room.time_to_temperature
constexpr std::string_view fields_46[] = {"uncontrolled_tank", "limit", "within"};
constexpr std::string_view required_46[] = {"uncontrolled_tank", "limit"};
auto call_46([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::temperature_crossing> {
  in.only(fields_46);
  const auto a0 = must<::tankwright::room::uncontrolled_tank>(in, "uncontrolled_tank");
  const auto a1 = must<::tankwright::temperature>(in, "limit");
  const auto a2 = may_or<::tankwright::duration>(in, "within", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::duration(days(7.0));
  });
  const auto policy = in.policy();
  return ::tankwright::room::time_to_temperature(a0, a1, a2, policy);
}

// room.top_off_rate
constexpr std::string_view fields_47[] = {"evaporation", "fresh_water"};
constexpr std::string_view required_47[] = {"evaporation"};
auto call_47([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::flow_rate>> {
  in.only(fields_47);
  const auto a0 = must<::tankwright::estimate<::tankwright::mass_flow>>(in, "evaporation");
  const auto a1 = may_or<::tankwright::temperature>(in, "fresh_water", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::temperature(celsius(20.0));
  });
  const auto policy = in.policy();
  return ::tankwright::room::top_off_rate(a0, a1, policy);
}
void numbers_47(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::estimate<::tankwright::mass_flow>>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::estimate<::tankwright::flow_rate>>::put(::tankwright::room::top_off_rate(a0, a1, policy), out);
}
void defaults_47(double* at) {
  not_given(at, 3);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::room;
    return ::tankwright::temperature(celsius(20.0));
  }();
  io<::tankwright::temperature>::put(a1, at);
}

// room.reservoir_lasts
constexpr std::string_view fields_48[] = {"reservoir", "rate"};
constexpr std::string_view required_48[] = {"reservoir", "rate"};
auto call_48([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::duration>> {
  in.only(fields_48);
  const auto a0 = must<::tankwright::volume>(in, "reservoir");
  const auto a1 = must<::tankwright::estimate<::tankwright::flow_rate>>(in, "rate");
  return ::tankwright::room::reservoir_lasts(a0, a1);
}
void numbers_48(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::volume>::take(in);
  const auto a1 = io<::tankwright::estimate<::tankwright::flow_rate>>::take(in);
  io<::tankwright::estimate<::tankwright::duration>>::put(::tankwright::room::reservoir_lasts(a0, a1), out);
}
void defaults_48(double* at) {
  not_given(at, 1);
  not_given(at, 3);
}

// room.stuck_valve
constexpr std::string_view fields_49[] = {"reservoir_request", "reservoir"};
constexpr std::string_view required_49[] = {"reservoir_request", "reservoir"};
auto call_49([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::stuck_valve_result> {
  in.only(fields_49);
  const auto a0 = must<::tankwright::room::reservoir_request>(in, "reservoir_request");
  const auto a1 = must<::tankwright::volume>(in, "reservoir");
  const auto policy = in.policy();
  return ::tankwright::room::stuck_valve(a0, a1, policy);
}
void numbers_49(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::reservoir_request>::take(in);
  const auto a1 = io<::tankwright::volume>::take(in);
  io<::tankwright::room::stuck_valve_result>::put(::tankwright::room::stuck_valve(a0, a1, policy), out);
}
void defaults_49(double* at) {
  io<::tankwright::room::reservoir_request>::defaults(at);
  not_given(at, 1);
}

// room.largest_reservoir
constexpr std::string_view fields_50[] = {"water", "volume", "lowest", "free_volume", "fresh_water"};
constexpr std::string_view required_50[] = {"water", "volume", "lowest", "free_volume"};
auto call_50([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::reservoir_limit> {
  const auto policy = in.policy();
  return ::tankwright::room::largest_reservoir(io<::tankwright::room::reservoir_request>::fields(in), policy);
}

// room.return_level
constexpr std::string_view fields_51[] = {"surface", "top_off", "running_level", "lowest_level"};
constexpr std::string_view required_51[] = {"surface", "top_off", "running_level", "lowest_level"};
auto call_51([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::return_chamber_result> {
  return ::tankwright::room::return_level(io<::tankwright::room::return_chamber>::fields(in));
}
void numbers_51(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::return_chamber>::take(in);
  io<::tankwright::room::return_chamber_result>::put(::tankwright::room::return_level(a0), out);
}
void defaults_51(double* at) {
  io<::tankwright::room::return_chamber>::defaults(at);
}

// room.transmittance
constexpr std::string_view fields_52[] = {"label", "layers", "inside", "outside"};
auto call_52([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::thermal_transmittance> {
  return ::tankwright::room::transmittance(io<::tankwright::room::layered_wall>::fields(in));
}

// room.linear_warm_up_time
constexpr std::string_view fields_53[] = {"heat_capacity", "from", "to", "heater", "loss", "stands_at"};
constexpr std::string_view required_53[] = {"heat_capacity", "from", "to", "heater"};
auto call_53([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  return ::tankwright::room::linear_warm_up_time(io<::tankwright::room::linear_warm_up>::fields(in));
}
void numbers_53(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::linear_warm_up>::take(in);
  io<::tankwright::duration>::put(::tankwright::room::linear_warm_up_time(a0), out);
}
void defaults_53(double* at) {
  io<::tankwright::room::linear_warm_up>::defaults(at);
}

// room.warm_up
constexpr std::string_view fields_54[] = {"tank", "heat_capacity", "target", "heater"};
constexpr std::string_view required_54[] = {"tank", "heat_capacity", "target", "heater"};
auto call_54([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::warm_up_result> {
  const auto policy = in.policy();
  return ::tankwright::room::warm_up(io<::tankwright::room::warm_up_request>::fields(in), policy);
}

// room.settled_humidity_ratio
constexpr std::string_view fields_55[] = {"dry_air", "outdoor", "source", "transfer", "surface"};
constexpr std::string_view required_55[] = {"dry_air", "outdoor"};
auto call_55([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::humidity_ratio> {
  return ::tankwright::room::settled_humidity_ratio(io<::tankwright::room::well_mixed_room>::fields(in));
}

// room.humidity_time_constant
constexpr std::string_view fields_56[] = {"well_mixed_room", "air"};
constexpr std::string_view required_56[] = {"well_mixed_room", "air"};
auto call_56([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  in.only(fields_56);
  const auto a0 = must<::tankwright::room::well_mixed_room>(in, "well_mixed_room");
  const auto a1 = must<::tankwright::mass>(in, "air");
  return ::tankwright::room::humidity_time_constant(a0, a1);
}

// room.humidity_ratio_after
constexpr std::string_view fields_57[] = {"well_mixed_room", "start"};
constexpr std::string_view required_57[] = {"well_mixed_room", "start"};
auto call_57([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::humidity_ratio> {
  in.only(fields_57);
  const auto a0 = must<::tankwright::room::well_mixed_room>(in, "well_mixed_room");
  const auto a1 = must<::tankwright::room::humidity_start>(in, "start");
  return ::tankwright::room::humidity_ratio_after(a0, a1);
}

// room.wet_bulb
constexpr std::string_view fields_58[] = {"temperature", "humidity", "pressure"};
constexpr std::string_view required_58[] = {"temperature", "humidity"};
auto call_58([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::temperature> {
  const auto policy = in.policy();
  return ::tankwright::room::wet_bulb(io<::tankwright::room::air>::fields(in), policy);
}
void numbers_58(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air>::take(in);
  io<::tankwright::temperature>::put(::tankwright::room::wet_bulb(a0, policy), out);
}
void defaults_58(double* at) {
  io<::tankwright::room::air>::defaults(at);
}

// room.air_from_with_air_of_wet_bulb
constexpr std::string_view fields_59[] = {"temperature", "wet_bulb", "pressure"};
constexpr std::string_view required_59[] = {"temperature", "wet_bulb"};
auto call_59([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::room::air> {
  const auto policy = in.policy();
  return ::tankwright::room::air_from(io<::tankwright::room::air_of_wet_bulb>::fields(in), policy);
}
void numbers_59(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::room::air_of_wet_bulb>::take(in);
  io<::tankwright::room::air>::put(::tankwright::room::air_from(a0, policy), out);
}
void defaults_59(double* at) {
  io<::tankwright::room::air_of_wet_bulb>::defaults(at);
}

const row rows[] = {
  {"room.temperature_factor", "tankwright::room::temperature_factor", "ISO 13788", required_0, fields_0, false, nullptr, &answer_with<&call_0>, nullptr, {true, 4, 1}, &numbers_0, &defaults_0},
  {"room.surface_temperature", "tankwright::room::surface_temperature", "ISO 13788", required_1, fields_1, false, nullptr, &answer_with<&call_1>, nullptr, {true, 4, 1}, &numbers_1, &defaults_1},
  {"room.judge_surface", "tankwright::room::judge_surface", "ISO 13788, with the saturation pressure of Hyland and Wexler", required_2, fields_2, true, &key_of_type<::tankwright::room::surface_verdict>, &answer_with<&call_2>, &make_with<&call_2>, {true, 7, 6}, &numbers_2, &defaults_2},
  {"room.highest_humidity", "tankwright::room::highest_humidity", "ISO 13788, with the saturation pressure of Hyland and Wexler", required_3, fields_3, true, nullptr, &answer_with<&call_3>, nullptr, {true, 5, 1}, &numbers_3, &defaults_3},
  {"room.lowest_surface_temperature", "tankwright::room::lowest_surface_temperature", "ISO 13788, with the saturation pressure of Hyland and Wexler", required_4, fields_4, true, nullptr, &answer_with<&call_4>, nullptr, {true, 4, 1}, &numbers_4, &defaults_4},
  {"room.lowest_temperature_factor", "tankwright::room::lowest_temperature_factor", "ISO 13788; DIN 4108-2", required_5, fields_5, true, nullptr, &answer_with<&call_5>, nullptr, {true, 5, 1}, &numbers_5, &defaults_5},
  {"room.dehumidifier_output", "tankwright::room::dehumidifier_output", "EnergyPlus 9.5 example curves, divided by their value at 26.7 degC and 60 %; the re-rating of the US Department of Energy 2019 at 18.3 degC; beyond that common practice", required_6, fields_6, true, &key_of_type<::tankwright::room::dehumidifier_duty>, &answer_with<&call_6>, &make_with<&call_6>, {false, 0, 0}, nullptr, nullptr},
  {"room.evaporation", "tankwright::room::evaporation", "Shah 2014; VDI 2089-1; Smith, Lof and Jones 1994; for the covers Muleta 2016", required_7, fields_7, true, &key_of_type<::tankwright::room::evaporation_estimate>, &answer_with<&call_7>, &make_with<&call_7>, {false, 0, 0}, nullptr, nullptr},
  {"room.about", "tankwright::room::about", "the sources named in it", required_8, fields_8, false, &key_of_type<::tankwright::room::evaporation_law_data>, &answer_with<&call_8>, &make_with<&call_8>, {false, 0, 0}, nullptr, nullptr},
  {"room.vapour_diffusivity", "tankwright::room::vapour_diffusivity", "Marrero and Mason 1972", required_9, fields_9, true, nullptr, &answer_with<&call_9>, nullptr, {true, 2, 1}, &numbers_9, &defaults_9},
  {"room.evaporation_rate", "tankwright::room::evaporation_rate", "about(law).source", required_10, fields_10, true, nullptr, &answer_with<&call_10>, nullptr, {true, 7, 1}, &numbers_10, &defaults_10},
  {"room.heat_balance", "tankwright::room::heat_balance", "Bowen 1926; FAO-56; EN ISO 6946", required_11, fields_11, true, &key_of_type<::tankwright::room::heat_budget>, &answer_with<&call_11>, &make_with<&call_11>, {false, 0, 0}, nullptr, nullptr},
  {"room.heater_for", "tankwright::room::heater_for", "heat balance", required_12, fields_12, true, &key_of_type<::tankwright::room::heat_equipment>, &answer_with<&call_12>, &make_with<&call_12>, {false, 0, 0}, nullptr, nullptr},
  {"room.chiller_for", "tankwright::room::chiller_for", "heat balance", required_13, fields_13, true, &key_of_type<::tankwright::room::heat_equipment>, &answer_with<&call_13>, &make_with<&call_13>, {false, 0, 0}, nullptr, nullptr},
  {"room.heat_capacity_of", "tankwright::room::heat_capacity_of", "Feistel 2008", required_14, fields_14, true, nullptr, &answer_with<&call_14>, nullptr, {true, 3, 1}, &numbers_14, &defaults_14},
  {"room.heat_capacity_of_solids", "tankwright::room::heat_capacity_of_solids", "densities and specific heats of calcite and quartz, CRC Handbook (from memory); Cardarelli 2018", required_15, fields_15, false, nullptr, &answer_with<&call_15>, nullptr, {true, 3, 3}, &numbers_15, &defaults_15},
  {"room.heat_capacity_of_sheet", "tankwright::room::heat_capacity_of_sheet", "conduction in a plane wall", required_16, fields_16, false, nullptr, &answer_with<&call_16>, nullptr, {true, 3, 1}, &numbers_16, &defaults_16},
  {"room.heater_stuck_on", "tankwright::room::heater_stuck_on", "energy balance; Dormand & Prince 1980", required_17, fields_17, true, &key_of_type<::tankwright::room::stuck_heater_result>, &answer_with<&call_17>, &make_with<&call_17>, {false, 0, 0}, nullptr, nullptr},
  {"room.humidity_balance", "tankwright::room::humidity_balance", "mass balance; Shah 2014; EnergyPlus 9.5 example curves for the machine", required_18, fields_18, true, &key_of_type<::tankwright::room::room_humidity>, &answer_with<&call_18>, &make_with<&call_18>, {false, 0, 0}, nullptr, nullptr},
  {"room.dehumidifier_for", "tankwright::room::dehumidifier_for", "mass balance; Shah 2014; EnergyPlus 9.5 example curves", required_19, fields_19, true, &key_of_type<::tankwright::room::dehumidifier_size>, &answer_with<&call_19>, &make_with<&call_19>, {false, 0, 0}, nullptr, nullptr},
  {"room.ventilation_for", "tankwright::room::ventilation_for", "mass balance; Shah 2014", required_20, fields_20, true, &key_of_type<::tankwright::room::ventilation_size>, &answer_with<&call_20>, &make_with<&call_20>, {false, 0, 0}, nullptr, nullptr},
  {"room.humidity_course", "tankwright::room::humidity_course", "mass balance; Shah 2014; classical Runge-Kutta", required_21, fields_21, true, nullptr, &answer_with<&call_21>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"room.light_at_depth", "tankwright::room::light_at_depth", "Snell's law for rays near the axis; Beer and Lambert; Kirk 1994 for T (from memory)", required_22, fields_22, false, nullptr, &answer_with<&call_22>, nullptr, {true, 4, 1}, &numbers_22, &defaults_22},
  {"room.lit_width", "tankwright::room::lit_width", "geometry", required_23, fields_23, false, nullptr, &answer_with<&call_23>, nullptr, {true, 2, 1}, &numbers_23, &defaults_23},
  {"room.pressure_at_altitude", "tankwright::room::pressure_at_altitude", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 3", required_24, fields_24, true, nullptr, &answer_with<&call_24>, nullptr, {true, 1, 1}, &numbers_24, &defaults_24},
  {"room.vapour_pressure", "tankwright::room::vapour_pressure", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 12 and 22", required_25, fields_25, true, nullptr, &answer_with<&call_25>, nullptr, {true, 3, 1}, &numbers_25, &defaults_25},
  {"room.humidity_ratio_of", "tankwright::room::humidity_ratio_of", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 20", required_26, fields_26, true, &key_of_type<::tankwright::room::humidity_ratio>, &answer_with<&call_26>, &make_with<&call_26>, {false, 0, 0}, nullptr, nullptr},
  {"room.humidity_ratio_from_vapour_pressure", "tankwright::room::humidity_ratio_from_vapour_pressure", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 20", required_27, fields_27, true, &key_of_type<::tankwright::room::humidity_ratio>, &answer_with<&call_27>, &make_with<&call_27>, {false, 0, 0}, nullptr, nullptr},
  {"room.absolute_humidity", "tankwright::room::absolute_humidity", "ASHRAE Handbook-Fundamentals 2017, ch. 1", required_28, fields_28, true, nullptr, &answer_with<&call_28>, nullptr, {true, 3, 1}, &numbers_28, &defaults_28},
  {"room.dew_point", "tankwright::room::dew_point", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 5 and 6, inverted numerically", required_29, fields_29, true, nullptr, &answer_with<&call_29>, nullptr, {true, 3, 1}, &numbers_29, &defaults_29},
  {"room.enthalpy", "tankwright::room::enthalpy", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 30", required_30, fields_30, true, nullptr, &answer_with<&call_30>, nullptr, {true, 3, 1}, &numbers_30, &defaults_30},
  {"room.specific_volume_of", "tankwright::room::specific_volume_of", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 26", required_31, fields_31, true, nullptr, &answer_with<&call_31>, nullptr, {true, 3, 1}, &numbers_31, &defaults_31},
  {"room.moist_air_density", "tankwright::room::moist_air_density", "ASHRAE Handbook-Fundamentals 2017, ch. 1", required_32, fields_32, true, nullptr, &answer_with<&call_32>, nullptr, {true, 3, 1}, &numbers_32, &defaults_32},
  {"room.dry_air_density", "tankwright::room::dry_air_density", "ASHRAE Handbook-Fundamentals 2017, ch. 1", required_33, fields_33, true, nullptr, &answer_with<&call_33>, nullptr, {true, 3, 1}, &numbers_33, &defaults_33},
  {"room.air_from_with_air_of_humidity_ratio", "tankwright::room::air_from", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 12, 20 and 22", required_34, fields_34, true, &key_of_type<::tankwright::room::air>, &answer_with<&call_34>, &make_with<&call_34>, {false, 0, 0}, nullptr, nullptr},
  {"room.air_from_with_air_of_dew_point", "tankwright::room::air_from", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 12", required_35, fields_35, true, &key_of_type<::tankwright::room::air>, &answer_with<&call_35>, &make_with<&call_35>, {true, 3, 3}, &numbers_35, &defaults_35},
  {"room.running_cost", "tankwright::room::running_cost", "arithmetic", required_36, fields_36, true, &key_of_type<::tankwright::room::running_cost_result>, &answer_with<&call_36>, &make_with<&call_36>, {true, 6, 12}, &numbers_36, &defaults_36},
  {"room.running_costs", "tankwright::room::running_costs", "arithmetic", required_37, fields_37, false, &key_of_type<::tankwright::room::running_costs_result>, &answer_with<&call_37>, &make_with<&call_37>, {false, 0, 0}, nullptr, nullptr},
  {"room.saturation_pressure", "tankwright::room::saturation_pressure", "Hyland and Wexler 1983; ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 5 and 6", required_38, fields_38, true, nullptr, &answer_with<&call_38>, nullptr, {true, 1, 1}, &numbers_38, &defaults_38},
  {"room.saturation_temperature", "tankwright::room::saturation_temperature", "Hyland and Wexler 1983", required_39, fields_39, true, nullptr, &answer_with<&call_39>, nullptr, {true, 1, 1}, &numbers_39, &defaults_39},
  {"room.current_of", "tankwright::room::current_of", "definition of the power factor", required_40, fields_40, false, nullptr, &answer_with<&call_40>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"room.leakage_of", "tankwright::room::leakage_of", "Kirchhoff's law", required_41, fields_41, false, nullptr, &answer_with<&call_41>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"room.battery_feeds", "tankwright::room::battery_feeds", "conservation of energy", required_42, fields_42, false, nullptr, &answer_with<&call_42>, nullptr, {true, 4, 3}, &numbers_42, &defaults_42},
  {"room.temperature_course_of", "tankwright::room::temperature_course_of", "energy balance; Dormand & Prince 1980", required_43, fields_43, true, &key_of_type<::tankwright::room::temperature_course>, &answer_with<&call_43>, &make_with<&call_43>, {false, 0, 0}, nullptr, nullptr},
  {"room.largest_change", "tankwright::room::largest_change", "energy balance; Dormand & Prince 1980", required_44, fields_44, true, &key_of_type<::tankwright::room::temperature_change>, &answer_with<&call_44>, &make_with<&call_44>, {false, 0, 0}, nullptr, nullptr},
  {"room.time_to_temperature_with_heat_capacity", "tankwright::room::time_to_temperature", "energy balance; Dormand & Prince 1980", required_45, fields_45, true, &key_of_type<::tankwright::room::temperature_crossing>, &answer_with<&call_45>, &make_with<&call_45>, {false, 0, 0}, nullptr, nullptr},
  {"room.time_to_temperature", "tankwright::room::time_to_temperature", "energy balance; Dormand & Prince 1980", required_46, fields_46, true, &key_of_type<::tankwright::room::temperature_crossing>, &answer_with<&call_46>, &make_with<&call_46>, {false, 0, 0}, nullptr, nullptr},
  {"room.top_off_rate", "tankwright::room::top_off_rate", "mass balance; density by TEOS-10", required_47, fields_47, true, nullptr, &answer_with<&call_47>, nullptr, {true, 4, 3}, &numbers_47, &defaults_47},
  {"room.reservoir_lasts", "tankwright::room::reservoir_lasts", "arithmetic", required_48, fields_48, false, nullptr, &answer_with<&call_48>, nullptr, {true, 4, 3}, &numbers_48, &defaults_48},
  {"room.stuck_valve", "tankwright::room::stuck_valve", "conservation of salt", required_49, fields_49, true, &key_of_type<::tankwright::room::stuck_valve_result>, &answer_with<&call_49>, &make_with<&call_49>, {true, 7, 3}, &numbers_49, &defaults_49},
  {"room.largest_reservoir", "tankwright::room::largest_reservoir", "conservation of salt", required_50, fields_50, true, &key_of_type<::tankwright::room::reservoir_limit>, &answer_with<&call_50>, &make_with<&call_50>, {false, 0, 0}, nullptr, nullptr},
  {"room.return_level", "tankwright::room::return_level", "mass balance", required_51, fields_51, false, &key_of_type<::tankwright::room::return_chamber_result>, &answer_with<&call_51>, &make_with<&call_51>, {true, 6, 6}, &numbers_51, &defaults_51},
  {"room.transmittance", "tankwright::room::transmittance", "EN ISO 6946", {}, fields_52, false, nullptr, &answer_with<&call_52>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"room.linear_warm_up_time", "tankwright::room::linear_warm_up_time", "energy balance", required_53, fields_53, false, nullptr, &answer_with<&call_53>, nullptr, {true, 6, 1}, &numbers_53, &defaults_53},
  {"room.warm_up", "tankwright::room::warm_up", "energy balance; Gauss and Legendre's quadrature", required_54, fields_54, true, &key_of_type<::tankwright::room::warm_up_result>, &answer_with<&call_54>, &make_with<&call_54>, {false, 0, 0}, nullptr, nullptr},
  {"room.settled_humidity_ratio", "tankwright::room::settled_humidity_ratio", "mass balance", required_55, fields_55, false, &key_of_type<::tankwright::room::humidity_ratio>, &answer_with<&call_55>, &make_with<&call_55>, {false, 0, 0}, nullptr, nullptr},
  {"room.humidity_time_constant", "tankwright::room::humidity_time_constant", "mass balance", required_56, fields_56, false, nullptr, &answer_with<&call_56>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"room.humidity_ratio_after", "tankwright::room::humidity_ratio_after", "mass balance", required_57, fields_57, false, &key_of_type<::tankwright::room::humidity_ratio>, &answer_with<&call_57>, &make_with<&call_57>, {false, 0, 0}, nullptr, nullptr},
  {"room.wet_bulb", "tankwright::room::wet_bulb", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 33 and 35", required_58, fields_58, true, nullptr, &answer_with<&call_58>, nullptr, {true, 3, 1}, &numbers_58, &defaults_58},
  {"room.air_from_with_air_of_wet_bulb", "tankwright::room::air_from", "ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 33 and 35", required_59, fields_59, true, &key_of_type<::tankwright::room::air>, &answer_with<&call_59>, &make_with<&call_59>, {true, 3, 3}, &numbers_59, &defaults_59},
};

}  // namespace

std::span<const row> room_rows() { return rows; }

std::span<const constant> room_constants() {
  static const constant all[] = {
    named("glazing_surface_resistance", ::tankwright::room::glazing_surface_resistance),
    named("mould_surface_resistance", ::tankwright::room::mould_surface_resistance),
    named("mould_humidity", ::tankwright::room::mould_humidity),
    named("dripping_humidity", ::tankwright::room::dripping_humidity),
    named("light_through_a_metre", ::tankwright::room::light_through_a_metre),
    named("usual_leakage", ::tankwright::room::usual_leakage),
    named("glass_conductivity", ::tankwright::room::glass_conductivity),
    named("acrylic_conductivity", ::tankwright::room::acrylic_conductivity),
    named("plywood_conductivity", ::tankwright::room::plywood_conductivity),
    named("softwood_conductivity", ::tankwright::room::softwood_conductivity),
    named("glass_fibre_conductivity", ::tankwright::room::glass_fibre_conductivity),
    named("pvc_conductivity", ::tankwright::room::pvc_conductivity),
    named("polystyrene_conductivity", ::tankwright::room::polystyrene_conductivity),
    named("polyurethane_conductivity", ::tankwright::room::polyurethane_conductivity),
    named("indoor_film", ::tankwright::room::indoor_film),
    named("water_film", ::tankwright::room::water_film),
    named("outdoor_film", ::tankwright::room::outdoor_film),
  };
  return all;
}

}  // namespace tankwright_formulas
