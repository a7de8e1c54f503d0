// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/unit_table.hpp>
#include <tankwright/plan/keys.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/walk.hpp>
#include <tankwright/text/unit_choices.hpp>
#include <tankwright/text/written.hpp>

#include "answers_json.hpp"

namespace c_library {

namespace tw = tankwright;
using tw::exchange::json_text;

namespace {

std::string_view word_of(tw::plan::key_kind kind) noexcept {
  switch (kind) {
    case tw::plan::key_kind::number:
      return "number";
    case tw::plan::key_kind::numbers:
      return "numbers";
    case tw::plan::key_kind::word:
      return "word";
    case tw::plan::key_kind::flag:
      return "flag";
    case tw::plan::key_kind::text:
      return "text";
    case tw::plan::key_kind::rating:
      return "rating";
    case tw::plan::key_kind::table:
      return "table";
    case tw::plan::key_kind::tables:
      break;
  }
  return "tables";
}

std::string_view word_of(tw::plan::set_by who) noexcept {
  switch (who) {
    case tw::plan::set_by::measured:
      return "measured";
    case tw::plan::set_by::chosen:
      return "chosen";
    case tw::plan::set_by::wanted:
      break;
  }
  return "wanted";
}

/// A unit to begin with, as the unit table spells it: the everyday one for a number that this key may well hold.
std::string_view unit_to_begin_with(const tw::plan::key_info& key, double usual, tw::text::unit_system system) {
  const std::string_view shown = tw::text::everyday_unit(tw::amount{key.quantity, usual, usual, usual}, system);
  return shown.empty() ? shown : tw::text::read_written("1 " + std::string{shown}, key.quantity).unit;
}

void write_doubt(json_text& out, const tw::plan::key_info& key) {
  const tw::plan::usual_doubt& d = key.doubt;
  if (d.kind == tw::plan::doubt_kind::none) return;
  out.key("doubt").open_object().key("kind");
  switch (d.kind) {
    case tw::plan::doubt_kind::distance: {
      const std::string_view step = tw::core::step_quantity_name(key.quantity);
      out.text("distance").key("text").text("+/- " + tw::text::write_exactly(d.size, {}, step));
      break;
    }
    case tw::plan::doubt_kind::share:
      out.text("share").key("text").text("+/- " + tw::text::of(100.0 * d.size) + " %");
      break;
    case tw::plan::doubt_kind::factor:
      out.text("factor").key("text").text("within a factor of " + tw::text::of(d.size));
      break;
    case tw::plan::doubt_kind::none:
      break;
  }
  out.key("size").number(d.size).close_object();
}

void write_quantity(json_text& out, const tw::plan::key_row& row) {
  const tw::plan::key_info& key = row.about;
  double usual = key.searched && key.sizes.empty() ? 0.5 * (key.choose_low + key.choose_high) : 0.01 * key.high;
  if (!row.otherwise.empty()) {
    const double si = tw::text::read_written(row.otherwise, key.quantity).si;
    out.key("default_si").number(si);
    if (si != 0.0) usual = si;
  }
  out.key("quantity").text(key.quantity).key("unit").text(tw::text::si_unit(key.quantity));
  out.key("low").number(key.low).key("high").number(key.high);
  out.key("low_text").text(tw::text::write_exactly(key.low, {}, key.quantity));
  out.key("high_text").text(tw::text::write_exactly(key.high, {}, key.quantity));
  out.key("whole").flag(key.whole).key("example").text(tw::text::example_of(key.quantity));
  out.key("everyday").open_object();
  out.key("si").text(unit_to_begin_with(key, usual, tw::text::unit_system::si));
  out.key("us").text(unit_to_begin_with(key, usual, tw::text::unit_system::us)).close_object();
  write_doubt(out, key);
  if (key.searched && key.sizes.empty()) {
    out.key("choose").open_object().key("low").number(key.choose_low).key("high").number(key.choose_high);
    out.key("step").number(key.step).close_object();
  }
  if (!key.sizes.empty()) {
    out.key("sizes").open_list();
    for (const double si : key.sizes) out.number(si);
    out.close_list();
  }
}

void write_key(json_text& out, const tw::plan::key_row& row) {
  out.open_object().key("path").text(row.path).key("table").text(row.table).key("name").text(row.about.name);
  out.key("kind").text(word_of(row.kind)).key("means").text(row.about.means).key("needed").flag(row.about.needed);
  out.key("set_by").text(word_of(row.about.set_by));
  if (!row.otherwise.empty()) out.key("default").text(row.otherwise);
  if (!row.about.quantity.empty()) write_quantity(out, row);
  if (!row.example.empty()) out.key("example").text(row.example);
  if (!row.words.empty()) {
    out.key("words").open_list();
    for (const std::string_view w : row.words) out.text(w);
    out.close_list();
  }
  out.close_object();
}

/// A quantity, and a unit of it by the name that its maker has in C++: "litres" in volume_litres.
struct named_unit {
  std::string_view quantity;
  std::string_view name;
  std::string_view symbol;
};

constexpr named_unit unit_names[] = {
#define C_LIBRARY_ROW(quantity, maker, symbol, factor) {#quantity, #maker, symbol},
    TANKWRIGHT_UNIT_TABLE(C_LIBRARY_ROW)
#undef C_LIBRARY_ROW
    // What temperature.hpp and thin_types.hpp make.
    {"gauge_pressure", "", ""},
    {"absolute_pressure", "", ""},
    {"temperature", "kelvins", "K"},
    {"temperature", "celsius", "degC"},
    {"temperature", "fahrenheit", "degF"},
    {"temperature_difference", "kelvin_steps", "K"},
    {"temperature_difference", "fahrenheit_steps", "degF"},
    {"proportion", "percent", "%"},
    {"porosity", "percent", "%"},
    {"relative_humidity", "percent", "%"},
    {"absolute_salinity", "grams_per_kilogram", "g/kg"},
    {"practical_salinity", "", ""},
    {"number", "", ""},
};

std::string_view name_of(std::string_view quantity, std::string_view symbol) noexcept {
  const bool pressure = quantity == "gauge_pressure" || quantity == "absolute_pressure";
  for (const named_unit& unit : unit_names) {
    if (unit.symbol == symbol && unit.quantity == (pressure ? std::string_view{"pressure"} : quantity))
      return unit.name;
  }
  return {};
}

/// Every quantity, with the units that it may be written in.
void write_units(json_text& out) {
  std::string_view told;
  out.key("quantities").open_list();
  for (const named_unit& row : unit_names) {
    if (row.quantity == told) continue;
    told = row.quantity;
    out.open_object().key("name").text(told).key("unit").text(tw::text::si_unit(told)).key("units").open_list();
    for (const auto& unit : tw::text::units_of(told)) {
      const std::string_view name = name_of(told, unit.symbol);
      if (name.empty()) continue;  // kelvins of a scale are no steps
      out.open_object().key("symbol").text(unit.symbol).key("name").text(name).key("size").number(unit.size);
      out.key("zero").number(unit.zero).close_object();
    }
    out.close_list().close_object();
  }
  out.close_list();
}

/// Writes every key that was given, and every table that is there.
class value_writer final : public tw::plan::walker {
 public:
  explicit value_writer(json_text& out) noexcept : out_{&out} {}

 private:
  void put(const tw::plan::leaf& here) {
    const std::string text = tw::plan::text_at(here);
    if (text.empty()) return;
    out_->open_object().key("path").text(path(here.key.name)).key("text").text(text);
    if (here.number) out_->key("si").number(here.number->si());
    out_->close_object();
  }
  void enter(const tw::plan::key_info&) override { out_->open_object().key("path").text(path()).close_object(); }
  void number(const tw::plan::key_info& key, tw::plan::value_base& v) override { put({.key = key, .number = &v}); }
  void numbers(const tw::plan::key_info& key, tw::plan::values_base& v) override { put({.key = key, .numbers = &v}); }
  void one_of(const tw::plan::key_info& key, tw::plan::word_base& w, std::span<const std::string_view> words) override {
    put({.key = key, .word = &w, .words = words});
  }
  void yes_or_no(const tw::plan::key_info& key, tw::plan::flag& f) override { put({.key = key, .yes = &f}); }
  void text(const tw::plan::key_info& key, std::string& t) override { put({.key = key, .text = &t}); }
  void rating(const tw::plan::key_info& key, tw::plan::composite& c) override { put({.key = key, .rating = &c}); }

  json_text* out_;
};

}  // namespace

std::string keys_json() {
  const tw::plan::key_list all = tw::plan::all_keys();
  json_text out{0};
  out.open_object().key("keys").open_list();
  for (const auto& row : all.keys) write_key(out, row);
  out.close_list().key("rules").open_list();
  for (const auto& rule : all.rules) {
    out.open_object().key("table").text(rule.table).key("names").open_list();
    for (const std::string_view name : rule.names) out.text(name);
    out.close_list().key("kind");
    out.text(rule.together ? "together" : rule.needed ? "one_of" : "at_most_one_of").close_object();
  }
  out.close_list();
  write_units(out);
  out.close_object();
  return std::move(out).take();
}

std::string values_json(const tw::plan::build& build) {
  json_text out{0};
  out.open_object().key("values").open_list();
  value_writer writer{out};
  tw::plan::look_at(writer, build);
  out.close_list().close_object();
  return std::move(out).take();
}

}  // namespace c_library
