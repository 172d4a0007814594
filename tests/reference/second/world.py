"""Invents a system, its age, season, climate and commissioning habits (no fault yet)."""

import datetime as dt
import math
from dataclasses import dataclass, field
import numpy as np
import fluids as fl
import hydraulics as hy

PUMPS = [  # invented families: shut-off head ft, run-out gpm, nameplate W
    ("S", 17, 19, 85),
    ("M", 26, 27, 150),
    ("L", 31, 33, 230),
    ("XL", 36, 46, 330),
]


@dataclass
class Fluid:
    kind: str
    vol: float


@dataclass
class Sys:
    r: object
    tons: float = 3
    extra: dict = field(default_factory=dict)


def pick(r, d):
    k = list(d)
    p = np.array([d[x] for x in k], float)
    return k[r.choice(len(k), p=p / p.sum())]


def season_frac(d):
    """+1 in early February, -1 in early August."""
    return math.cos(2 * math.pi * (d.timetuple().tm_yday - 36) / 365.0)


def make(r, want=None):
    """want: dict of demands from the fault, e.g. several, tank, vented, strainer, two, glycol, age=(lo,hi) days, mode."""
    want = want or {}
    s = Sys(r)
    s.tons = pick(r, {2: 1, 3: 3, 4: 3, 5: 2.5, 6: 0.7})
    s.climate = pick(r, {"cold": 4, "mid": 4, "warm": 2})
    s.tg = {"cold": 47, "mid": 54, "warm": 63}[s.climate] + r.uniform(-2.5, 2.5)
    s.kind = pick(r, {"vertical": 6, "horizontal": 3.5, "pond": 0.5})
    fk = {
        "cold": {"propylene_glycol": 5, "methanol": 3, "ethanol": 1.7, "ethylene_glycol": 0.5},
        "mid": {
            "propylene_glycol": 5,
            "methanol": 2.5,
            "ethanol": 1.5,
            "ethylene_glycol": 0.5,
            "water": 0.3,
        },
        "warm": {"propylene_glycol": 3, "methanol": 1, "ethanol": 0.7, "water": 4},
    }[s.climate]
    if want.get("antifreeze"):
        fk.pop("water", None)
    if want.get("glycol"):
        fk = {k: v for k, v in fk.items() if "glycol" in k}
    kind = pick(r, fk)
    # --- date, age
    mode = want.get("mode") or pick(r, {"heating": 6, "cooling": 3.5})
    month = int(r.choice([11, 12, 1, 2, 3])) if mode == "heating" else int(r.choice([6, 7, 8, 9]))
    s.date = dt.date(2026 if month < 11 else 2025, month, int(r.integers(1, 28)))
    s.mode = mode
    lo, hi = want.get("age", (20, 3600))
    s.age = int(round(math.exp(r.uniform(math.log(lo), math.log(hi)))))
    s.installed = s.date - dt.timedelta(days=s.age)
    if want.get("install_months"):
        for _ in range(400):
            s.age = int(round(math.exp(r.uniform(math.log(lo), math.log(hi)))))
            s.installed = s.date - dt.timedelta(days=s.age)
            if s.installed.month in want["install_months"]:
                break
        else:
            return make(r, want)
    # --- unit
    s.rated_flow = round(s.tons * r.choice([2.5, 2.75, 3.0]) * 2) / 2
    s.min_flow = round(s.rated_flow * r.uniform(0.68, 0.78) * 2) / 2
    s.cap_h = s.tons * 12000 * r.uniform(0.76, 0.88)
    s.cap_c = s.tons * 12000 * r.uniform(0.97, 1.05)
    s.cop_h, s.cop_c = r.uniform(3.3, 4.0), r.uniform(4.3, 5.3)
    s.hx = pick(r, {"coaxial": 6, "brazed_plate": 4})
    s.hx_dp = r.uniform(2.6, 5.2)  # psi, water 70 degF, rated flow
    s.appr_h = 6 + r.uniform(0, 3) if s.hx == "brazed_plate" else 9 + r.uniform(0, 3)
    s.appr_c = 4 + r.uniform(0, 3) if s.hx == "brazed_plate" else 6 + r.uniform(0, 4)
    s.guard = 30 if kind == "water" else 15
    s.flow_switch = r.random() < 0.55
    s.trip_flow = s.min_flow * r.uniform(0.72, 0.92)
    # --- ground
    s.pipe = "3/4"
    per_ton = {
        "vertical": r.uniform(330, 420),
        "horizontal": r.uniform(520, 720),
        "pond": r.uniform(300, 400),
    }[s.kind]
    if s.climate == "cold":
        per_ton *= 1.1
    n = s.tons
    style = pick(r, {"one_per_ton": 6, "one_inch": 2.5, "single": 1.2})
    if want.get("several") and style == "single":
        style = "one_per_ton"
    if style == "single" and s.tons > 3:
        style = "one_inch"
    if style == "one_inch":
        s.pipe, n = "1", max(2, int(round(s.tons * 0.6)))
    if style == "single":
        s.pipe, n = "1-1/4", 1
        per_ton *= 0.85
    s.n = n
    L = round(per_ton * s.tons / n / 10) * 10
    s.lens = [float(L)] * n
    s.per_ton = per_ton
    s.return_style = pick(r, {"reverse": 5, "direct": 3 if n > 1 else 1})
    s.head_size = "1-1/4" if s.tons <= 4 else pick(r, {"1-1/2": 2, "2": 3})
    if style == "single":
        s.head_size = "1-1/4"
    s.head_len = float(round(r.uniform(50, 180) / 10) * 10)  # out and back
    s.in_size = "1-1/4" if s.tons > 3 else pick(r, {"1": 1, "1-1/4": 2})
    s.in_len = float(round(r.uniform(15, 60) / 5) * 5)
    s.manifold_in = s.n > 1 and r.random() < 0.5  # manifold with valves indoors
    s.circ_meters = s.manifold_in and r.random() < 0.3
    # --- fluid
    low_design = {"cold": 30, "mid": 35, "warm": 45}[s.climate] + r.uniform(-2, 3)
    s.design_ewt = low_design
    s.design_ewt_c = min({"cold": 72, "mid": 80, "warm": 89}[s.climate] + r.uniform(-4, 4), 95)
    if kind == "water":
        s.design_ewt = max(s.design_ewt, 46)
        s.fluid = Fluid("water", 0)
    else:
        target = s.design_ewt - 7 - 10 - r.uniform(0, 4)
        v = fl.vol_for_freeze(kind, target)
        if "glycol" in kind:
            v = max(v, 18)
        s.fluid = Fluid(kind, round(max(v, 8)))
    s.fluid_rec = Fluid(s.fluid.kind, s.fluid.vol)
    s.volume = (
        sum(s.lens) * hy.GAL100[s.pipe]
        + s.head_len * hy.GAL100[s.head_size]
        + s.in_len * hy.GAL100[s.in_size]
    ) / 100 + 2
    # --- flow centre, pumps
    if want.get("tank"):
        s.fc = "sealed_with_tank"
    elif want.get("vented"):
        s.fc = "non_pressurised"
    elif want.get("plain_sealed"):
        s.fc = "sealed"
    else:
        fc = {"sealed": 6, "sealed_with_tank": 1.2, "non_pressurised": 2.6}
        if want.get("sealed"):
            fc.pop("non_pressurised")
        s.fc = pick(r, fc)
    s.strainer = bool(want.get("strainer")) or r.random() < 0.55
    s.strainer_dp = r.uniform(0.15, 0.45)  # clean, psi at rated flow
    s.check = r.random() < 0.5 or bool(want.get("check"))
    size_pumps(s, r, want)
    # --- ground thermal: swing of the mean fluid temperature at design
    q, _ = flow_clean(s, 38 if mode == "heating" else 75)
    habits(s, r)
    return s


def resistance(s, t, fluid=None):
    """Returns hx k, function pieces: fixed pipes head(q) in ft for a clean system (no circuits)."""
    f = fluid or s.fluid
    vr = (fl.visc(f.kind, f.vol, t) / 9.8e-4) ** 0.22 * (fl.rho(f.kind, f.vol, t) / 998) ** 0.78
    rho = fl.rho(f.kind, f.vol, t) / 998

    def hxf(q):
        return s.hx_dp * (np.asarray(q, float) / s.rated_flow) ** 1.8 * vr * 2.31 / rho

    def fixed(q):
        return hy.pipe_loss(q, s.head_size, s.head_len, f, t) + hy.pipe_loss(
            q, s.in_size, s.in_len * 1.5, f, t
        )

    def strn(q):
        return (
            (s.strainer_dp * (np.asarray(q, float) / s.rated_flow) ** 2 * 2.31)
            if s.strainer
            else 0 * np.asarray(q, float)
        )

    return hxf, fixed, strn


def flow_clean(s, t, pumps=None):
    hxf, fixed, strn = resistance(s, t)
    cir = hy.Circuits(s.lens, s.pipe, s.fluid, t)
    qt, ht = cir.solve_table()
    p = pumps or s.pumps

    def sysf(q):
        return hxf(q) + fixed(q) + strn(q) + np.interp(q, qt, ht)

    def pf(q):
        if s.series:
            return sum(hy.pump_head(q, a, b, speed=sp) for _, a, b, _, sp in p)
        return hy.pump_head(np.asarray(q) / len(p), p[0][1], p[0][2], speed=p[0][4])

    q = hy.meet(sysf, pf, 60)
    return q, sysf


def size_pumps(s, r, want):
    s.series = True
    tmin = max(s.design_ewt - 3, 27)
    combos = [(n, m) for n in (1, 2) for m in PUMPS]
    if want.get("two"):
        combos = [x for x in combos if x[0] == 2]
    ok = []
    for n, m in combos:
        p = [(m[0], m[1], m[2], m[3], 1.0)] * n
        q, _ = flow_clean(s, tmin, p)
        ok.append((q / s.rated_flow, n, m))
    good = [x for x in ok if x[0] >= 0.97]
    good.sort(key=lambda x: x[0])
    if want.get("weak_pump"):
        bad = [x for x in ok if 0.45 < x[0] < 0.84]
        good = bad or sorted(ok)[:1]
        x = good[r.integers(len(good))]
    elif good:
        x = good[min(len(good) - 1, int(r.choice([0, 0, 0, 1])))]
    else:
        x = max(ok, key=lambda x: x[0])
    s.design_ratio = x[0]
    m = x[2]
    s.pumps = [(m[0], m[1], m[2], m[3], 1.0) for _ in range(x[1])]
    if x[1] == 2 and (want.get("parallel") or r.random() < 0.12):
        s.series = False
        q, _ = flow_clean(s, tmin)
        if q / s.rated_flow < 0.95 and not want.get("parallel"):
            s.series = True
    s.speeds = r.random() < 0.4  # three-speed circulators; design speed = full


def habits(s, r):
    """What the crew really did when filling; the record of it is another matter."""
    h = {}
    h["flush_recorded"] = r.random() < 0.55
    h["flushed"] = r.random() < 0.97
    need = max(
        hy.ID[s.pipe] ** 2 * 4.9, hy.ID[s.head_size] ** 2 * 4.9 / 1
    )  # gpm at 2 ft/s in one pipe
    v = r.uniform(2.1, 3.2) if r.random() < 0.8 else r.uniform(1.3, 2.0)
    h["velocity"] = v
    h["hours"] = r.uniform(2, 4) if r.random() < 0.7 else r.uniform(0.4, 1.8)
    h["cart_hp"] = 2.0 if v > 2.6 else (1.5 if v >= 2 else float(r.choice([0.75, 1.0])))
    h["singly"] = s.manifold_in and r.random() < 0.4
    if h["singly"]:
        h["hours"] = s.n * r.uniform(0.3, 0.6)
    h["isolated"] = r.random() < 0.85
    h["filtered"] = r.random() < 0.8
    h["bled"] = r.random() < 0.88
    h["source"] = pick(r, {"mains": 6, "well": 3, "open_water": 0.2})
    h["water_tested"] = r.random() < 0.3
    h["relaxed"] = r.random() < 0.7
    h["mix_h"] = r.uniform(3, 5) if r.random() < 0.65 else r.uniform(0.7, 2.8)
    h["conc_checked"] = r.random() < 0.7
    # the charge: mostly at installation; temperature of the fluid then
    h["charge_date"] = s.installed
    h["charge_t"] = loop_idle_t(s, s.installed) + r.uniform(-3, 6)
    if s.fc == "sealed":
        h["charge_p"] = r.uniform(48, 66)
    elif s.fc == "sealed_with_tank":
        h["charge_p"] = r.uniform(22, 40)
    else:
        h["charge_p"] = 0.0
    h["precharge"] = (
        r.uniform(0.82, 0.95) * (h["charge_p"] - 3) if s.fc == "sealed_with_tank" else None
    )
    h["tank_gal"] = float(r.choice([4.4, 7.6])) if s.fc == "sealed_with_tank" else None
    s.h = h
    s.thorough = pick(r, {0.12: 3, 0.5: 4, 0.92: 3})
    s.hard_water = r.random() < 0.3
    s.iron_house = r.random() < (0.2 if h["source"] == "well" else 0.03)


def loop_idle_t(s, d):
    amp = {"vertical": 1.5, "horizontal": 7, "pond": 10}[s.kind]
    return s.tg - amp * math.cos(2 * math.pi * (d.timetuple().tm_yday - 60) / 365.0)
