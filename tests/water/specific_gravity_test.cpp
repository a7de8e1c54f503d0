// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/specific_gravity.hpp>

#include <limits>
#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence there_and_back{"tankwright::water::salinity_from_specific_gravity", kind::property, "there and back"};
const evidence grows{"tankwright::water::specific_gravity_from_salinity", kind::property, "grows with salinity"};
const evidence one{"tankwright::water::specific_gravity_from_salinity", kind::identity,
                   "pure water at the reference temperature is 1"};
const evidence batch_is_scalar{"tankwright::water::specific_gravity_from_salinity", kind::property,
                               "batch equals scalar"};
const evidence same_water{"tankwright::water::on_scale", kind::identity,
                          "density ratios: SG(a/b) rho_w(b) is the density at a, whatever b"};
const evidence scale_back{"tankwright::water::on_scale", kind::property, "there and back"};

tww::gravity_scale scale_of(const reference_row& row) {
  const auto point = [&](const std::string& which) {
    return row.has(which + "_F") ? fahrenheit(row[which + "_F"]) : celsius(row[which + "_C"]);
  };
  return {point("sample"), point("reference")};
}

const std::map<std::string, row_handler> handlers{
    {"tankwright::water::specific_gravity_from_salinity",
     [](const reference_row& row) {
       return tww::specific_gravity_from_salinity(practical_salinity{row["S_P"]}, scale_of(row)).value();
     }},
    {"tankwright::water::salinity_from_specific_gravity", [](const reference_row& row) {
       return tww::salinity_from_specific_gravity({row["SG"], scale_of(row)}).value();
     }}};

const std::vector<tww::gravity_scale> scales{
    tww::scale_15_15, tww::scale_60f_60f, tww::scale_20_20, tww::scale_25_25,
    tww::scale_15_4,  tww::scale_20_4,    tww::scale_25_4,  {celsius(25.0), fahrenheit(60.0)}};
}  // namespace

TEST_CASE("specific_gravity: reference table") { check_rows(reference_rows("water/specific_gravity.csv"), handlers); }

TEST_CASE("specific_gravity: random states against the TEOS-10 toolbox") {
  check_rows(live_rows("water_specific_gravity.csv"), handlers);
}

TEST_CASE("specific_gravity: there and back, order and batch on every named scale") {
  std::vector<practical_salinity> s;
  for (double sp = 0.0; sp <= 42.0; sp += 0.35) s.emplace_back(sp);
  for (const auto& scale : scales) {
    std::vector<tww::specific_gravity> batch(s.size(), {0.0, tww::scale_15_4});
    tww::specific_gravity_from_salinity(s, scale, batch);
    for (std::size_t i = 0; i < s.size(); ++i) {
      const auto sg = tww::specific_gravity_from_salinity(s[i], scale);
      // One unit in the last place of the specific gravity is 3e-13 in salinity.
      TW_CHECK(there_and_back, tww::salinity_from_specific_gravity(sg), s[i],
               (tolerance{.absolute = 4e-13, .relative = 1e-12}));
      TW_CHECK(batch_is_scalar, batch[i].value(), sg.value(), relative(4.5e-16));
      CHECK(batch[i].scale().sample.get() == scale.sample.get());
      if (i > 0) TW_HOLDS(grows, batch[i].value() > batch[i - 1].value());
    }
  }
  for (double t = 0.0; t <= 40.0; t += 2.5) {
    TW_CHECK(one, tww::specific_gravity_from_salinity(practical_salinity{0.0}, {celsius(t), celsius(t)}).value(), 1.0,
             tolerance{});
  }
}

TEST_CASE("specific_gravity: the same water on another scale") {
  const tww::specific_gravity sg{1.0264, tww::scale_25_25};
  const auto other = tww::on_scale(sg, tww::scale_25_4);
  const double water_25 = tww::density(practical_salinity{0.0}, celsius(25.0)).value();
  const double water_4 = tww::density(practical_salinity{0.0}, celsius(4.0)).value();
  TW_CHECK(same_water, other.value(), 1.0264 * water_25 / water_4, relative(4e-16));
  for (const auto& scale : scales) {
    TW_CHECK(scale_back, tww::on_scale(tww::on_scale(sg, scale), tww::scale_25_25).value(), sg.value(),
             relative(6e-16));
  }
}

TEST_CASE("specific_gravity: edges of the ranges") {
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::specific_gravity_from_salinity(practical_salinity{s}, tww::scale_25_25, policy);
  });
  check_edges(tww::reference_temperature_limits, [](double t, range_policy policy) {
    return tww::specific_gravity_from_salinity(practical_salinity{35.0}, {celsius(20.0), celsius(t)}, policy);
  });
  constexpr double inf = std::numeric_limits<double>::infinity();
  for (const double wrong : {0.499, 2.001, -1.0, 0.0, inf, -inf, std::numeric_limits<double>::quiet_NaN()}) {
    CHECK_THROWS_AS((void)tww::salinity_from_specific_gravity({wrong, tww::scale_25_25}, extrapolate), invalid_input);
  }
  const auto sampled_at = [](double t, range_policy policy = range_policy::published) {
    return tww::specific_gravity_from_salinity(practical_salinity{35.0}, {celsius(t), celsius(4.0)}, policy);
  };
  CHECK_NOTHROW((void)sampled_at(80.0));
  CHECK_THROWS_AS((void)sampled_at(80.1), out_of_range);
  CHECK_NOTHROW((void)sampled_at(80.1, extrapolate));
  CHECK_NOTHROW((void)sampled_at(-1.9));
  CHECK_THROWS_AS((void)sampled_at(-2.0), out_of_range);
  CHECK_THROWS_AS((void)sampled_at(-274.0, extrapolate), invalid_input);
}

TEST_CASE("specific_gravity: a bad element of a batch throws before anything is written") {
  std::vector<practical_salinity> s{practical_salinity{35.0}, practical_salinity{43.0}};
  std::vector<tww::specific_gravity> result(2, {0.0, tww::scale_25_25});
  CHECK_THROWS_AS(tww::specific_gravity_from_salinity(s, tww::scale_25_25, result), out_of_range);
  CHECK_THROWS_AS(tww::specific_gravity_from_salinity(s, {celsius(-2.2), celsius(4.0)}, result), out_of_range);
  CHECK(result[0].value() == 0.0);
  tww::specific_gravity_from_salinity(s, tww::scale_25_25, result, extrapolate);
  CHECK(result[1].value() > result[0].value());
  s.pop_back();
  CHECK_THROWS_AS(tww::specific_gravity_from_salinity(s, tww::scale_25_25, result), invalid_input);
}

TEST_CASE("specific_gravity: what is no seawater is refused in the caller's terms") {
  const auto message_of = [](double sg, range_policy policy = range_policy::published) -> std::string {
    try {
      (void)tww::salinity_from_specific_gravity({sg, tww::scale_25_4}, policy);
    } catch (const error& e) {
      return std::string{e.what()}.substr(std::string{"tankwright::water::salinity_from_specific_gravity: "}.size());
    }
    return {};
  };
  CHECK(message_of(1.02).empty());
  CHECK(message_of(0.99) == "specific gravity = 0.99 is less than that of pure water at 25 degC, 0.997072702");
  CHECK(message_of(1.03) ==
        "specific gravity = 1.03 is more than that of practical salinity 42 at 25 degC, 1.02866539; pass "
        "tankwright::extrapolate to go past it");
  CHECK(message_of(1.03, extrapolate).empty());
  CHECK(message_of(1.10, extrapolate) ==
        "specific gravity = 1.1 is more than that of a brine of 120 g/kg at 25 degC, 1.08793751");
  CHECK(message_of(1026.4) == "specific gravity = 1026.4 is not possible; expected 0.5 to 2");
}
