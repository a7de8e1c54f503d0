// SPDX-License-Identifier: BSL-1.0
/// @file
/// The two temperatures that are printed on a hydrometer, as a value of a plan: "60F/60F".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/plan/value.hpp>
#include <tankwright/water/gravity_scale.hpp>
#include <tankwright/water/refractometer_scale.hpp>

namespace tankwright::plan {

/// "60F/60F", "25C/25C": the temperature of the sample, and that of the pure water it is compared with.
class gravity_scale_text final : public composite {
 public:
  gravity_scale_text() = default;
  gravity_scale_text(const water::gravity_scale& scale);

  [[nodiscard]] bool given() const noexcept override { return scale_.has_value(); }
  void read(std::string_view text) override;
  [[nodiscard]] std::string write() const override { return text_; }
  void clear() noexcept override;
  [[nodiscard]] std::string_view example() const noexcept override { return "60F/60F"; }

  /// The scale; throws invalid_input where it is not given.
  [[nodiscard]] water::gravity_scale get() const;
  [[nodiscard]] water::gravity_scale operator*() const { return get(); }
  explicit operator bool() const noexcept { return given(); }
  friend bool operator==(const gravity_scale_text& a, const gravity_scale_text& b) noexcept {
    if (!a.scale_ || !b.scale_) return a.given() == b.given();
    return a.scale_->sample.get() == b.scale_->sample.get() && a.scale_->reference.get() == b.scale_->reference.get();
  }

 private:
  std::optional<water::gravity_scale> scale_{};
  std::string text_{};  ///< as it was written
};

/// The scale of the instrument that a salinity was read with: the temperatures on a hydrometer, or the salt that a
/// refractometer is made for.
class instrument_scale final : public composite {
 public:
  instrument_scale() = default;
  instrument_scale(const water::gravity_scale& scale) : gravity_{scale} {}
  instrument_scale(tankwright::water::refractometer_scale salt) : salt_{salt} {}

  [[nodiscard]] bool given() const noexcept override { return gravity_.given() || salt_.has_value(); }
  void read(std::string_view text) override;
  [[nodiscard]] std::string write() const override;
  void clear() noexcept override;
  [[nodiscard]] std::string_view example() const noexcept override { return "60F/60F"; }

  [[nodiscard]] const gravity_scale_text& of_hydrometer() const noexcept { return gravity_; }
  [[nodiscard]] std::optional<water::refractometer_scale> of_refractometer() const noexcept { return salt_; }
  friend bool operator==(const instrument_scale& a, const instrument_scale& b) noexcept {
    return a.gravity_ == b.gravity_ && a.salt_ == b.salt_;
  }

 private:
  gravity_scale_text gravity_{};
  std::optional<water::refractometer_scale> salt_{};
};

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/gravity_scale_text.ipp>
#endif
