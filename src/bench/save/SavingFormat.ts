/** A format that follows from what cells hold. */
export interface SavingFormat {
  /** The grid's name of it; of one that the file brought, it ends in its number in the order of their weight. */
  readonly id: string;
  readonly reference: string;
  /** For the first of its cells, with =. */
  readonly formula: string;
  readonly style: FormatStyle;
}

export interface FormatStyle {
  readonly bold: boolean;
  /** "#RRGGBB", or null. */
  readonly ink: string | null;
  readonly background: string | null;
}
