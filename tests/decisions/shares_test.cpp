// SPDX-License-Identifier: BSL-1.0
// Shares against first-order indices by plain Monte Carlo: random draws of the standard library, a walker of its own.
#include <cmath>
#include <map>
#include <random>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/bottom/floor_load.hpp>
#include <tankwright/decisions/shares.hpp>

#include "decisions/asked.hpp"
#include "decisions/drawn.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence by_draws{"tankwright::decisions::shares_of", kind::identity, "first-order indices by plain random draws"};

}  // namespace

TEST_CASE("shares: the load of a floor, against variances of plain random draws") {
  plan::build build = lagoon();
  const auto judged = decisions::assess_with_doubts(build);
  const auto shares = decisions::shares_of(build, judged);
  const auto own = std::find_if(shares.begin(), shares.end(), [](const auto& s) { return s.id == "vessel.floor"; });
  REQUIRE(own != shares.end());
  REQUIRE(!own->shares.empty());
  double sum = own->together;
  for (const auto& s : own->shares) sum += s.part;
  TW_CHECK(by_draws, sum, 1.0, within(1e-12));

  drawn_plan draws{build};
  const auto margin = [&](const std::vector<double>& u, double law) {
    draws.move_to(u);
    const auto all = asked(decisions::floor_load, draws.plan());
    const auto* n = all.front().find(own->number_id, own->place);
    return moved_in_band(n->value, law);
  };
  // Pick and freeze: the covariance of two draws that share one coordinate, over the variance (Sobol 1993).
  std::mt19937_64 random{20261129};
  std::uniform_real_distribution<double> even{0.0, 1.0};
  const std::size_t count = draws.doubts().size(), number = 12000;
  std::vector<std::vector<double>> one(number, std::vector<double>(count + 1)), other = one;
  std::vector<double> first(number), second(number);
  double mean = 0.0, square = 0.0;
  for (std::size_t i = 0; i < number; ++i) {
    for (double& u : one[i]) u = even(random);
    for (double& u : other[i]) u = even(random);
    first[i] = margin(one[i], one[i].back());
    mean += first[i] / static_cast<double>(number);
  }
  for (const double x : first) square += (x - mean) * (x - mean) / static_cast<double>(number);
  int compared = 0;
  for (const auto& s : own->shares) {
    if (s.part < 0.05) continue;
    const auto named = std::find(draws.doubts().begin(), draws.doubts().end(), s.what);
    const std::size_t d = s.of_law ? count : static_cast<std::size_t>(named - draws.doubts().begin());
    REQUIRE((s.of_law || named != draws.doubts().end()));
    double covariance = 0.0;
    for (std::size_t i = 0; i < number; ++i) {
      std::vector<double> mixed = other[i];
      mixed[d] = one[i][d];
      covariance += (first[i] - mean) * (margin(mixed, mixed.back()) - mean) / static_cast<double>(number);
    }
    TW_CHECK(by_draws, s.part, covariance / square, within(0.05));  // 12,000 draws: a standard error of 0.01
    ++compared;
  }
  CHECK(compared >= 1);
}
