import { expect, it } from "vitest";

import type { ReasonView } from "../../types/ReasonView";
import { sides, told } from "./sides";

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

it("says first what stands before the way or in its place", () => {
  const by = (bits: number, ...path: string[]) => told({ ...reason("a", bits), path });
  expect(by(1, "air stays", "less flow")).toEqual({ lead: null, trace: ["air stays", "less flow"] });
  expect(by(-1, "this would be expected", "less flow")).toEqual({ lead: "this would be expected", trace: ["less flow"] });
  expect(by(1, "another cause")).toEqual({ lead: "another cause", trace: [] });
  expect(by(-1, "another cause")).toEqual({ lead: "another cause", trace: [] });
  expect(by(1)).toEqual({ lead: null, trace: [] });
});
