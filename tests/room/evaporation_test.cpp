// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/evaporation.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;
using twr::evaporation_law;

namespace {
twr::evaporating_water one(const condition& c, twr::wet_surface surface) {
  return {.water = seawater(c.water), .air = air_of(c.air, c.humidity), .surfaces = {std::move(surface)}};
}
double central(const condition& c, twr::wet_surface surface) {
  return twr::evaporation(one(c, std::move(surface))).rate.central.value();
}
}  // namespace

TEST_CASE("evaporation: effectiveness of covers") {
  const auto cover = [](const reference_row& row) {
    const std::string name = row.text("cover");
    if (name == "foam") return twr::foam_cover.effectiveness.value();
    if (name == "track") return twr::track_cover.effectiveness.value();
    if (name == "discs") return twr::floating_discs.effectiveness.value();
    if (name == "monolayer") return twr::liquid_monolayer.effectiveness.value();
    return twr::rigid_lid.effectiveness.value();
  };
  check_rows(reference_rows("room/evaporation.csv"), {{"tankwright::room::cover_material", cover}});
}

TEST_CASE("evaporation: the parts of the estimate are the named correlations") {
  const evidence is_shah{"tankwright::room::evaporation", kind::identity, "central: Shah times area"};
  const evidence ends{"tankwright::room::evaporation", kind::identity,
                      "low and high: VDI 2089, Smith et al. 1994, 0.65 and 1.35 of Shah"};
  for (const condition& c : conditions) {
    const auto e = twr::evaporation(one(c, {.area = square_metres(2.5)}));
    const twr::open_water quiet{
        .water = seawater(c.water), .air = air_of(c.air, c.humidity), .air_speed = metres_per_second(0.1)};
    const auto by = [&](evaporation_law law) { return twr::evaporation_rate(law, quiet).value(); };
    TW_CHECK(is_shah, e.rate.central.value(), 2.5 * by(evaporation_law::shah), relative(1e-14));
    TW_CHECK(ends, e.rate.low.value(),
             2.5 * std::min(by(evaporation_law::vdi_2089_still), 0.65 * by(evaporation_law::shah)), relative(1e-14));
    TW_CHECK(ends, e.rate.high.value(),
             2.5 * std::max(by(evaporation_law::smith_1994), 1.35 * by(evaporation_law::shah)), relative(1e-14));
    CHECK(!e.condenses);
    CHECK(e.rate.reason == twr::still_band);
    TW_CHECK(is_shah, e.surfaces.at(0).per_area.central.value(), by(evaporation_law::shah), relative(1e-14));
  }
}

TEST_CASE("evaporation: a measured quiet pool lies in the band") {
  // 0.098 to 0.269 kg/(m2 h), 76 % of Carrier; the conditions are those of an indoor pool (water 27 to 29 degC).
  const evidence measured{"tankwright::room::evaporation", kind::published,
                          "Smith, Jones and Lof 1993: a quiet indoor pool evaporates 0.76 of Carrier, within 4.5 %"};
  for (const condition c : {condition{28, 28, 50}, condition{28, 26, 55}, condition{29, 27, 50}}) {
    const twr::evaporating_water w{
        .water = seawater(c.water, 0.0), .air = air_of(c.air, c.humidity), .surfaces = {{.area = square_metres(1.0)}}};
    const auto e = twr::evaporation(w);
    const double pool = twr::evaporation_rate(evaporation_law::smith_1993, {.water = w.water, .air = w.air}).value();
    CAPTURE(pool / e.rate.high.value());
    TW_HOLDS(measured, e.rate.low.value() < 0.955 * pool && pool < e.rate.high.value());
  }
}

TEST_CASE("evaporation: covers, agitation, air speed and the sum over surfaces") {
  const evidence arithmetic{"tankwright::room::evaporation", kind::identity,
                            "1 - covered part * effectiveness; factors multiply; surfaces add"};
  const condition c = conditions[0];
  const double open = central(c, {.area = square_metres(2.0)});
  TW_CHECK(arithmetic, central(c, {.area = square_metres(2.0), .covered = percent(80), .cover = twr::foam_cover}),
           open * (1 - 0.8 * 0.959), relative(1e-12));
  TW_CHECK(arithmetic, central(c, {.area = square_metres(2.0), .agitation = twr::gently_moving}), open * 1.3,
           relative(1e-12));
  TW_CHECK(arithmetic, central(c, {.area = square_metres(2.0), .air_speed = metres_per_second(0.5)}),
           open * (30.6 + 32.1 * 0.5) / (30.6 + 3.21), relative(1e-12));
  TW_CHECK(arithmetic, central(c, {.area = square_metres(2.0), .air_speed = metres_per_second(0.0)}), open,
           relative(1e-12));

  auto many = one(c, {.label = "display", .area = square_metres(2.0)});
  many.surfaces.push_back(
      {.label = "sump", .area = square_metres(0.5), .agitation = twr::lively, .covered = percent(50)});
  many.surfaces.push_back({.label = "dry", .area = square_metres(0.0)});
  const auto e = twr::evaporation(many);
  TW_CHECK(arithmetic, e.rate.high.value(), e.surfaces[0].rate.high.value() + e.surfaces[1].rate.high.value(),
           relative(1e-12));
  TW_CHECK(arithmetic, e.rate.low.value(), e.surfaces[0].rate.low.value() + e.surfaces[1].rate.low.value(),
           relative(1e-12));
  CHECK(e.surfaces[1].label == "sump");
  CHECK(e.surfaces[2].rate.high.value() == 0.0);
  CHECK(e.rate.reason == twr::agitated_band);

  const evidence wide{"tankwright::room::evaporation", kind::property,
                      "low <= central <= high; agitation opens the band to half"};
  for (double factor = 1.0; factor <= 3.0; factor += 0.05) {
    const auto r =
        twr::evaporation(
            one(c, {.area = square_metres(1.0), .agitation = twr::agitation{factor}, .covered = percent(30)}))
            .rate;
    TW_HOLDS(wide, r.low <= r.central && r.central <= r.high);
  }
  const auto splash = twr::evaporation(one(c, {.area = square_metres(1.0), .agitation = twr::splashing})).rate;
  TW_HOLDS(wide, splash.high / splash.central >= 1.5 - 1e-9 && splash.low / splash.central <= 0.5 + 1e-9);
}

TEST_CASE("evaporation: condensation is reported") {
  const auto e = twr::evaporation(one({15.0, 30.0, 80.0}, {.area = square_metres(1.0)}));
  CHECK(e.condenses);
  CHECK(e.rate.low < e.rate.central);
  CHECK(e.rate.central < e.rate.high);
  CHECK(e.rate.high.value() < 0.0);
  CHECK(e.rate.reason == twr::condensing_band);
}

TEST_CASE("evaporation: a bad surface is named") {
  const auto said = [](twr::wet_surface s) {
    return message_of([&] { (void)twr::evaporation(one(conditions[0], s)); });
  };
  CHECK(said({.label = "sump", .area = square_metres(-2.0)}) ==
        "tankwright::room::evaporation: sump: area = -2 m2 is not possible; expected 0 to 1000000 m2");
  CHECK(said({.label = "sump", .area = square_metres(2.0), .covered = fraction(1.2)}) ==
        "tankwright::room::evaporation: sump: covered part = 1.2 is not possible; expected 0 to 1");
  CHECK(said({.label = "sump", .area = square_metres(2.0), .covered = fraction(std::nan(""))})
            .ends_with("covered part = nan is not possible; expected 0 to 1"));
  CHECK(said({.label = "weir", .area = square_metres(2.0), .agitation = twr::agitation{0.5}})
            .ends_with("weir: agitation = 0.5 is not possible; expected 1 to 100"));
  CHECK(said({.label = "weir", .area = square_metres(2.0), .agitation = twr::agitation{4.0}})
            .find("outside the published range 1 to 3") != std::string::npos);
  CHECK(said({.label = "fan", .area = square_metres(2.0), .air_speed = metres_per_second(2.0)})
            .find("fan: air speed = 2 m/s is outside") != std::string::npos);
  CHECK(said({.label = "fan", .area = square_metres(2.0), .cover = {"none", fraction(1.1)}})
            .find("effectiveness of the cover") != std::string::npos);
}

TEST_CASE("evaporation: half a millipascal of difference evaporates, half a millipascal the other way condenses") {
  const auto water = seawater(25.0);
  const double at_water =
      water::water_activity(water.salinity).value() * in_pascals(water::vapour_pressure(water.temperature));
  const auto air_with = [&](double difference) {
    const double humidity = (at_water - difference) / in_pascals(twr::saturation_pressure(celsius(30.0)));
    return twr::air{.temperature = celsius(30.0), .humidity = relative_humidity::from_fraction(humidity)};
  };
  const auto of = [&](double difference) {
    return twr::evaporation({.water = water, .air = air_with(difference), .surfaces = {{.area = square_metres(1.0)}}});
  };
  CHECK_FALSE(of(5e-4).condenses);
  CHECK(of(5e-4).rate.central.value() > 0.0);
  CHECK(of(5e-4).rate.reason == twr::still_band);
  CHECK(of(-5e-4).condenses);
  CHECK(of(-5e-4).rate.central.value() < 0.0);
  CHECK(of(-5e-4).rate.reason != twr::still_band);
  const auto by = [&](twr::evaporation_law law, double difference) {
    return twr::evaporation_rate(law, {.water = water, .air = air_with(difference)}, extrapolate);
  };
  CHECK_NOTHROW((void)by(twr::evaporation_law::pauken, 5e-4));
  CHECK_THROWS_AS((void)by(twr::evaporation_law::pauken, -5e-4), out_of_range);
  // Biasin and Krumme's line has an offset: it condenses at a difference of nothing.
  CHECK_THROWS_AS((void)by(twr::evaporation_law::biasin_krumme, 5e-4), out_of_range);
  CHECK_NOTHROW((void)by(twr::evaporation_law::biasin_krumme, -5e-4));
  // It is nothing at 0.059/7.9e-5 Pa: half a gram an hour more is an answer, half a gram less is none.
  const auto half_a_gram = by(twr::evaporation_law::biasin_krumme, 0.0595 / 7.9e-5);
  CHECK(compare(half_a_gram.value(), 5e-4 / 3600.0, relative(1e-6)).good);
  CHECK_THROWS_AS((void)by(twr::evaporation_law::biasin_krumme, 0.0585 / 7.9e-5), out_of_range);
}

TEST_CASE("evaporation: a tight cover over all of it leaves nothing") {
  const auto e = twr::evaporation(
      {.water = seawater(25.0),
       .air = air_of(22.0, 50.0),
       .surfaces = {{.area = square_metres(1.0), .covered = fraction(1.0), .cover = {"tight", fraction(1.0)}}}});
  CHECK(e.rate.low.value() == 0.0);
  CHECK(e.rate.central.value() == 0.0);
  CHECK(e.rate.high.value() == 0.0);
}
