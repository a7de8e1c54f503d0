// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/drain.hpp>
#include <tankwright/plumbing/friction.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(drains, "drains", "Two drains share the flow: how do they run, and does one alone take it?") {
  using namespace tankwright;
  const double q = s.given("Q", "flow of each drain, half of the whole", 5000, 0, "L/h");
  const double d = s.given("D", "bore", 57.0, 1, "mm", worked::range_of(plumbing::bore_limits, 1000.0));
  const double l = s.given("L", "length", 1.3, 1, "m", worked::range_of(plumbing::run_length_limits));
  const double k = s.given("K", "losses without the exit", 2.0, 1, "", worked::range_of(plumbing::run_loss_limits));
  const double z = s.given("z", "drop to the water in the sump", 0.95, 2, "m");
  const double i = s.given("i", "water may stand over its top by", 60, 0, "mm");
  s.wanted("How it runs, and the most that one of them takes.");
  const plumbing::pipe_bore bore{millimetres(d)};
  const plumbing::drain drain{
      .pipe = {.label = "main drain", .bore = bore, .length = metres(l), .fittings = plumbing::known_loss(k)},
      .drop = metres(z),
      .inlet_head = millimetres(i)};
  const auto found =
      plumbing::drain_mode_for(drain, litres_per_hour(q), water::seawater(practical_salinity{35.0}, celsius(24.0)));
  s.step("J", "drain number = 4 Q/(pi D^2 sqrt(g D))", found.number, 2);
  s.step("Qq", "quiet up to J = 0.3", in_litres_per_hour(found.self_venting), -2, "L/h");
  s.step("Qs", "full siphon = area sqrt(2 g z/(K + 1 + f L/D))", in_litres_per_hour(found.full.central), -3, "L/h");
  s.result("Qi", "its top lets in D^2 sqrt(i)/15000 (L/s, mm)", in_litres_per_hour(found.inlet.central), -2, "L/h");
  s.means(found.mode == plumbing::drain_mode::surging
              ? "Each drain gulps: too much for air in the middle, too little to run full. Alone, with the other one "
                "blocked, it would have "
                "to take twice the flow, and its top lets in little more than half of that: the box runs over. The "
                "pipe is not the "
                "limit, its mouth is: widen the top, or let the water stand higher over it."
              : "The drain does not surge.");
  s.caution(found.caution);
}
