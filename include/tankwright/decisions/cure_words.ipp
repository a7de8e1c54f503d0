// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cure.hpp>
#include <tankwright/decisions/cure_words.hpp>

namespace tankwright::decisions {

namespace detail {

/// In the order of the descriptions. Not here, on purpose: what is a fact of another tank (`life.moved_rock.food`), and
/// the timetable of the start-up, which no finding judges. More sand would help a turnover, by leaving less water: no.
inline constexpr cure_words every_cure[] = {
    {"vessel.sand[].depth", "lay the sand only %v deep", {}},
    {"vessel.sand[].mass", "take only %v of sand", {}},
    {"vessel.sand[].shallow_end", "let the sand's shallow end be %v deep", "let the sand's shallow end be %v deep"},
    {"vessel.sand[].deep_end", "let the sand's deep end be only %v deep", {}},
    {"vessel.sand[].run", "let the sand slope over %v", "let the sand slope over %v"},
    {"vessel.panel[].thickness", "make the %p %v thick at the least", "make the %p %v thick at the least",
     "make all panels %v thick at the least", "make all panels %v thick at the least"},
    {"vessel.floor.footprint", "let the stand cover %v of floor", "let the stand cover %v of floor"},
    {"vessel.floor.bearing", "let the stand's feet bear on %v", "let the stand's feet bear on %v"},
    {"vessel.brace.count", "fit %v braces", "fit %v braces"},
    {"vessel.brace.breadth", "make the brace %v wide", "make the brace %v wide"},
    {"vessel.brace.depth", "make the brace %v deep", "make the brace %v deep"},
    {"vessel.brace.joint", "fix each end of the brace so that it holds %v",
     "fix each end of the brace so that it holds %v"},
    {"vessel.lid[].span", "support the %p every %v", "let the %p span %v", "support all lids every %v",
     "let all lids span %v"},
    {"vessel.lid[].thickness", "make the %p %v thick at the least", "make the %p %v thick at the least",
     "make all lids %v thick", "make all lids %v thick at the least"},
    {"vessel.bulkhead[].gasket", "take a gasket of %v for the %p", "take a gasket of %v for the %p"},
    {"vessel.seam[].gap", "make the silicone of the %p %v thick", "make the silicone of the %p %v thick"},
    {"vessel.view.nearest_rock", "let the rock come as near as %v", "keep the rock %v from the front"},
    {"hold.planned.resolution", "read the level with a gauge that shows %v", "read the level with a gauge of %v"},
    {"hold.planned.readings_per_day", "read %v times a day", "read %v times a day"},
    {"plumbing.overflow.width", "make the overflow edge only %v long", "make the overflow edge %v long"},
    {"plumbing.box.area", "build the box behind the overflow with only %v of water", "build the box with %v of water"},
    {"plumbing.pump.speed", "run the pump at %v of its speed", "run the pump at %v of its speed"},
    {"plumbing.trunk.side_by_side", "lay %v trunks side by side", "lay %v trunks side by side"},
    {"plumbing.trunk.nominal", "take a trunk of nominal %v in", "take a trunk of nominal %v in"},
    {"plumbing.trunk.bore", "take a trunk of %v bore", "take a trunk of %v bore"},
    {"plumbing.return[].nominal", "take pipe of nominal %v in for the %p", "take pipe of nominal %v in for the %p",
     "take pipe of nominal %v in for all returns", "take pipe of nominal %v in for all returns"},
    {"plumbing.return[].bore", "take pipe of %v bore for the %p", "take pipe of %v bore for the %p",
     "take pipe of %v bore for all returns", "take pipe of %v bore for all returns"},
    {"plumbing.return[].below_edge", "raise the outlet of the %p to %v", "lower the outlet of the %p to %v",
     "raise the outlets of all returns to %v", "lower the outlets of all returns to %v"},
    {"plumbing.return[].siphon_break", "drill the siphon break of the %p %v", "drill a siphon break in the %p %v",
     "drill the siphon breaks of all returns %v", "drill a siphon break in all returns %v"},
    {"plumbing.drain[].nominal", "take pipe of nominal %v in for the %p", "take pipe of nominal %v in for the %p",
     "take pipe of nominal %v in for all drains", "take pipe of nominal %v in for all drains"},
    {"plumbing.drain[].bore", "take pipe of %v bore for the %p", "take pipe of %v bore for the %p",
     "take pipe of %v bore for all drains", "take pipe of %v bore for all drains"},
    {"plumbing.sump.running_level", "lower the running level to %v", "raise the running level to %v"},
    {"plumbing.pump_inlet.nominal", "give the pump an inlet of nominal %v in",
     "give the pump an inlet of nominal %v in"},
    {"plumbing.pump_inlet.bore", "give the pump an inlet of %v bore", "give the pump an inlet of %v bore"},
    {"room.air_changes", "let in less outdoor air, %v", "let in more outdoor air, %v"},
    {"room.winter.air_changes", "in winter let in less outdoor air, %v", "in winter let in more outdoor air, %v"},
    {"room.summer.air_changes", "in summer let in less outdoor air, %v", "in summer let in more outdoor air, %v"},
    {"room.display.covered", "cover only %v of the display", "cover %v of the display"},
    {"room.sump.covered", "cover only %v of the sump", "cover %v of the sump"},
    {"room.surface[].covered", "cover only %v of the %p", "cover %v of the %p", "cover only %v of all surfaces",
     "cover %v of all surfaces"},
    {"room.dehumidifier.capacity", "take a dehumidifier of %v by its label", "take a dehumidifier of %v by its label"},
    {"room.dehumidifier.set_point", "set the dehumidifier to %v", "set the dehumidifier to %v"},
    {"room.appliance[].on", "run the %p for only %v of the day", "run the %p for %v of the day",
     "run all appliances for only %v of the day", "run all appliances for %v of the day"},
    {"room.heating.heater", "fit heaters of only %v together", "fit heaters of %v together"},
    {"room.top_off.reservoir", "take a reservoir of only %v", "take a reservoir of %v"},
    {"room.top_off.chamber.running_level", "keep the pump's chamber at %v", "keep the pump's chamber at %v"},
    {"life.food[].amount", "feed only %v of %p", "feed %v of %p", "feed only %v of each food", "feed %v of each food"},
    {"life.moved_rock.moved", "move only %v of the rock", "move %v of the rock"},
    {"life.surface[].area", "keep only %v of surface for bacteria: %p", "give the bacteria %v of surface: %p",
     "keep only %v of each surface for bacteria", "give the bacteria %v of each surface"},
    {"life.surface[].volume", "keep only %v for bacteria: %p", "give the bacteria %v: %p",
     "keep only %v of each media for bacteria", "give the bacteria %v of each media"},
    {"life.alkalinity.measured_every", "measure the alkalinity every %v", "measure the alkalinity every %v"},
    {"life.animals[].count", "keep only %v %p", "keep %v %p", "keep only %v of each kind", "keep %v of each kind"},
    {"life.power_cut.battery_air.kla", "let the battery air reach a KLa of %v",
     "let the battery air reach a KLa of %v"},
    {"life.power_cut.battery_air.runs", "take a battery that lasts %v", "take a battery that lasts %v"},
    {"vessel.sand[].grain", "take sand of %v grains", "take sand of %v grains"},
    {"vessel.lid[].width", "make the %p %v wide", "make the %p %v wide", "make all lids %v wide",
     "make all lids %v wide"},
    {"vessel.lid[].lifted_by", "let %v people lift the %p", "let %v people lift the %p", "let %v people lift each lid",
     "let %v people lift each lid"},
    {"vessel.lid[].reach", "bring the %p as near as %v to whoever lifts it",
     "bring the %p as near as %v to whoever lifts it", "bring the lids as near as %v to whoever lifts them",
     "bring the lids as near as %v to whoever lifts them"},
    {"vessel.lid[].above_feet", "stand so that the %p is %v above the feet",
     "stand so that the %p is %v above the feet", "stand so that the lids are %v above the feet",
     "stand so that the lids are %v above the feet"},
    {"vessel.plywood[].spacing", "set the frames of the %p %v apart", "set the frames of the %p %v apart",
     "set the frames of all walls %v apart", "set the frames of all walls %v apart"},
    {"vessel.plywood[].thickness", "make the %p of %v plywood", "make the %p of %v plywood",
     "make all walls of %v plywood", "make all walls of %v plywood"},
    {"vessel.top_rail[].braces", "hold the %p with %v braces", "hold the %p with %v braces",
     "hold each rail with %v braces", "hold each rail with %v braces"},
    {"vessel.top_rail[].breadth", "make the %p %v wide", "make the %p %v wide", "make all rails %v wide",
     "make all rails %v wide"},
    {"vessel.top_rail[].depth", "make the %p %v deep", "make the %p %v deep", "make all rails %v deep",
     "make all rails %v deep"},
    {"vessel.joint[].screw_diameter", "take screws of %v for the %p", "take screws of %v for the %p",
     "take screws of %v for all corners", "take screws of %v for all corners"},
    {"vessel.joint[].penetration", "let the screws of the %p go %v deep", "let the screws of the %p go %v deep",
     "let all screws go %v deep", "let all screws go %v deep"},
    {"vessel.joint[].spacing", "set the screws of the %p %v apart", "set the screws of the %p %v apart",
     "set all screws %v apart", "set all screws %v apart"},
    {"vessel.joint[].glue_width", "glue the %p over %v", "glue the %p over %v", "glue all corners over %v",
     "glue all corners over %v"},
    {"vessel.seam[].bite", "give the %p a bite of %v", "give the %p a bite of %v", "give all seams a bite of %v",
     "give all seams a bite of %v"},
    {"vessel.bulkhead[].hole", "drill only %v for the %p", "drill %v for the %p", "drill %v for all bulkheads",
     "drill %v for all bulkheads"},
    {"vessel.bulkhead[].height", "drill the %p at %v above the floor", "drill the %p at %v above the floor",
     "drill all bulkheads at %v above the floor", "drill all bulkheads at %v above the floor"},
    {"vessel.bulkhead[].to_edge", "keep the hole of the %p %v from the edge",
     "keep the hole of the %p %v from the edge", "keep all holes %v from the edge", "keep all holes %v from the edge"},
    {"plumbing.candidate[].speed", "run the %p at %v of its speed", "run the %p at %v of its speed",
     "run each candidate at %v of its speed", "run each candidate at %v of its speed"},
    {"plumbing.return[].nozzle", "give the %p a nozzle of %v", "give the %p a nozzle of %v",
     "give all returns nozzles of %v", "give all returns nozzles of %v"},
    {"plumbing.return[].to_sand", "aim the %p so that it meets the sand after %v",
     "aim the %p so that it meets the sand after %v", "aim all returns so that they meet the sand after %v",
     "aim all returns so that they meet the sand after %v"},
    {"water.schedule.unit_rate", "take a unit that makes %v", "take a unit that makes %v"},
    {"water.schedule.vat", "mix in a vat of only %v", "mix in a vat of %v"},
    {"water.schedule.dissolve", "let each batch stir for only %v", "let each batch stir for %v"},
    {"water.moved.volume", "bring over only %v of the old water", "bring over %v of the old water"},
    {"room.display.gap", "leave only %v open round pipes and cables", "leave %v open round pipes and cables"},
    {"room.sump.gap", "leave only %v open over the sump", "leave %v open over the sump"},
    {"room.backup.capacity", "take a battery of only %v", "take a battery of %v"},
    {"room.backup.generator", "take a generator of %v", "take a generator of %v"},
    {"room.heat_week.chiller", "take a chiller that takes out %v", "take a chiller that takes out %v"},
    {"room.running.water_change", "change only %v of water", "change %v of water"},
    {"room.heating.looked_every", "look at the thermometer every %v", "look at the thermometer every %v"},
    {"life.bag[].water", "give the bag of the %p only %v of water", "give the bag of the %p %v of water",
     "give every bag %v of water", "give every bag %v of water"},
    {"life.bag[].gas", "give the bag of the %p only %v of gas", "give the bag of the %p %v of gas",
     "give every bag %v of gas", "give every bag %v of gas"},
    {"life.bag[].closed_for", "open the bag of the %p after %v", "keep the bag of the %p closed for %v",
     "open all bags after %v", "open all bags after %v"},
    {"life.quarantine.volume", "take a quarantine tank of only %v", "take a quarantine tank of %v"},
    {"life.quarantine.part", "change only %v of the quarantine tank", "change %v of the quarantine tank"},
    {"life.quarantine.every", "change the quarantine tank's water every %v",
     "change the quarantine tank's water every %v"},
    {"life.quarantine.food[].amount", "feed only %v of %p in quarantine", "feed %v of %p in quarantine"},
    {"life.quarantine.surface[].area", "keep only %v of the %p in quarantine", "give the quarantine %v of the %p"},
    {"life.quarantine.surface[].volume", "keep only %v of the %p in quarantine", "give the quarantine %v of the %p"},
    {"life.quarantine.surface[].rock", "keep only %v of the %p in quarantine", "give the quarantine %v of the %p"},
    {"plumbing.further_pump[].speed", "run the %p at %v of its speed", "run the %p at %v of its speed"},
    {"life.surface[].rock", "take only %v of the %p", "take %v of the %p"},
    {"room.lights.height", "hang the lights %v over the water", "hang the lights %v over the water"},
    {"room.lights.spacing", "hang the lights %v apart", "hang the lights %v apart"},
    {"life.skimmer.room", "let the skimmer fill into %v", "let the skimmer fill into %v"},
    {"life.timetable.start", "begin with %v of the food", "begin with %v of the food"},
    {"life.timetable.step", "add only %v of the food at a step", "add %v of the food at a step"},
    {"life.timetable.rest", "wait %v between steps", "wait %v between steps"},
    {"life.circulation.treatment[].flow", "pass only %v through the %p", "pass %v through the %p",
     "pass only %v through each treatment", "pass %v through each treatment"},
};

/// What stands in the brackets of a path: the element as its label says, or by its number.
[[nodiscard]] inline std::string element_of(std::string_view path) {
  const std::size_t open = path.rfind('['), close = path.rfind(']');
  if (open == std::string_view::npos || close <= open + 1) return {};
  const std::string_view inside = path.substr(open + 1, close - open - 1);
  const bool number = inside.find_first_not_of("0123456789") == std::string_view::npos;
  return number ? "no. " + std::string{inside} : std::string{inside};
}

/// A new value as people say it.
[[nodiscard]] inline std::string value_of_change(const change& c, std::string_view pattern, text::unit_system units) {
  if (!c.is) return c.to;
  const double si = *c.is;
  const bool from_the_edge = pattern.ends_with(".below_edge") || pattern.ends_with(".siphon_break");
  const double shown = from_the_edge ? std::fabs(si) : si;
  if (pattern == "plumbing.pump.speed") return text::of(100.0 * si, text::significant(3)) + " %";
  const amount exact{c.quantity, shown, shown, shown};
  // Meals and the labels of dehumidifiers are for a day.
  if (c.quantity == "mass_flow") return text::in(exact, "g/d", text::significant(3));
  if (pattern == "room.dehumidifier.capacity") {
    return text::in(exact, units == text::unit_system::us ? "US gpd" : "L/d", text::significant(3));
  }
  const bool inches = c.quantity == "length" && units == text::unit_system::us;
  std::string value =
      inches ? text::in(exact, text::everyday_unit(exact, units), text::significant(3)) : text::of(exact, units);
  if (from_the_edge && shown == 0.0) return "the height of the edge";
  if (from_the_edge) value += si < 0.0 ? " above the edge" : " below the edge";
  return value;
}

[[nodiscard]] inline std::string words_of_change(const change& c, text::unit_system units) {
  const cure_words& words = words_of_cure(c.path);
  if (words.empty()) return "set " + c.path + " to " + c.to;
  const bool whole_list = c.path.find("[]") != std::string::npos;
  const bool down = c.is && c.was && *c.is < *c.was;
  std::string_view form = down ? words.less : words.more;
  if (whole_list && !words.all_less.empty()) form = down ? words.all_less : words.all_more;
  std::string said;
  for (std::size_t i = 0; i < form.size(); ++i) {
    if (form[i] != '%') {
      said += form[i];
    } else if (form[++i] == 'v') {
      said += value_of_change(c, words.pattern, units);
    } else {
      const std::string element = element_of(c.path);
      said += element.empty() ? "whole list" : element;
    }
  }
  return said;
}

}  // namespace detail

TANKWRIGHT_INLINE std::string detail::pattern_of(std::string_view path) {
  std::string pattern;
  bool inside = false;
  for (const char c : path) {
    if (c == ']') inside = false;
    if (!inside) pattern += c;
    if (c == '[') inside = true;
  }
  return pattern;
}

TANKWRIGHT_INLINE const detail::cure_words& detail::words_of_cure(std::string_view path) noexcept {
  static constexpr cure_words none{};
  const std::string pattern = pattern_of(path);
  for (const cure_words& row : every_cure) {
    if (row.pattern == pattern) return row;
  }
  return none;
}

TANKWRIGHT_INLINE std::string detail::words_of_changes(const std::vector<change>& changes, std::string_view part,
                                                       text::unit_system units) {
  std::string said;
  if (!part.empty()) {
    said = part;
    if (const auto at = said.find("%v"); at != std::string::npos && !changes.empty()) {
      said.replace(at, 2, value_of_change(changes.front(), pattern_of(changes.front().path), units));
    }
    return said;
  }
  for (const change& one : changes) said += (said.empty() ? "" : " and ") + words_of_change(one, units);
  return said;
}

TANKWRIGHT_INLINE std::string sentence_of(const why_none& why, text::unit_system units) {
  if (why.changes.empty()) return "Nothing you can still change does it, and nothing brings it nearer";
  const std::string_view unit = text::everyday_unit(why.from, units);
  return "Nothing you can still change does it; what helps most: " +
         detail::words_of_changes(why.changes, why.part, units) + ", margin from " +
         text::in(why.from, unit, text::significant(3)) + " to " + text::in(why.to, unit, text::significant(3));
}

TANKWRIGHT_INLINE std::string sentence_of(const cure& c, text::unit_system units) {
  std::string said = detail::words_of_changes(c.changes, c.part, units);
  if (!said.empty() && said.front() >= 'a' && said.front() <= 'z')
    said.front() = static_cast<char>(said.front() - 'a' + 'A');
  return said;
}

}  // namespace tankwright::decisions
