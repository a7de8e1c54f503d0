// SPDX-License-Identifier: BSL-1.0
#include <tankwright/exchange.hpp>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/exchange/json.hpp>
#include <tankwright/exchange/json_text.hpp>
#include <tankwright/exchange/toml.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>

#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace te = tankwright::exchange;

namespace {

evidence there_and_back(const char* function) { return {function, kind::property, "there and back"}; }
evidence by_nlohmann(const char* function) { return {function, kind::library, "nlohmann-json reads it"}; }

std::string file_text(const std::string& path) {
  std::ifstream in{path, std::ios::binary};
  return {std::istreambuf_iterator<char>{in}, {}};
}

/// The plans that ship, by their names.
std::string shipped(const char* name) {
  return file_text(std::string{TANKWRIGHT_SOURCE_DIR} + "/examples/commission/" + name);
}

/// A folder of its own, gone at the end.
struct folder {
  std::string path = (std::filesystem::temp_directory_path() / "tankwright_exchange_test").string();
  folder() { std::filesystem::create_directories(path); }
  ~folder() { std::filesystem::remove_all(path); }
  [[nodiscard]] std::string file(const char* name) const { return path + "/" + name; }
};

std::string line(const std::string& toml) {
  const auto read = te::read_plan(toml, te::notation::toml);
  REQUIRE(!read.mistakes.empty());
  return te::line_of(read.mistakes.front(), "my.toml");
}

}  // namespace

TEST_CASE("exchange: the plans that ship come back from TOML and from JSON as they were") {
  for (const char* name : {"demo.toml", "demo_us.toml", "demo_flood.toml", "demo_plywood_us.toml"}) {
    const auto first = te::read_plan(shipped(name), te::notation::toml);
    REQUIRE_MESSAGE(first.usable(), name);
    const std::string toml = te::to_toml(first.build), json = te::to_json(first.build);
    const auto from_toml = te::read_plan(toml, te::notation::toml), from_json = te::read_plan(json, te::notation::json);
    REQUIRE(from_toml.usable());
    REQUIRE(from_json.usable());
    TW_HOLDS(there_and_back("tankwright::exchange::to_toml"), te::to_toml(from_toml.build) == toml);
    TW_HOLDS(there_and_back("tankwright::exchange::to_json"), te::to_json(from_json.build) == json);
    TW_HOLDS(there_and_back("tankwright::exchange::read_plan"), te::to_toml(from_json.build) == toml);
    const auto report = [](const plan::build& b) {
      return te::report_to_json(decisions::assess(b), {}, {.indent = 0});
    };
    const std::string whole = report(first.build);
    TW_HOLDS(there_and_back("tankwright::exchange::report_to_json"), report(from_json.build) == whole);
    const auto parsed = nlohmann::json::parse(whole);
    const auto all = decisions::assess(first.build);
    REQUIRE(parsed["findings"].size() == all.findings.size());
    for (std::size_t i = 0; i < all.findings.size(); ++i) {
      const auto& n = parsed["findings"][i]["numbers"];
      for (std::size_t j = 0, k = 0; j < all.findings[i].numbers.size(); ++j) {
        const auto& own = all.findings[i].numbers[j];
        if (!own.place.empty() || !std::isfinite(own.value.central)) continue;
        while (n[k]["id"].get<std::string>() != own.id) ++k;
        TW_HOLDS(by_nlohmann("tankwright::exchange::report_to_json"),
                 n[k]["central"].get<double>() == own.value.central);
        ++k;
      }
    }
  }
}

TEST_CASE("exchange: notes, doubts, odd texts and exact numbers survive") {
  plan::build build = basin();
  build.title = "a \"quoted\" title\\ with\ttab and ünicode";
  build.plumbing->note = "first line\nsecond line";
  plan::set(build, "plumbing.return[1].below_edge", "35 mm +/- 5 mm");
  plan::set_si(build, "plumbing.lift", 1.4500000000000066);
  for (const bool json : {false, true}) {
    const auto in = json ? te::notation::json : te::notation::toml;
    const auto back = te::read_plan(json ? te::to_json(build) : te::to_toml(build), in);
    REQUIRE(back.usable());
    CHECK(back.build.title == build.title);
    CHECK(back.build.plumbing->note == build.plumbing->note);
    TW_HOLDS(there_and_back("tankwright::exchange::read_plan"), back.build.plumbing->lift == build.plumbing->lift);
    TW_HOLDS(there_and_back("tankwright::exchange::read_plan"),
             back.build.plumbing->returns[0].below_edge == build.plumbing->returns[0].below_edge);
  }
}

TEST_CASE("exchange: every mistake of a file in one reading, each at its line") {
  const auto read = te::read_plan(
      "[vessel]\nlength = \"2 m\"\nwidht = \"1 m\"\nheight = \"0.8 kg\"\n"
      "water_level = 3\n[[plumbing]]\nlift = \"1 m\"\n",
      te::notation::toml);
  std::vector<std::size_t> lines;
  for (const auto& m : read.mistakes) lines.push_back(m.line);
  TW_HOLDS((evidence{"tankwright::exchange::line_of", kind::identity, "counted by hand"}),
           (lines == std::vector<std::size_t>{3, 4, 5, 6}));
  CHECK(te::line_of(read.mistakes[0], "p").find("p:3: vessel.widht: is not a key of vessel; did you mean width?") == 0);
  CHECK(line("[plumbing.return]\n").find("[[plumbing.return]]") != std::string::npos);
  CHECK(line("title = \"\"\"abc\n\n\n").find("my.toml:1: a text begins here") == 0);
  CHECK(line("[~a]\n") == "my.toml:1: a name cannot begin with ~");
  CHECK(line("title = \"abc\n[water]\n").find("my.toml:1: a text begins here and is not closed on its line") == 0);
  CHECK(line("title = \"a\\u009bb\"\n[water]\ntemperature = \"24 C\"\n").find("control character") !=
        std::string::npos);
  CHECK(line("format = 7\n[water]\n").find("newer version") != std::string::npos);
  CHECK(line("").find("empty") != std::string::npos);
  CHECK(line("[water]\ntemperature = \"77 C\"\n").find("did you mean 77 °F?") != std::string::npos);
  CHECK(line("title = \"a\\u0000b\"\n[water]\ntemperature = \"24 C\"\n").find("control character") !=
        std::string::npos);
  // JSON says where by its pointer.
  const auto json = te::read_plan(R"({"plumbing": {"return": [{"label": "a", "bore": "5 kg"}]}})", te::notation::json);
  REQUIRE(!json.mistakes.empty());
  CHECK(json.mistakes.front().pointer == "/plumbing/return/0/bore");
  const auto data = nlohmann::json::parse(te::mistakes_to_json(json.mistakes));
  TW_HOLDS(by_nlohmann("tankwright::exchange::mistakes_to_json"), data["mistakes"].size() == json.mistakes.size());
  TW_HOLDS(by_nlohmann("tankwright::exchange::write_mistakes"),
           data["mistakes"][0]["pointer"] == "/plumbing/return/0/bore");
}

TEST_CASE("exchange: what is no plan is refused before it is parsed") {
  const auto refused = [](const std::string& text, te::notation in = te::notation::toml) {
    try {
      te::check_text(text, in);
    } catch (const te::syntax_error& mistake) {
      return std::string{mistake.what()};
    }
    return std::string{};
  };
  const evidence by_form{"tankwright::exchange::check_text", kind::property, "what is no plan is refused"};
  TW_HOLDS(by_form, refused(std::string("\xff\xfe[\0", 4)).find("UTF-16") != std::string::npos);
  TW_HOLDS(by_form, refused(std::string("abc\0def", 7)).find("byte 4 is zero") != std::string::npos);
  TW_HOLDS(by_form, refused(std::string(1000001, ' ')).find("1000001 bytes") == 0);
  std::string dots = "[a";
  for (int i = 0; i < 100000; ++i) dots += ".a";
  TW_HOLDS(by_form, refused(dots + "]\n").find("100001 parts") != std::string::npos);
  TW_HOLDS(by_form, refused("[water]\ntemperature = \"24 C\"\n").empty());
  const evidence deep{"tankwright::exchange::document_from_json", kind::property, "read, or refused"};
  TW_HOLDS(deep, !te::read_plan("{\"a\":" + std::string(10000, '['), te::notation::json).usable());
  TW_HOLDS(deep, te::document_from_json(R"({"a": [1, "b", true]})").find("a")->items[1].text == "b");
  CHECK_FALSE(te::read_plan(R"({"a": 1, "a": 2})", te::notation::json).usable());
  const te::node toml = te::document_from_toml("x = 1\n[b]\ny = [\"c\"]\n");
  const evidence lines{"tankwright::exchange::document_from_toml", kind::identity, "counted by hand"};
  TW_HOLDS(lines, toml.find("b")->find("y")->line == 3);
  const evidence names{"tankwright::exchange::notation_of", kind::property, "by its ending"};
  TW_HOLDS(names, te::notation_of("a.JSON") == te::notation::json);
  TW_HOLDS(names, te::notation_of("json") == te::notation::toml);
}

TEST_CASE("exchange: texts are escaped as RFC 8259 has it, whatever their bytes") {
  for (const std::string text : {"plain", "a\"b\\c", "tab\tline\n", "\x01\x1f\x7f", "ünïcode ½"}) {
    TW_HOLDS(by_nlohmann("tankwright::exchange::quoted_text"),
             nlohmann::json::parse(te::quoted_text(text)).get<std::string>() == text);
  }
  CHECK(nlohmann::json::parse(te::quoted_text("a\xff\xc3")).get<std::string>() == "a\xEF\xBF\xBD\xEF\xBF\xBD");
}

TEST_CASE("exchange: the starter plan can be read and assessed, in both sets of units") {
  for (const auto units : {text::unit_system::si, text::unit_system::us}) {
    const auto read = te::read_plan(te::starter_plan(units), te::notation::toml);
    for (const auto& m : read.mistakes) MESSAGE(te::line_of(m, "starter"));
    TW_HOLDS(there_and_back("tankwright::exchange::starter_plan"), read.usable());
    CHECK(decisions::assess(read.build).findings.size() > 10);
  }
}

TEST_CASE("exchange: what the starter plan has commented out is a plan too when the # is taken away") {
  for (const auto units : {text::unit_system::si, text::unit_system::us}) {
    std::string open;
    int taken = 0;
    std::istringstream lines{te::starter_plan(units)};
    for (std::string line; std::getline(lines, line);) {
      const bool key = line.starts_with("# ") && line.find(" = ") != std::string::npos;
      taken += key;
      open += (key ? line.substr(2) : line) + "\n";
    }
    CHECK(taken == 5);
    const auto read = te::read_plan(open, te::notation::toml);
    for (const auto& m : read.mistakes) MESSAGE(te::line_of(m, "starter"));
    TW_HOLDS(there_and_back("tankwright::exchange::starter_plan"), read.usable());
    // A builder's numbers, not those that a kind of number is explained with: a metre of reserve, a yield of a half.
    CHECK(*read.build.plumbing->reserve <= inches(2.0));
    CHECK(*read.build.water->mix_yield > fraction(0.8));
  }
}

TEST_CASE("exchange: the schema of plans is JSON, knows every key, and is the one in docs") {
  const std::string schema = te::plan_schema();
  const auto parsed = nlohmann::json::parse(schema);
  TW_HOLDS(by_nlohmann("tankwright::exchange::plan_schema"),
           parsed["properties"]["plumbing"]["properties"]["return"]["items"]["properties"].contains("below_edge"));
  CHECK(file_text(std::string{TANKWRIGHT_SOURCE_DIR} + "/docs/plan.schema.json") == schema);
}

TEST_CASE("exchange: files are written whole, never over the input, never through a link") {
  const folder here;
  const std::string path = here.file("plan.toml"), other = here.file("other.toml");
  te::write_file(path, "one");
  const evidence whole{"tankwright::exchange::write_file", kind::property, "there and back"};
  TW_HOLDS(whole, te::read_file(path) == "one");
  std::filesystem::permissions(path, std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
  te::write_file(path, "two");
  CHECK((std::filesystem::status(path).permissions() & std::filesystem::perms::group_read) ==
        std::filesystem::perms::none);
  CHECK_THROWS_AS(te::write_file(path, "three", path), te::file_error);
  std::filesystem::create_symlink(path, other);
  CHECK_THROWS_AS(te::write_file(other, "four"), te::file_error);
  CHECK_THROWS_AS(te::write_file(here.path, "five"), te::file_error);
  CHECK_THROWS_AS(te::write_file("/dev/null", "six"), te::file_error);
  CHECK_THROWS_AS(te::write_file("", "seven"), te::file_error);
  TW_HOLDS(whole, te::read_file(path) == "two");
  std::size_t files = 0;
  for ([[maybe_unused]] const auto& f : std::filesystem::directory_iterator{here.path}) ++files;
  CHECK(files == 2);  // nothing is left beside them
  const evidence read{"tankwright::exchange::read_file", kind::property, "there and back"};
  TW_HOLDS(read, te::read_file(path).size() == 3);
  CHECK_THROWS_AS((void)te::read_file(here.file("none")), te::file_error);
  CHECK_THROWS_AS((void)te::read_file(here.path), te::file_error);
  CHECK_THROWS_AS((void)te::read_file(""), te::file_error);
  const evidence kept{"tankwright::exchange::save_plan", kind::property, "there and back"};
  te::write_file(path, "a = 1  # mine\n");
  TW_HOLDS(kept, te::save_plan(path, "a = 2\n"));
  TW_HOLDS(kept, te::read_file(path + ".bak") == "a = 1  # mine\n");
  TW_HOLDS(kept, !te::save_plan(path, "a = 3\n"));
}

TEST_CASE("a character of UTF-8 is as long as the standard says, and what is none has no length") {
  // Table 3-7 of the Unicode standard (well-formed byte sequences), its rows and the bytes just outside them.
  const evidence table{"tankwright::exchange::utf8_length", kind::published, "RFC 3629, section 4"};
  const auto length = [&](std::string_view text, std::size_t expected) {
    CAPTURE(std::string{text});
    TW_HOLDS(table, te::utf8_length(text, 0) == expected);
  };
  for (const std::string_view one : {std::string_view{"\0", 1}, std::string_view{"a"}, std::string_view{"\x7f"}})
    length(one, 1);
  for (const std::string_view two : {"\xc2\x80", "\xdf\xbf"}) length(two, 2);
  for (const std::string_view three : {"\xe0\xa0\x80", "\xed\x9f\xbf", "\xee\x80\x80", "\xef\xbf\xbf"})
    length(three, 3);
  for (const std::string_view four : {"\xf0\x90\x80\x80", "\xf4\x8f\xbf\xbf"}) length(four, 4);
  for (const std::string_view none :
       {"", "\x80", "\xbf", "\xc0\x80", "\xc1\xbf", "\xc2", "\xc2\x7f", "\xe0\x9f\xbf", "\xed\xa0\x80", "\xe2\x82",
        "\xf0\x8f\xbf\xbf", "\xf4\x90\x80\x80", "\xf5\x80\x80\x80", "\xff"}) {
    length(none, 0);
  }
  TW_HOLDS(table, te::utf8_length("a\xc3\xa9", 1) == 2);
  TW_HOLDS(table, te::utf8_length("a", 1) == 0);
}

TEST_CASE("what toml++ takes for granted is refused with its line") {
  const evidence toml{"tankwright::exchange::document_from_toml", kind::published,
                      "TOML 1.0: none of these is a document"};
  const auto refused = [&](std::string_view text, std::size_t line) {
    CAPTURE(std::string{text.substr(0, 80)});
    try {
      TW_HOLDS(toml, te::document_from_toml(text).entries.empty() && false);
    } catch (const te::syntax_error& e) {
      TW_HOLDS(toml, e.line() == line);
    }
  };
  refused("[.", 1);
  refused("[[[", 1);
  refused("[[.a]]", 1);
  refused("\xef\xbb\xbf[*]", 1);
  refused("a = 1\n\n  [ =]", 3);
  refused("a = \"\"\"\n[.\n\"\"\"\n[.\n\nb = 1\n", 4);
  refused("a = '[' # [\n[,\n", 2);
  refused(std::string(999'999, '['), 1);
  refused("a = 1\ns = [\"\", \"\",\xe2\x80\xa8\xe2\x80\xa8\nb = 1\n", 2);
  refused("a = 1\nh\xc3\xb6he = 2\n", 2);
  refused("a = [1,\n\xd1\x8f]\n", 2);
  refused("a = 1 \xce\xbc\n", 1);
}

TEST_CASE("letters that are no ASCII may stand in a name between quotation marks, and in a text") {
  const evidence toml{"tankwright::exchange::document_from_toml", kind::published, "TOML 1.0: quoted keys"};
  for (const std::string letter : {"\xc2\xa1", "\xc3\xb6", "\xc8\x83", "\xce\xbc", "\xd2\x99", "\xe6\xb0\xb4"}) {
    CAPTURE(letter);
    const auto read = te::document_from_toml("'h" + letter + "' = \"" + letter + "\"\n");
    REQUIRE(read.entries.size() == 1);
    TW_HOLDS(toml, read.entries[0].first == "h" + letter);
    TW_HOLDS(toml, read.entries[0].second.text == letter);
  }
}
