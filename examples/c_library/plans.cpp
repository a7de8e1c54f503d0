// SPDX-License-Identifier: BSL-1.0
#include "plans.hpp"

#include <cstdint>
#include <limits>
#include <unordered_map>

#include "border.hpp"

namespace c_library {

namespace {

struct table {
  std::shared_mutex mutex{};
  std::unordered_map<std::uintptr_t, std::shared_ptr<shared_plan>> plans{};
  std::uintptr_t made = 0;
};

/// Never destroyed: a thread may still be at work while the program ends.
table& all() {
  static table& one = *new table;
  return one;
}

/// Odd, so that counting gives every number once; far apart, so that small integers and addresses are no handles.
constexpr auto stride = static_cast<std::uintptr_t>(0x9E3779B97F4A7C15u);

[[nodiscard]] std::uintptr_t number_of(const tw_plan* handle) noexcept {
  return reinterpret_cast<std::uintptr_t>(handle);
}

[[noreturn]] void refuse(const tw_plan* handle) {
  throw refusal{TW_BAD_HANDLE, handle ? "this handle is no plan, or its plan was freed" : "the plan is NULL"};
}

}  // namespace

tw_plan* keep(tankwright::plan::build build) {
  auto plan = std::make_shared<shared_plan>(std::move(build));
  table& t = all();
  const std::unique_lock writing{t.mutex};
  // Half of a large number never comes back to its beginning; on machines of 32 bits it would after 2,000 million plans.
  if (t.made == std::numeric_limits<std::uintptr_t>::max() / 2) throw std::bad_alloc{};
  const std::uintptr_t number = ++t.made * stride;
  t.plans.emplace(number, std::move(plan));
  return reinterpret_cast<tw_plan*>(number);
}

std::shared_ptr<shared_plan> plan_of(const tw_plan* handle) {
  table& t = all();
  const std::shared_lock reading{t.mutex};
  const auto found = t.plans.find(number_of(handle));
  if (found == t.plans.end()) refuse(handle);
  return found->second;
}

void forget(const tw_plan* handle) {
  std::shared_ptr<shared_plan> last;  // destroyed outside the lock
  table& t = all();
  const std::unique_lock writing{t.mutex};
  const auto found = t.plans.find(number_of(handle));
  if (found == t.plans.end()) refuse(handle);
  last = std::move(found->second);
  t.plans.erase(found);
}

}  // namespace c_library
