import type { CoverNote } from "../../sheet/coverNote";
import { coverStated } from "../../sheet/coverStated";
import type { Cover, CoverFigure } from "./Cover";

/** The cover of a currency as the workbook states it; `currency` is "" where the sheet names none. */
export function coverToday(
  notes: readonly CoverNote[],
  covers: CoverNote["covers"],
  currency: string,
  isOnlyOne: boolean,
): Cover {
  const { everyDay, byDay } = coverStated(notes, covers, currency === "" ? null : currency, isOnlyOne);
  return {
    everyDay: everyDay === null ? null : figureOf(everyDay),
    byDay: new Map([...byDay].map(([day, note]) => [day, figureOf(note)])),
  };
}

function figureOf(note: CoverNote): CoverFigure {
  return { amount: note.limit.ok ? note.limit.value.amount : 0, place: note };
}
