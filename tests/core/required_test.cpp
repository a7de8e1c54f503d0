// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/required.hpp>

#include <concepts>
#include <string>

#include "support/check.hpp"

using namespace tankwright;

// That a forgotten or a wrong field stops the compilation is tested by programs that must not compile.

namespace {

struct tank {
  required<length> depth;
  required<std::string> label;
  length rim = metres(0.05);
};

}  // namespace

TEST_CASE("required: a field takes its type and gives it back") {
  const tank t{.depth = metres(0.9), .label = "display"};
  CHECK(t.depth.get() == metres(0.9));
  CHECK(t.label->size() == 7);
  CHECK(t.rim == metres(0.05));
  const length copy = t.depth;
  CHECK(copy == metres(0.9));
  tank other = t;
  other.depth = metres(0.7);
  CHECK(other.depth.get() == metres(0.7));
  CHECK(t.depth.get() == metres(0.9));
}

TEST_CASE("required: it adds nothing and stays constexpr") {
  static_assert(sizeof(required<length>) == sizeof(length));
  constexpr required<length> depth{metres(0.9)};
  static_assert(depth.get() == metres(0.9));
  static_assert(std::convertible_to<required<length>, length>);
}
