"""The visit file of a call: the record as far as it is known, the readings, the answers."""

import datetime

import numpy as np

import plant as plants
from call import INSTRUMENTS, TOLD, WORDS

UNIT = {"freeze_point_supply": "degF", "freeze_point_return": "degF", "flow": "gpm",
        "sample_temperature": "degF", "entering_water": "degF", "leaving_water": "degF",
        "loop_temperature": "degF", "circuit_return": "degF", "lowest_entering_water": "degF",
        "circulator_body_temperature": "degF", "evaporating_temperature": "degF",
        "condensing_temperature": "degF", "superheat": "degF", "subcooling": "degF",
        "air_temperature_change": "degF", "specific_gravity": "1", "fluid_ph": "1",
        "water_ph": "1", "reservoir_level_change": "in", "dead_head_drop": "in",
        "top_up_volume": "gal", "circulator_power": "W", "circulator_current": "A",
        "unit_power": "W", "unit_capacity": "Btu/h", "water_conductivity": "uS/cm"}
# What of a fluid a refractometer shows, against propylene glycol.
BENDS = {"propylene_glycol": 1.0, "ethylene_glycol": 0.95, "methanol": 0.2, "ethanol": 0.55,
         "water": 0.0}


def m(value, unit, digits=1):
    """A number with its unit."""
    return {"value": round(float(value), digits), "unit": unit}


class Readings:
    """Readings as instruments give them, a share of them taken."""

    def __init__(self, call, share):
        """Starts with none."""
        self.call, self.share, self.list = call, share, []

    def add(self, point, true, instrument, odds=1.0, mode=None, spread=None, **more):
        """Takes a reading or leaves it; `odds` where it is taken less often than others."""
        rng, (half, _, _) = self.call.rng, INSTRUMENTS[instrument]
        error, skip = rng.normal(), rng.random() >= self.share * odds
        if skip:
            return False
        if spread is None:
            spread = half if half > 0 else -half * abs(true)
        value = true + error * spread
        lie = self.call.lie
        if lie and lie[0] == instrument:
            # A high suction pressure makes the gas look less superheated.
            way = -1 if point == "superheat" else 1
            value = true * (1 + lie[1]) if half < 0 else true + way * lie[1]
        unit = UNIT.get(point) or ("psi" if not point.startswith("water_") else "mg/L")
        if point.startswith(("water_", "top_up", "unit_", "circulator_p", "circulator_c")):
            value = max(value, 0.0)
        if "pressure" in point or point == "tank_pre_charge":
            value = max(value, -14.0)  # no gauge shows less than a vacuum
        if point in ("superheat", "subcooling", "air_temperature_change"):
            unit = "K"
            value /= 1.8
        digits = 4 if point == "specific_gravity" else 0 if unit in ("W", "Btu/h") else 2
        reading = {"point": point, "value": m(value, unit, digits), "instrument": instrument}
        self.list.append(reading | ({"mode": mode} if mode else {}) | more)
        return True


def stamp(date, hour):
    """A moment of a day."""
    return f"{date.isoformat()}T{hour:02}:00:00-05:00"


def pressures(c, add):
    """Gauges, tank, reservoir, dead-head test, log of days."""
    plant, st, rng = c.plant, c.st, c.rng
    vented, now = plant.centre == "non_pressurised", stamp(c.date, 9)
    for gauge, odds in (("dial_gauge", 1.2), ("digital_gauge", 0.9)):
        add("static_pressure", c.static, gauge, odds * (0.2 if vented else 1), "idle", taken_at=now)
    add("suction_pressure", c.suction, "digital_gauge", 0.15 if vented else 0.6, c.mode)
    if plant.centre == "sealed_with_tank":
        add("tank_pre_charge", max(c.rec["charge"] - 4 + st.pre_charge + rng.normal(0, 1), 0),
            "digital_gauge", 0.7)
    if vented:
        add("reservoir_level_change", st.level + rng.normal(0, 0.8), "ruler", 1.3)
    elif rng.random() < 0.25:
        back, falls = 12, 0.075 if c.rec["relaxed"] else 0.13
        for days in (12, 8, 4):
            if days < c.days:
                older = c.static + st.lost_a_day * days
                older += c.rec["charge"] * falls * np.log10(c.days / max(c.days - days, 0.5))
                add("static_pressure", older, "digital_gauge", 1.6, "idle",
                    taken_at=stamp(c.date - datetime.timedelta(days=days), back))
    topped = st.topped or (rng.uniform(0, 0.4) if rng.random() < 0.3 else 0.0)
    add("top_up_volume", topped, "flow_meter", 0.8)
    before, after = rng.uniform(5, 12), rng.uniform(35, 50)
    gas = plant.volume * st.air / 100 * (1 - (before + 14.7) / (after + 14.7))
    gallons = 7.3e-5 * plant.volume * (after - before) + gas
    inches = gallons / (0.0034 * c.cart**2)
    if add("dead_head_drop", inches, "ruler", 0.5):
        c.whole("dead_head_pressure_before", before, "dial_gauge")
        c.whole("dead_head_pressure_after", after, "dial_gauge")


def flows(c, add):
    """Flow, drops, circulators."""
    plant, st, run, mode = c.plant, c.st, c.run, c.mode
    add("flow", run["unit"], "flow_meter", 0.4, mode)
    add("flow", run["unit"], "clamp_flow_meter", 0.3, mode)
    add("exchanger_drop", run["exchanger"], "differential_gauge", 1.2, mode)
    if plant.strainer:
        add("strainer_drop", run["strainer"], "differential_gauge", 0.8, mode)
    add("circulator_rise", run["rise"], "differential_gauge", 0.9, mode)
    heavy = plants.gravity(st.kind, st.share, c.ewt) * 0.433
    shut = sum(h * p[0] for h, p in zip(st.pump_heads, plant.pumps, strict=True)) * heavy
    add("shut_off_rise", max(shut, 0), "differential_gauge", 0.6, "pumps_only")
    watts = sum(w * p[2] * (0.72 + 0.28 * min(run["total"] / (0.6 * p[1]), 1))
                for w, p in zip(st.pump_watts, plant.pumps, strict=True))
    add("circulator_power", watts, "power_meter", 0.6, mode)
    add("circulator_current", watts / 230 / 0.92, "clamp_ammeter", 0.5, mode)
    add("circulator_body_temperature", c.ewt + 10 + st.body, "clamp_thermometer", 0.7, mode)


def samples(c, add):
    """Fluid and water."""
    plant, st, rec = c.plant, c.st, c.rec
    second = st.share if st.share_two is None else st.share_two
    for point, share in (("freeze_point_supply", st.share), ("freeze_point_return", second)):
        if "glycol" in plant.kind:
            shown = share * BENDS[st.kind] / BENDS[plant.kind]
            add(point, plants.freeze_point(plant.kind, shown), "refractometer", 1.2)
        elif plant.kind != "water":
            add(point, plants.freeze_point(st.kind, share), "laboratory", 0.25, spread=0.6)
    at = c.rng.uniform(50, 72)
    if add("specific_gravity", plants.gravity(st.kind, st.share, at), "hydrometer",
           0.5 if "glycol" in plant.kind else 1.1):
        c.whole("sample_temperature", at, "port_thermometer")
    fresh = {"methanol": 8.2, "ethanol": 8.2, "water": 7.9}.get(plant.kind, 9.0)
    add("fluid_ph", fresh + c.rng.normal(0, 0.35) + st.ph, "test_strip", 0.9, spread=0.25)
    hard = rec["hardness"]
    for point, true, odds in (
        ("water_ph", 7.3 + 0.0006 * hard, 0.6), ("water_hardness", hard, 0.7),
        ("water_calcium", 0.7 * hard, 0.3), ("water_alkalinity", 0.75 * hard + 15, 0.4),
        ("water_dissolved_solids", 1.4 * hard + 1.6 * rec["chloride"] + 40, 0.3),
        ("water_iron", rec["iron"], 0.6), ("water_chloride", rec["chloride"], 0.4),
        ("water_conductivity", 2.2 * hard + 3 * rec["chloride"] + 60, 0.3),
    ):
        add(point, true, "test_strip", odds, spread=0.2 if point == "water_ph" else None)


def temperatures(c, add):
    """Water, circuits, unit."""
    plant, st, rng, mode = c.plant, c.st, c.rng, c.mode
    inlet, outlet = (c.lwt, c.ewt) if st.reversed else (c.ewt, c.lwt)
    for thermometer, odds in (("port_thermometer", 1.1), ("clamp_thermometer", 0.35),
                              ("unit_display", 0.7)):
        add("entering_water", inlet, thermometer, odds, mode)
        add("leaving_water", outlet, thermometer, odds, mode)
    add("loop_temperature", c.rest + rng.normal(0, 1), "port_thermometer", 0.8, "idle")
    if mode == "heating":
        add("lowest_entering_water", c.lowest, "unit_display", 0.7)
    if plant.circuits > 1:
        each = c.run["circuits"]
        usual = np.mean(each[each > 0.3 * max(each)]) if max(each) > 0.1 else 1.0
        drive = (c.ewt - c.rest) / (c.lwt - c.rest) if abs(c.lwt - c.rest) > 0.5 else 0.7
        units = -np.log(np.clip(drive, 0.15, 0.97))
        odds = 1.0 if rng.random() < 0.7 else 0.0
        for at, flow in enumerate(each):
            back = c.rest + (c.lwt - c.rest) * np.exp(-units * usual / max(flow, 1e-3))
            if flow < 0.03 * usual:  # nothing comes: the pipe takes the room's temperature
                back = c.rest + rng.uniform(0.3, 0.9) * (66 - c.rest)
            back += rng.normal(0, 0.5)
            add("circuit_return", back, "clamp_thermometer", odds, mode, spread=0.4, circuit=at + 1)
    add("unit_power", c.watts, "power_meter", 0.8, mode)
    add("unit_capacity", c.capacity, "unit_display", 0.4, mode, spread=0.05 * c.capacity)
    air = {"heating": 27.0, "cooling": 18.5}[mode] * (c.capacity / c.rated) ** 0.6
    air *= rng.normal(1, 0.06) * st.air_change
    add("air_temperature_change", air, "port_thermometer", 0.8, mode)
    clean = {"coaxial": (11, 8.5), "brazed_plate": (8, 5.5)}[plant.exchanger][mode == "cooling"]
    clean += rng.normal(0, 0.9) + st.fouling + 4 * max(1 - c.ratio, 0)
    if mode == "heating":
        boils, condenses = c.lwt - clean + st.evaporating, rng.normal(101, 3) + st.condensing
    else:
        boils, condenses = rng.normal(43, 2) + st.evaporating, c.lwt + clean + st.condensing
    add("evaporating_temperature", max(boils, -35), "refrigerant_gauges", 0.5, mode)
    add("condensing_temperature", condenses, "refrigerant_gauges", 0.5, mode)
    add("superheat", max(rng.normal(10, 1.5) + st.superheat, -1), "refrigerant_gauges", 0.5, mode)
    add("subcooling", max(rng.normal(9, 1.8) + st.subcooling, 0), "refrigerant_gauges", 0.5, mode)


def system(c, knows):
    """What stands there, as far as the record tells."""
    plant = c.plant
    centre = {"kind": plant.centre}
    if plant.centre == "sealed_with_tank" and knows(0.7):
        centre |= {"tank_volume": m(plant.tank, "gal"), "pre_charge": m(c.rec["charge"] - 4, "psi")}
    if plant.centre == "non_pressurised" and knows(0.6):
        centre["reservoir_diameter"] = m(plant.reservoir, "in")
    unit = {"cooling_capacity": m(plant.tons, "ton")}
    cop = {"heating_cop": m(3.6, "1"), "cooling_cop": m(5.0, "1")}
    for part, odds in (
        ({"rated_flow": m(plant.rated, "gpm")}, 0.85),
        ({"minimum_flow": m(plant.least, "gpm")}, 0.6),
        ({"heating_capacity": m(plant.tons * 9600, "Btu/h")} | cop, 0.6),
        ({"freeze_guard": m(30 if plant.kind == "water" else 15, "degF")}, 0.5),
        ({"maximum_pressure": m(150, "psi")}, 0.3),
    ):
        unit |= part if knows(odds) else {}
    if knows(0.65):
        points = [(q * plant.rated, plant.exchanger_drop * q**1.8) for q in (0.5, 0.75, 1, 1.3)]
        curve = [{"flow": m(q, "gpm", 2), "drop": m(d, "psi", 2)} for q, d in points]
        unit["exchanger"] = {"kind": plant.exchanger, "curve": curve,
                             "curve_temperature": m(70, "degF")}
    out = {"heat_pump": unit, "flow_centre": centre, "installed_on": c.installed.isoformat()}
    if knows(0.75):
        flow = [0, 0.25, 0.5, 0.75, 0.95]
        out["circulators"] = [
            {"rated_power": m(watts, "W"),
             "curve": [{"flow": m(x * most, "gpm"), "head": m(head * (1 - x**1.8), "ft")}
                       for x in flow]}
            for head, most, watts in plant.pumps]
        out["circulator_piping"] = "series"
    if knows(0.8):
        tube = {"standard": "ips_pe", "sdr": "11"}
        out["ground"] = {"kind": plant.ground, "circuits": [
            {"count": plant.circuits, "pipe": tube | {"size": plant.pipe},
             "length": m(plant.length, "ft")}]}
        if knows(0.7):
            out["ground"]["headers"] = [
                {"pipe": tube | {"size": plant.header}, "length": m(plant.header_length, "ft")}]
    if knows(0.9):
        out["fluid"] = {"kind": plant.kind}
        if plant.kind != "water" and knows(0.7):
            out["fluid"]["volume_fraction"] = m(plant.share, "%", 0)
    out |= {"strainer": plant.strainer} if knows(0.9) else {}
    return out | ({"check_valves": plant.checks} if knows(0.6) else {})


def commissioning(c, knows):
    """The commissioning record; careful crews write much, others little or nothing."""
    rec, plant = c.rec, c.plant
    written = knows(0.7)
    out = {"flush_recorded": written} if knows(0.8) else {}
    area = 2.45 * plants.BORE[plant.pipe] ** 2  # gpm for each ft/s
    facts = {"flushed": rec["flushed"], "circuits_flushed_singly": rec["singly"],
             "heat_pump_isolated": rec["isolated"], "filtered": rec["filtered"],
             "cart_power": m(rec["cart"], "hp", 2)}
    if written and rec["flushed"]:
        many = 1 if rec["singly"] else plant.circuits
        facts["flush_duration"] = m(rec["flush_hours"], "h")
        facts["flush_flow"] = m(rec["velocity"] * area * many * c.rng.normal(1, 0.04), "gpm")
    facts |= {"dead_head_drop": m(rec["dead_head"], "in")} if c.luck(0.3) else {}
    facts |= {"circulators_bled": rec["bled"], "water_tested": rec["tested"],
              "water_source": rec["source"]}
    if plant.kind != "water":
        facts |= {"mix_duration": m(rec["mixed"], "h"), "concentration_checked": rec["checked"]}
    if plant.centre != "non_pressurised":
        facts |= {"pipe_relaxed": rec["relaxed"], "charge_pressure": m(rec["charge"], "psi"),
                  "charge_temperature": m(rec["charge_at"], "degF")}
    out |= {name: value for name, value in facts.items() if knows(0.7)}
    return out | ({"date": c.installed.isoformat()} if knows(0.9) else {})


def document(c, readings, signs, lies, name):
    """The visit file of a call."""
    rng = c.rng
    c.cart = float(rng.choice([12, 14, 16]))
    if lies:
        chosen = [n for n, (_, size, _) in INSTRUMENTS.items() if size]
        chosen = str(rng.choice(chosen))
        way = 1 if INSTRUMENTS[chosen][0] < 0 or rng.random() < 0.5 else -1
        c.lie = chosen, way * rng.uniform(*sorted(INSTRUMENTS[chosen][1]))
    taken = Readings(c, readings)
    # What belongs to a reading is always taken with it.
    c.whole = lambda point, true, tool: Readings.add(taken, point, true, tool, 1 / readings)
    for part in (pressures, flows, samples, temperatures):
        part(c, taken.add)
    fullness = float(rng.choice([1.0, 0.55, 0.08], p=[0.4, 0.4, 0.2]))

    def knows(odds):
        return bool(rng.random() < min(odds * fullness * 1.2, 0.97))

    said = c.answers(signs)
    told = [WORDS[n] for n in TOLD if said.get(n) and n in WORDS]
    answers = [{"finding": n, "is": "yes" if yes else "no"} for n, yes in said.items()]
    visit = {"date": c.date.isoformat(), "answers": answers, "readings": taken.list,
             "complaint": " ".join(told[:2]) or "Something is not as it was."}
    if rng.random() < 0.5:
        visit["means"] = {"cart": {"reservoir_diameter": m(c.cart, "in")}}
    return {"format": "returnline-visit", "version": 1, "site": {"name": f"{name} (invented)"},
            "system": system(c, knows), "commissioning": commissioning(c, knows), "visit": visit}
