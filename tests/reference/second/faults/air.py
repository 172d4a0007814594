"""What air does."""

from .common import fault, lohi, put_air, when


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
