// SPDX-License-Identifier: BSL-1.0
/// @file
/// Sheets that are sold, by the least thickness that the maker allows: what a panel is reckoned with. Nominal 19 mm of
/// glass may be 18.26 mm, nominal 20 mm of acrylic 17.6 mm.
#pragma once

#include <span>

namespace tankwright::plan {

/// Float glass, nominal 3 to 25 mm: minimum thicknesses of ASTM C1036, as in ASTM E1300 Table 4 (from memory) [m].
inline constexpr double glass_sheets[] = {0.00292, 0.00378, 0.00456, 0.00556, 0.00742, 0.00902,
                                          0.01191, 0.01509, 0.01826, 0.02144, 0.02461};

/// Cast acrylic, nominal 3 to 50 mm (common practice, no source), less 0.4 mm and a tenth of it
/// (ISO 7823-1, from memory) [m].
inline constexpr double acrylic_sheets[] = {0.0023, 0.0032, 0.0041, 0.0050, 0.0068, 0.0086, 0.0104, 0.0131,
                                            0.0176, 0.0221, 0.0266, 0.0356, 0.0446};

/// The sheets of one material.
///
/// @param acrylic cast acrylic; otherwise float glass
/// @return        their least thicknesses [m]
/// @accuracy      of the standards
/// @source        ASTM C1036 and ISO 7823-1 (from memory)
[[nodiscard]] constexpr std::span<const double> sheets_of(bool acrylic) noexcept {
  return acrylic ? std::span<const double>{acrylic_sheets} : std::span<const double>{glass_sheets};
}

}  // namespace tankwright::plan
