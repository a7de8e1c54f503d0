// SPDX-License-Identifier: BSL-1.0
// The main job: reads a plan, assesses it, prints the report. Everything it computes is in the library; another front end
// can do the same.
#include <cstdio>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "demo_plan.hpp"
#include "plan_file.hpp"
#include "render.hpp"

namespace {

constexpr std::string_view usage =
    "usage: commission [PLAN.toml] [--json] [--html FILE] [--units si|us]\n"
    "\n"
    "Reads a plan of a large saltwater display and prints what must be decided, with numbers, bands, sources and\n"
    "cautions. Without PLAN.toml it runs the built-in demo plan; --demo prints that plan, to start your own from.\n"
    "\n"
    "  --json          the same as data, in SI units\n"
    "  --html FILE     writes the same as one page with figures; nothing is written on error\n"
    "  --units si|us   units of the report (default: as the plan says, otherwise si)\n"
    "  --demo          print the built-in demo plan\n"
    "  --help          this text\n"
    "\n"
    "Exit status: 0 report printed; 2 the plan or the arguments cannot be used (said in one line, nothing printed).\n";

struct arguments {
  std::string plan;
  bool json = false;
  std::string html;
  std::string units;
};

int refuse(const std::string& reason) {
  std::fprintf(stderr, "commission: %s\n", reason.c_str());
  return 2;
}

/// Writes beside the file and renames, so that nobody ever sees half a page.
void write_whole(const std::string& path, const std::string& text) {
  const std::string beside = path + ".part";
  std::FILE* file = std::fopen(beside.c_str(), "wb");
  if (file == nullptr) throw std::runtime_error(beside + ": cannot be written");
  const bool written = std::fwrite(text.data(), 1, text.size(), file) == text.size();
  const bool closed = std::fclose(file) == 0;
  if (!written || !closed || std::rename(beside.c_str(), path.c_str()) != 0) {
    std::remove(beside.c_str());
    throw std::runtime_error(path + ": cannot be written");
  }
}

}  // namespace

int main(int argc, char** argv) {
  arguments given;
  const std::vector<std::string_view> words(argv + 1, argv + argc);
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string word{words[i]};
    if (word == "--help") return std::fputs(usage.data(), stdout) < 0;
    if (word == "--demo") return std::fputs(demo_plan, stdout) < 0;
    if (word == "--json") {
      given.json = true;
    } else if (word == "--html") {
      if (i + 1 == words.size()) return refuse("--html needs a file to write");
      given.html = words[++i];
    } else if (word == "--units") {
      if (i + 1 == words.size()) return refuse("--units needs a word: si or us");
      given.units = words[++i];
      if (given.units != "si" && given.units != "us") return refuse("--units " + given.units + ": must be si or us");
    } else if (word.starts_with("-")) {
      return refuse("unknown option " + word + "; --help lists them");
    } else if (!given.plan.empty()) {
      return refuse("one plan at a time: " + given.plan + " and " + word);
    } else {
      given.plan = word;
    }
  }
  try {
    const plan_file::plan plan = given.plan.empty() ? plan_file::read_text(demo_plan, "demo plan")
                                                    : plan_file::read_file(given.plan);
    const report::assessment all = tankwright::commissioning::assess(plan.build);
    const auto units = given.units.empty() ? plan.units
                       : given.units == "us" ? tankwright::text::unit_system::us
                                             : tankwright::text::unit_system::si;
    if (!given.html.empty()) {
      write_whole(given.html, report::as_html(all, tankwright::commissioning::figures_of(plan.build), units));
      return 0;
    }
    const std::string out = given.json ? report::as_json(all, tankwright::commissioning::figures_of(plan.build))
                                       : report::as_text(all, units);
    if (std::fputs(out.c_str(), stdout) < 0 || std::fflush(stdout) != 0) return refuse("cannot write the report");
  } catch (const std::exception& mistake) {
    return refuse(mistake.what());
  }
  return 0;
}
