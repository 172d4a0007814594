/** Where the technician is, as written in the address of the window. */
import type { FleetFilter } from "./types/FleetFilter";

export const STEPS = ["call", "system", "readings", "causes", "plan", "report"] as const;
export type Step = (typeof STEPS)[number];

/** A figure whose visits are shown. */
export interface Behind {
  title: string;
  filter: FleetFilter;
}

export type Place =
  | { screen: "visits" }
  | { screen: "exchange" | "learned" }
  /** From the report of a visit the way back leads there. */
  | { screen: "settings"; visit: string | null }
  | { screen: "board"; behind: Behind | null }
  | { screen: "visit"; visit: string; step: Step; item: string | null };

const START: Place = { screen: "visits" };

function isStep(word: string | undefined): word is Step {
  return STEPS.some((step) => step === word);
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return "";
  }
}

function behindIn(text: string | undefined): Behind | null {
  try {
    const read: unknown = JSON.parse(text ?? "");
    // The engine refuses a filter that it does not know.
    return typeof read === "object" && read !== null && "filter" in read ? (read as Behind) : null;
  } catch {
    return null;
  }
}

/** Reads an address; anything it does not know leads to the list of visits. */
export function placeAt(hash: string): Place {
  const [screen, visit, step, item] = hash.replace(/^#\/?/, "").split("/").map(decoded);
  if (screen === "settings") return { screen, visit: visit || null };
  if (screen === "exchange" || screen === "learned") return { screen };
  if (screen === "board") return { screen, behind: behindIn(visit) };
  if (screen === "visit" && visit && isStep(step)) {
    return { screen: "visit", visit, step, item: item || null };
  }
  return START;
}

/** Writes the address of a place. */
export function addressOf(place: Place): string {
  switch (place.screen) {
    case "visits":
      return "#/visits";
    case "settings":
      return place.visit === null ? "#/settings" : `#/settings/${encodeURIComponent(place.visit)}`;
    case "exchange":
    case "learned":
      return `#/${place.screen}`;
    case "board":
      return place.behind ? `#/board/${encodeURIComponent(JSON.stringify(place.behind))}` : "#/board";
    case "visit": {
      const parts = ["visit", place.visit, place.step];
      if (place.item !== null) parts.push(place.item);
      return `#/${parts.map(encodeURIComponent).join("/")}`;
    }
  }
}

/** The address of a step of a visit, or of one item inside it. */
export function stepAddress(visit: string, step: Step, item: string | null = null): string {
  return addressOf({ screen: "visit", visit, step, item });
}
