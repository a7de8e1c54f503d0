// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <cmath>
#include <tankwright/decisions/cure_words.hpp>

#include "render.hpp"

namespace report {

using namespace tankwright;
using decisions::number;
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

constexpr std::size_t page = 66;  ///< lines of a page

std::size_t lines_of(std::string_view text) {
  return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

/// What is asked, and the answer at the right edge; more lines where one is too short.
std::string line_of(const finding& f, unit_system units) {
  const number* n = decisions::headline_of(f);
  const std::string left = "  " + std::string{f.question};
  const std::string answer = n ? shown(f, *n, units) : std::string{};
  const std::size_t used = columns(left) + columns(answer);
  if (answer.empty()) return filled("  ", f.question);
  if (used + 2 <= width) return left + std::string(width - used, ' ') + answer + "\n";
  return filled("  ", f.question) + std::string(width - std::min(width, columns(answer)), ' ') + answer + "\n";
}

/// Findings to act on, each with its consequence, what to do, its number and its caution; at most so many lines.
std::string to_act_on(std::string_view heading, const std::vector<const finding*>& some, const advice& all,
                      unit_system units, std::size_t most, std::vector<std::string>& cautions) {
  if (some.empty()) return {};
  std::string out = std::string{heading} + "\n";
  for (std::size_t i = 0; i < some.size(); ++i) {
    const finding& f = *some[i];
    const row r = row_of(all, f, units);
    std::string one = filled("  ", r.happens + " [" + std::string{words(f.consequence)} + "]");
    if (!r.number.empty()) one += filled("      ", r.number);
    const bool known = std::find(cautions.begin(), cautions.end(), r.caution) != cautions.end();
    if (!r.caution.empty() && !known) one += filled("      Caution: ", r.caution);
    if (lines_of(out) + lines_of(one) + 1 > most && i > 0) {
      return out + "  and " + std::to_string(some.size() - i) + " more, below with the others\n";
    }
    if (!r.caution.empty() && !known) cautions.push_back(r.caution);
    out += one;
  }
  return out;
}

/// One page: what to act on, by what it does and what to do; what is missing; what to measure; what is merely known.
std::string glance(const advice& all, unit_system units) {
  std::string out = "At a glance\n-----------\n";
  const decisions::first_screen screen = decisions::screen_of(all.judged.all);
  std::vector<std::string> cautions;
  out += to_act_on("does not hold", screen.does_not_hold, all, units, 26, cautions);
  out +=
      to_act_on("thin margin", screen.thin_margin, all, units, 38 - std::min<std::size_t>(lines_of(out), 28), cautions);
  out += to_act_on("past or close to what is recommended", screen.recommendations, all, units, 6, cautions);
  if (!screen.not_enough_known.empty()) {
    std::string missing = "not enough known\n";
    for (std::size_t i = 0; i < screen.not_enough_known.size(); ++i) {
      if (i == 3) {
        missing += "  and " + std::to_string(screen.not_enough_known.size() - i) + " more, below with the others\n";
        break;
      }
      const finding& f = *screen.not_enough_known[i];
      const std::string why = !f.measure_next.empty() ? f.measure_next.front() : f.note;
      missing += filled("  ", std::string{f.question} + (why.empty() ? "" : " Missing: " + why));
    }
    out += missing;
  }
  if (!all.first.empty()) out += "measure first\n";
  for (std::size_t i = 0; i < all.first.size(); ++i) {
    out += filled("  " + std::to_string(i + 1) + ". ", all.first[i].what + ". With a chance of " +
                                                           chance_text(all.first[i].turns) +
                                                           " it turns: " + std::string{all.first[i].question});
  }
  if (screen.hold > 0) {
    out += "holds\n  " + std::to_string(screen.hold) + " of " + std::to_string(all.judged.all.findings.size()) +
           " decisions; they are below with the others, day by day\n";
  }
  if (!screen.for_information.empty()) out += "good to know\n";
  for (std::size_t i = 0; i < screen.for_information.size(); ++i) {
    const std::string one = line_of(*screen.for_information[i], units);
    const std::size_t left = screen.for_information.size() - i;
    if (i > 2 && lines_of(out) + lines_of(one) + (left > 1 ? 1 : 0) > page - 4) {
      out += "  and " + std::to_string(left) + " more, below with the others\n";
      break;
    }
    out += one;
  }
  return out;
}

/// `said` holds the cautions already printed in this part of the job: none is printed twice.
std::string details(const advice& all, const finding& f, unit_system units, std::vector<std::string_view>& said) {
  std::string out = filled("", f.question);
  std::size_t label_width = 0;
  for (const number& e : f.numbers) {
    label_width = std::max(label_width, columns(e.label) + (e.place.empty() ? 0 : 2));
  }
  std::string_view place;
  const std::vector<place_table> tables = tables_in(f);
  const auto in_a_table = [&](const number& e) {
    return std::any_of(tables.begin(), tables.end(), [&](const place_table& t) {
      return std::find(t.places.begin(), t.places.end(), e.place) != t.places.end();
    });
  };
  for (const number& e : f.numbers) {
    if (in_a_table(e)) continue;
    if (e.place != place && !e.place.empty()) out += filled("    ", e.place + ":");
    place = e.place;
    std::string label = padded((place.empty() ? "" : "  ") + e.label, label_width) + "  ";
    out += filled("    " + label, shown(f, e, units) + (e.as == role::limit ? "  (limit)" : ""));
  }
  for (const place_table& t : tables) {
    std::string head;
    for (const std::string& label : t.labels) head += (head.empty() ? "" : "; ") + label;
    out += filled("    ", (t.title.empty() ? "" : t.title + ", ") + head + ":");
    for (const std::string& p : t.places) {
      std::string cells;
      for (const std::string& label : t.labels) cells += padded(cell_of(f, p, label, units), 16) + " ";
      while (!cells.empty() && cells.back() == ' ') cells.pop_back();
      out += "      " + padded(p.substr(0, p.find(", ")), 12) + " " + cells + "\n";
    }
  }
  if (!f.happens.empty()) out += filled("    ", sentence(f.happens));
  if (!f.note.empty()) out += filled("    ", f.note);
  if (f.verdict != decisions::verdict::for_information) {
    const auto chance = all.chance_for(f.id);
    out += filled("    Verdict: ",
                  std::string{verdict_words(f)} + (chance ? ", chance that it holds " + chance_text(*chance) : ""));
  }
  if (const std::string cures = cures_of(all, f, units); !cures.empty()) out += filled("    To do: ", cures);
  std::vector<std::string_view> reasons;
  for (const number& e : f.numbers) {
    if (e.value.reason.empty() || e.value.is_sharp()) continue;
    if (all.by_chance && !e.value.reason.empty()) continue;  // said once, at the top
    if (std::find(reasons.begin(), reasons.end(), e.value.reason) == reasons.end()) reasons.push_back(e.value.reason);
  }
  for (const std::string_view reason : reasons) out += filled("    Band: ", reason);
  if (const auto* shares = all.shares_for(f.id); shares && !shares->shares.empty()) {
    std::string made;
    for (std::size_t i = 0; i < shares->shares.size() && i < 4; ++i) {
      made += (i ? "; " : "") + chance_text(shares->shares[i].part) + " " + made_by(shares->shares[i]);
    }
    out += filled("    Band made by: ", made);
  }
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

std::string sentence(std::string_view text) {
  std::string whole{text};
  if (!whole.empty() && whole.back() != '.' && whole.back() != '!') whole += '.';
  return whole;
}

std::string made_by(const decisions::share& s) { return s.of_law ? std::string{s.says} : s.what; }

std::string chance_text(double chance) {
  if (chance < 0.01) return "below 1 %";
  if (chance > 0.99) return "above 99 %";
  return text::of(100.0 * chance, text::decimals(0)) + " %";
}

std::string shown(const finding& f, const number& n, unit_system units) {
  constexpr std::string_view counted[] = {"volume", "mass", "flow_rate", "mass_flow", "power", "energy"};
  amount value = n.value;
  // A band of less than a two-hundredth says nothing that a person acts on.
  if (value.high - value.low < 0.005 * std::fabs(value.central)) value.low = value.high = value.central;
  const bool nothing = value.is_sharp() && value.central == 0.0;
  if (nothing && std::find(std::begin(counted), std::end(counted), value.quantity) != std::end(counted)) return "none";
  if (value.quantity == "pressure" && units == unit_system::us && f.id == "vessel.floor") {
    std::string load = text::in(value, "lbf/ft2", text::significant(3));
    return load.erase(load.find("lbf/") + 2, 1);  // as floors are rated: lb/ft2
  }
  // One unit for what is compared: that of the smallest answer or limit of the same quantity.
  const amount* like = &value;
  if (n.as != role::detail) {
    for (const number& other : f.numbers) {
      const bool compared = (other.as == role::answer || other.as == role::limit) && other.value.central != 0.0;
      if (!compared || other.value.quantity != value.quantity) continue;
      const bool first = like == &value && (n.as == role::margin || value.central == 0.0);
      if (first || std::fabs(other.value.central) < std::fabs(like->central)) like = &other.value;
    }
  }
  std::string_view unit = text::everyday_unit(*like, units);
  const bool short_length = value.quantity == "length" && unit == "in";
  std::string said = like == &value && !short_length ? text::of(value, units)
                     : short_length                  ? text::in(value, unit, text::decimals(2))
                                                     : text::in(value, unit);
  if (value.quantity == "duration") {
    if (const std::size_t at = said.find(" d");
        at != std::string::npos && (at + 2 == said.size() || said[at + 2] == ' ')) {
      said.replace(at, 2, said.starts_with("1 d") && value.is_sharp() ? " day" : " days");
    }
  }
  return said;
}

std::vector<place_table> tables_in(const finding& f) {
  std::vector<place_table> all;
  for (const number& n : f.numbers) {
    if (n.place.empty()) continue;
    const std::size_t comma = n.place.find(", ");
    const std::string title = comma == std::string::npos ? std::string{} : n.place.substr(comma + 2);
    auto t = std::find_if(all.begin(), all.end(), [&](const place_table& x) { return x.title == title; });
    if (t == all.end()) t = all.insert(all.end(), place_table{title});
    if (std::find(t->labels.begin(), t->labels.end(), n.label) == t->labels.end()) t->labels.push_back(n.label);
    if (std::find(t->places.begin(), t->places.end(), n.place) == t->places.end()) t->places.push_back(n.place);
  }
  // A table only where it is worth one: three rows of the same few numbers.
  std::erase_if(all, [](const place_table& t) { return t.places.size() < 3 || t.labels.size() > 4; });
  return all;
}

std::string cell_of(const finding& f, std::string_view place, std::string_view label, unit_system units) {
  for (const number& n : f.numbers) {
    if (n.place != place || n.label != label) continue;
    number middle = n;  // a table shows the middle values
    middle.value.low = middle.value.high = middle.value.central;
    return shown(f, middle, units);
  }
  return "-";
}

std::string assumed_in(const advice& all) {
  if (!all.by_chance) return "Quick: by central values, without doubts, chances and cures.";
  std::size_t usual = 0;
  for (const auto& d : all.judged.doubts) usual += d.assumed;
  const std::size_t own = all.judged.doubts.size() - usual;
  return std::to_string(usual) + (usual == 1 ? " usual doubt" : " usual doubts") + " assumed" +
         (own > 0 ? ", " + std::to_string(own) + " given" : "") +
         ". Bands: 95 % of what it may be. Holds: by a chance of 97.5 % and more.";
}

std::string cures_of(const advice& all, const finding& f, unit_system units) {
  const decisions::cures_of_finding* found = all.cures_for(f.id);
  if (!found) return {};
  if (found->cures.empty() && found->why_none) return decisions::sentence_of(*found->why_none, units) + ".";
  if (found->cures.empty()) return "Nothing that can still be chosen makes it hold.";
  std::string said;
  for (std::size_t i = 0; i < found->cures.size() && i < 2; ++i) {
    const decisions::cure& c = found->cures[i];
    std::string one = decisions::sentence_of(c, units);
    if (i > 0) {
      said += ", or ";
      if (one.front() >= 'A' && one.front() <= 'Z') one.front() = static_cast<char>(one.front() - 'A' + 'a');
    }
    said += one;
    for (const auto& w : c.worse) {
      const finding* spoilt = all.judged.all.find(w.id);
      if (spoilt) said += " (which spoils \"" + std::string{spoilt->question} + "\")";
    }
  }
  return said + ".";
}

row row_of(const advice& all, const finding& f, unit_system units) {
  row r{.happens = f.happens.empty() ? std::string{f.question} : sentence(f.happens), .number = {}, .caution = {}};
  if (const std::string cures = cures_of(all, f, units); !cures.empty()) r.happens += " " + cures;
  if (const number* n = f.margin() ? f.margin() : decisions::headline_of(f)) {
    r.number = (n->place.empty() ? "" : n->place + ": ") + n->label + " " + shown(f, *n, units);
    if (const auto chance = all.chance_for(f.id)) r.number += "; holds with a chance of " + chance_text(*chance);
  }
  const std::size_t end = f.caution.find(". ");
  if (!f.caution.empty()) r.caution = sentence(f.caution.substr(0, end));
  return r;
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

std::string as_text(const advice& all, unit_system units) {
  const assessment& judged = all.judged.all;
  std::string out = judged.title + "\n" + std::string(columns(judged.title), '=') + "\n\n";
  out += filled("", assumed_in(all)) + "\n";
  out += glance(all, units);
  out += "\n";
  std::string_view day;
  std::vector<std::string_view> said;
  for (const finding& f : judged.findings) {
    if (words(f.day) != day) {
      day = words(f.day);
      said.clear();
      out += std::string{day} + "\n" + std::string(columns(day), '-') + "\n\n";
    }
    out += details(all, f, units, said);
  }
  while (out.size() > 1 && out[out.size() - 2] == '\n') out.pop_back();
  return out;
}

std::string as_text(const assessment& all, unit_system units) {
  advice central;
  central.judged.all = all;
  return as_text(central, units);
}

}  // namespace report
