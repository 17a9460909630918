import type { FieldValue } from "../fieldValue";

/** One row of a list of shoes. */
export interface ShoeRow {
  readonly name: FieldValue<string>;
  /** The foot length its size stands for. */
  readonly footMm: FieldValue<number>;
  readonly isOutside: FieldValue<boolean>;
  /** null counts as one. */
  readonly pairs: FieldValue<number>;
  /** What a sentence calls the cells of size and place. */
  readonly sizeCell: string;
  readonly whereCell: string;
}
