// SPDX-License-Identifier: BSL-1.0
#include <tankwright/tankwright.hpp>

tankwright::length from_the_other_unit() { return tankwright::metres(2.0); }
