// SPDX-License-Identifier: BSL-1.0
#include "answers_json.hpp"

#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/cure_words.hpp>

namespace c_library {

namespace tw = tankwright;
using tw::exchange::json_text;

namespace {

void write_moving(json_text& out, const tw::decisions::finding& f) {
  out.open_object().key("id").text(f.id).key("verdict").text(words(f.verdict));
  out.key("consequence").text(words(f.consequence)).key("recommendation").flag(f.recommendation);
  out.key("happens").text(f.happens);
  if (f.deciding) out.key("margin").number(static_cast<double>(*f.deciding));
  out.key("numbers").open_list();
  for (const auto& n : f.numbers) {
    out.open_object().key("id").text(n.id);
    if (!n.place.empty()) out.key("place").text(n.place);
    out.key("quantity").text(n.value.quantity).key("central").number(n.value.central);
    if (!n.value.is_sharp()) out.key("low").number(n.value.low).key("high").number(n.value.high);
    out.close_object();
  }
  out.close_list().close_object();
}

void write_moved(json_text& out, std::string_view key, const std::vector<tw::decisions::moved_verdict>& all) {
  out.key(key).open_list();
  for (const auto& m : all) {
    out.open_object().key("id").text(m.id);
    out.key("before").text(words(m.before)).key("after").text(words(m.after)).close_object();
  }
  out.close_list();
}

}  // namespace

std::vector<tw::exchange::located_mistake> located(const std::vector<tw::plan::mistake>& mistakes) {
  std::vector<tw::exchange::located_mistake> all;
  for (const auto& m : mistakes) all.push_back({m});
  return all;
}

std::string moving_json(const std::vector<tw::decisions::finding>& findings) {
  json_text out{0};
  out.open_object().key("findings").open_list();
  for (const auto& f : findings) write_moving(out, f);
  out.close_list().close_object();
  return std::move(out).take();
}

std::string cures_json(const tw::decisions::cures_of_finding& found) {
  json_text out{0};
  out.open_object().key("id").text(found.id).key("cures").open_list();
  for (const auto& cure : found.cures) {
    out.open_object().key("do").text(tw::decisions::sentence_of(cure, tw::text::unit_system::si));
    out.key("changes").open_list();
    for (const auto& c : cure.changes) {
      out.open_object().key("path").text(c.path).key("from").text(c.from).key("to").text(c.to).close_object();
    }
    out.close_list().key("chance").number(cure.chance).key("size").number(cure.size);
    write_moved(out, "better", cure.better);
    write_moved(out, "worse", cure.worse);
    out.close_object();
  }
  out.close_list();
  if (found.why_none) {
    out.key("why_none").text(tw::decisions::sentence_of(*found.why_none, tw::text::unit_system::si));
  }
  out.close_object();
  return std::move(out).take();
}

std::string decisions_json() {
  json_text out{0};
  out.open_object().key("decisions").open_list();
  for (const tw::decisions::decision* d : tw::decisions::all_decisions()) {
    out.open_object().key("id").text(d->id).key("day").text(words(d->day)).key("question").text(d->question);
    out.key("consequence").text(words(d->consequence)).close_object();
  }
  out.close_list().close_object();
  return std::move(out).take();
}

}  // namespace c_library
