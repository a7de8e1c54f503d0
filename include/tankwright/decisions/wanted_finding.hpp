// SPDX-License-Identifier: BSL-1.0
/// @file
/// How near a finding is to holding, by central values. Machinery of `would_hold.hpp`.
#pragma once

#include <cmath>
#include <limits>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/decisions/sampler.hpp>
#include <vector>

namespace tankwright::decisions::detail {

/// A finding that should hold, and what its margins need by central values: the doubts take the rest.
struct wanted_finding {
  const decision* asked;
  const finding* judged;  ///< with its bands
  const finding* plain;   ///< the same with the engines' bands alone, as the grid of a search sees it
  struct need {
    double least;  ///< of the central value
    double scale;  ///< what it is short of now, at least something
  };
  std::vector<need> needs{};  ///< one for each number; of numbers that are no margin unused
  std::vector<std::size_t> lowest{};

  wanted_finding(const decision& d, const finding& f, std::vector<std::size_t> samples, const finding* without)
      : asked{&d}, judged{&f}, plain{without}, lowest{std::move(samples)} {
    learn(f);
  }
  /// What the doubts take from each margin, as a finding with bands says it.
  void learn(const finding& f) {
    needs.assign(judged->numbers.size(), {0.0, 1.0});
    for (std::size_t i = 0; i < judged->numbers.size(); ++i) {
      const number* n = same_number(f, *judged, i);
      if (!n || n->as != role::margin) continue;
      const double useful = n->value.quantity == f.margin()->value.quantity ? f.useful : 0.0;
      needs[i].least = useful + (n->value.central - n->value.low);
      needs[i].scale = std::fmax(std::fabs(judged->numbers[i].value.central - needs[i].least), 1e-12);
    }
  }
  /// Above zero where it holds, about -1 as the plan stands; NaN where there is no answer.
  [[nodiscard]] double score(const finding* f) const noexcept {
    if (!f || !f->margin() || f->verdict == verdict::not_enough_known) return std::nan("");
    double least = std::numeric_limits<double>::infinity();
    for (const number& n : f->numbers) {
      if (n.as != role::margin) continue;
      const number* base = nullptr;
      for (std::size_t i = 0; i < judged->numbers.size(); ++i) {
        if (judged->numbers[i].id != n.id || judged->numbers[i].place != n.place) continue;
        base = &judged->numbers[i];
        const double margin = n.value.central + narrowed_by(n, i);
        least = std::fmin(least, (margin - needs[i].least) / needs[i].scale);
      }
      if (!base) least = std::fmin(least, n.value.central);
    }
    return least;
  }

 private:
  /// What the band has come nearer to its middle: a larger machine that regulates moves the bad end alone.
  [[nodiscard]] double narrowed_by(const number& n, std::size_t i) const noexcept {
    const number* was = plain ? same_number(*plain, *judged, i) : nullptr;
    if (!was) return 0.0;
    return std::fmax(0.0, (was->value.central - was->value.low) - (n.value.central - n.value.low));
  }
};

}  // namespace tankwright::decisions::detail
