/** The drawings of a visit; an answer that a newer question has overtaken is dropped. */
import { pictures } from "../client";
import type { PicturesView } from "../types/PicturesView";

export class Picturing {
  drawn = $state.raw<PicturesView | null>(null);
  failure = $state.raw<unknown>(null);

  #turn = 0;

  async ask(visit: string, width: number): Promise<void> {
    this.#turn += 1;
    const turn = this.#turn;
    try {
      const drawn = await pictures(visit, width);
      if (turn !== this.#turn) return;
      this.drawn = drawn;
      this.failure = null;
    } catch (error) {
      if (turn === this.#turn) this.failure = error;
    }
  }
}
