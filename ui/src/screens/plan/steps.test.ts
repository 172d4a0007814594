import { expect, it } from "vitest";

import { step } from "./sample";
import { firstSentence, knownBefore, nextStep, running, stateOf, unread } from "./steps";

it("takes up the first step that is neither done, left out nor done all the same for a reason", () => {
  const steps = ["done", "skipped", "excused", "open", "open"].map((progress, place) => step(`${place}`, { progress }));
  expect(steps.map(stateOf)).toEqual(["done", "skipped", "excused", "open", "open"]);
  expect(nextStep(steps)).toBe("3");
  expect(nextStep(steps.slice(0, 3))).toBeNull();
  expect(nextStep([step("a", { progress: "unmet" })])).toBe("a");
});

it("knows a caution again only where an earlier step had it acknowledged", () => {
  const caution = (id: string, acknowledged: boolean) => ({ id, text: id, acknowledge: true, acknowledged });
  const steps = [
    step("a", { cautions: [caution("power", true), caution("glycol", false)] }),
    step("b", { cautions: [caution("power", false), caution("pressure", true)] }),
    step("c", { cautions: [caution("power", false), caution("pressure", false), caution("glycol", false)] }),
  ];
  expect([...knownBefore(steps, "a")]).toEqual([]);
  expect([...knownBefore(steps, "b")]).toEqual(["power"]);
  expect([...knownBefore(steps, "c")]).toEqual(["power", "pressure"]);
  expect([...knownBefore(steps, "gone")]).toEqual([]);
});

it("cuts a text after its first sentence and loses nothing", () => {
  expect(firstSentence("Wear goggles. It burns! Rinse at once.")).toEqual(["Wear goggles.", "It burns! Rinse at once."]);
  expect(firstSentence("At 2.5 bar it opens.")).toEqual(["At 2.5 bar it opens.", null]);
  expect(firstSentence("Methanol burns: no flame.")).toEqual(["Methanol burns: no flame.", null]);
  expect(firstSentence("No end")).toEqual(["No end", null]);
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
  const timer = { kind: "hold", label: "Hold", shown: "1 h", told: false, seconds: 3600, why, stopped_at: null, ran: null, met: null };
  const started = { ...timer, started_at: "2026-08-14T10:00:00Z" };
  const steps = [
    step("a", { timers: [{ ...timer, started_at: null }] }),
    step("b", { timers: [started] }),
    step("c", { timers: [{ ...started, stopped_at: "2026-08-14T10:02:00Z", ran: "2 min", met: false }] }),
  ];
  expect(running(steps).map(({ step: of }) => of.id)).toEqual(["b"]);
});
