// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <map>
#include <random>
#include <sstream>
#include <string>
#include <tankwright/plumbing/circuit.hpp>
#include <vector>

#include "circuits.hpp"
#include "other_laws.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

evidence about(kind rests_on, const char* source) {
  return {"tankwright::plumbing::operating_point", rests_on, source};
}

/// Crane TP-410 Ex 7.19: water runs by gravity through 10 ft of 3 in and 20 ft of 2 in steel pipe.
twp::circuit crane_7_19() {
  const double ft = 0.0173;  // of 3 in
  twp::circuit c{.sources = {{.label = "reservoir", .level = feet(11.5)}},
                 .runs = {run("3 in", "reservoir", "reducer", 10.0 * 0.3048, 3.068 * 25.4, 0.5 + 60 * ft + 8 * ft),
                          run("2 in", "reducer", "end", 20.0 * 0.3048, 2.067 * 25.4, 0.5 * (1.0 - 4.0 / 9.0))},
                 .outlets = {outlet("end", 0.0, true)}};
  for (auto& r : c.runs) r.roughness = inches(0.0018);
  c.outlets[0].exit = twp::known_loss(1.0);
  return c;
}

/// Cengel & Cimbala Ex 8-7: 8 kW at 70 % lift water from 5 m to 13 m through two pipes of 36 m, 4 and 8 cm.
twp::circuit cengel_8_7() {
  std::vector<twp::curve_point> points{{.flow = litres_per_second(0.0), .head = metres(40.0)}};
  for (double q = 20.0; q <= 40.0; q += 0.5) {  // H = P/(rho g Q) where it matters
    points.push_back({.flow = litres_per_second(q), .head = metres(8000.0 * 0.7 / (998.0 * 9.80665 * q * 1e-3))});
  }
  twp::circuit c{
      .sources = {{.label = "low", .level = metres(5.0)}},
      .pumps = {{.label = "pump", .from = "low", .to = "J", .curve = twp::curve_from_points("pump", points)}},
      .runs = {run("1", "J", "high", 36.0, 40.0, 0.0), run("2", "J", "also high", 36.0, 80.0, 0.0)},
      .outlets = {outlet("high", 13.0), outlet("also high", 13.0)}};
  for (auto& r : c.runs) r.roughness = millimetres(0.045);
  return c;
}

std::string refusal(const twp::circuit& c) {
  try {
    (void)twp::operating_point(c, reference_water);
  } catch (const error& e) {
    const std::string start = "tankwright::plumbing::operating_point: ";
    const std::string line = e.what();
    CHECK(line.starts_with(start));
    return line.substr(start.size());
  }
  return "nothing thrown";
}

/// A circuit of plumbing_circuit.mjs: "P label from to h0 q1 h1 q2 h2 speed|R label from to length bore k check|
/// O label level kind". Pumps of EPANET stand behind check valves.
twp::circuit circuit_from_word(const std::string& word) {
  twp::circuit c{.sources = {{.label = "SUMP", .level = metres(0.0)}}};
  std::istringstream parts{word};
  for (std::string part; std::getline(parts, part, '|');) {
    std::istringstream in{part};
    std::string what, label;
    in >> what >> label;
    if (what == "P") {
      std::string from, to;
      double h0, q1, h1, q2, h2, speed;
      in >> from >> to >> h0 >> q1 >> h1 >> q2 >> h2 >> speed;
      c.pumps.push_back({.label = label,
                         .from = from,
                         .to = to,
                         .curve = three(label.c_str(), h0, q1, h1, q2, h2),
                         .speed = twp::speed_ratio{speed},
                         .check_valve = twp::check_valve{}});
    } else if (what == "R") {
      std::string from, to;
      double length, bore, k;
      int check;
      in >> from >> to >> length >> bore >> k >> check;
      c.runs.push_back(run(label, from, to, length, bore, k));
      if (check != 0) c.runs.back().check_valve = twp::check_valve{};
    } else {
      double level;
      std::string kind;
      in >> level >> kind;
      c.outlets.push_back(outlet(label, level, kind == "open"));
    }
  }
  return c;
}

/// The same circuit solved with another law, lengths in units of `length_unit` metres and flows in `flow_unit` m^3/s.
template <class Law>
std::map<std::string, double> flows_with_law(const twp::circuit& c, const Law& law, double length_unit,
                                             double flow_unit) {
  using twp::detail::curve_data;
  std::map<std::string, int> junctions;
  std::map<std::string, double> fixed;
  std::map<std::string, bool> open;
  for (const auto& s : c.sources) fixed[s.label] = s.level->value() / length_unit;
  for (const auto& o : c.outlets) {
    fixed[o.label] = o.level->value() / length_unit;
    open[o.label] = o.kind == twp::outlet_kind::open;
  }
  const auto name = [&](const std::string& n) {
    if (!fixed.contains(n)) junctions.try_emplace(n, static_cast<int>(junctions.size()));
  };
  for (const auto& p : c.pumps) name(p.from), name(p.to);
  for (const auto& r : c.runs) name(r.from), name(r.to);
  twp::detail::network<Law> net{law};
  net.set_nodes(static_cast<int>(junctions.size()), static_cast<int>(fixed.size()));
  std::map<std::string, int> fixed_node;
  for (const auto& [label, level] : fixed) {
    const int number = static_cast<int>(fixed_node.size());
    fixed_node[label] = static_cast<int>(junctions.size()) + number;
    net.set_fixed_head(number, level);
  }
  const auto node = [&](const std::string& n) { return fixed.contains(n) ? fixed_node[n] : junctions[n]; };
  std::vector<curve_data> curves;
  curves.reserve(c.pumps.size());
  for (const auto& p : c.pumps) {
    curve_data data = p.curve->data();
    data.shutoff /= length_unit;
    data.end_head /= length_unit;
    data.end_flow /= flow_unit;
    data.b *= std::pow(flow_unit, data.c) / length_unit;
    curves.push_back(data);
    twp::detail::network_link<Law> link;
    link.from = node(p.from);
    link.to = node(p.to);
    link.curve = &curves.back();
    link.is_pump = true;
    link.speed = p.speed.value();
    link.shut_backwards = p.check_valve.has_value();
    net.links.push_back(link);
  }
  for (const auto& r : c.runs) {
    twp::detail::network_link<Law> link;
    link.from = node(r.from);
    link.to = node(r.to);
    auto numbers = twp::detail::numbers_of("test", r);
    numbers.d /= length_unit;
    numbers.l /= length_unit;
    numbers.e /= length_unit;
    link.shut_backwards = numbers.holds || (open.contains(r.to) && open[r.to]);
    link.pipe = law.prepare(numbers);
    link.square = 1.0 / (15.4 * std::pow(numbers.d, 4));
    link.first_flow = numbers.d * numbers.d;
    net.links.push_back(link);
  }
  net.prepare();
  REQUIRE(net.solve().converged);
  std::map<std::string, double> flows;
  for (std::size_t i = 0; i < c.pumps.size(); ++i) flows[c.pumps[i].label] = net.links[i].q * flow_unit;
  for (std::size_t i = 0; i < c.runs.size(); ++i) {
    flows[c.runs[i].label] = net.links[c.pumps.size() + i].q * flow_unit;
  }
  return flows;
}

}  // namespace

TEST_CASE("circuit: reference table") {
  const auto solve = [](const reference_row& row) {
    const std::string name = row.text("case"), give = row.text("give");
    if (name == "schaschke9.10") {
      const auto s = twp::operating_point(schaschke_9_10(), reference_water);
      return give == "flow" ? s.pump("P1").flow.value() : s.pump("P1").head.value();
    }
    if (name == "crane7.19") {
      const water::liquid water{.density = pounds_per_cubic_foot(62.364), .viscosity = millipascal_seconds(1.1)};
      return in_us_gallons_per_minute(twp::operating_point(crane_7_19(), water).delivered);
    }
    if (name == "schaschke8.8") {  // two pipes side by side, equal in length and f
      const twp::circuit c{
          .sources = {{.label = "high", .level = metres(5.0)}},
          .runs = {run("25", "high", "low", 50.0, 25.0, 0.0), run("50", "high", "also low", 50.0, 50.0, 0.0)},
          .outlets = {outlet("low", 0.0), outlet("also low", 0.0)}};
      const auto flows = flows_with_law(c, constant_law{0.02}, 1.0, 1.0);
      return flows.at("50") / flows.at("25") / 4.0;
    }
    if (name == "cengel8-7") {
      const water::liquid water{.density = kilograms_per_cubic_metre(998.0), .viscosity = pascal_seconds(1.002e-3)};
      return twp::operating_point(cengel_8_7(), water).run(give).flow.value();
    }
    const auto s = twp::operating_point(reference_circuit(name), reference_water);
    if (give == "total") return in_cubic_metres_per_hour(s.delivered);
    if (give == "pump head") {  // of both, where they stand one after the other
      return s.pump("P1").head.value() + (name == "E6" ? s.pump("P2").head.value() : 0.0);
    }
    if (give == "P1" || give == "P2") return in_cubic_metres_per_hour(s.pump(give).flow);
    if (give == "J2") return in_metres(*s.junction("J2").head);
    return in_cubic_metres_per_hour(s.run(give).flow);
  };
  check_rows(reference_rows("plumbing/circuit.csv"), {{"tankwright::plumbing::operating_point", solve}});
  const auto by_hazen_williams = [](const reference_row& row) {
    const auto flows = flows_with_law(reference_circuit("E4"), hazen_williams_law{150.0}, 1.0, 1.0);
    const std::string give = row.text("give");
    return 3600.0 * flows.at(give == "total" ? "trunk" : give);
  };
  check_rows(reference_rows("plumbing/circuit_hazen_williams.csv"),
             {{"tankwright::plumbing::operating_point", by_hazen_williams}});
}

TEST_CASE("circuit: random circuits against EPANET, with our law and with its own") {
  std::map<std::string, twp::circuit_solution> ours;
  std::map<std::string, std::map<std::string, double>> its;
  int count = 0;
  const auto flow = [&](const reference_row& row) {
    const std::string key = row.text("circuit"), link = row.text("link");
    if (row.text("law") == "epanet") {
      if (!its.contains(key)) {
        // EPANET takes 101.94 m^3/h for a cubic foot per second.
        its[key] = flows_with_law(circuit_from_word(row.text("net")), epanet_law{}, 0.3048, 1.0 / 3600.0 * 101.94);
      }
      return its[key].at(link) * 3600.0;
    }
    if (!ours.contains(key)) {
      const water::liquid water{.density = kilograms_per_cubic_metre(1000.0),
                                .viscosity = pascal_seconds(1.1e-5 * 0.3048 * 0.3048 * 1000.0)};
      ours.emplace(key, twp::operating_point(circuit_from_word(row.text("net")), water));
      ++count;
    }
    const auto& s = ours.at(key);
    return in_cubic_metres_per_hour(link.front() == 'P' ? s.pump(link).flow : s.run(link).flow);
  };
  check_rows(live_rows("plumbing_circuit.csv"), {{"tankwright::plumbing::operating_point", flow}});
  CHECK(count >= 260);
}

TEST_CASE("circuit: an outlet above the reach of the pump gets nothing, and the answer says so") {
  const auto states = about(kind::property, "states of pumps and outlets");
  twp::circuit c = reference_circuit("E1");
  c.outlets = {outlet("T1", 6.5, true)};
  const auto high = twp::operating_point(c, reference_water);
  TW_HOLDS(states, high.delivered.value() == 0.0 && high.run("trunk").flow.value() == 0.0);
  TW_HOLDS(states, high.pump("P1").state == twp::pump_state::shut && high.pump("P1").head == metres(6.0));
  TW_HOLDS(states, high.outlet("T1").state == twp::outlet_state::still);

  c.outlets = {outlet("T1", -4.0, true)};  // far below: the pump runs off its curve
  const auto low = twp::operating_point(c, reference_water);
  TW_HOLDS(states, low.pump("P1").state == twp::pump_state::past_end);
  TW_CHECK(states, low.pump("P1").flow, cubic_metres_per_hour(14.0), relative(1e-14));
  TW_CHECK(states, low.pump("P1").head, metres(1.0), relative(1e-12));

  // Two returns, one so high that the other sucks it empty when it is under water, and not when it ends in the air.
  c = reference_circuit("E2");
  c.outlets = {outlet("T1", 0.2), outlet("T2", 4.5)};
  const auto back = twp::operating_point(c, reference_water);
  TW_HOLDS(states, back.outlet("T2").state == twp::outlet_state::reversed && back.run("B").reversed);
  TW_HOLDS(states, back.run("B").flow.value() < 0.0 && back.run("B").loss.value() < 0.0);
  TW_CHECK(states, back.delivered, back.outlet("T1").flow, relative(1e-15));
  c.outlets[1] = outlet("T2", 4.5, true);
  const auto dry = twp::operating_point(c, reference_water);
  TW_HOLDS(states, dry.outlet("T2").state == twp::outlet_state::still && !dry.run("B").reversed);

  // A run written from the outlet inwards carries the same flow the other way round.
  c = reference_circuit("E2");
  c.runs[1] = run("A", "T1", "J2", 2.0, 34.0, 4.0);
  const auto turned = twp::operating_point(c, reference_water);
  const auto straight = twp::operating_point(reference_circuit("E2"), reference_water);
  TW_CHECK(states, turned.run("A").flow, -straight.run("A").flow, relative(1e-14));
  TW_CHECK(states, turned.outlet("T1").flow, straight.outlet("T1").flow, relative(1e-14));
  CHECK(straight.run("A").faster_than_recommended);
  CHECK(straight.caution.text.find("drains") != std::string_view::npos);
}

TEST_CASE("circuit: a suction pipe has its own limit of velocity, and very rough pipe is beyond the formula") {
  const auto flagged = about(kind::property, "velocities against their limits");
  twp::circuit c = reference_circuit("E1");
  c.pumps[0].from = "inlet";
  c.runs.push_back(run("suction", "sump", "inlet", 0.5, 50.0, 1.0));
  const auto s = twp::operating_point(c, reference_water);
  TW_HOLDS(flagged, s.run("suction").velocity > twp::recommended_suction_velocity);
  TW_HOLDS(flagged, s.run("suction").velocity < twp::recommended_velocity);
  TW_HOLDS(flagged, s.run("suction").faster_than_recommended);
  c.runs[1].bore = twp::pipe_bore{millimetres(60.0)};
  TW_HOLDS(flagged, !twp::operating_point(c, reference_water).run("suction").faster_than_recommended);

  c.runs[0].roughness = millimetres(4.0);
  CHECK(refusal(c).starts_with("trunk: relative roughness = 0.0884955752 is outside the published range 0 to 0.05"));
  CHECK(twp::operating_point(c, reference_water, twp::losses::central, extrapolate).delivered < s.delivered);
}

TEST_CASE("circuit: valves, exits and nozzles are loss coefficients on the run's bore") {
  const auto same = about(kind::identity, "a valve, an exit or a nozzle as its K on the bore of the run");
  twp::circuit with_k = reference_circuit("E2"), with_valve = with_k, with_nozzle = with_k;
  const double k = twp::detail::loss_from_kv(5.0, 0.034);
  with_k.runs[1].fittings = twp::known_loss(4.0 + k);
  with_valve.runs[1].valve = twp::flow_coefficient::from_kv(5.0);
  const double nozzle = std::pow(34.0 / 20.0, 4);
  TW_CHECK(same, twp::operating_point(with_valve, reference_water).run("A").flow,
           twp::operating_point(with_k, reference_water).run("A").flow, relative(1e-14));
  with_k.runs[1].fittings = twp::known_loss(4.0 + nozzle);
  with_nozzle.outlets[0].exit = twp::known_loss(1.0);
  with_nozzle.outlets[0].opening = twp::pipe_bore{millimetres(20.0)};
  TW_CHECK(same, twp::operating_point(with_nozzle, reference_water).run("A").flow,
           twp::operating_point(with_k, reference_water).run("A").flow, relative(1e-14));
  with_valve.runs[1].valve = twp::flow_coefficient::from_kv(0.0);
  const auto shut = twp::operating_point(with_valve, reference_water);
  TW_HOLDS(same, shut.run("A").flow.value() == 0.0 && shut.outlet("T1").state == twp::outlet_state::still);
}

TEST_CASE("circuit: the band of the loss coefficients becomes a band of the flow") {
  const evidence band{"tankwright::plumbing::flow_with_band", kind::identity,
                      "operating points at the ends of the bands"};
  twp::circuit c = reference_circuit("E2");
  const auto k = [](double low, double central, double high) {
    return estimate<twp::loss_coefficient>{twp::loss_coefficient{low}, twp::loss_coefficient{central},
                                           twp::loss_coefficient{high}, ""};
  };
  c.runs[0].fittings = k(4.0, 6.0, 9.0);
  const auto flow = twp::flow_with_band(c, reference_water, "trunk");
  const auto at = [&](double fixed) {
    twp::circuit one = c;
    one.runs[0].fittings = twp::known_loss(fixed);
    return twp::operating_point(one, reference_water).run("trunk").flow;
  };
  TW_CHECK(band, flow.low, at(9.0), relative(1e-14));
  TW_CHECK(band, flow.central, at(6.0), relative(1e-14));
  TW_CHECK(band, flow.high, at(4.0), relative(1e-14));
  CHECK_THROWS_AS((void)twp::flow_with_band(c, reference_water, "no such run"), invalid_input);
}

TEST_CASE("circuit: a thousand branches") {
  const auto large = about(kind::property, "a manifold of a thousand equal nozzles passes them falling flows");
  twp::circuit c{
      .sources = {{.label = "sump", .level = metres(0.0)}},
      .pumps = {{.label = "P", .from = "sump", .to = "J0", .curve = three("P", 8.0, 60.0, 6.0, 110.0, 1.0)}}};
  for (int i = 0; i < 1000; ++i) {
    const std::string here = numbered("J", i), nozzle = numbered("N", i);
    c.runs.push_back(run(numbered("R", i), here, nozzle, 0.1, 4.0, 2.0));
    c.outlets.push_back(outlet(nozzle, 1.0, true));
    if (i < 999) c.runs.push_back(run(numbered("M", i), here, numbered("J", i + 1), 0.05, 100.0, 0.05));
  }
  const auto s = twp::operating_point(c, reference_water);
  TW_HOLDS(large, s.iterations < 15);
  double sum = 0.0;
  for (std::size_t i = 0; i < s.outlets.size(); ++i) {
    sum += s.outlets[i].flow.value();
    if (i > 0) TW_HOLDS(large, s.outlets[i].flow <= s.outlets[i - 1].flow * (1 + 1e-9));
  }
  TW_CHECK(large, s.pump("P").flow.value(), sum, relative(1e-9));
}

TEST_CASE("circuit: a bad circuit is refused by the name of the culprit") {
  const auto e2 = [] { return reference_circuit("E2"); };
  twp::circuit c = e2();
  c.runs[1].bore = twp::pipe_bore{metres(0.0)};
  CHECK(refusal(c) == "A: bore = 0 m is not possible; expected 0.0001 to 20 m");
  c = e2();
  c.runs[1].length = metres(-1.0);
  CHECK(refusal(c) == "A: length = -1 m is not possible; expected 0 to 100000 m");
  c = e2();
  c.runs[1].roughness = millimetres(40.0);
  CHECK(refusal(c) == "A: relative roughness = 1.17647059 is not possible; expected at least 0 and below 1");
  c = e2();
  c.outlets[0].level = metres(std::nan(""));
  CHECK(refusal(c) == "T1: level = nan m is not possible; expected -10000 to 10000 m");
  c = e2();
  c.runs[2].label = "A";
  CHECK(refusal(c) == "A is the label of two runs");
  c = e2();
  c.outlets[1].label = "T1";
  CHECK(refusal(c) == "T1 is the label of two sources or outlets");
  c = e2();
  c.runs[2].from = "";
  CHECK(refusal(c) == "B needs both `from` and `to`");
  c = e2();
  c.runs[2].label = "";
  CHECK(refusal(c) == "run needs a label");
  c = e2();
  c.runs[2].from = "T2";
  CHECK(refusal(c) == "B begins and ends at 'T2'");
  c = e2();
  c.pumps[0].to = "T1";
  CHECK(refusal(c) == "P1 is set against outlet 'T1' without a run between");
  c = e2();
  c.runs[0].length = metres(0.0);
  c.runs[0].fittings = twp::known_loss(0.0);
  CHECK(refusal(c) == "trunk resists nothing: give it a length or a loss coefficient");
  c = e2();
  c.pumps[0].speed = twp::speed_ratio{-0.1};
  CHECK(refusal(c) == "P1: speed = -0.1 is not possible; expected 0 to 10");
  c = e2();
  c.pumps[0].check_valve = twp::check_valve{.leak = twp::flow_coefficient::from_kv(-1.0)};
  CHECK(refusal(c) ==
        "P1: Kv of the check valve's leak = -1 m3/h at 1 bar is not possible; expected 0 to "
        "100000000 m3/h at 1 bar");
  c = e2();
  c.pumps[0].idle.backwards = {twp::head_ratio{-1.0}, twp::head_ratio{1.3}, twp::head_ratio{2.4}, "upside down"};
  CHECK(refusal(c) == "P1: loss of the idle pump = -1 is not possible; expected 0.001 to 1000");
  CHECK_THROWS_WITH_AS((void)twp::operating_point(e2(), reference_water).run("C"),
                       "tankwright::plumbing::circuit_solution: C is no run of this circuit; there are 'trunk' 'A' 'B'",
                       invalid_input);
}

TEST_CASE("circuit: a solver that may not finish says where it stands") {
  const twp::circuit c = reference_circuit("E2");
  twp::detail::circuit_equations built{"tankwright::plumbing::operating_point", c, reference_water};
  try {
    built.solve({.iterations = 1});
    FAIL("converged in one step");
  } catch (const no_convergence& e) {
    CHECK(std::string{e.what()}.find("is what is left after 1 steps") != std::string::npos);
    CHECK(e.details().value > 0.0);
    CHECK(e.details().unit == "m");
  }
}
