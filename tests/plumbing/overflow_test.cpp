// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/overflow.hpp>

#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

const tp::full_width_edge wall{.width = metres(0.8), .crest_height = metres(0.55)};
const tp::full_width_edge thick_wall{
    .width = metres(0.8), .crest_height = metres(0.55), .thickness = millimetres(12.0)};
const std::vector<tp::overflow_edge> edges{
    wall,
    thick_wall,
    tp::contracted_edge{.width = metres(0.3), .channel_width = metres(0.8), .crest_height = metres(0.5)},
    tp::toothed_edge{.gap_width = millimetres(8.0),
                     .gaps = 40,
                     .tooth_width = millimetres(8.0),
                     .gap_height = millimetres(25.0),
                     .crest_height = metres(0.5)},
    tp::v_notch{degrees(60.0)},
    tp::standpipe{tp::pipe_bore{millimetres(53.0)}},
    tp::standpipe{tp::pipe_bore{millimetres(53.0)}, true}};

}  // namespace

TEST_CASE("overflow: the central flow is that of the named formula") {
  const auto same = [](const char* what, flow_rate got, flow_rate formula) {
    TW_CHECK((evidence{"tankwright::plumbing::flow_over", kind::identity, what}), got, formula, relative(1e-15));
  };
  const length h = millimetres(70.0);
  same("Rehbock", tp::flow_over(wall, h).flow.central, tp::rehbock_weir(wall, h));
  const tp::contracted_edge notch{.width = metres(0.3), .channel_width = metres(0.8), .crest_height = metres(0.5)};
  same("Kindsvater and Carter", tp::flow_over(notch, h).flow.central, tp::kindsvater_carter_weir(notch, h));
  same("Kindsvater and Shen", tp::flow_over(tp::v_notch{degrees(60.0)}, h).flow.central,
       tp::shen_weir({degrees(60.0)}, h));
  same("EN 12056-3", tp::flow_over(tp::standpipe{tp::pipe_bore{millimetres(53.0)}}, h).flow.central,
       tp::standpipe_inlet({tp::pipe_bore{millimetres(53.0)}}, h));
}

TEST_CASE("overflow: printed flows and heights") {
  // Rehbock's example of Lal (ex. 4.5), forwards and backwards; the books' g is 32.2 ft/s2.
  const evidence forwards{"tankwright::plumbing::flow_over", kind::published, "Lal, Hydraulic Machines, ex. 4.5"};
  const evidence backwards{"tankwright::plumbing::head_over", kind::published, "Lal, Hydraulic Machines, ex. 4.5"};
  const tp::full_width_edge edge{.width = feet(7.573), .crest_height = feet(2.85)};
  const flow_rate printed = cubic_feet_per_second(34.12 * std::sqrt(9.80665 / (32.2 * 0.3048)));
  TW_CHECK(forwards, tp::flow_over(edge, feet(1.2)).flow.central, printed, relative(1e-3));
  TW_CHECK(backwards, tp::head_over(edge, printed).head.central, feet(1.2), relative(1e-3));
}

TEST_CASE("overflow: a thick edge") {
  // 4.8 mm over 12 mm is the SWMM table's 0.2 ft over 0.5 ft: 2.80 instead of 3.32 for the sharp edge.
  const evidence thick{"tankwright::plumbing::flow_over", kind::published, "EPA SWMM Reference Manual II, table 6-3"};
  const double share =
      tp::flow_over(thick_wall, millimetres(4.8)).flow.central / tp::flow_over(wall, millimetres(4.8)).flow.central;
  TW_CHECK(thick, share, 2.80 / 3.32, relative(1e-12));
  const double clear =
      tp::flow_over(thick_wall, millimetres(24.0)).flow.central / tp::flow_over(wall, millimetres(24.0)).flow.central;
  TW_CHECK((evidence{"tankwright::plumbing::flow_over", kind::property, "the nappe springs clear"}), clear, 1.0,
           tolerance{});
}

TEST_CASE("overflow: head and flow are inverse, the band is in order, all rise without a jump") {
  const evidence inverse{"tankwright::plumbing::head_over", kind::identity, "inverse of flow_over"};
  const evidence order{"tankwright::plumbing::flow_over", kind::property, "low <= central <= high, each rising"};
  const evidence head_order{"tankwright::plumbing::head_over", kind::property, "low <= central <= high"};
  for (const auto& edge : edges) {
    CAPTURE(edge.index());
    estimate<flow_rate> before = tp::flow_over(edge, metres(0.0)).flow;
    TW_HOLDS(order, before.high.value() == 0.0);
    for (double h = 0.0001; h < 0.08; h += 0.0001) {
      const auto flow = tp::flow_over(edge, metres(h)).flow;
      TW_HOLDS(order, (flow.low > before.low && flow.central > before.central && flow.high > before.high));
      TW_HOLDS(order, (flow.low <= flow.central && flow.central <= flow.high));
      TW_HOLDS(order, (flow.high - before.high < flow.high * (0.0005 / h)));  // no jump: at most as h^5
      before = flow;
      const auto head = tp::head_over(edge, flow.central).head;
      TW_CHECK(inverse, head.central, metres(h), relative(1e-11));
      TW_CHECK(inverse, tp::head_over(edge, flow.high).head.low, metres(h), relative(1e-11));
      TW_CHECK(inverse, tp::head_over(edge, flow.low).head.high, metres(h), relative(1e-11));
      TW_HOLDS(head_order, (head.low <= head.central && head.central <= head.high));
    }
  }
  TW_CHECK(inverse, tp::head_over(wall, litres_per_hour(0.0)).head.high, metres(0.0), tolerance{});
}

TEST_CASE("overflow: below 30 mm the answer is flagged, not refused; above the range it is refused") {
  const evidence flag{"tankwright::plumbing::flow_over", kind::property, "flagged below the published range"};
  TW_HOLDS(flag, tp::flow_over(wall, millimetres(29.9)).extrapolated);
  TW_HOLDS(flag, !tp::flow_over(wall, millimetres(30.0)).extrapolated);
  TW_HOLDS(flag, tp::flow_over(tp::full_width_edge{metres(0.2), metres(0.5)}, millimetres(40.0)).extrapolated);
  TW_HOLDS(flag, tp::head_over(wall, litres_per_hour(8000.0)).extrapolated);
  TW_HOLDS(flag, tp::flow_over(edges[3], millimetres(50.0)).extrapolated);
  CHECK_THROWS_WITH_AS(
      (void)tp::head_over(tp::full_width_edge{metres(0.8), metres(0.01)}, litres_per_hour(9000.0)),
      "tankwright::plumbing::head_over: head / crest_height = 1.19581351 is outside the published range 0 "
      "to 1 (Rehbock 1929); pass tankwright::extrapolate to go past it",
      out_of_range);
  CHECK_THROWS_AS((void)tp::flow_over(wall, metres(0.76)), out_of_range);
  CHECK_THROWS_AS((void)tp::flow_over(wall, metres(-0.001)), invalid_input);
  CHECK(tp::flow_over(wall, metres(0.76), extrapolate).flow.central > tp::flow_over(wall, metres(0.5)).flow.central);
}

TEST_CASE("overflow: what cannot be is refused by name") {
  const auto message = [](const tp::overflow_edge& edge) {
    try {
      (void)tp::head_over(edge, litres_per_hour(1000.0));
    } catch (const invalid_input& e) {
      return std::string{e.details().argument};
    }
    return std::string{"accepted"};
  };
  CHECK(message(tp::full_width_edge{metres(0.0), metres(0.5)}) == "width");
  CHECK(message(tp::full_width_edge{metres(0.5), metres(-0.1)}) == "crest_height");
  CHECK(message(tp::full_width_edge{metres(0.5), metres(0.1), metres(-0.01)}) == "thickness");
  CHECK(message(tp::contracted_edge{metres(0.9), metres(0.8), metres(0.5)}) == "width / channel_width");
  CHECK(message(tp::toothed_edge{metres(0.0), 40, metres(0.01), metres(0.02), metres(0.5)}) == "gap_width");
  CHECK(message(tp::toothed_edge{metres(0.01), 0, metres(0.01), metres(0.02), metres(0.5)}) == "gaps");
  CHECK(message(tp::v_notch{degrees(180.0)}) == "opening");
  CHECK(message(tp::standpipe{tp::pipe_bore{metres(0.0)}}) == "bore");
  CHECK_THROWS_AS((void)tp::head_over(wall, litres_per_hour(-1.0)), invalid_input);
}

TEST_CASE("overflow: the band is that of its range of heads, up to where the next begins") {
  const evidence band{"tankwright::plumbing::flow_over", kind::identity,
                      "3 % from 60 mm, 10 % from 30 mm down, 1 mm below 10 mm, at most 80 %"};
  const auto spread = [&](double mm) {
    const auto q = tp::flow_over(tp::v_notch{degrees(60.0)}, millimetres(mm)).flow;
    TW_CHECK(band, (q.high - q.central) / (q.central - q.low), 1.0, relative(1e-9));
    return q.high / q.central - 1.0;
  };
  for (const double mm : {60.0, 60.03, 100.0}) TW_CHECK(band, spread(mm), 0.03, relative(1e-10));
  TW_CHECK(band, spread(45.0), 0.065, relative(1e-10));
  TW_CHECK(band, spread(59.97), 0.03 + 0.07 * 0.03 / 30.0, relative(1e-10));
  for (const double mm : {10.0, 10.005, 20.0, 29.99, 30.0}) TW_CHECK(band, spread(mm), 0.10, relative(1e-10));
  TW_CHECK(band, spread(30.015), 0.10 - 0.07 * 0.015 / 30.0, relative(1e-10));
  for (const double mm : {9.99, 5.0, 1.2506}) TW_CHECK(band, spread(mm), 1.0 / mm, relative(1e-10));
  for (const double mm : {1.0, 1.25}) TW_CHECK(band, spread(mm), 0.8, relative(1e-10));
}

TEST_CASE("overflow: a thick edge is broad up to 0.4 of its thickness and sharp from twice that on") {
  const evidence thick{"tankwright::plumbing::flow_over", kind::identity, "straight between the two ends"};
  const auto share = [](double of_thickness) {
    const length h = millimetres(12.0 * of_thickness);
    return tp::flow_over(thick_wall, h).flow.central / tp::flow_over(wall, h).flow.central;
  };
  const double broad = 2.80 / 3.32;
  for (const double at : {0.1, 0.3999, 0.4}) TW_CHECK(thick, share(at), broad, relative(1e-12));
  for (const double at : {0.4002, 1.2, 1.999}) {
    TW_CHECK(thick, share(at), broad + (1.0 - broad) * (at - 0.4) / 1.6, relative(1e-12));
  }
  for (const double at : {2.0, 2.001, 3.0}) TW_CHECK(thick, share(at), 1.0, relative(1e-14));
}

TEST_CASE("overflow: at the ends of a published range nothing is flagged, a last digit beyond it is") {
  const evidence flag{"tankwright::plumbing::flow_over", kind::property, "the ends belong to the published range"};
  const auto flagged = [](const tp::overflow_edge& edge, double h) {
    return tp::flow_over(edge, metres(h), extrapolate).extrapolated;
  };
  const auto less = [](double x) { return std::nextafter(x, 0.0); };
  const auto more = [](double x) { return std::nextafter(x, 9.0); };
  const auto full = [](double b, double p, double t = 0.0) {
    return tp::full_width_edge{.width = metres(b), .crest_height = metres(p), .thickness = metres(t)};
  };
  // Rehbock: 0.3 m wide, 0.1 m high, heads of 30 to 750 mm and up to the height of the crest; sharp from twice the
  // thickness on.
  TW_HOLDS(flag, !flagged(full(0.3, 0.5), 0.04));
  TW_HOLDS(flag, flagged(full(less(0.3), 0.5), 0.04));
  TW_HOLDS(flag, !flagged(full(0.5, 0.1), 0.04));
  TW_HOLDS(flag, flagged(full(0.5, less(0.1)), 0.04));
  TW_HOLDS(flag, !flagged(full(0.5, 0.5), 0.03));
  TW_HOLDS(flag, flagged(full(0.5, 0.5), less(0.03)));
  TW_HOLDS(flag, !flagged(full(0.5, 1.0), 0.75));
  TW_HOLDS(flag, flagged(full(0.5, 1.0), more(0.75)));
  TW_HOLDS(flag, !flagged(full(0.5, 0.2), 0.2));
  TW_HOLDS(flag, flagged(full(0.5, 0.2), more(0.2)));
  TW_HOLDS(flag, !flagged(full(0.5, 0.5, 0.02), 0.04));
  TW_HOLDS(flag, flagged(full(0.5, 0.5, 0.02), less(0.04)));
  // Kindsvater and Carter: 0.15 m wide, 0.1 m high, from 30 mm up to twice the height of the crest.
  const auto notch = [](double b, double p) {
    return tp::contracted_edge{.width = metres(b), .channel_width = metres(1.0), .crest_height = metres(p)};
  };
  TW_HOLDS(flag, !flagged(notch(0.15, 0.5), 0.04));
  TW_HOLDS(flag, flagged(notch(less(0.15), 0.5), 0.04));
  TW_HOLDS(flag, !flagged(notch(0.5, 0.1), 0.04));
  TW_HOLDS(flag, flagged(notch(0.5, less(0.1)), 0.04));
  TW_HOLDS(flag, !flagged(notch(0.5, 0.5), 0.03));
  TW_HOLDS(flag, flagged(notch(0.5, 0.5), less(0.03)));
  TW_HOLDS(flag, !flagged(notch(0.5, 0.125), 0.25));
  TW_HOLDS(flag, flagged(notch(0.5, 0.125), more(0.25)));
  // Shen: from 60 mm up.
  TW_HOLDS(flag, !flagged(tp::v_notch{degrees(60.0)}, 0.06));
  TW_HOLDS(flag, flagged(tp::v_notch{degrees(60.0)}, less(0.06)));
}

TEST_CASE("overflow: no flow stands nowhere, and one litre a second is some") {
  const evidence inverse{"tankwright::plumbing::head_over", kind::identity, "inverse of flow_over"};
  for (const auto& edge : edges) {
    const auto still = tp::head_over(edge, flow_rate{}).head;
    CHECK(still.low == length{});
    CHECK(still.high == length{});
    const flow_rate litre = litres_per_second(1.0);
    TW_CHECK(inverse, tp::flow_over(edge, tp::head_over(edge, litre).head.central).flow.central, litre,
             relative(1e-11));
  }
}
