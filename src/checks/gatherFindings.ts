import type { CheckedWorkbook } from "./checkedWorkbook";
import type { CheckRun } from "./checkRun";
import { compareFindings } from "./compareFindings";
import type { Finding } from "./finding";

/** All findings of a run in one list: by sheet in the workbook's order, then by row, column, rule. */
export function gatherFindings(workbook: CheckedWorkbook, kept: CheckRun["kept"]): readonly Finding[] {
  const bySheet = new Map<string, Finding[]>();
  for (const table of workbook.tables) bySheet.set(table.sheetId, []);
  for (const tables of kept.values()) {
    for (const rows of tables) {
      for (const findings of rows.values()) {
        for (const finding of findings) bySheet.get(finding.at.sheetId)?.push(finding);
      }
    }
  }
  return [...bySheet.values()].flatMap((findings) => findings.sort(compareFindings));
}
