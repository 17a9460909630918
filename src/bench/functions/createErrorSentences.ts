/** Where a formula stands. */
export interface FormulaPlace {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/**
 * The sentences behind the errors that our functions returned, by the cell that shows them.
 * The engine keeps only the code of an error, so the sentence is kept beside it.
 */
export interface ErrorSentences {
  readonly at: (place: FormulaPlace) => string | undefined;
  /** Forgets what the formula at a place said before, over the area it filled. */
  readonly forget: (place: FormulaPlace) => void;
  /** Forgets everything: another workbook is open, or cells moved. */
  readonly forgetAll: () => void;
  readonly keep: (anchor: FormulaPlace, rowOffset: number, columnOffset: number, sentence: string) => void;
}

export function createErrorSentences(): ErrorSentences {
  const byAnchor = new Map<string, Map<string, string>>();
  const key = (sheetId: string, row: number, column: number) => `${sheetId} ${row} ${column}`;
  return {
    at: ({ sheetId, row, column }) => {
      const cell = key(sheetId, row, column);
      const own = byAnchor.get(cell)?.get(cell);
      if (own !== undefined) return own;
      for (const said of byAnchor.values()) {
        const sentence = said.get(cell);
        if (sentence !== undefined) return sentence;
      }
      return undefined;
    },
    forget: ({ sheetId, row, column }) => void byAnchor.delete(key(sheetId, row, column)),
    forgetAll: () => byAnchor.clear(),
    keep: (anchor, rowOffset, columnOffset, sentence) => {
      const from = key(anchor.sheetId, anchor.row, anchor.column);
      const said = byAnchor.get(from) ?? new Map<string, string>();
      said.set(key(anchor.sheetId, anchor.row + rowOffset, anchor.column + columnOffset), sentence);
      byAnchor.set(from, said);
    },
  };
}
