/** Which facts to ask first, and how many are known. */
import type { Fact, FactGroup } from "../../client";

/** Groups whose quick facts are asked on the first step. */
const ASKED_BEFORE: ReadonlySet<string> = new Set(["site", "visit"]);

export function quickFacts(groups: readonly FactGroup[]): Fact[] {
  return groups
    .filter((group) => !ASKED_BEFORE.has(group.id))
    .flatMap((group) => group.facts.filter((fact) => fact.quick));
}

export function countKnown(group: FactGroup): { known: number; all: number } {
  return {
    known: group.facts.filter((fact) => fact.value !== null).length,
    all: group.facts.length,
  };
}
