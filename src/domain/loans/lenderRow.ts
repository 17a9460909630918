import type { Terms } from "../dates/terms/terms";
import type { FieldValue } from "../fieldValue";
import type { OpeningSpan } from "./openingSpan";

/**
 * One row of a lenders table, as read.
 *
 * A field is null where the cell is blank and where the sheet has no such column; it is a problem where the cell cannot be read.
 */
export interface LenderRow {
  /** Index of the row in the range as passed, from 0. */
  readonly row: number;
  readonly lender: FieldValue<string>;
  readonly kind: FieldValue<string>;
  readonly contact: FieldValue<string>;
  readonly address: FieldValue<string>;
  /** What this lender's loans are counted by where a piece says nothing of its own. */
  readonly terms: FieldValue<Terms>;
  /** Bits, bit 0 Monday to bit 6 Sunday; null where the lender says nothing, which is not the same as never closed. */
  readonly closedWeekdays: FieldValue<number>;
  /** Working days a parcel takes to the lender. */
  readonly courierDays: FieldValue<number>;
  readonly opening: FieldValue<readonly OpeningSpan[]>;
  /** The time by which a parcel must be with the courier, as a fraction of a day. */
  readonly cutOff: FieldValue<number>;
  /** Until when the lender takes parcels in, as a fraction of a day. */
  readonly receivesUntil: FieldValue<number>;
}
