// SPDX-License-Identifier: BSL-1.0
/// @file
/// The search behind `would_hold.hpp`: what the builder can set, and how far it must move until a finding holds.
/// Machinery.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>
#include <optional>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/cure.hpp>
#include <tankwright/decisions/handles.hpp>
#include <tankwright/decisions/sampler.hpp>
#include <tankwright/plan/validate.hpp>

namespace tankwright::decisions::detail {

/// A finding that should hold, and what its margins need by central values: the doubts take the rest.
struct wanted_finding {
  const decision* asked;
  const finding* judged;  ///< with its bands
  struct need {
    double least;  ///< of the central value
    double scale;  ///< what it is short of now, at least something
  };
  std::vector<need> needs{};  ///< one for each number; of numbers that are no margin unused
  std::vector<std::size_t> lowest{};

  wanted_finding(const decision& d, const finding& f, std::vector<std::size_t> samples)
      : asked{&d}, judged{&f}, lowest{std::move(samples)} {
    learn(f);
  }
  /// What the doubts take from each margin, as a finding with bands says it.
  void learn(const finding& f) {
    needs.assign(judged->numbers.size(), {0.0, 1.0});
    for (std::size_t i = 0; i < judged->numbers.size(); ++i) {
      const number* n = same_number(f, *judged, i);
      if (!n || n->as != role::margin) continue;
      const double useful = n->value.quantity == f.margin()->value.quantity ? f.useful : 0.0;
      needs[i].least = useful + (n->value.central - n->value.low);
      needs[i].scale = std::fmax(std::fabs(judged->numbers[i].value.central - needs[i].least), 1e-12);
    }
  }
  /// Above zero where it holds, about -1 as the plan stands; NaN where there is no answer.
  [[nodiscard]] double score(const finding* f) const noexcept {
    if (!f || !f->margin() || f->verdict == verdict::not_enough_known) return std::nan("");
    double least = std::numeric_limits<double>::infinity();
    for (const number& n : f->numbers) {
      if (n.as != role::margin) continue;
      const number* base = nullptr;
      for (std::size_t i = 0; i < judged->numbers.size(); ++i) {
        if (judged->numbers[i].id != n.id || judged->numbers[i].place != n.place) continue;
        base = &judged->numbers[i];
        least = std::fmin(least, (n.value.central - needs[i].least) / needs[i].scale);
      }
      if (!base) least = std::fmin(least, n.value.central);
    }
    return least;
  }
};

/// A value of a handle at which a finding should hold, by central values.
struct lead {
  std::size_t handle;
  double value;
  double size;
  bool spoils;  ///< another finding, by central values
};

/// Looks for values that make findings hold, on a plan of its own that it moves and puts back.
class cure_search {
 public:
  cure_search(const plan::build& build, const search& how) : plan_{build}, how_{how}, before_{assess(build).findings} {
    handle_finder finder;
    describe(finder, plan_);
    finder.add_lists();
    for (const decision* d : all_decisions()) {
      if (d->samples == 0) quick_.push_back(d);
    }
    for (handle& h : finder.all) {
      if (!words_of_cure(h.path).empty()) handles_.push_back(std::move(h));
    }
  }
  [[nodiscard]] const std::vector<handle>& handles() const noexcept { return handles_; }
  [[nodiscard]] const std::vector<finding>& before() const noexcept { return before_; }

  /// One grid for each handle: the scores of all findings along it. `of[f][h]` is empty where f does not depend on h.
  struct grids {
    std::vector<std::vector<double>> values;               ///< of each handle
    std::vector<std::vector<std::vector<double>>> scores;  ///< of each finding, handle, value
    std::vector<double> now;                               ///< of each finding
  };
  [[nodiscard]] grids look_along(const std::vector<wanted_finding>& wanted, std::span<const std::size_t> some) {
    grids g;
    g.values.resize(handles_.size());
    g.scores.assign(wanted.size(), std::vector<std::vector<double>>(handles_.size()));
    g.now = scores(wanted);
    for (const std::size_t h : some) {
      const keeper keep{handles_[h]};
      const std::vector<double> all = handles_[h].candidates(how_.grid);
      // Both ends and the middle tell on what it has an influence at all.
      std::vector<char> moves(wanted.size(), 0);
      for (const double x : {all.front(), all[all.size() / 2], all.back()}) {
        handles_[h].set(x);
        const std::vector<double> there = possible() ? scores(wanted) : std::vector<double>{};
        for (std::size_t f = 0; f < there.size(); ++f) moves[f] |= std::isfinite(there[f]) && there[f] != g.now[f];
      }
      std::vector<const wanted_finding*> asked;
      std::vector<std::size_t> place;
      for (std::size_t f = 0; f < wanted.size(); ++f) {
        if (!moves[f]) continue;
        asked.push_back(&wanted[f]);
        place.push_back(f);
      }
      if (asked.empty()) continue;
      g.values[h] = all;
      for (const std::size_t f : place) g.scores[f][h].assign(all.size(), std::nan(""));
      for (std::size_t i = 0; i < all.size(); ++i) {
        handles_[h].set(all[i]);
        if (!possible()) continue;
        const std::vector<double> there = scores(asked);
        for (std::size_t a = 0; a < asked.size(); ++a) g.scores[place[a]][h][i] = there[a];
      }
    }
    return g;
  }

  /// Where a handle makes a finding hold by central values, nearest to the plan; towards below and towards above.
  [[nodiscard]] std::vector<lead> leads(const wanted_finding& w, std::size_t h, const std::vector<double>& values,
                                        const std::vector<double>& scores) {
    std::vector<lead> found;
    if (scores.empty()) return found;
    const handle& by = handles_[h];
    const keeper keep{by};
    const double now = by.known() ? by.now() : values.front();
    for (const bool up : {false, true}) {
      if (!by.known() && !up) continue;
      // Outwards from the plan.
      std::vector<std::size_t> way;
      for (std::size_t i = 0; i < values.size(); ++i) {
        if (up ? values[i] > now || (!by.known() && values[i] == now) : values[i] < now) way.push_back(i);
      }
      if (!up) std::reverse(way.begin(), way.end());
      double fails = now;
      std::optional<double> holds;
      std::size_t best = values.size();
      for (const std::size_t i : way) {
        if (scores[i] > 0.0) {
          holds = values[i];
          break;
        }
        if (std::isfinite(scores[i]) && (best == values.size() || scores[i] > scores[best])) best = i;
        fails = values[i];
      }
      if (!holds && by.key.sizes.empty() && best < values.size()) {
        holds = between(w, by, values, best, now, fails);
      }
      if (!holds) continue;
      double x = *holds;
      if (by.key.sizes.empty() && by.known()) x = nearest(w, by, fails, x);
      by.set(x);
      found.push_back({h, x, by.change_to(x), !moved_for_the_worse(w).empty()});
    }
    return found;
  }

  /// A lead made sure of: by its chance, on the steps of the key, the step nearest to the plan.
  [[nodiscard]] std::optional<cure> made_sure(wanted_finding w, const lead& l) {
    const handle& by = handles_[l.handle];
    const keeper keep{by};
    const std::string from = by.text();
    const bool known = by.known();
    const double now = by.now();
    const std::optional<double> value = by.key.sizes.empty() && known ? on_a_step(w, by, now, l.value) : as_sold(w, by, l.value);
    if (!value) return std::nullopt;
    by.set(*value);
    change c{by.path, from, by.text(), by.key.quantity, known ? std::optional<double>{now} : std::nullopt, *value};
    std::vector<change> all;
    all.push_back(std::move(c));
    return told(w, std::move(all), l.size);
  }

  /// Two handles together: where one is as far as the grid has it, how far must the other go?
  [[nodiscard]] std::optional<cure> pair(const wanted_finding& w, std::size_t a, std::size_t b) {
    const handle &first = handles_[a], &second = handles_[b];
    if (first.path == second.path) return std::nullopt;
    const keeper keep_first{first}, keep_second{second};
    struct point {
      double x, y, size;
    };
    std::vector<point> points;
    for (const double x : thinned(first.candidates(how_.grid))) {
      for (const double y : thinned(second.candidates(how_.grid))) {
        points.push_back({x, y, first.change_to(x) + second.change_to(y)});
      }
    }
    std::stable_sort(points.begin(), points.end(), [](const point& p, const point& q) { return p.size < q.size; });
    const std::string from_first = first.text(), from_second = second.text();
    const bool first_known = first.known(), second_known = second.known();
    const double first_now = first.now(), second_now = second.now();
    int tried = 0;
    for (const point& p : points) {
      first.set(p.x);
      second.set(p.y);
      if (!possible() || !(score(w) > 0.0) || ++tried > 3) continue;
      if (!first.was.empty() && !second.was.empty()) {
        const std::optional<tail> seen = by_the_lowest(w, w.lowest);
        if (!seen || !seen->holds) continue;
      }
      if (!holds_by_chance(w, nullptr)) continue;
      std::vector<change> all;
      all.push_back({first.path, from_first, first.text(), first.key.quantity,
                     first_known ? std::optional<double>{first_now} : std::nullopt, p.x});
      all.push_back({second.path, from_second, second.text(), second.key.quantity,
                     second_known ? std::optional<double>{second_now} : std::nullopt, p.y});
      return told(w, std::move(all), p.size);
    }
    return std::nullopt;
  }

 private:
  /// Puts the numbers of a handle back, at the latest when it goes.
  class keeper {
   public:
    explicit keeper(const handle& h) : handle_{&h} {
      for (const plan::value_base* v : h.numbers) kept_.push_back(*v);
    }
    keeper(const keeper&) = delete;
    keeper& operator=(const keeper&) = delete;
    ~keeper() { back(); }
    void back() const {
      for (std::size_t i = 0; i < kept_.size(); ++i) *handle_->numbers[i] = kept_[i];
    }

   private:
    const handle* handle_;
    std::vector<plan::value_base> kept_{};
  };

  [[nodiscard]] bool possible() const { return plan::validate(plan_).empty(); }
  [[nodiscard]] std::vector<double> scores(const std::vector<wanted_finding>& wanted) const {
    std::vector<const wanted_finding*> all;
    for (const wanted_finding& w : wanted) all.push_back(&w);
    return scores(all);
  }
  [[nodiscard]] std::vector<double> scores(const std::vector<const wanted_finding*>& wanted) const {
    std::vector<const decision*> asked;
    for (const wanted_finding* w : wanted) asked.push_back(w->asked);
    const std::vector<finding> there = answers_of(plan_, asked);
    std::vector<double> all;
    for (const wanted_finding* w : wanted) all.push_back(w->score(find(there, w->asked->id)));
    return all;
  }
  [[nodiscard]] double score(const wanted_finding& w) const { return scores(std::vector<const wanted_finding*>{&w}).front(); }

  /// From where it fails towards where it holds: the value nearest to failing that still holds, by central values.
  [[nodiscard]] double nearest(const wanted_finding& w, const handle& by, double fails, double holds) const {
    const double step = by.step();
    while (std::fabs(holds - fails) > 0.25 * step) {
      const double middle = 0.5 * (fails + holds);
      by.set(middle);
      (possible() && score(w) > 0.0 ? holds : fails) = middle;
    }
    return holds;
  }
  /// A window between two values of the grid: climb from the best of them, and stop where it holds.
  [[nodiscard]] std::optional<double> between(const wanted_finding& w, const handle& by, const std::vector<double>& values,
                                              std::size_t best, double now, double& fails) const {
    double low = values[best == 0 ? 0 : best - 1], high = values[std::min(best + 1, values.size() - 1)];
    (values[best] > now ? low : high) = values[best] > now ? std::fmax(low, now) : std::fmin(high, now);
    const auto at = [&](double x) {
      by.set(x);
      const double s = possible() ? score(w) : std::nan("");
      return std::isfinite(s) ? s : -std::numeric_limits<double>::infinity();
    };
    constexpr double golden = 0.6180339887498949;
    double a = high - golden * (high - low), b = low + golden * (high - low);
    double at_a = at(a), at_b = at(b);
    for (int i = 0; i < 12; ++i) {
      if (at_a > 0.0 || at_b > 0.0) {
        fails = values[best];
        return at_a > 0.0 ? a : b;
      }
      if (at_a > at_b) {
        high = b, b = a, at_b = at_a;
        at_a = at(a = high - golden * (high - low));
      } else {
        low = a, a = b, at_a = at_b;
        at_b = at(b = low + golden * (high - low));
      }
    }
    return std::nullopt;
  }
  [[nodiscard]] static std::vector<double> thinned(const std::vector<double>& all) {
    std::vector<double> some;
    const std::size_t stride = std::max<std::size_t>(1, all.size() / 8);
    for (std::size_t i = 0; i < all.size(); i += stride) some.push_back(all[i]);
    if (some.back() != all.back()) some.push_back(all.back());
    return some;
  }
  [[nodiscard]] double snapped(const handle& by, double now, double x) const {
    const double step = by.step();
    const double away = x > now ? std::ceil(x / step - 1e-9) : std::floor(x / step + 1e-9);
    return std::clamp(away * step, by.key.choose_low, by.key.choose_high);
  }

  /// All samples of one finding on the plan as it stands.
  struct sampled {
    finding settled;
    sampled_finding told;
  };
  [[nodiscard]] std::optional<sampled> sample(const wanted_finding& w) {
    if (!possible()) return std::nullopt;
    const std::vector<finding> whole = answers_of(plan_, all_decisions());  // for the reasons of all bands
    const finding* own = find(whole, w.asked->id);
    if (!own || !own->margin()) return std::nullopt;
    std::vector<finding> base{*own};
    const sampler moves{plan_, whole, how_.samples, points_};
    points_ = moves.points();
    sample_table table{base, how_.samples};
    moves.run(table, base, {&w.asked, 1}, first_numbers(how_.samples), {.run = how_.run});
    sampled_finding told = settle(base.front(), table, 0, how_.samples);
    return sampled{std::move(base.front()), std::move(told)};
  }
  /// What the samples with the least room say of the plan as it stands.
  struct tail {
    bool holds;
    finding seen;  ///< with the low ends of its margins
  };
  [[nodiscard]] std::optional<tail> by_the_lowest(const wanted_finding& w, const std::vector<std::size_t>& lowest) {
    if (!possible()) return std::nullopt;
    const std::vector<finding> whole = answers_of(plan_, all_decisions());  // for the reasons of all bands
    const finding* own = find(whole, w.asked->id);
    if (!own || !own->margin()) return std::nullopt;
    const std::vector<finding> base{*own};
    const sampler moves{plan_, whole, how_.samples, points_};
    points_ = moves.points();
    sample_table table{base, how_.samples};
    moves.run(table, base, {&w.asked, 1}, lowest, {.run = how_.run});
    const double samples = static_cast<double>(how_.samples);
    std::size_t bad = 0;
    for (const std::size_t k : lowest) bad += table.findings[0].state[k] != sample_table::positive;
    tail t{false, *own};
    double low = std::numeric_limits<double>::infinity();
    const double at = 0.025 * (samples - 1.0);
    const auto place = static_cast<std::size_t>(at);
    for (std::size_t i = 0; i < base[0].numbers.size(); ++i) {
      if (base[0].numbers[i].as != role::margin) continue;
      std::vector<double> found;
      for (const std::size_t k : lowest) {
        if (const double x = table.values[i][k]; std::isfinite(x)) found.push_back(x);
      }
      if (found.size() <= place + 1) return std::nullopt;
      std::sort(found.begin(), found.end());
      amount& a = t.seen.numbers[i].value;
      a.low = std::fmin(a.central, found[place] + (at - static_cast<double>(place)) * (found[place + 1] - found[place]));
      low = std::fmin(low, a.low);
    }
    chance_ = 1.0 - static_cast<double>(bad) / samples;
    t.holds = judge_by_chance(chance_, low, own->useful) == verdict::holds;
    return t;
  }
  /// Whether it holds as the plan stands; what was found goes to `seen`.
  [[nodiscard]] bool holds_by_chance(const wanted_finding& w, std::optional<sampled>* seen) {
    std::optional<sampled> here = sample(w);
    const bool holds = here && here->settled.verdict == verdict::holds;
    chance_ = here ? here->told.chance.value_or(0.0) : 0.0;
    if (seen) *seen = std::move(here);
    return holds;
  }
  /// The step nearest to the plan at which it holds by its chance. While it looks, it asks the samples with the least
  /// room alone; where they fail it learns what the doubts take, and goes on from there. All samples have the last word.
  [[nodiscard]] std::optional<double> on_a_step(wanted_finding& w, const handle& by, double now, double x) {
    const double step = by.step();
    const double outwards = x > now ? step : -step;
    const double most = outwards > 0.0 ? by.key.choose_high : by.key.choose_low;
    const auto beyond = [&](double value) { return (value - most) * outwards > 0.0; };
    double at = snapped(by, now, x);
    std::vector<std::size_t> lowest = w.lowest;
    for (int tries = 0; tries < 5; ++tries) {
      by.set(at);
      std::optional<tail> seen = by_the_lowest(w, lowest);
      if (!seen) return std::nullopt;
      if (seen->holds) {
        for (int back = 0; back < 4 && (at - outwards - now) * outwards > 0.0; ++back) {
          by.set(at - outwards);
          const std::optional<tail> less = by_the_lowest(w, lowest);
          if (!less || !less->holds) break;
          at -= outwards;
        }
        by.set(at);
        std::optional<sampled> whole;
        if (holds_by_chance(w, &whole)) return at;
        if (!whole) return std::nullopt;
        lowest = whole->told.lowest;
        if (beyond(at += outwards)) return std::nullopt;
        continue;
      }
      w.learn(seen->seen);
      by.set(most);
      double next = at + outwards;
      if (possible() && score(w) > 0.0) next = snapped(by, now, nearest(w, by, at, most));
      at = (next - at) * outwards > 0.0 ? next : at + outwards;
      if (beyond(at)) return std::nullopt;
    }
    return std::nullopt;
  }
  /// The size itself, or the next ones outwards.
  [[nodiscard]] std::optional<double> as_sold(wanted_finding& w, const handle& by, double x) {
    const std::vector<double> all = by.candidates(how_.grid);
    const bool up = !by.known() || x > by.now();
    std::vector<double> way;
    for (const double y : all) {
      if (up ? y >= x : y <= x) way.push_back(y);
    }
    if (!up) std::reverse(way.begin(), way.end());
    if (way.size() > 3) way.resize(3);
    for (const double y : way) {
      by.set(y);
      if (!by.was.empty()) {  // a new key has a doubt of its own: other samples have the least room
        const std::optional<tail> seen = by_the_lowest(w, w.lowest);
        if (!seen || !seen->holds) continue;
      }
      if (holds_by_chance(w, nullptr)) return y;
    }
    return std::nullopt;
  }
  /// The plan as it stands, told as a cure, with what else it moves.
  [[nodiscard]] cure told(const wanted_finding& w, std::vector<change> changes, double size) const {
    return {.changes = std::move(changes),
            .chance = chance_,
            .size = size,
            .better = moved(w, [](verdict before, verdict after) { return after < before; }),
            .worse = moved_for_the_worse(w)};
  }
  /// Other findings whose verdict, by central values, is not what it was.
  template <class Which>
  [[nodiscard]] std::vector<moved_verdict> moved(const wanted_finding& w, Which which) const {
    std::vector<moved_verdict> all;
    const std::vector<finding> after = answers_of(plan_, quick_);
    for (const finding& f : before_) {
      const finding* now = find(after, f.id);
      if (now && f.id != w.asked->id && which(f.verdict, now->verdict)) all.push_back({f.id, f.verdict, now->verdict});
    }
    return all;
  }
  [[nodiscard]] std::vector<moved_verdict> moved_for_the_worse(const wanted_finding& w) const {
    return moved(w, [](verdict before, verdict after) { return after > before; });
  }

  plan::build plan_;
  search how_;
  std::vector<finding> before_;
  std::vector<handle> handles_{};
  std::vector<const decision*> quick_{};  ///< all but those that take long, which judge nothing
  std::shared_ptr<const shifted_points> points_{};
  double chance_ = 0.0;
};

}  // namespace tankwright::decisions::detail
