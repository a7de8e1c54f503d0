// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/air_rating.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/text/quantity.hpp>
#include <tankwright/text/written.hpp>

namespace tankwright::plan {

namespace detail {

inline constexpr std::string_view air_rating_expected =
    "temperature and relative humidity as in the small print of the label, such as \"30 C, 80 %\" or \"80 F, 60 %\"";

/// The published points by name, which carry what is known of their capacity; another point by its numbers.
[[nodiscard]] inline tankwright::room::rating_point rating_at(temperature t, relative_humidity h) {
  namespace tr = tankwright::room;
  for (const tr::rating_point& known : {tr::rated_80F_60, tr::rated_73F_60, tr::rated_65F_60, tr::rated_30C_80}) {
    const double apart = core::si_number(known.temperature) - core::si_number(t);
    if (std::fabs(apart) < 0.05 && std::fabs(known.humidity.value() - h.value()) < 0.0005) return known;
  }
  return {"as on the label", t, h};
}

}  // namespace detail

TANKWRIGHT_INLINE air_rating::air_rating(const tankwright::room::rating_point& at) : at_{at} {
  text_ = text::write_exactly(core::si_number(at.temperature), "°C", "temperature") + ", " +
          text::write_exactly(at.humidity.value(), "%", "relative_humidity");
}

TANKWRIGHT_INLINE void air_rating::read(std::string_view text) {
  const auto comma = text.find(',');
  if (comma == std::string_view::npos) {
    detail::refuse_text(text, "is not a temperature and a humidity", std::string{detail::air_rating_expected});
  }
  const auto t = text::parse<temperature>(text.substr(0, comma));
  const auto h = text::parse<relative_humidity>(text.substr(comma + 1));
  if (t < celsius(5.0) || t > celsius(45.0) || h < relative_humidity::from_percent(20.0)) {
    detail::refuse_text(text, "is no air that dehumidifiers are rated in", std::string{detail::air_rating_expected});
  }
  at_ = detail::rating_at(t, h);
  text_ = text;
}

TANKWRIGHT_INLINE void air_rating::clear() noexcept {
  at_.reset();
  text_.clear();
}

}  // namespace tankwright::plan
