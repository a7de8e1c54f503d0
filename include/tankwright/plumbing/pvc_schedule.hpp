// SPDX-License-Identifier: BSL-1.0
/// @file
/// How thick is the wall of an inch pipe? The two schedules that are sold, as words that a plan needs.
#pragma once

namespace tankwright::plumbing {

enum class pvc_schedule { schedule_40, schedule_80 };

}  // namespace tankwright::plumbing
