// SPDX-License-Identifier: BSL-1.0
/// @file
/// The air for which the label of a dehumidifier holds, as a value of a plan: "30 C, 80 %".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/plan/value.hpp>
#include <tankwright/room/rating_point.hpp>

namespace tankwright::plan {

/// "30 C, 80 %": temperature and relative humidity.
class air_rating final : public composite {
 public:
  air_rating() = default;
  air_rating(const tankwright::room::rating_point& at);

  [[nodiscard]] bool given() const noexcept override { return at_.has_value(); }
  void read(std::string_view text) override;
  [[nodiscard]] std::string write() const override { return text_; }
  void clear() noexcept override;
  [[nodiscard]] std::string_view example() const noexcept override { return "30 C, 80 %"; }

  /// The rating point; that of most labels, 80 F and 60 %, where it is not given.
  [[nodiscard]] tankwright::room::rating_point get() const noexcept {
    return at_.value_or(tankwright::room::rated_80F_60);
  }
  friend bool operator==(const air_rating& a, const air_rating& b) noexcept {
    if (!a.at_ || !b.at_) return a.given() == b.given();
    return a.at_->temperature == b.at_->temperature && a.at_->humidity == b.at_->humidity;
  }

 private:
  std::optional<tankwright::room::rating_point> at_{};
  std::string text_{};  ///< as it was written
};

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/air_rating.ipp>
#endif
