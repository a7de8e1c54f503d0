// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/units.hpp>

#include <set>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

/// Makers and readers of the unit table by name, for the functions that `rows` ask for.
std::map<std::string, row_handler> makers_and_readers(const std::vector<reference_row>& rows) {
  const std::map<std::string, row_handler> all{
#define TANKWRIGHT_HANDLERS(quantity_name, unit_name, symbol, factor)                                     \
  {"tankwright::" #unit_name, [](const reference_row& row) { return unit_name(row["number"]).value(); }}, \
      {"tankwright::in_" #unit_name,                                                                      \
       [](const reference_row& row) { return in_##unit_name(quantity_name::from_value(row["si"])); }},
      TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_HANDLERS)
#undef TANKWRIGHT_HANDLERS
  };
  std::map<std::string, row_handler> used;
  for (const auto& row : rows) {
    if (const auto handler = all.find(row.function); handler != all.end()) used.insert(*handler);
  }
  return used;
}

void comes_back(const char* reader, double back, double x) {
  TW_CHECK((evidence{reader, kind::property, "round trip"}), back, x, relative(3e-16));
}

void is_new(std::set<std::string_view>& symbols, std::string_view symbol) {
  CAPTURE(symbol);
  CHECK(symbols.insert(symbol).second);
}

}  // namespace

TEST_CASE("units: printed conversion factors") {
  const auto rows = reference_rows("core/units.csv");
  check_rows(rows, makers_and_readers(rows));
}

TEST_CASE("units: every maker and reader against the definitions in rational arithmetic") {
  const auto rows = live_rows("core_units.csv");
  check_rows(rows, makers_and_readers(rows));
#define TANKWRIGHT_COUNT(quantity_name, unit_name, symbol, factor) +1
  constexpr std::size_t units = 0 TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_COUNT);
#undef TANKWRIGHT_COUNT
  CHECK(makers_and_readers(rows).size() == 2 * units);
}

TEST_CASE("units: a number comes back as it went in") {
  for (const double x : {0.0, 1.0, 2150.0, 1e-3, 0.1, 7.3e7}) {
#define TANKWRIGHT_ROUND_TRIP(quantity_name, unit_name, symbol, factor) \
  comes_back("tankwright::in_" #unit_name, in_##unit_name(unit_name(x)), x);
    TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_ROUND_TRIP)
#undef TANKWRIGHT_ROUND_TRIP
  }
}

TEST_CASE("units: no symbol stands for two units") {
  std::set<std::string_view> symbols;
#define TANKWRIGHT_SYMBOL(quantity_name, unit_name, symbol, factor) is_new(symbols, symbol);
  TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_SYMBOL)
#undef TANKWRIGHT_SYMBOL
}

TEST_CASE("units: constants and aliases") {
  static_assert(standard_gravity == metres_per_second_squared(9.80665));
  static_assert(std::is_same_v<head, length>);
  static_assert(litres(1000.0) == cubic_metres(1.0));
  static_assert(litres_per_hour(3600.0) == litres_per_second(1.0));
}
