/**
 * A faked host for pictures only: an invented call in the shape of the
 * engine's answers. Nothing here is worked out.
 */
export function fakeHost() {
  const choices = (...pairs) => pairs.map(([value, label]) => ({ value, label }));
  const units = (...symbols) => symbols.map((symbol) => ({ symbol, label: symbol }));
  const yesNo = choices(["yes", "Yes"], ["no", "No"]);
  const graded = choices(["low", "Low"], ["normal", "Normal"], ["high", "High"]);
  const pressure = units("psi", "bar", "kPa", "ftH2O");
  const temperature = units("°F", "°C");

  const field = (id, label, kind, value = null, unit = null, quick = true) => ({
    id, label, quick, kind, value, unit, shown: value === null ? null : `${value} ${unit ?? ""}`,
  });
  const text = { kind: "text" };
  const flag = { kind: "flag" };
  const date = { kind: "date" };
  const measure = (...symbols) => ({ kind: "measure", units: units(...symbols), signed: false });
  const choice = (...pairs) => ({ kind: "choice", choices: choices(...pairs) });

  const groups = [
    { id: "site", label: "Site", fields: [field("site.name", "Site", text, "Demo: Larch Hollow, unit B")] },
    { id: "visit", label: "Visit", fields: [
      field("visit.complaint", "What the customer says", text, "Gurgling in the basement since the first cold week. The unit stopped twice last night."),
      field("visit.date", "Day of the visit", date, "2026-08-14", null, false),
      field("visit.outcome", "How the visit ended", choice(["fixed", "put right and proven"], ["open", "open"]), "fixed", null, false),
      field("visit.time_spent", "Working time of the call", measure("h", "min"), null, null, false),
      field("visit.cost", "Cost to the company", measure(""), null, null, false),
    ] },
    { id: "unit", label: "Heat pump", fields: [
      field("unit.cooling_capacity", "Rated cooling capacity", measure("ton", "kW", "Btu/h"), "3", "ton"),
      field("unit.refrigerant", "Refrigerant", choice(["R-410A", "R-410A"], ["R-32", "R-32"]), null, null, false),
    ] },
    { id: "flow-centre", label: "Flow centre and circulators", fields: [
      field("flow_centre", "Flow centre", choice(["sealed", "Sealed, pressurised"], ["non_pressurised", "Vented reservoir"]), "sealed"),
      field("system.strainer", "Strainer in the loop", flag, "yes", null, false),
    ] },
    { id: "ground", label: "Loop in the ground", fields: [
      field("ground.kind", "How it lies", choice(["vertical", "Bores with U-bends"], ["horizontal", "Trenches"]), "horizontal"),
      field("ground.circuits", "Number of circuits", { kind: "count" }, "3"),
      field("ground.length", "Length of one circuit, there and back", measure("ft", "m"), "500", "ft"),
    ] },
    { id: "fluid", label: "Fluid", fields: [field("fluid.kind", "Fluid", choice(["water", "Water"], ["methanol", "Methanol"]), "methanol")] },
    { id: "commissioning", label: "How it was commissioned", fields: [
      field("system.installed_on", "Day of first start", date, "2025-11-03"),
      field("commissioning.charge_pressure", "Pressure left at start-up", measure("psi", "bar"), "45", "psi"),
      field("commissioning.flush_recorded", "A flush record exists", flag, "no", null, false),
    ] },
  ];
  const question = (finding, label, sort, answers, answer = null) => ({ finding, label, sort, answers, answer });
  const group = (id, label, sort, open, questions) => ({ id, label, sort, open, questions });
  const questions = [
    group("symptom-heard", "Heard", "symptom", true, [
      question("gurgling", "Gurgling or rushing in the pipes", "symptom", yesNo, "yes"),
      question("hum", "Circulator hums or rattles", "symptom", yesNo),
    ]),
    group("symptom-stops", "The unit stops", "symptom", true, [
      question("lockout", "Unit locks out on low flow", "symptom", yesNo, "yes"),
    ]),
    group("symptom-comfort", "Warmth and the bill", "symptom", false, [
      question("bill", "Bill higher than a year ago", "symptom", yesNo),
    ]),
    group("observation-air", "Air and flow", "observation", true, [
      question("bubbles", "Bubbles in the sight tube", "observation", yesNo),
      question("level", "Level in the reservoir", "observation", graded, "low"),
    ]),
    group("observation-valves", "Valves and circuits", "observation", false, [
      question("valve-marks", "Valve handles where they belong", "observation", yesNo, "yes"),
    ]),
  ];
  const gauges = choices(["dial_gauge", "dial gauge"], ["digital_gauge", "digital gauge"]);
  const modes = choices(["idle", "at rest"], ["pumps_only", "circulators only"], ["heating", "heating"]);
  const point = (id, label, group, group_label, offered) => ({
    id, label, group, group_label, first: id.endsWith("_water") || id === "exchanger_drop", units: offered, instruments: gauges, modes, per_circuit: id === "circuit_return", signed: group !== "flow",
  });
  const points = [
    point("static_pressure", "Loop gauge, at rest", "pressure", "Pressure", pressure),
    point("suction_pressure", "Circulator suction, running", "pressure", "Pressure", pressure),
    point("exchanger_drop", "Pressure drop across the exchanger", "flow", "Flow", pressure),
    point("flow", "Flow by meter", "flow", "Flow", units("gpm", "L/s", "L/min", "m³/h")),
    point("entering_water", "Entering water (EWT)", "temperature", "Temperatures", temperature),
    point("circuit_return", "Return of one circuit", "temperature", "Temperatures", temperature),
  ];
  const reading = (id, at, shown, warning = null) => ({
    id, point: at, label: at, value: "8", unit: "psi", shown, instrument: "dial_gauge", instrument_label: "dial gauge",
    mode: "idle", mode_label: "at rest", phase: "found", circuit: null, warning,
    why: { measured: `Read: ${shown}`, expected: null, formula: "A reading is taken to lie within its accuracy in 19 of 20 cases.", inputs: [["Accuracy usual for", "dial gauge"]], source: "Common practice, no source" },
  });
  const readings = [
    reading("r1", "static_pressure", "9.0 ± 2.0 psi"),
    reading("r2", "suction_pressure", "−12 ± 2 psi", "−12.0 psi is unusual. It is kept; please read the instrument once more."),
    reading("r3", "exchanger_drop", "1.9 ± 0.3 psi"),
  ];
  const visit = {
    id: "v1", title: "Demo: Larch Hollow, unit B", date: "2026-08-14",
    complaint: groups[1].fields[0].value, groups, questions, readings, points,
    earlier: [{ point: "suction_pressure", date: "2026-02-03", shown: "4.0 ± 2.0 psi", phase: "left", circuit: null }],
    last: { visit: "v3", date: "2026-02-03", found: ["Debris in the strainer"], outcome: "put right and proven", pressure: "45.0 ± 2.0 psi" }, work_begun: true,
    undo: "Circulator suction, running",
    verdicts: [{ cause: "air-in-circuit", title: "Air left in one circuit", confirmed: true, by_check: "dead-head", check: "Dead-head test with the cart" }],
    signed: "Signed on 2026-08-14 12:40. Site and system stay as they were signed.",
    // As the app finds them after its battery died.
    drafts: [{ place: "field/commissioning.charge_pressure", text: JSON.stringify({ text: "4", unit: "psi" }) }, { place: "reading/entering_water", text: "{}" }],
    similar: [{ visit: "v3", site: "Demo: Larch Hollow B", address: "2 Invented Lane", date: "2026-02-03" }],
  };
  const figures = {
    measured: "1.9 ± 0.3 psi", expected: "4.1 ± 0.6 psi",
    formula: "Drop = a · flow², from the unit’s own curve, corrected for the fluid",
    inputs: [["Rated flow", "9.0 gpm"], ["Fluid", "methanol 20 %"], ["Temperature", "38 °F"]],
    source: "The unit’s data; correction: common practice",
  };
  const reason = (finding, found, bits, path, with_figures = null) => ({
    finding, found, bits, shown: `${(2 ** Math.abs(bits)).toFixed(1)} to 1 ${bits > 0 ? "for" : "against"} it`, path, figures: with_figures,
  });
  const cause = (id, title, probability, reasons = [], context = []) => ({
    id, title, homeowner: "", kind: "loop", probability, shown: `${Math.round(probability * 100)} %`, reasons, context, has_plan: true,
    turns: reasons.length ? [
      { words: "It rests most on this: gurgling was heard. If that were wrong, this cause would lose most.", outcome: null },
      { words: "Dead-head test with the cart: if it shows no drop, this falls.", outcome: { check: "dead-head", outcome: "drop:absent", shown: "71 % → 21 %" } },
    ] : [],
  });
  const check = (id, title, reads, asks) => ({
    id, title, how: "Connect the cart, bring it to pressure, shut the return for a few seconds and watch the level in the reservoir.",
    minutes: 10, bits: 1.2, shown: "10 min; tells much about: Air left in one circuit", tools: ["flush cart", "ruler"], licence: null,
    cautions: ["Stay under the pressure of the weakest part of cart and loop."], asks, reads,
    outcomes: [{ id: "drop:high", seen: "Drop of the level in the cart tank: high", shown: "61 %", then: "then Air left in one circuit: 96 %" }, { id: "drop:normal", seen: "Drop of the level in the cart tank: normal", shown: "39 %", then: "then Air left in one circuit: 21 %" }],
  });
  const assessment = {
    verdict: "likely", headline: "Most likely air left in one circuit (71 %). One more check would make it sure.",
    causes: [
      cause("air-in-circuit", "Air left in one circuit", 0.71, [
        reason("gurgling", "Gurgling was heard", 3.1, ["Air left in one circuit", "Air carried round by the flow", "Gurgling or rushing in the pipes"]),
        reason("drop-low", "The exchanger drop is low", 1.2, ["Air left in one circuit", "Less flow", "Low drop across the exchanger"], figures),
        reason("pressure", "The loop holds some pressure", -0.4, ["Against it. Were it so, this would be expected:", "Air that dissolves takes the pressure with it."]),
      ], [{ words: "A flush record exists: no. What was not written down was seldom done.", shown: "1.9 to 1 for it" }]),
      cause("valve", "Isolation valve part closed", 0.18), cause("undercharge", "Charge left too low", 0.12),
      cause("gauge", "The gauge does not tell the truth", 0.06), cause("relaxed", "Ordinary relaxation of the pipe", 0.05),
      cause("strainer", "Strainer loaded", 0.03),
    ],
    pair: { words: "Two together explain it better: Air left in one circuit + Isolation valve part closed", shown: "14 %" }, unexplained: ["Unit locks out on low flow"], doubted: [{ cause: "gauge", title: "The gauge does not tell the truth", shown: "34 %", reasons: [] }], sound: [],
    checks: [check("dead-head", "Dead-head test with the cart", ["static_pressure"], ["bubbles"]), check("second", "Second gauge", [], [])],
    stop: null, records: ["From pipe, fluid, temperature and pump curve the program computes the flow that this loop must settle at."], assumptions: ["Inside diameter from the pipe’s standard"], unused: [],
  };
  const step = (id, stage, words, extra = {}) => ({
    id, stage, text: words, cautions: [], quantities: [], gate: null, timers: [], done: false,
    progress: "open", earlier: [], wanting: [], without: null, skipped: null, minutes: null, parts: null, note: null, ...extra,
  });
  const caution = (id, words, acknowledged = false) => ({ id, text: words, acknowledge: true, acknowledged });
  const criterion = (looked, label, rule, value, passed) => ({
    looked, label, rule, units: units("min", "h", "s"), signed: false, value, unit: "min", passed, why: figures,
  });
  const started = new Date(Date.now() - 400_000).toISOString();
  const plan = {
    treats: ["Air left in one circuit"], tools: ["flush cart", "bag filter"], materials: [{ label: "Fine filter bags", amounts: [{ label: "Fine bag", value: "1 µm", why: figures }] }, { label: "Antifreeze of the kind in the loop, or premix", amounts: [{ label: "Antifreeze to add", value: "3.1 ± 0.6 gal", why: figures }] }, { label: "Port caps and seals", amounts: [] }],
    remarks: [
      { words: "A header this large clears of air only at 2.9 ft/s: vent its high points.", why: figures },
      { words: "The hoses are not recorded: two of 1 in, 10 ft each, are assumed.", why: null },
    ],
    steps: [
      step("s1", "Make safe", "Switch off the unit and the circulators and lock them out.", { cautions: [caution("power", "Switch off and lock out before opening anything.", true), caution("fluid", "Methanol burns and is poisonous.", true)], done: true, progress: "done" }),
      step("s1b", "Make safe", "Drain the strainer and clean its screen.", { progress: "skipped", skipped: "No spare gasket on the van" }),
      step("s1c", "Flush", "Flush the loop until the return is clear.", {
        done: true, progress: "excused", wanting: ["Time the return has been clear: 3 min; it must be at least 15 min."], without: "The owner had to leave",
      }),
      step("s2", "Purge", "Purge one circuit at a time, the others valved off.", {
        cautions: [caution("pressure", "Do not exceed 60 psi at the cart."), caution("fluid", "Methanol burns and is poisonous: no flame, gloves and goggles. Rinse splashes at once with much water."), { ...caution("power", "Switch off and lock out before opening anything."), acknowledge: false }],
        quantities: [{ label: "Flow in one circuit", value: "3.9 ± 0.1 gpm", why: figures }, { label: "Time for each", value: "15 min", why: null }],
        timers: [{ kind: "purge", label: "Purging", shown: "15 min", seconds: 900, started_at: started, stopped_at: null, ran: null, met: null, why: figures }],
        gate: { pass: "", otherwise: "Go back to step 3: Flush the loop until the return is clear.", back_to: "s1c", verdict: "failed", unread: null,
          criteria: [criterion("bubble-free-time", "Time without a bubble at the return hose", "at least 5 min", "3", false), criterion("clear-return-time", "Time the return has been clear", "at least 5 min", "6", true)] },
      }),
      step("s3", "Purge", "Dead-head test.", {
        earlier: [{ id: "s2", text: "Step 4: Purge one circuit at a time, the others valved off." }],
        timers: [{ kind: "hold", label: "Hold", shown: "10 min", seconds: 600, started_at: started, stopped_at: null, ran: null, met: null, why: figures }],
      }),
    ],
    count: "1 of 5 steps done, 1 left out for a reason, 1 done all the same, for a reason, 2 still to do",
    proof: [{ point: "exchanger_drop", label: "Pressure drop across the exchanger", expected: "4.1 ± 0.6 psi", before: "1.9 ± 0.3 psi", after: null, verdict: "unread", verdict_words: "not read", later: false, why: figures },
      { point: "static_pressure", label: "Loop gauge, at rest (before leaving)", expected: "67.5 psi … 69.5 psi", before: "27.0 psi", after: "58.0 psi", verdict: "missed", verdict_words: "not as it should be", later: false, why: figures },
      { point: "static_pressure", label: "Loop gauge, at rest (after a day, a week, a month)", expected: "40 psi … 70 psi", before: "27.0 psi", after: "52.0 psi", verdict: "met", verdict_words: "as it should be", later: true, why: figures }],
    unproved: [
      "Step 4 is still to do: Purge one circuit at a time, the others valved off.", "Step 5 is still to do: Dead-head test.",
      "Step 3, done all the same: Time the return has been clear: 3 min; it must be at least 15 min. Reason: The owner had to leave",
      "Loop gauge, at rest (before leaving): 58.0 psi, not as it should be (67.5 psi … 69.5 psi).", "Pressure drop across the exchanger: not read; it should be 4.1 ± 0.6 psi.",
    ],
  };
  const settings = {
    company: "Invented Loop Works", phone: null, technician: "A. Invented",
    logo: "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==",
    unit_systems: choices(["us", "US customary (psi, gpm, °F, gal, ft)"], ["si", "SI (bar, L/s, °C, L, m)"]), units: "us", units_chosen: true,
    papers: choices(["letter", "US Letter"], ["a4", "A4"]), paper: "letter",
    languages: choices(["en", "English"]), language: "en",
    themes: choices(["system", "As the device"], ["light", "Light"], ["dark", "Dark"], ["sun", "Full sun (highest contrast)"]),
    theme: localStorage.getItem("theme") ?? "system",
    instruments: [
      { id: "dial_gauge", label: "dial gauge", owned: true, accuracy: "1", unit: "psi", units: pressure, usual: "Usually ± 2.0 psi or a share of the value, whichever is more." },
      { id: "flow_meter", label: "flow meter", owned: false, accuracy: null, unit: "gpm", units: units("gpm", "L/s"), usual: "" },
    ],
    // As the app finds it after its battery died.
    drafts: [{ place: "instrument/dial_gauge", text: JSON.stringify({ text: "1.", unit: "psi" }) }],
  };
  const templates = [
    { id: "vertical-sealed", label: "Bores, sealed, 3 tons", note: "3 circuits of 3/4 in SDR 11, 400 ft each." },
    { id: "pond-sealed", label: "Pond, sealed, 5 tons", note: "5 circuits of 3/4 in SDR 11, 300 ft each." },
  ];
  // Drawn for several widths: the widest that fits.
  const drawn = (name, width) => {
    const all = JSON.parse(localStorage.getItem(name) ?? "[]");
    return (all.findLast(([wide]) => wide <= width) ?? all[0])?.[1];
  };
  const drawnPhoto = "data:image/svg+xml," + encodeURIComponent(`<svg xmlns="http://www.w3.org/2000/svg" width="240" height="180"><rect width="240" height="180" fill="#8a9aa0"/><circle cx="120" cy="90" r="58" fill="#5c4a36"/><path d="M70 90h100M120 40v100" stroke="#d8d2c4" stroke-width="6"/></svg>`);
  const photo = (id, caption) => ({ id, phase: "before", phase_label: "as met", caption, taken_at: "2026-08-14 10:12", width: 240, height: 180, thumbnail: drawnPhoto });
  const attachments = {
    photos: [photo("p1", "Strainer screen as found")],
    signatures: [{ role: "technician", role_label: "Technician", name: "A. Invented", aspect: 2.5, signed_at: "2026-08-14 12:40", changed: "Given before the visit was changed. Have it signed again if that matters.", strokes: [[[0.1, 0.6], [0.3, 0.3], [0.5, 0.7], [0.8, 0.4]]] },
      { role: "customer", role_label: "Customer", name: "B. Invented", aspect: 2.5, signed_at: "2026-08-14 12:44", changed: null, strokes: [[[0.05, 0.7], [0.95, 0.7]]] }],
    phases: choices(["before", "as met"], ["after", "as left"]), roles: choices(["technician", "Technician"], ["customer", "Customer"]), photos_left: 39,
  };
  const line = (id, site, day, complaint, outcome, demo = false) => ({ id, site, date: day, complaint, outcome, system: `s-${id}`, demo });
  const filter = (extra = {}) => ({ from: null, to: null, started_from: null, started_to: null, groups: [], cause: null, aspect: null, ...extra });
  const range = (value, low, high) => ({ value, low, high });
  const fleetCause = (id, title, count, part, hours, cost) => ({
    cause: id, title, count, share: range(part, part * 0.9, part * 1.1), shown: `${Math.round(part * 100)} % (${Math.round(part * 90)} to ${Math.round(part * 110)} %), ${count} of 1302`, hours, cost, open: filter({ cause: id }),
  });
  const fleetGroup = (sort, value, label, systems, callbacks, rate) => ({
    group: value, label, systems, years: systems * 2, callbacks, rate: range(rate, rate * 0.8, rate * 1.2),
    shown: `${rate} (${(rate * 0.8).toFixed(1)} to ${(rate * 1.2).toFixed(1)}) a year per 100 systems`, open: filter({ groups: [{ dimension: sort, group: value }] }),
  });
  const habit = "flushed-long-enough";
  const board = {
    pictures: [], tables: ["causes.csv"],
    board: {
      headline: "1302 callbacks among 2000 visits at 1104 systems: 2210 h of work, cost 181 440.",
      notes: ["41 callbacks have no confirmed cause.", "Every system on record had a callback. Systems without trouble are missing, so rates and waiting times look worse than they are."],
      choices: [
        { dimension: "cause", label: "Cause", groups: choices(["air-in-circuit", "Air left in one circuit"], ["debris", "Debris in the strainer"]) },
        { dimension: "crew", label: "Crew", groups: choices(["north", "Crew North (invented)"], ["south", "Crew South (invented)"]) },
        { dimension: habit, label: "Time flushed", groups: choices(["kept", "flushed long enough"], ["not-kept", "flushed too short"]) },
      ],
      causes: [
        fleetCause("air-in-circuit", "Air left in one circuit", 402, 0.31, 810, 62000), fleetCause("debris", "Construction debris in the strainer and the exchanger of the unit", 288, 0.22, 420, 41000),
        fleetCause("undercharge", "Charge left too low", 201, 0.15, 260, 19000), fleetCause("valve", "Isolation valve part closed", 96, 0.07, 80, 7000),
      ],
      repeats: [{ cause: "air-in-circuit", title: "Air left in one circuit", of: 402, count: 61, share: range(0.15, 0.12, 0.19), shown: "15 % (12 to 19 %), 61 of 402", open: filter({ cause: "air-in-circuit", aspect: "repeats:365" }) }],
      waiting: { points: [], systems: 1104, median_days: null, words: "Within a year of commissioning 31 % (28 to 34 %) of 1104 systems had their first callback. Fewer than half have had one so far.", open: filter({ aspect: "first-callbacks" }) },
      rates: [
        { dimension: "crew", label: "Crew", rows: [fleetGroup("crew", "north", "Crew North (invented)", 612, 401, 32.1), fleetGroup("crew", "south", "Crew South (invented)", 492, 201, 19.4)] },
        { dimension: habit, label: "Time flushed", rows: [fleetGroup(habit, "kept", "flushed long enough", 800, 301, 17.2), fleetGroup(habit, "not-kept", "flushed too short", 304, 301, 44.9)] },
      ],
      differences: { words: "From 240 comparisons of 1104 systems over their first 24 months. It goes together; it need not be the reason.", lines: [{
        words: "Air left in one circuit: where it says “flushed too short”, 41 % of systems had it (125 of 304); where the opposite was done, 12 % (96 of 800). That is 3.4 times as often (2.7 to 4.3).",
        dimension: habit, group: "not-kept", cause: "air-in-circuit", here: [125, 304], others: [96, 800], ratio: 3.4, ratio_ends: [2.7, 4.3], odds_ratio: 5.1, odds_ends: [3.8, 6.9], p: 1e-9, adjusted: 1e-7, open: filter({ cause: "air-in-circuit" }),
      }] },
      fixes: [30, 90, 183].map((days) => ({ days, label: `Held ${days} days`, known: 90, held: 81, share: range(0.9, 0.82, 0.95), shown: "90 % (82 to 95 %), 81 of 90", unasked: 310, too_early: 12, open: filter({ aspect: `not-held:${days}` }) })),
      practice: { words: "Of 610 systems commissioned before 2025-03-01, 33 % had a callback within 24 months; of 494 after, only 14 %. Chance alone hardly makes such a difference; what else changed at that time counts, too.", before: [201, 610], after: [69, 494], before_share: range(0.33, 0.29, 0.37), after_share: range(0.14, 0.11, 0.17), p: 1e-8, open_before: filter(), open_after: filter() },
    },
  };
  const learned = {
    own: 38, elsewhere: 120, weight: 250, since: null, shown: "Learned from 38 of your own callbacks and 120 counted elsewhere; the shipped priors are worth 250 callbacks.",
    causes: [["air-in-circuit", "Air left in one circuit", 21, 0.12, 0.125], ["debris", "Debris in the strainer", 9, 0.08, 0.071], ["valve", "Isolation valve part closed", 1, 0.05, 0.033], ["gauge", "The gauge does not tell the truth", 0, 0.04, 0.025]]
      .map(([id, title, confirmed, before, after]) => ({ id, title, confirmed, before, after, spread: 0.016, before_shown: `${(before * 100).toFixed(1)} %`, after_shown: `${(after * 100).toFixed(1)} %` })),
  };
  const conflicts = [{
    kind: "visit", id: "c1", title: "Visit: Demo: Larch Hollow, unit B, 2026-08-14",
    sides: [
      { state: "s1", noted: "Noted 2026-08-14 13:02 UTC on this device", made_at: "2026-08-14T13:02:00Z", device: "3f1c", stands: true, differs: [["Technician", "A. Invented"], ["Cost to the company", "420"], ["Loop gauge, at rest, As found", "27 psi · dial gauge"]] },
      { state: "s2", noted: "Noted 2026-08-14 18:40 UTC on another device (a07b)", made_at: "2026-08-14T18:40:00Z", device: "a07b", stands: false, differs: [["Technician", "B. Invented"], ["Cost to the company", "485"], ["Loop gauge, at rest, As found", "not noted"]] },
    ],
  }];
  const backup = (number, made, visits, trouble = null) => ({ number, made, visits, trouble });
  const damaged = new URLSearchParams(window.location.search).has("damaged");
  const answers = {
    soundness: {
      closed: damaged ? { code: "store-cannot-open", message: "The database cannot be opened. Check that its folder exists and can be written. (cannot open the database /data/returnline/returnline.db: file is not a database)", context: {} } : null,
      not_backed_up: damaged ? null : { code: "store-disk-full", message: "The disk is full, so this was not kept.", context: {} },
      clock_behind: null,
    },
    keeping: {
      backups: [backup(14, "2026-08-14 06:12 UTC", 41), backup(13, "2026-08-13 06:40 UTC", null, "The file is cut off."), backup(12, "2026-08-12 06:31 UTC", 39), backup(11, "2026-08-11 06:31 UTC", 37)],
      folder: "/data/returnline/backups",
    },
    save_backup: { place: "/home/tech/returnline-2026-08-14.db", can_open: false }, restore_backup: null, restore_backup_file: false,
    export_records: { place: "/home/tech/returnline-2026-08-14.rlx", can_open: false }, import_records: null, record_conflicts: conflicts, settle_record: [],
    board, fleet_visits: { total: 61, lines: [{ id: "v2", site: "Demo: Old Mill Lane 4", date: "2026-08-02", complaint: "Gauge fell from 55 to 8 psi since March", outcome: "put right and proven", system: "s2", demo: true }] },
    save_board_table: { place: "/home/tech/causes.csv", can_open: false },
    save_fleet_report: { place: "/home/tech/callbacks.pdf", can_open: true },
    earlier_fixes: [{ visit: "v3", date: "2026-02-03", cause: "debris", question: "On 2026-02-03 this was put right here: Debris in the strainer. Did it hold?", known: null, held: null }],
    answer_earlier_fix: [], set_verdict: visit, list_checks: choices(["dead-head", "Dead-head test with the cart"], ["second", "Second gauge"]),
    learned, save_learned: { place: null, can_open: false }, take_learned: null, learn_anew: learned,
    about: { version: "0.1.0", data_folder: "/data/returnline" },
    list_visits: [
      line("v1", visit.title, visit.date, visit.complaint, null),
      line("v2", "Demo: Old Mill Lane 4", "2026-08-02", "Gauge fell from 55 to 8 psi since March", "put right and proven", true),
    ],
    start_visit: visit, open_visit: visit, set_field: visit, set_answer: visit, put_reading: visit, remove_reading: visit,
    explain_learned: { ...figures, measured: null, expected: null, formula: "(shipped share × its weight + confirmed) ÷ (weight + callbacks)", inputs: [["It is worth", "250 callbacks"], ["Confirmed here", "21 of 38"]], source: "own estimate" },
    explain_board: { ...figures, measured: null, expected: null, inputs: [], formula: "Callbacks at which the cause was confirmed, of all callbacks.", source: "Wilson (1927)" },
    explain: { ...figures, measured: null, expected: null, formula: "The odds of the cause before anything was found, moved by all that was found.", inputs: [["Expected in callbacks before anything is known", "12 %"], ["Gurgling was heard (added to the rest)", "8.6 to 1 for it"], ["With all that was found", "71 %"]], source: "own estimate" },
    demo: { visits: 0, systems: 0, own: 0, shown: "Nothing invented is loaded." }, load_demo: { visits: 120, systems: 70, own: 0, shown: "120 invented visits at 70 invented systems are loaded." }, remove_demo: { visits: 0, systems: 0, own: 0, shown: "Nothing invented is loaded." },
    answer_call: { assessment, plan }, change_step: visit, undo_last: visit, join_site: visit, copy_system: visit, use_template: visit, list_templates: templates,
    settings, change_setting: settings, put_logo: settings, attachments, add_photo: attachments, describe_photo: attachments,
    remove_photo: attachments, set_signature: attachments, clear_signature: attachments, put_draft: null, save_report: { place: "/home/tech/Larch Hollow.pdf", can_open: true }, open_report: null,
  };
  const asked = new URLSearchParams(window.location.search);
  const empty = asked.has("empty");
  // A call as the engine itself speaks of it, in its language; its plan stays the faked one unless it brings its own.
  const spoken = JSON.parse(localStorage.getItem("calls") ?? "{}")[asked.get("call")];
  if (spoken) {
    settings.language = asked.get("call").split("-")[1];
    Object.assign(visit, spoken.visit, { id: "v1", drafts: [] });
    Object.assign(assessment, spoken.assessment);
    if (spoken.plan) Object.assign(plan, spoken.plan);
    // Its words are the fake's, in one language.
    answers.earlier_fixes = [];
    if (settings.language === "es") {
      Object.assign(attachments, { phases: choices(["before", "como se encontró"], ["after", "como quedó"]), roles: choices(["technician", "Técnico"], ["customer", "Cliente"]) });
      attachments.photos[0].caption = "Rejilla del filtro (inventado)";
      attachments.signatures[0].changed = null;
    }
  }
  window.__TAURI_INTERNALS__ = {
    invoke: async (command, input) => {
      if (empty && command === "list_visits") return [];
      if (command === "pictures") return drawn("picture", input.width);
      if (command === "board") return { ...structuredClone(board), pictures: drawn("board", input.width) };
      if (command === "set_field" && input.entry.text === "fixed") {
        throw { code: "not-proven", message: "The visit is not ended yet.", context: { open: plan.unproved.join("\n") } };
      }
      if (!(command in answers)) throw { code: "unknown", message: `no fake for ${command}`, context: {} };
      return structuredClone(answers[command]);
    },
  };
}
