import type { Severity } from "../../checks/finding";

/** Which findings are shown. */
export interface FindingFilter {
  readonly severities: readonly Severity[];
  /** null for every kind of finding. */
  readonly ruleId: string | null;
}
