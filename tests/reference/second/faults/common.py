"""The list of faults, and what they share."""

import numpy as np

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


# nothing wrong
N = {
    "ordinary-relaxation": (4, dict(plain_sealed=True, age=(3, 500))),
    "seasonal-swing": (4, dict(plain_sealed=True, age=(150, 2500))),
    "none": (2, dict()),
}
