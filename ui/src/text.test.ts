import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

import { FluentResource } from "@fluent/bundle";
import { describe, expect, it } from "vitest";

import english from "../text/en.ftl?raw";
import { NOTICES } from "./parts/notices";
import { STEPS } from "./route";
import { VERDICTS } from "./screens/plan/gate";
import { PHASES } from "./screens/readings/form";
import { hasText, LANGUAGES, t } from "./text";

const ROOT = join(import.meta.dirname, ".");

function sources(): string {
  return readdirSync(ROOT, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.(svelte|ts)$/.test(file) && !file.endsWith(".test.ts"))
    .map((file) => readFileSync(join(ROOT, file), "utf8"))
    .join("\n");
}

/** Keys written out, and the beginnings and ends of keys put together from parts. */
function asked(): { whole: Set<string>; built: RegExp[] } {
  const text = sources();
  const whole = new Set([...text.matchAll(/\bt\(\s*"([^"]+)"/g)].map((match) => match[1] ?? ""));
  const built = [...text.matchAll(/\bt\(\s*`([^`]+)`/g)].map((match) => {
    const pattern = (match[1] ?? "").replace(/\$\{[^}]+\}/g, "[a-z-]+");
    return new RegExp(`^${pattern}$`);
  });
  return { whole, built };
}

const keys = new FluentResource(english).body.map((entry) => entry.id);

describe("the catalog", () => {
  it.each(LANGUAGES)("has every text the interface asks for in %s", (tag) => {
    const { whole, built } = asked();
    expect(whole.size).toBeGreaterThan(20);
    expect([...whole].filter((key) => !hasText(key, tag))).toEqual([]);
    expect(keys.filter((key) => !hasText(key, tag))).toEqual([]);
    expect(built.filter((pattern) => !keys.some((key) => pattern.test(key)))).toEqual([]);
  });

  it.each(LANGUAGES)("has a text for every member of a family in %s", (tag) => {
    const family = [
      ...STEPS.flatMap((step) => [`step-${step}`, `title-${step}`]),
      ...VERDICTS.map((verdict) => `gate-${verdict}`),
      ...NOTICES.map((kind) => `notice-${kind}`),
      ...PHASES.map((phase) => `phase-${phase}`),
    ];
    expect(family.filter((key) => !hasText(key, tag))).toEqual([]);
  });

  it("has no text that nothing asks for", () => {
    const { whole, built } = asked();
    const idle = keys.filter((key) => !whole.has(key) && !built.some((pattern) => pattern.test(key)));
    expect(idle).toEqual([]);
  });

  it("fills in values and counts", () => {
    expect(t("visits-found", { count: 1 })).toBe("One visit");
    expect(t("visits-found", { count: 3 })).toBe("3 visits");
  });
});
