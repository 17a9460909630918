/**
 * The closed weekdays (bit 0 Monday to bit 6 Sunday) of a weekend code, or null for any other number.
 *
 * 1 Saturday and Sunday, 2 Sunday and Monday, on to 7 Friday and Saturday; 11 Sunday alone, 12 Monday alone, on to 17
 * Saturday alone: the codes of WORKDAY.INTL and NETWORKDAYS.INTL.
 */
export function closedWeekdaysFromCode(code: number): number | null {
  if (!Number.isInteger(code)) return null;
  if (code >= 1 && code <= 7) return (1 << ((code + 4) % 7)) | (1 << ((code + 5) % 7));
  if (code >= 11 && code <= 17) return 1 << ((code - 5) % 7);
  return null;
}
