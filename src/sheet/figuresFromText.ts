/** What a number's text says: the amount, or both readings where a single separator can mean either. */
export type Figures =
  | { readonly reads: "one way"; readonly amount: number }
  | { readonly reads: "two ways"; readonly grouped: number; readonly decimal: number };

const GROUPS = "[ \\u00a0\\u202f\\u2009'’]";
const SPACED = new RegExp(`^(\\d{1,3}(?:${GROUPS}\\d{3})+)(?:[.,](\\d+))?$`);
const COMMA_GROUPED = /^(\d{1,3}(?:,\d{3})+)(?:\.(\d+))?$/;
const DOT_GROUPED = /^(\d{1,3}(?:\.\d{3})+)(?:,(\d+))?$/;
const PLAIN = /^(\d+)?(?:[.,](\d+))?$/;

/**
 * Reads digits with separators, without sign or unit; null where they are no number.
 *
 * With two sorts of separator the last is the decimal one; groups have three digits. Spaces and apostrophes only group.
 * One comma or point with exactly three digits behind it and one to three (not a lone or leading 0) before it reads two ways.
 */
export function figuresFromText(text: string): Figures | null {
  if (text === "" || text.length > 30) return null;
  const grouped = SPACED.exec(text) ?? COMMA_GROUPED.exec(text) ?? DOT_GROUPED.exec(text);
  if (grouped !== null) {
    const whole = grouped[1]!.replace(/\D/g, "");
    const amount = Number(`${whole}.${grouped[2] ?? "0"}`);
    const single = /^(\d{1,3})[.,](\d{3})$/.exec(text);
    if (single === null) return { reads: "one way", amount };
    const decimal = Number(`${single[1]}.${single[2]}`);
    return single[1]!.startsWith("0")
      ? { reads: "one way", amount: decimal }
      : { reads: "two ways", grouped: amount, decimal };
  }
  const plain = PLAIN.exec(text);
  if (plain === null || (plain[1] === undefined && plain[2] === undefined)) return null;
  return { reads: "one way", amount: Number(`${plain[1] ?? "0"}.${plain[2] ?? "0"}`) };
}
