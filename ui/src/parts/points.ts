/** Length of a point of the engine's charts: their smallest words are as large as small words beside them. */
export const POINT_REM = 0.085;

/** Steps of the widths that are asked for; a pixel more or less is no other chart. */
const STEP = 5;

/** How many points fit into a width, by the size of letters. */
export function points(pixels: number, rem: number): number {
  const whole = pixels / (POINT_REM * rem);
  return Number.isFinite(whole) ? Math.floor(whole / STEP) * STEP : 0;
}
