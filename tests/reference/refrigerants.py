"""Saturation of six refrigerants: fit for the engine and points for the check.

Writes
  core/data/refrigerants.csv          polynomial coefficients the engine reads
  tests/reference/tables/saturation.csv   points the fit has never seen

The mixtures are computed as mixtures (ASHRAE 34 mass composition through
CoolProp's predefined mixing parameters). R-410A and R-407C are written a second
time from CoolProp's pseudo-pure equations of state (Lemmon 2003), which are an
independent formulation. R-454B has no second formulation in the library.

Run from this folder: python refrigerants.py
"""
import csv
import pathlib

import CoolProp
import CoolProp.CoolProp as CP
import numpy as np

HERE = pathlib.Path(__file__).parent
FIT = HERE.parent.parent / "core" / "data" / "refrigerants.csv"
POINTS = HERE / "tables" / "saturation.csv"

# name, CoolProp name, second formulation
FLUIDS = [
    ("R-410A", "R410A.mix", "R410A"),
    ("R-32", "R32", None),
    ("R-454B", "R454B.mix", None),
    ("R-407C", "R407C.mix", "R407C"),
    ("R-134a", "R134a", None),
    ("R-22", "R22", None),
]
LOW_C, HIGH_C, DEGREE, CENTRE = -45.0, 65.0, 6, 3.6


def pressure(fluid, celsius, quality):
    """Saturation pressure, Pa; None where the mixture solver does not converge."""
    try:
        return CP.PropsSI("P", "T", celsius + 273.15, "Q", quality, fluid)
    except ValueError:
        return None


def series(fluid, quality, celsius):
    pairs = [(t, pressure(fluid, t, quality)) for t in celsius]
    return [(t, p) for t, p in pairs if p is not None]


def main():
    with FIT.open("w", newline="") as out:
        out.write(
            "# Saturation pressure of refrigerants, bubble and dew line.\n"
            "# ln(p/Pa) = sum c_i * (1000 K / T - 3.6)^i, -45 degC to 65 degC.\n"
            f"# Least-squares fit of degree {DEGREE} to CoolProp {CoolProp.__version__} "
            "(PropsSI, HEOS backend), by tests/reference/refrigerants.py.\n"
            "# Equations of state: R-32 Tillner-Roth and Yokozeki 1997; R-134a Tillner-Roth and Baehr 1994;\n"
            "# R-22 Kamei 1995; blends by the library's mixing parameters over R-32, R-125, R-134a, R-1234yf.\n"
            "# R-454B exists only through those mixing parameters: no independent formulation to check it by.\n"
        )
        rows = csv.writer(out, lineterminator="\n")
        rows.writerow(["refrigerant", "line", *[f"c{i}" for i in range(DEGREE + 1)]])
        for name, fluid, _ in FLUIDS:
            for quality, line in ((0, "bubble"), (1, "dew")):
                points = series(fluid, quality, np.arange(LOW_C - 2, HIGH_C + 2.01, 1.0))
                x = np.array([1000 / (t + 273.15) - CENTRE for t, _ in points])
                y = np.log([p for _, p in points])
                c = np.polyfit(x, y, DEGREE)[::-1]
                rows.writerow([name, line, *[f"{v:.12g}" for v in c]])
    with POINTS.open("w", newline="") as out:
        out.write(
            f"# CoolProp {CoolProp.__version__}, PropsSI('P','T',T,'Q',q,fluid). Points of the check lie between\n"
            "# those of the fit. formulation: 'mixture' = predefined mixing parameters (ASHRAE 34 composition),\n"
            "# 'pure' = reference equation of state, 'pseudo-pure' = Lemmon 2003. R-454B: mixture only.\n"
        )
        rows = csv.writer(out, lineterminator="\n")
        rows.writerow(["refrigerant", "formulation", "line", "t_celsius", "p_pascal"])
        for name, fluid, second in FLUIDS:
            kinds = [("mixture" if ".mix" in fluid else "pure", fluid)]
            if second:
                kinds.append(("pseudo-pure", second))
            for kind, which in kinds:
                for quality, line in ((0, "bubble"), (1, "dew")):
                    for t, p in series(which, quality, np.arange(-44.5, 65.0, 3.7)):
                        rows.writerow([name, kind, line, f"{t:.2f}", f"{p:.8g}"])


if __name__ == "__main__":
    main()
