/** A faked host for pictures only: invented answers in the shape of the real ones. */
export function fakeHost() {
  const yesNo = [
    { id: "yes", label: "Yes" },
    { id: "no", label: "No" },
  ];
  const graded = [
    { id: "low", label: "Low" },
    { id: "normal", label: "Normal" },
    { id: "high", label: "High" },
  ];
  const visit = {
    id: "v1",
    site: "Demo: Larch Hollow, unit B",
    complaint: "Gurgling in the basement since the first cold week. The unit stopped twice last night.",
    begun: ["call", "readings"],
    questions: [
      { id: "gurgling", title: "Gurgling or rushing in the pipes", group: "Heard", options: yesNo, answer: "yes" },
      { id: "hum", title: "Circulator hums or rattles", group: "Heard", options: yesNo, answer: null },
      { id: "lockout", title: "Unit locks out on low flow", group: "Told", options: yesNo, answer: "yes" },
      { id: "bill", title: "Bill higher than a year ago", group: "Told", options: yesNo, answer: "no" },
      { id: "flow_sight", title: "Flow in the sight glass", group: "Seen", options: graded, answer: "low" },
    ],
  };
  const choice = (id, label, value, options, hint = null) => ({ id, label, hint, kind: "choice", options, units: [], unit: "", signed: false, quick: true, value, doubts: [] });
  const measure = (id, label, value, unit, units, doubts = [], hint = null) => ({ id, label, hint, kind: "measure", options: [], units, unit, signed: false, quick: true, value, doubts });
  const groups = [
    { id: "flow_centre", title: "Flow centre", summary: "Sealed, two circulators in series", facts: [
      choice("flow_centre.kind", "Kind", "sealed", [{ id: "sealed", label: "Sealed, pressurised" }, { id: "tank", label: "Sealed with expansion tank" }, { id: "open", label: "Vented reservoir" }]),
      measure("flow_centre.circulators", "Circulators", "2", "", []),
      measure("flow_centre.minimum", "Least suction pressure", null, "psi", ["psi", "bar", "kPa"], [], "From the circulator’s instructions."),
    ] },
    { id: "ground", title: "Ground loop", summary: "3 circuits of 500 ft, 3/4 in PE SDR 11", facts: [
      choice("ground.kind", "How it lies", "horizontal", [{ id: "vertical", label: "Bores with U-bends" }, { id: "horizontal", label: "Trenches" }]),
      measure("ground.length", "Length of one circuit, there and back", "5000", "ft", ["ft", "m"], ["A circuit of 5000 ft is far longer than usual. It is kept; please check."]),
    ] },
    { id: "fluid", title: "Fluid", summary: "", facts: [] },
    { id: "commissioning", title: "How it was commissioned", summary: "", facts: [] },
  ];
  const psi = ["psi", "bar", "kPa", "ftH2O"];
  const modes = [{ id: "idle", label: "at rest" }, { id: "pumps_only", label: "circulators only" }, { id: "heating", label: "heating" }];
  const gauges = [{ id: "dial_gauge", label: "dial gauge" }, { id: "digital_gauge", label: "digital gauge" }];
  const point = (id, title, units, readings = [], signed = false, caution = null) => ({ id, title, how: "", caution, units, unit: units[0], signed, instruments: gauges, instrument: "dial_gauge", modes, mode: "idle", readings });
  const read = (id, shown, doubts = []) => ({ id, shown, taken: "today 10:42", with: "dial gauge", mode: "at rest", doubts });
  const points = [
    { id: "pressure", title: "Pressure", points: [
      point("static_pressure", "Loop gauge, at rest", psi, [read("r1", "8 psi ± 2"), read("r2", "9 psi ± 2")]),
      point("suction_pressure", "Circulator suction, running", psi, [read("r3", "-8 psi ± 2", ["-8 psi is unusual here. It is kept; please read the gauge again."])], true, "Keep clear of the coupling while the circulator runs."),
    ] },
    { id: "flow", title: "Flow", points: [point("exchanger_drop", "Pressure drop across the exchanger", psi, [read("r4", "1.9 psi ± 0.3")]), point("flow", "Flow by meter", ["gpm", "L/s", "L/min", "m3/h"])] },
    { id: "temperature", title: "Temperatures", points: [point("entering_water", "Entering water (EWT)", ["degF", "degC"], [], true)] },
  ];
  const ranking = {
    notes: [],
    next: { point: "dead_head_drop", title: "Dead-head test with the cart", why: "Tells air in a circuit from a valve left part closed: it would move the first cause to 96 % or to 21 %.", cost: "10 min · flush cart", caution: "Stay under the pressure of the weakest part of cart and loop." },
    unexplained: ["Bill higher than a year ago: answered no"],
    causes: [
      { id: "air", title: "Air left in one circuit", probability: 0.71, shown: "71 %", changes: ["A dead-head drop inside the limit"], reasons: [
        { words: "Gurgling was heard", path: ["Air left in one circuit", "Air carried round by the flow", "Gurgling or rushing in the pipes"], side: "for", weight: "speaks for it, 3.1 bits" },
        { words: "The exchanger drop of 1.9 psi is low", path: ["Air left in one circuit", "Less flow", "Low drop across the exchanger"], side: "for", weight: "speaks for it, 1.2 bits" },
        { words: "The loop holds some pressure", path: [], side: "against", weight: "speaks against it, 0.4 bits" },
      ] },
      { id: "valve", title: "Isolation valve part closed", probability: 0.18, shown: "18 %", changes: [], reasons: [] },
      { id: "gauge", title: "The gauge lies", probability: 0.06, shown: "6 %", changes: [], reasons: [] },
    ],
  };
  const plan = {
    cause: "air", title: "Purge the loop circuit by circuit", missing: ["The curve of the cart’s pump"],
    steps: [
      { id: "s1", title: "Isolate the heat pump", words: "Shut both unit valves so that debris does not pass through the exchanger.", quantities: [], cautions: ["Switch off and lock out the unit and the circulators before opening anything."], gate: null, done: true },
      { id: "s2", title: "Purge each circuit", words: "One circuit at a time, the others valved off.", quantities: [{ label: "Flow in one circuit", shown: "3.6 gpm", why: "2 ft/s in 3/4 in PE SDR 11 (inside 0.86 in)." }, { label: "Time for each", shown: "15 min", why: null }], cautions: [], gate: "No bubbles in the sight tube for 5 minutes.", done: false },
      { id: "s3", title: "Dead-head test", words: "Shut the return for seconds and watch the level.", quantities: [{ label: "Drop allowed", shown: "0.9 in", why: null }], cautions: ["Do not exceed 60 psi at the cart."], gate: "Level drop not more than 0.9 in.", done: false },
    ],
  };
  const answers = {
    about: { version: "0.1.0", dataFolder: "/data/returnline" },
    list_visits: [
      { id: "v1", title: visit.site, complaint: visit.complaint, when: "Today", leading: "Air left in one circuit, 71 %" },
      { id: "v2", title: "Demo: Old Mill Lane 4", complaint: "Gauge fell from 55 to 8 psi since March", when: "2 August", leading: null },
    ],
    create_visit: visit, open_visit: visit, set_site: visit, set_complaint: visit, set_answer: visit,
    facts: groups, set_fact: groups, points, add_reading: points[0].points[0], remove_reading: points[0].points[0],
    ranking, plan, set_step_done: plan, save_report: { path: "/home/tech/Larch Hollow.pdf" },
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
