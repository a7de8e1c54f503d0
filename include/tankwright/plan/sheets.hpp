// SPDX-License-Identifier: BSL-1.0
/// @file
/// Sheets that are sold, by the least thickness that goes by each name: what a panel is reckoned with. Nominal 20 mm of
/// acrylic may be 17.6 mm.
#pragma once

#include <array>
#include <iterator>
#include <span>
#include <tankwright/vessel/glass_sizes.hpp>

namespace tankwright::plan {

/// Float glass, nominal 3 to 25 mm: the least thicknesses of `vessel::float_glass_sizes` [m].
inline constexpr auto glass_sheets = [] {
  std::array<double, std::size(vessel::float_glass_sizes)> least{};
  for (std::size_t i = 0; i < least.size(); ++i) {
    const double en = vessel::float_glass_sizes[i].least_en.value();
    const double astm = vessel::float_glass_sizes[i].least_astm.value();
    least[i] = en < astm || astm != astm ? en : astm;  // NaN where a standard does not have the size
  }
  return least;
}();

/// Cast acrylic, nominal 3 to 50 mm (common practice, no source), less 0.4 mm and a tenth of it
/// (ISO 7823-1, from memory) [m].
inline constexpr double acrylic_sheets[] = {0.0023, 0.0032, 0.0041, 0.0050, 0.0068, 0.0086, 0.0104,
                                            0.0131, 0.0176, 0.0221, 0.0266, 0.0356, 0.0446};

/// The sheets of one material.
///
/// @param acrylic cast acrylic; otherwise float glass
/// @return        their least thicknesses [m], thinnest first
/// @accuracy      of the standards
/// @source        EN 572-2, ASTM E1300 and ISO 7823-1, as above
[[nodiscard]] constexpr std::span<const double> sheets_of(bool acrylic) noexcept {
  return acrylic ? std::span<const double>{acrylic_sheets} : std::span<const double>{glass_sheets};
}

}  // namespace tankwright::plan
