"""Times of EPANET 2.2 on the reference networks, for the benchmark's ratios.

Prints one JSON object: network name to seconds by kind of run.

  again    ENinitH and ENrunH over and over on a model whose hydraulics are open:
           nothing but the iteration, the least that EPANET can do
  solve    ENsolveH on a loaded model: opens, initialises, solves, closes
  default  the same at EPANET's own accuracy of 1e-3 instead of 1e-8
  wntr     wntr.sim.EpanetSimulator.run_sim, as a Python user calls it: writes the
           input file, runs EPANET, reads the results back
"""

import json
import logging
import tempfile
import time
import warnings
from pathlib import Path

import wntr
from wntr.epanet.toolkit import ENepanet

from networks import TABLE, model

warnings.simplefilter("ignore")
logging.disable(logging.CRITICAL)


def median(run, samples, repeats):
    taken = []
    for _ in range(samples):
        start = time.perf_counter()
        for _ in range(repeats):
            run()
        taken.append((time.perf_counter() - start) / repeats)
    return sorted(taken)[len(taken) // 2]


def engine(wn, folder):
    inp = f"{folder}/n.inp"
    wntr.network.io.write_inpfile(wn, inp, version=2.2)
    loaded = ENepanet(version=2.2)
    loaded.ENopen(inp, f"{folder}/n.rpt", f"{folder}/n.bin")
    return loaded


def solve_time(wn):
    with tempfile.TemporaryDirectory() as folder:
        loaded = engine(wn, folder)
        seconds = median(loaded.ENsolveH, 20, 10)
        loaded.ENclose()
    return seconds


times = {}
for spec in json.loads(Path(TABLE).read_text())["networks"]:
    wn = model(spec)
    with tempfile.TemporaryDirectory() as folder:
        loaded = engine(wn, folder)
        loaded.ENopenH()

        def again():
            loaded.ENinitH(10)  # flows set anew, nothing saved
            loaded.ENrunH()

        kinds = {"again": median(again, 30, 20)}
        loaded.ENcloseH()
        loaded.ENclose()
        simulator = wntr.sim.EpanetSimulator(wn)
        kinds["wntr"] = median(
            lambda: simulator.run_sim(file_prefix=f"{folder}/w", version=2.2), 5, 1)
    kinds["solve"] = solve_time(wn)
    wn.options.hydraulic.accuracy = 1e-3
    kinds["default"] = solve_time(wn)
    times[spec["name"]] = kinds
print(json.dumps(times))
