import type { ColumnChoice } from "./columnChoice";
import { headingTexts } from "./headingTexts";
import { readHeading } from "./readHeading";
import { sameHeading } from "./sameHeading";
import type { TableKind } from "./tableKind";

const ROWS_SOUGHT = 20;

/** The row that matches best, and how many fields its headings name (one that gives way counts half). */
export interface HeadingRow {
  readonly row: number;
  readonly fieldCount: number;
}

/**
 * The heading row of a range, sought in its first 20 rows: the one that names most fields, the first of equals; null when none
 * names a field that needs no other to give way.
 */
export function findHeadingRow(
  cells: readonly (readonly unknown[])[],
  kind: TableKind,
  choices: readonly ColumnChoice[],
): HeadingRow | null {
  let best: HeadingRow | null = null;
  for (let row = 0; row < cells.length && row < ROWS_SOUGHT; row += 1) {
    const texts = headingTexts(cells[row]!).filter((text) => text !== "");
    // A row with no more texts than the best has fields cannot be better.
    if (texts.length <= (best?.fieldCount ?? 0)) continue;
    const fieldCount = countFields(texts, kind, choices);
    if (fieldCount >= 1 && fieldCount > (best?.fieldCount ?? 0)) best = { row, fieldCount };
  }
  return best;
}

function countFields(texts: readonly string[], kind: TableKind, choices: readonly ColumnChoice[]): number {
  const plain = new Set<string>();
  const givingWay = new Set<string>();
  for (const text of texts) {
    const chosen = choices.find((choice) => choice.heading !== null && sameHeading(choice.heading, text));
    const reading = chosen === undefined ? readHeading(kind, text)?.readings[0] : undefined;
    if (chosen !== undefined) plain.add(chosen.field);
    else if (reading !== undefined) (reading.givesWay ? givingWay : plain).add(reading.field);
  }
  const onlyGivingWay = [...givingWay].filter((field) => !plain.has(field)).length;
  return plain.size + onlyGivingWay / 2;
}
