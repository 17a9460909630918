import { columnFromLetters } from "./columnFromLetters";

/** An area of a sheet, both ends counted, from 0, as the grid wants it. */
export interface Area {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

const LAST_ROW = 1048575;
const LAST_COLUMN = 16383;

/** "B2:F11", "$B$2", "A:C" or "2:4" as an area; null where the text is none. */
export function areaOfReference(reference: string): Area | null {
  const found = /^\$?([A-Z]{1,3})?\$?(\d+)?(?::(?=.)\$?([A-Z]{1,3})?\$?(\d+)?)?$/i.exec(reference.trim());
  if (found === null || (found[1] === undefined && found[2] === undefined)) return null;
  const [, fromColumn, fromRow] = found;
  const [toColumn, toRow] = reference.includes(":") ? [found[3], found[4]] : [fromColumn, fromRow];
  return {
    startRow: fromRow === undefined ? 0 : Number(fromRow) - 1,
    startColumn: columnFromLetters(fromColumn) ?? 0,
    endRow: toRow === undefined ? LAST_ROW : Number(toRow) - 1,
    endColumn: columnFromLetters(toColumn) ?? LAST_COLUMN,
  };
}
