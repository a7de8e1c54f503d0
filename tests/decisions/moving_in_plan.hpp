// SPDX-License-Identifier: BSL-1.0
/// @file
/// A plan of the moving-in day, and its decisions answered from a state that the test knows.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plan/path.hpp>

namespace tankwright::testing {

inline plan::build& with(plan::build& build,
                         std::initializer_list<std::pair<std::string_view, std::string_view>> keys) {
  for (const auto& [path, text] : keys) plan::set(build, path, text);
  return build;
}

/// Food, rock, surfaces, animals: 24 g of food with 11 % of protein, which is 16 % nitrogen; 4 g with 48 %, 9.2 % of it
/// ammonia nitrogen.
[[nodiscard]] inline plan::build moving_in() {
  plan::build b;
  with(b, {{"life.ph", "8.1"},
           {"life.ph_scale", "nbs"},
           {"life.food[1].name", "shrimp"},
           {"life.food[1].amount", "24 g/d"},
           {"life.food[1].protein", "11 %"},
           {"life.food[1].kind", "wet"},
           {"life.food[2].name", "granulate"},
           {"life.food[2].amount", "4 g/d"},
           {"life.food[2].protein", "48 %"},
           {"life.food[2].kind", "dry"},
           {"life.moved_rock.moved", "30 kg"},
           {"life.moved_rock.of", "40 kg"},
           {"life.moved_rock.food[1].amount", "24 g/d"},
           {"life.moved_rock.food[1].protein", "11 %"},
           {"life.moved_rock.food[1].kind", "wet"},
           {"life.moved_rock.food[2].amount", "4 g/d"},
           {"life.moved_rock.food[2].protein", "48 %"},
           {"life.moved_rock.food[2].kind", "dry"},
           {"life.surface[1].name", "sand"},
           {"life.surface[1].area", "26 m2"},
           {"life.surface[1].seeded", "2 %"},
           {"life.surface[2].name", "media"},
           {"life.surface[2].volume", "30 L"},
           {"life.surface[2].specific_surface", "500 m2/m3"}});
  with(b, {{"life.start_up.animals[1].on", "0 d"},
           {"life.start_up.animals[1].share", "50 %"},
           {"life.start_up.animals[2].on", "28 d"},
           {"life.start_up.animals[2].share", "100 %"},
           {"life.start_up.culture[1].oxidises", "0.02 g/d"},
           {"life.start_up.culture[1].times", "6"},
           {"life.alkalinity.unit", "dKH"},
           {"life.alkalinity.now", "8"},
           {"life.alkalinity.lowest", "7"},
           {"life.animals[1].name", "garden eels"},
           {"life.animals[1].each", "28 g"},
           {"life.animals[1].count", "40"},
           {"life.animals[1].oxygen_use", "180"},
           {"life.animals[1].measured_at_mass", "40 g"},
           {"life.animals[1].measured_at", "25 °C"},
           {"life.animals[1].adult", "38 cm"},
           {"life.animals[1].speed", "5 cm/s"},
           {"life.power_cut.help_within", "8 h"},
           {"life.power_cut.battery_air.kla", "0.3 1/h"},
           {"life.power_cut.battery_air.runs", "10 h"},
           {"life.circulation.clear_within", "24 h"},
           {"life.circulation.treatment[1].name", "carbon"},
           {"life.circulation.treatment[1].flow", "900 L/h"},
           {"life.circulation.treatment[1].removes", "60 %"},
           {"life.arrivals.ammonia_nitrogen", "1.2 mg/L"},
           {"life.arrivals.ph", "7.2"},
           {"life.arrivals.ph_scale", "nbs"},
           {"life.arrivals.practical_salinity", "32.5"},
           {"life.arrivals.temperature", "22.5 °C"},
           {"life.arrivals.vessel", "12 L"},
           {"life.arrivals.salinity_per_hour", "1"},
           {"life.room.run", "2 m"},
           {"life.room.width", "0.8 m"}});
  return b;
}

[[nodiscard]] inline decisions::system_state known_state() {
  decisions::system_state s;
  s.water = {celsius(24.0), practical_salinity{35.0}, standard_atmosphere};
  s.display_water = estimate<volume>{litres(1550.0), litres(1600.0), litres(1650.0), "rock and sand"};
  s.sump_water = estimate<volume>{litres(340.0), litres(350.0), litres(360.0), "levels"};
  s.display_surface = square_metres(2.4);
  s.flow = estimate<flow_rate>{litres_per_hour(6000.0), litres_per_hour(6000.0), litres_per_hour(6000.0), {}};
  return s;
}
inline constexpr volume all_the_water = litres(1950.0);

/// The findings of [life], with the state as the test knows it.
[[nodiscard]] inline decisions::assessment answered(const plan::build& build,
                                                    const decisions::system_state& state = known_state()) {
  const decisions::situation s{build, state};
  decisions::answers out;
  for (const decisions::decision* d : decisions::all_decisions()) {
    if (d->id.starts_with("life.")) out.run(*d, s);
  }
  return {"test", out.take()};
}
/// One of them.
[[nodiscard]] inline decisions::finding answered(const plan::build& build, std::string_view id,
                                                 const decisions::system_state& state = known_state()) {
  const decisions::situation s{build, state};
  decisions::answers out;
  for (const decisions::decision* d : decisions::all_decisions()) {
    if (d->id == id) out.run(*d, s);
  }
  const auto all = out.take();
  REQUIRE_MESSAGE(all.size() == 1, std::string{id});
  return all.front();
}

/// A number of a finding, which must be there.
[[nodiscard]] inline const amount& value_of(const decisions::finding& f, std::string_view id,
                                            std::string_view place = {}) {
  const decisions::number* n = f.find(id, place);
  REQUIRE_MESSAGE(n, std::string{f.id}, ": no number ", std::string{id}, "; ", f.note);
  return n->value;
}

}  // namespace tankwright::testing
