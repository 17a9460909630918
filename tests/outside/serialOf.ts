/** The serial day of an ISO date by the host's own calendar, so that expectations do not rest on the arithmetic they test. */
export function serialOf(iso: string): number {
  return Date.parse(`${iso}T00:00:00Z`) / 86_400_000 + 25569;
}
