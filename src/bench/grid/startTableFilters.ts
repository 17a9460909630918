import { TableManager } from "@univerjs/preset-sheets-table";
import type { OpenedFilters } from "../file/OpenedFilters";
import type { OpenGrid } from "../port/openGrid";

/** Lets the tables' filters hide their rows on every sheet; by itself the grid does so only on a sheet once somebody goes there. */
export function startTableFilters({ grid, unitId }: OpenGrid, filters: ReadonlyMap<string, OpenedFilters>): void {
  const tables = grid.univer.__getInjector().get(TableManager);
  for (const { ofTables } of filters.values()) {
    for (const [tableId, columns] of ofTables) {
      const held = tables.getTableById(unitId, tableId)?.getTableFilters();
      for (const { offset } of columns)
        tables.addFilter(unitId, tableId, offset, held?.getColumnFilter(offset) ?? undefined);
    }
  }
}
