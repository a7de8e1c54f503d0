// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/oxygen.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence rounding{"tankwright::water::oxygen_saturation", kind::identity, "the same formula in long double"};
const evidence falls{"tankwright::water::oxygen_saturation", kind::property, "falls with warmth and salt"};
const evidence product{"tankwright::water::oxygen_saturation_concentration", kind::identity,
                       "content times density and molar mass at one atmosphere"};
const evidence no_air{"tankwright::water::oxygen_saturation_concentration", kind::identity,
                      "none where the water boils"};
const evidence two_defaults{"tankwright::water::oxygen_saturation_concentration", kind::property,
                            "Benson and Krause, 0.003 mg/L"};
const evidence two_forms{"tankwright::water::oxygen_saturation_benson_krause", kind::published,
                         "Benson and Krause 1984: the form in chlorinity, 3.1929e-2 - 19.428/T + 3867.3/T^2"};

// Formulas of their time are on IPTS-68, and so are their check values.
temperature temperature_of(const reference_row& row) {
  return celsius(row.has("t68") ? row["t68"] / 1.00024 : row["t90"]);
}
practical_salinity salinity_of(const reference_row& row) { return practical_salinity{row[row.has("S") ? "S" : "S_P"]}; }

double garcia_gordon(const reference_row& row) {
  const auto content = tww::oxygen_saturation(salinity_of(row), temperature_of(row));
  if (row.unit != "mL(STP)/L") return in_micromoles_per_kilogram(content);
  const auto density = tww::density(salinity_of(row), temperature_of(row));
  return 1e3 * tww::oxygen_molar_volume * in_moles_per_kilogram(content) * in_kilograms_per_cubic_metre(density);
}
double benson_krause(const reference_row& row) {
  const auto p = absolute_pressure(atmospheres(row.has("atm") ? row["atm"] : 1.0));
  return in_milligrams_per_litre(tww::oxygen_saturation_benson_krause(salinity_of(row), temperature_of(row), p));
}
double weiss(const reference_row& row) {
  return 1e3 * tww::oxygen_molar_volume *
         in_moles_per_cubic_metre(tww::oxygen_saturation_weiss(salinity_of(row), temperature_of(row)));
}
}  // namespace

TEST_CASE("oxygen: reference table") {
  check_rows(reference_rows("water/oxygen.csv"), {{"tankwright::water::oxygen_saturation", garcia_gordon},
                                                  {"tankwright::water::oxygen_saturation_benson_krause", benson_krause},
                                                  {"tankwright::water::oxygen_saturation_weiss", weiss}});
}

TEST_CASE("oxygen: random states against the TEOS-10 toolbox") {
  check_rows(live_rows("water_oxygen.csv"), {{"tankwright::water::oxygen_saturation", garcia_gordon}});
}

TEST_CASE("oxygen: rounding, order and the two ways to milligrams per litre") {
  for (double s = 0.0; s <= 40.0; s += 2.5) {
    for (double t = 0.0; t <= 39.5; t += 1.7) {
      const practical_salinity sp{s};
      const auto content = tww::oxygen_saturation(sp, celsius(t));
      const auto oracle = tww::detail::oxygen_garcia_gordon(
          static_cast<long double>(s), 1.00024L * static_cast<long double>(in_celsius(celsius(t))));
      TW_CHECK(rounding, content, micromoles_per_kilogram(static_cast<double>(oracle)), relative(1e-14));
      TW_HOLDS(falls, tww::oxygen_saturation(sp, celsius(t + 0.1)) < content);
      TW_HOLDS(falls, tww::oxygen_saturation(practical_salinity{s + 0.1}, celsius(t)) < content);
      const auto c = tww::oxygen_saturation_concentration(sp, celsius(t));
      TW_CHECK(product, c,
               milligrams_per_litre(31.9988e-3 * in_micromoles_per_kilogram(content) * 1e-3 *
                                    in_kilograms_per_cubic_metre(tww::density(sp, celsius(t)))),
               relative(1e-14));
      TW_CHECK(two_defaults, c, tww::oxygen_saturation_benson_krause(sp, celsius(t)),
               within(milligrams_per_litre(0.003)));
    }
  }
}

TEST_CASE("oxygen: the two printed forms of Benson and Krause agree") {
  for (double s = 5.0; s <= 40.0; s += 5.0) {
    for (double t = 0.0; t <= 40.0; t += 5.0) {
      const double chlorinity = s / 1.80655;
      const double kelvin = 1.00024 * t + 273.15;
      const double loss = chlorinity * (3.1929e-2 - 19.428 / kelvin + 3867.3 / (kelvin * kelvin));
      const auto fresh = tww::oxygen_saturation_benson_krause(practical_salinity{0.0}, celsius(t));
      TW_CHECK(two_forms, tww::oxygen_saturation_benson_krause(practical_salinity{s}, celsius(t)),
               milligrams_per_litre(in_milligrams_per_litre(fresh) * std::exp(-loss)), relative(1e-4));
    }
  }
}

TEST_CASE("oxygen: no water is saltier than brine, whoever extrapolates") {
  for (const double s : {400.1, 2.4e6, -0.1, std::nan("")}) {
    const practical_salinity brine{s};
    const temperature t = celsius(25.0);
    CHECK_THROWS_AS((void)tww::oxygen_saturation(brine, t, extrapolate), invalid_input);
    CHECK_THROWS_AS((void)tww::oxygen_saturation_concentration(brine, t, standard_atmosphere, extrapolate),
                    invalid_input);
    CHECK_THROWS_AS((void)tww::oxygen_saturation_benson_krause(brine, t, standard_atmosphere, extrapolate),
                    invalid_input);
    CHECK_THROWS_AS((void)tww::oxygen_saturation_weiss(brine, t, extrapolate), invalid_input);
  }
  CHECK(std::isfinite(tww::oxygen_saturation(practical_salinity{400.0}, celsius(25.0), extrapolate).value()));
}

TEST_CASE("oxygen: air pressure") {
  const practical_salinity s{35.0};
  const temperature t = celsius(25.0);
  const auto at = [&](pressure p) {
    return tww::oxygen_saturation_concentration(s, t, absolute_pressure(p), extrapolate);
  };
  TW_CHECK(product, at(atmospheres(1.0)), tww::oxygen_saturation_concentration(s, t), tolerance{});
  const pressure boiling = tww::vapour_pressure(s, t);
  TW_CHECK(no_air, at(boiling * (1.0 + 1e-12)), milligrams_per_litre(0.0), within(milligrams_per_litre(1e-9)));
  CHECK_THROWS_AS((void)at(boiling * (1.0 - 1e-9)), invalid_input);
  CHECK(at(kilopascals(95.0)) < at(kilopascals(101.325)));
}

TEST_CASE("oxygen: edges of the ranges") {
  const auto edges = [](auto function, const limits& salinity, const limits& warmth) {
    check_edges(salinity, [function](double s, range_policy policy) {
      return function(practical_salinity{s}, celsius(25.0), policy);
    });
    check_edges(warmth, [function](double t, range_policy policy) {
      return function(practical_salinity{35.0}, celsius(t), policy);
    });
  };
  edges(tww::oxygen_saturation, tww::garcia_gordon_salinity_limits, tww::garcia_gordon_temperature_limits);
  edges(tww::oxygen_saturation_weiss, tww::weiss_salinity_limits, tww::weiss_temperature_limits);
  edges([](practical_salinity s, temperature t,
           range_policy policy) { return tww::oxygen_saturation_benson_krause(s, t, standard_atmosphere, policy); },
        tww::benson_krause_salinity_limits, tww::benson_krause_temperature_limits);
  edges([](practical_salinity s, temperature t,
           range_policy policy) { return tww::oxygen_saturation_concentration(s, t, standard_atmosphere, policy); },
        tww::garcia_gordon_salinity_limits, tww::garcia_gordon_temperature_limits);
  check_edges(tww::oxygen_pressure_limits, [](double p, range_policy policy) {
    return tww::oxygen_saturation_concentration(practical_salinity{35.0}, celsius(25.0), absolute_pressure(pascals(p)),
                                                policy);
  });
  check_edges(tww::oxygen_pressure_limits, [](double p, range_policy policy) {
    return tww::oxygen_saturation_benson_krause(practical_salinity{35.0}, celsius(25.0), absolute_pressure(pascals(p)),
                                                policy);
  });
}
