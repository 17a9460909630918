import type { SheetTable } from "../sheet/sheetTable";
import type { CheckedPart } from "./checkedPart";
import type { CheckFacts } from "./checkFacts";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { RowFindings } from "./checkRun";
import type { Finding } from "./finding";
import { makeFinding } from "./makeFinding";
import type { Remark, Rule } from "./rule";
import type { WorkbookChange } from "./workbookChange";

/** Under this row a rule over a table or the workbook keeps what it found. */
const WHOLE = -1;
const NOTHING: RowFindings = new Map();

/**
 * What one rule finds, table by table.
 *
 * With an earlier result and what changed since, only what the change can touch is looked at again.
 */
export function runRule(
  rule: Rule,
  workbook: CheckedWorkbook,
  facts: CheckFacts,
  earlier: readonly RowFindings[] | null,
  change: WorkbookChange | null,
): readonly RowFindings[] {
  const isTouched = (part: CheckedPart): boolean => change !== null && touches(rule, change, part);
  const keep = change === null || (rule.uses ?? []).some(isTouched) ? null : earlier;
  if (rule.scope === "workbook") {
    if (keep !== null && !rule.tables.some(isTouched)) return keep;
    return [gather(WHOLE, rule, (report) => rule.check(workbook, report, facts))];
  }
  return workbook.tables.map((table, index) => {
    if (!rule.tables.includes(table.kind) || !hasNeeds(rule, table)) return NOTHING;
    const since = change?.tables[index];
    const before = keep === null || since === undefined || since.before === null ? undefined : keep[since.before];
    const isSame = since !== undefined && since.changedRows.length === 0 && since.removedRows.length === 0;
    if (before !== undefined && (isSame || (rule.scope === "table" && !isTouched(table.kind)))) return before;
    if (rule.scope === "table") return gather(WHOLE, rule, (report) => rule.check(table, report, facts));
    if (before === undefined || since === undefined) return runRows(rule, table, table.dataRows, facts, new Map());
    const kept = new Map(before);
    for (const row of since.removedRows) kept.delete(row);
    for (const row of since.changedRows) kept.delete(row);
    return runRows(rule, table, since.changedRows, facts, kept);
  });
}

/** Whether a change is of something that the rule reads there. */
function touches(rule: Rule, { fields }: WorkbookChange, part: CheckedPart): boolean {
  const changed = fields.get(part);
  if (changed === undefined) return false;
  const read = rule.reads?.[part];
  return changed === null || read === undefined || read.some((field) => changed.has(field));
}

function hasNeeds(rule: Rule, table: SheetTable): boolean {
  if (rule.scope !== "row" && rule.scope !== "table") return true;
  return rule.needs.every((field) => table.columnOf[field] !== undefined);
}

function gather(row: number, rule: Rule, look: (report: (remark: Remark<string>) => void) => void): RowFindings {
  const findings: Finding[] = [];
  look((remark) => findings.push(makeFinding(rule, remark)));
  return findings.length === 0 ? NOTHING : new Map([[row, findings]]);
}

function runRows(
  rule: Rule,
  table: SheetTable,
  rows: readonly number[],
  facts: CheckFacts,
  into: Map<number, readonly Finding[]>,
): RowFindings {
  let found: Finding[] = [];
  const report = (remark: Remark<string>): void => void found.push(makeFinding(rule, remark));
  const fields =
    rule.scope === "cell" ? (rule.fields[table.kind] ?? []).filter((field) => table.columnOf[field] !== undefined) : [];
  for (const row of rows) {
    const place = { table, row };
    if (rule.scope === "row") rule.check(place, report, facts);
    else if (rule.scope === "cell") for (const field of fields) rule.check(place, field, report, facts);
    if (found.length > 0) {
      into.set(row, found);
      found = [];
    }
  }
  return into;
}
