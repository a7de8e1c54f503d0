// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/charconv.hpp>

#include <cfloat>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <random>
#include <string>
#include <tankwright/core/bit_cast.hpp>
#include <tankwright/core/detail/charconv_fallback.hpp>

#include "support/check.hpp"

using namespace tankwright;
using core::detail::digits_by_printf;
using core::detail::number_by_integers;
using core::detail::shortest_by_printf;

namespace {

/// How many random numbers each test takes: 100 000, or what the environment says.
long rounds() {
  const char* asked = std::getenv("TANKWRIGHT_ROUND_TRIPS");
  return asked ? std::atol(asked) : 100'000;
}

/// Any finite double: all bit patterns alike, so that all sizes and subnormal numbers come up.
class any_double {
 public:
  explicit any_double(std::uint64_t seed) : random_{seed} {}
  double operator()() {
    for (;;) {
      const double x = core::bit_cast<double>(random_());
      if (std::isfinite(x)) return x;
    }
  }
  std::mt19937_64& bits() { return random_; }

 private:
  std::mt19937_64 random_;
};

bool same_bits(double a, double b) { return core::bit_cast<std::uint64_t>(a) == core::bit_cast<std::uint64_t>(b); }

/// What the C library reads (glibc rounds correctly).
double by_strtod(const std::string& text) { return std::strtod(text.c_str(), nullptr); }

}  // namespace

TEST_CASE("charconv: any double comes back from 17 digits, by the fallback and by the standard library") {
  MESSAGE("seed 20260801, ", rounds(), " round trips");
  any_double draw{20260801};
  long good = 0;
  for (long i = 0; i < rounds(); ++i) {
    const double x = draw();
    char text[core::digits_room];
    core::digits_buffer buffer;
    double first = 0.0, second = 0.0;
    good += number_by_integers(digits_by_printf(text, sizeof text, x, 'e', 16), first) && same_bits(first, x) &&
            core::number_from_digits(core::digits_of(buffer, x, core::digit_style::scientific, 16), second) &&
            same_bits(second, x);
  }
  CHECK(good == rounds());
}

TEST_CASE("charconv: the fallback reads what the C library reads, to the last bit") {
  any_double draw{7};
  long good = 0;
  const long count = rounds() / 10;
  for (long i = 0; i < count; ++i) {
    // Numbers of 1 to 40 digits with a point anywhere, and halves between two doubles, where one digit decides.
    std::string text = (draw.bits()() & 1) != 0 ? "-" : "";
    const auto digits = 1 + draw.bits()() % 40, point = draw.bits()() % 41;
    for (std::size_t d = 0; d < digits; ++d) {
      if (d == point) text += '.';
      text += static_cast<char>('0' + draw.bits()() % 10);
    }
    if (text.back() == '.') text += '5';
    text += "e" + std::to_string(static_cast<int>(draw.bits()() % 640) - 330);
    double read = 0.0;
    const double wanted = by_strtod(text);
    const bool held = std::isfinite(wanted) && (wanted != 0.0 || text.find_first_of("123456789") > text.find('e'));
    good += number_by_integers(text, read) == held && (!held || same_bits(read, wanted));
  }
  CHECK(good == count);
}

TEST_CASE("charconv: exactly between two doubles the even one is taken, a digit more or less decides") {
  for (const double x : {1.0, 3.0, 1e22, 2.2250738585072014e-308, DBL_TRUE_MIN, 5e-320, 1e-310, 8.98846567431158e307}) {
    const double next = std::nextafter(x, std::numeric_limits<double>::infinity());
    // The middle as decimal: long double does not reach below the smallest normal number, so print both and halve.
    char low[1200], high[1200];
    std::snprintf(low, sizeof low, "%.1100f", x);
    std::snprintf(high, sizeof high, "%.1100f", next);
    std::string middle(low);
    int carry = 0;
    const std::string a{low}, b{high};
    REQUIRE(a.size() == b.size());
    int sum = 0;
    std::string total(a.size(), '0');
    for (std::size_t i = a.size(); i-- > 0;) {
      if (a[i] == '.') {
        total[i] = '.';
        continue;
      }
      sum = (a[i] - '0') + (b[i] - '0') + carry;
      total[i] = static_cast<char>('0' + sum % 10);
      carry = sum / 10;
    }
    if (carry > 0) total = "1" + total;
    int rest = 0;
    for (char& c : total) {
      if (c == '.') continue;
      const int value = 10 * rest + (c - '0');
      c = static_cast<char>('0' + value / 2);
      rest = value % 2;
    }
    REQUIRE(rest == 0);
    double read = 0.0;
    REQUIRE(number_by_integers(total, read));
    CHECK(same_bits(read, by_strtod(total)));
    REQUIRE(number_by_integers(total + "1", read));
    CHECK(same_bits(read, next));
  }
}

TEST_CASE("charconv: overflow, underflow and subnormal numbers") {
  double read = 42.0;
  for (const char* text : {"1.8e308", "1e309", "1e99999999999", "-1e400", "1e-400", "2e-324", "-1e-99999999999"}) {
    CHECK_FALSE_MESSAGE(number_by_integers(text, read), text);
    CHECK_FALSE_MESSAGE(core::number_from_digits(text, read), text);
    CHECK(read == 42.0);
  }
  for (const double x : {DBL_MAX, DBL_MIN, DBL_TRUE_MIN, 0x1p-1074 * 3.0, DBL_MIN - DBL_TRUE_MIN}) {
    char text[core::digits_room];
    REQUIRE(number_by_integers(digits_by_printf(text, sizeof text, x, 'e', 16), read));
    CHECK(same_bits(read, x));
  }
  CHECK(number_by_integers("2.5e-324", read));  // nearer to the smallest number than to nothing
  CHECK(read == DBL_TRUE_MIN);
  CHECK(number_by_integers("-0", read));
  CHECK(std::signbit(read));
  CHECK(number_by_integers("0e-99999999", read));
  CHECK(read == 0.0);
  CHECK(number_by_integers("1" + std::string(300, '0') + "." + std::string(2000, '0') + "1", read));
  CHECK(read == 1e300);
}

TEST_CASE("charconv: what is no number is none") {
  double read = 42.0;
  for (const char* text : {"", "-", ".", "e5", "1e", "1e+", "+1", " 1", "1 ", "1,5", "1.2.3", "0x10", "nan", "inf",
                           "-inf", "infinity", "1f", "--1"}) {
    CHECK_FALSE_MESSAGE(number_by_integers(text, read), text);
    CHECK_FALSE_MESSAGE(core::number_from_digits(text, read), text);
  }
  CHECK(read == 42.0);
}

TEST_CASE("charconv: both write the same digits") {
  any_double draw{11};
  long good = 0, count = 0;
  const auto agree = [&](double x) {
    core::digits_buffer buffer;
    char text[core::digits_room];
    for (const int precision : {0, 3, 8, 17}) {
      good += digits_by_printf(text, sizeof text, x, 'e', precision) ==
              core::digits_of(buffer, x, core::digit_style::scientific, precision);
      good += digits_by_printf(text, sizeof text, x, 'g', precision) ==
              core::digits_of(buffer, x, core::digit_style::general, precision);
      good += digits_by_printf(text, sizeof text, x, 'f', precision) ==
              core::digits_of(buffer, x, core::digit_style::fixed, precision);
      count += 3;
    }
    double back = 0.0;
    good += core::number_from_digits(shortest_by_printf(text, sizeof text, x), back) && same_bits(back, x);
    good += core::number_from_digits(core::shortest_digits_of(buffer, x), back) && same_bits(back, x);
    count += 2;
  };
  for (const double x : {0.0, -0.0, 0.5, 2.5, 1e15, -1234.5678, DBL_MAX, -DBL_MAX, DBL_TRUE_MIN, 9.9999999995})
    agree(x);
  for (long i = 0; i < rounds() / 100; ++i) agree(draw());
  CHECK(good == count);
}

TEST_CASE("charconv: the fallback finds as few digits as the standard library does") {
  const auto significant = [](std::string_view text) {
    std::string digits;
    for (const char c : text.substr(0, text.find('e'))) {
      if (c >= '0' && c <= '9' && !(digits.empty() && c == '0')) digits += c;
    }
    while (digits.ends_with('0')) digits.pop_back();
    return digits;
  };
  any_double draw{12};
  long good = 0, count = 0;
  const auto agree = [&](double x) {
    if (std::fabs(x) >= 0x1p53 && std::fabs(x) < 1e23) return;  // the library writes whole numbers out in full
    core::digits_buffer buffer;
    char text[core::digits_room];
    ++count;
    good += significant(shortest_by_printf(text, sizeof text, x)) == significant(core::shortest_digits_of(buffer, x));
  };
  for (const double x : {0.0, 1e14, 1e15, 1e17, 123456789012345.0, 5e-324, 1e-310, 2.2250738585072014e-308, 0.1,
                         1.0 / 3.0, 9007199254740991.0, 999999999999999.9}) {
    agree(x);
  }
  for (long i = 0; i < rounds() / 100; ++i) {
    agree(draw());
    // A number of a few digits, of any size: subnormal ones among them.
    const auto digits = static_cast<double>(1 + draw.bits()() % 100'000'000'000'000ull);
    const int shift = static_cast<int>(draw.bits()() % 640) - 330;
    const std::string text = std::to_string(static_cast<long long>(std::fmod(digits, std::pow(10.0, i % 15 + 1)))) +
                             "e" + std::to_string(shift);
    if (const double x = by_strtod(text); std::isfinite(x)) agree(x);
  }
  CHECK(good == count);
}

TEST_CASE("charconv: a point for the decimal mark of any locale") {
  // What C libraries print in German, in Pashto (a mark of two bytes), and in the C locale.
  for (std::string text : {"-1,50e-07", "-1\u066B50e-07", "-1.50e-07"}) {
    text.resize(core::detail::with_a_point(text.data(), text.size()));
    CHECK(text == "-1.50e-07");
  }
  std::string whole = "1500000";
  whole.resize(core::detail::with_a_point(whole.data(), whole.size()));
  CHECK(whole == "1500000");
  double read = 0.0;
  CHECK_FALSE(number_by_integers("2,5", read));
}
