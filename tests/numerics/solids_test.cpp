// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/numerics/solids.hpp>

#include "support/check.hpp"

using namespace tankwright::testing;
namespace kernel = tankwright::numerics::kernel;

namespace {

evidence closed_form(const char* function) { return {function, kind::identity, "whole and half solids"}; }

/// The midpoint rule on the area of the cross-section, which knows none of the closed forms.
template <class Area>
double piled_up(Area area, double h) {
  constexpr int slices = 200000;
  double sum = 0.0;
  for (int i = 0; i < slices; ++i) sum += area(h * (i + 0.5) / slices);
  return sum * h / slices;
}

}  // namespace

TEST_CASE("solids: whole and half ones have the volumes of geometry") {
  constexpr double pi = 3.14159265358979323846, r = 0.37, l = 1.9;
  TW_CHECK(closed_form("tankwright::numerics::kernel::cap_volume"), kernel::cap_volume(r, 2.0 * r),
           4.0 / 3.0 * pi * r * r * r, relative(1e-14));
  TW_CHECK(closed_form("tankwright::numerics::kernel::segment_area"), kernel::segment_area(r, r), 0.5 * pi * r * r,
           relative(1e-14));
  TW_CHECK(closed_form("tankwright::numerics::kernel::lying_cylinder_volume"),
           kernel::lying_cylinder_volume(r, l, 0.0, 2.0 * r), pi * r * r * l, relative(1e-14));
  TW_CHECK(closed_form("tankwright::numerics::kernel::lying_cylinder_volume"),
           kernel::lying_cylinder_volume(r, l, r, r), 0.5 * pi * r * r * l + 2.0 / 3.0 * pi * r * r * r,
           relative(1e-14));
  TW_CHECK(closed_form("tankwright::numerics::kernel::frustum_volume"), kernel::frustum_volume(0.0, r, l, l),
           pi * r * r * l / 3.0, relative(1e-14));
  TW_CHECK(closed_form("tankwright::numerics::kernel::frustum_volume"), kernel::frustum_volume(r, r, l, 0.5 * l),
           0.5 * pi * r * r * l, relative(1e-14));
}

TEST_CASE("solids: volumes are their cross-sections piled up") {
  constexpr double pi = 3.14159265358979323846, r = 0.37, l = 1.9, top = 0.12;
  const evidence piled{"tankwright::numerics::kernel::lying_cylinder_volume", kind::identity, "midpoint rule"};
  for (const double h : {0.01, 0.2, 0.5, 0.73}) {
    TW_CHECK(
        piled, kernel::lying_cylinder_volume(r, l, 0.1, h),
        piled_up([&](double z) { return 2.0 * std::sqrt(z * (2.0 * r - z)) * l + pi * 0.1 / r * z * (2.0 * r - z); },
                 h),
        relative(1e-6));
    const auto disc = [&](double z) {
      const double at = r + (top - r) * z / l;
      return pi * at * at;
    };
    TW_CHECK(piled, kernel::frustum_volume(r, top, l, h), piled_up(disc, h), relative(1e-9));
    TW_CHECK((evidence{"tankwright::numerics::kernel::frustum_height", kind::property, "there and back"}),
             kernel::frustum_height(r, top, l, kernel::frustum_volume(r, top, l, h)), h, relative(1e-13));
  }
}
