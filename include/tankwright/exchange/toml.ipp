// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/exchange/toml.hpp>

namespace tankwright::exchange::detail {

/// A step of toml++ that it took for granted did not hold.
struct broken_step {};
[[noreturn]] inline void refuse_step() { throw broken_step{}; }

}  // namespace tankwright::exchange::detail

// toml++ 3.3 takes for granted what a file can break ("[." or "a = [" and a line separator): an assertion that ends the
// program, or in a release build nothing, on which Clang relies. Here it throws.
#pragma push_macro("NDEBUG")
#undef NDEBUG
#if !defined(TOML_ASSERT)
#define TOML_ASSERT(expr) \
  (static_cast<bool>(expr) ? static_cast<void>(0) : ::tankwright::exchange::detail::refuse_step())
#endif
#include <toml++/toml.h>
#pragma pop_macro("NDEBUG")

namespace tankwright::exchange {

namespace detail {

[[nodiscard]] inline node node_from(const toml::node& from, std::size_t depth) {
  node made;
  made.line = from.source().begin.line;
  if (depth > deepest_document) throw syntax_error{"tables are nested without end", made.line};
  if (const auto* table = from.as_table()) {
    made.entries.reserve(table->size());
    for (const auto& [key, value] : *table) made.entries.emplace_back(key.str(), node_from(value, depth + 1));
    // toml++ keeps keys in alphabetical order; a plan is read and answered in the order of the file.
    std::stable_sort(made.entries.begin(), made.entries.end(),
                     [](const auto& a, const auto& b) { return a.second.line < b.second.line; });
  } else if (const auto* list = from.as_array()) {
    made.is = node::kind::list;
    made.items.reserve(list->size());
    for (const toml::node& value : *list) made.items.push_back(node_from(value, depth + 1));
  } else if (const auto text = from.value_exact<std::string>()) {
    made.is = node::kind::text;
    made.text = *text;
  } else if (from.is_number()) {
    made.is = node::kind::number;
    made.number = from.value<double>().value();
  } else if (const auto flag = from.value_exact<bool>()) {
    made.is = node::kind::flag;
    made.flag = *flag;
  } else {
    made.is = node::kind::other;
    made.text = from.is_date() ? "a date" : from.is_time() ? "a time" : "a date and time";
  }
  return made;
}

/// Whether a line of the text has a quotation mark too few.
[[nodiscard]] inline bool has_open_text(std::string_view text, std::size_t line) {
  for (; line > 1 && !text.empty(); --line) text.remove_prefix(std::min(text.find('\n'), text.size() - 1) + 1);
  text = text.substr(0, text.find('\n'));
  return std::count(text.begin(), text.end(), '"') % 2 == 1;
}

/// A text of several lines that is never closed is noticed at the end of the file: where does it begin?
[[nodiscard]] inline std::size_t line_of_open_text(std::string_view text, std::size_t noticed) {
  for (const std::string_view quotes : {"\"\"\"", "'''"}) {
    std::size_t count = 0, last = 0;
    for (std::size_t at = text.find(quotes); at != std::string_view::npos; at = text.find(quotes, at + 3)) {
      ++count;
      last = at;
    }
    if (count % 2 == 1) return 1 + static_cast<std::size_t>(std::count(text.begin(), text.begin() + last, '\n'));
  }
  return noticed;
}

/// The line at which a step of toml++ breaks: the first that breaks it when the text ends there.
[[nodiscard]] inline std::size_t line_of_broken_step(std::string_view text) {
  std::vector<std::size_t> ends;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] == '\n') ends.push_back(at);
  }
  const auto is_whole = [&](std::size_t end) {
    try {
      (void)toml::parse(text.substr(0, end));
      return true;
    } catch (const broken_step&) {
      return false;
    } catch (const toml::parse_error&) {
      return true;
    }
  };
  return 1 + static_cast<std::size_t>(std::partition_point(ends.begin(), ends.end(), is_whole) - ends.begin());
}

}  // namespace detail

TANKWRIGHT_INLINE node document_from_toml(std::string_view text) {
  check_text(text, notation::toml);
  try {
    return detail::node_from(toml::parse(text), 0);
  } catch (const toml::parse_error& mistake) {
    const std::size_t line = mistake.source().begin.line;
    const std::size_t begins = detail::line_of_open_text(text, line);
    std::string reason{mistake.description()};
    if (begins != line) {
      reason = "a text begins here and is never closed";
    } else if (reason.find("control characters") != std::string::npos && detail::has_open_text(text, line)) {
      reason = "a text begins here and is not closed on its line: a quotation mark is missing";
    }
    throw syntax_error{reason, begins};
  } catch (const detail::broken_step&) {
    throw syntax_error{"a name or a value is missing", detail::line_of_broken_step(text)};
  }
}

}  // namespace tankwright::exchange
