// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where a formula or a number comes from, as data that stands beside it.
#pragma once

#include <string_view>

namespace tankwright {

/// How far a source was followed. Said honestly: a value that nobody here could read in print is `from_memory`.
enum class standing {
  published,        ///< printed in the source, and read there
  secondary,        ///< read in a reproduction of the source
  from_memory,      ///< the source was not read
  common_practice,  ///< a habit of the trade, no source
};

/// A literature reference.
struct citation {
  std::string_view authors;  ///< "Feistel R."
  int year;
  std::string_view title;
  std::string_view where;  ///< journal, volume and pages, with the equation or table used
  standing read_as = standing::published;
};

}  // namespace tankwright
