/** What papers to a lender say of it; "" where the workbook does not. */
export interface LenderCard {
  readonly name: string;
  readonly contact: string;
  readonly address: string;
  readonly terms: string;
  readonly cleaning: string;
}
