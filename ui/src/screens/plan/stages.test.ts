import { expect, it } from "vitest";

import { step } from "./sample";
import { stages } from "./stages";

it("keeps the order of the work: a stage that comes again is a new one", () => {
  const steps = [step("a", { stage: "Safe" }), step("b", { stage: "Purge" }), step("c", { stage: "Purge" }), step("d", { stage: "Safe" })];
  const found = stages(steps).map(({ title, first, steps: all }) => [title, first, all.length]);
  expect(found).toEqual([
    ["Safe", 1, 1],
    ["Purge", 2, 2],
    ["Safe", 4, 1],
  ]);
});
