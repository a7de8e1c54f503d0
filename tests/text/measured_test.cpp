// SPDX-License-Identifier: BSL-1.0
#include <tankwright/text/measured.hpp>

#include <cmath>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence exact{"tankwright::text::parse_measured", kind::identity,
                     "exact definitions of the units, u = a/sqrt(3)"};

template <class Q>
void reads_as(const Q& value, const step_of<Q>& half_width, std::initializer_list<std::string> texts) {
  for (const auto& text : texts) {
    CAPTURE(text);
    try {
      const measured<Q> read = text::parse_measured<Q>(text);
      TW_CHECK(exact, read.value.get(), value, relative(3e-16));
      TW_CHECK(exact, read.uncertainty.get(), rectangular(value, half_width).uncertainty.get(), relative(1e-15));
      CHECK(read.shape == spread::rectangular);
    } catch (const text_error& e) {
      FAIL_CHECK(std::string{e.what()});
    }
  }
}

template <class Q>
std::string refusal(std::string_view text) {
  try {
    (void)text::parse_measured<Q>(text);
  } catch (const text_error& e) {
    CHECK(e.text() == text);
    return e.what();
  }
  return "nothing thrown";
}

}  // namespace

TEST_CASE("measured text: value and limits") {
  reads_as(metres(2.4), millimetres(5.0),
           {"2.40 m ± 5 mm", "2.40m±5mm", "2.40 m +/- 5 mm", "2.4 m +- 0.5 cm", "2400 ± 5 mm"});
  reads_as(inches(94.5), inches(0.25), {"7 ft 10 1/2 in ± 1/4 in", "94 1/2 ± 1/4 in"});
  reads_as(celsius(25.0), kelvin_steps(0.5), {"25 °C ± 0.5 °C", "25 ± 0.5 °C", "25 °C ± 0.5 K"});
  reads_as(fahrenheit(77.0), fahrenheit_steps(1.0), {"77 F ± 1 F", "77 ± 1 °F"});
  reads_as(litres(2150.0), litres(43.0), {"2150 L ± 2 %", "2 150 L ± 43 L", "2150 ± 43 litres"});
  reads_as(percent(60.0), percent(5.0), {"60 % ± 5 %", "60 ± 5 %", "0.6 ± 0.05"});
  reads_as(relative_humidity::from_percent(60.0), relative_humidity::from_percent(5.0), {"60 % ± 5 %"});
  reads_as(practical_salinity{35.0}, practical_salinity{0.3}, {"35 ± 0.3", "35 psu ± 0.3 psu"});
  reads_as(1.0264, 0.0005, {"1.0264 ± 0.0005", "1.0264 +/- 5e-4"});
  reads_as(gauge_pressure{psi(6.0)}, psi(0.5), {"6 psi ± 0.5 psi", "6 psig ± 0.5 psi", "6 ± 0.5 psi"});
  reads_as(metres(-0.01), millimetres(2.0), {"-10 mm ± 2 mm", "−10 ± 2 mm"});
}

TEST_CASE("measured text: without limits a value is exact") {
  const auto read = text::parse_measured<volume>("300 US gal");
  CHECK(read.value.get() == us_gallons(300.0));
  CHECK(read.uncertainty.get() == litres(0.0));
}

TEST_CASE("measured text: mistakes, and where they are") {
  CHECK(refusal<length>("2.40 m ± 5 kg") ==
        "tankwright::text::parse_measured: \"2.40 m ± 5 kg\", character 12: 5 kg is a mass; expected a length such as "
        "2.40 m, with "
        "its limits behind ±");
  CHECK(refusal<length>("2.40 m ± 5").find("character 11: no unit after the number") != std::string::npos);
  CHECK(refusal<length>("2.40 m ±").find("character 9: the text ends, where a number should start") !=
        std::string::npos);
  CHECK(refusal<length>("± 5 mm").find("character 1: there is nothing to read") != std::string::npos);
  CHECK(refusal<length>("2.40 m ± -5 mm").find("limits are not negative") != std::string::npos);
  CHECK(refusal<length>("2.40 m ± 5 mm ± 1 mm").find("character 15: \"±\" is not understood here") !=
        std::string::npos);
  CHECK(refusal<temperature>("25 °C ± 2 %").find("a share of a temperature; give degrees") != std::string::npos);
  CHECK(refusal<temperature>("25 ± 2").find("degrees of which scale?") != std::string::npos);
  CHECK(refusal<volume>("300 gal ± 5 L").find("gal can be US or imperial") != std::string::npos);
  CHECK(refusal<volume>("300 L ± 5 gal").find("gal can be US or imperial") != std::string::npos);
  CHECK(refusal<proportion>("60 ± 5").find("is more than 1") != std::string::npos);
  CHECK(refusal<length>("").find("there is nothing to read") != std::string::npos);
}
