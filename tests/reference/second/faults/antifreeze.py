"""What the antifreeze does."""

from .common import fault, lohi, when


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
