/**
 * What a cell of a date column says. Each of the rules about dates answers to one of these, so that one cell
 * has one finding and no rule counts with a day that is still in doubt.
 */
export type DayReading =
  | { readonly is: "blank" }
  /** A real date of the workbook. */
  | { readonly is: "day" }
  /** "tbc" and the like: known to be open. */
  | { readonly is: "undecided"; readonly given: string }
  /** Text that can be one day only. */
  | { readonly is: "text"; readonly given: string; readonly day: number }
  /** Text that can be two days. */
  | { readonly is: "two days"; readonly given: string; readonly first: number; readonly second: number }
  /** Text with a weekday that is not the date's. */
  | { readonly is: "wrong weekday"; readonly given: string; readonly expected: string }
  | { readonly is: "no day"; readonly given: string }
  /** An error value; the rule about errors reports it. */
  | { readonly is: "error" };
