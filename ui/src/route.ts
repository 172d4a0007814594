/** Where the technician is, as written in the address of the window. */

export const STEPS = ["call", "system", "readings", "causes", "plan", "report"] as const;
export type Step = (typeof STEPS)[number];

export type Place =
  | { screen: "visits" }
  | { screen: "settings" }
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

/** Reads an address; anything it does not know leads to the list of visits. */
export function placeAt(hash: string): Place {
  const [screen, visit, step, item] = hash.replace(/^#\/?/, "").split("/").map(decoded);
  if (screen === "settings") return { screen: "settings" };
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
      return "#/settings";
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
