// SPDX-License-Identifier: BSL-1.0
// A front end in miniature: a plan in code, a slider that moves one number, and the findings drawn as they come.
#include <cstdio>
#include <string>

#include <tankwright/commissioning/assess.hpp>
#include <tankwright/commissioning/measure_first.hpp>
#include <tankwright/text/quantity.hpp>

using namespace tankwright;
namespace twc = tankwright::commissioning;

// [plan]
twc::plan lagoon() {
  twc::plan plan{.title = "Lagoon, one return"};
  plan.water = twc::water_plan{.temperature = celsius(25.0)};
  plan.water->target = practical_salinity{35.0};
  twc::plumbing_plan plumbing{
      .display = {.surface = square_metres(2.4),
                  .edge = plumbing::full_width_edge{.width = metres(0.8), .crest_height = metres(0.8)}},
      .sump = {.rim = metres(0.45),
               .running_level = metres(0.25),
               .chambers = {{.label = "sump", .plan = square_metres(0.9)}}}};
  const plumbing::pipe_run riser{.label = "riser",
                                 .from = "pump outlet",
                                 .to = "return",
                                 .bore = plumbing::pipe_bore{millimetres(57.0)},
                                 .length = metres(3.0),
                                 .fittings = {plumbing::loss_coefficient{3.0}, plumbing::loss_coefficient{4.5},
                                              plumbing::loss_coefficient{6.0}, "elbows, a valve"}};
  plumbing.circuit.sources = {{.label = "sump water", .level = metres(0.25)}};
  plumbing.circuit.pumps = {{.label = "pump",
                             .from = "sump water",
                             .to = "pump outlet",
                             .curve = plumbing::curve_from_points(
                                 "pump", {{.flow = litres_per_hour(0.0), .head = metres(4.6)},
                                          {.flow = litres_per_hour(8000.0), .head = metres(3.4)},
                                          {.flow = litres_per_hour(15000.0), .head = metres(0.6)}})}};
  plumbing.circuit.runs = {riser};
  plumbing.circuit.outlets = {{.label = "return", .kind = plumbing::outlet_kind::submerged, .level = metres(1.45)}};
  plumbing.returns = {{.label = "return", .below_edge = millimetres(20.0), .pipe = riser}};
  plan.plumbing = plumbing;
  return plan;
}
// [/plan]

// [draw]
void draw(const twc::finding& f) {
  std::printf("%s\n", std::string{f.question}.c_str());
  for (const twc::entry& e : f.numbers) {
    std::printf("  %-40s %s\n", e.label.c_str(), text::of(e.value, text::unit_system::si).c_str());
  }
  std::printf("  -> %s\n", std::string{words(f.says)}.c_str());
  if (!f.before_acting.empty()) std::printf("  Caution: %s\n", std::string{f.before_acting}.c_str());
}
// [/draw]

int main() {
  twc::plan plan = lagoon();
  // [slider]
  for (const double millimetres_up : {150.0, 200.0, 250.0, 300.0, 350.0}) {
    plan.plumbing->sump.running_level = millimetres(millimetres_up);
    for (const twc::finding& f : twc::assess(plan).findings) {
      if (f.id != "sump.power_cut") continue;
      std::printf("running at %3.0f mm: %s left, %s\n", millimetres_up,
                  text::of(f.numbers.front().value, text::unit_system::si).c_str(), std::string{words(f.says)}.c_str());
    }
  }
  // [/slider]
  const twc::assessment all = twc::assess(plan);
  std::printf("\n");
  for (const twc::finding& f : all.findings) {
    if (f.id == "sump.power_cut") draw(f);
  }
  std::printf("\nMeasure first:\n");
  for (const auto& m : twc::measure_first(all)) std::printf("  %s\n", m.what.c_str());
  return 0;
}
