import type { Finding, Severity } from "../../checks/finding";
import type { FindingFilter } from "./FindingFilter";
import type { OpenFinding } from "./OpenFinding";
import { severities } from "./severities";

/** All findings of one kind and severity, in sheet order. */
export interface RuleGroup {
  /** Severity and rule, which together name the group. */
  readonly id: string;
  readonly ruleId: string;
  readonly severity: Severity;
  readonly why: string;
  readonly findings: readonly OpenFinding[];
  readonly fixableCount: number;
}

export interface SeverityGroup {
  readonly severity: Severity;
  readonly count: number;
  readonly rules: readonly RuleGroup[];
}

/**
 * The findings the filter lets through, by severity and then by rule.
 *
 * Rules stand in the order given, so that the list does not jump about while somebody types; a rule that is
 * not among them comes after, as first met. Severities with nothing to show are left out.
 */
export function groupFindings(
  findings: readonly OpenFinding[],
  filter: FindingFilter,
  ruleOrder: readonly string[],
): readonly SeverityGroup[] {
  const byGroup = new Map<string, OpenFinding[]>();
  for (const open of findings) {
    const { severity, ruleId } = open.finding;
    if (!filter.severities.includes(severity)) continue;
    if (filter.ruleId !== null && filter.ruleId !== ruleId) continue;
    const id = `${severity} ${ruleId}`;
    const group = byGroup.get(id);
    if (group === undefined) byGroup.set(id, [open]);
    else group.push(open);
  }
  const rank = new Map(ruleOrder.map((ruleId, index) => [ruleId, index]));
  const rules = [...byGroup].map(([id, group]) => ruleGroup(id, group));
  rules.sort((a, b) => (rank.get(a.ruleId) ?? ruleOrder.length) - (rank.get(b.ruleId) ?? ruleOrder.length));
  return severities.flatMap(({ id: severity }) => {
    const own = rules.filter((rule) => rule.severity === severity);
    const count = own.reduce((sum, rule) => sum + rule.findings.length, 0);
    return count === 0 ? [] : [{ severity, count, rules: own }];
  });
}

function ruleGroup(id: string, findings: readonly OpenFinding[]): RuleGroup {
  const first = findings[0]?.finding as Finding;
  return {
    id,
    ruleId: first.ruleId,
    severity: first.severity,
    why: first.why,
    findings,
    fixableCount: findings.filter(({ finding }) => finding.fix !== undefined).length,
  };
}
