import { dayPlan } from "../domain/day/dayPlan";
import { likelyCall } from "../domain/day/likelyCall";
import { looksByDay } from "../domain/day/looksByDay";
import { smallestCrew } from "../domain/day/smallestCrew";
import { readHours } from "../sheet/readHours";
import { readLooks } from "../sheet/readLooks";
import { readQuantity } from "../sheet/readQuantity";
import { readTimeOfDay } from "../sheet/readTimeOfDay";
import type { CheckedDay } from "./checkedDay";
import type { CheckedRow } from "./checkedRow";
import type { CheckedWorkbook } from "./checkedWorkbook";
import { cellIn } from "./cellIn";
import { dayIn } from "./dayIn";

/** A day table says after how many hours the meal is due and not how long it is: the least that labour rules ask for, such as California's Wage Order 12. */
const LEAST_MEAL_MINUTES = 30;
/** A table with more looks on one day is no shoot day, and is not planned. */
const MOST_LOOKS = 300;

/**
 * The plan of each day of the looks tables, with the call, meal, dressers and chairs of the day table where it has that day.
 *
 * Looks without a date belong to one day of their own. A table with a cell that cannot be read has no plan: that cell has a
 * finding of its own.
 */
export function checkedDaysOf(workbook: CheckedWorkbook): readonly CheckedDay[] {
  return workbook.tables.flatMap((table) => {
    if (table.kind !== "looks") return [];
    const looks = readLooks(table);
    if (!looks.ok) return [];
    return [...looksByDay(looks.value)].flatMap(([date, ofDay]) => {
      if (ofDay.length > MOST_LOOKS) return [];
      const dayRow = rowOfDay(workbook, date);
      const said = dayRow === null ? null : valueOf(readTimeOfDay(cellIn(dayRow, "call"), ""));
      const afterHours = dayRow === null ? null : valueOf(readHours(cellIn(dayRow, "meal"), "")) || null;
      const crew = {
        ...smallestCrew,
        dressers: count(dayRow, "dressers") ?? smallestCrew.dressers,
        chairs: count(dayRow, "chairs") ?? smallestCrew.chairs,
        meal: afterHours === null ? null : { afterHours, minutes: LEAST_MEAL_MINUTES },
      };
      const plan = dayPlan({ looks: ofDay, call: said ?? likelyCall(ofDay), crew, changes: new Map() });
      return [{ table, date, dayRow, isCallSaid: said !== null, crew, plan }];
    });
  });
}

/** The row of the day table for a date; the only row there is where it names none. */
function rowOfDay(workbook: CheckedWorkbook, date: number | null): CheckedRow | null {
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
