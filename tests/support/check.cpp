// SPDX-License-Identifier: BSL-1.0
#include "check.hpp"

#include <array>
#include <cstdio>
#include <fstream>
#include <map>
#include <stdexcept>
#include <tuple>

namespace tankwright::testing {

namespace {

constexpr std::array kind_names{"published",       "library",     "identity", "property",  "wiring",
                                "common practice", "from memory", "chosen",   "regression"};

struct tally {
  long checks = 0;
  double worst_share = 0.0;  // of the tolerance
};

auto& tallies() {
  static std::map<std::tuple<std::string, kind, std::string>, tally> all;
  return all;
}

tally& tally_of(const evidence& about) { return tallies()[{about.function, about.rests_on, about.source}]; }

}  // namespace

std::string_view kind_text(kind k) noexcept { return kind_names[static_cast<std::size_t>(k)]; }

kind kind_from_text(std::string_view text) {
  for (std::size_t i = 0; i < kind_names.size(); ++i) {
    if (text == kind_names[i]) return static_cast<kind>(i);
  }
  throw std::runtime_error("not a kind of evidence: " + std::string{text});
}

comparison compare_numbers(double actual, double expected, tolerance allowed, std::string_view unit) {
  const double limit = std::fmax(allowed.absolute, allowed.relative * std::fabs(expected));
  const double deviation = actual == expected ? 0.0 : std::fabs(actual - expected);
  if (deviation <= limit) return {true, deviation, limit, {}};
  char text[256];
  std::snprintf(text, sizeof text, "actual %.15g, expected %.15g, differs by %.3g, tolerance %.3g %.*s", actual,
                expected, deviation, limit, static_cast<int>(unit.size()), unit.data());
  return {false, deviation, limit, text};  // also where the tolerance is negative or not a number
}

void record(const evidence& about, const comparison& outcome) {
  tally& t = tally_of(about);
  ++t.checks;
  const double share = outcome.deviation == 0.0 ? 0.0 : outcome.deviation / outcome.allowed;
  if (!(share <= t.worst_share)) t.worst_share = share;
}

void record_property(const evidence& about, bool holds) {
  tally& t = tally_of(about);
  ++t.checks;
  if (!holds) t.worst_share = std::numeric_limits<double>::infinity();
}

void hold(const evidence& about, const comparison& outcome, const place& at) {
  record(about, outcome);
  if (outcome.good) {
    CHECK(outcome.good);  // counted
  } else {
    const std::string text = about.function + ": " + at.expression + ": " + outcome.text;
    ADD_FAIL_CHECK_AT(at.file, at.line, text);
  }
}

void hold(const evidence& about, bool holds, const place& at) {
  record_property(about, holds);
  if (holds) {
    CHECK(holds);
  } else {
    const std::string text = about.function + ": " + at.expression;
    ADD_FAIL_CHECK_AT(at.file, at.line, text);
  }
}

void write_evidence(const std::string& directory, const std::string& program) {
  std::ofstream out{directory + "/" + program + ".tsv"};
  for (const auto& [key, t] : tallies()) {
    const auto& [function, rests_on, source] = key;
    out << function << '\t' << kind_text(rests_on) << '\t' << t.checks << '\t' << t.worst_share << '\t' << source
        << '\n';
  }
  if (!out) throw std::runtime_error("cannot write evidence to " + directory);
}

}  // namespace tankwright::testing
