// SPDX-License-Identifier: BSL-1.0
// Mistakes made from the descriptions, for every key: what cannot exist is refused with its path, what can passes.
#include <cmath>
#include <limits>
#include <string>
#include <tankwright/plan/mistake.hpp>
#include <tankwright/plan/validate.hpp>

#include "plan/every_key.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence found{"tankwright::plan::validate", kind::identity,
                     "the limits of the descriptions, a step to each side"};
const evidence listed{"tankwright::plan::all_keys", kind::identity, "each key can be set where the list says it is"};

bool is_number(const plan::key_row& row) {
  return row.kind == plan::key_kind::number || row.kind == plan::key_kind::numbers;
}
std::string settable(const plan::key_row& row) {
  return first_of_each(row.path) + (row.kind == plan::key_kind::numbers ? "[1]" : "");
}

/// The reason that `validate` gives for a path, of its mistakes the one that is about the number itself.
std::string reason_at(const plan::build& build, const std::string& path) {
  for (const plan::mistake& m : plan::validate(build)) {
    const bool own = m.reason.find("is not possible; expected") != std::string::npos ||
                     m.reason.find("is not a finite number") != std::string::npos ||
                     m.reason.find("is not a whole number") != std::string::npos;
    // A list of one element is named by its label where that was given; here none is.
    if (own && m.path == path) return m.reason;
  }
  return {};
}

}  // namespace

TEST_CASE("every number: below its limits, at both of them, above them, and what is no number") {
  std::size_t numbers = 0;
  for (const plan::key_row& row : plan::all_keys().keys) {
    if (!is_number(row)) continue;
    ++numbers;
    const std::string path = settable(row);
    CAPTURE(path);
    const double low = row.about.low, high = row.about.high;
    TW_HOLDS(found, std::isfinite(low) && std::isfinite(high) && low <= high);
    const auto reason = [&](double si) {
      plan::build build;
      plan::set_si(build, path, si);
      return reason_at(build, path);
    };
    TW_HOLDS(found, reason(low).empty());
    TW_HOLDS(found, reason(high).empty());
    TW_HOLDS(found, !reason(std::nextafter(low, -HUGE_VAL)).empty());
    TW_HOLDS(found, !reason(std::nextafter(high, HUGE_VAL)).empty());
    if (row.about.whole) TW_HOLDS(found, !reason(std::floor(0.5 * (low + high)) + 0.5).empty());
    plan::build build;
    for (const double none : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
      CHECK_THROWS_AS(plan::set_si(build, path, none), invalid_input);
      // A program may write into the struct itself.
      plan::at_path(build, path, true, [&](const plan::leaf& here) {
        plan::value_base* v = here.number;
        if (here.numbers) {
          if (here.numbers->size() == 0) here.numbers->add(0.0);
          v = &here.numbers->items.front();
        }
        v->give(none);
      });
      TW_HOLDS(found, !reason_at(build, path).empty());
    }
  }
  CHECK(numbers > 100);
}

TEST_CASE("every key: a wrong unit, a wrong type and a misspelling are refused, and nothing stays behind") {
  for (const plan::key_row& row : plan::all_keys().keys) {
    const std::string path = settable(row);
    CAPTURE(path);
    plan::build build;
    const auto wrong = [&](std::string_view text) {
      CHECK_THROWS_AS(plan::set(build, path, text), text_error);
      TW_HOLDS(listed, texts_of(build).empty());
    };
    switch (row.kind) {
      case plan::key_kind::number:
      case plan::key_kind::numbers:
        wrong(row.about.quantity == "mass" ? "3 m" : "3 kg");
        wrong("maybe");
        wrong("");
        break;
      case plan::key_kind::word:
        wrong("certainly none of them");
        plan::set(build, path, row.words.back());
        TW_HOLDS(listed, plan::get(build, path) == row.words.back());
        break;
      case plan::key_kind::flag:
        wrong("maybe");
        plan::set(build, path, "true");
        TW_HOLDS(listed, plan::get(build, path) == "true");
        break;
      case plan::key_kind::rating:
        wrong("certainly no rating");
        plan::set(build, path, row.about.name.empty() ? "" : std::string{row.example});
        TW_HOLDS(listed, !plan::get(build, path).empty());
        break;
      case plan::key_kind::text:
        plan::set(build, path, "a text");
        TW_HOLDS(listed, plan::get(build, path) == "a text");
        break;
      case plan::key_kind::table:
      case plan::key_kind::tables:
        CHECK_THROWS_AS(plan::set(build, path, "3 m"), invalid_input);
        break;
    }
    std::string misspelt = first_of_each(row.path);
    const bool list = misspelt.ends_with(']');
    misspelt.insert(list ? misspelt.size() - 3 : misspelt.size(), "x");
    plan::build other;
    CHECK_THROWS_WITH_AS(plan::set(other, misspelt, "3 m"), doctest::Contains("did you mean "), invalid_input);
    TW_HOLDS(listed, texts_of(other).empty());
    CHECK_FALSE((other.vessel || other.hold || other.plumbing || other.water || other.room || other.life));
  }
}

TEST_CASE("every key has a sentence, and what is chosen stays within its limits") {
  for (const plan::key_row& row : plan::all_keys().keys) {
    CAPTURE(row.path);
    CHECK_FALSE(row.about.means.empty());
    CHECK_FALSE(row.about.means.ends_with('.'));
    if (!is_number(row)) continue;
    TW_HOLDS(listed, !row.about.searched || row.about.set_by != plan::set_by::measured);
    if (row.about.searched && row.about.sizes.empty()) {
      TW_HOLDS(listed, row.about.choose_low >= row.about.low && row.about.choose_high <= row.about.high);
      TW_HOLDS(listed, row.about.choose_low < row.about.choose_high);
    }
    for (const double size : row.about.sizes) TW_HOLDS(listed, size >= row.about.low && size <= row.about.high);
    TW_HOLDS(listed, row.about.doubt.size >= 0.0);
    TW_HOLDS(listed, row.about.doubt.kind != plan::doubt_kind::factor || row.about.doubt.size > 1.0);
  }
}

TEST_CASE("validate: all mistakes of a plan at once, each with the key it is about") {
  plan::build build;
  plan::set(build, "life.food[1].amount", "24 g/d");
  plan::set(build, "life.food[1].name", "shrimp");
  plan::set(build, "life.arrivals.ph", "15");
  plan::set(build, "units", "us");
  std::vector<std::string> paths;
  for (const plan::mistake& m : plan::validate(build)) paths.push_back(m.path);
  const auto has = [&](std::string_view path) { return std::find(paths.begin(), paths.end(), path) != paths.end(); };
  TW_HOLDS(found, has("life.food[shrimp].protein"));
  TW_HOLDS(found, has("life.food[shrimp].kind"));
  TW_HOLDS(found, has("life.arrivals.ph"));
  TW_HOLDS(found, has("life.arrivals"));  // needs one of the three ways to count ammonia, and the pH its scale
  TW_HOLDS(found, has("life.arrivals.vessel"));
  TW_HOLDS(found, !has("units"));
  plan::set(build, "title", "a\x1b[31mtitle");
  CHECK(plan::validate(build).front().path == "title");
}

TEST_CASE("validate: a doubt is a number from 0 on, a word is one of its list, alternatives exclude each other") {
  const auto reasons = [](const plan::build& build) {
    std::string all;
    for (const plan::mistake& m : plan::validate(build)) all += m.path + ": " + m.reason + "\n";
    return all;
  };
  plan::build build;
  build.life.emplace().room.emplace();
  build.life->room->width = metres(0.5);
  build.life->room->run.give(1.0, {}, {-0.1, true});
  TW_HOLDS(found, reasons(build) == "life.room.run: has a doubt that is not a number from 0 on\n");
  build.life->room->run.give(1.0, {}, {std::nan(""), true});
  TW_HOLDS(found, !reasons(build).empty());
  build.life->room->run = metres(1.0);
  TW_HOLDS(found, reasons(build).empty());
  build.life->surface.emplace_back();
  TW_HOLDS(found, reasons(build) == "life.surface[1]: needs one of area, volume, bed, rock\n");
  build.life->surface[0].area = square_metres(2.0);
  build.life->surface[0].bed = square_metres(2.0);
  TW_HOLDS(found,
           reasons(build).starts_with("life.surface[1].bed: is given beside area; give one of them, not both\n"));
  build.life->surface[0].bed.clear();
  TW_HOLDS(found, reasons(build).empty());
  build.units.give(7);
  TW_HOLDS(found, reasons(build) == "units: is not one of its words\n");
  plan::build none;
  TW_HOLDS(found, reasons(none) == ": nothing to assess; expected a table such as [water]\n");
}

TEST_CASE("validate: guesses at what was meant") {
  plan::build build;
  plan::set(build, "life.arrivals.temperature", "77 °C");
  const std::string reason = reason_at(build, "life.arrivals.temperature");
  TW_HOLDS(found, reason.find("did you mean 77 °F?") != std::string::npos);
}

TEST_CASE("2 000 plans drawn from the descriptions: mistakes are data, and none is about a number within its limits") {
  for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
    CAPTURE(seed);
    const plan::build build = random_plan(seed, 0.2 + 0.75 * static_cast<double>(seed % 7) / 6.0);
    for (const plan::mistake& m : plan::validate(build)) {
      if (m.reason.find("is not possible; expected") != std::string::npos) FAIL_CHECK(m.path << ": " << m.reason);
      if (m.reason.empty()) FAIL_CHECK(m.path);
    }
  }
}
