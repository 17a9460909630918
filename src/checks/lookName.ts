/** A look as a sentence says it after the word look: "Look 07" is 07, "Beach" stays. */
export function lookName(look: string): string {
  return look.replace(/^looks?(?!\p{L})[\s.:#-]*(?=[\p{L}\p{N}])/iu, "");
}
