// English, French, Spanish, Italian, German, without accents.
// Italian "due" is missing since it is English too ("due in 7 days"), and "sept" since it is a month; parseTerms minds both.
const WORDS_OF_NUMBER: Readonly<Record<number, string>> = {
  0: "zero",
  1: "eins",
  2: "two deux dos zwei",
  3: "three trois tres tre drei",
  4: "four quatre cuatro quattro vier",
  5: "five cinq cinco cinque funf fuenf",
  6: "six seis sei sechs",
  7: "seven siete sette sieben",
  8: "eight huit ocho otto acht",
  9: "nine neuf nueve nove neun",
  10: "ten dix diez dieci zehn",
  12: "twelve douze doce dodici zwolf",
  14: "fourteen quatorze catorce quattordici vierzehn",
  15: "fifteen quinze quince quindici funfzehn",
  20: "twenty vingt veinte venti zwanzig",
  21: "twentyone ventuno einundzwanzig",
  28: "twentyeight ventotto achtundzwanzig",
  30: "thirty trente treinta trenta dreissig",
  45: "fortyfive",
  60: "sixty soixante sesenta sessanta sechzig",
  90: "ninety noventa novanta neunzig",
};

const NUMBER_OF_WORD: ReadonlyMap<string, number> = new Map(
  Object.entries(WORDS_OF_NUMBER).flatMap(([number, words]) =>
    words.split(" ").map((word) => [word, +number] as const),
  ),
);

/** The number a lower-case word without accents names in return terms; undefined for any other word. */
export function numberFromWord(word: string): number | undefined {
  return NUMBER_OF_WORD.get(word);
}
