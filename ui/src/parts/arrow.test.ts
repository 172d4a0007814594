import { expect, it } from "vitest";

import { arrowHead } from "./arrow";

it("points its head along the last stretch of the line", () => {
  const head = arrowHead([{ x: 5, y: 5 }, { x: 0, y: 0 }, { x: 10, y: 0 }], 1);
  expect(head[1]).toEqual({ x: 10, y: 0 });
  expect(head.map(({ x }) => x)).toEqual([4.5, 10, 4.5]);
  expect(head.map(({ y }) => y).sort()).toEqual([-2.2, 0, 2.2].sort());
});

it("draws none where there is no direction", () => {
  expect(arrowHead([{ x: 1, y: 1 }, { x: 1, y: 1 }], 1)).toEqual([]);
  expect(arrowHead([], 1)).toEqual([]);
});
