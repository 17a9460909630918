import type { Look } from "../../domain/day/look";
import type { CellEdit } from "../../sheet/cellEdit";
import { readCell } from "../../sheet/readCell";
import type { SheetTable } from "../../sheet/sheetTable";
import { placeOf } from "./placeOf";
import { rowOfLook } from "./rowOfLook";

/**
 * The edits that write an order into the Order column: the day's own numbers, dealt out anew, or 1, 2, 3 where they
 * are not each there once. Cells that say it already are left alone. null where the table has no Order column.
 */
export function orderEdits(table: SheetTable, looks: readonly Look[]): readonly CellEdit[] | null {
  const column = table.columnOf["order"];
  if (column === undefined) return null;
  const numbers = numbersFor(looks.map(({ order }) => order));
  return looks.flatMap((look, place): readonly CellEdit[] => {
    const row = rowOfLook(table, look);
    const value = numbers[place]!;
    if (row === null || look.order === value) return [];
    const expectedFormula = table.formulas[row]?.[column] ?? null;
    return [
      {
        at: placeOf(table, row, ["order"]),
        expected: readCell(table.cells[row]?.[column]),
        ...(expectedFormula === null ? {} : { expectedFormula }),
        value,
      },
    ];
  });
}

function numbersFor(orders: readonly (number | null)[]): readonly number[] {
  const known = orders.flatMap((order) => (order === null ? [] : [order]));
  const isEachOnce = known.length === orders.length && new Set(known).size === known.length;
  return isEachOnce ? known.sort((a, b) => a - b) : orders.map((_, place) => place + 1);
}
