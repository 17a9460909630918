import type { CarryingCaution } from "../../domain/carry/carryingCaution";
import type { CellPosition } from "../../sheet/cellPosition";
import type { UntoldLine } from "./untoldLine";

/** What pieces weigh together, what was weighed apart from what is estimated by kind. */
export interface CarriedLoad {
  readonly pieces: number;
  readonly weighedGrams: number;
  readonly estimatedGrams: number;
}

/** What goes to one lender, or into one bag. */
export interface CarryPart extends CarriedLoad {
  /** "" for what names no lender, or is in no bag. */
  readonly name: string;
  /** Of the first of its pieces. */
  readonly at: CellPosition;
  readonly sheetName: string;
  /** null for what is no load to be lifted at once, and where none is called for. */
  readonly caution: CarryingCaution | null;
}

/** What is carried back on one day; what cannot be weighed is counted among the pieces. */
export interface CarryGroup extends CarriedLoad {
  /** The day it is due; on the day looked at what is late goes with it. */
  readonly day: number;
  readonly caution: CarryingCaution | null;
  readonly lenders: readonly CarryPart[];
  /** null where no piece of the day has a bag. */
  readonly bags: readonly CarryPart[] | null;
  /** What cannot be weighed and is in none of the weights. */
  readonly untold: readonly UntoldLine[];
}
