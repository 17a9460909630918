import type { Problem, Reason, ReasonFacts } from "./problem";

/** What a cell shows: bad input is #VALUE!, nothing to compute from is #N/A. */
export type ProblemKind = "bad input" | "nothing to compute";

interface Wording<R extends Reason> {
  readonly kind: ProblemKind;
  /** One sentence that names the argument, the value and what would be right. */
  readonly say: (facts: ReasonFacts[R]) => string;
}

/** Every sentence that explains a problem, in one place. Tests compare these, never a copy. */
export const wording: { readonly [R in Reason]: Wording<R> } = {
  "argument-missing": {
    kind: "bad input",
    say: (f) => `${f.argument} is blank; give ${f.expected}.`,
  },
  "argument-not-usable": {
    kind: "bad input",
    say: (f) => `${f.argument}: "${f.given}" cannot be used; give ${f.expected}.`,
  },
  "date-ambiguous": {
    kind: "bad input",
    say: (f) =>
      `${f.argument}: "${f.given}" could be ${f.first} or ${f.second}; type it as one of these, for example ${f.first}.`,
  },
  "date-figures-only": {
    kind: "bad input",
    say: (f) =>
      `${f.argument}: "${f.given}" is in figures alone, which are read in two orders; type it as ${f.only} if that is the day.`,
  },
  "date-not-understood": {
    kind: "bad input",
    say: (f) => `${f.argument}: "${f.given}" is not a date; type it like 2026-03-05 or 5 Mar 2026.`,
  },
  "number-ambiguous": {
    kind: "bad input",
    say: (f) => `${f.argument}: "${f.given}" could be ${f.first} or ${f.second}; type it as one of these, as a number.`,
  },
  "heading-row-missing": {
    kind: "bad input",
    say: (f) =>
      `${f.argument} has no heading row that is understood; pass the table with its headings, for example Table1[#All].`,
  },
  "column-missing": {
    kind: "bad input",
    say: (f) =>
      `${f.argument} has no column headed ${f.column} or the like; add one, or say which it is with columns "${f.field}=your heading".`,
  },
  "column-twice": {
    kind: "bad input",
    say: (f) =>
      f.first === f.second
        ? `${f.argument} has two columns headed "${f.first}"; rename one of them.`
        : `${f.argument}: "${f.first}" and "${f.second}" could both be ${f.column}; choose one with columns "${f.field}=${f.first}".`,
  },
  "columns-not-understood": {
    kind: "bad input",
    say: (f) =>
      `${f.argument}: "${f.part}" is not understood; write for example "value=Ins. amt; lender=From", where the first word is one of ${f.fields}.`,
  },
  "columns-heading-absent": {
    kind: "bad input",
    say: (f) => `${f.argument}: the table has no heading "${f.heading}"; it has ${f.headings}.`,
  },
  "columns-contradict": {
    kind: "bad input",
    say: (f) => `${f.argument}: "${f.part}" names a column or a heading a second time; name each once.`,
  },
  "terms-not-understood": {
    kind: "bad input",
    say: (f) =>
      `${f.argument}: "${f.part}" in "${f.given}" is not understood; write for example "7 days", "3 working days", "5 working days after shoot" or "by 2026-03-05".`,
  },
  "terms-ambiguous": {
    kind: "bad input",
    say: (f) =>
      `${f.argument}: "${f.given}" could be "${f.first}" or "${f.second}"; write the number of days meant, or the day, for example "by 2026-03-05".`,
  },
  "nothing-to-compute": {
    kind: "nothing to compute",
    say: (f) => `There is nothing to compute ${f.what} from; fill in ${f.fill}.`,
  },
  "currencies-mixed": {
    kind: "bad input",
    say: (f) =>
      `Row ${f.rowNumber} is ${f.currency === null ? "without a currency" : `in ${f.currency}`} and row ${f.firstRowNumber} ${f.firstCurrency === null ? "without one" : `in ${f.firstCurrency}`}, so they cannot be added; fill in or filter to one currency, or use LENDERTOTALS or VALUEBYDAY, which keep them apart.`,
  },
  "result-not-finite": {
    kind: "bad input",
    say: (f) => `${f.what} is too large to show as a number; make the figures it is computed from smaller.`,
  },
  "error-in-cell": {
    kind: "bad input",
    say: (f) => `${f.argument} holds the error ${f.given}; mend that cell first.`,
  },
  "looks-of-two-days": {
    kind: "bad input",
    say: (f) => `looks holds rows of ${f.first} and of ${f.second}; filter one day.`,
  },
  "look-repeated": {
    kind: "bad input",
    say: (f) =>
      `${capital(f.look)} stands on two rows; give it one row, with its talents together, such as "Ana & Ben".`,
  },
  "look-before-its-after": {
    kind: "bad input",
    say: (f) => `${capital(f.look)} must come after ${f.after}, but stands before it; change its Order or its After.`,
  },
  "looks-in-a-circle": {
    kind: "bad input",
    say: (f) => `After goes round in a circle, ${f.looks}; take one of them out.`,
  },
  "lift-outside-method": {
    kind: "nothing to compute",
    say: (f) =>
      `${f.argument}: at "${f.given}" the lifting equation recommends no load, so there is no index; change the lift to ${f.most}.`,
  },
  "stop-not-met": {
    kind: "nothing to compute",
    say: (f) =>
      f.evenAlone
        ? `${capital(f.stop)} cannot be reached, visited and left in time, even as the only stop; leave sooner, or go another day.`
        : `There is no time for ${f.stop} beside the other stops; leave sooner, or go another day.`,
  },
  "sheet-gone": {
    kind: "bad input",
    say: (f) =>
      `The sheet is no longer in the workbook, so it was not possible to ${f.doing}; check the workbook again.`,
  },
  "sheet-hidden": {
    kind: "bad input",
    say: (f) => `The sheet "${f.sheet}" is hidden; unhide it first.`,
  },
  "sheet-protected": {
    kind: "bad input",
    say: (f) => `The sheet "${f.sheet}" is protected, so nothing was written; lift the protection and try again.`,
  },
  "cells-changed": {
    kind: "bad input",
    say: (f) =>
      `On "${f.sheet}" these cells hold something else by now, so nothing was written: ${f.cells}; check again.`,
  },
  "cells-merged": {
    kind: "bad input",
    say: (f) =>
      `On "${f.sheet}" these cells are inside a merged block, so nothing was written: ${f.cells}; unmerge them first.`,
  },
  "cells-spilled": {
    kind: "bad input",
    say: (f) =>
      `On "${f.sheet}" these cells show part of another formula's result, so nothing was written: ${f.cells}; choose empty cells.`,
  },
  "cells-named-twice": {
    kind: "bad input",
    say: (f) => `Nothing was written, since one step would fill these cells twice: ${f.cells}; do them one at a time.`,
  },
  "host-refused": {
    kind: "bad input",
    say: (f) => `It was not possible to ${f.doing} (${f.detail}); ${f.remedy}.`,
  },
  "file-not-opened": {
    kind: "bad input",
    say: (f) => `"${f.file}" was not opened, since ${f.why}.`,
  },
};

/** A name at the beginning of a sentence. */
function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** The sentence for a problem. */
export function sayProblem(problem: Problem): string {
  const entry = wording[problem.reason] as Wording<Reason>;
  return entry.say(problem.facts);
}
