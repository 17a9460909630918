/** A workbook with changes that were not saved yet. */
export interface KeptCopy {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** When it was kept, in milliseconds of the computer's clock. */
  readonly keptAt: number;
}
