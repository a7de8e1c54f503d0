// SPDX-License-Identifier: BSL-1.0
// A wrong expectation: ctest runs this under WILL_FAIL, so that a suite that cannot fail is noticed.
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

TEST_CASE("a wrong expectation fails") {
  TW_CHECK((evidence{"none", kind::regression, "red on purpose"}), litres(1.0), litres(1.001), within(litres(0.0001)));
}
