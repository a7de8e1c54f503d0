# SPDX-License-Identifier: BSL-1.0
"""The worked examples of docs/worked are what the program writes, and every number in them that is not given is worked out
again here from the numbers that are, from the equations (math, numpy, scipy), with the TEOS-10 toolbox (gsw) and the IAPWS package for water, or
stands against a value printed in a source. Nothing here calls the library.
Usage: worked.py PROGRAM ROOT [--write]

An example without a check, a number without a check, a check without its number and a page without its example are mistakes.
"""
import json
import math
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import gsw
import numpy as np
from iapws import iapws08
from iapws._iapws import _ThCond, _Viscosity
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq, fsolve
from scipy.stats import t as student

program, root = sys.argv[1], Path(sys.argv[2])
committed = root / 'docs' / 'worked'
bad = 0


def complain(text):
    global bad
    bad += 1
    print(text)


def committed_texts():
    return [p for p in committed.glob('*.txt') if p.name != 'CMakeLists.txt']


# ---- what the program writes is what is committed ----------------------------------------------------------------------------

if '--write' in sys.argv:
    for old in committed_texts():
        old.unlink()
    sys.exit(subprocess.run([program, committed]).returncode)
with tempfile.TemporaryDirectory() as folder:
    subprocess.run([program, folder], check=True)
    written = {p.name: p.read_bytes() for p in Path(folder).iterdir()}
there = {p.name: p.read_bytes() for p in committed_texts()}
for name in sorted(written.keys() | there.keys()):
    if written.get(name) != there.get(name):
        complain(f'docs/worked/{name} is not what {program} writes; worked.py PROGRAM ROOT --write')

# ---- reading an example ------------------------------------------------------------------------------------------------------

SYMBOL = re.compile(r'\S{1,6} +')
FIGURE = re.compile(r' *(about )?(-?\d+(?:\.\d+)?)')
NUMBERED = ('Given', 'Steps', 'Result', 'For comparison')


def read(text):
    """Given numbers {symbol: value}, printed ones {symbol: (value, half a unit of the last digit)}, the last paragraph."""
    given, printed, meaning, section = {}, {}, '', ''
    for line in text.splitlines()[1:]:
        if line and not line.startswith(' '):
            section = line
        elif section == 'What it means':
            meaning += line + '\n'
        elif (section in NUMBERED and SYMBOL.fullmatch(line[2:9]) and (found := FIGURE.fullmatch(line[59:71]))
              and line[71:72] in ('', ' ')):
            symbol, figure = line[2:9].strip(), found.group(2)
            half = 0.5 * 10.0 ** -len(figure.partition('.')[2])
            if found.group(1):
                half = 0.5 * 10.0 ** (len(figure) - len(figure.rstrip('0')))
            if section == 'Given':
                given[symbol] = float(figure)
            elif symbol in printed:
                complain(f'two lines are called {symbol}')
            else:
                printed[symbol] = (float(figure), half)
    return given, printed, meaning


checks = {}
spoken = {}  # page -> numbers in its last paragraph that stand in no line, with what they rest on


def example(page, also=None):
    def register(function):
        checks[page] = function
        spoken[page] = also or {}
        return function
    return register


# ---- equations that several examples share -----------------------------------------------------------------------------------

G = 9.80665
U = 35.16504 / 35  # g/kg of reference salinity for one of practical salinity: Millero et al. 2008


def rho(s, t):
    """Density of seawater, kg/m3, by the TEOS-10 toolbox."""
    return float(gsw.rho_t_exact(U * s, t, 0))


def salinity_of(density, t):
    return brentq(lambda s: rho(s, t) - density, 0, 60, xtol=1e-12)


def colebrook(re, rough):
    x = 8.0
    for _ in range(100):
        x = -2 * math.log10(rough / 3.7 + 2.51 * x / re)
    return 1 / x ** 2


def rehbock(q, b, p):
    """Head in metres over a sharp edge over the whole width; ISO 1438."""
    return brentq(lambda h: 2 / 3 * (0.602 + 0.083 * h / p) * math.sqrt(2 * G) * b * (h + 0.0012) ** 1.5 - q, 0, 1)


def saturation(t):
    """Pa, over water: Hyland and Wexler 1983, as ASHRAE prints it (Fundamentals 2017, ch. 1, eq. 6)."""
    k = t + 273.15
    return math.exp(-5.8002206e3 / k + 1.3914993 - 4.8640239e-2 * k + 4.1764768e-5 * k ** 2 - 1.4452093e-8 * k ** 3
                    + 6.5459673 * math.log(k))


def activity(s, t):
    """Water activity of seawater, from the chemical potential of the TEOS-10 toolbox."""
    mu = gsw.chem_potential_water_t_exact(U * s, t, 0) - gsw.chem_potential_water_t_exact(0, t, 0)
    return math.exp(float(mu) * 1e3 / (8.314472 / 0.018015268 * (t + 273.15)))


def ratio(pv, total=101325.0):
    return 0.621945 * pv / (total - pv)


def dry_density(pv, t, total=101325.0):
    return (total - pv) / (287.042 * (t + 273.15))


def shah(pw, tw, pa, ta, total=101325.0):
    """kg/(m2 h), Shah 2014, with densities of dry air as docs/theory/evaporation.md explains."""
    rw, ra = dry_density(pw, tw, total), dry_density(pa, ta, total)
    natural = 35 * rw * max(ra - rw, 0) ** (1 / 3) * (ratio(pw, total) - ratio(pa, total))
    return max(natural, 5e-5 * (pw - pa))


def plate(a, b, nu, q, terms=80):
    """Simply supported plate a (across) by b, by Navier's double series. q(m, n): coefficients of the load. Gives the largest
    principal moment (N m/m) and the largest w D."""
    m, n = np.meshgrid(np.arange(1, 2 * terms, 2), np.arange(1, terms + 1), indexing='ij')
    ka, kb = m * np.pi / a, n * np.pi / b
    w = q(m, n) / (ka ** 2 + kb ** 2) ** 2
    x, y = np.linspace(0, a / 2, 61), np.linspace(0, b, 121)
    sx, cx = np.sin(np.outer(x, ka[:, 0])), np.cos(np.outer(x, ka[:, 0]))
    sy, cy = np.sin(np.outer(y, kb[0])), np.cos(np.outer(y, kb[0]))
    mx = sx @ (w * (ka ** 2 + nu * kb ** 2)) @ sy.T
    my = sx @ (w * (kb ** 2 + nu * ka ** 2)) @ sy.T
    mxy = (1 - nu) * (cx @ (w * ka * kb) @ cy.T)
    principal = (mx + my) / 2 + np.sqrt(((mx - my) / 2) ** 2 + mxy ** 2)
    return principal.max(), (sx @ w @ sy.T).max()


# ---- the water ---------------------------------------------------------------------------------------------------------------

@example('salt_mix', also={'nine tenths': None})
def _(g):
    y = U * g['S1'] * (g['w1'] + g['m1'] / 1000) / g['m1']
    sa, mw = U * g['S'], rho(0, g['t']) * g['V'] / 1000
    m = mw * sa / (1000 * y - sa)
    return {'y': y, 'SA': sa, 'Mw': mw, 'm': m, 'V2': (mw + m) / rho(g['S'], g['t']) * 1000}


@example('salinity', also={'35': 'the name of the trap'})
def _(g):
    s = brentq(lambda s: U * s * rho(s, g['t']) / 1000 - g['c'], 20, 50)
    return {'S': s, 'SA': U * s, 'rho': rho(s, g['t']), 'c35': U * 35 * rho(35, g['t']) / 1000}


@example('hydrometer')
def _(g):
    f60 = (60 - 32) / 1.8
    k, r0 = 1 + 25e-6 * (g['t'] - f60), rho(0, f60)
    s = [salinity_of((g['R'] + e * g['d'] / 2) * r0 / k, g['t']) for e in (-1, 0, 1)]
    return {'rho0': r0, 'k': k, 'rho': g['R'] * r0 / k, 'S': s[1], 'low': s[0], 'high': s[2],
            'Swrong': salinity_of(g['R'] * r0, f60)}


def quan_fry(s, t, nm=589.26):
    """Quan and Fry 1995: another formula than the one of the library, within 2.5e-5 of it."""
    return (1.31405 + (1.779e-4 - 1.05e-6 * t + 1.6e-8 * t * t) * s - 2.02e-6 * t * t
            + (15.868 + 0.01155 * s - 0.00423 * t) / nm - 4382 / nm ** 2 + 1.1455e6 / nm ** 3)


@example('refractometer', also={'20': 'the temperature of its scale'})
def _(g):
    def s(reading):
        n = quan_fry(0, 20) + 1.828e-4 * reading
        return brentq(lambda s: quan_fry(s, g['t']) - n, 0, 60)
    between = 0.15  # 2.5e-5 of the index between the two formulas
    return {'n0': (1.33299, 0, 'Tilton and Taylor 1938: 1.3329877 at 20 degC'), 'n': (quan_fry(0, 20) + 1.828e-4 * g['r'], 2.5e-5),
            'S': (s(g['r']), between), 'low': (s(g['r'] - 0.5), between), 'high': (s(g['r'] + 0.5), between)}


@example('specific_gravity')
def _(g):
    r25, f60 = rho(0, 25), (60 - 32) / 1.8
    s = salinity_of(g['g'] * r25, 25)
    return {'rho0': r25, 'rho': g['g'] * r25, 'S': s, 'g60': rho(s, f60) / rho(0, f60), 'g4': rho(s, 20) / rho(0, 4)}


@example('conductivity', also={'20': 'given', '25': 'reference of the meter'})
def _(g):
    c = g['c'] * (1 + g['a'] / 100 * (g['t'] - 25))
    standard = float(gsw.C_from_SP(35, 14.9964, 0))  # 15 degC of IPTS-68
    return {'C': c, 'R': c / standard, 'S': float(gsw.SP_from_C(c, g['t'], 0)), 'Swrong': float(gsw.SP_from_C(g['c'], 25, 0))}


@example('density', also={'2.6': 'ratio of the two densities, below'})
def _(g):
    r, r0 = rho(g['S'], g['t']), rho(0, g['t'])
    assert round(100 * (r / r0 - 1), 1) == 2.6
    return {'SA': U * g['S'], 'rho': r, 'rho0': r0, 'M': r * g['V'] / 1000, 'more': (r - r0) * g['V'] / 1000}


# ---- what moves it -----------------------------------------------------------------------------------------------------------

@example('friction', also={'3': 'the velocity', '0.0172': 'as printed', '9.85': 'as printed', '96.5': 'as printed'})
def _(g):
    d = g['D'] / 1000
    v = g['Q'] / 1000 / (math.pi / 4 * d * d)
    re = v * d * g['rho'] / (g['mu'] / 1000)
    f = colebrook(re, g['e'] * 1e-6 / d)
    h = f * g['L'] / d * v * v / (2 * G)
    assert abs(f - 0.0172) < 0.5e-4 and abs(h / 9.85 - 1) < 5e-3, 'Cengel and Cimbala, ex. 8-3, prints 0.0172 and 9.85 m'
    return {'V': v, 'Re': re, 'f': f, 'h': h, 'dp': g['rho'] * G * h / 1000}


@example('fittings')
def _(g):
    ft = 0.25 / math.log10(0.0018 * 25.4 / (3.7 * g['D'])) ** 2
    v = g['Q'] / 3.6e6 / (math.pi / 4 * (g['D'] / 1000) ** 2)
    ke, kv = 30 * ft, 3 * ft
    k = g['n'] * ke + kv + 1
    # The bands that the page states: 30 % for elbows, 50 % for valves, none for an exit.
    assert abs(colebrook(v * g['D'] / 1000 / 0.96e-6, 1.5e-3 / g['D']) - 0.022) < 0.0005
    return {'fT': ft, 'Ke': ke, 'Kv': kv, 'v': v, 'K': k, 'h': 100 * k * v * v / (2 * G), 'Le': ke * g['D'] / 1000 / 0.022,
            'low': g['n'] * 0.7 * ke + 0.5 * kv + 1, 'high': g['n'] * 1.3 * ke + 1.5 * kv + 1}


def pump_head(q):
    """m at q in L/h: H = A - B Q^C through the three points of the sheet."""
    c = math.log(4.0 / 1.2) / math.log(15 / 8)
    return 4.60 - 1.20 * (q / 8000) ** c, c


@example('pump')
def _(g):
    h, c = pump_head(g['Q'])
    ph = g['rho'] * G * g['Q'] / 3.6e6 * h
    p = ph / g['eta']
    return {'C': c, 'H': h, 'Ph': ph, 'P': p, 'Qn': g['n'] * g['Q'], 'Hn': g['n'] ** 2 * h, 'Pn': g['n'] ** 3 * p}


@example('circuit')
def _(g):
    nu = 0.959e-6  # m2/s, seawater of 35 at 24 degC: ITTC 2011

    def loss(q, mm, length, k):
        d = mm / 1000
        v = q / 3.6e6 / (math.pi / 4 * d * d)
        return (colebrook(v * d / nu, 1.5e-6 / d) * length / d + k) * v * v / (2 * G), v

    def equations(x):
        left, right = x
        tee = pump_head(left + right)[0] - loss(left + right, 45.2, 1.8, 4.5)[0]
        return [tee - g['z'] - loss(left, 42.6, 1.6, 6)[0], tee - g['z'] - 0.01 - loss(right, 26.2, 3.2, 7)[0]]
    left, right = fsolve(equations, [7000, 2500], xtol=1e-12)
    q = left + right
    ht, vt = loss(q, 45.2, 1.8, 4.5)
    return {'H': pump_head(q)[0], 'ht': ht, 'hl': loss(left, 42.6, 1.6, 6)[0], 'Q': q, 'Ql': left, 'Qr': right, 'vt': vt}


@example('overflow', also={'30': 'the lowest head that Rehbock measured'})
def _(g):
    q = g['Q'] / 3.6e6
    h = rehbock(q, g['b'], g['p'])
    # Below 30 mm ten per cent of flow, as the page states.
    return {'q': q / g['b'] * 1000, 'Cd': 0.602 + 0.083 * h / g['p'], 'h': 1000 * h,
            'low': 1000 * rehbock(q / 1.1, g['b'], g['p']), 'high': 1000 * rehbock(q / 0.9, g['b'], g['p'])}


@example('drains')
def _(g):
    d = g['D'] / 1000
    area, unit = math.pi / 4 * d * d, math.sqrt(G * d)
    q = 0.005
    for _ in range(100):
        f = colebrook(q / area * d / 0.959e-6, 1.5e-6 / d)
        q = area * math.sqrt(2 * G * g['z'] / (g['K'] + 1 + f * g['L'] / d))
    return {'J': g['Q'] / 3.6e6 / area / unit, 'Qq': 0.3 * area * unit * 3.6e6, 'Qs': q * 3.6e6,
            'Qi': g['D'] ** 2 * math.sqrt(g['i']) / 15000 * 3600}


@example('sump')
def _(g):
    q, b = g['Q'] / 3.6e6, g['b'] / 1000
    h1, h2 = (1000 * rehbock(q, b, g[c] / 1000) for c in ('c1', 'c2'))
    z1, z2 = g['c1'] + h1, g['c2'] + h2
    assert z2 < g['c1'], 'the first crest is not drowned'
    return {'h1': h1, 'h2': h2, 'z1': z1, 'z2': z2, 'W': g['A1'] * z1 + g['A2'] * z2 + g['A3'] * g['z3'],
            'room': g['rim'] - max(z1, z2, g['z3'])}


@example('power_cut', also={'10': 'a choice'})
def _(g):
    q = g['Q'] / 3.6e6
    pipe = g['L'] * math.pi / 4 * (g['D'] / 1000) ** 2 * 1000

    def margin(h, area, outlet, sump, level):
        return g['rim'] - level - (area * (h + outlet) + pipe) / sump
    h, high = (1000 * rehbock(q / part, g['b'], g['p']) for part in (1.0, 0.9))
    return {'h': h, 'V1': g['A'] * h, 'V2': g['A'] * g['o'], 'V3': pipe, 'rise': (g['A'] * (h + g['o']) + pipe) / g['As'],
            'margin': margin(h, g['A'], g['o'], g['As'], g['z']),
            'worst': margin(high, 1.03 * g['A'], g['o'] + 3, 0.97 * g['As'], g['z'] + 3)}


# ---- what holds it -----------------------------------------------------------------------------------------------------------

@example('displacement')
def _(g):
    gross, bed = 1000 * g['L'] * g['W'] * g['H'], 1000 * g['L'] * g['W'] * g['d']
    vs, v1, v2 = 0.55 * bed, g['m1'] / 2.83, (g['m2'] - g['m3']) / g['rho'] * 1000
    # Bands as the page states them: porosity 0.40 to 0.50; rock by mass 15 %.
    return {'G': gross, 'Vs': vs, 'V1': v1, 'V2': v2, 'N': gross - vs - v1 - v2, 'M': 2.85 * vs,
            'low': gross - 0.60 * bed - 1.15 * v1 - v2, 'high': gross - 0.50 * bed - 0.85 * v1 - v2}


@example('panel')
def _(g):
    w, h, t = g['W'], g['H'], g['t'] / 1000
    p = g['rho'] * G * h
    # p (1 - y/h) as a double sine series: 16 p/(pi^2 m n)/2 for odd m and every n.
    moment, wd = plate(w, h, 0.22, lambda m, n: 8 * p / (np.pi ** 2 * m * n))
    stiff = 71.7e9 * t ** 3 / (12 * (1 - 0.22 ** 2))
    return {'p': p / 1000, 'F': p * h * w / 2 / 1000, 'M': (moment, 0.5), 'sigma': 6 * moment / t ** 2 / 1e6,
            'use': 6 * moment / t ** 2 / 5e4, 'bulge': 1000 * wd / stiff}


@example('beam')
def _(g):
    b, d = g['b'] / 1000, g['d'] / 1000
    q = g['rho'] * G * g['H'] ** 2 / 6
    pull, weight = 1.25 * q * g['r'] / 2, g['m'] * G
    a = 0.30
    sag = weight * a / (24 * g['E'] * 1e9 * b * d ** 3 / 12) * (3 * g['l'] ** 2 - 4 * a * a)
    sb, sn = 6 * weight * a / (b * d * d) / 1e6, pull / (b * d) / 1e6
    return {'q': q, 'N': pull, 'M': weight * a, 'sb': sb, 'sn': sn, 'sigma': sb + sn, 'sag': 1000 * sag}


@example('floor')
def _(g):
    f = g['m'] * G / 1000
    assert abs(40 * 4.4482216152605 / 0.09290304 / 1000 - g['c']) < 0.0005
    return {'F': f, 'p': f / g['A'], 'pf': f / g['f'], 'times': f / g['A'] / g['c']}


# ---- where it stands ---------------------------------------------------------------------------------------------------------

@example('evaporation')
def _(g):
    pw, pa = activity(35, g['t']) * saturation(g['t']), g['rh'] / 100 * saturation(g['ta'])
    e = shah(pw, g['t'], pa, g['ta'])
    open_water = 24 * e * g['g'] * g['A']
    # Moving water: half up or down. A lid holds back 0.90 where it lies (VDI 2089).
    return {'pw': pw, 'pa': pa, 'e': e, 'E': open_water, 'low': 0.5 * open_water, 'high': 1.5 * open_water,
            'Ec': open_water * (1 - 0.9 * g['c'] / 100)}


@example('room-humidity')
def _(g):
    po = 0.85 * saturation(g['to'])
    wo, pw = ratio(po), activity(35, 24) * saturation(24)

    def settled(law):
        def balance(pv):
            carried = g['n'] * g['V'] * dry_density(pv, g['ti']) * (ratio(pv) - wo)
            return carried - law(pv) * g['A'] - g['G'] / 1000
        pv = brentq(balance, 10, 0.999 * saturation(g['ti']))
        return pv
    low = settled(lambda pv: min(0.65 * shah(pw, 24, pv, g['ti']), 5e-5 * (pw - pv)))
    mid = settled(lambda pv: shah(pw, 24, pv, g['ti']))
    smith = (30.6 + 32.1 * 0.1) / 133.322 / (2501 - 2.37 * 24)  # Smith, Loef and Jones 1994 at 0.1 m/s
    high = settled(lambda pv: max(1.35 * shah(pw, 24, pv, g['ti']), smith * (pw - pv)))
    e = shah(pw, 24, mid, g['ti']) * g['A'] * 1000
    return {'Wo': 1000 * wo, 'Wi': 1000 * ratio(mid), 'E': e, 'out': e + g['G'], 'phi': 100 * mid / saturation(g['ti']),
            'low': 100 * low / saturation(g['ti']), 'high': 100 * high / saturation(g['ti'])}


@example('moist-air')
def _(g):
    ps, total = saturation(g['t']), 100 * g['P']
    pv = g['rh'] / 100 * ps
    return {'ps': ps, 'pv': pv, 'W': 1000 * ratio(pv, total), 'm': g['V'] * ratio(pv, total) * dry_density(pv, g['t'], total),
            'td': brentq(lambda t: saturation(t) - pv, 0.1, 40)}


@example('tank-heat')
def _(g):
    pw, pa = activity(35, g['t']) * saturation(g['t']), 0.5 * saturation(g['ta'])
    latent = float(gsw.latentheat_evap_t(U * 35, g['t']))
    qe = shah(pw, g['t'], pa, g['ta']) * g['A'] / 3600 * latent
    qc = qe * 0.000665 * 101325 * (g['t'] - g['ta']) / (pw - pa)  # Bowen
    k, ka = g['t'] + 273.15, g['ta'] + 273.15
    qr = 0.95 * 5.670374419e-8 * g['A'] * (k ** 4 - ka ** 4)
    qw = g['U'] * g['Aw'] * (g['t'] - g['ta'])
    # High end: evaporation by 1.35 Shah or Smith, Loef and Jones 1994 at 0.1 m/s, and the convection with it.
    smith = (30.6 + 32.1 * 0.1) / 133.322 / (2501 - 2.37 * g['t']) * (pw - pa)
    more = max(1.35, smith / shah(pw, g['t'], pa, g['ta']))
    qm = qe / latent * float(gsw.cp_t_exact(0, g['t'], 0)) * (g['t'] - g['ta'])
    return {'Qe': qe, 'Qc': qc, 'Qr': qr, 'Qw': qw, 'Qm': qm, 'Q': qe + qc + qr + qw + qm - g['P'],
            'H': 1.25 * (more * (qe + qc + qm) + qr + qw - g['P'])}


# ---- what lives in it --------------------------------------------------------------------------------------------------------

def pk_ammonium(s, t):
    """Total scale, mol per kg of water: Clegg and Whitfield 1995, in the form that codes of the carbonate system use."""
    k, r = t + 273.15, math.sqrt(t + 273.15)
    return (9.244605 - 2729.33 * (1 / 298.15 - 1 / k) + (0.04203362 - 11.24742 / k) * s ** 0.25
            + (-13.6416 + 1.176949 * r - 0.02860785 * k + 545.4834 / k) * s ** 0.5
            + (-0.1462507 + 0.0090226468 * r - 0.0001471361 * k + 10.5425 / k) * s ** 1.5
            + (0.004669309 - 0.0001691742 * r - 0.5677934 / k) * s ** 2 + (-2.354039e-5 + 0.009698623 / k) * s ** 2.5)


@example('ammonia')
def _(g):
    def free(ph):
        return 1 / (1 + 10 ** (pk_ammonium(g['S'], g['t']) - ph))
    nh3 = 17.03052 / 14.0067 * g['N']
    return {'pK': pk_ammonium(g['S'], g['t']), 'f': 100 * free(g['pH']), 'free': nh3 * free(g['pH']), 'at83': nh3 * free(g['pH'] + 0.3),
            'fresh': (5.02, 0, 'Emerson et al. 1975, table: pH 8.0, 24 degC')}


@example('oxygen', also={'3': 'difference to the alarm', '4': 'the alarm'})
def _(g):
    def saturated(s, total):
        pv = activity(s, g['t']) * saturation(g['t']) / 101325 if s else saturation(g['t']) / 101325
        p, theta = total / 1013.25, 0.000975 - 1.426e-5 * g['t'] + 6.436e-8 * g['t'] ** 2
        c = float(gsw.O2sol_SP_pt(s, g['t']))
        return c, c * 31.9988e-3 * rho(s, g['t']) / 1000 * (p - pv) * (1 - theta * p) / ((1 - pv) * (1 - theta))
    c, at = saturated(g['S'], g['P'])
    return {'C': (c, 0.03), 'c0': saturated(g['S'], 1013.25)[1], 'c': at, 'fresh': saturated(0, 1013.25)[1]}


@example('nitrogen', also={'24': 'given', '1690': 'the water of the lagoon'})
def _(g):
    protein = (g['F1'] * g['p1'] + g['F2'] * g['p2']) / 100
    n = 0.16 * 0.80 * 0.80 * 0.90 * protein  # 0.0922; the rule is rounded to 0.092
    return {'Pr': protein, 'N': n, 'most': 0.16 * protein, 'O2': 2 * 31.9988 / 14.0067 * n, 'Alk': 100.0869 / 14.0067 * n}


@example('nitrification')
def _(g):
    area = g['V'] * g['a'] / 1000
    r = 0.28 * g['N'] * 1.04275 ** (g['t'] - 24)  # Nijhof and Bovendeur 1990; Malone and Pfeiffer 2006; Zhu and Chen 2002
    return {'A': area, 'r': r, 'cap': r * area, 'low': r * area * 0.2 / 0.69, 'need': g['P'] / r}


@example('oxygen_balance')
def _(g):
    k = g['r'] * (g['m'] / 40) ** -0.2 * 2.5 ** ((g['t'] - 25) / 10)
    r = k * g['m'] / 1000 * g['n']
    fall = (r + g['F']) / g['V']
    return {'k': k, 'R': r, 'fall': fall, 'T': (g['C0'] - g['C1']) / fall, 'plan': (g['C0'] - g['C1']) / fall / 2}


@example('adjust')
def _(g):
    m = rho(g['S1'], g['t']) * g['V'] / 1000
    too_salt = 2 * g['S2'] - g['S1']
    fresh = rho(too_salt, g['t']) * g['V'] / 1000 * (too_salt / g['S2'] - 1)
    return {'M': m, 'dS': U * (g['S2'] - g['S1']), 'm': m * U * (g['S2'] - g['S1']) / (1000 * g['y'] - U * g['S2']),
            'w': 1000 * fresh / rho(0, g['t'])}


@example('blend')
def _(g):
    m = [rho(s, g[t]) * g[v] / 1000 for s, t, v in ((35, 't1', 'V1'), (33.3, 't2', 'V2'))]
    c = [float(gsw.cp_t_exact(U * s, g[t], 0)) for s, t in ((35, 't1'), (33.3, 't2'))]
    s = (m[0] * 35 + m[1] * 33.3) / sum(m)
    t = (m[0] * c[0] * g['t1'] + m[1] * c[1] * g['t2']) / (m[0] * c[0] + m[1] * c[1])
    return {'M': sum(m), 'S': s, 't': t, 'V': 1000 * sum(m) / rho(s, t)}


@example('drift')
def _(g):
    m0, a_day = rho(g['S0'], g['t']) * g['V'] / 1000, rho(0, g['t']) * g['E'] / 1000
    return {'M0': m0, 'lost': a_day * g['d'], 'S': g['S0'] * m0 / (m0 - a_day * g['d']), 'T36': m0 * (1 - g['S0'] / 36) / a_day}


@example('exchange')
def _(g):
    f, rise = g['f'] / 100, 1000 * g['P'] * g['T'] / g['V']
    level = 0.0
    for _ in range(1000):  # week by week, until it settles
        before = level + rise
        level = (1 - f) * before
    return {'x': 100 * (1 - f) ** g['n'], 'rise': rise, 'high': before, 'low': level, 'ion': before * 62.0049 / 14.0067}


@example('top-off')
def _(g):
    m0, m = rho(35, 24) * g['V'] / 1000, rho(0, 20) * g['R'] / 1000
    return {'m0': m0, 'short': g['R'] / g['E2'], 'long': g['R'] / g['E1'], 'S': 35 * m0 / (m0 + m), 'spilt': max(0, g['R'] - g['free'])}


@example('alkalinity')
def _(g):
    rise = (g['A2'] - g['A1']) * 20 / 56.0774  # a degree: 10 mg/L of CaO
    return {'dA': rise, 'm': rise * g['V'] * 84.0066 / 1000, 'c': rise * g['V'] * 105.9884 / 2 / 1000}


@example('circulation', also={'63': 'as printed by Gage and Bidwell 1926'})
def _(g):
    k = g['eta'] / 100 * g['Q'] / g['V']
    course = solve_ivp(lambda t, c: -k * c, (0, 60), [1.0], rtol=1e-9, dense_output=True)
    return {'k': k, 'T': brentq(lambda t: course.sol(t)[0] - (1 - g['x'] / 100), 0, 60), 'one': (63, 0.5, 'Gage and Bidwell 1926')}


@example('composition')
def _(g):
    salt = U * g['S'] * rho(g['S'], g['t']) / 1000
    # Moles per kg of reference seawater (Millero et al. 2008, table 4) and atomic weights, another way than mass fractions.
    moles = {'Ca': (0.0102821, 40.078), 'Mg': (0.0528171, 24.3050), 'K': (0.0102077, 39.0983)}
    density = rho(g['S'], g['t'])
    return {'salt': salt, **{k: (n * w * g['S'] / 35 * density, 0.3) for k, (n, w) in moles.items()}}


@example('emptying', also={'11.6': 'as printed'})
def _(g):
    area, hole = math.pi / 4 * g['D'] ** 2, math.pi / 4 * (g['d'] / 1000) ** 2
    seconds = quad(lambda h: area / (hole * math.sqrt(2 * G * h)), g['h2'], g['h1'])[0]
    assert abs(seconds / 60 - 11.6) < 0.05, 'Cengel and Cimbala, ex. 5-2, prints 11.6 min'
    return {'A': area, 'a': hole * 1e6, 'T': seconds / 60, 'Treal': seconds / 60 / 0.61}


@example('errors', also={'43': 'given', '0': 'the range', '42': 'the range', '78': 'PSS-78', '1981': 'UNESCO 1981'})
def _(g):
    return {'rho': rho(g['S'], g['t']), 'says': 'outside the published range 0 to 42'}


@example('freezing')
def _(g):
    # The toolbox works from the chemical potentials of water and ice; Millero 1978 lies within 0.003 K of it.
    return {'tf': (float(gsw.t_freezing(U * g['S'], 0, 1)), 0.003), 'tb': (float(gsw.t_freezing(U * 15, 0, 1)), 0.003)}


@example('heat', also={'300': 'a heater'})
def _(g):
    c = float(gsw.cp_t_exact(U * 35, 18, 0))
    capacity = c * rho(35, 18) * g['V'] / 1000 / 3.6e6
    latent = float(gsw.latentheat_evap_t(U * 35, g['t2']))
    return {'c': c, 'C': capacity, 'Q': capacity * (g['t2'] - g['t1']), 'L': latent / 1000, 'P': g['E'] * latent / 86400}


@example('leak_test')
def _(g):
    days = np.arange(5.0)
    y = np.array([800.0, 796.5, 793.0, 790.0, 786.5]) - np.array([60.0, 57.0, 54.0, 51.5, 48.5])
    slope, level = np.polyfit(days, y, 1)
    sxx = ((days - days.mean()) ** 2).sum()
    # Neither tank nor pan is read better than to its rounding, r/sqrt(12) each.
    scatter = max(math.sqrt(((y - level - slope * days) ** 2).sum() / 3), g['r'] * math.sqrt(2 / 12))
    error, t = scatter / math.sqrt(sxx), student.ppf(0.95, 3)
    return {'b': -slope, 'sb': error, 'leak': -slope * g['A'], 'low': g['A'] * (-slope - t * error), 'high': g['A'] * (-slope + t * error)}


@example('materials', also={'5': 'default of the library'})
def _(g):
    k = (g['d'] * 3600 / 3) ** (-1 / 16)
    assert round(k, 2) == 0.55, 'ASTM E1300-12a, table X4.1, prints 0.55 for 12 h'
    return {'k': k, 'fd': k * g['f3'], 'f': 0.31 * g['f3']}


@example('pipe_sizes', also={'1': 'a name', '2': 'a name', '50': 'a name'})
def _(g):
    d = g['OD'] - 2 * (g['w'] + max(0.020, 0.12 * g['w']) / 2)
    assert abs(d - 1.590) < 0.001, 'published average bore of 1 1/2 in Schedule 40'
    return {'D': d, 'Dmm': 25.4 * d, 'Dm': g['dn'] - 2 * g['e']}


@example('refractive_index')
def _(g):
    n0, n = quan_fry(0, g['t']), quan_fry(g['S'], g['t'])
    return {'n0': (n0, 2.5e-5), 'n': (n, 2.5e-5), 'dn': (1e4 * (n - n0) / g['S'], 0.01)}


@example('shape')
def _(g):
    r = g['D'] / 2
    litres = quad(lambda z: 2000 * g['L'] * math.sqrt(z * (g['D'] - z)), 0, g['h'])[0]
    return {'phi': 2 * math.acos(1 - g['h'] / r), 'V': litres, 'full': 1000 * g['L'] * math.pi * r * r}


@example('space')
def _(g):
    return {'run': g['r'] / g['a'], 'wide': g['w'] / g['a'], 'T': g['r'] / g['v']}


@example('start_up')
def _(g):
    # Metcalf & Eddy 2014, as docs/theory/start_up.md prints the constants.
    t, o, x = g['t'] - 20, g['O'], g['X'] / g['V']
    mu = [0.90 * 1.072 ** t, 1.00 * 1.063 ** t]
    b = [0.17 * 1.029 ** t] * 2

    def right(_, y):
        s, n, a, c = y
        qa = mu[0] / 0.15 * s / (0.50 + s) * o / (0.50 + o)
        qn = mu[1] / 0.05 * n / (0.20 + n) * o / (0.90 + o)
        return [-qa * a, qa * a - qn * c, (0.15 * qa - b[0]) * a, (0.05 * qn - b[1]) * c]
    course = solve_ivp(right, (0, 40), [g['N'], 0, x, x], method='LSODA', rtol=1e-10, atol=1e-12, dense_output=True)
    days = np.linspace(0, 40, 400001)
    s, n = course.sol(days)[:2]
    above = np.nonzero((s > 0.1) | (n > 0.1))[0]
    return {'mu': mu[0], 'peak': n.max(), 'at': days[n.argmax()], 'clear': days[above[-1]]}


@example('surface_tension')
def _(g):
    k = g['t'] + 273.15
    x = 1 - k / 647.096
    fresh = 235.8 * x ** 1.256 * (1 - 0.625 * x)  # IAPWS R1-76
    s = U * g['S']
    return {'sw': fresh, 'sigma': iapws08._Tension_SeaWater(k, s / 1000) * 1000}


@example('thermal_conductivity')
def _(g):
    kelvin = g['t'] + 273.15  # IAPWS R15-11 for water, and what the salt adds by G10-15
    k = _ThCond(rho(0, g['t']), kelvin) + iapws08._ThCond_SeaWater(kelvin, 0.101325, U * g['S'] / 1000)
    return {'k': k, 'q': k * g['dT'] / (g['d'] / 1000)}


@example('transfer')
def _(g):
    qs, qt = g['V0'] * g['p'] / (g['S2'] - g['S1']), g['V0'] / (g['t2'] - g['t1'])
    q = min(qs, qt)
    fills = brentq(lambda t: q * t / (g['V0'] + q * t) - 0.9, 0.1, 200)
    over = brentq(lambda t: 1 - math.exp(-q * t / g['V0']) - 0.9, 0.1, 200)
    return {'Qs': qs, 'Qt': qt, 'Q': q, 'Tfill': fills, 'Tover': over}


@example('uncertainty')
def _(g):
    l, w, h, u = g['L'], g['W'], g['H'], g['a'] / 1000 / math.sqrt(3)
    v, uv = 1000 * l * w * h, 1000 * u * math.hypot(w * h, l * h, l * w)
    return {'u': 1000 * u, 'V': v, 'uV': uv, 'low': v - 1.96 * uv, 'high': v + 1.96 * uv}


@example('units')
def _(g):
    gallon = 231 * 0.254 ** 3  # L
    return {'Q': g['q'] * gallon, 'H': g['h'] * 0.3048, 'V': g['v'] * gallon, 'T': (g['t'] - 32) / 1.8, 'Vimp': g['v'] * 4.54609}


@example('vapour')
def _(g):
    fresh, a = saturation(g['t']), activity(g['S'], g['t'])
    return {'pw0': fresh, 'aw': a, 'pw': a * fresh, 'less': 100 * fresh * (1 - a) / (fresh - g['pa'])}


@example('verdicts', also={'50': 'the other wish'})
def _(g):
    def verdict(keep):
        return 'does not hold' if not g['mid'] > 0 else 'holds' if g['low'] > 0 and g['low'] > keep else 'thin margin'
    return {'spare': g['low'] - g['keep'], 'says': f'more than the useful room: {verdict(g["keep"])}. To keep 50 mm free: {verdict(50)}'}


@example('view')
def _(g):
    a = math.radians(60)
    aw, ap = math.asin(math.sin(a) / g['n']), math.asin(math.sin(a) / 1.52)
    return {'near': g['d'] / g['n'] + g['t'] / 1.52, 'aside': (g['d'] * math.tan(aw) + g['t'] * math.tan(ap)) / math.tan(a),
            'crit': math.degrees(math.asin(1 / g['n']))}


@example('viscosity', also={'4000': 'where turbulence begins'})
def _(g):
    t, s = g['t'], U * g['S'] / 1000
    mu0 = 1000 * _Viscosity(rho(0, t), t + 273.15)  # IAPWS R12-08
    mu = mu0 * (1 + (1.541 + 0.01998 * t - 9.52e-5 * t * t) * s + (7.974 - 0.07561 * t + 4.724e-4 * t * t) * s * s)
    nu = mu / rho(g['S'], t)
    return {'mu0': mu0, 'mu': mu, 'nu': 1000 * nu, 'Re': g['v'] * 0.0426 / nu * 1000}


@example('light')
def _(g):
    def share(h):
        out = 1e-5  # the outermost ray of a narrow cone, bent by Snell's law
        above = h * math.tan(out)
        below = above + g['D'] * math.tan(math.asin(math.sin(out) / 1.34))
        return (above / below) ** 2
    through = (g['T'] / 100) ** g['D']
    return {'s': 100 * share(g['h']), 'a': 100 * through, 'w': 2 * g['h'] * math.tan(math.radians(g['b'] / 2)),
            'x': 100 * share(g['h']) * through, 'x2': 100 * share(2 * g['h']) * through}


@example('water_changes')
def _(g):
    def highest(every):
        """The level followed change by change [mg/L], and how many changes there are."""
        level, top, day, changes = 0.0, 0.0, 0.0, 0
        while day + every <= g['D'] + 1e-9:
            day, changes = day + every, changes + 1
            level += 1000 * g['N'] * every / g['V']
            top = max(top, level)
            level *= 1 - g['p'] / 100
        return top, changes
    top, changes = highest(g['T'])
    daily, times = highest(1.0)
    part = g['p'] / 100 * g['V']
    return {'r': 1000 * g['N'] * g['T'] / g['V'], 'n': changes, 'C': top, 'W': changes * part, 'Cd': daily, 'Wd': times * part}


@example('water_hammer')
def _(g):
    a = math.sqrt(2.2e9 / 1024) / math.sqrt(1 + 2.2e9 * g['D'] / (2.76e9 * g['e']))
    return {'a': a, 'dp': 1024 * a * g['v'] / 1e5, 'T': 1000 * 2 * g['L'] / a}


@example('hardness_drift')
def _(g):
    # Hour by hour; a change brings water as it was at first.
    level, lowest = g['A'], g['A']
    for hour in range(1, round(24 * g['T']) + 1):
        level -= g['f'] / 24
        lowest = min(lowest, level)
        if hour % round(24 * g['i']) == 0:
            level += g['p'] / 100 * (g['A'] - level)
    first = g['f'] * g['i']
    # A degree of alkalinity is 10 mg of CaO in a litre, and a mole of CaO holds one of calcium.
    return {'d1': first, 'd2': 2 * first - g['p'] / 100 * first, 'Amin': lowest, 'Anone': g['A'] - g['f'] * g['T'],
            'Calow': g['Ca'] - g['f'] * g['T'] * 10 / 56.0774 * 40.078}


@example('home_instruments')
def _(g):
    def s(mass, part):
        return salinity_of(mass / (g['V'] * (1 + part)) * 1000 * (1 - 1.2 / 8000) + 1.2, g['t'])
    e, tau = g['e'] / 100, g['t'] - 20
    # The printed fit, and what a seawater of 35 is heavier by: solved for the salt, another way than by a formula.
    def brine(w):
        return 100 * w * (7.087 - 0.0195 * tau + 0.0004 * tau ** 2 + 1.63 * w)
    w = brentq(lambda w: brine(w) - (rho(35, g['t']) - rho(0, g['t'])), 0, 0.1)
    return {'rho': g['m'] / g['V'] * 1000 * (1 - 1.2 / 8000) + 1.2, 'S': s(g['m'], 0), 'low': s(g['m'] - g['d'], e),
            'high': s(g['m'] + g['d'], -e), 'salt': 1000 * w / (1 - w), 'Swrong': salinity_of(g['m'] / g['V'] * 1000, g['t'])}


@example('joints', also={'12': 'the spacing, in centimetres'})
def _(g):
    q = g['rho'] * G * g['z'] * g['W'] / 2
    # NDS 2018, 12.2-2, in its own units: pounds for an inch of thread.
    pounds = 2850 * g['G'] ** 2 * (g['D'] / 25.4) * (g['p'] / 25.4)
    f = pounds * 0.45359237 * G * 0.9 * 0.7
    return {'q': q / 1000, 'F': f, 'n': q / f, 'a': 1000 * f / q, 'edge': max(2 * g['h'], g['h'] / 2 + 2 * 12),
            # NIOSH 94-110, in centimetres: 23 x 25/H x (1 - 0.003 |V - 75|) x (0.82 + 4.5/D) x grip
            'M': 23 * 25 / (100 * g['r']) * (1 - 0.003 * abs(120 - 75)) * (0.82 + 4.5 / 25) * 0.90}


@example('stocking_steps')
def _(g):
    def over(a, b):
        """mg/L that are left over from share a to share b: the area between load and growing capacity."""
        load, cap = b * g['N'], a * g['N']
        until = math.log(load / cap) / g['mu']
        return 1000 * quad(lambda t: load - cap * math.exp(g['mu'] * t), 0, until)[0] / g['V'], until
    share, day, steps = g['C0'] / 100, g['r'], []
    while share < 1:
        to = 1.0 if over(share, 1.0)[0] <= g['S1'] else brentq(lambda b: over(share, b)[0] - g['S1'], share * 1.001, 1.0)
        steps.append((to, day))
        day, share = day + max(g['r'], over(share, to)[1]), to
    return {'t': over(g['C0'] / 100, 1.0)[1], 'S': over(g['C0'] / 100, 1.0)[0], 'x1': 100 * steps[0][0], 'x2': 100 * steps[1][0],
            'last': steps[-1][1], 'k': len(steps)}


@example('submerged_jet')
def _(g):
    d = g['D'] / 1000
    u0 = g['Q'] / 3.6e6 / (math.pi / 4 * d * d)
    nu, s, grain = 0.96e-3 / 1024, 2800 / 1024, g['d'] / 1000
    star = grain * (G * (s - 1) / nu ** 2) ** (1 / 3)  # Soulsby and Whitehouse 1997
    us = math.sqrt((0.30 / (1 + 1.2 * star) + 0.055 * (1 - math.exp(-0.020 * star))) * G * (s - 1) * grain)
    return {'u0': u0, 'us': us, 'u': 6.2 * d / g['x'] * u0, 'X': 6.2 * d * u0 / g['u1'], 'near': 5.8 * d * u0 / g['u1'],
            'far': 6.5 * d * u0 / g['u1'], 'um': us / 0.40 * math.log(12 * 0.050 / grain), 'slow': us / 0.40 * math.log(12 * 0.010 / grain)}


@example('supply')
def _(g):
    hours = 0.5 * 0.85 * g['C'] / g['P2']
    return {'I80': 0.8 * g['Ib'], 'I30': 0.3 * g['Ir'], 'I': (g['P1'] + g['P2'] / g['pf'] + g['P3']) / g['U'], 'leak': 0.20 * g['n'],
            'most': 0.75 * g['n'], 'T': hours, 'old': 0.7 * hours}


@example('transport')
def _(g):
    k, wet = g['t'] + 273.15, 1 - 0.031  # the vapour takes 0.031 of an atmosphere at 25 degC
    # Oxygen of Garcia and Gordon 1992 by the toolbox, umol/kg; the gas by its law.
    dissolved = float(gsw.O2sol_SP_pt(g['S'], g['t'])) * 31.998e-3 * rho(g['S'], g['t']) / 1000 / (0.20946 * wet)  # mg/(L atm)
    per_atm = g['G'] * 101325 / (8.314462618 * k) * 31.998e-3 * 1000 + g['V'] * dissolved  # mg/atm
    first, used = per_atm * wet, g['U'] * g['T']
    # Lueker, Dickson and Keeling 2000; Weiss 1974: as docs/theory/transport.md names them.
    k1 = 10 ** -(3633.86 / k - 61.2172 + 9.67770 * math.log(k) - 0.011555 * g['S'] + 0.0001152 * g['S'] ** 2)
    k2 = 10 ** -(471.78 / k + 25.9290 - 3.16967 * math.log(k) - 0.01781 * g['S'] + 0.0001122 * g['S'] ** 2)
    k0 = math.exp(93.4517 * 100 / k - 60.2409 + 23.3585 * math.log(k / 100)
                  + g['S'] * (0.023517 - 0.023656 * k / 100 + 0.0047036 * (k / 100) ** 2)) * 1.0247  # mol/(L atm)

    def carbon(h):
        """mmol/L: in the water, and in the gas over it."""
        bicarbonate = g['A'] / (1 + 2 * k2 / h)
        gas = bicarbonate * h / k1
        return gas + bicarbonate + bicarbonate * k2 / h, gas / k0 * 101.325 / (8.314462618 * k) * g['G'] / g['V']
    breath = 0.9 * used / 31.998 / g['V']  # mmol/L
    ph = brentq(lambda x: sum(carbon(10 ** -x)) - carbon(10 ** -g['pH0'])[0] - breath, 4, 9)
    n = 0.15 * used / 31.998 * 14.0067 / g['V']

    def free(x):
        return n * 17.031 / 14.007 / (1 + 10 ** (pk_ammonium(g['S'], g['t']) - x))
    return {'used': used / 1000, 'N': n, 'left': (first - used) / 1000, 'lasts': (first - 5.0 / dissolved * per_atm) / g['U'],
            'pH': ph, 'free': free(ph), 'open': free(g['pH0'])}


# ---- holding the one against the other ---------------------------------------------------------------------------------------

held = 0
for page in sorted(checks.keys() | {name[:-4] for name in there}):
    if page not in checks:
        complain(f'{page}: this example has no check')
        continue
    if f'{page}.txt' not in there:
        complain(f'{page}: there is no such example')
        continue
    given, printed, meaning = read(there[f'{page}.txt'].decode())
    expected = checks[page](given)
    says = expected.pop('says', '')  # words that the program found by itself
    if says not in ' '.join(meaning.split()):
        complain(f'{page}: does not say "{says}"')
    for symbol in sorted(printed.keys() ^ expected.keys()):
        complain(f'{page}: {symbol} is ' + ('printed and not checked' if symbol in printed else 'checked and not printed'))
    for symbol in printed.keys() & expected.keys():
        value, half = printed[symbol]
        wanted, within = expected[symbol] if isinstance(expected[symbol], tuple) and len(expected[symbol]) == 2 else \
            (expected[symbol][:2] if isinstance(expected[symbol], tuple) else (expected[symbol], 0.0))
        held += 1
        if not abs(value - wanted) <= half * (1 + 1e-9) + within:
            complain(f'{page}: {symbol} is printed as {value}, worked out here it is {wanted:.6g}')
    # Every number that the last paragraph speaks of stands in a line, or says what it rests on.
    for token in re.findall(r'(?<![\w.])\d+(?:\.\d+)?', meaning):
        digits = len(token.partition('.')[2])
        lines = [v for v, _ in printed.values()] + list(given.values())
        if token not in spoken[page] and not any(f'{v:.{digits}f}' == token for v in lines):
            complain(f'{page}: "{token}" in what it means stands in no line')

# ---- the pages: each shows its example, and names decisions and keys that exist ------------------------------------------------

decisions = '\n'.join(p.read_text() for p in (root / 'include' / 'tankwright' / 'decisions').rglob('*.hpp'))
ids = set(re.findall(r'\.id = "([a-z_.]+)"', decisions))
schema = json.loads((root / 'docs' / 'plan.schema.json').read_text())


def inside(node):
    """What a reference, a choice or a list leads to."""
    while True:
        if '$ref' in node:
            target = schema
            for part in node['$ref'].lstrip('#/').split('/'):
                target = target[part]
            node = target
        elif 'items' in node:
            node = node['items']
        elif 'properties' not in node and any(k in node for k in ('oneOf', 'anyOf', 'allOf')):
            choices = next(node[k] for k in ('oneOf', 'anyOf', 'allOf') if k in node)
            deeper = [c for c in choices if any(k in c for k in ('$ref', 'items', 'properties'))]
            if not deeper:
                return node
            node = deeper[0]
        else:
            return node


def is_key(path):
    node = schema
    for part in path.split('.'):
        node = inside(node)
        if part not in node.get('properties', {}):
            return False
        node = node['properties'][part]
    return True


# Pages whose worked example is still to be written: none; a new page comes with its own.
STILL_OPEN = set()

for page in sorted(p.stem for p in (root / 'docs' / 'theory').glob('*.md')):
    text = (root / 'docs' / 'theory' / f'{page}.md').read_text()
    if (f'<!-- file: docs/worked/{page}.txt -->' in text) == (page in STILL_OPEN):
        complain(f'docs/theory/{page}.md shows no worked example, or is still on the list of those that do not')
    used = text.partition('## Where it is used')[2]
    for name in re.findall(r'`([a-z_.]+)`', used.partition('* Answers')[2].partition('\n*')[0]):
        if name not in ids:
            complain(f'docs/theory/{page}.md: there is no decision {name}')
    for name in re.findall(r'`([a-z_.]+)`', used.partition('* Keys of a plan')[2].partition('\n*')[0]):
        if not is_key(name):
            complain(f'docs/theory/{page}.md: a plan has no key {name}')

print(f'{len(there)} examples, {held} numbers worked out again, {bad} problems; {len(STILL_OPEN)} pages are still without an example')
sys.exit(1 if bad else 0)
