import type { Terms } from "../domain/dates/terms/terms";
import type { Outcome } from "../domain/outcome";
import type { CheckedDay } from "./checkedDay";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { DayReading } from "./dayReading";
import type { LenderBook } from "./lenderBook";
import type { LookBook } from "./lookBook";
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
  /** The plan of each day that the looks tables hold. */
  days(): readonly CheckedDay[];
  /** The return terms of a cell; null where it is blank. */
  terms(raw: unknown): Outcome<Terms | null>;
  /** What a cell of a date column says. */
  day(raw: unknown): DayReading;
}
