// SPDX-License-Identifier: BSL-1.0
/// @file
/// How thick is the wall of an inch pipe? The two schedules that are sold, as words that a plan needs.
#pragma once

namespace tankwright::plumbing {

enum class pvc_schedule { schedule_40, schedule_80 };

// Declared ahead, for a plan that says how to make them: `pipe_run.hpp`.
class loss_coefficient;
class pipe_bore;
struct pipe_run;

}  // namespace tankwright::plumbing
