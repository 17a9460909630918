import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import type { BuildPlan } from "../sheet/buildPlan";
import type { WriteReceipt } from "../sheet/cellEdit";
import { refusePlan } from "../sheet/refusePlan";
import { addColumns } from "./addColumns";
import { addRows } from "./addRows";
import { addSheet } from "./addSheet";
import { hasExcelApi } from "./hasExcelApi";
import { inExcel } from "./inExcel";
import { readWorkbook } from "./readWorkbook";
import { refuseMerged } from "./refuseMerged";
import { removeColumns } from "./removeColumns";
import { removeRows } from "./removeRows";

/**
 * Carries a plan out in one sync, after a look at the whole workbook. Needs ExcelApi 1.8 (validation lists); a table of
 * the host is widened from 1.13 on. What a batch that fails half-way has added is taken away again.
 */
export async function build(label: string, plan: BuildPlan): Promise<Outcome<WriteReceipt>> {
  const workbook = await readWorkbook();
  if (!workbook.ok) return workbook;
  const refusal = refusePlan(workbook.value, plan);
  if (refusal !== null) return refusal;
  const { addRows: rowsToAdd = [], removeRows: rowsToRemove = [] } = plan;
  const widens = [...plan.addColumns, ...plan.removeColumns].some(({ tableName }) => tableName !== null);
  const lengthens = rowsToAdd.length + rowsToRemove.length > 0;
  return inExcel("build it", async (context) => {
    if (widens && !hasExcelApi("1.13")) {
      const detail = "this Excel cannot widen a table for an add-in";
      return fail("host-refused", {
        doing: "change its columns",
        detail,
        remedy: "type the headings beside the table",
      });
    }
    if (lengthens && !hasExcelApi("1.13")) {
      const detail = "this Excel cannot lengthen a table for an add-in";
      return fail("host-refused", { doing: "add rows", detail, remedy: "type the rows below the table" });
    }
    const merged = await refuseMerged(context, plan.addColumns);
    if (merged !== null) return merged;
    const { worksheets } = context.workbook;
    try {
      const added = plan.addSheets.map((sheet) => ({ sheet, worksheet: addSheet(context, sheet) }));
      for (const columns of plan.addColumns) addColumns(context, columns);
      for (const columns of plan.removeColumns) removeColumns(context, columns);
      for (const rows of rowsToAdd) addRows(context, rows);
      for (const rows of rowsToRemove) removeRows(context, rows);
      for (const { sheetId } of plan.removeSheets) worksheets.getItem(sheetId).delete();
      for (const { worksheet } of added) worksheet.load("id");
      await context.sync();
      const opposite: BuildPlan = {
        addSheets: plan.removeSheets.map(({ sheet }) => sheet),
        removeSheets: added.map(({ sheet, worksheet }) => ({ sheetId: worksheet.id, sheet })),
        addColumns: plan.removeColumns,
        removeColumns: plan.addColumns,
        addRows: rowsToRemove,
        removeRows: rowsToAdd,
      };
      return succeed({ label, prior: [], opposite });
    } catch (error) {
      const left = plan.addSheets.map(({ name }) => worksheets.getItemOrNullObject(name).load("name"));
      await context.sync().catch(() => undefined);
      for (const worksheet of left) if (!worksheet.isNullObject) worksheet.delete();
      // A table that could not be widened leaves headings beside it, in cells that were blank before.
      for (const columns of plan.addColumns) removeColumns(context, { ...columns, tableName: null });
      await context.sync().catch(() => undefined);
      throw error;
    }
  });
}
