import { msFromDays } from "./msFromDays";
import type { Stop } from "./stop";

/**
 * When a visit may begin for it to end while the door is open, in milliseconds: from and until, from and until, rising and apart.
 * Spans that touch are one, so that a visit may go on from one into the other; none is empty.
 */
export function beginTimes({ opening, minutes }: Stop): readonly number[] {
  if (opening === null) return [0, Infinity];
  const spans = opening.map(({ from, until }) => ({ from: msFromDays(from), until: msFromDays(until) }));
  spans.sort((a, b) => a.from - b.from);
  const apart: { from: number; until: number }[] = [];
  for (const span of spans) {
    const before = apart.at(-1);
    if (before === undefined || span.from > before.until) apart.push({ ...span });
    else before.until = Math.max(before.until, span.until);
  }
  const visitMs = Math.round(minutes * 60_000);
  return apart.flatMap(({ from, until }) => (until - visitMs >= from ? [from, until - visitMs] : []));
}
