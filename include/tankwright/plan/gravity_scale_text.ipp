// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/gravity_scale_text.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/text/quantity.hpp>
#include <tankwright/text/written.hpp>

namespace tankwright::plan {

namespace detail {

inline constexpr std::string_view gravity_scale_expected =
    "two temperatures as they are printed on it, such as \"60F/60F\" or \"25C/25C\"";
/// The words of `water::refractometer_scale`, in its order.
inline constexpr std::string_view refractometer_scale_words[] = {"seawater", "sodium chloride"};

/// One of the two temperatures; hydrometers are made for liquid water.
[[nodiscard]] inline temperature scale_temperature(std::string_view whole, std::string_view part) {
  const auto read = text::parse<temperature>(part);
  if (read < celsius(0.0) || read > celsius(100.0)) {
    refuse_text(whole, "has a temperature at which water is not liquid", std::string{gravity_scale_expected});
  }
  return read;
}

}  // namespace detail

TANKWRIGHT_INLINE gravity_scale_text::gravity_scale_text(const water::gravity_scale& scale) : scale_{scale} {
  const auto written = [](temperature t) { return text::write_exactly(core::si_number(t), "°C", "temperature"); };
  text_ = written(scale.sample) + "/" + written(scale.reference);
}

TANKWRIGHT_INLINE void gravity_scale_text::read(std::string_view text) {
  const auto slash = text.find('/');
  if (slash == std::string_view::npos) {
    detail::refuse_text(text, "is not two temperatures", std::string{detail::gravity_scale_expected});
  }
  const water::gravity_scale read{detail::scale_temperature(text, text.substr(0, slash)),
                                  detail::scale_temperature(text, text.substr(slash + 1))};
  text_ = text;
  scale_ = read;
}

TANKWRIGHT_INLINE void gravity_scale_text::clear() noexcept {
  scale_.reset();
  text_.clear();
}

TANKWRIGHT_INLINE water::gravity_scale gravity_scale_text::get() const {
  if (!scale_) detail::not_given("the scale of a hydrometer");
  return *scale_;
}

TANKWRIGHT_INLINE void instrument_scale::read(std::string_view text) {
  for (std::size_t i = 0; i < std::size(detail::refractometer_scale_words); ++i) {
    if (text != detail::refractometer_scale_words[i]) continue;
    salt_ = static_cast<water::refractometer_scale>(i);
    gravity_.clear();
    return;
  }
  if (text.find('/') == std::string_view::npos) {
    detail::refuse_text(text, "is no scale",
                        std::string{detail::gravity_scale_expected} +
                            " for a hydrometer; \"seawater\" or \"sodium chloride\" for a "
                            "refractometer");
  }
  gravity_.read(text);
  salt_.reset();
}

TANKWRIGHT_INLINE std::string instrument_scale::write() const {
  if (salt_) return std::string{detail::refractometer_scale_words[static_cast<std::size_t>(*salt_)]};
  return gravity_.write();
}

TANKWRIGHT_INLINE void instrument_scale::clear() noexcept {
  gravity_.clear();
  salt_.reset();
}

}  // namespace tankwright::plan
