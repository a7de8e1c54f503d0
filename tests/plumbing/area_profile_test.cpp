// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/area_profile.hpp>

#include <string>

#include <tankwright/plumbing/emptying.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

// Leaning out, straight up, a ledge, leaning in, straight up again. Volumes below the seams by hand, as trapezia:
// 0.2 (1 + 1.4)/2 = 0.24; 0.24 + 0.3 * 1.4 = 0.66; 0.66 + 0.4 (2 + 1.2)/2 = 1.3.
const tp::area_profile mixed{{metres(0.0), square_metres(1.0)},
                             {metres(0.2), square_metres(1.4)},
                             {metres(0.5), square_metres(1.4)},
                             {metres(0.5), square_metres(2.0)},
                             {metres(0.9), square_metres(1.2)}};

}  // namespace

TEST_CASE("area profile: area and volume of straight pieces by hand") {
  const evidence by_hand{"tankwright::plumbing::area_profile", kind::identity, "trapezia by hand"};
  struct row {
    double z, area, volume;
  };
  for (const row& r : {row{0.0, 1.0, 0.0}, row{0.1, 1.2, 0.11}, row{0.2, 1.4, 0.24}, row{0.35, 1.4, 0.45},
                       row{0.5, 2.0, 0.66}, row{0.6, 1.8, 0.85}, row{0.9, 1.2, 1.3}, row{1.4, 1.2, 1.9}}) {
    CAPTURE(r.z);
    TW_CHECK(by_hand, mixed.at(metres(r.z)), square_metres(r.area), relative(1e-14));
    TW_CHECK(by_hand, mixed.below(metres(r.z)), cubic_metres(r.volume), tolerance{.absolute = 1e-15});
    TW_CHECK(by_hand, mixed.filled_by(cubic_metres(r.volume)), metres(r.z), tolerance{.absolute = 1e-15});
  }
  const tp::area_profile one{std::vector<tp::area_slice>{{metres(0.0), square_metres(0.7)}}};
  TW_CHECK(by_hand, one.at(metres(2.0)), square_metres(0.7), tolerance{});
  TW_CHECK(by_hand, one.below(metres(2.0)), cubic_metres(1.4), relative(1e-15));
  // A lip of half a millimetre that leans out.
  const tp::area_profile lip{{metres(0.0), square_metres(1.0)}, {metres(5e-4), square_metres(2.0)}};
  TW_CHECK(by_hand, lip.at(metres(2.5e-4)), square_metres(1.5), relative(1e-14));
}

TEST_CASE("area profile: what is no vessel is refused in its own words") {
  const auto said = [](const tp::area_profile& profile) {
    try {
      const auto hole = tp::outlet_through(tp::orifice{millimetres(20.0), 0.6});
      (void)tp::emptying_time(profile, {.outlet = hole, .from = metres(0.5), .to = metres(0.4)});
    } catch (const invalid_input& e) {
      return std::string{e.what()};
    }
    return std::string{"accepted"};
  };
  CHECK(said(mixed) == "accepted");
  const auto of = [&](double first, double second) {
    return said(
        {{metres(first), square_metres(1.0)}, {metres(0.6), square_metres(1.0)}, {metres(second), square_metres(1.0)}});
  };
  CHECK(of(0.0, 0.6) == "accepted");
  CHECK(of(0.0, 0.5995).find("heights do not rise") != std::string::npos);
  CHECK(of(5e-4, 0.7).find("does not start at the floor") != std::string::npos);
  CHECK(of(1e-3, 0.7).find("does not start at the floor") != std::string::npos);
  CHECK(of(-5e-4, 0.7).find("does not start at the floor") != std::string::npos);
  CHECK(said(std::vector<tp::area_slice>{}).find("without slices") != std::string::npos);
}
