/** Changes on their way into the store, and the one that was refused. */
import { setAnswer, setField } from "../client";
import type { FieldEntry } from "../types/FieldEntry";
import type { VisitView } from "../types/VisitView";

export class Keeping {
  /** The change that was refused, and why; gone with the next one that is kept. */
  refused = $state.raw<{ subject: string; failure: unknown } | null>(null);

  readonly #onkept: (visit: VisitView) => void;
  // Answers may overtake each other on the way back, those of one screen also those
  // of the next; only the newest counts.
  static #asked = 0;
  static #shown = 0;

  constructor(onkept: (visit: VisitView) => void) {
    this.#onkept = onkept;
  }

  /** Waits for a change of `subject`; true when it was kept. */
  async keep(subject: string, change: Promise<VisitView>): Promise<boolean> {
    Keeping.#asked += 1;
    const turn = Keeping.#asked;
    try {
      const visit = await change;
      if (turn > Keeping.#shown) {
        Keeping.#shown = turn;
        this.#onkept(visit);
      }
      if (this.refused?.subject === subject) this.refused = null;
      return true;
    } catch (failure) {
      this.refused = { subject, failure };
      return false;
    }
  }

  field(visit: string, entry: FieldEntry): Promise<boolean> {
    return this.keep(entry.id, setField(visit, entry));
  }

  answer(visit: string, finding: string, answer: string | null): Promise<boolean> {
    return this.keep(finding, setAnswer(visit, finding, answer));
  }

  /** Why the last change of `subject` was refused, if it was. */
  failureOf(subject: string): unknown {
    return this.refused?.subject === subject ? this.refused.failure : null;
  }
}
