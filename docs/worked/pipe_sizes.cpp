// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/pipe_sizes.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(pipe_sizes, "pipe_sizes", "Which bore has 1 1/2 in Schedule 40 pipe, and which has metric 50?") {
  using namespace tankwright;
  const double od = s.given("OD", "outside diameter by ASTM D1785", 1.900, 3, "in");
  const double w = s.given("w", "thinnest wall", 0.145, 3, "in");
  const double dn = s.given("dn", "metric pipe, PN16", 50, 0, "mm", "20 to 110");
  const double e = s.given("e", "its wall", 3.7, 1, "mm");
  s.wanted("The bores to calculate with.");
  (void)od;
  (void)w;
  (void)e;
  const auto inch = plumbing::pvc_pipe(plumbing::nominal_size::from_inches(1.5), plumbing::pvc_schedule::schedule_40);
  const auto metric =
      plumbing::metric_pvc_pipe(plumbing::metric_size::from_millimetres(dn), plumbing::pressure_class::pn16);
  s.step("D", "average bore = OD - 2 (w + 0.020 in/2)", in_inches(inch.average_bore.diameter()), 3, "in");
  s.result("Dmm", "the same", in_millimetres(inch.average_bore.diameter()), 1, "mm");
  s.result("Dm", "metric = dn - 2 e", in_millimetres(metric.bore.diameter()), 1, "mm");
  s.means(
      "The metric pipe called 50 is a twentieth wider inside than the inch pipe called 1 1/2, and passes about a "
      "seventh more at the same "
      "loss of head. Measure a piece before you buy fittings.");
}
