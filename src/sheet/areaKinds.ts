import type { TableKind } from "./tableKind";

/** An area that was given its kind by hand, or was set aside (null); known by its headings, since areas move. */
export interface AreaKind {
  readonly headings: readonly string[];
  readonly kind: TableKind | null;
}

/** What is kept in the workbook of such choices, as JSON: the name of a sheet to its areas. */
export type AreaKinds = Readonly<Record<string, readonly AreaKind[]>>;
