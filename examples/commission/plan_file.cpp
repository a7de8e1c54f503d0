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

/// What the sections share. Without a vessel, the display holds what the sump does not of the water to be made.
commissioning::system_state state_of(const plan& all) {
  commissioning::system_state state;
  if (all.water) {
    state.water = all.water->temperature;
    state.salinity = commissioning::detail::target_of(*all.water).central;
    state.air = all.water->air;
  }
  if (all.plumbing) commissioning::describe(state, *all.plumbing);
  if (all.water && all.water->new_water && !state.display_water) {
    const auto& made = *all.water->new_water;
    const auto sump = state.sump_water.value_or(estimate<volume>{});
    if (made.low > sump.high) {
      state.display_water = {made.low - sump.high, made.central - sump.central, made.high - sump.low, made.reason};
    }
  }
  return state;
}

constexpr std::uintmax_t largest_plan = 1000000;  // bytes; a plan is a page or two

plan plan_from(const toml::table& table, const std::string& name) {
  section top{table, name, ""};
  if (table.empty()) top.fail_here("the plan is empty; commission --demo prints one to start from");
  plan all;
  all.title = top.text("title").value_or("Untitled plan");
  all.units = top.word("units", {"si", "us"}).value_or(0) == 1 ? unit_system::us : unit_system::si;
  if (auto hold = top.sub("hold")) all.hold = read_hold(*hold);
  if (auto plumbing = top.sub("plumbing")) all.plumbing = read_plumbing(*plumbing);
  if (auto water = top.sub("water")) all.water = read_water(*water);
  if (auto room = top.sub("room")) {
    all.room = read_room(*room);
    room->attempt([&] { return commissioning::assess_room(*all.room, state_of(all)); });
  }
  if (auto life = top.sub("life")) {
    all.life = read_life(*life);
    life->attempt([&] { return commissioning::assess_life(*all.life, state_of(all)); });
  }
  top.finish();
  if (!all.hold && !all.plumbing && !all.water && !all.room && !all.life) {
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

commissioning::assessment assess(const plan& all) {
  commissioning::assessment result{.title = all.title};
  const auto add = [](auto& to, auto&& more) { to.insert(to.end(), more.begin(), more.end()); };
  if (all.hold) {
    const auto hold = commissioning::assess_hold(*all.hold);
    add(result.findings, hold.findings);
    add(result.figures, hold.figures);
  }
  const commissioning::system_state state = state_of(all);
  if (all.plumbing) {
    for (const auto& part : {commissioning::assess_plumbing(*all.plumbing, state),
                             commissioning::assess_power_cut(*all.plumbing, state)}) {
      add(result.findings, part.findings);
      add(result.figures, part.figures);
    }
  }
  if (all.water) add(result.findings, commissioning::assess_water(*all.water));
  if (all.room) {
    const auto room = commissioning::assess_room(*all.room, state);
    add(result.findings, room.findings);
    add(result.figures, room.figures);
  }
  if (all.life) {
    const auto life = commissioning::assess_life(*all.life, state);
    add(result.findings, life.findings);
    add(result.figures, life.figures);
  }
  return result;
}

}  // namespace plan_file
