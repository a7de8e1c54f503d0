// SPDX-License-Identifier: BSL-1.0
// Prints the keys of plans as Markdown, one table for each table of a plan, from the descriptions alone. What stands
// between `<!-- keys: water -->` and `<!-- /keys -->` in docs/guides/plan-file/ is written and held by
// tests/lint/key_tables.py.
#include <cstdio>
#include <string>
#include <tankwright/plan/keys.hpp>
#include <tankwright/text/quantity.hpp>

namespace plan = tankwright::plan;
namespace text = tankwright::text;

namespace {

[[nodiscard]] std::string said(double si, std::string_view quantity) {
  const tankwright::amount q{quantity, si, si, si};
  return text::in(q, text::shown_unit(text::everyday_unit(q, text::unit_system::si)), text::significant(4));
}

[[nodiscard]] std::string words_for(std::string_view quantity) {
  std::string words{quantity};
  for (char& c : words) c = c == '_' ? ' ' : c;
  return words;
}

[[nodiscard]] std::string doubt_of(const plan::key_info& key) {
  const double size = key.doubt.size;
  switch (key.doubt.kind) {
    case plan::doubt_kind::none:
      return {};
    case plan::doubt_kind::distance:
      return "± " + said(size, tankwright::core::step_quantity_name(key.quantity));
    case plan::doubt_kind::share:
      return "± " + text::of(100.0 * size, text::significant(3)) + " %";
    case plan::doubt_kind::factor:
      return "a factor of " + text::of(size, text::significant(3));
  }
  return {};
}

[[nodiscard]] std::string holds(const plan::key_row& row) {
  using enum plan::key_kind;
  switch (row.kind) {
    case number:
      return words_for(row.about.quantity);
    case numbers:
      return "list: " + words_for(row.about.quantity);
    case word: {
      std::string all;
      for (const std::string_view w : row.words) all += (all.empty() ? "`\"" : ", `\"") + std::string{w} + "\"`";
      return all;
    }
    case flag:
      return "true or false";
    case rating:
      return "text such as `\"" + std::string{row.example} + "\"`";
    case plan::key_kind::text:
      return "text";
    case table:
    case tables:
      break;
  }
  return "table";
}

/// `[[plumbing.return]]` for plumbing.return[].
[[nodiscard]] std::string header(const plan::key_row& row) {
  std::string name;
  for (const char c : row.path) {
    if (c != '[' && c != ']') name += c;
  }
  const bool list = row.kind == plan::key_kind::tables;
  return (list ? "[[" : "[") + name + (list ? "]]" : "]");
}

void print_table(const plan::key_list& all, const plan::key_row& of) {
  std::printf("\n`%s`%s%s: %.*s\n\n", header(of).c_str(), of.kind == plan::key_kind::tables ? ", once for each" : "",
              of.about.needed ? ", needed" : "", static_cast<int>(of.about.means.size()), of.about.means.data());
  std::printf("| key | holds | from .. to | without it | meaning |\n|--|--|--|--|--|\n");
  for (const plan::key_row& row : all.keys) {
    const std::string name = row.path.substr(row.path.rfind('.') + 1);
    const bool table = row.kind == plan::key_kind::table || row.kind == plan::key_kind::tables;
    if (row.table != of.path || table || name == "note") continue;
    const bool number = !row.about.quantity.empty();
    const std::string doubt = doubt_of(row.about);
    const std::string limits =
        number ? said(row.about.low, row.about.quantity) + " .. " + said(row.about.high, row.about.quantity) : "";
    std::printf("| `%s` | %s%s | %s | %s | %s%s |\n", name.c_str(), holds(row).c_str(),
                row.about.whole ? ", whole" : "", limits.c_str(), row.about.needed ? "needed" : row.otherwise.c_str(),
                std::string{row.about.means}.c_str(),
                doubt.empty() ? "" : ("; known " + (doubt.starts_with("a") ? "within " + doubt : doubt)).c_str());
  }
  for (const plan::key_rule& rule : all.rules) {
    if (rule.table != of.path) continue;
    std::string names;
    for (const std::string_view n : rule.names) names += (names.empty() ? "`" : ", `") + std::string{n} + "`";
    std::printf("\n%s %s.\n",
                rule.together ? "Given together or not at all:"
                : rule.needed ? "Exactly one of"
                              : "At most one of",
                names.c_str());
  }
}

}  // namespace

int main() {
  const plan::key_list all = plan::all_keys();
  for (const plan::key_row& row : all.keys) {
    if (row.kind != plan::key_kind::table && row.kind != plan::key_kind::tables) continue;
    if (row.table.empty()) std::printf("<!-- keys: %s -->\n", row.path.c_str());
    print_table(all, row);
  }
}
