// SPDX-License-Identifier: BSL-1.0
// A front end in miniature: a plan in code, a slider that moves one key, and the findings drawn as they come.
#include <cstdio>
#include <string>
#include <tankwright/decisions.hpp>
#include <tankwright/plan.hpp>

namespace tw = tankwright;

// [plan]
tw::plan::build lagoon() {
  tw::plan::build build;
  build.title = "Lagoon, one return";
  tw::plan::plumbing_section& p = build.plumbing.emplace();
  p.lift = tw::metres(1.45);
  p.overflow.emplace();
  p.overflow->surface = tw::square_metres(2.4);
  p.overflow->crest_height = tw::metres(0.8);
  p.overflow->width = tw::metres(0.8);
  p.pump.emplace();
  p.pump->flows = {tw::litres_per_hour(0), tw::litres_per_hour(8000), tw::litres_per_hour(15000)};
  p.pump->heads = {tw::metres(4.6), tw::metres(3.4), tw::metres(0.6)};
  // By name, as a file or a form does it: with units, and where it matters with a doubt.
  tw::plan::set(build, "plumbing.return[1].label", "return");
  tw::plan::set(build, "plumbing.return[return].bore", "57 mm");
  tw::plan::set(build, "plumbing.return[return].length", "3 m");
  tw::plan::set(build, "plumbing.return[return].loss", "4.5");
  tw::plan::set(build, "plumbing.return[return].below_edge", "20 mm +/- 3 mm");
  tw::plan::set(build, "plumbing.sump.rim", "450 mm");
  tw::plan::set(build, "plumbing.sump.running_level", "250 mm");
  tw::plan::set(build, "plumbing.sump.chamber[1].area", "0.9 m2");
  return build;
}
// [/plan]

// [draw]
void draw(const tw::decisions::finding& f) {
  std::printf("%s\n", std::string{f.question}.c_str());
  for (const tw::decisions::number& n : f.numbers) {
    std::printf("  %-40s %s\n", n.label.c_str(), tw::text::of(n.value, tw::text::unit_system::si).c_str());
  }
  std::printf("  -> %s\n", std::string{verdict_words(f)}.c_str());
  if (!f.caution.empty()) std::printf("  Caution: %s\n", std::string{f.caution}.c_str());
}
// [/draw]

int main() {
  tw::plan::build build = lagoon();
  // [slider]
  for (const double up : {150.0, 200.0, 250.0, 300.0, 350.0}) {
    build.plumbing->sump->running_level = tw::millimetres(up);
    const tw::decisions::finding f = tw::decisions::assess_one(build, "sump.power_cut").front();
    std::printf("running at %3.0f mm: %s left, %s\n", up,
                tw::text::of(f.margin()->value, tw::text::unit_system::si).c_str(),
                std::string{words(f.verdict)}.c_str());
  }
  // [/slider]
  const tw::decisions::assessment all = tw::decisions::assess(build);
  std::printf("\n");
  const tw::decisions::finding& dry = all.at("sump.power_cut");
  draw(dry);
  std::printf("\nMeasure next:\n");
  for (const std::string& next : dry.measure_next) std::printf("  %s\n", next.c_str());
  return 0;
}
