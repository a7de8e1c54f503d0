// SPDX-License-Identifier: BSL-1.0
#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <random>
#include <tankwright/vessel/leak_parts.hpp>
#include <vector>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

/// A straight fall [mm/d], read every six hours for `lasting` days, with normal scatter [mm].
vs::leak_test falling(const std::string& label, double area, double fall, double lasting, double scatter,
                      std::mt19937_64& random) {
  vs::leak_test test{
      .surface = square_metres(area), .depth = metres(0.5), .resolution = micrometres(0.1), .label = label};
  std::normal_distribution<double> noise{0.0, 1.0};
  for (int i = 0; i <= 4 * lasting; ++i) {
    test.readings.push_back(
        {.at = days(i / 4.0), .level = millimetres(500.0 - fall * i / 4.0 + scatter * noise(random))});
  }
  return test;
}

estimate<proportion> part(double low, double central, double high) {
  return {fraction(low), fraction(central), fraction(high), "given"};
}

}  // namespace

TEST_CASE("leak of parts: the sum of all, and which of them") {
  std::mt19937_64 random{1};
  const std::vector<vs::leak_test> tests{falling("display", 2.0, 0.0, 3, 0.05, random),
                                         falling("sump", 0.6, 2.0, 3, 0.05, random),
                                         falling("left return", 0.002, 0.0, 3, 0.05, random)};
  const auto all = vs::read_leak_tests(tests);
  const evidence sum{"tankwright::vessel::read_leak_tests", kind::identity,
                     "sum of the parts, Welch-Satterthwaite by hand with Boost.Math"};
  double leak = 0.0, squares = 0.0, fourths = 0.0;
  for (const auto& t : tests) {
    const auto one = vs::read_leak_test(t);
    leak += one.leak.central.value();
    const double u = t.surface->value() * (one.fall.high - one.fall.central).value();
    squares += u * u;
    fourths += u * u * u * u / static_cast<double>(one.degrees_of_freedom);
  }
  const boost::math::students_t t{squares * squares / fourths};
  TW_CHECK(sum, all.total.central, flow_rate::from_value(leak), relative(1e-12));
  TW_CHECK(sum, all.total.high, flow_rate::from_value(leak + quantile(t, 0.95) * std::sqrt(squares)), relative(1e-9));
  REQUIRE(all.parts.size() == 3);
  CHECK(all.parts[1].label == "sump");
  CHECK(all.parts[1].result.answer == vs::leak_answer::proven);
  CHECK(all.parts[0].result.answer != vs::leak_answer::proven);
  CHECK(all.answer == vs::leak_answer::proven);
  CHECK_FALSE(all.caution.text.empty());
  // The limits of three parts hold together: 95 % means 98.33 % each.
  const boost::math::students_t t11{11.0};
  const auto alone = vs::read_leak_test(tests[0]);
  TW_CHECK(sum, all.parts[0].result.leak_fall.high - all.parts[0].result.leak_fall.central,
           velocity::from_value(quantile(t11, 1.0 - 0.05 / 3.0) * alone.standard_error.value()), relative(1e-9));
}

TEST_CASE("leak of parts: of four tight parts none is called leaking in 95 tests of 100") {
  std::mt19937_64 random{20261130};
  int alarms = 0;
  constexpr int tests = 4000;
  for (int i = 0; i < tests; ++i) {
    std::vector<vs::leak_test> parts;
    for (const double area : {2.0, 0.5, 0.3, 0.01}) parts.push_back(falling("part", area, 0.0, 3, 0.2, random));
    bool any = false;
    for (const auto& part : vs::read_leak_tests(parts).parts)
      any = any || part.result.answer == vs::leak_answer::proven;
    alarms += any;
  }
  // Bonferroni is exact to its second order: 1 - (1 - 0.05/4)^4.
  TW_CHECK((evidence{"tankwright::vessel::read_leak_tests", kind::identity,
                     "chance of a false alarm in any of four independent parts, 4000 simulated"}),
           static_cast<double>(alarms) / tests, 1.0 - std::pow(1.0 - 0.05 / 4.0, 4), tolerance({.absolute = 0.01}));
}

TEST_CASE("leak of parts: the evaporation of all parts errs together") {
  std::mt19937_64 random{2};
  auto one = falling("a", 1.0, 2.0, 3, 0.0, random);
  one.evaporation = {millimetres_per_day(1.0), millimetres_per_day(2.0), millimetres_per_day(3.0), "guess"};
  const auto alone = vs::read_leak_tests(std::vector{one});
  auto half = one;
  half.surface = square_metres(0.5);
  const auto halves = vs::read_leak_tests(std::vector{half, half});
  const boost::math::students_t t11{11.0}, t22{22.0};  // of 13 readings, and twice 13
  TW_CHECK((evidence{"tankwright::vessel::read_leak_tests", kind::property, "a tank cut in two knows no more"}),
           (halves.total.high - halves.total.central) * quantile(t11, 0.95) / quantile(t22, 0.95),
           alone.total.high - alone.total.central, relative(1e-6));
}

TEST_CASE("cover on and off: leak and evaporation come apart") {
  std::mt19937_64 random{3};
  const evidence equations{"tankwright::vessel::compare_covered", kind::identity, "two equations with known answer"};
  // 0.7 mm/d of leak, 3 mm/d of evaporation, a tenth of it through the cover.
  const auto covered = falling("covered", 2.0, 0.7 + 0.1 * 3.0, 3, 0.0, random);
  const auto open = falling("open", 2.0, 0.7 + 3.0, 3, 0.0, random);
  const auto tenth = part(0.1, 0.1, 0.1);
  const auto exact = vs::compare_covered({.covered = covered, .open = open, .let_through = tenth});
  TW_CHECK(equations, exact.leak.central, litres_per_day(1.4), relative(1e-9));
  TW_CHECK(equations, exact.evaporation.central, millimetres_per_day(3.0), relative(1e-9));
  CHECK(exact.answer == vs::leak_answer::proven);
  // What is not known of the cover: 0 to 0.2 moves the leak by E/(1 - f) u_f = 3/0.9 * 0.2/sqrt(12).
  const auto unsure = vs::compare_covered({.covered = covered, .open = open, .let_through = part(0.0, 0.1, 0.2)});
  TW_CHECK(equations, unsure.evaporation.high - unsure.evaporation.central,
           millimetres_per_day(3.0 / 0.9 * 0.2 / std::sqrt(12.0)), relative(1e-3));
  CHECK(unsure.leak.low < exact.leak.low);
  // A cover that lets nothing through: the leak is the fall under it.
  const auto tight = vs::compare_covered({.covered = covered, .open = open, .let_through = part(0.0, 0.0, 0.0)});
  TW_CHECK(equations, tight.leak.central, litres_per_day(2.0), relative(1e-9));
  CHECK_FALSE(tight.caution.text.empty());

  auto with_pan = covered;
  with_pan.evaporation = {velocity{}, velocity{}, velocity{}, ""};
  CHECK_THROWS_AS((void)vs::compare_covered({.covered = with_pan, .open = open, .let_through = tenth}), invalid_input);
  auto other = open;
  other.surface = square_metres(3.0);
  CHECK_THROWS_AS((void)vs::compare_covered({.covered = covered, .open = other, .let_through = tenth}), invalid_input);
}

TEST_CASE("cover on and off: the limits hold as often as they say") {
  std::mt19937_64 random{5};
  constexpr int tests = 8000;
  int alarms = 0;
  for (int i = 0; i < tests; ++i) {
    const auto covered = falling("covered", 1.0, 0.1 * 3.0, 2, 0.3, random);
    const auto open = falling("open", 1.0, 3.0, 2, 0.3, random);
    alarms +=
        vs::compare_covered({.covered = covered, .open = open, .let_through = part(0.1, 0.1, 0.1)}).leak.low.value() >
        0.0;
  }
  TW_CHECK((evidence{"tankwright::vessel::compare_covered", kind::identity,
                     "the definition of confidence, 8000 simulated pairs of tests"}),
           static_cast<double>(alarms) / tests, 0.05, tolerance({.absolute = 0.01}));
}

TEST_CASE("a drip as litres a day") {
  const evidence drops{"tankwright::vessel::drip_rate", kind::identity, "drops times volume over time, by hand"};
  const auto one = vs::drip_rate({.drops = 20, .over = minutes(1.0)});
  TW_CHECK(drops, one.leak.central, litres_per_day(1.44), relative(1e-12));  // 1 mL a minute
  TW_CHECK(drops, one.leak.low, litres_per_day(19 * 0.03 * 1.44), relative(1e-12));
  TW_CHECK(drops, one.leak.high, litres_per_day(21 * 0.10 * 1.44), relative(1e-12));
  CHECK(vs::drip_rate({.drops = 1, .over = hours(1.0)}).leak.low.value() == 0.0);
  CHECK_FALSE(one.caution.text.empty());
  // What surface tension holds (Tate's law, two thirds of 2 pi r gamma fall): tips and edges of 1.0 to 3.5 mm radius
  // give drops from 0.03 to 0.1 mL.
  const auto tate = [](double r) { return 2.0 / 3.0 * 2.0 * 3.14159265 * r * 0.0728 / (998.0 * 9.80665); };
  const evidence held{"tankwright::vessel::drip_rate", kind::identity, "Tate's law with two thirds falling"};
  TW_HOLDS(held, tate(0.0010) < 1.05 * in_cubic_metres(vs::water_drop.low));
  TW_HOLDS(held, tate(0.0016) > 0.9 * in_cubic_metres(vs::water_drop.central));
  TW_HOLDS(held, tate(0.0035) > in_cubic_metres(vs::water_drop.high));
  for (const int bad : {0, -3, 100001}) {
    CHECK_THROWS_AS((void)vs::drip_rate({.drops = bad, .over = minutes(1.0)}), invalid_input);
  }
  check_edges({"time", "s", {1.0, 3.2e8}},
              [](double t, range_policy) { return vs::drip_rate({.drops = 3, .over = seconds(t)}); });
}

TEST_CASE("leak of parts: both limits of the total, and the chance that a tight part looks like this") {
  std::mt19937_64 random{8};
  const std::vector<vs::leak_test> tests{falling("display", 2.0, 0.0, 3, 0.05, random),
                                         falling("sump", 0.6, 0.08, 3, 0.05, random),
                                         falling("return", 0.4, -0.2, 3, 0.05, random)};
  const auto all = vs::read_leak_tests(tests);
  const evidence total{"tankwright::vessel::read_leak_tests", kind::property, "a limit as far on either side"};
  TW_CHECK(total, all.total.central - all.total.low, all.total.high - all.total.central, relative(1e-12));
  // Bonferroni: as many times as likely as there are parts, certain at most.
  const evidence chance{"tankwright::vessel::read_leak_tests", kind::identity, "Bonferroni's inequality, Boost.Math"};
  const boost::math::students_t t{11.0};
  int certain = 0;
  for (std::size_t i = 0; i < tests.size(); ++i) {
    const auto one = vs::read_leak_test(tests[i]);
    const double alone = cdf(complement(t, one.leak_fall.central.value() / one.standard_error.value()));
    certain += 3 * alone > 1;
    TW_CHECK(chance, all.parts[i].chance_without_leak, fraction(std::fmin(3 * alone, 1.0)), relative(1e-8));
  }
  CHECK(certain > 0);
  CHECK(certain < 3);
}

TEST_CASE("leak of parts: what is refused is named by function and part") {
  std::mt19937_64 random{9};
  const auto said = [](auto call) {
    try {
      (void)call();
    } catch (const invalid_input& e) {
      const std::string text = e.what(), start = "tankwright::vessel::";
      return text.starts_with(start) ? text.substr(start.size()) : text;
    }
    return std::string{"accepted"};
  };
  const auto part_of_many = [&](std::size_t count, double confidence) {
    auto one = falling("sump", 0.6, 2.0, 1, 0.05, random);
    one.confidence = fraction(confidence);
    return said([&] { return vs::read_leak_tests(std::vector<vs::leak_test>(count, one)); });
  };
  CHECK(part_of_many(0, 0.95) == "read_leak_tests: number of parts = 0 is not possible; expected 1 to 100");
  CHECK(part_of_many(101, 0.95) == "read_leak_tests: number of parts = 101 is not possible; expected 1 to 100");
  CHECK(part_of_many(1, 0.95) == "accepted");
  CHECK(part_of_many(100, 0.95) == "accepted");
  // The confidence of all of them, though each part alone would be held to a higher one.
  CHECK(part_of_many(2, 0.4).starts_with("read_leak_tests: sump: confidence = 0.4 is not possible"));

  const auto covered = falling("covered", 2.0, 1.0, 3, 0.05, random), open = falling("open", 2.0, 3.0, 3, 0.05, random);
  const auto pair = [&](const vs::leak_test& a, const vs::leak_test& b) {
    return said([&] { return vs::compare_covered({.covered = a, .open = b, .let_through = part(0.1, 0.1, 0.1)}); });
  };
  auto dried = open;
  dried.evaporation = estimate<velocity>{millimetres_per_day(1.0)};
  CHECK(pair(covered, dried).starts_with("compare_covered: open has its evaporation given or a pan"));
  auto begun = covered;  // a pan in the first reading alone
  begun.readings[0].pan = metres(0.1);
  CHECK(pair(begun, open).starts_with("compare_covered: covered has its evaporation given or a pan"));
  auto wider = open;
  wider.surface = square_metres(2.1);
  CHECK(pair(covered, wider).starts_with("compare_covered: open has another surface than the covered test"));
}
