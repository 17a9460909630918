/**
 * The letters and digits of a name: two spellings that differ only in case, accents, spacing or punctuation share it.
 *
 * "" where a name has neither.
 */
export function nameKey(name: string): string {
  return name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "");
}
