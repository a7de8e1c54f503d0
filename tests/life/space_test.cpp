// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/space.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence ratios{"tankwright::life::swim_clearance", kind::identity,
                      "4.8 m and 1.5 m for 0.8 m: 6 and 1.875 lengths"};
const evidence wanted{"tankwright::life::swim_clearance", kind::common_practice, "three lengths by two"};
const evidence lengths{"tankwright::life::body_lengths_per_time", kind::published,
                       "Graham et al. 1990: 1.1 L/s of a lemon shark of 0.70 m, 0.77 m/s"};

twl::clearance of(double animal, double run, double width, double speed) {
  return twl::swim_clearance(
      {.animal = metres(animal), .run = metres(run), .width = metres(width), .speed = metres_per_second(speed)});
}

}  // namespace

TEST_CASE("space: reference table") {
  const auto constant = [](double value) {
    return [value](const reference_row& row) {
      const double per_second =
          in_per_second(twl::body_lengths_per_time(metres_per_second(row["U"]), metres(row["L"])));
      CHECK(compare(per_second, value, relative(1e-12)).good);
      return value;
    };
  };
  const auto turn = [](const reference_row& row) {
    const auto radius = twl::escape_turn_radius(metres(row["L"]));
    return in_metres(row.text("end") == "low" ? radius.low : radius.high);
  };
  const auto glide = [](const reference_row& row) {
    return in_seconds(of(1.0, row["run"], 1.0, row["speed"]).crossing);
  };
  check_rows(
      reference_rows("life/space.csv"),
      {{"tankwright::life::critical_speed_lemon_shark_70_cm", constant(twl::critical_speed_lemon_shark_70_cm)},
       {"tankwright::life::critical_speed_leopard_shark_120_cm", constant(twl::critical_speed_leopard_shark_120_cm)},
       {"tankwright::life::escape_turn_radius", turn},
       {"tankwright::life::swim_clearance", glide}});
}

TEST_CASE("space: body lengths and verdicts, labelled informal") {
  const auto room = of(0.8, 4.8, 1.5, 0.31);
  TW_CHECK(ratios, room.run_in_lengths, 6.0, relative(1e-14));
  TW_CHECK(ratios, room.width_in_lengths, 1.875, relative(1e-14));
  TW_CHECK(wanted, room.run_wanted, metres(2.4), relative(1e-14));
  TW_CHECK(wanted, room.width_wanted, metres(1.6), relative(1e-14));
  TW_CHECK(lengths, twl::body_lengths_per_time(metres_per_second(0.77), metres(0.70)), per_second(1.1),
           relative(1e-12));
  CHECK(room.run_enough);
  CHECK_FALSE(room.width_enough);
  CHECK(room.rule.find("Informal") != std::string_view::npos);
  CHECK(room.caution.text.find("No number here licenses a species") != std::string_view::npos);
}

TEST_CASE("space: bad input") {
  check_edges(twl::body_length_limits, [](double x, range_policy) { return of(x, 4.0, 2.0, 0.3); });
  check_edges(twl::straight_run_limits, [](double x, range_policy) { return of(1.0, x, 2.0, 0.3); });
  check_edges(twl::clear_width_limits, [](double x, range_policy) { return of(1.0, 4.0, x, 0.3); });
  check_edges(twl::swim_speed_limits, [](double x, range_policy) { return of(1.0, 4.0, 2.0, x); });
  check_edges(twl::body_length_limits, [](double x, range_policy) { return twl::escape_turn_radius(metres(x)); });
  check_edges(twl::swim_speed_limits,
              [](double x, range_policy) { return twl::body_lengths_per_time(metres_per_second(x), metres(1.0)); });
}

TEST_CASE("space: room enough is enough at the multiple itself; the turn of neonates") {
  const auto exact = of(0.5, 1.5, 1.0, 0.25);
  CHECK(exact.run_enough);
  CHECK(exact.width_enough);
  CHECK_FALSE(of(0.5, 1.4999, 1.0, 0.25).run_enough);
  CHECK_FALSE(of(0.5, 1.5, 0.9999, 0.25).width_enough);
  CHECK(compare(exact.crossing, seconds(6.0), relative(1e-14)).good);
  const auto asked = twl::swim_clearance({.animal = metres(0.5),
                                          .run = metres(4.0),
                                          .width = metres(2.0),
                                          .speed = metres_per_second(0.25),
                                          .run_multiple = 7.0,
                                          .width_multiple = 5.0});
  TW_CHECK(ratios, asked.run_wanted, metres(3.5), relative(1e-14));
  TW_CHECK(ratios, asked.width_wanted, metres(2.5), relative(1e-14));
  // Trujillo et al. 2022: 0.03 to 0.11 lengths; the middle of the range.
  const auto turn = twl::escape_turn_radius(metres(2.0));
  CHECK(compare(turn.low, metres(0.06), relative(1e-12)).good);
  CHECK(compare(turn.central, metres(0.14), relative(1e-12)).good);
  CHECK(compare(turn.high, metres(0.22), relative(1e-12)).good);
  CHECK_FALSE(turn.reason.empty());
}

TEST_CASE("space: what is taken and what is refused") {
  const auto multiples = [](double run, double width) {
    return twl::swim_clearance({.animal = metres(0.5),
                                .run = metres(4.0),
                                .width = metres(2.0),
                                .speed = metres_per_second(0.25),
                                .run_multiple = run,
                                .width_multiple = width});
  };
  check_ranges(
      "life::swim_clearance",
      {TW_RANGE("length of the animal", 1e-6, 1e4, of(x, 4.0, 2.0, 0.3)),
       TW_RANGE("run", 1e-6, 1e6, of(1.0, x, 2.0, 0.3)), TW_RANGE("width", 1e-6, 1e6, of(1.0, 4.0, x, 0.3)),
       TW_RANGE("speed", 1e-6, 1e3, of(1.0, 4.0, 2.0, x)), TW_RANGE("run multiple", 1e-3, 1e4, multiples(x, 2.0)),
       TW_RANGE("width multiple", 1e-3, 1e4, multiples(3.0, x))});
  check_ranges(
      "life::body_lengths_per_time",
      {TW_RANGE("speed", 1e-6, 1e3, twl::body_lengths_per_time(metres_per_second(x), metres(1.0))),
       TW_RANGE("length of the animal", 1e-6, 1e4, twl::body_lengths_per_time(metres_per_second(1.0), metres(x)))});
  check_ranges("life::escape_turn_radius",
               {TW_RANGE("length of the animal", 1e-6, 1e4, twl::escape_turn_radius(metres(x)))});
}
