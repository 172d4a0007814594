/** Questions under their headings, both in the order the engine gives. */
import type { Question } from "../../client";

export interface Group {
  title: string;
  questions: Question[];
}

export function grouped(questions: readonly Question[]): Group[] {
  const groups = new Map<string, Group>();
  for (const question of questions) {
    const group = groups.get(question.group) ?? { title: question.group, questions: [] };
    group.questions.push(question);
    groups.set(question.group, group);
  }
  return [...groups.values()];
}
