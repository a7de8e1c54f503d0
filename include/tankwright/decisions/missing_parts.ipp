// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/given_keys.hpp>
#include <tankwright/decisions/missing_parts.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/walk.hpp>

namespace tankwright::decisions {

namespace detail {

[[nodiscard]] inline std::string with_element(std::string_view words, std::string_view element) {
  std::string said{words};
  if (const auto at = said.find("%p"); at != std::string::npos) said.replace(at, 2, element);
  return said;
}

using keys_and_texts = std::vector<std::pair<std::string, std::string>>;

/// The elements of a list, as paths name them: "left" of "plumbing.return[left]".
[[nodiscard]] inline std::vector<std::string> elements_of(const keys_and_texts& given, std::string_view list) {
  std::vector<std::string> all;
  for (const auto& [path, text] : given) {
    if (!path.starts_with(list) || path.size() <= list.size() || path[list.size()] != '[') continue;
    std::string element = path.substr(list.size() + 1, path.find(']') - list.size() - 1);
    if (all.empty() || all.back() != element) all.push_back(std::move(element));
  }
  return all;
}

/// "no. 2" of an element without a label.
[[nodiscard]] inline std::string name_of(const std::string& element) {
  return element.find_first_not_of("0123456789") == std::string::npos ? "no. " + element : element;
}

/// The paths of a pattern with their elements: "plumbing.return[left].check_valve" for each return.
[[nodiscard]] inline keys_and_texts places_of(const keys_and_texts& given, std::string_view pattern) {
  const auto brackets = pattern.find("[]");
  if (brackets == std::string_view::npos) return {{std::string{pattern}, {}}};
  keys_and_texts all;
  for (const std::string& element : elements_of(given, pattern.substr(0, brackets))) {
    std::string path{pattern};
    path.insert(brackets + 1, element);
    all.emplace_back(std::move(path), name_of(element));
  }
  return all;
}

/// Whether a plan says nothing there; a path through a table that is not there is no place for a part.
[[nodiscard]] inline bool is_absent(const plan::build& build, const std::string& path) {
  plan::build probe = build;
  bool absent = false;
  try {
    plan::at_path(probe, path, false, [&](const plan::leaf& here) {
      absent = here.yes ? !*here.yes : here.table && !here.table->present();
    });
  } catch (const error&) {
    return false;
  }
  return absent;
}

[[nodiscard]] inline missing_part part_at(const plan::build& build, const part_row& row, const std::string& path,
                                          const std::string& element) {
  missing_part part{with_element(row.words, element)};
  if (row.sized.empty()) {
    part.options.push_back({{.path = path, .from = "", .to = "true"}});
    return part;
  }
  const std::string sized = path + "." + std::string{row.sized};
  plan::build probe = build;
  plan::at_path(probe, sized, true, [&](const plan::leaf& here) {
    std::vector<double> sizes{here.key.sizes.begin(), here.key.sizes.end()};
    constexpr int steps = 10;
    for (int i = 1; sizes.size() < steps && here.key.sizes.empty() && i <= steps; ++i) {
      sizes.push_back(here.key.choose_low + (here.key.choose_high - here.key.choose_low) * i / steps);
    }
    for (const double si : sizes) {
      plan::values_base::item size;
      size.give(si);
      std::vector<change> keys{
          {sized, "", plan::quantity_text(size, here.key.quantity), here.key.quantity, std::nullopt, si}};
      for (const key_of_part& other : row.others) {
        if (other.name.empty()) continue;
        keys.push_back({.path = path + "." + std::string{other.name}, .from = "", .to = std::string{other.value}});
      }
      part.options.push_back(std::move(keys));
    }
  });
  return part;
}

/// Another drain like each that is there.
inline void add_drains(const keys_and_texts& given, std::vector<missing_part>& all) {
  const std::vector<std::string> drains = elements_of(given, "plumbing.drain");
  for (const std::string& element : drains) {
    const std::string old_path = "plumbing.drain[" + element + "].";
    const std::string new_path = "plumbing.drain[" + std::to_string(drains.size() + 1) + "].";
    std::vector<change> keys;
    for (const auto& [path, text] : given) {
      if (!path.starts_with(old_path) || path == old_path + "note") continue;
      const bool label = path == old_path + "label";
      change one{.path = new_path + path.substr(old_path.size()), .from = "", .to = label ? "another " + text : text};
      // The label comes last: by it the new drain has another path.
      keys.insert(label || keys.empty() ? keys.end() : keys.begin(), std::move(one));
    }
    if (!keys.empty()) all.push_back({"add another drain like the " + name_of(element), {std::move(keys)}});
  }
}

/// Each candidate in place of the return pump.
inline void swap_pumps(const plan::build& build, const keys_and_texts& given, std::vector<missing_part>& all) {
  if (!build.plumbing || !build.plumbing->pump) return;
  for (const plan::candidate_pump& one : build.plumbing->candidate) {
    const std::string from = "plumbing.candidate[" + one.label + "].";
    std::vector<change> keys;
    for (const char* name : {"label", "flows", "heads", "speed", "power"}) {
      std::string now;
      for (const auto& [path, text] : given) {
        if (path == std::string{"plumbing.pump."} + name) now = text;
      }
      for (const auto& [path, text] : given) {
        if (path == from + name && text != now) {
          keys.push_back({.path = std::string{"plumbing.pump."} + name, .from = now, .to = text});
        }
      }
    }
    // A pump that is there already is no other one.
    const auto curve = [](const change& c) { return c.path.ends_with(".flows") || c.path.ends_with(".heads"); };
    if (std::any_of(keys.begin(), keys.end(), curve)) {
      all.push_back({"take the " + one.label + " in place of the return pump", {std::move(keys)}});
    }
  }
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<detail::missing_part> detail::missing_parts(const plan::build& build) {
  std::vector<missing_part> all;
  const keys_and_texts given = given_in(build);
  for (const part_row& row : every_part) {
    // Of one pump alone, a check valve in its trunk or its returns does the same.
    const bool of_several = row.absent == "plumbing.pump.check_valve";
    if (of_several && elements_of(given, "plumbing.further_pump").empty()) continue;
    for (const auto& [path, element] : places_of(given, row.absent)) {
      if (is_absent(build, path)) all.push_back(part_at(build, row, path, element));
    }
  }
  add_drains(given, all);
  swap_pumps(build, given, all);
  return all;
}

TANKWRIGHT_INLINE plan::build detail::with_changes(const plan::build& build, const std::vector<change>& changes) {
  plan::build with = build;
  for (const change& one : changes) plan::set(with, one.path, one.to);
  return with;
}

}  // namespace tankwright::decisions
