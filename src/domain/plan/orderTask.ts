import type { OrderRules } from "./orderRules";

/** An order is sought that keeps the rules and costs least. */
export interface OrderTask extends OrderRules {
  /** What an order that keeps the rules costs. The list is reused: read it, never keep it. */
  readonly cost: (order: readonly number[]) => number;
  /** A cheap better order of the same things, or the order itself; for what has an improvement of its own. */
  readonly polish?: (order: readonly number[]) => readonly number[];
}
