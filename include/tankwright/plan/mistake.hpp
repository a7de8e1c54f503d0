// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is wrong with a plan, as data: all of it at once, whoever filled the plan.
#pragma once

#include <string>
#include <tankwright/core/errors.hpp>
#include <utility>
#include <vector>

namespace tankwright::plan {

/// One thing that is wrong. `path` names the key as `plan::set` takes it: "plumbing.return[left].below_edge".
struct mistake {
  std::string path;
  std::string reason;     ///< reads on from the path: "2 m is below the floor of the display"
  std::string clashes{};  ///< path of the other key that it cannot be true with; empty: none

  friend bool operator==(const mistake&, const mistake&) = default;
};

/// A plan that cannot be assessed, thrown by `decisions::assess`; the mistakes are those of `validate`.
class invalid_plan : public invalid_input {
 public:
  explicit invalid_plan(std::vector<mistake> all)
      : invalid_input{line_of(all), diagnosis_of(all)}, mistakes_{std::move(all)} {}
  [[nodiscard]] const std::vector<mistake>& mistakes() const noexcept { return mistakes_; }

 private:
  [[nodiscard]] static std::string line_of(const std::vector<mistake>& all) {
    std::string line = "the plan cannot be assessed";
    for (const mistake& m : all) {
      line += "\n  " + m.path + (m.path.empty() ? "" : ": ") + m.reason;
      if (!m.clashes.empty()) line += " (" + m.clashes + ")";
    }
    return line;
  }
  [[nodiscard]] static diagnosis diagnosis_of(const std::vector<mistake>& all) {
    constexpr double none = __builtin_nan("");
    return {"tankwright::plan::validate", all.empty() ? "" : all.front().path, none, none, none, {}, {}};
  }
  std::vector<mistake> mistakes_;
};

}  // namespace tankwright::plan
