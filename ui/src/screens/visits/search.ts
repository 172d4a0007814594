/** Finding a visit again. */
import { language } from "../../text";
import type { VisitLine } from "../../types/VisitLine";

/** Where a language is spoken differently from place to place. */
const LOCALES: Record<string, string> = { en: "en-US", es: "es-US" };

function plain(text: string): string {
  return text.normalize("NFD").replace(/\p{Mark}/gu, "").toLocaleLowerCase();
}

/** The visits that hold every word sought, in the order they came. */
export function matching(visits: readonly VisitLine[], sought: string): VisitLine[] {
  const words = plain(sought).split(/\s+/).filter(Boolean);
  return visits.filter((visit) => {
    const held = plain([visit.site, visit.complaint, visit.date, visit.outcome].filter(Boolean).join(" "));
    return words.every((word) => held.includes(word));
  });
}

/** A day `YYYY-MM-DD` as people say it. */
export function dayInWords(day: string): string {
  const date = new Date(`${day}T12:00:00Z`);
  if (Number.isNaN(date.valueOf())) return day;
  return new Intl.DateTimeFormat(LOCALES[language()] ?? language(), { dateStyle: "long", timeZone: "UTC" }).format(date);
}
