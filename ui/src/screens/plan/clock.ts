/** Running time, counted from the moment a timer was started. */

/** Seconds left at `now`; below zero when it has run out. */
export function secondsLeft(startedAt: string, seconds: number, now: number): number {
  return Math.ceil(seconds - (now - Date.parse(startedAt)) / 1000);
}

/** Seconds as a clock shows them: `4:05`, `1:02:09`. */
export function clock(seconds: number): string {
  const whole = Math.abs(Math.trunc(seconds));
  const two = (part: number): string => String(part).padStart(2, "0");
  const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}
