"""What instruments do."""

from .common import fault, lohi, when


@fault("dial-gauge-lies", 1.5, plain_sealed=True, age=(20, 3000))
def _(s, st, sev, r):
    st.dial_off = lohi(sev, 8, 45) * (-1 if r.random() < 0.75 else 1)
    s.dial = True
    when(st, r, sudden=3, slow=2, start=2, unknown=3)


@fault("unit-display-lies", 0.7, age=(20, 3000))
def _(s, st, sev, r):
    st.disp_off = lohi(sev, 4, 14) * (-1 if s.mode == "heating" else 1)
    when(st, r, sudden=4, slow=2, start=2, unknown=3)
