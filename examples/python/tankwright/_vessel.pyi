# SPDX-License-Identifier: BSL-1.0
# Written by examples/python/stubs.py. Do not edit.
"""The formulas of vessel."""
from typing import List, Literal, Optional, Sequence, Union, overload

from . import types as _t
from .quantity import Quantity

def rectangular_section(
    *,
    breadth: _t.Amount = ...,
    depth: _t.Amount = ...,
    breadth_metres: float = ..., breadth_m: float = ..., breadth_centimetres: float = ..., breadth_cm: float = ...,
    breadth_millimetres: float = ..., breadth_mm: float = ..., breadth_micrometres: float = ...,
    breadth_um: float = ..., breadth_nanometres: float = ..., breadth_nm: float = ..., breadth_inches: float = ...,
    breadth_in: float = ..., breadth_feet: float = ..., breadth_ft: float = ..., depth_metres: float = ...,
    depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ..., depth_millimetres: float = ...,
    depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ..., depth_nanometres: float = ...,
    depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ..., depth_feet: float = ...,
    depth_ft: float = ...,
) -> _t.BeamSection:
    """A rectangular cross-section.

    Takes breadth [m]; depth [m] (upright).

    Needs breadth, depth.

    Gives the section
    """
    ...

def bend(
    *,
    span: _t.Amount = ...,
    section: Union[_t.BeamSectionGiven, _t.BeamSectionMade, _t.BeamSection],
    modulus: _t.Amount = ...,
    supports: Optional[Sequence[_t.BeamSupportGiven]] = ...,
    points: Optional[Sequence[_t.PointLoadGiven]] = ...,
    spreads: Optional[Sequence[_t.SpreadLoadGiven]] = ...,
    pull: Optional[_t.Amount] = ...,
    label: Optional[str] = ...,
    span_metres: float = ..., span_m: float = ..., span_centimetres: float = ..., span_cm: float = ...,
    span_millimetres: float = ..., span_mm: float = ..., span_micrometres: float = ..., span_um: float = ...,
    span_nanometres: float = ..., span_nm: float = ..., span_inches: float = ..., span_in: float = ...,
    span_feet: float = ..., span_ft: float = ..., modulus_pascals: float = ..., modulus_Pa: float = ...,
    modulus_hectopascals: float = ..., modulus_hPa: float = ..., modulus_kilopascals: float = ...,
    modulus_kPa: float = ..., modulus_megapascals: float = ..., modulus_MPa: float = ...,
    modulus_gigapascals: float = ..., modulus_GPa: float = ..., modulus_bars: float = ..., modulus_bar: float = ...,
    modulus_decibars: float = ..., modulus_dbar: float = ..., modulus_atmospheres: float = ...,
    modulus_atm: float = ..., modulus_psi: float = ..., modulus_psf: float = ..., pull_newtons: float = ...,
    pull_N: float = ..., pull_kilonewtons: float = ..., pull_kN: float = ..., pull_pounds_force: float = ...,
    pull_lbf: float = ...,
) -> _t.BeamResult:
    """Reactions, largest moment, deflection and stress of a beam.

    Takes span [m] (from end to end, overhangs included); section; modulus [Pa]; supports; points; spreads; pull
    [N] (tension along the beam); label.

    Needs span, section, modulus.

    Gives the result; `along` gives the values at any place
    """
    ...

def along(
    *,
    result: Union[_t.BeamResultGiven, _t.BeamResultMade, _t.BeamResult],
    length: _t.Amount = ...,
    length_metres: float = ..., length_m: float = ..., length_centimetres: float = ..., length_cm: float = ...,
    length_millimetres: float = ..., length_mm: float = ..., length_micrometres: float = ..., length_um: float = ...,
    length_nanometres: float = ..., length_nm: float = ..., length_inches: float = ..., length_in: float = ...,
    length_feet: float = ..., length_ft: float = ...,
) -> _t.BeamStation:
    """Deflection, slope, moment and shear at a place of a beam that was solved.

    Takes result (of `bend`); length [m] (from the left end [m], within the beam; at a load or support, the values
    just left of it).

    Needs result, length.

    Gives the four values
    """
    ...

def rails_of(
    *,
    height: _t.Amount = ...,
    level: _t.Amount = ...,
    water_density: _t.Amount = ...,
    label: Optional[str] = ...,
    height_metres: float = ..., height_m: float = ..., height_centimetres: float = ..., height_cm: float = ...,
    height_millimetres: float = ..., height_mm: float = ..., height_micrometres: float = ..., height_um: float = ...,
    height_nanometres: float = ..., height_nm: float = ..., height_inches: float = ..., height_in: float = ...,
    height_feet: float = ..., height_ft: float = ..., level_metres: float = ..., level_m: float = ...,
    level_centimetres: float = ..., level_cm: float = ..., level_millimetres: float = ..., level_mm: float = ...,
    level_micrometres: float = ..., level_um: float = ..., level_nanometres: float = ..., level_nm: float = ...,
    level_inches: float = ..., level_in: float = ..., level_feet: float = ..., level_ft: float = ...,
    water_density_kilograms_per_cubic_metre: float = ..., water_density_grams_per_litre: float = ...,
    water_density_milligrams_per_litre: float = ..., water_density_micrograms_per_litre: float = ...,
    water_density_grams_per_millilitre: float = ..., water_density_pounds_per_cubic_foot: float = ...,
) -> _t.RailLoads:
    """What a panel puts on the rails along its bottom and top edge.

    Takes height [m] (between the rails); level [m] (of the water above the bottom rail); water_density [kg/m3];
    label.

    Needs height, level, water_density.

    Gives load along each rail [N/m]
    """
    ...

def pull_of_braces(
    *,
    rail: _t.Amount = ...,
    braces: int,
    load: _t.Amount = ...,
    rail_metres: float = ..., rail_m: float = ..., rail_centimetres: float = ..., rail_cm: float = ...,
    rail_millimetres: float = ..., rail_mm: float = ..., rail_micrometres: float = ..., rail_um: float = ...,
    rail_nanometres: float = ..., rail_nm: float = ..., rail_inches: float = ..., rail_in: float = ...,
    rail_feet: float = ..., rail_ft: float = ..., load_newtons_per_metre: float = ...,
    load_millinewtons_per_metre: float = ...,
) -> _t.BracePull:
    """Tension in the cross-braces that hold a rail.

    Takes rail [m] (from end to end); braces (between the ends); load [N/m] (along it, from `rails_of`).

    Needs rail, braces, load.

    Gives tension in each brace [N]
    """
    ...

def bulge_to_see(
    *,
    expected: _t.Amount = ...,
    gauge: Optional[Union[_t.BulgeGaugeGiven, Literal["straight_edge_with_feelers", "straight_edge_by_eye", "dial_indicator"]]] = ...,
    expected_metres: float = ..., expected_m: float = ..., expected_centimetres: float = ..., expected_cm: float = ...,
    expected_millimetres: float = ..., expected_mm: float = ..., expected_micrometres: float = ...,
    expected_um: float = ..., expected_nanometres: float = ..., expected_nm: float = ..., expected_inches: float = ...,
    expected_in: float = ..., expected_feet: float = ..., expected_ft: float = ...,
) -> _t.BulgeReading:
    """What a gauge should show of a bulge, and from where on to stop filling.

    Takes expected [m] (of the panel at this stage, from `water_on`); gauge.

    Needs expected.

    Gives the bulge to see, if any; the bulge [m] at which to stop, let water out and look at the supports
    """
    ...

def side_by_side(
    *,
    chambers: Sequence[_t.PlacedShapeGiven],
    label: Optional[str] = ...,
) -> _t.Shape:
    """Shapes that share one water level: the chambers of a tank that are open to each other, a tank with an annexe.

    Takes chambers (the shapes with the heights z of their floors [m]; the lowest must stand at 0); label (what
    the whole is called).

    Needs chambers.

    Gives the shape; its rim is the lowest rim, its wetted area counts both faces of a wall between chambers
    """
    ...

def stacked(
    *,
    from_the_bottom: Sequence[Union[_t.ShapeMade, _t.Shape]],
    label: Optional[str] = ...,
) -> _t.Shape:
    """Shapes standing on one another, open where they meet: a cylinder on a cone, a wide tank on a narrow well.

    Takes from_the_bottom (the shapes, lowest first); label (what the whole is called).

    Needs from_the_bottom.

    Gives the shape; where two meet, only the ledge between their openings gets wet
    """
    ...

def inside_of(
    *,
    measured: _t.Amount,
    near_panel: _t.Amount = ...,
    far_panel: _t.Amount = ...,
    near_panel_metres: float = ..., near_panel_m: float = ..., near_panel_centimetres: float = ...,
    near_panel_cm: float = ..., near_panel_millimetres: float = ..., near_panel_mm: float = ...,
    near_panel_micrometres: float = ..., near_panel_um: float = ..., near_panel_nanometres: float = ...,
    near_panel_nm: float = ..., near_panel_inches: float = ..., near_panel_in: float = ...,
    near_panel_feet: float = ..., near_panel_ft: float = ..., far_panel_metres: float = ..., far_panel_m: float = ...,
    far_panel_centimetres: float = ..., far_panel_cm: float = ..., far_panel_millimetres: float = ...,
    far_panel_mm: float = ..., far_panel_micrometres: float = ..., far_panel_um: float = ...,
    far_panel_nanometres: float = ..., far_panel_nm: float = ..., far_panel_inches: float = ...,
    far_panel_in: float = ..., far_panel_feet: float = ..., far_panel_ft: float = ...,
) -> Quantity:
    """The inside dimension that is left between two panels.

    Takes measured; near_panel [m]; far_panel [m].

    Needs measured, near_panel, far_panel.

    Gives inside dimension [m]
    """
    ...

def water_in(
    *,
    gross: _t.Amount = ...,
    items: Optional[Sequence[Union[_t.ItemGiven, _t.ItemMade, _t.Item]]] = ...,
    water_density: _t.Amount = ...,
    gross_cubic_metres: float = ..., gross_m3: float = ..., gross_litres: float = ..., gross_L: float = ...,
    gross_millilitres: float = ..., gross_mL: float = ..., gross_cubic_inches: float = ..., gross_in3: float = ...,
    gross_cubic_feet: float = ..., gross_ft3: float = ..., gross_us_gallons: float = ...,
    gross_imperial_gallons: float = ..., water_density_kilograms_per_cubic_metre: float = ...,
    water_density_grams_per_litre: float = ..., water_density_milligrams_per_litre: float = ...,
    water_density_micrograms_per_litre: float = ..., water_density_grams_per_millilitre: float = ...,
    water_density_pounds_per_cubic_foot: float = ...,
) -> _t.WaterContent:
    """The water in a vessel with sand, rock and equipment, and what it all weighs.

    Takes gross [m3] (to the water line, from `filled_volume`); items; water_density [kg/m3].

    Needs gross, water_density.

    Gives volumes and masses with their bands
    """
    ...

def total_water(
    *,
    vessels: Sequence[Union[_t.WaterContentGiven, _t.WaterContentMade, _t.WaterContent]],
) -> Quantity:
    """All the water of a system: the net volumes of its vessels together.

    Takes vessels (what `water_in` gave for each).

    Needs vessels.

    Gives total water [m^3] with its band
    """
    ...

def blow_off(
    *,
    depth: _t.Amount = ...,
    diameter: _t.Amount = ...,
    water_density: _t.Amount = ...,
    label: Optional[str] = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ..., diameter_metres: float = ..., diameter_m: float = ...,
    diameter_centimetres: float = ..., diameter_cm: float = ..., diameter_millimetres: float = ...,
    diameter_mm: float = ..., diameter_micrometres: float = ..., diameter_um: float = ...,
    diameter_nanometres: float = ..., diameter_nm: float = ..., diameter_inches: float = ..., diameter_in: float = ...,
    diameter_feet: float = ..., diameter_ft: float = ..., water_density_kilograms_per_cubic_metre: float = ...,
    water_density_grams_per_litre: float = ..., water_density_milligrams_per_litre: float = ...,
    water_density_micrograms_per_litre: float = ..., water_density_grams_per_millilitre: float = ...,
    water_density_pounds_per_cubic_foot: float = ...,
) -> _t.BulkheadResult:
    """The force that pushes a bulkhead fitting out of its hole.

    Takes depth [m] (of its middle below the surface); diameter [m] (within the sealing line); water_density
    [kg/m3]; label.

    Needs depth, diameter, water_density.

    Gives pressure [Pa] and force [N]
    """
    ...

def gasket_force(
    *,
    mean_diameter: _t.Amount = ...,
    effective_width: _t.Amount = ...,
    pressure: _t.Amount = ...,
    material: Union[_t.GasketMaterialGiven, Literal["soft_elastomer", "hard_elastomer"]],
    label: Optional[str] = ...,
    mean_diameter_metres: float = ..., mean_diameter_m: float = ..., mean_diameter_centimetres: float = ...,
    mean_diameter_cm: float = ..., mean_diameter_millimetres: float = ..., mean_diameter_mm: float = ...,
    mean_diameter_micrometres: float = ..., mean_diameter_um: float = ..., mean_diameter_nanometres: float = ...,
    mean_diameter_nm: float = ..., mean_diameter_inches: float = ..., mean_diameter_in: float = ...,
    mean_diameter_feet: float = ..., mean_diameter_ft: float = ..., effective_width_metres: float = ...,
    effective_width_m: float = ..., effective_width_centimetres: float = ..., effective_width_cm: float = ...,
    effective_width_millimetres: float = ..., effective_width_mm: float = ..., effective_width_micrometres: float = ...,
    effective_width_um: float = ..., effective_width_nanometres: float = ..., effective_width_nm: float = ...,
    effective_width_inches: float = ..., effective_width_in: float = ..., effective_width_feet: float = ...,
    effective_width_ft: float = ..., pressure_pascals: float = ..., pressure_Pa: float = ...,
    pressure_hectopascals: float = ..., pressure_hPa: float = ..., pressure_kilopascals: float = ...,
    pressure_kPa: float = ..., pressure_megapascals: float = ..., pressure_MPa: float = ...,
    pressure_gigapascals: float = ..., pressure_GPa: float = ..., pressure_bars: float = ..., pressure_bar: float = ...,
    pressure_decibars: float = ..., pressure_dbar: float = ..., pressure_atmospheres: float = ...,
    pressure_atm: float = ..., pressure_psi: float = ..., pressure_psf: float = ...,
) -> _t.GasketResult:
    """The clamping force that a ring gasket needs.

    Takes mean_diameter [m] (G); effective_width [m] (b); pressure [Pa]; material; label.

    Needs mean_diameter, effective_width, pressure, material.

    Gives force in service and to seat [N]; the larger governs
    """
    ...

def gasket_takes_up(
    *,
    thickness: _t.Amount = ...,
    thickness_metres: float = ..., thickness_m: float = ..., thickness_centimetres: float = ...,
    thickness_cm: float = ..., thickness_millimetres: float = ..., thickness_mm: float = ...,
    thickness_micrometres: float = ..., thickness_um: float = ..., thickness_nanometres: float = ...,
    thickness_nm: float = ..., thickness_inches: float = ..., thickness_in: float = ..., thickness_feet: float = ...,
    thickness_ft: float = ...,
) -> Quantity:
    """How uneven a face may be that a soft gasket lies on: on a rough coating it bridges the hollows.

    Takes thickness [m] (of the gasket t, before it is pressed, 0.05 to 1000 mm).

    Needs thickness.

    Gives from the lowest to the highest place under it [m]
    """
    ...

def uplift_of(
    *,
    horizontal_area: _t.Amount = ...,
    flood_depth: _t.Amount = ...,
    mass_of_sump: _t.Amount = ...,
    water_density: _t.Amount = ...,
    label: Optional[str] = ...,
    horizontal_area_square_metres: float = ..., horizontal_area_m2: float = ...,
    horizontal_area_square_centimetres: float = ..., horizontal_area_cm2: float = ...,
    horizontal_area_square_millimetres: float = ..., horizontal_area_mm2: float = ...,
    horizontal_area_square_inches: float = ..., horizontal_area_in2: float = ...,
    horizontal_area_square_feet: float = ..., horizontal_area_ft2: float = ..., flood_depth_metres: float = ...,
    flood_depth_m: float = ..., flood_depth_centimetres: float = ..., flood_depth_cm: float = ...,
    flood_depth_millimetres: float = ..., flood_depth_mm: float = ..., flood_depth_micrometres: float = ...,
    flood_depth_um: float = ..., flood_depth_nanometres: float = ..., flood_depth_nm: float = ...,
    flood_depth_inches: float = ..., flood_depth_in: float = ..., flood_depth_feet: float = ...,
    flood_depth_ft: float = ..., mass_of_sump_kilograms: float = ..., mass_of_sump_kg: float = ...,
    mass_of_sump_grams: float = ..., mass_of_sump_g: float = ..., mass_of_sump_milligrams: float = ...,
    mass_of_sump_mg: float = ..., mass_of_sump_tonnes: float = ..., mass_of_sump_t: float = ...,
    mass_of_sump_pounds: float = ..., mass_of_sump_lb: float = ..., mass_of_sump_ounces: float = ...,
    mass_of_sump_oz: float = ..., water_density_kilograms_per_cubic_metre: float = ...,
    water_density_grams_per_litre: float = ..., water_density_milligrams_per_litre: float = ...,
    water_density_micrograms_per_litre: float = ..., water_density_grams_per_millilitre: float = ...,
    water_density_pounds_per_cubic_foot: float = ...,
) -> _t.UpliftResult:
    """The force that lifts an empty sump when the water stands around it.

    Takes horizontal_area [m2] (outside); flood_depth [m] (above its bottom; not more than its height);
    mass_of_sump [kg] (with what is in it); water_density [kg/m3]; label.

    Needs horizontal_area, flood_depth, mass_of_sump, water_density.

    Gives buoyancy and net force [N], upwards positive
    """
    ...

def load_on_floor(
    *,
    total: _t.Amount = ...,
    footprint: _t.Amount = ...,
    bearing: Optional[_t.Amount] = ...,
    code: Optional[Union[_t.FloorLiveLoadGiven, Literal["living_rooms", "sleeping_rooms"]]] = ...,
    label: Optional[str] = ...,
    total_kilograms: float = ..., total_kg: float = ..., total_grams: float = ..., total_g: float = ...,
    total_milligrams: float = ..., total_mg: float = ..., total_tonnes: float = ..., total_t: float = ...,
    total_pounds: float = ..., total_lb: float = ..., total_ounces: float = ..., total_oz: float = ...,
    footprint_square_metres: float = ..., footprint_m2: float = ..., footprint_square_centimetres: float = ...,
    footprint_cm2: float = ..., footprint_square_millimetres: float = ..., footprint_mm2: float = ...,
    footprint_square_inches: float = ..., footprint_in2: float = ..., footprint_square_feet: float = ...,
    footprint_ft2: float = ...,
) -> _t.FloorResult:
    """Load of a tank on the floor.

    Takes total [kg] (water, rock, sand, tank, stand, sump); footprint [m2] (outline of the stand); bearing (what
    touches the floor, all legs or feet together; none: the whole footprint); code; label.

    Needs total, footprint.

    Gives pressure over footprint and feet [Pa], and how many times the code's live load
    """
    ...

def least_thickness(
    *,
    nominal: _t.Amount = ...,
    nominal_metres: float = ..., nominal_m: float = ..., nominal_centimetres: float = ..., nominal_cm: float = ...,
    nominal_millimetres: float = ..., nominal_mm: float = ..., nominal_micrometres: float = ...,
    nominal_um: float = ..., nominal_nanometres: float = ..., nominal_nm: float = ..., nominal_inches: float = ...,
    nominal_in: float = ..., nominal_feet: float = ..., nominal_ft: float = ...,
) -> Union[Quantity, _t.Single[None]]:
    """The least thickness of glass that is sold by a nominal size, by the weaker of the two standards.

    Takes nominal [m] ([m]: a size of `float_glass_sizes` by its name in millimetres or inches, to within 0.05
    mm).

    Needs nominal.

    Gives least thickness [m]; nothing for a size that is not in the table (laminated glass, acrylic)
    """
    ...

def porosity_of(
    *,
    dry_bulk: _t.Amount = ...,
    grain: _t.Amount = ...,
    dry_bulk_kilograms_per_cubic_metre: float = ..., dry_bulk_grams_per_litre: float = ...,
    dry_bulk_milligrams_per_litre: float = ..., dry_bulk_micrograms_per_litre: float = ...,
    dry_bulk_grams_per_millilitre: float = ..., dry_bulk_pounds_per_cubic_foot: float = ...,
    grain_kilograms_per_cubic_metre: float = ..., grain_grams_per_litre: float = ...,
    grain_milligrams_per_litre: float = ..., grain_micrograms_per_litre: float = ...,
    grain_grams_per_millilitre: float = ..., grain_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """Porosity from the dry bulk density and the grain density.

    Takes dry_bulk [kg/m3]; grain [kg/m3].

    Needs dry_bulk, grain.

    Gives porosity, 0 to below 1
    """
    ...

def phases_of(
    *,
    wet: _t.Amount = ...,
    dry: _t.Amount = ...,
    whole: _t.Amount = ...,
    grain_density: _t.Amount = ...,
    water_density: _t.Amount = ...,
    wet_kilograms: float = ..., wet_kg: float = ..., wet_grams: float = ..., wet_g: float = ...,
    wet_milligrams: float = ..., wet_mg: float = ..., wet_tonnes: float = ..., wet_t: float = ...,
    wet_pounds: float = ..., wet_lb: float = ..., wet_ounces: float = ..., wet_oz: float = ...,
    dry_kilograms: float = ..., dry_kg: float = ..., dry_grams: float = ..., dry_g: float = ...,
    dry_milligrams: float = ..., dry_mg: float = ..., dry_tonnes: float = ..., dry_t: float = ...,
    dry_pounds: float = ..., dry_lb: float = ..., dry_ounces: float = ..., dry_oz: float = ...,
    whole_cubic_metres: float = ..., whole_m3: float = ..., whole_litres: float = ..., whole_L: float = ...,
    whole_millilitres: float = ..., whole_mL: float = ..., whole_cubic_inches: float = ..., whole_in3: float = ...,
    whole_cubic_feet: float = ..., whole_ft3: float = ..., whole_us_gallons: float = ...,
    whole_imperial_gallons: float = ..., grain_density_kilograms_per_cubic_metre: float = ...,
    grain_density_grams_per_litre: float = ..., grain_density_milligrams_per_litre: float = ...,
    grain_density_micrograms_per_litre: float = ..., grain_density_grams_per_millilitre: float = ...,
    grain_density_pounds_per_cubic_foot: float = ..., water_density_kilograms_per_cubic_metre: float = ...,
    water_density_grams_per_litre: float = ..., water_density_milligrams_per_litre: float = ...,
    water_density_micrograms_per_litre: float = ..., water_density_grams_per_millilitre: float = ...,
    water_density_pounds_per_cubic_foot: float = ...,
) -> _t.Phases:
    """Phases of a sample from its wet and dry mass.

    Takes wet [kg]; dry [kg]; whole [m3] (envelope of the sample); grain_density [kg/m3]; water_density [kg/m3].

    Needs wet, dry, whole, grain_density, water_density.

    Gives the phases
    """
    ...

def phases_when_saturated(
    *,
    water_content: _t.Amount,
    grain_density: _t.Amount = ...,
    water_density: _t.Amount = ...,
    grain_density_kilograms_per_cubic_metre: float = ..., grain_density_grams_per_litre: float = ...,
    grain_density_milligrams_per_litre: float = ..., grain_density_micrograms_per_litre: float = ...,
    grain_density_grams_per_millilitre: float = ..., grain_density_pounds_per_cubic_foot: float = ...,
    water_density_kilograms_per_cubic_metre: float = ..., water_density_grams_per_litre: float = ...,
    water_density_milligrams_per_litre: float = ..., water_density_micrograms_per_litre: float = ...,
    water_density_grams_per_millilitre: float = ..., water_density_pounds_per_cubic_foot: float = ...,
) -> _t.Phases:
    """Phases of a sample whose pores are full, from its water content alone.

    Takes water_content (mass of water over dry mass); grain_density [kg/m3]; water_density [kg/m3].

    Needs water_content, grain_density, water_density.

    Gives the phases
    """
    ...

def hydrostatic_pressure(
    *,
    depth: _t.Amount = ...,
    water_density: _t.Amount = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ..., water_density_kilograms_per_cubic_metre: float = ...,
    water_density_grams_per_litre: float = ..., water_density_milligrams_per_litre: float = ...,
    water_density_micrograms_per_litre: float = ..., water_density_grams_per_millilitre: float = ...,
    water_density_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """Pressure of still water above that of the air.

    Takes depth [m] (below the surface [m] >= 0); water_density [kg/m3] ([kg/m^3] > 0).

    Needs depth, water_density.

    Gives pressure [Pa]
    """
    ...

def push_on(
    *,
    width: _t.Amount = ...,
    height: _t.Amount = ...,
    level: _t.Amount = ...,
    water_density: _t.Amount = ...,
    label: Optional[str] = ...,
    width_metres: float = ..., width_m: float = ..., width_centimetres: float = ..., width_cm: float = ...,
    width_millimetres: float = ..., width_mm: float = ..., width_micrometres: float = ..., width_um: float = ...,
    width_nanometres: float = ..., width_nm: float = ..., width_inches: float = ..., width_in: float = ...,
    width_feet: float = ..., width_ft: float = ..., height_metres: float = ..., height_m: float = ...,
    height_centimetres: float = ..., height_cm: float = ..., height_millimetres: float = ..., height_mm: float = ...,
    height_micrometres: float = ..., height_um: float = ..., height_nanometres: float = ..., height_nm: float = ...,
    height_inches: float = ..., height_in: float = ..., height_feet: float = ..., height_ft: float = ...,
    level_metres: float = ..., level_m: float = ..., level_centimetres: float = ..., level_cm: float = ...,
    level_millimetres: float = ..., level_mm: float = ..., level_micrometres: float = ..., level_um: float = ...,
    level_nanometres: float = ..., level_nm: float = ..., level_inches: float = ..., level_in: float = ...,
    level_feet: float = ..., level_ft: float = ..., water_density_kilograms_per_cubic_metre: float = ...,
    water_density_grams_per_litre: float = ..., water_density_milligrams_per_litre: float = ...,
    water_density_micrograms_per_litre: float = ..., water_density_grams_per_millilitre: float = ...,
    water_density_pounds_per_cubic_foot: float = ...,
) -> _t.WaterPush:
    """Force of the water on an upright rectangle, and where it acts.

    Takes width [m]; height [m]; level [m] (of the water above the lower edge; above `height` for a window set
    below the surface); water_density [kg/m3]; label.

    Needs width, height, level, water_density.

    Gives pressures [Pa], force [N], centre of pressure [m], moment about the lower edge [N m]
    """
    ...

def equipment(
    *,
    outside: _t.Amount = ...,
    mass: _t.Amount = ...,
    label: Optional[str] = ...,
    outside_cubic_metres: float = ..., outside_m3: float = ..., outside_litres: float = ..., outside_L: float = ...,
    outside_millilitres: float = ..., outside_mL: float = ..., outside_cubic_inches: float = ...,
    outside_in3: float = ..., outside_cubic_feet: float = ..., outside_ft3: float = ...,
    outside_us_gallons: float = ..., outside_imperial_gallons: float = ..., mass_kilograms: float = ...,
    mass_kg: float = ..., mass_grams: float = ..., mass_g: float = ..., mass_milligrams: float = ...,
    mass_mg: float = ..., mass_tonnes: float = ..., mass_t: float = ..., mass_pounds: float = ..., mass_lb: float = ...,
    mass_ounces: float = ..., mass_oz: float = ...,
) -> _t.Item:
    """Equipment by its outside volume.

    Takes outside [m3] (what it keeps the water out of); mass [kg]; label.

    Needs outside, mass.

    Gives the item, without a band
    """
    ...

def weight_of(
    *,
    thing: Union[_t.ItemGiven, _t.ItemMade, _t.Item],
    water_density: _t.Amount = ...,
    water_density_kilograms_per_cubic_metre: float = ..., water_density_grams_per_litre: float = ...,
    water_density_milligrams_per_litre: float = ..., water_density_micrograms_per_litre: float = ...,
    water_density_grams_per_millilitre: float = ..., water_density_pounds_per_cubic_foot: float = ...,
) -> _t.ItemWeight:
    """Dry, wet and submerged weight of an item.

    Takes thing (the item); water_density [kg/m3] ([kg/m^3] > 0).

    Needs thing, water_density.

    Gives the three masses [kg] with their bands; a submerged mass below zero floats
    """
    ...

def pull_on_joint(
    *,
    width: _t.Amount = ...,
    depth: _t.Amount = ...,
    water_density: _t.Amount = ...,
    label: Optional[str] = ...,
    width_metres: float = ..., width_m: float = ..., width_centimetres: float = ..., width_cm: float = ...,
    width_millimetres: float = ..., width_mm: float = ..., width_micrometres: float = ..., width_um: float = ...,
    width_nanometres: float = ..., width_nm: float = ..., width_inches: float = ..., width_in: float = ...,
    width_feet: float = ..., width_ft: float = ..., depth_metres: float = ..., depth_m: float = ...,
    depth_centimetres: float = ..., depth_cm: float = ..., depth_millimetres: float = ..., depth_mm: float = ...,
    depth_micrometres: float = ..., depth_um: float = ..., depth_nanometres: float = ..., depth_nm: float = ...,
    depth_inches: float = ..., depth_in: float = ..., depth_feet: float = ..., depth_ft: float = ...,
    water_density_kilograms_per_cubic_metre: float = ..., water_density_grams_per_litre: float = ...,
    water_density_milligrams_per_litre: float = ..., water_density_micrograms_per_litre: float = ...,
    water_density_grams_per_millilitre: float = ..., water_density_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """Pull on a metre of the joint along the upright edge of a wall.

    Takes width [m] (from joint to joint); depth [m] (of the water over the place that is asked for);
    water_density [kg/m3]; label.

    Needs width, depth, water_density.

    Gives pull [N/m] at that depth
    """
    ...

def withdrawal_of(
    *,
    gravity: _t.Amount,
    diameter: _t.Amount = ...,
    penetration: _t.Amount = ...,
    duration_factor: Optional[_t.Amount] = ...,
    wet_factor: Optional[_t.Amount] = ...,
    label: Optional[str] = ...,
    diameter_metres: float = ..., diameter_m: float = ..., diameter_centimetres: float = ..., diameter_cm: float = ...,
    diameter_millimetres: float = ..., diameter_mm: float = ..., diameter_micrometres: float = ...,
    diameter_um: float = ..., diameter_nanometres: float = ..., diameter_nm: float = ..., diameter_inches: float = ...,
    diameter_in: float = ..., diameter_feet: float = ..., diameter_ft: float = ..., penetration_metres: float = ...,
    penetration_m: float = ..., penetration_centimetres: float = ..., penetration_cm: float = ...,
    penetration_millimetres: float = ..., penetration_mm: float = ..., penetration_micrometres: float = ...,
    penetration_um: float = ..., penetration_nanometres: float = ..., penetration_nm: float = ...,
    penetration_inches: float = ..., penetration_in: float = ..., penetration_feet: float = ...,
    penetration_ft: float = ...,
) -> Quantity:
    """Pull that a wood screw in side grain may carry for good.

    Takes gravity (specific gravity of the wood that holds its thread, oven dry); diameter [m] (of the shank);
    penetration [m] (of the thread, in that wood); duration_factor; wet_factor (0.7 where the wood is wet in
    service (NDS, from memory)); label.

    Needs gravity, diameter, penetration.

    Gives force [N]
    """
    ...

def hole_to_edge(
    *,
    diameter: _t.Amount = ...,
    thickness: _t.Amount = ...,
    glass: Optional[bool] = ...,
    label: Optional[str] = ...,
    diameter_metres: float = ..., diameter_m: float = ..., diameter_centimetres: float = ..., diameter_cm: float = ...,
    diameter_millimetres: float = ..., diameter_mm: float = ..., diameter_micrometres: float = ...,
    diameter_um: float = ..., diameter_nanometres: float = ..., diameter_nm: float = ..., diameter_inches: float = ...,
    diameter_in: float = ..., diameter_feet: float = ..., diameter_ft: float = ..., thickness_metres: float = ...,
    thickness_m: float = ..., thickness_centimetres: float = ..., thickness_cm: float = ...,
    thickness_millimetres: float = ..., thickness_mm: float = ..., thickness_micrometres: float = ...,
    thickness_um: float = ..., thickness_nanometres: float = ..., thickness_nm: float = ...,
    thickness_inches: float = ..., thickness_in: float = ..., thickness_feet: float = ..., thickness_ft: float = ...,
) -> Quantity:
    """How far the middle of a hole should be from the nearest edge of its pane.

    Takes diameter [m]; thickness [m] (of the pane); glass; label.

    Needs diameter, thickness.

    Gives distance [m]
    """
    ...

def read_leak_tests(
    *,
    tests: Sequence[_t.LeakTestGiven],
) -> _t.PartsResult:
    """Several leak tests done at the same time: display, sump, a return run that was capped and filled.

    Takes tests (1 to 100 tests as for `read_leak_test`, all with the confidence and the leak that matters of the
    first. The parts must be shut off from each other: connected vessels are one surface in one test).

    Needs tests.

    Gives each part with its limits, the total and its answer
    """
    ...

def compare_covered(
    *,
    covered: _t.LeakTestGiven,
    open: _t.LeakTestGiven,
    let_through: _t.Estimate,
) -> _t.CoverResult:
    """Leak and evaporation told apart by covering the water for a while: no evaporation needs to be known.

    Takes covered; open; let_through (part of the evaporation that the cover lets pass; 0 for film that lies on
    the water and is taped down).

    Needs covered, open, let_through.

    Gives leak with limits, evaporation, the answer
    """
    ...

def drip_rate(
    *,
    drops: int,
    over: _t.Amount = ...,
    drop: Optional[_t.Estimate] = ...,
    over_seconds: float = ..., over_s: float = ..., over_minutes: float = ..., over_min: float = ...,
    over_hours: float = ..., over_h: float = ..., over_days: float = ..., over_d: float = ..., over_weeks: float = ...,
    over_wk: float = ...,
) -> _t.DripResult:
    """A drip as a flow: drops by the minute as litres a day.

    Takes drops; over [s]; drop (count some into a measuring spoon to do better).

    Needs drops, over.

    Gives leak [m^3/s] with its band
    """
    ...

def read_leak_test(
    *,
    surface: _t.Amount = ...,
    depth: _t.Amount = ...,
    resolution: _t.Amount = ...,
    readings: Optional[Sequence[_t.LevelReadingGiven]] = ...,
    evaporation: Optional[_t.Estimate] = ...,
    salinity: Optional[_t.Amount] = ...,
    confidence: Optional[_t.Amount] = ...,
    leak_that_matters: Optional[_t.Amount] = ...,
    criterion: Optional[Union[_t.TightnessCriterionGiven, Literal["awwa_d110", "awwa_1978", "bs_5337", "aci_350_025"]]] = ...,
    capacity: Optional[_t.Amount] = ...,
    label: Optional[str] = ...,
    surface_square_metres: float = ..., surface_m2: float = ..., surface_square_centimetres: float = ...,
    surface_cm2: float = ..., surface_square_millimetres: float = ..., surface_mm2: float = ...,
    surface_square_inches: float = ..., surface_in2: float = ..., surface_square_feet: float = ...,
    surface_ft2: float = ..., depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ...,
    depth_cm: float = ..., depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ...,
    depth_um: float = ..., depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ...,
    depth_in: float = ..., depth_feet: float = ..., depth_ft: float = ..., resolution_metres: float = ...,
    resolution_m: float = ..., resolution_centimetres: float = ..., resolution_cm: float = ...,
    resolution_millimetres: float = ..., resolution_mm: float = ..., resolution_micrometres: float = ...,
    resolution_um: float = ..., resolution_nanometres: float = ..., resolution_nm: float = ...,
    resolution_inches: float = ..., resolution_in: float = ..., resolution_feet: float = ...,
    resolution_ft: float = ..., confidence_percent: float = ..., leak_that_matters_cubic_metres_per_second: float = ...,
    leak_that_matters_cubic_metres_per_hour: float = ..., leak_that_matters_litres_per_second: float = ...,
    leak_that_matters_litres_per_minute: float = ..., leak_that_matters_litres_per_hour: float = ...,
    leak_that_matters_litres_per_day: float = ..., leak_that_matters_us_gallons_per_minute: float = ...,
    leak_that_matters_us_gallons_per_hour: float = ..., leak_that_matters_us_gallons_per_day: float = ...,
    leak_that_matters_imperial_gallons_per_minute: float = ...,
    leak_that_matters_imperial_gallons_per_hour: float = ..., leak_that_matters_imperial_gallons_per_day: float = ...,
    leak_that_matters_cubic_feet_per_second: float = ...,
) -> _t.LeakTestResult:
    """Reads a leak test: the rate of leakage with its one-sided confidence limits, whether it is proven, and whether
    this test would have shown a leak that matters.

    Takes surface [m2] (of the water, of all vessels that are connected); depth [m] (of the water, for its
    swelling with temperature); resolution [m] (smallest step the gauge shows); readings; evaporation (fall by
    evaporation, where there is no pan); salinity [psu] (of the water in the tank; fresh for most first fills);
    confidence (of each one-sided limit); leak_that_matters [m3/s]; criterion (of a reservoir, to be held against
    as well); capacity (of water in the tank; needed for such a criterion); label.

    Needs surface, depth, resolution.

    Gives fall, evaporation and leak with their bands; the answer; a caution
    """
    ...

def minimum_detectable_leak(
    *,
    plan: _t.LeakTestPlanGiven,
    lasting: _t.Amount = ...,
    lasting_seconds: float = ..., lasting_s: float = ..., lasting_minutes: float = ..., lasting_min: float = ...,
    lasting_hours: float = ..., lasting_h: float = ..., lasting_days: float = ..., lasting_d: float = ...,
    lasting_weeks: float = ..., lasting_wk: float = ...,
) -> Quantity:
    """Smallest leak that a planned leak test finds.

    Takes plan (surface A [m^2], resolution [m] and readings per day > 0, scatter [m] and evaporation [m/s] >= 0,
    confidence above 0.5, power from 0.5, both below 1); lasting [s] (D [s], from seconds to ten years).

    Needs plan, lasting.

    Gives leak [m^3/s]
    """
    ...

def required_duration(
    *,
    plan: _t.LeakTestPlanGiven,
    leak: _t.Amount = ...,
    leak_cubic_metres_per_second: float = ..., leak_cubic_metres_per_hour: float = ...,
    leak_litres_per_second: float = ..., leak_litres_per_minute: float = ..., leak_litres_per_hour: float = ...,
    leak_litres_per_day: float = ..., leak_us_gallons_per_minute: float = ..., leak_us_gallons_per_hour: float = ...,
    leak_us_gallons_per_day: float = ..., leak_imperial_gallons_per_minute: float = ...,
    leak_imperial_gallons_per_hour: float = ..., leak_imperial_gallons_per_day: float = ...,
    leak_cubic_feet_per_second: float = ...,
) -> Union[Quantity, _t.Single[None]]:
    """How long the readings must go on to find a leak.

    Takes plan (as for `minimum_detectable_leak`); leak [m3/s] (the leak to find [m^3/s] > 0).

    Needs plan, leak.

    Gives the duration [s]; nothing when none is long enough because the evaporation is too uncertain
    """
    ...

def required_resolution(
    *,
    plan: _t.LeakTestPlanGiven,
    lasting: _t.Amount = ...,
    leak: _t.Amount = ...,
    lasting_seconds: float = ..., lasting_s: float = ..., lasting_minutes: float = ..., lasting_min: float = ...,
    lasting_hours: float = ..., lasting_h: float = ..., lasting_days: float = ..., lasting_d: float = ...,
    lasting_weeks: float = ..., lasting_wk: float = ..., leak_cubic_metres_per_second: float = ...,
    leak_cubic_metres_per_hour: float = ..., leak_litres_per_second: float = ..., leak_litres_per_minute: float = ...,
    leak_litres_per_hour: float = ..., leak_litres_per_day: float = ..., leak_us_gallons_per_minute: float = ...,
    leak_us_gallons_per_hour: float = ..., leak_us_gallons_per_day: float = ...,
    leak_imperial_gallons_per_minute: float = ..., leak_imperial_gallons_per_hour: float = ...,
    leak_imperial_gallons_per_day: float = ..., leak_cubic_feet_per_second: float = ...,
) -> Union[Quantity, _t.Single[None]]:
    """How coarse a gauge may be and still find a leak in a given time.

    Takes plan (as for `minimum_detectable_leak`; its own resolution is not used); lasting [s] (length of the test
    [s], from seconds to ten years); leak [m3/s] (the leak to find [m^3/s] > 0).

    Needs plan, lasting, leak.

    Gives the coarsest resolution [m], a metre at most; nothing when even a gauge of a nanometre would not do
    """
    ...

def leak_through_hole(
    *,
    diameter: _t.Amount = ...,
    depth: _t.Amount = ...,
    discharge_coefficient: Optional[_t.Amount] = ...,
    diameter_metres: float = ..., diameter_m: float = ..., diameter_centimetres: float = ..., diameter_cm: float = ...,
    diameter_millimetres: float = ..., diameter_mm: float = ..., diameter_micrometres: float = ...,
    diameter_um: float = ..., diameter_nanometres: float = ..., diameter_nm: float = ..., diameter_inches: float = ...,
    diameter_in: float = ..., diameter_feet: float = ..., diameter_ft: float = ..., depth_metres: float = ...,
    depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ..., depth_millimetres: float = ...,
    depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ..., depth_nanometres: float = ...,
    depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ..., depth_feet: float = ...,
    depth_ft: float = ...,
) -> Quantity:
    """What runs out through a small round hole.

    Takes diameter [m]; depth [m] (of the water above it); discharge_coefficient (sharp edge).

    Needs diameter, depth.

    Gives flow [m^3/s]; a crack or a porous seam is laminar and goes with h instead of its root
    """
    ...

def leak_test_stages(
    *,
    plan: _t.LeakTestPlanGiven,
    depths: Sequence[_t.Amount],
    leak_at_full: _t.Amount = ...,
    leak_at_full_cubic_metres_per_second: float = ..., leak_at_full_cubic_metres_per_hour: float = ...,
    leak_at_full_litres_per_second: float = ..., leak_at_full_litres_per_minute: float = ...,
    leak_at_full_litres_per_hour: float = ..., leak_at_full_litres_per_day: float = ...,
    leak_at_full_us_gallons_per_minute: float = ..., leak_at_full_us_gallons_per_hour: float = ...,
    leak_at_full_us_gallons_per_day: float = ..., leak_at_full_imperial_gallons_per_minute: float = ...,
    leak_at_full_imperial_gallons_per_hour: float = ..., leak_at_full_imperial_gallons_per_day: float = ...,
    leak_at_full_cubic_feet_per_second: float = ...,
) -> _t.Single[List[_t.LeakTestStageParts]]:
    """A staged first fill: how long to wait at each depth to see the leak that would matter when full.

    Takes plan (as for `required_duration`); depths (of the stages [m], rising, > 0; the last one is full; up to
    1000 of them); leak_at_full [m3/s] (the leak to find at the last depth [m^3/s] > 0).

    Needs plan, depths, leak_at_full.

    Gives a stage for each depth
    """
    ...

def sag_of(
    *,
    span: _t.Amount = ...,
    thickness: _t.Amount = ...,
    material: Union[_t.PanelMaterialGiven, Literal["annealed_glass", "cast_acrylic"]],
    extra: Optional[_t.Amount] = ...,
    moisture_strain: Optional[_t.Amount] = ...,
    label: Optional[str] = ...,
    span_metres: float = ..., span_m: float = ..., span_centimetres: float = ..., span_cm: float = ...,
    span_millimetres: float = ..., span_mm: float = ..., span_micrometres: float = ..., span_um: float = ...,
    span_nanometres: float = ..., span_nm: float = ..., span_inches: float = ..., span_in: float = ...,
    span_feet: float = ..., span_ft: float = ..., thickness_metres: float = ..., thickness_m: float = ...,
    thickness_centimetres: float = ..., thickness_cm: float = ..., thickness_millimetres: float = ...,
    thickness_mm: float = ..., thickness_micrometres: float = ..., thickness_um: float = ...,
    thickness_nanometres: float = ..., thickness_nm: float = ..., thickness_inches: float = ...,
    thickness_in: float = ..., thickness_feet: float = ..., thickness_ft: float = ..., extra_pascals: float = ...,
    extra_Pa: float = ..., extra_hectopascals: float = ..., extra_hPa: float = ..., extra_kilopascals: float = ...,
    extra_kPa: float = ..., extra_megapascals: float = ..., extra_MPa: float = ..., extra_gigapascals: float = ...,
    extra_GPa: float = ..., extra_bars: float = ..., extra_bar: float = ..., extra_decibars: float = ...,
    extra_dbar: float = ..., extra_atmospheres: float = ..., extra_atm: float = ..., extra_psi: float = ...,
    extra_psf: float = ...,
) -> _t.LidResult:
    """Sag, bow and stress of a lid on two edges.

    Takes span [m] (clear, between the edges); thickness [m]; material; extra [Pa] (spread on it, beside its own
    weight); moisture_strain (how much longer the wet face grows than the dry one; about 1e-3 for acrylic); label.

    Needs span, thickness, material.

    Gives load [Pa], sags and bow [m], stress [Pa]
    """
    ...

def recommended_lift(
    *,
    reach: _t.Amount = ...,
    height: _t.Amount = ...,
    travel: Optional[_t.Amount] = ...,
    coupling: Optional[_t.Amount] = ...,
    extrapolate: bool = ...,
    reach_metres: float = ..., reach_m: float = ..., reach_centimetres: float = ..., reach_cm: float = ...,
    reach_millimetres: float = ..., reach_mm: float = ..., reach_micrometres: float = ..., reach_um: float = ...,
    reach_nanometres: float = ..., reach_nm: float = ..., reach_inches: float = ..., reach_in: float = ...,
    reach_feet: float = ..., reach_ft: float = ..., height_metres: float = ..., height_m: float = ...,
    height_centimetres: float = ..., height_cm: float = ..., height_millimetres: float = ..., height_mm: float = ...,
    height_micrometres: float = ..., height_um: float = ..., height_nanometres: float = ..., height_nm: float = ...,
    height_inches: float = ..., height_in: float = ..., height_feet: float = ..., height_ft: float = ...,
    travel_metres: float = ..., travel_m: float = ..., travel_centimetres: float = ..., travel_cm: float = ...,
    travel_millimetres: float = ..., travel_mm: float = ..., travel_micrometres: float = ..., travel_um: float = ...,
    travel_nanometres: float = ..., travel_nm: float = ..., travel_inches: float = ..., travel_in: float = ...,
    travel_feet: float = ..., travel_ft: float = ...,
) -> Quantity:
    """Mass that one person should lift at most.

    Takes reach [m] (from between the ankles to between the hands); height [m] (of the hands above the feet);
    travel [m] (up or down); coupling (of the grip: 1 good, 0.95 fair, 0.90 poor).

    Needs reach, height.

    Gives mass [kg]
    """
    ...

def glass_load_duration_factor(
    *,
    lasting: _t.Amount = ...,
    extrapolate: bool = ...,
    lasting_seconds: float = ..., lasting_s: float = ..., lasting_minutes: float = ..., lasting_min: float = ...,
    lasting_hours: float = ..., lasting_h: float = ..., lasting_days: float = ..., lasting_d: float = ...,
    lasting_weeks: float = ..., lasting_wk: float = ...,
) -> Quantity:
    """How much of its 3-second strength annealed glass keeps under a load that lasts.

    Takes lasting [s] (duration d of the load [s], 3 s to 13 years (where the factor reaches that of a permanent
    load)).

    Needs lasting.

    Gives [1] factor, 1 and less
    """
    ...

def glass_equivalent_load(
    *,
    spells: Sequence[_t.LoadSpellGiven],
) -> Quantity:
    """The 3-second load that harms annealed glass as much as several loads one after another.

    Takes spells (loads [Pa] >= 0 and their durations [s] > 0; up to 100 000).

    Needs spells.

    Gives equivalent load [Pa]
    """
    ...

def glass_stress_for_breakage(
    *,
    breakage_probability: _t.Amount = ...,
    stressed_area: _t.Amount = ...,
    lasting: _t.Amount = ...,
    breakage_probability_percent: float = ..., stressed_area_square_metres: float = ..., stressed_area_m2: float = ...,
    stressed_area_square_centimetres: float = ..., stressed_area_cm2: float = ...,
    stressed_area_square_millimetres: float = ..., stressed_area_mm2: float = ...,
    stressed_area_square_inches: float = ..., stressed_area_in2: float = ..., stressed_area_square_feet: float = ...,
    stressed_area_ft2: float = ..., lasting_seconds: float = ..., lasting_s: float = ..., lasting_minutes: float = ...,
    lasting_min: float = ..., lasting_hours: float = ..., lasting_h: float = ..., lasting_days: float = ...,
    lasting_d: float = ..., lasting_weeks: float = ..., lasting_wk: float = ...,
) -> Quantity:
    """Allowable surface stress of annealed glass from a probability of breakage.

    Takes breakage_probability (of a pane under that stress; 0.008 is usual in buildings); stressed_area [m2] (of
    the whole pane, as if all of it were at the highest stress); lasting [s].

    Needs breakage_probability, stressed_area, lasting.

    Gives allowable stress [Pa]
    """
    ...

def for_permanent_load(
    *,
    name: Optional[str] = ...,
    value: _t.Amount = ...,
    basis: _t.LoadBasis,
    read_as: _t.Standing,
    source: Optional[str] = ...,
    value_pascals: float = ..., value_Pa: float = ..., value_hectopascals: float = ..., value_hPa: float = ...,
    value_kilopascals: float = ..., value_kPa: float = ..., value_megapascals: float = ..., value_MPa: float = ...,
    value_gigapascals: float = ..., value_GPa: float = ..., value_bars: float = ..., value_bar: float = ...,
    value_decibars: float = ..., value_dbar: float = ..., value_atmospheres: float = ..., value_atm: float = ...,
    value_psi: float = ..., value_psf: float = ...,
) -> _t.AllowableStress:
    """A 3-second allowable stress of glass turned into that for a tank. The factor must be applied once, so a stress
    that already is for a permanent load is refused.

    Takes name; value [Pa]; basis; read_as; source.

    Needs value, basis, read_as.

    Gives the same with basis `permanent`
    """
    ...

def water_on(
    *,
    panel: _t.PanelGiven,
    water: _t.WaterBehindGiven,
    extrapolate: bool = ...,
) -> _t.PanelResult:
    """A panel with water behind it, up to any level: below its top while filling, above it for a window set low in a
    wall.

    Takes panel (width, height, thickness [m] > 0, thickness below both; edges; material. Width over height 0.1 to
    10); water (level above the lower edge [m] >= 0; density [kg/m^3] > 0).

    Needs panel, water.

    Gives push, moments, stress, deflection, utilisation, and what is outside the theory
    """
    ...

def uniform_on(
    *,
    panel: _t.PanelGiven,
    load: _t.Amount = ...,
    extrapolate: bool = ...,
    load_pascals: float = ..., load_Pa: float = ..., load_hectopascals: float = ..., load_hPa: float = ...,
    load_kilopascals: float = ..., load_kPa: float = ..., load_megapascals: float = ..., load_MPa: float = ...,
    load_gigapascals: float = ..., load_GPa: float = ..., load_bars: float = ..., load_bar: float = ...,
    load_decibars: float = ..., load_dbar: float = ..., load_atmospheres: float = ..., load_atm: float = ...,
    load_psi: float = ..., load_psf: float = ...,
) -> _t.PanelResult:
    """A panel under an even pressure: a lid with something spread on it, a bottom pane, a gust.

    Takes panel (width, height, thickness [m] > 0, thickness below both; edges; material. Width over height 0.1 to
    10); load [Pa] (pressure [Pa] >= 0).

    Needs panel, load.

    Gives push, moments, stress, deflection, utilisation, and what is outside the theory
    """
    ...

def first_fill(
    *,
    panel: _t.PanelGiven,
    levels: Sequence[_t.Amount],
    water_density: _t.Amount = ...,
    extrapolate: bool = ...,
    water_density_kilograms_per_cubic_metre: float = ..., water_density_grams_per_litre: float = ...,
    water_density_milligrams_per_litre: float = ..., water_density_micrograms_per_litre: float = ...,
    water_density_grams_per_millilitre: float = ..., water_density_pounds_per_cubic_foot: float = ...,
) -> _t.Single[List[_t.VesselFillStageParts]]:
    """What each stage of the first fill puts on a panel.

    Takes panel (the panel); levels (of the water above its lower edge [m] >= 0, in any order; up to 10 000);
    water_density [kg/m3] ([kg/m^3] > 0; while testing with fresh water the load is 2 to 3 % less than with
    seawater).

    Needs panel, levels, water_density.

    Gives one result for each level, in the same order
    """
    ...

def unusual_in(
    *,
    width: _t.Amount = ...,
    height: _t.Amount = ...,
    thickness: _t.Amount = ...,
    edges: _t.PanelEdges,
    material: Union[_t.PanelMaterialGiven, Literal["annealed_glass", "cast_acrylic"]],
    allowable: Optional[Union[_t.AllowableStressGiven, _t.AllowableStressMade, _t.AllowableStress, Literal["default of the library", "practice: strength over 3.8", "ASTM E1300 surface stress, permanent", "EN 16612, permanent", "clean-cut edge", "seamed edge", "polished edge"]]] = ...,
    label: Optional[str] = ...,
    width_metres: float = ..., width_m: float = ..., width_centimetres: float = ..., width_cm: float = ...,
    width_millimetres: float = ..., width_mm: float = ..., width_micrometres: float = ..., width_um: float = ...,
    width_nanometres: float = ..., width_nm: float = ..., width_inches: float = ..., width_in: float = ...,
    width_feet: float = ..., width_ft: float = ..., height_metres: float = ..., height_m: float = ...,
    height_centimetres: float = ..., height_cm: float = ..., height_millimetres: float = ..., height_mm: float = ...,
    height_micrometres: float = ..., height_um: float = ..., height_nanometres: float = ..., height_nm: float = ...,
    height_inches: float = ..., height_in: float = ..., height_feet: float = ..., height_ft: float = ...,
    thickness_metres: float = ..., thickness_m: float = ..., thickness_centimetres: float = ...,
    thickness_cm: float = ..., thickness_millimetres: float = ..., thickness_mm: float = ...,
    thickness_micrometres: float = ..., thickness_um: float = ..., thickness_nanometres: float = ...,
    thickness_nm: float = ..., thickness_inches: float = ..., thickness_in: float = ..., thickness_feet: float = ...,
    thickness_ft: float = ...,
) -> _t.Single[List[_t.RemarkParts]]:
    """What is unusual about a panel: slips of a decimal or a unit, strengths for seconds given for a tank, nominal
    sizes.

    Takes width [m] (clear, between the upright edges); height [m] (clear, from the lower to the upper edge);
    thickness [m] (the least that the maker allows, not the nominal one: see `glass_sizes.hpp`); edges; material;
    allowable (instead of the material's); label.

    Needs width, height, thickness, edges, material.

    Gives sentences with a code each; none where all is usual
    """
    ...

def strip_between_frames(
    *,
    spacing: _t.Amount = ...,
    load: _t.Amount = ...,
    spans: _t.StripSpans,
    bending_capacity: _t.Amount = ...,
    rigidity: _t.Amount = ...,
    duration_factor: Optional[_t.Amount] = ...,
    creep_factor: Optional[_t.Amount] = ...,
    label: Optional[str] = ...,
    spacing_metres: float = ..., spacing_m: float = ..., spacing_centimetres: float = ..., spacing_cm: float = ...,
    spacing_millimetres: float = ..., spacing_mm: float = ..., spacing_micrometres: float = ...,
    spacing_um: float = ..., spacing_nanometres: float = ..., spacing_nm: float = ..., spacing_inches: float = ...,
    spacing_in: float = ..., spacing_feet: float = ..., spacing_ft: float = ..., load_pascals: float = ...,
    load_Pa: float = ..., load_hectopascals: float = ..., load_hPa: float = ..., load_kilopascals: float = ...,
    load_kPa: float = ..., load_megapascals: float = ..., load_MPa: float = ..., load_gigapascals: float = ...,
    load_GPa: float = ..., load_bars: float = ..., load_bar: float = ..., load_decibars: float = ...,
    load_dbar: float = ..., load_atmospheres: float = ..., load_atm: float = ..., load_psi: float = ...,
    load_psf: float = ..., bending_capacity_newtons: float = ..., bending_capacity_N: float = ...,
    bending_capacity_kilonewtons: float = ..., bending_capacity_kN: float = ...,
    bending_capacity_pounds_force: float = ..., bending_capacity_lbf: float = ..., rigidity_joules: float = ...,
    rigidity_J: float = ..., rigidity_kilojoules: float = ..., rigidity_kJ: float = ...,
    rigidity_kilowatt_hours: float = ..., rigidity_kWh: float = ..., rigidity_watt_hours: float = ...,
    rigidity_Wh: float = ...,
) -> _t.StripResult:
    """Bending and sag of a sheet between frames.

    Takes spacing [m] (of the frames, centre to centre); load [Pa] (of the water at the worst height of the
    strip); spans; bending_capacity [N] (published, for normal (ten-year) load duration, dry); rigidity [J]
    (published); duration_factor; creep_factor; label.

    Needs spacing, load, spans, bending_capacity, rigidity.

    Gives moment, capacity, utilisation, sag now and later
    """
    ...

def polygon_area(
    *,
    corners: Sequence[Union[_t.CornerGiven, _t.CornerMade, _t.Corner]],
) -> Quantity:
    """Area of a simple polygon.

    Takes corners (three or more [m], in either sense; sides may not cross or touch).

    Needs corners.

    Gives area [m^2]
    """
    ...

def polygon_outline(
    *,
    corners: Sequence[Union[_t.CornerGiven, _t.CornerMade, _t.Corner]],
) -> Quantity:
    """Length of the outline of a simple polygon.

    Takes corners (three or more [m]; sides may not cross or touch).

    Needs corners.

    Gives outline [m]
    """
    ...

def polygon_middle(
    *,
    corners: Sequence[Union[_t.CornerGiven, _t.CornerMade, _t.Corner]],
) -> _t.Corner:
    """The middle of a simple polygon (centre of area). A bed that slopes evenly has its mean depth there.

    Takes corners (three or more [m]; sides may not cross or touch).

    Needs corners.

    Gives the point [m]; it may lie outside a polygon with a re-entrant corner
    """
    ...

def inside_corners(
    *,
    outer: Sequence[Union[_t.CornerGiven, _t.CornerMade, _t.Corner]],
    thickness: _t.Amount = ...,
    thickness_metres: float = ..., thickness_m: float = ..., thickness_centimetres: float = ...,
    thickness_cm: float = ..., thickness_millimetres: float = ..., thickness_mm: float = ...,
    thickness_micrometres: float = ..., thickness_um: float = ..., thickness_nanometres: float = ...,
    thickness_nm: float = ..., thickness_inches: float = ..., thickness_in: float = ..., thickness_feet: float = ...,
    thickness_ft: float = ...,
) -> _t.Single[List[_t.CornerParts]]:
    """The plan of the inner faces of panels of one thickness, from the plan of their outer faces.

    Takes outer (corners of the outer plan, three or more [m]); thickness [m] (of the panels [m] >= 0).

    Needs outer, thickness.

    Gives corners of the inner plan [m], in the same order
    """
    ...

def rock_by_mass(
    *,
    dry_mass: _t.Amount = ...,
    rock: Optional[Union[_t.GrainsGiven, Literal["aragonite_sand", "quartz_sand", "reef_rock", "coral_branch_tips"]]] = ...,
    flooded_pores: Optional[_t.Amount] = ...,
    label: Optional[str] = ...,
    dry_mass_kilograms: float = ..., dry_mass_kg: float = ..., dry_mass_grams: float = ..., dry_mass_g: float = ...,
    dry_mass_milligrams: float = ..., dry_mass_mg: float = ..., dry_mass_tonnes: float = ..., dry_mass_t: float = ...,
    dry_mass_pounds: float = ..., dry_mass_lb: float = ..., dry_mass_ounces: float = ..., dry_mass_oz: float = ...,
    flooded_pores_percent: float = ...,
) -> _t.Item:
    """Rock from its dry mass.

    Takes dry_mass [kg]; rock; flooded_pores (fresh dry rock fills only over days; until then air keeps water
    out); label.

    Needs dry_mass.

    Gives the item; the band of the solids is 15 % either way: moisture, closed pores and density together
    """
    ...

def rock_weighed_under_water(
    *,
    dry_mass: _t.Amount = ...,
    submerged_mass: _t.Amount = ...,
    water_density: _t.Amount = ...,
    soaked_mass: Optional[_t.Amount] = ...,
    rock: Optional[Union[_t.GrainsGiven, Literal["aragonite_sand", "quartz_sand", "reef_rock", "coral_branch_tips"]]] = ...,
    label: Optional[str] = ...,
    dry_mass_kilograms: float = ..., dry_mass_kg: float = ..., dry_mass_grams: float = ..., dry_mass_g: float = ...,
    dry_mass_milligrams: float = ..., dry_mass_mg: float = ..., dry_mass_tonnes: float = ..., dry_mass_t: float = ...,
    dry_mass_pounds: float = ..., dry_mass_lb: float = ..., dry_mass_ounces: float = ..., dry_mass_oz: float = ...,
    submerged_mass_kilograms: float = ..., submerged_mass_kg: float = ..., submerged_mass_grams: float = ...,
    submerged_mass_g: float = ..., submerged_mass_milligrams: float = ..., submerged_mass_mg: float = ...,
    submerged_mass_tonnes: float = ..., submerged_mass_t: float = ..., submerged_mass_pounds: float = ...,
    submerged_mass_lb: float = ..., submerged_mass_ounces: float = ..., submerged_mass_oz: float = ...,
    water_density_kilograms_per_cubic_metre: float = ..., water_density_grams_per_litre: float = ...,
    water_density_milligrams_per_litre: float = ..., water_density_micrograms_per_litre: float = ...,
    water_density_grams_per_millilitre: float = ..., water_density_pounds_per_cubic_foot: float = ...,
) -> _t.Item:
    """Rock from its weight under water.

    Takes dry_mass [kg]; submerged_mass [kg] (what the scale reads while it hangs in the water); water_density
    [kg/m3]; soaked_mass (in air, soaked and wiped: gives the pores; else they come from `rock`); rock; label.

    Needs dry_mass, submerged_mass, water_density.

    Gives the item; the solids (closed pores included) are as good as the scale
    """
    ...

def rock_by_level_rise(
    *,
    vessel: Union[_t.ShapeMade, _t.Shape],
    rise: _t.LevelRiseGiven,
) -> _t.Item:
    """Rock (or anything else) from the rise of the level when it went in.

    Takes vessel (the shape it went into); rise (depth of water before and after [m], the second not the less; the
    kind of rock. Rock that was dry goes on drinking for days: read the level again when it has).

    Needs vessel, rise.

    Gives the item; the solids are as good as the reading
    """
    ...

def dry_mass_from_submerged(
    *,
    submerged_mass: _t.Amount = ...,
    grain_density: _t.Amount = ...,
    water_density: _t.Amount = ...,
    submerged_mass_kilograms: float = ..., submerged_mass_kg: float = ..., submerged_mass_grams: float = ...,
    submerged_mass_g: float = ..., submerged_mass_milligrams: float = ..., submerged_mass_mg: float = ...,
    submerged_mass_tonnes: float = ..., submerged_mass_t: float = ..., submerged_mass_pounds: float = ...,
    submerged_mass_lb: float = ..., submerged_mass_ounces: float = ..., submerged_mass_oz: float = ...,
    grain_density_kilograms_per_cubic_metre: float = ..., grain_density_grams_per_litre: float = ...,
    grain_density_milligrams_per_litre: float = ..., grain_density_micrograms_per_litre: float = ...,
    grain_density_grams_per_millilitre: float = ..., grain_density_pounds_per_cubic_foot: float = ...,
    water_density_kilograms_per_cubic_metre: float = ..., water_density_grams_per_litre: float = ...,
    water_density_milligrams_per_litre: float = ..., water_density_micrograms_per_litre: float = ...,
    water_density_grams_per_millilitre: float = ..., water_density_pounds_per_cubic_foot: float = ...,
) -> Quantity:
    """Dry mass of rock or coral that was only weighed under water.

    Takes submerged_mass [kg]; grain_density [kg/m3]; water_density [kg/m3].

    Needs submerged_mass, grain_density, water_density.

    Gives dry mass [kg]
    """
    ...

def sand_bed(
    *,
    floor: _t.Amount = ...,
    depth: _t.Amount = ...,
    sand: Optional[Union[_t.GrainsGiven, Literal["aragonite_sand", "quartz_sand", "reef_rock", "coral_branch_tips"]]] = ...,
    label: Optional[str] = ...,
    floor_square_metres: float = ..., floor_m2: float = ..., floor_square_centimetres: float = ...,
    floor_cm2: float = ..., floor_square_millimetres: float = ..., floor_mm2: float = ...,
    floor_square_inches: float = ..., floor_in2: float = ..., floor_square_feet: float = ..., floor_ft2: float = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> _t.Item:
    """A bed of sand from its floor area and depth.

    Takes floor [m2]; depth [m] (mean depth; of an even slope, that in the middle of the floor); sand; label.

    Needs floor, depth.

    Gives the item; band from porosity and grain density
    """
    ...

def sand_by_mass(
    *,
    dry_mass: _t.Amount = ...,
    sand: Optional[Union[_t.GrainsGiven, Literal["aragonite_sand", "quartz_sand", "reef_rock", "coral_branch_tips"]]] = ...,
    label: Optional[str] = ...,
    dry_mass_kilograms: float = ..., dry_mass_kg: float = ..., dry_mass_grams: float = ..., dry_mass_g: float = ...,
    dry_mass_milligrams: float = ..., dry_mass_mg: float = ..., dry_mass_tonnes: float = ..., dry_mass_t: float = ...,
    dry_mass_pounds: float = ..., dry_mass_lb: float = ..., dry_mass_ounces: float = ..., dry_mass_oz: float = ...,
) -> _t.Item:
    """A bed of sand from the dry mass that went in.

    Takes dry_mass [kg]; sand; label.

    Needs dry_mass.

    Gives the item; band from porosity and grain density
    """
    ...

def bed_depth(
    *,
    bed: Union[_t.ItemGiven, _t.ItemMade, _t.Item],
    floor: _t.Amount = ...,
    floor_square_metres: float = ..., floor_m2: float = ..., floor_square_centimetres: float = ...,
    floor_cm2: float = ..., floor_square_millimetres: float = ..., floor_mm2: float = ...,
    floor_square_inches: float = ..., floor_in2: float = ..., floor_square_feet: float = ..., floor_ft2: float = ...,
) -> Quantity:
    """Depth that an item makes when it is spread over a floor.

    Takes bed (the item, usually from `sand_by_mass`); floor [m2] (area [m^2] > 0).

    Needs bed, floor.

    Gives mean depth [m] with its band
    """
    ...

def sloped_bed(
    *,
    shallow_end: _t.Amount = ...,
    deep_end: _t.Amount = ...,
    run: _t.Amount = ...,
    repose: Optional[_t.Amount] = ...,
    shallow_end_metres: float = ..., shallow_end_m: float = ..., shallow_end_centimetres: float = ...,
    shallow_end_cm: float = ..., shallow_end_millimetres: float = ..., shallow_end_mm: float = ...,
    shallow_end_micrometres: float = ..., shallow_end_um: float = ..., shallow_end_nanometres: float = ...,
    shallow_end_nm: float = ..., shallow_end_inches: float = ..., shallow_end_in: float = ...,
    shallow_end_feet: float = ..., shallow_end_ft: float = ..., deep_end_metres: float = ..., deep_end_m: float = ...,
    deep_end_centimetres: float = ..., deep_end_cm: float = ..., deep_end_millimetres: float = ...,
    deep_end_mm: float = ..., deep_end_micrometres: float = ..., deep_end_um: float = ...,
    deep_end_nanometres: float = ..., deep_end_nm: float = ..., deep_end_inches: float = ..., deep_end_in: float = ...,
    deep_end_feet: float = ..., deep_end_ft: float = ..., run_metres: float = ..., run_m: float = ...,
    run_centimetres: float = ..., run_cm: float = ..., run_millimetres: float = ..., run_mm: float = ...,
    run_micrometres: float = ..., run_um: float = ..., run_nanometres: float = ..., run_nm: float = ...,
    run_inches: float = ..., run_in: float = ..., run_feet: float = ..., run_ft: float = ...,
    repose_radians: float = ..., repose_rad: float = ..., repose_degrees: float = ..., repose_deg: float = ...,
) -> _t.SlopeResult:
    """Mean depth and steepness of a sloped bed.

    Takes shallow_end [m] (depth of sand where it is least); deep_end [m] (depth of sand where it is most); run
    [m] (horizontal distance between the two); repose [rad].

    Needs shallow_end, deep_end, run.

    Gives mean depth [m], slope [rad], and whether it is steeper than the sand lies
    """
    ...

def slope_run(
    *,
    rise: _t.Amount = ...,
    repose: Optional[_t.Amount] = ...,
    rise_metres: float = ..., rise_m: float = ..., rise_centimetres: float = ..., rise_cm: float = ...,
    rise_millimetres: float = ..., rise_mm: float = ..., rise_micrometres: float = ..., rise_um: float = ...,
    rise_nanometres: float = ..., rise_nm: float = ..., rise_inches: float = ..., rise_in: float = ...,
    rise_feet: float = ..., rise_ft: float = ..., repose_radians: float = ..., repose_rad: float = ...,
    repose_degrees: float = ..., repose_deg: float = ...,
) -> Quantity:
    """Horizontal distance that a slope of sand needs to rise by a height.

    Takes rise [m] ([m] >= 0); repose [rad] (angle of repose [rad], above 0 to below a right angle).

    Needs rise.

    Gives run [m]
    """
    ...

def box(
    *,
    length: Union[_t.Amount, _t.InsideMade],
    width: Union[_t.Amount, _t.InsideMade],
    height: Union[_t.Amount, _t.InsideMade],
    label: Optional[str] = ...,
) -> _t.Shape:
    """A rectangular tank.

    Takes length; width; height; label.

    Needs length, width, height.

    Gives the shape
    """
    ...

def upright_cylinder(
    *,
    diameter: Union[_t.Amount, _t.InsideMade],
    height: Union[_t.Amount, _t.InsideMade],
    label: Optional[str] = ...,
) -> _t.Shape:
    """A round tank standing on its end.

    Takes diameter; height; label.

    Needs diameter, height.

    Gives the shape
    """
    ...

def lying_cylinder(
    *,
    diameter: Union[_t.Amount, _t.InsideMade],
    length: Union[_t.Amount, _t.InsideMade],
    head_depth: Optional[Union[_t.Amount, _t.InsideMade]] = ...,
    label: Optional[str] = ...,
) -> _t.Shape:
    """A round tank lying on its side.

    Takes diameter; length; head_depth; label.

    Needs diameter, length.

    Gives the shape
    """
    ...

def prism(
    *,
    inside_corners: Optional[Sequence[Union[_t.CornerGiven, _t.CornerMade, _t.Corner]]] = ...,
    height: Union[_t.Amount, _t.InsideMade],
    label: Optional[str] = ...,
) -> _t.Shape:
    """A tank with upright walls on any simple polygon: L-shapes, hexagons, corner tanks.

    Takes inside_corners; height; label.

    Needs height.

    Gives the shape
    """
    ...

def regular_prism(
    *,
    sides: int,
    side: Union[_t.Amount, _t.InsideMade],
    height: Union[_t.Amount, _t.InsideMade],
    label: Optional[str] = ...,
) -> _t.Shape:
    """A tank with upright walls on a regular polygon.

    Takes sides; side; height; label.

    Needs sides, side, height.

    Gives the shape
    """
    ...

def bow_front(
    *,
    width: Union[_t.Amount, _t.InsideMade],
    depth_at_ends: Union[_t.Amount, _t.InsideMade],
    bow: Union[_t.Amount, _t.InsideMade],
    height: Union[_t.Amount, _t.InsideMade],
    label: Optional[str] = ...,
) -> _t.Shape:
    """A rectangular tank with a bowed front.

    Takes width (along the front, the chord of the arc); depth_at_ends (front to back at the side panels); bow
    (how far the middle of the front stands out); height; label.

    Needs width, depth_at_ends, bow, height.

    Gives the shape
    """
    ...

def frustum(
    *,
    bottom_diameter: Union[_t.Amount, _t.InsideMade],
    top_diameter: Union[_t.Amount, _t.InsideMade],
    height: Union[_t.Amount, _t.InsideMade],
    label: Optional[str] = ...,
) -> _t.Shape:
    """A round tank whose wall slopes evenly from the bottom to the top.

    Takes bottom_diameter; top_diameter; height; label.

    Needs bottom_diameter, top_diameter, height.

    Gives the shape
    """
    ...

def filled_volume(
    *,
    vessel: Union[_t.ShapeMade, _t.Shape],
    depth: _t.Amount = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> Quantity:
    """Volume below a depth.

    Takes vessel (the shape); depth [m] (of the water above the lowest point of the floor [m], 0 to the height of
    the rim).

    Needs vessel, depth.

    Gives volume [m^3]
    """
    ...

def plan_area(
    *,
    vessel: Union[_t.ShapeMade, _t.Shape],
    depth: _t.Amount = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> Quantity:
    """Area of the water's surface at a depth.

    Takes vessel (the shape); depth [m] (of the water above the lowest point of the floor [m], 0 to the height of
    the rim).

    Needs vessel, depth.

    Gives free surface [m^2]; where a part begins or ends, that just below; at depth 0 that of the floor
    """
    ...

def wetted_area(
    *,
    vessel: Union[_t.ShapeMade, _t.Shape],
    depth: _t.Amount = ...,
    depth_metres: float = ..., depth_m: float = ..., depth_centimetres: float = ..., depth_cm: float = ...,
    depth_millimetres: float = ..., depth_mm: float = ..., depth_micrometres: float = ..., depth_um: float = ...,
    depth_nanometres: float = ..., depth_nm: float = ..., depth_inches: float = ..., depth_in: float = ...,
    depth_feet: float = ..., depth_ft: float = ...,
) -> Quantity:
    """Area of floor and walls below the water.

    Takes vessel (the shape); depth [m] (of the water above the lowest point of the floor [m], 0 to the height of
    the rim).

    Needs vessel, depth.

    Gives wetted area [m^2]; 0 when dry, with the floor from the first film of water on
    """
    ...

def depth_of(
    *,
    vessel: Union[_t.ShapeMade, _t.Shape],
    content: _t.Amount = ...,
    content_cubic_metres: float = ..., content_m3: float = ..., content_litres: float = ..., content_L: float = ...,
    content_millilitres: float = ..., content_mL: float = ..., content_cubic_inches: float = ...,
    content_in3: float = ..., content_cubic_feet: float = ..., content_ft3: float = ...,
    content_us_gallons: float = ..., content_imperial_gallons: float = ...,
) -> Quantity:
    """Depth of the water when the vessel holds a volume: the inverse of `filled_volume`.

    Takes vessel (the shape); content [m3] (volume of water [m^3], 0 to the capacity).

    Needs vessel, content.

    Gives depth [m]
    """
    ...

def refracted(
    *,
    between: _t.SurfaceGiven,
    incoming: _t.Amount = ...,
    incoming_radians: float = ..., incoming_rad: float = ..., incoming_degrees: float = ..., incoming_deg: float = ...,
) -> Quantity:
    """Direction of a ray behind a surface.

    Takes between (the two refractive indices, 1 to 4); incoming [rad] (angle from the normal [rad], 0 to below a
    right angle).

    Needs between, incoming.

    Gives angle from the normal behind the surface [rad]
    """
    ...

def critical_angle(
    *,
    from_: Union[_t.Amount, _t.RefractiveIndexMade],
    into: Union[_t.Amount, _t.RefractiveIndexMade],
) -> Quantity:
    """The steepest angle in the denser material at which light still gets out. From water into air, with any flat
    panel between: no ray in the water that is flatter to the panel can leave, so that an end wall looks like a
    mirror.

    Takes from_; into.

    Needs from_, into.

    Gives critical angle from the normal [rad]
    """
    ...

def reflectance(
    *,
    from_: Union[_t.Amount, _t.RefractiveIndexMade],
    into: Union[_t.Amount, _t.RefractiveIndexMade],
) -> Quantity:
    """Part of the light that a surface throws back, looked at straight on.

    Takes from_; into.

    Needs from_, into.

    Gives reflected part
    """
    ...

@overload
def apparent_distance(
    *,
    view: _t.UnderwaterViewGiven,
    angle_in_air: _t.Amount = ...,
    angle_in_air_radians: float = ..., angle_in_air_rad: float = ..., angle_in_air_degrees: float = ...,
    angle_in_air_deg: float = ...,
) -> Quantity:
    """The same seen at an angle: the flatter one looks, the shallower the tank seems.

    Takes view (distance in the water and thickness of the panel [m] >= 0; their refractive indices, 1 to 4);
    angle_in_air [rad] (from the normal of the panel [rad], 0 to below a right angle).

    Needs view, angle_in_air.

    Gives apparent distance from the outer face [m], along the normal under the point where the ray enters
    """
    ...

@overload
def apparent_distance(
    *,
    water: _t.Amount = ...,
    panel: Optional[_t.Amount] = ...,
    water_index: Optional[Union[_t.Amount, _t.RefractiveIndexMade]] = ...,
    panel_index: Optional[Union[_t.Amount, _t.RefractiveIndexMade]] = ...,
    water_metres: float = ..., water_m: float = ..., water_centimetres: float = ..., water_cm: float = ...,
    water_millimetres: float = ..., water_mm: float = ..., water_micrometres: float = ..., water_um: float = ...,
    water_nanometres: float = ..., water_nm: float = ..., water_inches: float = ..., water_in: float = ...,
    water_feet: float = ..., water_ft: float = ..., panel_metres: float = ..., panel_m: float = ...,
    panel_centimetres: float = ..., panel_cm: float = ..., panel_millimetres: float = ..., panel_mm: float = ...,
    panel_micrometres: float = ..., panel_um: float = ..., panel_nanometres: float = ..., panel_nm: float = ...,
    panel_inches: float = ..., panel_in: float = ..., panel_feet: float = ..., panel_ft: float = ...,
) -> Quantity:
    """How far behind the outer face of the panel a thing seems to be, looked at straight on.

    Takes water [m] (from the inner face of the panel to the thing); panel [m] (thickness); water_index;
    panel_index.

    Needs water.

    Gives apparent distance from the outer face [m]
    """
    ...

def clearance_for(
    *,
    apparent: _t.Amount = ...,
    panel: Optional[_t.Amount] = ...,
    water_index: Optional[Union[_t.Amount, _t.RefractiveIndexMade]] = ...,
    panel_index: Optional[Union[_t.Amount, _t.RefractiveIndexMade]] = ...,
    apparent_metres: float = ..., apparent_m: float = ..., apparent_centimetres: float = ..., apparent_cm: float = ...,
    apparent_millimetres: float = ..., apparent_mm: float = ..., apparent_micrometres: float = ...,
    apparent_um: float = ..., apparent_nanometres: float = ..., apparent_nm: float = ..., apparent_inches: float = ...,
    apparent_in: float = ..., apparent_feet: float = ..., apparent_ft: float = ..., panel_metres: float = ...,
    panel_m: float = ..., panel_centimetres: float = ..., panel_cm: float = ..., panel_millimetres: float = ...,
    panel_mm: float = ..., panel_micrometres: float = ..., panel_um: float = ..., panel_nanometres: float = ...,
    panel_nm: float = ..., panel_inches: float = ..., panel_in: float = ..., panel_feet: float = ...,
    panel_ft: float = ...,
) -> Quantity:
    """How far from the inner face a thing must stand to seem as far away as wanted: the least clearance of rock to
    glass.

    Takes apparent [m] (from the outer face of the panel); panel [m] (thickness); water_index; panel_index.

    Needs apparent.

    Gives distance in the water [m]
    """
    ...

def lateral_magnification(
    *,
    view: _t.UnderwaterViewGiven,
    eye: _t.Amount = ...,
    eye_metres: float = ..., eye_m: float = ..., eye_centimetres: float = ..., eye_cm: float = ...,
    eye_millimetres: float = ..., eye_mm: float = ..., eye_micrometres: float = ..., eye_um: float = ...,
    eye_nanometres: float = ..., eye_nm: float = ..., eye_inches: float = ..., eye_in: float = ...,
    eye_feet: float = ..., eye_ft: float = ...,
) -> Quantity:
    """How much larger a thing in the water looks than it would at the same place in air.

    Takes view (distance in the water and thickness of the panel [m] >= 0; their refractive indices, 1 to 4); eye
    [m] (distance of the eye from the outer face [m] > 0).

    Needs view, eye.

    Gives [1] magnification across the line of sight, 1 to n
    """
    ...

def ray_shift(
    *,
    panel: _t.RayPanelGiven,
    angle_in_air: _t.Amount = ...,
    angle_in_air_radians: float = ..., angle_in_air_rad: float = ..., angle_in_air_degrees: float = ...,
    angle_in_air_deg: float = ...,
) -> Quantity:
    """How far a ray is shifted sideways by a flat panel in air; its direction does not change.

    Takes panel (thickness [m] >= 0, refractive index, 1 to 4); angle_in_air [rad] (from the normal [rad], 0 to
    below a right angle).

    Needs panel, angle_in_air.

    Gives shift across the ray [m]
    """
    ...

def apparent_distance_with_underwater_view(
    *,
    water: _t.Amount = ...,
    panel: Optional[_t.Amount] = ...,
    water_index: Optional[Union[_t.Amount, _t.RefractiveIndexMade]] = ...,
    panel_index: Optional[Union[_t.Amount, _t.RefractiveIndexMade]] = ...,
    water_metres: float = ..., water_m: float = ..., water_centimetres: float = ..., water_cm: float = ...,
    water_millimetres: float = ..., water_mm: float = ..., water_micrometres: float = ..., water_um: float = ...,
    water_nanometres: float = ..., water_nm: float = ..., water_inches: float = ..., water_in: float = ...,
    water_feet: float = ..., water_ft: float = ..., panel_metres: float = ..., panel_m: float = ...,
    panel_centimetres: float = ..., panel_cm: float = ..., panel_millimetres: float = ..., panel_mm: float = ...,
    panel_micrometres: float = ..., panel_um: float = ..., panel_nanometres: float = ..., panel_nm: float = ...,
    panel_inches: float = ..., panel_in: float = ..., panel_feet: float = ..., panel_ft: float = ...,
) -> Quantity:
    """How far behind the outer face of the panel a thing seems to be, looked at straight on.

    Takes water [m] (from the inner face of the panel to the thing); panel [m] (thickness); water_index;
    panel_index.

    Needs water.

    Gives apparent distance from the outer face [m]
    """
    ...

def apparent_distance_with_view_and_angle_in_air(
    *,
    view: _t.UnderwaterViewGiven,
    angle_in_air: _t.Amount = ...,
    angle_in_air_radians: float = ..., angle_in_air_rad: float = ..., angle_in_air_degrees: float = ...,
    angle_in_air_deg: float = ...,
) -> Quantity:
    """The same seen at an angle: the flatter one looks, the shallower the tank seems.

    Takes view (distance in the water and thickness of the panel [m] >= 0; their refractive indices, 1 to 4);
    angle_in_air [rad] (from the normal of the panel [rad], 0 to below a right angle).

    Needs view, angle_in_air.

    Gives apparent distance from the outer face [m], along the normal under the point where the ray enters
    """
    ...
