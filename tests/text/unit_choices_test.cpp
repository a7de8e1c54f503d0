// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/text/unit_choices.hpp>
#include <tankwright/text/written.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {
const evidence choices{"tankwright::text::units_of", kind::identity, "exact factors of the units, by hand"};

const text::unit_choice* find(const std::vector<text::unit_choice>& all, std::string_view symbol) {
  for (const auto& unit : all) {
    if (unit.symbol == symbol) return &unit;
  }
  return nullptr;
}
}  // namespace

TEST_CASE("a unit says how large it is and where it begins to count") {
  const auto holds = [](std::string_view quantity, std::string_view symbol, double size, double zero) {
    CAPTURE(quantity);
    CAPTURE(symbol);
    const auto all = text::units_of(quantity);
    const text::unit_choice* unit = find(all, symbol);
    REQUIRE(unit);
    TW_CHECK(choices, unit->size, size, relative(4e-16));
    TW_CHECK(choices, unit->zero, zero, relative(4e-16));
  };
  holds("length", "m", 1.0, 0.0);
  holds("length", "in", 0.0254, 0.0);
  holds("flow_rate", "L/h", 1.0 / 3.6e6, 0.0);
  holds("temperature", "K", 1.0, 0.0);
  holds("temperature", "degC", 1.0, 273.15);
  holds("temperature", "degF", 5.0 / 9.0, 459.67 * 5.0 / 9.0);
  holds("temperature_difference", "degF", 5.0 / 9.0, 0.0);
  holds("gauge_pressure", "kPa", 1000.0, 0.0);
  holds("porosity", "%", 0.01, 0.0);
  holds("relative_humidity", "%", 0.01, 0.0);
}

TEST_CASE("what has no unit has no choice") {
  for (const std::string_view quantity : {"number", "practical_salinity", "colour", ""}) {
    CAPTURE(quantity);
    TW_HOLDS(choices, text::units_of(quantity).empty());
  }
}

TEST_CASE("every unit that is offered is read, and means what it says") {
  for (const auto& row : text::detail::quantity_texts) {
    for (const auto& unit : text::units_of(row.quantity)) {
      CAPTURE(row.quantity);
      CAPTURE(unit.symbol);
      const auto read = text::read_written("0.5 " + std::string{unit.symbol}, row.quantity);
      TW_CHECK(choices, read.si, 0.5 * unit.size + unit.zero, relative(4e-16));
    }
  }
}
