/** A reading while it is being entered. */
import type { PointView } from "../../types/PointView";
import type { ReadingEntry } from "../../types/ReadingEntry";
import type { ReadingView } from "../../types/ReadingView";

/** As met before any work, or as left after it. */
export const PHASES = ["found", "left"] as const;

export interface Form {
  /** The reading being changed; none for a new one. */
  id: string | null;
  text: string;
  unit: string;
  accuracy: string;
  instrument: string;
  mode: string | null;
  phase: string;
  circuit: string;
}

/** How a point is named in an address when it is to be read as left. */
export function itemFor(point: string, phase: string): string {
  return phase === PHASES[0] ? point : `${point}:${phase}`;
}

/** Where a reading that is not kept yet lies. */
export function draftAt(point: string, phase: string): string {
  return `reading/${itemFor(point, phase)}`;
}

/** The point and the phase that an address names. */
export function asked(item: string): { point: string; phase: string } {
  const [point = "", phase] = item.split(":");
  return { point, phase: PHASES.find((known) => known === phase) ?? PHASES[0] };
}

/** An empty form with the point's usual unit and instrument. */
export function blank(point: PointView, phase: string): Form {
  return {
    id: null,
    text: "",
    unit: point.units[0]?.symbol ?? "",
    accuracy: "",
    instrument: point.instruments[0]?.value ?? "",
    mode: null,
    phase,
    circuit: "",
  };
}

/** The form to change a reading with. */
export function changed(reading: ReadingView): Form {
  return {
    id: reading.id,
    text: reading.value,
    unit: reading.unit,
    accuracy: "",
    instrument: reading.instrument,
    mode: reading.mode,
    phase: reading.phase,
    circuit: reading.circuit === null ? "" : String(reading.circuit),
  };
}

/** The form as the engine takes it: every number as it was typed. */
export function entryOf(point: PointView, form: Form): ReadingEntry {
  return {
    id: form.id,
    point: point.id,
    text: form.text,
    unit: form.unit,
    accuracy: form.accuracy.trim() || null,
    instrument: form.instrument || null,
    mode: form.mode,
    phase: form.phase,
    circuit: point.per_circuit ? form.circuit.trim() || null : null,
  };
}
