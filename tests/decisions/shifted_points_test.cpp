// SPDX-License-Identifier: BSL-1.0
// The points of the samples against Boost.Random's own engine (library), and what is beyond its coordinates (property).
#include <boost/random/sobol.hpp>
#include <cmath>
#include <numeric>
#include <tankwright/decisions/shifted_points.hpp>

#include "support/check.hpp"

using tankwright::decisions::detail::shifted_points;
using tankwright::decisions::detail::sobol_coordinates;

TEST_CASE("shifted points: without the shift they are those of Boost.Random's engine, to the last bit of the shift") {
  const std::size_t count = 256;
  for (const std::size_t dimensions : {std::size_t{1}, std::size_t{2}, std::size_t{417}, sobol_coordinates}) {
    boost::random::sobol engine(dimensions);
    const shifted_points points(dimensions, count);
    REQUIRE(points.size() == count);
    std::vector<double> shift(dimensions);  // what the first point was moved by; each other must have been moved as far
    bool same = true;
    for (std::size_t i = 0; i < count; ++i) {
      for (std::size_t d = 0; d < dimensions; ++d) {
        const double theirs = static_cast<double>(engine()) * 0x1p-64;
        const double moved = points[i][d] - theirs;
        const double round = moved < 0.0 ? moved + 1.0 : moved;
        if (i == 0) shift[d] = round;
        same = same && std::fabs(round - shift[d]) < 1e-15;
      }
    }
    CHECK(same);
    CHECK(std::fabs(std::accumulate(shift.begin(), shift.end(), 0.0) / static_cast<double>(dimensions) - 0.5) <
          0.5 / std::sqrt(static_cast<double>(dimensions)));
  }
}

TEST_CASE("shifted points: more doubts than Boost's table has coordinates are answered") {
  const std::size_t dimensions = 5000, count = 1024;
  const shifted_points points(dimensions, count);
  const shifted_points fewer(sobol_coordinates, count);
  double worst = 0.0;  // the mean of 1,024 random numbers lies 0.009 about its middle; six times that is not seen
  bool inside = true, beginning_stays = true;
  for (std::size_t d = 0; d < dimensions; ++d) {
    double sum = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
      inside = inside && points[i][d] >= 0.0 && points[i][d] < 1.0;
      if (d < sobol_coordinates) beginning_stays = beginning_stays && points[i][d] == fewer[i][d];
      sum += points[i][d];
    }
    worst = std::max(worst, std::fabs(sum / static_cast<double>(count) - 0.5));
  }
  CHECK(inside);
  CHECK(beginning_stays);
  CHECK(worst < 6.0 * std::sqrt(1.0 / 12.0 / 1024.0));
}
