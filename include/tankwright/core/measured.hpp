// SPDX-License-Identifier: BSL-1.0
/// @file
/// A measured value: how well is it known? The best value, its standard uncertainty, and how the true value is spread
/// around it. What becomes of it in a formula is in `uncertainty.hpp` and `monte_carlo.hpp`.
#pragma once

#include <cmath>
#include <limits>
#include <span>

#include <tankwright/core/citation.hpp>
#include <tankwright/core/quantity_name.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright {

inline constexpr citation gum{"BIPM, IEC, IFCC, ILAC, ISO, IUPAC, IUPAP and OIML", 2008,
                              "Evaluation of measurement data: Guide to the expression of uncertainty in measurement",
                              "JCGM 100:2008; clauses 4 and 5, annex G", standing::secondary};

/// What two values of `Q` differ by: the type of an uncertainty.
template <class Q>
using step_of = typename core::step_type<Q>::type;

/// How the true value is spread around the measured one.
enum class spread {
  normal,       ///< calibration certificates, sums of many small effects
  rectangular,  ///< equally likely between two limits: tolerances, the last digit of a display
  triangular,   ///< between two limits, most likely in the middle
  arcsine,      ///< swinging between two limits: a room under a thermostat
  student,      ///< the mean of a few readings
};

/// A value with its standard uncertainty. Make it with one of the functions below.
template <class Q>
struct measured {
  required<Q> value;
  required<step_of<Q>> uncertainty;  ///< one standard deviation
  spread shape = spread::normal;
  double degrees_of_freedom = std::numeric_limits<double>::infinity();  ///< behind the uncertainty
};

namespace core {

inline constexpr limits uncertainty_limits{"uncertainty", "", {0.0, core::largest}};
inline constexpr limits measured_value_limits{"value", "", core::any_double};
inline constexpr limits degrees_of_freedom_limits{
    "degrees of freedom", "", {1.0, std::numeric_limits<double>::infinity()}};

template <class Q>
void check_measured(std::string_view function, const measured<Q>& input) {
  check(function, measured_value_limits, si_number(input.value.get()));
  check(function, uncertainty_limits, si_number(input.uncertainty.get()));
  check(function, degrees_of_freedom_limits, input.degrees_of_freedom);
}

/// A value whose limits lie `divisor` standard uncertainties away.
template <class Q>
[[nodiscard]] measured<Q> between_limits(std::string_view function, const Q& value, const step_of<Q>& half_width,
                                         double divisor, spread shape) {
  const measured<Q> result{value, from_si_number<step_of<Q>>(si_number(half_width) / divisor), shape};
  check_measured(function, result);
  return result;
}

}  // namespace core

/// A value with a standard uncertainty from a certificate or a calculation, normally spread.
///
/// @param value       the best value
/// @param uncertainty one standard deviation; an expanded uncertainty is divided by its k first
/// @return            the measured value
/// @throws            invalid_input for what is not finite, or a negative uncertainty
/// @accuracy          exact
/// @source            JCGM 100:2008, 4.3.3
template <class Q>
[[nodiscard]] measured<Q> with_uncertainty(const Q& value, const step_of<Q>& uncertainty) {
  return core::between_limits("tankwright::with_uncertainty", value, uncertainty, 1.0, spread::normal);
}

/// A value that is right to within limits, nothing more being known: "2.40 m, give or take 5 mm".
///
///   u = a / sqrt(3)
///
/// @param value      the middle of the limits
/// @param half_width a: from the middle to a limit
/// @return           the measured value, equally likely anywhere between the limits
/// @throws           invalid_input for what is not finite, or a negative width
/// @accuracy         exact
/// @source           JCGM 100:2008, 4.3.7
template <class Q>
[[nodiscard]] measured<Q> rectangular(const Q& value, const step_of<Q>& half_width) {
  return core::between_limits("tankwright::rectangular", value, half_width, std::sqrt(3.0), spread::rectangular);
}

/// A reading rounded to the divisions of a scale or to the last digit of a display.
///
///   u = d / sqrt(12)
///
/// @param value    the reading
/// @param division d: one division, or one step of the last digit
/// @return         the measured value
/// @throws         invalid_input for what is not finite, or a negative division
/// @accuracy       exact
/// @source         JCGM 100:2008, F.2.2.1
template <class Q>
[[nodiscard]] measured<Q> to_the_nearest(const Q& value, const step_of<Q>& division) {
  return core::between_limits("tankwright::to_the_nearest", value, division, std::sqrt(12.0), spread::rectangular);
}

/// A value within limits that is more likely in the middle than near them.
///
///   u = a / sqrt(6)
///
/// @param value      the middle of the limits
/// @param half_width a: from the middle to a limit
/// @return           the measured value, triangularly spread
/// @throws           invalid_input for what is not finite, or a negative width
/// @accuracy         exact
/// @source           JCGM 100:2008, 4.3.9
template <class Q>
[[nodiscard]] measured<Q> triangular(const Q& value, const step_of<Q>& half_width) {
  return core::between_limits("tankwright::triangular", value, half_width, std::sqrt(6.0), spread::triangular);
}

/// A value that swings between limits as a sine does: water under a thermostat, a room over the day.
///
///   u = a / sqrt(2)
///
/// @param value     the middle of the swing
/// @param amplitude a: from the middle to a limit
/// @return          the measured value, with the arcsine spread
/// @throws          invalid_input for what is not finite, or a negative amplitude
/// @accuracy        exact
/// @source          JCGM 101:2008, 6.4.6
template <class Q>
[[nodiscard]] measured<Q> arcsine(const Q& value, const step_of<Q>& amplitude) {
  return core::between_limits("tankwright::arcsine", value, amplitude, std::sqrt(2.0), spread::arcsine);
}

/// The mean of repeated independent readings.
///
///   u = s / sqrt(n),   s the standard deviation of the readings,   n - 1 degrees of freedom
///
/// @param readings two or more
/// @return         the mean with its standard uncertainty
/// @throws         invalid_input for fewer than two readings, or one that is not finite
/// @accuracy       1e-8 relative on the hardest certified sets of NIST StRD, where the mean is 1e8 times the scatter
/// @source         JCGM 100:2008, 4.2
template <class Q>
[[nodiscard]] measured<Q> mean_of(std::span<const Q> readings) {
  constexpr std::string_view here = "tankwright::mean_of";
  const auto count = static_cast<double>(readings.size());
  if (readings.size() < 2) core::fail<invalid_input>(here, "readings", count, "", "are too few; two at least");
  double sum = 0.0;
  for (const Q& reading : readings) {
    core::check(here, {"reading", "", core::any_double}, core::si_number(reading));
    sum += core::si_number(reading) - core::si_number(readings[0]);  // about the first, which keeps the digits
  }
  const double mean = sum / count;
  double squares = 0.0;
  double rest = 0.0;
  for (const Q& reading : readings) {
    const double difference = core::si_number(reading) - core::si_number(readings[0]) - mean;
    squares += difference * difference;
    rest += difference;
  }
  const double variance = (squares - rest * rest / count) / (count - 1.0);
  return {.value = core::from_si_number<Q>(core::si_number(readings[0]) + mean),
          .uncertainty = core::from_si_number<step_of<Q>>(std::sqrt(variance / count)),
          .shape = spread::student,
          .degrees_of_freedom = count - 1.0};
}

}  // namespace tankwright
