"""From the true state to what is told, read and written down at a visit."""

import numpy as np
import fluids as fl
from kit import LIE_SIGN, Kit, Q
from signs import IMAG, MISS, OBS, SYMPTOMS


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
