"""Ground-loop networks, solved by EPANET 2.2 through wntr.

Every network is written out link by link, so that the comparison needs nothing
but this file's JSON. Lengths in m, bores and roughness in mm, flows in L/s,
heads in m, kinematic viscosity in m2/s.
"""

import json
import math
import random
import tempfile
from pathlib import Path

import wntr

TABLE = Path(__file__).parent / "tables" / "networks.json"
WATER, COLD_GLYCOL, THICK = 1.31e-6, 3.4e-6, 2.2e-5
EPANET_VISCOSITY = 1.1e-5 * 0.3048**2
GRAVITY = 32.2 * 0.3048  # as EPANET has it, 0.08 % over the standard
ROUGH = 0.0015
CIRCULATOR = [[0.0, 9.5], [0.7, 7.4], [1.5, 2.0]]
STRONG = [[0.0, 24.0], [2.5, 19.0], [6.0, 4.0]]
LISTED = [[0.0, 9.0], [0.4, 8.2], [0.8, 6.7], [1.2, 4.4], [1.6, 1.3]]


class Builder:
    """Collects links between numbered nodes; node 0 is held."""

    def __init__(self, name, viscosity=WATER):
        self.spec = {"name": name, "viscosity": viscosity, "nodes": 1, "links": []}

    def node(self):
        self.spec["nodes"] += 1
        return self.spec["nodes"] - 1

    def pipe(self, a, b, bore, length, k=0.0, state="open"):
        self.spec["links"].append({"kind": "pipe", "from": a, "to": b, "bore": bore,
                                   "length": length, "k": k, "state": state})

    def pump(self, a, b, curve=CIRCULATOR, speed=1.0, check=False):
        """`check`: with a check valve, which EPANET has in every pump."""
        link = {"kind": "pump", "from": a, "to": b, "curve": curve, "speed": speed}
        self.spec["links"].append(link | ({"check": True} if check else {}))

    def field(self, a, b, circuits, headers, reverse=False):
        """circuits: (bore, length, k, state); headers: (bore, length) per section."""
        at, offs = a, []
        for bore, length in headers:
            nxt = self.node()
            self.pipe(at, nxt, bore, length, 0.6)
            offs.append(nxt)
            at = nxt
        at, collects = b, {}
        order = list(range(len(circuits)))
        for i in reversed(order) if reverse else order:
            nxt = self.node()
            bore, length = headers[i if not reverse else len(headers) - 1 - i]
            self.pipe(nxt, at, bore, length, 0.6)
            collects[i] = nxt
            at = nxt
        for i, (bore, length, k, state) in enumerate(circuits):
            self.pipe(offs[i], collects[i], bore, length, k, state)

    def plant(self, pumps):
        """Pump(s) from the held node, then an exchanger as a lossy metre of pipe."""
        at = 0
        for curve, speed in pumps:
            nxt = self.node()
            self.pump(at, nxt, curve, speed)
            at = nxt
        out = self.node()
        self.pipe(at, out, 27.3, 4.0, 14.0)
        return out


def circuits(lengths, bore=21.8, k=3.0):
    return [(bore, length, k, "open") for length in lengths]


def build():
    made = []

    def add(name, field, headers, pumps=((CIRCULATOR, 1.0),), viscosity=WATER, reverse=False,
            more=None):
        b = Builder(name, viscosity)
        out = b.plant(pumps)
        b.field(out, 0, field, headers, reverse)
        if more:
            more(b, out)
        made.append(b.spec)

    even = [(34.5, 3.0)] * 3
    add("three-equal-direct", circuits([120] * 3), even)
    add("three-equal-reverse", circuits([120] * 3), even, reverse=True)
    add("unequal-length", circuits([60, 140, 210]), even)
    add("unequal-size", [(21.8, 150, 3, "open"), (27.3, 180, 3, "open"), (34.5, 240, 3, "open")], even)
    add("one-blocked", [(21.8, 120, 3, "open"), (21.8, 120, 900, "open"), (21.8, 120, 3, "open")], even)
    add("one-shut", [(21.8, 120, 3, "open"), (21.8, 120, 3, "shut"), (21.8, 120, 3, "open")], even)
    add("bypass", circuits([120, 130, 140]), even,
        more=lambda b, out: b.pipe(out, 0, 27.3, 0.5, 60.0))
    add("two-in-series", circuits([180] * 4), [(49.4, 10.0)] * 4,
        pumps=((CIRCULATOR, 1.0), (CIRCULATOR, 1.0)))
    add("series-slow-second", circuits([180, 200]), [(49.4, 10.0)] * 2,
        pumps=((CIRCULATOR, 1.0), (CIRCULATOR, 0.6)))

    def second_pump(b, out):
        b.pump(0, 1, CIRCULATOR, 0.9)
    add("two-in-parallel", circuits([100] * 6), [(49.4, 6.0)] * 6, more=second_pump)
    add("curve-by-points", circuits([110, 150, 170]), even, pumps=((LISTED, 1.0),))
    add("cold-glycol", circuits([90, 100, 110]), even, viscosity=COLD_GLYCOL)
    add("laminar", circuits([90, 100, 110]), even, viscosity=THICK)
    stepped = [(72.7, 6.0)] * 4 + [(49.4, 6.0)] * 4 + [(34.5, 6.0)] * 4
    add("stepped-reverse", circuits([150 + 5 * i for i in range(12)]), stepped,
        pumps=((STRONG, 1.0),), reverse=True)
    rnd = random.Random(7)
    many = [(rnd.choice([21.8, 27.3]), rnd.uniform(60, 220), rnd.uniform(1, 8), "open")
            for _ in range(40)]
    add("forty-unequal", many, [(93.5, 4.0)] * 20 + [(72.7, 4.0)] * 20,
        pumps=((STRONG, 1.3), (STRONG, 1.3)))

    def ties(b, out):
        b.pipe(3, 5, 21.8, 15.0, 1.0)
        b.pipe(6, 8, 21.8, 25.0, 1.0)
    add("cross-ties", circuits([100, 140, 90, 160]), [(34.5, 8.0)] * 4, more=ties)

    def weak_pump(b, out):
        b.spec["links"][0]["check"] = True
        b.pump(0, 1, CIRCULATOR, 0.5, check=True)
    add("weak-one-beside", circuits([100, 150, 130]), even, more=weak_pump)
    return made


def drawn(rnd, name):
    """A network by chance: circuits, headers, pumps, bypass and ties of any kind."""
    bores = [21.8, 27.3, 34.5, 39.5, 49.4, 72.7]
    b = Builder(name, rnd.choice([1.0e-6, 1.31e-6, 1.8e-6, 3.4e-6, 6e-6, 2.2e-5]))
    curve = rnd.choice([CIRCULATOR, STRONG, LISTED])

    def speed():
        return round(rnd.uniform(0.5, 1.4), 3)
    if rnd.random() < 0.4:
        out = b.plant([(curve, 1.0)])
        b.spec["links"][0]["check"] = True
        b.pump(0, 1, curve, speed(), check=True)
    else:
        out = b.plant([(curve, speed()) for _ in range(rnd.choice([1, 2, 3]))])
    count = rnd.choice([2, 3, 5, 8, 13])
    field = []
    for i in range(count):
        # A shut circuit at either end would leave pipes without flow, in which
        # EPANET's small numbers mean nothing.
        shut = 0 < i < count - 1 and rnd.random() < 0.2
        field.append((rnd.choice(bores[:3]), round(rnd.uniform(5, 400), 1),
                      rnd.choice([0, 3, round(rnd.uniform(0, 2000))]), "shut" if shut else "open"))
    headers = sorted(((rnd.choice(bores[2:]), round(rnd.uniform(0.5, 20), 1))
                      for _ in range(count)), reverse=True)
    b.field(out, 0, field, headers, rnd.random() < 0.5)
    if rnd.random() < 0.3:
        b.pipe(out, 0, rnd.choice(bores[:3]), 1.0, round(10 ** rnd.uniform(0, 4)))
    for _ in range(rnd.choice([0, 0, 1, 3])):
        at, to = rnd.sample(range(1, b.spec["nodes"]), 2)
        b.pipe(at, to, rnd.choice(bores[:2]), round(rnd.uniform(1, 60), 1), 2.0)
    return b.spec


def friction(re, rough):
    """EPANET's law: 64/Re, Dunlop's cubic, Swamee-Jain (User Manual, section 3.1)."""
    def turbulent(re):
        return 0.25 / math.log10(rough / 3.7 + 5.74 / re**0.9) ** 2
    if re <= 2000:
        return 64 / max(re, 1e-9)
    if re >= 4000:
        return turbulent(re)
    y2 = rough / 3.7 + 5.74 / 4000**0.9
    fa = turbulent(4000)
    fb = fa * (2 + 0.00514215 / (y2 * 0.86859 * math.log(y2)))
    r = re / 2000
    return (7 * fa - fb) + r * ((0.128 - 17 * fa + 2.5 * fb) + r * (
        (-0.128 + 13 * fa - 2 * fb) + r * (0.032 - 3 * fa + 0.5 * fb)))


def unsettled(spec):
    """Largest error of energy in a pipe of EPANET's answer, over the largest head."""
    worst = 0.0
    for link, flow in zip(spec["links"], spec["flows"]):
        if link["kind"] != "pipe" or link["state"] == "shut":
            continue
        bore = link["bore"] / 1e3
        v = flow / 1e3 / (math.pi * bore**2 / 4)
        f = friction(abs(v) * bore / spec["viscosity"], ROUGH / link["bore"])
        loss = (f * link["length"] / bore + link["k"]) * v * abs(v) / (2 * GRAVITY)
        drop = spec["heads"][link["from"]] - spec["heads"][link["to"]]
        worst = max(worst, abs(loss - drop))
    return worst / max(abs(head) for head in spec["heads"])


def by_chance(count):
    """Networks drawn by chance that EPANET itself has brought to rest."""
    rnd, kept = random.Random(2024), []
    while len(kept) < count:
        spec = solve(drawn(rnd, f"drawn-{len(kept) + 1}"))
        if unsettled(spec) < 1e-4:
            kept.append(spec)
    return kept


def model(spec):
    wn = wntr.network.WaterNetworkModel()
    wn.options.hydraulic.headloss = "D-W"
    wn.options.hydraulic.viscosity = spec["viscosity"] / EPANET_VISCOSITY
    wn.options.hydraulic.accuracy = 1e-8
    wn.options.hydraulic.trials = 400
    wn.options.time.duration = 0
    wn.add_reservoir("0", base_head=50.0)
    for i in range(1, spec["nodes"]):
        wn.add_junction(str(i), base_demand=0.0, elevation=0.0)
    for i, link in enumerate(spec["links"]):
        a, b, name = str(link["from"]), str(link["to"]), f"L{i}"
        if link["kind"] == "pipe":
            wn.add_pipe(name, a, b, length=link["length"], diameter=link["bore"] / 1e3,
                        roughness=ROUGH / 1e3, minor_loss=link["k"],
                        initial_status="CLOSED" if link["state"] == "shut" else "OPEN")
        else:
            wn.add_curve(f"C{i}", "HEAD", [(q / 1e3, h) for q, h in link["curve"]])
            wn.add_pump(name, a, b, "HEAD", f"C{i}", speed=link["speed"])
    return wn


def solve(spec):
    wn = model(spec)
    with tempfile.TemporaryDirectory() as folder:
        results = wntr.sim.EpanetSimulator(wn).run_sim(file_prefix=f"{folder}/n", version=2.2)
    flow = results.link["flowrate"].iloc[0]
    head = results.node["head"].iloc[0]
    spec["flows"] = [round(float(flow[f"L{i}"]) * 1e3, 8) for i in range(len(spec["links"]))]
    spec["heads"] = [round(float(head[str(i)]) - 50.0, 6) for i in range(spec["nodes"])]
    reynolds = [4 * abs(q) / 1e3 / (3.141592653589793 * l["bore"] / 1e3 * spec["viscosity"])
                for q, l in zip(spec["flows"], spec["links"]) if l["kind"] == "pipe"]
    spec["in_transition"] = sum(2000 < re < 4000 for re in reynolds)
    return spec


if __name__ == "__main__":
    networks = [solve(spec) for spec in build()] + by_chance(10)
    TABLE.write_text(json.dumps({
        "about": "Networks and their flows. EPANET 2.2 through wntr " + wntr.__version__
                 + ", sim.EpanetSimulator, head loss D-W. Published source: L. Rossman et al.,"
                   " EPANET 2.2 User Manual, US EPA, EPA/600/R-20/133 (2020).",
        "units": "m; bore mm; flow L/s; head m against node 0; viscosity m2/s; roughness 0.0015 mm",
        "networks": networks}, indent=None, separators=(",", ":")).replace('{"name"', '\n{"name"') + "\n")
    for spec in networks:
        print(spec["name"], spec["in_transition"], max(spec["flows"]))
