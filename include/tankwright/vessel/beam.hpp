// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does this beam carry it, and how far does it sag? Straight beams of one section on any supports: simply supported,
/// fixed, propped, overhanging, continuous; under point loads and loads that are even or change evenly along the beam.
/// A pull along the beam may act as well (a cross-brace with lights on it).
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <string_view>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/numerics/root.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <utility>
#include <vector>

namespace tankwright::vessel {

/// What matters of a cross-section that bends about a horizontal axis.
struct beam_section {
  required<tankwright::area> area;
  required<second_moment_of_area> second_moment;
  required<length> extreme_fibre;  ///< from the neutral axis to the farthest fibre
};

struct rectangle {
  required<length> breadth;
  required<length> depth;  ///< upright
};

/// A rectangular cross-section.
///
///   A = b d,  I = b d^3/12,  c = d/2
///
/// @param size breadth and upright depth [m] > 0
/// @return     the section
/// @throws     invalid_input
/// @accuracy   exact
/// @source     geometry
[[nodiscard]] inline beam_section rectangular_section(const rectangle& size) {
  constexpr std::string_view here = "tankwright::vessel::rectangular_section";
  const double b = size.breadth->value(), d = size.depth->value();
  core::check(here, detail::positive_length("breadth"), b);
  core::check(here, detail::positive_length("depth"), d);
  return {.area = area::from_value(b * d),
          .second_moment = second_moment_of_area::from_value(b * d * d * d / 12.0),
          .extreme_fibre = length::from_value(0.5 * d)};
}

enum class support_kind : bool {
  pinned,  ///< holds the beam up or down, lets it turn
  fixed,   ///< lets it do neither; only at an end of the beam
};

struct beam_support {
  required<length> at;
  support_kind kind = support_kind::pinned;
};

/// A weight at one place; negative where something pulls up.
struct point_load {
  required<force> load;
  required<length> at;
  std::string label = "point load";
};

/// A load along a piece of the beam that changes evenly from one end of the piece to the other.
struct spread_load {
  required<line_load> at_start;
  required<line_load> at_end;
  required<length> from;
  required<length> to;
  std::string label = "spread load";
};

/// A straight beam of one section. Lengths count from its left end, loads act downwards.
struct beam {
  required<length> span;  ///< from end to end, overhangs included
  required<beam_section> section;
  required<stress> modulus;
  required<std::vector<beam_support>> supports;
  std::vector<point_load> points{};
  std::vector<spread_load> spreads{};
  force pull = force::from_value(0.0);  ///< tension along the beam
  std::string label = "beam";
};

namespace detail {

inline constexpr limits section_area_limits{"area", "m2", possible_area};
inline constexpr limits second_moment_limits{"second moment of area", "m4", {1e-30, 1e12}};
inline constexpr limits extreme_fibre_limits{"extreme fibre", "m", {1e-9, 1e3}};

/// coefficient (x - a)^power / power! to the right of a: one load, reaction or holding moment in the deflection curve.
struct curve_term {
  double a;
  int power;
  double coefficient;
};

/// E I y of a beam of length 1, downwards, in the units of the loads.
struct deflection_curve {
  double start = 0.0;  ///< y and slope at the left end
  double slope = 0.0;
  std::vector<curve_term> terms;

  /// Derivative `order` at x; where a term begins, the value just left of it unless `right`.
  [[nodiscard]] double at(double x, int order, bool right = false) const noexcept {
    double sum = order == 0 ? start + slope * x : order == 1 ? slope : 0.0;
    for (const curve_term& t : terms) {
      const double s = x - t.a;
      if (t.power < order || !(s > 0.0 || (s == 0.0 && (right || x == 0.0)))) continue;
      double value = t.coefficient;
      for (int i = 1; i <= t.power - order; ++i) value *= s / i;
      sum += value;
    }
    return sum;
  }
};

/// Solve a small dense system in place (Gauss with partial pivoting); false when it is singular.
[[nodiscard]] inline bool solve_linear(std::vector<std::vector<double>>& a, std::vector<double>& b) noexcept {
  const std::size_t n = b.size();
  for (std::size_t i = 0; i < n; ++i) {
    std::size_t pivot = i;
    for (std::size_t j = i; j < n; ++j) {
      if (std::fabs(a[j][i]) > std::fabs(a[pivot][i])) pivot = j;
    }
    if (std::fabs(a[pivot][i]) < 1e-13) return false;
    std::swap(a[i], a[pivot]);
    std::swap(b[i], b[pivot]);
    for (std::size_t j = i + 1; j < n; ++j) {
      const double f = a[j][i] / a[i][i];
      for (std::size_t k = i; k < n; ++k) a[j][k] -= f * a[i][k];
      b[j] -= f * b[i];
    }
  }
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k) b[i] -= a[i][k] * b[k];
    b[i] /= a[i][i];
  }
  return true;
}

/// Places where moment or deflection can be largest: ends of loads, supports, and zeros of load, shear, moment and
/// slope. Between two zeros of one derivative the one below it is monotone, so that no zero is missed.
[[nodiscard]] inline std::vector<double> turning_points(const deflection_curve& curve) {
  std::vector<double> points{0.0, 1.0};
  for (const curve_term& t : curve.terms) points.push_back(t.a);
  std::sort(points.begin(), points.end());
  for (int order = 4; order >= 1; --order) {
    const std::size_t count = points.size();
    for (std::size_t i = 0; i + 1 < count; ++i) {
      const double low = points[i], high = points[i + 1];
      const auto f = [&](double x) { return curve.at(x, order, x == low); };
      if ((f(low) < 0.0) == (f(high) < 0.0)) continue;
      points.push_back(numerics::bracketed_root<double>("tankwright::vessel::bend", "turning point", f, low, high));
    }
    std::sort(points.begin(), points.end());
  }
  return points;
}

/// What `along` needs of a beam that was solved.
struct solved_beam {
  deflection_curve curve;
  double span;
  double rigidity;  ///< E I
};

}  // namespace detail

struct support_reaction {
  length at;
  force up;                    ///< negative where the support must hold the beam down
  tankwright::moment holding;  ///< of a fixed end: the bending moment in the beam there; 0 when pinned
};

struct beam_result {
  std::vector<support_reaction> reactions;  ///< in the order of the supports
  tankwright::moment largest_moment;        ///< with its sign: sagging is positive
  length moment_at;
  length deflection;  ///< the largest in size, downwards positive
  length deflection_at;
  stress bending;
  stress axial;
  stress combined;  ///< at the stretched fibre
  tankwright::caution caution;
  detail::solved_beam solved;  ///< for `along`
};

/// Reactions, largest moment, deflection and stress of a beam.
///
///   E I y'''' = q,  M = -E I y'',  sigma = M c / I + N / A
///
/// @param beam span, section, modulus > 0; up to 30 supports at different places within the span, together able to hold
///             the beam; up to 300 loads within the span; pull [N] >= 0
/// @return     the result; `along` gives the values at any place
/// @throws     invalid_input (names the beam and what is wrong with it)
/// @accuracy   of Euler-Bernoulli theory: 1e-12. Shear deflection is left out: 1 % at a depth of span/15 in wood
/// @source     Euler-Bernoulli beam theory
[[nodiscard]] inline beam_result bend(const beam& beam) {
  constexpr std::string_view here = "tankwright::vessel::bend";
  const double l = beam.span->value();
  core::check_element(here, beam.label, detail::positive_length("span"), l);
  const beam_section& section = beam.section;
  core::check_element(here, beam.label, detail::section_area_limits, section.area->value());
  core::check_element(here, beam.label, detail::second_moment_limits, section.second_moment->value());
  core::check_element(here, beam.label, detail::extreme_fibre_limits, section.extreme_fibre->value());
  core::check_element(here, beam.label, {"modulus", "Pa", detail::possible_modulus}, beam.modulus->value());
  core::check_element(here, beam.label, {"pull", "N", detail::possible_force_from_zero}, beam.pull.value());
  const auto count = [&](std::string_view what, double most, std::size_t n) {
    core::check_element(here, beam.label, {what, "", {0.0, most}}, static_cast<double>(n));
  };
  count("number of supports", 30.0, beam.supports->size());
  count("number of loads", 300.0, beam.points.size() + beam.spreads.size());
  const auto part = [&](const std::string& what, length at) {
    core::check_element(here, beam.label + ": " + what, {"place", "m", {0.0, l}}, at.value());
    return at.value() / l;
  };

  detail::deflection_curve curve;
  for (const point_load& p : beam.points) {
    core::check_element(here, beam.label + ": " + p.label, {"load", "N", detail::possible_force}, p.load->value());
    curve.terms.push_back({part(p.label, p.at), 3, p.load->value()});
  }
  for (const spread_load& s : beam.spreads) {
    const std::string name = beam.label + ": " + s.label;
    const double from = part(s.label, s.from), to = part(s.label, s.to);
    core::check_element(here, name, {"load", "N/m", detail::possible_force}, s.at_start->value());
    core::check_element(here, name, {"load", "N/m", detail::possible_force}, s.at_end->value());
    core::check_element(here, name, {"end of the load", "m", {s.from->value(), l, edge::open}}, s.to->value());
    const double first = s.at_start->value() * l, last = s.at_end->value() * l, rise = (last - first) / (to - from);
    curve.terms.push_back({from, 4, first});
    curve.terms.push_back({to, 4, -last});
    curve.terms.push_back({from, 5, rise});
    curve.terms.push_back({to, 5, -rise});
  }

  // Unknowns: y and y' at the left end, then each support's reaction, and its moment when fixed.
  const auto& supports = beam.supports.get();
  std::vector<detail::curve_term> unknown;
  for (std::size_t i = 0; i < supports.size(); ++i) {
    const double at = part("support", supports[i].at);
    for (std::size_t j = 0; j < i; ++j) {
      if (supports[j].at->value() == supports[i].at->value()) {
        detail::refuse_of(here, beam.label, "support", supports[i].at->value(), "m", "stands where another one does");
      }
    }
    unknown.push_back({at, 3, -1.0});
    if (supports[i].kind == support_kind::fixed) {
      if (at != 0.0 && at != 1.0) {
        detail::refuse_of(here, beam.label, "fixed support", supports[i].at->value(), "m",
                          "is not at an end of the beam; a beam that goes on behind it is two beams");
      }
      unknown.push_back({at, 2, 1.0});
    }
  }
  std::vector<std::vector<double>> a;
  std::vector<double> b;
  const auto equation = [&](double x, int order) {  // sum of all unknowns' parts = - the loads' part
    std::vector<double> row{order == 0 ? 1.0 : 0.0, order == 0 ? x : order == 1 ? 1.0 : 0.0};
    for (const auto& u : unknown) row.push_back(detail::deflection_curve{0.0, 0.0, {u}}.at(x, order, true));
    a.push_back(std::move(row));
    b.push_back(-curve.at(x, order, true));
  };
  for (const beam_support& s : supports) {
    const double at = s.at->value() / l;
    equation(at, 0);
    if (s.kind == support_kind::fixed) equation(at, 1);
  }
  equation(1.0, 2);  // beyond the right end there is neither moment nor shear
  equation(1.0, 3);
  if (!detail::solve_linear(a, b)) {
    detail::refuse_of(here, beam.label, "number of supports", static_cast<double>(supports.size()), "",
                      "cannot hold the beam: it needs two supports, or one that is fixed");
  }
  curve.start = b[0];
  curve.slope = b[1];
  for (std::size_t i = 0; i < unknown.size(); ++i) {
    unknown[i].coefficient *= b[i + 2];
    curve.terms.push_back(unknown[i]);
  }

  const double rigidity = beam.modulus->value() * section.second_moment->value();
  beam_result result{};
  result.caution = structural_caution;
  for (std::size_t i = 0, u = 0; i < supports.size(); ++i) {
    const bool fixed = supports[i].kind == support_kind::fixed;
    const double up = -unknown[u].coefficient;
    // The bending moment in the beam is -y''; just inside a fixed left end that is minus its own term.
    const double moment = !fixed ? 0.0 : unknown[u].a == 0.0 ? -unknown[u + 1].coefficient : unknown[u + 1].coefficient;
    result.reactions.push_back({supports[i].at, force::from_value(up), tankwright::moment::from_value(moment * l)});
    u += fixed ? 2 : 1;
  }
  double most_moment = 0.0, moment_at = 0.0, most_sag = 0.0, sag_at = 0.0;
  for (const double x : detail::turning_points(curve)) {
    const double moment = -curve.at(x, 2), sag = curve.at(x, 0);
    if (std::fabs(moment) > std::fabs(most_moment)) {
      most_moment = moment;
      moment_at = x;
    }
    if (std::fabs(sag) > std::fabs(most_sag)) {
      most_sag = sag;
      sag_at = x;
    }
  }
  const double bending = std::fabs(most_moment) * l * section.extreme_fibre->value() / section.second_moment->value();
  const double axial = beam.pull.value() / section.area->value();
  result.largest_moment = tankwright::moment::from_value(most_moment * l);
  result.moment_at = length::from_value(moment_at * l);
  result.deflection = length::from_value(most_sag * l * l * l / rigidity);
  result.deflection_at = length::from_value(sag_at * l);
  result.bending = stress::from_value(bending);
  result.axial = stress::from_value(axial);
  result.combined = stress::from_value(bending + axial);
  result.solved = {std::move(curve), l, rigidity};
  return result;
}

/// What a beam does at one place.
struct beam_station {
  length deflection;          ///< downwards positive
  angle slope;                ///< positive where the beam goes down to the right
  tankwright::moment moment;  ///< sagging positive
  force shear;                ///< what the left part pushes the right part up with
};

/// Deflection, slope, moment and shear at a place of a beam that was solved.
///
///   y, y', M = -E I y'', V = -E I y'''
///
/// @param result of `bend`
/// @param at     from the left end [m], within the beam; at a load or support, the values just left of it
/// @return       the four values
/// @throws       invalid_input
/// @accuracy     as `bend`
/// @source       Euler-Bernoulli beam theory
[[nodiscard]] inline beam_station along(const beam_result& result, length at) {
  const auto& [curve, l, rigidity] = result.solved;
  core::check("tankwright::vessel::along", {"terms of the beam", "", {0.0, 1e5}},
              static_cast<double>(curve.terms.size()));
  for (const detail::curve_term& t : curve.terms) {
    core::check("tankwright::vessel::along", {"power of a term", "", {0.0, 5.0}}, t.power);
  }
  const double x = at.value() / l;
  core::check("tankwright::vessel::along", {"place", "m", {0.0, l}}, at.value());
  return {length::from_value(curve.at(x, 0) * l * l * l / rigidity),
          angle::from_value(curve.at(x, 1) * l * l / rigidity), moment::from_value(-curve.at(x, 2) * l),
          force::from_value(-curve.at(x, 3))};
}

}  // namespace tankwright::vessel
