/** What of one column stays in sight: cells that show one of the values, or that pass the tests. */
export interface SavingFilterColumn {
  /** From the first column that is filtered. */
  readonly offset: number;
  /** As the cells show them; null where tests decide. */
  readonly values: readonly string[] | null;
  readonly isBlankShown: boolean;
  /** At most two, as the file has room for. */
  readonly tests: readonly FilterTest[];
  readonly isEveryTest: boolean;
}

export interface FilterTest {
  readonly operator: "equal" | "notEqual" | "greaterThan" | "greaterThanOrEqual" | "lessThan" | "lessThanOrEqual";
  /** With * and ? for what may stand there. */
  readonly value: string;
}

/** A filter over cells, and the rows it hides. */
export interface SavingFilter {
  readonly reference: string;
  readonly columns: readonly SavingFilterColumn[];
}
