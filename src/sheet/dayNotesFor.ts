import type { DayNotes } from "./dayNotes";

const NOTHING: DayNotes = { date: null, call: null, wrap: null, meal: null, dressers: null, chairs: null };

/**
 * What the workbook says of one day of its looks, put together from every place that speaks of it; of two that say
 * the same thing the first counts.
 *
 * Notes that name no day count only where the looks have one day (`dayCount` below 2), and looks without a date (null)
 * go by notes of a day only where all notes are of that one day.
 */
export function dayNotesFor(notes: readonly DayNotes[], date: number | null, dayCount: number): DayNotes {
  const dated = new Set(notes.flatMap((note) => (note.date === null ? [] : [note.date])));
  const onlyDay = date === null && dayCount < 2 && dated.size === 1 ? [...dated][0]! : date;
  const ofDay = notes.filter((note) => note.date !== null && note.date === onlyDay);
  const ofNoDay = dayCount < 2 ? notes.filter((note) => note.date === null) : [];
  return [...ofDay, ...ofNoDay].reduce(
    (said, note) => ({
      date: onlyDay,
      call: said.call ?? note.call,
      wrap: said.wrap ?? note.wrap,
      meal: said.meal ?? note.meal,
      dressers: said.dressers ?? note.dressers,
      chairs: said.chairs ?? note.chairs,
    }),
    NOTHING,
  );
}
