import type { ReadTables } from "../../src/pane/state/ReadTables";
import { readWorkbook } from "../../src/sheet/readWorkbook";
import { fakePort } from "./fakePort";
import type { FakeSheet } from "./fakePort";

/** Sheets as a test writes them down, read as the pane reads a workbook. */
export async function readSheets(sheets: readonly FakeSheet[]): Promise<ReadTables> {
  const workbook = await fakePort(sheets).readWorkbook();
  if (!workbook.ok) throw new Error("the fake workbook cannot be read");
  return { workbook: workbook.value, ...readWorkbook(workbook.value) };
}
