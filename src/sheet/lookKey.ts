/**
 * What two spellings of one look number share: "Look 07", "look 7", "#7" and 7 are one look, "7a" and "7 A" another,
 * and 1-2 is not 12.
 *
 * "" where neither a letter nor a figure is left to tell a look by.
 */
export function lookKey(typed: string): string {
  const plain = typed.normalize("NFKD").toLowerCase().trim();
  const number = plain.replace(/^(?:look|tenue|outfit)(?!\p{L})\s*(?:(?:no|nr|n)(?!\p{L}))?/u, "");
  return (/[\p{L}\p{N}]/u.test(number) ? number : plain)
    .replace(/(\d)[^\p{L}\p{N}]+(?=\d)/gu, "$1.")
    .replace(/[^\p{L}\p{N}.]+|^\.+|\.+$/gu, "")
    .replace(/^0+(?=\d)/, "");
}
