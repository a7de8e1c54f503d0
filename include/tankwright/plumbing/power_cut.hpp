// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the floor stay dry when the pump stops? What falls, how high the sump rises at its worst moment, and what is
/// left below its rim then.
///
/// What falls: the water above the overflow edge, the box behind it, the pipes that stand full, and what runs back
/// through the returns until the last opening that is under water draws air. Unless said otherwise, check valves are
/// taken to be stuck open and siphon breaks to work; `power_cut_failures.hpp` asks the rest.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include <tankwright/core/estimate.hpp>
#include <tankwright/plumbing/detail/power_cut_case.hpp>
#include <tankwright/plumbing/power_cut_system.hpp>

namespace tankwright::plumbing {

/// The volumes that come down.
struct falling_water {
  estimate<volume> over_edge;    ///< display, down to its overflow edge
  estimate<volume> back_siphon;  ///< display, from there down to the deepest opening
  estimate<volume> box;
  volume drain_pipes;
  volume return_pipes;  ///< and those they share
  estimate<volume> total;
};

/// The moment at which the water stands highest in a chamber of the sump.
struct worst_moment {
  length margin;               ///< from there up to the rim; negative is water on the floor
  std::string chamber;         ///< its label
  std::optional<duration> at;  ///< after the power fails; none: once all has come to rest
};

/// What happens when the pump stops.
struct power_cut_answer {
  estimate<length> head_over_edge;  ///< while the pump runs
  falling_water falls;
  std::vector<chamber_level> running;  ///< levels before, in each chamber; above the rim when it runs over already
  std::vector<chamber_level> settled;  ///< levels after, at most the rim
  /// From the highest level of the whole course, before, during or after, up to the rim. Negative: as if the walls went
  /// on above the rim, so by how much they are too low.
  estimate<length> margin;
  worst_moment worst;             ///< in the middle of the band
  estimate<volume> on_the_floor;  ///< what runs over the rim; zero where it stays dry
  estimate<volume> spare;         ///< what the sump would still hold at the end; zero where it is full
  /// From when on water runs over the rim, in the worst credible case; where only the last hundredth of the flow brings
  /// it over, from when that is left.
  std::optional<duration> floods_after;
  bool extrapolated;  ///< some weir head is outside its published range
  tankwright::caution caution;
};

namespace detail {

[[nodiscard]] inline worst_moment moment_of(const power_cut_input& in, const power_cut_case& c) {
  worst_moment worst{length::from_value(in.sump.rim->value() - c.highest), chamber_name(in.sump, c.chamber), {}};
  if (std::isfinite(c.at)) worst.at = duration::from_value(c.at);
  return worst;
}

/// Three values in order, whichever corner they come from.
template <class Q>
[[nodiscard]] estimate<Q> banded(double a, double central, double b, std::string_view why) {
  return {Q::from_value(std::min({a, central, b})), Q::from_value(central), Q::from_value(std::max({a, central, b})),
          why};
}

}  // namespace detail

/// What a power cut brings down, how high the sump rises on the way and at the end, and what is left below its rim.
///
///   falls = A (h over the edge + depth of the deepest opening) + box + pipes, poured into the running sump;
///   margin = rim - highest level of the course; the course: display over its edge, box as (V/V0)^1.5, back-siphons by
///   Darcy and Weisbach through their own and the shared pipes, chambers over and under their baffles;
///   the band: all areas, levels, the flow and the weir heads at their mild or worst end together
///
/// @param in display, sump, returns, height of the edge: lengths [m], areas [m^2], flows [m^3/s]; see the fields
/// @return   volumes, levels, the margin of the worst moment, what runs onto the floor, and a caution
/// @throws   invalid_input (names the element by its label: chamber, baffle, return, pipe)
/// @accuracy volume conserved to 1e-12; the margin within 0.2 mm of the same equations solved finely; the band is that
///           of the areas, levels, flow and weir formulas as given, no more: it knows nothing of a sump that is not
///           level
/// @source   geometry; the formulas of `weirs.hpp`; orifice formula; energy equation with Colebrook 1939
[[nodiscard]] inline power_cut_answer power_cut(const power_cut_input& in) {
  constexpr std::string_view here = "tankwright::plumbing::power_cut";
  detail::check_power_cut(here, in);
  detail::power_cut_engine engine{here, in};
  const std::size_t n = engine.shape().size();
  std::vector<double> numbers(6 * n);
  const auto row = [&](std::size_t k) { return std::span<double>(numbers.data() + k * n, n); };
  detail::power_cut_case mild{.running = row(0), .settled = row(1)};
  detail::power_cut_case middle{.running = row(2), .settled = row(3)};
  detail::power_cut_case worst{.running = row(4), .settled = row(5)};
  engine.work_out({}, middle);
  engine.work_out(detail::moved_to_end(in, -1), mild);
  engine.work_out(detail::moved_to_end(in, 1), worst);

  constexpr std::string_view why = "areas, levels, flow and weir heads, all at one end of their bands together";
  const auto lengths = [&](double a, double central, double b) { return detail::banded<length>(a, central, b, why); };
  const auto volumes = [&](double a, double central, double b) { return detail::banded<volume>(a, central, b, why); };
  const auto all = [&](double detail::power_cut_case::*part) { return volumes(mild.*part, middle.*part, worst.*part); };
  const double rim = engine.rim();
  power_cut_answer answer{.head_over_edge = lengths(mild.head, middle.head, worst.head),
                          .falls = {all(&detail::power_cut_case::over_edge), all(&detail::power_cut_case::back_siphon),
                                    all(&detail::power_cut_case::box), volume::from_value(engine.drain_pipes()),
                                    volume::from_value(engine.return_pipes()),
                                    volumes(engine.total(mild), engine.total(middle), engine.total(worst))},
                          .running = {},
                          .settled = {},
                          .margin = lengths(rim - worst.highest, rim - middle.highest, rim - mild.highest),
                          .worst = detail::moment_of(in, middle),
                          .on_the_floor = all(&detail::power_cut_case::floor),
                          .spare = all(&detail::power_cut_case::spare),
                          .floods_after = {},
                          .extrapolated = middle.extrapolated,
                          .caution = power_cut_caution};
  const double floods = std::fmin(worst.floods_at, std::fmin(middle.floods_at, mild.floods_at));
  if (std::isfinite(floods)) answer.floods_after = duration::from_value(floods);
  answer.running.reserve(n);
  answer.settled.reserve(n);
  for (std::size_t i = 0; i < n; ++i) {
    const std::string name = detail::chamber_name(in.sump, i);
    answer.running.push_back({name, lengths(mild.running[i], middle.running[i], worst.running[i])});
    answer.settled.push_back({name, lengths(mild.settled[i], middle.settled[i], worst.settled[i])});
  }
  return answer;
}

/// The worst moment of a power cut without its band: what a simulation of doubts calls for each of its samples.
///
///   as `power_cut`, central values
///
/// @param in as for `power_cut`
/// @return   margin [m], chamber, time after the power failed [s]
/// @throws   invalid_input (names the element by its label)
/// @accuracy 0.2 mm against the same equations solved finely
/// @source   as `power_cut`
[[nodiscard]] inline worst_moment worst_moment_of(const power_cut_input& in) {
  constexpr std::string_view here = "tankwright::plumbing::worst_moment_of";
  detail::check_power_cut(here, in);
  detail::power_cut_engine engine{here, in};
  std::vector<double> numbers(2 * engine.shape().size());
  detail::power_cut_case c{.running = {numbers.data(), engine.shape().size()},
                           .settled = {numbers.data() + engine.shape().size(), engine.shape().size()}};
  engine.run_moved({}, c);
  engine.fall_moved({}, c);
  engine.follow({}, c);
  return detail::moment_of(in, c);
}

}  // namespace tankwright::plumbing
