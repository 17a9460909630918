import { ICommandService, type IRange } from "@univerjs/core";
import type { OpenGrid } from "../port/openGrid";
import type { GridTable } from "./tableAt";

/** Gives a table of the grid another area, heading row included. */
export async function resizeTable({ grid, unitId }: OpenGrid, { id }: GridTable, newRange: IRange): Promise<void> {
  const commands = grid.univer.__getInjector().get(ICommandService);
  await commands.executeCommand("sheet.command.set-table-config", { unitId, tableId: id, updateRange: { newRange } });
}
