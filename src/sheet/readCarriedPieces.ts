import type { CarriedPieces } from "../domain/carry/carriedPieces";
import type { GarmentKind } from "../domain/carry/garmentKind";
import type { FieldValue } from "../domain/fieldValue";
import { isProblem } from "../domain/isProblem";
import { argumentAt } from "./argumentAt";
import { gramsPerUnit } from "./gramsPerUnit";
import { readKind } from "./readKind";
import { readPieces } from "./readPieces";
import type { Table } from "./table";

/**
 * The rows of a pieces table with what they weigh.
 *
 * A weight is in the unit its cell names, else in the unit its heading names ("Weight (g)"), else in that of `gramsPerBareUnit`.
 * Where it is blank or 0, or for every row if `allKinds`, the kind is read from Kind; where that is blank, from the description.
 */
export function readCarriedPieces(table: Table, gramsPerBareUnit: number, allKinds = false): CarriedPieces {
  const pieces = readPieces(table);
  const unitOfHeading = table.hintOf?.["weight"]?.unit ?? null;
  const gramsPerNumber = unitOfHeading === null ? gramsPerBareUnit : (gramsPerUnit(unitOfHeading) ?? gramsPerBareUnit);
  // Kinds repeat down a sheet, and reading one costs more than all the rest of the row.
  const kindOfText = new Map<string, GarmentKind | null>();
  const kindOf = (text: string): GarmentKind | null => {
    let kind = kindOfText.get(text);
    if (kind === undefined) kindOfText.set(text, (kind = readKind(text)));
    return kind;
  };
  return {
    count: pieces.count,
    at: (index) => {
      const row = pieces.at(index);
      const { weight, quantity } = row;
      const grams: FieldValue<number> =
        weight === null || isProblem(weight) ? weight : (weight.grams ?? weight.bareAmount! * gramsPerNumber);
      const isGuess = weight !== null && !isProblem(weight) && weight.isGuess;
      if (grams !== null && !allKinds)
        return { grams, isGuess, kind: null, quantity, where: "", named: "", isNamedAsKind: false };
      const typed = row.kind;
      const isNamedAsKind = typed !== null;
      const named = typed ?? row.description;
      const kind = typeof named === "string" ? kindOf(named) : named;
      // Most rows need no sentence, and making its words costs more than all the rest of the row.
      const isSaid = grams === null && (kind === null || kind === "other");
      const field = named === null ? "weight" : isNamedAsKind ? "kind" : "description";
      const column = table.columnOf[field] ?? table.columnOf["kind"] ?? table.columnOf["description"] ?? 0;
      return {
        grams,
        isGuess,
        kind,
        quantity,
        where: isSaid ? argumentAt(table, row.row, column) : "",
        named: typeof named === "string" ? named : "",
        isNamedAsKind,
      };
    },
  };
}
