import { readCell } from "./readCell";

/** The headings a row holds, as typed; "" where a cell holds no text. */
export function headingTexts(row: readonly unknown[]): string[] {
  return row.map((raw) => {
    const cell = readCell(raw);
    return typeof cell === "string" ? cell : "";
  });
}
