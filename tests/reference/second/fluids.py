"""Fluid properties, rough fits to published tables (volume per cent in, degF in)."""

import numpy as np

FREEZE = {  # vol % -> degF
    "propylene_glycol": ([0, 10, 15, 20, 25, 30, 35, 40, 50], [32, 28, 25, 20, 16, 9, 3, -5, -28]),
    "ethylene_glycol": ([0, 10, 15, 20, 25, 30, 35, 40, 50], [32, 25, 21, 16, 11, 4, -3, -12, -34]),
    "methanol": ([0, 5, 10, 15, 20, 25, 30, 40], [32, 28, 23, 17, 11, 4, -4, -21]),
    "ethanol": ([0, 8.5, 14, 17, 20.2, 24.8, 29.5, 40], [32, 26.6, 23, 21, 18.5, 12.9, 6.8, -9]),
    "water": ([0, 1], [32, 32]),
}
SG = {
    "propylene_glycol": ([0, 10, 20, 30, 40], [1.000, 1.006, 1.017, 1.024, 1.032]),
    "ethylene_glycol": ([0, 10, 20, 30, 40], [1.000, 1.013, 1.028, 1.043, 1.058]),
    "methanol": ([0, 5, 10, 15, 20, 25, 30], [1.000, 0.993, 0.986, 0.980, 0.974, 0.968, 0.963]),
    "ethanol": (
        [0, 8.5, 14, 17, 20.2, 24.8, 29.5],
        [1.000, 0.9866, 0.9801, 0.9767, 0.9734, 0.9682, 0.9628],
    ),
    "water": ([0, 1], [1.0, 1.0]),
}
PURE = {
    "propylene_glycol": 1.036,
    "ethylene_glycol": 1.113,
    "methanol": 0.792,
    "ethanol": 0.789,
    "water": 1.0,
}
# ln(mu/mu_water) at 0 degC = a*w + b*w^2 ; slope with temperature
VISC = {
    "propylene_glycol": (0.0420, 0.00013, 0.0145),
    "ethylene_glycol": (0.0285, 0.00003, 0.0080),
    "methanol": (0.0335, -0.00022, 0.0120),
    "ethanol": (0.0590, -0.0004, 0.0135),
    "water": (0, 0, 0),
}
HEAT = {
    "propylene_glycol": ([0, 20, 25, 30, 45], [504, 480, 475, 469, 445]),
    "ethylene_glycol": ([0, 20, 25, 30, 45], [504, 475, 467, 457, 425]),
    "methanol": ([0, 15, 20, 30], [504, 487, 473, 448]),
    "ethanol": ([0, 20, 25, 35], [504, 510, 497, 465]),
    "water": ([0, 1], [504, 504]),
}
BETA25 = {
    "propylene_glycol": (2.8, 4.0),
    "ethylene_glycol": (2.4, 3.6),
    "methanol": (2.8, 4.0),
    "ethanol": (3.0, 4.5),
    "water": (0.17, 2.07),
}  # 1e-4/K at 5 and 20 degC, usual strength


def c(f):
    return (f - 32) / 1.8


def mass(kind, v):
    r = PURE[kind]
    v = v / 100
    return 100 * v * r / (v * r + (1 - v)) if v > 0 else 0.0


def freeze_f(kind, v):
    x, y = FREEZE[kind]
    return float(np.interp(v, x, y))


def vol_for_freeze(kind, f):
    x, y = FREEZE[kind]
    return float(np.interp(-f, [-t for t in y], x))


def sg(kind, v, tf=60):
    x, y = SG[kind]
    return float(np.interp(v, x, y)) * (1 - beta(kind, v, (tf + 60) / 2) * (tf - 60) / 1.8)


def beta(kind, v, tf):
    b5, b20 = BETA25[kind]
    w5, w20 = BETA25["water"]
    k = min(v / 22.0, 1.6) if kind != "water" else 0
    b = np.interp(
        c(tf),
        [-5, 5, 20, 35],
        [
            (-0.7) + k * (b5 - w5 + 0.4),
            w5 + k * (b5 - w5),
            w20 + k * (b20 - w20),
            3.4 + k * (b20 - w20) * 0.9,
        ],
    )
    return float(b) * 1e-4


def visc(kind, v, tf):
    t = max(c(tf), -12)
    mw = 2.414e-5 * 10 ** (247.8 / (t + 273.15 - 140))
    a, b, s = VISC[kind]
    w = mass(kind, v)
    return mw * np.exp((a * w + b * w * w) * (1 - s * t))


def rho(kind, v, tf):
    return 998 * sg(kind, v, tf)


def heat_factor(kind, v):
    x, y = HEAT[kind]
    return float(np.interp(mass(kind, v), x, y))
