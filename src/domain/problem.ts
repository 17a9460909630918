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
  /** Figures alone, such as 25/12/2026, though they can be one day only. */
  "date-figures-only": { argument: string; given: string; only: string };
  /** Text that is no date, or a number that is no day the workbook can show. */
  "date-not-understood": { argument: string; given: string };
  /** A number typed as text that reads two ways, such as 1,250. */
  "number-ambiguous": { argument: string; given: string; first: string; second: string };
  /** A table was passed without its headings. */
  "heading-row-missing": { argument: string };
  /** A needed column is not there under any heading that is understood; `field` is the key for `columns`. */
  "column-missing": { argument: string; column: string; field: string };
  /** Two headings could be the same column. */
  "column-twice": { argument: string; column: string; field: string; first: string; second: string };
  /** A part of the columns argument is not of the form field=heading, or names no field. */
  "columns-not-understood": { argument: string; part: string; fields: string };
  /** The columns argument names a heading that the table has not. */
  "columns-heading-absent": { argument: string; heading: string; headings: string };
  /** A field is given two headings in the columns argument, or a heading two fields. */
  "columns-contradict": { argument: string; part: string };
  /** Terms that the grammar does not read; `part` is what was not understood. */
  "terms-not-understood": { argument: string; given: string; part: string };
  /** Terms that read two ways, such as "7-10 days". */
  "terms-ambiguous": { argument: string; given: string; first: string; second: string };
  /** Nothing to compute from: every input that matters is blank. */
  "nothing-to-compute": { what: string; fill: string };
  /** Amounts in two currencies would have to be added; null is an amount that names no currency. */
  "currencies-mixed": {
    rowNumber: number;
    currency: string | null;
    firstRowNumber: number;
    firstCurrency: string | null;
  };
  /** A result that is no finite number, from figures too large to compute with. */
  "result-not-finite": { what: string };
  /** An error value stands in a cell that is read. */
  "error-in-cell": { argument: string; given: string };
  /** The looks of one plan hold two dates. */
  "looks-of-two-days": { first: string; second: string };
  /** One look stands on two rows; `look` as a sentence names it: look 3. */
  "look-repeated": { look: string };
  /** The order puts a look before one that must come before it. */
  "look-before-its-after": { look: string; after: string };
  /** After goes round in a circle; `looks` says it whole: look 2 after look 5 after look 2. */
  "looks-in-a-circle": { looks: string };
  /** A lift for which the lifting equation recommends no load at all; `most` is what would be covered, in words. */
  "lift-outside-method": { argument: string; given: string; most: string };
  /** A stop for which there is no time: even as the only one, or only beside the others. */
  "stop-not-met": { stop: string; evenAlone: boolean };
  /** The sheet was deleted since it was read. */
  "sheet-gone": { doing: string };
  /** A hidden sheet cannot be shown or selected. */
  "sheet-hidden": { sheet: string };
  /** A protected sheet takes no writing. */
  "sheet-protected": { sheet: string };
  /** Cells hold something other than the writer believed; `cells` names them, as C4, C7. */
  "cells-changed": { sheet: string; cells: string };
  /** Cells inside a merged block, where all but its first cell lose what is written. */
  "cells-merged": { sheet: string; cells: string };
  /** Cells that show part of another cell's spilled result. */
  "cells-spilled": { sheet: string; cells: string };
  /** One step names the same cell twice. */
  "cells-named-twice": { cells: string };
  /** The host refused for a reason of its own; `detail` is its word for it. */
  "host-refused": { doing: string; detail: string; remedy: string };
  /** A file that cannot be opened; `why` says what is the matter and the remedy. */
  "file-not-opened": { file: string; why: string };
}

/** The name of a reason. */
export type Reason = keyof ReasonFacts;

/** One reason and its facts. */
export type Problem = { readonly [R in Reason]: { readonly reason: R; readonly facts: ReasonFacts[R] } }[Reason];
