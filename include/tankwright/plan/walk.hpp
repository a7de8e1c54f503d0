// SPDX-License-Identifier: BSL-1.0
/// @file
/// A visitor that goes into every table of a plan and knows where it is. Checks, writers and lists derive from it.
#pragma once

#include <string>
#include <tankwright/plan/description.hpp>
#include <vector>

namespace tankwright::plan {

/// The label (or name) of an element of a list of tables; empty where it has none.
///
/// @param list the list
/// @param at   place in it, from 0
/// @return     the label
/// @throws     nothing but std::bad_alloc
/// @accuracy   exact
/// @source     this library
[[nodiscard]] std::string label_of(tables_ref& list, std::size_t at);

/// How an element of a list is named in a path: by its label where no other has the same, otherwise by its number
/// from 1.
///
/// @param list the list
/// @param at   place in it, from 0
/// @return     what stands in the brackets of a path
/// @throws     nothing but std::bad_alloc
/// @accuracy   exact
/// @source     this library
[[nodiscard]] std::string selector_of(tables_ref& list, std::size_t at);

/// Goes into every table that is there (or, in a blank walk, into one of each).
class walker : public visitor {
 public:
  /// Where the walk is: "plumbing.return[left]"; with `name` behind it: "plumbing.return[left].below_edge".
  [[nodiscard]] std::string path() const;
  [[nodiscard]] std::string path(std::string_view name) const;

 protected:
  /// With `blank`, every table is visited once as it would be when new.
  explicit walker(bool blank = false) noexcept : blank_{blank} {}

  /// Called before and after the keys of a table.
  virtual void enter(const key_info&) {}
  virtual void leave(const key_info&) {}
  /// Called for a table that is not there, and for each list with its length.
  virtual void missing(const key_info&) {}
  virtual void list(const key_info&, std::size_t /*size*/) {}

  void table(const key_info&, table_ref&) final;
  void tables(const key_info&, tables_ref&) final;

  [[nodiscard]] std::size_t depth() const noexcept { return frames_.size(); }

 private:
  struct frame {
    std::string_view name;
    tables_ref* list = nullptr;  ///< of a list; else a single table
    std::size_t at = 0;
  };
  std::vector<frame> frames_{};
  bool blank_;
};

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/walk.ipp>
#endif
