# SPDX-License-Identifier: BSL-1.0
# Written by examples/python/stubs.py. Do not edit.
"""The formulas of life."""
from typing import List, Literal, Optional, Sequence, Union

from . import types as _t
from .quantity import Quantity

def share_of_tank_water(
    *,
    how: _t.DripGiven,
    time: _t.Amount = ...,
    time_seconds: float = ..., time_s: float = ..., time_minutes: float = ..., time_min: float = ...,
    time_hours: float = ..., time_h: float = ..., time_days: float = ..., time_d: float = ..., time_weeks: float = ...,
    time_wk: float = ...,
) -> Quantity:
    """How much of the animals' water is tank water after some time of dripping.

    Takes how (volume at the start > 0, flow >= 0); time [s] (t >= 0).

    Needs how, time.

    Gives share of tank water
    """
    ...

def time_to_share(
    *,
    how: _t.DripGiven,
    share: _t.Amount = ...,
    share_percent: float = ...,
) -> Quantity:
    """How long a drip takes to a share of tank water.

    Takes how (volume at the start > 0, flow > 0); share (p, 0 to below 1; 0.9 leaves a tenth of the difference).

    Needs how, share.

    Gives time [s]
    """
    ...

def mixed_at(
    *,
    step: _t.WaterStepGiven,
    share: _t.Amount = ...,
    share_percent: float = ...,
) -> _t.WaterBetween:
    """Salinity and temperature of a mixture of the two waters.

    Takes step (the two waters); share (of the water to come).

    Needs step, share.

    Gives practical salinity and temperature; heat exchanged with the room is not counted
    """
    ...

def gentle_flow(
    *,
    start: _t.Amount = ...,
    step: _t.WaterStepGiven,
    salinity_per_hour: _t.Amount,
    temperature_per_hour: Optional[_t.Amount] = ...,
    start_cubic_metres: float = ..., start_m3: float = ..., start_litres: float = ..., start_L: float = ...,
    start_millilitres: float = ..., start_mL: float = ..., start_cubic_inches: float = ..., start_in3: float = ...,
    start_cubic_feet: float = ..., start_ft3: float = ..., start_us_gallons: float = ...,
    start_imperial_gallons: float = ..., temperature_per_hour_kelvin_steps: float = ...,
    temperature_per_hour_K: float = ..., temperature_per_hour_fahrenheit_steps: float = ...,
    temperature_per_hour_degF: float = ...,
) -> Quantity:
    """The largest drip that keeps to a pace. A drip changes the water fastest when it begins.

    Takes start [m3] (water at the start); step; salinity_per_hour [1/h] ([1/h]); temperature_per_hour [K].

    Needs start, step, salinity_per_hour.

    Gives flow [m^3/s]
    """
    ...

def transfer_at(
    *,
    at_20_celsius: _t.Amount = ...,
    water: _t.Amount = ...,
    at_20_celsius_per_second: float = ..., at_20_celsius_per_hour: float = ..., at_20_celsius_per_day: float = ...,
    water_kelvins: float = ..., water_K: float = ..., water_celsius: float = ..., water_degC: float = ...,
    water_fahrenheit: float = ..., water_degF: float = ...,
) -> Quantity:
    """Temperature correction of an oxygen transfer coefficient.

    Takes at_20_celsius [1/s] (KLa at 20 degC >= 0); water [K] (temperature of the tank).

    Needs at_20_celsius, water.

    Gives KLa at that temperature [1/s]
    """
    ...

def aeration_rate(
    *,
    net: _t.Amount = ...,
    temperature: _t.Amount = ...,
    ways: Optional[Sequence[_t.AerationGiven]] = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """How fast all ways in together pull the water towards saturation.

    Takes net [m3] (net volume of water); temperature [K]; ways (of an array that outlives the call).

    Needs net, temperature.

    Gives first-order rate [1/s]
    """
    ...

def flow_cleared(
    *,
    loops: Sequence[_t.LoopGiven],
) -> Quantity:
    """Water that the loops together free of a substance in a time.

    Takes loops (flow 0 to 1e10 L/h and efficiency 0 to 1, each; none clear nothing).

    Needs loops.

    Gives flow [m^3/s]
    """
    ...

def turnover_rate(
    *,
    net: _t.Amount = ...,
    loops: Optional[Sequence[_t.LoopGiven]] = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
) -> Quantity:
    """How often the loops pass the whole tank's volume.

    Takes net [m3] (net volume of water); loops (of an array that outlives the call).

    Needs net.

    Gives turnovers per time [1/s]
    """
    ...

def removal_rate(
    *,
    net: _t.Amount = ...,
    loops: Optional[Sequence[_t.LoopGiven]] = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
) -> Quantity:
    """The rate at which the loops together take a substance out of a well-mixed tank.

    Takes net [m3] (net volume of water); loops (of an array that outlives the call).

    Needs net.

    Gives first-order rate [1/s]
    """
    ...

def share_removed(
    *,
    turnovers: _t.Amount,
    efficiency: Optional[_t.Amount] = ...,
    efficiency_percent: float = ...,
) -> Quantity:
    """The share of a substance that a number of turnovers takes out. Six turnovers of a perfect filter reach 99.75
    %.

    Takes turnovers (n >= 0); efficiency (share removed in one pass, 0 to 1).

    Needs turnovers.

    Gives share removed
    """
    ...

def turnovers_for(
    *,
    removed: _t.Amount = ...,
    efficiency: Optional[_t.Amount] = ...,
    removed_percent: float = ..., efficiency_percent: float = ...,
) -> Quantity:
    """How many turnovers it takes to remove a share.

    Takes removed (share to remove, 0 <= p < 1); efficiency (share removed in one pass, more than 0 to 1).

    Needs removed.

    Gives [1] turnovers
    """
    ...

def time_to_remove(
    *,
    tank: _t.CirculationGiven,
    removed: _t.Amount = ...,
    removed_percent: float = ...,
) -> _t.Clearing:
    """How long the loops need to take a share of a dose or a spill out of the water.

    Takes tank (net volume 1e-3 L to 1e10 L; loops with flow 0 to 1e10 L/h and efficiency 0 to 1); removed (share
    to remove, 0 <= p < 1).

    Needs tank, removed.

    Gives time [s] and the turnovers in it, with the caution; no time where nothing is removed
    """
    ...

def treatment_flow_for(
    *,
    made: _t.Amount = ...,
    level: _t.Amount = ...,
    efficiency: Optional[_t.Amount] = ...,
    made_kilograms_per_second: float = ..., made_kilograms_per_hour: float = ..., made_kilograms_per_day: float = ...,
    made_grams_per_hour: float = ..., made_grams_per_day: float = ..., made_milligrams_per_hour: float = ...,
    made_pounds_per_hour: float = ..., level_kilograms_per_cubic_metre: float = ..., level_grams_per_litre: float = ...,
    level_milligrams_per_litre: float = ..., level_micrograms_per_litre: float = ...,
    level_grams_per_millilitre: float = ..., level_pounds_per_cubic_foot: float = ..., efficiency_percent: float = ...,
) -> Quantity:
    """The flow through a treatment that keeps a steady production at a level (no water change).

    Takes made [kg/s]; level [kg/m3] (to stay at in the tank); efficiency (share removed in one pass).

    Needs made, level.

    Gives flow [m^3/s]
    """
    ...

def foam_contact_of(
    *,
    water_in_column: _t.Amount = ...,
    flow: _t.Amount = ...,
    net: _t.Amount = ...,
    salinity: _t.Amount,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    water_in_column_cubic_metres: float = ..., water_in_column_m3: float = ..., water_in_column_litres: float = ...,
    water_in_column_L: float = ..., water_in_column_millilitres: float = ..., water_in_column_mL: float = ...,
    water_in_column_cubic_inches: float = ..., water_in_column_in3: float = ...,
    water_in_column_cubic_feet: float = ..., water_in_column_ft3: float = ..., water_in_column_us_gallons: float = ...,
    water_in_column_imperial_gallons: float = ..., flow_cubic_metres_per_second: float = ...,
    flow_cubic_metres_per_hour: float = ..., flow_litres_per_second: float = ..., flow_litres_per_minute: float = ...,
    flow_litres_per_hour: float = ..., flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ...,
    flow_us_gallons_per_hour: float = ..., flow_us_gallons_per_day: float = ...,
    flow_imperial_gallons_per_minute: float = ..., flow_imperial_gallons_per_hour: float = ...,
    flow_imperial_gallons_per_day: float = ..., flow_cubic_feet_per_second: float = ..., net_cubic_metres: float = ...,
    net_m3: float = ..., net_litres: float = ..., net_L: float = ..., net_millilitres: float = ..., net_mL: float = ...,
    net_cubic_inches: float = ..., net_in3: float = ..., net_cubic_feet: float = ..., net_ft3: float = ...,
    net_us_gallons: float = ..., net_imperial_gallons: float = ..., temperature_kelvins: float = ...,
    temperature_K: float = ..., temperature_celsius: float = ..., temperature_degC: float = ...,
    temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> _t.FoamContact:
    """Contact time and passes of a foam fractionator, beside the rules of the trade.

    Takes water_in_column [m3] (water volume of the contact column); flow [m3/s] (through the column); net [m3]
    (net volume of the whole system); salinity [psu]; temperature [K].

    Needs water_in_column, flow, net, salinity, temperature.

    Gives contact time [s], passes [1/s], two verdicts with the rule they rest on, and the caution
    """
    ...

def bubble_surface(
    *,
    gas_share: _t.Amount = ...,
    bubble: _t.Amount = ...,
    gas_share_percent: float = ..., bubble_metres: float = ..., bubble_m: float = ..., bubble_centimetres: float = ...,
    bubble_cm: float = ..., bubble_millimetres: float = ..., bubble_mm: float = ..., bubble_micrometres: float = ...,
    bubble_um: float = ..., bubble_nanometres: float = ..., bubble_nm: float = ..., bubble_inches: float = ...,
    bubble_in: float = ..., bubble_feet: float = ..., bubble_ft: float = ...,
) -> Quantity:
    """Surface of the bubbles in a volume of water and air.

    Takes gas_share (share of gas in the volume, 0 <= phi < 1); bubble [m] (diameter of the bubbles > 0).

    Needs gas_share, bubble.

    Gives surface per volume [1/m]
    """
    ...

def capacity_for_meals(
    *,
    meals: Sequence[_t.RegularMealGiven],
    level: _t.TotalAmmoniaGiven,
    net: _t.Amount = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
) -> Quantity:
    """What a filter must be able to take at a level, so that the ammonia of meals stays at or below it.

    Takes meals (nitrogen in the mean of the days, >= 0; time between meals, more than 0 to ten years; of an
    array); level (total ammonia S to stay below, 1e-12 to 1e12 mg/L); net [m3] (net volume V > 0).

    Needs meals, level, net.

    Gives nitrogen per time that the filter must take at that level
    """
    ...

def highest_ammonia(
    *,
    meals: Optional[Sequence[_t.RegularMealGiven]] = ...,
    film: _t.Amount = ...,
    net: _t.Amount = ...,
    temperature: _t.Amount = ...,
    of: Optional[Union[_t.FilmGiven, Literal["seawater_film", "freshwater_film"]]] = ...,
    extrapolate: bool = ...,
    film_square_metres: float = ..., film_m2: float = ..., film_square_centimetres: float = ..., film_cm2: float = ...,
    film_square_millimetres: float = ..., film_mm2: float = ..., film_square_inches: float = ..., film_in2: float = ...,
    film_square_feet: float = ..., film_ft2: float = ..., net_cubic_metres: float = ..., net_m3: float = ...,
    net_litres: float = ..., net_L: float = ..., net_millilitres: float = ..., net_mL: float = ...,
    net_cubic_inches: float = ..., net_in3: float = ..., net_cubic_feet: float = ..., net_ft3: float = ...,
    net_us_gallons: float = ..., net_imperial_gallons: float = ..., temperature_kelvins: float = ...,
    temperature_K: float = ..., temperature_celsius: float = ..., temperature_degC: float = ...,
    temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Union[_t.TotalAmmonia, _t.Single[None]]:
    """The highest level that ammonia comes back to, meal after meal.

    Takes meals (of an array that outlives the call); film [m2] (of central film that does its work; scaled for
    better and poorer ones); net [m3]; temperature [K]; of.

    Needs film, net, temperature.

    Gives level; empty where the film cannot take the mean of the meals at any level
    """
    ...

def nitrification_rate(
    *,
    ammonia: _t.TotalAmmoniaGiven,
    temperature: _t.Amount = ...,
    film: Optional[Union[_t.FilmGiven, Literal["seawater_film", "freshwater_film"]]] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Nitrogen that a square metre of mature film oxidises.

    Takes ammonia; temperature [K]; film.

    Needs ammonia, temperature.

    Gives nitrogen per area and time [kg/(m^2 s)] with its band
    """
    ...

def capacity_of(
    *,
    surfaces: Sequence[_t.FilterSurfaceGiven],
    film_water: _t.FilmWaterGiven,
    extrapolate: bool = ...,
) -> _t.FilterCapacity:
    """Nitrogen that all surfaces together oxidise: as far as they are seeded today, and when mature.

    Takes surfaces (areas >= 0, share seeded 0 to 1, each); film_water (ammonia >= 0, temperature 10 to 30 degC,
    film (seawater by default)).

    Needs surfaces, film_water.

    Gives nitrogen per time, today and mature, with bands and the caution
    """
    ...

def film_area_for(
    *,
    load: Union[_t.Amount, _t.NitrogenLoadMade],
    film_water: _t.FilmWaterGiven,
    extrapolate: bool = ...,
) -> Quantity:
    """Area of mature film that a load needs.

    Takes load (nitrogen >= 0); film_water (ammonia level to hold > 0, temperature 10 to 30 degC, film (seawater
    by default)).

    Needs load, film_water.

    Gives area [m^2] with its band; divide by the protected surface of a medium for its volume
    """
    ...

def steady_ammonia(
    *,
    load: Union[_t.Amount, _t.NitrogenLoadMade],
    surfaces: Optional[Sequence[_t.FilterSurfaceGiven]] = ...,
    temperature: _t.Amount = ...,
    film: Optional[Union[_t.FilmGiven, Literal["seawater_film", "freshwater_film"]]] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> _t.SettledAmmonia:
    """The ammonia level at which a filter, as it is today, keeps up with a load.

    Takes load; surfaces (of an array that outlives the call); temperature [K]; film.

    Needs load, temperature.

    Gives level with the best, the central and the poorest film, empty where no level balances the load; the share
    of the capacity; and the caution
    """
    ...

def grain_surface(
    *,
    grain: _t.Amount = ...,
    pores: _t.Amount = ...,
    grain_metres: float = ..., grain_m: float = ..., grain_centimetres: float = ..., grain_cm: float = ...,
    grain_millimetres: float = ..., grain_mm: float = ..., grain_micrometres: float = ..., grain_um: float = ...,
    grain_nanometres: float = ..., grain_nm: float = ..., grain_inches: float = ..., grain_in: float = ...,
    grain_feet: float = ..., grain_ft: float = ..., pores_percent: float = ...,
) -> Quantity:
    """Surface of the grains in a volume of sand or gravel. Only the upper, breathing layer nitrifies.

    Takes grain [m] (diameter of the grains d > 0); pores (porosity n, 0 to below 1).

    Needs grain, pores.

    Gives surface per volume of the bed [1/m]
    """
    ...

def rock_surface(
    *,
    dry: _t.Amount = ...,
    piece: _t.Amount = ...,
    density: _t.Amount = ...,
    roughness: Optional[_t.Amount] = ...,
    dry_kilograms: float = ..., dry_kg: float = ..., dry_grams: float = ..., dry_g: float = ...,
    dry_milligrams: float = ..., dry_mg: float = ..., dry_tonnes: float = ..., dry_t: float = ...,
    dry_pounds: float = ..., dry_lb: float = ..., dry_ounces: float = ..., dry_oz: float = ...,
    piece_metres: float = ..., piece_m: float = ..., piece_centimetres: float = ..., piece_cm: float = ...,
    piece_millimetres: float = ..., piece_mm: float = ..., piece_micrometres: float = ..., piece_um: float = ...,
    piece_nanometres: float = ..., piece_nm: float = ..., piece_inches: float = ..., piece_in: float = ...,
    piece_feet: float = ..., piece_ft: float = ..., density_kilograms_per_cubic_metre: float = ...,
    density_grams_per_litre: float = ..., density_milligrams_per_litre: float = ...,
    density_micrograms_per_litre: float = ..., density_grams_per_millilitre: float = ...,
    density_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """Wet outside of rock, which carries its film; the pores inside breathe too little to be counted.

    Takes dry [kg]; piece [m] (mean diameter of its pieces); density [kg/m3] (dry, of a piece with its pores);
    roughness (its wet outside over that of a ball as large).

    Needs dry, piece, density.

    Gives area [m^2]
    """
    ...

def slowed(
    *,
    group: Union[_t.NitrifierGiven, _t.NitrifierMade, _t.Nitrifier, Literal["ammonia_oxidisers_2014", "nitrite_oxidisers_2014"]],
    share: _t.Amount = ...,
    share_percent: float = ...,
) -> _t.Nitrifier:
    """The same bacteria growing at a share of the rate: the sea, a low pH, a guess to try.

    Takes group (bacteria); share (of the growth rate, more than 0 to 1).

    Needs group, share.

    Gives bacteria
    """
    ...

def net_growth(
    *,
    group: Union[_t.NitrifierGiven, _t.NitrifierMade, _t.Nitrifier, Literal["ammonia_oxidisers_2014", "nitrite_oxidisers_2014"]],
    growth_conditions: _t.GrowthConditionsGiven,
    extrapolate: bool = ...,
) -> Quantity:
    """Net growth rate of a group of bacteria: growth less decay. Its inverse is the time they must stay in the
    system.

    Takes group (bacteria); growth_conditions (nitrogen >= 0, oxygen >= 0, temperature 5 to 35 degC).

    Needs group, growth_conditions.

    Gives rate [1/s]; negative where they starve
    """
    ...

def bacteria_on(
    *,
    load: Union[_t.Amount, _t.NitrogenLoadMade],
    temperature: _t.Amount = ...,
    share_moved: Optional[_t.Amount] = ...,
    ammonia_oxidisers: Optional[Union[_t.NitrifierGiven, _t.NitrifierMade, _t.Nitrifier, Literal["ammonia_oxidisers_2014", "nitrite_oxidisers_2014"]]] = ...,
    nitrite_oxidisers: Optional[Union[_t.NitrifierGiven, _t.NitrifierMade, _t.Nitrifier, Literal["ammonia_oxidisers_2014", "nitrite_oxidisers_2014"]]] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    share_moved_percent: float = ...,
) -> _t.Bacteria:
    """The bacteria on a working filter, or on the share of it that is moved wet and unharmed.

    Takes load (the nitrogen it has oxidised day by day); temperature [K]; share_moved; ammonia_oxidisers;
    nitrite_oxidisers.

    Needs load, temperature.

    Gives dry organic mass of each group [kg]
    """
    ...

def nitrogen_from_feed(
    *,
    food: _t.Amount = ...,
    protein: _t.Amount = ...,
    food_kilograms_per_second: float = ..., food_kilograms_per_hour: float = ..., food_kilograms_per_day: float = ...,
    food_grams_per_hour: float = ..., food_grams_per_day: float = ..., food_milligrams_per_hour: float = ...,
    food_pounds_per_hour: float = ..., protein_percent: float = ...,
) -> _t.FeedNitrogen:
    """Nitrogen from feed: as ammonia by the rule for pellet-fed bony fish, and all of it as the bound.

    Takes food [kg/s]; protein.

    Needs food, protein.

    Gives ammonia nitrogen per time with its band, the bound, and the caution
    """
    ...

def needs_of_nitrification(
    *,
    load: Union[_t.Amount, _t.NitrogenLoadMade],
) -> _t.NitrificationNeeds:
    """Oxygen and alkalinity that nitrification of a load uses, carbon dioxide and cells that it makes.

    Takes load (nitrogen oxidised, >= 0).

    Needs load.

    Gives bands from the equation with cell growth to the one without; the latter, the safe side, is central
    """
    ...

def time_alkalinity_lasts(
    *,
    load: Union[_t.Amount, _t.NitrogenLoadMade],
    net: _t.Amount = ...,
    now: _t.AlkalinityGiven,
    lowest: _t.AlkalinityGiven,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
) -> _t.AlkalinityCountdown:
    """How long the alkalinity lasts under a load, when nothing replaces it.

    Takes load; net [m3] (net volume of water); now; lowest (that may be left).

    Needs load, net, now, lowest.

    Gives fall in a day, time [s], and the caution; `water::alkalinity_to_add` says what puts it back
    """
    ...

def oxygen_after(
    *,
    course: _t.OxygenCourseGiven,
    time: _t.Amount = ...,
    time_seconds: float = ..., time_s: float = ..., time_minutes: float = ..., time_min: float = ...,
    time_hours: float = ..., time_h: float = ..., time_days: float = ..., time_d: float = ..., time_weeks: float = ...,
    time_wk: float = ...,
) -> Quantity:
    """The oxygen level of a tank after some time.

    Takes course (net volume > 0, use >= 0, saturation > 0, aeration >= 0; start >= 0, above saturation is
    allowed); time [s] (t >= 0).

    Needs course, time.

    Gives level [kg/m^3]; zero once all is used (the formula's line would go below)
    """
    ...

def steady_oxygen(
    *,
    net: _t.Amount = ...,
    use: _t.Amount = ...,
    saturation: _t.Amount = ...,
    aeration: Optional[_t.Amount] = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
    use_kilograms_per_second: float = ..., use_kilograms_per_hour: float = ..., use_kilograms_per_day: float = ...,
    use_grams_per_hour: float = ..., use_grams_per_day: float = ..., use_milligrams_per_hour: float = ...,
    use_pounds_per_hour: float = ..., saturation_kilograms_per_cubic_metre: float = ...,
    saturation_grams_per_litre: float = ..., saturation_milligrams_per_litre: float = ...,
    saturation_micrograms_per_litre: float = ..., saturation_grams_per_millilitre: float = ...,
    saturation_pounds_per_cubic_foot: float = ..., aeration_per_second: float = ..., aeration_per_hour: float = ...,
    aeration_per_day: float = ...,
) -> Union[Quantity, _t.Single[None]]:
    """The level at which the way in and the use balance.

    Takes net [m3] (net volume of water); use [kg/s] (animals + filter + the rest); saturation [kg/m3] (From
    water::oxygen_saturation_concentration: it is for this salinity already, so do not correct it again); aeration
    [1/s] (from aeration_rate; zero for no way in).

    Needs net, use, saturation.

    Gives level [kg/m^3]; empty when the use is more than can come in: the oxygen then runs out
    """
    ...

def time_to_oxygen_limit(
    *,
    course: _t.OxygenCourseGiven,
    limit: Optional[_t.Amount] = ...,
    limit_kilograms_per_cubic_metre: float = ..., limit_grams_per_litre: float = ...,
    limit_milligrams_per_litre: float = ..., limit_micrograms_per_litre: float = ...,
    limit_grams_per_millilitre: float = ..., limit_pounds_per_cubic_foot: float = ...,
) -> _t.OxygenCountdown:
    """How long the oxygen lasts in a power cut.

    Takes course (the tank as it is during the cut; start >= 0); limit [kg/m3] (level >= 0).

    Needs course.

    Gives time [s] to the limit (zero when the start is already below), half of it to plan for, and the caution
    """
    ...

def aeration_to_keep(
    *,
    tank: _t.OxygenBalanceGiven,
    level: _t.Amount = ...,
    level_kilograms_per_cubic_metre: float = ..., level_grams_per_litre: float = ...,
    level_milligrams_per_litre: float = ..., level_micrograms_per_litre: float = ...,
    level_grams_per_millilitre: float = ..., level_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """How strong the (battery) air must be to hold a level for as long as it runs.

    Takes tank (net volume > 0, use >= 0, saturation > 0 (its own aeration is not counted)); level [kg/m3] (to
    hold, 0 <= C < saturation).

    Needs tank, level.

    Gives first-order rate [1/s] that all ways in must have together, at the tank's temperature
    """
    ...

def time_to_aerate(
    *,
    course: _t.OxygenCourseGiven,
    level: _t.Amount = ...,
    level_kilograms_per_cubic_metre: float = ..., level_grams_per_litre: float = ...,
    level_milligrams_per_litre: float = ..., level_micrograms_per_litre: float = ...,
    level_grams_per_millilitre: float = ..., level_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """How long aeration takes to bring the water of a tank up to a level, with nothing using oxygen meanwhile.

    Takes course (saturation > 0, aeration > 0, start 0 <= C0 <= C; the tank's use is not counted); level [kg/m3]
    (to reach, below saturation).

    Needs course, level.

    Gives time [s]
    """
    ...

def oxygen_transfer(
    *,
    tank: _t.OxygenBalanceGiven,
    level: _t.Amount = ...,
    level_kilograms_per_cubic_metre: float = ..., level_grams_per_litre: float = ...,
    level_milligrams_per_litre: float = ..., level_micrograms_per_litre: float = ...,
    level_grams_per_millilitre: float = ..., level_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """Oxygen that the ways in bring at a level.

    Takes tank (net volume > 0, saturation > 0, aeration >= 0); level [kg/m3] (of the water >= 0; above saturation
    the result is negative (oxygen leaves)).

    Needs tank, level.

    Gives oxygen per time [kg/s]
    """
    ...

def oxygen_use(
    *,
    group: _t.AnimalsGiven,
    water: _t.Amount = ...,
    water_kelvins: float = ..., water_K: float = ..., water_celsius: float = ..., water_degC: float = ...,
    water_fahrenheit: float = ..., water_degF: float = ...,
) -> _t.OxygenDemand:
    """Oxygen that animals use, from a measured rate of their kind.

    Takes group (masses > 0, count >= 0, measured rate >= 0, exponent 0 to 2, q10 1 to 10, activity >= 0); water
    [K] (temperature of the tank).

    Needs group, water.

    Gives oxygen per time [kg/s], the specific rate, and the caution
    """
    ...

def oxygen_for_feed(
    *,
    dry_feed: _t.Amount = ...,
    dry_feed_kilograms_per_second: float = ..., dry_feed_kilograms_per_hour: float = ...,
    dry_feed_kilograms_per_day: float = ..., dry_feed_grams_per_hour: float = ..., dry_feed_grams_per_day: float = ...,
    dry_feed_milligrams_per_hour: float = ..., dry_feed_pounds_per_hour: float = ...,
) -> Quantity:
    """Oxygen that a whole tank uses for its feed: animals, filter and the bacteria that live on waste.

    Takes dry_feed [kg/s] (dry feed per time >= 0).

    Needs dry_feed.

    Gives oxygen per time [kg/s]
    """
    ...

def carbon_dioxide_for(
    *,
    oxygen: _t.Amount = ...,
    respiratory_quotient: Optional[_t.Amount] = ...,
    oxygen_kilograms_per_second: float = ..., oxygen_kilograms_per_hour: float = ...,
    oxygen_kilograms_per_day: float = ..., oxygen_grams_per_hour: float = ..., oxygen_grams_per_day: float = ...,
    oxygen_milligrams_per_hour: float = ..., oxygen_pounds_per_hour: float = ...,
) -> Quantity:
    """Carbon dioxide breathed out for the oxygen used.

    Takes oxygen [kg/s] (oxygen used per time >= 0); respiratory_quotient [mol/mol] ([mol/mol] moles of CO2 for a
    mole of O2; 0.7 (fat) to 1.0 (carbohydrate)).

    Needs oxygen.

    Gives carbon dioxide per time [kg/s]
    """
    ...

def swim_clearance(
    *,
    animal: _t.Amount = ...,
    run: _t.Amount = ...,
    width: _t.Amount = ...,
    speed: _t.Amount = ...,
    run_multiple: Optional[_t.Amount] = ...,
    width_multiple: Optional[_t.Amount] = ...,
    animal_metres: float = ..., animal_m: float = ..., animal_centimetres: float = ..., animal_cm: float = ...,
    animal_millimetres: float = ..., animal_mm: float = ..., animal_micrometres: float = ..., animal_um: float = ...,
    animal_nanometres: float = ..., animal_nm: float = ..., animal_inches: float = ..., animal_in: float = ...,
    animal_feet: float = ..., animal_ft: float = ..., run_metres: float = ..., run_m: float = ...,
    run_centimetres: float = ..., run_cm: float = ..., run_millimetres: float = ..., run_mm: float = ...,
    run_micrometres: float = ..., run_um: float = ..., run_nanometres: float = ..., run_nm: float = ...,
    run_inches: float = ..., run_in: float = ..., run_feet: float = ..., run_ft: float = ..., width_metres: float = ...,
    width_m: float = ..., width_centimetres: float = ..., width_cm: float = ..., width_millimetres: float = ...,
    width_mm: float = ..., width_micrometres: float = ..., width_um: float = ..., width_nanometres: float = ...,
    width_nm: float = ..., width_inches: float = ..., width_in: float = ..., width_feet: float = ...,
    width_ft: float = ..., speed_metres_per_second: float = ..., speed_centimetres_per_second: float = ...,
    speed_millimetres_per_day: float = ..., speed_feet_per_second: float = ...,
) -> _t.Clearance:
    """Room to swim in body lengths, and the time to cross it.

    Takes animal [m] (total length of the adult); run [m] (longest straight run free of obstacles); width [m]
    (clear width there); speed [m/s] (routine speed of the species); run_multiple; width_multiple.

    Needs animal, run, width, speed.

    Gives ratios, crossing time [s], what the multiples ask for [m], two verdicts with their rule, the caution
    """
    ...

def body_lengths_per_time(
    *,
    speed: _t.Amount = ...,
    animal: _t.Amount = ...,
    speed_metres_per_second: float = ..., speed_centimetres_per_second: float = ...,
    speed_millimetres_per_day: float = ..., speed_feet_per_second: float = ..., animal_metres: float = ...,
    animal_m: float = ..., animal_centimetres: float = ..., animal_cm: float = ..., animal_millimetres: float = ...,
    animal_mm: float = ..., animal_micrometres: float = ..., animal_um: float = ..., animal_nanometres: float = ...,
    animal_nm: float = ..., animal_inches: float = ..., animal_in: float = ..., animal_feet: float = ...,
    animal_ft: float = ...,
) -> Quantity:
    """A speed in body lengths a second.

    Takes speed [m/s] (U > 0); animal [m] (total length L > 0).

    Needs speed, animal.

    Gives body lengths per second [1/s]
    """
    ...

def escape_turn_radius(
    *,
    animal: _t.Amount = ...,
    animal_metres: float = ..., animal_m: float = ..., animal_centimetres: float = ..., animal_cm: float = ...,
    animal_millimetres: float = ..., animal_mm: float = ..., animal_micrometres: float = ..., animal_um: float = ...,
    animal_nanometres: float = ..., animal_nm: float = ..., animal_inches: float = ..., animal_in: float = ...,
    animal_feet: float = ..., animal_ft: float = ...,
) -> Quantity:
    """The tightest turn of an escaping neonate reef shark: what bodies can do, not what is good for them.

    Takes animal [m] (total length L > 0).

    Needs animal.

    Gives radius [m]; the central value is the middle of the range
    """
    ...

def simulate_start_up(
    *,
    label: Optional[str] = ...,
    net: _t.Amount = ...,
    temperature: _t.Amount = ...,
    oxygen: _t.Amount = ...,
    ammonia: Optional[_t.TotalAmmoniaGiven] = ...,
    nitrite: Optional[_t.NitriteLevelGiven] = ...,
    nitrate: Optional[_t.NitrateLevelGiven] = ...,
    seedings: Optional[Sequence[_t.SeedingGiven]] = ...,
    loads: Optional[Sequence[_t.LoadStepGiven]] = ...,
    doses: Optional[Sequence[_t.AmmoniaDoseGiven]] = ...,
    water_changes: Optional[Sequence[_t.WaterChangeGiven]] = ...,
    horizon: Optional[_t.Amount] = ...,
    every: Optional[_t.Amount] = ...,
    ammonia_limit: Optional[_t.TotalAmmoniaGiven] = ...,
    nitrite_limit: Optional[_t.NitriteLevelGiven] = ...,
    ammonia_oxidisers: Optional[Union[_t.NitrifierGiven, _t.NitrifierMade, _t.Nitrifier, Literal["ammonia_oxidisers_2014", "nitrite_oxidisers_2014"]]] = ...,
    nitrite_oxidisers: Optional[Union[_t.NitrifierGiven, _t.NitrifierMade, _t.Nitrifier, Literal["ammonia_oxidisers_2014", "nitrite_oxidisers_2014"]]] = ...,
    extrapolate: bool = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    oxygen_kilograms_per_cubic_metre: float = ..., oxygen_grams_per_litre: float = ...,
    oxygen_milligrams_per_litre: float = ..., oxygen_micrograms_per_litre: float = ...,
    oxygen_grams_per_millilitre: float = ..., oxygen_pounds_per_cubic_foot: float = ..., horizon_seconds: float = ...,
    horizon_s: float = ..., horizon_minutes: float = ..., horizon_min: float = ..., horizon_hours: float = ...,
    horizon_h: float = ..., horizon_days: float = ..., horizon_d: float = ..., horizon_weeks: float = ...,
    horizon_wk: float = ..., every_seconds: float = ..., every_s: float = ..., every_minutes: float = ...,
    every_min: float = ..., every_hours: float = ..., every_h: float = ..., every_days: float = ...,
    every_d: float = ..., every_weeks: float = ..., every_wk: float = ...,
) -> _t.StartUpResult:
    """The course of a start-up.

    Takes label; net [m3] (net volume of water in the whole system); temperature [K]; oxygen [kg/m3] (in the water
    at the filter); ammonia; nitrite; nitrate; seedings; loads; doses; water_changes; horizon [s]; every [s]
    (interval of the samples); ammonia_limit; nitrite_limit; ammonia_oxidisers; nitrite_oxidisers.

    Needs net, temperature, oxygen.

    Gives summary with peaks, the time from which the levels stay below their limits, the nitrogen ledger and the
    caution; samples at equal intervals, from the start to the horizon
    """
    ...

def compare_start_ups(
    *,
    plans: Sequence[_t.StartUpGiven],
    extrapolate: bool = ...,
) -> _t.Single[List[_t.StartUpSummaryParts]]:
    """Several ways to start, simulated and put in order: the lowest peak of ammonia first.

    Takes plans (the ways, each with its label).

    Needs plans.

    Gives their summaries, ordered by the peak of ammonia; equal ones stay in the order given
    """
    ...

def ammonia_of_step(
    *,
    before: Union[_t.Amount, _t.NitrogenLoadMade],
    after: Union[_t.Amount, _t.NitrogenLoadMade],
    growth: _t.Amount = ...,
    net: _t.Amount = ...,
    growth_per_second: float = ..., growth_per_hour: float = ..., growth_per_day: float = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
) -> _t.StepAnswer:
    """Ammonia that a step leaves over, and how long.

    Takes before (that the filter keeps up with); after; growth [1/s] (of the filter, net); net [m3].

    Needs before, after, growth, net.

    Gives the highest ammonia beyond what the filter settles at, and the time until it takes all
    """
    ...

def stocking_dates(
    *,
    whole: Union[_t.Amount, _t.NitrogenLoadMade],
    start: _t.Amount = ...,
    step: _t.Amount = ...,
    rest: _t.Amount = ...,
    growth: _t.Amount = ...,
    net: _t.Amount = ...,
    below: _t.TotalAmmoniaGiven,
    start_percent: float = ..., step_percent: float = ..., rest_seconds: float = ..., rest_s: float = ...,
    rest_minutes: float = ..., rest_min: float = ..., rest_hours: float = ..., rest_h: float = ...,
    rest_days: float = ..., rest_d: float = ..., rest_weeks: float = ..., rest_wk: float = ...,
    growth_per_second: float = ..., growth_per_hour: float = ..., growth_per_day: float = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
) -> _t.Single[List[_t.StockingDateParts]]:
    """Dates on which food or animals may be added, so that no step leaves more ammonia over than a level.

    Takes whole; start (of the whole, that the filter keeps up with on the first day); step (of the whole, that a
    step adds at most); rest [s] (least time from one step to the next); growth [1/s]; net [m3]; below (what a
    step may leave over).

    Needs whole, start, step, rest, growth, net, below.

    Gives the steps from the first day on, the last with the whole; at most 400
    """
    ...

def match_waters(
    *,
    bag: _t.AmmoniaSampleGiven,
    tank: _t.AmmoniaSampleGiven,
    limits: Optional[_t.MatchLimitsGiven] = ...,
    extrapolate: bool = ...,
) -> _t.WaterMatch:
    """Does the water that the animals are in match the tank's, and what of its ammonia when its pH follows the
    tank's?

    Takes bag; tank; limits.

    Needs bag, tank.

    Gives differences, free ammonia at both pH values, verdicts and the caution
    """
    ...

def balance_of_moved_rock(
    *,
    proven: Union[_t.Amount, _t.NitrogenLoadMade],
    share_moved: _t.Amount = ...,
    new_load: Union[_t.Amount, _t.NitrogenLoadMade],
    net: _t.Amount = ...,
    share_moved_percent: float = ..., net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ...,
    net_L: float = ..., net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ...,
    net_in3: float = ..., net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ...,
    net_imperial_gallons: float = ...,
) -> _t.RockBalance:
    """Does moved rock carry the load that moves with it, and how fast does ammonia rise if not?

    Takes proven (load that the whole of it has kept up with); share_moved (share of it that moves, wet and
    without delay); new_load (load of the animals that go with it); net [m3] (net volume of the new system).

    Needs proven, share_moved, new_load, net.

    Gives loads [nitrogen per time], the share needed, the rise of ammonia in a day, and the caution
    """
    ...

def bag_after(
    *,
    bag: _t.ClosedBagGiven,
    time: _t.Amount = ...,
    opened: _t.Amount,
    extrapolate: bool = ...,
    time_seconds: float = ..., time_s: float = ..., time_minutes: float = ..., time_min: float = ...,
    time_hours: float = ..., time_h: float = ..., time_days: float = ..., time_d: float = ..., time_weeks: float = ...,
    time_wk: float = ...,
) -> _t.BagState:
    """A closed bag after some hours.

    Takes bag (water 1 mL to 1000 m^3; gas 0 to 1000 m^3 with oxygen 0 to 1; oxygen used 0 to 1 kg/h; salinity 19
    to 40; temperature 2 to 35 degC; pH and alkalinity at first; quotient 0.1 to 2); time [s] (closed, 0 to 10 000
    h); opened (pH that opening leads to, total scale: that of the tank).

    Needs bag, time, opened.

    Gives what is in gas and water
    """
    ...

def oxygen_lasts(
    *,
    bag: _t.ClosedBagGiven,
    lowest: _t.Amount = ...,
    extrapolate: bool = ...,
    lowest_kilograms_per_cubic_metre: float = ..., lowest_grams_per_litre: float = ...,
    lowest_milligrams_per_litre: float = ..., lowest_micrograms_per_litre: float = ...,
    lowest_grams_per_millilitre: float = ..., lowest_pounds_per_cubic_foot: float = ...,
) -> Union[Quantity, _t.Single[None]]:
    """How long the oxygen of a closed bag lasts.

    Takes bag (as for `bag_after`); lowest [kg/m3] (dissolved oxygen that is still enough, 0 to 100 mg/L).

    Needs bag, lowest.

    Gives time; 0 where there is less at first; empty where nothing is used
    """
    ...

def ammonia_with_changes(
    *,
    net: _t.Amount = ...,
    load: Union[_t.Amount, _t.NitrogenLoadMade],
    part: _t.Amount = ...,
    every: _t.Amount = ...,
    lasts: _t.Amount = ...,
    largest_meal: Optional[_t.Amount] = ...,
    removal: Optional[_t.Amount] = ...,
    net_cubic_metres: float = ..., net_m3: float = ..., net_litres: float = ..., net_L: float = ...,
    net_millilitres: float = ..., net_mL: float = ..., net_cubic_inches: float = ..., net_in3: float = ...,
    net_cubic_feet: float = ..., net_ft3: float = ..., net_us_gallons: float = ..., net_imperial_gallons: float = ...,
    part_percent: float = ..., every_seconds: float = ..., every_s: float = ..., every_minutes: float = ...,
    every_min: float = ..., every_hours: float = ..., every_h: float = ..., every_days: float = ...,
    every_d: float = ..., every_weeks: float = ..., every_wk: float = ..., lasts_seconds: float = ...,
    lasts_s: float = ..., lasts_minutes: float = ..., lasts_min: float = ..., lasts_hours: float = ...,
    lasts_h: float = ..., lasts_days: float = ..., lasts_d: float = ..., lasts_weeks: float = ...,
    lasts_wk: float = ..., largest_meal_kilograms: float = ..., largest_meal_kg: float = ...,
    largest_meal_grams: float = ..., largest_meal_g: float = ..., largest_meal_milligrams: float = ...,
    largest_meal_mg: float = ..., largest_meal_tonnes: float = ..., largest_meal_t: float = ...,
    largest_meal_pounds: float = ..., largest_meal_lb: float = ..., largest_meal_ounces: float = ...,
    largest_meal_oz: float = ..., removal_per_second: float = ..., removal_per_hour: float = ...,
    removal_per_day: float = ...,
) -> _t.ChangedTankCourse:
    """The highest ammonia between water changes.

    Takes net [m3]; load (in the mean of the days); part (of the water that a change takes out); every [s] (from
    one change to the next); lasts [s]; largest_meal [kg] (nitrogen of meals that come at once, rarer than daily,
    beside the mean); removal [1/s] (of a filter that takes in proportion to the level).

    Needs net, load, part, every, lasts.

    Gives the highest total ammonia; the number of changes, one of which may fall on the last moment; the water
    for them
    """
    ...
