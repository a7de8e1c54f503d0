// SPDX-License-Identifier: BSL-1.0
/// @file
/// The power-cut test: does the floor stay dry when the pump stops, how likely is that given what was measured how
/// well, and does the pump stay wet when it starts again?
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <tankwright/commissioning/dry_floor.hpp>
#include <tankwright/commissioning/plumbing_plan.hpp>
#include <tankwright/plumbing/power_cut_limits.hpp>

namespace tankwright::commissioning {

namespace detail {

inline constexpr std::string_view power_cut_day = "Power-cut test";

[[nodiscard]] inline plumbing::power_cut_input power_cut_of(const plumbing_plan& plan,
                                                            const std::optional<circuit_band>& band) {
  length edge = metres(1.5);  // of the display over the floor of the sump; outlets tell
  for (const return_outlet& outlet : plan.returns) {
    for (const plumbing::circuit_outlet& at : plan.circuit.outlets) {
      if (at.label != outlet.label) continue;
      edge = at.kind == plumbing::outlet_kind::open ? at.level.get() + outlet.below_edge.get() : at.level.get();
    }
  }
  plumbing::power_cut_input in{
      .display = plan.display, .sump = plan.sump, .returns = {}, .edge_above_floor = edge};
  in.drains_into = plan.drains_into;
  in.area_uncertainty = plan.area_uncertainty;
  in.level_uncertainty = plan.level_uncertainty;
  in.reserve = plan.reserve;
  if (band && band->central.delivered.value() > 0.0) {
    const double between = (band->most.delivered - band->least.delivered).value();
    in.flow_uncertainty = fraction(0.5 * between / band->central.delivered.value());
  }
  for (const return_outlet& outlet : plan.returns) {
    flow_rate flow{};
    if (band) flow = std::max(flow_rate{}, band->central.outlet(outlet.label).flow);
    plumbing::return_line line{.label = outlet.label, .flow = flow, .outlet_below_edge = outlet.below_edge};
    line.break_below_edge = outlet.siphon_break;
    line.pipe = outlet.pipe;
    in.returns.push_back(std::move(line));
  }
  for (const plumbing::pipe_run& pipe : plan.shared_pipes) in.shared_pipes.push_back({.pipe = pipe});
  return in;
}

[[nodiscard]] inline std::string_view words_of(margin_doubt doubt) noexcept {
  switch (doubt) {
    case margin_doubt::display_area:
      return "the plan area of the display";
    case margin_doubt::sump_area:
      return "the plan areas of the sump";
    case margin_doubt::flow:
      return "the flow of the returns (with a bucket)";
    case margin_doubt::weir_heads:
      return "the head over the edge (with the pump running)";
    case margin_doubt::running_level:
      return "the running level of the pump chamber";
    case margin_doubt::outlet_depth:
      return "the depth of the return outlets";
    case margin_doubt::box_fall:
      break;
  }
  return "the fall of the overflow box";
}

[[nodiscard]] inline finding power_cut_finding(const plumbing::power_cut_input& in,
                                               const plumbing::power_cut_answer& cut) {
  finding f{.id = "sump.power_cut", .day = power_cut_day, .question = "Does the floor stay dry when the power fails?"};
  f.says = verdict_of_margin(cut.margin, in.reserve);
  f.numbers = entries(entry{"left below the rim of the sump", amount_of(cut.margin)},
                      entry{"wanted at least", amount_of(in.reserve), role::limit},
                      entry{"comes down", amount_of(cut.falls.total), role::detail},
                      entry{"of it over the edge", amount_of(cut.falls.over_edge), role::detail},
                      entry{"of it by back-siphon", amount_of(cut.falls.back_siphon), role::detail},
                      entry{"the sump still holds", amount_of(cut.spare), role::detail});
  plumbing::power_cut_input blocked = in;
  blocked.breaks_blocked = true;
  bool relies_on_breaks = false;
  for (const auto& r : in.returns) {
    relies_on_breaks = relies_on_breaks || (r.break_below_edge && *r.break_below_edge < r.outlet_below_edge.get());
  }
  if (relies_on_breaks) {
    const length left = plumbing::power_cut(blocked).margin.low;
    f.numbers.push_back({"left if the siphon breaks are blocked", amount_of(left), role::detail});
    if (left.value() < 0.0 && f.says == verdict::holds) f.says = verdict::thin_margin;
  }
  const dry_floor dry = chance_of_dry_floor(in);
  f.numbers.push_back({relies_on_breaks ? "chance of a dry floor if they work" : "chance of a dry floor",
                       amount_of(dry.chance), role::detail});
  const auto& most =
      *std::max_element(dry.doubts.begin(), dry.doubts.end(), [](auto& a, auto& b) { return a.share < b.share; });
  if (most.share > 0.0) {
    f.measure_next.push_back("measure " + std::string{words_of(most.of)} + " better: it makes " +
                             core::number_text(std::round(100.0 * most.share)) + " % of the doubt");
  }
  f.sources = {plumbing::rehbock_1929, gum};
  f.before_acting = cut.caution.text;
  return f;
}

[[nodiscard]] inline finding running_level_finding(const plumbing::power_cut_input& in,
                                                   const plumbing::power_cut_answer& cut) {
  finding f{.id = "sump.running_level",
            .day = power_cut_day,
            .question = "How high may the water stand in the pump chamber?"};
  f.numbers = entries(entry{"it runs at", amount_of(in.sump.running_level.get())});
  const auto highest = plumbing::highest_safe_running_level(in);
  if (highest) {
    f.numbers.push_back({"may run at", amount_of(*highest), role::limit});
    // The limit keeps the reserve in the worst case; above it the floor may still stay dry in the middle of the band.
    f.says = *highest >= in.sump.running_level.get() ? verdict::holds
             : cut.margin.central >= length{}                               ? verdict::thin_margin
                                                                            : verdict::does_not_hold;
  } else {
    f.says = verdict::does_not_hold;
    f.note = "No level is safe: the sump is too small for what comes down.";
  }
  f.sources = {plumbing::rehbock_1929};
  f.before_acting = cut.caution.text;
  return f;
}

[[nodiscard]] inline finding outlet_depth_finding(const plumbing::power_cut_input& in,
                                                  const plumbing::power_cut_answer& cut) {
  finding f{.id = "sump.outlet_depth", .day = power_cut_day, .question = "How deep may a return outlet sit?"};
  const auto draws_air_at = [](const plumbing::return_line& line) {
    const length outlet = line.outlet_below_edge;
    return line.break_below_edge ? std::min(outlet, *line.break_below_edge) : outlet;
  };
  const auto deepest = std::max_element(in.returns.begin(), in.returns.end(), [](const auto& a, const auto& b) {
    return a.outlet_below_edge.get() < b.outlet_below_edge.get();
  });
  const auto last = std::max_element(in.returns.begin(), in.returns.end(),
                                     [&](const auto& a, const auto& b) { return draws_air_at(a) < draws_air_at(b); });
  f.numbers =
      entries(entry{"deepest, " + deepest->label + ", below the edge", amount_of(deepest->outlet_below_edge.get())});
  if (draws_air_at(*last) < deepest->outlet_below_edge.get()) {
    f.numbers.push_back({"draws air last, " + last->label + ", at", amount_of(draws_air_at(*last)), role::detail});
  }
  if (const auto greatest = plumbing::deepest_safe_outlet(in)) {
    const length safe = *greatest;
    f.numbers.push_back({"may sit below the edge", amount_of(safe), role::limit});
    if (deepest->outlet_below_edge.get() <= safe) {
      f.says = verdict::holds;
    } else if (draws_air_at(*last) <= safe) {
      f.says = verdict::thin_margin;
      f.note = "It relies on a siphon break, which algae and snails can block.";
    } else {
      f.says = cut.margin.central >= length{} ? verdict::thin_margin : verdict::does_not_hold;
    }
  } else {
    f.says = verdict::does_not_hold;
    f.note = "No outlet is safe at any height: the sump is too small for what comes down.";
  }
  f.sources = {plumbing::rehbock_1929};
  f.before_acting = cut.caution.text;
  return f;
}

[[nodiscard]] inline finding restart_finding(const plumbing_plan& plan, const plumbing::power_cut_input& in,
                                             const plumbing::power_cut_answer& cut) {
  finding f{
      .id = "sump.restart", .day = power_cut_day, .question = "Does the pump stay wet when the power comes back?"};
  plumbing::restart_input task{.system = in, .inlet = *plan.inlet};
  if (plan.surge.value() > 0.0) task.surge = plan.surge;
  const auto again = plumbing::detail::restart_after(cut, task);
  f.says = again.runs_dry ? verdict::does_not_hold : verdict_of_margin(again.margin, length{});
  f.numbers = entries(entry{"over what keeps a vortex away", amount_of(again.margin)},
                      entry{"lowest level of the pump chamber", amount_of(again.lowest_level), role::detail},
                      entry{"until water runs over the edge again", amount_of(again.until_it_runs_over), role::detail});
  f.sources = {plumbing::hydraulic_institute_9_8, plumbing::gordon_1970};
  f.before_acting = again.caution.text;
  return f;
}

/// The sump to scale: walls, the water while it runs, and the rise after the power has failed.
[[nodiscard]] inline figure sump_figure(const plumbing::sump& sump, const plumbing::power_cut_answer& cut) {
  figure picture{.id = "sump.power_cut",
                 .title = "The sump while the pump runs, and above it the rise after a power cut, to scale"};
  double depth = 0.0;  // of the sump seen from the side: chambers are drawn as wide as their area over one common depth
  for (const auto& baffle : sump.baffles) depth = std::max(depth, baffle.width->value());
  if (depth == 0.0) depth = 0.5;
  double left = 0.0;
  const double rim = sump.rim->value();
  for (std::size_t i = 0; i < sump.chambers.size(); ++i) {
    const double width = sump.chambers[i].plan.at(metres(0.5 * rim)).value() / depth;
    const double before = std::min(cut.running[i].level.central.value(), rim);
    const double after = std::min(cut.settled[i].level.central.value(), rim);
    picture.plates.push_back({left, 0.0, width, std::min(before, after), "water", {}});
    if (after > before) picture.plates.push_back({left, before, width, after - before, "rise", {}});
    picture.plates.push_back({left, 0.0, width, rim, "room", cut.running[i].label});
    left += width;
  }
  double at = 0.0;
  for (std::size_t i = 0; i + 1 < sump.chambers.size(); ++i) {
    at += sump.chambers[i].plan.at(metres(0.5 * rim)).value() / depth;
    const double gap = sump.baffles[i].gap.value();
    picture.plates.push_back({at - 0.004, gap, 0.008, sump.baffles[i].crest->value() - gap, "wall", {}});
  }
  picture.plates.push_back({0.0, 0.0, left, rim, "wall", {}});
  return picture;
}

[[nodiscard]] inline std::vector<finding> power_cut_findings(const plumbing_plan& plan,
                                                             const std::optional<circuit_band>& band) {
  std::vector<finding> all;
  const auto not_yet = [&](std::string missing) {
    finding f{.id = "sump.power_cut",
              .day = power_cut_day,
              .question = "Does the floor stay dry when the power fails?",
              .says = verdict::not_enough_known};
    f.measure_next = {std::move(missing)};
    f.before_acting = plumbing::power_cut_caution.text;
    all.push_back(std::move(f));
    return all;
  };
  if (plan.returns.empty()) return not_yet("give each return and how far its opening lies below the overflow edge");
  if (!band) return not_yet("give the pump's curve: its flow stands over the edge and comes down");
  const auto in = power_cut_of(plan, band);
  if (plumbing::detail::total_flow(in.returns) == 0.0) return not_yet("take a pump that lifts water to the returns");
  const auto cut = plumbing::power_cut(in);
  all.push_back(power_cut_finding(in, cut));
  all.push_back(running_level_finding(in, cut));
  all.push_back(outlet_depth_finding(in, cut));
  if (plan.inlet) all.push_back(restart_finding(plan, in, cut));
  return all;
}

}  // namespace detail

/// The decisions of the power-cut test.
///
///   `plumbing::power_cut` with the flows of the solved circuit; `chance_of_dry_floor`; `plumbing::restart`
///
/// @param plan  display, sump and returns
/// @param state temperature and salinity of the water
/// @return      findings sump.power_cut, .running_level, .outlet_depth and, with a pump inlet, .restart
/// @throws      invalid_input, out_of_range, no_convergence (from the functions used; they name the element)
/// @accuracy    as its parts; the chance within 1.5 points of a simulation of the same doubts
/// @source      the sources of `plumbing/power_cut.hpp` and `dry_floor.hpp`, carried by each finding
[[nodiscard]] inline std::vector<finding> assess_power_cut(const plumbing_plan& plan, const system_state& state) {
  return detail::power_cut_findings(plan, detail::solved_circuit(plan, state));
}

/// The plumbing, drawn: plumbing.flow where there is one pump, and sump.power_cut where water comes down.
///
///   pump curve and system curve, by solving the circuit with the pump at many speeds; levels by `plumbing::power_cut`
///
/// @param plan  circuit, display, sump and returns
/// @param state temperature and salinity of the water
/// @return      curves of head [m] over flow [m^3/s]; the sump's plates to scale [m]
/// @throws      invalid_input, out_of_range, no_convergence (from the functions used; they name the element)
/// @accuracy    as its parts
/// @source      the sources of `plumbing/`
[[nodiscard]] inline std::vector<figure> figures_of(const plumbing_plan& plan, const system_state& state) {
  std::vector<figure> all;
  const auto band = detail::solved_circuit(plan, state);
  if (!band) return all;
  if (plan.circuit.pumps.size() == 1) all.push_back(detail::flow_figure(plan, *band, detail::liquid_of(state)));
  const auto in = detail::power_cut_of(plan, band);
  if (!in.returns.empty() && plumbing::detail::total_flow(in.returns) > 0.0) {
    all.push_back(detail::sump_figure(plan.sump, plumbing::power_cut(in)));
  }
  return all;
}

}  // namespace tankwright::commissioning
