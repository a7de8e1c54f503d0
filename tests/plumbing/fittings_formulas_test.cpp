// SPDX-License-Identifier: BSL-1.0
// Losses of fittings and the cross-checks of friction a second time, to rounding, with the ends of their bands.
#include <algorithm>
#include <cmath>
#include <tankwright/plumbing.hpp>
#include <vector>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::plumbing;

namespace {

evidence second(std::string_view function, std::string_view source = "a second transcription") {
  return {"tankwright::plumbing::" + std::string{function}, kind::identity, std::string{source}};
}
pipe_bore bore(double x) { return pipe_bore{metres(x)}; }
void band(const evidence& what, const estimate<loss_coefficient>& k, double central, double share) {
  TW_CHECK(what, k.central.value(), central, relative(1e-12));
  TW_CHECK(what, k.low.value(), central * (1 - share), tolerance({.absolute = 1e-15, .relative = 1e-12}));
  TW_CHECK(what, k.high.value(), central * (1 + share), tolerance({.absolute = 1e-15, .relative = 1e-12}));
  CHECK_FALSE(k.reason.empty());
}

}  // namespace

TEST_CASE("fittings formulas: Crane's table in friction factors of rough steel, 0.0018 in") {
  for (const double d : {0.015, 0.05, 0.11, 0.3}) {
    const double f = std::pow(-2.0 * std::log10(0.0018 * 0.0254 / d / 3.7), -2.0);
    TW_CHECK(second("fully_turbulent_factor"), fully_turbulent_factor(bore(d)).value(), f, relative(1e-12));
    const struct {
      fitting kind;
      double n, share;
    } rows[]{{fitting::elbow_90, 30, 0.3},           {fitting::elbow_45, 16, 0.3},
             {fitting::return_bend, 50, 0.3},        {fitting::tee_through_run, 20, 0.3},
             {fitting::tee_through_branch, 60, 0.3}, {fitting::mitre_90, 60, 0.3},
             {fitting::mitre_45, 15, 0.3},           {fitting::gate_valve, 8, 0.5},
             {fitting::ball_valve, 3, 0.5},          {fitting::butterfly_valve, 45, 0.5},
             {fitting::plug_valve, 18, 0.5},         {fitting::swing_check, 100, 0.5},
             {fitting::lift_check, 600, 0.5},        {fitting::foot_valve_hinged, 75, 0.5},
             {fitting::foot_valve_poppet, 420, 0.5}};
    for (const auto& row : rows) {
      CAPTURE(static_cast<int>(row.kind));
      band(second("fitting_loss", "Crane TP-410: n f_T"), fitting_loss(row.kind, bore(d)), row.n * f, row.share);
      CHECK((fitting_loss(row.kind, bore(d)).reason.find("makers") != std::string_view::npos) == (row.share == 0.5));
    }
    band(second("fitting_loss", "a union: 0.08"), fitting_loss(fitting::union_or_coupling, bore(d)), 0.08, 0.5);
  }
}

TEST_CASE("fittings formulas: entrances and changes of section") {
  const auto entrance = second("entrance_loss", "Crane TP-410: 0.5, 0.28, 0.24, 0.15, 0.09, 0.04 at r/d 0 to 0.15");
  const std::vector<std::pair<double, double>> table{{0, 0.5},     {0.02, 0.28}, {0.04, 0.24},
                                                     {0.06, 0.15}, {0.1, 0.09},  {0.15, 0.04}};
  for (std::size_t i = 0; i + 1 < table.size(); ++i) {
    for (const double part : {0.0, 0.25, 0.7}) {
      const double r = table[i].first + part * (table[i + 1].first - table[i].first);
      band(entrance, entrance_loss({.bore = bore(0.05), .lip_radius = metres(0.05 * r)}),
           table[i].second + part * (table[i + 1].second - table[i].second), 0.15);
    }
  }
  band(entrance, entrance_loss({.bore = bore(0.05), .lip_radius = metres(0.0075)}), 0.04, 0.15);
  band(entrance, entrance_loss({.bore = bore(0.05), .lip_radius = metres(0.02)}), 0.04, 0.15);
  band(second("entrance_loss", "a pipe that stands in: 0.78"),
       entrance_loss({.bore = bore(0.05), .projecting = true, .lip_radius = metres(0.02)}), 0.78, 0.15);
  for (const double degree : {5.0, 22.0, 44.0, 46.0, 90.0, 179.0, 180.0}) {
    const double s = std::sin(degree * 3.14159265358979323846 / 360.0), b2 = 0.4 * 0.4;
    const double wide = (degree <= 45 ? 2.6 * s : 1.0) * (1 - b2) * (1 - b2);
    const double narrow = (degree <= 45 ? 0.8 * s : 0.5 * std::sqrt(s)) * (1 - b2);
    band(second("section_change_loss", "Crane TP-410"), section_change_loss({bore(0.02), bore(0.05), degrees(degree)}),
         wide, 0.2);
    band(second("section_change_loss", "Crane TP-410"), section_change_loss({bore(0.05), bore(0.02), degrees(degree)}),
         narrow, 0.2);
  }
  band(second("section_change_loss", "a step when nothing is said"), section_change_loss({bore(0.05), bore(0.02)}),
       0.5 * (1 - 0.16), 0.2);
  CHECK(section_change_loss({bore(0.05), bore(0.05)}).central.value() == 0.0);
}

TEST_CASE("fittings formulas: tees by Crane's tables of C, D, E, F, G, H, J and M") {
  const auto what = second("tee_losses", "Crane TP-410, ch. 2, its tables");
  for (const double b : {0.3, 0.55, 0.59, 0.62, 0.64, 0.66, 0.68, 1.0}) {
    for (const double y : {0.0, 0.1, 0.3, 0.36, 0.38, 0.45, 0.5, 0.55, 0.65, 0.7, 0.9, 1.0}) {
      const double b2 = b * b, v = y / b2;
      const auto losses = [&](tee_direction way, tee_branch_angle angle) {
        return tee_losses({.direction = way,
                           .angle = angle,
                           .run_bore = bore(0.1),
                           .branch_bore = bore(0.1 * b),
                           .branch_share = fraction(y)});
      };
      const auto check = [&](const tee_loss& found, double run, double branch) {
        CAPTURE(b);
        CAPTURE(y);
        const auto side = [&](const estimate<loss_coefficient>& k, double central) {
          const double half = 0.1 + 0.2 * std::fabs(central);
          const tolerance close{.absolute = 1e-13, .relative = 1e-12};
          TW_CHECK(what, k.central.value(), central, close);
          TW_CHECK(what, k.low.value(), central - half, close);
          TW_CHECK(what, k.high.value(), central + half, close);
        };
        side(found.run, run);
        side(found.branch, branch);
      };
      // Joining: C is 1 in narrow branches, else 0.9 (1 - y) down to 0.55.
      const double c = b2 <= 0.35 ? 1.0 : std::max(0.9 * (1 - y), 0.55);
      check(losses(tee_direction::joining, tee_branch_angle::ninety), 1.55 * y - y * y,
            c * (1 + v * v - 2 * (1 - y) * (1 - y)));
      check(losses(tee_direction::joining, tee_branch_angle::forty_five), 1 - (1 - y) * (1 - y) - 1.41 * y * v,
            c * (1 + v * v - 2 * (1 - y) * (1 - y) - 1.41 * y * v));
      // Dividing: through the run M y^2.
      const double m = b2 <= 0.4 ? 0.4 : y <= 0.5 ? 2 * (2 * y - 1) : 0.3 * (2 * y - 1);
      const double gg =
          b2 <= 0.35 ? (y <= 0.3571428571428 ? 1.1 - 0.7 * y : 0.85) : (y <= 0.6666666666666 ? 1 - 0.6 * y : 0.6);
      check(losses(tee_direction::dividing, tee_branch_angle::forty_five), m * y * y,
            gg * (1 + v * v - 2 * v * std::cos(0.78539816339744831)));
      const double ninety = b <= 2.0 / 3.0 ? 1 + v * v : (1 + 0.3 * y * y) * (1 + 0.3 * v * v);
      check(losses(tee_direction::dividing, tee_branch_angle::ninety), m * y * y, ninety);
    }
  }
}

TEST_CASE("fittings formulas: valves, bases and sums") {
  const double pi = 3.14159265358979323846;
  for (const double d : {0.02, 0.05}) {
    const double a = pi / 4 * d * d;
    for (const double kv : {0.5, 20.0}) {
      const double v = kv / 3600 / a, k = 2 * 100.0 / (v * v);  // 1 bar of water of 1000 kg/m3: p/rho = 100 m2/s2
      TW_CHECK(second("loss_from_flow_coefficient"),
               loss_from_flow_coefficient(flow_coefficient::from_kv(kv), bore(d)).value(), k, relative(1e-12));
      TW_CHECK(second("flow_coefficient_from_loss"), flow_coefficient_from_loss(loss_coefficient{k}, bore(d)).value(),
               kv, relative(1e-12));
      TW_CHECK(second("leaking_check_valve"), leaking_check_valve(loss_coefficient{k}, bore(d)).leak.value(), kv,
               relative(1e-12));
    }
    band(second("hooper_loss", "K1/Re + Kinf (1 + 1/D), D in inches"),
         hooper_loss({800, 0.25}, reynolds_number{5e3}, bore(d)), 800 / 5e3 + 0.25 * (1 + 0.0254 / d), 0.3);
  }
  band(second("darby_loss", "K1/Re + Ki (1 + Kd/D^0.3), D in inches"),
       darby_loss({800, 0.091, 4.0}, reynolds_number{5e3}, nominal_size::from_inches(1.5)),
       800 / 5e3 + 0.091 * (1 + 4.0 / std::pow(1.5, 0.3)), 0.3);
  // An open square centimetre: 0.61 A sqrt(2 p/rho) at 1 bar, in m3/h.
  TW_CHECK(second("leaking_check_valve"), leaking_check_valve(square_metres(1e-4)).leak.value(),
           0.61 * 1e-4 * std::sqrt(2 * 100.0) * 3600, relative(1e-12));
  const estimate<loss_coefficient> k{loss_coefficient{1}, loss_coefficient{2}, loss_coefficient{4}, "why"};
  const auto moved = on_bore(k, {bore(0.05), bore(0.1)});
  TW_CHECK(second("on_bore"), moved.low.value(), 16.0, relative(1e-13));
  TW_CHECK(second("on_bore"), moved.central.value(), 32.0, relative(1e-13));
  TW_CHECK(second("on_bore"), moved.high.value(), 64.0, relative(1e-13));
  const auto sum = total_loss({{k, 3}, {k}});
  TW_CHECK(second("total_loss"), sum.low.value(), 4.0, relative(1e-14));
  TW_CHECK(second("total_loss"), sum.central.value(), 8.0, relative(1e-14));
  TW_CHECK(second("total_loss"), sum.high.value(), 16.0, relative(1e-14));
  TW_CHECK(second("equivalent_length"),
           equivalent_length(loss_coefficient{1.5}, bore(0.05), darcy_factor{0.02}).value(), 3.75, relative(1e-13));
  TW_CHECK(second("in_cv"), in_cv(flow_coefficient::from_kv(1.0)),
           60 / 3.785411784 / 3.6 / std::sqrt(100.0 / 6.894757293168), relative(1e-12));
}

TEST_CASE("friction cross-checks formulas: to rounding") {
  for (const double e : {1e-6, 1e-4, 0.01, 0.05}) {
    for (const double re : {4e3, 2.7e4, 1e6, 9e7}) {
      const double haaland = -1.8 * std::log10(std::pow(e / 3.7, 1.11) + 6.9 / re);
      TW_CHECK(second("friction_factor_haaland"),
               friction_factor_haaland(reynolds_number{re}, relative_roughness{e}).value(), 1 / (haaland * haaland),
               relative(1e-12));
      const double a = -2 * std::log10(e / 3.7 + 12 / re), b = -2 * std::log10(e / 3.7 + 2.51 * a / re);
      const double serghides = 4.781 - std::pow(a - 4.781, 2) / (b - 2 * a + 4.781);
      TW_CHECK(second("friction_factor_serghides"),
               friction_factor_serghides(reynolds_number{re}, relative_roughness{e}).value(),
               1 / (serghides * serghides), relative(1e-12));
    }
    for (const double re : {500.0, 1900.0, 2500.0, 3500.0, 1e5}) {
      const double theta_1 = std::pow(-2.457 * std::log(std::pow(7 / re, 0.9) + 0.27 * e), 16),
                   theta_2 = std::pow(37530 / re, 16);
      TW_CHECK(second("friction_factor_churchill"),
               friction_factor_churchill(reynolds_number{re}, relative_roughness{e}).value(),
               8 * std::pow(std::pow(8 / re, 12) + 1 / std::pow(theta_1 + theta_2, 1.5), 1.0 / 12.0), relative(1e-11));
    }
  }
  TW_CHECK(second("friction_factor_blasius"), friction_factor_blasius(reynolds_number{2e4}).value(),
           0.3164 * std::pow(2e4, -0.25), relative(1e-13));
  const pipe_run run{.bore = bore(0.05), .length = metres(12)};
  TW_CHECK(second("head_loss_hazen_williams"),
           head_loss_hazen_williams(run, cubic_metres_per_second(-0.003), hazen_williams_c{140}).value(),
           -10.67 * 12 * std::pow(0.003, 1.852) / (std::pow(140, 1.852) * std::pow(0.05, 4.8704)), relative(1e-12));
}
