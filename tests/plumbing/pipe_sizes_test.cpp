// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/plumbing/pipe_sizes.hpp>
#include <type_traits>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {
const evidence table_bores{"tankwright::plumbing::pvc_pipe", kind::published,
                           "Illinois Adm. Code tit. 77 part 906: bores behind its friction table"};
}  // namespace

TEST_CASE("pipe sizes: reference table") {
  const auto inch = [](const reference_row& row) {
    const auto pipe =
        twp::pvc_pipe(twp::nominal_size::from_inches(row["size"]),
                      row["schedule"] == 40.0 ? twp::pvc_schedule::schedule_40 : twp::pvc_schedule::schedule_80);
    const std::string give = row.text("give");
    if (give == "outside_diameter") return in_inches(pipe.outside_diameter);
    if (give == "minimum_wall") return in_inches(pipe.minimum_wall);
    return in_inches((give == "average_bore" ? pipe.average_bore : pipe.minimum_wall_bore).diameter());
  };
  const auto metric = [](const reference_row& row) {
    const auto rating = row["class"] == 10.0 ? twp::pressure_class::pn10 : twp::pressure_class::pn16;
    const auto pipe = twp::metric_pvc_pipe(twp::metric_size::from_millimetres(row["size"]), rating);
    return in_millimetres(row.text("give") == "wall" ? pipe.wall : pipe.bore.diameter());
  };
  check_rows(reference_rows("plumbing/pipe_sizes.csv"),
             {{"tankwright::plumbing::pvc_pipe", inch}, {"tankwright::plumbing::metric_pvc_pipe", metric}});
}

TEST_CASE("pipe sizes: the bores that old friction tables used") {
  const struct {
    double nominal, bore;
  } rows[] = {{1.0, 1.049}, {1.25, 1.380}, {1.5, 1.610}, {2.0, 2.067}, {3.0, 3.068}, {4.0, 4.026}};
  for (const auto& row : rows) {
    const auto pipe = twp::pvc_pipe(twp::nominal_size::from_inches(row.nominal), twp::pvc_schedule::schedule_40);
    TW_CHECK(table_bores, pipe.minimum_wall_bore.diameter(), inches(row.bore), within(inches(0.0005)));
    CHECK(pipe.average_bore < pipe.minimum_wall_bore);
  }
}

TEST_CASE("pipe sizes: a size that is not made says which are") {
  const auto message = [](auto call) {
    try {
      call();
    } catch (const invalid_input& e) {
      return std::string{e.what()};
    }
    return std::string{"nothing thrown"};
  };
  CHECK(message([] { (void)twp::pvc_pipe(twp::nominal_size::from_inches(1.6), twp::pvc_schedule::schedule_40); }) ==
        "tankwright::plumbing::pvc_pipe: nominal size = 1.6 in is not made; sizes are 0.5 0.75 1 1.25 1.5 2 2.5 3 4");
  CHECK(
      message([] { (void)twp::metric_pvc_pipe(twp::metric_size::from_millimetres(20), twp::pressure_class::pn10); }) ==
      "tankwright::plumbing::metric_pvc_pipe: nominal size = 20 mm is not made; sizes are 32 40 50 63 75 90 110");
}

TEST_CASE("pipe sizes: a nominal size, a metric size and a bore do not mix") {
  static_assert(!std::is_convertible_v<twp::nominal_size, twp::pipe_bore>);
  static_assert(!std::is_convertible_v<twp::metric_size, twp::pipe_bore>);
  static_assert(!std::is_convertible_v<twp::metric_size, twp::nominal_size>);
  static_assert(!std::is_convertible_v<length, twp::pipe_bore>);
  static_assert(!std::is_constructible_v<twp::pipe_bore, twp::nominal_size>);
}
