"""How much of the fault the evidence of a simulated call still holds.

    python ceiling.py LEARN.jsonl TRY.jsonl

Both files are written by the example `simulate --write` of the test crate, on
different seeds. A linear classifier (multinomial logistic regression, scikit-learn)
is fitted to LEARN, with everything that the inference gets: the likelihood of each
finding and the facts. It knows nothing of the rule graph, but has seen the very
simulator it is tried on, which the graph must not. So it says about how well any
weighing of this evidence could do there; the engine's answers on TRY stand beside it,
both restricted to the faults that are injected.
"""

import json
import sys

import numpy as np
from sklearn.linear_model import LogisticRegression
from sklearn.preprocessing import StandardScaler

FLOOR = 1e-3  # a likelihood below it counts as it: lies are not told apart further
PENALTY = 0.02  # inverse strength of the ridge penalty, in scikit-learn's sense


def load(path):
    with open(path, encoding="utf-8") as file:
        return [json.loads(line) for line in file]


def columns(calls):
    known = {}
    for call in calls:
        for finding, weights in call["findings"]:
            for level in [*range(len(weights)), "seen"]:
                known.setdefault((finding, level), len(known))
        for fact in call["facts"]:
            known.setdefault((fact, "fact"), len(known))
    return known


def matrix(calls, known):
    table = np.zeros((len(calls), len(known)), np.float32)
    for row, call in zip(table, calls):
        for finding, weights in call["findings"]:
            logs = np.log(np.maximum(weights, FLOOR))
            for level, value in enumerate(logs - logs.mean()):
                if (finding, level) in known:
                    row[known[finding, level]] += value
            if (finding, "seen") in known:
                row[known[finding, "seen"]] = 1
        for fact, is_so in call["facts"].items():
            if (fact, "fact") in known:
                row[known[fact, "fact"]] = 1 if is_so else -1
    return table


def shares(scores, names, truth):
    order = np.argsort(-scores, axis=1)[:, :3]
    hits = np.array([[names[at] == fault for at in row] for row, fault in zip(order, truth)])
    return hits[:, 0].mean(), hits.any(axis=1).mean()


def main(learn, trial):
    learned, tried = load(learn), load(trial)
    known = columns(learned)
    faults = np.array([call["fault"] for call in learned])
    truth = [call["fault"] for call in tried]
    scale = StandardScaler()
    model = LogisticRegression(C=PENALTY, max_iter=150)
    model.fit(scale.fit_transform(matrix(learned, known)), faults)
    scores = model.predict_proba(scale.transform(matrix(tried, known)))
    names = list(model.classes_)
    engine = np.array([[call["engine"].get(name, 0.0) for name in names] for call in tried])
    for who, of in [("classifier", scores), ("engine", engine)]:
        first, three = shares(of, names, truth)
        print(f"{who}: first {100 * first:.1f} %, among three {100 * three:.1f} % of {len(tried)}")


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    main(*sys.argv[1:])
