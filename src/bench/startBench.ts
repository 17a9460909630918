import { installFunctionHost } from "./functions/installFunctionHost";
import { createErrorSentences } from "./functions/createErrorSentences";
import { engineFunctions, type Functions } from "./functions/engineFunctions";
import { functionDescriptions } from "./functions/functionDescriptions";
import type { BlankHabit } from "./functions/hostArgument";
import { createGrid, type Grid } from "./grid/createGrid";
import { finishStart } from "./grid/finishStart";
import { readTypedFormulas } from "./grid/readTypedFormulas";
import { chooseFile } from "./page/chooseFile";
import { download } from "./page/download";
import { element } from "./page/element";
import { keepUnsaved } from "./page/keepUnsaved";
import { mirrorActiveCell } from "./page/mirrorActiveCell";
import { moveBetweenRegions } from "./page/moveBetweenRegions";
import { offerKeptCopy } from "./page/offerKeptCopy";
import { openDesk, type Desk } from "./page/openDesk";
import { sayHowDatesAreRead } from "./page/sayHowDatesAreRead";
import { sayWhenBusy } from "./page/sayWhenBusy";
import { switchPane } from "./page/switchPane";

const NAMESPACE = "TACK";
const SAMPLE = "two-day-shoot.xlsx";

export interface Bench {
  readonly grid: Grid;
  readonly desk: Desk;
}

/** Puts the page together: the grid with our functions, the sample workbook, the header and the pane. */
export async function startBench({ functionOf, metadata }: Pick<Functions, "functionOf" | "metadata">): Promise<Bench> {
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
  readTypedFormulas(grid);
  mirrorActiveCell(grid, sentences);
  sayHowDatesAreRead(grid);
  sayWhenBusy(grid);
  switchPane();
  moveBetweenRegions();
  dark.addEventListener("change", () => api.toggleDarkMode(dark.matches));
  blanks.addEventListener("change", () => api.getFormula().executeCalculation());
  element("undo").addEventListener("click", () => void api.undo());
  element("redo").addEventListener("click", () => void api.redo());

  const unsaved = keepUnsaved(
    () => desk,
    (any) => element("unsaved").toggleAttribute("hidden", !any),
  );
  const desk = openDesk({
    grid,
    sentences,
    callFunction: (id, args) => functionOf[id]?.(...args),
    mayReplace: () =>
      !unsaved.any() || confirm(`"${desk.fileName()}" has changes that are not saved. Open another one all the same?`),
    edited: unsaved.edited,
  });
  chooseFile(async (file) =>
    desk.open(new Uint8Array(await file.arrayBuffer()), file.name, { opened: unsaved.settled }),
  );
  element("save").addEventListener("click", () => {
    download(desk.bytes(), desk.fileName());
    unsaved.settled();
  });
  const sample = await fetch(`sample-workbooks/${SAMPLE}`);
  await desk.open(new Uint8Array(await sample.arrayBuffer()), SAMPLE);
  finishStart(grid);
  document.body.dataset.ready = "true";
  await offerKeptCopy((bytes, fileName) => desk.open(bytes, fileName, { anyway: true, opened: unsaved.edited }));
  return { grid, desk };
}
