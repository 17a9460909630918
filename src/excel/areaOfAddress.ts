import { areaOfReference } from "../sheet/areaOfReference";
import type { SheetChange } from "../sheet/SheetPort";

/**
 * The area of an address as Excel's events give it ("B2", "B2:D5", "Sheet1!B2", "C:D", "4:9"), rows and columns from 0;
 * null where it is no such address.
 */
export function areaOfAddress(address: string): SheetChange["area"] {
  const area = areaOfReference(address.slice(address.lastIndexOf("!") + 1));
  if (area === null) return null;
  const { startRow: row, startColumn: column, endRow, endColumn } = area;
  return { row, column, rowCount: endRow - row + 1, columnCount: endColumn - column + 1 };
}
