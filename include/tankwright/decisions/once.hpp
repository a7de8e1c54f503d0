// SPDX-License-Identifier: BSL-1.0
/// @file
/// Something that is worked out when it is first asked for, and kept.
#pragma once

#include <exception>
#include <optional>
#include <tankwright/core/errors.hpp>

namespace tankwright::decisions {

/// Something that is worked out when it is first asked for. What went wrong then goes wrong for everybody who asks.
template <class T>
class once {
 public:
  template <class Make>
  [[nodiscard]] const T& get(Make make) const {
    if (value_) return *value_;
    if (failed_) std::rethrow_exception(failed_);
    try {
      return value_.emplace(make());
    } catch (const error&) {
      failed_ = std::current_exception();
      throw;
    }
  }

 private:
  mutable std::optional<T> value_{};
  mutable std::exception_ptr failed_{};
};

}  // namespace tankwright::decisions
