// SPDX-License-Identifier: BSL-1.0
// The printed formulas of evaporation and of machines, written a second time, at random states and to rounding.
#include <cmath>
#include <functional>
#include <random>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;
using twr::evaporation_law;

namespace {

/// Water and air with everything that the formulas ask for, in the units that they are printed in.
struct state {
  double water, air, humidity, salinity, speed;  // degC, degC, %, 1, m/s
  double p_w, p_a;                               // Pa
  double total;                                  // Pa
  double y;                                      // kJ/kg

  [[nodiscard]] double kpa() const { return (p_w - p_a) * 1e-3; }
  [[nodiscard]] static double dry(double t, double p, double total) { return (total - p) / (287.042 * (t + 273.15)); }
  [[nodiscard]] double ratio(double p) const { return 0.621945 * p / (total - p); }
  [[nodiscard]] twr::open_water open() const {
    return {.water = seawater(water, salinity),
            .air = {.temperature = celsius(air),
                    .humidity = relative_humidity::from_percent(humidity),
                    .pressure = absolute_pressure{pascals(total)}},
            .air_speed = metres_per_second(speed)};
  }
};

state state_of(double water, double air, double humidity, double salinity, double speed, double total) {
  return {water,
          air,
          humidity,
          salinity,
          speed,
          raw(water::water_activity(practical_salinity{salinity})) * in_pascals(water::vapour_pressure(celsius(water))),
          humidity / 100.0 * in_pascals(twr::saturation_pressure(celsius(air))),
          total,
          in_joules_per_kilogram(water::latent_heat_of_water(celsius(water))) * 1e-3};
}

std::vector<state> states() {
  std::mt19937 random{2089};
  const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  std::vector<state> all;
  for (int i = 0; i < 12; ++i) {
    all.push_back(state_of(between(24.0, 32.0), between(8.0, 23.0), between(30.0, 90.0), between(0.0, 40.0),
                           i % 3 == 0 ? 0.0 : between(0.1, 2.0), between(8e4, 1.03e5)));
  }
  return all;
}

double shah(const state& s) {
  const double rho_w = state::dry(s.water, s.p_w, s.total), rho_r = state::dry(s.air, s.p_a, s.total);
  const double floor = 0.00005 * (s.p_w - s.p_a);
  if (rho_r <= rho_w) return floor;
  const double natural = 35.0 * rho_w * std::cbrt(rho_r - rho_w) * (s.ratio(s.p_w) - s.ratio(s.p_a));
  return std::fabs(natural) > std::fabs(floor) ? natural : floor;
}
double vdi(const state& s, double metres_per_hour) {
  return metres_per_hour * (s.p_w - s.p_a) / (461.52 * (0.5 * (s.water + s.air) + 273.15));
}
double smith_1994(const state& s, double v) {
  return (30.6 + 32.1 * v) * (s.p_w - s.p_a) / 133.322387415 / s.y;  // mmHg
}
double analogy(const state& s) {
  const auto moist = [&](double t, double p) {  // dry air and vapour, each by its own gas constant
    return (s.total - p) / (287.042 * (t + 273.15)) + p / (287.042 / 0.621945 * (t + 273.15));
  };
  const double film = 0.5 * (s.water + s.air) + 273.15;
  const double d = 1.87e-10 * std::pow(film, 2.072) / (s.total / 101325.0);
  const double mu = 1.716e-5 * std::pow(film / 273.15, 1.5) * (273.15 + 110.4) / (film + 110.4);
  const auto vapour = [&](double t, double p) { return p / (287.042 / 0.621945 * (t + 273.15)); };
  return 3600.0 * 0.15 * d * std::cbrt(9.80665 * (moist(s.air, s.p_a) - moist(s.water, s.p_w)) / (mu * d)) *
         (vapour(s.water, s.p_w) - vapour(s.air, s.p_a));
}

/// The capacity curve of the example machine of EnergyPlus 9.5 over its value at 26.7 degC and 60 %.
double capacity(double t, double h) {
  const auto f = [](double c, double p) {
    return -2.724878664080 + 0.100711983591 * c - 0.000990538285 * c * c + 0.050053043874 * p - 0.000203629282 * p * p -
           0.000341750531 * c * p;
  };
  return f(t, 100.0 * h) / f(26.7, 60.0);
}
double efficiency(double t, double h) {
  const auto f = [](double c, double p) {
    return -2.388319068955 + 0.093047739452 * c - 0.001369700327 * c * c + 0.066533716758 * p - 0.000343198063 * p * p -
           0.000562490295 * c * p;
  };
  return f(t, 100.0 * h) / f(26.7, 60.0);
}
/// A straight line from 0 at `none` to 1 at `all`, and no further.
double line(double x, double none, double all) {
  const double part = (x - none) / (all - none);
  return part < 0.0 ? 0.0 : part > 1.0 ? 1.0 : part;
}

}  // namespace

TEST_CASE("formulas: all laws of evaporation at random states") {
  const std::string source = "the formulas as printed, second transcription";
  const evidence again{"tankwright::room::evaporation_rate", kind::published, source};
  const std::vector<std::pair<evaporation_law, std::function<double(const state&)>>> laws{
      {evaporation_law::shah, shah},
      {evaporation_law::ashrae_quiet, [](const state& s) { return 3600.0 * 4.0e-5 * s.kpa() * 0.5; }},
      {evaporation_law::ashrae_in_use, [](const state& s) { return 3600.0 * 4.0e-5 * s.kpa(); }},
      {evaporation_law::carrier,
       [](const state& s) { return 3600.0 * (0.089 + 0.0782 * s.speed) * s.kpa() * 1e3 / (s.y * 1e3); }},
      {evaporation_law::smith_1993, [](const state& s) { return 3600.0 * 0.76 * 0.089 * s.kpa() / s.y; }},
      {evaporation_law::smith_1994, [](const state& s) { return smith_1994(s, s.speed); }},
      {evaporation_law::smith_1998, [](const state& s) { return 3600.0 * 0.74 * 0.089 * s.kpa() / s.y; }},
      {evaporation_law::vdi_2089_still, [](const state& s) { return vdi(s, 7.0); }},
      {evaporation_law::vdi_2089_covered, [](const state& s) { return vdi(s, 0.7); }},
      {evaporation_law::vdi_2089_private, [](const state& s) { return vdi(s, 21.0); }},
      {evaporation_law::vdi_1994, [](const state& s) { return 5e-3 * (s.p_w - s.p_a) / 100.0; }},
      {evaporation_law::humidity_ratio_25_19,
       [](const state& s) { return (25.0 + 19.0 * s.speed) * (s.ratio(s.p_w) - s.ratio(s.p_a)); }},
      {evaporation_law::rafferty,
       [](const state& s) {
         const double psi = s.kpa() / 6.894757293168361, fahrenheit = 1.8 * s.water + 32.0, feet = s.speed / 0.3048;
         const double pounds = (1.0 + 0.225 * feet) / 0.018 * psi * 144.0 / (85.74 * (fahrenheit + 460.0));
         return pounds * 0.45359237 / (0.3048 * 0.3048);
       }},
      {evaporation_law::pauken,
       [](const state& s) {
         const double v = s.speed, a = 74.0 + 97.97 * v + 24.91 * v * v, b = 1.22 - 0.19 * v + 0.038 * v * v;
         return 1e-3 * a * std::pow(s.kpa(), b);
       }},
      {evaporation_law::box, [](const state& s) { return 7.78e-5 * (s.p_w - s.p_a); }},
      {evaporation_law::biasin_krumme, [](const state& s) { return -0.059 + 7.9e-5 * (s.p_w - s.p_a); }},
      {evaporation_law::iso_12596,
       [](const state& s) { return (5.64 + 5.96 * s.speed) * s.kpa() / (s.y * 1e-3) / 24.0; }},
      {evaporation_law::analogy, analogy}};
  CHECK(laws.size() == twr::evaporation_laws.size());
  for (const state& s : states()) {
    for (const auto& each : laws) {
      const evaporation_law law = each.first;
      const auto& formula = each.second;
      CAPTURE(twr::about(law).name);
      TW_CHECK(again, in_kilograms_per_square_metre_hour(twr::evaporation_rate(law, s.open(), extrapolate)), formula(s),
               relative(2e-11));
    }
  }
  // Where the air is lighter than that over the water, and where vapour condenses, Shah's floor.
  for (const state& s : {state_of(25.0, 33.0, 30.0, 35.0, 0.0, 101325.0), state_of(15.0, 30.0, 80.0, 0.0, 0.0, 1e5),
                         state_of(24.0, 24.5, 60.0, 35.0, 0.0, 1e5)}) {
    TW_CHECK(again, in_kilograms_per_square_metre_hour(twr::evaporation_rate(evaporation_law::shah, s.open())), shah(s),
             relative(2e-11));
  }
  const evidence diffusion{"tankwright::room::vapour_diffusivity", kind::published,
                           "1.87e-10 T^2.072/P, in atmospheres"};
  TW_CHECK(diffusion, twr::vapour_diffusivity(kelvins(320.0), absolute_pressure{pascals(0.8 * 101325.0)}).value(),
           1.87e-10 * std::pow(320.0, 2.072) / 0.8, relative(1e-12));
}

TEST_CASE("formulas: the estimate of evaporation, its ends, wind, agitation and covers") {
  const evidence again{"tankwright::room::evaporation", kind::identity,
                       "the correlations that the band is made of, second transcription"};
  for (const state& s : states()) {
    const auto open = s.open();
    for (const double agitation : {1.0, 1.12, 1.3, 2.2}) {
      for (const double covered : {0.0, 0.4, 1.0}) {
        for (const double effective : {0.1, 0.9}) {
          const double v = 0.4 * covered + 0.05;  // m/s over the water
          const twr::wet_surface one{.label = "one",
                                     .area = square_metres(2.5),
                                     .agitation = twr::agitation{agitation},
                                     .air_speed = metres_per_second(v),
                                     .covered = fraction(covered),
                                     .cover = {"cover", fraction(effective)}};
          const twr::wet_surface two{.label = "two", .area = square_metres(0.5)};
          const auto found =
              twr::evaporation({.water = open.water, .air = open.air, .surfaces = {one, two}}, extrapolate);
          const double central = shah(s);
          const double low = std::fmin(vdi(s, 7.0), 0.65 * central);
          const double high = std::fmax(smith_1994(s, 0.1), 1.35 * central);
          // As in moving air (Smith et al. 1994) over 0.1 m/s; the band opens from 35 to 50 % up to gently moving, 1.3.
          const double bare = 2.5 * agitation * (30.6 + 32.1 * std::fmax(v, 0.1)) / (30.6 + 3.21);
          const double open_part = 1.0 - covered * effective;
          const double more = 0.15 * std::fmin(1.0, (agitation - 1.0) / 0.3);
          const double leaking = std::fmin(1.0, open_part + covered * (1.0 - effective));
          const double of_one[] = {bare * open_part * (0.65 - more) / 0.65, bare * open_part,
                                   bare * leaking * (1.35 + more) / 1.35};
          TW_CHECK(again, found.surfaces[0].rate.low, kilograms_per_hour(low * of_one[0]), relative(2e-11));
          TW_CHECK(again, found.surfaces[0].rate.central, kilograms_per_hour(central * of_one[1]), relative(2e-11));
          TW_CHECK(again, found.surfaces[0].rate.high, kilograms_per_hour(high * of_one[2]), relative(2e-11));
          TW_CHECK(again, found.surfaces[0].per_area.low.value() * 2.5, found.surfaces[0].rate.low.value(),
                   relative(1e-12));
          TW_CHECK(again, found.surfaces[0].per_area.high.value() * 2.5, found.surfaces[0].rate.high.value(),
                   relative(1e-12));
          TW_CHECK(again, found.rate.low, kilograms_per_hour(low * (of_one[0] + 0.5)), relative(2e-11));
          TW_CHECK(again, found.rate.central, kilograms_per_hour(central * (of_one[1] + 0.5)), relative(2e-11));
          TW_CHECK(again, found.rate.high, kilograms_per_hour(high * (of_one[2] + 0.5)), relative(2e-11));
          CHECK_FALSE(found.condenses);
          CHECK(found.surfaces[1].label == "two");
          CHECK((found.surfaces[0].rate.reason == twr::agitated_band) == (agitation > 1.0));
          CHECK((found.rate.reason == twr::agitated_band) == (agitation > 1.0));
          CHECK(found.surfaces[1].rate.reason == twr::still_band);
        }
      }
    }
  }
  const auto wet = state_of(15.0, 30.0, 80.0, 0.0, 0.0, 101325.0).open();
  const auto falls = twr::evaporation({.water = wet.water, .air = wet.air, .surfaces = {{.area = square_metres(1.0)}}});
  CHECK(falls.condenses);
  CHECK(falls.rate.reason == twr::condensing_band);
  CHECK(falls.rate.low.value() < falls.rate.high.value());
}

TEST_CASE("formulas: what a dehumidifier removes, draws and gives off, with its ends") {
  const evidence curves{"tankwright::room::dehumidifier_output", kind::published,
                        "EnergyPlus 9.5 example curves, second transcription"};
  const evidence band{"tankwright::room::dehumidifier_output", kind::common_practice,
                      "the band as the docstring gives it, second transcription"};
  const twr::dehumidifier m{.capacity = kilograms_per_day(24.0), .electrical = watts(410.0)};
  for (double t = -3.0; t <= 44.0; t += 2.3) {
    for (const double phi : {0.05, 0.27, 0.33, 0.41, 0.62, 0.79, 0.88, 1.0}) {
      CAPTURE(t);
      CAPTURE(phi);
      const double h = std::fmin(phi, 0.8), f = std::fmax(0.0, capacity(t, h));
      const double middle = f * line(t, 5.0, 15.0);
      const double low = 0.85 * f * line(t, 15.0, 21.0) * line(t, 38.0, 32.22) * line(h, 0.25, 0.4);
      const double straight = t < 21.0 ? std::fmax(0.0, capacity(21.0, h)) * line(t, 0.0, 21.0) : 0.0;
      const double hotter = std::fmax(0.0, t - 32.22);
      const double high = std::fmax(1.15 * std::fmax(middle, straight), (1.15 + 0.15 * hotter / 8.0) * middle);
      const auto found = twr::dehumidifier_output(m, celsius(t), relative_humidity::from_fraction(phi));
      const tolerance close{.absolute = 1e-18, .relative = 1e-9};
      TW_CHECK(band, found.removal.low, kilograms_per_day(24.0 * std::fmin(low, middle)), close);
      TW_CHECK(curves, found.removal.central, kilograms_per_day(24.0 * middle), close);
      TW_CHECK(band, found.removal.high, kilograms_per_day(24.0 * high), close);
      const auto within = [](double x, double a, double b) { return std::fmin(std::fmax(x, a), b); };
      const auto drawn = [&](double c, double p) {
        const double ct = within(c, 21.0, 32.22), ph = within(p, 0.4, 0.8);
        return capacity(ct, ph) / efficiency(ct, ph);
      };
      const double watts_drawn = 410.0 * drawn(t, phi) / drawn(80.0 / 1.8 - 32.0 / 1.8, 0.6);
      TW_CHECK(curves, found.electrical, watts(watts_drawn), relative(1e-9));
      const double latent = in_joules_per_kilogram(water::latent_heat_of_water(celsius(t), extrapolate));
      for (const auto& [heat, removed] : {std::pair{found.heat_to_room.low, found.removal.low},
                                          std::pair{found.heat_to_room.central, found.removal.central},
                                          std::pair{found.heat_to_room.high, found.removal.high}}) {
        TW_CHECK(curves, heat, power::from_value(removed.value() * latent + watts_drawn), relative(1e-9));
      }
      CHECK(found.removal.reason == found.heat_to_room.reason);
      const bool cold = found.removal.reason.find("below 21") != std::string_view::npos;
      const bool hot = found.removal.reason.find("above 32") != std::string_view::npos;
      CHECK(cold == (t < 21.0));
      CHECK(hot == (t > 32.22));
    }
  }
}
