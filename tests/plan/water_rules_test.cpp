// SPDX-License-Identifier: BSL-1.0
// Every rule of [water], with a plan that breaks it and one at its edge.
#include "plan/mistakes.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

plan::build some_water() {
  plan::build build;
  give(build, {{"water.temperature", "24 °C"}, {"water.new_water", "2000 L"}});
  return build;
}

plan::build read_by_hydrometer() {
  plan::build build = some_water();
  give(build, {{"water.now.hydrometer", "1.0236"}, {"water.now.temperature", "24 °C"}, {"water.now.scale", "60F/60F"}});
  return build;
}

plan::build read_by_refractometer() {
  plan::build build = some_water();
  give(build, {{"water.now.refractometer", "35"},
               {"water.now.temperature", "20 °C"},
               {"water.now.scale", "seawater"},
               {"water.now.compensation", "automatic"}});
  return build;
}

plan::build with_trial() {
  plan::build build = some_water();
  give(build, {{"water.trial_batch.mix", "420 g"},
               {"water.trial_batch.fresh_water", "10 kg"},
               {"water.trial_batch.reached", "34.8 +/- 0.5"}});
  return build;
}

}  // namespace

TEST_CASE("water rules: sound plans pass") {
  accepted(some_water(), {});
  accepted(read_by_hydrometer(), {{"water.now.body", "plastic"}, {"water.now.division", "0.0005"}});
  accepted(read_by_refractometer(), {});
  accepted(with_trial(), {});
  accepted(some_water(), {{"water.now.practical_salinity", "34"}, {"water.older_tank.practical_salinity", "35"}});
  accepted(some_water(), {{"water.now.conductivity", "50 mS/cm"}, {"water.now.temperature", "24 °C"}});
  accepted(some_water(), {{"water.now.compensated_conductivity", "50 mS/cm"},
                          {"water.now.temperature", "24 °C"},
                          {"water.now.coefficient", "2 %/K"}});
}

TEST_CASE("water rules: a specific gravity is not a salinity") {
  constexpr std::string_view says = "looks like a specific gravity";
  refused(some_water(), {{"water.target", "1.026"}}, "water.target", says);
  refused(some_water(), {{"water.target", "0.99"}}, "water.target", says);
  refused(some_water(), {{"water.target", "1.10"}}, "water.target", says);
  accepted(some_water(), {{"water.target", "0.98"}});
  accepted(some_water(), {{"water.target", "1.11"}});
  refused(some_water(), {{"water.now.practical_salinity", "1.025"}}, "water.now.practical_salinity", says);
  refused(some_water(), {{"water.older_tank.practical_salinity", "1.025"}}, "water.older_tank.practical_salinity",
          says);
  refused(with_trial(), {{"water.trial_batch.reached", "1.025"}}, "water.trial_batch.reached", says);
  refused(read_by_refractometer(), {{"water.now.refractometer", "1.025"}}, "water.now.refractometer",
          "1.025 is a specific gravity; give the parts per thousand");
}

TEST_CASE("water rules: a coefficient of next to nothing was meant in per cent") {
  plan::build build = some_water();
  give(build, {{"water.now.compensated_conductivity", "50 mS/cm"}, {"water.now.temperature", "24 °C"}});
  refused(build, {{"water.now.coefficient", "0.02 %/K"}}, "water.now.coefficient", "Did you mean 2 %/K?");
  accepted(build, {{"water.now.coefficient", "0 %/K"}});  // a meter that does not compensate
  accepted(build, {{"water.now.coefficient", "1.9 %/K"}});
}

TEST_CASE("water rules: each reading has what its instrument needs, and no more") {
  const auto without = [](plan::build build, std::string_view key) {
    plan::clear(build, key);
    return build;
  };
  refused(without(read_by_hydrometer(), "water.now.temperature"), {}, "water.now.temperature", "is missing",
          "water.now.hydrometer");
  refused(without(read_by_hydrometer(), "water.now.scale"), {}, "water.now.scale", "two temperatures printed",
          "water.now.hydrometer");
  refused(read_by_hydrometer(), {{"water.now.scale", "seawater"}}, "water.now.scale", "is the scale of a refractometer",
          "water.now.hydrometer");
  refused(read_by_hydrometer(), {{"water.now.division", "1"}}, "water.now.division", "is no division of a hydrometer",
          "water.now.hydrometer");
  refused(read_by_hydrometer(), {{"water.now.compensation", "none"}}, "water.now.compensation",
          "says nothing of a reading by hydrometer", "water.now.hydrometer");
  refused(without(read_by_refractometer(), "water.now.scale"), {}, "water.now.scale", "is missing",
          "water.now.refractometer");
  refused(without(read_by_refractometer(), "water.now.compensation"), {}, "water.now.compensation", "is missing",
          "water.now.refractometer");
  refused(read_by_refractometer(), {{"water.now.scale", "60F/60F"}}, "water.now.scale", "is the scale of a hydrometer",
          "water.now.refractometer");
  refused(read_by_refractometer(), {{"water.now.division", "0.001"}}, "water.now.division",
          "is no division of a refractometer", "water.now.refractometer");
  refused(read_by_refractometer(), {{"water.now.body", "glass"}}, "water.now.body", "says nothing",
          "water.now.refractometer");
  refused(some_water(), {{"water.now.conductivity", "50 mS/cm"}}, "water.now.temperature", "is missing",
          "water.now.conductivity");
  refused(some_water(), {{"water.now.practical_salinity", "35"}, {"water.now.temperature", "24 °C"}},
          "water.now.temperature", "says nothing of a reading by practical_salinity", "water.now.practical_salinity");
  refused(some_water(), {{"water.now.practical_salinity", "35"}, {"water.now.hydrometer", "1.02"}},
          "water.now.hydrometer", "give one of them, not both", "water.now.practical_salinity");
  refused(some_water(), {{"water.now.note", "soon"}}, "water.now", "needs one of practical_salinity, hydrometer");
}

TEST_CASE("water rules: a mix is no more than salt, and enough of it") {
  refused(with_trial(), {{"water.trial_batch.reached", "34.8 +/- 34.8"}}, "water.trial_batch.reached",
          "has a doubt that is not less than what was reached");
  refused(with_trial(), {{"water.trial_batch.mix", "300 g"}}, "water.trial_batch.reached",
          "is more salt than the mix weighed, 300 g in 10 kg of water", "water.trial_batch.mix");
  // 4200 kg of mix that made salinity 34.8 in 10 kg of water would be almost pure water itself.
  refused(with_trial(), {{"water.trial_batch.mix", "4200 kg"}}, "water.trial_batch.mix",
          "even the undiluted mix would not reach", "water.trial_batch.reached");
  refused(with_trial(), {{"water.mix_yield", "87 %"}}, "water.trial_batch", "give one of them, not both",
          "water.mix_yield");
}

TEST_CASE("water rules: volume, ice, targets, ammonia") {
  refused(some_water(), {{"water.new_water", "2 m3 +/- 100 %"}}, "water.new_water", "has a doubt that leaves no water");
  // Practical salinity 35 freezes at -1.92 degC (Millero 1978).
  accepted(some_water(), {{"water.temperature", "-1.9 °C"}});
  refused(some_water(), {{"water.temperature", "-1.95 °C"}}, "water.temperature", "is below the freezing point");
  refused(some_water(), {{"water.temperature", "-0.5 °C"}, {"water.target", "5"}}, "water.temperature",
          "is below the freezing point", "water.target");
  refused(some_water(), {{"water.target", "34"}, {"water.older_tank.practical_salinity", "35"}}, "water.older_tank",
          "give one of them, not both", "water.target");
  refused(some_water(), {{"water.ammonia", "0.1 mg/L"}}, "water.ph", "is missing");
  refused(
      some_water(),
      {{"water.ammonia", "0.1 mg/L"}, {"water.ammonium", "0.1 mg/L"}, {"water.ph", "8.1"}, {"water.ph_scale", "nbs"}},
      "water.ammonium", "give one of them, not both", "water.ammonia");
  refused(some_water(), {{"water.ph", "8.1"}}, "water.ph", "needs ph_scale beside it");
}
