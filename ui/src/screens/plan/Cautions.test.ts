import { fireEvent, render, screen } from "@testing-library/svelte";
import { expect, it, vi } from "vitest";

import Cautions from "./Cautions.svelte";

const caution = (id: string, acknowledged: boolean) => ({ id, text: "Power off. Lock it.", acknowledge: true, acknowledged });
const boxes = () => screen.getAllByRole<HTMLInputElement>("checkbox");

it("takes a tick back while the step is open", async () => {
  const onacknowledge = vi.fn();
  render(Cautions, { cautions: [caution("power", true)], known: new Set<string>(), done: false, onacknowledge });
  await fireEvent.click(boxes()[0]!);
  expect(onacknowledge).toHaveBeenCalledExactlyOnceWith("power", false);
  expect(document.querySelector("[data-test=caution-held]")).toBeNull();
});

it("holds the ticks of a step that is done, says why, and still takes one that is missing", () => {
  const cautions = [caution("power", true), caution("fluid", false)];
  const { container } = render(Cautions, { cautions, known: new Set(["power"]), done: true, onacknowledge: vi.fn() });
  const box = (id: string) => container.querySelector<HTMLInputElement>(`[data-caution=${id}]`);
  expect(box("power")?.disabled).toBe(true);
  expect(box("fluid")?.disabled).toBe(false);
  expect(container.querySelector("[data-test=caution-held]")?.textContent).toContain("Not done after all");
});
