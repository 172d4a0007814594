"""What each fault does to the true state.  inject(s, st, sev, r); sev 0..1.  Shares are one technician's judgement."""

import datetime as dt
import numpy as np
import fluids as fl
import world as w

F = {}  # id -> (share, want, function)


def fault(name, share, **want):
    def deco(fn):
        F[name] = (share, want, fn)
        return fn

    return deco


def lohi(sev, a, b):
    return a + (b - a) * sev


def when(st, r, **p):
    k = list(p)
    v = np.array([p[x] for x in k], float)
    st.onset = {
        "start": "since-start-up",
        "slow": "came-on-slowly",
        "sudden": "came-on-suddenly",
        "unknown": None,
    }[k[r.choice(len(k), p=v / v.sum())]]


def put_air(s, st, sev, r, lo=0.15, hi=1.6, moving=0.6):
    st.air_gal = lohi(sev, lo, hi) / 100 * s.volume
    st.air_moving = min(1, moving + 0.5 * (sev - 0.5))
    st.dissolved = r.uniform(0.02, 0.16) / 100 * min(1, s.age / 30)
    if s.fc == "non_pressurised":
        st.dissolved *= 0.3


@fault("air-left-in-circuit", 9, age=(4, 400))
def _(s, st, sev, r):
    put_air(s, st, sev, r)
    i = r.integers(s.n)
    st.air_circ[i] = lohi(sev, 0.5, 7) * r.uniform(0.5, 1.2)
    if r.random() < 0.4:
        s.h["velocity"] = r.uniform(1.3, 1.95)
    when(st, r, start=6, sudden=1, slow=1, unknown=2)
    st.sign["came-back-after-purge"] = 0.45


@fault("flush-too-weak", 8, age=(4, 400))
def _(s, st, sev, r):
    s.h["velocity"] = r.uniform(0.7, 1.9) if r.random() < 0.75 else s.h["velocity"]
    if s.h["velocity"] >= 2 or r.random() < 0.5:
        s.h["hours"] = r.uniform(0.2, 1.2)
    s.h["cart_hp"] = (
        float(r.choice([0.5, 0.75, 1.0, 1.5], p=[0.2, 0.3, 0.35, 0.15]))
        if s.h["velocity"] < 2
        else 1.5
    )
    s.h["singly"] = False
    s.h["flush_recorded"] = r.random() < 0.4
    s.h["filtered"] = r.random() < 0.5
    put_air(s, st, sev, r, 0.2, 2.2)
    for i in range(s.n):
        if r.random() < 0.6:
            st.air_circ[i] = lohi(sev, 0.4, 6) * r.uniform(0.3, 1.3)
    if r.random() < 0.6:
        st.sign["sample-has-grit"] = 0.6
        st.str_mult *= lohi(sev, 1.5, 6)
        st.sign["strainer-screen-dirty"] = 0.75
        st.hx_mult *= r.uniform(1, 1.25)
    when(st, r, start=7, slow=1, unknown=2)
    st.sign["came-back-after-purge"] = 0.5


@fault("circulators-not-bled", 4, age=(1, 60))
def _(s, st, sev, r):
    s.h["bled"] = False
    i = r.integers(len(st.head))
    both = r.random() < 0.5
    for j in range(len(st.head)):
        if j == i or both:
            st.head[j] = lohi(sev, 0.75, 0.08)
            st.pw[j] *= lohi(sev, 0.85, 0.5)
    st.body = lohi(sev, 35, 95)
    st.sign["circulator-vent-gives-air"] = 0.9
    st.sign["circulator-rattles"] = lohi(sev, 0.5, 0.75)
    st.sign["gurgling"] = 0.35
    st.sign["flow-unsteady"] = lohi(sev, 0.4, 0.7)
    st.sign["circulator-sounds-rough"] = 0.25
    st.air_gal = 0.02 * s.volume / 100
    when(st, r, start=8, unknown=2)


@fault("circuit-valved-off", 2, several=True, age=(3, 500))
def _(s, st, sev, r):
    i = r.integers(s.n)
    st.k_circ[i] = 1e4
    st.sign["circuit-valve-found-shut"] = 0.95 if s.manifold_in else 0.25
    st.sign["_dead"] = 1
    when(st, r, start=6, sudden=2, unknown=2)


@fault("circuit-kinked", 1.3, several=True, age=(5, 800))
def _(s, st, sev, r):
    i = r.integers(s.n)
    st.k_circ[i] = 10 ** lohi(sev, 0.3, 2.3)
    when(st, r, start=7, sudden=1.5, unknown=1.5)


@fault("circuit-air-locked", 4, several=True, age=(3, 300))
def _(s, st, sev, r):
    i = r.integers(s.n)
    st.air_circ[i] = lohi(sev, 8, 40)
    put_air(s, st, sev * 0.6, r, 0.15, 1.2, 0.2)
    st.dissolved *= 0.4
    if r.random() < 0.5:
        s.h["velocity"] = r.uniform(1.2, 1.95)
    if s.n > 3 and sev > 0.75:
        st.air_circ[(i + 1) % s.n] = lohi(sev, 6, 30)
    when(st, r, start=6, sudden=2, unknown=2)


@fault("circuits-unbalanced", 1.3, several=True, age=(60, 2500))
def _(s, st, sev, r):
    x = lohi(sev, 0.25, 0.8)
    f = 1 + x * np.linspace(-1, 1, s.n)
    r.shuffle(f)
    st.lens = [round(a * b / 10) * 10 for a, b in zip(s.lens, f)]
    s.lens_rec = st.lens
    s.return_style = "direct"
    when(st, r, start=6, unknown=3)


@fault("debris-left-in-loop", 3, age=(3, 500))
def _(s, st, sev, r):
    s.h["filtered"] = r.random() < 0.35
    st.sign["sample-has-grit"] = lohi(sev, 0.55, 0.9)
    if s.strainer:
        st.str_mult *= lohi(sev, 2, 60)
        st.sign["strainer-screen-dirty"] = 0.92
        st.sign["strainer-loads-again"] = lohi(sev, 0.5, 0.9)
    st.hx_mult *= lohi(sev, 1.05, 2.2)
    st.sign["_chips"] = 1
    if r.random() < 0.5:
        st.sign["circulator-rattles"] = 0.4
        st.sign["circulator-sounds-rough"] = 0.45
        st.head[0] *= lohi(sev, 0.97, 0.8)
    when(st, r, start=4, slow=3, sudden=1, unknown=2)


@fault("strainer-loaded", 4, strainer=True, age=(10, 2500))
def _(s, st, sev, r):
    st.str_mult *= 10 ** lohi(sev, 0.8, 2.1)
    st.sign["strainer-screen-dirty"] = 0.97
    st.sign["sample-has-grit"] = 0.2
    when(st, r, slow=6, sudden=1, start=1, unknown=2)


@fault("exchanger-loaded", 2.5, age=(10, 2500))
def _(s, st, sev, r):
    st.hx_mult *= lohi(sev, 1.5, 9)
    st.scale_fouling = lohi(sev, 0, 3)
    st.sign["sample-has-grit"] = 0.35
    if s.strainer:
        st.str_mult *= r.uniform(1, 3)
    when(st, r, slow=5, sudden=2, start=1, unknown=2)


@fault("unit-not-isolated-in-flush", 1.5, age=(2, 250))
def _(s, st, sev, r):
    s.h["isolated"] = False
    st.hx_mult *= lohi(sev, 1.5, 8)
    st.sign["sample-has-grit"] = 0.5
    when(st, r, start=7, slow=1, unknown=2)


@fault("antifreeze-too-weak", 4, antifreeze=True, mode="heating", age=(20, 1500))
def _(s, st, sev, r):
    st.fluid.vol = max(s.fluid.vol - lohi(sev, 0.3, 0.95) * s.fluid.vol, 0)
    s.h["conc_checked"] = r.random() < 0.25
    s.h["conc_ok_rec"] = False
    if r.random() < 0.35:
        st.sign["topped-up-often"] = 0.7
    st.sign["worse-when-cold"] = 0.8
    when(st, r, start=3, slow=2, sudden=3, unknown=2)


@fault("antifreeze-too-strong", 2, antifreeze=True, mode="heating", age=(10, 900))
def _(s, st, sev, r):
    st.fluid.vol = min(s.fluid.vol + lohi(sev, 8, 28), 50)
    s.h["conc_checked"] = r.random() < 0.3
    st.sign["worse-when-cold"] = 0.8
    when(st, r, start=7, unknown=3)


@fault("antifreeze-unmixed", 2, antifreeze=True, mode="heating", age=(1, 25))
def _(s, st, sev, r):
    st.unmixed = lohi(sev, 0.3, 0.9) * s.fluid.vol
    s.h["mix_h"] = r.uniform(0.2, 2)
    s.h["conc_checked"] = r.random() < 0.2
    st.sign["trips-early-then-settles"] = 0.75
    when(st, r, start=7, sudden=1, unknown=2)


@fault("antifreeze-wrong-kind", 1, antifreeze=True, age=(15, 1500))
def _(s, st, sev, r):
    other = [
        k
        for k in ("propylene_glycol", "ethylene_glycol", "methanol", "ethanol")
        if k != s.fluid.kind
    ]
    st.fluid.kind = other[r.integers(3)] if sev > 0.5 else s.fluid.kind
    st.other_kind = other[r.integers(3)]
    st.fluid.vol = max(s.fluid.vol * r.uniform(0.5, 1.3), 6)
    st.sign.update(
        {
            "sample-foams": 0.6,
            "sample-smells": 0.6,
            "label-disagrees": 0.7,
            "other-fluid-added": 0.5,
            "sample-discoloured": 0.3,
            "wet-or-crusted-fittings": 0.3,
            "_sgmix": 1,
        }
    )
    when(st, r, start=3, sudden=2, slow=1, unknown=3)


@fault("antifreeze-degraded", 1, glycol=True, antifreeze=True, age=(1500, 5500))
def _(s, st, sev, r):
    st.ph = lohi(sev, 7.2, 5.2)
    st.iron = lohi(sev, 0.3, 3)
    st.sign.update(
        {
            "sample-discoloured": lohi(sev, 0.6, 0.95),
            "sample-smells": lohi(sev, 0.4, 0.8),
            "sample-foams": 0.35,
            "black-magnetic-dust": 0.3,
            "orange-mud": 0.25,
        }
    )
    st.fluid.vol *= r.uniform(0.8, 1)
    st.hx_mult *= lohi(sev, 1, 1.4)
    st.scale_fouling = lohi(sev, 0, 3)
    if r.random() < 0.4:
        st.sign["wet-or-crusted-fittings"] = 0.6
        st.leak_gal = 0.002 * s.volume
    when(st, r, slow=6, start=0.2, unknown=3)


@fault("loop-too-short", 3, age=(60, 2500))
def _(s, st, sev, r):
    x = lohi(sev, 0.82, 0.5)
    st.R *= 1 / x
    s.lens = [round(a * x / 10) * 10 for a in s.lens]
    st.lens = list(s.lens)
    s.volume *= x
    when(st, r, start=5, slow=3, unknown=2)


@fault("ground-conducts-poorly", 1.5, age=(60, 2500))
def _(s, st, sev, r):
    st.R *= lohi(sev, 1.2, 2.0)
    st.sign["ewt-falls-fast"] = 0.6 if s.kind == "vertical" else 0.4
    when(st, r, start=6, slow=2, unknown=2)


@fault("dial-gauge-lies", 1.5, plain_sealed=True, age=(20, 3000))
def _(s, st, sev, r):
    st.dial_off = lohi(sev, 8, 45) * (-1 if r.random() < 0.75 else 1)
    s.dial = True
    when(st, r, sudden=3, slow=2, start=2, unknown=3)


@fault("unit-display-lies", 0.7, age=(20, 3000))
def _(s, st, sev, r):
    st.disp_off = lohi(sev, 4, 14) * (-1 if s.mode == "heating" else 1)
    when(st, r, sudden=4, slow=2, start=2, unknown=3)


def leak(s, st, sev, r, days_lo=20):
    age = max((s.date - s.h["charge_date"]).days, 10)
    tops = int(r.integers(0, 4)) if r.random() < 0.6 else 0
    lost = lohi(sev, 0.1, 1.0) / 100 * s.volume if s.fc == "sealed" else lohi(sev, 0.3, 4.0)
    st.topups = tops
    st.topup_gal = tops * lost * r.uniform(0.8, 1.3)
    st.leak_gal = lost + st.topup_gal
    if tops:
        st.sign["topped-up-often"] = min(0.35 + 0.25 * tops, 0.95)
        if s.fluid.kind != "water":
            st.fluid.vol *= 1 - min(st.topup_gal / s.volume, 0.5) * r.choice([0, 1])
    st.leak_rate = lost / max(age / (tops + 1), 5)  # gal/day


@fault("leak-indoors", 6, age=(10, 3000))
def _(s, st, sev, r):
    leak(s, st, sev, r)
    st.sign["wet-or-crusted-fittings"] = 0.88
    when(st, r, slow=5, start=2, sudden=1, unknown=2)


@fault("leak-in-ground", 1.5, age=(10, 3000))
def _(s, st, sev, r):
    leak(s, st, sev, r)
    st.sign["ground-wet-over-loop"] = 0.3 if s.kind == "horizontal" else 0.1
    when(st, r, slow=4, sudden=2, start=2, unknown=2)


@fault("charge-left-too-low", 4, plain_sealed=True, age=(2, 500))
def _(s, st, sev, r):
    s.h["charge_p"] = lohi(sev, 36, 8)
    when(st, r, start=5, slow=2, unknown=3)


@fault("pipe-never-relaxed", 5, plain_sealed=True, age=(2, 400))
def _(s, st, sev, r):
    s.h["relaxed"] = False
    s.h["charge_p"] = r.uniform(38, 58)
    st.relax_rate = lohi(sev, 0.115, 0.17)
    st.restr = (st.restr[0], max(st.restr[1], 0.9))
    when(st, r, slow=5, start=3, unknown=2)


@fault(
    "charged-cold-without-allowance",
    4,
    plain_sealed=True,
    mode="cooling",
    install_months=(11, 12, 1, 2, 3),
    age=(60, 1300),
)
def _(s, st, sev, r):
    s.h["charge_t"] = min(s.h["charge_t"], lohi(sev, 46, 33))
    s.h["charge_p"] = lohi(sev, 52, 36)
    st.sign["noise-worse-in-summer"] = 0.8
    when(st, r, slow=5, sudden=1, start=0.5, unknown=3)


@fault("over-pressurised", 1.5, sealed=True, age=(3, 900))
def _(s, st, sev, r):
    s.h["charge_p"] = lohi(sev, 78, 115) if s.fc == "sealed" else lohi(sev, 50, 75)
    st.relax_rate *= 0.8
    st.pre_err = 0 if s.fc == "sealed" else -(0.85 * s.h["charge_p"]) + 18
    st.sign["relief-valve-weeps"] = lohi(sev, 0.35, 0.9)
    when(st, r, start=5, sudden=2, unknown=3)


@fault("circulator-too-small", 1.5, weak_pump=True, age=(5, 1500))
def _(s, st, sev, r):
    when(st, r, start=7, unknown=3)


@fault("circulator-wrong-speed", 2, age=(3, 1500))
def _(s, st, sev, r):
    s.speeds = True
    st.speed = lohi(sev, 0.85, 0.55)
    st.sign["speed-set-low"] = 0.93
    when(st, r, start=6, sudden=1.5, unknown=3)


@fault("one-circulator-dead", 4, two=True, age=(20, 4000))
def _(s, st, sev, r):
    i = r.integers(2)
    st.dead[i] = True
    st.sign["circulator-not-turning"] = 0.93
    st.sign["circulator-hums"] = 0.3
    st.body = r.uniform(5, 60)
    if not s.check and not s.series:
        st.sign["flow-when-idle"] = 0.3
    when(st, r, sudden=7, slow=1, unknown=2)


@fault("circulator-worn", 4, age=(500, 5500))
def _(s, st, sev, r):
    for j in range(len(st.head)):
        if j == 0 or r.random() < 0.35:
            st.head[j] = lohi(sev, 0.85, 0.3)
            st.pw[j] *= r.uniform(0.7, 1.35)
    st.body = lohi(sev, 30, 75)
    st.sign.update(
        {
            "circulator-sounds-rough": lohi(sev, 0.55, 0.85),
            "circulator-rattles": lohi(sev, 0.4, 0.75),
            "circulator-hums": 0.35,
            "black-magnetic-dust": 0.2,
        }
    )
    when(st, r, slow=7, sudden=1, unknown=2)


@fault("circulators-opposed", 0.7, two=True, age=(1, 200))
def _(s, st, sev, r):
    st.rev[r.integers(2)] = True
    st.sign["circulator-arrows-disagree"] = 0.9
    st.sign["more-flow-with-one-off"] = 0.9
    st.sign["circulator-hums"] = 0.35
    st.sign["valve-slams"] = 0.15
    when(st, r, start=7, sudden=2, unknown=1)


@fault("check-valve-stuck-shut", 1, check=True, age=(20, 3000))
def _(s, st, sev, r):
    st.k_check = 10 ** lohi(sev, 0.25, 1.6) * 5 / s.rated_flow**1.3
    st.sign["check-valve-hot-spot"] = 0.88
    st.sign["valve-slams"] = 0.2
    st.sign["circulator-hums"] = 0.25
    when(st, r, sudden=5, slow=2, start=1, unknown=2)


@fault("check-valve-missing", 1, two=True, parallel=True, age=(10, 3000))
def _(s, st, sev, r):
    s.check = False
    s.series = False
    st.sign.update(
        {
            "flow-when-idle": 0.85,
            "ewt-creeps-when-idle": 0.65,
            "no-check-valve-found": 0.6,
            "valve-slams": 0.35,
        }
    )
    if r.random() < 0.5:
        st.dead[1] = False
        st.byp_ground = lohi(sev, 0.05, 0.35)
        st.sign["_nobypassport"] = 1
    when(st, r, start=5, sudden=2, unknown=3)


@fault("expansion-tank-waterlogged", 1.3, tank=True, age=(100, 4500))
def _(s, st, sev, r):
    st.tank_air = lohi(sev, 0.08, 0.01)
    st.sign.update(
        {
            "tank-rings-full": 0.88,
            "tank-valve-gives-fluid": 0.7,
            "gauge-swings-widely": 0.8,
            "relief-valve-weeps": 0.45,
        }
    )
    when(st, r, slow=3, sudden=2, unknown=3)


@fault("expansion-tank-pre-charge-wrong", 1, tank=True, age=(5, 2500))
def _(s, st, sev, r):
    st.pre_err = lohi(sev, 6, 22) * (1 if r.random() < 0.5 else -1)
    st.pre_err = max(st.pre_err, -s.h["precharge"])
    st.sign["gauge-swings-widely"] = lohi(sev, 0.35, 0.75)
    st.sign["relief-valve-weeps"] = 0.2
    st.sign["tank-rings-full"] = 0.3 if st.pre_err < 0 else 0.03
    when(st, r, start=5, slow=2, unknown=3)


@fault("reservoir-low", 2.5, vented=True, age=(15, 2500))
def _(s, st, sev, r):
    st.level_extra = lohi(sev, 3, 16)
    when(st, r, slow=5, start=1, sudden=1, unknown=3)


@fault("reservoir-draws-air", 1.2, vented=True, age=(3, 2500))
def _(s, st, sev, r):
    st.sign.update({"air-drawn-at-reservoir": 0.9, "came-back-after-purge": 0.65})
    put_air(s, st, sev, r, 0.1, 0.9, 0.85)
    st.level_extra = r.uniform(0, 3.5)
    when(st, r, start=4, slow=2, sudden=1, unknown=3)


@fault("refrigerant-undercharge", 4, age=(5, 4000))
def _(s, st, sev, r):
    st.cap = lohi(sev, 0.88, 0.5)
    st.power = lohi(sev, 0.96, 0.78)
    st.sign["oil-stain"] = 0.5
    st.scale_fouling = lohi(sev, 1, 12) if s.mode == "heating" else 0
    when(st, r, slow=6, start=1, sudden=1, unknown=2)


@fault("expansion-device-fault", 2, age=(30, 4000))
def _(s, st, sev, r):
    st.cap = lohi(sev, 0.88, 0.55)
    st.power = lohi(sev, 0.98, 0.85)
    st.scale_fouling = lohi(sev, 0, 9) if s.mode == "heating" else 0
    when(st, r, sudden=4, slow=3, unknown=3)


@fault("compressor-or-reversing-valve-weak", 2, age=(300, 5500))
def _(s, st, sev, r):
    st.cap = lohi(sev, 0.88, 0.5)
    st.power = r.uniform(0.65, 1.0)
    when(st, r, slow=5, sudden=3, unknown=2)


@fault("air-filter-or-coil-dirty", 5, age=(40, 4000))
def _(s, st, sev, r):
    st.airflow = lohi(sev, 0.78, 0.4)
    st.cap *= lohi(sev, 0.97, 0.85)
    st.power *= lohi(sev, 1.03, 1.25) if s.mode == "heating" else lohi(sev, 1, 0.93)
    st.sign.update({"air-filter-dirty": 0.93, "weak-airflow": lohi(sev, 0.6, 0.93)})
    when(st, r, slow=7, unknown=3)


@fault("flow-switch-or-sensor-fault", 3, age=(5, 4000))
def _(s, st, sev, r):
    st.false_trip = True
    st.sign.update(
        {"switch-sticks": 0.75, "lockout-though-flow-proven": 0.85, "display-disagrees": 0.4}
    )
    if r.random() < 0.4:
        st.disp_off = r.normal(0, 8)
    when(st, r, sudden=6, slow=1, start=2, unknown=2)


@fault("control-fault", 4, age=(2, 4000))
def _(s, st, sev, r):
    kind = r.choice(["aux", "pump-late", "setting"])
    st.control = kind
    if kind == "pump-late":
        st.sign["controls-out-of-step"] = 0.85
    else:
        st.sign["settings-wrong"] = 0.85
        st.sign["controls-out-of-step"] = 0.5
    when(st, r, start=4, sudden=4, unknown=3)


@fault("three-way-valve-mis-set", 3, age=(1, 400))
def _(s, st, sev, r):
    st.sign["valve-not-in-run-position"] = 0.93
    kind = r.choice(["ground", "unit", "throttle"], p=[0.4, 0.3, 0.3])
    if kind == "ground":
        st.byp_ground = lohi(sev, 0.2, 0.75)
        st.sign["port-temperatures-disagree"] = 0.85
    elif kind == "unit":
        st.byp_unit = lohi(sev, 0.2, 0.75)
        st.sign["port-temperatures-disagree"] = 0.85
    else:
        st.k_valve = 10 ** lohi(sev, -0.2, 1.3) * 12 / s.rated_flow**2
    when(st, r, start=7, sudden=2, unknown=2)


@fault("isolation-valve-part-closed", 3, age=(1, 2500))
def _(s, st, sev, r):
    st.k_valve = 10 ** lohi(sev, -0.1, 1.5) * 12 / s.rated_flow**2
    looks_open = r.random() < 0.2
    st.sign["isolation-valve-not-open"] = 0.1 if looks_open else 0.95
    st.sign["drop-across-open-valve"] = 0.9 if looks_open else 0.25
    when(st, r, start=5, sudden=4, unknown=2)


@fault("supply-return-crossed", 0.7, age=(1, 400))
def _(s, st, sev, r):
    st.crossed = True
    st.cap *= lohi(sev, 0.95, 0.82)
    st.power *= 1.05
    st.sign.update({"split-sign-reversed": 0.92, "crossed-at-unit": 0.92})
    when(st, r, start=8, unknown=2)


@fault("scaling-fill-water", 0.7, age=(300, 4500))
def _(s, st, sev, r):
    s.hard_water = True
    s.h["water_tested"] = False
    s.h["source"] = "well" if r.random() < 0.6 else "mains"
    st.scale_fouling = lohi(sev, 3, 14)
    st.hx_mult *= lohi(sev, 1.15, 2.6)
    st.cap *= lohi(sev, 0.97, 0.85)
    st.water = "scaling"
    st.sign["scale-on-parts"] = lohi(sev, 0.65, 0.95)
    st.sign["sample-has-grit"] = 0.25
    when(st, r, slow=8, unknown=2)


@fault("iron-fill-water", 1, age=(120, 4000))
def _(s, st, sev, r):
    s.h["water_tested"] = False
    s.h["source"] = "well"
    s.iron_house = r.random() < 0.85
    st.iron = lohi(sev, 0.9, 8)
    st.water = "iron"
    st.sign["orange-mud"] = lohi(sev, 0.7, 0.95)
    st.sign["sample-discoloured"] = 0.4
    st.hx_mult *= lohi(sev, 1.1, 3)
    st.scale_fouling = lohi(sev, 1, 6)
    if s.strainer:
        st.str_mult *= lohi(sev, 1.5, 30)
        st.sign["strainer-screen-dirty"] = 0.85
        st.sign["strainer-loads-again"] = 0.6
    when(st, r, slow=8, unknown=2)


@fault("corrosion", 0.9, age=(500, 5500))
def _(s, st, sev, r):
    st.ph = lohi(sev, 7.0, 5.2)
    st.iron = lohi(sev, 0.8, 6)
    st.water = "corrosive" if r.random() < 0.5 else None
    st.sign.update(
        {
            "black-magnetic-dust": lohi(sev, 0.65, 0.92),
            "sample-discoloured": lohi(sev, 0.5, 0.9),
            "orange-mud": 0.3,
            "wet-or-crusted-fittings": 0.35,
            "circulator-sounds-rough": 0.3,
            "circulator-rattles": 0.2,
        }
    )
    st.head[0] *= lohi(sev, 0.97, 0.75)
    st.hx_mult *= lohi(sev, 1, 1.6)
    if s.strainer:
        st.str_mult *= lohi(sev, 1.2, 15)
        st.sign["strainer-screen-dirty"] = 0.7
    when(st, r, slow=8, unknown=2)


@fault("biological-fouling", 0.8, age=(250, 4500))
def _(s, st, sev, r):
    if "glycol" in s.fluid.kind:
        st.fluid.vol = min(st.fluid.vol, r.uniform(8, 18))
    st.ph = lohi(sev, 7.6, 6.0)
    st.sign.update(
        {
            "slime-on-screen": lohi(sev, 0.65, 0.92),
            "sample-smells": lohi(sev, 0.55, 0.85),
            "sample-discoloured": 0.55,
            "orange-mud": 0.15,
            "sample-foams": 0.2,
        }
    )
    st.hx_mult *= lohi(sev, 1.1, 2.5)
    st.scale_fouling = lohi(sev, 1, 6)
    if s.strainer:
        st.str_mult *= lohi(sev, 1.5, 25)
        st.sign["strainer-screen-dirty"] = 0.85
        st.sign["strainer-loads-again"] = 0.5
    when(st, r, slow=8, unknown=2)


# nothing wrong
N = {
    "ordinary-relaxation": (4, dict(plain_sealed=True, age=(3, 500))),
    "seasonal-swing": (4, dict(plain_sealed=True, age=(150, 2500))),
    "none": (2, dict()),
}
