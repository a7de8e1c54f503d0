// SPDX-License-Identifier: BSL-1.0
// Any bytes as text: `parse` gives a quantity that prints and reads back as itself, or throws text_error. The first byte
// chooses the quantity. Build with -fsanitize=fuzzer,address,undefined -fno-sanitize-recover=all (Clang) and run with
// -max_total_time=60 -max_len=200 -dict=tests/fuzz/text.dict. The tests put texts of their own through it.
#include <tankwright/text/measured.hpp>

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace tw = tankwright;

namespace {

void demand(bool holds, const char* what, std::string_view text, const std::string& printed = {}) {
  if (holds) return;
  std::fprintf(stderr, "%s: %s, printed %s\n", what, tw::text::detail::quoted(text).c_str(), printed.c_str());
  std::abort();
}

/// One rounding in each direction; a temperature loses what its distance from 0 K takes.
template <class Q>
bool same(double a, double b) {
  const double offset = std::is_same_v<Q, tw::temperature> ? 1e-9 : 0.0;
  return std::fabs(a - b) <= 1e-14 * std::fabs(a) + offset + 1e-300;
}

template <class Q>
void try_one(std::string_view text) {
  try {
    const Q quantity = tw::text::parse<Q>(text);
    const double si = tw::core::si_number(quantity);
    demand(std::isfinite(si), "not finite", text);
    for (const auto system : {tw::text::unit_system::si, tw::text::unit_system::us}) {
      if (!std::isfinite(tw::text::number_in(quantity, tw::text::everyday_unit(quantity, system))))
        continue;  // 1e308 m in inches
      const std::string printed = tw::text::of(quantity, system, tw::text::significant(17));
      try {
        demand(same<Q>(si, tw::core::si_number(tw::text::parse<Q>(printed))), "does not read back", text, printed);
      } catch (const tw::text_error& e) {
        // The largest double may round to more than can be held; a proportion of 1 may print as 100.00000000000001 %.
        demand(std::fabs(si) > 1e300 || (si > 1.0 - 1e-15 && si <= 1.0), e.what(), text, printed);
      }
      demand(tw::text::of(quantity, system).size() < 60, "a short form that is long", text);
    }
    if constexpr (std::is_same_v<Q, tw::length>) {
      const std::string tape = tw::text::feet_and_inches(quantity);
      if (std::fabs(si) < 1e6) {
        demand(std::fabs(tw::text::parse<Q>(tape).value() - si) <= 0.0254 / 32.0 + 1e-9, "tape does not read back",
               text, tape);
      }
    }
  } catch (const tw::text_error& e) {
    demand(e.position() <= e.text().size() && e.text().size() <= tw::text::detail::longest_text, "position outside",
           text);
    demand(!e.reason().empty() && !e.expected().empty() && e.details().function == "tankwright::text::parse", "silent",
           text);
    demand(std::string_view{e.what()}.size() < 1200, "a message that is long", text);
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string_view text{reinterpret_cast<const char*>(data) + 1, size - 1};
  switch (data[0] % 16) {
    case 0:
      try_one<tw::length>(text);
      break;
    case 1:
      try_one<tw::volume>(text);
      break;
    case 2:
      try_one<tw::flow_rate>(text);
      break;
    case 3:
      try_one<tw::temperature>(text);
      break;
    case 4:
      try_one<tw::temperature_difference>(text);
      break;
    case 5:
      try_one<tw::mass>(text);
      break;
    case 6:
      try_one<tw::duration>(text);
      break;
    case 7:
      try_one<tw::pressure>(text);
      break;
    case 8:
      try_one<tw::gauge_pressure>(text);
      break;
    case 9:
      try_one<tw::electrical_conductivity>(text);
      break;
    case 10:
      try_one<tw::proportion>(text);
      break;
    case 11:
      try_one<tw::relative_humidity>(text);
      break;
    case 12:
      try_one<tw::practical_salinity>(text);
      break;
    case 13:
      try_one<tw::absolute_salinity>(text);
      break;
    case 14:
      try_one<tw::thermal_transmittance>(text);
      break;
    default:
      try_one<double>(text);
      break;
  }
  try {
    const auto measured = tw::text::parse_measured<tw::length>(text);
    demand(measured.uncertainty.get().value() >= 0.0, "a negative uncertainty", text);
  } catch (const tw::text_error&) {
  }
  // As a unit to print in: refused or understood, never anything else.
  try {
    (void)tw::text::in(tw::litres(300.0), text);
  } catch (const tw::text_error&) {
  }
  return 0;
}
