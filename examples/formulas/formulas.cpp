// SPDX-License-Identifier: BSL-1.0
// Formulas by name: finding them, reading what was given, writing what came out. The glue for each stands in generated/.
#include "formulas.hpp"

#include <algorithm>
#include <array>
#include <exception>
#include <functional>
#include <map>
#include <nlohmann/json.hpp>
#include <tankwright/core/charconv.hpp>
#include <tankwright/core/errors.hpp>
#include <tankwright/plan/names.hpp>
#include <tankwright/text/written.hpp>

#include "glue.hpp"

namespace tankwright_formulas {

using json = nlohmann::json;

namespace {

/// A mistake in what was given, before the library saw it.
struct mistake {
  std::string kind;
  std::string field;
  std::string reason;
  std::string nearest{};
  std::vector<std::string> known{};
};

[[nodiscard]] const json& of(const void* p) noexcept { return *static_cast<const json*>(p); }

[[nodiscard]] std::vector<std::string> texts(names all) { return {all.begin(), all.end()}; }

[[nodiscard]] std::string listed(names all) {
  std::string text;
  for (const std::string_view one : all) text.append(text.empty() ? "" : ", ").append(one);
  return text;
}

[[noreturn]] void refuse(std::string_view kind, const std::string& field, std::string reason) {
  throw mistake{std::string{kind}, field, std::move(reason)};
}

[[noreturn]] void refuse_unknown(std::string_view kind, const std::string& field, std::string_view written, names known,
                                 std::string_view what) {
  const std::vector<std::string> all = texts(known);
  std::string near = tw::plan::nearest_name(written, all);
  std::string reason = "there is no " + std::string{what} + " '" + std::string{written.substr(0, 80)} + "'";
  if (!near.empty()) {
    reason += "; did you mean '" + near + "'?";
  } else if (all.empty()) {
    reason += "; it has none";
  } else if (all.size() <= 24) {
    reason += "; there are: " + listed(known);
  }
  throw mistake{std::string{kind}, field, std::move(reason), std::move(near), all};
}

[[nodiscard]] std::string_view kind_of(const json& j) noexcept {
  switch (j.type()) {
    case json::value_t::null:
      return "nothing";
    case json::value_t::object:
      return "an object";
    case json::value_t::array:
      return "a list";
    case json::value_t::string:
      return "text";
    case json::value_t::boolean:
      return "true or false";
    default:
      return "a number";
  }
}

[[nodiscard]] std::string_view text_of(const json& j) noexcept { return *j.get_ptr<const std::string*>(); }

[[nodiscard]] std::string unit_phrase(std::string_view quantity) {
  const std::string_view unit = tw::text::si_unit(quantity);
  return unit.empty() ? std::string{"a plain number"} : "a number in " + std::string{unit};
}

[[nodiscard]] std::array<std::span<const constant>, 5> all_constants() {
  return {water_constants(), vessel_constants(), plumbing_constants(), room_constants(), life_constants()};
}

[[nodiscard]] const constant* constant_of(std::string_view name, std::string_view quantity) {
  for (const auto all : all_constants()) {
    for (const constant& c : all) {
      if (c.name == name && c.quantity == quantity) return &c;
    }
  }
  return nullptr;
}

[[nodiscard]] double si_of_text(std::string_view text, std::string_view quantity, const given& where) {
  if (const constant* c = constant_of(text, quantity)) return c->central;
  const tw::text::written read = tw::text::read_written(text, quantity);
  if (read.has_doubt) refuse("wrong_type", where.path(), "takes one number, not one with its doubt");
  return read.si;
}

/// A number, a text, or {"value", "unit"}.
[[nodiscard]] double si_from(const json& j, std::string_view quantity, const given& where) {
  if (j.is_number()) return j.get<double>();
  if (j.is_string()) return si_of_text(text_of(j), quantity, where);
  if (j.is_object() && j.contains("value")) {
    static constexpr std::string_view parts[] = {"value", "unit", "quantity"};
    where.only(parts);
    const auto unit = j.find("unit");
    const json& value = j["value"];
    if (unit == j.end() || !value.is_number()) return si_from(value, quantity, where);
    if (!unit->is_string()) refuse("wrong_type", where.path(), "the unit must be text such as 'L'");
    const std::string_view symbol = text_of(*unit);
    if (symbol.empty() || symbol == "1") return value.get<double>();
    tw::core::digits_buffer buffer;
    std::string text{tw::core::shortest_digits_of(buffer, value.get<double>())};
    text.append(" ").append(symbol);
    return tw::text::read_written(text, quantity).si;
  }
  refuse("wrong_type", where.path(),
         "expects " + unit_phrase(quantity) + ", or text such as '" + std::string{tw::text::example_of(quantity)} +
             "', and was given " + std::string{kind_of(j)});
}

}  // namespace

// ---- what was given -------------------------------------------------------------------------------------------------

namespace {
/// Deeper than any question of the list; what is read calls itself for each level.
constexpr int deepest = 60;
}  // namespace

given::given(const void* piece, const given* parent, std::string_view name, std::size_t index)
    : json_{piece}, parent_{parent}, kept_{parent->kept_}, name_{name}, index_{index}, depth_{parent->depth_ + 1} {
  if (depth_ > deepest) throw mistake{"wrong_type", "", "the fields are nested more than 60 deep"};
}

bool given::is_text() const noexcept { return of(json_).is_string(); }
bool given::is_list() const noexcept { return of(json_).is_array(); }
bool given::is_empty() const noexcept { return of(json_).is_null(); }

std::string given::path() const {
  if (!parent_) return {};
  std::string text = parent_->path();
  if (name_.empty()) return text + "[" + std::to_string(index_) + "]";
  if (!text.empty()) text += ".";
  return text.append(name_);
}

bool given::has(std::string_view name) const noexcept {
  const json& j = of(json_);
  if (!j.is_object()) return false;
  const auto found = j.find(name);
  return found != j.end() && !found->is_null();
}

given given::at(std::string_view name) const {
  const json& j = of(json_);
  if (!j.is_object()) {
    refuse("wrong_type", path(), "expects an object with fields, and was given " + std::string{kind_of(j)});
  }
  const auto found = j.find(name);
  const std::string here = path();
  if (found == j.end() || found->is_null()) {
    refuse("missing_field", here.empty() ? std::string{name} : here + "." + std::string{name}, "must be given");
  }
  return {&*found, this, name, 0};
}

std::size_t given::size() const {
  const json& j = of(json_);
  if (!j.is_array()) refuse("wrong_type", path(), "expects a list, and was given " + std::string{kind_of(j)});
  return j.size();
}

given given::item(std::size_t i) const { return {&of(json_)[i], this, {}, i}; }

namespace {

/// What the reader of text says, with the constant of that quantity that may have been meant.
[[noreturn]] void refuse_text(const tw::text_error& e, std::string_view quantity, const std::string& field) {
  mistake m{"text_error", field, e.reason() + "; expected " + e.expected() + ", not '" + e.text().substr(0, 80) + "'"};
  std::vector<std::string> known;
  for (const auto all : all_constants()) {
    for (const constant& c : all) {
      if (c.quantity == quantity) known.emplace_back(c.name);
    }
  }
  m.nearest = e.text().size() > 3 ? tw::plan::nearest_name(e.text(), known) : std::string{};
  if (!m.nearest.empty()) m.reason += "; did you mean '" + m.nearest + "'?";
  throw m;
}

}  // namespace

double given::si(std::string_view quantity) const {
  try {
    return si_from(of(json_), quantity, *this);
  } catch (const tw::text_error& e) {
    refuse_text(e, quantity, path());
  }
}

tw::estimate<double> given::band(std::string_view quantity) const {
  const json& j = of(json_);
  if (has("low") || has("central") || has("high")) {
    static constexpr std::string_view parts[] = {"low", "central", "high", "reason", "unit", "quantity"};
    only(parts);
    const auto end = [&](std::string_view name) {
      const given part = at(name);
      if (!has("unit") || !of(part.json_).is_number()) return part.si(quantity);
      const json with_unit{{"value", of(part.json_)}, {"unit", of(at("unit").json_)}};
      return given{&with_unit, this, name, 0}.si(quantity);
    };
    return {end("low"), end("central"), end("high"), has("reason") ? at("reason").text() : std::string_view{}};
  }
  if (j.is_string()) {
    if (const constant* c = constant_of(text_of(j), quantity)) return {c->low, c->central, c->high, c->reason};
    try {
      const tw::text::written read = tw::text::read_written(text_of(j), quantity);
      return {read.si - read.half_width, read.si, read.si + read.half_width,
              read.has_doubt ? std::string_view{"as given"} : std::string_view{}};
    } catch (const tw::text_error& e) {
      refuse_text(e, quantity, path());
    }
  }
  return tw::exactly(si(quantity));
}

long long given::whole(long long low, long long high) const {
  const double value = number();
  if (!(value == std::trunc(value) && value >= static_cast<double>(low) && value <= static_cast<double>(high))) {
    refuse("wrong_type", path(), "expects a whole number, and was given " + tw::core::number_text(value));
  }
  return static_cast<long long>(value);
}

bool given::flag() const {
  const json& j = of(json_);
  if (!j.is_boolean()) refuse("wrong_type", path(), "expects true or false, and was given " + std::string{kind_of(j)});
  return j.get<bool>();
}

std::string_view given::text() const {
  const json& j = of(json_);
  if (!j.is_string()) refuse("wrong_type", path(), "expects text, and was given " + std::string{kind_of(j)});
  return text_of(j);
}

std::size_t given::word(names words) const {
  const std::string_view written = text();
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i] == written) return i;
  }
  refuse_unknown("unknown_word", path(), written, words, "word");
}

void given::only(names known) const {
  const json& j = of(json_);
  if (!j.is_object()) {
    refuse("wrong_type", path(), "expects an object with fields, and was given " + std::string{kind_of(j)});
  }
  for (const auto& [name, value] : j.items()) {
    if (std::find(known.begin(), known.end(), name) != known.end()) continue;
    if (may_extrapolate_ && name == "extrapolate") continue;
    const std::string here = path();
    refuse_unknown("unknown_field", here.empty() ? name : here + "." + name, name, known, "field");
  }
}

tw::range_policy given::policy() const {
  return has("extrapolate") && at("extrapolate").flag() ? tw::extrapolate : tw::range_policy::published;
}

std::size_t given::way(names ways, int plain, int plain_list) const {
  const json& j = of(json_);
  if (j.is_array() && plain_list >= 0) return static_cast<std::size_t>(plain_list);
  if (j.is_object() && j.size() == 1) {
    for (std::size_t i = 0; i < ways.size(); ++i) {
      if (j.contains(ways[i])) return i;
    }
  }
  const bool as_it_is = !j.is_array() && (!j.is_object() || j.contains("value") || ways.size() == 1);
  if (as_it_is && plain >= 0) return static_cast<std::size_t>(plain);
  if (j.is_object() && j.size() == 1) refuse_unknown("unknown_field", path(), j.begin().key(), ways, "form");
  refuse("wrong_type", path(), "say which it is, in an object with one of: " + listed(ways));
}

given given::along(names ways, std::size_t which) const {
  const json& j = of(json_);
  return j.is_object() && j.size() == 1 && j.contains(ways[which]) ? at(ways[which]) : *this;
}

void given::refuse_name(names known) const { refuse_unknown("unknown_name", path(), text(), known, "constant"); }

// ---- finding formulas -----------------------------------------------------------------------------------------------

namespace {

[[nodiscard]] const std::vector<const row*>& all_rows() {
  static const std::vector<const row*> all = [] {
    std::vector<const row*> rows;
    for (const auto part : {water_rows(), vessel_rows(), plumbing_rows(), room_rows(), life_rows()}) {
      for (const row& r : part) rows.push_back(&r);
    }
    return rows;
  }();
  return all;
}

[[nodiscard]] std::string_view after_last(std::string_view text, std::string_view mark) noexcept {
  const std::size_t at = text.rfind(mark);
  return at == std::string_view::npos ? text : text.substr(at + mark.size());
}

/// The formulas of every name that can be written: its own, that of its function, with folder and without. Where a name is
/// several formulas, those that are called exactly so come first.
[[nodiscard]] const std::map<std::string, std::vector<const row*>, std::less<>>& all_names() {
  static const auto all = [] {
    std::map<std::string, std::vector<const row*>, std::less<>> found;
    const auto add = [&](std::string name, const row* r) {
      auto& rows = found[std::move(name)];
      if (std::find(rows.begin(), rows.end(), r) == rows.end()) rows.push_back(r);
    };
    for (const row* r : all_rows()) {
      add(std::string{r->name}, r);
      add(std::string{after_last(r->name, ".")}, r);
    }
    for (const row* r : all_rows()) {
      const std::string folder{r->name.substr(0, r->name.find('.'))};
      for (const std::string_view last : {after_last(r->name, "."), after_last(r->function, "::")}) {
        add(std::string{last}, r);
        for (const std::string_view join : {".", "::"}) add(folder + std::string{join} + std::string{last}, r);
        add("tankwright::" + folder + "::" + std::string{last}, r);
      }
    }
    return found;
  }();
  return all;
}

/// How badly fields fit a formula: unknown ones and missing ones. Overloads of one function differ in them.
[[nodiscard]] std::size_t misfits(const json& fields, const row& r) {
  std::size_t count = 0;
  for (const std::string_view must_be : r.required) count += !fields.contains(must_be);
  for (const auto& item : fields.items()) {
    const bool known = std::find(r.fields.begin(), r.fields.end(), item.key()) != r.fields.end();
    count += !known && item.key() != "extrapolate";
  }
  return count;
}

/// The formulas of that name which the fields fit best. There are several where overloads differ only in what is inside
/// their fields. Without fields: the one that is called exactly so.
[[nodiscard]] std::vector<const row*> rows_for(std::string_view name, const json* fields) {
  const auto found = all_names().find(name);
  if (found == all_names().end()) return {};
  if (found->second.size() == 1) return found->second;
  if (!fields || !fields->is_object()) return {found->second.front()};
  std::vector<const row*> best;
  std::size_t least = 0;
  for (const row* r : found->second) {
    const std::size_t misfit = misfits(*fields, *r);
    if (!best.empty() && misfit < least) best.clear();
    if (best.empty()) least = misfit;
    if (misfit == least) best.push_back(r);
  }
  return best;
}
[[nodiscard]] const row* row_for(std::string_view name, const json* fields) {
  const auto rows = rows_for(name, fields);
  return rows.empty() ? nullptr : rows.front();
}

[[noreturn]] void refuse_formula(std::string_view name) {
  std::vector<std::string> all;
  for (const auto& [known, rows] : all_names()) all.push_back(known);
  std::string near = tw::plan::nearest_name(name, all);
  std::string reason = "there is no formula '" + std::string{name.substr(0, 80)} + "'";
  if (!near.empty()) reason += "; did you mean '" + near + "'?";
  throw mistake{"unknown_formula", "", std::move(reason), std::move(near)};
}

}  // namespace

const row* given::maker(type_key type) const {
  const json& j = of(json_);
  if (!j.is_object() || j.size() != 1) return nullptr;
  for (const row* by : rows_for(j.begin().key(), &j.begin().value())) {
    if (by->result == type && by->make) return by;
  }
  return nullptr;
}

void given::make(const row& by, void* into) const {
  const json& j = of(json_);
  given inside{&j.begin().value(), this, j.begin().key(), 0};
  inside.may_extrapolate_ = by.extrapolates;
  by.make(inside, into);
}

long long whole_number(double value, long long low, long long high) {
  if (value == std::trunc(value) && value >= static_cast<double>(low) && value <= static_cast<double>(high)) {
    return static_cast<long long>(value);
  }
  tw::core::fail<tw::invalid_input>("tankwright_formulas::call_numbers", "a whole number", value, "",
                                    "is not one of the whole numbers that can stand there");
}

// ---- writing --------------------------------------------------------------------------------------------------------

namespace {

void append_number(std::string& to, double value) {
  if (!std::isfinite(value)) {
    to += "null";
    return;
  }
  tw::core::digits_buffer buffer;
  to += tw::core::shortest_digits_of(buffer, value);
}

[[nodiscard]] std::string json_text(std::string_view text) {
  return json(std::string{text}).dump(-1, ' ', false, json::error_handler_t::replace);
}

void append_unit(std::string& to, std::string_view quantity, std::string_view unit) {
  to += ",\"unit\":" + json_text(unit) + ",\"quantity\":\"" + std::string{quantity} + "\"";
}

}  // namespace

void answer::open(char c) {
  json += c;
  first_ = true;
}
void answer::close(char c) {
  json += c;
  first_ = false;
}
void answer::comma() {
  if (!first_) json += ',';
  first_ = false;
}
void answer::key(std::string_view name) {
  comma();
  json.append("\"").append(name).append("\":");
}
void answer::quantity(std::string_view quantity, std::string_view unit, double si) {
  json += "{\"value\":";
  append_number(json, si);
  if (!std::isfinite(si))
    json.append(",\"not_finite\":\"").append(std::isnan(si) ? "nan" : si > 0 ? "inf" : "-inf").append("\"");
  append_unit(json, quantity, unit);
  json += '}';
}
void answer::quantity(std::string_view name, double si) { quantity(name, tw::text::si_unit(name), si); }
void answer::band(std::string_view quantity, std::string_view unit, const double (&ends)[3], std::string_view reason) {
  json += "{\"low\":";
  append_number(json, ends[0]);
  json += ",\"central\":";
  append_number(json, ends[1]);
  json += ",\"high\":";
  append_number(json, ends[2]);
  append_unit(json, quantity, unit);
  json += ",\"reason\":" + json_text(reason) + "}";
}
void answer::band(std::string_view name, const double (&ends)[3], std::string_view reason) {
  band(name, tw::text::si_unit(name), ends, reason);
}
void answer::text(std::string_view words) { json += json_text(words); }
void answer::flag(bool yes) { json += yes ? "true" : "false"; }
void answer::whole(long long number) { json += std::to_string(number); }
void answer::nothing() { json += "null"; }
void answer::caution(std::string_view words) {
  text(words);
  if (!words.empty() && std::find(cautions.begin(), cautions.end(), words) == cautions.end())
    cautions.emplace_back(words);
}

// ---- errors as data -------------------------------------------------------------------------------------------------

namespace {

/// A number that may be missing from a diagnosis.
[[nodiscard]] json number_or_text(double value) {
  if (std::isnan(value)) return "nan";
  if (std::isinf(value)) return value > 0.0 ? "inf" : "-inf";
  return value;
}

[[nodiscard]] json data_of(const tw::error& e, std::string_view kind) {
  const tw::diagnosis& d = e.details();
  json data{{"kind", kind}, {"what", e.what()}, {"function", d.function}, {"argument", d.argument}};
  data["value"] = number_or_text(d.value);
  const bool has_limits = !std::isnan(d.low) || !std::isnan(d.high);
  const auto end = [&](double x) {
    return std::isfinite(x) && std::fabs(x) < tw::core::vast ? json(x) : json(nullptr);
  };
  if (has_limits) data["limits"] = json{{"low", end(d.low)}, {"high", end(d.high)}};
  data["unit"] = d.unit;
  data["source"] = d.source;
  return data;
}

[[nodiscard]] json current_data() {
  try {
    throw;
  } catch (const mistake& m) {
    json data{{"kind", m.kind}, {"what", m.field.empty() ? m.reason : m.field + ": " + m.reason}, {"field", m.field}};
    data["reason"] = m.reason;
    if (!m.nearest.empty()) data["nearest"] = m.nearest;
    if (!m.known.empty()) data["known"] = m.known;
    return data;
  } catch (const tw::out_of_range& e) {
    return data_of(e, "out_of_range");
  } catch (const tw::no_convergence& e) {
    return data_of(e, "no_convergence");
  } catch (const tw::error& e) {
    return data_of(e, "invalid_input");
  } catch (const std::exception& e) {
    return json{{"kind", "failure"}, {"what", e.what()}};
  }
}

}  // namespace

std::string current_error() {
  return json{{"error", current_data()}}.dump(-1, ' ', false, json::error_handler_t::replace);
}

// ---- the interface --------------------------------------------------------------------------------------------------

std::string call(std::string_view name, std::string_view text) {
  const row* formula = nullptr;
  try {
    json fields;
    try {
      fields = json::parse(text);
    } catch (const json::exception& e) {
      if (!row_for(name, nullptr)) refuse_formula(name);
      throw mistake{"not_json", "", std::string{"the fields are not JSON: "} + e.what()};
    }
    const auto candidates = rows_for(name, &fields);
    if (candidates.empty()) refuse_formula(name);
    answer out;
    given::kept lists;
    for (std::size_t i = candidates.size(); i-- > 0;) {
      formula = candidates[i];
      out = {};
      try {
        formula->answer_to({&fields, formula->extrapolates, lists}, out);
        break;
      } catch (const mistake&) {
        if (i == 0) throw;
      }
    }
    std::string result = "{\"formula\":" + json_text(formula->name) + ",\"result\":" + out.json + ",\"cautions\":[";
    for (const std::string& words : out.cautions) result += (result.back() == '[' ? "" : ",") + json_text(words);
    return result + "],\"source\":" + json_text(formula->source) + "}";
  } catch (...) {
    json data = current_data();
    if (formula) data["formula"] = formula->name;
    return json{{"error", std::move(data)}}.dump(-1, ' ', false, json::error_handler_t::replace);
  }
}

int find(std::string_view name) noexcept {
  const row* found = row_for(name, nullptr);
  if (!found) return -1;
  const auto& all = all_rows();
  return static_cast<int>(std::find(all.begin(), all.end(), found) - all.begin());
}

namespace {
[[nodiscard]] const row* row_at(int formula) noexcept {
  const auto& all = all_rows();
  return formula >= 0 && static_cast<std::size_t>(formula) < all.size() ? all[static_cast<std::size_t>(formula)]
                                                                        : nullptr;
}
[[noreturn]] void refuse_numbers(int formula) {
  tw::core::fail<tw::invalid_input>("tankwright_formulas::call_numbers", "formula", formula, "",
                                    "is no formula that plain numbers can call");
}
}  // namespace

numbers numbers_of(int formula) noexcept {
  const row* r = row_at(formula);
  return r ? r->plain : numbers{};
}

void defaults(int formula, double* in) {
  const row* r = row_at(formula);
  if (!r || !r->defaults) refuse_numbers(formula);
  r->defaults(in);
}

void call_numbers(int formula, const double* in, double* out, bool extrapolate) {
  const row* r = row_at(formula);
  if (!r || !r->by_numbers) refuse_numbers(formula);
  r->by_numbers(in, out, extrapolate ? tw::extrapolate : tw::range_policy::published);
}

}  // namespace tankwright_formulas
