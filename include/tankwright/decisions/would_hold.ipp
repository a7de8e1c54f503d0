// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/cure_search.hpp>
#include <tankwright/decisions/given_keys.hpp>
#include <tankwright/decisions/would_hold.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/names.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/plan/walk.hpp>

namespace tankwright::decisions {

namespace detail {

[[noreturn]] inline void refuse_question(std::string_view about, const std::string& reason) {
  constexpr double none = __builtin_nan("");
  throw invalid_input{std::string{about} + ": " + reason,
                      {"tankwright::decisions::what_would_hold", std::string{about}, none, none, none, {}, {}}};
}

[[nodiscard]] inline const decision& decision_with(std::string_view id) {
  std::vector<std::string> known;
  for (const decision* d : all_decisions()) {
    if (d->id == id) return *d;
    known.emplace_back(d->id);
  }
  const std::string nearest = plan::nearest_name(id, known);
  refuse_question(id, "is not a decision" + (nearest.empty() ? "" : "; did you mean " + nearest + "?"));
}

/// Cures of findings that were asked for together: one grid for each key serves them all.
[[nodiscard]] inline std::vector<cures_of_finding> cures_of(cure_search& look,
                                                            const std::vector<wanted_finding>& wanted,
                                                            std::span<const std::size_t> handles, std::size_t most) {
  const cure_search::grids g = look.look_along(wanted, handles);
  const std::vector<missing_part> parts = missing_parts(look.plan());
  std::vector<cures_of_finding> all;
  for (std::size_t f = 0; f < wanted.size(); ++f) {
    cures_of_finding& found = all.emplace_back(cures_of_finding{.id = wanted[f].asked->id});
    std::vector<lead> leads;
    std::vector<std::pair<double, std::size_t>> helps;  // what a handle does at most, and which it is
    for (const std::size_t h : handles) {
      const std::vector<double>& scores = g.scores[f][h];
      for (const lead& l : look.leads(wanted[f], h, g.values[h], scores)) leads.push_back(l);
      double best = -std::numeric_limits<double>::infinity();
      for (const double s : scores) best = s > best ? s : best;
      if (best > g.now[f] + 0.1) helps.emplace_back(best, h);  // a tenth of what it is short of, at the least
    }
    std::stable_sort(leads.begin(), leads.end(),
                     [](const lead& a, const lead& b) { return a.spoils != b.spoils ? b.spoils : a.size < b.size; });
    std::size_t tries = 0;
    for (const lead& l : leads) {
      if (tries++ == 3 * most) break;
      if (found.cures.size() >= most) break;
      // What one of a list does alone need not be done to all of it.
      const std::string& path = look.handles()[l.handle].path;
      const bool again = path.find("[]") != std::string::npos &&
                         std::any_of(found.cures.begin(), found.cures.end(),
                                     [&](const cure& c) { return pattern_of(c.changes.front().path) == path; });
      if (again) continue;
      if (auto sure = look.made_sure(wanted[f], l)) found.cures.push_back(std::move(*sure));
    }
    if (found.cures.size() < most) {
      look.forget_nearest(wanted[f]);
      for (const missing_part& p : parts) {
        if (found.cures.size() >= most) break;
        if (auto more = look.part(wanted[f], p)) found.cures.push_back(std::move(*more));
      }
    }
    if (found.cures.empty()) {
      std::stable_sort(helps.begin(), helps.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
      if (helps.size() > 4) helps.resize(4);
      for (std::size_t i = 0; i < helps.size() && found.cures.size() < most; ++i) {
        for (std::size_t j = i + 1; j < helps.size() && found.cures.size() < most; ++j) {
          if (auto two = look.pair(wanted[f], helps[i].second, helps[j].second)) found.cures.push_back(std::move(*two));
        }
      }
    }
    // Of the same effect a key that is there before a part that is not.
    std::stable_sort(found.cures.begin(), found.cures.end(), [](const cure& a, const cure& b) {
      if (a.worse.empty() != b.worse.empty()) return a.worse.empty();
      return a.part.empty() != b.part.empty() ? a.part.empty() : a.size < b.size;
    });
    if (!found.cures.empty()) continue;
    struct point {
      double score;
      std::size_t handle, at;
    };
    std::vector<point> points;
    for (const std::size_t h : handles) {
      const std::vector<double>& scores = g.scores[f][h];
      for (std::size_t i = 0; i < scores.size(); ++i) {
        if (scores[i] > g.now[f]) points.push_back({scores[i], h, i});
      }
    }
    std::stable_sort(points.begin(), points.end(), [](const point& a, const point& b) { return a.score > b.score; });
    constexpr std::size_t tried = 32;  // what spoils something else is no help
    for (std::size_t i = 0; i < points.size() && i < tried; ++i) {
      if (look.keep_nearest(wanted[f], points[i].handle, g.values[points[i].handle][points[i].at])) break;
    }
    found.why_none = look.nearest();
  }
  return all;
}

/// The plan's answer to one decision with its bands, refused where nothing can make it hold.
[[nodiscard]] inline banded_assessment judged_for(const plan::build& build, const decision& d, const search& how) {
  banded_assessment judged{.all = assess(build)};
  const finding* f = find(judged.all.findings, d.id);
  if (!f) refuse_question(d.id, "is not asked by this plan");
  if (!f->margin() && f->verdict != verdict::not_enough_known)
    refuse_question(d.id, "has no margin: it is for information");
  const decision* const asked = &d;
  std::vector<finding> base{*f};
  const sampler moves{build, judged.all.findings, how.samples};
  sample_table table{base, how.samples};
  moves.run(table, base, {&asked, 1}, first_numbers(how.samples), {.run = how.run});
  const sampled_finding told = settle(base.front(), table, 0, how.samples);
  judged.all.findings = std::move(base);
  judged.sampled.push_back(told);
  return judged;
}

/// A path as the search names it: elements by their labels, where a person may have said their numbers.
[[nodiscard]] inline std::string canonical(const plan::build& build, std::string_view path) {
  if (path.find("[]") != std::string_view::npos) return std::string{path};
  plan::build probe = build;
  const plan::value_base* number = nullptr;
  plan::at_path(probe, path, false, [&](const plan::leaf& here) { number = here.number; });
  handle_finder finder;
  describe(finder, probe);
  for (const handle& h : finder.all) {
    if (h.numbers.front() == number) return h.path;
  }
  return std::string{path};
}

[[nodiscard]] inline bool is_open(const finding& f) noexcept {
  return f.margin() && (f.verdict == verdict::does_not_hold || f.verdict == verdict::thin_margin);
}

}  // namespace detail

TANKWRIGHT_INLINE cures_of_finding what_would_hold(const plan::build& build, std::string_view id, const search& how) {
  const decision& asked = detail::decision_with(id);
  const banded_assessment judged = detail::judged_for(build, asked, how);
  auto all = what_would_hold(build, judged, how);
  const finding& f = judged.all.findings.front();
  return all.empty() ? cures_of_finding{asked.id, {}, f.verdict == verdict::holds} : std::move(all.front());
}

TANKWRIGHT_INLINE std::vector<cures_of_finding> what_would_hold(const plan::build& build,
                                                                const banded_assessment& judged, const search& how) {
  if (std::none_of(judged.all.findings.begin(), judged.all.findings.end(), detail::is_open)) return {};
  detail::cure_search look{build, how};
  std::vector<detail::wanted_finding> wanted;
  for (std::size_t i = 0; i < judged.all.findings.size(); ++i) {
    const finding& f = judged.all.findings[i];
    if (!detail::is_open(f)) continue;
    wanted.emplace_back(detail::decision_with(f.id), f, judged.sampled.at(i).lowest, detail::find(look.before(), f.id));
  }
  return detail::cures_of(look, wanted, detail::first_numbers(look.handles().size()), how.most);
}

TANKWRIGHT_INLINE std::optional<cure> value_that_holds(const plan::build& build, std::string_view path,
                                                       std::string_view id, const search& how) {
  const decision& asked = detail::decision_with(id);
  const std::string wanted_path = detail::canonical(build, path);
  const banded_assessment judged = detail::judged_for(build, asked, how);
  detail::cure_search look{build, how};
  const std::vector<detail::wanted_finding> wanted{
      {asked, judged.all.findings.front(), judged.sampled.front().lowest, detail::find(look.before(), asked.id)}};
  std::vector<std::string> known;
  for (std::size_t h = 0; h < look.handles().size(); ++h) {
    known.push_back(look.handles()[h].path);
    if (known.back() != wanted_path) continue;
    const auto g = look.look_along(wanted, {&h, 1});
    if (g.scores[0][h].empty()) detail::refuse_question(path, "has no influence on " + std::string{id});
    std::vector<detail::lead> leads = look.leads(wanted[0], h, g.values[h], g.scores[0][h]);
    std::stable_sort(leads.begin(), leads.end(), [](const auto& a, const auto& b) { return a.size < b.size; });
    for (const detail::lead& l : leads) {
      if (auto sure = look.made_sure(wanted[0], l)) return sure;
    }
    return std::nullopt;
  }
  if (path.find("[]") == std::string_view::npos) {
    plan::build probe = build;
    plan::at_path(probe, path, false, [&](const plan::leaf& here) {  // refuses what is no key at all
      if (!here.number) detail::refuse_question(path, "does not hold one number");
      const bool set = here.key.set_by == plan::set_by::chosen;
      detail::refuse_question(path, set                                       ? "has no range to be chosen from"
                                    : here.key.set_by == plan::set_by::wanted ? "is a goal: a search must not move it"
                                                                              : "is measured: it is what it is");
    });
  }
  const std::string nearest = plan::nearest_name(path, known);
  detail::refuse_question(
      path, "is no key of this plan that can be chosen" + (nearest.empty() ? "" : "; did you mean " + nearest + "?"));
}

TANKWRIGHT_INLINE std::vector<at_value> finding_while(const plan::build& build, std::string_view path, double from,
                                                      double to, std::size_t steps, std::string_view id) {
  const decision* const wanted = &detail::decision_with(id);
  if (steps < 2 || steps > 10000) detail::refuse_question("steps", "must be from 2 to 10000");
  if (!(std::isfinite(from) && std::isfinite(to))) detail::refuse_question(path, "runs from or to no finite number");
  std::vector<at_value> all;
  plan::build moved = build;
  for (std::size_t i = 0; i < steps; ++i) {
    const double x = from + (to - from) * static_cast<double>(i) / static_cast<double>(steps - 1);
    plan::set_si(moved, path, x);
    at_value& here = all.emplace_back(at_value{x});
    if (!plan::validate(moved).empty()) continue;
    auto answer = detail::answers_of(moved, {&wanted, 1});
    if (!answer.empty()) here.answer = std::move(answer.front());
  }
  return all;
}

TANKWRIGHT_INLINE comparison compare(const plan::build& before, const plan::build& after) {
  comparison result;
  const auto a = detail::given_in(before), b = detail::given_in(after);
  const auto text_in = [](const auto& all, const std::string& path) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first == path; });
    return found == all.end() ? std::string{} : found->second;
  };
  for (const auto& [path, text] : a) {
    if (std::string then = text_in(b, path); then != text) result.changed.push_back({path, text, std::move(then)});
  }
  for (const auto& [path, text] : b) {
    if (text_in(a, path).empty()) result.changed.push_back({path, {}, text});
  }
  const assessment was = assess(before), is = assess(after);
  for (const finding& f : was.findings) {
    const finding* now = is.find(f.id);
    if (now && now->verdict != f.verdict) result.moved.push_back({f.id, f.verdict, now->verdict});
  }
  return result;
}

}  // namespace tankwright::decisions
