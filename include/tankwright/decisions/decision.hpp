// SPDX-License-Identifier: BSL-1.0
/// @file
/// What a decision is, as data: its id, its day, its question, what is at stake, and the function that answers it.
#pragma once

#include <string_view>
#include <tankwright/core/errors.hpp>
#include <tankwright/decisions/finding.hpp>
#include <vector>

namespace tankwright::decisions {

class situation;
class answers;

/// One decision of the job. Its function asks nothing where the plan does not describe what it is about.
struct decision {
  std::string_view id;
  decisions::day day;
  std::string_view question;
  decisions::consequence consequence;
  bool recommendation = false;  ///< its limit is advice: passing it is not a failure
  std::string_view caution{};   ///< said even where there is no answer
  void (*answer)(const situation&, answers&);
  std::size_t samples = 0;  ///< of the doubts at most, where it takes long; 0: as many as are wanted
};

/// Collects what decisions answer.
class answers {
 public:
  /// Begin the finding of a decision. The reference is good until the next one begins.
  finding& ask(const decision& d) {
    finding& f = all_.emplace_back();
    f.id = d.id;
    f.day = d.day;
    f.question = d.question;
    f.consequence = d.consequence;
    f.recommendation = d.recommendation;
    f.caution = d.caution;
    f.numbers.reserve(8);  // most have about as many
    return f;
  }
  /// Let a decision answer. What its engines refuse silences this finding alone, and the finding says why.
  void run(const decision& d, const situation& s) {
    const std::size_t before = all_.size();
    try {
      d.answer(s, *this);
    } catch (const error& mistake) {
      if (all_.size() == before) ask(d);
      finding& f = all_.back();
      f.verdict = verdict::not_enough_known;
      f.numbers.clear();
      f.deciding.reset();
      f.happens.clear();
      f.measure_next.clear();
      f.caution = d.caution;
      f.note = reason_of(mistake);
    }
  }
  [[nodiscard]] std::vector<finding> take() noexcept { return std::move(all_); }
  void reserve(std::size_t count) { all_.reserve(count); }

  /// What an error of the library says to somebody who wrote a plan: without the C++ in it.
  [[nodiscard]] static std::string reason_of(const error& mistake) {
    std::string reason = mistake.what();
    const std::string& function = mistake.details().function;
    if (!function.empty() && reason.starts_with(function + ": ")) reason.erase(0, function.size() + 2);
    if (const auto advice = reason.find("; pass tankwright::"); advice != std::string::npos) reason.erase(advice);
    return reason;
  }

 private:
  std::vector<finding> all_{};
};

}  // namespace tankwright::decisions
