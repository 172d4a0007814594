"""The true state of a system: modifiers set by a fault, and the physics solved from them."""

import copy
import math
import numpy as np
import fluids as fl
import hydraulics as hy
import world as w

ATM = 14.6
WORST = {
    "vertical": 1.2,
    "horizontal": 5.5,
    "pond": 8.5,
}  # degF, undisturbed ground off its mean at the season's end


class State:
    def __init__(self, s, r):
        n, p = s.n, len(s.pumps)
        self.s = s
        self.hx_mult = 1 + abs(r.normal(0, 0.05))
        self.str_mult = 1 + r.uniform(0, 0.5)
        self.k_circ, self.air_circ = np.zeros(n), np.zeros(n)
        self.lens = list(s.lens)
        self.k_valve = 0.0
        self.k_check = 0.0
        self.byp_ground = 0.0
        self.byp_unit = 0.0
        self.head = [r.uniform(0.95, 1.04) for _ in range(p)]  # pump condition
        self.dead = [False] * p
        self.rev = [False] * p
        self.speed = 1.0
        self.pw = [r.uniform(0.9, 1.05) for _ in range(p)]  # electric, relative
        self.body = r.uniform(15, 35)  # pump body over fluid, degF
        self.air_gal = 0.0
        self.air_moving = 0.0
        self.dissolved = 0.0
        self.fluid = copy.copy(s.fluid)
        self.unmixed = 0.0  # +- vol % between samples
        self.R = r.uniform(0.88, 1.03)
        self.scale_fouling = 0.0  # degF approach
        self.leak_gal = 0.0
        self.topup_gal = 0.0
        self.topups = 0
        self.tank_air = 1.0
        self.pre_err = 0.0
        self.cap = r.uniform(0.96, 1.04)
        self.power = r.uniform(0.96, 1.04)
        self.airflow = r.uniform(0.92, 1.05)
        self.dial_off = r.normal(0, 1.0)
        self.disp_off = r.normal(0, 0.7)
        self.ph = r.uniform(7.6, 9.2)
        self.iron = abs(r.normal(0.08, 0.08))
        if s.fluid.kind == "water":
            self.ph = r.uniform(7.2, 8.4)
        self.onset = None
        self.sign = {}  # sign -> probability that it is truly there, because of the fault
        self.told = None
        self.restr = (r.uniform(0.85, 1.0), r.uniform(0.7, 1.0))  # of alpha, of compliance
        self.relax_rate = r.uniform(0.085, 0.115) * (self.restr[1] ** 0.5)
        self.suction_share = r.uniform(0.3, 0.5)
        self.intensity_noise = r.uniform(0.85, 1.0)
        self.crossed = False
        self.no_run = False
        self.res_gpi = r.choice([0.22, 0.34])
        self.level_extra = 0.0
        self.freezing = False


def dpdt(st, t):
    """psi per degF of a sealed all-plastic loop without tank (negative: warm means lower)."""
    a, cc = st.restr
    return (fl.beta(st.fluid.kind, st.fluid.vol, t) - 4.4e-4 * a) / (C_PIPE(t) * cc + 3.1e-6) / 1.8


def C_PIPE(t):
    e = 62000 * np.interp(
        t,
        [20, 30, 40, 50, 60, 73, 80, 90, 100],
        [1.81, 1.65, 1.49, 1.32, 1.18, 1, 0.93, 0.82, 0.73],
    )
    return 0.8 * 10 / e


def relax_factor(st, days):
    h = st.s.h
    t0 = 3.0 if h["relaxed"] else 0.15
    hours = max(days * 24, 1)
    return max(1 - st.relax_rate * math.log10(1 + hours / t0), 0.25)


def static(st, t_now, days=None):
    """Gauge pressure at rest at fluid temperature t_now (degF), sealed kinds; level for vented."""
    s, h = st.s, st.s.h
    days = max((s.date - h["charge_date"]).days, 0) if days is None else days
    V = s.volume
    net = st.leak_gal - st.topup_gal
    if s.fc == "sealed":
        p = h["charge_p"] * relax_factor(st, days)
        ts = np.linspace(h["charge_t"], t_now, 12)
        p += float(np.mean([dpdt(st, x) for x in ts])) * (t_now - h["charge_t"])
        x = st.air_gal / V
        comp = C_PIPE((t_now + h["charge_t"]) / 2) * st.restr[1] + 3e-6 + x / max(p + ATM, 10)
        p -= (net / V + st.dissolved) / comp
        return max(p, -6.0 + 0.4 * math.sin(V))
    # volume that has to come out of the tank or reservoir
    dv = net
    dv += (
        V
        * (4.4e-4 * st.restr[0] - fl.beta(st.fluid.kind, st.fluid.vol, (t_now + h["charge_t"]) / 2))
        * (t_now - h["charge_t"])
        / 1.8
    )
    dv += V * st.dissolved * 0.6
    if s.fc == "sealed_with_tank":
        dv += V * C_PIPE(60) * 0.45 * h["charge_p"]
        pre = max(h["precharge"] + st.pre_err, 0)
        vt = s.h["tank_gal"] * st.tank_air
        p0 = h["charge_p"]
        vg0 = vt * (pre + ATM) / (max(p0, pre) + ATM) if st.tank_air > 0.5 else vt
        vg = vg0 + dv
        if vg <= 0.02:
            return 75.0
        if vg > vt and st.tank_air > 0.5:  # bladder against the shell: no spring left
            p = pre - (vg - vt) / (V * C_PIPE(t_now))
            if p0 < pre:
                p = p0 - dv / (V * C_PIPE(t_now))
            return max(p, -4)
        return min((p0 + ATM) * vg0 / vg - ATM, 90)
    st.level_in = -dv / st.res_gpi - st.level_extra
    return max(0.9 + 0.02 * st.level_in, 0.2)


def solve(st, peak=False):
    s = st.s
    f = st.fluid
    mode = s.mode
    I = abs(w.season_frac(s.date))
    I = (0.42 + 0.58 * I) * st.intensity_noise
    if peak:  # the worst of the last weeks, not of the winter still to come
        I = max(I, min(0.97, I + 0.2))
    te = w.loop_idle_t(s, s.date)
    if peak and mode == "heating":
        te = min(te, 0.5 * te + 0.5 * (s.tg - WORST[s.kind]))
    o = {"mode": mode, "idle_t": te}
    t = (s.design_ewt + 4) if mode == "heating" else s.design_ewt_c - 5
    for _ in range(4):
        o.update(hydraulic(st, t))
        thermal(st, o, I, te)
        t2 = o["tm"]
        if abs(t2 - t) < 0.5:
            break
        t = 0.5 * t + 0.5 * t2
    loop_t = o["tm"] * 0.5 + te * 0.5
    o["loop_t"] = loop_t
    o["t_static"] = te + (o["tm"] - te) * 0.55
    o["static"] = static(st, o["t_static"])
    rise_psi = o["rise"]
    if s.fc == "sealed":
        o["suction"] = o["static"] - st.suction_share * rise_psi - o["dp_strainer"] * 0.5
    elif s.fc == "sealed_with_tank":
        o["suction"] = o["static"] - 0.08 * rise_psi - o["dp_strainer"] * 0.5
    else:
        o["suction"] = o["static"] - 0.3 - o["dp_strainer"] * 0.0
    # ice in the exchanger
    st_fp = fl.freeze_f(f.kind, max(f.vol - st.unmixed, 0))
    o["freeze_true"] = fl.freeze_f(f.kind, f.vol)
    o["ice"] = mode == "heating" and (o["lwt"] - 0.55 * o["approach"] < st_fp - 1)
    return o


def hydraulic(st, t):
    s, f = st.s, st.fluid
    hxf, fixed, strn = w.resistance(s, t, f)
    reach = np.linspace(0, 30, s.n) if s.return_style == "direct" else np.zeros(s.n)
    cir = hy.Circuits(st.lens, s.pipe, f, t, st.k_circ, st.air_circ, reach)
    qt, ht = cir.solve_table()
    bg, bu = st.byp_ground, st.byp_unit

    def sysf(q):
        q = np.asarray(q, float)
        return (
            hxf(q * (1 - bu)) * st.hx_mult
            + fixed(q * (1 - bg))
            + strn(q) * st.str_mult
            + (st.k_valve + st.k_check) * q**2
            + np.interp(q * (1 - bg), qt, ht, right=1e4)
        )

    def one(i, q):
        _, h0, qm, _, sp = s.pumps[i]
        if st.dead[i]:
            return -(0.18 * h0) * (np.asarray(q) / s.rated_flow) ** 2
        if st.rev[i]:
            return (
                -0.35 * hy.pump_head(q, h0, qm, st.head[i], sp * st.speed)
                - 0.25 * h0 * (np.asarray(q) / s.rated_flow) ** 2
                - 0.25 * h0
            )
        return hy.pump_head(q, h0, qm, st.head[i], sp * st.speed)

    if s.series:
        pf = lambda q: sum(one(i, np.asarray(q, float)) for i in range(len(s.pumps)))
    else:
        live = [i for i in range(len(s.pumps)) if not st.dead[i] and not st.rev[i]]
        back = (
            0.0
            if (s.check and st.sign.get("_backflow") is None)
            else 0.38 * (len(s.pumps) - len(live))
        )
        if st.sign.get("_backflow") and len(live) == len(s.pumps):
            back = 0.0
        pf = lambda q: (
            hy.pump_head(
                np.asarray(q, float) * (1 + back) / max(len(live), 1),
                s.pumps[0][1],
                s.pumps[0][2],
                np.mean([st.head[i] for i in live]) if live else 0,
                st.speed,
            )
            if live
            else 0 * np.asarray(q, float) - 1
        )
    q = hy.meet(sysf, pf, 60)
    rho = fl.rho(f.kind, f.vol, t) / 998
    o = {"q_pump": q, "q": q * (1 - bu), "q_ground": q * (1 - bg)}
    o["rise"] = float(pf(q)) * rho / 2.31
    o["rise0"] = float(pf(0.0)) * rho / 2.31
    o["dp_hx"] = float(hxf(o["q"])) * st.hx_mult * rho / 2.31
    o["dp_strainer"] = float(strn(q)) * st.str_mult * rho / 2.31
    o["dp_valve"] = st.k_valve * q * q * rho / 2.31
    o["dp_check"] = st.k_check * q * q * rho / 2.31
    hd = np.interp(o["q_ground"], qt, ht)
    o["q_circ"] = cir.split(hd)
    o["re_circ"] = hy.reynolds(max(float(np.median(o["q_circ"])), 0.05), s.pipe, f, t)
    return o


def thermal(st, o, I, te):
    s, f = st.s, st.fluid
    q = max(o["q"], 0.15)
    qg = max(o["q_ground"], 0.15)
    fac = fl.heat_factor(f.kind, f.vol)
    ratio = q / s.rated_flow
    alive = float(np.sum(np.minimum(o["q_circ"] / max(o["q_ground"] / s.n, 0.01), 1.0))) / s.n
    lam = np.clip((3000 - o["re_circ"]) / 1500, 0, 1)
    Rm = st.R * (1 / max(alive, 0.2)) ** 0.8 * (1 + 0.13 * lam)
    flow_c = min(ratio, 1.2) ** 0.11 if ratio > 0.05 else 0.5
    film = 1 - 0.012 * st.scale_fouling
    if o["mode"] == "heating":
        split_d = s.cap_h * (1 - 1 / s.cop_h) / (fac * s.rated_flow)
        dT_des = max(s.tg - WORST[s.kind] - s.design_ewt + split_d / 2, 4)
        ewt = o.get("ewt", s.design_ewt + 4)
        for _ in range(6):
            cap = (
                s.cap_h
                * (1 + 0.011 * (ewt - 32))
                * st.cap
                * flow_c
                * film
                * (1 - 0.25 * max(0, 0.9 - st.airflow))
            )
            cop = (
                s.cop_h
                * (1 + 0.008 * (ewt - 32))
                * st.cap
                / st.power
                * flow_c**0.7
                * film
                * (1 - 0.35 * max(0, 0.9 - st.airflow))
            )
            he = cap * (1 - 1 / max(cop, 1.2))
            split, sg_ = he / (fac * q), he / (fac * qg)
            nom = s.cap_h * (1 - 1 / s.cop_h)
            dT = dT_des * I * Rm * he / nom
            tm = te - min(dT, 60)
            lwt = tm - min(sg_, 40) / 2
            ewt = 0.5 * ewt + 0.5 * (lwt + min(split, 40))
        lwt = ewt - min(split, 40)
        o["approach"] = (s.appr_h + st.scale_fouling) * (1 + 0.35 * max(0, 1 - ratio))
        o["sat"] = lwt - o["approach"]
        o["air_dt"] = np.clip(27 * cap / s.cap_h / st.airflow, 5, 60)
        o["cond"] = 98 + 0.45 * (o["air_dt"] - 27) * 1.6 + 4
    else:
        hr_n = s.cap_c * (1 + 1 / s.cop_c)
        split_d = hr_n / (fac * s.rated_flow)
        dT_des = max(s.design_ewt_c + split_d / 2 - s.tg - WORST[s.kind], 4)
        ewt = o.get("ewt", s.design_ewt_c - 6)
        for _ in range(6):
            cap = (
                s.cap_c
                * (1 - 0.006 * (ewt - 77))
                * st.cap
                * flow_c
                * film
                * (1 - 0.3 * max(0, 0.9 - st.airflow))
            )
            cop = (
                s.cop_c
                * (1 - 0.013 * (ewt - 77))
                * st.cap
                / st.power
                * flow_c**0.9
                * film
                * (1 - 0.25 * max(0, 0.9 - st.airflow))
            )
            he = cap * (1 + 1 / max(cop, 1.2))
            split, sg_ = he / (fac * q), he / (fac * qg)
            dT = dT_des * I * Rm * he / hr_n
            tm = te + min(dT, 60)
            lwt = tm + min(sg_, 40) / 2
            ewt = 0.5 * ewt + 0.5 * (lwt - min(split, 40))
        lwt = ewt + min(split, 40)
        o["approach"] = (s.appr_c + st.scale_fouling) * (1 + 0.35 * max(0, 1 - ratio))
        o["sat"] = lwt + o["approach"]
        o["cond"] = o["sat"]
        o["air_dt"] = np.clip(19 * cap / s.cap_c / st.airflow, 4, 40)
    o.update(
        ewt=ewt,
        lwt=lwt,
        split=split,
        tm=tm,
        cap=cap,
        cop=cop,
        power=cap / cop / 3412,
        he=he,
        ratio=ratio,
        alive=alive,
        lam=lam,
    )
    # what a sound system would give at the same water and full flow
    if o["mode"] == "heating":
        o["cap_rel"] = cap / (s.cap_h * (1 + 0.011 * (max(ewt, s.design_ewt) - 32)))
        o["cap_peak"] = cap / (s.cap_h * (1 + 0.011 * (s.design_ewt - 32)))
        o["cop_rel"] = cop / (s.cop_h * (1 + 0.008 * (s.design_ewt + 3 - 32)))
    else:
        o["cap_rel"] = cap / (s.cap_c * (1 - 0.006 * (min(ewt, s.design_ewt_c) - 77)))
        o["cap_peak"] = cap / (s.cap_c * (1 - 0.006 * (s.design_ewt_c - 77)))
        o["cop_rel"] = cop / (s.cop_c * (1 - 0.013 * (s.design_ewt_c - 3 - 77)))
    o["rated_power"] = o["power"] / st.power * max(st.power, 0.01)
