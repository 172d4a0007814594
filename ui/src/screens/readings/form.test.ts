import { expect, it } from "vitest";

import { point, reading } from "../../visit/sample";
import { asked, blank, changed, entryOf, itemFor } from "./form";

it("starts from the usual unit and instrument and sends on what was typed", () => {
  const at = point("static_pressure");
  const form = { ...blank(at, "found"), text: "1/2", accuracy: " " };
  expect(entryOf(at, form)).toEqual({
    id: null,
    point: "static_pressure",
    text: "1/2",
    unit: "psi",
    accuracy: null,
    instrument: "dial_gauge",
    mode: null,
    phase: "found",
    circuit: null,
  });
});

it("changes a reading in place", () => {
  const at = point("circuit_return", { per_circuit: true });
  const form = changed(reading("circuit_return", { unit: "bar", circuit: 2, phase: "left" }));
  expect(entryOf(at, form)).toMatchObject({
    id: "circuit_return-1",
    text: "12",
    unit: "bar",
    mode: "idle",
    phase: "left",
    circuit: "2",
  });
});

it("names a circuit only where one belongs", () => {
  const at = point("static_pressure");
  expect(entryOf(at, { ...blank(at, "found"), circuit: "2" }).circuit).toBeNull();
});

it("carries the phase in the address, and takes what it does not know as found", () => {
  expect(asked(itemFor("static_pressure", "left"))).toEqual({ point: "static_pressure", phase: "left" });
  expect(asked(itemFor("static_pressure", "found"))).toEqual({ point: "static_pressure", phase: "found" });
  expect(asked("static_pressure:never").phase).toBe("found");
});
