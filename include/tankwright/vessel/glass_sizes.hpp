// SPDX-License-Identifier: BSL-1.0
/// @file
/// How thick is glass that is sold as 19 mm? The sizes that float glass is made in, and the least thickness that goes
/// by each name: that, not the name, is the thickness to calculate with.
#pragma once

#include <cmath>
#include <optional>
#include <string_view>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

inline constexpr citation en_572{"CEN", 2012,
                                 "EN 572-2, Glass in building, basic soda-lime silicate glass: float glass",
                                 "tolerances on the nominal thickness", standing::from_memory};
inline constexpr citation astm_e1300_thickness{"ASTM", 2012, "E1300, Load resistance of glass in buildings",
                                               "Table 4, minimum thickness of each nominal thickness",
                                               standing::secondary};

namespace detail {
/// A size that a standard does not have. Made without arithmetic, which Clang does not do with NaN while it compiles.
inline constexpr length not_made = length::from_value(__builtin_nan(""));
}  // namespace detail

/// A size that float glass is sold in. NaN where a standard does not have it.
struct float_glass_size {
  length nominal;
  length in_inches;   ///< its name in inches: half an inch is 12 mm, not 12.7 mm
  length least_en;    ///< EN 572-2
  length least_astm;  ///< ASTM E1300, Table 4
};

/// The sizes of float glass from 3 mm, thinnest first. Not every glazier stocks them all.
inline constexpr float_glass_size float_glass_sizes[]{
    {millimetres(3.0), inches(1.0 / 8.0), millimetres(2.8), millimetres(2.92)},
    {millimetres(4.0), inches(5.0 / 32.0), millimetres(3.8), millimetres(3.78)},
    {millimetres(5.0), inches(3.0 / 16.0), millimetres(4.8), millimetres(4.57)},
    {millimetres(6.0), inches(1.0 / 4.0), millimetres(5.8), millimetres(5.56)},
    {millimetres(8.0), inches(5.0 / 16.0), millimetres(7.7), millimetres(7.42)},
    {millimetres(10.0), inches(3.0 / 8.0), millimetres(9.7), millimetres(9.02)},
    {millimetres(12.0), inches(1.0 / 2.0), millimetres(11.7), millimetres(11.91)},
    {millimetres(15.0), detail::not_made, millimetres(14.5), detail::not_made},
    {millimetres(16.0), inches(5.0 / 8.0), detail::not_made, millimetres(15.09)},
    {millimetres(19.0), inches(3.0 / 4.0), millimetres(18.0), millimetres(18.26)},
    {millimetres(22.0), inches(7.0 / 8.0), detail::not_made, millimetres(21.44)},
    {millimetres(25.0), inches(1.0), millimetres(24.0), millimetres(24.61)},
};

/// The least thickness of glass that is sold by a nominal size, by the weaker of the two standards.
///
///   least of EN 572-2 and ASTM E1300 Table 4
///
/// @param nominal [m]: a size of `float_glass_sizes` by its name in millimetres or inches, to within 0.05 mm
/// @return        least thickness [m]; nothing for a size that is not in the table (laminated glass, acrylic)
/// @throws        invalid_input
/// @accuracy      of the tables; measure the sheet with callipers at its edges to do better
/// @source        EN 572-2 (from memory), ASTM E1300 Table 4 (read in reproductions)
[[nodiscard]] inline std::optional<length> least_thickness(length nominal) {
  core::check("tankwright::vessel::least_thickness", detail::positive_length("nominal thickness"), nominal.value());
  for (const float_glass_size& size : float_glass_sizes) {
    const auto named = [&](length name) { return std::fabs((name - nominal).value()) < 5e-5; };
    if (!named(size.nominal) && !named(size.in_inches)) continue;
    return length::from_value(std::fmin(size.least_en.value(), size.least_astm.value()));  // fmin passes NaN over
  }
  return std::nullopt;
}

}  // namespace tankwright::vessel
