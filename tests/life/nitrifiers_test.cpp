// SPDX-License-Identifier: BSL-1.0
#include <cmath>

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

TEST_CASE("nitrifiers: net growth and bacteria against the formulas, written a second time") {
  const evidence again{"tankwright::life::net_growth", kind::identity, "Monod growth less decay, by hand"};
  const evidence carried{"tankwright::life::bacteria_on", kind::identity, "X = Y P/b, by hand"};
  const twl::nitrifier group{.growth = per_day(0.8),
                             .half_nitrogen = milligrams_per_litre(0.7),
                             .yield = 0.2,
                             .decay = per_day(0.11),
                             .half_oxygen = milligrams_per_litre(0.6),
                             .growth_per_kelvin = 1.08,
                             .decay_per_kelvin = 1.03};
  for (const double t : {8.0, 20.0, 31.0}) {
    for (const double n : {0.0, 0.1, 3.0}) {
      for (const double oxygen : {0.0, 0.5, 7.0}) {
        const double mu = 0.8 * std::pow(1.08, t - 20.0) * n / (0.7 + n) * oxygen / (0.6 + oxygen);
        TW_CHECK(again, net(group, n, oxygen, t), per_day(mu - 0.11 * std::pow(1.03, t - 20.0)),
                 (tolerance{.absolute = 1e-20, .relative = 1e-11}));
      }
    }
    const auto on = twl::bacteria_on({.load = twl::nitrogen_load::from_nitrogen(grams_per_day(2.0)),
                                      .temperature = celsius(t),
                                      .share_moved = fraction(0.3),
                                      .ammonia_oxidisers = group,
                                      .nitrite_oxidisers = twl::nitrite_oxidisers_2014});
    TW_CHECK(carried, on.ammonia_oxidisers, grams(0.3 * 2.0 * 0.2 / (0.11 * std::pow(1.03, t - 20.0))),
             relative(1e-12));
    // 0.05 and 0.17/d at 1.029 a kelvin: Metcalf & Eddy 2014.
    TW_CHECK(carried, on.nitrite_oxidisers, grams(0.3 * 2.0 * 0.05 / (0.17 * std::pow(1.029, t - 20.0))),
             relative(1e-12));
  }
  // What half-oxygen of zero leaves is a breath where there is oxygen, and none where there is not.
  auto anywhere = group;
  anywhere.half_oxygen = milligrams_per_litre(0.0);
  TW_CHECK(again, net(anywhere, 0.7, 0.0, 20.0), per_day(-0.11), relative(1e-12));
  TW_CHECK(again, net(anywhere, 0.7, 1e-6, 20.0), per_day(0.4 - 0.11), relative(1e-12));
  const twl::working_filter unsaid{.load = twl::nitrogen_load::from_nitrogen(grams_per_day(2.0)),
                                   .temperature = celsius(20.0)};
  // 0.15 x 2/0.17 and 0.05 x 2/0.17 g, all of it moved.
  TW_CHECK(carried, twl::bacteria_on(unsaid).ammonia_oxidisers, grams(0.3 / 0.17), relative(1e-12));
  TW_CHECK(carried, twl::bacteria_on(unsaid).nitrite_oxidisers, grams(0.1 / 0.17), relative(1e-12));
}

TEST_CASE("nitrifiers: what is taken and what is refused") {
  const auto change_growth = [](auto& g, double x) { g.growth = per_day(x); };
  const auto change_half = [](auto& g, double x) { g.half_nitrogen = milligrams_per_litre(x); };
  const auto change_yield = [](auto& g, double x) { g.yield = x; };
  const auto change_decay = [](auto& g, double x) { g.decay = per_day(x); };
  const auto change_oxygen = [](auto& g, double x) { g.half_oxygen = milligrams_per_litre(x); };
  const auto change_warm = [](auto& g, double x) { g.growth_per_kelvin = x; };
  const auto change_decay_warm = [](auto& g, double x) { g.decay_per_kelvin = x; };
  const auto changed = [](auto change, double x) {
    twl::nitrifier group = twl::ammonia_oxidisers_2014;
    change(group, x);
    return group;
  };
  const auto growth = [&](auto change, double x) { return net(changed(change, x), 1.0, 6.0, 20.0); };
  check_ranges("life::net_growth",
               {TW_RANGE("bacteria: growth", 1e-6, 1e3, growth(change_growth, x)),
                TW_RANGE("bacteria: half-saturation of nitrogen", 1e-6, 1e6, growth(change_half, x)),
                TW_RANGE("bacteria: yield", 1e-6, 10.0, growth(change_yield, x)),
                TW_RANGE("bacteria: decay", 0.0, 1e3, growth(change_decay, x)),
                TW_RANGE("bacteria: half-saturation of oxygen", 0.0, 1e6, growth(change_oxygen, x)),
                TW_RANGE("bacteria: growth per kelvin", 0.5, 2.0, growth(change_warm, x)),
                TW_RANGE("bacteria: decay per kelvin", 0.5, 2.0, growth(change_decay_warm, x)),
                TW_RANGE("nitrogen", 0.0, 1e6, net(twl::ammonia_oxidisers_2014, x, 6.0, 20.0)),
                TW_RANGE("oxygen", 0.0, 1e6, net(twl::ammonia_oxidisers_2014, 1.0, x, 20.0)),
                TW_RANGE("temperature", 5.0, 35.0, net(twl::ammonia_oxidisers_2014, 1.0, 6.0, x))});
  check_ranges(
      "life::slowed",
      {TW_RANGE("bacteria: yield", 1e-6, 10.0, twl::slowed(changed(change_yield, x), fraction(0.5))),
       TW_RANGE("share of the growth rate", 1e-6, 1.0, twl::slowed(twl::ammonia_oxidisers_2014, fraction(x)))});
  const auto on = [](double grams_a_day, double t, double moved, const twl::nitrifier& a, const twl::nitrifier& n) {
    return twl::bacteria_on({.load = twl::nitrogen_load::from_nitrogen(grams_per_day(grams_a_day)),
                             .temperature = celsius(t),
                             .share_moved = fraction(moved),
                             .ammonia_oxidisers = a,
                             .nitrite_oxidisers = n});
  };
  const auto& a = twl::ammonia_oxidisers_2014;
  const auto& n = twl::nitrite_oxidisers_2014;
  check_ranges("life::bacteria_on",
               {TW_RANGE("nitrogen load", 0.0, 1e9, on(x, 20.0, 1.0, a, n)),
                TW_RANGE("temperature", 5.0, 35.0, on(1.0, x, 1.0, a, n)),
                TW_RANGE("share moved", 0.0, 1.0, on(1.0, 20.0, x, a, n)),
                TW_RANGE("ammonia oxidisers: yield", 1e-6, 10.0, on(1.0, 20.0, 1.0, changed(change_yield, x), n)),
                TW_RANGE("nitrite oxidisers: yield", 1e-6, 10.0, on(1.0, 20.0, 1.0, a, changed(change_yield, x))),
                TW_RANGE("ammonia oxidisers: decay", 1e-6, 1e3, on(1.0, 20.0, 1.0, changed(change_decay, x), n)),
                TW_RANGE("nitrite oxidisers: decay", 1e-6, 1e3, on(1.0, 20.0, 1.0, a, changed(change_decay, x)))});
}
