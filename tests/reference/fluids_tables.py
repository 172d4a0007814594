"""Properties of loop fluids: the same correlation, other sources, and water."""

import csv
from pathlib import Path

import CoolProp
import CoolProp.CoolProp as cp
import iapws
import scp
from iapws import IAPWS95, IAPWS97
from scp.ethyl_alcohol import EthylAlcohol
from scp.ethylene_glycol import EthyleneGlycol
from scp.methyl_alcohol import MethylAlcohol
from scp.propylene_glycol import PropyleneGlycol

TABLES = Path(__file__).parent / "tables"
KINDS = {
    "propylene-glycol": (PropyleneGlycol, "MPG", ["MPG2"], "APG"),
    "ethylene-glycol": (EthyleneGlycol, "MEG", ["MEG2"], "AEG"),
    "methanol": (MethylAlcohol, "MMA", ["MMA2"], None),
    "ethanol": (EthylAlcohol, "MEA", ["MEA2"], None),
}
FRACTIONS = [0.08, 0.15, 0.2, 0.25, 0.3, 0.37, 0.45]
CELSIUS = [-10.0, -5.0, 0.0, 4.0, 10.0, 20.0, 30.0, 39.5]


def write(name, comments, header, rows):
    with (TABLES / name).open("w", newline="") as file:
        for comment in comments:
            file.write(f"# {comment}\n")
        out = csv.writer(file, lineterminator="\n")
        out.writerow(header)
        out.writerows(rows)


def number(value):
    return f"{value:.10g}"


def same_correlation():
    rows = []
    for kind, (scp_class, incomp, _, _) in KINDS.items():
        for w in FRACTIONS:
            fluid = scp_class(w)
            freezing = cp.PropsSI("T_FREEZE", "T", 300, "P", 101325, f"INCOMP::{incomp}[{w}]")
            for t in CELSIUS:
                if t < fluid.freeze_point(w) + 0.05:
                    continue
                rows.append([kind, w, t] + [number(x) for x in (
                    fluid.density(t), fluid.specific_heat(t), fluid.conductivity(t),
                    fluid.viscosity(t), freezing - 273.15, fluid.freeze_point(w))])
    write("solutions.csv", [
        "Properties of aqueous solutions, same correlation as the core's.",
        "SecondaryCoolantProps 1.5 (scp): density, specific_heat, conductivity, viscosity,",
        "freeze_point; CoolProp 8.0.0: PropsSI('T_FREEZE') of INCOMP::MPG, MEG, MMA, MEA.",
        "Published source: A. Melinder, Properties of Secondary Working Fluids for Indirect",
        "Systems, IIR 2010. Agreement shows that the coefficients are the same, no more.",
    ], ["kind", "mass_fraction", "celsius", "density", "specific_heat", "conductivity",
        "viscosity", "freezing_coolprop", "freezing_scp"], rows)


def other_sources():
    rows = []
    for kind, (_, _, others, by_volume) in KINDS.items():
        sources = [(name, "mass") for name in others]
        if by_volume:
            sources.append((by_volume, "volume"))
        for name, basis in sources:
            for x in (0.15, 0.2, 0.25, 0.3, 0.35):
                fluid = f"INCOMP::{name}[{x}]"
                try:
                    freezing = cp.PropsSI("T_FREEZE", "T", 300, "P", 101325, fluid) - 273.15
                except ValueError:
                    continue
                for t in (-10.0, -5.0, 0.0, 10.0, 20.0, 30.0, 39.5):
                    if t < freezing + 1.5:
                        continue
                    try:
                        values = [cp.PropsSI(k, "T", t + 273.15, "P", 101325, fluid)
                                  for k in ("D", "C", "L", "V")]
                    except ValueError:
                        continue
                    rows.append([kind, name, basis, x, t, number(freezing)]
                                + [number(v) for v in values])
    write("solutions_other.csv", [
        "Properties of aqueous solutions from other fits than the core's.",
        "CoolProp 8.0.0, PropsSI of INCOMP::MPG2, MEG2, MMA2, MEA2 (by mass; fits of the same",
        "book's property tables and of the SecCool collection) and INCOMP::APG, AEG (by volume;",
        "ASHRAE Handbook, Fundamentals).",
    ], ["kind", "source", "basis", "fraction", "celsius", "freezing", "density",
        "specific_heat", "conductivity", "viscosity"], rows)


def water():
    rows = []
    for t in [0.02, 1, 2, 4, 7, 10, 15, 20, 25, 30, 35, 40, 50, 60]:
        state = IAPWS95(T=t + 273.15, P=0.101325)
        rows.append([t] + [number(x) for x in (
            state.rho, state.cp * 1e3, state.k, state.mu, state.alfav, state.kappa * 1e-6,
            IAPWS95(T=t + 273.15, x=0).P * 1e6, IAPWS97(T=t + 273.15, x=0).P * 1e6)])
    write("water.csv", [
        "Liquid water at 101 325 Pa, and its vapour pressure.",
        f"iapws {iapws.__version__}: IAPWS95(T, P).rho, cp, k, mu, alfav, kappa; IAPWS95(T, x=0).P;",
        "IAPWS97(T, x=0).P. Published sources: IAPWS R6-95(2018), R12-08, R15-11, R7-97(2012).",
    ], ["celsius", "density", "specific_heat", "conductivity", "viscosity", "expansion",
        "compressibility", "vapour_95", "vapour_97"], rows)


def pure_alcohols():
    rows = [[name.lower(), number(cp.PropsSI("D", "T", 293.15, "P", 101325, name)),
             number(cp.PropsSI("P", "T", 303.15, "Q", 0, name))] for name in ("Methanol", "Ethanol")]
    write("alcohols.csv", [
        "Pure alcohols: density at 20 degC and 101 325 Pa, vapour pressure at 30 degC.",
        "CoolProp 8.0.0, PropsSI of HEOS::Methanol (de Reuck and Craven 1993) and HEOS::Ethanol",
        "(Schroeder 2014).",
    ], ["kind", "density_20", "vapour_30"], rows)


if __name__ == "__main__":
    same_correlation()
    other_sources()
    water()
    pure_alcohols()
