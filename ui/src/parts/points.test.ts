import { expect, it } from "vitest";

import { POINT_REM, points } from "./points";

it("never asks for more than there is room for, in steps", () => {
  for (const [pixels, rem] of [[266, 17], [325, 17], [266, 34], [716, 17]] as const) {
    const asked = points(pixels, rem);
    const needed = asked * POINT_REM * rem;
    expect(needed).toBeLessThanOrEqual(pixels);
    expect(pixels - needed).toBeLessThan(5 * POINT_REM * rem + 0.01);
  }
});

it("asks for nothing where there is no room yet", () => {
  expect([points(0, 17), points(Number.NaN, 17), points(100, 0)]).toEqual([0, 0, 0]);
});
