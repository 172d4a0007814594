import { clearMocks, mockIPC } from "@tauri-apps/api/mocks";
import { fireEvent, render, screen } from "@testing-library/svelte";
import { afterEach, expect, it, vi } from "vitest";

import type { VisitView } from "../types/VisitView";
import { Drafts, DRAFTS } from "./drafts.svelte";
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

it("shows what was typed and not kept as what it is, and keeps it when told to", async () => {
  const asked: unknown[] = [];
  mockIPC((command, payload) => {
    asked.push([command, payload]);
    return command === "set_field" ? visit() : null;
  });
  const drafts = new Drafts("v");
  drafts.load([{ place: "field/ground.length", text: '{"text":"4","unit":"m"}' }]);
  const props = { visit: "v", field: length, keeping: new Keeping(() => {}) };
  render(FieldEdit, { props, context: new Map([[DRAFTS, drafts]]) });
  expect(screen.getByLabelText<HTMLInputElement>("Length").value).toBe("4");
  expect(screen.getByLabelText<HTMLSelectElement>("Unit of Length").value).toBe("m");
  expect(screen.getByText("Typed, not kept yet")).toBeTruthy();
  expect(asked).toEqual([]);
  await fireEvent.click(screen.getByText("Keep it"));
  const entry = { id: "ground.length", text: "4", unit: "m" };
  await vi.waitFor(() => expect(screen.queryByText("Typed, not kept yet")).toBeNull());
  await vi.waitFor(() =>
    expect(asked).toEqual([
      ["set_field", { visit: "v", entry }],
      ["put_draft", { visit: "v", place: "field/ground.length", text: null }],
    ]),
  );
});

it("keeps a refused number as a draft", async () => {
  const stored: unknown[] = [];
  mockIPC((command, payload) => {
    if (command === "set_field") throw { code: "out-of-range", message: "Length: 9e9 ft cannot be.", context: {} };
    stored.push((payload as { text: unknown }).text);
    return null;
  });
  const drafts = new Drafts("v");
  const props = { visit: "v", field: length, keeping: new Keeping(() => {}) };
  render(FieldEdit, { props, context: new Map([[DRAFTS, drafts]]) });
  const input = screen.getByLabelText<HTMLInputElement>("Length");
  input.focus();
  await fireEvent.input(input, { target: { value: "9e9" } });
  await fireEvent.change(input);
  expect(await screen.findByText("Length: 9e9 ft cannot be.")).toBeTruthy();
  drafts.now();
  await vi.waitFor(() => expect(stored).toEqual(['{"text":"9e9","unit":"ft"}']));
  expect(drafts.has("field/ground.length")).toBe(true);
});
