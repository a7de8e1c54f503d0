// SPDX-License-Identifier: BSL-1.0
// What the page needs of a plan beside the C library: what a slider moves, and a bridge from the library's progress to the
// page's.
#include <string>
#include <string_view>
#include <vector>

#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/first_screen.hpp>
#include <tankwright/exchange/json_text.hpp>
#include <tankwright/plan/mistake.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/text/quantity.hpp>

#include "plans.hpp"
#include "tankwright.h"
#include "words.hpp"

namespace {

namespace text = tankwright::text;
using page::say;
using page::system_of;

/// Amounts in words. A slider leaves most of them as they were, so the words of the last time are kept.
class phrase_book {
 public:
  void begin() noexcept { next_ = 0; }
  const std::string& words(const tankwright::amount& value, text::unit_system units) {
    if (next_ == kept_.size()) kept_.emplace_back();
    phrase& p = kept_[next_++];
    const bool same = p.of.quantity == value.quantity && p.of.low == value.low && p.of.central == value.central &&
                      p.of.high == value.high && p.units == units;
    if (!same) p = {value, units, text::of(value, units)};
    return p.text;
  }

 private:
  struct phrase {
    tankwright::amount of{};
    text::unit_system units = text::unit_system::si;
    std::string text{};
  };
  std::vector<phrase> kept_{};
  std::size_t next_ = 0;
};

phrase_book phrases;

/// A number of a finding in words, by its id and place.
void write_words(tankwright::exchange::json_text& out, const tankwright::decisions::number& n,
                 text::unit_system units) {
  out.open_object().key("id").text(n.id).key("place").text(n.place);
  out.key("text").text(phrases.words(n.value, units)).close_object();
}

/// What a slider moves: verdicts and sentences, and the numbers that can be seen: each row's own, and all of the finding
/// that is unfolded.
std::string moved(const tankwright::plan::build& build, std::string_view open, text::unit_system units) {
  const auto all = tankwright::decisions::assess(build);
  phrases.begin();
  tankwright::exchange::json_text out{0};
  out.open_object().key("findings").open_list();
  for (const auto& f : all.findings) {
    out.open_object().key("id").text(f.id).key("verdict").text(words(f.verdict)).key("happens").text(f.happens);
    out.key("numbers").open_list();
    if (f.id == open) {
      for (const auto& n : f.numbers) write_words(out, n, units);
    } else if (const auto* n = tankwright::decisions::headline_of(f)) {
      write_words(out, *n, units);
    }
    out.close_list().close_object();
  }
  out.close_list().close_object();
  return std::move(out).take();
}

}  // namespace

extern "C" {

__attribute__((import_module("env"), import_name("page_progress"))) int page_progress(unsigned done, unsigned of);

/// A slider moves: the number is set, and what can be seen is asked for. {"findings"}; or {"mistakes"} where the plan cannot
/// be judged so; or an empty text where the key holds no number.
TW_API const char* page_slide(tw_plan* plan, const char* path, double si, const char* open, int us) {
  return say([&] {
    const auto held = c_library::plan_of(plan);
    held->change([&](tankwright::plan::build& build) { tankwright::plan::set_si(build, path, si); });
    try {
      return held->look([&](const tankwright::plan::build& build) { return moved(build, open, system_of(us)); });
    } catch (const tankwright::plan::invalid_plan& wrong) {
      tankwright::exchange::json_text out{0};
      out.open_object().key("mistakes").open_list();
      for (const auto& m : wrong.mistakes()) {
        out.open_object()
            .key("path")
            .text(m.path)
            .key("reason")
            .text(m.reason)
            .key("clashes")
            .text(m.clashes)
            .close_object();
      }
      out.close_list().close_object();
      return std::move(out).take();
    }
  });
}

/// `tw_plan_assess` that tells the page how far it is.
TW_API tw_status page_assess(const tw_plan* plan, tw_parts parts, char** report, char** error) {
  const auto relay = [](void*, std::size_t done, std::size_t of) {
    return page_progress(static_cast<unsigned>(done), static_cast<unsigned>(of));
  };
  return tw_plan_assess(plan, nullptr, parts, relay, nullptr, report, error);
}

}  // extern "C"
