import { dayPlan } from "../domain/day/dayPlan";
import { likelyCall } from "../domain/day/likelyCall";
import { looksByDay } from "../domain/day/looksByDay";
import { withoutPieces } from "../domain/day/withoutPieces";
import { crewOnDay } from "../sheet/crewOnDay";
import { dayNotesFor } from "../sheet/dayNotesFor";
import { readLooks } from "../sheet/readLooks";
import type { WorkbookNotes } from "../sheet/workbookNotes";
import type { CheckedDay } from "./checkedDay";
import type { CheckedWorkbook } from "./checkedWorkbook";

/** A table with more looks on one day is no shoot day, and is not planned. */
const MOST_LOOKS = 300;

/**
 * The plan of each day of the looks tables, with the call and the people that the workbook names for it.
 *
 * Looks without a date belong to one day of their own. A table with a cell that cannot be read has no plan: that cell has a
 * finding of its own.
 */
export function checkedDaysOf(workbook: CheckedWorkbook, notes: WorkbookNotes): readonly CheckedDay[] {
  return workbook.tables.flatMap((table) => {
    if (table.kind !== "looks") return [];
    const looks = readLooks(table);
    if (!looks.ok) return [];
    const byDay = looksByDay(looks.value);
    const dayCount = [...byDay.keys()].filter((date) => date !== null).length;
    return [...byDay].flatMap(([date, ofDay]) => {
      if (ofDay.length > MOST_LOOKS) return [];
      const said = dayNotesFor(notes.days, date, dayCount);
      const people = crewOnDay(notes.crew, said);
      const call = said.call?.value ?? likelyCall(ofDay);
      const day = { looks: ofDay, call, crew: people.crew, changes: new Map() };
      const plan = dayPlan(day);
      const listsPieces = ofDay.some(({ pieces }) => pieces.length > 0);
      const apart = listsPieces ? dayPlan({ ...day, looks: ofDay.map(withoutPieces) }) : plan;
      return [{ table, date, said, people, plan, apart }];
    });
  });
}
