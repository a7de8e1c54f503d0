// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/view.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;
using index_of = vs::refractive_index;

namespace {

vs::surface between(const reference_row& row) { return {.from = index_of{row["n1"]}, .into = index_of{row["n2"]}}; }

}  // namespace

TEST_CASE("view: reference table") {
  check_rows(reference_rows("vessel/view.csv"),
             {{"tankwright::vessel::apparent_distance",
               [](const reference_row& row) {
                 const vs::underwater_view view{.water = inches(row["d"]),
                                                .panel = inches(row["t"]),
                                                .water_index = index_of{row["nw"]},
                                                .panel_index = index_of{row["np"]}};
                 return in_inches(row.has("angle") ? vs::apparent_distance(view, degrees(row["angle"]))
                                                   : vs::apparent_distance(view));
               }},
              {"tankwright::vessel::critical_angle",
               [](const reference_row& row) { return in_degrees(vs::critical_angle(between(row))); }},
              {"tankwright::vessel::refracted",
               [](const reference_row& row) { return in_degrees(vs::refracted(between(row), degrees(row["angle"]))); }},
              {"tankwright::vessel::reflectance",
               [](const reference_row& row) { return vs::reflectance(between(row)).value(); }},
              {"tankwright::vessel::lateral_magnification",
               [](const reference_row& row) {
                 return vs::lateral_magnification({.water = metres(row["d"]), .water_index = index_of{row["nw"]}},
                                                  metres(row["e"]));
               }},
              {"tankwright::water::refractive_index_quan_fry",
               [](const reference_row& row) {
                 return water::refractive_index_quan_fry({.salinity = practical_salinity{row["S_P"]},
                                                          .temperature = celsius(row["t90"]),
                                                          .wavelength = nanometres(row["nm"])})
                     .value();
               }},
              {"tankwright::vessel::ray_shift", [](const reference_row& row) {
                 return in_millimetres(vs::ray_shift(
                     {.thickness = millimetres(row["t"]), .panel_index = index_of{row["n"]}}, degrees(row["angle"])));
               }}});
}

TEST_CASE("view: rays traced through the panel step by step") {
  const evidence traced{"tankwright::vessel::apparent_distance", kind::identity, "a ray traced by Snell's law"};
  const evidence shift{"tankwright::vessel::ray_shift", kind::identity, "a ray traced by Snell's law"};
  const evidence straight{"tankwright::vessel::apparent_distance", kind::property, "looked at nearly straight on"};
  const vs::underwater_view view{.water = metres(0.5), .panel = millimetres(25)};
  for (const double a : {1e-4, 10.0, 30.0, 45.0, 60.0, 80.0}) {
    const angle in_air = degrees(a);
    const angle in_panel = vs::refracted({.from = vs::air_index, .into = vs::acrylic_index}, in_air);
    const angle in_water = vs::refracted({.from = vs::acrylic_index, .into = vs::seawater_index}, in_panel);
    // No panel changes the angle in the water.
    TW_CHECK(traced, in_water.value(),
             vs::refracted({.from = vs::air_index, .into = vs::seawater_index}, in_air).value(), relative(1e-12));
    const double sideways = 0.5 * std::tan(in_water.value()) + 0.025 * std::tan(in_panel.value());
    TW_CHECK(traced, vs::apparent_distance(view, in_air), metres(sideways / std::tan(in_air.value())), relative(1e-9));
    const double off = 0.025 / std::cos(in_panel.value()) * std::sin(in_air.value() - in_panel.value());
    TW_CHECK(shift, vs::ray_shift({.thickness = millimetres(25)}, in_air), metres(off), relative(1e-9));
  }
  TW_CHECK(straight, vs::apparent_distance(view, degrees(0)), vs::apparent_distance(view), relative(1e-14));
}

TEST_CASE("view: clearance is the inverse of the apparent distance") {
  const evidence back{"tankwright::vessel::clearance_for", kind::identity,
                      "d' of the clearance is the distance wanted"};
  for (const double wanted : {0.02, 0.1, 0.4}) {
    const length d = vs::clearance_for({.apparent = metres(wanted), .panel = millimetres(20)});
    TW_CHECK(back, vs::apparent_distance({.water = d, .panel = millimetres(20)}), metres(wanted), relative(1e-13));
  }
  TW_CHECK(back, vs::clearance_for({.apparent = inches(13.43), .water_index = index_of{1.34}}), inches(18),
           relative(5e-4));
  CHECK_THROWS_AS((void)vs::clearance_for({.apparent = metres(0.01), .panel = metres(0.02)}), invalid_input);
  CHECK_THROWS_AS((void)vs::clearance_for({.apparent = metres(-0.01)}), invalid_input);
  CHECK(vs::usual_clearance == inches(18));
}

TEST_CASE("view: limits") {
  const evidence limit{"tankwright::vessel::lateral_magnification", kind::property, "1 at the glass, n far away"};
  TW_CHECK(limit, vs::lateral_magnification({.water = metres(0)}, metres(1)), 1.0, relative(1e-15));
  TW_CHECK(limit, vs::lateral_magnification({.water = metres(1e3)}, millimetres(1)), 1.34, relative(1e-6));
  const evidence apart{"tankwright::vessel::lateral_magnification", kind::identity,
                       "true distance over apparent distance from the eye"};
  const vs::underwater_view view{.water = metres(0.5), .panel = millimetres(30)};
  TW_CHECK(apart, vs::lateral_magnification(view, metres(0.8)),
           (0.8 + 0.03 + 0.5) / (0.8 + vs::apparent_distance(view).value()), relative(1e-14));
  const evidence both_ways{"tankwright::vessel::refracted", kind::property, "the way back is the same"};
  const vs::surface in{.from = vs::air_index, .into = vs::seawater_index},
      out{.from = vs::seawater_index, .into = vs::air_index};
  for (const double a : {0.0, 20.0, 50.0, 89.0}) {
    TW_CHECK(both_ways, vs::refracted(out, vs::refracted(in, degrees(a))), degrees(a), tolerance{.absolute = 1e-12});
  }
  const double steepest = in_degrees(vs::critical_angle(out));
  CHECK_NOTHROW((void)vs::refracted(out, degrees(steepest - 1e-9)));
  CHECK_THROWS_WITH_AS((void)vs::refracted({.from = index_of{1.34}, .into = index_of{1.0}}, degrees(50)),
                       "tankwright::vessel::refracted: angle from the normal = 50 deg is reflected totally: it is "
                       "above the critical angle "
                       "of 48.268183 deg",
                       invalid_input);
  // At the critical angle itself the ray runs along the surface; a little above it is reflected.
  const vs::surface half{.from = index_of{2.0}, .into = index_of{1.0}};
  double critical = std::asin(0.5) * (1 - 1e-15);
  while (std::sin(critical) < 0.5) critical = std::nextafter(critical, 1.0);
  REQUIRE(std::sin(critical) == 0.5);
  TW_CHECK((evidence{"tankwright::vessel::refracted", kind::identity, "Snell's law at the critical angle"}),
           vs::refracted(half, radians(critical)), degrees(90), relative(1e-15));
  CHECK_THROWS_AS((void)vs::refracted(half, radians(std::asin(0.50025))), invalid_input);
  CHECK_THROWS_WITH_AS((void)vs::critical_angle(in),
                       "tankwright::vessel::critical_angle: refractive index = 1 is not above that behind the surface, "
                       "1.34: into a denser "
                       "material all light gets through",
                       invalid_input);
}

TEST_CASE("view: edges of the ranges") {
  const angle some = degrees(30);
  check_edges(vs::detail::angle_limits, [](double a, range_policy) {
    return vs::refracted({.from = vs::air_index, .into = vs::glass_index}, radians(a));
  });
  check_edges(vs::detail::index_limits,
              [&](double n, range_policy) { return vs::reflectance({.from = index_of{n}, .into = vs::air_index}); });
  check_edges(vs::detail::index_limits, [&](double n, range_policy) {
    return vs::apparent_distance({.water = metres(1), .water_index = index_of{n}}, some);
  });
  check_edges(vs::detail::length_from_zero("distance in the water"),
              [](double d, range_policy) { return vs::apparent_distance({.water = metres(d)}); });
  check_edges(vs::detail::length_from_zero("panel thickness"), [&](double t, range_policy) {
    return vs::apparent_distance({.water = metres(1), .panel = metres(t)}, some);
  });
  check_edges(vs::detail::length_from_zero("panel thickness"),
              [&](double t, range_policy) { return vs::ray_shift({.thickness = metres(t)}, some); });
  check_edges(vs::detail::positive_length("distance of the eye"),
              [](double e, range_policy) { return vs::lateral_magnification({.water = metres(1)}, metres(e)); });
}
