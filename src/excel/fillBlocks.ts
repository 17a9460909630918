import { cellWriting } from "./cellWriting";
import { CELL_PROPERTIES } from "./loadedCells";
import type { TargetBlock } from "./loadTargets";
import type { TargetCell } from "./targetCell";

/** Queues the writing of every block, and the reading of what then stands there. */
export function fillBlocks(
  blocks: readonly TargetBlock[],
  wanted: (target: TargetCell) => Parameters<typeof cellWriting>[0],
): void {
  for (const { range, cells } of blocks) {
    const writings = cells.map((row) => row.map((target) => cellWriting(wanted(target), target.numberFormat)));
    // In a matrix that is set, null leaves a cell as it is (documented).
    const formatsBefore = writings.map((row) => row.map((writing) => writing.formatBefore));
    const formatsAfter = writings.map((row) => row.map((writing) => writing.formatAfter));
    if (formatsBefore.flat().some((format) => format !== null)) range.numberFormat = formatsBefore;
    range.formulas = writings.map((row) => row.map((writing) => writing.content));
    if (formatsAfter.flat().some((format) => format !== null)) range.numberFormat = formatsAfter;
    range.load(`${CELL_PROPERTIES},numberFormat`);
  }
}
