/** Which steps of a visit already hold something. */
import type { Step } from "../route";
import type { FieldView } from "../types/FieldView";
import type { VisitView } from "../types/VisitView";
import { answeredIn, questionsOf } from "./contents";

/** Groups of facts that are asked for on the first step. */
export const CALL_GROUPS: ReadonlySet<string> = new Set(["site", "visit"]);

/** Facts of the visit that are asked for where it is handed over. */
export const ENDED = ["visit.outcome", "visit.time_spent", "visit.cost"] as const;
const HANDED_OVER: ReadonlySet<string> = new Set(ENDED);

/** The day is filled in by the engine when a visit starts. */
const GIVEN: ReadonlySet<string> = new Set(["visit.date"]);

function isEntered(field: FieldView): boolean {
  return field.value !== null && field.value !== "" && !GIVEN.has(field.id);
}

export function begun(visit: VisitView): Set<Step> {
  const steps = new Set<Step>();
  const entered = (call: boolean): boolean =>
    visit.groups
      .filter((group) => CALL_GROUPS.has(group.id) === call)
      .some((group) => group.fields.some((field) => !HANDED_OVER.has(field.id) && isEntered(field)));
  const answered = (sort: string): boolean =>
    questionsOf(visit, sort).some((group) => answeredIn(group) > 0);

  if (entered(true) || answered("symptom")) steps.add("call");
  if (entered(false)) steps.add("system");
  if (visit.readings.length > 0 || answered("observation")) steps.add("readings");
  // Who takes up the work has taken the causes as they stand.
  if (visit.verdicts.length > 0 || visit.work_begun) steps.add("causes");
  if (visit.work_begun) steps.add("plan");
  const all = visit.groups.flatMap((group) => group.fields);
  if (all.some((field) => HANDED_OVER.has(field.id) && isEntered(field))) steps.add("report");
  return steps;
}
