import type { CellEdit } from "../sheet/cellEdit";
import { loadedCells } from "./loadedCells";
import type { TargetBlock } from "./loadTargets";
import { TEXT_FORMAT } from "./textFormat";

/**
 * The edits that put back what stood in the blocks before, once they are written and loaded again.
 *
 * What is expected is what the host made of the writing, read back and not supposed: it may have formatted a cell that
 * got a formula, or spelt the formula its own way.
 */
export function priorEdits(blocks: readonly TargetBlock[]): CellEdit[] {
  return blocks.flatMap(({ range, cells }) => {
    const now = loadedCells(range);
    return cells.flatMap((row, r) =>
      row.map((before, c): CellEdit => {
        const formulaNow = now.formulas[r]?.[c] ?? null;
        const formatNow = String(range.numberFormat[r]?.[c] ?? "General");
        // A number or formula put back into the text format needs it said: see cellWriting.
        const keepsFormat = formatNow === before.numberFormat && before.numberFormat !== TEXT_FORMAT;
        return {
          at: before.at,
          expected: now.values[r]?.[c] ?? null,
          ...(formulaNow === null ? {} : { expectedFormula: formulaNow }),
          value: before.value,
          ...(before.formula === null ? {} : { formula: before.formula }),
          ...(keepsFormat ? {} : { numberFormat: before.numberFormat }),
        };
      }),
    );
  });
}
