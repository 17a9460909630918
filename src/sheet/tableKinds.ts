import type { TableKind } from "./tableKind";

/** Every kind of table, those with most rows to keep first. */
export const tableKinds: readonly TableKind[] = [
  "pieces",
  "lenders",
  "looks",
  "requests",
  "receipts",
  "stops",
  "shoes",
  "day",
];
