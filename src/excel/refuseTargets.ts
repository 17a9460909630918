import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { holdsExpected } from "../sheet/holdsExpected";
import { listCells } from "../sheet/listCells";
import type { TargetBlock } from "./loadTargets";

/** Why a step must not be written, or null. Of several reasons the first sheet's counts, with all its cells named. */
export function refuseTargets(blocks: readonly TargetBlock[]): Outcome<never> | null {
  for (const sheet of new Set(blocks.map((block) => block.sheetName))) {
    const own = blocks.filter((block) => block.sheetName === sheet);
    const changed = own.flatMap((block) => block.cells.flat().filter((cell) => !holdsExpected(cell.edit, cell)));
    if (changed.length > 0) return fail("cells-changed", { sheet, cells: listCells(changed.map((cell) => cell.at)) });
    const merged = own.flatMap((block) => block.cells.flat().filter((cell) => isInsideMerged(cell.at, block)));
    if (merged.length > 0) return fail("cells-merged", { sheet, cells: listCells(merged.map((cell) => cell.at)) });
    // The formula that spills may be overwritten, its spilled cells may not; a host tells only whether a block has any.
    const spilled = own.flatMap((block) =>
      block.hasSpill === false ? [] : block.cells.flat().filter((cell) => cell.formula === null),
    );
    if (spilled.length > 0) return fail("cells-spilled", { sheet, cells: listCells(spilled.map((cell) => cell.at)) });
  }
  return null;
}

function isInsideMerged(at: { readonly row: number; readonly column: number }, block: TargetBlock): boolean {
  return block.merged.some(
    ({ rowIndex, columnIndex, rowCount, columnCount }) =>
      at.row >= rowIndex &&
      at.row < rowIndex + rowCount &&
      at.column >= columnIndex &&
      at.column < columnIndex + columnCount &&
      // The first cell of a merged block is the one that holds its value.
      !(at.row === rowIndex && at.column === columnIndex),
  );
}
