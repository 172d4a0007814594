"""Works an exported call out again with general-purpose libraries.

    returnline graph export --visit CALL.json > call.bif
    returnline graph export --visit CALL.json --format xmlbif > call.xml
    returnline diagnose CALL.json --json > answer.json
    python recompute.py call.bif call.xml answer.json

Reads call.bif with pyAgrum and with pgmpy, and call.xml with pgmpy, sets every
variable named seen_... to yes, and compares the probabilities of the causes in
the answer with what each library says. Exits with 1 if any is off by 1e-6.
"""

import json
import sys

import pyagrum as gum
from pgmpy.inference import VariableElimination
from pgmpy.readwrite import BIFReader, XMLBIFReader


def by_pyagrum(path, causes):
    bn = gum.loadBN(path)
    engine = gum.LazyPropagation(bn)
    engine.setEvidence({name: 1 for name in bn.names() if name.startswith("seen_")})
    for cause in causes:
        engine.addTarget(cause)
    engine.makeInference()
    return {cause: float(engine.posterior(cause)[1]) for cause in causes}


def by_pgmpy(reader, causes):
    model = reader.get_model()
    seen = {name: "yes" for name in model.nodes() if name.startswith("seen_")}
    ask = VariableElimination(model)
    answers = {}
    for cause in causes:
        factor = ask.query([cause], evidence=seen, show_progress=False)
        answers[cause] = float(factor.get_value(**{cause: "yes"}))
    return answers


def main(bif, xml, answer):
    with open(answer, encoding="utf-8") as file:
        causes = json.load(file)["assessment"]["causes"]
    told = {cause["id"].replace("-", "_"): cause["probability"] for cause in causes}
    off = 0.0
    for name, said in [
        ("pyagrum, bif", by_pyagrum(bif, told)),
        ("pgmpy, bif", by_pgmpy(BIFReader(bif), told)),
        ("pgmpy, xmlbif", by_pgmpy(XMLBIFReader(xml), told)),
    ]:
        worst = max(abs(said[cause] - told[cause]) for cause in told)
        print(f"{name}: {len(told)} causes, largest difference {worst:.1e}")
        off = max(off, worst)
    sys.exit(off > 1e-6)


if __name__ == "__main__":
    if len(sys.argv) != 4:
        sys.exit(__doc__)
    main(*sys.argv[1:])
