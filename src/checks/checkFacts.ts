import type { DatedPlan } from "../domain/day/looksOfPiece";
import type { NeedingLook } from "../domain/day/neededPiece";
import type { Terms } from "../domain/dates/terms/terms";
import type { Outcome } from "../domain/outcome";
import type { WorkbookNotes } from "../sheet/workbookNotes";
import type { CheckedDay } from "./checkedDay";
import type { CheckedRow } from "./checkedRow";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { DayReading } from "./dayReading";
import type { LenderBook } from "./lenderBook";
import type { Loan } from "./loanIn";
import type { LookBook } from "./lookBook";
import type { LookPieces } from "./lookPieces";
import type { NameTally } from "./nameTally";

/** What rules share during one run: worked out once, when a rule first asks. */
export interface CheckFacts {
  /** The day the check is made for; the clock is never read. */
  readonly asOf: number;
  readonly workbook: CheckedWorkbook;
  /** The listed lenders, or null where the workbook lists none. */
  lenders(): LenderBook | null;
  /** Every spelling of a lender in pieces and requests. */
  lenderNames(): readonly NameTally[];
  /** The listed looks, or null where the workbook lists none. */
  looks(): LookBook | null;
  /** The pieces of every look that a piece names, by the look's key. */
  lookPieces(): ReadonlyMap<string, LookPieces>;
  /** The people, closed days, calls and wraps that the workbook names. */
  readonly notes: WorkbookNotes;
  /** The plan of each day that the looks tables hold. */
  days(): readonly CheckedDay[];
  /** The return terms of a cell; null where it is blank. */
  terms(raw: unknown): Outcome<Terms | null>;
  /** What a cell of a date column says. */
  day(raw: unknown): DayReading;
  /** How a row's piece stands on the day of the check; null where that is in doubt (see loanIn). */
  loan(row: CheckedRow): Loan | null;
  /** The plans that could be made of those days. */
  plans(): readonly DatedPlan[];
  /** The same with no look waiting for another's pieces. */
  plansApart(): readonly DatedPlan[];
  /** The looks that a piece's row names, and those that list the piece. */
  looksOf(row: CheckedRow): readonly NeedingLook[];
  /** What `work` comes to for a text, worked out once in a run; `about` says what is worked out. */
  once<T>(about: string, text: string, work: () => T): T;
}
