import { afterEach, expect, it, vi } from "vitest";

import { cameBackBy, findAgain, leave, moved } from "./returning";

afterEach(() => document.body.replaceChildren());

it("knows the link only of one who comes back from where it led", () => {
  leave("#/visit/1/plan", "#/visit/1/readings/flow:left");
  moved("tauri://localhost/index.html#/visit/1/readings/flow:left");
  expect(cameBackBy("#/visit/1/plan")).toBe("#/visit/1/readings/flow:left");
  expect(cameBackBy("#/visit/1/report")).toBeNull();
  moved("tauri://localhost/index.html#/visit/1/readings");
  expect(cameBackBy("#/visit/1/plan")).toBeNull();
  moved("tauri://localhost/index.html");
  expect(cameBackBy("#/visit/1/plan")).toBeNull();
});

it("finds a link again, inside what was folded in too", () => {
  document.body.innerHTML = `<main><a href="#/a">A</a><details><a href="#/b">B</a></details></main>`;
  const main = document.querySelector("main") as HTMLElement;
  const shown = vi.spyOn(Element.prototype, "scrollIntoView");
  expect(findAgain(main, "#/b")).toBe(true);
  expect(main.querySelector("details")?.open).toBe(true);
  expect(document.activeElement?.getAttribute("href")).toBe("#/b");
  expect(shown).toHaveBeenCalledOnce();
  expect(findAgain(main, "#/gone")).toBe(false);
});
