import { cellIn } from "../../checks/cellIn";
import { isDoneWith } from "../../checks/isDoneWith";
import { isProblem } from "../../domain/isProblem";
import type { PieceRow } from "../../domain/loans/pieceRow";
import { quantityHeld } from "../../domain/loans/quantityHeld";
import { returnDay } from "../../domain/loans/returnDay";
import { usualWarningDays } from "../../domain/loans/usualWarningDays";
import { showGiven } from "../../domain/showGiven";
import type { CellPosition } from "../../sheet/cellPosition";
import { readDone } from "../../sheet/readDone";
import { readKind } from "../../sheet/readKind";
import type { SheetTable } from "../../sheet/sheetTable";
import { namePiece } from "./namePiece";
import type { PieceTable } from "./PieceTable";
import { placeOf } from "./placeOf";
import type { SendList } from "./SendList";

/** What is still to be done to a piece before it goes back. */
export interface PrepareLine {
  /** The first cell to tick. */
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly name: string;
  readonly lender: string;
  /** The day it leaves: the last day to send it where a courier still makes it, else the day it is due. */
  readonly goes: number;
  readonly isSent: boolean;
  /** "undo the alteration (hem up)", "take the tape off the soles". */
  readonly tasks: readonly string[];
}

/**
 * The pieces that are to leave within the days in which a piece is due soon, or are late, and are not as they came: an alteration
 * not noted as undone, soles with the tape not noted as off. The first to leave first.
 *
 * null where no table of pieces keeps alterations and their undoing, or the tape.
 */
export function preparesToday(
  pieces: readonly PieceTable[],
  sends: SendList | null,
  asOf: number,
): readonly PrepareLine[] | null {
  const keeping = pieces.filter(({ table }) => keepsAlterations(table) || keepsTape(table));
  if (keeping.length === 0) return null;
  const sendByOf = new Map(sends?.lines.map(({ at, sendBy }) => [rowKey(at), sendBy]));
  // Kinds repeat down a sheet, and reading one costs more than all the rest of the row.
  const isShodIn = new Map<string, boolean>();
  const isShod = (text: string): boolean => {
    const known = isShodIn.get(text) ?? /^(?:shoes|boots)$/.test(readKind(text) ?? "");
    isShodIn.set(text, known);
    return known;
  };
  const lines: PrepareLine[] = [];
  for (const { table, rows } of keeping) {
    for (const row of rows) {
      const due = returnDay(row);
      const quantity = quantityHeld(row, asOf);
      if (due === null || isProblem(due) || isProblem(quantity) || quantity === 0) continue;
      // What is too late for the courier is taken by hand.
      const sendBy = sendByOf.get(rowKey(placeOf(table, row.row, []))) ?? -Infinity;
      const isSent = sendBy >= asOf;
      const goes = isSent ? sendBy : due;
      if (goes > asOf + usualWarningDays) continue;
      const tasks = tasksOf(table, row, isShod);
      const first = tasks[0];
      if (first === undefined) continue;
      lines.push({
        at: placeOf(table, row.row, [first.field]),
        sheetName: table.sheetName,
        name: namePiece(row),
        lender: typeof row.lender === "string" ? row.lender : "",
        goes,
        isSent,
        tasks: tasks.map(({ task }) => task),
      });
    }
  }
  return lines.sort((a, b) => a.goes - b.goes);
}

function keepsAlterations({ columnOf }: SheetTable): boolean {
  return columnOf["alteration"] !== undefined && columnOf["alterationUndone"] !== undefined;
}

function keepsTape({ columnOf }: SheetTable): boolean {
  return columnOf["tapeOff"] !== undefined;
}

function rowKey({ sheetId, row }: CellPosition): string {
  return `${sheetId} ${row}`;
}

/** As the sheet check has it: what is done, or not applicable, needs nothing. */
function tasksOf(
  table: SheetTable,
  piece: PieceRow,
  isShod: (text: string) => boolean,
): readonly { readonly field: string; readonly task: string }[] {
  const row = { table, row: piece.row };
  const tasks = [];
  const alteration = cellIn(row, "alteration");
  const isAltered = alteration !== null && typeof alteration !== "object" && readDone(alteration, "") === true;
  if (keepsAlterations(table) && isAltered && !isDoneWith(row, "alterationUndone")) {
    const isTold = typeof alteration === "string" && /\p{L}{2}/u.test(alteration);
    const task = `undo the alteration${isTold ? ` (${showGiven(alteration)})` : ""}`;
    tasks.push({ field: "alterationUndone", task });
  }
  const named = piece.kind ?? piece.description;
  const isTaped = keepsTape(table) && typeof named === "string" && isShod(named);
  if (isTaped && !isDoneWith(row, "tapeOff")) tasks.push({ field: "tapeOff", task: "take the tape off the soles" });
  return tasks;
}
