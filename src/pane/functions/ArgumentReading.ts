/** What was typed for one argument, as the formula writes it and as the function gets it. */
export type ArgumentReading =
  | { readonly kind: "blank" }
  /** A value or a reference that can be looked at before it is inserted. */
  | { readonly kind: "known"; readonly formula: string; readonly value: unknown }
  /** Part of a formula whose value only the workbook's own calculation tells. */
  | { readonly kind: "unknown"; readonly formula: string; readonly why: string }
  /** One sentence that says what is wrong and what would be right. */
  | { readonly kind: "wrong"; readonly sentence: string };
