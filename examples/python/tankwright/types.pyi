# SPDX-License-Identifier: BSL-1.0
# Written by examples/python/stubs.py. Do not edit.
"""What formulas are given and what they give, by name: for type checkers alone, so import it where
`typing.TYPE_CHECKING` is true."""
from typing import Any, Dict, Generic, List, Literal, Mapping, Optional, Sequence, TypeVar, Union

from typing_extensions import NotRequired, TypeAlias, TypedDict

from .calculations import Result
from .quantity import Quantity

class AmountInUnit(TypedDict):
    """A number in a unit: `{"value": 24, "unit": "degC"}`."""
    value: float
    unit: NotRequired[str]
    quantity: NotRequired[str]

class Band(TypedDict):
    """From where to where a number may lie."""
    low: Amount
    central: Amount
    high: Amount
    unit: NotRequired[str]
    reason: NotRequired[str]

#: A text with its unit ("2150 L"), the name of a constant, a number in SI, or a number of an answer.
Amount: TypeAlias = Union[Quantity, str, float, AmountInUnit]
#: The same, and a band.
Estimate: TypeAlias = Union[Amount, Band]

_T = TypeVar("_T")

class Single(Result, Generic[_T]):
    """A result that is one thing and no quantity."""
    value: _T

class AerationGiven(TypedDict):
    """A way in for oxygen: an open surface, an air stone, the fall over an overflow."""
    label: NotRequired[Optional[str]]
    #: [m2] open surface, with the next
    surface: NotRequired[Optional[Amount]]
    #: [m/s] transfer velocity k_L of that surface: `still_surface_transfer`
    transfer: NotRequired[Optional[Amount]]
    #: [1/s] KLa of air stones or falls in this volume at 20 degC
    bubbles: NotRequired[Optional[Amount]]
    #: KLa here over KLa in clean water: 0.6 to 0.9 where a data sheet is used
    alpha: NotRequired[Optional[Amount]]

class Air(Result):
    """Moist air. The humidity is that of the place where the air is, over ice when below 0.01 degC. (Weather
    services report humidity over supercooled water even in frost: at -5 degC theirs reads 5 % lower for the same
    air.)
    """
    value: AirParts
    temperature: Quantity
    humidity: Quantity
    #: of the place, not reduced to sea level
    pressure: Quantity

class AirGiven(TypedDict):
    """Moist air. The humidity is that of the place where the air is, over ice when below 0.01 degC. (Weather
    services report humidity over supercooled water even in frost: at -5 degC theirs reads 5 % lower for the same
    air.)
    """
    #: [K]
    temperature: Amount
    humidity: Amount
    #: [Pa] of the place, not reduced to sea level
    pressure: NotRequired[Optional[Amount]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
AirMade = TypedDict("AirMade", {
    "air_from_with_air_of_humidity_ratio": Mapping[str, Any],
    "room.air_from_with_air_of_humidity_ratio": Mapping[str, Any], "air_from": Mapping[str, Any],
    "room.air_from": Mapping[str, Any], "air_from_with_air_of_dew_point": Mapping[str, Any],
    "room.air_from_with_air_of_dew_point": Mapping[str, Any], "air_from_with_air_of_wet_bulb": Mapping[str, Any],
    "room.air_from_with_air_of_wet_bulb": Mapping[str, Any]
}, total=False)

class AirParts(TypedDict):
    """Moist air. The humidity is that of the place where the air is, over ice when below 0.01 degC. (Weather
    services report humidity over supercooled water even in frost: at -5 degC theirs reads 5 % lower for the same
    air.)
    """
    temperature: Quantity
    humidity: Quantity
    #: of the place, not reduced to sea level
    pressure: Quantity

class AlkalinityCountdown(Result):
    """How long the alkalinity lasts."""
    value: AlkalinityCountdownParts
    daily_fall: Quantity
    #: empty without a load
    lasts: Optional[Quantity]
    caution: str

class AlkalinityCountdownParts(TypedDict):
    """How long the alkalinity lasts."""
    daily_fall: Quantity
    #: empty without a load
    lasts: Optional[Quantity]
    caution: str

class AlkalinityDose(Result):
    """What makes the step: the one or the other, not both."""
    value: AlkalinityDoseParts
    #: NaHCO3; lowers the pH a little
    sodium_bicarbonate: Quantity
    #: Na2CO3, dry; raises the pH
    sodium_carbonate: Quantity
    caution: str

class AlkalinityDoseParts(TypedDict):
    """What makes the step: the one or the other, not both."""
    #: NaHCO3; lowers the pH a little
    sodium_bicarbonate: Quantity
    #: Na2CO3, dry; raises the pH
    sodium_carbonate: Quantity
    caution: str

class AlkalinityGiven(TypedDict):
    """Alkalinity: the acid, as charge, that a volume of water takes up. Carbonate hardness (KH) in the words of the
    trade, although in seawater it holds about 0.1 meq/L of borate too.

    One of these.
    """
    milliequivalents_per_litre: NotRequired[Amount]
    degrees_kh: NotRequired[Amount]
    milligrams_caco3_per_litre: NotRequired[Amount]

class AllowableStress(Result):
    """A stress that a material may carry, and what that rests on."""
    value: AllowableStressParts
    name: str
    basis: LoadBasis
    read_as: Standing

class AllowableStressGiven(TypedDict):
    """A stress that a material may carry, and what that rests on."""
    name: NotRequired[Optional[str]]
    #: [Pa]
    value: Amount
    basis: LoadBasis
    read_as: Standing
    source: NotRequired[Optional[str]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
AllowableStressMade = TypedDict("AllowableStressMade", {
    "for_permanent_load": Mapping[str, Any], "vessel.for_permanent_load": Mapping[str, Any]
}, total=False)

class AllowableStressParts(TypedDict):
    """A stress that a material may carry, and what that rests on."""
    name: str
    value: Quantity
    basis: LoadBasis
    read_as: Standing
    source: str

class AmmoniaDoseGiven(TypedDict):
    """Ammonia added to feed or to challenge the bacteria: the rise it makes in the whole tank."""
    when: ScheduleGiven
    rise: TotalAmmoniaGiven

class AmmoniaSampleGiven(TypedDict):
    """A water sample as measured."""
    total: TotalAmmoniaGiven
    ph: PhReadingGiven
    #: [psu]
    salinity: Amount
    #: [K]
    temperature: Amount

class AnimalsGiven(TypedDict):
    """Animals of one kind, and a measured rate of their kind to start from."""
    label: NotRequired[Optional[str]]
    #: [kg] mass of one animal
    each: Amount
    #: [1]
    count: NotRequired[Optional[Amount]]
    #: rate of a reference animal, routine activity
    measured: Amount
    #: [kg] mass of that animal
    measured_at_mass: Amount
    #: [K] temperature of that measurement
    measured_at: Amount
    #: [1] b of M^b for a whole animal; 0.79 to 0.86 from memory
    mass_exponent: NotRequired[Optional[Amount]]
    #: [1] rise for 10 K; 2 to 3 from memory
    q10: NotRequired[Optional[Amount]]
    #: [1] over the measured rate; 2 to 3 when handled or just fed
    activity: NotRequired[Optional[Amount]]

#: Plan area against height. An area alone stands for vertical walls. Slices start at the floor; between two the area
#: runs straight, two at one height are a step, and above the last the walls are vertical. One of these.
AreaProfileGiven = TypedDict("AreaProfileGiven", {
    "area": NotRequired[Amount], "list": NotRequired[Sequence[AreaSliceGiven]]
})

class AreaSliceGiven(TypedDict):
    """The free horizontal area at one height above the floor."""
    #: [m]
    height: Amount
    #: [m2]
    horizontal_area: Amount

class Bacteria(Result):
    """Living bacteria, as dry organic mass in the whole system (rock, sand, media and water together)."""
    value: BacteriaParts
    ammonia_oxidisers: Quantity
    nitrite_oxidisers: Quantity

class BacteriaGiven(TypedDict):
    """Living bacteria, as dry organic mass in the whole system (rock, sand, media and water together)."""
    #: [kg]
    ammonia_oxidisers: NotRequired[Optional[Amount]]
    #: [kg]
    nitrite_oxidisers: NotRequired[Optional[Amount]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
BacteriaMade = TypedDict("BacteriaMade", {
    "bacteria_on": Mapping[str, Any], "life.bacteria_on": Mapping[str, Any]
}, total=False)

class BacteriaParts(TypedDict):
    """Living bacteria, as dry organic mass in the whole system (rock, sand, media and water together)."""
    ammonia_oxidisers: Quantity
    nitrite_oxidisers: Quantity

class BaffleGiven(TypedDict):
    """The wall between a chamber and the next."""
    #: [m] above the floor; water passes over it
    crest: Amount
    #: [m] of the crest, across the flow
    width: Amount
    #: [m] clearance at the floor, where water passes under it; zero is sealed
    gap: NotRequired[Optional[Amount]]
    #: [m] in the direction of the flow; zero is a sharp edge
    thickness: NotRequired[Optional[Amount]]

class BagState(Result):
    value: BagStateParts
    #: in gas and water
    oxygen_left: Quantity
    #: dissolved, in equilibrium with the gas
    oxygen: Quantity
    #: dissolved
    carbon_dioxide: Quantity
    #: [1] total scale
    ph: Quantity
    ammonia: TotalAmmoniaBand
    #: free ammonia at this pH, as NH3
    free_closed: Quantity
    #: at the pH of the tank: what the first air makes of it
    free_opened: Quantity

class BagStateParts(TypedDict):
    #: in gas and water
    oxygen_left: Quantity
    #: dissolved, in equilibrium with the gas
    oxygen: Quantity
    #: dissolved
    carbon_dioxide: Quantity
    #: [1] total scale
    ph: Quantity
    ammonia: TotalAmmoniaBand
    #: free ammonia at this pH, as NH3
    free_closed: Quantity
    #: at the pH of the tank: what the first air makes of it
    free_opened: Quantity

#: Between which two bores a loss coefficient is carried over.
BasisChangeGiven = TypedDict("BasisChangeGiven", {"from": Amount, "to": Amount})

class BeamResult(Result):
    value: BeamResultParts
    #: in the order of the supports
    reactions: List[SupportReactionParts]
    #: with its sign: sagging is positive
    largest_moment: Quantity
    moment_at: Quantity
    #: the largest in size, downwards positive
    deflection: Quantity
    deflection_at: Quantity
    bending: Quantity
    axial: Quantity
    #: at the stretched fibre
    combined: Quantity
    caution: str
    #: for `along`
    solved: SolvedBeamParts

class BeamResultGiven(TypedDict):
    #: in the order of the supports
    reactions: NotRequired[Optional[Sequence[SupportReactionGiven]]]
    #: [J] with its sign: sagging is positive
    largest_moment: Amount
    #: [m]
    moment_at: Amount
    #: [m] the largest in size, downwards positive
    deflection: Amount
    #: [m]
    deflection_at: Amount
    #: [Pa]
    bending: Amount
    #: [Pa]
    axial: Amount
    #: [Pa] at the stretched fibre
    combined: Amount
    caution: NotRequired[Optional[str]]
    #: for `along`
    solved: SolvedBeamGiven

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
BeamResultMade = TypedDict("BeamResultMade", {"bend": Mapping[str, Any], "vessel.bend": Mapping[str, Any]}, total=False)

class BeamResultParts(TypedDict):
    #: in the order of the supports
    reactions: List[SupportReactionParts]
    #: with its sign: sagging is positive
    largest_moment: Quantity
    moment_at: Quantity
    #: the largest in size, downwards positive
    deflection: Quantity
    deflection_at: Quantity
    bending: Quantity
    axial: Quantity
    #: at the stretched fibre
    combined: Quantity
    caution: str
    #: for `along`
    solved: SolvedBeamParts

class BeamSection(Result):
    """What matters of a cross-section that bends about a horizontal axis."""
    value: BeamSectionParts
    area: Quantity
    second_moment: Quantity
    #: from the neutral axis to the farthest fibre
    extreme_fibre: Quantity

class BeamSectionGiven(TypedDict):
    """What matters of a cross-section that bends about a horizontal axis."""
    #: [m2]
    area: Amount
    #: [m4]
    second_moment: Amount
    #: [m] from the neutral axis to the farthest fibre
    extreme_fibre: Amount

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
BeamSectionMade = TypedDict("BeamSectionMade", {
    "rectangular_section": Mapping[str, Any], "vessel.rectangular_section": Mapping[str, Any]
}, total=False)

class BeamSectionParts(TypedDict):
    """What matters of a cross-section that bends about a horizontal axis."""
    area: Quantity
    second_moment: Quantity
    #: from the neutral axis to the farthest fibre
    extreme_fibre: Quantity

class BeamStation(Result):
    """What a beam does at one place."""
    value: BeamStationParts
    #: downwards positive
    deflection: Quantity
    #: positive where the beam goes down to the right
    slope: Quantity
    #: sagging positive
    moment: Quantity
    #: what the left part pushes the right part up with
    shear: Quantity

class BeamStationParts(TypedDict):
    """What a beam does at one place."""
    #: downwards positive
    deflection: Quantity
    #: positive where the beam goes down to the right
    slope: Quantity
    #: sagging positive
    moment: Quantity
    #: what the left part pushes the right part up with
    shear: Quantity

class BeamSupportGiven(TypedDict):
    #: [m]
    at: Amount
    kind: NotRequired[Optional[SupportKind]]

class BlendedWater(Result):
    """The waters together."""
    value: BlendedWaterParts
    salinity: Quantity
    temperature: Quantity
    mass: Quantity
    volume: Quantity

class BlendedWaterParts(TypedDict):
    """The waters together."""
    salinity: Quantity
    temperature: Quantity
    mass: Quantity
    volume: Quantity

class BlockedAnswer(Result):
    """The drains of a display, each blocked in turn."""
    value: BlockedAnswerParts
    #: one a drain
    cases: List[BlockedDrainParts]
    #: in every case
    holds: bool
    caution: str

class BlockedAnswerParts(TypedDict):
    """The drains of a display, each blocked in turn."""
    #: one a drain
    cases: List[BlockedDrainParts]
    #: in every case
    holds: bool
    caution: str

class BlockedDrainParts(TypedDict):
    """What the other drains make of the flow when one is blocked."""
    #: label of the drain that is shut
    blocked: str
    #: what the others carry quietly
    self_venting: Quantity
    #: what they carry full, each at the low end of its bands
    surely: Quantity
    #: they take the flow quietly
    quiet: bool
    #: they take the flow
    holds: bool

class BodyMaterialGiven(TypedDict):
    """What a hydrometer is made of, and how much its volume grows with temperature."""
    name: NotRequired[Optional[str]]
    #: [1/K]
    expansion: Amount
    source: NotRequired[Optional[str]]
    read_as: Standing

class BowlGiven(TypedDict):
    """A round-bottomed bowl or a sphere, with the outlet at its lowest point."""
    #: [m]
    radius: Amount

class BracePull(Result):
    value: BracePullParts
    #: tension in each, along the rail
    braces: List[Quantity]
    largest: Quantity
    #: load times spacing: what a share of the length would give, too little
    by_tributary_length: Quantity
    load: Quantity
    caution: str

class BracePullParts(TypedDict):
    #: tension in each, along the rail
    braces: List[Quantity]
    largest: Quantity
    #: load times spacing: what a share of the length would give, too little
    by_tributary_length: Quantity
    load: Quantity
    caution: str

class BreathedWater(Result):
    value: BreathedWaterParts
    #: [1] total scale, after
    ph: Quantity
    #: dissolved gas, CO2
    carbon_dioxide: Quantity
    #: [atm] of carbon dioxide, in atmospheres
    partial_pressure: Quantity

class BreathedWaterParts(TypedDict):
    #: [1] total scale, after
    ph: Quantity
    #: dissolved gas, CO2
    carbon_dioxide: Quantity
    #: [atm] of carbon dioxide, in atmospheres
    partial_pressure: Quantity

class BuildingElementGiven(TypedDict):
    """A plane pane or wall between the room and outdoors."""
    #: [W/(m2 K)] U-value, surface resistances included
    transmittance: Amount
    #: [K]
    inside: Amount
    #: [K]
    outside: Amount
    #: [m2 K/W]
    surface_resistance: NotRequired[Optional[Amount]]

class BulgeGaugeGiven(TypedDict):
    """Something to measure a bulge with."""
    name: NotRequired[Optional[str]]
    #: [m] what one can tell from nothing
    resolution: Amount
    read_as: Standing
    source: NotRequired[Optional[str]]

class BulgeReading(Result):
    value: BulgeReadingParts
    #: nothing where the gauge shows none
    expected: Optional[Quantity]
    #: go on only while the panel bulges less than this
    stop_at: Quantity
    caution: str

class BulgeReadingParts(TypedDict):
    #: nothing where the gauge shows none
    expected: Optional[Quantity]
    #: go on only while the panel bulges less than this
    stop_at: Quantity
    caution: str

class BulkheadResult(Result):
    value: BulkheadResultParts
    pressure: Quantity
    blow_off: Quantity
    caution: str

class BulkheadResultParts(TypedDict):
    pressure: Quantity
    blow_off: Quantity
    caution: str

class CarbonateConstants(Result):
    """Constants of carbonic acid in seawater on the total scale, as negative logarithms, and the solubility of its
    gas.
    """
    value: CarbonateConstantsParts
    #: [1]
    pk1: Quantity
    #: [1]
    pk2: Quantity
    #: [mol/(L atm)] K0, mol/(L atm) with a kilogram of seawater for 1/1.025 L
    solubility: Quantity

class CarbonateConstantsParts(TypedDict):
    """Constants of carbonic acid in seawater on the total scale, as negative logarithms, and the solubility of its
    gas.
    """
    #: [1]
    pk1: Quantity
    #: [1]
    pk2: Quantity
    #: [mol/(L atm)] K0, mol/(L atm) with a kilogram of seawater for 1/1.025 L
    solubility: Quantity

class ChamberGiven(TypedDict):
    """One chamber of a sump."""
    #: "skimmer"; errors and results name it
    label: NotRequired[Optional[str]]
    #: between the walls: an area, or slices
    horizontal_area: Union[AreaProfileGiven, Amount, Sequence[AreaSliceGiven]]
    #: [m2] horizontal area of what stands in it, at every height
    gear: NotRequired[Optional[Amount]]

class ChamberHistoryParts(TypedDict):
    """The level in one chamber over time."""
    label: str
    #: one a sample; at most the rim
    level: List[Quantity]
    #: highest, between samples too
    peak: Quantity
    peak_at: Quantity

class ChamberLevelGiven(TypedDict):
    """The level in one chamber, above the floor of the sump."""
    label: NotRequired[Optional[str]]
    level: Estimate

class ChamberLevelParts(TypedDict):
    """The level in one chamber, above the floor of the sump."""
    label: str
    level: Quantity

class ChangedTankCourse(Result):
    value: ChangedTankCourseParts
    #: before the last change, or at the end
    highest: TotalAmmoniaParts
    #: [1] in all
    changes: Quantity
    #: new water for them
    changed: Quantity

class ChangedTankCourseParts(TypedDict):
    #: before the last change, or at the end
    highest: TotalAmmoniaParts
    #: [1] in all
    changes: Quantity
    #: new water for them
    changed: Quantity

class CheckValve(Result):
    """A valve that lets water pass one way only. What it costs forwards belongs to the fittings of its run. It is
    the part that fails: ask again with the leak that a grain of sand, a tubeworm or a worn flap leaves open
    (`leaking_check_valve` in fittings.hpp), and with no valve at all.
    """
    value: CheckValveParts
    #: what it passes backwards; zero: it holds
    leak: FlowCoefficientParts

class CheckValveGiven(TypedDict):
    """A valve that lets water pass one way only. What it costs forwards belongs to the fittings of its run. It is
    the part that fails: ask again with the leak that a grain of sand, a tubeworm or a worn flap leaves open
    (`leaking_check_valve` in fittings.hpp), and with no valve at all.
    """
    #: what it passes backwards; zero: it holds
    leak: NotRequired[Optional[Union[FlowCoefficientGiven, FlowCoefficientMade, FlowCoefficient]]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
CheckValveMade = TypedDict("CheckValveMade", {
    "leaking_check_valve_with_loss_and_bore": Mapping[str, Any],
    "plumbing.leaking_check_valve_with_loss_and_bore": Mapping[str, Any], "leaking_check_valve": Mapping[str, Any],
    "plumbing.leaking_check_valve": Mapping[str, Any], "leaking_check_valve_with_gap": Mapping[str, Any],
    "plumbing.leaking_check_valve_with_gap": Mapping[str, Any]
}, total=False)

class CheckValveParts(TypedDict):
    """A valve that lets water pass one way only. What it costs forwards belongs to the fittings of its run. It is
    the part that fails: ask again with the leak that a grain of sand, a tubeworm or a worn flap leaves open
    (`leaking_check_valve` in fittings.hpp), and with no valve at all.
    """
    #: what it passes backwards; zero: it holds
    leak: FlowCoefficientParts

#: What becomes of the check valves that there are. open: stuck open: everything runs back; leak: shut but for
#: `check_valve_leak` of the bore; hold: shut: nothing behind them runs back
CheckValveState: TypeAlias = Literal["open", "leak", "hold"]

class CircuitGiven(TypedDict):
    sources: NotRequired[Optional[Sequence[CircuitSourceGiven]]]
    pumps: NotRequired[Optional[Sequence[CircuitPumpGiven]]]
    runs: NotRequired[Optional[Sequence[PipeRunGiven]]]
    outlets: NotRequired[Optional[Sequence[CircuitOutletGiven]]]

#: Where runs end. Its label is the name of that end. Each run that ends here has its own exit loss: runs that share one
#: nozzle meet at a junction before it.
CircuitOutletGiven = TypedDict("CircuitOutletGiven", {
    "label": NotRequired[Optional[str]], "kind": OutletKind, "level": Amount,
    "exit": NotRequired[Optional[Union[Union[Amount, LossCoefficientMade], Band]]],
    "opening": NotRequired[Optional[Amount]]
})

#: A pump in its place. Without a check valve, water runs back through it where it stands or is too weak.
CircuitPumpGiven = TypedDict("CircuitPumpGiven", {
    "label": NotRequired[Optional[str]], "from": NotRequired[Optional[str]], "to": NotRequired[Optional[str]],
    "curve": Union[PumpCurveMade, PumpCurve], "speed": NotRequired[Optional[Amount]],
    "check_valve": NotRequired[Optional[Union[CheckValveGiven, CheckValveMade, CheckValve]]],
    "idle": NotRequired[Optional[IdlePumpLossesGiven]]
})

class CircuitSolution(Result):
    """A solved circuit, its parts in the order they were given in."""
    value: CircuitSolutionParts
    runs: List[RunFlowParts]
    junctions: List[JunctionHeadParts]
    pumps: List[PumpFlowParts]
    outlets: List[OutletFlowParts]
    sources: List[SourceFlowParts]
    #: out of all outlets that give; what the drains must carry
    delivered: Quantity
    #: [1]
    iterations: int
    caution: str

class CircuitSolutionParts(TypedDict):
    """A solved circuit, its parts in the order they were given in."""
    runs: List[RunFlowParts]
    junctions: List[JunctionHeadParts]
    pumps: List[PumpFlowParts]
    outlets: List[OutletFlowParts]
    sources: List[SourceFlowParts]
    #: out of all outlets that give; what the drains must carry
    delivered: Quantity
    #: [1]
    iterations: int
    caution: str

class CircuitSourceGiven(TypedDict):
    """A water surface that the circuit draws from: the pump chamber of the sump. Water may also run back into it."""
    label: NotRequired[Optional[str]]
    #: [m]
    level: Amount

class CirculationGiven(TypedDict):
    """A tank and its loops."""
    #: [m3] net volume of water
    net: Amount
    #: of an array that outlives the call
    loops: NotRequired[Optional[Sequence[LoopGiven]]]

class CitationGiven(TypedDict):
    """A literature reference."""
    #: "Feistel R."
    authors: NotRequired[Optional[str]]
    year: int
    title: NotRequired[Optional[str]]
    #: journal, volume and pages, with the equation or table used
    where: NotRequired[Optional[str]]
    read_as: NotRequired[Optional[Standing]]

class CitationParts(TypedDict):
    """A literature reference."""
    #: "Feistel R."
    authors: str
    year: int
    title: str
    #: journal, volume and pages, with the equation or table used
    where: str
    read_as: Standing

class Clearance(Result):
    """The room in body lengths."""
    value: ClearanceParts
    #: [1]
    run_in_lengths: Quantity
    #: [1]
    width_in_lengths: Quantity
    #: of the run at routine speed
    crossing: Quantity
    #: by the multiple
    run_wanted: Quantity
    width_wanted: Quantity
    run_enough: bool
    width_enough: bool
    #: what the two verdicts rest on
    rule: str
    caution: str

class ClearanceParts(TypedDict):
    """The room in body lengths."""
    #: [1]
    run_in_lengths: Quantity
    #: [1]
    width_in_lengths: Quantity
    #: of the run at routine speed
    crossing: Quantity
    #: by the multiple
    run_wanted: Quantity
    width_wanted: Quantity
    run_enough: bool
    width_enough: bool
    #: what the two verdicts rest on
    rule: str
    caution: str

class Clearing(Result):
    """How long clearing takes."""
    value: ClearingParts
    #: empty where the loops take nothing out: it never clears
    time: Optional[Quantity]
    #: [1] of all loops, in that time
    turnovers: Quantity
    caution: str

class ClearingParts(TypedDict):
    """How long clearing takes."""
    #: empty where the loops take nothing out: it never clears
    time: Optional[Quantity]
    #: [1] of all loops, in that time
    turnovers: Quantity
    caution: str

class ClosedBagGiven(TypedDict):
    """A closed bag."""
    #: [m3]
    water: Amount
    #: [m3]
    gas: Amount
    #: part of the gas
    oxygen: Amount
    #: [kg/s] oxygen, of all animals in it
    uses: Amount
    #: [psu]
    salinity: Amount
    #: [K]
    temperature: Amount
    #: [1] total scale, at first
    ph: NotRequired[Optional[Amount]]
    #: [meq/L]
    alkalinity: NotRequired[Optional[Amount]]
    #: [1] carbon dioxide for oxygen, mole for mole
    quotient: NotRequired[Optional[Amount]]

class ClosedWaterGiven(TypedDict):
    """Water with some gas over it, closed."""
    #: [1] total scale, before
    ph: Amount
    #: [meq/L]; it stays
    alkalinity: Amount
    #: [psu]
    salinity: Amount
    #: [K]
    temperature: Amount
    #: [1] volume of gas over volume of water; without carbon dioxide at first
    gas_over_water: NotRequired[Optional[Amount]]

class CompensatedReading(Result):
    """What a meter shows that refers its reading to another temperature by a fixed part per kelvin."""
    value: CompensatedReadingParts
    shown: Quantity
    #: the water's own temperature
    water: Quantity
    #: as set in the meter: often `percent_per_kelvin(2.0)`
    coefficient: Quantity
    #: to which the meter refers
    reference: Quantity

class CompensatedReadingParts(TypedDict):
    """What a meter shows that refers its reading to another temperature by a fixed part per kelvin."""
    shown: Quantity
    #: the water's own temperature
    water: Quantity
    #: as set in the meter: often `percent_per_kelvin(2.0)`
    coefficient: Quantity
    #: to which the meter refers
    reference: Quantity

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
ConductivityAt25Made = TypedDict("ConductivityAt25Made", {
    "referred_to_25": Mapping[str, Any], "water.referred_to_25": Mapping[str, Any]
}, total=False)

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
ConductivityRatioMade = TypedDict("ConductivityRatioMade", {
    "conductivity_ratio_from_salinity": Mapping[str, Any], "water.conductivity_ratio_from_salinity": Mapping[str, Any]
}, total=False)

class ConeGiven(TypedDict):
    """A cone standing on its point, with the outlet there."""
    #: [m]
    height: Amount
    #: [m]
    top_radius: Amount

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
ConservativeTemperatureMade = TypedDict("ConservativeTemperatureMade", {
    "conservative_temperature_at_surface": Mapping[str, Any],
    "water.conservative_temperature_at_surface": Mapping[str, Any]
}, total=False)

#: What sea salt is made of. sodium; magnesium; calcium; potassium; strontium; chloride; sulphate; bicarbonate; bromide;
#: carbonate; borate; fluoride; hydroxide; boric_acid; carbon_dioxide
Constituent: TypeAlias = Literal[
    "sodium", "magnesium", "calcium", "potassium", "strontium", "chloride", "sulphate", "bicarbonate", "bromide",
    "carbonate", "borate", "fluoride", "hydroxide", "boric_acid", "carbon_dioxide"
]

class ContractedEdgeGiven(TypedDict):
    """A level edge narrower than the water in front of it: a notch cut into a wall."""
    #: [m]
    width: Amount
    #: [m]
    channel_width: Amount
    #: [m]
    crest_height: Amount

class ControlledDehumidifierGiven(TypedDict):
    """A dehumidifier with its hygrostat."""
    machine: DehumidifierGiven
    set_point: Amount

class Corner(Result):
    """A corner of a floor plan. Walk round the plan in either sense; the last corner joins the first."""
    value: CornerParts
    x: Quantity
    y: Quantity

class CornerGiven(TypedDict):
    """A corner of a floor plan. Walk round the plan in either sense; the last corner joins the first."""
    #: [m]
    x: Amount
    #: [m]
    y: Amount

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
CornerMade = TypedDict("CornerMade", {
    "polygon_middle": Mapping[str, Any], "vessel.polygon_middle": Mapping[str, Any]
}, total=False)

class CornerParts(TypedDict):
    """A corner of a floor plan. Walk round the plan in either sense; the last corner joins the first."""
    x: Quantity
    y: Quantity

class CoverMaterialGiven(TypedDict):
    """What covers water, and the part of the evaporation that it holds back where it lies: the most that was
    measured.
    """
    name: NotRequired[Optional[str]]
    effectiveness: Amount

class CoverResult(Result):
    value: CoverResultParts
    #: with its one-sided limits
    leak: Quantity
    #: of the open surface, with one standard error
    evaporation: Quantity
    chance_without_leak: Quantity
    answer: LeakAnswer
    caution: str

class CoverResultParts(TypedDict):
    #: with its one-sided limits
    leak: Quantity
    #: of the open surface, with one standard error
    evaporation: Quantity
    chance_without_leak: Quantity
    answer: LeakAnswer
    caution: str

class CriterionOutcomeParts(TypedDict):
    """How a test stands against the criterion of a reservoir."""
    allowed: Quantity
    #: allowed less the high limit of the leak: from zero up it is met
    room: Quantity
    #: of the duration that the criterion asks for; 0 when it is done
    missing: Quantity

class CurveDataParts(TypedDict):
    """Head against flow between zero flow and the last point; flows in m^3/s, heads in m."""
    label: str
    shutoff: Quantity
    end_flow: Quantity
    end_head: Quantity
    best_flow: Quantity
    best_head: Quantity
    b: Quantity
    c: Quantity
    q: List[Quantity]

class CurvePoint(Result):
    """A point of a pump curve."""
    value: CurvePointParts
    flow: Quantity
    head: Quantity

class CurvePointGiven(TypedDict):
    """A point of a pump curve."""
    #: [m3/s]
    flow: Amount
    #: [m]
    head: Amount

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
CurvePointMade = TypedDict("CurvePointMade", {
    "best_point": Mapping[str, Any], "plumbing.best_point": Mapping[str, Any]
}, total=False)

class CurvePointParts(TypedDict):
    """A point of a pump curve."""
    flow: Quantity
    head: Quantity

#: Where on a curve an answer lies. on_curve; above_shutoff: more head than the pump has at zero flow: it lifts nothing;
#: past_end: beyond the last point: the maker promises nothing there
CurveRegion: TypeAlias = Literal["on_curve", "above_shutoff", "past_end"]

class CurveTermGiven(TypedDict):
    """coefficient (x - a)^power / power! to the right of a: one load, reaction or holding moment in the deflection
    curve.
    """
    a: Amount
    power: int
    coefficient: Amount

class CurveTermParts(TypedDict):
    """coefficient (x - a)^power / power! to the right of a: one load, reaction or holding moment in the deflection
    curve.
    """
    a: Quantity
    power: int
    coefficient: Quantity

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
DarcyFactorMade = TypedDict("DarcyFactorMade", {
    "fully_turbulent_factor": Mapping[str, Any], "plumbing.fully_turbulent_factor": Mapping[str, Any],
    "friction_factor": Mapping[str, Any], "plumbing.friction_factor": Mapping[str, Any],
    "friction_factor_haaland": Mapping[str, Any], "plumbing.friction_factor_haaland": Mapping[str, Any],
    "friction_factor_churchill": Mapping[str, Any], "plumbing.friction_factor_churchill": Mapping[str, Any],
    "friction_factor_serghides": Mapping[str, Any], "plumbing.friction_factor_serghides": Mapping[str, Any],
    "friction_factor_blasius": Mapping[str, Any], "plumbing.friction_factor_blasius": Mapping[str, Any]
}, total=False)

class DeflectionCurveGiven(TypedDict):
    """E I y of a beam of length 1, downwards, in the units of the loads."""
    #: y and slope at the left end
    start: NotRequired[Optional[Amount]]
    slope: NotRequired[Optional[Amount]]
    terms: NotRequired[Optional[Sequence[CurveTermGiven]]]

class DeflectionCurveParts(TypedDict):
    """E I y of a beam of length 1, downwards, in the units of the loads."""
    #: y and slope at the left end
    start: Quantity
    slope: Quantity
    terms: List[CurveTermParts]

class DeflectionLimitGiven(TypedDict):
    """How far a panel may bulge, as a part of its span."""
    #: [1]
    span_over_deflection: Amount
    read_as: Standing
    source: NotRequired[Optional[str]]
    #: however long the span
    at_most: NotRequired[Optional[Amount]]

class DehumidifierDuty(Result):
    """What it does in a given air."""
    value: DehumidifierDutyParts
    removal: Quantity
    #: drawn, when the label's power was given
    electrical: Quantity
    #: latent heat of the water and the electricity
    heat_to_room: Quantity

class DehumidifierDutyParts(TypedDict):
    """What it does in a given air."""
    removal: Quantity
    #: drawn, when the label's power was given
    electrical: Quantity
    #: latent heat of the water and the electricity
    heat_to_room: Quantity

class DehumidifierGiven(TypedDict):
    """A machine by its label."""
    label: NotRequired[Optional[str]]
    #: [kg/s] water a day at the rating point: 20 litres a day are kilograms_per_day(20)
    capacity: Amount
    rated_at: NotRequired[Optional[Union[RatingPointGiven, Literal["rated_80F_60", "rated_73F_60", "rated_65F_60", "rated_30C_80"]]]]
    #: [W] drawn at the rating point; 0 when the label does not say
    electrical: NotRequired[Optional[Amount]]

class DehumidifierSize(Result):
    """What to buy to hold a humidity."""
    value: DehumidifierSizeParts
    #: to remove at the wanted humidity; negative where the room is drier by itself
    load: Quantity
    #: The capacity at the rating point that removes as much, running without a pause, by the middle of the curve.
    rated: Quantity
    #: [1] what is left of a label's capacity in this air; low end: no machine is sure
    share_of_label: Quantity
    #: a quarter more than the central capacity, or the high one where that is more
    suggested: Quantity
    #: heat of the condensed water; the electricity comes on top
    latent_heat_to_room: Quantity
    needed: bool
    caution: str

class DehumidifierSizeParts(TypedDict):
    """What to buy to hold a humidity."""
    #: to remove at the wanted humidity; negative where the room is drier by itself
    load: Quantity
    #: The capacity at the rating point that removes as much, running without a pause, by the middle of the curve.
    rated: Quantity
    #: [1] what is left of a label's capacity in this air; low end: no machine is sure
    share_of_label: Quantity
    #: a quarter more than the central capacity, or the high one where that is more
    suggested: Quantity
    #: heat of the condensed water; the electricity comes on top
    latent_heat_to_room: Quantity
    needed: bool
    caution: str

class DeviceCostParts(TypedDict):
    label: str
    cost: RunningCostResultParts

class DisplayTankGiven(TypedDict):
    """The display as its overflow sees it."""
    label: NotRequired[Optional[str]]
    #: [m2] free water surface at the overflow edge
    surface: Amount
    edge: Union[PlumbingFullWidthEdgeOption, PlumbingContractedEdgeOption, PlumbingToothedEdgeOption, PlumbingVNotchOption, PlumbingStandpipeOption]
    box: NotRequired[Optional[OverflowBoxGiven]]
    #: drain pipes that run full; a drain that gurgles holds next to nothing
    drains: NotRequired[Optional[Sequence[PipeRunGiven]]]

class DrainAnswer(Result):
    """What a drain carries in each mode, and which one a flow puts it in."""
    value: DrainAnswerParts
    mode: DrainMode
    #: [1] J* of the flow
    number: Quantity
    #: what it carries quietly
    self_venting: Quantity
    #: as a tall vented stack, one third full
    stack: Quantity
    #: as a full siphon
    full: Quantity
    #: what its top lets in at the inlet head, with air in it
    inlet: Quantity
    #: What counts: of a drain that runs full the siphon, of every other the lower of both.
    carries: Quantity
    #: the low end of that
    surely: Quantity
    caution: str

class DrainAnswerParts(TypedDict):
    """What a drain carries in each mode, and which one a flow puts it in."""
    mode: DrainMode
    #: [1] J* of the flow
    number: Quantity
    #: what it carries quietly
    self_venting: Quantity
    #: as a tall vented stack, one third full
    stack: Quantity
    #: as a full siphon
    full: Quantity
    #: what its top lets in at the inlet head, with air in it
    inlet: Quantity
    #: What counts: of a drain that runs full the siphon, of every other the lower of both.
    carries: Quantity
    #: the low end of that
    surely: Quantity
    caution: str

class DrainGiven(TypedDict):
    """One drain from the display or its overflow box."""
    #: from its open top to its end; fittings without the exit
    pipe: PipeRunGiven
    #: [m] from the water in the box to the water in the sump, or to the pipe's end
    drop: Amount
    #: [m] how high the water may stand over its top before the box runs over
    inlet_head: Amount
    #: over its top
    strainer: NotRequired[Optional[bool]]
    #: set up to run full: its top lies deep enough that no air comes in
    runs_full: NotRequired[Optional[bool]]

#: How a drain runs. self_venting: quiet, with air in the middle; surging: gulps air: noise, swinging level; a siphon
#: that starts passes through it; full: full of water; overloaded: takes less than the flow: the box runs over
DrainMode: TypeAlias = Literal["self_venting", "surging", "full", "overloaded"]

class DrainsBlockedAnswer(Result):
    """What stands in the display then."""
    value: DrainsBlockedAnswerParts
    #: out of the sump, until the pump draws air
    delivered: Quantity
    #: how high the display stands over its edge at the end
    over_edge: Quantity
    #: from there up to its rim; negative is water on the floor
    margin: Quantity
    #: over the rim of the display
    on_the_floor: Quantity
    #: at the least, until the pump draws air
    until_dry: Quantity
    caution: str

class DrainsBlockedAnswerParts(TypedDict):
    """What stands in the display then."""
    #: out of the sump, until the pump draws air
    delivered: Quantity
    #: how high the display stands over its edge at the end
    over_edge: Quantity
    #: from there up to its rim; negative is water on the floor
    margin: Quantity
    #: over the rim of the display
    on_the_floor: Quantity
    #: at the least, until the pump draws air
    until_dry: Quantity
    caution: str

class DriftedSystem(Result):
    """Where it is after a while."""
    value: DriftedSystemParts
    salinity: Quantity
    volume: Quantity
    caution: str

class DriftedSystemParts(TypedDict):
    """Where it is after a while."""
    salinity: Quantity
    volume: Quantity
    caution: str

class DriftingRoomGiven(TypedDict):
    """A room that loses its own heating or cooling: T(t) = T_end + (T_0 - T_end) exp(-t / tau), its moisture
    unchanged.
    """
    #: [K]
    settles_at: Amount
    #: [s] a light building some hours, a heavy one days
    time_constant: Amount

class DriftingSystemGiven(TypedDict):
    """A system that evaporates and is topped off. All flows are constant."""
    #: [m3] of the water at the start
    volume: Amount
    #: [psu]
    salinity: Amount
    #: [K]
    temperature: Amount
    #: [m3/s] fresh water lost
    evaporation: Amount
    #: [m3/s] water brought; zero where the top-off has failed
    top_off: Amount
    #: [psu]
    top_off_salinity: NotRequired[Optional[Amount]]

class DripGiven(TypedDict):
    """Tank water dripping into the water that animals came in."""
    #: [m3] water at the start
    start: Amount
    #: [m3/s]
    flow: Amount
    vessel: NotRequired[Optional[DripVessel]]

class DripResult(Result):
    value: DripResultParts
    leak: Quantity
    caution: str

class DripResultParts(TypedDict):
    leak: Quantity
    caution: str

#: What happens to the water that a drip adds. filling: it stays: the vessel fills up; overflowing: it pushes mixed
#: water out: constant volume
DripVessel: TypeAlias = Literal["filling", "overflowing"]

#: Whether an end of a range belongs to it. closed; open
Edge: TypeAlias = Literal["closed", "open"]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
EffectiveAreaMade = TypedDict("EffectiveAreaMade", {
    "outlet_through_with_orifice": Mapping[str, Any], "plumbing.outlet_through_with_orifice": Mapping[str, Any],
    "outlet_through": Mapping[str, Any], "plumbing.outlet_through": Mapping[str, Any],
    "outlet_through_with_resisting_pipe": Mapping[str, Any],
    "plumbing.outlet_through_with_resisting_pipe": Mapping[str, Any]
}, total=False)

class ElasticPipeGiven(TypedDict):
    """A pipe that a pressure wave stretches."""
    bore: Amount
    #: [m]
    wall: Amount
    #: [Pa] of the wall
    modulus: NotRequired[Optional[Amount]]
    #: [Pa] of the water
    bulk_modulus: NotRequired[Optional[Amount]]
    #: [1] 1 for a thin pipe with joints that give, less for one held along its length; for a thick wall that is 2
    #: (t/D)(1 + mu) + D/(D + t), with mu 0.4 of PVC 1.25 for 1 in Sch 40 and 1.55 for 1/2 in Sch 80 (from memory)
    restraint: NotRequired[Optional[Amount]]

class EvaporatedWater(Result):
    """What went into the air."""
    value: EvaporatedWaterParts
    mass: Quantity
    #: as fresh water: what to top off
    volume: Quantity

class EvaporatedWaterParts(TypedDict):
    """What went into the air."""
    mass: Quantity
    #: as fresh water: what to top off
    volume: Quantity

class EvaporationEstimate(Result):
    value: EvaporationEstimateParts
    #: of all surfaces; the bands add up, because they have one cause
    rate: Quantity
    surfaces: List[SurfaceEvaporationParts]
    #: the air is so moist that vapour condenses on the water: the rates are negative
    condenses: bool

class EvaporationEstimateParts(TypedDict):
    #: of all surfaces; the bands add up, because they have one cause
    rate: Quantity
    surfaces: List[SurfaceEvaporationParts]
    #: the air is so moist that vapour condenses on the water: the rates are negative
    condenses: bool

#:  shah: natural convection or a floor, whichever is more; the default of the library; ashrae_quiet: activity factor
#: 0.5: residential, unoccupied; ashrae_in_use: activity factor 1.0: public pool in use; carrier: forced flow over an
#: occupied pool; smith_1993: 76 % of Carrier: measured, quiet indoor pool; smith_1994: the same authors outdoors;
#: smith_1998: 74 % of Carrier: measured, undisturbed; vdi_2089_still: transfer coefficient 7 m/h: unoccupied;
#: vdi_2089_covered: 0.7 m/h: covered; vdi_2089_private: 21 m/h: private pool in use; vdi_1994: 5 g/(m2 h hPa): the
#: older form for still water; humidity_ratio_25_19: (25 + 19 v)(x_s - x), common in engineering tables; rafferty: ponds
#: in wind; pauken: power law, warm water in a wind tunnel; box: Dalton's law of 1876; biasin_krumme: an indoor pool,
#: with an offset; iso_12596: swimming pool heating by the sun; analogy: first principles: turbulent natural convection
#: over a plate
EvaporationLaw: TypeAlias = Literal[
    "shah", "ashrae_quiet", "ashrae_in_use", "carrier", "smith_1993", "smith_1994", "smith_1998", "vdi_2089_still",
    "vdi_2089_covered", "vdi_2089_private", "vdi_1994", "humidity_ratio_25_19", "rafferty", "pauken", "box",
    "biasin_krumme", "iso_12596", "analogy"
]

class EvaporationLawData(Result):
    """What is known of a correlation. Ranges are those of its data, where stated; an endless interval is "not
    stated".
    """
    value: EvaporationLawDataParts
    law: EvaporationLaw
    name: str
    water_celsius: IntervalParts
    air_celsius: IntervalParts
    humidity: IntervalParts
    speed: IntervalParts

class EvaporationLawDataParts(TypedDict):
    """What is known of a correlation. Ranges are those of its data, where stated; an endless interval is "not
    stated".
    """
    law: EvaporationLaw
    name: str
    formula: str
    source: CitationParts
    water_celsius: IntervalParts
    air_celsius: IntervalParts
    humidity: IntervalParts
    speed: IntervalParts

#: A fall through an outlet in the floor.
FallThroughGiven = TypedDict("FallThroughGiven", {
    "outlet": Union[Amount, EffectiveAreaMade], "from": Amount, "to": NotRequired[Optional[Amount]]
})

class FallingWaterGiven(TypedDict):
    """The volumes that come down."""
    #: display, down to its overflow edge
    over_edge: Estimate
    #: display, from there down to the deepest opening
    back_siphon: Estimate
    box: Estimate
    #: [m3]
    drain_pipes: Amount
    #: [m3] and those they share
    return_pipes: Amount
    total: Estimate

class FallingWaterParts(TypedDict):
    """The volumes that come down."""
    #: display, down to its overflow edge
    over_edge: Quantity
    #: display, from there down to the deepest opening
    back_siphon: Quantity
    box: Quantity
    drain_pipes: Quantity
    #: and those they share
    return_pipes: Quantity
    total: Quantity

class FeedNitrogen(Result):
    """The nitrogen that food becomes."""
    value: FeedNitrogenParts
    #: as ammonia, daily mean, bony fish on dry pellets
    ammonia: Quantity
    #: all nitrogen in the food
    bound: Quantity
    caution: str

class FeedNitrogenParts(TypedDict):
    """The nitrogen that food becomes."""
    #: as ammonia, daily mean, bony fish on dry pellets
    ammonia: Quantity
    #: all nitrogen in the food
    bound: Quantity
    caution: str

class FillStopGiven(TypedDict):
    """A height at which to stop the hose and look: at seams, at panels, at the floor."""
    label: NotRequired[Optional[str]]
    #: [m]
    level: Amount
    #: [s]
    hold: NotRequired[Optional[Amount]]

class FilmGiven(TypedDict):
    """A mature film of nitrifying bacteria."""
    #: [kg/(m2 s)] largest rate, nitrogen per area and time
    plateau: Amount
    #: [K] temperature of that rate
    plateau_at: Amount
    #: Ammonia from which the rate no longer rises (Malone and Pfeiffer 2006).
    plateau_from: NotRequired[Optional[TotalAmmoniaGiven]]
    order: NotRequired[Optional[FilmOrder]]
    #: [1] limited by oxygen: +1.108 % a kelvin (Zhu and Chen 2002)
    per_kelvin_on_plateau: NotRequired[Optional[Amount]]
    #: [1] limited by ammonia: +4.275 % a kelvin (Zhu and Chen 2002)
    per_kelvin_below: NotRequired[Optional[Amount]]

#: How the rate follows the ammonia below the plateau. linear: in proportion (Malone and Pfeiffer 2006): the safe side
#: at low levels; square_root: half order (Nijhof and Bovendeur 1990)
FilmOrder: TypeAlias = Literal["linear", "square_root"]

class FilmWaterGiven(TypedDict):
    """The water that a film works in."""
    ammonia: TotalAmmoniaGiven
    #: [K]
    temperature: Amount
    film: NotRequired[Optional[Union[FilmGiven, Literal["seawater_film", "freshwater_film"]]]]

class FilterCapacity(Result):
    """What a filter takes away."""
    value: FilterCapacityParts
    today: Quantity
    mature: Quantity
    caution: str

class FilterCapacityParts(TypedDict):
    """What a filter takes away."""
    today: Quantity
    mature: Quantity
    caution: str

class FilterSurfaceGiven(TypedDict):
    """A surface that carries a film."""
    label: NotRequired[Optional[str]]
    #: [m2] protected, not nominal
    wet: Amount
    #: share of the mature film that is there today; 0 for new dry media
    seeded: NotRequired[Optional[Amount]]

#: What is screwed, glued or welded into a run. A tee as the water goes through it: straight on, or round the corner.
#: elbow_90; elbow_45; return_bend; tee_through_run; tee_through_branch; mitre_90; mitre_45; union_or_coupling;
#: gate_valve; ball_valve; butterfly_valve; plug_valve; swing_check; lift_check; foot_valve_hinged; foot_valve_poppet
Fitting: TypeAlias = Literal[
    "elbow_90", "elbow_45", "return_bend", "tee_through_run", "tee_through_branch", "mitre_90", "mitre_45",
    "union_or_coupling", "gate_valve", "ball_valve", "butterfly_valve", "plug_valve", "swing_check", "lift_check",
    "foot_valve_hinged", "foot_valve_poppet"
]

class FloorLiveLoadGiven(TypedDict):
    """A live load that a building code asks floors to be designed for."""
    name: NotRequired[Optional[str]]
    #: [Pa]
    value: Amount
    read_as: Standing
    source: NotRequired[Optional[str]]

class FloorLiveLoadParts(TypedDict):
    """A live load that a building code asks floors to be designed for."""
    name: str
    value: Quantity
    read_as: Standing
    source: str

class FloorResult(Result):
    value: FloorResultParts
    weight: Quantity
    #: over the footprint
    spread: Quantity
    #: over what touches the floor
    under_feet: Quantity
    code: FloorLiveLoadParts
    #: [1] spread load over the code's live load
    times_code: Quantity
    caution: str

class FloorResultParts(TypedDict):
    weight: Quantity
    #: over the footprint
    spread: Quantity
    #: over what touches the floor
    under_feet: Quantity
    code: FloorLiveLoadParts
    #: [1] spread load over the code's live load
    times_code: Quantity
    caution: str

class FlowAnswer(Result):
    """The flow at a head; zero above the shut-off head, without a number past the end of the curve."""
    value: FlowAnswerParts
    region: CurveRegion
    flow: Optional[Quantity]

class FlowAnswerParts(TypedDict):
    """The flow at a head; zero above the shut-off head, without a number past the end of the curve."""
    region: CurveRegion
    flow: Optional[Quantity]

class FlowCoefficient(Result):
    """What a valve passes, by its maker's number: Kv in m^3/h at 1 bar, Cv in US gal/min at 1 psi. Zero is shut."""
    value: FlowCoefficientParts
    kv: Quantity
    cv: Quantity

class FlowCoefficientGiven(TypedDict):
    """What a valve passes, by its maker's number: Kv in m^3/h at 1 bar, Cv in US gal/min at 1 psi. Zero is shut.

    One of these.
    """
    kv: NotRequired[Amount]
    cv: NotRequired[Amount]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
FlowCoefficientMade = TypedDict("FlowCoefficientMade", {
    "flow_coefficient_from_loss": Mapping[str, Any], "plumbing.flow_coefficient_from_loss": Mapping[str, Any]
}, total=False)

class FlowCoefficientParts(TypedDict):
    """What a valve passes, by its maker's number: Kv in m^3/h at 1 bar, Cv in US gal/min at 1 psi. Zero is shut."""
    kv: Quantity
    cv: Quantity

class FoamContact(Result):
    """How the water meets the bubbles."""
    value: FoamContactParts
    #: in the column
    time: Quantity
    #: of the whole system per time
    passes: Quantity
    #: contact time at least the low end of the rule
    long_enough: bool
    #: passes at least the low end of the rule
    often_enough: bool
    #: what the two verdicts rest on
    rule: str
    caution: str

class FoamContactParts(TypedDict):
    """How the water meets the bubbles."""
    #: in the column
    time: Quantity
    #: of the whole system per time
    passes: Quantity
    #: contact time at least the low end of the rule
    long_enough: bool
    #: passes at least the low end of the rule
    often_enough: bool
    #: what the two verdicts rest on
    rule: str
    caution: str

class FreeAmmoniaBand(Result):
    low: FreeAmmoniaParts
    central: FreeAmmoniaParts
    high: FreeAmmoniaParts
    reason: str

class FreeAmmoniaGiven(TypedDict):
    """Free (un-ionised) ammonia, NH3: the part that passes gills.

    One of these.
    """
    nitrogen: NotRequired[Amount]
    ammonia: NotRequired[Amount]

class FreeAmmoniaParts(TypedDict):
    """Free (un-ionised) ammonia, NH3: the part that passes gills."""
    nitrogen: Quantity
    ammonia: Quantity

class FreeAmmoniaResult(Result):
    """The free ammonia of a sample."""
    value: FreeAmmoniaResultParts
    concentration: FreeAmmoniaBand
    fraction: Quantity
    caution: str

class FreeAmmoniaResultParts(TypedDict):
    """The free ammonia of a sample."""
    concentration: FreeAmmoniaBand
    fraction: Quantity
    caution: str

class FullWidthEdgeGiven(TypedDict):
    """A level edge over the whole width of the water in front of it: a baffle, an overflow wall."""
    #: [m]
    width: Amount
    #: [m] above the floor in front of it
    crest_height: Amount
    #: [m] of the wall, in the direction of the flow; zero is a sharp edge
    thickness: NotRequired[Optional[Amount]]

class GasketMaterialGiven(TypedDict):
    """How a gasket material asks to be pressed: m times the pressure in service, y to seat it."""
    name: NotRequired[Optional[str]]
    #: [1] m of the gasket
    factor: Amount
    #: [Pa] y
    seating: Amount
    read_as: Standing
    source: NotRequired[Optional[str]]

class GasketResult(Result):
    value: GasketResultParts
    #: W_m1: hold the water and keep the ring tight
    in_service: Quantity
    #: W_m2: press the ring into shape at first
    to_seat: Quantity
    governing: Quantity
    caution: str

class GasketResultParts(TypedDict):
    #: W_m1: hold the water and keep the ring tight
    in_service: Quantity
    #: W_m2: press the ring into shape at first
    to_seat: Quantity
    governing: Quantity
    caution: str

class GaugeReadingsGiven(TypedDict):
    """Pressures read at a running pump."""
    #: [Pa]
    suction: Amount
    #: [Pa]
    discharge: Amount
    #: [m] over one datum
    suction_gauge_height: NotRequired[Optional[Amount]]
    #: [m] over the same
    discharge_gauge_height: NotRequired[Optional[Amount]]
    #: [m/s] in the pipe at the gauge; leave both out where the bores are the same
    suction_velocity: NotRequired[Optional[Amount]]
    #: [m/s]
    discharge_velocity: NotRequired[Optional[Amount]]

class GrainsGiven(TypedDict):
    """A kind of sand or rock. Copy one and change a field where a sample says otherwise."""
    name: NotRequired[Optional[str]]
    grain_density: Estimate
    pores: Estimate
    read_as: Standing
    source: NotRequired[Optional[str]]

class GravityScaleGiven(TypedDict):
    """The two temperatures of a specific gravity: "25/4" is a sample at 25 degC over pure water at 4 degC."""
    #: [K]
    sample: Amount
    #: [K]
    reference: Amount

class GravityScaleParts(TypedDict):
    """The two temperatures of a specific gravity: "25/4" is a sample at 25 degC over pure water at 4 degC."""
    sample: Quantity
    reference: Quantity

class GrowthConditionsGiven(TypedDict):
    """What bacteria live in."""
    #: [kg/m3] of the form they oxidise, as nitrogen
    nitrogen: Amount
    #: [kg/m3]
    oxygen: Amount
    #: [K]
    temperature: Amount

class HeadAnswer(Result):
    """The head at a flow; without a number past the end of the curve."""
    value: HeadAnswerParts
    region: CurveRegion
    head: Optional[Quantity]

class HeadAnswerParts(TypedDict):
    """The head at a flow; without a number past the end of the curve."""
    region: CurveRegion
    head: Optional[Quantity]

class HeatBudget(Result):
    """What leaves the water, and what must be put in to hold its temperature. Where a part is negative, heat comes
    in.
    """
    value: HeatBudgetParts
    evaporation: Quantity
    convection: Quantity
    make_up: Quantity
    radiation: Quantity
    covers: Quantity
    walls: Quantity
    #: of pumps and lights
    gains: Quantity
    #: all losses less the gains: to be heated; negative: to be cooled
    net: Quantity

class HeatBudgetParts(TypedDict):
    """What leaves the water, and what must be put in to hold its temperature. Where a part is negative, heat comes
    in.
    """
    evaporation: Quantity
    convection: Quantity
    make_up: Quantity
    radiation: Quantity
    covers: Quantity
    walls: Quantity
    #: of pumps and lights
    gains: Quantity
    #: all losses less the gains: to be heated; negative: to be cooled
    net: Quantity

class HeatEquipment(Result):
    """A heater or chiller."""
    value: HeatEquipmentParts
    #: to hold the temperature
    needed: Quantity
    suggested: Quantity
    is_needed: bool
    caution: str

class HeatEquipmentParts(TypedDict):
    """A heater or chiller."""
    #: to hold the temperature
    needed: Quantity
    suggested: Quantity
    is_needed: bool
    caution: str

class HeatSourceGiven(TypedDict):
    """Heat that ends up in the water: all the electricity of a submerged pump, the shaft power of a dry one, the
    light that the water absorbs.
    """
    label: NotRequired[Optional[str]]
    #: [W]
    heat: Amount

class HumidityPointParts(TypedDict):
    """The room at one time. The totals are since the start: evaporated + from sources - ventilated - dehumidified -
    condensed is what the vapour in the air has gained.
    """
    time: Quantity
    air: AirParts
    #: in the air of the room
    vapour: Quantity
    evaporated: Quantity
    from_sources: Quantity
    ventilated: Quantity
    dehumidified: Quantity
    condensed: Quantity

class HumidityRatioGiven(TypedDict):
    """Mass of water vapour per mass of DRY air.

    One of these.
    """
    grams_per_kilogram: NotRequired[Amount]
    kilograms_per_kilogram: NotRequired[Amount]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
HumidityRatioMade = TypedDict("HumidityRatioMade", {
    "humidity_ratio_of": Mapping[str, Any], "room.humidity_ratio_of": Mapping[str, Any],
    "humidity_ratio_from_vapour_pressure": Mapping[str, Any],
    "room.humidity_ratio_from_vapour_pressure": Mapping[str, Any], "settled_humidity_ratio": Mapping[str, Any],
    "room.settled_humidity_ratio": Mapping[str, Any], "humidity_ratio_after": Mapping[str, Any],
    "room.humidity_ratio_after": Mapping[str, Any]
}, total=False)

class HumidityStartGiven(TypedDict):
    """Where a room with constant flows starts, and when to look."""
    #: at the start
    ratio: Union[HumidityRatioGiven, HumidityRatioMade]
    #: [kg] in the room
    dry_air: Amount
    #: [s] since
    time: Amount

class HydrometerGiven(TypedDict):
    #: as printed on it: `scale_60f_60f`, `scale_25_25`, ...
    scale: Union[GravityScaleGiven, Literal["scale_15_15", "scale_60f_60f", "scale_20_20", "scale_25_25", "scale_15_4", "scale_20_4", "scale_25_4"]]
    body: NotRequired[Optional[Union[BodyMaterialGiven, Literal["hydrometer_glass", "hydrometer_plastic"]]]]
    #: [1] smallest division of its scale
    division: NotRequired[Optional[Amount]]

class IdlePumpLossesGiven(TypedDict):
    """What water loses in a pump that does not drive it: head over the head at its best point, when the flow of its
    best point passes; at other flows as their squares. Low is a rotor that is held, high one that spins freely
    backwards, and the other way round forwards. From the complete characteristics of one radial pump; common
    practice for others.
    """
    backwards: NotRequired[Optional[Estimate]]
    forwards: NotRequired[Optional[Estimate]]

class InflowAndOutletGiven(TypedDict):
    """A tank with vertical walls that is filled while it empties through an outlet."""
    #: [m2]
    horizontal_area: Amount
    #: [m3/s]
    inflow: Amount
    outlet: Union[Amount, EffectiveAreaMade]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
InsideMade = TypedDict("InsideMade", {
    "inside_of": Mapping[str, Any], "vessel.inside_of": Mapping[str, Any]
}, total=False)

class IntervalParts(TypedDict):
    """An interval of real numbers. `contains` is written so that NaN is in no interval."""
    low: Quantity
    high: Quantity
    low_edge: Edge
    high_edge: Edge

class Item(Result):
    """Something in the water. Low solids, low envelope and low dry mass are one case, and so are the high ones."""
    value: ItemParts
    label: str
    solids: Quantity
    pores: Quantity
    envelope: Quantity
    dry_mass: Quantity

class ItemGiven(TypedDict):
    """Something in the water. Low solids, low envelope and low dry mass are one case, and so are the high ones."""
    label: NotRequired[Optional[str]]
    solids: Estimate
    pores: Estimate
    envelope: Estimate
    dry_mass: Estimate

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
ItemMade = TypedDict("ItemMade", {
    "equipment": Mapping[str, Any], "vessel.equipment": Mapping[str, Any], "rock_by_mass": Mapping[str, Any],
    "vessel.rock_by_mass": Mapping[str, Any], "rock_weighed_under_water": Mapping[str, Any],
    "vessel.rock_weighed_under_water": Mapping[str, Any], "rock_by_level_rise": Mapping[str, Any],
    "vessel.rock_by_level_rise": Mapping[str, Any], "sand_bed": Mapping[str, Any], "vessel.sand_bed": Mapping[str, Any],
    "sand_by_mass": Mapping[str, Any], "vessel.sand_by_mass": Mapping[str, Any]
}, total=False)

class ItemParts(TypedDict):
    """Something in the water. Low solids, low envelope and low dry mass are one case, and so are the high ones."""
    label: str
    solids: Quantity
    pores: Quantity
    envelope: Quantity
    dry_mass: Quantity

class ItemWeight(Result):
    """What one item weighs."""
    value: ItemWeightParts
    dry: Quantity
    #: with its pores full, as it stands on the floor
    wet: Quantity
    #: what it presses on what lies under it in the water
    submerged: Quantity

class ItemWeightParts(TypedDict):
    """What one item weighs."""
    dry: Quantity
    #: with its pores full, as it stands on the floor
    wet: Quantity
    #: what it presses on what lies under it in the water
    submerged: Quantity

class JunctionHeadParts(TypedDict):
    label: str
    #: over the datum; none where it is cut off, for nothing sets it there
    head: Optional[Quantity]
    state: JunctionState

#:  joined; dead_end: one run or pump ends here and nothing else: a capped pipe, or a misspelt name; cut_off: nothing
#: open leads to a source or outlet
JunctionState: TypeAlias = Literal["joined", "dead_end", "cut_off"]

#: What the readings say. proven: the low limit is above zero: it leaks; excluded: none is proven, and one that matters
#: would have shown: the high limit is below it; undecided: none is proven, but one that matters may hide: go on
#: reading; contradictory: the level falls by less than evaporation alone, beyond doubt, or rises
LeakAnswer: TypeAlias = Literal["proven", "excluded", "undecided", "contradictory"]

class LeakTestGiven(TypedDict):
    """A leak test as it was done."""
    #: [m2] of the water, of all vessels that are connected
    surface: Amount
    #: [m] of the water, for its swelling with temperature
    depth: Amount
    #: [m] smallest step the gauge shows
    resolution: Amount
    readings: NotRequired[Optional[Sequence[LevelReadingGiven]]]
    #: fall by evaporation, where there is no pan
    evaporation: NotRequired[Optional[Estimate]]
    #: [psu] of the water in the tank; fresh for most first fills
    salinity: NotRequired[Optional[Amount]]
    #: of each one-sided limit
    confidence: NotRequired[Optional[Amount]]
    #: [m3/s]
    leak_that_matters: NotRequired[Optional[Amount]]
    #: of a reservoir, to be held against as well
    criterion: NotRequired[Optional[Union[TightnessCriterionGiven, Literal["awwa_d110", "awwa_1978", "bs_5337", "aci_350_025"]]]]
    #: of water in the tank; needed for such a criterion
    capacity: NotRequired[Optional[Amount]]
    label: NotRequired[Optional[str]]

class LeakTestPlanGiven(TypedDict):
    """A leak test that is still to be done, read evenly from its first to its last hour."""
    #: [m2]
    surface: Amount
    #: [m] smallest step the gauge shows
    resolution: Amount
    #: [m] of a reading beyond its rounding: ripples, parallax; standard deviation
    scatter: NotRequired[Optional[Amount]]
    #: [1/d]
    readings_per_day: NotRequired[Optional[Amount]]
    #: an evaporation pan is read each time, so evaporation drops out
    pan: NotRequired[Optional[bool]]
    #: to be deducted where there is no pan
    evaporation: NotRequired[Optional[Estimate]]
    #: that a tight tank is not called leaking
    confidence: NotRequired[Optional[Amount]]
    #: that the leak is found
    power: NotRequired[Optional[Amount]]

class LeakTestResult(Result):
    value: LeakTestResultParts
    #: of the level, temperature taken out, with one standard error
    fall: Quantity
    #: that was deducted
    evaporation: Quantity
    #: what is left, with its one-sided limits
    leak_fall: Quantity
    #: the same as a flow; the high limit is what may still hide
    leak: Quantity
    #: how often readings like these come from a tight tank
    chance_without_leak: Quantity
    answer: LeakAnswer
    leak_that_matters: Quantity
    #: that a test like this one proves a leak that matters
    chance_to_show: Quantity
    #: that a test like this one proves with the chosen confidence
    minimum_detectable_leak: Quantity
    #: of the fall that is left, evaporation included
    standard_error: Quantity
    lasted: Quantity
    #: [1]
    degrees_of_freedom: int
    #: where several people read
    readers: List[ReaderOffsetParts]
    against_criterion: Optional[CriterionOutcomeParts]
    caution: str

class LeakTestResultParts(TypedDict):
    #: of the level, temperature taken out, with one standard error
    fall: Quantity
    #: that was deducted
    evaporation: Quantity
    #: what is left, with its one-sided limits
    leak_fall: Quantity
    #: the same as a flow; the high limit is what may still hide
    leak: Quantity
    #: how often readings like these come from a tight tank
    chance_without_leak: Quantity
    answer: LeakAnswer
    leak_that_matters: Quantity
    #: that a test like this one proves a leak that matters
    chance_to_show: Quantity
    #: that a test like this one proves with the chosen confidence
    minimum_detectable_leak: Quantity
    #: of the fall that is left, evaporation included
    standard_error: Quantity
    lasted: Quantity
    #: [1]
    degrees_of_freedom: int
    #: where several people read
    readers: List[ReaderOffsetParts]
    against_criterion: Optional[CriterionOutcomeParts]
    caution: str

class LeakTestStageParts(TypedDict):
    """One stage of a fill that is tested at several depths."""
    depth: Quantity
    #: that the same hole would give at this depth
    leak: Quantity
    #: to find it; nothing when it cannot be found
    required: Optional[Quantity]

#: From which height to which.
LevelChangeGiven = TypedDict("LevelChangeGiven", {"from": Amount, "to": Amount})

class LevelReadingGiven(TypedDict):
    """One reading of the level. Levels may be from any mark, counted upwards."""
    #: [s]
    at: Amount
    #: [m]
    level: Amount
    #: of the display, for the swelling of the water
    water: NotRequired[Optional[Amount]]
    #: level in an evaporation pan standing in the same water and air
    pan: NotRequired[Optional[Amount]]
    #: who read it: two people read a level a little differently, each the same way
    reader: NotRequired[Optional[str]]

class LevelRiseGiven(TypedDict):
    """Rock known only by how far it raised the water."""
    #: [m]
    before: Amount
    #: [m]
    after: Amount
    rock: NotRequired[Optional[Union[GrainsGiven, Literal["aragonite_sand", "quartz_sand", "reef_rock", "coral_branch_tips"]]]]
    label: NotRequired[Optional[str]]

class LidResult(Result):
    value: LidResultParts
    load: Quantity
    #: short term
    sag: Quantity
    #: after years
    long_term_sag: Quantity
    #: upwards or downwards, towards the wet face's side
    moisture_bow: Quantity
    stress: Quantity
    allowable: AllowableStressParts
    #: [1]
    utilisation: Quantity
    #: [1] long-term, central; common limits: 360 for live, 240 for total load (from memory)
    span_over_sag: Quantity
    caution: str

class LidResultParts(TypedDict):
    load: Quantity
    #: short term
    sag: Quantity
    #: after years
    long_term_sag: Quantity
    #: upwards or downwards, towards the wet face's side
    moisture_bow: Quantity
    stress: Quantity
    allowable: AllowableStressParts
    #: [1]
    utilisation: Quantity
    #: [1] long-term, central; common limits: 360 for live, 240 for total load (from memory)
    span_over_sag: Quantity
    caution: str

class Liquid(Result):
    """What flows: density and dynamic viscosity at the pipe's temperature."""
    value: LiquidParts
    density: Quantity
    viscosity: Quantity

class LiquidGiven(TypedDict):
    """What flows: density and dynamic viscosity at the pipe's temperature."""
    #: [kg/m3]
    density: Amount
    #: [Pa s]
    viscosity: Amount

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
LiquidMade = TypedDict("LiquidMade", {
    "seawater": Mapping[str, Any], "water.seawater": Mapping[str, Any], "fresh_water": Mapping[str, Any],
    "water.fresh_water": Mapping[str, Any]
}, total=False)

class LiquidParts(TypedDict):
    """What flows: density and dynamic viscosity at the pipe's temperature."""
    density: Quantity
    viscosity: Quantity

#: How long the load lasts for which an allowable stress is meant. short_term: 3 seconds: a gust of wind; permanent:
#: years: a tank
LoadBasis: TypeAlias = Literal["short_term", "permanent"]

class LoadSpellGiven(TypedDict):
    """A pressure that acted for a while."""
    #: [Pa]
    load: Amount
    #: [s]
    lasting: Amount

#: From this time on, the animals give off this much.
LoadStepGiven = TypedDict("LoadStepGiven", {"from": Amount, "load": Union[Amount, NitrogenLoadMade]})

class LoopGiven(TypedDict):
    """Water taken from the tank, treated, and given back."""
    label: NotRequired[Optional[str]]
    #: [m3/s] measured, not rated
    flow: Amount
    #: share removed in one pass
    efficiency: NotRequired[Optional[Amount]]

class LooseGrainsGiven(TypedDict):
    """Grains on the bottom."""
    #: [m] that half of them is finer than
    size: Amount
    #: [kg/m3]
    density: NotRequired[Optional[Amount]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
LossCoefficientMade = TypedDict("LossCoefficientMade", {
    "loss_from_flow_coefficient": Mapping[str, Any], "plumbing.loss_from_flow_coefficient": Mapping[str, Any]
}, total=False)

#: Which end of the bands of the loss coefficients a calculation takes. least; central; most
Losses: TypeAlias = Literal["least", "central", "most"]

class LyingCylinderGiven(TypedDict):
    """A round tank on its side, with the outlet at its lowest line."""
    #: [m]
    diameter: Amount
    #: [m]
    axial_length: Amount

class MatchLimitsGiven(TypedDict):
    """How far two waters may lie apart. Starting values of the trade, from memory."""
    #: [1]
    salinity: NotRequired[Optional[Amount]]
    #: [K]
    temperature: NotRequired[Optional[Amount]]
    #: [1]
    ph: NotRequired[Optional[Amount]]
    ammonia: NotRequired[Optional[FreeAmmoniaGiven]]

class MetricDimensions(Result):
    """A metric pipe of nominal wall."""
    value: MetricDimensionsParts
    outside_diameter: Quantity
    wall: Quantity
    bore: Quantity

class MetricDimensionsParts(TypedDict):
    """A metric pipe of nominal wall."""
    outside_diameter: Quantity
    wall: Quantity
    bore: Quantity

class MixToAdd(Result):
    value: MixToAddParts
    mix: Quantity
    #: of all the water afterwards
    finished: Quantity
    caution: str

class MixToAddParts(TypedDict):
    mix: Quantity
    #: of all the water afterwards
    finished: Quantity
    caution: str

class MixedSubstanceGiven(TypedDict):
    """A substance in a mixed volume: what comes in steadily, and the ways out."""
    #: [m3]
    volume: Amount
    #: [kg/m3] in the water at time zero
    start: NotRequired[Optional[Amount]]
    #: [kg/s] in it, or added
    made: NotRequired[Optional[Amount]]
    #: [m3/s] runs in, and as much mixed water out
    new_water: NotRequired[Optional[Amount]]
    #: [kg/m3]
    in_new_water: NotRequired[Optional[Amount]]
    #: [m3/s] that treatment frees of the substance: its flow times the share that a pass removes
    cleared: NotRequired[Optional[Amount]]

class MoistureBalanceParts(TypedDict):
    """The room in balance. Everything that comes in goes somewhere: evaporation + sources = ventilation +
    dehumidified + condensing.
    """
    air: AirParts
    #: negative where the water is so cold that it takes vapour up
    evaporation: Quantity
    sources: Quantity
    #: carried out, less what comes in with the outdoor air
    ventilation: Quantity
    dehumidified: Quantity
    #: what saturated air cannot hold: it runs down walls and windows
    condensing: Quantity
    #: of the dehumidifier
    duty: Quantity
    saturated: bool

class MoistureSourceGiven(TypedDict):
    """Moisture from anything but the tank: a person at rest gives about 50 g/h."""
    label: NotRequired[Optional[str]]
    #: [kg/s]
    rate: Amount

class MomentAtParts(TypedDict):
    """A moment per metre of width at a place of the panel; positive moments stretch the dry face."""
    value: Quantity
    #: from the nearer upright edge
    from_side: Quantity
    #: from the lower edge
    from_below: Quantity

class NitrateLevelGiven(TypedDict):
    """A concentration of nitrogen in one of its forms. `Form` gives the mass of the ion for a mass of nitrogen.

    One of these.
    """
    nitrogen: NotRequired[Amount]
    ion: NotRequired[Amount]

class NitrateLevelParts(TypedDict):
    """A concentration of nitrogen in one of its forms. `Form` gives the mass of the ion for a mass of nitrogen."""
    nitrogen: Quantity
    ion: Quantity

class NitrificationNeeds(Result):
    """What oxidising a load to nitrate uses and makes."""
    value: NitrificationNeedsParts
    oxygen: Quantity
    #: as calcium carbonate
    alkalinity: Quantity
    #: made
    carbon_dioxide: Quantity
    #: made: dry organic mass of new bacteria
    cells: Quantity
    caution: str

class NitrificationNeedsParts(TypedDict):
    """What oxidising a load to nitrate uses and makes."""
    oxygen: Quantity
    #: as calcium carbonate
    alkalinity: Quantity
    #: made
    carbon_dioxide: Quantity
    #: made: dry organic mass of new bacteria
    cells: Quantity
    caution: str

class Nitrifier(Result):
    """One group of bacteria: how it grows and dies. Rates at 20 degC."""
    value: NitrifierParts
    #: largest growth rate mu
    growth: Quantity
    #: nitrogen at half of that rate, K
    half_nitrogen: Quantity
    #: b
    decay: Quantity
    #: oxygen at half of the largest rate, K_O
    half_oxygen: Quantity
    #: [1] theta of the growth
    growth_per_kelvin: Quantity
    #: [1] theta of the decay
    decay_per_kelvin: Quantity

#: One group of bacteria: how it grows and dies. Rates at 20 degC.
NitrifierGiven = TypedDict("NitrifierGiven", {
    "growth": Amount, "half_nitrogen": Amount, "yield": Amount, "decay": Amount, "half_oxygen": Amount,
    "growth_per_kelvin": Amount, "decay_per_kelvin": Amount
})

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
NitrifierMade = TypedDict("NitrifierMade", {"slowed": Mapping[str, Any], "life.slowed": Mapping[str, Any]}, total=False)

#: One group of bacteria: how it grows and dies. Rates at 20 degC.
NitrifierParts = TypedDict("NitrifierParts", {
    "growth": Quantity, "half_nitrogen": Quantity, "yield": Quantity, "decay": Quantity, "half_oxygen": Quantity,
    "growth_per_kelvin": Quantity, "decay_per_kelvin": Quantity
})

class NitriteLevelGiven(TypedDict):
    """A concentration of nitrogen in one of its forms. `Form` gives the mass of the ion for a mass of nitrogen.

    One of these.
    """
    nitrogen: NotRequired[Amount]
    ion: NotRequired[Amount]

class NitriteLevelParts(TypedDict):
    """A concentration of nitrogen in one of its forms. `Form` gives the mass of the ion for a mass of nitrogen."""
    nitrogen: Quantity
    ion: Quantity

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
NitrogenLoadMade = TypedDict("NitrogenLoadMade", {
    "capacity_for_meals": Mapping[str, Any], "life.capacity_for_meals": Mapping[str, Any]
}, total=False)

class OpenWaterGiven(TypedDict):
    """Open water under air: what every correlation needs. The air is that at the tank, not that at the thermostat."""
    water: TankWaterGiven
    air: Union[AirGiven, AirMade, Air]
    #: [m/s] over the surface; only some correlations ask for it
    air_speed: NotRequired[Optional[Amount]]

class OutletFlowParts(TypedDict):
    label: str
    #: out of the circuit, by all its runs together
    flow: Quantity
    state: OutletState

#: In the open, water falls out at the height of the nozzle and none runs back. Submerged, it is the level of the water
#: over it that counts, and water runs back as easily as it came. open; submerged
OutletKind: TypeAlias = Literal["open", "submerged"]

#:  flowing; still: nothing comes: too high for the pump, shut, or no run leads to it; reversed: water goes in where it
#: should come out
OutletState: TypeAlias = Literal["flowing", "still", "reversed"]

class OverflowBoxGiven(TypedDict):
    """The box behind the overflow edge."""
    #: [m2]
    horizontal_area: Amount
    #: [m] from its running level down to where its drain stops
    falls_by: Amount

class OverflowFlow(Result):
    """Flow over an edge."""
    value: OverflowFlowParts
    flow: Quantity
    #: outside the published range of the formula, or a rule without a source
    extrapolated: bool

class OverflowFlowParts(TypedDict):
    """Flow over an edge."""
    flow: Quantity
    #: outside the published range of the formula, or a rule without a source
    extrapolated: bool

class OverflowHead(Result):
    """Height of the still water over an edge."""
    value: OverflowHeadParts
    head: Quantity
    #: outside the published range of the formula, or a rule without a source
    extrapolated: bool

class OverflowHeadParts(TypedDict):
    """Height of the still water over an edge."""
    head: Quantity
    #: outside the published range of the formula, or a rule without a source
    extrapolated: bool

class OxygenBalanceGiven(TypedDict):
    """A tank that uses oxygen and takes some in."""
    #: [m3] net volume of water
    net: Amount
    #: [kg/s] animals + filter + the rest
    use: Amount
    #: [kg/m3] From water::oxygen_saturation_concentration: it is for this salinity already, so do not correct it again.
    saturation: Amount
    #: [1/s] from aeration_rate; zero for no way in
    aeration: NotRequired[Optional[Amount]]

class OxygenCountdown(Result):
    """How long until the oxygen is at a limit."""
    value: OxygenCountdownParts
    #: to the limit; empty when the level stays above it
    time: Optional[Quantity]
    #: half of it
    plan_for: Optional[Quantity]
    #: the start is above saturation: it will not last, and it can harm animals
    above_saturation: bool
    caution: str

class OxygenCountdownParts(TypedDict):
    """How long until the oxygen is at a limit."""
    #: to the limit; empty when the level stays above it
    time: Optional[Quantity]
    #: half of it
    plan_for: Optional[Quantity]
    #: the start is above saturation: it will not last, and it can harm animals
    above_saturation: bool
    caution: str

class OxygenCourseGiven(TypedDict):
    """The course of the oxygen level from a start."""
    #: in a power cut: with the aeration that is left (still surface, battery air)
    tank: OxygenBalanceGiven
    #: [kg/m3] level at time zero
    start: Amount

class OxygenDemand(Result):
    """What animals use."""
    value: OxygenDemandParts
    use: Quantity
    #: of these animals at this temperature
    per_mass: Quantity
    caution: str

class OxygenDemandParts(TypedDict):
    """What animals use."""
    use: Quantity
    #: of these animals at this temperature
    per_mass: Quantity
    caution: str

#: How the four edges of a panel are held. The two upright edges always rest on something that keeps them flat.
#: all_supported: a stiff frame or brace holds the top too; top_free: rimless: bottom and sides rest, the top edge is
#: free; bottom_clamped: as `all_supported`, but the bottom cannot turn; bottom_clamped_top_free: as `top_free`, but the
#: bottom cannot turn
PanelEdges: TypeAlias = Literal["all_supported", "top_free", "bottom_clamped", "bottom_clamped_top_free"]

class PanelGiven(TypedDict):
    """A rectangular panel between its supports."""
    #: [m] clear, between the upright edges
    width: Amount
    #: [m] clear, from the lower to the upper edge
    height: Amount
    #: [m] the least that the maker allows, not the nominal one: see `glass_sizes.hpp`
    thickness: Amount
    edges: PanelEdges
    material: Union[PanelMaterialGiven, Literal["annealed_glass", "cast_acrylic"]]
    #: instead of the material's
    allowable: NotRequired[Optional[Union[AllowableStressGiven, AllowableStressMade, AllowableStress, Literal["default of the library", "practice: strength over 3.8", "ASTM E1300 surface stress, permanent", "EN 16612, permanent", "clean-cut edge", "seamed edge", "polished edge"]]]]
    label: NotRequired[Optional[str]]

class PanelMaterialGiven(TypedDict):
    """What plates and sheets are made of."""
    name: NotRequired[Optional[str]]
    #: [Pa] Young's modulus, load of minutes
    modulus: Amount
    #: apparent modulus after about ten years of load
    long_term_modulus: Estimate
    #: [1] Poisson's ratio, 0 to 0.5
    poisson: Amount
    #: [kg/m3]
    density: Amount
    #: for a tank: a permanent load
    allowable: Union[AllowableStressGiven, AllowableStressMade, AllowableStress, Literal["default of the library", "practice: strength over 3.8", "ASTM E1300 surface stress, permanent", "EN 16612, permanent", "clean-cut edge", "seamed edge", "polished edge"]]
    #: of the numbers above it
    read_as: Standing
    source: NotRequired[Optional[str]]
    #: for the bulge after years
    bulge: NotRequired[Optional[Union[DeflectionLimitGiven, Literal["glass_deflection_limit", "acrylic_deflection_limit"]]]]

#:  allowable_above_usual; allowable_below_usual; modulus_unusual; poisson_unusual; density_unusual; thinner_than_sold;
#: thicker_than_sold; nominal_thickness: the thickness is the name of a size; the sheet may be thinner; large_pane;
#: thick_for_its_size
PanelRemark: TypeAlias = Literal[
    "allowable_above_usual", "allowable_below_usual", "modulus_unusual", "poisson_unusual", "density_unusual",
    "thinner_than_sold", "thicker_than_sold", "nominal_thickness", "large_pane", "thick_for_its_size"
]

class PanelResult(Result):
    value: PanelResultParts
    at_bottom: Quantity
    at_top: Quantity
    force: Quantity
    #: of pressure, above the lower edge
    centre: Quantity
    #: largest moment bending along the width, at mid-width
    across: MomentAtParts
    #: largest moment bending along the height, at mid-width
    up: MomentAtParts
    #: largest twisting moment, at a corner
    twist: MomentAtParts
    #: largest principal moment of the panel
    governing: MomentAtParts
    #: from the governing moment
    stress: Quantity
    #: the largest, short-term modulus
    deflection: Quantity
    deflection_from_below: Quantity
    long_term_deflection: Quantity
    #: what the utilisation is held against
    allowable: AllowableStressParts
    #: [1] stress over allowable stress
    utilisation: Quantity
    #: where the utilisation would be 1
    thickness_needed: Quantity
    #: for the bulge after years, by the material and the span
    deflection_limit: Quantity
    #: [1] high end of the bulge after years, over the limit
    deflection_utilisation: Quantity
    #: where that would be 1
    thickness_for_deflection: Quantity
    #: the bulge uses more of its limit than the stress does
    deflection_governs: bool
    #: deflection, short- or long-term, above half the thickness
    beyond_small_deflection: bool
    #: thicker than a tenth of the shorter side: shear counts
    too_thick_for_theory: bool
    note: str
    caution: str

class PanelResultParts(TypedDict):
    at_bottom: Quantity
    at_top: Quantity
    force: Quantity
    #: of pressure, above the lower edge
    centre: Quantity
    #: largest moment bending along the width, at mid-width
    across: MomentAtParts
    #: largest moment bending along the height, at mid-width
    up: MomentAtParts
    #: largest twisting moment, at a corner
    twist: MomentAtParts
    #: largest principal moment of the panel
    governing: MomentAtParts
    #: from the governing moment
    stress: Quantity
    #: the largest, short-term modulus
    deflection: Quantity
    deflection_from_below: Quantity
    long_term_deflection: Quantity
    #: what the utilisation is held against
    allowable: AllowableStressParts
    #: [1] stress over allowable stress
    utilisation: Quantity
    #: where the utilisation would be 1
    thickness_needed: Quantity
    #: for the bulge after years, by the material and the span
    deflection_limit: Quantity
    #: [1] high end of the bulge after years, over the limit
    deflection_utilisation: Quantity
    #: where that would be 1
    thickness_for_deflection: Quantity
    #: the bulge uses more of its limit than the stress does
    deflection_governs: bool
    #: deflection, short- or long-term, above half the thickness
    beyond_small_deflection: bool
    #: thicker than a tenth of the shorter side: shear counts
    too_thick_for_theory: bool
    note: str
    caution: str

class PartFullAnswer(Result):
    """What runs in a nearly level drain."""
    value: PartFullAnswerParts
    flow: Quantity
    velocity: Quantity

class PartFullAnswerParts(TypedDict):
    """What runs in a nearly level drain."""
    flow: Quantity
    velocity: Quantity

class PartFullDrainGiven(TypedDict):
    """A nearly level drain, by Manning."""
    bore: Amount
    #: [1] fall over length
    slope: Amount
    #: [s/m^(1/3)] smooth plastic 0.009 to 0.011 (from memory)
    manning_n: NotRequired[Optional[Amount]]

class PartFullPipeGiven(TypedDict):
    """A nearly level drain, by Darcy and Weisbach."""
    bore: Amount
    #: [1] fall over length
    slope: Amount
    #: [m] of the wall
    roughness: NotRequired[Optional[Amount]]
    water: Union[LiquidGiven, LiquidMade, Liquid]

class PartLeakParts(TypedDict):
    """One of several parts that were tested at the same time, shut off from the others."""
    label: str
    #: with limits that hold for all parts together
    result: LeakTestResultParts
    #: that the tightest of so many tight parts gives such readings
    chance_without_leak: Quantity

class PartsResult(Result):
    value: PartsResultParts
    #: in the order given
    parts: List[PartLeakParts]
    #: of all parts, with its one-sided limits
    total: Quantity
    #: for the total
    answer: LeakAnswer
    caution: str

class PartsResultParts(TypedDict):
    #: in the order given
    parts: List[PartLeakParts]
    #: of all parts, with its one-sided limits
    total: Quantity
    #: for the total
    answer: LeakAnswer
    caution: str

class PeakOfNitriteLevelParts(TypedDict):
    """The worst moment of a level."""
    level: NitriteLevelParts
    at: Quantity

class PeakOfTotalAmmoniaParts(TypedDict):
    """The worst moment of a level."""
    level: TotalAmmoniaParts
    at: Quantity

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
PhFreeMade = TypedDict("PhFreeMade", {
    "ammonium_pka_free": Mapping[str, Any], "water.ammonium_pka_free": Mapping[str, Any],
    "ammonium_pka_bell": Mapping[str, Any], "water.ammonium_pka_bell": Mapping[str, Any],
    "ammonium_pka_khoo": Mapping[str, Any], "water.ammonium_pka_khoo": Mapping[str, Any]
}, total=False)

class PhReadingGiven(TypedDict):
    """A pH on any of the three scales. Made from one of their types, never from a bare number.

    One of these.
    """
    ph_total: NotRequired[Union[Amount, PhTotalMade]]
    ph_free: NotRequired[Union[Amount, PhFreeMade]]
    ph_nbs: NotRequired[Amount]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
PhTotalMade = TypedDict("PhTotalMade", {
    "ammonium_pka_total": Mapping[str, Any], "water.ammonium_pka_total": Mapping[str, Any]
}, total=False)

class Phases(Result):
    """How the volume and the mass of a sample divide into grains, water and air (phase relations of soil mechanics)."""
    value: PhasesParts
    #: pores over the whole
    pores: Quantity
    #: [1] pores over solids
    void_ratio: Quantity
    #: [1] mass of water over dry mass
    water_content: Quantity
    #: [1] water over pores
    saturation: Quantity
    #: dry mass over the whole
    dry_density: Quantity
    #: mass with its water over the whole
    wet_density: Quantity
    grain_density: Quantity
    #: saturation above 1: a dripping sample, or a wrong volume or density
    more_water_than_pores: bool

class PhasesParts(TypedDict):
    """How the volume and the mass of a sample divide into grains, water and air (phase relations of soil mechanics)."""
    #: pores over the whole
    pores: Quantity
    #: [1] pores over solids
    void_ratio: Quantity
    #: [1] mass of water over dry mass
    water_content: Quantity
    #: [1] water over pores
    saturation: Quantity
    #: dry mass over the whole
    dry_density: Quantity
    #: mass with its water over the whole
    wet_density: Quantity
    grain_density: Quantity
    #: saturation above 1: a dripping sample, or a wrong volume or density
    more_water_than_pores: bool

#: One length of pipe of one bore, with what is fitted to it.
PipeRunGiven = TypedDict("PipeRunGiven", {
    "label": NotRequired[Optional[str]], "from": NotRequired[Optional[str]], "to": NotRequired[Optional[str]],
    "bore": Amount, "length": NotRequired[Optional[Amount]], "roughness": NotRequired[Optional[Amount]],
    "fittings": NotRequired[Optional[Union[Union[Amount, LossCoefficientMade], Band]]],
    "valve": NotRequired[Optional[Union[FlowCoefficientGiven, FlowCoefficientMade, FlowCoefficient]]],
    "check_valve": NotRequired[Optional[Union[CheckValveGiven, CheckValveMade, CheckValve]]]
})

class PlacedShapeGiven(TypedDict):
    """A shape with the height of its floor above the lowest floor of the vessel."""
    what: Union[ShapeMade, Shape]
    #: [m]
    floor: NotRequired[Optional[Amount]]

class PluggedInGiven(TypedDict):
    """Something that is plugged in."""
    label: NotRequired[Optional[str]]
    #: [W]
    draws: Amount
    #: [1] real power over apparent power
    power_factor: NotRequired[Optional[Amount]]

PlumbingAreaProfileOption = TypedDict("PlumbingAreaProfileOption", {"area_profile": Union[AreaProfileGiven, Amount, Sequence[AreaSliceGiven]]})

PlumbingBowlOption = TypedDict("PlumbingBowlOption", {"bowl": BowlGiven})

PlumbingConeOption = TypedDict("PlumbingConeOption", {"cone": ConeGiven})

PlumbingContractedEdgeOption = TypedDict("PlumbingContractedEdgeOption", {"contracted_edge": ContractedEdgeGiven})

class PlumbingFillStageParts(TypedDict):
    """One stage of a fill: from the stop before it to this one."""
    label: str
    level: Quantity
    #: in this stage
    added: Quantity
    #: at its end
    in_vessel: Quantity
    #: from the start, holds before it included
    reached: Quantity
    #: after the hold
    resumed: Quantity

PlumbingFullWidthEdgeOption = TypedDict("PlumbingFullWidthEdgeOption", {"full_width_edge": FullWidthEdgeGiven})

PlumbingLyingCylinderOption = TypedDict("PlumbingLyingCylinderOption", {"lying_cylinder": LyingCylinderGiven})

PlumbingStandpipeOption = TypedDict("PlumbingStandpipeOption", {"standpipe": StandpipeGiven})

PlumbingToothedEdgeOption = TypedDict("PlumbingToothedEdgeOption", {"toothed_edge": ToothedEdgeGiven})

PlumbingVNotchOption = TypedDict("PlumbingVNotchOption", {"v_notch": VNotchGiven})

class PointLoadGiven(TypedDict):
    """A weight at one place; negative where something pulls up."""
    #: [N]
    load: Amount
    #: [m]
    at: Amount
    label: NotRequired[Optional[str]]

class PortionGiven(TypedDict):
    """A water that goes into the blend, by volume."""
    #: names it in an error: "old tank"
    label: NotRequired[Optional[str]]
    #: [m3]
    volume: Amount
    #: [psu]
    salinity: Amount
    #: [K]
    temperature: Amount

class PowerCutAnswer(Result):
    """What happens when the pump stops."""
    value: PowerCutAnswerParts
    #: while the pump runs
    head_over_edge: Quantity
    falls: FallingWaterParts
    #: levels before, in each chamber; above the rim when it runs over already
    running: List[ChamberLevelParts]
    #: levels after, at most the rim
    settled: List[ChamberLevelParts]
    #: From the highest level of the whole course, before, during or after, up to the rim. Negative: as if the walls
    #: went on above the rim, so by how much they are too low.
    margin: Quantity
    #: in the middle of the band
    worst: WorstMomentParts
    #: what runs over the rim; zero where it stays dry
    on_the_floor: Quantity
    #: what the sump would still hold at the end; zero where it is full
    spare: Quantity
    #: From when on water runs over the rim, in the worst credible case; where only the last hundredth of the flow
    #: brings it over, from when that is left.
    floods_after: Optional[Quantity]
    #: some weir head is outside its published range
    extrapolated: bool
    caution: str

class PowerCutAnswerGiven(TypedDict):
    """What happens when the pump stops."""
    #: while the pump runs
    head_over_edge: Estimate
    falls: FallingWaterGiven
    #: levels before, in each chamber; above the rim when it runs over already
    running: NotRequired[Optional[Sequence[ChamberLevelGiven]]]
    #: levels after, at most the rim
    settled: NotRequired[Optional[Sequence[ChamberLevelGiven]]]
    #: From the highest level of the whole course, before, during or after, up to the rim. Negative: as if the walls
    #: went on above the rim, so by how much they are too low.
    margin: Estimate
    #: in the middle of the band
    worst: Union[WorstMomentGiven, WorstMomentMade, WorstMoment]
    #: what runs over the rim; zero where it stays dry
    on_the_floor: Estimate
    #: what the sump would still hold at the end; zero where it is full
    spare: Estimate
    #: From when on water runs over the rim, in the worst credible case; where only the last hundredth of the flow
    #: brings it over, from when that is left.
    floods_after: NotRequired[Optional[Amount]]
    #: some weir head is outside its published range
    extrapolated: bool
    caution: NotRequired[Optional[str]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
PowerCutAnswerMade = TypedDict("PowerCutAnswerMade", {
    "power_cut": Mapping[str, Any], "plumbing.power_cut": Mapping[str, Any]
}, total=False)

class PowerCutAnswerParts(TypedDict):
    """What happens when the pump stops."""
    #: while the pump runs
    head_over_edge: Quantity
    falls: FallingWaterParts
    #: levels before, in each chamber; above the rim when it runs over already
    running: List[ChamberLevelParts]
    #: levels after, at most the rim
    settled: List[ChamberLevelParts]
    #: From the highest level of the whole course, before, during or after, up to the rim. Negative: as if the walls
    #: went on above the rim, so by how much they are too low.
    margin: Quantity
    #: in the middle of the band
    worst: WorstMomentParts
    #: what runs over the rim; zero where it stays dry
    on_the_floor: Quantity
    #: what the sump would still hold at the end; zero where it is full
    spare: Quantity
    #: From when on water runs over the rim, in the worst credible case; where only the last hundredth of the flow
    #: brings it over, from when that is left.
    floods_after: Optional[Quantity]
    #: some weir head is outside its published range
    extrapolated: bool
    caution: str

#: What fails along with the power. none: check valves stuck open, siphon breaks working: the power cut as it is always
#: judged; siphon_break_blocked: one siphon break is blocked; all_breaks_blocked; check_valve_leaks: they shut but for a
#: leak; check_valve_holds: no failure: what it would be if they could be trusted; top_off_stuck: the top-off has put
#: its reservoir into the sump before the power fails
PowerCutFailure: TypeAlias = Literal[
    "none", "siphon_break_blocked", "all_breaks_blocked", "check_valve_leaks", "check_valve_holds", "top_off_stuck"
]

class PowerCutFailureCaseParts(TypedDict):
    """A power cut with one failure."""
    #: of the part that fails; empty where it is all of them
    label: str
    failure: PowerCutFailure
    #: of the worst moment, up to the rim
    margin: Quantity
    worst: WorstMomentParts
    #: what runs over the rim
    on_the_floor: Quantity
    #: from when on, in the worst credible case
    floods_after: Optional[Quantity]

class PowerCutHistory(Result):
    """What happens after the pump stops, sample by sample, with central values."""
    value: PowerCutHistoryParts
    time: List[Quantity]
    #: level over the overflow edge; negative below it
    display: List[Quantity]
    #: in box and pipes, still to come down
    under_way: List[Quantity]
    #: has run over the rim
    on_the_floor: List[Quantity]
    chambers: List[ChamberHistoryParts]
    caution: str

class PowerCutHistoryParts(TypedDict):
    """What happens after the pump stops, sample by sample, with central values."""
    time: List[Quantity]
    #: level over the overflow edge; negative below it
    display: List[Quantity]
    #: in box and pipes, still to come down
    under_way: List[Quantity]
    #: has run over the rim
    on_the_floor: List[Quantity]
    chambers: List[ChamberHistoryParts]
    caution: str

class PowerCutInputGiven(TypedDict):
    """What to know about a system before its power is cut."""
    display: DisplayTankGiven
    sump: SumpGiven
    returns: NotRequired[Optional[Sequence[ReturnLineGiven]]]
    #: [m] overflow edge of the display above the floor of the sump
    edge_above_floor: Amount
    shared_pipes: NotRequired[Optional[Sequence[SharedPipeGiven]]]
    #: Sea water of 25 degC, unless given; it decides how fast pipes siphon, within a few per cent.
    water: NotRequired[Optional[Union[LiquidGiven, LiquidMade, Liquid]]]
    #: [1] chamber that the drains end in, counted from 0
    drains_into: NotRequired[Optional[int]]
    #: no siphon break works
    breaks_blocked: NotRequired[Optional[bool]]
    check_valves: NotRequired[Optional[CheckValveState]]
    #: of the bore; common practice, no source
    check_valve_leak: NotRequired[Optional[Amount]]
    #: [m3] what a top-off that stuck open has put in too much
    topped_up: NotRequired[Optional[Amount]]
    #: of every horizontal area
    area_uncertainty: NotRequired[Optional[Amount]]
    #: [m] of the running level, the box's fall and the outlets' depth
    level_uncertainty: NotRequired[Optional[Amount]]
    #: of what the returns bring together
    flow_uncertainty: NotRequired[Optional[Amount]]
    #: [m] height to keep free below the rim, for the two limits
    reserve: NotRequired[Optional[Amount]]

#:  pn10; pn16
PressureClass: TypeAlias = Literal["pn10", "pn16"]

class PrimingAnswer(Result):
    """What the drains hold up until they run full."""
    value: PrimingAnswerParts
    #: by all drains meanwhile
    taken: Quantity
    #: above what stands there while they run
    held_up: Quantity
    caution: str

class PrimingAnswerParts(TypedDict):
    """What the drains hold up until they run full."""
    #: by all drains meanwhile
    taken: Quantity
    #: above what stands there while they run
    held_up: Quantity
    caution: str

class PumpChoiceGiven(TypedDict):
    """A place for a pump, and pumps to try there."""
    #: label of the pump in the circuit whose place is to be filled; its speed is kept
    pump: NotRequired[Optional[str]]
    through: WantedFlowGiven
    candidates: NotRequired[Optional[Sequence[Union[PumpCurveMade, PumpCurve]]]]

class PumpCurve(Result):
    """Head against flow of one pump at one speed, from zero flow to its last point."""
    value: PumpCurveParts
    label: str
    shutoff_head: Quantity
    end_flow: Quantity
    end_head: Quantity
    data: CurveDataParts

class PumpCurveGiven(TypedDict):
    """Head against flow of one pump at one speed, from zero flow to its last point.

    One of these.
    """

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
PumpCurveMade = TypedDict("PumpCurveMade", {
    "curve_from_points": Mapping[str, Any], "plumbing.curve_from_points": Mapping[str, Any],
    "curve_from_three_points": Mapping[str, Any], "plumbing.curve_from_three_points": Mapping[str, Any],
    "curve_from_one_point": Mapping[str, Any], "plumbing.curve_from_one_point": Mapping[str, Any],
    "at_speed_with_curve": Mapping[str, Any], "plumbing.at_speed_with_curve": Mapping[str, Any],
    "at_speed": Mapping[str, Any], "plumbing.at_speed": Mapping[str, Any]
}, total=False)

class PumpCurveParts(TypedDict):
    """Head against flow of one pump at one speed, from zero flow to its last point."""
    label: str
    shutoff_head: Quantity
    end_flow: Quantity
    end_head: Quantity
    data: CurveDataParts

class PumpDutyGiven(TypedDict):
    """A pump at work."""
    #: [m3/s]
    flow: Amount
    #: [m]
    head: Amount
    pump_efficiency: Amount
    #: of motor and drive together
    motor_efficiency: NotRequired[Optional[Amount]]

class PumpFlowParts(TypedDict):
    label: str
    #: from `from` to `to`; negative when it runs back
    flow: Quantity
    #: what it adds; the shut-off head where it is shut
    head: Quantity
    state: PumpState

class PumpInletGiven(TypedDict):
    """The opening through which the pump draws."""
    #: [m] highest point of the opening above the floor of the sump
    above_floor: Amount
    #: of the opening
    bore: Amount

class PumpPerformance(Result):
    """One point of what a pump does."""
    value: PumpPerformanceParts
    flow: Quantity
    head: Quantity
    power: Quantity

class PumpPerformanceGiven(TypedDict):
    """One point of what a pump does."""
    #: [m3/s]
    flow: Amount
    #: [m]
    head: Amount
    #: [W]
    power: Amount

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
PumpPerformanceMade = TypedDict("PumpPerformanceMade", {
    "at_speed_with_point": Mapping[str, Any], "plumbing.at_speed_with_point": Mapping[str, Any],
    "at_speed": Mapping[str, Any], "plumbing.at_speed": Mapping[str, Any]
}, total=False)

class PumpPerformanceParts(TypedDict):
    """One point of what a pump does."""
    flow: Quantity
    head: Quantity
    power: Quantity

class PumpPower(Result):
    value: PumpPowerParts
    #: what the water takes up
    hydraulic: Quantity
    #: what the motor gives
    shaft: Quantity
    #: what the socket gives; all of it ends as heat, most of it in the water
    electrical: Quantity
    caution: str

class PumpPowerParts(TypedDict):
    #: what the water takes up
    hydraulic: Quantity
    #: what the motor gives
    shaft: Quantity
    #: what the socket gives; all of it ends as heat, most of it in the water
    electrical: Quantity
    caution: str

class PumpRanking(Result):
    value: PumpRankingParts
    #: best first
    pumps: List[RankedPumpParts]
    caution: str

class PumpRankingParts(TypedDict):
    #: best first
    pumps: List[RankedPumpParts]
    caution: str

#:  running; shut: more head against it than it has at zero flow: it turns and lifts nothing; past_end: the circuit
#: would take more than the last point of the curve: the flow is at least this; reversed: water runs back through it,
#: whether it turns or stands: it has no check valve that holds; standing: switched off; water may pass forwards, or
#: nothing does
PumpState: TypeAlias = Literal["running", "shut", "past_end", "reversed", "standing"]

class PvcDimensions(Result):
    """An inch pipe. The standard fixes the outside and the thinnest wall; pipe as extruded is thicker, so its mean
    bore is smaller. Work with `average_bore`; old friction tables, made for steel, correspond to
    `minimum_wall_bore`.
    """
    value: PvcDimensionsParts
    outside_diameter: Quantity
    minimum_wall: Quantity
    average_bore: Quantity
    minimum_wall_bore: Quantity

class PvcDimensionsParts(TypedDict):
    """An inch pipe. The standard fixes the outside and the thinnest wall; pipe as extruded is thicker, so its mean
    bore is smaller. Work with `average_bore`; old friction tables, made for steel, correspond to
    `minimum_wall_bore`.
    """
    outside_diameter: Quantity
    minimum_wall: Quantity
    average_bore: Quantity
    minimum_wall_bore: Quantity

#:  schedule_40; schedule_80
PvcSchedule: TypeAlias = Literal["schedule_40", "schedule_80"]

class RailLoads(Result):
    """Load along the two horizontal rails that hold a panel."""
    value: RailLoadsParts
    top: Quantity
    bottom: Quantity
    caution: str

class RailLoadsParts(TypedDict):
    """Load along the two horizontal rails that hold a panel."""
    top: Quantity
    bottom: Quantity
    caution: str

class RankedPumpParts(TypedDict):
    """What a pump would do in the place."""
    label: str
    #: through the run
    flow: Quantity
    head: Quantity
    state: PumpState
    #: at least the wanted flow
    reaches: bool
    #: [1] its flow over the flow at the end of its curve: best between about 0.3 and 0.8
    share_of_curve: Quantity

class RatingPointGiven(TypedDict):
    """The air for which a label's capacity holds."""
    name: NotRequired[Optional[str]]
    #: [K]
    temperature: Amount
    humidity: Amount
    #: [1] published capacity there over that at 80 F, 60 %, 0.01 to 10; 0: take the curve
    share: NotRequired[Optional[Amount]]

class RayPanelGiven(TypedDict):
    """A flat panel with the same material on both sides as far as the ray is concerned."""
    #: [m]
    thickness: Amount
    panel_index: NotRequired[Optional[Union[Amount, RefractiveIndexMade]]]

class ReaderOffsetParts(TypedDict):
    """How one of several readers reads against the first one."""
    reader: str
    #: than the first reader, on the average
    higher: Quantity
    #: [1]
    readings: int

class RecipeAmounts(Result):
    """What to weigh out; element i belongs to row i of `kester_recipe`."""
    value: RecipeAmountsParts
    salts: List[Quantity]
    #: of all salts together
    weighed: Quantity
    #: the same without water of hydration
    anhydrous: Quantity
    #: fresh water to add
    water: Quantity
    caution: str

class RecipeAmountsParts(TypedDict):
    """What to weigh out; element i belongs to row i of `kester_recipe`."""
    salts: List[Quantity]
    #: of all salts together
    weighed: Quantity
    #: the same without water of hydration
    anhydrous: Quantity
    #: fresh water to add
    water: Quantity
    caution: str

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
RefractiveIndexMade = TypedDict("RefractiveIndexMade", {
    "refractive_index_millard_seaver": Mapping[str, Any], "water.refractive_index_millard_seaver": Mapping[str, Any],
    "refractive_index_quan_fry": Mapping[str, Any], "water.refractive_index_quan_fry": Mapping[str, Any]
}, total=False)

class RefractometerGiven(TypedDict):
    scale: RefractometerScale
    compensation: TemperatureCompensation
    #: [ppt] smallest division of its scale, parts per thousand
    division: NotRequired[Optional[Amount]]

#: What the scale assumes is dissolved. seawater: sea salt: the reading is a practical salinity; sodium_chloride:
#: kitchen salt: the reading is grams of it per kilogram of solution
RefractometerScale: TypeAlias = Literal["seawater", "sodium_chloride"]

class RegularMealGiven(TypedDict):
    """A food by the nitrogen that it becomes, and how often it is given."""
    #: in the mean of the days
    mean: Union[Amount, NitrogenLoadMade]
    #: [s] from one meal to the next; up to a day counts as steady
    every: NotRequired[Optional[Amount]]

class RemarkParts(TypedDict):
    """One sentence about a panel, with the value that it is about."""
    about: PanelRemark
    text: str
    #: [SI] in the unit of what it is about
    value: Quantity

class ReservoirLimit(Result):
    value: ReservoirLimitParts
    largest: Quantity
    #: "salinity" or "free volume"
    governed_by: str
    caution: str

class ReservoirLimitParts(TypedDict):
    largest: Quantity
    #: "salinity" or "free volume"
    governed_by: str
    caution: str

class ReservoirRequestGiven(TypedDict):
    """What a reservoir may do at worst: all of it runs into the system at once."""
    water: TankWaterGiven
    #: [m3] of all the water in the system
    volume: Amount
    #: [psu] salinity that the animals still stand
    lowest: Amount
    #: [m3] Above the working level, up to the rim, in the chamber where it runs in.
    free_volume: Amount
    #: [K]
    fresh_water: NotRequired[Optional[Amount]]

class RestartAnswer(Result):
    """What happens when the pump starts again."""
    value: RestartAnswerParts
    #: of the pump chamber while the display refills, above the floor
    lowest_level: Quantity
    #: needed over the inlet
    submergence: Quantity
    #: lowest level less inlet and submergence; negative draws air
    margin: Quantity
    #: by the drains, above what stands there while the pump runs
    held_up: Quantity
    #: in the worst case the chamber does not hold what the surge and the floor take
    runs_dry: bool
    #: until water comes over the overflow edge again
    until_it_runs_over: Quantity
    #: at the earliest, until all levels are the running ones
    until_steady: Quantity
    caution: str

class RestartAnswerParts(TypedDict):
    """What happens when the pump starts again."""
    #: of the pump chamber while the display refills, above the floor
    lowest_level: Quantity
    #: needed over the inlet
    submergence: Quantity
    #: lowest level less inlet and submergence; negative draws air
    margin: Quantity
    #: by the drains, above what stands there while the pump runs
    held_up: Quantity
    #: in the worst case the chamber does not hold what the surge and the floor take
    runs_dry: bool
    #: until water comes over the overflow edge again
    until_it_runs_over: Quantity
    #: at the earliest, until all levels are the running ones
    until_steady: Quantity
    caution: str

class RestartInputGiven(TypedDict):
    """A restart after a power cut."""
    system: PowerCutInputGiven
    inlet: PumpInletGiven
    #: [s] How long the drains hold the flow back until they find their siphon; common practice, no source.
    priming: NotRequired[Optional[Amount]]
    #: What they take meanwhile (`priming.hpp`); nothing, unless given.
    taken: NotRequired[Optional[Estimate]]
    #: Where it was seen: how far the box, or the display where there is none, rises above its running level meanwhile.
    #: It then counts instead of `priming`. Zero for drains that take the flow from the start.
    surge: NotRequired[Optional[Amount]]

class ReturnChamberResult(Result):
    value: ReturnChamberResultParts
    #: of the level, without top-off
    fall: Quantity
    until_lowest: Quantity
    caution: str

class ReturnChamberResultParts(TypedDict):
    #: of the level, without top-off
    fall: Quantity
    until_lowest: Quantity
    caution: str

class ReturnLineGiven(TypedDict):
    """A return line. Its pipe empties too."""
    label: NotRequired[Optional[str]]
    #: [m3/s] while the pump runs
    flow: Amount
    #: [m] top of the outlet's opening below the overflow edge; negative above it
    outlet_below_edge: Amount
    #: a siphon break hole; counts only where it lies above the outlet
    break_below_edge: NotRequired[Optional[Amount]]
    #: Its own pipe, from the outlet to the sump or to where it meets a shared one. None leaves its contents out, and is
    #: refused where its opening is under water: how fast it siphons back is then not known.
    pipe: NotRequired[Optional[PipeRunGiven]]
    #: one in this pipe
    check_valve: NotRequired[Optional[bool]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
ReynoldsNumberMade = TypedDict("ReynoldsNumberMade", {
    "reynolds": Mapping[str, Any], "plumbing.reynolds": Mapping[str, Any]
}, total=False)

class RockBalance(Result):
    """Whether the rock carries the load on the first day."""
    value: RockBalanceParts
    #: as before, at the ammonia level of the old tank
    carried: Quantity
    #: of the new load; zero when all is carried
    shortfall: Quantity
    #: [1] of the old rock, for the new load; above one rock alone cannot do it
    share_needed: Quantity
    #: of ammonia in the new system, until bacteria grow
    daily_rise: TotalAmmoniaParts
    caution: str

class RockBalanceParts(TypedDict):
    """Whether the rock carries the load on the first day."""
    #: as before, at the ammonia level of the old tank
    carried: Quantity
    #: of the new load; zero when all is carried
    shortfall: Quantity
    #: [1] of the old rock, for the new load; above one rock alone cannot do it
    share_needed: Quantity
    #: of ammonia in the new system, until bacteria grow
    daily_rise: TotalAmmoniaParts
    caution: str

class RoomHumidity(Result):
    """Low and high are the driest and the wettest room within the bands of the evaporation and of the machine."""
    value: RoomHumidityParts
    low: MoistureBalanceParts
    central: MoistureBalanceParts
    high: MoistureBalanceParts
    reason: str
    #: all three humidities lie where the evaporation was measured, 28 to 95 %
    within_data: bool
    #: by the dehumidifier, at the high end too; false without one
    set_point_kept: bool
    caution: str

class RoomHumidityParts(TypedDict):
    """Low and high are the driest and the wettest room within the bands of the evaporation and of the machine."""
    low: MoistureBalanceParts
    central: MoistureBalanceParts
    high: MoistureBalanceParts
    reason: str
    #: all three humidities lie where the evaporation was measured, 28 to 95 %
    within_data: bool
    #: by the dehumidifier, at the high end too; false without one
    set_point_kept: bool
    caution: str

RunFlowParts = TypedDict("RunFlowParts", {
    "label": str, "flow": Quantity, "velocity": Quantity, "loss": Quantity, "reversed": bool, "shut": bool,
    "faster_than_recommended": bool
})

class RunningCostResult(Result):
    """What a device comes to. Energy and money are never mixed."""
    value: RunningCostResultParts
    per_day: Quantity
    #: of 365.25 days like this one
    per_year: Quantity
    #: [currency/d]
    cost_per_day: Quantity
    #: [currency/a] of 365.25 days like this one
    cost_per_year: Quantity

class RunningCostResultParts(TypedDict):
    """What a device comes to. Energy and money are never mixed."""
    per_day: Quantity
    #: of 365.25 days like this one
    per_year: Quantity
    #: [currency/d]
    cost_per_day: Quantity
    #: [currency/a] of 365.25 days like this one
    cost_per_year: Quantity

class RunningCostsResult(Result):
    """What all devices come to."""
    value: RunningCostsResultParts
    #: in the order given
    devices: List[DeviceCostParts]
    all: RunningCostResultParts

#: What all devices come to.
RunningCostsResultParts = TypedDict("RunningCostsResultParts", {
    "devices": List[DeviceCostParts], "all": RunningCostResultParts
})

class RunningDeviceGiven(TypedDict):
    """A device and what it draws."""
    label: NotRequired[Optional[str]]
    #: electricity, while it runs; what is negative costs nothing
    draws: Estimate
    #: part of the time
    on: NotRequired[Optional[Amount]]

class RunningSump(Result):
    """Water in motion over and under the baffles."""
    value: RunningSumpParts
    chambers: List[ChamberLevelParts]
    #: in the whole sump, at the central levels
    water: Quantity
    #: from the highest level up to the rim; negative: a chamber runs over while the pump runs
    margin: Quantity
    #: some head is outside the published range of the weir formula
    extrapolated: bool

class RunningSumpParts(TypedDict):
    """Water in motion over and under the baffles."""
    chambers: List[ChamberLevelParts]
    #: in the whole sump, at the central levels
    water: Quantity
    #: from the highest level up to the rim; negative: a chamber runs over while the pump runs
    margin: Quantity
    #: some head is outside the published range of the weir formula
    extrapolated: bool

class SaltBatch(Result):
    """What to weigh out, what to pour it into, and what comes of it."""
    value: SaltBatchParts
    #: to weigh out
    mix: Quantity
    #: to pour it into
    fresh_water: Quantity
    fresh_water_mass: Quantity
    #: what it makes
    finished: Quantity
    finished_mass: Quantity
    #: what the mix brings
    anhydrous_salt: Quantity
    caution: str

class SaltBatchParts(TypedDict):
    """What to weigh out, what to pour it into, and what comes of it."""
    #: to weigh out
    mix: Quantity
    #: to pour it into
    fresh_water: Quantity
    fresh_water_mass: Quantity
    #: what it makes
    finished: Quantity
    finished_mass: Quantity
    #: what the mix brings
    anhydrous_salt: Quantity
    caution: str

class SaltStandardGiven(TypedDict):
    """Salt and water of a standard, as weighed."""
    #: [kg] sodium chloride, pure and dried
    salt: Amount
    #: [kg] purified
    water: Amount

class SawTooth(Result):
    """The saw-tooth that a routine settles into."""
    value: SawToothParts
    before_change: Quantity
    #: and after the dose
    after_change: Quantity

class SawToothParts(TypedDict):
    """The saw-tooth that a routine settles into."""
    before_change: Quantity
    #: and after the dose
    after_change: Quantity

class ScheduleGiven(TypedDict):
    """When something happens: once, or `times` times at equal intervals."""
    #: [s] from the start of the simulation
    at: Amount
    #: [s]
    every: NotRequired[Optional[Amount]]
    #: [1]
    times: NotRequired[Optional[int]]

class SeedingGiven(TypedDict):
    """Bacteria brought in: moved rock (`bacteria_on`), or a bottled culture."""
    when: ScheduleGiven
    added: Union[BacteriaGiven, BacteriaMade, Bacteria]

class SettledAmmonia(Result):
    """Where the ammonia settles. An empty level: the load is more than the filter can take at any level, ammonia
    rises for as long as it lasts.
    """
    value: SettledAmmoniaParts
    #: with the best films
    low: Optional[TotalAmmoniaParts]
    central: Optional[TotalAmmoniaParts]
    #: with the poorest films
    high: Optional[TotalAmmoniaParts]
    #: [1] load over what the plateau can take; above one it cannot hold
    share_of_capacity: Quantity
    caution: str

class SettledAmmoniaParts(TypedDict):
    """Where the ammonia settles. An empty level: the load is more than the filter can take at any level, ammonia
    rises for as long as it lasts.
    """
    #: with the best films
    low: Optional[TotalAmmoniaParts]
    central: Optional[TotalAmmoniaParts]
    #: with the poorest films
    high: Optional[TotalAmmoniaParts]
    #: [1] load over what the plateau can take; above one it cannot hold
    share_of_capacity: Quantity
    caution: str

class Shape(Result):
    """The hollow that holds the water. Made by the functions below; it cannot be made wrong."""
    value: ShapeParts
    label: str
    height: Quantity
    capacity: Quantity

class ShapeGiven(TypedDict):
    """The hollow that holds the water. Made by the functions below; it cannot be made wrong.

    One of these.
    """

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
ShapeMade = TypedDict("ShapeMade", {
    "side_by_side": Mapping[str, Any], "vessel.side_by_side": Mapping[str, Any], "stacked": Mapping[str, Any],
    "vessel.stacked": Mapping[str, Any], "box": Mapping[str, Any], "vessel.box": Mapping[str, Any],
    "upright_cylinder": Mapping[str, Any], "vessel.upright_cylinder": Mapping[str, Any],
    "lying_cylinder": Mapping[str, Any], "vessel.lying_cylinder": Mapping[str, Any], "prism": Mapping[str, Any],
    "vessel.prism": Mapping[str, Any], "regular_prism": Mapping[str, Any], "vessel.regular_prism": Mapping[str, Any],
    "bow_front": Mapping[str, Any], "vessel.bow_front": Mapping[str, Any], "frustum": Mapping[str, Any],
    "vessel.frustum": Mapping[str, Any]
}, total=False)

class ShapeParts(TypedDict):
    """The hollow that holds the water. Made by the functions below; it cannot be made wrong."""
    label: str
    height: Quantity
    capacity: Quantity

class SharedPipeGiven(TypedDict):
    """A pipe that the water of several returns passes: the riser before they part."""
    pipe: PipeRunGiven
    #: labels of those that pass it; none stands for all
    returns: NotRequired[Optional[Sequence[str]]]
    #: one in this pipe, or at its pump
    check_valve: NotRequired[Optional[bool]]
    #: [1] this many such pipes
    side_by_side: NotRequired[Optional[int]]

class SiphonRun(Result):
    """How long a siphon runs, and how much it brings."""
    value: SiphonRunParts
    time: Quantity
    volume: Quantity

class SiphonRunParts(TypedDict):
    """How long a siphon runs, and how much it brings."""
    time: Quantity
    volume: Quantity

class SlopeResult(Result):
    value: SlopeResultParts
    #: for `sand_bed`
    mean_depth: Quantity
    slope: Quantity
    #: it will not stay like that
    steeper_than_repose: bool

class SlopeResultParts(TypedDict):
    #: for `sand_bed`
    mean_depth: Quantity
    slope: Quantity
    #: it will not stay like that
    steeper_than_repose: bool

class SolvedBeamGiven(TypedDict):
    """What `along` needs of a beam that was solved."""
    curve: DeflectionCurveGiven
    span: Amount
    #: E I
    rigidity: Amount

class SolvedBeamParts(TypedDict):
    """What `along` needs of a beam that was solved."""
    curve: DeflectionCurveParts
    span: Quantity
    #: E I
    rigidity: Quantity

class SourceFlowParts(TypedDict):
    label: str
    #: into the circuit; negative where more runs back
    flow: Quantity

class SpecificGravity(Result):
    """Density over that of pure water, with the temperatures of both."""
    value: SpecificGravityParts
    scale: GravityScaleParts

class SpecificGravityBand(Result):
    low: SpecificGravityParts
    central: SpecificGravityParts
    high: SpecificGravityParts
    reason: str

class SpecificGravityGiven(TypedDict):
    """Density over that of pure water, with the temperatures of both."""
    value: Amount
    scale: Union[GravityScaleGiven, Literal["scale_15_15", "scale_60f_60f", "scale_20_20", "scale_25_25", "scale_15_4", "scale_20_4", "scale_25_4"]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
SpecificGravityMade = TypedDict("SpecificGravityMade", {
    "specific_gravity_from_salinity": Mapping[str, Any], "water.specific_gravity_from_salinity": Mapping[str, Any],
    "on_scale": Mapping[str, Any], "water.on_scale": Mapping[str, Any]
}, total=False)

class SpecificGravityParts(TypedDict):
    """Density over that of pure water, with the temperatures of both."""
    value: Quantity
    scale: GravityScaleParts

class SpeedSetting(Result):
    value: SpeedSettingParts
    #: none where the pump is too small even at its fastest
    speed: Optional[Quantity]
    at_fastest: Quantity
    #: of the pump; `past_end` means its curve ends before this duty
    at_setting: PumpState

class SpeedSettingParts(TypedDict):
    #: none where the pump is too small even at its fastest
    speed: Optional[Quantity]
    at_fastest: Quantity
    #: of the pump; `past_end` means its curve ends before this duty
    at_setting: PumpState

#: A load along a piece of the beam that changes evenly from one end of the piece to the other.
SpreadLoadGiven = TypedDict("SpreadLoadGiven", {
    "at_start": Amount, "at_end": Amount, "from": Amount, "to": Amount, "label": NotRequired[Optional[str]]
})

#: How far a source was followed. Said honestly: a value that nobody here could read in print is `from_memory`.
#: published: printed in the source, and read there; secondary: read in a reproduction of the source; from_memory: the
#: source was not read; common_practice: a habit of the trade, no source
Standing: TypeAlias = Literal["published", "secondary", "from_memory", "common_practice"]

class StandpipeGiven(TypedDict):
    """The open top of an upright pipe, level."""
    bore: Amount
    #: a strainer or grate over the top halves it
    strainer: NotRequired[Optional[bool]]

class StartUpGiven(TypedDict):
    """A start-up to simulate."""
    label: NotRequired[Optional[str]]
    #: [m3] net volume of water in the whole system
    net: Amount
    #: [K]
    temperature: Amount
    #: [kg/m3] in the water at the filter
    oxygen: Amount
    ammonia: NotRequired[Optional[TotalAmmoniaGiven]]
    nitrite: NotRequired[Optional[NitriteLevelGiven]]
    nitrate: NotRequired[Optional[NitrateLevelGiven]]
    seedings: NotRequired[Optional[Sequence[SeedingGiven]]]
    loads: NotRequired[Optional[Sequence[LoadStepGiven]]]
    doses: NotRequired[Optional[Sequence[AmmoniaDoseGiven]]]
    water_changes: NotRequired[Optional[Sequence[WaterChangeGiven]]]
    #: [s]
    horizon: NotRequired[Optional[Amount]]
    #: [s] interval of the samples
    every: NotRequired[Optional[Amount]]
    ammonia_limit: NotRequired[Optional[TotalAmmoniaGiven]]
    nitrite_limit: NotRequired[Optional[NitriteLevelGiven]]
    ammonia_oxidisers: NotRequired[Optional[Union[NitrifierGiven, NitrifierMade, Nitrifier, Literal["ammonia_oxidisers_2014", "nitrite_oxidisers_2014"]]]]
    nitrite_oxidisers: NotRequired[Optional[Union[NitrifierGiven, NitrifierMade, Nitrifier, Literal["ammonia_oxidisers_2014", "nitrite_oxidisers_2014"]]]]

class StartUpResult(Result):
    """How a start-up went."""
    value: StartUpResultParts
    summary: StartUpSummaryParts
    samples: List[StartUpSampleParts]

class StartUpResultParts(TypedDict):
    """How a start-up went."""
    summary: StartUpSummaryParts
    samples: List[StartUpSampleParts]

class StartUpSampleParts(TypedDict):
    """The tank at one time."""
    at: Quantity
    ammonia: TotalAmmoniaParts
    nitrite: NitriteLevelParts
    nitrate: NitrateLevelParts
    living: BacteriaParts

class StartUpSummaryParts(TypedDict):
    """How a start-up went, without the samples."""
    label: str
    ammonia: PeakOfTotalAmmoniaParts
    nitrite: PeakOfNitriteLevelParts
    #: From when ammonia and nitrite stay at or below their limits until the end; empty when they do not.
    clear_since: Optional[Quantity]
    #: by load and doses, with what was there at the start
    nitrogen_added: Quantity
    #: by water changes
    nitrogen_removed: Quantity
    #: from ammonia to nitrite
    nitrogen_oxidised: Quantity
    #: by that, if nothing puts it back
    alkalinity_used: Quantity
    caution: str

class StepAnswer(Result):
    value: StepAnswerParts
    #: highest, above the level that it settles at
    left_over: TotalAmmoniaParts
    #: until the filter takes the new load
    catches_up: Quantity

class StepAnswerParts(TypedDict):
    #: highest, above the level that it settles at
    left_over: TotalAmmoniaParts
    #: until the filter takes the new load
    catches_up: Quantity

class StockingDateParts(TypedDict):
    on: Quantity
    #: of the whole, from this day on
    share: Quantity
    left_over: TotalAmmoniaParts

class StoppedFlowGiven(TypedDict):
    """A flow that a valve stops."""
    #: [m/s]
    wave_speed: Amount
    #: [m/s] of the velocity of the water; all of it, when the valve shuts
    change: Amount
    #: [m] from the valve to the tank or the next large pipe
    pipe: Amount

class StoredEnergyGiven(TypedDict):
    """A battery with its inverter."""
    #: [J] new and full
    capacity: Amount
    usable: NotRequired[Optional[Amount]]
    #: part of it that comes out; 1 without an inverter
    inverter: NotRequired[Optional[Amount]]

class StripResult(Result):
    value: StripResultParts
    moment: Quantity
    #: with the duration factor
    capacity: Quantity
    #: [1]
    utilisation: Quantity
    sag: Quantity
    long_term_sag: Quantity
    #: [1] long-term
    span_over_sag: Quantity
    caution: str

class StripResultParts(TypedDict):
    moment: Quantity
    #: with the duration factor
    capacity: Quantity
    #: [1]
    utilisation: Quantity
    sag: Quantity
    long_term_sag: Quantity
    #: [1] long-term
    span_over_sag: Quantity
    caution: str

#: How the sheet runs over the frames. one: from one frame to the next, and ends there; three_or_more: runs through
StripSpans: TypeAlias = Literal["one", "three_or_more"]

class StuckHeaterResult(Result):
    value: StuckHeaterResultParts
    reaches_highest: TemperatureCrossingParts
    #: Where it ends; empty: above 90 degC or below -2 degC.
    settles_at: Optional[Quantity]
    #: the largest change
    in_an_hour: Quantity
    in_a_day: Quantity
    caution: str

class StuckHeaterResultParts(TypedDict):
    reaches_highest: TemperatureCrossingParts
    #: Where it ends; empty: above 90 degC or below -2 degC.
    settles_at: Optional[Quantity]
    #: the largest change
    in_an_hour: Quantity
    in_a_day: Quantity
    caution: str

class StuckValveResult(Result):
    value: StuckValveResultParts
    #: when all of the reservoir has run in
    salinity: Quantity
    #: what the free volume does not hold: it goes on the floor
    overflow: Quantity
    #: below the lowest salinity
    too_fresh: bool
    caution: str

class StuckValveResultParts(TypedDict):
    #: when all of the reservoir has run in
    salinity: Quantity
    #: what the free volume does not hold: it goes on the floor
    overflow: Quantity
    #: below the lowest salinity
    too_fresh: bool
    caution: str

class SubmergedJetGiven(TypedDict):
    """A round opening under water."""
    #: of the opening
    bore: Amount
    #: [m3/s]
    flow: Amount

class SuctionSideGiven(TypedDict):
    """What lies before the pump."""
    #: [Pa] on the water it draws from
    surface_pressure: NotRequired[Optional[Amount]]
    #: [m] negative: the pump must lift
    level_above_pump: Amount
    #: [m] of the suction pipe
    losses: Amount
    #: [Pa] of the water at its temperature
    vapour_pressure: Amount

class SumpAtRest(Result):
    """A sump at rest."""
    value: SumpAtRestParts
    #: one a chamber; above the rim they say how high the walls would have to be
    levels: List[Quantity]
    #: from the highest level up to the rim; negative when it runs over
    margin: Quantity
    #: what stands above the rim; zero when the sump holds it
    over_the_rim: Quantity

class SumpAtRestParts(TypedDict):
    """A sump at rest."""
    #: one a chamber; above the rim they say how high the walls would have to be
    levels: List[Quantity]
    #: from the highest level up to the rim; negative when it runs over
    margin: Quantity
    #: what stands above the rim; zero when the sump holds it
    over_the_rim: Quantity

class SumpGiven(TypedDict):
    """A sump of one or more chambers, in the order the water flows."""
    #: [m] lowest point of the rim, above the floor
    rim: Amount
    #: [m] in the last chamber, while the pump runs: where the top-off keeps it
    running_level: Amount
    chambers: NotRequired[Optional[Sequence[ChamberGiven]]]
    #: between them: one less than there are chambers
    baffles: NotRequired[Optional[Sequence[BaffleGiven]]]

#:  pinned: holds the beam up or down, lets it turn; fixed: lets it do neither; only at an end of the beam
SupportKind: TypeAlias = Literal["pinned", "fixed"]

class SupportReactionGiven(TypedDict):
    #: [m]
    at: Amount
    #: [N] negative where the support must hold the beam down
    up: Amount
    #: [J] of a fixed end: the bending moment in the beam there; 0 when pinned
    holding: Amount

class SupportReactionParts(TypedDict):
    at: Quantity
    #: negative where the support must hold the beam down
    up: Quantity
    #: of a fixed end: the bending moment in the beam there; 0 when pinned
    holding: Quantity

class SurfaceEvaporationParts(TypedDict):
    label: str
    rate: Quantity
    per_area: Quantity

#: A surface between two materials, in the order in which the light goes.
SurfaceGiven = TypedDict("SurfaceGiven", {
    "from": Union[Amount, RefractiveIndexMade], "into": Union[Amount, RefractiveIndexMade]
})

class SurfaceVerdict(Result):
    """What a surface does in the air of the room."""
    value: SurfaceVerdictParts
    surface: Quantity
    #: of the room air
    dew_point: Quantity
    #: surface above dew point; negative: it drips
    margin: Quantity
    #: at the surface; 1 where it drips
    humidity: Quantity
    drips: bool
    #: 80 % or more at the surface: mould, when it lasts
    mould: bool
    caution: str

class SurfaceVerdictParts(TypedDict):
    """What a surface does in the air of the room."""
    surface: Quantity
    #: of the room air
    dew_point: Quantity
    #: surface above dew point; negative: it drips
    margin: Quantity
    #: at the surface; 1 where it drips
    humidity: Quantity
    drips: bool
    #: 80 % or more at the surface: mould, when it lasts
    mould: bool
    caution: str

class Surge(Result):
    value: SurgeParts
    #: over the head before, as much below it half a period later
    rise: Quantity
    #: the same
    pressure_rise: Quantity
    #: the rise is this where the valve shuts faster; slower shutting gives less
    rapid: Quantity
    caution: str

class SurgeParts(TypedDict):
    #: over the head before, as much below it half a period later
    rise: Quantity
    #: the same
    pressure_rise: Quantity
    #: the rise is this where the valve shuts faster; slower shutting gives less
    rapid: Quantity
    caution: str

class TankHeatGiven(TypedDict):
    """A tank and its surroundings."""
    water: TankWaterGiven
    air: Union[AirGiven, AirMade, Air]
    surfaces: NotRequired[Optional[Sequence[WetSurfaceGiven]]]
    walls: NotRequired[Optional[Sequence[TankWallGiven]]]
    sources: NotRequired[Optional[Sequence[HeatSourceGiven]]]
    #: that the open water sees; the air's when left out
    surroundings: NotRequired[Optional[Amount]]
    #: of the top-off water; the air's when left out
    make_up: NotRequired[Optional[Amount]]

class TankRoomGiven(TypedDict):
    """Everything that decides the humidity of a tank room."""
    room: VentilatedRoomGiven
    water: TankWaterGiven
    surfaces: NotRequired[Optional[Sequence[WetSurfaceGiven]]]
    sources: NotRequired[Optional[Sequence[MoistureSourceGiven]]]
    dehumidifier: NotRequired[Optional[ControlledDehumidifierGiven]]

class TankWallGiven(TypedDict):
    """A wall, pane or base of the tank."""
    label: NotRequired[Optional[str]]
    #: [m2]
    area: Amount
    #: [W/(m2 K)] see `transmittance`
    transmittance: Amount
    #: of what is behind it; the room's air when left out
    outside: NotRequired[Optional[Amount]]

class TankWaterGiven(TypedDict):
    """The water at the surface. Its skin is 0.1 to 0.5 K cooler than the water below, worth 2 to 8 % of the
    evaporation.
    """
    #: [K]
    temperature: Amount
    #: [psu]
    salinity: Amount

#:  forty_five; ninety
TeeBranchAngle: TypeAlias = Literal["forty_five", "ninety"]

#:  joining; dividing
TeeDirection: TypeAlias = Literal["joining", "dividing"]

class TeeLoss(Result):
    """Losses of a tee, on the velocity of the combined flow. Joining streams can gain head: a negative K is real."""
    value: TeeLossParts
    run: Quantity
    branch: Quantity

class TeeLossParts(TypedDict):
    """Losses of a tee, on the velocity of the combined flow. Joining streams can gain head: a negative K is real."""
    run: Quantity
    branch: Quantity

class TemperatureChange(Result):
    """How much the water changes within a given time, where it changes most; falling where negative."""
    value: TemperatureChangeParts
    largest: Quantity
    caution: str

class TemperatureChangeParts(TypedDict):
    """How much the water changes within a given time, where it changes most; falling where negative."""
    largest: Quantity
    caution: str

#: What the instrument does about a temperature other than 20 degC. none: nothing: the scale is right at 20 degC only;
#: automatic: it shifts its scale as the index of its salt water shifts
TemperatureCompensation: TypeAlias = Literal["none", "automatic"]

class TemperatureCourse(Result):
    value: TemperatureCourseParts
    points: List[TemperaturePointParts]
    #: In the room as it will be; empty: above 90 degC, or below -2 degC, where sea water is ice.
    settles_at: Optional[Quantity]
    caution: str

class TemperatureCourseParts(TypedDict):
    points: List[TemperaturePointParts]
    #: In the room as it will be; empty: above 90 degC, or below -2 degC, where sea water is ice.
    settles_at: Optional[Quantity]
    caution: str

class TemperatureCrossing(Result):
    """When the water passes a limit; empty where it never does."""
    value: TemperatureCrossingParts
    soonest: Optional[Quantity]
    expected: Optional[Quantity]
    latest: Optional[Quantity]
    caution: str

class TemperatureCrossingParts(TypedDict):
    """When the water passes a limit; empty where it never does."""
    soonest: Optional[Quantity]
    expected: Optional[Quantity]
    latest: Optional[Quantity]
    caution: str

class TemperaturePointParts(TypedDict):
    time: Quantity
    water: Quantity

class ThreeKGiven(TypedDict):
    """Darby's three constants of a fitting."""
    #: [1]
    k1: Amount
    #: [1]
    k_i: Amount
    #: [in^0.3]
    k_d: Amount

class TightnessCriterionGiven(TypedDict):
    """What a reservoir may lose and still be accepted. One of the two losses applies; the other is not set.
    Reservoirs stand in the ground: for a display in a house ask for `leak_that_matters` instead.
    """
    name: NotRequired[Optional[str]]
    #: of the capacity
    share_per_day: NotRequired[Optional[Amount]]
    #: over `least_duration`
    total_fall: NotRequired[Optional[Amount]]
    #: [s]
    least_duration: Amount
    source: Union[CitationGiven, Literal["clegg_whitfield_1995", "emerson_1975", "bell_2008", "khoo_1977", "brine_table_1974", "lueker_2000", "weiss_1974", "millero_2008_composition", "kester_1967", "pss78", "culkin_smith_1980", "hill_1986", "feistel_2008", "roquet_2015", "millero_poisson_1981", "millero_1978", "feistel_2008_heat", "unesco_44_heat", "sharqawy_2010_heat", "teos10_evaporation", "hyland_wexler_1983", "garcia_gordon_1992", "benson_krause_1984", "weiss_1970", "millard_seaver_1990", "quan_fry_1995", "sodium_chloride_index", "millero_2008", "iapws_g14_19", "iapws_r1_76", "iapws_g10_15", "iapws_r15_11", "jamieson_tudhope_1970", "iapws_r7_97", "dickson_2007", "witting_1908", "weiss_price_1980", "nayar_2016", "sharqawy_2010_osmotic", "sharqawy_2010_viscosity", "millero_1974", "iso_8655_6"]]

class ToothedEdgeGiven(TypedDict):
    """A comb: gaps between teeth, closed above the teeth. The overall length of a comb never counts, only its gaps
    do.
    """
    #: [m]
    gap_width: Amount
    #: [1] how many
    gaps: int
    #: [m]
    tooth_width: Amount
    #: [m] above it the gap is closed
    gap_height: Amount
    #: [m] bottom of the gaps above the floor in front
    crest_height: Amount

class TotalAmmonia(Result):
    """Total ammonia, NH3 and NH4+ together. Kits differ in what they count: nitrogen (TAN, "NH3-N"), NH3, or NH4+.
    The name of the maker says which.
    """
    value: TotalAmmoniaParts
    nitrogen: Quantity
    ammonia: Quantity
    ammonium: Quantity

class TotalAmmoniaBand(Result):
    low: TotalAmmoniaParts
    central: TotalAmmoniaParts
    high: TotalAmmoniaParts
    reason: str

class TotalAmmoniaGiven(TypedDict):
    """Total ammonia, NH3 and NH4+ together. Kits differ in what they count: nitrogen (TAN, "NH3-N"), NH3, or NH4+.
    The name of the maker says which.

    One of these.
    """
    nitrogen: NotRequired[Amount]
    ammonia: NotRequired[Amount]
    ammonium: NotRequired[Amount]

class TotalAmmoniaParts(TypedDict):
    """Total ammonia, NH3 and NH4+ together. Kits differ in what they count: nitrogen (TAN, "NH3-N"), NH3, or NH4+.
    The name of the maker says which.
    """
    nitrogen: Quantity
    ammonia: Quantity
    ammonium: Quantity

class TwoKGiven(TypedDict):
    """Hooper's two constants of a fitting."""
    #: [1]
    k1: Amount
    #: [1]
    k_infinity: Amount

class UncontrolledTankGiven(TypedDict):
    """A tank whose temperature nothing controls. Give the `sources` that run: in a power cut those on a battery,
    with a heater stuck on the heater too. Nothing is topped off. Walls without an outside temperature follow the
    room.
    """
    tank: TankHeatGiven
    #: [J/K] of water, rock, sand and tank; see `heat_capacity_of`
    heat_capacity: Amount
    #: left out: the room stays as it is
    room: NotRequired[Optional[DriftingRoomGiven]]

class UnderwaterViewGiven(TypedDict):
    """Something in the water behind a flat panel."""
    #: [m] from the inner face of the panel to the thing
    water: Amount
    #: [m] thickness
    panel: NotRequired[Optional[Amount]]
    water_index: NotRequired[Optional[Union[Amount, RefractiveIndexMade]]]
    panel_index: NotRequired[Optional[Union[Amount, RefractiveIndexMade]]]

class UnmeasuredBatch(Result):
    """What to buy, and what to start with, where the yield is known only within a band."""
    value: UnmeasuredBatchParts
    #: its low end needs the least: start with that, measure, and go on
    mix: Quantity
    #: to pour it into
    fresh_water: Quantity
    fresh_water_mass: Quantity
    finished: Quantity
    finished_mass: Quantity
    caution: str

class UnmeasuredBatchParts(TypedDict):
    """What to buy, and what to start with, where the yield is known only within a band."""
    #: its low end needs the least: start with that, measure, and go on
    mix: Quantity
    #: to pour it into
    fresh_water: Quantity
    fresh_water_mass: Quantity
    finished: Quantity
    finished_mass: Quantity
    caution: str

class UpliftResult(Result):
    value: UpliftResultParts
    buoyancy: Quantity
    #: negative: it stays down
    net_up: Quantity
    caution: str

class UpliftResultParts(TypedDict):
    buoyancy: Quantity
    #: negative: it stays down
    net_up: Quantity
    caution: str

class VNotchGiven(TypedDict):
    """A V cut into a wall."""
    #: [rad]
    opening: Amount

class ValveSetting(Result):
    value: ValveSettingParts
    #: none where the run gets less than wanted even wide open
    valve: Optional[FlowCoefficientParts]
    #: what it gets without the valve
    wide_open: Quantity

class ValveSettingParts(TypedDict):
    #: none where the run gets less than wanted even wide open
    valve: Optional[FlowCoefficientParts]
    #: what it gets without the valve
    wide_open: Quantity

class VentilatedRoomGiven(TypedDict):
    """The room and the air that comes in. Outdoor pressure is the room's pressure."""
    #: [m3]
    volume: Amount
    #: [1/s] of outdoor air: per_hour(0.5)
    air_changes: Amount
    #: [K]
    temperature: Amount
    outdoor: Union[AirGiven, AirMade, Air]

class VentilationSize(Result):
    """What to let in to hold a humidity."""
    value: VentilationSizeParts
    air_changes: Quantity
    #: measured at the room's temperature
    outdoor_air: Quantity
    dry_air: Quantity
    caution: str

class VentilationSizeParts(TypedDict):
    """What to let in to hold a humidity."""
    air_changes: Quantity
    #: measured at the room's temperature
    outdoor_air: Quantity
    dry_air: Quantity
    caution: str

class VesselFillStageParts(TypedDict):
    """One stage of the first fill."""
    #: above the lower edge of the panel
    level: Quantity
    panel: PanelResultParts

class WallLayerGiven(TypedDict):
    label: NotRequired[Optional[str]]
    #: [m]
    thickness: Amount
    #: [W/(m K)]
    conductivity: Amount

class WantedFlowGiven(TypedDict):
    """A flow that one run should carry, in the direction it is written in."""
    #: its label
    run: NotRequired[Optional[str]]
    #: [m3/s]
    flow: Amount

class WantedSpeedGiven(TypedDict):
    """A speed of one pump that should give a flow."""
    #: its label
    pump: NotRequired[Optional[str]]
    through: WantedFlowGiven
    fastest: NotRequired[Optional[Amount]]

class WarmUpResult(Result):
    value: WarmUpResultParts
    time: Quantity
    heater_energy: Quantity
    #: Where a heater stuck on would take it in the end, at the least evaporation; empty: above 90 degC.
    stuck_on: Optional[Quantity]
    caution: str

class WarmUpResultParts(TypedDict):
    time: Quantity
    heater_energy: Quantity
    #: Where a heater stuck on would take it in the end, at the least evaporation; empty: above 90 degC.
    stuck_on: Optional[Quantity]
    caution: str

class WaterBehindGiven(TypedDict):
    """Water behind a panel."""
    #: [m] above the lower edge of the panel; above its height for a window set below the surface
    level: Amount
    #: [kg/m3]
    water_density: Amount

class WaterBetween(Result):
    """The animals' water part of the way."""
    value: WaterBetweenParts
    salinity: Quantity
    temperature: Quantity

class WaterBetweenParts(TypedDict):
    """The animals' water part of the way."""
    salinity: Quantity
    temperature: Quantity

class WaterChangeGiven(TypedDict):
    """Water replaced by new water without nitrogen. The bacteria sit on surfaces and stay."""
    when: ScheduleGiven
    part: Amount

class WaterContent(Result):
    value: WaterContentParts
    gross: Quantity
    solids: Quantity
    pores: Quantity
    envelope: Quantity
    #: all the water: for salt, dosing, water changes
    net: Quantity
    #: the water that moves: for turnover and oxygen
    free: Quantity
    contents_dry: Quantity
    contents_submerged: Quantity
    water: Quantity
    #: water and contents; add the tank and its stand
    on_the_floor: Quantity
    caution: str

class WaterContentGiven(TypedDict):
    #: [m3]
    gross: Amount
    solids: Estimate
    pores: Estimate
    envelope: Estimate
    #: all the water: for salt, dosing, water changes
    net: Estimate
    #: the water that moves: for turnover and oxygen
    free: Estimate
    contents_dry: Estimate
    contents_submerged: Estimate
    water: Estimate
    #: water and contents; add the tank and its stand
    on_the_floor: Estimate
    caution: NotRequired[Optional[str]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
WaterContentMade = TypedDict("WaterContentMade", {
    "water_in": Mapping[str, Any], "vessel.water_in": Mapping[str, Any]
}, total=False)

class WaterContentParts(TypedDict):
    gross: Quantity
    solids: Quantity
    pores: Quantity
    envelope: Quantity
    #: all the water: for salt, dosing, water changes
    net: Quantity
    #: the water that moves: for turnover and oxygen
    free: Quantity
    contents_dry: Quantity
    contents_submerged: Quantity
    water: Quantity
    #: water and contents; add the tank and its stand
    on_the_floor: Quantity
    caution: str

class WaterMatch(Result):
    """The animals' water against the tank's."""
    value: WaterMatchParts
    #: [1] tank less bag
    salinity: Quantity
    #: tank less bag
    temperature: Quantity
    #: [1] tank less bag
    ph: Quantity
    #: in the animals' water, at its own pH
    ammonia_as_is: FreeAmmoniaBand
    #: in the animals' water, once its pH has come up to the tank's
    ammonia_at_tank_ph: FreeAmmoniaBand
    salinity_matches: bool
    temperature_matches: bool
    ph_matches: bool
    #: the high end, at both pH values
    ammonia_safe: bool
    caution: str

class WaterMatchParts(TypedDict):
    """The animals' water against the tank's."""
    #: [1] tank less bag
    salinity: Quantity
    #: tank less bag
    temperature: Quantity
    #: [1] tank less bag
    ph: Quantity
    #: in the animals' water, at its own pH
    ammonia_as_is: FreeAmmoniaBand
    #: in the animals' water, once its pH has come up to the tank's
    ammonia_at_tank_ph: FreeAmmoniaBand
    salinity_matches: bool
    temperature_matches: bool
    ph_matches: bool
    #: the high end, at both pH values
    ammonia_safe: bool
    caution: str

class WaterPush(Result):
    value: WaterPushParts
    at_bottom: Quantity
    at_top: Quantity
    force: Quantity
    #: height of the centre of pressure above the lower edge; 0 without water
    centre: Quantity
    #: what wants to turn the wall outwards
    about_lower_edge: Quantity
    caution: str

class WaterPushParts(TypedDict):
    at_bottom: Quantity
    at_top: Quantity
    force: Quantity
    #: height of the centre of pressure above the lower edge; 0 without water
    centre: Quantity
    #: what wants to turn the wall outwards
    about_lower_edge: Quantity
    caution: str

class WaterStepGiven(TypedDict):
    """From one salinity and temperature to another."""
    #: [psu]
    salinity_from: Amount
    #: [psu]
    salinity_to: Amount
    #: [K]
    temperature_from: Amount
    #: [K]
    temperature_to: Amount

class WaterToAdd(Result):
    value: WaterToAddParts
    fresh_water: Quantity
    fresh_water_mass: Quantity
    #: of all the water afterwards
    finished: Quantity
    caution: str

class WaterToAddParts(TypedDict):
    fresh_water: Quantity
    fresh_water_mass: Quantity
    #: of all the water afterwards
    finished: Quantity
    caution: str

class WaterToReplace(Result):
    value: WaterToReplaceParts
    #: of the water that is there
    taken_out: Quantity
    #: of the replacement; differs a little, so that the volume stays
    put_in: Quantity
    #: of the mass that is there
    part: Quantity
    caution: str

class WaterToReplaceParts(TypedDict):
    #: of the water that is there
    taken_out: Quantity
    #: of the replacement; differs a little, so that the volume stays
    put_in: Quantity
    #: of the mass that is there
    part: Quantity
    caution: str

class WeighedPortionGiven(TypedDict):
    """A water that goes into the blend, by mass."""
    label: NotRequired[Optional[str]]
    #: [kg]
    mass: Amount
    #: [psu]
    salinity: Amount

class WellMixedRoomGiven(TypedDict):
    """Constant flows into and out of a room. A surface takes part with what it gives per humidity ratio: E = g (W_s
    - W).
    """
    #: [kg/s] of the ventilation
    dry_air: Amount
    outdoor: Union[HumidityRatioGiven, HumidityRatioMade]
    #: [kg/s] less what a machine removes
    source: NotRequired[Optional[Amount]]
    #: [kg/s] g, of the wet surfaces
    transfer: NotRequired[Optional[Amount]]
    #: W_s, at the wet surfaces
    surface: NotRequired[Optional[Union[HumidityRatioGiven, HumidityRatioMade]]]

class WetSection(Result):
    """The wet section of a round pipe."""
    value: WetSectionParts
    area: Quantity
    wetted_perimeter: Quantity
    hydraulic_radius: Quantity
    surface_width: Quantity

class WetSectionParts(TypedDict):
    """The wet section of a round pipe."""
    area: Quantity
    wetted_perimeter: Quantity
    hydraulic_radius: Quantity
    surface_width: Quantity

class WetSurfaceGiven(TypedDict):
    """One piece of open water."""
    label: NotRequired[Optional[str]]
    #: [m2] all the wet area, also of the film on a weir
    area: Amount
    agitation: NotRequired[Optional[Amount]]
    #: [m/s] over the water; up to 0.1 m/s is a quiet room
    air_speed: NotRequired[Optional[Amount]]
    #: the part of the area under the cover; gaps are not covered
    covered: NotRequired[Optional[Amount]]
    cover: NotRequired[Optional[Union[CoverMaterialGiven, Literal["rigid_lid", "foam_cover", "bubble_cover", "track_cover", "floating_discs", "liquid_monolayer"]]]]

class WorstMoment(Result):
    """The moment at which the water stands highest in a chamber of the sump."""
    value: WorstMomentParts
    #: from there up to the rim; negative is water on the floor
    margin: Quantity
    #: its label
    chamber: str
    #: after the power fails; none: once all has come to rest
    at: Optional[Quantity]

class WorstMomentGiven(TypedDict):
    """The moment at which the water stands highest in a chamber of the sump."""
    #: [m] from there up to the rim; negative is water on the floor
    margin: Amount
    #: its label
    chamber: NotRequired[Optional[str]]
    #: after the power fails; none: once all has come to rest
    at: NotRequired[Optional[Amount]]

#: The formula that makes it, with its arguments: {"seawater": {"practical_salinity": 35, ...}}.
WorstMomentMade = TypedDict("WorstMomentMade", {
    "worst_moment_of": Mapping[str, Any], "plumbing.worst_moment_of": Mapping[str, Any]
}, total=False)

class WorstMomentParts(TypedDict):
    """The moment at which the water stands highest in a chamber of the sump."""
    #: from there up to the rim; negative is water on the floor
    margin: Quantity
    #: its label
    chamber: str
    #: after the power fails; none: once all has come to rest
    at: Optional[Quantity]
