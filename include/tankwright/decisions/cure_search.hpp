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
#include <tankwright/decisions/missing_parts.hpp>
#include <tankwright/decisions/sampler.hpp>
#include <tankwright/decisions/wanted_finding.hpp>
#include <tankwright/plan/validate.hpp>

namespace tankwright::decisions::detail {

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
  [[nodiscard]] const plan::build& plan() const noexcept { return plan_; }
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
        for (std::size_t f = 0; f < there.size(); ++f) {
          if (std::isfinite(there[f]) && there[f] != g.now[f]) moves[f] = 1;
        }
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
    const cure_words& words = words_of_cure(by.path);
    for (const bool up : {false, true}) {
      if ((!by.known() && !up) || (up ? words.more : words.less).empty()) continue;
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
      if (is_another_build(by, x)) continue;
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
    const std::optional<double> value =
        by.key.sizes.empty() && known ? on_a_step(w, by, now, l.value) : as_sold(w, by, l.value);
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

  /// A part that the plan does not have: the least of it that makes a finding hold by its chance.
  [[nodiscard]] std::optional<cure> part(const wanted_finding& w, const missing_part& p) {
    if (p.options.empty()) return std::nullopt;
    // The most of it first: where that is far from holding, no less of it does.
    bool far = false;
    with_part(p.options.back(), [&] {
      const double most = score(w);
      if (most > 0.0) return;
      keep_nearest(w, p.options.back(), p.words);
      far = !(most >= nearly);
    });
    if (far) return std::nullopt;
    // From the least up: what fails is known to fail after few samples.
    std::optional<cure> found;
    for (const std::vector<change>& option : p.options) {
      with_part(option, [&] {
        if (!(score(w) >= nearly) || !holds_by_chance(w, nullptr)) return;
        found = told(w, option, 1.0);
        found->part = p.words;
      });
      if (found) return found;
    }
    for (std::size_t i = p.options.size(); i-- > 0;) {
      with_part(p.options[i], [&] { keep_nearest(w, p.options[i], p.words); });
    }
    return std::nullopt;
  }
  /// What comes nearest to making a finding hold: one handle at a value of its grid. Whether it was kept.
  bool keep_nearest(const wanted_finding& w, std::size_t h, double value) {
    const handle& by = handles_[h];
    const std::string from = by.text();
    const bool known = by.known();
    const double now = known ? by.now() : 0.0;
    const bool up = !known || value > now;
    const cure_words& words = words_of_cure(by.path);
    if ((up ? words.more : words.less).empty() || is_another_build(by, value)) return false;
    if (known && by.key.sizes.empty()) value = snapped(by, now, value);
    const keeper keep{by};
    by.set(value);
    if (!possible() || !moved_for_the_worse(w).empty()) return false;
    return keep_nearest(
        w, {{by.path, from, by.text(), by.key.quantity, known ? std::optional<double>{now} : std::nullopt, value}}, {});
  }
  /// Begin anew, for another finding.
  void forget_nearest(const wanted_finding& w) {
    nearest_ = why_none{};
    if (const number* m = w.judged->margin()) nearest_.from = nearest_.to = sharp(m->value);
    nearest_score_ = score(w);
  }
  [[nodiscard]] const why_none& nearest() const noexcept { return nearest_; }

 private:
  /// Several times as much of something is another build, not a cure of this one.
  [[nodiscard]] static bool is_another_build(const handle& by, double x) noexcept {
    constexpr double several = 4.0;
    return by.key.sizes.empty() && !by.was.empty() && by.was.front() > 0.0 && x > several * by.was.front();
  }
  static constexpr double nearly = -0.5;  ///< half of what it is short of: the doubts of a new part may give the rest

  [[nodiscard]] static amount sharp(const amount& a) { return {a.quantity, a.central, a.central, a.central}; }
  /// The plan as it stands, as what comes nearest to making a finding hold, if it does.
  bool keep_nearest(const wanted_finding& w, const std::vector<change>& changes, const std::string& part) {
    const std::vector<const decision*> asked{w.asked};
    const std::vector<finding> there = answers_of(asked_plan(), asked);
    const finding* f = find(there, w.asked->id);
    const double s = w.score(f);
    if (!std::isfinite(s) || !(s > nearest_score_ + 0.01)) return false;
    const number* m = f->margin();
    if (!m || m->value.quantity != nearest_.from.quantity || !(m->value.central > nearest_.from.central)) {
      return false;
    }
    nearest_score_ = s;
    nearest_.changes = changes;
    nearest_.part = part;
    nearest_.to = sharp(m->value);
    return true;
  }
  /// Another plan is asked as long as it lives.
  class look_at_other {
   public:
    look_at_other(cure_search& search, const plan::build& other) : search_{&search} { search.other_ = &other; }
    look_at_other(const look_at_other&) = delete;
    look_at_other& operator=(const look_at_other&) = delete;
    ~look_at_other() { search_->other_ = nullptr; }

   private:
    cure_search* search_;
  };

  /// Ask about the plan with a part more, where it and its keys take it.
  template <class Ask>
  void with_part(const std::vector<change>& option, Ask ask) {
    plan::build with;
    try {
      with = with_changes(plan_, option);
    } catch (const error&) {
      return;  // what the plan's own keys do not take
    }
    const look_at_other look{*this, with};
    if (possible()) ask();
  }

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

  /// The plan that is asked: the one whose keys move, or one with a part more.
  [[nodiscard]] const plan::build& asked_plan() const noexcept { return other_ ? *other_ : plan_; }
  [[nodiscard]] bool possible() const { return plan::validate(asked_plan()).empty(); }
  [[nodiscard]] std::vector<double> scores(const std::vector<wanted_finding>& wanted) const {
    std::vector<const wanted_finding*> all;
    for (const wanted_finding& w : wanted) all.push_back(&w);
    return scores(all);
  }
  [[nodiscard]] std::vector<double> scores(const std::vector<const wanted_finding*>& wanted) const {
    std::vector<const decision*> asked;
    for (const wanted_finding* w : wanted) asked.push_back(w->asked);
    const std::vector<finding> there = answers_of(asked_plan(), asked);
    std::vector<double> all;
    for (const wanted_finding* w : wanted) all.push_back(w->score(find(there, w->asked->id)));
    return all;
  }
  [[nodiscard]] double score(const wanted_finding& w) const {
    return scores(std::vector<const wanted_finding*>{&w}).front();
  }

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
  [[nodiscard]] std::optional<double> between(const wanted_finding& w, const handle& by,
                                              const std::vector<double>& values, std::size_t best, double now,
                                              double& fails) const {
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
        high = b;
        b = a;
        at_b = at_a;
        at_a = at(a = high - golden * (high - low));
      } else {
        low = a;
        a = b;
        at_a = at_b;
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
  [[nodiscard]] std::optional<sampled> sample(const wanted_finding& w, bool to_the_end) {
    if (!possible()) return std::nullopt;
    const std::vector<finding> whole = answers_of(asked_plan(), all_decisions());  // for the reasons of all bands
    const finding* own = find(whole, w.asked->id);
    if (!own || !own->margin()) return std::nullopt;
    std::vector<finding> base{*own};
    const sampler moves{asked_plan(), whole, how_.samples, points_};
    points_ = moves.points();
    sample_table table{base, how_.samples};
    const std::vector<std::size_t> all = first_numbers(how_.samples);
    for (std::size_t done = 0; done < all.size();) {
      const std::size_t next = to_the_end ? all.size() : std::min(std::max<std::size_t>(2 * done, 64), all.size());
      moves.run(table, base, {&w.asked, 1}, std::span{all}.subspan(done, next - done), {.run = how_.run});
      done = next;
      if (!to_the_end && cannot_hold(table.findings[0].state, done)) return std::nullopt;
    }
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
    const std::vector<finding> whole = answers_of(asked_plan(), all_decisions());  // for the reasons of all bands
    const finding* own = find(whole, w.asked->id);
    if (!own || !own->margin()) return std::nullopt;
    const std::vector<finding> base{*own};
    const sampler moves{asked_plan(), whole, how_.samples, points_};
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
      a.low =
          std::fmin(a.central, found[place] + (at - static_cast<double>(place)) * (found[place + 1] - found[place]));
      low = std::fmin(low, a.low);
    }
    chance_ = 1.0 - static_cast<double>(bad) / samples;
    t.holds = judge_by_chance(chance_, low, own->useful) == verdict::holds;
    return t;
  }
  /// Whether it holds as the plan stands; what was found goes to `seen`, without which a failure is known early.
  [[nodiscard]] bool holds_by_chance(const wanted_finding& w, std::optional<sampled>* seen) {
    std::optional<sampled> here = sample(w, seen != nullptr);
    const bool holds = here && here->settled.verdict == verdict::holds;
    chance_ = here ? here->told.chance.value_or(0.0) : 0.0;
    if (seen) *seen = std::move(here);
    return holds;
  }
  /// The step nearest to the plan at which it holds by its chance. While it looks, it asks the samples with the least
  /// room alone; where they fail it learns what the doubts take, and goes on from there. All samples have the last
  /// word.
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
        if (holds_by_chance(w, &whole)) return nearest_step(w, by, now, at);
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
  /// From a step that holds by its chance: the one nearest to the plan, whose neighbour towards the plan does not.
  [[nodiscard]] double nearest_step(const wanted_finding& w, const handle& by, double now, double at) {
    const double step = at > now ? by.step() : -by.step();
    double chance = chance_;
    const auto holds = [&](double x) {
      by.set(x);
      if (!holds_by_chance(w, nullptr)) return false;
      chance = chance_;
      return true;
    };
    // The plan as it stands does not hold; between it and the step lie so many others.
    double few = 0.0, many = std::ceil((at - now) / step - 1e-9) - 1.0;
    const double far = many + 1.0;
    if (many >= 1.0 && holds(at - step)) {
      while (many - few > 1.0) {
        const double middle = std::floor(0.5 * (few + many));
        (holds(at - (far - middle) * step) ? many : few) = middle;
      }
      at -= (far - many) * step;
    }
    by.set(at);
    chance_ = chance;
    return at;
  }
  /// The size itself, or the next ones outwards; then back, while the size before it holds too.
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
      if (holds_by_chance(w, nullptr)) return by.key.sizes.empty() ? y : nearest_size(w, by, all, y, up);
    }
    return std::nullopt;
  }
  [[nodiscard]] double nearest_size(const wanted_finding& w, const handle& by, const std::vector<double>& all, double y,
                                    bool up) {
    double chance = chance_;
    const bool known = by.known() && !by.was.empty();
    for (std::ptrdiff_t at = std::find(all.begin(), all.end(), y) - all.begin();;) {
      at += up ? -1 : 1;
      if (at < 0 || at >= static_cast<std::ptrdiff_t>(all.size())) break;
      const double less = all[static_cast<std::size_t>(at)];
      if (known && (up ? less <= by.was.front() : less >= by.was.front())) break;
      by.set(less);
      if (!holds_by_chance(w, nullptr)) break;
      y = less;
      chance = chance_;
    }
    by.set(y);
    chance_ = chance;
    return y;
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
    const std::vector<finding> after = answers_of(asked_plan(), quick_);
    for (const finding& f : before_) {
      const finding* now = find(after, f.id);
      if (now && f.id != w.asked->id && which(f.verdict, now->verdict)) all.push_back({f.id, f.verdict, now->verdict});
    }
    // A new part brings questions of its own: a check valve that may leak.
    for (const finding& f : after) {
      if (!f.margin() || find(before_, f.id) || !which(verdict::holds, f.verdict)) continue;
      all.push_back({f.id, verdict::for_information, f.verdict});
    }
    return all;
  }
  [[nodiscard]] std::vector<moved_verdict> moved_for_the_worse(const wanted_finding& w) const {
    return moved(w, [](verdict before, verdict after) { return after > before; });
  }

  plan::build plan_;
  const plan::build* other_ = nullptr;  ///< asked in its place
  search how_;
  std::vector<finding> before_;
  std::vector<handle> handles_{};
  std::vector<const decision*> quick_{};  ///< all but those that take long, which judge nothing
  std::shared_ptr<const shifted_points> points_{};
  double chance_ = 0.0;
  why_none nearest_{};
  double nearest_score_ = 0.0;
};

}  // namespace tankwright::decisions::detail
