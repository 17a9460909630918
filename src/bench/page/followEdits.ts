import { CommandType, ICommandService } from "@univerjs/core";
import type { OpenGrid } from "../port/openGrid";

/** Calls back after every change of the workbook that a user or the pane made; calculating is none. */
export function followEdits({ grid, unitId }: OpenGrid, edited: () => void): () => void {
  const heard = grid.univer
    .__getInjector()
    .get(ICommandService)
    .onCommandExecuted(({ id, type, params }, options) => {
      if (type !== CommandType.MUTATION || options?.fromFormula === true || options?.onlyLocal === true) return;
      if (!id.startsWith("sheet.mutation.") && id !== "formula.mutation.set-defined-name") return;
      if ((params as { unitId?: string } | undefined)?.unitId === unitId) edited();
    });
  return () => heard.dispose();
}
