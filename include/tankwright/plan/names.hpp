// SPDX-License-Identifier: BSL-1.0
/// @file
/// The nearest known name to a misspelt one.
#pragma once

#include <algorithm>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tankwright::plan {

/// How many letters must be added, dropped, changed or swapped with a neighbour to make one word of another.
///
///   the restricted edit distance of Damerau and Levenshtein
///
/// @param a a word of at most 64 letters; of a longer one the first 64 count
/// @param b another
/// @return  the number of changes
/// @throws   nothing but std::bad_alloc
/// @accuracy exact
/// @source  Damerau 1964, Levenshtein 1966 (from memory)
[[nodiscard]] inline std::size_t letters_apart(std::string_view a, std::string_view b) {
  a = a.substr(0, 64);
  b = b.substr(0, 64);
  std::vector<std::size_t> before(b.size() + 1), now(b.size() + 1), two_before(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) now[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::swap(two_before, before);
    std::swap(before, now);
    now[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      now[j] = std::min({before[j] + 1, now[j - 1] + 1, before[j - 1] + (a[i - 1] != b[j - 1])});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) now[j] = std::min(now[j], two_before[j - 2] + 1);
    }
  }
  return now[b.size()];
}

/// The known word nearest to a written one; empty where none is near (more than a third of its letters differ).
///
/// @param written the word
/// @param known   words that are known
/// @return        one of them, or nothing
/// @throws        nothing but std::bad_alloc
/// @accuracy      exact
/// @source        this library
[[nodiscard]] inline std::string nearest_name(std::string_view written, std::span<const std::string> known) {
  std::string best;
  std::size_t fewest = std::max<std::size_t>(1, written.size() / 3) + 1;
  for (const std::string& name : known) {
    if (const std::size_t apart = letters_apart(written, name); apart < fewest) {
      fewest = apart;
      best = name;
    }
  }
  return best;
}

}  // namespace tankwright::plan
