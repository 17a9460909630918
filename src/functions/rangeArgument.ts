/**
 * A range argument, whichever way the host passed it: rows of cells, or null where it is blank.
 *
 * Omitted, "", and a single blank cell are blank; an optional range left out arrives as 0 from some hosts,
 * so a lone 0 is blank too. A single value is a range of one cell; a flat list is one row. Cells stay as
 * the host sent them, since a table is too large to be copied.
 */
export function rangeArgument(raw: unknown): readonly (readonly unknown[])[] | null {
  if (!Array.isArray(raw)) return isBlank(raw) ? null : [[raw]];
  if (raw.length === 0) return null;
  const rows: readonly (readonly unknown[])[] = raw.every(Array.isArray) ? raw : [raw];
  const only = rows.length === 1 && rows[0]!.length <= 1;
  return only && isBlank(rows[0]![0]) ? null : rows;
}

function isBlank(raw: unknown): boolean {
  return raw === null || raw === undefined || raw === 0 || (typeof raw === "string" && raw.trim() === "");
}
