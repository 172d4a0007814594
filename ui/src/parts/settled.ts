/** Holds a call back until typing pauses, and makes it at once when told to. */

const PAUSE_MS = 500;

export interface Settled<Value> {
  later(value: Value): void;
  now(): void;
}

export function settled<Value>(act: (value: Value) => void): Settled<Value> {
  let waiting: { value: Value } | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function now(): void {
    clearTimeout(timer);
    const due = waiting;
    waiting = null;
    if (due) act(due.value);
  }

  return {
    later(value) {
      waiting = { value };
      clearTimeout(timer);
      timer = setTimeout(now, PAUSE_MS);
    },
    now,
  };
}
