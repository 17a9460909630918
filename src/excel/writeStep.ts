import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import type { CellEdit, WriteReceipt } from "../sheet/cellEdit";
import { cellsNamedTwice } from "../sheet/cellsNamedTwice";
import { listCells } from "../sheet/listCells";
import { fillBlocks } from "./fillBlocks";
import { inExcel } from "./inExcel";
import { loadTargets } from "./loadTargets";
import { priorEdits } from "./priorEdits";
import { refuseTargets } from "./refuseTargets";

/**
 * Writes all the edits of a step or none of them, in one Excel.run of three syncs: the sheets, what stands in the
 * cells, the writing. Only the last one changes the workbook, so the host's undo takes the step back as one.
 *
 * Needs ExcelApi 1.7; cells inside merged blocks are refused from 1.13 on, spilled results from 1.12 on, since older
 * hosts cannot tell them. Between the second and the third sync somebody else at the same workbook could type: Excel
 * offers no lock against that.
 */
export function writeStep(label: string, edits: readonly CellEdit[]): Promise<Outcome<WriteReceipt>> {
  const twice = cellsNamedTwice(edits);
  if (twice.length > 0) return Promise.resolve(fail("cells-named-twice", { cells: listCells(twice) }));
  if (edits.length === 0) return Promise.resolve(succeed({ label, prior: [] }));
  return inExcel("write to the sheet", async (context) => {
    const loaded = await loadTargets(context, edits);
    if (!loaded.ok) return loaded;
    const refusal = refuseTargets(loaded.value);
    if (refusal !== null) return refusal;
    try {
      fillBlocks(loaded.value, (target) => target.edit);
      await context.sync();
    } catch (error) {
      // A batch that fails half-way leaves its first half written; put that back before saying so.
      fillBlocks(loaded.value, ({ value, formula, numberFormat }) => ({
        value,
        formula: formula ?? undefined,
        numberFormat,
      }));
      await context.sync().catch(() => undefined);
      throw error;
    }
    return succeed({ label, prior: priorEdits(loaded.value) });
  });
}
