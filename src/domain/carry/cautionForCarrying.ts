import { units } from "../../../shared/lifting.json";
import type { CarryingCaution } from "./carryingCaution";
import { liftLimit } from "./lifting/liftLimit";

/** 50 lb: what a full pull carried by hand in a city runs to. Common practice, no source, and no safe load. */
const PRACTICE_GRAMS = 50 * 453.59237;
const GRAMS_PER_KG = 1000;

/**
 * The caution that a bag, or all that one person carries, calls for; null where its lifting index is at most 1.
 *
 * The index is that of the easiest lift there is, once, close to the body, at knuckle height, with the grip of soft bags: any other
 * lift of the same weight has a higher one. Null is therefore no promise that a load is safe.
 */
export function cautionForCarrying(grams: number): CarryingCaution | null {
  const { reach, height, leastTravel } = units.kg;
  const limitKg = liftLimit({
    unit: "kg",
    horizontal: reach,
    vertical: height,
    travel: leastTravel,
    angle: 0,
    liftsPerMinute: 0,
    hours: 1,
    grip: "poor",
  });
  const liftIndex = grams / (limitKg * GRAMS_PER_KG);
  return liftIndex > 1 ? { grams, liftIndex, isOverPractice: grams > PRACTICE_GRAMS } : null;
}
