import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import type { CellEdit } from "../sheet/cellEdit";
import { type CellBlock, cellBlocks } from "./cellBlocks";
import { hasExcelApi } from "./hasExcelApi";
import { CELL_PROPERTIES, loadedCells } from "./loadedCells";
import type { TargetCell } from "./targetCell";

/** A rectangle that a step writes, with the range to write it through. */
export interface TargetBlock {
  readonly sheetName: string;
  readonly range: Excel.Range;
  readonly cells: readonly (readonly TargetCell[])[];
  /** True or null (in part) where the block shows a spilled result; false where the host cannot tell. */
  readonly hasSpill: boolean | null;
  /** The merged areas that touch the block. */
  readonly merged: readonly Pick<Excel.Range, "rowIndex" | "columnIndex" | "rowCount" | "columnCount">[];
}

/** What stands in the cells of a step, in two syncs; a problem where a sheet is gone or protected. */
export async function loadTargets(
  context: Excel.RequestContext,
  edits: readonly CellEdit[],
): Promise<Outcome<TargetBlock[]>> {
  const editsOf = new Map<string, CellEdit[]>();
  for (const edit of edits) editsOf.set(edit.at.sheetId, [...(editsOf.get(edit.at.sheetId) ?? []), edit]);
  const sheets = [...editsOf].map(([sheetId, own]) => ({
    own,
    sheet: context.workbook.worksheets.getItemOrNullObject(sheetId).load("name,protection/protected"),
  }));
  await context.sync();
  for (const { sheet } of sheets) {
    if (sheet.isNullObject) return fail("sheet-gone", { doing: "write to it" });
    if (sheet.protection.protected) return fail("sheet-protected", { sheet: sheet.name });
  }

  const tellsSpill = hasExcelApi("1.12");
  const tellsMerged = hasExcelApi("1.13");
  const queued = sheets.flatMap(({ own, sheet }) =>
    cellBlocks(own).map((block) => {
      const range = sheet.getRangeByIndexes(block.row, block.column, block.items.length, block.items[0]?.length ?? 1);
      range.load(`${CELL_PROPERTIES},numberFormat${tellsSpill ? ",hasSpill" : ""}`);
      const merged = tellsMerged
        ? range
            .getMergedAreasOrNullObject()
            .load("areas/items/rowIndex,areas/items/columnIndex,areas/items/rowCount,areas/items/columnCount")
        : null;
      return { block, range, merged, sheetName: sheet.name };
    }),
  );
  await context.sync();
  return succeed(
    queued.map(({ block, range, merged, sheetName }) => ({
      sheetName,
      range,
      cells: targetCells(block, range),
      hasSpill: tellsSpill ? range.hasSpill : false,
      merged: merged === null || merged.isNullObject ? [] : merged.areas.items,
    })),
  );
}

function targetCells(block: CellBlock<CellEdit>, range: Excel.Range): TargetCell[][] {
  const { values, formulas } = loadedCells(range);
  return block.items.map((row, r) =>
    row.map((edit, c) => ({
      at: edit.at,
      edit,
      value: values[r]?.[c] ?? null,
      formula: formulas[r]?.[c] ?? null,
      numberFormat: String(range.numberFormat[r]?.[c] ?? "General"),
    })),
  );
}
