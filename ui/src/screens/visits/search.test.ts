import { expect, it } from "vitest";

import type { VisitLine } from "../../client";
import { matching } from "./search";

const visit = (title: string, complaint: string): VisitLine => ({
  id: title,
  title,
  complaint,
  when: "",
  leading: null,
});

it("finds visits by words anywhere, whatever the case or accent", () => {
  const visits = [visit("Casa Peña", "Gurgling"), visit("Mill Lane", "gurgling pump")];
  const found = (sought: string): string[] => matching(visits, sought).map(({ title }) => title);
  expect(found("")).toEqual(["Casa Peña", "Mill Lane"]);
  expect(found("GURGLING")).toEqual(["Casa Peña", "Mill Lane"]);
  expect(found("pena")).toEqual(["Casa Peña"]);
  expect(found("pump mill")).toEqual(["Mill Lane"]);
  expect(found("pump pena")).toEqual([]);
});
