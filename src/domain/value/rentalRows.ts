import type { RentalRow } from "./rentalRow";

/** The rows of a pieces table as costs, in sheet order, each read when it is asked for. */
export interface RentalRows {
  readonly count: number;
  readonly at: (index: number) => RentalRow;
  readonly hasCurrencies: boolean;
}
