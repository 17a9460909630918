import { isProblem } from "../../isProblem";
import type { ResultTable } from "../../resultTable";
import { gramsInUnit } from "../gramsInUnit";
import type { PackedBags } from "./packedBags";

/** The packed pieces as they spill, weights in a unit of so many grams. */
export function bagsTable({ pieces }: PackedBags, gramsPerUnit: number): ResultTable {
  return {
    headings: ["Piece", "Weight", "Bag"],
    formats: [],
    rows: pieces.map(({ label, grams, bag }) => [
      label,
      isProblem(grams) ? grams : gramsInUnit(grams, gramsPerUnit),
      bag,
    ]),
  };
}
