import { groupFinder } from "../groupFinder";
import { isProblem } from "../isProblem";
import type { Problem } from "../problem";
import { amountFromTenThousandths } from "../value/amountFromTenThousandths";
import { valueHeld } from "../value/valueHeld";
import type { LenderTotal } from "./lenderTotal";
import type { PieceRow } from "./pieceRow";
import type { PieceRows } from "./pieceRows";
import { quantityHeld } from "./quantityHeld";
import { returnDay } from "./returnDay";

/** One lender's running figures in one currency; money in ten-thousandths. The first problem of each sort stands for the figures it spoils. */
interface Tally {
  readonly lender: string | null | Problem;
  readonly currency: string | null | Problem;
  piecesOut: number;
  value: number;
  nextDue: number | null;
  latePieces: number;
  lateValue: number;
  mostDaysLate: number;
  piecesWithoutDue: number;
  piecesWithoutValue: number;
  /** Spoils every figure: it cannot be told how many are out. */
  heldProblem: Problem | null;
  /** Spoils the next due day and what is late. */
  dueProblem: Problem | null;
  valueProblem: Problem | null;
  lateValueProblem: Problem | null;
}

/**
 * What each lender has out on a day, one row for each lender and currency; lenders with nothing out are left out.
 *
 * Most days late first, then most value, then first seen; pieces with no lender last, after those whose
 * lender cannot be read. `nameKey` gives two spellings of one lender the same key. Currencies are never added.
 */
export function lenderTotals(
  pieces: PieceRows,
  asOf: number,
  nameKey: (name: string) => string,
): readonly LenderTotal[] {
  const tallyFor = groupFinder(nameKey, newTally);
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const quantity = quantityHeld(piece, asOf);
    if (quantity === 0) continue;
    const tally = tallyFor(piece.lender, piece.currency);
    if (isProblem(quantity)) tally.heldProblem ??= quantity;
    else addPiece(tally, piece, quantity, asOf);
  }
  return [...tallyFor.all].sort(worstFirst).map(totalOf);
}

function newTally(lender: Tally["lender"], currency: Tally["currency"]): Tally {
  return {
    lender,
    currency,
    piecesOut: 0,
    value: 0,
    nextDue: null,
    latePieces: 0,
    lateValue: 0,
    mostDaysLate: 0,
    piecesWithoutDue: 0,
    piecesWithoutValue: 0,
    heldProblem: null,
    dueProblem: null,
    valueProblem: null,
    lateValueProblem: null,
  };
}

function addPiece(tally: Tally, piece: PieceRow, quantity: number, asOf: number): void {
  tally.piecesOut += quantity;
  const value = valueHeld(piece, quantity);
  if (value === null) tally.piecesWithoutValue += quantity;
  else if (isProblem(value)) tally.valueProblem ??= value;
  else tally.value += value;

  const due = returnDay(piece);
  if (due === null) tally.piecesWithoutDue += quantity;
  else if (isProblem(due)) tally.dueProblem ??= due;
  else if (due >= asOf) tally.nextDue = tally.nextDue === null ? due : Math.min(tally.nextDue, due);
  else {
    tally.latePieces += quantity;
    tally.mostDaysLate = Math.max(tally.mostDaysLate, asOf - due);
    if (isProblem(value)) tally.lateValueProblem ??= value;
    else tally.lateValue += value ?? 0;
  }
}

function worstFirst(a: Tally, b: Tally): number {
  // Array.prototype.sort keeps the order of equals, which is the order first seen.
  return standing(a) - standing(b) || b.mostDaysLate - a.mostDaysLate || b.value - a.value;
}

function standing(tally: Tally): number {
  if (tally.lender === null) return 2;
  return isProblem(tally.lender) ? 1 : 0;
}

function totalOf(tally: Tally): LenderTotal {
  const { heldProblem, dueProblem, valueProblem, lateValueProblem } = tally;
  const lateProblem = heldProblem ?? dueProblem;
  return {
    lender: tally.lender,
    piecesOut: heldProblem ?? tally.piecesOut,
    valueOut: heldProblem ?? valueProblem ?? amountFromTenThousandths(tally.value),
    nextDue: lateProblem ?? tally.nextDue,
    latePieces: lateProblem ?? tally.latePieces,
    lateValue: lateProblem ?? lateValueProblem ?? amountFromTenThousandths(tally.lateValue),
    mostDaysLate: lateProblem ?? tally.mostDaysLate,
    piecesWithoutDue: heldProblem ?? tally.piecesWithoutDue,
    piecesWithoutValue: heldProblem ?? tally.piecesWithoutValue,
    currency: tally.currency,
  };
}
