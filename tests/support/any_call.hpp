// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the helpers of the tests take for a call, so that each of them is compiled once and not for each call of it.
#pragma once

#include <type_traits>

namespace tankwright::testing {

/// Any call with these arguments, its result dropped, for as long as that call lives. The walks are compiled once.
template <class... Args>
class any_call {
 public:
  template <class Call>
  requires(!std::is_same_v<std::remove_cvref_t<Call>, any_call>)
      any_call(Call&& call)  // NOLINT(google-explicit-constructor): a test writes the call itself
      : call_{const_cast<void*>(static_cast<const void*>(&call))}, invoke_{[](void* of, Args... args) {
          (void)(*static_cast<std::remove_reference_t<Call>*>(of))(args...);
        }} {}
  void operator()(Args... args) const { invoke_(call_, args...); }

 private:
  void* call_;
  void (*invoke_)(void*, Args...);
};

}  // namespace tankwright::testing
