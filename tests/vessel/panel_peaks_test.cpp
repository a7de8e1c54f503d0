// SPDX-License-Identifier: BSL-1.0
// Plates whose peaks are hard to find: very tall ones, thin layers of water, two peaks of nearly one size. Chosen
// among thousands that were thrown at random, because there a mistake in the search shows.
#include <algorithm>
#include <cmath>
#include <tankwright/vessel/panel.hpp>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vd = tankwright::vessel::detail;

namespace {

const evidence peak{"tankwright::vessel::water_on", kind::property, "no place of the plate is worse than the peaks"};
constexpr auto supported = vd::edge_kind::supported, clamped = vd::edge_kind::clamped, free_edge = vd::edge_kind::free;

vd::plate<double> full(double width, double nu, vd::edge_kind bottom, vd::edge_kind top, double level) {
  return {width, nu, bottom, top, {.constant = level, .slope = -1.0}};
}
vd::plate<double> partly(double width, double nu, vd::edge_kind bottom, vd::edge_kind top, double level) {
  return {width, nu, bottom, top, {.partly_filled = true, .level = level}};
}

/// Heights close to one another, and closer where water or panel are small.
std::vector<double> heights_of(const vd::plate<double>& p) {
  std::vector<double> y;
  const auto add = [&](double from, double step, int count) {
    for (int i = 0; i <= count; ++i) {
      if (const double at = from + step * i; at >= 0.0 && at <= 1.0) y.push_back(at);
    }
  };
  add(0.0, 1.0 / 400, 400);
  if (p.load.partly_filled) add(0.0, p.load.level / 100, 400);
  if (p.width < 1.0) add(0.0, p.width / 100, 150), add(1.0, -p.width / 100, 150);
  std::sort(y.begin(), y.end());
  return y;
}

}  // namespace

TEST_CASE(
    "panel peaks: no height of the middle line is worse than the peaks, and the peaks are where they are said to be") {
  for (const auto& p : {
           partly(0.54, 0.38, clamped, free_edge, 0.0206),
           partly(0.746, 0.38, supported, free_edge, 0.733),
           partly(0.0312, 0.38, clamped, supported, 0.65),
           partly(0.516, 0.22, clamped, supported, 0.293),
           full(0.039, 0.38, clamped, supported, 3.07),
           partly(3.45, 0.38, clamped, free_edge, 0.236),
           partly(0.34, 0.22, clamped, supported, 0.216),
           partly(0.0571, 0.38, clamped, supported, 0.0531),
           partly(0.0211, 0.38, clamped, supported, 0.416),
       }) {
    CAPTURE(p.width);
    CAPTURE(p.load.level);
    vd::plate_modes<double> modes(p);
    const vd::midline<double> line(modes);
    const auto peaks = vd::solve_plate(p);
    const auto y = heights_of(p);
    const double moment = std::fmax(std::fabs(peaks.across.value), std::fabs(peaks.up.value));
    const auto check = [&](const vd::plate_peak<double>& found, vd::line_of<double> of, double scale) {
      const auto size = [&](double at) { return std::fabs((line.at(at).*of).value); };
      std::size_t best = 0;
      for (std::size_t i = 1; i < y.size(); ++i) best = size(y[i]) > size(y[best]) ? i : best;
      double low = y[best > 0 ? best - 1 : 0], high = y[std::min(best + 1, y.size() - 1)];
      for (int i = 0; i < 40; ++i) {  // thirds, which keep the highest place
        const double a = low + (high - low) / 3, b = high - (high - low) / 3;
        (size(a) < size(b) ? low : high) = size(a) < size(b) ? a : b;
      }
      const double most = std::max({size(y[best]), size(low), size(high)});
      TW_CHECK(peak, std::fabs(found.value), most, tolerance{.absolute = 1e-10 * scale});
      TW_CHECK(peak, size(found.y), most, tolerance{.absolute = 1e-10 * scale});
    };
    check(peaks.deflection, &vd::midline_point<double>::deflection, std::fabs(peaks.deflection.value));
    check(peaks.across, &vd::midline_point<double>::across, moment);
    check(peaks.up, &vd::midline_point<double>::up, moment);
  }
}
