// SPDX-License-Identifier: BSL-1.0
#include "plan_file.hpp"

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace plan_file {

using namespace tankwright;

namespace {

constexpr std::uintmax_t largest_plan = 1000000;  // bytes; a plan is a page or two

/// Read one section, and try what it will be asked for, so that a mistake is reported at its table.
template <class Section, class Read, class Try>
void read_section(section& top, std::string_view key, std::optional<Section>& into, Read read, Try attempt) {
  if (auto table = top.sub(key)) {
    into = read(*table);
    table->attempt(attempt);
  }
}

plan plan_from(const toml::table& table, const std::string& name) {
  section top{table, name, ""};
  if (table.empty()) top.fail_here("the plan is empty; commission --demo prints one to start from");
  plan all;
  commissioning::plan& build = all.build;
  build.title = top.text("title").value_or("Untitled plan");
  all.units = top.word("units", {"si", "us"}).value_or(0) == 1 ? unit_system::us : unit_system::si;
  if (auto water = top.sub("water")) build.water = read_water(*water);
  if (auto hold = top.sub("hold")) build.hold = read_hold(*hold);
  read_section(top, "vessel", build.vessel, read_vessel, [&] { (void)commissioning::state_of(build); });
  if (auto plumbing = top.sub("plumbing")) build.plumbing = read_plumbing(*plumbing);
  read_section(top, "room", build.room, read_room,
               [&] { (void)commissioning::assess_room(*build.room, commissioning::state_of(build)); });
  read_section(top, "life", build.life, read_life,
               [&] { (void)commissioning::assess_life(*build.life, commissioning::state_of(build)); });
  top.finish();
  if (!build.hold && !build.vessel && !build.plumbing && !build.water && !build.room && !build.life) {
    top.fail_here("nothing to assess; expected a table such as [water]");
  }
  return all;
}

}  // namespace

plan read_text(std::string_view text, const std::string& name) {
  try {
    return plan_from(toml::parse(text, name), name);
  } catch (const toml::parse_error& mistake) {
    throw plan_error(name + ":" + std::to_string(mistake.source().begin.line) + ": " +
                     std::string{mistake.description()});
  }
}

plan read_file(const std::string& path) {
  std::error_code error;
  const auto status = std::filesystem::status(path, error);
  if (error || !std::filesystem::exists(status)) throw plan_error(path + ": no such file");
  if (std::filesystem::is_directory(status)) throw plan_error(path + ": is a folder, not a plan");
  if (std::filesystem::is_regular_file(status)) {
    const auto size = std::filesystem::file_size(path, error);
    if (!error && size > largest_plan) {
      throw plan_error(path + ": " + std::to_string(size) + " bytes; a plan has at most " +
                       std::to_string(largest_plan));
    }
  }
  std::ifstream in{path, std::ios::binary};
  if (!in) throw plan_error(path + ": cannot be read");
  std::string text;
  std::array<char, 65536> block{};
  while (in.read(block.data(), block.size()) || in.gcount() > 0) {
    text.append(block.data(), static_cast<std::size_t>(in.gcount()));
    if (text.size() > largest_plan) {
      throw plan_error(path + ": more than " + std::to_string(largest_plan) + " bytes; a plan has at most that");
    }
  }
  return read_text(text, path);
}

}  // namespace plan_file
