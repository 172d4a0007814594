import { expect, it, vi } from "vitest";

import { Keeping } from "./keeping.svelte";
import { visit } from "./sample";

it("never shows an older answer over a newer one", async () => {
  const onkept = vi.fn();
  const keeping = new Keeping(onkept);
  let answerFirst = (): void => {};
  const first = new Promise<ReturnType<typeof visit>>((resolve) => {
    answerFirst = () => resolve(visit({ title: "first" }));
  });
  const slow = keeping.keep("a", first);
  await keeping.keep("b", Promise.resolve(visit({ title: "second" })));
  answerFirst();
  expect(await slow).toBe(true);
  expect(onkept.mock.calls.map(([kept]) => kept.title)).toEqual(["second"]);
});

it("holds that order across screens", async () => {
  const shown: string[] = [];
  const screens = [1, 2].map(() => new Keeping((kept) => shown.push(kept.title)));
  let answerFirst = (): void => {};
  const slow = screens[0]?.keep("a", new Promise((resolve) => (answerFirst = () => resolve(visit({ title: "first" })))));
  await screens[1]?.keep("b", Promise.resolve(visit({ title: "second" })));
  answerFirst();
  await slow;
  expect(shown).toEqual(["second"]);
});

it("forgets a refusal when the same subject is kept, not when another is", async () => {
  const keeping = new Keeping(() => {});
  expect(await keeping.keep("a", Promise.reject(new Error("no")))).toBe(false);
  await keeping.keep("b", Promise.resolve(visit()));
  expect(keeping.failureOf("a")).toBeInstanceOf(Error);
  await keeping.keep("a", Promise.resolve(visit()));
  expect(keeping.failureOf("a")).toBeNull();
});
