// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/ammonium_pka.hpp>

#include <cmath>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
evidence rounding(const char* function) { return {function, kind::identity, "the same formula in long double"}; }
const evidence fresh_limit{"tankwright::water::ammonium_pka_khoo", kind::published,
                           "Khoo et al. 1977, abstract: the difference to fresh water"};
const evidence bell_step{"tankwright::water::ammonium_pka_bell", kind::identity, "0.003071 for each step of salinity"};
const evidence scales{"tankwright::water::ammonium_pka_total", kind::property,
                      "the distance of the scales by the bisulphate constant of Dickson 1990"};
const evidence bell_close{"tankwright::water::ammonium_pka_bell", kind::property, "within 0.04 of Clegg and Whitfield"};
const evidence khoo_close{"tankwright::water::ammonium_pka_khoo", kind::property, "within 0.04 of Clegg and Whitfield"};
const evidence falls{"tankwright::water::ammonium_pka_free", kind::property, "falls with warmth"};

/// pH_free - pH_total = log10(1 + S_T / K_S): bisulphate by Dickson 1990, J. Chem. Thermodyn. 22:113 (from memory).
double distance_of_scales(double s, double kelvin) {
  const double i = 19.924 * s / (1000.0 - 1.005 * s);
  const double ln_k = -4276.1 / kelvin + 141.328 - 23.093 * std::log(kelvin) +
                      (-13856.0 / kelvin + 324.57 - 47.986 * std::log(kelvin)) * std::sqrt(i) +
                      (35474.0 / kelvin - 771.54 + 114.723 * std::log(kelvin)) * i -
                      2698.0 / kelvin * std::pow(i, 1.5) + 1776.0 / kelvin * i * i + std::log(1.0 - 0.001005 * s);
  const double sulphate = 0.1400 / 96.062 * s / 1.80655;
  return std::log10(1.0 + sulphate / std::exp(ln_k));
}

template <class Function>
row_handler pka(Function function) {
  return [function](const reference_row& row) {
    return function(practical_salinity{row["S"]}, celsius(row["t"]), range_policy::published).value();
  };
}
}  // namespace

TEST_CASE("ammonium pKa: reference table") {
  check_rows(reference_rows("water/ammonium_pka.csv"),
             {{"tankwright::water::ammonium_pka_total", pka(tww::ammonium_pka_total)},
              {"tankwright::water::ammonium_pka_free", pka(tww::ammonium_pka_free)},
              {"tankwright::water::ammonium_pka_bell", pka(tww::ammonium_pka_bell)},
              {"tankwright::water::ammonium_pka_khoo", pka(tww::ammonium_pka_khoo)}});
}

TEST_CASE("ammonium pKa: rounding, order and the distance between formulas") {
  for (double s = 0.0; s <= 40.0; s += 2.0) {
    for (double t = -2.0; t <= 39.5; t += 1.5) {
      const practical_salinity sp{s};
      const auto free = tww::ammonium_pka_free(sp, celsius(t));
      const auto total = tww::ammonium_pka_total(sp, celsius(t));
      const auto kelvin = static_cast<long double>(in_kelvins(celsius(t)));
      TW_CHECK(rounding("tankwright::water::ammonium_pka_free"), free.value(),
               static_cast<double>(tww::detail::ammonium_pka_free(static_cast<long double>(s), kelvin)),
               relative(1e-14));
      TW_CHECK(rounding("tankwright::water::ammonium_pka_total"), total.value(),
               static_cast<double>(tww::detail::ammonium_pka_total(static_cast<long double>(s), kelvin)),
               relative(1e-14));
      TW_HOLDS(falls, tww::ammonium_pka_free(sp, celsius(t + 0.1)) < free);
      if (s > 0.0 && t >= 15.0 && t <= 30.0) {
        TW_CHECK(scales, free.value() - total.value(), distance_of_scales(s, in_kelvins(celsius(t))),
                 tolerance{.absolute = 0.01});
      }
      if (s >= 30.0 && t >= 15.0 && t <= 30.0) {
        TW_CHECK(bell_close, tww::ammonium_pka_bell(sp, celsius(t)), free, tolerance{.absolute = 0.04});
        TW_CHECK(khoo_close, tww::ammonium_pka_khoo(sp, celsius(t)), free, tolerance{.absolute = 0.04});
      }
    }
  }
  // At S 35 the ionic strength is 0.7229 mol/kg.
  for (double t = 5.0; t <= 40.0; t += 5.0) {
    const double fresh = 0.09018 + 2729.92 / in_kelvins(celsius(t));
    TW_CHECK(fresh_limit, tww::ammonium_pka_khoo(practical_salinity{0.0}, celsius(t)).value(), fresh, relative(1e-15));
    TW_CHECK(fresh_limit, tww::ammonium_pka_khoo(practical_salinity{35.0}, celsius(t)).value() - fresh,
             (0.1552 - 0.0003142 * t) * 0.7229, tolerance{.absolute = 1e-5});
  }
  TW_CHECK(bell_step,
           tww::ammonium_pka_bell(practical_salinity{35.0}, celsius(25.0)).value() -
               tww::ammonium_pka_bell(practical_salinity{30.0}, celsius(25.0)).value(),
           5.0 * 0.003071, tolerance{.absolute = 1e-14});
}

TEST_CASE("ammonium pKa: edges of the ranges") {
  const auto edges = [](auto function) {
    check_edges(tww::ammonia_salinity_limits, [function](double s, range_policy policy) {
      return function(practical_salinity{s}, celsius(25.0), policy);
    });
    check_edges(tww::ammonia_temperature_limits, [function](double t, range_policy policy) {
      return function(practical_salinity{35.0}, celsius(t), policy);
    });
  };
  edges(tww::ammonium_pka_total);
  edges(tww::ammonium_pka_free);
  edges(tww::ammonium_pka_bell);
  edges(tww::ammonium_pka_khoo);
}
