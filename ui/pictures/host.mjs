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
  const measure = (...symbols) => ({ kind: "measure", units: units(...symbols) });
  const choice = (...pairs) => ({ kind: "choice", choices: choices(...pairs) });

  const groups = [
    { id: "site", label: "Site", fields: [field("site.name", "Site", text, "Demo: Larch Hollow, unit B")] },
    { id: "visit", label: "Visit", fields: [
      field("visit.complaint", "What the customer says", text, "Gurgling in the basement since the first cold week. The unit stopped twice last night."),
      field("visit.date", "Day of the visit", date, "2026-08-14", null, false),
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
  const questions = [
    question("gurgling", "Gurgling or rushing in the pipes", "symptom", yesNo, "yes"),
    question("hum", "Circulator hums or rattles", "symptom", yesNo),
    question("lockout", "Unit locks out on low flow", "symptom", yesNo, "yes"),
    question("bill", "Bill higher than a year ago", "symptom", yesNo, "no"),
    question("bubbles", "Bubbles in the sight tube", "observation", yesNo),
    question("valve-marks", "Valve handles where they belong", "observation", yesNo, "yes"),
    question("level", "Level in the reservoir", "observation", graded, "low"),
  ];
  const gauges = choices(["dial_gauge", "dial gauge"], ["digital_gauge", "digital gauge"]);
  const modes = choices(["idle", "at rest"], ["pumps_only", "circulators only"], ["heating", "heating"]);
  const point = (id, label, group, group_label, offered) => ({
    id, label, group, group_label, units: offered, instruments: gauges, modes, per_circuit: id === "circuit_return",
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
  });
  const readings = [
    reading("r1", "static_pressure", "9.0 ± 2.0 psi"),
    reading("r2", "suction_pressure", "−12 ± 2 psi", "−12.0 psi is unusual. It is kept; please read the instrument once more."),
    reading("r3", "exchanger_drop", "1.9 ± 0.3 psi"),
  ];
  const visit = {
    id: "v1", title: "Demo: Larch Hollow, unit B", date: "2026-08-14",
    complaint: groups[1].fields[0].value, groups, questions, readings, points,
  };
  const figures = {
    measured: "1.9 ± 0.3 psi", expected: "4.1 ± 0.6 psi",
    formula: "Drop = a · flow², from the unit’s own curve, corrected for the fluid",
    inputs: [["Rated flow", "9.0 gpm"], ["Fluid", "methanol 20 %"], ["Temperature", "38 °F"]],
    source: "The unit’s data; correction: common practice",
  };
  const reason = (finding, found, bits, path, with_figures = null) => ({
    finding, found, bits, shown: `${bits > 0 ? "+" : "−"}${Math.abs(bits)} bits`, path, figures: with_figures,
  });
  const cause = (id, title, probability, reasons = [], context = []) => ({
    id, title, homeowner: "", kind: "loop", probability, shown: `${Math.round(probability * 100)} %`, reasons, context, has_plan: true,
  });
  const check = (id, title, reads, asks) => ({
    id, title, how: "Connect the cart, bring it to pressure, shut the return for a few seconds and watch the level in the reservoir.",
    minutes: 10, bits: 1.2, shown: "1.2 bits in 10 min", tools: ["flush cart", "ruler"], licence: null,
    cautions: ["Stay under the pressure of the weakest part of cart and loop."], asks, reads,
    outcomes: ["A drop above 2 in: air left in one circuit to 96 %", "No drop: air left in one circuit to 21 %"],
  });
  const assessment = {
    verdict: "likely", headline: "Most likely air left in one circuit (71 %). One more check would make it sure.",
    causes: [
      cause("air-in-circuit", "Air left in one circuit", 0.71, [
        reason("gurgling", "Gurgling was heard", 3.1, ["Air left in one circuit", "Air carried round by the flow", "Gurgling or rushing in the pipes"]),
        reason("drop-low", "The exchanger drop is low", 1.2, ["Air left in one circuit", "Less flow", "Low drop across the exchanger"], figures),
        reason("pressure", "The loop holds some pressure", -0.4, ["Air left in one circuit", "Lost pressure"]),
      ], ["No flush record: more likely"]),
      cause("valve", "Isolation valve part closed", 0.18), cause("undercharge", "Charge left too low", 0.12),
      cause("gauge", "The gauge does not tell the truth", 0.06), cause("relaxed", "Ordinary relaxation of the pipe", 0.05),
      cause("strainer", "Strainer loaded", 0.03),
    ],
    pair: null, unexplained: ["Unit locks out on low flow"], doubted: [],
    checks: [check("dead-head", "Dead-head test with the cart", ["static_pressure"], ["bubbles"]), check("second", "Second gauge", [], [])],
    stop: null, assumptions: ["Inside diameter from the pipe’s standard"], unused: [],
  };
  const step = (id, stage, words, extra = {}) => ({
    id, stage, text: words, cautions: [], quantities: [], gate: null, timer_seconds: null, done: false, ...extra,
  });
  const caution = (id, words) => ({ id, text: words, acknowledge: true });
  const plan = {
    treats: ["Air left in one circuit"], tools: ["flush cart", "bag filter"], materials: ["methanol, 3 gal"],
    steps: [
      step("s1", "Make safe", "Switch off the unit and the circulators and lock them out.", { cautions: [caution("power", "Switch off and lock out before opening anything.")], done: true }),
      step("s2", "Purge", "Purge one circuit at a time, the others valved off.", {
        quantities: [{ label: "Flow in one circuit", value: "3.9 ± 0.1 gpm", why: figures }, { label: "Time for each", value: "15 min", why: null }],
        gate: { pass: "no bubbles in the sight tube for 5 min", otherwise: "go on purging this circuit", back_to: null },
      }),
      step("s3", "Purge", "Dead-head test.", { cautions: [caution("pressure", "Do not exceed 60 psi at the cart.")], gate: { pass: "the level drops not more than 0.9 in", otherwise: "purge again", back_to: "s2" } }),
    ],
    proof: [{ point: "exchanger_drop", label: "Pressure drop across the exchanger", expected: "4.1 ± 0.6 psi", before: "1.9 ± 0.3 psi", after: null }],
  };
  const line = (id, site, day, complaint, outcome) => ({ id, site, date: day, complaint, outcome });
  const answers = {
    about: { version: "0.1.0", data_folder: "/data/returnline" },
    list_visits: [
      line("v1", visit.title, visit.date, visit.complaint, null),
      line("v2", "Demo: Old Mill Lane 4", "2026-08-02", "Gauge fell from 55 to 8 psi since March", "put right and proven"),
    ],
    start_visit: visit, open_visit: visit, set_field: visit, set_answer: visit, put_reading: visit, remove_reading: visit,
    answer_call: { assessment, plan }, mark_step: { assessment, plan }, save_report: { place: "/home/tech/Larch Hollow.pdf", can_open: true }, open_report: null,
  };
  const empty = new URLSearchParams(window.location.search).has("empty");
  window.__TAURI_INTERNALS__ = {
    invoke: async (command) => {
      if (empty && command === "list_visits") return [];
      if (!(command in answers)) throw { code: "unknown", message: `no fake for ${command}`, context: {} };
      return structuredClone(answers[command]);
    },
  };
}
