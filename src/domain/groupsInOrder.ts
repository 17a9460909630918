/**
 * Rows in groups of the same key, the lowest key first, each group in the order of the rows.
 *
 * Quicker than sorting where there are few different keys, such as days: 100,000 rows are not compared with one another.
 */
export function groupsInOrder<Row>(rows: readonly Row[], keyOf: (row: Row) => number): readonly Row[][] {
  const groupOf = new Map<number, Row[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groupOf.get(key);
    if (group === undefined) groupOf.set(key, [row]);
    else group.push(row);
  }
  const keys = [...groupOf.keys()].sort((a, b) => (a < b ? -1 : 1));
  return keys.map((key) => groupOf.get(key)!);
}
