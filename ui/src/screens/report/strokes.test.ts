import { expect, it } from "vitest";

import { isRule, line, pointIn, RULE, withPoint } from "./strokes";

it("takes points as shares of the pad, never outside it", () => {
  const box = { left: 10, top: 20, width: 200, height: 100 };
  expect(pointIn(box, 110, 70)).toEqual([0.5, 0.5]);
  expect(pointIn(box, -50, 500)).toEqual([0, 1]);
});

it("leaves out points that hardly move", () => {
  expect(withPoint([[0.5, 0.5]], [0.501, 0.5])).toHaveLength(1);
  expect(withPoint([[0.5, 0.5]], [0.6, 0.5])).toHaveLength(2);
});

it("tells the rule of a typed name from anything drawn", () => {
  expect(isRule(RULE)).toBe(true);
  expect(isRule([])).toBe(false);
  expect(isRule([[[0.1, 0.5], [0.9, 0.4]]])).toBe(false);
  expect(isRule([...RULE, [[0.5, 0.5]]])).toBe(false);
});

it("draws one touch as a dot and keeps the shape of the pad", () => {
  expect(line([[0.5, 0.5]], 3)).toBe("150.0,50.0 150.0,50.0");
  expect(line([[0, 0], [1, 1]], 2)).toBe("0.0,0.0 200.0,100.0");
});
