// SPDX-License-Identifier: BSL-1.0
// The functions of tankwright.h. Each finds its plan, calls the library, and hands over what comes back.
#include <cmath>
#include <cstdlib>
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

using findings = std::vector<tw::decisions::finding>;

/// The findings of a plan, of one decision or of all, with their bands where they are wanted.
tw::decisions::assessment assessed(const tw::plan::build& build, const char* finding, tw_parts parts, teller tell) {
  const std::string_view id = finding ? text_in(finding, "finding") : std::string_view{};
  if ((parts & TW_BANDS) == 0) {
    if (!finding) return tw::decisions::assess(build);
    return {build.title, tw::decisions::assess_one(build, id)};
  }
  if (finding && tw::decisions::assess_one(build, id).empty()) return {build.title, {}};  // refuses what is no decision
  auto all = tw::decisions::assess_with_doubts(build, {.progress = tell}).all;
  // One alone is taken out of all, so that its band has the same bytes in both.
  if (finding) std::erase_if(all.findings, [&](const tw::decisions::finding& f) { return f.id != id; });
  return all;
}

/// What would hold, for each finding that does not, in the order of the findings.
std::vector<tw::decisions::cures_of_finding> cures_of(const tw::plan::build& build, const findings& all, teller tell) {
  std::vector<std::string_view> ids;
  for (const auto& f : all) {
    const bool open = f.verdict == tw::decisions::verdict::does_not_hold && f.margin();
    if (open && (ids.empty() || ids.back() != f.id)) ids.push_back(f.id);
  }
  std::vector<tw::decisions::cures_of_finding> cures;
  for (const std::string_view id : ids) {
    tell(cures.size(), ids.size());
    cures.push_back(tw::decisions::what_would_hold(build, id));
  }
  return cures;
}

}  // namespace

extern "C" {

// ---- what comes back ------------------------------------------------------------------------------------------------

const char* tw_status_name(tw_status status) {
  switch (status) {
    case TW_OK:
      return "ok";
    case TW_BAD_HANDLE:
      return "bad_handle";
    case TW_BAD_ARGUMENT:
      return "bad_argument";
    case TW_BAD_DOCUMENT:
      return "bad_document";
    case TW_BAD_PLAN:
      return "bad_plan";
    case TW_BAD_KEY:
      return "bad_key";
    case TW_BAD_VALUE:
      return "bad_value";
    case TW_INVALID_INPUT:
      return "invalid_input";
    case TW_OUT_OF_RANGE:
      return "out_of_range";
    case TW_NO_CONVERGENCE:
      return "no_convergence";
    case TW_CANCELLED:
      return "cancelled";
    case TW_NO_MEMORY:
      return "no_memory";
    case TW_INTERNAL:
      return "internal";
    default:
      return "unknown";
  }
}

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
    const auto all = assessed(build, finding, parts, tell);
    std::vector<tw::decisions::figure> pictures;
    if (parts & TW_FIGURES) {
      pictures = tw::decisions::figures_of(build);
      std::erase_if(pictures, [&](const auto& p) { return finding && !all.find(p.id); });
    }
    const tw::exchange::report_style style{.indent = parts & TW_COMPACT ? 0u : 2u};
    std::string json = tw::exchange::report_to_json(all, pictures, style);
    if (parts & TW_CURES) add_cures(json, cures_of(build, all.findings, tell));
    *report = text_out(json);
  };
  return guarded(error, body, finding);
}

tw_status tw_plan_findings(const tw_plan* plan, const char* finding, char** json, char** error) {
  const auto body = [&] {
    empty(json, "json");
    *json = text_out(moving_json(assessed(plan_of(plan)->copy(), finding, 0, {nullptr, nullptr}).findings));
  };
  return guarded(error, body, finding);
}

tw_status tw_plan_cures(const tw_plan* plan, const char* finding, char** json, char** error) {
  const auto body = [&] {
    empty(json, "json");
    const auto of = plan_of(plan);
    const auto found = tw::decisions::what_would_hold(of->copy(), text_in(finding, "finding"));
    tw::exchange::json_text out{0};
    write_cures(out, found);
    *json = text_out(std::move(out).take());
  };
  return guarded(error, body, finding);
}

tw_status tw_plan_text(const tw_plan* plan, tw_units units, tw_parts parts, tw_progress progress, void* context,
                       char** text, char** error) {
  return guarded(error, [&] {
    empty(text, "text");
    check_parts(parts, TW_BANDS);
    const auto in = units_from(units);
    *text = text_out(report::as_text(assessed(plan_of(plan)->copy(), nullptr, parts, {progress, context}), in));
  });
}

tw_status tw_plan_page(const tw_plan* plan, tw_units units, tw_parts parts, tw_progress progress, void* context,
                       char** html, char** error) {
  return guarded(error, [&] {
    empty(html, "html");
    check_parts(parts, TW_BANDS);
    const auto in = units_from(units);
    const auto build = plan_of(plan)->copy();
    const auto all = assessed(build, nullptr, parts, {progress, context});
    *html = text_out(report::as_html(all, tw::decisions::figures_of(build), in));
  });
}

tw_status tw_decisions(char** json, char** error) {
  return guarded(error, [&] {
    empty(json, "json");
    *json = text_out(decisions_json());
  });
}

}  // extern "C"
