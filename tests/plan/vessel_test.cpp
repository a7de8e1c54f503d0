// SPDX-License-Identifier: BSL-1.0
// What [vessel] and [hold] say of their keys.
#include <cmath>
#include <set>
#include <string>
#include <tankwright/plan/keys.hpp>
#include <tankwright/plan/sheets.hpp>
#include <tankwright/plan/vessel.hpp>

#include "plan/mistakes.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence sheets{"tankwright::plan::sheets_of", kind::from_memory, "ASTM E1300 Table 4; ISO 7823-1"};

}  // namespace

TEST_CASE("vessel and hold: every key has a sentence, both limits, and a place of its own") {
  std::set<std::string> paths;
  std::size_t seen = 0;
  for (const plan::key_row& row : plan::all_keys().keys) {
    if (!row.path.starts_with("vessel") && !row.path.starts_with("hold")) continue;
    ++seen;
    CHECK_MESSAGE(paths.insert(row.path).second, row.path);
    CHECK_MESSAGE(!row.about.means.empty(), row.path);
    CHECK_MESSAGE(!row.about.means.ends_with('.'), row.path);
    CHECK_MESSAGE(row.about.low <= row.about.high, row.path);
    CHECK_MESSAGE(std::isfinite(row.about.low + row.about.high), row.path);
    if (row.about.searched && row.about.sizes.empty()) {
      CHECK_MESSAGE(row.about.choose_low >= row.about.low, row.path);
      CHECK_MESSAGE(row.about.choose_high <= row.about.high, row.path);
      CHECK_MESSAGE(row.about.step > 0.0, row.path);
    }
    for (const double size : row.about.sizes) CHECK(size >= row.about.low);
  }
  CHECK(seen > 100);
}

TEST_CASE("vessel and hold: a number past either limit is refused at its path") {
  plan::build sound = lagoon();
  test_for_leaks(sound);
  std::size_t tried = 0;
  for (const plan::key_row& row : plan::all_keys().keys) {
    if (row.kind != plan::key_kind::number || row.path.find("[]") != std::string::npos) continue;
    if (!row.path.starts_with("vessel") && !row.path.starts_with("hold")) continue;
    for (const double past : {row.about.low - 1e-3 * (1.0 + std::fabs(row.about.low)), 1.001 * row.about.high + 1e-9}) {
      plan::build build = sound;
      plan::set_si(build, row.path, past);
      bool found = false;
      for (const plan::mistake& m : plan::validate(build)) found = found || m.path == row.path;
      CHECK_MESSAGE(found, row.path, " = ", past);
      ++tried;
    }
  }
  CHECK(tried > 60);
}

TEST_CASE("vessel: glass and acrylic are sold in sheets, each thinner than its name") {
  TW_CHECK(sheets, plan::sheets_of(false)[9], 0.018, relative(1e-12));   // 19 mm: 18.26 by ASTM, 18.0 by EN 572
  TW_CHECK(sheets, plan::sheets_of(false)[6], 0.0117, relative(1e-12));  // 12 mm: 11.91 and 11.7
  TW_CHECK(sheets, plan::sheets_of(true)[8], 0.0176, relative(1e-12));   // 20 mm less 0.4 mm and a tenth
  for (const bool acrylic : {false, true}) {
    const auto all = plan::sheets_of(acrylic);
    for (std::size_t i = 1; i < all.size(); ++i) TW_HOLDS(sheets, all[i] > all[i - 1]);
  }
  plan::build build = lagoon();
  plan::at_path(build, "vessel.panel[2].thickness", false,
                [](const plan::leaf& here) { CHECK(here.key.sizes.data() == plan::sheets_of(true).data()); });
}

TEST_CASE("vessel and hold: what is missing is named") {
  plan::build empty;
  empty.vessel.emplace();
  empty.hold.emplace();
  const std::string all = mistakes_of(empty);
  for (const std::string_view path :
       {"vessel.length: is missing", "vessel.height: is missing", "vessel.water_level: is missing",
        "hold.surface: is missing", "hold: needs the readings"}) {
    CHECK_MESSAGE(all.find(path) != std::string::npos, path, " in\n", all);
  }
  plan::build half = lagoon();
  give(half,
       {{"vessel.sand[2].label", "nothing"}, {"vessel.rock[3].label", "nothing"}, {"vessel.lid[3].label", "nothing"}});
  const std::string more = mistakes_of(half);
  for (const std::string_view mistake :
       {"vessel.sand[nothing]: needs one of depth, mass, shallow_end",
        "vessel.rock[nothing]: needs one of dry_mass, level_before", "vessel.lid[nothing].span: is missing",
        "vessel.lid[nothing].material: is missing"}) {
    CHECK_MESSAGE(more.find(mistake) != std::string::npos, mistake, " in\n", more);
  }
}
