/** Which steps of a visit already hold something. */
import type { Step } from "../route";
import type { FieldView } from "../types/FieldView";
import type { VisitView } from "../types/VisitView";
import { answeredIn, questionsOf } from "./contents";

/** Groups of facts that are asked for on the first step. */
export const CALL_GROUPS: ReadonlySet<string> = new Set(["site", "visit"]);

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
      .some((group) => group.fields.some(isEntered));
  const answered = (sort: string): boolean =>
    questionsOf(visit, sort).some((group) => answeredIn(group) > 0);

  if (entered(true) || answered("symptom")) steps.add("call");
  if (entered(false)) steps.add("system");
  if (visit.readings.length > 0 || answered("observation")) steps.add("readings");
  return steps;
}
