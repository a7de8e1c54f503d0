# SPDX-License-Identifier: BSL-1.0
"""How the inputs of the tables in tests/reference/ become the fields of formulas."""
import re


def number(text):
    return float(re.match(r'[-+.\d eE]+', text.strip()).group(0))


def with_unit(text, unit):
    """A number of a table with its unit, or the one that goes without saying there."""
    text = re.sub(r'\s*\(.*\)', '', text.strip())
    return f'{float(text)!r} {unit}'.strip() if re.fullmatch(r'[-+.\deE]+', text) else re.sub(r'^\.', '0.', text)


def temperature(row):
    for key in ('t90', 't', 'tw', 'T'):
        if key in row:
            return with_unit(row[key], 'K' if key == 'T' else 'degC')
    return f'{number(row["t68"]) / 1.00024!r} degC'  # IPTS-68


def salinity(row):
    return number(row['S_P'] if 'S_P' in row else row['S'])


def scale(row):
    ends = {}
    for end in ('sample', 'reference'):
        ends[end] = f'{number(row[end + "_C"])!r} degC' if end + '_C' in row else f'{number(row[end + "_F"])!r} degF'
    return ends


def water_and_air(row):
    return {'temperature': temperature(row), 'humidity': with_unit(row['RH'], '%'),
            **({'pressure': with_unit(row['P'], 'Pa')} if 'P' in row else {})}


def at_surface(row):
    return {'practical_salinity': salinity(row), 'temperature': temperature(row)}


def absolute(row):
    return {'absolute_salinity': with_unit(row['S_A' if 'S_A' in row else 'S'], 'g/kg'), 'temperature': temperature(row)}


def deep(row):
    return {**at_surface(row), 'pressure': with_unit(row['p'], 'dbar')}


def friction(row):
    return {'reynolds_number': number(row['Re']), 'relative_roughness': number(row['eD'])}


def view(row):
    return {'water': row['d'], 'panel': row['t'], 'water_index': number(row['nw']), 'panel_index': number(row['np'])}


def surfaces(row):
    return {'from': number(row['n1']), 'into': number(row['n2'])}


# (function, names of the inputs in the table, fields, where the value is in the result)
MAP = [
    ('water::density', 'S_P t90 p', at_surface, ''),
    ('water::density', 't90 S_P', at_surface, ''),
    ('water::density_eos80', 'S_P t68', at_surface, ''),
    ('water::pure_water_density_eos80', 't68', lambda r: {'temperature': temperature(r)}, ''),
    ('water::density_at_depth', 'SA CT p',
     lambda r: {'salinity': with_unit(r['SA'], 'g/kg'), 'temperature': with_unit(r['CT'], 'degC'),
       'pressure': r['p']}, ''),
    ('water::salinity_from_conductivity', 'C t68 p',
     lambda r: {'electrical_conductivity': r['C'], 'temperature': temperature(r), 'pressure': with_unit(r['p'],
       'dbar')}, ''),
    ('water::salinity_from_conductivity', 'C t90 p',
     lambda r: {'electrical_conductivity': r['C'], 'temperature': temperature(r), 'pressure': with_unit(r['p'],
       'dbar')}, ''),
    ('water::salinity_from_conductivity_ratio', 'R t68 p',
     lambda r: {'conductivity_ratio': number(r['R']), 'temperature': temperature(r), 'pressure': with_unit(r['p'],
       'dbar')}, ''),
    ('water::conductivity_ratio_from_salinity', 'S_P t68 p', deep, ''),
    ('water::conductivity_from_salinity', 'S_P t90 p', deep, ''),
    ('water::specific_heat', 'S_P t90', at_surface, ''),
    ('water::specific_heat', 'S_P t90 p', at_surface, ''),
    ('water::specific_heat_eos80', 'S_P t68 p', at_surface, ''),
    ('water::specific_heat_sharqawy', 'S_A t90', absolute, ''),
    ('water::latent_heat', 'S_P t90', at_surface, ''),
    ('water::latent_heat_of_water', 't90', lambda r: {'temperature': temperature(r)}, ''),
    ('water::freezing_point', 'S_P p',
     lambda r: {'practical_salinity': salinity(r), 'pressure': with_unit(r['p'], 'dbar')}, ''),
    ('water::oxygen_saturation', 'S_P t90', at_surface, ''),
    ('water::absolute_from_practical', 'S_P', lambda r: {'practical_salinity': salinity(r)}, ''),
    ('water::oxygen_saturation_benson_krause', 'S t68', at_surface, ''),
    ('water::refractive_index_quan_fry', 'S t nm',
     lambda r: {'salinity': salinity(r), 'temperature': temperature(r), 'wavelength': with_unit(r['nm'], 'nm')}, ''),
    ('water::refractive_index_millard_seaver', 'S t nm',
     lambda r: {'salinity': salinity(r), 'temperature': temperature(r), 'wavelength': with_unit(r['nm'], 'nm')}, ''),
    ('water::specific_gravity_from_salinity', 'S_P sample_C reference_C',
     lambda r: {'practical_salinity': salinity(r), 'scale': scale(r)}, 'value'),
    ('water::specific_gravity_from_salinity', 'S_P sample_C reference_F',
     lambda r: {'practical_salinity': salinity(r), 'scale': scale(r)}, 'value'),
    ('water::specific_gravity_from_salinity', 'S_P sample_F reference_F',
     lambda r: {'practical_salinity': salinity(r), 'scale': scale(r)}, 'value'),
    ('water::salinity_from_specific_gravity', 'SG sample_C reference_C',
     lambda r: {'specific_gravity': {'value': number(r['SG']), 'scale': scale(r)}}, ''),
    ('water::surface_tension_of', 'T S',
     lambda r: {'absolute_salinity': 1000 * number(r['S']), 'temperature': r['T']}, ''),
    ('water::vapour_pressure', 'S_P t90', lambda r: at_surface(r), ''),
    ('water::vapour_pressure_iapws', 'T', lambda r: {'temperature': r['T']}, ''),
    ('water::vapour_pressure_nayar', 'S_A t90', absolute, ''),
    ('water::viscosity', 'S_A t90', absolute, ''),
    ('water::viscosity_millero', 'S_P t68', at_surface, ''),
    ('water::osmotic_coefficient', 'S_A t90', absolute, ''),
    ('water::water_activity', 'S_P t90', at_surface, ''),
    ('water::thermal_conductivity_jamieson_tudhope', 'S_A t90', absolute, ''),
    ('water::free_ammonia_fraction', 'pH_F t S',
     lambda r: {'ph_reading': {'ph_free': number(r['pH_F'])}, **at_surface(r)}, ''),
    ('water::free_ammonia_fraction', 'pH_T t S',
     lambda r: {'ph_reading': {'ph_total': number(r['pH_T'])}, **at_surface(r)}, ''),
    ('water::free_ammonia_fraction_fresh', 'pH t S',
     lambda r: {'ph_nbs': number(r['pH']), 'temperature': temperature(r)}, ''),
    ('water::ammonium_pka_total', 'S t', at_surface, ''),
    ('water::ammonium_pka_free', 'S t', at_surface, ''),
    ('water::ammonium_pka_bell', 'S t', at_surface, ''),
    ('water::ammonium_pka_khoo', 'S t', at_surface, ''),
    ('water::left_after_changes', 'part times', lambda r: {'part': number(r['part']), 'times': int(r['times'])}, ''),
    ('water::blend', 'kg1 S1 kg2 S2',
     lambda r: {'waters': [{'mass': f'{r["kg1"]} kg', 'salinity': number(r['S1'])}, {'mass': f'{r["kg2"]} kg',
       'salinity': number(r['S2'])}]}, ''),
    ('plumbing::friction_factor', 'Re eD', friction, ''),
    ('plumbing::friction_factor_haaland', 'Re eD', friction, ''),
    ('plumbing::friction_factor_churchill', 'Re eD', friction, ''),
    ('plumbing::friction_factor_serghides', 'Re eD', friction, ''),
    ('plumbing::friction_factor_blasius', 'Re', lambda r: {'reynolds_number': number(r['Re'])}, ''),
    ('plumbing::fully_turbulent_factor', 'd', lambda r: {'bore': with_unit(r['d'], 'm')}, ''),
    ('plumbing::drain_number', 'D Q', lambda r: {'bore': r['D'], 'flow': r['Q']}, ''),
    ('plumbing::flow_at_drain_number', 'J D', lambda r: {'number': number(r['J']), 'bore': r['D']}, ''),
    ('plumbing::stack_capacity', 'D r', lambda r: {'bore': r['D'], 'filled': number(r['r'])}, ''),
    ('plumbing::kindsvater_carter_weir', 'b B h p',
     lambda r: {'edge': {'width': r['b'], 'channel_width': r['B'], 'crest_height': r['p']}, 'head': r['h']}, ''),
    ('plumbing::rehbock_weir', 'L H Z',
     lambda r: {'edge': {'width': r['L'], 'crest_height': r['Z']}, 'head': r['H']}, ''),
    ('plumbing::v_notch_weir', 'theta Cd H',
     lambda r: {'opening': r['theta'], 'discharge_coefficient': number(r['Cd']), 'head': r['H']}, ''),
    ('plumbing::on_bore', 'K1 D1 D2',
     lambda r: {'loss': number(r['K1']), 'bores': {'from': f'{number(r["D1"])} m', 'to': f'{number(r["D2"])} m'}}, ''),
    ('plumbing::loss_from_flow_coefficient', 'Kv D', lambda r: {'valve': {'kv': number(r['Kv'])}, 'bore': r['D']}, ''),
    ('plumbing::pvc_pipe', 'size schedule give',
     lambda r: {'size': number(r['size']), 'schedule': 'schedule_' + r['schedule']}, '={give}'),
    ('plumbing::metric_pvc_pipe', 'size class give',
     lambda r: {'size': number(r['size']), 'rating': 'pn' + r['class']}, '={give}'),
    ('plumbing::velocity_coefficient', 'x y H',
     lambda r: {'reach': with_unit(r['x'], 'm'), 'fall': with_unit(r['y'], 'm'), 'drive': with_unit(r['H'], 'm')}, ''),
    ('room::saturation_pressure', 't', lambda r: {'temperature': temperature(r)}, ''),
    ('room::humidity_ratio_of', 't RH', water_and_air, ''),
    ('room::humidity_ratio_of', 't RH P', water_and_air, ''),
    ('room::dew_point', 't RH', water_and_air, ''),
    ('room::enthalpy', 't RH', water_and_air, ''),
    ('room::moist_air_density', 't RH', water_and_air, ''),
    ('room::wet_bulb', 't RH', water_and_air, ''),
    ('room::wet_bulb', 't RH P', water_and_air, ''),
    ('room::absolute_humidity', 't RH', water_and_air, ''),
    ('room::pressure_at_altitude', 'z', lambda r: {'altitude': r['z']}, ''),
    ('room::humidity_ratio_from_vapour_pressure', 'p P',
     lambda r: {'vapour': number(r['p']), 'total': number(r['P'])}, ''),
    ('room::vapour_diffusivity', 'T P', lambda r: {'temperature': r['T'], 'total': number(r['P'])}, ''),
    ('room::lowest_surface_temperature', 't RH', lambda r: {'air': water_and_air(r)}, ''),
    ('room::evaporation_rate', 'law tw ta RH',
     lambda r: {'law': r['law'], 'open_water': {'water': {'temperature': temperature(r), 'salinity': 0},
       'air': {'temperature': r['ta'], 'humidity': f'{r["RH"]} %'}}}, ''),
    ('vessel::glass_load_duration_factor', 'd', lambda r: {'lasting': r['d']}, ''),
    ('vessel::glass_stress_for_breakage', 'P A d',
     lambda r: {'breakage_probability': number(r['P']), 'stressed_area': r['A'], 'lasting': r['d']}, ''),
    ('vessel::hydrostatic_pressure', 'h rho',
     lambda r: {'depth': r['h'], 'water_density': with_unit(r['rho'], 'kg/m3')}, ''),
    ('vessel::refracted', 'n1 n2 angle', lambda r: {'between': surfaces(r), 'incoming': r['angle']}, ''),
    ('vessel::critical_angle', 'n1 n2', surfaces, ''),
    ('vessel::reflectance', 'n1 n2', surfaces, ''),
    ('vessel::apparent_distance', 'd t nw np', view, ''),
    ('vessel::apparent_distance', 'd t nw np angle', lambda r: {'view': view(r), 'angle_in_air': r['angle']}, ''),
    ('vessel::slope_run', 'rise repose', lambda r: {'rise': r['rise'], 'repose': r['repose']}, ''),
    ('vessel::least_thickness', 'nominal', lambda r: {'nominal': f'{number(r["nominal"])} mm'}, ''),
    ('vessel::leak_through_hole', 'd_mm h_m Cd',
     lambda r: {'diameter': f'{r["d_mm"]} mm', 'depth': f'{r["h_m"]} m', 'discharge_coefficient': number(r['Cd'])}, ''),
    ('vessel::uplift_of', 'A h m rho',
     lambda r: {'horizontal_area': r['A'], 'flood_depth': r['h'], 'mass_of_sump': r['m'], 'water_density': with_unit(r['rho'],
       'kg/m3')}, 'net_up'),
    ('vessel::blow_off', 'h D rho',
     lambda r: {'depth': r['h'], 'diameter': r['D'], 'water_density': with_unit(r['rho'], 'kg/m3')}, '?N'),
    ('life::share_removed', 'n eta', lambda r: {'turnovers': number(r['n']), 'efficiency': number(r['eta'])}, ''),
    ('life::turnovers_for', 'p eta', lambda r: {'removed': number(r['p']), 'efficiency': number(r['eta'])}, ''),
    ('life::escape_turn_radius', 'L end', lambda r: {'animal': r['L']}, '={end}'),
    ('life::bubble_surface', 'phi d', lambda r: {'gas_share': number(r['phi']), 'bubble': r['d']}, ''),
    ('life::carbon_dioxide_for', 'O2 RQ', lambda r: {'oxygen': r['O2'], 'respiratory_quotient': number(r['RQ'])}, ''),
    ('life::time_to_remove', 'V Q eta p',
     lambda r: {'tank': {'net': r['V'], 'loops': [{'flow': r['Q'], 'efficiency': number(r['eta'])}]},
       'removed': number(r['p'])}, 'time'),
    ('life::treatment_flow_for', 'made eta C',
     lambda r: {'made': r['made'], 'level': r['C'], 'efficiency': number(r['eta'])}, ''),
    ('life::nitrogen_from_feed', 'food protein',
     lambda r: {'food': r['food'], 'protein': number(r['protein'])}, 'ammonia?nitrogen'),
    ('life::film_area_for', 'load TAN t sea',
     lambda r: {'load': r['load'], 'film_water': {'ammonia': {'nitrogen': r['TAN']}, 'temperature': temperature(r),
       'film': 'seawater_film' if r['sea'] == '1' else 'freshwater_film'}}, ''),
]
