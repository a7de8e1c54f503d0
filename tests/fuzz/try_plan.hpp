// SPDX-License-Identifier: BSL-1.0
/// @file
/// Any bytes as a plan file: it is read, refused with reasons, or assessed; what comes back is finite and in order, and the
/// plan written out and read again is the same plan. Shared by the fuzzer and by the test of broken files.
#pragma once

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/exchange.hpp>
#include <tankwright/plan/path.hpp>

namespace tankwright::testing {

inline void demand(bool holds, std::string_view what, std::string_view text) {
  if (holds) return;
  std::fprintf(stderr, "%.*s:\n%.*s\n", static_cast<int>(what.size()), what.data(), static_cast<int>(text.size()),
               text.data());
  std::abort();
}

/// What became of a text.
enum class outcome { refused, assessed };

/// Throws nothing but what the library never promised: everything else ends the program.
inline outcome try_plan(std::string_view text, exchange::notation in) {
  const auto read = exchange::read_plan(text, in);
  for (const auto& m : read.mistakes) {
    const std::string line = exchange::line_of(m, "plan");
    demand(!m.what.reason.empty() && line.size() < 4000, "a mistake without a reason, or a long one", text);
    demand(line.find('\0') == std::string::npos && line.find('\x1b') == std::string::npos, "raw bytes", text);
  }
  if (!read.usable()) return outcome::refused;
  plan::build build = read.build;
  const std::string written = exchange::to_toml(build);
  const auto again = exchange::read_plan(written, exchange::notation::toml);
  demand(again.usable(), again.usable() ? "" : "written so that it is refused: " + again.mistakes.front().what.reason,
         text);
  demand(exchange::to_toml(again.build) == written, "does not read back as itself", text);
  if (build.life) plan::set(build, "life.forecast", "false");  // some milliseconds
  for (const decisions::finding& f : decisions::assess(build).findings) {
    for (const decisions::number& n : f.numbers) {
      const bool ordered = n.value.low <= n.value.central && n.value.central <= n.value.high;
      demand(ordered || std::isinf(n.value.central), std::string{f.id} + "." + std::string{n.id} + " out of order",
             text);
    }
    const bool silent = f.verdict == decisions::verdict::not_enough_known && f.note.empty() && f.measure_next.empty();
    demand(!silent, std::string{f.id} + " is silent without a reason", text);
  }
  return outcome::assessed;
}

}  // namespace tankwright::testing
