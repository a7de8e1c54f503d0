// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/names.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/walk.hpp>

namespace tankwright::plan {

namespace detail {

[[noreturn]] inline void refuse_path(std::string_view path, const std::string& reason) {
  constexpr double none = __builtin_nan("");
  throw invalid_input{std::string{path} + ": " + reason,
                      {"tankwright::plan::at_path", std::string{path}, none, none, none, {}, {}}};
}

/// Goes along the steps of one path.
class path_finder final : public visitor {
 public:
  path_finder(std::string_view path, bool create, const std::function<void(const leaf&)>& use)
      : path_{path}, steps_{steps_of(path)}, create_{create}, use_{&use} {}

  template <class Table>
  void go(Table visit) {
    found_ = false;
    known_.clear();
    instead_.clear();
    visit(*this);
    if (found_) return;
    if (!instead_.empty()) refuse_path(path_, instead_);
    const std::string& name = steps_[depth_].name;
    const std::string nearest = nearest_name(name, known_);
    refuse_path(path_, "there is no key " + name + (depth_ > 0 ? " in " + steps_[depth_ - 1].name : "") +
                           (nearest.empty() ? "" : "; did you mean " + nearest + "?"));
  }

  void renamed(std::string_view old_name, std::string_view name) override {
    if (old_name == steps_[depth_].name) instead_ = "is called " + std::string{name} + " now";
  }
  void replaced(std::string_view old_name, std::string_view by) override {
    if (old_name == steps_[depth_].name) instead_ = "is no key any more; " + std::string{by};
  }

 private:
  bool is_next(const key_info& key) {
    if (found_) return false;
    if (key.name != steps_[depth_].name) {
      known_.emplace_back(key.name);
      return false;
    }
    return found_ = true;
  }
  [[nodiscard]] bool at_end() const noexcept { return depth_ + 1 == steps_.size(); }
  [[nodiscard]] const std::string& selector() const noexcept { return steps_[depth_].selector; }

  void end(const leaf& here, bool is_list) {
    if (!at_end()) refuse_path(path_, steps_[depth_].name + " is not a table");
    if (!selector().empty() && !is_list) refuse_path(path_, steps_[depth_].name + " is not a list");
    (*use_)(here);
  }
  /// Into a table; what is found there counts.
  template <class Visit>
  void descend(Visit visit) {
    ++depth_;
    go(visit);
    --depth_;
    found_ = true;
  }

  void number(const key_info& key, value_base& v) override {
    if (is_next(key)) end({.key = key, .number = &v}, false);
  }
  void numbers(const key_info& key, values_base& v) override {
    if (!is_next(key)) return;
    std::size_t element = 0;
    if (!selector().empty()) {
      const auto digits = selector().find_first_not_of("0123456789") == std::string::npos && selector().size() < 6;
      element = digits ? std::stoul(selector()) : 0;
      if (element == 0 || element > v.size() + (create_ ? 1 : 0)) {
        refuse_path(path_, "the list has " + std::to_string(v.size()) + " elements");
      }
    }
    end({.key = key, .numbers = &v, .element = element}, true);
  }
  void one_of(const key_info& key, word_base& w, std::span<const std::string_view> words) override {
    if (is_next(key)) end({.key = key, .word = &w, .words = words}, false);
  }
  void yes_or_no(const key_info& key, flag& f) override {
    if (is_next(key)) end({.key = key, .yes = &f}, false);
  }
  void text(const key_info& key, std::string& t) override {
    if (is_next(key)) end({.key = key, .text = &t}, false);
  }
  void rating(const key_info& key, composite& c) override {
    if (is_next(key)) end({.key = key, .rating = &c}, false);
  }
  void table(const key_info& key, table_ref& t) override {
    if (!is_next(key)) return;
    if (!selector().empty()) refuse_path(path_, steps_[depth_].name + " is one table, not a list");
    if (at_end()) return (*use_)({.key = key, .table = &t});
    if (!t.present() && !create_) refuse_path(path_, "the plan has no " + steps_[depth_].name);
    const bool made = !t.present();
    t.create();
    try {
      descend([&](visitor& v) { t.visit(v); });
    } catch (...) {
      if (made) t.remove();  // a path that leads nowhere leaves nothing behind
      throw;
    }
  }
  void tables(const key_info& key, tables_ref& t) override {
    if (!is_next(key)) return;
    if (selector().empty()) {
      if (!at_end()) {
        refuse_path(path_, "say which " + steps_[depth_].name + ": " + steps_[depth_].name + "[label] or " +
                               steps_[depth_].name + "[1]");
      }
      return (*use_)({.key = key, .tables = &t});
    }
    bool added = false;
    const std::size_t element = element_of(t, added);
    try {
      if (at_end()) return (*use_)({.key = key, .tables = &t, .element = element});
      descend([&](visitor& v) { t.visit(element - 1, v); });
    } catch (...) {
      if (added) t.remove(element - 1);  // as for a table
      throw;
    }
  }

  /// The number from 1 of the element that is meant: a number, otherwise the one with that label, as paths are written.
  [[nodiscard]] std::size_t element_of(tables_ref& t, bool& added) {
    if (selector().find_first_not_of("0123456789") == std::string::npos) {
      const std::size_t number = selector().size() < 6 ? std::stoul(selector()) : 0;
      if (number >= 1 && number <= t.size()) return number;
      if (create_ && number == t.size() + 1) {
        t.add();
        added = true;
        return number;
      }
    }
    std::vector<std::string> labels;
    for (std::size_t i = 0; i < t.size(); ++i) {
      labels.push_back(label_of(t, i));
      if (labels.back() == selector()) return i + 1;
    }
    const std::string nearest = nearest_name(selector(), labels);
    refuse_path(path_,
                "no " + steps_[depth_].name + " is called " + selector() +
                    (nearest.empty() ? "; there are " + std::to_string(t.size()) : "; did you mean " + nearest + "?"));
  }

  std::string path_;
  std::vector<path_step> steps_;
  bool create_;
  const std::function<void(const leaf&)>* use_;
  std::size_t depth_ = 0;
  bool found_ = false;
  std::vector<std::string> known_{};
  std::string instead_{};  ///< what to say of a key that had this name
};

}  // namespace detail

TANKWRIGHT_INLINE std::vector<path_step> steps_of(std::string_view path) {
  std::vector<path_step> steps;
  std::string_view rest = path;
  for (;;) {
    const auto stop = rest.find_first_of(".[");
    path_step step{std::string{rest.substr(0, stop)}};
    if (step.name.empty()) detail::refuse_path(path, "is not a path: a name is missing");
    rest = stop == std::string_view::npos ? std::string_view{} : rest.substr(stop);
    if (rest.starts_with('[')) {
      const auto close = rest.find(']');
      if (close == std::string_view::npos) detail::refuse_path(path, "is not a path: a bracket is not closed");
      step.selector = rest.substr(1, close - 1);
      if (step.selector.empty()) detail::refuse_path(path, "is not a path: nothing stands in the brackets");
      rest = rest.substr(close + 1);
    }
    steps.push_back(std::move(step));
    if (rest.empty()) return steps;
    if (!rest.starts_with('.')) detail::refuse_path(path, "is not a path: a point is missing behind a bracket");
    rest = rest.substr(1);
  }
}

TANKWRIGHT_INLINE void at_path(build& build, std::string_view path, bool create,
                               const std::function<void(const leaf&)>& use) {
  detail::path_finder find{path, create, use};
  find.go([&](visitor& v) { describe(v, build); });
}

TANKWRIGHT_INLINE void set(build& build, std::string_view path, std::string_view text) {
  at_path(build, path, true, [&](const leaf& here) {
    if (here.table || here.tables) detail::refuse_path(path, "is a table; set the keys in it");
    give_text(here, text);
  });
}

TANKWRIGHT_INLINE void set_si(build& build, std::string_view path, double si) {
  if (!std::isfinite(si)) detail::refuse_path(path, "is set to a number that is not finite");
  at_path(build, path, true, [&](const leaf& here) {
    if (here.number) return here.number->move_to(si);
    if (!here.numbers || here.element == 0) detail::refuse_path(path, "does not hold one number");
    if (here.element > here.numbers->size()) return here.numbers->add(si);
    here.numbers->items[here.element - 1].move_to(si);
  });
}

TANKWRIGHT_INLINE void detail::set_typed(build& build, std::string_view path, std::string_view quantity, double si) {
  at_path(build, path, true, [&](const leaf& here) {
    if (!here.number) refuse_path(path, "does not hold one number");
    if (here.key.quantity != quantity) {
      refuse_path(path, "holds a " + std::string{here.key.quantity} + ", not a " + std::string{quantity});
    }
    here.number->give(si);
  });
}

TANKWRIGHT_INLINE std::string get(const build& plan, std::string_view path) {
  std::string text;
  at_path(const_cast<build&>(plan), path, false, [&](const leaf& here) {  // nothing is created or changed
    if (here.table || here.tables) detail::refuse_path(path, "is a table; get the keys in it");
    text = text_at(here);
  });
  return text;
}

TANKWRIGHT_INLINE double get_si(const build& plan, std::string_view path) {
  double si = __builtin_nan("");
  at_path(const_cast<build&>(plan), path, false, [&](const leaf& here) {
    const value_base* v = here.number;
    if (here.numbers && here.element > 0) v = &here.numbers->items[here.element - 1];
    if (!v) detail::refuse_path(path, "does not hold one number");
    if (v->known()) si = v->si();
  });
  return si;
}

TANKWRIGHT_INLINE void clear(build& build, std::string_view path) {
  at_path(build, path, false, [&](const leaf& here) {
    if (here.number) here.number->clear();
    if (here.numbers && here.element == 0) here.numbers->items.clear();
    if (here.numbers && here.element > 0) {
      here.numbers->items.erase(here.numbers->items.begin() + static_cast<std::ptrdiff_t>(here.element - 1));
    }
    if (here.word) here.word->clear();
    if (here.yes) here.yes->clear();
    if (here.text) here.text->clear();
    if (here.rating) here.rating->clear();
    if (here.table) here.table->remove();
    if (here.tables && here.element > 0) here.tables->remove(here.element - 1);
    if (here.tables && here.element == 0) {
      while (here.tables->size() > 0) here.tables->remove(here.tables->size() - 1);
    }
  });
}

TANKWRIGHT_INLINE std::string add(build& build, std::string_view path) {
  std::string added{path};
  at_path(build, path, true, [&](const leaf& here) {
    if (here.table) return here.table->create();
    if (!here.tables || here.element != 0) detail::refuse_path(path, "is not a table");
    here.tables->add();
    added += "[" + std::to_string(here.tables->size()) + "]";
  });
  return added;
}

}  // namespace tankwright::plan
