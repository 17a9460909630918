import { choicesOn } from "../../sheet/choicesOn";
import type { ColumnChoices, KindColumnChoice } from "../../sheet/columnChoices";
import type { SheetTable } from "../../sheet/sheetTable";

/** The choices kept for a sheet that bear on one of its tables: of its kind, and about headings that it has. */
export function choicesFor(table: SheetTable, columns: ColumnChoices): readonly KindColumnChoice[] {
  const kept = Object.hasOwn(columns, table.sheetName) ? columns[table.sheetName]! : [];
  return choicesOn(
    table.headings,
    kept.filter(({ kind }) => kind === table.kind),
  );
}
