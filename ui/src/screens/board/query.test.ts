import { expect, it } from "vitest";

import { chosenOf, emptyFilter, limits, withChosen } from "./query";

it("holds one group of each sort and lets go of it again", () => {
  let filter = withChosen(emptyFilter(), "crew", "North");
  filter = withChosen(filter, "crew", "South");
  filter = withChosen(filter, "cause", "air");
  expect(chosenOf(filter, "crew")).toBe("South");
  expect(chosenOf(filter, "cause")).toBe("air");
  expect(limits(filter)).toBe(2);
  filter = withChosen(withChosen(filter, "crew", null), "cause", null);
  expect(filter).toEqual(emptyFilter());
  expect(limits(filter)).toBe(0);
});
