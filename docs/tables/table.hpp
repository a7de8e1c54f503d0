// SPDX-License-Identifier: BSL-1.0
/// @file
/// A table of numbers that people look up: written as a page and as comma separated values.
#pragma once

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <functional>
#include <stdexcept>
#include <string>
#include <vector>

namespace tables {

/// "1023.34", with so many digits behind the point.
inline std::string fixed(double value, int digits) {
  char text[64];
  std::snprintf(text, sizeof text, "%.*f", digits, value);
  return text;
}

/// One grid of numbers under a heading.
struct grid {
  std::string heading;        ///< empty where the page has one grid
  std::string rows, columns;  ///< what runs down, what runs across, with their units
  std::vector<std::string> down{}, across{};
  std::vector<std::vector<std::string>> cells{};  ///< one row for each of `down`; an empty cell is a dash on the page
};

/// Fill a grid from a function of the row and the column.
inline grid filled(grid g, const std::function<std::string(std::size_t, std::size_t)>& cell) {
  for (std::size_t i = 0; i < g.down.size(); ++i) {
    auto& row = g.cells.emplace_back();
    for (std::size_t j = 0; j < g.across.size(); ++j) row.push_back(cell(i, j));
  }
  return g;
}

/// A page: what it answers, its grids, what to mind.
struct page {
  std::string file, title, before, after;
  std::vector<grid> grids{};
};

inline void save(const std::filesystem::path& path, const std::string& text) {
  std::ofstream out{path, std::ios::binary};
  out << text;
  if (!out.flush()) throw std::runtime_error("cannot write " + path.string());
}

inline std::string as_markdown(const page& p) {
  std::string text = "# " + p.title + "\n\n" + p.before + "\n";
  for (const grid& g : p.grids) {
    if (!g.heading.empty()) text += "\n## " + g.heading + "\n";
    text += "\nDown: " + g.rows + ". Across: " + g.columns + ".\n\n| |";
    for (const auto& c : g.across) text += " " + c + " |";
    text += "\n|--:|";
    for (std::size_t j = 0; j < g.across.size(); ++j) text += "--:|";
    text += "\n";
    for (std::size_t i = 0; i < g.down.size(); ++i) {
      text += "| **" + g.down[i] + "** |";
      for (const auto& c : g.cells[i]) text += " " + (c.empty() ? std::string{"–"} : c) + " |";
      text += "\n";
    }
  }
  return text + "\n" + p.after + "\n\nAs data: [" + p.file + ".csv](" + p.file +
         ".csv). All tables: [contents](README.md).\n";
}

inline std::string as_csv(const page& p) {
  std::string text = "table,row,column,value\n";
  for (const grid& g : p.grids) {
    const std::string name = g.heading.empty() ? p.title : g.heading;
    for (std::size_t i = 0; i < g.down.size(); ++i) {
      for (std::size_t j = 0; j < g.across.size(); ++j) {
        text += "\"" + name + "\"," + g.down[i] + "," + g.across[j] + "," + g.cells[i][j] + "\n";
      }
    }
  }
  return text;
}

}  // namespace tables
