/** Names that one system keeps for its devices, whatever ending stands behind them. */
const DEVICES = /^(?:con|prn|aux|nul|com\d|lpt\d)$/i;
const LONGEST = 80;

/**
 * A file name that every system takes, out of any text: letters, figures, spaces, dashes and full stops within it.
 *
 * `ending` is put behind it with a full stop. A text with nothing usable in it gives "hand-over".
 */
export function safeFileName(text: string, ending: string): string {
  const plain = [...text.normalize("NFC").replace(/[^\p{L}\p{M}\p{N} .-]+/gu, " ")]
    .slice(0, LONGEST)
    .join("")
    .replace(/\s+/g, " ")
    .replace(/\.{2,}/g, ".")
    .replace(/^[ .-]+|[ .-]+$/g, "");
  const base = plain.split(".")[0]?.trim() ?? "";
  const name = plain === "" ? "hand-over" : DEVICES.test(base) ? `hand-over ${plain}` : plain;
  return `${name}.${ending}`;
}
