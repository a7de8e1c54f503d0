// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/mix.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_salt_mix(const situation& s, answers& out) {
  if (!s.plan().water) return;
  finding& f = out.ask(salt_mix);
  const water_case& c = s.water();
  const auto make = water_to_make(c, s.state());
  if (!make) {
    const std::string& why = s.state().why_no_display;
    f.unknown(why.empty() ? "give the volume of new water, or the display so that it can be computed" : why);
    return;
  }
  const estimate<practical_salinity>& target = c.target();
  const estimate<proportion>& yield = c.mix_yield();
  const auto batch = [&](volume v, practical_salinity to, proportion y) {
    return water::salt_for_finished_volume(
        {.volume = v, .target = to, .temperature = c.in.temperature, .mix_yield = y});
  };
  const auto middle = batch(make->central, target.central, yield.central);
  const estimate<mass> mix{batch(make->low, target.low, yield.high).mix, middle.mix,
                           batch(make->high, target.high, yield.low).mix,
                           "volume, salinity to be matched and yield, each at its worst"};
  f.answer("mix", "mix to weigh out", mix);
  f.detail("fresh_water", "fresh water to pour it into", middle.fresh_water);
  f.detail("makes", "seawater it makes", *make);
  f.detail("yield", "salt in the mix (its yield)", yield);
  f.note =
      "Weigh out the low figure first, let it clear, measure, and add the rest in steps: it is enough when the "
      "instruments read what stands below.";
  f.source(water::feistel_2008).source(water::millero_2008);
  if (!c.knows_yield()) f.next("measure the yield of the mix with a trial batch of a few litres");
}

}  // namespace tankwright::decisions
