/** The fields, of whatever kind of table, whose cells are days, so that a column of them keeps a date format in a result. */
export const dateFields: ReadonlySet<string> = new Set([
  "out",
  "due",
  "extendedTo",
  "back",
  "shoot",
  "holdUntil",
  "fitting",
  "collected",
  "asked",
  "neededBy",
  "answered",
  "bought",
  "refunded",
  "date",
]);
