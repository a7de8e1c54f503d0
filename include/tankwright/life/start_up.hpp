// SPDX-License-Identifier: BSL-1.0
/// @file
/// When is the filter ready? A simulation of ammonia, nitrite, nitrate and the two groups of bacteria over the weeks of
/// a start-up (planned in `start_up_plan.hpp`), with their peaks and the time from which the water stays clear.
///
/// It shows the shape of a start-up and compares ways to do it. It does not clear a tank for animals: only a measured
/// challenge test does (an ammonia dose that is gone, with its nitrite, the next day).
#pragma once

#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/detail/start_up_run.hpp>
#include <tankwright/life/nitrifiers.hpp>
#include <tankwright/life/nitrogen.hpp>
#include <tankwright/life/start_up_plan.hpp>

namespace tankwright::life {

/// The tank at one time.
struct start_up_sample {
  duration at;
  water::total_ammonia ammonia;
  nitrite_level nitrite;
  nitrate_level nitrate;
  bacteria living;
};

/// The worst moment of a level.
template <class Level>
struct peak {
  Level level;
  duration at;
};

/// How a start-up went, without the samples.
struct start_up_summary {
  std::string label;
  peak<water::total_ammonia> ammonia;
  peak<nitrite_level> nitrite;
  /// From when ammonia and nitrite stay at or below their limits until the end; empty when they do not.
  std::optional<duration> clear_since;
  mass nitrogen_added;                ///< by load and doses, with what was there at the start
  mass nitrogen_removed;              ///< by water changes
  mass nitrogen_oxidised;             ///< from ammonia to nitrite
  water::alkalinity alkalinity_used;  ///< by that, if nothing puts it back
  tankwright::caution caution;
};

/// How a start-up went.
struct start_up_result {
  start_up_summary summary;
  std::vector<start_up_sample> samples;
};

inline constexpr caution start_up_caution{
    "This shows the shape of a start-up, with fresh-water constants; in the sea it is much slower, often four to eight "
    "weeks. Never judge a filter by calculation alone: only a measured test, an ammonia dose gone to zero ammonia and "
    "zero nitrite within a day, clears the tank. Limits are starting values for healthy adults of common species; ask "
    "an aquatic veterinarian."};

inline constexpr limits start_up_horizon_limits{"horizon", "d", {1e-3, 3650.0}};
inline constexpr limits start_up_samples_limits{"samples (horizon over their interval)", "", {0.0, 1e5}};

namespace detail {

inline constexpr std::string_view simulate_here = "tankwright::life::simulate_start_up";

/// The next time of a schedule, in days.
class timer {
 public:
  explicit timer(const schedule& when) : at_{in_days(when.at)}, every_{in_days(when.every)}, left_{when.times} {}
  [[nodiscard]] double next() const noexcept {
    return left_ > 0 ? at_ + every_ * done_ : std::numeric_limits<double>::infinity();
  }
  /// True once for every time that has come.
  bool due(double now) noexcept {
    if (next() > now) return false;
    ++done_;
    --left_;
    return true;
  }

 private:
  double at_;
  double every_;
  int left_;
  int done_ = 0;
};

/// Everything checked and turned into days and mg/L.
class start_up_simulation {
 public:
  start_up_simulation(const start_up& plan, range_policy policy)
      : plan_{plan}, volume_{in_litres(plan.net)}, horizon_{in_days(plan.horizon)}, run_{checked(plan, policy)} {
    for (const auto& s : plan.seedings) seedings_.emplace_back(s.when);
    for (const auto& d : plan.doses) doses_.emplace_back(d.when);
    for (const auto& w : plan.water_changes) water_changes_.emplace_back(w.when);
    for (const auto& l : plan.loads) loads_.emplace_back(schedule{.at = l.from});
  }

  [[nodiscard]] start_up_result simulate() {
    std::vector<start_up_sample> samples;
    const double every = in_days(plan_.every);
    // What rounding adds is no sample.
    const auto last = static_cast<std::size_t>(std::ceil(horizon_ / every * (1.0 - 1e-12)));
    for (std::size_t i = 0; i <= last; ++i) {
      advance(i == last ? horizon_ : every * static_cast<double>(i));
      samples.push_back(sample());
    }
    return {summary(), std::move(samples)};
  }

 private:
  const start_up& plan_;
  double volume_;   // L
  double horizon_;  // d
  start_up_run run_;
  std::vector<timer> seedings_, doses_, water_changes_, loads_;
  double oxidised_before_ = run_.state[nitrite] + run_.state[nitrate];  // mg/L
  double added_ = run_.state[ammonia] + oxidised_before_;               // mg/L, with what was there
  double removed_ = 0.0;                                                // mg/L, by water changes
  double removed_oxidised_ = 0.0;

  static start_up_run checked(const start_up& plan, range_policy policy) {
    const auto require = [&](const limits& limit, double value) {
      core::check_element(simulate_here, plan.label, limit, value, policy);
    };
    const auto times = [&](const std::string& what, const schedule& when) {
      require({"time of " + what, "d", {0.0, 1e5}}, in_days(when.at));
      require({"repetitions of " + what, "", {1.0, 1e5}}, when.times);
      require({"interval of " + what, "d", {when.times > 1 ? 1e-3 : 0.0, 1e5}}, in_days(when.every));
    };
    const auto level = [&](std::string_view name, mass_concentration value) {
      require({name, "mg/L", possible_level}, in_milligrams_per_litre(value));
      return in_milligrams_per_litre(value);
    };
    const auto limit = [&](std::string_view name, mass_concentration value) {
      require({name, "mg/L", some_level}, in_milligrams_per_litre(value));
      return in_milligrams_per_litre(value);
    };
    require(net_volume_limits, in_litres(plan.net));
    require(nitrifier_temperature_limits, in_celsius(plan.temperature));
    require(nitrifier_oxygen_limits, in_milligrams_per_litre(plan.oxygen));
    require(start_up_horizon_limits, in_days(plan.horizon));
    require({"interval of the samples", "d", {1e-3, 1e5}}, in_days(plan.every));
    require(start_up_samples_limits, plan.horizon / plan.every);
    check_nitrifier("ammonia oxidisers", simulate_here, plan.ammonia_oxidisers);
    check_nitrifier("nitrite oxidisers", simulate_here, plan.nitrite_oxidisers);
    for (const auto& s : plan.seedings) {
      times("a seeding", s.when);
      require({"ammonia oxidisers of a seeding", "g", {0.0, 1e9}}, in_grams(s.added->ammonia_oxidisers));
      require({"nitrite oxidisers of a seeding", "g", {0.0, 1e9}}, in_grams(s.added->nitrite_oxidisers));
    }
    for (const auto& d : plan.doses) {
      times("an ammonia dose", d.when);
      level("rise by an ammonia dose", d.rise->as_nitrogen());
    }
    for (const auto& w : plan.water_changes) {
      times("a water change", w.when);
      require({"part of a water change", "", zero_to_one}, w.part->value());
    }
    for (const auto& l : plan.loads) {
      times("a load", {.at = l.from});
      require(nitrogen_load_limits, in_grams_per_day(l.load->as_nitrogen()));
    }
    const double t = in_celsius(plan.temperature);
    const double oxygen = in_milligrams_per_litre(plan.oxygen);
    return {{growth_at(plan.ammonia_oxidisers, t, oxygen), growth_at(plan.nitrite_oxidisers, t, oxygen), 0.0},
            {level("ammonia", plan.ammonia.as_nitrogen()), 0.0, level("nitrite", plan.nitrite.as_nitrogen()), 0.0,
             level("nitrate", plan.nitrate.as_nitrogen())},
            {.limit = limit("ammonia limit", plan.ammonia_limit.as_nitrogen())},
            {.limit = limit("nitrite limit", plan.nitrite_limit.as_nitrogen())}};
  }

  /// Run to a time, stopping wherever something happens. What happens at the time itself happens before the sample.
  void advance(double end) {
    happen();
    while (run_.now() < end) {
      double stop = end;
      for (const auto* timers : {&seedings_, &doses_, &water_changes_, &loads_}) {
        for (const timer& t : *timers) stop = std::fmin(stop, t.next());
      }
      added_ += run_.system.load * (stop - run_.now());
      run_.run_until(simulate_here, stop);
      happen();
    }
  }

  void happen() {
    const auto each = [&](std::vector<timer>& timers, const auto& items, auto what) {
      for (std::size_t i = 0; i < timers.size(); ++i) {
        while (timers[i].due(run_.now())) what(items[i]);
      }
    };
    pools<double>& y = run_.state;
    each(water_changes_, plan_.water_changes, [&](const water_change& change) {
      const double part = change.part->value();
      removed_ += part * (y[ammonia] + y[nitrite] + y[nitrate]);
      removed_oxidised_ += part * (y[nitrite] + y[nitrate]);
      for (const pool p : {ammonia, nitrite, nitrate}) y[p] *= 1.0 - part;
    });
    each(doses_, plan_.doses, [&](const ammonia_dose& dose) {
      y[ammonia] += in_milligrams_per_litre(dose.rise->as_nitrogen());
      added_ += in_milligrams_per_litre(dose.rise->as_nitrogen());
    });
    each(seedings_, plan_.seedings, [&](const seeding& s) {
      y[ammonia_oxidisers] += in_milligrams(s.added->ammonia_oxidisers) / volume_;
      y[nitrite_oxidisers] += in_milligrams(s.added->nitrite_oxidisers) / volume_;
    });
    each(loads_, plan_.loads,
         [&](const load_step& step) { run_.system.load = in_grams_per_day(step.load->as_nitrogen()) * 1e3 / volume_; });
    run_.jumped();
  }

  [[nodiscard]] start_up_sample sample() const {
    const auto level = [&](pool p) { return milligrams_per_litre(run_.state[p]); };
    return {days(run_.now()),
            water::total_ammonia::from_nitrogen(level(ammonia)),
            nitrite_level::from_nitrogen(level(nitrite)),
            nitrate_level::from_nitrogen(level(nitrate)),
            {level(ammonia_oxidisers) * plan_.net.get(), level(nitrite_oxidisers) * plan_.net.get()}};
  }

  [[nodiscard]] start_up_summary summary() const {
    const pool_watch& a = run_.ammonia_watch;
    const pool_watch& n = run_.nitrite_watch;
    const auto whole = [&](double level) { return milligrams(level * volume_); };
    const double oxidised = run_.state[nitrite] + run_.state[nitrate] + removed_oxidised_ - oxidised_before_;
    start_up_summary out{plan_.label,
                         {water::total_ammonia::from_nitrogen(milligrams_per_litre(a.highest)), days(a.highest_at)},
                         {nitrite_level::from_nitrogen(milligrams_per_litre(n.highest)), days(n.highest_at)},
                         std::nullopt,
                         whole(added_),
                         whole(removed_),
                         whole(oxidised),
                         water::alkalinity::from_milliequivalents_per_litre(oxidised * without_growth_equivalents /
                                                                            molar<double>::nitrogen),
                         start_up_caution};
    if (a.clear_since && n.clear_since) out.clear_since = days(std::fmax(*a.clear_since, *n.clear_since));
    return out;
  }
};

}  // namespace detail

/// The course of a start-up.
///
///   dS/dt = P - q_A X_A,  dN/dt = q_A X_A - q_N X_N,  dC/dt = q_N X_N,  dX/dt = (Y q - b) X,
///   q = (mu/Y) S/(K + S) O/(K_O + O), with N in place of S for the nitrite oxidisers
///
/// @param plan   net volume > 0, temperature 5 to 35 degC, oxygen >= 0, levels >= 0, what happens when; horizon up to
///               ten years. At one time, water is changed first, then ammonia dosed, bacteria added, the load set.
/// @param policy `extrapolate` to go past these temperatures
/// @return       summary with peaks, the time from which the levels stay below their limits, the nitrogen ledger and
///               the caution; samples at equal intervals, from the start to the horizon
/// @throws       invalid_input, out_of_range (names what is wrong), no_convergence
/// @accuracy     1e-6 relative against the equations, nitrogen conserved to 1e-10, never negative; the equations with
///               these constants show the shape, not the dates
/// @source       Monod equations with the constants of Metcalf & Eddy 2014; RODAS, Hairer and Wanner 1996
[[nodiscard]] inline start_up_result simulate_start_up(const start_up& plan,
                                                       range_policy policy = range_policy::published) {
  return detail::start_up_simulation{plan, policy}.simulate();
}

/// Several ways to start, simulated and put in order: the lowest peak of ammonia first.
///
///   simulate_start_up of each
///
/// @param plans  the ways, each with its label
/// @param policy `extrapolate` to go past the temperatures of the growth rates
/// @return       their summaries, ordered by the peak of ammonia; equal ones stay in the order given
/// @throws       as simulate_start_up
/// @accuracy     as simulate_start_up
/// @source       as simulate_start_up
[[nodiscard]] inline std::vector<start_up_summary> compare_start_ups(std::span<const start_up> plans,
                                                                     range_policy policy = range_policy::published) {
  std::vector<start_up_summary> order;
  order.reserve(plans.size());
  for (const start_up& plan : plans) {
    order.push_back(simulate_start_up(plan, policy).summary);
    for (std::size_t i = order.size() - 1; i > 0 && order[i].ammonia.level < order[i - 1].ammonia.level; --i) {
      std::swap(order[i], order[i - 1]);
    }
  }
  return order;
}

}  // namespace tankwright::life
