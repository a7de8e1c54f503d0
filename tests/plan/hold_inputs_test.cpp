// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plan/inputs/hold_inputs.hpp>

#include "plan/lagoon.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence inputs{"tankwright::plan::inputs_of", kind::wiring, "as given"};

}  // namespace

TEST_CASE("hold inputs: readings side by side, the criterion, the air, and what is planned") {
  plan::build build;
  test_for_leaks(build);
  auto in = plan::inputs_of(*build.hold);
  REQUIRE(in.done);
  REQUIRE(in.done->readings.size() == 9);
  TW_CHECK(inputs, in.done->readings[2].level.get(), metres(0.7965), relative(1e-14));
  TW_CHECK(inputs, *in.done->readings[2].pan, metres(0.0565), relative(1e-14));
  TW_CHECK(inputs, in.done->readings[2].at.get(), days(1.0), relative(1e-14));
  TW_CHECK(inputs, in.water, celsius(19.0), within(kelvin_steps(1e-9)));
  TW_CHECK(inputs, in.leak_that_matters, litres_per_day(0.5), relative(1e-14));
  TW_CHECK(inputs, in.planned->readings_per_day, 2.0, relative(1e-15));
  CHECK_FALSE(in.done->criterion);
  CHECK_FALSE(in.air);
  CHECK(in.planned->pan);

  give(build, {{"hold.criterion", "BS 5337"},
               {"hold.capacity", "1920 L"},
               {"hold.reader", "1, 2, 1, 2, 1, 2, 1, 2, 1"},
               {"hold.air_temperature", "21 °C"},
               {"hold.air_humidity", "50 %"},
               {"hold.water_temperature", "18 °C"},
               {"hold.planned.evaporation", "2 mm/d"}});
  plan::clear(build, "hold.planned.leak");
  in = plan::inputs_of(*build.hold);
  CHECK(in.done->criterion->name == vessel::bs_5337.name);
  CHECK(in.done->readings[1].reader == "reader 2");
  TW_CHECK(inputs, in.water, celsius(18.0), within(kelvin_steps(1e-9)));
  TW_CHECK(inputs, in.air->humidity->value(), 0.5, relative(1e-15));
  TW_CHECK(inputs, in.planned->evaporation.low, millimetres_per_day(1.3), relative(1e-12));  // 35 % where not given
  TW_CHECK(inputs, in.leak_that_matters, litres_per_day(1.0), relative(1e-14));
  const std::pair<std::string_view, std::string_view> criteria[]{{"AWWA D110", vessel::awwa_d110.name},
                                                                 {"AWWA 1978", vessel::awwa_1978.name},
                                                                 {"ACI 350.1 class 025", vessel::aci_350_025.name}};
  for (const auto& [word, name] : criteria) {
    give(build, {{"hold.criterion", word}});
    CHECK(plan::inputs_of(*build.hold).done->criterion->name == name);
  }
  plan::clear(build, "hold.depth");
  CHECK_THROWS_AS((void)plan::inputs_of(*build.hold), invalid_input);
}
