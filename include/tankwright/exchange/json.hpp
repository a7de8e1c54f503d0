// SPDX-License-Identifier: BSL-1.0
/// @file
/// JSON as a document. Needs nlohmann-json (3.9 or later) where its body is compiled.
#pragma once

#include <string_view>
#include <tankwright/exchange/document.hpp>

namespace tankwright::exchange {

/// Read a JSON text.
///
/// @param text UTF-8
/// @return     its tables; JSON has no lines worth naming, so mistakes of meaning are named by their pointer
/// @throws     syntax_error with the line of the first mistake; a key that is given twice is one
/// @accuracy   exact
/// @source     RFC 8259
[[nodiscard]] node document_from_json(std::string_view text);

}  // namespace tankwright::exchange

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/exchange/json.ipp>
#endif
