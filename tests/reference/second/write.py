"""Writes calls to a folder: visit files, and truth.jsonl, which says what was the matter.

    python write.py FOLDER [--calls 500] [--seed 1] [--readings 0.5] [--signs 1] [--lie]

Half as many calls with nothing wrong are added.
"""

import argparse
import json
from pathlib import Path

import faults
import make
import numpy as np

INSTRUMENTS = {"dial-gauge-lies", "unit-display-lies"}


def drawn(rng, table, count):
    names = list(table)
    shares = np.array([table[name][0] for name in names])
    return [names[at] for at in rng.choice(len(names), count, p=shares / shares.sum())]


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("folder", type=Path)
    ask.add_argument("--calls", type=int, default=500)
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--readings", type=float, default=0.5)
    ask.add_argument("--signs", type=float, default=1.0)
    ask.add_argument("--lie", action="store_true")
    given = ask.parse_args()
    given.folder.mkdir(parents=True, exist_ok=True)
    rng = np.random.default_rng(given.seed)
    names = drawn(rng, faults.F, given.calls) + drawn(rng, faults.N, given.calls // 2)
    lines = []
    for at, fault in enumerate(names):
        document, truth = make.call(
            [given.seed, at], fault, given.readings, given.signs, given.lie, f"House {at}"
        )
        if truth["fault"] in INSTRUMENTS:
            continue  # instruments have a list of their own
        name = f"c{at:04}.json"
        (given.folder / name).write_text(json.dumps(document))
        what = [] if truth["fault"] == "none" else [truth["fault"]]
        lines.append(json.dumps({"file": name, "truth": what}))
    (given.folder / "truth.jsonl").write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()
