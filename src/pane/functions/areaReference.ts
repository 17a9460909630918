import type { CellArea } from "../../sheet/cellArea";
import { cellName } from "../../sheet/cellName";

const ALL_ROWS = 1_048_576;

/** An area as a formula names it: Loans!A4:T128, 'My loans'!B2, Loans!A:C where it reaches over all rows. */
export function areaReference(sheetName: string, area: Omit<CellArea, "sheetId">): string {
  const { row, column, rowCount, columnCount } = area;
  // A name that looks like a cell needs quotes too.
  const isPlain = /^[A-Za-z_][A-Za-z_.]*$/.test(sheetName) && !/^(?:R|C|RC)$/i.test(sheetName);
  const sheet = isPlain ? sheetName : `'${sheetName.replace(/'/g, "''")}'`;
  const first = cellName(row, column);
  const last = cellName(row + rowCount - 1, column + columnCount - 1);
  if (rowCount >= ALL_ROWS) return `${sheet}!${first.replace(/\d+$/, "")}:${last.replace(/\d+$/, "")}`;
  return first === last ? `${sheet}!${first}` : `${sheet}!${first}:${last}`;
}
