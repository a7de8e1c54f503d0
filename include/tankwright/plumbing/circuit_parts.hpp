// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is a circuit, and what comes out of it? Sources, pumps, runs of pipe and outlets, joined by their labels, and
/// the flows and heads that a solution gives them.
///
/// A run ends where another begins, at the same name. A name that is neither a source nor an outlet is a junction.
/// Heads and levels are metres over one datum of your choice. Any graph will do: branches, loops, pipes side by side,
/// pumps in series or in parallel.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/plumbing/pump.hpp>
#include <vector>

namespace tankwright::plumbing {

/// A water surface that the circuit draws from: the pump chamber of the sump. Water may also run back into it.
struct circuit_source {
  std::string label{};
  required<length> level;
};

/// A pump in its place. Without a check valve, water runs back through it where it stands or is too weak.
struct circuit_pump {
  std::string label{};
  std::string from{};  ///< source, junction, or the end of the suction pipe
  std::string to{};    ///< junction where its delivery pipe begins
  required<pump_curve> curve;
  speed_ratio speed{1.0};                              ///< 0: it stands
  std::optional<plumbing::check_valve> check_valve{};  ///< in its line; none: water runs back
  idle_pump_losses idle{};                             ///< of water that it does not drive
};

/// In the open, water falls out at the height of the nozzle and none runs back. Submerged, it is the level of the water
/// over it that counts, and water runs back as easily as it came.
enum class outlet_kind { open, submerged };

/// Where runs end. Its label is the name of that end. Each run that ends here has its own exit loss: runs that share
/// one nozzle meet at a junction before it.
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
  bool shut;  ///< nothing passes: its valve is shut, or its check valve or open outlet lets none back
  bool faster_than_recommended;  ///< than `recommended_velocity`; before a pump, than `recommended_suction_velocity`
};

enum class junction_state {
  joined,
  dead_end,  ///< one run or pump ends here and nothing else: a capped pipe, or a misspelt name
  cut_off,   ///< nothing open leads to a source or outlet
};

struct junction_head {
  std::string label;
  std::optional<tankwright::head> head;  ///< over the datum; none where it is cut off, for nothing sets it there
  junction_state state;
};

enum class pump_state {
  running,
  shut,      ///< more head against it than it has at zero flow: it turns and lifts nothing
  past_end,  ///< the circuit would take more than the last point of the curve: the flow is at least this
  reversed,  ///< water runs back through it, whether it turns or stands: it has no check valve that holds
  standing,  ///< switched off; water may pass forwards, or nothing does
};

struct pump_flow {
  std::string label;
  flow_rate flow;         ///< from `from` to `to`; negative when it runs back
  tankwright::head head;  ///< what it adds; the shut-off head where it is shut
  pump_state state;
};

enum class outlet_state {
  flowing,
  still,     ///< nothing comes: too high for the pump, shut, or no run leads to it
  reversed,  ///< water goes in where it should come out
};

struct outlet_flow {
  std::string label;
  flow_rate flow;  ///< out of the circuit, by all its runs together
  outlet_state state;
};

struct source_flow {
  std::string label;
  flow_rate flow;  ///< into the circuit; negative where more runs back
};

/// A solved circuit, its parts in the order they were given in.
struct circuit_solution {
  std::vector<run_flow> runs;
  std::vector<junction_head> junctions;
  std::vector<pump_flow> pumps;
  std::vector<outlet_flow> outlets;
  std::vector<source_flow> sources;
  flow_rate delivered;  ///< out of all outlets that give; what the drains must carry
  int iterations;       ///< [1]
  tankwright::caution caution;

  [[nodiscard]] const run_flow& run(std::string_view label) const { return find(runs, label, "run"); }
  [[nodiscard]] const junction_head& junction(std::string_view label) const {
    return find(junctions, label, "junction");
  }
  [[nodiscard]] const pump_flow& pump(std::string_view label) const { return find(pumps, label, "pump"); }
  [[nodiscard]] const outlet_flow& outlet(std::string_view label) const { return find(outlets, label, "outlet"); }
  [[nodiscard]] const source_flow& source(std::string_view label) const { return find(sources, label, "source"); }

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
    "blocked, and the sump must hold what runs back through every outlet when the pump stops: check valves leak."};

inline constexpr limits circuit_level_limits{"level", "m", {-1e4, 1e4}};
inline constexpr limits exit_limits{"exit loss", "", {0.0, 1e15}};
inline constexpr limits opening_limits{"opening", "m", bore_limits.possible};

}  // namespace tankwright::plumbing
