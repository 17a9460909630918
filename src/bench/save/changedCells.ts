import { cellName } from "../../sheet/cellName";
import { sameCell } from "../../sheet/sameCell";
import { fileFormula } from "../file/fileFormula";
import { isArrayFormula } from "./isArrayFormula";
import { lookOfStyle, type Look } from "./lookOfStyle";
import { sameLook } from "./sameLook";
import type { CellState, SheetState } from "./sheetState";
import type { WantedCell } from "./wantedCell";

const PLAIN: CellState = { value: null, formula: null, spill: null, spilled: false, look: lookOfStyle(null) };

export interface Comparison {
  readonly opened: SheetState;
  readonly now: SheetState;
  /** Cells whose formula the file keeps in a form that must be written anew whatever it says. */
  readonly mustWrite: (row: number, column: number) => boolean;
  /** Formulas that the file keeps as ones that may fill several cells. */
  readonly isArray: (row: number, column: number) => boolean;
  /** The number of a format in the file like the cell's own, changed from one look to the other. */
  readonly format: (row: number, column: number, before: Look, now: Look) => number;
}

/** The cells of a sheet that the file must be told of: typed, cleared, calculated anew, spilled, or looking different. */
export function changedCells({ opened, now, mustWrite, isArray, format }: Comparison): WantedCell[] {
  const wanted: WantedCell[] = [];
  for (const [row, column] of places(opened, now)) {
    const before = opened.get(row)?.get(column) ?? PLAIN;
    const after = now.get(row)?.get(column) ?? PLAIN;
    const looksOther = !sameLook(before.look, after.look);
    const isOther = before.formula !== after.formula || !sameCell(before.value, after.value);
    const isFormula = after.formula !== null && (mustWrite(row, column) || after.spill !== null);
    if (!looksOther && !isFormula && (!isOther || isUnknownHere(before, after))) continue;
    // A formula filled down is kept in the form of the one above it.
    const isLikeAbove = after.formula === now.get(row - 1)?.get(column)?.formula;
    const isKept = before.formula === after.formula;
    const isOneCellArray =
      after.formula !== null &&
      (isKept ? isArray(row, column) : isLikeAbove ? isArray(row - 1, column) : isArrayFormula(after.formula));
    wanted.push({
      row,
      column,
      value: isUnknownHere(before, after) ? before.value : after.value,
      formula: after.formula === null ? null : fileFormula(after.formula),
      spill: after.spill ?? (isOneCellArray ? cellName(row, column) : null),
      format: looksOther ? format(row, column, before.look, after.look) : null,
    });
  }
  return wanted;
}

/** A function that the grid does not know: what the file says of the result is worth more than #NAME?. */
function isUnknownHere(before: CellState, after: CellState): boolean {
  const unknown = typeof after.value === "object" && after.value?.error === "#NAME?";
  return unknown && after.formula !== null && before.formula === after.formula && before.value !== null;
}

/** Every cell that one of the two holds, once. */
function* places(opened: SheetState, now: SheetState): Generator<[number, number]> {
  for (const [row, line] of opened) for (const column of line.keys()) yield [row, column];
  for (const [row, line] of now) {
    const before = opened.get(row);
    for (const column of line.keys()) if (before?.has(column) !== true) yield [row, column];
  }
}
