import type { Grid } from "./createGrid";

/** A workbook without formulas may never be told as calculated. */
const LONGEST_SILENCE_MS = 1500;

/** Opens a workbook in the grid and waits until its formulas are calculated for the first time, and shown. */
export function firstCalculation({ api }: Grid, open: () => void): Promise<void> {
  return new Promise((resolve) => {
    // Listened for beforehand: a small workbook is calculated before `open` returns.
    const heard = api.getFormula().calculationEnd(() => done());
    const silence = setTimeout(() => done(), LONGEST_SILENCE_MS);
    const done = () => {
      heard.dispose();
      clearTimeout(silence);
      // The results are put into the cells in the same turn.
      setTimeout(resolve, 0);
    };
    const started = api.getFormula().calculationStart(() => {
      clearTimeout(silence);
      started.dispose();
    });
    open();
  });
}
