/** Finding a visit again. */
import type { VisitLine } from "../../client";

function plain(text: string): string {
  return text.normalize("NFD").replace(/\p{Mark}/gu, "").toLocaleLowerCase();
}

/** The visits that hold every word sought, in the order they came. */
export function matching(visits: readonly VisitLine[], sought: string): VisitLine[] {
  const words = plain(sought).split(/\s+/).filter(Boolean);
  return visits.filter((visit) => {
    const held = plain([visit.title, visit.complaint, visit.when, visit.leading ?? ""].join(" "));
    return words.every((word) => held.includes(word));
  });
}
