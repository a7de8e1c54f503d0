// SPDX-License-Identifier: BSL-1.0
/// @file
/// How likely does the floor stay dry when the power fails, given how well everything was measured? And which of the
/// measurements makes the most of the doubt?
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <string_view>
#include <tankwright/numerics/uniform_sum.hpp>
#include <tankwright/core/measured.hpp>
#include <tankwright/plumbing/power_cut.hpp>
#include <vector>

namespace tankwright::commissioning {

/// What makes the margin of a power cut uncertain.
enum class margin_doubt {
  display_area,
  sump_area,
  flow,        ///< of all returns together
  weir_heads,  ///< what the edges and baffles pass at a given head
  running_level,
  outlet_depth,
  box_fall,
};
inline constexpr std::size_t margin_doubts = 7;

/// What one doubt does to the margin.
struct doubt_share {
  margin_doubt of;
  length half_width;  ///< of the margin, if this alone were uncertain
  double share;       ///< of the variance; the shares add up to 1
};

/// The chance of a dry floor.
struct dry_floor {
  estimate<proportion> chance;
  length uncertainty;  ///< standard uncertainty of the margin
  std::array<doubt_share, margin_doubts> doubts;
};

namespace detail {

/// The margin below the rim with the power cut moved, for a plan that was checked before.
class moved_margin {
 public:
  explicit moved_margin(const plumbing::power_cut_input& in)
      : engine_{here, in}, numbers_(3 * engine_.shape().size()) {
    as_planned_ = {.running = row(0), .settled = row(1)};
    engine_.run_moved({}, as_planned_);
  }

  [[nodiscard]] double operator()(const plumbing::detail::power_cut_moves& by) {
    auto c = as_planned_;  // most moves leave the running levels as they are
    if (by.flow != 1.0 || by.running_level != 0.0) {
      c.running = row(2);
      engine_.run_moved(by, c);
    }
    engine_.fall_moved(by, c);
    engine_.follow(by, c);
    return engine_.rim() - c.highest;
  }
  [[nodiscard]] double head_over_edge() const noexcept { return as_planned_.head; }

  static constexpr std::string_view here = "tankwright::commissioning::chance_of_dry_floor";

 private:
  [[nodiscard]] std::span<double> row(std::size_t k) {
    return std::span<double>{numbers_}.subspan(k * engine_.shape().size(), engine_.shape().size());
  }

  plumbing::detail::power_cut_engine engine_;
  std::vector<double> numbers_;
  plumbing::detail::power_cut_case as_planned_{};
};

/// Half of the band of the flow over the edge at a head, as a part of the flow.
[[nodiscard]] inline double edge_doubt(const plumbing::overflow_edge& edge, double head) {
  const auto passes = plumbing::flow_over(edge, metres(head), extrapolate).flow;
  return passes.central.value() > 0.0 ? 0.5 * (passes.high - passes.low).value() / passes.central.value() : 0.0;
}

}  // namespace detail

/// Chance that the floor stays dry when the pump stops, siphon breaks working.
///
///   each doubt is moved to both of its limits, the others in the middle: m+ and m-; the margin is then
///   m + sum of (m+ - m-)/2 x_i + the mean of the bend, x_i spread evenly over -1 .. 1; the chance is that of this sum
///   being at least 0
///
/// The doubt that does the most is followed in eight straight pieces: a siphon break near the edge makes a kink.
/// Areas are uncertain by `area_uncertainty`, display and sump each by themselves; lengths by `level_uncertainty`; the
/// flow by `flow_uncertainty`; what passes over the edges at a head by half the band of its formula.
///
/// @param in as for `plumbing::power_cut`
/// @return   chance [1] with what its method leaves open, standard uncertainty of the margin [m], share of each doubt
/// @throws   invalid_input (names the element by its label)
/// @accuracy within 1.5 points of a simulation of the same doubts; no chance covers what nobody thought of
/// @source   JCGM 100:2008, 4.3.7 and 5.1.3 note 2; JCGM 101:2008, 9.2
[[nodiscard]] inline dry_floor chance_of_dry_floor(const plumbing::power_cut_input& in) {
  using moves = plumbing::detail::power_cut_moves;
  constexpr std::string_view here = detail::moved_margin::here;
  plumbing::detail::check_power_cut(here, in);
  detail::moved_margin margin{in};
  const double middle = margin({});
  const double area = in.area_uncertainty.value(), level = in.level_uncertainty.value();
  const double edges = detail::edge_doubt(in.display.edge, margin.head_over_edge());

  struct doubt {
    margin_doubt of;
    double width;
    double moves::*moved;
    double from;  // where `moved` stands in the middle
  };
  // What passes at a given head is as good as the flow the other way round.
  const doubt all[margin_doubts]{{margin_doubt::display_area, area, &moves::display_area, 1.0},
                                 {margin_doubt::sump_area, area, &moves::sump_area, 1.0},
                                 {margin_doubt::flow, in.flow_uncertainty.value(), &moves::flow, 1.0},
                                 {margin_doubt::weir_heads, edges, &moves::flow, 1.0},
                                 {margin_doubt::running_level, level, &moves::running_level, 0.0},
                                 {margin_doubt::outlet_depth, level, &moves::outlets, 0.0},
                                 {margin_doubt::box_fall, level, &moves::box_falls, 0.0}};
  const auto at = [&](std::size_t i, double part) {
    moves moved;
    moved.*all[i].moved = all[i].from + part * all[i].width;
    return margin(moved);
  };
  std::array<double, margin_doubts> up{}, down{}, widths{};
  double variance = 0.0, bends = 0.0;
  const auto bend = [&](std::size_t i) { return (up[i] + down[i] - 2.0 * middle) / 6.0; };  // mean over -1 .. 1
  for (std::size_t i = 0; i < margin_doubts; ++i) {
    up[i] = all[i].width > 0.0 ? at(i, 1.0) : middle;
    down[i] = all[i].width > 0.0 ? at(i, -1.0) : middle;
    widths[i] = 0.5 * std::fabs(up[i] - down[i]);
    bends += bend(i);
    variance += widths[i] * widths[i] / 3.0;
  }
  const auto first = static_cast<std::size_t>(std::max_element(widths.begin(), widths.end()) - widths.begin());
  double chance = variance > 0.0 ? 0.0 : middle >= 0.0 ? 1.0 : 0.0;
  if (variance > 0.0) {
    constexpr int pieces = 8;
    std::array<double, margin_doubts> with_piece = widths;
    const double others = bends - bend(first);
    double before = down[first];
    for (int k = 1; k <= pieces; ++k) {
      const double after = k == pieces ? up[first] : at(first, 2.0 * k / pieces - 1.0);
      with_piece[first] = 0.5 * std::fabs(after - before);
      chance += numerics::tail_of_uniform_sum(-(0.5 * (before + after) + others), with_piece) / pieces;
      before = after;
    }
  }
  constexpr double open = 0.02;  // the accuracy, rounded up
  dry_floor answer{.chance = {fraction(std::fmax(0.0, chance - open)), fraction(chance),
                              fraction(std::fmin(1.0, chance + open)),
                              "chance: each doubt taken as even and straight between its limits"},
                   .uncertainty = length::from_value(std::sqrt(variance)),
                   .doubts = {}};
  for (std::size_t i = 0; i < margin_doubts; ++i) {
    const double share = variance > 0.0 ? widths[i] * widths[i] / 3.0 / variance : 0.0;
    answer.doubts[i] = {all[i].of, length::from_value(widths[i]), share};
  }
  return answer;
}

}  // namespace tankwright::commissioning
