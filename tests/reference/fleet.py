"""Survival curves, intervals, the exact test and false discovery control.

lifelines: KaplanMeierFitter on the data sets `waltons` and `rossi` it carries.
statsmodels: SurvfuncRight (Greenwood), proportion_confint, Table2x2, multipletests.
scipy: fisher_exact, chi2.ppf.
"""

from importlib.metadata import version
from pathlib import Path

import json
from lifelines import KaplanMeierFitter
from lifelines.datasets import load_rossi, load_waltons
from scipy.stats import chi2, fisher_exact
from statsmodels.datasets import fair
from statsmodels.duration.survfunc import SurvfuncRight
from statsmodels.stats.contingency_tables import Table2x2
from statsmodels.stats.multitest import multipletests
from statsmodels.stats.proportion import proportion_confint

TABLE = Path(__file__).parent / "tables" / "fleet.json"
Z = 1.959963984540054

waltons, rossi = load_waltons(), load_rossi()


def curve(times, events):
    fitted = KaplanMeierFitter().fit(times, events)
    plain = SurvfuncRight(times, events)
    spread = dict(zip(plain.surv_times, plain.surv_prob_se))
    band = fitted.confidence_interval_survival_function_
    steps = []
    for time, row in fitted.event_table.iterrows():
        if row.observed == 0:
            continue
        survival = float(fitted.survival_function_.loc[time].iloc[0])
        low, high = (float(x) for x in band.loc[time])
        steps.append({
            "time": float(time), "at_risk": int(row.at_risk), "events": int(row.observed),
            "survival": survival,
            # Neither package gives an interval once nobody is left.
            "log_log": [low, high] if survival > 0 else None,
            "plain_half": Z * float(spread[time]) if survival > 0 else None})
    median = fitted.median_survival_time_
    return {"times": [float(t) for t in times], "events": [int(e) for e in events],
            "median": float(median) if median < 1e300 else None, "steps": steps}


def two_by_two(a, b, c, d):
    table = Table2x2([[a, b], [c, d]])
    return {"cells": [int(x) for x in (a, b, c, d)],
            "fisher": float(fisher_exact([[a, b], [c, d]])[1]),
            "odds": float(table.oddsratio), "odds_interval": list(map(float, table.oddsratio_confint())),
            "risk": float(table.riskratio), "risk_interval": list(map(float, table.riskratio_confint()))}


def counts(first, second):
    a, b = int((first & second).sum()), int((first & ~second).sum())
    c, d = int((~first & second).sum()), int((~first & ~second).sum())
    return a, b, c, d


arrested = rossi.arrest == 1
affairs = fair.load_pandas().data
had = affairs.affairs > 0
tables = [two_by_two(*counts(rossi[name] == 1, arrested)) for name in ("fin", "race", "wexp", "mar", "paro")]
tables += [two_by_two(*counts(affairs.rate_marriage == level, had)) for level in (1, 2, 3, 4, 5)]
tables += [two_by_two(*counts(affairs.children == level, had)) for level in (0, 1, 2)]
p = [table["fisher"] for table in tables]

result = {
    "about": [
        "Kaplan-Meier, Wilson, Poisson (Garwood), Fisher, odds and risk ratios, Benjamini-Hochberg and -Yekutieli.",
        "lifelines %s, statsmodels %s, scipy %s." % tuple(map(version, ("lifelines", "statsmodels", "scipy"))),
        "Data: waltons and rossi (Rossi et al. 1980) as lifelines carries them, "
        "fair (Fair 1978) as statsmodels carries it.",
        "Published sources: Kaplan and Meier 1958; Greenwood 1926; Wilson 1927; Garwood 1936; "
        "Fisher 1935; Woolf 1955; Katz et al. 1978; Benjamini and Hochberg 1995; Benjamini and Yekutieli 2001."],
    "curves": {
        "waltons control": curve(*waltons[waltons.group == "control"][["T", "E"]].values.T),
        "waltons miR-137": curve(*waltons[waltons.group == "miR-137"][["T", "E"]].values.T),
        "rossi, aid": curve(*rossi[rossi.fin == 1][["week", "arrest"]].values.T),
        "rossi, no aid": curve(*rossi[rossi.fin == 0][["week", "arrest"]].values.T)},
    "wilson": [[int(h), int(n), *map(float, proportion_confint(h, n, method="wilson"))]
               for h, n in [(0, 9), (1, 9), (9, 9), (114, 432), (2053, 6366), (5, 100000)]],
    "poisson": [[k, t, float(chi2.ppf(0.025, 2 * k) / 2 / t) if k else 0.0, float(chi2.ppf(0.975, 2 * k + 2) / 2 / t)]
                for k, t in [(0, 12.5), (1, 3.0), (2, 1.0), (7, 41.0), (114, 19809.0), (99, 1.0), (100, 1.0),
                             (101, 7.0), (1500, 300.0), (45000, 350000.0)]],
    "tables": tables,
    "adjusted": [p, list(map(float, multipletests(p, method="fdr_bh")[1])),
                 list(map(float, multipletests(p, method="fdr_by")[1]))],
}
TABLE.write_text(json.dumps(result, indent=None, separators=(",", ":")).replace('},{', '},\n{') + "\n")
