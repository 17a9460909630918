import type { CheckedWorkbook } from "./checkedWorkbook";
import type { CheckRun } from "./checkRun";
import { compareFindings } from "./compareFindings";
import type { Finding } from "./finding";

/** All findings of a run in one list: by sheet in the workbook's order, then by row, column, rule. */
export function gatherFindings(workbook: CheckedWorkbook, kept: CheckRun["kept"]): readonly Finding[] {
  const sheets = new Map<string, Map<number, Finding[]>>();
  for (const { sheetId } of workbook.sheets ?? workbook.tables) sheets.set(sheetId, new Map());
  for (const table of workbook.tables) sheets.set(table.sheetId, new Map());
  for (const tables of kept.values()) {
    for (const rows of tables) {
      for (const findings of rows.values()) {
        for (const finding of findings) {
          const ofSheet = sheets.get(finding.at.sheetId);
          const ofRow = ofSheet?.get(finding.at.row);
          if (ofRow === undefined) ofSheet?.set(finding.at.row, [finding]);
          else ofRow.push(finding);
        }
      }
    }
  }
  // Thousands of rows with a few findings each: the rows are sorted as numbers, and only a row's own findings by comparing.
  return [...sheets.values()].flatMap((rows) =>
    [...rows.keys()].sort((a, b) => a - b).flatMap((row) => rows.get(row)!.sort(compareFindings)),
  );
}
