"""Friction factors from the general-purpose library `fluids`."""

from pathlib import Path

import fluids
from fluids.friction import Churchill_1977, Colebrook, Swamee_Jain_1976

TABLE = Path(__file__).parent / "tables" / "friction.csv"
REYNOLDS = [50, 500, 1500, 1999, 2500, 3300, 4001, 6e3, 1.2e4, 4e4, 1.5e5, 1e6, 7e6]
ROUGHNESS = [0.0, 1e-6, 5e-5, 7e-4, 1e-2]

with TABLE.open("w") as file:
    file.write(
        "# Darcy friction factors.\n"
        f"# fluids {fluids.__version__}: friction.Churchill_1977, Swamee_Jain_1976, Colebrook (exact).\n"
        "# Published sources: Churchill, Chem. Eng. 84 (1977) 91; Swamee and Jain, J. Hydraul. Div.\n"
        "# ASCE 102 (1976) 657; Colebrook, J. ICE 11 (1939) 133.\n"
        "reynolds,relative_roughness,churchill,swamee_jain,colebrook\n")
    for re in REYNOLDS:
        for eps in ROUGHNESS:
            row = [re, eps, Churchill_1977(re, eps), Swamee_Jain_1976(re, eps), Colebrook(re, eps)]
            file.write(",".join(f"{x:.12g}" for x in row) + "\n")
