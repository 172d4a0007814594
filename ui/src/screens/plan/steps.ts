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
