import { systems } from "../../../shared/shoe-sizes.json";
import type { ShoeSystem } from "./shoeSystem";

/** The nearest size for a foot length in mm, the smaller where two are as near: to a half, Mondopoint to 5 mm. */
export function sizeOfFoot(footMm: number, system: ShoeSystem): number {
  const { perMm, plus, step } = systems[system];
  // Seven decimals settle a tie that the last digit of a division would decide.
  const steps = Math.round(((footMm * perMm + plus) / step) * 1e7) / 1e7;
  return Math.ceil(steps - 0.5) * step;
}
