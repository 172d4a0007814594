"""The instruments of a visit, and what tells that one of them lies."""


class Kit:
    """The instruments of this visit; one of them may lie."""

    def __init__(self, r, liar=None):
        sg = 1 if r.random() < 0.5 else -1
        self.liar, self.sg = liar, sg
        self.r = r
        self.off = {
            "dial_gauge": r.normal(0, 1),
            "digital_gauge": r.normal(0, 0.7),
            "differential_gauge": r.normal(0, 0.05),
            "port_thermometer": r.normal(0, 0.6),
            "clamp_thermometer": r.normal(0, 0.8),
            "refractometer": r.normal(0, 1),
            "hydrometer": r.normal(0, 0.001),
            "unit_display": r.normal(0, 0.7),
            "test_kit": 0.0,
        }
        self.mul = {"flow_meter": r.normal(1, 0.03), "power_meter": r.normal(1, 0.02)}
        add = {
            "dial_gauge": r.uniform(11, 20),
            "digital_gauge": r.uniform(11, 20),
            "differential_gauge": r.uniform(1.5, 4),
            "port_thermometer": r.uniform(6, 10),
            "clamp_thermometer": r.uniform(6, 10),
            "refractometer": r.uniform(8, 14),
            "hydrometer": r.uniform(0.010, 0.018),
            "unit_display": r.uniform(6, 10),
            "test_kit": 2.0,
        }
        if liar in add:
            self.off[liar] += sg * add[liar]
        if liar in ("flow_meter", "power_meter"):
            self.mul[liar] *= 1.55 if sg > 0 else 0.6

    def rd(self, inst, v, sd, rel=0.0):
        n = self.r.normal()
        m = self.mul.get(inst, 1.0)
        return v * m * (1 + rel * self.r.normal()) + self.off.get(inst, 0) + sd * n


LIARS = [
    "dial_gauge",
    "digital_gauge",
    "differential_gauge",
    "port_thermometer",
    "clamp_thermometer",
    "flow_meter",
    "refractometer",
    "hydrometer",
    "power_meter",
    "test_kit",
    "unit_display",
]
LIE_SIGN = {
    "dial_gauge": "second-gauge-disagrees",
    "digital_gauge": "digital-gauge-not-zero",
    "differential_gauge": "differential-gauge-not-zero",
    "port_thermometer": "port-thermometer-ice-wrong",
    "clamp_thermometer": "clamp-thermometer-ice-wrong",
    "flow_meter": "meter-disagrees-with-bucket",
    "refractometer": "refractometer-water-wrong",
    "hydrometer": "hydrometer-water-wrong",
    "power_meter": "power-meter-disagrees",
    "test_kit": "test-kit-control-fails",
    "unit_display": "display-thermometer-disagree",
}


def Q(v, u, nd=1):
    return {"value": round(float(v), nd), "unit": u}
