/** The head of an arrow at the end of a line, of the same shape as in the reports. */
import type { Point } from "../types/Point";

export function arrowHead(points: readonly Point[], width: number): Point[] {
  const [from, tip] = points.slice(-2);
  if (!from || !tip) return [];
  const length = Math.hypot(tip.x - from.x, tip.y - from.y);
  if (!(length > 0)) return [];
  const [ux, uy] = [(tip.x - from.x) / length, (tip.y - from.y) / length];
  const long = 3.5 + 2 * width;
  const half = 0.4 * long;
  const base = { x: tip.x - ux * long, y: tip.y - uy * long };
  return [
    { x: base.x - uy * half, y: base.y + ux * half },
    tip,
    { x: base.x + uy * half, y: base.y - ux * half },
  ];
}
