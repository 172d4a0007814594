/**
 * Texts of the interface, from one message catalog a language.
 *
 * Texts of findings, causes and plans come from the engine already written.
 */
import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";

import { whole } from "./parts/whole";

/** Every catalog there is, by its language tag: a new file is a new language. */
const SOURCES: Record<string, string> = import.meta.glob("../text/*.ftl", {
  query: "?raw",
  import: "default",
  eager: true,
});

const FIRST = "en";

function bundleOf(tag: string, source: string): FluentBundle {
  const bundle = new FluentBundle(tag, { useIsolating: false });
  // A missing key fails the tests; in the field the key itself is better than nothing.
  const problems = bundle.addResource(new FluentResource(source));
  if (problems.length > 0) throw problems[0];
  return bundle;
}

const BUNDLES = new Map(
  Object.entries(SOURCES).map(([path, source]) => {
    const tag = path.replace(/^.*\/|\.ftl$/g, "");
    return [tag, bundleOf(tag, source)] as const;
  }),
);

export const LANGUAGES: readonly string[] = [...BUNDLES.keys()];

let spoken = FIRST;

/** Speaks a language from the next screen on; one without a catalog is left aside. */
export function speak(tag: string): void {
  if (BUNDLES.has(tag)) spoken = tag;
  document.documentElement.lang = spoken;
}

/** Tag of the language in use. */
export function language(): string {
  return spoken;
}

export function t(key: string, values?: Record<string, FluentVariable>): string {
  const bundle = BUNDLES.get(spoken);
  const message = bundle?.getMessage(key);
  if (!bundle || !message?.value) return key;
  return whole(bundle.formatPattern(message.value, values ?? null, []));
}

export function hasText(key: string, tag: string = spoken): boolean {
  return Boolean(BUNDLES.get(tag)?.getMessage(key)?.value);
}
