// SPDX-License-Identifier: BSL-1.0
/// @file
/// One case of a power cut on raw numbers: what falls, the course until no later moment can be worse, and where the
/// water comes to rest.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>
#include <string_view>
#include <vector>

#include <tankwright/numerics/root.hpp>
#include <tankwright/plumbing/detail/power_cut_course.hpp>

namespace tankwright::plumbing::detail {

/// One case of a power cut.
struct power_cut_case {
  std::span<double> running, settled;  // one level a chamber
  double head{};
  double over_edge{}, back_siphon{}, box{};
  double sump_scale{}, display_area{}, box_area{}, box_depth{};
  double highest{};  // level at any moment, the walls continued above the rim
  double at{};       // when, s; infinite when all has come to rest
  std::size_t chamber{};
  double spare{};  // below the rim, at rest
  double floor{};  // what ran over the rim
  double floods_at = std::numeric_limits<double>::infinity();
  bool extrapolated{};
};

/// A power cut that was checked, in any case of it.
class power_cut_engine {
 public:
  power_cut_engine(std::string_view here, const power_cut_input& in, int most_steps = 20'000)
      : here_{here},
        in_{&in},
        shape_{in.sump},
        lines_{here, in},
        flow_{total_flow(in.returns)},
        return_pipes_{lines_.contents_of_all()},
        depth_{lines_.deepest_opening()},
        most_steps_{most_steps},
        water_(shape_.size()) {
    for (const pipe_run& pipe : in.display.drains) drain_pipes_ += contents(pipe);
  }

  [[nodiscard]] const sump_shape& shape() const noexcept { return shape_; }
  [[nodiscard]] double flow() const noexcept { return flow_; }
  [[nodiscard]] double drain_pipes() const noexcept { return drain_pipes_; }
  [[nodiscard]] double return_pipes() const noexcept { return return_pipes_; }
  [[nodiscard]] double total(const power_cut_case& c) const noexcept {
    return c.over_edge + c.back_siphon + c.box + drain_pipes_ + return_pipes_;
  }

  /// Levels and head while the pump runs.
  void run_moved(const power_cut_moves& by, power_cut_case& c) {
    const double q = flow_ * by.flow;
    const auto run_at = [&](double shift) { return run(in_->sump, in_->drains_into, q, by.side, shift, c.running); };
    c.extrapolated = run_at(by.running_level);
    if (const double added = in_->topped_up.value(); added > 0.0) {
      const double before = held(c.running);
      const double shift = numerics::bracketed_root(
          here_, "running level",
          [&](double rise) {
            (void)run_at(by.running_level + rise);
            return by.sump_area * (held(c.running) - before) - added;
          },
          0.0, (1.0 + 1e-6) * added / (by.sump_area * shape_.least_area(shape_.size() - 1)), {.absolute = 1e-9});
      (void)run_at(by.running_level + shift);
    }
    std::visit(
        [&](const auto& e) {
          c.head = edge_head(here_, e, q, by.side, guess_head(e, q));
          c.extrapolated = c.extrapolated || outside_published(e, c.head);
        },
        in_->display.edge);
  }

  /// What comes down from there, and where it would settle with the walls of the sump continued.
  void fall_moved(const power_cut_moves& by, power_cut_case& c) {
    const std::size_t n = shape_.size();
    c.sump_scale = by.sump_area;
    c.display_area = in_->display.surface->value() * by.display_area;
    c.back_siphon = c.display_area * std::fmax(0.0, depth_ + by.outlets);
    c.box_area = c.box_depth = 0.0;
    if (in_->display.box) {
      c.box_depth = std::fmax(0.0, in_->display.box->falls_by->value() + by.box_falls);
      c.box_area = in_->display.box->horizontal_area->value() * by.display_area;
    }
    c.box = c.box_area * c.box_depth;
    c.over_edge = c.display_area * c.head;
    for (std::size_t i = 0; i < n; ++i) water_[i] = c.sump_scale * shape_.below(i, c.running[i]);
    water_[in_->drains_into] += c.over_edge + c.box + drain_pipes_;
    water_[n - 1] += c.back_siphon + return_pipes_;
    const double rest = settle(here_, shape_, c.sump_scale, {water_.data(), n}, c.settled);
    const auto highest_in = [](std::span<const double> levels) {
      return static_cast<std::size_t>(std::max_element(levels.begin(), levels.end()) - levels.begin());
    };
    c.chamber = highest_in(c.running);
    c.highest = c.running[c.chamber];
    c.at = 0.0;
    if (rest > c.highest) {
      c.chamber = highest_in(c.settled);
      c.highest = rest;
      c.at = std::numeric_limits<double>::infinity();
    }
    c.floor = 0.0;
    c.spare = std::fmax(0.0, c.sump_scale * (shape_.below_all(rim()) - held(c.settled)));
  }

  /// The highest level of the whole course.
  void follow(const power_cut_moves& by, power_cut_case& c) {
    power_cut_course course = start(by, c, above_rim::walls_continue, 1.0);
    bool level = std::isinf(c.at);  // the rest is the highest so far, and all chambers stand at it
    for (const double z : c.settled) level = level && z == c.highest;
    if (level && course.never_above(c.highest)) return;
    double t = 0.0;
    for (int i = 0;; ++i) {
      const double bound = course.bound();
      if (bound <= c.highest + 1e-5 || course.trickles()) return;  // no later moment can be worse
      if (i == most_steps_) {
        c.highest = bound;
        c.at = t;
        c.chamber = course.highest_chamber();
        return;
      }
      course.refine_near(c.highest);
      t += course.step(core::largest);
      if (course.highest() > c.highest) {
        c.highest = course.highest();
        c.at = t;
        c.chamber = course.highest_chamber();
      }
    }
  }

  /// The course again, with a rim: what runs onto the floor, from when on, and where the rest settles.
  void flood(const power_cut_moves& by, power_cut_case& c) {
    const std::size_t n = shape_.size();
    power_cut_course course = start(by, c, above_rim::runs_over, 1.0);
    double t = 0.0;
    if (course.on_the_floor() > 0.0) c.floods_at = t;  // above the rim as the power fails
    for (int i = 0; i < most_steps_ && !course.trickles() && !course.full() && course.bound() > rim(); ++i) {
      t += course.step(core::largest);
      if (course.on_the_floor() > 0.0) c.floods_at = std::fmin(c.floods_at, t - course.spilling());
    }
    for (std::size_t i = 0; i < n; ++i) water_[i] = course.volume_in(i);
    water_[in_->drains_into] += course.to_come_by_drains();
    water_[n - 1] += course.to_come_back();
    const double rest = settle(here_, shape_, c.sump_scale, {water_.data(), n}, c.settled);
    c.floor = course.on_the_floor();
    if (rest > rim()) {
      c.floods_at = std::fmin(c.floods_at, t);  // with the last trickle: no earlier than its beginning
      c.floor += c.sump_scale * (held(c.settled) - shape_.below_all(rim()));
      for (double& level : c.settled) level = std::fmin(level, rim());
    }
    c.spare = std::fmax(0.0, c.sump_scale * (shape_.below_all(rim()) - held(c.settled)));
  }

  /// The power cut of the plan, moved.
  void work_out(const power_cut_moves& by, power_cut_case& c) {
    run_moved(by, c);
    fall_moved(by, c);
    follow(by, c);
    if (c.highest > rim()) flood(by, c);
  }

  [[nodiscard]] power_cut_course start(const power_cut_moves& by, const power_cut_case& c, above_rim rim_is,
                                       double fineness) {
    const power_cut_start at{.flow = flow_ * by.flow,
                             .head = c.head,
                             .display_area = c.display_area,
                             .box_area = c.box_area,
                             .box_depth = c.box_depth,
                             .drain_pipes = drain_pipes_,
                             .sump_scale = c.sump_scale,
                             .deeper = by.outlets,
                             .height = in_->edge_above_floor->value(),
                             .rim = rim(),
                             .drains_into = in_->drains_into,
                             .side = by.side,
                             .running = c.running};
    return {here_, *in_, shape_, lines_, at, rim_is, fineness};
  }

  [[nodiscard]] double rim() const noexcept { return in_->sump.rim->value(); }
  /// Volume at levels, on areas as given.
  [[nodiscard]] double held(std::span<const double> levels) const noexcept {
    double sum = 0.0;
    for (std::size_t i = 0; i < levels.size(); ++i) sum += shape_.below(i, levels[i]);
    return sum;
  }

 private:
  std::string_view here_;
  const power_cut_input* in_;
  sump_shape shape_;
  siphon_lines lines_;
  double flow_, drain_pipes_ = 0.0, return_pipes_, depth_;
  int most_steps_;
  std::vector<double> water_;
};

}  // namespace tankwright::plumbing::detail
