"""From the true state to what there is to be complained of, seen and heard."""

import math
import numpy as np
import fluids as fl
import state as S

MISS, IMAG = 0.05, 0.01


def sig(x):
    return 1 / (1 + math.exp(-max(min(x, 30), -30)))


def air_pct(st):
    return 100 * st.air_gal / st.s.volume


def derive(s, st, o, pk, r):
    """Probability that each sign is truly there, from the physics (max with what the fault itself causes)."""
    p = {}

    def add(k, v):
        p[k] = max(p.get(k, 0.0), float(np.clip(v, 0, 0.97)))

    x = air_pct(st)
    pressurised = s.fc != "non_pressurised"
    low = s.fc != "non_pressurised" and o["suction"] < 1.5
    vlow = s.fc != "non_pressurised" and o["suction"] < -1
    running = o["ratio"] > 0.06
    if x > 0.03:
        m = st.air_moving
        add("gurgling", (0.25 + 0.45 * m + 0.15 * min(x, 1.5)) * (1 if running else 0.3))
        add("air-at-vent", 0.25 + 0.45 * m + 0.15 * min(x, 1.5))
        add("flow-unsteady", (0.2 + 0.5 * m) * min(1, x + 0.3))
        add("sample-milky", 0.6 * m * min(1, x + 0.2))
        add("circulator-rattles", 0.35 * m * min(1, x + 0.2))
        add("circulator-vent-gives-air", 0.45 * m * min(1, x + 0.3))
        if s.mode == "cooling":
            add("noise-worse-in-summer", 0.4)
        add(
            "springy-gauge",
            0.9
            * sig(
                6
                * (
                    (st.air_gal / s.volume / max(o["static"] + 14.6, 10))
                    / (S.C_PIPE(55) * st.restr[1] + 3e-6)
                    - 0.9
                )
            ),
        )
    if low:
        k = min(1, (1.5 - o["suction"]) / 4)
        add("gurgling", 0.25 + 0.35 * k)
        add("circulator-hums", 0.3 + 0.4 * k)
        add("flow-unsteady", 0.25 + 0.4 * k)
        add("circulator-rattles", 0.15 + 0.35 * k)
        add("noise-worse-in-summer", 0.45 if s.mode == "cooling" else 0.1)
        if vlow:
            add("air-at-vent", 0.35)
            add("sample-milky", 0.2)
            add("springy-gauge", 0.35)
    if not pressurised and getattr(st, "level_in", 0) < -7:
        add("air-drawn-at-reservoir", 0.6)
        add("gurgling", 0.55)
        add("circulator-rattles", 0.35)
        add("air-at-vent", 0.45)
        add("flow-unsteady", 0.5)
        add("sample-milky", 0.3)
        add("circulator-hums", 0.3)
    # restriction makes the pump whine a little
    if o["ratio"] < 0.6 and o["rise"] > 0.85 * o["rise0"] and o["rise0"] > 4:
        add("circulator-hums", 0.25)
    if o["ratio"] < 0.15:
        add("circulator-hums", 0.3)
    # lockouts
    wob = 1 - 0.45 * p.get("flow-unsteady", 0) * (x > 0.03 or low)
    qw = min(o["q"], pk["q"]) * wob
    if s.flow_switch:
        add("low-flow-lockout", 0.95 * sig(14 * (s.trip_flow - qw) / s.rated_flow))
    else:
        add("low-flow-lockout", 0.6 * sig(18 * (0.38 * s.rated_flow - qw) / s.rated_flow))
    worst = pk if pk["lwt"] < o["lwt"] else o
    if s.mode == "heating":
        sens = (
            worst["lwt"]
            - 0.45 * worst["approach"]
            - (3 * p.get("flow-unsteady", 0) if x > 0.03 else 0)
        )
        add("freeze-guard-trip", 0.92 * sig(1.1 * (s.guard - 0.8 - sens)))
        if worst["ice"] or o["ice"]:
            add("freeze-guard-trip", 0.7)
            add("low-flow-lockout", 0.45)
            add("worse-when-cold", 0.8)
        add("high-pressure-trip", 0.85 * sig(0.5 * (pk["cond"] - 122)))
        if pk["ewt"] < s.design_ewt - 4:
            add("water-colder-than-it-should", 0.15 + 0.1 * min(5, s.design_ewt - 4 - pk["ewt"]))
            add("worse-when-cold", 0.6)
        if o["lam"] > 0.5 and st.fluid.vol > s.fluid_rec.vol + 5:
            add("worse-when-cold", 0.8)
        if p["freeze-guard-trip"] > 0.5:
            add("worse-when-cold", 0.7)
    else:
        add("high-pressure-trip", 0.9 * sig(0.45 * (pk["cond"] - 120)))
        if pk["ewt"] > s.design_ewt_c + 5:
            add("water-colder-than-it-should", 0.15 + 0.08 * min(7, pk["ewt"] - 5 - s.design_ewt_c))
    dd = st.disp_off * (-1 if s.mode == "heating" else 1)
    if dd > 3.5:
        add("water-colder-than-it-should", 0.3 + 0.08 * dd)
    if abs(st.disp_off) > 3:
        add("display-thermometer-disagree", 0.93)
        add("display-disagrees", 0.85)
    trips = max(
        p.get("low-flow-lockout", 0), p.get("freeze-guard-trip", 0), p.get("high-pressure-trip", 0)
    )
    add("low-heat", np.clip((0.9 - pk["cap_peak"]) * 4, 0, 0.85))
    add("low-heat", 0.45 * trips)
    if s.mode == "heating":
        add("auxiliary-heat-often", np.clip((0.92 - pk["cap_peak"]) * 3.5, 0, 0.75))
        add("auxiliary-heat-often", 0.5 * trips)
    add("high-bill", np.clip((0.9 - pk["cop_rel"]) * 3.5, 0, 0.75))
    if getattr(st, "false_trip", False):
        add("low-flow-lockout", 0.93)
        add("low-heat", 0.35)
    ctl = getattr(st, "control", None)
    if ctl == "aux":
        add("high-bill", 0.75)
        add("auxiliary-heat-often", 0.85 if s.mode == "heating" else 0.1)
    if ctl == "pump-late":
        add("low-flow-lockout", 0.7)
        add("low-heat", 0.3)
    if ctl == "setting":
        add("low-heat", 0.55)
        add("high-bill", 0.45)
    if st.unmixed:
        weak = max(st.fluid.vol - st.unmixed, 0)
        if fl.freeze_f(st.fluid.kind, weak) > o["lwt"] - 0.55 * o["approach"]:
            add("freeze-guard-trip", 0.75)
    # the customer's gauge
    if s.fc != "non_pressurised" and s.dial:
        d = o["static"] + st.dial_off
        add("gauge-reads-low", 0.85 * sig(0.5 * ((14 if s.fc == "sealed" else 9) - d)))
        before = s.h["charge_p"]
        add("gauge-lower-than-before", 0.8 * sig(0.4 * (before - 13 - d)))
        add("gauge-reads-high", 0.85 * sig(0.4 * (d - (72 if s.fc == "sealed" else 48))))
    if s.fc == "sealed_with_tank" and o["static"] > 42 or o["static"] > 95:
        add("relief-valve-weeps", 0.5)
    if abs(st.dial_off) > 4 and s.dial:
        add("second-gauge-disagrees", 0.95)
    # circuits
    q = o["q_circ"]
    if s.n > 1 and q.max() > 0.3 and q.min() < 0.75 * np.median(q):
        add("circuit-flow-low", 0.95)
    # season and ground
    if (
        pk["ewt"] < s.design_ewt - 3
        and s.mode == "heating"
        or pk["ewt"] > s.design_ewt_c + 4
        and s.mode == "cooling"
    ):
        add("ewt-drifts-through-season", 0.7)
        add("ewt-recovers-after-rest", 0.6)
        if s.kind == "vertical":
            add("ewt-falls-fast", 0.2)
    else:
        add("ewt-drifts-through-season", 0.15)
        add("ewt-recovers-after-rest", 0.3)
    if max(st.byp_ground, 0) > 0.35:
        add("ewt-falls-fast", 0.5)
    coef = S.dpdt(st, 50)
    if s.fc == "sealed":
        comp_cut = 1 / (1 + air_pct(st) * 1.5)
        add("pressure-follows-temperature", 0.9 * sig(8 * (-coef * comp_cut - 0.45)))
    # ordinary houses
    add("lime-in-house", 0.9 if s.hard_water else 0.03)
    add("orange-stains-in-house", 0.85 if s.iron_house else 0.02)
    add("air-filter-dirty", 0.07)
    add("settings-wrong", 0.03)
    add("sample-discoloured", 0.03)
    add("high-bill", 0.03)
    add("wet-or-crusted-fittings", 0.03)
    add("strainer-screen-dirty", 0.05)
    add("sample-has-grit", 0.02)
    if getattr(st, "water", None) is None and s.hard_water and s.age > 1000:
        add("scale-on-parts", 0.06)
    if (
        x < 0.05
        and getattr(st, "k_valve", 0)
        and st.k_valve * o["q"] ** 2 / 2.31 > 2
        and st.sign.get("isolation-valve-not-open", 0) < 0.5
    ):
        add("drop-across-open-valve", 0.0)
    for k, v in st.sign.items():
        if not k.startswith("_"):
            p[k] = max(p.get(k, 0), v) if v >= 0.2 or k not in p else p[k]
    return p


SYMPTOMS = [
    "gurgling",
    "low-flow-lockout",
    "freeze-guard-trip",
    "high-pressure-trip",
    "low-heat",
    "high-bill",
    "auxiliary-heat-often",
    "water-colder-than-it-should",
    "worse-when-cold",
    "trips-early-then-settles",
    "gauge-reads-low",
    "gauge-lower-than-before",
    "gauge-reads-high",
    "noise-worse-in-summer",
    "relief-valve-weeps",
    "circulator-hums",
    "circulator-rattles",
    "topped-up-often",
    "came-back-after-purge",
    "strainer-loads-again",
    "other-fluid-added",
    "valve-slams",
    "gauge-swings-widely",
    "weak-airflow",
    "lime-in-house",
    "orange-stains-in-house",
]
COMPLAINTS = [
    "gurgling",
    "low-flow-lockout",
    "freeze-guard-trip",
    "high-pressure-trip",
    "low-heat",
    "high-bill",
    "auxiliary-heat-often",
    "water-colder-than-it-should",
    "gauge-reads-low",
    "gauge-lower-than-before",
    "gauge-reads-high",
    "relief-valve-weeps",
    "circulator-hums",
    "circulator-rattles",
    "valve-slams",
    "gauge-swings-widely",
    "weak-airflow",
    "topped-up-often",
]
WORDS = {
    "gurgling": "It gurgles.",
    "low-flow-lockout": "It stops with a flow fault.",
    "freeze-guard-trip": "It trips on freeze protection.",
    "high-pressure-trip": "It trips on high pressure.",
    "low-heat": "The house does not get to temperature.",
    "high-bill": "The bill is high.",
    "auxiliary-heat-often": "The auxiliary heat runs a lot.",
    "gauge-reads-low": "The gauge is low.",
    "circulator-hums": "The pump hums.",
    "gauge-lower-than-before": "The gauge is lower than it was.",
    "circulator-rattles": "The pump rattles.",
}
OBS = {  # observation -> condition on the site
    "air-at-vent": "vent",
    "springy-gauge": "sealed0",
    "flow-unsteady": "",
    "circulator-vent-gives-air": "bleed",
    "sample-milky": "",
    "circuit-valve-found-shut": "manifold",
    "circuit-flow-low": "circ_meters",
    "strainer-screen-dirty": "strainer",
    "sample-has-grit": "",
    "sample-foams": "",
    "sample-smells": "",
    "label-disagrees": "antifreeze",
    "sample-discoloured": "",
    "ewt-drifts-through-season": "log",
    "ewt-recovers-after-rest": "log",
    "ewt-falls-fast": "run",
    "ewt-creeps-when-idle": "",
    "second-gauge-disagrees": "dial",
    "digital-gauge-not-zero": "pressure",
    "differential-gauge-not-zero": "",
    "port-thermometer-ice-wrong": "",
    "clamp-thermometer-ice-wrong": "clamp",
    "meter-disagrees-with-bucket": "meter_bucket",
    "refractometer-water-wrong": "refractometer",
    "hydrometer-water-wrong": "hydrometer",
    "power-meter-disagrees": "elec_2",
    "test-kit-control-fails": "kit",
    "display-thermometer-disagree": "display",
    "wet-or-crusted-fittings": "",
    "ground-wet-over-loop": "",
    "pressure-follows-temperature": "sealed0",
    "speed-set-low": "speeds",
    "circulator-not-turning": "",
    "circulator-arrows-disagree": "",
    "more-flow-with-one-off": "two",
    "circulator-sounds-rough": "",
    "flow-when-idle": "",
    "check-valve-hot-spot": "check_ports",
    "no-check-valve-found": "two",
    "tank-rings-full": "tank",
    "tank-valve-gives-fluid": "tank",
    "air-drawn-at-reservoir": "vented",
    "air-filter-dirty": "",
    "lockout-though-flow-proven": "lockout",
    "display-disagrees": "lockout_d",
    "controls-out-of-step": "",
    "oil-stain": "",
    "settings-wrong": "",
    "switch-sticks": "elec_sw",
    "valve-not-in-run-position": "",
    "port-temperatures-disagree": "run",
    "isolation-valve-not-open": "",
    "drop-across-open-valve": "valve_ports",
    "split-sign-reversed": "run",
    "crossed-at-unit": "",
    "scale-on-parts": "",
    "orange-mud": "",
    "slime-on-screen": "",
    "black-magnetic-dust": "",
}


def complain(s, st, o, pk, r):
    """Draw truth of every symptom once.  Returns dict or None when nobody would have called."""
    p = derive(s, st, o, pk, r)
    true = {}
    noise = r.random()
    for k, v in p.items():
        true[k] = bool(r.random() < v)
    gauge = ("gauge-lower-than-before", "gauge-reads-low", "gauge-reads-high")
    main = [
        k
        for k in COMPLAINTS
        if true.get(k) and p[k] > 0.12 and (k not in gauge or s.fault in PRESSURE)
    ]
    routine = False
    if (
        s.fault not in PRESSURE
        and s.fc == "sealed"
        and not (13 < o["static"] < 72 and o["suction"] > 2.5)
    ):
        return None  # a second fault of its own
    if (
        s.fault in ("charge-left-too-low", "pipe-never-relaxed", "charged-cold-without-allowance")
        and o["static"] > 16
        and o["suction"] > 3
    ):
        return None  # still inside the working band: that is what an ordinary loop does
    if s.fault not in LEVEL and s.fc == "non_pressurised" and st.level_in < -3.5:
        return None
    if not main:
        G = lambda k: true.get(k) and st.sign.get(k, 0) > 0.2
        seen = (
            s.fault in PRESSURE
            and s.fc == "sealed"
            and (o["static"] < 13 or o["static"] > 75)
            or G("tank-rings-full")
            or s.fault in LEVEL
            and s.fc == "non_pressurised"
            and st.level_in < -3.5
            or G("strainer-screen-dirty")
            and o["dp_strainer"] > 1.2
            or G("wet-or-crusted-fittings")
            or G("orange-mud")
            or G("sample-smells")
            or s.fault.startswith("antifreeze")
            and s.mode == "heating"
            and o["freeze_true"] > pk["lwt"] - 7
        )
    if not main:
        if seen and r.random() < 0.6:
            routine = True
        else:
            return None
    if s.mode == "cooling":
        true["worse-when-cold"] = False
    return dict(p=p, true=true, main=main, routine=routine)


PRESSURE = {
    "dial-gauge-lies",
    "leak-indoors",
    "leak-in-ground",
    "charge-left-too-low",
    "pipe-never-relaxed",
    "charged-cold-without-allowance",
    "over-pressurised",
    "expansion-tank-waterlogged",
    "expansion-tank-pre-charge-wrong",
}
LEVEL = {"reservoir-low", "leak-indoors", "leak-in-ground", "reservoir-draws-air"}
