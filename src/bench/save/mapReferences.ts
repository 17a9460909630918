const REFERENCES =
  /"(?:[^"]|"")*"|\[(?:[^[\]]|\[[^\]]*\])*\]|(?<![\p{L}\p{N}_.$])((?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?|\$?\d{1,7}:\$?\d{1,7}|\$?[A-Z]{1,3}:\$?[A-Z]{1,3})(?![\p{L}\p{N}_.(!])/gu;

/**
 * A formula with each plain reference replaced by what `map` makes of it; texts and structured references stay.
 *
 * @param map Is given the sheet's name, or null where none is written, and the reference.
 */
export function mapReferences(formula: string, map: (sheet: string | null, reference: string) => string): string {
  return formula.replace(REFERENCES, (whole, prefix: string | undefined, reference: string | undefined) => {
    if (reference === undefined) return whole;
    return (prefix ?? "") + map(prefix === undefined ? null : sheetName(prefix), reference);
  });
}

function sheetName(prefix: string): string {
  const name = prefix.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replace(/''/g, "'") : name;
}
