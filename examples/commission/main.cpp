// SPDX-License-Identifier: BSL-1.0
// The main job: reads a plan, assesses it, prints the report. Everything it computes and everything it knows of a plan's
// keys is in the library; another front end can do the same.
#include <atomic>
#include <cstdio>
#include <exception>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <tankwright/decisions/advice.hpp>
#include <tankwright/decisions/figures.hpp>
#include <tankwright/exchange/files.hpp>
#include <tankwright/exchange/read.hpp>
#include <tankwright/exchange/report.hpp>
#include <tankwright/exchange/write.hpp>
#include <tankwright/plan/keys.hpp>
#include <tankwright/text/written.hpp>
#include <thread>
#include <vector>

#if defined(__unix__) || defined(__APPLE__)
#include <unistd.h>
#endif

#include "arguments.hpp"
#include "asked.hpp"
#include "demo_plan.hpp"
#include "render.hpp"

namespace {

namespace tw = tankwright;
using commission::form;
using commission::task;

constexpr int unusable = 2;

int print(std::string_view text) {
  const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  if (written) return 0;
  std::fputs("commission: cannot write to the output; is the disk full?\n", stderr);
  return unusable;
}

int refuse(const std::string& reason) {
  std::fprintf(stderr, "commission: %s\n", reason.c_str());
  return unusable;
}

/// One line for each key: its path, what it holds, what it means.
std::string list_of_keys() {
  std::string all;
  for (const auto& row : tw::plan::all_keys().keys) {
    std::string holds{tw::text::example_of(row.about.quantity)};
    if (row.kind == tw::plan::key_kind::table) holds = "table";
    if (row.kind == tw::plan::key_kind::tables) holds = "tables";
    if (row.kind == tw::plan::key_kind::flag) holds = "true or false";
    if (row.kind == tw::plan::key_kind::text) holds = "text";
    if (row.kind == tw::plan::key_kind::rating) holds = row.example;
    if (row.kind == tw::plan::key_kind::word) {
      holds.clear();
      for (const auto& w : row.words) holds += (holds.empty() ? "" : " | ") + std::string{w};
    }
    all += row.path + "\t" + holds + "\t" + std::string{row.about.means} + "\n";
  }
  return all;
}

/// Every mistake in a line of its own, on the error output; as data where the report would be.
int refuse_plan(const tw::exchange::reading& read, const std::string& name, form as) {
  if (as == form::json) (void)print(tw::exchange::mistakes_to_json(read.mistakes));
  for (const auto& m : read.mistakes) std::fprintf(stderr, "commission: %s\n", tw::exchange::line_of(m, name).c_str());
  return unusable;
}

/// Runs the parts of a work on all processors.
void on_all_processors(std::size_t parts, const std::function<void(std::size_t)>& one) {
  std::atomic<std::size_t> next{0};
  std::exception_ptr wrong;
  std::mutex guard;
  const auto work = [&] {
    try {
      for (std::size_t p = next++; p < parts; p = next++) one(p);
    } catch (...) {
      const std::lock_guard lock{guard};
      wrong = std::current_exception();
    }
  };
  std::vector<std::thread> others;
  const std::size_t helpers = std::min<std::size_t>(std::max(1u, std::thread::hardware_concurrency()), parts);
  for (std::size_t i = 1; i < helpers; ++i) others.emplace_back(work);
  work();
  for (std::thread& t : others) t.join();
  if (wrong) std::rethrow_exception(wrong);
}

/// Tells a person who waits at a terminal how far it is; nothing where nobody sits there.
class waiting {
 public:
  waiting() {
#if defined(__unix__) || defined(__APPLE__)
    somebody_ = isatty(STDERR_FILENO) == 1;
#endif
  }
  waiting(const waiting&) = delete;
  waiting& operator=(const waiting&) = delete;
  ~waiting() {
    if (somebody_ && said_) std::fputs("\r\033[K", stderr);
  }
  void operator()(tw::decisions::stage at, std::size_t done, std::size_t of) {
    if (!somebody_) return;
    const std::lock_guard lock{guard_};
    said_ = true;
    switch (at) {
      case tw::decisions::stage::bands:
        std::fprintf(stderr, "\r\033[Ktrying what is doubtful: %zu of %zu", done, of);
        break;
      case tw::decisions::stage::shares:
        std::fputs("\r\033[Klooking for what matters", stderr);
        break;
      case tw::decisions::stage::cures:
        std::fputs("\r\033[Klooking for what would hold", stderr);
        break;
    }
    std::fflush(stderr);
  }

 private:
  bool somebody_ = false;
  bool said_ = false;
  std::mutex guard_{};
};

tw::decisions::advice advice_for(const commission::arguments& given, const tw::plan::build& build) {
  waiting tell;
  return tw::decisions::advise(
      build, {.doubts = !given.quick,
              .run = on_all_processors,
              .progress = [&](tw::decisions::stage at, std::size_t done, std::size_t of) { tell(at, done, of); }});
}

int report(const commission::arguments& given, const tw::plan::build& build) {
  const auto all = advice_for(given, build);
  const auto units = given.units.value_or(*build.units);
  switch (given.as) {
    case form::text:
      return print(report::as_text(all, units));
    case form::json: {
      const auto pictures = given.compact ? std::vector<tw::decisions::figure>{} : tw::decisions::figures_of(build);
      return print(tw::exchange::report_to_json(all, pictures, {.indent = given.compact ? 0u : 2u}));
    }
    case form::page:
      break;
  }
  tw::exchange::write_file(given.page, report::as_html(all, tw::decisions::figures_of(build), units),
                           given.plan.value_or(""));
  return 0;
}

int save(const commission::arguments& given, const tw::plan::build& build) {
  const bool json = tw::exchange::notation_of(given.save) == tw::exchange::notation::json;
  const std::string text = json ? tw::exchange::to_json(build) : tw::exchange::to_toml(build);
  if (tw::exchange::save_plan(given.save, text)) {
    std::fprintf(stderr, "commission: %s had comments of its own; it is kept as %s.bak\n", given.save.c_str(),
                 given.save.c_str());
  }
  return 0;
}

/// A plan from a file, for a question that needs nothing but the plan; its mistakes are printed.
std::optional<tw::plan::build> plan_from(const std::string& name) {
  const auto read = tw::exchange::read_plan(tw::exchange::read_file(name), tw::exchange::notation_of(name));
  if (read.usable()) return read.build;
  (void)refuse_plan(read, name, form::text);
  return std::nullopt;
}

/// What is asked directly, and not by a report.
int answer(const commission::arguments& given, const tw::plan::build& build) {
  const auto units = given.units.value_or(*build.units);
  if (given.does == task::hold) {
    return print(report::would_hold(build, given.finding, given.key, units, on_all_processors));
  }
  if (given.does == task::beside) {
    const auto other = plan_from(given.other);
    return other ? print(report::side_by_side(build, *other)) : unusable;
  }
  if (given.as != form::page) {
    return print(report::while_it_runs(build, given.finding, given.key, given.from, given.to, units));
  }
  tw::exchange::write_file(given.page,
                           report::while_it_runs_html(build, given.finding, given.key, given.from, given.to, units),
                           given.plan.value_or(""));
  return 0;
}

int run(const std::vector<std::string_view>& words) {
  const commission::arguments given = commission::arguments_from(words);
  switch (given.does) {
    case task::help:
      return print(commission::usage);
    case task::demo:
      return print(demo_plan);
    case task::keys:
      return print(list_of_keys());
    case task::schema:
      return print(tw::exchange::plan_schema());
    case task::starter:
      return print(tw::exchange::starter_plan(given.units.value_or(tw::text::unit_system::si)));
    case task::report:
    case task::hold:
    case task::vary:
    case task::beside:
    case task::check:
      break;
  }
  const std::string name = given.plan.value_or("demo plan");
  const std::string text = given.plan ? tw::exchange::read_file(*given.plan) : std::string{demo_plan};
  const auto read = tw::exchange::read_plan(text, tw::exchange::notation_of(name));
  if (!read.usable()) return refuse_plan(read, name, given.as);
  if (given.does == task::check) return print(name + ": nothing is wrong with this plan\n");
  if (!given.save.empty()) return save(given, read.build);
  const bool direct = given.does == task::hold || given.does == task::vary || given.does == task::beside;
  return direct ? answer(given, read.build) : report(given, read.build);
}

}  // namespace

int main(int argc, char** argv) {
  try {
    return run({argv + 1, argv + argc});
  } catch (const std::exception& mistake) {
    return refuse(mistake.what());
  }
}
