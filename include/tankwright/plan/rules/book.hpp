// SPDX-License-Identifier: BSL-1.0
/// @file
/// What rules write their mistakes into, and what they hold a key against.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/plan/build.hpp>
#include <tankwright/plan/mistake.hpp>
#include <tankwright/plan/walk.hpp>
#include <type_traits>
#include <vector>

namespace tankwright::plan::rules {

/// Sums of rounded dimensions: 72 in and 182.88 cm are one length.
inline constexpr double rounding = 1e-9;
/// How well areas agree that were worked out from different measures, where the plan does not say.
inline constexpr double areas_agree = 0.03;
/// A lid, a rail or a brace may lie on the walls; where the plan does not give them, they are not thicker than this.
inline const length thickest_wall = metres(0.15);

/// The most that something can be, the key that says so, and how much more passes.
template <class Q>
struct bound {
  Q most;
  std::string path;
  Q slack{};
};

/// Collects what rules find.
class book {
 public:
  explicit book(std::vector<mistake>& all) noexcept : all_{&all} {}

  void refuse(std::string path, std::string reason, std::string clashes = {}) {
    all_->push_back({std::move(path), std::move(reason), std::move(clashes)});
  }

  /// Hold a value to a bound: "0.9 m is above the rim of the display, 0.85 m".
  template <class Q>
  void at_most(const std::string& path, const Q& value, const std::type_identity_t<bound<Q>>& limit,
               std::string_view is_past) {
    const double v = core::si_number(value), most = core::si_number(limit.most);
    const double slack = core::si_number(limit.slack) + rounding * (most < 0.0 ? -most : most);
    if (!(v > most + slack)) return;
    clash(path, v, is_past, most, limit.path, core::quantity_name<Q>());
  }
  /// The same for a key that may not be given.
  template <class Q>
  void at_most(const std::string& path, const plan::value<Q>& value,
               const std::type_identity_t<bound<Q>>& limit, std::string_view is_past) {
    if (value.known()) at_most(path, value.get(), limit, is_past);
  }

 private:
  void clash(const std::string& path, double value, std::string_view is_past, double most, const std::string& other,
             std::string_view quantity);
  std::vector<mistake>* all_;
};

/// "0.85 m": how a rule says a quantity.
///
/// @param si       its number in SI
/// @param quantity its kind: "length"
/// @return         six digits with a unit that people use
/// @throws         nothing but std::bad_alloc
/// @accuracy       six digits
/// @source         this library
[[nodiscard]] std::string said(double si, std::string_view quantity);
/// The same of a quantity.
///
/// @param q  the quantity
/// @return   six digits with a unit that people use
/// @throws   nothing but std::bad_alloc
/// @accuracy six digits
/// @source   this library
template <class Q>
[[nodiscard]] std::string quantity_said(const Q& q) {
  return said(core::si_number(q), core::quantity_name<Q>());
}

/// "plumbing.return[left]": an element of a list by its label, or by its number.
///
/// @param list path of the list
/// @param all  its elements
/// @param at   which, from 0
/// @return     the path of the element
/// @throws     nothing but std::bad_alloc
/// @accuracy   exact
/// @source     this library
template <class T>
[[nodiscard]] std::string element(std::string_view list, const std::vector<T>& all, std::size_t at) {
  plan::detail::table_list<T> ref{const_cast<std::vector<T>&>(all)};  // only looked at
  return std::string{list} + "[" + selector_of(ref, at) + "]";
}

}  // namespace tankwright::plan::rules

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/rules/book.ipp>
#endif
