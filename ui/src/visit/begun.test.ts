import { expect, it } from "vitest";

import { asked, field, reading, visit } from "./sample";
import { begun } from "./begun";

it("a fresh visit has begun nothing, though its day is filled in", () => {
  const fresh = visit({
    groups: [
      { id: "visit", label: "Visit", fields: [field("visit.date", "2026-08-14"), field("visit.complaint", null)] },
    ],
  });
  expect([...begun(fresh)]).toEqual([]);
});

it("each kind of entry begins its own step", () => {
  const steps = (extra: Parameters<typeof visit>[0]): string[] => [...begun(visit(extra))];
  const group = (id: string) => ({ groups: [{ id, label: id, fields: [field("a", "1")] }] });
  expect(steps(group("site"))).toEqual(["call"]);
  expect(steps(group("ground"))).toEqual(["system"]);
  expect(steps({ questions: [asked("gurgling", "symptom", "no")] })).toEqual(["call"]);
  expect(steps({ questions: [asked("bubbles", "observation", "yes")] })).toEqual(["readings"]);
  expect(steps({ readings: [reading("static_pressure")] })).toEqual(["readings"]);
  const verdict = { cause: "a", title: "A", confirmed: false, by_check: null, check: null };
  expect(steps({ verdicts: [verdict] })).toEqual(["causes"]);
  expect(steps({ work_begun: true })).toEqual(["causes", "plan"]);
  const ended = { id: "visit", label: "Visit", fields: [field("visit.outcome", "fixed")] };
  expect(steps({ groups: [ended] })).toEqual(["report"]);
});
