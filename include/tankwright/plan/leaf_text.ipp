// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/names.hpp>
#include <tankwright/text/written.hpp>

namespace tankwright::plan {

namespace detail {

[[nodiscard]] inline std::string_view trimmed(std::string_view text) noexcept {
  while (text.starts_with(' ')) text.remove_prefix(1);
  while (text.ends_with(' ')) text.remove_suffix(1);
  return text;
}

/// Whether a text with a doubt says this number; one that cannot exist (120 % of a proportion) is refused.
[[nodiscard]] inline bool reads_back(std::string_view text, std::string_view quantity, const value_base& v) {
  try {
    const text::written read = text::read_written(text, quantity);
    return read.si == v.si() && read.half_width == v.doubt().half_width;
  } catch (const text_error&) {
    return false;
  }
}

}  // namespace detail

TANKWRIGHT_INLINE void give_quantity(value_base& v, std::string_view quantity, std::string_view text) {
  const text::written read = text::read_written(text, quantity);
  v.give(read.si, read.unit, {read.half_width, read.has_doubt});
}

TANKWRIGHT_INLINE std::string quantity_text(const value_base& v, std::string_view quantity) {
  if (!v.given()) return {};
  std::string text = text::write_exactly(v.si(), v.unit(), quantity);
  if (v.doubt().given) {
    const std::string_view step = core::step_quantity_name(quantity);
    const std::string_view unit = quantity == "temperature" ? std::string_view{"K"} : v.unit();
    text += " +/- " + text::write_exactly(v.doubt().half_width, unit, step);
    // A number that no text in its unit gives back has none, and would take that of its doubt.
    if (!detail::reads_back(text, quantity, v)) {
      const auto in_si = [](double number, std::string_view kind) {
        const std::string_view si = text::si_unit(kind);
        if (si.empty()) return text::of(number, text::significant(17));
        return text::in(amount{kind, number, number, number}, si, text::significant(17));
      };
      text = in_si(v.si(), quantity) + " +/- " + in_si(v.doubt().half_width, step);
    }
  }
  return text;
}

TANKWRIGHT_INLINE void give_word(const leaf& here, std::string_view text) {
  std::vector<std::string> words;
  std::string accepted;
  for (std::size_t i = 0; i < here.words.size(); ++i) {
    if (here.words[i] == text) return here.word->give(static_cast<int>(i));
    words.emplace_back(here.words[i]);
    accepted += (i ? ", \"" : "\"") + words.back() + "\"";
  }
  const std::string nearest = nearest_name(text, words);
  detail::refuse_text(
      text, nearest.empty() ? "is not known here" : "is not known here; did you mean \"" + nearest + "\"?", accepted);
}

TANKWRIGHT_INLINE void give_text(const leaf& here, std::string_view text) {
  if (here.number) return give_quantity(*here.number, here.key.quantity, text);
  if (here.word) return give_word(here, text);
  if (here.rating) return here.rating->read(text);
  if (here.text) {
    *here.text = text;
    return;
  }
  if (here.yes) {
    if (text != "true" && text != "false") detail::refuse_text(text, "is neither yes nor no", "true or false");
    *here.yes = text == "true";
    return;
  }
  values_base read;  // the list is replaced only when all of it can be read
  if (here.element > 0) {
    value_base& one = read.items.emplace_back();
    give_quantity(one, here.key.quantity, text);
    if (here.element > here.numbers->size()) here.numbers->items.emplace_back();
    here.numbers->items[here.element - 1] = read.items.front();
    return;
  }
  for (std::string_view rest = text; !rest.empty();) {
    const auto comma = rest.find(',');
    give_quantity(read.items.emplace_back(), here.key.quantity, detail::trimmed(rest.substr(0, comma)));
    rest = comma == std::string_view::npos ? std::string_view{} : rest.substr(comma + 1);
  }
  here.numbers->items = std::move(read.items);
}

TANKWRIGHT_INLINE std::string text_at(const leaf& here) {
  if (here.number) return quantity_text(*here.number, here.key.quantity);
  if (here.word) return here.word->given() ? std::string{here.words[static_cast<std::size_t>(here.word->index())]} : "";
  if (here.rating) return here.rating->given() ? here.rating->write() : "";
  if (here.text) return *here.text;
  if (here.yes) return here.yes->given() ? (*here.yes ? "true" : "false") : "";
  std::string all;
  if (!here.numbers) return all;
  if (here.element > 0) return quantity_text(here.numbers->items[here.element - 1], here.key.quantity);
  for (const auto& item : here.numbers->items)
    all += (all.empty() ? "" : ", ") + quantity_text(item, here.key.quantity);
  return all;
}

}  // namespace tankwright::plan
