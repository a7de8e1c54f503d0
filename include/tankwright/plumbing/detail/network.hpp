// SPDX-License-Identifier: BSL-1.0
/// @file
/// The solver of tree-shaped circuits on raw numbers; the law of friction is a parameter.
///
/// Unknown are the flow q of every link and the head H of every junction; each link obeys H_from - H_to = h(q), each
/// junction passes on what it gets. Newton's method on all of it at once (Todini and Pilati 1988): a step needs only
/// the heads, which solve a system shaped like the tree, so leaves are eliminated towards a root and nothing fills in.
/// The cost of a step is linear in the number of links.
///
/// Every h rises with q, so the solution is the minimum of a convex function of the flows: the one whose slope along a
/// step d is the sum of d (h - H_from + H_to). Full steps nearly always converge; when they have not after a while, the
/// step is cut to where that slope vanishes, which converges for any convex function.
///
/// A check valve, a shut valve and the end of a pump curve are walls: beyond them h rises by `steep`, so steeply that
/// the flow stays on the wall to rounding.
#pragma once

#include <cmath>
#include <cstddef>
#include <tankwright/plumbing/detail/curve_kernel.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <vector>

namespace tankwright::plumbing::detail {

inline constexpr double steep = 1e13;             // m per m^3/s, against some 1e3 of a pipe
inline constexpr double least_resistance = 1e-2;  // keeps a resting link without length from dividing by zero
inline constexpr double least_change = 1e-12;     // m^3/s, 4 microlitres an hour

/// A pump (with its check valve) or a run of pipe, from one node to another. Nodes below `junctions` have an unknown
/// head, those from there on a fixed one.
template <class Law>
struct network_link {
  int from = 0;
  int to = 0;
  const curve_data* curve = nullptr;  // of a pump; null for a run
  double speed = 1.0;                 // of a pump
  run_numbers<double> run{};
  bool one_way = false;  // a run that water can only leave: into an open outlet
  typename Law::prepared prepared{};

  double q = 0.0;       // flow
  double at = 0.0;      // where the link is made straight: q, or the wall that q lies behind
  double h = 0.0;       // head lost there; a pump's is negative
  double r = 0.0;       // dh/dq there
  double q_next = 0.0;  // flow after the step
};

struct network_options {
  int iterations = 100;
  int full_steps = 8;         // before steps are cut
  double tolerance = 1e-10;   // sum of the next changes of flow, as foreseen, over the sum of the flows
  double last_change = 3e-8;  // and the sum of the last changes, seen
};

struct network_outcome {
  bool converged = false;
  int iterations = 0;
  std::size_t worst_link = 0;   // where |h - (H_from - H_to)| was largest in the last step
  double worst_residual = 0.0;  // that number, m
};

template <class Law>
class network {
 public:
  using link = network_link<Law>;
  static constexpr int none = -1;

  explicit network(Law law) : law_{law} {}

  std::vector<link> links{};
  std::vector<double> fixed_heads{};

  [[nodiscard]] int junctions() const noexcept { return junctions_; }
  [[nodiscard]] const Law& law() const noexcept { return law_; }
  [[nodiscard]] bool is_fixed(int node) const noexcept { return node >= junctions_; }
  [[nodiscard]] double head(int node) const noexcept {
    return is_fixed(node) ? fixed_heads[static_cast<std::size_t>(node - junctions_)]
                          : nodes_[static_cast<std::size_t>(node)].head;
  }
  /// Which connected part a junction belongs to, counted from 0.
  [[nodiscard]] int component(int junction) const noexcept {
    return nodes_[static_cast<std::size_t>(junction)].component;
  }

  /// Order the junctions from roots to leaves. Returns a link that closes a loop, or `none`.
  [[nodiscard]] int build_tree(int junctions) {
    junctions_ = junctions;
    const auto n = static_cast<std::size_t>(junctions);
    nodes_.assign(n, {});
    std::vector<int> first(n + 1, 0), around(2 * links.size());  // links between junctions, by junction
    for (const link& k : links) {
      if (is_fixed(k.from) || is_fixed(k.to)) continue;
      ++first[static_cast<std::size_t>(k.from)];
      ++first[static_cast<std::size_t>(k.to)];
    }
    int total = 0;
    for (int& at : first) total += at, at = total;  // one past the end; filled backwards
    for (std::size_t i = 0; i < links.size(); ++i) {
      if (is_fixed(links[i].from) || is_fixed(links[i].to)) continue;
      for (const int node : {links[i].from, links[i].to}) {
        around[static_cast<std::size_t>(--first[static_cast<std::size_t>(node)])] = static_cast<int>(i);
      }
    }
    order_.clear();
    order_.reserve(n);
    int component = 0;
    for (std::size_t root = 0; root < n; ++root) {
      if (nodes_[root].component != none) continue;
      nodes_[root].component = component;
      nodes_[root].parent = nodes_[root].link_to_parent = none;
      order_.push_back(static_cast<int>(root));
      for (std::size_t at = order_.size() - 1; at < order_.size(); ++at) {
        const int here = order_[at];
        const auto h = static_cast<std::size_t>(here);
        for (int i = first[h]; i < (h + 1 < n ? first[h + 1] : total); ++i) {
          const int index = around[static_cast<std::size_t>(i)];
          if (index == nodes_[h].link_to_parent) continue;
          const link& k = links[static_cast<std::size_t>(index)];
          const int there = k.from == here ? k.to : k.from;
          tree_node& next = nodes_[static_cast<std::size_t>(there)];
          if (next.component != none) return index;
          next.component = component;
          next.parent = here;
          next.link_to_parent = index;
          order_.push_back(there);
        }
      }
      ++component;
    }
    return none;
  }

  /// Solve from a cold start. Needs a tree in which every part touches a fixed head.
  [[nodiscard]] network_outcome solve(const network_options& options = {}) {
    start();
    network_outcome outcome;
    double change_before = 0.0;
    for (outcome.iterations = 1; outcome.iterations <= options.iterations; ++outcome.iterations) {
      for (link& k : links) straighten(k, k.q);
      solve_linear();
      const double step = outcome.iterations > options.full_steps ? step_to_minimum() : 1.0;
      double change = 0.0, total = 0.0;
      bool leaves_a_wall = false;
      for (link& k : links) {
        const double d = k.q_next - k.q;
        if (k.r == steep) leaves_a_wall |= !behind_wall(k, k.q_next);
        k.q += step * d;
        change += std::fabs(d);
        total += std::fabs(k.q);
      }
      // Near the solution each change is smaller than the one before by a factor that itself falls.
      const double foreseen = change < change_before ? change * (change / change_before) : change;
      if (!leaves_a_wall && change <= options.last_change * total + least_change &&
          foreseen <= options.tolerance * total + least_change) {
        outcome.converged = true;
        return outcome;
      }
      change_before = change;
    }
    --outcome.iterations;
    for (std::size_t i = 0; i < links.size(); ++i) {
      const link& k = links[i];
      const double residual = std::fabs(k.h + k.r * (k.q - k.at) - (head(k.from) - head(k.to)));
      if (!(residual <= outcome.worst_residual)) outcome = {false, outcome.iterations, i, residual};
    }
    return outcome;
  }

 private:
  /// A junction seen from its parent: what its part of the tree gives is a - e H.
  struct tree_node {
    double a = 0.0;
    double e = 0.0;
    double share = 0.0;  // of a change of the parent's head that arrives here
    double head = 0.0;
    int parent = none;
    int link_to_parent = none;
    int component = none;
  };

  /// Whether a flow lies where the link does not let water through.
  [[nodiscard]] static bool behind_wall(const link& k, double q) noexcept {
    if (k.curve != nullptr) return q < 0.0 || q > k.speed * k.curve->end_flow;
    return k.run.closed || (k.one_way && q < 0.0);
  }

  /// Make a link straight at a flow: the head it loses is h + r (q - at).
  void straighten(link& k, double q) const noexcept {
    k.at = q;
    if (k.curve != nullptr) {
      const double s = k.speed;
      const double end = s * k.curve->end_flow;
      if (q < 0.0) {
        set_wall(k, 0.0, -s * s * k.curve->shutoff);
      } else if (q > end) {
        set_wall(k, end, -s * s * k.curve->end_head);
      } else {
        const curve_value value = value_on_curve(*k.curve, q / s);
        k.h = -s * s * value.head;
        k.r = -s * value.slope;
      }
    } else if (k.run.closed || (k.one_way && q < 0.0)) {
      set_wall(k, 0.0, 0.0);
    } else {
      const auto [h, slope] = law_(k.prepared, std::fabs(q));
      k.h = std::copysign(h, q);
      k.r = slope;
    }
    if (k.r < least_resistance) k.r = least_resistance;
  }
  static void set_wall(link& k, double q, double h) noexcept {
    k.at = q;
    k.h = h;
    k.r = steep;
  }

  /// First flows: every run resists as at 1 m/s with a friction factor of 0.025, every pump curve is a straight line.
  void start() {
    for (link& k : links) {
      k.q = k.at = k.h = 0.0;
      if (k.curve != nullptr) {
        k.h = -k.speed * k.speed * k.curve->shutoff;
        k.r = k.speed * (k.curve->shutoff - k.curve->end_head) / k.curve->end_flow;
      } else {
        const double d = k.run.d;
        k.r = k.run.closed ? steep : (0.025 * k.run.l / d + k.run.k) / (15.4 * d * d);  // V/(2 g A) at 1 m/s
        if (k.r < least_resistance) k.r = least_resistance;
      }
    }
    solve_linear();
    for (link& k : links) k.q = k.q_next;
  }

  /// Heads and `q_next` of the circuit in which every link is straight: q_next = at + (H_from - H_to - h)/r.
  void solve_linear() {
    for (tree_node& node : nodes_) node.a = node.e = 0.0;
    for (const link& k : links) {
      const bool from_fixed = is_fixed(k.from);
      if (from_fixed == is_fixed(k.to)) continue;
      const double sign = from_fixed ? 1.0 : -1.0;  // of a flow into the junction
      tree_node& node = nodes_[static_cast<std::size_t>(from_fixed ? k.to : k.from)];
      const double e = 1.0 / k.r;
      node.a += sign * k.at + (head(from_fixed ? k.from : k.to) - sign * k.h) * e;
      node.e += e;
    }
    // Towards the root. With a* = a + sign at, the link to the parent carries
    // sign at + (e (H_parent - sign h) - a*)/(1 + e r) into the junction.
    for (std::size_t i = order_.size(); i-- > 0;) {
      tree_node& node = nodes_[static_cast<std::size_t>(order_[i])];
      if (node.parent == none) continue;
      const link& k = links[static_cast<std::size_t>(node.link_to_parent)];
      const double sign = k.to == order_[i] ? 1.0 : -1.0;
      node.a += sign * k.at;
      node.share = 1.0 / (1.0 + node.e * k.r);
      tree_node& parent = nodes_[static_cast<std::size_t>(node.parent)];
      parent.a += (node.a + node.e * sign * k.h) * node.share - sign * k.at;
      parent.e += node.e * node.share;
    }
    for (const int index : order_) {
      tree_node& node = nodes_[static_cast<std::size_t>(index)];
      if (node.parent == none) {
        node.head = node.a / node.e;
        continue;
      }
      link& k = links[static_cast<std::size_t>(node.link_to_parent)];
      const double sign = k.to == index ? 1.0 : -1.0;
      const double before = nodes_[static_cast<std::size_t>(node.parent)].head - sign * k.h;
      const double change = (node.e * before - node.a) * node.share;
      k.q_next = k.at + sign * change;
      node.head = node.e * k.r > 1.0 ? (node.a + change) / node.e : before - change * k.r;
    }
    // Behind a wall the sign of the flow decides what comes next, so it is taken from the heads.
    for (link& k : links) {
      if (is_fixed(k.from) || is_fixed(k.to) || k.r == steep) {
        k.q_next = k.at + (head(k.from) - head(k.to) - k.h) / k.r;
      }
    }
  }

  /// How far to go along the step so that the convex function falls: 1, or to where its slope vanishes.
  [[nodiscard]] double step_to_minimum() {
    const auto slope_at = [&](double t) {
      double slope = 0.0;
      for (const link& k : links) {
        const double d = k.q_next - k.q;
        link there = k;
        straighten(there, k.q + t * d);
        slope += d * (there.h + there.r * (k.q + t * d - there.at) - (head(k.from) - head(k.to)));
      }
      return slope;
    };
    double at_start = 0.0;
    for (const link& k : links) at_start -= (k.q_next - k.q) * (k.q_next - k.q) * k.r;
    const double small = -0.1 * at_start;
    if (slope_at(1.0) <= small) return 1.0;
    double low = 0.0, high = 1.0;
    for (int i = 0; i < 60; ++i) {
      const double middle = 0.5 * (low + high);
      const double slope = slope_at(middle);
      if (std::fabs(slope) <= small) return middle;
      (slope < 0.0 ? low : high) = middle;
    }
    return high;  // just past a wall: the next step starts on its steep side
  }

  Law law_;
  std::vector<tree_node> nodes_{};
  std::vector<int> order_{};
  int junctions_ = 0;
};

}  // namespace tankwright::plumbing::detail
