// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/start_up.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <random>
#include <vector>

#include <boost/numeric/odeint.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const std::string simulate = "tankwright::life::simulate_start_up";
const evidence independent{simulate, kind::library,
                           "Boost.Odeint, Fehlberg 7(8) in extended precision, with extents of oxidation as variables"};
const evidence conserved{simulate, kind::identity, "nitrogen in = nitrogen there + nitrogen out"};
const evidence positive_pools{simulate, kind::property, "no pool is ever negative"};
const evidence negligible{simulate, kind::property, "what is eaten up is gone, to 1e-10 mg/L"};
const evidence more_seed{simulate, kind::property, "more seed never slows the start"};
const evidence scale_free{simulate, kind::property, "twice the tank with twice of everything is the same"};
const evidence sampling{simulate, kind::property, "the interval of the samples does not matter"};
const evidence peaks{simulate, kind::property,
                     "the peak is not below any sample, and close to the highest of fine samples"};
const evidence alkalinity{simulate, kind::identity, "alkalinity of all the nitrogen oxidised"};
const evidence ready{simulate, kind::property, "clear after the time found, not clear before"};
const evidence culture{simulate, kind::common_practice, "bottled culture once a week while the sand is new: it helps"};
const evidence together{simulate, kind::common_practice, "rock and fish move together: less ammonia than fish alone"};
const evidence order{"tankwright::life::compare_start_ups", kind::identity,
                     "the summaries of simulate_start_up, ordered"};

twl::nitrogen_load load(double grams) { return twl::nitrogen_load::from_nitrogen(grams_per_day(grams)); }
water::total_ammonia ammonia(double mg) { return water::total_ammonia::from_nitrogen(milligrams_per_litre(mg)); }
double tan_of(const twl::start_up_sample& s) { return in_milligrams_per_litre(s.ammonia.as_nitrogen()); }
double nitrite_of(const twl::start_up_sample& s) { return in_milligrams_per_litre(s.nitrite.as_nitrogen()); }
double nitrate_of(const twl::start_up_sample& s) { return in_milligrams_per_litre(s.nitrate.as_nitrogen()); }

/// 1000 L; bacteria in mg/L, so that grams are mg/L.
twl::start_up basic(double t, double tan, double cells) {
  return {.net = litres(1000.0),
          .temperature = celsius(t),
          .oxygen = milligrams_per_litre(6.5),
          .ammonia = ammonia(tan),
          .seedings = {{.when = {.at = days(0.0)}, .added = twl::bacteria{grams(cells), grams(cells)}}}};
}

/// Everything at once: feeding that grows, doses, a weekly culture, water changes.
twl::start_up eventful() {
  twl::start_up plan = basic(26.0, 1.0, 2e-3);
  plan.nitrate = twl::nitrate_level::from_nitrogen(milligrams_per_litre(5.0));
  plan.seedings.push_back({.when = {.at = days(7.0), .every = days(7.0), .times = 4},
                           .added = twl::bacteria{milligrams(20.0), milligrams(5.0)}});
  plan.loads = {{.from = days(3.3), .load = load(0.2)},
                {.from = days(20.0), .load = load(1.0)},
                {.from = days(40.0), .load = load(0.5)}};
  plan.doses = {{.when = {.at = days(0.5), .every = days(2.0), .times = 6}, .rise = ammonia(0.5)}};
  plan.water_changes = {{.when = {.at = days(10.0), .every = days(10.0), .times = 5}, .part = fraction(0.25)}};
  return plan;
}

// ---- an independent integration -------------------------------------------------------------------------------------

/// S, X_A, N, X_N, C at the times of the samples, in days and mg/L, from a plan of 1000 L. The variables are the nitrogen
/// oxidised in each step and the logarithm of the growth since the last event.
std::vector<std::array<long double, 5>> by_odeint(const twl::start_up& plan) {
  using real = long double;
  using state = std::array<real, 4>;
  namespace odeint = boost::numeric::odeint;
  const real t = real(in_celsius(plan.temperature)) - 20;
  const real oxygen = real(in_milligrams_per_litre(plan.oxygen));
  struct group {
    real mu, half, yield, decay;
  };
  const auto group_of = [&](const twl::nitrifier& g) {
    return group{real(in_per_day(g.growth)) * std::pow(real(g.growth_per_kelvin.get()), t) * oxygen /
                     (real(in_milligrams_per_litre(g.half_oxygen)) + oxygen),
                 real(in_milligrams_per_litre(g.half_nitrogen)), real(g.yield.get()),
                 real(in_per_day(g.decay)) * std::pow(real(g.decay_per_kelvin.get()), t)};
  };
  const group a = group_of(plan.ammonia_oxidisers);
  const group n = group_of(plan.nitrite_oxidisers);
  real s = real(in_milligrams_per_litre(plan.ammonia.as_nitrogen()));
  real no2 = real(in_milligrams_per_litre(plan.nitrite.as_nitrogen()));
  real no3 = real(in_milligrams_per_litre(plan.nitrate.as_nitrogen()));
  real xa = 0, xn = 0, feed = 0;

  struct event {
    double at;
    int rank;
    std::function<void()> what;
  };
  std::vector<event> events;
  const auto add = [&](const twl::schedule& when, int rank, std::function<void()> what) {
    for (int i = 0; i < when.times; ++i) events.push_back({in_days(when.at) + i * in_days(when.every), rank, what});
  };
  for (const auto& w : plan.water_changes) {
    add(w.when, 0, [&, part = real(w.part->value())] { s *= 1 - part, no2 *= 1 - part, no3 *= 1 - part; });
  }
  for (const auto& d : plan.doses) {
    add(d.when, 1, [&, rise = real(in_milligrams_per_litre(d.rise->as_nitrogen()))] { s += rise; });
  }
  for (const auto& b : plan.seedings) {
    add(b.when, 2,
        [&, ga = real(in_grams(b.added->ammonia_oxidisers)), gn = real(in_grams(b.added->nitrite_oxidisers))] {
          xa += ga, xn += gn;
        });
  }
  for (const auto& l : plan.loads) {
    add({.at = l.from}, 3, [&, grams = real(in_grams_per_day(l.load->as_nitrogen()))] { feed = grams; });
  }
  std::stable_sort(events.begin(), events.end(),
                   [](const event& x, const event& y) { return x.at != y.at ? x.at < y.at : x.rank < y.rank; });

  std::vector<std::array<real, 5>> samples;
  real now = 0;
  std::size_t next = 0;
  const auto run_until = [&](real end) {
    if (!(end > now)) return;
    state y{0, 0, 0, 0};  // oxidised to nitrite, to nitrate; logarithms of growth
    const real s0 = s, no20 = no2, xa0 = xa, xn0 = xn, start = now;
    const auto pools = [&](const state& q, real at) {
      s = s0 + feed * (at - start) - q[0];
      no2 = no20 + q[0] - q[1];
      xa = xa0 * std::exp(q[2]);
      xn = xn0 * std::exp(q[3]);
    };
    const auto rhs = [&](const state& q, state& dq, real at) {
      pools(q, at);
      const real ma = a.mu * s / (a.half + s);
      const real mn = n.mu * no2 / (n.half + no2);
      dq = {ma / a.yield * xa, mn / n.yield * xn, ma - a.decay, mn - n.decay};
    };
    static const odeint::runge_kutta_fehlberg78<state, real, state, real>
        fehlberg{};  // static: GCC sees it initialised
    odeint::integrate_adaptive(odeint::make_controlled(real(1e-15), real(1e-13), fehlberg), rhs, y, start, end,
                               real(1e-4));
    pools(y, end);
    no3 += y[1];
    now = end;
  };
  const double every = in_days(plan.every);
  const int count = static_cast<int>(in_days(plan.horizon) / every + 1e-9);
  for (int i = 0; i <= count; ++i) {
    const double stop = i * every;
    while (next < events.size() && events[next].at <= stop) {
      run_until(real(events[next].at));
      events[next++].what();
    }
    run_until(real(stop));
    samples.push_back({s, xa, no2, xn, no3});
  }
  return samples;
}

void check_against_odeint(const twl::start_up& plan) {
  const auto found = twl::simulate_start_up(plan);
  const auto expected = by_odeint(plan);
  REQUIRE(found.samples.size() == expected.size());
  // 1e-6, and a millionth of a microgram per litre where nothing is left.
  const tolerance allowed{.absolute = 1e-12, .relative = 1e-6};
  for (std::size_t i = 0; i < expected.size(); ++i) {
    const auto& s = found.samples[i];
    const auto at = [&](std::size_t pool) { return milligrams_per_litre(static_cast<double>(expected[i][pool])); };
    CAPTURE(i);
    TW_CHECK(independent, s.ammonia.as_nitrogen(), at(0), allowed);
    TW_CHECK(independent, s.nitrite.as_nitrogen(), at(2), allowed);
    TW_CHECK(independent, s.nitrate.as_nitrogen(), at(4), allowed);
    TW_CHECK(independent, s.living.ammonia_oxidisers / plan.net.get(), at(1), relative(1e-6));
    TW_CHECK(independent, s.living.nitrite_oxidisers / plan.net.get(), at(3), relative(1e-6));
  }
}

void check_ledger(const twl::start_up& plan) {
  const auto found = twl::simulate_start_up(plan);
  const auto& last = found.samples.back();
  const mass there =
      (last.ammonia.as_nitrogen() + last.nitrite.as_nitrogen() + last.nitrate.as_nitrogen()) * plan.net.get();
  TW_CHECK(conserved, there + found.summary.nitrogen_removed, found.summary.nitrogen_added, relative(1e-10));
  for (const auto& s : found.samples) {
    TW_HOLDS(positive_pools, tan_of(s) >= 0.0 && nitrite_of(s) >= 0.0 && nitrate_of(s) >= 0.0 &&
                                 s.living.ammonia_oxidisers.value() >= 0.0 &&
                                 s.living.nitrite_oxidisers.value() >= 0.0);
    TW_HOLDS(peaks, s.ammonia <= found.summary.ammonia.level && s.nitrite <= found.summary.nitrite.level);
  }
}

/// Plans with everything drawn at random, from a fixed seed.
std::vector<twl::start_up> random_plans(int count) {
  std::mt19937_64 engine{20260801};
  const auto draw = [&](double low, double high) { return std::uniform_real_distribution<double>{low, high}(engine); };
  const auto ten_to = [&](double low, double high) { return std::pow(10.0, draw(low, high)); };
  std::vector<twl::start_up> plans;
  for (int i = 0; i < count; ++i) {
    twl::start_up plan = basic(draw(18.0, 30.0), draw(0.0, 5.0), 0.0);
    plan.seedings = {{.when = {.at = days(draw(0.0, 5.0)), .every = days(draw(1.0, 9.0)), .times = 1 + i % 5},
                      .added = twl::bacteria{grams(ten_to(-4.0, 0.5)), grams(ten_to(-4.0, 0.5))}}};
    plan.loads = {{.from = days(draw(0.0, 20.0)), .load = load(ten_to(-2.0, 0.5))},
                  {.from = days(draw(20.0, 60.0)), .load = load(draw(0.0, 1.0))}};
    plan.doses = {{.when = {.at = days(draw(0.0, 9.0)), .every = days(draw(0.3, 4.0)), .times = 1 + i % 7},
                   .rise = ammonia(draw(0.0, 2.0))}};
    plan.water_changes = {{.when = {.at = days(draw(1.0, 9.0)), .every = days(draw(3.0, 9.0)), .times = 1 + i % 6},
                           .part = fraction(draw(0.0, 1.0))}};
    plan.oxygen = milligrams_per_litre(draw(0.5, 8.0));
    plans.push_back(plan);
  }
  return plans;
}

double clear_days(const twl::start_up& plan) {
  const auto clear = twl::simulate_start_up(plan).summary.clear_since;
  return clear ? in_days(*clear) : 1e9;
}

}  // namespace

TEST_CASE("start-up: reference table") {
  const auto value = [](const reference_row& row) -> double {
    auto plan = basic(row["t"], row["TAN"], row["cells"]);
    plan.oxygen = milligrams_per_litre(row["O2"]);
    const std::string give = row.text("give");
    if (give == "ammonia_clear") plan.nitrite_limit = twl::nitrite_level::from_nitrogen(milligrams_per_litre(1e6));
    const auto found = twl::simulate_start_up(plan).summary;
    if (give == "nitrite_peak") return in_milligrams_per_litre(found.nitrite.level.as_nitrogen());
    if (give == "nitrite_peak_at") return in_days(found.nitrite.at);
    return in_days(found.clear_since.value());
  };
  check_rows(reference_rows("life/start_up.csv"), {{simulate, value}});
}

TEST_CASE("start-up: against an independent integration in extended precision") {
  check_against_odeint(basic(25.0, 2.0, 1e-3));
  check_against_odeint(basic(20.0, 2.0, 1e-4));
  check_against_odeint(basic(25.0, 2.0, 10.0));  // stiff: far more bacteria than food
  check_against_odeint(basic(25.0, 0.0, 1e-3));  // nothing to eat
  check_against_odeint(eventful());
  for (const auto& plan : random_plans(12)) check_against_odeint(plan);
}

TEST_CASE("start-up: nitrogen is conserved and nothing is negative") {
  check_ledger(basic(25.0, 2.0, 1e-3));
  check_ledger(basic(25.0, 2.0, 1e3));  // far beyond any tank
  check_ledger(eventful());
  for (const auto& plan : random_plans(60)) check_ledger(plan);
  auto emptied = eventful();
  emptied.water_changes = {{.when = {.at = days(1.0), .every = days(1.0), .times = 50}, .part = fraction(1.0)}};
  check_ledger(emptied);
  auto airless = eventful();
  airless.oxygen = milligrams_per_litre(0.0);
  check_ledger(airless);
  CHECK(twl::simulate_start_up(airless).summary.nitrogen_oxidised == grams(0.0));
}

TEST_CASE("start-up: what a step leaves below zero is clipped, and not lost") {
  const auto clipped = twl::detail::positive_part({-1e-11, 0.3, 2.0, 0.1, -2e-11});
  TW_HOLDS(positive_pools, clipped[twl::detail::ammonia] == 0.0 && clipped[twl::detail::nitrate] == 0.0);
  TW_CHECK(conserved, milligrams_per_litre(clipped[twl::detail::nitrite]), milligrams_per_litre(2.0 - 3e-11),
           relative(1e-16));
  CHECK(clipped[twl::detail::ammonia_oxidisers] == 0.3);
  const auto whole = twl::detail::positive_part({1.0, 0.3, 0.0, 0.1, 3.0});
  CHECK(whole == twl::detail::pools<double>{1.0, 0.3, 0.0, 0.1, 3.0});
  // Traces of food after months of idling, when steps are weeks long.
  const twl::detail::nitrogen_cycle<double> cycle{{1.2, 0.5, 0.15, 0.0}, {1.2, 0.2, 0.05, 0.0}, 0.0};
  for (const double trace : {1e-12, 1e-10, 1e-8, 1e-6}) {
    twl::detail::start_up_run run{cycle, {1e-3, 10.0, 0.0, 10.0, 0.0}, {.limit = 0.1}, {.limit = 0.1}};
    run.run_until("tankwright::test", 300.0);
    run.state[twl::detail::ammonia] += trace;
    run.jumped();
    run.run_until("tankwright::test", 330.0);
    TW_CHECK(conserved,
             milligrams_per_litre(run.state[twl::detail::ammonia] + run.state[twl::detail::nitrite] +
                                  run.state[twl::detail::nitrate]),
             milligrams_per_litre(1e-3 + trace), relative(1e-14));
    TW_HOLDS(negligible, run.state[twl::detail::ammonia] >= 0.0 && run.state[twl::detail::ammonia] < 1e-10);
  }
}

TEST_CASE("start-up: more seed never slows the start") {
  for (const double t : {20.0, 25.0}) {
    double before_clear = 1e9;
    double before_peak = 1e9;
    for (double cells = 1e-5; cells < 20.0; cells *= 2.0) {
      auto plan = basic(t, 2.0, cells);
      const auto found = twl::simulate_start_up(plan).summary;
      const double clear = found.clear_since ? in_days(*found.clear_since) : 1e9;
      TW_HOLDS(more_seed, clear <= before_clear);
      before_clear = clear;
      plan.loads = {{.from = days(0.0), .load = load(0.4)}};
      const double peak = in_milligrams_per_litre(twl::simulate_start_up(plan).summary.ammonia.level.as_nitrogen());
      TW_HOLDS(more_seed, peak <= before_peak);
      before_peak = peak;
    }
    CHECK(before_clear < 1.0);
  }
}

TEST_CASE("start-up: what must not matter does not") {
  const auto plan = eventful();
  const auto one = twl::simulate_start_up(plan);
  auto twice = plan;
  twice.net = litres(2000.0);
  for (auto& s : twice.seedings) {
    s.added = twl::bacteria{2.0 * s.added->ammonia_oxidisers, 2.0 * s.added->nitrite_oxidisers};
  }
  for (auto& l : twice.loads) l.load = twl::nitrogen_load::from_nitrogen(2.0 * l.load->as_nitrogen());
  const auto large = twl::simulate_start_up(twice);
  auto fine = plan;
  fine.every = days(0.05);
  const auto often = twl::simulate_start_up(fine);
  auto rare = plan;
  rare.every = days(7.0);  // 60 is not a multiple of 7: the end is sampled too
  const auto seldom = twl::simulate_start_up(rare);
  CHECK(seldom.samples.back().at == days(60.0));
  CHECK(seldom.samples.size() == 10);
  const tolerance close{.absolute = 1e-12, .relative = 1e-6};
  for (std::size_t i = 0; i < one.samples.size(); ++i) {
    TW_CHECK(scale_free, large.samples[i].ammonia.as_nitrogen(), one.samples[i].ammonia.as_nitrogen(), close);
    TW_CHECK(sampling, often.samples[5 * i].nitrite.as_nitrogen(), one.samples[i].nitrite.as_nitrogen(), close);
  }
  TW_CHECK(sampling, seldom.summary.nitrite.level.as_nitrogen(), one.summary.nitrite.level.as_nitrogen(),
           relative(1e-7));
  TW_CHECK(sampling, *seldom.summary.clear_since, *one.summary.clear_since, relative(1e-6));
}

TEST_CASE("start-up: peak and the clear time against fine samples") {
  auto plan = basic(25.0, 2.0, 1e-3);
  plan.every = days(0.005);
  const auto found = twl::simulate_start_up(plan);
  const double clear = in_days(found.summary.clear_since.value());
  double highest = 0.0;
  for (const auto& s : found.samples) {
    const double at = in_days(s.at);
    highest = std::fmax(highest, nitrite_of(s));
    if (at >= clear) TW_HOLDS(ready, tan_of(s) <= 0.1 && nitrite_of(s) <= 0.1);
    if (at < clear && at > clear - 0.1) TW_HOLDS(ready, nitrite_of(s) > 0.1);
  }
  const double peak = in_milligrams_per_litre(found.summary.nitrite.level.as_nitrogen());
  TW_HOLDS(peaks, peak >= highest && peak - highest < 1e-5);
  auto unsampled = plan;
  unsampled.every = days(60.0);
  TW_CHECK(sampling, twl::simulate_start_up(unsampled).summary.nitrite.level.as_nitrogen(),
           found.summary.nitrite.level.as_nitrogen(), relative(1e-7));
  // 2 mg/L of nitrogen, two equivalents a mole.
  TW_CHECK(alkalinity, in_milliequivalents_per_litre(found.summary.alkalinity_used), 2.0 * 2.0 / 14.007,
           relative(1e-6));
  CHECK(found.summary.ammonia.at == days(0.0));
  CHECK(found.summary.ammonia.level.as_nitrogen() == milligrams_per_litre(2.0));
  // A later dose makes the water unclear again, and shows up as the highest ammonia.
  plan.doses = {{.when = {.at = days(30.0)}, .rise = ammonia(3.0)}};
  const auto dosed = twl::simulate_start_up(plan).summary;
  CHECK(in_days(dosed.ammonia.at) == 30.0);
  CHECK(in_days(*dosed.clear_since) > 30.0);
  plan.doses = {{.when = {.at = days(60.0)}, .rise = ammonia(3.0)}};
  CHECK_FALSE(twl::simulate_start_up(plan).summary.clear_since.has_value());
}

TEST_CASE("start-up: the habits of the trade come out") {
  // New sand with fish in it: a bottled culture every week.
  auto bare = basic(26.0, 0.0, 1e-4);
  bare.loads = {{.from = days(0.0), .load = load(0.3)}};
  auto cultured = bare;
  cultured.seedings.push_back({.when = {.at = days(0.0), .every = days(7.0), .times = 6},
                               .added = twl::bacteria{milligrams(5.0), milligrams(5.0)}});
  TW_HOLDS(culture, clear_days(cultured) < clear_days(bare));
  // Fish move: with half of their rock, or without.
  auto with_rock = bare;
  with_rock.seedings = {
      {.when = {.at = days(0.0)},
       .added = twl::bacteria_on({.load = load(0.3), .temperature = celsius(26.0), .share_moved = fraction(0.5)})}};
  const auto half = twl::simulate_start_up(with_rock).summary;
  TW_HOLDS(together, half.ammonia.level < ammonia(0.3));
  TW_HOLDS(together, ammonia(1.0) < twl::simulate_start_up(bare).summary.ammonia.level);
}

TEST_CASE("start-up: comparison of ways") {
  std::vector<twl::start_up> ways{basic(25.0, 2.0, 1e-3), basic(25.0, 1.0, 1e-3), basic(25.0, 3.0, 1e-3)};
  ways[0].label = "two";
  ways[1].label = "one";
  ways[2].label = "three";
  const auto ranked = twl::compare_start_ups(ways);
  REQUIRE(ranked.size() == 3);
  TW_HOLDS(order, ranked[0].label == "one" && ranked[1].label == "two" && ranked[2].label == "three");
  TW_CHECK(order, *ranked[1].clear_since, *twl::simulate_start_up(ways[0]).summary.clear_since, tolerance{});
  CHECK(ranked[0].caution.text.find("measured test") != std::string_view::npos);
  CHECK(twl::compare_start_ups({}).empty());
}

TEST_CASE("start-up: the method is of order four") {
  const twl::detail::nitrogen_cycle<long double> cycle{{1.18L, 0.5L, 0.15L, 0.2L}, {1.2L, 0.2L, 0.05L, 0.2L}, 0.4L};
  const auto with_steps = [&](int count) {
    twl::detail::pools<long double> y{2.0L, 0.05L, 0.3L, 0.02L, 0.0L};
    for (int i = 0; i < count; ++i) y = twl::detail::rosenbrock_step(cycle, y, 2.0L / count).state;
    return y;
  };
  const auto exact = with_steps(4096);
  const auto error = [&](int count) {
    const auto y = with_steps(count);
    long double worst = 0.0L;
    for (std::size_t i = 0; i < y.size(); ++i) worst = std::fmax(worst, std::fabs(y[i] - exact[i]));
    return worst;
  };
  for (const int count : {64, 128, 256}) {
    const long double fourth = std::log2(error(count) / error(2 * count));
    CHECK(fourth > 3.8L);
    CHECK(fourth < 4.3L);
  }
}

TEST_CASE("start-up: bad input says what is wrong") {
  const auto broken = [](auto change) {
    auto plan = eventful();
    plan.label = "plan B";
    change(plan);
    CHECK_THROWS_AS((void)twl::simulate_start_up(plan), invalid_input);
  };
  broken([](twl::start_up& p) { p.net = litres(0.0); });
  broken([](twl::start_up& p) { p.horizon = days(0.0); });
  broken([](twl::start_up& p) { p.horizon = days(4000.0); });
  broken([](twl::start_up& p) { p.every = days(0.0); });
  broken([](twl::start_up& p) { p.every = days(-1.0); });
  broken([](twl::start_up& p) { p.every = seconds(1.0); });  // five million samples
  broken([](twl::start_up& p) { p.oxygen = milligrams_per_litre(-1.0); });
  broken([](twl::start_up& p) { p.ammonia = ammonia(-1.0); });
  broken([](twl::start_up& p) { p.ammonia = ammonia(std::numeric_limits<double>::quiet_NaN()); });
  broken([](twl::start_up& p) { p.ammonia_limit = ammonia(0.0); });
  broken([](twl::start_up& p) { p.loads[0].load = load(-1.0); });
  broken([](twl::start_up& p) { p.loads[0].from = days(-1.0); });
  broken([](twl::start_up& p) { p.doses[0].rise = ammonia(-0.1); });
  broken([](twl::start_up& p) { p.doses[0].when.times = 0; });
  broken([](twl::start_up& p) { p.doses[0].when.every = days(0.0); });
  broken([](twl::start_up& p) { p.seedings[1].added = twl::bacteria{grams(-1.0), grams(0.0)}; });
  broken([](twl::start_up& p) { p.water_changes[0].part = fraction(1.1); });
  broken([](twl::start_up& p) { p.nitrite_oxidisers.yield = 0.0; });
  auto plan = eventful();
  plan.label = "plan B";
  plan.temperature = celsius(40.0);
  CHECK_THROWS_AS((void)twl::simulate_start_up(plan), out_of_range);
  (void)twl::simulate_start_up(plan, extrapolate);
  plan.temperature = celsius(25.0);
  plan.horizon = days(-3.0);
  CHECK_THROWS_WITH_AS((void)twl::simulate_start_up(plan),
                       "tankwright::life::simulate_start_up: plan B: horizon = -3 d is not possible; expected 0.001 to "
                       "3650 d",
                       invalid_input);
  plan = eventful();
  plan.label = "plan B";
  plan.water_changes[0].when.at = days(-1.0);
  CHECK_THROWS_WITH_AS(
      (void)twl::simulate_start_up(plan),
      "tankwright::life::simulate_start_up: plan B: time of a water change = -1 d is not possible; expected 0 "
      "to 100000 d",
      invalid_input);
}
