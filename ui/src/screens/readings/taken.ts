/** Looking through points and what was read at them. */
import type { Point, PointGroup, ReadingLine } from "../../client";

export function pointIn(groups: readonly PointGroup[], id: string): Point | null {
  return groups.flatMap((group) => group.points).find((point) => point.id === id) ?? null;
}

/** The points that were read, with the last reading of each. */
export function taken(groups: readonly PointGroup[]): { point: Point; last: ReadingLine }[] {
  return groups
    .flatMap((group) => group.points)
    .flatMap((point) => {
      const last = point.readings.at(-1);
      return last ? [{ point, last }] : [];
    });
}
