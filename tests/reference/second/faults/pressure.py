"""What leaks and a wrong charge do."""

from .common import fault, lohi, when


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
