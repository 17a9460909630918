/** The calls typed into the pane, by serial day (0 for looks without a date), out of the text kept; what cannot be read is no call. */
export function parseCalls(text: string | null): ReadonlyMap<number, number> {
  const calls = new Map<number, number>();
  for (const [day, call] of Object.entries(callsIn(text))) {
    if (typeof call === "number" && call >= 0 && call < 2) calls.set(Number(day), call);
  }
  return calls;
}

function callsIn(text: string | null): object {
  if (text === null) return {};
  try {
    const kept = JSON.parse(text) as { calls?: unknown } | null;
    return typeof kept?.calls === "object" && kept.calls !== null ? kept.calls : {};
  } catch {
    return {};
  }
}
