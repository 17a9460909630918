import { smallestCrew } from "../domain/day/smallestCrew";
import type { CrewFound } from "./crewFound";
import { peopleFieldOf } from "./peopleFieldOf";
import { readPeople } from "./readPeople";
import type { SheetSnapshot } from "./sheetSnapshot";

/**
 * The people of the day: the first table of two columns whose every row says something that people are asked for
 * by ("dressers", 1). The smallest crew where there is none, as DAYPLAN takes it.
 */
export function readCrewFound(sheets: readonly SheetSnapshot[]): CrewFound {
  for (const sheet of sheets) {
    for (const area of sheet.tables) {
      if (area.columnCount !== 2 || area.rowCount < 2) continue;
      const top = area.row - sheet.firstRow;
      const left = area.column - sheet.firstColumn;
      const cells = sheet.values.slice(top, top + area.rowCount).map((row) => row.slice(left, left + 2));
      if (!cells.slice(1).some((row) => row[0] !== null && row[1] !== null)) continue;
      const crew = readPeople(cells);
      if (!crew.ok) continue;
      const placeOf = (row: number, column: number, heading: string) => ({
        at: { sheetId: sheet.sheetId, row: area.row + row, column: area.column + column },
        sheetName: sheet.name,
        heading,
        raw: cells[row]?.[column] ?? null,
      });
      const meal = cells.findIndex(([label]) => peopleFieldOf(String(label ?? "")) === "mealAfterHours");
      return {
        crew: crew.value,
        place: placeOf(0, 0, String(cells[0]?.[0] ?? "")),
        mealPlace: crew.value.meal === null ? null : placeOf(meal, 1, String(cells[meal]?.[0] ?? "")),
      };
    }
  }
  return { crew: smallestCrew, place: null, mealPlace: null };
}
