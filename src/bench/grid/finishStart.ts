import { LifecycleService, LifecycleStages } from "@univerjs/core";
import type { Grid } from "./createGrid";

/**
 * Starts the grid's last parts now. By itself it puts them off until three seconds after the first picture, and what is
 * typed into its name box before that goes nowhere.
 */
export function finishStart({ univer }: Grid): void {
  const lifecycle = univer.__getInjector().get(LifecycleService);
  // Going back is refused, and going further than it has drawn would be.
  if (lifecycle.stage === LifecycleStages.Rendered) lifecycle.stage = LifecycleStages.Steady;
}
