import type { FieldValue } from "../fieldValue";

/** What an answer comes to: nothing is lent, nothing is said yet, or something is lent. */
export type RequestAnswer = "no" | "waiting" | "given";

/**
 * One row of a requests table, as read.
 *
 * A field is null where the cell is blank and where the sheet has no such column; it is a problem where the cell cannot be
 * read. Days are whole serial days.
 */
export interface RequestRow {
  /** Index of the row in the range as passed, from 0. */
  readonly row: number;
  readonly asked: FieldValue<number>;
  readonly neededBy: FieldValue<number>;
  readonly answer: FieldValue<RequestAnswer>;
  readonly answered: FieldValue<number>;
  readonly collected: FieldValue<boolean>;
}
