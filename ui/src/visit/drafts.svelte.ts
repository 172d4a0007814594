/**
 * What is typed into a visit or the settings and not kept yet. It is stored at every pause, so that
 * a dead battery takes nothing along, and waits where it was typed.
 */
import { getContext, setContext } from "svelte";
import { SvelteMap } from "svelte/reactivity";

import { putDraft } from "../client";
import { settled } from "../parts/settled";
import type { DraftView } from "../types/DraftView";

/** Under what the drafts of a visit are found by what is inside of it. */
export const DRAFTS = Symbol("drafts");

export class Drafts {
  /** The visit; none for the settings. */
  readonly #visit: string | null;
  readonly #typed = new SvelteMap<string, string>();
  readonly #changed = new Set<string>();
  readonly #typing = settled<null>(() => this.#store());
  // One after the other: an older text never overtakes a newer one.
  #stored: Promise<void> = Promise.resolve();

  constructor(visit: string | null) {
    this.#visit = visit;
  }

  /** Takes up what was left. */
  load(left: readonly DraftView[]): void {
    for (const { place, text } of left) this.#typed.set(place, text);
  }

  has(place: string): boolean {
    return this.#typed.has(place);
  }

  /** What was typed at a place, as it was handed over. */
  read<Typed>(place: string): Typed | null {
    const text = this.#typed.get(place);
    if (text === undefined) return null;
    try {
      return JSON.parse(text) as Typed;
    } catch {
      return null;
    }
  }

  /** Stores what is typed once typing pauses. */
  later(place: string, typed: unknown): void {
    this.#typed.set(place, JSON.stringify(typed));
    this.#changed.add(place);
    this.#typing.later(null);
  }

  /** It is kept, or taken back. */
  drop(place: string): void {
    if (!this.#typed.delete(place)) return;
    this.#changed.delete(place);
    this.#send(place, null);
  }

  /** Stores at once what still waits for a pause. */
  now(): void {
    this.#typing.now();
  }

  #store(): void {
    for (const place of this.#changed) this.#send(place, this.#typed.get(place) ?? null);
    this.#changed.clear();
  }

  #send(place: string, text: string | null): void {
    // What cannot be stored still stands in its field; keeping it will say why.
    this.#stored = this.#stored.then(() => putDraft(this.#visit, place, text)).catch(() => {});
  }
}

/** For everything below the component that calls it. */
export function provideDrafts(drafts: Drafts): void {
  setContext(DRAFTS, drafts);
}

/** Those of the visit, or of the settings, around a component; none outside of both. */
export function useDrafts(): Drafts | undefined {
  return getContext(DRAFTS);
}
