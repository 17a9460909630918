/** The names in a cell that may hold several, parted by a comma, a semicolon, "&", "+" or the word "and" (also "et", "und"). */
export function readTalents(text: string): readonly string[] {
  return text
    .split(/[,;&+\n]|\s(?:and|et|und)\s/i)
    .map((name) => name.trim())
    .filter((name) => name !== "");
}
