/** A heading that was given its meaning by hand: the field, and the column's heading as typed; null where no column is that field. */
export interface ColumnChoice {
  readonly field: string;
  readonly heading: string | null;
}
