"""Calcite saturation of fill waters by PHREEQC, beside the Langelier index.

Writes tables/calcite.csv: pH, temperature, dissolved solids, calcium and
alkalinity as CaCO3 (mg/L), saturation index of calcite by phreeqc.dat. The
charge is balanced with chloride or sodium so that the water can exist.
phreeqpython 1.5.7 (pinned in requirements.txt); Parkhurst and Appelo, USGS
Techniques and Methods 6-A43, 2013.

Run from this folder: python calcite.py
"""
import csv
import itertools
import pathlib

import phreeqpython

TABLE = pathlib.Path(__file__).parent / "tables" / "calcite.csv"


def main():
    engine = phreeqpython.PhreeqPython()
    with TABLE.open("w", newline="") as out:
        out.write(
            "# phreeqpython 1.5.7, Solution.si('Calcite'), database phreeqc.dat (Parkhurst and Appelo, USGS TM 6-A43).\n"
            "# Calcium and alkalinity as CaCO3, mg/L; charge balanced by Na or Cl; dissolved solids = sum of ions, mg/L.\n"
        )
        rows = csv.writer(out, lineterminator="\n")
        rows.writerow(["ph", "t_celsius", "tds", "calcium", "alkalinity", "si_calcite"])
        for ph, t, ca, alk in itertools.product(
            (6.8, 7.5, 8.3), (5, 15, 25, 40), (40, 120, 300), (40, 120, 250)
        ):
            equivalents = ca / 50.04 - alk / 50.04  # meq/L
            na = max(0.0, -equivalents) + 0.2
            cl = max(0.0, equivalents) + 0.2
            water = engine.add_solution(
                {
                    "units": "mg/l",
                    "temp": t,
                    "pH": ph,
                    "Ca": f"{ca * 0.40043:.4f}",
                    "Alkalinity": f"{alk} as CaCO3",
                    "Na": f"{na * 22.99:.4f}",
                    "Cl": f"{cl * 35.45:.4f}",
                }
            )
            tds = ca * 0.40043 + alk * 1.2192 + na * 22.99 + cl * 35.45
            rows.writerow([ph, t, f"{tds:.1f}", ca, alk, f"{water.si('Calcite'):.4f}"])
            water.forget()


if __name__ == "__main__":
    main()
