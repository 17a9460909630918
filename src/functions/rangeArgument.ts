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
  const rows: readonly (readonly unknown[])[] = isAllRows(raw) ? raw : [raw];
  const only = rows.length === 1 && rows[0]!.length <= 1;
  return only && isBlank(rows[0]![0]) ? null : rows;
}

/** A plain loop, as a table may have 100,000 rows and every() takes some times as long. */
function isAllRows(raw: readonly unknown[]): raw is readonly (readonly unknown[])[] {
  for (let row = 0; row < raw.length; row++) if (!Array.isArray(raw[row])) return false;
  return true;
}

function isBlank(raw: unknown): boolean {
  return raw === null || raw === undefined || raw === 0 || (typeof raw === "string" && raw.trim() === "");
}
