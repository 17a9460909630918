/** An error value as it stands in a cell, such as #N/A. */
export interface CellError {
  readonly error: string;
}

/** What a cell holds, whichever host sent it: blank is always null, an error is always a CellError. */
export type Cell = number | string | boolean | null | CellError;
