// SPDX-License-Identifier: BSL-1.0
#include <algorithm>

#include "render.hpp"

namespace report {

using namespace tankwright;
using decisions::number;
using decisions::finding;
using decisions::role;

namespace {

constexpr std::size_t width = 80;

/// Columns that a text takes: bytes of UTF-8 that continue a character take none.
std::size_t columns(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; }));
}

std::string padded(std::string text, std::size_t to) {
  const std::size_t have = columns(text);
  return have < to ? text + std::string(to - have, ' ') : text;
}

/// Words filled into lines of 80 columns; the first line starts with `first`, the others with as many spaces.
std::string filled(std::string_view first, std::string_view text) {
  const std::string margin(columns(first), ' ');
  std::string out;
  std::string line{first};
  std::size_t used = columns(first);
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t end = std::min(text.find(' ', i), text.size());
    const std::string_view word = text.substr(i, end - i);
    i = end + 1;
    if (word.empty()) continue;
    const bool starts_line = used == margin.size();
    if (!starts_line && used + 1 + columns(word) > width) {
      out += line + "\n";
      line = margin;
      used = margin.size();
    } else if (!starts_line) {
      line += ' ';
      ++used;
    }
    line += word;
    used += columns(word);
  }
  return out + line + "\n";
}

/// What happens or is asked, and the answer at the right edge; more lines where one is too short.
std::string line_of(const finding& f, text::unit_system units) {
  const std::string left = "  " + row_of(f);
  const std::string answer = answer_of(f, units);
  const std::size_t used = columns(left) + columns(answer);
  if (answer.empty()) return filled("  ", row_of(f));
  if (used + 2 <= width) return left + std::string(width - used, ' ') + answer + "\n";
  return filled("  ", row_of(f)) + std::string(width - std::min(width, columns(answer)), ' ') + answer + "\n";
}

/// One screen: what to act on, by what it does; what to know, what to measure. Of what holds, how many.
std::string glance(const assessment& all, text::unit_system units) {
  std::string out = "At a glance\n-----------\n";
  const decisions::first_screen screen = decisions::screen_of(all);
  const auto part = [&](std::string_view heading, const std::vector<const finding*>& some) {
    if (some.empty()) return;
    out.append(heading).append("\n");
    for (const finding* f : some) out += line_of(*f, units);
  };
  part("does not hold", screen.does_not_hold);
  part("not enough known", screen.not_enough_known);
  part("thin margin", screen.thin_margin);
  part("past or close to what is recommended", screen.recommendations);
  part("for information", screen.for_information);
  if (screen.hold > 0) {
    out += "holds\n  " + std::to_string(screen.hold) + " of " + std::to_string(all.findings.size()) +
           " decisions; they are below with the others, day by day\n";
  }
  const auto first = decisions::measure_first(all);
  if (!first.empty()) out += "measure first\n";
  for (std::size_t i = 0; i < first.size(); ++i) {
    out += filled("  " + std::to_string(i + 1) + ". ", first[i].what + " (" + std::string{first[i].question} + ")");
  }
  return out;
}

/// `said` holds the cautions already printed in this part of the job: none is printed twice.
std::string details(const finding& f, text::unit_system units, std::vector<std::string_view>& said) {
  std::string out = filled("", f.question);
  std::size_t label_width = 0;
  for (const number& e : f.numbers) {
    label_width = std::max(label_width, columns(e.label) + (e.place.empty() ? 0 : 2));
  }
  std::string_view place;
  for (const number& e : f.numbers) {
    if (e.place != place && !e.place.empty()) out += filled("    ", e.place + ":");
    place = e.place;
    std::string label = padded((place.empty() ? "" : "  ") + e.label, label_width) + "  ";
    out += filled("    " + label, text::of(e.value, units) + (e.as == role::limit ? "  (limit)" : ""));
  }
  if (!f.happens.empty()) out += filled("    ", f.happens + ".");
  if (!f.note.empty()) out += filled("    ", f.note);
  if (f.verdict != decisions::verdict::for_information) out += filled("    Verdict: ", verdict_words(f));
  std::vector<std::string_view> reasons;
  for (const number& e : f.numbers) {
    if (e.value.reason.empty() || e.value.is_sharp()) continue;
    if (std::find(reasons.begin(), reasons.end(), e.value.reason) == reasons.end()) reasons.push_back(e.value.reason);
  }
  for (const std::string_view reason : reasons) out += filled("    Band: ", reason);
  std::string sources;
  for (const citation& source : f.sources) sources += (sources.empty() ? "" : "; ") + source_text(source);
  if (!sources.empty()) out += filled("    Source: ", sources);
  if (!f.caution.empty()) {
    const bool again = std::find(said.begin(), said.end(), f.caution) != said.end();
    out += filled("    Caution: ", again ? "as above" : f.caution);
    if (!again) said.push_back(f.caution);
  }
  for (const std::string& next : f.measure_next) out += filled("    Next: ", next);
  return out + "\n";
}

}  // namespace

namespace {

/// "Garcia H.E." is Garcia; "ANSI/AWWA" and "International Code Council" are themselves.
std::string surname(std::string_view author) {
  while (!author.empty() && author.front() == ' ') author.remove_prefix(1);
  const std::size_t last_space = author.rfind(' ');
  if (last_space == std::string_view::npos) return std::string{author};
  const std::string_view last = author.substr(last_space + 1);
  return last.find('.') != std::string_view::npos ? surname(author.substr(0, last_space)) : std::string{author};
}

}  // namespace

std::string row_of(const finding& f) { return f.happens.empty() ? std::string{f.question} : f.happens; }

std::string answer_of(const finding& f, text::unit_system units) {
  const number* n = f.happens.empty() ? decisions::headline_of(f) : nullptr;
  return n ? text::of(n->value, units) : std::string{};
}

std::string source_text(const citation& source) {
  std::vector<std::string> names;
  for (std::size_t start = 0; start <= source.authors.size();) {
    const std::size_t end = std::min(source.authors.find(',', start), source.authors.size());
    names.push_back(surname(source.authors.substr(start, end - start)));
    start = end + 1;
  }
  std::string text = names[0];
  if (names.size() == 2) text += " and " + names[1];
  if (names.size() > 2) text += " et al.";
  if (source.year != 0) text += " " + std::to_string(source.year);
  if (source.read_as == standing::from_memory) text += " (from memory)";
  if (source.read_as == standing::common_practice) text += " (common practice)";
  return text;
}

std::string as_text(const assessment& all, text::unit_system units) {
  std::string out = all.title + "\n" + std::string(columns(all.title), '=') + "\n\n";
  out += glance(all, units);
  out += "\n";
  std::string_view day;
  std::vector<std::string_view> said;
  for (const finding& f : all.findings) {
    if (words(f.day) != day) {
      day = words(f.day);
      said.clear();
      out += std::string{day} + "\n" + std::string(columns(day), '-') + "\n\n";
    }
    out += details(f, units, said);
  }
  while (out.size() > 1 && out[out.size() - 2] == '\n') out.pop_back();
  return out;
}

}  // namespace report
