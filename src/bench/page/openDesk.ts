import { sayProblem } from "../../domain/wording";
import { fractionOfDay } from "../../pane/fractionOfDay";
import { sayCount } from "../../pane/sayCount";
import { mountPane } from "../../pane/mountPane";
import type { PaneHost } from "../../pane/PaneHost";
import type { SheetPort } from "../../sheet/SheetPort";
import { hasTables } from "../file/hasTables";
import { openWorkbookFile, type OpenedFile } from "../file/openWorkbookFile";
import type { ErrorSentences } from "../functions/createErrorSentences";
import type { Grid } from "../grid/createGrid";
import { firstCalculation } from "../grid/firstCalculation";
import { formatSpills } from "../grid/formatSpills";
import { growTables } from "../grid/growTables";
import { protectSheets } from "../grid/protectSheets";
import { startTableFilters } from "../grid/startTableFilters";
import { selectFirstCells } from "../grid/selectFirstCells";
import { createBenchPort } from "../port/createBenchPort";
import { heldPictures } from "../port/heldPictures";
import { openGrid, type OpenGrid } from "../port/openGrid";
import { followStructure } from "../save/followStructure";
import { readKeptPart } from "../save/readKeptPart";
import { saveWorkbookFile } from "../save/saveWorkbookFile";
import { savingBookOf } from "../save/savingBookOf";
import { element } from "./element";
import { followEdits } from "./followEdits";
import { notice } from "./notice";
import { today } from "./today";

const NO_TABLE = "no sheet of it has a row of headings, such as Piece, Lender, Value and Due, with rows below";

/** What lies on the desk: one workbook, with the pane that belongs to it. */
export interface Desk {
  /**
   * Opens a file in place of the one that is open; that one stays when the file cannot be read, or when it holds no
   * table, until somebody asks for it all the same (`anyway`).
   */
  readonly open: (bytes: Uint8Array, fileName: string, wish?: OpenWish) => Promise<void>;
  readonly port: () => SheetPort;
  readonly fileName: () => string;
  /** The open workbook as a file, with all that changed; packed loosely for a copy that is made while the user works on. */
  readonly bytes: (isCopy?: boolean) => Uint8Array;
}

export interface OpenWish {
  /** Also a file without a table that can be read. */
  readonly anyway?: boolean;
  /** Is called once the file lies open. */
  readonly opened?: () => void;
}

interface OnDesk {
  readonly file: OpenedFile;
  readonly open: OpenGrid;
  readonly port: SheetPort;
  readonly bytes: Desk["bytes"];
  readonly close: () => void;
}

export interface DeskParts {
  readonly grid: Grid;
  /** The sentences behind errors, by cell. */
  readonly sentences: ErrorSentences;
  /** One of our functions with the arguments a cell would hand over. */
  readonly callFunction: NonNullable<PaneHost["callFunction"]>;
  /** Whether the open workbook may be put away for another one. */
  readonly mayReplace: () => boolean;
  /** Is called after every change that a user or the pane made. */
  readonly edited: () => void;
}

export function openDesk(parts: DeskParts): Desk {
  let onDesk: OnDesk | null = null;
  let openings = 0;
  const held = () => {
    if (onDesk === null) throw new Error("No workbook is open");
    return onDesk;
  };
  const open = async (bytes: Uint8Array, fileName: string, wish: OpenWish = {}): Promise<void> => {
    const outcome = await openWorkbookFile(bytes, fileName, `book-${++openings}`);
    if (!outcome.ok) return notice(sayProblem(outcome.problem));
    if (wish.anyway !== true && !hasTables(outcome.value)) {
      return notice(sayProblem({ reason: "file-not-opened", facts: { file: fileName, why: NO_TABLE } }), [
        { label: "Open it anyway", run: () => void open(bytes, fileName, { ...wish, anyway: true }) },
      ]);
    }
    if (onDesk !== null && !parts.mayReplace()) return;
    onDesk?.close();
    notice(null);
    const isFirst = onDesk === null;
    onDesk = await layOut(parts, outcome.value, isFirst);
    element("file-name").textContent = fileName;
    const news = newsOf(outcome.value);
    if (news !== "") notice(news);
    document.title = `${fileName} – Tackstitch bench`;
    wish.opened?.();
  };
  return {
    open,
    port: () => held().port,
    fileName: () => held().file.fileName,
    bytes: (isCopy) => held().bytes(isCopy),
  };
}

/** What shows otherwise here than in Excel; "" where nothing does. */
function newsOf({ fileName, book, pictures }: OpenedFile): string {
  const sentences: string[] = [];
  if (book.dateSystem === 1904)
    sentences.push(
      `"${fileName}" counts its days from 1904, so that here its dates show 4 years and a day too early; see Check.`,
    );
  if (pictures.length > 0)
    sentences.push(
      `"${fileName}" has ${sayCount(pictures.length, "picture", "pictures")}, which this grid does not draw: Hand over shows them, and saving keeps them.`,
    );
  return sentences.join(" ");
}

async function layOut(
  { grid, sentences, callFunction, edited }: DeskParts,
  file: OpenedFile,
  isFirst: boolean,
): Promise<OnDesk> {
  sentences.forgetAll();
  // The grid changes what it is given, while saving compares with what the file held.
  const calculated = firstCalculation(grid, () => grid.api.createWorkbook(structuredClone(file.data)));
  // The grid makes its services when it gets its first workbook.
  if (isFirst) formatSpills(grid);
  const first = file.book.sheets[file.book.activeSheet];
  const open = openGrid(grid, file.data.id);
  if (first?.state === "visible" && first.path !== null) open.facade.setActiveSheet(first.sheetId);
  selectFirstCells(open);
  const kept = readKeptPart(file.parts);
  const structure = followStructure(open, () => {
    // The sentences are kept by cell, and the cells have moved: calculating anew tells them again.
    sentences.forgetAll();
    grid.api.getFormula().executeCalculation();
  });
  const port = createBenchPort({
    open,
    fileName: file.fileName,
    dateSystem: file.book.dateSystem,
    readKept: (key) => kept.get(key) ?? null,
    writeKept: (key, text) => {
      kept.set(key, text);
      edited();
    },
    pictures: () => heldPictures(file.pictures, structure.edits),
    pictureBytes: ({ path }) => file.parts[path] ?? new Uint8Array(),
  });
  await calculated;
  startTableFilters(open, file.filters);
  await protectSheets(
    open,
    file.book.sheets.filter(({ isProtected }) => isProtected).map(({ sheetId }) => sheetId),
  );
  const stopGrowing = growTables(open);
  const stopFollowing = followEdits(open, edited);
  const pane = mountPane(element("pane"), { port, today, now: () => fractionOfDay(new Date()), callFunction });
  return {
    file,
    open,
    port,
    bytes: (isCopy) => saveWorkbookFile(file, savingBookOf(open, structure.edits, kept), isCopy === true ? 1 : 6),
    close: () => {
      pane.unmount();
      stopFollowing();
      stopGrowing();
      structure.stop();
      grid.api.disposeUnit(file.data.id);
    },
  };
}
