import { mountPane } from "../../pane/mountPane";
import { sayProblem } from "../../domain/wording";
import type { SheetPort } from "../../sheet/SheetPort";
import { openWorkbookFile, type OpenedFile } from "../file/openWorkbookFile";
import type { Grid } from "../grid/createGrid";
import { formatSpills } from "../grid/formatSpills";
import { createBenchPort } from "../port/createBenchPort";
import { openGrid } from "../port/openGrid";
import { element } from "./element";
import { notice } from "./notice";
import { today } from "./today";

const SLOWEST_CALCULATION_MS = 60_000;

/** What lies on the desk: one workbook, with the pane that belongs to it. */
export interface Desk {
  /** Opens a file in place of the one that is open; when it cannot be read, that one stays. */
  readonly open: (bytes: Uint8Array, fileName: string) => Promise<void>;
  /** The port of the open workbook. */
  readonly port: () => SheetPort;
}

interface OnDesk {
  readonly file: OpenedFile;
  readonly port: SheetPort;
  readonly pane: { readonly unmount: () => void };
}

export function openDesk(grid: Grid): Desk {
  let onDesk: OnDesk | null = null;
  let openings = 0;
  const open = async (bytes: Uint8Array, fileName: string) => {
    const outcome = await openWorkbookFile(bytes, fileName, `book-${++openings}`);
    if (!outcome.ok) return notice(sayProblem(outcome.problem));
    const file = outcome.value;
    if (onDesk !== null) {
      onDesk.pane.unmount();
      grid.api.disposeUnit(onDesk.file.data.id);
    }
    notice(null);
    const workbook = grid.api.createWorkbook(file.data);
    // The grid makes its services when it gets its first workbook.
    if (onDesk === null) formatSpills(grid);
    const calculated = grid.api.getFormula().onCalculationResultApplied(SLOWEST_CALCULATION_MS);
    const first = file.book.sheets[file.book.activeSheet];
    if (first?.state === "visible") workbook.setActiveSheet(first.sheetId);
    const port = createBenchPort({
      open: openGrid(grid, file.data.id),
      fileName,
      dateSystem: file.book.dateSystem,
      kept: new Map(),
    });
    await calculated.catch(() => undefined);
    const pane = mountPane(element("pane"), { port, today });
    onDesk = { file, port, pane };
    element("file-name").textContent = fileName;
    document.title = `${fileName} – Tackstitch bench`;
  };
  const port = () => {
    if (onDesk === null) throw new Error("No workbook is open");
    return onDesk.port;
  };
  return { open, port };
}
