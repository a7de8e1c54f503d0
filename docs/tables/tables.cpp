// SPDX-License-Identifier: BSL-1.0
// The tables of the handbook, written from the library: tables FOLDER. A test holds docs/tables against what this writes,
// and some of its numbers against the printed tables that they can be compared with.
#include <tankwright/plumbing/friction.hpp>
#include <tankwright/plumbing/overflow.hpp>
#include <tankwright/plumbing/pipe_sizes.hpp>
#include <tankwright/room/evaporation.hpp>
#include <tankwright/vessel/panel.hpp>
#include <tankwright/water/ammonia.hpp>
#include <tankwright/water/conductivity.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/hydrometer.hpp>
#include <tankwright/water/oxygen.hpp>
#include <tankwright/water/salt_mix.hpp>
#include <tankwright/water/specific_gravity.hpp>

#include "table.hpp"

namespace {

using namespace tankwright;
using namespace tables;

std::vector<double> steps(double from, double to, double step) {
  std::vector<double> all;
  for (int i = 0; from + i * step <= to + 1e-9; ++i) all.push_back(from + i * step);
  return all;
}

std::vector<std::string> texts(const std::vector<double>& values, int digits) {
  std::vector<std::string> all;
  for (const double v : values) all.push_back(fixed(v, digits));
  return all;
}

const std::vector<double> salinities{0, 5, 10, 15, 20, 25, 28, 30, 31, 32, 33, 34, 35, 36, 37, 38, 40};
const std::vector<double> warmths{10, 15, 18, 20, 22, 24, 25, 26, 28, 30};

/// A number for each salinity (down) and temperature (across).
template <class Of>
grid over_water(int digits, Of of) {
  return filled({{}, "practical salinity", "temperature, °C", texts(salinities, 0), texts(warmths, 0)},
                [&](std::size_t i, std::size_t j) {
                  return fixed(of(practical_salinity{salinities[i]}, celsius(warmths[j])), digits);
                });
}

page density_page() {
  page p{"density", "Density of seawater", "Kilograms per cubic metre, which is grams per litre, at one atmosphere.",
         "TEOS-10 ([theory](../theory/density.md)); natural seawater within 0.01, a synthetic mix within 0.1 kg/m³."};
  p.grids.push_back(over_water(2, [](auto s, auto t) { return water::density(s, t).value(); }));
  return p;
}

page gravity_page() {
  page p{
      "specific-gravity", "Specific gravity and what a hydrometer shows",
      "A specific gravity is the density of a sample over that of fresh water, each at the temperature printed on the "
      "instrument. The first table is for a sample at that temperature; the second is what a glass hydrometer of "
      "60 °F/60 °F shows in water of another temperature, without any correction.",
      "[Theory](../theory/hydrometer.md). A cheap hydrometer may be misplaced by a division or more: try it in fresh "
      "water."};
  const std::vector<water::gravity_scale> scales{water::scale_60f_60f, water::scale_20_20, water::scale_25_25,
                                                 water::scale_20_4, water::scale_25_4};
  p.grids.push_back(filled(
      {"Specific gravity by scale",
       "practical salinity",
       "scale",
       texts(salinities, 0),
       {"60F/60F", "20C/20C", "25C/25C", "20C/4C", "25C/4C"}},
      [&](std::size_t i, std::size_t j) {
        return fixed(water::specific_gravity_from_salinity(practical_salinity{salinities[i]}, scales[j]).value(), 4);
      }));
  grid shown =
      over_water(4, [](auto s, auto t) { return water::hydrometer_reading(s, t, {.scale = water::scale_60f_60f}); });
  shown.heading = "What a 60 °F/60 °F hydrometer shows";
  p.grids.push_back(shown);
  return p;
}

page conductivity_page() {
  page p{"conductivity", "Conductivity of seawater", "Millisiemens per centimetre, at one atmosphere, not compensated.",
         "PSS-78 ([theory](../theory/conductivity.md)), on the scale on which seawater of salinity 35 at 15 °C has "
         "42.914."};
  p.grids.push_back(over_water(2, [](auto s, auto t) {
    return s.value() == 0.0 ? 0.0 : in_millisiemens_per_centimetre(water::conductivity_from_salinity(s, t));
  }));
  return p;
}

page oxygen_page() {
  page p{"oxygen", "Oxygen that water holds", "Milligrams per litre at saturation under moist air of 1013.25 hPa.",
         "Garcia and Gordon 1992 ([theory](../theory/oxygen.md)). A stocked tank stands below saturation before dawn."};
  p.grids.push_back(over_water(
      2, [](auto s, auto t) { return in_milligrams_per_litre(water::oxygen_saturation_concentration(s, t)); }));
  return p;
}

page ammonia_page() {
  page p{"free-ammonia", "The free part of ammonia",
         "Per cent of the total ammonia that is free (NH₃), at practical salinity 35; pH on the total scale.",
         "[Theory](../theory/ammonia.md); known within 5 %, the pH mostly worse. " +
             std::string{water::ammonia_caution.text}};
  const auto ph = steps(7.6, 8.6, 0.1);
  p.grids.push_back(
      filled({{}, "pH", "temperature, °C", texts(ph, 1), texts(warmths, 0)}, [&](std::size_t i, std::size_t j) {
        return fixed(
            100.0 * water::free_ammonia_fraction(water::ph_total{ph[i]}, practical_salinity{35.0}, celsius(warmths[j]))
                        .central.value(),
            2);
      }));
  return p;
}

page mix_page() {
  page p{
      "salt-mix", "Salt mix for finished seawater",
      "What to weigh out so that the seawater comes to this volume at 25 °C. The yield is the part of the mix that is "
      "salt: a trial batch tells it; 0.85 to 1 where nobody has.",
      "Balance of mass ([theory](../theory/salt_mix.md)). Spread the mix slowly into moving water, never the other way "
      "round; "
      "read the label."};
  const std::vector<double> target{15, 20, 25, 28, 30, 31, 32, 33, 34, 35, 36, 37},
      yield{0.80, 0.85, 0.88, 0.90, 0.92, 0.95, 1.0};
  const auto grid_of = [&](const char* heading, volume v, double per) {
    p.grids.push_back(filled({heading, "practical salinity to reach", "yield", texts(target, 0), texts(yield, 2)},
                             [&](std::size_t i, std::size_t j) {
                               const auto batch =
                                   water::salt_for_finished_volume({.volume = v,
                                                                    .target = practical_salinity{target[i]},
                                                                    .temperature = celsius(25.0),
                                                                    .mix_yield = fraction(yield[j])});
                               return fixed(in_kilograms(batch.mix) / per, 2);
                             }));
  };
  grid_of("Kilograms for 100 L", litres(100.0), 1.0);
  grid_of("Pounds for 100 US gallons", us_gallons(100.0), in_kilograms(pounds(1.0)));
  return p;
}

page friction_page() {
  page p{"head-loss", "Head lost in straight pipe",
         "Seawater of salinity 35 at 25 °C in smooth plastic. A dash: slower than 0.1 m/s or faster than 3 m/s. "
         "Fittings, valves and "
         "the lift come on top.",
         "Darcy and Weisbach with Colebrook and White ([theory](../theory/friction.md)). Metric bores: EN ISO 1452-2, "
         "from memory; inch "
         "bores: average of ASTM D1785. Measure the bore of what you bought."};
  const water::liquid sea = water::seawater(practical_salinity{35.0}, celsius(25.0));
  const auto cell = [&](plumbing::pipe_bore bore, length run, flow_rate flow, int digits) -> std::string {
    const double v = plumbing::mean_velocity(flow, bore).value();
    if (v < 0.1 || v > 3.0) return {};
    const double lost = plumbing::head_loss({.bore = bore, .length = run}, flow, sea).value();
    return fixed(lost / run.value() * 10.0, digits);
  };
  const std::vector<double> dn{25, 32, 40, 50, 63, 75, 90, 110};
  const std::vector<double> flows{500,  1000,  1500,  2000,  3000,  4000,  5000, 6000,
                                  8000, 10000, 12000, 15000, 20000, 25000, 30000};
  p.grids.push_back(
      filled({"Metres for 10 m of metric pipe, PN16", "flow, L/h", "nominal size, mm", texts(flows, 0), texts(dn, 0)},
             [&](std::size_t i, std::size_t j) {
               const auto size = plumbing::metric_size::from_millimetres(dn[j]);
               return cell(plumbing::metric_pvc_pipe(size, plumbing::pressure_class::pn16).bore, metres(10.0),
                           litres_per_hour(flows[i]), 3);
             }));
  const std::vector<double> inches{0.75, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0};
  const std::vector<double> gph{100, 200, 300, 400, 600, 800, 1000, 1500, 2000, 2500, 3000, 4000, 5000, 6000, 8000};
  p.grids.push_back(filled({"Feet for 10 ft of schedule 40 pipe",
                            "flow, US gal/h",
                            "nominal size, in",
                            texts(gph, 0),
                            {"3/4", "1", "1 1/4", "1 1/2", "2", "2 1/2", "3", "4"}},
                           [&](std::size_t i, std::size_t j) {
                             const auto size = plumbing::nominal_size::from_inches(inches[j]);
                             return cell(plumbing::pvc_pipe(size, plumbing::pvc_schedule::schedule_40).average_bore,
                                         feet(10.0), us_gallons_per_hour(gph[i]), 3);
                           }));
  return p;
}

page weir_page() {
  page p{"weir-head", "Water over an overflow edge",
         "Millimetres of still water over a straight sharp edge that runs the whole width, its crest 0.6 m above the "
         "floor.",
         "Rehbock 1929 ([theory](../theory/overflow.md)): 3 % from 60 mm up, 10 % of the flow below 30 mm, where "
         "surface tension "
         "and the form of the edge count. A comb passes less."};
  const std::vector<double> flows{1000, 2000, 3000, 4000, 5000, 6000, 8000, 10000, 12000, 15000, 20000, 25000, 30000};
  const std::vector<double> widths{0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1.0, 1.2, 1.5, 2.0};
  p.grids.push_back(filled(
      {{}, "flow, L/h", "width of the edge, m", texts(flows, 0), texts(widths, 1)}, [&](std::size_t i, std::size_t j) {
        const plumbing::full_width_edge edge{.width = metres(widths[j]), .crest_height = metres(0.6)};
        return fixed(in_millimetres(plumbing::head_over(edge, litres_per_hour(flows[i])).head.central), 1);
      }));
  return p;
}

page evaporation_page() {
  page p{"evaporation", "Evaporation from open water",
         "Litres a day from one square metre of still seawater of salinity 35, uncovered, in a quiet room of 22 °C. "
         "A dash: the room's vapour condenses on the water.",
         "Shah 2014 and others ([theory](../theory/evaporation.md)): known within about a third for still water and "
         "within a half "
         "where it moves; moving water loses 1.3 to 2 times as much. A reservoir read for a week tells it without the "
         "band."};
  const auto humidity = steps(30, 80, 5);
  const std::vector<double> t{20, 22, 24, 25, 26, 27, 28, 30};
  p.grids.push_back(
      filled({{}, "relative humidity of the room, %", "temperature of the water, °C", texts(humidity, 0), texts(t, 0)},
             [&](std::size_t i, std::size_t j) {
               const auto e = room::evaporation(
                   {.water = {.temperature = celsius(t[j]), .salinity = practical_salinity{35.0}},
                    .air = {.temperature = celsius(22.0), .humidity = relative_humidity::from_percent(humidity[i])},
                    .surfaces = {{.area = square_metres(1.0)}}});
               if (e.condenses) return std::string{};
               const mass_density fresh = water::density(practical_salinity{0.0}, celsius(22.0));
               return fixed(in_litres_per_day(e.rate.central / fresh), 1);
             }));
  return p;
}

page panel_page() {
  page p{"panels", "Screening of panels: thickness that uses the whole allowable stress",
         "Millimetres at which the stress would be all that is allowed, for water of 1025 kg/m³ up to the panel's top "
         "edge, the panel "
         "supported along all four edges. This is where a panel stops being sane, not what to buy: keep a good part of "
         "the stress "
         "unused, and count with the least thickness of the glass as sold (19 mm glass may be 18 mm).",
         std::string{vessel::panel_caution.text} + " [Theory](../theory/panel.md)."};
  const std::vector<double> heights{0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.2},
      lengths{0.6, 0.8, 1.0, 1.2, 1.5, 2.0, 2.5, 3.0};
  const auto grid_of = [&](const char* heading, const vessel::panel_material& material) {
    p.grids.push_back(filled(
        {heading, "height of the panel, m", "length of the panel, m", texts(heights, 1), texts(lengths, 1)},
        [&](std::size_t i, std::size_t j) {
          const auto r =
              vessel::water_on({.width = metres(lengths[j]),
                                .height = metres(heights[i]),
                                .thickness = millimetres(19.0),
                                .edges = vessel::panel_edges::all_supported,
                                .material = material},
                               {.level = metres(heights[i]), .water_density = kilograms_per_cubic_metre(1025.0)});
          return fixed(in_millimetres(r.thickness_needed), 1);
        }));
  };
  grid_of("Annealed glass", vessel::annealed_glass);
  grid_of("Cast acrylic, by stress alone", vessel::cast_acrylic);
  return p;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) {
    std::fputs("usage: tables FOLDER   writes the pages and the data of all tables into it\n", stderr);
    return 2;
  }
  try {
    const std::filesystem::path folder{argv[1]};
    std::string contents =
        "# Tables\n\nNumbers to look up, written by `docs/tables/tables.cpp` from the library. Each page prints on one "
        "sheet and has "
        "its data beside it. For anything between or beyond, ask the library.\n\n";
    for (const page& p : {density_page(), gravity_page(), conductivity_page(), oxygen_page(), ammonia_page(),
                          mix_page(), friction_page(), weir_page(), evaporation_page(), panel_page()}) {
      save(folder / (p.file + ".md"), as_markdown(p));
      save(folder / (p.file + ".csv"), as_csv(p));
      contents += "* [" + p.title + "](" + p.file + ".md)\n";
    }
    save(folder / "README.md", contents);
  } catch (const std::exception& mistake) {
    std::fprintf(stderr, "tables: %s\n", mistake.what());
    return 1;
  }
}
