import type { CoverNote } from "./coverNote";

/** What a workbook says of the cover of one currency. */
export interface CoverStated {
  /** For every day without a cover of its own; null where none is stated. */
  readonly everyDay: CoverNote | null;
  readonly byDay: ReadonlyMap<number, CoverNote>;
}

/**
 * The notes that speak of all pieces together, or of any one, in a currency, the first where two speak of the same days; notes that cannot be read are left out.
 *
 * A note that names no currency, or a bare sign, speaks of the sheet's currency where there is but one (`isOnlyOne`); null is a currency that the sheet does not name.
 */
export function coverStated(
  notes: readonly CoverNote[],
  covers: CoverNote["covers"],
  currency: string | null,
  isOnlyOne: boolean,
): CoverStated {
  const byDay = new Map<number, CoverNote>();
  let everyDay: CoverNote | null = null;
  for (const note of notes) {
    if (!note.limit.ok || note.covers !== covers) continue;
    const named = note.limit.value.currency;
    if (named !== currency && !(isOnlyOne && (isUnsure(named) || isUnsure(currency)))) continue;
    if (note.day === null) everyDay ??= note;
    else if (!byDay.has(note.day)) byDay.set(note.day, note);
  }
  return { everyDay, byDay };
}

/** A bare $, ¥ or kr belongs to several currencies. */
function isUnsure(currency: string | null): boolean {
  return currency === null || currency.length < 3;
}
