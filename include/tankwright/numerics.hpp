// SPDX-License-Identifier: BSL-1.0
/// @file
/// Arithmetic on raw numbers for all floors above: roots, integrals, differential equations, distributions, and how
/// sure a result is. `monte_carlo.hpp` costs compile time; `tankwright.hpp` leaves it out.
#pragma once

#include <tankwright/numerics/counter_random.hpp>
#include <tankwright/numerics/course.hpp>
#include <tankwright/numerics/line_fit.hpp>
#include <tankwright/numerics/monte_carlo.hpp>
#include <tankwright/numerics/normal.hpp>
#include <tankwright/numerics/quadrature.hpp>
#include <tankwright/numerics/root.hpp>
#include <tankwright/numerics/solids.hpp>
#include <tankwright/numerics/student_t.hpp>
#include <tankwright/numerics/uncertainty.hpp>
