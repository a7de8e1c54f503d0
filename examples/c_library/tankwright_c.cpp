// SPDX-License-Identifier: BSL-1.0
// The functions of tankwright.h. Each finds its plan, calls the library, and hands over what comes back.
#include <cmath>
#include <cstdlib>
#include <tankwright/decisions/advice.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/figures.hpp>
#include <tankwright/exchange/json.hpp>
#include <tankwright/exchange/read.hpp>
#include <tankwright/exchange/report.hpp>
#include <tankwright/exchange/toml.hpp>
#include <tankwright/exchange/write.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/version.hpp>

#include "answers_json.hpp"
#include "border.hpp"
#include "demo_plan.hpp"
#include "plans.hpp"
#include "render.hpp"
#include "tankwright.h"

namespace tw = tankwright;
using namespace c_library;

namespace {

tw::exchange::notation notation_from(tw_notation in) {
  if (in == TW_TOML) return tw::exchange::notation::toml;
  if (in == TW_JSON) return tw::exchange::notation::json;
  throw refusal{TW_BAD_ARGUMENT, "notation " + std::to_string(in) + " is neither TW_TOML nor TW_JSON"};
}

tw::text::unit_system units_from(tw_units units) {
  if (units == TW_SI) return tw::text::unit_system::si;
  if (units == TW_US) return tw::text::unit_system::us;
  throw refusal{TW_BAD_ARGUMENT, "units " + std::to_string(units) + " are neither TW_SI nor TW_US"};
}

void check_parts(tw_parts parts, tw_parts known) {
  if ((parts & ~known) == 0) return;
  throw refusal{TW_BAD_ARGUMENT, "parts " + std::to_string(parts) + " has bits that this function does not know"};
}

/// A document, read; throws `unusable_text` where it is none.
tw::exchange::reading read(const char* text, std::size_t length, tw_notation in) {
  need(text, "text");
  const auto notation = notation_from(in);
  const std::string_view all{text, length};
  auto result = tw::exchange::read_plan(all, notation);
  if (result.mistakes.size() != 1 || !result.mistakes.front().what.path.empty()) return result;
  try {
    (void)(notation == tw::exchange::notation::json ? tw::exchange::document_from_json(all)
                                                    : tw::exchange::document_from_toml(all));
  } catch (const tw::exchange::syntax_error&) {
    throw unusable_text{TW_BAD_DOCUMENT, std::move(result.mistakes)};
  }
  return result;
}

tw_plan* usable(tw::exchange::reading read) {
  if (!read.usable()) throw unusable_text{TW_BAD_PLAN, std::move(read.mistakes)};
  return keep(std::move(read.build));
}

/// Tells the caller how far it is, and stops where he says so.
class teller {
 public:
  teller(tw_progress progress, void* context) noexcept : progress_{progress}, context_{context} {}
  void operator()(std::size_t done, std::size_t of) const {
    if (progress_ && progress_(context_, done, of) != 0) throw refusal{TW_CANCELLED, "the caller stopped it"};
  }

 private:
  tw_progress progress_;
  void* context_;
};

/// The findings of a plan, of one decision or of all: by central values, or with what the parts ask for.
tw::decisions::advice advice_of(const tw::plan::build& build, const char* finding, tw_parts parts, teller tell) {
  const std::string_view id = finding ? text_in(finding, "finding") : std::string_view{};
  tw::decisions::advice all;
  if ((parts & (TW_BANDS | TW_CURES)) == 0) {
    all.judged.all = finding ? tw::decisions::assessment{build.title, tw::decisions::assess_one(build, id)}
                             : tw::decisions::assess(build);
    return all;
  }
  if (finding && tw::decisions::assess_one(build, id).empty()) {  // refuses what is no decision
    all.judged.all.title = build.title;
    return all;
  }
  if ((parts & TW_CURES) != 0) {
    all = tw::decisions::advise(
        build, {.progress = [&](tw::decisions::stage, std::size_t done, std::size_t of) { tell(done, of); }});
  } else {
    all.by_chance = true;
    all.judged = tw::decisions::assess_with_doubts(build, {.progress = tell});
  }
  if (!finding) return all;
  // One alone is taken out of all, so that its band has the same bytes in both.
  const auto another = [&](const auto& f) { return f.id != id; };
  std::erase_if(all.judged.all.findings, another);
  std::erase_if(all.judged.sampled, another);
  std::erase_if(all.first, another);
  return all;
}

std::string as_text(const tw::decisions::advice& all, tw::text::unit_system in) {
  return all.by_chance ? report::as_text(all, in) : report::as_text(all.judged.all, in);
}

}  // namespace

extern "C" {

// ---- what comes back ------------------------------------------------------------------------------------------------

const char* tw_version(void) { return TANKWRIGHT_VERSION; }

void tw_free(char* text) { std::free(text); }

// ---- plans ----------------------------------------------------------------------------------------------------------

tw_status tw_plan_new(tw_plan** plan, char** error) {
  return guarded(error, [&] {
    empty(plan, "plan");
    *plan = keep({});
  });
}

tw_status tw_plan_read(const char* text, size_t length, tw_notation notation, tw_plan** plan, char** error) {
  return guarded(error, [&] {
    empty(plan, "plan");
    *plan = usable(read(text, length, notation));
  });
}

tw_status tw_plan_read_what_can_be(const char* text, size_t length, tw_notation notation, tw_plan** plan,
                                   char** mistakes, char** error) {
  return guarded(error, [&] {
    empty(plan, "plan");
    empty(mistakes, "mistakes");
    auto result = read(text, length, notation);
    owned_text told{text_out(tw::exchange::mistakes_to_json(result.mistakes))};
    *plan = keep(std::move(result.build));
    *mistakes = told.release();
  });
}

tw_status tw_plan_starter(tw_units units, tw_plan** plan, char** error) {
  return guarded(error, [&] {
    empty(plan, "plan");
    *plan =
        usable(tw::exchange::read_plan(tw::exchange::starter_plan(units_from(units)), tw::exchange::notation::toml));
  });
}

tw_status tw_plan_demo(tw_plan** plan, char** error) {
  return guarded(error, [&] {
    empty(plan, "plan");
    *plan = usable(tw::exchange::read_plan(demo_plan, tw::exchange::notation::toml));
  });
}

tw_status tw_plan_copy(const tw_plan* plan, tw_plan** copy, char** error) {
  return guarded(error, [&] {
    empty(copy, "copy");
    *copy = keep(plan_of(plan)->copy());
  });
}

tw_status tw_plan_free(tw_plan* plan) {
  return guarded(nullptr, [&] {
    if (plan) forget(plan);
  });
}

tw_status tw_plan_write(const tw_plan* plan, tw_notation notation, char** text, char** error) {
  return guarded(error, [&] {
    empty(text, "text");
    const auto in = notation_from(notation);
    const auto build = plan_of(plan)->copy();
    *text = text_out(in == tw::exchange::notation::json ? tw::exchange::to_json(build) : tw::exchange::to_toml(build));
  });
}

tw_status tw_starter_text(tw_units units, char** text, char** error) {
  return guarded(error, [&] {
    empty(text, "text");
    *text = text_out(tw::exchange::starter_plan(units_from(units)));
  });
}

// ---- keys -----------------------------------------------------------------------------------------------------------

tw_status tw_keys(char** json, char** error) {
  return guarded(error, [&] {
    empty(json, "json");
    *json = text_out(keys_json());
  });
}

tw_status tw_plan_set(tw_plan* plan, const char* path, const char* text, char** error) {
  const auto body = [&] {
    const auto of = plan_of(plan);
    const std::string_view where = text_in(path, "path"), what = text_in(text, "text");
    of->change([&](tw::plan::build& build) { tw::plan::set(build, where, what); });
  };
  return guarded(error, body, path);
}

tw_status tw_plan_set_si(tw_plan* plan, const char* path, double si, char** error) {
  const auto body = [&] {
    const auto of = plan_of(plan);
    const std::string_view where = text_in(path, "path");
    if (!std::isfinite(si)) throw refusal{TW_BAD_VALUE, "the number is not finite"};
    of->change([&](tw::plan::build& build) { tw::plan::set_si(build, where, si); });
  };
  return guarded(error, body, path);
}

tw_status tw_plan_get(const tw_plan* plan, const char* path, char** text, char** error) {
  const auto body = [&] {
    empty(text, "text");
    const auto of = plan_of(plan);
    const std::string_view where = text_in(path, "path");
    *text = text_out(of->look([&](const tw::plan::build& build) { return tw::plan::get(build, where); }));
  };
  return guarded(error, body, path);
}

tw_status tw_plan_get_si(const tw_plan* plan, const char* path, double* si, char** error) {
  const auto body = [&] {
    need(si, "si");
    *si = std::nan("");
    const auto of = plan_of(plan);
    const std::string_view where = text_in(path, "path");
    *si = of->look([&](const tw::plan::build& build) { return tw::plan::get_si(build, where); });
  };
  return guarded(error, body, path);
}

tw_status tw_plan_clear(tw_plan* plan, const char* path, char** error) {
  const auto body = [&] {
    const auto of = plan_of(plan);
    const std::string_view where = text_in(path, "path");
    of->change([&](tw::plan::build& build) { tw::plan::clear(build, where); });
  };
  return guarded(error, body, path);
}

tw_status tw_plan_add(tw_plan* plan, const char* path, char** added, char** error) {
  const auto body = [&] {
    empty(added, "added");
    const auto of = plan_of(plan);
    const std::string_view where = text_in(path, "path");
    *added = text_out(of->change([&](tw::plan::build& build) { return tw::plan::add(build, where); }));
  };
  return guarded(error, body, path);
}

tw_status tw_plan_values(const tw_plan* plan, char** json, char** error) {
  return guarded(error, [&] {
    empty(json, "json");
    *json = text_out(values_json(plan_of(plan)->copy()));
  });
}

tw_status tw_plan_validate(const tw_plan* plan, char** json, char** error) {
  return guarded(error, [&] {
    empty(json, "json");
    *json = text_out(tw::exchange::mistakes_to_json(located(tw::plan::validate(plan_of(plan)->copy()))));
  });
}

// ---- answers --------------------------------------------------------------------------------------------------------

tw_status tw_plan_assess(const tw_plan* plan, const char* finding, tw_parts parts, tw_progress progress, void* context,
                         char** report, char** error) {
  const auto body = [&] {
    empty(report, "report");
    check_parts(parts, TW_BANDS | TW_CURES | TW_FIGURES | TW_COMPACT);
    const auto build = plan_of(plan)->copy();
    const teller tell{progress, context};
    const auto all = advice_of(build, finding, parts, tell);
    std::vector<tw::decisions::figure> pictures;
    if (parts & TW_FIGURES) {
      pictures = tw::decisions::figures_of(build);
      std::erase_if(pictures, [&](const auto& p) { return finding && !all.judged.all.find(p.id); });
    }
    const tw::exchange::report_style style{.indent = parts & TW_COMPACT ? 0u : 2u};
    *report = text_out(tw::exchange::report_to_json(all, pictures, style));
  };
  return guarded(error, body, finding);
}

tw_status tw_plan_findings(const tw_plan* plan, const char* finding, char** json, char** error) {
  const auto body = [&] {
    empty(json, "json");
    *json = text_out(moving_json(advice_of(plan_of(plan)->copy(), finding, 0, {nullptr, nullptr}).judged.all.findings));
  };
  return guarded(error, body, finding);
}

tw_status tw_plan_cures(const tw_plan* plan, const char* finding, char** json, char** error) {
  const auto body = [&] {
    empty(json, "json");
    const auto of = plan_of(plan);
    *json = text_out(cures_json(tw::decisions::what_would_hold(of->copy(), text_in(finding, "finding"))));
  };
  return guarded(error, body, finding);
}

tw_status tw_plan_text(const tw_plan* plan, tw_units units, tw_parts parts, tw_progress progress, void* context,
                       char** text, char** error) {
  return guarded(error, [&] {
    empty(text, "text");
    check_parts(parts, TW_BANDS | TW_CURES);
    const auto in = units_from(units);
    *text = text_out(as_text(advice_of(plan_of(plan)->copy(), nullptr, parts, {progress, context}), in));
  });
}

tw_status tw_plan_page(const tw_plan* plan, tw_units units, tw_parts parts, tw_progress progress, void* context,
                       char** html, char** error) {
  return guarded(error, [&] {
    empty(html, "html");
    check_parts(parts, TW_BANDS | TW_CURES);
    const auto in = units_from(units);
    const auto build = plan_of(plan)->copy();
    const auto all = advice_of(build, nullptr, parts, {progress, context});
    const auto pictures = tw::decisions::figures_of(build);
    *html =
        text_out(all.by_chance ? report::as_html(all, pictures, in) : report::as_html(all.judged.all, pictures, in));
  });
}

tw_status tw_decisions(char** json, char** error) {
  return guarded(error, [&] {
    empty(json, "json");
    *json = text_out(decisions_json());
  });
}

}  // extern "C"
