/** How far a step of the work is. */
import type { StepView } from "../../types/StepView";
import type { TimerView } from "../../types/TimerView";

export type StepState = "open" | "done" | "skipped";

export function stateOf(step: StepView): StepState {
  if (step.skipped !== null) return "skipped";
  return step.done === true ? "done" : "open";
}

/** Cautions that still wait to be acknowledged. */
export function unread(step: StepView): number {
  return step.cautions.filter((caution) => caution.acknowledge && !caution.acknowledged).length;
}

/** The first step that is still to be done. */
export function nextStep(steps: readonly StepView[]): string | null {
  return steps.find((step) => stateOf(step) === "open")?.id ?? null;
}

/** Timers under way, each with the step it belongs to. */
export function running(steps: readonly StepView[]): { step: StepView; timer: TimerView }[] {
  return steps.flatMap((step) =>
    step.timers.filter((timer) => timer.started_at !== null).map((timer) => ({ step, timer })),
  );
}
