import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";

import { settled } from "./settled";

describe("settled", () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it("acts once on the last value when typing pauses", () => {
    const act = vi.fn();
    const typing = settled<string>(act);
    for (const text of ["1", "12", "12.5"]) typing.later(text);
    expect(act).not.toHaveBeenCalled();
    vi.runAllTimers();
    expect(act.mock.calls).toEqual([["12.5"]]);
  });

  it("acts at once when told to, and not again", () => {
    const act = vi.fn();
    const typing = settled<string>(act);
    typing.later("7");
    typing.now();
    typing.now();
    vi.runAllTimers();
    expect(act.mock.calls).toEqual([["7"]]);
  });
});
