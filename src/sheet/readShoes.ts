import type { FieldValue } from "../domain/fieldValue";
import { footLengthMm } from "../domain/prep/footLengthMm";
import type { ShoeRow } from "../domain/prep/shoeRow";
import type { ShoeSystem } from "../domain/prep/shoeSystem";
import { argumentAt } from "./argumentAt";
import { quantityAt } from "./quantityAt";
import { readIsOutside } from "./readIsOutside";
import { readShoeSize } from "./readShoeSize";
import type { Table } from "./table";
import { textAt } from "./textAt";

/** The rows of a table of shoes in sheet order; a size that names no system is one of `system`. */
export function readShoes(table: Table, system: ShoeSystem): readonly ShoeRow[] {
  return table.dataRows.map((row) => {
    const columnAt = (field: string): number => table.columnOf[field] ?? -1;
    const sizeCell = argumentAt(table, row, columnAt("size"));
    const whereCell = argumentAt(table, row, columnAt("where"));
    const where = readIsOutside(table.cells[row]![columnAt("where")], whereCell);
    return {
      name: textAt(table, row, columnAt("shoes")),
      footMm: footAt(table.cells[row]![columnAt("size")], sizeCell, system),
      isOutside: where.ok ? where.value : where.problem,
      pairs: quantityAt(table, row, columnAt("pairs")),
      sizeCell,
      whereCell,
    };
  });
}

function footAt(raw: unknown, argument: string, system: ShoeSystem): FieldValue<number> {
  const read = readShoeSize(raw, argument, system);
  if (!read.ok) return read.problem;
  if (read.value === null) return null;
  const foot = footLengthMm(read.value.size, read.value.system ?? system, argument);
  return foot.ok ? foot.value : foot.problem;
}
