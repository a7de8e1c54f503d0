// SPDX-License-Identifier: BSL-1.0
/// @file
/// A key of a plan by its path: "plumbing.return[left].below_edge". Elements of a list are named by their label, or by
/// their number from 1. Set it, read it, take it back; add and remove tables.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <tankwright/plan/build.hpp>
#include <tankwright/plan/leaf.hpp>
#include <tankwright/text/quantity.hpp>
#include <vector>

namespace tankwright::plan {

/// One step of a path: a name, and which element of a list or table list.
struct path_step {
  std::string name;
  std::string selector{};  ///< empty: none
  friend bool operator==(const path_step&, const path_step&) = default;
};

/// The steps of a path.
///
/// @param path names joined by points, each with [label] or [number] where it is a list
/// @return     its steps
/// @throws     invalid_input for an empty path, an empty name, or a bracket that is not closed
/// @accuracy   exact
/// @source     this library
[[nodiscard]] std::vector<path_step> steps_of(std::string_view path);

/// Find what stands at a path and hand it to `use`.
///
/// @param build  the plan
/// @param path   as for `steps_of`
/// @param create missing tables on the way are made; otherwise they are refused
/// @param use    gets the leaf, which lives only during the call
/// @throws       invalid_input: the path names no key (the nearest known name is said), or a missing table
/// @accuracy     exact
/// @source       this library
void at_path(build& build, std::string_view path, bool create, const std::function<void(const leaf&)>& use);

/// Set a key from text: a quantity with its unit and, if wanted, its doubt ("35 mm +/- 5 mm"), a word of its list,
/// "true" or "false", a text; lists with commas. Missing tables on the way are made. Limits are the affair of
/// `validate`.
///
/// @param build the plan
/// @param path  as for `steps_of`
/// @param text  what a file would hold behind the key, without quotation marks
/// @throws      text_error for a text that is not what the key holds; invalid_input for a path that names no key
/// @accuracy    as `text::parse`
/// @source      this library
void set(build& build, std::string_view path, std::string_view text);

/// Set a key to a number in SI: what sliders and searches call. Unit and doubt stay.
///
/// @param build the plan
/// @param path  of a quantity
/// @param si    the number in SI, finite
/// @throws      invalid_input for a path that names no quantity, or a number that is not finite
/// @accuracy    exact
/// @source      this library
void set_si(build& build, std::string_view path, double si);

namespace detail {
void set_typed(build& build, std::string_view path, std::string_view quantity, double si);
}

/// Set a key to a quantity of its kind.
///
/// @param build the plan
/// @param path  of a quantity
/// @param to    a quantity of the kind that the key holds
/// @throws      invalid_input for a path that names no key, or one of another quantity
/// @accuracy    exact
/// @source      this library
template <text::has_text Q>
void set(build& build, std::string_view path, const Q& to) {
  detail::set_typed(build, path, core::quantity_name<Q>(), core::si_number(to));
}

/// What a key holds, as `set` takes it; empty where nothing was given.
///
/// @param build the plan
/// @param path  as for `steps_of`
/// @return      "35 mm", "35 mm +/- 5 mm", "open", "true"; a list with commas
/// @throws      invalid_input for a path that names no key
/// @accuracy    `set` of it gives the same plan
/// @source      this library
[[nodiscard]] std::string get(const build& build, std::string_view path);

/// The number that a key holds, in SI; its default where it was not given; NaN where it is unknown.
///
/// @param build the plan
/// @param path  of a quantity
/// @return      the number in SI
/// @throws      invalid_input for a path that names no quantity
/// @accuracy    exact
/// @source      this library
[[nodiscard]] double get_si(const build& build, std::string_view path);

/// Take back what was given for a key; a table is removed with all that is in it.
///
/// @param build the plan
/// @param path  of a key, a table, a list, or an element of a list
/// @throws      invalid_input for a path that names nothing
/// @accuracy    exact
/// @source      this library
void clear(build& build, std::string_view path);

/// Add a table: a missing one is made, a list grows by one.
///
/// @param build the plan
/// @param path  of a table or a list of tables
/// @return      the path of what was added: "plumbing.return[3]"
/// @throws      invalid_input for a path that names no table
/// @accuracy    exact
/// @source      this library
std::string add(build& build, std::string_view path);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/path.ipp>
#endif
