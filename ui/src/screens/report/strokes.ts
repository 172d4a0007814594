/** What is drawn on a signature pad: points in 0..1 of its width and height. */
export type Stroke = [number, number][];

/** A point of the pad, held inside it. */
export function pointIn(box: { left: number; top: number; width: number; height: number }, x: number, y: number): [number, number] {
  const share = (part: number, whole: number): number => Math.min(1, Math.max(0, whole > 0 ? part / whole : 0));
  return [share(x - box.left, box.width), share(y - box.top, box.height)];
}

/** Points nearer than this to the one before tell nothing new. */
const NEAR = 0.004;

export function withPoint(stroke: Stroke, point: [number, number]): Stroke {
  const last = stroke.at(-1);
  if (last && Math.hypot(point[0] - last[0], point[1] - last[1]) < NEAR) return stroke;
  return [...stroke, point];
}

/** A stroke as the points of a line in a drawing of `aspect` by 1, in hundredths. */
export function line(stroke: Stroke, aspect: number): string {
  const at = ([x, y]: [number, number]): string => `${(x * aspect * 100).toFixed(1)},${(y * 100).toFixed(1)}`;
  const [first] = stroke;
  // One touch is a dot: a line from itself to itself.
  return (stroke.length === 1 && first ? [first, first] : stroke).map(at).join(" ");
}

/** Whether strokes are the mark of one who signed by typing the name: one level rule. */
export function isRule(strokes: readonly Stroke[]): boolean {
  const [from, to, ...more] = strokes.length === 1 ? (strokes[0] ?? []) : [];
  return from !== undefined && to !== undefined && more.length === 0 && from[1] === to[1];
}

/** The mark of one who signs by typing the name: a plain rule, on which the name stands. */
export const RULE: Stroke[] = [[[0.05, 0.7], [0.95, 0.7]]];
