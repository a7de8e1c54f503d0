// SPDX-License-Identifier: BSL-1.0
// Plan files that were broken on the way: bytes flipped, values swapped, cut off, doubled, nested without end. Each is
// refused with reasons or assessed. TANKWRIGHT_BROKEN says how many (400; continuous integration: 10000).
#include <cstdlib>
#include <fstream>
#include <random>
#include <sstream>

#include "fuzz/try_plan.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace te = tankwright::exchange;

namespace {

[[nodiscard]] std::string example(const char* name) {
  std::ifstream file{std::string{TANKWRIGHT_SOURCE_DIR} + "/examples/commission/" + name + ".toml"};
  std::ostringstream all;
  all << file.rdbuf();
  return all.str();
}

[[nodiscard]] std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in{text};
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

[[nodiscard]] std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += line + "\n";
  return text;
}

/// One way in which a file breaks.
[[nodiscard]] std::string broken(std::string text, std::mt19937& random) {
  const auto below = [&](std::size_t n) { return std::uniform_int_distribution<std::size_t>{0, n - 1}(random); };
  auto lines = lines_of(text);
  switch (below(8)) {
    case 0:  // bits flipped
      for (std::size_t i = below(5) + 1; i > 0; --i) {
        char& c = text[below(text.size())];
        c = static_cast<char>(static_cast<unsigned char>(c) ^ (1u << below(8)));
      }
      return text;
    case 1:  // cut off
      return text.substr(0, below(text.size()));
    case 2: {  // what two keys say, swapped
      for (std::size_t i = below(6) + 1; i > 0; --i) {
        std::string &a = lines[below(lines.size())], &b = lines[below(lines.size())];
        const auto x = a.find(" = "), y = b.find(" = ");
        if (&a == &b || x == std::string::npos || y == std::string::npos) continue;
        std::string says = a.substr(x);
        a.replace(x, std::string::npos, b.substr(y));
        b.replace(y, std::string::npos, says);
      }
      return joined(lines);
    }
    case 3:  // a line lost, or twice
      for (std::size_t i = below(4) + 1; i > 0; --i) {
        const auto at = lines.begin() + static_cast<std::ptrdiff_t>(below(lines.size()));
        if (below(2) == 0) {
          lines.erase(at);
        } else {
          lines.insert(at, std::string{*at});
        }
      }
      return joined(lines);
    case 4: {  // a number of another size
      for (std::size_t i = below(6) + 1; i > 0; --i) {
        std::string& line = lines[below(lines.size())];
        const auto digit = line.find_first_of("0123456789", line.find('=') == std::string::npos ? 0 : line.find('='));
        if (digit == std::string::npos) continue;
        constexpr const char* others[] = {"0", "-", "1e9", "1e-9", "999", "1e308", "nan", "0.0000001", "."};
        line.insert(digit, others[below(std::size(others))]);
      }
      return joined(lines);
    }
    case 5:  // nested without end, somewhere
      return text.insert(below(text.size()), std::string(below(20000), below(2) == 0 ? '[' : '{'));
    case 6:  // very long
      return text.insert(below(text.size()), std::string(below(200000), "x\"'\n ="[below(6)]));
    default: {  // parts of two files
      const std::string other = example("demo_us");
      return text.substr(0, below(text.size())) + other.substr(below(other.size()));
    }
  }
}

}  // namespace

TEST_CASE("broken plans: each is refused with reasons, or assessed") {
  const evidence survives{"tankwright::exchange::read_plan", kind::property, "files broken on the way"};
  const char* said = std::getenv("TANKWRIGHT_BROKEN");
  const int wanted = said ? std::atoi(said) : 400;
  constexpr unsigned seed = 20261129;
  MESSAGE("seed ", seed);
  std::mt19937 random{seed};
  int assessed = 0;
  for (int i = 0; i < wanted; ++i) {
    constexpr const char* names[] = {"demo", "demo_us", "demo_flood", "demo_plywood_us"};
    std::string text = example(names[i % 4]);
    const auto in = i % 3 == 0 ? te::notation::json : te::notation::toml;
    if (in == te::notation::json) text = te::to_json(te::read_plan(text, te::notation::toml).build);
    text = broken(std::move(text), random);
    if (i % 5 == 0) text = broken(std::move(text), random);
    assessed += try_plan(text, in) == outcome::assessed;  // ends the program where something is wrong
  }
  MESSAGE(assessed, " of ", wanted, " were still plans");
  TW_HOLDS(survives, assessed > 0);
  TW_HOLDS(survives, assessed < wanted);
}
