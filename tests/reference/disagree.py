"""Where two simulators by different hands speak against the rule graph alike.

    python disagree.py GRAPH.bif OWN.jsonl SECOND.jsonl [ROWS]

GRAPH.bif is `returnline graph export`; the calls are written by the example
`simulate --write`. For each fault and finding the graph's probabilities of its levels
(that fault alone, ordinary behaviour and instruments left at their priors; pyAgrum)
stand beside those that fit the readings of the calls with that fault best, found by
expectation-maximisation (Dempster, Laird, Rubin, J. R. Stat. Soc. B 39 (1977)). Listed
are those that both simulators would move the same way, by what a call loses in bits for
the graph's numbers, the smaller loss of the two. A fit on readings that are never quite
certain overshoots towards 0 and 1: a row is a question to the physics and no value to
be copied.
"""

import collections
import glob
import json
import sys
import tomllib
from pathlib import Path

import numpy as np
import pyagrum as gum

GRAPH = Path(__file__).resolve().parents[2] / "core" / "data" / "graph"
ROUNDS = 60
FEWEST = (15, 8)  # calls with that finding, of the first and of the second simulator
DRAWN_TO_GRAPH = 1.0  # calls' worth of trust in the graph's own numbers


def kinds():
    causes = {}
    for name in glob.glob(str(GRAPH / "*.toml")):
        with open(name, "rb") as file:
            for cause in tomllib.load(file).get("cause", []):
                causes[cause["id"]] = cause["kind"]
    return causes


def node(name):
    return name.replace("-", "_")


def alone(bif, faults, wanted):
    """P(level) of each wanted finding for each fault alone."""
    network = gum.loadBN(bif)
    inference = gum.LazyPropagation(network)
    for finding in wanted:
        inference.addTarget(node(finding))
    table = {}
    for fault in faults:
        inference.setEvidence({node(other): int(other == fault) for other in faults})
        inference.makeInference()
        for finding in wanted:
            table[fault, finding] = np.array(inference.posterior(node(finding)).tolist())
    return table


def read(path):
    """The likelihoods of each finding, by fault; those of one call multiplied."""
    seen = collections.defaultdict(list)
    with open(path, encoding="utf-8") as file:
        for call in map(json.loads, file):
            of_call = collections.defaultdict(list)
            for finding, weights in call["findings"]:
                of_call[finding].append(weights)
            for finding, weights in of_call.items():
                seen[call["fault"], finding].append(np.prod(weights, axis=0))
    return {key: np.maximum(rows, 1e-12) for key, rows in seen.items()}


def fitted(likelihoods, start):
    levels = start
    for _ in range(ROUNDS):
        shares = likelihoods * levels
        shares /= shares.sum(axis=1, keepdims=True)
        levels = shares.sum(axis=0) + DRAWN_TO_GRAPH * start
        levels = levels / levels.sum()
    return levels


def main(bif, own, second, rows=60):
    faults = [cause for cause, kind in kinds().items() if kind in ("loop", "unit")]
    calls = [read(own), read(second)]
    keys = [
        key
        for key in calls[0].keys() & calls[1].keys()
        if key[0] in faults and all(len(c[key]) >= n for c, n in zip(calls, FEWEST))
    ]
    graph = alone(bif, faults, sorted({finding for _, finding in keys}))
    found = []
    for key in keys:
        start = np.maximum(graph[key], 1e-6)
        fits = [fitted(c[key], start) for c in calls]
        losses = [
            np.mean(np.log2((c[key] @ fit) / (c[key] @ start))) for c, fit in zip(calls, fits)
        ]
        if (fits[0] - start) @ (fits[1] - start) > 0:
            found.append((min(losses), key, start, fits))
    found.sort(key=lambda row: -row[0])
    show = lambda levels: "/".join(f"{100 * level:.1f}" for level in levels)
    print("| fault | finding | bits a call | graph, % | first simulator | second |")
    print("|---|---|---|---|---|---|")
    for bits, (fault, finding), start, fits in found[: int(rows)]:
        print(
            f"| {fault} | {finding} | {bits:.2f} | {show(start)} | {show(fits[0])} | {show(fits[1])} |"
        )


if __name__ == "__main__":
    if len(sys.argv) not in (4, 5):
        sys.exit(__doc__)
    main(*sys.argv[1:])
