// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much does each return really get? Pumps, runs of pipe and outlets in any tree: the flow of every branch, the
/// head of every junction, and what has gone wrong (a pump that lifts nothing, a branch that runs backwards).
///
/// Everything is named by labels, and runs are joined by them: a run ends where another begins, at the same name. A
/// name that is neither a source nor an outlet is a junction. Heads and levels are metres over one datum of your
/// choice.
#pragma once

#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <tankwright/plumbing/detail/network.hpp>
#include <tankwright/plumbing/friction.hpp>
#include <tankwright/plumbing/pump.hpp>
#include <utility>
#include <vector>

namespace tankwright::plumbing {

inline constexpr citation todini_pilati_1988{
    "Todini E., Pilati S.", 1988, "A gradient algorithm for the analysis of pipe networks",
    "Computer Applications in Water Supply, vol. 1, Research Studies Press, pp. 1-20", standing::secondary};

/// A water surface that the circuit draws from: the pump chamber of the sump.
struct circuit_source {
  std::string label{};
  required<length> level;
};

/// A pump in its place. It has a check valve: without one, water runs back through a pump that stands or loses.
struct circuit_pump {
  std::string label{};
  std::string from{};  ///< source, junction, or the end of the suction pipe
  std::string to{};    ///< junction where its delivery pipe begins
  required<pump_curve> curve;
  speed_ratio speed{1.0};
};

/// In the open, water falls out at the height of the nozzle and none runs back. Submerged, it is the level of the water
/// over it that counts, and water runs back as easily as it came.
enum class outlet_kind { open, submerged };

/// Where a run ends. Its label is the name of that end.
struct circuit_outlet {
  std::string label{};
  required<outlet_kind> kind;
  required<length> level;                             ///< height of an open nozzle; water level over a submerged one
  estimate<loss_coefficient> exit = known_loss(1.0);  ///< on the velocity in the opening
  std::optional<pipe_bore> opening{};                 ///< where narrower than the run
};

struct circuit {
  std::vector<circuit_source> sources{};
  std::vector<circuit_pump> pumps{};
  std::vector<pipe_run> runs{};
  std::vector<circuit_outlet> outlets{};
};

struct run_flow {
  std::string label;
  flow_rate flow;  ///< from `from` to `to`; negative when the run is reversed
  tankwright::velocity velocity;
  tankwright::head loss;  ///< over the run with its fittings, valve and exit
  bool reversed;
  bool faster_than_recommended;  ///< than `recommended_velocity`; before a pump, than `recommended_suction_velocity`
};

struct junction_head {
  std::string label;
  tankwright::head head;  ///< over the datum
};

enum class pump_state {
  running,
  shut,      ///< more head against it than it has at zero flow: it turns and lifts nothing
  past_end,  ///< the circuit would take more than the last point of the curve: the flow is at least this
};

struct pump_flow {
  std::string label;
  flow_rate flow;
  tankwright::head head;  ///< what it adds; the shut-off head where it is shut
  pump_state state;
};

enum class outlet_state {
  flowing,
  still,     ///< nothing comes: too high for the pump, or shut
  reversed,  ///< water goes in where it should come out
};

struct outlet_flow {
  std::string label;
  flow_rate flow;  ///< out of the circuit
  outlet_state state;
};

/// A solved circuit, its parts in the order they were given in.
struct circuit_solution {
  std::vector<run_flow> runs;
  std::vector<junction_head> junctions;
  std::vector<pump_flow> pumps;
  std::vector<outlet_flow> outlets;
  flow_rate delivered;  ///< out of all outlets together; what the drains must carry
  int iterations;
  tankwright::caution caution;

  [[nodiscard]] const run_flow& run(std::string_view label) const { return find(runs, label, "run"); }
  [[nodiscard]] const junction_head& junction(std::string_view label) const {
    return find(junctions, label, "junction");
  }
  [[nodiscard]] const pump_flow& pump(std::string_view label) const { return find(pumps, label, "pump"); }
  [[nodiscard]] const outlet_flow& outlet(std::string_view label) const { return find(outlets, label, "outlet"); }

 private:
  template <class Part>
  [[nodiscard]] static const Part& find(const std::vector<Part>& parts, std::string_view label, std::string_view what) {
    for (const Part& part : parts) {
      if (part.label == label) return part;
    }
    std::string reason = "is no ";
    reason.append(what).append(" of this circuit; there are");
    for (const Part& part : parts) reason.append(" '").append(part.label).append("'");
    core::refuse_element("tankwright::plumbing::circuit_solution", label, reason);
  }
};

/// In PVC under pressure: faster is noisy and hard on the pipe when a valve shuts (5 ft/s).
inline constexpr velocity recommended_velocity = velocity::from_value(1.5);
/// Before a pump: faster costs suction head (2 to 4 ft/s, from memory).
inline constexpr velocity recommended_suction_velocity = velocity::from_value(1.2);

inline constexpr caution circuit_caution{
    "Computed, not measured: time a bucket before relying on it. The drains must carry this flow with one of them "
    "blocked, "
    "and the sump must hold what runs back through every outlet when the pump stops: check valves leak."};

inline constexpr limits circuit_level_limits{"level", "m", any_finite};
inline constexpr limits exit_limits{"exit loss", "", not_negative};

namespace detail {

/// Numbers for names, given out in order. An open table of hashes: names are looked up as often as runs have ends.
class name_table {
 public:
  explicit name_table(std::size_t most) {
    std::size_t size = 8;
    while (size < 2 * most) size *= 2;
    slots_.assign(size, 0);
    names_.reserve(most);
  }
  /// The number of a name; new names get the next number.
  int number(std::string_view name) {
    std::uint32_t hash = 2166136261u;  // FNV-1a
    for (const char c : name) hash = (hash ^ static_cast<unsigned char>(c)) * 16777619u;
    for (std::size_t i = hash & (slots_.size() - 1);; i = (i + 1) & (slots_.size() - 1)) {
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

 private:
  std::vector<int> slots_;
  std::vector<std::string_view> names_;
};

/// A circuit as numbers, checked; it refers to the curves and labels of the circuit it was made from. Links are the
/// pumps, then the runs. Fixed nodes are the sources, then the outlets.
class built_circuit {
 public:
  using solver = network<colebrook_law<double>>;

  built_circuit(std::string_view function, const circuit& from, const water::liquid& water,
                losses which = losses::central, range_policy policy = range_policy::published)
      : function_{function}, circuit_{from}, policy_{policy}, solver_{law_for(water)} {
    const std::size_t fixed = from.sources.size() + from.outlets.size();
    name_table names{fixed + 2 * (from.pumps.size() + from.runs.size())};
    check_labels();
    for (const circuit_source& source : from.sources) {
      core::check_element(function, source.label, circuit_level_limits, source.level->value());
      add_fixed(names, source.label, source.level->value());
    }
    for (const circuit_outlet& outlet : from.outlets) {
      core::check_element(function, outlet.label, circuit_level_limits, outlet.level->value());
      add_fixed(names, outlet.label, outlet.level->value());
    }
    add_links(names, which);
    junction_names_.reserve(names.size() - fixed);
    for (std::size_t i = fixed; i < names.size(); ++i) junction_names_.push_back(names.name(i));
    check_tree();
  }

  [[nodiscard]] std::size_t pump_link(std::size_t pump) const noexcept { return pump; }
  [[nodiscard]] std::size_t run_link(std::size_t run) const noexcept { return circuit_.pumps.size() + run; }
  /// Flow of a run in its own direction: a run written from an outlet inwards is held the other way round.
  [[nodiscard]] double run_flow_of(std::size_t run) const noexcept {
    const double q = passing(solver_.links[run_link(run)]);
    return turned_[run] ? -q : q;
  }

  // What tuning changes between two solutions.
  void set_extra_loss(std::size_t run, double k) {
    solver::link& link = solver_.links[run_link(run)];
    run_numbers<double> numbers = link.run;
    numbers.k += k;
    link.prepared = solver_.law().prepare(numbers);
  }
  void set_speed(std::size_t pump, double speed) noexcept { solver_.links[pump_link(pump)].speed = speed; }
  void set_curve(std::size_t pump, const pump_curve& curve) noexcept {
    solver_.links[pump_link(pump)].curve = &curve.data();
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
    circuit_solution result{{}, {}, {}, {}, flow_rate::from_value(0.0), iterations_, circuit_caution};
    result.runs.reserve(circuit_.runs.size());
    result.junctions.reserve(junction_names_.size());
    result.pumps.reserve(circuit_.pumps.size());
    result.outlets.reserve(circuit_.outlets.size());
    for (std::size_t i = 0; i < circuit_.runs.size(); ++i) {
      const auto& link = solver_.links[run_link(i)];
      const double q = run_flow_of(i);
      if (q != 0.0) {
        core::check_element(function_, circuit_.runs[i].label, reynolds_limits,
                            link.prepared.re_per_flow * std::fabs(q), policy_);
      }
      const double v = q / (0.7853981633974483 * link.run.d * link.run.d);
      const double loss = std::fabs(solver_.head(link.from) - solver_.head(link.to));
      const velocity limit = before_a_pump(link) ? recommended_suction_velocity : recommended_velocity;
      const bool reversed = q < 0.0;
      const bool fast = std::fabs(v) > limit.value();
      result.runs.push_back({circuit_.runs[i].label, flow_rate::from_value(q), velocity::from_value(v),
                             head::from_value(q == 0.0 ? 0.0 : std::copysign(loss, q)), reversed, fast});
    }
    for (std::size_t i = 0; i < junction_names_.size(); ++i) {
      result.junctions.push_back(
          {std::string{junction_names_[i]}, head::from_value(solver_.head(static_cast<int>(i)))});
    }
    for (std::size_t i = 0; i < circuit_.pumps.size(); ++i) result.pumps.push_back(pump_result(i));
    for (std::size_t i = 0; i < circuit_.outlets.size(); ++i) {
      const double q = passing(solver_.links[outlet_link_[i]]);
      result.outlets.push_back({circuit_.outlets[i].label, flow_rate::from_value(q),
                                q > 0.0   ? outlet_state::flowing
                                : q < 0.0 ? outlet_state::reversed
                                          : outlet_state::still});
      if (q > 0.0) result.delivered += flow_rate::from_value(q);
    }
    return result;
  }

  [[nodiscard]] pump_flow pump_result(std::size_t i) const {
    const auto& link = solver_.links[pump_link(i)];
    const double q = passing(link);
    const double s = link.speed;
    const bool past_end = link.r == steep && q > 0.0;
    const double h = s * s * value_on_curve(*link.curve, past_end ? link.curve->end_flow : q / s).head;
    return {circuit_.pumps[i].label, flow_rate::from_value(q), head::from_value(h),
            past_end  ? pump_state::past_end
            : q > 0.0 ? pump_state::running
                      : pump_state::shut};
  }

 private:
  static constexpr std::size_t unfed = std::numeric_limits<std::size_t>::max();

  /// The flow of a link, without what leaks through a wall of the solver.
  [[nodiscard]] static double passing(const solver::link& link) noexcept {
    if (link.r == steep) {
      return link.curve != nullptr && link.q > 0.5 * link.speed * link.curve->end_flow
                 ? link.speed * link.curve->end_flow
                 : 0.0;
    }
    return std::fabs(link.q) < least_change ? 0.0 : link.q;
  }

  [[nodiscard]] bool before_a_pump(const solver::link& run) const noexcept {
    for (std::size_t i = 0; i < circuit_.pumps.size(); ++i) {
      const int inlet = solver_.links[pump_link(i)].from;
      if (!solver_.is_fixed(inlet) && (run.from == inlet || run.to == inlet)) return true;
    }
    return false;
  }

  void check_labels() const {
    name_table runs{circuit_.runs.size()}, pumps{circuit_.pumps.size()};
    const auto check_new = [&](name_table& table, const std::string& label, std::string_view what) {
      if (label.empty()) core::refuse_element(function_, what, "needs a label");
      const std::size_t before = table.size();
      table.number(label);
      if (table.size() == before)
        core::refuse_element(function_, label, std::string{"is the label of two "}.append(what).append("s"));
    };
    for (const pipe_run& run : circuit_.runs) check_new(runs, run.label, "run");
    for (const circuit_pump& pump : circuit_.pumps) check_new(pumps, pump.label, "pump");
    if (circuit_.sources.empty()) core::refuse_element(function_, "the circuit", "has no source to draw from");
    if (circuit_.outlets.empty()) core::refuse_element(function_, "the circuit", "has no outlet");
  }

  void add_fixed(name_table& names, const std::string& label, double level) {
    if (label.empty()) core::refuse_element(function_, "a source or outlet", "needs a label");
    const std::size_t before = names.size();
    names.number(label);
    if (names.size() == before) core::refuse_element(function_, label, "is the label of two sources or outlets");
    solver_.fixed_heads.push_back(level);
  }

  /// The node of a name. Fixed nodes come first in the table and last in the network.
  [[nodiscard]] int node(name_table& names, const std::string& label, const std::string& name) const {
    if (name.empty()) core::refuse_element(function_, label, "needs both `from` and `to`");
    return names.number(name);
  }

  void add_links(name_table& names, losses which) {
    const std::size_t sources = circuit_.sources.size();
    const std::size_t fixed = sources + circuit_.outlets.size();
    outlet_link_.assign(circuit_.outlets.size(), unfed);
    turned_.assign(circuit_.runs.size(), false);
    solver_.links.reserve(circuit_.pumps.size() + circuit_.runs.size());
    const auto is_outlet = [&](int n) { return n >= static_cast<int>(sources) && n < static_cast<int>(fixed); };
    for (const circuit_pump& pump : circuit_.pumps) {
      core::check_element(function_, pump.label, speed_limits, pump.speed.value());
      solver::link link;
      link.from = node(names, pump.label, pump.from);
      link.to = node(names, pump.label, pump.to);
      if (link.from == link.to) core::refuse_element(function_, pump.label, "begins and ends at '" + pump.from + "'");
      for (const int end : {link.from, link.to}) {
        if (is_outlet(end)) {
          core::refuse_element(function_, pump.label,
                         "is set against outlet '" + std::string{names.name(static_cast<std::size_t>(end))} +
                             "' without a run between");
        }
      }
      link.curve = &pump.curve->data();
      link.speed = pump.speed.value();
      solver_.links.push_back(link);
    }
    for (std::size_t i = 0; i < circuit_.runs.size(); ++i) {
      const pipe_run& run = circuit_.runs[i];
      solver::link link;
      link.run = numbers_of(function_, run, which, policy_);
      link.from = node(names, run.label, run.from);
      link.to = node(names, run.label, run.to);
      if (link.from == link.to) core::refuse_element(function_, run.label, "begins and ends at '" + run.from + "'");
      if (is_outlet(link.from)) {
        std::swap(link.from, link.to);
        turned_[i] = true;
      }
      if (is_outlet(link.to)) {
        if (is_outlet(link.from)) core::refuse_element(function_, run.label, "joins two outlets and no source");
        const auto number = static_cast<std::size_t>(link.to) - sources;
        const circuit_outlet& outlet = circuit_.outlets[number];
        if (outlet_link_[number] != unfed) {
          core::refuse_element(function_, outlet.label,
                               "is the end of two runs; give it a run of its own from the junction");
        }
        outlet_link_[number] = run_link(i);
        const double k = pick(outlet.exit, which);
        core::check_element(function_, outlet.label, exit_limits, k);
        const double opening = outlet.opening ? outlet.opening->diameter().value() : link.run.d;
        core::check_element(function_, outlet.label, {"opening", "m", positive}, opening);
        const double ratio = link.run.d / opening * (link.run.d / opening);
        link.run.k += k * ratio * ratio;
        link.one_way = outlet.kind == outlet_kind::open;
      }
      if (link.run.l == 0.0 && link.run.k == 0.0 && !link.run.closed) {
        core::refuse_element(function_, run.label, "resists nothing: give it a length or a loss coefficient");
      }
      link.prepared = solver_.law().prepare(link.run);
      solver_.links.push_back(link);
    }
    for (std::size_t i = 0; i < outlet_link_.size(); ++i) {
      if (outlet_link_[i] == unfed)
        core::refuse_element(function_, circuit_.outlets[i].label, "is an outlet that no run leads to");
    }
    // Fixed nodes to the end.
    const int junctions = static_cast<int>(names.size() - fixed);
    for (solver::link& link : solver_.links) {
      for (int* end : {&link.from, &link.to})
        *end += *end < static_cast<int>(fixed) ? junctions : -static_cast<int>(fixed);
    }
  }

  [[nodiscard]] std::string_view label_of(std::size_t link) const noexcept {
    const std::size_t pumps = circuit_.pumps.size();
    return link < pumps ? circuit_.pumps[link].label : circuit_.runs[link - pumps].label;
  }

  /// No loops, no dead ends, a way from a source to every outlet.
  void check_tree() {
    const int loop = solver_.build_tree(static_cast<int>(junction_names_.size()));
    if (loop != solver::none) {
      core::refuse_element(function_, label_of(static_cast<std::size_t>(loop)),
                     "closes a loop; a circuit must branch like a tree");
    }
    const auto junctions = junction_names_.size();
    std::vector<std::size_t> met(junctions, 0), last(junctions, 0);
    std::vector<char> fed(junctions, 0);  // by component
    std::vector<char> drawn(circuit_.sources.size(), 0);
    for (std::size_t i = 0; i < solver_.links.size(); ++i) {
      const auto& link = solver_.links[i];
      for (const int end : {link.from, link.to}) {
        if (!solver_.is_fixed(end)) {
          ++met[static_cast<std::size_t>(end)];
          last[static_cast<std::size_t>(end)] = i;
          continue;
        }
        const std::size_t number = static_cast<std::size_t>(end) - junctions;
        if (number >= circuit_.sources.size()) continue;
        drawn[number] = 1;
        const int other = end == link.from ? link.to : link.from;
        if (!solver_.is_fixed(other)) fed[static_cast<std::size_t>(solver_.component(other))] = 1;
      }
    }
    for (std::size_t i = 0; i < junctions; ++i) {
      if (met[i] == 1) {
        core::refuse_element(function_, junction_names_[i],
                       "is reached by '" + std::string{label_of(last[i])} +
                           "' alone: a dead end, a misspelt name, or an outlet that is not in the list");
      }
    }
    for (std::size_t i = 0; i < outlet_link_.size(); ++i) {
      const int before = solver_.links[outlet_link_[i]].from;
      if (!solver_.is_fixed(before) && fed[static_cast<std::size_t>(solver_.component(before))] == 0) {
        core::refuse_element(function_, circuit_.outlets[i].label, "is an outlet without a path from any source");
      }
    }
    for (std::size_t i = 0; i < drawn.size(); ++i) {
      if (drawn[i] == 0)
        core::refuse_element(function_, circuit_.sources[i].label, "is a source that nothing draws from");
    }
  }

  std::string_view function_;
  const circuit& circuit_;
  range_policy policy_;
  solver solver_;
  std::vector<std::string_view> junction_names_{};
  std::vector<std::size_t> outlet_link_{};
  std::vector<char> turned_{};
  int iterations_ = 0;
};

}  // namespace detail

/// Steady flow in a tree of pumps, runs and outlets.
///
///   every run: H_from - H_to = (f L/D + sum K) V|V|/2g;   every pump: H_to - H_from = H(Q), Q >= 0;
///   every junction: what flows in flows out.   Newton's method on all of it, with exact derivatives
///
/// @param plan   sources, pumps, runs and outlets, joined by their labels; no loops
/// @param water  density and viscosity in the pipes
/// @param which  which end of the bands of the loss coefficients to take
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       flow, velocity and loss of each run, head of each junction, flow and state of each pump and outlet,
/// and
///               what all outlets deliver
/// @throws       invalid_input, out_of_range (name the culprit by its label); no_convergence (with the state)
/// @accuracy     1e-10 of the total flow against the equations; in the world 5 to 10 %, mostly by the loss coefficients
/// and
///               the pump's curve
/// @source       Todini and Pilati 1988; Colebrook 1939
[[nodiscard]] inline circuit_solution operating_point(const circuit& plan, const water::liquid& water,
                                                      losses which = losses::central,
                                                      range_policy policy = range_policy::published) {
  detail::built_circuit built{"tankwright::plumbing::operating_point", plan, water, which, policy};
  built.solve();
  return built.solution();
}

/// Flow through one run with the band that the loss coefficients give it.
///
///   the flow with all K at the high, the central and the low end of their bands
///
/// @param plan   as for `operating_point`
/// @param water  density and viscosity in the pipes
/// @param run    label of the run
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       flow [m^3/s] with its band
/// @throws       invalid_input, out_of_range (name the culprit by its label); no_convergence (with the state)
/// @accuracy     the band covers the loss coefficients, all erring the same way, and not the pump's curve
/// @source       as `operating_point`
[[nodiscard]] inline estimate<flow_rate> flow_with_band(const circuit& plan, const water::liquid& water,
                                                        std::string_view run,
                                                        range_policy policy = range_policy::published) {
  const flow_rate least = operating_point(plan, water, losses::most, policy).run(run).flow;
  const flow_rate central = operating_point(plan, water, losses::central, policy).run(run).flow;
  const flow_rate most = operating_point(plan, water, losses::least, policy).run(run).flow;
  // A branch can lose where the others gain.
  const auto smaller = [](flow_rate a, flow_rate b) { return a < b ? a : b; };
  const auto larger = [](flow_rate a, flow_rate b) { return a < b ? b : a; };
  return {smaller(least, smaller(central, most)), central, larger(most, larger(central, least)),
          "loss coefficients at the ends of their bands"};
}

}  // namespace tankwright::plumbing
