// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/decisions/verdict.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(verdicts, "verdicts", "Does a margin of 66 mm with a band from 43 mm hold?") {
  using namespace tankwright;
  const double low = s.given("low", "low end of the margin's band", 43, 0, "mm");
  const double mid = s.given("mid", "middle of it", 66, 0, "mm");
  const double high = s.given("high", "high end", 88, 0, "mm");
  const double keep = s.given("keep", "smallest useful room: what the plan keeps free", 20, 0, "mm");
  s.wanted("The verdict; and the verdict if the plan wanted to keep 50 mm.");
  const auto margin = amount_of(estimate<length>{millimetres(low), millimetres(mid), millimetres(high), "as given"});
  s.result("spare", "low end over the useful room = low - keep", low - keep, 0, "mm");
  s.means("Middle and low end are positive, and the low end is more than the useful room: " +
          std::string{decisions::words(decisions::judge(margin, keep / 1000.0))} + ". To keep 50 mm free: " +
          std::string{decisions::words(decisions::judge(margin, 0.050))} + ", because the low end is less than that.");
}
