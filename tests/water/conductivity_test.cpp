// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/conductivity.hpp>

#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence there_and_back{"tankwright::water::conductivity_from_salinity", kind::property,
                              "there and back over the whole range"};
const evidence grows{"tankwright::water::conductivity_from_salinity", kind::property,
                     "grows with salinity and with temperature"};
const evidence continuous{"tankwright::water::salinity_from_conductivity", kind::property,
                          "continuous where the extension meets the scale"};
const evidence pure{"tankwright::water::salinity_from_conductivity", kind::property, "never negative"};
const evidence rounding{"tankwright::water::salinity_from_conductivity", kind::identity,
                        "the same formula in long double"};
const evidence batch_salinity{"tankwright::water::salinity_from_conductivity", kind::property, "batch equals scalar"};
const evidence batch_conductivity{"tankwright::water::conductivity_from_salinity", kind::property,
                                  "batch equals scalar"};

gauge_pressure dbar(double p) { return gauge_pressure{decibars(p)}; }

temperature temperature_of(const reference_row& row) {
  return row.has("t68") ? ipts68_celsius(row["t68"]) : celsius(row["t90"]);
}
gauge_pressure pressure_of(const reference_row& row) { return dbar(row.has("p") ? row["p"] : 0.0); }

// The printed tables go past the scale's 35 degC.
double ratio_of(const reference_row& row) {
  return tww::conductivity_ratio_from_salinity(practical_salinity{row["S_P"]}, temperature_of(row), pressure_of(row),
                                               extrapolate)
      .value();
}
double salinity_from_ratio(const reference_row& row) {
  const practical_salinity s =
      tww::salinity_from_conductivity_ratio(tww::conductivity_ratio{row["R"]}, temperature_of(row), pressure_of(row));
  if (row.text("want") != "Rp") return s.value();
  return row["R"] / tww::conductivity_ratio_from_salinity(s, temperature_of(row), dbar(0.0)).value();
}
double conductivity_of(const reference_row& row) {
  return in_millisiemens_per_centimetre(
      tww::conductivity_from_salinity(practical_salinity{row["S_P"]}, temperature_of(row), pressure_of(row)));
}
// The extension below salinity 2 before it is rescaled.
double raw_hill(const reference_row& row) {
  const double t68 = in_ipts68_celsius(temperature_of(row));
  return tww::detail::hill_salinity(std::sqrt(row["C"] / (42.914 * tww::detail::pss78_rt(t68))),
                                    tww::detail::pss78_f(t68));
}
double salinity_of(const reference_row& row) {
  if (row.has("raw")) return raw_hill(row);
  return tww::salinity_from_conductivity(millisiemens_per_centimetre(row["C"]), temperature_of(row), pressure_of(row))
      .value();
}
struct states {
  std::vector<practical_salinity> s;
  std::vector<temperature> t;
  states() {
    for (const double sp : {0.0001, 0.001, 0.01, 0.1,  0.5,  1.0,  1.9,  1.999999, 2.0,  2.000001, 2.5,   5.0,
                            10.0,   15.0,  20.0, 25.0, 30.0, 33.0, 35.0, 37.0,     40.0, 41.0,     41.95, 42.0}) {
      for (double tc = -2.0; tc <= 35.0; tc += 1.85) {
        s.emplace_back(sp);
        t.push_back(celsius(tc));
      }
    }
  }
};
}  // namespace

TEST_CASE("conductivity: reference table") {
  check_rows(reference_rows("water/conductivity.csv"),
             {{"tankwright::water::salinity_from_conductivity_ratio", salinity_from_ratio},
              {"tankwright::water::conductivity_ratio_from_salinity", ratio_of},
              {"tankwright::water::salinity_from_conductivity", salinity_of},
              {"tankwright::water::conductivity_from_salinity", conductivity_of}});
}

TEST_CASE("conductivity: random states against the TEOS-10 toolbox") {
  check_rows(live_rows("water_conductivity.csv"), {{"tankwright::water::salinity_from_conductivity", salinity_of},
                                                   {"tankwright::water::conductivity_from_salinity", conductivity_of}});
}

TEST_CASE("conductivity: there and back, order and rounding over the whole range") {
  const states in;
  for (std::size_t i = 0; i < in.s.size(); ++i) {
    for (const double p : {0.0, 1.0, 2500.0, 10000.0}) {
      const auto c = tww::conductivity_from_salinity(in.s[i], in.t[i], dbar(p), extrapolate);
      TW_CHECK(there_and_back, tww::salinity_from_conductivity(c, in.t[i], dbar(p), extrapolate), in.s[i],
               relative(1e-12));
    }
    const auto c = tww::conductivity_from_salinity(in.s[i], in.t[i], extrapolate);
    const practical_salinity more{in.s[i].value() * 1.00001};
    TW_HOLDS(grows, tww::conductivity_from_salinity(more, in.t[i], extrapolate) > c);
    TW_HOLDS(grows, tww::conductivity_from_salinity(in.s[i], in.t[i] + kelvin_steps(0.01), extrapolate) > c);

    const long double t68 = 1.00024L * (static_cast<long double>(in.t[i].value()) - 273.15L);
    const long double rt_ratio = static_cast<long double>(c.value()) / (4.2914L * tww::detail::pss78_rt(t68));
    const long double oracle = tww::detail::salinity_from_rt_ratio(rt_ratio, t68);
    TW_CHECK(rounding, tww::salinity_from_conductivity(c, in.t[i], extrapolate).value(), static_cast<double>(oracle),
             (tolerance{.absolute = 1e-17, .relative = 4e-15}));
  }
}

TEST_CASE("conductivity: the extension below salinity 2 meets the scale for every temperature") {
  for (double tc = -2.0; tc <= 35.0; tc += 0.5) {
    const temperature t = celsius(tc);
    const auto at_2 = tww::conductivity_from_salinity(practical_salinity{2.0}, t, extrapolate);
    for (const double step : {-1e-9, -1e-12, 0.0, 1e-12, 1e-9}) {
      const auto s = tww::salinity_from_conductivity(at_2 * (1.0 + step), t, extrapolate);
      TW_CHECK(continuous, s, practical_salinity{2.0}, tolerance{.absolute = 3.0 * std::fabs(step) + 4e-15});
    }
  }
}

TEST_CASE("conductivity: pure water reads zero, not less") {
  double last = 0.0;
  for (double c = 0.0; c < 0.01; c += 1e-5) {
    const double s = tww::salinity_from_conductivity(millisiemens_per_centimetre(c), celsius(25.0)).value();
    TW_HOLDS(pure, s >= last);
    last = s;
  }
  CHECK(tww::salinity_from_conductivity(millisiemens_per_centimetre(0.001), celsius(25.0)).value() == 0.0);
  const auto lowest = tww::conductivity_from_salinity(practical_salinity{0.0}, celsius(25.0));
  TW_CHECK(pure, tww::salinity_from_conductivity(lowest, celsius(25.0)).value(), 0.0, tolerance{.absolute = 1e-17});
}

TEST_CASE("conductivity: batches equal the scalar functions, salt and fresh, in any mixture") {
  const states in;
  std::vector<electrical_conductivity> c(in.s.size());
  tww::conductivity_from_salinity(in.s, in.t, c, extrapolate);
  std::vector<practical_salinity> s(in.s.size(), practical_salinity{0.0});
  tww::salinity_from_conductivity(c, in.t, s, extrapolate);
  for (std::size_t i = 0; i < in.s.size(); ++i) {
    TW_CHECK(batch_conductivity, c[i], tww::conductivity_from_salinity(in.s[i], in.t[i], extrapolate), relative(2e-15));
    TW_CHECK(batch_salinity, s[i], tww::salinity_from_conductivity(c[i], in.t[i], extrapolate),
             (tolerance{.absolute = 1e-17, .relative = 4e-15}));
  }
  const std::vector<practical_salinity> brine{practical_salinity{60.0}, practical_salinity{120.0}};
  const std::vector<temperature> warm(2, celsius(25.0));
  std::vector<electrical_conductivity> strong(2);
  tww::conductivity_from_salinity(brine, warm, strong, extrapolate);
  TW_CHECK(batch_conductivity, strong[1], tww::conductivity_from_salinity(brine[1], warm[1], extrapolate),
           relative(2e-15));
}

TEST_CASE("conductivity: a bad element of a batch throws before anything is written") {
  const std::vector<temperature> t(2, celsius(25.0));
  std::vector<practical_salinity> s(2, practical_salinity{-1.0});
  const std::vector<electrical_conductivity> too_salty{millisiemens_per_centimetre(53.0),
                                                       millisiemens_per_centimetre(70.0)};
  CHECK_THROWS_AS(tww::salinity_from_conductivity(too_salty, t, s), out_of_range);
  CHECK(s[0] == practical_salinity{-1.0});
  tww::salinity_from_conductivity(too_salty, t, s, extrapolate);
  CHECK(s[1].value() > 42.0);
  CHECK_THROWS_AS(tww::salinity_from_conductivity(too_salty, std::vector{celsius(25.0)}, s), invalid_input);

  std::vector<electrical_conductivity> c(2, siemens_per_metre(-1.0));
  const std::vector<practical_salinity> too_much{practical_salinity{35.0}, practical_salinity{42.1}};
  CHECK_THROWS_AS(tww::conductivity_from_salinity(too_much, t, c), out_of_range);
  const std::vector<practical_salinity> fine(2, practical_salinity{35.0});
  CHECK_THROWS_AS(tww::conductivity_from_salinity(fine, std::vector{celsius(25.0), celsius(-2.0)}, c), out_of_range);
  CHECK(c[0] == siemens_per_metre(-1.0));
}

TEST_CASE("conductivity: the end of the scale is accepted, and what lies past it is named in the caller's terms") {
  const temperature t = celsius(25.0);
  const auto end = tww::conductivity_from_salinity(practical_salinity{42.0}, t);
  const std::vector<electrical_conductivity> c{end * (1.0 - 1e-12)};
  std::vector<practical_salinity> s(1, practical_salinity{0.0});
  CHECK_NOTHROW(tww::salinity_from_conductivity(c, std::vector{t}, s));
  try {
    (void)tww::salinity_from_conductivity(millisiemens_per_centimetre(70.0), t);
    FAIL("a conductivity past the scale was accepted");
  } catch (const out_of_range& e) {
    CHECK(std::string{e.what()} ==
          "tankwright::water::salinity_from_conductivity: conductivity = 70 mS/cm means practical salinity 47.92, past "
          "the end of the scale, 42; pass tankwright::extrapolate to go past it");
  }
}

TEST_CASE("conductivity: edges of the ranges") {
  const temperature t = celsius(25.0);
  check_edges(tww::conductivity_limits, [&](double c, range_policy) {
    return tww::salinity_from_conductivity(millisiemens_per_centimetre(c), t, extrapolate);
  });
  check_edges(tww::conductivity_ratio_limits, [&](double r, range_policy) {
    return tww::salinity_from_conductivity_ratio(tww::conductivity_ratio{r}, t, dbar(0.0), extrapolate);
  });
  check_edges(tww::practical_salinity_limits, [&](double s, range_policy policy) {
    return tww::conductivity_from_salinity(practical_salinity{s}, t, policy);
  });
  check_edges(tww::practical_salinity_limits, [&](double s, range_policy policy) {
    return tww::conductivity_ratio_from_salinity(practical_salinity{s}, t, dbar(0.0), policy);
  });
  check_edges(tww::pss78_temperature_limits, [](double tc, range_policy policy) {
    return tww::conductivity_from_salinity(practical_salinity{40.0}, celsius(tc), policy);
  });
  check_edges(tww::pss78_temperature_limits, [](double tc, range_policy policy) {
    return tww::salinity_from_conductivity(millisiemens_per_centimetre(tc < 0.0 ? 31.0 : 40.0), celsius(tc), policy);
  });
  check_edges(tww::pss78_pressure_limits, [](double p, range_policy policy) {
    return tww::conductivity_from_salinity(practical_salinity{35.0}, celsius(20.0), dbar(p), policy);
  });
  CHECK_THROWS_AS((void)tww::salinity_from_conductivity(millisiemens_per_centimetre(25.0), celsius(-2.0)),
                  out_of_range);
}
