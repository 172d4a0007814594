"""Times one piece of work with a library well known for it, for bench_table.

    python bench.py TASK INPUT.json

Prints one JSON object: `seconds`, the median of the runs, or `none`, why there is
none. Only the work is timed: modules are loaded, and input is read, before.

  posteriors  pyAgrum LazyPropagation: every node of a network with its evidence
  check       the same, and what one more report tells about every cause
  properties  CoolProp, its low-level interface: four properties of a solution
  network     EPANET 2.2 through wntr: ENinitH and ENrunH on a loaded model
  band        numpy: the Monte Carlo of band.py, 400 000 samples a moment
  report      reportlab platypus: the texts of a report as paragraphs, fonts embedded
  board       sqlite3: three figures of the board as plain SQL over the records
"""

import json
import logging
import resource
import sys
import tempfile
import time
import warnings

warnings.simplefilter("ignore")
logging.disable(logging.CRITICAL)
# A junction tree can ask for more than there is; then it says so instead.
MEMORY = 3 << 30


def median(run, sample=5e-4, enough=51, least=3, patience=5.0):
    """Seconds of a run: the middle of many samples, each long enough to be told."""
    run()
    repeats = 1
    while repeats < 1 << 20:
        start = time.perf_counter()
        for _ in range(repeats):
            run()
        if time.perf_counter() - start >= sample:
            break
        repeats *= 2
    begun, taken = time.perf_counter(), []
    while len(taken) < least or (len(taken) < enough and time.perf_counter() - begun < patience):
        start = time.perf_counter()
        for _ in range(repeats):
            run()
        taken.append((time.perf_counter() - start) / repeats)
    return sorted(taken)[len(taken) // 2]


def loaded(path):
    import pyagrum as gum

    bn = gum.loadBN(path)
    seen = {name: 1 for name in bn.names() if name.startswith("seen_")}
    return gum, bn, seen


def posteriors(given):
    gum, bn, seen = loaded(given["bif"])
    # The chain that leads to the call is no node of the graph.
    targets = [name for name in bn.names() if not name.startswith(("seen_", "call_by_"))]

    def run():
        engine = gum.LazyPropagation(bn)
        engine.setEvidence(seen)
        engine.makeInference()
        for name in targets:
            engine.posterior(name)

    return median(run)


def check(given):
    from inference import add_report, mutual_information

    gum, bn, seen = loaded(given["bif"])

    def name(text):
        return text and text.replace("-", "_")

    labels = ["0", "1", "2"][: given["levels"]]
    add_report(bn, "report", name(given["asked"]), labels, given["reliability"],
               name(given["instrument"]))
    pairs = [("report", name(cause)) for cause in given["causes"]]

    def run():
        engine = gum.LazyPropagation(bn)
        engine.setEvidence(seen)
        for one, other in pairs:
            engine.addJointTarget({one, other})
        engine.makeInference()
        for one, other in pairs:
            mutual_information(engine.jointPosterior({one, other}), one, other)

    return median(run)


def properties(given):
    import CoolProp.CoolProp as CP

    state = CP.AbstractState("INCOMP", "MPG")
    state.set_mass_fractions([given["mass_fraction"]])
    kelvin = [value + 273.15 for value in given["celsius"]]

    def run():
        for t in kelvin:
            state.update(CP.PT_INPUTS, 3e5, t)
            state.rhomass(), state.cpmass(), state.conductivity(), state.viscosity()

    return median(run)


def network(given):
    from networks import model
    from wntr.epanet.toolkit import ENepanet
    import wntr

    with tempfile.TemporaryDirectory() as folder:
        inp = f"{folder}/n.inp"
        wntr.network.io.write_inpfile(model(given), inp, version=2.2)
        engine = ENepanet(version=2.2)
        engine.ENopen(inp, f"{folder}/n.rpt", f"{folder}/n.bin")
        engine.ENopenH()

        def run():
            engine.ENinitH(10)  # flows set anew, nothing saved
            engine.ENrunH()

        seconds = median(run)
        engine.ENcloseH()
        engine.ENclose()
    return seconds


def band(given):
    import numpy as np
    from band import LOOPS, MODEL, pressure, properties as grids, weighted

    loop = dict(LOOPS[1])
    loop["_rho"], loop["_kappa"] = grids(loop)
    random = np.random.default_rng(1)
    z = random.standard_normal((9, 400_000))

    def run():
        for days in given["days"]:
            moment = dict(days=days, c=14.0, c_u=1.0)
            p = pressure(loop, z, moment, z[7]) + MODEL * z[8]
            weighted(p, np.ones(p.size))

    return median(run, least=1)


def report(given):
    from xml.sax.saxutils import escape
    from reportlab.lib.pagesizes import letter
    from reportlab.lib.styles import ParagraphStyle
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFont
    from reportlab.platypus import Paragraph, SimpleDocTemplate

    texts = [text for text in given["texts"] if text]

    def run():
        # Read anew, as on our side each report subsets its fonts anew.
        pdfmetrics.registerFont(TTFont("Text", given["face"]))
        style = ParagraphStyle("text", fontName="Text", fontSize=10, leading=14, spaceAfter=2)
        SimpleDocTemplate(given["out"], pagesize=letter).build(
            [Paragraph(escape(text), style) for text in texts])

    return median(run)


FIGURES = [
    "SELECT json_extract(commissioning.document, '$.crew'), count(*) FROM visit "
    "JOIN commissioning ON commissioning.system_id = visit.system_id "
    "WHERE complaint IS NOT NULL GROUP BY 1",
    "SELECT cause, count(*), sum(cost) FROM verdict JOIN visit ON visit.id = visit_id "
    "WHERE confirmed = 1 GROUP BY 1 ORDER BY 2 DESC",
    "SELECT cause, sum(held), count(*) FROM follow_up GROUP BY 1",
]


def board(given):
    import sqlite3

    def ask(connection):
        for figure in FIGURES:
            connection.execute(figure).fetchall()

    if given["closed"]:
        def run():
            # Read only: closing it then costs no checkpoint.
            connection = sqlite3.connect(f"file:{given['path']}?mode=ro", uri=True)
            ask(connection)
            connection.close()
        return median(run)
    connection = sqlite3.connect(given["path"])
    return median(lambda: ask(connection))


TASKS = [posteriors, check, properties, network, band, report, board]


def main(task, path):
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
    with open(path, encoding="utf-8") as file:
        given = json.load(file)
    try:
        answer = {"seconds": next(one for one in TASKS if one.__name__ == task)(given)}
    except MemoryError:
        answer = {"none": "> 3 GiB"}
    except Exception as error:  # pyAgrum has its own kind for want of memory
        if "memory" not in str(error).lower() and "alloc" not in str(error).lower():
            raise
        answer = {"none": "> 3 GiB"}
    print(json.dumps(answer))


if __name__ == "__main__":
    main(*sys.argv[1:])
