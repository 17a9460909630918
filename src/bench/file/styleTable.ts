import type { IStyleData } from "@univerjs/core";

/** Gives equal styles one id, so that a sheet of thousands of cells keeps a handful. */
export interface StyleTable {
  /** The id of a style, or undefined for the plain one. */
  readonly idOf: (style: IStyleData) => string | undefined;
  readonly styles: () => Record<string, IStyleData>;
}

export function styleTable(): StyleTable {
  const idByText = new Map<string, string>();
  const styles: Record<string, IStyleData> = {};
  return {
    idOf: (style) => {
      const text = JSON.stringify(style);
      if (text === "{}") return undefined;
      const known = idByText.get(text);
      if (known !== undefined) return known;
      const id = `s${idByText.size}`;
      idByText.set(text, id);
      styles[id] = style;
      return id;
    },
    styles: () => styles,
  };
}
