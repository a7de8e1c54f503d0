// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#include "life.hpp"

namespace tankwright_formulas {

namespace {
constexpr std::string_view words_of_life_drip_vessel[] = {"filling", "overflowing"};
}  // namespace
::tankwright::life::drip_vessel io<::tankwright::life::drip_vessel>::read(const given& in) { return static_cast<::tankwright::life::drip_vessel>(in.word(words_of_life_drip_vessel)); }

namespace {
constexpr std::string_view words_of_life_film_order[] = {"linear", "square_root"};
}  // namespace
::tankwright::life::film_order io<::tankwright::life::film_order>::read(const given& in) { return static_cast<::tankwright::life::film_order>(in.word(words_of_life_film_order)); }

::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form> io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>>::read(const given& in) {
  if (std::optional<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"nitrogen", "ion"};
  const std::size_t way = in.way(ways, -1, -1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>::from_nitrogen(io<::tankwright::mass_density>::read(one));
    default: return ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>::from_ion(io<::tankwright::mass_density>::read(one));
  }
}
void io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>>::write(answer& out, const ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>& v) {
  out.begin();
  out.key("nitrogen");
  io<::tankwright::mass_density>::write(out, v.as_nitrogen());
  out.key("ion");
  io<::tankwright::mass_density>::write(out, v.as_ion());
  out.end();
}

::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form> io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>::read(const given& in) {
  if (std::optional<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"nitrogen", "ion"};
  const std::size_t way = in.way(ways, -1, -1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>::from_nitrogen(io<::tankwright::mass_density>::read(one));
    default: return ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>::from_ion(io<::tankwright::mass_density>::read(one));
  }
}
void io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>::write(answer& out, const ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>& v) {
  out.begin();
  out.key("nitrogen");
  io<::tankwright::mass_density>::write(out, v.as_nitrogen());
  out.key("ion");
  io<::tankwright::mass_density>::write(out, v.as_ion());
  out.end();
}

::tankwright::life::nitrogen_load io<::tankwright::life::nitrogen_load>::read(const given& in) {
  if (std::optional<::tankwright::life::nitrogen_load> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::life::nitrogen_load::from_nitrogen(io<::tankwright::mass_flow>::read(in));
}
void io<::tankwright::life::nitrogen_load>::write(answer& out, const ::tankwright::life::nitrogen_load& v) {
  out.quantity("nitrogen_load", "kg/s", tw::core::si_number(v.as_nitrogen()));
}

::tankwright::life::specific_oxygen_use io<::tankwright::life::specific_oxygen_use>::read(const given& in) {
  if (std::optional<::tankwright::life::specific_oxygen_use> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::life::specific_oxygen_use::from_milligrams_per_kilogram_hour(io<double>::read(in));
}
void io<::tankwright::life::specific_oxygen_use>::write(answer& out, const ::tankwright::life::specific_oxygen_use& v) {
  out.quantity("specific_oxygen_use", "", tw::core::si_number(::tankwright::life::in_milligrams_per_kilogram_hour(v)));
}

::tankwright::life::aeration io<::tankwright::life::aeration>::read(const given& in) {
  if (std::optional<::tankwright::life::aeration> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::aeration io<::tankwright::life::aeration>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "surface", "transfer", "bubbles", "alpha"};
  in.only(known);
  ::tankwright::life::aeration v{};
  if (in.has("label")) v.label = must<std::string_view>(in, "label");
  if (in.has("surface")) v.surface = must<::tankwright::area>(in, "surface");
  if (in.has("transfer")) v.transfer = must<::tankwright::velocity>(in, "transfer");
  if (in.has("bubbles")) v.bubbles = must<::tankwright::rate>(in, "bubbles");
  if (in.has("alpha")) v.alpha = must<::tankwright::proportion>(in, "alpha");
  return v;
}

::tankwright::life::aerated_tank io<::tankwright::life::aerated_tank>::read(const given& in) {
  if (std::optional<::tankwright::life::aerated_tank> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::aerated_tank io<::tankwright::life::aerated_tank>::fields(const given& in) {
  static constexpr std::string_view known[] = {"net", "temperature", "ways"};
  in.only(known);
  const ::tankwright::life::aerated_tank v{.net = must<::tankwright::volume>(in, "net"), .temperature = must<::tankwright::temperature>(in, "temperature"), .ways = may_or<std::span<const ::tankwright::life::aeration>>(in, "ways", [] { return std::span<const ::tankwright::life::aeration>{}; })};
  return v;
}

::tankwright::life::alkalinity_budget io<::tankwright::life::alkalinity_budget>::read(const given& in) {
  if (std::optional<::tankwright::life::alkalinity_budget> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::alkalinity_budget io<::tankwright::life::alkalinity_budget>::fields(const given& in) {
  static constexpr std::string_view known[] = {"load", "net", "now", "lowest"};
  in.only(known);
  const ::tankwright::life::alkalinity_budget v{.load = must<::tankwright::life::nitrogen_load>(in, "load"), .net = must<::tankwright::volume>(in, "net"), .now = must<::tankwright::water::alkalinity>(in, "now"), .lowest = must<::tankwright::water::alkalinity>(in, "lowest")};
  return v;
}
void io<::tankwright::life::alkalinity_budget>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::life::alkalinity_countdown>::write(answer& out, const ::tankwright::life::alkalinity_countdown& v) {
  out.begin();
  out.key("daily_fall");
  io<::tankwright::estimate<::tankwright::water::alkalinity>>::write(out, v.daily_fall);
  out.key("lasts");
  io<std::optional<::tankwright::estimate<::tankwright::duration>>>::write(out, v.lasts);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::schedule io<::tankwright::life::schedule>::read(const given& in) {
  if (std::optional<::tankwright::life::schedule> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::schedule io<::tankwright::life::schedule>::fields(const given& in) {
  static constexpr std::string_view known[] = {"at", "every", "times"};
  in.only(known);
  ::tankwright::life::schedule v{.at = must<::tankwright::duration>(in, "at")};
  if (in.has("every")) v.every = must<::tankwright::duration>(in, "every");
  if (in.has("times")) v.times = must<int>(in, "times");
  return v;
}
void io<::tankwright::life::schedule>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::schedule v{.at = io<::tankwright::duration>::take(zero)};
  not_given(at, 1);
  io<::tankwright::duration>::put(v.every, at);
  io<int>::put(v.times, at);
}

::tankwright::life::ammonia_dose io<::tankwright::life::ammonia_dose>::read(const given& in) {
  if (std::optional<::tankwright::life::ammonia_dose> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::ammonia_dose io<::tankwright::life::ammonia_dose>::fields(const given& in) {
  static constexpr std::string_view known[] = {"when", "rise"};
  in.only(known);
  const ::tankwright::life::ammonia_dose v{.when = must<::tankwright::life::schedule>(in, "when"), .rise = must<::tankwright::water::total_ammonia>(in, "rise")};
  return v;
}
void io<::tankwright::life::ammonia_dose>::defaults(double*& at) {
  io<::tankwright::life::schedule>::defaults(at);
  not_given(at, 1);
}

::tankwright::life::animals io<::tankwright::life::animals>::read(const given& in) {
  if (std::optional<::tankwright::life::animals> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::animals io<::tankwright::life::animals>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "each", "count", "measured", "measured_at_mass", "measured_at", "mass_exponent", "q10", "activity"};
  in.only(known);
  ::tankwright::life::animals v{.each = must<::tankwright::mass>(in, "each"), .measured = must<::tankwright::life::specific_oxygen_use>(in, "measured"), .measured_at_mass = must<::tankwright::mass>(in, "measured_at_mass"), .measured_at = must<::tankwright::temperature>(in, "measured_at")};
  if (in.has("label")) v.label = must<std::string_view>(in, "label");
  if (in.has("count")) v.count = must<double>(in, "count");
  if (in.has("mass_exponent")) v.mass_exponent = must<double>(in, "mass_exponent");
  if (in.has("q10")) v.q10 = must<double>(in, "q10");
  if (in.has("activity")) v.activity = must<double>(in, "activity");
  return v;
}

::tankwright::life::bacteria io<::tankwright::life::bacteria>::read(const given& in) {
  if (std::optional<::tankwright::life::bacteria> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::bacteria io<::tankwright::life::bacteria>::fields(const given& in) {
  static constexpr std::string_view known[] = {"ammonia_oxidisers", "nitrite_oxidisers"};
  in.only(known);
  ::tankwright::life::bacteria v{};
  if (in.has("ammonia_oxidisers")) v.ammonia_oxidisers = must<::tankwright::mass>(in, "ammonia_oxidisers");
  if (in.has("nitrite_oxidisers")) v.nitrite_oxidisers = must<::tankwright::mass>(in, "nitrite_oxidisers");
  return v;
}
void io<::tankwright::life::bacteria>::write(answer& out, const ::tankwright::life::bacteria& v) {
  out.begin();
  out.key("ammonia_oxidisers");
  io<::tankwright::mass>::write(out, v.ammonia_oxidisers);
  out.key("nitrite_oxidisers");
  io<::tankwright::mass>::write(out, v.nitrite_oxidisers);
  out.end();
}
void io<::tankwright::life::bacteria>::defaults(double*& at) {
  constexpr double zeros[2] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::bacteria v{};
  io<::tankwright::mass>::put(v.ammonia_oxidisers, at);
  io<::tankwright::mass>::put(v.nitrite_oxidisers, at);
}

void io<::tankwright::life::bag_state>::write(answer& out, const ::tankwright::life::bag_state& v) {
  out.begin();
  out.key("oxygen_left");
  io<::tankwright::mass>::write(out, v.oxygen_left);
  out.key("oxygen");
  io<::tankwright::mass_density>::write(out, v.oxygen);
  out.key("carbon_dioxide");
  io<::tankwright::mass_density>::write(out, v.carbon_dioxide);
  out.key("ph");
  io<double>::write(out, v.ph);
  out.key("ammonia");
  io<::tankwright::estimate<::tankwright::water::total_ammonia>>::write(out, v.ammonia);
  out.key("free_closed");
  io<::tankwright::estimate<::tankwright::mass_density>>::write(out, v.free_closed);
  out.key("free_opened");
  io<::tankwright::estimate<::tankwright::mass_density>>::write(out, v.free_opened);
  out.end();
}

::tankwright::life::changed_tank io<::tankwright::life::changed_tank>::read(const given& in) {
  if (std::optional<::tankwright::life::changed_tank> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::changed_tank io<::tankwright::life::changed_tank>::fields(const given& in) {
  static constexpr std::string_view known[] = {"net", "load", "part", "every", "lasts", "largest_meal", "removal"};
  in.only(known);
  ::tankwright::life::changed_tank v{.net = must<::tankwright::volume>(in, "net"), .load = must<::tankwright::life::nitrogen_load>(in, "load"), .part = must<::tankwright::proportion>(in, "part"), .every = must<::tankwright::duration>(in, "every"), .lasts = must<::tankwright::duration>(in, "lasts")};
  if (in.has("largest_meal")) v.largest_meal = must<::tankwright::mass>(in, "largest_meal");
  if (in.has("removal")) v.removal = must<::tankwright::rate>(in, "removal");
  return v;
}
void io<::tankwright::life::changed_tank>::defaults(double*& at) {
  constexpr double zeros[7] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::changed_tank v{.net = io<::tankwright::volume>::take(zero), .load = io<::tankwright::life::nitrogen_load>::take(zero), .part = io<::tankwright::proportion>::take(zero), .every = io<::tankwright::duration>::take(zero), .lasts = io<::tankwright::duration>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::mass>::put(v.largest_meal, at);
  io<::tankwright::rate>::put(v.removal, at);
}

void io<::tankwright::life::changed_tank_course>::write(answer& out, const ::tankwright::life::changed_tank_course& v) {
  out.begin();
  out.key("highest");
  io<::tankwright::water::total_ammonia>::write(out, v.highest);
  out.key("changes");
  io<double>::write(out, v.changes);
  out.key("changed");
  io<::tankwright::volume>::write(out, v.changed);
  out.end();
}

::tankwright::life::loop io<::tankwright::life::loop>::read(const given& in) {
  if (std::optional<::tankwright::life::loop> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::loop io<::tankwright::life::loop>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "flow", "efficiency"};
  in.only(known);
  ::tankwright::life::loop v{.flow = must<::tankwright::flow_rate>(in, "flow")};
  if (in.has("label")) v.label = must<std::string_view>(in, "label");
  if (in.has("efficiency")) v.efficiency = must<::tankwright::proportion>(in, "efficiency");
  return v;
}

::tankwright::life::circulation io<::tankwright::life::circulation>::read(const given& in) {
  if (std::optional<::tankwright::life::circulation> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::circulation io<::tankwright::life::circulation>::fields(const given& in) {
  static constexpr std::string_view known[] = {"net", "loops"};
  in.only(known);
  const ::tankwright::life::circulation v{.net = must<::tankwright::volume>(in, "net"), .loops = may_or<std::span<const ::tankwright::life::loop>>(in, "loops", [] { return std::span<const ::tankwright::life::loop>{}; })};
  return v;
}

void io<::tankwright::life::clearance>::write(answer& out, const ::tankwright::life::clearance& v) {
  out.begin();
  out.key("run_in_lengths");
  io<double>::write(out, v.run_in_lengths);
  out.key("width_in_lengths");
  io<double>::write(out, v.width_in_lengths);
  out.key("crossing");
  io<::tankwright::duration>::write(out, v.crossing);
  out.key("run_wanted");
  io<::tankwright::length>::write(out, v.run_wanted);
  out.key("width_wanted");
  io<::tankwright::length>::write(out, v.width_wanted);
  out.key("run_enough");
  io<bool>::write(out, v.run_enough);
  out.key("width_enough");
  io<bool>::write(out, v.width_enough);
  out.key("rule");
  io<std::string_view>::write(out, v.rule);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::life::clearing>::write(answer& out, const ::tankwright::life::clearing& v) {
  out.begin();
  out.key("time");
  io<std::optional<::tankwright::duration>>::write(out, v.time);
  out.key("turnovers");
  io<double>::write(out, v.turnovers);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::closed_bag io<::tankwright::life::closed_bag>::read(const given& in) {
  if (std::optional<::tankwright::life::closed_bag> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::closed_bag io<::tankwright::life::closed_bag>::fields(const given& in) {
  static constexpr std::string_view known[] = {"water", "gas", "oxygen", "uses", "salinity", "temperature", "ph", "alkalinity", "quotient"};
  in.only(known);
  ::tankwright::life::closed_bag v{.water = must<::tankwright::volume>(in, "water"), .gas = must<::tankwright::volume>(in, "gas"), .oxygen = must<::tankwright::proportion>(in, "oxygen"), .uses = must<::tankwright::mass_flow>(in, "uses"), .salinity = must<::tankwright::practical_salinity>(in, "salinity"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("ph")) v.ph = must<double>(in, "ph");
  if (in.has("alkalinity")) v.alkalinity = must<double>(in, "alkalinity");
  if (in.has("quotient")) v.quotient = must<double>(in, "quotient");
  return v;
}
void io<::tankwright::life::closed_bag>::defaults(double*& at) {
  constexpr double zeros[9] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::closed_bag v{.water = io<::tankwright::volume>::take(zero), .gas = io<::tankwright::volume>::take(zero), .oxygen = io<::tankwright::proportion>::take(zero), .uses = io<::tankwright::mass_flow>::take(zero), .salinity = io<::tankwright::practical_salinity>::take(zero), .temperature = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.ph, at);
  io<double>::put(v.alkalinity, at);
  io<double>::put(v.quotient, at);
}

::tankwright::life::drip io<::tankwright::life::drip>::read(const given& in) {
  if (std::optional<::tankwright::life::drip> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::drip io<::tankwright::life::drip>::fields(const given& in) {
  static constexpr std::string_view known[] = {"start", "flow", "vessel"};
  in.only(known);
  ::tankwright::life::drip v{.start = must<::tankwright::volume>(in, "start"), .flow = must<::tankwright::flow_rate>(in, "flow")};
  if (in.has("vessel")) v.vessel = must<::tankwright::life::drip_vessel>(in, "vessel");
  return v;
}
void io<::tankwright::life::drip>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::drip v{.start = io<::tankwright::volume>::take(zero), .flow = io<::tankwright::flow_rate>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::life::drip_vessel>::put(v.vessel, at);
}

::tankwright::life::regular_meal io<::tankwright::life::regular_meal>::read(const given& in) {
  if (std::optional<::tankwright::life::regular_meal> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::regular_meal io<::tankwright::life::regular_meal>::fields(const given& in) {
  static constexpr std::string_view known[] = {"mean", "every"};
  in.only(known);
  ::tankwright::life::regular_meal v{.mean = must<::tankwright::life::nitrogen_load>(in, "mean")};
  if (in.has("every")) v.every = must<::tankwright::duration>(in, "every");
  return v;
}
void io<::tankwright::life::regular_meal>::defaults(double*& at) {
  constexpr double zeros[2] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::regular_meal v{.mean = io<::tankwright::life::nitrogen_load>::take(zero)};
  not_given(at, 1);
  io<::tankwright::duration>::put(v.every, at);
}

::tankwright::life::film io<::tankwright::life::film>::read(const given& in) {
  if (std::optional<::tankwright::life::film> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("seawater_film")) return ::tankwright::life::seawater_film;
  if (in.is_named("freshwater_film")) return ::tankwright::life::freshwater_film;
  static constexpr std::string_view known[] = {"seawater_film", "freshwater_film"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::life::film io<::tankwright::life::film>::fields(const given& in) {
  static constexpr std::string_view known[] = {"plateau", "plateau_at", "plateau_from", "order", "per_kelvin_on_plateau", "per_kelvin_below"};
  in.only(known);
  ::tankwright::life::film v{.plateau = must<::tankwright::mass_flux>(in, "plateau"), .plateau_at = must<::tankwright::temperature>(in, "plateau_at")};
  if (in.has("plateau_from")) v.plateau_from = must<::tankwright::water::total_ammonia>(in, "plateau_from");
  if (in.has("order")) v.order = must<::tankwright::life::film_order>(in, "order");
  if (in.has("per_kelvin_on_plateau")) v.per_kelvin_on_plateau = must<double>(in, "per_kelvin_on_plateau");
  if (in.has("per_kelvin_below")) v.per_kelvin_below = must<double>(in, "per_kelvin_below");
  return v;
}
void io<::tankwright::life::film>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::film v{.plateau = io<::tankwright::mass_flux>::take(zero), .plateau_at = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::water::total_ammonia>::put(v.plateau_from, at);
  io<::tankwright::life::film_order>::put(v.order, at);
  io<double>::put(v.per_kelvin_on_plateau, at);
  io<double>::put(v.per_kelvin_below, at);
}

::tankwright::life::fed_filter io<::tankwright::life::fed_filter>::read(const given& in) {
  if (std::optional<::tankwright::life::fed_filter> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::fed_filter io<::tankwright::life::fed_filter>::fields(const given& in) {
  static constexpr std::string_view known[] = {"meals", "film", "net", "temperature", "of"};
  in.only(known);
  ::tankwright::life::fed_filter v{.meals = may_or<std::span<const ::tankwright::life::regular_meal>>(in, "meals", [] { return std::span<const ::tankwright::life::regular_meal>{}; }), .film = must<::tankwright::area>(in, "film"), .net = must<::tankwright::volume>(in, "net"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("of")) v.of = must<::tankwright::life::film>(in, "of");
  return v;
}

void io<::tankwright::life::feed_nitrogen>::write(answer& out, const ::tankwright::life::feed_nitrogen& v) {
  out.begin();
  out.key("ammonia");
  io<::tankwright::estimate<::tankwright::life::nitrogen_load>>::write(out, v.ammonia);
  out.key("bound");
  io<::tankwright::life::nitrogen_load>::write(out, v.bound);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::feeding io<::tankwright::life::feeding>::read(const given& in) {
  if (std::optional<::tankwright::life::feeding> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::feeding io<::tankwright::life::feeding>::fields(const given& in) {
  static constexpr std::string_view known[] = {"food", "protein"};
  in.only(known);
  const ::tankwright::life::feeding v{.food = must<::tankwright::mass_flow>(in, "food"), .protein = must<::tankwright::proportion>(in, "protein")};
  return v;
}
void io<::tankwright::life::feeding>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::life::film_water io<::tankwright::life::film_water>::read(const given& in) {
  if (std::optional<::tankwright::life::film_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::film_water io<::tankwright::life::film_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"ammonia", "temperature", "film"};
  in.only(known);
  ::tankwright::life::film_water v{.ammonia = must<::tankwright::water::total_ammonia>(in, "ammonia"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("film")) v.film = must<::tankwright::life::film>(in, "film");
  return v;
}
void io<::tankwright::life::film_water>::defaults(double*& at) {
  constexpr double zeros[8] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::film_water v{.ammonia = io<::tankwright::water::total_ammonia>::take(zero), .temperature = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::life::film>::put(v.film, at);
}

void io<::tankwright::life::filter_capacity>::write(answer& out, const ::tankwright::life::filter_capacity& v) {
  out.begin();
  out.key("today");
  io<::tankwright::estimate<::tankwright::life::nitrogen_load>>::write(out, v.today);
  out.key("mature");
  io<::tankwright::estimate<::tankwright::life::nitrogen_load>>::write(out, v.mature);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::filter_surface io<::tankwright::life::filter_surface>::read(const given& in) {
  if (std::optional<::tankwright::life::filter_surface> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::filter_surface io<::tankwright::life::filter_surface>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "wet", "seeded"};
  in.only(known);
  ::tankwright::life::filter_surface v{.wet = must<::tankwright::area>(in, "wet")};
  if (in.has("label")) v.label = must<std::string_view>(in, "label");
  if (in.has("seeded")) v.seeded = must<::tankwright::proportion>(in, "seeded");
  return v;
}

::tankwright::life::filter_load io<::tankwright::life::filter_load>::read(const given& in) {
  if (std::optional<::tankwright::life::filter_load> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::filter_load io<::tankwright::life::filter_load>::fields(const given& in) {
  static constexpr std::string_view known[] = {"load", "surfaces", "temperature", "film"};
  in.only(known);
  ::tankwright::life::filter_load v{.load = must<::tankwright::life::nitrogen_load>(in, "load"), .surfaces = may_or<std::span<const ::tankwright::life::filter_surface>>(in, "surfaces", [] { return std::span<const ::tankwright::life::filter_surface>{}; }), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("film")) v.film = must<::tankwright::life::film>(in, "film");
  return v;
}

::tankwright::life::foam_column io<::tankwright::life::foam_column>::read(const given& in) {
  if (std::optional<::tankwright::life::foam_column> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::foam_column io<::tankwright::life::foam_column>::fields(const given& in) {
  static constexpr std::string_view known[] = {"water_in_column", "flow", "net", "salinity", "temperature"};
  in.only(known);
  const ::tankwright::life::foam_column v{.water_in_column = must<::tankwright::volume>(in, "water_in_column"), .flow = must<::tankwright::flow_rate>(in, "flow"), .net = must<::tankwright::volume>(in, "net"), .salinity = must<::tankwright::practical_salinity>(in, "salinity"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  return v;
}
void io<::tankwright::life::foam_column>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::life::foam_contact>::write(answer& out, const ::tankwright::life::foam_contact& v) {
  out.begin();
  out.key("time");
  io<::tankwright::duration>::write(out, v.time);
  out.key("passes");
  io<::tankwright::rate>::write(out, v.passes);
  out.key("long_enough");
  io<bool>::write(out, v.long_enough);
  out.key("often_enough");
  io<bool>::write(out, v.often_enough);
  out.key("rule");
  io<std::string_view>::write(out, v.rule);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::water_step io<::tankwright::life::water_step>::read(const given& in) {
  if (std::optional<::tankwright::life::water_step> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::water_step io<::tankwright::life::water_step>::fields(const given& in) {
  static constexpr std::string_view known[] = {"salinity_from", "salinity_to", "temperature_from", "temperature_to"};
  in.only(known);
  const ::tankwright::life::water_step v{.salinity_from = must<::tankwright::practical_salinity>(in, "salinity_from"), .salinity_to = must<::tankwright::practical_salinity>(in, "salinity_to"), .temperature_from = must<::tankwright::temperature>(in, "temperature_from"), .temperature_to = must<::tankwright::temperature>(in, "temperature_to")};
  return v;
}
void io<::tankwright::life::water_step>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::life::gentle_drip io<::tankwright::life::gentle_drip>::read(const given& in) {
  if (std::optional<::tankwright::life::gentle_drip> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::gentle_drip io<::tankwright::life::gentle_drip>::fields(const given& in) {
  static constexpr std::string_view known[] = {"start", "step", "salinity_per_hour", "temperature_per_hour"};
  in.only(known);
  ::tankwright::life::gentle_drip v{.start = must<::tankwright::volume>(in, "start"), .step = must<::tankwright::life::water_step>(in, "step"), .salinity_per_hour = must<double>(in, "salinity_per_hour")};
  if (in.has("temperature_per_hour")) v.temperature_per_hour = must<::tankwright::temperature_difference>(in, "temperature_per_hour");
  return v;
}
void io<::tankwright::life::gentle_drip>::defaults(double*& at) {
  constexpr double zeros[7] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::gentle_drip v{.start = io<::tankwright::volume>::take(zero), .step = io<::tankwright::life::water_step>::take(zero), .salinity_per_hour = io<double>::take(zero)};
  not_given(at, 1);
  io<::tankwright::life::water_step>::defaults(at);
  not_given(at, 1);
  io<::tankwright::temperature_difference>::put(v.temperature_per_hour, at);
}

::tankwright::life::growth_conditions io<::tankwright::life::growth_conditions>::read(const given& in) {
  if (std::optional<::tankwright::life::growth_conditions> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::growth_conditions io<::tankwright::life::growth_conditions>::fields(const given& in) {
  static constexpr std::string_view known[] = {"nitrogen", "oxygen", "temperature"};
  in.only(known);
  const ::tankwright::life::growth_conditions v{.nitrogen = must<::tankwright::mass_density>(in, "nitrogen"), .oxygen = must<::tankwright::mass_density>(in, "oxygen"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  return v;
}
void io<::tankwright::life::growth_conditions>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::life::larger_load io<::tankwright::life::larger_load>::read(const given& in) {
  if (std::optional<::tankwright::life::larger_load> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::larger_load io<::tankwright::life::larger_load>::fields(const given& in) {
  static constexpr std::string_view known[] = {"before", "after", "growth", "net"};
  in.only(known);
  const ::tankwright::life::larger_load v{.before = must<::tankwright::life::nitrogen_load>(in, "before"), .after = must<::tankwright::life::nitrogen_load>(in, "after"), .growth = must<::tankwright::rate>(in, "growth"), .net = must<::tankwright::volume>(in, "net")};
  return v;
}
void io<::tankwright::life::larger_load>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::life::load_step io<::tankwright::life::load_step>::read(const given& in) {
  if (std::optional<::tankwright::life::load_step> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::load_step io<::tankwright::life::load_step>::fields(const given& in) {
  static constexpr std::string_view known[] = {"from", "load"};
  in.only(known);
  const ::tankwright::life::load_step v{.from = must<::tankwright::duration>(in, "from"), .load = must<::tankwright::life::nitrogen_load>(in, "load")};
  return v;
}
void io<::tankwright::life::load_step>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::life::loose_rock io<::tankwright::life::loose_rock>::read(const given& in) {
  if (std::optional<::tankwright::life::loose_rock> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::loose_rock io<::tankwright::life::loose_rock>::fields(const given& in) {
  static constexpr std::string_view known[] = {"dry", "piece", "density", "roughness"};
  in.only(known);
  ::tankwright::life::loose_rock v{.dry = must<::tankwright::mass>(in, "dry"), .piece = must<::tankwright::length>(in, "piece"), .density = must<::tankwright::mass_density>(in, "density")};
  if (in.has("roughness")) v.roughness = must<double>(in, "roughness");
  return v;
}
void io<::tankwright::life::loose_rock>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::loose_rock v{.dry = io<::tankwright::mass>::take(zero), .piece = io<::tankwright::length>::take(zero), .density = io<::tankwright::mass_density>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.roughness, at);
}

::tankwright::life::match_limits io<::tankwright::life::match_limits>::read(const given& in) {
  if (std::optional<::tankwright::life::match_limits> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::match_limits io<::tankwright::life::match_limits>::fields(const given& in) {
  static constexpr std::string_view known[] = {"salinity", "temperature", "ph", "ammonia"};
  in.only(known);
  ::tankwright::life::match_limits v{};
  if (in.has("salinity")) v.salinity = must<double>(in, "salinity");
  if (in.has("temperature")) v.temperature = must<::tankwright::temperature_difference>(in, "temperature");
  if (in.has("ph")) v.ph = must<double>(in, "ph");
  if (in.has("ammonia")) v.ammonia = must<::tankwright::water::free_ammonia>(in, "ammonia");
  return v;
}
void io<::tankwright::life::match_limits>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::match_limits v{};
  io<double>::put(v.salinity, at);
  io<::tankwright::temperature_difference>::put(v.temperature, at);
  io<double>::put(v.ph, at);
  io<::tankwright::water::free_ammonia>::put(v.ammonia, at);
}

::tankwright::life::moved_rock io<::tankwright::life::moved_rock>::read(const given& in) {
  if (std::optional<::tankwright::life::moved_rock> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::moved_rock io<::tankwright::life::moved_rock>::fields(const given& in) {
  static constexpr std::string_view known[] = {"proven", "share_moved", "new_load", "net"};
  in.only(known);
  const ::tankwright::life::moved_rock v{.proven = must<::tankwright::life::nitrogen_load>(in, "proven"), .share_moved = must<::tankwright::proportion>(in, "share_moved"), .new_load = must<::tankwright::life::nitrogen_load>(in, "new_load"), .net = must<::tankwright::volume>(in, "net")};
  return v;
}
void io<::tankwright::life::moved_rock>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::life::nitrification_needs>::write(answer& out, const ::tankwright::life::nitrification_needs& v) {
  out.begin();
  out.key("oxygen");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.oxygen);
  out.key("alkalinity");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.alkalinity);
  out.key("carbon_dioxide");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.carbon_dioxide);
  out.key("cells");
  io<::tankwright::estimate<::tankwright::mass_flow>>::write(out, v.cells);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::nitrifier io<::tankwright::life::nitrifier>::read(const given& in) {
  if (std::optional<::tankwright::life::nitrifier> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("ammonia_oxidisers_2014")) return ::tankwright::life::ammonia_oxidisers_2014;
  if (in.is_named("nitrite_oxidisers_2014")) return ::tankwright::life::nitrite_oxidisers_2014;
  static constexpr std::string_view known[] = {"ammonia_oxidisers_2014", "nitrite_oxidisers_2014"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::life::nitrifier io<::tankwright::life::nitrifier>::fields(const given& in) {
  static constexpr std::string_view known[] = {"growth", "half_nitrogen", "yield", "decay", "half_oxygen", "growth_per_kelvin", "decay_per_kelvin"};
  in.only(known);
  const ::tankwright::life::nitrifier v{.growth = must<::tankwright::rate>(in, "growth"), .half_nitrogen = must<::tankwright::mass_density>(in, "half_nitrogen"), .yield = must<double>(in, "yield"), .decay = must<::tankwright::rate>(in, "decay"), .half_oxygen = must<::tankwright::mass_density>(in, "half_oxygen"), .growth_per_kelvin = must<double>(in, "growth_per_kelvin"), .decay_per_kelvin = must<double>(in, "decay_per_kelvin")};
  return v;
}
void io<::tankwright::life::nitrifier>::write(answer& out, const ::tankwright::life::nitrifier& v) {
  out.begin();
  out.key("growth");
  io<::tankwright::rate>::write(out, v.growth);
  out.key("half_nitrogen");
  io<::tankwright::mass_density>::write(out, v.half_nitrogen);
  out.key("yield");
  io<double>::write(out, v.yield);
  out.key("decay");
  io<::tankwright::rate>::write(out, v.decay);
  out.key("half_oxygen");
  io<::tankwright::mass_density>::write(out, v.half_oxygen);
  out.key("growth_per_kelvin");
  io<double>::write(out, v.growth_per_kelvin);
  out.key("decay_per_kelvin");
  io<double>::write(out, v.decay_per_kelvin);
  out.end();
}
void io<::tankwright::life::nitrifier>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::life::oxygen_balance io<::tankwright::life::oxygen_balance>::read(const given& in) {
  if (std::optional<::tankwright::life::oxygen_balance> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::oxygen_balance io<::tankwright::life::oxygen_balance>::fields(const given& in) {
  static constexpr std::string_view known[] = {"net", "use", "saturation", "aeration"};
  in.only(known);
  ::tankwright::life::oxygen_balance v{.net = must<::tankwright::volume>(in, "net"), .use = must<::tankwright::mass_flow>(in, "use"), .saturation = must<::tankwright::mass_density>(in, "saturation")};
  if (in.has("aeration")) v.aeration = must<::tankwright::rate>(in, "aeration");
  return v;
}
void io<::tankwright::life::oxygen_balance>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::oxygen_balance v{.net = io<::tankwright::volume>::take(zero), .use = io<::tankwright::mass_flow>::take(zero), .saturation = io<::tankwright::mass_density>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::rate>::put(v.aeration, at);
}

void io<::tankwright::life::oxygen_countdown>::write(answer& out, const ::tankwright::life::oxygen_countdown& v) {
  out.begin();
  out.key("time");
  io<std::optional<::tankwright::duration>>::write(out, v.time);
  out.key("plan_for");
  io<std::optional<::tankwright::duration>>::write(out, v.plan_for);
  out.key("above_saturation");
  io<bool>::write(out, v.above_saturation);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::oxygen_course io<::tankwright::life::oxygen_course>::read(const given& in) {
  if (std::optional<::tankwright::life::oxygen_course> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::oxygen_course io<::tankwright::life::oxygen_course>::fields(const given& in) {
  static constexpr std::string_view known[] = {"tank", "start"};
  in.only(known);
  const ::tankwright::life::oxygen_course v{.tank = must<::tankwright::life::oxygen_balance>(in, "tank"), .start = must<::tankwright::mass_density>(in, "start")};
  return v;
}
void io<::tankwright::life::oxygen_course>::defaults(double*& at) {
  io<::tankwright::life::oxygen_balance>::defaults(at);
  not_given(at, 1);
}

void io<::tankwright::life::oxygen_demand>::write(answer& out, const ::tankwright::life::oxygen_demand& v) {
  out.begin();
  out.key("use");
  io<::tankwright::mass_flow>::write(out, v.use);
  out.key("per_mass");
  io<::tankwright::life::specific_oxygen_use>::write(out, v.per_mass);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::life::peak<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>>::write(answer& out, const ::tankwright::life::peak<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>& v) {
  out.begin();
  out.key("level");
  io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>::write(out, v.level);
  out.key("at");
  io<::tankwright::duration>::write(out, v.at);
  out.end();
}

void io<::tankwright::life::peak<::tankwright::water::total_ammonia>>::write(answer& out, const ::tankwright::life::peak<::tankwright::water::total_ammonia>& v) {
  out.begin();
  out.key("level");
  io<::tankwright::water::total_ammonia>::write(out, v.level);
  out.key("at");
  io<::tankwright::duration>::write(out, v.at);
  out.end();
}

::tankwright::life::removal_task io<::tankwright::life::removal_task>::read(const given& in) {
  if (std::optional<::tankwright::life::removal_task> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::removal_task io<::tankwright::life::removal_task>::fields(const given& in) {
  static constexpr std::string_view known[] = {"made", "level", "efficiency"};
  in.only(known);
  ::tankwright::life::removal_task v{.made = must<::tankwright::mass_flow>(in, "made"), .level = must<::tankwright::mass_density>(in, "level")};
  if (in.has("efficiency")) v.efficiency = must<::tankwright::proportion>(in, "efficiency");
  return v;
}
void io<::tankwright::life::removal_task>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::removal_task v{.made = io<::tankwright::mass_flow>::take(zero), .level = io<::tankwright::mass_density>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::proportion>::put(v.efficiency, at);
}

void io<::tankwright::life::rock_balance>::write(answer& out, const ::tankwright::life::rock_balance& v) {
  out.begin();
  out.key("carried");
  io<::tankwright::life::nitrogen_load>::write(out, v.carried);
  out.key("shortfall");
  io<::tankwright::life::nitrogen_load>::write(out, v.shortfall);
  out.key("share_needed");
  io<double>::write(out, v.share_needed);
  out.key("daily_rise");
  io<::tankwright::water::total_ammonia>::write(out, v.daily_rise);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::seeding io<::tankwright::life::seeding>::read(const given& in) {
  if (std::optional<::tankwright::life::seeding> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::seeding io<::tankwright::life::seeding>::fields(const given& in) {
  static constexpr std::string_view known[] = {"when", "added"};
  in.only(known);
  const ::tankwright::life::seeding v{.when = must<::tankwright::life::schedule>(in, "when"), .added = must<::tankwright::life::bacteria>(in, "added")};
  return v;
}
void io<::tankwright::life::seeding>::defaults(double*& at) {
  io<::tankwright::life::schedule>::defaults(at);
  io<::tankwright::life::bacteria>::defaults(at);
}

void io<::tankwright::life::settled_ammonia>::write(answer& out, const ::tankwright::life::settled_ammonia& v) {
  out.begin();
  out.key("low");
  io<std::optional<::tankwright::water::total_ammonia>>::write(out, v.low);
  out.key("central");
  io<std::optional<::tankwright::water::total_ammonia>>::write(out, v.central);
  out.key("high");
  io<std::optional<::tankwright::water::total_ammonia>>::write(out, v.high);
  out.key("share_of_capacity");
  io<::tankwright::estimate<double>>::write(out, v.share_of_capacity);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::water_change io<::tankwright::life::water_change>::read(const given& in) {
  if (std::optional<::tankwright::life::water_change> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::water_change io<::tankwright::life::water_change>::fields(const given& in) {
  static constexpr std::string_view known[] = {"when", "part"};
  in.only(known);
  const ::tankwright::life::water_change v{.when = must<::tankwright::life::schedule>(in, "when"), .part = must<::tankwright::proportion>(in, "part")};
  return v;
}
void io<::tankwright::life::water_change>::defaults(double*& at) {
  io<::tankwright::life::schedule>::defaults(at);
  not_given(at, 1);
}

::tankwright::life::start_up io<::tankwright::life::start_up>::read(const given& in) {
  if (std::optional<::tankwright::life::start_up> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::start_up io<::tankwright::life::start_up>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "net", "temperature", "oxygen", "ammonia", "nitrite", "nitrate", "seedings", "loads", "doses", "water_changes", "horizon", "every", "ammonia_limit", "nitrite_limit", "ammonia_oxidisers", "nitrite_oxidisers"};
  in.only(known);
  ::tankwright::life::start_up v{.net = must<::tankwright::volume>(in, "net"), .temperature = must<::tankwright::temperature>(in, "temperature"), .oxygen = must<::tankwright::mass_density>(in, "oxygen")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("ammonia")) v.ammonia = must<::tankwright::water::total_ammonia>(in, "ammonia");
  if (in.has("nitrite")) v.nitrite = must<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>(in, "nitrite");
  if (in.has("nitrate")) v.nitrate = must<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>>(in, "nitrate");
  if (in.has("seedings")) v.seedings = must<std::vector<::tankwright::life::seeding>>(in, "seedings");
  if (in.has("loads")) v.loads = must<std::vector<::tankwright::life::load_step>>(in, "loads");
  if (in.has("doses")) v.doses = must<std::vector<::tankwright::life::ammonia_dose>>(in, "doses");
  if (in.has("water_changes")) v.water_changes = must<std::vector<::tankwright::life::water_change>>(in, "water_changes");
  if (in.has("horizon")) v.horizon = must<::tankwright::duration>(in, "horizon");
  if (in.has("every")) v.every = must<::tankwright::duration>(in, "every");
  if (in.has("ammonia_limit")) v.ammonia_limit = must<::tankwright::water::total_ammonia>(in, "ammonia_limit");
  if (in.has("nitrite_limit")) v.nitrite_limit = must<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>(in, "nitrite_limit");
  if (in.has("ammonia_oxidisers")) v.ammonia_oxidisers = must<::tankwright::life::nitrifier>(in, "ammonia_oxidisers");
  if (in.has("nitrite_oxidisers")) v.nitrite_oxidisers = must<::tankwright::life::nitrifier>(in, "nitrite_oxidisers");
  return v;
}

void io<::tankwright::life::start_up_summary>::write(answer& out, const ::tankwright::life::start_up_summary& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("ammonia");
  io<::tankwright::life::peak<::tankwright::water::total_ammonia>>::write(out, v.ammonia);
  out.key("nitrite");
  io<::tankwright::life::peak<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>>::write(out, v.nitrite);
  out.key("clear_since");
  io<std::optional<::tankwright::duration>>::write(out, v.clear_since);
  out.key("nitrogen_added");
  io<::tankwright::mass>::write(out, v.nitrogen_added);
  out.key("nitrogen_removed");
  io<::tankwright::mass>::write(out, v.nitrogen_removed);
  out.key("nitrogen_oxidised");
  io<::tankwright::mass>::write(out, v.nitrogen_oxidised);
  out.key("alkalinity_used");
  io<::tankwright::water::alkalinity>::write(out, v.alkalinity_used);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::life::start_up_sample>::write(answer& out, const ::tankwright::life::start_up_sample& v) {
  out.begin();
  out.key("at");
  io<::tankwright::duration>::write(out, v.at);
  out.key("ammonia");
  io<::tankwright::water::total_ammonia>::write(out, v.ammonia);
  out.key("nitrite");
  io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>::write(out, v.nitrite);
  out.key("nitrate");
  io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>>::write(out, v.nitrate);
  out.key("living");
  io<::tankwright::life::bacteria>::write(out, v.living);
  out.end();
}

void io<::tankwright::life::start_up_result>::write(answer& out, const ::tankwright::life::start_up_result& v) {
  out.begin();
  out.key("summary");
  io<::tankwright::life::start_up_summary>::write(out, v.summary);
  out.key("samples");
  io<std::vector<::tankwright::life::start_up_sample>>::write(out, v.samples);
  out.end();
}

void io<::tankwright::life::step_answer>::write(answer& out, const ::tankwright::life::step_answer& v) {
  out.begin();
  out.key("left_over");
  io<::tankwright::water::total_ammonia>::write(out, v.left_over);
  out.key("catches_up");
  io<::tankwright::duration>::write(out, v.catches_up);
  out.end();
}

void io<::tankwright::life::stocking_date>::write(answer& out, const ::tankwright::life::stocking_date& v) {
  out.begin();
  out.key("on");
  io<::tankwright::duration>::write(out, v.on);
  out.key("share");
  io<::tankwright::proportion>::write(out, v.share);
  out.key("left_over");
  io<::tankwright::water::total_ammonia>::write(out, v.left_over);
  out.end();
}

::tankwright::life::stocking_question io<::tankwright::life::stocking_question>::read(const given& in) {
  if (std::optional<::tankwright::life::stocking_question> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::stocking_question io<::tankwright::life::stocking_question>::fields(const given& in) {
  static constexpr std::string_view known[] = {"whole", "start", "step", "rest", "growth", "net", "below"};
  in.only(known);
  const ::tankwright::life::stocking_question v{.whole = must<::tankwright::life::nitrogen_load>(in, "whole"), .start = must<::tankwright::proportion>(in, "start"), .step = must<::tankwright::proportion>(in, "step"), .rest = must<::tankwright::duration>(in, "rest"), .growth = must<::tankwright::rate>(in, "growth"), .net = must<::tankwright::volume>(in, "net"), .below = must<::tankwright::water::total_ammonia>(in, "below")};
  return v;
}
void io<::tankwright::life::stocking_question>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::life::swim_space io<::tankwright::life::swim_space>::read(const given& in) {
  if (std::optional<::tankwright::life::swim_space> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::swim_space io<::tankwright::life::swim_space>::fields(const given& in) {
  static constexpr std::string_view known[] = {"animal", "run", "width", "speed", "run_multiple", "width_multiple"};
  in.only(known);
  ::tankwright::life::swim_space v{.animal = must<::tankwright::length>(in, "animal"), .run = must<::tankwright::length>(in, "run"), .width = must<::tankwright::length>(in, "width"), .speed = must<::tankwright::velocity>(in, "speed")};
  if (in.has("run_multiple")) v.run_multiple = must<double>(in, "run_multiple");
  if (in.has("width_multiple")) v.width_multiple = must<double>(in, "width_multiple");
  return v;
}
void io<::tankwright::life::swim_space>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::swim_space v{.animal = io<::tankwright::length>::take(zero), .run = io<::tankwright::length>::take(zero), .width = io<::tankwright::length>::take(zero), .speed = io<::tankwright::velocity>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.run_multiple, at);
  io<double>::put(v.width_multiple, at);
}

void io<::tankwright::life::water_between>::write(answer& out, const ::tankwright::life::water_between& v) {
  out.begin();
  out.key("salinity");
  io<::tankwright::practical_salinity>::write(out, v.salinity);
  out.key("temperature");
  io<::tankwright::temperature>::write(out, v.temperature);
  out.end();
}

void io<::tankwright::life::water_match>::write(answer& out, const ::tankwright::life::water_match& v) {
  out.begin();
  out.key("salinity");
  io<double>::write(out, v.salinity);
  out.key("temperature");
  io<::tankwright::temperature_difference>::write(out, v.temperature);
  out.key("ph");
  io<double>::write(out, v.ph);
  out.key("ammonia_as_is");
  io<::tankwright::estimate<::tankwright::water::free_ammonia>>::write(out, v.ammonia_as_is);
  out.key("ammonia_at_tank_ph");
  io<::tankwright::estimate<::tankwright::water::free_ammonia>>::write(out, v.ammonia_at_tank_ph);
  out.key("salinity_matches");
  io<bool>::write(out, v.salinity_matches);
  out.key("temperature_matches");
  io<bool>::write(out, v.temperature_matches);
  out.key("ph_matches");
  io<bool>::write(out, v.ph_matches);
  out.key("ammonia_safe");
  io<bool>::write(out, v.ammonia_safe);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::life::water_pair io<::tankwright::life::water_pair>::read(const given& in) {
  if (std::optional<::tankwright::life::water_pair> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::water_pair io<::tankwright::life::water_pair>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bag", "tank", "limits"};
  in.only(known);
  ::tankwright::life::water_pair v{.bag = must<::tankwright::water::ammonia_sample>(in, "bag"), .tank = must<::tankwright::water::ammonia_sample>(in, "tank")};
  if (in.has("limits")) v.limits = must<::tankwright::life::match_limits>(in, "limits");
  return v;
}

::tankwright::life::working_filter io<::tankwright::life::working_filter>::read(const given& in) {
  if (std::optional<::tankwright::life::working_filter> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::life::working_filter io<::tankwright::life::working_filter>::fields(const given& in) {
  static constexpr std::string_view known[] = {"load", "temperature", "share_moved", "ammonia_oxidisers", "nitrite_oxidisers"};
  in.only(known);
  ::tankwright::life::working_filter v{.load = must<::tankwright::life::nitrogen_load>(in, "load"), .temperature = must<::tankwright::temperature>(in, "temperature")};
  if (in.has("share_moved")) v.share_moved = must<::tankwright::proportion>(in, "share_moved");
  if (in.has("ammonia_oxidisers")) v.ammonia_oxidisers = must<::tankwright::life::nitrifier>(in, "ammonia_oxidisers");
  if (in.has("nitrite_oxidisers")) v.nitrite_oxidisers = must<::tankwright::life::nitrifier>(in, "nitrite_oxidisers");
  return v;
}
void io<::tankwright::life::working_filter>::defaults(double*& at) {
  constexpr double zeros[17] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::life::working_filter v{.load = io<::tankwright::life::nitrogen_load>::take(zero), .temperature = io<::tankwright::temperature>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::proportion>::put(v.share_moved, at);
  io<::tankwright::life::nitrifier>::put(v.ammonia_oxidisers, at);
  io<::tankwright::life::nitrifier>::put(v.nitrite_oxidisers, at);
}

namespace {

// life.share_of_tank_water
constexpr std::string_view fields_0[] = {"how", "time"};
constexpr std::string_view required_0[] = {"how", "time"};
auto call_0([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  in.only(fields_0);
  const auto a0 = must<::tankwright::life::drip>(in, "how");
  const auto a1 = must<::tankwright::duration>(in, "time");
  return ::tankwright::life::share_of_tank_water(a0, a1);
}
void numbers_0(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::drip>::take(in);
  const auto a1 = io<::tankwright::duration>::take(in);
  io<::tankwright::proportion>::put(::tankwright::life::share_of_tank_water(a0, a1), out);
}
void defaults_0(double* at) {
  io<::tankwright::life::drip>::defaults(at);
  not_given(at, 1);
}

// life.time_to_share
constexpr std::string_view fields_1[] = {"how", "share"};
constexpr std::string_view required_1[] = {"how", "share"};
auto call_1([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  in.only(fields_1);
  const auto a0 = must<::tankwright::life::drip>(in, "how");
  const auto a1 = must<::tankwright::proportion>(in, "share");
  return ::tankwright::life::time_to_share(a0, a1);
}
void numbers_1(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::drip>::take(in);
  const auto a1 = io<::tankwright::proportion>::take(in);
  io<::tankwright::duration>::put(::tankwright::life::time_to_share(a0, a1), out);
}
void defaults_1(double* at) {
  io<::tankwright::life::drip>::defaults(at);
  not_given(at, 1);
}

// life.mixed_at
constexpr std::string_view fields_2[] = {"step", "share"};
constexpr std::string_view required_2[] = {"step", "share"};
auto call_2([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::water_between> {
  in.only(fields_2);
  const auto a0 = must<::tankwright::life::water_step>(in, "step");
  const auto a1 = must<::tankwright::proportion>(in, "share");
  return ::tankwright::life::mixed_at(a0, a1);
}
void numbers_2(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::water_step>::take(in);
  const auto a1 = io<::tankwright::proportion>::take(in);
  io<::tankwright::life::water_between>::put(::tankwright::life::mixed_at(a0, a1), out);
}
void defaults_2(double* at) {
  io<::tankwright::life::water_step>::defaults(at);
  not_given(at, 1);
}

// life.gentle_flow
constexpr std::string_view fields_3[] = {"start", "step", "salinity_per_hour", "temperature_per_hour"};
constexpr std::string_view required_3[] = {"start", "step", "salinity_per_hour"};
auto call_3([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  return ::tankwright::life::gentle_flow(io<::tankwright::life::gentle_drip>::fields(in));
}
void numbers_3(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::gentle_drip>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::life::gentle_flow(a0), out);
}
void defaults_3(double* at) {
  io<::tankwright::life::gentle_drip>::defaults(at);
}

// life.transfer_at
constexpr std::string_view fields_4[] = {"at_20_celsius", "water"};
constexpr std::string_view required_4[] = {"at_20_celsius", "water"};
auto call_4([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::rate> {
  in.only(fields_4);
  const auto a0 = must<::tankwright::rate>(in, "at_20_celsius");
  const auto a1 = must<::tankwright::temperature>(in, "water");
  return ::tankwright::life::transfer_at(a0, a1);
}
void numbers_4(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::rate>::take(in);
  const auto a1 = io<::tankwright::temperature>::take(in);
  io<::tankwright::rate>::put(::tankwright::life::transfer_at(a0, a1), out);
}
void defaults_4(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// life.aeration_rate
constexpr std::string_view fields_5[] = {"net", "temperature", "ways"};
constexpr std::string_view required_5[] = {"net", "temperature"};
auto call_5([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::rate> {
  return ::tankwright::life::aeration_rate(io<::tankwright::life::aerated_tank>::fields(in));
}

// life.flow_cleared
constexpr std::string_view fields_6[] = {"loops"};
constexpr std::string_view required_6[] = {"loops"};
auto call_6([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_6);
  const auto a0 = must<std::span<const ::tankwright::life::loop>>(in, "loops");
  return ::tankwright::life::flow_cleared(a0);
}

// life.turnover_rate
constexpr std::string_view fields_7[] = {"net", "loops"};
constexpr std::string_view required_7[] = {"net"};
auto call_7([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::rate> {
  return ::tankwright::life::turnover_rate(io<::tankwright::life::circulation>::fields(in));
}

// life.removal_rate
constexpr std::string_view fields_8[] = {"net", "loops"};
constexpr std::string_view required_8[] = {"net"};
auto call_8([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::rate> {
  return ::tankwright::life::removal_rate(io<::tankwright::life::circulation>::fields(in));
}

// life.share_removed
constexpr std::string_view fields_9[] = {"turnovers", "efficiency"};
constexpr std::string_view required_9[] = {"turnovers"};
auto call_9([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  in.only(fields_9);
  const auto a0 = must<double>(in, "turnovers");
  const auto a1 = may_or<::tankwright::proportion>(in, "efficiency", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::life;
    return ::tankwright::proportion(fraction(1.0));
  });
  return ::tankwright::life::share_removed(a0, a1);
}
void numbers_9(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<double>::take(in);
  const auto a1 = io<::tankwright::proportion>::take(in);
  io<::tankwright::proportion>::put(::tankwright::life::share_removed(a0, a1), out);
}
void defaults_9(double* at) {
  not_given(at, 1);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::life;
    return ::tankwright::proportion(fraction(1.0));
  }();
  io<::tankwright::proportion>::put(a1, at);
}

// life.turnovers_for
constexpr std::string_view fields_10[] = {"removed", "efficiency"};
constexpr std::string_view required_10[] = {"removed"};
auto call_10([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  in.only(fields_10);
  const auto a0 = must<::tankwright::proportion>(in, "removed");
  const auto a1 = may_or<::tankwright::proportion>(in, "efficiency", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::life;
    return ::tankwright::proportion(fraction(1.0));
  });
  return ::tankwright::life::turnovers_for(a0, a1);
}
void numbers_10(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::proportion>::take(in);
  const auto a1 = io<::tankwright::proportion>::take(in);
  io<double>::put(::tankwright::life::turnovers_for(a0, a1), out);
}
void defaults_10(double* at) {
  not_given(at, 1);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::life;
    return ::tankwright::proportion(fraction(1.0));
  }();
  io<::tankwright::proportion>::put(a1, at);
}

// life.time_to_remove
constexpr std::string_view fields_11[] = {"tank", "removed"};
constexpr std::string_view required_11[] = {"tank", "removed"};
auto call_11([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::clearing> {
  in.only(fields_11);
  const auto a0 = must<::tankwright::life::circulation>(in, "tank");
  const auto a1 = must<::tankwright::proportion>(in, "removed");
  return ::tankwright::life::time_to_remove(a0, a1);
}

// life.treatment_flow_for
constexpr std::string_view fields_12[] = {"made", "level", "efficiency"};
constexpr std::string_view required_12[] = {"made", "level"};
auto call_12([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  return ::tankwright::life::treatment_flow_for(io<::tankwright::life::removal_task>::fields(in));
}
void numbers_12(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::removal_task>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::life::treatment_flow_for(a0), out);
}
void defaults_12(double* at) {
  io<::tankwright::life::removal_task>::defaults(at);
}

// life.foam_contact_of
constexpr std::string_view fields_13[] = {"water_in_column", "flow", "net", "salinity", "temperature"};
constexpr std::string_view required_13[] = {"water_in_column", "flow", "net", "salinity", "temperature"};
auto call_13([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::foam_contact> {
  const auto policy = in.policy();
  return ::tankwright::life::foam_contact_of(io<::tankwright::life::foam_column>::fields(in), policy);
}

// life.bubble_surface
constexpr std::string_view fields_14[] = {"gas_share", "bubble"};
constexpr std::string_view required_14[] = {"gas_share", "bubble"};
auto call_14([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_surface> {
  in.only(fields_14);
  const auto a0 = must<::tankwright::proportion>(in, "gas_share");
  const auto a1 = must<::tankwright::length>(in, "bubble");
  return ::tankwright::life::bubble_surface(a0, a1);
}
void numbers_14(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::proportion>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::specific_surface>::put(::tankwright::life::bubble_surface(a0, a1), out);
}
void defaults_14(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// life.capacity_for_meals
constexpr std::string_view fields_15[] = {"meals", "level", "net"};
constexpr std::string_view required_15[] = {"meals", "level", "net"};
auto call_15([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::nitrogen_load> {
  in.only(fields_15);
  const auto a0 = must<std::span<const ::tankwright::life::regular_meal>>(in, "meals");
  const auto a1 = must<::tankwright::water::total_ammonia>(in, "level");
  const auto a2 = must<::tankwright::volume>(in, "net");
  return ::tankwright::life::capacity_for_meals(a0, a1, a2);
}

// life.highest_ammonia
constexpr std::string_view fields_16[] = {"meals", "film", "net", "temperature", "of"};
constexpr std::string_view required_16[] = {"film", "net", "temperature"};
auto call_16([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::optional<::tankwright::water::total_ammonia>> {
  const auto policy = in.policy();
  return ::tankwright::life::highest_ammonia(io<::tankwright::life::fed_filter>::fields(in), policy);
}

// life.nitrification_rate
constexpr std::string_view fields_17[] = {"ammonia", "temperature", "film"};
constexpr std::string_view required_17[] = {"ammonia", "temperature"};
auto call_17([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::mass_flux>> {
  const auto policy = in.policy();
  return ::tankwright::life::nitrification_rate(io<::tankwright::life::film_water>::fields(in), policy);
}
void numbers_17(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::film_water>::take(in);
  io<::tankwright::estimate<::tankwright::mass_flux>>::put(::tankwright::life::nitrification_rate(a0, policy), out);
}
void defaults_17(double* at) {
  io<::tankwright::life::film_water>::defaults(at);
}

// life.capacity_of
constexpr std::string_view fields_18[] = {"surfaces", "film_water"};
constexpr std::string_view required_18[] = {"surfaces", "film_water"};
auto call_18([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::filter_capacity> {
  in.only(fields_18);
  const auto a0 = must<std::span<const ::tankwright::life::filter_surface>>(in, "surfaces");
  const auto a1 = must<::tankwright::life::film_water>(in, "film_water");
  const auto policy = in.policy();
  return ::tankwright::life::capacity_of(a0, a1, policy);
}

// life.film_area_for
constexpr std::string_view fields_19[] = {"load", "film_water"};
constexpr std::string_view required_19[] = {"load", "film_water"};
auto call_19([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::area>> {
  in.only(fields_19);
  const auto a0 = must<::tankwright::life::nitrogen_load>(in, "load");
  const auto a1 = must<::tankwright::life::film_water>(in, "film_water");
  const auto policy = in.policy();
  return ::tankwright::life::film_area_for(a0, a1, policy);
}
void numbers_19(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::nitrogen_load>::take(in);
  const auto a1 = io<::tankwright::life::film_water>::take(in);
  io<::tankwright::estimate<::tankwright::area>>::put(::tankwright::life::film_area_for(a0, a1, policy), out);
}
void defaults_19(double* at) {
  not_given(at, 1);
  io<::tankwright::life::film_water>::defaults(at);
}

// life.steady_ammonia
constexpr std::string_view fields_20[] = {"load", "surfaces", "temperature", "film"};
constexpr std::string_view required_20[] = {"load", "temperature"};
auto call_20([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::settled_ammonia> {
  const auto policy = in.policy();
  return ::tankwright::life::steady_ammonia(io<::tankwright::life::filter_load>::fields(in), policy);
}

// life.grain_surface
constexpr std::string_view fields_21[] = {"grain", "pores"};
constexpr std::string_view required_21[] = {"grain", "pores"};
auto call_21([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::specific_surface> {
  in.only(fields_21);
  const auto a0 = must<::tankwright::length>(in, "grain");
  const auto a1 = must<::tankwright::porosity>(in, "pores");
  return ::tankwright::life::grain_surface(a0, a1);
}
void numbers_21(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::length>::take(in);
  const auto a1 = io<::tankwright::porosity>::take(in);
  io<::tankwright::specific_surface>::put(::tankwright::life::grain_surface(a0, a1), out);
}
void defaults_21(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// life.rock_surface
constexpr std::string_view fields_22[] = {"dry", "piece", "density", "roughness"};
constexpr std::string_view required_22[] = {"dry", "piece", "density"};
auto call_22([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::area> {
  return ::tankwright::life::rock_surface(io<::tankwright::life::loose_rock>::fields(in));
}
void numbers_22(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::loose_rock>::take(in);
  io<::tankwright::area>::put(::tankwright::life::rock_surface(a0), out);
}
void defaults_22(double* at) {
  io<::tankwright::life::loose_rock>::defaults(at);
}

// life.slowed
constexpr std::string_view fields_23[] = {"group", "share"};
constexpr std::string_view required_23[] = {"group", "share"};
auto call_23([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::nitrifier> {
  in.only(fields_23);
  const auto a0 = must<::tankwright::life::nitrifier>(in, "group");
  const auto a1 = must<::tankwright::proportion>(in, "share");
  return ::tankwright::life::slowed(a0, a1);
}
void numbers_23(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::nitrifier>::take(in);
  const auto a1 = io<::tankwright::proportion>::take(in);
  io<::tankwright::life::nitrifier>::put(::tankwright::life::slowed(a0, a1), out);
}
void defaults_23(double* at) {
  io<::tankwright::life::nitrifier>::defaults(at);
  not_given(at, 1);
}

// life.net_growth
constexpr std::string_view fields_24[] = {"group", "growth_conditions"};
constexpr std::string_view required_24[] = {"group", "growth_conditions"};
auto call_24([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::rate> {
  in.only(fields_24);
  const auto a0 = must<::tankwright::life::nitrifier>(in, "group");
  const auto a1 = must<::tankwright::life::growth_conditions>(in, "growth_conditions");
  const auto policy = in.policy();
  return ::tankwright::life::net_growth(a0, a1, policy);
}
void numbers_24(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::nitrifier>::take(in);
  const auto a1 = io<::tankwright::life::growth_conditions>::take(in);
  io<::tankwright::rate>::put(::tankwright::life::net_growth(a0, a1, policy), out);
}
void defaults_24(double* at) {
  io<::tankwright::life::nitrifier>::defaults(at);
  io<::tankwright::life::growth_conditions>::defaults(at);
}

// life.bacteria_on
constexpr std::string_view fields_25[] = {"load", "temperature", "share_moved", "ammonia_oxidisers", "nitrite_oxidisers"};
constexpr std::string_view required_25[] = {"load", "temperature"};
auto call_25([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::bacteria> {
  const auto policy = in.policy();
  return ::tankwright::life::bacteria_on(io<::tankwright::life::working_filter>::fields(in), policy);
}
void numbers_25(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::working_filter>::take(in);
  io<::tankwright::life::bacteria>::put(::tankwright::life::bacteria_on(a0, policy), out);
}
void defaults_25(double* at) {
  io<::tankwright::life::working_filter>::defaults(at);
}

// life.nitrogen_from_feed
constexpr std::string_view fields_26[] = {"food", "protein"};
constexpr std::string_view required_26[] = {"food", "protein"};
auto call_26([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::feed_nitrogen> {
  return ::tankwright::life::nitrogen_from_feed(io<::tankwright::life::feeding>::fields(in));
}
void numbers_26(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::feeding>::take(in);
  io<::tankwright::life::feed_nitrogen>::put(::tankwright::life::nitrogen_from_feed(a0), out);
}
void defaults_26(double* at) {
  io<::tankwright::life::feeding>::defaults(at);
}

// life.needs_of_nitrification
constexpr std::string_view fields_27[] = {"load"};
constexpr std::string_view required_27[] = {"load"};
auto call_27([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::nitrification_needs> {
  in.only(fields_27);
  const auto a0 = must<::tankwright::life::nitrogen_load>(in, "load");
  return ::tankwright::life::needs_of_nitrification(a0);
}
void numbers_27(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::nitrogen_load>::take(in);
  io<::tankwright::life::nitrification_needs>::put(::tankwright::life::needs_of_nitrification(a0), out);
}
void defaults_27(double* at) {
  not_given(at, 1);
}

// life.time_alkalinity_lasts
constexpr std::string_view fields_28[] = {"load", "net", "now", "lowest"};
constexpr std::string_view required_28[] = {"load", "net", "now", "lowest"};
auto call_28([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::alkalinity_countdown> {
  return ::tankwright::life::time_alkalinity_lasts(io<::tankwright::life::alkalinity_budget>::fields(in));
}

// life.oxygen_after
constexpr std::string_view fields_29[] = {"course", "time"};
constexpr std::string_view required_29[] = {"course", "time"};
auto call_29([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_density> {
  in.only(fields_29);
  const auto a0 = must<::tankwright::life::oxygen_course>(in, "course");
  const auto a1 = must<::tankwright::duration>(in, "time");
  return ::tankwright::life::oxygen_after(a0, a1);
}
void numbers_29(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::oxygen_course>::take(in);
  const auto a1 = io<::tankwright::duration>::take(in);
  io<::tankwright::mass_density>::put(::tankwright::life::oxygen_after(a0, a1), out);
}
void defaults_29(double* at) {
  io<::tankwright::life::oxygen_course>::defaults(at);
  not_given(at, 1);
}

// life.steady_oxygen
constexpr std::string_view fields_30[] = {"net", "use", "saturation", "aeration"};
constexpr std::string_view required_30[] = {"net", "use", "saturation"};
auto call_30([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::optional<::tankwright::mass_density>> {
  return ::tankwright::life::steady_oxygen(io<::tankwright::life::oxygen_balance>::fields(in));
}

// life.time_to_oxygen_limit
constexpr std::string_view fields_31[] = {"course", "limit"};
constexpr std::string_view required_31[] = {"course"};
auto call_31([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::oxygen_countdown> {
  in.only(fields_31);
  const auto a0 = must<::tankwright::life::oxygen_course>(in, "course");
  const auto a1 = may_or<::tankwright::mass_density>(in, "limit", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::life;
    return ::tankwright::mass_density(oxygen_alarm);
  });
  return ::tankwright::life::time_to_oxygen_limit(a0, a1);
}

// life.aeration_to_keep
constexpr std::string_view fields_32[] = {"tank", "level"};
constexpr std::string_view required_32[] = {"tank", "level"};
auto call_32([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::rate> {
  in.only(fields_32);
  const auto a0 = must<::tankwright::life::oxygen_balance>(in, "tank");
  const auto a1 = must<::tankwright::mass_density>(in, "level");
  return ::tankwright::life::aeration_to_keep(a0, a1);
}
void numbers_32(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::oxygen_balance>::take(in);
  const auto a1 = io<::tankwright::mass_density>::take(in);
  io<::tankwright::rate>::put(::tankwright::life::aeration_to_keep(a0, a1), out);
}
void defaults_32(double* at) {
  io<::tankwright::life::oxygen_balance>::defaults(at);
  not_given(at, 1);
}

// life.time_to_aerate
constexpr std::string_view fields_33[] = {"course", "level"};
constexpr std::string_view required_33[] = {"course", "level"};
auto call_33([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  in.only(fields_33);
  const auto a0 = must<::tankwright::life::oxygen_course>(in, "course");
  const auto a1 = must<::tankwright::mass_density>(in, "level");
  return ::tankwright::life::time_to_aerate(a0, a1);
}
void numbers_33(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::oxygen_course>::take(in);
  const auto a1 = io<::tankwright::mass_density>::take(in);
  io<::tankwright::duration>::put(::tankwright::life::time_to_aerate(a0, a1), out);
}
void defaults_33(double* at) {
  io<::tankwright::life::oxygen_course>::defaults(at);
  not_given(at, 1);
}

// life.oxygen_transfer
constexpr std::string_view fields_34[] = {"tank", "level"};
constexpr std::string_view required_34[] = {"tank", "level"};
auto call_34([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_flow> {
  in.only(fields_34);
  const auto a0 = must<::tankwright::life::oxygen_balance>(in, "tank");
  const auto a1 = must<::tankwright::mass_density>(in, "level");
  return ::tankwright::life::oxygen_transfer(a0, a1);
}
void numbers_34(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::oxygen_balance>::take(in);
  const auto a1 = io<::tankwright::mass_density>::take(in);
  io<::tankwright::mass_flow>::put(::tankwright::life::oxygen_transfer(a0, a1), out);
}
void defaults_34(double* at) {
  io<::tankwright::life::oxygen_balance>::defaults(at);
  not_given(at, 1);
}

// life.oxygen_use
constexpr std::string_view fields_35[] = {"group", "water"};
constexpr std::string_view required_35[] = {"group", "water"};
auto call_35([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::oxygen_demand> {
  in.only(fields_35);
  const auto a0 = must<::tankwright::life::animals>(in, "group");
  const auto a1 = must<::tankwright::temperature>(in, "water");
  return ::tankwright::life::oxygen_use(a0, a1);
}

// life.oxygen_for_feed
constexpr std::string_view fields_36[] = {"dry_feed"};
constexpr std::string_view required_36[] = {"dry_feed"};
auto call_36([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::mass_flow>> {
  in.only(fields_36);
  const auto a0 = must<::tankwright::mass_flow>(in, "dry_feed");
  return ::tankwright::life::oxygen_for_feed(a0);
}
void numbers_36(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::mass_flow>::take(in);
  io<::tankwright::estimate<::tankwright::mass_flow>>::put(::tankwright::life::oxygen_for_feed(a0), out);
}
void defaults_36(double* at) {
  not_given(at, 1);
}

// life.carbon_dioxide_for
constexpr std::string_view fields_37[] = {"oxygen", "respiratory_quotient"};
constexpr std::string_view required_37[] = {"oxygen"};
auto call_37([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass_flow> {
  in.only(fields_37);
  const auto a0 = must<::tankwright::mass_flow>(in, "oxygen");
  const auto a1 = may_or<double>(in, "respiratory_quotient", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::life;
    return double(1.0);
  });
  return ::tankwright::life::carbon_dioxide_for(a0, a1);
}
void numbers_37(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::mass_flow>::take(in);
  const auto a1 = io<double>::take(in);
  io<::tankwright::mass_flow>::put(::tankwright::life::carbon_dioxide_for(a0, a1), out);
}
void defaults_37(double* at) {
  not_given(at, 1);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::life;
    return double(1.0);
  }();
  io<double>::put(a1, at);
}

// life.swim_clearance
constexpr std::string_view fields_38[] = {"animal", "run", "width", "speed", "run_multiple", "width_multiple"};
constexpr std::string_view required_38[] = {"animal", "run", "width", "speed"};
auto call_38([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::clearance> {
  return ::tankwright::life::swim_clearance(io<::tankwright::life::swim_space>::fields(in));
}

// life.body_lengths_per_time
constexpr std::string_view fields_39[] = {"speed", "animal"};
constexpr std::string_view required_39[] = {"speed", "animal"};
auto call_39([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::rate> {
  in.only(fields_39);
  const auto a0 = must<::tankwright::velocity>(in, "speed");
  const auto a1 = must<::tankwright::length>(in, "animal");
  return ::tankwright::life::body_lengths_per_time(a0, a1);
}
void numbers_39(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::velocity>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::rate>::put(::tankwright::life::body_lengths_per_time(a0, a1), out);
}
void defaults_39(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// life.escape_turn_radius
constexpr std::string_view fields_40[] = {"animal"};
constexpr std::string_view required_40[] = {"animal"};
auto call_40([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::length>> {
  in.only(fields_40);
  const auto a0 = must<::tankwright::length>(in, "animal");
  return ::tankwright::life::escape_turn_radius(a0);
}
void numbers_40(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::length>::take(in);
  io<::tankwright::estimate<::tankwright::length>>::put(::tankwright::life::escape_turn_radius(a0), out);
}
void defaults_40(double* at) {
  not_given(at, 1);
}

// life.simulate_start_up
constexpr std::string_view fields_41[] = {"label", "net", "temperature", "oxygen", "ammonia", "nitrite", "nitrate", "seedings", "loads", "doses", "water_changes", "horizon", "every", "ammonia_limit", "nitrite_limit", "ammonia_oxidisers", "nitrite_oxidisers"};
constexpr std::string_view required_41[] = {"net", "temperature", "oxygen"};
auto call_41([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::start_up_result> {
  const auto policy = in.policy();
  return ::tankwright::life::simulate_start_up(io<::tankwright::life::start_up>::fields(in), policy);
}

// life.compare_start_ups
constexpr std::string_view fields_42[] = {"plans"};
constexpr std::string_view required_42[] = {"plans"};
auto call_42([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::life::start_up_summary>> {
  in.only(fields_42);
  const auto a0 = must<std::span<const ::tankwright::life::start_up>>(in, "plans");
  const auto policy = in.policy();
  return ::tankwright::life::compare_start_ups(a0, policy);
}

// life.ammonia_of_step
constexpr std::string_view fields_43[] = {"before", "after", "growth", "net"};
constexpr std::string_view required_43[] = {"before", "after", "growth", "net"};
auto call_43([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::step_answer> {
  return ::tankwright::life::ammonia_of_step(io<::tankwright::life::larger_load>::fields(in));
}
void numbers_43(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::larger_load>::take(in);
  io<::tankwright::life::step_answer>::put(::tankwright::life::ammonia_of_step(a0), out);
}
void defaults_43(double* at) {
  io<::tankwright::life::larger_load>::defaults(at);
}

// life.stocking_dates
constexpr std::string_view fields_44[] = {"whole", "start", "step", "rest", "growth", "net", "below"};
constexpr std::string_view required_44[] = {"whole", "start", "step", "rest", "growth", "net", "below"};
auto call_44([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::life::stocking_date>> {
  return ::tankwright::life::stocking_dates(io<::tankwright::life::stocking_question>::fields(in));
}

// life.match_waters
constexpr std::string_view fields_45[] = {"bag", "tank", "limits"};
constexpr std::string_view required_45[] = {"bag", "tank"};
auto call_45([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::water_match> {
  const auto policy = in.policy();
  return ::tankwright::life::match_waters(io<::tankwright::life::water_pair>::fields(in), policy);
}

// life.balance_of_moved_rock
constexpr std::string_view fields_46[] = {"proven", "share_moved", "new_load", "net"};
constexpr std::string_view required_46[] = {"proven", "share_moved", "new_load", "net"};
auto call_46([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::rock_balance> {
  return ::tankwright::life::balance_of_moved_rock(io<::tankwright::life::moved_rock>::fields(in));
}
void numbers_46(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::moved_rock>::take(in);
  io<::tankwright::life::rock_balance>::put(::tankwright::life::balance_of_moved_rock(a0), out);
}
void defaults_46(double* at) {
  io<::tankwright::life::moved_rock>::defaults(at);
}

// life.bag_after
constexpr std::string_view fields_47[] = {"bag", "time", "opened"};
constexpr std::string_view required_47[] = {"bag", "time", "opened"};
auto call_47([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::bag_state> {
  in.only(fields_47);
  const auto a0 = must<::tankwright::life::closed_bag>(in, "bag");
  const auto a1 = must<::tankwright::duration>(in, "time");
  const auto a2 = must<double>(in, "opened");
  const auto policy = in.policy();
  return ::tankwright::life::bag_after(a0, a1, a2, policy);
}
void numbers_47(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::closed_bag>::take(in);
  const auto a1 = io<::tankwright::duration>::take(in);
  const auto a2 = io<double>::take(in);
  io<::tankwright::life::bag_state>::put(::tankwright::life::bag_after(a0, a1, a2, policy), out);
}
void defaults_47(double* at) {
  io<::tankwright::life::closed_bag>::defaults(at);
  not_given(at, 1);
  not_given(at, 1);
}

// life.oxygen_lasts
constexpr std::string_view fields_48[] = {"bag", "lowest"};
constexpr std::string_view required_48[] = {"bag", "lowest"};
auto call_48([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::optional<::tankwright::duration>> {
  in.only(fields_48);
  const auto a0 = must<::tankwright::life::closed_bag>(in, "bag");
  const auto a1 = must<::tankwright::mass_density>(in, "lowest");
  const auto policy = in.policy();
  return ::tankwright::life::oxygen_lasts(a0, a1, policy);
}

// life.ammonia_with_changes
constexpr std::string_view fields_49[] = {"net", "load", "part", "every", "lasts", "largest_meal", "removal"};
constexpr std::string_view required_49[] = {"net", "load", "part", "every", "lasts"};
auto call_49([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::life::changed_tank_course> {
  return ::tankwright::life::ammonia_with_changes(io<::tankwright::life::changed_tank>::fields(in));
}
void numbers_49(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::life::changed_tank>::take(in);
  io<::tankwright::life::changed_tank_course>::put(::tankwright::life::ammonia_with_changes(a0), out);
}
void defaults_49(double* at) {
  io<::tankwright::life::changed_tank>::defaults(at);
}

const row rows[] = {
  {"life.share_of_tank_water", "tankwright::life::share_of_tank_water", "mass balance", required_0, fields_0, false, nullptr, &answer_with<&call_0>, nullptr, {true, 4, 1}, &numbers_0, &defaults_0},
  {"life.time_to_share", "tankwright::life::time_to_share", "mass balance", required_1, fields_1, false, nullptr, &answer_with<&call_1>, nullptr, {true, 4, 1}, &numbers_1, &defaults_1},
  {"life.mixed_at", "tankwright::life::mixed_at", "mass balance", required_2, fields_2, false, &key_of_type<::tankwright::life::water_between>, &answer_with<&call_2>, &make_with<&call_2>, {true, 5, 2}, &numbers_2, &defaults_2},
  {"life.gentle_flow", "tankwright::life::gentle_flow", "mass balance", required_3, fields_3, false, nullptr, &answer_with<&call_3>, nullptr, {true, 7, 1}, &numbers_3, &defaults_3},
  {"life.transfer_at", "tankwright::life::transfer_at", "ASCE/EWRI 2-06 (from memory)", required_4, fields_4, false, nullptr, &answer_with<&call_4>, nullptr, {true, 2, 1}, &numbers_4, &defaults_4},
  {"life.aeration_rate", "tankwright::life::aeration_rate", "two-film theory; ASCE/EWRI 2-06 and Cole and Caraco 1998 for the coefficients (from memory)", required_5, fields_5, false, nullptr, &answer_with<&call_5>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.flow_cleared", "tankwright::life::flow_cleared", "Gage and Bidwell 1926", required_6, fields_6, false, nullptr, &answer_with<&call_6>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.turnover_rate", "tankwright::life::turnover_rate", "definition", required_7, fields_7, false, nullptr, &answer_with<&call_7>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.removal_rate", "tankwright::life::removal_rate", "Gage and Bidwell 1926", required_8, fields_8, false, nullptr, &answer_with<&call_8>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.share_removed", "tankwright::life::share_removed", "Gage and Bidwell 1926", required_9, fields_9, false, nullptr, &answer_with<&call_9>, nullptr, {true, 2, 1}, &numbers_9, &defaults_9},
  {"life.turnovers_for", "tankwright::life::turnovers_for", "Gage and Bidwell 1926", required_10, fields_10, false, nullptr, &answer_with<&call_10>, nullptr, {true, 2, 1}, &numbers_10, &defaults_10},
  {"life.time_to_remove", "tankwright::life::time_to_remove", "Gage and Bidwell 1926", required_11, fields_11, false, &key_of_type<::tankwright::life::clearing>, &answer_with<&call_11>, &make_with<&call_11>, {false, 0, 0}, nullptr, nullptr},
  {"life.treatment_flow_for", "tankwright::life::treatment_flow_for", "mass balance; Losordo and Hobbs 2000", required_12, fields_12, false, nullptr, &answer_with<&call_12>, nullptr, {true, 3, 1}, &numbers_12, &defaults_12},
  {"life.foam_contact_of", "tankwright::life::foam_contact_of", "definitions; Clinical Guide to Fish Medicine 2021 (salt); rules from memory", required_13, fields_13, true, &key_of_type<::tankwright::life::foam_contact>, &answer_with<&call_13>, &make_with<&call_13>, {false, 0, 0}, nullptr, nullptr},
  {"life.bubble_surface", "tankwright::life::bubble_surface", "geometry", required_14, fields_14, false, nullptr, &answer_with<&call_14>, nullptr, {true, 2, 1}, &numbers_14, &defaults_14},
  {"life.capacity_for_meals", "tankwright::life::capacity_for_meals", "mass balance; Brett and Zala 1975 for the day (from memory)", required_15, fields_15, false, &key_of_type<::tankwright::life::nitrogen_load>, &answer_with<&call_15>, &make_with<&call_15>, {false, 0, 0}, nullptr, nullptr},
  {"life.highest_ammonia", "tankwright::life::highest_ammonia", "mass balance; Nijhof and Bovendeur 1990, Malone and Pfeiffer 2006", required_16, fields_16, true, nullptr, &answer_with<&call_16>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.nitrification_rate", "tankwright::life::nitrification_rate", "Nijhof and Bovendeur 1990; Zhu and Chen 2002; Malone and Pfeiffer 2006; band from memory", required_17, fields_17, true, nullptr, &answer_with<&call_17>, nullptr, {true, 8, 3}, &numbers_17, &defaults_17},
  {"life.capacity_of", "tankwright::life::capacity_of", "as nitrification_rate", required_18, fields_18, true, &key_of_type<::tankwright::life::filter_capacity>, &answer_with<&call_18>, &make_with<&call_18>, {false, 0, 0}, nullptr, nullptr},
  {"life.film_area_for", "tankwright::life::film_area_for", "as nitrification_rate", required_19, fields_19, true, nullptr, &answer_with<&call_19>, nullptr, {true, 9, 3}, &numbers_19, &defaults_19},
  {"life.steady_ammonia", "tankwright::life::steady_ammonia", "as nitrification_rate", required_20, fields_20, true, &key_of_type<::tankwright::life::settled_ammonia>, &answer_with<&call_20>, &make_with<&call_20>, {false, 0, 0}, nullptr, nullptr},
  {"life.grain_surface", "tankwright::life::grain_surface", "geometry", required_21, fields_21, false, nullptr, &answer_with<&call_21>, nullptr, {true, 2, 1}, &numbers_21, &defaults_21},
  {"life.rock_surface", "tankwright::life::rock_surface", "geometry", required_22, fields_22, false, nullptr, &answer_with<&call_22>, nullptr, {true, 4, 1}, &numbers_22, &defaults_22},
  {"life.slowed", "tankwright::life::slowed", "definition", required_23, fields_23, false, &key_of_type<::tankwright::life::nitrifier>, &answer_with<&call_23>, &make_with<&call_23>, {true, 8, 7}, &numbers_23, &defaults_23},
  {"life.net_growth", "tankwright::life::net_growth", "Metcalf & Eddy 2014", required_24, fields_24, true, nullptr, &answer_with<&call_24>, nullptr, {true, 10, 1}, &numbers_24, &defaults_24},
  {"life.bacteria_on", "tankwright::life::bacteria_on", "steady state of the Monod equations; Metcalf & Eddy 2014", required_25, fields_25, true, &key_of_type<::tankwright::life::bacteria>, &answer_with<&call_25>, &make_with<&call_25>, {true, 17, 2}, &numbers_25, &defaults_25},
  {"life.nitrogen_from_feed", "tankwright::life::nitrogen_from_feed", "Timmons and Ebeling 2007 (from memory)", required_26, fields_26, false, &key_of_type<::tankwright::life::feed_nitrogen>, &answer_with<&call_26>, &make_with<&call_26>, {true, 2, 4}, &numbers_26, &defaults_26},
  {"life.needs_of_nitrification", "tankwright::life::needs_of_nitrification", "stoichiometry (4.57 in USEPA 1975); Ebeling et al. 2006 (from memory); Gujer and Jenkins 1974", required_27, fields_27, false, &key_of_type<::tankwright::life::nitrification_needs>, &answer_with<&call_27>, &make_with<&call_27>, {true, 1, 12}, &numbers_27, &defaults_27},
  {"life.time_alkalinity_lasts", "tankwright::life::time_alkalinity_lasts", "stoichiometry; Ebeling et al. 2006 (from memory)", required_28, fields_28, false, &key_of_type<::tankwright::life::alkalinity_countdown>, &answer_with<&call_28>, &make_with<&call_28>, {false, 0, 0}, nullptr, nullptr},
  {"life.oxygen_after", "tankwright::life::oxygen_after", "mass balance", required_29, fields_29, false, nullptr, &answer_with<&call_29>, nullptr, {true, 6, 1}, &numbers_29, &defaults_29},
  {"life.steady_oxygen", "tankwright::life::steady_oxygen", "mass balance", required_30, fields_30, false, nullptr, &answer_with<&call_30>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.time_to_oxygen_limit", "tankwright::life::time_to_oxygen_limit", "mass balance", required_31, fields_31, false, &key_of_type<::tankwright::life::oxygen_countdown>, &answer_with<&call_31>, &make_with<&call_31>, {false, 0, 0}, nullptr, nullptr},
  {"life.aeration_to_keep", "tankwright::life::aeration_to_keep", "mass balance", required_32, fields_32, false, nullptr, &answer_with<&call_32>, nullptr, {true, 5, 1}, &numbers_32, &defaults_32},
  {"life.time_to_aerate", "tankwright::life::time_to_aerate", "first-order gas transfer; ASCE/EWRI 2-06", required_33, fields_33, false, nullptr, &answer_with<&call_33>, nullptr, {true, 6, 1}, &numbers_33, &defaults_33},
  {"life.oxygen_transfer", "tankwright::life::oxygen_transfer", "first-order gas transfer; ASCE/EWRI 2-06", required_34, fields_34, false, nullptr, &answer_with<&call_34>, nullptr, {true, 5, 1}, &numbers_34, &defaults_34},
  {"life.oxygen_use", "tankwright::life::oxygen_use", "allometric and Q10 scaling; Carlson et al. 1999; Dowd et al. 2006; exponents from memory", required_35, fields_35, false, &key_of_type<::tankwright::life::oxygen_demand>, &answer_with<&call_35>, &make_with<&call_35>, {false, 0, 0}, nullptr, nullptr},
  {"life.oxygen_for_feed", "tankwright::life::oxygen_for_feed", "rule of aquaculture engineering, from memory", required_36, fields_36, false, nullptr, &answer_with<&call_36>, nullptr, {true, 1, 3}, &numbers_36, &defaults_36},
  {"life.carbon_dioxide_for", "tankwright::life::carbon_dioxide_for", "stoichiometry; IUPAC standard atomic weights", required_37, fields_37, false, nullptr, &answer_with<&call_37>, nullptr, {true, 2, 1}, &numbers_37, &defaults_37},
  {"life.swim_clearance", "tankwright::life::swim_clearance", "definitions; multiples: common practice without a source", required_38, fields_38, false, &key_of_type<::tankwright::life::clearance>, &answer_with<&call_38>, &make_with<&call_38>, {false, 0, 0}, nullptr, nullptr},
  {"life.body_lengths_per_time", "tankwright::life::body_lengths_per_time", "definition", required_39, fields_39, false, nullptr, &answer_with<&call_39>, nullptr, {true, 2, 1}, &numbers_39, &defaults_39},
  {"life.escape_turn_radius", "tankwright::life::escape_turn_radius", "Trujillo et al. 2022", required_40, fields_40, false, nullptr, &answer_with<&call_40>, nullptr, {true, 1, 3}, &numbers_40, &defaults_40},
  {"life.simulate_start_up", "tankwright::life::simulate_start_up", "Monod equations with the constants of Metcalf & Eddy 2014; RODAS, Hairer and Wanner 1996", required_41, fields_41, true, &key_of_type<::tankwright::life::start_up_result>, &answer_with<&call_41>, &make_with<&call_41>, {false, 0, 0}, nullptr, nullptr},
  {"life.compare_start_ups", "tankwright::life::compare_start_ups", "as simulate_start_up", required_42, fields_42, true, nullptr, &answer_with<&call_42>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.ammonia_of_step", "tankwright::life::ammonia_of_step", "exponential growth; mass balance", required_43, fields_43, false, &key_of_type<::tankwright::life::step_answer>, &answer_with<&call_43>, &make_with<&call_43>, {true, 4, 2}, &numbers_43, &defaults_43},
  {"life.stocking_dates", "tankwright::life::stocking_dates", "as `ammonia_of_step`", required_44, fields_44, false, nullptr, &answer_with<&call_44>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.match_waters", "tankwright::life::match_waters", "Clegg and Whitfield 1995 (free ammonia); limits from memory", required_45, fields_45, true, &key_of_type<::tankwright::life::water_match>, &answer_with<&call_45>, &make_with<&call_45>, {false, 0, 0}, nullptr, nullptr},
  {"life.balance_of_moved_rock", "tankwright::life::balance_of_moved_rock", "mass balance; common practice: rock and animals move together, so that the bacteria keep their ammonia", required_46, fields_46, false, &key_of_type<::tankwright::life::rock_balance>, &answer_with<&call_46>, &make_with<&call_46>, {true, 4, 4}, &numbers_46, &defaults_46},
  {"life.bag_after", "tankwright::life::bag_after", "gas law; Garcia and Gordon 1992; Lueker et al. 2000; Clegg and Whitfield 1995", required_47, fields_47, true, &key_of_type<::tankwright::life::bag_state>, &answer_with<&call_47>, &make_with<&call_47>, {true, 11, 13}, &numbers_47, &defaults_47},
  {"life.oxygen_lasts", "tankwright::life::oxygen_lasts", "as `bag_after`", required_48, fields_48, true, nullptr, &answer_with<&call_48>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"life.ammonia_with_changes", "tankwright::life::ammonia_with_changes", "mass balance", required_49, fields_49, false, &key_of_type<::tankwright::life::changed_tank_course>, &answer_with<&call_49>, &make_with<&call_49>, {true, 7, 3}, &numbers_49, &defaults_49},
};

}  // namespace

std::span<const row> life_rows() { return rows; }

std::span<const constant> life_constants() {
  static const constant all[] = {
    named("still_surface_transfer", ::tankwright::life::still_surface_transfer),
    named("foam_contact_rule_low", ::tankwright::life::foam_contact_rule_low),
    named("foam_contact_rule_high", ::tankwright::life::foam_contact_rule_high),
    named("foam_passes_rule_low", ::tankwright::life::foam_passes_rule_low),
    named("foam_passes_rule_high", ::tankwright::life::foam_passes_rule_high),
    named("oxygen_alarm", ::tankwright::life::oxygen_alarm),
    named("oxygen_emergency", ::tankwright::life::oxygen_emergency),
    named("meal_excreted_in", ::tankwright::life::meal_excreted_in),
    named("film_growth", ::tankwright::life::film_growth),
  };
  return all;
}

}  // namespace tankwright_formulas
