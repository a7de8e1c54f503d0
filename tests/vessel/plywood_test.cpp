// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/plywood.hpp>

#include <tankwright/core/units.hpp>
#include <tankwright/vessel/beam.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

vs::sheet_strip strip(double spacing, double load, vs::strip_spans spans) {
  return {.spacing = metres(spacing),
          .load = pascals(load),
          .spans = spans,
          .bending_capacity = newtons(600),
          .rigidity = joules(2500),
          .label = "back wall"};
}

}  // namespace

TEST_CASE("plywood: reference table") {
  check_rows(reference_rows("vessel/plywood.csv"),
             {{"tankwright::vessel::wood_permanent_load_factor",
               [](const reference_row&) { return vs::wood_permanent_load_factor; }},
              {"tankwright::vessel::wood_panel_creep_factor",
               [](const reference_row&) { return vs::wood_panel_creep_factor; }}});
}

TEST_CASE("plywood: a strip is a beam") {
  const evidence beam{"tankwright::vessel::strip_between_frames", kind::identity, "one and three spans by beam theory"};
  for (const auto spans : {vs::strip_spans::one, vs::strip_spans::three_or_more}) {
    const int n = spans == vs::strip_spans::one ? 1 : 3;
    std::vector<vs::beam_support> supports;
    for (int i = 0; i <= n; ++i) supports.push_back({.at = metres(0.4 * i)});
    const auto same = vs::bend({.span = metres(0.4 * n),
                                .section = vs::beam_section{.area = square_metres(1),
                                                            .second_moment = metres_to_the_fourth(1),
                                                            .extreme_fibre = metres(1)},
                                .modulus = pascals(2500),
                                .supports = supports,
                                .spreads = {{.at_start = newtons_per_metre(9000),
                                             .at_end = newtons_per_metre(9000),
                                             .from = metres(0),
                                             .to = metres(0.4 * n)}}});
    const auto r = vs::strip_between_frames(strip(0.4, 9000, spans));
    TW_CHECK(beam, r.moment.value(), std::fabs(same.largest_moment.value()), relative(1e-12));
    TW_CHECK(beam, r.sag, same.deflection, relative(1e-9));
    TW_CHECK(beam, r.capacity, newtons(540), relative(1e-14));
    TW_CHECK(beam, r.utilisation, r.moment / r.capacity, relative(1e-14));
    TW_CHECK(beam, r.long_term_sag, r.sag * 2.0, relative(1e-14));
    TW_CHECK(beam, r.span_over_sag, 0.4 / r.long_term_sag.value(), relative(1e-14));
    CHECK(r.caution.text.find("licensed engineer") != std::string_view::npos);
  }
}

TEST_CASE("plywood: impossible strips are refused by name") {
  check_edges(vs::detail::positive_length("back wall: spacing"),
              [](double x, range_policy) { return vs::strip_between_frames(strip(x, 100, vs::strip_spans::one)); });
  check_edges({"back wall: load", "Pa", vs::detail::possible_pressure},
              [](double x, range_policy) { return vs::strip_between_frames(strip(1, x, vs::strip_spans::one)); });
  const auto with = [](auto change) {
    auto s = strip(0.4, 100, vs::strip_spans::one);
    change(s);
    return vs::strip_between_frames(s);
  };
  check_edges({"back wall: bending capacity", "N m/m", {1e-9, 1e12}}, [&](double x, range_policy) {
    return with([x](vs::sheet_strip& s) { s.bending_capacity = newtons(x); });
  });
  check_edges({"back wall: rigidity", "N m2/m", {1e-9, 1e15}},
              [&](double x, range_policy) { return with([x](vs::sheet_strip& s) { s.rigidity = joules(x); }); });
  check_edges({"back wall: duration factor", "", {0.01, 1.0}},
              [&](double x, range_policy) { return with([x](vs::sheet_strip& s) { s.duration_factor = x; }); });
  CHECK_THROWS_AS((void)with([](vs::sheet_strip& s) { s.creep_factor = 0.5; }), invalid_input);
}
