import type { SheetChange } from "../sheet/SheetPort";

const LAST_ROW = 1_048_576;
const LAST_COLUMN = 16_384;

/**
 * The area of an address as Excel's events give it ("B2", "B2:D5", "Sheet1!B2", "C:D", "4:9"), rows and columns from 0;
 * null where it is no such address.
 */
export function areaOfAddress(address: string): SheetChange["area"] {
  const local = address.slice(address.lastIndexOf("!") + 1).replace(/\$/g, "");
  const [from, to = from] = local.split(":").map(endOf);
  if (!from || !to) return null;
  const row = from.row ?? 0;
  const column = from.column ?? 0;
  return {
    row,
    column,
    rowCount: (to.row ?? LAST_ROW - 1) - row + 1,
    columnCount: (to.column ?? LAST_COLUMN - 1) - column + 1,
  };
}

/** One end of an address; a whole column has no row, a whole row no column. */
function endOf(text: string): { row: number | null; column: number | null } | null {
  const match = /^([A-Z]{0,3})(\d*)$/i.exec(text);
  if (!match || text === "") return null;
  const [, letters = "", digits = ""] = match;
  const column = [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return { row: digits === "" ? null : Number(digits) - 1, column: letters === "" ? null : column - 1 };
}
