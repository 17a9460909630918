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

/** More ways than these from one state, and the tie by least travel is no longer sure; whether it ends in time is. */
const MOST_WAYS = 64;

/**
 * Of the orders that meet the most and end soonest, the one with least travel, and of those the first by row.
 *
 * Goes back from the end with the latest times at which each state may be left, keeps of the ways on from a state those that
 * no other equals in both lateness and travel, and then goes forward along them, nearest row first.
 */
export function leastTravelOrder(run: Run, ends: EarliestEnds): { order: readonly number[]; isSure: boolean } {
  const { stopCount, travelMs } = run;
  const waysOn = new Map<number, WayOn[]>();
  const keyOf = (set: number, last: number): number => set * 32 + last;
  let isSure = true;

  function add(set: number, last: number, way: WayOn): void {
    if (way.leaveByMs < ends.at(set, last)) return;
    const known = waysOn.get(keyOf(set, last)) ?? [];
    if (known.some((other) => other.leaveByMs >= way.leaveByMs && other.travelMs <= way.travelMs)) return;
    const kept = known.filter((other) => other.leaveByMs > way.leaveByMs || other.travelMs < way.travelMs);
    kept.push(way);
    if (kept.length > MOST_WAYS) {
      // The latest must stay, so that there is always a way on.
      kept.sort((a, b) => b.leaveByMs - a.leaveByMs);
      kept.pop();
      isSure = false;
    }
    waysOn.set(keyOf(set, last), kept);
  }

  for (let index = ends.sets.length - 1; index > 0; index--) {
    const set = ends.sets[index]!;
    const isEnd = ends.worthOf(set) === ends.worth;
    for (let last = 1; last <= stopCount; last++) {
      if (!(set & (1 << (last - 1)))) continue;
      if (isEnd && runEnd(run, last, ends.at(set, last)) <= ends.endMs) {
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
      }
    }
  }

  const order: number[] = [];
  let leaveMs = run.leaveMs;
  for (let set = 0, last = 0; ends.worthOf(set) !== ends.worth;) {
    let next = 0;
    let leastTravelMs = never;
    for (let stop = 1; stop <= stopCount; stop++) {
      if (set & (1 << (stop - 1))) continue;
      const leg = travelMs[last]![stop]!;
      const over = visitEnd(run, stop, leaveMs + leg);
      for (const way of waysOn.get(keyOf(set | (1 << (stop - 1)), stop)) ?? []) {
        if (over > way.leaveByMs || leg + way.travelMs >= leastTravelMs) continue;
        next = stop;
        leastTravelMs = leg + way.travelMs;
      }
    }
    leaveMs = visitEnd(run, next, leaveMs + travelMs[last]![next]!);
    set |= 1 << (next - 1);
    last = next;
    order.push(next);
  }
  return { order, isSure };
}
