import type { BuildPlan } from "../../sheet/buildPlan";
import { cellName } from "../../sheet/cellName";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { sayCount } from "../sayCount";
import { sayList } from "../sayList";
import { exampleMark } from "./exampleMark";

/** What a plan will do, a sentence for each part, before it is done. */
export function sayPlan({ addSheets, addColumns }: BuildPlan, workbook: WorkbookSnapshot): readonly string[] {
  const sheets = addSheets.map(({ name, headings, rows }) => {
    const examples = rows.filter((row) => row.includes(exampleMark)).length;
    const with_ = examples === 0 ? "" : ` and ${sayCount(examples, "example row", "example rows")}`;
    return `A new sheet "${name}" with ${sayCount(headings.length, "column", "columns")}${with_}: ${headings.join(", ")}.`;
  });
  const columns = addColumns.map(({ sheetId, row, column, headings }) => {
    const sheet = workbook.sheets.find((one) => one.sheetId === sheetId)?.name ?? "";
    const from = cellName(row, column);
    const to = cellName(row, column + headings.length - 1);
    return `On "${sheet}", in ${from === to ? from : `${from} to ${to}`}: ${sayList(headings)}. The cells there are blank and stay so under the headings.`;
  });
  return [...sheets, ...columns];
}
