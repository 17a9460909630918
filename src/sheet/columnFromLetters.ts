/** The column, from 0, that the letters name; null where there are none. */
export function columnFromLetters(letters: string | undefined): number | null {
  if (letters === undefined || letters === "") return null;
  return [...letters.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
