// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <numbers>
#include <string>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/names.hpp>
#include <tankwright/plan/rules/rules.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/plumbing/pipe_sizes.hpp>
#include <vector>

namespace tankwright::plan::rules {

namespace detail {

/// A curve rises in flow and falls in head, from zero flow on.
inline void hold_curve(const std::string& path, const values<flow_rate>& flows, const values<length>& heads,
                       book& all) {
  if (flows.size() != heads.size()) {
    all.refuse(path + ".heads",
               "has " + std::to_string(heads.size()) + " points, flows has " + std::to_string(flows.size()),
               path + ".flows");
    return;
  }
  if (flows.size() == 1) all.refuse(path + ".flows", "is one point; a curve has two or more");
  for (std::size_t i = 1; i < flows.size(); ++i) {
    if (!(flows[i] > flows[i - 1])) {
      all.refuse(path + ".flows[" + std::to_string(i + 1) + "]",
                 all.said(flows[i]) + " is not above the flow before it, " + all.said(flows[i - 1]));
    }
    if (!(heads[i] < heads[i - 1])) {
      all.refuse(path + ".heads[" + std::to_string(i + 1) + "]",
                 all.said(heads[i]) + " is not below the head before it, " + all.said(heads[i - 1]) +
                     "; a pump lifts less high the more it moves");
    }
  }
  if (flows.size() > 0 && flows[0].value() != 0.0) {
    all.refuse(path + ".flows[1]",
               all.said(flows[0]) + " is not zero; a curve begins at the shut valve, where the pump lifts highest");
  }
}

/// Further pumps run beside the return pump, each by its own name.
inline void hold_further_pumps(const plumbing_section& p, book& all) {
  if (p.further_pump.empty()) return;
  if (!p.pump) {
    all.refuse("plumbing.further_pump", "runs beside the return pump, which is missing: give [plumbing.pump]");
    return;
  }
  const std::string main = label_of(*p.pump);
  for (std::size_t i = 0; i < p.further_pump.size(); ++i) {
    const pump& one = p.further_pump[i];
    const std::string path = element("plumbing.further_pump", p.further_pump, i);
    hold_curve(path, one.flows, one.heads, all);
    if (one.label.empty()) all.refuse(path + ".label", "is missing: returns name their pump by it");
    if (one.label == main) all.refuse(path + ".label", main + " is the label of two pumps", "plumbing.pump");
    hold_label("plumbing.further_pump", p.further_pump, i, "pumps", all);
  }
}

/// A return names a pump that there is, and the return pump keeps one.
inline void hold_feeds(const plumbing_section& p, book& all) {
  const std::string main = label_of(p.pump ? *p.pump : pump{});
  std::vector<std::string> labels{main};
  for (const pump& one : p.further_pump) labels.push_back(one.label);
  bool main_feeds = p.returns.empty();
  for (std::size_t i = 0; i < p.returns.size(); ++i) {
    const std::string& by = p.returns[i].fed_by;
    if (by.empty() || by == main) {
      main_feeds = true;
      continue;
    }
    if (std::find(labels.begin(), labels.end(), by) == labels.end()) {
      const std::string nearest = nearest_name(by, labels);
      all.refuse(element("plumbing.return", p.returns, i) + ".fed_by",
                 by + " is not the label of a pump" + (nearest.empty() ? "" : "; did you mean " + nearest + "?"),
                 "plumbing.further_pump");
    }
  }
  if (p.pump && !main_feeds) {
    all.refuse("plumbing.pump", "feeds no return: each of them names another pump", "plumbing.return");
  }
}

inline void hold_pump(const plumbing_section& p, book& all) {
  if (p.pump) hold_curve("plumbing.pump", p.pump->flows, p.pump->heads, all);
  hold_further_pumps(p, all);
  hold_feeds(p, all);
  for (std::size_t i = 0; i < p.candidate.size(); ++i) {
    const candidate_pump& one = p.candidate[i];
    const std::string path = element("plumbing.candidate", p.candidate, i);
    hold_curve(path, one.flows, one.heads, all);
    hold_label("plumbing.candidate", p.candidate, i, "pumps", all);
  }
}

inline void hold_returns(const plumbing_section& p, book& all) {
  for (std::size_t i = 0; i < p.returns.size(); ++i) {
    const return_pipe& one = p.returns[i];
    const std::string path = element("plumbing.return", p.returns, i);
    hold_label("plumbing.return", p.returns, i, "returns", all);
    if (!p.overflow || !p.overflow->crest_height || !one.below_edge) continue;
    const bound<length> edge{*p.overflow->crest_height, "plumbing.overflow.crest_height"};
    constexpr std::string_view under = "below the overflow edge is under the floor of the display; the edge is at";
    all.at_most(path + ".below_edge", one.below_edge, edge, under);
    all.at_most(path + ".siphon_break", one.siphon_break, edge, under);
    const bool open = *one.kind == tankwright::plumbing::outlet_kind::open;
    if (open && one.below_edge.si() > half_width(one.below_edge, usual::doubt_of(usual::water_mark))) {
      all.refuse(path + ".kind",
                 "open ends in the air, but its opening is " + all.said(one.below_edge) +
                     " below the overflow edge, under water",
                 path + ".below_edge");
    }
    if (!open && p.edge_to_rim) {
      all.at_most(path + ".below_edge", -(*one.below_edge), {*p.edge_to_rim, "plumbing.edge_to_rim"},
                  "above the overflow edge is out of the water (kind = \"open\", where it is); edge to rim is");
    }
  }
}

/// A nominal size is among those that are made; a pipe is not wider than the display.
inline void hold_bore(const std::string& path, const bore& b, const plumbing_section& p, book& all) {
  if (b.nominal && b.schedule && !b.inside) {
    try {
      (void)bore_of(b);
    } catch (const error& mistake) {
      const std::string said = mistake.what();
      const auto names = said.find(": ");
      all.refuse(path + ".nominal", names == std::string::npos ? said : said.substr(names + 2));
    }
  }
  if (!b.inside || !p.overflow || !p.overflow->surface) return;
  const length d = *b.inside;
  all.at_most(path + ".bore", 0.25 * std::numbers::pi * d * d, {*p.overflow->surface, "plumbing.overflow.surface"},
              "of opening is more than the whole display,");
}

inline void hold_sump(const plumbing_section& p, book& all) {
  if (!p.sump) return;
  const sump& s = *p.sump;
  if (!s.chamber.empty() && s.baffle.size() + 1 != s.chamber.size()) {
    all.refuse("plumbing.sump.baffle",
               "there are " + std::to_string(s.baffle.size()) + " between " + std::to_string(s.chamber.size()) +
                   " chambers; expected " + std::to_string(s.chamber.size() - 1),
               "plumbing.sump.chamber");
  }
  if (p.drains_into && *p.drains_into > static_cast<double>(s.chamber.size()) && !s.chamber.empty()) {
    all.refuse("plumbing.drains_into", "is past the last chamber; the sump has " + std::to_string(s.chamber.size()),
               "plumbing.sump.chamber");
  }
  for (std::size_t i = 0; i < s.chamber.size(); ++i) {
    const chamber& one = s.chamber[i];
    if (one.area && *one.gear >= *one.area) {
      all.refuse(element("plumbing.sump.chamber", s.chamber, i) + ".gear", "leaves no water in the chamber",
                 element("plumbing.sump.chamber", s.chamber, i) + ".area");
    }
  }
  if (!s.rim) return;
  const bound<length> rim{*s.rim, "plumbing.sump.rim"};
  all.at_most("plumbing.sump.running_level", s.running_level, rim, "is above the rim of the sump,");
  for (std::size_t i = 0; i < s.baffle.size(); ++i) {
    const std::string path = element("plumbing.sump.baffle", s.baffle, i);
    all.at_most(path + ".crest", s.baffle[i].crest, rim, "is above the rim of the sump,");
    if (s.baffle[i].crest) {
      all.at_most(path + ".gap", s.baffle[i].gap, {*s.baffle[i].crest, path + ".crest"}, "is higher than the baffle,");
    }
  }
  all.at_most("plumbing.reserve", p.reserve, rim, "to keep free is more than the sump is high,");
  if (p.lift && s.running_level && *p.lift <= *s.running_level) {
    all.refuse(
        "plumbing.lift",
        all.said(p.lift) + " puts the overflow edge no higher than the water in the sump, " + all.said(s.running_level),
        "plumbing.sump.running_level");
  }
  if (p.pump_inlet && s.running_level) {
    all.at_most("plumbing.pump_inlet.above_floor", p.pump_inlet->above_floor,
                {*s.running_level, "plumbing.sump.running_level"}, "is not under water; the sump runs at");
  }
}

inline void hold_drops(const plumbing_section& p, book& all) {
  if (!p.lift) return;
  constexpr std::string_view under = "ends below the floor of the sump; from the overflow edge it is";
  const bound<length> lift{*p.lift, "plumbing.lift"};
  for (std::size_t i = 0; i < p.drain.size(); ++i) {
    const std::string path = element("plumbing.drain", p.drain, i);
    all.at_most(path + ".drop", p.drain[i].drop, lift, under);
    if (!p.drain[i].drop) continue;
    all.at_most(path + ".inlet_head", p.drain[i].inlet_head, {*p.drain[i].drop, path + ".drop"},
                "is more than the whole drop of the drain,");
  }
  if (p.box) all.at_most("plumbing.box.falls_by", p.box->falls_by, lift, under);
}

}  // namespace detail

TANKWRIGHT_INLINE void hold_plumbing(const build& build, book& all) {
  if (!build.plumbing) return;
  const plumbing_section& p = *build.plumbing;
  detail::hold_pump(p, all);
  detail::hold_returns(p, all);
  detail::hold_sump(p, all);
  detail::hold_drops(p, all);
  if (p.trunk) detail::hold_bore("plumbing.trunk", p.trunk->pipe.bore, p, all);
  if (p.pump_inlet) detail::hold_bore("plumbing.pump_inlet", p.pump_inlet->bore, p, all);
  for (std::size_t i = 0; i < p.returns.size(); ++i) {
    detail::hold_bore(element("plumbing.return", p.returns, i), p.returns[i].pipe.bore, p, all);
  }
  for (std::size_t i = 0; i < p.drain.size(); ++i) {
    detail::hold_bore(element("plumbing.drain", p.drain, i), p.drain[i].pipe.bore, p, all);
  }
}

}  // namespace tankwright::plan::rules
