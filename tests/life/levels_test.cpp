// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/levels.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

TEST_CASE("levels: reference table") {
  const auto free = [](const twl::starting_value<water::free_ammonia>& limit) {
    return [&limit](const reference_row& row) {
      return in_milligrams_per_litre(row.has("as_nitrogen") ? limit.level.as_nitrogen() : limit.level.as_ammonia());
    };
  };
  check_rows(reference_rows("life/levels.csv"),
             {{"tankwright::life::nitrate_goitre",
               [](const reference_row&) { return in_milligrams_per_litre(twl::nitrate_goitre.level.as_nitrogen()); }},
              {"tankwright::life::iodide_least_for_sharks",
               [](const reference_row&) { return in_millimoles_per_litre(twl::iodide_least_for_sharks.level) * 1e3; }},
              {"tankwright::life::free_ammonia_four_days", free(twl::free_ammonia_four_days)},
              {"tankwright::life::free_ammonia_one_hour", free(twl::free_ammonia_one_hour)},
              {"tankwright::life::free_ammonia_harm", free(twl::free_ammonia_harm)}});
}

TEST_CASE("levels: each says what it is and where it comes from, and none is laxer than what is known to harm") {
  CHECK(twl::nitrate_limit_sharks.level < twl::nitrate_limit_fish.level);
  CHECK(twl::nitrate_limit_fish.level < twl::nitrate_goitre.level);
  CHECK(twl::total_ammonia_limit.source.read_as == standing::from_memory);
  CHECK(twl::free_ammonia_one_hour.source.read_as == standing::from_memory);
  CHECK(twl::nitrate_goitre.source.read_as == standing::published);
  CHECK(twl::levels_caution.text.find("veterinarian") != std::string_view::npos);
}
