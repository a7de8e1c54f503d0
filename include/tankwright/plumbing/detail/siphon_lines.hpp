// SPDX-License-Identifier: BSL-1.0
/// @file
/// What runs back through the returns when the pump stands: each through its own pipe, together through those they
/// share, until their openings draw air and their columns fall.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include <tankwright/plumbing/power_cut_system.hpp>

namespace tankwright::plumbing::detail {

/// Below it a flow is none: 0.36 L/h, a drop a second.
inline constexpr double still_flow = 1e-7;

/// The pipes that water runs back through, as a forest: returns are its leaves, shared pipes its inner nodes.
///
/// All running returns draw from one surface and end in another, so pipes in a row add up their resistances r and pipes
/// side by side their conductances 1/sqrt(r): the flow is closed but for the friction factors, which are those of the
/// last flow, within 0.3 % of it.
class siphon_lines {
 public:
  siphon_lines(std::string_view here, const power_cut_input& in) : here_{here} {
    const colebrook_law<double> law = law_for(in.water);
    const std::size_t leaves = in.returns.size();
    nodes_.reserve(leaves + in.shared_pipes.size());
    for (const return_line& r : in.returns) {
      node n;
      n.label = &r.label;
      n.depth = opening_of(r, in.breaks_blocked);
      n.known = r.pipe.has_value();
      if (r.pipe) add_pipe(n, *r.pipe, r.check_valve, in, law);
      nodes_.push_back(n);
    }
    add_shared(in, law);
    leaves_ = leaves;
    for (node& n : nodes_) {
      if (n.parent == none) n.run.minor += n.per_velocity_head;  // the exit
    }
    for (std::size_t i = 0; i < leaves_; ++i) {
      for (std::size_t j = i; j != none; j = nodes_[j].parent) nodes_[i].held = nodes_[i].held || nodes_[j].shut;
    }
    for (std::size_t i = leaves_; i < nodes_.size(); ++i) {  // a shared pipe that no running return leads to
      nodes_[i].held = true;
      for (std::size_t k = 0; k < leaves_; ++k) nodes_[i].held = nodes_[i].held && (nodes_[k].held || !passes(k, i));
    }
  }

  /// Let the siphons start: all openings that lie under the surface, `over` above the edge, run; the others' columns
  /// fall. Openings are `deeper` than given, and the surface stands `height` above the sump's water.
  void start(double over, double deeper, double height) {
    for (std::size_t i = 0; i < leaves_; ++i) {
      node& n = nodes_[i];
      n.depth += deeper;
      n.runs = !n.held && n.depth > -over;
      if (!n.runs) continue;
      if (!n.known) core::refuse_element(here_, *n.label, "has no pipe: how fast it siphons back is not known");
    }
    for (int i = 0; i < 8; ++i) (void)flow(height);  // friction factors
    for (std::size_t i = 0; i < leaves_; ++i) {
      if (!nodes_[i].runs && !nodes_[i].held) let_fall(i, height - over + std::fmax(0.0, -nodes_[i].depth));
    }
  }

  /// Flow of all siphons together under a height between both surfaces.
  double flow(double height) noexcept {
    if (height <= 0.0) return 0.0;
    for (node& n : nodes_) n.sum = 0.0;
    for (std::size_t i = 0; i < nodes_.size(); ++i) {  // from the leaves down
      node& n = nodes_[i];
      n.resistance = n.run.friction * n.factor + n.run.minor;
      const double resistance = std::fmax(n.resistance, 1e-9);
      if (i < leaves_)
        n.conductance = n.runs ? 1.0 / std::sqrt(resistance) : 0.0;
      else  // of no conductance before it: none, as one over infinitely much
        n.conductance = 1.0 / std::sqrt(1.0 / (n.sum * n.sum) + resistance);
      if (n.parent != none) nodes_[n.parent].sum += n.conductance;
    }
    double total = 0.0;
    for (std::size_t i = nodes_.size(); i-- > 0;) {  // and back up
      node& n = nodes_[i];
      const double head = n.parent == none ? height : nodes_[n.parent].left;
      const double q = n.conductance * std::sqrt(head);
      n.left = std::fmax(0.0, head - n.resistance * q * q);
      if (!(std::fabs(q - n.factor_of) <= 0.003 * q)) {
        n.factor = friction_factor(std::fmax(n.run.re_per_flow * q, 1.0), n.run.e).f;
        n.factor_of = q;
      }
      if (n.parent == none) total += q;
    }
    return total > still_flow ? total : 0.0;
  }

  /// The opening that draws air next, as a depth below the edge; minus infinity when none runs.
  [[nodiscard]] double next_opening() const noexcept {
    double depth = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < leaves_; ++i) {
      if (nodes_[i].runs && nodes_[i].depth < depth) depth = nodes_[i].depth;
    }
    return depth < std::numeric_limits<double>::infinity() ? depth : -depth;
  }
  /// The deepest opening of those that may run.
  [[nodiscard]] double deepest_opening() const noexcept {
    double depth = -core::largest;
    for (std::size_t i = 0; i < leaves_; ++i) {
      if (!nodes_[i].held && nodes_[i].depth > depth) depth = nodes_[i].depth;
    }
    return depth;
  }
  /// The openings at this depth draw air: their columns fall.
  void draw_air(double depth, double height) {
    for (std::size_t i = 0; i < leaves_; ++i) {
      if (nodes_[i].runs && nodes_[i].depth <= depth) {
        nodes_[i].runs = false;
        let_fall(i, height);
      }
    }
  }

  /// What the columns of pipes that have drawn air bring in a time: q = q0 sqrt(V/V0), which ends.
  [[nodiscard]] double falls_in(double time) const noexcept {
    double sum = 0.0;
    for (const column& c : columns_) {
      const double after = std::fmax(0.0, c.part - 0.5 * c.flow * time / c.water);
      sum += c.water * (c.part * c.part - after * after);
    }
    return sum;
  }
  void fall(double time) noexcept {
    for (column& c : columns_) c.part = std::fmax(0.0, c.part - 0.5 * c.flow * time / c.water);
  }
  /// All returns that run, and columns that fall, as if they fell now from a height: their flow, and the water V for
  /// which the flow goes at most with the root of what is left of it: (sum q)^2 / sum(q^2/V).
  struct falling_columns {
    double flow, water;
  };
  [[nodiscard]] falling_columns columns_at(double height) const noexcept {
    double sum = 0.0, squares = 0.0;
    const auto add = [&](double flow, double water) {
      sum += flow;
      squares += flow * flow / water;  // without water: infinite, and none counts
    };
    for (const column& c : columns_) {
      if (c.part > 0.0) add(c.flow * c.part, c.water * c.part * c.part);
    }
    for (std::size_t i = 0; i < leaves_; ++i) {
      if (!nodes_[i].runs) continue;
      add(flow_of_column(i, height), nodes_[i].water);
    }
    return {sum, sum > 0.0 ? sum * sum / squares : 0.0};
  }
  /// What is still in the columns.
  [[nodiscard]] double falling() const noexcept {
    double sum = 0.0;
    for (const column& c : columns_) sum += c.water * c.part * c.part;
    return sum;
  }
  [[nodiscard]] double falling_flow() const noexcept {
    double sum = 0.0;
    for (const column& c : columns_) sum += c.flow * c.part;
    return sum;
  }
  /// Contents of all pipes that can empty, and of those that have not yet begun to.
  [[nodiscard]] double contents_of_all() const noexcept {
    double sum = 0.0;
    for (const node& n : nodes_) sum += n.held ? 0.0 : n.water;
    return sum;
  }
  [[nodiscard]] double standing() const noexcept {
    double sum = 0.0;
    for (const node& n : nodes_) sum += n.held || n.fallen ? 0.0 : n.water;
    return sum;
  }

 private:
  static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
  struct node {
    const std::string* label = nullptr;
    darcy_run<double> run{};
    double per_velocity_head{};
    double depth{}, water{};
    double factor = 0.02, factor_of{};                  // of friction, and the flow it belongs to
    double resistance{}, sum{}, conductance{}, left{};  // of the last flow
    std::size_t parent = none;
    bool known{}, shut{};  // shut: by a valve, or by a check valve that holds
    bool held{}, runs{}, fallen{};
  };
  struct column {
    double water, flow, part;  // part: the root of what is left over what there was
  };

  static void add_pipe(node& n, const pipe_run& pipe, bool check_valve, const power_cut_input& in,
                       const colebrook_law<double>& law) {
    run_numbers<double> numbers = numbers_of("tankwright::plumbing::power_cut", pipe);
    if (check_valve && in.check_valves == check_valve_state::leak) {
      const double open = 0.6 * in.check_valve_leak.value();  // a hole in a wall
      numbers.k += 1.0 / (open * open);
    }
    n.shut = numbers.closed || (check_valve && in.check_valves == check_valve_state::hold);
    n.run = law.prepare(numbers);
    const double area = circle(numbers.d);
    n.per_velocity_head = 0.5 / (law.g * area * area);
    n.water = contents(pipe);
  }

  /// Equal pipes side by side: each has its part of the flow.
  static void lay_side_by_side(node& n, double pipes) {
    n.run.friction /= pipes * pipes;
    n.run.minor /= pipes * pipes;
    n.run.re_per_flow /= pipes;
    n.per_velocity_head /= pipes * pipes;
    n.water *= pipes;
  }

  /// Shared pipes, those of few returns first: each takes up what its returns lead to so far.
  void add_shared(const power_cut_input& in, const colebrook_law<double>& law) {
    const std::size_t leaves = in.returns.size();
    std::vector<std::size_t> order(in.shared_pipes.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    const auto count = [&](std::size_t i) {
      const auto& names = in.shared_pipes[i].returns;
      return names.empty() ? leaves : names.size();
    };
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return count(a) < count(b); });
    for (const std::size_t s : order) {
      const shared_pipe& shared = in.shared_pipes[s];
      const std::size_t at = nodes_.size();
      node n;
      n.label = &shared.pipe.label;
      add_pipe(n, shared.pipe, shared.check_valve, in, law);
      lay_side_by_side(n, shared.side_by_side);
      nodes_.push_back(n);
      for (std::size_t i = 0; i < leaves; ++i) {
        if (!is_shared_by(shared, in.returns[i].label)) continue;
        std::size_t last = i;
        while (nodes_[last].parent != none) last = nodes_[last].parent;
        if (last != at) nodes_[last].parent = at;
      }
    }
  }

  [[nodiscard]] bool passes(std::size_t leaf, std::size_t pipe) const noexcept {
    for (std::size_t j = leaf; j != none; j = nodes_[j].parent) {
      if (j == pipe) return true;
    }
    return false;
  }

  /// How fast the column of a return falls from a height, through all that it passes.
  [[nodiscard]] double flow_of_column(std::size_t leaf, double height) const noexcept {
    double resistance{};
    for (std::size_t j = leaf; j != none; j = nodes_[j].parent) {
      resistance += nodes_[j].run.friction * nodes_[j].factor + nodes_[j].run.minor;
    }
    return std::sqrt(std::fmax(0.0, height) / resistance);
  }

  /// The column of a return, with those shared pipes that no other return holds full any longer.
  void let_fall(std::size_t leaf, double height) {
    double water = nodes_[leaf].water;
    nodes_[leaf].fallen = true;
    for (std::size_t j = nodes_[leaf].parent; j != none; j = nodes_[j].parent) {
      if (nodes_[j].fallen) continue;
      bool last = true;
      for (std::size_t k = 0; k < leaves_; ++k) last = last && (!nodes_[k].runs || !passes(k, j));
      if (last) {
        nodes_[j].fallen = true;
        water += nodes_[j].water;
      }
    }
    if (water > 0.0) columns_.push_back({water, std::fmax(flow_of_column(leaf, height), 10.0 * still_flow), 1.0});
  }

  std::string_view here_;
  std::vector<node> nodes_;
  std::vector<column> columns_;
  std::size_t leaves_{};
};

}  // namespace tankwright::plumbing::detail
