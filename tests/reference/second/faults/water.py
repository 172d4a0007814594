"""What the fill water does."""

from .common import fault, lohi, when


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
