"""What the unit does."""

from .common import fault, lohi, when


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
