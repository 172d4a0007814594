import { describe, expect, it } from "vitest";

import { emptyFilter } from "./screens/board/query";
import { addressOf, placeAt, STEPS, type Place } from "./route";

describe("addresses", () => {
  it("lead to the whole board when the figure is none", () => {
    for (const figure of ["", "/x", "/7", "/null", "/{}"]) {
      expect(placeAt(`#/board${figure}`)).toEqual({ screen: "board", behind: null });
    }
  });

  it("come back as they were written", () => {
    const places: Place[] = [
      { screen: "visits" },
      { screen: "settings", visit: null },
      { screen: "settings", visit: "a/b c" },
      { screen: "exchange" },
      { screen: "learned" },
      { screen: "board", behind: null },
      { screen: "board", behind: { title: "Air / 5 %", filter: emptyFilter() } },
      ...STEPS.map((step): Place => ({ screen: "visit", visit: "a/b c", step, item: null })),
      { screen: "visit", visit: "1", step: "readings", item: "loop.static pressure" },
    ];
    for (const place of places) expect(placeAt(addressOf(place))).toEqual(place);
  });

  it("lead to the visits when they name nothing", () => {
    for (const hash of ["", "#", "#/", "#/visit/1/elsewhere", "#/visit//call", "#/visit/%/call"]) {
      expect(placeAt(hash)).toEqual({ screen: "visits" });
    }
  });
});
