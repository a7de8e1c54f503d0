// SPDX-License-Identifier: BSL-1.0
// Any bytes as calls of the C interface, guided by coverage: handles that are there, freed, or never were; paths and texts of
// the input. Nothing ends the program, each failure has its text, and none is the library's own fault. Built where
// TANKWRIGHT_FUZZ is on (Clang).
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "tankwright.h"

namespace {

/// Takes its arguments from the input; what is missing is zero or empty.
class input {
 public:
  input(const std::uint8_t* data, std::size_t size) : at_{data}, end_{data + size} {}
  [[nodiscard]] bool more() const { return at_ < end_; }
  std::uint8_t byte() { return at_ < end_ ? *at_++ : std::uint8_t{0}; }
  std::string text(std::size_t most) {
    std::string s;
    std::size_t length = byte();
    if (length > most) length %= most + 1;
    while (length-- > 0 && at_ < end_) s += static_cast<char>(*at_++);
    return s;
  }
  double number() {
    constexpr double some[] = {0.0, -1.0, 1.0, 1e-3, 25.0, 298.15, 1e100, -1e-300, 5e-324, HUGE_VAL, -HUGE_VAL, NAN};
    const std::uint8_t b = byte();
    return b < sizeof some / sizeof *some ? some[b] : (b - 128.0) * std::pow(10.0, byte() % 8 - 4.0);
  }

 private:
  const std::uint8_t* at_;
  const std::uint8_t* end_;
};

constexpr const char* paths[] = {"vessel.length",
                                 "vessel.panel[1].thickness",
                                 "plumbing.return[left].below_edge",
                                 "plumbing.pump.flows",
                                 "water.temperature",
                                 "life.animals[1].count",
                                 "room.appliance[]",
                                 "title",
                                 ""};

struct formula {
  std::int32_t id = 0;
  std::size_t in = 0, out = 0;
};

/// All formulas that take plain numbers, by the list that the library gives.
const std::vector<formula>& callable() {
  static const std::vector<formula> all = [] {
    std::vector<formula> found;
    char *json = nullptr, *error = nullptr;
    if (tw_formula_list(&json, &error) != TW_OK) std::abort();
    const std::string list = json;
    tw_free(json);
    const std::string before = "\"name\": \"";
    for (std::size_t at = list.find(before); at != std::string::npos; at = list.find(before, at + 1)) {
      const std::size_t from = at + before.size();
      const std::string name = list.substr(from, list.find('"', from) - from);
      if (name.find('.') == std::string::npos) continue;  // a field
      formula f;
      if (tw_formula_find(name.c_str(), &f.id, &f.in, &f.out, &error) == TW_OK) found.push_back(f);
      tw_free(error);
      error = nullptr;
    }
    return found;
  }();
  return all;
}

void expect(bool holds, const char* what) {
  if (holds) return;
  std::fprintf(stderr, "%s\n", what);
  std::abort();
}

void settle(tw_status status, char* error) {
  expect(status >= TW_OK && status <= TW_NO_MEMORY, error ? error : "a fault of the library");
  expect((status != TW_OK) == (error != nullptr), "a failure without a text, or a text without a failure");
  tw_free(error);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  input in{data, size};
  std::vector<tw_plan*> plans;  // freed ones stay in it: handles that are none any longer
  const auto handle = [&]() -> tw_plan* { return plans.empty() ? nullptr : plans[in.byte() % plans.size()]; };
  const auto path = [&] {
    const std::uint8_t which = in.byte();
    return which < sizeof paths / sizeof *paths ? std::string{paths[which]} : in.text(60);
  };
  std::vector<tw_plan*> alive;
  for (int calls = 0; in.more() && calls < 60; ++calls) {
    char *error = nullptr, *text = nullptr;
    tw_plan* made = nullptr;
    double number = 0.0;
    tw_status status = TW_OK;
    switch (in.byte() % 16) {
      case 0:
        status = tw_plan_new(&made, &error);
        break;
      case 1: {
        const std::string given = in.text(255);
        status = tw_plan_read(given.data(), given.size(), in.byte() % 3, &made, &error);
        break;
      }
      case 2: {
        const std::string given = in.text(255);
        status = tw_plan_read_what_can_be(given.data(), given.size(), in.byte() % 3, &made, &text, &error);
        break;
      }
      case 3:
        status = tw_plan_starter(in.byte() % 3, &made, &error);
        break;
      case 4:
        status = tw_plan_copy(handle(), &made, &error);
        break;
      case 5: {
        tw_plan* const which = handle();
        status = tw_plan_free(which);
        if (status == TW_OK && which) {
          for (auto& a : alive) a = a == which ? nullptr : a;
        }
        status = TW_OK;  // it says so without a text
        break;
      }
      case 6:
        status = tw_plan_set(handle(), path().c_str(), in.text(40).c_str(), &error);
        break;
      case 7:
        status = tw_plan_set_si(handle(), path().c_str(), in.number(), &error);
        break;
      case 8:
        status = tw_plan_get(handle(), path().c_str(), &text, &error);
        break;
      case 9:
        status = tw_plan_get_si(handle(), path().c_str(), &number, &error);
        break;
      case 10:
        status = tw_plan_clear(handle(), path().c_str(), &error);
        break;
      case 11:
        status = tw_plan_add(handle(), path().c_str(), &text, &error);
        break;
      case 12:
        status = tw_plan_write(handle(), in.byte() % 3, &text, &error);
        break;
      case 13:
        status = tw_plan_validate(handle(), &text, &error);
        break;
      case 14:
        status = tw_plan_findings(handle(), in.byte() % 2 ? nullptr : in.text(30).c_str(), &text, &error);
        break;
      default: {
        if (callable().empty()) break;
        const formula& f = callable()[static_cast<std::size_t>(in.byte() * 256 + in.byte()) % callable().size()];
        std::vector<double> given(f.in + 1), answer(f.out + 1);
        char* first = nullptr;
        expect(tw_formula_defaults(f.id, given.data(), &first) == TW_OK, "no defaults");
        for (double& x : given) x = std::isnan(x) || in.byte() % 4 == 0 ? in.number() : x;
        status = tw_formula_numbers(f.id, given.data(), answer.data(), in.byte() % 2, &error);
        tw_free(first);
        break;
      }
    }
    settle(status, error);
    tw_free(text);
    if (made) plans.push_back(made), alive.push_back(made);
  }
  for (tw_plan* one : alive) {
    if (one) expect(tw_plan_free(one) == TW_OK, "a plan that was made cannot be freed");
  }
  return 0;
}
