import type { TableKind } from "./tableKind";

/** The fields that hold a day and nothing else, by kind of table: a column of them keeps a date format in a result. */
export const dateFields: Readonly<Partial<Record<TableKind, readonly string[]>>> = {
  pieces: ["out", "due", "shoot", "back", "extendedTo", "holdUntil"],
  requests: ["asked", "neededBy", "answered", "holdUntil"],
  looks: ["date"],
  day: ["date"],
  receipts: ["bought", "refunded"],
  stops: ["due"],
};
