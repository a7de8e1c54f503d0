// SPDX-License-Identifier: BSL-1.0
/// @file
/// The plumbing day: what each return really gets, how high the water stands over the edge, and whether the drains take
/// it. The power cut that follows is in `power_cut_plan.hpp`.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <tankwright/commissioning/figure.hpp>
#include <tankwright/commissioning/finding.hpp>
#include <tankwright/commissioning/system_state.hpp>
#include <tankwright/plumbing/circuit.hpp>
#include <tankwright/plumbing/drain.hpp>
#include <tankwright/plumbing/power_cut.hpp>
#include <tankwright/plumbing/restart.hpp>
#include <tankwright/water/liquid.hpp>
#include <vector>

namespace tankwright::commissioning {

/// A return as the power cut sees it; its flow comes from the circuit's outlet of the same label.
struct return_outlet {
  std::string label;
  required<length> below_edge;           ///< top of the opening below the overflow edge; negative above it
  std::optional<length> siphon_break{};  ///< hole below the overflow edge; counts only where it lies above the opening
  std::optional<plumbing::pipe_run> pipe{};
};

/// Everything that moves the water.
struct plumbing_plan {
  plumbing::circuit circuit{};          ///< sources, pumps, runs and outlets
  plumbing::display_tank display;       ///< surface, edge, box, drain pipes that run full
  std::optional<length> edge_to_rim{};  ///< room over the overflow edge
  std::vector<plumbing::drain> drains{};
  plumbing::sump sump;
  std::size_t drains_into = 0;  ///< chamber that the drains end in
  std::vector<return_outlet> returns{};
  std::vector<plumbing::pipe_run> shared_pipes{};  ///< trunks of the returns, which empty too
  proportion area_uncertainty = percent(3.0);
  length level_uncertainty = millimetres(3.0);
  length reserve = millimetres(20.0);  ///< height to keep free below the rims of sump and display
  std::optional<plumbing::pump_inlet> inlet{};
  length surge{};                         ///< see `plumbing::restart_input`
  std::optional<rate> wanted_turnover{};  ///< display volumes in a time
};

namespace detail {

inline constexpr std::string_view plumbing_day = "Plumbing";

[[nodiscard]] inline water::liquid liquid_of(const system_state& state) {
  return water::seawater(state.salinity, state.water);
}

/// Whether there is a flow to compute: a pump, and somewhere for its water to go.
[[nodiscard]] inline bool has_circuit(const plumbing_plan& plan) noexcept {
  return !plan.circuit.pumps.empty() && !plan.circuit.outlets.empty();
}

/// How a number with a band stands against the most that it may be.
template <class Q>
[[nodiscard]] verdict verdict_at_most(const estimate<Q>& number, const Q& most) {
  if (number.high <= most) return verdict::holds;
  return number.central <= most ? verdict::thin_margin : verdict::does_not_hold;
}

/// The circuit at the three ends of its loss coefficients.
struct circuit_band {
  plumbing::circuit_solution least;
  plumbing::circuit_solution central;
  plumbing::circuit_solution most;
};

[[nodiscard]] inline circuit_band solve_band(const plumbing_plan& plan, const water::liquid& water) {
  return {plumbing::operating_point(plan.circuit, water, plumbing::losses::most),
          plumbing::operating_point(plan.circuit, water, plumbing::losses::central),
          plumbing::operating_point(plan.circuit, water, plumbing::losses::least)};
}

template <class Q>
[[nodiscard]] estimate<Q> ordered(Q a, Q central, Q b) {
  return {std::min({a, central, b}), central, std::max({a, central, b}), "the loss coefficients of the fittings"};
}

[[nodiscard]] inline finding flow_finding(const circuit_band& solved) {
  finding f{.id = "plumbing.flow", .day = plumbing_day, .question = "How much flow do I really get?"};
  f.numbers.push_back({"all returns together",
                       amount_of(ordered(solved.least.delivered, solved.central.delivered, solved.most.delivered))});
  for (std::size_t i = 0; i < solved.central.outlets.size(); ++i) {
    const auto& outlet = solved.central.outlets[i];
    f.numbers.push_back({outlet.label,
                         amount_of(ordered(solved.least.outlets[i].flow, outlet.flow, solved.most.outlets[i].flow)),
                         role::detail});
    if (outlet.state == plumbing::outlet_state::still) f.note += "Nothing comes out of " + outlet.label + ". ";
    if (outlet.state == plumbing::outlet_state::reversed) f.note += "Water runs back into " + outlet.label + ". ";
  }
  for (const auto& pump : solved.central.pumps) {
    f.numbers.push_back({"head of " + pump.label, amount_of(pump.head), role::detail});
    if (pump.state == plumbing::pump_state::shut) f.note += pump.label + " lifts nothing: too high for it. ";
    if (pump.state == plumbing::pump_state::past_end) f.note += pump.label + " runs past the end of its curve. ";
  }
  f.says = f.note.empty() ? verdict::for_information : verdict::does_not_hold;
  f.sources = {plumbing::todini_pilati_1988};
  f.before_acting = solved.central.caution.text;
  f.measure_next = {"time a bucket at each return"};
  return f;
}

[[nodiscard]] inline finding velocity_finding(const circuit_band& solved) {
  finding f{.id = "plumbing.velocity", .day = plumbing_day, .question = "Is the water too fast in any pipe?"};
  const auto& runs = solved.central.runs;
  const auto fastest = std::max_element(runs.begin(), runs.end(), [](const auto& a, const auto& b) {
    return std::fabs(a.velocity.value()) < std::fabs(b.velocity.value());
  });
  const auto speed = [&](const plumbing::circuit_solution& solution) {
    const auto place = static_cast<std::size_t>(fastest - runs.begin());
    return velocity::from_value(std::fabs(solution.runs[place].velocity.value()));
  };
  const estimate<velocity> fast = ordered(speed(solved.least), speed(solved.central), speed(solved.most));
  f.says = verdict_at_most(fast, plumbing::recommended_velocity);
  f.numbers = entries(entry{"fastest, in " + fastest->label, amount_of(fast)},
                      entry{"recommended at most", amount_of(plumbing::recommended_velocity), role::limit});
  if (fastest->faster_than_recommended) f.note = "Faster water is noisy and hard on the pipe: take a size larger.";
  f.sources = {plumbing::todini_pilati_1988};
  return f;
}

[[nodiscard]] inline finding turnover_finding(const plumbing_plan& plan, const system_state& state,
                                              const circuit_band& solved) {
  finding f{
      .id = "plumbing.turnover", .day = plumbing_day, .question = "Is the display turned over as often as wanted?"};
  const auto volume_now = state.display_water;
  if (!volume_now) {
    f.says = verdict::not_enough_known;
    f.measure_next = {"give the display, so that its net volume can be computed"};
    return f;
  }
  const auto turns = [&](flow_rate q, volume v) { return rate::from_value(q.value() / v.value()); };
  const estimate<rate> turnover{turns(solved.least.delivered, volume_now->high),
                                turns(solved.central.delivered, volume_now->central),
                                turns(solved.most.delivered, volume_now->low), "losses of the fittings and net volume"};
  f.numbers = entries(entry{"turns", amount_of(turnover)});
  f.sources = {plumbing::todini_pilati_1988};
  if (plan.wanted_turnover) {
    f.numbers.push_back({"wanted", amount_of(*plan.wanted_turnover), role::limit});
    f.says = turnover.low >= *plan.wanted_turnover       ? verdict::holds
             : turnover.central >= *plan.wanted_turnover ? verdict::thin_margin
                                                         : verdict::does_not_hold;
  }
  return f;
}

[[nodiscard]] inline finding overflow_finding(const plumbing_plan& plan, const circuit_band& solved) {
  finding f{.id = "plumbing.overflow",
            .day = plumbing_day,
            .question = "How high does the water stand over the overflow edge?"};
  const auto at = [&](const plumbing::circuit_solution& solution) {
    return plumbing::head_over(plan.display.edge, solution.delivered, extrapolate);
  };
  const auto over = at(solved.central);
  const estimate<length> head{at(solved.least).head.low, over.head.central, at(solved.most).head.high,
                              "weir formula, form of the edge, and the band of the flow"};
  f.numbers = entries(entry{"over the edge", amount_of(head)});
  if (over.extrapolated) f.note = "Outside the range of the published weir formulas; the band allows for it.";
  if (plan.edge_to_rim) {
    f.numbers.push_back({"from the edge to the rim", amount_of(*plan.edge_to_rim), role::limit});
    const auto margin = map_falling(head, [&](length h) { return *plan.edge_to_rim - h; });
    f.numbers.push_back({"left below the rim", amount_of(margin), role::margin});
    f.says = verdict_of_margin(margin, plan.reserve);
  } else {
    f.measure_next = {"give the height from the overflow edge to the rim of the display"};
  }
  f.sources = {plumbing::rehbock_1929};
  f.before_acting = solved.central.caution.text;
  return f;
}

[[nodiscard]] inline std::string_view mode_words(plumbing::drain_mode mode) noexcept {
  switch (mode) {
    case plumbing::drain_mode::self_venting:
      return "quiet, with air in the middle";
    case plumbing::drain_mode::surging:
      return "surging: gulps air, noisy, with a swinging level";
    case plumbing::drain_mode::full:
      return "full of water, as a siphon";
    case plumbing::drain_mode::overloaded:
      break;
  }
  return "overloaded: the box runs over";
}

[[nodiscard]] inline finding drains_finding(const plumbing_plan& plan, const circuit_band& solved,
                                            const water::liquid& water) {
  finding f{
      .id = "plumbing.drains", .day = plumbing_day, .question = "Do the drains take it, and with one of them blocked?"};
  if (plan.drains.empty()) {
    f.says = verdict::not_enough_known;
    f.measure_next = {"give each drain: bore, length, drop, and how high the water may stand over its top"};
    f.before_acting = plumbing::drain_caution.text;
    return f;
  }
  const flow_rate flow = solved.most.delivered;  // the drains must take the most that may come
  estimate<flow_rate> carried{{}, {}, {}, "siphon formula, inlets and the losses of the fittings"};
  std::vector<plumbing::drain_answer> each;
  for (const auto& drain : plan.drains) {
    const auto& one = each.emplace_back(plumbing::drain_mode_for(drain, flow, water));
    carried.low += one.surely;
    carried.central += std::min(one.full.central, one.inlet.central);
    carried.high += std::min(one.full.high, one.inlet.high);
  }
  f.numbers = entries(entry{"all drains carry", amount_of(carried)},
                      entry{"the returns bring at most", amount_of(flow), role::limit});
  const auto& first = each.front();
  f.note = plan.drains.front().pipe.label + " alone with this flow: " + std::string{mode_words(first.mode)} + ".";
  f.says = carried.low >= flow       ? verdict::holds
           : carried.central >= flow ? verdict::thin_margin
                                     : verdict::does_not_hold;
  if (plan.drains.size() >= 2) {
    const auto blocked = plumbing::detail::blocked_cases(plan.drains, each, flow);
    const auto worst = std::min_element(blocked.cases.begin(), blocked.cases.end(),
                                        [](const auto& a, const auto& b) { return a.surely < b.surely; });
    f.numbers.push_back({"with " + worst->blocked + " blocked", amount_of(worst->surely), role::detail});
    if (f.says == verdict::holds && !blocked.holds) f.says = verdict::thin_margin;
  } else {
    if (f.says == verdict::holds) f.says = verdict::thin_margin;
    f.note += " There is no second drain.";
  }
  f.sources = {plumbing::hills_1983};
  f.before_acting = first.caution.text;
  return f;
}

/// Pump curve, and what the pipes ask for at each flow: the circuit solved with the pump at many speeds.
[[nodiscard]] inline figure flow_figure(const plumbing_plan& plan, const circuit_band& solved,
                                        const water::liquid& water) {
  const auto& pump = plan.circuit.pumps.front();
  figure picture{.id = "plumbing.flow",
                 .title = "What the pump gives, what the pipes ask for, and where they meet",
                 .across = {"flow", "flow_rate"},
                 .up = {"head", "length"}};
  curve gives{.label = pump.curve->label().empty() ? "pump" : pump.curve->label()};
  curve asks{.label = "pipes and lift", .as = stroke::dashed};
  const auto shown = plumbing::at_speed(pump.curve, pump.speed);
  for (int i = 0; i <= 40; ++i) {
    const flow_rate q = shown.end_flow() * (i / 40.0);
    if (const auto h = plumbing::head_at(shown, q).head) {
      gives.x.push_back(q.value());
      gives.y.push_back(h->value());
    }
  }
  plumbing::circuit at = plan.circuit;
  for (int i = 0; i <= 24; ++i) {
    at.pumps.front().speed = plumbing::speed_ratio{pump.speed.value() * (0.3 + 0.05 * i)};
    const auto point = plumbing::operating_point(at, water).pumps.front();
    if (point.state != plumbing::pump_state::running || point.flow > shown.end_flow()) continue;
    asks.x.push_back(point.flow.value());
    asks.y.push_back(point.head.value());
  }
  const auto& meets = solved.central.pumps.front();
  curve here{.label = "operating point", .x = {meets.flow.value()}, .y = {meets.head.value()}, .as = stroke::points};
  picture.curves = {std::move(gives), std::move(asks), std::move(here)};
  return picture;
}

/// The circuit at both ends and in the middle of its losses; nothing where there is no flow to compute.
[[nodiscard]] inline std::optional<circuit_band> solved_circuit(const plumbing_plan& plan, const system_state& state) {
  if (!has_circuit(plan)) return std::nullopt;
  return solve_band(plan, liquid_of(state));
}

[[nodiscard]] inline std::vector<finding> plumbing_findings(const plumbing_plan& plan, const system_state& state,
                                                            const std::optional<circuit_band>& band) {
  std::vector<finding> all;
  const water::liquid water = liquid_of(state);
  if (!band) {
    finding f{.id = "plumbing.flow",
              .day = plumbing_day,
              .question = "How much flow do I really get?",
              .says = verdict::not_enough_known};
    f.measure_next = {plan.circuit.pumps.empty() ? "give the pump's curve" : "give the returns that the pump feeds"};
    f.before_acting = plumbing::circuit_caution.text;
    all.push_back(std::move(f));
    return all;
  }
  all.push_back(flow_finding(*band));
  all.push_back(velocity_finding(*band));
  all.push_back(turnover_finding(plan, state, *band));
  all.push_back(overflow_finding(plan, *band));
  all.push_back(drains_finding(plan, *band, water));
  return all;
}

}  // namespace detail

/// Fill in what the plumbing tells the other sections: the flow of all returns, and the water and surface of the sump.
///
///   `operating_point` of the circuit; `running_levels` of the sump
///
/// @param state what is known so far; its temperature and salinity give the water in the pipes
/// @param plan  the plumbing
/// @throws      invalid_input, out_of_range, no_convergence (from the functions used)
/// @accuracy    as its parts
/// @source      the sources of `plumbing/`
inline void describe(system_state& state, const plumbing_plan& plan) {
  if (detail::has_circuit(plan)) {
    state.flow = plumbing::operating_point(plan.circuit, detail::liquid_of(state)).delivered;
  }
  const auto levels = plumbing::running_levels(plan.sump, state.flow.value_or(flow_rate{}), plan.drains_into);
  double surface = 0.0;
  for (std::size_t i = 0; i < plan.sump.chambers.size(); ++i) {
    const auto& chamber = plan.sump.chambers[i];
    surface += (chamber.plan.at(levels.chambers[i].level.central) - chamber.gear).value();
  }
  const double held = levels.water.value();
  const double part = plan.area_uncertainty.value();
  state.sump_water = estimate<volume>{volume::from_value(held * (1.0 - part)), volume::from_value(held),
                                      volume::from_value(held * (1.0 + part)), "plan areas of the sump"};
  state.sump_surface = area::from_value(surface);
  if (!state.display_surface) state.display_surface = plan.display.surface.get();
}

/// The decisions of the plumbing day.
///
///   `operating_point` with the loss coefficients at both ends of their bands, `head_over`, `drain_mode_for` and
///   `one_drain_blocked`
///
/// @param plan  circuit, display edge, drains and sump
/// @param state temperature and salinity of the water; net volume of the display for the turnover
/// @return      findings plumbing.flow, .velocity, .turnover, .overflow and .drains
/// @throws      invalid_input, out_of_range, no_convergence (from the functions used; they name the element)
/// @accuracy    as its parts
/// @source      the sources of `plumbing/`, carried by each finding
[[nodiscard]] inline std::vector<finding> assess_plumbing(const plumbing_plan& plan, const system_state& state) {
  return detail::plumbing_findings(plan, state, detail::solved_circuit(plan, state));
}

}  // namespace tankwright::commissioning
