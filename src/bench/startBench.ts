import { sayProblem } from "../domain/wording";
import { openWorkbookFile, type OpenedFile } from "./file/openWorkbookFile";
import { createErrorSentences } from "./functions/createErrorSentences";
import { engineFunctions, type Functions } from "./functions/engineFunctions";
import { functionDescriptions } from "./functions/functionDescriptions";
import type { BlankHabit } from "./functions/hostArgument";
import { installFunctionHost } from "./functions/installFunctionHost";
import { createGrid } from "./grid/createGrid";
import { formatSpills } from "./grid/formatSpills";
import { spellOutRowReferences } from "./grid/spellOutRowReferences";
import { chooseFile } from "./page/chooseFile";
import { element } from "./page/element";
import { mirrorActiveCell } from "./page/mirrorActiveCell";
import { notice } from "./page/notice";

const NAMESPACE = "TACK";
const SAMPLE = "two-day-shoot.xlsx";

/** Puts the page together: the grid with our functions, the sample workbook, the header and the pane. */
export async function startBench({ functionOf, metadata }: Pick<Functions, "functionOf" | "metadata">): Promise<void> {
  installFunctionHost();
  const sentences = createErrorSentences();
  const blanks = element<HTMLInputElement>("blanks");
  const blank = (): BlankHabit => (blanks.checked ? 0 : null);
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const grid = createGrid({
    container: element("grid"),
    functions: engineFunctions({ namespace: NAMESPACE, metadata, functionOf, blank, sentences }),
    descriptions: functionDescriptions(metadata, NAMESPACE),
    dark: dark.matches,
  });
  const { api } = grid;
  spellOutRowReferences(grid);
  mirrorActiveCell(grid, sentences);
  dark.addEventListener("change", () => api.toggleDarkMode(dark.matches));
  blanks.addEventListener("change", () => api.getFormula().executeCalculation());
  element("undo").addEventListener("click", () => void api.undo());
  element("redo").addEventListener("click", () => void api.redo());

  let opened: OpenedFile | null = null;
  let openings = 0;
  const open = async (bytes: Uint8Array, name: string) => {
    const outcome = await openWorkbookFile(bytes, name, `book-${++openings}`);
    if (!outcome.ok) return notice(sayProblem(outcome.problem));
    if (opened !== null) api.disposeUnit(opened.data.id);
    opened = outcome.value;
    const workbook = api.createWorkbook(opened.data);
    // The grid makes its services when it gets its first workbook.
    if (openings === 1) formatSpills(grid);
    const calculated = api.getFormula().onCalculationResultApplied(60_000);
    const first = opened.book.sheets[opened.book.activeSheet] ?? opened.book.sheets[0];
    if (first !== undefined && first.state === "visible") workbook.setActiveSheet(first.sheetId);
    element("file-name").textContent = name;
    document.title = `${name} – Tackstitch bench`;
    notice(null);
    await calculated.catch(() => undefined);
  };
  chooseFile(async (file) => void open(new Uint8Array(await file.arrayBuffer()), file.name));
  const sample = await fetch(`sample-workbooks/${SAMPLE}`);
  await open(new Uint8Array(await sample.arrayBuffer()), SAMPLE);
  document.body.dataset.ready = "true";
}
