import { readWorkbookNotes } from "../sheet/readWorkbookNotes";
import { allRules } from "./allRules";
import type { CheckedWorkbook } from "./checkedWorkbook";
import { checkFactsOf } from "./checkFactsOf";
import type { CheckOptions, CheckRun } from "./checkRun";
import { gatherFindings } from "./gatherFindings";
import { runRule } from "./runRule";

/** Checks a whole workbook, and keeps what `recheck` needs to look only at what changes later. Never throws. */
export function startChecks(workbook: CheckedWorkbook, options: CheckOptions): CheckRun {
  const rules = options.rules ?? allRules;
  const notes = readWorkbookNotes(workbook.sheets ?? [], workbook.tables);
  const facts = checkFactsOf(workbook, options.asOf, notes);
  const kept = new Map(rules.map((rule) => [rule, runRule(rule, workbook, facts, null, null)]));
  return { findings: gatherFindings(workbook, kept), workbook, notes, asOf: options.asOf, rules, kept };
}
