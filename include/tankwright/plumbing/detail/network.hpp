// SPDX-License-Identifier: BSL-1.0
/// @file
/// The solver of circuits on raw numbers; the law of friction is a parameter.
///
/// Unknown are the flow q of every link and the head H of every junction; each link obeys H_from - H_to = h(q), each
/// junction passes on what it gets. Newton's method on all of it at once (Todini and Pilati 1988): a step makes every
/// link straight and needs only the heads (`elimination`).
///
/// Every h rises with q, so there is one solution: the minimum of a convex function of the flows, the one whose slope
/// along a step d is the sum of d (h - H_from + H_to). Full steps nearly always converge; when they have not after a
/// while, the step is cut to where that slope vanishes, which converges for any convex function.
///
/// A check valve, a shut valve and the end of a pump curve are walls: beyond them h rises so steeply that the flow
/// stays on the wall to rounding.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <tankwright/plumbing/detail/curve_kernel.hpp>
#include <tankwright/plumbing/detail/elimination.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <vector>

namespace tankwright::plumbing::detail {

inline constexpr double wall_conductance = 1e-13;  // m^3/s per m, against some 1e-3 of a pipe
inline constexpr double least_resistance = 1e-3;   // m per m^3/s, so that every flow is one flow: 10 um at 10 L/s
inline constexpr double least_change = 1e-12;      // m^3/s
inline constexpr double least_flow = 1e-10;        // m^3/s, a drop in eight minutes: less is still water

/// A run of pipe or a pump, from one node to another. Nodes below `junctions` have an unknown head, those from there on
/// a fixed one.
template <class Law>
struct network_link {
  int from{};
  int to{};
  bool shut_forwards = false;   // what is shut both ways carries nothing
  bool shut_backwards = false;  // a check valve that holds, an open outlet

  typename Law::prepared pipe{};      // of a run
  double square{};                    // h/q^2, roughly
  double first_flow{};                // where to start from
  const curve_data* curve = nullptr;  // of a pump that turns
  double speed{};                     // of that
  bool is_pump = false;               // turning or not
  double forwards{}, backwards{};     // h/q^2 beyond law and curve: of a pump that stands, of a leak

  double q{};         // flow
  double q_next{};    // flow after the step
  double h{};         // where the link is made straight: head lost there; a pump's is negative
  double at{};        // ... at this flow: q, or the wall that q lies behind
  double gradient{};  // ... dq/dh there
  bool at_wall{};
  int branch = elimination::none;
  typename Law::memory memory{};
};

struct network_options {
  int iterations = 200;
  int full_steps = 8;         // before steps are cut
  double tolerance = 1e-10;   // sum of the next changes of flow, as foreseen, over the sum of the flows
  double last_change = 3e-7;  // and the sum of the last changes, seen
};

struct network_outcome {
  bool converged = false;
  int iterations{};
  std::size_t worst_link{};  // where |h(q) - (H_from - H_to)| is largest after the last step
  double worst_residual{};   // that number, m
};

template <class Law>
class network {
 public:
  using link = network_link<Law>;

  explicit network(Law law) : law_{law} {}

  std::vector<link> links{};

  [[nodiscard]] const Law& law() const noexcept { return law_; }
  [[nodiscard]] int junctions() const noexcept { return junctions_; }
  [[nodiscard]] bool is_fixed(int node) const noexcept { return node >= junctions_; }
  [[nodiscard]] double head(int node) const noexcept { return heads_.nodes[static_cast<std::size_t>(node)].head; }
  /// How many links end at a node.
  [[nodiscard]] int ends_at(int node) const noexcept { return heads_.nodes[static_cast<std::size_t>(node)].ends; }
  /// Whether a part of the circuit has no fixed head.
  [[nodiscard]] bool has_floating_part() const noexcept { return heads_.has_floating_part(); }

  /// Call first: how many junctions there are and how many fixed heads, numbered after them.
  void set_nodes(int junctions, int fixed) {
    junctions_ = junctions;
    heads_.nodes.assign(static_cast<std::size_t>(junctions + fixed), {});
  }
  void set_fixed_head(int number, double head) noexcept {
    heads_.nodes[static_cast<std::size_t>(junctions_ + number)].head = head;
  }

  /// Call once the links are there, before the first solution.
  void prepare() {
    heads_.prepare(junctions_, links);
    double most = 0.0;
    for (const auto& node : heads_.nodes) most = std::max(most, std::fabs(node.head));
    for (const link& k : links) {
      if (k.curve != nullptr) most = std::max(most, k.speed * k.speed * std::fabs(k.curve->shutoff));
    }
    noise_ = 4e-15 * most;
    slack_ = noise_ / least_resistance;
  }

  /// Solve from a cold start.
  [[nodiscard]] network_outcome solve(const network_options& options = {}) {
    start();
    network_outcome outcome;
    double change_before = 0.0;
    while (outcome.iterations < options.iterations) {
      ++outcome.iterations;
      double steepest = 0.0;
      for (link& k : links) {
        linearise(k);
        steepest = std::max(steepest, k.gradient);
      }
      solve_linear();
      const double step = outcome.iterations > options.full_steps ? step_to_minimum() : 1.0;
      double change = 0.0, total = 0.0;
      bool settled = true;
      for (link& k : links) {
        const double d = k.q_next - k.q;
        settled = settled && (k.at_wall ? !opens(k) : k.memory.settled());
        k.q += step * d;
        const double beyond_rounding = std::fabs(d) - noise_ * steepest;
        if (beyond_rounding > 0.0) change += beyond_rounding;
        total += std::fabs(k.q);
      }
      // Near the solution each change is smaller than the one before by a factor that itself falls.
      const double foreseen = change < change_before ? change * (change / change_before) : change;
      if (settled && change <= options.last_change * total + least_change &&
          foreseen <= options.tolerance * total + least_change) {
        outcome.converged = true;
        return outcome;
      }
      change_before = change;
    }
    for (std::size_t i = 0; i < links.size(); ++i) {
      link& k = links[i];
      linearise(k);  // a full step has met the line: what is left is to the curve
      const double residual = std::fabs(k.h + (k.q - k.at) / k.gradient - (head(k.from) - head(k.to)));
      if (!(residual <= outcome.worst_residual)) outcome = {false, outcome.iterations, i, residual};
    }
    return outcome;
  }

 private:
  struct line {
    double at;
    double h;
    double gradient;  // dq/dh
    bool wall;
  };
  [[nodiscard]] static line wall(double q, double h) noexcept { return {q, h, wall_conductance, true}; }

  /// What a link loses at a flow, and how steeply that rises. What stands at a wall stays there until it opens; what
  /// does not must be beyond rounding to get there.
  [[nodiscard]] line line_at(const link& k, double q, typename Law::memory& memory) const noexcept {
    if (k.at_wall && !opens(k)) return wall(k.at, k.h);
    const double size = std::fabs(q);
    double still = 0.0;  // head lost at no flow
    double lost = 0.0;   // beyond it
    double resistance = 0.0;
    if (k.curve != nullptr) {
      const double s = k.speed, end = s * k.curve->end_flow;
      still = -s * s * k.curve->shutoff;
      if (q > end + slack_) return wall(end, -s * s * k.curve->end_head);
      if (q < -slack_ && k.shut_backwards) return wall(0.0, still);
      if (q < 0.0) {
        lost = k.backwards * q * q;
        resistance = 2.0 * k.backwards * size;
      } else {
        const curve_value value = value_on_curve(*k.curve, q / s);
        lost = -s * s * value.head - still;
        resistance = -s * value.gradient;
      }
    } else {
      if (q < -slack_ ? k.shut_backwards : q > slack_ && k.shut_forwards) return wall(0.0, 0.0);
      if (!k.is_pump) {
        const auto [h, gradient] = law_(k.pipe, size, memory);
        lost = h;
        resistance = gradient;
      }
      const double more = q < 0.0 ? k.backwards : k.forwards;
      lost += more * q * q;
      resistance += 2.0 * more * size;
    }
    lost = std::max(lost, least_resistance * size);
    return {q, still + std::copysign(lost, q), 1.0 / std::max(resistance, least_resistance), false};
  }

  void linearise(link& k) const noexcept { set(k, line_at(k, k.q, k.memory)); }
  static void set(link& k, const line& l) noexcept {
    k.at = l.at;
    k.h = l.h;
    k.gradient = l.gradient;
    k.at_wall = l.wall;
  }

  /// Whether a link at a wall lets water through now: more than rounding drives it off the wall.
  [[nodiscard]] static bool opens(const link& k) noexcept {
    constexpr double more_than_rounding = wall_conductance * 1e-9;  // a nanometre of head
    const double into = k.q_next - k.at;
    if (k.at > 0.0) return into < -more_than_rounding;  // end of a curve
    if (into > more_than_rounding) return !k.shut_forwards;
    return into < -more_than_rounding && !k.shut_backwards;
  }

  /// First flows: as if every loss went with the square of the flow, from 1 m/s in the pipes and from the ends of the
  /// curves.
  void start() noexcept {
    for (link& k : links) {
      k.memory = {};
      k.at = k.h = 0.0;
      k.at_wall = k.curve == nullptr && k.shut_forwards && k.shut_backwards;
      if (k.curve != nullptr) {
        const double s = k.speed;
        k.h = -s * s * k.curve->shutoff;
        k.first_flow = s * k.curve->end_flow;
        k.square = (k.curve->shutoff - k.curve->end_head) / (k.curve->end_flow * k.curve->end_flow);
      }
      k.gradient = k.at_wall ? wall_conductance : 1.0 / std::max(k.square * k.first_flow, least_resistance);
    }
    solve_linear();
    for (int i = 0; i < 3; ++i) {
      double change = 0.0, total = 0.0;
      for (link& k : links) {
        if (k.at_wall) continue;
        change += std::fabs(k.q_next - k.at);
        total += std::fabs(k.q_next);
        const double size = std::max(std::fabs(k.q_next), 0.01 * k.first_flow);
        k.at = k.q_next;
        k.h = (k.curve != nullptr ? -k.speed * k.speed * k.curve->shutoff : 0.0) + k.square * size * k.at;
        k.gradient = 0.5 / std::max(k.square * size, least_resistance);
      }
      solve_linear();
      if (change <= 0.1 * total) break;
    }
    for (link& k : links) k.q = k.q_next;
  }

  /// Heads and `q_next` of the circuit in which every link is straight: q_next = at + (H_from - H_to - h) gradient.
  void solve_linear() noexcept {
    heads_.clear();
    for (const link& k : links) heads_.add(k, k.at - k.h * k.gradient, k.gradient);
    heads_.solve();
    for (link& k : links) k.q_next = k.at + (head(k.from) - head(k.to) - k.h) * k.gradient;
  }

  /// How far to go along the step so that the convex function falls: 1, or to where its slope vanishes.
  [[nodiscard]] double step_to_minimum() const noexcept {
    const auto slope_at = [&](double t) {
      double slope = 0.0;
      for (const link& k : links) {
        const double d = k.q_next - k.q, q = k.q + t * d;
        typename Law::memory memory = k.memory;
        const line there = line_at(k, q, memory);
        slope += d * (there.h + (q - there.at) / there.gradient - (head(k.from) - head(k.to)));
      }
      return slope;
    };
    double at_start = 0.0;
    for (const link& k : links) at_start -= (k.q_next - k.q) * (k.q_next - k.q) / k.gradient;
    const double flat = -0.1 * at_start;
    if (slope_at(1.0) <= flat) return 1.0;
    double low = 0.0, high = 1.0;
    for (int i = 0; i < 60; ++i) {
      const double middle = 0.5 * (low + high);
      const double slope = slope_at(middle);
      if (std::fabs(slope) <= flat) return middle;
      (slope < 0.0 ? low : high) = middle;
    }
    return high;  // just past a wall: the next step starts on its steep side
  }

  Law law_;
  elimination heads_{};
  int junctions_{};
  double noise_{};  // rounding of a head, m
  double slack_{};  // and of a flow: only beyond it does a wall count, m^3/s
};

}  // namespace tankwright::plumbing::detail
