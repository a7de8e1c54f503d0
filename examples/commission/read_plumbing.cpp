// SPDX-License-Identifier: BSL-1.0
#include "plan_file.hpp"

#include <cmath>

#include <tankwright/plumbing/pipe_sizes.hpp>

namespace plan_file {

using namespace tankwright;
namespace tp = tankwright::plumbing;
using commissioning::plumbing_plan;

namespace {

/// A length held to the limits of the function that will get it, while its key is still known.
length need_length(section& in, std::string_view key, const limits& limit) {
  const auto read = in.need<length>(key);
  in.hold(key, limit, read.value());
  return read;
}

/// A whole number, from 1 to `most`.
std::size_t count_from(section& in, std::string_view key, double otherwise, double most, const std::string& what) {
  const double read = in.value_or<double>(key, otherwise);
  if (!(read >= 1.0 && read <= most && read == std::floor(read))) {
    in.fail_key(key, text::of(read) + " is not " + what + "; expected a whole number from 1 to " + text::of(most));
  }
  return static_cast<std::size_t>(read);
}

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
  run.length = need_length(in, "length", tp::run_length_limits);
  const double k = in.value_or<double>("loss", 0.0);
  const double band = in.value_or<proportion>("loss_uncertainty", percent(30.0)).value();
  in.hold("loss", tp::run_loss_limits, k);
  in.hold("loss_uncertainty", {"loss_uncertainty", "", zero_to_one}, band);
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
  tp::sump sump{.rim = need_length(in, "rim", tp::rim_limits),
                .running_level = need_length(in, "running_level", tp::running_level_limits),
                .chambers = {}};
  for (section& one : in.sections("chamber")) {
    sump.chambers.push_back({.label = one.text("label").value_or(""), .plan = one.need<area>("plan"),
                             .gear = one.value_or<area>("gear", area{})});
    one.finish();
  }
  for (section& one : in.sections("baffle")) {
    tp::baffle baffle{.crest = need_length(one, "crest", tp::crest_limits),
                      .width = need_length(one, "width", tp::baffle_width_limits)};
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
    return tp::toothed_edge{.gap_width = in.need<length>("gap_width"),
                            .gaps = static_cast<int>(count_from(in, "gaps", 1.0, 10000.0, "a number of gaps")),
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
  overflow->hold("surface", tp::surface_limits, display.surface->value());
  overflow->attempt([&] { return tp::head_over(display.edge, flow_rate{}); });
  overflow->finish();
  if (auto box = in.sub("box")) {
    display.box = tp::overflow_box{.plan = box->need<area>("plan"), .falls_by = box->need<length>("falls_by")};
    box->hold("plan", tp::box_area_limits, display.box->plan->value());
    box->hold("falls_by", tp::box_fall_limits, display.box->falls_by->value());
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
    plan.circuit.pumps.push_back({.label = label, .from = "sump", .to = branch, .curve = curve_from(*pump, label),
                                  .check_valve = tp::check_valve{}});
    const double speed = pump->value_or<double>("speed", 1.0);
    pump->hold("speed", tp::speed_limits, speed);
    plan.circuit.pumps.back().speed = tp::speed_ratio{speed};
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
    for (const auto& other : plan.returns) {
      if (other.label == *label) one.fail_here(*label + ": is the label of two returns");
    }
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
    const std::string number = "drain " + std::to_string(plan.drains.size() + 1);
    tp::drain drain{.pipe = run_from(one, one.text("label").value_or(number)), .drop = one.need<length>("drop"),
                    .inlet_head = one.need<length>("inlet_head"), .strainer = one.flag("strainer", false)};
    if (one.flag("runs_full", false)) plan.display.drains.push_back(drain.pipe);
    one.finish();
    plan.drains.push_back(std::move(drain));
  }
  plan.drains_into =
      count_from(in, "drains_into", 1.0, static_cast<double>(plan.sump.chambers.size()), "a chamber of the sump") - 1;
  plan.edge_to_rim = in.maybe<length>("edge_to_rim");
  plan.area_uncertainty = in.value_or<proportion>("area_uncertainty", plan.area_uncertainty);
  plan.level_uncertainty = in.value_or<length>("level_uncertainty", plan.level_uncertainty);
  plan.reserve = in.value_or<length>("reserve", plan.reserve);
  in.hold("area_uncertainty", tp::area_uncertainty_limits, plan.area_uncertainty.value());
  in.hold("level_uncertainty", tp::level_uncertainty_limits, plan.level_uncertainty.value());
  in.hold("reserve", tp::reserve_limits, plan.reserve.value());
  plan.surge = in.value_or<length>("surge", plan.surge);
  in.hold("surge", tp::box_surge_limits, plan.surge.value());
  plan.wanted_turnover = in.maybe<rate>("wanted_turnover");
  if (auto inlet = in.sub("pump_inlet")) {
    plan.inlet = tp::pump_inlet{.above_floor = need_length(*inlet, "above_floor", tp::inlet_height_limits), .bore = bore_from(*inlet)};
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
