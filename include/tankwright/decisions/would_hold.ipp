// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/would_hold.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/names.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/plan/walk.hpp>

namespace tankwright::decisions {

namespace detail {

[[noreturn]] inline void refuse_question(std::string_view about, const std::string& reason) {
  constexpr double none = __builtin_nan("");
  throw invalid_input{std::string{about} + ": " + reason,
                      {"tankwright::decisions::what_would_hold", std::string{about}, none, none, none, {}, {}}};
}

[[nodiscard]] inline const decision& decision_with(std::string_view id) {
  std::vector<std::string> known;
  for (const decision* d : all_decisions()) {
    if (d->id == id) return *d;
    known.emplace_back(d->id);
  }
  const std::string near = plan::nearest_name(id, known);
  refuse_question(id, "is not a decision" + (near.empty() ? "" : "; did you mean " + near + "?"));
}

/// Something that the builder can set: one key, or the same key of every element of a list.
struct handle {
  std::string path;
  plan::key_info key;
  std::vector<plan::value_base*> numbers;

  void set(double si) const {
    for (plan::value_base* v : numbers) v->move_to(si);
  }
  [[nodiscard]] bool given() const noexcept { return numbers.front()->known(); }
  [[nodiscard]] double now() const noexcept { return numbers.front()->si(); }
  /// What it is, as text; of a list that differs, the values in turn.
  [[nodiscard]] std::string text() const {
    std::string all;
    for (const plan::value_base* v : numbers) {
      plan::value_base shown = *v;
      if (v->known() && !v->given()) shown.move_to(v->si());
      const std::string one = plan::quantity_text(shown, key.quantity);
      if (all != one) all += (all.empty() ? "" : ", ") + one;
    }
    return all;
  }
};

/// Finds what can be chosen, in the order of the plan.
class handle_finder final : public plan::walker {
 public:
  std::vector<handle> all{};

  /// The same key over its whole list, where a list has several elements.
  void add_lists() {
    std::vector<handle> lists;
    for (const handle& one : all) {
      const std::string pattern = pattern_of(one.path);
      if (pattern == one.path) continue;
      auto found = std::find_if(lists.begin(), lists.end(), [&](const handle& l) { return l.path == pattern; });
      if (found == lists.end()) found = lists.insert(lists.end(), {pattern, one.key, {}});
      found->numbers.push_back(one.numbers.front());
    }
    for (handle& l : lists) {
      if (l.numbers.size() > 1) all.push_back(std::move(l));
    }
  }
  [[nodiscard]] static std::string pattern_of(std::string_view path) {
    std::string pattern;
    bool inside = false;
    for (const char c : path) {
      if (c == ']') inside = false;
      if (!inside) pattern += c;
      if (c == '[') inside = true;
    }
    return pattern;
  }

 private:
  void number(const plan::key_info& key, plan::value_base& v) override {
    if (key.set_by == plan::set_by::chosen && key.searched) all.push_back({path(key.name), key, {&v}});
  }
  void numbers(const plan::key_info&, plan::values_base&) override {}
  void one_of(const plan::key_info&, plan::word_base&, std::span<const std::string_view>) override {}
  void yes_or_no(const plan::key_info&, plan::flag&) override {}
  void text(const plan::key_info&, std::string&) override {}
  void rating(const plan::key_info&, plan::composite&) override {}
};

/// Looks for values that make one finding hold, on a plan of its own that it moves and puts back.
class cure_search {
 public:
  cure_search(const plan::build& build, std::string_view id, const search& how)
      : plan_{build}, wanted_{&decision_with(id)}, how_{how} {
    before_ = assess(plan_).findings;
    handle_finder finder;
    describe(finder, plan_);
    finder.add_lists();
    handles_ = std::move(finder.all);
    const finding* f = find(before_, id);
    if (!f) refuse_question(id, "is not asked by this plan");
    if (!f->margin() && f->verdict != verdict::not_enough_known) refuse_question(id, "has no margin: it is for information");
    margin_now_ = margin(plan_);
  }

  [[nodiscard]] const std::vector<handle>& handles() const noexcept { return handles_; }
  [[nodiscard]] bool holds_already() { return judged(how_.confirm).first == verdict::holds; }

  /// By one handle alone.
  [[nodiscard]] std::optional<cure> by(const handle& h) {
    const std::vector<plan::value_base> kept = keep(h);
    const std::string from = h.text();
    const bool given = h.given();
    const double now = h.now();
    std::vector<double> values = candidates(h);
    // From the plan outwards; where nothing is given, from the beginning of the range.
    std::stable_sort(values.begin(), values.end(), [&](double a, double b) {
      return given ? std::fabs(a - now) < std::fabs(b - now) : a < b;
    });
    std::optional<double> found;
    double nearer = now;
    for (const double x : values) {
      if (given && x == now) continue;
      h.set(x);
      if (margin(plan_) > 0.0 && possible() && judged(how_.samples).first == verdict::holds) {
        found = x;
        break;
      }
    }
    if (found && h.key.sizes.empty() && given) {
      nearer = nearest_failing(values, now, *found);
      found = closest(h, nearer, *found);
    }
    std::optional<cure> made;
    if (found) {
      h.set(*found);
      made = confirmed({{h.path, from, h.text()}}, size_of(h, now, *found, given));
    }
    put_back(h, kept);
    return made;
  }

  /// By two handles together, on a coarse grid.
  [[nodiscard]] std::optional<cure> by(const handle& a, const handle& b) {
    const std::vector<plan::value_base> kept_a = keep(a), kept_b = keep(b);
    const std::string from_a = a.text(), from_b = b.text();
    const double now_a = a.now(), now_b = b.now();
    const bool given_a = a.given(), given_b = b.given();
    struct pair {
      double x, y, size;
    };
    std::vector<pair> pairs;
    for (const double x : thinned(candidates(a))) {
      for (const double y : thinned(candidates(b))) {
        pairs.push_back({x, y, size_of(a, now_a, x, given_a) + size_of(b, now_b, y, given_b)});
      }
    }
    std::stable_sort(pairs.begin(), pairs.end(), [](const pair& p, const pair& q) { return p.size < q.size; });
    std::optional<cure> made;
    for (const pair& p : pairs) {
      a.set(p.x);
      b.set(p.y);
      if (!(margin(plan_) > 0.0) || !possible() || judged(how_.samples).first != verdict::holds) continue;
      made = confirmed({{a.path, from_a, a.text()}, {b.path, from_b, b.text()}}, p.size);
      if (made) break;
    }
    put_back(a, kept_a);
    put_back(b, kept_b);
    return made;
  }

  /// How much one handle can do at most for the central margin.
  [[nodiscard]] double help_of(const handle& h) {
    const std::vector<plan::value_base> kept = keep(h);
    double most = margin_now_;
    for (const double x : thinned(candidates(h))) {
      h.set(x);
      if (const double m = margin(plan_); m > most && possible()) most = m;
    }
    put_back(h, kept);
    return most - margin_now_;
  }

 private:
  [[nodiscard]] static const finding* find(const std::vector<finding>& all, std::string_view id) noexcept {
    for (const finding& f : all) {
      if (f.id == id) return &f;
    }
    return nullptr;
  }
  [[nodiscard]] std::vector<finding> answer() const { return answers_of(plan_, {&wanted_, 1}); }
  /// The smallest central margin of the finding, less what is useful; NaN where it has none.
  [[nodiscard]] double margin(const plan::build&) const {
    const std::vector<finding> one = answer();
    if (one.empty() || !one.front().margin()) return std::numeric_limits<double>::quiet_NaN();
    return one.front().margin()->value.central;
  }
  [[nodiscard]] bool possible() const { return plan::validate(plan_).empty(); }
  [[nodiscard]] std::pair<verdict, double> judged(std::size_t samples) const {
    std::vector<finding> one = answer();
    if (one.empty()) return {verdict::for_information, 0.0};
    const auto told = sample(plan_, one, {&wanted_, 1}, {.samples = samples});
    return {one.front().verdict, told.front().chance.value_or(0.0)};
  }
  [[nodiscard]] static std::vector<plan::value_base> keep(const handle& h) {
    std::vector<plan::value_base> all;
    for (const plan::value_base* v : h.numbers) all.push_back(*v);
    return all;
  }
  static void put_back(const handle& h, const std::vector<plan::value_base>& kept) {
    for (std::size_t i = 0; i < kept.size(); ++i) *h.numbers[i] = kept[i];
  }
  [[nodiscard]] std::vector<double> candidates(const handle& h) const {
    if (!h.key.sizes.empty()) return {h.key.sizes.begin(), h.key.sizes.end()};
    std::vector<double> all;
    const double low = h.key.choose_low, high = h.key.choose_high;
    const bool by_factors = low > 0.0 && high > 50.0 * low;
    for (std::size_t i = 0; i <= how_.grid; ++i) {
      const double part = static_cast<double>(i) / static_cast<double>(how_.grid);
      all.push_back(by_factors ? low * std::pow(high / low, part) : low + part * (high - low));
    }
    return all;
  }
  [[nodiscard]] static std::vector<double> thinned(const std::vector<double>& all) {
    std::vector<double> some;
    const std::size_t stride = std::max<std::size_t>(1, all.size() / 12);
    for (std::size_t i = 0; i < all.size(); i += stride) some.push_back(all[i]);
    if (some.back() != all.back()) some.push_back(all.back());
    return some;
  }
  /// The last value before `found`, on the side of the plan.
  [[nodiscard]] static double nearest_failing(const std::vector<double>& sorted, double now, double found) {
    double nearest = now;
    for (const double x : sorted) {
      const bool between = (x - now) * (found - now) > 0.0 && std::fabs(x - now) < std::fabs(found - now);
      if (between) nearest = x;
    }
    return nearest;
  }
  /// Towards the plan as far as it still holds, on the key's steps.
  [[nodiscard]] double closest(const handle& h, double fails, double holds) const {
    const double step = h.key.step > 0.0 ? h.key.step : std::fabs(holds - fails) / 64.0;
    while (std::fabs(holds - fails) > 1.01 * step) {
      const double middle = 0.5 * (fails + holds);
      h.set(middle);
      (possible() && judged(how_.samples).first == verdict::holds ? holds : fails) = middle;
    }
    const double away = holds > fails ? std::ceil(holds / step - 1e-9) : std::floor(holds / step + 1e-9);
    const double on_step = away * step;
    h.set(on_step);
    const bool inside = on_step >= h.key.choose_low && on_step <= h.key.choose_high;
    return inside && possible() && judged(how_.samples).first == verdict::holds ? on_step : holds;
  }
  [[nodiscard]] static double size_of(const handle& h, double now, double then, bool given) {
    const double span = h.key.sizes.empty() ? h.key.choose_high - h.key.choose_low : std::fmax(std::fabs(now), 1e-12);
    return given ? std::fabs(then - now) / span : 1.0;  // something new is as much as the whole range
  }
  /// The plan as it stands, held with all doubts and on all findings.
  [[nodiscard]] std::optional<cure> confirmed(std::vector<change> changes, double size) const {
    if (!possible()) return std::nullopt;
    const auto [says, chance] = judged(how_.confirm);
    if (says != verdict::holds) return std::nullopt;
    cure made{.changes = std::move(changes), .chance = chance, .size = size};
    const std::vector<finding> after = answers_of(plan_, all_decisions());
    for (const finding& f : before_) {
      const finding* now = find(after, f.id);
      if (!now || now->verdict == f.verdict || f.id == wanted_->id) continue;
      (now->verdict < f.verdict ? made.better : made.worse).push_back({f.id, f.verdict, now->verdict});
    }
    return made;
  }

  plan::build plan_;
  const decision* wanted_;
  search how_;
  std::vector<finding> before_{};
  std::vector<handle> handles_{};
  double margin_now_ = 0.0;
};

/// Writes down every key that was given, in the order of the descriptions.
class given_keys final : public plan::walker {
 public:
  std::vector<std::pair<std::string, std::string>> all{};

 private:
  void put(const plan::leaf& here) {
    if (std::string text = plan::text_at(here); !text.empty()) all.emplace_back(path(here.key.name), std::move(text));
  }
  void number(const plan::key_info& key, plan::value_base& v) override { put({.key = key, .number = &v}); }
  void numbers(const plan::key_info& key, plan::values_base& v) override { put({.key = key, .numbers = &v}); }
  void one_of(const plan::key_info& key, plan::word_base& w, std::span<const std::string_view> words) override {
    put({.key = key, .word = &w, .words = words});
  }
  void yes_or_no(const plan::key_info& key, plan::flag& f) override { put({.key = key, .yes = &f}); }
  void text(const plan::key_info& key, std::string& t) override { put({.key = key, .text = &t}); }
  void rating(const plan::key_info& key, plan::composite& c) override { put({.key = key, .rating = &c}); }
};

[[nodiscard]] inline std::vector<std::pair<std::string, std::string>> given_in(const plan::build& build) {
  given_keys keys;
  plan::look_at(keys, build);
  return std::move(keys.all);
}

}  // namespace detail

TANKWRIGHT_INLINE cures_of_finding what_would_hold(const plan::build& build, std::string_view id, const search& how) {
  detail::cure_search look{build, id, how};
  cures_of_finding found{.id = detail::decision_with(id).id};
  if (look.holds_already()) return found;
  struct helpful {
    const detail::handle* handle;
    double help;
  };
  std::vector<helpful> helps;
  for (const detail::handle& h : look.handles()) {
    const double help = look.help_of(h);
    if (!(help > 0.0)) continue;  // the finding does not depend on it, or it only harms
    helps.push_back({&h, help});
    if (auto one = look.by(h)) found.cures.push_back(std::move(*one));
  }
  if (found.cures.empty()) {
    std::stable_sort(helps.begin(), helps.end(), [](const helpful& a, const helpful& b) { return a.help > b.help; });
    const std::size_t few = std::min<std::size_t>(helps.size(), 4);
    for (std::size_t i = 0; i < few; ++i) {
      for (std::size_t j = i + 1; j < few; ++j) {
        if (auto two = look.by(*helps[i].handle, *helps[j].handle)) found.cures.push_back(std::move(*two));
      }
    }
  }
  std::stable_sort(found.cures.begin(), found.cures.end(), [](const cure& a, const cure& b) { return a.size < b.size; });
  if (found.cures.size() > how.most) found.cures.resize(how.most);
  return found;
}

TANKWRIGHT_INLINE std::optional<cure> value_that_holds(const plan::build& build, std::string_view path,
                                                       std::string_view id, const search& how) {
  detail::cure_search look{build, id, how};
  std::vector<std::string> known;
  for (const detail::handle& h : look.handles()) {
    known.push_back(h.path);
    if (h.path != path) continue;
    if (!(look.help_of(h) > 0.0)) {
      detail::refuse_question(path, "does nothing for " + std::string{id} + ", or is the best that it can be already");
    }
    return look.by(h);
  }
  if (path.find("[]") == std::string_view::npos) {
    plan::build probe = build;
    plan::at_path(probe, path, false, [&](const plan::leaf& here) {  // refuses what is no key at all
      if (!here.number) detail::refuse_question(path, "does not hold one number");
      const bool set = here.key.set_by == plan::set_by::chosen;
      detail::refuse_question(path, set ? "has no range to be chosen from"
                                        : here.key.set_by == plan::set_by::wanted
                                              ? "is a goal: a search must not move it"
                                              : "is measured: it is what it is");
    });
  }
  const std::string near = plan::nearest_name(path, known);
  detail::refuse_question(path, "is no key of this plan that can be chosen" +
                                    (near.empty() ? "" : "; did you mean " + near + "?"));
}

TANKWRIGHT_INLINE std::vector<at_value> finding_while(const plan::build& build, std::string_view path, double from,
                                                      double to, std::size_t steps, std::string_view id) {
  const decision* const wanted = &detail::decision_with(id);
  if (steps < 2 || steps > 10000) detail::refuse_question("steps", "must be from 2 to 10000");
  if (!(std::isfinite(from) && std::isfinite(to))) detail::refuse_question(path, "runs from or to no finite number");
  std::vector<at_value> all;
  plan::build moved = build;
  for (std::size_t i = 0; i < steps; ++i) {
    const double x = from + (to - from) * static_cast<double>(i) / static_cast<double>(steps - 1);
    plan::set_si(moved, path, x);
    at_value& here = all.emplace_back(at_value{x});
    if (!plan::validate(moved).empty()) continue;
    auto answer = detail::answers_of(moved, {&wanted, 1});
    if (!answer.empty()) here.answer = std::move(answer.front());
  }
  return all;
}

TANKWRIGHT_INLINE comparison compare(const plan::build& before, const plan::build& after) {
  comparison result;
  const auto a = detail::given_in(before), b = detail::given_in(after);
  const auto text_in = [](const auto& all, const std::string& path) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first == path; });
    return found == all.end() ? std::string{} : found->second;
  };
  for (const auto& [path, text] : a) {
    if (std::string then = text_in(b, path); then != text) result.changed.push_back({path, text, std::move(then)});
  }
  for (const auto& [path, text] : b) {
    if (text_in(a, path).empty()) result.changed.push_back({path, {}, text});
  }
  const assessment was = assess(before), is = assess(after);
  for (const finding& f : was.findings) {
    const finding* now = is.find(f.id);
    if (now && now->verdict != f.verdict) result.moved.push_back({f.id, f.verdict, now->verdict});
  }
  return result;
}

}  // namespace tankwright::decisions
