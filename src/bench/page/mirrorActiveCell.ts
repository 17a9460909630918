import { cellName } from "../../sheet/cellName";
import type { ErrorSentences } from "../functions/createErrorSentences";
import type { Grid } from "../grid/createGrid";
import { element } from "./element";

const GATHER_MS = 120;

/**
 * Says the active cell in words: its address, what it shows, its formula, and the whole sentence behind an error.
 * The grid is drawn on a canvas, which a screen reader cannot read, so the same words go to a live region.
 */
export function mirrorActiveCell({ api }: Grid, sentences: ErrorSentences): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const say = () => {
    const range = api.getActiveWorkbook()?.getActiveCell();
    if (range === null || range === undefined) return;
    const place = { sheetId: range.getSheetId(), row: range.getRow(), column: range.getColumn() };
    const shown = String(range.getDisplayValue() ?? "");
    const sentence = shown.startsWith("#") ? sentences.at(place) : undefined;
    const parts = [cellName(place.row, place.column), shown === "" ? "blank" : shown, sentence, range.getFormula()];
    const words = parts.filter((part) => part !== undefined && part !== "").join("  ·  ");
    element("cell-text").textContent = words;
    element("cell-line").toggleAttribute("data-wrong", sentence !== undefined);
    element("cell-live").textContent = `${range.getSheetName()}, ${words}`;
  };
  const sayLater = () => {
    clearTimeout(waiting);
    waiting = setTimeout(say, GATHER_MS);
  };
  api.addEvent(api.Event.SelectionChanged, sayLater);
  api.addEvent(api.Event.ActiveSheetChanged, sayLater);
  api.addEvent(api.Event.SheetValueChanged, sayLater);
  api.getFormula().calculationEnd(sayLater);
}
