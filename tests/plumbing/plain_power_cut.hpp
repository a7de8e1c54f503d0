// SPDX-License-Identifier: BSL-1.0
/// @file
/// A power cut written from the equations, in numbers and with nothing of the library's code: Euler's method with small
/// steps. It is slow and simple on purpose.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace tankwright::testing {

struct plain_baffle {
  double crest, width, gap;
};
struct plain_pipe {
  double bore = 0.034, length = 2.0, k = 4.0;
};
struct plain_return {
  double opening;  // below the edge
  plain_pipe pipe;
};

/// One system, SI. All returns meet at one shared pipe, where there is one.
struct plain_system {
  double surface = 1.0, edge_width = 0.5, edge_crest = 0.5, height = 1.5, flow = 0.002;
  double box_area = 0.0, box_fall = 0.0;
  double drain_contents = 0.0;
  std::vector<plain_return> returns;
  bool shared = false;
  plain_pipe trunk;
  std::vector<double> areas;
  std::vector<plain_baffle> baffles;
  double running = 0.1, rim = 0.4;
  std::size_t drains_into = 0;
};

struct plain_course {
  double peak = 0.0, at = 0.0;  // the walls continued
  std::vector<double> last;
  double before = 0.0, after = 0.0;  // all water
};

namespace plain {

constexpr double g = 9.80665, pi = 3.14159265358979323846, nu = 0.96e-3 / 1023.3;

/// Rehbock; below 5 mm of head his 1.2 mm shrink with it.
inline double rehbock(double h, double b, double p) {
  if (h <= 0.0) return 0.0;
  const double he = h >= 0.005 ? h + 0.0012 : h * 1.24;
  return 2.0 / 3.0 * (0.602 + 0.083 * h / p) * std::sqrt(2.0 * g) * b * std::pow(he, 1.5);
}
/// Over the crest, drowned by Villemonte, and under the gap.
inline double passes(const plain_baffle& b, double up, double down) {
  double q = 0.0;
  if (up > b.crest) {
    q = rehbock(up - b.crest, b.width, b.crest);
    if (down > b.crest) q *= std::pow(1.0 - std::pow((down - b.crest) / (up - b.crest), 1.5), 0.385);
  }
  return q + 0.61 * b.gap * b.width * std::sqrt(2.0 * g * (up - down));
}
/// The higher level that passes q, by halving.
inline double level_for(const plain_baffle& b, double q, double down) {
  double low = down, high = down + 1.0;
  while (passes(b, high, down) < q) high += 1.0;
  for (int i = 0; i < 100; ++i) {
    const double middle = 0.5 * (low + high);
    (passes(b, middle, down) < q ? low : high) = middle;
  }
  return high;
}
inline double head_for(const plain_system& s, double q) {
  double low = 0.0, high = 1.0;
  for (int i = 0; i < 100; ++i) {
    const double middle = 0.5 * (low + high);
    (rehbock(middle, s.edge_width, s.edge_crest) < q ? low : high) = middle;
  }
  return high;
}
/// Head loss over q^2, by Colebrook and White for a smooth plastic pipe (laminar below 2000), at a flow.
inline double resistance(const plain_pipe& p, double q, double exit) {
  const double v = q / (pi / 4.0 * p.bore * p.bore), re = std::max(1.0, v * p.bore / nu);
  double f = 64.0 / re;
  if (re > 2000.0) {
    double x = 8.0;
    for (int i = 0; i < 20; ++i) x = -2.0 * std::log10(1.5e-6 / p.bore / 3.7 + 2.51 / re * x);
    f = 1.0 / (x * x);
  }
  return 8.0 / (pi * pi * g * std::pow(p.bore, 4.0)) * (p.k + exit + f * p.length / p.bore);
}
inline double contents(const plain_pipe& p) { return pi / 4.0 * p.bore * p.bore * p.length; }

}  // namespace plain

/// The course by steps of `dt` until all siphons have ended, and `until` seconds at least; what is then still over the edge, in the box and in the drains is
/// let down evenly in `until` seconds more, which would take hours otherwise.
inline plain_course simulate(const plain_system& s, double dt, double until) {
  using namespace plain;
  const std::size_t n = s.areas.size();
  std::vector<double> z(n), q(n);
  z[n - 1] = s.running;
  for (std::size_t i = n - 1; i-- > 0;) {
    const plain_baffle& b = s.baffles[i];
    if (i < s.drains_into) z[i] = b.gap > 0.0 ? z[i + 1] : std::max(b.crest, z[i + 1]);
    if (i >= s.drains_into) z[i] = level_for(b, s.flow, z[i + 1]);
  }
  double over = head_for(s, s.flow);
  const double box_full = s.box_area * s.box_fall;
  double box = box_full, hold = s.drain_contents;

  // Flows back through own pipes and the trunk: q_i^2 r_i + (sum q)^2 r_t = height, by a few rounds on the factors.
  const std::size_t m = s.returns.size();
  std::vector<double> r(m), back(m, 1e-3), column(m, 0.0), column_full(m, 1.0), column_flow(m, 0.0);
  std::vector<bool> runs(m);
  double trunk_r = 0.0, total_back = 0.0, trunk_water = s.shared ? contents(s.trunk) : 0.0;
  const auto solve_back = [&](double height, int rounds) {
    for (int k = 0; k < rounds; ++k) {
      double sum = 0.0, all = 0.0;
      for (std::size_t i = 0; i < m; ++i) all += runs[i] ? back[i] : 0.0;
      trunk_r = s.shared ? resistance(s.trunk, std::max(all, 1e-6), 1.0) : 0.0;
      for (std::size_t i = 0; i < m; ++i) {
        r[i] = resistance(s.returns[i].pipe, std::max(back[i], 1e-6), s.shared ? 0.0 : 1.0);
        if (runs[i]) sum += 1.0 / std::sqrt(r[i]);
      }
      total_back = 0.0;
      if (sum == 0.0 || height <= 0.0) continue;
      const double total = std::sqrt(height / (1.0 / (sum * sum) + trunk_r));
      for (std::size_t i = 0; i < m; ++i) {
        if (runs[i]) back[i] = total / sum / std::sqrt(r[i]);
      }
      total_back = total;
    }
  };
  const auto let_fall = [&](std::size_t i, double height) {
    column[i] = contents(s.returns[i].pipe);
    bool last = true;
    for (std::size_t k = 0; k < m; ++k) last = last && !runs[k];
    if (last) column[i] += trunk_water, trunk_water = 0.0;
    column_full[i] = column[i];
    column_flow[i] = std::sqrt(height / (r[i] + trunk_r));
  };
  for (std::size_t i = 0; i < m; ++i) runs[i] = s.returns[i].opening > -over;
  solve_back(s.height + over - z[n - 1], 20);
  for (std::size_t i = 0; i < m; ++i) {
    if (!runs[i]) let_fall(i, s.height - z[n - 1] - s.returns[i].opening);
  }

  const auto water = [&] {
    double sum = over * s.surface + box + hold + trunk_water;
    for (std::size_t i = 0; i < n; ++i) sum += s.areas[i] * z[i];
    for (std::size_t i = 0; i < m; ++i) sum += runs[i] ? contents(s.returns[i].pipe) : column[i];
    return sum;
  };
  plain_course result;
  result.before = water();
  const auto note = [&](double t) {
    for (const double level : z) {
      if (level > result.peak) result.peak = level, result.at = t;
    }
  };
  note(0.0);
  const auto steps = static_cast<long>(until / dt);
  double rest = 0.0;
  long end = -1;  // of the free course
  for (long step = 0; end < 0 || step < end + steps; ++step) {
    double still_back = 0.0;
    for (std::size_t i = 0; i < m; ++i) still_back += runs[i] ? 1.0 : column[i];
    if (end < 0 && step >= steps && (still_back <= 1e-9 || step > 20 * steps)) {
      end = step;
      rest = std::max(0.0, over) * s.surface + box + hold;
      over = std::min(over, 0.0);
      box = hold = 0.0;
    }
    const double edge_water = std::min(rehbock(over, s.edge_width, s.edge_crest) * dt, std::max(0.0, over) * s.surface);
    double drained = edge_water, carried = edge_water / dt;
    if (end >= 0) {
      drained += rest / static_cast<double>(steps);
    } else if (box_full > 0.0) {
      carried = s.flow * std::pow(box / box_full, 1.5);
      drained = std::min(box + edge_water, carried * dt);
      box += edge_water - drained;
    }
    const double left = std::min(hold, s.drain_contents * carried / s.flow);
    drained += hold - left;
    hold = left;
    const double height = s.height + over - std::min(z[n - 1], s.rim);
    if (step % 20 == 0) solve_back(height, 2);
    double into_last = 0.0;
    over -= edge_water / s.surface;
    for (std::size_t i = 0; i < m; ++i) {
      if (runs[i] && height > 0.0) {
        const double take = std::min(back[i] * dt, (over + s.returns[i].opening) * s.surface);
        over -= take / s.surface;
        into_last += take;
        if (over + s.returns[i].opening <= 1e-12) {
          runs[i] = false;
          let_fall(i, height);
          solve_back(height, 2);
        }
      } else if (column[i] > 0.0) {
        const double take = std::min(column[i], column_flow[i] * std::sqrt(column[i] / column_full[i]) * dt);
        column[i] -= take;
        into_last += take;
      }
    }
    for (std::size_t i = 0; i + 1 < n; ++i) {
      const double up = std::max(z[i], z[i + 1]), down = std::min(z[i], z[i + 1]), crest = s.baffles[i].crest;
      double moved = up > down ? passes(s.baffles[i], up, down) * dt : 0.0;
      // no more than half of what would level the two, or lay the crest bare
      const double a = s.areas[i], b = s.areas[i + 1];
      double most = (up - down) * a * b / (a + b);
      if (s.baffles[i].gap == 0.0 && down < crest) most = std::max(0.0, up - crest) * (z[i] > z[i + 1] ? a : b);
      moved = std::min(moved, 0.5 * most);
      q[i] = z[i] > z[i + 1] ? moved : -moved;
    }
    for (std::size_t i = 0; i + 1 < n; ++i) {
      z[i] -= q[i] / s.areas[i];
      z[i + 1] += q[i] / s.areas[i + 1];
    }
    z[s.drains_into] += drained / s.areas[s.drains_into];
    z[n - 1] += into_last / s.areas[n - 1];
    note((static_cast<double>(step) + 1.0) * dt);
  }
  result.after = water();
  result.last = z;
  return result;
}

}  // namespace tankwright::testing
