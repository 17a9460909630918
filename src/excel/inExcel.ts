import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";

const REMEDIES: Readonly<Record<string, string>> = {
  AccessDenied: "check that the workbook may be edited, then try again",
  InvalidSelection: "select one block of cells, then try again",
  InvalidOperationInCellEditMode: "finish typing in the cell, then try again",
  RequestPayloadSizeLimitExceeded: "do it in smaller steps",
  HostRestartNeeded: "close Excel and open the workbook again",
};

/**
 * Runs one batch in Excel and turns whatever it throws into a problem with one sentence.
 *
 * `doing` completes "it was not possible to ...". The batch waits while a cell is being typed in
 * (delayForCellEdit), since Excel refuses everything meanwhile.
 */
export async function inExcel<T>(
  doing: string,
  batch: (context: Excel.RequestContext) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  try {
    return await Excel.run({ delayForCellEdit: true }, batch);
  } catch (error) {
    const { code, message } = error as { code?: string; message?: string };
    if (code === "ItemNotFound") return fail("sheet-gone", { doing });
    const detail = [code, message?.replace(/[.\s]+$/, "")].filter(Boolean).join(": ") || String(error);
    return fail("host-refused", { doing, detail, remedy: REMEDIES[code ?? ""] ?? "try again" });
  }
}
