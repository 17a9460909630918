import type { KindColumnChoice } from "./columnChoices";
import { sameHeading } from "./sameHeading";

/** Of a sheet's choices those that bear on a table with these headings: two tables of one sheet each go by their own headings. */
export function choicesOn(
  headings: readonly string[],
  choices: readonly KindColumnChoice[],
): readonly KindColumnChoice[] {
  return choices.filter(({ heading, notHeading }) => {
    const about = heading ?? notHeading;
    return about === undefined || headings.some((typed) => sameHeading(typed, about));
  });
}
