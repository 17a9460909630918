import type { CheckedWorkbook } from "./checkedWorkbook";
import type { CheckOptions } from "./checkRun";
import type { Finding } from "./finding";
import { startChecks } from "./startChecks";

/**
 * Every finding in a workbook, by sheet, row and column. Never throws.
 *
 * For a workbook that goes on being edited use `startChecks` and then `recheck`.
 */
export function runChecks(workbook: CheckedWorkbook, options: CheckOptions): readonly Finding[] {
  return startChecks(workbook, options).findings;
}
