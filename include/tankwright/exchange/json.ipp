// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <nlohmann/json.hpp>
#include <tankwright/core/inline.hpp>
#include <tankwright/exchange/json.hpp>

namespace tankwright::exchange {

namespace detail {

/// Builds the document while the text is read: nothing is built twice, and depth and repeated keys are seen at once.
class json_builder {
 public:
  explicit json_builder(std::string_view text) : text_{text} {}

  [[nodiscard]] node take() noexcept { return std::move(root_); }

  bool null() { return put(other("null")); }
  bool boolean(bool on) {
    node n;
    n.is = node::kind::flag;
    n.flag = on;
    return put(std::move(n));
  }
  bool number_integer(std::int64_t value) { return put(number(static_cast<double>(value))); }
  bool number_unsigned(std::uint64_t value) { return put(number(static_cast<double>(value))); }
  bool number_float(double value, const std::string&) { return put(number(value)); }
  bool string(std::string& text) {
    node n;
    n.is = node::kind::text;
    n.text = std::move(text);
    return put(std::move(n));
  }
  bool binary(nlohmann::json::binary_t&) { return put(other("binary")); }
  bool start_object(std::size_t) { return open(node::kind::table); }
  bool end_object() { return close(); }
  bool start_array(std::size_t) { return open(node::kind::list); }
  bool end_array() { return close(); }
  bool key(std::string& name) {
    if (open_.back()->find(name)) throw syntax_error{"the key \"" + name + "\" is given twice in one table", 0};
    name_ = std::move(name);
    return true;
  }
  bool parse_error(std::size_t position, const std::string&, const nlohmann::json::exception& mistake) {
    const auto end = text_.begin() + static_cast<std::ptrdiff_t>(std::min(position, text_.size()));
    std::string reason = mistake.what();  // "[json...] parse error at line 1, column 2: syntax error while ..."
    if (const auto colon = reason.find(": "); colon != std::string::npos) reason.erase(0, colon + 2);
    throw syntax_error{reason, 1 + static_cast<std::size_t>(std::count(text_.begin(), end, '\n'))};
  }

 private:
  [[nodiscard]] static node number(double value) {
    node n;
    n.is = node::kind::number;
    n.number = value;
    return n;
  }
  [[nodiscard]] static node other(const char* what) {
    node n;
    n.is = node::kind::other;
    n.text = what;
    return n;
  }
  node* place(node n) {
    if (open_.empty()) return &(root_ = std::move(n));
    node& above = *open_.back();
    if (above.is == node::kind::list) return &above.items.emplace_back(std::move(n));
    return &above.entries.emplace_back(std::move(name_), std::move(n)).second;
  }
  bool put(node n) {
    place(std::move(n));
    return true;
  }
  bool open(node::kind kind) {
    if (open_.size() > deepest_document) throw syntax_error{"tables are nested without end", 0};
    node n;
    n.is = kind;
    // An open node is the last of its parent, so nothing moves it while it is open.
    open_.push_back(place(std::move(n)));
    return true;
  }
  bool close() {
    open_.pop_back();
    return true;
  }

  std::string_view text_;
  node root_{};
  std::vector<node*> open_{};
  std::string name_{};
};

}  // namespace detail

TANKWRIGHT_INLINE node document_from_json(std::string_view text) {
  check_text(text, notation::json);
  detail::json_builder builder{text};
  nlohmann::json::sax_parse(text.begin(), text.end(), &builder);
  node made = builder.take();
  if (made.is != node::kind::table) throw syntax_error{"a plan is one table in braces: { ... }", 1};
  return made;
}

}  // namespace tankwright::exchange
