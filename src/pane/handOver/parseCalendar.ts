/** What the workbook keeps of its calendar: what tells its entries from others', and how often a file was saved. */
export interface CalendarKept {
  readonly id: string;
  readonly savedCount: number;
}

/** Out of the text kept; null where nothing usable is kept. */
export function parseCalendar(text: string | null): CalendarKept | null {
  if (text === null) return null;
  try {
    const kept = JSON.parse(text) as Partial<CalendarKept> | null;
    const { id, savedCount } = kept ?? {};
    const isUsable = typeof id === "string" && /^[\w.-]{1,64}$/.test(id) && Number.isSafeInteger(savedCount);
    return isUsable && (savedCount ?? -1) >= 0 ? { id, savedCount: savedCount ?? 0 } : null;
  } catch {
    return null;
  }
}
