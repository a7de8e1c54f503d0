# SPDX-License-Identifier: BSL-1.0
import tankwright

plan = tankwright.demo()  # or tankwright.read("my_plan.toml")
plan["plumbing.return[left return].below_edge"] = "35 mm +/- 5 mm"
dry_floor = plan.assess()["sump.power_cut"]
print(dry_floor.verdict, f'{dry_floor.margin.to("mm"):.0f} mm left', dry_floor.caution, sep="\n")

batch = tankwright.salt_for_new_water(volume="2150 L", target=35, temperature_celsius=24, mix_yield="87 %")
print(f'{batch.mix.to("kg"):.1f} kg of mix', *batch.cautions, sep="\n")
