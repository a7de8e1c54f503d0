# SPDX-License-Identifier: BSL-1.0
"""Plans and arguments that cannot be used: each must end with status 2, say one line that names the place and what is
accepted, and print nothing. Usage: bad_plans.py PROGRAM"""
import os
import re
import subprocess
import sys
import tempfile

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
    ('unknown key', GOOD + 'new_watter = "1 L"\n', r'plan\.toml:5: water\.new_watter: is not a key of \[water\]; known here: .*new_water'),
    ('unknown table', GOOD + '[wine]\n', r'plan\.toml:5: wine: is not a key'),
    ('missing key', '[water]\nnew_water = "10 L"\n', r'plan\.toml:1: \[water\] needs temperature, for instance temperature = "24 °C"'),
    ('duplicate key', GOOD + 'new_water = "1 L"\n', r'plan\.toml:5: .*(redefine|duplicate|already)'),
    ('wrong unit', '[water]\ntemperature = "24 L"\n', r'plan\.toml:2: water\.temperature: .*24 L.*volume.*expected'),
    ('no unit', '[water]\ntemperature = "24 °C"\nnew_water = "2150"\n', r'plan\.toml:3: water\.new_water: .*2150'),
    ('bare gallon', '[water]\ntemperature = "77 F"\nnew_water = "300 gal"\n', r'US gal.*imp'),
    ('number for text', 'title = 5\n', r'plan\.toml:1: title: must be text in quotation marks'),
    ('text for flag', GOOD + 'probe = "yes"\n', r'probe: must be true or false'),
    ('table for value', GOOD + '[water.now]\nhydrometer = {}\n', r'water\.now\.hydrometer: must be a quantity'),
    ('value for table', GOOD + 'now = 3\n', r'water\.now: must be a table: \[water\.now\]'),
    ('wrong word', 'units = "metric"\n' + GOOD, r'units: "metric" is not one of "si", "us"'),
    ('nan', '[water]\ntemperature = nan\n', r'plan\.toml:2: water\.temperature: '),
    ('infinite', GOOD + 'target = inf\n', r'plan\.toml:5: water\.target: '),
    ('negative salinity', GOOD + 'target = -1\n', r'plan\.toml:5: water\.target: practical salinity = -1 is not possible; expected at least 0'),
    ('salinity past the scale', GOOD + 'target = 43\n', r'plan\.toml:5: water\.target: practical salinity = 43 is outside the published range 0 to 42'),
    ('ice', '[water]\ntemperature = "-5 °C"\nnew_water = "10 L"\n', r'plan\.toml:2: water\.temperature: temperature = -5 degC is below the freezing point'),
    ('too hot', '[water]\ntemperature = "95 °C"\nnew_water = "10 L"\n', r'plan\.toml:2: water\.temperature: temperature = 95 degC is outside'),
    ('below absolute zero', '[water]\ntemperature = "-300 °C"\n', r'plan\.toml:2: .*absolute zero|-300'),
    ('zero volume', '[water]\ntemperature = "24 °C"\nnew_water = "0 L"\n', r'plan\.toml:3: water\.new_water: volume = 0 L is not possible; expected more than 0'),
    ('yield zero', GOOD + 'mix_yield = "0 %"\n', r'plan\.toml:5: water\.mix_yield: mix yield = 0 is not possible'),
    ('yield above one', GOOD + 'mix_yield = "120 %"\n', r'plan\.toml:5: water\.mix_yield: '),
    ('two readings', GOOD + '[water.now]\nhydrometer = 1.02\nconductivity = "50 mS/cm"\n', r'needs one of .*, not several'),
    ('no reading', GOOD + '[water.now]\n', r'\[water\.now\] needs one of'),
    ('hydrometer without scale', GOOD + '[water.now]\nhydrometer = 1.02\ntemperature = "20 C"\n', r'needs scale, the two temperatures'),
    ('half a scale', GOOD + '[water.hydrometer]\nscale = "60F"\n', r'water\.hydrometer\.scale: must be two temperatures'),
    ('pH without scale', GOOD + 'ph = 8.1\n', r'water\.ph: needs its scale'),
    ('ammonia without pH', GOOD + 'ammonia = "0.1 mg/L"\n', r'gives ammonia but no ph'),
    ('room without size', '[room]\n', r'plan\.toml:1: \[room\] needs volume, or length, width and height'),
    ('room of no volume', '[room]\nvolume = "0 m3"\n', r'plan\.toml:2: room\.volume: room volume = 0 m3 is not possible'),
    ('room without height', '[room]\nlength = "6 m"\nwidth = "4 m"\n', r'plan\.toml:1: \[room\] needs height'),
    ('winter without humidity', ROOM + '[room.winter]\nindoors = "22 C"\noutdoors = "3 C"\n', r'plan\.toml:3: \[room\.winter\] needs outdoor_humidity'),
    ('a sauna', ROOM + '[room.winter]\nindoors = "60 C"\n', r'plan\.toml:4: room\.winter\.indoors: temperature indoors = 60 degC is outside .* 6 to 35'),
    ('unknown cover', ROOM + '[room.display]\ncover = "glass"\n', r'plan\.toml:4: room\.display\.cover: "glass" is not one of "lid", "foam"'),
    ('surface without area', ROOM + '[[room.surface]]\nlabel = "weir"\n', r'plan\.toml:3: \[room\.surface\] needs area'),
    ('more than covered', ROOM + '[room.display]\ncovered = "120 %"\n', r'plan\.toml:4: room\.display\.covered: '),
    ('dehumidifier in watts', ROOM + '[room.dehumidifier]\ncapacity = "300 W"\n', r'plan\.toml:4: room\.dehumidifier\.capacity: .*300 W.*expected'),
    ('dehumidifier too dry', ROOM + '[room.dehumidifier]\ncapacity = "20 L/d"\nset_point = "30 %"\n', r'plan\.toml:5: room\.dehumidifier\.set_point: relative humidity = 0\.3 is outside'),
    ('window that conducts nothing', ROOM + '[room.window]\ntransmittance = "0 W/(m2 K)"\n', r'plan\.toml:4: room\.window\.transmittance: transmittance = 0'),
    ('pane thinner than the air', ROOM + WINTER + '[room.window]\ntransmittance = "12 W/(m2 K)"\n', r'plan\.toml:1: \[room\] transmittance = 12 W/\(m2 K\) leaves nothing for the wall'),
    ('heater of no power', ROOM + '[room.heating]\nheater = "0 W"\n', r'plan\.toml:4: room\.heating\.heater: heater = 0 W is not possible'),
    ('margin below one', ROOM + '[room.heating]\nmargin = 0.8\n', r'plan\.toml:4: room\.heating\.margin: margin = 0\.8 is not possible'),
    ('tank wall of cheese', ROOM + '[[room.heating.wall]]\narea = "2 m2"\nmaterial = "cheese"\n', r'room\.heating\.wall\.material: "cheese" is not one of "glass"'),
    ('outage for ever', ROOM + '[room.heating.outage]\nlasts = "0 h"\n', r'plan\.toml:4: room\.heating\.outage\.lasts: time = 0 s is not possible'),
    ('half a cooling room', ROOM + '[room.heating.outage]\nlasts = "8 h"\nlowest = "20 C"\nroom_settles_at = "8 C"\n', r'plan\.toml:3: \[room\.heating\.outage\] needs room_time_constant'),
    ('salinities crossed', ROOM + '[room.top_off]\nreservoir = "40 L"\nlowest_salinity = 36\nhighest_salinity = 34\n', r'plan\.toml:6: room\.top_off\.highest_salinity: is not above lowest_salinity'),
    ('levels crossed', ROOM + '[room.top_off]\nreservoir = "40 L"\n[room.top_off.chamber]\nsurface = "0.3 m2"\nrunning_level = "10 cm"\nlowest_level = "20 cm"\n', r'plan\.toml:8: room\.top_off\.chamber\.lowest_level: is above running_level'),
    ('misspelt room key', ROOM + 'air_change = "1 1/h"\n', r'plan\.toml:3: room\.air_change: is not a key of \[room\]; known here: .*air_changes'),
    ('price with a currency', ROOM + 'price_per_kwh = "0.3 EUR"\n', r'plan\.toml:3: room\.price_per_kwh: '),
    ('food without protein', GOOD + '[[life.food]]\namount = "20 g/d"\n', r'plan\.toml:5: \[life\.food\] needs protein, for instance protein = "87 %"'),
    ('food as one table', GOOD + '[life.food]\namount = "20 g/d"\n', r'plan\.toml:5: life\.food: must be written as \[\[life\.food\]\], once for each'),
    ('food of no kind', GOOD + '[[life.food]]\namount = "20 g/d"\nprotein = "45 %"\n', r'plan\.toml:5: \[life\.food\] needs kind = "dry" .* or "wet"'),
    ('food per day forgotten', GOOD + '[[life.food]]\namount = "20 g"\nprotein = "45 %"\nkind = "dry"\n', r'plan\.toml:6: life\.food\.amount: .*20 g.*mass'),
    ('protein above all of it', GOOD + '[[life.food]]\namount = "20 g/d"\nprotein = "145 %"\nkind = "dry"\n', r'plan\.toml:7: life\.food\.protein: '),
    ('more rock moved than there was', LIFE + '[life.moved_rock]\nmoved = "60 kg"\nof = "52 kg"\nnitrogen = "0.5 g/d"\n', r'plan\.toml:11: life\.moved_rock\.moved: rock moved = 60 kg is not possible; expected 0 to 52 kg'),
    ('rock that carried nothing', LIFE + '[life.moved_rock]\nmoved = "40 kg"\nof = "52 kg"\n', r'plan\.toml:10: \[life\.moved_rock\] needs \[\[life\.moved_rock\.food\]\]'),
    ('a surface without a size', LIFE + '[[life.surface]]\nname = "sand"\n', r'plan\.toml:10: \[life\.surface\] needs one of area .*, volume .*, bed'),
    ('sand of solid stone', LIFE + '[[life.surface]]\nbed = "2 m²"\nbreathing_depth = "4 mm"\ngrain = "1 mm"\nporosity = 1\n', r'plan\.toml:10: \[life\.surface\] porosity = 1 is not possible; expected at least 0 and below 1'),
    ('sand below zero', LIFE + '[[life.surface]]\nbed = "-2 m²"\nbreathing_depth = "4 mm"\ngrain = "1 mm"\n', r'plan\.toml:11: life\.surface\.bed: area = -2 m2 is not possible'),
    ('culture two and a half times', LIFE + '[[life.start_up.culture]]\noxidises = "0.02 g/d"\ntimes = 2.5\n', r'plan\.toml:12: life\.start_up\.culture\.times: must be a whole number'),
    ('weeks of no length', LIFE + '[life.start_up]\nhorizon = "0 d"\n', r'plan\.toml:11: life\.start_up\.horizon: horizon = 0 d is not possible; expected more than 0 d'),
    ('alkalinity without a unit', LIFE + '[life.alkalinity]\nnow = 8\nlowest = 7\n', r'plan\.toml:10: \[life\.alkalinity\] needs unit = "dKH", "meq/L" or "mg/L CaCO3"'),
    ('alkalinity already too low', LIFE + '[life.alkalinity]\nunit = "dKH"\nnow = 6\nlowest = 7\n', r'plan\.toml:13: life\.alkalinity\.lowest: is above what the water has now'),
    ('animals without a mass', LIFE + '[[life.animals]]\ncount = 3\n', r'plan\.toml:10: \[life\.animals\] needs each, for instance each = "25 kg"'),
    ('fewer than no animals', ANIMALS.replace('count = 10', 'count = -3'), r'plan\.toml:12: life\.animals\.count: count = -3 is not possible; expected at least 0'),
    ('animals of no mass', ANIMALS.replace('each = "20 g"', 'each = "0 g"'), r'plan\.toml:11: life\.animals\.each: mass of one animal = 0 kg is not possible'),
    ('length without speed', ANIMALS + 'adult = "20 cm"\n', r'plan\.toml:10: \[life\.animals\] needs speed'),
    ('battery without strength', ANIMALS + '[life.power_cut]\nhelp_within = "8 h"\n[life.power_cut.battery_air]\nruns = "5 h"\n', r'plan\.toml:18: \[life\.power_cut\.battery_air\] needs kla'),
    ('treatment that removes nothing', LIFE + '[[life.circulation.treatment]]\nflow = "900 L/h"\nremoves = "0 %"\n', r'plan\.toml:12: life\.circulation\.treatment\.removes: share removed in a pass = 0 is not possible'),
    ('bag on another pH scale', LIFE.replace('[life]', '[life]\nph = 8.1\nph_scale = "nbs"') + '[life.arrivals]\nammonia = "1 mg/L"\nph = 7.2\nph_scale = "total"\n', r'plan\.toml:15: life\.arrivals\.ph_scale: is not that of the tank'),
    ('bag without ammonia', LIFE + '[life.arrivals]\nph = 7.2\nph_scale = "nbs"\n', r'plan\.toml:10: \[life\.arrivals\] needs the ammonia of the bag'),
    ('filter in water too hot', LIFE.replace('24 °C', '34 °C') + '[[life.surface]]\narea = "5 m²"\n', r'plan\.toml:3: water\.temperature: temperature = 34 degC is outside the published range 10 to 30 degC .*, as \[life\] needs it'),
    ('misspelt key of life', LIFE + '[life.rooms]\nrun = "2 m"\n', r'plan\.toml:10: life\.rooms: is not a key of \[life\]; known here: .*room'),
    ('display of no height', VESSEL.replace('0.85 m', '0 m'), r'plan\.toml:4: vessel\.height: height = 0 m is not possible; expected more than 0 m'),
    ('water above the rim', VESSEL.replace('0.80 m', '0.90 m'), r'plan\.toml:5: vessel\.water_level: water level = 0\.9 m is not possible; expected .*0\.85 m'),
    ('outside without the walls', VESSEL + 'measured = "outside"\n', r'plan\.toml:1: \[vessel\] needs wall_thickness'),
    ('walls as thick as the display', VESSEL + 'measured = "outside"\nwall_thickness = "0.6 m"\nfloor_thickness = "20 mm"\n', r'plan\.toml:1: \[vessel\] outside dimension = 1 m leaves nothing between panels'),
    ('stage above the rim', VESSEL + 'stages = ["0.4 m", "0.9 m"]\n', r'plan\.toml:6: vessel\.stages: water level = 0\.9 m is not possible'),
    ('sand two ways', VESSEL + '[[vessel.sand]]\ndepth = "0.1 m"\nmass = "100 kg"\n', r'plan\.toml:6: \[vessel\.sand\] needs one of depth, shallow_end \(with deep_end and run\) or mass'),
    ('slope upside down', VESSEL + '[[vessel.sand]]\nshallow_end = "0.2 m"\ndeep_end = "0.1 m"\nrun = "1 m"\n', r'plan\.toml:6: \[vessel\.sand\] deep end = 0\.1 m is not possible; expected at least 0\.2 m'),
    ('rock larger than the tank', VESSEL + '[[vessel.rock]]\ndry_mass = "9000 kg"\n', r'plan\.toml:7: vessel\.rock\.dry_mass: takes the room of \d+ L; the display holds 1920 L up to the water level'),
    ('rock and rock larger than the tank', VESSEL + 2 * '[[vessel.rock]]\ndry_mass = "2500 kg"\n', r'plan\.toml:1: \[vessel\] volume of all items = .* m3 is not possible; expected 0 to 1\.92 m3'),
    ('rock heavier under water', VESSEL + '[[vessel.rock]]\ndry_mass = "5 kg"\nsubmerged_mass = "6 kg"\n', r'plan\.toml:6: \[vessel\.rock\] rock: submerged mass = 6 kg is not below the dry mass, 5 kg'),
    ('panel above the rim', PANEL + 'lower_edge = "0.30 m"\n', r'plan\.toml:9: vessel\.panel\.height: height = 0\.65 m is not possible; expected .*0\.55'),
    ('panel of no thickness', PANEL.replace('18 mm', '0 mm'), r'plan\.toml:6: \[vessel\.panel\] front: thickness = 0 m is not possible'),
    ('panel without edges', PANEL.replace('edges', '# edges'), r'plan\.toml:6: \[vessel\.panel\] needs edges = "all supported"'),
    ('panel of wood', PANEL.replace('annealed glass', 'oak'), r'plan\.toml:12: vessel\.panel\.material: "oak" is not one of "annealed glass", "cast acrylic"'),
    ('panel long as a strip', PANEL.replace('0.65 m', '0.10 m'), r'plan\.toml:6: \[vessel\.panel\] front: width over height = 22 is not possible'),
    ('feet larger than the stand', VESSEL + '[vessel.floor]\ntank_and_stand = "400 kg"\nfootprint = "3 m²"\nbearing = "4 m²"\n', r'plan\.toml:6: \[vessel\.floor\] display: bearing area = 4 m2 is not possible; expected .*3 m2'),
    ('floor two ways', VESSEL + '[vessel.floor]\ntank_and_stand = "400 kg"\nfootprint = "3 m²"\nroom = "living"\nbuilt_for = "10 kPa"\n', r'plan\.toml:9: vessel\.floor\.room: says what a code asks; give it or built_for, not both'),
    ('half a brace', VESSEL + '[vessel.brace]\ncount = 1.5\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmaterial = "annealed glass"\n', r'plan\.toml:7: vessel\.brace\.count: must be a whole number'),
    ('light beside the brace', VESSEL + '[vessel.brace]\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmaterial = "annealed glass"\n[[vessel.brace.load]]\nlabel = "light"\nmass = "12 kg"\nat = "1.3 m"\n', r'plan\.toml:6: \[vessel\.brace\] brace: light: place = 1\.3 m is not possible; expected 0 to 1 m'),
    ('a million braces', VESSEL + '[vessel.brace]\ncount = 1e300\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmaterial = "annealed glass"\n', r'plan\.toml:7: vessel\.brace\.count: number of braces = 1e\+?300 is not possible; expected 1 to 20'),
    ('fixing that holds nothing', VESSEL + '[vessel.brace]\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmaterial = "annealed glass"\njoint = "-1 kN"\n', r'plan\.toml:13: vessel\.brace\.joint: what the fixing holds = -1000 N is not possible; expected more than 0 N'),
    ('bar of no strength', VESSEL + '[vessel.brace]\nrail = "2.4 m"\nrail_height = "0.85 m"\nspan = "1 m"\nbreadth = "45 mm"\ndepth = "90 mm"\nmodulus = "10 GPa"\nallowable = "0 MPa"\ndensity = "600 kg/m3"\n', r'plan\.toml:13: vessel\.brace\.allowable: allowable stress = 0 Pa is not possible'),
    ('lid of no span', VESSEL + '[[vessel.lid]]\nspan = "0 m"\nthickness = "8 mm"\nmaterial = "cast acrylic"\n', r'plan\.toml:6: \[vessel\.lid\] lid 1: span = 0 m is not possible'),
    ('rock behind the panel', VESSEL + '[vessel.view]\nnearest_rock = "-5 cm"\n', r'plan\.toml:6: \[vessel\.view\] distance in the water = -0\.05 m is not possible'),
    ('invalid UTF-8', b'title = "\xff\xfe"\n', r'plan\.toml:1: '),
    ('binary', bytes(range(256)), r'plan\.toml:\d+: '),
    ('ten megabytes', '#' + 'x' * 10_000_000, r'10000001 bytes; a plan has at most 1000000'),
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
plan = "0.3 m²"
[[plumbing.sump.chamber]]
label = "pump"
plan = "0.4 m²"
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
    ('bore of zero', plumbing('"34 mm"', '"0 mm"'), r'plan\.toml:14: plumbing\.return\.bore: bore = 0 m is not possible; expected more than 0 m'),
    ('negative length', plumbing('"2 m"', '"-2 m"'), r'plan\.toml:15: plumbing\.return\.length: length = -2 m is not possible'),
    ('negative loss', plumbing('loss = 4', 'loss = -4'), r'plan\.toml:16: plumbing\.return\.loss: .*-4 is not possible'),
    ('more than all of the loss uncertain', plumbing('loss = 4', 'loss = 4\nloss_uncertainty = "130 %"'), r'plan\.toml:17: plumbing\.return\.loss_uncertainty: "130 %"'),
    ('rising pump curve', plumbing('"3 m", "1 m"', '"3 m", "3.5 m"'), r'plan\.toml:8: \[plumbing\.pump\] P1 point 3 has a head of 3\.5 m, not less than the point before it'),
    ('curve that starts late', plumbing('"0 L/h", ', '"500 L/h", '), r'plan\.toml:8: \[plumbing\.pump\] P1 begins at a flow .*must be at zero flow'),
    ('one point', plumbing('["0 L/h", "5000 L/h", "9000 L/h"]\nheads = ["4 m", "3 m", "1 m"]', '["0 L/h"]\nheads = ["4 m"]'), r'plan\.toml:8: \[plumbing\.pump\] needs flows and heads, two lists of the same length with two points or more'),
    ('lists of different length', plumbing(', "1 m"]', ']'), r'plan\.toml:8: \[plumbing\.pump\] needs flows and heads, two lists of the same length'),
    ('head in a flow', plumbing('"5000 L/h"', '"5000 L"'), r'plan\.toml:10: plumbing\.pump\.flows: .*5000 L'),
    ('pump that stands', plumbing('label = "P1"', 'label = "P1"\nspeed = 0'), r'plan\.toml:10: plumbing\.pump\.speed: speed = 0 is not possible'),
    ('baffle above the rim', plumbing('"300 mm"', '"500 mm"'), r'plan\.toml:24: \[plumbing\.sump\] baffle between drains and pump: crest = 0\.5 m stands higher than the rim of the sump, 0\.45 m'),
    ('running level above the rim', plumbing('"200 mm"', '"470 mm"'), r'plan\.toml:24: \[plumbing\.sump\] pump: running level = 0\.47 m stands above the rim of the sump, 0\.45 m'),
    ('running level above the baffle', plumbing('"200 mm"', '"310 mm"'), r'plan\.toml:24: \[plumbing\.sump\] pump: running level = 0\.31 m stands above the crest'),
    ('negative running level', plumbing('"200 mm"', '"-1 mm"'), r'plan\.toml:26: plumbing\.sump\.running_level: running level = -0\.001 m is not possible'),
    ('chamber without area', plumbing('"0.4 m²"', '"0 m²"'), r'plan\.toml:24: \[plumbing\.sump\] pump: .*0 m2 is not possible'),
    ('gear that fills its chamber', plumbing('"0.4 m²"', '"0.4 m²"\ngear = "0.5 m²"'), r'plan\.toml:24: \[plumbing\.sump\] pump: free plan area = -0\.1 m2 is not possible'),
    ('sump without chambers', re.sub(r'(?s)\[\[plumbing\.sump\.chamber.*(?=\[plumbing\.pump_inlet)', '', GOOD_PLUMBING), r'plan\.toml:24: \[plumbing\.sump\] needs its chambers: \[\[plumbing\.sump\.chamber\]\]'),
    ('no baffle', plumbing('[[plumbing.sump.baffle]]\ncrest = "300 mm"\nwidth = "500 mm"\n', ''), r'plan\.toml:24: \[plumbing\.sump\] sump: number of baffles = 0 does not go with 2 chambers'),
    ('no sump', re.sub(r'(?s)\[plumbing\.sump\].*(?=\[plumbing\.pump_inlet)', '', GOOD_PLUMBING), r'plan\.toml:1: \[plumbing\] needs \[plumbing\.sump\]'),
    ('no overflow', re.sub(r'(?s)\[plumbing\.overflow\].*(?=\[plumbing\.pump\])', '', GOOD_PLUMBING), r'plan\.toml:1: \[plumbing\] needs \[plumbing\.overflow\]'),
    ('no lift', plumbing('lift = "1.4 m"\n', ''), r'plan\.toml:1: \[plumbing\] needs lift, for instance lift = '),
    ('return without label', plumbing('label = "left"\n', ''), r'plan\.toml:12: \[plumbing\.return\] needs a label, such as label = "left return"'),
    ('two returns of one label', plumbing('[[plumbing.drain]]', '[[plumbing.return]]\nlabel = "left"\nbore = "34 mm"\nlength = "1 m"\nbelow_edge = "10 mm"\n[[plumbing.drain]]'), r'plan\.toml:18: \[plumbing\.return\] left: is the label of two returns'),
    ('unknown key of a return', plumbing('below_edge = "20 mm"', 'below_edge = "20 mm"\nheight = "1 m"'), r'plan\.toml:18: plumbing\.return\.height: is not a key of \[plumbing\.return\]; known here: .*below_edge'),
    ('unknown kind', plumbing('loss = 4', 'kind = "spray"'), r'plan\.toml:16: plumbing\.return\.kind: "spray" is not one of "submerged", "open"'),
    ('size that is not made', plumbing('nominal = 2', 'nominal = 1.75'), r'plan\.toml:18: \[plumbing\.drain\] nominal size = 1\.75 in is not made; sizes are 0\.5 .* 4'),
    ('size without schedule', plumbing('schedule = "40"\n', ''), r'plan\.toml:18: \[plumbing\.drain\] gives a nominal size; needs schedule'),
    ('bore and size', plumbing('nominal = 2', 'nominal = 2\nbore = "50 mm"'), r'plan\.toml:18: \[plumbing\.drain\] needs bore = "34 mm", or nominal'),
    ('drains into nothing', plumbing('drains_into = 1', 'drains_into = 0'), r'plan\.toml:3: plumbing\.drains_into: 0 is not a chamber of the sump; expected a whole number from 1 to 2'),
    ('drains beyond the chambers', plumbing('drains_into = 1', 'drains_into = 3'), r'plan\.toml:3: plumbing\.drains_into: 3 is not a chamber of the sump'),
    ('drains between the chambers', plumbing('drains_into = 1', 'drains_into = 1.5'), r'plan\.toml:3: plumbing\.drains_into: 1\.5 is not a chamber of the sump'),
    ('overflow without surface', plumbing('"2.0 m²"', '"0 m²"'), r'plan\.toml:5: plumbing\.overflow\.surface: surface = 0 m2 is not possible'),
    ('overflow without width', plumbing('"0.8 m"', '"0 m"'), r'plan\.toml:4: \[plumbing\.overflow\] width = 0 m is not possible'),
    ('half a gap', plumbing('width = "0.8 m"', 'gaps = 2.5\ngap_width = "10 mm"\ntooth_width = "5 mm"\ngap_height = "30 mm"'), r'plan\.toml:6: plumbing\.overflow\.gaps: 2\.5 is not a number of gaps'),
    ('negative reserve', plumbing('drains_into = 1', 'reserve = "-5 mm"'), r'plan\.toml:3: plumbing\.reserve: reserve = -0\.005 m is not possible'),
    ('all of the area uncertain', plumbing('drains_into = 1', 'area_uncertainty = "100 %"'), r'plan\.toml:3: plumbing\.area_uncertainty: area_uncertainty = 1 is not possible'),
    ('negative surge', plumbing('drains_into = 1', 'surge = "-5 mm"'), r'plan\.toml:3: plumbing\.surge: surge = -0\.005 m is not possible'),
    ('inlet under the floor', plumbing('above_floor = "20 mm"', 'above_floor = "-20 mm"'), r'plan\.toml:\d+: plumbing\.pump_inlet\.above_floor: above_floor of the inlet = -0\.02 m is not possible'),
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
plan = "0.06 m²"
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
plan = "0.3 m²"
[[plumbing.sump.chamber]]
plan = "0.4 m²"
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
[room.display]
area = "2.4 m²"
[room.sump]
area = "0.6 m²"
[room.heating.outage]
lasts = "12 h"
lowest = "21 °C"
[room.top_off]
reservoir = "60 L"
lowest_salinity = 33
highest_salinity = 36.5
free_volume = "75 L"
[room.top_off.chamber]
surface = "0.4 m²"
running_level = "200 mm"
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
    ('sand above the rim', {'[[vessel.sand]]': '[[vessel.sand]]\n@depth = "0.9 m"\narea = "0.2 m²"', 'shallow_end = "0.08 m"': '', 'deep_end = "0.20 m"': '', 'run = "1.00 m"': ''}, r'vessel\.sand\.depth: 0\.9 m of sand is above the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('sand deeper than the water', {'deep_end = "0.20 m"': '@deep_end = "2.0 m"'}, r'vessel\.sand\.deep_end: takes the room of \d+ L; the display holds 1920 L up to the water level'),
    ('slope longer than the display', {'run = "1.00 m"': '@run = "10 m"'}, r'vessel\.sand\.run: 10 m is longer than the display inside, 2\.6 m \(vessel\.length, line 9\)'),
    ('sand beyond the floor', {'run = "1.00 m"': 'run = "1.00 m"\n@area = "3 m²"'}, r'vessel\.sand\.area: 3 m² is more than the floor of the display, 2\.4 m²'),
    ('rock that lifts the water over the rim', {'level_after = "0.52 m"': '@level_after = "0.92 m"'}, r'vessel\.rock\.level_after: level = 0\.92 m is not possible; expected 0 to 0\.85 m'),
    ('equipment larger than the tank', {'volume = "3 L"': '@volume = "3 m3"'}, r'vessel\.equipment\.volume: takes the room of 3000 L; the display holds 1920 L'),
    ('panel wider than its wall', {'width = "2.20 m"': '@width = "2.50 m"'}, r'vessel\.panel\.width: 2\.5 m is wider than the longest wall inside \(give the clear width\), 2\.4 m \(vessel\.length, line 9\)'),
    ('panel that begins above the rim', {'lower_edge = "0.20 m"': '@lower_edge = "0.90 m"'}, r'vessel\.panel\.lower_edge: lower edge = 0\.9 m is not possible; expected at least 0 and below 0\.85 m'),
    ('rail longer than the wall', {'rail = "2.4 m"': '@rail = "24 m"'}, r'vessel\.brace\.rail: 24 m is longer than the longest wall, 2\.4 m \(vessel\.length, line 9\)'),
    ('rail off the wall', {'rail_height = "0.85 m"': '@rail_height = "8.5 m"'}, r'vessel\.brace\.rail_height: 8\.5 m is off the walls, above the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('brace longer than the display', {'span = "1 m"': '@span = "10 m"'}, r'vessel\.brace\.span: 10 m is longer than the display, 2\.6 m'),
    ('braces that do not fit side by side', {'count = 2': 'count = 20', 'breadth = "45 mm"': '@breadth = "450 mm"'}, r'vessel\.brace\.breadth: 9 m of braces side by side is more than their rail, 2\.4 m \(vessel\.brace\.rail, line \d+\)'),
    ('lid longer than the display', {'span = "0.48 m"': '@span = "4.8 m"'}, r'vessel\.lid\.span: 4\.8 m is longer than the display, 2\.6 m'),
    ('rock beyond the back wall', {'nearest_rock = "0.32 m"': '@nearest_rock = "3.2 m"'}, r'vessel\.view\.nearest_rock: 3\.2 m is farther than the display reaches, 2\.6 m'),
    ('a fill that falls', {'stages = ["0.4 m", "0.8 m"]': '@stages = ["0.8 m", "0.4 m"]'}, r'vessel\.stages: 0\.4 m does not stand above the stage before it, 0\.8 m; a fill rises'),
    ('panel that is a block', {'[[vessel.panel]]': '@[[vessel.panel]]', 'thickness = "19 mm"': 'thickness = "19 ft"'}, r'\[vessel\.panel\] panel 1: thickness = 5\.7912 m is not less than the shorter side, 0\.65 m: that is a block, not a panel'),
    ('lid that is a block', {'[[vessel.lid]]': '@[[vessel.lid]]', 'thickness = "8 mm"': 'thickness = "8 ft"'}, r'\[vessel\.lid\] lid 1: thickness = 2\.4384 m is not less than the span, 0\.48 m: that is a block, not a lid'),
    ('brace deeper than long', {'depth = "90 mm"': '@depth = "90 in"'}, r'vessel\.brace\.depth: 2\.286 m upright is more than the brace is long, 1 m \(vessel\.brace\.span, line \d+\)'),
    ('pane as thick as the display', {'nearest_rock = "0.32 m"': 'nearest_rock = "0.32 m"\n@thickness = "18 ft"'}, r'vessel\.view\.thickness: 5\.4864 m of pane is more than the display, 2\.6 m'),
    # hold test
    ('hold test of a larger surface', {'[hold]': '[hold]\n@surface = "24 m²"', 'surface = "2.4 m²"\ncapacity = "1920 L"': 'capacity = "1920 L"'}, r'hold\.surface: 24 m² is more than the display has, 2\.4 m² \(vessel\.length, line 9\)'),
    ('hold test above the rim', {'depth = "0.80 m"': '@depth = "0.90 m"'}, r'hold\.depth: 0\.9 m is above the rim of the display, 0\.85 m'),
    ('hold test of more water', {'capacity = "1920 L"': '@capacity = "19200 L"'}, r'hold\.capacity: 19200 L is more than the display holds up to its rim, 2040 L'),
    ('a reading in another unit', {'levels = ["800 mm", "798 mm", "797 mm", "795 mm"]': '@levels = ["800 mm", "798 mm", "797 mm", "795 cm"]'}, r'hold\.levels: largest change of the level = 7\.153 m is more than the depth of the water, 0\.8 m'),
    ('a gauge coarser than the water is deep', {'resolution = "1 mm"': '@resolution = "1 m"'}, r'hold\.resolution: resolution = 1 m is not possible; expected more than 0 and at most 0\.8 m'),
    ('a pan in another unit', {'levels = ["800 mm", "798 mm", "797 mm", "795 mm"]': 'levels = ["800 mm", "798 mm", "797 mm", "795 mm"]\n@pan = ["60 mm", "59 mm", "58 mm", "570 cm"]'}, r'hold\.pan: largest change in the pan = 5\.642 m is more than the depth of the water, 0\.8 m'),
    # plumbing
    ('edge below the water of the sump', {LIFT: '@lift = "14.5 cm"'}, r'plumbing\.lift: 0\.145 m puts the overflow edge no higher than the water in the sump, 0\.2 m \(plumbing\.sump\.running_level, line \d+\)'),
    ('reserve higher than the sump', {'reserve = "20 mm"': '@reserve = "20 in"'}, r'plumbing\.reserve: 0\.508 m to keep free is more than the sump is high, 0\.45 m \(plumbing\.sump\.rim, line \d+\)'),
    ('outlet under the floor', {'below_edge = "20 mm"': '@below_edge = "2 m"'}, r'plumbing\.return\.below_edge: 2 m below the overflow edge is under the floor of the display; the edge is at 0\.8 m \(plumbing\.overflow\.crest_height, line \d+\)'),
    ('siphon break under the floor', {'siphon_break = "6 mm"': '@siphon_break = "6 m"'}, r'plumbing\.return\.siphon_break: 6 m below the overflow edge is under the floor of the display'),
    ('open outlet under water', {'below_edge = "20 mm"': '@kind = "open"\nbelow_edge = "20 mm"'}, r'plumbing\.return\.kind: "open" ends in the air, but its opening is 0\.02 m below the overflow edge, under water \(plumbing\.return\.below_edge, line \d+\)'),
    ('submerged outlet in the air', {'below_edge = "20 mm"': '@below_edge = "-200 mm"'}, r'plumbing\.return\.below_edge: 0\.2 m above the overflow edge is out of the water \(kind = "open", where it is\); edge to rim is 0\.05 m'),
    ('drain longer than the way down', {'drop = "0.9 m"': '@drop = "9 m"'}, r'plumbing\.drain\.drop: 9 m ends below the floor of the sump; from the overflow edge it is 1\.45 m \(plumbing\.lift, line \d+\)'),
    ('more over the drain than below it', {'inlet_head = "60 mm"': '@inlet_head = "60 in"'}, r'plumbing\.drain\.inlet_head: 1\.524 m is more than the whole drop of the drain, 0\.9 m'),
    ('box that falls through the sump', {'falls_by = "120 mm"': '@falls_by = "120 in"'}, r'plumbing\.box\.falls_by: 3\.048 m ends below the floor of the sump'),
    ('pump inlet above the water', {'above_floor = "20 mm"': '@above_floor = "300 mm"'}, r'plumbing\.pump_inlet\.above_floor: 0\.3 m is not under water; the sump runs at 0\.2 m \(plumbing\.sump\.running_level, line \d+\)'),
    ('doubt larger than the sump', {'reserve = "20 mm"': '@level_uncertainty = "4 m"'}, r'plumbing\.level_uncertainty: 4 m of doubt is more than the sump is high, 0\.45 m'),
    ('return wider than the display', {'bore = "34 mm"': '@bore = "34 ft"'}, r'plumbing\.return\.bore: 84\.3\d* m² of opening is more than the whole display, 2\.4 m²'),
    ('drain wider than the display', {'bore = "50 mm"': '@bore = "5 m"'}, r'plumbing\.drain\.bore: 19\.635 m² of opening is more than the whole display'),
    ('inlet wider than the display', {'bore = "60 mm"': '@bore = "60 m"'}, r'plumbing\.pump_inlet\.bore: 2827\.43 m² of opening is more than the whole display'),
    # plumbing and display
    ('edge above the rim', {EDGE: '@crest_height = "0.90 m"'}, r'plumbing\.overflow\.crest_height: 0\.9 m is above the rim of the display, 0\.85 m \(vessel\.height, line 11\)'),
    ('edge above the water', {EDGE: '@crest_height = "0.82 m"'}, r'plumbing\.overflow\.crest_height: 0\.82 m is above the water, which runs over it; that is at 0\.8 m \(vessel\.water_level, line 12\)'),
    ('more from edge to rim than there is', {'edge_to_rim = "50 mm"': '@edge_to_rim = "50 cm"'}, r'plumbing\.edge_to_rim: 0\.5 m is more than the display has above its overflow edge, 0\.05 m \(vessel\.height, line 11\)'),
    ('edge wider than all walls', {'width = "0.8 m"\ncrest_height = "0.80 m"': '@width = "8 m"\ncrest_height = "0.80 m"'}, r'plumbing\.overflow\.width: 8 m is wider than all walls of the display, 6\.8 m'),
    ('edge thicker than the display', {EDGE: EDGE + '\n@thickness = "12 m"'}, r'plumbing\.overflow\.thickness: 12 m is more than the display, 2\.6 m'),
    ('comb longer than all walls', {'width = "0.8 m"\ncrest_height = "0.80 m"': '@gaps = 500\ngap_width = "20 mm"\ntooth_width = "5 mm"\ngap_height = "30 mm"\ncrest_height = "0.80 m"'}, r'plumbing\.overflow\.gaps: 12\.495 m of comb is more than all walls of the display, 6\.8 m'),
    ('overflow of a larger surface', {'[plumbing.overflow]\nsurface = "2.4 m²"': '[plumbing.overflow]\n@surface = "24 m²"'}, r'plumbing\.overflow\.surface: 24 m² is more than the display has at its overflow edge, 2\.4 m²'),
    ('sump larger than the stand it is in', {'footprint = "3 m²"': 'footprint = "0.5 m²"', '[[plumbing.sump.chamber]]\nplan = "0.3 m²"': '@[[plumbing.sump.chamber]]\nplan = "0.3 m²"'}, r'plumbing\.sump\.chamber: 0\.7 m² of chambers is more than the footprint it stands in \(sump_below = false, where it stands elsewhere\), 0\.5 m² \(vessel\.floor\.footprint, line \d+\)'),
    # water
    ('yield two ways', {'match_within = 0.5': '@mix_yield = "90 %"'}, r'water\.mix_yield: is measured by \[water\.trial_batch\]; give one of them, not both'),
    ('two targets', {'match_within = 0.5': '@target = 34\n[water.older_tank]\npractical_salinity = 35'}, r'water\.target: is for water that matches no other tank; give it or \[water\.older_tank\], not both'),
    ('ammonia two ways', {'match_within = 0.5': '@ammonia = "0.1 mg/L"\nammonium = "0.1 mg/L"\nph = 8.1\nph_scale = "nbs"'}, r'water\.ammonia: is given two ways; give one of'),
    ('match nearer than equal', {'match_within = 0.5': '@match_within = -0.5'}, r'water\.match_within: difference in salinity = -0\.5 is not possible'),
    ('match that takes anything', {'match_within = 0.5': '@match_within = 500'}, r'water\.match_within: difference in salinity = 500 is not possible; expected 0 to 42'),
    ('trial that may have been fresh', {'reached = 34.8': 'reached = 34.8\n@reading_error = 50'}, r'water\.trial_batch\.reading_error: error of the reading = 50 is not possible; expected at least 0 and below 34\.8'),
    ('mix that is hardly salt', {'[water.trial_batch]': '@[water.trial_batch]', 'mix = "420 g"': 'mix = "420 kg"'}, r'water\.trial_batch: mix yield = 0\.034\d* is too low'),
    ('air of the Moon', {'match_within = 0.5': '@air_pressure = "1008 Pa"'}, r'water\.air_pressure: air pressure = 1008 Pa is outside the published range'),
    ('no temperature for life', {'temperature = "24 °C"': '@temperature = "34 °C"'}, r'water\.temperature: temperature = 34 degC is outside the published range 10 to 30 degC .*, as \[life\] needs it'),
    # room
    ('room of a bucket', {'length = "6 m"\nwidth = "4 m"\nheight = "2.6 m"': '@volume = "2 m3"'}, r'room\.volume: 2000 L does not hold its tanks, 2355 L'),
    ('display longer than the room', {'[vessel]\nlength = "2.40 m"': '[vessel]\n@length = "24 m"'}, r'vessel\.length: 24\.02\d* m of display, corner to corner, is more than the room, 7\.21\d* m \(room\.length, line \d+\)'),
    ('display larger than the floor', {'[vessel]\nlength = "2.40 m"': '[vessel]\n@length = "2.40 m"', '[room]\nlength = "6 m"\nwidth = "4 m"': '[room]\nlength = "20 m"\nwidth = "0.1 m"'}, r'vessel\.length: 2\.4 m² of display is more than the floor of the room, 2 m²'),
    ('display higher than the room', {'height = "0.85 m"': '@height = "0.85 m"', 'height = "2.6 m"': 'height = "0.8 m"'}, r'vessel\.height: 0\.85 m is higher than the room, 0\.8 m \(room\.height, line \d+\)'),
    ('stand larger than the room', {'footprint = "3 m²"': '@footprint = "300 m²"'}, r'vessel\.floor\.footprint: 300 m² is more than the floor of the room, 24 m²'),
    ('sump higher than the room', {'rim = "450 mm"': '@rim = "450 cm"'}, r'plumbing\.sump\.rim: 4\.5 m is higher than the room, 2\.6 m'),
    ('baffle wider than the room', {'width = "500 mm"': '@width = "500 in"'}, r'plumbing\.sump\.baffle\.width: 12\.7 m is wider than the room, 7\.21\d* m'),
    ('tank wall larger than the tank', {'[room.heating.outage]': '[[room.heating.wall]]\n@area = "59 m²"\ntransmittance = "3 W/(m2 K)"\n[room.heating.outage]'}, r'room\.heating\.wall\.area: 59 m² is more than all of the display, 10\.58 m²'),
    ('tank wall thicker than the tank', {'[room.heating.outage]': '[[room.heating.wall]]\narea = "2 m²"\nmaterial = "plywood"\n@thickness = "27 m"\n[room.heating.outage]'}, r'room\.heating\.wall\.thickness: 27 m of wall is more than the display, 2\.6 m'),
    ('coldest night warmer than the mean', {'coldest_night = "-8 °C"': '@coldest_night = "8 °C"'}, r'room\.winter\.coldest_night: is warmer than outdoors, the mean of the season'),
    ('more surface than the display has', {'[room.display]\narea = "2.4 m²"': '[room.display]\n@area = "24 m²"'}, r'room\.display\.area: 24 m² is more than the display has, 2\.4 m²'),
    ('more surface than the sump has', {'area = "0.6 m²"': '@area = "6 m²"'}, r'room\.sump\.area: 6 m² is more than the sump has, 0\.7 m²'),
    ('animals too warm already', {'lowest = "21 °C"': '@lowest = "26 °C"'}, r'room\.heating\.outage\.lowest: 26 °C is not below the water as it runs, 24 °C \(water\.temperature, line 2\)'),
    ('animals for saltier water', {'lowest_salinity = 33': '@lowest_salinity = 36'}, r'room\.top_off\.lowest_salinity: 36 is above what the water has, 35'),
    ('animals for fresher water', {'lowest_salinity = 33': 'lowest_salinity = 3', 'highest_salinity = 36.5': '@highest_salinity = 12'}, r'room\.top_off\.highest_salinity: 12 is below what the water has, 35'),
    ('more room for water than there is', {'free_volume = "75 L"': '@free_volume = "75 m3"'}, r'room\.top_off\.free_volume: 75000 L to run into is more than display and sump hold, 2355 L'),
    ('chamber larger than the sump', {'surface = "0.4 m²"': '@surface = "4 m²"'}, r'room\.top_off\.chamber\.surface: 4 m² is more than all chambers of the sump, 0\.7 m²'),
    ('chamber that runs over', {'[room.top_off.chamber]\nsurface = "0.4 m²"\nrunning_level = "200 mm"': '[room.top_off.chamber]\nsurface = "0.4 m²"\n@running_level = "500 mm"'}, r'room\.top_off\.chamber\.running_level: 0\.5 m is above the rim of the sump, 0\.45 m'),
    ('lowest level below the inlet', {'lowest_level = "150 mm"': '@lowest_level = "15 mm"'}, r'room\.top_off\.chamber\.lowest_level: 0\.015 m leaves the inlet of the pump in the air, which reaches up to 0\.02 m \(plumbing\.pump_inlet\.above_floor, line \d+\)'),
    # life
    ('more bed than floor', {'bed = "2.2 m²"': '@bed = "22 m²"'}, r'life\.surface\.bed: 22 m² of sand is more than the floor of display and sump, 3\.1 m²'),
    ('sand that breathes above the rim', {'breathing_depth = "4 mm"': '@breathing_depth = "4 m"'}, r'life\.surface\.breathing_depth: 4 m of sand is above the rim of the display, 0\.85 m'),
    ('more media than water', {'volume = "25 L"': '@volume = "25 m3"'}, r'life\.surface\.volume: 25000 L of media is more than display and sump hold, 2355 L'),
    ('rock after the forecast', {'rock_on = "1 d"': '@rock_on = "90 d"'}, r'life\.start_up\.rock_on: 90 d is after the end of the forecast, 56 d \(life\.start_up\.horizon, line \d+\)'),
    ('animals out of order', {'on = "28 d"': '@on = "2 d"'}, r'life\.start_up\.animals\.on: 2 d is not after the step before it, 7 d \(life\.start_up\.animals\.on, line \d+\); put the steps in order'),
    ('animals after the forecast', {'on = "28 d"': '@on = "280 d"'}, r'life\.start_up\.animals\.on: 280 d is after the end of the forecast, 56 d'),
    ('more than all animals', {'share = "100 %"': '@share = "110 %"'}, r'life\.start_up\.animals\.share: "110 %", character 1: not between 0 and 100 %'),
    ('water change after the forecast', {'first = "7 d"': '@first = "70 d"'}, r'life\.start_up\.water_change\.first: 70 d is after the end of the forecast, 56 d'),
    ('run longer than the display', {'run = "2.0 m"': '@run = "20 m"'}, r'life\.room\.run: 20 m is longer than the display inside, 2\.6 m'),
    ('run and width exchanged', {'run = "2.0 m"\nwidth = "0.8 m"': 'run = "0.7 m"\n@width = "2.0 m"'}, r'life\.room\.width: is more than run, which is the longest straight one'),
]]

ARGUMENTS = [
    ('no such file', ['no/such/plan.toml'], r'no/such/plan\.toml: no such file'),
    ('a folder', ['.'], r'is a folder, not a plan'),
    ('unknown option', ['--jason'], r'unknown option --jason; --help lists them'),
    ('two plans', ['a.toml', 'b.toml'], r'one plan at a time: a\.toml and b\.toml'),
    ('units without a word', ['--units'], r'--units needs a word: si or us'),
    ('unknown units', ['--units', 'metric'], r'--units metric: must be si or us'),
]


def complaint_about(program, arguments, wanted, folder):
    run = subprocess.run([program] + arguments, cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE, timeout=60)
    said = run.stderr.decode('utf-8', 'replace')
    if run.returncode != 2:
        return f'status {run.returncode}, expected 2; said: {said[:300]}'
    if run.stdout:
        return 'printed something'
    if said.count('\n') != 1:
        return f'said {said.count(chr(10))} lines: {said[:500]}'
    if len(said) > 1200:
        return f'said {len(said)} characters in one line'
    if not re.search(wanted, said):
        return f'did not say /{wanted}/: {said}'
    return None


def main(program):
    program = os.path.abspath(program)
    bad = 0
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, 'plan.toml')
        for name, content, wanted in CASES + PLUMBING + CONTRADICTIONS:
            with open(path, 'wb') as file:
                file.write(content if isinstance(content, bytes) else content.encode())
            problem = complaint_about(program, ['plan.toml'], wanted, folder)
            if problem:
                bad += 1
                print(f'{name}: {problem}')
        for name, arguments, wanted in ARGUMENTS:
            problem = complaint_about(program, arguments, wanted, folder)
            if problem:
                bad += 1
                print(f'{name}: {problem}')
        for good in (GOOD, GOOD_PLUMBING, WHOLE):  # the twins: what is good must pass
            with open(path, 'w') as file:
                file.write(good)
            run = subprocess.run([program, path], stdout=subprocess.PIPE, stderr=subprocess.PIPE)
            if run.returncode != 0 or not run.stdout or run.stderr:
                bad += 1
                print(f'the good plan: status {run.returncode}: {run.stderr.decode()}')
    count = len(CASES + PLUMBING + CONTRADICTIONS + ARGUMENTS)
    print(f'{count} mistakes, {bad} problems')
    return 1 if bad else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1]))
