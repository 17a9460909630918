import type { UnreadFields } from "../unreadFields";

/** A request to chase, or one of which it cannot be told. */
export interface ChaseRow {
  /** Index of the row in the range as passed, from 0. */
  readonly row: number;
  readonly unread?: UnreadFields;
}
