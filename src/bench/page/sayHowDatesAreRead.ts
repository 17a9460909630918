import type { Grid } from "../grid/createGrid";
import { notice } from "./notice";

const FIGURES = /^\s*(\d{1,2})[/.-](\d{1,2})[/.-](\d{4}|\d{2})\s*$/;

/** The grid reads dates in figures month first, wherever it runs; Excel reads them as the computer is set. So it says so. */
export function sayHowDatesAreRead({ api }: Grid): void {
  api.addEvent(api.Event.BeforeSheetEditEnd, ({ value, isConfirm }) => {
    const typed = value.toPlainText().trim();
    const [, month = "", day = "", year = ""] = FIGURES.exec(typed) ?? [];
    if (!isConfirm || month === "" || Number(month) > 12 || Number(day) > 12 || Number(month) === Number(day)) return;
    const iso = (m: string, d: string) => `${year.padStart(4, "20")}-${m.padStart(2, "0")}-${d.padStart(2, "0")}`;
    notice(`"${typed}" is read month first here, as ${iso(month, day)}; for the other day type ${iso(day, month)}.`);
  });
}
