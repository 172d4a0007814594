/** Reasons by the side they take, each side in the order it came. */
import type { ReasonView } from "../../types/ReasonView";

export type Side = "for" | "against";

export function sides(reasons: readonly ReasonView[]): { side: Side; reasons: ReasonView[] }[] {
  return [
    { side: "for" as const, reasons: reasons.filter((reason) => reason.bits >= 0) },
    { side: "against" as const, reasons: reasons.filter((reason) => reason.bits < 0) },
  ].filter((part) => part.reasons.length > 0);
}
