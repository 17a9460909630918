import { quantityHeld } from "../domain/loans/quantityHeld";
import { readQuantity } from "../sheet/readQuantity";
import { readDone } from "../sheet/readDone";
import type { CheckedRow } from "./checkedRow";
import { cellIn } from "./cellIn";
import { dayIn } from "./dayIn";
import { holdsSomething } from "./holdsSomething";

/** How a piece stands on the day of the check. */
export interface Loan {
  readonly out: number | null;
  readonly back: number | null;
  readonly isSettled: boolean;
  readonly quantity: number;
  /** null where it is not said. */
  readonly quantityBack: number | null;
  /** How many are still out. */
  readonly held: number;
}

/**
 * How a row's piece stands on a day, counted as the worksheet functions count; null where Out, Back or Settled hold
 * something that is no date, since that cell has a finding of its own and what follows from it would be guessed.
 */
export function loanIn(row: CheckedRow, asOf: number): Loan | null {
  const out = dayIn(row, "out");
  const back = dayIn(row, "back");
  if (out === null && holdsSomething(row, "out")) return null;
  if (back === null && holdsSomething(row, "back")) return null;
  const settled = readDone(cellIn(row, "settled"), "");
  if (settled !== null && typeof settled !== "boolean") return null;
  const quantity = amountIn(row, "quantity") || 1;
  const quantityBack = amountIn(row, "quantityBack");
  const held = quantityHeld({ out, back, settled, quantity, quantityBack }, asOf);
  return { out, back, isSettled: settled === true, quantity, quantityBack, held: typeof held === "number" ? held : 0 };
}

function amountIn(row: CheckedRow, field: string): number | null {
  const read = readQuantity(cellIn(row, field), "");
  return read.ok ? read.value : null;
}
