/** What a gate can say. */
export const VERDICTS = ["open", "passed", "failed"] as const;
export type Verdict = (typeof VERDICTS)[number];

export function verdictNamed(name: string): Verdict {
  return VERDICTS.find((verdict) => verdict === name) ?? "open";
}
