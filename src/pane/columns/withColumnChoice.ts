import { assignColumns } from "../../sheet/assignColumns";
import { choicesOn } from "../../sheet/choicesOn";
import type { KindColumnChoice } from "../../sheet/columnChoices";
import { sameHeading } from "../../sheet/sameHeading";
import type { SheetTable } from "../../sheet/sheetTable";

/**
 * A sheet's choices after one column of a table was given a field by hand, or none (null).
 *
 * A field has one column in a table and a column one field, so older choices about either go, save those that other tables of the kind
 * on the sheet (`otherHeadings`) still need; what the headings say by themselves is not kept as a choice.
 */
export function withColumnChoice(
  choices: readonly KindColumnChoice[],
  { kind, headings }: Pick<SheetTable, "kind" | "headings">,
  column: number,
  field: string | null,
  otherHeadings: readonly (readonly string[])[] = [],
): readonly KindColumnChoice[] {
  const heading = headings[column] ?? "";
  const isAboutColumn = ({ heading: about, notHeading }: KindColumnChoice): boolean =>
    sameHeading(about ?? notHeading ?? "", heading);
  const isNeeded = (choice: KindColumnChoice): boolean =>
    otherHeadings.some((other) => choicesOn(other, [choice]).length > 0);
  const others = choices.filter((choice) => {
    if (choice.kind !== kind || choicesOn(headings, [choice]).length === 0) return true;
    return !isAboutColumn(choice) && (choice.field !== field || isNeeded(choice));
  });
  const read = (of: readonly KindColumnChoice[]) =>
    assignColumns(
      headings,
      kind,
      choicesOn(headings, of).filter((choice) => choice.kind === kind),
    );
  if (field !== null) return read(others).columnOf[field] === column ? others : [...others, { kind, field, heading }];

  let result = others;
  for (;;) {
    const { columnOf, contested } = read(result);
    // A heading that may not be one thing can still be the next it could mean.
    const said = Object.keys(columnOf).find((name) => columnOf[name] === column);
    const disputed = [...contested].find(([, columns]) => columns.includes(column));
    if (said !== undefined) result = [...result, { kind, field: said, heading: null, notHeading: heading }];
    else if (disputed !== undefined) {
      const rivals = disputed[1].filter((other) => other !== column);
      const only = rivals.length === 1 ? headings[rivals[0]!]! : null;
      result = [...result, { kind, field: disputed[0], heading: only, ...(only === null && { notHeading: heading }) }];
    } else return result;
  }
}
