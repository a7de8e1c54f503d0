# SPDX-License-Identifier: BSL-1.0
"""Formulas called by name: against the values of tests/reference/, with mistakes, and each of the list once.

    by_name.py ASK_FORMULA ROOT [ANSWERED]

With ANSWERED it writes the questions there that were answered, up to 12 of each formula: where the fuzzer starts.

The expected values come from the tables (printed values, other libraries, mathematics). What the inputs are called
there is mapped to the fields in tables.py; rows whose inputs mean something else (a ratio, a step) are left out.
"""
import csv
import json
import math
import random
import subprocess
import sys
from pathlib import Path

from tables import MAP

ASK, ROOT = sys.argv[1], Path(sys.argv[2])
LIST = json.loads(subprocess.run([ASK, '--list'], check=True, capture_output=True, text=True).stdout)
FORMULAS = {f['name']: f for f in LIST['formulas']}
passed = failed = 0
answered = {}  # formula -> questions that it answered


def ask(questions):
    """[(name, fields or text)] -> [answer]; one process for all."""
    lines = ''.join(f'{n}\t{f if isinstance(f, str) else json.dumps(f)}\n' for n, f in questions)
    done = subprocess.run([ASK], input=lines, capture_output=True, text=True)
    if done.returncode != 0:
        raise SystemExit(f'ask_formula ended with {done.returncode}: {done.stderr[:6000]}')
    answers = [json.loads(line) for line in done.stdout.splitlines()]
    if len(answers) != len(questions):
        raise SystemExit('a question without an answer')
    for (_, fields), answer in zip(questions, answers):
        if 'result' in answer and isinstance(fields, dict):
            answered.setdefault(answer['formula'], {}).setdefault(json.dumps(fields), fields)
    return answers


def hold(good, what):
    global passed, failed
    if good:
        passed += 1
    else:
        failed += 1
        print('FAILED:', what)


# ---- values from the tables -----------------------------------------------------------------------------------------

UNITS = {
    unit['unit']: (quantity, unit['factor'], unit.get('below', 0.0))
    for quantity, units in LIST['units'].items()
    for unit in units
}
OTHER_UNITS = {
    '': 1.0,
    '-': 1.0,
    '1': 1.0,
    '1 (PSS-78)': 1.0,
    '1 (S_P)': 1.0,
    'kg/kg': 1.0,
    'g/g': 1.0,
    'm3/kg_da': 1.0,
    'J/kg of vapour': 1.0,
    'g/m3': 1e-3,
    'kJ/kg_da': 1e3,
    'mg/mg': 1.0,
    '1/m': 1.0,
}


def number_in(result, where, row):
    """The number of a result in SI."""
    if where.startswith('='):
        where = where[1:].format(**row)
    if where.startswith('?'):  # the only force of a struct
        forces = [v for v in result.values() if isinstance(v, dict) and v.get('unit') == where[1:]]
        return forces[0].get('central', forces[0].get('value'))
    for step in where.split('.') if where else ():
        result = next((result[s] for s in step.split('?') if s in result), result)
    while isinstance(result, dict) and 'value' not in result and 'central' not in result and len(result) == 1:
        result = next(iter(result.values()))
    if isinstance(result, dict):
        return result['value'] if 'value' in result else result['central']
    return result


def reference_values():
    rows = {}
    for table in sorted((ROOT / 'tests' / 'reference').glob('*/*.csv')):
        if table.name == 'constants.csv':
            continue  # of names, not of calls
        with table.open(newline='') as lines:
            for row in csv.DictReader(lines):
                inputs = dict(
                    (k.strip(), v.strip())
                    for k, _, v in (p.partition('=') for p in row['inputs'].split(';') if p.strip())
                )
                rows.setdefault((row['function'].replace('tankwright::', ''), frozenset(inputs)), []).append(
                    (row, inputs)
                )
    questions, expected = [], []
    for function, keys, fields, where in MAP:
        found = rows.get((function, frozenset(keys.split())), [])
        hold(found, f'{function} with {keys}: the tables have no such row; take it out of MAP')
        for row, inputs in found:
            questions.append((function, fields(inputs)))
            expected.append((function, row, inputs, where))
    kinds = {}
    for (name, fields), (function, row, inputs, where), answer in zip(questions, expected, ask(questions)):
        if 'error' in answer and row['unit'] != 'extrapolated':
            again = (
                ask([(name, {**fields, 'extrapolate': True})])[0]
                if answer['error']['kind'] == 'out_of_range'
                else answer
            )
            if 'error' in again:
                hold(False, f'{row["id"]}: {name} {json.dumps(fields)}: {again["error"]["what"]}')
                continue
            answer = again
        unit = row['unit'].split(' (')[0]
        if unit == 'mL(STP)/L':
            continue  # an amount in another measure
        if unit in OTHER_UNITS:
            factor, below = OTHER_UNITS[unit], 0.0
        elif unit in ('C', 'degC'):
            factor, below = 1.0, 273.15
        elif unit == 'F':
            factor, below = 5 / 9, 459.67
        else:
            _, factor, below = UNITS[unit]
        try:
            got = number_in(answer['result'], where, inputs) / factor - below
        except (KeyError, TypeError, IndexError) as why:
            hold(False, f'{row["id"]}: {name}: no number at {where!r} in {json.dumps(answer["result"])[:200]}: {why!r}')
            continue
        if 'IPTS-68' in row['unit']:
            got *= 1.00024
        want, allowed = float(row['value']), row['tolerance']
        room = float(allowed[4:]) * abs(want) if allowed.startswith('rel') else float(allowed)
        hold(
            abs(got - want) <= room * (1 + 1e-9),
            f'{row["id"]}: {name} {json.dumps(fields)}: {got!r}, not {want!r} +- {room!r} {unit}',
        )
        kinds[row['kind']] = kinds.get(row['kind'], 0) + 1
    print(f'{sum(kinds.values())} values of the tables:', ', '.join(f'{n} {k}' for k, n in sorted(kinds.items())))
    hold(
        sum(n for k, n in kinds.items() if k != 'regression') >= 300,
        'fewer than 300 values with a source were compared',
    )


# ---- mistakes -------------------------------------------------------------------------------------------------------


def deep_question(levels):
    """Bacteria slowed down, slowed down, slowed down ..."""
    return '{"group": ' + '{"slowed": {"share": 1, "group": ' * levels + '1' + '}}' * levels + '}'


def constants():
    """What has a name in the library goes by it."""
    water = {'density': 998, 'viscosity': 1e-3}
    run = {'bore': '26 mm', 'length': '4 m'}
    named, number_given, usual = ask(
        [
            ('head_loss', {'run': {**run, **r}, 'flow': '1 L/s', 'water': water})
            for r in ({'roughness': 'smooth_plastic'}, {'roughness': '1.5 um'}, {})
        ]
    )
    hold(
        'result' in named and named == number_given == usual, f'a roughness by its name: {named} {number_given} {usual}'
    )
    panel = {'width': '1 m', 'height': '60 cm', 'thickness': '12 mm', 'edges': 'top_free'}
    glass, acrylic = ask(
        [
            ('uniform_on', {'panel': {**panel, 'material': m}, 'load': '1 kPa'})
            for m in ('annealed_glass', 'cast_acrylic')
        ]
    )
    hold(
        'result' in glass and 'result' in acrylic and glass != acrylic,
        f'a material by its name: {json.dumps(glass)[:300]} {json.dumps(acrylic)[:300]}',
    )
    # A result can be given back as it came.
    beam = ask(
        [
            (
                'bend',
                {
                    'span': '1 m',
                    'section': {'rectangular_section': {'breadth': '50 mm', 'depth': '100 mm'}},
                    'modulus': '10 GPa',
                    'supports': [{'at': 0}, {'at': '1 m'}],
                    'points': [{'at': '0.5 m', 'load': '100 N'}],
                },
            )
        ]
    )[0]
    hold('result' in beam, f'a beam: {json.dumps(beam)[:300]}')
    if 'result' in beam:
        middle = ask([('along', {'result': beam['result'], 'length': '0.5 m'})])[0]
        hold('result' in middle, f'a result given back: {json.dumps(middle)[:300]}')


def whole_jobs():
    """Questions with structs in structs, lists and formulas inside, as a front end puts them together."""
    curve = {
        'curve_from_points': {
            'label': 'pump',
            'points': [
                {'flow': 0, 'head': '4.6 m'},
                {'flow': '8000 L/h', 'head': '3.4 m'},
                {'flow': '15000 L/h', 'head': '0.6 m'},
            ],
        }
    }
    sea = {'seawater': {'practical_salinity': 35, 'temperature': '25 degC'}}
    run = {
        'label': 'return',
        'from': 'pump end',
        'to': 'display',
        'bore': '57 mm',
        'length': '3 m',
        'fittings': {'low': 3, 'central': 4.5, 'high': 6, 'reason': 'guessed'},
    }
    circuit = {
        'sources': [{'label': 'sump', 'level': '25 cm'}],
        'pumps': [{'label': 'pump', 'from': 'sump', 'to': 'pump end', 'curve': curve}],
        'runs': [run],
        'outlets': [{'label': 'display', 'kind': 'submerged', 'level': '1.7 m'}],
    }
    sump = {'rim': '450 mm', 'running_level': '250 mm', 'chambers': [{'label': 'sump', 'horizontal_area': '0.9 m2'}]}
    cut = {
        'display': {'surface': '2.4 m2', 'edge': {'full_width_edge': {'width': '80 cm', 'crest_height': '80 cm'}}},
        'sump': sump,
        'returns': [
            {
                'label': 'return',
                'flow': '8000 L/h',
                'outlet_below_edge': '20 mm',
                'pipe': {'bore': '57 mm', 'length': '3 m'},
            }
        ],
        'edge_above_floor': '1.7 m',
    }
    asked = [
        ('head_at', {'curve': curve, 'flow': '8000 L/h'}, 'head', 3.4),  # a point that was given
        (
            'polygon_area',
            {'corners': [{'x': 0, 'y': 0}, {'x': '2 m', 'y': 0}, {'x': '2 m', 'y': '1.5 m'}, {'x': 0, 'y': '1.5 m'}]},
            '',
            3.0,
        ),
        (
            'filled_volume',
            {
                'vessel': {
                    'side_by_side': {
                        'chambers': [
                            {'what': {'box': {'length': 1, 'width': 1, 'height': 1}}},
                            {'what': {'box': {'length': 2, 'width': 1, 'height': 1}}},
                        ]
                    }
                },
                'depth': 0.5,
            },
            '',
            1.5,
        ),
        ('sump_capacity', sump, '', 0.9 * 0.45),
        ('turnover_rate', {'net': '2 m3', 'loops': [{'flow': '8000 L/h'}, {'flow': '2 m3/h'}]}, '', 5 / 3600),
        ('operating_point', {'plan': circuit, 'water': sea}, 'delivered', None),
        ('flow_with_band', {'plan': circuit, 'water': sea, 'run': 'return'}, '', None),
        ('power_cut', cut, None, None),
        ('power_cut_failures', {'power_cut_input': cut, 'top_off': '5 L'}, None, None),
        ('highest_safe_running_level', cut, None, None),
        (
            'water_on',
            {
                'panel': {
                    'width': '1 m',
                    'height': '60 cm',
                    'thickness': '12 mm',
                    'edges': 'top_free',
                    'material': 'annealed_glass',
                },
                'water': {'level': '55 cm', 'water_density': '1025 kg/m3'},
            },
            None,
            None,
        ),
        (
            'humidity_balance',
            {
                'room': {
                    'volume': '60 m3',
                    'air_changes': '0.5 1/h',
                    'temperature': '24 degC',
                    'outdoor': {'temperature': '10 degC', 'humidity': '70 %'},
                },
                'water': {'temperature': '25 degC', 'salinity': 35},
                'surfaces': [{'area': '2 m2'}],
            },
            None,
            None,
        ),
    ]
    for (name, fields, where, want), answer in zip(asked, ask([(n, f) for n, f, _, _ in asked])):
        if 'result' not in answer:
            hold(False, f'{name}: {answer["error"]["what"]}')
        elif want is not None:
            hold(
                math.isclose(number_in(answer['result'], where, {}), want, rel_tol=1e-9),
                f'{name}: {json.dumps(answer["result"])[:300]}, not {want}',
            )
        else:
            hold(finite_or_said(answer['result']), f'{name}: {json.dumps(answer["result"])[:300]}')
    answers = dict(zip([n for n, _, _, _ in asked], ask([(n, f) for n, f, _, _ in asked])))
    hold(
        any('real water' in c for c in answers['power_cut'].get('cautions', [])),
        'the caution of a power cut is missing',
    )


def random_questions(good):
    """Questions with one thing in them made nonsense: an answer or an error that says something, never a crash."""
    dice = random.Random(20)
    junk = [
        None,
        True,
        [],
        {},
        '',
        ' ',
        'x',
        '1 L',
        '-1e308',
        '1e-320 m',
        0,
        -1,
        1e308,
        -1e-300,
        2**60,
        [1, 'a', {}],
        {'value': 1},
        {'value': 'x', 'unit': 'L'},
        {'low': 2, 'central': 1, 'high': 0},
        {'box': {}},
        {'seawater': {'practical_salinity': 35, 'temperature': 290}},
        'annealed_glass',
        '\u00b5',
        'a' * 3000,
    ]

    def spoil(value):
        if isinstance(value, dict) and value and dice.random() < 0.7:
            key = dice.choice(list(value))
            return {**value, key: spoil(value[key])}
        if isinstance(value, list) and value and dice.random() < 0.7:
            return [spoil(value[0])] + value[1:]
        return dice.choice(junk)

    questions = []
    for _ in range(6000):
        name = dice.choice(list(good))
        fields = spoil(good[name][0])
        if isinstance(fields, dict):
            questions.append((name, {**fields, 'extrapolate': True} if dice.random() < 0.3 else fields))
    for (name, fields), answer in zip(questions, ask(questions)):
        hold(
            'result' in answer or answer.get('error', {}).get('what') and answer['error']['kind'] != 'failure',
            f'{name} {json.dumps(fields)[:300]}: {json.dumps(answer)[:300]}',
        )
    print(f'{len(questions)} spoilt questions')


def mistakes():
    sea = {'practical_salinity': 35, 'temperature': '25 degC'}
    salt = {'volume': '2150 L', 'target': 35, 'temperature': '24 degC', 'mix_yield': '87 %'}
    tried = [
        # name, fields, kind, what else the error says
        ('densty', sea, 'unknown_formula', {'nearest': 'density'}),
        ('', sea, 'unknown_formula', {}),
        ('x' * 5000, sea, 'unknown_formula', {}),
        ('density', {**sea, 'temprature': 1}, 'unknown_field', {'nearest': 'temperature', 'field': 'temprature'}),
        ('density', {'practical_salinity': 35}, 'missing_field', {'field': 'temperature'}),
        ('density', {'practical_salinity': None, 'temperature': 300}, 'missing_field', {}),
        ('density', {**sea, 'temperature': '25 m'}, 'text_error', {'field': 'temperature'}),
        ('density', {**sea, 'temperature': '25 parsecs'}, 'text_error', {'field': 'temperature'}),
        ('density', {**sea, 'temperature': {'value': 25, 'unit': 'kg'}}, 'text_error', {'field': 'temperature'}),
        ('density', {**sea, 'temperature': {'value': 25, 'unit': 7}}, 'wrong_type', {'field': 'temperature'}),
        (
            'density',
            {**sea, 'temperature': {'value': 25, 'units': 'degC'}},
            'unknown_field',
            {'field': 'temperature.units', 'nearest': 'unit'},
        ),
        ('density', {**sea, 'temperature': True}, 'wrong_type', {}),
        ('density', {**sea, 'temperature': [25]}, 'wrong_type', {}),
        ('density', {**sea, 'temperature': 'nan'}, 'text_error', {}),
        ('density', '{"practical_salinity": NaN, "temperature": 300}', 'not_json', {}),
        ('density', '{"practical_salinity": 1e999, "temperature": 300}', 'not_json', {}),
        ('density', '', 'not_json', {}),
        ('density', '\x01\x02', 'not_json', {}),
        ('density', '[' * 5000, 'not_json', {}),
        ('density', '{"a": ' * 5000, 'not_json', {}),
        ('density', '[1, 2, 3]', 'not_numbers', {}),
        ('box', '[]', 'invalid_input', {}),
        ('density', '7', 'wrong_type', {}),
        (
            'density',
            {**sea, 'temperature': '100 degC'},
            'out_of_range',
            {'argument': 'temperature', 'unit': 'degC', 'source': 'Feistel 2008'},
        ),
        ('density', {**sea, 'practical_salinity': -1}, 'invalid_input', {'argument': 'practical salinity'}),
        ('density', {**sea, 'extrapolate': 'yes'}, 'wrong_type', {'field': 'extrapolate'}),
        ('salt_for_new_water', {**salt, 'mix_yield': 0}, 'invalid_input', {'argument': 'mix yield'}),
        ('salt_for_new_water', {**salt, 'mix_yield': 'water'}, 'text_error', {'field': 'mix_yield'}),
        ('salt_for_new_water', {**salt, 'volume': '2150 gal'}, 'text_error', {'field': 'volume'}),
        ('free_ammonia_fraction', {**sea, 'ph_reading': 8.1}, 'wrong_type', {'field': 'ph_reading'}),
        ('free_ammonia_fraction', {**sea, 'ph_reading': {'ph_totl': 8.1}}, 'unknown_field', {'nearest': 'ph_total'}),
        (
            'alkalinity_to_add',
            {'volume': '1 m3', 'from': 2.5, 'target': {'milliequivalents_per_litre': 3}},
            'wrong_type',
            {'field': 'from'},
        ),
        ('fitting_loss', {'kind': 'elbow_9', 'bore': '26 mm'}, 'unknown_word', {'nearest': 'elbow_90'}),
        ('left_after_changes', {'part': 0.1, 'times': 2.5}, 'wrong_type', {'field': 'times'}),
        ('left_after_changes', {'part': 0.1, 'times': 1e300}, 'wrong_type', {'field': 'times'}),
        ('total_water', {'vessels': {'gross': 1}}, 'wrong_type', {'field': 'vessels'}),
        ('filled_volume', {'vessel': {'bos': {}}, 'depth': 1}, None, {}),
        ('filled_volume', {'vessel': 'box', 'depth': 1}, None, {}),
        ('filled_volume', {'vessel': {'box': {'length': 1}}, 'depth': 1}, 'missing_field', {}),
        ('filled_volume', {'vessel': {'density': sea}, 'depth': 1}, None, {}),
        (
            'head_loss',
            {
                'run': {'bore': '26 mm', 'length': '4 m', 'roughness': 'smoth_plastic'},
                'flow': '1 L/s',
                'water': {'seawater': sea},
            },
            'text_error',
            {'field': 'run.roughness', 'nearest': 'smooth_plastic'},
        ),
        (
            'uniform_on',
            {
                'panel': {
                    'width': 1,
                    'height': 1,
                    'thickness': 0.012,
                    'material': 'anealed_glass',
                    'edges': 'all_supported',
                },
                'load': 100,
            },
            'unknown_name',
            {'field': 'panel.material', 'nearest': 'annealed_glass'},
        ),
        ('net_growth', deep_question(2000), 'wrong_type', {}),
        ('net_growth', deep_question(50000), None, {}),
        ('dens\xffity', sea, 'unknown_formula', {}),
        ('density', {'t\x00\ud7ff': 1}, 'unknown_field', {}),
        (
            'blend',
            {'waters': [{'volume': 1, 'salinity': 35, 'temperature': 'x'}]},
            'text_error',
            {'field': 'waters[0].temperature'},
        ),
    ]
    for (name, fields, kind, more), answer in zip(tried, ask([(n, f) for n, f, _, _ in tried])):
        error = answer.get('error', {})
        good = (
            error.get('what')
            and (kind is None or error.get('kind') == kind)
            and all(error.get(k) == v for k, v in more.items())
        )
        hold(good, f'{name[:40]} {str(fields)[:80]}: expected {kind} {more}, got {json.dumps(answer)[:300]}')
    # A range can be left when that is said, what is impossible cannot.
    beyond, impossible = ask(
        [
            ('freezing_point', {'practical_salinity': 43, 'extrapolate': True}),
            ('freezing_point', {'practical_salinity': -1, 'extrapolate': True}),
        ]
    )
    hold('result' in beyond, 'extrapolate is not heard')
    hold(impossible.get('error', {}).get('kind') == 'invalid_input', 'extrapolate lets what is impossible pass')
    # The same thing said in different ways.
    same = ask(
        [
            (n, f)
            for n in (
                'salt_for_new_water',
                'water.salt_for_new_water',
                'water::salt_for_new_water',
                'tankwright::water::salt_for_new_water',
            )
            for f in (
                salt,
                {'volume': 2.15, 'target': '35', 'temperature': 297.15, 'mix_yield': {'value': 87, 'unit': '%'}},
                {
                    'volume': {'value': 2150, 'unit': 'L'},
                    'target': 35.0,
                    'temperature': {'value': 24, 'unit': 'degC'},
                    'mix_yield': 0.87,
                },
            )
        ]
    )
    hold(
        len({json.dumps(a) for a in same}) == 1 and 'result' in same[0],
        'the same question said differently gives another answer',
    )
    hold(
        same[0].get('cautions') and 'Add salt to water' in same[0]['cautions'][0],
        'the caution of a salt mix is missing',
    )


# ---- each of the list -----------------------------------------------------------------------------------------------

TYPICAL = {
    'length': 0.3,
    'area': 1.0,
    'volume': 0.5,
    'flow_rate': 1e-3,
    'temperature': 298.15,
    'temperature_difference': 1.0,
    'mass': 5.0,
    'mass_density': 1025.0,
    'duration': 3600.0,
    'practical_salinity': 35.0,
    'absolute_salinity': 35.0,
    'proportion': 0.5,
    'porosity': 0.4,
    'relative_humidity': 0.5,
    'pressure': 1e4,
    'gauge_pressure': 1e4,
    'absolute_pressure': 101325.0,
    'velocity': 1.0,
    'angle': 0.5,
    'power': 100.0,
    'energy': 100.0,
    'force': 100.0,
    'mass_flow': 1e-6,
    'rate': 1e-4,
    'electrical_conductivity': 5.0,
    'heat_capacity': 1e6,
    'number': 1.0,
    'dynamic_viscosity': 1e-3,
    'thermal_transmittance': 2.0,
    'line_load': 100.0,
    'second_moment_of_area': 1e-6,
    'temperature_coefficient': 0.02,
    'heat_loss_coefficient': 10.0,
}
SI_OF = {(q, u['unit']): u for q, units in LIST['units'].items() for u in units}


def mentions(field, wanted):
    """Whether a value of a type is part of a field."""
    if field.get('type') == wanted:
        return True
    inside = [field['of']] if 'of' in field else field.get('options', [])
    inside += LIST['types'][field['type']].get('fields', []) if field['kind'] == 'fields' else []
    return any(mentions(f, wanted) for f in inside)


def typical(field, depth=0):
    """A value for a field: its default, or one inside its limits."""
    kind = field['kind']
    if kind == 'quantity':
        value = TYPICAL.get(field['quantity'], 1.0)
        limits = field.get('limits', {})
        unit = SI_OF.get((field['quantity'], limits.get('unit', '')), {'factor': 1.0})
        low, high = -math.inf, math.inf
        for range_of in ('possible', 'published'):
            low = max(low, limits.get(range_of, {}).get('low', -math.inf))
            high = min(high, limits.get(range_of, {}).get('high', math.inf))
        number_there = value / unit['factor'] - unit.get('below', 0.0)
        if not low < number_there < high:
            number_there = (
                (low + high) / 2
                if math.isfinite(low + high)
                else low * 1.5 + 1e-3
                if math.isfinite(low)
                else high * 0.5
            )
            value = (number_there + unit.get('below', 0.0)) * unit['factor']
        return value
    if kind == 'integer':
        low = field.get('limits', {}).get('possible', {}).get('low', 0)
        return int(max(low, 1)) + 2
    if kind in ('optional', 'estimate'):
        return typical({**field['of'], 'limits': field.get('limits', {})}, depth)
    if kind == 'list':
        return [typical(field['of'], depth + 1)]
    if kind == 'flag':
        return False
    if kind == 'text':
        return 'A'
    if kind == 'one_of':
        first = field['options'][-1]
        return {first['type'].split('.')[-1]: typical(first, depth + 1)}
    if kind == 'caution':
        return None
    described = LIST['types'][field['type']]
    if kind == 'word':
        return described['words'][0]['word']
    if described.get('constants'):
        return described['constants'][0]
    if kind == 'fields':
        return {f['name']: typical(f, depth + 1) for f in described['fields'] if f['required']}
    only_made = not described.get('as') and not described.get('ways') and not described.get('parts')
    for name, formula in FORMULAS.items() if only_made else ():
        if formula['result'].get('type') == field['type'] and not any(
            mentions(f, field['type']) for f in formula['fields']
        ):
            return {name: {f['name']: typical(f, depth + 1) for f in formula['fields'] if f['required']}}
    if 'parts' in described:
        return {p['name']: typical(p, depth + 1) for p in described['parts']}
    if 'ways' in described:
        return {described['ways'][0]['name']: typical(described['ways'][0], depth + 1)}
    return typical({**described['as'], 'limits': field.get('limits', {})}, depth)


def finite_or_said(result):
    """Every number is one, or the answer says that it is none."""
    if isinstance(result, dict):
        if result.get('value', 0) is None:
            return 'not_finite' in result
        return all(finite_or_said(v) for v in result.values())
    return all(finite_or_said(v) for v in result) if isinstance(result, list) else True


def every_formula():
    questions = [
        (name, {f['name']: typical(f) for f in formula['fields'] if f['required']})
        for name, formula in FORMULAS.items()
    ]
    answers = ask(questions)
    good, refused = 0, {}
    for (name, fields), answer in zip(questions, answers):
        if 'result' in answer:
            good += 1
            hold(answer['formula'] == name, f'{name} was answered by {answer["formula"]}')
            hold(
                finite_or_said(answer['result']),
                f'{name} {json.dumps(fields)}: a number is missing: {json.dumps(answer["result"])[:300]}',
            )
            continue
        kind = answer['error']['kind']
        refused[kind] = refused.get(kind, 0) + 1
        hold(
            kind in ('invalid_input', 'out_of_range', 'no_convergence'),
            f'{name} {json.dumps(fields)[:200]}: {answer["error"]["what"]}',
        )
    print(f'{len(questions)} formulas called with typical values: {good} answered, refused: {refused}')
    hold(good >= 0.75 * len(questions), 'typical values must be inside what most formulas take')
    # A default said aloud changes nothing.
    base = {name: (fields, answer) for (name, fields), answer in zip(questions, answers) if 'result' in answer}
    said = [
        (name, {**fields, f['name']: f['default']}, f)
        for name, (fields, _) in base.items()
        for f in FORMULAS[name]['fields']
        if 'default' in f and f['default'] is not None
    ]
    for (name, fields, field), answer in zip(said, ask([(n, f) for n, f, _ in said])):
        hold(
            close(answer.get('result'), base[name][1]['result']),
            f'{name}: {field["name"]} given as its default {field["default"]!r} changes the answer: {json.dumps(answer)[:200]}',
        )
    print(f'{len(said)} defaults said aloud')
    outside(base)
    by_numbers(base)
    random_questions(base)


def close(a, b):
    """Equal but for the last digits: a default in SI may be one rounding away from the one in C++."""
    if isinstance(a, dict) and isinstance(b, dict):
        return a.keys() == b.keys() and all(close(a[k], b[k]) for k in a)
    if isinstance(a, list) and isinstance(b, list):
        return len(a) == len(b) and all(close(x, y) for x, y in zip(a, b))
    if isinstance(a, float) and isinstance(b, (int, float)):
        return math.isclose(a, b, rel_tol=1e-12, abs_tol=1e-300)
    return a == b


def outside(base):
    """The limits that the list gives are those that the library keeps: a value beyond them is refused."""
    tried = []
    for name, (fields, _) in base.items():
        for field in FORMULAS[name]['fields']:
            limits = field.get('limits', {})
            if field['kind'] != 'quantity' or not limits:
                continue
            unit = SI_OF.get((field['quantity'], limits['unit']), {'factor': 1.0})
            for which in ('possible', 'published'):
                for end, sign in (('low', -1), ('high', 1)):
                    if end in limits.get(which, {}) and abs(limits[which][end]) < 1e300:
                        beyond = limits[which][end] + sign * max(1e-6 * abs(limits[which][end]), 1e-6)
                        tried.append(
                            (
                                name,
                                {**fields, field['name']: (beyond + unit.get('below', 0.0)) * unit['factor']},
                                field,
                                which,
                                end,
                            )
                        )
    for (name, fields, field, which, end), answer in zip(tried, ask([(n, f) for n, f, _, _, _ in tried])):
        hold(
            'error' in answer,
            f'{name}: {field["name"]} beyond the {end} end of what is {which} ({field["limits"]}) is taken',
        )
        # Where the error names limits, they are these (to the nanokelvin that the ends of temperatures are wider).
        said = answer.get('error', {}).get('limits', {}).get(end)
        if (
            said is not None
            and answer['error']['unit'] == field['limits']['unit']
            and answer['error']['value'] is not None
        ):
            ends = [field['limits'][w][end] for w in ('possible', 'published') if end in field['limits'].get(w, {})]
            hold(
                any(math.isclose(said, e, rel_tol=1e-9, abs_tol=2e-9) for e in ends),
                f'{name}: {field["name"]}: the list says {field["limits"]}, the error {answer["error"]["what"]}',
            )
    print(f'{len(tried)} values beyond limits tried')


def flat_in(field, value):
    """The plain numbers of a field, in the order of the list; None for what keeps its default."""
    kind = field['kind']
    if kind == 'estimate':
        return flat_in(field['of'], value) * 3
    if kind == 'fields':
        parts = LIST['types'][field['type']]['fields']
        return [n for p in parts if p['kind'] != 'caution' for n in flat_in(p, (value or {}).get(p['name']))]
    if value is None:
        return [None]
    if kind == 'word':
        return [[w['word'] for w in LIST['types'][field['type']]['words']].index(value)]
    if isinstance(value, dict):  # one of the ways of a value: the first
        value = next(iter(value.values()))
    return [float(value)]


def flat_out(field, result):
    kind = field['kind']
    if kind == 'caution':
        return []
    if kind == 'fields':
        return [n for p in LIST['types'][field['type']]['fields'] for n in flat_out(p, result[p['name']])]
    if kind == 'word':
        return [[w['word'] for w in LIST['types'][field['type']]['words']].index(result)]
    if kind == 'estimate':
        if isinstance(result['low'], dict):
            return [flat_out(field['of'], result[e])[0] for e in ('low', 'central', 'high')]
        return [result['low'], result['central'], result['high']]
    if isinstance(result, dict):
        result = result['value'] if 'value' in result else next(iter(result.values()))['value']
    return [float(result) if result is not None else None]


def by_numbers(base):
    """Called with plain numbers, a formula gives the same numbers."""
    tried = []
    for name, (fields, answer) in base.items():
        formula = FORMULAS[name]
        if 'numbers' not in formula or any(isinstance(v, str) and v not in str(LIST['types']) for v in fields.values()):
            continue
        if any(isinstance(v, str) for f in formula['fields'] for v in [fields.get(f['name'])] if f['kind'] != 'word'):
            continue  # a constant by its name
        flat = [n for f in formula['fields'] for n in flat_in(f, fields.get(f['name']))]
        tried.append((name, flat, formula, answer))
    same = 0
    for (name, flat, formula, answer), numbers in zip(tried, ask([(n, json.dumps(f)) for n, f, _, _ in tried])):
        hold(len(flat) == formula['numbers']['in'], f'{name}: {len(flat)} numbers, not {formula["numbers"]["in"]}')
        want = flat_out(formula['result'], answer['result'])
        good = isinstance(numbers, list) and numbers == want and len(want) == formula['numbers']['out']
        same += good
        hold(good, f'{name} {flat}: {numbers}, not {want}')
    print(f'{same} formulas called by plain numbers')
    hold(same >= 150, 'too few formulas were called by plain numbers')


def the_list():
    names = [f['name'] for f in LIST['formulas']]
    hold(len(set(names)) == len(names), 'a name stands twice in the list')
    hold(len(names) >= 0.9 * (len(names) + len(LIST['not_here'])), 'fewer than 90 % of the public functions are there')
    for formula in LIST['formulas']:
        hold(
            formula['sentence'] and formula['source'] and formula['header'],
            f'{formula["name"]}: no sentence, source or header',
        )
        for field in formula['fields']:
            hold(field['kind'] != 'quantity' or 'unit' in field, f'{formula["name"]}: {field["name"]} has no unit')
    all_fields = [(f['name'], x) for f in LIST['formulas'] for x in f['fields']]
    all_fields += [(name, x) for name, of in LIST['types'].items() for x in of.get('fields', [])]
    for where, field in all_fields:
        if 'limits' not in field:
            continue
        inner = field
        while 'of' in inner:
            inner = inner['of']
        hold(inner['kind'] in ('quantity', 'integer', 'value'), f'{where}: {field["name"]} cannot have limits')
        unit, quantity = field['limits']['unit'], inner.get('quantity', 'number')
        known = quantity == 'number' or unit == '' or (quantity, unit) in SI_OF
        hold(known or unit in ('N m/m', 'N m2/m'), f'{where}: the limits of {field["name"]} are in {unit}')
    for entry in LIST['not_here']:
        hold(entry['reason'], f'{entry["function"]}: no reason')


def answered_at_all():
    """What typical values do not make together (a sump with its chambers, a circuit) is asked in questions.json."""
    questions = json.loads((ROOT / 'tests' / 'formulas' / 'questions.json').read_text())
    for (name, fields), answer in zip(questions, ask(questions)):
        hold('result' in answer, f'questions.json: {name} {json.dumps(fields)[:200]}: {json.dumps(answer)[:300]}')
    for name in FORMULAS:
        hold(name in answered, f'{name}: no question of these tests is answered; add one to questions.json')
    print(f'{len(answered)} of {len(FORMULAS)} formulas answered at least once')
    if len(sys.argv) > 3:
        lines = [f'{name}\t{text}\n' for name, texts in sorted(answered.items()) for text in sorted(texts, key=len)[:12]]
        Path(sys.argv[3]).write_text(''.join(lines))


the_list()
reference_values()
mistakes()
constants()
whole_jobs()
every_formula()
answered_at_all()
print(f'{passed} passed, {failed} failed')
sys.exit(1 if failed or not passed else 0)
