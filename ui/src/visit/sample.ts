/** Small invented visits for tests. */
import type { FieldView } from "../types/FieldView";
import type { PointView } from "../types/PointView";
import type { QuestionGroupView } from "../types/QuestionGroupView";
import type { QuestionView } from "../types/QuestionView";
import type { ReadingView } from "../types/ReadingView";
import type { VisitView } from "../types/VisitView";

export function field(id: string, value: string | null, extra: Partial<FieldView> = {}): FieldView {
  return { id, label: id, quick: false, kind: { kind: "text" }, value, unit: null, shown: value, ...extra };
}

export function question(finding: string, sort: string, answer: string | null = null): QuestionView {
  const answers = ["yes", "no"].map((value) => ({ value, label: value }));
  return { finding, label: finding, sort, answers, answer };
}

/** One question in a group of its own. */
export function asked(finding: string, sort: string, answer: string | null = null): QuestionGroupView {
  return { id: `${sort}-${finding}`, label: sort, sort, open: true, questions: [question(finding, sort, answer)] };
}

export function point(id: string, extra: Partial<PointView> = {}): PointView {
  return {
    id,
    label: id,
    group: "pressure",
    group_label: "Pressure",
    units: ["psi", "bar"].map((symbol) => ({ symbol, label: symbol })),
    instruments: [{ value: "dial_gauge", label: "dial gauge" }],
    modes: [{ value: "idle", label: "at rest" }],
    first: false,
    per_circuit: false,
    signed: false,
    ...extra,
  };
}

export function reading(at: string, extra: Partial<ReadingView> = {}): ReadingView {
  return {
    id: `${at}-1`,
    point: at,
    label: at,
    value: "12",
    unit: "psi",
    shown: "12 ± 2 psi",
    instrument: "dial_gauge",
    instrument_label: "dial gauge",
    mode: "idle",
    mode_label: "at rest",
    phase: "found",
    circuit: null,
    warning: null,
    why: { measured: null, expected: null, formula: "as read", inputs: [], source: "practice" },
    ...extra,
  };
}

export function visit(extra: Partial<VisitView> = {}): VisitView {
  return {
    id: "v",
    title: "Invented barn",
    date: null,
    complaint: null,
    groups: [],
    questions: [],
    readings: [],
    points: [],
    earlier: [],
    undo: null,
    similar: [],
    verdicts: [],
    last: null,
    work_begun: false,
    drafts: [],
    signed: null,
    ...extra,
  };
}
