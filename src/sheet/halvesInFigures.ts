/** A text with its halves as figures: "7½" and "7 1/2" as "7.5", "½" as "0.5". */
export function halvesInFigures(text: string): string {
  return text.replace(/(\d?)(?:\s*½|(?<=\d)\s+1\/2)/, (_, whole: string) => `${whole || "0"}.5`);
}
