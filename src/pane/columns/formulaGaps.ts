import type { ColumnChoices } from "../../sheet/columnChoices";
import type { ReadTables } from "../state/ReadTables";
import type { FunctionDoc } from "../functions/FunctionDoc";
import { choicesFor } from "./choicesFor";
import type { FormulaGap } from "./FormulaGap";
import { withColumns } from "./withColumns";

/** The formulas that need a columns argument to read their tables as the pane does, in the order of the sheets. */
export function formulaGaps(
  { workbook, tables }: ReadTables,
  columns: ColumnChoices,
  functionDocs: readonly FunctionDoc[],
): readonly FormulaGap[] {
  const chosen = new Map(tables.map((table) => [table, choicesFor(table, columns)]));
  if ([...chosen.values()].every((choices) => choices.length === 0)) return [];
  const docs = new Map(functionDocs.map((doc) => [doc.id, doc]));
  const gaps: FormulaGap[] = [];
  for (const { sheetId, name, firstRow, firstColumn, formulas } of workbook.sheets) {
    const surroundings = {
      docs,
      tables,
      homeSheet: name,
      choicesFor: (table: (typeof tables)[number]) => chosen.get(table) ?? [],
    };
    formulas.forEach((row, r) =>
      row.forEach((formula, c) => {
        if (formula === null || !/TACK[._]/i.test(formula)) return;
        const change = withColumns(formula, surroundings);
        if (change === null) return;
        gaps.push({
          at: { sheetId, row: firstRow + r, column: firstColumn + c },
          sheetName: name,
          before: formula,
          ...change,
        });
      }),
    );
  }
  return gaps;
}
