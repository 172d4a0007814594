/** What the board is asked. */
import { addressOf } from "../../route";
import type { FleetFilter } from "../../types/FleetFilter";
import type { FleetGroup } from "../../types/FleetGroup";
import type { FleetQuery } from "../../types/FleetQuery";

/** Spans that can be chosen, in days: a month, a quarter, half a year, one year, two. */
export const SPANS = [30, 91, 183, 365, 730] as const;

export function emptyFilter(): FleetFilter {
  return {
    from: null,
    to: null,
    started_from: null,
    started_to: null,
    groups: [],
    cause: null,
    aspect: null,
  };
}

export function firstQuery(): FleetQuery {
  return { filter: emptyFilter(), repeat_days: 365, watch_days: 730, changed_on: null };
}

/** The identifier under which causes stand among what can be filtered by. */
const CAUSE = "cause";

/** The group chosen of one sort; none for all. */
export function chosenOf(filter: FleetFilter, dimension: string): string | null {
  if (dimension === CAUSE) return filter.cause;
  return filter.groups.find((one) => one.dimension === dimension)?.group ?? null;
}

/** The filter with another group of one sort. */
export function withChosen(filter: FleetFilter, dimension: string, group: string | null): FleetFilter {
  if (dimension === CAUSE) return { ...filter, cause: group };
  const others: FleetGroup[] = filter.groups.filter((one) => one.dimension !== dimension);
  return { ...filter, groups: group === null ? others : [...others, { dimension, group }] };
}

/** How many limits are set. */
export function limits(filter: FleetFilter): number {
  const days = [filter.from, filter.to, filter.started_from, filter.started_to];
  return [...days, filter.cause].filter((limit) => limit !== null).length + filter.groups.length;
}

/** The address of the visits behind a figure. */
export function behindAddress(title: string, filter: FleetFilter): string {
  return addressOf({ screen: "board", behind: { title, filter } });
}
