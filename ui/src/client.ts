/**
 * The only caller of the host: one function for each command.
 *
 * Everything the interface knows comes through here, with types generated from
 * the engine. A failed command rejects with a `HostError`, whose code the
 * interface may act on and whose message it may show.
 */
import { invoke } from "@tauri-apps/api/core";

import type {
  FactGroup,
  NewReading,
  Plan,
  Point,
  PointGroup,
  Ranking,
  Saved,
  Visit,
  VisitLine,
} from "./types";
import type { About } from "./types/About";
import type { ApiError } from "./types/ApiError";

export type * from "./types";
export type { About };

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

async function call<Answer>(command: string, input: Record<string, unknown> = {}): Promise<Answer> {
  try {
    return await invoke<Answer>(command, input);
  } catch (error) {
    if (isApiError(error)) throw new HostError(error);
    throw new HostError({ code: "host", message: String(error), context: {} });
  }
}

export const about = (): Promise<About> => call("about");

export const listVisits = (): Promise<VisitLine[]> => call("list_visits");
export const createVisit = (): Promise<Visit> => call("create_visit");
export const openVisit = (visit: string): Promise<Visit> => call("open_visit", { visit });
export const setSite = (visit: string, text: string): Promise<Visit> =>
  call("set_site", { visit, text });
export const setComplaint = (visit: string, text: string): Promise<Visit> =>
  call("set_complaint", { visit, text });
export const setAnswer = (visit: string, question: string, answer: string | null): Promise<Visit> =>
  call("set_answer", { visit, question, answer });

export const facts = (visit: string): Promise<FactGroup[]> => call("facts", { visit });
export const setFact = (
  visit: string,
  fact: string,
  text: string | null,
  unit: string | null,
): Promise<FactGroup[]> => call("set_fact", { visit, fact, text, unit });

export const points = (visit: string): Promise<PointGroup[]> => call("points", { visit });
export const addReading = (visit: string, reading: NewReading): Promise<Point> =>
  call("add_reading", { visit, reading });
export const removeReading = (visit: string, reading: string): Promise<Point> =>
  call("remove_reading", { visit, reading });

export const ranking = (visit: string): Promise<Ranking> => call("ranking", { visit });
export const plan = (visit: string): Promise<Plan | null> => call("plan", { visit });
export const setStepDone = (visit: string, step: string, done: boolean): Promise<Plan | null> =>
  call("set_step_done", { visit, step, done });
export const saveReport = (visit: string): Promise<Saved> => call("save_report", { visit });
