// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/freezing.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence falls{"tankwright::water::freezing_point", kind::property, "falls with salinity and pressure"};
const evidence rounding{"tankwright::water::freezing_point", kind::identity, "the same formula in long double"};

gauge_pressure dbar(double p) { return gauge_pressure{decibars(p)}; }
}  // namespace

TEST_CASE("freezing: reference table") {
  check_rows(reference_rows("water/freezing.csv"),
             {{"tankwright::water::freezing_point", [](const reference_row& row) {
                 return in_ipts68_celsius(tww::freezing_point(practical_salinity{row["S_P"]}, dbar(row["p"])));
               }}});
}

TEST_CASE("freezing: random salinities against the TEOS-10 toolbox") {
  check_rows(live_rows("water_freezing.csv"),
             {{"tankwright::water::freezing_point", [](const reference_row& row) {
                 return in_celsius(tww::freezing_point(practical_salinity{row["S_P"]}));
               }}});
}

TEST_CASE("freezing: order and rounding") {
  for (double s = 4.0; s <= 40.0; s += 0.5) {
    const temperature here = tww::freezing_point(practical_salinity{s});
    if (s < 39.9) TW_HOLDS(falls, tww::freezing_point(practical_salinity{s + 0.1}) < here);
    TW_HOLDS(falls, tww::freezing_point(practical_salinity{s}, dbar(10.0)) < here);
    const long double oracle = tww::detail::freezing_point_t68<long double>(s, 0.0L) / 1.00024L + 273.15L;
    TW_CHECK(rounding, here, kelvins(static_cast<double>(oracle)), relative(4e-16));
  }
}

TEST_CASE("freezing: edges of the ranges") {
  check_edges(tww::freezing_salinity_limits,
              [](double s, range_policy policy) { return tww::freezing_point(practical_salinity{s}, policy); });
  check_edges(tww::freezing_pressure_limits, [](double p, range_policy policy) {
    return tww::freezing_point(practical_salinity{35.0}, dbar(p), policy);
  });
}

TEST_CASE("freezing: the guard lets liquid water pass and names the freezing point of ice") {
  const auto guard = [](double t, range_policy policy = range_policy::published) {
    tww::detail::check_liquid("tankwright::water::density", 35.0, t, policy);
  };
  CHECK_NOTHROW(guard(0.0));
  CHECK_NOTHROW(guard(-1.92));
  CHECK_NOTHROW(guard(in_celsius(tww::freezing_point(practical_salinity{35.0}))));
  CHECK_NOTHROW(guard(-5.0, extrapolate));
  try {
    guard(-5.0);
    FAIL("ice was accepted");
  } catch (const out_of_range& e) {
    CHECK(std::string{e.what()} ==
          "tankwright::water::density: temperature = -5 degC is below the freezing point, -1.922 degC at practical "
          "salinity 35 (Millero 1978); pass tankwright::extrapolate for supercooled water");
    CHECK(e.details().argument == "temperature");
    CHECK(e.details().low < -1.92);
    CHECK(e.details().value == -5.0);
  }
}
