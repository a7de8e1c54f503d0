// SPDX-License-Identifier: BSL-1.0
/// @file
/// A table of a plan file, read key by key: every mistake names file, line and key, and says what is accepted.
#pragma once

#include <optional>
#include <set>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include <toml++/toml.h>

#include <tankwright/text/quantity.hpp>
#include <tankwright/core/validity.hpp>

namespace plan_file {

/// A mistake in a plan file. `what()` is the whole line: "my.toml:12: water.temperature: ...".
class plan_error : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// What an error of the library says to somebody who wrote a plan: without the C++ in it.
[[nodiscard]] inline std::string reason_of(const tankwright::error& mistake) {
  std::string reason = mistake.what();
  const std::string& function = mistake.details().function;
  if (!function.empty() && reason.starts_with(function + ": ")) reason.erase(0, function.size() + 2);
  if (const auto advice = reason.find("; pass tankwright::"); advice != std::string::npos) reason.erase(advice);
  return reason;
}

/// One table of the file. Keys that nobody asked for are found by `finish`.
class section {
 public:
  section(const toml::table& table, std::string file, std::string path)
      : table_{&table}, file_{std::move(file)}, path_{std::move(path)} {}

  [[nodiscard]] bool has(std::string_view key) const { return table_->contains(key); }

  /// A quantity that must be there: `volume = "2150 L"`; a pure number may be written without quotation marks.
  template <class Q>
  [[nodiscard]] Q need(std::string_view key) {
    if (auto value = maybe<Q>(key)) return *value;
    fail_here("needs " + std::string{key} + ", for instance " + std::string{key} + " = " + example<Q>());
  }

  template <class Q>
  [[nodiscard]] std::optional<Q> maybe(std::string_view key) {
    const toml::node* node = find(key);
    if (!node) return std::nullopt;
    return quantity_from<Q>(*node, std::string{key});
  }

  template <class Q>
  [[nodiscard]] Q value_or(std::string_view key, Q otherwise) {
    return maybe<Q>(key).value_or(otherwise);
  }

  /// A list of quantities: `levels = ["612 mm", "610 mm"]`. Empty when the key is missing.
  template <class Q>
  [[nodiscard]] std::vector<Q> list(std::string_view key) {
    std::vector<Q> all;
    const toml::node* node = find(key);
    if (!node) return all;
    const toml::array* array = node->as_array();
    if (!array) fail_at(*node, std::string{key}, "must be a list in square brackets");
    for (const toml::node& item : *array) all.push_back(quantity_from<Q>(item, std::string{key}));
    return all;
  }

  [[nodiscard]] std::optional<std::string> text(std::string_view key) {
    const toml::node* node = find(key);
    if (!node) return std::nullopt;
    const auto value = node->value_exact<std::string>();
    if (!value) fail_at(*node, std::string{key}, "must be text in quotation marks");
    return value;
  }

  [[nodiscard]] bool flag(std::string_view key, bool otherwise) {
    const toml::node* node = find(key);
    if (!node) return otherwise;
    const auto value = node->value_exact<bool>();
    if (!value) fail_at(*node, std::string{key}, "must be true or false");
    return *value;
  }

  /// One word out of a list; gives its index.
  [[nodiscard]] std::optional<std::size_t> word(std::string_view key, std::initializer_list<std::string_view> words) {
    const auto value = text(key);
    if (!value) return std::nullopt;
    std::string accepted;
    std::size_t index = 0;
    for (const std::string_view candidate : words) {
      if (*value == candidate) return index;
      accepted += (index++ ? ", \"" : "\"") + std::string{candidate} + "\"";
    }
    fail_at(*find(key), std::string{key}, "\"" + *value + "\" is not one of " + accepted);
  }

  /// The table [path.key]; nothing when it is missing.
  [[nodiscard]] std::optional<section> sub(std::string_view key) {
    const toml::node* node = find(key);
    if (!node) return std::nullopt;
    const toml::table* table = node->as_table();
    if (!table) fail_at(*node, std::string{key}, "must be a table: [" + full(key) + "]");
    return section{*table, file_, full(key)};
  }

  /// The tables [[path.key]], in order.
  [[nodiscard]] std::vector<section> sections(std::string_view key) {
    std::vector<section> all;
    const toml::node* node = find(key);
    if (!node) return all;
    const toml::array* array = node->as_array();
    if (!array) fail_at(*node, std::string{key}, "must be written as [[" + full(key) + "]], once for each");
    for (const toml::node& item : *array) {
      const toml::table* table = item.as_table();
      if (!table) fail_at(item, std::string{key}, "must be written as [[" + full(key) + "]], once for each");
      all.emplace_back(*table, file_, full(key));
    }
    return all;
  }

  /// Hold a number that was read from `key` against the limits of the function that will get it.
  void hold(std::string_view key, const tankwright::limits& limit, double number) const {
    try {
      tankwright::core::check("plan", limit, number);
    } catch (const tankwright::error& mistake) {
      fail_key(key, reason_of(mistake));
    }
  }

  /// An argument of a library function, and the key it was read from.
  struct from_key {
    std::string_view argument;
    std::string_view key;
  };

  /// Do what the table asks for; a mistake that only then shows is reported at the key of its argument where that is
  /// known, otherwise at the table.
  template <class Work>
  auto attempt(Work work, std::initializer_list<from_key> keys = {}) const {
    try {
      return work();
    } catch (const tankwright::error& mistake) {
      for (const from_key& known : keys) {
        if (mistake.details().argument == known.argument && has(known.key)) fail_key(known.key, reason_of(mistake));
      }
      fail_here(reason_of(mistake));
    }
  }

  /// Where a key stands, for a message about another one: "vessel.height, line 4".
  [[nodiscard]] std::string place_of(std::string_view key) const {
    const toml::node* node = table_->get(key);
    const toml::source_region& region = node ? node->source() : table_->source();
    return (node ? full(key) : path_) + ", line " + std::to_string(region.begin.line);
  }

  /// Refuse keys that were not asked for.
  void finish() const {
    for (const auto& [key, node] : *table_) {
      if (used_.contains(std::string{key.str()})) continue;
      std::string known;
      for (const std::string& name : used_) known += (known.empty() ? "" : ", ") + name;
      fail_at(node, std::string{key.str()}, "is not a key of [" + path_ + "]; known here: " + known);
    }
  }

  /// A mistake about this table as a whole, at its first line.
  [[noreturn]] void fail_here(const std::string& reason) const {
    throw plan_error(place(table_->source()) + (path_.empty() ? "" : "[" + path_ + "] ") + reason);
  }

  /// A mistake about one key.
  [[noreturn]] void fail_key(std::string_view key, const std::string& reason) const {
    const toml::node* node = table_->get(key);
    if (!node) fail_here(std::string{key} + " " + reason);
    fail_at(*node, std::string{key}, reason);
  }

 private:
  template <class Q>
  [[nodiscard]] static std::string example() {
    using namespace tankwright;
    if constexpr (std::is_same_v<Q, volume>) return "\"2150 L\"";
    else if constexpr (std::is_same_v<Q, length>) return "\"0.75 m\"";
    else if constexpr (std::is_same_v<Q, temperature>) return "\"24 °C\"";
    else if constexpr (std::is_same_v<Q, mass>) return "\"25 kg\"";
    else if constexpr (std::is_same_v<Q, duration>) return "\"12 h\"";
    else if constexpr (std::is_same_v<Q, proportion>) return "\"87 %\"";
    else if constexpr (std::is_same_v<Q, area>) return "\"1.2 m²\"";
    else if constexpr (std::is_same_v<Q, flow_rate>) return "\"6000 L/h\"";
    else return "35";
  }

  [[nodiscard]] const toml::node* find(std::string_view key) {
    used_.insert(std::string{key});
    return table_->get(key);
  }

  template <class Q>
  [[nodiscard]] Q quantity_from(const toml::node& node, const std::string& key) const {
    std::string written;
    if (const auto text = node.value_exact<std::string>()) {
      written = *text;
    } else if (const auto number = node.value<double>(); number && node.is_number()) {
      written = tankwright::text::of(*number, tankwright::text::significant(15));
    } else {
      fail_at(node, key, "must be a quantity in quotation marks, such as " + example<Q>());
    }
    try {
      return tankwright::text::parse<Q>(written);
    } catch (const tankwright::error& mistake) {
      fail_at(node, key, reason_of(mistake));
    }
  }

  [[nodiscard]] std::string full(std::string_view key) const {
    return path_.empty() ? std::string{key} : path_ + "." + std::string{key};
  }

  [[nodiscard]] std::string place(const toml::source_region& region) const {
    return file_ + ":" + std::to_string(region.begin.line) + ": ";
  }

  [[noreturn]] void fail_at(const toml::node& node, const std::string& key, const std::string& reason) const {
    throw plan_error(place(node.source()) + full(key) + ": " + reason);
  }

  const toml::table* table_;
  std::string file_;
  std::string path_;
  std::set<std::string> used_;
};

}  // namespace plan_file
