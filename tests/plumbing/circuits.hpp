// SPDX-License-Identifier: BSL-1.0
/// @file
/// Circuits that several tests solve.
#pragma once

#include <string>
#include <tankwright/plumbing/circuit.hpp>
#include <utility>
#include <vector>

namespace tankwright::testing {

inline std::string numbered(const char* name, int i) { return std::string{name}.append(std::to_string(i)); }
inline plumbing::curve_point point(double flow_m3h, double head_m) {
  return {.flow = cubic_metres_per_hour(flow_m3h), .head = metres(head_m)};
}
inline plumbing::pump_curve three(const char* label, double h0, double q1, double h1, double q2, double h2) {
  return plumbing::curve_from_three_points(
      {.label = label, .shutoff_head = metres(h0), .middle = point(q1, h1), .last = point(q2, h2)});
}
inline plumbing::pipe_run run(std::string label, std::string from, std::string to, double length, double bore_mm,
                              double k) {
  return {.label = std::move(label),
          .from = std::move(from),
          .to = std::move(to),
          .bore = plumbing::pipe_bore{millimetres(bore_mm)},
          .length = metres(length),
          .fittings = plumbing::known_loss(k)};
}
inline plumbing::circuit_outlet outlet(std::string label, double level, bool open = false) {
  return {.label = std::move(label),
          .kind = open ? plumbing::outlet_kind::open : plumbing::outlet_kind::submerged,
          .level = metres(level),
          .exit = plumbing::known_loss(0.0)};
}

// What the EPANET cases were computed with.
inline const water::liquid reference_water{.density = kilograms_per_cubic_metre(1000.0),
                                           .viscosity = pascal_seconds(1.022e-3)};

/// The circuits E1 to E8: one pump, a trunk, two returns.
inline plumbing::circuit reference_circuit(const std::string& name) {
  const auto p1 = three("P1", 6.0, 8.0, 4.5, 14.0, 1.0);
  plumbing::circuit c{
      .sources = {{.label = "sump", .level = metres(0.0)}},
      .pumps = {{.label = "P1", .from = "sump", .to = "J1", .curve = p1, .check_valve = plumbing::check_valve{}}},
      .runs = {run("trunk", "J1", "J2", 3.0, 45.2, 6.0), run("A", "J2", "T1", 2.0, 34.0, 4.0),
               run("B", "J2", "T2", 3.5, 26.2, 5.5)},
      .outlets = {outlet("T1", 2.0), outlet("T2", 2.0)}};
  if (name == "E1") {
    c.runs = {run("trunk", "J1", "T1", 5.0, 45.2, 8.0)};
    c.outlets = {outlet("T1", 2.0)};
  } else if (name == "E3") {
    c.outlets[1] = outlet("T2", 2.3);
  } else if (name == "E5") {
    c.pumps.push_back({.label = "P2", .from = "sump", .to = "J1", .curve = p1, .check_valve = plumbing::check_valve{}});
  } else if (name == "E6") {
    c.pumps = {{.label = "P1", .from = "sump", .to = "between", .curve = p1, .check_valve = plumbing::check_valve{}},
               {.label = "P2", .from = "between", .to = "J1", .curve = p1, .check_valve = plumbing::check_valve{}}};
  } else if (name == "E7") {
    c.pumps[0].speed = plumbing::speed_ratio{0.8};
  } else if (name == "E8") {
    c.pumps.push_back({.label = "P2",
                       .from = "sump",
                       .to = "J1",
                       .curve = three("P2", 4.5, 5.0, 3.2, 9.0, 0.8),
                       .check_valve = plumbing::check_valve{}});
  }
  return c;
}

/// Schaschke Ex 9.10: a pump by points against 10 m + 542 032 Q^2.
inline plumbing::circuit schaschke_9_10() {
  const double d = 0.1;
  const double k = 542032.0 * 3.14159265358979 * 3.14159265358979 * 9.80665 * d * d * d * d / 8.0;
  std::vector<plumbing::curve_point> points;
  const double heads[] = {40.0, 39.5, 38.0, 35.0, 30.0, 20.0};
  for (int i = 0; i < 6; ++i) points.push_back({.flow = litres_per_second(2.0 * i), .head = metres(heads[i])});
  return {.sources = {{.label = "sump", .level = metres(0.0)}},
          .pumps = {{.label = "P1", .from = "sump", .to = "J1", .curve = plumbing::curve_from_points("P1", points)}},
          .runs = {run("main", "J1", "T1", 0.0, 1000.0 * d, k)},
          .outlets = {outlet("T1", 10.0)}};
}

}  // namespace tankwright::testing
