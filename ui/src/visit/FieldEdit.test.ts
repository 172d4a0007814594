import { clearMocks, mockIPC } from "@tauri-apps/api/mocks";
import { fireEvent, render, screen } from "@testing-library/svelte";
import { afterEach, expect, it, vi } from "vitest";

import type { VisitView } from "../types/VisitView";
import FieldEdit from "./FieldEdit.svelte";
import { Keeping } from "./keeping.svelte";
import { field, visit } from "./sample";

afterEach(() => clearMocks());

const length = field("ground.length", "500", {
  label: "Length",
  unit: "ft",
  kind: { kind: "measure", signed: false, units: ["ft", "m"].map((symbol) => ({ symbol, label: symbol })) },
});

it("sends a fact as typed and hands on the visit that comes back", async () => {
  const asked = vi.fn();
  const changed = visit({ title: "changed" });
  mockIPC((command, payload) => {
    asked(command, payload);
    return changed;
  });
  const onkept = vi.fn<(kept: VisitView) => void>();
  render(FieldEdit, { visit: "v", field: length, keeping: new Keeping(onkept) });
  await fireEvent.change(screen.getByLabelText("Length"), { target: { value: "5'6\"" } });
  await vi.waitFor(() => expect(onkept).toHaveBeenCalledWith(changed));
  const entry = { id: "ground.length", text: "5'6\"", unit: "ft" };
  expect(asked).toHaveBeenCalledWith("set_field", { visit: "v", entry });
});

it("says why a fact was refused and leaves what was typed to be put right", async () => {
  mockIPC(() => {
    throw { code: "out-of-range", message: "Length: 9e9 ft cannot be.", context: {} };
  });
  const onkept = vi.fn();
  render(FieldEdit, { visit: "v", field: length, keeping: new Keeping(onkept) });
  const input = screen.getByLabelText<HTMLInputElement>("Length");
  await fireEvent.change(input, { target: { value: "9e9" } });
  expect(await screen.findByText("Length: 9e9 ft cannot be.")).toBeTruthy();
  expect(input.value).toBe("9e9");
  expect(onkept).not.toHaveBeenCalled();
});

it("makes a fact unknown when it is emptied", async () => {
  const asked = vi.fn();
  mockIPC((_, payload) => {
    asked(payload);
    return visit();
  });
  render(FieldEdit, { visit: "v", field: length, keeping: new Keeping(() => {}) });
  await fireEvent.change(screen.getByLabelText("Length"), { target: { value: " " } });
  const entry = { id: "ground.length", text: null, unit: "ft" };
  await vi.waitFor(() => expect(asked).toHaveBeenCalledWith({ visit: "v", entry }));
});
