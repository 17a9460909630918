import type { WorkbookNotes } from "../sheet/workbookNotes";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { Finding } from "./finding";
import type { Rule } from "./rule";

/** How a check is made. */
export interface CheckOptions {
  /** The day the check is made for, a serial day. */
  readonly asOf: number;
  /** The rules to run; all of them when left out. */
  readonly rules?: readonly Rule[];
}

/** What one table came to under one rule: the findings of each row, rows without any left out. */
export type RowFindings = ReadonlyMap<number, readonly Finding[]>;

/** The findings of one finished check, with what the next one may keep. */
export interface CheckRun {
  /** In order of sheet, row, column, then rule. */
  readonly findings: readonly Finding[];
  readonly workbook: CheckedWorkbook;
  /** What the workbook said beside its tables. */
  readonly notes: WorkbookNotes;
  readonly asOf: number;
  readonly rules: readonly Rule[];
  /** For each rule, its findings table by table (in the workbook's order); rules over a table or the workbook keep theirs under row -1. */
  readonly kept: ReadonlyMap<Rule, readonly RowFindings[]>;
}
