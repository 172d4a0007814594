"""What the ground does."""

from .common import fault, lohi, when


@fault("loop-too-short", 3, age=(60, 2500))
def _(s, st, sev, r):
    x = lohi(sev, 0.82, 0.5)
    st.R *= 1 / x
    s.lens = [round(a * x / 10) * 10 for a in s.lens]
    st.lens = list(s.lens)
    s.volume *= x
    when(st, r, start=5, slow=3, unknown=2)


@fault("ground-conducts-poorly", 1.5, age=(60, 2500))
def _(s, st, sev, r):
    st.R *= lohi(sev, 1.2, 2.0)
    st.sign["ewt-falls-fast"] = 0.6 if s.kind == "vertical" else 0.4
    when(st, r, start=6, slow=2, unknown=2)
