import type { EarliestEnds } from "./earliestEnds";
import { latestArrival } from "./latestArrival";
import { never } from "./never";
import type { Run } from "./run";
import { runEnd } from "./runEnd";
import { visitEnd } from "./visitEnd";

/** From a state on: how late it may be left for the run still to end in time, and the travel that is then to come. */
interface WayOn {
  readonly leaveByMs: number;
  readonly travelMs: number;
}

/**
 * Of the orders that meet the most and end soonest, the one with least travel, and of those the first by row; no stop at all where every
 * one travels more than `mostMs`, null where more than `stepLimit` ways are to be looked at.
 *
 * Goes back from the end with the latest times at which each state may be left, keeps of the ways on from a state those that come to
 * no more travel than that and that no other equals in both lateness and travel, and then goes forward along them, nearest row first.
 */
export function leastTravelOrder(
  run: Run,
  worths: readonly number[],
  ends: EarliestEnds,
  mostMs: number,
  stepLimit: number,
): readonly number[] | null {
  const { stopCount, travelMs } = run;
  const waysOn = new Map<number, WayOn[]>();
  const keyOf = (set: number, last: number): number => set * 32 + last;
  let steps = 0;

  function add(set: number, last: number, way: WayOn): void {
    steps++;
    if (way.leaveByMs < ends.endAt(set, last) || way.travelMs + ends.travelAt(set, last) > mostMs) return;
    const key = keyOf(set, last);
    const known = waysOn.get(key);
    if (known === undefined) {
      waysOn.set(key, [way]);
      return;
    }
    for (const other of known) if (other.leaveByMs >= way.leaveByMs && other.travelMs <= way.travelMs) return;
    let kept = 0;
    for (const other of known)
      if (other.leaveByMs > way.leaveByMs || other.travelMs < way.travelMs) known[kept++] = other;
    known.length = kept;
    known.push(way);
  }

  for (let index = ends.sets.length - 1; index > 0; index--) {
    const set = ends.sets[index]!;
    let worth = 0;
    for (let stop = 1; stop <= stopCount; stop++) if (set & (1 << (stop - 1))) worth += worths[stop - 1]!;
    for (let last = 1; last <= stopCount; last++) {
      if (!(set & (1 << (last - 1)))) continue;
      if (worth === ends.worth && runEnd(run, last, ends.endAt(set, last)) <= ends.endMs) {
        const back = run.returns ? travelMs[last]![0]! : 0;
        add(set, last, { leaveByMs: ends.endMs - back, travelMs: back });
      }
      const before = set ^ (1 << (last - 1));
      for (const way of before === 0 ? [] : (waysOn.get(keyOf(set, last)) ?? [])) {
        const arriveByMs = latestArrival(run, last, way.leaveByMs);
        for (let from = 1; from <= stopCount; from++) {
          if (!(before & (1 << (from - 1)))) continue;
          const leg = travelMs[from]![last]!;
          add(before, from, { leaveByMs: arriveByMs - leg, travelMs: way.travelMs + leg });
        }
        if (steps > stepLimit) return null;
      }
    }
  }

  const order: number[] = [];
  let leaveMs = run.leaveMs;
  for (let set = 0, last = 0, sum = 0; sum !== ends.worth;) {
    let next = 0;
    let leastMs = never;
    for (let stop = 1; stop <= stopCount; stop++) {
      if (set & (1 << (stop - 1))) continue;
      const leg = travelMs[last]![stop]!;
      const over = visitEnd(run, stop, leaveMs + leg);
      for (const way of waysOn.get(keyOf(set | (1 << (stop - 1)), stop)) ?? []) {
        if (over > way.leaveByMs || leg + way.travelMs >= leastMs) continue;
        next = stop;
        leastMs = leg + way.travelMs;
      }
    }
    if (next === 0) return [];
    leaveMs = visitEnd(run, next, leaveMs + travelMs[last]![next]!);
    set |= 1 << (next - 1);
    sum += worths[next - 1]!;
    last = next;
    order.push(next);
  }
  return order;
}
