/**
 * Texts of the interface, from the message catalog.
 *
 * Texts of findings, causes and plans come from the engine already written.
 */
import { FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";

import english from "../text/en.ftl?raw";

// A missing key fails the tests; in the field the key itself is better than nothing.
const bundle = new FluentBundle("en-US", { useIsolating: false });
const problems = bundle.addResource(new FluentResource(english));
if (problems.length > 0) throw problems[0];

export function t(key: string, values?: Record<string, FluentVariable>): string {
  const message = bundle.getMessage(key);
  if (!message?.value) return key;
  return bundle.formatPattern(message.value, values ?? null, []);
}

export function hasText(key: string): boolean {
  return Boolean(bundle.getMessage(key)?.value);
}
