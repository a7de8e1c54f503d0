// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/sampler.hpp>
#include <tankwright/decisions/shares.hpp>

namespace tankwright::decisions {

namespace detail {

/// Variance over the unit interval from three points of Gauss and Legendre, at 1/2 and 1/2 +- gauss_aside.
inline constexpr double gauss_aside = 0.38729833462074170;  // sqrt(15)/10
[[nodiscard]] constexpr double variance_of(double below, double middle, double above) noexcept {
  const double a = below - middle, b = above - middle;
  const double mean = (a + b) * (5.0 / 18.0);
  return (a * a + b * b) * (5.0 / 18.0) - mean * mean;
}

/// The number that the shares are about.
struct shared_number {
  std::size_t finding;  ///< in the assessment
  std::size_t number;
};

[[nodiscard]] inline std::vector<share> shares_in(const sampler& moves, const std::vector<finding>& middle,
                                                  const finding& base, const number& wanted,
                                                  const std::vector<std::vector<double>>& below,
                                                  const std::vector<std::vector<double>>& above, std::size_t k) {
  std::vector<share> all;
  const finding* f = find(middle, base.id);
  const number* n = f ? f->find(wanted.id, wanted.place) : nullptr;
  if (!n) return all;
  const double centre = n->value.central;
  for (std::size_t d = 0; d < moves.doubts().size(); ++d) {
    if (!std::isfinite(below[k][d]) || !std::isfinite(above[k][d])) continue;
    all.push_back({moves.doubts()[d].path, false, variance_of(below[k][d], centre, above[k][d]), below[k][d], centre,
                   above[k][d]});
  }
  if (!n->value.is_sharp()) {  // the band of its own law
    const law* const l = law_of(n->value.reason);
    const double side = law_draws::side_of(l, 0.5 + gauss_aside);
    const double down = side * (n->value.central - n->value.low), up = side * (n->value.high - n->value.central);
    double part = variance_of(centre - down, centre, centre + up);
    if (l && l->by == spread::standard_error) {  // three points are too few for a normal law
      const double low = n->value.central - n->value.low, high = n->value.high - n->value.central;
      const double mean = (high - low) / std::sqrt(2.0 * std::numbers::pi);
      part = 0.5 * (low * low + high * high) - mean * mean;
    }
    all.push_back({l ? std::string{l->id} : std::string{n->value.reason}, true, part, centre - down, centre,
                   centre + up, l ? l->says : n->value.reason});
  }
  return all;
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<shares_of_finding> shares_of(const plan::build& build, const banded_assessment& judged,
                                                           const executor& run) {
  std::vector<const decision*> asked;
  std::vector<detail::shared_number> numbers;
  for (std::size_t i = 0; i < judged.all.findings.size(); ++i) {
    const finding& f = judged.all.findings[i];
    const number* n = f.margin() ? f.margin() : headline_of(f);
    if (!n || n->value.is_sharp() || !(judged.sampled.at(i).spread > 0.0)) continue;
    for (const decision* d : all_decisions()) {
      if (d->id != f.id || d->samples != 0) continue;
      asked.push_back(d);
      numbers.push_back({i, static_cast<std::size_t>(n - f.numbers.data())});
    }
  }
  const detail::sampler moves{build, judged.all.findings, 1};
  const std::size_t doubts = moves.doubts().size();
  const std::vector<double> nothing(doubts, std::nan(""));
  std::vector<std::vector<double>> below(numbers.size(), nothing), above(numbers.size(), nothing);
  moves.one_at_a_time(asked, detail::gauss_aside, run,
                      [&](std::size_t d, const std::vector<finding>& a, const std::vector<finding>& b) {
                        for (std::size_t k = 0; k < numbers.size(); ++k) {
                          const finding& base = judged.all.findings[numbers[k].finding];
                          const finding *lower = detail::find(a, base.id), *upper = detail::find(b, base.id);
                          const number* one = lower ? detail::same_number(*lower, base, numbers[k].number) : nullptr;
                          const number* two = upper ? detail::same_number(*upper, base, numbers[k].number) : nullptr;
                          if (one) below[k][d] = one->value.central;
                          if (two) above[k][d] = two->value.central;
                        }
                      });
  const std::vector<finding> middle = moves.in_the_middle(asked);
  std::vector<shares_of_finding> result;
  for (std::size_t k = 0; k < numbers.size(); ++k) {
    const finding& base = judged.all.findings[numbers[k].finding];
    const number& n = base.numbers[numbers[k].number];
    const double spread = judged.sampled[numbers[k].finding].spread;
    shares_of_finding& found = result.emplace_back(shares_of_finding{base.id, n.id, n.place});
    found.shares = detail::shares_in(moves, middle, base, n, below, above, k);
    double sum = 0.0;
    for (const share& s : found.shares) sum += s.part;
    const double whole = std::fmax(spread * spread, sum);
    for (share& s : found.shares) s.part = whole > 0.0 ? s.part / whole : 0.0;
    std::erase_if(found.shares, [](const share& s) { return !(s.part >= 0.005); });
    std::stable_sort(found.shares.begin(), found.shares.end(),
                     [](const share& a, const share& b) { return a.part > b.part; });
    found.together = 1.0;
    for (const share& s : found.shares) found.together -= s.part;
    found.together = std::fmax(found.together, 0.0);
  }
  return result;
}

}  // namespace tankwright::decisions
