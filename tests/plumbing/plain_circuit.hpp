// SPDX-License-Identifier: BSL-1.0
/// @file
/// Random circuits of any shape, and an independent model of them: the plain equations as they stand in textbooks,
/// solved for the heads (the library solves for flows) with a dense matrix, derivatives by differences and a line
/// search on the convex function whose minimum the heads are.
#pragma once

#define BOOST_MATH_DISABLE_FLOAT128  // it would need another library at link time
#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <functional>
#include <random>
#include <string>
#include <vector>

#include "circuits.hpp"
#include "dense_solve.hpp"

namespace tankwright::testing {

/// A link that loses `loss(q)` between `least` and `most`, and lets no more through than that.
struct plain_link {
  int from = 0, to = 0;
  std::function<double(double)> loss{};
  double least = -1.0, most = 1.0;

  [[nodiscard]] double flow(double drop) const {
    if (drop <= loss(least)) return least;
    if (drop >= loss(most)) return most;
    // In the signed root of the flow, where a quadratic loss is all but straight.
    const auto excess = [&](double x) { return loss(x * std::fabs(x)) - drop; };
    const auto root = [](double q) { return std::copysign(std::sqrt(std::fabs(q)), q); };
    std::uintmax_t steps = 100;
    const auto within = [](double a, double b) { return std::fabs(b - a) <= 1e-15 * std::fabs(a + b) + 1e-17; };
    const auto [a, b] = boost::math::tools::toms748_solve(excess, root(least), root(most), within, steps);
    const double x = 0.5 * (a + b);
    return x * std::fabs(x);
  }
};

/// Nodes below `junctions` have unknown heads; `fixed` are those of the others.
struct plain_circuit {
  int junctions = 0;
  std::vector<double> fixed{};
  std::vector<plain_link> links{};
  std::vector<double> heads{};

  [[nodiscard]] double head(int node) const {
    return node < junctions ? heads[static_cast<std::size_t>(node)] : fixed[static_cast<std::size_t>(node - junctions)];
  }
  [[nodiscard]] double flow(std::size_t link) const {
    return links[link].flow(head(links[link].from) - head(links[link].to));
  }
  /// What flows into each junction.
  [[nodiscard]] std::vector<double> surplus() const {
    std::vector<double> sum(static_cast<std::size_t>(junctions), 0.0);
    for (std::size_t i = 0; i < links.size(); ++i) {
      const double q = flow(i);
      if (links[i].from < junctions) sum[static_cast<std::size_t>(links[i].from)] -= q;
      if (links[i].to < junctions) sum[static_cast<std::size_t>(links[i].to)] += q;
    }
    return sum;
  }
  [[nodiscard]] double worst_surplus() const {
    double worst = 0.0;
    for (const double s : surplus()) worst = std::max(worst, std::fabs(s));
    return worst;
  }

  /// Newton's method on the heads; each step goes to where the surplus along it vanishes.
  void solve() {
    const auto n = static_cast<std::size_t>(junctions);
    double mean = 0.0;
    for (const double h : fixed) mean += h / static_cast<double>(fixed.size());
    heads.assign(n, mean);
    for (int step = 0; step < 80; ++step) {
      const std::vector<double> at = surplus();
      if (worst_surplus() < 1e-13) return;
      std::vector<std::vector<double>> a(n, std::vector<double>(n + 1, 0.0));
      for (const plain_link& k : links) {
        const double drop = head(k.from) - head(k.to), small = 1e-6 * std::max(1.0, std::fabs(drop));
        const double e = std::max(1e-13, (k.flow(drop + small) - k.flow(drop - small)) / (2.0 * small));
        const auto f = static_cast<std::size_t>(k.from), t = static_cast<std::size_t>(k.to);
        if (k.from < junctions) a[f][f] += e;
        if (k.to < junctions) a[t][t] += e;
        if (k.from < junctions && k.to < junctions) a[f][t] -= e, a[t][f] -= e;
      }
      for (std::size_t i = 0; i < n; ++i) a[i][i] = a[i][i] * (1.0 + 1e-12) + 1e-14, a[i][n] = at[i];
      const std::vector<double> d = dense_solve(std::move(a));
      double size = 0.0;
      for (const double x : d) size = std::max(size, std::fabs(x));
      const std::vector<double> before = heads;
      const auto along = [&](double t) {
        for (std::size_t i = 0; i < n; ++i) heads[i] = before[i] + t * d[i];
        const std::vector<double> s = surplus();
        double sum = 0.0;
        for (std::size_t i = 0; i < n; ++i) sum += s[i] * d[i];
        return sum;
      };
      double low = 0.0, high = size > 20.0 ? 20.0 / size : 1.0;  // no step beyond 20 m
      if (along(high) < 0.0) {
        for (int i = 0; i < 40; ++i) {
          const double t = 0.5 * (low + high);
          (along(t) > 0.0 ? low : high) = t;
        }
        (void)along(low > 0.0 ? low : high);
      }
    }
  }
};

/// Darcy-Weisbach with Colebrook-White, 64/Re below 2000, between 2000 and 4000 the cubic that meets both.
inline double plain_friction(double re, double e) {
  const auto rough = [&](double r) {
    double x = 7.0;  // Newton's method on x + 2 log10(e/3.7 + 2.51 x/Re) = 0
    for (int i = 0; i < 5; ++i) {
      const double y = e / 3.7 + 2.51 * x / r;
      x -= (x + 2.0 * std::log10(y)) / (1.0 + 2.0 / std::log(10.0) * 2.51 / r / y);
    }
    return 1.0 / (x * x);
  };
  if (re <= 2000.0) return 64.0 / re;
  if (re >= 4000.0) return rough(re);
  const double f0 = 0.032, f1 = rough(4000.0), w = 2000.0;
  const double m0 = -64.0 / (2000.0 * 2000.0) * w, m1 = (rough(4000.04) - rough(3999.96)) / 0.08 * w;
  const double t = (re - 2000.0) / w;
  return f0 * (1 + 2 * t) * (1 - t) * (1 - t) + m0 * t * (1 - t) * (1 - t) + f1 * t * t * (3 - 2 * t) +
         m1 * t * t * (t - 1);
}

/// A random circuit as the library takes it, and as the plain equations.
struct random_circuit {
  plumbing::circuit given{};
  plain_circuit plain{};  // links in the order pumps, runs; fixed nodes in the order sources, outlets
};

struct random_shape {
  int most_junctions = 8;
  int most_extra_runs = 6;  // beyond a tree
  bool curious = true;      // dead ends, parts on their own, shut valves, idle pumps, leaks, odd exponents
};

inline random_circuit make_random_circuit(std::mt19937& numbers, const random_shape& shape) {
  using namespace plumbing;
  const auto below = [&](int n) { return static_cast<int>(numbers() % static_cast<unsigned>(n)); };
  const auto between = [&](double low, double high) {
    return low + (high - low) * static_cast<double>(numbers()) / 4294967295.0;
  };
  constexpr double g = 9.80665, nu = 1.022e-6, pi = 3.141592653589793;
  random_circuit c;
  const int junctions = 1 + below(shape.most_junctions);
  c.plain.junctions = junctions;
  const int sources = 1 + below(2), outlets = 1 + below(4);
  std::vector<std::string> names;
  for (int i = 0; i < junctions; ++i) names.push_back(numbered("J", i));
  std::vector<bool> open;
  for (int i = 0; i < sources; ++i) {
    const double level = between(-0.5, 0.5);
    names.push_back(numbered("S", i));
    c.given.sources.push_back({.label = names.back(), .level = metres(level)});
    c.plain.fixed.push_back(level);
  }
  for (int i = 0; i < outlets; ++i) {
    const double level = between(-0.5, 5.0);
    names.push_back(numbered("T", i));
    open.push_back(below(2) == 0);
    c.given.outlets.push_back(outlet(names.back(), level, open.back()));
    c.given.outlets.back().exit = known_loss(below(2) == 0 ? 0.0 : 1.0);
    c.plain.fixed.push_back(level);
  }
  const auto is_outlet = [&](int node) { return node >= junctions + sources; };
  const auto place = [&](int node) { return static_cast<std::size_t>(node - junctions - sources); };

  // Pumps first, as the library numbers them.
  const int pumps = 1 + below(3);
  for (int i = 0; i < pumps; ++i) {
    const bool booster = shape.curious && below(3) == 0 && junctions > 1;
    const int from = booster ? below(junctions) : junctions + below(sources);
    int to = below(junctions);
    if (to == from) to = (to + 1) % junctions;
    const double h0 = between(1.0, 9.0), q2 = between(2.0, 20.0) / 3600.0, h2 = between(0.05, 0.3) * h0;
    const bool odd = shape.curious && below(4) == 0;
    const double q1 = 0.55 * q2, h1 = odd ? h0 - (h0 - h2) * std::pow(0.55, between(0.3, 1.0))  // exponent below 1
                                          : between(0.75, 0.9) * h0;
    const double speed = shape.curious && below(6) == 0 ? 0.0 : below(2) == 0 ? 1.0 : between(0.4, 1.2);
    const int valve = below(3);  // none, holds, leaks
    const double leak = between(0.05, 3.0);
    circuit_pump pump{
        .label = numbered("P", i),
        .from = names[static_cast<std::size_t>(from)],
        .to = names[static_cast<std::size_t>(to)],
        .curve = curve_from_three_points({.label = numbered("P", i),
                                          .shutoff_head = metres(h0),
                                          .middle = {.flow = cubic_metres_per_second(q1), .head = metres(h1)},
                                          .last = {.flow = cubic_metres_per_second(q2), .head = metres(h2)}}),
        .speed = speed_ratio{speed}};
    if (valve == 1) pump.check_valve = check_valve{};
    if (valve == 2) pump.check_valve = check_valve{.leak = flow_coefficient::from_kv(leak)};
    c.given.pumps.push_back(pump);

    const double power = std::log((h0 - h2) / (h0 - h1)) / std::log(q2 / q1), b = (h0 - h1) / std::pow(q1, power);
    double best = std::pow(h0 / ((power + 1.0) * b), 1.0 / power);  // where q (h0 - b q^c) is largest
    best = std::min(best, q2);
    const double square = (h0 - b * std::pow(best, power)) / (best * best);
    const double forwards = 0.35 * square;
    double backwards = (speed > 0.0 ? 0.69 : 1.3) * square;
    if (valve == 2) backwards += 100.0 / (g * leak * leak / 3600.0 / 3600.0);
    plain_link link{.from = from, .to = to};
    link.loss = [=](double q) {
      if (q < 0.0) return -speed * speed * h0 - backwards * q * q;
      if (speed == 0.0) return forwards * q * q;
      return -speed * speed * (h0 - b * std::pow(q / speed, power));
    };
    if (valve == 1) link.least = 0.0;
    if (speed > 0.0) link.most = speed * q2;
    c.plain.links.push_back(link);
  }

  const auto add_run = [&](int from, int to) {
    const double length = below(6) == 0 ? 0.0 : between(0.0, 5.0), bore = between(12.0, 60.0);
    const double k = between(0.1, 10.0), e = below(3) == 0 ? between(0.0, 0.2e-3) : 1.5e-6;
    const std::string label = numbered("R", static_cast<int>(c.given.runs.size()));
    pipe_run one =
        run(label, names[static_cast<std::size_t>(from)], names[static_cast<std::size_t>(to)], length, bore, k);
    one.roughness = metres(e);
    const double d = bore / 1000.0, area = pi / 4 * d * d;
    const double per_k = 1.0 / (2.0 * g * area * area);
    double forwards = k, backwards = k;
    plain_link link{.from = from, .to = to};
    const double exit_from = is_outlet(from) ? c.given.outlets[place(from)].exit.central.value() : 0.0;
    const double exit_to = is_outlet(to) ? c.given.outlets[place(to)].exit.central.value() : 0.0;
    if (is_outlet(from) && is_outlet(to)) {
      forwards += exit_to, backwards += exit_from;
    } else {
      forwards += exit_from + exit_to, backwards += exit_from + exit_to;
    }
    if (is_outlet(from) && open[place(from)]) link.most = 0.0;
    if (is_outlet(to) && open[place(to)]) link.least = 0.0;
    const int valve = shape.curious ? below(8) : 7;
    if (valve == 0) one.check_valve = check_valve{}, link.least = 0.0;
    if (valve == 1) {
      const double kv = between(0.02, 2.0);
      one.check_valve = check_valve{.leak = flow_coefficient::from_kv(kv)};
      backwards += 100.0 / (g * kv * kv / 3600.0 / 3600.0) / per_k;
    }
    if (valve == 2 && below(2) == 0) {
      one.valve = flow_coefficient::from_kv(0.0);
      link.least = link.most = 0.0;
    } else if (valve == 2) {
      one.valve = flow_coefficient::from_kv(3.0);
      const double more = 100.0 / (g * 9.0 / 3600.0 / 3600.0) / per_k;
      forwards += more, backwards += more;
    }
    link.loss = [=](double q) {
      if (q == 0.0) return 0.0;
      const double v = std::fabs(q) / area;
      const double sum = plain_friction(v * d / nu, e / d) * length / d + (q > 0.0 ? forwards : backwards);
      return std::copysign(sum * v * v / (2.0 * g), q);
    };
    c.given.runs.push_back(one);
    c.plain.links.push_back(link);
  };
  for (int i = 1; i < junctions; ++i) {
    if (shape.curious && below(10) == 0) continue;  // a part on its own, perhaps
    add_run(below(i), i);
  }
  for (int i = 0; i < outlets; ++i) {
    if (!shape.curious || below(12) != 0) add_run(below(junctions), junctions + sources + i);
  }
  const int nodes = junctions + sources + outlets;
  for (int extra = below(shape.most_extra_runs + 1); extra > 0; --extra) {
    const int from = below(shape.curious ? nodes : junctions), to = below(shape.curious ? nodes : junctions);
    if (from != to) add_run(from, to);
  }
  return c;
}

}  // namespace tankwright::testing
