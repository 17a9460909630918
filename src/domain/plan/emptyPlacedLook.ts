import { STEPS_A_LOOK } from "./daySchedule";
import type { WaitKind } from "./daySchedule";
import type { PlacedLook } from "./placedLook";

/** A record for `placeLook` to write to. */
export function emptyPlacedLook(): PlacedLook {
  const numbers = (): number[] => new Array<number>(STEPS_A_LOOK).fill(0);
  return {
    fromSeconds: numbers(),
    untilSeconds: numbers(),
    waitKind: new Array<WaitKind>(STEPS_A_LOOK).fill("call"),
    waitLook: numbers(),
    waitTalent: numbers(),
    station: numbers(),
    hold: { untilSeconds: 0, kind: "call", look: -1, talent: -1 },
  };
}
