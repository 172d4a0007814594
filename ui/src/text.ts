/**
 * Texts of the interface, from the message catalog.
 *
 * Texts of findings, causes and plans come from the engine already written.
 */
import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";

import english from "../text/en.ftl?raw";
import spanish from "../text/es.ftl?raw";

export const LANGUAGES = ["en", "es"] as const;
export type Language = (typeof LANGUAGES)[number];

// A missing key fails the tests; in the field the key itself is better than nothing.
function read(locale: string, source: string): FluentBundle {
  const bundle = new FluentBundle(locale, { useIsolating: false });
  const problems = bundle.addResource(new FluentResource(source));
  if (problems.length > 0) throw problems[0];
  return bundle;
}

// The locale only forms numbers and plurals. Numbers keep the decimal point that
// the instruments show, as in the engine's texts: hence the Spanish of the Americas.
const CATALOGS: Record<Language, FluentBundle> = {
  en: read("en-US", english),
  es: read("es-419", spanish),
};

let bundle = CATALOGS.en;

/**
 * Chooses the language by a BCP 47 tag; its first part decides, and English
 * stands in for one that has no catalog. What is on the screen already has to be
 * drawn again.
 */
export function setLanguage(tag: string): void {
  const primary = tag.toLowerCase().split("-")[0];
  const language = LANGUAGES.find((known) => known === primary) ?? "en";
  bundle = CATALOGS[language];
  document.documentElement.lang = language;
}

export function t(key: string, values?: Record<string, FluentVariable>): string {
  const message = bundle.getMessage(key);
  if (!message?.value) return key;
  return bundle.formatPattern(message.value, values ?? null, []);
}

export function hasText(key: string): boolean {
  return Boolean(bundle.getMessage(key)?.value);
}
