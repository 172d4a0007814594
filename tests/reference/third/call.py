"""One call: a plant, its trouble, what is told, seen and read of it, and the visit file."""

import datetime

import numpy as np

import plant as plants
from other_troubles import SOUND
from table import TROUBLES


def words(text):
    """The words of a text."""
    return text.split()


# Instrument: half the bound that holds in 19 of 20 readings (share of the value where below
# zero), how far a lying one is out, and the sign that somebody who checks it sees.
INSTRUMENTS = {
    "dial_gauge": (2.0, (8, 25), "second-gauge-disagrees"),
    "digital_gauge": (0.4, (5, 15), "digital-gauge-not-zero"),
    "differential_gauge": (0.15, (1.5, 5), "differential-gauge-not-zero"),
    "port_thermometer": (0.5, (4, 10), "port-thermometer-ice-wrong"),
    "clamp_thermometer": (1.0, (4, 10), "clamp-thermometer-ice-wrong"),
    "flow_meter": (-0.02, (-0.2, -0.5), "meter-disagrees-with-bucket"),
    "clamp_flow_meter": (-0.05, (-0.25, -0.5), "meter-disagrees-with-bucket"),
    "refractometer": (1.0, (6, 14), "refractometer-water-wrong"),
    "hydrometer": (0.0012, (0.008, 0.02), "hydrometer-water-wrong"),
    "power_meter": (-0.02, (-0.25, -0.5), "power-meter-disagrees"),
    "clamp_ammeter": (-0.03, (-0.25, -0.5), "power-meter-disagrees"),
    "refrigerant_gauges": (0.9, (6, 14), "refrigerant-gauges-not-zero"),
    "test_strip": (-0.1, (-0.4, -0.6), "test-kit-control-fails"),
    "laboratory": (-0.02, None, None),
    "ruler": (0.15, None, None),
    "unit_display": (0.7, (5, 12), "display-thermometer-disagree"),
}
TOLD = words("""gurgling circulator-hums circulator-rattles valve-slams noise-worse-in-summer
low-flow-lockout freeze-guard-trip trips-early-then-settles high-pressure-trip gauge-reads-low
gauge-lower-than-before gauge-reads-high gauge-swings-widely relief-valve-weeps topped-up-often
low-heat high-bill auxiliary-heat-often water-colder-than-it-should worse-when-cold weak-airflow
came-back-after-purge strainer-loads-again other-fluid-added lime-in-house
orange-stains-in-house""")
SEEN = words("""flow-unsteady springy-gauge air-at-vent circulator-vent-gives-air
air-drawn-at-reservoir flow-recovers-after-rest improves-when-warm flow-when-idle
better-after-backflush better-after-acid-wash lockout-though-flow-proven
circulator-sounds-rough circulator-not-turning
circulator-arrows-disagree speed-set-low more-flow-with-one-off shaft-stiff check-valve-hot-spot
no-check-valve-found valve-not-in-run-position isolation-valve-not-open drop-across-open-valve
port-temperatures-disagree split-sign-reversed crossed-at-unit circuit-valve-found-shut
circuit-slow-both-ways circuit-wakes-when-purged circuit-flow-low sample-milky sample-foams
sample-smells sample-discoloured sample-has-grit label-disagrees strainer-screen-dirty
chips-at-exchanger scale-on-parts orange-mud slime-on-screen black-magnetic-dust
bacteria-test-positive wet-or-crusted-fittings loss-with-building-isolated loss-indoors-alone
ground-wet-over-loop one-circuit-loses pressure-follows-temperature tank-rings-full
tank-valve-gives-fluid ewt-drifts-through-season ewt-recovers-after-rest ewt-falls-fast
ewt-creeps-when-idle air-filter-dirty display-disagrees controls-out-of-step oil-stain
hot-gas-both-ways settings-wrong switch-sticks""")
# What nobody calls for by itself.
HISTORY = words("""trips-early-then-settles came-back-after-purge strainer-loads-again
other-fluid-added lime-in-house orange-stains-in-house noise-worse-in-summer""")
WORDS = {
    "gurgling": "It gurgles in the pipes.", "circulator-hums": "The pump hums.",
    "circulator-rattles": "The pump rattles.", "low-heat": "The house is not comfortable.",
    "low-flow-lockout": "It stops with a flow fault.", "high-bill": "The bill is far too high.",
    "freeze-guard-trip": "It stops with a freeze code.", "weak-airflow": "Hardly any air comes.",
    "gauge-lower-than-before": "The gauge has come down.", "gauge-reads-low": "The gauge is low.",
    "gauge-reads-high": "The gauge is very high.", "auxiliary-heat-often": "Strips run all day.",
    "topped-up-often": "It has to be filled again and again.",
}
# What is asked only where the part is there.
PARTS = {
    "sealed": {"springy-gauge", "gauge-reads-low", "gauge-lower-than-before", "gauge-reads-high",
               "gauge-swings-widely", "pressure-follows-temperature", "relief-valve-weeps",
               "loss-with-building-isolated", "loss-indoors-alone", "one-circuit-loses"},
    "tank": {"tank-rings-full", "tank-valve-gives-fluid"},
    "reservoir": {"air-drawn-at-reservoir"},
    "strainer": {"strainer-screen-dirty", "strainer-loads-again", "slime-on-screen"},
    "circuits": {"circuit-valve-found-shut", "circuit-slow-both-ways", "one-circuit-loses",
                 "circuit-wakes-when-purged", "circuit-flow-low"},
    "pumps": {"more-flow-with-one-off"},
    "checks": {"check-valve-hot-spot"},
    "antifreeze": {"label-disagrees", "other-fluid-added", "trips-early-then-settles"},
}
AGES = {"days": (1, 35), "first": (5, 900), "any": (10, 3600), "late": (900, 3800),
        "middle": (400, 2500), "settling": (4, 300), "half-year": (135, 225),
        "from-winter": (120, 230)}
SEASONS = {"any": (0.45, 0.33), "winter": (0.87, 0.05), "summer": (0.02, 0.93),
           "peak": (0.58, 0.42)}


class Call:
    """A call in the making; troubles write into `st` (what is), `rec` (what was done), signs."""

    def __init__(self, seed, name):
        """Makes the call from its seed and the trouble's name."""
        self.rng = rng = np.random.default_rng(seed)
        self.name, self.trouble = name, (TROUBLES | SOUND)[name]
        self.plant = plants.invent(rng)
        while not self.trouble.needs(self.plant):
            self.plant = plants.invent(rng)
        self.s = float(rng.beta(1.2, 1.2))
        self.p, self.ice, self.lie = {}, 0.0, None
        self._times()
        plant = self.plant
        self.st = plants.fresh(plant)
        self.st.air = rng.uniform(0.02, 0.2)
        self.st.body = rng.uniform(10, 30)
        self._habits()
        self.trouble.does(self)
        self._conditions()
        self._what_follows()
        self._what_shows()

    # What troubles use.

    def grade(self, least, gross):
        """A size by severity."""
        return least + (gross - least) * self.s

    def luck(self, share):
        """Whether it comes out so."""
        return bool(self.rng.random() < share)

    def sign(self, name, least, gross=None):
        """A cause of a sign with its probability by severity; several join as in a noisy or."""
        p = least if gross is None else self.grade(least, gross)
        self.p[name] = 1 - (1 - self.p.get(name, 0.0)) * (1 - min(max(p, 0.0), 0.97))

    def signs(self, text):
        """Several signs: name, % at the least severity, % at the gross, after each other."""
        for part in text.split(", "):
            name, least, gross = part.split()
            self.sign(name, int(least) / 100, int(gross) / 100)

    def circuit(self, times):
        """Makes one circuit resist so many times as much."""
        self.st.circuit_k[self.rng.integers(self.plant.circuits)] *= times

    def freeze(self, fahrenheit):
        """The strength with that freeze point."""
        self.st.share = plants.share_for(self.st.kind, min(fahrenheit, 31.5))

    def icy(self, least, gross):
        """Slush may form where the wall of the exchanger comes below the freeze point."""
        self.ice = self.grade(least, gross)

    def smaller(self):
        """Circulators that never were enough."""
        plant, built = self.plant, self.plant.pumps
        aim = self.grade(0.82, 0.5) * plant.rated
        for k in np.linspace(1, 0.3, 29):
            plant.pumps = [
                (round(h * k**2, 1), round(q * k, 1), round(w * k**3)) for h, q, w in built
            ]
            if plants.run(plant, self.st, 40.0)["unit"] <= aim:
                return

    # How it comes about.

    def _times(self):
        rng, trouble = self.rng, self.trouble
        winter, summer = SEASONS[trouble.season]
        months = [1, 2, 3, 11, 12], [6, 7, 8, 9], [4, 5, 10]
        if trouble.season == "peak":
            months = [12, 1, 2, 2], [7, 8, 8, 9], [1]
        at = rng.choice(3, p=[winter, summer, max(0.0, 1 - winter - summer)])
        month = int(rng.choice(months[at]))
        self.date = datetime.date(2025, month, int(rng.integers(1, 29)))
        heats = month in (11, 12, 1, 2, 3) or (month in (4, 5, 10) and rng.random() < 0.7)
        self.mode = "heating" if heats else "cooling"
        low, high = AGES[trouble.age]
        if trouble.age == "any":
            days = rng.exponential(800)
        elif trouble.age in ("first", "settling"):
            days = rng.lognormal(np.log(150 if trouble.age == "first" else 45), 0.9)
        else:
            days = rng.uniform(low, high)
        self.days = int(np.clip(days, low, high))
        if trouble.age == "from-winter":  # back to a day of January to March
            back = self.date - datetime.date(2025, 1, 5)
            self.days = int(back.days - rng.uniform(0, 75))
        self.installed = self.date - datetime.timedelta(days=self.days)

    def _habits(self):
        """How it was commissioned where nothing went wrong."""
        rng, plant = self.rng, self.plant
        start = plants.rest_temperature(plant, self.installed.timetuple().tm_yday)
        well = self.luck(0.4)
        high = {"sealed": rng.normal(57, 5), "sealed_with_tank": rng.normal(28, 4)}
        self.rec = {
            "flushed": True, "velocity": rng.uniform(1.9, 3.2), "flush_hours": rng.uniform(1.5, 4),
            "singly": self.luck(0.25), "cart": float(rng.choice([1.5, 2.0])),
            "isolated": self.luck(0.9), "filtered": self.luck(0.88), "bled": self.luck(0.96),
            "tested": self.luck(0.3), "source": "well" if well else "mains",
            "relaxed": self.luck(0.94), "charge": high.get(plant.centre),
            "charge_at": 0.6 * start + 22 + rng.normal(0, 3), "dead_head": rng.uniform(0.2, 1.2),
            "mixed": rng.uniform(2, 5), "checked": self.luck(0.85), "chloride": rng.uniform(5, 60),
            "hardness": float(np.clip(rng.lognormal(np.log(170 if well else 100), 0.5), 5, 450)),
            "iron": rng.lognormal(np.log(0.12 if well else 0.04), 0.7),
        }

    def _conditions(self):
        """Temperatures, flows and pressures of the day."""
        plant, st, day = self.plant, self.st, self.date.timetuple().tm_yday
        self.rest = plants.rest_temperature(plant, day)
        busy = 0.45 + 0.55 * abs(np.cos((day - 25) / 365 * 2 * np.pi))
        self.sound_ewt = plants.entering(plant, plants.fresh(plant), day, self.mode, busy)
        self.ewt = plants.entering(plant, st, day, self.mode, busy) + self.rng.normal(0, 1.5)
        self.run = plants.run(plant, st, self.ewt)
        self.ratio = self.run["unit"] / plant.rated
        self._unit()
        lower = max(busy, 0.9) / busy if self.mode == "heating" else 1.0
        self.lowest = self.rest + (self.ewt - self.rest) * lower - abs(self.rng.normal(0, 1))
        self.worst = plants.run(plant, st, self.lowest)["unit"] if lower > 1 else self.run["unit"]
        mean = (self.ewt + self.lwt) / 2
        self.now_at = self.rest + 0.5 * (mean - self.rest)
        charge, relaxed, charged_at = (self.rec[n] for n in ("charge", "relaxed", "charge_at"))
        hours = self.days * 24.0
        self.static = plants.pressure(plant, st, charge, hours, charged_at, self.now_at, relaxed)
        draw = 0.45 * self.run["rise"] + self.run["strainer"]
        if plant.centre == "non_pressurised":
            draw = 0.3 + self.run["strainer"]
        self.suction = max(self.static - draw, -9.0)
        if plant.centre != "non_pressurised" and self.suction < -1:
            st.air += 0.15 * self.s  # drawn in at the suction

    def _unit(self):
        """Capacity in Btu/h, input in W, leaving water in degF."""
        plant, st, rng = self.plant, self.st, self.rng
        starved = min(self.ratio, 1.0) ** 0.12 if self.ratio > 0.05 else 0.5
        share = st.capacity * starved * (1 - 0.012 * st.fouling) * rng.normal(1, 0.03)
        if self.mode == "heating":
            self.rated = plant.tons * 9600
            capacity, cop = self.rated * (1 + 0.011 * (self.ewt - 32)), 3.6 + 0.03 * (self.ewt - 32)
        else:
            self.rated = plant.tons * 12000
            capacity, cop = self.rated * (1 - 0.006 * (self.ewt - 77)), 5.0 - 0.06 * (self.ewt - 77)
        self.watts = capacity / cop / 3.412 * st.power * (1 + 0.006 * st.fouling)
        self.watts *= rng.normal(1, 0.03)
        self.capacity = capacity * share
        heat = self.capacity + (3.412 if self.mode == "cooling" else -3.412) * self.watts
        flow = max(self.run["unit"], 0.08 * plant.rated)  # it would have stopped below that
        change = min(heat / flow / plants.heat_factor(st.kind, st.share), 32.0)
        self.lwt = self.ewt + (change if self.mode == "cooling" else -change)
        self.short = 1 - st.capacity * starved * (1 - 0.012 * st.fouling)

    def _what_follows(self):
        """Signs that follow from how things stand, whatever the trouble."""
        st, rec, sign, plant = self.st, self.rec, self.sign, self.plant
        air, heating = max(st.air - 0.22, 0.0), self.mode == "heating"
        if air > 0:
            sign("gurgling", 0.25 + 0.35 * air)
            sign("flow-unsteady", 0.25 + 0.35 * air)
            sign("air-at-vent", 0.4 + 0.3 * air)
            sign("springy-gauge", 0.3 + 0.3 * air)
            sign("sample-milky", 0.15 + 0.25 * air)
            sign("circulator-vent-gives-air", 0.15 + 0.2 * air)
            sign("circulator-rattles", 0.08 + 0.12 * air)
            sign("circuit-wakes-when-purged", 0.08 + 0.1 * air)
            sign("low-flow-lockout", 0.04 + 0.14 * air)  # a slug at the flow switch
        sign("circulator-vent-gives-air", 0.9 * min(2 * st.pump_air, 1))
        sign("circulator-rattles", 0.65 * st.pump_air)
        sign("gurgling", 0.35 * st.pump_air)
        sign("flow-unsteady", 0.4 * st.pump_air)
        sign("circulator-hums", 0.03 + 0.3 * st.pump_air)
        pressed = plant.centre != "non_pressurised"
        if pressed and self.suction < 4:
            starve = min((4 - self.suction) / 8, 1.0)
            sign("circulator-hums", 0.25 + 0.4 * starve)
            sign("circulator-rattles", 0.05 + 0.4 * starve)
            sign("flow-unsteady", 0.3 * starve)
            sign("gurgling", 0.3 * starve)
            sign("air-at-vent", 0.25 * starve)
            sign("noise-worse-in-summer", 0.05 if heating else 0.4)
        if st.level < -6:  # the outlet of the reservoir takes air along
            deep = min((-6 - st.level) / 10, 1.0)
            sign("gurgling", 0.1 + 0.35 * deep)
            sign("flow-unsteady", 0.1 + 0.35 * deep)
            sign("air-drawn-at-reservoir", 0.1 + 0.4 * deep)
            sign("circulator-rattles", 0.05 + 0.25 * deep)
            sign("low-flow-lockout", 0.05 + 0.3 * deep)
        if plant.centre == "sealed_with_tank":
            sign("springy-gauge", 0.25 if st.tank_works else 0.02)
        if pressed:
            low, fallen = self.static, (rec["charge"] or 0) - self.static
            half = 1.0 if plant.centre == "sealed" else 0.5
            sign("gauge-reads-low", 0.8 if low < 12 * half else 0.4 if low < 24 * half else 0.03)
            sign("gauge-lower-than-before", min(max((fallen - 6) / 25, 0), 0.85))
            sign("gauge-reads-high", 0.8 if low > 80 else 0.35 if low > 66 else 0.0)
            sign("relief-valve-weeps", 0.6 if low > 95 else 0.25 if low > 80 else 0.0)
            sign("pressure-follows-temperature", 0.08)
        stops = 0.0
        if self.luck(0.8):  # most units guard the flow
            short = self.worst / plant.least
            stops = 0.85 if short < 0.85 else 0.6 if short < 1 else 0.15 if short < 1.1 else 0.0
            sign("low-flow-lockout", stops)
        guard = 30 if plant.kind == "water" else 15
        coldest = self.lowest - (self.ewt - self.lwt)
        if heating:
            near = 0.25 if coldest < guard + 4 else 0.0
            sign("freeze-guard-trip", 0.8 if coldest < guard else near)
            wall = coldest - 5
            if self.ice and wall < plants.freeze_point(st.kind, st.share) + 1:
                sign("freeze-guard-trip", 0.3 + 0.6 * self.ice)
                sign("flow-recovers-after-rest", 0.2 + 0.5 * self.ice)
                sign("worse-when-cold", 0.2 + 0.45 * self.ice)
                sign("low-flow-lockout", 0.4 * self.ice)
                stops = max(stops, 0.5 * self.ice)
        else:
            sign("high-pressure-trip", 0.6 if self.lwt > 115 else 0.15 if self.lwt > 105 else 0.0)
        away = abs(self.ewt - self.sound_ewt)
        sign("water-colder-than-it-should", min(max((away - 3) / 12, 0), 0.6))
        sign("ewt-drifts-through-season", min(max((away - 5) / 30, 0), 0.3))
        lack = max(self.short, 0) + 0.35 * stops + 0.01 * away
        sign("low-heat", min(1.9 * lack, 0.8))
        sign("high-bill", min(0.03 + 1.5 * lack, 0.65))
        sign("auxiliary-heat-often", min(1.6 * lack, 0.7) if heating else 0.05 * lack)
        if heating and self.ratio < 0.9:
            warm = plants.run(plant, st, 75.0)["unit"] / max(self.run["unit"], 0.1)
            sign("improves-when-warm", min(max((warm - 1.12) * 2, 0), 0.6))
            sign("worse-when-cold", min(max((warm - 1.12) * 1.5, 0), 0.4))
        each = self.run["circuits"]
        least = min(each) / max(np.mean(each), 0.01)
        sign("circuit-flow-low", 0.92 if least < 0.5 else 0.55 if least < 0.75 else 0.01)
        if plant.strainer and st.strainer_k > 4:
            sign("strainer-screen-dirty", 0.7)
        sign("lime-in-house", 0.6 if rec["hardness"] > 200 else 0.08)
        sign("scale-on-parts", 0.06 if rec["hardness"] > 200 else 0.0)
        sign("orange-stains-in-house", 0.6 if rec["iron"] > 0.4 else 0.02)

    def _what_shows(self):
        """What there is to be told and seen on the day, and whether anybody would call."""
        plant = self.plant
        have = {"sealed": plant.centre != "non_pressurised", "strainer": plant.strainer,
                "tank": plant.centre == "sealed_with_tank", "checks": plant.checks,
                "reservoir": plant.centre == "non_pressurised", "pumps": len(plant.pumps) > 1,
                "circuits": plant.circuits > 1, "antifreeze": plant.kind != "water"}
        out = {n for part, names in PARTS.items() if not have[part] for n in names}
        if not self.luck(0.35):
            out.add("circuit-flow-low")  # few manifolds have meters or balancing valves
        if not plant.checks and len(plant.pumps) > 1:
            self.sign("no-check-valve-found", 0.8)
        self.there = {n: self.luck(self.p.get(n, 0.0)) for n in TOLD + SEEN if n not in out}
        self.calls = any(self.there.get(n) for n in TOLD if n not in HISTORY)

    # What the technician is told and sees.

    def answers(self, asked):
        """Answers to the signs: 4 % of what is there is missed, 0.5 % of the rest imagined."""
        rng, said = self.rng, {}
        for name, there in self.there.items():
            seen = self.luck(0.96 if there else 0.005)
            if self.luck(asked):
                said[name] = seen
        for _, _, check in INSTRUMENTS.values():
            if check and check not in said and self.luck(asked):
                wrong = self.lie and INSTRUMENTS[self.lie[0]][2] == check
                said[check] = self.luck(0.9 if wrong else 0.005)
        if self.lie and self.lie[0] == "unit_display" and "display-disagrees" in said:
            said["display-disagrees"] |= self.luck(0.8)
        if self.lie and self.lie[0] == "digital_gauge" and "second-gauge-disagrees" in said:
            said["second-gauge-disagrees"] |= self.luck(0.7)
        began = np.array(self.trouble.began) / 100
        told = rng.choice(4, p=[*began, max(0.0, 1 - sum(began))])
        if self.luck(0.12):
            told = 3  # nobody knows
        if told < 3 and self.luck(asked):
            for at, name in enumerate(["since-start-up", "came-on-slowly", "came-on-suddenly"]):
                said[name] = at == told
        if self.luck(asked):
            said["after-work"] = self.luck(self.trouble.after_work)
            said["complaint-recurs"] = self.luck(0.08 if self.name in SOUND else 0.18)
        return said
