import type { WaitKind } from "./daySchedule";

/** How long a step is held back, and by what: the latest of everything it waits for. */
export interface Hold {
  untilSeconds: number;
  kind: WaitKind;
  look: number;
  talent: number;
}
