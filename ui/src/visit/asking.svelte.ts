/**
 * What the engine makes of a visit, asked for anew after every entry.
 *
 * Entries never wait for it: one question is under way at a time, and an answer
 * that an entry has overtaken is dropped for the next one.
 */
import { answerCall } from "../client";
import type { Answer } from "../types/Answer";

export class Asking {
  answer = $state.raw<Answer | null>(null);
  failure = $state.raw<unknown>(null);

  #busy = false;
  #overtaken = false;

  async ask(visit: string): Promise<void> {
    this.#overtaken = true;
    if (this.#busy) return;
    this.#busy = true;
    while (this.#overtaken) {
      this.#overtaken = false;
      let answer: Answer | null = null;
      let failure: unknown = null;
      try {
        answer = await answerCall(visit);
      } catch (error) {
        failure = error;
      }
      // The loop goes round again; nothing older is shown over what is coming.
      if (this.#overtaken) continue;
      this.failure = failure;
      if (answer) this.answer = answer;
    }
    this.#busy = false;
  }
}
