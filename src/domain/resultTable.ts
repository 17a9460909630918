import type { Problem } from "./problem";

/** How a column of a result is shown: a day, a time of day (past midnight it goes on counting), money, or as it is. */
export type ColumnFormat = "as is" | "date" | "time" | "money";

/** One cell of a result; a problem stands in its own cell and the other rows survive. null is blank. */
export type ResultCell = number | string | boolean | null | Problem;

/** A table that spills: always a heading row, then as many rows as match. */
export interface ResultTable {
  readonly headings: readonly string[];
  readonly formats: readonly ColumnFormat[];
  readonly rows: readonly (readonly ResultCell[])[];
}
