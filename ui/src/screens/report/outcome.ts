/** How a visit ended, where the engine has something to say to it. */

/** The outcome that says that everything is put right and proven. */
export const PROVEN = "fixed";

interface Refusal {
  readonly code: string;
  readonly context: { readonly [name: string]: string | undefined };
}

/** What is open, one line each, if a refusal is about that. */
export function openOf(refusal: Refusal): readonly string[] | null {
  if (refusal.code !== "not-proven") return null;
  return (refusal.context["open"] ?? "").split("\n").filter((line) => line !== "");
}
