"""Time of one hydraulic solution by EPANET 2.2, for the benchmark's ratios.

Prints one JSON object: network name to seconds. Only the solution is timed
(ENinitH and ENrunH of wntr.epanet.toolkit, again and again on an open network);
reading and writing of files is left out, which favours EPANET.
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
times = {}
for spec in json.loads(Path(TABLE).read_text())["networks"]:
    with tempfile.TemporaryDirectory() as folder:
        inp = f"{folder}/n.inp"
        wntr.network.io.write_inpfile(model(spec), inp, version=2.2)
        engine = ENepanet(version=2.2)
        engine.ENopen(inp, f"{folder}/n.rpt", f"{folder}/n.bin")
        engine.ENopenH()
        samples = []
        for _ in range(30):
            start = time.perf_counter()
            for _ in range(20):
                engine.ENinitH(10)  # flows set anew, nothing saved
                engine.ENrunH()
            samples.append((time.perf_counter() - start) / 20)
        engine.ENcloseH()
        engine.ENclose()
    times[spec["name"]] = sorted(samples)[len(samples) // 2]
print(json.dumps(times))
