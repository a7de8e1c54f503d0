// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/well_mixed.hpp>

#include "support/check.hpp"

using namespace tankwright::testing;
using balance = tankwright::water::kernel::well_mixed<double>;
using balance_l = tankwright::water::kernel::well_mixed<long double>;

namespace {
const evidence course{"tankwright::water::kernel::well_mixed", kind::identity,
                      "its differential equation, and its start"};
const evidence meets{"tankwright::water::kernel::well_mixed", kind::identity,
                     "the course is at the level at the time found"};
const evidence long_form{"tankwright::water::kernel::well_mixed", kind::identity, "the same in extended precision"};
}  // namespace

TEST_CASE("well mixed: the course solves dy/dt = gain - k y") {
  for (const long double k : {0.0L, 1e-9L, 0.3L, 40.0L}) {
    for (const long double gain : {-2.0L, 0.0L, 5.0L}) {
      const balance_l b{gain, k};
      for (const long double t : {0.1L, 2.0L}) {
        const long double h = 1e-5L;
        const long double slope = (b.after(3.0L, t + h) - b.after(3.0L, t - h)) / (2.0L * h);
        TW_CHECK(course, static_cast<double>(slope), static_cast<double>(gain - k * b.after(3.0L, t)),
                 (tolerance{.absolute = 1e-6, .relative = 1e-6}));
        const balance in_double{static_cast<double>(gain), static_cast<double>(k)};
        TW_CHECK(long_form, in_double.after(3.0, static_cast<double>(t)), static_cast<double>(b.after(3.0L, t)),
                 (tolerance{.absolute = 1e-15, .relative = 1e-14}));
      }
      TW_CHECK(course, static_cast<double>(b.after(3.0L, 0.0L)), 3.0, tolerance{});
    }
  }
}

TEST_CASE("well mixed: the time to a level, or never") {
  for (const double k : {0.0, 1e-13, 1e-6, 0.5, 30.0}) {
    for (const double gain : {-1.0, 0.0, 2.0}) {
      const balance b{gain, k};
      for (const double level : {-4.0, 0.5, 1.0, 3.9, 4.1, 90.0}) {
        const double t = b.time_between(4.0, level);
        const double end = k > 0.0 ? gain / k : gain < 0.0 ? -1e300 : gain > 0.0 ? 1e300 : 4.0;
        const bool on_the_way = (level - 4.0) * (end - level) > 0.0;
        CHECK(std::isfinite(t) == on_the_way);
        if (std::isfinite(t)) TW_CHECK(meets, b.after(4.0, t), level, relative(1e-11));
      }
      CHECK(b.time_between(4.0, 4.0) == 0.0);
    }
  }
}
