import type { Cell } from "../sheet/cell";
import { literalText } from "./literalText";
import { TEXT_FORMAT } from "./textFormat";

/** How to set one cell: the format before the content, the content, and a format that must wait until after it. */
export interface CellWriting {
  /** null leaves the format as it is. */
  readonly formatBefore: string | null;
  /** As `Range.formulas` takes it: a formula, a value, or "" to clear. */
  readonly content: string | number | boolean;
  readonly formatAfter: string | null;
}

/**
 * The steps that make a cell hold exactly this.
 *
 * A cell formatted as text turns a number or a formula that is set into text. So the format is General while the
 * content is set; where the wanted format is the text format all the same, it comes afterwards, which converts nothing.
 *
 * @param wanted The value, or the formula where there is one.
 * @param formatNow The number format that the cell has.
 */
export function cellWriting(
  wanted: { readonly value: Cell; readonly formula?: string; readonly numberFormat?: string },
  formatNow: string,
): CellWriting {
  const { value, formula, numberFormat } = wanted;
  if (formula === undefined && (value === null || typeof value === "string")) {
    return { formatBefore: numberFormat ?? null, content: value ? literalText(value) : "", formatAfter: null };
  }
  const content = formula ?? (typeof value === "object" && value !== null ? value.error : (value as number | boolean));
  if (numberFormat === TEXT_FORMAT) return { formatBefore: "General", content, formatAfter: TEXT_FORMAT };
  const mustLeaveText = numberFormat === undefined && formatNow === TEXT_FORMAT;
  return { formatBefore: mustLeaveText ? "General" : (numberFormat ?? null), content, formatAfter: null };
}
