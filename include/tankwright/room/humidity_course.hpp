// SPDX-License-Identifier: BSL-1.0
/// @file
/// How does the humidity of the room move? Hour by hour from a given start: after a lid is opened, a window closed, a
/// dehumidifier switched on.
#pragma once

#include <cmath>
#include <vector>

#include <tankwright/room/humidity.hpp>

namespace tankwright::room {

/// What the room does from a start.
struct humidity_course_request {
  tank_room room;
  required<relative_humidity> start;
  required<duration> time;
  duration step = hours(1.0);  ///< between the points of the answer
};

/// The room at one time. The totals are since the start: evaporated + from sources - ventilated - dehumidified -
/// condensed is what the vapour in the air has gained.
struct humidity_point {
  duration time;
  room::air air;
  mass vapour;  ///< in the air of the room
  mass evaporated;
  mass from_sources;
  mass ventilated;
  mass dehumidified;
  mass condensed;
};

inline constexpr limits course_time_limits{"time", "s", {0.0, 1e8}};
inline constexpr limits course_step_limits{"step", "s", {0.0, 1e8, edge::open}};
inline constexpr limits course_points_limits{"points (time over step)", "", {0.0, 1e5}};

namespace detail {

inline constexpr int most_course_steps = 120'000;  // about a second's work
inline constexpr int steps_of_a_crossing = 50;     // the root takes many of its own

/// Vapour pressure and the totals, or their rates.
struct course_state {
  double vapour{};  ///< Pa
  double evaporated = 0.0;
  double sources = 0.0;
  double ventilated = 0.0;
  double dehumidified = 0.0;
  double condensed = 0.0;
};

[[nodiscard]] inline course_state plus(const course_state& a, double by, const course_state& b) noexcept {
  return {a.vapour + by * b.vapour,         a.evaporated + by * b.evaporated,     a.sources + by * b.sources,
          a.ventilated + by * b.ventilated, a.dehumidified + by * b.dehumidified, a.condensed + by * b.condensed};
}

/// The machine runs above its set point, idles below it; at the set point, and at saturation, the air can stay. Without
/// one the set point is 0, and what runs removes nothing.
enum class course_phase { free, running, held_at_set_point, saturated };

struct course_rates {
  const moisture_model& m;
  course_phase phase;
  [[nodiscard]] course_state operator()(const course_state& s) const noexcept {
    const double p = s.vapour;
    course_state r;
    r.evaporated = m.evaporation(p);
    r.sources = m.source;
    const double out = m.ventilation(p);
    const double gain = r.evaporated + r.sources - out;
    r.dehumidified = phase == course_phase::held_at_set_point ? gain : phase == course_phase::free ? 0.0 : m.removal(p);
    const double net = gain - r.dehumidified;
    if (phase == course_phase::saturated) r.condensed = net;
    const double moving = phase == course_phase::saturated || phase == course_phase::held_at_set_point ? 0.0 : net;
    // The vapour that is added pushes room air out of the door.
    r.ventilated = out + moving * p / m.total();
    r.vapour = moving * (m.total() - p) / m.total() / (molar_mass_ratio<double> * m.per_pascal());
    return r;
  }
};

[[nodiscard]] inline course_state runge_kutta_step(const course_rates& f, const course_state& s, double h) noexcept {
  const course_state k1 = f(s);
  const course_state k2 = f(plus(s, 0.5 * h, k1));
  const course_state k3 = f(plus(s, 0.5 * h, k2));
  const course_state k4 = f(plus(s, h, k3));
  return plus(plus(plus(plus(s, h / 6.0, k1), h / 3.0, k2), h / 3.0, k3), h / 6.0, k4);
}

/// The phase in which the air goes on from here.
[[nodiscard]] inline course_phase phase_at(const moisture_model& m, double p) noexcept {
  const double gain = m.gain(p);
  if (p >= m.saturation && gain - m.removal(p) > 0.0) return course_phase::saturated;
  if (p < m.set_point) return course_phase::free;
  if (p > m.set_point) return course_phase::running;
  if (gain <= 0.0) return course_phase::free;
  return gain <= m.removal(p) ? course_phase::held_at_set_point : course_phase::running;
}

/// Go on for `time` in steps of at most `longest`, shorter while a machine runs, changing phase where the air meets the
/// set point or saturation. Where the air stays as it is all flows are constant, and one step is enough, however long.
[[nodiscard]] inline course_state go_on(std::string_view function, const moisture_model& m, course_state s, double time,
                                        double longest, int& steps) {
  // A machine takes more from wetter air, in a time constant of some half of what drying saturated air would take it.
  const double running = longest / (1.0 + 80.0 * longest * m.removal(m.saturation) / m.vapour_mass(m.saturation));
  while (time > 0.0) {
    if (++steps > most_course_steps) {
      core::fail<no_convergence>(function, "time", time, "s", "before the end is as far as the simulation gets");
    }
    const course_rates rates{m, phase_at(m, s.vapour)};
    course_state now = rates(s);
    const double most = rates.phase == course_phase::running ? running : longest;
    // What rounding makes of a balance: a fraction of 1e-13 of saturation in a step.
    if (std::fabs(now.vapour) <= 1e-13 * m.saturation / most) {
      now.ventilated = now.evaporated + now.sources - now.dehumidified - now.condensed;
      now.vapour = 0.0;
      return plus(s, time, now);
    }
    const double h = 0.999'999'999 * time <= most ? time : most;  // no step for what rounding leaves
    const course_state next = runge_kutta_step(rates, s, h);
    const auto crossed = [&](double line) { return line != s.vapour && (s.vapour < line) != (next.vapour < line); };
    double line = 0.0;
    if (crossed(m.set_point))
      line = m.set_point;
    else if (crossed(m.saturation))
      line = m.saturation;
    if (line == 0.0) {
      s = next;
      time -= h;
      continue;
    }
    const auto beyond = [&](double x) { return runge_kutta_step(rates, s, x).vapour - line; };
    steps += steps_of_a_crossing;
    const double part = numerics::bracketed_root<double>(function, "time", beyond, 0.0, h);
    s = runge_kutta_step(rates, s, part);
    s.vapour = line;
    time -= part;
  }
  return s;
}

}  // namespace detail

/// The humidity of a tank room from a given start, at the central evaporation.
///
///   V eps / (R T) dp/dt = [n V (W_o - W) rho_da + E(W) + G - D(W)] (P - p) / P
///
/// @param q      the room, as for humidity_balance; humidity at the start, 0 to 1; time [s], 0 to 1e8; step [s] > 0; at
///               most 1e5 points
/// @param policy `extrapolate` to go past the published ranges
/// @return       points from the start to the end, `step` apart, with the totals of all flows
/// @throws       invalid_input, out_of_range (names the element, the argument, its value and the limits),
///               no_convergence
/// @accuracy     1e-7 of the change, 2e-5 where one law of evaporation, or part of a machine's curve, gives way to
///               another; moisture is conserved to 1e-12. Walls and furniture that take up moisture are left out: a
///               real room moves more slowly
/// @source       mass balance; Shah 2014; classical Runge-Kutta
[[nodiscard]] inline std::vector<humidity_point> humidity_course(const humidity_course_request& q,
                                                                 range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::humidity_course";
  const detail::checked_room room = detail::checked(here, q.room, policy);
  detail::check_humidity(here, q.start);
  core::check(here, course_time_limits, q.time.get().value());
  core::check(here, course_step_limits, q.step.value());
  core::check(here, course_points_limits, q.time.get().value() / q.step.value());
  const detail::moisture_model m = room.at(detail::band_end::central);

  const auto point = [&](double time, const detail::course_state& s) {
    return humidity_point{.time = duration::from_value(time),
                          .air = detail::air_at(m, s.vapour),
                          .vapour = mass::from_value(m.vapour_mass(s.vapour)),
                          .evaporated = mass::from_value(s.evaporated),
                          .from_sources = mass::from_value(s.sources),
                          .ventilated = mass::from_value(s.ventilated),
                          .dehumidified = mass::from_value(s.dehumidified),
                          .condensed = mass::from_value(s.condensed)};
  };
  const double time = q.time.get().value();
  const double step = q.step.value();
  // Rate at which the air forgets without a machine: ventilation, and the surfaces at the strongest they can be.
  const double wet = std::max(m.evaporation(0.0), -m.evaporation(m.saturation)) / m.saturation;
  const double holds = detail::molar_mass_ratio<double> * m.per_pascal();  // kg of vapour for a pascal
  // What sources add moves the air too: through a small box a strong one moves it often.
  const double moved = m.source / (holds * m.total());
  const double forgets = m.changes + 2.0 * wet / holds + moved;
  const double longest = std::min(step, 0.025 / forgets);  // no end where nothing makes it forget

  std::vector<humidity_point> course;
  detail::course_state s{.vapour = q.start.get().value() * m.saturation};
  int steps = 0;
  course.push_back(point(0.0, s));
  for (std::size_t i = 1; step * static_cast<double>(i - 1) < time; ++i) {
    const double from = step * static_cast<double>(i - 1);
    const double to = std::min(time, step * static_cast<double>(i));
    s = detail::go_on(here, m, s, to - from, longest, steps);
    course.push_back(point(to, s));
  }
  return course;
}

}  // namespace tankwright::room
