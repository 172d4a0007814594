/** The steps of a plan under the stages they belong to, in order. */
import type { StepView } from "../../types/StepView";

export interface Stage {
  title: string;
  /** Number of its first step, counted from 1 over the whole plan. */
  first: number;
  steps: StepView[];
}

/** A stage that comes again later is a new stage: order matters in the work. */
export function stages(steps: readonly StepView[]): Stage[] {
  const found: Stage[] = [];
  steps.forEach((step, index) => {
    const last = found.at(-1);
    if (last?.title === step.stage) last.steps.push(step);
    else found.push({ title: step.stage, first: index + 1, steps: [step] });
  });
  return found;
}
