// SPDX-License-Identifier: BSL-1.0
/// @file
/// How high does the water stand over my overflow? Flow over any edge, height for a flow, each with its band.
///
/// A display works at heights of 5 to 30 mm, below the range of every published weir formula. The answer is then
/// flagged `extrapolated` and its band is wider; it does not throw. Above the published range it does.
#pragma once

#include <variant>

#include <tankwright/core/estimate.hpp>
#include <tankwright/numerics/root.hpp>
#include <tankwright/plumbing/weirs.hpp>

namespace tankwright::plumbing {

/// Any of the edges. `flow_over` and `head_over` take each of them directly.
using overflow_edge = std::variant<full_width_edge, contracted_edge, toothed_edge, v_notch, standpipe>;

/// Flow over an edge.
struct overflow_flow {
  estimate<flow_rate> flow;
  bool extrapolated;  ///< outside the published range of the formula, or a rule without a source
};

/// Height of the still water over an edge.
struct overflow_head {
  estimate<length> head;
  bool extrapolated;  ///< outside the published range of the formula, or a rule without a source
};

inline constexpr citation swmm_broad_crest{
    "Rossman L.A., Huber W.C.", 2017, "Storm Water Management Model Reference Manual, volume II, Hydraulics",
    "EPA 600/R-17/111, table 6-3: 2.80 against 3.32 ft^0.5/s at a head of 0.4 of the thickness"};

inline constexpr limits overflow_flow_limits{"flow", "m3/s", not_negative};

namespace detail {

/// Which side of the band: the edge that passes least, the central one, the edge that passes most.
enum class band_side { least, central, most };

/// A factor of the flow and its slope by the head, 1/m.
struct factor_at_head {
  double value, slope{};
};

/// Half width of the band from the head alone: 3 % from 60 mm up (formula and level reading), 10 % below 30 mm
/// (surface tension, clinging nappe, wet edge), and below 10 mm the share that one millimetre is.
[[nodiscard]] inline factor_at_head head_spread(double h) noexcept {
  if (h >= 0.06) return {0.03};
  if (h >= 0.03) return {0.03 + 0.07 * (0.06 - h) / 0.03, -0.07 / 0.03};
  if (h >= 0.01) return {0.10};
  if (h > 0.00125) return {0.001 / h, -0.001 / (h * h)};
  return {0.8};
}

[[nodiscard]] inline factor_at_head spread_factor(double h, band_side side) noexcept {
  if (side == band_side::central) return {1.0};
  const factor_at_head spread = head_spread(h);
  if (side == band_side::most) return {1.0 + spread.value, spread.slope};
  return {1.0 - spread.value, -spread.slope};
}

/// What a thick edge passes of what a sharp one passes: 2.80/3.32 where the head is at most 0.4 of the thickness
/// (broad), all of it where it is twice the thickness and more (the nappe springs clear), straight in between.
[[nodiscard]] inline factor_at_head thickness_factor(double h, double thickness, band_side side) noexcept {
  constexpr double broad = 2.80 / 3.32;
  if (side == band_side::most || h >= 2.0 * thickness) return {1.0};
  if (h <= 0.4 * thickness) return {broad};
  const double slope = (1.0 - broad) / (1.6 * thickness);
  return {broad + slope * (h - 0.4 * thickness), slope};
}

// One edge, in three overloads: its flow on a side of the band, whether a head is outside the published range,
// and the check of its geometry and of the head's upper limits.

[[nodiscard]] inline double edge_flow(const full_width_edge& e, double h, band_side side) noexcept {
  return rehbock(h, e.width->value(), e.crest_height->value()) * thickness_factor(h, e.thickness.value(), side).value *
         spread_factor(h, side).value;
}
[[nodiscard]] inline double edge_flow(const contracted_edge& e, double h, band_side side) noexcept {
  return kindsvater_carter(h, e.width->value(), e.channel_width->value(), e.crest_height->value()) *
         spread_factor(h, side).value;
}
[[nodiscard]] inline double edge_flow(const toothed_edge& e, double h, band_side side) noexcept {
  const double gap = e.gap_width->value();
  // Down by Francis' contraction of both ends of each gap, at most a fifth; up by a tenth for the width and head that
  // Kindsvater and Carter add to narrow notches.
  const double factor = side == band_side::central ? 1.0
                        : side == band_side::most  ? 1.1
                                                   : 1.0 - 0.2 * (h < gap ? h / gap : 1.0);
  return toothed_flow<double>(h, gap, e.gaps.get(), e.tooth_width->value(), e.gap_height->value(),
                              e.crest_height->value()) *
         factor * spread_factor(h, side).value;
}
[[nodiscard]] inline double edge_flow(const v_notch& e, double h, band_side side) noexcept {
  return shen(h, e.opening->value()) * spread_factor(h, side).value;
}
[[nodiscard]] inline double edge_flow(const standpipe& e, double h, band_side side) noexcept {
  const double factor = side == band_side::central ? 1.0 : side == band_side::most ? 1.15 : 0.85;
  return standpipe_flow(h, e.bore->diameter().value(), e.strainer ? 0.5 : 1.0) * factor;
}

[[nodiscard]] inline bool outside_published(const full_width_edge& e, double h) noexcept {
  return h < rehbock_head_limits.published.low || e.width->value() < rehbock_width_limits.published.low ||
         e.crest_height->value() < rehbock_crest_limits.published.low || h < 2.0 * e.thickness.value() ||
         h > rehbock_head_limits.published.high || h > e.crest_height->value();
}
[[nodiscard]] inline bool outside_published(const contracted_edge& e, double h) noexcept {
  return h < kindsvater_head_limits.published.low || e.width->value() < kindsvater_width_limits.published.low ||
         e.crest_height->value() < kindsvater_crest_limits.published.low || h > 2.0 * e.crest_height->value();
}
[[nodiscard]] inline bool outside_published(const toothed_edge&, double) noexcept { return true; }
[[nodiscard]] inline bool outside_published(const v_notch&, double h) noexcept {
  return h < shen_head_limits.published.low;
}
[[nodiscard]] inline bool outside_published(const standpipe&, double) noexcept { return false; }

inline void check_edge(std::string_view here, const full_width_edge& e) {
  core::check(here, weir_width_limits, e.width->value());
  core::check(here, rehbock_crest_limits, e.crest_height->value(), extrapolate);
  core::check(here, thickness_limits, e.thickness.value());
}
inline void check_edge(std::string_view here, const contracted_edge& e) {
  core::check(here, weir_width_limits, e.width->value());
  core::check(here, channel_width_limits, e.channel_width->value());
  core::check(here, width_ratio_limits, e.width->value() / e.channel_width->value());
  core::check(here, kindsvater_crest_limits, e.crest_height->value(), extrapolate);
}
inline void check_edge(std::string_view here, const toothed_edge& e) {
  core::check(here, gap_width_limits, e.gap_width->value());
  core::check(here, gaps_limits, e.gaps);
  core::check(here, tooth_width_limits, e.tooth_width->value());
  core::check(here, gap_height_limits, e.gap_height->value());
  core::check(here, toothed_crest_limits, e.crest_height->value());
}
inline void check_edge(std::string_view here, const v_notch& e) {
  core::check(here, shen_angle_limits, in_degrees(e.opening));
}
inline void check_edge(std::string_view here, const standpipe& e) {
  core::check(here, bore_limits, e.bore->diameter().value());
}

/// The upper ends of the published ranges; the lower ends are flagged instead.
inline void check_high_head(std::string_view here, const full_width_edge& e, double h, range_policy policy) {
  if (h > rehbock_head_limits.published.high) core::check(here, rehbock_head_limits, h, policy);
  core::check(here, rehbock_ratio_limits, h / e.crest_height->value(), policy);
}
inline void check_high_head(std::string_view here, const contracted_edge& e, double h, range_policy policy) {
  core::check(here, kindsvater_ratio_limits, h / e.crest_height->value(), policy);
}
inline void check_high_head(std::string_view, const toothed_edge&, double, range_policy) {}
inline void check_high_head(std::string_view, const v_notch&, double, range_policy) {}
inline void check_high_head(std::string_view, const standpipe&, double, range_policy) {}

[[nodiscard]] inline double edge_flow(const overflow_edge& edge, double h, band_side side) noexcept {
  return std::visit([&](const auto& e) { return edge_flow(e, h, side); }, edge);
}

/// A first guess of the head, to be bracketed: from a plain weir as long as the edge.
[[nodiscard]] inline double plain_head(double width, double q) noexcept {
  const double root = std::cbrt(q / (1.8 * width));
  return root * root;
}
[[nodiscard]] inline double guess_head(const full_width_edge& e, double q) noexcept {
  return plain_head(e.width->value(), q);
}
[[nodiscard]] inline double guess_head(const contracted_edge& e, double q) noexcept {
  return plain_head(e.width->value(), q);
}
[[nodiscard]] inline double guess_head(const toothed_edge& e, double q) noexcept {
  return plain_head(e.gap_width->value() * e.gaps.get(), q);
}
[[nodiscard]] inline double guess_head(const v_notch&, double q) noexcept { return plain_head(0.1, q); }
[[nodiscard]] inline double guess_head(const standpipe& e, double q) noexcept {
  return plain_head(2.3 * e.bore->diameter().value(), q);
}

/// The head at which an edge passes q, on a side of the band. Every edge passes more as the water rises.
template <class Edge>
[[nodiscard]] double edge_head(std::string_view here, const Edge& e, double q, band_side side, double guess) {
  if (q == 0.0) return 0.0;
  const auto excess = [&](double h) { return edge_flow(e, h, side) - q; };
  double low = guess, high = guess;
  while (excess(low) > 0.0) low *= 0.5;
  while (excess(high) < 0.0) high *= 2.0;
  return numerics::bracketed_root(here, "head", excess, low, high, {.relative = 1e-14});
}

}  // namespace detail

/// Flow over an edge at a given height of the water, with its band.
///
///   Rehbock (full_width_edge), Kindsvater and Carter (contracted_edge), Kindsvater and Shen (v_notch),
///   EN 12056-3 (standpipe), own rule (toothed_edge); a thick edge passes down to 2.80/3.32 of a sharp one
///
/// @param edge   any of the edges: lengths [m] > 0, opening of a V-notch 20 to 100 degrees
/// @param head   h [m] >= 0 of the still water over the crest; a full width edge: at most 0.75 m and the crest height;
///               a contracted edge: at most twice the crest height
/// @param policy `extrapolate` to go past these upper limits
/// @return       flow [m^3/s] with its band, and whether it is extrapolated
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     the band: 3 % from 60 mm up, 10 % from 30 mm down, 1 mm of head below 10 mm; standpipe 15 %
/// @source       the formulas of `weirs.hpp`; thick edge: EPA SWMM Reference Manual II, table 6-3
[[nodiscard]] inline overflow_flow flow_over(const overflow_edge& edge, length head,
                                             range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::flow_over";
  core::check(here, weir_head_limits, head.value());
  return std::visit(
      [&](const auto& e) -> overflow_flow {
        detail::check_edge(here, e);
        detail::check_high_head(here, e, head.value(), policy);
        const auto at = [&](detail::band_side side) {
          return flow_rate::from_value(detail::edge_flow(e, head.value(), side));
        };
        return {{at(detail::band_side::least), at(detail::band_side::central), at(detail::band_side::most),
                 "weir formula, surface tension and the form of the edge"},
                detail::outside_published(e, head.value())};
      },
      edge);
}

/// Height of the water over an edge for a given flow, with its band: the inverse of `flow_over`.
///
///   h with flow_over(edge, h) = Q
///
/// @param edge   any of the edges, as for `flow_over`
/// @param flow   Q [m^3/s] >= 0
/// @param policy `extrapolate` to go past the upper limits of the head, as for `flow_over`
/// @return       head [m] with its band (the high end belongs to the edge that passes least), and whether it is
///               extrapolated
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-12 against `flow_over`; the band is that of `flow_over`
/// @source       the formulas of `weirs.hpp`
[[nodiscard]] inline overflow_head head_over(const overflow_edge& edge, flow_rate flow,
                                             range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::head_over";
  core::check(here, overflow_flow_limits, flow.value());
  return std::visit(
      [&](const auto& e) -> overflow_head {
        detail::check_edge(here, e);
        const double q = flow.value();
        const double central = detail::edge_head(here, e, q, detail::band_side::central, detail::guess_head(e, q));
        detail::check_high_head(here, e, central, policy);
        const double high = detail::edge_head(here, e, q, detail::band_side::least, central);
        const double low = detail::edge_head(here, e, q, detail::band_side::most, central);
        return {{length::from_value(low), length::from_value(central), length::from_value(high),
                 "weir formula, surface tension and the form of the edge"},
                detail::outside_published(e, central)};
      },
      edge);
}

}  // namespace tankwright::plumbing
