// SPDX-License-Identifier: BSL-1.0
/// @file
/// Between JSON and the types of the library: one `io` for each kind of type; those of structs, classes and enums are
/// generated. What is not a template is compiled once, in formulas.cpp.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantity_name.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/core/validity.hpp>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#include "formulas.hpp"

namespace tankwright_formulas {

namespace tw = ::tankwright;
using names = std::span<const std::string_view>;
struct row;

/// What tells the types apart at run time: the address of one variable for each.
using type_key = const char*;
template <class T>
inline constexpr char key_of_type = 0;

/// A piece of what was given, with the way to it for messages.
class given {
 public:
  given(const void* json, bool may_extrapolate) noexcept : json_{json}, may_extrapolate_{may_extrapolate} {}

  [[nodiscard]] bool is_text() const noexcept;
  [[nodiscard]] bool is_list() const noexcept;
  [[nodiscard]] bool is_empty() const noexcept;  ///< null
  [[nodiscard]] bool has(std::string_view name) const noexcept;
  [[nodiscard]] given at(std::string_view name) const;  ///< refuses what is missing
  [[nodiscard]] std::size_t size() const;
  [[nodiscard]] given item(std::size_t i) const;

  [[nodiscard]] double si(std::string_view quantity) const;
  [[nodiscard]] tw::estimate<double> band(std::string_view quantity) const;
  [[nodiscard]] double number() const { return si("number"); }
  [[nodiscard]] long long whole(long long low, long long high) const;
  [[nodiscard]] bool flag() const;
  [[nodiscard]] std::string_view text() const;
  [[nodiscard]] std::size_t word(names words) const;

  /// Refuses fields that are not among these.
  void only(names known) const;
  /// Whether "extrapolate" was said.
  [[nodiscard]] tw::range_policy policy() const;

  /// Which of several ways a value is given: {"nitrogen": ...}. `plain` and `plain_list` are the ways of what names none.
  [[nodiscard]] std::size_t way(names ways, int plain, int plain_list) const;
  [[nodiscard]] given along(names ways, std::size_t which) const;

  /// The formula that makes this value, if it is given so.
  [[nodiscard]] const row* maker(type_key type) const;
  void make(const row& by, void* into) const;

  /// Whether this is the name of a constant.
  [[nodiscard]] bool is_named(std::string_view name) const { return is_text() && text() == name; }
  [[noreturn]] void refuse_name(names known) const;
  [[nodiscard]] std::string path() const;

 private:
  given(const void* json, const given* parent, std::string_view name, std::size_t index);
  const void* json_;
  const given* parent_ = nullptr;
  std::string_view name_{};
  std::size_t index_ = 0;
  int depth_ = 0;
  bool may_extrapolate_ = false;
};

/// Writes the result.
class answer {
 public:
  void begin() { open('{'); }
  void end() { close('}'); }
  void begin_list() { open('['); }
  void end_list() { close(']'); }
  void key(std::string_view name);
  void item() { comma(); }
  void quantity(std::string_view quantity, std::string_view unit, double si);
  void quantity(std::string_view quantity, double si);
  void band(std::string_view quantity, std::string_view unit, const double (&ends)[3], std::string_view reason);
  void band(std::string_view quantity, const double (&ends)[3], std::string_view reason);
  void text(std::string_view words);
  void flag(bool yes);
  void whole(long long number);
  void nothing();
  void caution(std::string_view words);

  std::string json;
  std::vector<std::string> cautions;

 private:
  void open(char c);
  void close(char c);
  void comma();
  bool first_ = true;
};

/// A formula.
struct row {
  std::string_view name;      ///< "water.density_with_practical_salinity"
  std::string_view function;  ///< "tankwright::water::density"
  std::string_view source;
  names required;
  names fields;
  bool extrapolates;
  type_key result;
  void (*answer_to)(const given&, answer&);
  void (*make)(const given&, void*);
  numbers plain;
  void (*by_numbers)(const double*, double*, tw::range_policy);
  void (*defaults)(double*);
};

/// A constant of the library that stands for a number.
struct constant {
  std::string_view name;
  std::string_view quantity;
  double low, central, high;
  std::string_view reason;
};
template <class Q>
[[nodiscard]] constant named(std::string_view name, const Q& q) {
  const double si = tw::core::si_number(q);
  return {name, tw::core::quantity_name<Q>(), si, si, si, {}};
}
template <class Q>
[[nodiscard]] constant named(std::string_view name, const tw::estimate<Q>& e) {
  return {name,
          tw::core::quantity_name<Q>(),
          tw::core::si_number(e.low),
          tw::core::si_number(e.central),
          tw::core::si_number(e.high),
          e.reason};
}

std::span<const row> water_rows();
std::span<const row> vessel_rows();
std::span<const row> plumbing_rows();
std::span<const row> room_rows();
std::span<const row> life_rows();
std::span<const constant> water_constants();
std::span<const constant> vessel_constants();
std::span<const constant> plumbing_constants();
std::span<const constant> room_constants();
std::span<const constant> life_constants();

[[nodiscard]] long long whole_number(double value, long long low, long long high);

// ---- one io for each kind of type -----------------------------------------------------------------------------------

template <class T>
struct io;

template <class T>
[[nodiscard]] T read(const given& in) {
  return io<T>::read(in);
}
template <class T>
[[nodiscard]] T must(const given& in, std::string_view name) {
  return io<T>::read(in.at(name));
}
/// The field if it is there; what a person leaves empty (null) is not.
template <class T>
void may(const given& in, std::string_view name, T& into) {
  if (in.has(name)) into = io<T>::read(in.at(name));
}
template <class T, class Default>
[[nodiscard]] T may_or(const given& in, std::string_view name, Default otherwise) {
  if (in.has(name)) return io<T>::read(in.at(name));
  return otherwise();
}
template <class T>
[[nodiscard]] bool made(const given& in, std::optional<T>& into) {
  const row* by = in.maker(&key_of_type<T>);
  if (by) in.make(*by, &into);
  return by != nullptr;
}
inline void not_given(double*& at, std::size_t count) {
  for (; count > 0; --count) *at++ = std::numeric_limits<double>::quiet_NaN();
}

/// Quantities, the thin types of the core, and plain numbers.
template <class Q>
requires(!tw::core::quantity_name<Q>().empty()) struct io<Q> {
  static Q read(const given& in) { return tw::core::from_si_number<Q>(in.si(tw::core::quantity_name<Q>())); }
  static void write(answer& out, const Q& q) { out.quantity(tw::core::quantity_name<Q>(), tw::core::si_number(q)); }
  static Q take(const double*& at) { return tw::core::from_si_number<Q>(*at++); }
  static void put(const Q& q, double*& at) { *at++ = tw::core::si_number(q); }
};

template <>
struct io<bool> {
  static bool read(const given& in) { return in.flag(); }
  static void write(answer& out, bool b) { out.flag(b); }
  static bool take(const double*& at) { return whole_number(*at++, 0, 1) == 1; }
  static void put(bool b, double*& at) { *at++ = b ? 1.0 : 0.0; }
};

template <class T>
requires(std::is_same_v<T, int> || std::is_same_v<T, std::size_t>) struct io<T> {
  static constexpr long long low = std::is_signed_v<T> ? std::numeric_limits<int>::min() : 0;
  static constexpr long long high = std::numeric_limits<int>::max();
  static T read(const given& in) { return static_cast<T>(in.whole(low, high)); }
  static void write(answer& out, T n) { out.whole(static_cast<long long>(n)); }
  static T take(const double*& at) { return static_cast<T>(whole_number(*at++, low, high)); }
  static void put(T n, double*& at) { *at++ = static_cast<double>(n); }
};

/// Text lives as long as the JSON that was given, which outlives the call.
template <class T>
requires(std::is_same_v<T, std::string> || std::is_same_v<T, std::string_view>) struct io<T> {
  static T read(const given& in) { return T{in.text()}; }
  static void write(answer& out, const T& text) { out.text(text); }
};

template <>
struct io<tw::caution> {
  static void write(answer& out, const tw::caution& c) { out.caution(c.text); }
  static void put(const tw::caution&, double*&) {}
};

template <class T>
struct io<tw::required<T>> {
  static tw::required<T> read(const given& in) { return io<T>::read(in); }
  static void write(answer& out, const tw::required<T>& v) { io<T>::write(out, v.get()); }
  static tw::required<T> take(const double*& at) { return io<T>::take(at); }
  static void put(const tw::required<T>& v, double*& at) { io<T>::put(v.get(), at); }
};

template <class T>
struct io<std::optional<T>> {
  static std::optional<T> read(const given& in) {
    if (in.is_empty()) return std::nullopt;
    return io<T>::read(in);
  }
  static void write(answer& out, const std::optional<T>& v) {
    if (v) {
      io<T>::write(out, *v);
    } else {
      out.nothing();
    }
  }
};

template <class T>
struct io<std::vector<T>> {
  static std::vector<T> read(const given& in) {
    std::vector<T> all;
    const std::size_t n = in.size();
    all.reserve(n);
    for (std::size_t i = 0; i < n; ++i) all.push_back(io<T>::read(in.item(i)));
    return all;
  }
  static void write(answer& out, const std::vector<T>& all) {
    out.begin_list();
    for (const T& one : all) {
      out.item();
      io<T>::write(out, one);
    }
    out.end_list();
  }
};

template <class T, std::size_t N>
struct io<std::array<T, N>> {
  static void write(answer& out, const std::array<T, N>& all) {
    out.begin_list();
    for (const T& one : all) {
      out.item();
      io<T>::write(out, one);
    }
    out.end_list();
  }
};

/// An estimate: one number without a band, or {"low", "central", "high", "reason"}.
template <class Q>
struct io<tw::estimate<Q>> {
  static tw::estimate<Q> read(const given& in) {
    if constexpr (!tw::core::quantity_name<Q>().empty()) {
      const auto band = in.band(tw::core::quantity_name<Q>());
      return {tw::core::from_si_number<Q>(band.low), tw::core::from_si_number<Q>(band.central),
              tw::core::from_si_number<Q>(band.high), band.reason};
    } else {
      if (!in.has("low")) return tw::exactly(io<Q>::read(in));
      static constexpr std::string_view parts[] = {"low", "central", "high", "reason"};
      in.only(parts);
      return {must<Q>(in, "low"), must<Q>(in, "central"), must<Q>(in, "high"),
              in.has("reason") ? in.at("reason").text() : std::string_view{}};
    }
  }
  static void write(answer& out, const tw::estimate<Q>& e) {
    if constexpr (!tw::core::quantity_name<Q>().empty()) {
      out.band(tw::core::quantity_name<Q>(),
               {tw::core::si_number(e.low), tw::core::si_number(e.central), tw::core::si_number(e.high)}, e.reason);
    } else if constexpr (requires { io<Q>::write_band(out, e); }) {
      io<Q>::write_band(out, e);
    } else {
      out.begin();
      out.key("low");
      io<Q>::write(out, e.low);
      out.key("central");
      io<Q>::write(out, e.central);
      out.key("high");
      io<Q>::write(out, e.high);
      out.key("reason");
      out.text(e.reason);
      out.end();
    }
  }
  static tw::estimate<Q> take(const double*& at) {
    const Q low = io<Q>::take(at), central = io<Q>::take(at), high = io<Q>::take(at);
    return {low, central, high, {}};
  }
  static void put(const tw::estimate<Q>& e, double*& at) {
    io<Q>::put(e.low, at);
    io<Q>::put(e.central, at);
    io<Q>::put(e.high, at);
  }
};

// ---- formulas -------------------------------------------------------------------------------------------------------

template <auto F>
void answer_with(const given& in, answer& out) {
  using R = std::remove_cvref_t<decltype(F(in))>;
  io<R>::write(out, F(in));
}
template <auto F>
void make_with(const given& in, void* into) {
  using R = std::remove_cvref_t<decltype(F(in))>;
  static_cast<std::optional<R>*>(into)->emplace(F(in));
}

}  // namespace tankwright_formulas
