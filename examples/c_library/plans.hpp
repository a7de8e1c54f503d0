// SPDX-License-Identifier: BSL-1.0
/// @file
/// The plans behind the handles. A handle is a number that leads to a plan through a table, never an address: one that
/// was freed, or never was one, is not found, and no number is given twice.
#pragma once

#include <memory>
#include <mutex>
#include <shared_mutex>
#include <tankwright/plan/build.hpp>
#include <utility>

#include "tankwright.h"

namespace c_library {

/// A plan that several threads may use.
class shared_plan {
 public:
  explicit shared_plan(tankwright::plan::build build) noexcept : build_{std::move(build)} {}

  /// The plan as it is now. What takes long works on this copy, which costs microseconds.
  [[nodiscard]] tankwright::plan::build copy() const {
    const std::shared_lock reading{mutex_};
    return build_;
  }
  template <class Use>
  auto look(Use use) const {
    const std::shared_lock reading{mutex_};
    return use(build_);
  }
  template <class Change>
  auto change(Change make) {
    const std::unique_lock writing{mutex_};
    return make(build_);
  }

 private:
  mutable std::shared_mutex mutex_{};
  tankwright::plan::build build_;
};

/// A new handle for a plan.
[[nodiscard]] tw_plan* keep(tankwright::plan::build build);

/// The plan of a handle; throws `refusal`. It lives as long as somebody holds it, also when the handle is freed.
[[nodiscard]] std::shared_ptr<shared_plan> plan_of(const tw_plan* handle);

/// Forget a handle; throws `refusal`.
void forget(const tw_plan* handle);

}  // namespace c_library
