// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cure_words.hpp>
#include <tankwright/exchange/json_text.hpp>
#include <tankwright/exchange/report.hpp>
#include <tankwright/plan/keys.hpp>
#include <tankwright/text/written.hpp>
#include <tankwright/version.hpp>

namespace tankwright::exchange {

namespace detail {

[[nodiscard]] inline std::string_view word_of(decisions::role as) noexcept {
  switch (as) {
    case decisions::role::answer:
      return "answer";
    case decisions::role::limit:
      return "limit";
    case decisions::role::margin:
      return "margin";
    case decisions::role::detail:
      break;
  }
  return "detail";
}

[[nodiscard]] inline std::string_view word_of(standing read_as) noexcept {
  switch (read_as) {
    case standing::published:
      return "published";
    case standing::secondary:
      return "secondary";
    case standing::from_memory:
      return "from memory";
    case standing::common_practice:
      break;
  }
  return "common practice";
}

[[nodiscard]] inline std::string_view word_of(decisions::stroke as) noexcept {
  switch (as) {
    case decisions::stroke::line:
      return "line";
    case decisions::stroke::points:
      return "points";
    case decisions::stroke::dashed:
      break;
  }
  return "dashed";
}

inline void write_number(json_text& out, const decisions::number& n) {
  out.open_object().key("id").text(n.id).key("label").text(n.label).key("role").text(word_of(n.as));
  out.key("quantity").text(n.value.quantity).key("unit").text(text::si_unit(n.value.quantity));
  out.key("low").number(n.value.low).key("central").number(n.value.central).key("high").number(n.value.high);
  if (!n.value.reason.empty()) out.key("band").text(n.value.reason);
  if (const decisions::law* l = decisions::law_of(n.value.reason)) out.key("law").text(l->id);
  out.close_object();
}

/// The numbers of each place, as rows of a table; those without a place are not among them.
inline void write_places(json_text& out, const decisions::finding& f) {
  std::vector<std::string_view> places;
  for (const auto& n : f.numbers) {
    if (!n.place.empty() && std::find(places.begin(), places.end(), n.place) == places.end()) places.push_back(n.place);
  }
  out.key("places").open_list();
  for (const std::string_view place : places) {
    out.open_object().key("place").text(place).key("numbers").open_list();
    for (const auto& n : f.numbers) {
      if (n.place == place) write_number(out, n);
    }
    out.close_list().close_object();
  }
  out.close_list();
}

inline void write_moved(json_text& out, std::string_view name, const std::vector<decisions::moved_verdict>& all) {
  out.key(name).open_list();
  for (const auto& m : all) {
    out.open_object().key("id").text(m.id).key("before").text(words(m.before)).key("after").text(words(m.after));
    out.close_object();
  }
  out.close_list();
}

/// What would make a finding hold: a list, empty where nothing that can still be chosen does.
inline void write_cures(json_text& out, const decisions::cures_of_finding& found) {
  out.key("would_hold").open_list();
  for (const decisions::cure& c : found.cures) {
    out.open_object().key("do").text(decisions::sentence_of(c, text::unit_system::si));
    out.key("changes").open_list();
    for (const decisions::change& one : c.changes) {
      out.open_object().key("path").text(one.path).key("from").text(one.from).key("to").text(one.to).close_object();
    }
    out.close_list().key("chance").number(c.chance).key("size").number(c.size);
    write_moved(out, "better", c.better);
    write_moved(out, "worse", c.worse);
    out.close_object();
  }
  out.close_list();
  if (!found.why_none) return;
  const decisions::why_none& why = *found.why_none;
  out.key("why_none").open_object().key("says").text(decisions::sentence_of(why, text::unit_system::si));
  out.key("changes").open_list();
  for (const decisions::change& one : why.changes) {
    out.open_object().key("path").text(one.path).key("from").text(one.from).key("to").text(one.to).close_object();
  }
  out.close_list().key("quantity").text(why.from.quantity).key("unit").text(text::si_unit(why.from.quantity));
  out.key("margin").number(why.from.central).key("margin_then").number(why.to.central).close_object();
}

/// The doubts that make a band, and the rest together.
inline void write_shares(json_text& out, const decisions::shares_of_finding& found) {
  out.key("shares").open_object().key("number").text(found.number_id).key("place").text(found.place);
  out.key("together").number(found.together).key("doubts").open_list();
  for (const decisions::share& s : found.shares) {
    out.open_object().key(s.of_law ? "law" : "path").text(s.what).key("part").number(s.part);
    if (s.of_law) out.key("says").text(s.says);
    out.close_object();
  }
  out.close_list().close_object();
}

inline void write_finding(json_text& out, const decisions::finding& f, const decisions::advice& all) {
  out.open_object().key("id").text(f.id).key("day").text(words(f.day)).key("question").text(f.question);
  out.key("consequence").text(words(f.consequence)).key("verdict").text(words(f.verdict));
  out.key("recommendation").flag(f.recommendation).key("happens").text(f.happens);
  if (const decisions::number* margin = f.margin()) {
    out.key("margin");
    out.open_object().key("id").text(margin->id).key("place").text(margin->place);
    out.key("useful").number(f.useful).close_object();
  }
  out.key("numbers").open_list();
  for (const auto& n : f.numbers) {
    if (n.place.empty()) write_number(out, n);
  }
  out.close_list();
  write_places(out, f);
  out.key("note").text(f.note).key("sources").open_list();
  for (const citation& c : f.sources) {
    out.open_object().key("authors").text(c.authors).key("year").number(c.year).key("title").text(c.title);
    out.key("where").text(c.where).key("read_as").text(word_of(c.read_as)).close_object();
  }
  out.close_list().key("caution").text(f.caution).key("measure_next").open_list();
  for (const std::string& next : f.measure_next) out.text(next);
  out.close_list();
  if (const auto chance = all.chance_for(f.id)) out.key("chance").number(*chance);
  if (const auto* cures = all.cures_for(f.id)) write_cures(out, *cures);
  if (const auto* shares = all.shares_for(f.id)) write_shares(out, *shares);
  out.close_object();
}

inline void write_list(json_text& out, std::string_view name, const std::vector<double>& values) {
  out.key(name).open_list();
  for (const double x : values) out.number(x);
  out.close_list();
}

inline void write_axis(json_text& out, std::string_view name, const decisions::axis& a) {
  out.key(name).open_object().key("label").text(a.label).key("quantity").text(a.quantity);
  out.key("unit").text(text::si_unit(a.quantity)).close_object();
}

inline void write_figure(json_text& out, const decisions::figure& f) {
  out.open_object().key("id").text(f.id).key("title").text(f.title);
  if (!f.curves.empty()) {
    write_axis(out, "x_axis", f.x_axis);
    write_axis(out, "y_axis", f.y_axis);
    out.key("curves").open_list();
    for (const auto& c : f.curves) {
      out.open_object().key("label").text(c.label).key("stroke").text(word_of(c.as));
      write_list(out, "x", c.x);
      write_list(out, "y", c.y);
      if (!c.low.empty()) write_list(out, "low", c.low);
      if (!c.high.empty()) write_list(out, "high", c.high);
      out.close_object();
    }
    out.close_list();
  }
  if (!f.rectangles.empty()) {
    out.key("rectangles").open_list();
    for (const auto& r : f.rectangles) {
      out.open_object().key("left").number(r.left).key("bottom").number(r.bottom).key("width").number(r.width);
      out.key("height").number(r.height).key("fill").text(r.fill).key("label").text(r.label).close_object();
    }
    out.close_list();
  }
  if (!f.marks.empty()) {
    out.key("marks").open_list();
    for (const auto& m : f.marks) {
      out.open_object().key("left").number(m.left).key("right").number(m.right).key("height").number(m.height);
      out.key("label").text(m.label).key("limit").flag(m.limit).close_object();
    }
    out.close_list();
  }
  out.close_object();
}

/// One key of the schema.
inline void write_key(json_text& out, const plan::key_row& row) {
  const auto describe = [&](std::string sentence) {
    if (!row.otherwise.empty()) sentence += "; without it " + row.otherwise;
    out.key("description").text(sentence);
  };
  const auto limited = [&] {
    return std::string{row.about.means} + "; from " + text::write_exactly(row.about.low, {}, row.about.quantity) +
           " to " + text::write_exactly(row.about.high, {}, row.about.quantity);
  };
  const auto quantity = [&] {
    out.key("type").open_list().text("string").text("number").close_list();
    out.key("examples").open_list().text(text::example_of(row.about.quantity)).close_list();
  };
  switch (row.kind) {
    case plan::key_kind::number:
      quantity();
      return describe(limited());
    case plan::key_kind::numbers:
      out.key("type").text("array").key("items").open_object();
      quantity();
      out.close_object();
      return describe(limited());
    case plan::key_kind::word:
      out.key("enum").open_list();
      for (const auto& w : row.words) out.text(w);
      out.close_list();
      return describe(std::string{row.about.means});
    case plan::key_kind::flag:
      out.key("type").text("boolean");
      return describe(std::string{row.about.means});
    case plan::key_kind::text:
    case plan::key_kind::rating:
    case plan::key_kind::table:
    case plan::key_kind::tables:
      break;
  }
  out.key("type").text("string");
  describe(std::string{row.about.means});
}

/// The keys of one table, and the tables in it.
inline void write_table(json_text& out, const plan::key_list& all, const std::string& table) {
  out.key("type").text("object").key("additionalProperties").flag(false);
  out.key("required").open_list();
  for (const auto& row : all.keys) {
    if (row.table == table && row.about.needed) out.text(row.about.name);
  }
  out.close_list().key("properties").open_object();
  for (const auto& row : all.keys) {
    if (row.table != table) continue;
    out.key(row.about.name).open_object();
    if (row.kind == plan::key_kind::table) {
      out.key("description").text(row.about.means);
      write_table(out, all, row.path);
    } else if (row.kind == plan::key_kind::tables) {
      out.key("description").text(row.about.means).key("type").text("array").key("items").open_object();
      write_table(out, all, row.path);
      out.close_object();
    } else {
      write_key(out, row);
    }
    out.close_object();
  }
  out.close_object();
}

}  // namespace detail

TANKWRIGHT_INLINE std::string report_to_json(const decisions::advice& all,
                                             const std::vector<decisions::figure>& pictures,
                                             const report_style& style) {
  json_text out{style.indent};
  const decisions::assessment& judged = all.judged.all;
  out.open_object().key("tankwright").text(TANKWRIGHT_VERSION).key("title").text(judged.title);
  out.key("judged_by").text(all.by_chance ? "chance" : "central values");
  out.key("doubts").open_list();
  for (const decisions::doubtful& d : all.judged.doubts) {
    out.open_object().key("path").text(d.path).key("half_width").number(d.half_width);
    out.key("quantity").text(d.quantity).key("assumed").flag(d.assumed).close_object();
  }
  out.close_list().key("laws").open_list();
  for (const decisions::law* l : all.judged.laws) {
    out.open_object().key("id").text(l->id).key("says").text(l->says);
    out.key("spread").text(l->by == decisions::spread::even ? "even" : "standard error").close_object();
  }
  out.close_list().key("measure_first").open_list();
  for (const auto& m : all.first) {
    out.open_object().key("id").text(m.id).key("measure").text(m.what).key("path").text(m.path);
    if (!m.law.empty()) out.key("law").text(m.law);
    out.key("turns").number(m.turns).close_object();
  }
  out.close_list().key("findings").open_list();
  for (const auto& f : judged.findings) detail::write_finding(out, f, all);
  out.close_list().key("figures").open_list();
  for (const auto& f : pictures) detail::write_figure(out, f);
  out.close_list().close_object();
  return std::move(out).take();
}

TANKWRIGHT_INLINE std::string report_to_json(const decisions::assessment& all,
                                             const std::vector<decisions::figure>& pictures,
                                             const report_style& style) {
  decisions::advice central;
  central.judged.all = all;
  return report_to_json(central, pictures, style);
}

TANKWRIGHT_INLINE void write_mistakes(json_text& out, const std::vector<located_mistake>& mistakes) {
  out.key("mistakes").open_list();
  for (const located_mistake& m : mistakes) {
    out.open_object().key("path").text(m.what.path).key("reason").text(m.what.reason);
    if (m.line > 0) out.key("line").number(static_cast<double>(m.line));
    if (!m.pointer.empty()) out.key("pointer").text(m.pointer);
    if (!m.what.clashes.empty()) out.key("clashes").text(m.what.clashes);
    out.close_object();
  }
  out.close_list();
}

TANKWRIGHT_INLINE std::string mistakes_to_json(const std::vector<located_mistake>& mistakes) {
  json_text out;
  write_mistakes(out.open_object(), mistakes);
  out.close_object();
  return std::move(out).take();
}

TANKWRIGHT_INLINE std::string plan_schema() {
  json_text out;
  out.open_object().key("$schema").text("http://json-schema.org/draft-07/schema#").key("title").text("Plan");
  detail::write_table(out, plan::all_keys(), {});
  out.close_object();
  return std::move(out).take();
}

}  // namespace tankwright::exchange
