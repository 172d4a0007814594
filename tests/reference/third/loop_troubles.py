"""Troubles of the loop: air, circuits, solids, fluid, ground, leaks, pressure.

Each function says what the trouble does to the state and the record, and what shows of it
directly; what follows from flow, pressure and temperature is worked out in `call.py`.
"""

import numpy as np

from table import mixed, pressed, sealed, several, trouble


def airy(c, low, high):
    """Air in the loop, in % of its volume, between the two; it costs head and is heard."""
    c.st.air = c.grade(low, high)
    loss = 1 - c.grade(0.03, 0.4)
    c.st.pump_heads = [h * loss for h in c.st.pump_heads]
    c.st.pump_watts = [w * (0.4 + 0.6 * loss) for w in c.st.pump_watts]


# --- Air and flushing -----------------------------------------------------------------------


@trouble("air-left-in-circuit", 8, (70, 10, 20), "first", work=0.08)
def _(c):
    airy(c, 0.35, 2.2)
    c.rec["dead_head"] += c.grade(0.8, 4) if c.luck(0.5) else 0
    c.signs("came-back-after-purge 15 40")


@trouble("flush-too-weak", 8, (80, 10, 10), "first", work=0.03)
def _(c):
    airy(c, 0.35, 2.2)
    way = c.rng.choice(["slow", "short", "both", "never"], p=[0.4, 0.25, 0.3, 0.05])
    if way in ("slow", "both"):
        c.rec["velocity"], c.rec["singly"] = c.grade(1.7, 0.7), False
        c.rec["cart"] = float(c.rng.choice([0.5, 0.75, 1.0]))
    if way in ("short", "both"):
        c.rec["flush_hours"] = c.grade(1.2, 0.25)
    c.rec["flushed"] = way != "never"
    c.rec["dead_head"] += c.grade(0.8, 4)
    c.signs(
        "came-back-after-purge 25 55, sample-has-grit 15 40, "
        "strainer-screen-dirty 20 50, strainer-loads-again 4 20, "
        "circuit-wakes-when-purged 15 35"
    )
    if c.luck(0.3):
        c.circuit(1 + c.grade(0.5, 6))


@trouble("circulators-not-bled", 4, (82, 3, 15), "days", work=0.15)
def _(c):
    c.rec["bled"] = False
    c.st.pump_air = c.grade(0.3, 1.0)
    at = int(c.rng.integers(len(c.st.pump_heads)))
    c.st.pump_heads[at] *= 1 - c.grade(0.2, 0.95)
    c.st.pump_watts[at] *= 1 - c.grade(0.1, 0.45)
    c.st.body = c.grade(25, 100)
    c.signs("circulator-sounds-rough 10 40, circulator-not-turning 1 8")


@trouble("circuit-air-locked", 3, (65, 8, 27), "first", work=0.1, needs=several)
def _(c):
    c.circuit(c.grade(8, 40) if c.s < 0.5 else np.inf)
    c.st.air = c.grade(0.2, 0.9)
    c.signs("circuit-wakes-when-purged 70 90")
    c.rec["dead_head"] += c.grade(0.3, 1.5) if c.luck(0.4) else 0


# --- Circuits -------------------------------------------------------------------------------


@trouble("circuit-valved-off", 1.5, (60, 3, 37), work=0.35, needs=several)
def _(c):
    c.circuit(np.inf if c.s > 0.3 else 20)
    c.signs("circuit-valve-found-shut 85 97, circuit-slow-both-ways 15 30")


@trouble("circuit-kinked", 1, (88, 2, 10), "first", work=0.03, needs=several)
def _(c):
    c.circuit(1 + c.grade(3, 40))
    c.signs("circuit-slow-both-ways 75 93")


@trouble("circuits-unbalanced", 1.5, (85, 12, 3), needs=several, work=0.02)
def _(c):
    for at in range(len(c.st.circuit_k)):
        if at % 2 == 0:
            c.st.circuit_k[at] = 1 + c.grade(0.8, 3.5)


# --- Solids ---------------------------------------------------------------------------------


@trouble("debris-left-in-loop", 3, (35, 30, 35), "first", work=0.05)
def _(c):
    c.rec["filtered"] &= not c.luck(0.5)
    c.st.strainer_k = 1 + c.grade(1, 12)
    c.st.exchanger_k = 1 + (c.grade(0.2, 1.5) if not c.plant.strainer or c.luck(0.3) else 0)
    c.signs(
        "sample-has-grit 55 90, strainer-screen-dirty 75 97, strainer-loads-again 25 60, "
        "chips-at-exchanger 15 50, circulator-sounds-rough 6 30, shaft-stiff 5 25, "
        "circulator-rattles 5 30"
    )


@trouble("strainer-loaded", 4, (8, 55, 37), "first", needs=lambda p: p.strainer)
def _(c):
    c.st.strainer_k = c.grade(8, 60)
    c.signs("strainer-screen-dirty 92 99, sample-has-grit 10 30, strainer-loads-again 5 15")


@trouble("exchanger-loaded", 1.5, (20, 40, 40), "first")
def _(c):
    c.st.exchanger_k, c.st.fouling = c.grade(1.6, 7), c.grade(0.5, 4)
    c.signs("better-after-backflush 65 92, chips-at-exchanger 50 85, sample-has-grit 10 30")


@trouble("unit-not-isolated-in-flush", 1, (75, 15, 10), "first", work=0.02)
def _(c):
    c.rec["isolated"] = False
    c.st.exchanger_k, c.st.fouling = c.grade(1.6, 7), c.grade(0.5, 4)
    c.signs("better-after-backflush 65 92, chips-at-exchanger 60 90, sample-has-grit 20 45")


# --- Fluid ----------------------------------------------------------------------------------


@trouble("antifreeze-too-weak", 4.5, (45, 15, 40), "first", "winter", work=0.08, needs=mixed)
def _(c):
    c.freeze(c.plant.freeze_wanted + c.grade(4, 14))
    c.rec["checked"] &= not c.luck(0.6)
    c.icy(0.15, 0.75)


@trouble("antifreeze-too-strong", 1.2, (65, 25, 10), "first", "winter", work=0.08, needs=mixed)
def _(c):
    c.st.share = min(c.plant.share + c.grade(9, 24), 48)
    c.rec["checked"] &= not c.luck(0.5)
    c.signs("improves-when-warm 40 85, worse-when-cold 35 70")


@trouble("antifreeze-unmixed", 2.2, (72, 3, 25), "days", "winter", work=0.1, needs=mixed)
def _(c):
    c.st.share *= 1 - c.grade(0.15, 0.5)
    c.st.share_two = c.plant.share * (1 + c.grade(0.15, 0.5))
    c.rec["mixed"], c.rec["checked"] = c.grade(2.0, 0.1), c.luck(0.2)
    c.signs("trips-early-then-settles 35 65")
    c.icy(0.1, 0.5)


@trouble("antifreeze-wrong-kind", 0.8, (45, 25, 30), "any", work=0.25, needs=mixed)
def _(c):
    others = [k for k in ("propylene_glycol", "methanol", "ethanol") if k != c.plant.kind]
    c.st.kind = str(c.rng.choice(others))
    c.signs(
        "label-disagrees 50 75, other-fluid-added 30 50, sample-foams 20 50, "
        "sample-smells 25 50, wet-or-crusted-fittings 5 20"
    )
    if c.luck(0.3):
        c.icy(0.1, 0.4)


@trouble("antifreeze-degraded", 0.8, (3, 85, 12), "late", needs=mixed)
def _(c):
    c.st.ph, c.st.fouling = -c.grade(1.2, 3.5), c.grade(0, 2)
    c.signs(
        "sample-discoloured 65 93, sample-smells 45 85, sample-foams 15 40, "
        "black-magnetic-dust 5 25"
    )


# --- Ground ---------------------------------------------------------------------------------


@trouble("loop-too-short", 3.5, (60, 37, 3), "first", "peak", work=0.03)
def _(c):
    less = c.grade(0.85, 0.5)
    c.plant.length = round(c.plant.length * less, -1)
    c.st.ground_load = less**-1.1
    c.signs(
        "ewt-drifts-through-season 55 93, ewt-recovers-after-rest 45 75, "
        "worse-when-cold 30 55"
    )


@trouble("ground-conducts-poorly", 1.5, (68, 29, 3), "first", "peak", work=0.02)
def _(c):
    c.st.ground_load = c.grade(1.25, 2.1)
    c.signs(
        "ewt-falls-fast 50 85, ewt-recovers-after-rest 40 75, "
        "ewt-drifts-through-season 25 50, worse-when-cold 25 50"
    )


# --- Leaks and pressure ---------------------------------------------------------------------


def leaks(c, quick):
    """A loss, a little of which empties a stiff sealed loop; the customer tops it up."""
    if c.plant.centre == "non_pressurised":
        c.st.level = -c.grade(4, 16)
    else:
        c.st.lost = c.grade(12, 60)
        c.st.lost_a_day = c.grade(0.3, 4) * quick
        c.st.air += c.grade(0, 0.5)
    c.st.topped = c.grade(0.8, 15) if c.luck(0.75) else 0.0
    c.signs("topped-up-often 40 85")


@trouble("leak-indoors", 5.5, (15, 50, 35), work=0.12)
def _(c):
    leaks(c, 1.0)
    c.signs("wet-or-crusted-fittings 75 96, loss-indoors-alone 75 93")


@trouble("leak-in-ground", 1.8, (25, 40, 35), work=0.06)
def _(c):
    leaks(c, 1.3)
    c.signs("loss-with-building-isolated 82 96, ground-wet-over-loop 8 40")
    if c.plant.circuits > 1:
        c.signs("one-circuit-loses 60 85")


@trouble("charge-left-too-low", 6, (50, 35, 15), "first", work=0.06, needs=pressed)
def _(c):
    c.rec["charge"] = c.grade(36, 10) if c.plant.centre == "sealed" else c.grade(13, 4)
    c.signs("noise-worse-in-summer 10 35")


@trouble("pipe-never-relaxed", 3.5, (25, 65, 10), "settling", needs=sealed)
def _(c):
    c.rec["relaxed"], c.rec["charge"] = False, c.rng.uniform(44, 56) - c.grade(0, 8)
    c.signs("topped-up-often 8 30")


@trouble("charged-cold-without-allowance", 3, (8, 78, 14), "from-winter", "summer", needs=sealed)
def _(c):
    c.rec["charge"], c.rec["charge_at"] = c.grade(46, 32), c.rng.uniform(33, 46)
    c.plant.restraint = c.rng.uniform(0.94, 1.0)
    c.signs("pressure-follows-temperature 55 85, noise-worse-in-summer 30 65")


@trouble("over-pressurised", 1, (55, 15, 30), "first", "winter", work=0.25, needs=pressed)
def _(c):
    c.rec["charge"] = c.grade(78, 115) if c.plant.centre == "sealed" else c.grade(48, 85)
    c.rec["relaxed"] = True
