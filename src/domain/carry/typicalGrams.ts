import { grams } from "../../../shared/garment-weights.json";
import type { GarmentKind } from "./garmentKind";

const GRAMS: Readonly<Partial<Record<GarmentKind, number>>> = grams;

/**
 * What one garment of a kind typically weighs, in grams (a pair of shoes is one); null for a kind that varies too much.
 *
 * Sources beside each figure in shared/garment-weights.json: a published table for clothes, none for shoes, bags and small things.
 */
export function typicalGrams(kind: GarmentKind): number | null {
  return GRAMS[kind] ?? null;
}
