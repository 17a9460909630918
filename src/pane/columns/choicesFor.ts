import type { ColumnChoices, KindColumnChoice } from "../../sheet/columnChoices";
import { sameHeading } from "../../sheet/sameHeading";
import type { SheetTable } from "../../sheet/sheetTable";

/** The choices kept for a sheet that bear on one of its tables: of its kind, and about headings that it has. */
export function choicesFor(table: SheetTable, columns: ColumnChoices): readonly KindColumnChoice[] {
  const kept = Object.hasOwn(columns, table.sheetName) ? columns[table.sheetName]! : [];
  return kept.filter(
    ({ kind, heading }) =>
      kind === table.kind && (heading === null || table.headings.some((typed) => sameHeading(typed, heading))),
  );
}
