/** The rows of a table that fit a condition, with their heading row: what a whole-table function takes. */
export function rowsWhere(table, condition) {
  return `_xlfn.VSTACK(${table}[#Headers],_xlfn._xlws.FILTER(${table}[],${condition}))`;
}

/** What a column of the table holds in the row whose key a cell names. */
export function inRowOf(table, keyHeading, key, heading) {
  return `_xlfn.XLOOKUP(${key},${table}[${keyHeading}],${table}[${heading}])`;
}

/** Some columns of a result that carries a table's own columns, by their headings; `added` stand behind those. */
export function columnsOf(formula, headings, wanted, added = []) {
  const all = [...headings, ...added];
  return `_xlfn.CHOOSECOLS(${formula},${wanted.map((text) => all.indexOf(text) + 1).join(",")})`;
}
