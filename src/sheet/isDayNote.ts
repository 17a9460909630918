import type { Outcome } from "../domain/outcome";
import { isFilledCell } from "./isFilledCell";
import { readCoverLimit } from "./readCoverLimit";
import { readDate } from "./readDate";
import { readHeading } from "./readHeading";
import { readTimeOfDay } from "./readTimeOfDay";

const READER_OF: Readonly<Partial<Record<string, (raw: unknown, argument: string) => Outcome<unknown>>>> = {
  date: readDate,
  call: readTimeOfDay,
  wrap: readTimeOfDay,
  cover: readCoverLimit,
};

/**
 * Whether a row says something of the day and nothing of a piece or a look: a word, its value in the cell to the right ("Call",
 * 08:00), and nothing else. Such notes are typed under a table as well as over it.
 */
export function isDayNote(row: readonly unknown[], from = 0, until = row.length): boolean {
  let label = from;
  while (label < until && !isFilledCell(row[label])) label += 1;
  const word = row[label];
  if (typeof word !== "string" || word.length > 40 || !isFilledCell(row[label + 1])) return false;
  for (let column = label + 2; column < until; column += 1) if (isFilledCell(row[column])) return false;
  const reader = READER_OF[readHeading("day", word)?.readings[0]?.field ?? ""];
  const read = reader?.(row[label + 1], "");
  return read?.ok === true && read.value !== null;
}
