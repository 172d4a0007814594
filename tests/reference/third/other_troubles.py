"""Troubles of circulators, valves, tank, unit and water, and calls with nothing wrong."""

from loop_troubles import airy
from table import Trouble, sealed, tank, trouble, two_pumps, vented

# --- Circulators and valves -----------------------------------------------------------------


@trouble("circulator-too-small", 1.8, (85, 12, 3), "first", work=0.03)
def _(c):
    c.smaller()
    c.signs("worse-when-cold 10 30, improves-when-warm 15 40")


@trouble("circulator-wrong-speed", 2.2, (65, 5, 30), "first", work=0.3)
def _(c):
    speed = c.grade(0.78, 0.5)
    c.st.pump_heads = [h * speed**2 for h in c.st.pump_heads]
    c.st.pump_watts = [w * speed**3 for w in c.st.pump_watts]
    c.signs("speed-set-low 82 95")


@trouble("one-circulator-dead", 3, (12, 5, 83), work=0.07, needs=two_pumps)
def _(c):
    c.st.pump_heads[1] = 0.0
    c.st.pump_watts[1] = 0.0 if c.luck(0.6) else 0.8
    c.signs("circulator-not-turning 88 95, shaft-stiff 20 35")


@trouble("circulator-worn", 2.2, (5, 65, 30), "late", work=0.03)
def _(c):
    at = int(c.rng.integers(len(c.st.pump_heads)))
    c.st.pump_heads[at] *= 1 - c.grade(0.2, 0.65)
    c.st.pump_watts[at] *= 1 + c.grade(0.1, 0.45) if c.luck(0.6) else 1 - c.grade(0.1, 0.3)
    c.st.body = c.grade(15, 55)
    c.signs(
        "circulator-sounds-rough 60 90, shaft-stiff 40 75, circulator-rattles 30 60, "
        "circulator-hums 30 55, black-magnetic-dust 4 15"
    )


@trouble("circulators-opposed", 0.5, (72, 0, 28), "days", work=0.4, needs=two_pumps)
def _(c):
    c.st.pump_heads[1] = -c.grade(0.55, 0.8)
    c.signs(
        "circulator-arrows-disagree 90 97, more-flow-with-one-off 85 95, "
        "circulator-hums 20 40"
    )


@trouble("check-valve-stuck-shut", 0.7, (30, 10, 60), needs=lambda p: p.checks)
def _(c):
    c.st.check_k = c.grade(5, 80)
    c.signs("check-valve-hot-spot 70 92, circulator-hums 10 30")


@trouble("check-valve-missing", 0.8, (55, 25, 20), work=0.1, needs=two_pumps)
def _(c):
    c.st.pump_heads = [h * (1 - c.grade(0.05, 0.3)) for h in c.st.pump_heads]
    c.signs(
        "flow-when-idle 75 92, ewt-creeps-when-idle 40 70, no-check-valve-found 60 70, "
        "valve-slams 15 35"
    )


@trouble("three-way-valve-mis-set", 2.5, (62, 3, 35), "first", work=0.4)
def _(c):
    way = c.rng.choice(["holds", "past-unit", "past-ground"], p=[0.4, 0.3, 0.3])
    c.st.valve_k = c.grade(4, 50) if way == "holds" else 0.0
    c.st.past_unit = c.grade(0.2, 0.65) if way == "past-unit" else 0.0
    c.st.past_ground = c.grade(0.2, 0.65) if way == "past-ground" else 0.0
    if way == "past-ground":
        c.st.ground_load = 1 / (1 - 0.7 * c.st.past_ground)
        c.signs("ewt-falls-fast 30 70")
    c.signs("valve-not-in-run-position 88 96")
    c.sign("drop-across-open-valve", *((0.3, 0.5) if way == "holds" else (0.02, 0.05)))
    c.sign("port-temperatures-disagree", *((0.05, 0.1) if way == "holds" else (0.6, 0.92)))


@trouble("isolation-valve-part-closed", 2.2, (52, 3, 45), work=0.4)
def _(c):
    c.st.valve_k = c.grade(4, 60)
    if c.luck(0.85):
        c.signs("isolation-valve-not-open 93 98")
    c.signs("drop-across-open-valve 35 65")


@trouble("supply-return-crossed", 0.7, (72, 3, 25), "first", work=0.3)
def _(c):
    c.st.reversed, c.st.fouling, c.st.capacity = True, c.grade(1, 4), 1 - c.grade(0.02, 0.1)
    c.signs("split-sign-reversed 92 97, crossed-at-unit 88 96")


# --- Tank and reservoir ---------------------------------------------------------------------


@trouble("expansion-tank-waterlogged", 1.2, (12, 55, 33), needs=tank)
def _(c):
    c.st.tank_works, c.st.pre_charge = False, -c.grade(8, 30)
    c.signs("tank-rings-full 80 95, tank-valve-gives-fluid 35 75, gauge-swings-widely 50 90")


@trouble("expansion-tank-pre-charge-wrong", 1, (65, 25, 10), "first", needs=tank)
def _(c):
    c.st.pre_charge = c.grade(5, 22) * (1 if c.luck(0.45) else -1)
    c.st.tank_works = c.s < 0.6
    c.signs("gauge-swings-widely 30 70, tank-rings-full 5 20")


@trouble("reservoir-low", 2.2, (25, 50, 25), needs=vented)
def _(c):
    c.st.level, c.st.air = -c.grade(3.5, 14), c.grade(0.1, 0.6)
    c.st.topped = c.grade(0, 2) if c.luck(0.4) else 0.0
    c.signs("topped-up-often 8 25, air-drawn-at-reservoir 10 50")


@trouble("reservoir-draws-air", 0.9, (45, 30, 25), needs=vented, work=0.08)
def _(c):
    airy(c, 0.3, 1.6)
    c.st.level = -c.grade(0, 5) if c.luck(0.5) else 0.0
    c.signs("air-drawn-at-reservoir 80 95, came-back-after-purge 40 70")


# --- Unit -----------------------------------------------------------------------------------


@trouble("refrigerant-undercharge", 3.5, (15, 65, 20), work=0.08)
def _(c):
    c.st.capacity, c.st.power = 1 - c.grade(0.1, 0.45), 1 - c.grade(0.03, 0.25)
    c.st.superheat, c.st.subcooling = c.grade(7, 28), -c.grade(4, 9)
    c.st.evaporating, c.st.condensing = -c.grade(3, 16), -c.grade(1, 6)
    c.signs("oil-stain 30 60")


@trouble("expansion-device-fault", 1.2, (20, 35, 45), work=0.04)
def _(c):
    c.st.capacity, c.st.power = 1 - c.grade(0.08, 0.4), 1 - c.grade(0, 0.15)
    if c.luck(0.65):  # starves
        c.st.superheat, c.st.subcooling = c.grade(8, 28), c.grade(3, 14)
        c.st.evaporating = -c.grade(4, 18)
    else:  # floods
        c.st.superheat, c.st.evaporating = -c.grade(6, 11), c.grade(1, 4)


@trouble("compressor-or-reversing-valve-weak", 1.2, (12, 45, 43), work=0.03)
def _(c):
    c.st.capacity, c.st.power = 1 - c.grade(0.15, 0.6), 1 - c.grade(0.05, 0.3)
    c.st.evaporating, c.st.condensing = c.grade(2, 10), -c.grade(3, 14)
    c.st.superheat = c.grade(-1, 6)
    c.signs("hot-gas-both-ways 50 85")


@trouble("air-filter-or-coil-dirty", 4.5, (5, 75, 20), season="peak", work=0.02)
def _(c):
    c.st.capacity, c.st.power = 1 - c.grade(0.03, 0.22), 1 + c.grade(0.02, 0.2)
    c.st.air_change = c.grade(1.12, 1.7)
    c.st.condensing = c.grade(3, 18) if c.mode == "heating" else 0.0
    c.st.evaporating = -c.grade(2, 10) if c.mode == "cooling" else 0.0
    c.signs("air-filter-dirty 88 98, weak-airflow 50 88")
    c.sign("high-pressure-trip", *((0.15, 0.7) if c.mode == "heating" else (0.02, 0.05)))


@trouble("flow-switch-or-sensor-fault", 3, (15, 15, 70), work=0.07)
def _(c):
    c.sign("low-flow-lockout" if c.luck(0.7) else "freeze-guard-trip", 0.75, 0.92)
    c.signs("lockout-though-flow-proven 65 90, switch-sticks 55 80")
    if c.luck(0.3):
        c.signs("display-disagrees 60 90")


@trouble("control-fault", 3, (38, 10, 52), work=0.25)
def _(c):
    c.signs("controls-out-of-step 65 90, settings-wrong 60 72")
    c.sign("auxiliary-heat-often", *((0.35, 0.7) if c.mode == "heating" else (0.05, 0.1)))
    c.signs("high-bill 35 65, low-heat 20 40")


# --- Water ----------------------------------------------------------------------------------


@trouble("scaling-fill-water", 0.8, (4, 92, 4), "late")
def _(c):
    c.rec["hardness"], c.rec["tested"] = c.grade(240, 600), c.luck(0.1)
    c.rec["source"] = "well" if c.luck(0.65) else "mains"
    c.st.fouling, c.st.exchanger_k = c.grade(3, 13), 1 + c.grade(0.1, 1)
    c.signs("scale-on-parts 60 92, lime-in-house 65 90, better-after-acid-wash 75 95")


@trouble("iron-fill-water", 0.6, (6, 85, 9), "middle")
def _(c):
    c.rec["iron"], c.rec["tested"] = c.grade(0.8, 8), c.luck(0.1)
    c.rec["source"] = "well" if c.luck(0.9) else "surface"
    c.st.fouling, c.st.exchanger_k, c.st.strainer_k = c.grade(1, 7), c.grade(1.1, 2), c.grade(2, 12)
    c.signs(
        "orange-mud 72 95, orange-stains-in-house 65 92, sample-discoloured 40 70, "
        "strainer-screen-dirty 50 85, strainer-loads-again 10 40"
    )


@trouble("corrosion", 0.7, (3, 85, 12), "late")
def _(c):
    c.st.ph, c.rec["chloride"] = -c.grade(0.6, 2.5), c.grade(40, 400)
    c.rec["iron"] = c.grade(0.4, 4)
    c.st.fouling = c.grade(0, 3)
    c.signs(
        "black-magnetic-dust 60 90, sample-discoloured 50 85, "
        "wet-or-crusted-fittings 15 45, shaft-stiff 5 20, orange-mud 5 20"
    )


@trouble("biological-fouling", 0.6, (5, 88, 7), "middle")
def _(c):
    c.st.ph, c.st.fouling = -c.grade(0.2, 1.3), c.grade(1.5, 8)
    c.st.strainer_k, c.st.exchanger_k = c.grade(2, 15), c.grade(1.1, 1.8)
    if c.plant.kind != "water":
        c.st.share *= c.grade(0.9, 0.6)  # thin glycol feeds it
    c.signs(
        "slime-on-screen 70 94, bacteria-test-positive 82 95, sample-smells 45 80, "
        "sample-discoloured 35 65, strainer-screen-dirty 40 75"
    )


# --- Nothing wrong --------------------------------------------------------------------------


def nothing(c):
    """No trouble: the customer worries about a noise, a bill, a number."""
    worries = ["circulator-hums", "high-bill", "low-heat", "water-colder-than-it-should",
               "gauge-lower-than-before", "gauge-reads-low", "auxiliary-heat-often", "gurgling"]
    if c.plant.centre == "non_pressurised":
        worries = [w for w in worries if "gauge" not in w]
    worries = worries if c.mode == "heating" else worries[:-2] + worries[-1:]
    c.sign(str(c.rng.choice(worries)), 0.9, 0.9)


def relaxation(c):
    """The gauge has come down as plastic lets it."""
    c.rec["relaxed"], c.rec["charge"] = c.luck(0.8), c.rng.uniform(52, 66)
    c.signs("gauge-lower-than-before 85 95, gauge-reads-low 15 45")


def swing(c):
    """The gauge goes with the season, within its band."""
    c.rec["relaxed"], c.rec["charge"] = True, c.rng.uniform(50, 64)
    c.rec["charge_at"] = c.rng.uniform(38, 50)
    if c.mode == "heating":
        c.rec["charge"], c.rec["charge_at"] = c.rng.uniform(42, 54), c.rng.uniform(62, 74)
        c.signs("gauge-reads-high 30 70")
    else:
        c.signs("gauge-lower-than-before 75 90, gauge-reads-low 20 45")
    c.signs("pressure-follows-temperature 70 90")


SOUND = {
    "none": Trouble(nothing, 4, (15, 40, 20), 0.05, "any", "any", lambda p: True),
    "ordinary-relaxation": Trouble(relaxation, 3, (5, 88, 5), 0.03, "settling", "any", sealed),
    "seasonal-swing": Trouble(swing, 3, (3, 88, 6), 0.03, "half-year", "peak", sealed),
}
