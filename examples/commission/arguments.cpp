// SPDX-License-Identifier: BSL-1.0
#include "arguments.hpp"

#include <tankwright/plan/names.hpp>

namespace commission {

using tankwright::text::unit_system;

const std::string_view usage =
    "usage: commission [PLAN.toml | PLAN.json] [--quick] [--json [--compact]] [--html FILE] [--units si|us]\n"
    "       commission [PLAN] --hold FINDING [--by KEY]       what would make a finding hold\n"
    "       commission [PLAN] --vary KEY FROM TO --see FINDING   a finding while a key runs\n"
    "       commission [PLAN] --beside OTHER                  two plans: what differs, which verdicts moved\n"
    "       commission PLAN --check            only say what is wrong with the plan\n"
    "       commission PLAN --save FILE        write the plan as FILE.toml or FILE.json\n"
    "       commission --starter [si|us]       print a short plan to begin with\n"
    "       commission --demo                  print the built-in demo plan\n"
    "       commission --keys                  list every key that a plan may have\n"
    "       commission --schema                the same as a JSON Schema\n"
    "\n"
    "Reads a plan of a large saltwater display and prints what must be decided, with numbers, bands, sources and\n"
    "cautions. Without a plan it assesses the built-in demo.\n"
    "\n"
    "  --quick         by central values alone, in a moment: no bands of everything at once, no chances, no cures\n"
    "  --json          the same as data, in SI units; mistakes of the plan as data too\n"
    "  --compact       with --json: in one line\n"
    "  --html FILE     writes the same as one page with figures; nothing is written on error\n"
    "  --units si|us   units of the report (default: as the plan says, otherwise si)\n"
    "  --help          this text\n"
    "\n"
    "Exit status: 0 report printed; 2 the plan or the arguments cannot be used (every mistake in a line of its own).\n";

namespace {

unit_system units_from(std::string_view word, std::string_view option) {
  if (word == "si") return unit_system::si;
  if (word == "us") return unit_system::us;
  throw bad_arguments{std::string{option} + " " + std::string{word} + ": must be si or us"};
}

}  // namespace

arguments arguments_from(const std::vector<std::string_view>& words) {
  arguments given;
  std::size_t i = 0;
  const auto next = [&](std::string_view option, std::string_view needs) {
    if (i + 1 == words.size()) throw bad_arguments{std::string{option} + " needs " + std::string{needs}};
    return std::string{words[++i]};
  };
  for (; i < words.size(); ++i) {
    const std::string word{words[i]};
    if (word == "--help") {
      given.does = task::help;
    } else if (word == "--demo") {
      given.does = task::demo;
    } else if (word == "--keys") {
      given.does = task::keys;
    } else if (word == "--schema") {
      given.does = task::schema;
    } else if (word == "--check") {
      given.does = task::check;
    } else if (word == "--starter") {
      given.does = task::starter;
      const bool more = i + 1 < words.size() && !words[i + 1].starts_with("-");
      if (more) given.units = units_from(words[++i], word);
    } else if (word == "--json") {
      given.as = form::json;
    } else if (word == "--quick") {
      given.quick = true;
    } else if (word == "--hold") {
      given.does = task::hold;
      given.finding = next(word, "a finding, such as sump.power_cut");
    } else if (word == "--by") {
      given.key = next(word, "a key, such as plumbing.sump.running_level");
    } else if (word == "--vary") {
      given.does = task::vary;
      given.key = next(word, "a key and two values: KEY FROM TO");
      given.from = next(word, "a key and two values: KEY FROM TO");
      given.to = next(word, "a key and two values: KEY FROM TO");
    } else if (word == "--see") {
      given.finding = next(word, "a finding, such as sump.power_cut");
    } else if (word == "--beside") {
      given.does = task::beside;
      given.other = next(word, "another plan");
    } else if (word == "--compact") {
      given.compact = true;
    } else if (word == "--html") {
      given.as = form::page;
      given.page = next(word, "a file to write");
    } else if (word == "--save") {
      given.save = next(word, "a file to write");
    } else if (word == "--units") {
      given.units = units_from(next(word, "a word: si or us"), word);
    } else if (word.starts_with("-")) {
      const std::vector<std::string> known{"--help", "--demo",    "--keys", "--schema", "--check", "--starter",
                                           "--json", "--compact", "--html", "--save",   "--units", "--quick",
                                           "--hold", "--by",      "--vary", "--see",    "--beside"};
      const std::string near = tankwright::plan::nearest_name(word, known);
      throw bad_arguments{"unknown option " + word +
                          (near.empty() ? "; --help lists them" : "; did you mean " + near + "?")};
    } else if (given.plan) {
      throw bad_arguments{"one plan at a time: " + *given.plan + " and " + word};
    } else {
      given.plan = word;
    }
  }
  if (given.compact && given.as != form::json) throw bad_arguments{"--compact goes with --json"};
  if (given.does == task::vary && given.finding.empty()) throw bad_arguments{"--vary needs --see FINDING"};
  if (given.does != task::vary && !given.from.empty()) throw bad_arguments{"--vary does not go with another question"};
  if (given.does == task::report && !given.finding.empty()) throw bad_arguments{"--see goes with --vary KEY FROM TO"};
  if (given.does == task::report && !given.key.empty()) throw bad_arguments{"--by goes with --hold FINDING"};
  return given;
}

}  // namespace commission
