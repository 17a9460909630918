import type { CellEdit } from "../../sheet/cellEdit";
import { exampleMark } from "./exampleMark";
import type { ReadTables } from "../state/ReadTables";

/** A row that still says that it is an example, with what would clear it. */
export interface ExampleRow {
  readonly sheetId: string;
  readonly sheetName: string;
  /** Sheet row and first column, from 0. */
  readonly row: number;
  readonly column: number;
  /** Its first filled cells, to know it by. */
  readonly says: string;
  readonly edits: readonly CellEdit[];
}

const SAID = 3;

/** The rows of all tables that carry the mark of an example. */
export function exampleRows({ tables }: ReadTables): readonly ExampleRow[] {
  return tables.flatMap((table) =>
    table.dataRows.flatMap((row): ExampleRow[] => {
      const cells = table.cells[row] ?? [];
      if (!cells.includes(exampleMark)) return [];
      const { sheetId, sheetName, firstColumn } = table;
      const sheetRow = table.firstRow + row;
      const edits = cells.flatMap((held, column): CellEdit[] => {
        const formula = table.formulas[row]?.[column] ?? null;
        // A formula is the table's and stays for the row that is typed here next.
        if (held === null || held === undefined || formula !== null) return [];
        return [
          {
            at: { sheetId, row: sheetRow, column: firstColumn + column },
            expected: held as CellEdit["expected"],
            value: null,
          },
        ];
      });
      const says = cells.filter((cell) => typeof cell === "string" || typeof cell === "number").slice(0, SAID);
      return [{ sheetId, sheetName, row: sheetRow, column: firstColumn, says: says.join(", "), edits }];
    }),
  );
}
