import { readFileSync } from "node:fs";
import { join } from "node:path";

import { FluentResource } from "@fluent/bundle";
import { afterEach, describe, expect, it } from "vitest";

import { LANGUAGES, speak, t } from "./text";

/** What every language must say alike: by key, the values filled in and the cases told apart. */
function skeleton(tag: string): Record<string, string[]> {
  const source = readFileSync(join(import.meta.dirname, `../text/${tag}.ftl`), "utf8");
  const body = new FluentResource(source).body;
  return Object.fromEntries(body.map((entry) => [entry.id, [...new Set(parts(entry.value))].sort()]));
}

/** Names of values and of cases in a message, however deep they stand. */
function parts(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(parts);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([role, inner]) =>
    role === "name" || role === "key" ? [JSON.stringify(inner)] : parts(inner),
  );
}

afterEach(() => speak("en"));

describe("every language", () => {
  it("is one of these", () => {
    expect([...LANGUAGES].sort()).toEqual(["en", "es"]);
  });

  it.each(LANGUAGES)("has the messages, values and cases of English: %s", (tag) => {
    const english = skeleton("en");
    expect(english["system-known"]?.length).toBeGreaterThan(2);
    expect(skeleton(tag)).toEqual(english);
  });
});

describe("the language", () => {
  it("is spoken and marked on the page once it is chosen", () => {
    speak("es");
    expect(document.documentElement.lang).toBe("es");
    expect(t("visits-found", { count: 1 })).toBe("Una visita");
    expect(t("visits-found", { count: 3 })).toBe("3 visitas");
    speak("en");
    expect(document.documentElement.lang).toBe("en");
    expect(t("visits-found", { count: 3 })).toBe("3 visits");
  });

  it("stays as it is where there is no catalog", () => {
    speak("es");
    speak("xx");
    expect(document.documentElement.lang).toBe("es");
    expect(t("visits-title")).toBe("Visitas");
  });
});
