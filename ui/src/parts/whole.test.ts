import { expect, it } from "vitest";

import { whole } from "./whole";

/** With the places where a line may end marked. */
const shown = (words: string): string => whole(words).replaceAll("\u00a0", "_").replaceAll("\u2060", "^").replaceAll("\u200b", "|");

it.each([
  ["Most likely air left in one circuit (71 %).", "Most likely air left in one circuit (71_%)."],
  ["needs 3.9 ± 0.1 gpm here", "needs 3.9 ±_0.1_gpm here"],
  ["loop at 39.2 °F, 2.00 ft/s", "loop at 39.2_°F, 2.00_ft/s"],
  ["< 1 % or > 99 %", "<_1_% or >_99_%"],
  ["pressure/temperature ports at 2 ft/s", "pressure/|temperature ports at 2_ft/s"],
  ["40.6 psi … 46.6 psi, ≥ 3.0 psi, ≤ −1 psi", "40.6_psi_… 46.6_psi, ≥_3.0_psi, ≤_−1_psi"],
  ["since 2026-08-14 06:12 UTC", "since 2026-^08-^14 06:12_UTC"],
])("keeps numbers and units together: %s", (words, joined) => {
  expect(shown(words)).toBe(joined);
});

it.each(["3 bubbles were seen", "no number here", "Go back to step 3: purge"])("leaves words free: %s", (words) => {
  expect(shown(words)).toBe(words);
});
