/** How far a step of the work is. */
import type { StepView } from "../../types/StepView";
import type { TimerView } from "../../types/TimerView";

const STATES = ["open", "done", "unmet", "excused", "skipped"] as const;
export type StepState = (typeof STATES)[number];

export function stateOf(step: StepView): StepState {
  return STATES.find((state) => state === step.progress) ?? "open";
}

/** Whether a step waits for somebody: to be done, or to be told why it is not met. */
const waiting = (step: StepView): boolean => ["open", "unmet"].includes(stateOf(step));

/** Cautions that still wait to be acknowledged. */
export function unread(step: StepView): number {
  return step.cautions.filter((caution) => caution.acknowledge && !caution.acknowledged).length;
}

/** Cautions acknowledged at the steps before this one. */
export function knownBefore(steps: readonly StepView[], id: string): ReadonlySet<string> {
  const place = steps.findIndex((step) => step.id === id);
  const before = place < 0 ? [] : steps.slice(0, place);
  const read = before.flatMap((step) => step.cautions.filter((caution) => caution.acknowledged));
  return new Set(read.map((caution) => caution.id));
}

/** The first sentence of a text, and the rest of it if there is any. */
export function firstSentence(text: string): [first: string, rest: string | null] {
  const end = /[.!?]\s+(?=\S)/u.exec(text);
  if (!end) return [text, null];
  const cut = end.index + 1;
  return [text.slice(0, cut), text.slice(cut).trim()];
}

/** The first step that is still to be done. */
export function nextStep(steps: readonly StepView[]): string | null {
  return steps.find(waiting)?.id ?? null;
}

export const isRunning = (timer: TimerView): boolean => timer.started_at !== null && timer.stopped_at === null;

/** Timers under way, each with the step it belongs to. */
export function running(steps: readonly StepView[]): { step: StepView; timer: TimerView }[] {
  return steps.flatMap((step) =>
    step.timers.filter(isRunning).map((timer) => ({ step, timer })),
  );
}
