import { isProblem } from "../isProblem";
import type { Problem } from "../problem";
import type { ResultCell, ResultTable } from "../resultTable";
import type { ShoeRow } from "./shoeRow";
import { tapeMetres } from "./tapeMetres";

/**
 * The tape for each row of shoes: painter's tape under all, and cloth gaffer tape over it where they are worn outside.
 *
 * A size or a place that is blank or cannot be read stands as a problem in the figures that depend on it.
 */
export function tapeTable(shoes: readonly ShoeRow[], tapeWidthMm: number, overlapMm: number): ResultTable {
  const rows = shoes.map((shoe): ResultCell[] => {
    const foot = shoe.footMm ?? missing(shoe.sizeCell, "the shoe size, such as 38");
    const isOutside = shoe.isOutside ?? missing(shoe.whereCell, "inside or outside");
    const metres =
      [foot, shoe.pairs].find(isProblem) ?? tapeMetres(foot as number, Number(shoe.pairs ?? 1), tapeWidthMm, overlapMm);
    if (isProblem(isOutside)) return [shoe.name, isOutside, metres, isOutside];
    return [shoe.name, isOutside ? 2 : 1, metres, isOutside ? metres : 0];
  });
  return {
    headings: ["Shoes", "Layers", "Painter's tape", "Gaffer tape"],
    formats: ["as is", "as is", "as is", "as is"],
    rows,
  };
}

function missing(argument: string, expected: string): Problem {
  return { reason: "argument-missing", facts: { argument, expected } };
}
