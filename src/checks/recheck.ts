import { readWorkbookNotes } from "../sheet/readWorkbookNotes";
import type { CheckedWorkbook } from "./checkedWorkbook";
import { checkFactsOf } from "./checkFactsOf";
import type { CheckRun } from "./checkRun";
import { gatherFindings } from "./gatherFindings";
import { runRule } from "./runRule";
import { startChecks } from "./startChecks";
import { workbookChange } from "./workbookChange";

/**
 * The check again after edits: the same findings as a whole check of the later reading, found by looking only
 * at what changed since `previous`. Pass the whole later reading; what changed is worked out here.
 */
export function recheck(previous: CheckRun, workbook: CheckedWorkbook): CheckRun {
  const { asOf, rules } = previous;
  if (previous.workbook.dateSystem !== workbook.dateSystem) return startChecks(workbook, { asOf, rules });
  const notes = readWorkbookNotes(workbook.sheets ?? [], workbook.tables);
  const change = workbookChange(previous, { workbook, notes });
  const facts = checkFactsOf(workbook, asOf, notes);
  const kept = new Map(
    rules.map((rule) => [rule, runRule(rule, workbook, facts, previous.kept.get(rule) ?? null, change)]),
  );
  return { findings: gatherFindings(workbook, kept), workbook, notes, asOf, rules, kept };
}
