import { ICommandService, IUndoRedoService } from "@univerjs/core";
import type { Outcome } from "../../domain/outcome";
import { succeed } from "../../domain/succeed";
import type { BuildPlan } from "../../sheet/buildPlan";
import type { WriteReceipt } from "../../sheet/cellEdit";
import { refusePlan } from "../../sheet/refusePlan";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { addSheet } from "./addSheet";
import { changeColumns } from "./changeColumns";
import { changeRows } from "./changeRows";
import type { OpenGrid } from "./openGrid";
import { refuseMerged } from "./refuseMerged";

/** Carries a plan out, or nothing of it; the user's one undo takes all of it back. */
export async function build(
  open: OpenGrid,
  workbook: WorkbookSnapshot,
  label: string,
  plan: BuildPlan,
): Promise<Outcome<WriteReceipt>> {
  const refusal = refusePlan(workbook, plan) ?? refuseMerged(open, plan.addColumns);
  if (refusal !== null) return refusal;
  const injector = open.grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const oneUndo = injector.get(IUndoRedoService).__tempBatchingUndoRedo(open.unitId);
  try {
    const removeSheets = [];
    for (const sheet of plan.addSheets) removeSheets.push({ sheetId: await addSheet(open, sheet), sheet });
    for (const columns of plan.addColumns) await changeColumns(open, commands, columns, true);
    for (const columns of plan.removeColumns) await changeColumns(open, commands, columns, false);
    const { addRows = [], removeRows = [] } = plan;
    for (const rows of addRows) await changeRows(open, commands, rows, true);
    for (const rows of removeRows) await changeRows(open, commands, rows, false);
    for (const { sheetId } of plan.removeSheets) open.facade.deleteSheet(sheetId);
    const addSheets = plan.removeSheets.map(({ sheet }) => sheet);
    const opposite = {
      addSheets,
      removeSheets,
      addColumns: plan.removeColumns,
      removeColumns: plan.addColumns,
      addRows: removeRows,
      removeRows: addRows,
    };
    return succeed({ label, prior: [], opposite });
  } finally {
    oneUndo.dispose();
  }
}
