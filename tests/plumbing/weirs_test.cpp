// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/weirs.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

/// Flows grow as sqrt(g); books use their own g.
double at_book_gravity(const reference_row& row, flow_rate q) {
  double g = 9.80665;
  if (row.has("g")) g = row.text("g").find("ft") != std::string::npos ? row["g"] * 0.3048 : row["g"];
  return q.value() * std::sqrt(g / 9.80665);
}

length length_of(const reference_row& row, const char* name) {
  const std::string text = row.text(name);
  if (text.find("ft") != std::string::npos) return feet(row[name]);
  if (text.find("mm") != std::string::npos) return millimetres(row[name]);
  return metres(row[name]);
}

double in_row_unit(const reference_row& row, double cubic_metres) {
  return row.unit == "ft3/s" ? in_cubic_feet_per_second(cubic_metres_per_second(cubic_metres)) : cubic_metres;
}

range_policy policy_of(const reference_row& row) {
  return row.has("extrapolate") ? extrapolate : range_policy::published;
}

const tp::toothed_edge comb{.gap_width = millimetres(8.0),
                            .gaps = 40,
                            .tooth_width = millimetres(8.0),
                            .gap_height = millimetres(20.0),
                            .crest_height = metres(0.5)};

}  // namespace

TEST_CASE("weirs: reference table") {
  const auto francis = [](const reference_row& row) {
    return in_row_unit(
        row, at_book_gravity(row, tp::francis_weir({.width = length_of(row, "L"), .head = length_of(row, "H")}) *
                                      std::sqrt(9.80665 / (32.2 * 0.3048))));  // 3.33 is fixed in the source
  };
  const auto bazin = [](const reference_row& row) {
    return in_row_unit(row, at_book_gravity(row, tp::bazin_weir({length_of(row, "L"), length_of(row, "H")})));
  };
  const auto rehbock = [](const reference_row& row) {
    const tp::full_width_edge edge{.width = length_of(row, "L"), .crest_height = length_of(row, "Z")};
    return in_row_unit(row, at_book_gravity(row, tp::rehbock_weir(edge, length_of(row, "H"), policy_of(row))));
  };
  const auto rectangular = [](const reference_row& row) {
    tp::rectangular_weir_input weir{.width = metres(row["b"]),
                                    .head = metres(row["h"]),
                                    .discharge_coefficient = row["Cd"],
                                    .contractions = row.has("n") ? row["n"] : 0.0};
    if (row.has("approach")) {
      weir.approach_velocity =
          metres_per_second(at_book_gravity(row, tp::rectangular_weir(weir)) / (row["b"] * (row["h"] + row["p"])));
      // v^2/2g at the book's g: the velocity that has the same velocity head here.
      weir.approach_velocity *= std::sqrt(9.80665 / row["g"]);
    }
    return at_book_gravity(row, tp::rectangular_weir(weir));
  };
  const auto kindsvater = [](const reference_row& row) {
    if (row.has("b")) {
      return tp::kindsvater_carter_weir({metres(row["b"]), metres(row["B"]), metres(row["p"])}, metres(row["h"]))
          .value();
    }
    // The coefficient of the source, (2/3) sqrt(2g) (a + a' h/p) in feet, at h/p = 0 and 1; the weir is so large that
    // the corrections of its width and head vanish.
    const auto coefficient = [&](double ratio, double p) {
      const tp::contracted_edge edge{
          .width = metres(1e9), .channel_width = metres(1e9 / ratio), .crest_height = metres(p)};
      return tp::kindsvater_carter_weir(edge, metres(1e6)).value() / 1e9 / std::pow(1e6 + 0.001, 1.5) /
             std::sqrt(0.3048);
    };
    if (row.has("c2")) return coefficient(row["c2"], 1e15);
    return coefficient(row["c1"], 1e6) - coefficient(row["c1"], 1e15);
  };
  const auto v_notch = [](const reference_row& row) {
    return at_book_gravity(
        row, tp::v_notch_weir(
                 {.opening = degrees(row["theta"]), .head = metres(row["H"]), .discharge_coefficient = row["Cd"]}));
  };
  const auto shen = [](const reference_row& row) {
    const double q = tp::shen_weir({degrees(row["theta"])}, metres(row["H"])).value();
    return row.has("times") ? q / row["times"] : q;
  };
  const auto submerged = [](const reference_row& row) {
    return tp::submerged_share({metres(0.1), metres(0.1 * row["ratio"]), row["n"]}).value();
  };
  const auto outlet = [](const reference_row& row) {
    return tp::standpipe_inlet({tp::pipe_bore{millimetres(row["D"])}}, millimetres(row["h"])).value();
  };
  check_rows(reference_rows("plumbing/weirs.csv"), {{"tankwright::plumbing::francis_weir", francis},
                                                    {"tankwright::plumbing::bazin_weir", bazin},
                                                    {"tankwright::plumbing::rehbock_weir", rehbock},
                                                    {"tankwright::plumbing::rectangular_weir", rectangular},
                                                    {"tankwright::plumbing::kindsvater_carter_weir", kindsvater},
                                                    {"tankwright::plumbing::v_notch_weir", v_notch},
                                                    {"tankwright::plumbing::shen_weir", shen},
                                                    {"tankwright::plumbing::submerged_share", submerged},
                                                    {"tankwright::plumbing::standpipe_inlet", outlet}});
}

TEST_CASE("weirs: Rehbock's constants in feet give the printed value to its last digit") {
  // Lal, ex. 4.5: (3.227 + 0.435 He/Z) L He^1.5 with He = H + 0.004 ft: the same kernel with the source's constants.
  const double per_cd = 2.0 / 3.0 * std::sqrt(2.0 * 32.2);
  const double he = 1.204;
  const double q = per_cd * (3.227 / per_cd + 0.435 / per_cd * he / 2.85) * 7.573 * std::pow(he, 1.5);
  CHECK(std::fabs(q - 34.12) < 0.01);
  const tp::detail::rehbock_constants<double> in_feet{3.227 / per_cd, 0.435 / per_cd, 0.004 * 0.3048};
  const double kernel = tp::detail::rehbock(1.2 * 0.3048, 7.573 * 0.3048, 2.85 * 0.3048, in_feet) *
                        std::sqrt(32.2 * 0.3048 / 9.80665) / 0.028316846592;
  TW_CHECK((evidence{"tankwright::plumbing::rehbock_weir", kind::published, "Lal, Hydraulic Machines, ex. 4.5"}),
           kernel, 34.12,
           tolerance{.absolute = 0.012});  // the source has he, the metric printing h, in the slope: 0.005
}

TEST_CASE("weirs: identities") {
  const evidence toothed{"tankwright::plumbing::toothed_weir", kind::identity, "the rule worked by hand"};
  // 40 gaps of 8 mm in a comb of equal teeth (b/B = 0.5: Ce = 0.592 + 0.011 h/p), 15 mm of water, p = 500 mm:
  //   40 (2/3) 4.4286906 (0.592 + 0.011 0.03) 0.008 0.015^1.5 = 0.94478720 0.59233 0.00183711731 = 0.001028098 m3/s
  TW_CHECK(toothed, tp::toothed_weir(comb, millimetres(15.0)), cubic_metres_per_second(0.001028098), relative(1e-6));
  // At 30 mm the gaps are closed above 20 mm (Ce with h = 20 mm: 0.59244):
  //   0.94478720 0.59244 (0.03^1.5 - 0.01^1.5) = 0.94478720 0.59244 0.00419615242 = 0.002348711 m3/s
  TW_CHECK(toothed, tp::toothed_weir(comb, millimetres(30.0)), cubic_metres_per_second(0.002348711), relative(1e-6));

  const evidence share{"tankwright::plumbing::submerged_share", kind::identity, "limits of the formula"};
  TW_CHECK(share, tp::submerged_share({metres(0.1), metres(-0.2)}), fraction(1.0), tolerance{});
  TW_CHECK(share, tp::submerged_share({metres(0.1), metres(0.1)}), fraction(0.0), tolerance{});
  // 1 - 0.25^1.5 = 0.875; 0.875^0.385 = exp(0.385 ln 0.875) = exp(-0.0514096) = 0.949889
  TW_CHECK(share, tp::submerged_share({metres(0.4), metres(0.1)}), fraction(0.949889), relative(1e-6));

  const evidence outlet{"tankwright::plumbing::standpipe_inlet", kind::identity, "both branches at h = D/2"};
  for (const double d : {20.0, 53.0, 110.0}) {
    const double at = tp::standpipe_inlet({tp::pipe_bore{millimetres(d)}}, millimetres(d / 2)).value();
    TW_CHECK(outlet, cubic_metres_per_second(at), cubic_metres_per_second(1e-3 * d * d * std::sqrt(d / 2) / 15000.0),
             relative(1e-14));
    TW_CHECK(outlet, tp::standpipe_inlet({tp::pipe_bore{millimetres(d)}}, millimetres(d / 2 + 1e-9)),
             cubic_metres_per_second(at), relative(1e-9));
    TW_CHECK(outlet, tp::standpipe_inlet({tp::pipe_bore{millimetres(d)}, true}, millimetres(d)),
             tp::standpipe_inlet({tp::pipe_bore{millimetres(d)}}, millimetres(d)) * 0.5, relative(1e-14));
  }
}

TEST_CASE("weirs: the kernels in long double") {
  const evidence rounding{"tankwright::plumbing::rehbock_weir", kind::identity, "the same formula in long double"};
  const evidence notch{"tankwright::plumbing::v_notch_weir", kind::identity, "the same formula in long double"};
  for (double h = 0.03; h < 0.5; h += 0.013) {
    const auto r = static_cast<double>(tp::detail::rehbock<long double>(h, 0.8L, 0.55L));
    TW_CHECK(rounding, tp::rehbock_weir({metres(0.8), metres(0.55)}, metres(h)), cubic_metres_per_second(r),
             relative(2e-15));
    const auto v = static_cast<double>(
        tp::detail::notch_flow<long double>(0.6L, static_cast<long double>(degrees(75.0).value()), h));
    TW_CHECK(notch, tp::v_notch_weir({degrees(75.0), metres(h), 0.6}), cubic_metres_per_second(v), relative(2e-15));
  }
}

TEST_CASE("weirs: continuous and rising through every change of rule") {
  const evidence rises{"tankwright::plumbing::rehbock_weir", kind::property,
                       "no jump at 5 mm, rises, nothing at no head"};
  const evidence comb_rises{"tankwright::plumbing::toothed_weir", kind::property,
                            "no jump where the gaps drown, rises"};
  const tp::full_width_edge edge{.width = metres(0.6), .crest_height = metres(0.4)};
  TW_HOLDS(rises, tp::rehbock_weir(edge, metres(0.0), extrapolate).value() == 0.0);
  double before = 0.0, comb_before = 0.0;
  for (double h = 1e-5; h < 0.06; h += 1e-5) {
    const double q = tp::rehbock_weir(edge, metres(h), extrapolate).value();
    TW_HOLDS(rises, (q > before && q - before < 1e-5));
    before = q;
    const double c = tp::toothed_weir(comb, metres(h)).value();
    TW_HOLDS(comb_rises, (c > comb_before && c - comb_before < 1e-5));
    comb_before = c;
  }
  const evidence kc{"tankwright::plumbing::kindsvater_carter_weir", kind::property,
                    "no jump between the tabled ratios"};
  for (int i = 1; i < 10; ++i) {
    const auto at = [&](double ratio) {
      return tp::kindsvater_carter_weir({metres(0.3), metres(0.3 / ratio), metres(0.3)}, metres(0.05)).value();
    };
    TW_HOLDS(kc, std::fabs(at(0.1 * i + 1e-9) / at(0.1 * i - 1e-9) - 1.0) < 1e-8);
  }
  const evidence v{"tankwright::plumbing::shen_weir", kind::property, "no jump between the tabled angles"};
  for (const double angle : {40.0, 60.0, 80.0}) {
    const auto at = [&](double degree) { return tp::shen_weir({degrees(degree)}, metres(0.1)).value(); };
    TW_HOLDS(v, std::fabs(at(angle + 1e-9) / at(angle - 1e-9) - 1.0) < 1e-8);
  }
}

TEST_CASE("weirs: edges of the ranges") {
  const length b = metres(0.8), p = metres(0.8), h = metres(0.1);
  check_edges(tp::rehbock_width_limits, [&](double x, range_policy policy) {
    return tp::rehbock_weir({metres(x), p}, h, policy);
  });
  check_edges(tp::rehbock_crest_limits, [&](double x, range_policy policy) {
    return tp::rehbock_weir({b, metres(x)}, metres(0.05), policy);
  });
  check_edges(tp::rehbock_head_limits, [&](double x, range_policy policy) {
    return tp::rehbock_weir({b, p}, metres(x), policy);
  });
  check_edges(tp::kindsvater_head_limits, [&](double x, range_policy policy) {
    return tp::kindsvater_carter_weir({b, metres(1.0), metres(1e15)}, metres(x), policy);
  });
  check_edges(tp::kindsvater_width_limits, [&](double x, range_policy policy) {
    return tp::kindsvater_carter_weir({metres(x), metres(1e15), p}, h, policy);
  });
  check_edges(tp::shen_angle_limits,
              [&](double x, range_policy policy) { return tp::shen_weir({degrees(x)}, h, policy); });
  check_edges(tp::shen_head_limits,
              [&](double x, range_policy policy) { return tp::shen_weir({degrees(60.0)}, metres(x), policy); });
  check_edges(tp::bazin_head_limits, [&](double x, range_policy policy) {
    return tp::bazin_weir({b, metres(x)}, policy);
  });
  check_edges(tp::francis_head_limits, [&](double x, range_policy policy) {
    return tp::francis_weir({.width = metres(1e15), .head = metres(x)}, policy);
  });
  check_edges(tp::discharge_coefficient_limits, [&](double x, range_policy) {
    return tp::rectangular_weir({.width = b, .head = h, .discharge_coefficient = x});
  });
  check_edges(tp::bore_limits,
              [&](double x, range_policy) { return tp::standpipe_inlet({tp::pipe_bore{metres(x)}}, h); });
}

TEST_CASE("weirs: what cannot be is refused by name") {
  CHECK_THROWS_WITH_AS(
      (void)tp::rectangular_weir(
          {.width = metres(0.1), .head = metres(0.6), .discharge_coefficient = 0.6, .contractions = 2.0}),
      "tankwright::plumbing::rectangular_weir: width - 0.1 contractions head = -0.02 m is not possible; "
      "expected more than 0 m",
      invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)tp::kindsvater_carter_weir({metres(0.8), metres(0.5), metres(0.3)}, metres(0.05)),
      "tankwright::plumbing::kindsvater_carter_weir: width / channel_width = 1.6 is not possible; expected "
      "more than 0 and at most 1",
      invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)tp::submerged_share({metres(0.1), metres(0.2)}),
      "tankwright::plumbing::submerged_share: downstream_head / upstream_head = 2 is not possible; expected "
      "at most 1",
      invalid_input);
  CHECK_THROWS_AS((void)tp::rehbock_weir({metres(0.8), metres(0.3)}, metres(0.4)), out_of_range);
  CHECK_THROWS_AS((void)tp::francis_weir({.width = metres(0.3), .head = metres(0.2)}), out_of_range);
  CHECK_THROWS_AS(
      (void)tp::toothed_weir({millimetres(8.0), 0, millimetres(8.0), millimetres(20.0), metres(0.5)}, metres(0.01)),
      invalid_input);
}

TEST_CASE("weirs: water below the crest holds nothing back") {
  const evidence free{"tankwright::plumbing::submerged_share", kind::property, "1 at the crest and below it"};
  for (const double below : {0.0, -0.001, -0.05, -3.0}) {
    TW_CHECK(free, tp::submerged_share({metres(0.1), metres(below)}), fraction(1.0), tolerance{});
  }
  TW_CHECK(free, tp::submerged_share({metres(0.1), metres(0.1)}), fraction(0.0), tolerance{});
}

TEST_CASE("weirs: no end stands free and no water approaches unless it is said") {
  // (2/3) 0.6 sqrt(2g) 0.4 x 0.1^1.5, and 1.838 of it in Francis' form.
  const evidence plain{"tankwright::plumbing::rectangular_weir", kind::identity, "the formula by hand"};
  const evidence francis{"tankwright::plumbing::francis_weir", kind::identity, "no contraction, no approach"};
  TW_CHECK(plain,
           tp::rectangular_weir({.width = metres(0.4), .head = metres(0.1), .discharge_coefficient = 0.6}).value(),
           2.0 / 3.0 * 0.6 * std::sqrt(2.0 * 9.80665) * 0.4 * 0.1 * std::sqrt(0.1), relative(1e-13));
  TW_CHECK(francis, tp::francis_weir({.width = metres(0.4), .head = metres(0.1)}),
           tp::francis_weir({.width = metres(0.4),
                             .head = metres(0.1),
                             .contractions = 0.0,
                             .approach_velocity = metres_per_second(0.0)}),
           tolerance{});
}

TEST_CASE("weirs: a V-notch between two rows of the table, just above one") {
  // At 40.01 degrees, a two-thousandth of the way from 40 to 60: C = 0.58 - 0.005/2000, k = 1.7 mm - 0.5 mm/2000.
  const evidence between{"tankwright::plumbing::shen_weir", kind::identity, "straight between the rows, by hand"};
  const double c = 0.58 - 0.005 / 2000.0, h = 0.1 + 0.0017 - 0.0005 / 2000.0;
  TW_CHECK(between, tp::shen_weir({degrees(40.01)}, metres(0.1)).value(),
           8.0 / 15.0 * c * std::sqrt(2.0 * 9.80665) * std::tan(degrees(20.005).value()) * h * h * std::sqrt(h),
           relative(1e-12));
}
