// SPDX-License-Identifier: BSL-1.0
#include "plan_file.hpp"

#include <tankwright/plumbing/pipe_sizes.hpp>

namespace plan_file {

using namespace tankwright;
namespace tp = tankwright::plumbing;
using commissioning::plumbing_plan;

namespace {

/// `bore = "34 mm"`, or the nominal size of a PVC pipe: `nominal = "1.5"`, `schedule = "40"`.
tp::pipe_bore bore_from(section& in) {
  if (in.has("bore") == in.has("nominal")) in.fail_here("needs bore = \"34 mm\", or nominal = 1.5 with schedule = \"40\"");
  if (const auto bore = in.maybe<length>("bore")) {
    in.hold("bore", tp::bore_limits, bore->value());
    return tp::pipe_bore{*bore};
  }
  const double size = in.need<double>("nominal");
  const auto schedule = in.word("schedule", {"40", "80"});
  if (!schedule) in.fail_here("gives a nominal size; needs schedule = \"40\" or \"80\" with it");
  return in.attempt([&] {
    return tp::pvc_pipe(tp::nominal_size::from_inches(size),
                        *schedule == 0 ? tp::pvc_schedule::schedule_40 : tp::pvc_schedule::schedule_80)
        .average_bore;
  });
}

/// A run of pipe: bore, length, the sum of its loss coefficients with a band.
tp::pipe_run run_from(section& in, std::string label) {
  tp::pipe_run run{.label = std::move(label), .bore = bore_from(in)};
  run.length = in.need<length>("length");
  in.hold("length", tp::run_length_limits, run.length.value());
  const double k = in.value_or<double>("loss", 0.0);
  const double band = in.value_or<proportion>("loss_uncertainty", percent(30.0)).value();
  in.hold("loss", tp::run_loss_limits, k);
  run.fittings = {tp::loss_coefficient{k * (1.0 - band)}, tp::loss_coefficient{k}, tp::loss_coefficient{k * (1.0 + band)},
                  "loss coefficients of the fittings"};
  return run;
}

tp::pump_curve curve_from(section& in, const std::string& label) {
  const auto flows = in.list<flow_rate>("flows");
  const auto heads = in.list<length>("heads");
  if (flows.size() != heads.size() || flows.size() < 2) {
    in.fail_here("needs flows and heads, two lists of the same length with two points or more, from zero flow on");
  }
  std::vector<tp::curve_point> points;
  for (std::size_t i = 0; i < flows.size(); ++i) points.push_back({.flow = flows[i], .head = heads[i]});
  return in.attempt([&] { return tp::curve_from_points(label, points); });
}

tp::sump sump_from(section in) {
  tp::sump sump{.rim = in.need<length>("rim"), .running_level = in.need<length>("running_level"), .chambers = {}};
  in.hold("rim", tp::rim_limits, sump.rim->value());
  for (section& one : in.sections("chamber")) {
    sump.chambers.push_back({.label = one.text("label").value_or(""), .plan = one.need<area>("plan"),
                             .gear = one.value_or<area>("gear", area{})});
    one.finish();
  }
  for (section& one : in.sections("baffle")) {
    tp::baffle baffle{.crest = one.need<length>("crest"), .width = one.need<length>("width")};
    baffle.gap = one.value_or<length>("gap", length{});
    baffle.thickness = one.value_or<length>("thickness", length{});
    one.finish();
    sump.baffles.push_back(baffle);
  }
  in.finish();
  if (sump.chambers.empty()) in.fail_here("needs its chambers: [[plumbing.sump.chamber]] with label and plan");
  in.attempt([&] { return tp::sump_capacity(sump); });
  return sump;
}

/// The overflow edge: a full-width edge, or a comb where `gaps` is given.
tp::overflow_edge edge_from(section& in) {
  const auto crest = in.need<length>("crest_height");
  if (in.has("gaps")) {
    return tp::toothed_edge{.gap_width = in.need<length>("gap_width"), .gaps = static_cast<int>(in.need<double>("gaps")),
                            .tooth_width = in.need<length>("tooth_width"), .gap_height = in.need<length>("gap_height"),
                            .crest_height = crest};
  }
  return tp::full_width_edge{.width = in.need<length>("width"), .crest_height = crest,
                             .thickness = in.value_or<length>("thickness", length{})};
}

tp::display_tank display_from(section& in) {
  auto overflow = in.sub("overflow");
  if (!overflow) in.fail_here("needs [plumbing.overflow]: surface, crest_height and width of the edge");
  tp::display_tank display{.surface = overflow->need<area>("surface"), .edge = edge_from(*overflow)};
  overflow->finish();
  if (auto box = in.sub("box")) {
    display.box = tp::overflow_box{.plan = box->need<area>("plan"), .falls_by = box->need<length>("falls_by")};
    box->finish();
  }
  return display;
}

/// Pump, trunk and returns as a circuit: sump - pump - (trunk -) returns.
void read_circuit(section& in, plumbing_plan& plan) {
  const length lift = in.need<length>("lift");
  std::string branch = "pump outlet";
  if (auto pump = in.sub("pump")) {
    const std::string label = pump->text("label").value_or("pump");
    plan.circuit.sources.push_back({.label = "sump", .level = plan.sump.running_level});
    plan.circuit.pumps.push_back({.label = label, .from = "sump", .to = branch, .curve = curve_from(*pump, label)});
    plan.circuit.pumps.back().speed = tp::speed_ratio{pump->value_or<double>("speed", 1.0)};
    pump->finish();
  }
  if (auto trunk = in.sub("trunk")) {
    tp::pipe_run run = run_from(*trunk, "trunk");
    trunk->finish();
    run.from = branch;
    run.to = branch = "branching";
    plan.shared_pipes.push_back(run);
    if (!plan.circuit.pumps.empty()) plan.circuit.runs.push_back(run);
  }
  for (section& one : in.sections("return")) {
    const auto label = one.text("label");
    if (!label) one.fail_here("needs a label, such as label = \"left return\"");
    tp::pipe_run run = run_from(one, *label + " pipe");
    run.from = branch;
    run.to = *label;
    const bool open = one.word("kind", {"submerged", "open"}).value_or(0) == 1;
    commissioning::return_outlet outlet{.label = *label, .below_edge = one.need<length>("below_edge")};
    outlet.siphon_break = one.maybe<length>("siphon_break");
    outlet.pipe = run;
    if (!plan.circuit.pumps.empty()) {
      plan.circuit.runs.push_back(run);
      plan.circuit.outlets.push_back({.label = *label,
                                      .kind = open ? tp::outlet_kind::open : tp::outlet_kind::submerged,
                                      .level = open ? lift - outlet.below_edge.get() : lift});
    }
    one.finish();
    plan.returns.push_back(std::move(outlet));
  }
}

}  // namespace

plumbing_plan read_plumbing(section& in) {
  auto sump = in.sub("sump");
  if (!sump) in.fail_here("needs [plumbing.sump]: rim, running_level and its chambers");
  plumbing_plan plan{.display = display_from(in), .sump = sump_from(*sump)};
  read_circuit(in, plan);
  for (section& one : in.sections("drain")) {
    const std::string label = one.text("label").value_or("drain");
    tp::drain drain{.pipe = run_from(one, label), .drop = one.need<length>("drop"),
                    .inlet_head = one.need<length>("inlet_head"), .strainer = one.flag("strainer", false)};
    if (one.flag("runs_full", false)) plan.display.drains.push_back(drain.pipe);
    one.finish();
    plan.drains.push_back(std::move(drain));
  }
  plan.drains_into = static_cast<std::size_t>(in.value_or<double>("drains_into", 1.0) - 1.0);
  plan.edge_to_rim = in.maybe<length>("edge_to_rim");
  plan.area_uncertainty = in.value_or<proportion>("area_uncertainty", plan.area_uncertainty);
  plan.level_uncertainty = in.value_or<length>("level_uncertainty", plan.level_uncertainty);
  plan.reserve = in.value_or<length>("reserve", plan.reserve);
  plan.surge = in.value_or<length>("surge", plan.surge);
  plan.wanted_turnover = in.maybe<rate>("wanted_turnover");
  if (auto inlet = in.sub("pump_inlet")) {
    plan.inlet = tp::pump_inlet{.above_floor = inlet->need<length>("above_floor"), .bore = bore_from(*inlet)};
    inlet->finish();
  }
  in.finish();
  in.attempt([&] {
    commissioning::system_state state;
    commissioning::describe(state, plan);
    (void)commissioning::assess_plumbing(plan, state);
    return commissioning::assess_power_cut(plan, state);
  });
  return plan;
}

}  // namespace plan_file
