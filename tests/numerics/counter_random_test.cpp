// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/counter_random.hpp>

#include <cmath>
#include <limits>

#include "support/check.hpp"

using namespace tankwright::numerics;

namespace {

/// SplitMix64 as its paper writes it: a state that grows by the golden gamma, scrambled on the way out.
struct split_mix {
  std::uint64_t state;
  std::uint64_t next() {
    std::uint64_t z = state += 0x9E3779B97F4A7C15u;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return z ^ (z >> 31);
  }
};

}  // namespace

TEST_CASE("counter random: number n is that of SplitMix64 after n steps") {
  for (const std::uint64_t seed : {0u, 1u, 2026u}) {
    split_mix other{split_mix{seed}.next()};
    const counter_random random{seed};
    for (std::uint64_t n = 0; n < 1000; ++n) {
      CHECK(random.uniform(n) == (static_cast<double>(other.next() >> 12) + 0.5) * 0x1p-52);
    }
  }
  // The first five numbers of seed 1234567, as printed with the reference implementation.
  split_mix printed{1234567};
  for (const std::uint64_t wanted : {6457827717110365317u, 3203168211198807973u, 9817491932198370423u,
                                     4593380528125082431u, 16408922859458223821u}) {
    CHECK(printed.next() == wanted);
  }
}

TEST_CASE("counter random: never an end of the interval, always a number") {
  const counter_random random{7};
  for (std::uint64_t n = 0; n < 100'000; ++n) {
    const double u = random.uniform(n);
    CHECK_UNARY(u > 0.0 && u < 1.0);
    CHECK_UNARY(std::isfinite(random.normal(n)));
  }
  CHECK(std::isfinite(random.normal(std::numeric_limits<std::uint64_t>::max())));
}
