// SPDX-License-Identifier: BSL-1.0
#include <cmath>

#include <nlohmann/json.hpp>

#include <tankwright/version.hpp>

#include "render.hpp"

namespace report {

using namespace tankwright;
using nlohmann::ordered_json;

namespace {

std::string_view word_of(commissioning::role as) {
  switch (as) {
    case commissioning::role::answer: return "answer";
    case commissioning::role::limit: return "limit";
    case commissioning::role::margin: return "margin";
    case commissioning::role::detail: break;
  }
  return "detail";
}

std::string_view word_of(standing read_as) {
  switch (read_as) {
    case standing::published: return "published";
    case standing::secondary: return "secondary";
    case standing::from_memory: return "from memory";
    case standing::common_practice: break;
  }
  return "common practice";
}

/// The SI unit of a quantity, in the spelling of the unit table; empty for a pure number.
std::string_view si_symbol(std::string_view quantity) {
  for (const auto& row : tankwright::text::detail::unit_rows) {
    if (row.quantity == tankwright::text::detail::measured_as(quantity) && row.factor == 1.0) return row.symbol;
  }
  return "";
}

/// JSON has no infinities and no NaN: such a number is null.
ordered_json number(double x) { return std::isfinite(x) ? ordered_json(x) : ordered_json(nullptr); }

ordered_json object_of(const commissioning::finding& f) {
  ordered_json numbers = ordered_json::array();
  for (const auto& e : f.numbers) {
    ordered_json one{{"label", e.label},
                     {"role", word_of(e.as)},
                     {"quantity", e.value.quantity},
                     {"unit", si_symbol(e.value.quantity)},
                     {"low", number(e.value.low)},
                     {"central", number(e.value.central)},
                     {"high", number(e.value.high)}};
    if (!e.value.reason.empty()) one["band"] = e.value.reason;
    numbers.push_back(std::move(one));
  }
  ordered_json sources = ordered_json::array();
  for (const citation& source : f.sources) {
    sources.push_back({{"authors", source.authors}, {"year", source.year}, {"title", source.title},
                       {"where", source.where}, {"read_as", word_of(source.read_as)}});
  }
  return {{"id", f.id},
          {"day", f.day},
          {"question", f.question},
          {"verdict", words(f.says)},
          {"numbers", std::move(numbers)},
          {"note", f.note},
          {"sources", std::move(sources)},
          {"caution", f.before_acting},
          {"measure_next", f.measure_next}};
}

std::string_view word_of(commissioning::stroke as) {
  switch (as) {
    case commissioning::stroke::line: return "line";
    case commissioning::stroke::points: return "points";
    case commissioning::stroke::dashed: break;
  }
  return "dashed";
}

ordered_json list_of(const std::vector<double>& values) {
  ordered_json list = ordered_json::array();
  for (const double x : values) list.push_back(number(x));
  return list;
}

ordered_json object_of(const commissioning::axis& a) {
  return {{"label", a.label}, {"quantity", a.quantity}, {"unit", si_symbol(a.quantity)}};
}

ordered_json object_of(const commissioning::figure& f) {
  ordered_json one{{"id", f.id}, {"title", f.title}};
  if (!f.curves.empty()) {
    one["across"] = object_of(f.across);
    one["up"] = object_of(f.up);
    one["curves"] = ordered_json::array();
  }
  for (const auto& c : f.curves) {
    ordered_json drawn{{"label", c.label}, {"stroke", word_of(c.as)}, {"x", list_of(c.x)}, {"y", list_of(c.y)}};
    if (!c.low.empty()) drawn["low"] = list_of(c.low);
    if (!c.high.empty()) drawn["high"] = list_of(c.high);
    one["curves"].push_back(std::move(drawn));
  }
  for (const auto& p : f.plates) {
    one["plates"].push_back({{"left", p.left}, {"bottom", p.bottom}, {"width", p.width}, {"height", p.height},
                             {"fill", p.fill}, {"label", p.label}});
  }
  return one;
}

}  // namespace

std::string as_json(const assessment& all, const figures& pictures) {
  ordered_json findings = ordered_json::array();
  for (const auto& f : all.findings) findings.push_back(object_of(f));
  ordered_json drawn = ordered_json::array();
  for (const auto& f : pictures) drawn.push_back(object_of(f));
  ordered_json first = ordered_json::array();
  for (const auto& m : commissioning::measure_first(all)) first.push_back({{"id", m.id}, {"measure", m.what}});
  const ordered_json whole{{"tankwright", TANKWRIGHT_VERSION},
                           {"title", all.title},
                           {"measure_first", std::move(first)},
                           {"findings", std::move(findings)},
                           {"figures", std::move(drawn)}};
  return whole.dump(2) + "\n";
}

}  // namespace report
