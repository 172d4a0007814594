export interface VisitLine { id: string; title: string; complaint: string; when: string; leading: string | null }
export interface Option { id: string; label: string }
export interface Question { id: string; title: string; group: string; options: Option[]; answer: string | null }
export interface Visit { id: string; site: string; complaint: string; questions: Question[]; begun: string[] }
export interface Fact {
  id: string; label: string; hint: string | null;
  kind: "text" | "flag" | "choice" | "measure" | "date" | "count"; quick: boolean; options: Option[]; units: string[]; unit: string; signed: boolean;
  value: string | null; doubts: string[];
}
export interface FactGroup { id: string; title: string; summary: string; facts: Fact[] }
export interface ReadingLine { id: string; shown: string; taken: string; with: string; mode: string; doubts: string[] }
export interface Point {
  id: string; title: string; how: string; caution: string | null; units: string[]; unit: string; signed: boolean;
  instruments: Option[]; instrument: string; modes: Option[]; mode: string | null; readings: ReadingLine[];
}
export interface PointGroup { id: string; title: string; points: Point[] }
export interface Check { point: string | null; title: string; why: string; cost: string; caution: string | null }
export interface Reason { words: string; path: string[]; side: "for" | "against"; weight: string }
export interface Cause { id: string; title: string; probability: number; shown: string; reasons: Reason[]; changes: string[] }
export interface Ranking { causes: Cause[]; next: Check | null; unexplained: string[]; notes: string[] }
export interface Quantity { label: string; shown: string; why: string | null }
export interface PlanStep {
  id: string; title: string; words: string; quantities: Quantity[]; cautions: string[]; gate: string | null; done: boolean;
}
export interface Plan { cause: string; title: string; steps: PlanStep[]; missing: string[] }
export interface NewReading { point: string; text: string; unit: string; instrument: string; mode: string | null }
export interface Saved { path: string | null }
