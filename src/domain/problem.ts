/**
 * Every reason for which there can be no value, with the facts its sentence needs.
 *
 * The list is closed: `wording.ts` must have a sentence for each, or the build fails.
 * `argument` is the name the user sees in the function's argument help (or the heading of the column).
 * `given` is what was typed, as text, already shortened for display.
 */
export interface ReasonFacts {
  /** A needed argument is blank. */
  "argument-missing": { argument: string; expected: string };
  /** An argument is of the wrong sort or out of bounds. */
  "argument-not-usable": { argument: string; given: string; expected: string };
  /** A text that could be two days, such as 03/04/26. */
  "date-ambiguous": { argument: string; given: string; first: string; second: string };
  /** Text that is no date, or a number that is no day the workbook can show. */
  "date-not-understood": { argument: string; given: string };
  /** Terms that the grammar does not read; `part` is what was not understood. */
  "terms-not-understood": { argument: string; given: string; part: string };
  /** Nothing to compute from: every input that matters is blank. */
  "nothing-to-compute": { what: string };
  /** An error value stands in a cell that is read. */
  "error-in-cell": { argument: string; given: string };
}

export type Reason = keyof ReasonFacts;

/** One reason and its facts. */
export type Problem = { readonly [R in Reason]: { readonly reason: R; readonly facts: ReasonFacts[R] } }[Reason];
