// SPDX-License-Identifier: BSL-1.0
#include <tankwright/tankwright.hpp>

tankwright::length from_the_other_unit();

int main() {
  return tankwright::in_metres(from_the_other_unit()) == tankwright::in_metres(tankwright::metres(2.0)) ? 0 : 1;
}
