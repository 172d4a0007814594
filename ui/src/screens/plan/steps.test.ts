import { expect, it } from "vitest";

import type { StepView } from "../../types/StepView";
import { nextStep, running, stateOf, unread } from "./steps";

const step = (id: string, extra: Partial<StepView> = {}): StepView => ({
  id,
  stage: "Purge",
  text: id,
  cautions: [],
  quantities: [],
  gate: null,
  timers: [],
  done: null,
  skipped: null,
  minutes: null,
  parts: null,
  ...extra,
});

it("takes up the first step that is neither done nor left out", () => {
  const steps = [step("a", { done: true }), step("b", { skipped: "No cart" }), step("c"), step("d")];
  expect(steps.map(stateOf)).toEqual(["done", "skipped", "open", "open"]);
  expect(nextStep(steps)).toBe("c");
  expect(nextStep(steps.slice(0, 2))).toBeNull();
});

it("counts the cautions that wait, and lists the timers that run", () => {
  const caution = (id: string, acknowledge: boolean, acknowledged: boolean) => ({
    id,
    text: id,
    acknowledge,
    acknowledged,
  });
  const cautions = [caution("power", true, false), caution("pressure", true, true), caution("lift", false, false)];
  expect(unread(step("a", { cautions }))).toBe(1);
  const why = { measured: null, expected: null, formula: "", inputs: [], source: "" };
  const timer = { kind: "hold", label: "Hold", shown: "1 h", seconds: 3600, why };
  const steps = [
    step("a", { timers: [{ ...timer, started_at: null }] }),
    step("b", { timers: [{ ...timer, started_at: "2026-08-14T10:00:00Z" }] }),
  ];
  expect(running(steps).map(({ step: of }) => of.id)).toEqual(["b"]);
});
