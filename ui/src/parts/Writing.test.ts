import { fireEvent, render, screen } from "@testing-library/svelte";
import { afterEach, beforeEach, expect, it, vi } from "vitest";

import Writing from "./Writing.svelte";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it("lets nobody write over what is being written, not even what was just kept of it", async () => {
  const onwrite = vi.fn();
  const props = { id: "complaint", label: "Complaint", text: "", onwrite };
  const { rerender } = render(Writing, props);
  const input = screen.getByLabelText<HTMLInputElement>("Complaint");
  await fireEvent.input(input, { target: { value: "It " } });
  vi.runAllTimers();
  expect(onwrite).toHaveBeenLastCalledWith("It ");
  // Kept without the blank at its end.
  await rerender({ ...props, text: "It" });
  expect(input.value).toBe("It ");
  await fireEvent.input(input, { target: { value: "It gurgles" } });
  await fireEvent.blur(input);
  expect(onwrite).toHaveBeenLastCalledWith("It gurgles");
  expect(input.value).toBe("It gurgles");
  await rerender({ ...props, text: "It gurgles" });
  // Taken back from elsewhere.
  await rerender({ ...props, text: "" });
  expect(input.value).toBe("");
});
