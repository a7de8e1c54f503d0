// SPDX-License-Identifier: BSL-1.0
#include <tankwright/text/quantity.hpp>

#include <clocale>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <random>

#include "../fuzz/text_fuzz.cpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence parse_exact{"tankwright::text::parse", kind::identity, "exact definition of the unit"};
const evidence number_exact{"tankwright::text::number_in", kind::identity, "exact definition of the unit"};
const evidence print_exact{"tankwright::text::in", kind::identity, "exact definition of the unit"};

template <class Q>
std::string refusal(std::string_view text) {
  try {
    (void)text::parse<Q>(text);
  } catch (const text_error& e) {
    return e.what();
  }
  return "nothing thrown";
}

/// That each of `texts` is read as `wanted`, to the last bit or within a few roundings where parts are added.
template <class Q>
void reads_as(const Q& wanted, std::initializer_list<std::string> texts, tolerance allowed = {}) {
  for (const std::string& text : texts) {
    CAPTURE(text);
    try {
      TW_CHECK(parse_exact, text::parse<Q>(text), wanted, allowed);
    } catch (const text_error& e) {
      FAIL_CHECK(std::string{e.what()});
    }
  }
}

}  // namespace

TEST_CASE("text: lengths as people write them") {
  reads_as(metres(2.4), {"2.40 m", "2.4m", " 2.4  m ", "2.4 metres", "2.4 meters", "2.4 Metre", "2.4 METRES", "24e-1 m",
                         "+2.4 m", "2.4 m.", "2.40\tm", "2.4\xC2\xA0m"});
  reads_as(millimetres(2400.0), {"2400 mm", "2 400 mm",
                                 "2\xE2\x80\xAF"
                                 "400 mm",
                                 "2400 millimetres"});
  reads_as(inches(95.0), {"95in", "95 in", "95 in.", "95 inches", "95\"", "95″", "95”", "95''", "95 IN"});
  reads_as(inches(10.5),
           {"10 1/2 in", "10-1/2 in", "10½ in", "10 ½\"", "10.5 in", "21/2 in", "10 2/4 in", "10 1⁄2 in"});
  reads_as(inches(94.5),
           {"7 ft 10 1/2 in", "7 feet 10½ inches", "7' 10 1/2\"", "7'10-1/2\"", "7'-10 1/2\"", "7ft10.5in",
            "7 ft-10 1/2 in", "7′ 10½″", "7’ 10.5”"},
           relative(3e-16));
  reads_as(inches(87.0), {"7ft3in", "7ft 3in", "7ft3 in", "7 ft 3 in", "7'3\""}, relative(3e-16));
  reads_as(inches(0.5), {"1/2 in", "½ in", ".5 in", "0.5 in", "½\""});
  reads_as(metres(1.2), {"1 m 20 cm", "1 m 2e2 mm"}, relative(3e-16));
  reads_as(micrometres(45.0), {"45 um", "45 µm", "45 μm", "45 microns"});
  reads_as(millimetres(-3.0), {"-3 mm",
                               "\xE2\x88\x92"
                               "3 mm",
                               "- 3 mm"});
  reads_as(inches(-94.5), {"-7 ft 10 1/2 in"}, relative(3e-16));
  reads_as(metres(0.0), {"0 m", "0.0 mm", "-0 m", "0 ft 0 in"});
}

TEST_CASE("text: volumes and flows") {
  TW_CHECK(parse_exact, text::parse<volume>("300 US gal").value(), 1.1356235352,
           relative(3e-16));                                                                     // 300 x 231 x 0.0254^3
  TW_CHECK(parse_exact, text::parse<volume>("300 imp gal").value(), 1.363827, relative(3e-16));  // 300 x 4.54609 L
  reads_as(us_gallons(300.0), {"300 US gal", "300 us gal", "300 U.S. gallons", "300 US gallons", "300 gallons (US)",
                               "300 USG", "300 gal US", "300 Us Gal"});
  reads_as(imperial_gallons(300.0), {"300 imp gal", "300 imperial gallons", "300 UK gal", "300 imp. gal."});
  reads_as(litres(2150.0), {"2150 L", "2 150 L", "2150 l", "2150 litres", "2150 liter", "2150 ltr", "2150 dm3"});
  reads_as(cubic_metres(2.15), {"2.15 m3", "2.15 m³", "2.15 m^3", "2.15 cubic metres", "2.15 cu m"});
  reads_as(millilitres(12.0), {"12 mL", "12 ml", "12 cc", "12 cm3", "12 cm³", "12 millilitres"});
  reads_as(cubic_feet(3.0), {"3 ft3", "3 ft³", "3 cu ft", "3 cu. ft.", "3 cubic feet"});
  reads_as(litres_per_hour(4000.0), {"4000 L/h", "4000 l/hr", "4 000 litres per hour", "4000 L / hour", "4000 lph",
                                     "4000 L h⁻¹", "4000 L·h-1", "4000 liters/hr", "4000 LPH", "4000 dm3/h"});
  reads_as(us_gallons_per_hour(1200.0), {"1200 US gph", "1200 US gal/h", "1200 US gallons per hour", "1200 US GPH"});
  reads_as(us_gallons_per_minute(30.0), {"30 US gpm", "30 US gal/min", "30 gal (US) per minute"});
  reads_as(imperial_gallons_per_minute(30.0), {"30 imp gpm", "30 UK gal/min"});
  reads_as(cubic_feet_per_second(0.1), {"0.1 ft3/s", "0.1 cfs"});
}

TEST_CASE("text: temperatures are points, differences are not") {
  reads_as(celsius(25.0), {"25 °C", "25 degC", "25C", "25 C", "25 deg C", "25 degrees Celsius", "25 celsius", "25 ℃",
                           "25 ºC", "25 ° C", "25 centigrade", "25 c"});
  reads_as(fahrenheit(77.0), {"77 F", "77 °F", "77 degF", "77 deg F", "77 Fahrenheit", "77 ℉"});
  reads_as(kelvins(298.15), {"298.15 K", "298.15 kelvin"});
  reads_as(fahrenheit(-40.0), {"-40 F", "−40 °F"});
  reads_as(kelvin_steps(2.0), {"2 K", "2 °C", "2 degC"});
  reads_as(fahrenheit_steps(-9.0), {"-9 °F", "-9 F"});
}

TEST_CASE("text: everything else a plan holds") {
  reads_as(1.0264, {"1.0264", "+1.0264", "10264e-4", " 1.0264 "});
  reads_as(0.625, {"5/8", "⅝", ".625"});
  reads_as(percent(60.0), {"60 %", "60%", "60 percent", "60 per cent", "60 pct", "0.6"});
  reads_as(porosity{0.4}, {"40 %", "0.4"});
  reads_as(relative_humidity::from_percent(60.0), {"60 %", "60 % RH", "60 %RH", "0.6"});
  reads_as(practical_salinity{35.0}, {"35", "35 psu", "35 PSU"});
  reads_as(absolute_salinity::from_grams_per_kilogram(35.2),
           {"35.2 g/kg", "35.2 ppt", "35.2 ‰", "35.2 grams per kilogram"});
  reads_as(millisiemens_per_centimetre(53.0), {"53 mS/cm", "53 ms/cm", "53 MILLISIEMENS/CM"});
  reads_as(microsiemens_per_centimetre(53000.0), {"53000 µS/cm", "53 000 uS/cm", "53000 us/cm", "53000 μs/cm"});
  reads_as(kilograms(12.0), {"12 kg", "12 Kg", "12 KG", "12 kilos", "12 kgs", "12 kilograms"});
  reads_as(ounces(88.0), {"5 lb 8 oz", "5 lbs 8 ounces"}, relative(3e-16));
  reads_as(tonnes(1.2), {"1.2 t", "1.2 tonnes"});
  reads_as(minutes(90.0), {"1 h 30 min", "1 hr 30 mins", "90 minutes", "90 MIN"});
  reads_as(days(2.0), {"2 d", "2 days", "2 Days"});
  reads_as(per_hour(0.5), {"0.5 1/h", "0.5/h", "0.5 per hour", "0.5 h-1", "0.5 h⁻¹", "0.5 ach", "½ 1/h"});
  reads_as(psi(6.0), {"6 psi", "6 PSI", "6 lbf/in2"});
  reads_as(gauge_pressure{psi(6.0)}, {"6 psi", "6 psig", "6 psi gauge"});
  reads_as(absolute_pressure{hectopascals(1013.25)},
           {"1013.25 hPa", "1013.25 mbar", "1013.25 hPa abs", "1013.25 millibar"});
  reads_as(kilopascals(3.0), {"3 kPa", "3 kN/m2", "3 kN/m²", "3 kpa"});
  reads_as(megapascals(12.0), {"12 MPa", "12 N/mm2"});
  reads_as(joules(12.0), {"12 J", "12 N m", "12 N·m", "12 N*m"});
  reads_as(kilowatt_hours(3.0), {"3 kWh", "3 kW h", "3 kilowatt hours"});
  reads_as(grams_per_millilitre(1.0264), {"1.0264 g/mL", "1.0264 g/cm3", "1.0264 g/cc"});
  reads_as(watts_per_square_metre_kelvin(2.8), {"2.8 W/(m2 K)", "2.8 W/m²K", "2.8 W/m2/K", "2.8 W/(m²·K)",
                                                "2.8 W m-2 K-1", "2.8 W·m⁻²·K⁻¹", "2.8 W / (K m^2)"});
  reads_as(degrees(45.0), {"45 deg", "45°", "45 degrees"});
  reads_as(milligrams_per_litre(0.25), {"0.25 mg/L", "0.25 mg/l", "0.25 milligrams per litre"});
}

// Calls for each row of the table: written out in one function they take a compiler minutes.
namespace {

template <class Q>
void reads_and_writes(const std::string& symbol, const Q& q, double number) {
  const std::string written = "2.5 " + symbol;
  CAPTURE(written);
  TW_CHECK(parse_exact, text::parse<Q>(written), q, tolerance{});
  TW_CHECK(number_exact, text::number_in(q, symbol), number, tolerance{});
  TW_HOLDS(print_exact, text::in(q, symbol) == written);
}

template <class Q>
void has_words(const std::string& name) {
  const auto words = text::detail::words_of(name);
  CAPTURE(name);
  CHECK(words.words.find(' ') != std::string_view::npos);
  CHECK_NOTHROW((void)text::parse<Q>(words.example));
  for (const double size : {1e-6, 1e-3, 1.0, 1e3, 1e6}) {
    CHECK_NOTHROW((void)text::of(Q::from_value(size), text::unit_system::si));
    CHECK_NOTHROW((void)text::of(Q::from_value(size), text::unit_system::us));
  }
}

}  // namespace

TEST_CASE("text: every unit of the table is read, written and read back") {
#define TANKWRIGHT_BOTH_WAYS(quantity_name, unit_name, symbol, factor) \
  reads_and_writes(symbol, unit_name(2.5), in_##unit_name(unit_name(2.5)));
  TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_BOTH_WAYS)
#undef TANKWRIGHT_BOTH_WAYS
}

TEST_CASE("text: every quantity of the table has words, an example that can be read, and everyday units") {
#define TANKWRIGHT_WORDS(quantity_name, unit_name, symbol, factor) has_words<quantity_name>(#quantity_name);
  TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_WORDS)
#undef TANKWRIGHT_WORDS
}

TEST_CASE("text: what means two things is refused with both shown") {
  CHECK(refusal<volume>("300 gal") ==
        "tankwright::text::parse: \"300 gal\", character 5: gal can be US or imperial; write 300 US gal (1136 L) or "
        "300 imp gal "
        "(1364 L); expected a volume such as 300 L");
  CHECK(refusal<flow_rate>("30 gpm") ==
        "tankwright::text::parse: \"30 gpm\", character 4: gpm can be US or imperial; write 30 US gpm (6814 L/h) or 30 "
        "imp gpm "
        "(8183 L/h); expected a flow such as 4000 L/h");
  for (const char* text : {"1200 gph", "1200 gallons per hour", "1200 gal/h", "1200 GPH", "50 gpd"}) {
    CHECK_MESSAGE(refusal<flow_rate>(text).find("can be US or imperial") != std::string::npos, text);
  }
  CHECK(
      refusal<temperature>("25") ==
      "tankwright::text::parse: \"25\", character 3: degrees of which scale? write 25 °C (77 °F) or 25 °F (-3.889 °C); "
      "expected a temperature such as 25 °C or 77 °F");
  CHECK(refusal<temperature>("25°").find("degrees of which scale?") != std::string::npos);
  CHECK(refusal<temperature>("-5").find("write -5 °C (23 °F) or -5 °F (-20.56 °C)") != std::string::npos);
  CHECK(refusal<length>("1,500 mm").find("write 1.500 or 1500") != std::string::npos);
  CHECK(refusal<length>("1,5 m").find("a comma can be a decimal point or a thousands mark; write 1.5;") !=
        std::string::npos);
  CHECK(refusal<length>("1,500.5 m").find("write 1.500 or 1500") != std::string::npos);
  CHECK(refusal<proportion>("60") ==
        "tankwright::text::parse: \"60\", character 1: 60 is more than 1; write 60 % or 0.6; expected a proportion "
        "such as 60 % "
        "or 0.6");
  CHECK(refusal<mass>("2 tons").find("tons is three different units") != std::string::npos);
  CHECK(refusal<mass_density>("2 ppm").find("write mg/L") != std::string::npos);
}

TEST_CASE("text: what is something else is named") {
  CHECK(refusal<length>("5 kg") ==
        "tankwright::text::parse: \"5 kg\", character 3: 5 kg is a mass; expected a length such as 2.40 m");
  CHECK(refusal<length>("5 m2").find("5 m2 is an area") != std::string::npos);
  CHECK(refusal<flow_rate>("40 L").find("40 L is a volume; expected a flow such as 4000 L/h") != std::string::npos);
  CHECK(refusal<temperature>("5 kg").find("5 kg is a mass; expected a temperature") != std::string::npos);
  CHECK(refusal<double>("1.0264 kg/m3").find("is a density or a concentration; expected a pure number") !=
        std::string::npos);
  CHECK(refusal<practical_salinity>("35 ppt").find(
            "35 ppt is an absolute salinity; expected a practical salinity such as "
            "35 (it has no unit)") != std::string::npos);
  CHECK(refusal<absolute_salinity>("35").find("no unit after the number; expected an absolute salinity") !=
        std::string::npos);
  CHECK(refusal<absolute_pressure>("6 psig").find("6 psig is a gauge pressure; expected an absolute pressure") !=
        std::string::npos);
  CHECK(refusal<pressure>("14.7 psia").find("is an absolute pressure; expected a pressure or a stress") !=
        std::string::npos);
  CHECK(refusal<proportion>("60 %RH").find("is a relative humidity; expected a proportion") != std::string::npos);
}

TEST_CASE("text: mistakes, and where they are") {
  struct mistake {
    std::string text;
    std::size_t position;
    std::string reason;
  };
  const mistake mistakes[] = {
      {"", 0, "there is nothing to read"},
      {"   ", 3, "there is nothing to read"},
      {"m", 0, "\"m\" is not understood here, where a number should start"},
      {"about 3 m", 0, "\"a\" is not understood here, where a number should start"},
      {"nan m", 0, "\"n\" is not understood here, where a number should start"},
      {"-", 1, "the text ends, where a number should start"},
      {"2.40", 4, "no unit after the number"},
      {"2.4.0 m", 3, "a second decimal point"},
      {"5 furlongs", 2, "furlongs is not a unit known here"},
      {"5 Mm", 2, "Mm is not a unit known here"},
      {"5 M", 2, "M is not a unit known here"},
      {"5 MM", 2, "MM is not a unit known here"},
      {"5 m/L", 2, "m/L is not a unit known here"},
      {"5 (m", 4, "an opening bracket is never closed"},
      {"5 m)", 3, "a closing bracket without an opening one"},
      {"5 m^9", 3, "^ without a power from 1 to 4"},
      {"1e999 m", 0, "the number is too large or too small to be held"},
      {"1e308 ft 3 in", 9, "1e308 ft is not whole, so no smaller unit can follow"},
      {"1/0 in", 0, "a fraction over zero"},
      {"10 3/2 in", 2, "the fraction after a whole number must be less than 1"},
      {"7 ft 14 in", 5, "14 in is not less than 1 ft"},
      {"7.5 ft 3 in", 7, "7.5 ft is not whole, so no smaller unit can follow"},
      {"3 in 2 ft", 5, "2 ft cannot follow 3 in"},
      {"7 ft 10", 5, "a second number without a unit"},
      {"7 ft 2 kg", 5, "2 kg cannot follow 7 ft"},
      {"2 15 m", 2, "a second number; thousands are three digits each (2 150), fractions 10 1/2"},
      {"5 m\"", 3, "\"\"\" is not understood here"},
      {"5 m;", 3, "\";\" is not understood here"},
      {"5 m 水", 4, "\"水\" is not understood here"},
      {"\xFF", 0, "a byte that is not text (UTF-8), where a number should start"},
      {"5 \xC3", 2, "a byte that is not text (UTF-8)"},
      {"5 \xC0\xAF m", 2, "a byte that is not text (UTF-8)"},
      {"5 m m m m m m m m m m", 19, "the unit has too many parts"},
  };
  for (const auto& m : mistakes) {
    CAPTURE(m.text);
    try {
      (void)text::parse<length>(m.text);
      FAIL_CHECK("nothing thrown");
    } catch (const text_error& e) {
      CHECK(e.reason() == m.reason);
      CHECK(e.position() == m.position);
      CHECK(e.text() == m.text);
      CHECK(e.expected().starts_with("a length such as 2.40 m"));
      CHECK(e.details().function == "tankwright::text::parse");
      CHECK(std::string_view{e.what()}.starts_with("tankwright::text::parse: \""));
    }
  }
  CHECK(refusal<length>("5 furlongs").ends_with("expected a length such as 2.40 m (m, cm, mm, um, nm, in, ft)"));
  CHECK(refusal<volume>("1e308 t").find("is a mass") != std::string::npos);
  CHECK(refusal<mass>("1e308 t").find("too large to be held") != std::string::npos);
  CHECK(refusal<temperature>("-300 °C").find("below absolute zero") != std::string::npos);
  CHECK(refusal<proportion>("120 %").find("not between 0 and 100 %") != std::string::npos);
  CHECK(refusal<relative_humidity>("-1 %").find("not between 0 and 100 %") != std::string::npos);
  CHECK(refusal<temperature>("25 °C 3 °F").find("cannot follow") != std::string::npos);
  CHECK_THROWS_AS((void)text::parse<volume>("5 kg"), invalid_input);
}

TEST_CASE("text: a message is short and clean, whatever the text") {
  const std::string long_text(100000, '7');
  const std::string message = refusal<length>(long_text);
  CHECK(message.size() < 300);
  CHECK(message.find("is too long: 100000 bytes, at most 160") != std::string::npos);
  using namespace std::string_view_literals;
  CHECK(refusal<length>("5\0m\x1B[31m"sv).find("\"5\\x00m\\x1b[31m\"") != std::string::npos);
  CHECK(refusal<length>("5 \xE6\xB0").find("\"5 \\xe6\xB0") == std::string::npos);
}

TEST_CASE("text: any bytes, under the demands of the fuzz target") {
  std::mt19937 random{20260801};
  MESSAGE("seed 20260801");
  const std::string_view pieces[] = {
      "0",  "1", "2",    "3",  "5", "7",   "10", "150", "00", ".",   ",",   "/",    " ",      " ",      " ",
      "-",  "+", "e",    "E",  "'", "\"",  "½",  "²",   "³",  "⁻",   "µ",   "°",    "%",      "(",      ")",
      "^",  "·", "\xFF", "\0", "m", "mm",  "in", "ft",  "US", "gal", "imp", "L",    "h",      "min",    "s",
      "kg", "g", "C",    "F",  "K", "deg", "S",  "cm",  "W",  "psi", "RH",  "per ", "cubic ", "litres", "J"};
  std::uniform_int_distribution<std::size_t> piece{0, std::size(pieces) - 1};
  std::uniform_int_distribution<int> count{0, 12};
  std::uniform_int_distribution<int> byte{0, 255};
  for (int i = 0; i < 20000; ++i) {
    std::string text(1, static_cast<char>(byte(random)));  // chooses the quantity
    if (i % 4 == 0) {
      for (int k = count(random); k > 0; --k) text += static_cast<char>(byte(random));
    } else {
      for (int k = count(random); k > 0; --k) text += pieces[piece(random)];
    }
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
  }
}

TEST_CASE("text: numbers are written as the C library rounds them") {
  const evidence rounding{"tankwright::text::of", kind::library, "printf of the C library, same digits"};
  std::mt19937_64 random{20260801};
  std::uniform_real_distribution<double> exponent{-12.0, 14.0};
  for (int i = 0; i < 20000; ++i) {
    const double x = std::pow(10.0, exponent(random)) * (i % 2 ? 1.0 : -1.0);
    const int count = 1 + i % 17;
    char wanted[64];
    std::snprintf(wanted, sizeof wanted, "%.*e", count - 1, x);
    const std::string text = text::of(x, text::significant(count));
    TW_HOLDS(rounding, std::strtod(text.c_str(), nullptr) == std::strtod(wanted, nullptr));
    std::snprintf(wanted, sizeof wanted, "%.*f", i % 8, x);
    if (std::strtod(wanted, nullptr) != 0.0) TW_HOLDS(rounding, text::of(x, text::decimals(i % 8)) == wanted);
  }
}

TEST_CASE("text: digits that make sense") {
  const evidence made{"tankwright::text::significant", kind::identity, "definition of significant digits"};
  const evidence fixed{"tankwright::text::decimals", kind::identity, "definition of decimals"};
  TW_HOLDS(made, text::of(2153.7, text::significant(4)) == "2154");
  TW_HOLDS(made, text::of(2150.0, text::significant(2)) == "2200");
  TW_HOLDS(made, text::of(0.00012345, text::significant(3)) == "0.000123");
  TW_HOLDS(made, text::of(1.0264, text::significant(5)) == "1.0264");
  TW_HOLDS(fixed, text::of(24.0, text::decimals(1)) == "24.0");
  TW_HOLDS(fixed, text::of(2153.7, text::decimals(0)) == "2154");
  TW_HOLDS(fixed, text::of(2153.7, text::decimals(-2)) == "2200");
  CHECK(text::of(0.1 + 0.2) == "0.3");
  CHECK(text::of(100.0) == "100");
  CHECK(text::of(99999.0) == "100000");
  CHECK(text::of(0.00001) == "1e-5");
  CHECK(text::of(123456789.0, text::significant(9)) == "123456789");
  CHECK(text::of(1.5e12) == "1.5e12");
  CHECK(text::of(-2.5) == "-2.5");
  CHECK(text::of(0.0) == "0");
  CHECK(text::of(-0.0) == "0");
  CHECK(text::of(-0.001, text::decimals(2)) == "0.00");
  CHECK(text::of(5.0, text::significant(0)) == "5");
  CHECK(text::of(std::numeric_limits<double>::quiet_NaN()) == "nan");
  CHECK(text::of(std::numeric_limits<double>::infinity(), text::decimals(2)) == "inf");
  CHECK(text::of(-std::numeric_limits<double>::infinity()) == "-inf");
  CHECK(text::of(1e300, text::decimals(2)) == "1e300");
}

TEST_CASE("text: quantities in the unit asked for") {
  CHECK(text::in(cubic_metres(2.15), "L") == "2150 L");
  CHECK(text::in(cubic_metres(2.15), "m³") == "2.15 m³");
  CHECK(text::in(litres(2150.0), "US gal") == "568 US gal");
  CHECK(text::in(litres(2150.0), "US gal", text::decimals(1)) == "568.0 US gal");
  CHECK(text::in(celsius(25.0), "°F") == "77 °F");
  CHECK(text::in(fahrenheit(32.0), "°C") == "0 °C");
  CHECK(text::in(kelvin_steps(2.0), "°F") == "3.6 °F");
  CHECK(text::in(percent(60.0), "%") == "60 %");
  CHECK(text::in(relative_humidity::from_percent(55.0), "% RH") == "55 % RH");
  CHECK(text::in(practical_salinity{35.0}, "") == "35");
  CHECK(text::in(practical_salinity{35.0}, "psu") == "35 psu");
  CHECK(text::in(absolute_salinity::from_grams_per_kilogram(35.16504), "g/kg", text::significant(6)) == "35.165 g/kg");
  CHECK(text::in(gauge_pressure{psi(6.0)}, "psi") == "6 psi");
  CHECK(text::in(litres(std::numeric_limits<double>::quiet_NaN()), "L") == "nan L");
  CHECK(text::in(1.0264, "", text::significant(5)) == "1.0264");
  CHECK(text::in(degrees(45.0), "°") == "45°");
  CHECK_THROWS_WITH_AS(
      (void)text::in(litres(3.0), "kg"),
      "tankwright::text::in: \"kg\", character 1: kg measures a mass; expected a unit of volume (m3, L, "
      "mL, in3, ft3, US gal, imp gal)",
      text_error);
  CHECK_THROWS_WITH_AS((void)text::in(litres(3.0), "gal"), doctest::Contains("gal can be US or imperial"), text_error);
  CHECK_THROWS_AS((void)text::in(litres(3.0), ""), text_error);
  CHECK_THROWS_AS((void)text::in(litres(3.0), "L L"), text_error);
  CHECK_THROWS_AS((void)text::in(litres(3.0), "3 L"), text_error);
  CHECK_THROWS_AS((void)text::in(practical_salinity{35.0}, "g/kg"), text_error);
}

TEST_CASE("text: everyday units, SI and US") {
  const evidence ladder{"tankwright::text::everyday_unit", kind::common_practice, ""};
  const evidence size{"tankwright::text::everyday_unit", kind::identity, "the number in the unit chosen is at least 1"};
  TW_HOLDS(ladder, text::everyday_unit(metres(2.4), text::unit_system::si) == "m");
  TW_HOLDS(ladder, text::everyday_unit(metres(0.24), text::unit_system::si) == "mm");
  TW_HOLDS(ladder, text::everyday_unit(metres(2.4), text::unit_system::us) == "ft");
  // People measure 30 in of water and 8 ft of wall; a dose in millilitres, a bucket in gallons.
  TW_HOLDS(ladder, text::everyday_unit(inches(47.9), text::unit_system::us) == "in");
  TW_HOLDS(ladder, text::everyday_unit(feet(4.0), text::unit_system::us) == "ft");
  TW_HOLDS(ladder, text::everyday_unit(millilitres(300.0), text::unit_system::us) == "mL");
  TW_HOLDS(ladder, text::everyday_unit(us_gallons(0.1), text::unit_system::us) == "US gal");
  TW_HOLDS(ladder, text::everyday_unit(metres(0.24), text::unit_system::us) == "in");
  TW_HOLDS(ladder, text::everyday_unit(celsius(25.0), text::unit_system::us) == "°F");
  TW_HOLDS(ladder, text::everyday_unit(practical_salinity{35.0}, text::unit_system::us) == "");
  for (const double x : {1e-5, 0.02, 0.5, 3.0, 1000.0}) {
    for (const auto system : {text::unit_system::si, text::unit_system::us}) {
      TW_HOLDS(size,
               text::number_in(hours(x), text::everyday_unit(hours(x), system)) >= 1.0 || hours(x) < seconds(1.0));
    }
  }
  CHECK(text::of(litres(2150.0), text::unit_system::si) == "2150 L");
  CHECK(text::of(litres(2150.0), text::unit_system::us) == "568 US gal");
  CHECK(text::of(litres_per_day(3.7), text::unit_system::si) == "3.7 L/d");
  CHECK(text::of(litres_per_hour(4000.0), text::unit_system::us, text::significant(3)) == "1060 US gph");
  CHECK(text::of(kilopascals(12.0), text::unit_system::si) == "12 kPa");
  CHECK(text::of(hours(36.0), text::unit_system::us) == "1.5 d");
  CHECK(text::of(relative_humidity::from_percent(60.0), text::unit_system::si) == "60 %");
  CHECK(text::of(1.0264, text::unit_system::si, text::significant(5)) == "1.0264");
}

TEST_CASE("text: an estimate with its band") {
  const estimate<flow_rate> leak{litres_per_day(2.3), litres_per_day(3.7), litres_per_day(4.6), "gauge"};
  CHECK(text::in(leak, "L/d") == "3.7 L/d (2.3 to 4.6)");
  CHECK(text::of(leak, text::unit_system::si) == "3.7 L/d (2.3 to 4.6)");
  const auto litres_band = [](double low, double central, double high) {
    return text::in(estimate<volume>{litres(low), litres(central), litres(high), ""}, "L");
  };
  CHECK(litres_band(1099.7, 1136.2, 1172.4) == "1136 L (1100 to 1172)");
  CHECK(litres_band(11000.0, 11361.0, 11720.0) == "11360 L (11000 to 11720)");
  CHECK(litres_band(9.81, 12.345, 15.0) == "12.3 L (9.8 to 15.0)");
  CHECK(litres_band(3.0, 3.0, 3.0) == "3 L");
  CHECK(litres_band(3.0, 3.0, std::numeric_limits<double>::infinity()) == "3 L (3 to inf)");
}

TEST_CASE("text: a length as a tape measure shows it") {
  const evidence tape{"tankwright::text::feet_and_inches", kind::identity, "12 inches are a foot"};
  TW_HOLDS(tape, text::feet_and_inches(inches(94.5)) == "7 ft 10 1/2 in");
  TW_HOLDS(tape, text::feet_and_inches(metres(2.4)) == "7 ft 10 1/2 in");
  TW_HOLDS(tape, text::feet_and_inches(metres(2.4), 64) == "7 ft 10 31/64 in");
  TW_HOLDS(tape, text::feet_and_inches(feet(7.0)) == "7 ft");
  TW_HOLDS(tape, text::feet_and_inches(inches(84.5)) == "7 ft 1/2 in");
  TW_HOLDS(tape, text::feet_and_inches(inches(0.75)) == "3/4 in");
  TW_HOLDS(tape, text::feet_and_inches(inches(10.0)) == "10 in");
  TW_HOLDS(tape, text::feet_and_inches(inches(11.99)) == "1 ft");
  TW_HOLDS(tape, text::feet_and_inches(inches(-94.5)) == "-7 ft 10 1/2 in");
  TW_HOLDS(tape, text::feet_and_inches(inches(-0.001)) == "0 in");
  TW_HOLDS(tape, text::feet_and_inches(metres(0.0)) == "0 in");
  TW_HOLDS(tape, text::feet_and_inches(inches(10.3), 1) == "10 in");
  CHECK(text::feet_and_inches(feet(1e30)) == "1e30 ft");
  CHECK(text::feet_and_inches(metres(std::numeric_limits<double>::quiet_NaN())) == "nan ft");
  CHECK_THROWS_AS((void)text::feet_and_inches(metres(1.0), 0), invalid_input);
}

TEST_CASE("text: nothing follows the locale") {
  for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "nl_NL.UTF-8"}) {
    if (std::setlocale(LC_ALL, name) == nullptr) continue;
    CHECK(text::parse<length>("2.40 m") == metres(2.4));
    CHECK(text::of(metres(2.4), text::unit_system::si) == "2.4 m");
    break;
  }
  std::setlocale(LC_ALL, "C");
}
