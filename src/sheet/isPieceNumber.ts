/** At most a short word before the first figure: "P12", "SH-004", "7b"; "White shirt 2" is a description. */
const NUMBER = /^\p{L}{0,6}[\s\-–._/#]*\d[\p{L}\p{N}\-–._/]*$/u;

/** Whether a text is a number that tells one piece from all others, and not what the piece is. */
export function isPieceNumber(text: string): boolean {
  return NUMBER.test(text);
}
