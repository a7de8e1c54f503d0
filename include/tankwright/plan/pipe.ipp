// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/plumbing/pipe_sizes.hpp>
#include <tankwright/plan/pipe.hpp>
#include <tankwright/plan/usual.hpp>

namespace tankwright::plan {

namespace detail {

/// Bores that are sold: metric PVC pressure pipe, 20 to 160 mm outside, walls of PN 10 (EN ISO 1452-2, from memory).
inline constexpr double sold_bores[] = {0.0170, 0.0212, 0.0284, 0.0362, 0.0452, 0.0570, 0.0678, 0.0814, 0.0996, 0.1450};

}  // namespace detail

TANKWRIGHT_INLINE void describe_bore(visitor& key, bore& b) {
  key("bore", b.inside, {.means = "inside diameter of the pipe",
                         .limits = {millimetres(1.0), metres(2.0)},
                         .set_by = chosen,
                         .sizes = detail::sold_bores,
                         .doubt = usual::rule});
  key("nominal", b.nominal, {.means = "nominal size of a PVC pipe in inches, in place of the bore",
                             .limits = {0.125, 24.0},
                             .set_by = chosen});
  key("schedule", b.schedule, {"40", "80"}, {.means = "wall of that pipe", .set_by = chosen});
  key.alternatives({"bore", "nominal"}, true);
  key.together({"nominal", "schedule"});
}

TANKWRIGHT_INLINE void describe_pipe(visitor& key, pipe& p) {
  describe_bore(key, p.bore);
  key("length", p.length, {.means = "length of the pipe", .limits = {metres(0.0), metres(1000.0)}, .needed = true,
                           .doubt = millimetres(20.0)});
  key("loss", p.loss, {.means = "sum of the loss coefficients of its fittings", .limits = {0.0, 10000.0}});
  key("loss_uncertainty", p.loss_uncertainty,
      {.means = "how far that sum may be off, as a part of it", .limits = usual::part_of_whole});
}

TANKWRIGHT_INLINE tankwright::plumbing::pipe_bore bore_of(const bore& b) {
  if (b.inside) return tankwright::plumbing::pipe_bore{*b.inside};
  return tankwright::plumbing::pvc_pipe(tankwright::plumbing::nominal_size::from_inches(*b.nominal), *b.schedule)
      .average_bore;
}

TANKWRIGHT_INLINE tankwright::plumbing::pipe_run run_of(const pipe& p, std::string label) {
  tankwright::plumbing::pipe_run run{.label = std::move(label), .bore = bore_of(p.bore)};
  run.length = *p.length;
  const double k = *p.loss;
  const double band = p.loss_uncertainty.get().value();
  using tankwright::plumbing::loss_coefficient;
  run.fittings = {loss_coefficient{k * (1.0 - band)}, loss_coefficient{k}, loss_coefficient{k * (1.0 + band)},
                  "loss coefficients of the fittings"};
  return run;
}

}  // namespace tankwright::plan
