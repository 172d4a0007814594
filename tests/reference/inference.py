"""Posteriors and mutual information of invented rule graphs, by pyAgrum.

    python inference.py invent TABLE.json      invent graphs, write the table
    python inference.py table DIR TABLE.json   table for an exported graph with its cases
    python inference.py time VISIT.bif         time one exported visit

`invent` builds every network here, from the definitions in
core/data/graph/README.md, and shares nothing with the engine but the file
format. `table` reads graph.bif and cases.json as written by the program
export_cases of the test crate. Method: pyagrum.LazyPropagation (exact).
"""

import itertools
import json
import math
import random
import sys
import time

import pyagrum as gum

HEADER = {
    "library": "pyagrum",
    "version": gum.__version__,
    "function": "LazyPropagation.posterior, LazyPropagation.I",
    "source": "junction-tree inference: Madsen and Jensen, Lazy propagation, "
    "Artificial Intelligence 113 (1999)",
    "generator": "tests/reference/inference.py",
}


def product(values):
    return math.prod(values)


def invent(rng):
    causes, instruments, mechanisms, findings = 10, 2, 6, 12
    graph = {"causes": [], "mechanisms": [], "findings": []}
    for at in range(causes + instruments):
        graph["causes"].append({
            "id": f"c{at}",
            "kind": "instrument" if at >= causes else "loop",
            "prior": round(rng.uniform(0.01, 0.3), 4),
            "odds": round(math.exp(rng.uniform(-2, 2)), 3),
            "odds_if_false": round(math.exp(rng.uniform(-1, 1)), 3),
        })
    for at in range(mechanisms):
        count = rng.choice([1, 2, 3, 4, 6, 8])
        parents = {f"c{c}" for c in rng.sample(range(causes), count)}
        if at and rng.random() < 0.4:
            parents.add(f"m{rng.randrange(at)}")
        graph["mechanisms"].append({
            "id": f"m{at}",
            "leak": round(rng.choice([0.0, rng.uniform(0, 0.1)]), 4),
            "links": {p: round(rng.uniform(0.05, 0.98), 4) for p in sorted(parents)},
        })
    for at in range(findings):
        graded = rng.random() < 0.5
        names = [f"m{m}" for m in range(mechanisms)] + [f"c{c}" for c in range(causes)]
        parents = {f"m{at % mechanisms}"}
        if at < causes:
            parents.add(f"c{at}")
        parents |= set(rng.sample(names, rng.choice([0, 1, 2, 5])))
        links = {}
        for parent in sorted(parents):
            if graded:
                low = round(rng.uniform(0.02, 0.6), 4)
                high = round(rng.uniform(0.02, 0.39), 4)
                links[parent] = rng.choice([(low, 0.0), (0.0, high), (low, high)])
            else:
                links[parent] = (0.0, round(rng.uniform(0.05, 0.98), 4))
        graph["findings"].append({
            "id": f"f{at}",
            "graded": graded,
            "normal": "absent" if graded else rng.choice(["absent", "present"]),
            "leak": (
                round(rng.uniform(0, 0.05), 4) if graded else 0.0,
                round(rng.uniform(0.001, 0.05), 4),
            ),
            "instrument": f"c{causes + at % instruments}"
            if at < instruments or rng.random() < 0.5
            else None,
            "reliability": rng.choice([1.0, 0.9, 0.75]),
            "links": links,
        })
    return graph


def to_toml(graph):
    out = ['[[family]]\nid = "invented"', '[[fact]]\nid = "fact"']
    mark = 'source = "judgement"'
    for cause in graph["causes"]:
        out.append(
            f'[[cause]]\nid = "{cause["id"]}"\nfamily = "invented"\nkind = "{cause["kind"]}"\n'
            f'status = "draft"\nprior = {cause["prior"]}\n{mark}\n'
            f'context = [{{ fact = "fact", odds = {cause["odds"]}, '
            f'odds_if_false = {cause["odds_if_false"]}, {mark} }}]'
        )
    for mechanism in graph["mechanisms"]:
        out.append(f'[[mechanism]]\nid = "{mechanism["id"]}"\nleak = {mechanism["leak"]}\n{mark}')
        for parent, strength in mechanism["links"].items():
            out.append(
                f'[[link]]\nfrom = "{parent}"\nto = "{mechanism["id"]}"\n'
                f"strength = {strength}\n{mark}"
            )
    for finding in graph["findings"]:
        lines = [f'[[finding]]\nid = "{finding["id"]}"', 'evidence = "symptom"', mark]
        lines.append(f'reliability = {finding["reliability"]}')
        if finding["instrument"]:
            lines.append(f'instrument = "{finding["instrument"]}"')
        low, high = finding["leak"]
        if finding["graded"]:
            lines += ['levels = "graded"', f"leak_low = {low}", f"leak_high = {high}"]
        else:
            lines += ['levels = "presence"', f'normal = "{finding["normal"]}"', f"leak = {high}"]
        out.append("\n".join(lines))
        for parent, (low, high) in finding["links"].items():
            lines = [f'[[link]]\nfrom = "{parent}"\nto = "{finding["id"]}"', mark]
            if finding["graded"]:
                lines += [f"low = {low}"] if low else []
                lines += [f"high = {high}"] if high else []
            else:
                lines.append(f"strength = {high}")
            out.append("\n".join(lines))
        out.append(
            f'[[check]]\nid = "k-{finding["id"]}"\nminutes = 1.0\n'
            f'reveals = ["{finding["id"]}"]\n{mark}'
        )
    return "\n".join(out) + "\n"


def levels(finding):
    return ["low", "normal", "high"] if finding["graded"] else ["absent", "present"]


def distribution(finding, active):
    """P(level | active parents), by the formulas of the format description."""
    low, high = finding["leak"]
    pushes = [(low, high)] + [finding["links"][parent] for parent in active]
    no_low = product(1 - p for p, _ in pushes)
    no_high = product(1 - p for _, p in pushes)
    none = product(1 - p - q for p, q in pushes)
    if finding["graded"]:
        both = 1 - no_low - no_high + none
        return [no_high - none + both / 3, none + both / 3, no_low - none + both / 3]
    pushed = 1 - no_high
    return [no_high, pushed] if finding["normal"] == "absent" else [pushed, no_high]


def prior_of(cause, fact):
    odds = cause["prior"] / (1 - cause["prior"])
    if fact is not None:
        odds *= cause["odds"] if fact else cause["odds_if_false"]
    return odds / (1 + odds)


def network(graph, fact):
    bn = gum.BayesNet("invented")
    for node in graph["causes"] + graph["mechanisms"]:
        bn.add(gum.LabelizedVariable(node["id"], "", ["no", "yes"]))
    for finding in graph["findings"]:
        bn.add(gum.LabelizedVariable(finding["id"], "", levels(finding)))
    for node in graph["mechanisms"] + graph["findings"]:
        for parent in node["links"]:
            bn.addArc(parent, node["id"])
    for cause in graph["causes"]:
        p = prior_of(cause, fact)
        bn.cpt(cause["id"])[:] = [1 - p, p]

    def fill(node, row):
        parents = list(node["links"])
        for states in itertools.product([0, 1], repeat=len(parents)):
            active = [parent for parent, on in zip(parents, states) if on]
            bn.cpt(node["id"])[dict(zip(parents, states))] = row(active)

    for mechanism in graph["mechanisms"]:
        def row(active, mechanism=mechanism):
            off = (1 - mechanism["leak"]) * product(1 - mechanism["links"][p] for p in active)
            return [off, 1 - off]
        fill(mechanism, row)
    for finding in graph["findings"]:
        fill(finding, lambda active, finding=finding: distribution(finding, active))
    return bn


def add_reading(bn, name, finding, weights, instrument, if_lying):
    """A child of finding and instrument whose state yes is the reading."""
    largest = max([*weights, if_lying])
    bn.add(gum.LabelizedVariable(name, "", ["no", "yes"]))
    bn.addArc(finding, name)
    if instrument:
        bn.addArc(instrument, name)
    for at, weight in enumerate(weights):
        for lies in [0, 1] if instrument else [0]:
            yes = (if_lying if lies else weight) / largest
            given = {finding: at, instrument: lies} if instrument else {finding: at}
            bn.cpt(name)[given] = [1 - yes, yes]


def add_report(bn, name, finding, labels, reliability, instrument):
    """What a check would report on a finding."""
    count = len(labels)
    bn.add(gum.LabelizedVariable(name, "", labels))
    bn.addArc(finding, name)
    if instrument:
        bn.addArc(instrument, name)
    for at in range(count):
        for lies in [0, 1] if instrument else [0]:
            wrong = (1 - reliability) / (count - 1)
            row = [1 / count] * count if lies else [
                reliability if report == at else wrong for report in range(count)
            ]
            given = {finding: at, instrument: lies} if instrument else {finding: at}
            bn.cpt(name)[given] = row


def infer(bn, evidence, nodes, findings, pairs):
    """By name P(states | evidence)."""
    engine = gum.LazyPropagation(bn)
    engine.setEvidence(evidence)
    for one, other in pairs:
        engine.addJointTarget({one, other})
    for name in nodes + findings:
        engine.addTarget(name)
    engine.makeInference()
    # Copies: the library's own tensors go with the engine.
    known = {name: gum.Tensor(engine.posterior(name)) for name in nodes + findings}
    known |= {pair: gum.Tensor(engine.jointPosterior(set(pair))) for pair in pairs}
    return known


def weight(bn, evidence):
    """P(evidence). Without targets: with them, what they do not need is left out."""
    engine = gum.LazyPropagation(bn)
    engine.setEvidence(evidence)
    engine.makeInference()
    return engine.evidenceProbability()


def ask(bn, seen, nodes, findings, pairs, hard=None, call=None):
    """`call`, if somebody called: the leak, and how often each cause alone makes
    somebody call. P(call | causes) = 1 - (1 - leak) * product of (1 - calls) over
    the true causes, so the joint with the call is the joint without it, less
    1 - leak times the joint in which each cause carries soft evidence."""
    evidence = {name: 1 for name in seen} | (hard or {})
    known = infer(bn, evidence, nodes, findings, pairs)
    if call:
        leak, calls = call
        soft = {cause: [1.0, 1.0 - p] for cause, p in calls.items() if p > 0}
        # A cause that is certain takes no second evidence: it is a common factor.
        factor = product(1.0 - calls[c] for c, so in (hard or {}).items() if so)
        soft = {cause: weights for cause, weights in soft.items() if cause not in evidence}
        without = infer(bn, evidence | soft, nodes, findings, pairs)
        share = weight(bn, evidence | soft) / weight(bn, evidence)
        taken = (1 - leak) * factor * share
        known = {
            name: (given - without[name] * taken) * (1 / (1 - taken))
            for name, given in known.items()
        }
    return {
        "nodes": {name: float(known[name][1]) for name in nodes},
        "findings": {name: [float(p) for p in known[name].tolist()] for name in findings},
        "information": [
            [one, other, float(mutual_information(known[one, other], one, other))]
            for one, other in pairs
        ],
    }


def mutual_information(joint, one, other):
    a = joint.sumIn([one])
    b = joint.sumIn([other])
    total = 0.0
    for i in range(a.domainSize()):
        for j in range(b.domainSize()):
            p = joint[{one: i, other: j}]
            # A difference of two inferences leaves rounding where nothing is.
            if p > 1e-14:
                total += p * math.log2(p / (a[{one: i}] * b[{other: j}]))
    return total


def random_weights(rng, count, kind):
    if kind == "hard":
        chosen = rng.randrange(count)
        return [1.0 if at == chosen else 0.0 for at in range(count)]
    if kind == "wide":
        weights = [10 ** rng.uniform(-9, 0) for _ in range(count)]
    else:
        weights = [rng.uniform(0.02, 1) for _ in range(count)]
    return [weight / max(weights) for weight in weights]


def invented_table():
    rng = random.Random(20240611)
    graphs = []
    for _ in range(12):
        graph = invent(rng)
        cases = []
        for kind in ["none", "soft", "hard", "wide"]:
            fact = rng.choice([None, True, False])
            bn = network(graph, fact)
            observations, seen = [], []
            for finding in graph["findings"]:
                if kind == "none" or rng.random() < 0.4:
                    continue
                weights = random_weights(rng, len(levels(finding)), kind)
                observations.append({"finding": finding["id"], "weights": weights})
                name = f"seen_{finding['id']}"
                mean = sum(weights) / len(weights)
                add_reading(bn, name, finding["id"], weights, finding["instrument"], mean)
                seen.append(name)
            known = {observation["finding"] for observation in observations}
            hidden = [f for f in graph["findings"] if f["id"] not in known]
            for finding in hidden:
                add_report(bn, f"report_{finding['id']}", finding["id"], levels(finding),
                           finding["reliability"], finding["instrument"])
            causes = [cause["id"] for cause in graph["causes"]]
            pairs = [(f["id"], c) for f in hidden[:2] for c in causes]
            pairs += [(f"report_{f['id']}", c) for f in hidden[:2] for c in causes]
            nodes = causes + [mechanism["id"] for mechanism in graph["mechanisms"]]
            findings = [finding["id"] for finding in graph["findings"]]
            answer = ask(bn, seen, nodes, findings, pairs)
            cases.append({"kind": kind, "fact": fact, "observations": observations, **answer})
        graphs.append({"toml": to_toml(graph), "cases": cases})
    return {"header": HEADER, "graphs": graphs}


def exported_table(folder):
    """The graph the cases are about goes into the table with them, so that the
    table stays true when the shipped graph changes."""
    with open(f"{folder}/cases.json", encoding="utf-8") as file:
        exported = json.load(file)

    def name(text):
        return text.replace("-", "_")

    def short(value):
        return float(f"{value:.11g}")

    rows = []
    for case in exported["cases"]:
        bn = gum.loadBN(f"{folder}/graph.bif")
        seen = []
        for at, reading in enumerate(case["observations"]):
            variable = f"seen_{at}"
            instrument = reading["instrument"] and name(reading["instrument"])
            add_reading(bn, variable, name(reading["finding"]), reading["weights"],
                        instrument, reading["if_lying"])
            seen.append(variable)
        causes = [name(node) for node in exported["nodes"][:exported["causes"]]]
        asked, pairs = case["asked"], []
        if asked:
            labels = ["0", "1", "2"][:asked["levels"]]
            instrument = asked["instrument"] and name(asked["instrument"])
            add_report(bn, "report", name(asked["finding"]), labels,
                       asked["reliability"], instrument)
            known = {name(found["cause"]) for found in case["found"]}
            pairs = [("report", cause) for cause in causes if cause not in known]
        hard = {name(found["cause"]): int(found["is_so"]) for found in case["found"]}
        call = None
        if case["called"]:
            call = exported["call"]["leak"], dict(zip(causes, case["called"]))
        answer = ask(bn, seen, [name(node) for node in exported["nodes"]], [], pairs, hard, call)
        rows.append({
            "called": case["called"] is not None,
            "observations": case["observations"],
            "found": case["found"],
            "asked": asked and asked["finding"],
            "nodes": [short(value) for value in answer["nodes"].values()],
            # In the order of the causes; those that are certain tell nothing.
            "information": [[cause, short(bits)] for _, cause, bits in answer["information"]
                            if bits > 1e-7],
        })
    return {"header": HEADER, "graph": exported["graph"], "nodes": exported["nodes"],
            "cases": rows}


def time_visit(path):
    bn = gum.loadBN(path)
    seen = {name: 1 for name in bn.names() if name.startswith("seen_")}
    targets = [name for name in bn.names() if not name.startswith("seen_")]
    spent = []
    for _ in range(7):
        start = time.perf_counter()
        engine = gum.LazyPropagation(bn)
        engine.setEvidence(seen)
        engine.makeInference()
        for name in targets:
            engine.posterior(name)
        spent.append(time.perf_counter() - start)
    print(f"pyagrum {gum.__version__} LazyPropagation, {len(seen)} readings: "
          f"median {1000 * sorted(spent)[len(spent) // 2]:.2f} ms of {len(spent)}")


def write(table, path):
    with open(path, "w", encoding="utf-8") as file:
        json.dump(table, file, indent=None, separators=(",", ":"))
        file.write("\n")


if __name__ == "__main__":
    match sys.argv[1:]:
        case ["invent", path]:
            write(invented_table(), path)
        case ["table", folder, path]:
            write(exported_table(folder), path)
        case ["time", path]:
            time_visit(path)
        case _:
            sys.exit(__doc__)
