// SPDX-License-Identifier: BSL-1.0
// The formulas by their names, of tankwright.h: a part of its own, because a page may load it apart from the plans.
#include <cmath>
#include <tankwright/exchange/json.hpp>
#include <tankwright/exchange/json_text.hpp>

#include "border.hpp"
#include "formulas.hpp"
#include "tankwright.h"

namespace tf = tankwright_formulas;
namespace te = tankwright::exchange;
using namespace c_library;

namespace {

/// A formula was refused: its error as the formulas give it, read.
class refused_formula final : public told_refusal {
 public:
  explicit refused_formula(const te::node& data)
      : told_refusal{code_of(text(data, "kind")), text(data, "what")}, data_{data} {}

  void write(te::json_text& out) const override {
    for (const auto& [key, value] : data_.entries) {
      if (key == "kind" || key == "what") continue;
      write_entry(out, key, value);
    }
  }

 private:
  [[nodiscard]] static std::string text(const te::node& data, std::string_view key) {
    const te::node* found = data.find(key);
    return found ? found->text : std::string{};
  }
  [[nodiscard]] static tw_status code_of(std::string_view kind) noexcept {
    if (kind == "unknown_formula") return TW_BAD_ARGUMENT;
    if (kind == "invalid_input") return TW_INVALID_INPUT;
    if (kind == "out_of_range") return TW_OUT_OF_RANGE;
    if (kind == "no_convergence") return TW_NO_CONVERGENCE;
    return kind == "failure" ? TW_INTERNAL : TW_BAD_VALUE;
  }
  static void write_entry(te::json_text& out, const std::string& key, const te::node& value) {
    if (value.is == te::node::kind::number) out.key(key).number(value.number);
    if (value.is == te::node::kind::text && !value.text.empty()) out.key(key).text(value.text);
    if (value.is == te::node::kind::table) {  // the limits
      for (const auto& [name, end] : value.entries) write_entry(out, name, end);
    }
    if (value.is == te::node::kind::list) {
      out.key(key).open_list();
      for (const te::node& item : value.items) out.text(item.text);
      out.close_list();
    }
  }

  te::node data_;
};

[[noreturn]] void refuse_number(std::int32_t formula) {
  throw refusal{TW_BAD_ARGUMENT, "formula " + std::to_string(formula) + " is none that plain numbers can call"};
}

}  // namespace

extern "C" {

tw_status tw_formula_list(char** json, char** error) {
  return guarded(error, [&] {
    empty(json, "json");
    *json = text_out(tf::list());
  });
}

tw_status tw_formula_call(const char* name, const char* fields, char** result, char** error) {
  return guarded(error, [&] {
    empty(result, "result");
    const std::string_view which = text_in(name, "name"), with = text_in(fields, "fields");
    const std::string said = tf::call(which, with);
    if (said.starts_with("{\"error\":")) throw refused_formula{*te::document_from_json(said).find("error")};
    *result = text_out(said);
  });
}

tw_status tw_formula_find(const char* name, int32_t* formula, size_t* in, size_t* out, char** error) {
  return guarded(error, [&] {
    need(formula, "formula");
    need(in, "in");
    need(out, "out");
    *formula = -1;
    *in = *out = 0;
    const std::string_view which = text_in(name, "name");
    const int found = tf::find(which);
    // The formulas know the nearest name; they are asked for it only where there is none.
    if (found < 0) throw refused_formula{*te::document_from_json(tf::call(which, "{}")).find("error")};
    const tf::numbers plain = tf::numbers_of(found);
    if (!plain.can) throw refusal{TW_BAD_ARGUMENT, std::string{which} + " cannot be called by plain numbers alone"};
    *formula = found;
    *in = plain.in;
    *out = plain.out;
  });
}

tw_status tw_formula_defaults(int32_t formula, double* in, char** error) {
  return guarded(error, [&] {
    need(in, "in");
    if (!tf::numbers_of(formula).can) refuse_number(formula);
    tf::defaults(formula, in);
  });
}

tw_status tw_formula_numbers(int32_t formula, const double* in, double* out, int extrapolate, char** error) {
  return guarded(error, [&] {
    need(in, "in");
    need(out, "out");
    if (!tf::numbers_of(formula).can) refuse_number(formula);
    tf::call_numbers(formula, in, out, extrapolate != 0);
  });
}

}  // extern "C"
