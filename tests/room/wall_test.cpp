// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/wall.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
double u_value(const reference_row& row) {
  if (row.text("want") == "loss") {  // double glazing
    const twr::layered_wall w{
        .layers = {{.thickness = millimetres(row["glass"]), .conductivity = watts_per_metre_kelvin(row["k_glass"])},
                   {.thickness = millimetres(row["gap"]), .conductivity = watts_per_metre_kelvin(row["k_air"])},
                   {.thickness = millimetres(row["glass"]), .conductivity = watts_per_metre_kelvin(row["k_glass"])}},
        .inside = watts_per_square_metre_kelvin(row["hi"]),
        .outside = watts_per_square_metre_kelvin(row["ho"])};
    return twr::transmittance(w).value() * row["area"] * (row["inside"] - row["outside"]);
  }
  const twr::layered_wall sheet{
      .layers = {{.thickness = millimetres(row["mm"]), .conductivity = watts_per_metre_kelvin(row["k"])}},
      .inside = watts_per_square_metre_kelvin(row["hi"]),
      .outside = watts_per_square_metre_kelvin(row["ho"])};
  return twr::transmittance(sheet).value() / 5.678263341;  // Btu/(h ft2 degF)
}
}  // namespace

TEST_CASE("wall: reference table") {
  const auto plywood = [](const reference_row&) { return twr::plywood_conductivity.value(); };
  const auto fibre = [](const reference_row&) { return twr::glass_fibre_conductivity.value(); };
  check_rows(reference_rows("room/wall.csv"), {{"tankwright::room::transmittance", u_value},
                                               {"tankwright::room::plywood_conductivity", plywood},
                                               {"tankwright::room::glass_fibre_conductivity", fibre}});
}

TEST_CASE("wall: a layer split in two is the same wall; insulation helps") {
  const evidence split{"tankwright::room::transmittance", kind::identity, "resistances add"};
  const auto with = [](std::vector<twr::wall_layer> layers) {
    return twr::transmittance({.layers = std::move(layers)}).value();
  };
  const twr::wall_layer ply{.thickness = millimetres(18), .conductivity = twr::plywood_conductivity};
  const twr::wall_layer half{.thickness = millimetres(9), .conductivity = twr::plywood_conductivity};
  TW_CHECK(split, with({half, half}), with({ply}), relative(1e-14));
  TW_CHECK(split, with({}), 1.0 / (1.0 / 200.0 + 1.0 / 8.3), relative(1e-14));
  CHECK(with({ply, {.thickness = millimetres(50), .conductivity = twr::polystyrene_conductivity}}) <
        0.25 * with({ply}));
}

TEST_CASE("wall: a bad layer is named") {
  const auto said = [](twr::wall_layer layer) {
    return message_of([&] { (void)twr::transmittance({.label = "back", .layers = {layer}}); });
  };
  CHECK(said({.label = "ply", .thickness = metres(0.0), .conductivity = twr::plywood_conductivity}) ==
        "tankwright::room::transmittance: back: ply: thickness = 0 m is not possible; expected more than 0 and at most "
        "100 m");
  CHECK(said({.label = "ply", .thickness = millimetres(18), .conductivity = watts_per_metre_kelvin(std::nan(""))})
            .find("back: ply: conductivity = nan") != std::string::npos);
  CHECK(message_of([] {
          (void)twr::transmittance({.label = "back", .layers = {}, .inside = watts_per_square_metre_kelvin(0.0)});
        }).find("back: inside: film coefficient = 0") != std::string::npos);
}
