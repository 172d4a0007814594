"""What tanks and reservoirs do."""

from .common import fault, lohi, put_air, when


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
