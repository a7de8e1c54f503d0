# SPDX-License-Identifier: BSL-1.0
"""Plans and arguments that cannot be used: each must end with status 2, name each mistake in a line of its own with its place
and what is accepted, and print nothing; from JSON and from C++ (PLAN_BY_SET, which sets key by key) the same mistakes as from TOML.
Usage: bad_plans.py PROGRAM [PLAN_BY_SET]"""
import json
import os
import re
import subprocess
import sys
import tempfile
import tomllib

GOOD = '''title = "t"
[water]
temperature = "24 °C"
new_water = "2150 L"
'''
ROOM = '[room]\nvolume = "60 m3"\n'
WINTER = '[room.winter]\nindoors = "22 C"\noutdoors = "3 C"\noutdoor_humidity = "85 %"\n'

# An animal room on top of it: lines 5 to 10.
LIFE = GOOD + '''[life]
[[life.food]]
amount = "20 g/d"
protein = "45 %"
kind = "dry"
'''
ANIMALS = LIFE + '''[[life.animals]]
each = "20 g"
count = 10
oxygen_use = 200
measured_at_mass = "20 g"
measured_at = "25 °C"
'''

VESSEL = '''[vessel]
length = "2.40 m"
width = "1.00 m"
height = "0.85 m"
water_level = "0.80 m"
'''
PANEL = VESSEL + '''[[vessel.panel]]
label = "front"
width = "2.20 m"
height = "0.65 m"
thickness = "18 mm"
edges = "all supported"
material = "annealed glass"
'''

# name, file content (text or bytes), what the one line must say
CASES = [
    ('empty file', '', r'plan\.toml:1: the plan is empty'),
    ('comment only', '# nothing\n', r'the plan is empty'),
    ('no section', 'title = "t"\n', r'nothing to assess; expected a table such as \[water\]'),
    ('not TOML', 'water\n', r'plan\.toml:\d+: '),
    ('unknown key', GOOD + 'new_watter = "1 L"\n', r'plan\.toml:5: water\.new_watter: is not a key of water; did you mean new_water\?'),
    ('doubt of the new water in a key of its own', GOOD + 'new_water_uncertainty = "3 %"\n', r'plan\.toml:5: water\.new_water_uncertainty: is no key any more; write it with the volume: new_water = "2 m3 \+/- 3 %"'),
    ('doubt of all water in a key of its own', GOOD + ROOM + 'water_volume_uncertainty = "3 %"\n', r'plan\.toml:7: room\.water_volume_uncertainty: is no key any more; write it with the volume: water_volume = "2 m3 \+/- 3 %"'),
    ('doubt of a flask in a key of its own', GOOD + '[water.weighed]\nvolume = "1 L"\nvolume_error = "1 %"\nfull = "1.27 kg"\nempty = "250 g"\ntemperature = "20 C"\n', r'plan\.toml:7: water\.weighed\.volume_error: is no key any more; write it with the volume: volume = "1000 mL \+/- 0\.1 %"'),
    ('doubt of a scale in a key of its own', GOOD + '[water.weighed]\nvolume = "1 L"\nscale_error = "1 g"\nfull = "1.27 kg"\nempty = "250 g"\ntemperature = "20 C"\n', r'plan\.toml:7: water\.weighed\.scale_error: is no key any more; write it with the weights: full = "1\.2755 kg \+/- 0\.5 g"'),
    ('doubt of an evaporation in a key of its own', '[hold]\nsurface = "2.4 m2"\n[hold.planned]\nleak = "1 L/d"\nresolution = "0.1 mm"\nevaporation = "3 mm/d"\nevaporation_uncertainty = "20 %"\n', r'plan\.toml:7: hold\.planned\.evaporation_uncertainty: is no key any more; write it with the evaporation: evaporation = "3 mm/d \+/- 35 %"'),
    ('unknown table', GOOD + '[wine]\n', r'plan\.toml:5: wine: is not a key'),
    ('missing key', '[water]\nnew_water = "10 L"\n', r'plan\.toml:1: water\.temperature: is missing: of the new water when it is measured, for instance 25 °C'),
    ('duplicate key', GOOD + 'new_water = "1 L"\n', r'plan\.toml:5: .*(redefine|duplicate|already)'),
    ('wrong unit', '[water]\ntemperature = "24 L"\n', r'plan\.toml:2: water\.temperature: .*24 L.*volume.*expected'),
    ('no unit', '[water]\ntemperature = "24 °C"\nnew_water = "2150"\n', r'plan\.toml:3: water\.new_water: .*2150'),
    ('bare gallon', '[water]\ntemperature = "77 F"\nnew_water = "300 gal"\n', r'US gal.*imp'),
    ('number for text', 'title = 5\n', r'plan\.toml:1: title: must be a text in quotation marks, not a number'),
    ('text for flag', GOOD + 'probe = "yes"\n', r'probe: must be true or false'),
    ('table for value', GOOD + '[water.now]\nhydrometer = {}\n', r'water\.now\.hydrometer: must be a quantity'),
    ('value for table', GOOD + 'now = 3\n', r'plan\.toml:5: water\.now: must be a table, \[water\.now\], not a number'),
    ('wrong word', 'units = "metric"\n' + GOOD, r'plan\.toml:1: units: "metric" is not known here; expected "si", "us"'),
    ('nan', '[water]\ntemperature = nan\n', r'plan\.toml:2: water\.temperature: '),
    ('infinite', GOOD + 'target = inf\n', r'plan\.toml:5: water\.target: '),
    ('negative salinity', GOOD + 'target = -1\n', r'plan\.toml:5: water\.target: -1 is not possible; expected 0 to 300'),
    ('ice', '[water]\ntemperature = "-5 °C"\nnew_water = "10 L"\n', r'plan\.toml:2: water\.temperature: -5 °C is below the freezing point of this water, -1\.92184 °C at practical salinity 35'),
    ('too hot', '[water]\ntemperature = "95 °C"\nnew_water = "10 L"\n', r'plan\.toml:2: water\.temperature: 95 °C is not possible; expected -5 °C to 60 °C; did you mean 95 °F\?'),
    ('below absolute zero', '[water]\ntemperature = "-300 °C"\n', r'plan\.toml:2: .*absolute zero|-300'),
    ('zero volume', '[water]\ntemperature = "24 °C"\nnew_water = "0 L"\n', r'plan\.toml:3: water\.new_water: 0 L is not possible; expected 0\.001 L to 10000000 L'),
    ('yield zero', GOOD + 'mix_yield = "0 %"\n', r'plan\.toml:5: water\.mix_yield: 0 % is not possible; expected 1 % to 100 %'),
    ('yield above one', GOOD + 'mix_yield = "120 %"\n', r'plan\.toml:5: water\.mix_yield: '),
    ('two readings', GOOD + '[water.now]\nhydrometer = 1.02\nconductivity = "50 mS/cm"\n', r'plan\.toml:7: water\.now\.conductivity: is given beside hydrometer; give one of them, not both \(water\.now\.hydrometer, line 6\)'),
    ('no reading', GOOD + '[water.now]\n', r'plan\.toml:5: water\.now: needs one of practical_salinity, hydrometer, refractometer, conductivity, compensated_conductivity'),
    ('hydrometer without scale', GOOD + '[water.now]\nhydrometer = 1.02\ntemperature = "20 C"\n', r'plan\.toml:5: water\.now\.scale: is missing: the two temperatures printed on the hydrometer, "60F/60F" or "25C/25C" \(water\.now\.hydrometer, line 6\)'),
    ('half a scale', GOOD + '[water.hydrometer]\nscale = "60F"\n', r'plan\.toml:6: water\.hydrometer\.scale: "60F" is not two temperatures; expected two temperatures as they are printed on it, such as "60F/60F" or "25C/25C"'),
    ('pH without scale', GOOD + 'ph = 8.1\n', r'plan\.toml:5: water\.ph: needs ph_scale beside it'),
    ('ammonia without pH', GOOD + 'ammonia = "0.1 mg/L"\n', r'plan\.toml:2: water\.ph: is missing: ammonia is given, and how much of it is free depends on the pH'),
    ('room without size', '[room]\n', r'plan\.toml:1: room: needs one of volume, length'),
    ('room of no volume', '[room]\nvolume = "0 m3"\n', r'plan\.toml:2: room\.volume: 0 m³ is not possible; expected 0\.1 m³ to 1000000 m³'),
    ('room without height', '[room]\nlength = "6 m"\nwidth = "4 m"\n', r'plan\.toml:2: room\.length: needs height beside it'),
    ('winter without humidity', ROOM + '[room.winter]\nindoors = "22 C"\noutdoors = "3 C"\n', r'plan\.toml:3: room\.winter\.outdoor_humidity: is missing: mean relative humidity outdoors, for instance 60 %'),
    ('a sauna', ROOM + '[room.winter]\nindoors = "60 C"\n', r'plan\.toml:4: room\.winter\.indoors: 60 °C is not possible; expected -30 °C to 50 °C; did you mean 60 °F\?'),
    ('unknown cover', ROOM + '[room.display]\ncover = "glass"\n', r'plan\.toml:4: room\.display\.cover: "glass" is not known here; expected "lid", "foam", "bubble sheet", "floating discs"'),
    ('surface without area', ROOM + '[[room.surface]]\nlabel = "weir"\n', r'plan\.toml:3: room\.surface\[weir\]\.area: is missing: free surface of the water, for instance 3\.2 m2'),
    ('more than covered', ROOM + '[room.display]\ncovered = "120 %"\n', r'plan\.toml:4: room\.display\.covered: '),
    ('dehumidifier in watts', ROOM + '[room.dehumidifier]\ncapacity = "300 W"\n', r'plan\.toml:4: room\.dehumidifier\.capacity: .*300 W.*expected'),
    ('window that conducts nothing', ROOM + '[room.window]\ntransmittance = "0 W/(m2 K)"\n', r'plan\.toml:4: room\.window\.transmittance: 0 W/\(m² K\) is not possible; expected 0\.01 W/\(m² K\) to 7\.5 W/\(m² K\)'),
    ('pane thinner than the air', ROOM + WINTER + '[room.window]\ntransmittance = "12 W/(m2 K)"\n', r'plan\.toml:8: room\.window\.transmittance: 12 W/\(m² K\) is not possible; expected 0\.01 W/\(m² K\) to 7\.5 W/\(m² K\)'),
    ('heater of no power', ROOM + '[room.heating]\nheater = "0 W"\n', r'plan\.toml:4: room\.heating\.heater: 0 W is not possible; expected 0\.1 W to 1000 kW'),
    ('margin below one', ROOM + '[room.heating]\nmargin = 0.8\n', r'plan\.toml:4: room\.heating\.margin: 0\.8 is not possible; expected 1 to 10'),
    ('tank wall of cheese', ROOM + '[[room.heating.wall]]\narea = "2 m2"\nmaterial = "cheese"\n', r'plan\.toml:5: room\.heating\.wall\[1\]\.material: "cheese" is not known here; expected "glass", "acrylic", "plywood", "glass fibre", "polystyrene"'),
    ('outage for ever', ROOM + '[room.heating.outage]\nlasts = "0 h"\n', r'plan\.toml:4: room\.heating\.outage\.lasts: 0 h is not possible; expected 1 s to 36500 d'),
    ('half a cooling room', ROOM + '[room.heating.outage]\nlasts = "8 h"\nlowest = "20 C"\nroom_settles_at = "8 C"\n', r'plan\.toml:6: room\.heating\.outage\.room_settles_at: needs room_time_constant beside it'),
    ('salinities crossed', ROOM + '[room.top_off]\nreservoir = "40 L"\nlowest_salinity = 36\nhighest_salinity = 34\n', r'plan\.toml:6: room\.top_off\.highest_salinity: 34 is not above lowest_salinity, 36 \(room\.top_off\.lowest_salinity, line 5\)'),
    ('levels crossed', ROOM + '[room.top_off]\nreservoir = "40 L"\n[room.top_off.chamber]\nsurface = "0.3 m2"\nrunning_level = "10 cm"\nlowest_level = "20 cm"\n', r'plan\.toml:8: room\.top_off\.chamber\.lowest_level: 20 cm is above the running level, 10 cm \(room\.top_off\.chamber\.running_level, line 7\)'),
    ('misspelt room key', ROOM + 'air_change = "1 1/h"\n', r'plan\.toml:3: room\.air_change: is not a key of room; did you mean air_changes\?'),
    ('price with a currency', ROOM + 'price_per_kwh = "0.3 EUR"\n', r'plan\.toml:3: room\.price_per_kwh: '),
    ('food without protein', GOOD + '[[life.food]]\namount = "20 g/d"\n', r'plan\.toml:5: life\.food\[1\]\.protein: is missing: protein in the food as given, for instance 60 %'),
    ('food as one table', GOOD + '[life.food]\namount = "20 g/d"\n', r'plan\.toml:5: life\.food: is a list; write \[\[life\.food\]\], once for each'),
    ('food of no kind', GOOD + '[[life.food]]\namount = "20 g/d"\nprotein = "45 %"\n', r'plan\.toml:5: life\.food\[1\]\.kind: is missing: dry for pellets and flakes for bony fish; wet for frozen and live food, and all that sharks and rays get'),
    ('food per day forgotten', GOOD + '[[life.food]]\namount = "20 g"\nprotein = "45 %"\nkind = "dry"\n', r'plan\.toml:6: life\.food\[1\]\.amount: "20 g", character 4: 20 g is a mass; expected a mass flow such as 2 kg/h'),
    ('protein above all of it', GOOD + '[[life.food]]\namount = "20 g/d"\nprotein = "145 %"\nkind = "dry"\n', r'plan\.toml:7: life\.food\[1\]\.protein: "145 %", character 1: not between 0 and 100 %; expected a proportion such as 60 % or 0\.6'),
    ('more rock moved than there was', LIFE + '[life.moved_rock]\nmoved = "60 kg"\nof = "52 kg"\nnitrogen = "0.5 g/d"\n', r'plan\.toml:11: life\.moved_rock\.moved: 60 kg moves, which is more than there was, 52 kg \(life\.moved_rock\.of, line 12\)'),
    ('rock that carried nothing', LIFE + '[life.moved_rock]\nmoved = "40 kg"\nof = "52 kg"\n', r'plan\.toml:10: life\.moved_rock: needs one of nitrogen, food'),
    ('a surface without a size', LIFE + '[[life.surface]]\nname = "sand"\n', r'plan\.toml:10: life\.surface\[sand\]: needs one of area, volume, bed, rock'),
    ('sand of solid stone', LIFE + '[[life.surface]]\nbed = "2 m²"\nbreathing_depth = "4 mm"\ngrain = "1 mm"\nporosity = 1\n', r'plan\.toml:14: life\.surface\[1\]\.porosity: 100 % is not possible; expected 0 % to 99 %'),
    ('sand below zero', LIFE + '[[life.surface]]\nbed = "-2 m²"\nbreathing_depth = "4 mm"\ngrain = "1 mm"\n', r'plan\.toml:11: life\.surface\[1\]\.bed: -2 m² is not possible; expected 0 m² to 10000 m²'),
    ('culture two and a half times', LIFE + '[[life.start_up.culture]]\noxidises = "0.02 g/d"\ntimes = 2.5\n', r'plan\.toml:12: life\.start_up\.culture\[1\]\.times: 2\.5 is not a whole number'),
    ('weeks of no length', LIFE + '[life.start_up]\nhorizon = "0 d"\n', r'plan\.toml:11: life\.start_up\.horizon: 0 d is not possible; expected 1 h to 3650 d'),
    ('alkalinity without a unit', LIFE + '[life.alkalinity]\nnow = 8\nlowest = 7\n', r'plan\.toml:10: life\.alkalinity\.unit: is missing: unit of the two numbers, as the kit shows it'),
    ('alkalinity already too low', LIFE + '[life.alkalinity]\nunit = "dKH"\nnow = 6\nlowest = 7\n', r'plan\.toml:13: life\.alkalinity\.lowest: 7 is above what the water has now, 6 \(life\.alkalinity\.now, line 12\)'),
    ('animals without a mass', LIFE + '[[life.animals]]\ncount = 3\n', r'plan\.toml:10: life\.animals\[1\]\.each: is missing: mass of one animal, for instance 12 kg'),
    ('fewer than no animals', ANIMALS.replace('count = 10', 'count = -3'), r'plan\.toml:12: life\.animals\[1\]\.count: -3 is not possible; expected 0 to 1000000'),
    ('animals of no mass', ANIMALS.replace('each = "20 g"', 'each = "0 g"'), r'plan\.toml:11: life\.animals\[1\]\.each: 0 g is not possible; expected 0\.001 g to 10000 kg'),
    ('length without speed', ANIMALS + 'adult = "20 cm"\n', r'plan\.toml:16: life\.animals\[1\]\.adult: needs speed beside it'),
    ('battery without strength', ANIMALS + '[life.power_cut]\nhelp_within = "8 h"\n[life.power_cut.battery_air]\nruns = "5 h"\n', r'plan\.toml:18: life\.power_cut\.battery_air\.kla: is missing: rate that its air stones reach in the display.s water at 20 °C, for instance 0\.5 1/h'),
    ('bag on another pH scale', LIFE.replace('[life]', '[life]\nph = 8.1\nph_scale = "nbs"') + '[life.arrivals]\nammonia = "1 mg/L"\nph = 7.2\nph_scale = "total"\n', r'plan\.toml:15: life\.arrivals\.ph_scale: is not that of the tank'),
    ('bag without ammonia', LIFE + '[life.arrivals]\nph = 7.2\nph_scale = "nbs"\n', r'plan\.toml:10: life\.arrivals: needs one of ammonia_nitrogen, ammonia, ammonium'),
    ('misspelt key of life', LIFE + '[life.rooms]\nrun = "2 m"\n', r'plan\.toml:10: life\.rooms: is not a key of life; did you mean room\?'),
    ('display of no height', VESSEL.replace('0.85 m', '0 m'), r'plan\.toml:4: vessel\.height: 0 m is not possible; expected 0\.001 m to 100 m'),
    ('water above the rim', VESSEL.replace('0.80 m', '0.90 m'), r'plan\.toml:5: vessel\.water_level: 0\.9 m is above the rim of the display, 0\.85 m \(vessel\.height, line 4\)'),
    ('outside without the walls', VESSEL + 'measured = "outside"\n', r'plan\.toml:1: vessel\.wall_thickness: is missing: a display that is measured outside needs it \(vessel\.measured, line 6\)'),
    ('walls as thick as the display', VESSEL + 'measured = "outside"\nwall_thickness = "0.6 m"\nfloor_thickness = "20 mm"\n', r'plan\.toml:3: vessel\.width: 1 m leaves nothing inside walls of 0\.6 m \(vessel\.wall_thickness, line 7\)'),
    ('stage above the rim', VESSEL + 'stages = ["0.4 m", "0.9 m"]\n', r'plan\.toml:6: vessel\.stages\[2\]: 0\.9 m is above the rim of the display, 0\.85 m \(vessel\.height, line 4\)'),
    ('sand two ways', VESSEL + '[[vessel.sand]]\ndepth = "0.1 m"\nmass = "100 kg"\n', r'plan\.toml:8: vessel\.sand\[1\]\.mass: is given beside depth; give one of them, not both \(vessel\.sand\[1\]\.depth, line 7\)'),
    ('slope upside down', VESSEL + '[[vessel.sand]]\nshallow_end = "0.2 m"\ndeep_end = "0.1 m"\nrun = "1 m"\n', r'plan\.toml:8: vessel\.sand\[1\]\.deep_end: 0\.1 m is less than the shallow end, 0\.2 m \(vessel\.sand\[1\]\.shallow_end, line 7\)'),
    ('rock larger than the tank', VESSEL + '[[vessel.rock]]\ndry_mass = "9000 kg"\n', r'plan\.toml:7: vessel\.rock\[1\]\.dry_mass: takes the room of 5628\.69 L; the display holds 1920 L up to the water level \(vessel\.water_level, line 5\)'),
    ('rock and rock larger than the tank', VESSEL + 2 * '[[vessel.rock]]\ndry_mass = "2500 kg"\n', r'plan\.toml:1: vessel: sand, rock and equipment together take the room of 3127\.05 L; the display holds 1920 L up to the water level \(vessel\.water_level, line 5\)'),
    ('rock heavier under water', VESSEL + '[[vessel.rock]]\ndry_mass = "5 kg"\nsubmerged_mass = "6 kg"\n', r'plan\.toml:8: vessel\.rock\[1\]\.submerged_mass: 6 kg is not below the dry mass, 5 kg: water carries part of every rock \(vessel\.rock\[1\]\.dry_mass, line 7\)'),
    ('panel above the rim', PANEL + 'lower_edge = "0.30 m"\n', r'plan\.toml:9: vessel\.panel\[front\]\.height: 0\.65 m is higher than the display is above the lower edge of the panel, 0\.55 m \(vessel\.height, line 4\)'),
    ('panel of no thickness', PANEL.replace('18 mm', '0 mm'), r'plan\.toml:10: vessel\.panel\[front\]\.thickness: 0 mm is not possible; expected 0\.1 mm to 10000 mm'),
    ('panel without edges', PANEL.replace('edges', '# edges'), r'plan\.toml:6: vessel\.panel\[front\]\.edges: is missing: how it is held: all supported where a stiff frame holds the top too'),
    ('panel of wood', PANEL.replace('annealed glass', 'oak'), r'plan\.toml:12: vessel\.panel\[front\]\.material: "oak" is not known here; expected "annealed glass", "cast acrylic"'),
    ('feet larger than the stand', VESSEL + '[vessel.floor]\ntank_and_stand = "400 kg"\nfootprint = "3 m²"\nbearing = "4 m²"\n', r'plan\.toml:9: vessel\.floor\.bearing: 4 m² touches the floor; the footprint is only 3 m² \(vessel\.floor\.footprint, line 8\)'),
    ('floor two ways', VESSEL + '[vessel.floor]\ntank_and_stand = "400 kg"\nfootprint = "3 m²"\nroom = "living"\nbuilt_for = "10 kPa"\n', r'plan\.toml:9: vessel\.floor\.room: is given beside built_for; give one of them, not both \(vessel\.floor\.built_for, line 10\)'),
    ('half a brace', VESSEL + '[vessel.brace]\ncount = 1.5\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmaterial = "annealed glass"\n', r'plan\.toml:7: vessel\.brace\.count: 1\.5 is not a whole number'),
    ('light beside the brace', VESSEL + '[vessel.brace]\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmaterial = "annealed glass"\n[[vessel.brace.load]]\nlabel = "light"\nmass = "12 kg"\nat = "1.3 m"\n', r'plan\.toml:16: vessel\.brace\.load\[light\]\.at: 1\.3 m from its end is past the other end of the brace, which spans 1 m \(vessel\.brace\.span, line 9\)'),
    ('a million braces', VESSEL + '[vessel.brace]\ncount = 1e300\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmaterial = "annealed glass"\n', r'plan\.toml:7: vessel\.brace\.count: 1e300 is not possible; expected 1 to 20'),
    ('fixing that holds nothing', VESSEL + '[vessel.brace]\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmaterial = "annealed glass"\njoint = "-1 kN"\n', r'plan\.toml:13: vessel\.brace\.joint: -1 kN is not possible; expected 0\.001 N to 1000000 kN'),
    ('bar of no strength', VESSEL + '[vessel.brace]\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmodulus = "10 GPa"\nallowable = "0 MPa"\ndensity = "600 kg/m3"\n', r'plan\.toml:13: vessel\.brace\.allowable: 0 MPa is not possible; expected 0\.001 MPa to 10000 MPa'),
    ('lid of no span', VESSEL + '[[vessel.lid]]\nspan = "0 m"\nthickness = "8 mm"\nmaterial = "cast acrylic"\n', r'plan\.toml:7: vessel\.lid\[1\]\.span: 0 m is not possible; expected 0\.1 mm to 10 m'),
    ('rock behind the panel', VESSEL + '[vessel.view]\nnearest_rock = "-5 cm"\n', r'plan\.toml:7: vessel\.view\.nearest_rock: -5 cm is not possible; expected 0 cm to 10000 cm'),
    ('invalid UTF-8', b'title = "\xff\xfe"\n', r'plan\.toml:1: '),
    ('binary', bytes(range(256)), r'plan\.toml: is not a text: byte 1 is zero'),
    ('ten megabytes', '#' + 'x' * 10_000_000, r'plan\.toml: more than 1000000 bytes; a plan has at most that'),
]

GOOD_PLUMBING = '''[plumbing]
lift = "1.4 m"
drains_into = 1
[plumbing.overflow]
surface = "2.0 m²"
width = "0.8 m"
crest_height = "0.6 m"
[plumbing.pump]
label = "P1"
flows = ["0 L/h", "5000 L/h", "9000 L/h"]
heads = ["4 m", "3 m", "1 m"]
[[plumbing.return]]
label = "left"
bore = "34 mm"
length = "2 m"
loss = 4
below_edge = "20 mm"
[[plumbing.drain]]
nominal = 2
schedule = "40"
length = "1 m"
drop = "0.9 m"
inlet_head = "60 mm"
[plumbing.sump]
rim = "450 mm"
running_level = "200 mm"
[[plumbing.sump.chamber]]
label = "drains"
area = "0.3 m²"
[[plumbing.sump.chamber]]
label = "pump"
area = "0.4 m²"
[[plumbing.sump.baffle]]
crest = "300 mm"
width = "500 mm"
[plumbing.pump_inlet]
above_floor = "20 mm"
bore = "60 mm"
'''


def plumbing(good, bad):
    """The good plumbing with one thing changed."""
    if GOOD_PLUMBING.count(good) != 1:
        raise SystemExit(f'{good!r} is not once in the good plumbing')
    return GOOD_PLUMBING.replace(good, bad)


PLUMBING = [
    ('bore of zero', plumbing('"34 mm"', '"0 mm"'), r'plan\.toml:14: plumbing\.return\[left\]\.bore: 0 mm is not possible; expected 1 mm to 2000 mm'),
    ('negative length', plumbing('"2 m"', '"-2 m"'), r'plan\.toml:15: plumbing\.return\[left\]\.length: -2 m is not possible; expected 0 m to 1000 m'),
    ('negative loss', plumbing('loss = 4', 'loss = -4'), r'plan\.toml:16: plumbing\.return\[left\]\.loss: -4 is not possible; expected 0 to 10000'),
    ('doubt of the loss in a key of its own', plumbing('loss = 4', 'loss = 4\nloss_uncertainty = "30 %"'), r'plan\.toml:17: plumbing\.return\[left\]\.loss_uncertainty: is no key any more; write it with the loss: loss = "4\.5 \+/- 30 %"'),
    ('rising pump curve', plumbing('"3 m", "1 m"', '"3 m", "3.5 m"'), r'plan\.toml:11: plumbing\.pump\.heads\[3\]: 3\.5 m is not below the head before it, 3 m; a pump lifts less high the more it moves'),
    ('curve that starts late', plumbing('"0 L/h", ', '"500 L/h", '), r'plan\.toml:10: plumbing\.pump\.flows\[1\]: 500 L/h is not zero; a curve begins at the shut valve, where the pump lifts highest'),
    ('one point', plumbing('["0 L/h", "5000 L/h", "9000 L/h"]\nheads = ["4 m", "3 m", "1 m"]', '["0 L/h"]\nheads = ["4 m"]'), r'plan\.toml:10: plumbing\.pump\.flows: is one point; a curve has two or more'),
    ('lists of different length', plumbing(', "1 m"]', ']'), r'plan\.toml:11: plumbing\.pump\.heads: has 2 points, flows has 3 \(plumbing\.pump\.flows, line 10\)'),
    ('head in a flow', plumbing('"5000 L/h"', '"5000 L"'), r'plan\.toml:10: plumbing\.pump\.flows\[2\]: "5000 L", character 6: 5000 L is a volume; expected a flow such as 4000 L/h'),
    ('pump that stands', plumbing('label = "P1"', 'label = "P1"\nspeed = 0'), r'plan\.toml:10: plumbing\.pump\.speed: 0 is not possible; expected 0\.1 to 1\.5'),
    ('baffle above the rim', plumbing('"300 mm"', '"500 mm"'), r'plan\.toml:34: plumbing\.sump\.baffle\[1\]\.crest: 500 mm is above the rim of the sump, 450 mm \(plumbing\.sump\.rim, line 25\)'),
    ('running level above the rim', plumbing('"200 mm"', '"470 mm"'), r'plan\.toml:26: plumbing\.sump\.running_level: 470 mm is above the rim of the sump, 450 mm \(plumbing\.sump\.rim, line 25\)'),
    ('negative running level', plumbing('"200 mm"', '"-1 mm"'), r'plan\.toml:26: plumbing\.sump\.running_level: -1 mm is not possible; expected 1 mm to 100 m'),
    ('chamber without area', plumbing('"0.4 m²"', '"0 m²"'), r'plan\.toml:32: plumbing\.sump\.chamber\[pump\]\.area: 0 m² is not possible; expected 0\.01 cm² to 10000 m²'),
    ('gear that fills its chamber', plumbing('"0.4 m²"', '"0.4 m²"\ngear = "0.5 m²"'), r'plan\.toml:33: plumbing\.sump\.chamber\[pump\]\.gear: leaves no water in the chamber \(plumbing\.sump\.chamber\[pump\]\.area, line 32\)'),
    ('sump without chambers', re.sub(r'(?s)\[\[plumbing\.sump\.chamber.*(?=\[plumbing\.pump_inlet)', '', GOOD_PLUMBING), r'plan\.toml:24: plumbing\.sump\.chamber: is missing: the chambers in the order of the flow; the pump stands in the last'),
    ('no baffle', plumbing('[[plumbing.sump.baffle]]\ncrest = "300 mm"\nwidth = "500 mm"\n', ''), r'plan\.toml:24: plumbing\.sump\.baffle: there are 0 between 2 chambers; expected 1 \(plumbing\.sump\.chamber, line 27\)'),
    ('no sump', re.sub(r'(?s)\[plumbing\.sump\].*(?=\[plumbing\.pump_inlet)', '', GOOD_PLUMBING), r'plan\.toml:1: plumbing\.sump: is missing: the sump'),
    ('no overflow', re.sub(r'(?s)\[plumbing\.overflow\].*(?=\[plumbing\.pump\])', '', GOOD_PLUMBING), r'plan\.toml:1: plumbing\.overflow: is missing: where the display runs over'),
    ('no lift', plumbing('lift = "1.4 m"\n', ''), r'plan\.toml:1: plumbing\.lift: is missing: overflow edge of the display above the floor of the sump, for instance 2\.40 m'),
    ('return without label', plumbing('label = "left"\n', ''), r'plan\.toml:12: plumbing\.return\[1\]\.label: is missing: what the report calls it'),
    ('two returns of one label', plumbing('[[plumbing.drain]]', '[[plumbing.return]]\nlabel = "left"\nbore = "34 mm"\nlength = "1 m"\nbelow_edge = "10 mm"\n[[plumbing.drain]]'), r'plan\.toml:19: plumbing\.return\[2\]\.label: left is the label of two returns \(plumbing\.return\[1\], line 12\)'),
    ('unknown key of a return', plumbing('below_edge = "20 mm"', 'below_edge = "20 mm"\nheight = "1 m"'), r'plan\.toml:18: plumbing\.return\[left\]\.height: is not a key of plumbing\.return\[left\]; known here: label, fed_by, bore, nominal, schedule, length, loss, elbows, elbows_45, tees_through, tees_branch, ball_valves, gate_valves, unions, swing_checks, entrances, kind, below_edge, siphon_break, check_valve, nozzle, to_sand, to_wall, note'),
    ('unknown kind', plumbing('loss = 4', 'kind = "spray"'), r'plan\.toml:16: plumbing\.return\[left\]\.kind: "spray" is not known here; expected "open", "submerged"'),
    ('size that is not made', plumbing('nominal = 2', 'nominal = 1.75'), r'plan\.toml:19: plumbing\.drain\[1\]\.nominal: nominal size = 1\.75 in is not made; sizes are 0\.5 0\.75 1 1\.25 1\.5 2 2\.5 3 4'),
    ('size without schedule', plumbing('schedule = "40"\n', ''), r'plan\.toml:19: plumbing\.drain\[1\]\.nominal: needs schedule beside it'),
    ('bore and size', plumbing('nominal = 2', 'nominal = 2\nbore = "50 mm"'), r'plan\.toml:19: plumbing\.drain\[1\]\.nominal: is given beside bore; give one of them, not both \(plumbing\.drain\[1\]\.bore, line 20\)'),
    ('drains into nothing', plumbing('drains_into = 1', 'drains_into = 0'), r'plan\.toml:3: plumbing\.drains_into: 0 is not possible; expected 1 to 100'),
    ('drains beyond the chambers', plumbing('drains_into = 1', 'drains_into = 3'), r'plan\.toml:3: plumbing\.drains_into: is past the last chamber; the sump has 2 \(plumbing\.sump\.chamber, line 27\)'),
    ('drains between the chambers', plumbing('drains_into = 1', 'drains_into = 1.5'), r'plan\.toml:3: plumbing\.drains_into: 1\.5 is not a whole number'),
    ('overflow without surface', plumbing('"2.0 m²"', '"0 m²"'), r'plan\.toml:5: plumbing\.overflow\.surface: 0 m² is not possible; expected 0\.01 cm² to 10000 m²'),
    ('overflow without width', plumbing('"0.8 m"', '"0 m"'), r'plan\.toml:6: plumbing\.overflow\.width: 0 m is not possible; expected 0\.001 m to 100 m'),
    ('half a gap', plumbing('width = "0.8 m"', 'gaps = 2.5\ngap_width = "10 mm"\ntooth_width = "5 mm"\ngap_height = "30 mm"'), r'plan\.toml:6: plumbing\.overflow\.gaps: 2\.5 is not a whole number'),
    ('negative reserve', plumbing('drains_into = 1', 'reserve = "-5 mm"'), r'plan\.toml:3: plumbing\.reserve: -5 mm is not possible; expected 0 mm to 100 m'),
    ('doubt of the areas in a key of its own', plumbing('drains_into = 1', 'area_uncertainty = "2 %"'), r'plan\.toml:3: plumbing\.area_uncertainty: is no key any more; write it with each area: surface = "2\.4 m2 \+/- 2 %"'),
    ('negative surge', plumbing('drains_into = 1', 'surge = "-5 mm"'), r'plan\.toml:3: plumbing\.surge: -5 mm is not possible; expected 0 mm to 100 m'),
    ('inlet under the floor', plumbing('above_floor = "20 mm"', 'above_floor = "-20 mm"'), r'plan\.toml:37: plumbing\.pump_inlet\.above_floor: -20 mm is not possible; expected 0 mm to 100 m'),
]

# Everything together; each contradiction changes one or two lines of it.
WHOLE = '''[water]
temperature = "24 °C"
match_within = 0.5
[water.trial_batch]
mix = "420 g"
fresh_water = "10 kg"
reached = 34.8
[vessel]
length = "2.40 m"
width = "1.00 m"
height = "0.85 m"
water_level = "0.80 m"
stages = ["0.4 m", "0.8 m"]
[[vessel.sand]]
shallow_end = "0.08 m"
deep_end = "0.20 m"
run = "1.00 m"
[[vessel.rock]]
level_before = "0.50 m"
level_after = "0.52 m"
[[vessel.equipment]]
volume = "3 L"
mass = "4 kg"
[[vessel.panel]]
width = "2.20 m"
height = "0.65 m"
lower_edge = "0.20 m"
thickness = "19 mm"
edges = "all supported"
material = "annealed glass"
[vessel.floor]
tank_and_stand = "400 kg"
footprint = "3 m²"
[vessel.brace]
count = 2
rail = "2.4 m"
rail_height = "0.85 m"
span = "1 m"
breadth = "45 mm"
depth = "90 mm"
material = "annealed glass"
[[vessel.lid]]
span = "0.48 m"
thickness = "8 mm"
material = "annealed glass"
[vessel.view]
nearest_rock = "0.32 m"
[hold]
surface = "2.4 m²"
capacity = "1920 L"
depth = "0.80 m"
resolution = "1 mm"
times = ["0 h", "24 h", "48 h", "72 h"]
levels = ["800 mm", "798 mm", "797 mm", "795 mm"]
[plumbing]
lift = "1.45 m"
edge_to_rim = "50 mm"
reserve = "20 mm"
[plumbing.overflow]
surface = "2.4 m²"
width = "0.8 m"
crest_height = "0.80 m"
[plumbing.box]
area = "0.06 m²"
falls_by = "120 mm"
[plumbing.pump]
flows = ["0 L/h", "5000 L/h", "9000 L/h"]
heads = ["4 m", "3 m", "1 m"]
[[plumbing.return]]
label = "left"
bore = "34 mm"
length = "2 m"
below_edge = "20 mm"
siphon_break = "6 mm"
[[plumbing.drain]]
bore = "50 mm"
length = "1 m"
drop = "0.9 m"
inlet_head = "60 mm"
[plumbing.sump]
rim = "450 mm"
running_level = "200 mm"
[[plumbing.sump.chamber]]
area = "0.3 m²"
[[plumbing.sump.chamber]]
area = "0.4 m²"
[[plumbing.sump.baffle]]
crest = "300 mm"
width = "500 mm"
[plumbing.pump_inlet]
above_floor = "20 mm"
bore = "60 mm"
[room]
length = "6 m"
width = "4 m"
height = "2.6 m"
[room.winter]
indoors = "22 °C"
outdoors = "3 °C"
outdoor_humidity = "85 %"
coldest_night = "-8 °C"
[room.heating.outage]
lasts = "12 h"
lowest = "21 °C"
[room.top_off]
reservoir = "60 L"
lowest_salinity = 33
highest_salinity = 36.5
free_volume = "75 L"
[room.top_off.chamber]
lowest_level = "150 mm"
[life]
[[life.food]]
amount = "20 g/d"
protein = "45 %"
kind = "dry"
[[life.surface]]
bed = "2.2 m²"
breathing_depth = "4 mm"
grain = "1.2 mm"
[[life.surface]]
volume = "25 L"
specific_surface = "600 m2/m3"
[life.start_up]
horizon = "56 d"
rock_on = "1 d"
[[life.start_up.animals]]
on = "7 d"
share = "50 %"
[[life.start_up.animals]]
on = "28 d"
share = "100 %"
[[life.start_up.water_change]]
first = "7 d"
part = "10 %"
[life.room]
run = "2.0 m"
width = "0.8 m"
'''


def contradiction(name, changes, says):
    """The whole plan with lines changed. The line that must be blamed is marked with @ in what stands there now."""
    text = WHOLE
    for good, bad in changes.items():
        if ('\n' + text).count('\n' + good + '\n') != 1:
            raise SystemExit(f'{name}: {good!r} is not once in the whole plan')
        text = ('\n' + text).replace('\n' + good + '\n', '\n' + bad + '\n')[1:]
    line = text[:text.index('@')].count('\n') + 1
    return name, text.replace('@', ''), rf'plan\.toml:{line}: ' + says


EDGE, LIFT = 'crest_height = "0.80 m"', 'lift = "1.45 m"'
CONTRADICTIONS = [contradiction(*case) for case in [
    # within the display
    ('sand above the rim', {'[[vessel.sand]]': '[[vessel.sand]]\n@depth = "0.9 m"\narea = "0.2 m²"', 'shallow_end = "0.08 m"': '', 'deep_end = "0.20 m"': '', 'run = "1.00 m"': ''}, r'vessel\.sand\[1\]\.depth: 0\.9 m of sand is above the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('sand deeper than the water', {'deep_end = "0.20 m"': '@deep_end = "2.0 m"'}, r'vessel\.sand\[1\]\.deep_end: takes the room of 2496 L; the display holds 1920 L up to the water level \(vessel\.water_level, line 12\)'),
    ('slope longer than the display', {'run = "1.00 m"': '@run = "10 m"'}, r'vessel\.sand\[1\]\.run: 10 m is longer than the display inside, 2\.6 m \(vessel\.length, line 9\)'),
    ('sand beyond the floor', {'run = "1.00 m"': 'run = "1.00 m"\n@area = "3 m²"'}, r'vessel\.sand\[1\]\.area: 3 m² is more than the floor of the display, 2\.4 m² \(vessel\.length, line 9\)'),
    ('rock that lifts the water over the rim', {'level_after = "0.52 m"': '@level_after = "0.92 m"'}, r'vessel\.rock\[1\]\.level_after: 0\.92 m is above the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('equipment larger than the tank', {'volume = "3 L"': '@volume = "3 m3"'}, r'vessel\.equipment\[1\]\.volume: takes the room of 3000 L; the display holds 1920 L up to the water level \(vessel\.water_level, line 12\)'),
    ('panel wider than its wall', {'width = "2.20 m"': '@width = "2.50 m"'}, r'vessel\.panel\[1\]\.width: 2\.5 m is wider than the longest wall inside \(give the clear width\), 2\.4 m \(vessel\.length, line 9\)'),
    ('panel that begins above the rim', {'lower_edge = "0.20 m"': '@lower_edge = "0.90 m"'}, r'vessel\.panel\[1\]\.lower_edge: 0\.9 m is not below the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('rail longer than the wall', {'rail = "2.4 m"': '@rail = "24 m"'}, r'vessel\.brace\.rail: 24 m is longer than the longest wall, 2\.4 m \(vessel\.length, line 9\)'),
    ('rail off the wall', {'rail_height = "0.85 m"': '@rail_height = "8.5 m"'}, r'vessel\.brace\.rail_height: 8\.5 m is off the walls, above the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('brace longer than the display', {'span = "1 m"': '@span = "10 m"'}, r'vessel\.brace\.span: 10 m is longer than the display, 2\.6 m'),
    ('braces that do not fit side by side', {'count = 2': 'count = 20', 'breadth = "45 mm"': '@breadth = "450 mm"'}, r'vessel\.brace\.breadth: 9 m of braces side by side is more than their rail, 2\.4 m \(vessel\.brace\.rail, line \d+\)'),
    ('lid longer than the display', {'span = "0.48 m"': '@span = "4.8 m"'}, r'vessel\.lid\[1\]\.span: 4\.8 m is longer than the display, 2\.6 m \(vessel\.length, line 9\)'),
    ('rock beyond the back wall', {'nearest_rock = "0.32 m"': '@nearest_rock = "3.2 m"'}, r'vessel\.view\.nearest_rock: 3\.2 m is farther than the display reaches, 2\.6 m'),
    ('a fill that falls', {'stages = ["0.4 m", "0.8 m"]': '@stages = ["0.8 m", "0.4 m"]'}, r'vessel\.stages\[2\]: 0\.4 m does not stand above the stage before it, 0\.8 m; a fill rises \(vessel\.stages\[1\], line 13\)'),
    ('panel that is a block', {'thickness = "19 mm"': '@thickness = "19 ft"'}, r'vessel\.panel\[1\]\.thickness: 19 ft is not less than the shorter side, 2\.13255 ft: that is a block, not a panel \(vessel\.panel\[1\]\.height, line 26\)'),
    ('lid that is a block', {'thickness = "8 mm"': '@thickness = "8 ft"'}, r'vessel\.lid\[1\]\.thickness: 8 ft is not less than the span, 0\.48 m: that is a block, not a lid \(vessel\.lid\[1\]\.span, line 43\)'),
    ('brace deeper than long', {'depth = "90 mm"': '@depth = "90 in"'}, r'vessel\.brace\.depth: 90 in upright is more than the brace is long, 39\.37 in \(vessel\.brace\.span, line 38\)'),
    ('pane as thick as the display', {'nearest_rock = "0.32 m"': 'nearest_rock = "0.32 m"\n@thickness = "18 ft"'}, r'vessel\.view\.thickness: 18 ft of pane is more than the display, 8\.5302 ft \(vessel\.length, line 9\)'),
    # hold test
    ('hold test of a larger surface', {'[hold]': '[hold]\n@surface = "24 m²"', 'surface = "2.4 m²"\ncapacity = "1920 L"': 'capacity = "1920 L"'}, r'hold\.surface: 24 m² is more than the display has, 2\.4 m² \(vessel\.length, line 9\)'),
    ('hold test above the rim', {'depth = "0.80 m"': '@depth = "0.90 m"'}, r'hold\.depth: 0\.9 m is above the rim of the display, 0\.85 m'),
    ('hold test of more water', {'capacity = "1920 L"': '@capacity = "19200 L"'}, r'hold\.capacity: 19200 L is more than the display holds up to its rim, 2040 L'),
    ('a reading in another unit', {'levels = ["800 mm", "798 mm", "797 mm", "795 mm"]': '@levels = ["800 mm", "798 mm", "797 mm", "795 cm"]'}, r'hold\.levels: 7\.153 m between the readings \(is one in another unit\?\) is more than the water is deep, 0\.8 m \(hold\.depth, line 51\)'),
    ('a gauge coarser than the water is deep', {'resolution = "1 mm"': '@resolution = "1 m"'}, r'hold\.resolution: 1 m is more than the water is deep, 0\.8 m \(hold\.depth, line 51\)'),
    ('a pan in another unit', {'levels = ["800 mm", "798 mm", "797 mm", "795 mm"]': 'levels = ["800 mm", "798 mm", "797 mm", "795 mm"]\n@pan = ["60 mm", "59 mm", "58 mm", "570 cm"]'}, r'hold\.pan: 5\.642 m between the readings \(is one in another unit\?\) is more than the water is deep, 0\.8 m \(hold\.depth, line 51\)'),
    # plumbing
    ('edge below the water of the sump', {LIFT: '@lift = "14.5 cm"'}, r'plumbing\.lift: 14\.5 cm puts the overflow edge no higher than the water in the sump, 200 mm \(plumbing\.sump\.running_level, line 82\)'),
    ('reserve higher than the sump', {'reserve = "20 mm"': '@reserve = "20 in"'}, r'plumbing\.reserve: 20 in to keep free is more than the sump is high, 17\.717 in \(plumbing\.sump\.rim, line 81\)'),
    ('outlet under the floor', {'below_edge = "20 mm"': '@below_edge = "2 m"'}, r'plumbing\.return\[left\]\.below_edge: 2 m below the overflow edge is under the floor of the display; the edge is at 0\.8 m \(plumbing\.overflow\.crest_height, line 62\)'),
    ('siphon break under the floor', {'siphon_break = "6 mm"': '@siphon_break = "6 m"'}, r'plumbing\.return\[left\]\.siphon_break: 6 m below the overflow edge is under the floor of the display; the edge is at 0\.8 m \(plumbing\.overflow\.crest_height, line 62\)'),
    ('open outlet under water', {'below_edge = "20 mm"': '@kind = "open"\nbelow_edge = "20 mm"'}, r'plumbing\.return\[left\]\.kind: open ends in the air, but its opening is 20 mm below the overflow edge, under water \(plumbing\.return\[left\]\.below_edge, line 74\)'),
    ('submerged outlet in the air', {'below_edge = "20 mm"': '@below_edge = "-200 mm"'}, r'plumbing\.return\[left\]\.below_edge: 0\.2 m above the overflow edge is out of the water \(kind = "open", where it is\); edge to rim is 0\.05 m \(plumbing\.edge_to_rim, line 57\)'),
    ('drain longer than the way down', {'drop = "0.9 m"': '@drop = "9 m"'}, r'plumbing\.drain\[1\]\.drop: 9 m ends below the floor of the sump; from the overflow edge it is 1\.45 m \(plumbing\.lift, line 56\)'),
    ('more over the drain than below it', {'inlet_head = "60 mm"': '@inlet_head = "60 in"'}, r'plumbing\.drain\[1\]\.inlet_head: 60 in is more than the whole drop of the drain, 35\.433 in \(plumbing\.drain\[1\]\.drop, line 78\)'),
    ('box that falls through the sump', {'falls_by = "120 mm"': '@falls_by = "120 in"'}, r'plumbing\.box\.falls_by: 120 in ends below the floor of the sump; from the overflow edge it is 57\.087 in \(plumbing\.lift, line 56\)'),
    ('pump inlet above the water', {'above_floor = "20 mm"': '@above_floor = "300 mm"'}, r'plumbing\.pump_inlet\.above_floor: 300 mm is not under water; the sump runs at 200 mm \(plumbing\.sump\.running_level, line 82\)'),
    ('doubt of the levels in a key of its own', {'reserve = "20 mm"': '@level_uncertainty = "4 mm"'}, r'plumbing\.level_uncertainty: is no key any more; write it with each level and depth: running_level = "250 mm \+/- 4 mm"'),
    ('return wider than the display', {'bore = "34 mm"': '@bore = "1.9 m"'}, r'plumbing\.return\[left\]\.bore: 2\.83529 m² of opening is more than the whole display, 2\.4 m² \(plumbing\.overflow\.surface, line 60\)'),
    ('drain wider than the display', {'bore = "50 mm"': '@bore = "1.9 m"'}, r'plumbing\.drain\[1\]\.bore: 2\.83529 m² of opening is more than the whole display, 2\.4 m² \(plumbing\.overflow\.surface, line 60\)'),
    ('inlet wider than the display', {'bore = "60 mm"': '@bore = "1.9 m"'}, r'plumbing\.pump_inlet\.bore: 2\.83529 m² of opening is more than the whole display'),
    # plumbing and display
    ('edge above the rim', {EDGE: '@crest_height = "0.90 m"'}, r'plumbing\.overflow\.crest_height: 0\.9 m is above the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('edge above the water', {EDGE: '@crest_height = "0.82 m"'}, r'plumbing\.overflow\.crest_height: 0\.82 m is above the water, which runs over it; that is at 0\.8 m \(vessel\.water_level, line 12\)'),
    ('more from edge to rim than there is', {'edge_to_rim = "50 mm"': '@edge_to_rim = "50 cm"'}, r'plumbing\.edge_to_rim: 50 cm is more than the display has above its overflow edge, 5 cm \(vessel\.height, line 11\)'),
    ('edge wider than all walls', {'width = "0.8 m"\ncrest_height = "0.80 m"': '@width = "8 m"\ncrest_height = "0.80 m"'}, r'plumbing\.overflow\.width: 8 m is wider than all walls of the display, 6\.8 m'),
    ('edge thicker than the display', {EDGE: EDGE + '\n@thickness = "12 m"'}, r'plumbing\.overflow\.thickness: 12 m is more than the display, 2\.6 m'),
    ('comb longer than all walls', {'width = "0.8 m"\ncrest_height = "0.80 m"': '@gaps = 500\ngap_width = "20 mm"\ntooth_width = "5 mm"\ngap_height = "30 mm"\ncrest_height = "0.80 m"'}, r'plumbing\.overflow\.gaps: 12\.495 m of comb is more than all walls of the display, 6\.8 m'),
    ('overflow of a larger surface', {'[plumbing.overflow]\nsurface = "2.4 m²"': '[plumbing.overflow]\n@surface = "24 m²"'}, r'plumbing\.overflow\.surface: 24 m² is more than the display has at its overflow edge, 2\.4 m²'),
    ('sump larger than the stand it is in', {'footprint = "3 m²"': 'footprint = "0.5 m²"', '[[plumbing.sump.chamber]]\narea = "0.3 m²"': '@[[plumbing.sump.chamber]]\narea = "0.3 m²"'}, r'plumbing\.sump\.chamber: 0\.7 m² of chambers does not fit under the display \(where the sump stands elsewhere, say sump_below = false\); the footprint is 0\.5 m² \(vessel\.floor\.footprint, line 33\)'),
    # water
    ('yield two ways', {'match_within = 0.5': 'mix_yield = "90 %"', '[water.trial_batch]': '@[water.trial_batch]'}, r'water\.trial_batch: is given beside mix_yield; give one of them, not both \(water\.mix_yield, line 3\)'),
    ('two targets', {'match_within = 0.5': 'target = 34\n@[water.older_tank]\npractical_salinity = 35'}, r'water\.older_tank: is given beside target; give one of them, not both \(water\.target, line 3\)'),
    ('ammonia two ways', {'match_within = 0.5': 'ammonia = "0.1 mg/L"\n@ammonium = "0.1 mg/L"\nph = 8.1\nph_scale = "nbs"'}, r'water\.ammonium: is given beside ammonia; give one of them, not both \(water\.ammonia, line 3\)'),
    ('match nearer than equal', {'match_within = 0.5': '@match_within = -0.5'}, r'water\.match_within: -0\.5 is not possible; expected 0 to 42'),
    ('match that takes anything', {'match_within = 0.5': '@match_within = 500'}, r'water\.match_within: 500 is not possible; expected 0 to 42'),
    ('trial that may have been fresh', {'reached = 34.8': '@reached = "34.8 +/- 50"'}, r'water\.trial_batch\.reached: has a doubt that is not less than what was reached'),
    ('doubt of the reading in a key of its own', {'reached = 34.8': 'reached = 34.8\n@reading_error = 0.5'}, r'water\.trial_batch\.reading_error: is no key any more; write it with the reading: reached = "34\.8 \+/- 0\.5"'),
    ('air of the Moon', {'match_within = 0.5': '@air_pressure = "1008 Pa"'}, r'water\.air_pressure: 1008 Pa is not possible; expected 20000 Pa to 180 kPa; did you mean 1008 hPa\?'),
    # room
    ('room of a bucket', {'length = "6 m"\nwidth = "4 m"\nheight = "2.6 m"': '@volume = "2 m3"'}, r'room\.volume: 2 m³ does not hold its tanks, 2355 L \(vessel\.height, line 11\)'),
    ('display longer than the room', {'[vessel]\nlength = "2.40 m"': '[vessel]\n@length = "24 m"'}, r'vessel\.length: 24\.02\d* m of display, corner to corner, is more than the room, 7\.21\d* m \(room\.length, line \d+\)'),
    ('display larger than the floor', {'[vessel]\nlength = "2.40 m"': '[vessel]\n@length = "2.40 m"', '[room]\nlength = "6 m"\nwidth = "4 m"': '[room]\nlength = "20 m"\nwidth = "0.1 m"'}, r'vessel\.length: 2\.4 m² of display is more than the floor of the room, 2 m²'),
    ('display higher than the room', {'height = "0.85 m"': '@height = "0.85 m"', 'height = "2.6 m"': 'height = "0.8 m"'}, r'vessel\.height: 0\.85 m is higher than the room, 0\.8 m \(room\.height, line \d+\)'),
    ('stand larger than the room', {'footprint = "3 m²"': '@footprint = "300 m²"'}, r'vessel\.floor\.footprint: 300 m² is more than the floor of the room, 24 m²'),
    ('sump higher than the room', {'rim = "450 mm"': '@rim = "450 cm"'}, r'plumbing\.sump\.rim: 4\.5 m is higher than the room, 2\.6 m'),
    ('baffle wider than the room', {'width = "500 mm"': '@width = "500 in"'}, r'plumbing\.sump\.baffle\[1\]\.width: 500 in is wider than the room, 283\.9 in \(room\.length, line 94\)'),
    ('tank wall larger than the tank', {'[room.heating.outage]': '[[room.heating.wall]]\n@area = "59 m²"\ntransmittance = "3 W/(m2 K)"\n[room.heating.outage]'}, r'room\.heating\.wall\[1\]\.area: 59 m² is more than all of the display, 10\.58 m² \(vessel\.length, line 9\)'),
    ('tank wall thicker than the tank', {'[room.heating.outage]': '[[room.heating.wall]]\narea = "2 m²"\nmaterial = "plywood"\n@thickness = "27 m"\n[room.heating.outage]'}, r'room\.heating\.wall\[1\]\.thickness: 27 m is not possible; expected 0\.1 mm to 10 m'),
    ('coldest night warmer than the mean', {'coldest_night = "-8 °C"': '@coldest_night = "8 °C"'}, r'room\.winter\.coldest_night: 8 °C is warmer than the mean of the season, 3 °C \(room\.winter\.outdoors, line 99\)'),
    ('more surface than the display has', {'[room.heating.outage]': '[room.display]\n@area = "24 m²"\n[room.heating.outage]'}, r'room\.display\.area: is what vessel gives; leave it out \(vessel, line 8\)'),
    ('more surface than the sump has', {'[room.heating.outage]': '[room.sump]\n@area = "6 m²"\n[room.heating.outage]'}, r'room\.sump\.area: is what plumbing\.sump\.chamber gives; leave it out \(plumbing\.sump\.chamber, line 83\)'),
    ('animals too warm already', {'lowest = "21 °C"': '@lowest = "26 °C"'}, r'room\.heating\.outage\.lowest: 26 °C is not below the water as it runs, 24 °C \(water\.temperature, line 2\)'),
    ('animals for saltier water', {'lowest_salinity = 33': '@lowest_salinity = 36'}, r'room\.top_off\.lowest_salinity: 36 is above what the water has, 35'),
    ('animals for fresher water', {'lowest_salinity = 33': 'lowest_salinity = 3', 'highest_salinity = 36.5': '@highest_salinity = 12'}, r'room\.top_off\.highest_salinity: 12 is below what the water has, 35'),
    ('more room for water than there is', {'free_volume = "75 L"': '@free_volume = "75 m3"'}, r'room\.top_off\.free_volume: 75 m³ to run into is more than display and sump hold, 2\.355 m³ \(vessel\.height, line 11\)'),
    ('chamber that runs over', {'lowest_level = "150 mm"': '@running_level = "500 mm"\nlowest_level = "150 mm"'}, r'room\.top_off\.chamber\.running_level: is that of the sump; leave it out \(plumbing\.sump\.running_level, line 82\)'),
    ('lowest level below the inlet', {'lowest_level = "150 mm"': '@lowest_level = "15 mm"'}, r'room\.top_off\.chamber\.lowest_level: 15 mm leaves the inlet of the pump in the air, which reaches up to 20 mm \(plumbing\.pump_inlet\.above_floor, line 91\)'),
    # life
    ('more bed than floor', {'bed = "2.2 m²"': '@bed = "22 m²"'}, r'life\.surface\[1\]\.bed: 22 m² of sand is more than the floor of display and sump, 3\.1 m² \(vessel\.length, line 9\)'),
    ('sand that breathes above the rim', {'breathing_depth = "4 mm"': '@breathing_depth = "4 m"'}, r'life\.surface\[1\]\.breathing_depth: 4 m of sand is above the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('more media than water', {'volume = "25 L"': '@volume = "25 m3"'}, r'life\.surface\[2\]\.volume: 25 m³ of media is more than display and sump hold, 2\.355 m³ \(vessel\.height, line 11\)'),
    ('rock after the forecast', {'rock_on = "1 d"': '@rock_on = "90 d"'}, r'life\.start_up\.rock_on: 90 d is after the end of the forecast, 56 d \(life\.start_up\.horizon, line \d+\)'),
    ('animals out of order', {'on = "28 d"': '@on = "2 d"'}, r'life\.start_up\.animals\[2\]\.on: 2 d is not after the step before it, 7 d; put the steps in order \(life\.start_up\.animals\[1\]\.on, line 128\)'),
    ('animals after the forecast', {'on = "28 d"': '@on = "280 d"'}, r'life\.start_up\.animals\[2\]\.on: 280 d is after the end of the forecast, 56 d \(life\.start_up\.horizon, line 125\)'),
    ('more than all animals', {'share = "100 %"': '@share = "110 %"'}, r'life\.start_up\.animals\[2\]\.share: "110 %", character 1: not between 0 and 100 %; expected a proportion such as 60 % or 0\.6'),
    ('water change after the forecast', {'first = "7 d"': '@first = "70 d"'}, r'life\.start_up\.water_change\[1\]\.first: 70 d is after the end of the forecast, 56 d \(life\.start_up\.horizon, line 125\)'),
    ('run longer than the display', {'run = "2.0 m"': '@run = "20 m"'}, r'life\.room\.run: 20 m is longer than the display inside, 2\.6 m'),
    ('run and width exchanged', {'run = "2.0 m"\nwidth = "0.8 m"': 'run = "0.7 m"\n@width = "2.0 m"'}, r'life\.room\.width: 2 m is more than the longest straight run: they may be exchanged; 0\.7 m \(life\.room\.run, line 137\)'),
    ('mix that is hardly salt', {'[water.trial_batch]': '[water.trial_batch]', 'mix = "420 g"': '@mix = "4200 kg"'}, r'water\.trial_batch\.mix: 4200 kg gave so little salt'),
]]

# What is possible but outside a formula's range silences one finding: the report is printed.
ANSWERED = [
    ('salinity past the scale', GOOD + 'target = 43\n'),
    ('dehumidifier too dry', ROOM + '[room.dehumidifier]\ncapacity = "20 L/d"\nset_point = "30 %"\n'),
    ('treatment that removes nothing', LIFE + '[[life.circulation.treatment]]\nflow = "900 L/h"\nremoves = "0 %"\n'),
    ('filter in water too hot', LIFE.replace('24 °C', '34 °C') + '[[life.surface]]\narea = "5 m²"\n'),
    ('panel long as a strip', PANEL.replace('0.65 m', '0.10 m')),
    ('running level above the baffle', plumbing('"200 mm"', '"310 mm"')),
    contradiction('no temperature for life', {'temperature = "24 °C"': '@temperature = "34 °C"'}, r''),
]

ARGUMENTS = [
    ('no such file', ['no/such/plan.toml'], r'no/such/plan\.toml: no such file'),
    ('a folder', ['.'], r'is a folder, not a plan'),
    ('unknown option', ['--jason'], r'unknown option --jason; did you mean --json'),
    ('two plans', ['a.toml', 'b.toml'], r'one plan at a time: a\.toml and b\.toml'),
    ('units without a word', ['--units'], r'--units needs a word: si or us'),
    ('unknown units', ['--units', 'metric'], r'--units metric: must be si or us'),
]


def run(program, arguments, folder):
    done = subprocess.run([program] + arguments, cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE, timeout=60)
    return done.returncode, done.stdout, done.stderr.decode('utf-8', 'replace')


def complaint_about(program, arguments, wanted, folder):
    status, printed, said = run(program, arguments, folder)
    if status != 2:
        return f'status {status}, expected 2; said: {said[:300]}'
    if printed:
        return 'printed something'
    for line in said.rstrip('\n').split('\n'):
        if not line.startswith('commission: ') or len(line) > 1200:
            return f'said a line that is no complaint: {line[:300]}'
    if not re.search(wanted, said):
        return f'did not say /{wanted}/: {said[:600]}'
    return None


def reasons_in(said, name):
    """What is wrong, without the place: the same from TOML and from JSON."""
    reasons = []
    for line in said.rstrip('\n').split('\n'):
        line = line[len('commission: ' + name):]
        line = re.sub(r'^:(\d+:)? ', '', line)
        line = re.sub(r'^\S+: ', '', line)
        reasons.append(re.sub(r', line \d+\)', ')', line))
    return sorted(re.sub(r'( \([a-z_.\[\] \d]+\))+$', '', r) for r in reasons)


def json_complaint(program, content, folder):
    """The same plan as JSON must be refused for the same reasons."""
    try:
        table = tomllib.loads(content)
        text = json.dumps(table, allow_nan=True)
    except (tomllib.TOMLDecodeError, TypeError, ValueError):
        return None  # no TOML, or a value that JSON does not have
    if 'NaN' in text or 'Infinity' in text or not table:
        return None
    with open(os.path.join(folder, 'plan.json'), 'w') as file:
        file.write(text)
    _, _, toml_said = run(program, ['plan.toml'], folder)
    status, _, said = run(program, ['plan.json'], folder)
    if status != 2:
        return f'status {status} from JSON'
    if reasons_in(said, 'plan.json') != reasons_in(toml_said, 'plan.toml'):
        return f'from JSON: {reasons_in(said, "plan.json")}, from TOML: {reasons_in(toml_said, "plan.toml")}'
    return None


# What only a file can say: kinds of values, tables and lists are given by plan::set through one text.
ONLY_IN_A_FILE = re.compile(r'^(must be|is not a finite number|is a list; write|is one table; write|is written|is not a text|the plan is empty|.*defined|.*duplicate)')


def mistakes_in(said, name):
    """(path, reason) of each line."""
    for line in said.rstrip('\n').split('\n'):
        line = re.sub(r'^commission: ', '', line)
        line = re.sub(r', line \d+\)$', ')', line)
        found = re.match(rf'(?:{re.escape(name)}:(?:\d+:)? )?(?:([a-z_]\S*(?: \S+\])?\S*): )?(.*)$', line)
        yield found.group(1) or '', found.group(2)


def cpp_complaint(program, by_set, content, folder):
    """The same plan, set key by key, must be refused for the same reasons. Returns (complaint, mistakes compared)."""
    try:
        if not tomllib.loads(content):
            return None, 0
    except (tomllib.TOMLDecodeError, TypeError, ValueError):
        return None, 0
    _, _, said = run(program, ['plan.toml'], folder)
    _, printed, _ = run(by_set, ['plan.toml'], folder)
    from_cpp = printed.decode()
    reasons = [re.sub(r'^: ', '', reason) for _, reason in mistakes_in(from_cpp, 'plan.toml')]
    compared = 0
    for path, reason in mistakes_in(said, 'plan.toml'):
        if ONLY_IN_A_FILE.match(reason):
            continue
        compared += 1
        if 'is not a key' in reason:  # set says it of its path
            near = re.search(r'did you mean [\w]+\?', reason)
            if not any('there is no key' in r and (not near or near.group(0) in r) for r in reasons):
                return f'C++ does not refuse {path}: {from_cpp[:400]}', compared
        elif reason not in reasons:
            return f'from C++ {path} is not: {reason!r}, but: {from_cpp[:600]}', compared
    return None, compared


def main(program, by_set=None):
    program = os.path.abspath(program)
    by_set = by_set and os.path.abspath(by_set)
    bad = cpp = 0
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, 'plan.toml')
        for name, content, wanted in CASES + PLUMBING + CONTRADICTIONS:
            with open(path, 'wb') as file:
                file.write(content if isinstance(content, bytes) else content.encode())
            problem = complaint_about(program, ['plan.toml'], wanted, folder)
            if not problem and isinstance(content, str):
                problem = json_complaint(program, content, folder)
            if not problem and by_set and isinstance(content, str):
                problem, compared = cpp_complaint(program, by_set, content, folder)
                cpp += compared
            if problem:
                bad += 1
                print(f'{name}: {problem}')
        for case in ANSWERED:
            with open(path, 'w') as file:
                file.write(case[1])
            status, printed, said = run(program, ['plan.toml'], folder)
            if status != 0 or not printed or said:
                bad += 1
                print(f'{case[0]}: status {status}: {said[:300]}')
        for name, arguments, wanted in ARGUMENTS:
            problem = complaint_about(program, arguments, wanted, folder)
            if problem:
                bad += 1
                print(f'{name}: {problem}')
        for good in (GOOD, GOOD_PLUMBING, WHOLE):  # the twins: what is good must pass
            with open(path, 'w') as file:
                file.write(good)
            status, printed, said = run(program, [path], folder)
            if status != 0 or not printed or said:
                bad += 1
                print(f'the good plan: status {status}: {said}')
    count = len(CASES + PLUMBING + CONTRADICTIONS + ARGUMENTS + ANSWERED)
    print(f'{count} mistakes, {cpp} of them from C++ too, {bad} problems')
    return 1 if bad else 0


if __name__ == '__main__':
    sys.exit(main(*sys.argv[1:3]))
