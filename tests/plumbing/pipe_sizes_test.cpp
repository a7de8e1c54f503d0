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
  CHECK(twp::pipe_bore{millimetres(34.0)} == twp::pipe_bore{millimetres(34.0)});
  CHECK(twp::pipe_bore{millimetres(34.0)} != twp::pipe_bore{millimetres(34.1)});
  static_assert(!std::is_convertible_v<twp::nominal_size, twp::pipe_bore>);
  static_assert(!std::is_convertible_v<twp::metric_size, twp::pipe_bore>);
  static_assert(!std::is_convertible_v<twp::metric_size, twp::nominal_size>);
  static_assert(!std::is_convertible_v<length, twp::pipe_bore>);
  static_assert(!std::is_constructible_v<twp::pipe_bore, twp::nominal_size>);
}

TEST_CASE("pipe sizes: every inch pipe as ASTM D1785 gives it") {
  // Nominal, outside, minimum walls of Schedule 40 and 80; the wall varies by the larger of 0.020 in and 12 % of it.
  const evidence table{"tankwright::plumbing::pvc_pipe", kind::from_memory, "ASTM D1785 tables 1 and 2"};
  const struct {
    double nominal, outside, wall_40, wall_80;
  } rows[] = {{0.5, 0.840, 0.109, 0.147},  {0.75, 1.050, 0.113, 0.154}, {1.0, 1.315, 0.133, 0.179},
              {1.25, 1.660, 0.140, 0.191}, {1.5, 1.900, 0.145, 0.200},  {2.0, 2.375, 0.154, 0.218},
              {2.5, 2.875, 0.203, 0.276},  {3.0, 3.500, 0.216, 0.300},  {4.0, 4.500, 0.237, 0.337}};
  for (const auto& row : rows) {
    for (const bool thick : {false, true}) {
      const auto pipe = twp::pvc_pipe(twp::nominal_size::from_inches(row.nominal),
                                      thick ? twp::pvc_schedule::schedule_80 : twp::pvc_schedule::schedule_40);
      const double wall = thick ? row.wall_80 : row.wall_40, varies = wall > 1.0 / 6.0 ? 0.12 * wall : 0.020;
      TW_CHECK(table, in_inches(pipe.outside_diameter), row.outside, relative(1e-12));
      TW_CHECK(table, in_inches(pipe.minimum_wall), wall, relative(1e-12));
      TW_CHECK(table, in_inches(pipe.minimum_wall_bore.diameter()), row.outside - 2.0 * wall, relative(1e-12));
      TW_CHECK(table, in_inches(pipe.average_bore.diameter()), row.outside - 2.0 * wall - varies, relative(1e-12));
    }
  }
  const evidence metric{"tankwright::plumbing::metric_pvc_pipe", kind::identity, "dn less two walls"};
  const auto pipe = twp::metric_pvc_pipe(twp::metric_size::from_millimetres(50), twp::pressure_class::pn16);
  TW_CHECK(metric, in_millimetres(pipe.bore.diameter()), 50.0 - 7.4, relative(1e-12));
}
