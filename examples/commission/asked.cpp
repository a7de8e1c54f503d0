// SPDX-License-Identifier: BSL-1.0
#include "asked.hpp"

#include <algorithm>
#include <cmath>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/cure_words.hpp>
#include <tankwright/decisions/figure.hpp>
#include <tankwright/decisions/would_hold.hpp>
#include <tankwright/plan/path.hpp>
#include <vector>

#include "render.hpp"
#include "svg.hpp"

namespace report {

using namespace tankwright;

namespace {

constexpr std::size_t steps = 21;

/// What a finding is asked: for those that are no findings, the nearest is said.
std::string_view question_of(std::string_view id) {
  for (const auto* d : decisions::all_decisions()) {
    if (d->id == id) return d->question;
  }
  return id;
}

std::string line_of(const decisions::cure& c, text::unit_system units) {
  std::string out =
      "  " + decisions::sentence_of(c, units) + ". Chance that it holds then: " + chance_text(c.chance) + ".\n";
  for (const auto& one : c.changes) {
    out += "      " + one.path + ": " + (one.from.empty() ? "not given" : one.from) + " -> " + one.to + "\n";
  }
  for (const auto& m : c.better) {
    out += "      better: " + std::string{question_of(m.id)} + " (" + std::string{words(m.after)} + ")\n";
  }
  for (const auto& m : c.worse) {
    out += "      worse: " + std::string{question_of(m.id)} + " (" + std::string{words(m.after)} + ")\n";
  }
  return out;
}

struct course {
  std::vector<decisions::at_value> all;
  std::string_view quantity;  ///< of the key
};

course course_of(const build& plan, const std::string& finding, const std::string& key, const std::string& from,
                 const std::string& to) {
  build ends = plan;
  plan::set(ends, key, from);
  const double first = plan::get_si(ends, key);
  plan::set(ends, key, to);
  const double last = plan::get_si(ends, key);
  course c{decisions::finding_while(plan, key, first, last, steps, finding), {}};
  plan::at_path(ends, key, false, [&](const plan::leaf& here) { c.quantity = here.key.quantity; });
  return c;
}

}  // namespace

std::string would_hold(const build& plan, const std::string& finding, const std::string& key, text::unit_system units,
                       const executor& run) {
  const decisions::search how{.run = run};
  std::string out = std::string{question_of(finding)} + "\n";
  if (!key.empty()) {
    const auto found = decisions::value_that_holds(plan, key, finding, how);
    return out + (found ? line_of(*found, units) : "  No value of " + key + " that can be chosen makes it hold.\n");
  }
  const auto all = decisions::what_would_hold(plan, finding, how);
  if (all.holds) return out + "  It holds as it is.\n";
  for (const auto& c : all.cures) out += line_of(c, units);
  if (!all.cures.empty()) return out;
  return out + "  " +
         (all.why_none ? decisions::sentence_of(*all.why_none, units)
                       : "Nothing that can still be chosen makes it hold") +
         ".\n";
}

std::string while_it_runs(const build& plan, const std::string& finding, const std::string& key,
                          const std::string& from, const std::string& to, text::unit_system units) {
  const course c = course_of(plan, finding, key, from, to);
  double most = 0.0;
  for (const auto& here : c.all) {
    if (here.answer && here.answer->margin()) most = std::fmax(most, std::fabs(here.answer->margin()->value.central));
  }
  std::string out = std::string{question_of(finding)} + "\nBy central values, while " + key + " runs:\n";
  for (const auto& here : c.all) {
    std::string row = "  " + text::of(amount{c.quantity, here.key, here.key, here.key}, units);
    row.resize(std::max<std::size_t>(row.size(), 16), ' ');
    const decisions::number* n = nullptr;
    if (here.answer) n = here.answer->margin() ? here.answer->margin() : decisions::headline_of(*here.answer);
    if (!here.answer) {
      out += row + "the plan with this value is refused\n";
    } else if (!n) {
      out += row + std::string{verdict_words(*here.answer)} + "\n";
    } else {
      std::string said =
          text::of(amount{n->value.quantity, n->value.central, n->value.central, n->value.central}, units);
      said.resize(std::max<std::size_t>(said.size(), 14), ' ');
      std::string bar;
      if (here.answer->margin() && most > 0.0) {
        const auto length = static_cast<std::size_t>(std::lround(16.0 * std::fabs(n->value.central) / most));
        bar = std::string(16 - (n->value.central < 0.0 ? length : 0), ' ') +
              std::string(n->value.central < 0.0 ? length : 0, '-') + "|" +
              std::string(n->value.central < 0.0 ? 0 : length, '+');
        bar.resize(34, ' ');
      }
      out += row + said + bar + std::string{verdict_words(*here.answer)} + "\n";
    }
  }
  return out;
}

std::string while_it_runs_html(const build& plan, const std::string& finding, const std::string& key,
                               const std::string& from, const std::string& to, text::unit_system units) {
  const course c = course_of(plan, finding, key, from, to);
  decisions::figure f{.id = "course", .title = std::string{question_of(finding)}};
  f.x_axis = {key, c.quantity};
  decisions::curve line{.label = "margin"};
  for (const auto& here : c.all) {
    const decisions::number* n = here.answer ? here.answer->margin() : nullptr;
    if (here.answer && !n) n = decisions::headline_of(*here.answer);
    if (!n) continue;
    f.y_axis = {n->label, n->value.quantity};
    line.label = n->label;
    line.x.push_back(here.key);
    line.y.push_back(n->value.central);
    line.low.push_back(n->value.low);
    line.high.push_back(n->value.high);
  }
  f.curves.push_back(std::move(line));
  return page_of(f.title, as_svg(f, units));
}

std::string side_by_side(const build& before, const build& after) {
  const auto apart = decisions::compare(before, after);
  if (apart.changed.empty()) return "The plans say the same.\n";
  std::string out = "What differs\n";
  for (const auto& c : apart.changed) {
    out += "  " + c.path + ": " + (c.from.empty() ? "not given" : c.from) + " -> " +
           (c.to.empty() ? "not given" : c.to) + "\n";
  }
  out += apart.moved.empty() ? "No verdict moved, by central values.\n" : "Verdicts that moved, by central values\n";
  for (const auto& m : apart.moved) {
    out += "  " + std::string{question_of(m.id)} + " " + std::string{words(m.before)} + " -> " +
           std::string{words(m.after)} + "\n";
  }
  return out;
}

}  // namespace report
