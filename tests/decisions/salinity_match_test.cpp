// SPDX-License-Identifier: BSL-1.0
// Does the new water match the older tank? What to add, or to take out.
#include <tankwright/decisions/salting/match.hpp>

#include <tankwright/water/density.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace td = tankwright::decisions;

namespace {

const evidence by_hand{"tankwright::decisions::answer_salinity_match", kind::wiring, "the same calls by hand"};
const evidence balance{"tankwright::decisions::answer_salinity_match", kind::identity,
                       "conservation of salt and water"};

plan::build two_waters() {
  plan::build build;
  give(build, {{"water.temperature", "24 °C"},
               {"water.new_water", "2000 L"},
               {"water.mix_yield", "90 %"},
               {"water.match_within", "0.5"},
               {"water.older_tank.practical_salinity", "35"},
               {"water.now.practical_salinity", "35.2"}});
  return build;
}

td::verdict verdict_at(const char* now) {
  return answered(td::salinity_match, changed(two_waters(), {{"water.now.practical_salinity", now}})).verdict;
}

}  // namespace

TEST_CASE("salt.match: not asked without a reading of the new water") {
  plan::build build = two_waters();
  plan::clear(build, "water.now");
  CHECK(asked(td::salinity_match, build).empty());
}

TEST_CASE("salt.match: holds, is thin, does not hold; a margin of zero does not hold") {
  CHECK(verdict_at("35.4") == td::verdict::holds);
  CHECK(verdict_at("34.6") == td::verdict::holds);
  CHECK(verdict_at("35.5") == td::verdict::does_not_hold);  // exactly as far as may be
  CHECK(verdict_at("34.4") == td::verdict::does_not_hold);
  CHECK(verdict_at("35.000001") == td::verdict::holds);
  const auto f = answered(td::salinity_match, two_waters());
  TW_CHECK(balance, band(f, "left").central, 0.5 - 0.2, within(1e-12));
  // A hydrometer of 0.001 is good to 0.66 of salinity: near enough in the middle, not in its whole band.
  plan::build read = two_waters();
  plan::clear(read, "water.now");
  give(read, {{"water.now.hydrometer", "1.0245"}, {"water.now.temperature", "26 °C"}, {"water.now.scale", "60F/60F"}});
  const auto thin = answered(td::salinity_match, read);
  CHECK(thin.verdict == td::verdict::thin_margin);
  CHECK_FALSE(thin.measure_next.empty());
}

TEST_CASE("salt.match: the margin is near enough less how far apart, at each end of both bands") {
  plan::build read = two_waters();
  plan::clear(read, "water.now");
  give(read, {{"water.now.hydrometer", "1.0236"},
              {"water.now.temperature", "24 °C"},
              {"water.now.scale", "60F/60F"},
              {"water.now.division", "0.0005"}});
  const auto now = water::salinity_from_hydrometer(
      {.reading = 1.0236, .water = celsius(24.0), .instrument = {.scale = water::scale_60f_60f, .division = 0.0005}});
  const auto f = answered(td::salinity_match, read);
  TW_CHECK(by_hand, band(f, "left").low, 0.5 - (35.0 - now.low.value()), relative(1e-11));
  TW_CHECK(by_hand, band(f, "left").high, 0.5 - (35.0 - now.high.value()), relative(1e-11));
  CHECK(f.verdict == td::verdict::does_not_hold);
  CHECK(f.happens.find("fresher than the older tank") != std::string::npos);
}

TEST_CASE("salt.match: a correction's band holds readings, volume and yield") {
  // 33 to 35: mix = M (S2 - S1) / (1000 y - S2), salinities absolute.
  const auto up = answered(td::salinity_match, changed(two_waters(), {{"water.now.practical_salinity", "33"}}));
  const double g = 35.16504 / 35.0;
  const double water_mass = water::density(practical_salinity{33.0}, celsius(24.0)).value() * 2.0;
  TW_CHECK(balance, band(up, "mix").central, water_mass * g * 2.0 / (900.0 - g * 35.0), relative(1e-12));
  plan::build read = two_waters();
  plan::clear(read, "water.now");
  plan::clear(read, "water.mix_yield");
  give(read, {{"water.now.hydrometer", "1.0236"},
              {"water.now.temperature", "24 °C"},
              {"water.now.scale", "60F/60F"},
              {"water.now.division", "0.0005"},
              {"water.new_water", "2000 L +/- 3 %"}});
  const auto now = water::salinity_from_hydrometer(
      {.reading = 1.0236, .water = celsius(24.0), .instrument = {.scale = water::scale_60f_60f, .division = 0.0005}});
  const auto mix = band(answered(td::salinity_match, read), "mix");
  const auto add = [&](double litre, practical_salinity from, double yield) {
    return in_kilograms(water::raise_salinity({.volume = litres(litre),
                                               .from = from,
                                               .target = practical_salinity{35.0},
                                               .temperature = celsius(24.0),
                                               .mix_yield = fraction(yield)})
                            .mix);
  };
  TW_CHECK(by_hand, mix.low, add(1940.0, now.high, 1.0), relative(1e-12));
  TW_CHECK(by_hand, mix.high, add(2060.0, now.low, 0.85), relative(1e-12));
  // Where the bands meet, nothing may be needed at all.
  give(read, {{"water.now.hydrometer", "1.0245"}, {"water.now.division", "0.005"}});
  CHECK(band(answered(td::salinity_match, read), "mix").low == 0.0);
}

TEST_CASE("salt.match: saltier water is replaced by fresh water, and the salt is conserved") {
  const auto f = answered(td::salinity_match, changed(two_waters(), {{"water.now.practical_salinity", "37"}}));
  const double before = water::density(practical_salinity{37.0}, celsius(24.0)).value();
  const double after = water::density(practical_salinity{35.0}, celsius(24.0)).value();
  const double fresh = water::density(practical_salinity{0.0}, celsius(24.0)).value();
  const double out = band(f, "out").central, in = band(f, "in").central;
  TW_CHECK(balance, 37.0 * before * (2.0 - out), 35.0 * after * 2.0, relative(1e-12));
  TW_CHECK(balance, before * (2.0 - out) + fresh * in, after * 2.0, relative(1e-12));
  CHECK(f.happens.find("saltier") != std::string::npos);
}
