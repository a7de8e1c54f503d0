// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/pipe.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/plumbing/fittings.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/plumbing/pipe_sizes.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

namespace detail {

/// Bores that are sold: metric PVC pressure pipe, 20 to 160 mm outside, walls of PN 10 (EN ISO 1452-2, from memory).
inline constexpr double sold_bores[] = {0.0170, 0.0212, 0.0284, 0.0362, 0.0452, 0.0570, 0.0678, 0.0814, 0.0996, 0.1450};

/// Nominal sizes that are sold: ASTM D1785, schedules 40 and 80.
inline constexpr double sold_inches[] = {0.5, 0.75, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0};

}  // namespace detail

TANKWRIGHT_INLINE void describe_bore(visitor& key, bore& b) {
  key("bore", b.inside, {.means = "inside diameter of the pipe",
                         .limits = {millimetres(1.0), metres(2.0)},
                         .set_by = chosen,
                         .sizes = detail::sold_bores,
                         .doubt = usual::rule});
  key("nominal", b.nominal, {.means = "nominal size of a PVC pipe in inches, in place of the bore",
                             .limits = {0.125, 24.0},
                             .set_by = chosen,
                             .sizes = detail::sold_inches});
  key("schedule", b.schedule, {"40", "80"}, {.means = "wall of that pipe", .set_by = chosen});
  key.alternatives({"bore", "nominal"}, true);
  key.together({"nominal", "schedule"});
}

TANKWRIGHT_INLINE void describe_pipe(visitor& key, pipe& p) {
  describe_bore(key, p.bore);
  key("length", p.length, {.means = "length of the pipe", .limits = {metres(0.0), metres(1000.0)}, .needed = true,
                           .doubt = millimetres(20.0)});
  key("loss", p.loss, {.means = "sum of the loss coefficients of its fittings", .limits = {0.0, 10000.0},
                       .doubt = usual::fittings});
  key.replaced("loss_uncertainty", "write it with the loss: loss = \"4.5 +/- 30 %\"");
  const auto count = [&](std::string_view name, value<double>& v, std::string_view means) {
    key(name, v, {.means = means, .limits = {0.0, 100.0}, .whole = true, .set_by = chosen});
  };
  count("elbows", p.fittings.elbows, "number of elbows of 90 degrees, counted in addition to loss");
  count("elbows_45", p.fittings.elbows_45, "number of elbows of 45 degrees");
  count("tees_through", p.fittings.tees_through, "number of tees that the water passes straight");
  count("tees_branch", p.fittings.tees_branch, "number of tees in which it turns into the branch");
  count("ball_valves", p.fittings.ball_valves, "number of ball valves, open");
  count("gate_valves", p.fittings.gate_valves, "number of gate valves, open");
  count("unions", p.fittings.unions, "number of unions and couplings");
  count("swing_checks", p.fittings.swing_checks, "number of swing check valves, for what they cost while water runs");
  count("entrances", p.fittings.entrances, "number of sharp entrances from a tank into the pipe");
}

TANKWRIGHT_INLINE tankwright::plumbing::pipe_bore bore_of(const bore& b) {
  if (b.inside) return tankwright::plumbing::pipe_bore{*b.inside};
  return tankwright::plumbing::pvc_pipe(tankwright::plumbing::nominal_size::from_inches(*b.nominal), *b.schedule)
      .average_bore;
}

TANKWRIGHT_INLINE estimate<tankwright::plumbing::loss_coefficient> loss_of(const counted_fittings& c,
                                                                           tankwright::plumbing::pipe_bore bore) {
  namespace tp = tankwright::plumbing;
  using kind = tp::fitting;
  const auto of = [&](const value<double>& count, kind what) {
    return tp::fitted{tp::fitting_loss(what, bore), static_cast<int>(count.value_or(0.0))};
  };
  return tp::total_loss({of(c.elbows, kind::elbow_90), of(c.elbows_45, kind::elbow_45),
                         of(c.tees_through, kind::tee_through_run), of(c.tees_branch, kind::tee_through_branch),
                         of(c.ball_valves, kind::ball_valve), of(c.gate_valves, kind::gate_valve),
                         of(c.unions, kind::union_or_coupling), of(c.swing_checks, kind::swing_check),
                         {tp::entrance_loss({.bore = bore}), static_cast<int>(c.entrances.value_or(0.0))}});
}

TANKWRIGHT_INLINE tankwright::plumbing::pipe_run run_of(const pipe& p, std::string label) {
  tankwright::plumbing::pipe_run run{.label = std::move(label), .bore = bore_of(p.bore)};
  run.length = *p.length;
  const double k = *p.loss;
  const double half = half_width(p.loss, usual::fittings);
  using tankwright::plumbing::loss_coefficient;
  double low = std::fmax(k - half, 0.0), middle = k, high = k + half;
  if (p.fittings.given()) {
    const auto counted = loss_of(p.fittings, run.bore);
    low += counted.low.value();
    middle += counted.central.value();
    high += counted.high.value();
  }
  run.fittings = {loss_coefficient{low}, loss_coefficient{middle}, loss_coefficient{high},
                  "loss coefficients of the fittings"};
  return run;
}

}  // namespace tankwright::plan
