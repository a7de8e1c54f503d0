// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/plumbing/friction.hpp>
#include <vector>

#define BOOST_MATH_DISABLE_FLOAT128  // it would need another library at link time
#include <boost/math/special_functions/lambert_w.hpp>
#include <boost/multiprecision/cpp_dec_float.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

using fifty_digits = boost::multiprecision::cpp_dec_float_50;

const evidence lambert{"tankwright::plumbing::friction_factor", kind::identity,
                       "exact solution of Colebrook-White by the Lambert W function, 50 digits"};
const evidence newton{"tankwright::plumbing::friction_factor", kind::identity,
                      "Newton's method on Colebrook-White, 50 digits"};
const evidence rounding{"tankwright::plumbing::friction_factor", kind::identity, "the same formula in long double"};
const evidence batch_is_scalar{"tankwright::plumbing::friction_factor", kind::property, "batch equals scalar"};
const evidence continuous{"tankwright::plumbing::friction_factor", kind::property,
                          "value and slope from both sides of Re 2000 and 4000"};
const evidence poiseuille{"tankwright::plumbing::head_loss", kind::identity, "Hagen-Poiseuille, 32 nu L V/(g D^2)"};
const evidence rises{"tankwright::plumbing::head_loss", kind::property, "rises with the flow, odd in it"};
const evidence derivative{"tankwright::plumbing::head_loss_gradient", kind::identity,
                          "derivative of head_loss by central differences in long double"};
const evidence inverse{"tankwright::plumbing::flow_for_head", kind::identity, "inverse of head_loss"};
const evidence continuity{"tankwright::plumbing::mean_velocity", kind::identity, "continuity"};
const evidence crane_v{"tankwright::plumbing::mean_velocity", kind::library,
                       "CalebBell/fluids, Crane TP-410 Ex 7.15: 100 US gpm in 3.068 in, 4.3399 ft/s"};
const evidence definition{"tankwright::plumbing::reynolds", kind::identity, "V D/nu"};
const evidence cengel_re{"tankwright::plumbing::reynolds", kind::published,
                         "Cengel & Cimbala, Fluid Mechanics Fund. & Appl., Ex 8-3: Re 134 312, V rounded to 3.06 m/s"};

const std::vector<double> roughnesses{0.0,  1e-9, 1e-8, 1e-7, 1e-6, 3e-6, 1e-5, 3e-5, 1e-4,
                                      3e-4, 1e-3, 3e-3, 1e-2, 2e-2, 3e-2, 4e-2, 5e-2};

double factor(double re, double e, range_policy policy = range_policy::published) {
  return twp::friction_factor(twp::reynolds_number{re}, twp::relative_roughness{e}, policy).value();
}

/// x = (2/ln 10) W(ln z) - b/a with a = 2.51/Re, b = e/3.7, ln z = ln(ln 10/(2a)) + b ln 10/(2a).
fifty_digits by_lambert_w(double re, double e) {
  const fifty_digits ln10 = log(fifty_digits{10});
  const fifty_digits a = fifty_digits{251} / 100 / fifty_digits{re};
  const fifty_digits b = fifty_digits{e} * 10 / 37;
  const fifty_digits ln_z = log(ln10 / (2 * a)) + b * ln10 / (2 * a);
  // z overflows for a rough pipe at high Re; W in log form, w + ln w = ln z, from Boost where z can be written down.
  fifty_digits w;
  if (ln_z < 600) {
    w = boost::math::lambert_w0(fifty_digits{exp(ln_z)});
  } else {
    w = ln_z - log(ln_z);
    for (int i = 0; i < 8; ++i) w -= (w + log(w) - ln_z) / (1 + 1 / w);
  }
  const fifty_digits x = 2 / ln10 * w - b / a;
  return 1 / (x * x);
}

fifty_digits by_newton(double re, double e) {
  const fifty_digits c = 2 / log(fifty_digits{10});
  const fifty_digits a = fifty_digits{251} / 100 / fifty_digits{re};
  const fifty_digits b = fifty_digits{e} * 10 / 37;
  fifty_digits x = 8;
  for (int i = 0; i < 9; ++i) x -= (x + c * log(b + a * x)) / (1 + c * a / (b + a * x));
  return 1 / (x * x);
}

const water::liquid water_20{.density = kilograms_per_cubic_metre(998.2), .viscosity = pascal_seconds(1.002e-3)};

}  // namespace

TEST_CASE("friction: reference table") {
  const auto factor_of = [](const reference_row& row) { return factor(row["Re"], row["eD"]); };
  const auto loss = [](const reference_row& row) {
    if (row.id == "CRANE7.15") {  // Crane's pipe and fittings: 3 in Schedule 40, the book's roughness of 0.0018 in
      const water::liquid water{.density = pounds_per_cubic_foot(62.298), .viscosity = millipascal_seconds(0.95)};
      const double ft3 = 0.0173, ft25 = 0.0182;
      const double beta4 = std::pow(3.068 / 2.469, 4);
      const twp::pipe_run run{.bore = twp::pipe_bore{inches(3.068)},
                              .length = feet(row["L"]),
                              .roughness = inches(0.0018),
                              .fittings = twp::known_loss(8 * ft3 + 4 * 30 * ft3 + 600 * ft25 * beta4 + 1.0)};
      return row["lift"] + in_feet(twp::head_loss(run, us_gallons_per_minute(row["Q"]), water));
    }
    if (row.id == "CRANE7.14") {
      // Schedule 40 steel; Crane's elbows of r/D 1.5 have n = 14, and one widens from 102 to 128 mm.
      const water::liquid water{.density = kilograms_per_cubic_metre(999.1), .viscosity = millipascal_seconds(1.14)};
      const auto lost = [&](double l, double d, double k) {
        return twp::head_loss({.bore = twp::pipe_bore{metres(d)},
                               .length = metres(l),
                               .roughness = inches(0.0018),
                               .fittings = twp::known_loss(k)},
                              litres_per_minute(row["Q"]), water)
            .value();
      };
      const double widening = 1.0 - 0.10226 * 0.10226 / (0.1282 * 0.1282);
      const double head = row["lift"] + lost(row["L1"], 0.10226, 14 * 0.0163 + widening * widening) +
                          lost(row["L2"], 0.1282, 14 * 0.0155);
      return in_bars(pascals(999.1 * 9.80665 * head));
    }
    const water::liquid water{.density = kilograms_per_cubic_metre(row["rho"]), .viscosity = pascal_seconds(row["mu"])};
    const twp::pipe_run run{
        .bore = twp::pipe_bore{metres(row["D"])}, .length = metres(row["L"]), .roughness = metres(row["eps"])};
    const auto h = twp::head_loss(run, cubic_metres_per_second(row["Q"]), water);
    const double pascals_lost = h.value() * row["rho"] * 9.80665;
    return row.id == "DW-cengel8-3" ? pascals_lost / 1e3 : pascals_lost;
  };
  check_rows(reference_rows("plumbing/friction.csv"),
             {{"tankwright::plumbing::friction_factor", factor_of}, {"tankwright::plumbing::head_loss", loss}});
}

TEST_CASE("friction: Colebrook-White against two exact solutions in 50 digits") {
  for (double re = 4e3; re <= 1.0001e8; re *= 1.21) {
    for (const double e : roughnesses) {
      const double r = std::fmin(re, 1e8);
      const double f = factor(r, e);
      TW_CHECK(lambert, f, static_cast<double>(by_lambert_w(r, e)), relative(1e-12));
      TW_CHECK(newton, f, static_cast<double>(by_newton(r, e)), relative(2e-15));
      const long double wide = twp::detail::friction_factor<long double>(r, e).f;
      TW_CHECK(rounding, f, static_cast<double>(wide), relative(2e-15));
    }
  }
  // Past the published range it stays the formula.
  for (const double re : {1e9, 1e12, 1e100}) {
    for (const double e : {0.0, 1e-6, 0.05, 0.3, 0.999}) {
      TW_CHECK(newton, factor(re, e, extrapolate), static_cast<double>(by_newton(re, e)), relative(4e-15));
    }
  }
}

TEST_CASE("friction: batch equals scalar, in every regime") {
  std::vector<twp::reynolds_number> re;
  std::vector<twp::relative_roughness> e;
  for (double r = 1.0; r < 1e8; r *= 1.013) {
    re.emplace_back(r);
    e.emplace_back(roughnesses[re.size() % roughnesses.size()]);
  }
  for (const double r : {2000.0, std::nextafter(2000.0, 3000.0), std::nextafter(4000.0, 3000.0), 4000.0}) {
    re.emplace_back(r);
    e.emplace_back(1e-4);
  }
  std::vector<twp::darcy_factor> f(re.size(), twp::darcy_factor{0.0});
  twp::friction_factor(re, e, f);
  for (std::size_t i = 0; i < re.size(); ++i) {
    TW_CHECK(batch_is_scalar, f[i], twp::friction_factor(re[i], e[i]), relative(1e-15));
  }
}

TEST_CASE("friction: the blend meets both ends in value and slope") {
  for (const double e : roughnesses) {
    for (const double re : {2000.0, 4000.0}) {
      const double step = re * 1e-10;
      TW_CHECK(continuous, factor(re - step, e), factor(re + step, e), relative(1e-9));
      using twp::detail::friction_factor;
      const auto below = friction_factor<long double>(re * (1 - 1e-12L), e);
      const auto above = friction_factor<long double>(re * (1 + 1e-12L), e);
      TW_CHECK(continuous, static_cast<double>(below.slope), static_cast<double>(above.slope), within(1e-10));
      // The slope is that of the value, from both sides.
      for (const long double r : {re * (1 - 1e-6L), re * (1 + 1e-6L)}) {
        const long double h = r * 1e-8L;
        const long double difference = (std::log(friction_factor(r + h, static_cast<long double>(e)).f) -
                                        std::log(friction_factor(r - h, static_cast<long double>(e)).f)) /
                                       (std::log(r + h) - std::log(r - h));
        TW_CHECK(continuous, static_cast<double>(friction_factor(r, static_cast<long double>(e)).slope),
                 static_cast<double>(difference), within(1e-8));
      }
    }
  }
}

TEST_CASE("friction: head loss is odd, rises everywhere, and has its derivative") {
  for (const double e : {0.0, 1.5e-6, 1e-4, 1.5e-3}) {
    const twp::pipe_run run{.bore = twp::pipe_bore{millimetres(34.0)},
                            .length = metres(2.5),
                            .roughness = metres(e),
                            .fittings = twp::known_loss(1.3)};
    head before = metres(0.0);
    for (double q = 1e-7; q < 0.1; q *= 1.01) {
      const auto flow = cubic_metres_per_second(q);
      const head h = twp::head_loss(run, flow, water_20);
      TW_HOLDS(rises, h > before);
      TW_HOLDS(rises, twp::head_loss(run, -flow, water_20) == -h);
      before = h;

      const twp::detail::colebrook_law<long double> law{9.80665L, 1.002e-3L / 998.2L};
      const auto prepared = law.prepare({0.034L, 2.5L, e, 1.3L, false});
      const long double step = q * 1e-7L;
      const long double difference = (law(prepared, q + step).h - law(prepared, q - step).h) / (2 * step);
      TW_CHECK(derivative, twp::head_loss_gradient(run, flow, water_20),
               seconds_per_square_metre(static_cast<double>(difference)), relative(1e-9));
      TW_HOLDS(derivative,
               twp::head_loss_gradient(run, -flow, water_20) == twp::head_loss_gradient(run, flow, water_20));
      TW_CHECK(inverse, twp::flow_for_head(run, h, water_20), flow, relative(1e-13));
    }
    CHECK(twp::head_loss(run, cubic_metres_per_second(0.0), water_20) == metres(0.0));
  }
}

TEST_CASE("friction: laminar flow is Hagen-Poiseuille, with a slope at rest") {
  const twp::pipe_run run{.bore = twp::pipe_bore{millimetres(6.0)}, .length = metres(10.0)};
  const double nu = 1.002e-3 / 998.2;
  for (const double v : {1e-9, 1e-3, 0.3}) {
    const double q = v * 3.141592653589793 / 4 * 36e-6;
    const head expected = metres(32 * nu * 10.0 * v / (9.80665 * 36e-6));
    TW_CHECK(poiseuille, twp::head_loss(run, cubic_metres_per_second(q), water_20), expected, relative(1e-14));
    TW_CHECK(derivative, twp::head_loss_gradient(run, cubic_metres_per_second(0.0), water_20),
             seconds_per_square_metre(expected.value() / q), relative(1e-14));
  }
}

TEST_CASE("friction: velocity and Reynolds number") {
  TW_CHECK(continuity, twp::mean_velocity(litres_per_second(1.0), twp::pipe_bore{metres(1.0)}),
           metres_per_second(0.001 / (3.141592653589793 / 4)), relative(1e-15));
  TW_CHECK(crane_v, in_feet_per_second(twp::mean_velocity(us_gallons_per_minute(100.0), twp::pipe_bore{inches(3.068)})),
           4.3399, within(0.00005));
  const auto v = twp::mean_velocity(litres_per_minute(-90.0), twp::pipe_bore{millimetres(34.0)});
  TW_CHECK(definition, twp::reynolds(litres_per_minute(-90.0), twp::pipe_bore{millimetres(34.0)}, water_20),
           twp::reynolds_number{-v.value() * 0.034 * 998.2 / 1.002e-3}, relative(1e-14));
  const water::liquid water_15{.density = kilograms_per_cubic_metre(999.0), .viscosity = pascal_seconds(1.138e-3)};
  TW_CHECK(cengel_re, twp::reynolds(cubic_metres_per_second(0.006), twp::pipe_bore{metres(0.05)}, water_15),
           twp::reynolds_number{134312.0}, relative(0.005 / 3.06));
}

TEST_CASE("friction: edges of the ranges") {
  check_edges(twp::reynolds_limits, [](double re, range_policy policy) { return factor(re, 1e-4, policy); });
  check_edges(twp::relative_roughness_limits, [](double e, range_policy policy) { return factor(1e5, e, policy); });
  check_edges(twp::bore_limits, [](double d, range_policy) {
    return twp::mean_velocity(litres_per_second(1.0), twp::pipe_bore{metres(d)});
  });
}

TEST_CASE("friction: an error names the run") {
  const auto message = [](const twp::pipe_run& run, double q = 1e-3, range_policy policy = range_policy::published) {
    try {
      (void)twp::head_loss(run, cubic_metres_per_second(q), water_20, policy);
    } catch (const error& e) {
      return std::string{e.what()};
    }
    return std::string{"nothing thrown"};
  };
  const std::string start = "tankwright::plumbing::head_loss: ";
  const auto bore = twp::pipe_bore{millimetres(34.0)};
  CHECK(message({.label = "return A", .bore = twp::pipe_bore{metres(0.0)}}) ==
        start + "return A: bore = 0 m is not possible; expected 0.0001 to 20 m");
  CHECK(message({.label = "return A", .bore = bore, .length = metres(-2.0)}) ==
        start + "return A: length = -2 m is not possible; expected 0 to 100000 m");
  CHECK(message({.label = "return A", .bore = bore, .roughness = millimetres(34.0)}) ==
        start + "return A: relative roughness = 1 is not possible; expected at least 0 and below 1");
  CHECK(message({.label = "return A", .bore = bore, .roughness = millimetres(3.4)}) ==
        start +
            "return A: relative roughness = 0.1 is outside the published range 0 to 0.05 (Moody 1944); pass "
            "tankwright::extrapolate to go past it");
  CHECK(message({.label = "return A", .bore = bore, .roughness = millimetres(3.4)}, 1e-3, extrapolate) ==
        "nothing thrown");
  CHECK(message({.label = "return A", .bore = bore, .fittings = twp::known_loss(-3.0)}) ==
        start + "return A: sum of the loss coefficients = -3 is not possible; expected at least -2");
  CHECK(message({.label = "return A", .bore = bore, .valve = twp::flow_coefficient::from_kv(0.0)}) ==
        start + "return A has its valve shut: no flow passes");
  CHECK(message({.bore = bore}, std::numeric_limits<double>::quiet_NaN()) ==
        start + "flow = nan m3/s is not possible; expected a finite number");
  CHECK_THROWS_AS((void)twp::flow_for_head({.bore = bore}, metres(1.0), water_20), invalid_input);
}

TEST_CASE("friction: a bad element of a batch throws before anything is written") {
  const std::vector<twp::reynolds_number> re{twp::reynolds_number{1e5}, twp::reynolds_number{0.0}};
  const std::vector<twp::relative_roughness> e(2, twp::relative_roughness{0.0});
  std::vector<twp::darcy_factor> result(2, twp::darcy_factor{-1.0});
  CHECK_THROWS_AS(twp::friction_factor(re, e, result), invalid_input);
  CHECK(result[0].value() == -1.0);
  std::vector<twp::darcy_factor> short_result(1, twp::darcy_factor{-1.0});
  CHECK_THROWS_AS(twp::friction_factor(re, e, short_result), invalid_input);
}

TEST_CASE("friction: a batch may begin and end in any regime") {
  for (const double r : {1000.0, 3000.0, 4000.0, 1e6}) {
    const std::vector<twp::reynolds_number> re{twp::reynolds_number{r}};
    const std::vector<twp::relative_roughness> e{twp::relative_roughness{1e-4}};
    std::vector<twp::darcy_factor> f{twp::darcy_factor{-1.0}};
    twp::friction_factor(re, e, f);
    TW_CHECK(batch_is_scalar, f[0], twp::friction_factor(re[0], e[0]), relative(1e-15));
  }
}

TEST_CASE("friction: a shut valve lets nothing pass and loses nothing at rest") {
  const twp::pipe_run shut{.label = "r",
                           .bore = twp::pipe_bore{millimetres(34.0)},
                           .length = metres(1.0),
                           .valve = twp::flow_coefficient::from_kv(0.0)};
  CHECK(twp::head_loss(shut, flow_rate{}, water_20) == metres(0.0));
  CHECK_THROWS_AS((void)twp::head_loss(shut, cubic_metres_per_second(-0.001), water_20), invalid_input);
  CHECK(twp::flow_for_head(shut, metres(1.0), water_20) == flow_rate{});
  // A Kv of 1e-9 is the least that is not shut; a last digit less is.
  twp::pipe_run ajar = shut;
  ajar.valve = twp::flow_coefficient::from_kv(1e-9);
  REQUIRE(twp::in_kv(*ajar.valve) == 1e-9);
  CHECK(twp::flow_for_head(ajar, metres(1.0), water_20) > flow_rate{});
  ajar.valve = twp::flow_coefficient::from_kv(std::nextafter(1e-9, 0.0));
  CHECK(twp::flow_for_head(ajar, metres(1.0), water_20) == flow_rate{});
}

TEST_CASE("friction: a sum of loss coefficients below zero counts as none, and so does none given") {
  const evidence none{"tankwright::plumbing::head_loss", kind::identity, "the wall alone"};
  twp::pipe_run run{.bore = twp::pipe_bore{millimetres(34.0)}, .length = metres(2.0)};
  const auto loss = [&] { return twp::head_loss(run, litres_per_second(1.0), water_20); };
  const head plain = loss();
  run.fittings = twp::known_loss(0.0);
  TW_CHECK(none, plain, loss(), tolerance{});
  run.fittings = twp::known_loss(-0.0005);
  TW_CHECK(none, loss(), plain, tolerance{});
  run.fittings = twp::known_loss(-2.0);
  TW_CHECK(none, loss(), plain, tolerance{});
}

TEST_CASE("friction: the flow for a head loses that head, from a seep to a torrent") {
  for (const double d : {0.002, 0.02, 0.2}) {
    for (const double l : {0.0, 0.01, 1.0, 300.0}) {
      for (const double k : {0.0, 0.02, 30.0}) {
        if (l == 0.0 && k == 0.0) continue;
        const twp::pipe_run run{.bore = twp::pipe_bore{metres(d)}, .length = metres(l), .fittings = twp::known_loss(k)};
        for (const double h : {1e-9, 1e-6, 0.001, 0.03, 1.0}) {
          const flow_rate q = twp::flow_for_head(run, metres(h), water_20);
          CHECK(q > flow_rate{});
          TW_CHECK(inverse, twp::head_loss(run, q, water_20), metres(h), relative(1e-12));
          CHECK(twp::flow_for_head(run, metres(-h), water_20) == -q);
        }
      }
    }
  }
}
