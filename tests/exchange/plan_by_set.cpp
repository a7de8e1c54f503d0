// SPDX-License-Identifier: BSL-1.0
// Fills a plan key by key, as a form or a program would, from a file that is only taken apart: each key goes through
// plan::set. Prints what set refuses and what plan::validate finds, a mistake a line. bad_plans.py holds it against what
// the program says of the same file. Usage: plan_by_set FILE.toml
#include <cstdio>
#include <string>
#include <tankwright/exchange/files.hpp>
#include <tankwright/exchange/toml.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>

namespace te = tankwright::exchange;
namespace plan = tankwright::plan;

namespace {

void refuse(const std::string& path, std::string reason) {
  for (const char* const prefix : {"tankwright::plan::set: ", "tankwright::text::parse: "}) {
    if (reason.starts_with(prefix)) reason.erase(0, std::string{prefix}.size());
  }
  if (reason.starts_with(path + ": ")) reason.erase(0, path.size() + 2);
  std::printf("%s: %s\n", path.c_str(), reason.c_str());
}

void give(plan::build& build, const std::string& path, const te::node& value) {
  try {
    switch (value.is) {
      case te::node::kind::table:
        if (!path.empty() && !path.ends_with(']')) plan::add(build, path);
        for (const auto& [name, inside] : value.entries) give(build, path.empty() ? name : path + "." + name, inside);
        break;
      case te::node::kind::list:
        for (std::size_t i = 0; i < value.items.size(); ++i) {
          if (value.items[i].is == te::node::kind::table) plan::add(build, path);
          give(build, path + "[" + std::to_string(i + 1) + "]", value.items[i]);
        }
        break;
      case te::node::kind::number:
        plan::set(build, path, tankwright::text::of(value.number, tankwright::text::significant(17)));
        break;
      case te::node::kind::flag:
        plan::set(build, path, value.flag ? "true" : "false");
        break;
      case te::node::kind::text:
        plan::set(build, path, value.text);
        break;
      case te::node::kind::other:
        break;
    }
  } catch (const tankwright::error& mistake) {
    refuse(path, mistake.what());
  }
}

}  // namespace

int main(int count, char** arguments) {
  if (count != 2) return 2;
  try {
    plan::build build;
    give(build, {}, te::document_from_toml(te::read_file(arguments[1])));
    for (const plan::mistake& m : plan::validate(build)) {
      refuse(m.path, m.reason + (m.clashes.empty() ? "" : " (" + m.clashes + ")"));
    }
  } catch (const std::exception& mistake) {
    std::printf(": %s\n", mistake.what());
  }
}
