"""What circulators and their check valves do."""

from .common import fault, lohi, when


@fault("circulator-too-small", 1.5, weak_pump=True, age=(5, 1500))
def _(s, st, sev, r):
    when(st, r, start=7, unknown=3)


@fault("circulator-wrong-speed", 2, age=(3, 1500))
def _(s, st, sev, r):
    s.speeds = True
    st.speed = lohi(sev, 0.85, 0.55)
    st.sign["speed-set-low"] = 0.93
    when(st, r, start=6, sudden=1.5, unknown=3)


@fault("one-circulator-dead", 4, two=True, age=(20, 4000))
def _(s, st, sev, r):
    i = r.integers(2)
    st.dead[i] = True
    st.sign["circulator-not-turning"] = 0.93
    st.sign["circulator-hums"] = 0.3
    st.body = r.uniform(5, 60)
    if not s.check and not s.series:
        st.sign["flow-when-idle"] = 0.3
    when(st, r, sudden=7, slow=1, unknown=2)


@fault("circulator-worn", 4, age=(500, 5500))
def _(s, st, sev, r):
    for j in range(len(st.head)):
        if j == 0 or r.random() < 0.35:
            st.head[j] = lohi(sev, 0.85, 0.3)
            st.pw[j] *= r.uniform(0.7, 1.35)
    st.body = lohi(sev, 30, 75)
    st.sign.update(
        {
            "circulator-sounds-rough": lohi(sev, 0.55, 0.85),
            "circulator-rattles": lohi(sev, 0.4, 0.75),
            "circulator-hums": 0.35,
            "black-magnetic-dust": 0.2,
        }
    )
    when(st, r, slow=7, sudden=1, unknown=2)


@fault("circulators-opposed", 0.7, two=True, age=(1, 200))
def _(s, st, sev, r):
    st.rev[r.integers(2)] = True
    st.sign["circulator-arrows-disagree"] = 0.9
    st.sign["more-flow-with-one-off"] = 0.9
    st.sign["circulator-hums"] = 0.35
    st.sign["valve-slams"] = 0.15
    when(st, r, start=7, sudden=2, unknown=1)


@fault("check-valve-stuck-shut", 1, check=True, age=(20, 3000))
def _(s, st, sev, r):
    st.k_check = 10 ** lohi(sev, 0.25, 1.6) * 5 / s.rated_flow**1.3
    st.sign["check-valve-hot-spot"] = 0.88
    st.sign["valve-slams"] = 0.2
    st.sign["circulator-hums"] = 0.25
    when(st, r, sudden=5, slow=2, start=1, unknown=2)


@fault("check-valve-missing", 1, two=True, parallel=True, age=(10, 3000))
def _(s, st, sev, r):
    s.check = False
    s.series = False
    st.sign.update(
        {
            "flow-when-idle": 0.85,
            "ewt-creeps-when-idle": 0.65,
            "no-check-valve-found": 0.6,
            "valve-slams": 0.35,
        }
    )
    if r.random() < 0.5:
        st.dead[1] = False
        st.byp_ground = lohi(sev, 0.05, 0.35)
        st.sign["_nobypassport"] = 1
    when(st, r, start=5, sudden=2, unknown=3)
