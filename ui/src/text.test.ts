import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

import { FluentResource } from "@fluent/bundle";
import { afterEach, describe, expect, it } from "vitest";

import english from "../text/en.ftl?raw";
import spanish from "../text/es.ftl?raw";
import { NOTICES } from "./parts/notices";
import { STEPS } from "./route";
import { PHASES } from "./screens/readings/form";
import { hasText, LANGUAGES, setLanguage, t } from "./text";
import { THEMES } from "./theme";

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

/** What every language must say alike: by key, the values filled in and the cases told apart. */
function skeleton(source: string): [string, string[]][] {
  const parts = (value: unknown): string[] =>
    Array.isArray(value)
      ? value.flatMap(parts)
      : typeof value === "object" && value !== null
        ? Object.entries(value).flatMap(([name, inner]) =>
            name === "name" || name === "key" ? [JSON.stringify(inner)] : parts(inner),
          )
        : [];
  const body = new FluentResource(source).body;
  return body.map((entry) => [entry.id, [...new Set(parts(entry.value))].sort()]);
}

afterEach(() => setLanguage("en"));

describe("the catalog", () => {
  it("has every text the interface asks for", () => {
    const { whole, built } = asked();
    expect(whole.size).toBeGreaterThan(20);
    expect([...whole].filter((key) => !hasText(key))).toEqual([]);
    expect(built.filter((pattern) => !keys.some((key) => pattern.test(key)))).toEqual([]);
  });

  it("has a text for every member of a family", () => {
    const family = [
      ...STEPS.flatMap((step) => [`step-${step}`, `title-${step}`]),
      ...THEMES.map((theme) => `theme-${theme}`),
      ...NOTICES.map((kind) => `notice-${kind}`),
      ...PHASES.map((phase) => `phase-${phase}`),
    ];
    expect(family.filter((key) => !hasText(key))).toEqual([]);
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

  it("says the same in every language", () => {
    expect(skeleton(english).some(([, parts]) => parts.length > 2)).toBe(true);
    expect(skeleton(spanish)).toEqual(skeleton(english));
  });
});

describe("the language", () => {
  it("is chosen by its tag, and marked on the page", () => {
    setLanguage("es-MX");
    expect(document.documentElement.lang).toBe("es");
    expect(t("visits-found", { count: 1 })).toBe("Una visita");
    expect(t("visits-found", { count: 3 })).toBe("3 visitas");
    setLanguage("en-GB");
    expect(document.documentElement.lang).toBe("en");
    expect(t("visits-found", { count: 3 })).toBe("3 visits");
  });

  it("is English where there is no catalog", () => {
    setLanguage("es");
    setLanguage("xx");
    expect(document.documentElement.lang).toBe("en");
    expect(t("visits-title")).toBe("Visits");
  });

  it("leaves the decimal point as instruments show it", () => {
    for (const language of LANGUAGES) {
      setLanguage(language);
      expect(t("visits-found", { count: 2.5 })).toMatch(/^2\.5 /);
    }
  });
});
