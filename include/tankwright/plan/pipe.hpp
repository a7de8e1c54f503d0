// SPDX-License-Identifier: BSL-1.0
/// @file
/// A pipe of a plan: its bore, by measure or by the nominal size that is printed on it, its length and its fittings.
#pragma once

#include <tankwright/core/units.hpp>
#include <tankwright/plan/description.hpp>
#include <tankwright/plumbing/pvc_schedule.hpp>

namespace tankwright::plan {

/// A bore, by measure or by nominal size: one of the two is given.
struct bore {
  value<length> inside{};                         ///< key "bore"
  value<double> nominal{};                        ///< in inches
  word<tankwright::plumbing::pvc_schedule> schedule{};
};
void describe_bore(visitor& key, bore& b);

/// A run of pipe with its fittings.
struct pipe {
  plan::bore bore{};
  value<tankwright::length> length{};
  value<double> loss = by_default(0.0);  ///< sum of the loss coefficients
  value<proportion> loss_uncertainty = by_default(percent(30.0));
};
void describe_pipe(visitor& key, pipe& p);

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
/// @return      bore, length and loss coefficient with its band
/// @throws      as `bore_of`
/// @accuracy    exact
/// @source      this library
[[nodiscard]] tankwright::plumbing::pipe_run run_of(const pipe& p, std::string label);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/pipe.ipp>
#endif
