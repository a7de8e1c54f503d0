// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#include "water.hpp"

namespace tankwright_formulas {

namespace {
constexpr std::string_view words_of_edge[] = {"closed", "open"};
}  // namespace
void io<::tankwright::edge>::write(answer& out, const ::tankwright::edge& v) { out.text(words_of_edge[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_standing[] = {"published", "secondary", "from_memory", "common_practice"};
}  // namespace
::tankwright::standing io<::tankwright::standing>::read(const given& in) { return static_cast<::tankwright::standing>(in.word(words_of_standing)); }
void io<::tankwright::standing>::write(answer& out, const ::tankwright::standing& v) { out.text(words_of_standing[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_water_constituent[] = {"sodium", "magnesium", "calcium", "potassium", "strontium", "chloride", "sulphate", "bicarbonate", "bromide", "carbonate", "borate", "fluoride", "hydroxide", "boric_acid", "carbon_dioxide"};
}  // namespace
::tankwright::water::constituent io<::tankwright::water::constituent>::read(const given& in) { return static_cast<::tankwright::water::constituent>(in.word(words_of_water_constituent)); }

namespace {
constexpr std::string_view words_of_water_refractometer_scale[] = {"seawater", "sodium_chloride"};
}  // namespace
::tankwright::water::refractometer_scale io<::tankwright::water::refractometer_scale>::read(const given& in) { return static_cast<::tankwright::water::refractometer_scale>(in.word(words_of_water_refractometer_scale)); }

namespace {
constexpr std::string_view words_of_water_temperature_compensation[] = {"none", "automatic"};
}  // namespace
::tankwright::water::temperature_compensation io<::tankwright::water::temperature_compensation>::read(const given& in) { return static_cast<::tankwright::water::temperature_compensation>(in.word(words_of_water_temperature_compensation)); }

::tankwright::water::alkalinity io<::tankwright::water::alkalinity>::read(const given& in) {
  if (std::optional<::tankwright::water::alkalinity> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"milliequivalents_per_litre", "degrees_kh", "milligrams_caco3_per_litre"};
  const std::size_t way = in.way(ways, -1, -1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::water::alkalinity::from_milliequivalents_per_litre(io<double>::read(one));
    case 1: return ::tankwright::water::alkalinity::from_degrees_kh(io<double>::read(one));
    default: return ::tankwright::water::alkalinity::from_milligrams_caco3_per_litre(io<double>::read(one));
  }
}
void io<::tankwright::water::alkalinity>::write(answer& out, const ::tankwright::water::alkalinity& v) {
  out.quantity("alkalinity", "", tw::core::si_number(::tankwright::water::in_milliequivalents_per_litre(v)));
}

::tankwright::water::conductivity_at_25 io<::tankwright::water::conductivity_at_25>::read(const given& in) {
  if (std::optional<::tankwright::water::conductivity_at_25> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::water::conductivity_at_25(io<::tankwright::electrical_conductivity>::read(in));
}
void io<::tankwright::water::conductivity_at_25>::write(answer& out, const ::tankwright::water::conductivity_at_25& v) {
  out.quantity("conductivity_at_25", "S/m", tw::core::si_number(v.value()));
}

::tankwright::water::conductivity_ratio io<::tankwright::water::conductivity_ratio>::read(const given& in) {
  if (std::optional<::tankwright::water::conductivity_ratio> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::water::conductivity_ratio(io<double>::read(in));
}
void io<::tankwright::water::conductivity_ratio>::write(answer& out, const ::tankwright::water::conductivity_ratio& v) {
  out.quantity("conductivity_ratio", "", tw::core::si_number(v.value()));
}

::tankwright::water::conservative_temperature io<::tankwright::water::conservative_temperature>::read(const given& in) {
  if (std::optional<::tankwright::water::conservative_temperature> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::water::conservative_temperature(io<::tankwright::temperature>::read(in));
}
void io<::tankwright::water::conservative_temperature>::write(answer& out, const ::tankwright::water::conservative_temperature& v) {
  out.quantity("conservative_temperature", "K", tw::core::si_number(v.value()));
}

::tankwright::water::free_ammonia io<::tankwright::water::free_ammonia>::read(const given& in) {
  if (std::optional<::tankwright::water::free_ammonia> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"nitrogen", "ammonia"};
  const std::size_t way = in.way(ways, -1, -1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::water::free_ammonia::from_nitrogen(io<::tankwright::mass_density>::read(one));
    default: return ::tankwright::water::free_ammonia::from_ammonia(io<::tankwright::mass_density>::read(one));
  }
}
void io<::tankwright::water::free_ammonia>::write(answer& out, const ::tankwright::water::free_ammonia& v) {
  out.begin();
  out.key("nitrogen");
  io<::tankwright::mass_density>::write(out, v.as_nitrogen());
  out.key("ammonia");
  io<::tankwright::mass_density>::write(out, v.as_ammonia());
  out.end();
}

::tankwright::water::ph_free io<::tankwright::water::ph_free>::read(const given& in) {
  if (std::optional<::tankwright::water::ph_free> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::water::ph_free(io<double>::read(in));
}
void io<::tankwright::water::ph_free>::write(answer& out, const ::tankwright::water::ph_free& v) {
  out.quantity("ph_free", "", tw::core::si_number(v.value()));
}

::tankwright::water::ph_nbs io<::tankwright::water::ph_nbs>::read(const given& in) {
  if (std::optional<::tankwright::water::ph_nbs> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::water::ph_nbs(io<double>::read(in));
}

::tankwright::water::ph_reading io<::tankwright::water::ph_reading>::read(const given& in) {
  if (std::optional<::tankwright::water::ph_reading> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"ph_total", "ph_free", "ph_nbs"};
  const std::size_t way = in.way(ways, -1, -1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::water::ph_reading(io<::tankwright::water::ph_total>::read(one));
    case 1: return ::tankwright::water::ph_reading(io<::tankwright::water::ph_free>::read(one));
    default: return ::tankwright::water::ph_reading(io<::tankwright::water::ph_nbs>::read(one));
  }
}

::tankwright::water::ph_total io<::tankwright::water::ph_total>::read(const given& in) {
  if (std::optional<::tankwright::water::ph_total> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::water::ph_total(io<double>::read(in));
}
void io<::tankwright::water::ph_total>::write(answer& out, const ::tankwright::water::ph_total& v) {
  out.quantity("ph_total", "", tw::core::si_number(v.value()));
}

::tankwright::water::refractive_index io<::tankwright::water::refractive_index>::read(const given& in) {
  if (std::optional<::tankwright::water::refractive_index> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::water::refractive_index(io<double>::read(in));
}
void io<::tankwright::water::refractive_index>::write(answer& out, const ::tankwright::water::refractive_index& v) {
  out.quantity("refractive_index", "", tw::core::si_number(v.value()));
}

::tankwright::water::specific_gravity io<::tankwright::water::specific_gravity>::read(const given& in) {
  if (std::optional<::tankwright::water::specific_gravity> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view parts[] = {"value", "scale"};
  in.only(parts);
  const auto a0 = must<double>(in, "value");
  const auto a1 = must<::tankwright::water::gravity_scale>(in, "scale");
  return ::tankwright::water::specific_gravity{a0, a1};
}
void io<::tankwright::water::specific_gravity>::write(answer& out, const ::tankwright::water::specific_gravity& v) {
  out.begin();
  out.key("value");
  io<double>::write(out, v.value());
  out.key("scale");
  io<::tankwright::water::gravity_scale>::write(out, v.scale());
  out.end();
}

::tankwright::water::total_ammonia io<::tankwright::water::total_ammonia>::read(const given& in) {
  if (std::optional<::tankwright::water::total_ammonia> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"nitrogen", "ammonia", "ammonium"};
  const std::size_t way = in.way(ways, -1, -1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::water::total_ammonia::from_nitrogen(io<::tankwright::mass_density>::read(one));
    case 1: return ::tankwright::water::total_ammonia::from_ammonia(io<::tankwright::mass_density>::read(one));
    default: return ::tankwright::water::total_ammonia::from_ammonium(io<::tankwright::mass_density>::read(one));
  }
}
void io<::tankwright::water::total_ammonia>::write(answer& out, const ::tankwright::water::total_ammonia& v) {
  out.begin();
  out.key("nitrogen");
  io<::tankwright::mass_density>::write(out, v.as_nitrogen());
  out.key("ammonia");
  io<::tankwright::mass_density>::write(out, v.as_ammonia());
  out.key("ammonium");
  io<::tankwright::mass_density>::write(out, v.as_ammonium());
  out.end();
}

::tankwright::citation io<::tankwright::citation>::read(const given& in) {
  if (std::optional<::tankwright::citation> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("clegg_whitfield_1995")) return ::tankwright::water::clegg_whitfield_1995;
  if (in.is_named("emerson_1975")) return ::tankwright::water::emerson_1975;
  if (in.is_named("bell_2008")) return ::tankwright::water::bell_2008;
  if (in.is_named("khoo_1977")) return ::tankwright::water::khoo_1977;
  if (in.is_named("brine_table_1974")) return ::tankwright::water::brine_table_1974;
  if (in.is_named("lueker_2000")) return ::tankwright::water::lueker_2000;
  if (in.is_named("weiss_1974")) return ::tankwright::water::weiss_1974;
  if (in.is_named("millero_2008_composition")) return ::tankwright::water::millero_2008_composition;
  if (in.is_named("kester_1967")) return ::tankwright::water::kester_1967;
  if (in.is_named("pss78")) return ::tankwright::water::pss78;
  if (in.is_named("culkin_smith_1980")) return ::tankwright::water::culkin_smith_1980;
  if (in.is_named("hill_1986")) return ::tankwright::water::hill_1986;
  if (in.is_named("feistel_2008")) return ::tankwright::water::feistel_2008;
  if (in.is_named("roquet_2015")) return ::tankwright::water::roquet_2015;
  if (in.is_named("millero_poisson_1981")) return ::tankwright::water::millero_poisson_1981;
  if (in.is_named("millero_1978")) return ::tankwright::water::millero_1978;
  if (in.is_named("feistel_2008_heat")) return ::tankwright::water::feistel_2008_heat;
  if (in.is_named("unesco_44_heat")) return ::tankwright::water::unesco_44_heat;
  if (in.is_named("sharqawy_2010_heat")) return ::tankwright::water::sharqawy_2010_heat;
  if (in.is_named("teos10_evaporation")) return ::tankwright::water::teos10_evaporation;
  if (in.is_named("hyland_wexler_1983")) return ::tankwright::water::hyland_wexler_1983;
  if (in.is_named("garcia_gordon_1992")) return ::tankwright::water::garcia_gordon_1992;
  if (in.is_named("benson_krause_1984")) return ::tankwright::water::benson_krause_1984;
  if (in.is_named("weiss_1970")) return ::tankwright::water::weiss_1970;
  if (in.is_named("millard_seaver_1990")) return ::tankwright::water::millard_seaver_1990;
  if (in.is_named("quan_fry_1995")) return ::tankwright::water::quan_fry_1995;
  if (in.is_named("sodium_chloride_index")) return ::tankwright::water::sodium_chloride_index;
  if (in.is_named("millero_2008")) return ::tankwright::water::millero_2008;
  if (in.is_named("iapws_g14_19")) return ::tankwright::water::iapws_g14_19;
  if (in.is_named("iapws_r1_76")) return ::tankwright::water::iapws_r1_76;
  if (in.is_named("iapws_g10_15")) return ::tankwright::water::iapws_g10_15;
  if (in.is_named("iapws_r15_11")) return ::tankwright::water::iapws_r15_11;
  if (in.is_named("jamieson_tudhope_1970")) return ::tankwright::water::jamieson_tudhope_1970;
  if (in.is_named("iapws_r7_97")) return ::tankwright::water::iapws_r7_97;
  if (in.is_named("dickson_2007")) return ::tankwright::water::dickson_2007;
  if (in.is_named("witting_1908")) return ::tankwright::water::witting_1908;
  if (in.is_named("weiss_price_1980")) return ::tankwright::water::weiss_price_1980;
  if (in.is_named("nayar_2016")) return ::tankwright::water::nayar_2016;
  if (in.is_named("sharqawy_2010_osmotic")) return ::tankwright::water::sharqawy_2010_osmotic;
  if (in.is_named("sharqawy_2010_viscosity")) return ::tankwright::water::sharqawy_2010_viscosity;
  if (in.is_named("millero_1974")) return ::tankwright::water::millero_1974;
  if (in.is_named("iso_8655_6")) return ::tankwright::water::iso_8655_6;
  static constexpr std::string_view known[] = {"clegg_whitfield_1995", "emerson_1975", "bell_2008", "khoo_1977", "brine_table_1974", "lueker_2000", "weiss_1974", "millero_2008_composition", "kester_1967", "pss78", "culkin_smith_1980", "hill_1986", "feistel_2008", "roquet_2015", "millero_poisson_1981", "millero_1978", "feistel_2008_heat", "unesco_44_heat", "sharqawy_2010_heat", "teos10_evaporation", "hyland_wexler_1983", "garcia_gordon_1992", "benson_krause_1984", "weiss_1970", "millard_seaver_1990", "quan_fry_1995", "sodium_chloride_index", "millero_2008", "iapws_g14_19", "iapws_r1_76", "iapws_g10_15", "iapws_r15_11", "jamieson_tudhope_1970", "iapws_r7_97", "dickson_2007", "witting_1908", "weiss_price_1980", "nayar_2016", "sharqawy_2010_osmotic", "sharqawy_2010_viscosity", "millero_1974", "iso_8655_6"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::citation io<::tankwright::citation>::fields(const given& in) {
  static constexpr std::string_view known[] = {"authors", "year", "title", "where", "read_as"};
  in.only(known);
  ::tankwright::citation v{.authors = may_or<std::string_view>(in, "authors", [] { return std::string_view{}; }), .year = must<int>(in, "year"), .title = may_or<std::string_view>(in, "title", [] { return std::string_view{}; }), .where = may_or<std::string_view>(in, "where", [] { return std::string_view{}; })};
  if (in.has("read_as")) v.read_as = must<::tankwright::standing>(in, "read_as");
  return v;
}
void io<::tankwright::citation>::write(answer& out, const ::tankwright::citation& v) {
  out.begin();
  out.key("authors");
  io<std::string_view>::write(out, v.authors);
  out.key("year");
  io<int>::write(out, v.year);
  out.key("title");
  io<std::string_view>::write(out, v.title);
  out.key("where");
  io<std::string_view>::write(out, v.where);
  out.key("read_as");
  io<::tankwright::standing>::write(out, v.read_as);
  out.end();
}

void io<::tankwright::interval>::write(answer& out, const ::tankwright::interval& v) {
  out.begin();
  out.key("low");
  io<double>::write(out, v.low);
  out.key("high");
  io<double>::write(out, v.high);
  out.key("low_edge");
  io<::tankwright::edge>::write(out, v.low_edge);
  out.key("high_edge");
  io<::tankwright::edge>::write(out, v.high_edge);
  out.end();
}

void io<::tankwright::water::alkalinity_dose>::write(answer& out, const ::tankwright::water::alkalinity_dose& v) {
  out.begin();
  out.key("sodium_bicarbonate");
  io<::tankwright::mass>::write(out, v.sodium_bicarbonate);
  out.key("sodium_carbonate");
  io<::tankwright::mass>::write(out, v.sodium_carbonate);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::water::alkalinity_step io<::tankwright::water::alkalinity_step>::read(const given& in) {
  if (std::optional<::tankwright::water::alkalinity_step> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::alkalinity_step io<::tankwright::water::alkalinity_step>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "from", "target"};
  in.only(known);
  const ::tankwright::water::alkalinity_step v{.volume = must<::tankwright::volume>(in, "volume"), .from = must<::tankwright::water::alkalinity>(in, "from"), .target = must<::tankwright::water::alkalinity>(in, "target")};
  return v;
}
void io<::tankwright::water::alkalinity_step>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::ammonia_sample io<::tankwright::water::ammonia_sample>::read(const given& in) {
  if (std::optional<::tankwright::water::ammonia_sample> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::ammonia_sample io<::tankwright::water::ammonia_sample>::fields(const given& in) {
  static constexpr std::string_view known[] = {"total", "ph", "salinity", "temperature"};
  in.only(known);
  const ::tankwright::water::ammonia_sample v{.total = must<::tankwright::water::total_ammonia>(in, "total"), .ph = must<::tankwright::water::ph_reading>(in, "ph"), .salinity = must<::tankwright::practical_salinity>(in, "salinity"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  return v;
}

::tankwright::water::batch_changes io<::tankwright::water::batch_changes>::read(const given& in) {
  if (std::optional<::tankwright::water::batch_changes> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::batch_changes io<::tankwright::water::batch_changes>::fields(const given& in) {
  static constexpr std::string_view known[] = {"part", "times"};
  in.only(known);
  const ::tankwright::water::batch_changes v{.part = must<::tankwright::proportion>(in, "part"), .times = must<int>(in, "times")};
  return v;
}
void io<::tankwright::water::batch_changes>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::batch_goal io<::tankwright::water::batch_goal>::read(const given& in) {
  if (std::optional<::tankwright::water::batch_goal> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::batch_goal io<::tankwright::water::batch_goal>::fields(const given& in) {
  static constexpr std::string_view known[] = {"part", "left"};
  in.only(known);
  const ::tankwright::water::batch_goal v{.part = must<::tankwright::proportion>(in, "part"), .left = must<::tankwright::proportion>(in, "left")};
  return v;
}
void io<::tankwright::water::batch_goal>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::water::blended_water>::write(answer& out, const ::tankwright::water::blended_water& v) {
  out.begin();
  out.key("salinity");
  io<::tankwright::practical_salinity>::write(out, v.salinity);
  out.key("temperature");
  io<::tankwright::temperature>::write(out, v.temperature);
  out.key("mass");
  io<::tankwright::mass>::write(out, v.mass);
  out.key("volume");
  io<::tankwright::volume>::write(out, v.volume);
  out.end();
}

::tankwright::water::body_material io<::tankwright::water::body_material>::read(const given& in) {
  if (std::optional<::tankwright::water::body_material> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("hydrometer_glass")) return ::tankwright::water::hydrometer_glass;
  if (in.is_named("hydrometer_plastic")) return ::tankwright::water::hydrometer_plastic;
  static constexpr std::string_view known[] = {"hydrometer_glass", "hydrometer_plastic"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::water::body_material io<::tankwright::water::body_material>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "expansion", "source", "read_as"};
  in.only(known);
  const ::tankwright::water::body_material v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .expansion = must<::tankwright::temperature_coefficient>(in, "expansion"), .source = may_or<std::string_view>(in, "source", [] { return std::string_view{}; }), .read_as = must<::tankwright::standing>(in, "read_as")};
  return v;
}

void io<::tankwright::water::breathed_water>::write(answer& out, const ::tankwright::water::breathed_water& v) {
  out.begin();
  out.key("ph");
  io<double>::write(out, v.ph);
  out.key("carbon_dioxide");
  io<::tankwright::mass_density>::write(out, v.carbon_dioxide);
  out.key("partial_pressure");
  io<double>::write(out, v.partial_pressure);
  out.end();
}

void io<::tankwright::water::carbonate_constants>::write(answer& out, const ::tankwright::water::carbonate_constants& v) {
  out.begin();
  out.key("pk1");
  io<double>::write(out, v.pk1);
  out.key("pk2");
  io<double>::write(out, v.pk2);
  out.key("solubility");
  io<double>::write(out, v.solubility);
  out.end();
}

::tankwright::water::change_routine io<::tankwright::water::change_routine>::read(const given& in) {
  if (std::optional<::tankwright::water::change_routine> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::change_routine io<::tankwright::water::change_routine>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "every", "part", "made", "in_new_water", "dose", "cleared"};
  in.only(known);
  ::tankwright::water::change_routine v{.volume = must<::tankwright::volume>(in, "volume"), .every = must<::tankwright::duration>(in, "every"), .part = must<::tankwright::proportion>(in, "part")};
  if (in.has("made")) v.made = must<::tankwright::mass_flow>(in, "made");
  if (in.has("in_new_water")) v.in_new_water = must<::tankwright::mass_density>(in, "in_new_water");
  if (in.has("dose")) v.dose = must<::tankwright::mass>(in, "dose");
  if (in.has("cleared")) v.cleared = must<::tankwright::flow_rate>(in, "cleared");
  return v;
}
void io<::tankwright::water::change_routine>::defaults(double*& at) {
  constexpr double zeros[7] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::change_routine v{.volume = io<::tankwright::volume>::take(zero), .every = io<::tankwright::duration>::take(zero), .part = io<::tankwright::proportion>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::mass_flow>::put(v.made, at);
  io<::tankwright::mass_density>::put(v.in_new_water, at);
  io<::tankwright::mass>::put(v.dose, at);
  io<::tankwright::flow_rate>::put(v.cleared, at);
}

::tankwright::water::closed_water io<::tankwright::water::closed_water>::read(const given& in) {
  if (std::optional<::tankwright::water::closed_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::closed_water io<::tankwright::water::closed_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"ph", "alkalinity", "salinity", "temperature", "gas_over_water"};
  in.only(known);
  ::tankwright::water::closed_water v{.ph = must<double>(in, "ph"), .alkalinity = must<double>(in, "alkalinity"), .salinity = must<::tankwright::practical_salinity>(in, "salinity"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("gas_over_water")) v.gas_over_water = must<double>(in, "gas_over_water");
  return v;
}
void io<::tankwright::water::closed_water>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::closed_water v{.ph = io<double>::take(zero), .alkalinity = io<double>::take(zero), .salinity = io<::tankwright::practical_salinity>::take(zero), .temperature = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.gas_over_water, at);
}

::tankwright::water::compensated_reading io<::tankwright::water::compensated_reading>::read(const given& in) {
  if (std::optional<::tankwright::water::compensated_reading> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::compensated_reading io<::tankwright::water::compensated_reading>::fields(const given& in) {
  static constexpr std::string_view known[] = {"shown", "water", "coefficient", "reference"};
  in.only(known);
  ::tankwright::water::compensated_reading v{.shown = must<::tankwright::electrical_conductivity>(in, "shown"), .water = must<::tankwright::temperature>(in, "water"), .coefficient = must<::tankwright::temperature_coefficient>(in, "coefficient")};
  if (in.has("reference")) v.reference = must<::tankwright::temperature>(in, "reference");
  return v;
}
void io<::tankwright::water::compensated_reading>::write(answer& out, const ::tankwright::water::compensated_reading& v) {
  out.begin();
  out.key("shown");
  io<::tankwright::electrical_conductivity>::write(out, v.shown);
  out.key("water");
  io<::tankwright::temperature>::write(out, v.water);
  out.key("coefficient");
  io<::tankwright::temperature_coefficient>::write(out, v.coefficient);
  out.key("reference");
  io<::tankwright::temperature>::write(out, v.reference);
  out.end();
}
void io<::tankwright::water::compensated_reading>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::compensated_reading v{.shown = io<::tankwright::electrical_conductivity>::take(zero), .water = io<::tankwright::temperature>::take(zero), .coefficient = io<::tankwright::temperature_coefficient>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::temperature>::put(v.reference, at);
}

::tankwright::water::deep_seawater io<::tankwright::water::deep_seawater>::read(const given& in) {
  if (std::optional<::tankwright::water::deep_seawater> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::deep_seawater io<::tankwright::water::deep_seawater>::fields(const given& in) {
  static constexpr std::string_view known[] = {"salinity", "temperature", "pressure"};
  in.only(known);
  const ::tankwright::water::deep_seawater v{.salinity = must<::tankwright::absolute_salinity>(in, "salinity"), .temperature = must<::tankwright::water::conservative_temperature>(in, "temperature"), .pressure = must<::tankwright::gauge_pressure>(in, "pressure")};
  return v;
}
void io<::tankwright::water::deep_seawater>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::water::drifted_system>::write(answer& out, const ::tankwright::water::drifted_system& v) {
  out.begin();
  out.key("salinity");
  io<::tankwright::practical_salinity>::write(out, v.salinity);
  out.key("volume");
  io<::tankwright::volume>::write(out, v.volume);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::water::drifting_system io<::tankwright::water::drifting_system>::read(const given& in) {
  if (std::optional<::tankwright::water::drifting_system> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::drifting_system io<::tankwright::water::drifting_system>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "salinity", "temperature", "evaporation", "top_off", "top_off_salinity"};
  in.only(known);
  ::tankwright::water::drifting_system v{.volume = must<::tankwright::volume>(in, "volume"), .salinity = must<::tankwright::practical_salinity>(in, "salinity"), .temperature = must<::tankwright::temperature>(in, "temperature"), .evaporation = must<::tankwright::flow_rate>(in, "evaporation"), .top_off = must<::tankwright::flow_rate>(in, "top_off")};
  if (in.has("top_off_salinity")) v.top_off_salinity = must<::tankwright::practical_salinity>(in, "top_off_salinity");
  return v;
}
void io<::tankwright::water::drifting_system>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::drifting_system v{.volume = io<::tankwright::volume>::take(zero), .salinity = io<::tankwright::practical_salinity>::take(zero), .temperature = io<::tankwright::temperature>::take(zero), .evaporation = io<::tankwright::flow_rate>::take(zero), .top_off = io<::tankwright::flow_rate>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::practical_salinity>::put(v.top_off_salinity, at);
}

void io<::tankwright::water::evaporated_water>::write(answer& out, const ::tankwright::water::evaporated_water& v) {
  out.begin();
  out.key("mass");
  io<::tankwright::mass>::write(out, v.mass);
  out.key("volume");
  io<::tankwright::volume>::write(out, v.volume);
  out.end();
}

::tankwright::water::evaporation_between io<::tankwright::water::evaporation_between>::read(const given& in) {
  if (std::optional<::tankwright::water::evaporation_between> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::evaporation_between io<::tankwright::water::evaporation_between>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "first", "second", "temperature"};
  in.only(known);
  const ::tankwright::water::evaporation_between v{.volume = must<::tankwright::volume>(in, "volume"), .first = must<::tankwright::practical_salinity>(in, "first"), .second = must<::tankwright::practical_salinity>(in, "second"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  return v;
}
void io<::tankwright::water::evaporation_between>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::falling_level io<::tankwright::water::falling_level>::read(const given& in) {
  if (std::optional<::tankwright::water::falling_level> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::falling_level io<::tankwright::water::falling_level>::fields(const given& in) {
  static constexpr std::string_view known[] = {"start", "falls_a_day", "time", "changed", "every"};
  in.only(known);
  ::tankwright::water::falling_level v{.start = must<double>(in, "start"), .falls_a_day = must<double>(in, "falls_a_day"), .time = must<::tankwright::duration>(in, "time")};
  if (in.has("changed")) v.changed = must<::tankwright::proportion>(in, "changed");
  if (in.has("every")) v.every = must<::tankwright::duration>(in, "every");
  return v;
}
void io<::tankwright::water::falling_level>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::falling_level v{.start = io<double>::take(zero), .falls_a_day = io<double>::take(zero), .time = io<::tankwright::duration>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::proportion>::put(v.changed, at);
  io<::tankwright::duration>::put(v.every, at);
}

::tankwright::water::finished_water io<::tankwright::water::finished_water>::read(const given& in) {
  if (std::optional<::tankwright::water::finished_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::finished_water io<::tankwright::water::finished_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "target", "temperature", "mix_yield"};
  in.only(known);
  const ::tankwright::water::finished_water v{.volume = must<::tankwright::volume>(in, "volume"), .target = must<::tankwright::practical_salinity>(in, "target"), .temperature = must<::tankwright::temperature>(in, "temperature"), .mix_yield = must<::tankwright::proportion>(in, "mix_yield")};
  return v;
}
void io<::tankwright::water::finished_water>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::water::free_ammonia_result>::write(answer& out, const ::tankwright::water::free_ammonia_result& v) {
  out.begin();
  out.key("concentration");
  io<::tankwright::estimate<::tankwright::water::free_ammonia>>::write(out, v.concentration);
  out.key("fraction");
  io<::tankwright::estimate<::tankwright::proportion>>::write(out, v.fraction);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::water::gravity_scale io<::tankwright::water::gravity_scale>::read(const given& in) {
  if (std::optional<::tankwright::water::gravity_scale> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("scale_15_15")) return ::tankwright::water::scale_15_15;
  if (in.is_named("scale_60f_60f")) return ::tankwright::water::scale_60f_60f;
  if (in.is_named("scale_20_20")) return ::tankwright::water::scale_20_20;
  if (in.is_named("scale_25_25")) return ::tankwright::water::scale_25_25;
  if (in.is_named("scale_15_4")) return ::tankwright::water::scale_15_4;
  if (in.is_named("scale_20_4")) return ::tankwright::water::scale_20_4;
  if (in.is_named("scale_25_4")) return ::tankwright::water::scale_25_4;
  static constexpr std::string_view known[] = {"scale_15_15", "scale_60f_60f", "scale_20_20", "scale_25_25", "scale_15_4", "scale_20_4", "scale_25_4"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::water::gravity_scale io<::tankwright::water::gravity_scale>::fields(const given& in) {
  static constexpr std::string_view known[] = {"sample", "reference"};
  in.only(known);
  const ::tankwright::water::gravity_scale v{.sample = must<::tankwright::temperature>(in, "sample"), .reference = must<::tankwright::temperature>(in, "reference")};
  return v;
}
void io<::tankwright::water::gravity_scale>::write(answer& out, const ::tankwright::water::gravity_scale& v) {
  out.begin();
  out.key("sample");
  io<::tankwright::temperature>::write(out, v.sample);
  out.key("reference");
  io<::tankwright::temperature>::write(out, v.reference);
  out.end();
}
void io<::tankwright::water::gravity_scale>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::hydrometer io<::tankwright::water::hydrometer>::read(const given& in) {
  if (std::optional<::tankwright::water::hydrometer> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::hydrometer io<::tankwright::water::hydrometer>::fields(const given& in) {
  static constexpr std::string_view known[] = {"scale", "body", "division"};
  in.only(known);
  ::tankwright::water::hydrometer v{.scale = must<::tankwright::water::gravity_scale>(in, "scale")};
  if (in.has("body")) v.body = must<::tankwright::water::body_material>(in, "body");
  if (in.has("division")) v.division = must<double>(in, "division");
  return v;
}

::tankwright::water::hydrometer_observation io<::tankwright::water::hydrometer_observation>::read(const given& in) {
  if (std::optional<::tankwright::water::hydrometer_observation> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::hydrometer_observation io<::tankwright::water::hydrometer_observation>::fields(const given& in) {
  static constexpr std::string_view known[] = {"reading", "water", "instrument"};
  in.only(known);
  const ::tankwright::water::hydrometer_observation v{.reading = must<double>(in, "reading"), .water = must<::tankwright::temperature>(in, "water"), .instrument = must<::tankwright::water::hydrometer>(in, "instrument")};
  return v;
}

::tankwright::water::liquid io<::tankwright::water::liquid>::read(const given& in) {
  if (std::optional<::tankwright::water::liquid> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::liquid io<::tankwright::water::liquid>::fields(const given& in) {
  static constexpr std::string_view known[] = {"density", "viscosity"};
  in.only(known);
  const ::tankwright::water::liquid v{.density = must<::tankwright::mass_density>(in, "density"), .viscosity = must<::tankwright::dynamic_viscosity>(in, "viscosity")};
  return v;
}
void io<::tankwright::water::liquid>::write(answer& out, const ::tankwright::water::liquid& v) {
  out.begin();
  out.key("density");
  io<::tankwright::mass_density>::write(out, v.density);
  out.key("viscosity");
  io<::tankwright::dynamic_viscosity>::write(out, v.viscosity);
  out.end();
}
void io<::tankwright::water::liquid>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::lit_seawater io<::tankwright::water::lit_seawater>::read(const given& in) {
  if (std::optional<::tankwright::water::lit_seawater> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::lit_seawater io<::tankwright::water::lit_seawater>::fields(const given& in) {
  static constexpr std::string_view known[] = {"salinity", "temperature", "wavelength"};
  in.only(known);
  ::tankwright::water::lit_seawater v{.salinity = must<::tankwright::practical_salinity>(in, "salinity"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("wavelength")) v.wavelength = must<::tankwright::length>(in, "wavelength");
  return v;
}
void io<::tankwright::water::lit_seawater>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::lit_seawater v{.salinity = io<::tankwright::practical_salinity>::take(zero), .temperature = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.wavelength, at);
}

void io<::tankwright::water::mix_to_add>::write(answer& out, const ::tankwright::water::mix_to_add& v) {
  out.begin();
  out.key("mix");
  io<::tankwright::mass>::write(out, v.mix);
  out.key("finished");
  io<::tankwright::volume>::write(out, v.finished);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::water::mixed_substance io<::tankwright::water::mixed_substance>::read(const given& in) {
  if (std::optional<::tankwright::water::mixed_substance> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::mixed_substance io<::tankwright::water::mixed_substance>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "start", "made", "new_water", "in_new_water", "cleared"};
  in.only(known);
  ::tankwright::water::mixed_substance v{.volume = must<::tankwright::volume>(in, "volume")};
  if (in.has("start")) v.start = must<::tankwright::mass_density>(in, "start");
  if (in.has("made")) v.made = must<::tankwright::mass_flow>(in, "made");
  if (in.has("new_water")) v.new_water = must<::tankwright::flow_rate>(in, "new_water");
  if (in.has("in_new_water")) v.in_new_water = must<::tankwright::mass_density>(in, "in_new_water");
  if (in.has("cleared")) v.cleared = must<::tankwright::flow_rate>(in, "cleared");
  return v;
}
void io<::tankwright::water::mixed_substance>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::mixed_substance v{.volume = io<::tankwright::volume>::take(zero)};
  not_given(at, 1);
  io<::tankwright::mass_density>::put(v.start, at);
  io<::tankwright::mass_flow>::put(v.made, at);
  io<::tankwright::flow_rate>::put(v.new_water, at);
  io<::tankwright::mass_density>::put(v.in_new_water, at);
  io<::tankwright::flow_rate>::put(v.cleared, at);
}

::tankwright::water::new_water io<::tankwright::water::new_water>::read(const given& in) {
  if (std::optional<::tankwright::water::new_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::new_water io<::tankwright::water::new_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "target", "temperature", "mix_yield"};
  in.only(known);
  const ::tankwright::water::new_water v{.volume = must<::tankwright::volume>(in, "volume"), .target = must<::tankwright::practical_salinity>(in, "target"), .temperature = must<::tankwright::temperature>(in, "temperature"), .mix_yield = must<::tankwright::proportion>(in, "mix_yield")};
  return v;
}
void io<::tankwright::water::new_water>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::new_water_unmeasured io<::tankwright::water::new_water_unmeasured>::read(const given& in) {
  if (std::optional<::tankwright::water::new_water_unmeasured> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::new_water_unmeasured io<::tankwright::water::new_water_unmeasured>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "target", "temperature", "mix_yield"};
  in.only(known);
  ::tankwright::water::new_water_unmeasured v{.volume = must<::tankwright::volume>(in, "volume"), .target = must<::tankwright::practical_salinity>(in, "target"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("mix_yield")) v.mix_yield = must<::tankwright::estimate<::tankwright::proportion>>(in, "mix_yield");
  return v;
}
void io<::tankwright::water::new_water_unmeasured>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::new_water_unmeasured v{.volume = io<::tankwright::volume>::take(zero), .target = io<::tankwright::practical_salinity>::take(zero), .temperature = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::estimate<::tankwright::proportion>>::put(v.mix_yield, at);
}

::tankwright::water::portion io<::tankwright::water::portion>::read(const given& in) {
  if (std::optional<::tankwright::water::portion> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::portion io<::tankwright::water::portion>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "volume", "salinity", "temperature"};
  in.only(known);
  ::tankwright::water::portion v{.volume = must<::tankwright::volume>(in, "volume"), .salinity = must<::tankwright::practical_salinity>(in, "salinity"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("label")) v.label = must<std::string_view>(in, "label");
  return v;
}

void io<::tankwright::water::recipe_amounts>::write(answer& out, const ::tankwright::water::recipe_amounts& v) {
  out.begin();
  out.key("salts");
  io<std::array<::tankwright::mass, ::tankwright::water::kester_recipe.size()>>::write(out, v.salts);
  out.key("weighed");
  io<::tankwright::mass>::write(out, v.weighed);
  out.key("anhydrous");
  io<::tankwright::mass>::write(out, v.anhydrous);
  out.key("water");
  io<::tankwright::mass>::write(out, v.water);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::water::recipe_batch io<::tankwright::water::recipe_batch>::read(const given& in) {
  if (std::optional<::tankwright::water::recipe_batch> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::recipe_batch io<::tankwright::water::recipe_batch>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "target", "temperature"};
  in.only(known);
  const ::tankwright::water::recipe_batch v{.volume = must<::tankwright::volume>(in, "volume"), .target = must<::tankwright::practical_salinity>(in, "target"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  return v;
}
void io<::tankwright::water::recipe_batch>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::refraction io<::tankwright::water::refraction>::read(const given& in) {
  if (std::optional<::tankwright::water::refraction> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::refraction io<::tankwright::water::refraction>::fields(const given& in) {
  static constexpr std::string_view known[] = {"index", "temperature", "wavelength"};
  in.only(known);
  ::tankwright::water::refraction v{.index = must<::tankwright::water::refractive_index>(in, "index"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("wavelength")) v.wavelength = must<::tankwright::length>(in, "wavelength");
  return v;
}
void io<::tankwright::water::refraction>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::refraction v{.index = io<::tankwright::water::refractive_index>::take(zero), .temperature = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.wavelength, at);
}

::tankwright::water::refractometer io<::tankwright::water::refractometer>::read(const given& in) {
  if (std::optional<::tankwright::water::refractometer> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::refractometer io<::tankwright::water::refractometer>::fields(const given& in) {
  static constexpr std::string_view known[] = {"scale", "compensation", "division"};
  in.only(known);
  ::tankwright::water::refractometer v{.scale = must<::tankwright::water::refractometer_scale>(in, "scale"), .compensation = must<::tankwright::water::temperature_compensation>(in, "compensation")};
  if (in.has("division")) v.division = must<double>(in, "division");
  return v;
}
void io<::tankwright::water::refractometer>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::refractometer v{.scale = io<::tankwright::water::refractometer_scale>::take(zero), .compensation = io<::tankwright::water::temperature_compensation>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.division, at);
}

::tankwright::water::refractometer_observation io<::tankwright::water::refractometer_observation>::read(const given& in) {
  if (std::optional<::tankwright::water::refractometer_observation> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::refractometer_observation io<::tankwright::water::refractometer_observation>::fields(const given& in) {
  static constexpr std::string_view known[] = {"reading", "prism", "instrument"};
  in.only(known);
  const ::tankwright::water::refractometer_observation v{.reading = must<double>(in, "reading"), .prism = must<::tankwright::temperature>(in, "prism"), .instrument = must<::tankwright::water::refractometer>(in, "instrument")};
  return v;
}
void io<::tankwright::water::refractometer_observation>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::water::refractometer>::defaults(at);
}

::tankwright::water::salinity_replacement io<::tankwright::water::salinity_replacement>::read(const given& in) {
  if (std::optional<::tankwright::water::salinity_replacement> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::salinity_replacement io<::tankwright::water::salinity_replacement>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "from", "target", "replacement", "temperature"};
  in.only(known);
  const ::tankwright::water::salinity_replacement v{.volume = must<::tankwright::volume>(in, "volume"), .from = must<::tankwright::practical_salinity>(in, "from"), .target = must<::tankwright::practical_salinity>(in, "target"), .replacement = must<::tankwright::practical_salinity>(in, "replacement"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  return v;
}
void io<::tankwright::water::salinity_replacement>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::salinity_rise io<::tankwright::water::salinity_rise>::read(const given& in) {
  if (std::optional<::tankwright::water::salinity_rise> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::salinity_rise io<::tankwright::water::salinity_rise>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "from", "target", "temperature", "mix_yield"};
  in.only(known);
  const ::tankwright::water::salinity_rise v{.volume = must<::tankwright::volume>(in, "volume"), .from = must<::tankwright::practical_salinity>(in, "from"), .target = must<::tankwright::practical_salinity>(in, "target"), .temperature = must<::tankwright::temperature>(in, "temperature"), .mix_yield = must<::tankwright::proportion>(in, "mix_yield")};
  return v;
}
void io<::tankwright::water::salinity_rise>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::salinity_step io<::tankwright::water::salinity_step>::read(const given& in) {
  if (std::optional<::tankwright::water::salinity_step> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::salinity_step io<::tankwright::water::salinity_step>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "from", "target", "temperature"};
  in.only(known);
  const ::tankwright::water::salinity_step v{.volume = must<::tankwright::volume>(in, "volume"), .from = must<::tankwright::practical_salinity>(in, "from"), .target = must<::tankwright::practical_salinity>(in, "target"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  return v;
}
void io<::tankwright::water::salinity_step>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::water::salt_batch>::write(answer& out, const ::tankwright::water::salt_batch& v) {
  out.begin();
  out.key("mix");
  io<::tankwright::mass>::write(out, v.mix);
  out.key("fresh_water");
  io<::tankwright::volume>::write(out, v.fresh_water);
  out.key("fresh_water_mass");
  io<::tankwright::mass>::write(out, v.fresh_water_mass);
  out.key("finished");
  io<::tankwright::volume>::write(out, v.finished);
  out.key("finished_mass");
  io<::tankwright::mass>::write(out, v.finished_mass);
  out.key("anhydrous_salt");
  io<::tankwright::mass>::write(out, v.anhydrous_salt);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::water::salt_standard io<::tankwright::water::salt_standard>::read(const given& in) {
  if (std::optional<::tankwright::water::salt_standard> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::salt_standard io<::tankwright::water::salt_standard>::fields(const given& in) {
  static constexpr std::string_view known[] = {"salt", "water"};
  in.only(known);
  const ::tankwright::water::salt_standard v{.salt = must<::tankwright::mass>(in, "salt"), .water = must<::tankwright::mass>(in, "water")};
  return v;
}
void io<::tankwright::water::salt_standard>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::water::saw_tooth>::write(answer& out, const ::tankwright::water::saw_tooth& v) {
  out.begin();
  out.key("before_change");
  io<::tankwright::mass_density>::write(out, v.before_change);
  out.key("after_change");
  io<::tankwright::mass_density>::write(out, v.after_change);
  out.end();
}

::tankwright::water::steady_flow io<::tankwright::water::steady_flow>::read(const given& in) {
  if (std::optional<::tankwright::water::steady_flow> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::steady_flow io<::tankwright::water::steady_flow>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "flow", "time"};
  in.only(known);
  const ::tankwright::water::steady_flow v{.volume = must<::tankwright::volume>(in, "volume"), .flow = must<::tankwright::flow_rate>(in, "flow"), .time = must<::tankwright::duration>(in, "time")};
  return v;
}
void io<::tankwright::water::steady_flow>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::steady_goal io<::tankwright::water::steady_goal>::read(const given& in) {
  if (std::optional<::tankwright::water::steady_goal> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::steady_goal io<::tankwright::water::steady_goal>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "flow", "left"};
  in.only(known);
  const ::tankwright::water::steady_goal v{.volume = must<::tankwright::volume>(in, "volume"), .flow = must<::tankwright::flow_rate>(in, "flow"), .left = must<::tankwright::proportion>(in, "left")};
  return v;
}
void io<::tankwright::water::steady_goal>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::water::trial_batch io<::tankwright::water::trial_batch>::read(const given& in) {
  if (std::optional<::tankwright::water::trial_batch> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::trial_batch io<::tankwright::water::trial_batch>::fields(const given& in) {
  static constexpr std::string_view known[] = {"mix", "fresh_water", "reached", "reading_error"};
  in.only(known);
  ::tankwright::water::trial_batch v{.mix = must<::tankwright::mass>(in, "mix"), .fresh_water = must<::tankwright::mass>(in, "fresh_water"), .reached = must<::tankwright::practical_salinity>(in, "reached")};
  if (in.has("reading_error")) v.reading_error = must<::tankwright::practical_salinity>(in, "reading_error");
  return v;
}
void io<::tankwright::water::trial_batch>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::trial_batch v{.mix = io<::tankwright::mass>::take(zero), .fresh_water = io<::tankwright::mass>::take(zero), .reached = io<::tankwright::practical_salinity>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::practical_salinity>::put(v.reading_error, at);
}

void io<::tankwright::water::unmeasured_batch>::write(answer& out, const ::tankwright::water::unmeasured_batch& v) {
  out.begin();
  out.key("mix");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.mix);
  out.key("fresh_water");
  io<::tankwright::volume>::write(out, v.fresh_water);
  out.key("fresh_water_mass");
  io<::tankwright::mass>::write(out, v.fresh_water_mass);
  out.key("finished");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.finished);
  out.key("finished_mass");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.finished_mass);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::water::water_to_add>::write(answer& out, const ::tankwright::water::water_to_add& v) {
  out.begin();
  out.key("fresh_water");
  io<::tankwright::volume>::write(out, v.fresh_water);
  out.key("fresh_water_mass");
  io<::tankwright::mass>::write(out, v.fresh_water_mass);
  out.key("finished");
  io<::tankwright::volume>::write(out, v.finished);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::water::water_to_replace>::write(answer& out, const ::tankwright::water::water_to_replace& v) {
  out.begin();
  out.key("taken_out");
  io<::tankwright::volume>::write(out, v.taken_out);
  out.key("put_in");
  io<::tankwright::volume>::write(out, v.put_in);
  out.key("part");
  io<::tankwright::proportion>::write(out, v.part);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::water::weighed_portion io<::tankwright::water::weighed_portion>::read(const given& in) {
  if (std::optional<::tankwright::water::weighed_portion> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::weighed_portion io<::tankwright::water::weighed_portion>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "mass", "salinity"};
  in.only(known);
  ::tankwright::water::weighed_portion v{.mass = must<::tankwright::mass>(in, "mass"), .salinity = must<::tankwright::practical_salinity>(in, "salinity")};
  if (in.has("label")) v.label = must<std::string_view>(in, "label");
  return v;
}

::tankwright::water::weighed_volume io<::tankwright::water::weighed_volume>::read(const given& in) {
  if (std::optional<::tankwright::water::weighed_volume> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::water::weighed_volume io<::tankwright::water::weighed_volume>::fields(const given& in) {
  static constexpr std::string_view known[] = {"volume", "shown", "volume_error", "scale_error", "air"};
  in.only(known);
  ::tankwright::water::weighed_volume v{.volume = must<::tankwright::volume>(in, "volume"), .shown = must<::tankwright::mass>(in, "shown")};
  if (in.has("volume_error")) v.volume_error = must<::tankwright::proportion>(in, "volume_error");
  if (in.has("scale_error")) v.scale_error = must<::tankwright::mass>(in, "scale_error");
  if (in.has("air")) v.air = must<::tankwright::mass_density>(in, "air");
  return v;
}
void io<::tankwright::water::weighed_volume>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::water::weighed_volume v{.volume = io<::tankwright::volume>::take(zero), .shown = io<::tankwright::mass>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::proportion>::put(v.volume_error, at);
  io<::tankwright::mass>::put(v.scale_error, at);
  io<::tankwright::mass_density>::put(v.air, at);
}

namespace {

// water.raise_salinity
constexpr std::string_view fields_0[] = {"volume", "from", "target", "temperature", "mix_yield"};
constexpr std::string_view required_0[] = {"volume", "from", "target", "temperature", "mix_yield"};
auto call_0([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::mix_to_add> {
  const auto policy = in.policy();
  return ::tankwright::water::raise_salinity(io<::tankwright::water::salinity_rise>::fields(in), policy);
}
void numbers_0(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::salinity_rise>::take(in);
  io<::tankwright::water::mix_to_add>::put(::tankwright::water::raise_salinity(a0, policy), out);
}
void defaults_0(double* at) {
  io<::tankwright::water::salinity_rise>::defaults(at);
}

// water.lower_salinity
constexpr std::string_view fields_1[] = {"volume", "from", "target", "temperature"};
constexpr std::string_view required_1[] = {"volume", "from", "target", "temperature"};
auto call_1([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::water_to_add> {
  const auto policy = in.policy();
  return ::tankwright::water::lower_salinity(io<::tankwright::water::salinity_step>::fields(in), policy);
}
void numbers_1(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::salinity_step>::take(in);
  io<::tankwright::water::water_to_add>::put(::tankwright::water::lower_salinity(a0, policy), out);
}
void defaults_1(double* at) {
  io<::tankwright::water::salinity_step>::defaults(at);
}

// water.replace_to_reach
constexpr std::string_view fields_2[] = {"volume", "from", "target", "replacement", "temperature"};
constexpr std::string_view required_2[] = {"volume", "from", "target", "replacement", "temperature"};
auto call_2([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::water_to_replace> {
  const auto policy = in.policy();
  return ::tankwright::water::replace_to_reach(io<::tankwright::water::salinity_replacement>::fields(in), policy);
}
void numbers_2(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::salinity_replacement>::take(in);
  io<::tankwright::water::water_to_replace>::put(::tankwright::water::replace_to_reach(a0, policy), out);
}
void defaults_2(double* at) {
  io<::tankwright::water::salinity_replacement>::defaults(at);
}

// water.alkalinity_to_add
constexpr std::string_view fields_3[] = {"volume", "from", "target"};
constexpr std::string_view required_3[] = {"volume", "from", "target"};
auto call_3([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::alkalinity_dose> {
  return ::tankwright::water::alkalinity_to_add(io<::tankwright::water::alkalinity_step>::fields(in));
}
void numbers_3(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::alkalinity_step>::take(in);
  io<::tankwright::water::alkalinity_dose>::put(::tankwright::water::alkalinity_to_add(a0), out);
}
void defaults_3(double* at) {
  io<::tankwright::water::alkalinity_step>::defaults(at);
}

// water.free_ammonia_fraction
constexpr std::string_view fields_4[] = {"ph_reading", "practical_salinity", "temperature"};
constexpr std::string_view required_4[] = {"ph_reading", "practical_salinity", "temperature"};
auto call_4([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::proportion>> {
  in.only(fields_4);
  const auto a0 = must<::tankwright::water::ph_reading>(in, "ph_reading");
  const auto a1 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a2 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::free_ammonia_fraction(a0, a1, a2, policy);
}

// water.free_ammonia_fraction_fresh
constexpr std::string_view fields_5[] = {"ph_nbs", "temperature"};
constexpr std::string_view required_5[] = {"ph_nbs", "temperature"};
auto call_5([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  in.only(fields_5);
  const auto a0 = must<::tankwright::water::ph_nbs>(in, "ph_nbs");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::free_ammonia_fraction_fresh(a0, a1, policy);
}
void numbers_5(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::ph_nbs>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::proportion>::put(::tankwright::water::free_ammonia_fraction_fresh(a0, a1, policy), out);
}
void defaults_5(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.free_ammonia_in
constexpr std::string_view fields_6[] = {"total", "ph", "salinity", "temperature"};
constexpr std::string_view required_6[] = {"total", "ph", "salinity", "temperature"};
auto call_6([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::free_ammonia_result> {
  const auto policy = in.policy();
  return ::tankwright::water::free_ammonia_in(io<::tankwright::water::ammonia_sample>::fields(in), policy);
}

// water.ammonium_pka_total
constexpr std::string_view fields_7[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_7[] = {"practical_salinity", "temperature"};
auto call_7([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::ph_total> {
  in.only(fields_7);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::ammonium_pka_total(a0, a1, policy);
}
void numbers_7(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::ph_total>::put(::tankwright::water::ammonium_pka_total(a0, a1, policy), out);
}
void defaults_7(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.ammonium_pka_free
constexpr std::string_view fields_8[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_8[] = {"practical_salinity", "temperature"};
auto call_8([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::ph_free> {
  in.only(fields_8);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::ammonium_pka_free(a0, a1, policy);
}
void numbers_8(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::ph_free>::put(::tankwright::water::ammonium_pka_free(a0, a1, policy), out);
}
void defaults_8(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.ammonium_pka_bell
constexpr std::string_view fields_9[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_9[] = {"practical_salinity", "temperature"};
auto call_9([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::ph_free> {
  in.only(fields_9);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::ammonium_pka_bell(a0, a1, policy);
}
void numbers_9(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::ph_free>::put(::tankwright::water::ammonium_pka_bell(a0, a1, policy), out);
}
void defaults_9(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.ammonium_pka_khoo
constexpr std::string_view fields_10[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_10[] = {"practical_salinity", "temperature"};
auto call_10([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::ph_free> {
  in.only(fields_10);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::ammonium_pka_khoo(a0, a1, policy);
}
void numbers_10(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::ph_free>::put(::tankwright::water::ammonium_pka_khoo(a0, a1, policy), out);
}
void defaults_10(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.blend_with_portion
constexpr std::string_view fields_11[] = {"waters"};
constexpr std::string_view required_11[] = {"waters"};
auto call_11([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::blended_water> {
  in.only(fields_11);
  const auto a0 = must<std::span<const ::tankwright::water::portion>>(in, "waters");
  const auto policy = in.policy();
  return ::tankwright::water::blend(a0, policy);
}

// water.blend_with_weighed_portion
constexpr std::string_view fields_12[] = {"waters"};
constexpr std::string_view required_12[] = {"waters"};
auto call_12([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_12);
  const auto a0 = must<std::span<const ::tankwright::water::weighed_portion>>(in, "waters");
  const auto policy = in.policy();
  return ::tankwright::water::blend(a0, policy);
}

// water.brine_density
constexpr std::string_view fields_13[] = {"made", "temperature"};
constexpr std::string_view required_13[] = {"made", "temperature"};
auto call_13([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_13);
  const auto a0 = must<::tankwright::water::salt_standard>(in, "made");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::brine_density(a0, a1, policy);
}
void numbers_13(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::salt_standard>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::brine_density(a0, a1, policy), out);
}
void defaults_13(double* at) {
  io<::tankwright::water::salt_standard>::defaults(at);
  not_given(at, 1);
}

// water.salt_for_standard
constexpr std::string_view fields_14[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_14[] = {"practical_salinity", "temperature"};
auto call_14([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  in.only(fields_14);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::salt_for_standard(a0, a1, policy);
}
void numbers_14(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::proportion>::put(::tankwright::water::salt_for_standard(a0, a1, policy), out);
}
void defaults_14(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.carbonate_in
constexpr std::string_view fields_15[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_15[] = {"practical_salinity", "temperature"};
auto call_15([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::carbonate_constants> {
  in.only(fields_15);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::carbonate_in(a0, a1, policy);
}
void numbers_15(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::carbonate_constants>::put(::tankwright::water::carbonate_in(a0, a1, policy), out);
}
void defaults_15(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.ph_after_breath
constexpr std::string_view fields_16[] = {"closed", "added"};
constexpr std::string_view required_16[] = {"closed", "added"};
auto call_16([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::breathed_water> {
  in.only(fields_16);
  const auto a0 = must<::tankwright::water::closed_water>(in, "closed");
  const auto a1 = must<double>(in, "added");
  const auto policy = in.policy();
  return ::tankwright::water::ph_after_breath(a0, a1, policy);
}
void numbers_16(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::closed_water>::take(in);
  const auto a1 = io<double>::take(in);
  io<::tankwright::water::breathed_water>::put(::tankwright::water::ph_after_breath(a0, a1, policy), out);
}
void defaults_16(double* at) {
  io<::tankwright::water::closed_water>::defaults(at);
  not_given(at, 1);
}

// water.concentration_of
constexpr std::string_view fields_17[] = {"what", "practical_salinity", "temperature"};
constexpr std::string_view required_17[] = {"what", "practical_salinity", "temperature"};
auto call_17([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_17);
  const auto a0 = must<::tankwright::water::constituent>(in, "what");
  const auto a1 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a2 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::concentration_of(a0, a1, a2, policy);
}
void numbers_17(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::constituent>::take(in);
  const auto a1 = io<::tankwright::practical_salinity>::take(in);
  const auto a2 = io<::tankwright::temperature>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::concentration_of(a0, a1, a2, policy), out);
}
void defaults_17(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

// water.weigh_recipe
constexpr std::string_view fields_18[] = {"volume", "target", "temperature"};
constexpr std::string_view required_18[] = {"volume", "target", "temperature"};
auto call_18([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::recipe_amounts> {
  const auto policy = in.policy();
  return ::tankwright::water::weigh_recipe(io<::tankwright::water::recipe_batch>::fields(in), policy);
}

// water.salinity_from_conductivity_with_electrical_conductivity_and_temperature_and_pressure
constexpr std::string_view fields_19[] = {"electrical_conductivity", "temperature", "pressure"};
constexpr std::string_view required_19[] = {"electrical_conductivity", "temperature", "pressure"};
auto call_19([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_19);
  const auto a0 = must<::tankwright::electrical_conductivity>(in, "electrical_conductivity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto a2 = must<::tankwright::gauge_pressure>(in, "pressure");
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_conductivity(a0, a1, a2, policy);
}
void numbers_19(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::electrical_conductivity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::gauge_pressure>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::salinity_from_conductivity(a0, a1, a2, policy), out);
}
void defaults_19(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

// water.salinity_from_conductivity_with_electrical_conductivity_and_temperature
constexpr std::string_view fields_20[] = {"electrical_conductivity", "temperature"};
constexpr std::string_view required_20[] = {"electrical_conductivity", "temperature"};
auto call_20([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_20);
  const auto a0 = must<::tankwright::electrical_conductivity>(in, "electrical_conductivity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_conductivity(a0, a1, policy);
}
void numbers_20(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::electrical_conductivity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::salinity_from_conductivity(a0, a1, policy), out);
}
void defaults_20(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.salinity_from_conductivity_ratio
constexpr std::string_view fields_21[] = {"conductivity_ratio", "temperature", "pressure"};
constexpr std::string_view required_21[] = {"conductivity_ratio", "temperature", "pressure"};
auto call_21([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_21);
  const auto a0 = must<::tankwright::water::conductivity_ratio>(in, "conductivity_ratio");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto a2 = must<::tankwright::gauge_pressure>(in, "pressure");
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_conductivity_ratio(a0, a1, a2, policy);
}
void numbers_21(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::conductivity_ratio>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::gauge_pressure>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::salinity_from_conductivity_ratio(a0, a1, a2, policy), out);
}
void defaults_21(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

// water.conductivity_ratio_from_salinity
constexpr std::string_view fields_22[] = {"practical_salinity", "temperature", "pressure"};
constexpr std::string_view required_22[] = {"practical_salinity", "temperature", "pressure"};
auto call_22([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::conductivity_ratio> {
  in.only(fields_22);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto a2 = must<::tankwright::gauge_pressure>(in, "pressure");
  const auto policy = in.policy();
  return ::tankwright::water::conductivity_ratio_from_salinity(a0, a1, a2, policy);
}
void numbers_22(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::gauge_pressure>::take(in);
  io<::tankwright::water::conductivity_ratio>::put(::tankwright::water::conductivity_ratio_from_salinity(a0, a1, a2, policy), out);
}
void defaults_22(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

// water.conductivity_from_salinity_with_pressure
constexpr std::string_view fields_23[] = {"practical_salinity", "temperature", "pressure"};
constexpr std::string_view required_23[] = {"practical_salinity", "temperature", "pressure"};
auto call_23([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::electrical_conductivity> {
  in.only(fields_23);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto a2 = must<::tankwright::gauge_pressure>(in, "pressure");
  const auto policy = in.policy();
  return ::tankwright::water::conductivity_from_salinity(a0, a1, a2, policy);
}
void numbers_23(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::gauge_pressure>::take(in);
  io<::tankwright::electrical_conductivity>::put(::tankwright::water::conductivity_from_salinity(a0, a1, a2, policy), out);
}
void defaults_23(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

// water.conductivity_from_salinity
constexpr std::string_view fields_24[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_24[] = {"practical_salinity", "temperature"};
auto call_24([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::electrical_conductivity> {
  in.only(fields_24);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::conductivity_from_salinity(a0, a1, policy);
}
void numbers_24(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::electrical_conductivity>::put(::tankwright::water::conductivity_from_salinity(a0, a1, policy), out);
}
void defaults_24(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.referred_to_25
constexpr std::string_view fields_25[] = {"electrical_conductivity", "temperature"};
constexpr std::string_view required_25[] = {"electrical_conductivity", "temperature"};
auto call_25([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::conductivity_at_25> {
  in.only(fields_25);
  const auto a0 = must<::tankwright::electrical_conductivity>(in, "electrical_conductivity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::referred_to_25(a0, a1, policy);
}
void numbers_25(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::electrical_conductivity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::conductivity_at_25>::put(::tankwright::water::referred_to_25(a0, a1, policy), out);
}
void defaults_25(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.raw_conductivity_with_conductivity_at_25_and_temperature
constexpr std::string_view fields_26[] = {"conductivity_at_25", "temperature"};
constexpr std::string_view required_26[] = {"conductivity_at_25", "temperature"};
auto call_26([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::electrical_conductivity> {
  in.only(fields_26);
  const auto a0 = must<::tankwright::water::conductivity_at_25>(in, "conductivity_at_25");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::raw_conductivity(a0, a1, policy);
}
void numbers_26(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::conductivity_at_25>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::electrical_conductivity>::put(::tankwright::water::raw_conductivity(a0, a1, policy), out);
}
void defaults_26(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.linearly_compensated
constexpr std::string_view fields_27[] = {"electrical_conductivity", "temperature", "coefficient"};
constexpr std::string_view required_27[] = {"electrical_conductivity", "temperature", "coefficient"};
auto call_27([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::compensated_reading> {
  in.only(fields_27);
  const auto a0 = must<::tankwright::electrical_conductivity>(in, "electrical_conductivity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto a2 = must<::tankwright::temperature_coefficient>(in, "coefficient");
  const auto policy = in.policy();
  return ::tankwright::water::linearly_compensated(a0, a1, a2, policy);
}
void numbers_27(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::electrical_conductivity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::temperature_coefficient>::take(in);
  io<::tankwright::water::compensated_reading>::put(::tankwright::water::linearly_compensated(a0, a1, a2, policy), out);
}
void defaults_27(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

// water.salinity_from_conductivity_with_conductivity_at_25
constexpr std::string_view fields_28[] = {"conductivity_at_25"};
constexpr std::string_view required_28[] = {"conductivity_at_25"};
auto call_28([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_28);
  const auto a0 = must<::tankwright::water::conductivity_at_25>(in, "conductivity_at_25");
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_conductivity(a0, policy);
}
void numbers_28(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::conductivity_at_25>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::salinity_from_conductivity(a0, policy), out);
}
void defaults_28(double* at) {
  not_given(at, 1);
}

// water.raw_conductivity_with_compensated_reading
constexpr std::string_view fields_29[] = {"shown", "water", "coefficient", "reference"};
constexpr std::string_view required_29[] = {"shown", "water", "coefficient"};
auto call_29([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::electrical_conductivity> {
  const auto policy = in.policy();
  return ::tankwright::water::raw_conductivity(io<::tankwright::water::compensated_reading>::fields(in), policy);
}
void numbers_29(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::compensated_reading>::take(in);
  io<::tankwright::electrical_conductivity>::put(::tankwright::water::raw_conductivity(a0, policy), out);
}
void defaults_29(double* at) {
  io<::tankwright::water::compensated_reading>::defaults(at);
}

// water.salinity_from_conductivity_with_compensated_reading
constexpr std::string_view fields_30[] = {"shown", "water", "coefficient", "reference"};
constexpr std::string_view required_30[] = {"shown", "water", "coefficient"};
auto call_30([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_conductivity(io<::tankwright::water::compensated_reading>::fields(in), policy);
}
void numbers_30(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::compensated_reading>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::salinity_from_conductivity(a0, policy), out);
}
void defaults_30(double* at) {
  io<::tankwright::water::compensated_reading>::defaults(at);
}

// water.density_with_absolute_salinity
constexpr std::string_view fields_31[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_31[] = {"absolute_salinity", "temperature"};
auto call_31([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_31);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::density(a0, a1, policy);
}
void numbers_31(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::density(a0, a1, policy), out);
}
void defaults_31(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.density_with_practical_salinity
constexpr std::string_view fields_32[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_32[] = {"practical_salinity", "temperature"};
auto call_32([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_32);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::density(a0, a1, policy);
}
void numbers_32(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::density(a0, a1, policy), out);
}
void defaults_32(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.salinity_from_density
constexpr std::string_view fields_33[] = {"mass_density", "temperature"};
constexpr std::string_view required_33[] = {"mass_density", "temperature"};
auto call_33([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_33);
  const auto a0 = must<::tankwright::mass_density>(in, "mass_density");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_density(a0, a1, policy);
}
void numbers_33(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::mass_density>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::salinity_from_density(a0, a1, policy), out);
}
void defaults_33(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.conservative_temperature_at_surface
constexpr std::string_view fields_34[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_34[] = {"absolute_salinity", "temperature"};
auto call_34([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::conservative_temperature> {
  in.only(fields_34);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::conservative_temperature_at_surface(a0, a1, policy);
}
void numbers_34(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::conservative_temperature>::put(::tankwright::water::conservative_temperature_at_surface(a0, a1, policy), out);
}
void defaults_34(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.density_at_depth
constexpr std::string_view fields_35[] = {"salinity", "temperature", "pressure"};
constexpr std::string_view required_35[] = {"salinity", "temperature", "pressure"};
auto call_35([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  const auto policy = in.policy();
  return ::tankwright::water::density_at_depth(io<::tankwright::water::deep_seawater>::fields(in), policy);
}
void numbers_35(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::deep_seawater>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::density_at_depth(a0, policy), out);
}
void defaults_35(double* at) {
  io<::tankwright::water::deep_seawater>::defaults(at);
}

// water.density_eos80
constexpr std::string_view fields_36[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_36[] = {"practical_salinity", "temperature"};
auto call_36([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_36);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::density_eos80(a0, a1, policy);
}
void numbers_36(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::density_eos80(a0, a1, policy), out);
}
void defaults_36(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.pure_water_density_eos80
constexpr std::string_view fields_37[] = {"temperature"};
constexpr std::string_view required_37[] = {"temperature"};
auto call_37([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_37);
  const auto a0 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::pure_water_density_eos80(a0, policy);
}
void numbers_37(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::temperature>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::pure_water_density_eos80(a0, policy), out);
}
void defaults_37(double* at) {
  not_given(at, 1);
}

// water.evaporation_from_readings
constexpr std::string_view fields_38[] = {"volume", "first", "second", "temperature"};
constexpr std::string_view required_38[] = {"volume", "first", "second", "temperature"};
auto call_38([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::evaporated_water> {
  const auto policy = in.policy();
  return ::tankwright::water::evaporation_from_readings(io<::tankwright::water::evaporation_between>::fields(in), policy);
}
void numbers_38(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::evaporation_between>::take(in);
  io<::tankwright::water::evaporated_water>::put(::tankwright::water::evaporation_from_readings(a0, policy), out);
}
void defaults_38(double* at) {
  io<::tankwright::water::evaporation_between>::defaults(at);
}

// water.drift
constexpr std::string_view fields_39[] = {"system", "elapsed"};
constexpr std::string_view required_39[] = {"system", "elapsed"};
auto call_39([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::drifted_system> {
  in.only(fields_39);
  const auto a0 = must<::tankwright::water::drifting_system>(in, "system");
  const auto a1 = must<::tankwright::duration>(in, "elapsed");
  const auto policy = in.policy();
  return ::tankwright::water::drift(a0, a1, policy);
}
void numbers_39(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::drifting_system>::take(in);
  const auto a1 = io<::tankwright::duration>::take(in);
  io<::tankwright::water::drifted_system>::put(::tankwright::water::drift(a0, a1, policy), out);
}
void defaults_39(double* at) {
  io<::tankwright::water::drifting_system>::defaults(at);
  not_given(at, 1);
}

// water.time_to_salinity
constexpr std::string_view fields_40[] = {"system", "reached"};
constexpr std::string_view required_40[] = {"system", "reached"};
auto call_40([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  in.only(fields_40);
  const auto a0 = must<::tankwright::water::drifting_system>(in, "system");
  const auto a1 = must<::tankwright::practical_salinity>(in, "reached");
  const auto policy = in.policy();
  return ::tankwright::water::time_to_salinity(a0, a1, policy);
}
void numbers_40(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::drifting_system>::take(in);
  const auto a1 = io<::tankwright::practical_salinity>::take(in);
  io<::tankwright::duration>::put(::tankwright::water::time_to_salinity(a0, a1, policy), out);
}
void defaults_40(double* at) {
  io<::tankwright::water::drifting_system>::defaults(at);
  not_given(at, 1);
}

// water.left_after_changes
constexpr std::string_view fields_41[] = {"part", "times"};
constexpr std::string_view required_41[] = {"part", "times"};
auto call_41([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  return ::tankwright::water::left_after_changes(io<::tankwright::water::batch_changes>::fields(in));
}
void numbers_41(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::batch_changes>::take(in);
  io<::tankwright::proportion>::put(::tankwright::water::left_after_changes(a0), out);
}
void defaults_41(double* at) {
  io<::tankwright::water::batch_changes>::defaults(at);
}

// water.changes_to_leave
constexpr std::string_view fields_42[] = {"part", "left"};
constexpr std::string_view required_42[] = {"part", "left"};
auto call_42([[maybe_unused]] const given& in) -> std::remove_cvref_t<int> {
  return ::tankwright::water::changes_to_leave(io<::tankwright::water::batch_goal>::fields(in));
}
void numbers_42(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::batch_goal>::take(in);
  io<int>::put(::tankwright::water::changes_to_leave(a0), out);
}
void defaults_42(double* at) {
  io<::tankwright::water::batch_goal>::defaults(at);
}

// water.left_after_flow
constexpr std::string_view fields_43[] = {"volume", "flow", "time"};
constexpr std::string_view required_43[] = {"volume", "flow", "time"};
auto call_43([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  return ::tankwright::water::left_after_flow(io<::tankwright::water::steady_flow>::fields(in));
}
void numbers_43(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::steady_flow>::take(in);
  io<::tankwright::proportion>::put(::tankwright::water::left_after_flow(a0), out);
}
void defaults_43(double* at) {
  io<::tankwright::water::steady_flow>::defaults(at);
}

// water.time_to_leave
constexpr std::string_view fields_44[] = {"volume", "flow", "left"};
constexpr std::string_view required_44[] = {"volume", "flow", "left"};
auto call_44([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  return ::tankwright::water::time_to_leave(io<::tankwright::water::steady_goal>::fields(in));
}
void numbers_44(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::steady_goal>::take(in);
  io<::tankwright::duration>::put(::tankwright::water::time_to_leave(a0), out);
}
void defaults_44(double* at) {
  io<::tankwright::water::steady_goal>::defaults(at);
}

// water.concentration_after
constexpr std::string_view fields_45[] = {"substance", "time"};
constexpr std::string_view required_45[] = {"substance", "time"};
auto call_45([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_45);
  const auto a0 = must<::tankwright::water::mixed_substance>(in, "substance");
  const auto a1 = must<::tankwright::duration>(in, "time");
  return ::tankwright::water::concentration_after(a0, a1);
}
void numbers_45(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::mixed_substance>::take(in);
  const auto a1 = io<::tankwright::duration>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::concentration_after(a0, a1), out);
}
void defaults_45(double* at) {
  io<::tankwright::water::mixed_substance>::defaults(at);
  not_given(at, 1);
}

// water.settled_concentration
constexpr std::string_view fields_46[] = {"volume", "start", "made", "new_water", "in_new_water", "cleared"};
constexpr std::string_view required_46[] = {"volume"};
auto call_46([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  return ::tankwright::water::settled_concentration(io<::tankwright::water::mixed_substance>::fields(in));
}
void numbers_46(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::mixed_substance>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::settled_concentration(a0), out);
}
void defaults_46(double* at) {
  io<::tankwright::water::mixed_substance>::defaults(at);
}

// water.settled_saw_tooth
constexpr std::string_view fields_47[] = {"volume", "every", "part", "made", "in_new_water", "dose", "cleared"};
constexpr std::string_view required_47[] = {"volume", "every", "part"};
auto call_47([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::saw_tooth> {
  return ::tankwright::water::settled_saw_tooth(io<::tankwright::water::change_routine>::fields(in));
}
void numbers_47(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::change_routine>::take(in);
  io<::tankwright::water::saw_tooth>::put(::tankwright::water::settled_saw_tooth(a0), out);
}
void defaults_47(double* at) {
  io<::tankwright::water::change_routine>::defaults(at);
}

// water.freezing_point_with_pressure
constexpr std::string_view fields_48[] = {"practical_salinity", "pressure"};
constexpr std::string_view required_48[] = {"practical_salinity", "pressure"};
auto call_48([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::temperature> {
  in.only(fields_48);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::gauge_pressure>(in, "pressure");
  const auto policy = in.policy();
  return ::tankwright::water::freezing_point(a0, a1, policy);
}
void numbers_48(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::gauge_pressure>::take(in);
  io<::tankwright::temperature>::put(::tankwright::water::freezing_point(a0, a1, policy), out);
}
void defaults_48(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.freezing_point
constexpr std::string_view fields_49[] = {"practical_salinity"};
constexpr std::string_view required_49[] = {"practical_salinity"};
auto call_49([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::temperature> {
  in.only(fields_49);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto policy = in.policy();
  return ::tankwright::water::freezing_point(a0, policy);
}
void numbers_49(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  io<::tankwright::temperature>::put(::tankwright::water::freezing_point(a0, policy), out);
}
void defaults_49(double* at) {
  not_given(at, 1);
}

// water.calcium_with_alkalinity
constexpr std::string_view fields_50[] = {"degrees"};
constexpr std::string_view required_50[] = {"degrees"};
auto call_50([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_50);
  const auto a0 = must<double>(in, "degrees");
  return ::tankwright::water::calcium_with_alkalinity(a0);
}
void numbers_50(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<double>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::calcium_with_alkalinity(a0), out);
}
void defaults_50(double* at) {
  not_given(at, 1);
}

// water.lowest_level
constexpr std::string_view fields_51[] = {"start", "falls_a_day", "time", "changed", "every"};
constexpr std::string_view required_51[] = {"start", "falls_a_day", "time"};
auto call_51([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  return ::tankwright::water::lowest_level(io<::tankwright::water::falling_level>::fields(in));
}
void numbers_51(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::falling_level>::take(in);
  io<double>::put(::tankwright::water::lowest_level(a0), out);
}
void defaults_51(double* at) {
  io<::tankwright::water::falling_level>::defaults(at);
}

// water.specific_heat
constexpr std::string_view fields_52[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_52[] = {"practical_salinity", "temperature"};
auto call_52([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_heat_capacity> {
  in.only(fields_52);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::specific_heat(a0, a1, policy);
}
void numbers_52(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::specific_heat_capacity>::put(::tankwright::water::specific_heat(a0, a1, policy), out);
}
void defaults_52(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.specific_heat_eos80
constexpr std::string_view fields_53[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_53[] = {"practical_salinity", "temperature"};
auto call_53([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_heat_capacity> {
  in.only(fields_53);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::specific_heat_eos80(a0, a1, policy);
}
void numbers_53(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::specific_heat_capacity>::put(::tankwright::water::specific_heat_eos80(a0, a1, policy), out);
}
void defaults_53(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.specific_heat_sharqawy
constexpr std::string_view fields_54[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_54[] = {"absolute_salinity", "temperature"};
auto call_54([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_heat_capacity> {
  in.only(fields_54);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::specific_heat_sharqawy(a0, a1, policy);
}
void numbers_54(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::specific_heat_capacity>::put(::tankwright::water::specific_heat_sharqawy(a0, a1, policy), out);
}
void defaults_54(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.latent_heat
constexpr std::string_view fields_55[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_55[] = {"practical_salinity", "temperature"};
auto call_55([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_energy> {
  in.only(fields_55);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::latent_heat(a0, a1, policy);
}
void numbers_55(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::specific_energy>::put(::tankwright::water::latent_heat(a0, a1, policy), out);
}
void defaults_55(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.latent_heat_of_water
constexpr std::string_view fields_56[] = {"temperature"};
constexpr std::string_view required_56[] = {"temperature"};
auto call_56([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_energy> {
  in.only(fields_56);
  const auto a0 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::latent_heat_of_water(a0, policy);
}
void numbers_56(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::temperature>::take(in);
  io<::tankwright::specific_energy>::put(::tankwright::water::latent_heat_of_water(a0, policy), out);
}
void defaults_56(double* at) {
  not_given(at, 1);
}

// water.hydrometer_reading
constexpr std::string_view fields_57[] = {"practical_salinity", "water", "instrument"};
constexpr std::string_view required_57[] = {"practical_salinity", "water", "instrument"};
auto call_57([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  in.only(fields_57);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "water");
  const auto a2 = must<::tankwright::water::hydrometer>(in, "instrument");
  const auto policy = in.policy();
  return ::tankwright::water::hydrometer_reading(a0, a1, a2, policy);
}

// water.salinity_from_hydrometer
constexpr std::string_view fields_58[] = {"reading", "water", "instrument"};
constexpr std::string_view required_58[] = {"reading", "water", "instrument"};
auto call_58([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::practical_salinity>> {
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_hydrometer(io<::tankwright::water::hydrometer_observation>::fields(in), policy);
}

// water.specific_gravity_from_hydrometer
constexpr std::string_view fields_59[] = {"reading", "water", "instrument"};
constexpr std::string_view required_59[] = {"reading", "water", "instrument"};
auto call_59([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::water::specific_gravity>> {
  const auto policy = in.policy();
  return ::tankwright::water::specific_gravity_from_hydrometer(io<::tankwright::water::hydrometer_observation>::fields(in), policy);
}

// water.seawater
constexpr std::string_view fields_60[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_60[] = {"practical_salinity", "temperature"};
auto call_60([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::liquid> {
  in.only(fields_60);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::seawater(a0, a1, policy);
}
void numbers_60(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::liquid>::put(::tankwright::water::seawater(a0, a1, policy), out);
}
void defaults_60(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.fresh_water
constexpr std::string_view fields_61[] = {"temperature"};
constexpr std::string_view required_61[] = {"temperature"};
auto call_61([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::liquid> {
  in.only(fields_61);
  const auto a0 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::fresh_water(a0, policy);
}
void numbers_61(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::temperature>::take(in);
  io<::tankwright::water::liquid>::put(::tankwright::water::fresh_water(a0, policy), out);
}
void defaults_61(double* at) {
  not_given(at, 1);
}

// water.kinematic_viscosity_of
constexpr std::string_view fields_62[] = {"density", "viscosity"};
constexpr std::string_view required_62[] = {"density", "viscosity"};
auto call_62([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::kinematic_viscosity> {
  return ::tankwright::water::kinematic_viscosity_of(io<::tankwright::water::liquid>::fields(in));
}
void numbers_62(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::kinematic_viscosity>::put(::tankwright::water::kinematic_viscosity_of(a0), out);
}
void defaults_62(double* at) {
  io<::tankwright::water::liquid>::defaults(at);
}

// water.mass_concentration_from_salinity
constexpr std::string_view fields_63[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_63[] = {"practical_salinity", "temperature"};
auto call_63([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_63);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::mass_concentration_from_salinity(a0, a1, policy);
}
void numbers_63(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::mass_concentration_from_salinity(a0, a1, policy), out);
}
void defaults_63(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.salinity_from_mass_concentration
constexpr std::string_view fields_64[] = {"mass_density", "temperature"};
constexpr std::string_view required_64[] = {"mass_density", "temperature"};
auto call_64([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_64);
  const auto a0 = must<::tankwright::mass_density>(in, "mass_density");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_mass_concentration(a0, a1, policy);
}
void numbers_64(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::mass_density>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::salinity_from_mass_concentration(a0, a1, policy), out);
}
void defaults_64(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.oxygen_saturation
constexpr std::string_view fields_65[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_65[] = {"practical_salinity", "temperature"};
auto call_65([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::amount_content> {
  in.only(fields_65);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::oxygen_saturation(a0, a1, policy);
}
void numbers_65(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::amount_content>::put(::tankwright::water::oxygen_saturation(a0, a1, policy), out);
}
void defaults_65(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.oxygen_saturation_concentration
constexpr std::string_view fields_66[] = {"practical_salinity", "temperature", "absolute_pressure"};
constexpr std::string_view required_66[] = {"practical_salinity", "temperature"};
auto call_66([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_66);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto a2 = may_or<::tankwright::absolute_pressure>(in, "absolute_pressure", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::water;
    return ::tankwright::absolute_pressure(standard_atmosphere);
  });
  const auto policy = in.policy();
  return ::tankwright::water::oxygen_saturation_concentration(a0, a1, a2, policy);
}
void numbers_66(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::absolute_pressure>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::oxygen_saturation_concentration(a0, a1, a2, policy), out);
}
void defaults_66(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  const auto a2 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::water;
    return ::tankwright::absolute_pressure(standard_atmosphere);
  }();
  io<::tankwright::absolute_pressure>::put(a2, at);
}

// water.oxygen_saturation_benson_krause
constexpr std::string_view fields_67[] = {"practical_salinity", "temperature", "absolute_pressure"};
constexpr std::string_view required_67[] = {"practical_salinity", "temperature"};
auto call_67([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_67);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto a2 = may_or<::tankwright::absolute_pressure>(in, "absolute_pressure", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::water;
    return ::tankwright::absolute_pressure(standard_atmosphere);
  });
  const auto policy = in.policy();
  return ::tankwright::water::oxygen_saturation_benson_krause(a0, a1, a2, policy);
}
void numbers_67(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::absolute_pressure>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::water::oxygen_saturation_benson_krause(a0, a1, a2, policy), out);
}
void defaults_67(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  const auto a2 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::water;
    return ::tankwright::absolute_pressure(standard_atmosphere);
  }();
  io<::tankwright::absolute_pressure>::put(a2, at);
}

// water.oxygen_saturation_weiss
constexpr std::string_view fields_68[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_68[] = {"practical_salinity", "temperature"};
auto call_68([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::amount_concentration> {
  in.only(fields_68);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::oxygen_saturation_weiss(a0, a1, policy);
}
void numbers_68(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::amount_concentration>::put(::tankwright::water::oxygen_saturation_weiss(a0, a1, policy), out);
}
void defaults_68(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.refractive_index_millard_seaver
constexpr std::string_view fields_69[] = {"salinity", "temperature", "wavelength"};
constexpr std::string_view required_69[] = {"salinity", "temperature"};
auto call_69([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::refractive_index> {
  const auto policy = in.policy();
  return ::tankwright::water::refractive_index_millard_seaver(io<::tankwright::water::lit_seawater>::fields(in), policy);
}
void numbers_69(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::lit_seawater>::take(in);
  io<::tankwright::water::refractive_index>::put(::tankwright::water::refractive_index_millard_seaver(a0, policy), out);
}
void defaults_69(double* at) {
  io<::tankwright::water::lit_seawater>::defaults(at);
}

// water.refractive_index_quan_fry
constexpr std::string_view fields_70[] = {"salinity", "temperature", "wavelength"};
constexpr std::string_view required_70[] = {"salinity", "temperature"};
auto call_70([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::refractive_index> {
  const auto policy = in.policy();
  return ::tankwright::water::refractive_index_quan_fry(io<::tankwright::water::lit_seawater>::fields(in), policy);
}
void numbers_70(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::lit_seawater>::take(in);
  io<::tankwright::water::refractive_index>::put(::tankwright::water::refractive_index_quan_fry(a0, policy), out);
}
void defaults_70(double* at) {
  io<::tankwright::water::lit_seawater>::defaults(at);
}

// water.salinity_from_refractive_index
constexpr std::string_view fields_71[] = {"index", "temperature", "wavelength"};
constexpr std::string_view required_71[] = {"index", "temperature"};
auto call_71([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_refractive_index(io<::tankwright::water::refraction>::fields(in), policy);
}
void numbers_71(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::refraction>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::salinity_from_refractive_index(a0, policy), out);
}
void defaults_71(double* at) {
  io<::tankwright::water::refraction>::defaults(at);
}

// water.refractometer_reading
constexpr std::string_view fields_72[] = {"practical_salinity", "prism", "instrument"};
constexpr std::string_view required_72[] = {"practical_salinity", "prism", "instrument"};
auto call_72([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  in.only(fields_72);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "prism");
  const auto a2 = must<::tankwright::water::refractometer>(in, "instrument");
  const auto policy = in.policy();
  return ::tankwright::water::refractometer_reading(a0, a1, a2, policy);
}
void numbers_72(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  const auto a2 = io<::tankwright::water::refractometer>::take(in);
  io<double>::put(::tankwright::water::refractometer_reading(a0, a1, a2, policy), out);
}
void defaults_72(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::water::refractometer>::defaults(at);
}

// water.salinity_from_refractometer
constexpr std::string_view fields_73[] = {"reading", "prism", "instrument"};
constexpr std::string_view required_73[] = {"reading", "prism", "instrument"};
auto call_73([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::practical_salinity>> {
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_refractometer(io<::tankwright::water::refractometer_observation>::fields(in), policy);
}
void numbers_73(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::refractometer_observation>::take(in);
  io<::tankwright::estimate<::tankwright::practical_salinity>>::put(::tankwright::water::salinity_from_refractometer(a0, policy), out);
}
void defaults_73(double* at) {
  io<::tankwright::water::refractometer_observation>::defaults(at);
}

// water.looks_like_a_gravity
constexpr std::string_view fields_74[] = {"practical_salinity"};
constexpr std::string_view required_74[] = {"practical_salinity"};
auto call_74([[maybe_unused]] const given& in) -> std::remove_cvref_t<bool> {
  in.only(fields_74);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  return ::tankwright::water::looks_like_a_gravity(a0);
}
void numbers_74(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  io<bool>::put(::tankwright::water::looks_like_a_gravity(a0), out);
}
void defaults_74(double* at) {
  not_given(at, 1);
}

// water.absolute_from_practical
constexpr std::string_view fields_75[] = {"practical_salinity"};
constexpr std::string_view required_75[] = {"practical_salinity"};
auto call_75([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::absolute_salinity> {
  in.only(fields_75);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto policy = in.policy();
  return ::tankwright::water::absolute_from_practical(a0, policy);
}
void numbers_75(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  io<::tankwright::absolute_salinity>::put(::tankwright::water::absolute_from_practical(a0, policy), out);
}
void defaults_75(double* at) {
  not_given(at, 1);
}

// water.practical_from_absolute
constexpr std::string_view fields_76[] = {"absolute_salinity"};
constexpr std::string_view required_76[] = {"absolute_salinity"};
auto call_76([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_76);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto policy = in.policy();
  return ::tankwright::water::practical_from_absolute(a0, policy);
}
void numbers_76(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  io<::tankwright::practical_salinity>::put(::tankwright::water::practical_from_absolute(a0, policy), out);
}
void defaults_76(double* at) {
  not_given(at, 1);
}

// water.salt_for_new_water
constexpr std::string_view fields_77[] = {"volume", "target", "temperature", "mix_yield"};
constexpr std::string_view required_77[] = {"volume", "target", "temperature", "mix_yield"};
auto call_77([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::salt_batch> {
  const auto policy = in.policy();
  return ::tankwright::water::salt_for_new_water(io<::tankwright::water::new_water>::fields(in), policy);
}
void numbers_77(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::new_water>::take(in);
  io<::tankwright::water::salt_batch>::put(::tankwright::water::salt_for_new_water(a0, policy), out);
}
void defaults_77(double* at) {
  io<::tankwright::water::new_water>::defaults(at);
}

// water.salt_for_finished_volume
constexpr std::string_view fields_78[] = {"volume", "target", "temperature", "mix_yield"};
constexpr std::string_view required_78[] = {"volume", "target", "temperature", "mix_yield"};
auto call_78([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::salt_batch> {
  const auto policy = in.policy();
  return ::tankwright::water::salt_for_finished_volume(io<::tankwright::water::finished_water>::fields(in), policy);
}
void numbers_78(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::finished_water>::take(in);
  io<::tankwright::water::salt_batch>::put(::tankwright::water::salt_for_finished_volume(a0, policy), out);
}
void defaults_78(double* at) {
  io<::tankwright::water::finished_water>::defaults(at);
}

// water.salt_for_new_water_unmeasured
constexpr std::string_view fields_79[] = {"volume", "target", "temperature", "mix_yield"};
constexpr std::string_view required_79[] = {"volume", "target", "temperature"};
auto call_79([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::unmeasured_batch> {
  const auto policy = in.policy();
  return ::tankwright::water::salt_for_new_water_unmeasured(io<::tankwright::water::new_water_unmeasured>::fields(in), policy);
}
void numbers_79(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::new_water_unmeasured>::take(in);
  io<::tankwright::water::unmeasured_batch>::put(::tankwright::water::salt_for_new_water_unmeasured(a0, policy), out);
}
void defaults_79(double* at) {
  io<::tankwright::water::new_water_unmeasured>::defaults(at);
}

// water.measured_yield
constexpr std::string_view fields_80[] = {"mix", "fresh_water", "reached", "reading_error"};
constexpr std::string_view required_80[] = {"mix", "fresh_water", "reached"};
auto call_80([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::proportion>> {
  const auto policy = in.policy();
  return ::tankwright::water::measured_yield(io<::tankwright::water::trial_batch>::fields(in), policy);
}
void numbers_80(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::trial_batch>::take(in);
  io<::tankwright::estimate<::tankwright::proportion>>::put(::tankwright::water::measured_yield(a0, policy), out);
}
void defaults_80(double* at) {
  io<::tankwright::water::trial_batch>::defaults(at);
}

// water.specific_gravity_from_salinity
constexpr std::string_view fields_81[] = {"practical_salinity", "scale"};
constexpr std::string_view required_81[] = {"practical_salinity", "scale"};
auto call_81([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::specific_gravity> {
  in.only(fields_81);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::water::gravity_scale>(in, "scale");
  const auto policy = in.policy();
  return ::tankwright::water::specific_gravity_from_salinity(a0, a1, policy);
}

// water.salinity_from_specific_gravity
constexpr std::string_view fields_82[] = {"specific_gravity"};
constexpr std::string_view required_82[] = {"specific_gravity"};
auto call_82([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::practical_salinity> {
  in.only(fields_82);
  const auto a0 = must<::tankwright::water::specific_gravity>(in, "specific_gravity");
  const auto policy = in.policy();
  return ::tankwright::water::salinity_from_specific_gravity(a0, policy);
}

// water.on_scale
constexpr std::string_view fields_83[] = {"specific_gravity", "scale"};
constexpr std::string_view required_83[] = {"specific_gravity", "scale"};
auto call_83([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::water::specific_gravity> {
  in.only(fields_83);
  const auto a0 = must<::tankwright::water::specific_gravity>(in, "specific_gravity");
  const auto a1 = must<::tankwright::water::gravity_scale>(in, "scale");
  const auto policy = in.policy();
  return ::tankwright::water::on_scale(a0, a1, policy);
}

// water.surface_tension_of_with_absolute_salinity
constexpr std::string_view fields_84[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_84[] = {"absolute_salinity", "temperature"};
auto call_84([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::line_load> {
  in.only(fields_84);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::surface_tension_of(a0, a1, policy);
}
void numbers_84(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::line_load>::put(::tankwright::water::surface_tension_of(a0, a1, policy), out);
}
void defaults_84(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.surface_tension_of_with_practical_salinity
constexpr std::string_view fields_85[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_85[] = {"practical_salinity", "temperature"};
auto call_85([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::line_load> {
  in.only(fields_85);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::surface_tension_of(a0, a1, policy);
}
void numbers_85(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::line_load>::put(::tankwright::water::surface_tension_of(a0, a1, policy), out);
}
void defaults_85(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.thermal_conductivity_of_with_absolute_salinity
constexpr std::string_view fields_86[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_86[] = {"absolute_salinity", "temperature"};
auto call_86([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::thermal_conductivity> {
  in.only(fields_86);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::thermal_conductivity_of(a0, a1, policy);
}
void numbers_86(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::thermal_conductivity>::put(::tankwright::water::thermal_conductivity_of(a0, a1, policy), out);
}
void defaults_86(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.thermal_conductivity_of_with_practical_salinity
constexpr std::string_view fields_87[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_87[] = {"practical_salinity", "temperature"};
auto call_87([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::thermal_conductivity> {
  in.only(fields_87);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::thermal_conductivity_of(a0, a1, policy);
}
void numbers_87(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::thermal_conductivity>::put(::tankwright::water::thermal_conductivity_of(a0, a1, policy), out);
}
void defaults_87(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.thermal_conductivity_jamieson_tudhope
constexpr std::string_view fields_88[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_88[] = {"absolute_salinity", "temperature"};
auto call_88([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::thermal_conductivity> {
  in.only(fields_88);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::thermal_conductivity_jamieson_tudhope(a0, a1, policy);
}
void numbers_88(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::thermal_conductivity>::put(::tankwright::water::thermal_conductivity_jamieson_tudhope(a0, a1, policy), out);
}
void defaults_88(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.water_activity
constexpr std::string_view fields_89[] = {"practical_salinity"};
constexpr std::string_view required_89[] = {"practical_salinity"};
auto call_89([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  in.only(fields_89);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto policy = in.policy();
  return ::tankwright::water::water_activity(a0, policy);
}
void numbers_89(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  io<::tankwright::proportion>::put(::tankwright::water::water_activity(a0, policy), out);
}
void defaults_89(double* at) {
  not_given(at, 1);
}

// water.water_activity_with_temperature
constexpr std::string_view fields_90[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_90[] = {"practical_salinity", "temperature"};
auto call_90([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  in.only(fields_90);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::water_activity(a0, a1, policy);
}
void numbers_90(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::proportion>::put(::tankwright::water::water_activity(a0, a1, policy), out);
}
void defaults_90(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.water_activity_witting
constexpr std::string_view fields_91[] = {"practical_salinity"};
constexpr std::string_view required_91[] = {"practical_salinity"};
auto call_91([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  in.only(fields_91);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto policy = in.policy();
  return ::tankwright::water::water_activity_witting(a0, policy);
}
void numbers_91(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  io<::tankwright::proportion>::put(::tankwright::water::water_activity_witting(a0, policy), out);
}
void defaults_91(double* at) {
  not_given(at, 1);
}

// water.vapour_pressure
constexpr std::string_view fields_92[] = {"temperature"};
constexpr std::string_view required_92[] = {"temperature"};
auto call_92([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  in.only(fields_92);
  const auto a0 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::vapour_pressure(a0, policy);
}
void numbers_92(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::temperature>::take(in);
  io<::tankwright::pressure>::put(::tankwright::water::vapour_pressure(a0, policy), out);
}
void defaults_92(double* at) {
  not_given(at, 1);
}

// water.vapour_pressure_with_practical_salinity
constexpr std::string_view fields_93[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_93[] = {"practical_salinity", "temperature"};
auto call_93([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  in.only(fields_93);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::vapour_pressure(a0, a1, policy);
}
void numbers_93(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::pressure>::put(::tankwright::water::vapour_pressure(a0, a1, policy), out);
}
void defaults_93(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.vapour_pressure_iapws
constexpr std::string_view fields_94[] = {"temperature"};
constexpr std::string_view required_94[] = {"temperature"};
auto call_94([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  in.only(fields_94);
  const auto a0 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::vapour_pressure_iapws(a0, policy);
}
void numbers_94(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::temperature>::take(in);
  io<::tankwright::pressure>::put(::tankwright::water::vapour_pressure_iapws(a0, policy), out);
}
void defaults_94(double* at) {
  not_given(at, 1);
}

// water.vapour_pressure_weiss_price
constexpr std::string_view fields_95[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_95[] = {"practical_salinity", "temperature"};
auto call_95([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  in.only(fields_95);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::vapour_pressure_weiss_price(a0, a1, policy);
}
void numbers_95(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::pressure>::put(::tankwright::water::vapour_pressure_weiss_price(a0, a1, policy), out);
}
void defaults_95(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.vapour_pressure_nayar
constexpr std::string_view fields_96[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_96[] = {"absolute_salinity", "temperature"};
auto call_96([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  in.only(fields_96);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::vapour_pressure_nayar(a0, a1, policy);
}
void numbers_96(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::pressure>::put(::tankwright::water::vapour_pressure_nayar(a0, a1, policy), out);
}
void defaults_96(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.osmotic_coefficient
constexpr std::string_view fields_97[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_97[] = {"absolute_salinity", "temperature"};
auto call_97([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  in.only(fields_97);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::osmotic_coefficient(a0, a1, policy);
}
void numbers_97(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<double>::put(::tankwright::water::osmotic_coefficient(a0, a1, policy), out);
}
void defaults_97(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.viscosity_with_absolute_salinity
constexpr std::string_view fields_98[] = {"absolute_salinity", "temperature"};
constexpr std::string_view required_98[] = {"absolute_salinity", "temperature"};
auto call_98([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::dynamic_viscosity> {
  in.only(fields_98);
  const auto a0 = must<::tankwright::absolute_salinity>(in, "absolute_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::viscosity(a0, a1, policy);
}
void numbers_98(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::absolute_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::dynamic_viscosity>::put(::tankwright::water::viscosity(a0, a1, policy), out);
}
void defaults_98(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.viscosity_with_practical_salinity
constexpr std::string_view fields_99[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_99[] = {"practical_salinity", "temperature"};
auto call_99([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::dynamic_viscosity> {
  in.only(fields_99);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::viscosity(a0, a1, policy);
}
void numbers_99(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::dynamic_viscosity>::put(::tankwright::water::viscosity(a0, a1, policy), out);
}
void defaults_99(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.viscosity_millero
constexpr std::string_view fields_100[] = {"practical_salinity", "temperature"};
constexpr std::string_view required_100[] = {"practical_salinity", "temperature"};
auto call_100([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::dynamic_viscosity> {
  in.only(fields_100);
  const auto a0 = must<::tankwright::practical_salinity>(in, "practical_salinity");
  const auto a1 = must<::tankwright::temperature>(in, "temperature");
  const auto policy = in.policy();
  return ::tankwright::water::viscosity_millero(a0, a1, policy);
}
void numbers_100(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::practical_salinity>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::dynamic_viscosity>::put(::tankwright::water::viscosity_millero(a0, a1, policy), out);
}
void defaults_100(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// water.density_by_weighing
constexpr std::string_view fields_101[] = {"volume", "shown", "volume_error", "scale_error", "air"};
constexpr std::string_view required_101[] = {"volume", "shown"};
auto call_101([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::mass_density>> {
  return ::tankwright::water::density_by_weighing(io<::tankwright::water::weighed_volume>::fields(in));
}
void numbers_101(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::water::weighed_volume>::take(in);
  io<::tankwright::estimate<::tankwright::mass_density>>::put(::tankwright::water::density_by_weighing(a0), out);
}
void defaults_101(double* at) {
  io<::tankwright::water::weighed_volume>::defaults(at);
}

const row rows[] = {
  {"water.raise_salinity", "tankwright::water::raise_salinity", "conservation of mass; density by TEOS-10", required_0, fields_0, true, &key_of_type<::tankwright::water::mix_to_add>, &answer_with<&call_0>, &make_with<&call_0>, {true, 5, 2}, &numbers_0, &defaults_0},
  {"water.lower_salinity", "tankwright::water::lower_salinity", "conservation of mass; density by TEOS-10", required_1, fields_1, true, &key_of_type<::tankwright::water::water_to_add>, &answer_with<&call_1>, &make_with<&call_1>, {true, 4, 3}, &numbers_1, &defaults_1},
  {"water.replace_to_reach", "tankwright::water::replace_to_reach", "conservation of mass; density by TEOS-10", required_2, fields_2, true, &key_of_type<::tankwright::water::water_to_replace>, &answer_with<&call_2>, &make_with<&call_2>, {true, 5, 3}, &numbers_2, &defaults_2},
  {"water.alkalinity_to_add", "tankwright::water::alkalinity_to_add", "molar masses (IUPAC)", required_3, fields_3, false, &key_of_type<::tankwright::water::alkalinity_dose>, &answer_with<&call_3>, &make_with<&call_3>, {true, 3, 2}, &numbers_3, &defaults_3},
  {"water.free_ammonia_fraction", "tankwright::water::free_ammonia_fraction", "Clegg and Whitfield 1995", required_4, fields_4, true, nullptr, &answer_with<&call_4>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"water.free_ammonia_fraction_fresh", "tankwright::water::free_ammonia_fraction_fresh", "Emerson et al. 1975", required_5, fields_5, true, nullptr, &answer_with<&call_5>, nullptr, {true, 2, 1}, &numbers_5, &defaults_5},
  {"water.free_ammonia_in", "tankwright::water::free_ammonia_in", "Clegg and Whitfield 1995", required_6, fields_6, true, &key_of_type<::tankwright::water::free_ammonia_result>, &answer_with<&call_6>, &make_with<&call_6>, {false, 0, 0}, nullptr, nullptr},
  {"water.ammonium_pka_total", "tankwright::water::ammonium_pka_total", "Clegg and Whitfield 1995", required_7, fields_7, true, &key_of_type<::tankwright::water::ph_total>, &answer_with<&call_7>, &make_with<&call_7>, {true, 2, 1}, &numbers_7, &defaults_7},
  {"water.ammonium_pka_free", "tankwright::water::ammonium_pka_free", "Clegg and Whitfield 1995", required_8, fields_8, true, &key_of_type<::tankwright::water::ph_free>, &answer_with<&call_8>, &make_with<&call_8>, {true, 2, 1}, &numbers_8, &defaults_8},
  {"water.ammonium_pka_bell", "tankwright::water::ammonium_pka_bell", "Bell et al. 2007 with its corrigendum of 2008", required_9, fields_9, true, &key_of_type<::tankwright::water::ph_free>, &answer_with<&call_9>, &make_with<&call_9>, {true, 2, 1}, &numbers_9, &defaults_9},
  {"water.ammonium_pka_khoo", "tankwright::water::ammonium_pka_khoo", "Khoo, Culberson and Bates 1977, abstract; fresh water by Emerson et al. 1975", required_10, fields_10, true, &key_of_type<::tankwright::water::ph_free>, &answer_with<&call_10>, &make_with<&call_10>, {true, 2, 1}, &numbers_10, &defaults_10},
  {"water.blend_with_portion", "tankwright::water::blend", "conservation of mass and heat; density and specific heat by TEOS-10", required_11, fields_11, true, &key_of_type<::tankwright::water::blended_water>, &answer_with<&call_11>, &make_with<&call_11>, {false, 0, 0}, nullptr, nullptr},
  {"water.blend_with_weighed_portion", "tankwright::water::blend", "conservation of salt", required_12, fields_12, true, nullptr, &answer_with<&call_12>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"water.brine_density", "tankwright::water::brine_density", "own fit to tables of 10 to 25 degC (Poradnik fizykochemiczny 1974)", required_13, fields_13, true, nullptr, &answer_with<&call_13>, nullptr, {true, 3, 1}, &numbers_13, &defaults_13},
  {"water.salt_for_standard", "tankwright::water::salt_for_standard", "as `brine_density`, and Feistel 2008", required_14, fields_14, true, nullptr, &answer_with<&call_14>, nullptr, {true, 2, 1}, &numbers_14, &defaults_14},
  {"water.carbonate_in", "tankwright::water::carbonate_in", "Lueker, Dickson and Keeling 2000; Weiss 1974 (both from memory)", required_15, fields_15, true, &key_of_type<::tankwright::water::carbonate_constants>, &answer_with<&call_15>, &make_with<&call_15>, {true, 2, 3}, &numbers_15, &defaults_15},
  {"water.ph_after_breath", "tankwright::water::ph_after_breath", "definition of alkalinity; Lueker et al. 2000; Weiss 1974", required_16, fields_16, true, &key_of_type<::tankwright::water::breathed_water>, &answer_with<&call_16>, &make_with<&call_16>, {true, 6, 3}, &numbers_16, &defaults_16},
  {"water.concentration_of", "tankwright::water::concentration_of", "Millero et al. 2008, table 4", required_17, fields_17, true, nullptr, &answer_with<&call_17>, nullptr, {true, 3, 1}, &numbers_17, &defaults_17},
  {"water.weigh_recipe", "tankwright::water::weigh_recipe", "Kester et al. 1967, table 1", required_18, fields_18, true, &key_of_type<::tankwright::water::recipe_amounts>, &answer_with<&call_18>, &make_with<&call_18>, {false, 0, 0}, nullptr, nullptr},
  {"water.salinity_from_conductivity_with_electrical_conductivity_and_temperature_and_pressure", "tankwright::water::salinity_from_conductivity", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5; Hill et al. 1986; TEOS-10 manual, app. E", required_19, fields_19, true, nullptr, &answer_with<&call_19>, nullptr, {true, 3, 1}, &numbers_19, &defaults_19},
  {"water.salinity_from_conductivity_with_electrical_conductivity_and_temperature", "tankwright::water::salinity_from_conductivity", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5; Hill et al. 1986; TEOS-10 manual, app. E", required_20, fields_20, true, nullptr, &answer_with<&call_20>, nullptr, {true, 2, 1}, &numbers_20, &defaults_20},
  {"water.salinity_from_conductivity_ratio", "tankwright::water::salinity_from_conductivity_ratio", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5", required_21, fields_21, true, nullptr, &answer_with<&call_21>, nullptr, {true, 3, 1}, &numbers_21, &defaults_21},
  {"water.conductivity_ratio_from_salinity", "tankwright::water::conductivity_ratio_from_salinity", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-6", required_22, fields_22, true, &key_of_type<::tankwright::water::conductivity_ratio>, &answer_with<&call_22>, &make_with<&call_22>, {true, 3, 1}, &numbers_22, &defaults_22},
  {"water.conductivity_from_salinity_with_pressure", "tankwright::water::conductivity_from_salinity", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-6; Hill et al. 1986; Culkin and Smith 1980", required_23, fields_23, true, nullptr, &answer_with<&call_23>, nullptr, {true, 3, 1}, &numbers_23, &defaults_23},
  {"water.conductivity_from_salinity", "tankwright::water::conductivity_from_salinity", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-6; Hill et al. 1986; Culkin and Smith 1980", required_24, fields_24, true, nullptr, &answer_with<&call_24>, nullptr, {true, 2, 1}, &numbers_24, &defaults_24},
  {"water.referred_to_25", "tankwright::water::referred_to_25", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eq. 3", required_25, fields_25, true, &key_of_type<::tankwright::water::conductivity_at_25>, &answer_with<&call_25>, &make_with<&call_25>, {true, 2, 1}, &numbers_25, &defaults_25},
  {"water.raw_conductivity_with_conductivity_at_25_and_temperature", "tankwright::water::raw_conductivity", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eq. 3", required_26, fields_26, true, nullptr, &answer_with<&call_26>, nullptr, {true, 2, 1}, &numbers_26, &defaults_26},
  {"water.linearly_compensated", "tankwright::water::linearly_compensated", "the definition of linear compensation (as in ISO 7888:1985, from memory)", required_27, fields_27, true, &key_of_type<::tankwright::water::compensated_reading>, &answer_with<&call_27>, &make_with<&call_27>, {true, 3, 4}, &numbers_27, &defaults_27},
  {"water.salinity_from_conductivity_with_conductivity_at_25", "tankwright::water::salinity_from_conductivity", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5", required_28, fields_28, true, nullptr, &answer_with<&call_28>, nullptr, {true, 1, 1}, &numbers_28, &defaults_28},
  {"water.raw_conductivity_with_compensated_reading", "tankwright::water::raw_conductivity", "the definition of linear compensation (as in ISO 7888:1985, from memory)", required_29, fields_29, true, nullptr, &answer_with<&call_29>, nullptr, {true, 4, 1}, &numbers_29, &defaults_29},
  {"water.salinity_from_conductivity_with_compensated_reading", "tankwright::water::salinity_from_conductivity", "Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5", required_30, fields_30, true, nullptr, &answer_with<&call_30>, nullptr, {true, 4, 1}, &numbers_30, &defaults_30},
  {"water.density_with_absolute_salinity", "tankwright::water::density", "Feistel 2008; IOC, SCOR and IAPSO 2010 (TEOS-10 manual), appendices G and H", required_31, fields_31, true, nullptr, &answer_with<&call_31>, nullptr, {true, 2, 1}, &numbers_31, &defaults_31},
  {"water.density_with_practical_salinity", "tankwright::water::density", "Feistel 2008; Millero et al. 2008", required_32, fields_32, true, nullptr, &answer_with<&call_32>, nullptr, {true, 2, 1}, &numbers_32, &defaults_32},
  {"water.salinity_from_density", "tankwright::water::salinity_from_density", "Feistel 2008; Millero et al. 2008", required_33, fields_33, true, nullptr, &answer_with<&call_33>, nullptr, {true, 2, 1}, &numbers_33, &defaults_33},
  {"water.conservative_temperature_at_surface", "tankwright::water::conservative_temperature_at_surface", "IOC, SCOR and IAPSO 2010 (TEOS-10 manual), section 3.3; Gibbs function of Feistel 2003 and 2008", required_34, fields_34, true, &key_of_type<::tankwright::water::conservative_temperature>, &answer_with<&call_34>, &make_with<&call_34>, {true, 2, 1}, &numbers_34, &defaults_34},
  {"water.density_at_depth", "tankwright::water::density_at_depth", "Roquet et al. 2015, 75-term polynomial", required_35, fields_35, true, nullptr, &answer_with<&call_35>, nullptr, {true, 3, 1}, &numbers_35, &defaults_35},
  {"water.density_eos80", "tankwright::water::density_eos80", "Millero and Poisson 1981; Fofonoff and Millard 1983, eqs 13-14", required_36, fields_36, true, nullptr, &answer_with<&call_36>, nullptr, {true, 2, 1}, &numbers_36, &defaults_36},
  {"water.pure_water_density_eos80", "tankwright::water::pure_water_density_eos80", "Fofonoff and Millard 1983, eq. 14", required_37, fields_37, true, nullptr, &answer_with<&call_37>, nullptr, {true, 1, 1}, &numbers_37, &defaults_37},
  {"water.evaporation_from_readings", "tankwright::water::evaporation_from_readings", "conservation of salt; density by TEOS-10", required_38, fields_38, true, &key_of_type<::tankwright::water::evaporated_water>, &answer_with<&call_38>, &make_with<&call_38>, {true, 4, 2}, &numbers_38, &defaults_38},
  {"water.drift", "tankwright::water::drift", "conservation of mass; density by TEOS-10", required_39, fields_39, true, &key_of_type<::tankwright::water::drifted_system>, &answer_with<&call_39>, &make_with<&call_39>, {true, 7, 2}, &numbers_39, &defaults_39},
  {"water.time_to_salinity", "tankwright::water::time_to_salinity", "conservation of mass; density by TEOS-10", required_40, fields_40, true, nullptr, &answer_with<&call_40>, nullptr, {true, 7, 1}, &numbers_40, &defaults_40},
  {"water.left_after_changes", "tankwright::water::left_after_changes", "conservation of mass", required_41, fields_41, false, nullptr, &answer_with<&call_41>, nullptr, {true, 2, 1}, &numbers_41, &defaults_41},
  {"water.changes_to_leave", "tankwright::water::changes_to_leave", "conservation of mass", required_42, fields_42, false, nullptr, &answer_with<&call_42>, nullptr, {true, 2, 1}, &numbers_42, &defaults_42},
  {"water.left_after_flow", "tankwright::water::left_after_flow", "conservation of mass", required_43, fields_43, false, nullptr, &answer_with<&call_43>, nullptr, {true, 3, 1}, &numbers_43, &defaults_43},
  {"water.time_to_leave", "tankwright::water::time_to_leave", "conservation of mass", required_44, fields_44, false, nullptr, &answer_with<&call_44>, nullptr, {true, 3, 1}, &numbers_44, &defaults_44},
  {"water.concentration_after", "tankwright::water::concentration_after", "conservation of mass; Losordo and Hobbs 2000", required_45, fields_45, false, nullptr, &answer_with<&call_45>, nullptr, {true, 7, 1}, &numbers_45, &defaults_45},
  {"water.settled_concentration", "tankwright::water::settled_concentration", "conservation of mass; Losordo and Hobbs 2000", required_46, fields_46, false, nullptr, &answer_with<&call_46>, nullptr, {true, 6, 1}, &numbers_46, &defaults_46},
  {"water.settled_saw_tooth", "tankwright::water::settled_saw_tooth", "conservation of mass", required_47, fields_47, false, &key_of_type<::tankwright::water::saw_tooth>, &answer_with<&call_47>, &make_with<&call_47>, {true, 7, 2}, &numbers_47, &defaults_47},
  {"water.freezing_point_with_pressure", "tankwright::water::freezing_point", "Millero 1978; Fofonoff and Millard 1983, section 6", required_48, fields_48, true, nullptr, &answer_with<&call_48>, nullptr, {true, 2, 1}, &numbers_48, &defaults_48},
  {"water.freezing_point", "tankwright::water::freezing_point", "Millero 1978; Fofonoff and Millard 1983, section 6", required_49, fields_49, true, nullptr, &answer_with<&call_49>, nullptr, {true, 1, 1}, &numbers_49, &defaults_49},
  {"water.calcium_with_alkalinity", "tankwright::water::calcium_with_alkalinity", "stoichiometry; IUPAC standard atomic weights", required_50, fields_50, false, nullptr, &answer_with<&call_50>, nullptr, {true, 1, 1}, &numbers_50, &defaults_50},
  {"water.lowest_level", "tankwright::water::lowest_level", "mass balance", required_51, fields_51, false, nullptr, &answer_with<&call_51>, nullptr, {true, 5, 1}, &numbers_51, &defaults_51},
  {"water.specific_heat", "tankwright::water::specific_heat", "Feistel 2003 and 2008", required_52, fields_52, true, nullptr, &answer_with<&call_52>, nullptr, {true, 2, 1}, &numbers_52, &defaults_52},
  {"water.specific_heat_eos80", "tankwright::water::specific_heat_eos80", "Fofonoff and Millard 1983, eqs 26-28", required_53, fields_53, true, nullptr, &answer_with<&call_53>, nullptr, {true, 2, 1}, &numbers_53, &defaults_53},
  {"water.specific_heat_sharqawy", "tankwright::water::specific_heat_sharqawy", "Sharqawy, Lienhard and Zubair 2010, eq. 9", required_54, fields_54, true, nullptr, &answer_with<&call_54>, nullptr, {true, 2, 1}, &numbers_54, &defaults_54},
  {"water.latent_heat", "tankwright::water::latent_heat", "IOC, SCOR and IAPSO 2010, eq. 3.39.7, as fitted in the TEOS-10 toolbox", required_55, fields_55, true, nullptr, &answer_with<&call_55>, nullptr, {true, 2, 1}, &numbers_55, &defaults_55},
  {"water.latent_heat_of_water", "tankwright::water::latent_heat_of_water", "Sharqawy, Lienhard and Zubair 2010, eq. 55", required_56, fields_56, true, nullptr, &answer_with<&call_56>, nullptr, {true, 1, 1}, &numbers_56, &defaults_56},
  {"water.hydrometer_reading", "tankwright::water::hydrometer_reading", "the definition, with the densities of TEOS-10 (Feistel 2008); ISO 1768:1975 for glass", required_57, fields_57, true, nullptr, &answer_with<&call_57>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"water.salinity_from_hydrometer", "tankwright::water::salinity_from_hydrometer", "the definition, with the densities of TEOS-10 (Feistel 2008); ISO 1768:1975 for glass", required_58, fields_58, true, nullptr, &answer_with<&call_58>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"water.specific_gravity_from_hydrometer", "tankwright::water::specific_gravity_from_hydrometer", "the definition, with the densities of TEOS-10 (Feistel 2008); ISO 1768:1975 for glass", required_59, fields_59, true, nullptr, &answer_with<&call_59>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"water.seawater", "tankwright::water::seawater", "Feistel 2008; Sharqawy, Lienhard and Zubair 2010", required_60, fields_60, true, &key_of_type<::tankwright::water::liquid>, &answer_with<&call_60>, &make_with<&call_60>, {true, 2, 2}, &numbers_60, &defaults_60},
  {"water.fresh_water", "tankwright::water::fresh_water", "Feistel 2003 (water part of TEOS-10); Sharqawy, Lienhard and Zubair 2010, eq. 23", required_61, fields_61, true, &key_of_type<::tankwright::water::liquid>, &answer_with<&call_61>, &make_with<&call_61>, {true, 1, 2}, &numbers_61, &defaults_61},
  {"water.kinematic_viscosity_of", "tankwright::water::kinematic_viscosity_of", "definition", required_62, fields_62, false, nullptr, &answer_with<&call_62>, nullptr, {true, 2, 1}, &numbers_62, &defaults_62},
  {"water.mass_concentration_from_salinity", "tankwright::water::mass_concentration_from_salinity", "Feistel 2008; Millero et al. 2008", required_63, fields_63, true, nullptr, &answer_with<&call_63>, nullptr, {true, 2, 1}, &numbers_63, &defaults_63},
  {"water.salinity_from_mass_concentration", "tankwright::water::salinity_from_mass_concentration", "Feistel 2008; Millero et al. 2008", required_64, fields_64, true, nullptr, &answer_with<&call_64>, nullptr, {true, 2, 1}, &numbers_64, &defaults_64},
  {"water.oxygen_saturation", "tankwright::water::oxygen_saturation", "Garcia and Gordon 1992, eq. 8, Benson and Krause column", required_65, fields_65, true, nullptr, &answer_with<&call_65>, nullptr, {true, 2, 1}, &numbers_65, &defaults_65},
  {"water.oxygen_saturation_concentration", "tankwright::water::oxygen_saturation_concentration", "Garcia and Gordon 1992; Benson and Krause 1984, eq. 24; density and water activity by TEOS-10", required_66, fields_66, true, nullptr, &answer_with<&call_66>, nullptr, {true, 3, 1}, &numbers_66, &defaults_66},
  {"water.oxygen_saturation_benson_krause", "tankwright::water::oxygen_saturation_benson_krause", "Benson and Krause 1984, eqs 24 and 32", required_67, fields_67, true, nullptr, &answer_with<&call_67>, nullptr, {true, 3, 1}, &numbers_67, &defaults_67},
  {"water.oxygen_saturation_weiss", "tankwright::water::oxygen_saturation_weiss", "Weiss 1970, eq. 4", required_68, fields_68, true, nullptr, &answer_with<&call_68>, nullptr, {true, 2, 1}, &numbers_68, &defaults_68},
  {"water.refractive_index_millard_seaver", "tankwright::water::refractive_index_millard_seaver", "Millard and Seaver 1990, terms without pressure", required_69, fields_69, true, &key_of_type<::tankwright::water::refractive_index>, &answer_with<&call_69>, &make_with<&call_69>, {true, 3, 1}, &numbers_69, &defaults_69},
  {"water.refractive_index_quan_fry", "tankwright::water::refractive_index_quan_fry", "Quan and Fry 1995, eq. 3", required_70, fields_70, true, &key_of_type<::tankwright::water::refractive_index>, &answer_with<&call_70>, &make_with<&call_70>, {true, 3, 1}, &numbers_70, &defaults_70},
  {"water.salinity_from_refractive_index", "tankwright::water::salinity_from_refractive_index", "Millard and Seaver 1990, terms without pressure", required_71, fields_71, true, nullptr, &answer_with<&call_71>, nullptr, {true, 3, 1}, &numbers_71, &defaults_71},
  {"water.refractometer_reading", "tankwright::water::refractometer_reading", "Millard and Seaver 1990; index of sodium chloride from memory", required_72, fields_72, true, nullptr, &answer_with<&call_72>, nullptr, {true, 5, 1}, &numbers_72, &defaults_72},
  {"water.salinity_from_refractometer", "tankwright::water::salinity_from_refractometer", "Millard and Seaver 1990; index of sodium chloride from memory", required_73, fields_73, true, nullptr, &answer_with<&call_73>, nullptr, {true, 5, 3}, &numbers_73, &defaults_73},
  {"water.looks_like_a_gravity", "tankwright::water::looks_like_a_gravity", "none: a convention of this library", required_74, fields_74, false, nullptr, &answer_with<&call_74>, nullptr, {true, 1, 1}, &numbers_74, &defaults_74},
  {"water.absolute_from_practical", "tankwright::water::absolute_from_practical", "Millero et al. 2008, eq. 6.11", required_75, fields_75, true, nullptr, &answer_with<&call_75>, nullptr, {true, 1, 1}, &numbers_75, &defaults_75},
  {"water.practical_from_absolute", "tankwright::water::practical_from_absolute", "Millero et al. 2008, eq. 6.11", required_76, fields_76, true, nullptr, &answer_with<&call_76>, nullptr, {true, 1, 1}, &numbers_76, &defaults_76},
  {"water.salt_for_new_water", "tankwright::water::salt_for_new_water", "conservation of mass; density by TEOS-10", required_77, fields_77, true, &key_of_type<::tankwright::water::salt_batch>, &answer_with<&call_77>, &make_with<&call_77>, {true, 4, 6}, &numbers_77, &defaults_77},
  {"water.salt_for_finished_volume", "tankwright::water::salt_for_finished_volume", "conservation of mass; density by TEOS-10", required_78, fields_78, true, &key_of_type<::tankwright::water::salt_batch>, &answer_with<&call_78>, &make_with<&call_78>, {true, 4, 6}, &numbers_78, &defaults_78},
  {"water.salt_for_new_water_unmeasured", "tankwright::water::salt_for_new_water_unmeasured", "conservation of mass; density by TEOS-10", required_79, fields_79, true, &key_of_type<::tankwright::water::unmeasured_batch>, &answer_with<&call_79>, &make_with<&call_79>, {true, 6, 11}, &numbers_79, &defaults_79},
  {"water.measured_yield", "tankwright::water::measured_yield", "conservation of mass", required_80, fields_80, true, nullptr, &answer_with<&call_80>, nullptr, {true, 4, 3}, &numbers_80, &defaults_80},
  {"water.specific_gravity_from_salinity", "tankwright::water::specific_gravity_from_salinity", "the definition, with the densities of TEOS-10 (Feistel 2008)", required_81, fields_81, true, &key_of_type<::tankwright::water::specific_gravity>, &answer_with<&call_81>, &make_with<&call_81>, {false, 0, 0}, nullptr, nullptr},
  {"water.salinity_from_specific_gravity", "tankwright::water::salinity_from_specific_gravity", "the definition, with the densities of TEOS-10 (Feistel 2008)", required_82, fields_82, true, nullptr, &answer_with<&call_82>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"water.on_scale", "tankwright::water::on_scale", "the definition, with the densities of TEOS-10 (Feistel 2008)", required_83, fields_83, true, &key_of_type<::tankwright::water::specific_gravity>, &answer_with<&call_83>, &make_with<&call_83>, {false, 0, 0}, nullptr, nullptr},
  {"water.surface_tension_of_with_absolute_salinity", "tankwright::water::surface_tension_of", "IAPWS G14-19; IAPWS R1-76(2014)", required_84, fields_84, true, nullptr, &answer_with<&call_84>, nullptr, {true, 2, 1}, &numbers_84, &defaults_84},
  {"water.surface_tension_of_with_practical_salinity", "tankwright::water::surface_tension_of", "IAPWS G14-19; IAPWS R1-76(2014); Millero et al. 2008", required_85, fields_85, true, nullptr, &answer_with<&call_85>, nullptr, {true, 2, 1}, &numbers_85, &defaults_85},
  {"water.thermal_conductivity_of_with_absolute_salinity", "tankwright::water::thermal_conductivity_of", "IAPWS G10-15; IAPWS R15-11; density of water by TEOS-10", required_86, fields_86, true, nullptr, &answer_with<&call_86>, nullptr, {true, 2, 1}, &numbers_86, &defaults_86},
  {"water.thermal_conductivity_of_with_practical_salinity", "tankwright::water::thermal_conductivity_of", "IAPWS G10-15; IAPWS R15-11; Millero et al. 2008", required_87, fields_87, true, nullptr, &answer_with<&call_87>, nullptr, {true, 2, 1}, &numbers_87, &defaults_87},
  {"water.thermal_conductivity_jamieson_tudhope", "tankwright::water::thermal_conductivity_jamieson_tudhope", "Jamieson and Tudhope 1970, as in Sharqawy et al. 2010, eq. 13", required_88, fields_88, true, nullptr, &answer_with<&call_88>, nullptr, {true, 2, 1}, &numbers_88, &defaults_88},
  {"water.water_activity", "tankwright::water::water_activity", "Dickson, Sabine and Christian 2007, ch. 5", required_89, fields_89, true, nullptr, &answer_with<&call_89>, nullptr, {true, 1, 1}, &numbers_89, &defaults_89},
  {"water.water_activity_with_temperature", "tankwright::water::water_activity", "Feistel 2008; IOC, SCOR and IAPSO 2010, eq. 3.40", required_90, fields_90, true, nullptr, &answer_with<&call_90>, nullptr, {true, 2, 1}, &numbers_90, &defaults_90},
  {"water.water_activity_witting", "tankwright::water::water_activity_witting", "Witting 1908, as used by Green and Carritt 1967", required_91, fields_91, true, nullptr, &answer_with<&call_91>, nullptr, {true, 1, 1}, &numbers_91, &defaults_91},
  {"water.vapour_pressure", "tankwright::water::vapour_pressure", "Hyland and Wexler 1983; ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 6", required_92, fields_92, true, nullptr, &answer_with<&call_92>, nullptr, {true, 1, 1}, &numbers_92, &defaults_92},
  {"water.vapour_pressure_with_practical_salinity", "tankwright::water::vapour_pressure", "Hyland and Wexler 1983; Feistel 2008", required_93, fields_93, true, nullptr, &answer_with<&call_93>, nullptr, {true, 2, 1}, &numbers_93, &defaults_93},
  {"water.vapour_pressure_iapws", "tankwright::water::vapour_pressure_iapws", "IAPWS R7-97(2012), eq. 30", required_94, fields_94, true, nullptr, &answer_with<&call_94>, nullptr, {true, 1, 1}, &numbers_94, &defaults_94},
  {"water.vapour_pressure_weiss_price", "tankwright::water::vapour_pressure_weiss_price", "Weiss and Price 1980, eq. 10", required_95, fields_95, true, nullptr, &answer_with<&call_95>, nullptr, {true, 2, 1}, &numbers_95, &defaults_95},
  {"water.vapour_pressure_nayar", "tankwright::water::vapour_pressure_nayar", "Nayar et al. 2016, eqs 5-6", required_96, fields_96, true, nullptr, &answer_with<&call_96>, nullptr, {true, 2, 1}, &numbers_96, &defaults_96},
  {"water.osmotic_coefficient", "tankwright::water::osmotic_coefficient", "Sharqawy, Lienhard and Zubair 2010, eq. 49", required_97, fields_97, true, nullptr, &answer_with<&call_97>, nullptr, {true, 2, 1}, &numbers_97, &defaults_97},
  {"water.viscosity_with_absolute_salinity", "tankwright::water::viscosity", "Sharqawy, Lienhard and Zubair 2010, eqs 22-23", required_98, fields_98, true, nullptr, &answer_with<&call_98>, nullptr, {true, 2, 1}, &numbers_98, &defaults_98},
  {"water.viscosity_with_practical_salinity", "tankwright::water::viscosity", "Sharqawy, Lienhard and Zubair 2010, eqs 22-23; Millero et al. 2008", required_99, fields_99, true, nullptr, &answer_with<&call_99>, nullptr, {true, 2, 1}, &numbers_99, &defaults_99},
  {"water.viscosity_millero", "tankwright::water::viscosity_millero", "Millero 1974", required_100, fields_100, true, nullptr, &answer_with<&call_100>, nullptr, {true, 2, 1}, &numbers_100, &defaults_100},
  {"water.density_by_weighing", "tankwright::water::density_by_weighing", "Archimedes; conventional mass (OIML D 28)", required_101, fields_101, false, nullptr, &answer_with<&call_101>, nullptr, {true, 5, 3}, &numbers_101, &defaults_101},
};

}  // namespace

std::span<const row> water_rows() { return rows; }

std::span<const constant> water_constants() {
  static const constant all[] = {
    named("standard_conductivity", ::tankwright::water::standard_conductivity),
    named("sodium_d", ::tankwright::water::sodium_d),
    named("refractometer_standard", ::tankwright::water::refractometer_standard),
    named("typical_mix_yield", ::tankwright::water::typical_mix_yield),
    named("air_at_sea_level", ::tankwright::water::air_at_sea_level),
    named("conventional_weights", ::tankwright::water::conventional_weights),
  };
  return all;
}

}  // namespace tankwright_formulas
