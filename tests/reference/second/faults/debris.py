"""What dirt does."""

from .common import fault, lohi, when


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
