// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <set>
#include <string>
#include <tankwright/plan/keys.hpp>

#include "plan/every_key.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence about{"tankwright::plan::all_keys", kind::identity, "the structs of the plan, by hand"};

const plan::key_row* row_at(const plan::key_list& all, std::string_view path) {
  const auto it = std::find_if(all.keys.begin(), all.keys.end(), [&](const auto& r) { return r.path == path; });
  return it == all.keys.end() ? nullptr : &*it;
}

}  // namespace

TEST_CASE("the list of keys: each once, tables before their keys, and what is said of them") {
  const plan::key_list all = plan::all_keys();
  std::set<std::string> seen{""};
  for (const plan::key_row& row : all.keys) {
    CAPTURE(row.path);
    TW_HOLDS(about, seen.insert(row.path).second);
    TW_HOLDS(about, seen.count(row.table) == 1);
    TW_HOLDS(about, row.path == (row.table.empty() ? "" : row.table + ".") + std::string{row.about.name} +
                                    (row.kind == plan::key_kind::tables ? "[]" : ""));
  }
  const plan::key_row* edge = row_at(all, "plumbing.return[].below_edge");
  REQUIRE(edge);
  TW_HOLDS(about, edge->kind == plan::key_kind::number && edge->about.quantity == "length" && edge->about.needed);
  TW_HOLDS(about, edge->about.set_by == plan::set_by::chosen && edge->about.searched && edge->otherwise.empty());
  TW_HOLDS(about, row_at(all, "plumbing.return[]")->kind == plan::key_kind::tables);
  TW_HOLDS(about, row_at(all, "life.room")->kind == plan::key_kind::table);
  const std::vector<std::string_view> kinds{"dry", "wet"};
  TW_HOLDS(about, row_at(all, "life.food[].kind")->words == kinds);
  TW_HOLDS(about, row_at(all, "life.forecast")->otherwise == "true");
  TW_HOLDS(about, row_at(all, "units")->otherwise == "si");
  TW_HOLDS(about, row_at(all, "life.arrivals.step")->otherwise == "25 %");
  TW_HOLDS(about, row_at(all, "plumbing.pump.flows")->kind == plan::key_kind::numbers);
  TW_HOLDS(about, row_at(all, "title")->kind == plan::key_kind::text && row_at(all, "title")->table.empty());
}

TEST_CASE("the rules among keys: one of them, or together") {
  const plan::key_list all = plan::all_keys();
  const auto rule = [&](std::string_view table, std::vector<std::string_view> names) -> const plan::key_rule* {
    const auto it = std::find_if(all.rules.begin(), all.rules.end(),
                                 [&](const auto& r) { return r.table == table && r.names == names; });
    return it == all.rules.end() ? nullptr : &*it;
  };
  const plan::key_rule* surface = rule("life.surface[]", {"area", "volume", "bed", "rock"});
  REQUIRE(surface);
  TW_HOLDS(about, !surface->together && surface->needed);
  const plan::key_rule* media = rule("life.surface[]", {"volume", "specific_surface"});
  REQUIRE(media);
  TW_HOLDS(about, media->together);
}

TEST_CASE("every table has a note, which every plan keeps") {
  for (const plan::key_row& row : plan::all_keys().keys) {
    if (row.kind != plan::key_kind::table && row.kind != plan::key_kind::tables) continue;
    const std::string path = first_of_each(row.path) + ".note";
    CAPTURE(path);
    plan::build build;
    plan::set(build, path, "bought in spring");
    TW_HOLDS(about, plan::get(build, path) == "bought in spring");
  }
}
