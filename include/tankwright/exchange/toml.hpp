// SPDX-License-Identifier: BSL-1.0
/// @file
/// TOML as a document. Needs toml++ (3.1 or later) where its body is compiled.
#pragma once

#include <string_view>
#include <tankwright/exchange/document.hpp>

namespace tankwright::exchange {

/// Read a TOML text.
///
/// @param text UTF-8
/// @return     its tables, every node with its line
/// @throws     syntax_error with the line of the first mistake; of a text that is never closed, the line where it
///             begins
/// @accuracy   exact
/// @source     TOML 1.0
[[nodiscard]] node document_from_toml(std::string_view text);

}  // namespace tankwright::exchange

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/exchange/toml.ipp>
#endif
