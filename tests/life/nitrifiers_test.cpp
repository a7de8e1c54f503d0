// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/nitrifiers.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence half_rate{"tankwright::life::net_growth", kind::identity,
                         "at N = K and without decay: half of the largest"};
const evidence grows{"tankwright::life::net_growth", kind::property, "grows with nitrogen and oxygen"};
const evidence doubling{"tankwright::life::net_growth", kind::regression,
                        "doubling time at 25 degC, computed beforehand"};
const evidence share_of_rate{"tankwright::life::slowed", kind::identity, "share of the growth rate, decay unchanged"};
const evidence steady{"tankwright::life::bacteria_on", kind::identity,
                      "they oxidise the load at the nitrogen level where growth equals decay"};

rate net(const twl::nitrifier& group, double n, double oxygen, double t,
         range_policy policy = range_policy::published) {
  return twl::net_growth(
      group, {.nitrogen = milligrams_per_litre(n), .oxygen = milligrams_per_litre(oxygen), .temperature = celsius(t)},
      policy);
}

const evidence half_moved{"tankwright::life::bacteria_on", kind::property, "half of the rock carries half of them"};

}  // namespace

TEST_CASE("nitrifiers: reference table") {
  const auto growth = [](const reference_row& row) -> double {
    twl::nitrifier group = twl::ammonia_oxidisers_2014;
    const std::string give = row.text("give");
    if (give == "theta_mu") {
      group.decay = per_day(0.0);
      return net(group, 1.0, 5.0, 21.0) / net(group, 1.0, 5.0, 20.0);
    }
    if (give == "theta_b") return net(group, 0.0, 5.0, 21.0) / net(group, 0.0, 5.0, 20.0);
    const rate found = net(group, row["N"], row["O2"], row["t"]);
    return give == "rate" ? in_per_day(found) : in_days(row["safety"] / found);
  };
  check_rows(reference_rows("life/nitrifiers.csv"), {{"tankwright::life::net_growth", growth}});
}

TEST_CASE("nitrifiers: growth") {
  twl::nitrifier undying = twl::nitrite_oxidisers_2014;
  undying.decay = per_day(0.0);
  TW_CHECK(half_rate, net(undying, 0.20, 0.90, 20.0), per_day(0.25),
           relative(1e-14));  // half for nitrogen, half for oxygen
  for (const auto* group : {&twl::ammonia_oxidisers_2014, &twl::nitrite_oxidisers_2014}) {
    for (double n = 0.0; n < 5.0; n += 0.1) {
      TW_HOLDS(grows, net(*group, n + 0.1, 6.0, 25.0) > net(*group, n, 6.0, 25.0));
      TW_HOLDS(grows, net(*group, n + 0.1, 6.1, 25.0) > net(*group, n + 0.1, 6.0, 25.0));
    }
  }
  const auto slow = twl::slowed(twl::ammonia_oxidisers_2014, fraction(0.4));
  TW_CHECK(share_of_rate, slow.growth.get(), per_day(0.36), relative(1e-14));
  CHECK(slow.decay.get() == twl::ammonia_oxidisers_2014.decay.get());
  CHECK(net(twl::ammonia_oxidisers_2014, 1.0, 0.0, 20.0) < per_day(0.0));
  TW_CHECK(doubling, std::log(2.0) / net(twl::ammonia_oxidisers_2014, 1e5, 1e5, 25.0), hours(15.4),
           within(hours(0.05)));
}

TEST_CASE("nitrifiers: bacteria on a working filter") {
  const auto load = twl::nitrogen_load::from_nitrogen(grams_per_day(4.0));
  const auto whole = twl::bacteria_on({.load = load, .temperature = celsius(26.0)});
  const auto half = twl::bacteria_on({.load = load, .temperature = celsius(26.0), .share_moved = fraction(0.5)});
  TW_CHECK(half_moved, half.ammonia_oxidisers, 0.5 * whole.ammonia_oxidisers, relative(1e-14));
  TW_CHECK(half_moved, half.nitrite_oxidisers, 0.5 * whole.nitrite_oxidisers, relative(1e-14));
  for (const auto& [group, x] : {std::pair{twl::ammonia_oxidisers_2014, whole.ammonia_oxidisers},
                                 std::pair{twl::nitrite_oxidisers_2014, whole.nitrite_oxidisers}}) {
    // Oxidation q X where growth Y q equals decay.
    const auto g = twl::detail::growth_at(group, 26.0, 6.0);
    TW_CHECK(steady, per_day(g.decay / g.yield) * x, load.as_nitrogen(), relative(1e-14));
  }
}

TEST_CASE("nitrifiers: bad input") {
  check_edges({"nitrogen", "mg/L", not_negative},
              [](double x, range_policy p) { return net(twl::ammonia_oxidisers_2014, x, 6.0, 20.0, p); });
  check_edges(twl::nitrifier_oxygen_limits,
              [](double x, range_policy p) { return net(twl::ammonia_oxidisers_2014, 1.0, x, 20.0, p); });
  check_edges(twl::nitrifier_temperature_limits,
              [](double t, range_policy p) { return net(twl::ammonia_oxidisers_2014, 1.0, 6.0, t, p); });
  twl::nitrifier broken = twl::ammonia_oxidisers_2014;
  broken.yield = 0.0;
  CHECK_THROWS_AS((void)net(broken, 1.0, 6.0, 20.0), invalid_input);
  CHECK_THROWS_AS((void)twl::slowed(broken, fraction(0.0)), invalid_input);
  CHECK_THROWS_AS((void)twl::bacteria_on(
                      {.load = twl::nitrogen_load::from_nitrogen(grams_per_day(-1.0)), .temperature = celsius(25.0)}),
                  invalid_input);
  CHECK_THROWS_AS((void)twl::bacteria_on({.load = twl::nitrogen_load::from_nitrogen(grams_per_day(1.0)),
                                          .temperature = celsius(25.0),
                                          .share_moved = fraction(1.2)}),
                  invalid_input);
}
