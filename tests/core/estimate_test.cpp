// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/estimate.hpp>

#include <cmath>
#include <limits>
#include <optional>
#include <random>
#include <type_traits>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr estimate<flow_rate> leak{litres_per_day(2.0), litres_per_day(4.0), litres_per_day(8.0), "gauge reading"};

/// A function's argument with an optional band.
struct batch {
  required<estimate<volume>> new_water;
  estimate<practical_salinity> target = practical_salinity{35.0};
};

template <class Q>
bool ordered(const estimate<Q>& e) {
  return e.low <= e.central && e.central <= e.high;
}

}  // namespace

TEST_CASE("estimate: it cannot be made upside down, whatever the order it is given in") {
  for (const auto& e : {estimate{metres(3), metres(2), metres(1)}, estimate{metres(1), metres(3), metres(2)},
                        estimate{metres(2), metres(1), metres(3)}, estimate{metres(3), metres(1), metres(2)},
                        estimate{metres(1), metres(2), metres(3)}, estimate{metres(2), metres(3), metres(1)}}) {
    CHECK(ordered(e));
    CHECK(e.low == metres(1));
    CHECK(e.high == metres(3));
  }
  // Ends swapped by rounding, the middle outside them by a last digit.
  const double up = std::nextafter(200.0, 300.0);
  const estimate<double> rounded{up, up, 200.0};
  CHECK((rounded.low == 200.0 && rounded.central == up && rounded.high == up));
  static_assert(!std::is_assignable_v<decltype((rounded.low)), double>);
  static_assert(!std::is_assignable_v<decltype((std::declval<estimate<double>&>().high)), double>);
}

TEST_CASE("estimate: the middle stays what the formula says, the band reaches out to it") {
  const estimate<double> e{1.0, 5.0, 2.0, "why"};
  CHECK((e.low == 1.0 && e.central == 5.0 && e.high == 5.0));
  CHECK(e.reason == "why");
}

TEST_CASE("estimate: what is not a number is refused, infinity is an answer") {
  const auto make = [](double low, double central, double high) { return estimate<double>{low, central, high}; };
  CHECK_THROWS_WITH_AS((void)make(no_number, 1.0, 2.0),
                       "tankwright::estimate: one of low, central and high = nan is not a number", invalid_input);
  CHECK_THROWS_AS((void)make(0.0, no_number, 2.0), invalid_input);
  CHECK_THROWS_AS((void)make(0.0, 1.0, no_number), invalid_input);
  CHECK_THROWS_AS((void)exactly(metres(no_number)), invalid_input);
  CHECK_THROWS_AS((void)exactly(practical_salinity{no_number}), invalid_input);
  CHECK_THROWS_AS((void)exactly(no_number), invalid_input);
  CHECK(estimate<duration>{hours(1.0), hours(5.0), hours(infinity)}.high == hours(infinity));
}

TEST_CASE("estimate: a plain quantity is one without a band") {
  const batch b{.new_water = litres(5000)};
  CHECK(b.new_water->is_sharp());
  CHECK(b.new_water->central == litres(5000));
  CHECK(b.target.is_sharp());
  CHECK(b.target.reason.empty());
  const evidence exact{"tankwright::exactly", kind::identity, "definition"};
  TW_CHECK(exact, exactly(metres(2.5)).low, metres(2.5), tolerance{});
  TW_CHECK(exact, exactly(metres(2.5)).high, metres(2.5), tolerance{});
  constexpr estimate<length> nothing{};
  CHECK((nothing.low == metres(0.0) && nothing.high == metres(0.0)));
}

TEST_CASE("estimate: it can be copied, assigned, and kept in vectors and optionals") {
  std::vector<estimate<length>> all;
  for (int i = 0; i < 20; ++i) all.push_back(metres(20.0 - i));
  all.insert(all.begin(), estimate<length>{metres(1), metres(2), metres(3), "a"});
  all.erase(all.begin() + 1);
  std::optional<estimate<length>> maybe;
  maybe = all.front();
  all.front() = metres(7.0);
  CHECK(maybe->high == metres(3));
  CHECK(maybe->reason == "a");
  CHECK(all.front().high == metres(7));
  all.front() = all[1];
  auto& same = all.front();
  same = all.front();
  CHECK(same.central == metres(19));
}

TEST_CASE("estimate: a rising and a falling function keep the order of the band") {
  const evidence rising{"tankwright::map_rising", kind::identity, "image of an interval under a monotone function"};
  const evidence falling{"tankwright::map_falling", kind::identity, "image of an interval under a monotone function"};

  const auto lost = map_rising(leak, [](flow_rate q) { return volume{q * days(3.0)}; });
  TW_CHECK(rising, lost.low, litres(6.0), relative(1e-15));
  TW_CHECK(rising, lost.central, litres(12.0), relative(1e-15));
  TW_CHECK(rising, lost.high, litres(24.0), relative(1e-15));
  CHECK(lost.reason == "gauge reading");

  const auto lasts = map_falling(leak, [](flow_rate q) { return duration{litres(16.0) / q}; });
  TW_CHECK(falling, lasts.low, days(2.0), relative(1e-15));
  TW_CHECK(falling, lasts.central, days(4.0), relative(1e-15));
  TW_CHECK(falling, lasts.high, days(8.0), relative(1e-15));
  CHECK(lasts.reason == "gauge reading");
  // A function that was said to rise and falls gives the band all the same.
  CHECK(ordered(map_rising(leak, [](flow_rate q) { return duration{litres(16.0) / q}; })));
}

TEST_CASE("estimate arithmetic: units come out as they do for plain quantities") {
  constexpr estimate<length> side{metres(1), metres(2), metres(4), "tape"};
  static_assert(std::is_same_v<decltype(side * metres(2.0)), estimate<area>>);
  static_assert(std::is_same_v<decltype(metres(2.0) * side), estimate<area>>);
  static_assert(std::is_same_v<decltype(side / side), estimate<double>>);
  static_assert(std::is_same_v<decltype(2.0 * side), estimate<length>>);
  static_assert(std::is_same_v<decltype(leak * days(1.0)), estimate<volume>>);
  static_assert(
      std::is_same_v<decltype(estimate<temperature>{celsius(25)} - celsius(20)), estimate<temperature_difference>>);
  static_assert(std::is_same_v<decltype(estimate<temperature>{celsius(25)} + kelvin_steps(1)), estimate<temperature>>);
  static_assert((side * metres(2.0)).high == square_metres(8.0));  // at compile time too

  CHECK((metres(8.0) / side).low == 2.0);
  CHECK((metres(8.0) / side).high == 8.0);
  CHECK((-side).low == metres(-4));
  CHECK((-side).high == metres(-1));
  CHECK((-3.0 * side).low == metres(-12));
  CHECK((-3.0 * side).central == metres(-6));
  estimate<length> sum = side;
  sum += metres(1);
  sum -= estimate<length>{metres(0), metres(1), metres(1), "edge"};
  sum *= 2.0;
  sum /= 4.0;
  CHECK((sum.low == metres(0.5) && sum.central == metres(1.0) && sum.high == metres(2.5)));
}

TEST_CASE("estimate arithmetic: the band holds every combination of what is inside, and no more") {
  std::mt19937_64 random{20260801};
  MESSAGE("seed 20260801");
  std::uniform_real_distribution<double> number{-3.0, 3.0}, part{0.0, 1.0};
  for (int round = 0; round < 2000; ++round) {
    const estimate<double> a{number(random), number(random), number(random)};
    const estimate<double> b{number(random), number(random), number(random)};
    const bool divides = b.low > 0.0 || b.high < 0.0;
    const estimate<double> sum = a + b, difference = a - b, product = a * b;
    const estimate<double> quotient = divides ? a / b : estimate<double>{};
    if (!divides) CHECK_THROWS_AS((void)(a / b), invalid_input);
    bool holds = ordered(sum) && ordered(difference) && ordered(product) && ordered(quotient);
    const auto within = [](const estimate<double>& e, double x) {
      const double slack = 1e-14 * (1.0 + std::fabs(x));
      return e.low - slack <= x && x <= e.high + slack;
    };
    for (int draw = 0; draw < 20; ++draw) {
      const double x = std::lerp(a.low, a.high, part(random)), y = std::lerp(b.low, b.high, part(random));
      holds = holds && within(sum, x + y) && within(difference, x - y) && within(product, x * y);
      if (divides) holds = holds && within(quotient, x / y);
    }
    CHECK(holds);
    CHECK(sum.central == a.central + b.central);
    CHECK(product.central == a.central * b.central);
    // The ends are reached by a pair of ends.
    const double low = std::fmin(std::fmin(a.low * b.low, a.low * b.high), std::fmin(a.high * b.low, a.high * b.high));
    CHECK(product.low == std::fmin(low, product.central));
  }
}

TEST_CASE("estimate arithmetic: the reason is that of the wider band") {
  const estimate<length> narrow{metres(1.9), metres(2.0), metres(2.1), "tape"};
  const estimate<length> wide{metres(10), metres(20), metres(30), "guess"};
  CHECK((narrow + wide).reason == "guess");
  CHECK((wide - narrow).reason == "guess");
  CHECK((narrow + metres(5)).reason == "tape");
  CHECK((metres(5) * narrow).reason == "tape");
  // Products by shares: 0.2 of 2 against 1 of 100.
  CHECK((narrow * estimate<length>{metres(99.5), metres(100), metres(100.5), "laser"}).reason == "tape");
}

TEST_CASE("estimate arithmetic: a divisor that may be zero is refused") {
  const estimate<double> across{-1.0, 0.5, 1.0};
  CHECK_THROWS_WITH_AS((void)(2.0 / across),
                       "tankwright::estimate: divisor = -1 to 1 includes zero, so the quotient has no band",
                       invalid_input);
  CHECK_THROWS_AS((void)(across / 0.0), invalid_input);
  const estimate<length> from_nothing{metres(0), metres(1), metres(2)};
  CHECK_THROWS_AS((void)(metres(1.0) / from_nothing), invalid_input);
  CHECK_THROWS_AS((void)(estimate<double>{0.0} * estimate<double>{infinity}), invalid_input);
}
