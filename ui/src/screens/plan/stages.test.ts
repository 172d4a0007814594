import { expect, it } from "vitest";

import type { StepView } from "../../types/StepView";
import { stages } from "./stages";

const step = (id: string, stage: string): StepView => ({
  id,
  stage,
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
});

it("keeps the order of the work: a stage that comes again is a new one", () => {
  const steps = [step("a", "Safe"), step("b", "Purge"), step("c", "Purge"), step("d", "Safe")];
  const found = stages(steps).map(({ title, first, steps: all }) => [title, first, all.length]);
  expect(found).toEqual([
    ["Safe", 1, 1],
    ["Purge", 2, 2],
    ["Safe", 4, 1],
  ]);
});
