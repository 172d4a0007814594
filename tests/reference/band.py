"""The seasonal pressure band by Monte Carlo, independent of the engine.

Writes tables/band.json: for each loop the 5, 50 and 95 % quantiles and the
standard deviation of the pressure at a moment, before and after earlier
readings. The model is written out here again in numpy: conservation of mass
with densities from CoolProp 8.0.0 (water: IAPWS-95; solutions: INCOMP, from
Melinder, IIR 2010), the thick-wall closed forms, the PPI modulus table, and an
ideal-gas tank. Readings are taken in by importance sampling, which needs no
straightness. numpy 2.4.6, fixed seed, 400 000 samples (4 000 000 with readings).

Writes tables/band_recharged.json as well: the same loops charged anew after
those readings. What they taught of pipe, ground and fluid stays; the charge is
a new one, with errors of its own. 1 000 000 samples of another fixed seed.

Run from this folder: python band.py [recharged]
"""
import json
import pathlib
import sys

import CoolProp.CoolProp as CP
import numpy as np

TABLES = pathlib.Path(__file__).parent / "tables"
TABLE = TABLES / "band.json"
RECHARGED = TABLES / "band_recharged.json"
PSI, DAY, ATM = 6894.757293168, 86400.0, 101325.0
NU, METAL, MODEL = 0.45, 5.0e-5, 7e3

# PPI Handbook of PE Pipe, chapter 3, tables B.1.1 (PE4xxx) and B.1.2 (from memory).
HOURS = np.log([0.5, 2, 12, 100, 8766, 50 * 8766])
KSI = np.log([82.0, 74, 63, 55, 40, 29])
FAHRENHEIT = [20, 30, 40, 50, 60, 73.4, 80, 90, 100]
FACTOR = [1.81, 1.65, 1.49, 1.32, 1.18, 1.0, 0.93, 0.82, 0.73]


def modulus(seconds, kelvin):
    base = np.exp(np.interp(np.log(seconds / 3600), HOURS, KSI)) * 1e3 * PSI
    return base * np.interp((kelvin - 273.15) * 1.8 + 32, FAHRENHEIT, FACTOR)


def grid(function):
    """Property on a fine grid of temperature, for speed."""
    t = np.linspace(273.2, 303.15, 600)
    v = np.array([function(x) for x in t])
    return lambda x: np.interp(x, t, v)


def properties(loop):
    name, w = loop["fluid"], loop["mass_fraction"]
    code = {"water": None, "propylene-glycol": "MPG", "methanol": "MMA", "ethanol": "MEA"}[name]
    if code is None:
        rho = grid(lambda t: CP.PropsSI("D", "T", t, "P", ATM, "Water"))
    else:
        rho = grid(lambda t: CP.PropsSI("D", "T", t, "P", 1e6, f"INCOMP::{code}[{w}]"))
    kappa = grid(lambda t: CP.PropsSI("isothermal_compressibility", "T", t, "P", ATM, "Water"))
    return rho, kappa


def log_normal(mean, sd, z):
    return mean * np.exp(np.sqrt(np.log1p((sd / mean) ** 2)) * z)


def pressure(loop, z, moment, zt):
    """Gauge pressure, Pa, for samples z (7 rows) at a moment whose temperature is off by zt."""
    rho, kappa = loop["_rho"], loop["_kappa"]
    scale = np.exp(0.15 * z[0])
    alpha = log_normal(1.55e-4, 0.15e-4, z[1])
    r, sr = loop["restraint"]
    held = 0.0 if sr == 0 else 1 / (1 + np.exp(-(np.log(r / (1 - r)) + sr / (r * (1 - r)) * z[2])))
    p0 = (loop["charge_psi"] + loop["charge_psi_u"] * z[4]) * PSI
    t0 = loop["charge_c"] + 273.15 + loop["charge_c_u"] * z[5]
    t1 = moment["c"] + 273.15 + moment["c_u"] * zt
    load0 = 1800.0
    load1 = load0 + moment["days"] * DAY
    k2 = (loop["sdr"] / (loop["sdr"] - 2)) ** 2
    if loop["axial"] == "held":
        shape, m = 2 * (1 + NU) * (k2 + 1 - 2 * NU) / (k2 - 1), 2 * (1 + NU)
    else:
        shape, m = (2 * (1 + NU) * k2 + 3 * (1 - 2 * NU)) / (k2 - 1), 3.0
    vp, vr = loop["plastic"], loop["rigid"]
    v = vp + vr
    free = 1 - held
    stretch0 = vp * free * shape / (modulus(load0, t0) * scale)
    stretch1 = vp * free * shape / (modulus(load1, t1) * scale)
    swell = v * (rho(t0) / rho(t1) - 1) * np.exp(0.10 * z[3])
    pipe = (vp * free * m * alpha + vr * METAL) * (t1 - t0)
    start = (stretch0 + v * kappa(t0)) * p0 + swell - pipe
    give = stretch1 + v * kappa(t1)
    if not loop.get("tank"):
        return start / give
    volume, pre = loop["tank"], loop["precharge_psi"] * PSI + ATM
    accept = lambda p: np.where(p + ATM > pre, volume * (1 - pre / np.maximum(p + ATM, 1)), 0)
    start = start + accept(p0)
    low, high = np.full_like(start, -0.99e5), np.full_like(start, 2e6)
    for _ in range(50):
        mid = 0.5 * (low + high)
        less = give * mid + accept(mid) < start
        low, high = np.where(less, mid, low), np.where(less, high, mid)
    return 0.5 * (low + high)


def weighted(values, weights):
    order = np.argsort(values)
    v, c = values[order], np.cumsum(weights[order])
    c /= c[-1]
    q = [float(np.interp(s, c, v)) for s in (0.05, 0.5, 0.95)]
    mean = np.average(values, weights=weights)
    return q, float(np.sqrt(np.average((values - mean) ** 2, weights=weights)))


def base(**change):
    loop = dict(fluid="water", mass_fraction=0.0, plastic=0.4, rigid=0.01, sdr=11.0, axial="held",
                restraint=[0.2, 0.12], charge_psi=50.0, charge_psi_u=1.0, charge_c=10.0, charge_c_u=1.5)
    loop.update(change)
    return loop


LOOPS = [
    base(),
    base(fluid="propylene-glycol", mass_fraction=0.22, restraint=[0.35, 0.18], charge_c=8.0),
    base(fluid="ethanol", mass_fraction=0.18, restraint=[0.0, 0.0], axial="free", sdr=9.0),
    base(fluid="methanol", mass_fraction=0.15, tank=0.03, precharge_psi=15.0, charge_psi=30.0),
]
MOMENTS = [dict(days=60, c=18.0, c_u=1.0), dict(days=240, c=5.0, c_u=1.0), dict(days=420, c=16.0, c_u=1.0)]
READINGS = [dict(days=45, c=15.0, c_u=0.5, above=2.0), dict(days=150, c=5.0, c_u=0.5, above=3.0)]

ANEW = dict(charge_psi=45.0, charge_psi_u=1.0, charge_c=20.0, charge_c_u=1.0)
LATER = [dict(days=182, c=18.0, c_u=1.0), dict(days=182, c=5.0, c_u=1.0)]
SOURCES = ("Monte Carlo with numpy 2.4.6 and CoolProp 8.0.0 (densities: IAPWS-95 for water, INCOMP "
           "MPG/MMA/MEA after Melinder, IIR 2010); modulus: PPI Handbook of PE Pipe ch. 3; pressures in Pa; "
           "generated by band.py")


def taught(loop, z):
    """The readings of a loop as shown, and the weights of the draws after them."""
    logs = np.zeros(z.shape[1])
    readings = []
    for reading in READINGS:
        middle = float(pressure(loop, np.zeros((9, 1)), reading, np.zeros(1))[0])
        shown = round(middle / PSI + reading["above"], 2)
        readings.append(dict(days=reading["days"], c=reading["c"], c_u=reading["c_u"], psi=shown, psi_u=0.5))
        p = pressure(loop, z, reading, np.zeros(z.shape[1]))
        d = (pressure(loop, np.zeros((9, 1)), reading, np.array([0.5]))
             - pressure(loop, np.zeros((9, 1)), reading, np.array([-0.5])))[0]
        logs += -0.5 * (shown * PSI - p) ** 2 / ((0.5 * PSI) ** 2 + MODEL**2 + d**2)
    return readings, np.exp(logs - logs.max())


def recharged():
    random = np.random.default_rng(20241)
    cases = []
    for loop in LOOPS:
        loop["_rho"], loop["_kappa"] = properties(loop)
        z = random.standard_normal((9, 1_000_000))
        readings, weights = taught(loop, z)
        # The new charge has errors of its own.
        z[4:6] = random.standard_normal((2, z.shape[1]))
        for moment in LATER:
            p = pressure(dict(loop, **ANEW), z, moment, z[7]) + MODEL * z[8]
            after, _ = weighted(p, weights)
            before, _ = weighted(p, np.ones(z.shape[1]))
            public = {k: v for k, v in loop.items() if not k.startswith("_")}
            cases.append(dict(loop=public, readings=readings, anew=ANEW, moment=moment,
                              before=dict(q=before), after=dict(q=after),
                              effective=float(weights.sum() ** 2 / (weights**2).sum())))
    RECHARGED.write_text(json.dumps(dict(header=SOURCES, cases=cases), indent=1) + "\n")


def main():
    random = np.random.default_rng(20240)
    cases = []
    for loop in LOOPS:
        loop["_rho"], loop["_kappa"] = properties(loop)
        n = 400_000
        z = random.standard_normal((9, n))
        many = random.standard_normal((9, 4_000_000))
        readings, weights = taught(loop, many)
        for moment in MOMENTS:
            p = pressure(loop, z, moment, z[7]) + MODEL * z[8]
            q, sd = weighted(p, np.ones(n))
            p = pressure(loop, many, moment, many[7]) + MODEL * many[8]
            qa, sda = weighted(p, weights)
            public = {k: v for k, v in loop.items() if not k.startswith("_")}
            cases.append(dict(loop=public, moment=moment, prior=dict(q=q, sd=sd),
                              readings=readings, posterior=dict(q=qa, sd=sda),
                              effective=float(weights.sum() ** 2 / (weights**2).sum())))
    TABLE.write_text(json.dumps(dict(header=SOURCES, cases=cases), indent=1) + "\n")


if __name__ == "__main__":
    if sys.argv[1:] == ["recharged"]:
        recharged()
    else:
        main()
        recharged()
