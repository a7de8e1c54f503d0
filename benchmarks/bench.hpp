// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the benchmarks share. Read the counter `each`: the time for one value or one call; compare within one run only.
#pragma once

#include <benchmark/benchmark.h>

namespace tankwright::bench {

/// Report the time per value, when one iteration handles `values` of them.
inline void per_value(benchmark::State& state, double values) {
  state.counters["each"] = benchmark::Counter(values * static_cast<double>(state.iterations()),
                                              benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
}

}  // namespace tankwright::bench
