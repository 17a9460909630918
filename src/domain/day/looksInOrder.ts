import type { Look } from "./look";
import { secondsNearCall } from "./secondsNearCall";

/**
 * The looks in the order they are shot: what has been shot first, as it happened; then by Order, ties by row;
 * then those without an Order, by row.
 */
export function looksInOrder(looks: readonly Look[], callSeconds: number): readonly Look[] {
  const shotAt = (look: Look): number => (look.shotAt === null ? Infinity : secondsNearCall(look.shotAt, callSeconds));
  const order = (look: Look): number => look.order ?? Infinity;
  // Sorting is stable, so equal looks keep the order of the sheet; Infinity less Infinity is no comparison.
  return [...looks].sort((a, b) => compare(shotAt(a), shotAt(b)) || compare(order(a), order(b)));
}

function compare(a: number, b: number): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
