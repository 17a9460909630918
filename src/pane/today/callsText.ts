/** The text the calls are kept as; parseCalls reads it back. */
export function callsText(calls: ReadonlyMap<number, number>): string {
  return JSON.stringify({ version: 1, calls: Object.fromEntries(calls) });
}
