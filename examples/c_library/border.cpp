// SPDX-License-Identifier: BSL-1.0
#include "border.hpp"

#include <cmath>
#include <cstdlib>
#include <cstring>
#include <new>
#include <tankwright/core/errors.hpp>
#include <tankwright/exchange/document.hpp>
#include <tankwright/exchange/json_text.hpp>
#include <tankwright/exchange/report.hpp>
#include <tankwright/plan/mistake.hpp>

#include "answers_json.hpp"

namespace c_library {

namespace tw = tankwright;

namespace {

void text_unless_empty(tw::exchange::json_text& out, std::string_view key, std::string_view value) {
  if (!value.empty()) out.key(key).text(value);
}

/// The library's errors about a key or a question name it as their argument.
bool is_about_a_key(const tw::error& e) noexcept { return e.details().function == "tankwright::plan::at_path"; }
bool is_a_question(const tw::error& e) noexcept { return e.details().function.starts_with("tankwright::decisions::"); }

tw_status code_of(const tw::error& e) noexcept {
  if (dynamic_cast<const tw::plan::invalid_plan*>(&e)) return TW_BAD_PLAN;
  if (dynamic_cast<const tw::text_error*>(&e)) return TW_BAD_VALUE;
  if (is_about_a_key(e)) return TW_BAD_KEY;
  if (is_a_question(e)) return TW_BAD_ARGUMENT;
  if (dynamic_cast<const tw::out_of_range*>(&e)) return TW_OUT_OF_RANGE;
  if (dynamic_cast<const tw::no_convergence*>(&e)) return TW_NO_CONVERGENCE;
  return TW_INVALID_INPUT;
}

/// What the library's own error carries.
void write_details(tw::exchange::json_text& out, const tw::error& e) {
  const tw::diagnosis& d = e.details();
  text_unless_empty(out, "function", d.function);
  if (!is_about_a_key(e) && !is_a_question(e)) text_unless_empty(out, "argument", d.argument);
  if (std::isfinite(d.value)) out.key("value").number(d.value);
  if (std::isfinite(d.low)) out.key("low").number(d.low);
  if (std::isfinite(d.high)) out.key("high").number(d.high);
  text_unless_empty(out, "unit", d.unit);
  text_unless_empty(out, "source", d.source);
  if (const auto* text = dynamic_cast<const tw::text_error*>(&e)) {
    out.key("text").text(text->text()).key("position").number(static_cast<double>(text->position()));
    out.key("reason").text(text->reason()).key("expected").text(text->expected());
  }
  if (const auto* plan = dynamic_cast<const tw::plan::invalid_plan*>(&e)) {
    tw::exchange::write_mistakes(out, located(plan->mistakes()));
  }
}

/// Write an error; `details` adds what it carries. Without memory for it there is no text.
template <class Details>
void hand_over(char** error, tw_status code, std::string_view message, const char* about, Details details) {
  if (!error) return;
  tw::exchange::json_text out{0};
  out.open_object().key("code").number(code).key("name").text(tw_status_name(code)).key("message").text(message);
  if (about) out.key("path").text(about);
  details(out);
  out.close_object();
  *error = text_out(std::move(out).take());
}

/// The exception in flight as code and text; the code is set first, because the text needs memory.
void tell(char** error, const char* about, tw_status& code) {
  const auto nothing_more = [](const auto&) {};
  try {
    throw;
  } catch (const told_refusal& e) {
    code = e.code();
    hand_over(error, code, e.what(), about, [&](auto& out) { e.write(out); });
  } catch (const tw::error& e) {
    code = code_of(e);
    hand_over(error, code, e.what(), about, [&](auto& out) { write_details(out, e); });
  } catch (const std::bad_alloc&) {
    code = TW_NO_MEMORY;
    hand_over(error, code, "there is not enough memory", about, nothing_more);
  } catch (const std::exception& e) {
    hand_over(error, code, e.what(), about, nothing_more);
  } catch (...) {
    hand_over(error, code, "an exception that is none of the library's", about, nothing_more);
  }
}

std::string lines_of(const std::vector<tw::exchange::located_mistake>& mistakes) {
  std::string all;
  for (const auto& m : mistakes) all += (all.empty() ? "" : "\n") + tw::exchange::line_of(m, "plan");
  return all;
}

}  // namespace

unusable_text::unusable_text(tw_status code, std::vector<tw::exchange::located_mistake> mistakes)
    : told_refusal{code, lines_of(mistakes)}, mistakes_{std::move(mistakes)} {}

void unusable_text::write(tw::exchange::json_text& out) const {
  if (const std::size_t line = mistakes_.front().line; line > 0) out.key("line").number(static_cast<double>(line));
  tw::exchange::write_mistakes(out, mistakes_);
}

tw_status told(char** error, const char* about) noexcept {
  tw_status code = TW_INTERNAL;
  try {
    tell(error, about, code);
  } catch (...) {  // no memory to say what it was
    if (code == TW_INTERNAL) code = TW_NO_MEMORY;
  }
  return code;
}

void need(const void* pointer, std::string_view what) {
  if (!pointer) throw refusal{TW_BAD_ARGUMENT, std::string{what} + " is NULL"};
}

std::string_view text_in(const char* text, std::string_view what) {
  need(text, what);
  const std::size_t size = std::strlen(text);
  if (size > tw::exchange::largest_document) {
    throw refusal{TW_BAD_VALUE, std::string{what} + " has " + std::to_string(size) + " bytes; at most " +
                                    std::to_string(tw::exchange::largest_document) + " are taken"};
  }
  const std::string_view view{text, size};
  for (std::size_t at = 0; at < size;) {
    const std::size_t length = tw::exchange::utf8_length(view, at);
    if (length == 0) {
      throw refusal{TW_BAD_VALUE, std::string{what} + " is not UTF-8 at byte " + std::to_string(at + 1)};
    }
    at += length;
  }
  return view;
}

char* text_out(std::string_view text) {
  if (text.find('\0') != std::string_view::npos) {
    throw refusal{TW_BAD_VALUE, "this text has a zero byte in it, where C would end it; tw_plan_values shows it"};
  }
  auto* out = static_cast<char*>(std::malloc(text.size() + 1));
  if (!out) throw std::bad_alloc{};
  std::memcpy(out, text.data(), text.size());
  out[text.size()] = '\0';
  return out;
}

}  // namespace c_library

// Here and not with the other functions: the module of the formulas has no plans.
extern "C" {

const char* tw_status_name(tw_status status) {
  switch (status) {
    case TW_OK:
      return "ok";
    case TW_BAD_HANDLE:
      return "bad_handle";
    case TW_BAD_ARGUMENT:
      return "bad_argument";
    case TW_BAD_DOCUMENT:
      return "bad_document";
    case TW_BAD_PLAN:
      return "bad_plan";
    case TW_BAD_KEY:
      return "bad_key";
    case TW_BAD_VALUE:
      return "bad_value";
    case TW_INVALID_INPUT:
      return "invalid_input";
    case TW_OUT_OF_RANGE:
      return "out_of_range";
    case TW_NO_CONVERGENCE:
      return "no_convergence";
    case TW_CANCELLED:
      return "cancelled";
    case TW_NO_MEMORY:
      return "no_memory";
    case TW_INTERNAL:
      return "internal";
    default:
      return "unknown";
  }
}

}  // extern "C"
