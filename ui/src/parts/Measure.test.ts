import { fireEvent, render, screen } from "@testing-library/svelte";
import { expect, it, vi } from "vitest";

import Measure from "./Measure.svelte";

function field(extra: object = {}) {
  const onchange = vi.fn();
  render(Measure, {
    id: "value",
    label: "Loop gauge",
    text: "8",
    unit: "psi",
    units: ["psi", "bar"].map((symbol) => ({ symbol, label: symbol })),
    onchange,
    ...extra,
  });
  return { onchange, input: screen.getByLabelText<HTMLInputElement>("Loop gauge") };
}

it("hands on what was typed with the unit beside it", async () => {
  const { onchange, input } = field();
  await fireEvent.change(input, { target: { value: "12,5" } });
  expect(onchange).toHaveBeenLastCalledWith("12,5", "psi");
});

it("keeps what was typed when only the unit is switched", async () => {
  const { onchange, input } = field();
  await fireEvent.input(input, { target: { value: "0.6" } });
  await fireEvent.change(screen.getByLabelText("Unit of Loop gauge"), { target: { value: "bar" } });
  expect(onchange).toHaveBeenLastCalledWith("0.6", "bar");
});

it("puts a minus where number pads have none, and takes it away again", async () => {
  const { onchange } = field({ signed: true });
  const sign = screen.getByRole("button", { name: "Change the sign of Loop gauge" });
  await fireEvent.click(sign);
  expect(onchange).toHaveBeenLastCalledWith("-8", "psi");
  await fireEvent.click(sign);
  expect(onchange).toHaveBeenLastCalledWith("8", "psi");
});

it("keeps standing what is typed on while something older comes back", async () => {
  let answer = (_: boolean): void => {};
  const onchange = vi.fn(() => new Promise<boolean>((resolve) => (answer = resolve)));
  const props = {
    id: "value",
    label: "Loop gauge",
    text: "8",
    unit: "psi",
    units: [{ symbol: "psi", label: "psi" }],
    onchange,
  };
  const { rerender } = render(Measure, props);
  const input = screen.getByLabelText<HTMLInputElement>("Loop gauge");
  input.focus();
  await fireEvent.input(input, { target: { value: "12." } });
  await fireEvent.change(input);
  await fireEvent.input(input, { target: { value: "12.5" } });
  await rerender({ ...props, text: "12" });
  answer(true);
  await Promise.resolve();
  expect(input.value).toBe("12.5");
});

it("shows what was kept once it is kept, and what was typed when it is refused", async () => {
  for (const [kept, stands] of [[true, "12"], [false, "12 no"]] as const) {
    const props = {
      id: "value",
      label: "Loop gauge",
      text: "8",
      unit: "psi",
      units: [],
      onchange: () => Promise.resolve(kept),
    };
    const { rerender, unmount } = render(Measure, props);
    const input = screen.getByLabelText<HTMLInputElement>("Loop gauge");
    await fireEvent.input(input, { target: { value: "12 no" } });
    await fireEvent.change(input);
    await rerender({ ...props, text: kept ? "12" : "8" });
    await vi.waitFor(() => expect(input.value).toBe(stands));
    unmount();
  }
});
