// SPDX-License-Identifier: BSL-1.0
/// @file
/// Heads of networks of straight links, against Gaussian elimination of the whole matrix.
#include <tankwright/plumbing/detail/elimination.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <random>
#include <utility>
#include <vector>

#include "dense_solve.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using tankwright::plumbing::detail::elimination;

namespace {

const evidence dense{"tankwright::plumbing::operating_point", kind::identity,
                     "heads of straight links by Gaussian elimination of the whole matrix, in the test"};
const evidence by_hand{"tankwright::plumbing::operating_point", kind::identity,
                       "potentials of a few resistors by hand"};

struct straight_link {
  int from, to;
  double carried = 0.0, conductance = 1.0;
  int branch = elimination::none;
};
struct graph {
  int junctions;
  std::vector<double> fixed;
  std::vector<straight_link> links;
};

void prepare(elimination& heads, graph& g) {
  heads.nodes.assign(static_cast<std::size_t>(g.junctions) + g.fixed.size(), {});
  for (std::size_t i = 0; i < g.fixed.size(); ++i) {
    heads.nodes[static_cast<std::size_t>(g.junctions) + i].head = g.fixed[i];
  }
  heads.prepare(g.junctions, g.links);
}
std::vector<double> solve(elimination& heads, const graph& g) {
  heads.clear();
  for (const auto& k : g.links) heads.add(k, k.carried, k.conductance);
  heads.solve();
  std::vector<double> h;
  for (int j = 0; j < g.junctions; ++j) h.push_back(heads.nodes[static_cast<std::size_t>(j)].head);
  return h;
}

/// The balance of every junction as a matrix, with pivots.
std::vector<double> densely(const graph& g) {
  const auto n = static_cast<std::size_t>(g.junctions);
  std::vector<std::vector<double>> a(n, std::vector<double>(n + 1, 0.0));
  for (const auto& k : g.links) {
    for (const auto& [at, other, out] : {std::tuple{k.from, k.to, 1.0}, std::tuple{k.to, k.from, -1.0}}) {
      if (at >= g.junctions) continue;
      auto& row = a[static_cast<std::size_t>(at)];
      row[static_cast<std::size_t>(at)] += k.conductance;
      row[n] -= out * k.carried;
      if (other < g.junctions) {
        row[static_cast<std::size_t>(other)] -= k.conductance;
      } else {
        row[n] += k.conductance * g.fixed[static_cast<std::size_t>(other - g.junctions)];
      }
    }
  }
  return dense_solve(std::move(a));
}

/// A tree, and more links at random: loops, links side by side, links between fixed heads.
graph random_graph(std::mt19937& numbers, int junctions, int more) {
  const auto below = [&](int n) { return static_cast<int>(numbers() % static_cast<unsigned>(n)); };
  const auto between = [&](double low, double high) {
    return low + (high - low) * static_cast<double>(numbers()) / 4294967295.0;
  };
  graph g{junctions, {between(-1.0, 5.0), between(-1.0, 5.0)}, {}};
  const auto join = [&](int a, int b) {
    if (below(2) == 0) std::swap(a, b);
    g.links.push_back({a, b, between(-2.0, 2.0), std::pow(10.0, between(-2.0, 2.0))});
  };
  join(below(junctions), junctions);
  join(below(junctions), junctions + 1);
  for (int j = 1; j < junctions; ++j) join(below(j), j);
  for (int i = 0; i < more; ++i) {
    const int a = below(junctions + 2), b = below(junctions + 2);
    if (a != b) join(a, b);
  }
  std::shuffle(g.links.begin(), g.links.end(), numbers);
  return g;
}

void check_against_dense(elimination& heads, graph& g) {
  prepare(heads, g);
  for (int again = 0; again < 2; ++again) {
    const auto h = solve(heads, g), expected = densely(g);
    for (std::size_t j = 0; j < h.size(); ++j) TW_CHECK(dense, h[j], expected[j], within(1e-9));
    TW_HOLDS(dense, !heads.has_floating_part());
    for (auto& k : g.links) k.conductance *= 1.5, k.carried -= 0.25;  // the next step has the same order
  }
}

}  // namespace

TEST_CASE("elimination: heads of trees and loops are those of the whole matrix") {
  std::mt19937 numbers{20261130};
  elimination heads;  // one for all: what stood in it before does not matter
  for (const int junctions : {1, 2, 3, 5, 9, 14}) {
    for (const int more : {0, 1, 2, 4, 8, 30}) {
      for (int i = 0; i < 4; ++i) {
        graph g = random_graph(numbers, junctions, more);
        check_against_dense(heads, g);
      }
    }
  }
  // Every junction with every other, and a ring.
  for (const int junctions : {3, 4, 7}) {
    graph all{junctions, {1.0, 3.0}, {{0, junctions}, {junctions + 1, 1, 0.3}}}, ring = all;
    for (int a = 0; a < junctions; ++a) {
      ring.links.push_back({a, (a + 1) % junctions, 0.1 * a, 1.0 + a});
      for (int b = 0; b < a; ++b) all.links.push_back({b, a, 0.1 * b, 1.0 + 0.2 * a});
    }
    check_against_dense(heads, all);
    check_against_dense(heads, ring);
  }
}

TEST_CASE("elimination: conductances twenty orders of magnitude apart lose no digits") {
  // 1 m and 0 m, through 1e-13 and 1e7, then two of 1 in a row: the current is that of the smallest.
  for (const bool loop : {false, true}) {
    graph g{3, {1.0, 0.0}, {{3, 0, 0.0, 1e-13}, {0, 1, 0.0, 1e7}, {1, 2, 0.0, 1.0}, {2, 4, 0.0, 1.0}}};
    if (loop) g.links.push_back({0, 2, 0.0, 1.0});
    elimination heads;
    prepare(heads, g);
    const auto h = solve(heads, g);
    const double between = loop ? 1.0 / (1.0 + 1.0 / (1.0 + 1e-7)) : 1.0 + 1e-7;  // resistance from 0 to 2
    const double current = 1.0 / (1e13 + between + 1.0);
    TW_CHECK(by_hand, h[0], current * (between + 1.0), relative(1e-14));
    TW_CHECK(by_hand, h[2], current, relative(1e-14));
  }
}

TEST_CASE("elimination: a part without a fixed head is said to float, and its heads are over one of its junctions") {
  // A tree of two, a ring of three and a junction alone; and a pair that is joined to 4 m.
  graph g{8, {4.0}, {{0, 1, 3.0, 2.0}, {2, 3, 0.0, 1.0}, {3, 4, 6.0, 1.0}, {4, 2, 0.0, 1.0}, {6, 7, 1.0, 2.0}, {7, 8}}};
  g.links[5].carried = 1.0;  // all of what 6 would send away comes from the fixed head
  elimination heads;
  prepare(heads, g);
  const auto h = solve(heads, g);
  TW_HOLDS(by_hand, heads.has_floating_part());
  TW_CHECK(by_hand, h[0] - h[1], -1.5, within(1e-14));  // 3 back through 2
  // 6 from 3 to 4, which comes back by two ways: 4 through the one link, 2 through the two in a row.
  TW_CHECK(by_hand, h[4] - h[3], 4.0, within(1e-14));
  TW_CHECK(by_hand, h[2] - h[3], 2.0, within(1e-14));
  TW_CHECK(by_hand, h[5], 0.0, tolerance{});
  TW_CHECK(by_hand, h[7], 3.0, within(1e-14));
  TW_CHECK(by_hand, h[6], 2.5, within(1e-14));
  // The same once joined to it.
  g.links.push_back({5, 8});
  g.links.push_back({0, 8});
  g.links.push_back({2, 8});
  prepare(heads, g);
  TW_CHECK(by_hand, solve(heads, g)[0], 4.0, within(1e-14));
  TW_HOLDS(by_hand, !heads.has_floating_part());
}

TEST_CASE("elimination: it counts the ends of links at each node, and gives links between junctions a branch") {
  graph g{3, {1.0, 2.0}, {{0, 1}, {1, 2}, {2, 0}, {3, 0}, {0, 1}, {3, 4}}};
  elimination heads;
  prepare(heads, g);
  const int ends[] = {4, 3, 2, 2, 1};
  for (std::size_t i = 0; i < 5; ++i) TW_CHECK(by_hand, heads.nodes[i].ends, ends[i], tolerance{});
  for (const std::size_t i : {0u, 1u, 2u, 4u}) TW_HOLDS(by_hand, g.links[i].branch >= 0);
  TW_HOLDS(by_hand, g.links[0].branch == g.links[4].branch);
  TW_HOLDS(by_hand, g.links[3].branch == elimination::none && g.links[5].branch == elimination::none);
  TW_HOLDS(by_hand, heads.branches.size() == 3);
}
