// SPDX-License-Identifier: BSL-1.0
/// @file
/// One decision of the job, answered: the question, its numbers with their bands, limit and margin, a verdict, the
/// sources, the caution, and what to measure next. Front ends need nothing else.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/commissioning/verdict.hpp>
#include <tankwright/core/amount.hpp>
#include <tankwright/core/citation.hpp>
#include <utility>
#include <vector>

namespace tankwright::commissioning {

/// What a number is in its finding.
enum class role {
  answer,  ///< what was asked for
  limit,   ///< what it must not pass
  margin,  ///< the room between the two
  detail,  ///< worth knowing beside it
};

/// A number with the words beside it.
struct entry {
  std::string label;
  amount value;
  role as = role::answer;
};

namespace detail {

/// A list of entries that are moved into it; an initializer list would copy their words.
template <class... E>
[[nodiscard]] std::vector<entry> entries(E&&... each) {
  std::vector<entry> list;
  list.reserve(sizeof...(each) + 6);  // most findings add a few
  (list.push_back(std::forward<E>(each)), ...);
  return list;
}

}  // namespace detail

/// One decision, answered.
struct finding {
  std::string_view id;        ///< stable name for programs: "salt.mix"
  std::string_view day;       ///< the part of the job: "Salting"
  std::string_view question;  ///< as a person asks it
  verdict says = verdict::for_information;
  std::vector<entry> numbers{};
  std::string note{};  ///< a sentence more, where the numbers need one
  std::vector<citation> sources{};
  std::string_view before_acting{};         ///< the caution; empty where nothing can be hurt
  std::vector<std::string> measure_next{};  ///< what would narrow the answer, or what is missing for one
};

/// How a margin stands: the whole band positive holds, the central value positive is thin, otherwise it does not hold.
///
/// @param margin the room left, negative when there is none
/// @param thin   a margin smaller than this is called thin even when its band is positive
/// @return       holds, thin_margin or does_not_hold; not_enough_known when a value is not a number
/// @accuracy     exact
/// @source       this library
template <class Q>
[[nodiscard]] constexpr verdict verdict_of_margin(const estimate<Q>& margin, const Q& thin) noexcept {
  const double low = core::si_number(margin.low);
  const double central = core::si_number(margin.central);
  if (!(low <= central)) return verdict::not_enough_known;
  if (central < 0.0) return verdict::does_not_hold;
  return low >= core::si_number(thin) ? verdict::holds : verdict::thin_margin;
}

}  // namespace tankwright::commissioning
