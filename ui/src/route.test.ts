import { describe, expect, it } from "vitest";

import { addressOf, placeAt, STEPS, type Place } from "./route";

describe("addresses", () => {
  it("come back as they were written", () => {
    const places: Place[] = [
      { screen: "visits" },
      { screen: "settings" },
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
