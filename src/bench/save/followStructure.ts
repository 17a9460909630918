import { ICommandService } from "@univerjs/core";
import {
  InsertColMutation,
  InsertRowMutation,
  RemoveColMutation,
  RemoveRowMutation,
  type IInsertRowMutationParams,
} from "@univerjs/sheets";
import type { OpenGrid } from "../port/openGrid";
import type { StructureEdit } from "./structureEdit";

const EDITS: Readonly<Record<string, Pick<StructureEdit, "axis" | "kind">>> = {
  [InsertRowMutation.id]: { axis: "row", kind: "insert" },
  [RemoveRowMutation.id]: { axis: "row", kind: "remove" },
  [InsertColMutation.id]: { axis: "column", kind: "insert" },
  [RemoveColMutation.id]: { axis: "column", kind: "remove" },
};

/** Every row and column that was put in or taken out since the workbook was opened, in order. */
export interface Structure {
  readonly edits: readonly StructureEdit[];
  readonly stop: () => void;
}

/**
 * Keeps every row and column that is put in or taken out, undone ones too, so that saving can do the same to the file.
 *
 * @param moved Is called after each, since cells stand elsewhere now.
 */
export function followStructure({ grid, unitId }: OpenGrid, moved: () => void): Structure {
  const edits: StructureEdit[] = [];
  const heard = grid.univer
    .__getInjector()
    .get(ICommandService)
    .onCommandExecuted(({ id, params }) => {
      const edit = EDITS[id];
      const given = params as Partial<IInsertRowMutationParams> | undefined;
      if (edit === undefined || given?.unitId !== unitId || given.range === undefined) return;
      const { startRow, endRow, startColumn, endColumn } = given.range;
      const [from, to] = edit.axis === "row" ? [startRow, endRow] : [startColumn, endColumn];
      edits.push({ ...edit, sheetId: given.subUnitId ?? "", from, count: to - from + 1 });
      moved();
    });
  return { edits, stop: () => heard.dispose() };
}
