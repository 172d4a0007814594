import { expect, it } from "vitest";

import type { ReasonView } from "../../types/ReasonView";
import { sides } from "./sides";

const reason = (finding: string, bits: number): ReasonView => ({
  finding,
  found: finding,
  bits,
  shown: String(bits),
  path: [],
  figures: null,
});

it("parts reasons into for and against and leaves out an empty side", () => {
  const found = (reasons: ReasonView[]) =>
    sides(reasons).map(({ side, reasons: all }) => [side, all.map(({ finding }) => finding)]);
  expect(found([reason("a", 2), reason("b", -1), reason("c", 1)])).toEqual([
    ["for", ["a", "c"]],
    ["against", ["b"]],
  ]);
  expect(found([reason("b", -1)])).toEqual([["against", ["b"]]]);
  expect(found([])).toEqual([]);
});
