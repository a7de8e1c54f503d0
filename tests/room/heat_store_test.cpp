// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/heat_store.hpp>

#include "room/samples.hpp"
#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

TEST_CASE("heat store: of water") {
  const evidence product{"tankwright::room::heat_capacity_of", kind::library,
                         "TEOS-10 toolbox 3.6.16: 1023.3436 kg/m3 times 3998.977 J/(kg K) at S 35, 25 degC"};
  TW_CHECK(product, twr::heat_capacity_of(seawater(25.0), cubic_metres(2.0)).value(), 2.0 * 1023.3436 * 3998.977,
           relative(1e-6));
}

TEST_CASE("heat store: of rock and sand, by the volume that they displace") {
  const evidence stone{"tankwright::room::heat_capacity_of_solids", kind::published,
                       "Cardarelli 2018: hard limestone 921 J/(kg K); with 2710 kg/m3 of calcite"};
  const evidence quartz{"tankwright::room::heat_capacity_of_solids", kind::from_memory,
                        "CRC Handbook: quartz 2648 kg/m3 and 742 J/(kg K)"};
  const evidence half{"tankwright::room::heat_capacity_of_solids", kind::property,
                      "about half the heat of the water that is displaced"};
  const estimate<volume> displaced{litres(180.0), litres(200.0), litres(220.0), "tape"};
  const auto c = twr::heat_capacity_of_solids(displaced);
  TW_CHECK(stone, c.high.value(), 0.220 * 2710.0 * 921.0, relative(1e-12));
  TW_CHECK(quartz, c.low.value(), 0.180 * 2648.0 * 742.0, relative(1e-12));
  const double of_water = twr::heat_capacity_of(seawater(25.0), litres(200.0)).value();
  TW_HOLDS(half, c.central.value() > 0.45 * of_water && c.central.value() < 0.6 * of_water);
  CHECK(c.low < c.central);
  CHECK(c.central < c.high);
}

TEST_CASE("heat store: of a sheet, half of it") {
  const evidence plane{"tankwright::room::heat_capacity_of_sheet", kind::identity,
                       "half of density, specific heat and volume: the mean of a straight line"};
  TW_CHECK(plane,
           twr::heat_capacity_of_sheet(
               {.area = square_metres(4.0), .thickness = millimetres(15.0), .heat = twr::heat_of_glass})
               .value(),
           0.5 * 2500.0 * 840.0 * 0.060, relative(1e-12));
}

TEST_CASE("heat store: edges of the ranges") {
  check_edges(twr::water_volume_limits,
              [](double x, range_policy) { return twr::heat_capacity_of(seawater(25.0), cubic_metres(x)); });
  check_edges(twr::solids_volume_limits,
              [](double x, range_policy) { return twr::heat_capacity_of_solids(cubic_metres(x)); });
  const auto sheet = [](double area, double thickness, double heat) {
    return twr::heat_capacity_of_sheet(
        {.area = square_metres(area), .thickness = metres(thickness), .heat = twr::volumetric_heat{heat}});
  };
  check_edges(twr::sheet_area_limits, [&](double x, range_policy) { return sheet(x, 0.01, 2e6); });
  check_edges(twr::sheet_thickness_limits, [&](double x, range_policy) { return sheet(1.0, x, 2e6); });
  check_edges(twr::volumetric_heat_limits, [&](double x, range_policy) { return sheet(1.0, 0.01, x); });
}
