/** A step of the plan for tests, on which nothing was done yet. */
import type { StepView } from "../../types/StepView";

export const step = (id: string, extra: Partial<StepView> = {}): StepView => ({
  id,
  stage: "Purge",
  text: id,
  cautions: [],
  quantities: [],
  gate: null,
  timers: [],
  done: null,
  progress: "open",
  earlier: [],
  wanting: [],
  without: null,
  skipped: null,
  minutes: null,
  parts: null,
  note: null,
  ...extra,
});
