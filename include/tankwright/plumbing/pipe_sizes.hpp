// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is the bore of the pipe in my hand? PVC pipe by its nominal size: inch sizes of ASTM D1785 (Schedule 40 and 80)
/// and metric sizes of EN ISO 1452-2. A nominal size is a name; only the bore it leads to is a diameter.
#pragma once

#include <string>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/plumbing/pvc_schedule.hpp>

namespace tankwright::plumbing {

inline constexpr citation astm_d1785{
    "ASTM International", 2015, "D1785: Standard specification for poly(vinyl chloride) (PVC) plastic pipe",
    "Tables 1 and 2, Schedules 40, 80 and 120: outside diameters and minimum walls", standing::secondary};
inline constexpr citation en_iso_1452{"CEN, ISO", 2009,
                                      "EN ISO 1452-2: Plastics piping systems for water supply, PVC-U, pipes",
                                      "Table 2, nominal walls", standing::from_memory};

/// Nominal size of an inch pipe (NPS): 1.5 for "1 1/2 in pipe", whose bore is neither.
class nominal_size {
 public:
  [[nodiscard]] static constexpr nominal_size from_inches(double number) noexcept { return nominal_size{number}; }
  [[nodiscard]] constexpr double value() const noexcept { return value_; }
  constexpr auto operator<=>(const nominal_size&) const noexcept = default;

 private:
  constexpr explicit nominal_size(double number) noexcept : value_{number} {}
  double value_;
};

/// Nominal size of a metric pressure pipe, dn: its outside diameter in millimetres.
class metric_size {
 public:
  [[nodiscard]] static constexpr metric_size from_millimetres(double number) noexcept { return metric_size{number}; }
  [[nodiscard]] constexpr double value() const noexcept { return value_; }
  constexpr auto operator<=>(const metric_size&) const noexcept = default;

 private:
  constexpr explicit metric_size(double number) noexcept : value_{number} {}
  double value_;
};

enum class pressure_class { pn10, pn16 };

/// An inch pipe. The standard fixes the outside and the thinnest wall; pipe as extruded is thicker, so its mean bore is
/// smaller. Work with `average_bore`; old friction tables, made for steel, correspond to `minimum_wall_bore`.
struct pvc_dimensions {
  length outside_diameter;
  length minimum_wall;
  pipe_bore average_bore;
  pipe_bore minimum_wall_bore;
};

/// A metric pipe of nominal wall.
struct metric_dimensions {
  length outside_diameter;
  length wall;
  pipe_bore bore;
};

namespace detail {

/// A row of ASTM D1785, inches.
struct inch_pipe {
  double nominal;
  double outside;
  double wall_40;
  double wall_80;
};
inline constexpr inch_pipe inch_pipes[] = {
    {0.5, 0.840, 0.109, 0.147},  {0.75, 1.050, 0.113, 0.154}, {1.0, 1.315, 0.133, 0.179},
    {1.25, 1.660, 0.140, 0.191}, {1.5, 1.900, 0.145, 0.200},  {2.0, 2.375, 0.154, 0.218},
    {2.5, 2.875, 0.203, 0.276},  {3.0, 3.500, 0.216, 0.300},  {4.0, 4.500, 0.237, 0.337},
};

/// A row of EN ISO 1452-2, millimetres. A wall of zero: not made in this class.
struct metric_pipe {
  double nominal;
  double wall_10;
  double wall_16;
};
inline constexpr metric_pipe metric_pipes[] = {
    {20, 0.0, 1.5}, {25, 0.0, 1.9}, {32, 1.6, 2.4}, {40, 1.9, 3.0},  {50, 2.4, 3.7},
    {63, 3.0, 4.7}, {75, 3.6, 5.6}, {90, 4.3, 6.7}, {110, 4.2, 6.6},
};

/// Refuse a size that is not in a table, and say which are.
template <class Row, std::size_t N, class Made>
[[noreturn]] inline void refuse_size(std::string_view function, double size, std::string_view unit,
                                     const Row (&table)[N], Made made) {
  std::string reason = "is not made; sizes are";
  for (const Row& row : table) {
    if (made(row)) reason.append(" ").append(core::number_text(row.nominal));
  }
  core::fail<invalid_input>(function, "nominal size", size, unit, reason);
}

}  // namespace detail

/// Dimensions of an inch PVC pressure pipe.
///
///   average bore = OD - 2 (t + max(0.020 in, 0.12 t)/2),   minimum-wall bore = OD - 2 t,   t the minimum wall
///
/// @param size     nominal size: 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3 or 4
/// @param schedule 40 or 80
/// @return         outside diameter, minimum wall, and the two bores
/// @throws         invalid_input (with the sizes that are made)
/// @accuracy       outside and wall as printed, to 0.001 in; the average bore within 0.001 in of the average printed
///                 for Schedule 40; one pipe may differ by half of the wall's tolerance
/// @source         ASTM D1785 Tables 1 and 2
[[nodiscard]] inline pvc_dimensions pvc_pipe(nominal_size size, pvc_schedule schedule) {
  for (const detail::inch_pipe& row : detail::inch_pipes) {
    if (row.nominal != size.value()) continue;
    const double wall = schedule == pvc_schedule::schedule_40 ? row.wall_40 : row.wall_80;
    const double tolerance = 0.12 * wall > 0.020 ? 0.12 * wall : 0.020;
    return {inches(row.outside), inches(wall), pipe_bore{inches(row.outside - 2.0 * wall - tolerance)},
            pipe_bore{inches(row.outside - 2.0 * wall)}};
  }
  detail::refuse_size("tankwright::plumbing::pvc_pipe", size.value(), "in", detail::inch_pipes,
                      [](const detail::inch_pipe&) { return true; });
}

/// Dimensions of a metric PVC-U pressure pipe.
///
///   bore = dn - 2 e,   e the nominal wall of the pressure class
///
/// @param size   nominal size dn: 20, 25, 32, 40, 50, 63, 75, 90 or 110 mm
/// @param rating pressure class PN10 (from dn 32) or PN16
/// @return       outside diameter, wall and bore
/// @throws       invalid_input (with the sizes that are made)
/// @accuracy     0.1 mm if the table is remembered rightly: it was written down from memory, and agrees with the
///               standard's own rule for the wall
/// @source       EN ISO 1452-2 Table 2, from memory
[[nodiscard]] inline metric_dimensions metric_pvc_pipe(metric_size size, pressure_class rating) {
  const auto wall = [&](const detail::metric_pipe& row) {
    return rating == pressure_class::pn10 ? row.wall_10 : row.wall_16;
  };
  for (const detail::metric_pipe& row : detail::metric_pipes) {
    if (row.nominal != size.value() || wall(row) == 0.0) continue;
    return {millimetres(row.nominal), millimetres(wall(row)), pipe_bore{millimetres(row.nominal - 2.0 * wall(row))}};
  }
  detail::refuse_size("tankwright::plumbing::metric_pvc_pipe", size.value(), "mm", detail::metric_pipes,
                      [&](const detail::metric_pipe& row) { return wall(row) != 0.0; });
}

}  // namespace tankwright::plumbing
