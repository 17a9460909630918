import type { NotedCell } from "../../sheet/notedCell";
import { readWorkbookNotes } from "../../sheet/readWorkbookNotes";
import type { UnreadArea } from "../../sheet/readWorkbook";
import type { ReadTables } from "../state/ReadTables";
import { sayCount } from "../sayCount";

/** Something that is read without being one of the tables. */
interface ReadBeside {
  readonly place: Pick<NotedCell, "at" | "sheetName">;
  readonly what: string;
}

/**
 * What the workbook says beside its tables: the closed days, the people, the cover. And the areas that were not read and hold none of
 * these, so that a list in use does not stand among what was not understood.
 */
export function readBeside({ workbook, tables, unread }: ReadTables): {
  readonly found: readonly ReadBeside[];
  readonly unread: readonly UnreadArea[];
} {
  const { closedDays, crew, covers } = readWorkbookNotes(workbook.sheets, tables);
  const lists: readonly ReadBeside[] = [
    ...(closedDays.place === null
      ? []
      : [{ place: closedDays.place, what: `Closed days, ${sayCount(closedDays.days.length, "day", "days")}` }]),
    ...(crew.place === null ? [] : [{ place: crew.place, what: "The people of the day" }]),
  ];
  const limits = covers.map((note) => ({
    place: note,
    what: note.covers === "all" ? "The cover of all pieces" : "The cover of one piece",
  }));
  const isInUse = ({ sheetId, row, column, headings }: UnreadArea): boolean =>
    lists.some(
      ({ place: { at } }) =>
        at.sheetId === sheetId && at.row === row && at.column >= column && at.column < column + headings.length,
    );
  return { found: [...lists, ...limits], unread: unread.filter((area) => !isInUse(area)) };
}
