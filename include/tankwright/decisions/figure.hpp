// SPDX-License-Identifier: BSL-1.0
/// @file
/// A picture of an answer, as data: curves over axes, or rectangles drawn to scale. In SI, like every amount; how it
/// looks is the front end's affair.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tankwright::decisions {

/// How a curve is meant to be drawn.
enum class stroke {
  line,    ///< joined by straight lines
  points,  ///< marks only
  dashed,  ///< a limit or a comparison
};

/// Points joined in order. `low` and `high`, where given, are the band about y.
struct curve {
  std::string label;
  std::vector<double> x{};
  std::vector<double> y{};
  std::vector<double> low{};
  std::vector<double> high{};
  stroke as = stroke::line;
};

/// An axis: its words, and the quantity that tells the unit ("duration", "length", "number").
struct axis {
  std::string_view label;
  std::string_view quantity;
};

/// A rectangle to scale, in metres; `fill` is "water", "rise", "wall" or "room".
struct rectangle {
  double left;
  double bottom;
  double width;
  double height;
  std::string_view fill;
  std::string label{};
};

/// A level in a picture to scale, with its number written beside it: "rim", "flood mark".
struct level_mark {
  double left;
  double right;
  double height;  ///< in the picture, and what is written, in metres
  std::string label{};
  bool limit = false;  ///< what must not be passed
};

/// One picture: either curves, or rectangles.
struct figure {
  std::string_view id;
  std::string title;
  axis x_axis{};
  axis y_axis{};
  std::vector<curve> curves{};
  std::vector<rectangle> rectangles{};
  std::vector<level_mark> marks{};  ///< among rectangles
};

}  // namespace tankwright::decisions
