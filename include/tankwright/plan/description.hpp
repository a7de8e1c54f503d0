// SPDX-License-Identifier: BSL-1.0
/// @file
/// What a plan says about its own keys. Beside each struct of a plan stands one function `describe(visitor&, S&)` that
/// visits its keys in order; readers, writers, forms, schemas, checks and searches are visitors and repeat nothing.
#pragma once

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <tankwright/core/measured.hpp>
#include <tankwright/plan/value.hpp>
#include <vector>

namespace tankwright::plan {

/// Who decides a number.
enum class set_by {
  measured,  ///< found out with a tape, a scale, an instrument, or read off a label
  chosen,    ///< the builder can still change it
  wanted,    ///< a goal; a search must not move the goalposts
};

inline constexpr set_by chosen = set_by::chosen;
inline constexpr set_by wanted = set_by::wanted;

/// How well a number is usually known, where nobody says.
enum class doubt_kind {
  none,      ///< exact, or a matter of choice
  distance,  ///< give or take so much, in SI
  share,     ///< give or take a part of the value
  factor,    ///< from the value divided by a factor to the value times it
};

/// The assumed doubt of a key, without its type.
struct usual_doubt {
  doubt_kind kind = doubt_kind::none;
  double size = 0.0;
};

/// The assumed doubt of a key whose quantity is Q.
template <class Q>
struct usual_doubt_of : usual_doubt {
  constexpr usual_doubt_of() = default;
  constexpr usual_doubt_of(usual_doubt any) : usual_doubt{any} {}
  constexpr usual_doubt_of(const step_of<Q>& half) : usual_doubt{doubt_kind::distance, core::si_number(half)} {}
};

/// Give or take a part of the value: `known_within(percent(3))`.
///
/// @param part of the value
/// @return     the doubt
/// @accuracy   exact
/// @source     this library
[[nodiscard]] constexpr usual_doubt known_within(proportion part) noexcept { return {doubt_kind::share, part.value()}; }
/// Known within a factor: `known_within_factor(2)` from half to twice.
///
/// @param factor above 1
/// @return       the doubt
/// @accuracy     exact
/// @source       this library
[[nodiscard]] constexpr usual_doubt known_within_factor(double factor) noexcept { return {doubt_kind::factor, factor}; }

/// How far the truth may lie from a number of a plan: as somebody said, otherwise as is usual.
///
/// @param v     a number that is known
/// @param usual doubt where nobody said
/// @return      half the width, in SI; of a factor towards above
/// @accuracy    exact
/// @source      this library
[[nodiscard]] inline double half_width(const value_base& v, const usual_doubt& usual) noexcept {
  if (v.doubt().given) return v.doubt().half_width;
  const double size = v.si() < 0.0 ? -v.si() : v.si();
  if (usual.kind == doubt_kind::share) return usual.size * size;
  if (usual.kind == doubt_kind::factor) return (usual.size - 1.0) * size;
  return usual.kind == doubt_kind::distance ? usual.size : 0.0;
}

/// What can physically exist, both ends included.
template <class Q>
struct range_of {
  Q low;
  Q high;
};

/// What a description says of a key that holds a quantity.
template <class Q>
struct key_of {
  std::string_view means;  ///< one sentence, without a full stop
  range_of<Q> limits;      ///< what can exist; a published range belongs to its formula
  bool needed = false;
  bool whole = false;  ///< a whole number
  plan::set_by set_by = set_by::measured;
  std::optional<range_of<Q>> choose_between{};  ///< where a chosen key may be looked for
  std::optional<step_of<Q>> step{};             ///< how finely it can be set
  std::span<const double> sizes{};              ///< that are sold, in SI
  usual_doubt_of<Q> doubt{};
  bool doubt_asked = false;  ///< an answer is about the doubt itself: samples do not move the number
};

/// What a description says of a key that holds a text, a flag, a word or a table.
struct key_about {
  std::string_view means;
  bool needed = false;
  plan::set_by set_by = set_by::measured;
};

/// What a visitor is told of a key.
struct key_info {
  std::string_view name;
  std::string_view means;
  bool needed = false;
  plan::set_by set_by = set_by::measured;
  // Of a number only:
  std::string_view quantity{};  ///< "length"
  double low = 0.0;             ///< limits in SI
  double high = 0.0;
  bool whole = false;
  bool searched = false;  ///< has a range, step or sizes to choose from
  double choose_low = 0.0;
  double choose_high = 0.0;
  double step = 0.0;
  std::span<const double> sizes{};
  usual_doubt doubt{};
  bool doubt_asked = false;
};

class visitor;

/// A table that may be missing.
class table_ref {
 public:
  virtual ~table_ref() = default;
  [[nodiscard]] virtual bool present() const noexcept = 0;
  virtual void create() = 0;
  virtual void remove() = 0;
  virtual void visit(visitor&) = 0;              ///< its keys; only where it is present
  virtual void visit_blank(visitor&) const = 0;  ///< the keys it would have
};

/// A list of tables.
class tables_ref {
 public:
  virtual ~tables_ref() = default;
  [[nodiscard]] virtual std::size_t size() const noexcept = 0;
  virtual void add() = 0;
  virtual void remove(std::size_t at) = 0;
  virtual void visit(std::size_t at, visitor&) = 0;
  virtual void visit_blank(visitor&) const = 0;
};

/// Walks over the keys of a struct. A description calls it as a function: `key("rim", s.rim, {...})`.
class visitor {
 public:
  virtual ~visitor() = default;

  template <class Q>
  void operator()(std::string_view name, value<Q>& v, const key_of<Q>& about) {
    number(info_of(name, about), v);
  }
  template <class Q>
  void operator()(std::string_view name, values<Q>& v, const key_of<Q>& about) {
    numbers(info_of(name, about), v);
  }
  template <class E>
  void operator()(std::string_view name, word<E>& w, std::initializer_list<std::string_view> words,
                  const key_about& about) {
    one_of(info_of(name, about), w, {words.begin(), words.size()});
  }
  void operator()(std::string_view name, flag& f, const key_about& about) { yes_or_no(info_of(name, about), f); }
  void operator()(std::string_view name, std::string& t, const key_about& about) { text(info_of(name, about), t); }
  void operator()(std::string_view name, composite& c, const key_about& about) { rating(info_of(name, about), c); }
  template <class T>
  void operator()(std::string_view name, std::optional<T>& t, const key_about& about);
  template <class T>
  void operator()(std::string_view name, std::vector<T>& t, const key_about& about);

  /// Exactly one of these keys is given (at most one, where `needed` is false).
  virtual void alternatives(std::initializer_list<std::string_view> /*names*/, bool /*needed*/) {}
  /// A key that had another name: a file that still has it is told the new one.
  virtual void renamed(std::string_view /*old_name*/, std::string_view /*name*/) {}
  /// A key that is none any more: a file that still has it is told what to write in its place.
  virtual void replaced(std::string_view /*old_name*/, std::string_view /*by*/) {}
  /// These keys are given together or not at all.
  virtual void together(std::initializer_list<std::string_view> /*names*/) {}

 protected:
  virtual void number(const key_info&, value_base&) = 0;
  virtual void numbers(const key_info&, values_base&) = 0;
  virtual void one_of(const key_info&, word_base&, std::span<const std::string_view> words) = 0;
  virtual void yes_or_no(const key_info&, flag&) = 0;
  virtual void text(const key_info&, std::string&) = 0;
  virtual void rating(const key_info&, composite&) = 0;
  virtual void table(const key_info&, table_ref&) = 0;
  virtual void tables(const key_info&, tables_ref&) = 0;

 private:
  template <class Q>
  [[nodiscard]] static key_info info_of(std::string_view name, const key_of<Q>& about) {
    key_info k{.name = name, .means = about.means, .needed = about.needed, .set_by = about.set_by};
    k.quantity = core::quantity_name<Q>();
    k.low = core::si_number(about.limits.low);
    k.high = core::si_number(about.limits.high);
    k.whole = about.whole;
    k.sizes = about.sizes;
    k.doubt = about.doubt;
    k.doubt_asked = about.doubt_asked;
    k.searched = about.choose_between.has_value() || !about.sizes.empty();
    if (about.choose_between) {
      k.choose_low = core::si_number(about.choose_between->low);
      k.choose_high = core::si_number(about.choose_between->high);
    }
    if (about.step) k.step = core::si_number(*about.step);
    return k;
  }
  [[nodiscard]] static key_info info_of(std::string_view name, const key_about& about) {
    return {.name = name, .means = about.means, .needed = about.needed, .set_by = about.set_by};
  }
};

namespace detail {

template <class T>
class optional_table final : public table_ref {
 public:
  explicit optional_table(std::optional<T>& t) noexcept : t_{&t} {}
  [[nodiscard]] bool present() const noexcept override { return t_->has_value(); }
  void create() override {
    if (!*t_) t_->emplace();
  }
  void remove() override { t_->reset(); }
  void visit(visitor& v) override { describe(v, **t_); }
  void visit_blank(visitor& v) const override {
    T blank{};
    describe(v, blank);
  }

 private:
  std::optional<T>* t_;
};

template <class T>
class table_list final : public tables_ref {
 public:
  explicit table_list(std::vector<T>& t) noexcept : t_{&t} {}
  [[nodiscard]] std::size_t size() const noexcept override { return t_->size(); }
  void add() override { t_->emplace_back(); }
  void remove(std::size_t at) override { t_->erase(t_->begin() + static_cast<std::ptrdiff_t>(at)); }
  void visit(std::size_t at, visitor& v) override { describe(v, (*t_)[at]); }
  void visit_blank(visitor& v) const override {
    T blank{};
    describe(v, blank);
  }

 private:
  std::vector<T>* t_;
};

}  // namespace detail

template <class T>
void visitor::operator()(std::string_view name, std::optional<T>& t, const key_about& about) {
  detail::optional_table<T> ref{t};
  table(info_of(name, about), ref);
}

template <class T>
void visitor::operator()(std::string_view name, std::vector<T>& t, const key_about& about) {
  detail::table_list<T> ref{t};
  tables(info_of(name, about), ref);
}

/// The key that every table has: what a person wants to remember beside it.
inline void describe_note(visitor& key, std::string& note) {
  key("note", note, {.means = "a remark of your own; it is kept, and nothing is computed from it"});
}

/// Visit the keys of a plan, or of a part of one, that the visitor does not change.
///
/// @param v the visitor, which changes nothing
/// @param s the plan or a struct of it
/// @throws  what the visitor throws
/// @accuracy exact
/// @source  this library
template <class S>
void look_at(visitor& v, const S& s) {
  describe(v, const_cast<S&>(s));  // the visitor's promise
}

}  // namespace tankwright::plan
