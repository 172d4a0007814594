/**
 * The only caller of the host: one function for each command.
 *
 * Everything the interface knows comes through here, with types generated from
 * the engine. A failed command rejects with a `HostError`, whose code the
 * interface may act on and whose message it may show.
 */
import { invoke } from "@tauri-apps/api/core";

import type { About } from "./types/About";
import type { ApiError } from "./types/ApiError";
import type { Answer } from "./types/Answer";
import type { FieldEntry } from "./types/FieldEntry";
import type { NewVisit } from "./types/NewVisit";
import type { ReadingEntry } from "./types/ReadingEntry";
import type { Saved } from "./types/Saved";
import type { VisitLine } from "./types/VisitLine";
import type { VisitView } from "./types/VisitView";

export class HostError extends Error {
  readonly code: string;
  readonly context: ApiError["context"];

  constructor(error: ApiError) {
    super(error.message);
    this.name = "HostError";
    this.code = error.code;
    this.context = error.context;
  }
}

function isApiError(value: unknown): value is ApiError {
  return typeof value === "object" && value !== null && "code" in value && "message" in value;
}

async function call<Output>(command: string, input: Record<string, unknown> = {}): Promise<Output> {
  try {
    return await invoke<Output>(command, input);
  } catch (error) {
    if (isApiError(error)) throw new HostError(error);
    throw new HostError({ code: "host", message: String(error), context: {} });
  }
}

/** What this installation is. */
export const about = (): Promise<About> => call("about");

/** All visits, last changed first. */
export const listVisits = (): Promise<VisitLine[]> => call("list_visits");

/** Starts a visit. */
export const startVisit = (visit: NewVisit): Promise<VisitView> => call("start_visit", { new: visit });

/** A visit with everything entered so far. */
export const openVisit = (visit: string): Promise<VisitView> => call("open_visit", { visit });

/** Changes one fact of a visit. */
export const setField = (visit: string, entry: FieldEntry): Promise<VisitView> =>
  call("set_field", { visit, entry });

/** Answers a question, or makes its answer unknown again. */
export const setAnswer = (
  visit: string,
  finding: string,
  answer: string | null,
): Promise<VisitView> => call("set_answer", { visit, finding, answer });

/** Keeps a reading, new or changed. */
export const putReading = (visit: string, entry: ReadingEntry): Promise<VisitView> =>
  call("put_reading", { visit, entry });

/** Takes a reading away. */
export const removeReading = (visit: string, reading: string): Promise<VisitView> =>
  call("remove_reading", { visit, reading });

/** The causes with their reasons, the checks worth making, and the work plan. */
export const answerCall = (visit: string): Promise<Answer> => call("answer_call", { visit });

/** Marks a step of the work plan as done or not. */
export const markStep = (visit: string, step: string, done: boolean): Promise<Answer> =>
  call("mark_step", { visit, step, done });

/** Asks where to save the service report and writes it there. */
export const saveReport = (visit: string, title: string): Promise<Saved> =>
  call("save_report", { visit, title });

/** Shows the report saved last. */
export const openReport = (): Promise<void> => call("open_report");
