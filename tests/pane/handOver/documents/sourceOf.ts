import type { HandOverSource } from "../../../../src/pane/handOver/documents/HandOverSource";
import { looksToday } from "../../../../src/pane/today/looksToday";
import { pieceTables } from "../../../../src/pane/today/pieceTables";
import type { FakeSheet } from "../../fakePort";
import { readSheets } from "../../readSheets";

/** Everything a document is made from, out of sheets as a test writes them down; what is given takes the place of the rest. */
export async function sourceOf(
  sheets: readonly FakeSheet[],
  asOf: number,
  given: Partial<HandOverSource> = {},
): Promise<HandOverSource> {
  const read = await readSheets(sheets);
  return {
    read,
    pieces: pieceTables(read.tables),
    looks: looksToday(read, asOf, null, new Map()),
    asOf,
    job: { job: "", stylist: "", reached: "", direction: "", credit: "", responsible: "" },
    pictures: [],
    sheetPictures: [],
    lenderKey: null,
    bagLimitGrams: 12_000,
    calendarId: "test",
    ...given,
  };
}
