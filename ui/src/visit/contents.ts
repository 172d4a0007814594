/** Finding things in a visit. */
import type { FieldGroupView } from "../types/FieldGroupView";
import type { FieldView } from "../types/FieldView";
import type { PointView } from "../types/PointView";
import type { QuestionGroupView } from "../types/QuestionGroupView";
import type { QuestionView } from "../types/QuestionView";
import type { ReadingView } from "../types/ReadingView";
import type { VisitView } from "../types/VisitView";
import { CALL_GROUPS } from "./begun";

export function fieldOf(visit: VisitView, id: string): FieldView | undefined {
  return visit.groups.flatMap((group) => group.fields).find((field) => field.id === id);
}

/** The facts that tell most, without those of the first step. */
export function quickFields(visit: VisitView): FieldView[] {
  return visit.groups
    .filter((group) => !CALL_GROUPS.has(group.id))
    .flatMap((group) => group.fields.filter((field) => field.quick));
}

export function countKnown(group: FieldGroupView): { known: number; all: number } {
  return {
    known: group.fields.filter((field) => field.value !== null && field.value !== "").length,
    all: group.fields.length,
  };
}

export function questionsOf(visit: VisitView, sort: string): QuestionGroupView[] {
  return visit.questions.filter((group) => group.sort === sort);
}

/** Every question, whatever its group. */
export function allQuestions(visit: VisitView): QuestionView[] {
  return visit.questions.flatMap((group) => group.questions);
}

export function answeredIn(group: QuestionGroupView): number {
  return group.questions.filter((question) => question.answer !== null).length;
}

export function pointOf(visit: VisitView, id: string): PointView | undefined {
  return visit.points.find((point) => point.id === id);
}

/** What was read at a point, last first. */
export function readingsAt(visit: VisitView, point: string): ReadingView[] {
  return visit.readings.filter((reading) => reading.point === point).reverse();
}

export interface PointGroup {
  id: string;
  label: string;
  points: PointView[];
}

/** Points under their headings, both in the order the engine gives. */
export function pointGroups(visit: VisitView): PointGroup[] {
  const groups = new Map<string, PointGroup>();
  for (const point of visit.points) {
    const group = groups.get(point.group) ?? {
      id: point.group,
      label: point.group_label,
      points: [],
    };
    group.points.push(point);
    groups.set(point.group, group);
  }
  return [...groups.values()];
}

/** Readings of one point in the order of their circuits; those of none, and of one, as they came. */
export function byCircuit(readings: readonly ReadingView[]): ReadingView[] {
  return [...readings].sort((one, other) => (one.circuit ?? 0) - (other.circuit ?? 0));
}

/** The points that were read, in the order of proof, each with its readings, last first. */
export function pointsRead(visit: VisitView): { point: PointView; readings: ReadingView[] }[] {
  return visit.points
    .map((point) => ({ point, readings: readingsAt(visit, point.id) }))
    .filter(({ readings }) => readings.length > 0);
}
