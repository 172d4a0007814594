import { clearMocks, mockIPC } from "@tauri-apps/api/mocks";
import { afterEach, beforeEach, expect, it, vi } from "vitest";

import { Drafts } from "./drafts.svelte";

const sent: unknown[] = [];

beforeEach(() => {
  vi.useFakeTimers();
  sent.length = 0;
  mockIPC((command, payload) => {
    sent.push([command, payload]);
    return null;
  });
});
afterEach(() => {
  vi.useRealTimers();
  clearMocks();
});

const put = (place: string, text: string | null): unknown => ["put_draft", { visit: "v", place, text }];

it("stores each place once typing pauses, and forgets it when it is kept", async () => {
  const drafts = new Drafts("v");
  for (const text of ["4", "45"]) drafts.later("field/length", text);
  drafts.later("field/depth", "1");
  expect(sent).toEqual([]);
  await vi.runAllTimersAsync();
  expect(sent).toEqual([put("field/length", '"45"'), put("field/depth", '"1"')]);
  drafts.drop("field/length");
  drafts.drop("field/length");
  await vi.runAllTimersAsync();
  expect(sent.slice(2)).toEqual([put("field/length", null)]);
  expect([drafts.has("field/length"), drafts.has("field/depth")]).toEqual([false, true]);
});

it("never stores an older text after what came later", async () => {
  const answers: (() => void)[] = [];
  mockIPC((_, payload) => {
    sent.push((payload as { text: unknown }).text);
    return new Promise<null>((resolve) => answers.push(() => resolve(null)));
  });
  const drafts = new Drafts("v");
  drafts.later("a", 1);
  drafts.now();
  drafts.drop("a");
  await vi.runAllTimersAsync();
  expect(sent).toEqual(["1"]);
  answers[0]?.();
  await vi.runAllTimersAsync();
  expect(sent).toEqual(["1", null]);
});

it("takes up what was left, and nothing that cannot be read", () => {
  const drafts = new Drafts("v");
  drafts.load([
    { place: "a", text: '{"text":"4","unit":"ft"}' },
    { place: "b", text: "{" },
  ]);
  expect(drafts.read("a")).toEqual({ text: "4", unit: "ft" });
  expect([drafts.read("b"), drafts.read("c")]).toEqual([null, null]);
});
