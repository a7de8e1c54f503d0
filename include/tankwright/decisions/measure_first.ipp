// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/laws.hpp>
#include <tankwright/decisions/measure_first.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

namespace detail {

/// The chance that a verdict turns when one doubt of its margin is known: over its values, evenly.
[[nodiscard]] inline double turns(const finding& f, const sampled_finding& told, const share& s) noexcept {
  const double rest = told.spread * std::sqrt(std::fmax(1.0 - s.part, 1e-6));
  // The parabola through the three points, about its mean.
  constexpr double aside = 0.77459666924148340;  // in half widths
  const double slope = (s.above - s.below) / (2.0 * aside);
  const double bend = (s.above - 2.0 * s.middle + s.below) / (2.0 * aside * aside);
  constexpr int steps = 200;
  int other = 0;
  for (int i = 0; i < steps; ++i) {
    const double side = (2.0 * i + 1.0) / steps - 1.0;
    const double mean = told.mean + slope * side + bend * (side * side - 1.0 / 3.0);
    const double chance = 0.5 * std::erfc(-mean / (rest * 1.4142135623730951));
    other += judge_by_chance(chance, mean - 1.959964 * rest, f.useful) != f.verdict;
  }
  return static_cast<double>(other) / steps;
}

/// "Measure more closely: top of the walls above the floor of the sump (plumbing.sump.rim, taken as good to 3 mm)".
[[nodiscard]] inline std::string words_of_doubt(const doubtful& d, text::unit_system units) {
  std::string good_to =
      text::of(100.0 * d.half_width / std::fmax(std::fabs(d.value), 1e-300), text::significant(2)) + " %";
  if (d.quantity == "length" || d.quantity == "number") {
    good_to = text::of(amount{d.quantity, d.half_width, d.half_width, d.half_width}, units);
  } else if (d.quantity == "temperature") {
    good_to = units == text::unit_system::us ? text::of(1.8 * d.half_width, text::significant(2)) + " °F"
                                             : text::of(d.half_width, text::significant(2)) + " °C";
  }
  return "Measure more closely: " + std::string{d.means} + " (" + d.path + (d.assumed ? ", taken as" : ",") +
         " good to " + good_to + ")";
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<next_measurement> measure_first(const plan::build& build, const banded_assessment& judged,
                                                              const std::vector<shares_of_finding>& shares,
                                                              std::size_t most) {
  struct candidate {
    next_measurement measurement;
    consequence at_stake;
  };
  std::vector<candidate> all;
  const text::unit_system units = build.units.value_or(text::unit_system::si);
  for (std::size_t i = 0; i < judged.all.findings.size(); ++i) {
    const finding& f = judged.all.findings[i];
    const bool open = f.margin() && (f.verdict == verdict::does_not_hold || f.verdict == verdict::thin_margin);
    const auto own = std::find_if(shares.begin(), shares.end(), [&](const auto& s) { return s.id == f.id; });
    if (!open || own == shares.end()) continue;
    for (const share& s : own->shares) {
      next_measurement m{.id = f.id, .question = f.question, .verdict = f.verdict};
      if (!((m.turns = detail::turns(f, judged.sampled[i], s)) >= 0.05)) continue;
      const auto d =
          std::find_if(judged.doubts.begin(), judged.doubts.end(), [&](const auto& x) { return x.path == s.what; });
      const law* const l = s.of_law ? law_with(s.what) : nullptr;
      const std::string_view narrow_by = l ? l->narrow_by : std::string_view{};
      if (s.of_law && f.measure_next.empty() && narrow_by.empty()) continue;
      if (!s.of_law && d == judged.doubts.end()) continue;
      m.what = !s.of_law                ? detail::words_of_doubt(*d, units)
               : f.measure_next.empty() ? std::string{narrow_by}
                                        : f.measure_next.front();
      if (l) m.law = l->id;
      if (!m.what.empty() && m.what.front() >= 'a' && m.what.front() <= 'z') m.what.front() -= 'a' - 'A';
      if (!s.of_law) m.path = s.what;
      all.push_back({std::move(m), f.consequence});
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const candidate& a, const candidate& b) {
    return a.at_stake != b.at_stake ? a.at_stake < b.at_stake : a.measurement.turns > b.measurement.turns;
  });
  std::vector<next_measurement> first;
  for (candidate& c : all) {
    if (first.size() == most) break;
    const bool known =
        std::any_of(first.begin(), first.end(), [&](const auto& m) { return m.what == c.measurement.what; });
    if (!known) first.push_back(std::move(c.measurement));
  }
  return first;
}

}  // namespace tankwright::decisions
