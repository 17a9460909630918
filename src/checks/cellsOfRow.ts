import type { CheckedRow } from "./checkedRow";

/** F5, $F$5 or F5:H9; not part of a longer name, and not on another sheet. */
const A1 = /(?<![\w.!'$:])\$?([A-Z]{1,3})\$?(\d{1,7})(?::\$?([A-Z]{1,3})\$?(\d{1,7}))?(?![\w(.!:])/g;
/** [@Out], [@[Date out]], Pieces[[#This Row],[Out]] as files keep it. */
const THIS_ROW = /\[@\[?([^[\]]+)\]?\]|\[\[#This Row\],\s*\[([^[\]]+)\]\]/g;
const TEXTS = /"(?:[^"]|"")*"/g;

/** The columns (indices into the table's cells) of the cells of its own row that a formula reads. */
export function cellsOfRow(formula: string, { table, row }: CheckedRow): readonly number[] {
  const plain = formula.replace(TEXTS, '""');
  const columns = new Set<number>();
  for (const [, letters, number, lastLetters, lastNumber] of plain.matchAll(A1)) {
    const sheetRow = table.firstRow + row + 1;
    if (sheetRow < Number(number) || sheetRow > Number(lastNumber ?? number)) continue;
    const first = Math.max(columnOf(letters!) - table.firstColumn, 0);
    const last = Math.min(columnOf(lastLetters ?? letters!) - table.firstColumn, table.headings.length - 1);
    for (let column = first; column <= last; column++) columns.add(column);
  }
  for (const [, typed, kept] of plain.matchAll(THIS_ROW)) {
    const column = table.headings.findIndex((heading) => heading.trim() === (typed ?? kept ?? "").trim());
    if (column >= 0) columns.add(column);
  }
  return [...columns];
}

function columnOf(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
