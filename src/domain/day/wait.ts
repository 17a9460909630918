import type { WaitKind } from "../plan/daySchedule";

/** What held a step back, with the look and the talent or the piece it names; null where it names none. */
export interface Wait {
  readonly kind: WaitKind;
  readonly look: string | number | null;
  readonly talent: string | null;
  readonly piece: string | null;
}
