// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <boost/random/sobol.hpp>
#include <cmath>
#include <limits>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/numerics/counter_random.hpp>
#include <tankwright/plan/walk.hpp>

namespace tankwright::decisions {

namespace detail {

/// A number of the plan that a sample moves. The pointers lead into the plan that was walked.
struct moving {
  plan::value_base* number;
  double nominal;
  plan::usual_doubt doubt;  ///< of kind distance, share or factor
  double low;               ///< ends of the key
  double high;
  std::size_t dimension;  ///< of the points; a list shares one

  /// The value at u from 0 to 1.
  [[nodiscard]] double at(double u) const noexcept {
    const double side = 2.0 * u - 1.0;
    double x = nominal;
    if (doubt.kind == plan::doubt_kind::distance) x += doubt.size * side;
    if (doubt.kind == plan::doubt_kind::share) x += doubt.size * nominal * side;
    if (doubt.kind == plan::doubt_kind::factor) x *= std::pow(doubt.size, side);
    return std::clamp(x, low, high);
  }
  [[nodiscard]] double half_width() const noexcept { return std::fabs(at(1.0) - nominal); }
};

/// Finds what is doubtful, in the order of the plan.
class doubt_finder final : public plan::walker {
 public:
  std::vector<moving> all{};
  std::vector<doubtful> named{};

 private:
  void take(const plan::key_info& key, plan::value_base& v, bool first) {
    const bool given = v.doubt().given;
    const plan::usual_doubt doubt =
        given ? plan::usual_doubt{plan::doubt_kind::distance, v.doubt().half_width} : key.doubt;
    if (!v.given() || doubt.kind == plan::doubt_kind::none || !(doubt.size > 0.0) || !std::isfinite(v.si())) return;
    if (first) named.push_back({path(key.name), 0.0, !given});
    // Ends that were given beyond the key's own are validate's affair.
    all.push_back({&v, v.si(), doubt, std::min(key.low, v.si()), std::max(key.high, v.si()), named.size() - 1});
    named.back().half_width = std::max(named.back().half_width, all.back().half_width());
  }
  void number(const plan::key_info& key, plan::value_base& v) override { take(key, v, true); }
  void numbers(const plan::key_info& key, plan::values_base& v) override {
    const std::size_t before = all.size();
    for (auto& item : v.items) take(key, item, all.size() == before);
  }
  void one_of(const plan::key_info&, plan::word_base&, std::span<const std::string_view>) override {}
  void yes_or_no(const plan::key_info&, plan::flag&) override {}
  void text(const plan::key_info&, std::string&) override {}
  void rating(const plan::key_info&, plan::composite&) override {}
};

/// Sobol points, each coordinate shifted by a number of its own round the unit interval. Always the same.
class shifted_points {
 public:
  explicit shifted_points(std::size_t dimensions) : engine_(std::max<std::size_t>(dimensions, 1)), shift_(dimensions) {
    const numerics::counter_random draw{20261128};
    for (std::size_t d = 0; d < dimensions; ++d) shift_[d] = draw.uniform(d);
  }
  /// The next point, into `u`.
  void next(std::vector<double>& u) {
    for (std::size_t d = 0; d < u.size(); ++d) {
      const double plain = static_cast<double>(engine_()) * 0x1p-64;
      const double moved = plain + shift_[d];
      u[d] = moved < 1.0 ? moved : moved - 1.0;
    }
  }

 private:
  boost::random::sobol engine_;
  std::vector<double> shift_;
};

/// Some decisions on a plan that was validated.
[[nodiscard]] inline std::vector<finding> answers_of(const plan::build& build,
                                                     std::span<const decision* const> some) {
  const situation s{build};
  answers out;
  out.reserve(some.size());
  for (const decision* d : some) out.run(*d, s);
  return out.take();
}

/// The numbers of an assessment as columns of a matrix: one for each number of each finding.
struct columns {
  struct finding_columns {
    std::size_t first = 0;  ///< column of its first number
    std::size_t answered = 0;
    std::size_t positive = 0;  ///< samples in which all its margins were positive
  };
  std::vector<finding_columns> findings{};
  std::vector<std::vector<double>> values{};
  std::vector<std::string_view> reasons{};  ///< each with a dimension of its own

  explicit columns(const std::vector<finding>& base, std::size_t samples) {
    for (const finding& f : base) {
      findings.push_back({values.size()});
      for (const number& n : f.numbers) {
        values.emplace_back().reserve(samples);
        if (!n.value.is_sharp() && reason_of(n.value.reason) == reasons.size()) reasons.push_back(n.value.reason);
      }
    }
  }
  /// Its place among the reasons; their count where it is new.
  [[nodiscard]] std::size_t reason_of(std::string_view reason) const noexcept {
    return static_cast<std::size_t>(std::find(reasons.begin(), reasons.end(), reason) - reasons.begin());
  }
  /// A number moved within the band of its law.
  [[nodiscard]] double moved(const amount& a, const double* u_of_reasons) const noexcept {
    const std::size_t r = reason_of(a.reason);
    if (a.is_sharp() || r == reasons.size()) return a.central;
    const double side = 2.0 * u_of_reasons[r] - 1.0;
    return a.central + side * (side < 0.0 ? a.central - a.low : a.high - a.central);
  }
  void add(const std::vector<finding>& base, const std::vector<finding>& sample, const double* u_of_reasons) {
    for (std::size_t k = 0; k < base.size(); ++k) {
      const finding* f = k < sample.size() && sample[k].id == base[k].id ? &sample[k] : nullptr;
      for (std::size_t i = 0; !f && i < sample.size(); ++i) {
        if (sample[i].id == base[k].id) f = &sample[i];
      }
      if (!f || f->verdict == verdict::not_enough_known) continue;
      ++findings[k].answered;
      bool positive = true;
      for (std::size_t i = 0; i < base[k].numbers.size(); ++i) {
        const number& wanted = base[k].numbers[i];
        const bool same = i < f->numbers.size() && f->numbers[i].id == wanted.id && f->numbers[i].place == wanted.place;
        const number* n = same ? &f->numbers[i] : f->find(wanted.id, wanted.place);
        if (!n) continue;
        const double x = moved(n->value, u_of_reasons);
        if (std::isfinite(x)) values[findings[k].first + i].push_back(x);
        if (wanted.as == role::margin && !(x > 0.0)) positive = false;
      }
      if (positive) ++findings[k].positive;
    }
  }
};

/// The value below which a part of a sample lies; the sample is reordered.
[[nodiscard]] inline double quantile(std::vector<double>& sample, double part) {
  const double place = part * static_cast<double>(sample.size() - 1);
  const auto below = static_cast<std::size_t>(place);
  std::nth_element(sample.begin(), sample.begin() + static_cast<std::ptrdiff_t>(below), sample.end());
  const double a = sample[below];
  if (below + 1 == sample.size()) return a;
  const double b = *std::min_element(sample.begin() + static_cast<std::ptrdiff_t>(below) + 1, sample.end());
  return a + (place - static_cast<double>(below)) * (b - a);
}

inline constexpr std::string_view band_of_doubts = "95 % of what it may be, with everything doubtful varying at once";
inline constexpr double most_refused = 0.01;

/// Give a finding its bands, its chance and its verdict.
[[nodiscard]] inline sampled_finding settle(finding& f, columns& all, std::size_t k, std::size_t samples) {
  const auto& own = all.findings[k];
  sampled_finding told{.id = f.id};
  if (f.verdict == verdict::not_enough_known) return told;
  told.refused = 1.0 - static_cast<double>(own.answered) / static_cast<double>(samples);
  if (told.refused > most_refused) {
    f.verdict = verdict::not_enough_known;
    f.note += (f.note.empty() ? "" : " ") + std::string{"Within what is doubtful it often cannot be worked out."};
    return told;
  }
  // What made the verdict graver than its margin stays.
  const number* deciding = f.margin();
  const verdict by_margin = deciding ? judge(deciding->value, f.useful) : verdict::for_information;
  const verdict apart = f.verdict > by_margin ? f.verdict : verdict::for_information;
  double low = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < f.numbers.size(); ++i) {
    std::vector<double>& sample = all.values[own.first + i];
    if (sample.empty()) continue;
    amount& a = f.numbers[i].value;
    const double bottom = quantile(sample, 0.025), top = quantile(sample, 0.975);
    if (bottom < top) {
      a.low = std::min(bottom, a.central);
      a.high = std::max(top, a.central);
      a.reason = band_of_doubts;
    }
    if (f.numbers[i].as == role::margin) low = std::min(low, a.low);
  }
  if (!deciding) return told;
  told.chance = static_cast<double>(own.positive) / static_cast<double>(own.answered);
  f.verdict = worse_of(apart, judge_by_chance(*told.chance, low, f.useful));
  return told;
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<doubtful> doubts_of(const plan::build& build) {
  detail::doubt_finder finder;
  plan::look_at(finder, build);
  return std::move(finder.named);
}

TANKWRIGHT_INLINE std::vector<sampled_finding> detail::sample(const plan::build& build, std::vector<finding>& base,
                                                              std::span<const decision* const> some,
                                                              const sampling& how) {
  plan::build moved = build;
  doubt_finder finder;
  describe(finder, moved);
  if (moved.plumbing) {  // these stand for doubts that here each area and level has of its own
    moved.plumbing->area_uncertainty.move_to(0.0);
    moved.plumbing->level_uncertainty.move_to(0.0);
  }
  columns all{base, how.samples};
  std::vector<double> u(finder.named.size() + all.reasons.size());
  shifted_points points{u.size()};
  for (std::size_t i = 0; i < how.samples; ++i) {
    points.next(u);
    for (const moving& m : finder.all) m.number->move_to(m.at(u[m.dimension]));
    all.add(base, answers_of(moved, some), u.data() + finder.named.size());
    if (how.progress && (i + 1) % 64 == 0) how.progress(i + 1, how.samples);
  }
  std::vector<sampled_finding> told;
  for (std::size_t k = 0; k < base.size(); ++k) told.push_back(settle(base[k], all, k, how.samples));
  return told;
}

TANKWRIGHT_INLINE banded_assessment assess_with_doubts(const plan::build& build, const sampling& how) {
  banded_assessment result{.all = assess(build)};
  result.doubts = doubts_of(build);
  result.sampled = detail::sample(build, result.all.findings, all_decisions(), how);
  return result;
}

}  // namespace tankwright::decisions
