// SPDX-License-Identifier: BSL-1.0
#include <bit>
#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <tankwright/text/written.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {
const evidence reading{"tankwright::text::read_written", kind::identity, "exact factors of the units, by hand"};
const evidence writing{"tankwright::text::write_exactly", kind::identity, "a number is read back to the last bit"};
}  // namespace

TEST_CASE("a number with its unit, and how far the truth may lie from it") {
  const auto read = [](std::string_view text, std::string_view quantity, double si, double half_width,
                       std::string_view unit) {
    CAPTURE(text);
    const text::written w = text::read_written(text, quantity);
    TW_CHECK(reading, w.si, si, relative(4e-16));
    TW_HOLDS(reading, w.has_doubt == (half_width >= 0.0));
    if (half_width >= 0.0) TW_CHECK(reading, w.half_width, half_width, relative(1e-12));
    TW_HOLDS(reading, w.unit == unit);
  };
  read("35 mm", "length", 0.035, -1.0, "mm");
  read("35 mm +/- 5 mm", "length", 0.035, 0.005, "mm");
  read("35 +/- 5 mm", "length", 0.035, 0.005, "mm");
  read("35 mm ± 0.5 cm", "length", 0.035, 0.005, "mm");
  read("35 mm +- 10 %", "length", 0.035, 0.0035, "mm");
  read("30 mm .. 40 mm", "length", 0.035, 0.005, "mm");
  read("30 .. 40 mm", "length", 0.035, 0.005, "mm");
  read("3 cm .. 40 mm", "length", 0.035, 0.005, "mm");
  read("30 mm .. 30 mm", "length", 0.03, 0.0, "mm");
  read("8.1 +/- 0.1", "number", 8.1, 0.1, "");
  read("8.0 .. 8.2", "number", 8.1, 0.1, "");
  read("25 °C +/- 0.5 K", "temperature", 298.15, 0.5, "degC");
  read("77 °F .. 79 °F", "temperature", (78.0 + 459.67) / 1.8, 1.0 / 1.8, "degF");
  read("60 % +/- 5 %", "relative_humidity", 0.6, 0.05, "%");
  read("10 US gal", "volume", 0.03785411784, -1.0, "US gal");
}

TEST_CASE("what cannot be read says what is wrong") {
  const auto wrong = [](std::string_view text, std::string_view quantity) {
    CAPTURE(text);
    CHECK_THROWS_AS((void)text::read_written(text, quantity), text_error);
  };
  for (const std::string_view text : {"", " ", "mm", "35", "35 kg", "35 mm +/-", "35 mm +/- mm", "35 mm +/- -5 mm",
                                      "35 mm +/- 5 kg", "40 mm .. 30 mm", "..", "30 mm ..", ".. 40 mm", "35 mm 5",
                                      "1e999 m", "nan m", "inf m", "35 mm .. 40 mm .. 50 mm"}) {
    wrong(text, "length");
  }
  wrong("25 °C +/- 10 %", "temperature");  // a share of a temperature is of no scale
  CHECK_THROWS_WITH_AS((void)text::read_written("40 mm .. 30 mm", "length"),
                       doctest::Contains("a range begins with its lower end"), text_error);
}

TEST_CASE("a number is written in the unit that it was read in, with the fewest digits that give it back") {
  TW_HOLDS(writing, text::write_exactly(0.035, "mm", "length") == "35 mm");
  TW_HOLDS(writing, text::write_exactly(0.1, "cm", "length") == "10 cm");
  TW_HOLDS(writing, text::write_exactly(1.0 / 3.0, "m", "length") == "0.3333333333333333 m");
  TW_HOLDS(writing, text::write_exactly(8.1, "", "number") == "8.1");
  TW_HOLDS(writing, text::write_exactly(0.0, "mm", "length") == "0 mm");
  TW_HOLDS(writing, text::write_exactly(-0.02, "mm", "length") == "-20 mm");
  CHECK_THROWS_AS((void)text::write_exactly(1.0, "kg", "length"), text_error);
}

TEST_CASE("any double comes back, in its unit or in SI") {
  const evidence property{"tankwright::text::write_exactly", kind::property, "there and back, 20 000 random doubles"};
  std::mt19937_64 random{20260};
  const std::pair<std::string_view, std::string_view> kinds[] = {
      {"length", "mm"},         {"length", "in"},        {"volume", "US gal"}, {"flow_rate", "US gph"},
      {"temperature", "degC"},  {"temperature", "degF"}, {"pressure", "psi"},  {"number", ""},
      {"mass_density", "ug/L"}, {"duration", "d"},       {"power", "Btu/h"},   {"rate", "1/h"}};
  std::size_t differing = 0;
  for (int i = 0; i < 20000; ++i) {
    const auto& [quantity, unit] = kinds[static_cast<std::size_t>(i) % std::size(kinds)];
    double si = quantity == "temperature" ? std::uniform_real_distribution<double>{250.0, 350.0}(random)
                                          : std::bit_cast<double>(random());
    if (!std::isfinite(si) || std::fabs(si) > 1e300 || (si != 0.0 && std::fabs(si) < 1e-290)) si = 1.0 / (i + 3.0);
    const std::string text = text::write_exactly(si, unit, quantity);
    if (text::read_written(text, quantity).si != si) {
      ++differing;
      MESSAGE(text);
    }
  }
  TW_HOLDS(property, differing == 0);
}

TEST_CASE("written: units are shown as people write them by hand, and what cannot exist is written all the same") {
  const evidence shown{"tankwright::text::shown_unit", kind::identity, "by hand"};
  TW_HOLDS(shown, text::shown_unit("m2") == "m²");
  TW_HOLDS(shown, text::shown_unit("W/(m2 K)") == "W/(m² K)");
  TW_HOLDS(shown, text::shown_unit("degF") == "°F");
  TW_HOLDS(shown, text::shown_unit("ug/L") == "µg/L");
  TW_HOLDS(shown, text::shown_unit("US gal") == "US gal");
  TW_HOLDS(shown, text::shown_unit("") == "");
  CHECK(text::write_exactly(1.25, "%", "proportion") == "125 %");  // refused when it is read
  CHECK_FALSE(text::write_exactly(__builtin_nan(""), "mm", "length").empty());
}
