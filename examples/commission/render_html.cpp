// SPDX-License-Identifier: BSL-1.0
#include <algorithm>

#include "render.hpp"
#include "svg.hpp"

namespace report {

using namespace tankwright;
using decisions::number;
using decisions::role;
using decisions::verdict;

namespace {

constexpr std::string_view style = R"css(
:root { --paper: #fdfdfb; --ink: #1d2629; --quiet: #5a686d; --line: #d5dcdc; --card: #f3f6f5;
  --good: #1b6e4b; --thin: #8a5a00; --bad: #a62b1f; --open: #4a5a78;
  --c0: #14639e; --c1: #b4531a; --c2: #2f7d4f; --c3: #7b4aa0; --c4: #8a6d00; --c5: #b03060; --water: #a9cfe0; --rise: #5f9fc0; --sand: #dccba0; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #14191b; --ink: #e4e9e8; --quiet: #9aa8ab; --line: #38444a; --card: #1d2528;
    --good: #63c79a; --thin: #e0ad4c; --bad: #f08a7c; --open: #a3b3d6;
    --c0: #6db3ec; --c1: #ef9a62; --c2: #76cf98; --c3: #c39bea; --c4: #d8bb4a; --c5: #f08bb2; --water: #2b5468; --rise: #4d8bab; --sand: #6d6142; } }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 46rem; padding: 1.5rem 1.2rem 4rem; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, sans-serif; }
h1 { font-size: 1.6rem; line-height: 1.25; margin: 0 0 1rem; }
h2 { font-size: 1.2rem; margin: 2.2rem 0 .6rem; padding-bottom: .2rem; border-bottom: 2px solid var(--line); }
h3 { font-size: 1rem; margin: 0; }
table { border-collapse: collapse; width: 100%; }
.glance td { padding: .25rem .5rem .25rem 0; border-bottom: 1px solid var(--line); vertical-align: top; }
.glance td:last-child { text-align: right; padding-right: 0; }
.first { margin: 0; padding-left: 1.4rem; }
.stages { margin: .5rem 0; } .stages th, .stages td { text-align: left; padding: .1rem .7rem .1rem 0; vertical-align: top; }
.stages th { color: var(--quiet); font-weight: 400; } .wide { overflow-x: auto; }
.act { list-style: none; margin: 0; padding: 0; }
.act li { border-left: 4px solid var(--line); padding: .1rem 0 .1rem .8rem; margin: .7rem 0; break-inside: avoid; }
.act li.bad { border-color: var(--bad); } .act li.thin { border-color: var(--thin); }
.act p { margin: 0; } .act a { color: inherit; text-decoration-color: var(--line); }
.act .caution { margin-top: .3rem; } .cure { font-weight: 600; }
h2, h3 { break-after: avoid; } svg { max-width: 100%; } p, td, li { overflow-wrap: anywhere; }
.glance a, .first a { color: inherit; text-decoration-color: var(--line); }
article { background: var(--card); border-left: 4px solid var(--line); padding: .7rem .9rem .8rem; margin: .8rem 0;
  break-inside: avoid; }
article.good { border-color: var(--good); } article.thin { border-color: var(--thin); }
article.bad { border-color: var(--bad); } article.open { border-color: var(--open); }
.verdict { font-weight: 600; white-space: nowrap; }
.good .verdict, .verdict.good { color: var(--good); } .thin .verdict, .verdict.thin { color: var(--thin); }
.bad .verdict, .verdict.bad { color: var(--bad); } .open .verdict, .verdict.open { color: var(--open); }
.numbers td { padding: .1rem .8rem .1rem 0; vertical-align: top; }
.numbers td:first-child { color: var(--quiet); width: 45%; }
.numbers .answer td:last-child, .numbers .place td { font-weight: 600; }
.numbers .place td:first-child { color: var(--ink); padding-top: .4rem; }
article p { margin: .4rem 0 0; }
.small { color: var(--quiet); font-size: .87rem; }
.caution { border: 1px solid var(--thin); padding: .35rem .6rem; }
figure { margin: 1rem 0; break-inside: avoid; } figcaption { font-weight: 600; font-size: .95rem; }
svg { width: 100%; height: auto; display: block; } svg text { fill: var(--quiet); font: 12px system-ui, sans-serif; }
.grid { stroke: var(--line); stroke-width: 1; } .curve { fill: none; stroke-width: 2.2; }
.dashed { stroke-dasharray: 6 4; } .band { opacity: .2; stroke: none; }
.c0 { stroke: var(--c0); fill: var(--c0); } .c1 { stroke: var(--c1); fill: var(--c1); }
.c2 { stroke: var(--c2); fill: var(--c2); } .c3 { stroke: var(--c3); fill: var(--c3); }
.c4 { stroke: var(--c4); fill: var(--c4); } .c5 { stroke: var(--c5); fill: var(--c5); }
polyline.curve { fill: none; }
.water { fill: var(--water); } .rise { fill: var(--rise); } .wall { fill: none; stroke: var(--ink); stroke-width: 2; }
.sand { fill: var(--sand); stroke: var(--sand); } .level { stroke: var(--ink); stroke-width: 1; stroke-dasharray: 5 3; }
.limit { stroke: var(--bad); stroke-width: 2; } svg text.said { fill: var(--ink); }
.room { fill: none; stroke: var(--quiet); stroke-dasharray: 4 4; }
svg text { stroke: none; }
.legend { margin: .2rem 0 0; font-size: .87rem; } .key { margin-right: 1.2rem; white-space: nowrap; }
.key::before { content: ""; display: inline-block; width: 1.4em; border-top: 3px solid; margin-right: .4em;
  vertical-align: middle; } .key.dashed::before { border-top-style: dashed; }
.key.c0::before { border-color: var(--c0); } .key.c1::before { border-color: var(--c1); }
.key.c2::before { border-color: var(--c2); } .key.c3::before { border-color: var(--c3); }
.key.c4::before { border-color: var(--c4); } .key.c5::before { border-color: var(--c5); }
@media print { :root { --paper: #fff; --ink: #000; --quiet: #444; --line: #bbb; --card: #fff; --good: #1b6e4b;
  --thin: #8a5a00; --bad: #a62b1f; --open: #4a5a78; --c0: #14639e; --c1: #b4531a; --c2: #2f7d4f; --c3: #7b4aa0;
  --c4: #8a6d00; --c5: #b03060; --water: #cfe4ee; --rise: #7fb2cc; --sand: #e6dcc0; }
  body { max-width: none; padding: 0; font-size: 10pt; line-height: 1.35; }
  article { break-inside: auto; padding: .3rem .7rem .4rem; margin: .5rem 0; } tr, .caution { break-inside: avoid; }
  svg { max-height: 7.5cm; } }
)css";

std::string_view shade(verdict says) {
  switch (says) {
    case verdict::holds:
      return "good";
    case verdict::thin_margin:
      return "thin";
    case verdict::does_not_hold:
      return "bad";
    case verdict::not_enough_known:
      return "open";
    case verdict::for_information:
      break;
  }
  return "plain";
}

std::string paragraph(std::string_view kind, std::string_view text) {
  return text.empty() ? std::string{} : "<p class=\"" + std::string{kind} + "\">" + escaped(text) + "</p>\n";
}

/// The verdict in words, with the chance that it holds.
std::string verdict_of(const advice& all, const finding& f) {
  const auto chance = all.chance_for(f.id);
  return std::string{verdict_words(f)} + (chance ? ", chance that it holds " + chance_text(*chance) : "");
}

std::string article(const advice& all, const finding& f, unit_system units) {
  std::string out = "<article id=\"" + escaped(f.id) + "\" class=\"" + std::string{shade(f.verdict)} + "\">\n";
  if (f.verdict != verdict::for_information) out += paragraph("verdict", verdict_of(all, f));
  out += "<h3>" + escaped(f.question) + "</h3>\n" + paragraph("note", sentence(f.happens));
  if (const std::string cures = cures_of(all, f, units); !cures.empty()) out += paragraph("cure", cures);
  out += "<table class=\"numbers\">\n";
  std::string_view place;
  const std::vector<place_table> tables = tables_in(f);
  for (const number& e : f.numbers) {
    const bool in_a_table = std::any_of(tables.begin(), tables.end(), [&](const place_table& t) {
      return std::find(t.places.begin(), t.places.end(), e.place) != t.places.end();
    });
    if (in_a_table) continue;
    if (e.place != place && !e.place.empty()) {
      out += "<tr class=\"place\"><td colspan=\"2\">" + escaped(e.place) + "</td></tr>\n";
    }
    place = e.place;
    out += std::string{"<tr class=\""} + (e.as == role::answer ? "answer" : "other") + "\"><td>" + escaped(e.label) +
           (e.as == role::limit ? " (limit)" : "") + "</td><td>" + escaped(shown(f, e, units)) + "</td></tr>\n";
  }
  out += "</table>\n";
  for (const place_table& t : tables) {
    out += "<div class=\"wide\"><table class=\"stages\">\n<tr><th>" + escaped(t.title) + "</th>";
    for (const std::string& label : t.labels) out += "<th>" + escaped(label) + "</th>";
    out += "</tr>\n";
    for (const std::string& p : t.places) {
      out += "<tr><td>" + escaped(p.substr(0, p.find(", "))) + "</td>";
      for (const std::string& label : t.labels) out += "<td>" + escaped(cell_of(f, p, label, units)) + "</td>";
      out += "</tr>\n";
    }
    out += "</table></div>\n";
  }
  out += paragraph("note", f.note);
  out += f.caution.empty() ? "" : paragraph("caution", f.caution);
  for (const std::string& next : f.measure_next) out += paragraph("small", "Next: " + next);
  std::string sources;
  for (const citation& s : f.sources) {
    sources += (sources.empty() ? "Source: " : "; ") + source_text(s) + ", " + std::string{s.where};
  }
  if (const auto* shares = all.shares_for(f.id); shares && !shares->shares.empty()) {
    std::string made;
    for (std::size_t i = 0; i < shares->shares.size() && i < 4; ++i) {
      made += (i ? "; " : "Band made by: ") + chance_text(shares->shares[i].part) + " " + made_by(shares->shares[i]);
    }
    out += paragraph("small", made);
  }
  return out + paragraph("small", sources) + "</article>\n";
}

/// Findings to act on: what happens and what to do, the number that decides, the caution once.
std::string to_act_on(std::string_view heading, const std::vector<const finding*>& some, const advice& all,
                      unit_system units, std::vector<std::string>& cautions) {
  if (some.empty()) return {};
  std::string rows;
  for (const finding* f : some) {
    const row r = row_of(all, *f, units);
    rows += "<li class=\"" + std::string{shade(f->verdict)} + "\"><p class=\"small\"><span class=\"verdict\">" +
            escaped(verdict_words(*f)) + "</span> · " + escaped(words(f->consequence)) + "</p>\n<p><a href=\"#" +
            escaped(f->id) + "\">" + escaped(r.happens) + "</a></p>\n" + paragraph("small", r.number);
    const bool known = std::find(cautions.begin(), cautions.end(), r.caution) != cautions.end();
    if (!r.caution.empty() && !known) {
      rows += paragraph("caution small", r.caution);
      cautions.push_back(r.caution);
    }
    rows += "</li>\n";
  }
  return "<section><h2>" + std::string{heading} + "</h2>\n<ul class=\"act\">\n" + rows + "</ul></section>\n";
}

std::string to_know(std::string_view heading, const std::vector<const finding*>& some, unit_system units) {
  if (some.empty()) return {};
  std::string rows;
  for (const finding* f : some) {
    const number* n = decisions::headline_of(*f);
    rows += "<tr><td><a href=\"#" + escaped(f->id) + "\">" + escaped(f->question) + "</a></td><td>" +
            (n ? escaped(shown(*f, *n, units)) : "") + "</td></tr>\n";
  }
  return "<section><h2>" + std::string{heading} + "</h2>\n<table class=\"glance\">\n" + rows + "</table></section>\n";
}

}  // namespace

std::string as_html(const advice& all, const figures& pictures, unit_system units) {
  const assessment& judged = all.judged.all;
  std::string out = paragraph("small", assumed_in(all));
  // What to act on first, the gravest consequence on top; then what is missing and what to measure, then the rest.
  const decisions::first_screen screen = decisions::screen_of(judged);
  std::vector<std::string> cautions;
  out += to_act_on("Does not hold", screen.does_not_hold, all, units, cautions);
  out += to_act_on("Thin margin", screen.thin_margin, all, units, cautions);
  out += to_act_on("Recommendations", screen.recommendations, all, units, cautions);
  if (!screen.not_enough_known.empty()) {
    out += "<section><h2>Not enough known</h2>\n<ul>\n";
    for (const finding* f : screen.not_enough_known) {
      out += "<li><a href=\"#" + escaped(f->id) + "\">" + escaped(f->question) + "</a> " +
             escaped(!f->measure_next.empty() ? f->measure_next.front() : f->note) + "</li>\n";
    }
    out += "</ul></section>\n";
  }
  std::string list;
  for (const auto& m : all.first) {
    list += "<li>" + escaped(m.what) + ". With a chance of " + escaped(chance_text(m.turns)) +
            " it turns: <a href=\"#" + escaped(m.id) + "\">" + escaped(m.question) + "</a></li>\n";
  }
  if (!list.empty()) out += "<section><h2>Measure first</h2>\n<ol class=\"first\">\n" + list + "</ol></section>\n";
  if (screen.hold > 0) {
    out += paragraph("note", std::to_string(screen.hold) + " of " + std::to_string(judged.findings.size()) +
                                 " decisions hold; they are below with the others, day by day.");
  }
  out += to_know("Good to know", screen.for_information, units);
  std::string_view day;
  for (const finding& f : judged.findings) {
    if (words(f.day) != day) out += "<h2>" + escaped(day = words(f.day)) + "</h2>\n";
    out += article(all, f, units);
    for (const auto& picture : pictures) {
      if (picture.id == f.id) out += as_svg(picture, units);  // a figure stands under the finding it belongs to
    }
  }
  return page_of(judged.title, out);
}

std::string page_of(std::string_view title, std::string_view body) {
  return "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
         "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
         "<meta name=\"color-scheme\" content=\"light dark\">\n<title>" +
         escaped(title) + "</title>\n<style>" + std::string{style} + "</style>\n</head>\n<body>\n<h1>" +
         escaped(title) + "</h1>\n" + std::string{body} + "</body>\n</html>\n";
}

std::string as_html(const assessment& all, const figures& pictures, unit_system units) {
  advice central;
  central.judged.all = all;
  return as_html(central, pictures, units);
}

}  // namespace report
