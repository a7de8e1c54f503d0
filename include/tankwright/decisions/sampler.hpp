// SPDX-License-Identifier: BSL-1.0
/// @file
/// A plan moved within its doubts, many times: what bands, cures and shares are made from. Machinery; what a program
/// calls is in `bands.hpp`, `would_hold.hpp` and `measure_first.hpp`.
#pragma once

#include <algorithm>
#include <atomic>
#include <cmath>
#include <limits>
#include <memory>
#include <span>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/doubts.hpp>
#include <tankwright/decisions/first_screen.hpp>
#include <tankwright/decisions/laws.hpp>
#include <tankwright/decisions/shifted_points.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/numerics/normal.hpp>
#include <tankwright/plan/walk.hpp>

namespace tankwright::decisions::detail {

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
    if (key.doubt_asked || !v.given() || doubt.kind == plan::doubt_kind::none || !(doubt.size > 0.0) ||
        !std::isfinite(v.si()))
      return;
    if (first) named.push_back({path(key.name), 0.0, !given, key.means, key.quantity, v.si()});
    // Ends that were given beyond the key's own are validate's affair.
    all.push_back({&v, v.si(), doubt, std::min(key.low, v.si()), std::max(key.high, v.si()), named.size() - 1});
    if (const double half = all.back().half_width(); half > named.back().half_width) {  // of a list the widest
      named.back().half_width = half;
      named.back().value = v.si();
    }
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

/// Some decisions on a plan that was validated, with one situation for all.
[[nodiscard]] inline std::vector<finding> answers_of(const plan::build& build, std::span<const decision* const> some) {
  const situation s{build};
  answers out;
  out.reserve(some.size());
  for (const decision* d : some) out.run(*d, s);
  return out.take();
}

[[nodiscard]] inline const finding* find(const std::vector<finding>& all, std::string_view id) noexcept {
  for (const finding& f : all) {
    if (f.id == id) return &f;
  }
  return nullptr;
}

/// The number of a finding that stands where another finding of the same decision has it.
[[nodiscard]] inline const number* same_number(const finding& f, const finding& base, std::size_t i) noexcept {
  const number& wanted = base.numbers[i];
  const bool same = i < f.numbers.size() && f.numbers[i].id == wanted.id && f.numbers[i].place == wanted.place;
  return same ? &f.numbers[i] : f.find(wanted.id, wanted.place);
}

/// The laws whose bands are among some findings: each has one draw, for all numbers that it moves. A reason that no law
/// is known for has a draw of its own.
class law_draws {
 public:
  explicit law_draws(const std::vector<finding>& whole) {
    for (const finding& f : whole) {
      for (const number& n : f.numbers) {
        if (!n.value.is_sharp()) learn(n.value.reason);
      }
    }
  }
  /// How many draws there are.
  [[nodiscard]] std::size_t size() const noexcept { return drawn_.size(); }
  /// The laws, in the order of their draws; null: a reason without a law.
  [[nodiscard]] const std::vector<const law*>& all() const noexcept { return drawn_; }
  /// How far from its middle a law stands at u from 0 to 1: -1 and 1 are the ends of its band.
  [[nodiscard]] static double side_of(const law* l, double u) {
    if (!l || l->by == spread::even) return 2.0 * u - 1.0;
    return numerics::normal_quantile(std::clamp(u, 1e-12, 1.0 - 1e-12));
  }
  /// A number moved within the band of its law; `u` are the coordinates of the laws. Where a sample gives a law that
  /// the plan does not have, it moves with that of the plan.
  [[nodiscard]] double moved(const amount& a, std::string_view as_planned, std::span<const double> u) const {
    if (a.is_sharp()) return a.central;
    std::size_t d = place_of(a.reason);
    if (d == drawn_.size()) d = place_of(as_planned);
    if (d == drawn_.size()) return a.central;
    const double side = side_of(drawn_[d], u[d]);
    return a.central + side * (side < 0.0 ? a.central - a.low : a.high - a.central);
  }

 private:
  struct seen {
    std::string_view reason;
    std::size_t draw;
  };
  void learn(std::string_view reason) {
    for (const seen& s : seen_) {
      if (s.reason == reason) return;
    }
    const law* const l = law_of(reason);
    const auto same = l ? std::find(drawn_.begin(), drawn_.end(), l) : drawn_.end();
    seen_.push_back({reason, static_cast<std::size_t>(same - drawn_.begin())});
    if (same == drawn_.end()) drawn_.push_back(l);
  }
  /// The draw of a reason; their count where it has none.
  [[nodiscard]] std::size_t place_of(std::string_view reason) const noexcept {
    for (const seen& s : seen_) {
      if (s.reason == reason) return s.draw;
    }
    const law* const l = law_of(reason);
    return static_cast<std::size_t>((l ? std::find(drawn_.begin(), drawn_.end(), l) : drawn_.end()) - drawn_.begin());
  }
  std::vector<seen> seen_{};
  std::vector<const law*> drawn_{};
};

/// The numbers of some findings in every sample.
struct sample_table {
  enum : unsigned char { refused = 0, answered = 1, positive = 2 };
  struct of_finding {
    std::size_t first = 0;               ///< column of its first number
    std::vector<unsigned char> state{};  ///< of each sample; positive: all its margins were
  };
  std::vector<of_finding> findings{};
  std::vector<std::vector<double>> values{};  ///< a column for each number; NaN where a sample has none

  sample_table(const std::vector<finding>& base, std::size_t samples) {
    for (const finding& f : base) {
      findings.push_back({values.size(), std::vector<unsigned char>(samples, refused)});
      values.resize(values.size() + f.numbers.size(), std::vector<double>(samples, std::nan("")));
    }
  }
  void put(std::size_t sample, const std::vector<finding>& base, const std::vector<finding>& answers,
           const law_draws& laws, std::span<const double> u) {
    for (std::size_t k = 0; k < base.size(); ++k) {
      const finding* f = k < answers.size() && answers[k].id == base[k].id ? &answers[k] : find(answers, base[k].id);
      if (!f || f->verdict == verdict::not_enough_known) continue;
      bool all_positive = true;
      for (std::size_t i = 0; i < base[k].numbers.size(); ++i) {
        const number* n = same_number(*f, base[k], i);
        if (!n) continue;
        const double x = laws.moved(n->value, base[k].numbers[i].value.reason, u);
        if (std::isfinite(x)) values[findings[k].first + i][sample] = x;
        if (n->as == role::margin && !(x > 0.0)) all_positive = false;
      }
      findings[k].state[sample] = all_positive ? positive : answered;
    }
  }
};

/// Moves a plan and asks some decisions each time.
class sampler {
 public:
  /// `whole` are the findings of the whole plan by central values: the same plan has the same points, whatever part of
  /// it is asked.
  sampler(const plan::build& build, const std::vector<finding>& whole, std::size_t samples,
          std::shared_ptr<const shifted_points> points = {})
      : build_{&build}, laws_{whole}, points_{std::move(points)} {
    doubt_finder finder;
    plan::look_at(finder, build);
    named_ = std::move(finder.named);
    const std::size_t dimensions = named_.size() + laws_.size();
    if (!points_ || points_->dimensions() != dimensions || points_->size() != samples) {
      points_ = std::make_shared<const shifted_points>(dimensions, samples);
    }
  }
  [[nodiscard]] const std::vector<doubtful>& doubts() const noexcept { return named_; }
  [[nodiscard]] const law_draws& laws() const noexcept { return laws_; }
  [[nodiscard]] const std::shared_ptr<const shifted_points>& points() const noexcept { return points_; }

  /// What some decisions answer with everything in the middle of its doubt, and with each doubt `d` in turn at two
  /// points beside it: `use(d, below, above)`. What is not given moves nothing.
  template <class Use>
  void one_at_a_time(std::span<const decision* const> some, double aside, const executor& by, Use use) const {
    const auto one = [&](std::size_t d) {
      plan::build moved = *build_;
      doubt_finder finder;
      describe(finder, moved);
      no_doubts_of_engines(moved, finder);
      const auto at = [&](double u) {
        for (const moving& m : finder.all) {
          if (m.dimension == d) m.number->move_to(m.at(u));
        }
        not_past_each_other(moved);
        return answers_of(moved, some);
      };
      const std::vector<finding> below = at(0.5 - aside);
      use(d, below, at(0.5 + aside));
    };
    if (by) return by(named_.size(), one);
    for (std::size_t d = 0; d < named_.size(); ++d) one(d);
  }
  [[nodiscard]] std::vector<finding> in_the_middle(std::span<const decision* const> some) const {
    plan::build moved = *build_;
    doubt_finder finder;
    describe(finder, moved);
    no_doubts_of_engines(moved, finder);
    return answers_of(moved, some);
  }

  /// Fill the rows `which` of a table. A decision with fewer samples of its own is asked in the first ones only.
  void run(sample_table& into, const std::vector<finding>& base, std::span<const decision* const> some,
           std::span<const std::size_t> which, const sampling& how) const {
    constexpr std::size_t part = 32;
    const std::size_t parts = (which.size() + part - 1) / part;
    std::atomic<std::size_t> done{0};
    const auto one = [&](std::size_t p) {
      plan::build moved = *build_;
      doubt_finder finder;
      describe(finder, moved);
      no_doubts_of_engines(moved, finder);
      std::vector<const decision*> asked;
      const std::size_t end = std::min(which.size(), (p + 1) * part);
      for (std::size_t j = p * part; j < end; ++j) {
        const std::span<const double> u = (*points_)[which[j]];
        for (const moving& m : finder.all) m.number->move_to(m.at(u[m.dimension]));
        not_past_each_other(moved);
        asked.clear();
        for (const decision* d : some) {
          if (d->samples == 0 || which[j] < d->samples) asked.push_back(d);
        }
        into.put(which[j], base, answers_of(moved, asked), laws_, u.subspan(named_.size()));
      }
      const std::size_t now = done += end - p * part;
      if (how.progress) how.progress(now, which.size());
    };
    if (how.run) return how.run(parts, one);
    for (std::size_t p = 0; p < parts; ++p) one(p);
  }

 private:
  /// A running level that doubts move past the rim stands at it: nothing is left there, and no engine takes more.
  static void not_past_each_other(plan::build& moved) {
    if (!moved.plumbing || !moved.plumbing->sump) return;
    plan::sump& s = *moved.plumbing->sump;
    if (s.rim.known() && s.running_level.known() && s.running_level.si() > s.rim.si()) {
      s.running_level.move_to(s.rim.si());
    }
  }

  /// What a sample moves is known exactly in it: an engine that takes the doubt of a number would count it twice.
  static void no_doubts_of_engines(plan::build& moved, const doubt_finder& found) {
    for (const moving& m : found.all) m.number->know_exactly();
    if (!moved.water) return;
    constexpr double next_to_nothing = 1e-9;  // the engines want a division
    if (moved.water->older_tank) moved.water->older_tank->division.move_to(next_to_nothing);
    if (moved.water->now) moved.water->now->division.move_to(next_to_nothing);
  }

  const plan::build* build_;
  law_draws laws_;
  std::vector<doubtful> named_{};
  std::shared_ptr<const shifted_points> points_;
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

/// The samples of a finding that have the least room: they alone decide whether it holds at a neighbouring value.
[[nodiscard]] inline std::vector<std::size_t> lowest_of(const finding& f, const sample_table& table, std::size_t k,
                                                        std::size_t samples) {
  std::vector<double> room(samples, std::numeric_limits<double>::infinity());
  for (std::size_t i = 0; i < f.numbers.size(); ++i) {
    if (f.numbers[i].as != role::margin) continue;
    const std::vector<double>& all = table.values[table.findings[k].first + i];
    double mean = 0.0, square = 0.0, count = 0.0;
    for (const double x : all) {
      if (std::isfinite(x)) {
        mean += x;
        square += x * x;
        count += 1.0;
      }
    }
    if (count == 0.0) continue;
    mean /= count;
    const double spread = std::sqrt(std::fmax(square / count - mean * mean, 1e-300));
    for (std::size_t s = 0; s < samples; ++s) room[s] = std::fmin(room[s], all[s] / spread);  // a NaN is left out
  }
  std::vector<std::size_t> order(samples);
  for (std::size_t s = 0; s < samples; ++s) order[s] = s;
  const std::size_t few = std::max<std::size_t>(samples / 8, 1);
  std::partial_sort(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(few), order.end(),
                    [&](std::size_t a, std::size_t b) { return room[a] < room[b]; });
  order.resize(few);
  return order;
}

/// Give a finding its bands, its chance and its verdict.
[[nodiscard]] inline sampled_finding settle(finding& f, const sample_table& table, std::size_t k, std::size_t samples) {
  const auto& own = table.findings[k];
  sampled_finding told{.id = f.id, .samples = samples};
  if (f.verdict == verdict::not_enough_known) return told;
  const auto count = [&](unsigned char least) {
    return static_cast<double>(std::count_if(own.state.begin(),
                                             own.state.begin() + static_cast<std::ptrdiff_t>(samples),
                                             [&](unsigned char s) { return s >= least; }));
  };
  const double answered = count(sample_table::answered);
  told.refused = 1.0 - answered / static_cast<double>(samples);
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
  std::vector<double> sample;
  for (std::size_t i = 0; i < f.numbers.size(); ++i) {
    sample.clear();
    for (const double x : table.values[own.first + i]) {
      if (std::isfinite(x)) sample.push_back(x);
    }
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
  if (const number* told_of = deciding ? deciding : headline_of(f)) {
    const auto i = static_cast<std::size_t>(told_of - f.numbers.data());
    double sum = 0.0, square = 0.0, n = 0.0;
    for (const double x : table.values[own.first + i]) {
      if (std::isfinite(x)) {
        sum += x;
        n += 1.0;
      }
    }
    if (n > 0.0) told.mean = sum / n;
    for (const double x : table.values[own.first + i]) {
      if (std::isfinite(x)) square += (x - told.mean) * (x - told.mean);
    }
    if (n > 1.0) told.spread = std::sqrt(square / (n - 1.0));
  }
  if (!deciding) return told;
  told.chance = count(sample_table::positive) / answered;
  f.verdict = worse_of(apart, judge_by_chance(*told.chance, low, f.useful));
  told.lowest = lowest_of(f, table, k, samples);
  return told;
}

/// Whether so many of the first samples fail that no others can make up for them: `settle` would not say that it holds.
[[nodiscard]] inline bool cannot_hold(const std::vector<unsigned char>& state, std::size_t seen) {
  const auto many = [&](unsigned char wanted) {
    return static_cast<double>(std::count(state.begin(), state.begin() + static_cast<std::ptrdiff_t>(seen), wanted));
  };
  const double samples = static_cast<double>(state.size());
  return many(sample_table::answered) > (1.0 - least_chance_to_hold) * samples ||
         many(sample_table::refused) > most_refused * samples;
}

[[nodiscard]] inline std::size_t samples_of(std::string_view id, std::size_t samples) noexcept {
  for (const decision* d : all_decisions()) {
    if (d->id == id && d->samples != 0) return std::min(d->samples, samples);
  }
  return samples;
}

[[nodiscard]] inline std::vector<std::size_t> first_numbers(std::size_t count) {
  std::vector<std::size_t> all(count);
  for (std::size_t i = 0; i < count; ++i) all[i] = i;
  return all;
}

}  // namespace tankwright::decisions::detail
