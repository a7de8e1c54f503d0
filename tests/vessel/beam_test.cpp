// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/beam.hpp>

#include <algorithm>
#include <random>

#include <tankwright/core/units.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const evidence closed{"tankwright::vessel::bend", kind::identity, "closed forms of beam theory"};

vs::beam_section section() { return vs::rectangular_section({.breadth = millimetres(50), .depth = millimetres(150)}); }
const stress modulus = gigapascals(10);
double rigidity() { return 1e10 * section().second_moment->value(); }

vs::beam_support pin(double x) { return {.at = metres(x)}; }
vs::beam_support fix(double x) { return {.at = metres(x), .kind = vs::support_kind::fixed}; }

vs::beam on(double span, std::vector<vs::beam_support> supports) {
  return {.span = metres(span),
          .section = section(),
          .modulus = modulus,
          .supports = std::move(supports),
          .label = "joist"};
}
vs::beam even(double w, double span, std::vector<vs::beam_support> supports) {
  auto b = on(span, std::move(supports));
  b.spreads = {
      {.at_start = newtons_per_metre(w), .at_end = newtons_per_metre(w), .from = metres(0), .to = metres(span)}};
  return b;
}

void check_closed(const vs::beam& b, double moment, double deflection) {
  const auto r = vs::bend(b);
  TW_CHECK(closed, std::fabs(r.largest_moment.value()), moment, relative(1e-12));
  TW_CHECK(closed, std::fabs(r.deflection.value()), deflection / rigidity(), relative(1e-12));
}

}  // namespace

TEST_CASE("beam: reference table") {
  check_rows(reference_rows("vessel/beam.csv"),
             {{"tankwright::vessel::bend", [](const reference_row& row) {
                 const std::string load = row.text("case"), what = row.text("give");
                 const bool triangle = load.starts_with("triangular");
                 const double span = triangle ? 1.0 : row["L"];
                 auto b = on(span, load.ends_with("cantilever") ? std::vector{fix(0)} : std::vector{pin(0), pin(span)});
                 if (load.starts_with("point")) {
                   b.points = {{.load = newtons(row["P"]), .at = metres(0.5 * span)}};
                 } else {
                   const double w = triangle ? 1.0 : row["w"];
                   b.spreads = {{.at_start = newtons_per_metre(w),
                                 .at_end = newtons_per_metre(triangle ? 0.0 : w),
                                 .from = metres(0),
                                 .to = metres(span)}};
                 }
                 const auto r = vs::bend(b);
                 if (what == "stress") return in_megapascals(r.bending);
                 if (what == "moment") return std::fabs(r.largest_moment.value());
                 return triangle ? r.deflection.value() * rigidity() : in_millimetres(r.deflection);
               }}});
}

TEST_CASE("beam: closed forms") {
  const double w = 2000, l = 2.5, p = 700;
  check_closed(even(w, l, {pin(0), pin(l)}), w * l * l / 8, 5 * w * std::pow(l, 4) / 384);
  check_closed(even(w, l, {fix(0), fix(l)}), w * l * l / 12, w * std::pow(l, 4) / 384);
  check_closed(even(w, l, {fix(0)}), w * l * l / 2, w * std::pow(l, 4) / 8);
  check_closed(even(w, l, {fix(l)}), w * l * l / 2, w * std::pow(l, 4) / 8);
  // Propped: the largest sag is where 1 - 9/8 s + ... = 0, at (1 + sqrt 33)/16 from the prop.
  const double s = (1 + std::sqrt(33.0)) / 16;
  check_closed(even(w, l, {fix(0), pin(l)}), w * l * l / 8,
               w * std::pow(l, 4) / 48 * (s - 3 * s * s * s + 2 * std::pow(s, 4)));
  auto b = on(l, {pin(0), pin(l)});
  b.points = {{.load = newtons(p), .at = metres(0.5 * l)}};
  check_closed(b, p * l / 4, p * std::pow(l, 3) / 48);
  const double a = 0.7, rest = l - a;  // a < l/2: the largest sag is on the longer side
  b.points = {{.load = newtons(p), .at = metres(a)}};
  check_closed(b, p * a * rest / l, p * a * std::pow(l * l - a * a, 1.5) / (9 * std::sqrt(3.0) * l));
  const auto off_centre = vs::bend(b);
  TW_CHECK(closed, off_centre.moment_at, metres(a), relative(1e-14));
  TW_CHECK(closed, off_centre.deflection_at, metres(l - std::sqrt((l * l - a * a) / 3)), relative(1e-7));
  b.supports = std::vector{fix(0), fix(l)};
  b.points = {{.load = newtons(p), .at = metres(0.5 * l)}};
  check_closed(b, p * l / 8, p * std::pow(l, 3) / 192);
  b.supports = std::vector{fix(0)};
  b.points = {{.load = newtons(p), .at = metres(l)}};
  check_closed(b, p * l, p * std::pow(l, 3) / 3);
  // Triangle on a fixed and a fixed end: 1/20 at the heavy end, 1/30 at the other.
  b = on(l, {fix(0), fix(l)});
  b.spreads = {{.at_start = newtons_per_metre(w), .at_end = newtons_per_metre(0), .from = metres(0), .to = metres(l)}};
  const auto r = vs::bend(b);
  TW_CHECK(closed, r.reactions[0].holding.value(), -w * l * l / 20, relative(1e-12));
  TW_CHECK(closed, r.reactions[1].holding.value(), -w * l * l / 30, relative(1e-12));
  TW_CHECK(closed, r.reactions[0].up, newtons(7 * w * l / 20), relative(1e-12));
  TW_CHECK(closed, r.reactions[1].up, newtons(3 * w * l / 20), relative(1e-12));
}

TEST_CASE("beam: overhangs and many spans") {
  const double w = 1500, l = 2, a = 0.6;
  const auto over = vs::bend(even(w, l + a, {pin(0), pin(l)}));
  TW_CHECK(closed, over.reactions[1].up, newtons(w * (l + a) * (l + a) / (2 * l)), relative(1e-12));
  TW_CHECK(closed, vs::along(over, metres(l)).moment.value(), -w * a * a / 2, relative(1e-12));
  // A heavy overhang lifts the far end.
  auto lifted = on(l + a, {pin(0), pin(l)});
  lifted.points = {{.load = newtons(100), .at = metres(l + a)}};
  TW_CHECK(closed, vs::bend(lifted).reactions[0].up, newtons(-100 * a / l), relative(1e-12));
  TW_CHECK(closed, vs::bend(lifted).deflection, metres(100 * a * a * (l + a) / 3 / rigidity()), relative(1e-12));
  const auto two = vs::bend(even(w, 2 * l, {pin(0), pin(l), pin(2 * l)}));
  TW_CHECK(closed, two.reactions[1].up, newtons(1.25 * w * l), relative(1e-12));
  TW_CHECK(closed, two.largest_moment.value(), -w * l * l / 8, relative(1e-12));
  const auto three = vs::bend(even(w, 3 * l, {pin(0), pin(l), pin(2 * l), pin(3 * l)}));
  TW_CHECK(closed, three.reactions[0].up, newtons(0.4 * w * l), relative(1e-12));
  TW_CHECK(closed, three.reactions[1].up, newtons(1.1 * w * l), relative(1e-12));
  TW_CHECK(closed, three.largest_moment.value(), -w * l * l / 10, relative(1e-12));
  TW_CHECK(closed, three.deflection, metres(0.00688421328 * w * std::pow(l, 4) / rigidity()), relative(1e-7));
}

TEST_CASE("beam: equilibrium, work and energy, and peaks of loads thrown at random") {
  const evidence balance{"tankwright::vessel::bend", kind::identity, "forces and moments balance"};
  const evidence work{"tankwright::vessel::along", kind::identity, "half the work of the loads is the bending energy"};
  const evidence peak{"tankwright::vessel::bend", kind::property, "no station is worse than the peaks"};
  std::mt19937 random{20260801};
  std::uniform_real_distribution<double> place(0.0, 3.0), load(-2000.0, 4000.0);
  const std::vector<std::vector<vs::beam_support>> all{
      {pin(0), pin(3)},          {pin(0.4), pin(2.5)}, {fix(0)},         {fix(3)},
      {fix(0), fix(3)},          {fix(0), pin(2)},     {pin(0), fix(3)}, {pin(0), pin(1), pin(1.7), pin(3)},
      {fix(0), pin(1.5), fix(3)}};
  for (int trial = 0; trial < 90; ++trial) {
    auto b = on(3, all[static_cast<std::size_t>(trial) % all.size()]);
    double down = 0, turning = 0;
    for (int i = 0; i < 2; ++i) {
      const double p = load(random), x = place(random);
      b.points.push_back({.load = newtons(p), .at = metres(x)});
      down += p;
      turning += p * x;
      double from = place(random), to = place(random);
      if (from > to) std::swap(from, to);
      const double first = load(random), last = load(random), length_of = to - from;
      b.spreads.push_back({.at_start = newtons_per_metre(first),
                           .at_end = newtons_per_metre(last),
                           .from = metres(from),
                           .to = metres(to)});
      down += 0.5 * (first + last) * length_of;
      turning += length_of * (0.5 * (first + last) * from + length_of * (first + 2 * last) / 6);
    }
    const auto r = vs::bend(b);
    double up = 0, resisted = 0;
    for (const auto& s : r.reactions) {
      up += s.up.value();
      resisted += s.up.value() * s.at.value();
      // The holding moment bends the beam: at the left end it turns the beam against the clock, at the right with it.
      resisted += s.at.value() == 0.0 ? -s.holding.value() : s.holding.value();
    }
    TW_CHECK(balance, up, down, tolerance{.absolute = 1e-8});
    TW_CHECK(balance, resisted, turning, tolerance{.absolute = 1e-8});
    // Bending energy by Simpson's rule between the places where something begins; work by the loads on the curve.
    std::vector<double> ends{0, 3};
    for (const auto& p : b.points) ends.push_back(p.at->value());
    for (const auto& s : b.spreads) ends.push_back(s.from->value()), ends.push_back(s.to->value());
    for (const auto& s : b.supports.get()) ends.push_back(s.at->value());
    std::sort(ends.begin(), ends.end());
    double energy = 0, done = 0;
    const auto simpson = [&](double from, double to, auto f) {
      constexpr int n = 200;
      double sum = 0;
      for (int i = 0; i <= n; ++i) {
        const double x = from + (to - from) * i / n;
        sum += (i == 0 || i == n ? 1 : i % 2 ? 4 : 2) * f(x);
      }
      return sum * (to - from) / (3 * n);
    };
    double most_moment = 0, most_sag = 0;
    for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
      if (!(ends[i] < ends[i + 1])) continue;
      energy += simpson(ends[i], ends[i + 1], [&](double x) {
        const double m = vs::along(r, metres(x)).moment.value();
        most_moment = std::fmax(most_moment, std::fabs(m));
        most_sag = std::fmax(most_sag, std::fabs(vs::along(r, metres(x)).deflection.value()));
        return m * m / (2 * rigidity());
      });
    }
    for (const auto& p : b.points) done += 0.5 * p.load->value() * vs::along(r, p.at).deflection.value();
    for (const auto& s : b.spreads) {
      const double from = s.from->value(), to = s.to->value();
      std::vector<double> cuts{from, to};
      for (const double e : ends) {
        if (e > from && e < to) cuts.push_back(e);
      }
      std::sort(cuts.begin(), cuts.end());
      for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        if (!(cuts[i] < cuts[i + 1])) continue;
        done += simpson(cuts[i], cuts[i + 1], [&](double x) {
          const double q = s.at_start->value() + (s.at_end->value() - s.at_start->value()) * (x - from) / (to - from);
          return 0.5 * q * vs::along(r, metres(x)).deflection.value();
        });
      }
    }
    TW_CHECK(work, done, energy, relative(1e-6));
    TW_HOLDS(peak, std::fabs(r.largest_moment.value()) >= most_moment * (1 - 1e-12));
    TW_HOLDS(peak, std::fabs(r.deflection.value()) >= most_sag * (1 - 1e-12));
    TW_HOLDS(peak, std::fabs(r.deflection.value()) <= most_sag * (1 + 1e-2));
  }
}

TEST_CASE("beam: sections, stress and a pull along the beam") {
  const evidence size{"tankwright::vessel::rectangular_section", kind::identity, "b d, b d3/12, d/2"};
  TW_CHECK(size, section().second_moment.get(), metres_to_the_fourth(0.05 * std::pow(0.15, 3) / 12), relative(1e-14));
  TW_CHECK(size, section().area.get(), square_metres(0.0075), relative(1e-14));
  TW_CHECK(size, section().extreme_fibre.get(), millimetres(75), relative(1e-14));
  auto brace = even(200, 1.2, {pin(0), pin(1.2)});
  brace.pull = newtons(3600);
  const auto r = vs::bend(brace);
  TW_CHECK(closed, r.axial, pascals(3600 / 0.0075), relative(1e-14));
  TW_CHECK(closed, r.bending, pascals(200 * 1.44 / 8 * 6 / (0.05 * 0.0225)), relative(1e-13));
  TW_CHECK(closed, r.combined, r.axial + r.bending, relative(1e-15));
  CHECK(r.caution.text.find("licensed engineer") != std::string_view::npos);
}

TEST_CASE("beam: impossible beams are refused by name") {
  const auto refused = [](const vs::beam& b) {
    try {
      (void)vs::bend(b);
    } catch (const invalid_input& e) {
      return std::string{e.what()};
    }
    return std::string{"accepted"};
  };
  const std::string start = "tankwright::vessel::bend: joist: ";
  CHECK(refused(on(2, {})) ==
        start + "number of supports = 0 cannot hold the beam: it needs two supports, or one that is fixed");
  CHECK(refused(on(2, {pin(1)})) ==
        start + "number of supports = 1 cannot hold the beam: it needs two supports, or one that is fixed");
  CHECK(refused(on(2, {pin(1), pin(1)})) == start + "support = 1 m stands where another one does");
  CHECK(refused(on(2, {pin(0), fix(1)})) ==
        start + "fixed support = 1 m is not at an end of the beam; a beam that goes on behind it is two beams");
  CHECK(refused(on(2, {pin(0), pin(2.1)})) == start + "support: place = 2.1 m is not possible; expected 0 to 2 m");
  CHECK(refused(on(0, {pin(0), pin(0)})) == start + "span = 0 m is not possible; expected 1e-06 to 1000 m");
  auto b = even(100, 2, {pin(0), pin(2)});
  b.points = {{.load = newtons(10), .at = metres(-0.1), .label = "lamp"}};
  CHECK(refused(b) == start + "lamp: place = -0.1 m is not possible; expected 0 to 2 m");
  b.points = {{.load = newtons(std::nan("")), .at = metres(0.1), .label = "lamp"}};
  CHECK(refused(b).starts_with(start + "lamp: load = nan N is not possible; expected -1e+12 to 1e+12 N"));
  b = even(100, 2, {pin(0), pin(2)});
  b.spreads[0].to = b.spreads[0].from;
  CHECK(refused(b) ==
        start + "spread load: end of the load = 0 m is not possible; expected more than 0 and at most 2 m");
  b = even(std::nan(""), 2, {pin(0), pin(2)});
  CHECK(refused(b).find("load = nan N/m") != std::string::npos);
  b = even(100, 2, {pin(0), pin(2)});
  b.pull = newtons(-1);
  CHECK(refused(b) == start + "pull = -1 N is not possible; expected 0 to 1e+12 N");
  b = even(100, 2, {pin(0), pin(2)});
  b.modulus = pascals(0);
  CHECK(refused(b) == start + "modulus = 0 Pa is not possible; expected 1 to 1e+13 Pa");
  CHECK_THROWS_AS((void)vs::rectangular_section({.breadth = metres(0), .depth = metres(1)}), invalid_input);
  CHECK_THROWS_AS((void)vs::rectangular_section({.breadth = metres(1), .depth = metres(std::nan(""))}), invalid_input);
  const auto r = vs::bend(even(100, 2, {pin(0), pin(2)}));
  CHECK_THROWS_AS((void)vs::along(r, metres(2.01)), invalid_input);
  CHECK_THROWS_AS((void)vs::along(r, metres(std::nan(""))), invalid_input);
}

TEST_CASE("beam: slope and shear along it, and a beam that carries nothing") {
  // Even load on two supports: y' = w (l^3 - 6 l x^2 + 4 x^3)/(24 EI), M = w x (l - x)/2, V = w (l/2 - x).
  const evidence along{"tankwright::vessel::along", kind::identity, "closed forms of beam theory"};
  const double w = 800, l = 2;
  const auto r = vs::bend(even(w, l, {pin(0), pin(l)}));
  for (const double x : {0.0, 0.3, 1.0, 1.7, 2.0}) {
    const auto here = vs::along(r, metres(x));
    TW_CHECK(along, here.slope.value(), w * (l * l * l - 6 * l * x * x + 4 * x * x * x) / (24 * rigidity()),
             within(1e-15));
    TW_CHECK(along, here.moment.value(), w * x * (l - x) / 2, within(1e-10));
    TW_CHECK(along, here.shear.value(), w * (l / 2 - x), within(1e-10));
    TW_CHECK(along, here.deflection.value(), w * x * (l * l * l - 2 * l * x * x + x * x * x) / (24 * rigidity()),
             within(1e-16));
  }
  const auto still = vs::bend(on(l, {pin(0), pin(l)}));
  CHECK(still.largest_moment.value() == 0.0);
  CHECK(still.moment_at == metres(0));
  CHECK(still.deflection == metres(0));
  CHECK(still.deflection_at == metres(0));
  CHECK(still.bending == pascals(0));
  // A load of a hundredth of a newton is as good as any other.
  TW_CHECK(closed, vs::bend(even(1e-6, l, {pin(0), pin(l)})).largest_moment.value(), 1e-6 * l * l / 8, relative(1e-12));
  TW_CHECK(closed, vs::bend(even(1e-6, l, {pin(0), pin(l)})).deflection.value(),
           5e-6 * std::pow(l, 4) / 384 / rigidity(), relative(1e-12));
  // Of a solved beam that somebody changed, terms that are no beam's are refused.
  for (const int power : {-1, 6}) {
    auto other = r;
    other.solved.curve.terms[0].power = power;
    CHECK_THROWS_AS((void)vs::along(other, metres(1)), invalid_input);
  }
  for (const int power : {0, 5}) {
    auto other = r;
    other.solved.curve.terms[0].power = power;
    CHECK_NOTHROW((void)vs::along(other, metres(1)));
  }
  auto long_list = r;
  long_list.solved.curve.terms.assign(100'001, {0.0, 3, 0.0});
  CHECK_THROWS_AS((void)vs::along(long_list, metres(1)), invalid_input);
  long_list.solved.curve.terms.pop_back();
  CHECK_NOTHROW((void)vs::along(long_list, metres(1)));
}
