import type { Day } from "../domain/day/day";
import { fail } from "../domain/fail";
import { needed } from "../domain/needed";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readChanges } from "../sheet/readChanges";
import { readLooks } from "../sheet/readLooks";
import { readPeople } from "../sheet/readPeople";
import { readTable } from "../sheet/readTable";
import { readTimeOfDay } from "../sheet/readTimeOfDay";
import { rangeArgument } from "./rangeArgument";

/** The arguments that every function of the day has, as one day. */
export function dayArguments(
  looks: unknown,
  call: unknown,
  people: unknown,
  changes: unknown,
  columns: unknown,
): Outcome<Day> {
  const callTime = needed(readTimeOfDay(call, "call"), "call", "the time everybody is there, such as 09:00");
  if (!callTime.ok) return callTime;
  const crew = readPeople(rangeArgument(people));
  if (!crew.ok) return crew;
  const lookChanges = readChanges(rangeArgument(changes));
  if (!lookChanges.ok) return lookChanges;

  const changesGiven = lookChanges.value.size > 0;
  const needs = ["look", "talent", "shooting", ...(changesGiven ? [] : [["change", "likely"]])];
  const table = readTable({ cells: rangeArgument(looks), kind: "looks", needs, columns, argument: "looks" });
  if (!table.ok) return table;
  const rows = readLooks(table.value);
  if (!rows.ok) return rows;
  // Looks of another day may stand in the table of changes; if all do, its headings are not look numbers.
  if (changesGiven && rows.value.length > 0 && !rows.value.some((look) => lookChanges.value.has(look.key))) {
    const given = [...lookChanges.value.keys()].slice(0, 3).join(", ");
    const expected = "the look numbers of this day as its first row and first column";
    return fail("argument-not-usable", { argument: "changes", given, expected });
  }
  return succeed({ looks: rows.value, call: callTime.value, crew: crew.value, changes: lookChanges.value });
}
