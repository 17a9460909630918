import type { WaitKind } from "./daySchedule";
import type { Hold } from "./hold";

/** Holds a step back until then, if nothing holds it longer; what is named first wins a tie. */
export function holdBack(hold: Hold, untilSeconds: number, kind: WaitKind, look: number, talent = -1): void {
  if (untilSeconds <= hold.untilSeconds) return;
  hold.untilSeconds = untilSeconds;
  hold.kind = kind;
  hold.look = look;
  hold.talent = talent;
}
