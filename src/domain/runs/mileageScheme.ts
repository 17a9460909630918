import type { schemes } from "../../../shared/mileage-rates.json";

/** Whose rates, and for what one drives: a car or van where nothing else is said. */
export type MileageScheme = keyof typeof schemes;
