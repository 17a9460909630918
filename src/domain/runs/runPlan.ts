import type { Problem } from "../problem";
import type { Stop } from "./stop";

/** One stop that is met. */
export interface Visit {
  readonly stop: Stop;
  /** As fractions of a day, past 1 after midnight. */
  readonly arriveAt: number;
  readonly leaveAt: number;
  /** From arriving until the visit begins. */
  readonly waitMinutes: number;
}

/** A run in its order. */
export interface RunPlan {
  /** The start first, where one is from the time given until one leaves. */
  readonly visits: readonly Visit[];
  /** The stops that cannot be met, in the order of the sheet, each with why. */
  readonly unmet: readonly { readonly stop: Stop; readonly problem: Problem }[];
  /** When the start is reached again; null where the run ends at its last stop. */
  readonly backAt: number | null;
  readonly travelMinutes: number;
  /** Whether it is sure that no order is better; else it is the best one found. */
  readonly isProved: boolean;
}
