import { ICommandService, ObjectMatrix, type IRange } from "@univerjs/core";
import { SetArrayFormulaDataMutation } from "@univerjs/engine-formula";
import { SetRangeValuesMutation, type ISetRangeValuesMutationParams } from "@univerjs/sheets";
import type { SheetChange } from "../../sheet/SheetPort";
import type { OpenGrid } from "./openGrid";

const GATHER_MS = 150;

/** What changes the list of sheets, their names or their visibility. */
const SHEET_MUTATIONS: ReadonlySet<string> = new Set([
  "sheet.mutation.insert-sheet",
  "sheet.mutation.remove-sheet",
  "sheet.mutation.set-worksheet-name",
  "sheet.mutation.set-worksheet-hidden",
  "sheet.mutation.set-worksheet-order",
]);

/** What moves cells about, or turns cells into a table. */
const PLACE_MUTATIONS =
  /^sheet\.mutation\.(?:insert-|remove-(?:row|col)|move-|reorder-|(?:add|delete|set-sheet)-?table)/;

/** Calls back with what changed in this workbook, edits and recalculations alike, gathered. */
export function followChanges(open: OpenGrid, listener: (changes: readonly SheetChange[]) => void): () => void {
  let waiting = new Map<string, SheetChange>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const add = (change: SheetChange) => {
    waiting.set(JSON.stringify(change), change);
    timer ??= setTimeout(() => {
      const changes = [...waiting.values()];
      timer = undefined;
      waiting = new Map();
      listener(changes);
    }, GATHER_MS);
  };
  const commands = open.grid.univer.__getInjector().get(ICommandService);
  const heard = commands.onCommandExecuted(({ id, params }) => {
    if (id === SetArrayFormulaDataMutation.id) return;
    const { unitId, subUnitId = "", cellValue } = (params ?? {}) as Partial<ISetRangeValuesMutationParams>;
    if (unitId !== open.unitId) return;
    if (SHEET_MUTATIONS.has(id)) add({ sheetId: subUnitId, area: null, sheetsChanged: true });
    else if (PLACE_MUTATIONS.test(id)) add({ sheetId: subUnitId, area: null, sheetsChanged: false });
    else if (id === SetRangeValuesMutation.id && cellValue !== undefined) {
      add({ sheetId: subUnitId, area: areaOf(new ObjectMatrix(cellValue).getDataRange()), sheetsChanged: false });
    }
  });
  return () => {
    heard.dispose();
    clearTimeout(timer);
  };
}

function areaOf({ startRow, startColumn, endRow, endColumn }: IRange): SheetChange["area"] {
  return {
    row: startRow,
    column: startColumn,
    rowCount: endRow - startRow + 1,
    columnCount: endColumn - startColumn + 1,
  };
}
