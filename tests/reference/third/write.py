"""Writes calls of a third hand to a folder: visit files, and truth.jsonl, what was the matter.

    python write.py FOLDER [--calls 500] [--seed 1] [--readings 0.5] [--signs 1] [--lie]

Half as many calls with nothing wrong are added. The same words give the same files.
"""

import argparse
import json
from pathlib import Path

import numpy as np

from call import Call
from other_troubles import SOUND
from table import TROUBLES
from visit import document


def drawn(rng, table, count):
    """Names of a table by their shares."""
    shares = np.array([row.share for row in table.values()], dtype=float)
    return [str(name) for name in rng.choice(list(table), count, p=shares / shares.sum())]


def called(seed, at, name):
    """A call that somebody makes: a trouble that nobody notices is seldom found (at service)."""
    for attempt in range(40):
        call = Call([seed, at, attempt], name)
        if call.calls or call.luck(0.08):
            break
    return call


def main():
    """Writes the folder."""
    ask = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ask.add_argument("folder", type=Path)
    ask.add_argument("--calls", type=int, default=500)
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--readings", type=float, default=0.5, help="share taken, above 0 to 1")
    ask.add_argument("--signs", type=float, default=1.0, help="share of the signs asked, 0 to 1")
    ask.add_argument("--lie", action="store_true", help="one instrument of each call lies")
    given = ask.parse_args()
    given.folder.mkdir(parents=True, exist_ok=True)
    rng = np.random.default_rng(given.seed)
    names = drawn(rng, TROUBLES, given.calls) + drawn(rng, SOUND, given.calls // 2)
    lines = []
    for at, name in enumerate(names):
        call = called(given.seed, at, name)
        made = document(call, given.readings, given.signs, given.lie, f"House {at}")
        file = f"c{at:04}.json"
        (given.folder / file).write_text(json.dumps(made))
        truth = [] if name == "none" else [name]
        lines.append(json.dumps({"file": file, "truth": truth}))
    (given.folder / "truth.jsonl").write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()
