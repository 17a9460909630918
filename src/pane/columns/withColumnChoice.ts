import { assignColumns } from "../../sheet/assignColumns";
import type { KindColumnChoice } from "../../sheet/columnChoices";
import { sameHeading } from "../../sheet/sameHeading";
import type { SheetTable } from "../../sheet/sheetTable";

/**
 * A sheet's choices after one column of a table was given a field by hand, or none (null).
 *
 * A field has one column and a column one field, so older choices about either go; what the headings say by themselves
 * is not kept as a choice.
 */
export function withColumnChoice(
  choices: readonly KindColumnChoice[],
  { kind, headings }: Pick<SheetTable, "kind" | "headings">,
  column: number,
  field: string | null,
): readonly KindColumnChoice[] {
  const heading = headings[column] ?? "";
  const others = choices.filter(
    (choice) =>
      choice.kind !== kind ||
      (choice.field !== field && !(choice.heading !== null && sameHeading(choice.heading, heading))),
  );
  const read = (of: readonly KindColumnChoice[]) =>
    assignColumns(
      headings,
      kind,
      of.filter((choice) => choice.kind === kind),
    );
  if (field !== null) return read(others).columnOf[field] === column ? others : [...others, { kind, field, heading }];

  let result = others;
  for (;;) {
    const { columnOf, contested } = read(result);
    // A heading that may not be one thing can still be the next it could mean.
    const said = Object.keys(columnOf).find((name) => columnOf[name] === column);
    const disputed = [...contested].find(([, columns]) => columns.includes(column));
    if (said !== undefined) result = [...result, { kind, field: said, heading: null }];
    else if (disputed !== undefined) {
      const rivals = disputed[1].filter((other) => other !== column);
      const only = rivals.length === 1 ? headings[rivals[0]!]! : null;
      result = [...result, { kind, field: disputed[0], heading: only }];
    } else return result;
  }
}
