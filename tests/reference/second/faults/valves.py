"""What valves and crossed pipes do."""

from .common import fault, lohi, when


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
