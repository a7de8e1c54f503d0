// SPDX-License-Identifier: BSL-1.0
/// @file
/// What stands behind a key of a plan: a number with its unit and its doubt, a list of them, a word of a list, a flag,
/// a text with a meaning of its own. Each knows whether somebody gave it.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/core/errors.hpp>
#include <tankwright/core/quantity_name.hpp>
#include <vector>

namespace tankwright::plan {

/// How far the truth may lie from a number, in SI: from `value - half_width` to `value + half_width`.
struct doubt {
  double half_width = 0.0;
  bool given = false;  ///< by a person; otherwise the description of the key says what to assume
  friend constexpr bool operator==(const doubt&, const doubt&) noexcept = default;
};

/// A number of a plan without its type: what files, forms and searches work on.
class value_base {
 public:
  [[nodiscard]] bool given() const noexcept { return given_; }                  ///< somebody said it
  [[nodiscard]] bool known() const noexcept { return given_ || has_default_; }  ///< said, or taken by default
  [[nodiscard]] bool has_default() const noexcept { return has_default_; }
  [[nodiscard]] double si() const noexcept { return si_; }
  [[nodiscard]] double default_si() const noexcept { return default_; }
  [[nodiscard]] std::string_view unit() const noexcept { return unit_; }  ///< it was written in; empty: none
  [[nodiscard]] const plan::doubt& doubt() const noexcept { return doubt_; }

  /// Give it. `unit` is a symbol of the unit table, which lives as long as the program.
  void give(double si, std::string_view unit = {}, plan::doubt how_well = {}) noexcept {
    si_ = si;
    unit_ = unit;
    doubt_ = how_well;
    given_ = true;
  }
  /// Change the number alone, as a search or a sample does; unit and doubt stay.
  void move_to(double si) noexcept {
    si_ = si;
    given_ = true;
  }
  /// Without a doubt, as where a sample has drawn the number itself.
  void know_exactly() noexcept { doubt_ = {0.0, true}; }
  /// Take it back: unknown again, or the default.
  void clear() noexcept {
    si_ = default_;
    unit_ = {};
    doubt_ = {};
    given_ = false;
  }
  friend bool operator==(const value_base& a, const value_base& b) noexcept {
    return a.given_ == b.given_ && (!a.known() || a.si_ == b.si_) && a.doubt_ == b.doubt_;
  }

 protected:
  value_base() = default;
  double si_ = 0.0;
  double default_ = 0.0;
  std::string_view unit_{};
  plan::doubt doubt_{};
  bool given_ = false;
  bool has_default_ = false;
};

namespace detail {
[[noreturn, gnu::cold, gnu::noinline]] inline void not_given(std::string_view quantity) {
  core::fail<invalid_input>("tankwright::plan::value", quantity, __builtin_nan(""), "",
                            "is not given in the plan; `validate` names the key");
}
}  // namespace detail

/// A quantity of a plan: `value<length> rim;`, `value<rate> air_changes = by_default(per_hour(0.5));`.
template <class Q>
class value : public value_base {
 public:
  using quantity = Q;
  value() = default;
  value(const Q& q) noexcept { give(core::si_number(q)); }
  value& operator=(const Q& q) noexcept {
    give(core::si_number(q));
    return *this;
  }

  /// The quantity; throws invalid_input where it is neither given nor has a default.
  [[nodiscard]] Q get() const {
    if (!known()) detail::not_given(core::quantity_name<Q>());
    return core::from_si_number<Q>(si_);
  }
  [[nodiscard]] Q operator*() const { return get(); }
  [[nodiscard]] Q value_or(const Q& otherwise) const { return known() ? core::from_si_number<Q>(si_) : otherwise; }
  [[nodiscard]] std::optional<Q> maybe() const {
    return known() ? std::optional<Q>{core::from_si_number<Q>(si_)} : std::nullopt;
  }
  explicit operator bool() const noexcept { return known(); }

  template <class T>
  friend value<T> by_default(const T& q) noexcept;

 private:
  struct as_default {};
  value(as_default, const Q& q) noexcept {
    si_ = default_ = core::si_number(q);
    has_default_ = true;
  }
};

/// A value that is taken where nobody says otherwise.
///
/// @param q  the quantity
/// @return   a value that was not given and has this default
/// @accuracy exact
/// @source   this library
template <class Q>
[[nodiscard]] value<Q> by_default(const Q& q) noexcept {
  return value<Q>{typename value<Q>::as_default{}, q};
}

/// A list of numbers of a plan without its type.
class values_base {
 public:
  class item : public value_base {
   public:
    item() = default;
  };
  std::vector<item> items{};
  [[nodiscard]] bool given() const noexcept { return !items.empty(); }
  [[nodiscard]] std::size_t size() const noexcept { return items.size(); }
  void add(double si, std::string_view unit = {}, plan::doubt how_well = {}) {
    items.emplace_back().give(si, unit, how_well);
  }
  friend bool operator==(const values_base&, const values_base&) = default;
};

/// A list of quantities: `values<length> stages;`.
template <class Q>
class values : public values_base {
 public:
  values() = default;
  values(std::initializer_list<Q> all) {
    for (const Q& q : all) add(core::si_number(q));
  }
  values(const std::vector<Q>& all) {
    for (const Q& q : all) add(core::si_number(q));
  }
  [[nodiscard]] Q operator[](std::size_t i) const { return core::from_si_number<Q>(items[i].si()); }
  [[nodiscard]] std::vector<Q> get() const {
    std::vector<Q> all;
    all.reserve(items.size());
    for (const auto& i : items) all.push_back(core::from_si_number<Q>(i.si()));
    return all;
  }
};

/// One word out of a list, without its type. The description holds the words, in the order of the enumeration.
class word_base {
 public:
  [[nodiscard]] bool given() const noexcept { return given_; }
  [[nodiscard]] bool known() const noexcept { return given_ || has_default_; }
  [[nodiscard]] bool has_default() const noexcept { return has_default_; }
  [[nodiscard]] int index() const noexcept { return index_; }
  void give(int index) noexcept {
    index_ = index;
    given_ = true;
  }
  void clear() noexcept {
    index_ = default_;
    given_ = false;
  }
  friend bool operator==(const word_base& a, const word_base& b) noexcept {
    return a.given_ == b.given_ && a.index_ == b.index_;
  }

 protected:
  word_base() = default;
  int index_ = 0;
  int default_ = 0;
  bool given_ = false;
  bool has_default_ = false;
};

/// One of the values of an enumeration: `word<outlet_kind> kind = word_by_default(outlet_kind::submerged);`.
template <class E>
class word : public word_base {
 public:
  word() = default;
  word(E e) noexcept { give(static_cast<int>(e)); }
  word& operator=(E e) noexcept {  // a default stays known
    give(static_cast<int>(e));
    return *this;
  }
  /// The value; throws invalid_input where there is none.
  [[nodiscard]] E get() const {
    if (!known()) detail::not_given("a word");
    return static_cast<E>(index_);
  }
  [[nodiscard]] E operator*() const { return get(); }
  explicit operator bool() const noexcept { return known(); }
  [[nodiscard]] E value_or(E otherwise) const noexcept { return known() ? static_cast<E>(index_) : otherwise; }

  template <class T>
  friend word<T> word_by_default(T e) noexcept;

 private:
  struct as_default {};
  word(as_default, E e) noexcept {
    index_ = default_ = static_cast<int>(e);
    has_default_ = true;
  }
};

/// A word that is taken where nobody says otherwise.
///
/// @param e  of the enumeration
/// @return   a word that was not given and has this default
/// @accuracy exact
/// @source   this library
template <class E>
[[nodiscard]] word<E> word_by_default(E e) noexcept {
  return word<E>{typename word<E>::as_default{}, e};
}

/// Yes or no; without an answer it is what the plan's struct says.
class flag {
 public:
  constexpr flag() = default;
  constexpr flag(bool on) noexcept : on_{on}, given_{true} {}
  constexpr flag& operator=(bool on) noexcept {  // a default stays known
    on_ = on;
    given_ = true;
    return *this;
  }
  [[nodiscard]] static constexpr flag by_default(bool on) noexcept {
    flag made;
    made.on_ = made.default_ = on;
    return made;
  }
  [[nodiscard]] constexpr bool given() const noexcept { return given_; }
  [[nodiscard]] constexpr bool default_value() const noexcept { return default_; }
  constexpr operator bool() const noexcept { return on_; }
  constexpr void clear() noexcept {
    on_ = default_;
    given_ = false;
  }
  friend constexpr bool operator==(const flag& a, const flag& b) noexcept {
    return a.on_ == b.on_ && a.given_ == b.given_;
  }

 private:
  bool on_ = false;
  bool default_ = false;
  bool given_ = false;
};

/// A text that is a value: "60F/60F" on a hydrometer, "30 C, 80 %" on a dehumidifier.
class composite {
 public:
  virtual ~composite() = default;
  [[nodiscard]] virtual bool given() const noexcept = 0;
  /// Read the text; throws text_error and leaves the value as it was.
  virtual void read(std::string_view text) = 0;
  /// A text that `read` takes back to the same value.
  [[nodiscard]] virtual std::string write() const = 0;
  virtual void clear() noexcept = 0;
  [[nodiscard]] virtual std::string_view example() const noexcept = 0;

 protected:
  composite() = default;
  composite(const composite&) = default;
  composite& operator=(const composite&) = default;
};

}  // namespace tankwright::plan
