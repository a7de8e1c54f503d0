// SPDX-License-Identifier: BSL-1.0
// The plate once more: Levy's modes solved as eight equations each (four where no water line lies within), in long double,
// without any of the library's shortcuts. Against it: the middle line with its slopes, moments anywhere, corners, peaks.
#include <array>
#include <cmath>
#include <numbers>
#include <tankwright/vessel/panel.hpp>
#include <utility>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vd = tankwright::vessel::detail;

namespace {

using real = long double;
constexpr real pi = std::numbers::pi_v<real>;

const evidence plate{"tankwright::vessel::water_on", kind::identity,
                     "Levy's modes by linear equations, in long double"};

/// Gauss with pivoting; a is n by n + 1.
std::vector<real> solve(std::vector<std::vector<real>> a) {
  const std::size_t n = a.size();
  for (std::size_t i = 0; i < n; ++i) {
    std::size_t best = i;
    for (std::size_t j = i; j < n; ++j) best = std::fabs(a[j][i]) > std::fabs(a[best][i]) ? j : best;
    std::swap(a[i], a[best]);
    for (std::size_t j = i + 1; j < n; ++j) {
      const real f = a[j][i] / a[i][i];
      for (std::size_t c = i; c <= n; ++c) a[j][c] -= f * a[i][c];
    }
  }
  std::vector<real> x(n);
  for (std::size_t i = n; i-- > 0;) {
    x[i] = a[i][n];
    for (std::size_t c = i + 1; c < n; ++c) x[i] -= a[i][c] * x[c];
    x[i] /= a[i][i];
  }
  return x;
}

struct moments {
  real w, across, up, twist;
};

class plain_plate {
 public:
  explicit plain_plate(const vd::plate<double>& p) : p_{p} {
    ends_ = {0, 1};
    if (p.load.partly_filled) ends_ = {0, p.load.level, 1};
  }

  /// Deflection and moments of the waves, the strip added: w = q (x^4 - 2 W x^3 + W^3 x)/24. On an edge the terms go on
  /// changing their sign; the means of neighbouring sums settle.
  moments at(real x, real y) const {
    const real w = p_.width, q = load(y), slope = load_slope(y), nu = p_.poisson;
    const real xx = q * (12 * x * x - 12 * w * x) / 24, xy = slope * (4 * x * x * x - 6 * w * x * x + w * w * w) / 24;
    moments sum{q * (x * x * x * x - 2 * w * x * x * x + w * w * w * x) / 24, -xx, -nu * xx, -(1 - nu) * xy};
    std::vector<std::array<real, 4>> partial;
    for (int m = 1; m < 2 * terms; m += 2) {
      const real k = m * pi / w;
      const auto f = waves(m, y);
      const real s = std::sin(k * x), c = std::cos(k * x);
      sum.w += f[0] * s;
      sum.across += (k * k * f[0] - nu * f[2]) * s;
      sum.up += (nu * k * k * f[0] - f[2]) * s;
      sum.twist -= (1 - nu) * k * f[1] * c;
      if (m > 2 * terms - 2 * 24) partial.push_back({sum.w, sum.across, sum.up, sum.twist});
    }
    while (partial.size() > 1) {
      for (std::size_t i = 0; i + 1 < partial.size(); ++i)
        for (std::size_t j = 0; j < 4; ++j) partial[i][j] = (partial[i][j] + partial[i + 1][j]) / 2;
      partial.pop_back();
    }
    return {partial[0][0], partial[0][1], partial[0][2], partial[0][3]};
  }
  moments middle(real y) const { return at(p_.width / 2, y); }

  /// The twisting moment at a corner: the terms fall as 1/m^3, so sums to n and 2 n give the rest away.
  real corner(bool top) const {
    real sum = 0, half = 0;
    constexpr int n = 300;
    for (int i = 0; i < 2 * n; ++i) {
      const int m = 2 * i + 1;
      const real k = m * pi / p_.width, y = top ? 1 : 0;
      sum -= (1 - p_.poisson) * k * (waves(m, y)[1] + 4 / (m * pi) * load_slope(y) / (k * k * k * k));
      if (i == n - 1) half = sum;
    }
    return (4 * sum - half) / 3;
  }

 private:
  static constexpr int terms = 200;

  real load(real y) const {
    return p_.load.partly_filled ? std::fmax(p_.load.level - y, real(0)) : p_.load.constant + p_.load.slope * y;
  }
  real load_slope(real y) const { return p_.load.partly_filled ? (y < p_.load.level ? -1 : 0) : p_.load.slope; }

  /// The four functions of a piece and their derivatives by k y, at y.
  std::array<std::array<real, 4>, 4> basis(std::size_t piece, real k, real y) const {
    const real u = k * (y - ends_[piece]), v = k * (ends_[piece + 1] - y), a = std::exp(-u), b = std::exp(-v);
    return {{{a, -a, a, -a},
             {u * a, (1 - u) * a, (u - 2) * a, (3 - u) * a},
             {b, b, b, b},
             {v * b, (v - 1) * b, (v - 2) * b, (v - 3) * b}}};
  }

  /// The waves of a mode, Y less the strip 4/(m pi) q/k^4, with three derivatives by y. Where two pieces meet, the lower.
  std::array<real, 4> waves(int m, real y) const {
    const real k = m * pi / p_.width;
    const std::size_t pieces = ends_.size() - 1;
    if (static_cast<std::size_t>(m) >= solved_.size()) solved_.resize(static_cast<std::size_t>(m) + 1);
    auto& c = solved_[static_cast<std::size_t>(m)];
    if (c.empty()) c = coefficients(m, k);
    std::size_t piece = 0;
    while (piece + 1 < pieces && y > ends_[piece + 1]) ++piece;
    const auto f = basis(piece, k, y);
    std::array<real, 4> sum{};
    const std::array<real, 4> powers{1, k, k * k, k * k * k};
    for (std::size_t i = 0; i < 4; ++i)
      for (std::size_t j = 0; j < 4; ++j) sum[j] += c[4 * piece + i] * f[i][j] * powers[j];
    return sum;
  }

  std::vector<real> coefficients(int m, real k) const {
    const std::size_t pieces = ends_.size() - 1, n = 4 * pieces;
    const real strip = 4 / (m * pi) / (k * k * k * k), nu = p_.poisson;
    std::vector<std::vector<real>> a;
    // sum over the jets j of weight[j] (waves + strip) = 0 at an edge
    const auto edge = [&](std::size_t piece, real y, vd::edge_kind kind) {
      const std::array<std::array<real, 4>, 2> conditions =
          kind == vd::edge_kind::supported ? std::array<std::array<real, 4>, 2>{{{1, 0, 0, 0}, {0, 0, 1, 0}}}
          : kind == vd::edge_kind::clamped ? std::array<std::array<real, 4>, 2>{{{1, 0, 0, 0}, {0, 1, 0, 0}}}
                                           : std::array<std::array<real, 4>, 2>{{{-nu, 0, 1, 0}, {0, nu - 2, 0, 1}}};
      const auto f = basis(piece, k, y);
      const std::array<real, 4> own{strip * load(y), strip * load_slope(y) / k, 0, 0};
      for (const auto& weight : conditions) {
        std::vector<real> row(n + 1);
        for (std::size_t j = 0; j < 4; ++j) {
          for (std::size_t i = 0; i < 4; ++i) row[4 * piece + i] += weight[j] * f[i][j];
          row[n] -= weight[j] * own[j];
        }
        a.push_back(row);
      }
    };
    edge(0, 0, p_.bottom);
    if (pieces == 2) {  // value and three derivatives go on; the strip has a kink: its slope falls from -strip/k to 0
      const auto below = basis(0, k, ends_[1]), above = basis(1, k, ends_[1]);
      for (std::size_t j = 0; j < 4; ++j) {
        std::vector<real> row(n + 1);
        for (std::size_t i = 0; i < 4; ++i) row[i] = below[i][j], row[4 + i] = -above[i][j];
        if (j == 1) row[n] = strip / k;
        a.push_back(row);
      }
    }
    edge(pieces - 1, 1, p_.top);
    return solve(a);
  }

  vd::plate<double> p_;
  std::vector<real> ends_;
  mutable std::vector<std::vector<real>> solved_;
};

std::vector<vd::plate<double>> plates() {
  using enum vd::edge_kind;
  std::vector<vd::plate<double>> all;
  const std::vector<vd::plate_load<double>> loads{{.constant = 1.0, .slope = -1.0},
                                                  {.constant = 1.0},
                                                  {.constant = 1.7, .slope = -1.0},
                                                  {.partly_filled = true, .level = 0.7},
                                                  {.partly_filled = true, .level = 0.2}};
  for (const auto bottom : {supported, clamped}) {
    for (const auto top : {supported, vd::edge_kind::free}) {
      for (const double width : {0.35, 1.0, 2.2, 4.0}) {
        for (int i = 0; i < 2; ++i)
          all.push_back({width, all.size() % 2 ? 0.22 : 0.38, bottom, top, loads[all.size() % 5]});
      }
    }
  }
  return all;
}

/// Tall ones and shallow water, whose peaks stand close to an edge or to the water line.
std::vector<vd::plate<double>> narrow_peaks() {
  using enum vd::edge_kind;
  std::vector<vd::plate<double>> all;
  for (const auto bottom : {supported, clamped}) {
    for (const auto top : {supported, vd::edge_kind::free}) {
      all.push_back({0.12, 0.22, bottom, top, {.constant = 1.0, .slope = -1.0}});
      all.push_back({0.3, 0.38, bottom, top, {.constant = 1.0}});
      all.push_back({0.5, 0.22, bottom, top, {.partly_filled = true, .level = 0.1}});
      all.push_back({1.5, 0.38, bottom, top, {.partly_filled = true, .level = 0.06}});
    }
  }
  return all;
}

double d(real x) { return static_cast<double>(x); }

}  // namespace

TEST_CASE("panel plate: deflection and moments along the middle line, with slope and curvature") {
  for (const auto& p : plates()) {
    const plain_plate exact(p);
    vd::plate_modes<double> modes(p);
    const vd::midline<double> line(modes);
    real most_w = 0, most_m = 0;
    for (int i = 1; i < 20; ++i) {
      const auto m = exact.middle(i / real(20));
      most_w = std::fmax(most_w, std::fabs(m.w));
      most_m = std::fmax(most_m, std::fmax(std::fabs(m.across), std::fabs(m.up)));
    }
    CAPTURE(p.width);
    for (const double y : {0.11, 0.37, 0.64, 0.83}) {
      const auto found = line.at(y);
      const real h = 1e-3L;
      std::array<moments, 5> f;
      for (int i = 0; i < 5; ++i) f[static_cast<std::size_t>(i)] = exact.middle(y + h * (i - 2));
      const auto check = [&](const vd::along_height<double>& got, auto of, real scale) {
        const real slope = (8 * (of(f[3]) - of(f[1])) - (of(f[4]) - of(f[0]))) / (12 * h);
        const real curve = (16 * (of(f[3]) + of(f[1])) - (of(f[4]) + of(f[0])) - 30 * of(f[2])) / (12 * h * h);
        TW_CHECK(plate, got.value, d(of(f[2])), tolerance{.absolute = d(1e-10L * scale)});
        TW_CHECK(plate, got.slope, d(slope), tolerance{.absolute = d(1e-6L * scale)});
        TW_CHECK(plate, got.curve, d(curve), tolerance{.absolute = d(1e-4L * scale)});
      };
      check(
          found.deflection, [](const moments& m) { return m.w; }, most_w);
      check(
          found.across, [](const moments& m) { return m.across; }, most_m);
      check(
          found.up, [](const moments& m) { return m.up; }, most_m);
    }
  }
}

TEST_CASE("panel plate: principal moments anywhere, and the corners") {
  auto all = plates();  // and a tall one, in whose middle the waves of the edges have almost died out
  all.push_back({0.1, 0.22, vd::edge_kind::clamped, vd::edge_kind::free, {.constant = 1.0, .slope = -1.0}});
  for (const auto& p : all) {
    const plain_plate exact(p);
    vd::plate_modes<double> modes(p);
    const vd::field<double> field(modes);
    CAPTURE(p.width);
    real scale = 0;
    for (const double y : {0.15, 0.4, 0.8}) {
      for (const double part : {0.1, 0.3, 0.45}) {
        const auto m = exact.at(part * p.width, y);
        const real mean = (m.across + m.up) / 2, root = std::hypot((m.across - m.up) / 2, m.twist);
        scale = std::fmax(scale, std::fabs(mean) + root);
        TW_CHECK(plate, field.principal(part * p.width, y, vd::field<double>::most),
                 d(mean + std::copysign(root, mean)),
                 tolerance{.absolute = d((p.width > 1.0 ? 1e-5L : 1e-8L) * scale)});  // of 48 modes
      }
    }
    const auto peaks = vd::solve_plate(p);
    const real below = exact.corner(false), above = exact.corner(true);
    const bool top = std::fabs(above) > std::fabs(below) * (1 + 1e-9L);
    TW_CHECK(plate, std::fabs(peaks.twist.value), d(std::fmax(std::fabs(below), std::fabs(above))),
             tolerance({.absolute = 1e-8, .relative = 1e-6}));
    if (std::fabs(std::fabs(above) - std::fabs(below)) > 1e-6L) {
      CHECK(peaks.twist.y == (top ? 1.0 : 0.0));
      TW_CHECK(plate, peaks.twist.value, d(top ? above : below), tolerance({.absolute = 1e-8, .relative = 1e-6}));
    }
    CHECK(peaks.twist.x == 0.0);
  }
}

TEST_CASE("panel plate: peaks of the middle line") {
  auto all = narrow_peaks();
  for (std::size_t i = 0; const auto& p : plates()) {
    if (i++ % 2 == 0) all.push_back(p);
  }
  for (std::size_t number = 0; number < all.size(); ++number) {
    const auto& p = all[number];
    const plain_plate exact(p);
    const auto peaks = vd::solve_plate(p);
    CAPTURE(p.width);
    const auto check = [&](const vd::plate_peak<double>& peak, auto of) {
      const auto size = [&](real y) { return std::fabs(of(exact.middle(y))); };
      real best = 0;
      real most = 0;
      for (int i = 0; i <= 60; ++i) {
        const real y = i / real(60), s = size(y);
        if (s > most) best = y, most = s;
      }
      real low = std::fmax(best - 1 / real(60), real(0)), high = std::fmin(best + 1 / real(60), real(1));
      for (int i = 0; i < 21; ++i) {
        const real a = low + (high - low) * 0.381966L, b = low + (high - low) * 0.618034L;
        (size(a) < size(b) ? low : high) = size(a) < size(b) ? a : b;
      }
      const real y = most > size((low + high) / 2) ? best : (low + high) / 2;
      TW_CHECK(plate, peak.value, d(of(exact.middle(y))), relative(3e-9));
      // An even load on even edges has two peaks.
      const real other = 1 - y,
                 found = std::fabs(size(other) - size(y)) < 1e-7L * most && (peak.y < 0.5) != (y < 0.5L) ? other : y;
      TW_CHECK(plate, peak.y, d(found), tolerance{.absolute = 2e-3});
      CHECK(peak.x == 0.5 * p.width);
    };
    check(peaks.deflection, [](const moments& m) { return m.w; });
    check(peaks.across, [](const moments& m) { return m.across; });
    check(peaks.up, [](const moments& m) { return m.up; });
  }
}
