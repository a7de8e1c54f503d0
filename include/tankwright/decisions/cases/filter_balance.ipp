// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <array>
#include <tankwright/core/inline.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/decisions/cases/filter_balance.hpp>
#include <tankwright/life/meals.hpp>

namespace tankwright::decisions {

namespace detail {

/// One filter: how good its films are, how much of the rock lives.
struct film_end {
  double quality;
  double alive;
};

class filter_scale {
 public:
  filter_scale(const plan::filter_inputs& filter, const filter_question& q) : q_{&q} {
    for (const plan::wet_surface& s : filter.surfaces) {
      core::check_element("tankwright::decisions::balance_of", s.label, life::film_area_limits,
                          in_square_metres(s.wet));
      films_ += s.wet * (q.when == filter_at::mature ? 1.0 : s.seeded.value());
    }
    reference_ = rate(filter.stay_below);
    at_ = {rate(q.level.low), rate(q.level.central), rate(q.level.high)};
  }

  /// Of central film, as much as does the work.
  [[nodiscard]] area film(const food_end& food, const film_end& film) const {
    return films_ * film.quality + food.rock * film.alive / reference_;
  }
  /// The same in nitrogen. At the level to stay below the rock takes just what it carried, to the last bit.
  [[nodiscard]] mass_flow takes(const food_end& food, const film_end& film, mass_flux rate) const {
    return films_ * film.quality * rate + food.rock * film.alive * (rate / reference_);
  }
  [[nodiscard]] mass_flux low() const { return at_[0]; }
  [[nodiscard]] mass_flux central() const { return at_[1]; }
  [[nodiscard]] mass_flux high() const { return at_[2]; }

  [[nodiscard]] mass_flow needed(const food_end& food, water::total_ammonia level) const {
    return life::capacity_for_meals(core::span_of(food.meals), level, q_->net).as_nitrogen();
  }
  [[nodiscard]] std::optional<water::total_ammonia> settles(const food_end& food, const film_end& by) const {
    return life::highest_ammonia(
        {.meals = core::span_of(food.meals), .film = film(food, by), .net = q_->net, .temperature = q_->temperature});
  }

 private:
  [[nodiscard]] mass_flux rate(water::total_ammonia level) const {
    return life::nitrification_rate({.ammonia = level, .temperature = q_->temperature}).central;
  }
  const filter_question* q_;
  area films_{};
  mass_flux reference_{};
  std::array<mass_flux, 3> at_{};
};

}  // namespace detail

TANKWRIGHT_INLINE food_end food_at(const plan::filter_inputs& filter, end_of_load end) {
  food_end at;
  for (const plan::meal& m : filter.food) {
    at.meals.push_back({.mean = plan::load_of({&m, 1}).*end, .every = m.every});
  }
  if (filter.rock) at.rock = (filter.rock->proven.*end).as_nitrogen() * filter.rock->share.value();
  return at;
}

TANKWRIGHT_INLINE filter_balance balance_of(const plan::filter_inputs& filter, const filter_question& q) {
  using ends = estimate<life::nitrogen_load>;
  const detail::filter_scale scale{filter, q};
  const std::array food{food_at(filter, &ends::low), food_at(filter, &ends::central), food_at(filter, &ends::high)};
  const detail::film_end poor{life::film_lowest, q.when == filter_at::today ? filter.survives.value() : 1.0};
  const detail::film_end middle{1.0, 1.0};
  const detail::film_end good{life::film_highest, 1.0};

  const auto takes = [&](const detail::film_end& by, std::size_t i, mass_flux rate) {
    return scale.takes(food[i], by, rate);
  };
  const auto spare = [&](const detail::film_end& by, std::size_t i, mass_flux rate, water::total_ammonia level) {
    return takes(by, i, rate) - scale.needed(food[i], level);
  };
  const std::array least{spare(poor, 0, scale.low(), q.level.low), spare(poor, 1, scale.low(), q.level.low),
                         spare(poor, 2, scale.low(), q.level.low)};
  const std::array most{spare(good, 0, scale.high(), q.level.high), spare(good, 1, scale.high(), q.level.high),
                        spare(good, 2, scale.high(), q.level.high)};
  const mass_flow central = spare(middle, 1, scale.central(), q.level.central);

  filter_balance b{.takes = {takes(poor, 0, scale.low()), takes(middle, 1, scale.central()),
                             takes(good, 2, scale.high()), film_and_food},
                   .by_rock = {food[0].rock * poor.alive, food[1].rock, food[2].rock, film_and_food},
                   .needed = {scale.needed(food[0], q.level.high), scale.needed(food[1], q.level.central),
                              scale.needed(food[2], q.level.low),
                              "digestion differs by about 25 %; of wet food all nitrogen is "
                              "counted"},
                   // A sharp load and an equal film leave rounding between the three.
                   .spare = {std::min(*std::min_element(least.begin(), least.end()), central), central,
                             std::max(*std::max_element(most.begin(), most.end()), central), film_and_food},
                   .settles = {}};

  b.settles.central = scale.settles(food[1], middle);
  if (!b.settles.central) return b;
  b.settles.low = b.settles.high = b.settles.central;
  bool rises = false;
  for (const food_end& at : food) {
    if (const auto best = scale.settles(at, good)) b.settles.low = std::min(*b.settles.low, *best);
    if (const auto worst = scale.settles(at, poor)) {
      b.settles.high = std::max(*b.settles.high, *worst);
    } else {
      rises = true;
    }
  }
  if (rises) b.settles.high.reset();
  return b;
}

}  // namespace tankwright::decisions
