import { smallestCrew } from "../../domain/day/smallestCrew";
import { readPeople } from "../../sheet/readPeople";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import type { CrewFound } from "./CrewFound";

/**
 * The people of the day: the first table of two columns whose every row says something that people are asked for
 * by ("dressers", 1). The smallest crew where there is none, as DAYPLAN takes it.
 */
export function crewOf(workbook: WorkbookSnapshot): CrewFound {
  for (const sheet of workbook.sheets) {
    for (const area of sheet.tables) {
      if (area.columnCount !== 2 || area.rowCount < 2) continue;
      const top = area.row - sheet.firstRow;
      const left = area.column - sheet.firstColumn;
      const cells = sheet.values.slice(top, top + area.rowCount).map((row) => row.slice(left, left + 2));
      if (!cells.slice(1).some((row) => row[0] !== null && row[1] !== null)) continue;
      const crew = readPeople(cells);
      if (!crew.ok) continue;
      const at = { sheetId: sheet.sheetId, row: area.row, column: area.column };
      return { crew: crew.value, place: { at, sheetName: sheet.name } };
    }
  }
  return { crew: smallestCrew, place: null };
}
