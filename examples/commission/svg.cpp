// SPDX-License-Identifier: BSL-1.0
#include "svg.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include <tankwright/text/quantity.hpp>

namespace report {

using namespace tankwright;
using decisions::curve;
using decisions::figure;
using decisions::stroke;

namespace {

constexpr double page_width = 680.0;
constexpr double page_height = 320.0;
constexpr double left_margin = 66.0;
constexpr double right_margin = 26.0;
constexpr double top_margin = 12.0;
constexpr double bottom_margin = 46.0;

std::string at(double x) {
  char buffer[32];
  std::snprintf(buffer, sizeof buffer, "%.1f", x);
  return buffer;
}

/// A range of numbers in the unit shown, and where it lies on the page.
struct scale {
  double low;
  double high;
  double from;
  double to;
  [[nodiscard]] double operator()(double x) const { return from + (x - low) / (high - low) * (to - from); }
};

/// Steps of 1, 2 or 5 times a power of ten, about five of them.
double step_of(double span) {
  const double rough = span / 5.0;
  const double power = std::pow(10.0, std::floor(std::log10(rough)));
  for (const double nice : {1.0, 2.0, 5.0}) {
    if (rough <= nice * power) return nice * power;
  }
  return 10.0 * power;
}

/// Everything an axis shows, brought to one unit.
struct axis_unit {
  std::string_view quantity;
  std::string_view symbol;
  [[nodiscard]] double operator()(double si) const { return tankwright::text::number_in(amount{quantity, si, si, si}, symbol); }
};

axis_unit unit_for(std::string_view quantity, double largest, text::unit_system units) {
  return {quantity, text::everyday_unit(amount{quantity, largest, largest, largest}, units)};
}

std::string with_unit(std::string_view label, std::string_view symbol) {
  return symbol.empty() ? std::string{label} : std::string{label} + ", " + std::string{symbol};
}

std::string text_at(double x, double y, std::string_view anchor, std::string_view words, std::string_view extra = "") {
  return "<text x=\"" + at(x) + "\" y=\"" + at(y) + "\" text-anchor=\"" + std::string{anchor} + "\"" +
         std::string{extra} + ">" + escaped(words) + "</text>\n";
}

std::string path_of(const curve& c, const scale& sx, const scale& sy, const axis_unit& ux, const axis_unit& uy) {
  std::string points;
  for (std::size_t i = 0; i < c.x.size(); ++i) {
    points += (i ? " " : "") + at(sx(ux(c.x[i]))) + "," + at(sy(uy(c.y[i])));
  }
  return points;
}

std::string draw_curve(const curve& c, std::size_t index, const scale& sx, const scale& sy, const axis_unit& ux,
                       const axis_unit& uy) {
  const std::string colour = "c" + std::to_string(index % 6);
  std::string out;
  if (!c.low.empty()) {
    std::string outline;
    for (std::size_t i = 0; i < c.x.size(); ++i) outline += at(sx(ux(c.x[i]))) + "," + at(sy(uy(c.high[i]))) + " ";
    for (std::size_t i = c.x.size(); i-- > 0;) outline += at(sx(ux(c.x[i]))) + "," + at(sy(uy(c.low[i]))) + " ";
    out += "<polygon class=\"band " + colour + "\" points=\"" + outline + "\"/>\n";
  }
  if (c.as == stroke::points) {
    for (std::size_t i = 0; i < c.x.size(); ++i) {
      out += "<circle class=\"mark " + colour + "\" cx=\"" + at(sx(ux(c.x[i]))) + "\" cy=\"" +
             at(sy(uy(c.y[i]))) + "\" r=\"3.5\"/>\n";
    }
  } else {
    out += "<polyline class=\"curve " + colour + (c.as == stroke::dashed ? " dashed" : "") + "\" points=\"" +
           path_of(c, sx, sy, ux, uy) + "\"/>\n";
  }
  return out;
}

std::string draw_curves(const figure& f, text::unit_system units) {
  double x_low = HUGE_VAL, x_high = -HUGE_VAL, y_low = HUGE_VAL, y_high = -HUGE_VAL;
  for (const curve& c : f.curves) {
    for (const double x : c.x) x_low = std::fmin(x_low, x), x_high = std::fmax(x_high, x);
    for (const auto* values : {&c.y, &c.low, &c.high}) {
      for (const double y : *values) y_low = std::fmin(y_low, y), y_high = std::fmax(y_high, y);
    }
  }
  if (!(x_high > x_low)) return {};
  const axis_unit ux = unit_for(f.x_axis.quantity, std::fmax(std::fabs(x_low), std::fabs(x_high)), units);
  const axis_unit uy = unit_for(f.y_axis.quantity, std::fmax(std::fabs(y_low), std::fabs(y_high)), units);
  double low = uy(y_low);
  double high = uy(y_high);
  if (low > 0.0 && low < 0.5 * high) low = 0.0;  // start at zero unless that would squeeze the curves
  if (!(high > low)) high = low + 1.0;
  const double y_step = step_of(high - low);
  low = std::floor(low / y_step) * y_step;
  high = std::ceil(high / y_step) * y_step;
  const double x_step = step_of(ux(x_high) - ux(x_low));
  const scale sx{ux(x_low), ux(x_high), left_margin, page_width - right_margin};
  const scale sy{low, high, page_height - bottom_margin, top_margin};

  std::string out;
  for (double y = low; y <= high + 0.01 * y_step; y += y_step) {
    out += "<line class=\"grid\" x1=\"" + at(sx.from) + "\" x2=\"" + at(sx.to) + "\" y1=\"" + at(sy(y)) +
           "\" y2=\"" + at(sy(y)) + "\"/>\n";
    out += text_at(left_margin - 8.0, sy(y) + 4.0, "end", text::of(std::fabs(y) < 1e-9 * y_step ? 0.0 : y));
  }
  for (double x = std::ceil(sx.low / x_step - 1e-9) * x_step; x <= sx.high + 0.001 * x_step; x += x_step) {
    out += "<line class=\"grid\" y1=\"" + at(sy.from) + "\" y2=\"" + at(sy.to) + "\" x1=\"" + at(sx(x)) +
           "\" x2=\"" + at(sx(x)) + "\"/>\n";
    out += text_at(sx(x), sy.from + 17.0, "middle", text::of(std::fabs(x) < 1e-9 * x_step ? 0.0 : x));
  }
  out += text_at(0.5 * (sx.from + sx.to), page_height - 8.0, "middle", with_unit(f.x_axis.label, ux.symbol));
  const double middle = 0.5 * (sy.from + sy.to);
  out += text_at(14.0, middle, "middle", with_unit(f.y_axis.label, uy.symbol),
                 " transform=\"rotate(-90 14 " + at(middle) + ")\"");
  for (std::size_t i = 0; i < f.curves.size(); ++i) out += draw_curve(f.curves[i], i, sx, sy, ux, uy);
  return out;
}

std::string draw_rectangles(const figure& f, double& height) {
  double left = HUGE_VAL, right = -HUGE_VAL, bottom = HUGE_VAL, top = -HUGE_VAL;
  for (const auto& p : f.rectangles) {
    left = std::fmin(left, p.left), right = std::fmax(right, p.left + p.width);
    bottom = std::fmin(bottom, p.bottom), top = std::fmax(top, p.bottom + p.height);
  }
  if (!(right > left && top > bottom)) return {};
  const double one = std::fmin((page_width - 20.0) / (right - left), 420.0 / (top - bottom));  // the same both ways
  height = (top - bottom) * one + 20.0;
  std::string out;
  std::string labels;
  for (const auto& p : f.rectangles) {
    const double x = 10.0 + (p.left - left) * one;
    const double y = 10.0 + (top - p.bottom - p.height) * one;
    out += "<rect class=\"" + std::string{p.fill} + "\" x=\"" + at(x) + "\" y=\"" + at(y) + "\" width=\"" +
           at(p.width * one) + "\" height=\"" + at(p.height * one) + "\"/>\n";
    if (!p.label.empty()) labels += text_at(x + 0.5 * p.width * one, y + 15.0, "middle", p.label);
  }
  return out + labels;
}

}  // namespace

std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) {
    switch (c) {
      case '&': out += "&amp;"; break;
      case '<': out += "&lt;"; break;
      case '>': out += "&gt;"; break;
      case '"': out += "&quot;"; break;
      default: out += c;
    }
  }
  return out;
}

std::string as_svg(const figure& f, text::unit_system units) {
  double height = page_height;
  const std::string body = f.rectangles.empty() ? draw_curves(f, units) : draw_rectangles(f, height);
  if (body.empty()) return {};
  std::string out = "<figure id=\"" + escaped(f.id) + "\"><figcaption>" + escaped(f.title) + "</figcaption>\n";
  out += "<svg viewBox=\"0 0 " + at(page_width) + " " + at(height) + "\" role=\"img\" aria-label=\"" +
         escaped(f.title) + "\">\n" + body + "</svg>\n";
  std::string legend;
  for (std::size_t i = 0; i < f.curves.size(); ++i) {
    if (f.curves[i].label.empty()) continue;
    legend += "<span class=\"key c" + std::to_string(i % 6) + (f.curves[i].as == stroke::dashed ? " dashed" : "") + "\">" +
              escaped(f.curves[i].label) + "</span>\n";
  }
  if (!legend.empty()) out += "<p class=\"legend\">" + legend + "</p>\n";
  return out + "</figure>\n";
}

}  // namespace report
