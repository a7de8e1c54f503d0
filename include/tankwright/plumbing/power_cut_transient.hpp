// SPDX-License-Identifier: BSL-1.0
/// @file
/// How fast does the water come down after a power cut, and how high does each chamber rise on the way?
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include <tankwright/plumbing/drain.hpp>
#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::plumbing {

/// A power cut over time. Every return that can siphon needs its pipe, with length and fittings.
struct power_cut_transient_input {
  power_cut_input system;
  required<length> edge_above_floor;  ///< overflow edge of the display above the floor of the sump
  water::liquid water;
  duration until = minutes(10.0);
  duration sample_every = seconds(5.0);
};

/// The level in one chamber over time.
struct chamber_history {
  std::string label;
  std::vector<length> level;  ///< one a sample; chambers joined by a gap at the floor share theirs
  length peak;                ///< highest, between samples too
  duration peak_at;
};

/// What happens after the pump stops, sample by sample, with central values.
struct power_cut_history {
  std::vector<duration> time;
  std::vector<length> display;    ///< level over the overflow edge; negative below it
  std::vector<volume> under_way;  ///< in box and pipes, still to come down
  std::vector<chamber_history> chambers;
  length least_margin;  ///< from the highest peak up to the rim
  tankwright::caution caution;
};

inline constexpr limits edge_above_floor_limits{"edge_above_floor", "m", positive};
inline constexpr limits until_limits{"until", "s", positive};
inline constexpr limits sample_limits{"sample_every", "s", positive};
inline constexpr limits samples_limits{"number of samples", "", {0.0, 1e6}};

namespace detail {

/// The stores of water and the fluxes between them.
class power_cut_motion {
 public:
  power_cut_motion(std::string_view here, const power_cut_transient_input& task)
      : here_{here}, in_{&task.system}, shape_{in_->sump}, law_{law_for(task.water)} {
    const display_tank& d = in_->display;
    fixed_ = fixed_parts(*in_, true);
    height_ = task.edge_above_floor->value();
    area_ = d.surface->value();
    box_area_ = d.box ? d.box->plan->value() : 0.0;
    box_depth_ = d.box ? d.box->falls_by->value() : 0.0;
    const std::size_t n = shape_.size();
    std::vector<double> levels(n);
    run(here, in_->sump, fixed_.flow, band_side::central, 0.0, levels);
    for (std::size_t i = 0; i < n; ++i) {
      check_below_rim(here, in_->sump, i, levels[i]);
      if (shape_.first_joined(i) == i) first_.push_back(i), now_.pools.push_back(0.0);
      now_.pools.back() += shape_.below(i, levels[i]);
      if (i == in_->drains_into) drains_into_ = first_.size() - 1;
    }
    first_.push_back(n);
    now_.display = area_ * std::visit(
                               [&](const auto& e) {
                                 return edge_head(here, e, fixed_.flow, band_side::central, guess_head(e, fixed_.flow));
                               },
                               d.edge);
    now_.box = box_area_ * box_depth_;
    for (const return_line& r : in_->returns) add_return(r);
    const std::size_t pools_count = now_.pools.size();
    levels_.resize(pools_count);
    middle_levels_.resize(pools_count);
    areas_.resize(pools_count);
    flux_.siphons.resize(siphons_.size());
    flux_.emptying.resize(siphons_.size());
    flux_.weirs.resize(pools_count - 1);
    middle_ = now_;
    if (fixed_.flow > 0.0) {
      drains_hold_ = fixed_.drain_pipes;
    } else {  // nothing ran: what stands in the box and the drains goes at once
      now_.pools[drains_into_] += now_.box + fixed_.drain_pipes;
      now_.box = 0.0;
    }
    look();
  }

  /// One step, at most as long as `longest`.
  /// @return its length, s
  double step(double longest) {
    fluxes(now_, levels_);
    const double dt = std::min(longest, calm_time());
    limit(0.5 * dt);
    move(now_, middle_, 0.5 * dt);
    fluxes(middle_, middle_levels_);
    limit(dt);
    move(now_, now_, dt);
    if (drains_hold_ > 0.0) {  // drain pipes hold water in proportion to what they carry
      const double left = fixed_.drain_pipes * drain_flow(now_) / fixed_.flow;
      const double released = std::max(0.0, drains_hold_ - left);
      now_.pools[drains_into_] += released;
      drains_hold_ -= released;
    }
    look();
    return dt;
  }

  [[nodiscard]] double display_level() const noexcept { return now_.display / area_; }
  [[nodiscard]] double under_way() const noexcept {
    double sum = now_.box + drains_hold_;
    for (const double r : now_.returns) sum += r;
    return sum;
  }
  [[nodiscard]] std::size_t pools() const noexcept { return now_.pools.size(); }
  [[nodiscard]] double level(std::size_t pool) const noexcept { return levels_[pool]; }
  /// The pool that a chamber belongs to.
  [[nodiscard]] std::size_t pool_of(std::size_t chamber) const noexcept {
    std::size_t k = 0;
    while (first_[k + 1] <= chamber) ++k;
    return k;
  }

 private:
  struct stores {
    double display = 0.0;  // over the edge; negative below
    double box = 0.0;
    std::vector<double> returns;  // contents of the return pipes
    std::vector<double> pools;
  };
  struct back_siphon {
    double depth;           // below the edge, where it draws air
    darcy_run<double> run;  // with the exit
    double quiet;           // flow of the pipe when it empties with air in it
    double flow = 0.0;      // the last one: its friction factor serves the next
  };

  void add_return(const return_line& r) {
    const double depth = deepest_opening({r}, true);
    now_.returns.push_back(r.pipe ? contents(*r.pipe) : 0.0);
    if (depth * area_ <= -now_.display) {  // never under water
      siphons_.push_back({depth, {}, r.pipe ? quiet_flow(*r.pipe) : 0.0});
      return;
    }
    if (!r.pipe) core::refuse_element(here_, r.label, "has no pipe: how fast it siphons back is not known");
    run_numbers<double> numbers = numbers_of(here_, *r.pipe);
    if (numbers.closed) core::refuse_element(here_, r.label, "has its valve shut");
    numbers.k += 1.0;
    siphons_.push_back({depth, law_.prepare(numbers), quiet_flow(*r.pipe)});
    for (int i = 0; i < 20; ++i) (void)siphon(siphons_.back(), height_ - in_->sump.running_level->value());
  }

  [[nodiscard]] static double quiet_flow(const pipe_run& pipe) { return flow_at_drain_number(pipe.bore).value(); }

  /// Flow of a siphon under a drop, with the friction factor of its last flow.
  double siphon(back_siphon& s, double drop) const noexcept {
    if (drop <= 0.0) return 0.0;
    const double re = std::max(s.run.re_per_flow * s.flow, 1.0);
    const double f = friction_factor(re, s.run.e).f;
    return s.flow = std::sqrt(drop / (s.run.friction * f + s.run.minor));
  }

  [[nodiscard]] double level_of(const stores& at, std::size_t pool) const {
    return shape_.level(here_, first_[pool], first_[pool + 1] - 1, at.pools[pool]);
  }
  [[nodiscard]] double area_of(std::size_t pool, double z) const noexcept {
    double sum = 0.0;
    for (std::size_t i = first_[pool]; i < first_[pool + 1]; ++i) sum += shape_.free_area(i, z);
    return sum;
  }
  [[nodiscard]] double over_edge(const stores& at) const noexcept {
    return at.display > 0.0 ? edge_flow(in_->display.edge, at.display / area_, band_side::central) : 0.0;
  }
  /// What the drains carry: out of the box as (h/h0)^1.5 of what they carried when it ran, without a box what comes
  /// over the edge.
  [[nodiscard]] double drain_flow(const stores& at) const noexcept {
    if (box_depth_ <= 0.0 || fixed_.flow <= 0.0) return over_edge(at);
    const double part = std::max(0.0, at.box) / (box_area_ * box_depth_);
    return fixed_.flow * part * std::sqrt(part);
  }

  /// Levels and areas of the pools as they stand.
  void look() {
    for (std::size_t k = 0; k < pools(); ++k) {
      levels_[k] = level_of(now_, k);
      areas_[k] = area_of(k, levels_[k]);
    }
  }

  /// The fluxes between the stores. `levels` are those of `now_` already, or are written.
  void fluxes(const stores& at, std::vector<double>& levels) {
    if (&at != &now_) {
      for (std::size_t k = 0; k < pools(); ++k) levels[k] = level_of(at, k);
    }
    flux_.edge = over_edge(at);
    flux_.drain = box_depth_ > 0.0 && fixed_.flow > 0.0 ? drain_flow(at) : flux_.edge;
    for (std::size_t i = 0; i < siphons_.size(); ++i) {
      const bool runs = at.display + siphons_[i].depth * area_ > 1e-7 * area_;
      flux_.siphons[i] = runs ? siphon(siphons_[i], height_ + at.display / area_ - levels.back()) : 0.0;
      flux_.emptying[i] = runs ? 0.0 : siphons_[i].quiet;
    }
    for (std::size_t k = 0; k + 1 < pools(); ++k) {
      const std::size_t wall = first_[k + 1] - 1;
      const baffle& b = in_->sump.baffles[wall];
      const double crest = b.crest->value(), up = std::max(levels[k], levels[k + 1]) - crest;
      flux_.weirs[k] = 0.0;
      if (up <= 0.0 || levels[k] == levels[k + 1]) continue;
      const full_width_edge edge{.width = b.width, .crest_height = b.crest, .thickness = b.thickness};
      const double down = std::min(levels[k], levels[k + 1]) - crest;
      const double q = edge_flow(edge, up, band_side::central) * villemonte(down / up, 1.5);
      flux_.weirs[k] = levels[k] > levels[k + 1] ? q : -q;
    }
  }

  /// Time in which nothing moves much: no chamber by more than a quarter of a millimetre, display and box by a
  /// twentieth.
  [[nodiscard]] double calm_time() const noexcept {
    constexpr double quarter_millimetre = 2.5e-4;
    double dt = 1.0;
    const auto bound = [&](double store, double flow) {
      if (flow * dt > store) dt = store / flow;
    };
    if (now_.display > 0.0) bound(std::max(0.05 * now_.display, 1e-5 * area_), flux_.edge);
    if (box_depth_ > 0.0) bound(std::max(0.05 * now_.box, 1e-4 * box_area_), std::max(flux_.drain, flux_.edge));
    double last = 0.0;
    for (std::size_t i = 0; i < siphons_.size(); ++i)
      last += flux_.siphons[i] + (now_.returns[i] > 0.0 ? flux_.emptying[i] : 0.0);
    for (std::size_t k = 0; k < pools(); ++k) {
      double most = k > 0 ? std::fabs(flux_.weirs[k - 1]) : 0.0;
      if (k + 1 < pools()) most = std::max(most, std::fabs(flux_.weirs[k]));
      if (k == drains_into_) most = std::max(most, flux_.drain);
      if (k + 1 == pools()) most = std::max(most, last);
      bound(quarter_millimetre * areas_[k], most);
    }
    return dt;
  }

  /// No store gives more than it has, and no two pools more than half of what would level them.
  void limit(double dt) {
    flux_.edge = std::min(flux_.edge, std::max(0.0, now_.display) / dt);
    if (box_depth_ > 0.0 && fixed_.flow > 0.0)
      flux_.drain = std::min(flux_.drain, now_.box / dt + flux_.edge);
    else
      flux_.drain = flux_.edge;
    double display = now_.display - flux_.edge * dt;
    for (std::size_t i = 0; i < siphons_.size(); ++i) {
      flux_.siphons[i] = std::min(flux_.siphons[i], std::max(0.0, display + siphons_[i].depth * area_) / dt);
      flux_.emptying[i] = std::min(flux_.emptying[i], now_.returns[i] / dt);
      display -= flux_.siphons[i] * dt;
    }
    for (std::size_t k = 0; k + 1 < pools(); ++k) {
      const double here = levels_[k], next = levels_[k + 1];
      const double crest = shape_.crest(first_[k + 1] - 1);
      const double a = areas_[k], b = areas_[k + 1];
      const double up = std::max(here, next), down = std::min(here, next);
      const double source = here > next ? a : b;
      const double level = down > crest ? (up - down) * a * b / (a + b) : std::max(0.0, up - crest) * source;
      flux_.weirs[k] = std::clamp(flux_.weirs[k], -0.5 * level / dt, 0.5 * level / dt);
    }
  }

  /// to = from + dt times the fluxes.
  void move(const stores& from, stores& to, double dt) {
    double back = 0.0;
    to.display = from.display - flux_.edge * dt;
    to.box = from.box + (box_depth_ > 0.0 && fixed_.flow > 0.0 ? (flux_.edge - flux_.drain) * dt : 0.0);
    for (std::size_t i = 0; i < siphons_.size(); ++i) {
      to.display -= flux_.siphons[i] * dt;
      to.returns[i] = from.returns[i] - flux_.emptying[i] * dt;
      back += (flux_.siphons[i] + flux_.emptying[i]) * dt;
    }
    for (std::size_t k = 0; k < pools(); ++k) to.pools[k] = from.pools[k];
    to.pools[drains_into_] += flux_.drain * dt;
    to.pools.back() += back;
    for (std::size_t k = 0; k + 1 < pools(); ++k) {
      to.pools[k] -= flux_.weirs[k] * dt;
      to.pools[k + 1] += flux_.weirs[k] * dt;
    }
  }

  std::string_view here_;
  const power_cut_input* in_;
  sump_shape shape_;
  colebrook_law<double> law_;
  power_cut_fixed fixed_{};
  double height_ = 0.0, area_ = 0.0, box_area_ = 0.0, box_depth_ = 0.0;
  double drains_hold_ = 0.0;
  std::size_t drains_into_ = 0;
  std::vector<std::size_t> first_;  // pool k holds the chambers first_[k] .. first_[k + 1] - 1
  std::vector<back_siphon> siphons_;
  stores now_, middle_;
  std::vector<double> levels_, areas_, middle_levels_;
  struct {
    double edge = 0.0, drain = 0.0;
    std::vector<double> siphons, emptying, weirs;
  } flux_;
};

}  // namespace detail

/// Levels in display and sump over time after the pump stops.
///
///   display: A dz/dt = -Q_edge(z) - sum of the back-siphons;  box: Q_drain = Q0 (h/h0)^1.5;  chambers: over their
///   baffles, free or drowned;  by the midpoint rule, no chamber moving by more than 0.25 mm a step
///
/// Drain pipes hold water in proportion to what they carry; a return pipe empties at its self-venting flow once it
/// draws air. Check valves are taken to fail, siphon breaks to work.
///
/// @param task system as for `power_cut`; overflow edge above the floor of the sump [m] > 0; density and viscosity; end
/// and
///             sampling [s] > 0, at most a million samples
/// @return     samples from 0 to the end, peaks, the least margin, a caution
/// @throws     invalid_input (names the element by its label; a return that can siphon must have its pipe)
/// @accuracy   volume conserved to 1e-12; about 0.5 % in time against the closed forms; central values without a band,
/// so the
///             margin to trust is that of `power_cut`
/// @source     the formulas of `weirs.hpp`; energy equation with Colebrook 1939; the laws of box and drain pipes are
/// rules
///             of this library
[[nodiscard]] inline power_cut_history power_cut_transient(const power_cut_transient_input& task) {
  constexpr std::string_view here = "tankwright::plumbing::power_cut_transient";
  detail::check_power_cut(here, task.system);
  core::check(here, edge_above_floor_limits, task.edge_above_floor->value());
  core::check(here, until_limits, task.until.value());
  core::check(here, sample_limits, task.sample_every.value());
  core::check(here, samples_limits, task.until.value() / task.sample_every.value());
  const sump& plan = task.system.sump;
  const auto samples = static_cast<std::size_t>(task.until.value() / task.sample_every.value() * (1.0 + 1e-12));
  detail::power_cut_motion motion{here, task};
  std::vector<double> peak(motion.pools()), peak_at(motion.pools(), 0.0);

  power_cut_history history{
      .time = {}, .display = {}, .under_way = {}, .chambers = {}, .least_margin = {}, .caution = power_cut_caution};
  history.time.reserve(samples + 1);
  history.display.reserve(samples + 1);
  history.under_way.reserve(samples + 1);
  for (std::size_t i = 0; i < plan.chambers.size(); ++i) {
    history.chambers.push_back({detail::chamber_name(plan, i), {}, {}, {}});
    history.chambers.back().level.reserve(samples + 1);
  }
  const auto note_peaks = [&](double t) {
    for (std::size_t k = 0; k < motion.pools(); ++k) {
      const double z = motion.level(k);
      if (z > peak[k]) peak[k] = z, peak_at[k] = t;
    }
  };
  const auto sample = [&](double t) {
    history.time.push_back(duration::from_value(t));
    history.display.push_back(length::from_value(motion.display_level()));
    history.under_way.push_back(volume::from_value(motion.under_way()));
    for (std::size_t i = 0; i < plan.chambers.size(); ++i) {
      history.chambers[i].level.push_back(length::from_value(motion.level(motion.pool_of(i))));
    }
  };
  note_peaks(0.0);
  sample(0.0);
  double t = 0.0;
  for (std::size_t s = 1; s <= samples; ++s) {
    const double end = static_cast<double>(s) * task.sample_every.value();
    while (t < end) {
      const double left = end - t, dt = motion.step(left);
      t = dt < left ? t + dt : end;
      note_peaks(t);
    }
    sample(end);
  }
  double highest = 0.0;
  for (std::size_t i = 0; i < plan.chambers.size(); ++i) {
    const std::size_t k = motion.pool_of(i);
    history.chambers[i].peak = length::from_value(peak[k]);
    history.chambers[i].peak_at = duration::from_value(peak_at[k]);
    highest = std::max(highest, peak[k]);
  }
  history.least_margin = length::from_value(plan.rim->value() - highest);
  return history;
}

}  // namespace tankwright::plumbing
