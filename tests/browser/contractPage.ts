import { functionOf, metadata } from "tackstitch:bindings";
import "../../src/bench/main.css";
import { startBench, type Bench } from "../../src/bench/startBench";
import type { FilePicture } from "../../src/bench/file/FilePicture";
import { createBenchPort } from "../../src/bench/port/createBenchPort";
import { openGrid } from "../../src/bench/port/openGrid";
import type { Probe } from "../sheet/contract/contractCase";
import { sheetPortContract } from "../sheet/sheetPortContract";

/** Runs one case of the contract by its number; the answer is null when it holds, else what did not. */
type RunCase = (index: number) => Promise<string | null>;

/** Pictures come into the bench with a file alone; these stand for the ones of a file that was opened. */
const pictures: (FilePicture & { readonly drawn: string })[] = [];

function probeOf({ grid }: Bench): Probe {
  const workbook = () => {
    const active = grid.api.getActiveWorkbook();
    if (active === null) throw new Error("No workbook is open");
    return active;
  };
  const sheet = (sheetId: string) => {
    const found = workbook().getSheetBySheetId(sheetId);
    if (found === null) throw new Error(`No sheet ${sheetId}`);
    return found;
  };
  return {
    widens: true,
    async type(sheetId, row, column, typed) {
      const range = sheet(sheetId).getRange(row, column);
      if (typed === null) range.clearContent();
      else if (typeof typed === "string" && typed.startsWith("'")) range.setValue({ v: typed.slice(1), t: 4 });
      else if (typeof typed === "string" && typed.startsWith("=")) range.setValue({ f: typed });
      else if (typeof typed === "boolean") range.setValue({ v: typed ? 1 : 0, t: 3 });
      else range.setValue(typed);
    },
    addSheet: async (name) => workbook().insertSheet(name).getSheetId(),
    deleteSheet: async (sheetId) => void workbook().deleteSheet(sheetId),
    formatOf: async (sheetId, row, column) => sheet(sheetId).getRange(row, column).getNumberFormat() || "General",
    setFormat: async (sheetId, row, column, format) =>
      void sheet(sheetId).getRange(row, column).setNumberFormat(format),
    hideSheet: async (sheetId) => void sheet(sheetId).hideSheet(),
    renameSheet: async (sheetId, name) => void sheet(sheetId).setName(name),
    hideRows: async (sheetId, row, rowCount) => void sheet(sheetId).hideRows(row, rowCount),
    protectSheet: async (sheetId) => void (await sheet(sheetId).getWorksheetPermission().protect()),
    addTable: async (sheetId, name, row, column, rowCount, columnCount) => {
      const range = sheet(sheetId).getRange(row, column, rowCount, columnCount).getRange();
      await sheet(sheetId).addTable(name, range, name, {});
    },
    merge: async (sheetId, row, column, rowCount, columnCount) =>
      void sheet(sheetId).getRange(row, column, rowCount, columnCount).merge(),
    select: async (sheetId, row, column, rowCount, columnCount) => {
      const found = sheet(sheetId);
      workbook().setActiveSheet(found);
      found.getRange(row, column, rowCount, columnCount).activate();
    },
    addPicture: async (sheetId, row, column, { name, drawn }) => {
      pictures.push({ key: `${pictures.length}`, at: { sheetId, row, column }, name, path: "", drawn });
    },
    undo: async () => void (await grid.api.undo()),
  };
}

const bench = await startBench({ functionOf, metadata });
const probe = probeOf(bench);
const bytesOf = (base64: string) => Uint8Array.from(atob(base64), (octet) => octet.charCodeAt(0));
const { listPictures, showPictures } = createBenchPort({
  open: openGrid(bench.grid, bench.grid.api.getActiveWorkbook()?.getId() ?? ""),
  fileName: bench.desk.fileName(),
  dateSystem: 1900,
  readKept: () => null,
  writeKept: () => undefined,
  pictures: () => pictures,
  pictureBytes: ({ key }) => bytesOf(pictures.find((picture) => picture.key === key)?.drawn ?? ""),
});
const runCase: RunCase = async (index) => {
  try {
    await sheetPortContract[index]?.run({ ...bench.desk.port(), listPictures, showPictures }, probe);
    return null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
};
Object.assign(globalThis, { runCase, bench });
