// SPDX-License-Identifier: BSL-1.0
/// @file
/// Header-only, or compiled once: the same text both ways.
///
/// Bodies that are large stand in `.ipp` files. Headers include them, unless the program links `tankwright::compiled`,
/// which defines TANKWRIGHT_COMPILED and holds the bodies.
#pragma once

#if defined(TANKWRIGHT_COMPILED)
#define TANKWRIGHT_INLINE
#else
#define TANKWRIGHT_INLINE inline
#endif
