import { fail } from "../fail";
import type { Outcome } from "../outcome";
import type { Problem } from "../problem";
import { sayClock } from "../sayClock";
import { succeed } from "../succeed";
import { beginTimes } from "./beginTimes";
import { bestOrder } from "./bestOrder";
import { msFromDays } from "./msFromDays";
import { orderCost } from "./orderCost";
import type { Run } from "./run";
import type { RunPlan, Visit } from "./runPlan";
import type { Stop } from "./stop";
import { urgencyRanks } from "./urgencyRanks";
import { visitEnd } from "./visitEnd";

const MS_A_MINUTE = 60_000;
const MS_A_DAY = 86_400_000;
const MOST_STOPS = 100;

/**
 * The order of a run that ends soonest and keeps to every door's hours: a visit begins and ends while it is open, with waits before it.
 *
 * `stops` begins with the start: its opening says from when one may leave and, where the run returns, by when one must be back; its
 * minutes are spent before leaving, open or not. `minutesBetween` is from row to column of `stops`. Where not all can be met, those due
 * soonest go first, then as many as can be; ties go by least travel, then by row. Problems: that of the start's row;
 * argument-not-usable for a start left after one must be back, and for more than 100 stops.
 */
export function planRun(
  stops: readonly Stop[],
  minutesBetween: (from: number, to: number) => number,
  leaveAt: number,
  returns: boolean,
): Outcome<RunPlan> {
  const start = stops[0]!;
  if (start.problem !== null) return { ok: false, problem: start.problem };
  const tried = stops.map((_, row) => row).filter((row) => stops[row]!.problem === null);
  if (tried.length - 1 > MOST_STOPS) {
    const expected = `at most ${MOST_STOPS} of them, such as those of one day`;
    return fail("argument-not-usable", { argument: "stops", given: `${tried.length - 1} stops`, expected });
  }
  const opening = start.opening ?? [];
  const arriveMs = msFromDays(leaveAt);
  const fromMs = Math.min(...opening.map(({ from }) => msFromDays(from)));
  const readyMs = arriveMs + Math.round(start.minutes * MS_A_MINUTE);
  const leaveMs = fromMs === Infinity ? readyMs : Math.max(readyMs, fromMs);
  const backByMs =
    returns && opening.length > 0 ? Math.max(...opening.map(({ until }) => msFromDays(until))) : Infinity;
  if (leaveMs > backByMs) {
    const expected = `a time that leaves some of the day, as one must be back at ${start.said} while it is open`;
    return fail("argument-not-usable", { argument: "leaveAt", given: sayClock(arriveMs / MS_A_DAY), expected });
  }
  const run: Run = {
    stopCount: tried.length - 1,
    travelMs: tried.map((from) => tried.map((to) => Math.round(minutesBetween(from, to) * MS_A_MINUTE))),
    visitMs: tried.map((row, index) => (index === 0 ? 0 : Math.round(stops[row]!.minutes * MS_A_MINUTE))),
    beginMs: tried.map((row) => beginTimes(stops[row]!)),
    rank: [0, ...urgencyRanks(tried.slice(1).map((row) => stops[row]!.due))],
    leaveMs,
    backByMs,
    returns,
  };

  const { order, endMs, travelMs, isProved } = bestOrder(run);
  const visits: Visit[] = [visit(start, arriveMs, leaveMs - readyMs, leaveMs)];
  let nowMs = leaveMs;
  let last = 0;
  for (const index of order) {
    const reachedMs = nowMs + run.travelMs[last]![index]!;
    nowMs = visitEnd(run, index, reachedMs);
    visits.push(visit(stops[tried[index]!]!, reachedMs, nowMs - run.visitMs[index]! - reachedMs, nowMs));
    last = index;
  }
  const met = new Set(order.map((index) => tried[index]!));
  const unmet = stops.flatMap((stop, row) => {
    if (row === 0 || met.has(row)) return [];
    return [{ stop, problem: stop.problem ?? notMet(run, tried.indexOf(row), stop) }];
  });
  return succeed({
    visits,
    unmet,
    backAt: returns ? endMs / MS_A_DAY : null,
    travelMinutes: travelMs / MS_A_MINUTE,
    isProved,
  });
}

function visit(stop: Stop, arriveMs: number, waitMs: number, leaveMs: number): Visit {
  return { stop, arriveAt: arriveMs / MS_A_DAY, waitMinutes: waitMs / MS_A_MINUTE, leaveAt: leaveMs / MS_A_DAY };
}

function notMet(run: Run, index: number, stop: Stop): Problem {
  const evenAlone = orderCost(run, [index]).endMs === Infinity;
  return { reason: "stop-not-met", facts: { stop: stop.said, evenAlone } };
}
