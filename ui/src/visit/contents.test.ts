import { expect, it } from "vitest";

import { byCircuit, countKnown, pointGroups, pointsRead, quickFields, readingsAt } from "./contents";
import { field, point, reading, visit } from "./sample";

it("asks the quick facts of the system, not those of the first step", () => {
  const fields = (id: string) => [field(`${id}.a`, null, { quick: true }), field(`${id}.b`, null)];
  const groups = ["site", "ground"].map((id) => ({ id, label: id, fields: fields(id) }));
  expect(quickFields(visit({ groups })).map(({ id }) => id)).toEqual(["ground.a"]);
});

it("counts what is known", () => {
  const fields = [field("a", "1"), field("b", null), field("c", "")];
  expect(countKnown({ id: "g", label: "g", fields })).toEqual({ known: 1, all: 3 });
});

it("lists readings last first and points in the order of proof", () => {
  const readings = [
    reading("flow", { id: "1" }),
    reading("static_pressure", { id: "2" }),
    reading("flow", { id: "3" }),
  ];
  const points = [point("static_pressure"), point("flow", { group: "flow", group_label: "Flow" }), point("other")];
  const call = visit({ readings, points });
  expect(readingsAt(call, "flow").map(({ id }) => id)).toEqual(["3", "1"]);
  expect(pointsRead(call).map(({ point: { id } }) => id)).toEqual(["static_pressure", "flow"]);
  expect(pointGroups(call).map(({ id, points: all }) => [id, all.length])).toEqual([
    ["pressure", 2],
    ["flow", 1],
  ]);
});

it("puts the readings of circuits in the order of the circuits, last first in each", () => {
  const at = (id: string, circuit: number | null) => reading("circuit_return", { id, circuit });
  const order = (readings: ReturnType<typeof at>[]) => byCircuit(readings).map(({ id }) => id);
  expect(order([at("d", 1), at("c", 2), at("b", 3), at("a", 2)])).toEqual(["d", "c", "a", "b"]);
  expect(order([at("b", null), at("a", null)])).toEqual(["b", "a"]);
});
