import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readTable } from "../sheet/readTable";
import { readWeightUnit } from "../sheet/readWeightUnit";
import type { Table } from "../sheet/table";
import { rangeArgument } from "./rangeArgument";

/** The arguments that every function of weights has: the pieces, and the unit of weights without one, kilograms where it is left out. */
export function carriedTable(
  rows: unknown,
  unit: unknown,
  columns: unknown,
  alsoUses: readonly string[] = [],
): Outcome<{ readonly table: Table; readonly gramsPerUnit: number }> {
  const gramsPerUnit = readWeightUnit(unit, "unit");
  if (!gramsPerUnit.ok) return gramsPerUnit;
  const table = readTable({
    cells: rangeArgument(rows),
    kind: "pieces",
    needs: [["weight", "kind", "description"]],
    uses: ["weight", "kind", "quantity", ...alsoUses],
    columns,
  });
  const gramsPerKg = 1000;
  return table.ok ? succeed({ table: table.value, gramsPerUnit: gramsPerUnit.value ?? gramsPerKg }) : table;
}
