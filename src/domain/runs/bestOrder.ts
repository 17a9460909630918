import { exactOrder } from "./exactOrder";
import { improvedOrder } from "./improvedOrder";
import type { Run } from "./run";
import type { RunOrder } from "./runOrder";

/** More stops than these are not tried exactly: their sets no longer fit. */
const MOST_EXACT = 20;
/** By the fourth power of the number of stops: enough to bound the exact search well, and little beside it. */
const STEPS_BEFORE_EXACT = 6;
/** About a third of a second of one core. */
const STEPS = 6_000_000;

/** The best order of a run: proved where the exact search can be finished, else the best one found. */
export function bestOrder(run: Run): RunOrder {
  if (run.stopCount > MOST_EXACT) return improvedOrder(run, STEPS);
  const found = improvedOrder(run, STEPS_BEFORE_EXACT * run.stopCount ** 4);
  return exactOrder(run, found) ?? found;
}
