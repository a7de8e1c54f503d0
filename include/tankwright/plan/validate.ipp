// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/rules.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/plan/walk.hpp>
#include <tankwright/text/written.hpp>

namespace tankwright::plan {

namespace detail {

/// A number as a person would read it, in the unit that the key was written in.
[[nodiscard]] inline std::string readable(double si, std::string_view unit, std::string_view quantity) {
  if (unit.empty()) unit = text::everyday_unit(amount{quantity, si, si, si}, text::unit_system::si);
  return text::in(amount{quantity, si, si, si}, text::shown_unit(unit), text::significant(6));
}
/// A limit to four digits: in the same unit, unless it is easier to read in one of its own size ("1 h", not 0.04167 d).
[[nodiscard]] inline std::string readable_limit(double si, std::string_view unit, std::string_view quantity) {
  const amount limit{quantity, si, si, si};
  const auto easy = [&](std::string_view in) {
    const double number = std::fabs(text::number_in(limit, in));
    return number == 0.0 || (number >= 0.001 && number < 1e5);
  };
  const std::string_view own = text::everyday_unit(limit, text::unit_system::si);
  if (unit.empty() || quantity == "duration" || (!easy(unit) && easy(own))) unit = own;
  return text::in(limit, text::shown_unit(unit), text::significant(4));
}

/// Holds every key against what its description says.
class key_checker final : public walker {
 public:
  explicit key_checker(std::vector<mistake>& all) : all_{&all} { given_.reserve(64); }

  void alternatives(std::initializer_list<std::string_view> names, bool needed) override {
    std::string both, first;
    for (const std::string_view name : names) {
      if (!is_given(name)) continue;
      if (first.empty()) {
        first = name;
      } else if (both.empty()) {
        both = name;
      }
    }
    if (!both.empty()) {
      all_->push_back({path(both), "is given beside " + first + "; give one of them, not both", path(first)});
    } else if (first.empty() && needed) {
      all_->push_back({path(), "needs one of " + listed(names)});
    }
  }
  void together(std::initializer_list<std::string_view> names) override {
    std::string first;
    for (const std::string_view name : names) {
      if (first.empty() && is_given(name)) first = name;
    }
    if (first.empty()) return;
    for (const std::string_view name : names) {
      if (!is_given(name)) all_->push_back({path(first), "needs " + std::string{name} + " beside it"});
    }
  }

 private:
  [[nodiscard]] bool is_given(std::string_view name) const {
    return std::find(given_.begin() + start_, given_.end(), name) != given_.end();
  }
  [[nodiscard]] static std::string listed(std::initializer_list<std::string_view> names) {
    std::string all;
    for (const std::string_view name : names) all += (all.empty() ? "" : ", ") + std::string{name};
    return all;
  }
  /// Whether a key is there; one that must be is missed.
  bool there(const key_info& key, bool given, bool known) {
    if (given) given_.push_back(key.name);
    if (key.needed && !known) {
      std::string example;
      if (!key.quantity.empty()) {
        const std::string_view written = text::example_of(key.quantity);
        example = ", for instance " + std::string{written.substr(0, written.find(" or "))};
      }
      all_->push_back({path(key.name), "is missing: " + std::string{key.means} + example});
    }
    return given;
  }
  /// `item` is the place in a list, from 1; 0 for a key that holds one number.
  void hold(const key_info& key, const value_base& v, std::size_t item) {
    const double si = v.si();
    const bool doubt_sound = !v.doubt().given || (v.doubt().half_width >= 0.0 && std::isfinite(v.doubt().half_width));
    if (si >= key.low && si <= key.high && (!key.whole || si == std::floor(si)) && doubt_sound) return;
    const std::string where = path(key.name) + (item > 0 ? "[" + std::to_string(item) + "]" : "");
    const auto said = [&](double x) { return readable(x, v.unit(), key.quantity); };
    const auto limit = [&](double x) { return readable_limit(x, v.unit(), key.quantity); };
    if (!std::isfinite(si)) {
      all_->push_back({where, "is not a finite number"});
    } else if (!(si >= key.low && si <= key.high)) {
      all_->push_back({where, said(si) + " is not possible; expected " + limit(key.low) + " to " + limit(key.high) +
                                  guess(key, si)});
    } else if (key.whole && si != std::floor(si)) {
      all_->push_back({where, said(si) + " is not a whole number"});
    }
    if (!doubt_sound) {
      all_->push_back({where, "has a doubt that is not a number from 0 on"});
    }
  }
  /// What a number may have been meant as: degrees of the other scale, hectopascals, a decimal point left out.
  [[nodiscard]] static std::string guess(const key_info& key, double si) {
    if (key.quantity == "temperature") {
      const double other = in_kelvins(fahrenheit(in_celsius(kelvin_of(si))));
      if (other >= key.low && other <= key.high) {
        return "; did you mean " + text::of(in_celsius(kelvin_of(si)), text::significant(6)) + " °F?";
      }
    }
    if (key.quantity == "absolute_pressure" && 100.0 * si >= key.low && 100.0 * si <= key.high) {
      return "; did you mean " + text::of(si, text::significant(6)) + " hPa?";
    }
    if (key.low > 0.0) {
      for (const double by : {1000.0, 100.0, 10.0}) {
        const double other = si / by;
        if (key.quantity == "number" && other >= key.low && other <= key.high) {
          return "; did you mean " + text::of(other, text::significant(6)) + "?";
        }
      }
    }
    return {};
  }
  [[nodiscard]] static temperature kelvin_of(double si) { return core::from_si_number<temperature>(si); }
  [[nodiscard]] static double in_kelvins(const temperature& t) { return core::si_number(t); }

  void number(const key_info& key, value_base& v) override {
    if (there(key, v.given(), v.known())) hold(key, v, 0);
  }
  void numbers(const key_info& key, values_base& v) override {
    if (!there(key, v.given(), v.given())) return;
    for (std::size_t i = 0; i < v.size(); ++i) hold(key, v.items[i], i + 1);
  }
  void one_of(const key_info& key, word_base& w, std::span<const std::string_view> words) override {
    if (!there(key, w.given(), w.known())) return;
    if (w.index() < 0 || static_cast<std::size_t>(w.index()) >= words.size()) {
      all_->push_back({path(key.name), "is not one of its words"});
    }
  }
  void yes_or_no(const key_info& key, flag& f) override { there(key, f.given(), true); }
  void text(const key_info& key, std::string& t) override {
    if (!there(key, !t.empty(), !t.empty())) return;
    for (std::size_t i = 0; i < t.size(); ++i) {
      const auto byte = static_cast<unsigned char>(t[i]);
      const auto next = i + 1 < t.size() ? static_cast<unsigned char>(t[i + 1]) : 0u;
      const bool first_set = (byte < 0x20 && t[i] != '\n' && t[i] != '\t') || byte == 0x7f;
      if (first_set || (byte == 0xC2 && next >= 0x80 && next < 0xA0)) {  // and those of the second set, in UTF-8
        all_->push_back({path(key.name), "has a control character in it"});
        return;
      }
    }
  }
  void rating(const key_info& key, composite& c) override { there(key, c.given(), c.given()); }
  void enter(const key_info& key) override {
    given_.push_back(key.name);
    outer_.push_back(start_);
    start_ = static_cast<std::ptrdiff_t>(given_.size());
  }
  void leave(const key_info&) override {
    given_.resize(static_cast<std::size_t>(start_));
    start_ = outer_.back();
    outer_.pop_back();
  }
  void missing(const key_info& key) override {
    if (key.needed) all_->push_back({path(key.name), "is missing: " + std::string{key.means}});
  }
  void list(const key_info& key, std::size_t size) override {
    if (key.needed && size == 0) all_->push_back({path(key.name), "is missing: " + std::string{key.means}});
  }

  std::vector<mistake>* all_;
  std::vector<std::string_view> given_{};  ///< keys of the tables that are open, those of this one from `start_` on
  std::ptrdiff_t start_ = 0;
  std::vector<std::ptrdiff_t> outer_{};  ///< where those of the tables around it start
};

}  // namespace detail

TANKWRIGHT_INLINE std::vector<mistake> validate(const build& build) {
  std::vector<mistake> all;
  detail::key_checker checker{all};
  look_at(checker, build);
  // What follows from a number that cannot exist is no mistake of its own.
  const std::vector<mistake> impossible = all;
  std::vector<mistake> clashes;
  hold_rules(build, clashes);
  for (mistake& m : clashes) {
    const auto causes = [&](const mistake& known) {
      return !known.path.empty() && (known.path == m.clashes || known.path == m.path);
    };
    if (std::none_of(impossible.begin(), impossible.end(), causes)) all.push_back(std::move(m));
  }
  return all;
}

}  // namespace tankwright::plan
