// SPDX-License-Identifier: BSL-1.0
// The seagrass lagoon stands 1.45 m over its pump chamber and has two returns. Which of three pumps moves 8 000 L/h,
// what does each return get of it, and how far must a valve be closed to even them out?
#include <cstdio>
#include <tankwright/plumbing.hpp>

namespace tw = tankwright;
namespace tp = tankwright::plumbing;

tp::curve_point at(double litres_per_hour, double metres) {
  return {.flow = tw::litres_per_hour(litres_per_hour), .head = tw::metres(metres)};
}

int main() {
  const auto sea = tw::water::seawater(tw::practical_salinity{35.0}, tw::celsius(25.0));

  // [pumps]
  const tp::pump_curve pumps[] = {
      tp::curve_from_points("pump A, 65 W", {at(0, 3.2), at(3000, 2.9), at(6000, 2.1), at(9000, 0.6)}),
      tp::curve_from_points("pump B, 130 W", {at(0, 4.8), at(4000, 4.5), at(8000, 3.6), at(12000, 1.4)}),
      tp::curve_from_points("pump C, 250 W", {at(0, 7.0), at(5000, 6.6), at(10000, 5.2), at(16000, 1.5)})};
  // [/pumps]

  // [circuit]
  using tp::fitting;
  const auto run = [](const char* label, const char* from, const char* to, double inches, double length, fitting first,
                      fitting second, int elbows) {
    const auto bore = tp::pvc_pipe(tp::nominal_size::from_inches(inches), tp::pvc_schedule::schedule_40).average_bore;
    const auto loss = [&](fitting kind) { return tp::fitting_loss(kind, bore); };
    return tp::pipe_run{.label = label,
                        .from = from,
                        .to = to,
                        .bore = bore,
                        .length = tw::metres(length),
                        .fittings = tp::total_loss({{loss(first)}, {loss(second)}, {loss(fitting::elbow_90), elbows}})};
  };
  tp::circuit plan{
      .sources = {{.label = "pump chamber", .level = tw::metres(0.0)}},
      .pumps = {{.label = "pump", .from = "pump chamber", .to = "riser", .curve = pumps[1]}},
      .runs = {run("trunk", "riser", "tee", 1.5, 2.2, fitting::swing_check, fitting::ball_valve, 2),
               run("left", "tee", "left nozzle", 1.25, 1.2, fitting::tee_through_run, fitting::ball_valve, 2),
               run("right", "tee", "right nozzle", 1.0, 2.8, fitting::tee_through_branch, fitting::ball_valve, 3)},
      .outlets = {{.label = "left nozzle", .kind = tp::outlet_kind::submerged, .level = tw::metres(1.45)},
                  {.label = "right nozzle", .kind = tp::outlet_kind::open, .level = tw::metres(1.47)}}};
  // [/circuit]

  // [rank]
  const tp::wanted_flow wanted{.run = "trunk", .flow = tw::litres_per_hour(8000)};
  const auto ranking = tp::rank_pumps(plan, sea, {.pump = "pump", .through = wanted, .candidates = pumps});
  // [/rank]
  for (const auto& pump : ranking.pumps) {
    std::printf("%-14s %5.0f L/h at %.2f m, %2.0f %% of its curve%s\n", pump.label.c_str(),
                tw::in_litres_per_hour(pump.flow), tw::in_metres(pump.head), 100 * pump.share_of_curve,
                pump.reaches ? "" : "  too small");
  }

  // [flows]
  const auto flows = tp::operating_point(plan, sea);  // with pump B, which the plan has
  for (const char* label : {"left", "right"}) {
    const auto band = tp::flow_with_band(plan, sea, label);
    std::printf("\n%-5s %5.0f L/h (%.0f to %.0f) at %.1f m/s%s", label, tw::in_litres_per_hour(band.central),
                tw::in_litres_per_hour(band.low), tw::in_litres_per_hour(band.high),
                tw::in_metres_per_second(flows.run(label).velocity),
                flows.run(label).faster_than_recommended ? ", faster than the 1.5 m/s that keeps quiet" : "");
  }
  // [/flows]

  // [valve]
  const auto even = tp::valve_for_flow(plan, sea, {.run = "left", .flow = tw::litres_per_hour(4500)});
  // [/valve]
  const auto slower = tp::speed_for_flow(plan, sea, {.pump = "pump", .through = wanted});
  if (even.valve) std::printf("\n\n4500 L/h on the left: a valve of Kv %.1f there\n", in_kv(*even.valve));
  if (slower.speed) std::printf("8000 L/h in all: %.0f %% of full speed\n", 100 * slower.speed->value());
  std::printf("\n%.*s\n", static_cast<int>(flows.caution.text.size()), flows.caution.text.data());
}
