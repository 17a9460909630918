import type { CheckedRow } from "./checkedRow";
import type { CheckFacts } from "./checkFacts";
import { dayIn } from "./dayIn";

/**
 * The row of the looks table that a piece's look is: the only one of that number, or the one of the piece's shoot day where each
 * day numbers its looks anew; null where there is none or it cannot be told.
 */
export function listedRow(key: string, piece: CheckedRow, facts: CheckFacts): CheckedRow | null {
  const rows = facts.looks()?.get(key)?.rows ?? [];
  if (rows.length === 1) return rows[0]!;
  const shoot = dayIn(piece, "shoot");
  const onDay = shoot === null ? [] : rows.filter((row) => dayIn(row, "date") === shoot);
  return onDay.length === 1 ? onDay[0]! : null;
}
