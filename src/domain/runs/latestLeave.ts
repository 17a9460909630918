import type { DoorLimits } from "./doorLimits";
import { latestArrival } from "./latestArrival";
import { type LeastWalk, nearWalks } from "./nearWalks";
import type { Run } from "./run";
import { walkRules } from "./walkRules";

/** Enough that walks seldom gain by meeting a stop twice. */
const REMEMBERED = 8;

/**
 * The latest that a place may be left, at most, for so many more stops to be met in time (where `orMore`, so many or more), none of them
 * met already: by walks reckoned from the end of the run. -Infinity where they cannot be.
 */
export function latestLeave(run: Run, limits: DoorLimits, orMore: boolean): LeastWalk {
  const { overByMs, arriveFromMs, arriveByMs, mustFollow } = limits;
  const least = nearWalks(
    walkRules(run, REMEMBERED, mustFollow),
    run.stopCount,
    {
      atEnd: (place) => (run.returns && place !== 0 ? run.travelMs[place]![0]! : 0) - overByMs,
      visit: (stop, cost) => {
        const byMs = Math.min(latestArrival(run, stop, -cost), arriveByMs[stop]!);
        return byMs < arriveFromMs[stop]! ? Infinity : -byMs;
      },
      leave: (place, next, cost) => cost + run.travelMs[place]![next]!,
    },
    orMore,
  );
  return (place, toCome, met) => -least(place, toCome, met);
}
