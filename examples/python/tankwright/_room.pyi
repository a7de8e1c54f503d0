# SPDX-License-Identifier: BSL-1.0
# Written by examples/python/stubs.py. Do not edit.
"""The formulas of room."""
from typing import List, Literal, Optional, Sequence, Union, overload

from . import types as _t
from .quantity import Quantity

def temperature_factor(
    *,
    transmittance: _t.Amount = ...,
    inside: _t.Amount = ...,
    outside: _t.Amount = ...,
    surface_resistance: Optional[_t.Amount] = ...,
    transmittance_watts_per_square_metre_kelvin: float = ..., inside_kelvins: float = ..., inside_K: float = ...,
    inside_celsius: float = ..., inside_degC: float = ..., inside_fahrenheit: float = ..., inside_degF: float = ...,
    outside_kelvins: float = ..., outside_K: float = ..., outside_celsius: float = ..., outside_degC: float = ...,
    outside_fahrenheit: float = ..., outside_degF: float = ...,
    surface_resistance_square_metre_kelvins_per_watt: float = ...,
) -> Quantity:
    """Temperature factor of a plane pane or wall: how much of the way from outdoors to the room its inside face has.

    Takes transmittance [W/(m2 K)] (U-value, surface resistances included); inside [K]; outside [K];
    surface_resistance [m2 K/W].

    Needs transmittance, inside, outside.

    Gives temperature factor, 0 to 1
    """
    ...

def surface_temperature(
    *,
    transmittance: _t.Amount = ...,
    inside: _t.Amount = ...,
    outside: _t.Amount = ...,
    surface_resistance: Optional[_t.Amount] = ...,
    transmittance_watts_per_square_metre_kelvin: float = ..., inside_kelvins: float = ..., inside_K: float = ...,
    inside_celsius: float = ..., inside_degC: float = ..., inside_fahrenheit: float = ..., inside_degF: float = ...,
    outside_kelvins: float = ..., outside_K: float = ..., outside_celsius: float = ..., outside_degC: float = ...,
    outside_fahrenheit: float = ..., outside_degF: float = ...,
    surface_resistance_square_metre_kelvins_per_watt: float = ...,
) -> Quantity:
    """Temperature of the inside face of a plane pane or wall.

    Takes transmittance [W/(m2 K)] (U-value, surface resistances included); inside [K]; outside [K];
    surface_resistance [m2 K/W].

    Needs transmittance, inside, outside.

    Gives temperature
    """
    ...

def judge_surface(
    *,
    building_element: _t.BuildingElementGiven,
    air: Union[_t.AirGiven, _t.AirMade, _t.Air],
    extrapolate: bool = ...,
) -> _t.SurfaceVerdict:
    """Whether the inside of a pane or wall drips, or can grow mould, in the air of the room.

    Takes building_element (the pane or wall, as for surface_temperature; its inside temperature is that of the
    air); air (the air of the room: relative humidity above 0 to 1).

    Needs building_element, air.

    Gives surface temperature, dew point, margin, surface humidity, verdicts
    """
    ...

def highest_humidity(
    *,
    building_element: _t.BuildingElementGiven,
    surface: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    surface_percent: float = ...,
) -> Quantity:
    """The highest humidity the room may have before its pane or wall reaches a surface humidity: 100 % drips, 80 %
    grows mould.

    Takes building_element (the pane or wall, as for surface_temperature); surface (humidity allowed at the
    surface, above 0 to 1: dripping_humidity or mould_humidity).

    Needs building_element.

    Gives relative humidity of the room, at most 1
    """
    ...

def lowest_surface_temperature(
    *,
    air: Union[_t.AirGiven, _t.AirMade, _t.Air],
    surface: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    surface_percent: float = ...,
) -> Quantity:
    """The lowest temperature a surface may have in the air of the room for a given surface humidity.

    Takes air (the air of the room: relative humidity above 0 to 1); surface (humidity allowed at the surface,
    above 0 to 1: dripping_humidity or mould_humidity).

    Needs air.

    Gives temperature
    """
    ...

def lowest_temperature_factor(
    *,
    air: Union[_t.AirGiven, _t.AirMade, _t.Air],
    outside: _t.Amount = ...,
    surface: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    outside_kelvins: float = ..., outside_K: float = ..., outside_celsius: float = ..., outside_degC: float = ...,
    outside_fahrenheit: float = ..., outside_degF: float = ..., surface_percent: float = ...,
) -> Quantity:
    """The lowest temperature factor a pane or wall may have in the air of the room for a given surface humidity.

    Takes air (the air of the room: relative humidity above 0 to 1); outside [K] (temperature outdoors, below that
    of the room); surface (humidity allowed at the surface, above 0 to 1: dripping_humidity or mould_humidity).

    Needs air, outside.

    Gives temperature factor; a plane element has it with U = (1 - f) / R_si
    """
    ...

def dehumidifier_output(
    *,
    machine: _t.DehumidifierGiven,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ...,
) -> _t.DehumidifierDuty:
    """What a dehumidifier removes, draws and gives off in the air of a room, running without a pause.

    Takes machine (capacity at its rating point [kg/s] 1e-8 to 1e4; electrical power there [W] 0 to 1e9; rating
    point 18 to 35 degC, 0.4 to 1); temperature [K] (temperature of the room, -30 to 45 degC); humidity (relative
    humidity of the room, 0 to 1).

    Needs machine, temperature, humidity.

    Gives water removed [kg/s], electricity [W], heat to the room [W]; nothing is removed where the air is too
    cold or too dry
    """
    ...

def evaporation(
    *,
    water: _t.TankWaterGiven,
    air: Union[_t.AirGiven, _t.AirMade, _t.Air],
    surfaces: Optional[Sequence[_t.WetSurfaceGiven]] = ...,
    extrapolate: bool = ...,
) -> _t.EvaporationEstimate:
    """Evaporation from the open surfaces of a system, with its band.

    Takes water; air; surfaces.

    Needs water, air.

    Gives mass per time [kg/s], in all and for each surface; negative, and so marked, where vapour condenses
    """
    ...

def about(
    *,
    law: _t.EvaporationLaw,
) -> _t.EvaporationLawData:
    """The data of one correlation.

    Takes law (which correlation).

    Needs law.

    Gives its name, formula, source and ranges
    """
    ...

def vapour_diffusivity(
    *,
    temperature: _t.Amount = ...,
    total: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    total_pascals: float = ..., total_Pa: float = ..., total_hectopascals: float = ..., total_hPa: float = ...,
    total_kilopascals: float = ..., total_kPa: float = ..., total_megapascals: float = ..., total_MPa: float = ...,
    total_gigapascals: float = ..., total_GPa: float = ..., total_bars: float = ..., total_bar: float = ...,
    total_decibars: float = ..., total_dbar: float = ..., total_atmospheres: float = ..., total_atm: float = ...,
    total_psi: float = ..., total_psf: float = ...,
) -> Quantity:
    """Diffusivity of water vapour in air.

    Takes temperature [K] (temperature [ITS-90], 7 to 177 degC (280 to 450 K)); total [Pa] (pressure of the air
    [Pa], 22.6 to 177.7 kPa).

    Needs temperature, total.

    Gives diffusivity [m^2/s]
    """
    ...

def evaporation_rate(
    *,
    law: _t.EvaporationLaw,
    open_water: _t.OpenWaterGiven,
    extrapolate: bool = ...,
) -> Quantity:
    """Evaporation from a square metre of open water by one correlation of the literature.

    Takes law (which correlation); open_water (water: surface temperature -2 to 100 degC, practical salinity 0 to
    42; air at the tank; air speed [m/s] >= 0; the data of the correlation may be narrower).

    Needs law, open_water.

    Gives evaporation [kg/(m^2 s)]; negative where vapour of the air condenses on colder water
    """
    ...

def heat_balance(
    *,
    water: _t.TankWaterGiven,
    air: Union[_t.AirGiven, _t.AirMade, _t.Air],
    surfaces: Optional[Sequence[_t.WetSurfaceGiven]] = ...,
    walls: Optional[Sequence[_t.TankWallGiven]] = ...,
    sources: Optional[Sequence[_t.HeatSourceGiven]] = ...,
    surroundings: Optional[_t.Amount] = ...,
    make_up: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
) -> _t.HeatBudget:
    """Heat that the tank loses and gains, with the band of the evaporation.

    Takes water; air; surfaces; walls; sources; surroundings (that the open water sees; the air's when left out);
    make_up (of the top-off water; the air's when left out).

    Needs water, air.

    Gives parts and sum [W]
    """
    ...

def heater_for(
    *,
    tank_heat: _t.TankHeatGiven,
    margin: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
) -> _t.HeatEquipment:
    """The heater that holds the temperature in the coldest room that is to be expected.

    Takes tank_heat (the tank in the coldest, driest room: as for heat_balance; leave out lights that are off at
    night); margin (over the high estimate, 1 to 3).

    Needs tank_heat.

    Gives power [W]; not needed where pumps and lights are enough
    """
    ...

def chiller_for(
    *,
    tank_heat: _t.TankHeatGiven,
    hottest_day: Union[_t.AirGiven, _t.AirMade, _t.Air],
    duty: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    duty_percent: float = ...,
) -> _t.HeatEquipment:
    """The chiller that holds the temperature in the hottest room that is to be expected. The room gets its heat
    back, and the chiller's electricity.

    Takes tank_heat (the tank, as for heat_balance; its own air is not used); hottest_day (the air of the room on
    the hottest, most humid day that is to be expected: not a summer's mean); duty (part of the time that the
    chiller is to run, 0.01 to 1).

    Needs tank_heat, hottest_day.

    Gives cooling power [W]; not needed where evaporation is enough
    """
    ...

def heat_capacity_of(
    *,
    tank_water: _t.TankWaterGiven,
    volume: _t.Amount = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ...,
) -> Quantity:
    """Heat that a volume of the tank's water takes up for each kelvin.

    Takes tank_water (practical salinity 0 to 42; temperature -6 to 80 degC); volume [m3] (of water V [m^3] 1e-6
    to 1e9, without rock and sand).

    Needs tank_water, volume.

    Gives heat capacity [J/K]
    """
    ...

def heat_capacity_of_solids(
    *,
    displaced: _t.Estimate,
) -> Quantity:
    """Heat that solids in the water take up for each kelvin.

    Takes displaced (volume V [m^3] >= 0 of water that sand, rock and gear take the place of).

    Needs displaced.

    Gives heat capacity [J/K], from quartz to carbonate
    """
    ...

def heat_capacity_of_sheet(
    *,
    area: _t.Amount = ...,
    thickness: _t.Amount = ...,
    heat: _t.Amount,
    area_square_metres: float = ..., area_m2: float = ..., area_square_centimetres: float = ..., area_cm2: float = ...,
    area_square_millimetres: float = ..., area_mm2: float = ..., area_square_inches: float = ..., area_in2: float = ...,
    area_square_feet: float = ..., area_ft2: float = ..., thickness_metres: float = ..., thickness_m: float = ...,
    thickness_centimetres: float = ..., thickness_cm: float = ..., thickness_millimetres: float = ...,
    thickness_mm: float = ..., thickness_micrometres: float = ..., thickness_um: float = ...,
    thickness_nanometres: float = ..., thickness_nm: float = ..., thickness_inches: float = ...,
    thickness_in: float = ..., thickness_feet: float = ..., thickness_ft: float = ...,
) -> Quantity:
    """Heat that a sheet takes up for each kelvin of the water on its inside: across it the temperature falls in a
    straight line to that of its outside, so half of it counts.

    Takes area [m2]; thickness [m]; heat.

    Needs area, thickness, heat.

    Gives heat capacity [J/K]
    """
    ...

def heater_stuck_on(
    *,
    tank: _t.TankHeatGiven,
    heat_capacity: _t.Amount = ...,
    heater: _t.Amount = ...,
    highest: _t.Amount = ...,
    within: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    heat_capacity_joules_per_kelvin: float = ..., heater_watts: float = ..., heater_W: float = ...,
    heater_kilowatts: float = ..., heater_kW: float = ..., heater_horsepower: float = ..., heater_hp: float = ...,
    heater_btu_per_hour: float = ..., highest_kelvins: float = ..., highest_K: float = ...,
    highest_celsius: float = ..., highest_degC: float = ..., highest_fahrenheit: float = ..., highest_degF: float = ...,
    within_seconds: float = ..., within_s: float = ..., within_minutes: float = ..., within_min: float = ...,
    within_hours: float = ..., within_h: float = ..., within_days: float = ..., within_d: float = ...,
    within_weeks: float = ..., within_wk: float = ...,
) -> _t.StuckHeaterResult:
    """The course of a tank whose heater sticks on.

    Takes tank (at the temperature it is held at; its sources are what else runs); heat_capacity [J/K]; heater
    [W]; highest [K] (that the animals stand); within [s] (how far to look ahead).

    Needs tank, heat_capacity, heater, highest.

    Gives times to the highest temperature (plan on the soonest), where it ends, the largest rise in an hour and
    in a day
    """
    ...

def humidity_balance(
    *,
    room: _t.VentilatedRoomGiven,
    water: _t.TankWaterGiven,
    surfaces: Optional[Sequence[_t.WetSurfaceGiven]] = ...,
    sources: Optional[Sequence[_t.MoistureSourceGiven]] = ...,
    dehumidifier: Optional[_t.ControlledDehumidifierGiven] = ...,
    extrapolate: bool = ...,
) -> _t.RoomHumidity:
    """The humidity at which a tank room settles, with the band of the evaporation.

    Takes room; water; surfaces; sources; dehumidifier.

    Needs room, water.

    Gives air and all flows [kg/s]: the middle; low with little evaporation and the best machine of its label;
    high with much evaporation and the poorest
    """
    ...

def dehumidifier_for(
    *,
    tank_room: _t.TankRoomGiven,
    target: _t.Amount = ...,
    rated_at: Optional[Union[_t.RatingPointGiven, Literal["rated_80F_60", "rated_73F_60", "rated_65F_60", "rated_30C_80"]]] = ...,
    extrapolate: bool = ...,
    target_percent: float = ...,
) -> _t.DehumidifierSize:
    """The dehumidifier that holds a humidity in a tank room.

    Takes tank_room (the room, as for humidity_balance; a dehumidifier already in it is left out); target
    (humidity to hold, 0 to 1); rated_at (air for which the label's capacity holds).

    Needs tank_room, target.

    Gives load and rated capacity [kg/s; a kilogram is a litre], heat to the room [W]
    """
    ...

def ventilation_for(
    *,
    tank_room: _t.TankRoomGiven,
    target: _t.Amount = ...,
    extrapolate: bool = ...,
    target_percent: float = ...,
) -> _t.VentilationSize:
    """The ventilation with outdoor air that holds a humidity in a tank room.

    Takes tank_room (the room, as for humidity_balance; its own air changes and dehumidifier are left out); target
    (humidity to hold, more than 0 to 1).

    Needs tank_room, target.

    Gives air changes [1/s], outdoor air [m^3/s], dry air [kg/s]
    """
    ...

def humidity_course(
    *,
    room: _t.TankRoomGiven,
    start: _t.Amount = ...,
    time: _t.Amount = ...,
    step: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    start_percent: float = ..., time_seconds: float = ..., time_s: float = ..., time_minutes: float = ...,
    time_min: float = ..., time_hours: float = ..., time_h: float = ..., time_days: float = ..., time_d: float = ...,
    time_weeks: float = ..., time_wk: float = ..., step_seconds: float = ..., step_s: float = ...,
    step_minutes: float = ..., step_min: float = ..., step_hours: float = ..., step_h: float = ...,
    step_days: float = ..., step_d: float = ..., step_weeks: float = ..., step_wk: float = ...,
) -> _t.Single[List[_t.HumidityPointParts]]:
    """The humidity of a tank room from a given start, at the central evaporation.

    Takes room; start; time [s]; step [s] (between the points of the answer).

    Needs room, start, time.

    Gives points from the start to the end, `step` apart, with the totals of all flows
    """
    ...

def light_at_depth(
    *,
    height: _t.Amount = ...,
    depth: _t.Amount = ...,
    through_a_metre: Optional[_t.Amount] = ...,
    index: Optional[Union[_t.Amount, _t.RefractiveIndexMade]] = ...,
    height_metres: float = ..., height_m: float = ..., height_centimetres: float = ..., height_cm: float = ...,
    height_millimetres: float = ..., height_mm: float = ..., height_micrometres: float = ..., height_um: float = ...,
    height_nanometres: float = ..., height_nm: float = ..., height_inches: float = ..., height_in: float = ...,
    height_feet: float = ..., height_ft: float = ..., depth_metres: float = ..., depth_m: float = ...,
    depth_centimetres: float = ..., depth_cm: float = ..., depth_millimetres: float = ..., depth_mm: float = ...,
    depth_micrometres: float = ..., depth_um: float = ..., depth_nanometres: float = ..., depth_nm: float = ...,
    depth_inches: float = ..., depth_in: float = ..., depth_feet: float = ..., depth_ft: float = ...,
    through_a_metre_percent: float = ...,
) -> Quantity:
    """Light straight below a lamp at a depth, of that at the surface below it.

    Takes height [m] (of the lamp over the water); depth [m] (below the surface); through_a_metre; index (of the
    water).

    Needs height, depth.

    Gives share of the light behind the surface
    """
    ...

def lit_width(
    *,
    height: _t.Amount = ...,
    beam: _t.Amount = ...,
    height_metres: float = ..., height_m: float = ..., height_centimetres: float = ..., height_cm: float = ...,
    height_millimetres: float = ..., height_mm: float = ..., height_micrometres: float = ..., height_um: float = ...,
    height_nanometres: float = ..., height_nm: float = ..., height_inches: float = ..., height_in: float = ...,
    height_feet: float = ..., height_ft: float = ..., beam_radians: float = ..., beam_rad: float = ...,
    beam_degrees: float = ..., beam_deg: float = ...,
) -> Quantity:
    """Width that the beam of a lamp lights at the water.

    Takes height [m] (h of the lamp over the water, 1 mm to 100 m); beam [rad] (full angle of its beam, 0.001 rad
    to below half a turn).

    Needs height, beam.

    Gives width [m]
    """
    ...

def pressure_at_altitude(
    *,
    altitude: _t.Amount = ...,
    extrapolate: bool = ...,
    altitude_metres: float = ..., altitude_m: float = ..., altitude_centimetres: float = ..., altitude_cm: float = ...,
    altitude_millimetres: float = ..., altitude_mm: float = ..., altitude_micrometres: float = ...,
    altitude_um: float = ..., altitude_nanometres: float = ..., altitude_nm: float = ..., altitude_inches: float = ...,
    altitude_in: float = ..., altitude_feet: float = ..., altitude_ft: float = ...,
) -> Quantity:
    """Pressure of the standard atmosphere at an altitude.

    Takes altitude [m] (height above the sea z [m], -5000 to 11000).

    Needs altitude.

    Gives absolute pressure [Pa]
    """
    ...

def vapour_pressure(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Partial pressure of the water vapour in air.

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives vapour pressure [Pa]
    """
    ...

def humidity_ratio_of(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Mass of water vapour per mass of dry air.

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives humidity ratio [kg/kg of dry air]
    """
    ...

def humidity_ratio_from_vapour_pressure(
    *,
    vapour: _t.Amount = ...,
    total: _t.Amount = ...,
    extrapolate: bool = ...,
    vapour_pascals: float = ..., vapour_Pa: float = ..., vapour_hectopascals: float = ..., vapour_hPa: float = ...,
    vapour_kilopascals: float = ..., vapour_kPa: float = ..., vapour_megapascals: float = ..., vapour_MPa: float = ...,
    vapour_gigapascals: float = ..., vapour_GPa: float = ..., vapour_bars: float = ..., vapour_bar: float = ...,
    vapour_decibars: float = ..., vapour_dbar: float = ..., vapour_atmospheres: float = ..., vapour_atm: float = ...,
    vapour_psi: float = ..., vapour_psf: float = ..., total_pascals: float = ..., total_Pa: float = ...,
    total_hectopascals: float = ..., total_hPa: float = ..., total_kilopascals: float = ..., total_kPa: float = ...,
    total_megapascals: float = ..., total_MPa: float = ..., total_gigapascals: float = ..., total_GPa: float = ...,
    total_bars: float = ..., total_bar: float = ..., total_decibars: float = ..., total_dbar: float = ...,
    total_atmospheres: float = ..., total_atm: float = ..., total_psi: float = ..., total_psf: float = ...,
) -> Quantity:
    """Mass of water vapour per mass of dry air, from the vapour pressure.

    Takes vapour [Pa] (partial pressure of the vapour p [Pa] >= 0, below P); total [Pa] (pressure of the air P
    [Pa], 22.6 to 177.7 kPa).

    Needs vapour, total.

    Gives humidity ratio [kg/kg of dry air]
    """
    ...

def absolute_humidity(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Mass of water vapour per volume of air ("absolute humidity").

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives vapour per volume [kg/m^3]
    """
    ...

def dew_point(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Temperature at which this air, cooled, begins to lose water: the dew point, or the frost point below 0.01
    degC.

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives temperature [ITS-90]
    """
    ...

def enthalpy(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Heat content of moist air per kilogram of DRY air, from dry air and liquid water at 0 degC.

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives enthalpy [J/kg of dry air]
    """
    ...

def specific_volume_of(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Volume of moist air per kilogram of DRY air.

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives specific volume [m^3/kg of dry air]
    """
    ...

def moist_air_density(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Density of moist air, vapour included: what makes it rise or sink.

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives density [kg/m^3]
    """
    ...

def dry_air_density(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Mass of the dry air alone in a cubic metre of moist air: what goes with a humidity ratio, and what Shah's
    formula means.

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives dry-air density [kg/m^3]
    """
    ...

@overload
def air_from(
    *,
    temperature: _t.Amount = ...,
    ratio: Union[_t.HumidityRatioGiven, _t.HumidityRatioMade],
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> _t.Air:
    """The air of a given temperature and humidity ratio.

    Takes temperature [K]; ratio; pressure [Pa].

    Needs temperature, ratio.

    Gives air with its relative humidity
    """
    ...

@overload
def air_from(
    *,
    temperature: _t.Amount = ...,
    dew_point: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    dew_point_kelvins: float = ..., dew_point_K: float = ..., dew_point_celsius: float = ...,
    dew_point_degC: float = ..., dew_point_fahrenheit: float = ..., dew_point_degF: float = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> _t.Air:
    """The air of a given temperature and dew (or frost) point.

    Takes temperature [K]; dew_point [K]; pressure [Pa].

    Needs temperature, dew_point.

    Gives air with its relative humidity
    """
    ...

@overload
def air_from(
    *,
    temperature: _t.Amount = ...,
    wet_bulb: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    wet_bulb_kelvins: float = ..., wet_bulb_K: float = ..., wet_bulb_celsius: float = ..., wet_bulb_degC: float = ...,
    wet_bulb_fahrenheit: float = ..., wet_bulb_degF: float = ..., pressure_pascals: float = ...,
    pressure_Pa: float = ..., pressure_hectopascals: float = ..., pressure_hPa: float = ...,
    pressure_kilopascals: float = ..., pressure_kPa: float = ..., pressure_megapascals: float = ...,
    pressure_MPa: float = ..., pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ...,
    pressure_bar: float = ..., pressure_decibars: float = ..., pressure_dbar: float = ...,
    pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> _t.Air:
    """The air of a psychrometer's two readings.

    Takes temperature [K]; wet_bulb [K]; pressure [Pa].

    Needs temperature, wet_bulb.

    Gives air with its relative humidity
    """
    ...

def running_cost(
    *,
    heat: _t.Estimate,
    price: _t.Amount,
    performance: Optional[_t.Amount] = ...,
    on: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    on_percent: float = ...,
) -> _t.RunningCostResult:
    """Energy and cost of a load.

    Takes heat (a heat balance; what is negative costs nothing); price; performance (heat per electricity: 1 for a
    heater, 3 for a heat pump); on (part of the time).

    Needs heat, price.

    Gives electricity [J] a day, cost a day and a year in the currency of the price
    """
    ...

def running_costs(
    *,
    devices: Sequence[_t.RunningDeviceGiven],
    price: _t.Amount,
) -> _t.RunningCostsResult:
    """Energy and cost of devices, each by itself and in all.

    Takes devices (each draws [W] -1e9 to 1e9, negative parts count as 0; part of the time 0 to 1); price (per
    kWh, 0 to 1e9, in the currency of the bill).

    Needs devices, price.

    Gives electricity [J] and cost of each device and of all, a day and a year
    """
    ...

def saturation_pressure(
    *,
    temperature: _t.Amount = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
) -> Quantity:
    """Saturation pressure of water vapour: over ice below 0.01 degC, over liquid water above.

    Takes temperature [K] (temperature [ITS-90], -100 to 200 degC).

    Needs temperature.

    Gives saturation pressure [Pa]
    """
    ...

def saturation_temperature(
    *,
    vapour: _t.Amount = ...,
    extrapolate: bool = ...,
    vapour_pascals: float = ..., vapour_Pa: float = ..., vapour_hectopascals: float = ..., vapour_hPa: float = ...,
    vapour_kilopascals: float = ..., vapour_kPa: float = ..., vapour_megapascals: float = ..., vapour_MPa: float = ...,
    vapour_gigapascals: float = ..., vapour_GPa: float = ..., vapour_bars: float = ..., vapour_bar: float = ...,
    vapour_decibars: float = ..., vapour_dbar: float = ..., vapour_atmospheres: float = ..., vapour_atm: float = ...,
    vapour_psi: float = ..., vapour_psf: float = ...,
) -> Quantity:
    """Temperature at which a vapour pressure is that of saturation: the dew point, or below 0.01 degC the frost
    point.

    Takes vapour [Pa] (vapour pressure [Pa], 0.001405 to 1.555e6 (saturation at -100 and 200 degC)).

    Needs vapour.

    Gives temperature [ITS-90]
    """
    ...

def current_of(
    *,
    all: Sequence[_t.PluggedInGiven],
    supply: _t.Amount = ...,
    supply_volts: float = ..., supply_V: float = ...,
) -> Quantity:
    """Current of all that is on one circuit at once.

    Takes all (each draws [W] 0 to 1e9; power factor above 0 to 1); supply [V] (U [V] above 0).

    Needs all, supply.

    Gives current [A]
    """
    ...

def leakage_of(
    *,
    all: Sequence[_t.Estimate],
) -> Quantity:
    """What all devices behind one protection leak to earth together.

    Takes all (leakage of each [A] 0 to 1e6, with its band).

    Needs all.

    Gives current [A] with its band
    """
    ...

def battery_feeds(
    *,
    from_: _t.StoredEnergyGiven,
    load: _t.Amount = ...,
    load_watts: float = ..., load_W: float = ..., load_kilowatts: float = ..., load_kW: float = ...,
    load_horsepower: float = ..., load_hp: float = ..., load_btu_per_hour: float = ...,
) -> Quantity:
    """How long a battery feeds a load.

    Takes from_ (capacity C [J] >= 0; usable part u and part through the inverter eta, 0 to 1); load [W] (P [W] >
    0).

    Needs from_, load.

    Gives time [s]; low end: a battery of some years, 70 %; high end: new, 110 %
    """
    ...

def temperature_course_of(
    *,
    uncontrolled_tank: _t.UncontrolledTankGiven,
    time: _t.Amount = ...,
    step: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    time_seconds: float = ..., time_s: float = ..., time_minutes: float = ..., time_min: float = ...,
    time_hours: float = ..., time_h: float = ..., time_days: float = ..., time_d: float = ..., time_weeks: float = ...,
    time_wk: float = ..., step_seconds: float = ..., step_s: float = ..., step_minutes: float = ...,
    step_min: float = ..., step_hours: float = ..., step_h: float = ..., step_days: float = ..., step_d: float = ...,
    step_weeks: float = ..., step_wk: float = ...,
) -> _t.TemperatureCourse:
    """The temperature of water that nothing controls.

    Takes uncontrolled_tank (the tank as for heat_balance, its water at the start; heat capacity [J/K]; the room
    as it is, or drifting to a temperature with a time constant [s] > 0); time [s] (to look ahead [s], 0 to 1e7);
    step [s] (between the points of the answer [s] > 0; at most 1e5 points).

    Needs uncontrolled_tank, time.

    Gives points from 0 to `time`, and where the water settles
    """
    ...

def largest_change(
    *,
    uncontrolled_tank: _t.UncontrolledTankGiven,
    within: _t.Amount = ...,
    window: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    within_seconds: float = ..., within_s: float = ..., within_minutes: float = ..., within_min: float = ...,
    within_hours: float = ..., within_h: float = ..., within_days: float = ..., within_d: float = ...,
    within_weeks: float = ..., within_wk: float = ..., window_seconds: float = ..., window_s: float = ...,
    window_minutes: float = ..., window_min: float = ..., window_hours: float = ..., window_h: float = ...,
    window_days: float = ..., window_d: float = ..., window_weeks: float = ..., window_wk: float = ...,
) -> _t.TemperatureChange:
    """How much water that nothing controls changes within an hour, or within a day, where it changes most: what
    animals feel is not only how cold or warm it gets.

    Takes uncontrolled_tank (the tank and room, as for temperature_course_of); within [s] (how far to look ahead
    [s], 0 to 1e7); window [s] (w, the time of the change [s], 60 to 1e7; at most 1e4 of them).

    Needs uncontrolled_tank, within.

    Gives change [K] with the band of the evaporation, negative where the water falls
    """
    ...

@overload
def time_to_temperature(
    *,
    uncontrolled_tank: _t.UncontrolledTankGiven,
    limit: _t.Amount = ...,
    within: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    limit_kelvins: float = ..., limit_K: float = ..., limit_celsius: float = ..., limit_degC: float = ...,
    limit_fahrenheit: float = ..., limit_degF: float = ..., within_seconds: float = ..., within_s: float = ...,
    within_minutes: float = ..., within_min: float = ..., within_hours: float = ..., within_h: float = ...,
    within_days: float = ..., within_d: float = ..., within_weeks: float = ..., within_wk: float = ...,
) -> _t.TemperatureCrossing:
    """When water that nothing controls reaches a limit: soonest, expected, latest.

    Takes uncontrolled_tank (the tank and room, as for temperature_course_of); limit [K] (temperature that must
    not be passed, below or above the start); within [s] (how far to look ahead [s], 0 to 1e7).

    Needs uncontrolled_tank, limit.

    Gives times [s]; empty where the limit is not reached within that time. Plan on the soonest
    """
    ...

@overload
def time_to_temperature(
    *,
    uncontrolled_tank: _t.UncontrolledTankGiven,
    heat_capacity: _t.Estimate,
    limit: _t.Amount = ...,
    within: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    limit_kelvins: float = ..., limit_K: float = ..., limit_celsius: float = ..., limit_degC: float = ...,
    limit_fahrenheit: float = ..., limit_degF: float = ..., within_seconds: float = ..., within_s: float = ...,
    within_minutes: float = ..., within_min: float = ..., within_hours: float = ..., within_h: float = ...,
    within_days: float = ..., within_d: float = ..., within_weeks: float = ..., within_wk: float = ...,
) -> _t.TemperatureCrossing:
    """When water that nothing controls reaches a limit: soonest, expected, latest. For water that is known within
    limits.

    Takes uncontrolled_tank (the tank and room, as for temperature_course_of; its own heat capacity is not used);
    heat_capacity (of the least, the expected and the most water [J/K] > 0); limit [K] (temperature that must not
    be passed, below or above the start); within [s] (how far to look ahead [s], 0 to 1e7).

    Needs uncontrolled_tank, heat_capacity, limit.

    Gives times [s]; empty where the limit is not reached within that time. Plan on the soonest
    """
    ...

def top_off_rate(
    *,
    evaporation: _t.Estimate,
    fresh_water: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    fresh_water_kelvins: float = ..., fresh_water_K: float = ..., fresh_water_celsius: float = ...,
    fresh_water_degC: float = ..., fresh_water_fahrenheit: float = ..., fresh_water_degF: float = ...,
) -> Quantity:
    """Fresh water to top off.

    Takes evaporation (of the whole system [kg/s] >= 0); fresh_water [K] (temperature of the fresh water, 0 to 40
    degC).

    Needs evaporation.

    Gives volume per time [m^3/s]
    """
    ...

def reservoir_lasts(
    *,
    reservoir: _t.Amount = ...,
    rate: _t.Estimate,
    reservoir_cubic_metres: float = ..., reservoir_m3: float = ..., reservoir_litres: float = ...,
    reservoir_L: float = ..., reservoir_millilitres: float = ..., reservoir_mL: float = ...,
    reservoir_cubic_inches: float = ..., reservoir_in3: float = ..., reservoir_cubic_feet: float = ...,
    reservoir_ft3: float = ..., reservoir_us_gallons: float = ..., reservoir_imperial_gallons: float = ...,
) -> Quantity:
    """How long a reservoir lasts. Plan on the low end: it belongs to the high evaporation.

    Takes reservoir [m3] (usable volume V [m^3] >= 0); rate (of top-off [m^3/s] > 0, as from top_off_rate).

    Needs reservoir, rate.

    Gives time [s]
    """
    ...

def stuck_valve(
    *,
    reservoir_request: _t.ReservoirRequestGiven,
    reservoir: _t.Amount = ...,
    extrapolate: bool = ...,
    reservoir_cubic_metres: float = ..., reservoir_m3: float = ..., reservoir_litres: float = ...,
    reservoir_L: float = ..., reservoir_millilitres: float = ..., reservoir_mL: float = ...,
    reservoir_cubic_inches: float = ..., reservoir_in3: float = ..., reservoir_cubic_feet: float = ...,
    reservoir_ft3: float = ..., reservoir_us_gallons: float = ..., reservoir_imperial_gallons: float = ...,
) -> _t.StuckValveResult:
    """What happens when the top-off valve sticks open and the whole reservoir runs in.

    Takes reservoir_request (water and volume [m^3] > 0 of the system, its lowest salinity and its free volume
    [m^3] >= 0); reservoir [m3] (what runs in [m^3] >= 0).

    Needs reservoir_request, reservoir.

    Gives salinity when mixed, spilt volume [m^3], whether it is too fresh
    """
    ...

def largest_reservoir(
    *,
    water: _t.TankWaterGiven,
    volume: _t.Amount = ...,
    lowest: _t.Amount,
    free_volume: _t.Amount = ...,
    fresh_water: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    volume_cubic_metres: float = ..., volume_m3: float = ..., volume_litres: float = ..., volume_L: float = ...,
    volume_millilitres: float = ..., volume_mL: float = ..., volume_cubic_inches: float = ..., volume_in3: float = ...,
    volume_cubic_feet: float = ..., volume_ft3: float = ..., volume_us_gallons: float = ...,
    volume_imperial_gallons: float = ..., free_volume_cubic_metres: float = ..., free_volume_m3: float = ...,
    free_volume_litres: float = ..., free_volume_L: float = ..., free_volume_millilitres: float = ...,
    free_volume_mL: float = ..., free_volume_cubic_inches: float = ..., free_volume_in3: float = ...,
    free_volume_cubic_feet: float = ..., free_volume_ft3: float = ..., free_volume_us_gallons: float = ...,
    free_volume_imperial_gallons: float = ..., fresh_water_kelvins: float = ..., fresh_water_K: float = ...,
    fresh_water_celsius: float = ..., fresh_water_degC: float = ..., fresh_water_fahrenheit: float = ...,
    fresh_water_degF: float = ...,
) -> _t.ReservoirLimit:
    """The largest reservoir that may run in as a whole without harm: neither too fresh nor over the rim.

    Takes water; volume [m3] (of all the water in the system); lowest [psu] (salinity that the animals still
    stand); free_volume [m3] (Above the working level, up to the rim, in the chamber where it runs in);
    fresh_water [K].

    Needs water, volume, lowest, free_volume.

    Gives volume [m^3], and which of the two decides
    """
    ...

def return_level(
    *,
    surface: _t.Amount = ...,
    top_off: _t.Estimate,
    running_level: _t.Amount = ...,
    lowest_level: _t.Amount = ...,
    surface_square_metres: float = ..., surface_m2: float = ..., surface_square_centimetres: float = ...,
    surface_cm2: float = ..., surface_square_millimetres: float = ..., surface_mm2: float = ...,
    surface_square_inches: float = ..., surface_in2: float = ..., surface_square_feet: float = ...,
    surface_ft2: float = ..., running_level_metres: float = ..., running_level_m: float = ...,
    running_level_centimetres: float = ..., running_level_cm: float = ..., running_level_millimetres: float = ...,
    running_level_mm: float = ..., running_level_micrometres: float = ..., running_level_um: float = ...,
    running_level_nanometres: float = ..., running_level_nm: float = ..., running_level_inches: float = ...,
    running_level_in: float = ..., running_level_feet: float = ..., running_level_ft: float = ...,
    lowest_level_metres: float = ..., lowest_level_m: float = ..., lowest_level_centimetres: float = ...,
    lowest_level_cm: float = ..., lowest_level_millimetres: float = ..., lowest_level_mm: float = ...,
    lowest_level_micrometres: float = ..., lowest_level_um: float = ..., lowest_level_nanometres: float = ...,
    lowest_level_nm: float = ..., lowest_level_inches: float = ..., lowest_level_in: float = ...,
    lowest_level_feet: float = ..., lowest_level_ft: float = ...,
) -> _t.ReturnChamberResult:
    """How fast the level of the return chamber falls without top-off, and when the pump starves. All the evaporation
    of the system shows there: the other levels are held by their weirs.

    Takes surface [m2] (water area of the chamber); top_off (what the whole system evaporates, as from
    top_off_rate); running_level [m]; lowest_level [m] (at which the pump still draws no air).

    Needs surface, top_off, running_level, lowest_level.

    Gives fall [m/s], time to the lowest level [s]
    """
    ...

def transmittance(
    *,
    label: Optional[str] = ...,
    layers: Optional[Sequence[_t.WallLayerGiven]] = ...,
    inside: Optional[_t.Amount] = ...,
    outside: Optional[_t.Amount] = ...,
    inside_watts_per_square_metre_kelvin: float = ..., outside_watts_per_square_metre_kelvin: float = ...,
) -> Quantity:
    """Heat transmittance (U-value) of a wall of layers.

    Takes label; layers; inside [W/(m2 K)]; outside [W/(m2 K)].

    Gives transmittance [W/(m^2 K)]
    """
    ...

def linear_warm_up_time(
    *,
    heat_capacity: _t.Amount = ...,
    from_: _t.Amount = ...,
    to: _t.Amount = ...,
    heater: _t.Amount = ...,
    loss: Optional[_t.Amount] = ...,
    stands_at: Optional[_t.Amount] = ...,
    heat_capacity_joules_per_kelvin: float = ..., from_kelvins: float = ..., from_K: float = ...,
    from_celsius: float = ..., from_degC: float = ..., from_fahrenheit: float = ..., from_degF: float = ...,
    to_kelvins: float = ..., to_K: float = ..., to_celsius: float = ..., to_degC: float = ...,
    to_fahrenheit: float = ..., to_degF: float = ..., heater_watts: float = ..., heater_W: float = ...,
    heater_kilowatts: float = ..., heater_kW: float = ..., heater_horsepower: float = ..., heater_hp: float = ...,
    heater_btu_per_hour: float = ..., loss_watts_per_kelvin: float = ..., stands_at_kelvins: float = ...,
    stands_at_K: float = ..., stands_at_celsius: float = ..., stands_at_degC: float = ...,
    stands_at_fahrenheit: float = ..., stands_at_degF: float = ...,
) -> Quantity:
    """Time to warm water with a constant heater and a loss that grows with temperature in a straight line.

    Takes heat_capacity [J/K]; from_ [K]; to [K]; heater [W]; loss [W/K]; stands_at [K] (without the heater; of no
    matter when the loss is 0).

    Needs heat_capacity, from_, to, heater.

    Gives time [s]
    """
    ...

def warm_up(
    *,
    tank: _t.TankHeatGiven,
    heat_capacity: _t.Amount = ...,
    target: _t.Amount = ...,
    heater: _t.Amount = ...,
    extrapolate: bool = ...,
    heat_capacity_joules_per_kelvin: float = ..., target_kelvins: float = ..., target_K: float = ...,
    target_celsius: float = ..., target_degC: float = ..., target_fahrenheit: float = ..., target_degF: float = ...,
    heater_watts: float = ..., heater_W: float = ..., heater_kilowatts: float = ..., heater_kW: float = ...,
    heater_horsepower: float = ..., heater_hp: float = ..., heater_btu_per_hour: float = ...,
) -> _t.WarmUpResult:
    """Time and energy to warm a tank, with its losses as they grow on the way.

    Takes tank; heat_capacity [J/K] (of water, rock, sand and tank; see `heat_capacity_of`); target [K]; heater
    [W].

    Needs tank, heat_capacity, target, heater.

    Gives time [s], energy of the heater [J], and where it would go if the heater stuck
    """
    ...

def settled_humidity_ratio(
    *,
    dry_air: _t.Amount = ...,
    outdoor: Union[_t.HumidityRatioGiven, _t.HumidityRatioMade],
    source: Optional[_t.Amount] = ...,
    transfer: Optional[_t.Amount] = ...,
    surface: Optional[Union[_t.HumidityRatioGiven, _t.HumidityRatioMade]] = ...,
    dry_air_kilograms_per_second: float = ..., dry_air_kilograms_per_hour: float = ...,
    dry_air_kilograms_per_day: float = ..., dry_air_grams_per_hour: float = ..., dry_air_grams_per_day: float = ...,
    dry_air_milligrams_per_hour: float = ..., dry_air_pounds_per_hour: float = ...,
    source_kilograms_per_second: float = ..., source_kilograms_per_hour: float = ...,
    source_kilograms_per_day: float = ..., source_grams_per_hour: float = ..., source_grams_per_day: float = ...,
    source_milligrams_per_hour: float = ..., source_pounds_per_hour: float = ...,
    transfer_kilograms_per_second: float = ..., transfer_kilograms_per_hour: float = ...,
    transfer_kilograms_per_day: float = ..., transfer_grams_per_hour: float = ..., transfer_grams_per_day: float = ...,
    transfer_milligrams_per_hour: float = ..., transfer_pounds_per_hour: float = ...,
) -> Quantity:
    """Humidity ratio at which a room with constant flows settles.

    Takes dry_air [kg/s] (of the ventilation); outdoor; source [kg/s] (less what a machine removes); transfer
    [kg/s] (g, of the wet surfaces); surface (W_s, at the wet surfaces).

    Needs dry_air, outdoor.

    Gives humidity ratio [kg/kg]; it may be above saturation, which this hand calculation does not know
    """
    ...

def humidity_time_constant(
    *,
    well_mixed_room: _t.WellMixedRoomGiven,
    air: _t.Amount = ...,
    air_kilograms: float = ..., air_kg: float = ..., air_grams: float = ..., air_g: float = ...,
    air_milligrams: float = ..., air_mg: float = ..., air_tonnes: float = ..., air_t: float = ...,
    air_pounds: float = ..., air_lb: float = ..., air_ounces: float = ..., air_oz: float = ...,
) -> Quantity:
    """Time in which a room with constant flows covers 63 % of the way to where it settles.

    Takes well_mixed_room (as for settled_humidity_ratio); air [kg] (dry air in the room M [kg] > 0).

    Needs well_mixed_room, air.

    Gives time constant [s]
    """
    ...

def humidity_ratio_after(
    *,
    well_mixed_room: _t.WellMixedRoomGiven,
    start: _t.HumidityStartGiven,
) -> Quantity:
    """Humidity ratio of a room with constant flows after some time.

    Takes well_mixed_room (as for settled_humidity_ratio); start (humidity ratio W_0; dry air in the room [kg] >
    0; time t [s] >= 0).

    Needs well_mixed_room, start.

    Gives humidity ratio [kg/kg]
    """
    ...

def wet_bulb(
    *,
    temperature: _t.Amount = ...,
    humidity: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    humidity_percent: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> Quantity:
    """Thermodynamic wet-bulb temperature: what air becomes when it is cooled by evaporating water into it.

    Takes temperature [K]; humidity; pressure [Pa] (of the place, not reduced to sea level).

    Needs temperature, humidity.

    Gives temperature [ITS-90]
    """
    ...

def air_from_with_air_of_humidity_ratio(
    *,
    temperature: _t.Amount = ...,
    ratio: Union[_t.HumidityRatioGiven, _t.HumidityRatioMade],
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> _t.Air:
    """The air of a given temperature and humidity ratio.

    Takes temperature [K]; ratio; pressure [Pa].

    Needs temperature, ratio.

    Gives air with its relative humidity
    """
    ...

def air_from_with_air_of_dew_point(
    *,
    temperature: _t.Amount = ...,
    dew_point: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    dew_point_kelvins: float = ..., dew_point_K: float = ..., dew_point_celsius: float = ...,
    dew_point_degC: float = ..., dew_point_fahrenheit: float = ..., dew_point_degF: float = ...,
    pressure_pascals: float = ..., pressure_Pa: float = ..., pressure_hectopascals: float = ...,
    pressure_hPa: float = ..., pressure_kilopascals: float = ..., pressure_kPa: float = ...,
    pressure_megapascals: float = ..., pressure_MPa: float = ..., pressure_gigapascals: float = ...,
    pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ..., pressure_decibars: float = ...,
    pressure_dbar: float = ..., pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ...,
    pressure_psf: float = ...,
) -> _t.Air:
    """The air of a given temperature and dew (or frost) point.

    Takes temperature [K]; dew_point [K]; pressure [Pa].

    Needs temperature, dew_point.

    Gives air with its relative humidity
    """
    ...

def time_to_temperature_with_heat_capacity(
    *,
    uncontrolled_tank: _t.UncontrolledTankGiven,
    heat_capacity: _t.Estimate,
    limit: _t.Amount = ...,
    within: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    limit_kelvins: float = ..., limit_K: float = ..., limit_celsius: float = ..., limit_degC: float = ...,
    limit_fahrenheit: float = ..., limit_degF: float = ..., within_seconds: float = ..., within_s: float = ...,
    within_minutes: float = ..., within_min: float = ..., within_hours: float = ..., within_h: float = ...,
    within_days: float = ..., within_d: float = ..., within_weeks: float = ..., within_wk: float = ...,
) -> _t.TemperatureCrossing:
    """When water that nothing controls reaches a limit: soonest, expected, latest. For water that is known within
    limits.

    Takes uncontrolled_tank (the tank and room, as for temperature_course_of; its own heat capacity is not used);
    heat_capacity (of the least, the expected and the most water [J/K] > 0); limit [K] (temperature that must not
    be passed, below or above the start); within [s] (how far to look ahead [s], 0 to 1e7).

    Needs uncontrolled_tank, heat_capacity, limit.

    Gives times [s]; empty where the limit is not reached within that time. Plan on the soonest
    """
    ...

def air_from_with_air_of_wet_bulb(
    *,
    temperature: _t.Amount = ...,
    wet_bulb: _t.Amount = ...,
    pressure: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    temperature_kelvins: float = ..., temperature_K: float = ..., temperature_celsius: float = ...,
    temperature_degC: float = ..., temperature_fahrenheit: float = ..., temperature_degF: float = ...,
    wet_bulb_kelvins: float = ..., wet_bulb_K: float = ..., wet_bulb_celsius: float = ..., wet_bulb_degC: float = ...,
    wet_bulb_fahrenheit: float = ..., wet_bulb_degF: float = ..., pressure_pascals: float = ...,
    pressure_Pa: float = ..., pressure_hectopascals: float = ..., pressure_hPa: float = ...,
    pressure_kilopascals: float = ..., pressure_kPa: float = ..., pressure_megapascals: float = ...,
    pressure_MPa: float = ..., pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ...,
    pressure_bar: float = ..., pressure_decibars: float = ..., pressure_dbar: float = ...,
    pressure_atmospheres: float = ..., pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> _t.Air:
    """The air of a psychrometer's two readings.

    Takes temperature [K]; wet_bulb [K]; pressure [Pa].

    Needs temperature, wet_bulb.

    Gives air with its relative humidity
    """
    ...
