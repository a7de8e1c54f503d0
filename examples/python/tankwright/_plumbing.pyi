# SPDX-License-Identifier: BSL-1.0
# Written by examples/python/stubs.py. Do not edit.
"""The formulas of plumbing."""
from typing import List, Literal, Optional, Sequence, Union, overload

from . import types as _t
from .quantity import Quantity

def operating_point(
    *,
    plan: _t.CircuitGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    which: Optional[_t.Losses] = ...,
    extrapolate: bool = ...,
) -> _t.CircuitSolution:
    """Steady flow in a circuit of pumps, runs and outlets, whatever its shape.

    Takes plan (sources, pumps, runs and outlets, joined by their labels); water (density and viscosity in the
    pipes); which (which end of the bands of the loss coefficients to take).

    Needs plan, water.

    Gives flow, velocity and loss of each run, head of each junction, flow and state of each pump and outlet, and
    what all outlets deliver
    """
    ...

def flow_with_band(
    *,
    plan: _t.CircuitGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    run: str,
    extrapolate: bool = ...,
) -> Quantity:
    """Flow through one run with the band that the loss coefficients give it.

    Takes plan (as for `operating_point`); water (density and viscosity in the pipes); run (label of the run).

    Needs plan, water, run.

    Gives flow [m^3/s] with its band
    """
    ...

def valve_for_flow(
    *,
    plan: _t.CircuitGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    wanted: _t.WantedFlowGiven,
    extrapolate: bool = ...,
) -> _t.ValveSetting:
    """The position of a valve that gives a run its flow, as a Kv.

    Takes plan (as for `operating_point`; a valve that the run already has is taken as the one to set); water
    (density and viscosity in the pipes); wanted (label of the run, and the flow it should get [m^3/s] > 0).

    Needs plan, water, wanted.

    Gives Kv of the valve, or none where even wide open is too little; and the flow wide open
    """
    ...

def speed_for_flow(
    *,
    plan: _t.CircuitGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    wanted: _t.WantedSpeedGiven,
    extrapolate: bool = ...,
) -> _t.SpeedSetting:
    """The speed of a pump that gives a run its flow.

    Takes plan (as for `operating_point`); water (density and viscosity in the pipes); wanted (label of the pump;
    label of the run and the flow it should get [m^3/s] > 0; fastest speed, 0.001 to 10).

    Needs plan, water, wanted.

    Gives speed over the speed the curve is given for, or none where even the fastest is too little
    """
    ...

def rank_pumps(
    *,
    plan: _t.CircuitGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    choice: _t.PumpChoiceGiven,
    extrapolate: bool = ...,
) -> _t.PumpRanking:
    """Pumps tried in one place of a circuit, the best first.

    Takes plan (as for `operating_point`); water (density and viscosity in the pipes); choice (label of the pump
    whose place is to be filled; label of the run and the flow it should get [m^3/s] > 0; curves of the
    candidates).

    Needs plan, water, choice.

    Gives each candidate with its flow, head and state; with a caution
    """
    ...

def drain_number(
    *,
    bore: _t.Amount,
    flow: _t.Amount = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """The drain number J* of the flow in a vertical pipe.

    Takes bore (D [m] > 0); flow [m3/s] (Q [m^3/s] >= 0).

    Needs bore, flow.

    Gives [1] J*: self-venting below 0.3, surging to 1, full above
    """
    ...

def flow_at_drain_number(
    *,
    bore: _t.Amount,
    number: Optional[_t.Amount] = ...,
) -> Quantity:
    """Flow in a vertical pipe at a drain number: at 0.3, what a drain carries quietly.

    Takes bore (D [m] > 0); number (J* >= 0).

    Needs bore.

    Gives flow [m^3/s]
    """
    ...

def stack_capacity(
    *,
    bore: _t.Amount,
    filled: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    filled_percent: float = ...,
) -> Quantity:
    """Flow down a tall vented stack, as a sheet on its wall that fills part of its section.

    Takes bore (d [m] > 0); filled (share r of the section, 1/4 to 1/3).

    Needs bore.

    Gives flow [m^3/s]
    """
    ...

def part_full(
    *,
    bore: _t.Amount,
    depth: _t.Amount = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> _t.WetSection:
    """Geometry of the water in a part-full round pipe.

    Takes bore (D [m] > 0); depth [m] (y [m], above 0, to D).

    Needs bore, depth.

    Gives area [m^2], wetted perimeter, hydraulic radius and width of the surface [m]
    """
    ...

@overload
def part_full_flow(
    *,
    drain: _t.PartFullDrainGiven,
    depth: _t.Amount = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> _t.PartFullAnswer:
    """Flow in a nearly level drain at a depth (Manning).

    Takes drain (bore D [m] > 0; slope S > 0; n > 0); depth [m] (y [m], above 0, to D).

    Needs drain, depth.

    Gives flow [m^3/s] and velocity [m/s]
    """
    ...

@overload
def part_full_flow(
    *,
    pipe: _t.PartFullPipeGiven,
    depth: _t.Amount = ...,
    extrapolate: bool = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> _t.PartFullAnswer:
    """Flow in a nearly level drain at a depth (Darcy-Weisbach with Colebrook-White on the hydraulic diameter).

    Takes pipe (bore D [m] > 0; slope S > 0; roughness [m] >= 0; density and viscosity); depth [m] (y [m], above
    0, to D).

    Needs pipe, depth.

    Gives flow [m^3/s] and velocity [m/s]
    """
    ...

def part_full_depth(
    *,
    drain: _t.PartFullDrainGiven,
    flow: _t.Amount = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """Depth at which a nearly level drain carries a flow (Manning): the lower of the two where there are two.

    Takes drain (bore D [m] > 0; slope S > 0; n > 0); flow [m3/s] (Q [m^3/s] > 0).

    Needs drain, flow.

    Gives depth [m]
    """
    ...

def drain_mode_for(
    *,
    drain: _t.DrainGiven,
    flow: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> _t.DrainAnswer:
    """Capacity of a drain in all modes, and the mode for a flow.

    Takes drain (pipe, drop and inlet head [m] >= 0); flow [m3/s] (Q [m^3/s] >= 0 that it is to carry); water
    (density and viscosity).

    Needs drain, flow, water.

    Gives the mode, the capacities [m^3/s], a caution
    """
    ...

def one_drain_blocked(
    *,
    drains: Sequence[_t.DrainGiven],
    flow: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> _t.BlockedAnswer:
    """Whether the drains carry the flow with any one of them blocked.

    Takes drains (two or more); flow [m3/s] (Q [m^3/s] >= 0 of all returns); water (density and viscosity).

    Needs drains, flow, water.

    Gives one case a drain, and whether all hold
    """
    ...

def all_drains_blocked(
    *,
    system: _t.PowerCutInputGiven,
    edge_to_rim: _t.Amount = ...,
    inlet: Optional[_t.PumpInletGiven] = ...,
    top_off: Optional[_t.Amount] = ...,
    edge_to_rim_metres: float = ..., edge_to_rim_m: float = ..., edge_to_rim_centimetres: float = ...,
    edge_to_rim_cm: float = ..., edge_to_rim_millimetres: float = ..., edge_to_rim_mm: float = ...,
    edge_to_rim_micrometres: float = ..., edge_to_rim_um: float = ..., edge_to_rim_nanometres: float = ...,
    edge_to_rim_nm: float = ..., edge_to_rim_inches: float = ..., edge_to_rim_in: float = ...,
    edge_to_rim_feet: float = ..., edge_to_rim_ft: float = ..., top_off_cubic_metres: float = ...,
    top_off_m3: float = ..., top_off_litres: float = ..., top_off_L: float = ..., top_off_millilitres: float = ...,
    top_off_mL: float = ..., top_off_cubic_inches: float = ..., top_off_in3: float = ...,
    top_off_cubic_feet: float = ..., top_off_ft3: float = ..., top_off_us_gallons: float = ...,
    top_off_imperial_gallons: float = ...,
) -> _t.DrainsBlockedAnswer:
    """How high the display stands when all its drains are blocked and the pump has run its chamber dry.

    Takes system; edge_to_rim [m] (from the overflow edge up to the rim of the display); inlet (where the pump
    stops drawing; none: at the floor of its chamber); top_off [m3] (that a top-off adds meanwhile, for the level
    in the sump falls).

    Needs system, edge_to_rim.

    Gives volume that the pump delivers, height over the edge, margin to the rim, with their bands; a caution
    """
    ...

@overload
def outlet_through(
    *,
    bore: _t.Amount = ...,
    discharge_coefficient: Optional[_t.Amount] = ...,
    bore_metres: float = ..., bore_m: float = ..., bore_centimetres: float = ..., bore_cm: float = ...,
    bore_millimetres: float = ..., bore_mm: float = ..., bore_micrometres: float = ..., bore_um: float = ...,
    bore_nanometres: float = ..., bore_nm: float = ..., bore_inches: float = ..., bore_in: float = ...,
    bore_feet: float = ..., bore_ft: float = ...,
) -> Quantity:
    """What an orifice counts for.

    Takes bore [m]; discharge_coefficient (0.60 to 0.62 sharp, 0.80 to 0.82 short tube, 0.97 rounded).

    Needs bore.

    Gives effective area [m^2]
    """
    ...

@overload
def outlet_through(
    *,
    bore: _t.Amount,
    resistance: _t.Amount,
) -> Quantity:
    """What a pipe of known resistance counts for.

    Takes bore; resistance.

    Needs bore, resistance.

    Gives effective area [m^2]
    """
    ...

def outflow(
    *,
    outlet: Union[_t.Amount, _t.EffectiveAreaMade],
    head: _t.Amount = ...,
    head_metres: float = ..., head_m: float = ..., head_centimetres: float = ..., head_cm: float = ...,
    head_millimetres: float = ..., head_mm: float = ..., head_micrometres: float = ..., head_um: float = ...,
    head_nanometres: float = ..., head_nm: float = ..., head_inches: float = ..., head_in: float = ...,
    head_feet: float = ..., head_ft: float = ...,
) -> Quantity:
    """Flow through an outlet.

    Takes outlet (effective area [m^2] > 0); head [m] (h [m] >= 0).

    Needs outlet, head.

    Gives flow [m^3/s]
    """
    ...

def emptying_time(
    *,
    vessel: Union[_t.PlumbingAreaProfileOption, _t.PlumbingBowlOption, _t.PlumbingConeOption, _t.PlumbingLyingCylinderOption],
    fall: _t.FallThroughGiven,
) -> Quantity:
    """Time in which a vessel falls from one height to another through an outlet.

    Takes vessel (vertical walls (an area), a profile, a bowl, a cone, a lying cylinder); fall (effective outlet
    [m^2] > 0; heights from h1 >= to h2 [m] >= 0 over it, within the vessel).

    Needs vessel, fall.

    Gives time [s]
    """
    ...

def discharge_coefficient_from(
    *,
    horizontal_area: _t.Amount = ...,
    bore: _t.Amount = ...,
    from_: _t.Amount = ...,
    to: _t.Amount = ...,
    time: _t.Amount = ...,
    horizontal_area_square_metres: float = ..., horizontal_area_m2: float = ...,
    horizontal_area_square_centimetres: float = ..., horizontal_area_cm2: float = ...,
    horizontal_area_square_millimetres: float = ..., horizontal_area_mm2: float = ...,
    horizontal_area_square_inches: float = ..., horizontal_area_in2: float = ...,
    horizontal_area_square_feet: float = ..., horizontal_area_ft2: float = ..., bore_metres: float = ...,
    bore_m: float = ..., bore_centimetres: float = ..., bore_cm: float = ..., bore_millimetres: float = ...,
    bore_mm: float = ..., bore_micrometres: float = ..., bore_um: float = ..., bore_nanometres: float = ...,
    bore_nm: float = ..., bore_inches: float = ..., bore_in: float = ..., bore_feet: float = ..., bore_ft: float = ...,
    from_metres: float = ..., from_m: float = ..., from_centimetres: float = ..., from_cm: float = ...,
    from_millimetres: float = ..., from_mm: float = ..., from_micrometres: float = ..., from_um: float = ...,
    from_nanometres: float = ..., from_nm: float = ..., from_inches: float = ..., from_in: float = ...,
    from_feet: float = ..., from_ft: float = ..., to_metres: float = ..., to_m: float = ...,
    to_centimetres: float = ..., to_cm: float = ..., to_millimetres: float = ..., to_mm: float = ...,
    to_micrometres: float = ..., to_um: float = ..., to_nanometres: float = ..., to_nm: float = ...,
    to_inches: float = ..., to_in: float = ..., to_feet: float = ..., to_ft: float = ..., time_seconds: float = ...,
    time_s: float = ..., time_minutes: float = ..., time_min: float = ..., time_hours: float = ..., time_h: float = ...,
    time_days: float = ..., time_d: float = ..., time_weeks: float = ..., time_wk: float = ...,
) -> Quantity:
    """Discharge coefficient of an outlet, from the time in which the water fell: to calibrate a hole that is there.

    Takes horizontal_area [m2]; bore [m]; from_ [m]; to [m]; time [s].

    Needs horizontal_area, bore, from_, to, time.

    Gives [1] discharge coefficient; above 1 the measurements contradict each other
    """
    ...

def laminar_emptying_time(
    *,
    horizontal_area: _t.Amount = ...,
    bore: _t.Amount,
    pipe_length: _t.Amount = ...,
    from_: _t.Amount = ...,
    to: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    extrapolate: bool = ...,
    horizontal_area_square_metres: float = ..., horizontal_area_m2: float = ...,
    horizontal_area_square_centimetres: float = ..., horizontal_area_cm2: float = ...,
    horizontal_area_square_millimetres: float = ..., horizontal_area_mm2: float = ...,
    horizontal_area_square_inches: float = ..., horizontal_area_in2: float = ...,
    horizontal_area_square_feet: float = ..., horizontal_area_ft2: float = ..., pipe_length_metres: float = ...,
    pipe_length_m: float = ..., pipe_length_centimetres: float = ..., pipe_length_cm: float = ...,
    pipe_length_millimetres: float = ..., pipe_length_mm: float = ..., pipe_length_micrometres: float = ...,
    pipe_length_um: float = ..., pipe_length_nanometres: float = ..., pipe_length_nm: float = ...,
    pipe_length_inches: float = ..., pipe_length_in: float = ..., pipe_length_feet: float = ...,
    pipe_length_ft: float = ..., from_metres: float = ..., from_m: float = ..., from_centimetres: float = ...,
    from_cm: float = ..., from_millimetres: float = ..., from_mm: float = ..., from_micrometres: float = ...,
    from_um: float = ..., from_nanometres: float = ..., from_nm: float = ..., from_inches: float = ...,
    from_in: float = ..., from_feet: float = ..., from_ft: float = ..., to_metres: float = ..., to_m: float = ...,
    to_centimetres: float = ..., to_cm: float = ..., to_millimetres: float = ..., to_mm: float = ...,
    to_micrometres: float = ..., to_um: float = ..., to_nanometres: float = ..., to_nm: float = ...,
    to_inches: float = ..., to_in: float = ..., to_feet: float = ..., to_ft: float = ...,
) -> Quantity:
    """Time in which a vessel falls through a pipe in laminar flow: a siphon of air-line tubing, a seeping crack.

    Takes horizontal_area [m2]; bore; pipe_length [m]; from_ [m]; to [m]; water.

    Needs horizontal_area, bore, pipe_length, from_, to, water.

    Gives time [s]
    """
    ...

def levelling_time(
    *,
    first: _t.Amount = ...,
    second: _t.Amount = ...,
    opening: Union[_t.Amount, _t.EffectiveAreaMade],
    from_: _t.Amount = ...,
    to: Optional[_t.Amount] = ...,
    first_square_metres: float = ..., first_m2: float = ..., first_square_centimetres: float = ...,
    first_cm2: float = ..., first_square_millimetres: float = ..., first_mm2: float = ...,
    first_square_inches: float = ..., first_in2: float = ..., first_square_feet: float = ..., first_ft2: float = ...,
    second_square_metres: float = ..., second_m2: float = ..., second_square_centimetres: float = ...,
    second_cm2: float = ..., second_square_millimetres: float = ..., second_mm2: float = ...,
    second_square_inches: float = ..., second_in2: float = ..., second_square_feet: float = ...,
    second_ft2: float = ..., from_metres: float = ..., from_m: float = ..., from_centimetres: float = ...,
    from_cm: float = ..., from_millimetres: float = ..., from_mm: float = ..., from_micrometres: float = ...,
    from_um: float = ..., from_nanometres: float = ..., from_nm: float = ..., from_inches: float = ...,
    from_in: float = ..., from_feet: float = ..., from_ft: float = ..., to_metres: float = ..., to_m: float = ...,
    to_centimetres: float = ..., to_cm: float = ..., to_millimetres: float = ..., to_mm: float = ...,
    to_micrometres: float = ..., to_um: float = ..., to_nanometres: float = ..., to_nm: float = ...,
    to_inches: float = ..., to_in: float = ..., to_feet: float = ..., to_ft: float = ...,
) -> Quantity:
    """Time in which the difference between the levels of two joined tanks falls.

    Takes first [m2]; second [m2]; opening; from_ [m] (difference of the two levels); to [m].

    Needs first, second, opening, from_.

    Gives time [s]
    """
    ...

def steady_level(
    *,
    horizontal_area: _t.Amount = ...,
    inflow: _t.Amount = ...,
    outlet: Union[_t.Amount, _t.EffectiveAreaMade],
    horizontal_area_square_metres: float = ..., horizontal_area_m2: float = ...,
    horizontal_area_square_centimetres: float = ..., horizontal_area_cm2: float = ...,
    horizontal_area_square_millimetres: float = ..., horizontal_area_mm2: float = ...,
    horizontal_area_square_inches: float = ..., horizontal_area_in2: float = ...,
    horizontal_area_square_feet: float = ..., horizontal_area_ft2: float = ...,
    inflow_cubic_metres_per_second: float = ..., inflow_cubic_metres_per_hour: float = ...,
    inflow_litres_per_second: float = ..., inflow_litres_per_minute: float = ..., inflow_litres_per_hour: float = ...,
    inflow_litres_per_day: float = ..., inflow_us_gallons_per_minute: float = ...,
    inflow_us_gallons_per_hour: float = ..., inflow_us_gallons_per_day: float = ...,
    inflow_imperial_gallons_per_minute: float = ..., inflow_imperial_gallons_per_hour: float = ...,
    inflow_imperial_gallons_per_day: float = ..., inflow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """Height at which an outlet passes what flows in.

    Takes horizontal_area [m2]; inflow [m3/s]; outlet.

    Needs horizontal_area, inflow, outlet.

    Gives height over the outlet [m]
    """
    ...

def level_change_time(
    *,
    tank: _t.InflowAndOutletGiven,
    change: _t.LevelChangeGiven,
) -> Quantity:
    """Time in which a tank with inflow and outlet goes from one height to another, rising or falling towards its
    steady level.

    Takes tank (horizontal area A [m^2] > 0; inflow Q [m^3/s] >= 0; effective outlet [m^2] > 0); change (heights
    h1 and h2 [m] >= 0 over the outlet, h2 between h1 and the steady level, which it never reaches).

    Needs tank, change.

    Gives time [s]
    """
    ...

def edge_tail_time(
    *,
    horizontal_area: _t.Amount = ...,
    edge: Union[_t.PlumbingFullWidthEdgeOption, _t.PlumbingContractedEdgeOption, _t.PlumbingToothedEdgeOption, _t.PlumbingVNotchOption, _t.PlumbingStandpipeOption],
    from_: _t.Amount = ...,
    to: Optional[_t.Amount] = ...,
    horizontal_area_square_metres: float = ..., horizontal_area_m2: float = ...,
    horizontal_area_square_centimetres: float = ..., horizontal_area_cm2: float = ...,
    horizontal_area_square_millimetres: float = ..., horizontal_area_mm2: float = ...,
    horizontal_area_square_inches: float = ..., horizontal_area_in2: float = ...,
    horizontal_area_square_feet: float = ..., horizontal_area_ft2: float = ..., from_metres: float = ...,
    from_m: float = ..., from_centimetres: float = ..., from_cm: float = ..., from_millimetres: float = ...,
    from_mm: float = ..., from_micrometres: float = ..., from_um: float = ..., from_nanometres: float = ...,
    from_nm: float = ..., from_inches: float = ..., from_in: float = ..., from_feet: float = ..., from_ft: float = ...,
    to_metres: float = ..., to_m: float = ..., to_centimetres: float = ..., to_cm: float = ...,
    to_millimetres: float = ..., to_mm: float = ..., to_micrometres: float = ..., to_um: float = ...,
    to_nanometres: float = ..., to_nm: float = ..., to_inches: float = ..., to_in: float = ..., to_feet: float = ...,
    to_ft: float = ...,
) -> Quantity:
    """Time in which water falls over an edge to a residual height.

    Takes horizontal_area [m2]; edge; from_ [m] (height over the crest); to [m].

    Needs horizontal_area, edge, from_.

    Gives time [s]
    """
    ...

def plain_weir_tail_time(
    *,
    horizontal_area: _t.Amount = ...,
    width: _t.Amount = ...,
    discharge_coefficient: _t.Amount,
    from_: _t.Amount = ...,
    to: Optional[_t.Amount] = ...,
    horizontal_area_square_metres: float = ..., horizontal_area_m2: float = ...,
    horizontal_area_square_centimetres: float = ..., horizontal_area_cm2: float = ...,
    horizontal_area_square_millimetres: float = ..., horizontal_area_mm2: float = ...,
    horizontal_area_square_inches: float = ..., horizontal_area_in2: float = ...,
    horizontal_area_square_feet: float = ..., horizontal_area_ft2: float = ..., width_metres: float = ...,
    width_m: float = ..., width_centimetres: float = ..., width_cm: float = ..., width_millimetres: float = ...,
    width_mm: float = ..., width_micrometres: float = ..., width_um: float = ..., width_nanometres: float = ...,
    width_nm: float = ..., width_inches: float = ..., width_in: float = ..., width_feet: float = ...,
    width_ft: float = ..., from_metres: float = ..., from_m: float = ..., from_centimetres: float = ...,
    from_cm: float = ..., from_millimetres: float = ..., from_mm: float = ..., from_micrometres: float = ...,
    from_um: float = ..., from_nanometres: float = ..., from_nm: float = ..., from_inches: float = ...,
    from_in: float = ..., from_feet: float = ..., from_ft: float = ..., to_metres: float = ..., to_m: float = ...,
    to_centimetres: float = ..., to_cm: float = ..., to_millimetres: float = ..., to_mm: float = ...,
    to_micrometres: float = ..., to_um: float = ..., to_nanometres: float = ..., to_nm: float = ...,
    to_inches: float = ..., to_in: float = ..., to_feet: float = ..., to_ft: float = ...,
) -> Quantity:
    """Time in which water falls over a rectangular weir of constant coefficient: the closed form.

    Takes horizontal_area [m2]; width [m]; discharge_coefficient; from_ [m]; to [m].

    Needs horizontal_area, width, discharge_coefficient, from_.

    Gives time [s]
    """
    ...

def v_notch_tail_time(
    *,
    horizontal_area: _t.Amount = ...,
    opening: _t.Amount = ...,
    discharge_coefficient: _t.Amount,
    from_: _t.Amount = ...,
    to: Optional[_t.Amount] = ...,
    horizontal_area_square_metres: float = ..., horizontal_area_m2: float = ...,
    horizontal_area_square_centimetres: float = ..., horizontal_area_cm2: float = ...,
    horizontal_area_square_millimetres: float = ..., horizontal_area_mm2: float = ...,
    horizontal_area_square_inches: float = ..., horizontal_area_in2: float = ...,
    horizontal_area_square_feet: float = ..., horizontal_area_ft2: float = ..., opening_radians: float = ...,
    opening_rad: float = ..., opening_degrees: float = ..., opening_deg: float = ..., from_metres: float = ...,
    from_m: float = ..., from_centimetres: float = ..., from_cm: float = ..., from_millimetres: float = ...,
    from_mm: float = ..., from_micrometres: float = ..., from_um: float = ..., from_nanometres: float = ...,
    from_nm: float = ..., from_inches: float = ..., from_in: float = ..., from_feet: float = ..., from_ft: float = ...,
    to_metres: float = ..., to_m: float = ..., to_centimetres: float = ..., to_cm: float = ...,
    to_millimetres: float = ..., to_mm: float = ..., to_micrometres: float = ..., to_um: float = ...,
    to_nanometres: float = ..., to_nm: float = ..., to_inches: float = ..., to_in: float = ..., to_feet: float = ...,
    to_ft: float = ...,
) -> Quantity:
    """Time in which water falls through a V-notch of constant coefficient: the closed form.

    Takes horizontal_area [m2]; opening [rad]; discharge_coefficient; from_ [m]; to [m].

    Needs horizontal_area, opening, discharge_coefficient, from_.

    Gives time [s]
    """
    ...

def fill_stages(
    *,
    vessel: Union[_t.PlumbingAreaProfileOption, _t.PlumbingBowlOption, _t.PlumbingConeOption, _t.PlumbingLyingCylinderOption],
    flow: _t.Amount = ...,
    stops: Optional[Sequence[_t.FillStopGiven]] = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> _t.Single[List[_t.PlumbingFillStageParts]]:
    """When a hose reaches each stop of a staged fill.

    Takes vessel; flow [m3/s] (measured with a bucket and a watch); stops (heights over the floor, rising).

    Needs vessel, flow.

    Gives the stages, one a stop
    """
    ...

def fully_turbulent_factor(
    *,
    bore: _t.Amount,
) -> Quantity:
    """Friction factor of a fitting's size in fully turbulent flow, Crane's f_T. It is that of steel, whatever the
    fitting is made of.

    Takes bore (D [m] > 0.2 mm).

    Needs bore.

    Gives Darcy friction factor
    """
    ...

def fitting_loss(
    *,
    kind: _t.Fitting,
    bore: _t.Amount,
) -> Quantity:
    """Loss coefficient of a fitting, on the velocity in its own bore, in turbulent flow.

    Takes kind (what it is; valves fully open); bore (D [m] > 0.2 mm).

    Needs kind, bore.

    Gives K with its band
    """
    ...

def entrance_loss(
    *,
    bore: _t.Amount,
    projecting: Optional[bool] = ...,
    lip_radius: Optional[_t.Amount] = ...,
    lip_radius_metres: float = ..., lip_radius_m: float = ..., lip_radius_centimetres: float = ...,
    lip_radius_cm: float = ..., lip_radius_millimetres: float = ..., lip_radius_mm: float = ...,
    lip_radius_micrometres: float = ..., lip_radius_um: float = ..., lip_radius_nanometres: float = ...,
    lip_radius_nm: float = ..., lip_radius_inches: float = ..., lip_radius_in: float = ...,
    lip_radius_feet: float = ..., lip_radius_ft: float = ...,
) -> Quantity:
    """Loss coefficient of the entrance from a tank into a pipe, on the velocity in the pipe.

    Takes bore; projecting (the pipe stands into the tank; its lip does not count then); lip_radius [m] (of a
    flush, rounded edge).

    Needs bore.

    Gives K with its band
    """
    ...

def section_change_loss(
    *,
    from_: _t.Amount,
    to: _t.Amount,
    included_angle: Optional[_t.Amount] = ...,
    included_angle_radians: float = ..., included_angle_rad: float = ..., included_angle_degrees: float = ...,
    included_angle_deg: float = ...,
) -> Quantity:
    """Loss coefficient of a change of bore, on the velocity in the smaller bore.

    Takes from_; to; included_angle [rad] (of the cone; 180 degrees is a step).

    Needs from_, to.

    Gives K with its band
    """
    ...

def tee_losses(
    *,
    direction: _t.TeeDirection,
    angle: Optional[_t.TeeBranchAngle] = ...,
    run_bore: _t.Amount,
    branch_bore: _t.Amount,
    branch_share: _t.Amount = ...,
    branch_share_percent: float = ...,
) -> _t.TeeLoss:
    """Loss coefficients of a tee or a 45 degree wye by its flows, on the velocity of the combined flow in the run.

    Takes direction; angle; run_bore; branch_bore (not larger than the run); branch_share (flow in the branch over
    the combined flow).

    Needs direction, run_bore, branch_bore, branch_share.

    Gives K of the way through the run and of the way through the branch; either may be negative
    """
    ...

def hooper_loss(
    *,
    constants: Union[_t.TwoKGiven, Literal["hooper_elbow_90", "hooper_elbow_90_long", "hooper_elbow_45", "hooper_tee_through_branch", "hooper_tee_through_run", "hooper_swing_check"]],
    reynolds_number: Union[_t.Amount, _t.ReynoldsNumberMade],
    bore: _t.Amount,
) -> Quantity:
    """Loss coefficient of a fitting at any Reynolds number by Hooper's two constants.

    Takes constants (of the fitting, for instance `hooper_elbow_90`); reynolds_number (Reynolds number > 0 in the
    fitting's bore); bore (D [m] > 0.2 mm).

    Needs constants, reynolds_number, bore.

    Gives K with its band
    """
    ...

def darby_loss(
    *,
    constants: Union[_t.ThreeKGiven, Literal["darby_elbow_90", "darby_elbow_90_long", "darby_elbow_45", "darby_tee_through_branch", "darby_tee_through_run", "darby_ball_valve", "darby_swing_check"]],
    reynolds_number: Union[_t.Amount, _t.ReynoldsNumberMade],
    size: _t.Amount,
) -> Quantity:
    """Loss coefficient of a fitting at any Reynolds number by Darby's three constants: the choice below Re 1e4.

    Takes constants (of the fitting, for instance `darby_elbow_90`); reynolds_number (Reynolds number > 0 in the
    fitting's bore); size (nominal size [in] > 0).

    Needs constants, reynolds_number, size.

    Gives K with its band
    """
    ...

def loss_from_flow_coefficient(
    *,
    valve: Union[_t.FlowCoefficientGiven, _t.FlowCoefficientMade, _t.FlowCoefficient],
    bore: _t.Amount,
) -> Quantity:
    """Loss coefficient of a valve from its Kv (or Cv), as its maker gives it for a position of the handle.

    Takes valve (Kv > 0); bore (D [m] > 0 whose velocity K belongs to).

    Needs valve, bore.

    Gives K
    """
    ...

def flow_coefficient_from_loss(
    *,
    loss: Union[_t.Amount, _t.LossCoefficientMade],
    bore: _t.Amount,
) -> _t.FlowCoefficient:
    """Kv of the valve that has a loss coefficient: the inverse of `loss_from_flow_coefficient`.

    Takes loss (K > 0); bore (D [m] > 0 whose velocity K belongs to).

    Needs loss, bore.

    Gives Kv
    """
    ...

@overload
def leaking_check_valve(
    *,
    gap: _t.Amount = ...,
    gap_square_metres: float = ..., gap_m2: float = ..., gap_square_centimetres: float = ..., gap_cm2: float = ...,
    gap_square_millimetres: float = ..., gap_mm2: float = ..., gap_square_inches: float = ..., gap_in2: float = ...,
    gap_square_feet: float = ..., gap_ft2: float = ...,
) -> _t.CheckValve:
    """A check valve that leaks through a gap: a flap that a grain of sand or a tubeworm holds open.

    Takes gap [m2] (open area a [m^2], 0 (it holds) to 1).

    Needs gap.

    Gives the valve
    """
    ...

@overload
def leaking_check_valve(
    *,
    loss: Union[_t.Amount, _t.LossCoefficientMade],
    bore: _t.Amount,
) -> _t.CheckValve:
    """A check valve that leaks like a loss coefficient backwards.

    Takes loss (K > 0 of the valve against the flow; the larger, the better it holds); bore (D [m] > 0 whose
    velocity K belongs to).

    Needs loss, bore.

    Gives the valve
    """
    ...

def on_bore(
    *,
    loss: Union[Union[_t.Amount, _t.LossCoefficientMade], _t.Band],
    bores: _t.BasisChangeGiven,
) -> Quantity:
    """A loss coefficient carried over to the velocity in another bore. Forgetting it is the commonest mistake with
    K.

    Takes loss (K with its band); bores (the bore it was given for, and the one it is wanted for, [m] > 0).

    Needs loss, bores.

    Gives K with its band, on the other bore
    """
    ...

def equivalent_length(
    *,
    loss: Union[_t.Amount, _t.LossCoefficientMade],
    bore: _t.Amount,
    darcy_factor: Union[_t.Amount, _t.DarcyFactorMade],
) -> Quantity:
    """Length of straight pipe that would cost the same head.

    Takes loss (K, on the velocity in the pipe); bore (D [m] > 0); darcy_factor (friction factor of that pipe >
    0).

    Needs loss, bore, darcy_factor.

    Gives length [m]
    """
    ...

def mean_velocity(
    *,
    flow: _t.Amount = ...,
    bore: _t.Amount,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """Mean velocity of the water in a full pipe.

    Takes flow [m3/s] (Q [m^3/s], either sign); bore (D [m] > 0).

    Needs flow, bore.

    Gives velocity [m/s], with the sign of the flow
    """
    ...

def reynolds(
    *,
    flow: _t.Amount = ...,
    bore: _t.Amount,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """Reynolds number of the flow in a full pipe.

    Takes flow [m3/s] (Q [m^3/s], either sign); bore (D [m] > 0); water (density and viscosity at the pipe's
    temperature).

    Needs flow, bore, water.

    Gives Reynolds number
    """
    ...

def friction_factor(
    *,
    reynolds_number: Union[_t.Amount, _t.ReynoldsNumberMade],
    relative_roughness: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Friction factor of a full round pipe, laminar to rough (Colebrook-White).

    Takes reynolds_number (Reynolds number, above 0, to 1e8); relative_roughness (relative roughness e/D, 0 to
    0.05).

    Needs reynolds_number, relative_roughness.

    Gives Darcy friction factor
    """
    ...

def head_loss(
    *,
    run: _t.PipeRunGiven,
    flow: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    extrapolate: bool = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """Head lost in a run of pipe with its fittings (Darcy-Weisbach, Colebrook-White).

    Takes run (bore D [m] > 0; length L [m] >= 0; roughness e [m], 0 <= e/D <= 0.05; sum of K >= 0 (central
    value)); flow [m3/s] (Q [m^3/s]; the loss takes its sign); water (density and viscosity at the pipe's
    temperature).

    Needs run, flow, water.

    Gives head [m of the flowing water]
    """
    ...

def head_loss_gradient(
    *,
    run: _t.PipeRunGiven,
    flow: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    extrapolate: bool = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """How steeply the head lost in a run grows with the flow: the derivative of `head_loss`, in closed form.

    Takes run (as for `head_loss`); flow [m3/s] (Q [m^3/s], either sign); water (density and viscosity at the
    pipe's temperature).

    Needs run, flow, water.

    Gives head per flow [s/m^2]
    """
    ...

def flow_for_head(
    *,
    run: _t.PipeRunGiven,
    drive: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    extrapolate: bool = ...,
    drive_metres: float = ..., drive_m: float = ..., drive_centimetres: float = ..., drive_cm: float = ...,
    drive_millimetres: float = ..., drive_mm: float = ..., drive_micrometres: float = ..., drive_um: float = ...,
    drive_nanometres: float = ..., drive_nm: float = ..., drive_inches: float = ..., drive_in: float = ...,
    drive_feet: float = ..., drive_ft: float = ...,
) -> Quantity:
    """Flow that a head drives through a run: the inverse of `head_loss`.

    Takes run (as for `head_loss`; with neither length nor loss coefficient it would pass anything, and is
    refused); drive [m] (H [m of the flowing water]; the flow takes its sign); water (density and viscosity at the
    pipe's temperature).

    Needs run, drive, water.

    Gives flow [m^3/s]; zero through a shut valve
    """
    ...

def friction_factor_haaland(
    *,
    reynolds_number: Union[_t.Amount, _t.ReynoldsNumberMade],
    relative_roughness: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Friction factor by Haaland's explicit formula, to compare with `friction_factor`.

    Takes reynolds_number (Reynolds number, 4e3 to 1e8); relative_roughness (relative roughness e/D, 0 to 0.05).

    Needs reynolds_number, relative_roughness.

    Gives Darcy friction factor
    """
    ...

def friction_factor_churchill(
    *,
    reynolds_number: Union[_t.Amount, _t.ReynoldsNumberMade],
    relative_roughness: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Friction factor by Churchill's formula for all regimes, to compare with `friction_factor`.

    Takes reynolds_number (Reynolds number, above 0, to 1e8); relative_roughness (relative roughness e/D, 0 to
    0.05).

    Needs reynolds_number, relative_roughness.

    Gives Darcy friction factor; between 2000 and 4000 it overshoots, f(3000) > f(4000)
    """
    ...

def friction_factor_serghides(
    *,
    reynolds_number: Union[_t.Amount, _t.ReynoldsNumberMade],
    relative_roughness: _t.Amount,
    extrapolate: bool = ...,
) -> Quantity:
    """Friction factor by Serghides' shorter formula, to compare with `friction_factor`.

    Takes reynolds_number (Reynolds number, 2100 to 1e8); relative_roughness (relative roughness e/D, 0 to 0.05).

    Needs reynolds_number, relative_roughness.

    Gives Darcy friction factor
    """
    ...

def friction_factor_blasius(
    *,
    reynolds_number: Union[_t.Amount, _t.ReynoldsNumberMade],
    extrapolate: bool = ...,
) -> Quantity:
    """Friction factor of a smooth pipe by Blasius' power law, to compare with `friction_factor`.

    Takes reynolds_number (Reynolds number, 4e3 to 1e5).

    Needs reynolds_number.

    Gives Darcy friction factor
    """
    ...

def head_loss_hazen_williams(
    *,
    run: _t.PipeRunGiven,
    flow: _t.Amount = ...,
    hazen_williams_c: _t.Amount,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """Head lost in the straight pipe of a run by Hazen and Williams, to compare with tables that use it. Its
    fittings and roughness do not enter.

    Takes run (bore D [m] > 0; length L [m] >= 0); flow [m3/s] (Q [m^3/s]; the loss takes its sign);
    hazen_williams_c (C > 0: 150 for plastic).

    Needs run, flow, hazen_williams_c.

    Gives head [m of water]
    """
    ...

def jet_reach(
    *,
    drive: _t.Amount = ...,
    fall: _t.Amount = ...,
    velocity_coefficient: Optional[_t.Amount] = ...,
    drive_metres: float = ..., drive_m: float = ..., drive_centimetres: float = ..., drive_cm: float = ...,
    drive_millimetres: float = ..., drive_mm: float = ..., drive_micrometres: float = ..., drive_um: float = ...,
    drive_nanometres: float = ..., drive_nm: float = ..., drive_inches: float = ..., drive_in: float = ...,
    drive_feet: float = ..., drive_ft: float = ..., fall_metres: float = ..., fall_m: float = ...,
    fall_centimetres: float = ..., fall_cm: float = ..., fall_millimetres: float = ..., fall_mm: float = ...,
    fall_micrometres: float = ..., fall_um: float = ..., fall_nanometres: float = ..., fall_nm: float = ...,
    fall_inches: float = ..., fall_in: float = ..., fall_feet: float = ..., fall_ft: float = ...,
) -> Quantity:
    """Horizontal reach of a free jet.

    Takes drive [m] (over the hole); fall [m] (down to where the reach is asked for); velocity_coefficient (true
    velocity over sqrt(2 g h): 0.97 to 0.99 for a clean hole).

    Needs drive, fall.

    Gives reach [m]
    """
    ...

def velocity_coefficient(
    *,
    drive: _t.Amount = ...,
    fall: _t.Amount = ...,
    reach: _t.Amount = ...,
    drive_metres: float = ..., drive_m: float = ..., drive_centimetres: float = ..., drive_cm: float = ...,
    drive_millimetres: float = ..., drive_mm: float = ..., drive_micrometres: float = ..., drive_um: float = ...,
    drive_nanometres: float = ..., drive_nm: float = ..., drive_inches: float = ..., drive_in: float = ...,
    drive_feet: float = ..., drive_ft: float = ..., fall_metres: float = ..., fall_m: float = ...,
    fall_centimetres: float = ..., fall_cm: float = ..., fall_millimetres: float = ..., fall_mm: float = ...,
    fall_micrometres: float = ..., fall_um: float = ..., fall_nanometres: float = ..., fall_nm: float = ...,
    fall_inches: float = ..., fall_in: float = ..., fall_feet: float = ..., fall_ft: float = ...,
    reach_metres: float = ..., reach_m: float = ..., reach_centimetres: float = ..., reach_cm: float = ...,
    reach_millimetres: float = ..., reach_mm: float = ..., reach_micrometres: float = ..., reach_um: float = ...,
    reach_nanometres: float = ..., reach_nm: float = ..., reach_inches: float = ..., reach_in: float = ...,
    reach_feet: float = ..., reach_ft: float = ...,
) -> Quantity:
    """Velocity coefficient of a hole or nozzle from the reach of its jet.

    Takes drive [m]; fall [m]; reach [m].

    Needs drive, fall, reach.

    Gives [1] velocity coefficient
    """
    ...

def jet_height(
    *,
    behind: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    behind_pascals: float = ..., behind_Pa: float = ..., behind_hectopascals: float = ..., behind_hPa: float = ...,
    behind_kilopascals: float = ..., behind_kPa: float = ..., behind_megapascals: float = ..., behind_MPa: float = ...,
    behind_gigapascals: float = ..., behind_GPa: float = ..., behind_bars: float = ..., behind_bar: float = ...,
    behind_decibars: float = ..., behind_dbar: float = ..., behind_atmospheres: float = ..., behind_atm: float = ...,
    behind_psi: float = ..., behind_psf: float = ...,
) -> Quantity:
    """Height that an upward jet would reach without air: where a split pipe can wet the ceiling.

    Takes behind [Pa] (gauge pressure behind the hole [Pa] >= 0); water (its density).

    Needs behind, water.

    Gives height [m]
    """
    ...

def flow_over(
    *,
    edge: Union[_t.PlumbingFullWidthEdgeOption, _t.PlumbingContractedEdgeOption, _t.PlumbingToothedEdgeOption, _t.PlumbingVNotchOption, _t.PlumbingStandpipeOption],
    head: _t.Amount = ...,
    extrapolate: bool = ...,
    head_metres: float = ..., head_m: float = ..., head_centimetres: float = ..., head_cm: float = ...,
    head_millimetres: float = ..., head_mm: float = ..., head_micrometres: float = ..., head_um: float = ...,
    head_nanometres: float = ..., head_nm: float = ..., head_inches: float = ..., head_in: float = ...,
    head_feet: float = ..., head_ft: float = ...,
) -> _t.OverflowFlow:
    """Flow over an edge at a given height of the water, with its band.

    Takes edge (any of the edges: lengths [m] > 0, opening of a V-notch 20 to 100 degrees); head [m] (h [m] >= 0
    of the still water over the crest; a full width edge: at most 0.75 m and the crest height; a contracted edge:
    at most twice the crest height).

    Needs edge, head.

    Gives flow [m^3/s] with its band, and whether it is extrapolated
    """
    ...

def head_over(
    *,
    edge: Union[_t.PlumbingFullWidthEdgeOption, _t.PlumbingContractedEdgeOption, _t.PlumbingToothedEdgeOption, _t.PlumbingVNotchOption, _t.PlumbingStandpipeOption],
    flow: _t.Amount = ...,
    extrapolate: bool = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> _t.OverflowHead:
    """Height of the water over an edge for a given flow, with its band: the inverse of `flow_over`.

    Takes edge (any of the edges, as for `flow_over`); flow [m3/s] (Q [m^3/s] >= 0).

    Needs edge, flow.

    Gives head [m] with its band (the high end belongs to the edge that passes least), and whether it is
    extrapolated
    """
    ...

def known_loss(
    *,
    k: _t.Amount,
) -> Quantity:
    """A loss coefficient that the caller knows, as an estimate without a band.

    Takes k (K, -1e6 to 1e15).

    Needs k.

    Gives K as an estimate
    """
    ...

def pvc_pipe(
    *,
    size: _t.Amount,
    schedule: _t.PvcSchedule,
) -> _t.PvcDimensions:
    """Dimensions of an inch PVC pressure pipe.

    Takes size (nominal size: 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3 or 4); schedule (40 or 80).

    Needs size, schedule.

    Gives outside diameter, minimum wall, and the two bores
    """
    ...

def metric_pvc_pipe(
    *,
    size: _t.Amount,
    rating: _t.PressureClass,
) -> _t.MetricDimensions:
    """Dimensions of a metric PVC-U pressure pipe.

    Takes size (nominal size dn: 20, 25, 32, 40, 50, 63, 75, 90 or 110 mm); rating (pressure class PN10 (from dn
    32) or PN16).

    Needs size, rating.

    Gives outside diameter, wall and bore
    """
    ...

def power_cut(
    *,
    display: _t.DisplayTankGiven,
    sump: _t.SumpGiven,
    returns: Optional[Sequence[_t.ReturnLineGiven]] = ...,
    edge_above_floor: _t.Amount = ...,
    shared_pipes: Optional[Sequence[_t.SharedPipeGiven]] = ...,
    water: Optional[Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid]] = ...,
    drains_into: Optional[int] = ...,
    breaks_blocked: Optional[bool] = ...,
    check_valves: Optional[_t.CheckValveState] = ...,
    check_valve_leak: Optional[_t.Amount] = ...,
    topped_up: Optional[_t.Amount] = ...,
    area_uncertainty: Optional[_t.Amount] = ...,
    level_uncertainty: Optional[_t.Amount] = ...,
    flow_uncertainty: Optional[_t.Amount] = ...,
    reserve: Optional[_t.Amount] = ...,
    edge_above_floor_metres: float = ..., edge_above_floor_m: float = ..., edge_above_floor_centimetres: float = ...,
    edge_above_floor_cm: float = ..., edge_above_floor_millimetres: float = ..., edge_above_floor_mm: float = ...,
    edge_above_floor_micrometres: float = ..., edge_above_floor_um: float = ...,
    edge_above_floor_nanometres: float = ..., edge_above_floor_nm: float = ..., edge_above_floor_inches: float = ...,
    edge_above_floor_in: float = ..., edge_above_floor_feet: float = ..., edge_above_floor_ft: float = ...,
    check_valve_leak_percent: float = ..., topped_up_cubic_metres: float = ..., topped_up_m3: float = ...,
    topped_up_litres: float = ..., topped_up_L: float = ..., topped_up_millilitres: float = ...,
    topped_up_mL: float = ..., topped_up_cubic_inches: float = ..., topped_up_in3: float = ...,
    topped_up_cubic_feet: float = ..., topped_up_ft3: float = ..., topped_up_us_gallons: float = ...,
    topped_up_imperial_gallons: float = ..., area_uncertainty_percent: float = ...,
    level_uncertainty_metres: float = ..., level_uncertainty_m: float = ..., level_uncertainty_centimetres: float = ...,
    level_uncertainty_cm: float = ..., level_uncertainty_millimetres: float = ..., level_uncertainty_mm: float = ...,
    level_uncertainty_micrometres: float = ..., level_uncertainty_um: float = ...,
    level_uncertainty_nanometres: float = ..., level_uncertainty_nm: float = ..., level_uncertainty_inches: float = ...,
    level_uncertainty_in: float = ..., level_uncertainty_feet: float = ..., level_uncertainty_ft: float = ...,
    flow_uncertainty_percent: float = ..., reserve_metres: float = ..., reserve_m: float = ...,
    reserve_centimetres: float = ..., reserve_cm: float = ..., reserve_millimetres: float = ...,
    reserve_mm: float = ..., reserve_micrometres: float = ..., reserve_um: float = ..., reserve_nanometres: float = ...,
    reserve_nm: float = ..., reserve_inches: float = ..., reserve_in: float = ..., reserve_feet: float = ...,
    reserve_ft: float = ...,
) -> _t.PowerCutAnswer:
    """What a power cut brings down, how high the sump rises on the way and at the end, and what is left below its
    rim.

    Takes display; sump; returns; edge_above_floor [m] (overflow edge of the display above the floor of the sump);
    shared_pipes; water (Sea water of 25 degC, unless given; it decides how fast pipes siphon, within a few per
    cent); drains_into (chamber that the drains end in, counted from 0); breaks_blocked (no siphon break works);
    check_valves; check_valve_leak (of the bore; common practice, no source); topped_up [m3] (what a top-off that
    stuck open has put in too much); area_uncertainty (of every horizontal area); level_uncertainty [m] (of the
    running level, the box's fall and the outlets' depth); flow_uncertainty (of what the returns bring together);
    reserve [m] (height to keep free below the rim, for the two limits).

    Needs display, sump, edge_above_floor.

    Gives volumes, levels, the margin of the worst moment, what runs onto the floor, and a caution
    """
    ...

def worst_moment_of(
    *,
    display: _t.DisplayTankGiven,
    sump: _t.SumpGiven,
    returns: Optional[Sequence[_t.ReturnLineGiven]] = ...,
    edge_above_floor: _t.Amount = ...,
    shared_pipes: Optional[Sequence[_t.SharedPipeGiven]] = ...,
    water: Optional[Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid]] = ...,
    drains_into: Optional[int] = ...,
    breaks_blocked: Optional[bool] = ...,
    check_valves: Optional[_t.CheckValveState] = ...,
    check_valve_leak: Optional[_t.Amount] = ...,
    topped_up: Optional[_t.Amount] = ...,
    area_uncertainty: Optional[_t.Amount] = ...,
    level_uncertainty: Optional[_t.Amount] = ...,
    flow_uncertainty: Optional[_t.Amount] = ...,
    reserve: Optional[_t.Amount] = ...,
    edge_above_floor_metres: float = ..., edge_above_floor_m: float = ..., edge_above_floor_centimetres: float = ...,
    edge_above_floor_cm: float = ..., edge_above_floor_millimetres: float = ..., edge_above_floor_mm: float = ...,
    edge_above_floor_micrometres: float = ..., edge_above_floor_um: float = ...,
    edge_above_floor_nanometres: float = ..., edge_above_floor_nm: float = ..., edge_above_floor_inches: float = ...,
    edge_above_floor_in: float = ..., edge_above_floor_feet: float = ..., edge_above_floor_ft: float = ...,
    check_valve_leak_percent: float = ..., topped_up_cubic_metres: float = ..., topped_up_m3: float = ...,
    topped_up_litres: float = ..., topped_up_L: float = ..., topped_up_millilitres: float = ...,
    topped_up_mL: float = ..., topped_up_cubic_inches: float = ..., topped_up_in3: float = ...,
    topped_up_cubic_feet: float = ..., topped_up_ft3: float = ..., topped_up_us_gallons: float = ...,
    topped_up_imperial_gallons: float = ..., area_uncertainty_percent: float = ...,
    level_uncertainty_metres: float = ..., level_uncertainty_m: float = ..., level_uncertainty_centimetres: float = ...,
    level_uncertainty_cm: float = ..., level_uncertainty_millimetres: float = ..., level_uncertainty_mm: float = ...,
    level_uncertainty_micrometres: float = ..., level_uncertainty_um: float = ...,
    level_uncertainty_nanometres: float = ..., level_uncertainty_nm: float = ..., level_uncertainty_inches: float = ...,
    level_uncertainty_in: float = ..., level_uncertainty_feet: float = ..., level_uncertainty_ft: float = ...,
    flow_uncertainty_percent: float = ..., reserve_metres: float = ..., reserve_m: float = ...,
    reserve_centimetres: float = ..., reserve_cm: float = ..., reserve_millimetres: float = ...,
    reserve_mm: float = ..., reserve_micrometres: float = ..., reserve_um: float = ..., reserve_nanometres: float = ...,
    reserve_nm: float = ..., reserve_inches: float = ..., reserve_in: float = ..., reserve_feet: float = ...,
    reserve_ft: float = ...,
) -> _t.WorstMoment:
    """The worst moment of a power cut without its band: what a simulation of doubts calls for each of its samples.

    Takes display; sump; returns; edge_above_floor [m] (overflow edge of the display above the floor of the sump);
    shared_pipes; water (Sea water of 25 degC, unless given; it decides how fast pipes siphon, within a few per
    cent); drains_into (chamber that the drains end in, counted from 0); breaks_blocked (no siphon break works);
    check_valves; check_valve_leak (of the bore; common practice, no source); topped_up [m3] (what a top-off that
    stuck open has put in too much); area_uncertainty (of every horizontal area); level_uncertainty [m] (of the
    running level, the box's fall and the outlets' depth); flow_uncertainty (of what the returns bring together);
    reserve [m] (height to keep free below the rim, for the two limits).

    Needs display, sump, edge_above_floor.

    Gives margin [m], chamber, time after the power failed [s]
    """
    ...

def power_cut_breaks_blocked(
    *,
    display: _t.DisplayTankGiven,
    sump: _t.SumpGiven,
    returns: Optional[Sequence[_t.ReturnLineGiven]] = ...,
    edge_above_floor: _t.Amount = ...,
    shared_pipes: Optional[Sequence[_t.SharedPipeGiven]] = ...,
    water: Optional[Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid]] = ...,
    drains_into: Optional[int] = ...,
    breaks_blocked: Optional[bool] = ...,
    check_valves: Optional[_t.CheckValveState] = ...,
    check_valve_leak: Optional[_t.Amount] = ...,
    topped_up: Optional[_t.Amount] = ...,
    area_uncertainty: Optional[_t.Amount] = ...,
    level_uncertainty: Optional[_t.Amount] = ...,
    flow_uncertainty: Optional[_t.Amount] = ...,
    reserve: Optional[_t.Amount] = ...,
    edge_above_floor_metres: float = ..., edge_above_floor_m: float = ..., edge_above_floor_centimetres: float = ...,
    edge_above_floor_cm: float = ..., edge_above_floor_millimetres: float = ..., edge_above_floor_mm: float = ...,
    edge_above_floor_micrometres: float = ..., edge_above_floor_um: float = ...,
    edge_above_floor_nanometres: float = ..., edge_above_floor_nm: float = ..., edge_above_floor_inches: float = ...,
    edge_above_floor_in: float = ..., edge_above_floor_feet: float = ..., edge_above_floor_ft: float = ...,
    check_valve_leak_percent: float = ..., topped_up_cubic_metres: float = ..., topped_up_m3: float = ...,
    topped_up_litres: float = ..., topped_up_L: float = ..., topped_up_millilitres: float = ...,
    topped_up_mL: float = ..., topped_up_cubic_inches: float = ..., topped_up_in3: float = ...,
    topped_up_cubic_feet: float = ..., topped_up_ft3: float = ..., topped_up_us_gallons: float = ...,
    topped_up_imperial_gallons: float = ..., area_uncertainty_percent: float = ...,
    level_uncertainty_metres: float = ..., level_uncertainty_m: float = ..., level_uncertainty_centimetres: float = ...,
    level_uncertainty_cm: float = ..., level_uncertainty_millimetres: float = ..., level_uncertainty_mm: float = ...,
    level_uncertainty_micrometres: float = ..., level_uncertainty_um: float = ...,
    level_uncertainty_nanometres: float = ..., level_uncertainty_nm: float = ..., level_uncertainty_inches: float = ...,
    level_uncertainty_in: float = ..., level_uncertainty_feet: float = ..., level_uncertainty_ft: float = ...,
    flow_uncertainty_percent: float = ..., reserve_metres: float = ..., reserve_m: float = ...,
    reserve_centimetres: float = ..., reserve_cm: float = ..., reserve_millimetres: float = ...,
    reserve_mm: float = ..., reserve_micrometres: float = ..., reserve_um: float = ..., reserve_nanometres: float = ...,
    reserve_nm: float = ..., reserve_inches: float = ..., reserve_in: float = ..., reserve_feet: float = ...,
    reserve_ft: float = ...,
) -> _t.Single[List[_t.PowerCutFailureCaseParts]]:
    """A power cut with each siphon break blocked in turn, then with all of them where there are several.

    Takes display; sump; returns; edge_above_floor [m] (overflow edge of the display above the floor of the sump);
    shared_pipes; water (Sea water of 25 degC, unless given; it decides how fast pipes siphon, within a few per
    cent); drains_into (chamber that the drains end in, counted from 0); breaks_blocked (no siphon break works);
    check_valves; check_valve_leak (of the bore; common practice, no source); topped_up [m3] (what a top-off that
    stuck open has put in too much); area_uncertainty (of every horizontal area); level_uncertainty [m] (of the
    running level, the box's fall and the outlets' depth); flow_uncertainty (of what the returns bring together);
    reserve [m] (height to keep free below the rim, for the two limits).

    Needs display, sump, edge_above_floor.

    Gives one case a break; none without breaks, or where `in` says already that they are blocked
    """
    ...

def power_cut_check_valves(
    *,
    display: _t.DisplayTankGiven,
    sump: _t.SumpGiven,
    returns: Optional[Sequence[_t.ReturnLineGiven]] = ...,
    edge_above_floor: _t.Amount = ...,
    shared_pipes: Optional[Sequence[_t.SharedPipeGiven]] = ...,
    water: Optional[Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid]] = ...,
    drains_into: Optional[int] = ...,
    breaks_blocked: Optional[bool] = ...,
    check_valves: Optional[_t.CheckValveState] = ...,
    check_valve_leak: Optional[_t.Amount] = ...,
    topped_up: Optional[_t.Amount] = ...,
    area_uncertainty: Optional[_t.Amount] = ...,
    level_uncertainty: Optional[_t.Amount] = ...,
    flow_uncertainty: Optional[_t.Amount] = ...,
    reserve: Optional[_t.Amount] = ...,
    edge_above_floor_metres: float = ..., edge_above_floor_m: float = ..., edge_above_floor_centimetres: float = ...,
    edge_above_floor_cm: float = ..., edge_above_floor_millimetres: float = ..., edge_above_floor_mm: float = ...,
    edge_above_floor_micrometres: float = ..., edge_above_floor_um: float = ...,
    edge_above_floor_nanometres: float = ..., edge_above_floor_nm: float = ..., edge_above_floor_inches: float = ...,
    edge_above_floor_in: float = ..., edge_above_floor_feet: float = ..., edge_above_floor_ft: float = ...,
    check_valve_leak_percent: float = ..., topped_up_cubic_metres: float = ..., topped_up_m3: float = ...,
    topped_up_litres: float = ..., topped_up_L: float = ..., topped_up_millilitres: float = ...,
    topped_up_mL: float = ..., topped_up_cubic_inches: float = ..., topped_up_in3: float = ...,
    topped_up_cubic_feet: float = ..., topped_up_ft3: float = ..., topped_up_us_gallons: float = ...,
    topped_up_imperial_gallons: float = ..., area_uncertainty_percent: float = ...,
    level_uncertainty_metres: float = ..., level_uncertainty_m: float = ..., level_uncertainty_centimetres: float = ...,
    level_uncertainty_cm: float = ..., level_uncertainty_millimetres: float = ..., level_uncertainty_mm: float = ...,
    level_uncertainty_micrometres: float = ..., level_uncertainty_um: float = ...,
    level_uncertainty_nanometres: float = ..., level_uncertainty_nm: float = ..., level_uncertainty_inches: float = ...,
    level_uncertainty_in: float = ..., level_uncertainty_feet: float = ..., level_uncertainty_ft: float = ...,
    flow_uncertainty_percent: float = ..., reserve_metres: float = ..., reserve_m: float = ...,
    reserve_centimetres: float = ..., reserve_cm: float = ..., reserve_millimetres: float = ...,
    reserve_mm: float = ..., reserve_micrometres: float = ..., reserve_um: float = ..., reserve_nanometres: float = ...,
    reserve_nm: float = ..., reserve_inches: float = ..., reserve_in: float = ..., reserve_feet: float = ...,
    reserve_ft: float = ...,
) -> _t.Single[List[_t.PowerCutFailureCaseParts]]:
    """A power cut with check valves that leak, and with check valves that hold.

    Takes display; sump; returns; edge_above_floor [m] (overflow edge of the display above the floor of the sump);
    shared_pipes; water (Sea water of 25 degC, unless given; it decides how fast pipes siphon, within a few per
    cent); drains_into (chamber that the drains end in, counted from 0); breaks_blocked (no siphon break works);
    check_valves; check_valve_leak (of the bore; common practice, no source); topped_up [m3] (what a top-off that
    stuck open has put in too much); area_uncertainty (of every horizontal area); level_uncertainty [m] (of the
    running level, the box's fall and the outlets' depth); flow_uncertainty (of what the returns bring together);
    reserve [m] (height to keep free below the rim, for the two limits).

    Needs display, sump, edge_above_floor.

    Gives two cases; none where there is no check valve
    """
    ...

def power_cut_failures(
    *,
    power_cut_input: _t.PowerCutInputGiven,
    top_off: Optional[_t.Amount] = ...,
    top_off_cubic_metres: float = ..., top_off_m3: float = ..., top_off_litres: float = ..., top_off_L: float = ...,
    top_off_millilitres: float = ..., top_off_mL: float = ..., top_off_cubic_inches: float = ...,
    top_off_in3: float = ..., top_off_cubic_feet: float = ..., top_off_ft3: float = ...,
    top_off_us_gallons: float = ..., top_off_imperial_gallons: float = ...,
) -> _t.Single[List[_t.PowerCutFailureCaseParts]]:
    """A power cut with each failure in turn: without one, each siphon break blocked, all of them, check valves
    leaking and holding (where there are any), and the top-off stuck open (where its reservoir is given).

    Takes power_cut_input (as for `power_cut`; what its own fields say fails goes on top); top_off [m3] (volume
    [m^3] >= 0 that a top-off can put in before somebody notices; zero leaves the case out).

    Needs power_cut_input.

    Gives one case a failure, none first
    """
    ...

def highest_safe_running_level(
    *,
    display: _t.DisplayTankGiven,
    sump: _t.SumpGiven,
    returns: Optional[Sequence[_t.ReturnLineGiven]] = ...,
    edge_above_floor: _t.Amount = ...,
    shared_pipes: Optional[Sequence[_t.SharedPipeGiven]] = ...,
    water: Optional[Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid]] = ...,
    drains_into: Optional[int] = ...,
    breaks_blocked: Optional[bool] = ...,
    check_valves: Optional[_t.CheckValveState] = ...,
    check_valve_leak: Optional[_t.Amount] = ...,
    topped_up: Optional[_t.Amount] = ...,
    area_uncertainty: Optional[_t.Amount] = ...,
    level_uncertainty: Optional[_t.Amount] = ...,
    flow_uncertainty: Optional[_t.Amount] = ...,
    reserve: Optional[_t.Amount] = ...,
    edge_above_floor_metres: float = ..., edge_above_floor_m: float = ..., edge_above_floor_centimetres: float = ...,
    edge_above_floor_cm: float = ..., edge_above_floor_millimetres: float = ..., edge_above_floor_mm: float = ...,
    edge_above_floor_micrometres: float = ..., edge_above_floor_um: float = ...,
    edge_above_floor_nanometres: float = ..., edge_above_floor_nm: float = ..., edge_above_floor_inches: float = ...,
    edge_above_floor_in: float = ..., edge_above_floor_feet: float = ..., edge_above_floor_ft: float = ...,
    check_valve_leak_percent: float = ..., topped_up_cubic_metres: float = ..., topped_up_m3: float = ...,
    topped_up_litres: float = ..., topped_up_L: float = ..., topped_up_millilitres: float = ...,
    topped_up_mL: float = ..., topped_up_cubic_inches: float = ..., topped_up_in3: float = ...,
    topped_up_cubic_feet: float = ..., topped_up_ft3: float = ..., topped_up_us_gallons: float = ...,
    topped_up_imperial_gallons: float = ..., area_uncertainty_percent: float = ...,
    level_uncertainty_metres: float = ..., level_uncertainty_m: float = ..., level_uncertainty_centimetres: float = ...,
    level_uncertainty_cm: float = ..., level_uncertainty_millimetres: float = ..., level_uncertainty_mm: float = ...,
    level_uncertainty_micrometres: float = ..., level_uncertainty_um: float = ...,
    level_uncertainty_nanometres: float = ..., level_uncertainty_nm: float = ..., level_uncertainty_inches: float = ...,
    level_uncertainty_in: float = ..., level_uncertainty_feet: float = ..., level_uncertainty_ft: float = ...,
    flow_uncertainty_percent: float = ..., reserve_metres: float = ..., reserve_m: float = ...,
    reserve_centimetres: float = ..., reserve_cm: float = ..., reserve_millimetres: float = ...,
    reserve_mm: float = ..., reserve_micrometres: float = ..., reserve_um: float = ..., reserve_nanometres: float = ...,
    reserve_nm: float = ..., reserve_inches: float = ..., reserve_in: float = ..., reserve_feet: float = ...,
    reserve_ft: float = ...,
) -> Union[Quantity, _t.Single[None]]:
    """Highest level at which the last chamber may run, so that the worst case keeps the reserve below the rim.

    Takes display; sump; returns; edge_above_floor [m] (overflow edge of the display above the floor of the sump);
    shared_pipes; water (Sea water of 25 degC, unless given; it decides how fast pipes siphon, within a few per
    cent); drains_into (chamber that the drains end in, counted from 0); breaks_blocked (no siphon break works);
    check_valves; check_valve_leak (of the bore; common practice, no source); topped_up [m3] (what a top-off that
    stuck open has put in too much); area_uncertainty (of every horizontal area); level_uncertainty [m] (of the
    running level, the box's fall and the outlets' depth); flow_uncertainty (of what the returns bring together);
    reserve [m] (height to keep free below the rim, for the two limits).

    Needs display, sump, edge_above_floor.

    Gives level [m above the floor]; none where no level is safe
    """
    ...

def deepest_safe_outlet(
    *,
    display: _t.DisplayTankGiven,
    sump: _t.SumpGiven,
    returns: Optional[Sequence[_t.ReturnLineGiven]] = ...,
    edge_above_floor: _t.Amount = ...,
    shared_pipes: Optional[Sequence[_t.SharedPipeGiven]] = ...,
    water: Optional[Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid]] = ...,
    drains_into: Optional[int] = ...,
    breaks_blocked: Optional[bool] = ...,
    check_valves: Optional[_t.CheckValveState] = ...,
    check_valve_leak: Optional[_t.Amount] = ...,
    topped_up: Optional[_t.Amount] = ...,
    area_uncertainty: Optional[_t.Amount] = ...,
    level_uncertainty: Optional[_t.Amount] = ...,
    flow_uncertainty: Optional[_t.Amount] = ...,
    reserve: Optional[_t.Amount] = ...,
    edge_above_floor_metres: float = ..., edge_above_floor_m: float = ..., edge_above_floor_centimetres: float = ...,
    edge_above_floor_cm: float = ..., edge_above_floor_millimetres: float = ..., edge_above_floor_mm: float = ...,
    edge_above_floor_micrometres: float = ..., edge_above_floor_um: float = ...,
    edge_above_floor_nanometres: float = ..., edge_above_floor_nm: float = ..., edge_above_floor_inches: float = ...,
    edge_above_floor_in: float = ..., edge_above_floor_feet: float = ..., edge_above_floor_ft: float = ...,
    check_valve_leak_percent: float = ..., topped_up_cubic_metres: float = ..., topped_up_m3: float = ...,
    topped_up_litres: float = ..., topped_up_L: float = ..., topped_up_millilitres: float = ...,
    topped_up_mL: float = ..., topped_up_cubic_inches: float = ..., topped_up_in3: float = ...,
    topped_up_cubic_feet: float = ..., topped_up_ft3: float = ..., topped_up_us_gallons: float = ...,
    topped_up_imperial_gallons: float = ..., area_uncertainty_percent: float = ...,
    level_uncertainty_metres: float = ..., level_uncertainty_m: float = ..., level_uncertainty_centimetres: float = ...,
    level_uncertainty_cm: float = ..., level_uncertainty_millimetres: float = ..., level_uncertainty_mm: float = ...,
    level_uncertainty_micrometres: float = ..., level_uncertainty_um: float = ...,
    level_uncertainty_nanometres: float = ..., level_uncertainty_nm: float = ..., level_uncertainty_inches: float = ...,
    level_uncertainty_in: float = ..., level_uncertainty_feet: float = ..., level_uncertainty_ft: float = ...,
    flow_uncertainty_percent: float = ..., reserve_metres: float = ..., reserve_m: float = ...,
    reserve_centimetres: float = ..., reserve_cm: float = ..., reserve_millimetres: float = ...,
    reserve_mm: float = ..., reserve_micrometres: float = ..., reserve_um: float = ..., reserve_nanometres: float = ...,
    reserve_nm: float = ..., reserve_inches: float = ..., reserve_in: float = ..., reserve_feet: float = ...,
    reserve_ft: float = ...,
) -> Union[Quantity, _t.Single[None]]:
    """Greatest depth below the overflow edge at which returns may draw air, so that the worst case keeps the
    reserve.

    Takes display; sump; returns; edge_above_floor [m] (overflow edge of the display above the floor of the sump);
    shared_pipes; water (Sea water of 25 degC, unless given; it decides how fast pipes siphon, within a few per
    cent); drains_into (chamber that the drains end in, counted from 0); breaks_blocked (no siphon break works);
    check_valves; check_valve_leak (of the bore; common practice, no source); topped_up [m3] (what a top-off that
    stuck open has put in too much); area_uncertainty (of every horizontal area); level_uncertainty [m] (of the
    running level, the box's fall and the outlets' depth); flow_uncertainty (of what the returns bring together);
    reserve [m] (height to keep free below the rim, for the two limits).

    Needs display, sump, edge_above_floor.

    Gives depth [m below the edge; negative above it]; none where no return is safe at any height
    """
    ...

def power_cut_transient(
    *,
    system: _t.PowerCutInputGiven,
    until: Optional[_t.Amount] = ...,
    sample_every: Optional[_t.Amount] = ...,
    until_seconds: float = ..., until_s: float = ..., until_minutes: float = ..., until_min: float = ...,
    until_hours: float = ..., until_h: float = ..., until_days: float = ..., until_d: float = ...,
    until_weeks: float = ..., until_wk: float = ..., sample_every_seconds: float = ..., sample_every_s: float = ...,
    sample_every_minutes: float = ..., sample_every_min: float = ..., sample_every_hours: float = ...,
    sample_every_h: float = ..., sample_every_days: float = ..., sample_every_d: float = ...,
    sample_every_weeks: float = ..., sample_every_wk: float = ...,
) -> _t.PowerCutHistory:
    """Levels in display and sump over time after the pump stops.

    Takes system; until [s]; sample_every [s].

    Needs system.

    Gives samples from 0 to the end, peaks, a caution
    """
    ...

def carried_while_priming(
    *,
    drain: _t.DrainGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
) -> Quantity:
    """What a drain carries before it runs full.

    Takes drain (pipe, drop and inlet head [m]; whether it is set up to run full); water (density and viscosity).

    Needs drain, water.

    Gives flow [m^3/s] with its band
    """
    ...

def primes_itself(
    *,
    drain: _t.DrainGiven,
    flow: _t.Amount = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> _t.Single[bool]:
    """Whether a flow sweeps the air out of a drain: from J* = 1 on.

    Takes drain (a drain that is to run full); flow [m3/s] (Q [m^3/s] >= 0 that comes to it).

    Needs drain, flow.

    Gives whether it primes by itself; below, it may go on gulping
    """
    ...

def held_up_while_priming(
    *,
    drains: Sequence[_t.DrainGiven],
    flow: _t.Estimate,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    time: Optional[_t.Amount] = ...,
    time_seconds: float = ..., time_s: float = ..., time_minutes: float = ..., time_min: float = ...,
    time_hours: float = ..., time_h: float = ..., time_days: float = ..., time_d: float = ..., time_weeks: float = ...,
    time_wk: float = ...,
) -> _t.PrimingAnswer:
    """What stands in box and display until the drains run full.

    Takes drains (the drains; none hold up the whole flow); flow (Q [m^3/s] >= 0 of all returns, with its band);
    water (density and viscosity); time [s] (t [s] >= 0, until they run full).

    Needs drains, flow, water.

    Gives flow taken [m^3/s] and volume held up [m^3] with their bands

    Caution: A drain that must run full has no reserve: give the display a second drain that can carry the whole
    flow, and test it with the first one shut, pump running and someone at the switch.
    """
    ...

def curve_from_points(
    *,
    label: str,
    points: Sequence[Union[_t.CurvePointGiven, _t.CurvePointMade, _t.CurvePoint]],
) -> _t.PumpCurve:
    """Pump curve through its maker's points, by a monotone cubic.

    Takes label (name of the pump, for errors and results); points (at least two, the first at zero flow; flows
    [m^3/s] rising, heads [m of the flowing liquid] falling).

    Needs label, points.

    Gives curve
    """
    ...

def curve_from_three_points(
    *,
    label: Optional[str] = ...,
    shutoff_head: _t.Amount = ...,
    middle: Union[_t.CurvePointGiven, _t.CurvePointMade, _t.CurvePoint],
    last: Union[_t.CurvePointGiven, _t.CurvePointMade, _t.CurvePoint],
    shutoff_head_metres: float = ..., shutoff_head_m: float = ..., shutoff_head_centimetres: float = ...,
    shutoff_head_cm: float = ..., shutoff_head_millimetres: float = ..., shutoff_head_mm: float = ...,
    shutoff_head_micrometres: float = ..., shutoff_head_um: float = ..., shutoff_head_nanometres: float = ...,
    shutoff_head_nm: float = ..., shutoff_head_inches: float = ..., shutoff_head_in: float = ...,
    shutoff_head_feet: float = ..., shutoff_head_ft: float = ...,
) -> _t.PumpCurve:
    """Pump curve through three points, by a power law.

    Takes label; shutoff_head [m]; middle; last.

    Needs shutoff_head, middle, last.

    Gives curve, ending at the last point
    """
    ...

def curve_from_one_point(
    *,
    label: str,
    duty: Union[_t.CurvePointGiven, _t.CurvePointMade, _t.CurvePoint],
) -> _t.PumpCurve:
    """Pump curve guessed from its duty point alone.

    Takes label (name of the pump, for errors and results); duty (Q_0 [m^3/s] > 0, H_0 [m] > 0).

    Needs label, duty.

    Gives curve
    """
    ...

def head_at(
    *,
    curve: Union[_t.PumpCurveMade, _t.PumpCurve],
    flow: _t.Amount = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> _t.HeadAnswer:
    """Head of a pump at a flow.

    Takes curve (of the pump); flow [m3/s] (Q [m^3/s] >= 0).

    Needs curve, flow.

    Gives head [m of the flowing liquid], or none past the end of the curve
    """
    ...

def flow_at(
    *,
    curve: Union[_t.PumpCurveMade, _t.PumpCurve],
    against: _t.Amount = ...,
    against_metres: float = ..., against_m: float = ..., against_centimetres: float = ..., against_cm: float = ...,
    against_millimetres: float = ..., against_mm: float = ..., against_micrometres: float = ...,
    against_um: float = ..., against_nanometres: float = ..., against_nm: float = ..., against_inches: float = ...,
    against_in: float = ..., against_feet: float = ..., against_ft: float = ...,
) -> _t.FlowAnswer:
    """Flow of a pump against a head.

    Takes curve (of the pump); against [m] (H [m of the flowing liquid]).

    Needs curve, against.

    Gives flow [m^3/s]; zero above the shut-off head (with a check valve); none below the head of the last point
    """
    ...

def best_point(
    *,
    curve: Union[_t.PumpCurveMade, _t.PumpCurve],
) -> _t.CurvePoint:
    """The best point of a pump, where it gives the water most power: at or near its best efficiency.

    Takes curve (of the pump).

    Needs curve.

    Gives flow [m^3/s] and head [m] there
    """
    ...

def head_in_series(
    *,
    curves: Sequence[Union[_t.PumpCurveMade, _t.PumpCurve]],
    flow: _t.Amount = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> _t.HeadAnswer:
    """Head of pumps one after the other at one flow.

    Takes curves (of the pumps); flow [m3/s] (Q [m^3/s] >= 0).

    Needs curves, flow.

    Gives head [m of the flowing liquid], or none past the end of any curve
    """
    ...

def flow_in_parallel(
    *,
    curves: Sequence[Union[_t.PumpCurveMade, _t.PumpCurve]],
    against: _t.Amount = ...,
    against_metres: float = ..., against_m: float = ..., against_centimetres: float = ..., against_cm: float = ...,
    against_millimetres: float = ..., against_mm: float = ..., against_micrometres: float = ...,
    against_um: float = ..., against_nanometres: float = ..., against_nm: float = ..., against_inches: float = ...,
    against_in: float = ..., against_feet: float = ..., against_ft: float = ...,
) -> _t.FlowAnswer:
    """Flow of pumps side by side against one head, each behind its check valve.

    Takes curves (of the pumps); against [m] (H [m of the flowing liquid]).

    Needs curves, against.

    Gives flow [m^3/s]; zero where no pump reaches; none where a pump is past the end of its curve
    """
    ...

@overload
def at_speed(
    *,
    curve: Union[_t.PumpCurveMade, _t.PumpCurve],
    speed: _t.Amount,
) -> _t.PumpCurve:
    """The curve of a pump at another speed.

    Takes curve (at the speed it is given for); speed (s = new speed over that speed, > 0).

    Needs curve, speed.

    Gives curve at the new speed
    """
    ...

@overload
def at_speed(
    *,
    point: Union[_t.PumpPerformanceGiven, _t.PumpPerformanceMade, _t.PumpPerformance],
    speed: _t.Amount,
) -> _t.PumpPerformance:
    """One point of a pump at another speed.

    Takes point (flow [m^3/s], head [m] and shaft power [W] at the speed they were measured at); speed (s = new
    speed over that speed, > 0).

    Needs point, speed.

    Gives flow, head and power at the new speed, at the point that corresponds
    """
    ...

def power_drawn(
    *,
    duty: _t.PumpDutyGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
) -> _t.PumpPower:
    """Power that a pump draws.

    Takes duty (flow [m^3/s] >= 0, head [m] >= 0, efficiencies above 0, to 1); water (density at the pump).

    Needs duty, water.

    Gives hydraulic, shaft and electrical power [W], with a caution
    """
    ...

def power_in(
    *,
    measured: _t.Amount = ...,
    density_of_test: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    measured_watts: float = ..., measured_W: float = ..., measured_kilowatts: float = ..., measured_kW: float = ...,
    measured_horsepower: float = ..., measured_hp: float = ..., measured_btu_per_hour: float = ...,
    density_of_test_kilograms_per_cubic_metre: float = ..., density_of_test_grams_per_litre: float = ...,
    density_of_test_milligrams_per_litre: float = ..., density_of_test_micrograms_per_litre: float = ...,
    density_of_test_grams_per_millilitre: float = ..., density_of_test_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """Power of a pump in this liquid, from the power measured or printed for another at the same flow.

    Takes measured [W] (P_test [W] >= 0); density_of_test [kg/m3] (of the liquid it was measured in [kg/m^3], 500
    to 30 000); water (what it pumps now).

    Needs measured, density_of_test, water.

    Gives power [W]
    """
    ...

def npsh_available(
    *,
    side: _t.SuctionSideGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
) -> Quantity:
    """Net positive suction head available to a pump. Less than the pump requires, and the water boils in it.

    Takes side (absolute pressure on the water [Pa], its level above the pump z [m], losses of the suction pipe
    [m] >= 0, vapour pressure [Pa] >= 0); water (density at the pump).

    Needs side, water.

    Gives head [m of the flowing liquid]; negative where even vacuum could not lift so far
    """
    ...

def head_from_gauges(
    *,
    read: _t.GaugeReadingsGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
) -> Quantity:
    """Head of a running pump from the gauges before and after it. A gauge marked in metres of water reads 2.5 % high
    in seawater: take its pressure.

    Takes read (gauge pressures [Pa]; heights of the gauges [m] over one datum; velocities [m/s] in the pipes
    there); water (density at the pump).

    Needs read, water.

    Gives head [m of the flowing liquid]
    """
    ...

def vortex_submergence(
    *,
    bore: _t.Amount,
    flow: _t.Amount = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> Quantity:
    """Water that an inlet needs above it so that no vortex draws air.

    Takes bore (D [m] > 0 of the opening); flow [m3/s] (Q [m^3/s] >= 0).

    Needs bore, flow.

    Gives depth [m] over the opening: Gordon's two as low and central value, ANSI/HI as high
    """
    ...

def restart_after(
    *,
    cut: Union[_t.PowerCutAnswerGiven, _t.PowerCutAnswerMade, _t.PowerCutAnswer],
    task: _t.RestartInputGiven,
) -> _t.RestartAnswer:
    """A restart after a power cut that is worked out already.

    Takes cut (what `power_cut(task.system)` answered: levels, what came down, water over the rim); task (as for
    `restart`).

    Needs cut, task.

    Gives lowest level, submergence, margin [m] with their bands, times [s], a caution
    """
    ...

def restart(
    *,
    system: _t.PowerCutInputGiven,
    inlet: _t.PumpInletGiven,
    priming: Optional[_t.Amount] = ...,
    taken: Optional[_t.Estimate] = ...,
    surge: Optional[_t.Amount] = ...,
    priming_seconds: float = ..., priming_s: float = ..., priming_minutes: float = ..., priming_min: float = ...,
    priming_hours: float = ..., priming_h: float = ..., priming_days: float = ..., priming_d: float = ...,
    priming_weeks: float = ..., priming_wk: float = ...,
) -> _t.RestartAnswer:
    """Lowest level of the pump chamber when the pump starts and the display refills, and its margin against drawing
    air.

    Takes system; inlet; priming [s] (How long the drains hold the flow back until they find their siphon; common
    practice, no source); taken (What they take meanwhile (`priming.hpp`); nothing, unless given); surge (Where it
    was seen: how far the box, or the display where there is none, rises above its running level meanwhile. It
    then counts instead of `priming`. Zero for drains that take the flow from the start).

    Needs system, inlet.

    Gives lowest level, submergence, margin [m] with their bands, times [s], a caution
    """
    ...

def siphon_flow(
    *,
    run: _t.PipeRunGiven,
    drop: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    extrapolate: bool = ...,
    drop_metres: float = ..., drop_m: float = ..., drop_centimetres: float = ..., drop_cm: float = ...,
    drop_millimetres: float = ..., drop_mm: float = ..., drop_micrometres: float = ..., drop_um: float = ...,
    drop_nanometres: float = ..., drop_nm: float = ..., drop_inches: float = ..., drop_in: float = ...,
    drop_feet: float = ..., drop_ft: float = ...,
) -> Quantity:
    """Flow of a pipe that runs full from one free surface down to another: a siphon, a drain without air.

    Takes run (bore, length, roughness, fittings (without the exit), valve); drop [m] (H [m] >= 0 from surface to
    surface, or to the end of the pipe where it ends in the air); water (density and viscosity at the pipe's
    temperature).

    Needs run, drop, water.

    Gives flow [m^3/s]; its band is that of the fittings
    """
    ...

def siphon_crest_pressure(
    *,
    above_surface: _t.Amount = ...,
    speed: _t.Amount = ...,
    density: _t.Amount = ...,
    loss_before: Optional[_t.Amount] = ...,
    air: Optional[_t.Amount] = ...,
    above_surface_metres: float = ..., above_surface_m: float = ..., above_surface_centimetres: float = ...,
    above_surface_cm: float = ..., above_surface_millimetres: float = ..., above_surface_mm: float = ...,
    above_surface_micrometres: float = ..., above_surface_um: float = ..., above_surface_nanometres: float = ...,
    above_surface_nm: float = ..., above_surface_inches: float = ..., above_surface_in: float = ...,
    above_surface_feet: float = ..., above_surface_ft: float = ..., speed_metres_per_second: float = ...,
    speed_centimetres_per_second: float = ..., speed_millimetres_per_day: float = ...,
    speed_feet_per_second: float = ..., density_kilograms_per_cubic_metre: float = ...,
    density_grams_per_litre: float = ..., density_milligrams_per_litre: float = ...,
    density_micrograms_per_litre: float = ..., density_grams_per_millilitre: float = ...,
    density_pounds_per_cubic_foot: float = ..., air_pascals: float = ..., air_Pa: float = ...,
    air_hectopascals: float = ..., air_hPa: float = ..., air_kilopascals: float = ..., air_kPa: float = ...,
    air_megapascals: float = ..., air_MPa: float = ..., air_gigapascals: float = ..., air_GPa: float = ...,
    air_bars: float = ..., air_bar: float = ..., air_decibars: float = ..., air_dbar: float = ...,
    air_atmospheres: float = ..., air_atm: float = ..., air_psi: float = ..., air_psf: float = ...,
) -> Quantity:
    """Pressure of the water at the crest of a siphon.

    Takes above_surface [m] (of the water it draws from); speed [m/s] (in the pipe); density [kg/m3]; loss_before
    (sum of K and f L/D up to the crest); air [Pa].

    Needs above_surface, speed, density.

    Gives absolute pressure [Pa]; below the vapour pressure the siphon cannot run, and water full of air lets go
    of it well before
    """
    ...

def highest_siphon_crest(
    *,
    speed: _t.Amount = ...,
    density: _t.Amount = ...,
    vapour_pressure: _t.Amount = ...,
    loss_before: Optional[_t.Amount] = ...,
    air: Optional[_t.Amount] = ...,
    speed_metres_per_second: float = ..., speed_centimetres_per_second: float = ...,
    speed_millimetres_per_day: float = ..., speed_feet_per_second: float = ...,
    density_kilograms_per_cubic_metre: float = ..., density_grams_per_litre: float = ...,
    density_milligrams_per_litre: float = ..., density_micrograms_per_litre: float = ...,
    density_grams_per_millilitre: float = ..., density_pounds_per_cubic_foot: float = ...,
    vapour_pressure_pascals: float = ..., vapour_pressure_Pa: float = ..., vapour_pressure_hectopascals: float = ...,
    vapour_pressure_hPa: float = ..., vapour_pressure_kilopascals: float = ..., vapour_pressure_kPa: float = ...,
    vapour_pressure_megapascals: float = ..., vapour_pressure_MPa: float = ...,
    vapour_pressure_gigapascals: float = ..., vapour_pressure_GPa: float = ..., vapour_pressure_bars: float = ...,
    vapour_pressure_bar: float = ..., vapour_pressure_decibars: float = ..., vapour_pressure_dbar: float = ...,
    vapour_pressure_atmospheres: float = ..., vapour_pressure_atm: float = ..., vapour_pressure_psi: float = ...,
    vapour_pressure_psf: float = ..., air_pascals: float = ..., air_Pa: float = ..., air_hectopascals: float = ...,
    air_hPa: float = ..., air_kilopascals: float = ..., air_kPa: float = ..., air_megapascals: float = ...,
    air_MPa: float = ..., air_gigapascals: float = ..., air_GPa: float = ..., air_bars: float = ...,
    air_bar: float = ..., air_decibars: float = ..., air_dbar: float = ..., air_atmospheres: float = ...,
    air_atm: float = ..., air_psi: float = ..., air_psf: float = ...,
) -> Quantity:
    """Height of the crest above the surface at which the water would boil.

    Takes speed [m/s]; density [kg/m3]; vapour_pressure [Pa] (of the water); loss_before (sum of K and f L/D up to
    the crest); air [Pa].

    Needs speed, density, vapour_pressure.

    Gives height [m] above the surface; negative when the speed alone is too much
    """
    ...

def siphon_until_exposed(
    *,
    horizontal_area: _t.Amount = ...,
    run: _t.PipeRunGiven,
    from_: _t.Amount = ...,
    to: _t.Amount = ...,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
    extrapolate: bool = ...,
    horizontal_area_square_metres: float = ..., horizontal_area_m2: float = ...,
    horizontal_area_square_centimetres: float = ..., horizontal_area_cm2: float = ...,
    horizontal_area_square_millimetres: float = ..., horizontal_area_mm2: float = ...,
    horizontal_area_square_inches: float = ..., horizontal_area_in2: float = ...,
    horizontal_area_square_feet: float = ..., horizontal_area_ft2: float = ..., from_metres: float = ...,
    from_m: float = ..., from_centimetres: float = ..., from_cm: float = ..., from_millimetres: float = ...,
    from_mm: float = ..., from_micrometres: float = ..., from_um: float = ..., from_nanometres: float = ...,
    from_nm: float = ..., from_inches: float = ..., from_in: float = ..., from_feet: float = ..., from_ft: float = ...,
    to_metres: float = ..., to_m: float = ..., to_centimetres: float = ..., to_cm: float = ...,
    to_millimetres: float = ..., to_mm: float = ..., to_micrometres: float = ..., to_um: float = ...,
    to_nanometres: float = ..., to_nm: float = ..., to_inches: float = ..., to_in: float = ..., to_feet: float = ...,
    to_ft: float = ...,
) -> _t.SiphonRun:
    """Time until a siphon draws air. The friction follows the falling head.

    Takes horizontal_area [m2] (of the water it draws from); run; from_ [m] (drop from surface to surface, or to
    the end of the pipe, at the start); to [m] (the same when the opening draws air); water.

    Needs horizontal_area, run, from_, to, water.

    Gives time [s] and volume [m^3], at the central losses
    """
    ...

def jet_speed_at(
    *,
    jet: _t.SubmergedJetGiven,
    distance: _t.Amount = ...,
    distance_metres: float = ..., distance_m: float = ..., distance_centimetres: float = ..., distance_cm: float = ...,
    distance_millimetres: float = ..., distance_mm: float = ..., distance_micrometres: float = ...,
    distance_um: float = ..., distance_nanometres: float = ..., distance_nm: float = ..., distance_inches: float = ...,
    distance_in: float = ..., distance_feet: float = ..., distance_ft: float = ...,
) -> Quantity:
    """Speed on the axis of a jet under water.

    Takes jet (bore D [m] 1e-4 to 10; flow Q [m^3/s] 0 to 10); distance [m] (x [m] along the jet, above 0 to
    1000).

    Needs jet, distance.

    Gives speed [m/s] with its band
    """
    ...

def jet_reaches(
    *,
    jet: _t.SubmergedJetGiven,
    speed: _t.Amount = ...,
    speed_metres_per_second: float = ..., speed_centimetres_per_second: float = ...,
    speed_millimetres_per_day: float = ..., speed_feet_per_second: float = ...,
) -> Quantity:
    """How far a jet under water reaches with a speed on its axis.

    Takes jet (bore D [m] 1e-4 to 10; flow Q [m^3/s] 0 to 10); speed [m/s] (u [m/s] 1e-9 to 1000).

    Needs jet, speed.

    Gives distance [m] with its band
    """
    ...

def friction_velocity_that_moves(
    *,
    grains: _t.LooseGrainsGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
) -> Quantity:
    """Friction velocity at which grains on a flat bottom begin to move.

    Takes grains (size d [m] 1e-6 to 1; density [kg/m^3] above that of the water); water (density and viscosity).

    Needs grains, water.

    Gives friction velocity [m/s]
    """
    ...

def speed_that_moves(
    *,
    grains: _t.LooseGrainsGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
) -> Quantity:
    """Speed of a stream over a flat bottom at which its grains begin to move.

    Takes grains (size d [m] 1e-6 to 1; density [kg/m^3] above that of the water); water (density and viscosity).

    Needs grains, water.

    Gives speed [m/s] outside the layer that the bottom slows down, with its band
    """
    ...

def water_in_sump(
    *,
    plan: _t.SumpGiven,
    levels: Sequence[_t.Amount],
) -> Quantity:
    """Volume of water in a sump at given levels.

    Takes plan (the sump); levels (one level [m] >= 0 a chamber, above the floor).

    Needs plan, levels.

    Gives volume [m^3]
    """
    ...

def sump_capacity(
    *,
    rim: _t.Amount = ...,
    running_level: _t.Amount = ...,
    chambers: Optional[Sequence[_t.ChamberGiven]] = ...,
    baffles: Optional[Sequence[_t.BaffleGiven]] = ...,
    rim_metres: float = ..., rim_m: float = ..., rim_centimetres: float = ..., rim_cm: float = ...,
    rim_millimetres: float = ..., rim_mm: float = ..., rim_micrometres: float = ..., rim_um: float = ...,
    rim_nanometres: float = ..., rim_nm: float = ..., rim_inches: float = ..., rim_in: float = ...,
    rim_feet: float = ..., rim_ft: float = ..., running_level_metres: float = ..., running_level_m: float = ...,
    running_level_centimetres: float = ..., running_level_cm: float = ..., running_level_millimetres: float = ...,
    running_level_mm: float = ..., running_level_micrometres: float = ..., running_level_um: float = ...,
    running_level_nanometres: float = ..., running_level_nm: float = ..., running_level_inches: float = ...,
    running_level_in: float = ..., running_level_feet: float = ..., running_level_ft: float = ...,
) -> Quantity:
    """Volume that a sump holds up to its rim.

    Takes rim [m] (lowest point of the rim, above the floor); running_level [m] (in the last chamber, while the
    pump runs: where the top-off keeps it); chambers; baffles (between them: one less than there are chambers).

    Needs rim, running_level.

    Gives volume [m^3]
    """
    ...

def running_levels(
    *,
    plan: _t.SumpGiven,
    flow: _t.Amount = ...,
    drains_into: Optional[int] = ...,
    flow_cubic_metres_per_second: float = ..., flow_cubic_metres_per_hour: float = ...,
    flow_litres_per_second: float = ..., flow_litres_per_minute: float = ..., flow_litres_per_hour: float = ...,
    flow_litres_per_day: float = ..., flow_us_gallons_per_minute: float = ..., flow_us_gallons_per_hour: float = ...,
    flow_us_gallons_per_day: float = ..., flow_imperial_gallons_per_minute: float = ...,
    flow_imperial_gallons_per_hour: float = ..., flow_imperial_gallons_per_day: float = ...,
    flow_cubic_feet_per_second: float = ...,
) -> _t.RunningSump:
    """Levels in the chambers while the pump runs.

    Takes plan (the sump; its running level is that of the last chamber); flow [m3/s] (Q [m^3/s] >= 0 that passes
    through); drains_into (chamber that the drains end in, counted from 0).

    Needs plan, flow.

    Gives level in each chamber [m above the floor] with its band; the last is as given
    """
    ...

def pour_into_sump(
    *,
    sump: _t.SumpGiven,
    levels: Optional[Sequence[_t.Amount]] = ...,
    added: _t.Amount = ...,
    into: Optional[int] = ...,
    added_cubic_metres: float = ..., added_m3: float = ..., added_litres: float = ..., added_L: float = ...,
    added_millilitres: float = ..., added_mL: float = ..., added_cubic_inches: float = ..., added_in3: float = ...,
    added_cubic_feet: float = ..., added_ft3: float = ..., added_us_gallons: float = ...,
    added_imperial_gallons: float = ...,
) -> _t.SumpAtRest:
    """Levels after water was poured into a chamber and has come to rest.

    Takes sump; levels (before, one a chamber); added [m3]; into (which chamber, counted from 0).

    Needs sump, added.

    Gives levels [m above the floor], margin to the rim [m], volume above the rim [m^3]
    """
    ...

def level_after_evaporation(
    *,
    sump: _t.SumpGiven,
    evaporated: _t.Amount = ...,
    evaporated_cubic_metres: float = ..., evaporated_m3: float = ..., evaporated_litres: float = ...,
    evaporated_L: float = ..., evaporated_millilitres: float = ..., evaporated_mL: float = ...,
    evaporated_cubic_inches: float = ..., evaporated_in3: float = ..., evaporated_cubic_feet: float = ...,
    evaporated_ft3: float = ..., evaporated_us_gallons: float = ..., evaporated_imperial_gallons: float = ...,
) -> Quantity:
    """Level in the last chamber after evaporation: it alone falls, while the others stay at their crests.

    Takes sump; evaporated [m3].

    Needs sump, evaporated.

    Gives level [m above the floor]
    """
    ...

def wave_speed(
    *,
    pipe: _t.ElasticPipeGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
) -> Quantity:
    """Speed of a pressure wave in a full pipe.

    Takes pipe (bore D, wall t [m] > 0; moduli E of the wall and K of the water [Pa] > 0; restraint c, 0 to 3);
    water (density in the pipe).

    Needs pipe, water.

    Gives speed [m/s]
    """
    ...

def surge_on_closure(
    *,
    stop: _t.StoppedFlowGiven,
    water: Union[_t.LiquidGiven, _t.LiquidMade, _t.Liquid],
) -> _t.Surge:
    """Surge when a flow is stopped at once.

    Takes stop (wave speed a [m/s] > 0; change of velocity dV [m/s] >= 0; length of pipe L [m] >= 0); water
    (density in the pipe).

    Needs stop, water.

    Gives rise of head and pressure, the time of closing below which it is reached, and a caution
    """
    ...

def rehbock_weir(
    *,
    edge: _t.FullWidthEdgeGiven,
    head: _t.Amount = ...,
    extrapolate: bool = ...,
    head_metres: float = ..., head_m: float = ..., head_centimetres: float = ..., head_cm: float = ...,
    head_millimetres: float = ..., head_mm: float = ..., head_micrometres: float = ..., head_um: float = ...,
    head_nanometres: float = ..., head_nm: float = ..., head_inches: float = ..., head_in: float = ...,
    head_feet: float = ..., head_ft: float = ...,
) -> Quantity:
    """Flow over a sharp, level edge across the whole width (Rehbock).

    Takes edge (width b [m], 0.3 and more; crest height p [m] above the floor, 0.1 and more; the thickness is not
    used); head [m] (h [m] of the still water over the edge, 0.03 to 0.75 and at most p).

    Needs edge, head.

    Gives flow [m^3/s]
    """
    ...

def kindsvater_carter_weir(
    *,
    edge: _t.ContractedEdgeGiven,
    head: _t.Amount = ...,
    extrapolate: bool = ...,
    head_metres: float = ..., head_m: float = ..., head_centimetres: float = ..., head_cm: float = ...,
    head_millimetres: float = ..., head_mm: float = ..., head_micrometres: float = ..., head_um: float = ...,
    head_nanometres: float = ..., head_nm: float = ..., head_inches: float = ..., head_in: float = ...,
    head_feet: float = ..., head_ft: float = ...,
) -> Quantity:
    """Flow over a sharp, level edge narrower than the channel in front of it (Kindsvater and Carter).

    Takes edge (width b [m], 0.15 and more; channel width B [m], b and more; crest height p [m], 0.1 and more);
    head [m] (h [m] of the still water over the edge, 0.03 and more, at most 2 p).

    Needs edge, head.

    Gives flow [m^3/s]
    """
    ...

def rectangular_weir(
    *,
    width: _t.Amount = ...,
    head: _t.Amount = ...,
    discharge_coefficient: _t.Amount,
    contractions: Optional[_t.Amount] = ...,
    approach_velocity: Optional[_t.Amount] = ...,
    width_metres: float = ..., width_m: float = ..., width_centimetres: float = ..., width_cm: float = ...,
    width_millimetres: float = ..., width_mm: float = ..., width_micrometres: float = ..., width_um: float = ...,
    width_nanometres: float = ..., width_nm: float = ..., width_inches: float = ..., width_in: float = ...,
    width_feet: float = ..., width_ft: float = ..., head_metres: float = ..., head_m: float = ...,
    head_centimetres: float = ..., head_cm: float = ..., head_millimetres: float = ..., head_mm: float = ...,
    head_micrometres: float = ..., head_um: float = ..., head_nanometres: float = ..., head_nm: float = ...,
    head_inches: float = ..., head_in: float = ..., head_feet: float = ..., head_ft: float = ...,
    approach_velocity_metres_per_second: float = ..., approach_velocity_centimetres_per_second: float = ...,
    approach_velocity_millimetres_per_day: float = ..., approach_velocity_feet_per_second: float = ...,
) -> Quantity:
    """Flow over a level edge with a given discharge coefficient, end contractions and approach velocity.

    Takes width [m]; head [m]; discharge_coefficient; contractions (ends that do not touch a wall: 0, 1 or 2);
    approach_velocity [m/s] (of the water in front of the edge).

    Needs width, head, discharge_coefficient.

    Gives flow [m^3/s]
    """
    ...

def francis_weir(
    *,
    width: _t.Amount = ...,
    head: _t.Amount = ...,
    contractions: Optional[_t.Amount] = ...,
    approach_velocity: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    width_metres: float = ..., width_m: float = ..., width_centimetres: float = ..., width_cm: float = ...,
    width_millimetres: float = ..., width_mm: float = ..., width_micrometres: float = ..., width_um: float = ...,
    width_nanometres: float = ..., width_nm: float = ..., width_inches: float = ..., width_in: float = ...,
    width_feet: float = ..., width_ft: float = ..., head_metres: float = ..., head_m: float = ...,
    head_centimetres: float = ..., head_cm: float = ..., head_millimetres: float = ..., head_mm: float = ...,
    head_micrometres: float = ..., head_um: float = ..., head_nanometres: float = ..., head_nm: float = ...,
    head_inches: float = ..., head_in: float = ..., head_feet: float = ..., head_ft: float = ...,
    approach_velocity_metres_per_second: float = ..., approach_velocity_centimetres_per_second: float = ...,
    approach_velocity_millimetres_per_day: float = ..., approach_velocity_feet_per_second: float = ...,
) -> Quantity:
    """Flow over a sharp, level edge by Francis (3.33 in feet).

    Takes width [m]; head [m]; contractions (ends that do not touch a wall: 0, 1 or 2); approach_velocity [m/s]
    (of the water in front of the edge).

    Needs width, head.

    Gives flow [m^3/s]
    """
    ...

def bazin_weir(
    *,
    width: _t.Amount = ...,
    head: _t.Amount = ...,
    extrapolate: bool = ...,
    width_metres: float = ..., width_m: float = ..., width_centimetres: float = ..., width_cm: float = ...,
    width_millimetres: float = ..., width_mm: float = ..., width_micrometres: float = ..., width_um: float = ...,
    width_nanometres: float = ..., width_nm: float = ..., width_inches: float = ..., width_in: float = ...,
    width_feet: float = ..., width_ft: float = ..., head_metres: float = ..., head_m: float = ...,
    head_centimetres: float = ..., head_cm: float = ..., head_millimetres: float = ..., head_mm: float = ...,
    head_micrometres: float = ..., head_um: float = ..., head_nanometres: float = ..., head_nm: float = ...,
    head_inches: float = ..., head_in: float = ..., head_feet: float = ..., head_ft: float = ...,
) -> Quantity:
    """Flow over a sharp, level edge across the whole width, by Bazin.

    Takes width [m]; head [m].

    Needs width, head.

    Gives flow [m^3/s]
    """
    ...

def toothed_weir(
    *,
    edge: _t.ToothedEdgeGiven,
    head: _t.Amount = ...,
    head_metres: float = ..., head_m: float = ..., head_centimetres: float = ..., head_cm: float = ...,
    head_millimetres: float = ..., head_mm: float = ..., head_micrometres: float = ..., head_um: float = ...,
    head_nanometres: float = ..., head_nm: float = ..., head_inches: float = ..., head_in: float = ...,
    head_feet: float = ..., head_ft: float = ...,
) -> Quantity:
    """Flow through the gaps of a comb. An engineering rule of this library, without a source.

    Takes edge (gap width b [m] > 0; number of gaps N >= 1; tooth width [m] > 0; gap height s [m] > 0; crest
    height p [m] > 0); head [m] (h [m] >= 0 of the still water over the bottom of the gaps).

    Needs edge, head.

    Gives flow [m^3/s]
    """
    ...

def v_notch_weir(
    *,
    opening: _t.Amount = ...,
    head: _t.Amount = ...,
    discharge_coefficient: _t.Amount,
    opening_radians: float = ..., opening_rad: float = ..., opening_degrees: float = ..., opening_deg: float = ...,
    head_metres: float = ..., head_m: float = ..., head_centimetres: float = ..., head_cm: float = ...,
    head_millimetres: float = ..., head_mm: float = ..., head_micrometres: float = ..., head_um: float = ...,
    head_nanometres: float = ..., head_nm: float = ..., head_inches: float = ..., head_in: float = ...,
    head_feet: float = ..., head_ft: float = ...,
) -> Quantity:
    """Flow through a V-notch with a given discharge coefficient.

    Takes opening [rad]; head [m]; discharge_coefficient (about 0.58 to 0.62).

    Needs opening, head, discharge_coefficient.

    Gives flow [m^3/s]
    """
    ...

def shen_weir(
    *,
    edge: _t.VNotchGiven,
    head: _t.Amount = ...,
    extrapolate: bool = ...,
    head_metres: float = ..., head_m: float = ..., head_centimetres: float = ..., head_cm: float = ...,
    head_millimetres: float = ..., head_mm: float = ..., head_micrometres: float = ..., head_um: float = ...,
    head_nanometres: float = ..., head_nm: float = ..., head_inches: float = ..., head_in: float = ...,
    head_feet: float = ..., head_ft: float = ...,
) -> Quantity:
    """Flow through a thin-plate V-notch (Kindsvater and Shen).

    Takes edge (opening angle theta, 20 to 100 degrees); head [m] (h [m] over the point of the V, 0.06 and more).

    Needs edge, head.

    Gives flow [m^3/s]
    """
    ...

def standpipe_inlet(
    *,
    edge: _t.StandpipeGiven,
    head: _t.Amount = ...,
    head_metres: float = ..., head_m: float = ..., head_centimetres: float = ..., head_cm: float = ...,
    head_millimetres: float = ..., head_mm: float = ..., head_micrometres: float = ..., head_um: float = ...,
    head_nanometres: float = ..., head_nm: float = ..., head_inches: float = ..., head_in: float = ...,
    head_feet: float = ..., head_ft: float = ...,
) -> Quantity:
    """Flow into the open top of an upright pipe: over its rim like a weir, deeper like an orifice.

    Takes edge (bore D [m] > 0 of the pipe; with or without a strainer); head [m] (h [m] >= 0 of the water over
    the rim).

    Needs edge, head.

    Gives flow [m^3/s]
    """
    ...

def submerged_share(
    *,
    upstream_head: _t.Amount = ...,
    downstream_head: _t.Amount = ...,
    exponent: Optional[_t.Amount] = ...,
    upstream_head_metres: float = ..., upstream_head_m: float = ..., upstream_head_centimetres: float = ...,
    upstream_head_cm: float = ..., upstream_head_millimetres: float = ..., upstream_head_mm: float = ...,
    upstream_head_micrometres: float = ..., upstream_head_um: float = ..., upstream_head_nanometres: float = ...,
    upstream_head_nm: float = ..., upstream_head_inches: float = ..., upstream_head_in: float = ...,
    upstream_head_feet: float = ..., upstream_head_ft: float = ..., downstream_head_metres: float = ...,
    downstream_head_m: float = ..., downstream_head_centimetres: float = ..., downstream_head_cm: float = ...,
    downstream_head_millimetres: float = ..., downstream_head_mm: float = ..., downstream_head_micrometres: float = ...,
    downstream_head_um: float = ..., downstream_head_nanometres: float = ..., downstream_head_nm: float = ...,
    downstream_head_inches: float = ..., downstream_head_in: float = ..., downstream_head_feet: float = ...,
    downstream_head_ft: float = ...,
) -> Quantity:
    """Share of its free flow that an edge keeps when the water behind it stands above the crest (Villemonte).

    Takes upstream_head [m] (over the crest); downstream_head [m] (over the crest; zero or less is a free fall);
    exponent (of the weir: 1.5 rectangular, 2.5 V-notch).

    Needs upstream_head, downstream_head.

    Gives a share between 0 and 1
    """
    ...

def part_full_flow_with_drain(
    *,
    drain: _t.PartFullDrainGiven,
    depth: _t.Amount = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> _t.PartFullAnswer:
    """Flow in a nearly level drain at a depth (Manning).

    Takes drain (bore D [m] > 0; slope S > 0; n > 0); depth [m] (y [m], above 0, to D).

    Needs drain, depth.

    Gives flow [m^3/s] and velocity [m/s]
    """
    ...

def part_full_flow_with_pipe(
    *,
    pipe: _t.PartFullPipeGiven,
    depth: _t.Amount = ...,
    extrapolate: bool = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> _t.PartFullAnswer:
    """Flow in a nearly level drain at a depth (Darcy-Weisbach with Colebrook-White on the hydraulic diameter).

    Takes pipe (bore D [m] > 0; slope S > 0; roughness [m] >= 0; density and viscosity); depth [m] (y [m], above
    0, to D).

    Needs pipe, depth.

    Gives flow [m^3/s] and velocity [m/s]
    """
    ...

def outlet_through_with_orifice(
    *,
    bore: _t.Amount = ...,
    discharge_coefficient: Optional[_t.Amount] = ...,
    bore_metres: float = ..., bore_m: float = ..., bore_centimetres: float = ..., bore_cm: float = ...,
    bore_millimetres: float = ..., bore_mm: float = ..., bore_micrometres: float = ..., bore_um: float = ...,
    bore_nanometres: float = ..., bore_nm: float = ..., bore_inches: float = ..., bore_in: float = ...,
    bore_feet: float = ..., bore_ft: float = ...,
) -> Quantity:
    """What an orifice counts for.

    Takes bore [m]; discharge_coefficient (0.60 to 0.62 sharp, 0.80 to 0.82 short tube, 0.97 rounded).

    Needs bore.

    Gives effective area [m^2]
    """
    ...

def outlet_through_with_resisting_pipe(
    *,
    bore: _t.Amount,
    resistance: _t.Amount,
) -> Quantity:
    """What a pipe of known resistance counts for.

    Takes bore; resistance.

    Needs bore, resistance.

    Gives effective area [m^2]
    """
    ...

def leaking_check_valve_with_loss_and_bore(
    *,
    loss: Union[_t.Amount, _t.LossCoefficientMade],
    bore: _t.Amount,
) -> _t.CheckValve:
    """A check valve that leaks like a loss coefficient backwards.

    Takes loss (K > 0 of the valve against the flow; the larger, the better it holds); bore (D [m] > 0 whose
    velocity K belongs to).

    Needs loss, bore.

    Gives the valve
    """
    ...

def leaking_check_valve_with_gap(
    *,
    gap: _t.Amount = ...,
    gap_square_metres: float = ..., gap_m2: float = ..., gap_square_centimetres: float = ..., gap_cm2: float = ...,
    gap_square_millimetres: float = ..., gap_mm2: float = ..., gap_square_inches: float = ..., gap_in2: float = ...,
    gap_square_feet: float = ..., gap_ft2: float = ...,
) -> _t.CheckValve:
    """A check valve that leaks through a gap: a flap that a grain of sand or a tubeworm holds open.

    Takes gap [m2] (open area a [m^2], 0 (it holds) to 1).

    Needs gap.

    Gives the valve
    """
    ...

def at_speed_with_curve(
    *,
    curve: Union[_t.PumpCurveMade, _t.PumpCurve],
    speed: _t.Amount,
) -> _t.PumpCurve:
    """The curve of a pump at another speed.

    Takes curve (at the speed it is given for); speed (s = new speed over that speed, > 0).

    Needs curve, speed.

    Gives curve at the new speed
    """
    ...

def at_speed_with_point(
    *,
    point: Union[_t.PumpPerformanceGiven, _t.PumpPerformanceMade, _t.PumpPerformance],
    speed: _t.Amount,
) -> _t.PumpPerformance:
    """One point of a pump at another speed.

    Takes point (flow [m^3/s], head [m] and shaft power [W] at the speed they were measured at); speed (s = new
    speed over that speed, > 0).

    Needs point, speed.

    Gives flow, head and power at the new speed, at the point that corresponds
    """
    ...
