"""What circuits do."""

import numpy as np

from .common import fault, lohi, put_air, when


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
