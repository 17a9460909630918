import { nameKey } from "./nameKey";

// Common practice, no source: what people write of a piece that came back as it went, in the five languages of the headings.
const GOOD = new Set(
  (
    "good gd ok okay fine perfect excellent great mint new clean cleaned intact complete undamaged unworn unused unmarked unchanged " +
    "same vgc immaculate pristine flawless spotless sound order as like true none na " +
    "bon bonne bien parfait parfaite neuf neuve impeccable propre nickel ras identique comme " +
    "gut einwandfrei neu neuwertig perfekt tadellos sauber unbeschadigt unversehrt unverandert ordnung io wie " +
    "buono buona buone ottimo ottima ottime perfetto perfetta integro intatto intatta nuovo nuova pulito pulita invariato come " +
    "buen bueno buena perfecto perfecta intacto intacta nuevo nueva limpio limpia igual como"
  ).split(" "),
);
/** Words that stand beside those and take nothing back. */
const BESIDE = new Set(
  "very all still in condition conditions state out before collected received and is it was tres en etat et avant sehr im zustand und vorher molto condizione condizioni stato e prima muy estado y antes".split(
    " ",
  ),
);
const NO_FAULT =
  /\b(?:no|not|without|zero|sans|aucune?|ohne|keine?|senza|nessun[ao]?|sin|ningun[ao]?) (?:(?:new|visible|further) )?(?:damaged?|marks?|issues?|faults?|flaws?|stains?|wear|changed?|changes|problems?|defects?|schaden|mangel|dommages?|defauts?|taches?|dann[io]|difett[io]|macchie|danos?|defectos?|manchas?)\b/g;
/** Ticks and dashes. */
const NO_WORDS = /^[\s✓✔☑👍\ufe0f.–—-]*$/u;

/**
 * Whether a condition on return tells of damage: it differs from the condition on loan (case, accents, spacing and punctuation
 * aside) and is no way of saying good, such as "OK", "as new" or "no marks".
 *
 * What is good besides something else is not: "good, small stain". Nothing is guessed from the words of damage themselves.
 */
export function saysDamage(conditionOut: string | null, conditionBack: string): boolean {
  if (conditionOut !== null && nameKey(conditionOut) === nameKey(conditionBack)) return false;
  if (NO_WORDS.test(conditionBack)) return false;
  const plain = conditionBack
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    // "n/a", "i.O."
    .replace(/\b([a-z])[./]\s?([a-z])\b/g, "$1$2");
  const words = plain.replace(NO_FAULT, "ok").match(/[\p{L}\p{N}?]+/gu) ?? [];
  return !(words.some((word) => GOOD.has(word)) && words.every((word) => GOOD.has(word) || BESIDE.has(word)));
}
