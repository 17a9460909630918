import type { Run } from "../../../src/domain/runs/run";

/** An order told minute by minute, with none of the code under test. */
interface ToldOrder {
  readonly order: readonly number[];
  readonly metOfRank: readonly number[];
  readonly endMs: number;
  readonly travelMs: number;
}

const MINUTE = 60_000;

/** The best of every order of every set of stops, tried one by one: most of the urgent, then of the others, soonest end, least travel, first rows. */
export function everyOrder(run: Run): ToldOrder | null {
  const told = everyList(run.stopCount).flatMap((order) => tell(run, order) ?? []);
  told.sort((a, b) => compare(a, b));
  return told[0] ?? null;
}

function everyList(count: number): readonly (readonly number[])[] {
  const lists: (readonly number[])[] = [];
  const grow = (list: readonly number[]): void => {
    lists.push(list);
    for (let stop = 1; stop <= count; stop++) if (!list.includes(stop)) grow([...list, stop]);
  };
  grow([]);
  return lists;
}

function tell(run: Run, order: readonly number[]): ToldOrder | null {
  let clock = run.leaveMs;
  let travelMs = 0;
  let place = 0;
  for (const stop of order) {
    travelMs += run.travelMs[place]![stop]!;
    clock += run.travelMs[place]![stop]!;
    // Waits a minute at a time until the door lets one begin; all times are whole minutes.
    const mayBegin = (): boolean =>
      run.beginMs[stop]!.some(
        (from, index) => index % 2 === 0 && from <= clock && clock <= run.beginMs[stop]![index + 1]!,
      );
    for (let waited = 0; !mayBegin(); waited++) {
      if (waited > 1000) return null;
      clock += MINUTE;
    }
    clock += run.visitMs[stop]!;
    place = stop;
  }
  if (run.returns && place !== 0) {
    travelMs += run.travelMs[place]![0]!;
    clock += run.travelMs[place]![0]!;
  }
  if (run.returns && clock > run.backByMs) return null;
  const metOfRank = [0, 1, 2].map((rank) => order.filter((stop) => run.rank[stop] === rank).length);
  return { order, metOfRank, endMs: clock, travelMs };
}

function compare(a: ToldOrder, b: ToldOrder): number {
  for (const rank of [0, 1, 2])
    if (a.metOfRank[rank] !== b.metOfRank[rank]) return b.metOfRank[rank]! - a.metOfRank[rank]!;
  if (a.endMs !== b.endMs) return a.endMs - b.endMs;
  if (a.travelMs !== b.travelMs) return a.travelMs - b.travelMs;
  for (let at = 0; at < a.order.length; at++) if (a.order[at] !== b.order[at]) return a.order[at]! - b.order[at]!;
  return 0;
}
