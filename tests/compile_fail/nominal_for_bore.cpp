// SPDX-License-Identifier: BSL-1.0
// mistake: a nominal size given for a bore
// says: given another quantity, unit or type
#include <tankwright/plumbing/pipe_sizes.hpp>
namespace tp = tankwright::plumbing;

void attempt() {
  const auto size = tp::nominal_size::from_inches(1.5);
#ifdef MISTAKE
  const tp::pipe_run run{.bore = size};
#else
  const tp::pipe_run run{.bore = tp::pvc_pipe(size, tp::pvc_schedule::schedule_40).average_bore};
#endif
  (void)run;
}
