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

/// Try what a section will be asked for with what the others say, so that a mistake is reported at its table; one about
/// the water is reported at the water's temperature, where that is given.
template <class Try>
void try_section(section& top, std::string_view key, const std::optional<commissioning::water_plan>& water,
                 Try attempt) {
  const auto table = top.sub(key);
  if (!table) return;
  const auto of_section = [&] {
    try {
      attempt();
    } catch (const error& mistake) {
      const bool of_the_water = water && mistake.details().argument == "temperature" &&
                                mistake.details().value == in_celsius(water->temperature);
      if (!of_the_water) throw;
      top.sub("water")->fail_key("temperature", reason_of(mistake) + ", as [" + std::string{key} + "] needs it");
    }
  };
  table->attempt(of_section, {{"mix yield", "mix_yield"}, {"mix yield", "trial_batch"}});
}

/// Every section with the state that all of them make. `finish` has been called.
void try_together(section& top, const commissioning::plan& build) {
  const auto& water = build.water;
  const auto with_state = [&](std::string_view key, auto assess) {
    try_section(top, key, water, [&] { assess(commissioning::state_of(build)); });
  };
  if (build.vessel) with_state("vessel", [&](const auto& s) { (void)commissioning::assess_vessel(*build.vessel, s); });
  if (build.plumbing) {
    with_state("plumbing", [&](const auto& s) {
      (void)commissioning::assess_plumbing(*build.plumbing, s);
      (void)commissioning::assess_power_cut(*build.plumbing, s);
    });
  }
  if (water) {
    with_state("water", [&](const auto& s) {
      (void)commissioning::assess_water(commissioning::detail::with_volume(*water, s));
    });
  }
  if (build.room) with_state("room", [&](const auto& s) { (void)commissioning::assess_room(*build.room, s); });
  if (build.life) with_state("life", [&](const auto& s) { (void)commissioning::assess_life(*build.life, s); });
}

plan plan_from(const toml::table& table, const std::string& name) {
  section top{table, name, ""};
  if (table.empty()) top.fail_here("the plan is empty; commission --demo prints one to start from");
  plan all;
  commissioning::plan& build = all.build;
  build.title = top.text("title").value_or("Untitled plan");
  all.units = top.word("units", {"si", "us"}).value_or(0) == 1 ? text::unit_system::us : text::unit_system::si;
  if (auto water = top.sub("water")) build.water = read_water(*water);
  if (auto hold = top.sub("hold")) build.hold = read_hold(*hold);
  if (auto vessel = top.sub("vessel")) build.vessel = read_vessel(*vessel);
  if (auto plumbing = top.sub("plumbing")) build.plumbing = read_plumbing(*plumbing);
  if (auto room = top.sub("room")) build.room = read_room(*room);
  if (auto life = top.sub("life")) build.life = read_life(*life);
  top.finish();
  if (!build.hold && !build.vessel && !build.plumbing && !build.water && !build.room && !build.life) {
    top.fail_here("nothing to assess; expected a table such as [water]");
  }
  refuse_contradictions(top, build);
  try_together(top, build);
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
