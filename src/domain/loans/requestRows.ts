import type { RequestRow } from "./requestRow";

/** The rows of a requests table in sheet order, each read when it is asked for. */
export interface RequestRows {
  readonly count: number;
  /** The row at a place from 0 up to count; each call reads it anew. */
  readonly at: (index: number) => RequestRow;
}
