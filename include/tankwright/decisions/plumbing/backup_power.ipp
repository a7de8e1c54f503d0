// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/backup_power.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// What is kept running, the first first.
[[nodiscard]] inline std::vector<const plan::appliance*> kept_running(const plan::room_section& r) {
  std::vector<const plan::appliance*> kept;
  for (const plan::appliance& a : r.appliance) {
    if (a.kept_as) kept.push_back(&a);
  }
  // The list is short, and equals stay in their order.
  for (std::size_t i = 1; i < kept.size(); ++i) {
    for (std::size_t j = i; j > 0 && *kept[j]->kept_as < *kept[j - 1]->kept_as; --j) std::swap(kept[j], kept[j - 1]);
  }
  return kept;
}

/// The time until help, of the backup or of the power cut.
[[nodiscard]] inline std::optional<duration> until_help(const situation& s) {
  if (s.plan().room->backup->lasts) return *s.plan().room->backup->lasts;
  if (s.plan().life && s.plan().life->power_cut) return s.plan().life->power_cut->help_within.maybe();
  return std::nullopt;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_backup_power(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->backup) return;
  finding& f = out.ask(backup_power);
  const plan::backup& b = *s.plan().room->backup;
  const auto kept = detail::kept_running(*s.plan().room);
  const auto help = detail::until_help(s);
  if (kept.empty()) {
    f.unknown("say of the appliances which is kept as 1, as 2, ...: the air pump first");
    return;
  }
  const room::stored_energy battery{.capacity = *b.capacity, .usable = *b.usable, .inverter = *b.inverter};
  power sum{};
  std::optional<estimate<duration>> first;
  for (std::size_t i = 0; i < kept.size(); ++i) {
    sum += *kept[i]->power;
    if (i + 1 < kept.size() && *kept[i + 1]->kept_as == *kept[i]->kept_as) continue;  // with its equals
    if (!(sum.value() > 0.0)) continue;
    const std::string name = kept[i]->label.empty() ? "appliance" : kept[i]->label;
    const auto lasts = room::battery_feeds(battery, sum);
    f.answer("lasts", first ? "battery lasts with it too" : "battery lasts with it alone", lasts, name);
    if (!first) first = lasts;
  }
  if (!first) {
    f.unknown("give what the appliance that is kept as 1 draws");
    return;
  }
  if (!help) {
    f.unknown("say within which time help comes");
    return;
  }
  f.limit("help", "until help comes", *help);
  f.margin("left", "longer than that by", map_rising(*first, [&](duration t) { return t - *help; }), duration{});
  if (b.generator) {
    f.detail("kept", "all that is kept draws", sum);
    f.detail("generator_left", "the generator gives more than that by", *b.generator - sum);
    if (*b.generator < sum) {
      f.verdict = worse_of(f.verdict, verdict::thin_margin);
      f.note = "The generator does not carry all of it: leave the last one off. ";
    }
  }
  f.note +=
      "Air first: it costs least and keeps most alive. Then the return, last the heater. Try it once for real, and "
      "write the date on the battery.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The battery is empty after " + said(s, first->central) + ", before help comes.";
  }
}

}  // namespace tankwright::decisions
