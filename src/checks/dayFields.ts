import type { TableKind } from "../sheet/tableKind";

/** The columns that hold a date and nothing else, by kind of table. */
export const dayFields: Readonly<Partial<Record<TableKind, readonly string[]>>> = {
  pieces: ["out", "due", "shoot", "back", "extendedTo", "holdUntil"],
  requests: ["asked", "neededBy", "answered", "holdUntil"],
  looks: ["date"],
  day: ["date"],
  receipts: ["bought", "refunded"],
  stops: ["due"],
};
