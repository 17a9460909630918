import type { FieldValue } from "../fieldValue";
import type { GarmentKind } from "./garmentKind";

/** One row of pieces to carry, as far as weight goes. */
export interface CarriedPiece {
  /** The weight of one piece in grams; null where the sheet has none. */
  readonly grams: FieldValue<number>;
  /** Whether the sheet itself says that its weight is a guess. */
  readonly isGuess: boolean;
  /** The kind, read where there is no weight or the reader was asked for all; null where no known kind is named, or a problem. */
  readonly kind: FieldValue<GarmentKind>;
  /** How many the row stands for; null counts as 1. */
  readonly quantity: FieldValue<number>;
  /** What a sentence about the row's kind names: the heading with the row, and the text as typed ("" where blank). */
  readonly where: string;
  readonly named: string;
  /** Whether the kind is named under Kind, and not by the description. */
  readonly isNamedAsKind: boolean;
}

/** The rows to carry in sheet order, each read when it is asked for. */
export interface CarriedPieces {
  readonly count: number;
  readonly at: (index: number) => CarriedPiece;
}
