import type { Cell } from "../sheet/cell";
import { CELL_PROPERTIES, loadedCells } from "./loadedCells";

/** A sheet's used range; first row and column count from 0. An empty sheet has no rows. */
export interface UsedCells {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly values: readonly (readonly Cell[])[];
  readonly formulas: readonly (readonly (string | null)[])[];
}

// Excel on the web answers at most 5 MB at a time (documented); 20,000 cells stay well below.
const CELLS_PER_SLICE = 20_000;

/**
 * The used cells of some sheets in one sync, together with what `alongside` asks to load.
 *
 * Only where the host says that its answer would be too large are they read again slice by slice, one sync each;
 * `alongside` is then called a second time, since nothing of a refused batch is loaded.
 */
export async function usedCells(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  alongside: () => void,
): Promise<UsedCells[]> {
  try {
    alongside();
    // valuesOnly: a sheet coloured down to its last row is not a million rows long.
    const ranges = sheets.map((sheet) =>
      sheet.getUsedRangeOrNullObject(true).load(`${CELL_PROPERTIES},rowIndex,columnIndex`),
    );
    await context.sync();
    return ranges.map((range) =>
      range.isNullObject
        ? { firstRow: 0, firstColumn: 0, values: [], formulas: [] }
        : { firstRow: range.rowIndex, firstColumn: range.columnIndex, ...loadedCells(range) },
    );
  } catch (error) {
    if ((error as { code?: string }).code !== "ResponsePayloadSizeLimitExceeded") throw error;
    alongside();
    return inSlices(context, sheets);
  }
}

async function inSlices(context: Excel.RequestContext, sheets: readonly Excel.Worksheet[]): Promise<UsedCells[]> {
  const sizes = sheets.map((sheet) =>
    sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount"),
  );
  await context.sync();
  const all: UsedCells[] = [];
  for (const [index, sheet] of sheets.entries()) {
    const size = sizes[index];
    if (size === undefined || size.isNullObject) {
      all.push({ firstRow: 0, firstColumn: 0, values: [], formulas: [] });
      continue;
    }
    const { rowIndex, columnIndex, rowCount, columnCount } = size;
    const rowsPerSlice = Math.max(1, Math.floor(CELLS_PER_SLICE / columnCount));
    const values: Cell[][] = [];
    const formulas: (string | null)[][] = [];
    for (let done = 0; done < rowCount; done += rowsPerSlice) {
      const rows = Math.min(rowsPerSlice, rowCount - done);
      const slice = sheet.getRangeByIndexes(rowIndex + done, columnIndex, rows, columnCount).load(CELL_PROPERTIES);
      // eslint-disable-next-line office-addins/no-context-sync-in-loop -- one answer for all is what the host refused
      await context.sync();
      const cells = loadedCells(slice);
      for (const row of cells.values) values.push(row);
      for (const row of cells.formulas) formulas.push(row);
    }
    all.push({ firstRow: rowIndex, firstColumn: columnIndex, values, formulas });
  }
  return all;
}
