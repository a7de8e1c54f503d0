// SPDX-License-Identifier: BSL-1.0
// Every formula of the list, with what nobody would give it: not a number, infinity, the smallest and the greatest
// numbers, negative ones, the ends of its ranges and a step beyond. What must come back is finite numbers or one of the
// library's three errors, within a bounded time. Arguments are made from the list of formulas, which says of each field
// what it is; nothing here knows a formula.
//
//   formulas_fuzz QUESTIONS [CALLS] [SEED] [NAME]
//
// QUESTIONS: what by_name.py had answered, a line each: half of the calls start from one of those. CALLS of each formula
// (default 400), SEED (default 1), only the formulas that hold NAME.
//
// A formula runs in a process of its own, so that one that ends the program, or never ends, is a row like the others.
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <fstream>
#include <limits>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <tankwright/core/errors.hpp>
#include <vector>

#include "formulas.hpp"
#include "glue.hpp"

namespace {

namespace tf = tankwright_formulas;
using json = nlohmann::json;

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double longest_call = 2.0;  // s of the processor; the sanitizers make a call ten times slower

/// splitmix64 (Steele, Lea and Flood 2014): the same numbers on every machine.
class dice {
 public:
  explicit dice(std::uint64_t seed) : state_{seed} {}
  [[nodiscard]] std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9E3779B97F4A7C15u);
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return z ^ (z >> 31);
  }
  [[nodiscard]] std::size_t below(std::size_t n) { return static_cast<std::size_t>(next() % n); }
  [[nodiscard]] double share() { return static_cast<double>(next() >> 11) * 0x1p-53; }
  [[nodiscard]] bool once_in(std::size_t n) { return below(n) == 0; }

 private:
  std::uint64_t state_;
};

/// What is ordinary in the trade, in SI: where no range says more. Both ends above zero: drawn by their logarithm.
struct ordinary {
  double low, high;
};
const std::map<std::string_view, ordinary> ordinary_values = {
    {"length", {2e-3, 3.0}},
    {"area", {0.01, 20.0}},
    {"volume", {1e-3, 10.0}},
    {"mass", {1e-3, 1000.0}},
    {"temperature", {273.0, 313.0}},
    {"temperature_difference", {0.1, 20.0}},
    {"practical_salinity", {1.0, 42.0}},
    {"absolute_salinity", {1.0, 42.0}},
    {"flow_rate", {1e-6, 1e-2}},
    {"duration", {1.0, 1e7}},
    {"mass_density", {1e-6, 2000.0}},
    {"mass_flow", {1e-12, 1.0}},
    {"pressure", {10.0, 1e9}},
    {"gauge_pressure", {10.0, 1e5}},
    {"absolute_pressure", {7e4, 1.1e5}},
    {"velocity", {0.01, 3.0}},
    {"power", {1.0, 5000.0}},
    {"force", {1.0, 1e4}},
    {"energy", {1e3, 1e9}},
    {"proportion", {0.01, 1.0}},
    {"porosity", {0.2, 0.6}},
    {"relative_humidity", {0.2, 0.9}},
    {"rate", {1e-7, 1.0}},
    {"angle", {0.1, 1.5}},
    {"electrical_conductivity", {0.1, 7.0}},
    {"heat_capacity", {1e3, 1e8}},
    {"number", {0.5, 30.0}},
};

class maker {
 public:
  maker(const json& all, dice& random) : all_{all}, random_{random} {
    for (const json& formula : all["formulas"]) {
      const json& result = formula["result"];
      if (result.contains("type")) makers_[result["type"].get<std::string>()].push_back(&formula);
    }
  }

  [[nodiscard]] json fields_of(const json& fields, int depth = 0) {
    json made = json::object();
    for (const json& field : fields) {
      const bool required = field.value("required", false);
      if (!required && !random_.once_in(depth > 3 ? 8 : 2)) continue;
      json value = value_of(field, depth + 1);
      if (!value.is_null()) made[field["name"].get<std::string>()] = std::move(value);
    }
    return made;
  }

 private:
  [[nodiscard]] json value_of(const json& spec, int depth) {
    if (depth > 12) return nullptr;
    const std::string kind = spec["kind"];
    if (kind == "quantity") return number(spec, spec["quantity"].get<std::string>());
    if (kind == "integer") return integer(spec);
    if (kind == "flag") return random_.once_in(2);
    if (kind == "text") return "one";
    if (kind == "optional") return value_of(spec["of"], depth + 1);
    if (kind == "list") return list(spec, depth);
    if (kind == "estimate") return band(spec, depth);
    if (kind == "one_of") return value_of(spec["options"][random_.below(spec["options"].size())], depth + 1);
    if (kind == "word" || kind == "fields" || kind == "value") {
      return of_type(spec["type"].get<std::string>(), spec, depth);
    }
    return nullptr;
  }

  [[nodiscard]] json of_type(const std::string& name, const json& spec, int depth) {
    const json& type = all_["types"][name];
    if (type.contains("words")) return type["words"][random_.below(type["words"].size())]["word"];
    const bool constants = type.contains("constants") && !type["constants"].empty();
    if (constants && random_.once_in(3)) return type["constants"][random_.below(type["constants"].size())];
    const auto by = makers_.find(name);
    const bool has_maker = by != makers_.end();
    const bool plain = (type.contains("fields") && type.value("given", true)) ||
                       (type.contains("as") && !type["as"].is_null()) ||
                       (type.contains("ways") && type["ways"].is_array() && !type["ways"].empty());
    if (has_maker && (!plain || random_.once_in(6)) && depth < 9) {
      const json& formula = *by->second[random_.below(by->second.size())];
      return json{{formula["name"].get<std::string>(), fields_of(formula["fields"], depth + 1)}};
    }
    if (!plain) return constants ? json(type["constants"][0]) : json(nullptr);
    if (type.contains("as") && !type["as"].is_null()) {
      return number(spec.contains("limits") ? spec : type["as"], type["as"]["quantity"].get<std::string>());
    }
    if (type.contains("ways") && type["ways"].is_array() && !type["ways"].empty()) {
      const json& way = type["ways"][random_.below(type["ways"].size())];
      return json{{way["name"].get<std::string>(), value_of(way, depth + 1)}};
    }
    return fields_of(type["fields"], depth);
  }

  [[nodiscard]] json band(const json& spec, int depth) {
    json of = spec["of"];
    if (spec.contains("limits")) of["limits"] = spec["limits"];
    json middle = value_of(of, depth + 1);
    if (!middle.is_number() || !random_.once_in(2)) return middle;
    const double x = middle.get<double>();
    return json{{"low", 0.9 * x}, {"central", x}, {"high", 1.1 * x}, {"reason", "a guess"}};
  }

  [[nodiscard]] json list(const json& spec, int depth) {
    json items = json::array();
    for (std::size_t n = random_.once_in(30) ? 0 : 1 + random_.below(4); n > 0; --n) {
      items.push_back(value_of(spec["of"], depth + 1));
    }
    // Curves and profiles run upwards.
    if (random_.once_in(2)) {
      std::sort(items.begin(), items.end(), [](const json& a, const json& b) {
        const auto first = [](const json& j) { return j.is_object() && !j.empty() ? *j.begin() : j; };
        return first(a).is_number() && first(b).is_number() && first(a) < first(b);
      });
    }
    return items;
  }

  [[nodiscard]] json integer(const json&) {
    static constexpr int some[] = {0, 1, 2, 3, 4, 7, 12, 30, 365};
    return some[random_.below(std::size(some))];
  }

  /// The factor and offset of a unit of a quantity to SI.
  void to_si(const std::string& quantity, const std::string& unit, double& x) const {
    if (!all_["units"].contains(quantity)) return;
    for (const json& u : all_["units"][quantity]) {
      if (u["unit"] == unit) x = x * u["factor"].get<double>() + u.value("offset", unit == "degC" ? 273.15 : 0.0);
    }
  }

  [[nodiscard]] json number(const json& spec, const std::string& quantity) {
    const auto known = ordinary_values.find(quantity);
    ordinary range = known == ordinary_values.end() ? ordinary{0.1, 100.0} : known->second;
    if (spec.contains("limits")) {
      for (const char* which : {"possible", "published"}) {
        if (!spec["limits"].contains(which)) continue;
        const json& ends = spec["limits"][which];
        const std::string unit = spec["limits"].value("unit", "");
        double low = ends.contains("low") ? ends["low"].get<double>() : -infinity;
        double high = ends.contains("high") ? ends["high"].get<double>() : infinity;
        to_si(quantity, unit, low);
        to_si(quantity, unit, high);
        if (random_.once_in(25)) return std::isfinite(low) && random_.once_in(2) ? low : high;
        if (random_.once_in(25))
          return std::nextafter(std::isfinite(low) ? low : high, random_.once_in(2) ? 1e9 : -1e9);
        if (low > range.high || high < range.low) range = {low, std::isfinite(high) ? high : 10.0 * low + 1.0};
        range.low = std::fmax(range.low, low);
        range.high = std::fmin(range.high, high);
      }
    }
    const double u = random_.share();
    if (range.low > 0.0 && range.high / range.low > 5.0) return range.low * std::pow(range.high / range.low, u);
    return range.low + u * (range.high - range.low);
  }

  const json& all_;
  dice& random_;
  std::map<std::string, std::vector<const json*>> makers_;
};

/// Every number in what is given, and what is written with its unit.
void numbers_in(json& j, std::vector<json*>& into) {
  const auto begins_a_number = [](const std::string& text) {
    return !text.empty() && text[0] >= '0' && text[0] <= '9';
  };
  if (j.is_number_float() || (j.is_string() && begins_a_number(j.get_ref<const std::string&>()))) into.push_back(&j);
  if (j.is_structured()) {
    for (json& part : j) numbers_in(part, into);
  }
}

[[nodiscard]] double strange(dice& random, double was) {
  static constexpr double some[] = {0.0,
                                    -0.0,
                                    1.0,
                                    -1.0,
                                    5e-324,
                                    2.2250738585072014e-308,
                                    1e-300,
                                    1e-100,
                                    1e-30,
                                    1e-15,
                                    1e-9,
                                    1e9,
                                    1e15,
                                    1e30,
                                    1e100,
                                    1e300,
                                    1.7976931348623157e308,
                                    -1e-300,
                                    -1e100,
                                    -1e-9,
                                    0.9999999999999999,
                                    1.0000000000000002,
                                    273.15,
                                    2147483648.0};
  switch (random.below(6)) {
    case 0:
      return std::numeric_limits<double>::quiet_NaN();
    case 1:
      return random.once_in(2) ? infinity : -infinity;
    case 2:
      return was * std::pow(10.0, 24.0 * random.share() - 12.0);
    case 3:
      return -was;
    default:
      return some[random.below(std::size(some))];
  }
}

/// Whether a number of the answer is none. A band is written as {"low": ..., "central": ..., "high": ..., "unit": ...}.
[[nodiscard]] bool not_finite(const json& answer) {
  if (answer.is_object() && answer.contains("not_finite")) return true;
  if (answer.is_object() && answer.contains("unit") && answer.contains("low")) {
    return !answer["low"].is_number() || !answer["central"].is_number() || !answer["high"].is_number();
  }
  if (!answer.is_structured()) return false;
  return std::any_of(answer.begin(), answer.end(), [](const json& part) { return not_finite(part); });
}

/// What is right as it is, and why.
struct allowed {
  std::string_view formula, what, why;
};
constexpr allowed as_it_is[] = {
    {"water.looks_like_a_gravity", "takes ", "a question: what is no number looks like no gravity"},
    {"vessel.along", "", "reads the beam that `bend` has solved, which is no input of a person"},
    {"vessel.total_water", "takes ", "adds the net volumes of other answers; their other numbers do not matter"},
    {"room.about", "gives ", "the ends of a law's range, which may be open"},
    {"room.chiller_for", "takes ", "the air of the tank gives way to that of the hottest day"},
    {"room.time_to_temperature_with_heat_capacity", "takes ", "the tank's heat capacity gives way to the band"},
};
[[nodiscard]] bool is_allowed(std::string_view formula, std::string_view what) {
  return std::any_of(std::begin(as_it_is), std::end(as_it_is), [&](const allowed& one) {
    return one.formula == formula && what.substr(0, one.what.size()) == one.what;
  });
}

struct tally {
  std::size_t answered = 0, refused = 0, not_read = 0;
  std::map<std::string, std::pair<std::size_t, std::string>> wrong;  ///< how often, and the first call
  void found(const std::string& what, const std::string& call) {
    auto& [count, first] = wrong[what];
    if (count++ == 0) first = call;
  }
};

std::string current;  ///< what to print when the program is ended from inside

[[noreturn]] void ended() {
  std::printf("WRONG ends the program: %s\n", current.c_str());
  std::fflush(stdout);
  std::_Exit(1);
}

extern "C" void out_of_time(int) { ended(); }

/// A text of what was given that keeps what JSON has no number for.
[[nodiscard]] std::string shown(const json& j) {
  if (j.is_number_float()) {
    char text[40];
    std::snprintf(text, sizeof text, "%.17g", j.get<double>());
    return text;
  }
  if (!j.is_structured()) return j.dump();
  std::string text;
  for (const auto& [name, part] : j.items()) {
    text += (text.empty() ? "" : ", ") + (j.is_object() ? json(name).dump() + ": " : std::string{}) + shown(part);
  }
  return j.is_object() ? "{" + text + "}" : "[" + text + "]";
}

[[nodiscard]] double processor_seconds() {
  rusage use{};
  getrusage(RUSAGE_SELF, &use);
  return static_cast<double>(use.ru_utime.tv_sec) + 1e-6 * static_cast<double>(use.ru_utime.tv_usec);
}

/// Whole numbers become floating ones, which the strange ones can replace; where an integer must be it is still one.
void loosen(json& j) {
  if (j.is_number_integer()) j = j.get<double>();
  if (j.is_structured()) {
    for (json& part : j) loosen(part);
  }
}

void try_one(const tf::row& formula, const json& spec, const std::vector<json>& asked, maker& make, dice& random,
             tally& count) {
  json fields = asked.empty() || random.once_in(2) ? make.fields_of(spec["fields"]) : asked[random.below(asked.size())];
  loosen(fields);
  if (formula.extrapolates && random.once_in(3)) fields["extrapolate"] = true;
  std::vector<json*> numbers;
  numbers_in(fields, numbers);
  bool none = false, infinite = false;
  if (!numbers.empty() && !random.once_in(8)) {
    for (std::size_t n = 1 + random.below(2); n > 0; --n) {
      json& one = *numbers[random.below(numbers.size())];
      one = strange(random, one.is_number() ? one.get<double>() : 1.0);
    }
    for (const json* one : numbers) {
      if (!one->is_number_float()) continue;
      none = none || std::isnan(one->get<double>());
      infinite = infinite || std::isinf(one->get<double>());
    }
  }
  current = std::string{formula.name} + " " + shown(fields);
  const double start = processor_seconds();
  double ended = 0.0;  // of the formula: to read its answer may take longer than to find it
  try {
    tf::given::kept lists;
    tf::answer out;
    formula.answer_to({&fields, formula.extrapolates, lists}, out);
    ended = processor_seconds();
    ++count.answered;
    const auto wrong = [&](bool is, const char* what) {
      if (is && !is_allowed(formula.name, what)) count.found(what, current);
    };
    wrong(not_finite(json::parse(out.json)), "gives a number that is none");
    wrong(none, "takes what is not a number");
    wrong(infinite, "takes infinity");
  } catch (const tankwright::error&) {
    ++count.refused;
  } catch (const std::exception& e) {
    count.found(std::string{"another error: "} + e.what(), current);
  } catch (...) {
    ++count.not_read;  // what the reader of JSON refuses
  }
  if (ended == 0.0) ended = processor_seconds();
  if (ended - start > longest_call) count.found("takes longer than 2 s", current);
}

[[nodiscard]] int fuzz(const tf::row& formula, const json& spec, const std::vector<json>& asked, const json& all,
                       std::size_t calls, std::uint64_t seed) {
  std::set_terminate(ended);
  signal(SIGALRM, out_of_time);
  std::uint64_t mixed = seed;
  for (const char c : formula.name) mixed = (mixed ^ static_cast<unsigned char>(c)) * 0x100000001B3u;
  dice random{mixed};
  maker make{all, random};
  tally count;
  for (std::size_t i = 0; i < calls; ++i) {
    alarm(60);
    try_one(formula, spec, asked, make, random, count);
  }
  alarm(0);
  for (const auto& [what, times] : count.wrong) {
    std::printf("WRONG %s (%zu times): %s\n", what.c_str(), times.first, times.second.c_str());
  }
  if (count.answered == 0) std::printf("WRONG never answered in %zu calls: %s\n", calls, current.c_str());
  std::printf("%s: %zu answered, %zu refused, %zu not read\n", std::string{formula.name}.c_str(), count.answered,
              count.refused, count.not_read);
  std::fflush(stdout);
  return count.wrong.empty() && count.answered > 0 ? 0 : 1;
}

}  // namespace

int main(int count, char** words) {
  if (count < 2) {
    std::fprintf(stderr, "usage: formulas_fuzz QUESTIONS [CALLS] [SEED] [NAME]\n");
    return 2;
  }
  const std::size_t calls = count > 2 ? std::strtoull(words[2], nullptr, 10) : 400;
  const std::uint64_t seed = count > 3 ? std::strtoull(words[3], nullptr, 10) : 1;
  const std::string_view only = count > 4 ? words[4] : "";
  std::map<std::string, std::vector<json>> asked;
  std::ifstream questions{words[1]};
  for (std::string line; std::getline(questions, line);) {
    const std::size_t tab = line.find('\t');
    asked[line.substr(0, tab)].push_back(json::parse(line.substr(tab + 1)));
  }
  const json all = json::parse(tf::list());
  std::map<std::string_view, const json*> specs;
  for (const json& formula : all["formulas"]) specs[formula["name"].get_ref<const std::string&>()] = &formula;
  std::size_t tried = 0, wrong = 0;
  for (const auto part : {tf::water_rows(), tf::vessel_rows(), tf::plumbing_rows(), tf::room_rows(), tf::life_rows()}) {
    for (const tf::row& formula : part) {
      if (formula.name.find(only) == std::string_view::npos) continue;
      std::fflush(stdout);
      const pid_t child = fork();
      if (child == 0)
        std::_Exit(fuzz(formula, *specs.at(formula.name), asked[std::string{formula.name}], all, calls, seed));
      int status = 1;
      waitpid(child, &status, 0);
      ++tried;
      if (status != 0) {
        ++wrong;
        if (WIFSIGNALED(status))
          std::printf("WRONG %s: signal %d\n", std::string{formula.name}.c_str(), WTERMSIG(status));
      }
    }
  }
  std::printf("%zu formulas, %zu calls each, seed %llu: %zu passed, %zu failed\n", tried, calls,
              static_cast<unsigned long long>(seed), tried - wrong, wrong);
  return wrong == 0 && tried > 0 ? 0 : 1;
}
