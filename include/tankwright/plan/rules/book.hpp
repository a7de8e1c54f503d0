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
  /// `system` is for quantities that were worked out; what a person wrote is said in the unit that it was written in.
  explicit book(std::vector<mistake>& all, text::unit_system system = text::unit_system::si) noexcept
      : all_{&all}, system_{system} {}

  void refuse(std::string path, std::string reason, std::string clashes = {}) {
    all_->push_back({std::move(path), std::move(reason), std::move(clashes)});
  }

  /// Hold a value to a bound: "0.9 m is above the rim of the display, 0.85 m".
  template <class Q>
  void at_most(const std::string& path, const Q& value, const std::type_identity_t<bound<Q>>& limit,
               std::string_view is_past) {
    hold(path, core::si_number(value), limit, is_past, {});
  }
  /// The same for a key that may not be given.
  template <class Q>
  void at_most(const std::string& path, const plan::value<Q>& value, const std::type_identity_t<bound<Q>>& limit,
               std::string_view is_past) {
    if (value.known()) hold(path, value.si(), limit, is_past, value.unit());
  }

  /// "0.85 m", "33.5 in": how a message says a quantity of the plan, in the unit that it was written in.
  template <class Q>
  [[nodiscard]] std::string said(const plan::value<Q>& v) const {
    return said(v.si(), core::quantity_name<Q>(), v.unit());
  }
  /// The same of one that was worked out.
  template <class Q>
  [[nodiscard]] std::string said(const Q& q) const {
    return said(core::si_number(q), core::quantity_name<Q>(), {});
  }
  /// The same, in the unit of what it is held against.
  template <class Q>
  [[nodiscard]] std::string said(const Q& q, const plan::value<Q>& as) const {
    return said(core::si_number(q), core::quantity_name<Q>(), as.unit());
  }

 private:
  template <class Q>
  void hold(const std::string& path, double value, const bound<Q>& limit, std::string_view is_past,
            std::string_view unit) {
    const double most = core::si_number(limit.most);
    const double slack = core::si_number(limit.slack) + rounding * (most < 0.0 ? -most : most);
    if (value > most + slack) clash(path, value, is_past, most, limit.path, core::quantity_name<Q>(), unit);
  }
  void clash(const std::string& path, double value, std::string_view is_past, double most, const std::string& other,
             std::string_view quantity, std::string_view unit);
  [[nodiscard]] std::string said(double si, std::string_view quantity, std::string_view unit, int digits = 6) const;

  std::vector<mistake>* all_;
  text::unit_system system_;
};

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

/// An element's label is not that of one before it in its list.
///
/// @param list     path of the list
/// @param elements with labels
/// @param at       which, from 0
/// @param what     they are, as more than one: "pumps"
/// @param all      gets the mistake
/// @throws         nothing but std::bad_alloc
/// @accuracy       exact
/// @source         this library
template <class T>
void hold_label(std::string_view list, const std::vector<T>& elements, std::size_t at, std::string_view what,
                book& all) {
  const std::string& label = elements[at].label;
  for (std::size_t before = 0; before < at; ++before) {
    if (label.empty() || elements[before].label != label) continue;
    all.refuse(element(list, elements, at) + ".label", label + " is the label of two " + std::string{what},
               element(list, elements, before));
  }
}

}  // namespace tankwright::plan::rules

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/rules/book.ipp>
#endif
