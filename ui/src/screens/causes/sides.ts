/** Reasons by the side they take, each side in the order it came, and how each is told. */
import type { ReasonView } from "../../types/ReasonView";

export type Side = "for" | "against";

export function sides(reasons: readonly ReasonView[]): { side: Side; reasons: ReasonView[] }[] {
  return [
    { side: "for" as const, reasons: reasons.filter((reason) => reason.bits >= 0) },
    { side: "against" as const, reasons: reasons.filter((reason) => reason.bits < 0) },
  ].filter((part) => part.reasons.length > 0);
}

/**
 * The words of a reason's way: what is said before it or in its place, and its stops.
 * Against a cause the way is what would be expected, which is said first.
 */
export function told({ bits, path }: Pick<ReasonView, "bits" | "path">): { lead: string | null; trace: readonly string[] } {
  const led = path.length === 1 || bits < 0;
  return led ? { lead: path[0] ?? null, trace: path.slice(1) } : { lead: null, trace: path };
}
