import { ArrayValueObject, ValueObjectFactory, type BaseValueObject } from "@univerjs/engine-formula";

interface ConstantReader {
  _rowCount: number;
  _columnCount: number;
  _formatValue(raw: unknown): unknown;
}

/** The engine (0.25.1) parts an array constant at every comma and semicolon, also inside a quoted text such as "10-13, 14-18". */
export function mendArrayConstants(): void {
  const prototype = ArrayValueObject.prototype as unknown as ConstantReader;
  const format = prototype._formatValue;
  prototype._formatValue = function (this: ConstantReader, raw) {
    if (typeof raw !== "string") return format.call(this, raw);
    const rows = partedOutsideQuotes(raw.slice(1, -1), ";").map((row) =>
      partedOutsideQuotes(row, ",").map((cell): BaseValueObject => ValueObjectFactory.create(cell.trim())),
    );
    this._rowCount = rows.length;
    this._columnCount = Math.max(...rows.map((row) => row.length));
    return rows;
  };
}

function partedOutsideQuotes(text: string, separator: string): string[] {
  const parts: string[] = [];
  let from = 0;
  let isQuoted = false;
  for (let at = 0; at < text.length; at++) {
    if (text[at] === '"') isQuoted = !isQuoted;
    if (isQuoted || text[at] !== separator) continue;
    parts.push(text.slice(from, at));
    from = at + 1;
  }
  return [...parts, text.slice(from)];
}
