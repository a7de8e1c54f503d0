// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is a run of pipe? Its bore (never its nominal size), its length, its roughness, and what is fitted to it.
#pragma once

#include <optional>
#include <string>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/labelled.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::plumbing {

/// Inside diameter of a pipe: what the water sees. A nominal size names a pipe and is no diameter at all
/// (pipe_sizes.hpp), so the two do not convert.
class pipe_bore {
 public:
  constexpr explicit pipe_bore(length diameter) noexcept : diameter_{diameter} {}
  [[nodiscard]] constexpr length diameter() const noexcept { return diameter_; }

  friend constexpr auto operator<=>(pipe_bore a, pipe_bore b) noexcept {
    return a.diameter_.value() <=> b.diameter_.value();
  }
  friend constexpr bool operator==(pipe_bore a, pipe_bore b) noexcept { return a.diameter_ == b.diameter_; }

 private:
  length diameter_;
};

/// Loss coefficient K of h = K V^2/2g. It belongs to the velocity in one bore; see `on_bore` in fittings.hpp.
class loss_coefficient : public core::scalar<loss_coefficient> {
  using scalar::scalar;
};

/// What a valve passes, by its maker's number: Kv in m^3/h at 1 bar, Cv in US gal/min at 1 psi. Zero is shut.
class flow_coefficient {
 public:
  [[nodiscard]] static constexpr flow_coefficient from_kv(double value) noexcept { return flow_coefficient{value}; }
  [[nodiscard]] static constexpr flow_coefficient from_cv(double value) noexcept {
    return flow_coefficient{value * kv_per_cv};
  }
  [[nodiscard]] constexpr double value() const noexcept { return kv_; }  ///< Kv
  constexpr auto operator<=>(const flow_coefficient&) const noexcept = default;

 private:
  constexpr explicit flow_coefficient(double kv) noexcept : kv_{kv} {}
  /// 0.003785411784 m^3 x 60/h over sqrt(6894.757293168 Pa / 100 000 Pa), both exact by definition.
  static constexpr double kv_per_cv = 0.8649776554423018;
  friend constexpr double in_cv(flow_coefficient valve) noexcept;
  double kv_;
};

/// The metric flow coefficient of a valve.
///
/// @param valve flow coefficient
/// @return      Kv [m^3/h at 1 bar]
/// @accuracy    exact
/// @source      this library
[[nodiscard]] constexpr double in_kv(flow_coefficient valve) noexcept { return valve.value(); }

/// The flow coefficient of a valve in US units.
///
///   Cv = Kv/0.86498
///
/// @param valve flow coefficient
/// @return      Cv [US gpm at 1 psi]
/// @accuracy    exact
/// @source      definitions of the units
[[nodiscard]] constexpr double in_cv(flow_coefficient valve) noexcept {
  return valve.value() / flow_coefficient::kv_per_cv;
}

/// What loss coefficients there are: a joining tee can gain head, a valve that is nearly shut has a large one.
inline constexpr limits loss_limits{"loss coefficient", "", {-1e6, 1e15}};

/// A loss coefficient that the caller knows, as an estimate without a band.
///
///   low = central = high = K
///
/// @param k      [1] K, -1e6 to 1e15
/// @return       K as an estimate
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     exact
/// @source       the caller
[[nodiscard]] constexpr estimate<loss_coefficient> known_loss(double k) {
  core::check("tankwright::plumbing::known_loss", loss_limits, k);
  return {loss_coefficient{k}, loss_coefficient{k}, loss_coefficient{k}, "as given"};
}

/// A valve that lets water pass one way only. What it costs forwards belongs to the fittings of its run. It is the part
/// that fails: ask again with the leak that a grain of sand, a tubeworm or a worn flap leaves open
/// (`leaking_check_valve` in fittings.hpp), and with no valve at all.
struct check_valve {
  flow_coefficient leak = flow_coefficient::from_kv(0.0);  ///< what it passes backwards; zero: it holds
};

/// Inner wall of drawn plastic pipe (PVC, PE), 1.5 um: from memory; at the Reynolds numbers of a display it is as good
/// as smooth. A wall grown over with tubeworms and algae is another matter: give what you see.
inline constexpr length smooth_plastic = length::from_value(1.5e-6);

/// One length of pipe of one bore, with what is fitted to it.
struct pipe_run {
  std::string label{};  ///< "return A"; errors name it
  std::string from{};   ///< in a circuit: the source, pump outlet or junction where it begins
  std::string to{};     ///< in a circuit: the junction or outlet where it ends
  required<pipe_bore> bore;
  tankwright::length length{};                            ///< of straight pipe, along its axis
  tankwright::length roughness = smooth_plastic;          ///< of the wall
  estimate<loss_coefficient> fittings = known_loss(0.0);  ///< sum of all K, on this bore (fittings.hpp), -2 and more
  std::optional<flow_coefficient> valve{};                ///< a valve by its Kv, as it now stands; none is wide open
  std::optional<plumbing::check_valve> check_valve{};     ///< lets water pass from `from` to `to`; none: both ways
};

inline constexpr limits bore_limits{"bore", "m", {1e-4, 20.0}};
inline constexpr limits run_length_limits{"length", "m", {0.0, 1e5}};
inline constexpr limits roughness_limits{"roughness", "m", {0.0, 10.0}};
/// A sum below zero counts as zero: a run of little more than the straight way of a dividing tee, where the water gains
/// what the branch has lost.
inline constexpr limits run_loss_limits{"sum of the loss coefficients", "", {-2.0, 1e15}};
inline constexpr limits valve_limits{"Kv of the valve", "m3/h at 1 bar", {0.0, 1e8}};
inline constexpr limits leak_limits{"Kv of the check valve's leak", "m3/h at 1 bar", {0.0, 1e8}};
/// A Kv below this is taken for shut [m^3/h at 1 bar]: a microlitre an hour.
inline constexpr double shut_kv = 1e-9;
inline constexpr limits relative_roughness_limits{
    "relative roughness", "", zero_to_below_one, {0.0, 0.05}, "Moody 1944"};

/// Which end of the bands of the loss coefficients a calculation takes.
enum class losses { least, central, most };

namespace detail {

/// Loss coefficient of a valve from its Kv, on the velocity in a bore d [m]: K = 2 (dp/rho) A^2 / Kv^2 with dp = 1 bar,
/// rho = 1000 kg/m^3 and Kv in m^3/s.
template <class T>
[[nodiscard]] constexpr T loss_from_kv(T kv, T d) noexcept {
  constexpr T pi = T(3.141592653589793238462643383279502884L);
  const T area = pi / T(4) * d * d;
  const T volume_per_second = kv / T(3600);
  return T(200) * area * area / (volume_per_second * volume_per_second);
}

/// The same as h/Q^2 [s^2/m^5].
[[nodiscard]] constexpr double square_from_kv(double kv, double g) noexcept {
  const double q = kv / 3600.0;
  return 100.0 / (g * q * q);
}

/// The numbers of a run that a loss is made of. A shut valve is `closed` and leaves k as without it.
template <class T>
struct run_numbers {
  T d;
  T l;
  T e;  // absolute roughness, m
  T k;  // fittings and valve
  bool closed;
  T k_back = T(0);     // added to k where water runs backwards, through a check valve that leaks
  bool holds = false;  // a check valve lets none back
};

[[nodiscard]] inline double pick(const estimate<loss_coefficient>& k, losses which) noexcept {
  return (which == losses::least ? k.low : which == losses::most ? k.high : k.central).value();
}

/// Check a run and take its numbers out. Published limits hold for its relative roughness.
[[nodiscard]] inline run_numbers<double> numbers_of(std::string_view function, const pipe_run& run,
                                                    losses which = losses::central,
                                                    range_policy policy = range_policy::published) {
  const double d = run.bore->diameter().value();
  const double l = run.length.value();
  const double e = run.roughness.value();
  double k = pick(run.fittings, which);
  core::check_element(function, run.label, bore_limits, d);
  core::check_element(function, run.label, run_length_limits, l);
  core::check_element(function, run.label, roughness_limits, e);
  core::check_element(function, run.label, relative_roughness_limits, e / d, policy);
  core::check_element(function, run.label, loss_limits, run.fittings.low.value());
  core::check_element(function, run.label, loss_limits, run.fittings.high.value());
  core::check_element(function, run.label, run_loss_limits, k);
  k = std::fmax(k, 0.0);
  bool closed = false;
  if (run.valve) {
    core::check_element(function, run.label, valve_limits, in_kv(*run.valve));
    closed = in_kv(*run.valve) < shut_kv;
    if (!closed) k += loss_from_kv(in_kv(*run.valve), d);
  }
  run_numbers<double> numbers{d, l, e, k, closed};
  if (run.check_valve) {
    const double leak = in_kv(run.check_valve->leak);
    core::check_element(function, run.label, leak_limits, leak);
    numbers.holds = leak < shut_kv;
    if (!numbers.holds) numbers.k_back = loss_from_kv(leak, d);
  }
  return numbers;
}

}  // namespace detail
}  // namespace tankwright::plumbing
