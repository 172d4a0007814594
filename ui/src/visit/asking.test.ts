import { clearMocks, mockIPC } from "@tauri-apps/api/mocks";
import { afterEach, expect, it, vi } from "vitest";

import type { Answer } from "../types/Answer";
import { Asking } from "./asking.svelte";

afterEach(() => clearMocks());

const answer = (headline: string): Answer => ({
  assessment: {
    verdict: "open",
    headline,
    causes: [],
    pair: null,
    unexplained: [],
    doubted: [],
    sound: [],
    checks: [],
    stop: null,
    records: [],
    assumptions: [],
    unused: [],
  },
  plan: null,
});

it("drops an answer that an entry has overtaken and asks once more", async () => {
  const waiting: ((answer: Answer) => void)[] = [];
  mockIPC(() => new Promise((resolve) => waiting.push(resolve)));
  const asking = new Asking();
  void asking.ask("v");
  void asking.ask("v");
  void asking.ask("v");
  await vi.waitFor(() => expect(waiting).toHaveLength(1));
  waiting[0]?.(answer("old"));
  await vi.waitFor(() => expect(waiting).toHaveLength(2));
  expect(asking.answer).toBeNull();
  waiting[1]?.(answer("new"));
  await vi.waitFor(() => expect(asking.answer?.assessment.headline).toBe("new"));
  expect(waiting).toHaveLength(2);
});

it("keeps the last answer beside a failure and forgets the failure with the next answer", async () => {
  let fail = true;
  mockIPC(() => {
    if (fail) throw { code: "store-failed", message: "no", context: {} };
    return answer("there");
  });
  const asking = new Asking();
  await asking.ask("v");
  expect(asking.failure).not.toBeNull();
  fail = false;
  await asking.ask("v");
  expect(asking.failure).toBeNull();
  expect(asking.answer?.assessment.headline).toBe("there");
});
