"""Dead-head test of a loop: air volume and its uncertainty.

Written from the closed forms anew, with the package `uncertainties` doing the
propagation: nothing here comes from the program.
"""

from pathlib import Path

import uncertainties
from uncertainties import ufloat

TABLE = Path(__file__).parent / "tables" / "dead_head.csv"
CASES = [
    # drop m, tank m2, volume m3, SDR, p1 gauge Pa, p2 gauge Pa, E Pa, nu, freedom (value, standard)
    [(0.0508, 0.0015), (0.0507, 0.001), (0.3785, 0.02), 11.0, (68948, 1500), (344738, 3000),
     (758.4e6, 40e6), (0.45, 0.02), (1.0, 0.0)],
    [(0.035, 0.001), (0.11, 0.003), (0.9, 0.1), 13.5, (50e3, 2e3), (250e3, 5e3), (900e6, 60e6),
     (0.4, 0.03), (0.85, 0.1)],
    [(0.012, 0.001), (0.073, 0.001), (0.12, 0.01), 9.0, (120e3, 2e3), (400e3, 2e3), (700e6, 50e6),
     (0.42, 0.03), (0.7, 0.15)],
    [(0.09, 0.002), (0.16, 0.004), (2.4, 0.4), 17.0, (30e3, 2e3), (210e3, 2e3), (1000e6, 80e6),
     (0.4, 0.03), (0.9, 0.05)],
]
ATMOSPHERE = 101325.0
SQUEEZE = 4.7808e-10  # water at 10 degC, 1/Pa: IAPWS-95, see tables/water.csv

with TABLE.open("w") as file:
    file.write(
        "# Dead-head test: air in a polyethylene loop filled with water at 10 degC, air outside 101 325 Pa.\n"
        f"# uncertainties {uncertainties.__version__}: ufloat. Lame's thick wall, halfway between axially\n"
        "# free and held (Timoshenko and Goodier, Theory of Elasticity); Boyle's law; compressibility\n"
        "# of water by IAPWS-95. SI units; each input with its standard uncertainty.\n"
        "drop,u,area,u,volume,u,sdr,before,u,after,u,modulus,u,poisson,u,freedom,u,air,u_air\n")
    for case in CASES:
        drop, area, volume, p1, p2, e, nu, freedom = (
            ufloat(*x) for x in case if isinstance(x, tuple))
        sdr = case[3]
        k2 = (sdr / (sdr - 2)) ** 2
        free = (2 * (1 + nu) * k2 + 3 * (1 - 2 * nu)) / (e * (k2 - 1))
        held = 2 * (1 + nu) * (k2 + 1 - 2 * nu) / (e * (k2 - 1))
        stretch = (freedom * (free + held) / 2 + SQUEEZE) * volume * (p2 - p1)
        air = (drop * area - stretch) / (1 - (p1 + ATMOSPHERE) / (p2 + ATMOSPHERE))
        cells = []
        for x in case:
            cells += list(x) if isinstance(x, tuple) else [x]
        file.write(",".join(f"{x:.12g}" for x in cells + [air.n, air.s]) + "\n")
