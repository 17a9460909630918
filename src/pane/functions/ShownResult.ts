/** A result as the pane shows it before the formula is inserted. */
export type ShownResult =
  | { readonly kind: "value"; readonly text: string }
  /** All rows, the headings first. */
  | { readonly kind: "table"; readonly rows: readonly (readonly string[])[] }
  /** What the cell would show, and the sentence behind it. */
  | { readonly kind: "error"; readonly code: string; readonly sentence: string };
