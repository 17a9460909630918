import { bagPackings } from "./bench/bagPackings.mjs";
import { dayPlans } from "./bench/dayPlans.mjs";
import { lookOrders } from "./bench/lookOrders.mjs";
import { runOrders } from "./bench/runOrders.mjs";
import { sheetChecks } from "./bench/sheetChecks.mjs";
import { singleCells } from "./bench/singleCells.mjs";
import { wholeTables } from "./bench/wholeTables.mjs";

// Speed, as ratios to a peer in the same process where there is one, alternating with it, so that a slow machine slows both.
// Never a test: a busy machine fails nothing.

for (const part of [wholeTables, singleCells, dayPlans, lookOrders, bagPackings, runOrders, sheetChecks]) {
  await part();
  console.log();
}
