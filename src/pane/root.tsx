import { serialFromYmd } from "../domain/dates/serialFromYmd";
import { createExcelPort } from "../excel/excelPort";
import { fractionOfDay } from "./fractionOfDay";
import { mountPane } from "./mountPane";

/** The composition root in Excel: the pane over the open workbook. The one place of the pane that knows Excel. */
export function showPane(element: HTMLElement, functions: ReadonlyMap<string, (...args: unknown[]) => unknown>): void {
  const callFunction = (id: string, args: readonly unknown[]): unknown => functions.get(id)?.(...args);
  mountPane(element, { port: createExcelPort(), today, now, ...(functions.size > 0 && { callFunction }) });
}

function now(): number {
  return fractionOfDay(new Date());
}

/** The day of the computer's own clock and place; a stylist's "today" is no universal time. */
function today(): number {
  const now = new Date();
  return serialFromYmd(now.getFullYear(), now.getMonth() + 1, now.getDate()) ?? 0;
}
