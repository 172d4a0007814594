import { clearMocks, mockIPC } from "@tauri-apps/api/mocks";
import { render, screen } from "@testing-library/svelte";
import { createRawSnippet } from "svelte";
import { afterEach, expect, it, vi } from "vitest";

import type { Answer } from "../../types/Answer";
import type { ReasonView } from "../../types/ReasonView";
import { point, visit } from "../../visit/sample";
import { Asking } from "../../visit/asking.svelte";
import Causes from "./Causes.svelte";

afterEach(() => clearMocks());

const path = createRawSnippet(() => ({ render: () => "<nav></nav>" }));

const reason: ReasonView = {
  finding: "gurgling",
  found: "It gurgles",
  bits: 1,
  shown: "2 to 1 for it",
  path: ["Air stays", "Air stays"],
  figures: {
    measured: null,
    expected: null,
    formula: "a = b",
    inputs: [
      ["Length", "1 ft"],
      ["Length", "2 ft"],
    ],
    source: "judgement",
  },
};

/** Everything said twice: the engine may repeat itself, the screen must not break. */
const doubt = { cause: "gauge-lies", title: "The gauge lies", shown: "31 %", reasons: [] };
const outcome = { id: "bubbles:present", seen: "Bubbles: yes", shown: "62 %", then: "then air: 90 %" };
const context = { words: "In its first year: yes.", shown: "1.6 to 1 for it" };
const turn = {
  words: "Look: if it shows bubbles, this rises.",
  outcome: { check: "look", outcome: "bubbles:present", shown: "50 % → 93 %" },
};
const repeating: Answer = {
  assessment: {
    verdict: "open",
    headline: "Not decided yet.",
    causes: [
      {
        id: "air",
        title: "Air left",
        homeowner: "",
        kind: "loop",
        probability: 0.5,
        shown: "50 %",
        reasons: [reason, reason],
        context: [context, context],
        turns: [turn, turn, { words: "It rests on this", outcome: null }],
        has_plan: true,
      },
    ],
    pair: { words: "Two together", shown: "14 %" },
    unexplained: ["same", "same"],
    doubted: [doubt, doubt],
    sound: ["same", "same"],
    checks: [
      {
        id: "look",
        title: "Look",
        how: "Look well.",
        minutes: 1,
        bits: 1,
        shown: "1 bit in 1 min",
        tools: [],
        licence: null,
        cautions: ["same", "same"],
        asks: [],
        reads: ["static_pressure"],
        outcomes: [outcome, outcome],
      },
    ],
    stop: null,
    records: [],
    assumptions: ["same", "same"],
    unused: ["same", "same"],
  },
  plan: null,
};

it("shows the causes with their reasons, even when the engine repeats itself", async () => {
  mockIPC(() => repeating);
  const asking = new Asking();
  void asking.ask("v");
  render(Causes, { visit: visit({ points: [point("static_pressure")] }), item: null, asking, path, onkept: () => {} });
  expect(await screen.findByText("Not decided yet.")).toBeTruthy();
  expect(screen.getByText("50 %")).toBeTruthy();
  expect(screen.getAllByText("Enter: static_pressure")).toHaveLength(1);
  expect(screen.getAllByText("It gurgles")).toHaveLength(2);
});

it("asks for the number that was tapped: a chance, a doubt, a pair", async () => {
  const asked: unknown[] = [];
  mockIPC((command, args) => {
    if (command !== "explain") return repeating;
    asked.push((args as { question: unknown }).question);
    return { measured: null, expected: null, formula: "By Bayes.", inputs: [], source: "own estimate" };
  });
  const asking = new Asking();
  void asking.ask("v");
  render(Causes, { visit: visit({ points: [point("static_pressure")] }), item: null, asking, path, onkept: () => {} });
  for (const number of ["31 %", "14 %", "62 %", "50 % → 93 %", "1.6 to 1 for it"]) {
    (await screen.findAllByText(number))[0]?.closest("button")?.click();
  }
  await vi.waitFor(() => expect(screen.getAllByText("By Bayes.")).toHaveLength(5));
  expect(asked).toEqual([
    { about: "probability", cause: "gauge-lies" },
    { about: "pair" },
    { about: "outcome", check: "look", outcome: "bubbles:present" },
    { about: "outcome", check: "look", outcome: "bubbles:present" },
    { about: "probability", cause: "air" },
  ]);
});

it("says that it works until the answer is there, and why when there is none", async () => {
  let fail = (_: unknown): void => {};
  mockIPC(() => new Promise((_, reject) => (fail = reject)));
  const asking = new Asking();
  void asking.ask("v");
  render(Causes, { visit: visit(), item: null, asking, path, onkept: () => {} });
  expect(screen.getByText("Working it out…")).toBeTruthy();
  fail({ code: "store-failed", message: "The database failed.", context: {} });
  expect(await screen.findByText("The database failed.")).toBeTruthy();
  expect(screen.queryByText("Working it out…")).toBeNull();
});
