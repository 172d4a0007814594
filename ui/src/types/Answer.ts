import type { AssessmentView } from "./AssessmentView";
import type { PlanView } from "./PlanView";

export type Answer = { assessment: AssessmentView, plan: PlanView | null, };
