import type { CheckRun } from "../../checks/checkRun";
import { recheck } from "../../checks/recheck";
import { startChecks } from "../../checks/startChecks";
import type { ReadTables } from "./ReadTables";

/** The check of what was read, looking only at what changed since `previous` where the day is the same. */
export function checkAfter(read: ReadTables, asOf: number, previous: CheckRun | null): CheckRun {
  const workbook = { dateSystem: read.workbook.dateSystem, tables: read.tables, sheets: read.workbook.sheets };
  return previous === null || previous.asOf !== asOf ? startChecks(workbook, { asOf }) : recheck(previous, workbook);
}
