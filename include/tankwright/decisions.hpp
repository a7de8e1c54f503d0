// SPDX-License-Identifier: BSL-1.0
/// @file
/// The job: every decision answered, its bands, what would make it hold, its pictures.
#pragma once

#include <tankwright/decisions/advice.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/cure_words.hpp>
#include <tankwright/decisions/figure.hpp>
#include <tankwright/decisions/figures.hpp>
#include <tankwright/decisions/first_screen.hpp>
#include <tankwright/decisions/measure_first.hpp>
#include <tankwright/decisions/scenarios.hpp>
#include <tankwright/decisions/shares.hpp>
#include <tankwright/decisions/verdict.hpp>
#include <tankwright/decisions/would_hold.hpp>
