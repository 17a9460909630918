import { dayPlan } from "../domain/day/dayPlan";
import type { Look } from "../domain/day/look";
import { smallestCrew } from "../domain/day/smallestCrew";
import { readLooks } from "../sheet/readLooks";
import { readQuantity } from "../sheet/readQuantity";
import { readTimeOfDay } from "../sheet/readTimeOfDay";
import type { CheckedDay } from "./checkedDay";
import type { CheckedRow } from "./checkedRow";
import type { CheckedWorkbook } from "./checkedWorkbook";
import { cellIn } from "./cellIn";
import { dayIn } from "./dayIn";

/** Where no call is given the hour does not matter, since only what overlaps is asked. */
const NINE = 9 / 24;
/** A table with more looks on one day is no shoot day, and is not planned. */
const MOST_LOOKS = 300;

/**
 * The plan of each day of the looks tables, with the call, dressers and chairs of the day table where it has that day.
 *
 * Looks without a date belong to one day of their own. A table with a cell that cannot be read has no plan: that cell has a
 * finding of its own.
 */
export function checkedDaysOf(workbook: CheckedWorkbook): readonly CheckedDay[] {
  return workbook.tables.flatMap((table) => {
    if (table.kind !== "looks") return [];
    const looks = readLooks(table);
    if (!looks.ok) return [];
    const byDate = new Map<number | null, Look[]>();
    for (const look of looks.value) {
      const ofDay = byDate.get(look.date);
      if (ofDay === undefined) byDate.set(look.date, [look]);
      else ofDay.push(look);
    }
    return [...byDate].flatMap(([date, ofDay]) => {
      if (ofDay.length > MOST_LOOKS) return [];
      const row = dayRow(workbook, date);
      const call = row === null ? NINE : (valueOf(readTimeOfDay(cellIn(row, "call"), "")) ?? NINE);
      const crew = {
        ...smallestCrew,
        dressers: count(row, "dressers") ?? smallestCrew.dressers,
        chairs: count(row, "chairs") ?? smallestCrew.chairs,
      };
      return [{ table, date, plan: dayPlan({ looks: ofDay, call, crew, changes: new Map() }) }];
    });
  });
}

/** The row of the day table for a date; the only row there is where it names none. */
function dayRow(workbook: CheckedWorkbook, date: number | null): CheckedRow | null {
  const rows = workbook.tables
    .filter((table) => table.kind === "day")
    .flatMap((table) => table.dataRows.map((row) => ({ table, row })));
  const only = rows.length === 1 ? rows[0]! : null;
  const ofDate = rows.find((row) => date !== null && dayIn(row, "date") === date);
  return ofDate ?? (only !== null && (date === null || dayIn(only, "date") === null) ? only : null);
}

function count(row: CheckedRow | null, field: string): number | null {
  return row === null ? null : valueOf(readQuantity(cellIn(row, field), "")) || null;
}

function valueOf<T>(outcome: { readonly ok: true; readonly value: T } | { readonly ok: false }): T | null {
  return outcome.ok ? outcome.value : null;
}
