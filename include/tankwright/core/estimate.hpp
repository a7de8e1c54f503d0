// SPDX-License-Identifier: BSL-1.0
/// @file
/// Results that are not one sharp number: estimates with their band, their arithmetic, and the caution that goes with a
/// number that can hurt.
#pragma once

#include <concepts>
#include <memory>
#include <string_view>
#include <type_traits>

#include <tankwright/core/errors.hpp>

namespace tankwright {

template <class Q>
struct estimate;

namespace core {

/// What a quantity is ordered by: its number, or itself where it has none but an order.
template <class Q>
[[nodiscard]] constexpr auto rank_of(const Q& q) noexcept {
  if constexpr (!std::is_arithmetic_v<Q> && requires { q.value(); }) {
    return rank_of(q.value());
  } else {
    static_assert(
        requires { q < q; }, "tankwright: an estimate needs a quantity that has an order");
    return q;
  }
}

[[noreturn, gnu::cold, gnu::noinline]] inline void refuse_estimate() {
  fail<invalid_input>("tankwright::estimate", "one of low, central and high", __builtin_nan(""), "", "is not a number");
}

[[noreturn, gnu::cold, gnu::noinline]] inline void refuse_division(double low, double high) {
  fail<invalid_input>("tankwright::estimate", "divisor", low, "",
                      "to " + number_text(high) + " includes zero, so the quotient has no band");
}

template <class T>
inline constexpr bool is_estimate = false;
template <class Q>
inline constexpr bool is_estimate<estimate<Q>> = true;

struct plus {
  template <class A, class B>
  constexpr auto operator()(const A& a, const B& b) const -> decltype(a + b) {
    return a + b;
  }
};
struct minus {
  template <class A, class B>
  constexpr auto operator()(const A& a, const B& b) const -> decltype(a - b) {
    return a - b;
  }
};
struct times {
  template <class A, class B>
  constexpr auto operator()(const A& a, const B& b) const -> decltype(a * b) {
    return a * b;
  }
};
struct over {
  template <class A, class B>
  constexpr auto operator()(const A& a, const B& b) const -> decltype(a / b) {
    return a / b;
  }
};

/// Lengths over lengths are numbers: Boost.Units says so with a type of its own.
template <class T>
using plain = std::conditional_t<std::is_convertible_v<T, double>, double, std::remove_cvref_t<T>>;

template <class Operator, class A, class B>
[[nodiscard]] constexpr auto combine(const estimate<A>& a, const estimate<B>& b)
    -> estimate<plain<std::invoke_result_t<Operator, A, B>>>;

}  // namespace core

/// A value that a formula gives only within a band: low <= central <= high, whatever it is made from.
///
/// Ends that come in the wrong order, or a central value that lies outside them by rounding, make the band wider, never
/// upside down; what is not a number is refused (`invalid_input`). A plain quantity is an estimate without a band.
///
/// Arithmetic (+, -, *, / with estimates, quantities and numbers) is that of intervals: the ends of the result are the
/// worst of all pairs of ends, the middle is that of the middles, the reason that of the wider band. Errors count as if
/// they met at the worst: where they are independent the band is too wide, and an estimate that stands twice in a
/// formula
/// is counted twice (x - x is not zero). For errors that vary together or apart see `numerics/uncertainty.hpp`.
/// Division by a band that includes zero is refused.
template <class Q>
struct estimate {
  const Q low;
  const Q central;
  const Q high;
  std::string_view reason{};  ///< why the band is as wide as it is; empty where there is none

  constexpr estimate() requires std::default_initializable<Q> : estimate{Q{}} {}
  constexpr estimate(const Q& sharp) : low{checked(sharp)}, central{sharp}, high{sharp} {}
  constexpr estimate(const Q& one_end, const Q& middle, const Q& other_end, std::string_view why = {})
      : low{pick<false>(one_end, middle, other_end)},
        central{middle},
        high{pick<true>(one_end, middle, other_end)},
        reason{why} {}
  constexpr estimate(const estimate&) noexcept = default;
  constexpr estimate& operator=(const estimate& other) noexcept {
    if (this != &other) std::construct_at(this, other);
    return *this;
  }

  [[nodiscard]] constexpr bool is_sharp() const noexcept { return core::rank_of(low) == core::rank_of(high); }

  [[nodiscard]] constexpr estimate operator-() const { return {-high, -central, -low, reason}; }
  template <class B>
  constexpr estimate& operator+=(const B& b) {
    return *this = *this + b;
  }
  template <class B>
  constexpr estimate& operator-=(const B& b) {
    return *this = *this - b;
  }
  template <class B>
  constexpr estimate& operator*=(const B& b) {
    return *this = *this * b;
  }
  template <class B>
  constexpr estimate& operator/=(const B& b) {
    return *this = *this / b;
  }

 private:
  [[nodiscard]] static constexpr const Q& checked(const Q& q) {
    const auto number = core::rank_of(q);
    if (!(number == number)) [[unlikely]]
      core::refuse_estimate();
    return q;
  }
  template <bool Highest>
  [[nodiscard]] static constexpr const Q& pick(const Q& a, const Q& b, const Q& c) {
    const auto beyond = [](const Q& one, const Q& two) {
      return Highest ? core::rank_of(two) < core::rank_of(one) : core::rank_of(one) < core::rank_of(two);
    };
    const Q& of_two = beyond(checked(a), checked(b)) ? a : b;
    return beyond(checked(c), of_two) ? c : of_two;
  }
};

namespace core {

/// Width of a band; for products and quotients as a share of its middle.
template <class Q>
[[nodiscard]] constexpr double width_of(const estimate<Q>& e, bool as_share) noexcept {
  const double width = rank_of(e.high) - rank_of(e.low);
  const double middle = rank_of(e.central) < 0.0 ? -rank_of(e.central) : rank_of(e.central);
  return !as_share || width == 0.0 ? width : width / middle;
}

template <class Operator, class A, class B>
[[nodiscard]] constexpr auto combine(const estimate<A>& a, const estimate<B>& b)
    -> estimate<plain<std::invoke_result_t<Operator, A, B>>> {
  using result = plain<std::invoke_result_t<Operator, A, B>>;
  constexpr bool of_shares = std::is_same_v<Operator, times> || std::is_same_v<Operator, over>;
  if constexpr (std::is_same_v<Operator, over>) {
    if (!(rank_of(b.low) > 0.0 || rank_of(b.high) < 0.0)) [[unlikely]] {
      refuse_division(rank_of(b.low), rank_of(b.high));
    }
  }
  const auto at = [](const A& one, const B& two) { return static_cast<result>(Operator{}(one, two)); };
  const std::string_view why = width_of(b, of_shares) > width_of(a, of_shares) ? b.reason : a.reason;
  const estimate<result> outer{at(a.low, b.low), at(a.central, b.central), at(a.high, b.high), why};
  const estimate<result> across{at(a.low, b.high), outer.central, at(a.high, b.low), why};
  return {rank_of(across.low) < rank_of(outer.low) ? across.low : outer.low, outer.central,
          rank_of(across.high) > rank_of(outer.high) ? across.high : outer.high, why};
}

}  // namespace core

// ---- arithmetic -----------------------------------------------------------------------------------------------------

template <class A, class B>
requires std::invocable<core::plus, A, B>
[[nodiscard]] constexpr auto operator+(const estimate<A>& a, const estimate<B>& b) {
  return core::combine<core::plus>(a, b);
}
template <class A, class B>
requires(!core::is_estimate<B>) && std::invocable<core::plus, A, B> [[nodiscard]] constexpr auto operator+(
                                       const estimate<A>& a, const B& b) {
  return core::combine<core::plus>(a, estimate<B>{b});
}
template <class A, class B>
requires(!core::is_estimate<A>) && std::invocable<core::plus, A, B> [[nodiscard]] constexpr auto operator+(
                                       const A& a, const estimate<B>& b) {
  return core::combine<core::plus>(estimate<A>{a}, b);
}

template <class A, class B>
requires std::invocable<core::minus, A, B>
[[nodiscard]] constexpr auto operator-(const estimate<A>& a, const estimate<B>& b) {
  return core::combine<core::minus>(a, b);
}
template <class A, class B>
requires(!core::is_estimate<B>) && std::invocable<core::minus, A, B> [[nodiscard]] constexpr auto operator-(
                                       const estimate<A>& a, const B& b) {
  return core::combine<core::minus>(a, estimate<B>{b});
}
template <class A, class B>
requires(!core::is_estimate<A>) && std::invocable<core::minus, A, B> [[nodiscard]] constexpr auto operator-(
                                       const A& a, const estimate<B>& b) {
  return core::combine<core::minus>(estimate<A>{a}, b);
}

template <class A, class B>
requires std::invocable<core::times, A, B>
[[nodiscard]] constexpr auto operator*(const estimate<A>& a, const estimate<B>& b) {
  return core::combine<core::times>(a, b);
}
template <class A, class B>
requires(!core::is_estimate<B>) && std::invocable<core::times, A, B> [[nodiscard]] constexpr auto operator*(
                                       const estimate<A>& a, const B& b) {
  return core::combine<core::times>(a, estimate<B>{b});
}
template <class A, class B>
requires(!core::is_estimate<A>) && std::invocable<core::times, A, B> [[nodiscard]] constexpr auto operator*(
                                       const A& a, const estimate<B>& b) {
  return core::combine<core::times>(estimate<A>{a}, b);
}

template <class A, class B>
requires std::invocable<core::over, A, B>
[[nodiscard]] constexpr auto operator/(const estimate<A>& a, const estimate<B>& b) {
  return core::combine<core::over>(a, b);
}
template <class A, class B>
requires(!core::is_estimate<B>) && std::invocable<core::over, A, B> [[nodiscard]] constexpr auto operator/(
                                       const estimate<A>& a, const B& b) {
  return core::combine<core::over>(a, estimate<B>{b});
}
template <class A, class B>
requires(!core::is_estimate<A>) && std::invocable<core::over, A, B> [[nodiscard]] constexpr auto operator/(
                                       const A& a, const estimate<B>& b) {
  return core::combine<core::over>(estimate<A>{a}, b);
}

/// A value that is known exactly, as an estimate without a band.
///
/// @param value any quantity that has an order
/// @return      an estimate whose three values agree
/// @throws      invalid_input for what is not a number
/// @accuracy    exact
/// @source      definition
template <class Q>
[[nodiscard]] constexpr estimate<Q> exactly(const Q& value) {
  return estimate<Q>{value};
}

/// Apply a rising function to all three values of an estimate: the reason is kept.
///
/// @param in an estimate
/// @param f  any callable on its quantity that rises
/// @return   the estimate of the result, for the same reason
/// @throws   what f throws
/// @accuracy exact
/// @source   image of an interval under a monotone function
template <class Q, class Rising>
[[nodiscard]] constexpr auto map_rising(const estimate<Q>& in, Rising f)
    -> estimate<std::remove_cvref_t<decltype(f(in.low))>> {
  return {f(in.low), f(in.central), f(in.high), in.reason};
}

/// Apply a falling function to all three values of an estimate: low and high change places.
///
/// @param in an estimate
/// @param f  any callable on its quantity that falls
/// @return   the estimate of the result, for the same reason
/// @throws   what f throws
/// @accuracy exact
/// @source   image of an interval under a monotone function
template <class Q, class Falling>
[[nodiscard]] constexpr auto map_falling(const estimate<Q>& in, Falling f)
    -> estimate<std::remove_cvref_t<decltype(f(in.low))>> {
  return {f(in.high), f(in.central), f(in.low), in.reason};
}

/// What to know before acting on a number. It is part of the result, so a front end cannot lose it by accident.
struct caution {
  std::string_view text;
};

}  // namespace tankwright
