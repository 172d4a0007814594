"""From the true state to what is complained of, seen, heard, read and written down."""

import datetime as dt
import math
import numpy as np
import fluids as fl
import hydraulics as hy
import state as S
import world as w

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


class Kit:
    """The instruments of this visit; one of them may lie."""

    def __init__(self, r, liar=None):
        sg = 1 if r.random() < 0.5 else -1
        self.liar, self.sg = liar, sg
        self.r = r
        self.off = {
            "dial_gauge": r.normal(0, 1),
            "digital_gauge": r.normal(0, 0.7),
            "differential_gauge": r.normal(0, 0.05),
            "port_thermometer": r.normal(0, 0.6),
            "clamp_thermometer": r.normal(0, 0.8),
            "refractometer": r.normal(0, 1),
            "hydrometer": r.normal(0, 0.001),
            "unit_display": r.normal(0, 0.7),
            "test_kit": 0.0,
        }
        self.mul = {"flow_meter": r.normal(1, 0.03), "power_meter": r.normal(1, 0.02)}
        add = {
            "dial_gauge": r.uniform(11, 20),
            "digital_gauge": r.uniform(11, 20),
            "differential_gauge": r.uniform(1.5, 4),
            "port_thermometer": r.uniform(6, 10),
            "clamp_thermometer": r.uniform(6, 10),
            "refractometer": r.uniform(8, 14),
            "hydrometer": r.uniform(0.010, 0.018),
            "unit_display": r.uniform(6, 10),
            "test_kit": 2.0,
        }
        if liar in add:
            self.off[liar] += sg * add[liar]
        if liar in ("flow_meter", "power_meter"):
            self.mul[liar] *= 1.55 if sg > 0 else 0.6

    def rd(self, inst, v, sd, rel=0.0):
        n = self.r.normal()
        m = self.mul.get(inst, 1.0)
        return v * m * (1 + rel * self.r.normal()) + self.off.get(inst, 0) + sd * n


LIARS = [
    "dial_gauge",
    "digital_gauge",
    "differential_gauge",
    "port_thermometer",
    "clamp_thermometer",
    "flow_meter",
    "refractometer",
    "hydrometer",
    "power_meter",
    "test_kit",
    "unit_display",
]
LIE_SIGN = {
    "dial_gauge": "second-gauge-disagrees",
    "digital_gauge": "digital-gauge-not-zero",
    "differential_gauge": "differential-gauge-not-zero",
    "port_thermometer": "port-thermometer-ice-wrong",
    "clamp_thermometer": "clamp-thermometer-ice-wrong",
    "flow_meter": "meter-disagrees-with-bucket",
    "refractometer": "refractometer-water-wrong",
    "hydrometer": "hydrometer-water-wrong",
    "power_meter": "power-meter-disagrees",
    "test_kit": "test-kit-control-fails",
    "unit_display": "display-thermometer-disagree",
}


def Q(v, u, nd=1):
    return {"value": round(float(v), nd), "unit": u}


def visit(s, st, o, pk, c, r, P, QQ, liar=None):
    """Returns (visit part, used instruments)."""
    kit = Kit(r, liar)
    if liar == "dial_gauge":
        kit.off["dial_gauge"] += 0
    kit.off["dial_gauge"] += st.dial_off
    kit.off["unit_display"] += st.disp_off if liar != "unit_display" else 0
    true, p = c["true"], c["p"]
    if liar:
        true = dict(true)
        true[LIE_SIGN[liar]] = True
        if liar == "port_thermometer":
            true["display-thermometer-disagree"] = False
            true["clamp-thermometer-ice-wrong"] = (
                True  # compared with the port thermometer, one of them is off
            )
        if liar == "digital_gauge":
            true["second-gauge-disagrees"] = True
        if liar == "dial_gauge" and s.dial:
            d = o["static"] + kit.off["dial_gauge"]
            if d < 12:
                true["gauge-reads-low"] = True
            if d < s.h["charge_p"] - 15:
                true["gauge-lower-than-before"] = True
            if d > 75:
                true["gauge-reads-high"] = True
    e, ref = r.random() < 0.5, r.random() < 0.45
    has = dict(
        refractometer=s.fluid.kind != "water"
        and (("glycol" in s.fluid_rec.kind) or r.random() < 0.1),
        hydrometer=s.fluid.kind != "water" and ("anol" in s.fluid_rec.kind or r.random() < 0.15),
        meter=r.random() < 0.4,
        kit=r.random() < 0.5,
        clamp=True,
        display=r.random() < 0.6,
        power=e,
    )
    for a, b in (
        ("flow_meter", "meter"),
        ("refractometer", "refractometer"),
        ("hydrometer", "hydrometer"),
        ("test_kit", "kit"),
        ("unit_display", "display"),
    ):
        if liar == a:
            has[b] = True
    if liar == "power_meter":
        e = True
    run = o["ratio"] > 0.3
    ans, told = [], []
    seen = lambda k: (r.random() > MISS) if true.get(k) else (r.random() < IMAG)
    # --- symptoms: what they called about is always told; the rest is asked with probability q
    vol = [k for k in c["main"] if r.random() < 0.85] or c["main"][:1]
    noisy = any(
        true.get(k) for k in ("gurgling", "circulator-hums", "circulator-rattles", "valve-slams")
    )
    for k in SYMPTOMS:
        if k in ("gauge-reads-low", "gauge-lower-than-before", "gauge-reads-high") and (
            s.fc == "non_pressurised" or not s.dial
        ):
            continue
        if k == "gauge-swings-widely" and (s.fc == "non_pressurised" or not s.dial):
            continue
        if k == "relief-valve-weeps" and s.fc == "non_pressurised":
            continue
        if k == "came-back-after-purge" and not (s.purged_before):
            continue
        if k == "strainer-loads-again" and not (s.strainer and s.strainer_cleaned):
            continue
        if k == "noise-worse-in-summer" and (not noisy or (s.age < 200 and s.mode == "heating")):
            continue
        if k == "worse-when-cold" and s.mode == "cooling" and s.age < 250:
            continue
        if k == "trips-early-then-settles" and s.age > 200:
            continue
        if k in vol:
            ans.append((k, True))
        elif r.random() < QQ:
            ans.append((k, seen(k)))
    if st.onset and r.random() < 0.75:
        told.append(
            (
                st.onset
                if r.random() < 0.9
                else r.choice(["since-start-up", "came-on-slowly", "came-on-suddenly"]),
                True,
            )
        )
    # --- what the technician looks at
    cond = {
        "": True,
        "vent": r.random() < 0.7,
        "sealed0": s.fc == "sealed",
        "bleed": s.bleed_screw,
        "manifold": s.manifold_in,
        "circ_meters": s.circ_meters,
        "strainer": s.strainer,
        "antifreeze": s.fluid_rec.kind != "water",
        "log": r.random() < 0.3,
        "run": run,
        "dial": s.dial and s.fc != "non_pressurised",
        "pressure": s.fc != "non_pressurised",
        "clamp": True,
        "meter_bucket": has["meter"] and r.random() < 0.3,
        "refractometer": has["refractometer"],
        "hydrometer": has["hydrometer"],
        "elec_2": e and r.random() < 0.4,
        "kit": has["kit"],
        "display": has["display"],
        "speeds": s.speeds,
        "two": len(s.pumps) > 1,
        "check_ports": s.check and r.random() < 0.4,
        "tank": s.fc == "sealed_with_tank",
        "vented": s.fc == "non_pressurised",
        "lockout": bool(true.get("low-flow-lockout")) and o["ratio"] > 0.8,
        "lockout_d": has["display"],
        "elec_sw": e and bool(true.get("low-flow-lockout")) and s.flow_switch_or_sensor,
        "valve_ports": r.random() < 0.6,
    }
    for k, need in OBS.items():
        if not cond[need]:
            continue
        if r.random() < QQ:
            ans.append((k, seen(k)))
    # --- readings
    R = []
    m = s.mode

    def put(point, v, unit, inst=None, nd=1, mode=None, **kw):
        d = {"point": point, "value": Q(v, unit, nd)}
        if inst:
            d["instrument"] = inst
        if mode:
            d["mode"] = mode
        d.update(kw)
        R.append(d)

    take = lambda f=1.0: r.random() < P * f
    sealed = s.fc != "non_pressurised"
    if sealed or r.random() < 0.4:
        if take():
            use = "digital_gauge" if not s.dial or r.random() < 0.6 else "dial_gauge"
            put("static_pressure", max(kit.rd(use, o["static"], 1.2), -9), "psi", use, 0, "idle")
            if use == "digital_gauge" and s.dial and take(0.6):
                put(
                    "static_pressure",
                    max(kit.rd("dial_gauge", o["static"], 1.2), 0),
                    "psi",
                    "dial_gauge",
                    0,
                    "idle",
                )
        if sealed and take(0.9):
            use = "digital_gauge" if not s.dial or r.random() < 0.7 else "dial_gauge"
            put(
                "suction_pressure",
                max(kit.rd(use, o["suction"], 1.0), -10 if use == "digital_gauge" else 0),
                "psi",
                use,
                0,
                m,
            )
    if take():
        put(
            "loop_temperature",
            kit.rd("clamp_thermometer", o["t_static"], 1.0),
            "degF",
            "clamp_thermometer",
            0,
            "idle",
        )
    if run and take():
        put(
            "entering_water",
            kit.rd("port_thermometer", o["ewt"] if not st.crossed else o["ewt"], 0.6),
            "degF",
            "port_thermometer",
            1,
            m,
        )
        put(
            "leaving_water",
            kit.rd("port_thermometer", o["lwt"], 0.6),
            "degF",
            "port_thermometer",
            1,
            m,
        )
    uns = 0.12 if true.get("flow-unsteady") else 0
    if take():
        put(
            "exchanger_drop",
            max(kit.rd("differential_gauge", o["dp_hx"], 0.12, 0.03 + uns), 0),
            "psi",
            "differential_gauge",
            2,
            m,
        )
    if take():
        put(
            "circulator_rise",
            max(kit.rd("differential_gauge", o["rise"], 0.15, 0.03 + uns / 2), 0),
            "psi",
            "differential_gauge",
            1,
            m,
        )
    if s.can_shut and take(0.8):
        put(
            "shut_off_rise",
            max(kit.rd("differential_gauge", o["rise0"], 0.2, 0.04), 0),
            "psi",
            "differential_gauge",
            1,
            m,
        )
    if has["meter"] and take():
        put(
            "flow", max(kit.rd("flow_meter", o["q"], 0.1, 0.04 + uns), 0), "gpm", s.meter_kind, 1, m
        )
    if s.strainer and s.strainer_ports and take():
        put(
            "strainer_drop",
            max(kit.rd("differential_gauge", o["dp_strainer"], 0.08, 0.04), 0),
            "psi",
            "differential_gauge",
            2,
            m,
        )
    if e and take():
        tot = sum(
            0
            if st.dead[i]
            else st.pw[i]
            * s.pumps[i][3]
            * (0.72 + 0.28 * min(o["q_pump"] / s.rated_flow, 1.1))
            * st.speed**2.6
            for i in range(len(s.pumps))
        )
        put(
            "circulator_power",
            max(kit.rd("power_meter", tot, 2, 0.03), 0),
            "W",
            "power_meter",
            0,
            m,
        )
    if take():
        put(
            "circulator_body_temperature",
            kit.rd("clamp_thermometer", (o["ewt"] if run else o["idle_t"]) + st.body, 2),
            "degF",
            "clamp_thermometer",
            0,
            m,
        )
    if s.n > 1 and s.manifold_in and run and take():
        te = o["idle_t"]
        # returns such that their flow-weighted mean is what the ground really gives back
        qc = np.maximum(o["q_circ"], 0)
        frac = qc / max(qc.sum(), 1e-6)
        tout = o["lwt"] + (o["ewt"] - o["lwt"]) / max(1 - st.byp_ground, 0.2) * min(
            1, (1 - st.byp_unit)
        )
        lo_, hi_ = 0.001, 60.0
        ret = lambda a: o["lwt"] + (te - o["lwt"]) * (1 - np.exp(-a / np.maximum(qc, 0.02)))
        for _ in range(50):
            mid = (lo_ * hi_) ** 0.5
            short = abs(float((frac * ret(mid)).sum()) - o["lwt"]) < abs(tout - o["lwt"])
            lo_, hi_ = (mid, hi_) if short else (lo_, mid)
        for i, qi in enumerate(qc):
            t = te + 0.35 * (66 - te) if qi < 0.06 else float(ret(mid)[i])
            put(
                "circuit_return",
                kit.rd("clamp_thermometer", t, 0.7),
                "degF",
                "clamp_thermometer",
                1,
                m,
                circuit=i + 1,
            )
    f = st.fluid
    mix = getattr(st, "other_kind", None)
    v1 = max(f.vol + st.unmixed * (1 if r.random() < 0.5 else -1), 0)
    v2 = max(2 * f.vol - v1, 0)
    if s.fluid_rec.kind != "water":
        if has["refractometer"] and take():

            def refr(v):
                b = (
                    fl.freeze_f(s.fluid_rec.kind, v * optical(f.kind) / optical(s.fluid_rec.kind))
                    if "_sgmix" in st.sign
                    else fl.freeze_f(f.kind, v)
                )
                return b

            put(
                "freeze_point_supply",
                kit.rd("refractometer", refr(v1), 1.5),
                "degF",
                "refractometer",
                0,
            )
            if take(0.5):
                put(
                    "freeze_point_return",
                    kit.rd("refractometer", refr(v2), 1.5),
                    "degF",
                    "refractometer",
                    0,
                )
        if has["hydrometer"] and take():
            ts = r.uniform(55, 70)
            g = fl.sg(f.kind, v1, ts)
            if "_sgmix" in st.sign and mix:
                g = 0.6 * g + 0.4 * fl.sg(mix, v1, ts)
            put("specific_gravity", kit.rd("hydrometer", g, 0.0012), "1", "hydrometer", 4)
            put(
                "sample_temperature",
                kit.rd("port_thermometer", ts, 0.5),
                "degF",
                "port_thermometer",
                0,
            )
    if has["kit"] and take():
        put("fluid_ph", kit.rd("test_kit", st.ph, 0.2), "1", "test_strip", 1)
    wt = getattr(st, "water", None)
    if has["kit"] and take(0.7):
        ir = (
            st.iron
            if wt == "iron"
            else (r.uniform(0.3, 1.2) if s.iron_house else abs(r.normal(0.05, 0.05)))
        )
        put(
            "water_iron",
            max(kit.rd("test_kit", ir, 0.05, 0.1) - kit.off["test_kit"], 0),
            "mg/L",
            "test_strip",
            2,
        )
    if has["kit"] and take(0.6):
        hard = (
            r.uniform(250, 420)
            if wt == "scaling"
            else (r.uniform(160, 280) if s.hard_water else r.uniform(30, 130))
        )
        alk = hard * r.uniform(0.7, 1)
        ph = (
            r.uniform(7.7, 8.3)
            if wt == "scaling"
            else (r.uniform(5.8, 6.6) if wt == "corrosive" else r.uniform(7.0, 7.8))
        )
        put("water_ph", ph + kit.off["test_kit"] + r.normal(0, 0.15), "1", "test_strip", 1)
        put("water_hardness", hard * r.normal(1, 0.08), "mg/L", "test_strip", 0)
        put("water_alkalinity", alk * r.normal(1, 0.08), "mg/L", "test_strip", 0)
        put(
            "water_chloride",
            r.uniform(260, 600) if wt == "corrosive" else r.uniform(5, 45),
            "mg/L",
            "test_strip",
            0,
        )
    if s.fc == "sealed_with_tank" and take():
        pre = s.h["precharge"] + st.pre_err if st.tank_air > 0.5 else r.uniform(0, 4)
        put(
            "tank_pre_charge",
            max(kit.rd("digital_gauge", pre, 0.8), 0),
            "psi",
            "digital_gauge",
            0,
            "idle",
        )
    looked = any(
        a == "air-drawn-at-reservoir" for a, _ in ans
    )  # who looks into the reservoir sees its level too
    if s.fc == "non_pressurised" and s.level_mark and (take() or looked and r.random() < 0.8):
        put("reservoir_level_change", st.level_in + r.normal(0, 0.3), "in", "ruler", 1, "idle")
    if st.topups and r.random() < P * 0.6:
        put("top_up_volume", st.topup_gal * r.normal(1, 0.1), "gal", None, 2)
    if run:
        if e and take():
            put(
                "unit_power",
                kit.rd("power_meter", o["power"], 0.03, 0.02),
                "kW",
                "power_meter",
                2,
                m,
            )
        if has["display"] and take():
            put(
                "unit_capacity",
                max(
                    o["cap"]
                    * r.normal(1, 0.06)
                    * (
                        1.35 ** (np.sign(kit.off["unit_display"]))
                        if abs(kit.off["unit_display"]) > 4.5
                        else 1
                    ),
                    0,
                ),
                "Btu/h",
                "unit_display",
                0,
                m,
            )
        if take():
            put(
                "air_temperature_change",
                kit.rd("port_thermometer", o["air_dt"], 1.0) - kit.off["port_thermometer"],
                "degF",
                "port_thermometer",
                0,
                m,
            )
    r.shuffle(R)
    means = {"refrigerant_certified": bool(ref), "electrical_licence": bool(e)}
    return ans, told, R, means


def optical(kind):
    return {
        "propylene_glycol": 1.0,
        "ethylene_glycol": 0.95,
        "methanol": 0.12,
        "ethanol": 0.55,
        "water": 1,
    }[kind]
