import { expect, it } from "vitest";

import { clock, secondsLeft } from "./clock";

it("shows minutes and hours as a clock does", () => {
  expect([0, 5, 65, 3600, 3729].map(clock)).toEqual(["0:00", "0:05", "1:05", "1:00:00", "1:02:09"]);
});

it("counts from the start, however long the app was closed", () => {
  const start = "2026-08-14T10:00:00+00:00";
  const at = (time: string): number => secondsLeft(start, 900, Date.parse(time));
  expect(at("2026-08-14T10:00:00Z")).toBe(900);
  expect(at("2026-08-14T10:14:59.500Z")).toBe(1);
  expect(at("2026-08-14T10:20:00Z")).toBe(-300);
});
