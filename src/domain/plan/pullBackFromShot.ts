import { CHANGE, HAIR_MAKEUP } from "./daySchedule";
import type { WaitKind } from "./daySchedule";

/**
 * Moves preparation that the plan would end after a shot which has already begun: it must have ended by then.
 *
 * What has happened outranks the plan, so the moved steps may stand before call or beside other work.
 */
export function pullBackFromShot(
  fromSeconds: number[],
  untilSeconds: number[],
  waitKind: WaitKind[],
  firstStep: number,
  makeupFirst: boolean,
  shotAtSeconds: number,
): void {
  const lastFirst = makeupFirst ? [CHANGE, HAIR_MAKEUP] : [HAIR_MAKEUP, CHANGE];
  let limitSeconds = shotAtSeconds;
  for (const step of lastFirst) {
    const at = firstStep + step;
    if (untilSeconds[at]! > limitSeconds) {
      const lengthSeconds = untilSeconds[at]! - fromSeconds[at]!;
      untilSeconds[at] = limitSeconds;
      fromSeconds[at] = limitSeconds - lengthSeconds;
      waitKind[at] = "shot at";
    }
    limitSeconds = fromSeconds[at]!;
  }
}
