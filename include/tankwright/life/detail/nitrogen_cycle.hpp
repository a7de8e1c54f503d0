// SPDX-License-Identifier: BSL-1.0
/// @file
/// How do ammonia, nitrite, nitrate and the two groups of bacteria change with time? The Monod equations, and the one
/// differential-equation solver of the library.
///
/// The equations are stiff once the bacteria have grown (ammonia then follows its production within minutes while weeks
/// are simulated), so the solver is an implicit Rosenbrock method: RODAS of Hairer and Wanner, six stages, order 4 with
/// an embedded estimate of order 3, L-stable. An explicit pair would need thousands of steps a day for a rich seed.
/// Boost.Odeint has the same method on uBLAS matrices, but that header alone takes more than twice as long to compile
/// as this whole folder, and here the matrix is two 2x2 blocks that are solved by hand.
///
/// Each stage of the method is linear in the right-hand side, so the sum of the three nitrogen pools is conserved to
/// rounding, whatever the step.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <string_view>

#include <tankwright/core/errors.hpp>

namespace tankwright::life::detail {

/// The pools, in mg/L of system water: nitrogen (N) and the dry organic mass of the bacteria (VSS).
enum pool : std::size_t { ammonia, ammonia_oxidisers, nitrite, nitrite_oxidisers, nitrate };
template <class T>
using pools = std::array<T, 5>;

/// One group of bacteria at the temperature and oxygen of the tank, per day and mg/L.
template <class T>
struct growth {
  T mu;     ///< largest growth rate, 1/d
  T half;   ///< K, mg N/L
  T yield;  ///< Y, mg VSS/mg N
  T decay;  ///< b, 1/d
};

/// The Monod equations of a well-mixed tank:
///
///   dS/dt = P - q_A X_A         q = (mu/Y) S/(K + S), N in place of S for the nitrite oxidisers
///   dX/dt = (Y q - b) X
///   dN/dt = q_A X_A - q_N X_N
///   dC/dt = q_N X_N
template <class T>
struct nitrogen_cycle {
  growth<T> a;  ///< ammonia oxidisers
  growth<T> n;  ///< nitrite oxidisers
  T load;       ///< P, mg N/(L d)

  [[nodiscard]] pools<T> derivative(const pools<T>& y) const noexcept {
    const T qa = a.mu / a.yield * y[ammonia] / (a.half + y[ammonia]);
    const T qn = n.mu / n.yield * y[nitrite] / (n.half + y[nitrite]);
    const T oxidised = qa * y[ammonia_oxidisers];
    const T finished = qn * y[nitrite_oxidisers];
    return {load - oxidised, (a.yield * qa - a.decay) * y[ammonia_oxidisers], oxidised - finished,
            (n.yield * qn - n.decay) * y[nitrite_oxidisers], finished};
  }

  /// (d I - J) at a state, ready to solve. The ammonia block does not feel the nitrite block, and nitrate only listens.
  class stage_matrix {
   public:
    stage_matrix(const nitrogen_cycle& cycle, const pools<T>& y, T diagonal) noexcept
        : first_{cycle.a, y[ammonia], y[ammonia_oxidisers], diagonal},
          second_{cycle.n, y[nitrite], y[nitrite_oxidisers], diagonal},
          diagonal_{diagonal} {}

    [[nodiscard]] pools<T> solve(const pools<T>& r) const noexcept {
      pools<T> u;
      first_.solve(r[ammonia], r[ammonia_oxidisers], u[ammonia], u[ammonia_oxidisers]);
      const T oxidised = first_.oxidised(u[ammonia], u[ammonia_oxidisers]);
      second_.solve(r[nitrite] + oxidised, r[nitrite_oxidisers], u[nitrite], u[nitrite_oxidisers]);
      u[nitrate] = (r[nitrate] + second_.oxidised(u[nitrite], u[nitrite_oxidisers])) / diagonal_;
      return u;
    }

   private:
    /// Substrate and bacteria of one step of nitrification.
    struct block {
      block(const growth<T>& g, T s, T x, T d) noexcept {
        const T saturation = g.half + s;
        by_substrate = g.mu / g.yield * g.half / (saturation * saturation) * x;  // d(q x)/ds
        by_bacteria = g.mu / g.yield * s / saturation;                           // d(q x)/dx
        m00 = d + by_substrate;
        m10 = -g.yield * by_substrate;
        m11 = d - (g.yield * by_bacteria - g.decay);
        inverse = T(1) / (m00 * m11 - by_bacteria * m10);
      }
      void solve(T rs, T rx, T& us, T& ux) const noexcept {
        us = (m11 * rs - by_bacteria * rx) * inverse;
        ux = (m00 * rx - m10 * rs) * inverse;
      }
      [[nodiscard]] T oxidised(T us, T ux) const noexcept { return by_substrate * us + by_bacteria * ux; }

      T by_substrate, by_bacteria, m00, m10, m11, inverse;
    };
    block first_, second_;
    T diagonal_;
  };
};

/// The state after a step of length h, and how far the two orders of the method lie apart.
template <class T>
struct rosenbrock_result {
  pools<T> state;
  pools<T> error;
};

/// One step of RODAS (Hairer and Wanner 1996, section IV.7; coefficients in the transformed form of their code).
template <class T, class System>
[[nodiscard]] rosenbrock_result<T> rosenbrock_step(const System& system, const pools<T>& y, T h) noexcept {
  constexpr T gamma = T(0.25L);
  constexpr T a[5][5]{{T(1.544L)},
                      {T(0.9466785280815826L), T(0.2557011698983284L)},
                      {T(3.314825187068521L), T(2.896124015972201L), T(0.9986419139977817L)},
                      {T(1.221224509226641L), T(6.019134481288629L), T(12.53708332932087L), T(-0.6878860361058950L)},
                      {}};
  constexpr T c[5][5]{{T(-5.6688L)},
                      {T(-2.430093356833875L), T(-0.2063599157091915L)},
                      {T(-0.1073529058151375L), T(-9.594562251023355L), T(-20.47028614809616L)},
                      {T(7.496443313967647L), T(-10.24680431464352L), T(-33.99990352819905L), T(11.70890893206160L)},
                      {T(8.083246795921522L), T(-7.981132988064893L), T(-31.52159432874371L), T(16.31930543123136L),
                       T(-6.058818238834054L)}};

  const typename System::stage_matrix matrix{system, y, T(1) / (gamma * h)};
  pools<T> u[6];
  u[0] = matrix.solve(system.derivative(y));
  pools<T> at = y;
  for (std::size_t stage = 1; stage < 6; ++stage) {
    if (stage < 5) {
      at = y;
      for (std::size_t j = 0; j < stage; ++j) {
        for (std::size_t i = 0; i < at.size(); ++i) at[i] += a[stage - 1][j] * u[j][i];
      }
    } else {
      for (std::size_t i = 0; i < at.size(); ++i) at[i] += u[4][i];  // stiffly accurate: the last stage continues
    }
    pools<T> r = system.derivative(at);
    for (std::size_t j = 0; j < stage; ++j) {
      for (std::size_t i = 0; i < r.size(); ++i) r[i] += c[stage - 1][j] / h * u[j][i];
    }
    u[stage] = matrix.solve(r);
  }
  for (std::size_t i = 0; i < at.size(); ++i) at[i] += u[5][i];
  return {at, u[5]};
}

}  // namespace tankwright::life::detail
