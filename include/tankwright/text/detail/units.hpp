// SPDX-License-Identifier: BSL-1.0
/// @file
/// Units in text. Symbols and factors come from the unit table; here stand only the other ways to spell them.
///
/// A unit as written ("litres per hour", "L/h", "l h⁻¹") and a symbol of the table are both brought to a product of
/// powers of basic words ("dm3 h-1"), and the two are compared. There is no second table of factors.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include <tankwright/core/quantity_name.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/text/detail/scan.hpp>

namespace tankwright::text::detail {

// ---- what can be read and printed -----------------------------------------------------------------------------------

/// A unit, with the quantity it measures.
struct unit_row {
  std::string_view quantity;  ///< as in quantities.hpp: "flow_rate"
  std::string_view symbol;
  double factor;  ///< size of one unit in SI
};

inline constexpr unit_row unit_rows[] = {
#define TANKWRIGHT_TEXT_ROW(quantity_name, unit_name, symbol, factor) {#quantity_name, symbol, factor},
    TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_TEXT_ROW)
#undef TANKWRIGHT_TEXT_ROW
    // What temperature.hpp and thin_types.hpp make.
    {"temperature", "K", 1.0},
    {"temperature", "degC", 1.0},
    {"temperature", "degF", 1.0 / 1.8},
    {"proportion", "%", 0.01},
    {"relative_humidity", "% RH", 0.01},
    {"absolute_salinity", "g/kg", 1.0},
    {"practical_salinity", "psu", 1.0},
};

/// How a quantity is spoken of, and the units it is shown in from day to day, smallest first. A unit is taken from 1 of
/// it on, or from as many thousandths as stand behind it: people say 30 in, and 8 ft.
struct quantity_words {
  std::string_view quantity;
  std::string_view words;
  std::string_view example;
  std::string_view si;
  std::string_view us;
};

// clang-format off
inline constexpr quantity_words quantity_texts[] = {
  {"length",                  "a length",                    "2.40 m",     "mm|m",        "in|ft@4000"},
  {"area",                    "an area",                     "3.2 m2",     "cm²|m²",      "in²|ft²"},
  {"volume",                  "a volume",                    "300 L",      "mL|L",        "mL|US gal@100"},
  {"second_moment_of_area",   "a second moment of area",     "2e-6 m4",    "m⁴",          "m⁴"},
  {"specific_surface",        "an area per volume",          "500 m2/m3",  "m²/m³",       "m²/m³"},
  {"angle",                   "an angle",                    "45 deg",     "°",           "°"},
  {"duration",                "a duration",                  "36 h",       "s|min|h|d",   "s|min|h|d"},
  {"rate",                    "a rate",                      "0.5 1/h",    "1/d|1/h|1/s", "1/d|1/h|1/s"},
  {"velocity",                "a velocity",                  "1.2 m/s",    "mm/d|cm/s|m/s", "mm/d|ft/s"},
  {"acceleration",            "an acceleration",             "9.81 m/s2",  "m/s²",        "m/s²"},
  {"flow_rate",               "a flow",                      "4000 L/h",   "L/d|L/h",     "US gpd|US gph"},
  {"hydraulic_resistance",    "a head per flow",             "900 s/m2",   "s/m²",        "s/m²"},
  {"mass_flow",               "a mass flow",                 "2 kg/h",     "g/d|g/h|kg/h", "lb/h"},
  {"mass_flux",               "a mass flow per area",        "0.1 kg/(m2 h)", "g/(m² d)|kg/(m² h)", "g/(m² d)"},
  {"mass",                    "a mass",                      "12 kg",      "mg|g|kg",     "mg|g|oz|lb"},
  {"mass_density",            "a density or a concentration", "1025 kg/m3", "µg/L|mg/L|kg/m³", "µg/L|mg/L|lb/ft³"},
  {"mass_per_area",           "a mass per area",             "250 kg/m2",  "kg/m²",       "kg/m²"},
  {"force",                   "a force",                     "500 N",      "N|kN",        "lbf"},
  {"line_load",               "a force per length",          "300 N/m",    "mN/m|N/m",    "mN/m|N/m"},
  {"energy",                  "an energy or a moment",       "3 kWh",      "J|kJ|kWh",    "J|kJ|kWh"},
  {"power",                   "a power",                     "300 W",      "W|kW",        "W|kW"},
  {"pressure",                "a pressure or a stress",      "12 kPa",     "Pa|kPa|MPa|GPa", "psi"},
  {"gauge_pressure",          "a gauge pressure",            "12 kPa",     "Pa|kPa|MPa",  "psi"},
  {"absolute_pressure",       "an absolute pressure",        "101.3 kPa",  "Pa|kPa|MPa",  "psi"},
  {"specific_energy",         "an energy per mass",          "2450 kJ/kg", "J/kg|kJ/kg",  "J/kg|kJ/kg"},
  {"specific_heat_capacity",  "a heat capacity per mass",    "3993 J/(kg K)", "J/(kg K)", "J/(kg K)"},
  {"heat_capacity",           "a heat capacity",             "8600 J/K",   "J/K",         "J/K"},
  {"heat_flux",               "a heat flow per area",        "60 W/m2",    "W/m²",        "W/m²"},
  {"thermal_conductivity",    "a thermal conductivity",      "0.6 W/(m K)", "W/(m K)",    "W/(m K)"},
  {"thermal_transmittance",   "a thermal transmittance",     "2.8 W/(m2 K)", "W/(m² K)",  "W/(m² K)"},
  {"thermal_resistance",      "a thermal resistance",        "0.4 m2 K/W", "m² K/W",      "m² K/W"},
  {"heat_loss_coefficient",   "a heat loss per kelvin",      "35 W/K",     "W/K",         "W/K"},
  {"dynamic_viscosity",       "a dynamic viscosity",         "0.96 mPa s", "mPa s|Pa s",  "mPa s|Pa s"},
  {"kinematic_viscosity",     "a kinematic viscosity",       "9.4e-7 m2/s", "m²/s",       "m²/s"},
  {"electrical_conductivity", "an electrical conductivity",  "53 mS/cm",   "µS/cm|mS/cm", "µS/cm|mS/cm"},
  {"electric_current",        "an electric current",         "6.5 A",      "mA|A",        "mA|A"},
  {"voltage",                 "a voltage",                   "230 V",      "V",           "V"},
  {"specific_volume",         "a volume per mass",           "0.00098 m3/kg", "m³/kg",    "m³/kg"},
  {"amount_concentration",    "an amount concentration",     "2.3 mmol/L", "mmol/L",      "mmol/L"},
  {"amount_content",          "an amount per mass",          "2300 umol/kg", "µmol/kg|mol/kg", "µmol/kg|mol/kg"},
  {"temperature",             "a temperature",               "25 °C or 77 °F", "°C",      "°F"},
  {"temperature_coefficient", "a change per kelvin",         "2 %/K",      "%/K",         "%/K"},
  {"temperature_difference",  "a temperature difference",    "2 K or 3.6 °F", "K",        "°F"},
  {"proportion",              "a proportion",                "60 % or 0.6", "%",          "%"},
  {"porosity",                "a porosity",                  "40 % or 0.4", "%",          "%"},
  {"relative_humidity",       "a relative humidity",         "60 %",       "%",           "%"},
  {"absolute_salinity",       "an absolute salinity",        "35.2 g/kg",  "g/kg",        "g/kg"},
  {"practical_salinity",      "a practical salinity",        "35 (it has no unit)", "",            ""},
  {"number",                  "a pure number",               "1.0264",     "",            ""},
};

/// Other spellings, in lower case where case does not matter. The meaning is in basic words of the table's symbols.
struct spelling {
  std::string_view written;
  std::string_view meaning;
};
inline constexpr spelling spellings[] = {
  // The same unit by definition: this is how "L/h" and "dm3/h", "kPa" and "kN/m2" meet.
  {"L", "dm3"}, {"mL", "cm3"}, {"cc", "cm3"}, {"J", "N m"}, {"kWh", "kW h"}, {"Pa", "N/m2"}, {"kPa", "kN/m2"},
  {"Wh", "W h"},
  {"MPa", "N/mm2"}, {"psi", "lbf/in2"}, {"psf", "lbf/ft2"}, {"mbar", "hPa"}, {"millibar", "hPa"},
  {"gpm", "gal/min"}, {"gph", "gal/h"}, {"gpd", "gal/d"}, {"lph", "dm3/h"}, {"lpm", "dm3/min"}, {"lps", "dm3/s"},
  {"cfs", "ft3/s"}, {"ach", "1/h"}, {"ppt", "g/kg"}, {"‰", "g/kg"},
  {"psig", "lbf/in2 gauge"}, {"psia", "lbf/in2 abs"}, {"barg", "bar gauge"}, {"bara", "bar abs"}, {"dm", "dm"},
  // Long names.
  {"metre", "m"}, {"meter", "m"}, {"centimetre", "cm"}, {"centimeter", "cm"}, {"millimetre", "mm"},
  {"millimeter", "mm"}, {"micrometre", "um"}, {"micrometer", "um"}, {"micron", "um"}, {"nanometre", "nm"},
  {"nanometer", "nm"}, {"inch", "in"}, {"inches", "in"}, {"foot", "ft"}, {"feet", "ft"},
  {"litre", "dm3"}, {"liter", "dm3"}, {"ltr", "dm3"}, {"millilitre", "cm3"}, {"milliliter", "cm3"},
  {"gallon", "gal"}, {"imperial", "imp"}, {"uk", "imp"}, {"usg", "US gal"},
  {"radian", "rad"}, {"degree", "deg"}, {"second", "s"}, {"sec", "s"}, {"minute", "min"}, {"Min", "min"},
  {"MIN", "min"},
  {"hour", "h"}, {"hr", "h"}, {"hrs", "h"}, {"day", "d"}, {"week", "wk"},
  {"kilogram", "kg"}, {"kilogramme", "kg"}, {"kilo", "kg"}, {"kgs", "kg"}, {"gram", "g"}, {"gramme", "g"},
  {"milligram", "mg"}, {"milligramme", "mg"}, {"microgram", "ug"}, {"microgramme", "ug"}, {"tonne", "t"},
  {"pound", "lb"}, {"lbs", "lb"}, {"ounce", "oz"}, {"newton", "N"}, {"kilonewton", "kN"}, {"joule", "N m"},
  {"kilojoule", "kJ"}, {"watt", "W"}, {"kilowatt", "kW"}, {"horsepower", "hp"}, {"pascal", "N/m2"},
  {"hectopascal", "hPa"}, {"kilopascal", "kN/m2"}, {"megapascal", "N/mm2"}, {"gigapascal", "GPa"},
  {"atmosphere", "atm"}, {"siemens", "S"}, {"millisiemens", "mS"}, {"microsiemens", "uS"}, {"mole", "mol"},
  {"ampere", "A"}, {"amp", "A"}, {"amps", "A"}, {"milliampere", "mA"}, {"volt", "V"},
  {"millimole", "mmol"}, {"micromole", "umol"}, {"kelvin", "K"}, {"c", "degC"}, {"celsius", "degC"},
  {"centigrade", "degC"}, {"f", "degF"}, {"fahrenheit", "degF"}, {"percent", "%"}, {"pct", "%"},
  {"permille", "g/kg"}, {"gauge", "gauge"}, {"gage", "gauge"}, {"abs", "abs"}, {"absolute", "abs"},
};

/// Words that mean several units: refused with what to write instead. (Gallons are refused with both values.)
inline constexpr spelling refused_words[] = {
  {"ton", "is three different units; write tonne (1000 kg), or give kg or lb"},
  {"ppm", "is said for mg/kg and for mg/L; write mg/L for what a test kit shows"},
  {"ppb", "is said for ug/kg and for ug/L; write ug/L"},
};
// clang-format on

/// A unit of a ladder, and from how many of it on it is taken.
struct rung {
  std::string_view unit;
  double from;
};

[[nodiscard]] constexpr rung rung_of(std::string_view text) noexcept {
  const std::size_t at = text.find('@');
  if (at == std::string_view::npos) return {text, 1.0};
  double thousandths = 0.0;
  for (const char c : text.substr(at + 1)) thousandths = 10.0 * thousandths + (c - '0');
  return {text.substr(0, at), 1e-3 * thousandths};
}

[[nodiscard]] inline quantity_words words_of(std::string_view quantity) noexcept {
  for (const auto& row : quantity_texts) {
    if (row.quantity == quantity) return row;
  }
  for (const auto& row : unit_rows) {
    if (row.quantity == quantity) return {quantity, quantity, "", row.symbol, row.symbol};
  }
  return {quantity, quantity, "", "", ""};
}

// ---- units as products of powers ------------------------------------------------------------------------------------

/// A product of powers of words, in alphabetical order.
class unit_product {
 public:
  void multiply(std::string_view word, int power) {
    std::size_t i = 0;
    while (i < factors_.size() && factors_[i].word < word) ++i;
    if (i == factors_.size() || factors_[i].word != word) {
      factors_.insert(factors_.begin() + static_cast<std::ptrdiff_t>(i), {word, power});
    } else if ((factors_[i].power += power) == 0) {
      factors_.erase(factors_.begin() + static_cast<std::ptrdiff_t>(i));
    }
  }
  [[nodiscard]] bool has(std::string_view word) const noexcept {
    for (const auto& f : factors_) {
      if (f.word == word) return true;
    }
    return false;
  }
  /// Take a word out; whether it was there.
  bool remove(std::string_view word) {
    const bool had = has(word);
    std::erase_if(factors_, [&](const factor& f) { return f.word == word; });
    return had;
  }
  [[nodiscard]] bool empty() const noexcept { return factors_.empty(); }
  bool operator==(const unit_product&) const = default;

 private:
  struct factor {
    std::string_view word;
    int power;
    bool operator==(const factor&) const = default;
  };
  std::vector<factor> factors_;
};

/// Split a symbol of the table ("W/(m2 K)") into words with their powers: `visit(word, power)`.
template <class Visit>
void for_each_word(std::string_view symbol, Visit visit) {
  int sign = 1;
  for (std::size_t i = 0; i < symbol.size();) {
    const auto is_word = [&](std::size_t at) {
      return at < symbol.size() && (is_letter(static_cast<unsigned char>(symbol[at])) || symbol[at] == '%');
    };
    const std::size_t start = i;
    while (is_word(i)) ++i;
    if (i == start) {
      if (symbol[i] == '/') sign = -1;
      ++i;
      continue;
    }
    const std::string_view word = symbol.substr(start, i - start);
    const int power = i < symbol.size() && is_digit(static_cast<unsigned char>(symbol[i])) ? symbol[i++] - '0' : 1;
    visit(word, sign * power);
  }
}

/// Multiply by a unit written as in the table, to a power.
inline void multiply_by(unit_product& product, std::string_view symbol, int power) {
  for_each_word(symbol, [&](std::string_view word, int own_power) {
    for (const auto& other : spellings) {
      if (other.written == word && other.meaning != word) return multiply_by(product, other.meaning, power * own_power);
    }
    product.multiply(word, power * own_power);
  });
}

/// The products of all rows, and all words in them.
struct unit_index {
  std::array<unit_product, std::size(unit_rows)> products;
  std::vector<std::string_view> words;

  unit_index() {
    for (std::size_t i = 0; i < products.size(); ++i) {
      multiply_by(products[i], unit_rows[i].symbol, 1);
      for_each_word(unit_rows[i].symbol, [&](std::string_view word, int) { words.push_back(word); });
    }
  }
};
[[nodiscard]] inline const unit_index& all_units() {
  static const unit_index index;
  return index;
}

[[nodiscard]] inline const unit_row* find_unit(const unit_product& product) {
  const auto& products = all_units().products;
  for (std::size_t i = 0; i < products.size(); ++i) {
    if (products[i] == product) return &unit_rows[i];
  }
  return nullptr;
}

/// The row of a symbol of the table.
[[nodiscard]] inline const unit_row* row_of(std::string_view symbol) noexcept {
  for (const auto& row : unit_rows) {
    if (row.symbol == symbol) return &row;
  }
  return nullptr;
}

/// Whether two words are the same but for capitals. In a symbol the size of the prefix must not change with them: Mg is
/// not mg, mpa not MPa.
[[nodiscard]] inline bool same_but_for_case(std::string_view written, std::string_view known) noexcept {
  if (written.size() != known.size()) return false;
  if (written[0] != known[0] && lower(known[0]) == 'm' && written.size() < 4) return false;
  for (std::size_t i = 0; i < written.size(); ++i) {
    if (lower(written[i]) != lower(known[i])) return false;
  }
  return true;
}

/// What a word means when it is spelled exactly so; empty when unknown.
[[nodiscard]] inline std::string_view exact_meaning(std::string_view word) noexcept {
  for (const auto& other : spellings) {
    if (other.written == word) return other.meaning;
  }
  for (const auto known : all_units().words) {
    if (known == word) return known;
  }
  return {};
}

/// What a written word means, as a symbol of the table; empty when unknown. Exact spelling first, then without regard
/// to capitals where that leaves one meaning, then without a plural s.
[[nodiscard]] inline std::string_view meaning_of(std::string_view word) noexcept {
  std::string_view meaning = exact_meaning(word);
  if (!meaning.empty()) return meaning;
  bool several = false;
  const auto consider = [&](std::string_view known) {
    if (!same_but_for_case(word, known)) return;
    const std::string_view another = exact_meaning(known);
    several = several || (!meaning.empty() && another != meaning);
    meaning = another;
  };
  for (const auto& other : spellings) consider(other.written);
  for (const auto known : all_units().words) consider(known);
  if (several) return {};
  if (meaning.empty() && word.size() > 3 && lower(word.back()) == 's') {
    return meaning_of(word.substr(0, word.size() - 1));
  }
  return meaning;
}

}  // namespace tankwright::text::detail
