// SPDX-License-Identifier: BSL-1.0
/// @file
/// How high may the pump chamber run, and how deep may a return open, so that the worst case of a power cut keeps its
/// reserve below the rim?
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::plumbing {

namespace detail {

/// Highest level of the worst credible case, of a system that was checked.
[[nodiscard]] inline double worst_level(std::string_view here, const power_cut_input& in, bool whole_course) {
  power_cut_engine engine{here, in};
  const std::size_t n = engine.shape().size();
  std::vector<double> numbers(2 * n);
  power_cut_case c{.running = {numbers.data(), n}, .settled = {numbers.data() + n, n}};
  const power_cut_moves by = moved_to_end(in, 1);
  engine.run_moved(by, c);
  engine.fall_moved(by, c);
  if (whole_course) engine.follow(by, c);
  return c.highest;
}

/// A root of what falls from `low` (not negative there) to `high` (negative there), on the safe side.
template <class Left>
[[nodiscard]] double safe_side(std::string_view here, std::string_view what, double low, double high, Left left) {
  constexpr double close = 1e-5;  // m
  double safe = numerics::bracketed_root(here, what, left, low, high, {.absolute = close, .relative = 0.0});
  while (safe > low && left(safe) < 0.0) safe -= close;
  return std::fmax(low, safe);
}

/// The largest x in [low, high] at which the worst case keeps the reserve; none where it does so nowhere. `system_at`
/// gives the system at x; its highest level rises with x. First where it would come to rest there, which is quick and
/// mostly the answer.
template <class SystemAt>
[[nodiscard]] std::optional<double> largest_safe(std::string_view here, std::string_view what, double target,
                                                 double low, double high, SystemAt system_at) {
  const auto at_rest = [&](double x) { return target - worst_level(here, system_at(x), false); };
  const auto on_the_way = [&](double x) { return target - worst_level(here, system_at(x), true); };
  if (!(at_rest(low) >= 0.0)) return std::nullopt;
  double at = high;
  if (at_rest(high) < 0.0) at = numerics::bracketed_root(here, what, at_rest, low, high, {.absolute = 1e-12});
  const double over = on_the_way(at);
  if (over >= -1e-9) return at;
  // The course rises a little further than where it comes to rest: the answer lies about as much lower.
  for (double unsafe = at, step = -over;; step *= 2.0) {
    const double next = std::fmax(low, at - step);
    if (on_the_way(next) >= 0.0) return safe_side(here, what, next, unsafe, on_the_way);
    if (next <= low) return std::nullopt;
    unsafe = next;
  }
}

}  // namespace detail

/// Highest level at which the last chamber may run, so that the worst case keeps the reserve below the rim.
///
///   the largest level up to the crest before the pump chamber with margin.low >= reserve
///
/// @param in as for `power_cut`; its own running level is not used
/// @return   level [m above the floor]; none where no level is safe
/// @throws   invalid_input (names the element by its label)
/// @accuracy 0.05 mm on the safe side, and 1e-9 where the level at rest decides; the worst case as in `power_cut`
/// @source   as `power_cut`
[[nodiscard]] inline std::optional<length> highest_safe_running_level(const power_cut_input& in) {
  constexpr std::string_view here = "tankwright::plumbing::highest_safe_running_level";
  detail::check_power_cut(here, in);
  const detail::sump_shape shape{in.sump};
  const std::size_t pool = shape.first_joined(shape.size() - 1);
  const double rim = in.sump.rim->value();
  const double top = pool > 0 ? in.sump.baffles[pool - 1].crest->value() : rim;
  power_cut_input moved = in;
  const auto level = detail::largest_safe(here, "highest safe running level", rim - in.reserve.value(), 0.0, top,
                                          [&](double x) -> const power_cut_input& {
                                            moved.sump.running_level = length::from_value(x);
                                            return moved;
                                          });
  if (!level) return std::nullopt;
  return length::from_value(*level);
}

namespace detail {

/// Whether the water of a return can run back: no check valve on its way holds.
[[nodiscard]] inline bool runs_back(const power_cut_input& in, std::size_t i) {
  if (in.check_valves != check_valve_state::hold) return true;
  const return_line& line = in.returns[i];
  return !line.check_valve && std::none_of(in.shared_pipes.begin(), in.shared_pipes.end(), [&](const shared_pipe& s) {
    return s.check_valve && is_shared_by(s, line.label);
  });
}

}  // namespace detail

/// Greatest depth below the overflow edge at which returns may draw air, so that the worst case keeps the reserve.
///
///   the largest depth d with margin.low >= reserve, when the deepest opening lies at d and none deeper; openings
///   behind a check valve that holds count only where no other is
///
/// @param in as for `power_cut`
/// @return   depth [m below the edge; negative above it]; none where no return is safe at any height
/// @throws   invalid_input (names the element by its label)
/// @accuracy 0.05 mm on the safe side, and 1e-9 where the level at rest decides; the worst case as in `power_cut`
/// @source   as `power_cut`
[[nodiscard]] inline std::optional<length> deepest_safe_outlet(const power_cut_input& in) {
  constexpr std::string_view here = "tankwright::plumbing::deepest_safe_outlet";
  detail::check_power_cut(here, in);
  std::size_t deepest = 0;
  const auto opening = [&](std::size_t i) { return detail::opening_of(in.returns[i], in.breaks_blocked); };
  for (std::size_t i = 1; i < in.returns.size(); ++i) {
    const bool flows = detail::runs_back(in, i), deepest_flows = detail::runs_back(in, deepest);
    if (flows != deepest_flows ? flows : opening(i) > opening(deepest)) deepest = i;
  }
  power_cut_input moved = in;
  const auto system_at = [&](double x) -> const power_cut_input& {
    for (std::size_t i = 0; i < in.returns.size(); ++i) {
      return_line& r = moved.returns[i];
      r.break_below_edge.reset();
      r.outlet_below_edge = length::from_value(i == deepest ? x : std::fmin(x, opening(i)));
    }
    return moved;
  };
  // From well above the water down to more than any sump takes.
  const double low = -0.5, high = std::fmin(outlet_depth_limits.possible.high, in.edge_above_floor->value());
  const auto depth = detail::largest_safe(here, "deepest safe outlet", in.sump.rim->value() - in.reserve.value(), low,
                                          high, system_at);
  if (!depth) return std::nullopt;
  return length::from_value(*depth);
}

}  // namespace tankwright::plumbing
