// SPDX-License-Identifier: BSL-1.0
// What somebody wrote on the plan, read with its unit and said back in both systems; and what a slip of the pen gives.
#include <iostream>

#include <tankwright/text/quantity.hpp>

namespace tw = tankwright;

namespace {

template <class Quantity>
void say_back(const char* written) {
  try {
    const auto quantity = tw::text::parse<Quantity>(written);
    std::cout << written << "  =  " << tw::text::of(quantity, tw::text::unit_system::si) << "  =  "
              << tw::text::of(quantity, tw::text::unit_system::us) << '\n';
  } catch (const tw::text_error& mistake) {
    std::cout << written << "  ?  " << mistake.reason() << "; expected " << mistake.expected() << '\n';
  }
}

}  // namespace

int main() {
  say_back<tw::length>("7' 10 1/2\"");
  say_back<tw::volume>("2 150 L");
  say_back<tw::temperature>("77 F");
  say_back<tw::flow_rate>("1200 US gph");
  say_back<tw::electrical_conductivity>("53 mS/cm");
  std::cout << '\n';
  say_back<tw::volume>("300 gal");
  say_back<tw::length>("12 kg");
  say_back<tw::temperature>("25");
  std::cout << '\n';
  std::cout << "a shelf of 1.83 m: " << tw::text::feet_and_inches(tw::metres(1.83)) << '\n';
  const tw::estimate<tw::flow_rate> leak{tw::litres_per_day(2.31), tw::litres_per_day(3.68), tw::litres_per_day(4.63),
                                         "level gauge of 1 mm"};
  std::cout << "a leak: " << tw::text::of(leak, tw::text::unit_system::si) << '\n';
}
