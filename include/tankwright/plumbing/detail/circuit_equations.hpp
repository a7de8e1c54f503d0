// SPDX-License-Identifier: BSL-1.0
/// @file
/// A circuit as the numbers that the solver works on, and its solution as the parts that the caller knows.
#pragma once

#include <bit>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <string>
#include <string_view>
#include <tankwright/plumbing/circuit_parts.hpp>
#include <tankwright/plumbing/detail/network.hpp>
#include <tankwright/plumbing/friction.hpp>
#include <utility>
#include <vector>

namespace tankwright::plumbing::detail {

/// Numbers for names (not empty), given out in order. A few are compared one by one; many go through an open table of
/// hashes.
class name_table {
 public:
  explicit name_table(std::size_t most) {
    names_.reserve(most);
    if (most <= few) return;
    slots_.assign(std::bit_ceil(2 * most), 0);
  }
  /// The number of a name; new names get the next number.
  int number(std::string_view name) {
    if (slots_.empty()) {
      for (std::size_t i = 0; i < names_.size(); ++i) {
        if (names_[i].front() == name.front() && names_[i] == name) return static_cast<int>(i);
      }
      names_.push_back(name);
      return static_cast<int>(names_.size()) - 1;
    }
    std::uint32_t hash = 2166136261u;  // FNV-1a
    for (const char c : name) hash = (hash ^ static_cast<unsigned char>(c)) * 16777619u;
    const std::size_t last = slots_.size() - 1;
    for (std::size_t i = hash & last;; i = (i + 1) & last) {
      if (slots_[i] == 0) {
        names_.push_back(name);
        slots_[i] = static_cast<int>(names_.size());
        return slots_[i] - 1;
      }
      if (names_[static_cast<std::size_t>(slots_[i] - 1)] == name) return slots_[i] - 1;
    }
  }
  [[nodiscard]] std::size_t size() const noexcept { return names_.size(); }
  [[nodiscard]] std::string_view name(std::size_t number) const noexcept { return names_[number]; }
  static constexpr std::size_t few = 24;

 private:
  std::vector<int> slots_;
  std::vector<std::string_view> names_;
};

/// A circuit as numbers, checked; it refers to the curves and labels of the circuit it was made from. Links are the
/// pumps, then the runs. Nodes are the junctions, then the sources, then the outlets.
class circuit_equations {
 public:
  using solver = network<colebrook_law<double>>;

  circuit_equations(std::string_view function, const circuit& from, const water::liquid& water,
                    losses which = losses::central, range_policy policy = range_policy::published)
      : function_{function},
        circuit_{from},
        which_{which},
        policy_{policy},
        solver_{law_for(water)},
        names_{from.sources.size() + from.outlets.size() + 2 * (from.pumps.size() + from.runs.size())} {
    check_labels(circuit_.runs, "run");
    check_labels(circuit_.pumps, "pump");
    for (const circuit_source& source : from.sources) add_fixed(source);
    for (const circuit_outlet& outlet : from.outlets) {
      add_fixed(outlet);
      core::check_element(function_, outlet.label, loss_limits, outlet.exit.low.value());
      core::check_element(function_, outlet.label, loss_limits, outlet.exit.high.value());
      if (outlet.opening)
        core::check_element(function_, outlet.label, opening_limits, outlet.opening->diameter().value());
    }
    solver_.links.resize(from.pumps.size() + from.runs.size());
    for (std::size_t i = 0; i < from.pumps.size(); ++i) add_pump(i);
    for (std::size_t i = 0; i < from.runs.size(); ++i) {
      add_ends(solver_.links[run_link(i)], from.runs[i]);
      set_run(i, 0.0);
    }
    // Fixed nodes to the end.
    const int count = static_cast<int>(fixed());
    first_fixed_ = junctions();
    for (solver::link& link : solver_.links) {
      for (int* end : {&link.from, &link.to}) *end += *end < count ? static_cast<int>(first_fixed_) : -count;
    }
    solver_.set_nodes(static_cast<int>(first_fixed_), count);
    int number = 0;
    for (const circuit_source& source : from.sources) solver_.set_fixed_head(number++, source.level->value());
    for (const circuit_outlet& outlet : from.outlets) solver_.set_fixed_head(number++, outlet.level->value());
    solver_.prepare();
  }

  /// Flow of a run in the direction it is written in.
  [[nodiscard]] double flow_of_run(std::size_t run) const noexcept { return passing(solver_.links[run_link(run)]); }

  // What tuning changes between two solutions.
  void set_extra_loss(std::size_t run, double k) { set_run(run, k); }
  void set_speed(std::size_t pump, double speed) noexcept { set_pump(pump, circuit_.pumps[pump].curve->data(), speed); }
  void set_curve(std::size_t pump, const pump_curve& curve) noexcept {
    set_pump(pump, curve.data(), circuit_.pumps[pump].speed.value());
  }

  void solve(const network_options& options = {}) {
    const network_outcome outcome = solver_.solve(options);
    iterations_ = outcome.iterations;
    if (outcome.converged) return;
    core::fail<no_convergence>(function_, std::string{label_of(outcome.worst_link)} + ": error of the head",
                               outcome.worst_residual, "m",
                               "is what is left after " + core::number_text(outcome.iterations) + " steps");
  }

  [[nodiscard]] circuit_solution solution() const {
    circuit_solution result{{}, {}, {}, {}, {}, flow_rate::from_value(0.0), iterations_, circuit_caution};
    add_runs(result);
    add_junctions(result);
    result.pumps.reserve(circuit_.pumps.size());
    for (std::size_t i = 0; i < circuit_.pumps.size(); ++i) result.pumps.push_back(flow_of_pump(i));
    add_flows_of_ends(result);
    return result;
  }

  [[nodiscard]] pump_flow flow_of_pump(std::size_t i) const {
    const auto& link = solver_.links[i];
    const double q = passing(link);
    const double s = link.speed;
    double added{};
    pump_state state = pump_state::running;
    if (link.curve == nullptr) {
      state = q < 0.0 ? pump_state::reversed : pump_state::standing;
      added = -drop(link);
    } else if (q < 0.0) {
      state = pump_state::reversed;
      added = s * s * link.curve->shutoff + link.backwards * q * q;
    } else {
      const bool past_end = link.at_wall && q > 0.0;
      state = past_end ? pump_state::past_end : q > 0.0 ? pump_state::running : pump_state::shut;
      added = s * s * value_on_curve(*link.curve, past_end ? link.curve->end_flow : q / s).head;
    }
    return {circuit_.pumps[i].label, flow_rate::from_value(q), head::from_value(added), state};
  }

 private:
  [[nodiscard]] std::size_t run_link(std::size_t run) const noexcept { return circuit_.pumps.size() + run; }
  [[nodiscard]] std::size_t fixed() const noexcept { return circuit_.sources.size() + circuit_.outlets.size(); }
  [[nodiscard]] std::size_t junctions() const noexcept { return names_.size() - fixed(); }
  [[nodiscard]] std::string_view label_of(std::size_t link) const noexcept {
    const std::size_t pumps = circuit_.pumps.size();
    return link < pumps ? circuit_.pumps[link].label : circuit_.runs[link - pumps].label;
  }

  /// The flow of a link, without what leaks through a wall of the solver.
  [[nodiscard]] static double passing(const solver::link& link) noexcept {
    if (link.at_wall) return link.at;
    const bool stray = link.q < 0.0 ? link.shut_backwards : link.shut_forwards;
    return stray || std::fabs(link.q) < least_flow ? 0.0 : link.q;
  }
  [[nodiscard]] double drop(const solver::link& link) const noexcept {
    return solver_.head(link.from) - solver_.head(link.to);
  }

  template <class Part>
  void check_labels(const std::vector<Part>& parts, std::string_view what) const {
    const auto twice = [&](const Part& part) {
      core::refuse_element(function_, part.label, std::string{"is the label of two "}.append(what).append("s"));
    };
    for (const Part& part : parts) {
      if (part.label.empty()) core::refuse_element(function_, what, "needs a label");
    }
    if (parts.size() <= name_table::few) {
      for (const Part& part : parts) {
        for (const Part* before = parts.data(); before != &part; ++before) {
          if (before->label == part.label) twice(part);
        }
      }
      return;
    }
    name_table labels{parts.size()};
    for (std::size_t i = 0; i < parts.size(); ++i) {
      if (labels.number(parts[i].label) != static_cast<int>(i)) twice(parts[i]);
    }
  }

  template <class End>
  void add_fixed(const End& end) {
    if (end.label.empty()) core::refuse_element(function_, "a source or outlet", "needs a label");
    core::check_element(function_, end.label, circuit_level_limits, end.level->value());
    const std::size_t before = names_.size();
    names_.number(end.label);
    if (names_.size() == before) {
      core::refuse_element(function_, end.label, "is the label of two sources or outlets");
    }
  }

  template <class Part>
  void add_ends(solver::link& link, const Part& part) {
    if (part.from.empty() || part.to.empty()) core::refuse_element(function_, part.label, "needs both `from` and `to`");
    link.from = names_.number(part.from);
    link.to = names_.number(part.to);
    if (link.from == link.to) core::refuse_element(function_, part.label, "begins and ends at '" + part.from + "'");
  }

  void add_pump(std::size_t i) {
    const circuit_pump& pump = circuit_.pumps[i];
    core::check_element(function_, pump.label, speed_limits, pump.speed.value());
    core::check_element(function_, pump.label, idle_loss_limits, pump.idle.backwards.low.value());
    core::check_element(function_, pump.label, idle_loss_limits, at(pump.idle.backwards));
    core::check_element(function_, pump.label, idle_loss_limits, at(pump.idle.forwards));
    if (pump.check_valve) core::check_element(function_, pump.label, leak_limits, in_kv(pump.check_valve->leak));
    add_ends(solver_.links[i], pump);
    for (const int end : {solver_.links[i].from, solver_.links[i].to}) {
      const circuit_outlet* outlet = outlet_at(end);
      if (outlet == nullptr) continue;
      core::refuse_element(function_, pump.label,
                           "is set against outlet '" + outlet->label + "' without a run between");
    }
    set_pump(i, pump.curve->data(), pump.speed.value());
  }

  /// A pump that turns drives water along its curve, and costs it backwards what one with its rotor held does.
  void set_pump(std::size_t i, const curve_data& curve, double speed) noexcept {
    const circuit_pump& place = circuit_.pumps[i];
    solver::link& link = solver_.links[i];
    const bool turns = speed > 0.0;
    const double square = curve.best_head / (curve.best_flow * curve.best_flow);
    link.is_pump = true;
    link.speed = speed;
    link.curve = turns ? &curve : nullptr;
    link.forwards = link.square = square * at(place.idle.forwards);
    link.first_flow = curve.best_flow;
    link.backwards = square * (turns ? place.idle.backwards.low.value() : at(place.idle.backwards));
    if (place.check_valve) {
      const double leak = in_kv(place.check_valve->leak);
      link.shut_backwards = leak < shut_kv;
      if (!link.shut_backwards) link.backwards += square_from_kv(leak, solver_.law().g);
    }
  }

  void set_run(std::size_t i, double extra) {
    const pipe_run& run = circuit_.runs[i];
    solver::link& link = solver_.links[run_link(i)];
    run_numbers<double> numbers = numbers_of(function_, run, which_, policy_);
    numbers.k += extra;
    double forwards = 0.0, backwards = numbers.k_back;
    const circuit_outlet* const first = outlet_at(link.from);
    const circuit_outlet* const last = outlet_at(link.to);
    if (first != nullptr && last != nullptr) {  // between two tanks the exit is where the water leaves
      forwards += exit_loss(*last, numbers.d);
      backwards += exit_loss(*first, numbers.d);
    } else if (first != nullptr || last != nullptr) {
      numbers.k += exit_loss(first != nullptr ? *first : *last, numbers.d);
    }
    link.shut_forwards = numbers.closed || (first != nullptr && first->kind == outlet_kind::open);
    link.shut_backwards = numbers.closed || numbers.holds || (last != nullptr && last->kind == outlet_kind::open);
    if (numbers.l == 0.0 && numbers.k == 0.0 && !numbers.closed && (forwards == 0.0 || backwards == 0.0)) {
      core::refuse_element(function_, run.label, "resists nothing: give it a length or a loss coefficient");
    }
    const double area = 0.7853981633974483 * numbers.d * numbers.d;
    const double square = 0.5 / (solver_.law().g * area * area);
    link.pipe = solver_.law().prepare(numbers);
    link.forwards = square * forwards;
    link.backwards = square * backwards;
    link.first_flow = area;
    link.square = square * (0.025 * numbers.l / numbers.d + numbers.k + forwards);
  }

  [[nodiscard]] double at(const estimate<head_ratio>& k) const noexcept {
    return (which_ == losses::least ? k.low : which_ == losses::most ? k.high : k.central).value();
  }

  /// The outlet at a node, if it is one.
  [[nodiscard]] const circuit_outlet* outlet_at(int node) const noexcept {
    const std::size_t n = static_cast<std::size_t>(node) - first_fixed_ - circuit_.sources.size();
    return n < circuit_.outlets.size() ? &circuit_.outlets[n] : nullptr;
  }

  /// The loss where a run of a bore ends in an outlet, on that bore.
  [[nodiscard]] double exit_loss(const circuit_outlet& outlet, double bore) const {
    const double k = pick(outlet.exit, which_);
    core::check_element(function_, outlet.label, exit_limits, k);
    if (!outlet.opening) return k;
    const double ratio = bore / outlet.opening->diameter().value();
    return k * ratio * ratio * ratio * ratio;
  }

  [[nodiscard]] bool before_a_pump(const solver::link& run) const noexcept {
    for (std::size_t i = 0; i < circuit_.pumps.size(); ++i) {
      const int inlet = solver_.links[i].from;
      if (!solver_.is_fixed(inlet) && (run.from == inlet || run.to == inlet)) return true;
    }
    return false;
  }

  void add_runs(circuit_solution& result) const {
    result.runs.reserve(circuit_.runs.size());
    for (std::size_t i = 0; i < circuit_.runs.size(); ++i) {
      const solver::link& link = solver_.links[run_link(i)];
      const double q = passing(link), d = circuit_.runs[i].bore->diameter().value();
      core::check_element(function_, circuit_.runs[i].label, pipe_reynolds_limits, link.pipe.re_per_flow * std::fabs(q),
                          policy_);
      const double v = q / (0.7853981633974483 * d * d);
      const velocity limit = before_a_pump(link) ? recommended_suction_velocity : recommended_velocity;
      result.runs.push_back({circuit_.runs[i].label, flow_rate::from_value(q), velocity::from_value(v),
                             head::from_value(q == 0.0 ? 0.0 : std::copysign(std::fabs(drop(link)), q)),
                             q<0.0, link.at_wall, std::fabs(v)> limit.value()});
    }
  }

  void add_junctions(circuit_solution& result) const {
    const std::size_t count = junctions();
    result.junctions.reserve(count);
    bool all_joined = true;
    for (const solver::link& link : solver_.links) all_joined = all_joined && !link.at_wall;
    all_joined = all_joined && !solver_.has_floating_part();
    const std::vector<char> joined = all_joined ? std::vector<char>{} : joined_to_fixed();
    for (std::size_t i = 0; i < count; ++i) {
      const bool reached = all_joined || joined[i] != 0;
      const double h = solver_.head(static_cast<int>(i));
      result.junctions.push_back({std::string{names_.name(fixed() + i)},
                                  reached ? std::optional{head::from_value(h)} : std::nullopt,
                                  !reached                                    ? junction_state::cut_off
                                  : solver_.ends_at(static_cast<int>(i)) == 1 ? junction_state::dead_end
                                                                              : junction_state::joined});
    }
  }

  /// Which junctions water can reach from a source or outlet, or could if it moved.
  [[nodiscard]] std::vector<char> joined_to_fixed() const {
    const std::size_t count = junctions();
    std::vector<int> root(count + 1);  // the last stands for all fixed heads
    std::iota(root.begin(), root.end(), 0);
    const auto find = [&](int node) {
      int at = solver_.is_fixed(node) ? static_cast<int>(count) : node;
      while (root[static_cast<std::size_t>(at)] != at) {
        int& up = root[static_cast<std::size_t>(at)];
        up = root[static_cast<std::size_t>(up)];
        at = up;
      }
      return at;
    };
    for (const solver::link& link : solver_.links) {
      if (!link.at_wall) root[static_cast<std::size_t>(find(link.from))] = find(link.to);
    }
    std::vector<char> joined(count);
    const int outside = find(static_cast<int>(count));
    for (std::size_t i = 0; i < count; ++i) joined[i] = find(static_cast<int>(i)) == outside ? 1 : 0;
    return joined;
  }

  void add_flows_of_ends(circuit_solution& result) const {
    const std::size_t sources = circuit_.sources.size();
    result.sources.reserve(sources);
    for (const circuit_source& source : circuit_.sources) result.sources.push_back({source.label, flow_rate{}});
    result.outlets.reserve(circuit_.outlets.size());
    for (const circuit_outlet& outlet : circuit_.outlets) {
      result.outlets.push_back({outlet.label, flow_rate{}, outlet_state::still});
    }
    const auto add_out = [&](int node, double q) {
      if (!solver_.is_fixed(node)) return;
      const std::size_t i = static_cast<std::size_t>(node) - first_fixed_;
      if (i < sources) {
        result.sources[i].flow -= flow_rate::from_value(q);
      } else {
        result.outlets[i - sources].flow += flow_rate::from_value(q);
      }
    };
    for (const solver::link& link : solver_.links) {
      const double q = passing(link);
      add_out(link.from, -q);
      add_out(link.to, q);
    }
    for (outlet_flow& outlet : result.outlets) {
      if (outlet.flow.value() < 0.0) outlet.state = outlet_state::reversed;
      if (!(outlet.flow.value() > 0.0)) continue;
      outlet.state = outlet_state::flowing;
      result.delivered += outlet.flow;
    }
  }

  std::string_view function_;
  const circuit& circuit_;
  losses which_;
  range_policy policy_;
  solver solver_;
  name_table names_;
  std::size_t first_fixed_ = 0;  // node; while the circuit is built, fixed nodes come first
  int iterations_{};
};

}  // namespace tankwright::plumbing::detail
