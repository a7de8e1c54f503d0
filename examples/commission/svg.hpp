// SPDX-License-Identifier: BSL-1.0
/// @file
/// Figures as SVG inside HTML; colours come from the page's style, so that light, dark and print each have their own.
#pragma once

#include <string>
#include <string_view>

#include <tankwright/decisions/figure.hpp>
#include <tankwright/text/quantity.hpp>

namespace report {

[[nodiscard]] std::string as_svg(const tankwright::decisions::figure& f, tankwright::text::unit_system units);

/// Text that may stand in HTML.
[[nodiscard]] std::string escaped(std::string_view text);

}  // namespace report
