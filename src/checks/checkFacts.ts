import type { CheckedWorkbook } from "./checkedWorkbook";
import type { DayReading } from "./dayReading";
import type { LenderBook } from "./lenderBook";
import type { LookBook } from "./lookBook";

/** What rules share during one run: worked out once, when a rule first asks. */
export interface CheckFacts {
  /** The day the check is made for; the clock is never read. */
  readonly asOf: number;
  readonly workbook: CheckedWorkbook;
  /** The listed lenders, or null where the workbook lists none. */
  lenders(): LenderBook | null;
  /** The listed looks, or null where the workbook lists none. */
  looks(): LookBook | null;
  /** What a cell of a date column says. */
  day(raw: unknown): DayReading;
}
