import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import type { NewSheet } from "../../sheet/buildPlan";
import type { Cell } from "../../sheet/cell";
import { cellName } from "../../sheet/cellName";
import { freeName } from "../freeName";
import type { ReadTables } from "../state/ReadTables";
import type { SeverityGroup } from "./groupFindings";
import { isDateCell } from "./isDateCell";
import { sayCell } from "./sayCell";
import { severities } from "./severities";

/** None of them is a heading that the tool reads, so that the sheet is never taken for a table of the job. */
const HEADINGS = ["Severity", "Sheet", "Cell", "Heading", "Holds", "Finding", "Why it matters"];

/**
 * The findings of a day as a sheet to add, in the order shown: "Findings 2026-04-07", with a number behind where the workbook has
 * a sheet or a table of that name already.
 */
export function findingsSheet(
  groups: readonly SeverityGroup[],
  { workbook, tables }: ReadTables,
  asOf: number,
): NewSheet {
  const day = isoFromSerial(asOf);
  const rows = groups.flatMap(({ severity, rules }) => {
    const word = severities.find(({ id }) => id === severity)?.one ?? severity;
    return rules.flatMap(({ findings }) =>
      findings.map(({ finding: { at, sheetName, heading, raw, message, why } }): Cell[] => [
        word,
        sheetName,
        cellName(at.row, at.column),
        heading,
        sayCell(raw, isDateCell(at, tables)),
        message,
        why,
      ]),
    );
  });
  const sheetNames = workbook.sheets.map(({ name }) => name);
  const tableNames = workbook.sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name));
  return {
    name: freeName(`Findings ${day}`, sheetNames, " "),
    tableName: freeName(`Findings${day.replaceAll("-", "")}`, tableNames, "_"),
    headings: HEADINGS,
    rows: rows.length > 0 ? rows : [HEADINGS.map(() => null)],
    formats: HEADINGS.map(() => null),
    lists: HEADINGS.map(() => null),
  };
}
