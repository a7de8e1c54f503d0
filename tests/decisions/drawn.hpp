// SPDX-License-Identifier: BSL-1.0
/// @file
/// A plan moved within its doubts by code of the tests alone: what bands, chances and shares are held against.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <tankwright/core/amount.hpp>
#include <tankwright/plan/build.hpp>
#include <tankwright/plan/walk.hpp>
#include <vector>

namespace tankwright::testing {

class drawn_plan {
 public:
  explicit drawn_plan(const plan::build& build) : plan_{build} {
    finder find{*this};
    describe(find, plan_);
    // What stands for the doubts of other keys would count twice.
    for (const one& o : all_) o.number->know_exactly();
    if (plan_.water && plan_.water->now) plan_.water->now->division.move_to(1e-9);
    if (plan_.water && plan_.water->older_tank) plan_.water->older_tank->division.move_to(1e-9);
  }
  drawn_plan(const drawn_plan&) = delete;
  drawn_plan& operator=(const drawn_plan&) = delete;

  [[nodiscard]] const plan::build& plan() const noexcept { return plan_; }
  [[nodiscard]] const std::vector<std::string>& doubts() const noexcept { return names_; }
  /// Each doubt at its u from 0 to 1.
  void move_to(const std::vector<double>& u) {
    for (const one& o : all_) {
      const double side = 2.0 * u[o.doubt] - 1.0;
      double x = o.middle;
      switch (o.how.kind) {
        case plan::doubt_kind::distance:
          x = o.middle + side * o.how.size;
          break;
        case plan::doubt_kind::share:
          x = o.middle * (1.0 + side * o.how.size);
          break;
        case plan::doubt_kind::factor:
          x = o.middle * std::exp(side * std::log(o.how.size));
          break;
        case plan::doubt_kind::none:
          break;
      }
      o.number->move_to(std::min(std::max(x, std::min(o.low, o.middle)), std::max(o.high, o.middle)));
    }
  }

 private:
  struct one {
    plan::value_base* number;
    double middle;
    plan::usual_doubt how;
    double low;
    double high;
    std::size_t doubt;
  };
  class finder final : public plan::walker {
   public:
    explicit finder(drawn_plan& of) : of_{&of} {}

   private:
    void add(const plan::key_info& key, plan::value_base& v, bool new_doubt) {
      if (!v.given() || key.doubt_asked) return;
      plan::usual_doubt how = key.doubt;
      if (v.doubt().given) how = {plan::doubt_kind::distance, v.doubt().half_width};
      if (how.kind == plan::doubt_kind::none || !(how.size > 0.0)) return;
      if (new_doubt) of_->names_.push_back(path(key.name));
      of_->all_.push_back({&v, v.si(), how, key.low, key.high, of_->names_.size() - 1});
    }
    void number(const plan::key_info& key, plan::value_base& v) override { add(key, v, true); }
    void numbers(const plan::key_info& key, plan::values_base& v) override {
      bool first = true;
      for (auto& item : v.items) {
        const std::size_t before = of_->all_.size();
        add(key, item, first);
        if (of_->all_.size() > before) first = false;
      }
    }
    void one_of(const plan::key_info&, plan::word_base&, std::span<const std::string_view>) override {}
    void yes_or_no(const plan::key_info&, plan::flag&) override {}
    void text(const plan::key_info&, std::string&) override {}
    void rating(const plan::key_info&, plan::composite&) override {}
    drawn_plan* of_;
  };

  plan::build plan_;
  std::vector<one> all_{};
  std::vector<std::string> names_{};
};

/// A number that an engine gives with a band, moved evenly on each side of its middle.
[[nodiscard]] inline double moved_in_band(const amount& a, double u) noexcept {
  if (a.is_sharp()) return a.central;
  return u < 0.5 ? a.low + (a.central - a.low) * 2.0 * u : a.central + (a.high - a.central) * (2.0 * u - 1.0);
}

}  // namespace tankwright::testing
