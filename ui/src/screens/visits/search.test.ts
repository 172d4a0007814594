import { expect, it } from "vitest";

import type { VisitLine } from "../../types/VisitLine";
import { dayInWords, matching } from "./search";

const visit = (site: string, complaint: string): VisitLine => ({
  id: site,
  site,
  complaint,
  date: "2026-08-14",
  outcome: null,
  system: site,
  demo: false,
});

it("finds visits by words anywhere, whatever the case or accent", () => {
  const visits = [visit("Casa Peña", "Gurgling"), visit("Mill Lane", "gurgling pump")];
  const found = (sought: string): string[] => matching(visits, sought).map(({ site }) => site);
  expect(found("")).toEqual(["Casa Peña", "Mill Lane"]);
  expect(found("GURGLING")).toEqual(["Casa Peña", "Mill Lane"]);
  expect(found("pena")).toEqual(["Casa Peña"]);
  expect(found("pump mill")).toEqual(["Mill Lane"]);
  expect(found("pump pena")).toEqual([]);
});

it("says a day in words, in any time zone", () => {
  expect(dayInWords("2026-08-14")).toBe("August 14, 2026");
  expect(dayInWords("sometime")).toBe("sometime");
});
