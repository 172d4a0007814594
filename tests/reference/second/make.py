"""One call: system, fault, state, complaint, visit, paper; the visit document and its truth."""

import datetime as dt
import numpy as np
import faults as fa
import state as S
import visit as V
from kit import LIARS, Q
from signs import COMPLAINTS, WORDS, complain, derive
import world as w
import hydraulics as hy


def extras(s, r):
    s.dial = bool(getattr(s, "dial", False)) or (s.fc != "non_pressurised" and r.random() < 0.5)
    s.bleed_screw = r.random() < 0.6
    s.can_shut = r.random() < 0.6
    s.strainer_ports = r.random() < 0.6
    s.level_mark = r.random() < 0.85
    s.purged_before = r.random() < 0.2
    s.strainer_cleaned = r.random() < 0.3
    s.flow_switch_or_sensor = True
    s.meter_kind = "flow_meter" if r.random() < 0.5 else "clamp_flow_meter"
    s.lens_rec = getattr(s, "lens_rec", None)


def draw(r, fault):
    """Redraw system and severity until somebody would have called."""
    for _ in range(400):
        if fault in fa.F:
            _, want, fn = fa.F[fault]
        else:
            want = fa.N[fault][1]
        s = w.make(r, want)
        extras(s, r)
        st = S.State(s, r)
        sev = float(r.uniform(0, 1))
        if fault in fa.F:
            fn(s, st, sev, r)
            if s.strainer and st.str_mult > 3 and "strainer-screen-dirty" not in st.sign:
                st.sign["strainer-screen-dirty"] = 0.6
        s.dial = bool(s.dial) or fault.startswith(
            "expansion-tank"
        )  # "the gauge swings" needs a gauge to be seen
        s.fault = fault
        s.lens_rec = s.lens_rec or list(s.lens)
        o, pk = S.solve(st), S.solve(st, True)
        if (
            s.fluid.kind == "water"
            and s.mode == "heating"
            and min(o["lwt"], pk["lwt"]) < 33.5
            and not fault.startswith("antifreeze")
        ):
            continue  # plain water would be ice: such a loop does not run
        if "came-back-after-purge" in st.sign:
            s.purged_before = r.random() < 0.45
        if "strainer-loads-again" in st.sign:
            s.strainer_cleaned = r.random() < 0.5
        if fault in fa.N:
            c = normal_call(fault, s, st, o, pk, r)
        else:
            c = complain(s, st, o, pk, r)
        if c:
            return s, st, o, pk, c, sev
    raise RuntimeError("no complaint from " + fault)


def normal_call(kind, s, st, o, pk, r):
    """Nothing is wrong, yet somebody rang, or it is a routine visit."""
    if s.fc == "sealed" and not (14 < o["static"] < 70 and o["suction"] > 4):
        return None
    if s.fc == "non_pressurised" and st.level_in < -3:
        return None
    p = derive(s, st, o, pk, r)
    true = {k: bool(r.random() < v) for k, v in p.items()}
    for k in COMPLAINTS:
        if k in true and k not in (
            "gauge-lower-than-before",
            "gauge-reads-low",
            "gauge-reads-high",
        ):
            if true[k] and k not in ("high-bill",):
                return None
    true["high-bill"] = False
    drop = s.h["charge_p"] - o["static"]
    if kind == "ordinary-relaxation":
        loss = s.h["charge_p"] * (1 - S.relax_factor(st, s.age))
        if drop < 10 or loss < 0.6 * drop or not s.h["relaxed"] and loss > 26:
            return None
        true["gauge-lower-than-before"] = True
        s.dial = True
    elif kind == "seasonal-swing":
        loss = s.h["charge_p"] * (1 - S.relax_factor(st, s.age))
        season = drop - loss
        if abs(season) < 7:
            return None
        if season > 0:
            true["gauge-lower-than-before"] = True
        elif o["static"] > 60:
            true["gauge-reads-high"] = True
        else:
            return None
        s.dial = True
    main = [k for k in COMPLAINTS if true.get(k)]
    return dict(p=p, true=true, main=main, routine=not main)


def curve(h0, qm):
    return [
        {"flow": Q(q, "gpm"), "head": Q(float(hy.pump_head(q, h0, qm)), "ft")}
        for q in np.linspace(0, qm * 0.92, 6)
    ]


def document(s, st, ans, told, R, means, c, r, name):
    th = s.thorough
    keep = lambda f=1.0: r.random() < min(0.25 + 0.75 * th, 1) * f  # record of the system
    com = lambda f=1.0: r.random() < th * f  # record of commissioning
    h = s.h
    sysd = {"label": "House"}
    if r.random() < 0.93:
        sysd["installed_on"] = s.installed.isoformat()
    hp = {}
    if keep():
        hp["heating_capacity"] = Q(s.cap_h, "Btu/h", 0)
        hp["cooling_capacity"] = Q(s.tons, "ton")
    if keep(0.8):
        hp["heating_cop"] = Q(s.cop_h, "1")
        hp["cooling_cop"] = Q(s.cop_c, "1")
    if keep():
        hp["rated_flow"] = Q(s.rated_flow, "gpm")
    if keep(0.8):
        hp["minimum_flow"] = Q(s.min_flow, "gpm")
    if keep(0.6):
        hp["freeze_guard"] = Q(s.guard, "degF", 0)
    hp["refrigerant"] = "R-410A"
    ex = {"kind": s.hx}
    if keep(0.9):
        ex["curve_temperature"] = Q(70, "degF", 0)
        ex["curve"] = [
            {"flow": Q(s.rated_flow * k, "gpm"), "drop": Q(s.hx_dp * k**1.8, "psi", 2)}
            for k in (0.5, 0.75, 1, 1.25)
        ]
    hp["exchanger"] = ex
    sysd["heat_pump"] = hp
    sysd["flow_centre"] = {"kind": FC[s.fc]}
    if s.fc == "sealed_with_tank" and keep():
        sysd["flow_centre"]["tank_volume"] = Q(h["tank_gal"], "gal")
    if keep(1.2):
        sysd["circulator_piping"] = "series" if s.series or len(s.pumps) == 1 else "parallel"
    cs = []
    kc = keep(0.95)
    for _, h0, qm, wt, _ in s.pumps:
        d = {"rated_power": Q(wt, "W", 0)}
        if kc:
            d["curve"] = curve(h0, qm)
        cs.append(d)
    sysd["circulators"] = cs
    g = {"kind": {"pond": "pond"}.get(s.kind, s.kind)}
    if keep():
        g["header_return"] = s.return_style
        ls = s.lens_rec
        groups = {}
        for x in ls:
            groups[x] = groups.get(x, 0) + 1
        g["circuits"] = [
            {
                "count": n,
                "pipe": {"standard": "ips_pe", "size": s.pipe, "sdr": "11"},
                "length": Q(x, "ft", 0),
            }
            for x, n in groups.items()
        ]
        if keep():
            g["headers"] = [
                {
                    "pipe": {"standard": "ips_pe", "size": s.head_size, "sdr": "11"},
                    "length": Q(s.head_len, "ft", 0),
                }
            ]
    sysd["ground"] = g
    if keep():
        sysd["indoor"] = [
            {
                "pipe": {"standard": "ips_pe", "size": s.in_size, "sdr": "11"},
                "length": Q(s.in_len, "ft", 0),
            }
        ]
    if r.random() < 0.9:
        fd = {"kind": s.fluid_rec.kind}
        if s.fluid_rec.kind != "water" and com():
            fd["volume_fraction"] = Q(s.fluid_rec.vol, "%", 0)
        sysd["fluid"] = fd
    sysd["strainer"] = bool(s.strainer)
    if keep(1.1):
        sysd["check_valves"] = bool(s.check)
    k = {"date": s.installed.isoformat()} if com(1.1) else {}
    lie = r.random() < 0.06  # a sheet filled in afterwards "as it should have been"
    if com():
        k["flush_recorded"] = bool(h["flush_recorded"])
    elif r.random() < 0.25:
        k["flush_recorded"] = False
    if h["flush_recorded"] or com(0.7):
        if com(1.1):
            k["flushed"] = True if lie else bool(h["flushed"])
        if com(0.8):
            k["flush_velocity"] = Q(2.2 if lie else h["velocity"], "ft/s")
        if com(0.9):
            k["flush_duration"] = Q(2 if lie else h["hours"], "h")
        if com(0.7):
            k["circuits_flushed_singly"] = bool(h["singly"])
        if com():
            k["heat_pump_isolated"] = True if lie else bool(h["isolated"])
        if com():
            k["filtered"] = True if lie else bool(h["filtered"])
    if com(0.8) or r.random() < 0.15:
        k["cart_power"] = Q(h["cart_hp"], "hp", 2)
    if com(0.8):
        k["circulators_bled"] = True if lie else bool(h["bled"])
    if com() or r.random() < 0.2:
        k["water_source"] = {"open_water": "surface"}.get(h["source"], h["source"])
    if com():
        k["water_tested"] = bool(h["water_tested"])
    if com(0.8):
        k["pipe_relaxed"] = True if lie else bool(h["relaxed"])
    if s.fc != "non_pressurised" and (com(1.05) or r.random() < 0.25):
        k["charge_pressure"] = Q(h["charge_p"] + r.normal(0, 1), "psi", 0)
        k["charge_date"] = h["charge_date"].isoformat()
        if com(0.8):
            k["charge_temperature"] = Q(h["charge_t"] + r.normal(0, 1.5), "degF", 0)
    if com(0.8) and s.fluid_rec.kind != "water":
        k["mix_duration"] = Q(4 if lie else h["mix_h"], "h")
    if com(0.9) and s.fluid_rec.kind != "water":
        k["concentration_checked"] = bool(h["conc_checked"])
    v = {
        "date": s.date.isoformat(),
        "technician": "Technician (invented)",
        "complaint": " ".join(WORDS.get(x, "") for x in c["main"]).strip()
        or ("Routine visit." if c["routine"] else "Something is not right."),
    }
    if c["routine"]:
        v.pop("complaint")  # nobody called: a visit by calendar
    v["answers"] = [{"finding": a, "is": "yes" if b else "no"} for a, b in ans + told]
    v["readings"] = R
    v["means"] = means
    return {
        "format": "returnline-visit",
        "version": 1,
        "site": {"name": name + " (invented)", "elevation": Q(700, "ft", 0)},
        "system": sysd,
        "commissioning": k,
        "visit": v,
    }


FC = {
    "sealed": "sealed",
    "sealed_with_tank": "sealed_with_tank",
    "non_pressurised": "non_pressurised",
}


def call(seed, fault, P, QQ, lie, name):
    r = np.random.default_rng(seed)
    s, st, o, pk, c, sev = draw(r, fault)
    liar = None
    if lie:
        pool = [
            x
            for x in LIARS
            if not (x == "dial_gauge" and not s.dial)
            and not (x in ("dial_gauge", "digital_gauge") and s.fc == "non_pressurised")
            and not (x == "refractometer" and "glycol" not in s.fluid_rec.kind)
            and not (x == "hydrometer" and "anol" not in s.fluid_rec.kind)
        ]
        liar = str(pool[r.integers(len(pool))])
    ans, told, R, means = V.visit(s, st, o, pk, c, r, P, QQ, liar)
    doc = document(s, st, ans, told, R, means, c, r, name)
    truth = {
        "fault": fault,
        "severity": round(sev, 3),
        "liar": liar,
        "state": {
            k: (round(float(o[k]), 2))
            for k in (
                "q",
                "ewt",
                "lwt",
                "static",
                "suction",
                "ratio",
                "cap_rel",
                "freeze_true",
                "dp_hx",
                "rise",
                "rise0",
            )
        },
        "main": c["main"],
        "routine": c["routine"],
        "season": s.mode,
        "age_days": s.age,
        "flow_centre": s.fc,
    }
    return doc, truth
