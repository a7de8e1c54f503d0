// SPDX-License-Identifier: BSL-1.0
/// @file
/// One decision of the job, answered: the question, its numbers with their bands, one signed margin, a verdict, what
/// happens, the sources, the caution, and what to measure next. Front ends need nothing else.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/core/citation.hpp>
#include <tankwright/decisions/verdict.hpp>
#include <utility>
#include <vector>

namespace tankwright::decisions {

/// The parts of the job, in their order.
enum class day { first_fill, plumbing, power_cut, bottom, salting, closing, moving_in, running };

/// The words of a day: "First fill".
///
/// @param d  the day
/// @return   its words
/// @accuracy exact
/// @source   this library
[[nodiscard]] constexpr std::string_view words(day d) noexcept {
  switch (d) {
    case day::first_fill:
      return "First fill";
    case day::plumbing:
      return "Plumbing";
    case day::power_cut:
      return "Power-cut test";
    case day::bottom:
      return "Filling the bottom";
    case day::salting:
      return "Salting";
    case day::closing:
      return "Closing the top";
    case day::moving_in:
      return "Moving in";
    case day::running:
      break;
  }
  return "Running";
}

/// What goes wrong where a decision does not hold, the gravest first.
enum class consequence { injury, flood, animals, equipment, comfort, money };

/// The words of a consequence: "water on the floor".
///
/// @param c  the consequence
/// @return   its words
/// @accuracy exact
/// @source   this library
[[nodiscard]] constexpr std::string_view words(consequence c) noexcept {
  switch (c) {
    case consequence::injury:
      return "injury";
    case consequence::flood:
      return "water on the floor";
    case consequence::animals:
      return "animals";
    case consequence::equipment:
      return "equipment";
    case consequence::comfort:
      return "comfort";
    case consequence::money:
      break;
  }
  return "money";
}

/// What a number is in its finding.
enum class role {
  answer,  ///< what was asked for
  limit,   ///< what it must not pass
  margin,  ///< the room between the two
  detail,  ///< worth knowing beside it
};

/// A number with its id, which programs look for, and the words beside it, which people read.
struct number {
  std::string_view id;  ///< fixed, unique in its finding together with the place: "spare"
  std::string label;
  amount value;
  role as = role::answer;
  std::string place{};  ///< of several: "left return"; empty where there is one
};

/// One decision, answered.
struct finding {
  std::string_view id;  ///< fixed: "salt.mix"
  decisions::day day = decisions::day::first_fill;
  std::string_view question{};  ///< as a person asks it
  decisions::consequence consequence = decisions::consequence::money;
  decisions::verdict verdict = decisions::verdict::for_information;
  bool recommendation = false;  ///< the limit is advice: passing it is not a failure
  std::vector<number> numbers{};
  std::string happens{};  ///< one sentence in plain words: what happens; empty where the numbers say it
  std::string note{};     ///< a sentence more, where the numbers need one
  std::vector<citation> sources{};
  std::string_view caution{};               ///< empty where nothing can be hurt
  std::vector<std::string> measure_next{};  ///< what would narrow the answer, or what is missing for one
  std::optional<std::size_t> deciding{};    ///< place of the margin that decides among `numbers`
  double useful = 0.0;                      ///< smallest useful room that it was judged with, SI

  /// A number that answers.
  template <class Q>
  finding& answer(std::string_view number_id, std::string label, const Q& q, std::string place = {}) {
    return add({number_id, std::move(label), amount_from(q), role::answer, std::move(place)});
  }
  template <class Q>
  finding& limit(std::string_view number_id, std::string label, const Q& q, std::string place = {}) {
    return add({number_id, std::move(label), amount_from(q), role::limit, std::move(place)});
  }
  template <class Q>
  finding& detail(std::string_view number_id, std::string label, const Q& q, std::string place = {}) {
    return add({number_id, std::move(label), amount_from(q), role::detail, std::move(place)});
  }
  /// A margin, judged. Of several the one with the worst verdict decides; among equals of one quantity the smallest, of
  /// several quantities the one given first.
  template <class Q, class U>
  finding& margin(std::string_view number_id, std::string label, const Q& q, const U& smallest_useful,
                  std::string place = {}) {
    add({number_id, std::move(label), amount_from(q), role::margin, std::move(place)});
    decide(core::si_number(smallest_useful));
    return *this;
  }
  finding& source(const citation& c) {
    sources.push_back(c);
    return *this;
  }
  finding& next(std::string what) {
    measure_next.push_back(std::move(what));
    return *this;
  }
  /// Cannot be answered: why, or what is missing.
  finding& unknown(std::string what) {
    verdict = decisions::verdict::not_enough_known;
    measure_next.push_back(std::move(what));
    return *this;
  }

  /// The number with an id, and a place where there are several; none: null.
  [[nodiscard]] const number* find(std::string_view number_id, std::string_view place = {}) const noexcept {
    for (const number& n : numbers) {
      if (n.id == number_id && (place.empty() || n.place == place)) return &n;
    }
    return nullptr;
  }
  /// The margin that decides; none: null.
  [[nodiscard]] const number* margin() const noexcept { return deciding ? &numbers[*deciding] : nullptr; }

  finding& add(number n) {
    numbers.push_back(std::move(n));
    return *this;
  }

 private:
  template <class Q>
  [[nodiscard]] static amount amount_from(const Q& q) {
    if constexpr (std::is_same_v<Q, amount>) {
      return q;
    } else {
      return amount_of(q);
    }
  }
  /// Judge the last number, a margin.
  void decide(double smallest_useful) {
    const amount& last = numbers.back().value;
    const decisions::verdict v = judge(last, smallest_useful);
    const bool first = !deciding.has_value();
    const bool graver = !first && v > judge(numbers[*deciding].value, useful);
    // What is in other units cannot be compared: the one given first stays.
    const bool as_grave_and_smaller = !first && last.quantity == numbers[*deciding].value.quantity &&
                                      v == judge(numbers[*deciding].value, useful) &&
                                      last.central < numbers[*deciding].value.central;
    verdict = worse_of(verdict, v);
    if (first || graver || as_grave_and_smaller) {
      deciding = numbers.size() - 1;
      useful = smallest_useful;
    }
  }
};

/// The verdict of a finding in words; of a recommendation in milder ones.
///
/// @param f  the finding
/// @return   "holds", "does not hold", ...; "as recommended", "close to what is recommended", "past what is
///           recommended"
/// @accuracy exact
/// @source   this library
[[nodiscard]] inline std::string_view verdict_words(const finding& f) noexcept {
  if (!f.recommendation) return words(f.verdict);
  switch (f.verdict) {
    case verdict::holds:
      return "as recommended";
    case verdict::thin_margin:
      return "close to what is recommended";
    case verdict::does_not_hold:
      return "past what is recommended";
    case verdict::not_enough_known:
    case verdict::for_information:
      break;
  }
  return words(f.verdict);
}

}  // namespace tankwright::decisions
