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

std::string page_at(double x) {
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
  [[nodiscard]] double operator()(double si) const {
    return tankwright::text::number_in(amount{quantity, si, si, si}, symbol);
  }
};

axis_unit unit_for(std::string_view quantity, double largest, text::unit_system units) {
  if (quantity == "duration" && largest >= 3600.0) return {quantity, largest > 3.0 * 86400.0 ? "d" : "h"};
  return {quantity, text::everyday_unit(amount{quantity, largest, largest, largest}, units)};
}

std::string with_unit(std::string_view label, std::string_view symbol) {
  if (symbol == "d") return std::string{label} + ", days";
  if (symbol == "h") return std::string{label} + ", hours";
  return symbol.empty() ? std::string{label} : std::string{label} + ", " + std::string{symbol};
}

std::string text_at(double x, double y, std::string_view anchor, std::string_view words, std::string_view extra = "") {
  return "<text x=\"" + page_at(x) + "\" y=\"" + page_at(y) + "\" text-anchor=\"" + std::string{anchor} + "\"" +
         std::string{extra} + ">" + escaped(words) + "</text>\n";
}

std::string path_of(const curve& c, const scale& sx, const scale& sy, const axis_unit& ux, const axis_unit& uy) {
  std::string points;
  for (std::size_t i = 0; i < c.x.size(); ++i) {
    points += (i ? " " : "") + page_at(sx(ux(c.x[i]))) + "," + page_at(sy(uy(c.y[i])));
  }
  return points;
}

std::string draw_curve(const curve& c, std::size_t index, const scale& sx, const scale& sy, const axis_unit& ux,
                       const axis_unit& uy) {
  const std::string colour = "c" + std::to_string(index % 6);
  std::string out;
  if (!c.low.empty()) {
    std::string outline;
    for (std::size_t i = 0; i < c.x.size(); ++i)
      outline += page_at(sx(ux(c.x[i]))) + "," + page_at(sy(uy(c.high[i]))) + " ";
    for (std::size_t i = c.x.size(); i-- > 0;)
      outline += page_at(sx(ux(c.x[i]))) + "," + page_at(sy(uy(c.low[i]))) + " ";
    out += "<polygon class=\"band " + colour + "\" points=\"" + outline + "\"/>\n";
  }
  if (c.as == stroke::points) {
    for (std::size_t i = 0; i < c.x.size(); ++i) {
      out += "<circle class=\"mark " + colour + "\" cx=\"" + page_at(sx(ux(c.x[i]))) + "\" cy=\"" +
             page_at(sy(uy(c.y[i]))) + "\" r=\"3.5\"/>\n";
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
    out += "<line class=\"grid\" x1=\"" + page_at(sx.from) + "\" x2=\"" + page_at(sx.to) + "\" y1=\"" + page_at(sy(y)) +
           "\" y2=\"" + page_at(sy(y)) + "\"/>\n";
    out += text_at(left_margin - 8.0, sy(y) + 4.0, "end", text::of(std::fabs(y) < 1e-9 * y_step ? 0.0 : y));
  }
  for (double x = std::ceil(sx.low / x_step - 1e-9) * x_step; x <= sx.high + 0.001 * x_step; x += x_step) {
    out += "<line class=\"grid\" y1=\"" + page_at(sy.from) + "\" y2=\"" + page_at(sy.to) + "\" x1=\"" + page_at(sx(x)) +
           "\" x2=\"" + page_at(sx(x)) + "\"/>\n";
    out += text_at(sx(x), sy.from + 17.0, "middle", text::of(std::fabs(x) < 1e-9 * x_step ? 0.0 : x));
  }
  out += text_at(0.5 * (sx.from + sx.to), page_height - 8.0, "middle", with_unit(f.x_axis.label, ux.symbol));
  const double middle = 0.5 * (sy.from + sy.to);
  out += text_at(14.0, middle, "middle", with_unit(f.y_axis.label, uy.symbol),
                 " transform=\"rotate(-90 14 " + page_at(middle) + ")\"");
  for (std::size_t i = 0; i < f.curves.size(); ++i) out += draw_curve(f.curves[i], i, sx, sy, ux, uy);
  return out;
}

/// A level with its number; the words stand above the line, where another has not taken the place already.
std::string draw_mark(const decisions::level_mark& m, double x1, double x2, double y, text::unit_system units,
                      std::vector<std::array<double, 3>>& taken) {
  const std::string words =
      (m.label.empty() ? "" : m.label + " ") + text::of(length::from_value(m.height), units, text::significant(3));
  // About 6 units of the page a character: words that would not fit between the ends start at the left one.
  const double wide = 6.2 * static_cast<double>(words.size());
  const double from = std::fmin(std::fmax(0.5 * (x1 + x2) - 0.5 * wide, 12.0), page_width - 12.0 - wide);
  double at = y - 4.0;
  for (int tries = 0; tries < 8; ++tries) {
    const bool hit = std::any_of(taken.begin(), taken.end(), [&](const auto& t) {
      return std::fabs(t[2] - at) < 13.0 && from < t[1] && from + wide > t[0];
    });
    if (!hit) break;
    at += tries % 2 == 0 ? 14.0 * (tries + 1) : -14.0 * (tries + 1);
  }
  taken.push_back({from, from + wide, at});
  return "<line class=\"" + std::string{m.limit ? "limit" : "level"} + "\" x1=\"" + page_at(x1) + "\" x2=\"" +
         page_at(x2) + "\" y1=\"" + page_at(y) + "\" y2=\"" + page_at(y) + "\"/>\n" +
         text_at(from, at, "start", words, " class=\"said\"");
}

std::string draw_rectangles(const figure& f, text::unit_system units, double& height) {
  double left = HUGE_VAL, right = -HUGE_VAL, bottom = HUGE_VAL, top = -HUGE_VAL;
  for (const auto& p : f.rectangles) {
    left = std::fmin(left, p.left), right = std::fmax(right, p.left + p.width);
    bottom = std::fmin(bottom, p.bottom), top = std::fmax(top, p.bottom + p.height);
  }
  for (const auto& m : f.marks) top = std::fmax(top, m.height);
  if (!(right > left && top > bottom)) return {};
  const double one = std::fmin((page_width - 20.0) / (right - left), 420.0 / (top - bottom));  // the same both ways
  constexpr double above = 30.0;
  height = (top - bottom) * one + above + 26.0;
  const auto x_of = [&](double x) { return 10.0 + (x - left) * one; };
  const auto y_of = [&](double y) { return above + (top - y) * one; };
  std::string out;
  std::string labels;
  std::vector<std::array<double, 3>> taken;
  for (const auto& p : f.rectangles) {
    out += "<rect class=\"" + std::string{p.fill} + "\" x=\"" + page_at(x_of(p.left)) + "\" y=\"" +
           page_at(y_of(p.bottom + p.height)) + "\" width=\"" + page_at(p.width * one) + "\" height=\"" +
           page_at(p.height * one) + "\"/>\n";
    if (p.label.empty()) continue;
    labels +=
        text_at(x_of(p.left + 0.5 * p.width), y_of(p.bottom) + (p.fill == "room" ? 17.0 : -6.0), "middle", p.label);
  }
  for (const auto& m : f.marks) labels += draw_mark(m, x_of(m.left), x_of(m.right), y_of(m.height), units, taken);
  return out + labels;
}

/// Curves that lie on each other within a hundredth of the picture's height are drawn once, and named together.
std::vector<curve> apart(const std::vector<curve>& all) {
  double low = HUGE_VAL, high = -HUGE_VAL;
  for (const curve& c : all) {
    for (const double y : c.y) low = std::fmin(low, y), high = std::fmax(high, y);
  }
  std::vector<curve> kept;
  for (const curve& c : all) {
    const auto same = std::find_if(kept.begin(), kept.end(), [&](const curve& k) {
      if (k.x != c.x || k.as != c.as || c.as == stroke::points || c.x.size() < 3) return false;
      for (std::size_t i = 0; i < c.y.size(); ++i) {
        if (std::fabs(k.y[i] - c.y[i]) > 0.01 * (high - low)) return false;
      }
      return true;
    });
    if (same == kept.end()) {
      kept.push_back(c);
    } else {
      same->label += " = " + c.label;
    }
  }
  return kept;
}

}  // namespace

std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) {
    switch (c) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      default:
        out += c;
    }
  }
  return out;
}

std::string as_svg(const figure& given, text::unit_system units) {
  figure f = given;
  f.curves = apart(given.curves);
  double height = page_height;
  const std::string body = f.rectangles.empty() ? draw_curves(f, units) : draw_rectangles(f, units, height);
  if (body.empty()) return {};
  std::string out = "<figure id=\"" + escaped(f.id) + "\"><figcaption>" + escaped(f.title) + "</figcaption>\n";
  out += "<svg viewBox=\"0 0 " + page_at(page_width) + " " + page_at(height) + "\" role=\"img\" aria-label=\"" +
         escaped(f.title) + "\">\n" + body + "</svg>\n";
  std::string legend;
  for (std::size_t i = 0; i < f.curves.size(); ++i) {
    if (f.curves[i].label.empty()) continue;
    legend += "<span class=\"key c" + std::to_string(i % 6) + (f.curves[i].as == stroke::dashed ? " dashed" : "") +
              "\">" + escaped(f.curves[i].label) + "</span>\n";
  }
  if (!legend.empty()) out += "<p class=\"legend\">" + legend + "</p>\n";
  return out + "</figure>\n";
}

}  // namespace report
