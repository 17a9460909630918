import type { Look } from "./look";

const NINE = 9 / 24;

/** The call to plan a day from where none is said and only what overlaps is asked: when the first talent arrives, else 09:00. */
export function likelyCall(looks: readonly Look[]): number {
  const first = looks.reduce((soonest, { arrivesAt }) => Math.min(soonest, arrivesAt ?? Infinity), Infinity);
  return Number.isFinite(first) ? first : NINE;
}
