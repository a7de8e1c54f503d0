// SPDX-License-Identifier: BSL-1.0
/// @file
/// What several decisions of closing the top say of the evaporation and of the heat.
#pragma once

#include <string>
#include <tankwright/decisions/cases/room_case.hpp>
#include <tankwright/room/top_off.hpp>

namespace tankwright::decisions::detail {

inline constexpr const char* needs_surfaces = "give the surface of the display, or the display itself";
inline constexpr const char* needs_seasons = "describe the air indoors and outdoors in winter and in summer";
inline constexpr const char* needs_winter = "describe the air indoors and outdoors in winter";
inline constexpr const char* needs_water = "give the volume of the water, or the display so that it can be computed";
inline constexpr const char* needs_walls = "give the walls of the tank: heat goes through them";

/// What keeps a season from being asked: a surface, or the season.
[[nodiscard]] inline const char* what_is_missing(const room_case& c, const char* season) {
  return c.surfaces.empty() ? needs_surfaces : season;
}

/// What questions of warming and cooling need and the plan does not give; null where all is there.
[[nodiscard]] inline const char* missing_for_heat(const room_case& c) {
  if (!c.gives(season::winter)) return what_is_missing(c, needs_winter);
  if (!c.all_water) return needs_water;
  return c.in.heating->walls.empty() ? needs_walls : nullptr;
}

/// "in winter", with words before it.
[[nodiscard]] inline std::string in_season(std::string before, season s) {
  return std::move(before) + (before.empty() ? "in " : " in ") + words(s);
}

[[nodiscard]] inline estimate<mass_flow> evaporation_of(const room::room_humidity& h) {
  const mass_flow a = h.low.evaporation;
  const mass_flow b = h.high.evaporation;
  return {a < b ? a : b, h.central.evaporation, a < b ? b : a, h.reason};
}

/// As fresh water a day; where vapour condenses on cold water it stays a mass.
[[nodiscard]] inline amount top_off_amount(const estimate<mass_flow>& e, temperature fresh_water = celsius(20.0)) {
  return e.low.value() >= 0.0 ? amount_of(room::top_off_rate(e, fresh_water)) : amount_of(e);
}

/// The season in which more water evaporates.
[[nodiscard]] inline estimate<mass_flow> most_evaporation(const room_case& c) {
  std::optional<estimate<mass_flow>> most;
  for (const season s : {season::winter, season::summer}) {
    if (!c.gives(s)) continue;
    const auto here = evaporation_of(c.solved(s).humidity);
    if (!most || here.high > most->high) most = here;
  }
  return *most;
}

/// Condensate as people read it off a bucket: a kilogram is a litre.
[[nodiscard]] inline flow_rate as_litres(mass_flow m) noexcept { return litres_per_day(in_kilograms_per_day(m)); }

inline void add_evaporation_sources(finding& f) {
  using law = room::evaporation_law;
  for (const law l : {law::shah, law::vdi_2089_still, law::smith_1994}) f.source(room::about(l).source);
}

inline void add_heat_sources(finding& f) {
  f.source(room::about(room::evaporation_law::shah).source).source(room::bowen_1926).source(room::en_iso_6946);
}

/// How far a humidity stays below a limit, in points; what rounding leaves of nothing is nothing.
[[nodiscard]] inline estimate<proportion> points_below(relative_humidity limit, const estimate<relative_humidity>& h) {
  const auto below = [&](relative_humidity x) {
    const double points = limit.value() - x.value();
    return fraction(points < 1e-9 && points > -1e-9 ? 0.0 : points);
  };
  return map_falling(h, below);
}

/// As a good hygrometer errs (common practice).
inline constexpr proportion useful_humidity = fraction(0.03);

/// Add a sentence to a note.
inline void say(finding& f, std::string_view sentence) { f.note.append(f.note.empty() ? "" : " ").append(sentence); }

}  // namespace tankwright::decisions::detail
