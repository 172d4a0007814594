import { expect, it } from "vitest";

import { openOf } from "./outcome";

it("reads what is open from the refusal that is about it, and from no other", () => {
  const open = "Step 3 is still to do: Close the joint.\nLoop gauge: not read.";
  expect(openOf({ code: "not-proven", context: { open } })).toEqual([
    "Step 3 is still to do: Close the joint.",
    "Loop gauge: not read.",
  ]);
  expect(openOf({ code: "not-accepted", context: { open } })).toBeNull();
});
