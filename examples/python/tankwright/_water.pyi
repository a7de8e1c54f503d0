# SPDX-License-Identifier: BSL-1.0
# Written by examples/python/stubs.py. Do not edit.
"""The formulas of water."""
from typing import Literal, Optional, Sequence, Union, overload

from . import types as _t
from .quantity import Quantity

def raise_salinity(
    *,
    volume: _t.Amount = ...,
    from_: _t.Amount,
    target: _t.Amount,
    temperature: _t.Amount = ...,
    mix_yield: _t.Amount = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ..., mix_yield_percent: float = ...,
) -> _t.MixToAdd:
    """Dry mix to raise the salinity of water that is there.

    Takes volume [m3]; from_ [psu]; target [psu]; temperature [K]; mix_yield.

    Needs volume, from_, target, temperature, mix_yield.

    Gives mass of mix, the volume afterwards and a caution

    Caution: Correct slowly where animals live: about 1 of salinity a day upwards is common practice, downwards a
    few a day for fish and not at all in a hurry for invertebrates. Dissolve dry mix in water taken from the
    system, never in the tank. Measure after each step, and before the first one check the instrument.
    """
    ...

def lower_salinity(
    *,
    volume: _t.Amount = ...,
    from_: _t.Amount,
    target: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> _t.WaterToAdd:
    """Fresh water to add to water that is there, to lower its salinity.

    Takes volume [m3] (of the water that is there, without rock and sand); from_ [psu]; target [psu]; temperature
    [K].

    Needs volume, from_, target, temperature.

    Gives fresh water, the volume afterwards and a caution

    Caution: Correct slowly where animals live: about 1 of salinity a day upwards is common practice, downwards a
    few a day for fish and not at all in a hurry for invertebrates. Dissolve dry mix in water taken from the
    system, never in the tank. Measure after each step, and before the first one check the instrument.
    """
    ...

def replace_to_reach(
    *,
    volume: _t.Amount = ...,
    from_: _t.Amount,
    target: _t.Amount,
    replacement: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> _t.WaterToReplace:
    """Water to take out and to put in, so that the salinity changes and the volume does not. Fresh water lowers it,
    saltier water raises it.

    Takes volume [m3]; from_ [psu]; target [psu]; replacement [psu] (of the water that comes in; 0 for fresh
    water); temperature [K].

    Needs volume, from_, target, replacement, temperature.

    Gives volumes out and in, the part of the water replaced, and a caution

    Caution: Correct slowly where animals live: about 1 of salinity a day upwards is common practice, downwards a
    few a day for fish and not at all in a hurry for invertebrates. Dissolve dry mix in water taken from the
    system, never in the tank. Measure after each step, and before the first one check the instrument.
    """
    ...

def alkalinity_to_add(
    *,
    volume: _t.Amount = ...,
    from_: _t.AlkalinityGiven,
    target: _t.AlkalinityGiven,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ...,
) -> _t.AlkalinityDose:
    """What to add to raise the alkalinity.

    Takes volume [m3] (of the water itself, without rock and sand); from_; target.

    Needs volume, from_, target.

    Gives mass of bicarbonate, or of carbonate instead

    Caution: Dissolve the powder in fresh water first and add it slowly where the flow is strong, spread over
    days: at most about 0.5 meq/L (1.4 dKH) a day where animals live. Sodium carbonate raises the pH sharply and
    makes ammonia more poisonous; test pH and ammonia before and after. Wear goggles and gloves.
    """
    ...

def free_ammonia_fraction(
    *,
    ph_reading: _t.PhReadingGiven,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """The free part of the ammonia in seawater, with its band.

    Takes ph_reading (`ph_nbs`, `ph_total` or `ph_free`, 0 to 14); practical_salinity [psu] (practical salinity, 0
    to 40); temperature [K] (temperature [ITS-90], -2 to 40 degC).

    Needs ph_reading, practical_salinity, temperature.

    Gives free part of the total; the band is the 5 % of K*, and 0.03 of pH more for NBS buffers
    """
    ...

def free_ammonia_fraction_fresh(
    *,
    ph_nbs: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """The free part of the ammonia in fresh water.

    Takes ph_nbs (pH as an ordinary probe reads it, 0 to 14); temperature [K] (temperature [ITS-90], 0 to 50
    degC).

    Needs ph_nbs, temperature.

    Gives free part of the total
    """
    ...

def free_ammonia_in(
    *,
    total: _t.TotalAmmoniaGiven,
    ph: _t.PhReadingGiven,
    salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> _t.FreeAmmoniaResult:
    """Free ammonia of a sample of seawater: what the test kit's number means for the animals.

    Takes total; ph; salinity [psu]; temperature [K].

    Needs total, ph, salinity, temperature.

    Gives free ammonia with its band, the free part with its band, and a caution

    Caution: Free ammonia harms animals from a few hundredths of a milligram per litre, the young and the
    sensitive from less. Kits and pH probes are rarely better than 20 %, and 0.3 pH doubles the free part: act on
    the high end of the band. Where animals show distress, change water first and calculate later; ask an aquatic
    veterinarian.
    """
    ...

def ammonium_pka_total(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Stoichiometric pK* of ammonium on the total scale: the pH at which half of the ammonia is free.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90], -2 to 40
    degC).

    Needs practical_salinity, temperature.

    Gives pK* on the total scale [molal]
    """
    ...

def ammonium_pka_free(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Stoichiometric pK* of ammonium on the free scale: the pH at which half of the ammonia is free.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90], -2 to 40
    degC).

    Needs practical_salinity, temperature.

    Gives pK* on the free scale [molal]
    """
    ...

def ammonium_pka_bell(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Bell et al.'s linear pKa of ammonium in seawater, to compare with the default; near the free scale.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90], -2 to 40
    degC).

    Needs practical_salinity, temperature.

    Gives pKa near the free scale
    """
    ...

def ammonium_pka_khoo(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Khoo et al.'s pKa of ammonium in seawater, to compare with the default; near the free scale.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90], -2 to 40
    degC).

    Needs practical_salinity, temperature.

    Gives pKa near the free scale
    """
    ...

@overload
def blend(
    *,
    waters: Sequence[_t.PortionGiven],
    extrapolate: bool = ...,
) -> _t.BlendedWater:
    """Any number of waters together.

    Takes waters (volume >= 0, not all zero; practical salinity, 0 to 42; temperature, from freezing to 80 degC).

    Needs waters.

    Gives salinity, temperature, mass and volume; no heat is lost to vessel or air
    """
    ...

@overload
def blend(
    *,
    waters: Sequence[_t.WeighedPortionGiven],
    extrapolate: bool = ...,
) -> Quantity:
    """Salinity of any number of weighed waters together.

    Takes waters (mass >= 0, not all zero; practical salinity, 0 to 42).

    Needs waters.

    Gives practical salinity
    """
    ...

def brine_density(
    *,
    made: _t.SaltStandardGiven,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Density of a solution of sodium chloride.

    Takes made (salt 0 to 1000 t, water 1 mg to 1000 t; the salt 0 to 6 % of both); temperature [K] (temperature,
    10 to 30 degC).

    Needs made, temperature.

    Gives density [kg/m^3]
    """
    ...

def salt_for_standard(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Sodium chloride for a kilogram of purified water, so that the solution is as dense as a seawater.

    Takes practical_salinity [psu] (practical salinity of that seawater, 0 to 42); temperature [K] (temperature,
    10 to 30 degC).

    Needs practical_salinity, temperature.

    Gives mass of salt for each kilogram of water, as a part of it
    """
    ...

def carbonate_in(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> _t.CarbonateConstants:
    """Constants of carbonic acid in seawater.

    Takes practical_salinity [psu] (practical salinity, 19 to 43); temperature [K] (temperature, 2 to 35 degC).

    Needs practical_salinity, temperature.

    Gives pK1, pK2 and K0
    """
    ...

def ph_after_breath(
    *,
    closed: _t.ClosedWaterGiven,
    added: _t.Amount,
    extrapolate: bool = ...,
) -> _t.BreathedWater:
    """pH of a closed water after breath has gone into it.

    Takes closed (pH before 4 to 10, total scale; alkalinity 0.01 to 100 meq/L; salinity 19 to 43; temperature 2
    to 35 degC; gas over water 0 to 1e6); added [mmol/L] (carbon dioxide [mmol/L] for each litre of water, 0 to 10
    000).

    Needs closed, added.

    Gives pH, dissolved carbon dioxide, its partial pressure
    """
    ...

def concentration_of(
    *,
    what: _t.Constituent,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """What a kit should read for a constituent in seawater of reference composition.

    Takes what (the constituent); practical_salinity [psu] (practical salinity, 0 to 42); temperature [K]
    (temperature [ITS-90], from freezing to 80 degC).

    Needs what, practical_salinity, temperature.

    Gives mass per volume [kg/m^3]
    """
    ...

def weigh_recipe(
    *,
    volume: _t.Amount = ...,
    target: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> _t.RecipeAmounts:
    """What to weigh for a volume of artificial seawater by Kester et al., scaled to the wanted salinity.

    Takes volume [m3] (finished); target [psu]; temperature [K].

    Needs volume, target, temperature.

    Gives mass of each salt, of all, and of the water

    Caution: Use reagents of food or analytical grade and weigh the small ones on a fine scale. Dissolve the
    sulphate and the chlorides of calcium, strontium and magnesium apart and combine them diluted, or gypsum
    settles. Sodium fluoride and boric acid are poisonous: gloves, dust mask, away from food. Aerate for a day and
    measure salinity, pH and alkalinity before any animal meets the water.
    """
    ...

@overload
def salinity_from_conductivity(
    *,
    conductivity_at_25: Union[_t.Amount, _t.ConductivityAt25Made],
    extrapolate: bool = ...,
) -> Quantity:
    """Practical salinity from a conductivity that was referred to 25 degC along the curve of seawater.

    Takes conductivity_at_25 (conductivity at 25 degC [S/m]; the salinity must come out at 0 to 42).

    Needs conductivity_at_25.

    Gives practical salinity
    """
    ...

@overload
def salinity_from_conductivity(
    *,
    electrical_conductivity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    electrical_conductivity_siemens_per_metre: float = ...,
    electrical_conductivity_millisiemens_per_centimetre: float = ...,
    electrical_conductivity_microsiemens_per_centimetre: float = ..., temperature_kelvins: float = ...,
    temperature_K: float = ..., temperature_celsius: float = ..., temperature_degC: float = ...,
    temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Practical salinity from the conductivity of the water at its own temperature, at the surface.

    Takes electrical_conductivity [S/m] (conductivity at temperature `t`, not compensated [S/m]; the salinity must
    come out at 0 to 42); temperature [K] (temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35
    degC).

    Needs electrical_conductivity, temperature.

    Gives practical salinity
    """
    ...

@overload
def salinity_from_conductivity(
    *,
    electrical_conductivity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    electrical_conductivity_siemens_per_metre: float = ...,
    electrical_conductivity_millisiemens_per_centimetre: float = ...,
    electrical_conductivity_microsiemens_per_centimetre: float = ..., temperature_kelvins: float = ...,
    temperature_K: float = ..., temperature_celsius: float = ..., temperature_degC: float = ...,
    temperature_fahrenheit: float = ..., temperature_degF: float = ..., pressure_pascals: float = ...,
    pressure_Pa: float = ..., pressure_hectopascals: float = ..., pressure_hPa: float = ...,
    pressure_kilopascals: float = ..., pressure_kPa: float = ..., pressure_megapascals: float = ...,
    pressure_MPa: float = ..., pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ...,
    pressure_bar: float = ..., pressure_decibars: float = ..., pressure_dbar: float = ...,
    pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Practical salinity from the conductivity of the water at its own temperature, under pressure.

    Takes electrical_conductivity [S/m] (conductivity at temperature `t`, not compensated [S/m]; the salinity must
    come out at 0 to 42); temperature [K] (temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35
    degC); pressure [Pa] (above the atmosphere, 0 to 10000 dbar).

    Needs electrical_conductivity, temperature, pressure.

    Gives practical salinity; 0 below about 2 uS/cm, where the extension would turn negative
    """
    ...

@overload
def salinity_from_conductivity(
    *,
    shown: _t.Amount = ...,
    water: _t.Amount = ...,
    coefficient: _t.Amount = ...,
    reference: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    shown_siemens_per_metre: float = ..., shown_millisiemens_per_centimetre: float = ...,
    shown_microsiemens_per_centimetre: float = ..., water_kelvins: float = ..., water_K: float = ...,
    water_celsius: float = ..., water_degC: float = ..., water_fahrenheit: float = ..., water_degF: float = ...,
    coefficient_per_kelvin: float = ..., coefficient_percent_per_kelvin: float = ..., reference_kelvins: float = ...,
    reference_K: float = ..., reference_celsius: float = ..., reference_degC: float = ...,
    reference_fahrenheit: float = ..., reference_degF: float = ...,
) -> Quantity:
    """Practical salinity from a reading with linear compensation.

    Takes shown [S/m]; water [K] (the water's own temperature); coefficient [1/K] (as set in the meter: often
    `percent_per_kelvin(2.0)`); reference [K] (to which the meter refers).

    Needs shown, water, coefficient.

    Gives practical salinity
    """
    ...

def salinity_from_conductivity_ratio(
    *,
    conductivity_ratio: Union[_t.Amount, _t.ConductivityRatioMade],
    temperature: _t.Amount = ...,
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> Quantity:
    """Practical salinity from the conductivity ratio of a salinometer or an old table.

    Takes conductivity_ratio (conductivity ratio R = C(S,t,p) / C(35,15,0); the salinity must come out at 0 to
    42); temperature [K] (temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35 degC); pressure
    [Pa] (above the atmosphere, 0 to 10000 dbar).

    Needs conductivity_ratio, temperature, pressure.

    Gives practical salinity
    """
    ...

def conductivity_ratio_from_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> Quantity:
    """Conductivity ratio of seawater under pressure, from its practical salinity.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90; converted
    to IPTS-68 inside], from freezing to 35 degC); pressure [Pa] (above the atmosphere, 0 to 10000 dbar).

    Needs practical_salinity, temperature, pressure.

    Gives conductivity ratio C(S,t,p) / C(35,15,0)
    """
    ...

@overload
def conductivity_from_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Conductivity of seawater at its own temperature, at the surface: what an uncompensated probe should read.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90; converted
    to IPTS-68 inside], from freezing to 35 degC).

    Needs practical_salinity, temperature.

    Gives conductivity at temperature `t` [S/m]
    """
    ...

@overload
def conductivity_from_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> Quantity:
    """Conductivity of seawater at its own temperature, under pressure.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90; converted
    to IPTS-68 inside], from freezing to 35 degC); pressure [Pa] (above the atmosphere, 0 to 10000 dbar).

    Needs practical_salinity, temperature, pressure.

    Gives conductivity at temperature `t` [S/m]
    """
    ...

def referred_to_25(
    *,
    electrical_conductivity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    electrical_conductivity_siemens_per_metre: float = ...,
    electrical_conductivity_millisiemens_per_centimetre: float = ...,
    electrical_conductivity_microsiemens_per_centimetre: float = ..., temperature_kelvins: float = ...,
    temperature_K: float = ..., temperature_celsius: float = ..., temperature_degC: float = ...,
    temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Conductivity referred to 25 degC along the curve of seawater.

    Takes electrical_conductivity [S/m] (conductivity at temperature `t` [S/m]); temperature [K] (temperature
    [ITS-90; converted to IPTS-68 inside], -2 to 35 degC).

    Needs electrical_conductivity, temperature.

    Gives conductivity at 25 degC
    """
    ...

@overload
def raw_conductivity(
    *,
    conductivity_at_25: Union[_t.Amount, _t.ConductivityAt25Made],
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """What the water conducts at its own temperature, from its conductivity referred to 25 degC along the curve of
    seawater.

    Takes conductivity_at_25 (conductivity at 25 degC [S/m]); temperature [K] (temperature of the water [ITS-90;
    converted to IPTS-68 inside], -2 to 35 degC).

    Needs conductivity_at_25, temperature.

    Gives conductivity at temperature `t` [S/m]
    """
    ...

@overload
def raw_conductivity(
    *,
    shown: _t.Amount = ...,
    water: _t.Amount = ...,
    coefficient: _t.Amount = ...,
    reference: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    shown_siemens_per_metre: float = ..., shown_millisiemens_per_centimetre: float = ...,
    shown_microsiemens_per_centimetre: float = ..., water_kelvins: float = ..., water_K: float = ...,
    water_celsius: float = ..., water_degC: float = ..., water_fahrenheit: float = ..., water_degF: float = ...,
    coefficient_per_kelvin: float = ..., coefficient_percent_per_kelvin: float = ..., reference_kelvins: float = ...,
    reference_K: float = ..., reference_celsius: float = ..., reference_degC: float = ...,
    reference_fahrenheit: float = ..., reference_degF: float = ...,
) -> Quantity:
    """What the water conducts at its own temperature, from a reading with linear compensation.

    Takes shown [S/m]; water [K] (the water's own temperature); coefficient [1/K] (as set in the meter: often
    `percent_per_kelvin(2.0)`); reference [K] (to which the meter refers).

    Needs shown, water, coefficient.

    Gives conductivity at the water's temperature [S/m]
    """
    ...

def linearly_compensated(
    *,
    electrical_conductivity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    coefficient: _t.Amount = ...,
    extrapolate: bool = ...,
    electrical_conductivity_siemens_per_metre: float = ...,
    electrical_conductivity_millisiemens_per_centimetre: float = ...,
    electrical_conductivity_microsiemens_per_centimetre: float = ..., temperature_kelvins: float = ...,
    temperature_K: float = ..., temperature_celsius: float = ..., temperature_degC: float = ...,
    temperature_fahrenheit: float = ..., temperature_degF: float = ..., coefficient_per_kelvin: float = ...,
    coefficient_percent_per_kelvin: float = ...,
) -> _t.CompensatedReading:
    """What a meter with linear compensation to 25 degC shows.

    Takes electrical_conductivity [S/m] (conductivity at temperature `t` [S/m]); temperature [K] (temperature of
    the water [ITS-90], -2 to 35 degC); coefficient [1/K] (a as set in the meter, 0 or 0.1 to 3 %/K).

    Needs electrical_conductivity, temperature, coefficient.

    Gives the reading, with what is needed to undo the compensation
    """
    ...

@overload
def density(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Density of seawater at the surface, from absolute salinity (TEOS-10).

    Takes absolute_salinity [g/kg] (absolute salinity S_A [g/kg], 0 to 120); temperature [K] (temperature
    [ITS-90], from freezing to 80 degC).

    Needs absolute_salinity, temperature.

    Gives density [kg/m^3]
    """
    ...

@overload
def density(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Density of seawater at the surface, from practical salinity (TEOS-10, reference composition).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], from
    freezing to 80 degC).

    Needs practical_salinity, temperature.

    Gives density [kg/m^3]
    """
    ...

def salinity_from_density(
    *,
    mass_density: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    mass_density_kilograms_per_cubic_metre: float = ..., mass_density_grams_per_litre: float = ...,
    mass_density_milligrams_per_litre: float = ..., mass_density_micrograms_per_litre: float = ...,
    mass_density_grams_per_millilitre: float = ..., mass_density_pounds_per_cubic_foot: float = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Practical salinity from a density that was measured at the surface. What a scale shows for a known volume is
    not yet a density: air bears a part of the water, 1.05 kg/m^3, which is 1.35 in salinity
    (`density_by_weighing`).

    Takes mass_density [kg/m3] (density [kg/m^3]; the salinity must come out at 0 to 42); temperature [K]
    (temperature [ITS-90], from freezing to 80 degC).

    Needs mass_density, temperature.

    Gives practical salinity
    """
    ...

def conservative_temperature_at_surface(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Conservative temperature of seawater at the surface.

    Takes absolute_salinity [g/kg] (absolute salinity S_A [g/kg], 0 to 120); temperature [K] (temperature [ITS-90]
    at the surface (for water from a depth: its potential temperature), -6 to 80 degC).

    Needs absolute_salinity, temperature.

    Gives conservative temperature
    """
    ...

def density_at_depth(
    *,
    salinity: _t.Amount = ...,
    temperature: Union[_t.Amount, _t.ConservativeTemperatureMade],
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    salinity_grams_per_kilogram: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Density of seawater under pressure (TEOS-10, 75-term polynomial).

    Takes salinity [g/kg]; temperature; pressure [Pa] (above the atmosphere).

    Needs salinity, temperature, pressure.

    Gives density [kg/m^3]
    """
    ...

def density_eos80(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Density of seawater at the surface by the one-atmosphere equation of state of 1980.

    Takes practical_salinity [psu] (practical salinity S, 0 to 42); temperature [K] (temperature [ITS-90;
    converted to IPTS-68 inside], from freezing to 40 degC).

    Needs practical_salinity, temperature.

    Gives density [kg/m^3]
    """
    ...

def pure_water_density_eos80(
    *,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Density of pure water (Standard Mean Ocean Water) at the surface, as EOS-80 has it.

    Takes temperature [K] (temperature [ITS-90; converted to IPTS-68 inside], 0 to 40 degC).

    Needs temperature.

    Gives density [kg/m^3]
    """
    ...

def evaporation_from_readings(
    *,
    volume: _t.Amount = ...,
    first: _t.Amount,
    second: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> _t.EvaporatedWater:
    """Water that evaporated between two readings of the salinity, nothing added.

    Takes volume [m3] (of the water at the first reading); first [psu]; second [psu]; temperature [K].

    Needs volume, first, second, temperature.

    Gives mass and volume of fresh water
    """
    ...

def drift(
    *,
    system: _t.DriftingSystemGiven,
    elapsed: _t.Amount = ...,
    extrapolate: bool = ...,
    elapsed_seconds: float = ..., elapsed_s: float = ..., elapsed_minutes: float = ..., elapsed_min: float = ...,
    elapsed_hours: float = ..., elapsed_h: float = ..., elapsed_days: float = ..., elapsed_d: float = ...,
    elapsed_weeks: float = ..., elapsed_wk: float = ...,
) -> _t.DriftedSystem:
    """Salinity and volume of a system after a while of evaporation and top-off.

    Takes system (volume > 0; practical salinities, 0 to 42; temperature, from freezing to 80 degC; flows >= 0);
    elapsed [s] (time >= 0, before the system is dry).

    Needs system, elapsed.

    Gives practical salinity, volume and a caution

    Caution: A float valve that sticks open can empty a whole reservoir into the system, and one that sticks shut
    lets the pumps run dry: size the reservoir so that all of it does no harm, and check the level daily by eye.
    """
    ...

def time_to_salinity(
    *,
    system: _t.DriftingSystemGiven,
    reached: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Time until a system reaches a salinity: how long the top-off may fail, or stick open.

    Takes system (volume > 0; practical salinities, 0 to 42; temperature, from freezing to 80 degC; flows >= 0);
    reached [psu] (practical salinity to be reached, 0 to 42).

    Needs system, reached.

    Gives time from the start
    """
    ...

def left_after_changes(
    *,
    part: _t.Amount = ...,
    times: int,
    part_percent: float = ...,
) -> Quantity:
    """What is left of the old water, and of what was dissolved in it, after equal changes.

    Takes part (changed each time); times.

    Needs part, times.

    Gives part left
    """
    ...

def changes_to_leave(
    *,
    part: _t.Amount = ...,
    left: _t.Amount = ...,
    part_percent: float = ..., left_percent: float = ...,
) -> _t.Single[int]:
    """How many equal changes it takes to leave no more than a part.

    Takes part (changed each time); left.

    Needs part, left.

    Gives [1] number of changes
    """
    ...

def left_after_flow(
    *,
    volume: _t.Amount = ...,
    flow: _t.Amount = ...,
    time: _t.Amount = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., flow_cubic_metres_per_second: float = ...,
    flow_cubic_metres_per_hour: float = ..., flow_litres_per_second: float = ..., flow_litres_per_minute: float = ...,
    flow_litres_per_hour: float = ..., flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ...,
    flow_us_gallons_per_hour: float = ..., flow_us_gallons_per_day: float = ...,
    flow_imperial_gallons_per_minute: float = ..., flow_imperial_gallons_per_hour: float = ...,
    flow_imperial_gallons_per_day: float = ..., flow_cubic_feet_per_second: float = ..., time_seconds: float = ...,
    time_s: float = ..., time_minutes: float = ..., time_min: float = ..., time_hours: float = ..., time_h: float = ...,
    time_days: float = ..., time_d: float = ..., time_weeks: float = ..., time_wk: float = ...,
) -> Quantity:
    """What is left of the old water after a steady flow of new water through a mixed volume.

    Takes volume [m3]; flow [m3/s]; time [s].

    Needs volume, flow, time.

    Gives part left
    """
    ...

def time_to_leave(
    *,
    volume: _t.Amount = ...,
    flow: _t.Amount = ...,
    left: _t.Amount = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., flow_cubic_metres_per_second: float = ...,
    flow_cubic_metres_per_hour: float = ..., flow_litres_per_second: float = ..., flow_litres_per_minute: float = ...,
    flow_litres_per_hour: float = ..., flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ...,
    flow_us_gallons_per_hour: float = ..., flow_us_gallons_per_day: float = ...,
    flow_imperial_gallons_per_minute: float = ..., flow_imperial_gallons_per_hour: float = ...,
    flow_imperial_gallons_per_day: float = ..., flow_cubic_feet_per_second: float = ..., left_percent: float = ...,
) -> Quantity:
    """How long a steady flow takes to leave no more than a part.

    Takes volume [m3]; flow [m3/s]; left.

    Needs volume, flow, left.

    Gives time
    """
    ...

def concentration_after(
    *,
    substance: _t.MixedSubstanceGiven,
    time: _t.Amount = ...,
    time_seconds: float = ..., time_s: float = ..., time_minutes: float = ..., time_min: float = ...,
    time_hours: float = ..., time_h: float = ..., time_days: float = ..., time_d: float = ..., time_weeks: float = ...,
    time_wk: float = ...,
) -> Quantity:
    """The concentration of a substance after some time.

    Takes substance (volume V 1e-3 L to 1e12 L; concentrations, production P, flow of new water Q and flow cleared
    by treatment >= 0; without either flow the concentration only rises); time [s] (t [s] >= 0).

    Needs substance, time.

    Gives concentration [kg/m^3]
    """
    ...

def settled_concentration(
    *,
    volume: _t.Amount = ...,
    start: Optional[_t.Amount] = ...,
    made: Optional[_t.Amount] = ...,
    new_water: Optional[_t.Amount] = ...,
    in_new_water: Optional[_t.Amount] = ...,
    cleared: Optional[_t.Amount] = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., start_kilograms_per_cubic_metre: float = ...,
    start_grams_per_litre: float = ..., start_milligrams_per_litre: float = ...,
    start_micrograms_per_litre: float = ..., start_grams_per_millilitre: float = ...,
    start_pounds_per_cubic_foot: float = ..., made_kilograms_per_second: float = ...,
    made_kilograms_per_hour: float = ..., made_kilograms_per_day: float = ..., made_grams_per_hour: float = ...,
    made_grams_per_day: float = ..., made_milligrams_per_hour: float = ..., made_pounds_per_hour: float = ...,
    new_water_cubic_metres_per_second: float = ..., new_water_cubic_metres_per_hour: float = ...,
    new_water_litres_per_second: float = ..., new_water_litres_per_minute: float = ...,
    new_water_litres_per_hour: float = ..., new_water_litres_per_day: float = ...,
    new_water_us_gallons_per_minute: float = ..., new_water_us_gallons_per_hour: float = ...,
    new_water_us_gallons_per_day: float = ..., new_water_imperial_gallons_per_minute: float = ...,
    new_water_imperial_gallons_per_hour: float = ..., new_water_imperial_gallons_per_day: float = ...,
    new_water_cubic_feet_per_second: float = ..., in_new_water_kilograms_per_cubic_metre: float = ...,
    in_new_water_grams_per_litre: float = ..., in_new_water_milligrams_per_litre: float = ...,
    in_new_water_micrograms_per_litre: float = ..., in_new_water_grams_per_millilitre: float = ...,
    in_new_water_pounds_per_cubic_foot: float = ..., cleared_cubic_metres_per_second: float = ...,
    cleared_cubic_metres_per_hour: float = ..., cleared_litres_per_second: float = ...,
    cleared_litres_per_minute: float = ..., cleared_litres_per_hour: float = ..., cleared_litres_per_day: float = ...,
    cleared_us_gallons_per_minute: float = ..., cleared_us_gallons_per_hour: float = ...,
    cleared_us_gallons_per_day: float = ..., cleared_imperial_gallons_per_minute: float = ...,
    cleared_imperial_gallons_per_hour: float = ..., cleared_imperial_gallons_per_day: float = ...,
    cleared_cubic_feet_per_second: float = ...,
) -> Quantity:
    """Where the concentration of a substance settles. With production it is never zero.

    Takes volume [m3]; start [kg/m3] (in the water at time zero); made [kg/s] (in it, or added); new_water [m3/s]
    (runs in, and as much mixed water out); in_new_water [kg/m3]; cleared [m3/s] (that treatment frees of the
    substance: its flow times the share that a pass removes).

    Needs volume.

    Gives concentration [kg/m^3]
    """
    ...

def settled_saw_tooth(
    *,
    volume: _t.Amount = ...,
    every: _t.Amount = ...,
    part: _t.Amount = ...,
    made: Optional[_t.Amount] = ...,
    in_new_water: Optional[_t.Amount] = ...,
    dose: Optional[_t.Amount] = ...,
    cleared: Optional[_t.Amount] = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., every_seconds: float = ..., every_s: float = ..., every_minutes: float = ...,
    every_min: float = ..., every_hours: float = ..., every_h: float = ..., every_days: float = ...,
    every_d: float = ..., every_weeks: float = ..., every_wk: float = ..., part_percent: float = ...,
    made_kilograms_per_second: float = ..., made_kilograms_per_hour: float = ..., made_kilograms_per_day: float = ...,
    made_grams_per_hour: float = ..., made_grams_per_day: float = ..., made_milligrams_per_hour: float = ...,
    made_pounds_per_hour: float = ..., in_new_water_kilograms_per_cubic_metre: float = ...,
    in_new_water_grams_per_litre: float = ..., in_new_water_milligrams_per_litre: float = ...,
    in_new_water_micrograms_per_litre: float = ..., in_new_water_grams_per_millilitre: float = ...,
    in_new_water_pounds_per_cubic_foot: float = ..., dose_kilograms: float = ..., dose_kg: float = ...,
    dose_grams: float = ..., dose_g: float = ..., dose_milligrams: float = ..., dose_mg: float = ...,
    dose_tonnes: float = ..., dose_t: float = ..., dose_pounds: float = ..., dose_lb: float = ...,
    dose_ounces: float = ..., dose_oz: float = ..., cleared_cubic_metres_per_second: float = ...,
    cleared_cubic_metres_per_hour: float = ..., cleared_litres_per_second: float = ...,
    cleared_litres_per_minute: float = ..., cleared_litres_per_hour: float = ..., cleared_litres_per_day: float = ...,
    cleared_us_gallons_per_minute: float = ..., cleared_us_gallons_per_hour: float = ...,
    cleared_us_gallons_per_day: float = ..., cleared_imperial_gallons_per_minute: float = ...,
    cleared_imperial_gallons_per_hour: float = ..., cleared_imperial_gallons_per_day: float = ...,
    cleared_cubic_feet_per_second: float = ...,
) -> _t.SawTooth:
    """Where a routine of water changes or doses settles, with treatment at work between them or without.

    Takes volume [m3]; every [s]; part (of the water, replaced each time); made [kg/s]; in_new_water [kg/m3]; dose
    [kg] (added at once, right after each change); cleared [m3/s] (by treatment, between the changes).

    Needs volume, every, part.

    Gives concentrations just before and just after a change [kg/m^3]
    """
    ...

@overload
def freezing_point(
    *,
    practical_salinity: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Freezing point of air-saturated seawater at the surface.

    Takes practical_salinity [psu] (practical salinity, 4 to 40).

    Needs practical_salinity.

    Gives temperature [ITS-90]
    """
    ...

@overload
def freezing_point(
    *,
    practical_salinity: _t.Amount,
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> Quantity:
    """Freezing point of air-saturated seawater under pressure.

    Takes practical_salinity [psu] (practical salinity S, 4 to 40); pressure [Pa] (p above the atmosphere [dbar],
    0 to 500).

    Needs practical_salinity, pressure.

    Gives temperature [ITS-90]
    """
    ...

def calcium_with_alkalinity(
    *,
    degrees: _t.Amount,
) -> Quantity:
    """Calcium that goes with alkalinity into calcium carbonate: 40.078/2 g for an equivalent.

    Takes degrees [dKH] (fall of the alkalinity [dKH], -1e6 to 1e6).

    Needs degrees.

    Gives fall of the calcium
    """
    ...

def lowest_level(
    *,
    start: _t.Amount,
    falls_a_day: _t.Amount,
    time: _t.Amount = ...,
    changed: Optional[_t.Amount] = ...,
    every: Optional[_t.Amount] = ...,
    time_seconds: float = ..., time_s: float = ..., time_minutes: float = ..., time_min: float = ...,
    time_hours: float = ..., time_h: float = ..., time_days: float = ..., time_d: float = ..., time_weeks: float = ...,
    time_wk: float = ..., changed_percent: float = ..., every_seconds: float = ..., every_s: float = ...,
    every_minutes: float = ..., every_min: float = ..., every_hours: float = ..., every_h: float = ...,
    every_days: float = ..., every_d: float = ..., every_weeks: float = ..., every_wk: float = ...,
) -> Quantity:
    """The lowest level within a time.

    Takes start (in any unit); falls_a_day [1/d] ([1/d] in that unit); time [s]; changed (part of the water at a
    time); every [s].

    Needs start, falls_a_day, time.

    Gives level [1], in the unit of the start; negative where it would be used up
    """
    ...

def specific_heat(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Specific heat of seawater at constant pressure, at the surface (TEOS-10).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], -6 to 80
    degC).

    Needs practical_salinity, temperature.

    Gives specific heat [J/(kg K)]; 3999 at S 35 and 25 degC, 4 % below fresh water
    """
    ...

def specific_heat_eos80(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Specific heat of seawater at the surface by EOS-80, to reproduce old work.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90; turned
    into the formula's IPTS-68 inside], 0 to 35 degC).

    Needs practical_salinity, temperature.

    Gives specific heat [J/(kg K)]
    """
    ...

def specific_heat_sharqawy(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Specific heat of seawater and brine, as desalination uses it (Sharqawy et al. 2010).

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 0 to 180); temperature [K] (temperature [ITS-90;
    turned into the formula's IPTS-68 inside], 0 to 180 degC).

    Needs absolute_salinity, temperature.

    Gives specific heat [J/(kg K)]
    """
    ...

def latent_heat(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Heat that each kilogram of vapour takes from the seawater it leaves, into air at one atmosphere (TEOS-10).

    Takes practical_salinity [psu] (practical salinity, 0 to 41.8); temperature [K] (temperature [ITS-90], 0 to 40
    degC).

    Needs practical_salinity, temperature.

    Gives latent heat [J per kg of vapour]; salt hardly changes it
    """
    ...

def latent_heat_of_water(
    *,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Heat that evaporates a kilogram of pure water at its own vapour pressure, without air.

    Takes temperature [K] (temperature [ITS-90], 0 to 200 degC).

    Needs temperature.

    Gives latent heat [J/kg]
    """
    ...

def hydrometer_reading(
    *,
    practical_salinity: _t.Amount,
    water: _t.Amount = ...,
    instrument: _t.HydrometerGiven,
    extrapolate: bool = ...,
    water_kelvins: float = ..., water_K: float = ..., water_celsius: float = ..., water_degC: float = ...,
    water_fahrenheit: float = ..., water_degF: float = ...,
) -> Quantity:
    """What a hydrometer shows in water of a known salinity.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); water [K] (temperature t of the water [ITS-90],
    from freezing to 80 degC); instrument (its scale; body b 0 to 0.001 /K (glass when not said); smallest
    division (not used here)).

    Needs practical_salinity, water, instrument.

    Gives [1] the reading, like 1.0245
    """
    ...

def salinity_from_hydrometer(
    *,
    reading: _t.Amount,
    water: _t.Amount = ...,
    instrument: _t.HydrometerGiven,
    extrapolate: bool = ...,
    water_kelvins: float = ..., water_K: float = ..., water_celsius: float = ..., water_degC: float = ...,
    water_fahrenheit: float = ..., water_degF: float = ...,
) -> Quantity:
    """Practical salinity from a hydrometer's reading at the temperature of the water.

    Takes reading (as shown, "1.0245"); water [K] (temperature of the water it floats in); instrument.

    Needs reading, water, instrument.

    Gives practical salinity; the band is half a division either way. A reading up to half a division below that
    of fresh water is 0 with its band.
    """
    ...

def specific_gravity_from_hydrometer(
    *,
    reading: _t.Amount,
    water: _t.Amount = ...,
    instrument: _t.HydrometerGiven,
    extrapolate: bool = ...,
    water_kelvins: float = ..., water_K: float = ..., water_celsius: float = ..., water_degC: float = ...,
    water_fahrenheit: float = ..., water_degF: float = ...,
) -> _t.SpecificGravityBand:
    """The true specific gravity behind a hydrometer's reading: what it would show at the temperature of its scale.

    Takes reading (as shown, "1.0245"); water [K] (temperature of the water it floats in); instrument.

    Needs reading, water, instrument.

    Gives specific gravity on the scale of the instrument; the band is half a division either way
    """
    ...

def seawater(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> _t.Liquid:
    """Seawater as it flows: TEOS-10 density and Sharqawy viscosity, at the surface.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 0 to 80
    degC).

    Needs practical_salinity, temperature.

    Gives density [kg/m^3] and dynamic viscosity [Pa s]
    """
    ...

def fresh_water(
    *,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> _t.Liquid:
    """Fresh water as it flows: seawater without salt.

    Takes temperature [K] (temperature [ITS-90], 0 to 80 degC).

    Needs temperature.

    Gives density [kg/m^3] and dynamic viscosity [Pa s]
    """
    ...

def kinematic_viscosity_of(
    *,
    density: _t.Amount = ...,
    viscosity: _t.Amount = ...,
    density_kilograms_per_cubic_metre: float = ..., density_grams_per_litre: float = ...,
    density_milligrams_per_litre: float = ..., density_micrograms_per_litre: float = ...,
    density_grams_per_millilitre: float = ..., density_pounds_per_cubic_foot: float = ...,
    viscosity_pascal_seconds: float = ..., viscosity_millipascal_seconds: float = ...,
) -> Quantity:
    """Kinematic viscosity of a liquid, as in the Reynolds number.

    Takes density [kg/m3]; viscosity [Pa s].

    Needs density, viscosity.

    Gives kinematic viscosity [m^2/s]
    """
    ...

def mass_concentration_from_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Mass of salt in a volume of seawater.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], from
    freezing to 80 degC).

    Needs practical_salinity, temperature.

    Gives mass concentration [g/L]
    """
    ...

def salinity_from_mass_concentration(
    *,
    mass_density: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    mass_density_kilograms_per_cubic_metre: float = ..., mass_density_grams_per_litre: float = ...,
    mass_density_milligrams_per_litre: float = ..., mass_density_micrograms_per_litre: float = ...,
    mass_density_grams_per_millilitre: float = ..., mass_density_pounds_per_cubic_foot: float = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Practical salinity from the mass of salt in a volume of seawater.

    Takes mass_density [kg/m3] (mass concentration [g/L]; the salinity must come out at 0 to 42); temperature [K]
    (temperature [ITS-90], from freezing to 80 degC).

    Needs mass_density, temperature.

    Gives practical salinity
    """
    ...

def oxygen_saturation(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Oxygen in water in balance with moist air at one atmosphere (Garcia and Gordon 1992).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90; turned
    into the formula's IPTS-68 inside], -2 to 40 degC).

    Needs practical_salinity, temperature.

    Gives amount of O2 per mass of water [mol/kg]
    """
    ...

def oxygen_saturation_concentration(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    absolute_pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    absolute_pressure_pascals: float = ..., absolute_pressure_Pa: float = ...,
    absolute_pressure_hectopascals: float = ..., absolute_pressure_hPa: float = ...,
    absolute_pressure_kilopascals: float = ..., absolute_pressure_kPa: float = ...,
    absolute_pressure_megapascals: float = ..., absolute_pressure_MPa: float = ...,
    absolute_pressure_gigapascals: float = ..., absolute_pressure_GPa: float = ..., absolute_pressure_bars: float = ...,
    absolute_pressure_bar: float = ..., absolute_pressure_decibars: float = ..., absolute_pressure_dbar: float = ...,
    absolute_pressure_atmospheres: float = ..., absolute_pressure_atm: float = ..., absolute_pressure_psi: float = ...,
    absolute_pressure_psf: float = ...,
) -> Quantity:
    """Oxygen in water in balance with moist air at the given pressure, as a meter shows it.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], -2 to 40
    degC); absolute_pressure [Pa] (air pressure [Pa], 50 000 to 115 000).

    Needs practical_salinity, temperature.

    Gives mass of O2 per volume [kg/m^3]
    """
    ...

def oxygen_saturation_benson_krause(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    absolute_pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    absolute_pressure_pascals: float = ..., absolute_pressure_Pa: float = ...,
    absolute_pressure_hectopascals: float = ..., absolute_pressure_hPa: float = ...,
    absolute_pressure_kilopascals: float = ..., absolute_pressure_kPa: float = ...,
    absolute_pressure_megapascals: float = ..., absolute_pressure_MPa: float = ...,
    absolute_pressure_gigapascals: float = ..., absolute_pressure_GPa: float = ..., absolute_pressure_bars: float = ...,
    absolute_pressure_bar: float = ..., absolute_pressure_decibars: float = ..., absolute_pressure_dbar: float = ...,
    absolute_pressure_atmospheres: float = ..., absolute_pressure_atm: float = ..., absolute_pressure_psi: float = ...,
    absolute_pressure_psf: float = ...,
) -> Quantity:
    """Oxygen in water in balance with moist air by the formula of the standard methods of water analysis.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90; turned
    into the formula's IPTS-68 inside], 0 to 40 degC); absolute_pressure [Pa] (air pressure [Pa], 50 000 to 115
    000).

    Needs practical_salinity, temperature.

    Gives mass of O2 per volume [kg/m^3]
    """
    ...

def oxygen_saturation_weiss(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Oxygen in water in balance with moist air at one atmosphere by Weiss, to reproduce old data.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90; turned
    into the formula's IPTS-68 inside], -2 to 40 degC).

    Needs practical_salinity, temperature.

    Gives amount of O2 per volume of water [mol/m^3], at 22.3916 L/mol
    """
    ...

def refractive_index_millard_seaver(
    *,
    salinity: _t.Amount,
    temperature: _t.Amount = ...,
    wavelength: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    wavelength_metres: float = ..., wavelength_m: float = ..., wavelength_centimetres: float = ...,
    wavelength_cm: float = ..., wavelength_millimetres: float = ..., wavelength_mm: float = ...,
    wavelength_micrometres: float = ..., wavelength_um: float = ..., wavelength_nanometres: float = ...,
    wavelength_nm: float = ..., wavelength_inches: float = ..., wavelength_in: float = ...,
    wavelength_feet: float = ..., wavelength_ft: float = ...,
) -> Quantity:
    """Refractive index of seawater at the surface by Millard and Seaver, the default of the library.

    Takes salinity [psu]; temperature [K]; wavelength [m].

    Needs salinity, temperature.

    Gives refractive index relative to air at the temperature of the water
    """
    ...

def refractive_index_quan_fry(
    *,
    salinity: _t.Amount,
    temperature: _t.Amount = ...,
    wavelength: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    wavelength_metres: float = ..., wavelength_m: float = ..., wavelength_centimetres: float = ...,
    wavelength_cm: float = ..., wavelength_millimetres: float = ..., wavelength_mm: float = ...,
    wavelength_micrometres: float = ..., wavelength_um: float = ..., wavelength_nanometres: float = ...,
    wavelength_nm: float = ..., wavelength_inches: float = ..., wavelength_in: float = ...,
    wavelength_feet: float = ..., wavelength_ft: float = ...,
) -> Quantity:
    """Refractive index of seawater at the surface by Quan and Fry: ten terms, and blue light too.

    Takes salinity [psu]; temperature [K]; wavelength [m].

    Needs salinity, temperature.

    Gives refractive index relative to air at the temperature of the water
    """
    ...

def salinity_from_refractive_index(
    *,
    index: Union[_t.Amount, _t.RefractiveIndexMade],
    temperature: _t.Amount = ...,
    wavelength: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    wavelength_metres: float = ..., wavelength_m: float = ..., wavelength_centimetres: float = ...,
    wavelength_cm: float = ..., wavelength_millimetres: float = ..., wavelength_mm: float = ...,
    wavelength_micrometres: float = ..., wavelength_um: float = ..., wavelength_nanometres: float = ...,
    wavelength_nm: float = ..., wavelength_inches: float = ..., wavelength_in: float = ...,
    wavelength_feet: float = ..., wavelength_ft: float = ...,
) -> Quantity:
    """Practical salinity from the refractive index of the water.

    Takes index; temperature [K]; wavelength [m].

    Needs index, temperature.

    Gives practical salinity
    """
    ...

def refractometer_reading(
    *,
    practical_salinity: _t.Amount,
    prism: _t.Amount = ...,
    instrument: _t.RefractometerGiven,
    extrapolate: bool = ...,
    prism_kelvins: float = ..., prism_K: float = ..., prism_celsius: float = ..., prism_degC: float = ...,
    prism_fahrenheit: float = ..., prism_degF: float = ...,
) -> Quantity:
    """What a refractometer shows for seawater of a known salinity.

    Takes practical_salinity [psu] (practical salinity S, 0 to 42); prism [K] (temperature t of the prism
    [ITS-90], 0 to 30 degC (10 to 30 with automatic compensation)); instrument (its scale and compensation; its
    smallest division (not used here)).

    Needs practical_salinity, prism, instrument.

    Gives the reading [parts per thousand of its scale]; below zero when warm water bends less than pure water at
    20 degC, where the instrument shows nothing
    """
    ...

def salinity_from_refractometer(
    *,
    reading: _t.Amount,
    prism: _t.Amount = ...,
    instrument: _t.RefractometerGiven,
    extrapolate: bool = ...,
    prism_kelvins: float = ..., prism_K: float = ..., prism_celsius: float = ..., prism_degC: float = ...,
    prism_fahrenheit: float = ..., prism_degF: float = ...,
) -> Quantity:
    """Practical salinity from the reading of a refractometer.

    Takes reading [ppt] ([ppt] as shown, parts per thousand); prism [K] (of the prism, which the drop takes on in
    half a minute); instrument.

    Needs reading, prism, instrument.

    Gives practical salinity; 0 with its band where it stands at most half a division below that of fresh water.
    The band: half a division; 0.3 g/kg for the index of sodium chloride; and, when it compensates, what a
    compensation made for pure water would miss.
    """
    ...

def looks_like_a_gravity(
    *,
    practical_salinity: _t.Amount,
) -> _t.Single[bool]:
    """Whether a number that was given as a salinity is rather a specific gravity, 0.99 to 1.10, as a hydrometer
    shows it.

    Takes practical_salinity [psu] (practical salinity as somebody wrote it).

    Needs practical_salinity.

    Gives true from 0.99 to 1.10
    """
    ...

def absolute_from_practical(
    *,
    practical_salinity: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Absolute salinity of water of reference composition, from its practical salinity.

    Takes practical_salinity [psu] (practical salinity, 0 to 42).

    Needs practical_salinity.

    Gives absolute salinity [g/kg]
    """
    ...

def practical_from_absolute(
    *,
    absolute_salinity: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ...,
) -> Quantity:
    """Practical salinity from absolute salinity, for water of reference composition.

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 0 to 42.198 (S_P 42)).

    Needs absolute_salinity.

    Gives practical salinity
    """
    ...

def salt_for_new_water(
    *,
    volume: _t.Amount = ...,
    target: _t.Amount,
    temperature: _t.Amount = ...,
    mix_yield: _t.Amount = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ..., mix_yield_percent: float = ...,
) -> _t.SaltBatch:
    """Dry mix for a volume of fresh water that is poured in: it comes to more than that volume in the end.

    Takes volume [m3] (of the fresh water); target [psu]; temperature [K] (of the water, then and after);
    mix_yield.

    Needs volume, target, temperature, mix_yield.

    Gives mass of mix; volumes and masses of the water before and after; a caution

    Caution: Add salt to water, not water to salt, in a vessel without animals, with strong flow and at room
    temperature. Hold back a tenth of the mix, let the rest dissolve until the water is clear, measure, then
    finish. Aerate and heat, usually for a day, and measure again before it meets any animal. Dry mix makes dust
    and can warm the water: wear goggles and gloves.
    """
    ...

def salt_for_finished_volume(
    *,
    volume: _t.Amount = ...,
    target: _t.Amount,
    temperature: _t.Amount = ...,
    mix_yield: _t.Amount = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ..., mix_yield_percent: float = ...,
) -> _t.SaltBatch:
    """Dry mix, and fresh water to pour it into, for a volume of finished seawater.

    Takes volume [m3] (of the seawater); target [psu]; temperature [K]; mix_yield.

    Needs volume, target, temperature, mix_yield.

    Gives mass of mix; volumes and masses of the water before and after; a caution

    Caution: Add salt to water, not water to salt, in a vessel without animals, with strong flow and at room
    temperature. Hold back a tenth of the mix, let the rest dissolve until the water is clear, measure, then
    finish. Aerate and heat, usually for a day, and measure again before it meets any animal. Dry mix makes dust
    and can warm the water: wear goggles and gloves.
    """
    ...

def salt_for_new_water_unmeasured(
    *,
    volume: _t.Amount = ...,
    target: _t.Amount,
    temperature: _t.Amount = ...,
    mix_yield: Optional[_t.Estimate] = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> _t.UnmeasuredBatch:
    """Dry mix for a volume of fresh water when the yield is known only within a band: how much to buy, and how much
    to start with.

    Takes volume [m3] (of the fresh water); target [psu]; temperature [K]; mix_yield.

    Needs volume, target, temperature.

    Gives mass of mix, the volumes and masses of the water before and after, with their bands; a caution

    Caution: Add salt to water, not water to salt, in a vessel without animals, with strong flow and at room
    temperature. Hold back a tenth of the mix, let the rest dissolve until the water is clear, measure, then
    finish. Aerate and heat, usually for a day, and measure again before it meets any animal. Dry mix makes dust
    and can warm the water: wear goggles and gloves.
    """
    ...

def measured_yield(
    *,
    mix: _t.Amount = ...,
    fresh_water: _t.Amount = ...,
    reached: _t.Amount,
    reading_error: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    mix_kilograms: float = ..., mix_kg: float = ..., mix_grams: float = ..., mix_g: float = ...,
    mix_milligrams: float = ..., mix_mg: float = ..., mix_tonnes: float = ..., mix_t: float = ...,
    mix_pounds: float = ..., mix_lb: float = ..., mix_ounces: float = ..., mix_oz: float = ...,
    fresh_water_kilograms: float = ..., fresh_water_kg: float = ..., fresh_water_grams: float = ...,
    fresh_water_g: float = ..., fresh_water_milligrams: float = ..., fresh_water_mg: float = ...,
    fresh_water_tonnes: float = ..., fresh_water_t: float = ..., fresh_water_pounds: float = ...,
    fresh_water_lb: float = ..., fresh_water_ounces: float = ..., fresh_water_oz: float = ...,
) -> Quantity:
    """The yield of a mix from a trial batch.

    Takes mix [kg] (weighed in); fresh_water [kg] (weighed in; a kilogram is a litre within half a percent);
    reached [psu] (measured when clear, with the instrument that will judge the tank); reading_error [psu] (how
    far the reading may be off; 1.0 is a good hydrometer or refractometer).

    Needs mix, fresh_water, reached.

    Gives yield with the band that the reading leaves it; never above one, for a mix is not more than all salt
    """
    ...

def specific_gravity_from_salinity(
    *,
    practical_salinity: _t.Amount,
    scale: Union[_t.GravityScaleGiven, Literal["scale_15_15", "scale_60f_60f", "scale_20_20", "scale_25_25", "scale_15_4", "scale_20_4", "scale_25_4"]],
    extrapolate: bool = ...,
) -> _t.SpecificGravity:
    """Specific gravity of seawater on a scale.

    Takes practical_salinity [psu] (practical salinity S, 0 to 42); scale (temperature of the sample t_s, from
    freezing to 80 degC, and of the reference water t_r, 0 to 80 degC).

    Needs practical_salinity, scale.

    Gives specific gravity, with its scale
    """
    ...

def salinity_from_specific_gravity(
    *,
    specific_gravity: Union[_t.SpecificGravityGiven, _t.SpecificGravityMade, _t.SpecificGravity],
    extrapolate: bool = ...,
) -> Quantity:
    """Practical salinity from a specific gravity.

    Takes specific_gravity (specific gravity on its scale; the salinity must come out at 0 to 42).

    Needs specific_gravity.

    Gives practical salinity
    """
    ...

def on_scale(
    *,
    specific_gravity: Union[_t.SpecificGravityGiven, _t.SpecificGravityMade, _t.SpecificGravity],
    scale: Union[_t.GravityScaleGiven, Literal["scale_15_15", "scale_60f_60f", "scale_20_20", "scale_25_25", "scale_15_4", "scale_20_4", "scale_25_4"]],
    extrapolate: bool = ...,
) -> _t.SpecificGravity:
    """The specific gravity of the same water on another scale.

    Takes specific_gravity (specific gravity on its scale; the salinity must come out at 0 to 42); scale (the
    other scale: sample from freezing to 80 degC, reference water 0 to 80 degC).

    Needs specific_gravity, scale.

    Gives specific gravity on `scale`
    """
    ...

@overload
def surface_tension_of(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Surface tension of clean seawater against air (IAPWS).

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 0 to 131); temperature [K] (temperature [ITS-90], 1
    to 92 degC).

    Needs absolute_salinity, temperature.

    Gives surface tension [N/m]; a film of food or fat lowers it
    """
    ...

@overload
def surface_tension_of(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Surface tension of clean seawater against air, from practical salinity (IAPWS, reference composition).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 1 to 92
    degC).

    Needs practical_salinity, temperature.

    Gives surface tension [N/m]
    """
    ...

@overload
def thermal_conductivity_of(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Thermal conductivity of seawater at one atmosphere (IAPWS).

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 0 to 120); temperature [K] (temperature [ITS-90], 0
    to 80 degC).

    Needs absolute_salinity, temperature.

    Gives thermal conductivity [W/(m K)]; 0.602 for S_P 35 at 25 degC
    """
    ...

@overload
def thermal_conductivity_of(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Thermal conductivity of seawater at one atmosphere, from practical salinity (IAPWS, reference composition).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 0 to 80
    degC).

    Needs practical_salinity, temperature.

    Gives thermal conductivity [W/(m K)]
    """
    ...

def thermal_conductivity_jamieson_tudhope(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Thermal conductivity of seawater and brine, as desalination uses it (Jamieson and Tudhope 1970).

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 0 to 160); temperature [K] (temperature [ITS-90;
    turned into the formula's IPTS-68 inside], 0 to 180 degC).

    Needs absolute_salinity, temperature.

    Gives thermal conductivity [W/(m K)]
    """
    ...

@overload
def water_activity(
    *,
    practical_salinity: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Water activity of seawater at room temperature: its vapour pressure over that of fresh water (Dickson et al.
    2007).

    Takes practical_salinity [psu] (practical salinity, 0 to 42).

    Needs practical_salinity.

    Gives water activity; 0.9813 at 35. "0.98" is a rounding of it.
    """
    ...

@overload
def water_activity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Water activity of seawater at its temperature (TEOS-10).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], -6 to 80
    degC).

    Needs practical_salinity, temperature.

    Gives water activity
    """
    ...

def water_activity_witting(
    *,
    practical_salinity: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Water activity of seawater by the oldest and shortest rule (Witting 1908), to reproduce work that used it.

    Takes practical_salinity [psu] (practical salinity, 0 to 40).

    Needs practical_salinity.

    Gives water activity
    """
    ...

@overload
def vapour_pressure(
    *,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Vapour pressure over fresh water (Hyland and Wexler): the default, and the base of building services' tables.

    Takes temperature [K] (temperature [ITS-90], 0 to 200 degC).

    Needs temperature.

    Gives saturation pressure of the vapour [Pa]
    """
    ...

@overload
def vapour_pressure(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Vapour pressure over seawater: that of fresh water by Hyland and Wexler, times the water activity of TEOS-10.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 0 to 80
    degC).

    Needs practical_salinity, temperature.

    Gives vapour pressure [Pa]
    """
    ...

def vapour_pressure_iapws(
    *,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Vapour pressure over fresh water by the industrial formulation of IAPWS.

    Takes temperature [K] (temperature [ITS-90], 0 to 373.946 degC).

    Needs temperature.

    Gives saturation pressure of the vapour [Pa]
    """
    ...

def vapour_pressure_weiss_price(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Vapour pressure over seawater by Weiss and Price, as gas chemistry uses it. An absolute formula: do not mix it
    with another one's fresh water, its own lies 0.1 % below.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90], 0 to 40
    degC).

    Needs practical_salinity, temperature.

    Gives vapour pressure [Pa]
    """
    ...

def vapour_pressure_nayar(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Vapour pressure over seawater by Nayar et al., as desalination uses it.

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 0 to 160); temperature [K] (temperature [ITS-90], 0
    to 180 degC).

    Needs absolute_salinity, temperature.

    Gives vapour pressure [Pa]
    """
    ...

def osmotic_coefficient(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Osmotic coefficient of seawater, as desalination uses it (Sharqawy et al. 2010).

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 10 to 120); temperature [K] (temperature [ITS-90], 0
    to 200 degC).

    Needs absolute_salinity, temperature.

    Gives [1] osmotic coefficient
    """
    ...

@overload
def viscosity(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Dynamic viscosity of seawater at the surface, from absolute salinity (Sharqawy et al. 2010).

    Takes absolute_salinity [g/kg] (absolute salinity S_A [g/kg], 0 to 150); temperature [K] (temperature
    [ITS-90], 0 to 180 degC).

    Needs absolute_salinity, temperature.

    Gives dynamic viscosity [Pa s]
    """
    ...

@overload
def viscosity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Dynamic viscosity of seawater at the surface, from practical salinity (Sharqawy et al. 2010, reference
    composition).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 0 to 180
    degC).

    Needs practical_salinity, temperature.

    Gives dynamic viscosity [Pa s]
    """
    ...

def viscosity_millero(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Dynamic viscosity of seawater at the surface by an independent formula (Millero 1974), to compare with the
    default.

    Takes practical_salinity [psu] (practical salinity, 0 to 40); temperature [K] (temperature [ITS-90; turned
    into the formula's IPTS-68 inside], 5 to 25 degC).

    Needs practical_salinity, temperature.

    Gives dynamic viscosity [Pa s]
    """
    ...

def density_by_weighing(
    *,
    volume: _t.Amount = ...,
    shown: _t.Amount = ...,
    volume_error: Optional[_t.Amount] = ...,
    scale_error: Optional[_t.Amount] = ...,
    air: Optional[_t.Amount] = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., shown_kilograms: float = ..., shown_kg: float = ..., shown_grams: float = ...,
    shown_g: float = ..., shown_milligrams: float = ..., shown_mg: float = ..., shown_tonnes: float = ...,
    shown_t: float = ..., shown_pounds: float = ..., shown_lb: float = ..., shown_ounces: float = ...,
    shown_oz: float = ..., volume_error_percent: float = ..., scale_error_kilograms: float = ...,
    scale_error_kg: float = ..., scale_error_grams: float = ..., scale_error_g: float = ...,
    scale_error_milligrams: float = ..., scale_error_mg: float = ..., scale_error_tonnes: float = ...,
    scale_error_t: float = ..., scale_error_pounds: float = ..., scale_error_lb: float = ...,
    scale_error_ounces: float = ..., scale_error_oz: float = ..., air_kilograms_per_cubic_metre: float = ...,
    air_grams_per_litre: float = ..., air_milligrams_per_litre: float = ..., air_micrograms_per_litre: float = ...,
    air_grams_per_millilitre: float = ..., air_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """Density of the water in a known volume, from what a scale shows.

    Takes volume [m3]; shown [kg] (full less empty, as the scale shows); volume_error; scale_error [kg] (of the
    difference); air [kg/m3].

    Needs volume, shown.

    Gives density [kg/m^3]; the band: volume and scale, both at their worst
    """
    ...

def blend_with_portion(
    *,
    waters: Sequence[_t.PortionGiven],
    extrapolate: bool = ...,
) -> _t.BlendedWater:
    """Any number of waters together.

    Takes waters (volume >= 0, not all zero; practical salinity, 0 to 42; temperature, from freezing to 80 degC).

    Needs waters.

    Gives salinity, temperature, mass and volume; no heat is lost to vessel or air
    """
    ...

def blend_with_weighed_portion(
    *,
    waters: Sequence[_t.WeighedPortionGiven],
    extrapolate: bool = ...,
) -> Quantity:
    """Salinity of any number of weighed waters together.

    Takes waters (mass >= 0, not all zero; practical salinity, 0 to 42).

    Needs waters.

    Gives practical salinity
    """
    ...

def salinity_from_conductivity_with_electrical_conductivity_and_temperature_and_pressure(
    *,
    electrical_conductivity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    electrical_conductivity_siemens_per_metre: float = ...,
    electrical_conductivity_millisiemens_per_centimetre: float = ...,
    electrical_conductivity_microsiemens_per_centimetre: float = ..., temperature_kelvins: float = ...,
    temperature_K: float = ..., temperature_celsius: float = ..., temperature_degC: float = ...,
    temperature_fahrenheit: float = ..., temperature_degF: float = ..., pressure_pascals: float = ...,
    pressure_Pa: float = ..., pressure_hectopascals: float = ..., pressure_hPa: float = ...,
    pressure_kilopascals: float = ..., pressure_kPa: float = ..., pressure_megapascals: float = ...,
    pressure_MPa: float = ..., pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ...,
    pressure_bar: float = ..., pressure_decibars: float = ..., pressure_dbar: float = ...,
    pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Practical salinity from the conductivity of the water at its own temperature, under pressure.

    Takes electrical_conductivity [S/m] (conductivity at temperature `t`, not compensated [S/m]; the salinity must
    come out at 0 to 42); temperature [K] (temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35
    degC); pressure [Pa] (above the atmosphere, 0 to 10000 dbar).

    Needs electrical_conductivity, temperature, pressure.

    Gives practical salinity; 0 below about 2 uS/cm, where the extension would turn negative
    """
    ...

def salinity_from_conductivity_with_electrical_conductivity_and_temperature(
    *,
    electrical_conductivity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    electrical_conductivity_siemens_per_metre: float = ...,
    electrical_conductivity_millisiemens_per_centimetre: float = ...,
    electrical_conductivity_microsiemens_per_centimetre: float = ..., temperature_kelvins: float = ...,
    temperature_K: float = ..., temperature_celsius: float = ..., temperature_degC: float = ...,
    temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Practical salinity from the conductivity of the water at its own temperature, at the surface.

    Takes electrical_conductivity [S/m] (conductivity at temperature `t`, not compensated [S/m]; the salinity must
    come out at 0 to 42); temperature [K] (temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35
    degC).

    Needs electrical_conductivity, temperature.

    Gives practical salinity
    """
    ...

def conductivity_from_salinity_with_pressure(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> Quantity:
    """Conductivity of seawater at its own temperature, under pressure.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90; converted
    to IPTS-68 inside], from freezing to 35 degC); pressure [Pa] (above the atmosphere, 0 to 10000 dbar).

    Needs practical_salinity, temperature, pressure.

    Gives conductivity at temperature `t` [S/m]
    """
    ...

def raw_conductivity_with_conductivity_at_25_and_temperature(
    *,
    conductivity_at_25: Union[_t.Amount, _t.ConductivityAt25Made],
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """What the water conducts at its own temperature, from its conductivity referred to 25 degC along the curve of
    seawater.

    Takes conductivity_at_25 (conductivity at 25 degC [S/m]); temperature [K] (temperature of the water [ITS-90;
    converted to IPTS-68 inside], -2 to 35 degC).

    Needs conductivity_at_25, temperature.

    Gives conductivity at temperature `t` [S/m]
    """
    ...

def salinity_from_conductivity_with_conductivity_at_25(
    *,
    conductivity_at_25: Union[_t.Amount, _t.ConductivityAt25Made],
    extrapolate: bool = ...,
) -> Quantity:
    """Practical salinity from a conductivity that was referred to 25 degC along the curve of seawater.

    Takes conductivity_at_25 (conductivity at 25 degC [S/m]; the salinity must come out at 0 to 42).

    Needs conductivity_at_25.

    Gives practical salinity
    """
    ...

def raw_conductivity_with_compensated_reading(
    *,
    shown: _t.Amount = ...,
    water: _t.Amount = ...,
    coefficient: _t.Amount = ...,
    reference: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    shown_siemens_per_metre: float = ..., shown_millisiemens_per_centimetre: float = ...,
    shown_microsiemens_per_centimetre: float = ..., water_kelvins: float = ..., water_K: float = ...,
    water_celsius: float = ..., water_degC: float = ..., water_fahrenheit: float = ..., water_degF: float = ...,
    coefficient_per_kelvin: float = ..., coefficient_percent_per_kelvin: float = ..., reference_kelvins: float = ...,
    reference_K: float = ..., reference_celsius: float = ..., reference_degC: float = ...,
    reference_fahrenheit: float = ..., reference_degF: float = ...,
) -> Quantity:
    """What the water conducts at its own temperature, from a reading with linear compensation.

    Takes shown [S/m]; water [K] (the water's own temperature); coefficient [1/K] (as set in the meter: often
    `percent_per_kelvin(2.0)`); reference [K] (to which the meter refers).

    Needs shown, water, coefficient.

    Gives conductivity at the water's temperature [S/m]
    """
    ...

def salinity_from_conductivity_with_compensated_reading(
    *,
    shown: _t.Amount = ...,
    water: _t.Amount = ...,
    coefficient: _t.Amount = ...,
    reference: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    shown_siemens_per_metre: float = ..., shown_millisiemens_per_centimetre: float = ...,
    shown_microsiemens_per_centimetre: float = ..., water_kelvins: float = ..., water_K: float = ...,
    water_celsius: float = ..., water_degC: float = ..., water_fahrenheit: float = ..., water_degF: float = ...,
    coefficient_per_kelvin: float = ..., coefficient_percent_per_kelvin: float = ..., reference_kelvins: float = ...,
    reference_K: float = ..., reference_celsius: float = ..., reference_degC: float = ...,
    reference_fahrenheit: float = ..., reference_degF: float = ...,
) -> Quantity:
    """Practical salinity from a reading with linear compensation.

    Takes shown [S/m]; water [K] (the water's own temperature); coefficient [1/K] (as set in the meter: often
    `percent_per_kelvin(2.0)`); reference [K] (to which the meter refers).

    Needs shown, water, coefficient.

    Gives practical salinity
    """
    ...

def density_with_absolute_salinity(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Density of seawater at the surface, from absolute salinity (TEOS-10).

    Takes absolute_salinity [g/kg] (absolute salinity S_A [g/kg], 0 to 120); temperature [K] (temperature
    [ITS-90], from freezing to 80 degC).

    Needs absolute_salinity, temperature.

    Gives density [kg/m^3]
    """
    ...

def density_with_practical_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Density of seawater at the surface, from practical salinity (TEOS-10, reference composition).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], from
    freezing to 80 degC).

    Needs practical_salinity, temperature.

    Gives density [kg/m^3]
    """
    ...

def freezing_point_with_pressure(
    *,
    practical_salinity: _t.Amount,
    pressure: _t.Amount = ...,
    extrapolate: bool = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> Quantity:
    """Freezing point of air-saturated seawater under pressure.

    Takes practical_salinity [psu] (practical salinity S, 4 to 40); pressure [Pa] (p above the atmosphere [dbar],
    0 to 500).

    Needs practical_salinity, pressure.

    Gives temperature [ITS-90]
    """
    ...

def surface_tension_of_with_absolute_salinity(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Surface tension of clean seawater against air (IAPWS).

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 0 to 131); temperature [K] (temperature [ITS-90], 1
    to 92 degC).

    Needs absolute_salinity, temperature.

    Gives surface tension [N/m]; a film of food or fat lowers it
    """
    ...

def surface_tension_of_with_practical_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Surface tension of clean seawater against air, from practical salinity (IAPWS, reference composition).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 1 to 92
    degC).

    Needs practical_salinity, temperature.

    Gives surface tension [N/m]
    """
    ...

def thermal_conductivity_of_with_absolute_salinity(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Thermal conductivity of seawater at one atmosphere (IAPWS).

    Takes absolute_salinity [g/kg] (absolute salinity [g/kg], 0 to 120); temperature [K] (temperature [ITS-90], 0
    to 80 degC).

    Needs absolute_salinity, temperature.

    Gives thermal conductivity [W/(m K)]; 0.602 for S_P 35 at 25 degC
    """
    ...

def thermal_conductivity_of_with_practical_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Thermal conductivity of seawater at one atmosphere, from practical salinity (IAPWS, reference composition).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 0 to 80
    degC).

    Needs practical_salinity, temperature.

    Gives thermal conductivity [W/(m K)]
    """
    ...

def water_activity_with_temperature(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Water activity of seawater at its temperature (TEOS-10).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], -6 to 80
    degC).

    Needs practical_salinity, temperature.

    Gives water activity
    """
    ...

def vapour_pressure_with_practical_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Vapour pressure over seawater: that of fresh water by Hyland and Wexler, times the water activity of TEOS-10.

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 0 to 80
    degC).

    Needs practical_salinity, temperature.

    Gives vapour pressure [Pa]
    """
    ...

def viscosity_with_absolute_salinity(
    *,
    absolute_salinity: _t.Amount = ...,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    absolute_salinity_grams_per_kilogram: float = ..., temperature_kelvins: float = ..., temperature_K: float = ...,
    temperature_celsius: float = ..., temperature_degC: float = ..., temperature_fahrenheit: float = ...,
    temperature_degF: float = ...,
) -> Quantity:
    """Dynamic viscosity of seawater at the surface, from absolute salinity (Sharqawy et al. 2010).

    Takes absolute_salinity [g/kg] (absolute salinity S_A [g/kg], 0 to 150); temperature [K] (temperature
    [ITS-90], 0 to 180 degC).

    Needs absolute_salinity, temperature.

    Gives dynamic viscosity [Pa s]
    """
    ...

def viscosity_with_practical_salinity(
    *,
    practical_salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Dynamic viscosity of seawater at the surface, from practical salinity (Sharqawy et al. 2010, reference
    composition).

    Takes practical_salinity [psu] (practical salinity, 0 to 42); temperature [K] (temperature [ITS-90], 0 to 180
    degC).

    Needs practical_salinity, temperature.

    Gives dynamic viscosity [Pa s]
    """
    ...
