import type { UnreadFields } from "../unreadFields";

/** A row that is due in a span of days, or one of which it cannot be told because cells cannot be read. */
export interface DueRow {
  /** Index of the row in the range as passed, from 0. */
  readonly row: number;
  /** The day it is due; null where that cannot be told. */
  readonly due: number | null;
  /** The cells that keep it from being told, none where it is. */
  readonly unread?: UnreadFields;
}
