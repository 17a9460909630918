import type { FieldValue } from "../fieldValue";

/**
 * One row of a pieces table, as read.
 *
 * A field is null where the cell is blank, where the sheet has no such column, and where the reader was
 * not asked for it; it is a problem where the cell cannot be read. Days are whole serial days.
 */
export interface PieceRow {
  /** Index of the row in the range as passed, from 0. */
  readonly row: number;
  readonly piece: FieldValue<string>;
  readonly description: FieldValue<string>;
  readonly kind: FieldValue<string>;
  readonly lender: FieldValue<string>;
  readonly look: FieldValue<string>;
  readonly talent: FieldValue<string>;
  /** How many the row stands for; null counts as 1. */
  readonly quantity: FieldValue<number>;
  /** How many came back; null, once the piece is back, means all. */
  readonly quantityBack: FieldValue<number>;
  readonly conditionOut: FieldValue<string>;
  readonly conditionBack: FieldValue<string>;
  /** The value of one piece. */
  readonly value: FieldValue<number>;
  /** The value of the whole row, where the sheet says it so. */
  readonly totalValue: FieldValue<number>;
  /** From the Currency column, else from the sign in the value, else from the heading. */
  readonly currency: FieldValue<string>;
  /** The weight of one piece: in grams where the cell names its unit, else the bare number. */
  readonly weight: FieldValue<{
    readonly grams: number | null;
    readonly bareAmount: number | null;
    readonly isGuess: boolean;
  }>;
  readonly out: FieldValue<number>;
  readonly due: FieldValue<number>;
  /** A later day the lender agreed to; where filled it stands in for the due day. */
  readonly extendedTo: FieldValue<number>;
  readonly back: FieldValue<number>;
  readonly shoot: FieldValue<number>;
  /** Lost, bought or gifted: no longer out, though it never came back. */
  readonly settled: FieldValue<boolean>;
}
