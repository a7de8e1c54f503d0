// SPDX-License-Identifier: BSL-1.0
/// @file
/// The border between C and C++: no exception crosses it, texts are checked on the way in and handed over on the way out.
#pragma once

#include <cstdlib>
#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tankwright/exchange/json_text.hpp>
#include <tankwright/exchange/read.hpp>
#include <utility>
#include <vector>

#include "tankwright.h"

namespace c_library {

/// What is refused with a status of its own, and what more is told of it.
class told_refusal : public std::runtime_error {
 public:
  told_refusal(tw_status code, const std::string& reason) : std::runtime_error{reason}, code_{code} {}
  [[nodiscard]] tw_status code() const noexcept { return code_; }
  /// Adds to the error, an object that is open.
  virtual void write(tankwright::exchange::json_text& out) const = 0;

 private:
  tw_status code_;
};

/// What the C interface itself refuses.
class refusal final : public told_refusal {
 public:
  using told_refusal::told_refusal;
  void write(tankwright::exchange::json_text&) const override {}
};

/// A text that is no document, or whose plan cannot be used: all that is wrong.
class unusable_text final : public told_refusal {
 public:
  unusable_text(tw_status code, std::vector<tankwright::exchange::located_mistake> mistakes);
  void write(tankwright::exchange::json_text& out) const override;

 private:
  std::vector<tankwright::exchange::located_mistake> mistakes_;
};

/// The status of the exception in flight, and its text where `error` is not null. `about`, where it is not null, is the
/// key or the finding that was asked for.
[[nodiscard]] tw_status told(char** error, const char* about) noexcept;

/// Run the body of a function of the interface.
template <class Body>
[[nodiscard]] tw_status guarded(char** error, Body body, const char* about = nullptr) noexcept {
  if (error) *error = nullptr;
  try {
    body();
    return TW_OK;
  } catch (...) {
    return told(error, about);
  }
}

/// Refuse a null pointer; `what` names it.
void need(const void* pointer, std::string_view what);

/// A text that came in: not null, UTF-8, of a length that a plan can hold.
[[nodiscard]] std::string_view text_in(const char* text, std::string_view what);

/// A text that goes out, for `tw_free`; refuses one with a zero byte, which C would cut short.
[[nodiscard]] char* text_out(std::string_view text);

/// A text on its way out, freed where something else fails before it is handed over.
struct free_text {
  void operator()(char* text) const noexcept { std::free(text); }
};
using owned_text = std::unique_ptr<char, free_text>;

/// Make an output hold nothing until there is something; refuses a null pointer.
template <class T>
void empty(T** out, std::string_view what) {
  need(out, what);
  *out = nullptr;
}

}  // namespace c_library
