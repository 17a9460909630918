// Said in several words, meaning no more than "by": the day as a whole is what terms are about.
const PHRASES =
  /\b(?:not? later than|at (?:the )?(?:very )?latest|(?:before )?(?:the )?close of (?:business|play)|end of (?:the )?(?:business |working )?day(?! after| of)|au plus tard|al? mas tardar|al piu tardi|de ici|no (?:extensions?|exceptions?)|sale (?:or|and) return|sor|first thing|from (?:the )?(?:date of )?loan(?: date)?)\b/g;
const ITALIAN_TWO = /\bdue(?= (?:giorni|settimane|mesi|ore|gg)\b)/g;
const SLASHED = /\bw\/d(?:ays?|s)?\b/g;
/** "wrap + 2" is two days after it, and "J+3" three days after the day out. */
const PLUS_DAYS = /([a-z]{2} ?\+ ?\d+)(?=[\s.]*$)/;
const DAY_OUT_PLUS = /\bj ?\+ ?(\d+)(?=[\s.]*$)/;
const ELIDED = /\b(d|l|dell|all|dall|sull|jusqu|qu)'(?=[a-z])/g;

/** Terms as typed, in lower case without accents, with what takes several words to say no more than "by" made one. */
export function plainTerms(given: string): string {
  let text = given.toLowerCase();
  if (/[^\x00-\x7f]/.test(text))
    text = text
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      .replace(/[‘’ʼ`´]/g, "'")
      .replace(/[“”„«»·•ºª°]/g, " ")
      .replace(/[‐‑‒–—−]/g, "-")
      .replace(/\s/g, " ")
      .replace(/ß/g, "ss")
      .replace(/œ/g, "oe");
  if (text.includes("'"))
    text = text.replace(ELIDED, (_, word) => (word === "dall" ? "dal " : word === "d" ? "de " : ""));
  if (text.includes("due ")) text = text.replace(ITALIAN_TWO, "2");
  if (text.includes("w/")) text = text.replace(SLASHED, "wd");
  if (text.includes("+")) text = text.replace(DAY_OUT_PLUS, "$1 days").replace(PLUS_DAYS, "$1 days");
  return text.replace(PHRASES, "by");
}
