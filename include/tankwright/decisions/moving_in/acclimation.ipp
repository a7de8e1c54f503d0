// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/acclimation.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/water/exchange.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_acclimation(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->arrivals) return;
  finding& f = out.ask(acclimation);
  const life_case& c = s.life();
  const plan::arrival_inputs& a = *c.in.arrivals;
  const water_basis& tank = c.state.water;
  const life::water_step step{.salinity_from = a.bag.salinity,
                              .salinity_to = tank.salinity,
                              .temperature_from = a.bag.temperature,
                              .temperature_to = tank.temperature};
  const double rises = tank.salinity.value() - a.bag.salinity->value();
  const double salinity = std::fabs(rises);
  const double warmth = std::fabs(tank.temperature.value() - a.bag.temperature->value());
  f.source(life::husbandry_practice);
  if (salinity == 0.0 && warmth == 0.0) {
    f.note = "Salinity and temperature are the same: nothing has to be brought over.";
    return;
  }
  const life::match_limits limits{};
  const flow_rate flow = life::gentle_flow({.start = a.vessel,
                                            .step = step,
                                            .salinity_per_hour = a.salinity_per_hour,
                                            .temperature_per_hour = a.temperature_per_hour});
  // What may be left of the differences is what the two waters may differ by.
  double left = 1.0;
  if (salinity > 0.0) left = std::fmin(left, limits.salinity / salinity);
  if (warmth > 0.0) left = std::fmin(left, in_kelvin_steps(limits.temperature) / warmth);
  f.answer("drip", "drip, at most", flow);
  f.detail("vessel", "into a vessel of", a.vessel);
  f.limit("salinity_pace", "pace: salinity in an hour", a.salinity_per_hour);
  f.limit("temperature_pace", "pace: temperature in an hour", a.temperature_per_hour);
  const life::drip how{.start = a.vessel, .flow = flow, .vessel = a.drip_into};
  const duration time = life::time_to_share(how, fraction(1.0 - left));
  f.detail("time", "until the rest is small enough", time);
  f.detail("tank_water", "tank water for it", volume{flow * time});
  f.detail("step", "or in steps, each of this part of the water", a.step);
  f.detail("steps", "so many steps",
           static_cast<double>(water::changes_to_leave({.part = a.step, .left = fraction(left)})));
  f.note = a.drip_into == life::drip_vessel::filling ? "The vessel fills up: see that it holds the tank water too."
                                                     : "The vessel stays full and runs over into a drain.";
  if (rises > limits.salinity) {
    f.note +=
        " Their salinity rises, which is harder for them than a fall: common practice is about 1 a day upwards. Where "
        "they can wait, keep them in clean water of their own salinity and raise that over days.";
    f.detail("days", "at 1 of salinity a day it takes", days(rises));
  }
}

}  // namespace tankwright::decisions
