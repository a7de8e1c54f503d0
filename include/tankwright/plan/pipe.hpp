// SPDX-License-Identifier: BSL-1.0
/// @file
/// A pipe of a plan: its bore, by measure or by the nominal size that is printed on it, its length and its fittings.
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/description.hpp>
#include <tankwright/plumbing/pvc_schedule.hpp>

namespace tankwright::plan {

/// A bore, by measure or by nominal size: one of the two is given.
struct bore {
  value<length> inside{};   ///< key "bore"
  value<double> nominal{};  ///< in inches
  word<tankwright::plumbing::pvc_schedule> schedule{};
};
void describe_bore(visitor& key, bore& b);

/// Fittings by their number, in place of their loss coefficients.
struct counted_fittings {
  value<double> elbows{};
  value<double> elbows_45{};
  value<double> tees_through{};
  value<double> tees_branch{};
  value<double> ball_valves{};
  value<double> gate_valves{};
  value<double> unions{};
  value<double> swing_checks{};
  value<double> entrances{};

  [[nodiscard]] bool given() const noexcept {
    return elbows || elbows_45 || tees_through || tees_branch || ball_valves || gate_valves || unions || swing_checks ||
           entrances;
  }
};

/// A run of pipe with its fittings.
struct pipe {
  plan::bore bore{};
  value<tankwright::length> length{};
  value<double> loss = by_default(0.0);  ///< sum of the loss coefficients
  counted_fittings fittings{};           ///< counted in addition
};
void describe_pipe(visitor& key, pipe& p);

/// The loss coefficient of counted fittings in a bore, with its band.
///
///   K = sum of count_i K_i
///
/// @param c     how many of each kind; 0 where not given
/// @param bore  of the pipe that they are fitted to
/// @return      K on the velocity in that bore
/// @throws      invalid_input (a bore that is no pipe)
/// @accuracy    the band: 30 % for bends and tees, 50 % for valves, as if all erred the same way
/// @source      Crane TP-410 by `plumbing/fittings.hpp`
[[nodiscard]] estimate<tankwright::plumbing::loss_coefficient> loss_of(const counted_fittings& c,
                                                                       tankwright::plumbing::pipe_bore bore);

/// The bore in metres; of a nominal size the average one of its standard.
///
/// @param b     a bore by measure or by nominal size
/// @return      the bore
/// @throws      invalid_input for a size that is not made in that schedule, or where neither is given
/// @accuracy    that of the standard's average
/// @source      ASTM D1785 by `plumbing/pipe_sizes.hpp`
[[nodiscard]] tankwright::plumbing::pipe_bore bore_of(const bore& b);

/// A run as the engines take it.
///
/// @param p     the pipe
/// @param label its label
/// @return      bore, length and loss coefficient with its band: `loss` and the counted fittings together
/// @throws      as `bore_of`
/// @accuracy    exact
/// @source      this library
[[nodiscard]] tankwright::plumbing::pipe_run run_of(const pipe& p, std::string label);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/pipe.ipp>
#endif
