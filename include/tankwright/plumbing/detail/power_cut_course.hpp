// SPDX-License-Identifier: BSL-1.0
/// @file
/// The course of a power cut, step by step: display, box, pipes and chambers as stores, and what runs between them.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include <tankwright/plumbing/detail/siphon_lines.hpp>
#include <tankwright/plumbing/power_cut_system.hpp>

namespace tankwright::plumbing::detail {

/// What a course starts from, in SI: levels while the pump runs, and what will come down.
struct power_cut_start {
  double flow, head;  // of the pump; over the edge
  double display_area;
  double box_area, box_depth;
  double drain_pipes;
  double sump_scale;
  double deeper;
  double height;  // edge of the display over the floor of the sump
  double rim;
  std::size_t drains_into;
  band_side side;
  std::span<const double> running;  // one level a chamber
};

/// Whether the walls of the sump are continued above its rim, so that a level says how high they would have to be, or
/// the water runs over it onto the floor.
enum class above_rim { walls_continue, runs_over };

/// Display and box by explicit steps, chambers by the two-stage diagonally implicit Runge-Kutta method (gamma = 1 -
/// 1/sqrt 2, L-stable, second order) with Newton's method on the tridiagonal system of their levels: neither a small
/// chamber nor a drowned baffle asks for small steps. Every step moves volumes, so water is kept to rounding.
///
/// With no water coming in, the highest level only falls: with every chamber at it nothing flows. So what is still to
/// come, poured at once over the receiving chamber, bounds all later levels (`bound`).
class power_cut_course {
  // std::fmax and std::fmin are calls
  static constexpr double larger(double a, double b) noexcept { return a > b ? a : b; }
  static constexpr double smaller(double a, double b) noexcept { return a < b ? a : b; }

 public:
  power_cut_course(std::string_view here, const power_cut_input& in, const sump_shape& shape, siphon_lines lines,
                   const power_cut_start& start, above_rim rim, double fineness)
      : here_{here},
        edge_{&in.display.edge},
        shape_{&shape},
        lines_{std::move(lines)},
        start_{start},
        rim_{rim},
        n_{shape.size()},
        numbers_(13 * shape.size()) {
    reference_ = start.rim;
    level_step_ = larger(0.002, start.rim / 150.0) / fineness;
    fineness_ = fineness;
    passages_.reserve(n_);
    for (std::size_t i = 0; i + 1 < n_; ++i) passages_.emplace_back(in.sump.baffles[i], start.side);
    for (std::size_t i = 0; i < n_; ++i) {
      z()[i] = start.running[i];
      v()[i] = below(i, z()[i]);
    }
    over_ = start.head;
    lines_.start(over_, start.deeper, height());
    box_ = start.box_area * start.box_depth;
    hold_ = start.drain_pipes;
    if (start.flow <= 0.0) {  // nothing ran: what stands in the box and the drains goes at once
      v()[start.drains_into] += box_ + hold_;
      box_ = hold_ = 0.0;
      level(start.drains_into);
    }
    spill();
    note_highest();
    edge_now_ = edge(over_);
    back_now_ = lines_.flow(height());
    least_area_ = least_area();
    next_ = 0.5 * level_step_ * least_area_ / larger(1e-9, start.flow + lines_.falling_flow() + back_now_);
  }

  /// One step, at most as long as `longest`.
  /// @return its length, s
  double step(double longest) {
    const double h = over_;
    const double inflow = edge_now_, back = back_now_;
    double dt = smaller(longest, next_);
    const double fall = (inflow + back) / start_.display_area;
    const double first = -lines_.next_opening();
    const bool siphoning = back > 0.0;
    if (h > 0.0) dt = smaller(dt, larger(display_part() * h, siphoning ? 1e-3 : 1e-5) / fall);
    // Near the level of the sump no more than half of the way there: the middle of a longer step lies below it.
    if (siphoning) dt = smaller(dt, larger(1e-9, smaller(0.01, 0.5 * height())) / fall);
    dt = smaller(dt, larger(0.05, level_step_ * least_area_ / lines_.falling_flow()));
    bool draws_air = siphoning && h - fall * dt <= first;
    if (draws_air) dt = (h - first) / fall;
    for (;; dt *= 0.5, draws_air = false) {
      const double middle = h - 0.5 * dt * fall, edge_water = dt * edge(middle);
      double siphon_water = siphoning ? dt * lines_.flow(height_at(middle, 0.5 * dt)) : 0.0;
      double next = h - (edge_water + siphon_water) / start_.display_area;
      if (draws_air) {  // lands on the opening
        siphon_water = larger(0.0, (h - first) * start_.display_area - edge_water);
        next = first;
      } else if (siphoning && next < first) {
        continue;
      }
      double box = box_, hold = hold_;
      const double edge_then = edge(next);
      const double drained = drain(dt, edge_water, edge_then, box, hold);
      const double columns = lines_.falls_in(dt);
      if (!move_chambers(dt, drained, siphon_water + columns) && dt > 1e-6) continue;
      lines_.fall(dt);
      over_ = next;
      edge_now_ = edge_then;
      box_ = box;
      hold_ = hold;
      break;
    }
    commit(dt);
    if (draws_air) lines_.draw_air(-over_, height());
    back_now_ = lines_.flow(height());
    return dt;
  }

  [[nodiscard]] double over_edge() const noexcept { return over_; }
  [[nodiscard]] double level_in(std::size_t i) const noexcept { return z()[i]; }
  [[nodiscard]] double volume_in(std::size_t i) const noexcept { return v()[i]; }
  /// In box and pipes, still to come down.
  [[nodiscard]] double under_way() const noexcept { return box_ + hold_ + lines_.falling() + lines_.standing(); }
  [[nodiscard]] double on_the_floor() const noexcept { return floor_; }
  /// How long before the end of the last step water first stood above the rim in it, s.
  [[nodiscard]] double spilling() const noexcept { return spilling_; }
  [[nodiscard]] double highest() const noexcept { return z()[highest_]; }
  [[nodiscard]] std::size_t highest_chamber() const noexcept { return highest_; }

  /// Still to come into the chamber of the drains, and into the last one.
  [[nodiscard]] double to_come_by_drains() const noexcept {
    return larger(0.0, over_) * start_.display_area + box_ + hold_;
  }
  [[nodiscard]] double to_come_back() const noexcept {
    const double deepest = lines_.deepest_opening();
    const double low = smaller(over_, 0.0);
    const double display = larger(0.0, low + deepest) * start_.display_area;  // of none it is far above the edge
    return display + lines_.falling() + lines_.standing();
  }
  /// No chamber stands higher at any later time: all that can still come into the last chamber poured into it at once,
  /// and what comes down the drains over the first, from the highest level there is.
  [[nodiscard]] double bound() const noexcept {
    const std::size_t last = n_ - 1, first = start_.drains_into;
    const double down = to_come_by_drains();
    double into_last = to_come_back() + down;
    const double raised = start_.sump_scale * shape_->least_area(first);
    const double together = highest() + down / raised + to_come_back() / (start_.sump_scale * shape_->least_area(last));
    for (std::size_t i = 0; i < last; ++i) {
      const double stays = passages_[i].under() > 0.0 ? smaller(z()[i], z()[last]) : passages_[i].crest();
      if (z()[i] > stays) into_last += v()[i] - below(i, stays);
    }
    const double in_last = z()[last] + into_last / (start_.sump_scale * shape_->least_area(last));
    const double apart = larger(highest(), in_last) + (first == last ? 0.0 : down / raised);
    return smaller(together, apart);
  }
  /// Whether the level at rest, the same in every chamber, is never passed on the way; asked at the start.
  ///
  /// While R is still to come, the lowest chamber stands at most at rest - R/A. Water runs to it from both ends, by the
  /// drains from one and back through the returns from the other, and needs falls d(Q) over the baffles between: as
  /// long as their sum is at most R/A, no chamber stands above the rest. d falls with Q^2 or faster, and Q with R^1.5
  /// (edge, box) or with R^0.5 (columns; of several R is at least (sum q)^2 / sum(q^2/V)), so the start decides; a
  /// siphon runs evenly until it draws air and leaves its column.
  [[nodiscard]] bool never_above(double rest) const noexcept {
    const double display = larger(0.0, over_) * start_.display_area, box = start_.box_area * start_.box_depth;
    const auto columns = lines_.columns_at(height());
    const double back = larger(back_now_, columns.flow);
    double down = larger(start_.flow, edge_now_);
    if (hold_ > 0.0) down += box > 0.0 ? hold_ * 1.5 * down / box : released(down + back, display);
    const double by_drains = box > 0.0 ? smaller(display, box) : display;
    if (!falls_below(rest, down, by_drains, true)) return false;
    if (start_.drains_into > 0 && !falls_below(rest, down, by_drains, false)) return false;
    return falls_below(rest, back, columns.water, false);
  }
  /// Every chamber stands at the rim.
  [[nodiscard]] bool full() const noexcept {
    return std::all_of(z().begin(), z().end(), [&](double level) { return level >= start_.rim; });
  }
  /// What comes down and back at this moment.
  [[nodiscard]] double coming() const noexcept {
    return edge_now_ + drain_flow(box_) + lines_.falling_flow() + back_now_;
  }
  /// Only a hundredth of the flow is still coming.
  [[nodiscard]] bool trickles() const noexcept { return coming() <= larger(0.01 * start_.flow, still_flow); }
  [[nodiscard]] bool still() const noexcept { return coming() <= 4.0 * still_flow; }
  /// The level that matters: steps are fine near it.
  void refine_near(double level) noexcept { reference_ = level; }

 private:
  /// Whether a flow of which so much is still to come, through all the baffles to the lowest chamber, stands nowhere
  /// above the level at which all come to rest.
  [[nodiscard]] bool falls_below(double rest, double flow, double to_come, bool downstream) const noexcept {
    if (flow <= still_flow) return true;
    double area = 0.0;
    for (std::size_t i = 0; i < n_; ++i) area += area_at(i, rest);
    double stands = rest - 0.5 * to_come / area;  // half: chambers lag a little
    for (std::size_t k = 0; k + 1 < n_; ++k) {
      stands = level_before(passages_[downstream ? n_ - 2 - k : k], flow, stands);
    }
    return stands <= rest;
  }
  /// What the drain pipes let go as the flow over the edge falls, no steeper than the h^2.5 of a notch.
  [[nodiscard]] double released(double leaves, double display) const noexcept { return hold_ * 2.5 * leaves / display; }
  static constexpr double gamma = 0.29289321881345254;  // 1 - 1/sqrt(2)

  // Rows of numbers, one number a chamber.
  using numbers = std::span<double>;
  using fixed_numbers = std::span<const double>;
  [[nodiscard]] numbers row(std::size_t k) noexcept { return {numbers_.data() + k * n_, n_}; }
  [[nodiscard]] fixed_numbers row(std::size_t k) const noexcept { return {numbers_.data() + k * n_, n_}; }
  [[nodiscard]] numbers z() noexcept { return row(0); }
  [[nodiscard]] fixed_numbers z() const noexcept { return row(0); }
  [[nodiscard]] numbers v() noexcept { return row(1); }
  [[nodiscard]] fixed_numbers v() const noexcept { return row(1); }

  [[nodiscard]] double edge(double h) const noexcept {
    if (h <= 0.0) return 0.0;
    const double q = edge_flow(*edge_, h, start_.side);
    return q > still_flow ? q : 0.0;
  }
  /// The water that the siphons end in does not stand above the rim.
  [[nodiscard]] double height_at(double over, double later) const noexcept {
    const double last = z()[n_ - 1] + later * row(12)[n_ - 1];
    return start_.height + over - smaller(last, start_.rim);
  }
  [[nodiscard]] double height() const noexcept { return height_at(over_, 0.0); }

  /// Out of the box: (V/V0)^1.5 of what it passed when it ran.
  [[nodiscard]] double drain_flow(double box) const noexcept {
    if (box <= 0.0 || start_.flow <= 0.0) return 0.0;
    const double part = box / (start_.box_area * start_.box_depth);
    return start_.flow * part * std::sqrt(part);
  }
  /// Water that leaves box and drain pipes in a step at whose end `edge_then` comes over the edge; both are changed.
  [[nodiscard]] double drain(double dt, double edge_water, double edge_then, double& box, double& hold) const noexcept {
    double drained = edge_water, carried = edge_then;
    const double full = start_.box_area * start_.box_depth;
    if (full > 0.0 && start_.flow > 0.0) {
      const double in = edge_water / full, c = gamma * dt * start_.flow / full;
      const auto solve = [c](double right) {  // x + c x^1.5 = right, by Newton's method in sqrt x, falling from above
        if (right <= 0.0) return 0.0;
        for (double root = std::sqrt(right);;) {
          const double to = root - (root * root * (1.0 + c * root) - right) / (root * (2.0 + 3.0 * c * root));
          if (!(to < root)) return root * root;
          root = to;
        }
      };
      const double before = box / full;
      const double first = solve(before + gamma * in);
      const double slope = (first - before) / gamma;  // dt times the rate
      const double last = solve(before + (1.0 - gamma) * slope + gamma * in);
      drained = larger(0.0, box + edge_water - last * full);
      box = box + edge_water - drained;
      carried = drain_flow(box);
    }
    if (hold > 0.0) {  // drain pipes hold water in proportion to what they carry
      const double left = smaller(hold, start_.drain_pipes * carried / start_.flow);
      drained += hold - left;
      hold = left;
    }
    return drained;
  }

  /// The area of chamber i at a level, the water in it up to one, and the level of its volume.
  [[nodiscard]] double area_at(std::size_t i, double level) const noexcept {
    return start_.sump_scale * shape_->free_area(i, level);
  }
  [[nodiscard]] double below(std::size_t i, double level) const noexcept {
    return start_.sump_scale * shape_->below(i, level);
  }
  void level(std::size_t i) { z()[i] = shape_->level(here_, i, i, v()[i] / start_.sump_scale); }

  /// One stage: levels z with V(z) = base + weight (what flows in - what flows out). Fluxes are those of the solved
  /// linear system, so that they and the volumes agree.
  bool stage(fixed_numbers base, double weight, numbers levels, numbers flux) {
    const numbers diagonal = row(7);
    const numbers upper = row(8);
    const numbers right = row(9);
    const numbers by_here = row(10);
    const numbers by_next = row(11);
    for (int iteration = 0; iteration < 14; ++iteration) {
      for (std::size_t i = 0; i < n_; ++i) {
        diagonal[i] = area_at(i, levels[i]);
        right[i] = base[i] - below(i, levels[i]);
      }
      for (std::size_t i = 0; i + 1 < n_; ++i) {
        const bool down = levels[i] >= levels[i + 1];
        const auto p = down ? passages_[i](levels[i], levels[i + 1]) : passages_[i](levels[i + 1], levels[i]);
        flux[i] = down ? p.flow : -p.flow;
        by_here[i] = down ? p.by_up : -p.by_down;
        by_next[i] = down ? p.by_down : -p.by_up;
        right[i] -= weight * flux[i];
        right[i + 1] += weight * flux[i];
        diagonal[i] += weight * by_here[i];
        diagonal[i + 1] -= weight * by_next[i];
      }
      // Thomas: rows are (-w by_here[i-1], diagonal[i], w by_next[i])
      for (std::size_t i = 0; i + 1 < n_; ++i) {
        upper[i] = weight * by_next[i] / diagonal[i];
        right[i] /= diagonal[i];
        diagonal[i + 1] += weight * by_here[i] * upper[i];
        right[i + 1] += weight * by_here[i] * right[i];
      }
      right[n_ - 1] /= diagonal[n_ - 1];
      for (std::size_t i = n_ - 1; i-- > 0;) right[i] -= upper[i] * right[i + 1];
      double most{};
      for (std::size_t i = 0; i < n_; ++i) most = larger(most, std::fabs(right[i]));
      const double part = most > 4.0 * level_step_ ? 4.0 * level_step_ / most : 1.0;
      for (std::size_t i = 0; i < n_; ++i) levels[i] += part * right[i];
      if (most <= 1e-4) {  // Newton's method squares it, and the fluxes hold this step already
        for (std::size_t i = 0; i + 1 < n_; ++i) flux[i] += by_here[i] * right[i] + by_next[i] * right[i + 1];
        return true;
      }
    }
    return false;
  }

  /// The chambers over a step in which both inflows are even.
  /// @return whether the step was short enough
  bool move_chambers(double dt, double by_drains, double back) {
    const numbers base = row(2);
    const numbers levels = row(3);
    const numbers first = row(4);  // fluxes
    const numbers second = row(5);
    const numbers volumes = row(6);
    const fixed_numbers rate = row(12);  // of the last step: where to look first
    const std::size_t k = start_.drains_into;
    for (std::size_t i = 0; i < n_; ++i) volumes[i] = v()[i];
    volumes[k] += by_drains;
    volumes[n_ - 1] += back;
    if (n_ > 1) {
      for (std::size_t i = 0; i < n_; ++i) {
        base[i] = v()[i];
        levels[i] = z()[i] + gamma * dt * rate[i];
      }
      base[k] += gamma * by_drains;
      base[n_ - 1] += gamma * back;
      if (!stage(base, gamma * dt, levels, first)) return false;
      for (std::size_t i = 0; i < n_; ++i) {
        base[i] = volumes[i];
        levels[i] += (1.0 - gamma) * dt * rate[i];
      }
      for (std::size_t i = 0; i + 1 < n_; ++i) {
        base[i] -= (1.0 - gamma) * dt * first[i];
        base[i + 1] += (1.0 - gamma) * dt * first[i];
      }
      if (!stage(base, gamma * dt, levels, second)) return false;
      for (std::size_t i = 0; i + 1 < n_; ++i) {
        const double moved = dt * ((1.0 - gamma) * first[i] + gamma * second[i]);
        volumes[i] -= moved;
        volumes[i + 1] += moved;
      }
    }
    change_ = 0.0;
    for (std::size_t i = 0; i < n_; ++i) {
      if (volumes[i] < 0.0 && dt > 1e-4) return false;
      change_ = larger(change_, std::fabs(volumes[i] - v()[i]) / area_at(i, z()[i]));
    }
    return change_ <= 1.5 * allowed_change();
  }

  /// A step of the levels; far below what was reached before, and above the rim, they may go faster.
  [[nodiscard]] double allowed_change() const noexcept { return level_step_ + 0.1 * std::fabs(highest() - reference_); }

  /// By which part the head over the edge may fall in a step.
  [[nodiscard]] double display_part() const noexcept {
    return smaller(0.3, 0.08 + 5.0 * std::fabs(highest() - reference_)) / (fineness_ * std::sqrt(fineness_));
  }

  void commit(double dt) {
    for (std::size_t i = 0; i < n_; ++i) {
      const double before = z()[i];
      v()[i] = row(6)[i];
      level(i);
      row(12)[i] = (z()[i] - before) / dt;
    }
    next_ = dt * std::clamp(allowed_change() / larger(change_, 1e-9), 0.3, 2.0);
    spilling_ = 0.0;
    spill();
    note_highest();
  }

  void spill() {
    if (rim_ != above_rim::runs_over) return;
    for (std::size_t i = 0; i < n_; ++i) {
      if (z()[i] <= start_.rim) continue;
      spilling_ = larger(spilling_, (z()[i] - start_.rim) / row(12)[i]);
      const double full = below(i, start_.rim);
      floor_ += v()[i] - full;
      v()[i] = full;
      z()[i] = start_.rim;
    }
  }
  void note_highest() noexcept {
    highest_ = static_cast<std::size_t>(std::max_element(z().begin(), z().end()) - z().begin());
  }
  [[nodiscard]] double least_area() const noexcept {
    double least = core::largest;
    for (std::size_t i = 0; i < n_; ++i) least = smaller(least, start_.sump_scale * shape_->least_area(i));
    return least;
  }

  std::string_view here_;
  const overflow_edge* edge_;
  const sump_shape* shape_;
  siphon_lines lines_;
  power_cut_start start_;
  above_rim rim_;
  std::size_t n_, highest_{};
  std::vector<double> numbers_;
  std::vector<baffle_passage> passages_;
  double over_ = 0.0, box_ = 0.0, hold_ = 0.0, floor_ = 0.0, spilling_ = 0.0;
  double edge_now_ = 0.0, back_now_ = 0.0;
  double change_ = 0.0, next_ = 0.1, least_area_ = 0.0;
  double level_step_ = 0.003, fineness_ = 1.0, reference_ = 0.0;
};

}  // namespace tankwright::plumbing::detail
