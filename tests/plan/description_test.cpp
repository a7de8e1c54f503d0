// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <tankwright/life/oxygen_use.hpp>
#include <tankwright/plan/description.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/sheets.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/plan/walk.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/room/air.hpp>
#include <tankwright/text/written.hpp>

#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {
evidence property_of(const char* function) { return {function, kind::property, "as described"}; }
/// Counts the tables that a plan has at its top.
struct key_counter : plan::visitor {
  std::size_t count = 0;

 private:
  void number(const plan::key_info&, plan::value_base&) override {}
  void numbers(const plan::key_info&, plan::values_base&) override {}
  void one_of(const plan::key_info&, plan::word_base&, std::span<const std::string_view>) override {}
  void yes_or_no(const plan::key_info&, plan::flag&) override {}
  void text(const plan::key_info&, std::string&) override {}
  void rating(const plan::key_info&, plan::composite&) override {}
  void table(const plan::key_info&, plan::table_ref&) override { ++count; }
  void tables(const plan::key_info&, plan::tables_ref&) override {}
};
evidence made(const char* function) { return {function, kind::property, "as described"}; }
}  // namespace

TEST_CASE("description: usual doubts and defaults are what they are made of") {
  TW_CHECK(made("tankwright::plan::known_within"), plan::known_within(percent(3.0)).size, 0.03, relative(1e-15));
  TW_CHECK(made("tankwright::plan::known_within_factor"), plan::known_within_factor(2.0).size, 2.0, relative(1e-15));
  const evidence wide{"tankwright::plan::half_width", kind::identity, "arithmetic by hand"};
  plan::value<length> far = metres(-2.0);
  TW_CHECK(wide, plan::half_width(far, plan::known_within(percent(3.0))), 0.06, relative(1e-14));  // 3 % of 2 m
  TW_CHECK(wide, plan::half_width(far, plan::known_within_factor(1.5)), 1.0, relative(1e-14));     // up to 3 m
  TW_CHECK(wide, plan::half_width(far, plan::usual::doubt_of(millimetres(4.0))), 0.004, relative(1e-14));
  TW_CHECK(wide, plan::half_width(far, {}), 0.0, relative(0.0));
  TW_HOLDS(made("tankwright::plan::usual::doubt_of"),
           plan::usual::doubt_of(millimetres(4.0)).kind == plan::doubt_kind::distance);
  enum class letter { a, b };
  const auto word = plan::word_by_default(letter::b);
  TW_HOLDS(made("tankwright::plan::word_by_default"), (!word.given() && word.get() == letter::b));
}

TEST_CASE("description: a path finds the key it names, with what is said of it") {
  plan::build build = basin();
  bool found = false;
  plan::at_path(build, "plumbing.return[return].below_edge", false, [&](const plan::leaf& here) {
    found = here.number && here.key.quantity == "length" && here.key.set_by == plan::set_by::chosen;
  });
  TW_HOLDS(made("tankwright::plan::at_path"), found);
}

TEST_CASE("description: examples and SI units of quantities, as they are defined") {
  const auto by = [](const char* function, const char* definition) {
    return evidence{function, kind::identity, definition};
  };
  TW_HOLDS(by("tankwright::text::example_of", "2.40 m is 2.4"),
           text::read_written(text::example_of("length"), "length").si == 2.40);
  TW_HOLDS(by("tankwright::text::si_unit", "the SI"), text::si_unit("flow_rate") == "m3/s");
  TW_HOLDS(by("tankwright::text::si_unit", "the SI"), text::si_unit("power") == "W");
  TW_CHECK(by("tankwright::room::in_grams_per_kilogram", "1 kg is 1000 g"),
           room::in_grams_per_kilogram(room::humidity_ratio::from_grams_per_kilogram(8.0)),
           1000.0 * room::humidity_ratio::from_grams_per_kilogram(8.0).value(), relative(1e-14));
  TW_CHECK(by("tankwright::life::in_milligrams_per_kilogram_hour", "the number that it is made of"),
           life::in_milligrams_per_kilogram_hour(life::specific_oxygen_use::from_milligrams_per_kilogram_hour(180.0)),
           180.0, relative(1e-14));
}

TEST_CASE("description: pipes, sheets and names of elements, as they were given") {
  const auto given = [](const char* function) { return evidence{function, kind::wiring, "as given"}; };
  plan::build build = basin();
  const plan::return_pipe& pipe = build.plumbing->returns.front();
  TW_CHECK(given("tankwright::plan::bore_of"), plan::bore_of(pipe.pipe.bore).diameter(), millimetres(57.0),
           relative(1e-14));
  const auto run = plan::run_of(pipe.pipe, "x");
  TW_CHECK(given("tankwright::plan::run_of"), run.length, metres(1.6), relative(1e-14));
  TW_CHECK(given("tankwright::plan::run_of"), run.fittings.central.value(), 5.0, relative(1e-14));
  // Sheets are sold thinnest first, and thinner than their names.
  for (const bool acrylic : {false, true}) {
    const auto sheets = plan::sheets_of(acrylic);
    TW_HOLDS(property_of("tankwright::plan::sheets_of"), std::is_sorted(sheets.begin(), sheets.end()));
  }
  // A second return with a label of its own is found by it; two of one label by their numbers.
  plan::set(build, "plumbing.return[2].label", "other");
  std::size_t found = 0;
  plan::at_path(build, "plumbing.return[other].label", false, [&](const plan::leaf&) { ++found; });
  TW_HOLDS(property_of("tankwright::plan::selector_of"), found == 1);
  TW_HOLDS(property_of("tankwright::plan::label_of"), plan::get(build, "plumbing.return[2].label") == "other");
  key_counter counter;
  plan::look_at(counter, build);
  TW_HOLDS(property_of("tankwright::plan::look_at"), counter.count > 0);
}
