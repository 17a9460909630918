/** One column of a table, and what it was read as. */
export interface ColumnReading {
  /** Index into the table's columns. */
  readonly column: number;
  /** As typed; "" where the heading cell is blank. */
  readonly heading: string;
  /** The field it was read as, or null. */
  readonly field: string | null;
  /** The field that it and another heading could both be, or null; such a field is read from neither. */
  readonly contested: string | null;
  /** Whether somebody chose so, in place of what the heading says by itself. */
  readonly isChosen: boolean;
  /** The first different cells under it, as shown to the user. */
  readonly samples: readonly string[];
  /** Why no choice can be made for it, or null. */
  readonly obstacle: "no heading" | "heading twice" | null;
}
