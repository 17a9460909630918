import { isProblem } from "../isProblem";
import type { Problem } from "../problem";
import type { ResultTable } from "../resultTable";
import { gramsInUnit } from "./gramsInUnit";
import type { KindWeight } from "./kindWeight";

/** What stands for the kind of pieces that have none. */
const NO_KIND = "(no kind)";

/** The weights by kind as they spill, in a unit of so many grams; Weight is Weighed and Estimated together. */
export function kindWeightsTable(weights: readonly KindWeight[], gramsPerUnit: number): ResultTable {
  const shown = (grams: number | Problem): number | Problem =>
    isProblem(grams) ? grams : gramsInUnit(grams, gramsPerUnit);
  return {
    headings: ["Kind", "Pieces", "Weight", "Weighed", "Estimated"],
    formats: [],
    rows: weights.map(({ kind, pieces, weighedGrams, estimatedGrams }) => {
      const grams = isProblem(weighedGrams)
        ? weighedGrams
        : isProblem(estimatedGrams)
          ? estimatedGrams
          : weighedGrams + estimatedGrams;
      return [kind ?? NO_KIND, pieces, shown(grams), shown(weighedGrams), shown(estimatedGrams)];
    }),
  };
}
