import { BooleanNumber } from "@univerjs/core";
import { fail } from "../../domain/fail";
import type { Outcome } from "../../domain/outcome";
import { succeed } from "../../domain/succeed";
import type { SheetPort } from "../../sheet/SheetPort";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import type { FilePicture } from "../file/FilePicture";
import { pictureDataUrl } from "../file/pictureDataUrl";
import { build } from "./build";
import { followChanges } from "./followChanges";
import type { OpenGrid } from "./openGrid";
import { readSheetSnapshot } from "./readSheetSnapshot";
import { writeStep } from "./writeStep";

export interface BenchPortParts {
  readonly open: OpenGrid;
  readonly fileName: string;
  readonly dateSystem: 1900 | 1904;
  /** Texts kept in the workbook; saving writes them into the file. */
  readonly readKept: (key: string) => string | null;
  readonly writeKept: (key: string, text: string) => void;
  /** The workbook's pictures by the cells they belong to now. */
  readonly pictures: () => readonly FilePicture[];
  readonly pictureBytes: (picture: FilePicture) => Uint8Array;
}

/** The workbook in the grid, as the pane needs it. */
export function createBenchPort(parts: BenchPortParts): SheetPort {
  const { open, fileName, dateSystem, readKept, writeKept } = parts;
  const snapshot = (): WorkbookSnapshot => ({
    name: fileName,
    dateSystem,
    sheets: open.model.getSheets().map((sheet) => readSheetSnapshot(open, sheet)),
  });
  const sheetOf = (sheetId: string) => open.model.getSheetBySheetId(sheetId);
  const pictures = () => parts.pictures().filter(({ at }) => Boolean(sheetOf(at.sheetId)));
  return {
    readWorkbook: () => answer("read the workbook", () => succeed(snapshot())),
    readSheet: (sheetId) =>
      answer("read the sheet", () => {
        const sheet = sheetOf(sheetId);
        return sheet ? succeed(readSheetSnapshot(open, sheet)) : fail("sheet-gone", { doing: "read the sheet" });
      }),
    listPictures: () =>
      answer("see the pictures on the sheets", () =>
        succeed(pictures().map(({ key, at, name }) => ({ key, at, name }))),
      ),
    showPictures: (keys) =>
      answer("see the pictures on the sheets", () => {
        const wanted = new Set(keys);
        const shown = new Map<string, string>();
        for (const picture of pictures()) {
          const url = wanted.has(picture.key) ? pictureDataUrl(parts.pictureBytes(picture)) : null;
          if (url !== null) shown.set(picture.key, url);
        }
        return succeed(shown);
      }),
    goTo: (at) =>
      answer("go to the cell", () => {
        const sheet = sheetOf(at.sheetId);
        const facade = open.facade.getSheetBySheetId(at.sheetId);
        if (!sheet || facade === null) return fail("sheet-gone", { doing: "go to the cell" });
        if (sheet.isSheetHidden() === BooleanNumber.TRUE) return fail("sheet-hidden", { sheet: sheet.getName() });
        open.facade.setActiveSheet(facade);
        facade.getRange(at.row, at.column).activate();
        facade.scrollToCell(Math.max(0, at.row - 4), at.column);
        return succeed(undefined);
      }),
    activeCell: () =>
      answer("find the active cell", () => {
        const cell = open.facade.getActiveCell();
        const sheetId = open.facade.getActiveSheet().getSheetId();
        return succeed({ sheetId, row: cell?.getRow() ?? 0, column: cell?.getColumn() ?? 0 });
      }),
    selection: () =>
      answer("read the selection", () => {
        const sheetId = open.facade.getActiveSheet().getSheetId();
        const { startRow, startColumn, endRow, endColumn } = open.facade.getActiveRange()?.getRange() ?? {
          startRow: 0,
          startColumn: 0,
          endRow: 0,
          endColumn: 0,
        };
        return succeed({
          sheetId,
          row: startRow,
          column: startColumn,
          rowCount: endRow - startRow + 1,
          columnCount: endColumn - startColumn + 1,
        });
      }),
    write: (label, edits) => answer("write to the sheet", () => writeStep(open, label, edits)),
    build: (label, plan) => answer("build it", () => build(open, snapshot(), label, plan)),
    restore: ({ label, prior, opposite }) =>
      answer("write to the sheet", () =>
        opposite === undefined
          ? writeStep(open, `Restore: ${label}`, prior)
          : build(open, snapshot(), `Restore: ${label}`, opposite),
      ),
    readKept: (key) => answer("read what was kept", () => succeed(readKept(key))),
    writeKept: (key, text) =>
      answer("keep it in the workbook", () => {
        writeKept(key, text);
        return succeed(undefined);
      }),
    onChange: (listener) => followChanges(open, listener),
  };
}

/** No call of the port rejects: whatever the grid throws comes back as one sentence. */
async function answer<T>(doing: string, run: () => Outcome<T> | Promise<Outcome<T>>): Promise<Outcome<T>> {
  try {
    return await run();
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    return fail("host-refused", { doing, detail, remedy: "open the workbook again" });
  }
}
