"""First-order propagation of uncertainty by the package `uncertainties`."""

from pathlib import Path

import uncertainties
from uncertainties import ufloat
from uncertainties.umath import exp, log, sqrt

TABLE = Path(__file__).parent / "tables" / "propagation.csv"
CASES = {
    "product": (lambda a, b, c: a * b * c, [(0.05, 0.002), (0.3, 0.03), (2.0, 0.1)]),
    "quotient": (lambda a, b, c: a / (1 - b / c), [(1.5e-3, 4e-5), (1.7e5, 2e3), (4.4e5, 3e3)]),
    "root": (lambda a, b, c: b * sqrt(a) + c, [(2e4, 600.0), (3e-6, 1e-7), (1e-5, 1e-6)]),
    "power": (lambda a, b, c: (a / b) ** (1 / c), [(2e4, 500.0), (3e7, 1e6), (1.8, 0.02)]),
    "logarithm": (lambda a, b, c: a * log(b) * exp(-c), [(3.0, 0.1), (7.0, 0.2), (0.4, 0.05)]),
    "difference": (lambda a, b, c: (a - b) * c, [(280.15, 0.2), (276.35, 0.2), (2000.0, 60.0)]),
}

with TABLE.open("w") as file:
    file.write(
        "# First-order propagation: result and standard uncertainty.\n"
        f"# uncertainties {uncertainties.__version__}: ufloat and umath.\n"
        "# Published source: JCGM 100:2008 (GUM), 5.1.2.\n"
        "case,a,ua,b,ub,c,uc,result,standard\n")
    for name, (function, inputs) in CASES.items():
        result = function(*(ufloat(*x) for x in inputs))
        numbers = [n for pair in inputs for n in pair] + [result.n, result.s]
        file.write(",".join([name] + [f"{n:.14g}" for n in numbers]) + "\n")
