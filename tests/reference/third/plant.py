"""An invented ground loop: fluid, pipe, circulators, unit, record; flow and pressure in it.

Simple formulas of the trade in its own units (gpm, psi, ft, degF). Sources: the friction
factor is Churchill's (1977); freeze points and densities of propylene glycol, methanol and
ethanol are Lange's Handbook, table 5.13; everything else is from memory or judgement.
"""

from dataclasses import dataclass, field

import numpy as np

# Inside diameters of SDR 11 pipe, inches.
BORE = {"3/4": 0.859, "1": 1.076, "1-1/4": 1.358, "1-1/2": 1.555, "2": 1.943}
# Share by volume in %, freeze point in degF, specific gravity at 60 degF.
STRENGTH = {
    "propylene_glycol": (
        [0, 10, 15, 20, 25, 30, 35, 40, 50],
        [32, 28, 25, 20, 16, 9, 3, -5, -28],
        [1.0, 1.006, 1.012, 1.017, 1.020, 1.024, 1.028, 1.032, 1.038],
    ),
    "ethylene_glycol": (
        [0, 10, 20, 25, 30, 40, 50],
        [32, 25, 16, 10, 4, -12, -34],
        [1.0, 1.015, 1.030, 1.037, 1.044, 1.058, 1.070],
    ),
    "methanol": (
        [0, 5, 10, 15, 20, 25, 30, 40],
        [32, 28, 23, 17, 11, 4, -4, -20],
        [1.0, 0.993, 0.986, 0.980, 0.974, 0.968, 0.963, 0.950],
    ),
    "ethanol": (
        [0, 8.5, 14, 17, 20.2, 24.8, 29.5, 40],
        [32, 26.6, 23, 21, 18.5, 12.9, 6.8, -12],
        [1.0, 0.9866, 0.9801, 0.9767, 0.9734, 0.9682, 0.9628, 0.950],
    ),
    "water": ([0, 100], [32, 32], [1.0, 1.0]),
}
# ln(viscosity against water) per unit of share at 0 degC, and its fall per K.
THICKNESS = {
    "propylene_glycol": (4.1, 0.047),
    "ethylene_glycol": (2.2, 0.005),
    "methanol": (2.3, 0.01),
    "ethanol": (4.6, 0.07),
    "water": (0.0, 0.0),
}
# Expansion, 1e-4 per K, at 5 degC and its rise per K, at usual strength.
EXPANSION = {
    "propylene_glycol": (2.8, 0.08),
    "ethylene_glycol": (2.3, 0.08),
    "methanol": (2.6, 0.073),
    "ethanol": (3.0, 0.1),
    "water": (0.17, 0.127),
}
# Shut-off head in ft, run-out flow in gpm, electric input in W of one circulator.
CIRCULATORS = [(17, 22, 110), (27, 30, 210), (32, 36, 245)]


def celsius(fahrenheit):
    """Temperature in degC."""
    return (fahrenheit - 32) / 1.8


def freeze_point(kind, share):
    """Freeze point in degF of a share in % by volume."""
    return float(np.interp(share, *STRENGTH[kind][:2]))


def share_for(kind, freeze):
    """Share in % by volume with that freeze point in degF."""
    shares, points, _ = STRENGTH[kind]
    return float(np.interp(-freeze, -np.array(points), shares))


def gravity(kind, share, fahrenheit=60.0):
    """Specific gravity; near enough 1.5e-4 less for each degF of warmth."""
    at60 = float(np.interp(share, STRENGTH[kind][0], STRENGTH[kind][2]))
    return at60 - 1.5e-4 * (fahrenheit - 60)


def viscosity(kind, share, fahrenheit):
    """Dynamic viscosity in Pa s; water by the usual Vogel form."""
    deg = celsius(fahrenheit)
    water = 2.414e-5 * 10 ** (247.8 / (deg + 133.15))
    rise, fall = THICKNESS[kind]
    return water * np.exp(share / 100 * max(rise - fall * deg, 0.3 * rise))


def heat_factor(kind, share):
    """Btu/h for each gpm and degF."""
    return 500 * (1 - {"water": 0.0, "methanol": 0.15}.get(kind, 0.13) * share / 100)


def pipe_drop(flow, bore, length, kind, share, fahrenheit):
    """Friction in psi of a flow in gpm through a pipe (inches, ft)."""
    metres, density = bore * 0.0254, 1000 * gravity(kind, share, fahrenheit)
    speed = np.maximum(flow, 1e-6) * 6.309e-5 / (np.pi / 4 * metres**2)
    reynolds = density * speed * metres / viscosity(kind, share, fahrenheit)
    a = (2.457 * np.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * 1.5e-6 / metres))) ** 16
    b = (37530 / reynolds) ** 16
    friction = 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12)
    return friction * length * 0.3048 / metres * density * speed**2 / 2 / 6894.8


@dataclass
class Plant:
    """What stands there, all of it sound. Nothing in it is known to the visit as such."""

    tons: float
    ground: str
    pipe: str
    circuits: int
    length: float
    header: str
    header_length: float
    centre: str
    kind: str
    share: float
    freeze_wanted: float
    ground_temperature: float
    rated: float
    least: float
    exchanger: str
    exchanger_drop: float
    strainer: bool
    checks: bool
    reservoir: float
    tank: float
    restraint: float
    pumps: list = field(default_factory=list)

    @property
    def volume(self):
        """Gallons in the loop."""
        per_foot = {name: 0.0408 * bore**2 for name, bore in BORE.items()}
        return (
            self.circuits * self.length * per_foot[self.pipe]
            + self.header_length * per_foot[self.header]
            + 3
        )


@dataclass
class State:
    """What the trouble has made of the plant; the defaults are a sound loop."""

    kind: str
    share: float
    share_two: float | None = None
    air: float = 0.1  # % of the loop's volume
    pump_air: float = 0.0
    circuit_k: np.ndarray | None = None  # resistance against a sound circuit
    pump_heads: list = field(default_factory=list)  # share of its head each one gives
    pump_watts: list = field(default_factory=list)
    valve_k: float = 0.0  # psi at rated flow held by a valve
    check_k: float = 0.0
    strainer_k: float = 1.0  # times its clean drop
    exchanger_k: float = 1.0
    past_unit: float = 0.0  # share of the flow that goes round the unit
    past_ground: float = 0.0
    reversed: bool = False
    fouling: float = 0.0  # degF of approach
    ground_load: float = 1.0  # temperature change of the ground against a sound loop
    capacity: float = 1.0
    power: float = 1.0
    superheat: float = 0.0  # shifts in degF
    subcooling: float = 0.0
    evaporating: float = 0.0
    condensing: float = 0.0
    air_change: float = 1.0
    ph: float = 0.0  # shift
    lost: float = 0.0  # psi taken by a leak since the last charge
    lost_a_day: float = 0.0
    topped: float = 0.0  # gallons
    level: float = 0.0  # inches against the mark
    tank_works: bool = True
    pre_charge: float = 0.0  # psi against the right one
    body: float = 12.0  # degF the circulator is warmer than the fluid


def invent(rng):
    """A plant as the trade builds them, sized so that a sound one has its flow."""
    tons = float(rng.choice([2, 2.5, 3, 4, 5, 6], p=[0.12, 0.08, 0.28, 0.26, 0.18, 0.08]))
    ground = str(rng.choice(["vertical", "horizontal", "pond"], p=[0.5, 0.38, 0.12]))
    pipe = str(rng.choice(["3/4", "1", "1-1/4"], p=[0.62, 0.22, 0.16]))
    circuits = int(np.ceil(tons / {"3/4": 1.0, "1": 1.6, "1-1/4": 2.5}[pipe]))
    feet = {"vertical": (310, 420), "horizontal": (500, 760), "pond": (320, 500)}[ground]
    kinds = ["propylene_glycol", "methanol", "ethanol", "water", "ethylene_glycol"]
    kind = str(rng.choice(kinds, p=[0.46, 0.27, 0.14, 0.09, 0.04]))
    deep = rng.normal(66 if kind == "water" else 52.5, 3.0)
    wanted = 32.0 if kind == "water" else float(rng.choice([15, 18, 20]))
    plant = Plant(
        tons=tons,
        ground=ground,
        pipe=pipe,
        circuits=circuits,
        length=round(tons * rng.uniform(*feet) / circuits, -1),
        header="1-1/4" if tons <= 3 else "1-1/2" if tons <= 4 else "2",
        header_length=float(rng.integers(4, 20) * 10),
        centre=str(
            rng.choice(["sealed", "sealed_with_tank", "non_pressurised"], p=[0.54, 0.14, 0.32])
        ),
        kind=kind,
        share=share_for(kind, wanted),
        freeze_wanted=wanted,
        ground_temperature=deep,
        rated=round(3 * tons * rng.uniform(0.92, 1.02), 1),
        least=round(2.2 * tons * rng.uniform(0.9, 1.05), 1),
        exchanger=str(rng.choice(["coaxial", "brazed_plate"], p=[0.75, 0.25])),
        exchanger_drop=rng.uniform(3, 5.5),
        strainer=bool(rng.random() < 0.45),
        checks=bool(rng.random() < 0.6),
        reservoir=float(rng.choice([8, 10])),
        tank=float(rng.choice([2, 4.4, 7.6])),
        restraint=rng.uniform(0.82, 1.0),
    )
    sets = [[p] * n for n, p in [(1, 0), (1, 1), (1, 2), (2, 0), (2, 1), (2, 2)]]
    sets = [[CIRCULATORS[at] for at in chosen] for chosen in sets]
    cold = 45.0 if kind == "water" else 30.0
    for at, chosen in enumerate(sets):
        plant.pumps = chosen
        if run(plant, fresh(plant), cold)["unit"] >= 0.97 * plant.rated:
            if rng.random() < 0.3 and at + 1 < len(sets):
                plant.pumps = sets[at + 1]
            return plant
    return invent(rng)  # no circulator carries it: nobody would have built it so


def fresh(plant):
    """The sound state."""
    return State(
        kind=plant.kind,
        share=plant.share,
        circuit_k=np.ones(plant.circuits),
        pump_heads=[1.0] * len(plant.pumps),
        pump_watts=[1.0] * len(plant.pumps),
    )


def run(plant, state, fahrenheit):
    """Flows in gpm and drops in psi of the running loop at a fluid temperature."""
    fluid = (state.kind, state.share, fahrenheit)
    heavy = gravity(*fluid)
    flow = np.linspace(0.02, 45, 900)
    one = pipe_drop(flow, BORE[plant.pipe], plant.length, *fluid)
    levels = np.linspace(0, 40, 800)
    each = [np.interp(levels, one * k, flow) if np.isfinite(k) else 0 * levels
            for k in state.circuit_k]
    ground_flow = np.sum(each, axis=0) / (1 - state.past_ground)
    ground = np.interp(flow, ground_flow, levels)
    against = flow / plant.rated
    thick = viscosity(*fluid) / viscosity("water", 0, 70)
    unit = plant.exchanger_drop * (1 - state.past_unit) ** 1.8 * against**1.8
    unit = unit * thick**0.25 * heavy**0.75 * state.exchanger_k
    strainer = (0.4 * state.strainer_k if plant.strainer else 0.0) * against**2
    check = (0.3 * len(plant.pumps) if plant.checks else 0.0) + state.check_k
    rest = (1.0 + state.valve_k + check) * against**2
    rest = rest + pipe_drop(flow, BORE[plant.header], plant.header_length + 40, *fluid)
    heads = [share * head * (1 - np.minimum(flow / most, 1.4) ** 1.8)
             for share, (head, most, _) in zip(state.pump_heads, plant.pumps, strict=True)]
    # A circulator that gives nothing is only in the way; beyond run-out it holds back a little.
    heads = [np.maximum(h, -3.0 if s >= 0 else -np.inf) - (1.5 * against**2 if s == 0 else 0)
             for h, s in zip(heads, state.pump_heads, strict=True)]
    rise = np.sum(heads, axis=0) * heavy * 0.433
    need = ground + unit + strainer + rest
    short = np.nonzero(rise < need)[0]
    at = int(short[0]) if len(short) else len(flow) - 1
    total = float(flow[at]) if at else 0.0
    level = float(ground[at])
    return {
        "total": total,
        "unit": total * (1 - state.past_unit),
        "circuits": np.array([np.interp(level, levels, e) for e in each]),
        "rise": float(rise[at]),
        "exchanger": float(unit[at]),
        "strainer": float(strainer[at]) if plant.strainer else 0.0,
        "check": state.check_k * float(against[at]) ** 2,
        "valve": state.valve_k * float(against[at]) ** 2,
    }


def rest_temperature(plant, day):
    """Temperature in degF of the loop at rest on a day of the year; coldest early in March."""
    swing = {"vertical": 3, "horizontal": 10, "pond": 13}[plant.ground]
    return plant.ground_temperature - swing * np.cos((day - 60) / 365 * 2 * np.pi)


def entering(plant, state, day, mode, busy):
    """Entering water in degF; `busy` is how hard the season works the ground, 0 to 1."""
    pull = {"vertical": (13, 19), "horizontal": (9, 14), "pond": (7, 12)}[plant.ground]
    each = run(plant, state, 45.0)["circuits"]
    lame = (1 / max(float(np.mean(each > 0.35 * max(each))), 0.25)) ** 0.7
    change = pull[mode == "cooling"] * busy * state.ground_load * lame
    sign = 1 if mode == "cooling" else -1
    return rest_temperature(plant, day) + sign * change


def pressure(plant, state, charge, hours, charged_at, now_at, relaxed):
    """Static pressure in psi today: the charge, relaxed by log time, swung by temperature.

    Volume per psi: pipe stretch 0.8 (SDR - 1) / E with E 60 ksi, held back by soil; the air
    left in the loop and the gas of a tank are cushions and damp it all.
    """
    if plant.centre == "non_pressurised":
        return 1.0 + state.level * 0.036
    middle = celsius((charged_at + now_at) / 2)
    base, rise = EXPANSION[state.kind]
    if state.share == 0:
        base, rise = EXPANSION["water"]
    fluid = (base + rise * (middle - 5)) * 1e-4
    stretch = 1.33e-4 * plant.restraint
    gas = max(charge, 5) + 14.7
    cushion = state.air / 100 / gas
    if plant.centre == "sealed_with_tank" and state.tank_works:
        cushion += 0.6 * plant.tank / gas / plant.volume
    stiff = stretch / (stretch + 3e-6 + cushion)
    a_decade = 0.075 if relaxed else 0.13
    relax = charge * a_decade * np.log10(max(hours, 1.0)) * stiff
    swing = (fluid - 4.4e-4 * plant.restraint) / stretch * stiff * (now_at - charged_at) / 1.8
    dissolved = 5 * max(state.air - 0.2, 0) * (1 - np.exp(-hours / 800))
    today = charge - relax + swing - dissolved - state.lost
    return float(max(today, -2.0 + 0.05 * today))
