export interface VisitLine { id: string; title: string; complaint: string; when: string; leading: string | null }
export interface Symptom { id: string; title: string; group: string; answer: "yes" | "no" | "unknown" }
export interface Visit { id: string; site: string; complaint: string; symptoms: Symptom[]; begun: string[] }
export interface Option { id: string; label: string }
export interface Fact {
  id: string; label: string; group: string; hint: string | null;
  kind: "text" | "choice" | "measure" | "yesno"; options: Option[]; units: string[]; unit: string; signed: boolean;
  value: string | null; doubts: string[];
}
export interface ReadingLine { id: string; shown: string; taken: string; with: string; mode: string; doubts: string[] }
export interface Point {
  id: string; title: string; group: string; how: string; units: string[]; unit: string; signed: boolean;
  instruments: Option[]; instrument: string; modes: Option[]; mode: string; readings: ReadingLine[];
}
export interface Check { point: string | null; title: string; why: string; minutes: string; caution: string | null }
export interface Reason { words: string; path: string[]; side: "for" | "against"; weight: string }
export interface Cause { id: string; title: string; probability: number; shown: string; plain: string; reasons: Reason[]; correction: boolean }
export interface Ranking { causes: Cause[]; next: Check | null; unexplained: string[]; notes: string[] }
export interface Quantity { label: string; shown: string; why: string | null }
export interface PlanStep {
  id: string; title: string; words: string; quantities: Quantity[]; cautions: string[]; gate: string | null; done: boolean;
}
export interface Plan { cause: string; title: string; steps: PlanStep[]; missing: string[] }
