// SPDX-License-Identifier: BSL-1.0
// Emptying, levelling and the tails of weirs a second time, by their closed forms; jets, surges, gauges and power of pumps.
#include <cmath>
#include <numbers>
#include <tankwright/plumbing.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::plumbing;

namespace {

constexpr double g = 9.80665, pi = std::numbers::pi;
constexpr interval positive_numbers{1e-30, 1e15}, from_zero{0.0, 1e15}, plans{0.0, 1e6, edge::open};
const water::liquid sea{.density = kilograms_per_cubic_metre(1023.0), .viscosity = millipascal_seconds(0.96)};

evidence second(std::string_view function, std::string_view source = "a second transcription") {
  return {"tankwright::plumbing::" + std::string{function}, kind::identity, std::string{source}};
}
length m(double x) { return metres(x); }
area m2(double x) { return square_metres(x); }
pipe_bore bore(double x) { return pipe_bore{metres(x)}; }
effective_area hole(double x) { return effective_area{m2(x)}; }
gauge_pressure gauge(double x) { return gauge_pressure{pascals(x)}; }
absolute_pressure air(double x) { return absolute_pressure{pascals(x)}; }

}  // namespace

TEST_CASE("emptying formulas: outlets and times") {
  TW_CHECK(second("outlet_through"), outlet_through(orifice{m(0.04)}).value().value(), 0.61 * pi / 4 * 0.0016,
           relative(1e-13));
  TW_CHECK(second("outlet_through"), outlet_through(orifice{m(0.04), 0.8}).value().value(), 0.8 * pi / 4 * 0.0016,
           relative(1e-13));
  TW_CHECK(second("outlet_through"), outlet_through(resisting_pipe{bore(0.04), 4.0}).value().value(),
           0.5 * pi / 4 * 0.0016, relative(1e-13));
  TW_CHECK(second("outflow"), outflow(hole(1e-3), m(0.7)).value(), 1e-3 * std::sqrt(2 * g * 0.7), relative(1e-13));
  const fall_through fall{.outlet = hole(1e-3), .from = m(0.9), .to = m(0.4)};
  const double roots = std::sqrt(0.9) - std::sqrt(0.4);
  TW_CHECK(second("emptying_time"), emptying_time(m2(1.7), fall).value(), 2 * 1.7 * roots / (1e-3 * std::sqrt(2 * g)),
           relative(1e-12));
  TW_CHECK(second("emptying_time"), emptying_time([](length) { return m2(1.7); }, fall).value(),
           2 * 1.7 * roots / (1e-3 * std::sqrt(2 * g)), relative(1e-12));
  TW_CHECK(second("discharge_coefficient_from"),
           discharge_coefficient_from(
               {.horizontal_area = m2(1.7), .bore = m(0.04), .from = m(0.9), .to = m(0.4), .time = seconds(600)}),
           2 * 1.7 * roots / (pi / 4 * 0.0016 * std::sqrt(2 * g) * 600), relative(1e-12));
  const double nu = 0.96e-3 / 1023.0, per_head = g * 1e-6 / (32 * nu * 2.0);
  TW_CHECK(second("laminar_emptying_time"),
           laminar_emptying_time({.horizontal_area = m2(1.7),
                                  .bore = bore(1e-3),
                                  .pipe_length = m(2),
                                  .from = m(0.9),
                                  .to = m(0.4),
                                  .water = sea})
               .value(),
           1.7 * std::log(0.9 / 0.4) / (per_head * pi / 4 * 1e-6), relative(1e-12));
  TW_CHECK(second("levelling_time"),
           levelling_time({.first = m2(1.5), .second = m2(0.5), .opening = hole(1e-3), .from = m(0.9), .to = m(0.4)})
               .value(),
           2 * 0.375 * roots / (1e-3 * std::sqrt(2 * g)), relative(1e-12));
  const inflow_and_outlet tank{
      .horizontal_area = m2(1.7), .inflow = cubic_metres_per_second(2e-3), .outlet = hole(1e-3)};
  TW_CHECK(second("steady_level"), steady_level(tank).value(), 4.0 / (2 * g), relative(1e-12));
  const auto tail = [](double c) { return 2.0 / 3.0 * c * 0.8 * std::sqrt(2 * g); };
  const double inverse = 1 / std::sqrt(0.001) - 1 / std::sqrt(0.05);
  TW_CHECK(
      second("plain_weir_tail_time"),
      plain_weir_tail_time({.horizontal_area = m2(1.7), .width = m(0.8), .discharge_coefficient = 0.6, .from = m(0.05)})
          .value(),
      2 * 1.7 * inverse / tail(0.6), relative(1e-12));
  const double k = 8.0 / 15.0 * 0.6 * std::sqrt(2 * g) * std::tan(pi / 6);
  TW_CHECK(second("v_notch_tail_time"),
           v_notch_tail_time(
               {.horizontal_area = m2(1.7), .opening = degrees(60), .discharge_coefficient = 0.6, .from = m(0.05)})
               .value(),
           2.0 / 3.0 * 1.7 / k * (std::pow(0.001, -1.5) - std::pow(0.05, -1.5)), relative(1e-12));
}

TEST_CASE("emptying ends: each argument, each function") {
  check_edges("bore", "m", positive_numbers, [](double x) { return outlet_through(orifice{m(x)}); });
  check_edges("discharge_coefficient", "", {1e-30, 1.0}, [](double x) { return outlet_through(orifice{m(0.1), x}); });
  check_edges("bore", "m", {1e-4, 20.0}, [](double x) { return outlet_through(resisting_pipe{bore(x), 1.0}); });
  check_edges("resistance", "", positive_numbers, [](double x) { return outlet_through(resisting_pipe{bore(1), x}); });
  check_edges("outlet", "m2", positive_numbers, [](double x) { return outflow(hole(x), m(1)); });
  check_edges("head", "m", from_zero, [](double x) { return outflow(hole(1), m(x)); });
  const auto time = [](double a, double from, double to) {
    return emptying_time(m2(1), {.outlet = hole(a), .from = m(from), .to = m(to)});
  };
  const auto by_plan = [](double plan, double a, double from, double to) {
    return emptying_time([plan](length) { return m2(plan); }, {.outlet = hole(a), .from = m(from), .to = m(to)});
  };
  check_edges("outlet", "m2", positive_numbers, [&](double x) { return time(x, 1, 0); });
  check_edges("from", "m", from_zero, [&](double x) { return time(1, x, 0); });
  check_edges("to", "m", {0.0, 1.0}, [&](double x) { return time(1, 1, x); });
  check_edges("outlet", "m2", positive_numbers, [&](double x) { return by_plan(1, x, 1, 0); });
  check_edges("from", "m", from_zero, [&](double x) { return by_plan(1, 1, x, 0); });
  check_edges("to", "m", {0.0, 1.0}, [&](double x) { return by_plan(1, 1, 1, x); });
  check_edges("horizontal area", "m2", plans, [&](double x) { return by_plan(x, 1, 1, 0); });
  const auto coefficient = [](double a, double d, double from, double to, double t) {
    return discharge_coefficient_from(
        {.horizontal_area = m2(a), .bore = m(d), .from = m(from), .to = m(to), .time = seconds(t)});
  };
  check_edges("horizontal area", "m2", plans, [&](double x) { return coefficient(x, 1, 1, 0, 1); });
  check_edges("bore", "m", positive_numbers, [&](double x) { return coefficient(1, x, 1, 0, 1); });
  check_edges("from", "m", from_zero, [&](double x) { return coefficient(1, 1, x, 0, 1); });
  check_edges("to", "m", {0.0, 1.0}, [&](double x) { return coefficient(1, 1, 1, x, 1); });
  check_edges("time", "s", positive_numbers, [&](double x) { return coefficient(1, 1, 1, 0, x); });
  const auto laminar = [](double a, double d, double l, double from, double to) {
    return laminar_emptying_time(
        {.horizontal_area = m2(a), .bore = bore(d), .pipe_length = m(l), .from = m(from), .to = m(to), .water = sea},
        extrapolate);
  };
  check_edges("horizontal area", "m2", plans, [&](double x) { return laminar(x, 1e-3, 1, 0.1, 0.01); });
  check_edges("bore", "m", {1e-4, 20.0}, [&](double x) { return laminar(1, x, 1e9, 0.1, 0.01); });
  check_edges("to", "m", {1e-30, 0.1}, [&](double x) { return laminar(1, 1e-3, 1, 0.1, x); });
  for (const double bad : {0.0, -1.0, std::nan("")})
    CHECK_THROWS_AS((void)laminar(1, 1e-3, bad, 0.1, 0.01), invalid_input);
  // Re = V d/nu of the first moment: refused above 2300.
  const double nu = 0.96e-3 / 1023.0, length_at = g * 1e-6 * 0.1 * 1e-3 / (32 * nu * nu * 2300);
  const auto published = [&](double l) {
    return laminar_emptying_time({.horizontal_area = m2(1),
                                  .bore = bore(1e-3),
                                  .pipe_length = m(l),
                                  .from = m(0.1),
                                  .to = m(0.01),
                                  .water = sea});
  };
  CHECK_NOTHROW((void)published(length_at * (1 + 1e-9)));
  CHECK_THROWS_AS((void)published(length_at * (1 - 1e-9)), out_of_range);
  const auto level = [](double a, double b, double o, double from, double to) {
    return levelling_time({.first = m2(a), .second = m2(b), .opening = hole(o), .from = m(from), .to = m(to)});
  };
  check_edges("first", "m2", positive_numbers, [&](double x) { return level(x, 1, 1, 1, 0); });
  check_edges("second", "m2", positive_numbers, [&](double x) { return level(1, x, 1, 1, 0); });
  check_edges("outlet", "m2", positive_numbers, [&](double x) { return level(1, 1, x, 1, 0); });
  check_edges("from", "m", from_zero, [&](double x) { return level(1, 1, 1, x, 0); });
  check_edges("to", "m", {0.0, 1.0}, [&](double x) { return level(1, 1, 1, 1, x); });
  const auto steady = [](double a, double q, double o) {
    return steady_level({m2(a), cubic_metres_per_second(q), hole(o)});
  };
  check_edges("horizontal area", "m2", plans, [&](double x) { return steady(x, 1, 1); });
  check_edges("inflow", "m3/s", from_zero, [&](double x) { return steady(1, x, 1); });
  check_edges("outlet", "m2", positive_numbers, [&](double x) { return steady(1, 1, x); });
  const auto edge_tail_of = [](double a, double from, double to) {
    return edge_tail_time({.horizontal_area = m2(a), .edge = standpipe{bore(0.05)}, .from = m(from), .to = m(to)});
  };
  check_edges("horizontal area", "m2", plans, [&](double x) { return edge_tail_of(x, 0.05, 0.001); });
  check_edges("to", "m", {1e-30, 0.05}, [&](double x) { return edge_tail_of(1, 0.05, x); });
  const auto weir = [](double a, double b, double c, double from, double to) {
    return plain_weir_tail_time(
        {.horizontal_area = m2(a), .width = m(b), .discharge_coefficient = c, .from = m(from), .to = m(to)});
  };
  check_edges("horizontal area", "m2", plans, [&](double x) { return weir(x, 1, 0.6, 0.1, 0.01); });
  check_edges("width", "m", positive_numbers, [&](double x) { return weir(1, x, 0.6, 0.1, 0.01); });
  check_edges("discharge_coefficient", "", {1e-30, 1.0}, [&](double x) { return weir(1, 1, x, 0.1, 0.01); });
  check_edges("to", "m", {1e-30, 0.1}, [&](double x) { return weir(1, 1, 0.6, 0.1, x); });
  const auto vee = [](double a, double degree, double c, double from, double to) {
    return v_notch_tail_time({.horizontal_area = m2(a),
                              .opening = degrees(degree),
                              .discharge_coefficient = c,
                              .from = m(from),
                              .to = m(to)});
  };
  check_edges("horizontal area", "m2", plans, [&](double x) { return vee(x, 60, 0.6, 0.1, 0.01); });
  check_edges("opening", "deg", {1e-6, 180.0, edge::closed, edge::open},
              [&](double x) { return vee(1, x, 0.6, 0.1, 0.01); });
  check_edges("discharge_coefficient", "", {1e-30, 1.0}, [&](double x) { return vee(1, 60, x, 0.1, 0.01); });
  check_edges("to", "m", {1e-30, 0.1}, [&](double x) { return vee(1, 60, 0.6, 0.1, x); });
  for (const double bad : {-1.0, std::nan(""), 1.1e15}) {
    CHECK_THROWS_WITH_AS((void)edge_tail_of(1, bad, 0.001), doctest::Contains("from = "), invalid_input);
    CHECK_THROWS_WITH_AS((void)weir(1, 1, 0.6, bad, 0.001), doctest::Contains("from = "), invalid_input);
    CHECK_THROWS_WITH_AS((void)vee(1, 60, 0.6, bad, 0.001), doctest::Contains("from = "), invalid_input);
  }
}

TEST_CASE("jets, surges and siphons by their formulas") {
  const auto surge =
      surge_on_closure({.wave_speed = metres_per_second(420), .change = metres_per_second(1.5), .pipe = m(3)}, sea);
  TW_CHECK(second("surge_on_closure"), surge.rise.value(), 420 * 1.5 / g, relative(1e-13));
  TW_CHECK(second("surge_on_closure"), surge.pressure_rise.value(), 1023.0 * 420 * 1.5, relative(1e-13));
  TW_CHECK(second("surge_on_closure"), surge.rapid.value(), 6.0 / 420, relative(1e-13));
  TW_CHECK(second("wave_speed"), wave_speed({.bore = bore(0.05), .wall = m(0.003), .restraint = 0.9}, sea).value(),
           std::sqrt(2.2e9 / 1023.0 / (1 + 0.9 * 2.2e9 * 0.05 / (2.76e9 * 0.003))), relative(1e-13));
  TW_CHECK(second("jet_height"), jet_height(gauge(5000), sea).value(), 5000 / (1023.0 * g), relative(1e-13));
  TW_CHECK(second("jet_reach"), jet_reach({.drive = m(0.3), .fall = m(0.7)}).value(), 0.98 * 2 * std::sqrt(0.21),
           relative(1e-13));
  TW_CHECK(second("siphon_crest_pressure"),
           siphon_crest_pressure({.above_surface = m(0.4),
                                  .speed = metres_per_second(1.3),
                                  .density = kilograms_per_cubic_metre(1023),
                                  .loss_before = 0.7})
               .value()
               .value(),
           101325 - 1023 * (g * 0.4 + 0.5 * 1.7 * 1.69), relative(1e-13));
  TW_CHECK(second("highest_siphon_crest"),
           highest_siphon_crest({.speed = metres_per_second(1.3),
                                 .density = kilograms_per_cubic_metre(1023),
                                 .vapour_pressure = air(3100),
                                 .loss_before = 0.7})
               .value(),
           (101325 - 3100) / (1023 * g) - 1.7 * 1.69 / (2 * g), relative(1e-12));
  const loose_grains grains{.size = m(0.5e-3), .density = kilograms_per_cubic_metre(2700)};
  const double nu = 0.96e-3 / 1023.0, s = 2700.0 / 1023.0, star = 0.5e-3 * std::cbrt(g * (s - 1) / (nu * nu));
  const double theta = 0.30 / (1 + 1.2 * star) + 0.055 * (1 - std::exp(-0.020 * star)),
               u = std::sqrt(theta * g * (s - 1) * 0.5e-3);
  TW_CHECK(second("friction_velocity_that_moves"), friction_velocity_that_moves(grains, sea).value(), u,
           relative(1e-12));
  const auto moves = speed_that_moves(grains, sea);
  const auto wall = [&](double z) { return u / 0.40 * std::log(z / (0.5e-3 / 12)); };
  TW_CHECK(second("speed_that_moves"), moves.low.value(), wall(0.01), relative(1e-12));
  TW_CHECK(second("speed_that_moves"), moves.central.value(), wall(0.05), relative(1e-12));
  TW_CHECK(second("speed_that_moves"), moves.high.value(), wall(0.2), relative(1e-12));
  // Coarse gravel stands higher than the layer: three diameters count.
  const loose_grains gravel{.size = m(0.02)};
  TW_CHECK(second("speed_that_moves"), speed_that_moves(gravel, sea).low.value(),
           friction_velocity_that_moves(gravel, sea).value() / 0.40 * std::log(36.0), relative(1e-12));
}
